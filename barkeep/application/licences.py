"""What barkeep is built on, and under which terms: read from what is installed."""

from __future__ import annotations

import re
from collections.abc import Iterator
from dataclasses import dataclass
from importlib.metadata import Distribution, PackageNotFoundError, distribution

from barkeep import resource_files
from barkeep.translation import tr, tr_noop

OWN = "barkeep"
_EXTRAS = frozenset({"team"})
"""Of barkeep's own, what a user may have beside it."""
_NEEDED = re.compile(r"(?P<name>[A-Za-z0-9._-]+)(?:\[(?P<extras>[^\]]*)\])?")
_ONLY_WITH = re.compile(r"extra == [\"'](?P<extra>[^\"']+)[\"']")
_TEXT = re.compile(r"(?:^|/)(?:LICEN[CS]E|COPYING)[^/]*$", re.IGNORECASE)
_CLASSIFIER = "License :: "
_MOST_LETTERS = 60
"""Of a licence's name; a longer one is its text."""
_UNKNOWN = tr_noop("see its text")


@dataclass(frozen=True, slots=True)
class Package:
    """A package that barkeep uses, itself or through another. `text` may be empty."""

    name: str
    version: str
    licence: str
    text: str


def packages() -> tuple[Package, ...]:
    """All that are installed of them, by name; none where barkeep itself is not installed."""
    found: dict[str, Package] = {}
    waiting = [(OWN, _EXTRAS)]
    while waiting:
        name, extras = waiting.pop()
        if _folded(name) in found:
            continue
        try:
            one = distribution(name)
        except PackageNotFoundError:  # not needed on this system
            continue
        found[_folded(name)] = Package(one.metadata["Name"], one.version, _licence(one), _text(one))
        waiting.extend(_needed(one, extras))
    found.pop(OWN, None)
    return tuple(sorted(found.values(), key=lambda each: each.name.casefold()))


def texts() -> Iterator[tuple[str, str]]:
    """Every licence with what it is of: barkeep's, those kept with it, its fonts', and the rest."""
    kept = resource_files.names("licences", suffix=".txt")
    for name in sorted(kept, key=lambda each: (each != f"{OWN}.txt", each.casefold())):
        yield name.removesuffix(".txt"), resource_files.read_text("licences", name)
    for name in resource_files.names("fonts", suffix=".txt"):
        yield name.removesuffix(".txt"), resource_files.read_text("fonts", name)
    known = {_folded(name.removesuffix(".txt")) for name in kept} | _OF_QT
    for each in packages():
        if _folded(each.name) not in known and each.text:
            yield each.name, each.text


_OF_QT = {"pyside6-essentials", "shiboken6"}
"""Told of as Qt for Python."""


def _needed(one: Distribution, extras: frozenset[str]) -> Iterator[tuple[str, frozenset[str]]]:
    """What a package with such extras cannot do without, and with which extras of its own."""
    for written in one.requires or ():
        needed, only = _NEEDED.match(written), _ONLY_WITH.search(written)
        if needed is not None and (only is None or only["extra"] in extras):
            yield needed["name"], frozenset((needed["extras"] or "").replace(" ", "").split(","))


def _licence(one: Distribution) -> str:
    said = one.metadata.get_all("License-Expression") or one.metadata.get_all("License") or []
    for each in said:
        if each and len(each) <= _MOST_LETTERS and "\n" not in each:
            return str(each)
    classified = one.metadata.get_all("Classifier") or []
    names = [each.rpartition(" :: ")[2] for each in classified if each.startswith(_CLASSIFIER)]
    return ", ".join(names) or tr(_UNKNOWN)


def _text(one: Distribution) -> str:
    files = sorted(str(each) for each in one.files or () if _TEXT.search(str(each)))
    own = [each for each in files if ".dist-info/" in each][:1]
    return "\n\n".join(one.read_text(each.partition("/")[2]) or "" for each in own).strip()


def _folded(name: str) -> str:
    return re.sub(r"[-_. ]+", "-", name).casefold()
