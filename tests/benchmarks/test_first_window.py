"""From process start to the first painted window, as a ratio to a bare Qt window.

The figures are printed; nothing here asserts a time.
"""

from __future__ import annotations

import os
import subprocess
import sys
from pathlib import Path

import pytest

pytestmark = pytest.mark.benchmark
ROOT = Path(__file__).resolve().parents[2]


SINCE_START = """
import os, time
def since_start():
    '''Milliseconds since the kernel started this process.'''
    ticks = int(open("/proc/self/stat").read().rsplit(")", 1)[1].split()[19])
    started = ticks * 1000 / os.sysconf("SC_CLK_TCK")
    return time.clock_gettime(time.CLOCK_BOOTTIME) * 1000 - started
"""
BARE = (
    SINCE_START
    + """
from PySide6.QtWidgets import QApplication, QMainWindow
class Window(QMainWindow):
    def paintEvent(self, event):
        super().paintEvent(event)
        print(since_start(), flush=True)
        os._exit(0)
app = QApplication(["bare"])
window = Window()
window.resize(1200, 780)
window.show()
app.exec()
"""
)
SAMPLE = (
    SINCE_START
    + """
from barkeep.cli import main
def stop(*_):
    print(since_start(), flush=True)
    os._exit(0)
def on_first_paint():
    from barkeep.desktop.shell.opening import OpeningWindow
    def painted(self, event):
        stop()
    OpeningWindow.paintEvent = painted
def on_first_answer():
    from barkeep.desktop.drink.tonight import TonightScreen
    shown = TonightScreen._show_answer
    def answered(self, drinks):
        shown(self, drinks)
        self.grab()
        stop()
    TonightScreen._show_answer = answered
{hook}()
main(["--sample"])
"""
)


def started(code: str, env: dict[str, str]) -> float:
    """The quickest of five starts, in ms."""
    times = []
    for _ in range(5):
        done = subprocess.run(
            [sys.executable, "-c", code],
            cwd=ROOT,
            env=env,
            capture_output=True,
            text=True,
            check=True,
        )
        times.append(float(done.stdout.split()[-1]))
    return min(times)


def test_first_window_of_the_sample_bar(tmp_path, capsys):
    places = ("HOME", "XDG_DATA_HOME", "XDG_STATE_HOME", "XDG_CONFIG_HOME")
    env = {**os.environ, **{name: str(tmp_path) for name in places}, "PYTHONPATH": str(ROOT)}
    bare = started(BARE, env)
    first = started(SAMPLE.replace("{hook}", "on_first_paint"), env)
    answered = started(SAMPLE.replace("{hook}", "on_first_answer"), env)
    with capsys.disabled():
        print(f"\na bare Qt window, process start to first paint: {bare:.0f} ms (the baseline)")
        print(f"barkeep's first window: {first:.0f} ms, {first / bare:.2f} times that")
        print(f"Tonight answered and painted: {answered:.0f} ms, {answered / bare:.2f} times that")
    assert first > 0
