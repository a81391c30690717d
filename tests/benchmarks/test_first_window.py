"""From process start to the first painted window, as a ratio to a bare Qt window.

The figures are printed; nothing here asserts a time.
"""

from __future__ import annotations

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
    started = int(open("/proc/self/stat").read().rsplit(")", 1)[1].split()[19])
    return time.clock_gettime(time.CLOCK_BOOTTIME) * 1000 - started * 1000 / os.sysconf("SC_CLK_TCK")
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
from PySide6.QtCore import QTimer
from PySide6.QtWidgets import QMainWindow
from barkeep.cli import main
painted = QMainWindow.paintEvent
def first(self, event):
    painted(self, event)
    print(since_start(), flush=True)
    os._exit(0)
QMainWindow.paintEvent = first
main(%r)
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
