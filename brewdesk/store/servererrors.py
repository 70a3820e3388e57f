"""What the errors of a PostgreSQL server mean, by their SQLSTATE; the library is not imported.

The codes are those of the manual: https://www.postgresql.org/docs/15/errcodes-appendix.html
"""

from __future__ import annotations

from brewdesk.store.errors import RowRefused, StoreTrouble
from brewdesk.store.serverurl import without_secrets

_BY_CODE = {
    "25006": "read_only",  # read_only_sql_transaction
    "40001": "locked",  # serialization_failure
    "40P01": "locked",  # deadlock_detected
    "42501": "not_let_in",  # insufficient_privilege
    "53100": "disk_full",
    "55P03": "locked",  # lock_not_available
    "57014": "locked",  # query_canceled: it took longer than allowed
    "3D000": "not_let_in",  # invalid_catalog_name: there is no such database
    "58030": "io_error",
}
_BY_CLASS = {
    "08": "not_connected",
    "22": "row_refused",  # data exception: out of range, not a number, a NUL
    "23": "row_refused",  # integrity constraint violation
    "28": "not_let_in",  # invalid authorization
    "53": "not_connected",  # insufficient resources: too many connections
    "57": "not_connected",  # operator intervention: shut down, starting up
    "58": "io_error",
    "XX": "damaged",
}


def trouble_from_server(error: BaseException) -> StoreTrouble | None:
    """Give the trouble that an error of psycopg stands for; None for a bug or another's error."""
    if not type(error).__module__.startswith("psycopg"):
        return None
    said = without_secrets(str(error)).strip()
    state = getattr(error, "sqlstate", None)
    if state is None:
        return _unnumbered(error, said)
    code = _BY_CODE.get(state) or _BY_CLASS.get(state[:2])
    if code is None:
        return None
    return RowRefused(said) if code == "row_refused" else StoreTrouble(code, said)


def _unnumbered(error: BaseException, said: str) -> StoreTrouble | None:
    """Tell what the library itself found: mostly that nobody answers any more."""
    names = {kind.__name__ for kind in type(error).__mro__}
    if "DataError" in names:
        return RowRefused(said)
    if "OperationalError" not in names:
        return None
    # A refusal at the door has no SQLSTATE in the library: the server's words are all there is.
    is_refusal = "authentication failed" in said or "no password supplied" in said
    is_refusal = is_refusal or ("database" in said and "does not exist" in said)
    is_refusal = is_refusal or "no pg_hba.conf entry" in said
    return StoreTrouble("not_let_in" if is_refusal else "not_connected", said)
