"""One file per schema number."""
