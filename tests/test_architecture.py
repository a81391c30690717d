"""The layers point down, the packages are all shipped, and the code is clean."""

from __future__ import annotations

import subprocess
import sys
import tomllib
from pathlib import Path

import pytest

ROOT = Path(__file__).resolve().parent.parent

# Without its cache, which can hold an import graph from before a module was there.
LINT_IMPORTS = "from importlinter.cli import lint_imports_command as lint; lint(['--no-cache'])"


def run(*command: str) -> subprocess.CompletedProcess[str]:
    return subprocess.run(
        [sys.executable, "-m", *command], cwd=ROOT, capture_output=True, text=True, check=False
    )


def assert_clean(done: subprocess.CompletedProcess[str]) -> None:
    assert done.returncode == 0, done.stdout + done.stderr


def test_layers_point_down():
    done = subprocess.run(
        [sys.executable, "-c", LINT_IMPORTS],
        cwd=ROOT,
        capture_output=True,
        text=True,
        check=False,
    )
    assert_clean(done)


def test_lint():
    assert_clean(run("ruff", "check", "."))


def test_format():
    assert_clean(run("ruff", "format", "--check", "."))


def test_types():
    assert_clean(run("mypy"))


def test_every_package_is_shipped():
    declared = set(
        tomllib.loads((ROOT / "pyproject.toml").read_text("utf-8"))["tool"]["setuptools"][
            "packages"
        ]
    )
    on_disk = set()
    for top in ("barkeep", "resources", "sample_db"):
        for init in (ROOT / top).rglob("__init__.py"):
            parts = init.parent.relative_to(ROOT).parts
            prefix = () if top == "barkeep" else ("barkeep",)
            on_disk.add(".".join((*prefix, *parts)))
    assert declared == on_disk


@pytest.mark.parametrize(
    "path", sorted((ROOT / "barkeep").rglob("*.py")), ids=lambda path: path.stem
)
def test_modules_stay_small(path):
    assert len(path.read_text("utf-8").splitlines()) <= 400


@pytest.mark.parametrize(
    ("module", "heavy"),
    [
        ("barkeep.cli", ("PySide6", "scipy", "networkx", "pint", "numpy", "sqlalchemy")),
        ("barkeep.desktop.shell.main", ("scipy", "networkx", "pint", "numpy")),
    ],
)
def test_starting_imports_nothing_heavy(module, heavy):
    code = f"import sys, {module}; print(sorted(set(sys.modules) & set({heavy!r})))"
    done = subprocess.run(
        [sys.executable, "-c", code], cwd=ROOT, capture_output=True, text=True, check=True
    )
    assert done.stdout.strip() == "[]"
