"""A line of which one piece stands in an odd place, put in the usual one.

| said                                     | put                                   |
|------------------------------------------|---------------------------------------|
| 2 gin oz                                 | 2 oz gin                              |
| 1ozwhite port                            | 1 oz white port                       |
| aromatic bitters x2 dash                 | 2 dash aromatic bitters               |
| 1.5 oz rye .75 sweet vermouth            | 1.5 oz rye, .75 sweet vermouth        |
| 2 oz gin that's 2 oz gin                 | 2 oz gin                              |
| eight mint leaves maybe ten              | 8-10 mint leaves, maybe               |
| salt and black pepper to taste           | salt, to taste · black pepper, to taste |
| orange twist garnish                     | orange twist, garnish                 |
| 2 oz rum and for this i like jamaican    | 2 oz jamaican rum, for this i like    |

It is asked for where the usual order left a question; what it gives is read as any line is.
"""

from __future__ import annotations

import re
from collections.abc import Iterator

from barkeep.domain.amounts.amount import show_number
from barkeep.domain.amounts.measures import dimension
from barkeep.domain.amounts.units import BarUnits, unit_named
from barkeep.domain.ingredients.names import ADJUSTED, match_name, named
from barkeep.domain.ingredients.tree import FamilyTree
from barkeep.domain.spec_text.found import amount_at, amounts_in, names_in
from barkeep.domain.spec_text.traced import Traced, joined

_NUMBER = r"(?:[0-9]+(?:[.,][0-9]+)?|[.][0-9]+|[0-9]*[ ]?[¼½¾⅓⅔]|(?:[0-9]+[ ])?[1-7]/[2-8])"
_SHARES_OUT = frozenset({"volume", "mass", "part", "loose"})

_UNIT_LAST = re.compile(
    rf"(?P<number>{_NUMBER})[ ]+(?P<name>[^\W\d_][\w' -]*?)[ ]+(?P<unit>[^\W\d_]+)[ .]*", re.I
)
_RUN_TOGETHER = re.compile(
    rf"(?P<amount>{_NUMBER}[ ]?(?:oz|ml|cl|tsp|tbsp|dash(?:es)?))(?P<word>[^\W\d_]{{3,}})", re.I
)
_TIMES_UNIT = re.compile(
    rf"(?P<name>[^\W\d_][\w' -]*?)[ ,]+[x×][ ]?(?P<number>{_NUMBER})[ ]?(?P<unit>[^\W\d_]+)[ .]*",
    re.IGNORECASE,
)
_SAID_TWICE = re.compile(
    r"(?P<once>.{6,}?)[ ,.]+(?:(?:so|yes|yeah|yep|again|once[ ]more|i[ ]said)[ ,]+)*"
    r"(?:that['’]?s|that[ ]is|again|repeat|i[ ]said)[ ,]+(?P=once)[ .!]*",
    re.IGNORECASE,
)
_MAYBE_MORE = re.compile(
    r"(?P<front>.+?)[ ,(]+(?P<how>(?:or[ ])?(?:maybe|perhaps|possibly|even|up[ ]to))[ ]"
    r"(?P<more>[0-9]+|[^\W\d_]+)(?P<unit>[ ][^\W\d_]+)?[ .)!]*",
    re.IGNORECASE,
)
_BOTH_TO_TASTE = re.compile(
    r"(?:(?:a[ ](?:little|bit[ ]of)|some)[ ])?(?P<one>[^,;()]+?)[ ](?:and|&|[+])[ ]"
    r"(?P<other>[^,;()]+?)[ ,]+(?P<how>to[ ]taste)[ .]*",
    re.IGNORECASE,
)
_GARNISH_LAST = re.compile(r"(?P<what>[^,;()]+?)[ ](?P<use>garnish(?:es)?)[ .]*", re.IGNORECASE)
_WHICH_I_LIKE = re.compile(
    r"(?P<front>.+?)[ ,]+(?P<told>(?:and[ ])?(?:(?:for[ ](?:this|that|it)(?:[ ]one)?|here)[ ,]+)?"
    r"(?:i|we)(?:['’]m|['’]re|['’]ll)?[ ](?:really[ ]|usually[ ]|always[ ])?"
    r"(?:like|love|use|using|prefer|go[ ]with|going[ ]with|want|have|had)(?:[ ]to[ ]use)?)[ ]"
    r"(?:an?[ ]|the[ ]|some[ ])?(?P<which>[\w' -]+?)(?:[ ](?:one|kind|stuff|here"
    r"|for[ ]this))?[ .!]*",
    re.IGNORECASE,
)
_JUICE = re.compile(r"(?<=[^\W\d_])(?P<short>[ ](?:j|ju|jc))[ .]*$", re.IGNORECASE)


_NOT_TO_FORGET = re.compile(
    r"(?P<told>(?:(?:and|oh|also|please|but)[ ,]+)*(?:(?:don['’]?t|do[ ]not|not[ ]to)[ ]forget"
    r"|remember))[ ](?:about[ ])?(?:the|your|that|our|some)[ ](?P<what>[^,;()]+?)[ .!]*",
    re.IGNORECASE,
)


def _not_to_forget(said: Traced, tree: FamilyTree) -> tuple[Traced, ...]:
    """*Don't forget the lime* is lime, don't forget."""
    found = _NOT_TO_FORGET.fullmatch(said.text)
    if found is None or not _is_a_name(found["what"], tree):
        return ()
    return (joined((said.part(*found.span("what")), ", ", said.part(*found.span("told")))),)


_GOMME = re.compile(r"(?P<what>[^\W\d_]+)(?P<gap>[ ]+)(?P<gomme>gomme)(?:[ ]syrup)?\b", re.I)


def _as_its_syrup(said: Traced, tree: FamilyTree) -> tuple[Traced, ...]:
    """*Raspberry gomme* is a raspberry syrup, made with gum."""
    found = _GOMME.search(said.text)
    if found is None or not named(f"{found['what']} syrup", tree):
        return ()
    whole = said.said_instead(*found.span("gomme"), "syrup, gomme")
    if found.group().casefold().endswith("syrup"):
        gomme = said.part(*found.span("gomme"))
        parts = (said.part(0, found.start("gomme")), "syrup, ", gomme, said.part(found.end()))
        whole = joined(parts)
    return (whole,)


def put_in_place(said: Traced, tree: FamilyTree, units: BarUnits) -> Iterator[tuple[Traced, ...]]:
    """Each way in which a line may be put in the usual order, as the things that it then is."""
    ways = (
        _with_its_unit_first(said, tree, units),
        _put_apart(said, tree),
        _with_its_times_first(said, tree),
        _said_once(said),
        _as_range(said, units),
        _both_to_taste(said, tree),
        _as_garnish(said, tree),
        _not_to_forget(said, tree),
        _narrowed(said, tree),
        _with_its_juice(said, tree),
        _as_its_syrup(said, tree),
        _with_a_stop_between(said, tree, units),
    )
    yield from filter(None, ways)


def _is_a_name(text: str, tree: FamilyTree) -> bool:
    found = match_name(text, tree)
    return found is not None and found.key is not None and found.confidence >= ADJUSTED


def _is_a_measure(word: str) -> bool:
    unit = unit_named(word)
    return unit is not None and unit != "each" and dimension(unit) in _SHARES_OUT


def _with_its_unit_first(said: Traced, tree: FamilyTree, units: BarUnits) -> tuple[Traced, ...]:
    found = _UNIT_LAST.fullmatch(said.text)
    if found is None or not _is_a_measure(found["unit"]) or not _is_a_name(found["name"], tree):
        return ()
    if amount_at(f"{found['number']} {found['name']} ", units) is None:
        return ()
    number, name, unit = (said.part(*found.span(each)) for each in ("number", "name", "unit"))
    return (joined((number, " ", unit, " ", name)),)


def _put_apart(said: Traced, tree: FamilyTree) -> tuple[Traced, ...]:
    found = _RUN_TOGETHER.match(said.text)
    if found is None or found["word"].casefold() not in tree.words:
        return ()
    ends = found.end("amount")
    return (joined((said.part(0, ends), " ", said.part(ends))),)


def _with_its_times_first(said: Traced, tree: FamilyTree) -> tuple[Traced, ...]:
    found = _TIMES_UNIT.fullmatch(said.text)
    if found is None or not _is_a_measure(found["unit"]) or not _is_a_name(found["name"], tree):
        return ()
    name, number, unit = (said.part(*found.span(each)) for each in ("name", "number", "unit"))
    return (joined((number, " ", unit, " ", name)),)


def _said_once(said: Traced) -> tuple[Traced, ...]:
    found = _SAID_TWICE.fullmatch(said.text)
    return (said.part(*found.span("once")),) if found else ()


def _as_range(said: Traced, units: BarUnits) -> tuple[Traced, ...]:
    """*Eight mint leaves maybe ten*: the number behind is the other end of a range."""
    found = _MAYBE_MORE.fullmatch(said.text)
    more = amount_at(f"{found['more']} ", units) if found else None
    amounts = list(amounts_in(found["front"], units)) if found else []
    if found is None or more is None or more.unit is not None or len(amounts) != 1:
        return ()
    first = amounts[0].amount
    unit = found["unit"] and unit_named(found["unit"].strip())
    if first.high or more.high or more.value <= first.value or (unit and unit != first.unit):
        return ()
    if found["unit"] and not unit:
        return ()
    start = amounts[0].start
    ends = start + (first.unit_at if first.unit else first.end)
    low, high = (show_number(each, fractions=False, mark=".") for each in (first.value, more.value))
    whole = f"{low}-{high}"
    number = Traced(whole, (said.place(start),) * len(whole))
    front = said.part(0, found.end("front"))
    rest = front.part(ends).stripped()
    lead = front.part(0, start)
    return (joined((lead, number, " ", rest, ", ", said.part(*found.span("how")))),)


def _both_to_taste(said: Traced, tree: FamilyTree) -> tuple[Traced, ...]:
    found = _BOTH_TO_TASTE.fullmatch(said.text)
    if found is None or named(f"{found['one']} and {found['other']}", tree):
        return ()
    if not all(_is_a_name(found[each], tree) for each in ("one", "other")):
        return ()
    how = said.part(*found.span("how"))
    return tuple(joined((said.part(*found.span(each)), ", ", how)) for each in ("one", "other"))


def _as_garnish(said: Traced, tree: FamilyTree) -> tuple[Traced, ...]:
    found = _GARNISH_LAST.fullmatch(said.text)
    if found is None or next(names_in(found["what"], tree), None) is None:
        return ()
    return (joined((said.part(*found.span("what")), ", ", said.part(*found.span("use")))),)


def _narrowed(said: Traced, tree: FamilyTree) -> tuple[Traced, ...]:
    """*Rum and for this I like Jamaican*: what is said behind tells which one of the kind it is."""
    found = _WHICH_I_LIKE.fullmatch(said.text)
    name = next(reversed(list(names_in(found["front"], tree))), None) if found else None
    if found is None or name is None or found["front"][name.end :].strip():
        return ()
    kind, which = said.part(name.start, name.end), said.part(*found.span("which"))
    for words in (f"{which.text} {kind.text}", which.text):
        whole = match_name(words, tree)
        plain = whole is not None and whole.confidence >= ADJUSTED and not whole.stated
        if whole and whole.key and plain and not whole.maker:
            if whole.key == name.key or not tree.is_a(whole.key, name.key):
                return ()
            told = said.part(*found.span("told"))
            parts = (which,) if words == which.text else (which, " ", kind)
            return (joined((said.part(0, name.start), *parts, ", ", told)),)
    return ()


def _with_its_juice(said: Traced, tree: FamilyTree) -> tuple[Traced, ...]:
    """*0.5 oz lemon j* is half an ounce of lemon juice."""
    found = _JUICE.search(said.text)
    names = list(names_in(said.text[: found.start()], tree)) if found else []
    fruit = bool(found and names) and names[-1].end == (found.start() if found else -1)
    if found is None or not fruit or "juice" in said.text.casefold():
        return ()
    name = said.text[names[-1].start : names[-1].end]
    return (
        (said.said_instead(*found.span("short"), " juice"),) if named(f"{name} juice", tree) else ()
    )


def _with_a_stop_between(said: Traced, tree: FamilyTree, units: BarUnits) -> tuple[Traced, ...]:
    """*1.5 oz rye .75 sweet vermouth*: a number behind a name begins another thing."""
    begins = [
        found.start() + 1
        for found in re.finditer(rf"(?<=[^\W\d_])[ ](?={_NUMBER}[ ][^\W\d_])", said.text)
        if _ends_in_a_name(said.text[: found.start()], tree)
    ]
    first = amount_at(said.text, units)
    if not begins or first is None or first.unit is None or dimension(first.unit) != "volume":
        return ()
    ends = (*begins, len(said.text))
    parts = [said.part(0, begins[0]).stripped()]
    unit = said.text[first.unit_at : first.end].strip()
    for start, end in zip(begins, ends[1:], strict=True):
        part = said.part(start, end).stripped()
        amount = amount_at(part.text, units)
        if amount is None or next(names_in(part.text, tree), None) is None:
            return ()
        if amount.unit is None:
            part = joined((part.part(0, amount.end), f" {unit} ", part.part(amount.end).stripped()))
        parts.append(part)
    return tuple(parts)


def _ends_in_a_name(text: str, tree: FamilyTree) -> bool:
    last = next(reversed(list(names_in(text, tree))), None)
    return last is not None and last.end == len(text)
