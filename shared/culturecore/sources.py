"""The bibliography: every figure in the core names one of these keys.

What was read itself, what only in another's words, and what is remembered or
customary is kept apart, so that no figure looks better founded than it is.
"""

from __future__ import annotations

from dataclasses import dataclass
from enum import Enum


class Standing(Enum):
    """How well a source stands behind what it is cited for."""

    READ = "read"  # the passage itself was read
    SECOND_HAND = "second_hand"  # read as quoted or reprinted elsewhere
    FROM_MEMORY = "from_memory"  # UNCONFIRMED: known, but not looked up
    DERIVED = "derived"  # arithmetic from figures that have a source
    PRACTICE = "practice"  # common practice, no source
    ASSUMPTION = "assumption"  # chosen for this program, no source


@dataclass(frozen=True, slots=True)
class Source:
    """One entry: who, where, and how far it was read."""

    key: str
    citation: str
    standing: Standing


def _by_key(*entries: Source) -> dict[str, Source]:
    return {entry.key: entry for entry in entries}


SOURCES: dict[str, Source] = _by_key(
    # --- safety -----------------------------------------------------------------
    Source(
        "fpt_2025",
        "Food Protection Trends, March/April 2025, home-brewing study, p. 93: 2.5 <= pH < 4.2 "
        "as the usual window, 4.2 as the critical limit",
        Standing.READ,
    ),
    Source(
        "niagara_region",
        "Niagara Region (Ontario), kombucha best practices: pH above 2.5 and never above 4.2; "
        "steep in water above 164 degF; discard everything at any mould",
        Standing.READ,
    ),
    Source(
        "nummer_2013",
        "Nummer, B. A. 2013, J. Environ. Health 76(4):8-11: pH 4.2 within seven days "
        "(the rule was read in a press restatement only)",
        Standing.SECOND_HAND,
    ),
    Source(
        "fst_297",
        "Virginia Cooperative Extension, FST-297, Table 1 (after Nummer 2013): 10 % starter, "
        "boil, steep 10 min, 7-10 days at room temperature",
        Standing.READ,
    ),
    Source(
        "kstate_2019",
        "K-State Extension column, 2019: 1-2 US cups of starter per US gallon (6.25-12.5 %)",
        Standing.READ,
    ),
    Source(
        "food_code_tcs",
        "FDA Food Code, definition of time/temperature-controlled food, Tables A and B: pH 4.6",
        Standing.SECOND_HAND,
    ),
    Source(
        "food_code_cooling",
        "FDA Food Code cooling rule as adopted by Tennessee 0080-04-09-.03 (57 to 21 degC in "
        "2 h) and Minnesota 4626.0408 (4 h by time alone)",
        Standing.READ,
    ),
    Source("cfr_114_80", "21 CFR 114.80(a): pH 4.6; above 4.0 a meter is needed", Standing.READ),
    Source(
        "mmwr_1995",
        "CDC, MMWR 8 Dec 1995; 44(48):892-893, 899-900: no lead-glazed ceramics or lead "
        "crystal (the warning was read as quoted by others)",
        Standing.SECOND_HAND,
    ),
    Source(
        "munilla_garcia_2023",
        "Munilla-Garcia et al. 2023, Rev. Esp. Salud Publica 97:e202305040: lead from a glazed "
        "pot, 0.95 mg/kg after 14 days, 47 mg/kg as packed",
        Standing.READ,
    ),
    Source(
        "culture_temperature_practice",
        "Culture temperature limits: upper end of the usual range, no regulator's figure found",
        Standing.FROM_MEMORY,
    ),
    Source(
        "safety_choice",
        "Cautious choice of this program between sourced limits",
        Standing.ASSUMPTION,
    ),
    Source("material_practice", "Vessel materials beyond lead: common practice", Standing.PRACTICE),
    Source(
        "recipe_practice",
        "Usual sugar and leaf per litre, starter amounts by taste, water kept by wet leaves",
        Standing.PRACTICE,
    ),
    # --- physics and chemistry ---------------------------------------------------
    Source(
        "emmerich_icumsa",
        "Emmerich & Emmerich / ICUMSA SPS-4 sucrose density polynomial, after Bubnik et al. "
        "1995 (coefficients read in two independent public codes)",
        Standing.SECOND_HAND,
    ),
    Source(
        "kell_water_density",
        "Water density, Kell-type form printed together with the sucrose polynomial",
        Standing.SECOND_HAND,
    ),
    Source(
        "llano_2005",
        "Heat capacity of sugar solution, linear sugar-industry form as cited to Llano 2005",
        Standing.SECOND_HAND,
    ),
    Source(
        "davies_1962",
        "Davies, C. W. 1962, Ion Association: activity coefficients (the form PHREEQC uses by "
        "default, Parkhurst & Appelo 2013, USGS TM 6-A43)",
        Standing.FROM_MEMORY,
    ),
    Source(
        "bradley_pitzer_1979",
        "Bradley & Pitzer 1979, J. Phys. Chem. 83:1599: permittivity of water",
        Standing.FROM_MEMORY,
    ),
    Source(
        "goldberg_2002",
        "Goldberg, Kishore & Lennen 2002, J. Phys. Chem. Ref. Data 31:231, eqs. 1-4: "
        "ionisation constants against temperature (dCp values from memory)",
        Standing.SECOND_HAND,
    ),
    Source("nist46_minteq", "NIST 46 constants as printed in minteq.v4.dat", Standing.READ),
    Source(
        "zubiaur_1998",
        "Gluconic acid pK: Zubiaur et al. 1998, Talanta 45:1007 (3.92); Zhang et al. 2007 "
        "(3.30); Huang et al. 2017 (3.74)",
        Standing.READ,
    ),
    Source(
        "plummer_busenberg_1982",
        "Plummer & Busenberg 1982, carbonate equilibria, as in phreeqc.dat",
        Standing.READ,
    ),
    Source(
        "simpson_2001",
        "Simpson, Shaw & Smith 2001, Br. Dent. J. 190:374: black tea pH 4.9 (abstract)",
        Standing.READ,
    ),
    Source(
        "lunkes_2014",
        "Lunkes & Hashizume 2014: brewed teas pH 6.75-7.89 (hard water)",
        Standing.READ,
    ),
    Source("tea_buffer_assumption", "Buffering of brewed tea: an assumption", Standing.ASSUMPTION),
    Source(
        "starter_acid_assumption",
        "Acid make-up of a starter that was not titrated: shares after Chen & Liu 2000, Sievers "
        "1995, Velicanski 2013; strong-ion excess set by matching start and end pH",
        Standing.ASSUMPTION,
    ),
    Source(
        "astm_e70_aoac_97341",
        "AOAC 973.41: between-laboratory sd of pH 0.10 at 3.5; ASTM E70 on sugar solutions",
        Standing.READ,
    ),
    Source("aoac_94215", "AOAC 942.15: titratable acidity, end point pH 8.1 +- 0.2", Standing.READ),
    Source(
        "wagner_pruss_1993",
        "Wagner & Pruss 1993 / IAPWS SR1-86: vapour pressure of water",
        Standing.FROM_MEMORY,
    ),
    Source("isa_1975", "ISO 2533:1975 standard atmosphere", Standing.FROM_MEMORY),
    Source("newton_cooling", "Newton's law of cooling", Standing.DERIVED),
    Source("geometry", "Volumes of stacked frusta", Standing.DERIVED),
    Source(
        "vessel_proportions", "Neck, shoulder and foot proportions of jars", Standing.ASSUMPTION
    ),
    # --- kitchen -----------------------------------------------------------------
    Source("usc_26_5052", "26 USC 5052(b): US gallon = 231 cubic inches", Standing.READ),
    Source(
        "uk_weights_1985",
        "UK Weights and Measures Act 1985, Schedule 1: gallon = 4.54609 L",
        Standing.SECOND_HAND,
    ),
    Source(
        "international_yard_pound",
        "International yard and pound agreement 1959: 0.45359237 kg, 25.4 mm",
        Standing.FROM_MEMORY,
    ),
    Source(
        "usda_sugar",
        "USDA household weight of granulated sugar: 200 g a cup, 4.2 g a teaspoon "
        "(the Sugar Association says 192 and 4)",
        Standing.SECOND_HAND,
    ),
    Source(
        "iso_3103", "ISO 3103:2019: 2 g of leaf to 100 mL of boiling water, 6 min", Standing.READ
    ),
)
