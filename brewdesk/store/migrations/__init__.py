"""Alembic revisions, numbered like the schema they lead to. Once released, never changed.

To change the tables: change ``schema.py`` and raise its ``SCHEMA_NUMBER``, add
``versions/NNNN_what.py`` that does the same to an older store, then write down a store of the
new schema with ``python -m tests.upgrades.write``. The history keeps whole rows as they were,
so acts on a table whose columns change can no longer be taken back.
"""
