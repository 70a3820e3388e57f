"""What a camera wrote: read where it is, never tripped up by what is not.

Layout: Exif (CIPA DC-008) over TIFF 6.0. That the blocks built here are laid out as others
read them is checked against Qt's own reader, which takes the orientation from them.
"""

from __future__ import annotations

from datetime import UTC, datetime, timedelta, timezone
from zoneinfo import ZoneInfo

import pytest
from hypothesis import given
from hypothesis import strategies as st

from brewdesk.models.pictures import look_into
from brewdesk.services.cameradata import CameraData, is_whole_jpeg, read_camera_data
from tests.helpers.pictures import picture, tiff_block, with_exif

TAKEN = "2026:11:20 18:05:09"


@pytest.mark.parametrize("kind", ["jpg", "png"])
@pytest.mark.parametrize("order", ["<", ">"], ids=["little endian", "big endian"])
def test_the_time_taken_and_the_place_are_found(kind, order):
    block = tiff_block(TAKEN, "+05:30", has_position=True, order=order)
    found = read_camera_data(with_exif(picture(kind), block))
    assert found.taken_at == datetime(
        2026, 11, 20, 18, 5, 9, tzinfo=timezone(timedelta(hours=5, minutes=30))
    )
    assert found.has_location


@pytest.mark.parametrize("order", ["<", ">"], ids=["little endian", "big endian"])
def test_qt_reads_the_same_blocks(order):
    upright = picture("jpg", 60, 40)
    turned = with_exif(upright, tiff_block(TAKEN, orientation=6, order=order))
    assert (look_into(upright).width_px, look_into(upright).height_px) == (60, 40)
    assert (look_into(turned).width_px, look_into(turned).height_px) == (40, 60)


def test_a_camera_without_an_offset_showed_the_makers_own_time():
    found = read_camera_data(with_exif(picture("jpg"), tiff_block(TAKEN)))
    assert found.instant(ZoneInfo("Europe/Berlin")) == datetime(2026, 11, 20, 17, 5, 9, tzinfo=UTC)
    assert not found.has_location


def test_an_offset_outweighs_the_makers_zone():
    found = read_camera_data(with_exif(picture("jpg"), tiff_block(TAKEN, "-03:00")))
    assert found.instant(ZoneInfo("Europe/Berlin")) == datetime(2026, 11, 20, 21, 5, 9, tzinfo=UTC)


@pytest.mark.parametrize("taken", ["0000:00:00 00:00:00", "2026:02:30 10:00:00", "    :  :  "])
def test_a_date_that_never_was_is_not_known(taken):
    assert read_camera_data(with_exif(picture("jpg"), tiff_block(taken))).taken_at is None


@pytest.mark.parametrize("offset", ["+99:00", "later", "+5"])
def test_an_offset_that_is_none_is_left_out(offset):
    found = read_camera_data(with_exif(picture("jpg"), tiff_block(TAKEN, offset)))
    assert found.taken_at == datetime(2026, 11, 20, 18, 5, 9)


def test_the_first_day_of_the_calendar_is_no_instant_everywhere():
    early = CameraData(datetime(1, 1, 1, 0, 0))
    assert early.instant(timezone(timedelta(hours=14))) is None


def test_a_position_in_xmp_is_found():
    data = picture("jpg") + b'<x:xmpmeta><rdf:Description exif:GPSLatitude="1,2N"/></x:xmpmeta>'
    assert read_camera_data(data).has_location


@given(st.binary(max_size=400))
def test_bytes_of_any_kind_are_read_without_harm(data):
    for head in (b"", b"\xff\xd8", b"\x89PNG\r\n\x1a\n", b"RIFF\x10\0\0\0WEBP"):
        read_camera_data(head + data)
        is_whole_jpeg(head + data)


@given(
    block=st.binary(max_size=200),
    order=st.sampled_from([b"II*\0", b"MM\0*"]),
    kind=st.sampled_from(["jpg", "png"]),
)
def test_a_block_of_nonsense_is_read_without_harm(block, order, kind):
    found = read_camera_data(with_exif(picture(kind), order + block))
    assert found.instant(UTC) is None or found.taken_at is not None


@given(where=st.integers(min_value=0, max_value=120), byte=st.integers(0, 255))
def test_a_block_with_one_wrong_byte_is_read_without_harm(where, byte):
    block = bytearray(tiff_block(TAKEN, "+01:00", has_position=True))
    block[where % len(block)] = byte
    read_camera_data(with_exif(picture("jpg"), bytes(block)))


def test_a_jpeg_is_whole_only_up_to_its_end_mark():
    data = picture("jpg")
    assert is_whole_jpeg(data)
    assert is_whole_jpeg(data + b"what a phone puts behind it")
    assert not is_whole_jpeg(data[: len(data) // 2])
    assert not is_whole_jpeg(b"\xff\xd8")
