"""What the core says when it cannot answer. Words for people are made elsewhere."""

from __future__ import annotations


class ImpossibleInput(ValueError):  # noqa: N818  # named for the maker's view: what was put in cannot be
    """A value that no jar can have, e.g. a negative volume.

    ``field`` is the argument's name, ``value`` what came, ``low``/``high`` the
    allowed range in ``unit`` (either end may be None), ``reason`` a short code.
    """

    def __init__(
        self,
        field: str,
        value: object,
        *,
        low: float | None = None,
        high: float | None = None,
        unit: str = "",
        reason: str = "out_of_range",
    ) -> None:
        self.field = field
        self.value = value
        self.low = low
        self.high = high
        self.unit = unit
        self.reason = reason
        super().__init__(f"{field}={value!r}: {reason} (allowed {low} to {high} {unit})")


class NotAssessed(ValueError):  # noqa: N818  # an answer that is withheld, not a fault
    """A safety question that the data do not settle; never to be shown as safe."""

    def __init__(self, reason: str) -> None:
        self.reason = reason
        super().__init__(reason)
