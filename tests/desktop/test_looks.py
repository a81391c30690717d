"""The window looks as it did when its pictures were kept; `python -m tests.take_pictures` keeps
them anew, where it shall look otherwise."""

from __future__ import annotations

import pytest
from PySide6.QtGui import QImage

from tests.desktop.looks import KEPT, LOOKS, MOST_APART, reduced, share_apart, taken
from tests.how_much import EVERYTHING

KINDS = LOOKS if EVERYTHING else ("sample", "empty")


@pytest.mark.skipif(not KEPT.is_dir(), reason="no pictures are kept yet")
@pytest.mark.parametrize("kind", KINDS)
def test_the_window_looks_as_it_did(kind, theme, tmp_path):
    told = []
    for name, picture in taken(kind, tmp_path, theme):
        now, before = reduced(picture), QImage(str(KEPT / f"{name}.png"))
        share = share_apart(before, now)
        if share > MOST_APART:
            beside = KEPT / f"{name}-now.png"
            now.save(str(beside))
            told.append(f"{name}: {share:.1%} is otherwise, as {beside.name} beside it shows")
    assert told == []


def test_pictures_are_compared_point_by_point(qapp):
    plain = QImage(40, 40, QImage.Format.Format_RGB32)
    plain.fill(0xFFFFFF)
    faintly, plainly = plain.copy(), plain.copy()
    faintly.fill(0xF0F0F0)
    for x in range(40):
        plainly.setPixelColor(x, 5, "black")
    assert share_apart(plain, faintly) == 0.0
    assert share_apart(plain, plainly) == 1 / 40
    assert share_apart(plain, plain.copy(0, 0, 40, 20)) == 1.0


def test_every_picture_has_one_name():
    names = [look.name for looks in LOOKS.values() for look in looks]
    assert len(set(names)) == len(names)
