"""A PostgreSQL server of the tests' own: a throw-away cluster on a Unix socket."""

from __future__ import annotations

import os
import re
import shutil
import signal
import subprocess
import tempfile
from itertools import count
from pathlib import Path
from urllib.parse import quote

from brewdesk.store.desklocal import DeskIdentity
from brewdesk.store.serverstore import ServerStore
from tests.helpers.fakes import DEFAULT_START

PASSWORD = "invented secret/1"  # to be found in no log and no message
USER = "brewer"
MUCH_BYTES = 600_000_000


def program(name: str) -> str:
    """Return the path of a server program: on PATH, or where Debian keeps it."""
    found = shutil.which(name)
    if found is not None and name != "postgres":
        return found
    kept = Path("/usr/lib/postgresql").glob(f"*/bin/{name}")
    newest = max(kept, key=lambda path: int(re.sub(r"\D", "", path.parts[-3]) or 0), default=None)
    assert newest is not None or found is not None, f"no {name}: install the package postgresql"
    return str(newest or found)


def _quick_folder() -> str:
    """Return where files are quickest: in memory, where there is room."""
    memory = Path("/dev/shm")
    has_room = memory.is_dir() and shutil.disk_usage(memory).free > MUCH_BYTES
    return str(memory) if has_room else "/tmp"


class PgServer:
    """One cluster; `make_database` gives an address of an empty database in it."""

    def __init__(self) -> None:
        # The path of a Unix socket may have 107 bytes, so it stays short.
        self.folder = Path(tempfile.mkdtemp(prefix="pg-", dir=_quick_folder()))
        self._as_user = {"user": "postgres", "group": "postgres", "extra_groups": []}
        if os.geteuid() != 0:  # the server refuses to run as root
            self._as_user = {}
        else:
            shutil.chown(self.folder, "postgres", "postgres")
        self._numbers = count(1)
        self._template: str | None = None
        self._process: subprocess.Popen[bytes] | None = None
        secret = self.folder / "secret"
        secret.write_text(PASSWORD)
        secret.chmod(0o644)
        made = self._run(
            "initdb", "--pgdata", str(self.data), "--username", USER, "--encoding", "UTF8",
            "--locale", "C", "--auth", "scram-sha-256", "--pwfile", str(secret), "--no-sync",
            "--wal-segsize", "4",
        )  # fmt: skip
        assert made.returncode == 0, made.stderr

    @property
    def data(self) -> Path:
        return self.folder / "data"

    def start(self) -> None:
        """Start it, again and again while the remains of one that was killed are in the way."""
        assert self._process is None, "it is running"
        for _ in range(500):
            if self._process is None or self._process.poll() is not None:
                (self.data / "postmaster.pid").unlink(missing_ok=True)
                self._process = self._begin()
            asked = ("pg_isready", "--host", str(self.folder), "--quiet")
            if self._run(*asked).returncode == 0:
                return
        raise AssertionError((self.folder / "log").read_text())

    def _begin(self) -> subprocess.Popen[bytes]:
        with (self.folder / "log").open("ab") as log:
            return subprocess.Popen(
                [program("postgres"), "-D", str(self.data), "-k", str(self.folder),
                 "-c", "listen_addresses=", "-c", "fsync=off", "-c", "full_page_writes=off",
                 "-c", "max_connections=60", "-c", "wal_level=minimal", "-c", "max_wal_senders=0",
                 "-c", "max_wal_size=64MB", "-c", "min_wal_size=32MB", "-c", "autovacuum=off",
                 "-c", "shared_buffers=32MB"],
                stdout=subprocess.DEVNULL, stderr=log, cwd="/",
                env={"PATH": os.environ["PATH"], "LC_ALL": "C"}, **self._as_user,
            )  # fmt: skip

    def stop(self) -> None:
        """Shut down at once, as with the power button of a server."""
        self._end(signal.SIGINT)

    def kill(self) -> None:
        """Kill it: no goodbye to anybody."""
        self._end(signal.SIGKILL)

    def _end(self, how: signal.Signals) -> None:
        if self._process is None:
            return
        self._process.send_signal(how)
        self._process.wait(timeout=30)
        self._process = None

    def close(self) -> None:
        self._end(signal.SIGQUIT)
        shutil.rmtree(self.folder)

    def address(self, database: str) -> str:
        return (
            f"postgresql+psycopg://{USER}:{quote(PASSWORD, safe='')}@/{database}"
            f"?host={quote(str(self.folder), safe='')}"
        )

    def make_database(self, template: str = "template0", encoding: str = "") -> str:
        """Make a database and return its address."""
        name = f"pantry_{next(self._numbers)}"
        said = f" ENCODING '{encoding}'" if encoding else ""
        self.execute(f"CREATE DATABASE {name} TEMPLATE {template}{said}")
        return self.address(name)

    def make_store(self) -> str:
        """Make a database with a new, empty store in it, and return its address."""
        if self._template is None:
            self._template = self.make_database().partition("?")[0].rpartition("/")[2]
            desk = DeskIdentity("t" * 32, "Invented desk")
            ServerStore.open(
                self.address(self._template), self.folder, desk=desk, now=DEFAULT_START
            ).close()
        return self.make_database(self._template)

    def drop(self, address: str) -> None:
        """Drop the database of an address, whoever is still connected."""
        name = address.partition("?")[0].rpartition("/")[2]
        self.execute(f"DROP DATABASE IF EXISTS {name} WITH (FORCE)")

    def execute(self, statement: str, database: str = "postgres") -> list[tuple[object, ...]]:
        import psycopg

        with psycopg.connect(
            host=str(self.folder), user=USER, password=PASSWORD, dbname=database, autocommit=True
        ) as connection:
            cursor = connection.execute(statement)
            return cursor.fetchall() if cursor.description else []

    def _run(self, name: str, *words: str) -> subprocess.CompletedProcess[str]:
        return subprocess.run(
            [program(name), *words], capture_output=True, text=True, cwd="/",
            env={"PATH": os.environ["PATH"], "LC_ALL": "C"}, **self._as_user,
        )  # fmt: skip
