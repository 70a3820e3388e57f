"""A pantry on a server is copied to a folder as one that opens without a server, photos and all."""

from __future__ import annotations

import io

from brewdesk import movestore
from brewdesk.paths import SERVER_VARIABLE, STORE_NAME
from brewdesk.services.wholecopy import copy_everything
from brewdesk.store.desklocal import desk_identity
from brewdesk.store.serverstore import ServerStore
from brewdesk.store.store import Store
from tests.helpers.fakes import DEFAULT_START
from tests.helpers.whole_pantry import everything, full_pantry, photo_files


def test_a_copy_from_a_server_holds_every_row_and_every_photo(tmp_path, pg_server):
    own = full_pantry(tmp_path / STORE_NAME)
    rows, photos = everything(own), photo_files(own)
    address = pg_server.make_database()
    desk = desk_identity(tmp_path, "Invented desk")
    code = movestore.main(
        ["--to", "server", "--data-dir", str(tmp_path)],
        out=io.StringIO(),
        err=io.StringIO(),
        variables={SERVER_VARIABLE: address},
        now=lambda: DEFAULT_START,
    )
    assert code == 0
    # A desk that has never shown a photo has no file of it: all of them lie on the server.
    store = ServerStore.open(
        address, tmp_path / "new" / "shared-pantry.brewdesk", desk=desk, now=DEFAULT_START
    )
    (tmp_path / "stick").mkdir()

    copied = copy_everything(store, tmp_path / "stick", now=DEFAULT_START)
    store.close()

    copy = copied.folder / "shared-pantry.brewdesk"
    assert (copied.photos, copied.missing) == (len(photos), 0)
    assert photo_files(copy) == photos
    tables = ("vessel: ", "batch: ", "reading: ", "culture: ", "act: ", "photo: ")
    kept = [line for line in everything(copy) if line.startswith(tables)]
    assert kept == [line for line in rows if line.startswith(tables)]
    Store.open(copy, now=DEFAULT_START).close()
