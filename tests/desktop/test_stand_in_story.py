"""A stand-in inside a drink in the real window: chosen on its line, poured, kept as a riff."""

from __future__ import annotations

import pytest
from PySide6.QtWidgets import QApplication, QLabel

from tests.desktop.count_keys import type_keys
from tests.desktop.pages import settle

RUM = "Marrow Hill Tarpaulin white rum"
MOST_KEYS = 10


@pytest.fixture
def window(open_window, qtbot):
    """The whole window over the sample bar, as small as it is asked to fit."""
    shown = open_window()
    shown.resize(1024, 640)
    settle(shown, qtbot)
    return shown


class Hand:
    """Types into the window and counts the keys."""

    def __init__(self, window, qtbot) -> None:
        self.window, self.qtbot, self.count = window, qtbot, 0

    def types(self, *keys: str) -> None:
        for each in keys:
            type_keys(each)
            settle(self.window, self.qtbot)
            self.count += 1


def levels(bar):
    return {each.product.title: each.level.amount for each in bar.snapshot.bottles}


def said(widget) -> str:
    """All that a widget says."""
    return "\n".join(each.text() for each in widget.findChildren(QLabel) if each.text())


def row(seen, label):
    return next(each for each in seen if each.label == label)


def test_from_tonight_to_a_poured_stand_in(window, bar, qtbot):
    page, hand, before = window.current, Hand(window, qtbot), levels(bar)
    hand.types("<Ctrl F>", *"airm", "<Enter>", "<Ctrl Enter>")
    assert page.is_pouring and page.pouring.asked.drink.spec.name == "Airmail"
    box = QApplication.focusWidget()
    assert box in page.pouring.boxes and box.accessibleName().startswith("1 ½ oz gold rum")
    assert box.currentText() == "1 ½ oz white rum · Close, 0.80"
    first = page.pouring.brief.text()
    hand.types("<Up>")
    assert box.currentText() == "1 ½ oz aged rum · Close, 0.80"
    moved = page.pouring.brief.text()
    assert moved != first and " → " in moved
    assert "aged rum" in page.pouring.figures.accessibleDescription() or "as written" in (
        page.pouring.figures.picture.accessibleDescription()
    )
    hand.types("<Ctrl Enter>")
    print(f"tonight to a poured stand-in: {hand.count} keys")
    assert hand.count <= MOST_KEYS
    after = levels(bar)
    aged = "Marrow Hill Tarpaulin eight-year rum"
    assert before[aged] - after[aged] == pytest.approx(44.36, abs=0.01)
    assert after[RUM] == before[RUM]
    assert window.toast.text == "Poured Airmail"
    assert not page.is_pouring and page.current.spec.name == "Airmail"
    assert page.view.hasFocus()
    window.undo()
    assert levels(bar) == before


def test_esc_leads_back_to_the_same_drink_and_what_never_stands_in_is_said(window, bar, qtbot):
    page, hand = window.current, Hand(window, qtbot)
    page.also_short.setChecked(True)
    settle(window, qtbot)
    hand.types("<Ctrl F>", *"naked", "<Enter>", "<Ctrl Enter>")
    told = said(page.pouring)
    assert "Never agave syrup: Agave on a spec may mean the syrup or a spirit" in told
    assert "Not in the bar: bacanora (0.80), raicilla (0.75)" in told
    box = QApplication.focusWidget()
    offered = [box.itemText(each) for each in range(box.count())]
    assert not any("agave syrup" in each for each in offered)
    assert box.currentText() == "⅞ oz blanco tequila · Loose, 0.65"
    hand.types("<Home>")
    assert box.currentText() == "As written, which is not here"
    assert not page.pouring.pour_button.isEnabled()
    assert "Naked and Famous lacks 22.2 ml of mezcal" in said(page.pouring)
    hand.types("<Esc>")
    assert not page.is_pouring and page.view.hasFocus()
    assert page.current.spec.name == "Naked and Famous" and page.search.text == "naked"


def test_it_is_kept_as_a_riff_that_says_what_it_replaced(window, bar, qtbot):
    page, hand = window.current, Hand(window, qtbot)
    hand.types("<Ctrl F>", *"bramb", "<Enter>", "<Ctrl Enter>", "<Ctrl R>")
    assert window.toast.text == "Bramble with crème de cassis is in your book, a riff of Bramble"
    riff = bar.specs.get("Bramble with crème de cassis")
    line = next(each for each in riff.lines if each.ingredient == "creme-de-cassis")
    assert (riff.riff_of, line.note) == ("Bramble", "in place of crème de mûre")
    assert page.is_pouring
    hand.types("<Ctrl R>")
    assert "There is already a spec called" in page.banner.text
    window.undo()
    assert "Bramble with crème de cassis" not in {each.name for each in bar.snapshot.all_specs}


def test_all_that_is_missing_is_asked_at_once(window, bar, qtbot):
    page, hand = window.current, Hand(window, qtbot)
    page.also_short.setChecked(True)
    settle(window, qtbot)
    hand.types("<Ctrl F>", *"last word", "<Enter>", "<Ctrl Enter>")
    short = [each for each in page.pouring.asked.lines if each.state.word == "Missing"]
    assert len(short) == 2
    told = said(page.pouring)
    assert "cherry stone, flowers and dryness come from no other bottle" in told
    assert "yellow monastery-style liqueur" in QApplication.focusWidget().currentText()
    assert not page.pouring.pour_button.isEnabled()
