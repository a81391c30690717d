"""One window a bar: a second start raises the first, and a killed one leaves nothing in the way."""

from __future__ import annotations

import shutil
import signal
import subprocess
import sys
import threading
from pathlib import Path

import pytest
from PySide6.QtWidgets import QFileDialog

from barkeep.desktop.shell.one_window import OneWindow, OpenElsewhere
from tests.desktop.patience import WAIT_S
from tests.desktop.shell.test_main import environment_of

SHOWN = """
import sys
import threading
from PySide6.QtCore import QTimer
from barkeep.desktop.shell import main_window, one_window
from barkeep.desktop.shell.main import Desktop, main

one_window.WAIT_MS = 600_000  # a busy machine answers late

def say(words):
    print(words, flush=True)

real, forward, shown = main_window.MainWindow.showEvent, Desktop._come_forward, Desktop._shown
def show_event(window, event):
    real(window, event)
    QTimer.singleShot(0, lambda: say(f"says {window.current.banner.text}"))
def come_forward(desktop):
    forward(desktop)
    say("came forward")
def listening(desktop, one):
    shown(desktop, one)
    say("listening")
main_window.MainWindow.showEvent = show_event
Desktop._come_forward, Desktop._shown = come_forward, listening
say(f"ended with {main(sys.argv[1:])}")
"""


def started(home: Path, bar: Path) -> subprocess.Popen[str]:
    """The program over a bar, in a process of its own."""
    return subprocess.Popen(
        [sys.executable, "-c", SHOWN, "--bar", str(bar)],
        env=environment_of(home),
        stdout=subprocess.PIPE,
        stderr=subprocess.DEVNULL,
        text=True,
    )


def until(process: subprocess.Popen[str], words: str) -> str:
    """The line of a process that begins so; fails where it ends without."""
    assert process.stdout is not None
    for line in process.stdout:
        if line.startswith(words):
            return line.strip()
    raise AssertionError(f"the program ended without saying “{words}”")


@pytest.fixture
def processes():
    """Ended with the test, whatever becomes of it."""
    found: list[subprocess.Popen[str]] = []
    last_resort = threading.Timer(WAIT_S, lambda: [each.kill() for each in found])
    last_resort.start()
    yield found
    last_resort.cancel()
    for each in found:
        each.kill()
        each.wait()
        if each.stdout is not None:
            each.stdout.close()


def test_a_second_start_raises_the_first_and_a_killed_one_is_told_of(
    tmp_path, sample_bar, processes
):
    first = started(tmp_path, sample_bar)
    processes.append(first)
    until(first, "listening")
    link = tmp_path / "link.barkeep"
    link.symlink_to(sample_bar)
    second = started(tmp_path, link)
    processes.append(second)
    assert until(second, "ended with") == "ended with 0"
    until(first, "came forward")
    first.send_signal(signal.SIGKILL)
    first.wait()
    third = started(tmp_path, sample_bar)
    processes.append(third)
    said = until(third, "says The window")
    assert "was not closed but ended, as by a crash or a power cut." in said
    assert "The file was checked as it was opened now, and is sound" in said
    third.send_signal(signal.SIGTERM)
    assert until(third, "ended with") == "ended with 0"
    third.wait()
    fourth = started(tmp_path, sample_bar)
    processes.append(fourth)
    assert until(fourth, "says") == "says"


@pytest.fixture
def opened_from_the_menu(desktop, monkeypatch):
    """Opens a bar as File > Open bar does; returns the window that is shown then."""

    def choose(path: Path):
        monkeypatch.setattr(QFileDialog, "getOpenFileName", lambda *_args: (str(path), ""))
        desktop.window.actions_.open_bar.trigger()
        return desktop.window

    return choose


def test_a_bar_that_another_window_shows_is_not_opened_from_the_menu(
    desktop, sample_bar, tmp_path, opened_from_the_menu
):
    other = tmp_path / "other.barkeep"
    shutil.copyfile(sample_bar, other)
    elsewhere = OneWindow(other, tmp_path)
    elsewhere.take()
    desktop.start(sample_bar)
    shown = opened_from_the_menu(other)
    assert shown.current.banner.text == (
        f"{other} is open in another window already; it does not answer just now."
    )
    assert shown.bar.path == sample_bar
    elsewhere.leave()
    assert opened_from_the_menu(other).bar.path == other
    OneWindow(sample_bar, tmp_path).take()  # the one before was let go of


def test_opening_the_same_bar_again_is_no_other_window(desktop, sample_bar, tmp_path):
    desktop.start(sample_bar)
    desktop.open(sample_bar)
    with pytest.raises(OpenElsewhere):
        OneWindow(sample_bar, tmp_path).take()


def test_a_bar_that_cannot_be_opened_keeps_no_lock(
    desktop, tmp_path, sample_bar, opened_from_the_menu
):
    broken = tmp_path / "broken.barkeep"
    broken.write_bytes(b"this is no bar" * 100)
    desktop.start(sample_bar)
    shown = opened_from_the_menu(broken)
    assert "it is not a SQLite file" in shown.current.banner.text
    OneWindow(broken, tmp_path).take()
