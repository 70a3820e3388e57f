"""Reads the open reminders of a pantry on a server and nothing else, for a start from a terminal.

As ``duereader`` it knows no SQLAlchemy, whose import alone takes longer than the answer may.
"""

from __future__ import annotations

import json
from pathlib import Path
from typing import TYPE_CHECKING, Any

from brewdesk.store.duereader import OPEN_VALUES, QUERY, SCHEMA_NUMBER, DueRows, DueTrouble, due_row

if TYPE_CHECKING:
    import psycopg

# As in the server's schema and engine, which cannot be imported here; a test holds them equal.
NAMESPACE = "brewdesk"
CONNECT_TIMEOUT_S = 3


def read_due_from_server(address: str, folder: Path) -> DueRows:
    """Return the open reminders of the pantry at ``address``, without changing anything.

    ``folder`` holds this desk's identity, for the zone that it has chosen.

    Raises
    ------
    DueTrouble
        no_driver, not_connected, no_store, older, newer or damaged. Its detail holds no secret.
    """
    try:
        import psycopg
    except ImportError as error:
        raise DueTrouble("no_driver", str(error)) from error
    scheme, _, rest = address.partition("://")
    try:
        with psycopg.connect(
            f"{scheme.partition('+')[0]}://{rest}",
            connect_timeout=CONNECT_TIMEOUT_S,
            options=f"-c search_path={NAMESPACE} -c default_transaction_read_only=on",
            application_name="brewdesk due",
        ) as connection:
            connection.isolation_level = psycopg.IsolationLevel.REPEATABLE_READ
            return _read(connection, _desk_uid(folder))
    except (psycopg.errors.UndefinedTable, psycopg.errors.InvalidSchemaName):
        raise DueTrouble("no_store") from None
    except psycopg.Error as error:
        # Not its words: a library may repeat an address in them.
        raise DueTrouble("not_connected", type(error).__name__) from None
    except (ValueError, TypeError) as error:  # a value that no writer of ours wrote
        raise DueTrouble("damaged", str(error)) from error


def _read(connection: psycopg.Connection[Any], desk_uid: str) -> DueRows:
    (schema,) = connection.execute("SELECT schema_number FROM server_state").fetchone() or (0,)
    if schema != SCHEMA_NUMBER:
        code = "newer" if schema > SCHEMA_NUMBER else "older"
        raise DueTrouble(code, f"schema {schema}, this program knows {SCHEMA_NUMBER}")
    pantry = connection.execute("SELECT is_demo FROM pantry").fetchone()
    if pantry is None:
        raise DueTrouble("damaged", "the pantry has no row")
    zones: dict[str, str] = dict(
        connection.execute(
            "SELECT key, value FROM setting WHERE key IN ('zone', %s)", [f"desk/{desk_uid}/zone"]
        ).fetchall()
    )
    found = connection.execute(QUERY.replace("?", "%s"), list(OPEN_VALUES)).fetchall()
    return DueRows(
        rows=tuple(due_row(values) for values in found),
        zone_name=zones.get(f"desk/{desk_uid}/zone") or zones.get("zone", ""),
        is_demo=bool(pantry[0]),
    )


def _desk_uid(folder: Path) -> str:
    try:
        return str(json.loads((folder / "desk.json").read_text(encoding="utf-8"))["uid"])
    except (OSError, ValueError, KeyError, TypeError):
        return ""
