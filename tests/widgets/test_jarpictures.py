"""A jar from a kept picture looks as one that is drawn."""

from __future__ import annotations

from functools import partial

import pytest
from PySide6.QtCore import QPointF
from PySide6.QtGui import QColor, QImage, QPainter

from brewdesk.widgets import jarpictures
from brewdesk.widgets.icons import pixmap
from brewdesk.widgets.jarpainter import JarLook, paint_jar
from brewdesk.widgets.jarpictures import JarPictures
from brewdesk.widgets.theme import DARK, LIGHT

CYLINDER = ((0.0, 7.0), (24.0, 7.0))
BELLIED = ((0.0, 6.0), (10.0, 11.0), (20.0, 8.0), (22.0, 5.0))
LOOKS = [
    JarLook(CYLINDER),
    JarLook(CYLINDER, liquid_height_cm=18.0, ph=3.2, pellicle_cm=1.0, covered=True),
    JarLook(BELLIED, liquid_height_cm=15.0, ph=5.0, steaming=True),
    JarLook(BELLIED, planned_height_cm=12.0),
    JarLook(CYLINDER, liquid_height_cm=10.0, ph=3.0, wall="#c3a07a"),
]
# Drawn over one another in another order, colours are rounded otherwise.
ROUNDING = 6


def painted(paint, look, foot, colours, ratio=1.0):
    image = QImage(500, 500, QImage.Format.Format_RGB32)
    image.setDevicePixelRatio(ratio)
    image.fill(QColor(colours.wall))
    painter = QPainter(image)
    paint(painter, foot, 11.3 / ratio, look, colours)
    painter.end()
    return image


def farthest(one, other):
    """Return by how much the two pictures differ where they differ most."""
    pairs = zip(bytes(one.constBits()), bytes(other.constBits()), strict=True)
    return max(abs(left - right) for left, right in pairs)


@pytest.mark.parametrize("look", LOOKS)
@pytest.mark.parametrize("foot", [QPointF(250.0, 400.0), QPointF(250.5, 399.30)])
@pytest.mark.parametrize("colours", [LIGHT, DARK])
def test_it_looks_as_if_it_were_drawn(qapp, look, foot, colours):
    pictures = JarPictures()
    wanted = painted(paint_jar, look, foot, colours)
    assert farthest(wanted, painted(pictures.paint, look, foot, colours)) <= ROUNDING
    assert farthest(wanted, painted(pictures.paint, look, foot, colours)) <= ROUNDING
    assert pictures.count() == 1


@pytest.mark.parametrize("ratio", [1.25, 2.0])
def test_it_is_as_sharp_on_a_dense_screen(qapp, ratio):
    foot, look = QPointF(125.0, 195.0), LOOKS[1]
    wanted = painted(paint_jar, look, foot, LIGHT, ratio)
    paint = partial(JarPictures().paint, ratio=ratio)
    assert farthest(wanted, painted(paint, look, foot, LIGHT, ratio)) <= ROUNDING


def test_what_looks_otherwise_is_drawn_anew(qapp):
    pictures, foot = JarPictures(), QPointF(250.0, 400.0)
    for look in LOOKS:
        for colours in (LIGHT, DARK):
            painted(pictures.paint, look, foot, colours)
    assert pictures.count() == 2 * len(LOOKS)


def test_the_oldest_go_when_there_are_too_many(qapp, monkeypatch):
    monkeypatch.setattr(jarpictures, "_MOST_PX", 300_000)
    pictures, foot = JarPictures(), QPointF(250.0, 400.0)
    for mm in range(50):
        look = JarLook(CYLINDER, liquid_height_cm=18.0, ph=3.0, pellicle_cm=mm / 10)
        painted(pictures.paint, look, foot, LIGHT)
    assert 0 < pictures.count() < 10
    wanted = painted(paint_jar, LOOKS[1], foot, LIGHT)
    assert farthest(wanted, painted(pictures.paint, LOOKS[1], foot, LIGHT)) <= ROUNDING


def test_an_icon_is_the_same_the_second_time_and_another_in_another_colour(qapp):
    first, second = (pixmap("add", "#102030", 24).toImage() for _ in range(2))
    assert first == second
    assert first != pixmap("add", "#f0e0d0", 24).toImage()
