"""Every signal that is declared is sent by somebody and heard by somebody."""

from __future__ import annotations

import ast
from collections.abc import Iterable, Iterator
from dataclasses import dataclass
from pathlib import Path

import pytest

ROOT = Path(__file__).resolve().parents[2]

SIGNALS = {"Signal", "QtSignal"}


@dataclass(frozen=True)
class Declared:
    """A signal as a class declares it."""

    module: str
    owner: str
    name: str

    def __str__(self) -> str:
        return f"{self.module}: {self.owner}.{self.name}"


@dataclass(frozen=True)
class Module:
    """What a module declares, names and does with the signals of others."""

    name: str
    declared: tuple[Declared, ...]
    words: frozenset[str]
    connected: frozenset[str]
    sent: frozenset[str]


def read(name: str, source: str) -> Module:
    nodes = tuple(ast.walk(ast.parse(source)))
    attributes = [each for each in nodes if isinstance(each, ast.Attribute)]
    heard = [each.value for each in attributes if each.attr in ("connect", "disconnect")]
    connected = {each.value for each in attributes if each.attr == "connect"}
    return Module(
        name,
        tuple(_declared(name, nodes)),
        frozenset(each.id for each in nodes if isinstance(each, ast.Name))
        | {alias.name for each in nodes if isinstance(each, ast.ImportFrom) for alias in each.names}
        | {each.name for each in nodes if isinstance(each, ast.ClassDef)},
        frozenset(each.attr for each in connected if isinstance(each, ast.Attribute)),
        # Sent by `emit`, or handed on: to another signal's `connect`, as what a key does.
        frozenset(each.attr for each in attributes if each not in heard),
    )


def _declared(module: str, nodes: Iterable[ast.AST]) -> Iterator[Declared]:
    for owner in nodes:
        for line in owner.body if isinstance(owner, ast.ClassDef) else ():
            if isinstance(line, ast.Assign) and _makes_a_signal(line.value):
                for target in line.targets:
                    assert isinstance(target, ast.Name)
                    yield Declared(module, owner.name, target.id)


def _makes_a_signal(value: ast.expr) -> bool:
    called = value.func if isinstance(value, ast.Call) else None
    return getattr(called, "id", getattr(called, "attr", "")) in SIGNALS


def faults(modules: Iterable[Module]) -> list[str]:
    """What is never connected where its class is known, or never sent where it is declared."""
    modules = tuple(modules)
    found = []
    for home in modules:
        for signal in home.declared:
            hearers = (each for each in modules if signal.owner in each.words)
            if not any(signal.name in each.connected for each in hearers):
                found.append(f"{signal} is heard by nobody")
            if signal.name not in home.sent:
                found.append(f"{signal} is sent by nobody")
    return found


def test_every_signal_is_sent_and_heard():
    files = sorted((ROOT / "barkeep").rglob("*.py"))
    modules = [read(str(file.relative_to(ROOT)), file.read_text("utf-8")) for file in files]
    assert sum(len(each.declared) for each in modules) > 50  # or the check looks at nothing
    assert faults(modules) == []


LAMP = """
class Lamp(QObject):
    lit = Signal()
    def light(self):
        {sends}
"""


@pytest.mark.parametrize(
    ("sends", "other", "said"),
    [
        ("self.lit.emit()", "Lamp().lit.connect(show)", []),
        ("self.key.connect(self.lit)", "Lamp().lit.connect(show)", []),
        ("self.lit.emit()", "Lamp().out.connect(show)", ["lamp: Lamp.lit is heard by nobody"]),
        ("self.lit.emit()", "Fire().lit.connect(show)", ["lamp: Lamp.lit is heard by nobody"]),
        ("pass", "Lamp().lit.connect(show)", ["lamp: Lamp.lit is sent by nobody"]),
        ("self.lit.connect(show)", "", ["lamp: Lamp.lit is sent by nobody"]),
    ],
)
def test_the_check_sees_what_is_missing(sends, other, said):
    modules = (read("lamp", LAMP.format(sends=sends)), read("other", other))
    assert faults(modules) == said
