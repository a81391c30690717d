"""What tests of the shell start from."""

from __future__ import annotations

import sys
from contextlib import ExitStack

import pytest

from barkeep.application import kept_bar, kept_verdicts
from barkeep.desktop.shell import main as main_module
from barkeep.desktop.shell.main import Desktop


@pytest.fixture
def desktop(qapp, tmp_path, monkeypatch):
    """A running desktop, without its event loop."""
    for place in ("state_folder", "config_folder", "data_folder"):
        monkeypatch.setattr(main_module.paths, place, lambda: tmp_path)
    for module in (kept_bar, kept_verdicts):  # or it would depend on what others have opened
        monkeypatch.setattr(module, "cache_folder", lambda: tmp_path / "cache")
    monkeypatch.setattr(main_module.paths, "log_file", lambda: tmp_path / "barkeep.log")
    monkeypatch.setattr(main_module, "import_heavy", lambda: None)
    monkeypatch.setattr(sys, "excepthook", sys.excepthook)
    palette, sheet, font = qapp.palette(), qapp.styleSheet(), qapp.font()
    with ExitStack() as stack:
        made = Desktop(qapp, stack)
        yield made
    qapp.setPalette(palette)
    qapp.setStyleSheet(sheet)
    qapp.setFont(font)
    made.theme.deleteLater()
