"""The desktop program for the kombucha pantry."""

__version__ = "0.1.0"
