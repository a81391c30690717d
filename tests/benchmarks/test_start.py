"""What a start takes, as ratios: each command to a bare Python, the window to a bare Qt window.

The figures are least CPU times of several starts, other threads among it, so
that a busy machine changes them little; nothing here asserts one. Each is of a
bar and a program that were started before: what a first start compiles and
keeps is there.
"""

from __future__ import annotations

import os
import resource
import subprocess
import sys
from pathlib import Path

import pytest

pytestmark = pytest.mark.benchmark
ROOT = Path(__file__).resolve().parents[2]
TIMES = 7

BARE_PYTHON = "import sqlite3, json"

BARE_WINDOW = """
import os, time
from PySide6.QtWidgets import QApplication, QMainWindow
class Window(QMainWindow):
    def paintEvent(self, event):
        super().paintEvent(event)
        print(time.process_time() * 1000, flush=True)
        os._exit(0)
app = QApplication(["bare"])
window = Window()
window.resize(1200, 780)
window.show()
app.exec()
"""

OWN_WINDOW = """
import os, time
from barkeep.cli import main
taken = []
def stop(*_):
    print(time.process_time() * 1000, flush=True)
    for each in taken:
        each.leave()  # or the next start would take this one for a crash
    os._exit(0)
def on_first_paint():
    from barkeep.desktop.shell.opening import OpeningWindow
    def painted(self, event):
        stop()
    OpeningWindow.paintEvent = painted
def on_first_answer():
    from barkeep.desktop.shell.main import Desktop
    show = Desktop._show
    def shown(self, wanted):
        watch_tonight()  # not before, or it would be imported in another way than by a start
        show(self, wanted)
    Desktop._show = shown
def watch_tonight():
    from barkeep.desktop.drink.tonight import TonightScreen
    shown = TonightScreen._show_answer
    def answered(self, drinks):
        shown(self, drinks)
        self.grab()
        stop()
    TonightScreen._show_answer = answered
    from barkeep.desktop.shell.one_window import OneWindow
    take = OneWindow.take
    def taken_by(self):
        take(self)
        taken.append(self)
    OneWindow.take = taken_by
{hook}()
main([{arguments}])
"""


@pytest.fixture
def env(tmp_path):
    """Folders of its own, where compiled code and what was read of the data are kept."""
    places = ("HOME", "XDG_DATA_HOME", "XDG_STATE_HOME", "XDG_CONFIG_HOME", "XDG_CACHE_HOME")
    own = {name: str(tmp_path / "home") for name in places}
    own |= {"PYTHONPATH": str(ROOT), "PYTHONPYCACHEPREFIX": str(tmp_path / "compiled")}
    (tmp_path / "home").mkdir()
    return {**os.environ, **own, "PYTHONDONTWRITEBYTECODE": ""}


def run(env: dict[str, str], *arguments: str) -> str:
    command = [sys.executable, *arguments]
    return subprocess.run(
        command, cwd=ROOT, env=env, capture_output=True, text=True, check=True
    ).stdout


def whole_ms(env: dict[str, str], *arguments: str) -> float:
    """The least CPU time of a process from its start to its end."""

    def once() -> float:
        before = resource.getrusage(resource.RUSAGE_CHILDREN)
        run(env, *arguments)
        after = resource.getrusage(resource.RUSAGE_CHILDREN)
        return (after.ru_utime + after.ru_stime - before.ru_utime - before.ru_stime) * 1000

    once()  # what it keeps for the next time is kept
    return min(once() for _ in range(TIMES))


def ms_until(env: dict[str, str], code: str) -> float:
    """The least CPU time of a process until it prints that."""
    run(env, "-c", code)
    return min(float(run(env, "-c", code).split()[-1]) for _ in range(TIMES))


def test_commands(sample_bar, env, capsys):
    bar = ("-m", "barkeep", "--bar", str(sample_bar))
    starts = {
        "import sqlalchemy": ("-c", f"{BARE_PYTHON}, sqlalchemy"),
        "barkeep --version": ("-m", "barkeep", "--version"),
        "bottles": (*bar, "bottles"),
        "stand-in": (*bar, "stand-in", "bourbon"),
        "tonight": (*bar, "tonight"),
        "next-bottle": (*bar, "next-bottle"),
        "spec list": (*bar, "spec", "list"),
        "--sample bottles": ("-m", "barkeep", "--sample", "bottles"),
        "--sample tonight": ("-m", "barkeep", "--sample", "tonight"),
        "count": (*bar, "count", "Lamp Room dry gin", "0.4"),
    }
    bare = whole_ms(env, "-c", BARE_PYTHON)
    found = {name: whole_ms(env, *words) for name, words in starts.items()}
    with capsys.disabled():
        print(f"\na bare Python with sqlite3 and json: {bare:.1f} ms (the baseline)")
        for name, ms in found.items():
            print(f"{name:20} {ms:7.1f} ms {ms / bare:6.1f} times that")
    assert bare > 0.0


@pytest.mark.parametrize("sample", [True, False], ids=["sample", "own bar"])
def test_the_window(sample_bar, env, capsys, sample):
    arguments = "'--sample'" if sample else f"'--bar', {str(sample_bar)!r}"
    own = OWN_WINDOW.replace("{arguments}", arguments)
    bare = ms_until(env, BARE_WINDOW)
    first = ms_until(env, own.replace("{hook}", "on_first_paint"))
    answered = ms_until(env, own.replace("{hook}", "on_first_answer"))
    with capsys.disabled():
        print(f"\na bare Qt window painted: {bare:.0f} ms (the baseline)")
        print(f"barkeep's first window: {first:.0f} ms, {first / bare:.2f} times that")
        print(f"Tonight answered and painted: {answered:.0f} ms, {answered / bare:.2f} times that")
    assert bare > 0.0
