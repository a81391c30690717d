"""From words on a page to an ingredient of the family tree.

Names are matched as they are written or not at all: first the whole text,
then without adjectives that change nothing at the bar, then without a maker's
words in front. Likeness of spelling is only ever used to suggest.
"""

from __future__ import annotations

import re
from collections.abc import Iterable, Iterator
from dataclasses import dataclass

from barkeep.domain.ingredients import FamilyTree, Ingredient, folded

EXACT, ADJUSTED, MAKER = 1.0, 0.95, 0.7
"""Confidence of a name as written, without its adjectives, and after a maker's words.

A ranking chosen here; only the order has a meaning.
"""
SUGGESTIONS = 3

_ADJECTIVES = frozenset(
    """
    fresh freshly squeezed pressed brewed ground grated cut picked peeled chopped sliced chilled
    cold cool iced hot warm strong good quality fine best large small medium big thin thick long
    short heavy scant generous level heaped ripe raw homemade house made organic unwaxed washed
    whole clear plain pure real few your favourite favorite of the
    """.split()
)
"""Words in front of a name that leave it the same ingredient (*common practice*)."""

_TRAILING = re.compile(
    r"""[ ]*(?:
        \((?P<brackets>[^()]*)\)
      | ,[ ]*(?P<comma>[^()]*)
      | [ ](?P<open>(?:cut|peeled|muddled|sliced|chopped|crushed|grated|squeezed|chilled|beaten
                      |halved|quartered|diced|expressed|flamed|torn|slapped|floated
                      |freshly|finely|lightly|to[ ]top|to[ ]taste|to[ ]serve|to[ ]fill|on[ ]top
                      |for[ ](?:garnish|the[ ]rim)|as[ ]garnish|at[ ]least|if[ ]you)\b.*)
    )[ ]*$""",
    re.IGNORECASE | re.VERBOSE,
)
_MAKER_WORDS = 5
"""A maker and a label take no more words than this in front of a kind."""


@dataclass(frozen=True, slots=True)
class Match:
    """What a text names. `key` is None where it names nothing known.

    `matched` is the name that was found; `nearest` are the names most like
    the text, given only where nothing was found.
    """

    key: str | None
    matched: str | None
    confidence: float
    nearest: tuple[str, ...] = ()


def match_ingredient(text: str, tree: FamilyTree) -> Match:
    """The ingredient a text names; trailing notes in brackets or after a comma are left out."""
    return match_name(without_notes(text)[0], tree) or _suggest(text, tree)


def match_name(name: str, tree: FamilyTree) -> Match | None:
    """The ingredient of a bare name without notes, None where there is none."""
    words = folded(name).strip(" .").split()
    if not words:
        return None
    return (
        _named(words, tree, EXACT)
        or _without_adjectives(words, tree)
        or _after_a_maker(words, tree)
    )


def without_notes(text: str) -> tuple[str, tuple[str, ...]]:
    """A text without the notes that trail it, and the notes in their order.

    >>> without_notes("lime (ripe), cut into wedges")
    ('lime', ('ripe', 'cut into wedges'))
    """
    notes: list[str] = []
    rest = text.strip()
    # A name may be a bracket and nothing else: then there is no name to keep.
    while found := _TRAILING.search(rest):
        note = found["brackets"] or found["comma"] or found["open"] or ""
        if note.strip():
            notes.insert(0, note.strip())
        rest = rest[: found.start()].rstrip()
    return rest, tuple(notes)


def nearest_names(text: str, names: Iterable[str], limit: int = SUGGESTIONS) -> tuple[str, ...]:
    """The names most like a text, best first."""
    from rapidfuzz import fuzz, process  # only a mistaken name pays for the import

    by_folded = {folded(each): each for each in names}
    found = process.extract(folded(text), by_folded.keys(), scorer=fuzz.WRatio, limit=limit)
    return tuple(by_folded[match] for match, _score, _index in found)


def _suggest(text: str, tree: FamilyTree) -> Match:
    names = (each.name for each in tree.ingredients.values() if not each.family)
    return Match(None, None, 0.0, nearest_names(without_notes(text)[0] or text, names))


def _named(words: list[str], tree: FamilyTree, confidence: float) -> Match | None:
    """The ingredient called exactly this, singular or plural."""
    name = " ".join(words)
    for number, form in enumerate(_forms(name)):
        key = tree.by_name.get(form)
        if key is not None:
            sure = confidence if number == 0 else min(confidence, ADJUSTED)
            return Match(key, _name_written(tree[key], form), sure)
    return None


def _without_adjectives(words: list[str], tree: FamilyTree) -> Match | None:
    """The name after the adjectives in front of it, the fewest taken away."""
    for start in range(1, len(words)):
        if words[start - 1].rstrip(",") not in _ADJECTIVES:
            break
        found = _named(words[start:], tree, ADJUSTED)
        if found:
            return found
    if words[0] == "bitter":
        found = _named(words[1:], tree, ADJUSTED)
        return found if found and _is_bitter(found, tree) else None
    return None


def _after_a_maker(words: list[str], tree: FamilyTree) -> Match | None:
    """A kind of drink after words that no ingredient uses: *Grey Ferry London dry gin*.

    The longest name wins. Words that some ingredient uses are never a maker:
    *almond cream* is no cream.
    """
    for start in range(1, min(len(words), _MAKER_WORDS + 1)):
        found = _named(words[start:], tree, MAKER)
        if found and found.key is not None:
            maker = words[:start]
            if _has_a_maker(tree[found.key], tree) and not _uses_any(maker, tree):
                return found
            return None
    return None


def _has_a_maker(ingredient: Ingredient, tree: FamilyTree) -> bool:
    """Whether it is bought as a maker's drink, and not as milk, butter or a mere grouping."""
    if ingredient.family or ingredient.unit != "ml":
        return False
    return (ingredient.abv_percent or 0.0) > 0.5 or len(folded(ingredient.name).split()) > 1


def _uses_any(words: list[str], tree: FamilyTree) -> bool:
    """Whether some ingredient's name has one of these words."""
    return any(
        f" {form} " in f" {name} "
        for word in words
        if len(word) > 2
        for form in _forms(word)
        for name in tree.by_name
    )


def _is_bitter(match: Match, tree: FamilyTree) -> bool:
    kinds = (match.key, *tree.ancestors(match.key)) if match.key else ()
    return any("bitter" in folded(tree.name(each)).split() for each in kinds)


def _name_written(ingredient: Ingredient, form: str) -> str:
    return next((each for each in ingredient.all_names if folded(each) == form), ingredient.name)


def _forms(name: str) -> Iterator[str]:
    """A folded name, then its singular or plural, and the other spelling of whisky."""
    yield name
    for ending, other in (("ies", "y"), ("ves", "f"), ("es", ""), ("s", "")):
        if name.endswith(ending) and len(name) > len(ending) + 2:
            yield name[: -len(ending)] + other
    yield f"{name}s"
    if name.endswith("whiskey"):
        yield f"{name[:-3]}y"
    elif name.endswith("whisky"):
        yield f"{name[:-1]}ey"
