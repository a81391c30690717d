"""What somebody made of a kind or has standing there: never taken for the kind itself.

| written                                        | asked                                  |
|------------------------------------------------|----------------------------------------|
| chilli-infused tequila, tequila infused with … | a new ingredient, a kind of tequila?   |
| brown-butter-washed bourbon, bourbon, fat-washed | a new ingredient, a kind of bourbon? |
| that syrup we made earlier, our house syrup    | which syrup?                           |
"""

from __future__ import annotations

import re
from collections.abc import Sequence
from dataclasses import dataclass

from barkeep.domain.ingredients.names import bare_name, match_name, named, without_notes
from barkeep.domain.ingredients.tree import FamilyTree
from barkeep.domain.phrases import folded

_DONE = r"(?:infused|washed|steeped|macerated)"
_BEFORE = re.compile(
    rf"(?P<what>[^\W\d_][\w'’&, -]{{0,60}}?[ -])?{_DONE}[ ](?P<kind>[^\W\d_].*)", re.IGNORECASE
)
_BEHIND = re.compile(
    rf"(?P<kind>[^,(]+?)(?:[ ]*[,(][ ]*(?P<what>[^\W\d_][\w'’& -]*?[ -])?|[ ]+)(?P<done>{_DONE})"
    r"(?:[ ](?:with|in|on|by)[ ](?P<with>[^,()]+))?[ ]*\)?",
    re.IGNORECASE,
)


@dataclass(frozen=True, slots=True)
class Prepared:
    """Something made of a kind: what it is called, and the key of the kind."""

    name: str
    kind: str


def prepared_from(text: str, tree: FamilyTree) -> Prepared | None:
    """What a name behind its amount says was made of a kind; None where it says no such."""
    if not re.search(_DONE, text, re.IGNORECASE):
        return None
    plain = bare_name(text)
    if re.search(_DONE, plain, re.IGNORECASE) and named(plain, tree) is not None:
        return None  # rum infused with coconut is a kind by itself
    before = _BEFORE.fullmatch(plain)
    if before and (kind := _poured(before["kind"], tree)):
        return Prepared(plain, kind)
    for name, notes in without_notes(text):
        whole = f"{name}, {notes[0]}" if notes else name
        behind = _BEHIND.fullmatch(whole)
        if behind and (kind := _poured(behind["kind"], tree)):
            how = f"{behind['what'] or ''}{behind['done']}"
            how = f"{behind['with'].strip()}-{behind['done']}" if behind["with"] else how
            return Prepared(f"{how} {behind['kind'].strip()}", kind)
    return None


def _poured(name: str, tree: FamilyTree) -> str | None:
    found = match_name(name.strip(), tree)
    return found.key if found and found.key and tree[found.key].unit == "ml" else None


_WIDE = frozenset(
    {"syrup", "sugar-syrup", "fruit-syrup", "herb-syrup", "liqueur", "fruit-liqueur", "juice"}
    | {"citrus-juice", "cordial", "shrub", "mixer", "spirit", "fruit-puree", "brine", "bitters"}
    | {"herbal-liqueur", "brewed-tea"}
)
"""Groupings of which one is no stead for another."""

_TOLD_ELSEWHERE = re.compile(
    r"\b(?:(?:i|we|you)(?:['’]ve|[ ]have)?[ ](?:just[ ])?(?:made|mixed|cooked|did|prepped|prepared"
    r"|used|had|talked|showed|batched|cooled|bottled)"
    r"|(?:made|prepared|batched|from)[ ](?:it[ ])?(?:earlier|before|last|yesterday|this[ ]morning"
    r"|on[ ]\w+day)|earlier|from[ ]the[ ](?:freezer|fridge|other|last|previous)"
    r"|last[ ](?:week|time|night|episode|month))\b",
    re.IGNORECASE,
)


def which_one(
    text: str, said: str, key: str, notes: Sequence[str], *, tree: FamilyTree
) -> str | None:
    """The words by which a grouping is only pointed at; None where they name what is meant."""
    if key not in _WIDE:
        return None
    told = next((note for note in notes if _TOLD_ELSEWHERE.search(note)), None)
    pointed = re.search(
        rf"\b(?:that|this|our|my|your|those|the|its"
        rf"|their)[ ](?:[\w'-]+[ ])?{re.escape(folded(said))}\b",
        folded(text),
    )
    if told is None and pointed is None:
        return None
    words = pointed.group() if pointed else folded(said)
    return f"{words} {told}" if told else words
