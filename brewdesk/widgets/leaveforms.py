"""A culture leaves: given away or lost; or it is cleared of suspicion and may stay."""

from __future__ import annotations

from PySide6.QtWidgets import QCheckBox, QWidget

from brewdesk.services.desk import Desk
from brewdesk.services.records import Batch, Culture
from brewdesk.services.wording.cultures import names_words
from brewdesk.widgets.caredialog import CareDialog
from brewdesk.widgets.fields import announce


class GiveDialog(CareDialog):
    """Give a culture away; ``wants_card`` tells whether a card is to be printed with it."""

    def __init__(self, desk: Desk, culture: Culture, parent: QWidget | None = None) -> None:
        super().__init__(
            desk,
            self.tr("Give {name} away").format(name=culture.name),
            self.tr("Give it away"),
            name="give",
            parent=parent,
        )
        self._culture = culture
        self.add_words(
            self.tr(
                "Give it with enough sour liquid to cover it, and only if you saw no mold. To keep "
                "one yourself, split it first and give the daughter away."
            )
        )
        self.to = self.add_line("to", self.tr("To whom (optional)"))
        self.card = QCheckBox(self.tr("Then print a hand-over card"))
        self.card.setObjectName("give_card")
        self.card.setChecked(True)
        self.body.addWidget(self.card)

    @property
    def wants_card(self) -> bool:
        """Whether a hand-over card is to be printed."""
        return self.card.isChecked()

    def act(self) -> object:
        """Give it away."""
        return self._desk.culture_care.give_away(self._culture.id, self.to.text())


class LoseDialog(CareDialog):
    """A culture is lost; with mold, what shared liquid with it comes under suspicion.

    ``seen`` is what a look has just found, as far as it is known already.
    """

    def __init__(
        self, desk: Desk, culture: Culture, parent: QWidget | None = None, *, seen: str = ""
    ) -> None:
        super().__init__(
            desk,
            self.tr("{name} is lost").format(name=culture.name),
            self.tr("Mark it as lost"),
            name="lose",
            parent=parent,
            role="danger",
        )
        self._culture = culture
        self.add_words(
            self.tr(
                "With mold everything goes: pellicle, liquid and cloth. Wash the vessel with hot "
                "water and soap. When in doubt, throw it out."
            )
        )
        self.reason = self.add_line("reason", self.tr("What happened"), seen)
        self.mold = QCheckBox(self.tr("It had mold, or may have had"))
        self.mold.setObjectName("lose_mold")
        self.mold.setChecked(True)
        self.body.addWidget(self.mold)
        self.contacts = desk.suspicion.contacts("culture", culture.id)
        self.touched = self.add_words("", "warn")
        self.touched.setObjectName("lose_touched")
        self.mold.toggled.connect(self._tell_contacts)
        self._tell_contacts()

    def _tell_contacts(self) -> None:
        names = [contact.name for contact in self.contacts]
        if not self.mold.isChecked():
            words = self.tr("Nothing else is put under suspicion.")
        elif not names:
            words = self.tr("Nothing is known to have shared liquid with it since it was clean.")
        elif len(names) == 1:
            words = self.tr(
                "{names} shared liquid with it and comes under suspicion. Look at it."
            ).format(names=names[0])
        else:
            words = self.tr(
                "{names} shared liquid with it and come under suspicion. Look at each."
            ).format(names=names_words(names))
        self.touched.setText(words)
        announce(self, words)

    def act(self) -> object:
        """Mark it as lost."""
        return self._desk.culture_care.lose(
            self._culture.id, self.reason.text(), flag=self.mold.isChecked()
        )


class ClearDialog(CareDialog):
    """Take a culture or a batch out of suspicion; why is written down."""

    def __init__(self, desk: Desk, subject: Culture | Batch, parent: QWidget | None = None) -> None:
        super().__init__(
            desk,
            self.tr("Clear {name} of suspicion").format(name=subject.name),
            self.tr("Clear it"),
            name="clear",
            parent=parent,
        )
        self._subject = subject
        self.add_words(
            self.tr(
                "No look can prove that there is no mold. Clear it only if you have watched it "
                "long enough and are sure; the program takes your word and keeps it."
            )
        )
        self.reason = self.add_line("reason", self.tr("Why you are sure"))

    def act(self) -> object:
        """Clear it."""
        ids = (
            {"culture_id": self._subject.id}
            if isinstance(self._subject, Culture)
            else {"batch_id": self._subject.id}
        )
        self._desk.suspicion.clear(**ids, reason=self.reason.text())
        return self._subject
