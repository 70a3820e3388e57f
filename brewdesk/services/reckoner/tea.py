"""Questions about tea and starter."""

from __future__ import annotations

from brewdesk.services.reckoner import measures
from brewdesk.services.reckoner.naming import names, names_or_unknown, t
from brewdesk.services.reckoner.question import (
    Answer,
    Field,
    Formula,
    Group,
    Inputs,
    Question,
    Span,
    choice,
    exact,
    in_words,
    number,
    told,
)
from brewdesk.services.wording.measures import measure_words
from brewdesk.services.wording.reckonernames import grade_name
from culturecore import kitchen, starter, sweettea
from culturecore.errors import ImpossibleInput
from culturecore.stages import StarterTaste, TeaKind
from culturecore.units import Kind


def questions() -> tuple[Question, ...]:
    """Return the questions of this group."""
    return (_judge(), _amount(), _start_ph(), _bags(), _own_bag())


def _starter_fields() -> tuple[Field, ...]:
    return (
        number("starter_ph", t("pH of the starter, if measured"), Kind.PH),
        number("starter_ta_g_per_l", t("Its acidity, if titrated"), Kind.ACIDITY),
        choice(
            "starter_taste", t("It tastes"), names_or_unknown(StarterTaste), StarterTaste.BALANCED
        ),
    )


def _judge() -> Question:
    return Question(
        key="judge_starter",
        group=Group.STARTER,
        title=t("How strong is my starter?"),
        purpose=t("Grades a starter by its pH, its titrated acidity or, failing both, its taste."),
        words=t("vinegary mild weak grade quality"),
        fields=_starter_fields(),
        answer=_judged,
        renames={"ph": "starter_ph", "ta_g_per_l": "starter_ta_g_per_l"},
    )


def _judged(given: Inputs) -> Answer:
    judged = starter.judge_starter(
        ph=given.maybe("starter_ph"),
        ta_g_per_l=given.maybe("starter_ta_g_per_l"),
        taste=given.maybe_chosen("starter_taste", StarterTaste),
    )
    return Answer(
        lines=(
            in_words("grade", t("This starter is"), grade_name(judged.grade)),
            told("acidity", t("Titratable acidity, as acetic acid"), judged.ta_g_per_l,
                 Kind.ACIDITY),
            told("ph", t("pH"), judged.ph, Kind.PH),
            exact("usual", t("Makers usually take of such a one"), judged.usual_share.value,
                  measures.PERCENT),
        ),
        says=t("Its acidity is about {acidity}; from what you gave it may lie anywhere between "
               "{acidity_low} and {acidity_high}."),
        verdicts=judged.verdicts,
        caveats=judged.ta_g_per_l.caveats,
        formulas=(
            Formula(t("Charge balance of weak acids, with assumed shares"),
                    judged.ta_g_per_l.sources),
            Formula(t("Grades and usual amounts"), judged.sources),
        ),
    )  # fmt: skip


def _amount() -> Question:
    return Question(
        key="starter_for_ph",
        group=Group.STARTER,
        title=t("How much starter for a start pH?"),
        purpose=t("The amount of starter that brings tea and starter together to a pH you want."),
        words=t("15 percent volume share liquid alkalinity hardness water"),
        fields=(
            number("blend_volume_l", t("To make, starter included"), Kind.VOLUME, 4.0),
            number("target_start_ph", t("pH to start at"), Kind.PH, 4.2),
            *_starter_fields(),
            choice("tea_kind", t("Tea"), names(TeaKind), TeaKind.BLACK),
            number("tea_g_per_l", t("Tea in the sweet tea"), Kind.TEA, 4.0),
            number("sugar_g_per_l", t("Sugar in the sweet tea"), Kind.SUGAR, 50.0),
            number("water_alkalinity_meq_per_l", t("Alkalinity of the water, if known"),
                   Kind.ALKALINITY),
        ),
        answer=_amount_answered,
        is_slow=True,
    )  # fmt: skip


def _amount_answered(given: Inputs) -> Answer:
    found = starter.starter_volume_for(
        blend_volume_l=given.number("blend_volume_l"),
        target_start_ph=given.number("target_start_ph"),
        starter_ph=given.maybe("starter_ph"),
        starter_ta_g_per_l=given.maybe("starter_ta_g_per_l"),
        starter_taste=given.maybe_chosen("starter_taste", StarterTaste),
        tea_kind=given.chosen("tea_kind", TeaKind),
        tea_g_per_l=given.number("tea_g_per_l"),
        sugar_g_per_l=given.number("sugar_g_per_l"),
        water_alkalinity_meq_per_l=given.maybe("water_alkalinity_meq_per_l"),
    )
    return Answer(
        lines=(
            told("volume", t("Starter to put in"), found.volume_l, Kind.VOLUME),
            told("share", t("Share of the whole"), found.share, measures.PERCENT),
            told("start_ph", t("Start pH with that much"), found.start_ph, Kind.PH),
            told("alkalinity", t("Alkalinity reckoned with"), found.alkalinity_meq_per_l,
                 Kind.ALKALINITY),
            exact("usual", t("Makers usually take (common practice)"), found.usual_volume_l,
                  Kind.VOLUME),
        ),
        says=t("About {volume} should start it near pH {target_start_ph}; the doubts about "
               "starter, tea and water make it {volume_low} to {volume_high}."),
        verdicts=found.verdicts,
        caveats=found.share.caveats,
        notes=(
            t("This is what the chemistry takes. The planner never takes less than published "
              "advice does, so that the live culture is strong enough."),
            t("Measure the pH once it is mixed: the figure is an estimate."),
        ),
        formulas=(Formula(t("Balance of strong ions at the pH wanted"), found.sources),),
    )  # fmt: skip


def _start_ph() -> Question:
    return Question(
        key="start_ph",
        group=Group.STARTER,
        title=t("What pH will my blend start at?"),
        purpose=t("The pH of sweet tea and a given amount of starter, once they are mixed."),
        words=t("mix blend estimate first day"),
        fields=(
            number("fill_volume_l", t("To make, starter included"), Kind.VOLUME, 4.0),
            number("starter_volume_l", t("Starter in it"), Kind.VOLUME, 0.6, low=0.0),
            *_starter_fields(),
            choice("tea_kind", t("Tea"), names(TeaKind), TeaKind.BLACK),
            number("tea_g_per_l", t("Tea in the sweet tea"), Kind.TEA, 4.0),
            number("sugar_g_per_l", t("Sugar in the sweet tea"), Kind.SUGAR, 50.0),
            number("water_alkalinity_meq_per_l", t("Alkalinity of the water"), Kind.ALKALINITY,
                   1.5),
        ),
        answer=_start_ph_answered,
        is_slow=True,
    )  # fmt: skip


def _start_ph_answered(given: Inputs) -> Answer:
    plan = sweettea.plan(
        sweettea.Wish(
            fill_volume_l=given.number("fill_volume_l"),
            starter_volume_l=given.number("starter_volume_l"),
            starter=sweettea.Starter(
                ph=given.maybe("starter_ph"),
                ta_g_per_l=given.maybe("starter_ta_g_per_l"),
                taste=given.maybe_chosen("starter_taste", StarterTaste),
            ),
            tea_kind=given.chosen("tea_kind", TeaKind),
            tea_g_per_l=given.number("tea_g_per_l"),
            sugar_g_per_l=given.number("sugar_g_per_l"),
            water_alkalinity_meq_per_l=given.number("water_alkalinity_meq_per_l"),
        )
    )
    of_acid = tuple(v for v in plan.verdicts if v.code.startswith(("start_ph", "starter")))
    return Answer(
        lines=(
            told("start_ph", t("Start pH"), plan.start_ph, Kind.PH),
            exact("share", t("Share of starter"), plan.starter_share.value, measures.PERCENT),
        ),
        says=t("It comes out between pH {start_ph_low} and {start_ph_high} about 8 times in 10."),
        verdicts=of_acid,
        caveats=plan.start_ph.caveats,
        notes=(t("Measure it once it is mixed: the figure is an estimate."),),
        formulas=(
            Formula(t("Charge balance of the weak acids of tea and starter"),
                    (*plan.start_ph.sources, "davies_1962", "goldberg_2002")),
        ),
    )  # fmt: skip


def _bags() -> Question:
    return Question(
        key="tea_bags",
        group=Group.STARTER,
        title=t("How many tea bags is that?"),
        purpose=t("Whole bags nearest to a weight of tea, by the weight of your own bags."),
        words=t("kitchen measure leaf count"),
        fields=(
            number("mass_g", t("Tea wanted"), Kind.MASS, 16.0),
            number("bag_g", t("Tea in one bag"), Kind.MASS, 2.0),
        ),
        answer=_bags_answered,
    )


def _bags_answered(given: Inputs) -> Answer:
    bags = kitchen.tea_bags(given.number("mass_g"), given.number("bag_g"))
    return Answer(
        lines=(
            in_words("bags", t("Tea bags"), measure_words([bags])),
        ),
        says=t("That is {bags} for {mass_g}."),
        notes=(t("About 2 g a bag is common practice; weigh ten of yours and divide."),),
        formulas=(Formula(t("Nearest whole number of bags"), ("recipe_practice",)),),
    )  # fmt: skip


def _own_bag() -> Question:
    return Question(
        key="weighed_bag",
        group=Group.STARTER,
        title=t("What does one of my tea bags hold?"),
        purpose=t("Weigh several at once: a kitchen scale is too coarse for a single bag."),
        words=t("weigh scale leaf"),
        fields=(
            number("bags", t("Bags weighed together"), measures.COUNT, 10.0, low=1.0, high=1000.0),
            number("total_g", t("They weigh"), Kind.MASS, 22.0),
            number("scale_step_g", t("Last digit of the scale"), Kind.MASS, 1.0),
        ),
        answer=_own_bag_answered,
    )


def _own_bag_answered(given: Inputs) -> Answer:
    bags = given.number("bags")
    if not bags.is_integer():
        raise ImpossibleInput("bags", bags, reason="not_whole")
    bag = kitchen.weighed_bag_g(
        bags=int(bags),
        total_g=given.number("total_g"),
        scale_step_g=given.number("scale_step_g"),
    )
    return Answer(
        lines=(told("bag", t("One bag"), bag, Kind.MASS, Span.BOUNDS),),
        says=t("Between {bag_low} and {bag_high}, as far as the scale can tell."),
        notes=(t("Paper and string are weighed too."),),
        formulas=(Formula(t("Weight over count, one step of the scale either way"),
                          ("recipe_practice",)),),
    )  # fmt: skip
