"""What is said of the stores: amounts, prices, what is short, what a cost leaves out."""

from __future__ import annotations

from datetime import datetime, tzinfo

from PySide6.QtCore import QCoreApplication

from brewdesk.services.money import NotMoney, digits_of, show_money
from brewdesk.services.stockviews import StockView, UnitPrice
from brewdesk.services.wording.amounts import Show, number_text
from brewdesk.services.wording.inside import inside
from brewdesk.services.wording.moments import date_words, days_between
from brewdesk.services.wording.stages import name_of
from brewdesk.store.stockrecords import SupplyLotDraft
from culturecore.stages import DrawReason, SupplyKind, SupplyMeasure
from culturecore.stockcost import Cost, Saving
from culturecore.units import Kind

_CHEAP_MINOR = 20  # below it a price of a piece is worth a digit more


def _t(text: str) -> str:
    return QCoreApplication.translate("Stores", text)


def kind_words(kind: SupplyKind) -> str:
    """Name a kind of supply."""
    return name_of(kind)


def measure_words(measure: SupplyMeasure) -> str:
    """Say how something is counted."""
    return name_of(measure)


def reason_words(reason: DrawReason) -> str:
    """Say why something left the stores, or came back."""
    return name_of(reason)


def found_words() -> str:
    """Say where a lot comes from that a count of the shelf found."""
    return _t("Found when the shelf was counted; no price is known.")


def amount_words(amount: float, measure: SupplyMeasure, show: Show) -> str:
    """Write an amount as the supply is counted."""
    if measure is SupplyMeasure.MASS_G:
        return show(amount, Kind.MASS)
    if measure is SupplyMeasure.VOLUME_L:
        return show(amount, Kind.VOLUME)
    decimals = 0 if float(amount).is_integer() else 2
    return number_text(amount, decimals)


def pieces_words(amount: float, measure: SupplyMeasure, show: Show) -> str:
    """Write an amount; pieces with the word behind, for where no heading says it."""
    text = amount_words(amount, measure, show)
    if measure is not SupplyMeasure.PIECES:
        return text
    if amount == 1:
        return _t("1 piece")
    return _t("{count} pieces").format(count=text)


def unit_price_words(price: UnitPrice, measure: SupplyMeasure) -> str:
    """Write a price of a kilogram, a litre or a piece."""
    is_cheap = measure is SupplyMeasure.PIECES and price.minor < _CHEAP_MINOR
    extra = 1 if is_cheap and digits_of(price.currency) else 0
    money = show_money(price.minor, price.currency, extra_digits=extra)
    template = {
        SupplyMeasure.MASS_G: _t("{money} a kg"),
        SupplyMeasure.VOLUME_L: _t("{money} a litre"),
        SupplyMeasure.PIECES: _t("{money} each"),
    }[measure]
    return template.format(money=money)


def price_words(lot: SupplyLotDraft) -> str:
    """Write the price of a purchase."""
    if lot.price_minor is None:
        return _t("not known")
    return show_money(lot.price_minor, lot.currency)


def left_words(view: StockView, show: Show) -> str:
    """Say how much is left of a supply."""
    measure = view.supply.measure
    left = amount_words(view.left, measure, show)
    if not view.lots and not view.unbooked:
        return _t("Nothing bought yet")
    return _t("{left} left").format(left=left)


def stock_notes(view: StockView, now: datetime, zone: tzinfo, show: Show) -> list[str]:
    """Say what is to be minded of a supply, the weightiest first; often nothing."""
    notes: list[str] = []
    supply = view.supply
    if view.is_low:
        mark = pieces_words(supply.low_amount or 0.0, supply.measure, show)
        notes.append(_t("Low: your mark is {mark}.").format(mark=mark))
    if view.best_before is not None:
        notes += _date_note(view.best_before, now, zone)
    if view.planned > view.left:
        notes.append(
            _t("Plans need {planned}, more than there is.").format(
                planned=pieces_words(view.planned, supply.measure, show)
            )
        )
    elif view.planned > 0:
        notes.append(
            _t("Plans will take {planned}.").format(
                planned=pieces_words(view.planned, supply.measure, show)
            )
        )
    if view.out > 0 and supply.kind is SupplyKind.BOTTLE:
        notes.append(
            _t("{count} are filled or not back yet.").format(
                count=amount_words(view.out, supply.measure, show)
            )
        )
    if view.unbooked > 0:
        notes.append(
            _t("{amount} more was used than was written down as bought.").format(
                amount=pieces_words(view.unbooked, supply.measure, show)
            )
        )
    return notes


_SOON_DAYS = 60


def _date_note(best_before: datetime, now: datetime, zone: tzinfo) -> list[str]:
    days = days_between(now, best_before, zone)
    day = date_words(best_before, zone)
    if days < 0:
        return [_t("Some is past its best-before date, {day}.").format(day=day)]
    if days <= _SOON_DAYS:
        return [_t("Some is best before {day}.").format(day=day)]
    return []


def short_words(name: str, left: float, needed: float, measure: SupplyMeasure, show: Show) -> str:
    """Say that a plan needs more than there is: "42 g of green tea left, 56 g needed"."""
    return _t("{left} of {name} left, {needed} needed.").format(
        left=pieces_words(left, measure, show),
        name=name,
        needed=pieces_words(needed, measure, show),
    )


def enough_words(left: float, needed: float, measure: SupplyMeasure, show: Show) -> str:
    """Say what a plan takes of what is there."""
    return _t("Takes {needed} of {left}.").format(
        needed=pieces_words(needed, measure, show), left=pieces_words(left, measure, show)
    )


def buy_title(name: str) -> str:
    """Say what the due list says of something that runs low."""
    return _t("Buy {name}").format(name=name)


def buy_body() -> str:
    """Say why the due list asks to buy something."""
    return _t(
        "Less is left than the mark you set in the stores. Ticked off, it is not asked for "
        "again before you have written down a purchase."
    )


def cost_words(cost: Cost, *, unknown: str = "") -> str:
    """Write a cost: each currency by itself, "at least" where some of it has no price."""
    if cost.is_unknown:
        return unknown or _t("not known")
    if not cost.known:
        return _t("nothing")
    sums = [show_money(money, currency) for currency, money in cost.known]
    text = (
        sums[0]
        if len(sums) == 1
        else _t("{first} and {last}").format(first=", ".join(sums[:-1]), last=sums[-1])
    )
    return text if cost.is_complete else _t("at least {sum}").format(sum=text)


def saving_figure(saving: Saving) -> tuple[str, str]:
    """Return a saving as a figure and what it is."""
    money = show_money(abs(saving.minor), saving.currency)
    if saving.minor < 0:
        figure = _t("at least {money}").format(money=money) if saving.is_at_most else money
        return figure, _t("more than in the shop")
    figure = _t("at most {money}").format(money=money) if saving.is_at_most else money
    return figure, _t("saved against the shop")


def price_figure(price: UnitPrice, measure: SupplyMeasure) -> tuple[str, str]:
    """Return a price as a figure and what it is of."""
    is_cheap = measure is SupplyMeasure.PIECES and price.minor < _CHEAP_MINOR
    extra = 1 if is_cheap and digits_of(price.currency) else 0
    of_what = {
        SupplyMeasure.MASS_G: _t("last price of a kg"),
        SupplyMeasure.VOLUME_L: _t("last price of a litre"),
        SupplyMeasure.PIECES: _t("last price of one"),
    }[measure]
    return show_money(price.minor, price.currency, extra_digits=extra), of_what


def saving_words(saving: Saving | None) -> str:
    """Say what was saved against the shop; an empty text where that cannot be said."""
    if saving is None:
        return ""
    money = show_money(abs(saving.minor), saving.currency)
    if saving.minor < 0:
        template = (
            _t("at least {money} more than in the shop")
            if saving.is_at_most
            else _t("{money} more than in the shop")
        )
    else:
        template = _t("at most {money} saved") if saving.is_at_most else _t("{money} saved")
    return template.format(money=money)


def missing_words(missing: tuple[SupplyKind, ...]) -> str:
    """Say what of a batch did not come from the stores, or had no price."""
    if not missing:
        return ""
    names = [inside(kind_words(kind)) for kind in missing]
    listed = (
        names[0]
        if len(names) == 1
        else _t("{first} and {last}").format(first=", ".join(names[:-1]), last=names[-1])
    )
    return _t("No price for: {listed}").format(listed=listed)


def not_counted_words() -> str:
    """Say what the cost of a batch leaves out."""
    return _t(
        "Counted: tea, sugar, flavouring, caps, and the wear of the bottles, as far as they came "
        "from the stores. Not counted: energy, water, your time, jars and equipment, starter and "
        "culture, top-ups and feeding. Lots are used up oldest first."
    )


def stores_source_words() -> str:
    """Say where a share of sugar comes from that stands in the stores."""
    return _t("as it stands in your stores")


def money_words(error: NotMoney) -> str:
    """Say why what was typed is no price, and how to write it."""
    sentence = {
        "empty": _t("Please type a price."),
        "no_number": _t("There is no price in “{text}”. Type it as in “3.50” or “3,50”."),
        "ambiguous": _t("“{part}” can be read in more than one way. Type it without grouping."),
        "too_fine": _t(
            "“{part}” has more decimals than the currency has coins, or a grouping sign."
        ),
        "too_much": _t("“{part}” is more than can be kept here."),
        "currency": _t("“{part}” is no currency known here. Use a code such as EUR or USD."),
    }[error.reason]
    return sentence.format(text=error.text, part=error.part or error.text)


def problems() -> dict[tuple[str, str], str]:
    """Return sentences by (field, reason)."""
    return {
        ("", "has_lots"): _t("Some of it is on record already. Add another supply instead."),
        ("", "measure"): _t("What is used this way cannot be counted like that."),
        ("", "nothing"): _t("Please type more than nothing."),
        ("", "upside_down"): _t("The most must not be less than the least."),
        ("", "not_in_stores"): _t(
            "So much is not there: the books say {high}. Count the shelf if they are wrong."
        ),
        ("amount", "below_drawn"): _t("{low} of it was used already, so it was at least that."),
        ("bought_at", "drawn_before"): _t("Some of it was used before that day."),
        ("lot_id", "drawn_from"): _t("Some of it was used, so it stays on record."),
        ("supply_id", "supply_planned"): _t("{value} is planned with it. Change that plan first."),
        ("bottling_id", "not_emptied"): _t("The bottles are not empty yet by the records."),
        ("bottling_id", "no_bottles_out"): _t("None of its bottles are out."),
        ("", "too_long"): _t("Please keep it shorter."),
        ("", "retired"): _t("{value} is no longer on the list of the stores."),
        ("", "wrong_kind"): _t("{value} is not for that."),
    }


def labels() -> dict[str, str]:
    """Return names of fields, for sentences about their ranges."""
    return {
        "amount": _t("The amount"),
        "price_minor": _t("The price"),
        "low_amount": _t("The mark"),
        "sugar_share_low": _t("The share of sugar"),
        "sugar_share_high": _t("The share of sugar"),
        "rated_bar": _t("The rating"),
        "bottle_uses": _t("How often a bottle is filled"),
    }
