"""A bar that cannot be shown: what the window says and offers, never a window that stays empty."""

from __future__ import annotations

import sqlite3
from contextlib import closing
from pathlib import Path

import pytest
from PySide6.QtCore import Qt, QTimer
from PySide6.QtWidgets import QApplication, QFileDialog, QMessageBox, QPushButton

from barkeep.desktop.shell.cannot_open import Wanted
from barkeep.desktop.shell.check import MAY_BE_TAKEN, CheckDialog
from barkeep.desktop.shell.opening import OpeningWindow
from tests.desktop.patience import WAIT_MS
from tests.store import damages


@pytest.fixture
def answers(qtbot):
    """Press, by keyboard, the buttons that are named, each in the dialog that is then in front.

    What the dialogs said is in the list that comes back.
    """
    waiting: list[str] = []
    told: list[str] = []
    timer = QTimer(interval=0)

    def look() -> None:
        front = QApplication.activeModalWidget()
        if front is None or not waiting:
            return
        wanted = waiting.pop(0)
        if isinstance(front, QMessageBox):
            told.append(f"{front.text()}\n{front.informativeText()}")
        elif isinstance(front, CheckDialog):
            told.append(front.told)
        buttons = [each for each in front.findChildren(QPushButton) if each.isVisible()]
        named = [each.text().replace("&&", "\0").replace("&", "") for each in buttons]
        found = buttons[named.index(wanted)]
        found.setFocus()
        qtbot.keyClick(found, Qt.Key.Key_Space)

    timer.timeout.connect(look)

    def press(*names: str) -> list[str]:
        waiting.extend(names)
        timer.start()
        return told

    yield press
    timer.stop()
    assert waiting == []


def broken(bar: Path) -> Path:
    damages.Damage("product", "price", "cheap").do(bar)
    return bar


def test_a_damaged_bar_says_where_and_what_and_can_be_left(desktop, sample_bar, answers):
    told = answers("Quit")
    assert not desktop.start(broken(sample_bar))
    assert told == [
        "This bar cannot be opened\n"
        f"{sample_bar} cannot be used: it is damaged "
        "(product 3, price: “cheap” stands there, and it must be a number)."
    ]
    assert desktop.window is None


def test_a_bar_that_another_program_changed_is_taken_as_it_is_and_shown(
    desktop, sample_bar, answers
):
    with closing(sqlite3.connect(sample_bar)) as file, file:
        file.execute("UPDATE product SET price = 19.5 WHERE id = 3")
    told = answers("Look it over…", "Take it as it is", "Open the bar")
    assert desktop.start(sample_bar)
    assert "damage or another program changed it (product 3: it is not as barkeep" in told[0]
    assert MAY_BE_TAKEN in told[1]
    assert told[2] == "The bar is taken as it is\n• product 3: it is not as barkeep wrote it."
    assert desktop.window.bar.snapshot.product_by_id[3].price == 19.5


def test_what_can_be_read_of_a_damaged_bar_is_saved_and_shown(
    desktop, sample_bar, tmp_path, answers, monkeypatch
):
    saved = tmp_path / "what is left.barkeep"
    monkeypatch.setattr(
        QFileDialog, "getSaveFileName", staticmethod(lambda *_args: (str(saved), ""))
    )
    before = broken(sample_bar).read_bytes()
    told = answers("Look it over…", "Save what can be read…", "Open the new bar")
    assert desktop.start(sample_bar)
    assert "product 3, price: “cheap” stands there, and it must be a number." in told[1]
    assert "113 products, 81 bottles, 403 ledger entries" in told[1]
    assert told[2].startswith(f"Saved in {saved}")
    assert "that cell is left empty" in told[2]
    assert desktop.window.bar.path == saved
    assert len(desktop.window.bar.snapshot.bottles) == 81
    assert sample_bar.read_bytes() == before


def test_a_mistyped_bar_names_the_likely_one(desktop, sample_bar, answers):
    mistyped = sample_bar.with_name("sampel.bar")
    told = answers(f"Open {sample_bar.name}")
    assert desktop.start(mistyped, new=False)
    assert f"There is no bar in {mistyped}: there is no such file." in told[0]
    assert desktop.window.bar.path == sample_bar and not mistyped.exists()


def test_an_emptied_bar_is_begun_anew_only_when_asked(desktop, tmp_path, answers):
    empty = tmp_path / "mine.barkeep"
    empty.touch()
    told = answers("Quit", "Begin a new bar there")
    assert not desktop.start(empty)
    assert empty.read_bytes() == b""
    assert desktop.start(empty)
    said = f"There is no bar in {empty}: it is empty (0 bytes)."
    assert told[1] == f"This bar cannot be opened\n{said}"
    assert desktop.window.bar.path == empty and desktop.window.bar.is_new


def test_a_usual_bar_that_is_gone_beside_others_is_asked_for(
    desktop, sample_bar, tmp_path, answers, monkeypatch
):
    monkeypatch.setattr("barkeep.application.bar.default_bar", lambda: tmp_path / "bar.barkeep")
    told = answers(f"Open {sample_bar.name}")
    assert desktop.start(None)
    assert "it is gone, though other bars are beside it" in told[0]
    assert desktop.window.bar.path == sample_bar


def test_a_fault_met_while_opening_is_said_and_written_down(
    desktop, sample_bar, tmp_path, answers, monkeypatch
):
    monkeypatch.setattr("barkeep.store.after_changes.read_trials", lambda _connection: 1 / 0)
    told = answers("Quit")
    assert not desktop.start(sample_bar)
    assert "barkeep met a fault (ZeroDivisionError), which is written in" in told[0]
    assert "ZeroDivisionError" in (tmp_path / "barkeep.log").read_text(encoding="utf-8")


@pytest.mark.parametrize("fault", [ZeroDivisionError("x"), OSError(28, "No space left on device")])
def test_the_opening_window_goes_where_nothing_can_be_prepared(
    desktop, answers, monkeypatch, qtbot, fault
):
    def fail() -> None:
        raise fault

    monkeypatch.setattr(desktop, "sample", fail)
    ended: list[int] = []
    monkeypatch.setattr(desktop, "_app", type("App", (), {"exit": ended.append}))
    told: list[str] = []

    def choose(box: QMessageBox) -> int:
        told.append(box.informativeText())
        return 0

    monkeypatch.setattr(QMessageBox, "exec", choose)
    desktop.begin(Wanted(None), sample=True)
    qtbot.waitUntil(lambda: ended == [1], timeout=WAIT_MS)
    assert type(fault).__name__ in told[0]
    shown = [each for each in QApplication.topLevelWidgets() if each.isVisible()]
    assert not any(isinstance(each, OpeningWindow) for each in shown)


def test_a_bar_damaged_in_the_open_window_is_looked_over_from_the_menu(
    desktop, sample_bar, qtbot, answers
):
    assert desktop.start(sample_bar)
    with closing(sqlite3.connect(sample_bar)) as file, file:
        file.execute("UPDATE product SET size = 'big' WHERE id = 3")
    told = answers("Close")
    desktop.window.actions_.check.trigger()
    qtbot.waitUntil(lambda: bool(told), timeout=WAIT_MS)
    assert "product 3, size: “big” stands there, and it must be a number." in told[0]
    assert "can be saved." in told[0]


def test_a_bar_whose_name_is_no_text_has_every_page(desktop, sample_bar, tmp_path, qtbot):
    odd = sample_bar.rename(tmp_path / "n\udcffo.barkeep")
    assert desktop.start(odd)
    window = desktop.window
    for key in window.actions_.pages:
        window.show_page(key)
        qtbot.waitUntil(lambda: not window.background.is_busy, timeout=WAIT_MS)
    window.show_page("specs")
    window.show_about()
    window.actions_.check.trigger()
    assert window.toast.text == "Nothing is wrong with this bar"
