"""What is believed about souring before a jar has been read: each belief as data, with its basis.

The numbers are wide on purpose. Published courses of kombucha are few, and the culture
in the jar matters more than the recipe. A prior whose ``is_assumption`` is true rests on
ordinary judgement, not on a measured kombucha.
"""

from __future__ import annotations

from dataclasses import dataclass
from enum import Enum
from typing import Final

from culturecore.sources import Source, Standing


class Spread(Enum):
    """How the spread of a prior is told."""

    GEOMETRIC_SD = "geometric_sd"  # lognormal around the centre; the spread is a factor
    SD = "sd"  # normal around the centre; the spread is in the prior's unit


class Confidence(Enum):
    """How far a prior can be trusted."""

    LOW = "low"
    MEDIUM = "medium"


@dataclass(frozen=True, slots=True, kw_only=True)
class Prior:
    """One belief: its centre, its spread, and where both come from.

    ``centre`` and ``spread`` are in ``unit``, except that a geometric standard deviation
    is a plain factor. ``low`` and ``high``, where given, are its usual range;
    ``sources`` are keys of :data:`SOURING_SOURCES`.
    """

    centre: float
    spread: float
    spread_kind: Spread
    unit: str
    basis: str
    confidence: Confidence
    is_assumption: bool = False
    low: float | None = None
    high: float | None = None
    sources: tuple[str, ...] = ()


SOURING_SOURCES: Final[dict[str, Source]] = {
    source.key: source
    for source in (
        Source(
            "kustyawati_ramli",
            "Kustyawati & Ramli, rosella and black tea kombucha, Univ. Lampung (about 2008): day "
            "15 at 32 degC (abstract)",
            Standing.READ,
        ),
        Source(
            "chen_liu_2000",
            "Chen & Liu 2000, J. Appl. Microbiol. 89:834-839, mean of nine cultures: rates from "
            "the abstract, points read off a figure in Sheffar & Ma 2022",
            Standing.SECOND_HAND,
        ),
        Source(
            "sievers_1995",
            "Sievers et al. 1995, Syst. Appl. Microbiol. 18:590-594, stirred: points read off a "
            "figure in Sheffar & Ma 2022",
            Standing.SECOND_HAND,
        ),
        Source(
            "kjfp_2024",
            "Korean J. Food Preserv. 2024, 31(4):673, table 2: acetic acid on days 0, 7, 14",
            Standing.READ,
        ),
        Source(
            "processes_2024",
            "Processes 2024, 12(7):1301: pH, film and acetic acid with three teas (abstract)",
            Standing.READ,
        ),
        Source(
            "jayabalan_2007",
            "Jayabalan, Marimuthu & Swaminathan 2007, Food Chem. 102:392-398 (abstract)",
            Standing.READ,
        ),
        Source(
            "velicanski_2013",
            "Velicanski, Cvetkovic & Markov 2013, Rom. Biotechnol. Lett. 18(1):8035 (abstract)",
            Standing.READ,
        ),
        Source(
            "cvetkovic_2008",
            "Cvetkovic et al. 2008, J. Food Eng. 85:387-392: surface to volume as the key "
            "variable (abstract)",
            Standing.READ,
        ),
        Source(
            "cohen_2023", "Cohen et al. 2023: warmer is faster, two temperatures", Standing.READ
        ),
        Source(
            "dusgun_2024",
            "Dusgun 2024, Biotechnol. J. Int. 28(5):1-7: 24 to 28 degC best (abstract)",
            Standing.READ,
        ),
        Source(
            "hafsari_2021",
            "Hafsari et al. 2021, Gunung Djati Conf. Ser. 6: pH on days 0 to 15 (abstract)",
            Standing.READ,
        ),
        Source(
            "huang_2022",
            "Huang, Xin & Lu 2022, eLife 11:76401: four cultures, one recipe, day 14",
            Standing.READ,
        ),
        Source(
            "sogin_worobo_2024",
            "Sogin & Worobo 2024, data repository: 47 bottled kombuchas",
            Standing.READ,
        ),
        Source(
            "souring_assumption",
            "Chosen for the souring forecast where nothing published was found",
            Standing.ASSUMPTION,
        ),
    )
}


RATE_MEQ_PER_L_DAY = Prior(
    centre=5.6,
    spread=1.6,
    spread_kind=Spread.GEOMETRIC_SD,
    unit="meq/L/day at 25 degC, mean of seven days of souring that nothing holds back",
    basis=(
        "Seven published courses put on one scale: rosella and black tea with 1 % starter at "
        "32 degC 2.5 and 3.7 (Kustyawati & Ramli), Chen & Liu 2000 (J. Appl. Microbiol. 89:834) "
        "5.7, Sievers et al. 1995 (Syst. Appl. Microbiol. 18:590) 6.1, Korean J. Food Preserv. "
        "2024 31(4):673 6.5, Processes 2024 12(7):1301 8.0, Jayabalan et al. 2007 (Food Chem. "
        "102:392) 10.5: geometric mean 5.6, geometric sd 1.6."
    ),
    confidence=Confidence.MEDIUM,
    sources=(
        "kustyawati_ramli",
        "chen_liu_2000",
        "sievers_1995",
        "kjfp_2024",
        "processes_2024",
        "jayabalan_2007",
    ),
)

CURVATURE = Prior(
    centre=1.2,
    spread=0.4,
    spread_kind=Spread.SD,
    unit="-",
    basis=(
        "Fits to the acid courses of Chen & Liu 2000 (1.35) and Sievers et al. 1995 (1.36), "
        "both read off figures in Sheffar & Ma 2022. Two cultures are few: the centre lies "
        "between them and a straight line, and the spread holds both and courses that bend "
        "down; judgement, set so that pH is not foretold too low on invented jars of other "
        "mechanics."
    ),
    confidence=Confidence.LOW,
    sources=(
        "chen_liu_2000",
        "sievers_1995",
        "souring_assumption",
    ),
)

Q10 = Prior(
    centre=2.0,
    spread=1.25,
    spread_kind=Spread.GEOMETRIC_SD,
    unit="factor per 10 degC",
    basis=(
        "No published Q10 of kombucha was found; ordinary biological range. Warmer is faster "
        "(Cohen et al. 2023), best growth at 24 to 28 degC (Dusgun 2024)."
    ),
    confidence=Confidence.LOW,
    sources=(
        "cohen_2023",
        "dusgun_2024",
        "souring_assumption",
    ),
    is_assumption=True,
)

RATE_BEYOND_TESTED_PER_10_C = Prior(
    centre=0.0,
    spread=0.7,
    spread_kind=Spread.SD,
    unit="log of the rate, per 10 degC below 18 or above 30 degC",
    basis="Nothing published was found there; heat may also slow a culture. An assumption.",
    confidence=Confidence.LOW,
    sources=("souring_assumption",),
    is_assumption=True,
)

STRONG_ION_EXCESS_MEQ_PER_L = Prior(
    centre=3.0,
    spread=1.7,
    spread_kind=Spread.GEOMETRIC_SD,
    unit="meq/L",
    basis=(
        "Set so that a start near pH 4.2 and a day 14 near pH 3.1 both come out; single samples "
        "imply about 0 (black tea) to 38 meq/L (coffee-cherry husk), 47 bottled drinks mostly "
        "0 to 4."
    ),
    confidence=Confidence.LOW,
    sources=(
        "kustyawati_ramli",
        "sogin_worobo_2024",
        "souring_assumption",
    ),
)

HERBAL_STRONG_ION_EXCESS_MEQ_PER_L = Prior(
    centre=3.0,
    spread=2.5,
    spread_kind=Spread.GEOMETRIC_SD,
    unit="meq/L",
    basis=(
        "Herbs, husks and flowers bring their own acids and potassium, which moves the pH at a "
        "given acidity far more than tea does; the factor is judgement."
    ),
    confidence=Confidence.LOW,
    sources=("souring_assumption",),
    is_assumption=True,
)

GLUCONIC_SHARE = Prior(
    centre=0.29,
    spread=0.16,
    spread_kind=Spread.SD,
    unit="share of the acid equivalents, Beta(2, 5)",
    basis=(
        "Day 20: 0.39 in Chen & Liu 2000, 0.25 in Sievers et al. 1995; acetic acid is 40 to 81 % "
        "of the titratable acidity in Velicanski et al. 2013 (Rom. Biotechnol. Lett. 18:8035)."
    ),
    confidence=Confidence.MEDIUM,
    sources=(
        "chen_liu_2000",
        "sievers_1995",
        "velicanski_2013",
    ),
)

STARTER_ACID_MEQ_PER_L = Prior(
    centre=90.0,
    spread=2.0,
    spread_kind=Spread.GEOMETRIC_SD,
    unit="meq per litre of starter whose acidity was not measured",
    basis="A ripe starter of about 5 g/L acidity as acetic acid; common practice, no source.",
    confidence=Confidence.LOW,
    sources=("souring_assumption",),
    is_assumption=True,
)

MEASURED_STARTER_SPREAD = Prior(
    centre=1.0,
    spread=1.5,
    spread_kind=Spread.GEOMETRIC_SD,
    unit="factor on the acid a measured starter brings",
    basis="Titration at home, uneven starter (top and bottom differ), volume by eye; judgement.",
    confidence=Confidence.MEDIUM,
    sources=("souring_assumption",),
    is_assumption=True,
)

SURFACE_EXPONENT = Prior(
    centre=0.5,
    spread=0.25,
    spread_kind=Spread.SD,
    unit="-",
    basis=(
        "Surface to volume governs the time (Cvetkovic et al. 2008, J. Food Eng. 85:387): 1 if "
        "oxygen alone limits, 0 if the yeast does; the number between is an assumption."
    ),
    confidence=Confidence.LOW,
    sources=(
        "cvetkovic_2008",
        "souring_assumption",
    ),
    is_assumption=True,
)

REFERENCE_SURFACE_PER_CM = Prior(
    centre=0.08,
    spread=1.5,
    spread_kind=Spread.GEOMETRIC_SD,
    unit="cm2 of surface per cm3 of liquid",
    basis=(
        "The published courses seldom tell their vessel; 12.5 cm of liquid stands between small "
        "beakers and household jars. No source."
    ),
    confidence=Confidence.LOW,
    sources=("souring_assumption",),
    is_assumption=True,
)

TEA_FACTOR = Prior(
    centre=1.0,
    spread=1.2,
    spread_kind=Spread.GEOMETRIC_SD,
    unit="factor on the rate",
    basis=(
        "Sources disagree: green highest of three teas in Jayabalan et al. 2007; oolong highest, "
        "by 4 %, in Processes 2024 12(7):1301. So no tea is taken to be faster."
    ),
    confidence=Confidence.LOW,
    sources=(
        "jayabalan_2007",
        "processes_2024",
    ),
)

LAG_DAYS = Prior(
    centre=1.3,
    spread=2.0,
    spread_kind=Spread.SD,
    unit="days before souring sets in; below zero none, which is about a quarter of the jars",
    basis=(
        "Hafsari et al. 2021 (Gunung Djati Conf. Ser. 6): pH 3.47, 3.43, 3.37 on days 0, 3, 6, "
        "then 3.24, 3.09; acetic acid along a Gompertz curve, which begins slowly, in Processes "
        "2024 12(7):1301. How common and how long such waits are is an assumption."
    ),
    confidence=Confidence.LOW,
    sources=(
        "hafsari_2021",
        "processes_2024",
        "souring_assumption",
    ),
    is_assumption=True,
)

USUAL_STARTER_MEQ_PER_L = 9.0  # a tenth of usual starter
LONGEST_LAG_DAYS = 8.0  # judgement

LAG_PER_E_FOLD_DAYS = Prior(
    centre=0.5,
    spread=0.3,
    spread_kind=Spread.SD,
    unit="days of further waiting for each e-fold less starter acid than usual",
    basis=(
        "Fewer cells need longer to become many: half a day for each e-fold, as cells do that "
        "double in 8 hours; an assumption. Without acid starter pH 5 fell to 3.5 in ten days "
        "(Huang et al. 2022)."
    ),
    confidence=Confidence.LOW,
    sources=("huang_2022", "souring_assumption"),
    is_assumption=True,
)

ROOM_FOR_ACID_MEQ_PER_L = Prior(
    centre=175.0,
    spread=1.7,
    spread_kind=Spread.GEOMETRIC_SD,
    unit="meq/L of acid formed, towards which a jar settles",
    basis=(
        "Highest acetic acid of Jayabalan et al. 2007 9.5 g/L (158 meq/L, day 15) and of Chen & "
        "Liu 2000 11 g/L (183 meq/L, day 30). That the way there is a hyperbolic tangent and the "
        "spread are judgement: pH stalls in some jars and goes on in others."
    ),
    confidence=Confidence.LOW,
    sources=("jayabalan_2007", "chen_liu_2000", "souring_assumption"),
    is_assumption=True,
)

SWEET_TEA_PH = Prior(
    centre=5.0,
    spread=0.25,
    spread_kind=Spread.SD,
    unit="pH of sweet tea without any starter",
    basis=(
        "Brews without acid starter began at pH 5 (Huang et al. 2022; Jayabalan et al. 2007): "
        "the tea's own weak acids stand against most of its ions. The spread is judgement."
    ),
    confidence=Confidence.MEDIUM,
    sources=("huang_2022", "jayabalan_2007", "souring_assumption"),
)

PACE_WANDERING = Prior(
    centre=0.0,
    spread=0.4,
    spread_kind=Spread.SD,
    unit="log of the rate, from one piece of days to another",
    basis=(
        "No jar keeps to a formula: places warm and cool, cultures pause and recover. Set so "
        "that bands hold as often as they say on invented jars of other mechanics."
    ),
    confidence=Confidence.LOW,
    sources=("souring_assumption",),
    is_assumption=True,
)

PACE_MEMORY_DAYS = Prior(
    centre=5.0,
    spread=2.0,
    spread_kind=Spread.GEOMETRIC_SD,
    unit="days until a slow or fast spell is mostly forgotten",
    basis="Spells of weather and the stalls of a culture last some days; an assumption.",
    confidence=Confidence.LOW,
    sources=("souring_assumption",),
    is_assumption=True,
)

SUGAR_BESIDE_ACIDS = Prior(
    centre=1.4,
    spread=1.8,
    spread_kind=Spread.GEOMETRIC_SD,
    unit="factor on the sugar that the acids alone would take; the spread is that of its excess",
    basis=(
        "Cells, cellulose and what is breathed away take sugar too. Between a tenth and a "
        "whole more than the acids need; an assumption."
    ),
    confidence=Confidence.LOW,
    sources=("souring_assumption",),
    is_assumption=True,
)

PH_WOBBLE = Prior(
    centre=0.0,
    spread=0.045,
    spread_kind=Spread.SD,
    unit="pH",
    basis=(
        "What a jar does beside any smooth curve, and what differs between two spots in it. With "
        "a hand meter's 0.05 it makes 0.07; an assumption."
    ),
    confidence=Confidence.MEDIUM,
    sources=("souring_assumption",),
    is_assumption=True,
)

TA_WOBBLE = Prior(
    centre=0.0,
    spread=0.05,
    spread_kind=Spread.SD,
    unit="share of the titratable acidity",
    basis="Burette, sample volume and colour change at home; an assumption.",
    confidence=Confidence.MEDIUM,
    sources=("souring_assumption",),
    is_assumption=True,
)

SUCROSE_LOSS_PER_DAY = Prior(
    centre=0.065,
    spread=1.9,
    spread_kind=Spread.GEOMETRIC_SD,
    unit="1/day, first order",
    low=0.03,
    high=0.15,
    basis="0.032 in Chen & Liu 2000 (standing), 0.13 in Sievers et al. 1995 (stirred).",
    confidence=Confidence.LOW,
    sources=(
        "chen_liu_2000",
        "sievers_1995",
    ),
)

ETHANOL_PLATEAU_PERCENT = Prior(
    centre=0.4,
    spread=2.5,
    spread_kind=Spread.GEOMETRIC_SD,
    unit="% by volume, open first stage",
    basis=(
        "0.55 at day 14 in Chen & Liu 2000; 0.06 and 0.56 in Huang et al. 2022 (eLife 11:76401); "
        "1.79 in Kustyawati & Ramli; median 0.40 of 47 bottled drinks (Sogin & Worobo 2024)."
    ),
    confidence=Confidence.MEDIUM,
    sources=(
        "chen_liu_2000",
        "huang_2022",
        "kustyawati_ramli",
        "sogin_worobo_2024",
    ),
)
