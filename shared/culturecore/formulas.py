"""Which sources stand behind the functions that return a plain number.

Estimates, verdicts and other answers carry their source keys themselves; a float cannot.
"""

from __future__ import annotations

from collections.abc import Callable
from typing import Final

from culturecore.sources import SOURCES, Source

_ACID: Final = (
    "davies_1962",
    "bradley_pitzer_1979",
    "goldberg_2002",
    "nist46_minteq",
    "plummer_busenberg_1982",
    "zubiaur_1998",
)
_TEA: Final = ("tea_buffer_assumption", "simpson_2001")
_SUCROSE: Final = ("emmerich_icumsa", "kell_water_density")
_OUTLINE: Final = ("geometry", "vessel_proportions")

# "module.function" -> keys of SOURCES
FORMULA_SOURCES: Final[dict[str, tuple[str, ...]]] = {
    "acidarrays.ph_of_many": _ACID,
    "acidbase.buffer_capacity_eq_per_kg": _ACID,
    "acidbase.mix": ("davies_1962",),
    "acidbase.ph_of": _ACID,
    "acidbase.starter_blend": (*_ACID, "starter_acid_assumption"),
    "acidbase.starter_fraction_for": _ACID,
    "acidbase.strong_ions_needed_eq_per_kg": _ACID,
    "acidbase.sweet_tea_blend": (*_ACID, *_TEA),
    "acidbase.titratable_acidity_g_per_l": (*_ACID, "aoac_94215"),
    "acidconstants.constants_at": _ACID,
    "acidconstants.constants_with": _ACID,
    "cooling.cooled": ("newton_cooling",),
    "filltable.height_at": ("fritsch_carlson_1980",),
    "filltable.surface_at_cm2": ("fritsch_carlson_1980",),
    "heat.boiling_point_c": ("isa_1975", "wagner_pruss_1993"),
    "heat.content": ("llano_2005",),
    "heat.heat_content": ("llano_2005",),
    "heat.hot_mass_for_temperature": ("llano_2005",),
    "heat.mix_temperature_c": ("llano_2005",),
    "heat.newton_k_per_min": ("newton_cooling",),
    "heat.temperature_of": ("llano_2005",),
    "heat.vapour_pressure_pa": ("wagner_pruss_1993",),
    "phmeter.mv_from_shown": ("nernst",),
    "phmeter.nernst_mv_per_ph": ("nernst",),
    "refraction.brix_from_index": ("icumsa_1974",),
    "refraction.index_at": ("icumsa_1974", "iapws_r9_97", "lorentz_lorenz"),
    "refraction.index_from_brix": ("icumsa_1974",),
    "refraction.index_of_water": ("iapws_r9_97",),
    "starter.usual_share": ("recipe_practice",),
    "starter.volume_share": ("emmerich_icumsa", "starter_acid_assumption"),
    "sugar.brix_from_g_per_l": _SUCROSE,
    "sugar.brix_from_sg": _SUCROSE,
    "sugar.density_kg_per_l": _SUCROSE,
    "sugar.density_of_water": ("kell_water_density",),
    "sugar.g_per_l_from_brix": _SUCROSE,
    "sugar.sg_from_brix": _SUCROSE,
    "sugar.volume_of_solution_l": _SUCROSE,
    "sugar.water_density_kg_per_l": ("kell_water_density",),
    "titration.acidity_meq_per_l": ("aoac_94215", "oiv_as313_01"),
    "titration.g_per_l_as": ("iupac_masses", "aoac_94215"),
    "titration.meq_per_l_from": ("iupac_masses", "aoac_94215"),
    "vessels.brim_height_cm": _OUTLINE,
    "vessels.liquid_height_cm": _OUTLINE,
    "vessels.profile": _OUTLINE,
    "vessels.surface_area_cm2": _OUTLINE,
    "vessels.surface_to_volume_per_cm": (*_OUTLINE, "cvetkovic_2008"),
    "vessels.volume_to_height_l": _OUTLINE,
}


def sources_of(function: Callable[..., object]) -> tuple[Source, ...]:
    """Return the sources behind a function of the core that returns a plain number.

    Raises
    ------
    KeyError
        For a function whose answers carry their sources themselves.
    """
    module = function.__module__.rpartition(".")[2]
    return tuple(SOURCES[key] for key in FORMULA_SOURCES[f"{module}.{function.__name__}"])
