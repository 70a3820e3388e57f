"""One command from a fresh checkout: run, test, check, smoke, doctor.

    python3 packaging/dev.py run                       start the program
    python3 packaging/dev.py --install-system test     run every test
    python3 packaging/dev.py check                     format, lint, types, import arrows
    python3 packaging/dev.py faults                    cause the faults of the table, write its page
    python3 packaging/dev.py smoke                     one real window, opened and closed
    python3 packaging/dev.py screenshots               take the README's pictures anew
    python3 packaging/dev.py translate update          bring the translations up to date
    python3 packaging/dev.py evaluate FOLDER           measure the forecast on series of readings
    python3 packaging/dev.py bench-refresh             measure a full shelf forecast anew, as JSON
    python3 packaging/dev.py bench-month               measure a month with the window open, as JSON
    python3 packaging/dev.py fuzz 120                  search for bytes that the program cannot read
    python3 packaging/dev.py doctor                    what is here, what is missing
    python3 packaging/dev.py lock                      write the lock files anew (needs uv)

Needs Python 3.11 or newer and nothing else: it makes ``.venv`` from the lock files.
Options stand before the command; what follows the command goes to the program or to pytest.
"""

from __future__ import annotations

import argparse
import sys


def main() -> int:
    """Read the command line and carry out one command."""
    if sys.version_info < (3, 11):  # noqa: UP036  # the reader may have an older one
        print(f"Python 3.11 or newer is needed; this is {sys.version.split()[0]}.")
        return 2
    from devtool import commands
    from devtool.environment import write_locks
    from devtool.speech import CannotGoOn, say

    actions = {
        "run": commands.run,
        "test": commands.test,
        "check": commands.check,
        "faults": commands.faults,
        "smoke": commands.smoke,
        "screenshots": commands.screenshots,
        "evaluate": commands.evaluate,
        "translate": commands.translate,
        "bench-refresh": commands.bench_refresh,
        "bench-month": commands.bench_month,
        "fuzz": commands.fuzz,
        "doctor": commands.doctor,
    }
    parser = argparse.ArgumentParser(
        description=__doc__, formatter_class=argparse.RawDescriptionHelpFormatter
    )
    parser.add_argument(
        "--install-system", action="store_true", help="install missing system packages (Linux)"
    )
    parser.add_argument("--fresh", action="store_true", help="make .venv anew")
    parser.add_argument("--no-uv", action="store_true", help="use pip even if uv is on PATH")
    parser.add_argument("command", choices=[*actions, "lock"])
    parser.add_argument("arguments", nargs=argparse.REMAINDER)
    asked = parser.parse_args()
    options = commands.Options(
        install_system=asked.install_system, fresh=asked.fresh, use_uv=not asked.no_uv
    )
    try:
        if asked.command == "lock":
            write_locks()
            return 0
        return actions[asked.command](options, asked.arguments)
    except CannotGoOn as trouble:
        say(str(trouble))
        return 2
    except KeyboardInterrupt:
        return 130


if __name__ == "__main__":
    sys.exit(main())
