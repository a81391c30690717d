"""Trials on the page of a spec: written down, changed, settled, taken away, by keys and mouse."""

from __future__ import annotations

from dataclasses import replace
from datetime import timedelta

import pytest
from PySide6.QtCore import QDate, QPoint, Qt
from PySide6.QtWidgets import QApplication, QLabel, QLineEdit, QPushButton

from barkeep.desktop.specs.family import trials_of
from barkeep.desktop.specs.page import SpecsScreen
from barkeep.desktop.specs.trials import (
    NO_TRIALS,
    SHOWN_AT_FIRST,
    TrialsSection,
    read_tasters,
    scales_for,
)
from barkeep.domain.specs.trials import Scale, Score, Trial
from tests.desktop.audit import cut_off, focusable_without_name
from tests.desktop.pages import shown_page, tabbed

pytestmark = pytest.mark.qt_log_ignore("^This plugin does not support", extend=True)


TRIED, UNTRIED = "Upper Berth", "Buffer Stop"


@pytest.fixture
def page(bar, qtbot, tmp_path):
    with shown_page(SpecsScreen, bar, qtbot, tmp_path) as shown:
        yield shown


@pytest.fixture
def screen(page):
    return page.screen


def section(screen) -> TrialsSection | None:
    page = screen.detail.widget()
    there = [each for each in page.findChildren(TrialsSection) if each.isVisibleTo(page)]
    return there[0] if there else None


def button_called(screen, name) -> QPushButton:
    """A button of the trials by its accessible name."""
    found = [
        each
        for each in section(screen).findChildren(QPushButton)
        if each.accessibleName().startswith(name) and each.isVisible()
    ]
    return found[0]


def press(screen, name, qtbot):
    made = button_called(screen, name)
    made.setFocus()
    qtbot.keyClick(made, Qt.Key.Key_Space)


def asked(screen, name, qtbot):
    """The dialog for a new trial of a spec, opened by the keyboard."""
    screen.show_thing(name)
    return opened(screen, "Add a trial", qtbot)


def opened(screen, name, qtbot):
    """The dialog that a button opens."""
    press(screen, name, qtbot)
    dialog = screen.dialog
    qtbot.waitUntil(lambda: QApplication.focusWidget() is dialog.tasters)
    return dialog


def cell_at(grid, row, column) -> QPoint:
    return grid.visualItemRect(grid.item(row, column)).center()


def type_score(dialog, row, column, text, qtbot):
    grid = dialog.scores
    at = cell_at(grid, row, column)
    qtbot.mouseClick(grid.viewport(), Qt.MouseButton.LeftButton, pos=at)
    qtbot.keyClicks(grid, text[0])
    editor = QApplication.focusWidget()
    assert isinstance(editor, QLineEdit)
    qtbot.keyClicks(editor, text[1:])
    qtbot.keyClick(editor, Qt.Key.Key_Return)
    qtbot.waitUntil(lambda: grid.item(row, column).text() == text)
    qtbot.waitUntil(lambda: QApplication.focusWidget() is grid)


class TestReading:
    def test_they_are_told_newest_first_with_their_means(self, page, screen):
        screen.show_thing(TRIED)
        texts = page.detail_texts()
        assert "2 trials: Balance 3.8, Flavour 3.8, On theme 4.8" in texts
        newest = texts.index("20 September 2026")
        assert newest < texts.index("16 September 2026")
        assert texts[newest + 1] == "Won"
        assert "Balance 4.5, Flavour 4, On theme 5" in texts
        assert "Changed: Stirred for longer, the peel over the drink" in texts
        assert "That settles it: the first one, colder." in texts
        assert texts.count("Scored by Wren and Osk") == 2

    def test_a_spec_without_one_says_what_they_are_for(self, page, screen):
        screen.show_thing(UNTRIED)
        assert NO_TRIALS in page.detail_texts()

    def test_a_classic_has_none(self, screen):
        screen.show_thing("Daiquiri")
        assert section(screen) is None

    def test_of_many_the_older_ones_come_when_asked_for(self, bar, screen, qtbot):
        spec = bar.specs.get(UNTRIED)
        for number in range(30):
            on = bar.snapshot.on - timedelta(days=number)
            bar.trials.add(Trial(None, spec.id, on, notes=f"Note {number}."))
        screen.show_thing(UNTRIED)
        edits = [
            each for each in section(screen).findChildren(QPushButton) if "Edit" in each.text()
        ]
        assert len(edits) == SHOWN_AT_FIRST
        press(screen, "Show all 30 trials", qtbot)
        qtbot.waitUntil(lambda: "Note 29." in _texts(screen))
        focused = QApplication.focusWidget()
        assert focused.accessibleName() == "Edit… trial of 17 November 2026"
        stops = tabbed(section(screen), focused, qtbot)
        assert [each.accessibleName() for each in stops[:4]] == [
            "Edit… trial of 17 November 2026",
            "Mark as won trial of 17 November 2026",
            "Remove trial of 17 November 2026",
            "Edit… trial of 16 November 2026",
        ]
        assert stops[-1].accessibleName() == "Add a trial…" and len(stops) == 26 * 3 + 1
        QApplication.processEvents()
        assert cut_off(screen) == []


def _texts(screen) -> list[str]:
    return [each.text() for each in section(screen).findChildren(QLabel)]


class TestWriting:
    def test_one_is_written_down_by_keys_and_mouse(self, bar, page, screen, qtbot):
        dialog = asked(screen, UNTRIED, qtbot)
        assert dialog.windowTitle() == "Trial of Buffer Stop"
        assert dialog.tasters.text() == "Wren, Osk"  # who tasted last
        assert QApplication.focusWidget() is dialog.tasters
        dialog.tasters.selectAll()
        qtbot.keyClicks(dialog.tasters, "Ada, Ben Brook")
        type_score(dialog, 0, 0, "4", qtbot)
        type_score(dialog, 1, 0, "3.5", qtbot)
        type_score(dialog, 1, 2, "5", qtbot)
        qtbot.keyClicks(dialog.changed, "less amaro")
        qtbot.keyClicks(dialog.notes, "Long and dry.")
        dialog.on.setDate(QDate(2026, 11, 20))
        qtbot.keyClick(dialog.won, Qt.Key.Key_Space)
        qtbot.mouseClick(dialog.accept_button, Qt.MouseButton.LeftButton)
        (trial,) = trials_of(bar.specs.get(UNTRIED), bar.snapshot)
        assert trial.scores == (
            Score("Ada", "Balance", 4.0),
            Score("Ben Brook", "Balance", 3.5),
            Score("Ben Brook", "On theme", 5.0),
        )
        assert (trial.on.day, trial.changed, trial.notes) == (20, "less amaro", "Long and dry.")
        assert trial.won
        texts = page.detail_texts()
        assert "1 trial: Balance 3.8, On theme 5" in texts and "Won" in texts
        assert page.toast.text == "Wrote down the trial of 20 November"
        assert screen.current.spec.name == UNTRIED
        assert page.host.focusWidget() is section(screen).add_button
        bar.undo()
        assert NO_TRIALS in page.detail_texts()

    def test_a_score_off_its_scale_is_said_below_the_grid(self, bar, screen, qtbot):
        dialog = asked(screen, UNTRIED, qtbot)
        type_score(dialog, 1, 1, "7", qtbot)
        dialog.submit()
        assert dialog.problem("score") == "Osk’s score for Flavour cannot be “7”: it is 1 to 5."
        assert (dialog.scores.currentRow(), dialog.scores.currentColumn()) == (1, 1)
        assert trials_of(bar.specs.get(UNTRIED), bar.snapshot) == ()
        type_score(dialog, 1, 1, "good", qtbot)
        assert dialog.problem("score") == ""
        dialog.submit()
        assert "cannot be “good”: it is a number such as 4 or 3.5." in dialog.problem("score")
        type_score(dialog, 1, 1, "5", qtbot)
        dialog.submit()
        assert len(trials_of(bar.specs.get(UNTRIED), bar.snapshot)) == 1

    def test_a_row_follows_each_taster_and_keeps_its_scores(self, screen, qtbot):
        dialog = asked(screen, UNTRIED, qtbot)
        type_score(dialog, 0, 0, "4", qtbot)
        dialog.tasters.setText("Ada")
        assert dialog.scores.tasters == ("Ada",)
        dialog.tasters.setText("Ada, Ben, Cy")
        assert dialog.scores.tasters == ("Ada", "Ben", "Cy")
        assert dialog.scores.written() == {(0, 0): "4"}
        dialog.tasters.clear()
        assert dialog.scores.tasters == ()
        dialog.submit()
        assert not dialog.isVisible()

    def test_who_tastes_alone_needs_no_name(self, bar, page, screen, qtbot):
        dialog = asked(screen, UNTRIED, qtbot)
        dialog.tasters.selectAll()
        qtbot.keyClick(dialog.tasters, Qt.Key.Key_Backspace)
        assert dialog.scores.rowCount() == 1
        assert dialog.scores.verticalHeaderItem(0).text() == "Score"
        type_score(dialog, 0, 0, "9", qtbot)
        dialog.submit()
        assert dialog.problem("score") == "Score for Balance cannot be “9”: it is 1 to 5."
        type_score(dialog, 0, 0, "4", qtbot)
        dialog.submit()
        (trial,) = trials_of(bar.specs.get(UNTRIED), bar.snapshot)
        assert trial.scores == (Score("", "Balance", 4.0),)
        texts = page.detail_texts()
        assert "1 trial: Balance 4" in texts and "Scored by" not in texts
        again = opened(screen, "Edit… trial of 21 November", qtbot)
        assert again.tasters.text() == "" and again.scores.written() == {(0, 0): "4"}
        again.reject()

    def test_delete_empties_a_cell_and_tab_leaves_the_grid(self, screen, qtbot):
        dialog = asked(screen, UNTRIED, qtbot)
        type_score(dialog, 0, 0, "4", qtbot)
        qtbot.keyClick(dialog.scores, Qt.Key.Key_Delete)
        assert dialog.scores.written() == {}
        qtbot.keyClick(dialog.scores, Qt.Key.Key_Tab)
        assert QApplication.focusWidget() is dialog.changed

    def test_nothing_can_be_tasted_tomorrow(self, bar, screen, qtbot):
        dialog = asked(screen, UNTRIED, qtbot)
        dialog.on.setDate(QDate(2099, 1, 1))
        assert dialog.on.date() == QDate(2026, 11, 21)

    def test_cancelling_writes_nothing(self, bar, screen, qtbot):
        dialog = asked(screen, UNTRIED, qtbot)
        qtbot.keyClick(dialog, Qt.Key.Key_Escape)
        assert trials_of(bar.specs.get(UNTRIED), bar.snapshot) == ()

    def test_many_tasters_and_long_names_are_all_readable(self, bar, screen, qtbot):
        scales = tuple(Scale(f"How it is on the whole {number}") for number in range(6))
        bar.settings.change(replace(bar.snapshot.settings, scales=scales))
        dialog = asked(screen, UNTRIED, qtbot)
        dialog.tasters.setText(", ".join(f"Maximiliana the {number}th" for number in range(12)))
        QApplication.processEvents()
        assert dialog.scores.rowCount() == 12
        assert dialog.scores.verticalHeaderItem(3).text() == "Maximiliana the 3th"
        dialog.tasters.setText("Maximiliana of the Longest Name in the Whole Book, Ben")
        header = dialog.scores.verticalHeaderItem(0)
        assert header.text().startswith("Maxim") and header.text().endswith("Book")
        assert "…" in header.text() and header.toolTip().startswith("Maximiliana of the Longest")
        assert focusable_without_name(dialog) == []
        assert [
            each for each in cut_off(dialog) if "'&" not in each and "&changed" not in each
        ] == []
        dialog.reject()


class TestChanging:
    def test_one_is_changed(self, bar, page, screen, qtbot):
        screen.show_thing(TRIED)
        dialog = opened(screen, "Edit… trial of 16 September", qtbot)
        assert dialog.windowTitle() == "Change trial of Upper Berth"
        assert dialog.scores.tasters == ("Wren", "Osk")
        assert dialog.scores.written()[(0, 2)] == "5"
        dialog.changed.setText("Nothing")
        dialog.submit()
        assert "Changed: Nothing" in page.detail_texts()
        assert bar.undo_label == "Change trial of Upper Berth"

    def test_one_saved_as_it_was_changes_nothing(self, bar, screen, page, qtbot):
        screen.show_thing(TRIED)
        press(screen, "Edit… trial of 20 September", qtbot)
        screen.dialog.submit()
        assert bar.undo_label is None and page.toast.text == ""

    def test_scores_on_a_scale_that_is_gone_are_kept(self, bar, screen, qtbot):
        bar.settings.change(replace(bar.snapshot.settings, scales=(Scale("Nose", 0, 10),)))
        before = trials_of(bar.specs.get(TRIED), bar.snapshot)[-1]
        names = [each.name for each in scales_for(before, bar.snapshot)]
        assert names == ["Nose", "Balance", "Flavour", "On theme"]
        screen.show_thing(TRIED)
        dialog = opened(screen, "Edit… trial of 20 September", qtbot)
        type_score(dialog, 0, 0, "9", qtbot)
        dialog.submit()
        after = trials_of(bar.specs.get(TRIED), bar.snapshot)[-1]
        assert set(after.scores) == {*before.scores, Score("Wren", "Nose", 9.0)}

    def test_another_version_is_settled_on_and_taken_back(self, bar, page, screen, qtbot):
        screen.show_thing("Upper Berth in the Corridor")
        press(screen, "Mark as won", qtbot)
        assert page.toast.text == "Upper Berth in the Corridor is the version that won"
        texts = page.detail_texts()
        assert texts[texts.index("Upper Berth in the Corridor", 1) :].count("Won") >= 1
        assert not trials_of(bar.specs.get(TRIED), bar.snapshot)[-1].won
        press(screen, "Not won after all", qtbot)
        assert "Won" not in page.detail_texts()

    def test_one_is_taken_away_and_put_back(self, bar, page, screen, qtbot):
        screen.show_thing(TRIED)
        press(screen, "Remove trial of 20 September", qtbot)
        assert "20 September 2026" not in page.detail_texts()
        assert page.toast.text == "Removed the trial of 20 September"
        bar.undo()
        assert "20 September 2026" in page.detail_texts()


def test_everything_is_named_and_nothing_is_cut_off(screen, qtbot):
    for name in (TRIED, UNTRIED, "Upper Berth in the Corridor"):
        screen.show_thing(name)
        QApplication.processEvents()
        assert focusable_without_name(screen) == []
        assert cut_off(screen) == []


@pytest.mark.parametrize(
    ("text", "names"),
    [
        ("", ()),
        (" , ,", ()),
        ("Ada", ("Ada",)),
        ("Ada,  Ben  Brook ,ada", ("Ada", "Ben Brook")),
    ],
)
def test_tasters_are_read_once_each(text, names):
    assert read_tasters(text) == names
