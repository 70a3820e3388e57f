"""What verdicts on cultures say: suspicion, bottles to grow one from, films."""

from __future__ import annotations

from PySide6.QtCore import QCoreApplication

Parts = tuple[str, str, str]


def _t(text: str) -> str:
    return QCoreApplication.translate("CultureVerdicts", text)


def suspicion() -> dict[str, Parts]:
    """Words for what may share mold with something that had it."""
    return {
        "mold_suspected": (
            _t("It may carry mold: that was seen on it, or on something it shared liquid with."),
            _t("Mold can be there before it can be seen, and its threads and poisons reach "
               "further than its patch."),
            _t("Do not drink from it or use it as starter or culture. When in doubt, throw it "
               "out. If you are sure that it is clean, clear it with your reason. Where your "
               "local rules ask for more, follow them."),
        ),
    }  # fmt: skip


def elsewhere() -> dict[str, Parts]:
    """Words for a culture that is bound to another vessel already."""
    one_place = _t("A culture is in one place: whichever is brewed first takes it.")
    return {
        "culture_planned_elsewhere": (
            _t("This culture is planned for another vessel already."),
            one_place,
            _t("Split it first, or choose another."),
        ),
        "culture_at_work_elsewhere": (
            _t("This culture is at work in another vessel."),
            _t("Putting it in here takes it out of there."),
            _t("Draw that batch off first, or split the culture."),
        ),
    }


def bottles() -> dict[str, Parts]:
    """Words for what a culture is to be grown from."""
    other = _t("Look for a bottle that says raw and unpasteurised, without fruit or juice.")
    return {
        "bottle_raw": (
            _t("A plain, raw bottle is what usually works."),
            _t("Its yeasts and bacteria are alive; nobody can promise that they make a film."),
            _t("Shake the bottle gently: the sediment carries much of the life."),
        ),
        "bottle_flavoured": (
            _t("From a flavoured bottle a culture often does not grow."),
            _t("Fruit, juice and oils hinder the film and bring other germs along."),
            other,
        ),
        "bottle_pasteurised": (
            _t("From a pasteurised bottle nothing will grow."),
            _t("Heating has killed the culture. Sweet tea with dead kombucha in it goes moldy."),
            other,
        ),
        "bottle_unknown": (
            _t("It is not known whether the bottle is raw."),
            _t("Pasteurised or filtered kombucha holds no living culture."),
            other,
        ),
        "bottle_starter": (
            _t("Ripe starter of your own is a good beginning."),
            _t("It is as sour and as alive as you know it to be."),
            _t("Take it from a jar without any mold."),
        ),
    }


def films() -> dict[str, Parts]:
    """Words for how far a growing film is."""
    usual = _t("At {at_c} a first film usually shows between day {first_days} and day "
               "{last_days}, and is solid in {solid_days} to {latest_days} days. These are "
               "kitchen experience, not measurements; cooler places take longer.")  # fmt: skip
    still = _t("Leave it still, covered with cloth, out of the sun.")
    return {
        "film_not_begun": (
            _t("It has not been mixed yet."),
            usual,
            _t("Follow the run sheet: raw liquid goes in only when the tea is cool."),
        ),
        "film_awaited": (_t("Day {day}: no film noted yet."), usual, still),
        "film_growing": (
            _t("Day {day}: a film of about {value_mm}."),
            usual,
            _t("New films are thin, smooth and pale. ") + still,
        ),
        "film_slow": (
            _t("Day {day}: the film is still only about {value_mm}."),
            _t("Cold, weak or too little raw liquid makes it slow. ") + usual,
            _t("Wait if it smells and looks clean; start anew if nothing moves for a week."),
        ),
        "film_ready": (
            _t("Day {day}: about {value_mm}, which is usually enough."),
            _t("Makers usually call it grown at {low_mm} to {high_mm}."),
            _t("If it is one piece and clean, call it grown."),
        ),
        "film_overdue": (
            _t("Day {day}, and no film noted."),
            _t("Perhaps the bottle was not raw, or the place is cold. ") + usual,
            _t("Measure the pH and look for mold. If there is still nothing by day "
               "{latest_days}, start anew with another bottle."),
        ),
        "film_unsure": (
            _t("The last look was not sure whether it is mold."),
            _t("Mold is dry or fuzzy and often coloured; a young film is wet and smooth."),
            _t("Look again in good light tomorrow. When in doubt, throw it out."),
        ),
        "film_thin": (
            _t("{value_mm} is thin for a new culture."),
            _t("Makers usually wait for {low_mm} to {high_mm}; common practice, no rule."),
            _t("You can call it grown all the same; handle it gently."),
        ),
        "film_solid": (
            _t("{value_mm} is a usual thickness for a new culture."),
            _t("Makers usually wait for {low_mm} to {high_mm}; common practice, no rule."),
            _t("Handle it gently all the same."),
        ),
    }  # fmt: skip
