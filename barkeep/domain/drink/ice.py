"""Which lines of a spec meet the ice, and which are added once it has done its work.

Read off the lines (*top with*, *float*), off the method (*shake all but the
soda*, *float the rum on top*, *rinse a glass*) and off the ingredient: what is
carbonated is never shaken or stirred with ice, whatever the text leaves out.
"""

from __future__ import annotations

import re
from collections.abc import Iterable

from barkeep.domain.ingredients.relations import Technique
from barkeep.domain.ingredients.tree import FamilyTree
from barkeep.domain.phrases import Phrases, folded
from barkeep.domain.specs.spec import Line, Spec

CARBONATED = ("mixer", "sparkling-wine", "beer", "cider", "alcohol-free-sparkling-wine")
"""Kinds that are carbonated, with everything below them."""
ON_TOP_NOTES = ("to top", "to fill", "float", "floated", "on top")
LAST_UNITS = ("float", "rinse")


_APART = re.compile(
    r"\b(?:(?:all|everything)\s+(?:but|except)(?:\s+for)?|(?:float|sink)(?:ing)?"
    r"|top(?:ping)?(?:\s+(?:up|off))?\s+with|dash(?=\s+the\b)|pour\s+in"
    r"(?=[^.;]*\bon\s+top\b))\s+(?P<what>[^.,;]*?)"
    r"(?=\s+(?:with|briefly|hard|long|over|on|down|in|into|and)\b|[.,;]|$)",
    re.IGNORECASE,
)
_ICE = Phrases(
    ("ice",),
    unless=(
        *("ice cream", "ice cold", "not on ice", "not over ice", "not with ice"),
        *("never on ice", "never over ice", "never with ice"),
    ),
)
_WITHOUT_ICE = re.compile(r"\b(?:no|not|never|without)\b[^.,;]{0,20}\bice\b(?! cream| cold)")
_STIRRED_WITHOUT_ICE = re.compile(
    r"\bstir(?:red|ring)?\b(?:(?!strain)[^.,;])*\b(?:no|not|never|without)\b[^.,;]{0,20}\bice\b"
)
_NEAT = Phrases(
    ("neat", "at room temperature", "from the freezer", "from freezer"),
    unless=(
        *("glass from the freezer", "glasses from the freezer", "coupe from the freezer"),
        *("mug from the freezer", "flute from the freezer", "syrup at room temperature"),
    ),
)
_NO_ICE = ("none", "no", "no ice", "without", "without ice", "neat", "up", "straight up")
_SAID_HOT = re.compile(r"\b(?:hot|boiling|steaming)\b")
_HEATED = ("hot-drink", "water", "milk", "juice", "cider", "wine")
"""Kinds that a line calls hot where they are poured so; hot honey or sauce is another thing."""
_SMALL_WORDS = frozenset({"the", "rest", "lightly", "whipped", "well", "chilled", "cold"})


def is_carbonated(key: str, tree: FamilyTree) -> bool:
    """Whether an ingredient has bubbles."""
    return tree.once(_is_carbonated, key)


def _is_carbonated(tree: FamilyTree, key: str) -> bool:
    return any(tree.is_a(key, kind) for kind in CARBONATED)


def meets_ice(spec: Spec, technique: Technique) -> bool:
    """Whether the drink is mixed on ice at all: a built one only where ice is named.

    What is stirred or told without a technique is not where its method says so:
    *without ice*, *neat*, *from the freezer*.
    """
    if technique == "hot":
        return False
    if technique not in ("built", "stirred", "unknown"):
        return True
    if technique == "stirred":
        return _header_names_ice(spec) or not is_without_ice(spec.method)
    if spec.ice:
        return _header_names_ice(spec)
    if technique == "unknown":
        return not is_without_ice(spec.method)
    return _ICE.found_in(folded(spec.method))


def is_without_ice(method: str) -> bool:
    """Whether a method says that no ice comes to the drink, and names none.

    What is strained was on ice, whatever is said of the glass it goes into.
    """
    words = folded(method)
    if _ICE.found_in(words):
        return False
    if "strain" in words:
        return _STIRRED_WITHOUT_ICE.search(words) is not None
    return _WITHOUT_ICE.search(words) is not None or _NEAT.found_in(words)


def is_poured_hot(spec: Spec, tree: FamilyTree) -> bool:
    """Whether a line makes the drink hot: boiling water, *hot coffee*; not where ice is named."""
    if _header_names_ice(spec) or _ICE.found_in(folded(spec.method)):
        return False
    return any(_is_hot(line, tree) for line in spec.required_lines)


def _is_hot(line: Line, tree: FamilyTree) -> bool:
    if tree.is_a(line.ingredient, "boiling-water"):
        return True
    said_hot = _SAID_HOT.search(folded(f"{line.text} {line.note}")) is not None
    return said_hot and any(tree.is_a(line.ingredient, kind) for kind in _HEATED)


def _header_names_ice(spec: Spec) -> bool:
    return bool(spec.ice) and folded(spec.ice) not in _NO_ICE


def added_after_ice(spec: Spec, technique: Technique, tree: FamilyTree) -> frozenset[int]:
    """The numbers of the lines that no ice thins, from 0."""
    if not meets_ice(spec, technique):
        return frozenset(range(len(spec.lines)))
    apart = {
        number
        for number, line in enumerate(spec.lines)
        if _is_last(line) or (is_carbonated(line.ingredient, tree) and technique != "blended")
    }
    for found in _APART.finditer(spec.method):
        apart |= lines_named(found["what"], spec.lines, tree)
    return frozenset(apart)


def _is_last(line: Line) -> bool:
    return line.unit in LAST_UNITS or any(note in line.note for note in ON_TOP_NOTES)


def lines_named(words: str, lines: Iterable[Line], tree: FamilyTree) -> set[int]:
    """The lines a clause names: those that answer to most of its words, garnishes apart."""
    wanted = _words(words) - _SMALL_WORDS
    if not wanted:
        return set()
    shared = {
        number: len(wanted & _names(line, tree))
        for number, line in enumerate(lines)
        if not line.garnish
    }
    most = max(shared.values(), default=0)
    return {number for number, count in shared.items() if count == most > 0}


def _names(line: Line, tree: FamilyTree) -> set[str]:
    kinds = (line.ingredient, *tree.ancestors(line.ingredient))
    found = _words(line.text)
    for kind in kinds:
        for name in tree[kind].all_names:
            found |= _words(name)
    return found


def _words(text: str) -> set[str]:
    return set(re.findall(r"[^\W\d_]{3,}", folded(text)))
