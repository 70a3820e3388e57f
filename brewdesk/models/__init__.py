"""Item models over plain records."""
