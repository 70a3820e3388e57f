"""Alembic revisions, numbered like the schema they lead to. Once released, never changed."""
