"""Rows on disk: tables, migrations, backups. Knows the core, never Qt."""
