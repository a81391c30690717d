"""The neighbours of an ingredient, from the real window: lit, read, walked and walked back."""

from __future__ import annotations

import pytest
from PySide6.QtCore import QPoint, QPointF, Qt
from PySide6.QtGui import QFontMetricsF, QGuiApplication
from PySide6.QtTest import QTest

from barkeep.desktop.look.metrics import TypeSize, font_of
from barkeep.domain.stand_ins.neighbourhood import RELATIONS, neighbourhood
from barkeep.domain.stand_ins.track_plan import track_plan
from tests.desktop.pages import settle
from tests.domain.stand_ins.test_neighbourhood import overlaps

pytestmark = [
    pytest.mark.qt_log_ignore("^This plugin does not support", extend=True),
    pytest.mark.left_at("stand-ins"),
]


def key(widget, *keys: str) -> None:
    for each in keys:
        QTest.keySequence(widget, each)


@pytest.fixture
def picture(window, qtbot):
    """That of gold rum, reached by keys alone."""
    window.resize(1280, 800)
    key(window, "Ctrl+6")
    window.current.show_thing("gold-rum")
    settle(window, qtbot)
    window.current.focus_list()
    while QGuiApplication.focusObject() is not window.current.neighbours.picture:
        QTest.keySequence(QGuiApplication.focusObject(), "Tab")
    shown = window.current.neighbours.picture
    assert shown.around.of == "gold-rum"
    return shown


def lit(picture) -> str:
    return picture.plan().stops[picture.at].words


def test_walked_from_stop_to_stop_and_back(window, picture, qtbot):
    screen = window.current
    assert "Enter" in screen.neighbours.said.text()
    key(picture, "Right")
    first = picture.around.by("stands_in")[0]
    assert lit(picture) == first.name
    assert screen.neighbours.said.text() == first.in_words
    key(picture, "Return")
    settle(window, qtbot)
    assert screen.current.key == picture.around.of == first.key
    assert QGuiApplication.focusObject() is picture and picture.at is None
    key(picture, "Up")
    family = picture.plan().stops[picture.at].neighbour
    assert family.relation == "above"
    top = picture.around.by("above")[-1]
    picture.walked.emit(top.key)
    settle(window, qtbot)
    assert picture.around.of == top.key and window.bar.snapshot.knowledge.tree[top.key].family
    assert screen.current is None and QGuiApplication.focusObject() is picture
    key(picture, "Backspace")
    settle(window, qtbot)
    assert screen.current.key == picture.around.of == first.key
    back = next(each for each in screen.bar_actions if "Back" in each.text())
    assert back.isEnabled()
    back.trigger()
    settle(window, qtbot)
    assert screen.current.key == picture.around.of == "gold-rum"
    assert not back.isEnabled()


def test_the_mouse_lights_reads_and_opens_what_is_more(window, picture, qtbot):
    stops = picture.plan().stops
    number, stop = next((n, s) for n, s in enumerate(stops) if s.relation == "stands_in")
    at = QPointF(*stop.label.middle)
    assert picture.says_at(at) == stop.neighbour.in_words
    assert picture.says_at(QPointF(1, 1)) == picture.around.in_words
    QTest.mouseMove(picture, at.toPoint())
    assert picture.at == number
    high = picture.height()
    more = next(s for s in stops if s.relation == "stands_in" and s.more)
    QTest.mouseClick(picture, Qt.MouseButton.LeftButton, pos=QPoint(*map(round, more.label.middle)))
    settle(window, qtbot)
    shown = {s.neighbour for s in picture.plan().stops if s.relation == "stands_in"}
    assert shown == set(picture.around.by("stands_in"))
    qtbot.waitUntil(lambda: picture.height() > high)
    svg = picture.as_svg().decode()
    assert all(each.name.split()[0] in svg for each in shown)
    other = next(s for s in picture.plan().stops if s.relation == "stands_for" and s.neighbour)
    QTest.mouseClick(
        picture, Qt.MouseButton.LeftButton, pos=QPoint(*map(round, other.label.middle))
    )
    settle(window, qtbot)
    assert picture.around.of == other.neighbour.key


def test_a_change_is_drawn_and_a_choice_forgets_the_way_back(window, picture, qtbot):
    bar, screen = window.bar, window.current
    key(picture, "Right", "Return")
    settle(window, qtbot)
    screen.focus_list()
    screen.show_thing("gold-rum")
    settle(window, qtbot)
    key(picture, "Backspace")
    settle(window, qtbot)
    assert picture.around.of == "gold-rum"
    before = {each.key: each.there for each in picture.around.neighbours}
    assert before["aged-rum"]
    aged = bar.snapshot.knowledge.tree.at_or_below("aged-rum")
    for each in bar.snapshot.bottles:
        if each.ingredient in aged:
            bar.inventory.remove(each.id)
    settle(window, qtbot)
    assert not {each.key: each.there for each in picture.around.neighbours}["aged-rum"]


def test_labels_keep_apart_in_the_real_type(window, picture, qtbot):
    metrics = QFontMetricsF(font_of(TypeSize.CAPTION))
    snapshot = window.bar.snapshot
    for kind in ("rum", "sugar", "lemon-juice", "gold-rum", "gin", "spirit", "egg-white"):
        around = neighbourhood(snapshot.knowledge, snapshot.owned, kind)
        plan = track_plan(
            around, 264.0, metrics.height() + 4, metrics.horizontalAdvance, opened=RELATIONS
        )
        assert not overlaps(plan), kind
