"""Questions about what a glass holds and what a batch costs."""

from __future__ import annotations

from decimal import Decimal

from brewdesk.services.reckoner import measures
from brewdesk.services.reckoner.naming import names, t
from brewdesk.services.reckoner.question import (
    Answer,
    Field,
    Formula,
    Group,
    Inputs,
    Line,
    Number,
    Question,
    Span,
    choice,
    exact,
    number,
    told,
)
from culturecore import cost, drinkverdicts, nutrition
from culturecore.errors import ImpossibleInput
from culturecore.outcome import Estimate
from culturecore.stages import TeaKind
from culturecore.units import Kind


def questions() -> tuple[Question, ...]:
    """Return the questions of this group."""
    return (_glass(), _caffeine(), _cost())


def _ends(key: str, low: str, likely: str, high: str, measure: Kind | None,
          values: tuple[float, float, float]) -> tuple[Field, ...]:  # fmt: skip
    unit = measure or measures.ABV
    return (
        number(f"{key}_low", low, unit, values[0]),
        number(key, likely, unit, values[1]),
        number(f"{key}_high", high, unit, values[2]),
    )


def _estimate(given: Inputs, key: str) -> Estimate:
    low, value, high = (given.number(name) for name in (f"{key}_low", key, f"{key}_high"))
    if low > value:
        raise ImpossibleInput(f"{key}_low", low, high=value, reason="ends_crossed")
    if high < value:
        raise ImpossibleInput(f"{key}_high", high, low=value, reason="ends_crossed")
    return Estimate(value, low, high)


def _glass() -> Question:
    return Question(
        key="glass",
        group=Group.LABEL,
        title=t("What does a glass hold?"),
        purpose=t("Energy, sugar, acid, alcohol and caffeine of an amount, as ranges."),
        words=t("nutrition label energy calories kcal sugar caffeine serving"),
        fields=(
            number("volume_l", t("A glass"), Kind.VOLUME, 0.25),
            *_ends("sugar_g_per_l", t("Sugar left, at least"), t("Sugar left, likely"),
                   t("Sugar left, at most"), Kind.SUGAR, (25.0, 40.0, 55.0)),
            number("acid_g_per_l", t("Acidity"), Kind.ACIDITY, 5.0),
            *_ends("ethanol_abv", t("Alcohol, at least"), t("Alcohol, likely"),
                   t("Alcohol, at most"), None, (0.1, 0.6, 1.5)),
            *_leaf_fields(),
        ),
        answer=_glass_answered,
        renames={"caffeine_mg_per_l": "tea_g_per_l"},
    )  # fmt: skip


def _leaf_fields() -> tuple[Field, ...]:
    return (
        choice("tea_kind", t("Tea"), names(TeaKind), TeaKind.BLACK),
        number("tea_g_per_l", t("Tea to a litre of drink"), Kind.TEA, 4.0),
    )


def _leaf_caffeine(given: Inputs) -> Estimate:
    return nutrition.caffeine_mg_per_l(
        tea_kind=given.chosen("tea_kind", TeaKind), tea_g_per_l=given.number("tea_g_per_l")
    )


def _glass_answered(given: Inputs) -> Answer:
    acid = given.number("acid_g_per_l")
    caffeine = _leaf_caffeine(given)
    content = nutrition.Content(
        sugar_g_per_l=_estimate(given, "sugar_g_per_l"),
        acid_g_per_l=Estimate(acid, acid, acid),
        ethanol_abv=_estimate(given, "ethanol_abv"),
        caffeine_mg_per_l=caffeine,
    )
    found = nutrition.facts(content, volume_l=given.number("volume_l"))
    return Answer(
        lines=(
            _bound("kcal", t("Energy"), found.energy_kcal, measures.KILOCALORIES),
            _bound("kj", t("The same in kilojoules"), found.energy_kj, measures.KILOJOULES),
            _bound("sugar", t("Sugar"), found.sugar_g, Kind.MASS),
            _bound("acid", t("Acid"), found.acid_g, Kind.MASS),
            _bound("ethanol", t("Alcohol"), found.ethanol_g, Kind.MASS),
            _bound("caffeine", t("Caffeine"), found.caffeine_mg, measures.MILLIGRAMS),
        ),
        says=t("{volume_l} gives {kcal_low} to {kcal_high}. For your own information: a label for "
               "sale needs a laboratory."),
        verdicts=(
            drinkverdicts.caffeine_verdict(found.caffeine_mg),
            drinkverdicts.audience_verdict(),
        ),
        caveats=caffeine.caveats,
        formulas=(
            Formula(t("Energy to the gram of sugar, acid and alcohol"), found.energy_kcal.sources),
            Formula(t("Caffeine of tea leaf and how much is drawn out"), caffeine.sources),
        ),
    )  # fmt: skip


def _bound(key: str, label: str, estimate: Estimate, measure: Kind | Number) -> Line:
    return told(key, label, estimate, measure, Span.BOUNDS)


def _caffeine() -> Question:
    return Question(
        key="caffeine",
        group=Group.LABEL,
        title=t("How much caffeine does the tea give?"),
        purpose=t("Caffeine that the leaf gives to a litre, from published contents."),
        words=t("caffeine leaf black green tea"),
        fields=_leaf_fields(),
        answer=_caffeine_answered,
    )


def _caffeine_answered(given: Inputs) -> Answer:
    found = _leaf_caffeine(given)
    return Answer(
        lines=(_bound("caffeine", t("Caffeine in a litre"), found, measures.MILLIGRAMS_PER_LITRE),),
        says=t("Between {caffeine_low} and {caffeine_high}; none is taken to be lost in souring."),
        caveats=found.caveats,
        formulas=(Formula(t("Caffeine of tea leaf and how much is drawn out"), found.sources),),
    )


def _cost() -> Question:
    return Question(
        key="cost",
        group=Group.LABEL,
        title=t("What does a litre cost?"),
        purpose=t("From what you paid for packs and what you used of them, in your own money."),
        words=t("price money per bottle saved shop"),
        fields=(
            number("volume_l", t("The batch gives"), Kind.VOLUME, 3.5),
            number("sugar_price", t("Price of the sugar"), measures.MONEY, 1.6, low=0.0, high=1e6),
            number("sugar_pack_g", t("The sugar's pack holds"), Kind.MASS, 1000.0),
            number("sugar_used_g", t("Sugar used"), Kind.MASS, 200.0, low=0.0, high=1e6),
            number("tea_price", t("Price of the tea"), measures.MONEY, 4.0, low=0.0, high=1e6),
            number("tea_pack_g", t("The tea's pack holds"), Kind.MASS, 100.0),
            number("tea_used_g", t("Tea used"), Kind.MASS, 16.0, low=0.0, high=1e6),
            number("other_cost", t("Everything else"), measures.MONEY, 0.0, low=0.0, high=1e6),
            number("shop_price", t("A bottle in the shop costs"), measures.MONEY, low=0.0,
                   high=1e6),
            number("shop_l", t("The shop's bottle holds"), Kind.VOLUME),
        ),
        answer=_costed,
        renames={"price": "sugar_price", "size": "sugar_pack_g", "amount": "sugar_used_g"},
    )  # fmt: skip


def _decimal(given: Inputs, key: str) -> Decimal:
    """Return what was typed as the decimal it was typed as."""
    return Decimal(repr(given.number(key)))


def _size(given: Inputs, key: str) -> Decimal:
    size = _decimal(given, key)
    if not Decimal(0) < size <= Decimal(1_000_000):
        raise ImpossibleInput(key, size, low=0.0, reason="nothing")
    return size


def _costed(given: Inputs) -> Answer:
    uses = tuple(
        cost.Use(
            name=name,
            pack=cost.Pack(
                price=_decimal(given, f"{name}_price"), size=_size(given, f"{name}_pack_g")
            ),
            amount=_decimal(given, f"{name}_used_g"),
        )
        for name in ("sugar", "tea")
    )
    other = cost.Use(
        name="other",
        pack=cost.Pack(price=_decimal(given, "other_cost"), size=Decimal(1)),
        amount=Decimal(1),
    )
    batch = cost.batch_cost((*uses, other), volume_l=_size(given, "volume_l"))
    parts = dict(batch.parts)
    lines = [
        _money("litre", t("A litre costs"), batch.per_litre),
        _money("total", t("The whole batch"), batch.total),
        _money("sugar", t("Of it sugar"), parts["sugar"]),
        _money("tea", t("Of it tea"), parts["tea"]),
    ]
    if given.maybe("shop_price") is not None:
        shop = cost.Pack(price=_decimal(given, "shop_price"), size=_size(given, "shop_l"))
        lines.append(_money("saved", t("Saved against the shop"), cost.saved(batch, shop)))
    return Answer(
        lines=tuple(lines),
        says=t("{volume_l} for {total} in all, {litre} a litre. Starter, culture and your time "
               "count as free."),
        formulas=(Formula(t("Price over pack, times what was used, in exact decimals")),),
    )  # fmt: skip


def _money(key: str, label: str, amount: Decimal) -> Line:
    return exact(key, label, float(cost.rounded(amount)), measures.MONEY)
