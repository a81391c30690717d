"""The desktop as a whole process: how it starts, what it imports first, and how it ends."""

from __future__ import annotations

import os
import sqlite3
import subprocess
import sys
from contextlib import ExitStack, closing
from pathlib import Path

import pytest
from PySide6.QtGui import QGuiApplication
from PySide6.QtWidgets import QFileDialog, QMessageBox, QPushButton

from barkeep.application.bar import Bar
from barkeep.desktop.shell.main import Desktop
from barkeep.domain.bottles.levels import MeasuredLevel
from barkeep.store.refusals import BarIsBusy
from tests.desktop.audit import cut_off
from tests.desktop.patience import WAIT_MS

LATE = ("numpy", "scipy", "pint", "alembic", "jsonschema")
"""What the window must not wait for."""
STARTED = """
import sys
from PySide6.QtCore import QTimer
from barkeep.desktop.shell import main_window
from barkeep.desktop.shell.main import Desktop, main

def shown(window):
    late = [name for name in {late!r} if name in sys.modules]
    print("before the first paint:", late)
    QTimer.singleShot(0, window.close)

real = main_window.MainWindow.showEvent
def show_event(window, event):
    real(window, event)
    shown(window)
main_window.MainWindow.showEvent = show_event
print("ended with", main({argv!r}))
"""


def environment_of(home: Path) -> dict[str, str]:
    """The environment of a process with a home of its own."""
    places = {
        name: str(home / name.lower())
        for name in ("HOME", "XDG_DATA_HOME", "XDG_STATE_HOME", "XDG_CONFIG_HOME")
    }
    root = Path(__file__).resolve().parents[3]
    return {**os.environ, **places, "PYTHONPATH": str(root)}


def run(script: str, home: Path) -> subprocess.CompletedProcess[str]:
    """Run Python with a home of its own."""
    return subprocess.run(
        [sys.executable, "-X", "faulthandler", "-c", script],
        env=environment_of(home),
        capture_output=True,
        text=True,
        timeout=120,
        check=False,
    )


def test_the_first_window_waits_for_nothing_heavy_and_ends_cleanly(tmp_path):
    done = run(STARTED.format(late=LATE, argv=["--sample"]), tmp_path)
    assert done.returncode == 0, done.stderr
    assert "before the first paint: []" in done.stdout
    assert "ended with 0" in done.stdout
    noise = [line for line in done.stderr.splitlines() if "propagateSizeHints" not in line]
    assert noise == []


SIGNALLED = """
import os, signal, sys, tempfile
from pathlib import Path
from PySide6.QtCore import QTimer
from barkeep.desktop.shell import main_window
from barkeep.desktop.shell.main import main

def left():
    return sorted(each.name for each in Path(tempfile.gettempdir()).glob("barkeep-*"))

def copies():
    return len(list(Path(tempfile.gettempdir()).glob("barkeep-*/sample.barkeep")))

real = main_window.MainWindow.showEvent
def show_event(window, event):
    real(window, event)
    print("shown over", copies(), "copy")
    QTimer.singleShot(0, lambda: os.kill(os.getpid(), signal.{signal}))
main_window.MainWindow.showEvent = show_event
print("ended with", main(["--sample"]))
print("left over", left())
"""


@pytest.mark.parametrize("signal", ["SIGINT", "SIGTERM"])
def test_a_signal_ends_it_and_the_throw_away_copy_goes(tmp_path, monkeypatch, signal):
    folder = tmp_path / "temporary"
    folder.mkdir()
    monkeypatch.setenv("TMPDIR", str(folder))
    done = run(SIGNALLED.format(signal=signal), tmp_path)
    assert done.returncode == 0, done.stderr
    assert "shown over 1 copy" in done.stdout
    assert "ended with 0" in done.stdout
    assert "left over []" in done.stdout
    assert "Traceback" not in done.stderr


def test_a_first_start_begins_a_bar_in_the_data_folder(tmp_path):
    done = run(STARTED.format(late=(), argv=[]), tmp_path)
    assert "ended with 0" in done.stdout, done.stderr
    assert (tmp_path / "xdg_data_home" / "barkeep" / "bar.barkeep").is_file()
    assert (tmp_path / "xdg_state_home" / "barkeep" / "window.ini").is_file()


def test_another_bar_takes_the_place_of_the_first(desktop, sample_bar, tmp_path, qtbot):
    assert desktop.start(sample_bar)
    first = desktop.window
    desktop.begin_bar(tmp_path / "other.barkeep")
    assert desktop.window is not first
    assert not first.isVisible()
    assert desktop.window.bar.path == tmp_path / "other.barkeep"
    assert desktop.window.bar.snapshot.bottles == ()


def test_a_bar_that_cannot_be_opened_is_explained_and_another_offered(
    desktop, sample_bar, tmp_path, monkeypatch
):
    broken = tmp_path / "broken.barkeep"
    broken.write_bytes(b"this is no bar" * 100)
    told: list[str] = []

    def choose(box: QMessageBox) -> int:
        told.append(box.informativeText())
        box.buttons()[0].click()
        return 0

    monkeypatch.setattr(QMessageBox, "exec", choose)
    monkeypatch.setattr(QFileDialog, "getOpenFileName", lambda *_args: (str(sample_bar), ""))
    assert desktop.start(broken)
    assert "broken.barkeep cannot be used" in told[0]
    assert desktop.window.bar.path == sample_bar
    assert broken.read_bytes() == b"this is no bar" * 100


def test_who_opens_no_other_bar_leaves(desktop, tmp_path, monkeypatch):
    broken = tmp_path / "broken.barkeep"
    broken.write_bytes(b"this is no bar" * 100)
    monkeypatch.setattr(QMessageBox, "exec", lambda box: box.buttons()[1].click() or 0)
    assert not desktop.start(broken)
    assert desktop.window is None


def test_the_chosen_theme_is_there_next_time(desktop, sample_bar, qapp, qtbot):
    desktop.start(sample_bar)
    desktop.window.actions_.themes["dark"].trigger()
    with ExitStack() as stack:
        again = Desktop(qapp, stack)
        assert again.theme.choice == "dark"
        again.theme.deleteLater()


def test_a_fault_is_shown_once_and_the_window_stays(desktop, sample_bar, qtbot):
    desktop.start(sample_bar)
    for number in (1, 2):
        error = ZeroDivisionError(f"fault {number}")
        sys.excepthook(type(error), error, None)
    qtbot.waitUntil(lambda: desktop._crash is not None and "fault 2" in desktop._crash.details)
    assert "fault 1" in desktop._crash.details
    desktop._crash.accept()
    assert desktop.window.isVisible()
    assert "fault 2" in desktop.faults.log.read_text(encoding="utf-8")


def met(desktop, qtbot, error):
    """The dialog of a fault, once it is shown."""
    try:
        raise error
    except type(error) as caught:
        sys.excepthook(type(caught), caught, caught.__traceback__)
    qtbot.waitUntil(lambda: desktop._crash is not None and desktop._crash.isVisible())
    return desktop._crash


def test_a_fault_says_that_the_bar_is_safe_once_that_was_checked(desktop, sample_bar, qtbot):
    desktop.start(sample_bar)
    crash = met(desktop, qtbot, ZeroDivisionError("kaboom"))
    assert crash.safety.text() == (
        "Your bar was checked just now: its file is sound, and all that was saved is in it."
    )
    assert cut_off(crash) == []
    crash.accept()


def test_a_fault_over_a_damaged_bar_does_not_say_that_it_is_safe(desktop, sample_bar, qtbot):
    desktop.start(sample_bar)
    with sqlite3.connect(sample_bar) as file:
        file.execute("PRAGMA foreign_keys = OFF")
        file.execute("UPDATE trial SET spec_id = 999999 WHERE id = (SELECT min(id) FROM trial)")
    file.close()
    crash = met(desktop, qtbot, ZeroDivisionError("kaboom"))
    assert crash.safety.text().startswith(
        "Your bar was checked just now, and something is wrong with it. Back it up before "
    )
    crash.accept()


def test_a_fault_over_a_file_that_is_gone_does_not_say_that_it_is_safe(desktop, sample_bar, qtbot):
    desktop.start(sample_bar)
    sample_bar.unlink()
    crash = met(desktop, qtbot, ZeroDivisionError("kaboom"))
    assert crash.safety.text().endswith(f"{sample_bar} is not the file that was opened.")
    crash.accept()


def test_a_fault_without_a_check_says_that_nobody_knows(desktop, sample_bar, qtbot):
    desktop.start(sample_bar)
    with closing(sqlite3.connect(sample_bar, isolation_level=None)) as holder:
        holder.execute("BEGIN EXCLUSIVE")
        crash = met(desktop, qtbot, ZeroDivisionError("kaboom"))
    words = "Whether your bar is safe could not be checked (BarIsBusy)."
    assert crash.safety.text() == words
    crash.accept()


def test_the_report_that_is_copied_holds_nothing_of_the_bar(desktop, sample_bar, qtbot):
    desktop.start(sample_bar)
    secret = f"Pellow & Rudge gin in {sample_bar}"
    try:
        raise KeyError(secret)
    except KeyError as first:
        error = ValueError(f"{secret}\n  File “{Path.home()}”")
        error.__cause__ = first
    crash = met(desktop, qtbot, error)
    crash.copy()
    report = QGuiApplication.clipboard().text()
    for word in ("barkeep ", "Python 3.", "Qt 6.", "builtins.ValueError", "builtins.KeyError"):
        assert word in report
    assert "test_main.py:" in report
    for word in ("Pellow", str(sample_bar), str(Path.home()), str(Path(__file__).parent)):
        assert word not in report
    assert "Pellow" in crash.details
    crash.accept()


def test_a_sentence_for_the_user_is_no_fault_wherever_it_is_met(desktop, sample_bar, qtbot):
    desktop.start(sample_bar)
    busy = BarIsBusy(str(sample_bar))
    sys.excepthook(BarIsBusy, busy, None)
    banner = desktop.window.current.banner
    qtbot.waitUntil(lambda: banner.text == str(busy))
    assert desktop._crash is None
    (again,) = [each for each in banner.findChildren(QPushButton) if each.text()]
    assert again.text() == "Try again"
    again.click()
    assert banner.text == ""


def test_two_windows_over_one_file_see_each_others_changes(desktop, sample_bar, qtbot):
    desktop.start(sample_bar)
    with Bar.open(sample_bar) as other:
        bottle = next(each for each in other.snapshot.bottles if each.level.state == "open")
        other.inventory.empty(bottle.id)
    desktop.window.read_again()
    shown = {each.id: each for each in desktop.window.bar.snapshot.bottles}
    assert shown[bottle.id].level.state == "empty"


def test_the_program_offers_the_bars_settings(desktop, sample_bar):
    assert desktop.start(sample_bar)
    assert desktop.window.actions_.settings.isVisible()


@pytest.mark.parametrize("written", [True, False], ids=["written to meanwhile", "as it was"])
def test_what_was_kept_of_a_bar_is_shown_first_and_then_its_file_is_followed(
    desktop, sample_bar, qtbot, written
):
    assert desktop.start(sample_bar)  # which reads it
    first = desktop.window
    qtbot.waitUntil(lambda: bool(first.current.table.rows), timeout=WAIT_MS)
    desktop.open(sample_bar)
    window = desktop.window
    assert not window.bar.is_opened and "Undo" in window.actions_.undo.text()
    bottle = window.bar.snapshot.bottles[0]
    if written:
        with Bar.open(sample_bar) as other:
            other.counting.count({bottle.id: MeasuredLevel(15.0, "volume", 5.0)})
    qtbot.waitUntil(lambda: window.bar.is_opened, timeout=WAIT_MS)
    shown = next(each for each in window.bar.snapshot.bottles if each.id == bottle.id)
    assert shown.level.amount == (15.0 if written else bottle.level.amount)
    with Bar.open(sample_bar) as other:
        other.counting.count({bottle.id: MeasuredLevel(25.0, "volume", 5.0)})
    window.following.look()
    shown = next(each for each in window.bar.snapshot.bottles if each.id == bottle.id)
    assert shown.level.amount == 25.0
