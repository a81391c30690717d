"""What a spec calls an ingredient: its writer's words before the kind's own name.

A spec that says *apple cider* says so wherever it is shown, though the kind it
means is *cloudy apple juice*. Where nobody wrote a name, the kind's own is
shown, or what the bar's region calls it.
"""

from __future__ import annotations

import re
from collections.abc import Callable, Iterable

from barkeep.domain.ingredients.tree import FamilyTree, inside_sentence
from barkeep.domain.phrases import folded
from barkeep.domain.specs.spec import Line
from barkeep.errors import spoken_list

_MARKS = re.compile(r"[,;:.()]")
_ENDINGS = ("", "s", "es")
"""Of a name that stands in a text, for one and for many."""
_CHOICE = re.compile(r"[ ]or[ ]|/")


def called_in_sentence(line: Line, tree: FamilyTree) -> str:
    """What a line calls its ingredient, with what would do as well: *rye or bourbon*."""
    others = [_written(line.text, key, tree) for key in line.alternatives]
    if not line.called:
        return spoken_list([_written(line.text, line.ingredient, tree), *others])
    return line.called if _CHOICE.search(line.called) else spoken_list([line.called, *others])


def asked_beside(line: Line) -> tuple[str, ...]:
    """What a line asks of the bottle that the words for its ingredient do not say already."""
    if not line.stated:
        return ()
    said = folded(line.called)
    return tuple(each for each in line.stated if folded(each) not in said)


def kind_beside(line: Line, tree: FamilyTree) -> str:
    """The kind a line means, where the words for it say another; else empty.

    *Apple cider* is *cloudy apple juice*; *fresh lime juice* says its kind itself.
    """
    kinds = [tree.in_sentence(key) for key in line.wanted]
    return other_kind(called_in_sentence(line, tree), spoken_list(kinds))


def other_kind(words: str, kind: str) -> str:
    """A kind that some words do not name; empty where they do."""
    said = {_for_one(word) for word in _MARKS.sub(" ", folded(words)).split()}
    return "" if {_for_one(word) for word in folded(kind).split()} <= said else kind


def _for_one(word: str) -> str:
    """A word roughly as it is for one, so that *cherries* say *cherry*."""
    for ending, single in (("ies", "y"), ("ves", "f"), ("es", ""), ("s", "")):
        if word.endswith(ending) and len(word) > len(ending) + 2:
            return word.removesuffix(ending) + single
    return word.removesuffix("e")


def named_by(lines: Iterable[Line], tree: FamilyTree) -> FamilyTree:
    """The tree in which each ingredient is called what these lines call it.

    It keeps the kind's own name where the lines differ, or let one choose.
    """
    return _showing(lines, tree, called_in_sentence)


def kinds_named_by(lines: Iterable[Line], tree: FamilyTree) -> FamilyTree:
    """The same with names alone, for what is said of a kind: *dry gin* of a maker's dry gin."""

    def name(line: Line, tree: FamilyTree) -> str:
        return _written(line.called or line.text, line.ingredient, tree)

    return _showing(lines, tree, name)


def _showing(
    lines: Iterable[Line], tree: FamilyTree, name: Callable[[Line, FamilyTree], str]
) -> FamilyTree:
    found: dict[str, dict[str, str]] = {}
    for line in lines:
        if line.ingredient and not line.alternatives:
            words = name(line, tree)
            found.setdefault(line.ingredient, {}).setdefault(folded(words), words)
    named = {key: next(iter(names.values())) for key, names in found.items() if len(names) == 1}
    return tree.showing({key: each for key, each in named.items() if each != tree.in_sentence(key)})


def _written(text: str, key: str, tree: FamilyTree) -> str:
    """The longest name of an ingredient that stands in a text, else the one that is shown."""
    kind = tree[key]
    if text and kind.name.casefold() in text.casefold():  # as nearly all are, and quick to see
        return inside_sentence(kind, kind.name)
    if text:
        there = f" {_MARKS.sub(' ', folded(text))} "
        for name, said in tree.spoken_names(key):
            if name in there and any(f" {name}{ending} " in there for ending in _ENDINGS):
                return said
    return tree.in_sentence(key)
