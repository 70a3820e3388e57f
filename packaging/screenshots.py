"""Take the README's pictures from the real window, with invented and with published data.

Run through ``python3 packaging/dev.py screenshots [--only NAME]``. The clock stands still,
so that the pictures differ only when the window does.
"""

from __future__ import annotations

import argparse
import csv
import os
import sys
import tempfile
from collections.abc import Callable
from datetime import UTC, datetime, timedelta, tzinfo
from functools import partial
from pathlib import Path
from typing import TYPE_CHECKING, cast
from zoneinfo import ZoneInfo

if TYPE_CHECKING:
    from PySide6.QtWidgets import QApplication, QWidget

    from brewdesk.bootstrap import Program
    from brewdesk.services.desk import Desk
    from brewdesk.widgets.acidchart import AcidChart
    from brewdesk.widgets.historypage import HistoryPage

ROOT = Path(__file__).resolve().parents[1]
SERIES = ROOT / "tests" / "cases" / "series" / "hafsari_2021_black_mean.csv"
NOW = datetime(2026, 11, 25, 10, 30, tzinfo=UTC)
SERIES_START = datetime(2026, 11, 2, 8, 0, tzinfo=UTC)
SETTLE_MS = 400
IN_README = frozenset(
    {
        "shelf-tasting-light",
        "shelf-tasting-dark",
        "carrying-light",
        "cultures-light",
        "photos-light",
        "history-dark",
        "lookback-light",
        "places-light",
        "plan-light",
        "shelf-brewing-light",
        "readings-tasting-light",
        "due-dark",
        "bottles-light",
        "stores-light",
        "costs-light",
        "reckoner-light",
        "trials-light",
        "published-day-3-light",
        "published-day-6-light",
        "published-day-9-light",
    }
)


class StandingClock:
    """Time as the picture wants it."""

    def __init__(self, now: datetime) -> None:
        self.instant = now

    def now(self) -> datetime:
        """The instant it was set to."""
        return self.instant

    def monotonic(self) -> float:
        """Seconds in step with the instant."""
        return self.instant.timestamp()

    def zone(self) -> tzinfo:
        """One zone for all pictures."""
        return ZoneInfo("Europe/Berlin")


def main(argv: list[str]) -> int:
    """Take all pictures into the folder named, or the README's own."""
    parser = argparse.ArgumentParser()
    parser.add_argument("--into", type=Path, default=ROOT / "packaging" / "screenshots")
    parser.add_argument("--only", default="", help="take only the pictures whose name has this")
    parser.add_argument("--all", action="store_true", help="also those the README does not show")
    parser.add_argument("--size", default="1280x800")
    parser.add_argument("--scheme", default="", choices=["", "light", "dark"])
    parser.add_argument("--text-scale", type=float, default=1.0)
    options = parser.parse_args(argv)
    os.environ.setdefault("QT_QPA_PLATFORM", "offscreen")
    sys.path[:0] = [str(ROOT), str(ROOT / "shared")]
    options.into.mkdir(parents=True, exist_ok=True)
    from PySide6.QtWidgets import QApplication

    app = QApplication.instance() or QApplication([])
    assert isinstance(app, QApplication)  # another kind of application cannot be here
    studio = Studio(app, options)
    studio.invented_pantry()
    studio.published_series()
    print(f"{studio.taken} pictures in {options.into}")
    return 0


class Studio:
    """Opens windows, waits until they have settled, and keeps what they show."""

    def __init__(self, app: QApplication, options: argparse.Namespace) -> None:
        self._app = app
        self._options = options
        self._folder = Path(tempfile.mkdtemp(prefix="brewdesk-pictures-"))
        self.taken = 0

    def _open(self, name: str, clock: StandingClock, *, is_demo: bool = False) -> Program:
        from brewdesk.bootstrap import Program
        from brewdesk.services.notices.silent import SilentNotifier

        program = Program(
            self._app,
            self._folder / f"{name}.brewdesk",
            is_demo=is_demo,
            clock=clock,
            notifier=SilentNotifier(),
        )
        width, height = (int(side) for side in self._options.size.split("x"))
        program.window.resize(width, height)
        program.start()
        self._settle()
        return program

    def _settle(self, milliseconds: int = SETTLE_MS) -> None:
        from PySide6.QtCore import QEventLoop, QTimer

        loop = QEventLoop()
        QTimer.singleShot(milliseconds, loop.quit)
        loop.exec()

    def _wait_for(self, is_so: Callable[[], bool]) -> None:
        for _ in range(100):
            if is_so():
                return
            self._settle(50)
        raise RuntimeError("the window did not settle")

    def _shoot(self, window: QWidget, name: str) -> None:
        if self._options.only not in name:
            return
        if not self._options.all and not self._options.only and name not in IN_README:
            return
        self._settle()
        window.grab().save(str(self._options.into / f"{name}.png"))
        self.taken += 1

    def _schemes(self) -> tuple[str, ...]:
        return (self._options.scheme,) if self._options.scheme else ("light", "dark")

    def invented_pantry(self) -> None:
        """Every page of the invented pantry."""
        program = self._open("invented", StandingClock(NOW), is_demo=True)
        window, desk = program.window, program.desk
        jars = {jar.stage_code: jar for jar in desk.shelf.jars()}
        for scheme in self._schemes():
            program.theme.apply(scheme, self._options.text_scale)
            for stage, jar in jars.items():
                window.show_page("shelf")
                window.shelf.choose_vessel(jar.vessel.id)
                if jar.batch is not None and stage in ("souring", "tasting", "past_window"):
                    self._wait_for(partial(_has_forecast, desk, jar.batch.id))
                    window.shelf.sheet.show_tab("readings")
                    self._shoot(window, f"readings-{stage}-{scheme}")
                    window.shelf.sheet.show_tab("curve")
                self._shoot(window, f"shelf-{stage}-{scheme}")
            for page in ("plan", "bottles", "due", "labels", "trials", "reckoner", "settings"):
                window.show_page(page)
                self._shoot(window, f"{page}-{scheme}")
            self._cultures_and_history(program, scheme)
            self._stores(program, scheme)
            self._photos(program, scheme)
            self._places(program, scheme)
            self._carrying(program, scheme)
        program.leave()
        self._settle()

    def _cultures_and_history(self, program: Program, scheme: str) -> None:
        """The family with a culture that has a past, and the life of that culture."""
        from brewdesk.services.subjects import Subject, SubjectKind

        window, family = program.window, program.desk.lineage.tree()
        here = [node for node in family.nodes if not node.is_gone]
        chosen = max(here, key=lambda node: len(node.parent_ids) + len(node.child_ids))
        window.open_culture(chosen.culture.id)
        self._shoot(window, f"cultures-{scheme}")
        window.show_history(Subject(SubjectKind.CULTURE, chosen.culture.id))
        self._shoot(window, f"history-{scheme}")
        window.look_back()
        history = cast("HistoryPage", window.page("history"))
        self._wait_for(lambda: history.look_back is not None and history.look_back.view is not None)
        self._shoot(window, f"lookback-{scheme}")

    def _stores(self, program: Program, scheme: str) -> None:
        """What is in the stores, and what the year's batches cost; the shop's price is invented."""
        from typing import cast

        from brewdesk.services.batchcosts import ShopPrice
        from brewdesk.widgets.storespage import StoresPage

        window, costs = program.window, program.desk.batch_costs
        costs.put_shop_price(ShopPrice(minor=420, currency=costs.currency()))
        window.show_page("stores")
        page = cast("StoresPage", window.page("stores"))
        page.tabs.setCurrentWidget(page.stock)
        self._shoot(window, f"stores-{scheme}")
        page.tabs.setCurrentWidget(page.costs)
        self._shoot(window, f"costs-{scheme}")

    def _photos(self, program: Program, scheme: str) -> None:
        """A jar's photos with the last look, and the guided look itself."""
        from brewdesk.services.photos import PhotoOwner
        from brewdesk.services.records import BatchStage

        window, desk = program.window, program.desk
        for batch in desk.batches.all(stages=(BatchStage.SOURING,)):
            if not desk.photos.of(PhotoOwner(batch_id=batch.id)):
                continue
            window.open_batch(batch.id)
            window.shelf.sheet.show_tab("photos")
            self._shoot(window, f"photos-{scheme}")
            window.dialogs.look_for_mold(batch.id)
            self._shoot_dialog(f"look-{scheme}")
            return

    def _places(self, program: Program, scheme: str) -> None:
        program.window.dialogs.show_places()
        self._shoot_dialog(f"places-{scheme}")

    def _carrying(self, program: Program, scheme: str) -> None:
        """A resting culture on its way over the shelf, above a vessel that would take it."""
        from brewdesk.services.drops import Target
        from brewdesk.services.records import CultureState

        window, desk = program.window, program.desk
        resting = [
            culture
            for culture in desk.cultures.all(include_gone=False)
            if culture.state is CultureState.RESTING and culture.vessel_id is not None
        ]
        window.carry_culture(resting[0].id)
        carriage = window.shelf.carrier.carriage
        for jar in desk.shelf.jars():
            target = Target(vessel_id=jar.vessel.id)
            if carriage.drop_at(target).is_allowed:
                carriage.point_at(target)
                break
        self._shoot(window, f"carrying-{scheme}")
        carriage.give_up()

    def _shoot_dialog(self, name: str) -> None:
        """Keep what the open dialog shows, and close it."""
        self._settle()
        dialog = self._app.activeModalWidget()
        if dialog is None:
            raise RuntimeError(f"no dialog for {name}")
        self._shoot(dialog, name)
        dialog.close()
        self._settle()

    def published_series(self) -> None:
        """Enter a published pH series and show the forecast as it stood on days 3, 6 and 9.

        Hafsari et al. 2021, pH of a black tea kombucha on days 0 to 15 (from the abstract).
        """
        clock = StandingClock(SERIES_START)
        program = self._open("published", clock)
        batch_id = begin_series(program.desk, clock)
        desk, window = program.desk, program.window
        scheme = self._schemes()[0]
        program.theme.apply(scheme, self._options.text_scale)
        for day, ph in read_series():
            clock.instant = SERIES_START + timedelta(days=day)
            record_ph(desk, batch_id, clock.now(), ph)
            if day not in (3.0, 6.0, 9.0):
                continue
            window.open_batch(batch_id)
            window.shelf.sheet.show_tab("curve")
            chart = window.shelf.sheet.chart
            self._wait_for(partial(_shows_points, chart, 1 + int(day // 3)))
            self._shoot(window, f"published-day-{day:.0f}-{scheme}")
        program.leave()
        self._settle()


def _has_forecast(desk: Desk, batch_id: int) -> bool:
    return desk.forecasts.now(batch_id) is not None


def _shows_points(chart: AcidChart, count: int) -> bool:
    view = chart.view()
    return view is not None and view.forecast is not None and len(view.points) == count


def read_series() -> list[tuple[float, float]]:
    """Days and pH of the published series."""
    with SERIES.open(encoding="utf-8", newline="") as file:
        rows = csv.DictReader(line for line in file if not line.startswith("#"))
        return [(float(row["day"]), float(row["value"])) for row in rows]


def begin_series(desk: Desk, clock: StandingClock) -> int:
    """Put up a jar and enter the batch that the paper's readings are of; returns its id.

    The abstract gives no vessel and no recipe: those here are the program's defaults.
    """
    from brewdesk.services.records import Material, VesselDraft, VesselShape

    place = desk.vessels.ensure_place()
    vessel = desk.vessels.add(
        VesselDraft(
            name="Published series",
            shape=VesselShape.CYLINDER,
            material=Material.GLASS,
            brim_volume_l=2.0,
            working_volume_l=1.8,
            inner_diameter_cm=12.0,
            place_id=place.id,
        )
    )
    wish = desk.batches.default_wish(vessel.id)
    batch = desk.batches.plan(vessel.id, None, "Black tea, as published", wish)
    desk.brewing.note_already_in(batch.id, clock.now(), 25.0)
    return batch.id


def record_ph(desk: Desk, batch_id: int, at: datetime, ph: float) -> None:
    """Enter one pH of a meter."""
    from brewdesk.services.records import Method, Quantity, ReadingDraft

    desk.readings.record(
        (
            ReadingDraft(
                batch_id=batch_id,
                at=at,
                quantity=Quantity.PH,
                method=Method.METER,
                value=ph,
                sd=desk.readings.default_sd(Quantity.PH, Method.METER),
                entered=f"{ph:.2f}",
            ),
        )
    )


if __name__ == "__main__":
    sys.exit(main(sys.argv[1:]))
