"""Several ingredients on one line, each made a line of its own.

| written                                        | lines                                   |
|------------------------------------------------|-----------------------------------------|
| 2 oz gin and 1 oz lime juice; 2 oz gin, 1 oz … | 2 oz gin · 1 oz lime juice              |
| 2 oz each gin and vermouth; gin and vermouth, an ounce of each | the amount before each  |
| equal parts gin, red bitter and vermouth       | 1 part each                             |
| 2 oz split between rye and bourbon             | 1 oz rye · 1 oz bourbon                 |
| two parts gin to one of vermouth               | 2 parts gin · 1 part vermouth           |
| two of bourbon, one of lemon, all ounces       | 2 ounces bourbon · 1 ounce lemon        |
"""

from __future__ import annotations

import re
from collections.abc import Iterator, Mapping, Sequence
from itertools import pairwise

from barkeep.domain.amounts.amount import ReadAmount, show_amount, unit_at
from barkeep.domain.amounts.measures import dimension
from barkeep.domain.amounts.spoken import NUMBER_WORDS
from barkeep.domain.amounts.units import US_UNITS, BarUnits, unit_named
from barkeep.domain.ingredients.tree import FamilyTree, words_of_a_name
from barkeep.domain.phrases import folded
from barkeep.domain.spec_text.around_the_name import begins_an_item
from barkeep.domain.spec_text.choices import BETWEEN_THINGS, things_in
from barkeep.domain.spec_text.found import (
    WORD,
    FoundAmount,
    FoundName,
    amount_at,
    amounts_in,
    is_a_number,
    names_in,
    share_at,
)
from barkeep.domain.spec_text.traced import Traced, joined

_BREAK = re.compile(
    r"[ ]*[;|][ ]*(?:(?:and|then|plus)\b[ ,]*)*"
    r"|[ ]*,(?![0-9]|[ ]*to[ ]taste)[ ]*(?:(?:and|then|plus)\b[ ,]*)*"
    r"|[ ](?:and[ ]then|and|then|plus|with)[ ]|[ ]?[+&][ ]?|[ ]/[ ]|[ ]–[ ]"
    r"|(?<=[a-z]{3})(?<!approx)(?<!max)(?<!min)[.][ ]+(?=\S)",
    re.IGNORECASE,
)
_NUMBERS = NUMBER_WORDS - {"of", "the", "to", "or", "and"}

_EACH = re.compile(r"[ ]*[,:]?[ ]*(?:of[ ])?each(?:[ ]of)?\b[ :]*", re.IGNORECASE)
_EACH_ENDS = re.compile(
    r"[ ]*(?:(?:of[ ])?each|apiece)(?:[ ]of[ ](?:them|those|these))?[ .!]*", re.IGNORECASE
)
_EQUAL = re.compile(
    r"(?:(?:in|at)[ ])?equal[ ](?:parts|measures|amounts|quantities|proportions)(?:[ ]of)?"
    r"(?:[ ](?:all[ ](?:of[ ])?(?:(?:the|these|them)\b[ ]?)?(?:two|three|four)?|both(?:[ ]of)?"
    r"|each(?:[ ]of)?"
    r"|the[ ](?:two|three|four)|these(?:[ ](?:two|three|four))?|everything)(?=[ :,]))?[ :,]*",
    re.IGNORECASE,
)
_SPLIT = re.compile(
    r"[ ]*,?[ ]*(?:(?:evenly|equally)[ ])?(?:split|divided|shared)"
    r"(?:[ ](?:evenly|equally|half[ ]and[ ]half|down[ ]the[ ]middle|50/50))?"
    r"[ ](?:between|among|amongst|across)[ ]",
    re.IGNORECASE,
)
_SPLIT_OF = re.compile(
    r"(?:evenly[ ]|equally[ ])?(?:split|divided?|shared?)[ ](?:evenly[ ]|equally[ ])?"
    r"(?:between|among|amongst|across)?[ ]*",
    re.IGNORECASE,
)
"""*Split between 1 oz gin and vodka*: the amount that is shared stands behind."""
_TO = re.compile(r"[ ,]*\bto[ ](?=\S)", re.IGNORECASE)
_ALL_UNITS = re.compile(r"[ ]*,[ ]*all(?:[ ]in|[ ]of[ ]them)?[ ](?P<unit>[\w ]+?)[ .]*$", re.I)
_AND_HALVES = re.compile(
    r"(?:[ ]*[,(:–-]+[ ]*|[ ,]+(?:(?:actually|no|sorry)[ ,]+)?(?:let's[ ])?split[ ](?:it"
    r"|that)[ ,]+|[ ](?=half[ ](?!(?:an?|of|the|and|ounces?|oz)\b)))"
    r"(?:half|(?P<whole>one))(?:[ ](?:of[ ](?:that|it|them)|and[ ]half))?[ ](?P<one>[\w' -]+?)"
    r"[ ]*,?[ ](?:and[ ])?(?(whole)one|half)(?:[ ]of[ ](?:that|it"
    r"|them))?[ ](?P<other>[\w' -]+?)[ ).]*$",
    re.IGNORECASE,
)
_LIST_BEGINS = re.compile(r"[ ]*(?:of[ ])?(?:the[ ]|an?[ ])?", re.IGNORECASE)


def items_in(said: Traced, tree: FamilyTree, units: BarUnits) -> tuple[Traced, ...]:
    """The lines that one line is; only itself where it is one, or where that is not sure."""
    said = said.stripped()
    if len(_COUNTED.findall(said.text)) < 2 and not _USED.search(said.text):
        return (said,)
    for way in (
        _at_semicolons,
        _sharing,
        _in_halves,
        _in_proportion,
        _all_of_one_unit,
        _garnishing,
        _some_kept,
    ):
        found = way(said, tree, units)
        if found and _nothing_left(said, found):
            return found
    found = _parted(said, tree, units)
    return found if _nothing_left(said, found) else (said,)


_ONLY_PARTING_LIST = """
    and then plus each of equal equally evenly parts part measures amounts quantities proportions
    in at garnish garnished for as split divided shared between among amongst across half down the
    middle to all them that it apiece also with ratio mix mixture blend it's those these a an
    other more actually let's do no sorry
"""
_ONLY_PARTING = frozenset(_ONLY_PARTING_LIST.split())
"""Words that part the things of a line and are no part of any."""


def _nothing_left(said: Traced, items: Sequence[Traced]) -> bool:
    """Whether each word of a line stands in one of its items, or only parts them."""
    there = {place for item in items for place in item.places}
    kept = {word for item in items for word in folded(item.text).split()}
    use = _SOME_KEPT.search(said.text)
    ends = use.start("use") if use and len(items) == 2 else len(said.text)
    return all(
        said.places[word.start()] in there
        or word.start() >= ends
        or folded(word.group()) in _ONLY_PARTING | kept
        or is_a_number(word.group())
        or unit_named(word.group()) is not None
        for word in WORD.finditer(said.text)
    )


def _at_semicolons(said: Traced, tree: FamilyTree, units: BarUnits) -> tuple[Traced, ...]:
    """*Hot sauce, 4 dashes; celery salt, a pinch*: each side is a line by itself."""
    if ";" not in said.text:
        return ()
    ends = [each.start() for each in re.finditer(";", said.text)]
    begins = [0, *(each + 1 for each in ends)]
    parts = [
        said.part(start, end).stripped()
        for start, end in zip(begins, (*ends, len(said.text)), strict=True)
    ]
    if not all(begins_an_item(each.text, tree, units) for each in parts):
        return ()
    return tuple(item for each in parts for item in items_in(each, tree, units))


def _sharing(said: Traced, tree: FamilyTree, units: BarUnits) -> tuple[Traced, ...]:
    """One amount for each thing of a list: *each*, *equal parts*, *split between*."""
    text = said.text
    equal = _EQUAL.search(text)
    if equal and not any(True for _ in amounts_in(_without(text, equal), units)):
        before, after = said.part(0, equal.start()), said.part(equal.end())
        things = after if after.text.strip(" .") else before
        return _of_each(things, "1 part", tree)
    if equal and equal.start() == 0:
        rest = said.part(equal.end())
        first = amount_at(rest.text, units)
        if first is None or first.unit is None:
            return _sharing(rest, tree, units)
        of = _LIST_BEGINS.match(rest.text, first.end)
        things = rest.part(of.end() if of else first.end)
        return _of_each(things, rest.text[: first.end].strip(), tree)
    split = _SPLIT.search(text)
    for amount in amounts_in(text, units):
        if amount.amount.unit is None or amount.amount.unit == "each":
            continue
        words = text[amount.start : amount.end]
        if split and amount.end <= split.start():
            return _split(said, amount, split.end(), tree=tree, units=units)
        each = _EACH.match(text, amount.end)
        ends = _EACH_ENDS.fullmatch(text, amount.end)
        if ends and text[: amount.start].strip():
            found = _of_each(said.part(0, amount.start), words, tree)
        elif each:
            found = _of_each(said.part(each.end()), text[: amount.end].strip(), tree, units)
        else:
            last = re.search(r"[ ]each[ .]*$", text, re.IGNORECASE)
            if last is None or amount.end >= last.start():
                continue
            begins = _LIST_BEGINS.match(text, amount.end)
            start = begins.end() if begins else amount.end
            found = _of_each(
                said.part(start, last.start()), text[: amount.end].strip(), tree, units
            )
        if found:
            return found
    return ()


def _without(text: str, found: re.Match[str]) -> str:
    return f"{text[: found.start()]} {text[found.end() :]}"


def _split(
    said: Traced, amount: FoundAmount, start: int, *, tree: FamilyTree, units: BarUnits
) -> tuple[Traced, ...]:
    between = said.text[amount.end : start]
    if next(names_in(between, tree), None) is not None:
        return ()  # two ounces of rum, split between two glasses
    things = said.part(start)
    listed = things_in(things.text.strip(" ."), tree)
    if len(listed) < 2 or amount.amount.high is not None:
        return ()
    share = amount.amount.value / len(listed)
    return _of_each(things, show_amount(share, str(amount.amount.unit), units), tree)


_SHARED_BY = re.compile(
    r"[ ]*(?:of[ ])?(?:(?:evenly|equally)[ ])?(?:(?:between|among|amongst|across)[ ])?", re.I
)


def likely_split(text: str, tree: FamilyTree, units: BarUnits) -> str | None:
    """*Split between 1 oz gin and vodka* with the share of each; None where it says no such."""
    begins = _SPLIT_OF.match(text)
    amount = amount_at(text[begins.end() :], units) if begins else None
    if begins is None or amount is None or amount.unit in (None, "each") or amount.high:
        return None
    of = _SHARED_BY.match(text, begins.end() + amount.end)
    listed = things_in(text[of.end() if of else 0 :].strip(" ."), tree)
    if len(listed) < 2 or any(next(names_in(part, tree), None) is None for part, _ in listed):
        return None
    share = show_amount(amount.value / len(listed), amount.unit, units)
    return ", ".join(f"{share} {part}" for part, _ in listed)


_THEN = re.compile(r"(?:(?:and|then|plus)[ ])*", re.IGNORECASE)
_NUMBER_FIRST = re.compile(
    rf"(?:(?:and|then|plus)[ ])*(?P<number>[0-9¼-¾]"
    rf"|(?:{'|'.join(_NUMBERS - {'each', 'equal'})})\b)",
    re.IGNORECASE,
)


def _begins_with_amount(part: str) -> bool:
    """Whether a thing of a list has an amount of its own: *and then fifteen of vermouth*."""
    begins = _NUMBER_FIRST.match(part)
    found = amount_at(part[begins.start("number") :], US_UNITS) if begins else None
    if begins is None or found is None:
        return False
    return found.unit is not None or part[begins.start("number") + found.end :].startswith(" of ")


def _of_each(
    things: Traced, amount: str, tree: FamilyTree, units: BarUnits | None = None
) -> tuple[Traced, ...]:
    """Each thing of a list behind the amount; none where it is fewer than two known things."""
    bare = things.part(0, len(things.text.rstrip(" .,:–-")))
    listed = things_in(bare.text, tree)
    if _DASHED.search(amount):
        listed = tuple(_all_bitters(listed))
    further = next((place for part, place in listed[2:] if _begins_with_amount(part)), None)
    if further is not None and units is not None:
        shared = _of_each(bare.part(0, further), amount, tree)
        if not shared:
            return ()
        after = _THEN.match(bare.text, further)
        rest = bare.part(after.end() if after else further)
        unit = amount_at(f"{amount} ", units)
        written = amount[unit.unit_at : unit.end].strip() if unit else ""
        return (
            *shared,
            *_in_the_unit_before([*_parted(rest, tree, units)], tree, units, before=written),
        )
    if _may_be_one(bare.text, tree):
        return ()
    if len(listed) < 2 or any(next(names_in(part, tree), None) is None for part, _ in listed):
        return ()
    return tuple(joined((f"{amount} ", _written(part, bare.part(at)))) for part, at in listed)


_DASHED = re.compile(r"\b(?:dash|drop)", re.IGNORECASE)


def _all_bitters(listed: Sequence[tuple[str, int]]) -> Iterator[tuple[str, int]]:
    """*1 dash each orange and aromatic bitters*: what is dashed beside bitters is bitters too."""
    bitters = bool(listed) and listed[-1][0].casefold().endswith(" bitters")
    for part, at in listed:
        whole = f"{part} bitters"
        yield (whole if bitters and part.count(" ") < 2 and "bitters" not in part else part), at


def _written(words: str, said: Traced) -> Traced:
    """The words of a thing, which begin where `said` does and may be more than stand there."""
    places = said.places[: len(words)]
    return Traced(words, places + places[-1:] * (len(words) - len(places)))


def _may_be_one(text: str, tree: FamilyTree) -> bool:
    """Whether some only narrow what stands before: *liqueur, raspberry* is one thing or two.

    *Rum and pineapple* are two.
    """
    listed = [each for each in BETWEEN_THINGS.split(text) if each.strip()]
    gaps = [each.group().strip() for each in BETWEEN_THINGS.finditer(text)]
    return any(
        words_of_a_name(folded(" ".join(listed[start : start + count]))) in tree.by_words
        and set(gaps[start : start + count - 1]) != {"and"}
        for count in (2, 3)
        for start in range(len(listed) - count + 1)
    )


def _in_halves(said: Traced, tree: FamilyTree, units: BarUnits) -> tuple[Traced, ...]:
    """*Sixty ml of rum, half of that white and half of that dark*."""
    halves = _AND_HALVES.search(said.text)
    amount = next(amounts_in(said.text, units), None) if halves else None
    if halves is None or amount is None or amount.amount.unit is None or amount.amount.high:
        return ()
    if halves["whole"] and amount.amount.value != 2.0:
        return ()
    kind = said.part(amount.end, halves.start())
    of = _LIST_BEGINS.match(kind.text)
    kind = kind.part(of.end() if of else 0)
    share = show_amount(amount.amount.value / 2, amount.amount.unit, units)
    found = []
    for group in ("one", "other"):
        part = said.part(*halves.span(group))
        known = next(names_in(part.text, tree), None)
        whole = known is not None and known.start == 0 and known.end == len(part.text)
        found.append(joined((f"{share} ", part) if whole else (f"{share} ", part, " ", kind)))
    return tuple(found)


_ONE_TO_TEN = "(?:[0-9]{1,2}|one|two|three|four|five|six|seven|eight|nine|ten)"
_GARNISH_ENDS = re.compile(
    r"[ ,(–-]+(?:(?:to|for|as)[ ](?:an?[ ]|the[ ])?)?garnish(?:es)?[ .)]*$", re.IGNORECASE
)
_GARNISH_BEGINS = re.compile(
    r"(?:(?:and|then)[ ])*(?:for[ ](?:the[ ]|an?[ ])?)?garnish(?:ed)?"
    r"(?:[ ](?:(?:it|that|this)[ ])?with"
    r"|[ ]*[:–-])[ ]*",
    re.IGNORECASE,
)


def _garnishing(said: Traced, tree: FamilyTree, units: BarUnits) -> tuple[Traced, ...]:
    """Several garnishes told of at once: *pineapple leaves and a cherry to garnish*."""
    ends, begins = _GARNISH_ENDS.search(said.text), _GARNISH_BEGINS.match(said.text)
    if not ends and not begins:
        return ()
    listed = said.part(begins.end() if begins else 0, ends.start() if ends else None)
    spans = list(_at_breaks(listed.text, tree, units))
    parts = [listed.part(*span).stripped() for span in spans]
    if len(parts) < 2 or not all(_is_one_thing(each.text, tree, units) for each in parts):
        return ()
    return tuple(joined(("garnish with ", each)) for each in parts)


def _still_garnishing(
    items: Sequence[Traced], tree: FamilyTree, units: BarUnits
) -> Iterator[Traced]:
    """*2 oz gin, garnish with an olive and a cherry*: what follows a garnish is one too."""
    begun = False
    for item in items:
        begins = _GARNISH_BEGINS.match(item.text) is not None
        begun = begins or (begun and _is_one_thing(item.text, tree, units))
        yield joined(("garnish with ", item)) if begun and not begins else item


def _is_one_thing(text: str, tree: FamilyTree, units: BarUnits) -> bool:
    """Whether a text is the name of something, counted or not, and is not poured."""
    names = list(names_in(text, tree))
    amounts = [each.amount.unit for each in amounts_in(text, units)]
    measured = any(unit and dimension(unit, units) in ("volume", "part") for unit in amounts)
    return len(names) == 1 and not measured and not _USED.search(text)


_SOME_KEPT = re.compile(
    r"[ ,(]+(?:and|plus|with|[+])[ ,]+"
    r"(?P<more>(?:an?(?:other)?|one|two|three|four|[0-9]{1,2}|the[ ]other[ ]half)"
    r"(?:[ ](?:nice|big|extra|more|whole|small|large|good|pretty|sprigs?|lea(?:f|ves)"
    r"|slices?|wedges?"
    r"|pieces?|ribbons?|strips?|curls?|spears?|rounds?|twists?|of[ ](?:them|those|it)))*)"
    r"(?P<use>[ ,]+(?:to|for|as|goes|reserved|kept|on|set)[ ][\w ]*?\b(?:garnish|top|serve"
    r"|decorate)\b.*)$",
    re.IGNORECASE,
)


def _some_kept(said: Traced, tree: FamilyTree, units: BarUnits) -> tuple[Traced, ...]:
    """*6 raspberries, plus 2 to garnish*: some more of the same are a garnish."""
    kept = _SOME_KEPT.search(said.text)
    first = said.part(0, kept.start()) if kept else said
    names = list(names_in(first.text, tree)) if kept else []
    if kept is None or len(names) != 1 or not begins_an_item(first.text, tree, units):
        return ()
    more = said.part(*kept.span("more"))
    if again := re.search(r"[ ](?:more|other)$", more.text, re.IGNORECASE):
        more = more.part(0, again.start())
    if more.text.casefold().startswith("another"):
        more = more.said_instead(0, len("another"), "one")
    shape = re.search(r"(?:ribbon|strip|curl|spear|round)s?$", more.text, re.IGNORECASE)
    if shape:
        name = first.text[names[0].start : names[0].end]
        count, what = more.part(0, shape.start()).stripped(), more.part(shape.start())
        return (first, joined(("garnish with ", count, f" piece {name}, ", what)))
    name = re.sub(r"^half[ ]an?[ ]", "", first.text[names[0].start : names[0].end], flags=re.I)
    piece = re.search(r"(?:sprig|lea(?:f|ve)|slice|wedge|piece)s?$", more.text, re.IGNORECASE)
    if piece:
        name = re.sub(
            r"[ ](?:lea(?:f|ves)|sprigs?|slices?|wedges?)$", "", name, flags=re.IGNORECASE
        )
    if more.text.casefold().startswith("the other half"):
        more = more.said_instead(0, len(more.text), "half a")
    return (first, joined(("garnish with ", more, f" {name}")))


_RATIO = re.compile(
    rf"(?:(?:it's|at|in|a|an)[ ])*(?P<first>{_ONE_TO_TEN})"
    rf"(?P<other>(?:[ ]?:[ ]?|[ ]to[ ])(?P<second>{_ONE_TO_TEN})"
    r"(?:[ ](?:ratio|mix|blend|split|mixture))?[ ,:]*(?:[ ]of)?)(?=[ ][^,]+?(?P<to>[ ]to[ ]))",
    re.IGNORECASE,
)


def _in_parts(said: Traced, ratio: re.Match[str]) -> Traced:
    """*3:1 gin to vermouth* as *3 parts gin to 1 parts vermouth*."""
    begins, ends = ratio.span("to")
    said = said.said_instead(begins, ends, f" to {ratio['second']} parts ")
    begins, ends = ratio.span("other")
    return said.said_instead(begins, ends, " parts").part(ratio.start("first"))


def _in_proportion(said: Traced, tree: FamilyTree, units: BarUnits) -> tuple[Traced, ...]:
    """*Two parts gin to one of vermouth (to one of …)*."""
    ratio = _RATIO.match(said.text)
    if ratio:
        said = _in_parts(said, ratio)
    first = amount_at(said.text, units)
    if first is None or first.unit != "part" or not _TO.search(said.text):
        return ()
    unit = said.text[first.unit_at : first.end].strip()
    parts: list[Traced] = []
    start = 0
    for gap in (*_TO.finditer(said.text), None):
        part = said.part(start, gap.start() if gap else None)
        start = gap.end() if gap else start
        amount = amount_at(part.text, units)
        if amount is None or next(names_in(part.text, tree), None) is None:
            return ()
        if amount.unit is None:
            part = joined((part.part(0, amount.end), f" {unit} ", part.part(amount.end)))
        elif amount.unit != "part":
            return ()
        parts += _parted(part.stripped(), tree, units)
    return tuple(parts) if len(parts) > 1 else ()


def _all_of_one_unit(said: Traced, tree: FamilyTree, units: BarUnits) -> tuple[Traced, ...]:
    """*Two of bourbon, one of lemon and three quarters of simple, all ounces*."""
    last = _ALL_UNITS.search(said.text)
    if last is None:
        return ()
    found = amount_at(f"1 {last['unit']} ", units)
    if found is None or found.unit is None or dimension(found.unit, units) != "volume":
        return ()
    parts = []
    listed = said.part(0, last.start())
    for start, end in _at_breaks(listed.text, tree, units):
        part = listed.part(start, end)
        number = next((each for each in amounts_in(part.text, units)), None)
        share = share_at(part.text) if number is None else None
        if share is not None:
            parts.append(joined((f"{share[1]} {last['unit']} ", part.part(share[0]))))
            continue
        if number is None or number.amount.unit is not None:
            return ()
        rest = part.part(number.end)
        parts.append(joined((part.part(0, number.end), f" {last['unit']} ", rest)))
    return tuple(parts) if len(parts) > 1 else ()


_COUNTED = re.compile(
    rf"[0-9.,/ –¼-¾⅐-⅞-]*[0-9¼-¾⅐-⅞]|\b(?:{'|'.join(_NUMBERS)}"
    r"|parts|measures|amounts|split|divided|shared|dash|splash|float|pinch)\b",
    re.IGNORECASE,
)
"""What may be an amount, or tell that one is shared: a line with one of them is one line."""

_USED = re.compile(
    r"\b(?:top|fill|rim|express|rinse|garnish|lengthen|grate|dust|sprinkle|shave|to[ ]taste)",
    re.IGNORECASE,
)


_ABOUT_SO_MANY = re.compile(
    r"(?:about|around|roughly|approx(?:imately)?\.?|ca\.?|circa|from|~|≈|=|nearly"
    r"|almost)[ ]?(?=\S)",
    re.I,
)


def _tells_of_its_fruit(before: str, text: str, tree: FamilyTree) -> bool:
    """*1 oz lime juice, about 1 lime*: from how much of its fruit the juice before comes."""
    if not _ABOUT_SO_MANY.match(text):
        return False
    juice, fruit = list(names_in(before, tree))[-1:], list(names_in(text, tree))
    if len(juice) != 1 or len(fruit) != 1:
        return False
    return folded(tree.name(juice[0].key)) == f"{folded(tree.name(fruit[0].key))} juice"


def _parted(said: Traced, tree: FamilyTree, units: BarUnits) -> tuple[Traced, ...]:
    """The pieces of a line that have each an amount and a name; what has not stays beside."""
    spans: list[tuple[int, int]] = []
    begun = False
    for start, end in _at_breaks(said.text, tree, units):
        begins = begins_an_item(said.text[start:end], tree, units)
        if spans and begins and begun:
            begins = not _tells_of_its_fruit(
                said.text[slice(*spans[-1])], said.text[start:end], tree
            )
        if spans and not (begins and begun):
            spans[-1] = spans[-1][0], end
            begun = begins_an_item(said.text[slice(*spans[-1])], tree, units)
        else:
            spans.append((start, end))
            begun = begins
    if len(spans) < 2:
        return (said,)
    items = [said.part(start, end).stripped() for start, end in spans]
    still = [*_still_garnishing(items, tree, units)]
    return tuple(_in_the_unit_before(still, tree, units))


_LIKELY_OF: Mapping[str, tuple[float, float]] = {"oz": (0.1, 6.0), "ml": (5.0, 200.0)}
"""From where to where a number without its unit is of the unit before it (*common practice*)."""


def _is_poured(name: str, number: float, said: str | None, tree: FamilyTree) -> bool:
    """*2 oz gin, ¾ lemon, ½ simple*: behind ounces so much of what is poured is ounces too."""
    least, most = _LIKELY_OF.get(said or "", (1.0, 0.0))
    found = next(names_in(name, tree), None) if least <= number <= most else None
    if found is None or name[: found.start].strip():
        return False
    if tree[found.key].unit == "g":
        return False
    if not _is_counted(found.key, tree):
        return True
    of_one = number in (0.25, 0.5, 1.5) or (number == int(number) and said != "ml")
    return not of_one and f"{folded(tree.name(found.key))} juice" in tree.by_name


def _is_counted(key: str, tree: FamilyTree) -> bool:
    """Whether it comes in pieces: fruit, leaves, eggs and their whites."""
    return tree[key].unit == "each" or folded(tree.name(key)).startswith("egg ")


_NUMBER_BEHIND = re.compile(
    r"(?P<name>[^\W\d_][^0-9,;()]*?)[ ]+"
    r"(?P<number>[0-9]{1,3}(?:[.,][0-9]+)?|[.][0-9]+|[¼½¾]|[0-9]/[0-9])"
)
"""*Lemon .75* behind *bourbon 1.5 oz*."""


def _begins_poured(text: str, share: str, tree: FamilyTree) -> bool:
    """Whether a share stands before the name of what is poured; half a lime may be of one."""
    found = next(names_in(text, tree), None)
    if found is None or text[: found.start].strip():
        return False
    return share == "3/4" or not _is_counted(found.key, tree)


_NUMBER_OF = re.compile(r"(?P<number>[\w./¼-¾ ]+?)(?P<of>[ ]of[ ])", re.IGNORECASE)


def _in_the_unit_before(
    items: Sequence[Traced], tree: FamilyTree, units: BarUnits, *, before: str = ""
) -> Iterator[Traced]:
    """*2 dashes absinthe and 4 of orange bitters*: the second number is of the same unit."""
    for item in items:
        found = amount_at(item.text, units)
        share = share_at(item.text) if found is None and before else None
        behind = _NUMBER_BEHIND.fullmatch(item.text) if found is None else None
        value = amount_at(f"{behind['number']} ", units) if behind and before else None
        if behind and value is not None:
            unit, _ = unit_at(before, 0, units)
            if _is_poured(f" {behind['name']}", value.value, unit, tree):
                item = joined((item, f" {before}"))
        elif share is not None and _begins_poured(item.text[share[0] :], share[1], tree):
            item = joined((f"{share[1]} {before} ", item.part(share[0])))
        elif found is None and (last := next(reversed([*amounts_in(item.text, units)]), None)):
            measured = last.amount.unit not in (None, "each") and last.end == len(item.text)
            before = item.text[last.start + last.amount.unit_at :].strip() if measured else before
        if found is not None and found.unit is None and before:
            number = _NUMBER_OF.match(item.text)
            unit, _ = unit_at(before, 0, units)
            of_it = number is not None and number.end("number") == found.end
            if of_it or _is_poured(item.text[found.end :], found.value, unit, tree):
                rest = item.part(found.end).stripped()
                item = joined((item.part(0, found.end), f" {before} ", rest))
        elif found is not None and found.unit not in (None, "each"):
            before = item.text[found.unit_at : found.end].strip()
        yield item


def _at_breaks(text: str, tree: FamilyTree, units: BarUnits) -> Iterator[tuple[int, int]]:
    """The pieces of a line between what may part things, never within an amount or brackets.

    A piece that begins with an amount and a name is parted before the next amount too.
    """
    amounts = list(amounts_in(text, units))
    names = list(names_in(text, tree))
    whole = [(each.start, each.end) for each in amounts]
    whole += [(each.start, each.end) for each in names]
    brackets = [each.span() for each in re.finditer(r"\([^()]*\)", text)]
    cuts = [
        each.span()
        for each in _BREAK.finditer(text)
        if not _inside(each.start(), each.end(), whole + brackets) and _parts(each, units)
    ]
    measured = [
        each
        for each in amounts
        if each.amount.unit not in (None, "each") or _counts_a_piece(each, names, tree)
    ]
    measured = _with_shares(measured, text, names, tree)
    for one, other in pairwise(measured):
        named = any(one.end <= each.start and each.end <= other.start for each in names)
        open_to_it = any(other.end <= each.start for each in names)
        stopped = text[one.end :].lstrip()[:1] in (",", ";")  # gin 1 oz, vermouth 1 oz
        if (
            named
            and open_to_it
            and not stopped
            and not _inside(other.start, other.start + 1, brackets)
        ):
            between = text[one.end : other.start].rstrip()
            ended = any(
                one.end <= each.start and each.end - one.end == len(between) for each in names
            )
            if ended and begins_an_item(text[one.start : other.start], tree, units):
                cuts.append((other.start, other.start))
    start = 0
    for begins, ends in (*sorted(set(cuts)), (len(text), len(text))):
        if text[start:begins].strip():
            yield start, begins
        start = max(start, ends)


_SHARE = re.compile(r"(?<=[ ])(?:an?[ ])?(?:half|three[ -]quarters?|a[ ]quarter)[ ](?=\w)", re.I)


def _with_shares(
    amounts: Sequence[FoundAmount], text: str, names: Sequence[FoundName], tree: FamilyTree
) -> list[FoundAmount]:
    """*One ounce lime three quarters simple*: a share right before a name is an amount too.

    Half of what is counted may be half of one.
    """
    begins = {each.start: each for each in names}
    shares = []
    for share in _SHARE.finditer(text):
        within = any(each.start <= share.start() < each.end for each in amounts)
        name = begins.get(share.end())
        whole = "quarters" in share.group().casefold()
        if name is not None and not within and (whole or not _is_counted(name.key, tree)):
            read = ReadAmount(value=0.5, high=None, unit=None, end=0, unit_at=0)
            shares.append(FoundAmount(share.start(), share.end() - 1, read))
    return sorted([*amounts, *shares], key=lambda each: each.start) if shares else [*amounts]


def _counts_a_piece(amount: FoundAmount, names: Sequence[FoundName], tree: FamilyTree) -> bool:
    """Whether a bare number stands right before something that is counted: *one egg white*."""
    return any(each.start - amount.end == 1 and _is_counted(each.key, tree) for each in names)


def _parts(gap: re.Match[str], units: BarUnits) -> bool:
    """Whether a gap parts things; *with* does where so much of something is poured with it."""
    if gap.group().strip().casefold() != "with":
        return True
    before = folded(gap.string[: gap.start()]).split()
    after = amount_at(gap.string[gap.end() :], units)
    if not before or after is None or after.unit is None or _USED.match(before[-1]):
        return False
    poured = dimension(after.unit, units) == "volume"
    return poured and before[-1] not in ("it", "up", "off", "that", "this", "everything", "glass")


def _inside(start: int, end: int, spans: Sequence[tuple[int, int]]) -> bool:
    return any(begins < end and start < ends for begins, ends in spans)
