"""Where things lie: the maker's data, the program's own resources."""

from __future__ import annotations

import sys
from dataclasses import dataclass
from pathlib import Path

# Names a database that several desks share. Without it no connection to anything is opened.
SERVER_VARIABLE = "BREWDESK_DATABASE_URL"
STORE_NAME = "pantry.brewdesk"
SHARED_NAME = "shared-pantry.brewdesk"
DEMO_NAME = "example-pantry.brewdesk"


@dataclass(frozen=True, slots=True)
class Folders:
    """The maker's folders. ``data`` holds store and backups, ``state`` logs and layout."""

    data: Path
    state: Path

    @property
    def store(self) -> Path:
        """The maker's own store."""
        return self.data / STORE_NAME

    @property
    def shared_store(self) -> Path:
        """Beside this name lie the backups and photos of a pantry on a server; it is no file."""
        return self.data / SHARED_NAME

    @property
    def demo_store(self) -> Path:
        """The invented pantry, always a file of its own."""
        return self.data / DEMO_NAME


def folders(data_dir: Path | None = None) -> Folders:
    """Give the folders; ``data_dir`` puts everything below one folder instead."""
    if data_dir is not None:
        return Folders(data=data_dir, state=data_dir / "state")
    import platformdirs

    dirs = platformdirs.PlatformDirs("brewdesk", appauthor=False)
    return Folders(data=Path(dirs.user_data_dir), state=Path(dirs.user_state_dir))


def resource(*parts: str) -> Path:
    """Path of a file under ``resources/``, from source, wheel or frozen folder."""
    frozen = getattr(sys, "_MEIPASS", None)
    here = Path(__file__).resolve().parent
    for base in (Path(frozen) if frozen else None, here.parent, here):
        if base is not None and (base / "resources").is_dir():
            return base.joinpath("resources", *parts)
    raise FileNotFoundError("resources")


def make_private_folder(folder: Path) -> None:
    """Make a folder that only its owner enters, and the missing ones above it alike.

    One that exists is left as it is.

    Raises
    ------
    OSError
        If it cannot be made.
    """
    missing = []
    above = folder
    while not above.exists() and above != above.parent:
        missing.append(above)
        above = above.parent
    for one in reversed(missing):
        one.mkdir(mode=0o700, exist_ok=True)
    folder.mkdir(mode=0o700, exist_ok=True)  # says so if a file is in its place
