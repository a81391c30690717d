"""The wheel has every module and all data, and answers from where it is unpacked."""

from __future__ import annotations

import importlib.metadata
import os
import shutil
import subprocess
import sys
import zipfile
from pathlib import Path

import pytest

ROOT = Path(__file__).resolve().parent.parent
LEAST = 77
BUILD = "import sys; sys.path.insert(0, '.build'); import found_packages as b; b.build_wheel('out')"
NOT_DATA = {".pyc"}


def can_build() -> bool:
    try:
        return int(importlib.metadata.version("setuptools").split(".")[0]) >= LEAST
    except importlib.metadata.PackageNotFoundError:
        return False


def shipped() -> set[str]:
    """Every file that belongs in the wheel, by its place there."""
    found = set()
    for folder, inside in (("barkeep", ""), ("resources", "barkeep/"), ("sample_db", "barkeep/")):
        for path in (ROOT / folder).rglob("*"):
            if path.is_file() and path.suffix not in NOT_DATA:
                found.add(f"{inside}{path.relative_to(ROOT).as_posix()}")
    return found


@pytest.mark.skipif(not can_build(), reason=f"setuptools {LEAST} is not here to build it")
def test_the_wheel_has_everything_and_answers_from_where_it_is_unpacked(tmp_path):
    work = tmp_path / "work"  # so that nothing is built beside the code
    work.mkdir()
    for name in ("barkeep", "resources", "sample_db", ".build"):
        shutil.copytree(ROOT / name, work / name, ignore=shutil.ignore_patterns("__pycache__"))
    for name in ("pyproject.toml", "README.md"):
        shutil.copy(ROOT / name, work / name)
    subprocess.run([sys.executable, "-c", BUILD], cwd=work, check=True, capture_output=True)
    (wheel,) = (work / "out").glob("*.whl")
    site = tmp_path / "site"
    with zipfile.ZipFile(wheel) as packed:
        names = {name for name in packed.namelist() if ".dist-info/" not in name}
        packed.extractall(site)
    assert names == shipped()
    (entry_points,) = site.glob("*.dist-info/entry_points.txt")
    text = entry_points.read_text("utf-8")
    assert "barkeep = barkeep.__main__:run" in text
    assert "barkeep-desktop = barkeep.desktop_file:run" in text
    home = {f"XDG_{kind}_HOME": str(tmp_path) for kind in ("CACHE", "CONFIG", "DATA", "STATE")}
    ask = "import barkeep, sys; print(barkeep.__file__); from barkeep.cli import main; main()"
    done = subprocess.run(
        [sys.executable, "-c", ask, "help", "counting"],
        cwd=tmp_path,
        env={**os.environ, **home, "PYTHONPATH": str(site)},
        capture_output=True,
        text=True,
        check=True,
    )
    where, *shown = done.stdout.splitlines()
    assert Path(where).is_relative_to(site)
    assert shown[0] == "Counting the shelf"
