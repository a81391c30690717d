"""The pictures: all there, all readable, recoloured and sharp."""

from __future__ import annotations

import itertools
from xml.etree import ElementTree

import pytest
from PySide6.QtCore import QByteArray
from PySide6.QtGui import QColor, QIcon, QImage
from PySide6.QtSvg import QSvgRenderer
from PySide6.QtWidgets import QPushButton, QWidget

from barkeep.desktop.look.icons import app_icon, drawing, icon, pixmap, renew, wear
from barkeep.desktop.look.tones import palette_of, read_tones
from barkeep.desktop.shell.navigation import PAGES
from barkeep.desktop.widgets.verdict_badge import verdict_icon
from barkeep.domain.pouring.verdict import VERDICTS
from barkeep.resource_files import names


def icon_names() -> list[str]:
    """Every picture there is."""
    return [name.removesuffix(".svg") for name in names("icons", suffix=".svg")]


NEEDED = (
    *[
        "search",
        "clear",
        "filter",
        "undo",
        "redo",
        "add",
        "open-bottle",
        "warning",
        "info",
        "error",
        "check",
        "count",
        "scale",
        "print",
    ],
    *[
        "allergen",
        "sort",
        "export",
        "import",
        "settings",
        "house-made",
        "history",
        "calendar",
        "remove",
    ],
    *["picture-empty-shelf", "picture-no-match", "picture-empty-glass", "barkeep"],
    *(page.picture for page in PAGES),
    *(verdict_icon(verdict) for verdict in VERDICTS),
)


def colours(image: QImage) -> set[str]:
    """The colours of every pixel that is not see-through."""
    places = itertools.product(range(image.width()), range(image.height()))
    found = (image.pixelColor(x, y) for x, y in places)
    return {each.name() for each in found if each.alpha() == 255}


def mask(name: str) -> bytes:
    """Where a picture is drawn, whatever its colour."""
    image = pixmap(name, "#000000", 32).toImage().convertToFormat(QImage.Format.Format_Alpha8)
    return bytes(image.constBits())


@pytest.mark.parametrize("name", NEEDED)
def test_a_picture_is_there_and_draws_something(name, qapp):
    assert QSvgRenderer(QByteArray(drawing(name).encode())).isValid()
    assert colours(pixmap(name, "#123456", 48).toImage())


def test_all_are_drawn_in_one_manner():
    for name in icon_names():
        root = ElementTree.fromstring(drawing(name))
        if name == "barkeep":
            continue
        edge = 96 if name.startswith("picture-") else 24
        assert root.get("viewBox") == f"0 0 {edge} {edge}", name
        assert root.get("stroke") == "currentColor", name
        assert root.get("stroke-width") == ("3" if edge == 96 else "1.7"), name
        assert root.get("stroke-linecap") == "round", name


def test_no_two_pictures_are_alike(qapp):
    masks = {name: mask(name) for name in icon_names()}
    assert len(set(masks.values())) == len(masks)


def test_verdicts_differ_in_shape_alone(qapp):
    """One colour for all, as in print or to a colour-blind eye: a quarter of the ink differs."""
    masks = {verdict: mask(verdict_icon(verdict)) for verdict in VERDICTS}
    for one, other in itertools.combinations(masks.values(), 2):
        inked = sum(a > 127 or b > 127 for a, b in zip(one, other, strict=True))
        different = sum((a > 127) != (b > 127) for a, b in zip(one, other, strict=True))
        assert different / inked > 0.25


def test_a_picture_takes_the_colour_it_is_given(qapp):
    assert colours(pixmap("add", "#a1b2c3", 32).toImage()) == {"#a1b2c3"}


def test_paper_shows_the_ground_through(qapp):
    found = colours(pixmap("verdict-ready", "#004400", 64, paper="#fedcba").toImage())
    assert {"#004400", "#fedcba"} <= found


def test_twice_the_ratio_is_twice_the_pixels(qapp):
    sharp = pixmap("search", "#000000", 20, 2.0)
    assert sharp.size().toTuple() == (40, 40)
    assert sharp.deviceIndependentSize().toTuple() == (20.0, 20.0)


def test_asked_twice_drawn_once(qapp):
    first, second = pixmap("sort", "#010203", 24), pixmap("sort", "#010203", 24)
    assert first.cacheKey() == second.cacheKey()


def test_an_unknown_picture_is_refused(qapp):
    with pytest.raises(FileNotFoundError):
        pixmap("no-such-picture", "#000000")


@pytest.mark.parametrize("scheme", ["light", "dark"])
def test_forms_take_their_colours_from_the_palette(scheme, qapp):
    tones = read_tones(scheme)
    made = icon("add", palette_of(tones))
    for mode, colour in (
        (QIcon.Mode.Normal, tones.text),
        (QIcon.Mode.Selected, tones.on_highlight),
        (QIcon.Mode.Disabled, tones.disabled),
    ):
        assert colours(made.pixmap(20, mode).toImage()) == {QColor(colour).name()}


def test_what_wears_a_picture_follows_the_theme(qtbot, qapp):
    host = QWidget()
    qtbot.addWidget(host)
    plain, toned = QPushButton(host), QPushButton(host)
    before = qapp.palette()
    try:
        qapp.setPalette(palette_of(read_tones("light")))
        wear(plain, "add")
        wear(toned, "add", "on_accent")
        qapp.setPalette(palette_of(read_tones("dark")))
        renew()
        dark = read_tones("dark")
        assert colours(plain.icon().pixmap(20).toImage()) == {dark.text}
        assert colours(toned.icon().pixmap(20).toImage()) == {dark.on_accent}
    finally:
        qapp.setPalette(before)


def test_the_program_has_its_own_picture(qapp):
    made = app_icon()
    assert not made.isNull()
    assert len(colours(made.pixmap(64).toImage())) >= 4
