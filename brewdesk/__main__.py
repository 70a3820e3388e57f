"""``python -m brewdesk``."""

from __future__ import annotations

import sys


def main() -> int:
    """Start the program with the command line's words."""
    if sys.argv[1:] == ["--figures"]:  # a packaged program starts itself again for this
        from brewdesk.services.figureprocess import main as serve

        return serve()
    if sys.argv[1:2] == ["due"]:  # before anything that needs a display is imported
        from brewdesk.duelist import main as print_due

        return print_due(sys.argv[2:])
    if sys.argv[1:2] == ["move-store"]:
        from brewdesk.movestore import main as move

        return move(sys.argv[2:])
    from brewdesk.app import main as run

    return run(sys.argv[1:])


if __name__ == "__main__":
    sys.exit(main())
