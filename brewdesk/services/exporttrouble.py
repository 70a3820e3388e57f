"""What can keep an export from being made, or from being read."""

from __future__ import annotations

TROUBLE_CODES = frozenset(
    {
        "cancelled", "disk_full", "not_writable", "unreadable", "not_an_export", "newer_export",
        "damaged", "unsafe", "too_large", "row_refused", "photo_missing", "target_taken",
        "no_folder",
    }
)  # fmt: skip


class ExportTrouble(Exception):  # noqa: N818  # a state of the world to tell the maker, not a bug
    """Why an export cannot be made or read; ``code`` is one of `TROUBLE_CODES`.

    ``where`` is the entry of the archive at fault, if it is one, with the line in ``line``.
    ``detail`` is for the log.
    """

    def __init__(self, code: str, detail: str = "", *, where: str = "", line: int = 0) -> None:
        self.code = code
        self.detail = detail
        self.where = where
        self.line = line
        super().__init__(": ".join(part for part in (code, where, detail) if part))
