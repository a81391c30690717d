"""What an owner's own ingredient is to begin with: its key, its likely kind, its figures."""

from __future__ import annotations

import re
from collections.abc import Iterable, Iterator, Sequence
from dataclasses import replace
from itertools import count

from barkeep.domain.ingredients.names import bare_name, named
from barkeep.domain.ingredients.tree import CheckedTree, FamilyTree, Ingredient
from barkeep.domain.phrases import folded
from barkeep.translation import tr, tr_noop

OWN = "the owner's own"
"""The basis of what an owner says of an ingredient."""
_PARTS_OF_KEYS = re.compile(r"[a-z0-9]+")
_FIRST_OF_TWO = re.compile(r" (?:of|with|from|infused with|made with) ")
_FIGURES = {
    "abv_percent": tr_noop("% vol"),
    "sugar_g_per_l": tr_noop("g/l of sugar"),
    "acid_g_per_l": tr_noop("g/l of acid"),
}


def free_key(name: str, tree: FamilyTree) -> str:
    """A key for a new ingredient of this name that no other has.

    A name of other letters than a key may have is spelt by their numbers.
    """
    parts = _PARTS_OF_KEYS.findall(folded(name)) or ["own", *(f"{ord(each):x}" for each in name)]
    key = "-".join(parts)
    numbered = (f"{key}-{number}" for number in count(2))
    return key if key not in tree else next(each for each in numbered if each not in tree)


def likely_kind(words: str, tree: FamilyTree) -> str | None:
    """The key of what something unknown is likely to be a kind of, None where nothing tells.

    The first words before an *of* or *with* say what a thing is, *syrup of violets*, or else
    the last ones do: *smoked maple syrup* is a maple syrup.
    """
    known = (named(each, tree) for each in _kind_words(folded(bare_name(words))))
    return next((each.key for each in known if each is not None), None)


def _kind_words(name: str) -> Iterator[str]:
    for part in dict.fromkeys((_FIRST_OF_TWO.split(name)[0], name)):
        words = part.split()
        yield from (" ".join(words[start:]) for start in range(len(words)))


def is_written_as_a_name(name: str) -> bool:
    """Whether the first word keeps its capital in a sentence, as the words after it do."""
    return any(word[:1].isupper() for word in name.split()[1:])


def as_their_kinds(tree: FamilyTree, own: Iterable[str]) -> FamilyTree:
    """The tree in which an owner's ingredients have every figure they leave open as their kind.

    Else each answer would take nothing for the strength of an own gin whose sugar alone is said.
    """
    kinds_first = sorted(own, key=lambda key: len(tree.ancestors(key)))
    filled = dict(tree.ingredients)
    for key in kinds_first:
        filled[key] = _with_usual_figures(filled[key], [filled[each] for each in tree.upwards(key)])
    # Names and family are as they were: to check them anew takes as long as a second tree.
    return replace(CheckedTree.of(tree), ingredients=filled).tree


def figures_in_words(of: Ingredient, but_of: Ingredient | None = None) -> tuple[str, ...]:
    """Strength, sugar and acid as far as they are known, without those that are of the other."""
    return tuple(
        f"{getattr(of, field):g} {tr(unit)}"
        for field, unit in _FIGURES.items()
        if getattr(of, field) is not None and (but_of is None or getattr(but_of, field) is None)
    )


def _with_usual_figures(ingredient: Ingredient, above: Sequence[Ingredient]) -> Ingredient:
    usual = next((each for each in above if figures_in_words(each)), None)
    if usual is None:
        return ingredient
    missing = (each for each in _FIGURES if getattr(ingredient, each) is None)
    return replace(ingredient, **{each: getattr(usual, each) for each in missing})
