"""The drawing is measured: what is drawn must be as high and as wide as the vessel is."""

from __future__ import annotations

import math

import pytest
from PySide6.QtCore import QPointF
from PySide6.QtGui import QColor, QImage, QPainter

from brewdesk.widgets.jarpainter import JarLook, paint_jar, total_height_cm, widest_cm
from brewdesk.widgets.theme import LIGHT

SCALE = 20.0
FOOT = QPointF(300.0, 560.0)
CYLINDER = ((0.0, 7.0), (24.0, 7.0))


def drawn(look: JarLook) -> QImage:
    image = QImage(600, 600, QImage.Format.Format_RGB32)
    image.fill(QColor("#00ff00"))
    painter = QPainter(image)
    paint_jar(painter, FOOT, SCALE, look, LIGHT)
    painter.end()
    return image


def is_ground(image: QImage, x: float, y: float) -> bool:
    return image.pixelColor(round(x), round(y)) == QColor("#00ff00")


def first_dark_row(image: QImage) -> int:
    """First row, from the top, whose middle pixel is as dark as sweet tea."""
    return next(
        y
        for y in range(image.height())
        if 0 < image.pixelColor(300, y).lightness() < 90 and not is_ground(image, 300, y)
    )


@pytest.mark.parametrize("height_cm", [4.0, 10.0, 20.0])
def test_the_surface_stands_at_the_liquids_height(qapp, height_cm):
    image = drawn(JarLook(CYLINDER, liquid_height_cm=height_cm, ph=5.0))
    foot_y = FOOT.y() - 0.35 * SCALE  # the glass floor
    assert first_dark_row(image) == pytest.approx(foot_y - height_cm * SCALE, abs=3.0)


def test_a_wider_vessel_is_drawn_wider_in_the_same_proportion(qapp):
    def width(radius: float) -> int:
        image = drawn(JarLook(((0.0, radius), (24.0, radius))))
        row = round(FOOT.y() - 12.0 * SCALE)
        return sum(not is_ground(image, x, row) for x in range(600))

    assert width(7.0) / SCALE == pytest.approx(2 * (7.0 + 0.35), abs=0.3)  # and the pen
    assert width(10.0) - width(7.0) == pytest.approx(6.0 * SCALE, abs=3)


def test_a_thicker_pellicle_takes_more_of_the_drawing(qapp):
    def pale_rows(thickness_cm: float) -> int:
        look = JarLook(CYLINDER, liquid_height_cm=18.0, ph=5.0, pellicle_cm=thickness_cm)
        image = drawn(look)
        return sum(
            image.pixelColor(300, y).lightness() > 150 and not is_ground(image, 300, y)
            for y in range(150, 400)
        )

    thin, thick = pale_rows(0.5), pale_rows(2.0)
    assert (thick - thin) / SCALE == pytest.approx(1.5, abs=0.35)


def test_sizes_cover_what_is_drawn(qapp):
    look = JarLook(CYLINDER, liquid_height_cm=20.0, covered=True)
    assert widest_cm(look) == pytest.approx(14.7)
    assert total_height_cm(look) > 24.0
    image = drawn(look)
    top = next(y for y in range(600) if not is_ground(image, 300, y))
    assert top >= FOOT.y() - total_height_cm(look) * SCALE - 0.5 * SCALE


@pytest.mark.parametrize(
    "profile",
    [CYLINDER, ((0.0, 6.0), (20.0, 10.0)), ((0.0, 5.0), (14.0, 5.0), (18.0, 2.0), (22.0, 2.0))],
)
def test_every_shape_and_state_can_be_drawn(qapp, profile):
    for ph in (None, 2.0, 3.3, 6.5):
        look = JarLook(
            profile,
            liquid_height_cm=12.0,
            planned_height_cm=12.0,
            ph=ph,
            pellicle_cm=0.4,
            covered=True,
            steaming=True,
            wall="#aeb6b8",
        )
        image = drawn(look)
        assert not is_ground(image, 300, FOOT.y() - 5 * SCALE)
        assert math.isfinite(total_height_cm(look))
