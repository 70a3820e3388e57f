"""Enums of the trade. Their values are what the store keeps, so they never change."""

from __future__ import annotations

from enum import Enum


class VesselShape(Enum):
    """How a vessel's inside is modelled."""

    CYLINDER = "cylinder"  # straight-sided jar
    SHOULDERED = "shouldered"  # cylinder with a narrower neck: bottle, demijohn
    TAPERED = "tapered"  # frustum, wider at the rim than at the foot: crock, pitcher


class Material(Enum):
    """What the liquid touches."""

    GLASS = "glass"
    STAINLESS_STEEL = "stainless_steel"
    FOOD_PLASTIC = "food_plastic"
    CERAMIC_FOOD_SAFE = "ceramic_food_safe"  # the maker's written word: lead-free glaze
    CERAMIC_UNKNOWN_GLAZE = "ceramic_unknown_glaze"
    LEAD_CRYSTAL = "lead_crystal"
    REACTIVE_METAL = "reactive_metal"  # copper, brass, aluminium, iron, galvanised
    OTHER_PLASTIC = "other_plastic"
    WOOD = "wood"


class TeaKind(Enum):
    """Leaf used for the sweet tea."""

    BLACK = "black"
    GREEN = "green"
    OOLONG = "oolong"
    WHITE = "white"
    MIXED = "mixed"
    HERBAL = "herbal"


class StarterTaste(Enum):
    """How the starter tastes, for makers without a meter."""

    SWEET = "sweet"
    BALANCED = "balanced"
    SOUR = "sour"
    VINEGARY = "vinegary"


class TasteMark(Enum):
    """The maker's verdict on a sip."""

    FAR_TOO_SWEET = "far_too_sweet"
    TOO_SWEET = "too_sweet"
    RIGHT = "right"
    TOO_SOUR = "too_sour"
    FAR_TOO_SOUR = "far_too_sour"


class CultureOrigin(Enum):
    """Where a culture came from."""

    RAW_BOTTLE = "raw_bottle"
    GIFT = "gift"
    BOUGHT = "bought"
    SPLIT = "split"
    MERGED = "merged"
    STARTER = "starter"  # grown anew from another culture's starter liquid


class CultureState(Enum):
    """What a culture is doing."""

    FORMING = "forming"
    AT_WORK = "at_work"
    RESTING = "resting"
    RETIRED = "retired"
    GIVEN_AWAY = "given_away"
    LOST = "lost"


class BatchStage(Enum):
    """Stages of a first fermentation. 'Tasting' is not stored: the forecast says it."""

    PLANNED = "planned"
    BREWING = "brewing"
    SOURING = "souring"
    DRAWN_OFF = "drawn_off"
    CLOSED = "closed"
    DISCARDED = "discarded"

    @property
    def is_live(self) -> bool:
        """Whether a batch in this stage occupies its vessel."""
        return self in (BatchStage.PLANNED, BatchStage.BREWING, BatchStage.SOURING)


class BatchPurpose(Enum):
    """What a batch is brewed for."""

    DRINK = "drink"
    CULTURE = "culture"  # growing a culture, from raw kombucha or from starter liquid


class TransferKind(Enum):
    """Why liquid went into a jar or out of it."""

    DRINK = "drink"  # drawn off to drink or to bottle
    STARTER = "starter"  # kept back or lent: into another jar or a resting store
    TOP_UP = "top_up"  # fresh sweet tea in
    MERGE = "merge"  # all or part of one batch into another
    SAMPLE = "sample"  # taken for a reading
    LOSS = "loss"  # evaporated, spilt


class CareKind(Enum):
    """What was done for a resting culture."""

    FED = "fed"  # fresh sweet tea
    TOPPED_UP = "topped_up"  # ripe kombucha or tea against evaporation
    STARTER_TAKEN = "starter_taken"
    LOOKED = "looked"
    PH = "ph"
    NOTE = "note"


class Look(Enum):
    """What a careful look at a jar found."""

    FINE = "fine"
    UNSURE = "unsure"
    MOLD = "mold"


class BottleKind(Enum):
    """What is known of a bottle."""

    RATED = "rated"  # its maker gives a pressure
    FIZZY_GLASS = "fizzy_glass"  # glass made for fizzy drinks, no pressure known
    FIZZY_PLASTIC = "fizzy_plastic"  # plastic made for fizzy drinks
    NOT_FOR_PRESSURE = "not_for_pressure"  # everything else: decorative, square, canning jar


class BottlingState(Enum):
    """Life of the bottles filled from one batch on one day. 'Chill now' is worked out."""

    CONDITIONING = "conditioning"
    CHILLED = "chilled"
    FINISHED = "finished"  # drunk up
    DISCARDED = "discarded"


class SugarKind(Enum):
    """Which sugar ferments: a gram of each gives a little more or less."""

    SUCROSE = "sucrose"  # white, raw and brown sugar
    HEXOSE = "hexose"  # glucose, fructose, honey, most of the sugar of fruit


class AdditionKind(Enum):
    """What goes into the bottles beside the drink."""

    SUGAR = "sugar"
    HONEY = "honey"
    SYRUP = "syrup"
    JUICE = "juice"
    FRUIT = "fruit"
    GINGER = "ginger"
    OTHER = "other"


class CheckKind(Enum):
    """How a bottling was looked after."""

    FEEL = "feel"  # of the soft test bottle
    GAUGE = "gauge"
    OPENED = "opened"
    VENTED = "vented"
    NOTE = "note"


class Feel(Enum):
    """How a plastic test bottle feels when pressed."""

    SOFT = "soft"
    FIRM = "firm"
    HARD = "hard"


class Opened(Enum):
    """How a bottle was when it was opened."""

    TOO_FLAT = "too_flat"
    RIGHT = "right"
    GUSHER = "gusher"


class StepKind(Enum):
    """Steps of the run sheet, in their usual order."""

    BOIL = "boil"
    STEEP = "steep"
    LIFT_TEA = "lift_tea"
    DISSOLVE_SUGAR = "dissolve_sugar"
    ADD_COLD_WATER = "add_cold_water"
    COOL = "cool"
    STARTER_IN = "starter_in"
    CULTURE_IN = "culture_in"
    COVER = "cover"


class StepState(Enum):
    """State of one run-sheet step."""

    WAITING = "waiting"
    RUNNING = "running"
    PAUSED = "paused"
    DONE = "done"


class Quantity(Enum):
    """What a reading measures. The unit is fixed and part of the name."""

    PH = "ph"
    TEMPERATURE_C = "temperature_c"
    BRIX = "brix"
    SPECIFIC_GRAVITY = "specific_gravity"
    TA_G_PER_L = "ta_g_per_l"
    TASTE = "taste"
    PELLICLE_MM = "pellicle_mm"
    NOTE = "note"
    LOOK = "look"


class Method(Enum):
    """How a reading was taken; it fixes the assumed uncertainty."""

    METER = "meter"
    STRIP = "strip"
    THERMOMETER = "thermometer"
    REFRACTOMETER = "refractometer"
    HYDROMETER = "hydrometer"
    TITRATION = "titration"
    TONGUE = "tongue"
    RULER = "ruler"
    EYE = "eye"


class ReminderKind(Enum):
    """What a reminder asks for."""

    TASTE = "taste"
    PH_CHECK = "ph_check"
    MOLD_LOOK = "mold_look"
    OWN = "own"
    FEED = "feed"
    TOP_UP = "top_up"
    FILM_LOOK = "film_look"
    CHILL = "chill"
    PRESSURE_CHECK = "pressure_check"
    OPEN_TEST = "open_test"
    BEST_BEFORE = "best_before"
    CALIBRATE = "calibrate"


class ReminderState(Enum):
    """Life of one reminder occurrence."""

    WAITING = "waiting"
    SHOWN = "shown"
    SNOOZED = "snoozed"
    DONE = "done"
    DROPPED = "dropped"


class SupplyKind(Enum):
    """What something in the stores is for."""

    TEA = "tea"
    SUGAR = "sugar"
    FLAVOURING = "flavouring"  # fruit, juice, honey, ginger: whatever goes into the bottle
    BOTTLE = "bottle"
    CLOSURE = "closure"  # caps, corks, swing-top seals
    OTHER = "other"


class SupplyMeasure(Enum):
    """How something in the stores is counted: in grams, litres or pieces."""

    MASS_G = "mass_g"
    VOLUME_L = "volume_l"
    PIECES = "pieces"


class DrawReason(Enum):
    """Why something left the stores, or came back."""

    BREWED = "brewed"
    BOTTLED = "bottled"
    SPOILED = "spoiled"
    COUNTED = "counted"  # a count of the shelf found more or less
    RETURNED = "returned"  # bottles emptied and washed
    OTHER = "other"


class TrialFactor(Enum):
    """The one thing in which the jars of a trial differ."""

    TEA = "tea"
    TEA_STRENGTH = "tea_strength"
    SUGAR = "sugar"
    STARTER_SHARE = "starter_share"
    CULTURE = "culture"
    PLACE = "place"
    VESSEL = "vessel"
    OTHER = "other"


class TrialState(Enum):
    """Life of a trial."""

    PLANNED = "planned"
    RUNNING = "running"
    ENDED = "ended"
    DROPPED = "dropped"
