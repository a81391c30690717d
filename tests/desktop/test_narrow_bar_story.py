"""Where the ordinary runs out, told in the real window: carton white and then eggs, navy gin."""

from __future__ import annotations

import pytest
from PySide6.QtCore import Qt
from PySide6.QtWidgets import QApplication, QLabel

from barkeep.desktop.making.batch import open_batch
from barkeep.domain.bar.shoots import ServeCounts, Shoot, ShootDrink
from barkeep.domain.bottles.bottle import BottleFacts, Label
from barkeep.domain.spec_text.text import read_specs
from tests.desktop.pages import settle

Keys = Qt.Key
CTRL = Qt.KeyboardModifier.ControlModifier
SPECS = """Gull
2 oz bourbon
3/4 oz lemon juice
3/4 oz simple syrup
1 egg white
Glass: coupe

Shake with ice and fine-strain.
---
Tall Reed
2 oz gin
1/2 oz lemon juice
Glass: coupe

Shake with ice and fine-strain.
"""


@pytest.fixture
def narrow(empty_bar):
    """A bar with white for three in a carton, eggs, and only navy gin."""
    for name, key, size, left, unit in (
        ("Reeve bourbon", "bourbon", 700.0, 600.0, "ml"),
        ("Fleet Wall navy gin", "navy-strength-gin", 700.0, 400.0, "ml"),
        ("Carton white", "pasteurised-egg-white", 500.0, 100.0, "ml"),
        ("Eggs", "egg", 6.0, 6.0, "each"),
        ("Lemons", "lemon", 6.0, 6.0, "each"),
        ("Sugar", "sugar", 1000.0, 900.0, "g"),
    ):
        label = Label(name, "", key, size, unit)
        empty_bar.inventory.receive_new(label, left, BottleFacts())
    tree = empty_bar.snapshot.knowledge.tree
    empty_bar.specs.add([each.spec for each in read_specs(SPECS, tree)])
    return empty_bar


@pytest.fixture
def window(open_window, narrow, qtbot):
    """The whole window over it, as small as it is asked to fit."""
    shown = open_window(over=narrow)
    shown.resize(1024, 640)
    settle(shown, qtbot)
    return shown


def find(window, qtbot, query: str) -> None:
    """Type a query on the Tonight page."""
    qtbot.keyClick(QApplication.focusWidget() or window, Keys.Key_1, CTRL)
    qtbot.keyClick(QApplication.focusWidget() or window, Keys.Key_F, CTRL)
    qtbot.keyClick(QApplication.focusWidget(), Keys.Key_A, CTRL)
    qtbot.keyClicks(QApplication.focusWidget(), query)
    settle(window, qtbot)


def details(window) -> str:
    """All that the details beside the list say."""
    labels = window.current.detail.findChildren(QLabel)
    return "\n".join(each.text() for each in labels if each.text())


def batched(window, qtbot, name: str, target: str = "", amount: str = "") -> str:
    """What the batch of a drink says, opened from its spec."""
    spec = next(each for each in window.current.context.bar.snapshot.all_specs if each.name == name)
    dialog = open_batch(window.current.context, spec, window)
    if target:
        dialog.target.setCurrentText(target)
    if amount:
        dialog.amount.selectAll()
        qtbot.keyClicks(dialog.amount, amount)
    settle(window, qtbot)
    said = "\n".join((dialog.amount.text(), dialog.headline.text(), dialog.words.text()))
    dialog.close()
    return said


def test_after_the_carton_the_page_speaks_of_raw_egg(window, qtbot):
    find(window, qtbot, "own gull")
    window.current.choose("Gull")
    settle(window, qtbot)
    assert "3 serves, then egg white made from whole egg for 6 more" in details(window)
    assert "After 3: Raw egg" in details(window)


def test_a_batch_takes_the_carton_and_then_an_egg(window, qtbot):
    said = batched(window, qtbot, "Gull", amount="4")
    assert "First take the 100 ml of pasteurised egg white there is." in said
    assert "Separate 28 ml of egg white from 1 × whole egg first." in said
    assert "Raw egg" in said
    assert "Raw egg" not in batched(window, qtbot, "Gull", amount="3")


def test_all_the_lemon_there_is_is_offered_and_navy_gin_is_no_gin(window, qtbot):
    said = batched(window, qtbot, "Tall Reed", "From so much lemon juice")
    assert said.startswith("228 ml\nTall Reed: about 15 serves")
    assert "400 ml of navy-strength gin, as a stand-in, 0.75 times as much" in said


def test_a_shoot_says_what_is_poured_and_what_is_made(window, narrow, qtbot):
    (gull,) = (each for each in narrow.snapshot.specs if each.name == "Gull")
    drink = ShootDrink(gull.id, "Gull", ServeCounts(0, 4, 0))
    narrow.shoots.add(Shoot(None, "Gull night", narrow.snapshot.on, drinks=(drink,)))
    window.show_page("shoots")
    settle(window, qtbot)
    assert "From Carton white, and made from Eggs" in details(window)
    assert "Separate 32 ml of egg white from 1 × whole egg" in details(window)
