"""Names of stages, steps, states and kinds, as people read them."""

from __future__ import annotations

from collections.abc import Callable
from enum import Enum

from PySide6.QtCore import QCoreApplication

from culturecore.stages import (
    AdditionKind,
    BatchPurpose,
    BatchStage,
    BottleKind,
    BottlingState,
    CareKind,
    CheckKind,
    CultureOrigin,
    CultureState,
    DrawReason,
    Feel,
    Look,
    Material,
    Method,
    Opened,
    Quantity,
    StarterTaste,
    StepKind,
    StepState,
    SugarKind,
    SupplyKind,
    SupplyMeasure,
    TasteMark,
    TeaKind,
    TransferKind,
    TrialFactor,
    TrialState,
    VesselShape,
)


def _t(text: str) -> str:
    return QCoreApplication.translate("Stages", text)


def name_of(value: Enum) -> str:
    """Name an enum member of the trade in plain words.

    Raises
    ------
    KeyError
        For a member of an enum that has no words here.
    """
    return _WORDS[type(value)]()[value]


def _shapes() -> dict[Enum, str]:
    return {
        VesselShape.CYLINDER: _t("Straight-sided"),
        VesselShape.SHOULDERED: _t("Narrow neck"),
        VesselShape.TAPERED: _t("Wider at the rim"),
    }


def _materials() -> dict[Enum, str]:
    return {
        Material.GLASS: _t("Glass"),
        Material.STAINLESS_STEEL: _t("Stainless steel"),
        Material.FOOD_PLASTIC: _t("Food-grade plastic"),
        Material.CERAMIC_FOOD_SAFE: _t("Ceramic with a lead-free glaze, stated by its maker"),
        Material.CERAMIC_UNKNOWN_GLAZE: _t("Ceramic, glaze not known"),
        Material.LEAD_CRYSTAL: _t("Lead crystal"),
        Material.REACTIVE_METAL: _t("Copper, brass, aluminium, iron or galvanised metal"),
        Material.OTHER_PLASTIC: _t("Other plastic"),
        Material.WOOD: _t("Wood"),
    }


def _teas() -> dict[Enum, str]:
    return {
        TeaKind.BLACK: _t("Black tea"),
        TeaKind.GREEN: _t("Green tea"),
        TeaKind.OOLONG: _t("Oolong tea"),
        TeaKind.WHITE: _t("White tea"),
        TeaKind.MIXED: _t("Mixed teas"),
        TeaKind.HERBAL: _t("Herbal tea"),
    }


def _starters() -> dict[Enum, str]:
    return {
        StarterTaste.SWEET: _t("Still sweet"),
        StarterTaste.BALANCED: _t("Sweet and sour"),
        StarterTaste.SOUR: _t("Sour"),
        StarterTaste.VINEGARY: _t("Like vinegar"),
    }


def _tastes() -> dict[Enum, str]:
    return {
        TasteMark.FAR_TOO_SWEET: _t("Far too sweet"),
        TasteMark.TOO_SWEET: _t("Too sweet"),
        TasteMark.RIGHT: _t("Just right"),
        TasteMark.TOO_SOUR: _t("Too sour"),
        TasteMark.FAR_TOO_SOUR: _t("Far too sour"),
    }


def _origins() -> dict[Enum, str]:
    return {
        CultureOrigin.RAW_BOTTLE: _t("Grown from a raw bottle"),
        CultureOrigin.GIFT: _t("A gift"),
        CultureOrigin.BOUGHT: _t("Bought"),
        CultureOrigin.SPLIT: _t("Split from another"),
        CultureOrigin.MERGED: _t("Merged from others"),
        CultureOrigin.STARTER: _t("Grown from starter liquid"),
    }


def _culture_states() -> dict[Enum, str]:
    return {
        CultureState.FORMING: _t("Forming"),
        CultureState.AT_WORK: _t("At work"),
        CultureState.RESTING: _t("Resting"),
        CultureState.RETIRED: _t("Retired"),
        CultureState.GIVEN_AWAY: _t("Given away"),
        CultureState.LOST: _t("Lost"),
    }


def _batch_stages() -> dict[Enum, str]:
    return {
        BatchStage.PLANNED: _t("Planned"),
        BatchStage.BREWING: _t("Brewing"),
        BatchStage.SOURING: _t("Souring"),
        BatchStage.DRAWN_OFF: _t("Drawn off"),
        BatchStage.CLOSED: _t("Closed"),
        BatchStage.DISCARDED: _t("Discarded"),
    }


def _steps() -> dict[Enum, str]:
    return {
        StepKind.BOIL: _t("Boil the water"),
        StepKind.STEEP: _t("Steep the tea"),
        StepKind.LIFT_TEA: _t("Lift the tea out"),
        StepKind.DISSOLVE_SUGAR: _t("Stir in the sugar"),
        StepKind.ADD_COLD_WATER: _t("Add the cold water"),
        StepKind.COOL: _t("Let it cool"),
        StepKind.STARTER_IN: _t("Pour in the starter"),
        StepKind.CULTURE_IN: _t("Put in the culture"),
        StepKind.COVER: _t("Cover the vessel"),
    }


def _step_states() -> dict[Enum, str]:
    return {
        StepState.WAITING: _t("To do"),
        StepState.RUNNING: _t("Under way"),
        StepState.PAUSED: _t("Paused"),
        StepState.DONE: _t("Done"),
    }


def _quantities() -> dict[Enum, str]:
    return {
        Quantity.PH: _t("pH"),
        Quantity.TEMPERATURE_C: _t("Temperature"),
        Quantity.BRIX: _t("Brix"),
        Quantity.SPECIFIC_GRAVITY: _t("Specific gravity"),
        Quantity.TA_G_PER_L: _t("Titratable acidity"),
        Quantity.TASTE: _t("Taste"),
        Quantity.PELLICLE_MM: _t("Pellicle thickness"),
        Quantity.NOTE: _t("Note"),
        Quantity.LOOK: _t("Look"),
    }


def _purposes() -> dict[Enum, str]:
    return {
        BatchPurpose.DRINK: _t("To drink"),
        BatchPurpose.CULTURE: _t("To grow a culture"),
    }


def _transfers() -> dict[Enum, str]:
    return {
        TransferKind.DRINK: _t("Drawn off"),
        TransferKind.STARTER: _t("Starter"),
        TransferKind.TOP_UP: _t("Topped up"),
        TransferKind.MERGE: _t("Poured together"),
        TransferKind.SAMPLE: _t("Sample"),
        TransferKind.LOSS: _t("Lost"),
    }


def _care() -> dict[Enum, str]:
    return {
        CareKind.FED: _t("Fed"),
        CareKind.TOPPED_UP: _t("Topped up"),
        CareKind.STARTER_TAKEN: _t("Starter taken"),
        CareKind.LOOKED: _t("Looked at"),
        CareKind.PH: _t("pH"),
        CareKind.NOTE: _t("Note"),
    }


def _looks() -> dict[Enum, str]:
    return {
        Look.FINE: _t("Nothing suspicious"),
        Look.UNSURE: _t("Not sure"),
        Look.MOLD: _t("Mold"),
    }


def _methods() -> dict[Enum, str]:
    return {
        Method.METER: _t("Meter"),
        Method.STRIP: _t("Test strip"),
        Method.THERMOMETER: _t("Thermometer"),
        Method.REFRACTOMETER: _t("Refractometer"),
        Method.HYDROMETER: _t("Hydrometer"),
        Method.TITRATION: _t("Titration"),
        Method.TONGUE: _t("Tongue"),
        Method.RULER: _t("Ruler"),
        Method.EYE: _t("Eye"),
    }


def _bottles() -> dict[Enum, str]:
    return {
        BottleKind.RATED: _t("Rated by its maker"),
        BottleKind.FIZZY_GLASS: _t("Fizzy-drink glass"),
        BottleKind.FIZZY_PLASTIC: _t("Fizzy-drink plastic"),
        BottleKind.NOT_FOR_PRESSURE: _t("Any other"),
    }


def _bottling_states() -> dict[Enum, str]:
    return {
        BottlingState.CONDITIONING: _t("Conditioning"),
        BottlingState.CHILLED: _t("Chilled"),
        BottlingState.FINISHED: _t("Drunk up"),
        BottlingState.DISCARDED: _t("Poured away"),
    }


def _sugars() -> dict[Enum, str]:
    return {
        SugarKind.SUCROSE: _t("Table sugar"),
        SugarKind.HEXOSE: _t("Glucose, honey or fruit"),
    }


def _additions() -> dict[Enum, str]:
    return {
        AdditionKind.SUGAR: _t("Sugar"),
        AdditionKind.HONEY: _t("Honey"),
        AdditionKind.SYRUP: _t("Syrup"),
        AdditionKind.JUICE: _t("Juice"),
        AdditionKind.FRUIT: _t("Fruit"),
        AdditionKind.GINGER: _t("Ginger"),
        AdditionKind.OTHER: _t("Other"),
    }


def _checks() -> dict[Enum, str]:
    return {
        CheckKind.FEEL: _t("Felt"),
        CheckKind.GAUGE: _t("Gauge"),
        CheckKind.OPENED: _t("Opened"),
        CheckKind.VENTED: _t("Vented"),
        CheckKind.NOTE: _t("Note"),
    }


def _feels() -> dict[Enum, str]:
    return {Feel.SOFT: _t("soft"), Feel.FIRM: _t("firm"), Feel.HARD: _t("hard")}


def _openings() -> dict[Enum, str]:
    return {
        Opened.TOO_FLAT: _t("too flat"),
        Opened.RIGHT: _t("just right"),
        Opened.GUSHER: _t("it gushed"),
    }


def _trial_factors() -> dict[Enum, str]:
    return {
        TrialFactor.TEA: _t("Tea"),
        TrialFactor.TEA_STRENGTH: _t("Strength of the tea"),
        TrialFactor.SUGAR: _t("Sugar"),
        TrialFactor.STARTER_SHARE: _t("Share of starter"),
        TrialFactor.CULTURE: _t("Culture"),
        TrialFactor.PLACE: _t("Place"),
        TrialFactor.VESSEL: _t("Vessel"),
        TrialFactor.OTHER: _t("Something else"),
    }


def _trial_states() -> dict[Enum, str]:
    return {
        TrialState.PLANNED: _t("planned"),
        TrialState.RUNNING: _t("running"),
        TrialState.ENDED: _t("ended"),
        TrialState.DROPPED: _t("given up"),
    }


def _supplies() -> dict[Enum, str]:
    return {
        SupplyKind.TEA: _t("Tea"),
        SupplyKind.SUGAR: _t("Sugar"),
        SupplyKind.FLAVOURING: _t("Flavouring"),
        SupplyKind.BOTTLE: _t("Bottles"),
        SupplyKind.CLOSURE: _t("Caps and corks"),
        SupplyKind.OTHER: _t("Other"),
    }


def _measures() -> dict[Enum, str]:
    return {
        SupplyMeasure.MASS_G: _t("By weight"),
        SupplyMeasure.VOLUME_L: _t("By volume"),
        SupplyMeasure.PIECES: _t("In pieces"),
    }


def _draws() -> dict[Enum, str]:
    return {
        DrawReason.BREWED: _t("Brewed"),
        DrawReason.BOTTLED: _t("Bottled"),
        DrawReason.SPOILED: _t("Spoiled or broken"),
        DrawReason.COUNTED: _t("Counted"),
        DrawReason.RETURNED: _t("Came back"),
        DrawReason.OTHER: _t("Used otherwise"),
    }


_WORDS: dict[type[Enum], Callable[[], dict[Enum, str]]] = {
    VesselShape: _shapes,
    Material: _materials,
    TeaKind: _teas,
    StarterTaste: _starters,
    TasteMark: _tastes,
    CultureOrigin: _origins,
    CultureState: _culture_states,
    BatchStage: _batch_stages,
    StepKind: _steps,
    StepState: _step_states,
    Quantity: _quantities,
    Method: _methods,
    BatchPurpose: _purposes,
    TransferKind: _transfers,
    CareKind: _care,
    Look: _looks,
    BottleKind: _bottles,
    BottlingState: _bottling_states,
    SugarKind: _sugars,
    AdditionKind: _additions,
    CheckKind: _checks,
    Feel: _feels,
    Opened: _openings,
    SupplyKind: _supplies,
    SupplyMeasure: _measures,
    DrawReason: _draws,
    TrialFactor: _trial_factors,
    TrialState: _trial_states,
}
