"""What was done in the stores, in a few words. The facts carry every name and number."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from typing import Any

from PySide6.QtCore import QCoreApplication

from brewdesk.services.acts import ActKind
from brewdesk.services.money import show_money
from brewdesk.services.wording.amounts import Show, number_text
from brewdesk.services.wording.stores import pieces_words
from culturecore.stages import DrawReason, SupplyMeasure

Facts = Mapping[str, Any]
Words = Callable[[Facts, Show], str]


def _t(text: str) -> str:
    return QCoreApplication.translate("StoresActs", text)


def _amount(facts: Facts, show: Show) -> str:
    return pieces_words(facts["amount"], SupplyMeasure(facts["measure"]), show)


def _add_supply(facts: Facts, _show: Show) -> str:
    return _t("{name} put on the list of the stores").format(name=facts["name"])


def _edit_supply(facts: Facts, _show: Show) -> str:
    if facts["old_name"] != facts["name"]:
        return _t("{old_name} in the stores renamed {name}").format(
            old_name=facts["old_name"], name=facts["name"]
        )
    return _t("{name} in the stores changed").format(name=facts["name"])


def _retire_supply(facts: Facts, _show: Show) -> str:
    return _t("{name} taken off the list of the stores").format(name=facts["name"])


def _restore_supply(facts: Facts, _show: Show) -> str:
    return _t("{name} back on the list of the stores").format(name=facts["name"])


def _lot(facts: Facts, show: Show, plain: str, priced: str) -> str:
    amount, name = _amount(facts, show), facts["name"]
    if facts["price_minor"] is None:
        return plain.format(amount=amount, name=name)
    price = show_money(int(facts["price_minor"]), facts["currency"])
    return priced.format(amount=amount, name=name, price=price)


def _buy_supply(facts: Facts, show: Show) -> str:
    return _lot(
        facts, show, _t("{amount} of {name} bought"), _t("{amount} of {name} bought for {price}")
    )


def _edit_lot(facts: Facts, show: Show) -> str:
    return _lot(
        facts,
        show,
        _t("Purchase of {name} corrected: {amount}"),
        _t("Purchase of {name} corrected: {amount} for {price}"),
    )


def _remove_lot(facts: Facts, show: Show) -> str:
    return _t("Purchase of {amount} of {name} taken out").format(
        amount=_amount(facts, show), name=facts["name"]
    )


def _use_supply(facts: Facts, show: Show) -> str:
    is_spoiled = DrawReason(facts["reason"]) is DrawReason.SPOILED
    template = (
        _t("{amount} of {name} spoiled or broken")
        if is_spoiled
        else _t("{amount} of {name} used otherwise")
    )
    said = template.format(amount=_amount(facts, show), name=facts["name"])
    if not facts["text"]:
        return said
    return _t("{said}: {text}").format(said=said, text=facts["text"])


def _count_supply(facts: Facts, show: Show) -> str:
    return _t("{name} counted: {amount}").format(name=facts["name"], amount=_amount(facts, show))


def _return_bottles(facts: Facts, _show: Show) -> str:
    return _t("{count} bottles of {name} back in the stores").format(
        count=number_text(facts["count"], 0), name=facts["name"]
    )


STORES_WORDS: dict[ActKind, Words] = {
    ActKind.ADD_SUPPLY: _add_supply,
    ActKind.EDIT_SUPPLY: _edit_supply,
    ActKind.RETIRE_SUPPLY: _retire_supply,
    ActKind.RESTORE_SUPPLY: _restore_supply,
    ActKind.BUY_SUPPLY: _buy_supply,
    ActKind.EDIT_LOT: _edit_lot,
    ActKind.REMOVE_LOT: _remove_lot,
    ActKind.USE_SUPPLY: _use_supply,
    ActKind.COUNT_SUPPLY: _count_supply,
    ActKind.RETURN_BOTTLES: _return_bottles,
}
