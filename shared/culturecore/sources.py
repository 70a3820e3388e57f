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
        "steep in water above 164 °F; discard everything at any mould",
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
        "FDA Food Code cooling rule as adopted by Tennessee 0080-04-09-.03 (57 to 21 °C in "
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
    Source(
        "look_practice",
        "How mold and a healthy film look, and to keep a doubtful jar apart and look again "
        "the next day: common practice",
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
    # --- titration, electrode, instruments ---------------------------------------
    Source(
        "oiv_as313_01",
        "OIV-MA-AS313-01: total acidity, end point pH 7.0, in meq/L or as tartaric acid "
        "(0.075 g/meq); carbon dioxide is driven out first",
        Standing.READ,
    ),
    Source("iupac_masses", "Molar masses from IUPAC standard atomic masses", Standing.DERIVED),
    Source(
        "titration_doubts",
        "Usual doubts of a kitchen titration: a drop of lye, a syringe, bought lye 1 %; "
        "a still drink that was not degassed may hold 1 g/L of carbon dioxide",
        Standing.ASSUMPTION,
    ),
    Source(
        "jis_z_8802",
        "JIS Z 8802 (2011): pH of phthalate, phosphate and borate buffer by temperature, as "
        "printed by a meter maker",
        Standing.READ,
    ),
    Source(
        "us_technical_buffers",
        "Technical buffers 4, 7 and 10 by temperature, a maker's manual MI 611-211 (2005), Table 7",
        Standing.READ,
    ),
    Source("nernst", "Nernst slope ln 10 R T / F from the SI constants of 2019", Standing.DERIVED),
    Source(
        "check_buffer_note",
        "A utility laboratory's note: a check buffer reads within 0.1 pH",
        Standing.READ,
    ),
    Source(
        "calibration_practice",
        "Calibrating on each day of use, and after a week at the latest: common practice",
        Standing.PRACTICE,
    ),
    Source(
        "strip_doubts",
        "Reading a strip: sd of six tenths of a step of its colour scale, at least 0.15 pH",
        Standing.ASSUMPTION,
    ),
    Source(
        "oiml_r22_glass",
        "Expansion of soda glass, 25e-6 per kelvin, as used with OIML R 22 in public code",
        Standing.SECOND_HAND,
    ),
    Source(
        "icumsa_1974",
        "ICUMSA 1974 table of refractive index and Brix at 20 °C, as in the package chemicals",
        Standing.SECOND_HAND,
    ),
    Source(
        "iapws_r9_97",
        "IAPWS R9-97: refractive index of water by wavelength, temperature and density (as in "
        "the package chemicals)",
        Standing.SECOND_HAND,
    ),
    Source(
        "lorentz_lorenz",
        "Lorentz-Lorenz: refraction per gram of water and of sucrose adds up",
        Standing.DERIVED,
    ),
    Source(
        "ice_enthalpy",
        "Melting ice takes 333.6 kJ/kg and ice has 2.05 kJ/kg/K (IAPWS, as in the package "
        "chemicals)",
        Standing.SECOND_HAND,
    ),
    Source(
        "evaporating_pot",
        "An evaporating open pot, computed, not measured: readings above 58 °C foretell half "
        "to two thirds of the time",
        Standing.ASSUMPTION,
    ),
    Source(
        "fritsch_carlson_1980",
        "Fritsch & Carlson 1980, SIAM J. Numer. Anal. 17:238: monotone cubic interpolation",
        Standing.FROM_MEMORY,
    ),
    Source(
        "cvetkovic_2008",
        "Cvetkovic et al. 2008, J. Food Eng. 85:387: surface to volume in kombucha (abstract)",
        Standing.READ,
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
        "usda_fruit_sugars",
        "USDA, sugars in 100 g of fruit, as tabled by a health magazine (raspberries 4.42 to "
        "pomegranate 16.57)",
        Standing.SECOND_HAND,
    ),
    Source(
        "usda_honey",
        "USDA FoodData Central 169640, honey: sugars 82.12 g in 100 g (as quoted)",
        Standing.SECOND_HAND,
    ),
    Source(
        "usda_maple",
        "USDA FoodData Central 169661, maple syrup: sugars 60.5 g in 100 g (as quoted in code)",
        Standing.SECOND_HAND,
    ),
    Source(
        "usda_apple_juice",
        "USDA, apple juice without added sugar: 9.67 g in 100 g (as quoted by a fruit table)",
        Standing.SECOND_HAND,
    ),
    Source(
        "usda_ginger",
        "USDA FoodData Central 169231, ginger root, raw: sugars 1.7 g in 100 g (as quoted)",
        Standing.SECOND_HAND,
    ),
    Source(
        "usda_from_memory",
        "USDA food composition, from memory: sugars in sugar, agave syrup and unsweetened juices",
        Standing.FROM_MEMORY,
    ),
    Source(
        "additions_spread",
        "How far the sugar of fruit, juice and syrup strays from a table's mean",
        Standing.ASSUMPTION,
    ),
    Source(
        "iso_3103", "ISO 3103:2019: 2 g of leaf to 100 mL of boiling water, 6 min", Standing.READ
    ),
    # --- fizz and bottles ---------------------------------------------------------
    Source(
        "weiss_1974",
        "Weiss, R. F. 1974, Mar. Chem. 2:203: solubility and fugacity of CO2 (coefficients "
        "checked against PyCO2SYS and CoolProp)",
        Standing.SECOND_HAND,
    ),
    Source(
        "srd_106",
        "IUPAC-NIST Solubility Database (SRD 106): CO2 in water, Murray & Riley 1971; molar "
        "volume of the gas 22.2605 L",
        Standing.READ,
    ),
    Source(
        "wroblewski_1882",
        "Wroblewski 1882, as digested in SRD 106: CO2 solubility per atmosphere falls 4-5 % at "
        "5 atm and 11 % at 10",
        Standing.SECOND_HAND,
    ),
    Source(
        "ec_2676_90",
        "Regulation (EEC) No 2676/90, annex: CO2 in wine = 1.951 p (0.86 - 0.01 A)"
        "(1 - 0.00144 S) (read in a copy)",
        Standing.SECOND_HAND,
    ),
    Source(
        "usher_1910",
        "Usher 1910, after Seidell: CO2 in sucrose solutions, about -4 % at 50 g/L",
        Standing.FROM_MEMORY,
    ),
    Source(
        "sander_2023",
        "Sander, R. 2023, Henry's law constants v5: nitrogen in water 6.4e-6 mol/m3/Pa, 1300 K "
        "(checked against PHREEQC)",
        Standing.FROM_MEMORY,
    ),
    Source("stoichiometry", "Balanced reactions and standard atomic masses", Standing.DERIVED),
    Source(
        "bottle_yeast_assumption",
        "Sugar that yeast uses up in a closed bottle: 0.5-3 g/L a day at 22 °C, 1.7 to 3 "
        "times as much for 10 °C more; yield 90-100 %",
        Standing.ASSUMPTION,
    ),
    Source(
        "bottle_pooling_assumption",
        "Of what bottlings differ in their pace, half lies between kitchens and half between "
        "the bottlings of one kitchen",
        Standing.ASSUMPTION,
    ),
    Source(
        "bottle_feel_assumption",
        "A plastic bottle is soft below about 0.7 bar and hard above about 2 bar; a drink is flat "
        "below about 1.5 volumes and rushes out above about 3.4: all with wide doubt",
        Standing.ASSUMPTION,
    ),
    Source(
        "british_glass_tec_7",
        "British Glass TEC 7 (abstract): no glass for soft drinks above 4.7 bar carbonation "
        "pressure, nor above 1.15 L",
        Standing.READ,
    ),
    Source(
        "bs_6119_1",
        "BS 6119-1:1981 (scope; withdrawn 1 Dec 2023): glass for soft drinks, 4.5 volumes",
        Standing.READ,
    ),
    Source(
        "cetie_dt_11",
        "British Glass on CETIE DT 11: headspace about 3.5 % for one litre",
        Standing.READ,
    ),
    Source(
        "kuhn_2004",
        "Kuhn et al. 2004, Br. J. Ophthalmol. 88:69: 90 of 12,889 serious eye injuries were "
        "from bottles under pressure",
        Standing.READ,
    ),
    # --- alcohol ------------------------------------------------------------------
    Source(
        "oiml_r22",
        "OIML R 22 (1973/75), density of ethanol and water (coefficients in part from Directive "
        "76/766/EEC, the rest from public copies)",
        Standing.SECOND_HAND,
    ),
    Source(
        "lorentz_lorenz_ethanol",
        "Refraction and density of dilute ethanol and acetic acid: own computation with mixing "
        "rules, as general handbooks have it",
        Standing.DERIVED,
    ),
    Source(
        "ttb_kombucha",
        "US TTB, kombucha page, and 26 USC 5052(a): 0.5 % alcohol by volume or more at any time "
        "is an alcohol beverage",
        Standing.READ,
    ),
    Source(
        "health_canada_ethanol",
        "Health Canada: alcohol content is declared from 1.1 % by volume",
        Standing.READ,
    ),
    Source(
        "cfia_2020",
        "CFIA notice, 11 June 2020: above 0.5 % is alcoholic in most provinces and territories",
        Standing.READ,
    ),
    Source(
        "ccnse_abstract",
        "Canadian public health abstract (NCCEH/CCNSE): British Columbia and Ontario above 1 %",
        Standing.READ,
    ),
    Source(
        "wa_health",
        "Western Australia Department of Health: above 0.5 % needs an alcohol statement",
        Standing.READ,
    ),
    Source(
        "tasmania_doh",
        "Tasmania Department of Health citing Food Standards Code 2.6.2: brewed soft drink up "
        "to 1.15 %",
        Standing.READ,
    ),
    Source(
        "eu_1169_2011",
        "Regulation (EU) No 1169/2011: Art. 28(2), strength above 1.2 % is stated; Annex XIV, "
        "energy per gram",
        Standing.READ,
    ),
    Source(
        "uk_descriptors",
        "UK low-alcohol descriptors (voluntary guidance, as summarised): low alcohol up to 1.2 %",
        Standing.SECOND_HAND,
    ),
    Source(
        "talebi_2017",
        "Talebi et al. 2017, Food Anal. Methods 10:4062: 18 bought kombuchas held 1.12-2.00 % "
        "and more after storage",
        Standing.READ,
    ),
    # --- serving, keeping, cleaning -------------------------------------------------
    Source(
        "food_code_cold",
        "FDA Food Code, cold holding at 41 °F (5 °C), as adopted by Tennessee 0080-04-09-.03",
        Standing.READ,
    ),
    Source(
        "nc_state_2004",
        "Fraser & Lackey 2004, NC State: 1 tablespoon of household bleach to the US gallon is "
        "200 ppm chlorine",
        Standing.READ,
    ),
    Source(
        "acharya_juice",
        "Acharya et al. (abstract): E. coli O157 in kombucha with fresh juice fell only 4 log in "
        "14 days at 5 °C",
        Standing.READ,
    ),
    Source(
        "hicks_1996",
        "Hicks, Hsieh & Bell 1996, Food Res. Int. 29:325-330: caffeine per gram of leaf, 69 % "
        "in the first brew",
        Standing.READ,
    ),
    Source(
        "camellia_caffeine",
        "Caffeine in teas: levels, transference to infusion and estimated intake, Food Sci. "
        "Technol. (Campinas) 2018, 38(4):661-666, abstract: 14.3-34.8 mg/g, 51.5-85.2 % drawn out",
        Standing.READ,
    ),
    Source(
        "efsa_2015",
        "EFSA NDA Panel 2015, EFSA Journal 13(5):4102: caffeine 400 mg a day for adults, 200 mg "
        "at once and in pregnancy",
        Standing.READ,
    ),
    Source(
        "calibration_notes",
        "pH calibration notes of a laboratory and of a logger maker: slope 85-105 %, offset "
        "within 30 mV",
        Standing.READ,
    ),
    Source(
        "electrode_habit",
        "Electrode makers' habit: slope of 92-102 % is good",
        Standing.FROM_MEMORY,
    ),
    Source(
        "meter_accuracy_notes",
        "MSU Extension (0.01-0.02) and a Canadian provincial fact sheet 31 (0.02): accuracy a pH "
        "meter for food should have",
        Standing.READ,
    ),
    Source(
        "advice_who_not",
        "K-State Extension column, 2019 (pregnancy, weak immunity); Public Health Agency of "
        "Canada on Health Canada's page (pregnancy, youth); McIntyre & Jang as quoted 2020",
        Standing.SECOND_HAND,
    ),
)
