"""The one place that opens connections to a PostgreSQL server."""

from __future__ import annotations

from typing import TYPE_CHECKING, Any

from sqlalchemy import Connection, Engine, create_engine
from sqlalchemy.engine import URL
from sqlalchemy.pool import QueuePool

from brewdesk.store.errors import StoreTrouble
from brewdesk.store.serverschema import NAMESPACE, WRITE_LOCK

if TYPE_CHECKING:
    import psycopg

# Nobody waits longer than this for a server that does not answer [s].
CONNECT_TIMEOUT_S = 3
STATEMENT_TIMEOUT_S = 60


def _session_settings(busy_timeout_s: float) -> str:
    settings = {
        "search_path": NAMESPACE,
        "timezone": "UTC",
        "lock_timeout": f"{max(1, round(busy_timeout_s * 1000))}ms",
        "statement_timeout": f"{STATEMENT_TIMEOUT_S}s",
        "idle_in_transaction_session_timeout": "60s",
        # A desk whose computer went to sleep or lost its net is let go within a minute.
        "tcp_keepalives_idle": "20",
        "tcp_keepalives_interval": "10",
        "tcp_keepalives_count": "3",
    }
    return " ".join(f"-c {name}={value}" for name, value in settings.items())


def _arguments(url: URL, busy_timeout_s: float) -> dict[str, Any]:
    """Give what the client library needs to know, from the address and our own rules."""
    given: dict[str, Any] = url.translate_connect_args(username="user", database="dbname")
    return {
        "application_name": "brewdesk",
        "connect_timeout": CONNECT_TIMEOUT_S,
        "keepalives_idle": 20,
        "keepalives_interval": 5,
        "keepalives_count": 3,
        "tcp_user_timeout": 10_000,
        **{name: value for name, value in url.query.items() if isinstance(value, str)},
        **given,
        "client_encoding": "utf8",
        "options": _session_settings(busy_timeout_s),
    }


def connect_server(
    url: URL, *, busy_timeout_s: float, autocommit: bool = False
) -> psycopg.Connection[Any]:
    """Open a connection outside any pool.

    Raises
    ------
    StoreTrouble
        no_driver, if the client library is not installed.
    psycopg.Error
        As the library says; ``told`` turns it into trouble.
    """
    try:
        import psycopg  # takes a while, and most makers have no server
    except ImportError as error:
        raise StoreTrouble("no_driver", str(error)) from error
    return psycopg.connect(autocommit=autocommit, **_arguments(url, busy_timeout_s))


def make_server_engine(url: URL, *, busy_timeout_s: float) -> Engine:
    """Make the engine of one server; nothing is opened before the first unit."""
    return create_engine(
        # Without name and password: what the engine logs and says must hold no secret.
        URL.create(url.drivername, host=url.host, database=url.database),
        creator=lambda: connect_server(url, busy_timeout_s=busy_timeout_s),
        poolclass=QueuePool,
        pool_size=3,
        max_overflow=2,
        pool_timeout=busy_timeout_s,
        pool_pre_ping=True,  # the server may have been started anew since
        hide_parameters=True,
    )


def take_write_lock(connection: Connection) -> None:
    """Wait until no other desk writes; the lock ends with the transaction."""
    connection.exec_driver_sql(f"SELECT pg_advisory_xact_lock({WRITE_LOCK})")


def has_failed(connection: Connection) -> bool:
    """Whether a statement of the transaction was refused: then a commit would keep nothing.

    The server answers such a COMMIT with a rollback, and without an error.
    """
    bare: Any = connection.connection.driver_connection
    return bool(bare.info.transaction_status.name == "INERROR")
