"""Questions about the pH meter: buffers, calibration, what a reading is worth."""

from __future__ import annotations

from brewdesk.services.reckoner import measures
from brewdesk.services.reckoner.naming import names, names_or_none, t, yes_or_no
from brewdesk.services.reckoner.question import (
    Answer,
    Field,
    Formula,
    Group,
    Inputs,
    Number,
    Question,
    choice,
    exact,
    number,
    told,
)
from brewdesk.services.wording.reckonernames import choice_name
from culturecore import phmeter
from culturecore.buffers import Buffer, buffer_ph
from culturecore.errors import ImpossibleInput
from culturecore.phmeter import Calibration, CalibrationPoint
from culturecore.stages import Method
from culturecore.units import Kind

_SHOWN = Number("", 2)  # mV or pH, as the maker chose
_AS_MV, _AS_PH = "mv", "ph"


def questions() -> tuple[Question, ...]:
    """Return the questions of this half of the group."""
    return (_buffer(), _calibrate(), _correct(), _worth(), _compensation())


def _buffer() -> Question:
    return Question(
        key="buffer_ph",
        group=Group.ACIDITY,
        title=t("What pH has a buffer at this temperature?"),
        purpose=t("A calibration liquid shows its printed pH at one temperature only."),
        words=t("calibration solution phthalate phosphate borate 4.01 7.00 6.86"),
        fields=(
            choice("buffer", t("Buffer"), names(Buffer), Buffer.PHTHALATE),
            number("temperature_c", t("Its temperature"), Kind.TEMPERATURE, 20.0),
        ),
        answer=_buffer_answered,
    )


def _buffer_answered(given: Inputs) -> Answer:
    found = buffer_ph(given.chosen("buffer", Buffer), given.number("temperature_c"))
    return Answer(
        lines=(told("ph", t("pH of the buffer"), found, Kind.PH),),
        says=t("At {temperature_c} a fresh one has pH {ph}, give or take the bottle's own doubt."),
        notes=(t("Buffers printed with the same pH may hold different salts: look at the "
                 "bottle's own table first."),),
        formulas=(Formula(t("Printed table, straight lines between its rows"), found.sources),),
    )  # fmt: skip


def _calibration_fields() -> tuple[Field, ...]:
    first, second, third = t("First buffer"), t("Second buffer"), t("Third buffer, if any")
    return (
        choice("shown_as", t("The meter shows"),
               ((_AS_MV, t("Millivolts")), (_AS_PH, t("pH, before it is calibrated"))), _AS_MV),
        number("buffer_c", t("Temperature of the buffers"), Kind.TEMPERATURE, 20.0),
        choice("buffer_1", first, names(Buffer), Buffer.TECHNICAL_7),
        number("shown_1", t("Shown in the first"), _SHOWN, -4.0),
        choice("buffer_2", second, names(Buffer), Buffer.PHTHALATE),
        number("shown_2", t("Shown in the second"), _SHOWN, 165.0),
        choice("buffer_3", third, names_or_none(Buffer), None),
        number("shown_3", t("Shown in the third"), _SHOWN),
    )  # fmt: skip


_CALIBRATION_RENAMES = {
    "points": "buffer_2",
    "points:wrong_way": "shown_2",
    "reading_mv": "shown_1",
    "temperature_c": "buffer_c",
    "shown_ph": "shown_1",
}


def _mv(given: Inputs, key: str, temperature_c: float) -> float:
    shown = given.number(key)
    if given.word("shown_as") == _AS_PH:
        try:
            return phmeter.mv_from_shown(shown, temperature_c)
        except ImpossibleInput as problem:
            raise ImpossibleInput(
                key, shown, low=problem.low, high=problem.high, unit=problem.unit
            ) from problem
    if not -1000.0 <= shown <= 1000.0:
        raise ImpossibleInput(key, shown, low=-1000.0, high=1000.0, unit="mV")
    return shown


def _calibration(given: Inputs) -> Calibration:
    buffer_c = given.number("buffer_c")
    points = []
    for place in ("1", "2", "3"):
        buffer = given.maybe_chosen(f"buffer_{place}", Buffer)
        if buffer is not None:
            reading_mv = _mv(given, f"shown_{place}", buffer_c)
            points.append(
                CalibrationPoint(buffer=buffer, temperature_c=buffer_c, reading_mv=reading_mv)
            )
    return phmeter.calibrate(points)


def _calibrate() -> Question:
    return Question(
        key="calibrate",
        group=Group.ACIDITY,
        title=t("Is my pH meter still good?"),
        purpose=t("Slope and offset of the electrode from two or three buffers."),
        words=t("calibration electrode slope offset nernst probe replace"),
        fields=_calibration_fields(),
        answer=_calibrated,
        renames=_CALIBRATION_RENAMES,
    )


def _calibrated(given: Inputs) -> Answer:
    found = _calibration(given)
    return Answer(
        lines=(
            exact("slope", t("Slope, of the ideal electrode's"), found.slope_percent,
                  measures.PERCENT_PLAIN),
            exact("offset", t("Offset at pH 7"), found.offset_mv, measures.MILLIVOLTS),
            exact("residual", t("Worst buffer off the line, in pH"), found.residual_ph, Kind.PH),
            exact("ideal", t("Ideal slope at this temperature, for each pH"),
                  phmeter.nernst_mv_per_ph(given.number("buffer_c")), measures.MILLIVOLTS),
        ),
        says=t("The electrode gives {slope} of the ideal slope and is {offset} off at pH 7."),
        verdicts=found.verdicts,
        notes=(t("With two buffers the line goes through both: only a third one can show that "
                 "something is wrong."),),
        formulas=(Formula(t("Least squares on the Nernst line, and its limits"), found.sources),),
    )  # fmt: skip


def _correct() -> Question:
    return Question(
        key="correct_reading",
        group=Group.ACIDITY,
        title=t("What pH is behind a raw reading?"),
        purpose=t("Corrects a reading by your last calibration and says what it is worth."),
        words=t("calibration electrode millivolt correct age drift"),
        fields=(
            *_calibration_fields(),
            number("shown_sample", t("The meter shows in the drink"), _SHOWN, 215.0),
            number("sample_c", t("Temperature of the drink"), Kind.TEMPERATURE, 22.0,
                   low=0.0, high=60.0),
            number("age_days", t("Days since the calibration"), measures.DAYS, 0.0),
        ),
        answer=_corrected,
        renames=_CALIBRATION_RENAMES,
    )  # fmt: skip


def _corrected(given: Inputs) -> Answer:
    sample_c, age_days = given.number("sample_c"), given.number("age_days")
    calibration = _calibration(given)
    found = phmeter.correct_reading(
        calibration=calibration,
        reading_mv=_mv(given, "shown_sample", sample_c),
        temperature_c=sample_c,
        age_days=age_days,
    )
    return Answer(
        lines=(
            told("ph", t("pH of the drink"), found, Kind.PH),
            exact("slope", t("Slope, of the ideal electrode's"), calibration.slope_percent,
                  measures.PERCENT_PLAIN),
            exact("offset", t("Offset at pH 7"), calibration.offset_mv, measures.MILLIVOLTS),
        ),
        says=t("This meter would be between pH {ph_low} and {ph_high} about 8 times in 10."),
        verdicts=(*calibration.verdicts, phmeter.calibration_age_verdict(age_days)),
        notes=(t("Two laboratories with good meters still differ by about 0.1."),),
        formulas=(
            Formula(t("Nernst line of the calibration, with the drift since"), found.sources),
            Formula(t("Limits for slope and offset"), calibration.sources),
        ),
    )  # fmt: skip


def _worth() -> Question:
    return Question(
        key="reading_worth",
        group=Group.ACIDITY,
        title=t("How sure is a pH reading?"),
        purpose=t("The doubt of a paper strip, or of a meter nobody calibrated."),
        words=t("strip paper uncertainty accuracy error"),
        fields=(
            number("ph", t("It reads"), Kind.PH, 3.5),
            choice("method", t("Read with"),
                   tuple((m, choice_name(m)) for m in (Method.STRIP, Method.METER)), Method.STRIP),
            number("strip_step_ph", t("From one colour of the strip to the next"), Kind.PH, 0.5),
        ),
        answer=_worth_answered,
    )  # fmt: skip


def _worth_answered(given: Inputs) -> Answer:
    found = phmeter.reading_of(
        given.number("ph"),
        given.chosen("method", Method),
        strip_step_ph=given.number("strip_step_ph"),
    )
    return Answer(
        lines=(told("true", t("The drink's pH"), found, Kind.PH),),
        says=t("It lies between pH {true_low} and {true_high} about 8 times in 10."),
        formulas=(Formula(t("Usual doubt of such a reading"), found.sources),),
    )


def _compensation() -> Question:
    return Question(
        key="compensation",
        group=Group.ACIDITY,
        title=t("What does temperature compensation do?"),
        purpose=t("How far off a meter is that takes the liquid for another temperature."),
        words=t("ATC automatic cold warm sample"),
        fields=(
            number("ph", t("pH of the drink"), Kind.PH, 3.2),
            number("temperature_c", t("Temperature of the drink"), Kind.TEMPERATURE, 10.0),
            number("assumed_c", t("The meter takes it for"), Kind.TEMPERATURE, 25.0),
            choice("is_compensated", t("Does the meter compensate?"), yes_or_no(), False),
        ),
        answer=_compensation_answered,
    )


def _compensation_answered(given: Inputs) -> Answer:
    found = phmeter.compensation(
        ph=given.number("ph"),
        temperature_c=given.number("temperature_c"),
        assumed_c=given.number("assumed_c"),
        is_compensated=given.is_so("is_compensated"),
    )
    return Answer(
        lines=(
            exact("error", t("Without compensation it shows too much by"), found.error_without_ph,
                  Kind.PH),
        ),
        says=t("Without compensation the reading is off by {error}; a minus sign means that it "
               "shows too little."),
        verdicts=(found.verdict,),
        formulas=(Formula(t("Ratio of the Nernst slopes"), found.sources),),
    )  # fmt: skip
