"""The painted drink: every form is drawn, said, and copied; reached from Tonight by keyboard."""

from __future__ import annotations

import pytest
from PySide6.QtCore import QRectF, Qt
from PySide6.QtGui import QColor, QGuiApplication, QImage, QPainter
from PySide6.QtTest import QTest

from barkeep.desktop.look.tones import read_tones
from barkeep.desktop.widgets.drink_picture import NAME, DrinkPictureView, draw_drink
from barkeep.desktop.widgets.picture import COPY, COPY_SVG
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
