"""From words on a page to an ingredient of the family tree.

Names are matched as they are written or not at all: first the whole text,
then without adjectives that change nothing at the bar, then without a maker's
words in front. Likeness of spelling gives a guess, which is never sure enough
to be taken without asking.
"""

from __future__ import annotations

import re
from collections.abc import Iterator
from dataclasses import dataclass, replace

from barkeep.domain.ingredients.finder import nearest
from barkeep.domain.ingredients.tree import FamilyTree, Ingredient
from barkeep.domain.phrases import folded

EXACT, ADJUSTED, MAKER, GUESSED = 1.0, 0.95, 0.7, 0.6
"""Confidence of a name as written, without its adjectives, after a maker's words, and misspelt.

A ranking chosen here; only the order has a meaning.
"""
LONGEST = 300
"""Characters; nothing longer is looked at as a name."""


_ADJECTIVES_LIST = """
    fresh freshly squeezed pressed brewed ground grated cut picked peeled chopped sliced chilled
    cold cool iced hot warm strong good quality high fine best large small medium big thin thick
    long short heavy scant generous level heaped ripe raw homemade house made organic unwaxed washed
    premium bottled quality decent
    whole clear plain pure real few your favourite favorite of the well
"""
ADJECTIVES = frozenset(_ADJECTIVES_LIST.split())
"""Words in front of a name that leave it the same ingredient (*common practice*)."""


_NOTE = re.compile(r"[ ]*(?:\((?P<brackets>[^()]*)\)|,[ ]*(?P<comma>[^,()]*))[ ]*$")
_WORDS_AFTER = re.compile(
    r"""(?<=\w)[ ]+(?P<note>(?:cut|peeled|muddled|sliced|chopped|crushed|grated|squeezed|chilled
        |beaten|halved|quartered|diced|expressed|flamed|torn|slapped|floated|freshly|finely|lightly
        |to[ ](?:top|taste|serve|fill|finish|float|rinse|garnish)|on[ ]top
        |for[ ](?:garnish|the[ ]rim|rinsing)|as[ ](?:a[ ])?(?:garnish|rinse|float)
        |if[ ]you|at[ ]least|preferably|ideally|such[ ]as|plus|about)\b.*)$""",
    re.IGNORECASE | re.VERBOSE,
)
_FLAVOURED = ("juice", "syrup", "liqueur", "bitters", "milk", "extract", "water", "puree", "pod")
_CHANGING_LIST = """
    alcohol alcoholic non free zero low no imitation mock flavoured flavored infused spiced smoked
    sweet sweetened dry sparkling still red white black green pink blue gold golden dark light brown
    stir shake add pour build strain serve muddle top mix with without scented
"""
_CHANGING = frozenset(_CHANGING_LIST.split())
"""Words that make something else of what follows them."""
_MAKER_WORDS = 5
"""A maker and a label take no more words than this in front of a kind."""


@dataclass(frozen=True, slots=True)
class Match:
    """What a text names. `key` is None where it names nothing known.

    `matched` is the name that was found and `maker` the words before it that
    name nothing; `nearest` are the names most like the text, given only where
    nothing was found.
    """

    key: str | None
    matched: str | None
    confidence: float
    nearest: tuple[str, ...] = ()
    maker: str = ""


def match_ingredient(text: str, tree: FamilyTree) -> Match:
    """The ingredient a text names, notes in brackets or after a comma left out."""
    found, _notes = find_name(text, tree)
    return found or Match(None, None, 0.0, suggestions(text, tree))


def find_name(text: str, tree: FamilyTree) -> tuple[Match | None, tuple[str, ...]]:
    """The ingredient a text names and the notes that trail its name, in their order.

    Where nothing is found, every note is taken off.
    """
    stages = without_notes(text)
    for name, notes in stages:
        found = named(name, tree)
        if found:
            return found, notes
    name, notes = stages[-1]
    if all(word in ADJECTIVES for word in _words(name)):
        return match_name(text.replace(",", " "), tree), ()  # "cold, fresh lime juice"
    found = match_name(name, tree)
    after = _WORDS_AFTER.search(name)
    if found is None and after:
        shorter = match_name(name[: after.start()], tree)
        if shorter:
            return shorter, (after["note"], *notes)
    return found, notes


def match_name(name: str, tree: FamilyTree) -> Match | None:
    """The ingredient of a bare name without notes, None where there is none."""
    words = _words(name)
    if not words:
        return None
    return (
        _named(words, tree, EXACT) or _without_adjectives(words, tree) or _after_a_maker(name, tree)
    )


def named(name: str, tree: FamilyTree) -> Match | None:
    """The ingredient called exactly this, singular or plural, None where there is none."""
    return _named(_words(name), tree, EXACT)


def suggestions(text: str, tree: FamilyTree) -> tuple[str, ...]:
    """The names of up to three ingredients most like a text, best first; none far-fetched."""
    return tuple(each.name for each in nearest(bare_name(text), tree))


def guesses(text: str, tree: FamilyTree) -> tuple[Match, ...]:
    """The ingredients `suggestions` names, none of which is sure."""
    found = nearest(bare_name(text), tree)
    return tuple(Match(each.key, each.name, round(GUESSED * each.score, 3)) for each in found)


def bare_name(text: str) -> str:
    """A text without the notes that trail it, as it is where it is nothing but notes."""
    return without_notes(text)[-1][0] or text.strip()


def without_notes(text: str) -> list[tuple[str, tuple[str, ...]]]:
    """A text with none, one, two … of its trailing notes taken off, and those notes."""
    stages: list[tuple[str, tuple[str, ...]]] = [(text.strip()[:LONGEST], ())]
    while found := _NOTE.search(stages[-1][0]):
        rest, notes = stages[-1]
        note = (found["brackets"] or found["comma"] or "").strip()
        stages.append((rest[: found.start()].rstrip(), (note, *notes) if note else notes))
    return stages


def _words(name: str) -> list[str]:
    return folded(name[:LONGEST]).strip(" .").split()


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
        if words[start - 1].rstrip(",") not in ADJECTIVES:
            break
        found = _named(words[start:], tree, ADJUSTED)
        if found:
            return found
    if words[0] == "bitter":
        found = _named(words[1:], tree, ADJUSTED)
        return found if found and _is_bitter(found, tree) else None
    return None


def _after_a_maker(name: str, tree: FamilyTree) -> Match | None:
    """A kind of drink after words that name nothing: *Grey Ferry London dry gin*.

    The longest name wins. An ingredient or a flavour is never a maker: *almond
    cream* is no cream and *vanilla gin* no gin.
    """
    written = name[:LONGEST].split()
    for start in range(1, min(len(written), _MAKER_WORDS + 1)):
        maker = " ".join(written[:start])
        found = _named(_words(" ".join(written[start:])), tree, MAKER)
        if found and found.key is not None:
            made = _has_a_maker(found.key, tree) and _may_be_a_maker(_words(maker), tree)
            return replace(found, maker=maker) if made else None
    return None


def _has_a_maker(key: str, tree: FamilyTree) -> bool:
    """Whether it is bought as a maker's drink, and not as milk, butter or a mere grouping."""
    ingredient = tree[key]
    several = len(folded(ingredient.name).split()) > 1
    if ingredient.unit != "ml" or (ingredient.family and not (several and key in tree.alcoholic)):
        return False
    return (ingredient.abv_percent or 0.0) > 0.5 or several


def _may_be_a_maker(words: list[str], tree: FamilyTree) -> bool:
    """Whether no word is an ingredient, a flavour, or changes what the kind is."""
    for word in words:
        plain = word.strip(".,'&")
        if plain in _CHANGING or any(form in tree.by_name for form in _forms(plain)):
            return False
        if any(f"{plain} {kind}" in tree.by_name for kind in _FLAVOURED):
            return False
    return True


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
