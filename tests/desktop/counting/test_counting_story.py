"""Five bottles bought and the shelf counted, from the real main window and by keys alone.

The keys are counted and printed (`-s`).
"""

from __future__ import annotations

import pytest
from PySide6.QtCore import Qt

from tests.desktop.hand import Hand
from tests.desktop.pages import settle

pytestmark = pytest.mark.left_at("bottles")

Keys, Ctrl, Shift = Qt.Key, Qt.KeyboardModifier.ControlModifier, Qt.KeyboardModifier.ShiftModifier
BOUGHT = ("lam", "out", "clear", "dry r", "split")
"""What is typed to come to each of five bottles in the list."""


def test_twenty_bottles_are_counted_in_twenty_four_keys_and_confirmed(window, qtbot):
    hand = Hand()
    settle(window, qtbot)
    hand.key(Keys.Key_2, Ctrl)
    settle(window, qtbot)
    hand.key(Keys.Key_C, Ctrl | Shift)
    hand.type("75" * 5)
    for _bottle in range(10):
        hand.key(Keys.Key_Space)
    page = window.current
    assert len(page.count) == 20
    print(f"\ntwenty counts: {hand.keys} keys, {hand.seconds():.0f} s")
    assert hand.keys <= 24 and hand.clicks == 0
    hand.key(Keys.Key_Return, Ctrl)
    settle(window, qtbot)
    assert page.counting.sheet.heading.text() == "Write down the count of 20 bottles?"
    hand.key(Keys.Key_Return)
    settle(window, qtbot)
    assert hand.keys <= 26
    assert window.toast.text == "Counted 20 bottles" and not page.is_counting


def test_five_bottles_are_added_by_a_few_letters_each_and_counted_as_they_are(window, qtbot):
    hand, before = Hand(), {each.id for each in window.bar.snapshot.bottles}
    settle(window, qtbot)
    hand.key(Keys.Key_2, Ctrl)
    settle(window, qtbot)
    for name in BOUGHT:
        hand.type(name)
        hand.key(Keys.Key_R, Ctrl | Shift)
        settle(window, qtbot)
        hand.key(Keys.Key_Home)
    bought = [each for each in window.bar.snapshot.bottles if each.id not in before]
    named = [each.product.name.lower() for each in bought]
    assert all(name.startswith(typed) for name, typed in zip(named, BOUGHT, strict=True))
    print(f"\nfive bottles: {hand.keys} keys, {hand.seconds():.0f} s")
    assert hand.keys <= 32 and hand.clicks == 0
    hand.key(Keys.Key_C, Ctrl | Shift)
    page = window.current
    hand.key(Keys.Key_End)
    hand.key(Keys.Key_Up, times=4)
    hand.key(Keys.Key_Space, times=5)
    assert set(page.count.levels) == {each.id for each in bought}
    hand.key(Keys.Key_Return, Ctrl)
    settle(window, qtbot)
    hand.key(Keys.Key_Return)
    settle(window, qtbot)
    print(f"and counted: {hand.keys} keys, {hand.seconds():.0f} s")
    assert hand.keys <= 45
    now = window.bar.snapshot.bottle_by_id
    assert {now[each.id].level.state for each in bought} == {"sealed"}
    assert all(now[each.id].level.counted for each in bought)
