"""Where things are kept, by the platform's rules."""

from __future__ import annotations

import sys

import pytest

from barkeep.application import paths


@pytest.mark.skipif(sys.platform != "linux", reason="the folders of the XDG specification")
def test_the_folders_follow_the_environment(monkeypatch, tmp_path):
    for name in ("DATA", "STATE", "CONFIG"):
        monkeypatch.setenv(f"XDG_{name}_HOME", str(tmp_path / name.lower()))
    assert paths.default_bar() == tmp_path / "data" / "barkeep" / "bar.barkeep"
    assert paths.log_file() == tmp_path / "state" / "barkeep" / "barkeep.log"
    assert paths.config_folder() == tmp_path / "config" / "barkeep"
    assert paths.default_bar().parent.is_dir() and paths.log_file().parent.is_dir()
