"""What several logs say of each bottle, over the sample bar."""

from __future__ import annotations

from dataclasses import replace
from datetime import datetime

import pytest
from PySide6.QtCore import Qt

from barkeep.desktop.shoots.variances import VariancesDialog
from barkeep.domain.bar.shoots import LoggedBottle, ShootLog
from tests.desktop.audit import cut_off, focusable_without_name

pytestmark = pytest.mark.qt_log_ignore("^This plugin does not support", extend=True)
BOTTLE, SHOOTS, POURED, GONE, DOUBT, REASON = range(6)
LONG = "An aperitivo with a name of sixty letters from a very far valley"


def shown(snapshot, qtbot):
    made = VariancesDialog(snapshot)
    qtbot.addWidget(made)
    with qtbot.waitActive(made):
        made.show()
        made.activateWindow()
    return made


def cell(dialog, row, column):
    return dialog.table.index(row, column).data()


def with_logs(snapshot, *logged):
    """The snapshot with one logged shoot for each of these bottles, and no other."""
    at = datetime(2026, 11, 20, 18)
    shoots = tuple(
        replace(snapshot.shoots[0], id=number, state="logged", log=ShootLog(at, (1,), (each,)))
        for number, each in enumerate(logged, 1)
    )
    return replace(snapshot, shoots=shoots)


def gin(variance, title="Gin", bottle_id=1, poured=100.0):
    return LoggedBottle(bottle_id, title, "ml", poured, 0.0, 400.0, 400.0 - variance, 3.0)


def test_the_samples_logs_are_summed_what_stands_out_first(bar, qtbot):
    dialog = shown(bar.snapshot, qtbot)
    assert [cell(dialog, 0, column) for column in range(REASON)] == [
        "Vantry Loop Late Turn coffee liqueur",
        "2",
        "60 ml",
        "125 ml",
        "± 122 ml",
    ]
    assert cell(dialog, 0, REASON).startswith("208 % more than was poured")
    said = {cell(dialog, row, REASON) for row in range(1, dialog.table.rowCount())}
    assert said == {"No more than the doubt of the levels explains."}


def test_the_whole_reason_of_the_present_bottle_is_said_below(bar, qtbot):
    dialog = shown(bar.snapshot, qtbot)
    assert dialog.view.hasFocus()
    qtbot.keyClick(dialog.view, Qt.Key.Key_Down)
    title, reason = cell(dialog, 1, BOTTLE), cell(dialog, 1, REASON)
    assert dialog.reason.text() == f"{title}: {reason}"


def test_less_gone_than_poured_is_said_as_too_much_left(bar, qtbot):
    dialog = shown(with_logs(bar.snapshot, gin(-20.0), gin(-10.0)), qtbot)
    row = [cell(dialog, 0, column) for column in (SHOOTS, POURED, GONE)]
    assert row == ["2", "200 ml", "30 ml too much left"]
    assert "Less went out" in dialog.reason.text()


def test_a_long_name_cuts_nothing_off(bar, qtbot):
    dialog = shown(with_logs(bar.snapshot, gin(50.0, LONG)), qtbot)
    dialog.resize(720, 480)
    assert dialog.reason.text().startswith(LONG)
    assert dialog.view.model().index(0, BOTTLE).data(Qt.ItemDataRole.ToolTipRole) == LONG
    assert not cut_off(dialog)


def test_nothing_logged_says_what_to_do(empty_bar, qtbot):
    dialog = shown(empty_bar.snapshot, qtbot)
    assert dialog.stack.currentWidget() is dialog.stack.empty
    assert dialog.stack.empty.title.text() == "Nothing to compare yet"
    assert dialog.reason.text() == ""


def test_everything_has_a_name(bar, qtbot):
    assert not focusable_without_name(shown(bar.snapshot, qtbot))
