"""Parts of the command that measures the forecast on series of readings."""
