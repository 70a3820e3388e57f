"""From a jar's record to what is drawn of it."""

from __future__ import annotations

from brewdesk.services.records import Material
from brewdesk.services.shelf import JarView
from brewdesk.widgets.jarpainter import JarLook

SWEET_TEA_PH = 5.0  # for the tint only: sweet tea before any starter is the dark end of the ramp

WALLS = {
    Material.STAINLESS_STEEL: "#aeb6b8",
    Material.CERAMIC_FOOD_SAFE: "#c3a07a",
    Material.CERAMIC_UNKNOWN_GLAZE: "#b58e6c",
    Material.REACTIVE_METAL: "#b87f4d",
    Material.WOOD: "#a97d52",
}


def look_of(jar: JarView) -> JarLook:
    """Everything the painter needs to know about a jar."""
    planned = jar.stage_code == "planned"
    souring = jar.stage_code in ("souring", "tasting", "past_window")
    rests = jar.culture is not None and jar.stage_code in ("empty", "drawn_off")
    is_afloat = souring or (rests and jar.liquid_height_cm > 0.0)
    return JarLook(
        profile=jar.profile,
        liquid_height_cm=0.0 if planned else jar.liquid_height_cm,
        planned_height_cm=jar.liquid_height_cm if planned else 0.0,
        ph=_tint_ph(jar),
        pellicle_cm=(jar.pellicle_mm or 0.0) / 10.0 if is_afloat else 0.0,
        covered=is_afloat,
        steaming=jar.stage_code == "brewing",
        wall=WALLS.get(jar.vessel.material, ""),
    )


def _tint_ph(jar: JarView) -> float | None:
    """The pH read last; before the first reading what the recipe lets expect, as the words say."""
    if jar.stage_code == "brewing":
        return SWEET_TEA_PH
    if jar.latest_ph is None and jar.batch is not None:
        return jar.batch.start_ph
    return jar.latest_ph
