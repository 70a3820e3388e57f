"""The calculation core: pure functions about tea, sugar, acid, heat, time and safety.

No window, no database, no clock and no files but its own tables. Floats carry
their unit in their name; people's own quantities are read and shown in ``units``.
"""
