"""Who may lean on whom, what each package may use, what is shipped, and that the code is clean."""

from __future__ import annotations

import ast
import importlib.util
import subprocess
import sys
from collections.abc import Iterator
from functools import cache
from pathlib import Path

import networkx as nx
import pytest

ROOT = Path(__file__).resolve().parent.parent
# Without its cache, which can hold an import graph from before a module was there.
LINT_IMPORTS = "from importlinter.cli import lint_imports_command as lint; lint(['--no-cache'])"

LIBRARIES: dict[str, set[str]] = {
    "barkeep": set(),
    "barkeep.application": {"platformdirs"},
    "barkeep.application.benchmarks": {"networkx", "numpy"},
    "barkeep.cli": set(),
    "barkeep.desktop": {"PySide6", "shiboken6"},
    "barkeep.documents": set(),
    "barkeep.documents.everything": {"msgspec"},
    "barkeep.domain": {"rapidfuzz"},
    "barkeep.domain.amounts": {"pint"},
    "barkeep.domain.buying": {"numpy", "scipy"},
    "barkeep.domain.ingredients": {"networkx"},
    "barkeep.domain.liquids": {"scipy"},
    "barkeep.domain.pouring": {"numpy", "scipy"},
    "barkeep.domain.shoots": {"numpy", "scipy"},
    "barkeep.domain.stand_ins": {"numpy", "scipy"},
    "barkeep.shipped_data": {"msgspec"},
    "barkeep.store": {"sqlalchemy"},
    "barkeep.store.seal": {"msgspec", "sqlalchemy"},
}
"""What each package may import from outside; the nearest name above it speaks for a package."""


def run(*command: str) -> subprocess.CompletedProcess[str]:
    return subprocess.run(
        [sys.executable, *command], cwd=ROOT, capture_output=True, text=True, check=False
    )


def assert_clean(done: subprocess.CompletedProcess[str]) -> None:
    assert done.returncode == 0, done.stdout + done.stderr


def test_layers_point_down():
    assert_clean(run("-c", LINT_IMPORTS))


def test_lint():
    assert_clean(run("-m", "ruff", "check", "."))


def test_format():
    assert_clean(run("-m", "ruff", "format", "--check", "."))


def test_types():
    assert_clean(run("-m", "mypy"))


# Imports


def modules() -> dict[str, Path]:
    """Every module of barkeep by its name."""
    found = {}
    for path in sorted((ROOT / "barkeep").rglob("*.py")):
        parts = path.relative_to(ROOT).with_suffix("").parts
        found[".".join(parts[:-1] if parts[-1] == "__init__" else parts)] = path
    return found


MODULES = modules()


@cache
def imported_by(path: Path) -> frozenset[str]:
    """The modules that a file imports anywhere: at its top, in functions, for types alone."""
    return frozenset(_imported_by(path))


def _imported_by(path: Path) -> Iterator[str]:
    for node in ast.walk(ast.parse(path.read_text("utf-8"))):
        if isinstance(node, ast.Import):
            yield from (each.name for each in node.names)
        elif isinstance(node, ast.ImportFrom):
            assert node.module is not None and not node.level, f"{path} imports from a dot"
            inside = {each for name in node.names if (each := f"{node.module}.{name.name}")}
            modules_inside = inside & MODULES.keys()
            yield from modules_inside or {node.module}


def test_no_circle_of_modules():
    """Not even one that only the types know of."""
    graph = nx.DiGraph()
    for name, path in MODULES.items():
        graph.add_edges_from((name, each) for each in imported_by(path) if each in MODULES)
    circles = [sorted(each) for each in nx.strongly_connected_components(graph) if len(each) > 1]
    assert circles == []


@pytest.mark.parametrize("package", LIBRARIES)
def test_each_package_uses_only_its_libraries(package):
    used = set()
    for name, path in MODULES.items():
        if nearest(name) == package:
            used |= {each.split(".")[0] for each in imported_by(path)}
    assert used - sys.stdlib_module_names - {"barkeep"} == LIBRARIES[package]


def nearest(name: str) -> str:
    """The package of `LIBRARIES` that speaks for a module."""
    while name not in LIBRARIES:
        name = name.rpartition(".")[0]
    return name


@pytest.mark.parametrize(
    "name", [each for each, path in MODULES.items() if path.name == "__init__.py"]
)
def test_every_package_says_what_it_is(name):
    assert ast.get_docstring(ast.parse(MODULES[name].read_text("utf-8")))


OF_ONE_DRINK = (
    "barkeep.desktop.drink.tonight_details",
    "barkeep.domain.cautions.cautions",
    "barkeep.domain.drink.analysis",
    "barkeep.domain.drink.picture",
    "barkeep.domain.pouring.assessment",
    "barkeep.domain.pouring.verdicts",
)
"""What a list of drinks does without while nothing is told of any one."""
OF_TYPED_NAMES = ("barkeep.domain.name_search", "barkeep.domain.ingredients.languages")
"""What a command does without while no name is typed that is spelt otherwise."""


@pytest.mark.parametrize(
    ("module", "heavy"),
    [
        ("barkeep.cli", ("PySide6", "scipy", "networkx", "pint", "numpy", "sqlalchemy")),
        ("barkeep.desktop.shell.main", ("scipy", "networkx", "pint", "numpy")),
        ("barkeep.desktop.drink.tonight", ("scipy", "networkx", "pint", "numpy", "sqlalchemy")),
        ("barkeep.desktop.drink.tonight", OF_ONE_DRINK),
        ("barkeep.cli.tonight", ("barkeep.domain.drink.analysis", *OF_TYPED_NAMES)),
        ("barkeep.cli.shelf", ("barkeep.domain.bottles.shapes", *OF_TYPED_NAMES)),
    ],
)
def test_starting_imports_nothing_heavy(module, heavy):
    done = run("-c", f"import sys, {module}; print(sorted(set(sys.modules) & set({heavy!r})))")
    assert_clean(done)
    assert done.stdout.strip() == "[]"


def test_a_window_reads_no_source_of_its_modules():
    """As PySide would have it read, of each module that is imported after it."""
    done = run("-c", READ_SOURCES)
    assert_clean(done)
    assert done.stdout.strip() == "[]"


READ_SOURCES = """
import linecache, sys, barkeep.desktop.drink.tonight
ours = (each for name, each in sys.modules.items() if name.startswith("barkeep."))
print([each.__name__ for each in ours if each.__file__ in linecache.cache])
"""


# What is shipped


def test_every_package_is_found_for_shipping():
    spec = importlib.util.spec_from_file_location("found", ROOT / ".build" / "found_packages.py")
    assert spec is not None and spec.loader is not None
    backend = importlib.util.module_from_spec(spec)
    spec.loader.exec_module(backend)
    on_disk = {name for name, path in MODULES.items() if path.name == "__init__.py"}
    for top in ("resources", "sample_db"):
        for init in (ROOT / top).rglob("__init__.py"):
            on_disk.add(".".join(("barkeep", *init.parent.relative_to(ROOT).parts)))
    assert set(backend.packages()) == on_disk
