"""``python -m brewdesk``."""

from __future__ import annotations

import sys


def main() -> int:
    """Start the program with the command line's words."""
    from brewdesk.app import main as run

    return run(sys.argv[1:])


if __name__ == "__main__":
    sys.exit(main())
