"""What the bare name of a flavour may be where it is measured: *½ oz cinnamon*.

| written                    | is                                                       |
|----------------------------|----------------------------------------------------------|
| ¾ oz lemon, 2 cl pineapple | its juice: nobody pours anything else by that name       |
| ½ oz cinnamon, ½ oz peach  | asked: a syrup, a liqueur or a purée, the likeliest ready |
| 2 dashes orange            | asked: bitters or juice                                  |
| ½ tsp cinnamon             | the ground spice, which is spooned                       |
"""

from __future__ import annotations

from collections.abc import Iterator, Mapping

from barkeep.domain.ingredients.names import ADJECTIVES, named
from barkeep.domain.ingredients.tree import FamilyTree, singular
from barkeep.domain.phrases import folded

_JUICED_LIST = """
    lemon lime key-lime orange blood-orange grapefruit mandarin yuzu calamansi pomelo pineapple
    apple cranberries tomato pomegranate cucumber celery carrot watermelon grape beetroot
    bell-pepper fennel papaya
"""
_JUICED = frozenset(_JUICED_LIST.split())
"""Fruit and vegetables a measure of which is their juice and nothing else (*common practice*)."""

_GROWN = frozenset({"fruit", "herb", "spice", "nut", "vegetable"})
_ALSO_FLAVOURS = frozenset(
    {"hibiscus-flowers", "dark-chocolate", "dates", "tamarind", "cocktail-cherry", "dried-rosebud"}
    | {"elderflower", "cocoa-powder"}
)
"""What flavours a drink and stands elsewhere in the tree."""

_NAMES_MORE: Mapping[str, str] = {
    "rose": "rosé wine",
    "chamomile": "chamomile tea",
    "camomile": "chamomile tea",
}
"""Words that a poured thing is called by and that are a flavour too, with that thing."""

_FORMS = (
    *("{} syrup", "{} liqueur", "{} cordial", "{} puree", "{} juice", "crème de {}", "{} water"),
    "cream of {}",
)
_IN_DASHES = ("{} bitters", "{} tincture", "{} extract", "{} water", "{} juice", "{} syrup")

_LIQUEUR_FIRST = frozenset(
    {"elderflower", "peach", "apricot", "cherry", "banana", "melon", "violet", "blackcurrant"}
    | {"lychee", "pear", "chocolate"}
)
"""Flavours of which the liqueur is the likeliest, as bars write (*common practice*)."""

_DASHED_AS_JUICE = frozenset({"lemon", "lime"})
_SPOONS = frozenset({"tsp", "tbsp", "barspoon"})
_DROPPED = frozenset({"dash", "drop"})


def may_be_poured(
    called: str, taken: str, unit: str | None, tree: FamilyTree
) -> tuple[str, tuple[str, ...]] | None:
    """The flavour that a name is and the keys that it may mean, the likeliest first.

    None where the name leaves nothing to be asked. `taken` is the kind that would be taken for
    it and `unit` what it is measured in, a volume or a part.
    """
    named_more = folded(called) in _NAMES_MORE and "é" not in called.casefold()  # rosé is no rose
    if tree[taken].unit == "ml" and not named_more and folded(tree[taken].name) == folded(called):
        return None
    whole = named(called, tree)
    if whole and tree[str(whole.key)].unit == "ml" and not named_more:
        return None
    words = [each for each in folded(called).replace(",", " ").split() if each not in ADJECTIVES]
    for start in range(len(words)):
        word = " ".join((*words[start:-1], singular(words[-1])))
        found = named(word, tree)
        if found is not None and start:
            return None  # cranberry wine is no wine of cranberries
        if start and named(" ".join(words[:start]), tree):
            return None  # vodka vanilla
        keys = tuple(dict.fromkeys(_likely(word, unit, tree)))
        if found is None and len(keys) < 2:
            continue
        if found is None or _is_a_flavour(word, str(found.key), tree):
            asked = bool(keys) and not _is_sure(
                word, found.key if found else None, taken, unit=unit, tree=tree
            )
            return (word, keys) if asked else None
        return None
    return None


def _is_a_flavour(word: str, key: str, tree: FamilyTree) -> bool:
    """Whether a name is that of something solid that drinks are flavoured with."""
    if tree[key].unit == "ml":
        return word in _NAMES_MORE
    return key in _ALSO_FLAVOURS or bool(_GROWN & {*tree.ancestors(key)})


def _is_sure(
    word: str, solid: str | None, taken: str, *, unit: str | None, tree: FamilyTree
) -> bool:
    """Whether a measure of it can only be one thing."""
    if unit in _SPOONS and taken == solid:
        return True  # ½ tsp cinnamon, which is ground
    if solid in _JUICED:
        return unit not in _DROPPED or named(f"{word} bitters", tree) is None
    return False


def _likely(word: str, unit: str | None, tree: FamilyTree) -> Iterator[str]:
    """The keys of what is poured that the word may be short for, the likeliest first."""
    forms = list(_FORMS)
    if unit in _DROPPED:
        forms = list(_IN_DASHES)
        if word in _DASHED_AS_JUICE:
            forms.insert(0, "{} juice")
    elif word in _LIQUEUR_FIRST:
        forms[:0] = ["{} liqueur", "crème de {}"]
    for form in forms:
        found = named(form.format(word), tree)
        if found and found.key and tree[found.key].unit == "ml":
            yield found.key
    if word in _NAMES_MORE and unit not in _DROPPED:
        also = named(_NAMES_MORE[word], tree)
        yield from (each.key for each in (also,) if each and each.key)
