"""``python -m brewdesk``."""

from __future__ import annotations

import sys


def main() -> int:
    """Start the program with the command line's words."""
    if sys.argv[1:] == ["--figures"]:  # a packaged program starts itself again for this
        from brewdesk.services.figureprocess import main as serve

        return serve()
    from brewdesk.app import main as run

    return run(sys.argv[1:])


if __name__ == "__main__":
    sys.exit(main())
