"""Alembic's entry: run the revisions on the connection that the store hands over."""

from __future__ import annotations

from alembic import context


def run() -> None:
    """Run the revisions asked for, all in one transaction."""
    context.configure(
        connection=context.config.attributes["connection"],
        # True because the engine begins transactions itself, see engine.py.
        transactional_ddl=True,
    )
    with context.begin_transaction():
        context.run_migrations()


if __name__ == "env_py":  # the name Alembic loads this file under; a plain import does nothing
    run()
