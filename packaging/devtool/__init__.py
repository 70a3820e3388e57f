"""The parts of ``packaging/dev.py``: standard library only, for it runs before any install."""
