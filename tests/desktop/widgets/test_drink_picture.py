"""The painted drink: every form is drawn, said, and copied; reached from Tonight by keyboard."""

from __future__ import annotations

import re
from dataclasses import replace
from html.parser import HTMLParser

import pytest
from PySide6.QtCore import QRectF, Qt
from PySide6.QtGui import QColor, QGuiApplication, QImage, QPainter
from PySide6.QtTest import QTest

from barkeep.application.publishing import cards_of
from barkeep.desktop.look.tones import read_tones
from barkeep.desktop.widgets.drink_picture import NAME, DrinkPictureView, draw_drink, drink_svg
from barkeep.desktop.widgets.picture import COPY, COPY_SVG
from barkeep.documents.printed.descriptions import description_html
from barkeep.documents.specs.files import parts_in_file
from barkeep.domain.drink.analysis import analyse
from barkeep.domain.drink.picture import DrinkPicture, picture_of
from barkeep.domain.spec_text.text import read_specs

SIZE = 240


def of_classic(bar, name: str) -> DrinkPicture:
    snapshot = bar.snapshot
    spec = next(each for each in snapshot.all_specs if each.name == name)
    picture = picture_of(analyse(spec, snapshot), snapshot.knowledge.tree)
    assert picture is not None
    return picture


def painted(picture: DrinkPicture, scheme: str = "light") -> QImage:
    image = QImage(SIZE, SIZE, QImage.Format.Format_RGB32)
    image.fill(QColor("#ffffff"))
    painter = QPainter(image)
    draw_drink(painter, QRectF(0, 0, SIZE, SIZE), picture, read_tones(scheme))
    painter.end()
    return image


def colours_down_the_middle(image: QImage) -> list[str]:
    return [image.pixelColor(SIZE // 2, y).name() for y in range(SIZE)]


def test_what_sinks_is_below_what_is_poured_over_it(qapp, bar):
    """A sunrise is red at the bottom and orange above: read off the painted pixels."""
    picture = of_classic(bar, "Tequila Sunrise")
    bare = DrinkPicture(**{**_fields(picture), "ice": "none", "garnishes": (), "bubbles": False})
    seen = colours_down_the_middle(painted(bare))
    red, orange = (QColor(layer.tint.hex) for layer in picture.layers)
    rows_red = [y for y, each in enumerate(seen) if _near(QColor(each), red)]
    rows_orange = [y for y, each in enumerate(seen) if _near(QColor(each), orange)]
    assert rows_red and rows_orange
    assert min(rows_red) > max(rows_orange)


def _fields(picture: DrinkPicture) -> dict[str, object]:
    return {name: getattr(picture, name) for name in picture.__dataclass_fields__}


def _near(one: QColor, other: QColor) -> bool:
    parts = ((one.red(), other.red()), (one.green(), other.green()), (one.blue(), other.blue()))
    return all(abs(a - b) < 24 for a, b in parts)


def test_the_whole_book_is_painted_in_either_scheme(qapp, bar):
    """Each glass, ice and garnish of the book leaves ink, and none paints outside its picture."""
    tree = bar.snapshot.knowledge.tree
    for number, spec in enumerate(bar.snapshot.all_specs):
        picture = picture_of(analyse(spec, bar.snapshot), tree)
        if picture is not None:
            image = painted(picture, ("light", "dark")[number % 2])
            assert len(set(colours_down_the_middle(image))) > 2, spec.name
            assert image.pixelColor(1, SIZE // 3).name() == "#ffffff", spec.name


FORMS = """
Garnish: {each}
Glass: rocks
Ice: cubes

Stir with ice and strain.
"""


@pytest.mark.parametrize(
    "garnish",
    ["rosemary sprig", "edible flower", "cinnamon stick", "3 coffee beans", "candied ginger",
     "apple slice", "2 green olives", "cocktail onion", "orange slice", "lemon peel", "raspberry"],
)  # fmt: skip
def test_a_garnish_changes_the_picture(qapp, bar, garnish):
    tree = bar.snapshot.knowledge.tree
    images = []
    for text in (FORMS.format(each=garnish), FORMS.replace("Garnish: {each}\n", "")):
        (read,) = read_specs(f"Try\n2 oz gin{text}", tree)
        picture = picture_of(analyse(read.spec, bar.snapshot), tree)
        images.append(painted(picture))
    assert images[0] != images[1]


def test_it_is_read_and_copied_in_the_real_window(window, qtbot):
    page = window.show_page("tonight")
    qtbot.waitUntil(lambda: page.current is not None)
    view = page.detail.findChild(DrinkPictureView)
    assert view.isVisible() and view.accessibleName() == NAME
    assert view.accessibleDescription().startswith(("A ", "An "))
    view.setFocus()
    QTest.keyClick(view, Qt.Key.Key_C, Qt.KeyboardModifier.ControlModifier)
    assert not QGuiApplication.clipboard().image().isNull()
    actions = {each.text(): each for each in view.actions()}
    assert set(actions) == {COPY, COPY_SVG}
    actions[COPY_SVG].trigger()
    svg = QGuiApplication.clipboard().text()
    assert "<svg" in svg and view.accessibleDescription() in svg


class _Elements(HTMLParser):
    """The elements of a page, each with its attributes."""

    def __init__(self, page: str) -> None:
        super().__init__()
        self.found: list[tuple[str, dict[str, str | None]]] = []
        self.feed(page)

    def handle_starttag(self, tag: str, attrs: list[tuple[str, str | None]]) -> None:
        self.found.append((tag, dict(attrs)))

    def named(self, tag: str) -> list[dict[str, str | None]]:
        return [attrs for each, attrs in self.found if each == tag]


def test_a_page_holds_each_drink_with_its_words(qapp, bar):
    """Cut off at the glass, and nothing in one drink goes by a name that another has."""
    names = ("Daiquiri", "Mint Julep", "Moscow Mule", "Negroni")
    specs = [each for each in bar.snapshot.all_specs if each.name in names]
    cards = cards_of(specs, bar.snapshot)
    page = description_html(cards, draw=drink_svg)
    seen = _Elements(page)
    said = [each["aria-label"] for each in seen.named("figure")]
    assert said == [card.picture.in_words for card in cards]
    assert len(seen.named("svg")) == len(names)
    ids = [attrs["id"] for _tag, attrs in seen.found if "id" in attrs]
    used = re.findall(r"url\(#([\w-]+)\)", page)
    assert ids and len(set(ids)) == len(ids) and set(used) <= set(ids)
    assert seen.named("clippath") and not seen.named("title")[1:] and not seen.named("desc")
    assert "<svg" not in description_html(cards)
    again = [
        [replace(each, row=0) for each in parts_in_file(text, "page.html")]
        for text in (page, description_html(cards))
    ]
    assert again[0] == again[1] and len(again[0]) == len(names)
