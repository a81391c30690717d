"""A line whose words stand in no usual order, said again in the usual one: amount, name, the rest.

| said                                                 | said again                               |
|------------------------------------------------------|------------------------------------------|
| we used the bourbon two ounces of that               | two ounces bourbon, we used the, of that |
| tequila reposado two ounces and half an ounce mezcal | two ounces … · half an ounce mezcal      |
| you want an ounce maybe an ounce and a quarter of rye | 1-1.25 oz rye, you want, maybe          |
| grab your mezcal and pour forty five mils            | forty five mils mezcal, grab your, and pour |

It is asked for where the usual order left a question, and answers only where every word of the
line is accounted for: an amount, a name, a maker's, or one of `resources/line_words.toml`, which
name nothing. What it gives is read as any line is, so that whatever a line leaves open is asked
about all the same.
"""

from __future__ import annotations

import re
from collections.abc import Iterator, Sequence
from dataclasses import dataclass, replace

from barkeep.domain.amounts.amount import ReadAmount, show_number
from barkeep.domain.amounts.measures import dimension
from barkeep.domain.amounts.units import BarUnits, unit_named
from barkeep.domain.ingredients.line_words import tells_nothing_else
from barkeep.domain.ingredients.names import ADJECTIVES, ADJUSTED, match_name, states
from barkeep.domain.ingredients.tree import FamilyTree
from barkeep.domain.phrases import folded
from barkeep.domain.spec_text.found import (
    WORD,
    FoundAmount,
    FoundName,
    amounts_in,
    is_a_number,
    names_in,
    share_at,
)
from barkeep.domain.spec_text.traced import Traced, joined

MOST_WORDS = 40
"""Words; whoever says more on one line tells a story."""

_REACH = 3
"""So many words on either side of a name are tried with it."""

_PUT_RIGHT = frozenset(
    {"sorry", "scratch", "wait", "oops", "correction", "rather", "nope", "strike", "meant", "pardon"}
    | {"instead"}
)
"""Words of a correction: what they put right is found by whoever reads corrections, or asked."""

_OR_MORE = re.compile(
    r"[ ,]*(?:(?:or|to|maybe|perhaps|even|up|possibly|sometimes|or[ ]even|or[ ]maybe|and|make[ ]it"
    r"|go|as|much|as|more|like|say|probably|closer)[ ,]+)*",
    re.IGNORECASE,
)
"""What stands between the two ends of a range, or between an amount and what it may be."""

_STOPS = re.compile(r"[ ]*[,;:()\[\]–—|/.!?][ ,;:()\[\]–—|/.!?]*|[ ]+-+[ ]+")

_TIME = re.compile(
    r"(?:[0-9]+(?:[.,][0-9]+)?|an?|one|two|three|four|five|six|eight|ten|twelve|fifteen|twenty|thirty"
    r"|forty|sixty)(?:(?:[ ]?[-–][ ]?|[ ](?:to|or)[ ])(?:[0-9]+|two|three|four|five|six|ten|fifteen"
    r"|twenty|thirty))?[ -]?(?:seconds?|secs?|minutes?|mins?|hours?|hrs?|days?|weeks?|months?"
    r"|times?|°[ ]?[CF]?|degrees)\b",
    re.IGNORECASE,
)
"""*Ten seconds*, *2-3 hours*: numbers that are no amount of anything poured."""


@dataclass(frozen=True, slots=True)
class _Thing:
    """One thing of a line: its amount, if any, its name, and from where to where it is told of."""

    amount: FoundAmount | None
    name: FoundName
    start: int
    end: int


def said_freely(said: Traced, tree: FamilyTree, units: BarUnits) -> tuple[Traced, ...]:
    """The line as one for each of its things, in the usual order; none where a word is left over."""
    said = said.stripped()
    words = list(WORD.finditer(said.text))
    if not 1 < len(words) <= MOST_WORDS:
        return ()
    if any(folded(word.group()) in _PUT_RIGHT for word in words):
        return ()
    text = _TIME.sub(lambda time: "~" * len(time.group()), said.text)
    amounts = _amounts(text, units, tree)
    names = [each for each in names_in(text, tree) if not _inside(each, amounts)]
    names = list(_widened(text, names, amounts, tree))
    spans = [(each.start, each.end) for each in (*amounts, *names)]
    left = [word for word in WORD.finditer(text) if not _covered(word.span(), spans)]
    said_units = {each.amount.unit for each in amounts if each.amount.unit}
    makers = {
        word.span()
        for word in left
        if not _is_accounted_for(word.group()) and unit_named(word.group()) not in said_units
    }
    if makers and not _are_a_makers(text, makers, names, tree):
        return ()
    things = _things(text, amounts, names, tree)
    return tuple(_in_order(said, each, makers) for each in things)


def _is_accounted_for(word: str) -> bool:
    plain = folded(word)
    if is_a_number(word) or unit_named(plain):
        return False
    return plain in ADJECTIVES or states(plain) or tells_nothing_else(plain)


def _amounts(text: str, units: BarUnits, tree: FamilyTree) -> list[FoundAmount]:
    """The amounts of a line, two that are the ends of one range as one, and none said twice."""
    found: list[FoundAmount] = []
    for each in amounts_in(text, units):
        last = found[-1] if found else None
        between = text[last.end : each.start] if last else ""
        if last and _OR_MORE.fullmatch(between):
            both = _as_range(last, each, between)
            if both is None:
                found.append(each)
            else:
                found[-1] = both
        else:
            found.append(each)
    return found


def _as_range(one: FoundAmount, other: FoundAmount, between: str) -> FoundAmount | None:
    """*An ounce maybe an ounce and a quarter*, *six maybe eight*."""
    first, second = one.amount, other.amount
    alike = first.unit == second.unit or first.unit is None
    if not alike or first.high or second.high or not between.strip(" ,"):
        return None
    if second.value <= first.value:
        return None
    read = replace(second, value=first.value, high=second.value, end=other.end - one.start)
    return FoundAmount(one.start, other.end, read)


def _inside(name: FoundName, amounts: Sequence[FoundAmount]) -> bool:
    return any(each.start < name.end and name.start < each.end for each in amounts)


def _covered(span: tuple[int, int], spans: Sequence[tuple[int, int]]) -> bool:
    return any(start < span[1] and span[0] < end for start, end in spans)


def _widened(
    text: str, names: Sequence[FoundName], amounts: Sequence[FoundAmount], tree: FamilyTree
) -> Iterator[FoundName]:
    """Each name with the words beside it that narrow it: *scotch blended*."""
    taken = [(each.start, each.end) for each in (*amounts, *names)]
    for name in names:
        before = _words_beside(text[: name.start], taken, 0, backwards=True)
        behind = _words_beside(text[name.end :], taken, name.end, backwards=False)
        yield _widest(text, name, before=before, behind=behind, tree=tree)


def _words_beside(
    text: str, taken: Sequence[tuple[int, int]], at: int, *, backwards: bool
) -> list[int]:
    """Where each of the words beside a place begins, or ends, up to a stop or what is found."""
    found: list[int] = []
    words = list(WORD.finditer(text))
    edge = len(text) if backwards else 0
    for word in reversed(words) if backwards else words:
        start, end = word.span()
        gap = text[end:edge] if backwards else text[edge:start]
        if gap.strip(" -") or _covered((start + at, end + at), taken) or len(found) == _REACH:
            break
        found.append(start + at if backwards else end + at)
        edge = start if backwards else end
    return found


def _widest(
    text: str, name: FoundName, *, before: Sequence[int], behind: Sequence[int], tree: FamilyTree
) -> FoundName:
    for start in (*reversed(before), name.start):
        for end in (*reversed(behind), name.end):
            if (start, end) == (name.start, name.end):
                break
            found = match_name(text[start:end], tree)
            if found and found.key and found.confidence >= ADJUSTED and not found.stated:
                if tree.is_a(found.key, name.key) or start == name.start or end == name.end:
                    return FoundName(start, end, found.key)
    return name


def _are_a_makers(
    text: str, words: set[tuple[int, int]], names: Sequence[FoundName], tree: FamilyTree
) -> bool:
    """Whether the words that nobody knows stand together right before what is bought."""
    spans = sorted(words)
    if len(spans) > 4:
        return False
    for (_, end), (start, _) in zip(spans, spans[1:], strict=False):
        if text[end:start].strip(" &'’-") not in ("", "and"):
            return False
    after = next((each for each in names if each.start >= spans[-1][1]), None)
    if after is None or text[spans[-1][1] : after.start].strip():
        return False
    whole = match_name(text[spans[0][0] : after.end], tree)
    return whole is not None and whole.key is not None and bool(whole.maker)


def _things(
    text: str, amounts: Sequence[FoundAmount], names: Sequence[FoundName], tree: FamilyTree
) -> list[_Thing]:
    """Each thing with its amount; none where it is not plain which amount is whose."""
    measured = [each for each in amounts if each.amount.unit is not None]
    counted = measured or list(amounts)
    if not counted or not names:
        return []
    pairs = _paired(text, counted, names, tree)
    if pairs is None:
        return []
    ends = _borders(text, pairs)
    starts = (0, *ends)
    return [
        _Thing(amount, name, start, end)
        for (amount, name), start, end in zip(pairs, starts, (*ends, len(text)), strict=True)
    ]


def _paired(
    text: str, amounts: Sequence[FoundAmount], names: Sequence[FoundName], tree: FamilyTree
) -> list[tuple[FoundAmount, FoundName]] | None:
    """Each amount with its name: the next one, or the one before where none follows."""
    first = names[0].start < amounts[0].start
    pairs: list[tuple[FoundAmount, FoundName]] = []
    for number, amount in enumerate(amounts):
        last = amounts[number - 1].end if number else 0
        until = amounts[number + 1].start if number + 1 < len(amounts) else len(text)
        before = [each for each in names if last <= each.start and each.end <= amount.start]
        after = [each for each in names if amount.end <= each.start and each.end <= until]
        used = {id(name) for _, name in pairs}
        before = [each for each in before if id(each) not in used]
        near = after[0] if after else None
        of_it = near is not None and _belongs(text[amount.end : near.start])
        if before and (not near or (first and not of_it)):
            pairs.append((amount, before[-1]))
        elif near is not None:
            pairs.append((amount, near))
        else:
            return None
    return pairs


def _belongs(gap: str) -> bool:
    """Whether a name right behind an amount is what it measures: *two ounces of the rye*."""
    plain = gap.strip()
    return not plain or all(
        folded(word.group()) in ADJECTIVES | {"of", "the", "a", "an", "your", "our", "my"}
        for word in WORD.finditer(gap)
    ) and not _STOPS.search(gap)


def _borders(text: str, pairs: Sequence[tuple[FoundAmount, FoundName]]) -> tuple[int, ...]:
    """Where what is told of one thing ends and of the next begins."""
    found: list[int] = []
    for (one_amount, one_name), (amount, name) in zip(pairs, pairs[1:], strict=False):
        ends = max(one_amount.end, one_name.end)
        begins = min(amount.start, name.start)
        if begins < ends:
            return ()
        between = text[ends:begins]
        stop = re.search(r"[,;.:/|–—]|\b(?:and|then|plus|with|now)\b", between, re.IGNORECASE)
        found.append(ends + (stop.start() if stop else 0 if len(between.split()) < 3 else len(between)))
    return tuple(found)


def _in_order(said: Traced, thing: _Thing, makers: set[tuple[int, int]]) -> Traced:
    """One thing in the usual order: its amount, its name with its maker, and all else behind."""
    name_at = thing.name.start
    own = [start for start, end in makers if thing.start <= start and end <= name_at]
    begins = min(own) if own and own[-1] < name_at else name_at
    whole = [(begins, thing.name.end)]
    parts: list[Traced | str] = []
    if thing.amount is not None:
        whole.append((thing.amount.start, thing.amount.end))
        parts = [_written(said, thing.amount), " "]
    parts.append(said.part(begins, thing.name.end))
    at = thing.start
    for start, end in (*sorted(whole), (thing.end, thing.end)):
        for chunk in _chunks(said.part(at, max(at, start))):
            parts += [", ", chunk]
        at = max(at, end)
    return joined(parts)


def _written(said: Traced, amount: FoundAmount) -> Traced:
    """The words of an amount, a range in figures."""
    part = said.part(amount.start, amount.end).stripped()
    read = amount.amount
    if read.high is None:
        return part
    low, high = (show_number(each, fractions=False, mark=".") for each in (read.value, read.high))
    words = f"{low}-{high} {read.unit or ''}".strip()
    return Traced(words, (part.place(0),) * len(words))


def _chunks(part: Traced) -> Iterator[Traced]:
    """The pieces of what is told between stops, without words that only join them."""
    start = 0
    for stop in (*_STOPS.finditer(part.text), None):
        piece = part.part(start, stop.start() if stop else None).stripped()
        start = stop.end() if stop else start
        words = [folded(each.group()) for each in WORD.finditer(piece.text)]
        if words and not all(each in _ONLY_JOINS for each in words):
            yield piece


_ONLY_JOINS = frozenset({"of", "and", "the", "a", "an", "then", "plus", "with", "so", "it"})
