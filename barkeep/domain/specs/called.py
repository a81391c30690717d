"""What a spec calls an ingredient: its writer's words before the kind's own name.

A spec that says *apple cider* says so wherever it is shown, though the kind it
means is *cloudy apple juice*. Where nobody wrote a name, the kind's own is
shown, or what the bar's region calls it.
"""

from __future__ import annotations

import re
from collections.abc import Iterable, Mapping

from barkeep.domain.ingredients.tree import FamilyTree, Ingredient, inside_sentence
from barkeep.domain.phrases import folded
from barkeep.domain.specs.spec import Line
from barkeep.errors import spoken_list

_CHOICE = re.compile(r"[ ]or[ ]|/")


def called_in_sentence(line: Line, tree: FamilyTree) -> str:
    """What a line calls its ingredient, with what would do as well: *rye or bourbon*."""
    return spoken_list(_names(line, tree))


def asked_beside(line: Line) -> tuple[str, ...]:
    """What a line asks of the bottle that the words for its ingredient do not say already."""
    said = folded(line.called)
    return tuple(each for each in line.stated if folded(each) not in said)


def kind_beside(line: Line, tree: FamilyTree) -> str:
    """The kind a line means, where the words for it say another; else empty.

    *Apple cider* is *cloudy apple juice*; *fresh lime juice* says its kind itself.
    """
    said = set(folded(called_in_sentence(line, tree)).split())
    kinds = [tree.in_sentence(key) for key in line.wanted]
    if all(set(folded(kind).split()) <= said for kind in kinds):
        return ""
    return spoken_list(kinds)


def named_by(lines: Iterable[Line], tree: FamilyTree) -> FamilyTree:
    """The tree in which each ingredient is called what these lines call it.

    It keeps the kind's own name where the lines differ, or let one choose.
    """
    found: dict[str, dict[str, str]] = {}
    for line in lines:
        if line.ingredient and not line.alternatives:
            name = _names(line, tree)[0]
            found.setdefault(line.ingredient, {}).setdefault(folded(name), name)
    named: Mapping[str, str] = {
        key: next(iter(names.values())) for key, names in found.items() if len(names) == 1
    }
    return tree.showing({key: each for key, each in named.items() if each != tree.in_sentence(key)})


def _names(line: Line, tree: FamilyTree) -> list[str]:
    others = [_written(line.text, key, tree) for key in line.alternatives]
    if not line.called:
        return [_written(line.text, line.ingredient, tree), *others]
    return [line.called] if _CHOICE.search(line.called) else [line.called, *others]


def _written(text: str, key: str, tree: FamilyTree) -> str:
    """The longest name of an ingredient that stands in a text, else the one that is shown."""
    there = folded(text)
    ingredient = tree[key]
    for name in sorted(_sayable(ingredient), key=len, reverse=True):
        if _stands_in(folded(name), there) and tree.by_name[folded(name)] == key:
            return inside_sentence(ingredient, name)
    return tree.in_sentence(key)


def _sayable(ingredient: Ingredient) -> list[str]:
    """The names it answers to, without those that only a search may know."""
    return [each for each in ingredient.all_names if each not in ingredient.printed]


def _stands_in(name: str, text: str) -> bool:
    return name in text and bool(re.search(rf"(?<!\w){re.escape(name)}(?:e?s)?(?!\w)", text))
