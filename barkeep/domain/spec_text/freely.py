"""A line whose words stand in no usual order, said again in the usual one: amount, name, the rest.

| said                                                 | said again                               |
|------------------------------------------------------|------------------------------------------|
| we used the bourbon two ounces of that               | two ounces bourbon, we used the, of that |
| tequila reposado two ounces and half an ounce mezcal | two ounces … · half an ounce mezcal      |
| you want an ounce maybe an ounce and a quarter of rye | 1-1.25 oz rye, you want, maybe          |
| grab your mezcal and pour forty five mils            | forty five mils mezcal, grab your, … |

It is asked for where the usual order left a question, and answers only where every word of the
line is accounted for: an amount, a name, a maker's, or one of `resources/line_words.toml`, which
name nothing. What it gives is read as any line is, so that whatever a line leaves open is asked
about all the same.
"""

from __future__ import annotations

import re
from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass, replace
from functools import cache
from itertools import pairwise

from barkeep.domain.amounts.amount import ReadAmount, show_number
from barkeep.domain.amounts.measures import dimension
from barkeep.domain.amounts.units import BarUnits, unit_named, words_of_units
from barkeep.domain.ingredients.line_words import (
    begins_what_is_told,
    may_follow_a_name,
    says_to_do,
    tells_nothing_else,
    turns,
)
from barkeep.domain.ingredients.names import (
    ADJECTIVES,
    ADJUSTED,
    STATEMENT,
    match_name,
    may_change,
    states,
)
from barkeep.domain.ingredients.slips import (
    put_right,
    put_right_beside,
    slips_of,
    whole_names_near,
    without_vowels_of,
)
from barkeep.domain.ingredients.tree import FamilyTree, singular
from barkeep.domain.phrases import folded
from barkeep.domain.spec_text.found import (
    ARTICLES,
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

_UNIT_IS_DONE = re.compile(
    r"[ ](?:it|them|that|this|those|in|into|on|onto|off|over|the|everything)\b", re.I
)

_PUT_RIGHT = frozenset(
    {
        "sorry",
        "scratch",
        "wait",
        "oops",
        "correction",
        "rather",
        "nope",
        "strike",
        "meant",
        "pardon",
    }
    | {"instead", "actually", "mistake", "swap", "change", "forget", "ignore", "double", "halve"}
    | {
        "triple",
        "twice",
        "each",
        "both",
        "apiece",
        "equal",
        "equally",
        "evenly",
        "split",
        "divided",
    }
    | {"respectively", "total", "altogether", "ditto", "same", "replace", "trade", "exchange"}
)
"""Words that put right, share out or say again: read by whoever knows how, or asked about."""

_INSTEAD_OF = re.compile(r"\binstead[ ]of\b", re.IGNORECASE)

_PART_OF_IT = re.compile(
    r"\bof[ ](?:which|whom|them|those)\b|\bincluding\b|\bin[ ]total\b", re.IGNORECASE
)
"""*60 ml gin, 30 ml of which …*: what is a part of another amount is no line beside it."""

_MARKS = re.compile(r"[#=?$€£@^<>{}%*]")

_NOT_BEFORE_AN_AMOUNT = re.compile(
    r"(?:^|[ ,])(?:an?|not|no|(?:[0-9]+|one|two|three|four|five|six)[ ]and|of[ ](?:the|that|your"
    r"|my|our|this|those|these)|never|without|from(?:[ ](?:about|around|roughly))?)[ ]*$",
    re.IGNORECASE,
)

_OR_MORE = re.compile(
    r"[ ,]*(?:(?:or|to|maybe|perhaps|even|up|possibly|sometimes|or[ ]even|or[ ]maybe|and|make[ ]it"
    r"|go|as|much|as|more|like|say|probably|closer)[ ,]+)*",
    re.IGNORECASE,
)
"""What stands between the two ends of a range, or between an amount and what it may be."""

_STOPS = re.compile(
    r"[ ]*(?:[,;:()\[\]–—|/!?]"
    r"|(?<!\bca)(?<!\boz)(?<!\bml)(?<!\bcl)(?<!\bc)(?<!approx)(?<!max)(?<!min)[.])"
    r"[ ,;:()\[\]–—|/.!?]*|[ ]+-+[ ]+"
)

_TIME = re.compile(
    r"(?:[0-9]+(?:[.,][0-9]+)?|an?|one|two|three|four|five|six|eight|ten|twelve|fifteen|twenty|thirty"
    r"|forty|sixty)(?:(?:[ ]?[-–][ ]?|[ ](?:to|or)[ ])(?:[0-9]+|two|three|four|five|six|ten|fifteen"
    r"|twenty|thirty))?[ -]?(?:seconds?|secs?|minutes?|mins?|hours?|hrs?|days?|weeks?|months?"
    r"|times?|°[ ]?[CF]?|degrees)\b"
    r"|(?:two|three|four|[2-4])[ ](?:different[ ])?(?:kinds?|types?|sorts?|things|ways|steps"
    r"|parts[ ]to[ ]it"
    r"|ingredients|styles|rums|gins|whiske?ys?|whiskies|vermouths|people|guests|friends)\b"
    r"|\b(?:step|page|number|day|batch|version|round|take)[ ][0-9]{1,3}\b"
    r"|\b(?:favou?rite|best|fun|next|last|first|final|hard|easy|important|tricky|good)[ ]part\b"
    r"|\bone[ ](?:thing|side|hand|more[ ]thing|last[ ]thing|of[ ](?:my|our|the|those|these))\b"
    r"|\b(?:(?:this|that|last|first|next|which|other|any|each|every)"
    r"|(?:the|that|this|my|our|an?)[ ](?:[^\W\d_]+[ ])?)(?P<one>[ ]?one)\b"
    r"(?![ ](?:ounces?|oz|ml|mils?|cl|dash|drop|part|barspoon|teaspoon|tablespoon|cup|and[ ]an?"
    r"|half|quarter))",
    re.IGNORECASE,
)
"""*Ten seconds*, *two kinds*: numbers that are no amount of anything poured."""


_NO = re.compile(
    r"\bno\b(?![ ](?:ice|pith|pulp|sugar|need|salt|seeds?|skin|foam|straw|garnish|more|less|bits"
    r"|bubbles"
    r"|peel|stems?|stalks?|shell|rush|matter|question|fuss|added|substitutes?|exceptions?))"
    r"|\bwas[ ]it\b|\ba[ ]miss\b",
    re.IGNORECASE,
)
"""*No* where it is not told of what there is none: it may put right what was said before."""

_LEFT_OUT = re.compile(
    r"\b(?:don['’]?t|do[ ]not|never|won['’]t|wouldn['’]t"
    r"|shouldn['’]t|didn['’]t|skip|omit|avoid|leave[ ]out|without"
    r"|discard|dump|pour[ ]off|toss[ ]out)\b"
    r"(?![ ](?:forget|be|worry|skimp|judge|ask|laugh|know|care|mind|overthink|panic|hate|rush|lie"
    r"|want[ ]to[ ](?:overdo|overpower|go[ ](?:crazy|mad|overboard)))\b)",
    re.IGNORECASE,
)
"""*Don't add 2 dashes of bitters*: what is left out, or only would be otherwise."""

_POURED = frozenset({"volume", "part", "mass"})

_SHARE = re.compile(r"(?:an?[ ])?(?:half|three[ -]quarters?|a[ ]quarter|quarter)\b", re.IGNORECASE)

_ARTICLE = re.compile(r"(?<![\w])(?:an?|one)[ ]+(?P<how>(?:[^\W\d_]+,?[ ]+){0,3})$", re.IGNORECASE)


@dataclass(frozen=True, slots=True)
class _Thing:
    """One thing of a line: its amount, if any, its name, and from where to where it is told of."""

    amount: FoundAmount | None
    name: FoundName
    start: int
    end: int


def said_freely(
    said: Traced, tree: FamilyTree, units: BarUnits, told: frozenset[str] = frozenset()
) -> tuple[Traced, ...]:
    """The line as one for each of its things, in the usual order; none where a word is left over.

    `told` are words of another language that name nothing, beside those of English.
    """
    said = _joined_words(said.stripped(), tree)
    if not 1 < len(said.text.split()) <= MOST_WORDS or _NO.search(said.text):
        return ()
    if _PART_OF_IT.search(said.text):
        return ()
    text = _TIME.sub(_hidden, said.text)
    told_of_it = [each.span() for each in STATEMENT.finditer(text)]
    amounts = [each for each in _amounts(text, units) if not _covered(_span(each), told_of_it)]
    names = [each for each in _names(text, tree) if not _inside(each, amounts)]
    first = min([*(each.start for each in amounts), *(each.start for each in names)], default=0)
    if _LEFT_OUT.search(text, 0, first):
        return ()
    amounts = _with_articles(text, _with_shares(text, amounts, names, tree), names)
    if len({dimension(str(each.amount.unit), units) for each in amounts} & _POURED) > 1:
        return ()  # three parts of what two ounces are of
    names = list(_widened(text, names, amounts, tree))
    measured = [each for each in amounts if _counts(each, text, names)] or amounts
    if len(names) == 1:
        measured = _after_a_float(text, measured, names[0])
    if len(names) == 1 and not measured:
        return _with_no_amount(said, text, names[0], told, tree=tree)
    if not names or not measured:
        return ()
    kinds = _of_one_head(text, measured, names, tree)
    if kinds is None:
        names = _completed(text, names, measured, tree)
    measured, beside = _without_twins(text, measured)
    pairs = _without_choices(text, kinds or _paired(text, measured, names) or ())
    if not pairs or not _is_plain(text, pairs, names, tree=tree, told=told):
        return ()
    names += [name for _, name in pairs if kinds]
    spans = [_span(each) for each in [*measured, *beside]] + [_span(each) for each in names]
    spans += told_of_it
    left = [word for word in WORD.finditer(text) if not _covered(word.span(), spans)]
    others = _INSTEAD_OF.sub("", " ".join(folded(word.group()) for word in left)).split()
    if not _PUT_RIGHT.isdisjoint(others) or _MARKS.search(STATEMENT.sub("", said.text)):
        return ()
    makers = {word.span() for word in left if not _is_accounted_for(word.group(), told)}
    makers -= set(_said_again(text, measured))
    if makers and not _are_a_makers(text, makers, [name for _, name in pairs], tree):
        makers, strange = _right_before(text, makers, pairs[0][1])
        if len(pairs) != 1 or not _are_told_by_place(text, strange, *pairs[0]):
            return ()
        if makers and not _are_a_makers(text, makers, [pairs[0][1]], tree):
            return ()
    things = _things(text, pairs)
    return tuple(_in_order(said, each, makers, tree) for each in things)


def _names(text: str, tree: FamilyTree) -> list[FoundName]:
    """The names of a line, one that narrows the one before it with that: *bourbon high rye*."""
    found: list[FoundName] = []
    for each in names_in(text, tree):
        last = found[-1] if found else None
        gap = text[last.end : each.start] if last else ""
        if last and gap.strip() and not _STOPS.search(gap) and len(gap.split()) == 1:
            said, before = text[last.start : each.end], text[last.start : last.end]
            behind = f"{text[last.end : each.end].strip()} {before}"
            whole = match_name(said, tree) or match_name(behind, tree)
            sure = whole is not None and whole.confidence >= ADJUSTED and not whole.stated
            key = whole.key if whole and sure else None
            if key and key != last.key and tree.is_a(key, last.key):
                found[-1] = FoundName(last.start, each.end, key)
                continue
        found.append(each)
    return found


def _hidden(time: re.Match[str]) -> str:
    """As many marks as letters; of *the white one* the last word alone is hidden."""
    start = time.end("one") - len("one") - time.start() if time["one"] else 0
    return time.group()[:start] + "~" * (len(time.group()) - start)


def _right_before(
    text: str, words: set[tuple[int, int]], name: FoundName
) -> tuple[set[tuple[int, int]], set[tuple[int, int]]]:
    """The words that stand in a row right before a name, and all others."""
    row, edge = set[tuple[int, int]](), name.start
    for start, end in sorted(words, reverse=True):
        if end <= edge and not text[end:edge].strip(" -"):
            row.add((start, end))
            edge = start
    return row, words - row


def _are_told_by_place(
    text: str, words: set[tuple[int, int]], amount: FoundAmount | None, name: FoundName
) -> bool:
    """Whether words that nobody knows stand where they can only tell of the thing.

    That is before the first amount, or behind the name in what a joining word begins.
    """
    begins = amount.start if amount else name.start
    ends = max(amount.end, name.end) if amount else name.end
    rest = f"{text[:begins]} {text[ends:]}" if ends >= begins else text
    others = [each.group() for each in WORD.finditer(rest)]
    if any(turns(folded(each)) or is_a_number(each) for each in others):
        return False
    lead = [each for each in WORD.finditer(text[:begins]) if each.span() not in words]
    if not lead and any(end <= begins for _, end in words):
        return False  # splendid 2 ounces gin
    return all(
        _leads_in(text[:start], text[start:end], text[end:begins])
        if amount is not None and end <= begins <= name.start
        else start >= ends and _is_told_behind(text[ends:start], text[start:end])
        for start, end in words
    )


def _leads_in(before: str, word: str, behind: str) -> bool:
    """Whether a word is only said before the amount.

    One in capitals may be a name, and what the amount is joined to another thing: *add flumph
    and then 2 oz gin*.
    """
    if not word[:1].islower() or behind.startswith(("-", "'", "’")):
        return False
    last = [folded(each.group()) for each in WORD.finditer(before)][-1:]
    if behind.startswith(",") and last and (says_to_do(last[0]) or last[0] in _JOINS_A_THING):
        return False  # we need flumph, two ounces of gin
    joins = any(folded(each.group()) in _JOINS_AN_AMOUNT for each in WORD.finditer(behind))
    told_how = word.endswith(("ly", "ing")) or (
        word.endswith("ed") and not (last and (says_to_do(last[0]) or last[0] in ARTICLES))
    )
    return told_how or not (joins or _STOPS_THERE.search(behind))


_JOINS_AN_AMOUNT = frozenset(
    {
        "and",
        "then",
        "plus",
        "with",
        "in",
        "to",
        "into",
        "follow",
        "followed",
        "goes",
        "go",
        "by",
        "add",
    }
    | {"before", "after", "on", "over", "next", "also", "or"}
)
_STOPS_THERE = re.compile(r"[;&+/|(]|[.][ ]")


def _is_told_behind(before: str, word: str) -> bool:
    """Whether a word stands in a piece that a joining word begins: *for flourish*."""
    piece = before[max((stop.end() for stop in _STOPS.finditer(before)), default=0) :]
    said = [folded(each.group()) for each in WORD.finditer(piece)]
    if not said or not begins_what_is_told(said[0]):
        return False
    beside = [each for each in said if each not in ARTICLES][-1:]
    joins = bool(beside) and beside[0] in _JOINS_A_THING
    if said[0] in ("that", "which") and word.endswith("ed"):
        return False  # that we flumphed overnight
    return word[:1].islower() and (not joins or word.endswith(_AS_IT_IS))


_JOINS_A_THING = frozenset({"and", "with", "plus", "or", "then", "add", "some", "use", "of"})
"""Words behind which one that nobody knows may well be another ingredient."""

_AS_IT_IS = ("ed", "y", "ish", "ly")


_IS_A_HEADING = re.compile(
    r"(?:for|to|in|with|about|from|if|when|as|this|that|these|those|no|not|how|what|why|my|our"
    r"|on|at)\b|.*:[ ]*$",
    re.IGNORECASE,
)
"""*For the raspberry syrup:*, which is no line of it."""

_MOST_WORDS_ALONE = 9
"""Words of a line without an amount; more of them tell what to do."""


_NOT_DONE = frozenset(
    {"not", "no", "never", "without", "don't", "dont", "skip", "omit", "but", "except", "instead"}
    | {"avoid", "stop", "won't", "wouldn't", "shouldn't", "didn't", "doesn't", "can't", "isn't"}
)
_ADDS = re.compile(
    r"\b(?:add|use|take|get|grab|need|want|goes|comes|is)(?:[ ]in)?[ ](?:the|your|our|my|an?"
    r"|some)[ ]$",
    re.IGNORECASE,
)
"""*Before we shake, add your egg white*: what stands right before a name says that it goes in."""


def _with_no_amount(
    said: Traced, text: str, name: FoundName, told: frozenset[str], *, tree: FamilyTree
) -> tuple[Traced, ...]:
    """*Just enough soda to fill the glass*: a name alone, and what is said of how much of it."""
    words = [word for word in WORD.finditer(text) if not _covered(word.span(), [_span(name)])]
    before = [folded(word.group()) for word in words if word.end() <= name.start]
    if _IS_A_HEADING.match(text) or len(words) > _MOST_WORDS_ALONE:
        return ()
    if not _stand_apart(text, [], [name], tree=tree, told=told):
        return ()
    strange = {word.span() for word in words if not _is_accounted_for(word.group(), told)}
    if strange and not _are_told_by_place(text, strange, None, name):
        return ()
    leads = ADJECTIVES | told | {"add", "use", "need", "grab", "take", "get"}
    plain = all(may_follow_a_name(each) or each in leads for each in before)
    if not _NOT_DONE.isdisjoint(before) or not (plain or _ADDS.search(text[: name.start])):
        return ()
    if not _PUT_RIGHT.isdisjoint(folded(word.group()) for word in words) or _MARKS.search(text):
        return ()
    if _NOT_BEFORE_AN_AMOUNT.search(text[: name.start].removesuffix("a ").removesuffix("an ")):
        return ()
    return (_in_order(said, _Thing(None, name, 0, len(text)), set(), tree),)


def _without_choices(
    text: str, pairs: Sequence[tuple[FoundAmount, FoundName]]
) -> list[tuple[FoundAmount, FoundName]]:
    """Without what only would do as well: *one egg white or thirty mils aquafaba*."""
    kept: list[tuple[FoundAmount, FoundName]] = []
    for amount, name in pairs:
        begins = min(amount.start, name.start)
        if not kept or not _OR_ELSE.search(text[:begins]):
            kept.append((amount, name))
    return kept


_OR_ELSE = re.compile(r"\bor[ ](?:[^\W\d_]+[ ]){0,3}$", re.IGNORECASE)


def _after_a_float(text: str, amounts: Sequence[FoundAmount], name: FoundName) -> list[FoundAmount]:
    """*Float of red wine half an ounce*: the amount behind the name says how much that is."""
    loose = [each for each in amounts if not each.amount.unit_at and each.end <= name.start]
    rest = [each for each in amounts if each not in loose]
    behind = all(each.start >= name.end and not _is_in_brackets(text, each.start) for each in rest)
    return rest if loose and rest and behind else [*amounts]


def _without_twins(
    text: str, amounts: Sequence[FoundAmount]
) -> tuple[list[FoundAmount], list[FoundAmount]]:
    """The amounts, and those that stand in brackets right behind one: *1 bottle (75 cl)*."""
    kept: list[FoundAmount] = []
    beside: list[FoundAmount] = []
    for each in amounts:
        gap = text[kept[-1].end : each.start] if kept else ""
        closed = text[each.end :].lstrip(" .").startswith(")")
        (beside if gap.strip() == "(" and closed else kept).append(each)
    return kept, beside


def _span(found: FoundAmount | FoundName) -> tuple[int, int]:
    return found.start, found.end


def _counts(amount: FoundAmount, text: str, names: Sequence[FoundName]) -> bool:
    """Whether an amount has a unit, or stands right before what it counts: *one egg white*."""
    if amount.amount.unit is not None:
        return True
    behind = (text[amount.end : each.start] for each in names if each.start >= amount.end)
    return any(map(_belongs, behind))


def _is_plain(
    text: str,
    pairs: Sequence[tuple[FoundAmount, FoundName]],
    names: Sequence[FoundName],
    *,
    tree: FamilyTree,
    told: frozenset[str],
) -> bool:
    """Whether each amount and name stand so that nothing is said of them that changes them."""
    if (
        _is_said_twice(pairs)
        or _is_made_up_of_others(pairs, tree)
        or not _stand_apart(text, pairs, names, tree=tree, told=told)
    ):
        return False
    return not any(
        _NOT_BEFORE_AN_AMOUNT.search(text[: amount.start]) or _ends_in_a_unit(text[: amount.start])
        for amount, _ in pairs
    )


def _completed(
    text: str, names: Sequence[FoundName], amounts: Sequence[FoundAmount], tree: FamilyTree
) -> list[FoundName]:
    """The names, with those that another one ends: *citric acid, 1/2 tsp malic*."""
    ends = {text[each.start : each.end].split()[-1] for each in names}
    found = [*names]
    for number, amount in enumerate(amounts):
        until = amounts[number + 1].start if number + 1 < len(amounts) else len(text)
        if any(amount.end <= each.start < until for each in names):
            continue
        for end in sorted(ends):
            which = _kind_told(text, amount.end, until, end, tree=tree)
            if which is not None:
                found.append(which)
                break
    return sorted(found, key=lambda each: each.start)


def _said_again(text: str, amounts: Sequence[FoundAmount]) -> Iterator[tuple[int, int]]:
    """The units that are said again with how much they are: *a splash, just a little splash*."""
    for amount in amounts:
        for again in _HOW_MUCH.finditer(text, amount.end):
            if unit_named(again["unit"]) == amount.amount.unit:
                yield again.span("unit")


def _stand_apart(
    text: str,
    pairs: Sequence[tuple[FoundAmount, FoundName]],
    names: Sequence[FoundName],
    *,
    tree: FamilyTree,
    told: frozenset[str],
) -> bool:
    """Whether no word right beside a name makes another name of it: *root beer barrel*.

    What is measured in brackets beside another amount is no thing of its own.
    """
    if len(pairs) > 1 and any(_is_in_brackets(text, amount.start) for amount, _ in pairs):
        return False
    if any(one.end + 1 >= other.start for one, other in pairwise(names)):
        return False
    for name in [name for _, name in pairs] or names:
        behind = _NEXT.match(text, name.end)
        known = behind is None or folded(behind["word"]) in told or _bids(text[behind.start() :])
        if behind and not known and not _may_follow(behind["word"], name, tree):
            return False
        listed = _LISTED.search(text[: name.start])
        if listed and states(folded(listed["word"])):
            return False  # dark and light rum
        before = _LAST.search(text[: name.start])
        if before and _makes_another(before["word"], name, tree):
            return False
        measured = [_span(amount) for amount, _ in pairs]
        if before and unit_named(before["word"]) and not _covered(before.span("word"), measured):
            return False  # a dash of dash gin
    return True


_BIDS = re.compile(
    r"[ ](?P<verb>[^\W\d_]+)[ ](?:and[ ][^\W\d_]+[ ])?(?:(?:in|up|out|off|down|away|over)[ ])?"
    r"(?:it|them|that|those|this|these|the|your|a[ ](?:little|quick|good|nice|bit|few|light|gentle)"
    r"|an?|all|both|each|some|over|into|onto|around|till|until|well|again|gently|hard|once|twice|briefly"
    r"|first|before|after|thoroughly|together|constantly)\b",
    re.IGNORECASE,
)


def _bids(text: str) -> bool:
    """*Mint leaves give them a slap*: whether what follows a name begins by saying what to do."""
    found = _BIDS.match(text)
    return found is not None and says_to_do(folded(found["verb"]))


def _may_follow(word: str, name: FoundName, tree: FamilyTree) -> bool:
    plain = folded(word)
    if _CONTRARY.get(plain, "-") in folded(tree.name(name.key)).split():
        return False
    asked = states(plain) and (name.key in tree.alcoholic or plain in _STATED_OF_ANYTHING)
    asked = asked or plain in ("float", "floated", "rinse")
    return may_follow_a_name(plain) or is_a_number(word) or asked


_STATED_OF_ANYTHING = frozenset(
    {"unsweetened", "organic", "bio", "cloudy", "clarified", "filtered", "unfiltered", "natural"}
)
_CONTRARY = {"cold": "hot", "iced": "hot", "chilled": "hot", "hot": "iced", "warm": "iced"}


def _makes_another(word: str, name: FoundName, tree: FamilyTree) -> bool:
    """Whether a word right before a name makes something else of it: *light coconut milk*."""
    plain = folded(word)
    return may_change(plain) and name.key not in tree.alcoholic


def _ends_in_a_unit(text: str) -> bool:
    """*Dash 2 dashes*: whether a unit stands before an amount; *in the tin* it is none."""
    last = re.search(r"(?P<the>\b(?:the|my|your|a)[ ])?(?P<word>[^\W\d_]+)[ ]*$", text)
    if last is None or last["the"] or last["word"].casefold() in _NO_UNIT_HERE:
        return False
    return unit_named(last["word"]) is not None


_NO_UNIT_HERE = frozenset({"float", "rinse", "in"})


def _is_in_brackets(text: str, at: int) -> bool:
    return text[:at].count("(") > text[:at].count(")")


_NEXT = re.compile(r"[ -](?P<word>[^\W_]+(?:['’][^\W_]+)*)")
_LAST = re.compile(r"(?P<word>[^\W_]+(?:['’][^\W_]+)*)[ -]$")
_LISTED = re.compile(r"(?P<word>[^\W\d_]+)[ ](?:and|or|&)[ ]$", re.IGNORECASE)
_HOW_MUCH = re.compile(
    r"\b(?:an?|one|the)[ ](?:(?:very|really)[ ])?(?:little|tiny|small|big|good|generous|scant"
    r"|light|healthy"
    r"|quick|heavy|large)[ ](?P<unit>[^\W\d_]+)",
    re.IGNORECASE,
)


def _is_accounted_for(word: str, told: frozenset[str] = frozenset()) -> bool:
    plain = folded(word)
    if plain in told or plain in ("one", "ones"):
        return True
    if is_a_number(word) or (unit_named(plain) and not tells_nothing_else(plain)):
        return False
    return plain in ADJECTIVES or states(plain) or tells_nothing_else(plain)


def _joined_words(said: Traced, tree: FamilyTree) -> Traced:
    """*Grape fruit* as *grapefruit*, where the two are no words of a name by themselves."""
    words = list(WORD.finditer(said.text))
    for one, other in reversed([*pairwise(words)]):
        whole = folded(one.group() + other.group())
        apart = said.text[one.end() : other.start()] == " "
        if apart and len(whole) > 6 and whole in tree.words and not tells_nothing_else(whole):
            pair = folded(f"{one.group()} {other.group()}")
            if pair not in tree.by_name:
                said = joined((said.part(0, one.end()), said.part(other.start())))
    return said


def _with_shares(
    text: str, amounts: Sequence[FoundAmount], names: Sequence[FoundName], tree: FamilyTree
) -> list[FoundAmount]:
    """*Lime cordial three quarters* beside ounces: a share is of the unit of the others."""
    units = {each.amount.unit for each in amounts if each.amount.unit}
    taken = [*map(_span, amounts), *map(_span, names)]
    if len(units) != 1:
        return [*amounts]
    found = [*amounts]
    for share in _SHARE.finditer(text):
        read = share_at(share.group())
        if read is None or _covered(share.span(), taken):
            continue
        value = {"1/2": 0.5, "1/4": 0.25, "3/4": 0.75}.get(read[1])
        follows = next((each for each in names if share.end() <= each.start), None)
        if follows is None or text[share.end() : follows.start].strip() not in ("", "of"):
            follows = next(
                (each for each in names if not text[each.end : share.start()].strip(" ,")), None
            )
        counted = follows is not None and tree[follows.key].unit != "ml"
        if value is None or follows is None or (counted and value != 0.75):
            continue
        amount = ReadAmount(
            value=value, high=None, unit=min(map(str, units)), end=len(share.group()), unit_at=0
        )
        found.append(FoundAmount(share.start(), share.end(), amount))
    return sorted(found, key=lambda each: each.start)


def _with_articles(
    text: str, amounts: Sequence[FoundAmount], names: Sequence[FoundName]
) -> list[FoundAmount]:
    """*An egg white*, where nothing else counts: one of it."""
    if amounts:
        return [*amounts]
    for name in names[:1]:
        article = _ARTICLE.search(text[: name.start])
        how = article["how"].replace(",", " ").split() if article else []
        if article and all(folded(each) in ADJECTIVES or may_follow_a_name(each) for each in how):
            ends = article.start("how")
            one = ReadAmount(value=1.0, high=None, unit=None, end=ends - article.start(), unit_at=0)
            return [FoundAmount(article.start(), ends, one)]
    return []


def _amounts(text: str, units: BarUnits) -> list[FoundAmount]:
    """The amounts of a line, two that are the ends of one range as one, and none said twice."""
    found: list[FoundAmount] = []
    for each in _plainly(text, amounts_in(text, units)):
        last = found[-1] if found else None
        if last and each.amount.unit and _says_again(last, each, text):
            continue  # a splash just a little splash
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


def _plainly(text: str, amounts: Iterator[FoundAmount]) -> Iterator[FoundAmount]:
    """Without a unit that only stands before an amount: *float 1/2 oz*."""
    last: FoundAmount | None = None
    for each in amounts:
        if each.amount.unit_at == 0 and _UNIT_IS_DONE.match(text, each.end):
            continue  # and drop it in
        if last is not None and (last.amount.unit_at or text[last.end : each.start].strip(" ,")):
            yield last
        last = each
    if last is not None:
        yield last


def _says_again(one: FoundAmount, other: FoundAmount, text: str) -> bool:
    """Whether an amount is said again, and nothing is named between."""
    same = (one.amount.value, one.amount.high, one.amount.unit) == (
        *(other.amount.value, other.amount.high),
        other.amount.unit,
    )
    words = [folded(each.group()) for each in WORD.finditer(text[one.end : other.start])]
    return same and all(tells_nothing_else(each) and not states(each) for each in words)


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
    taken = [*map(_span, amounts), *map(_span, names)]
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
        if (
            folded(word.group()) in _NO_PART_OF_A_NAME
            or gap.strip(" -")
            or _covered((start + at, end + at), taken)
            or len(found) == _REACH
        ):
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
                return FoundName(start, end, found.key)
    return name


def _are_a_makers(
    text: str, words: set[tuple[int, int]], names: Sequence[FoundName], tree: FamilyTree
) -> bool:
    """Whether the words that nobody knows stand together right before what is bought."""
    spans = sorted(words)
    if len(spans) > 4:
        return False
    for (_, end), (start, _) in pairwise(spans):
        if text[end:start].strip(" &'’-") not in ("", "and"):
            return False
    after = next((each for each in names if each.start >= spans[-1][1]), None)
    if after is None or text[spans[-1][1] : after.start].strip():
        return False
    whole = match_name(text[spans[0][0] : after.end], tree)
    return whole is not None and whole.key is not None and bool(whole.maker)


def _things(text: str, pairs: Sequence[tuple[FoundAmount, FoundName]]) -> list[_Thing]:
    """Each thing with all that is told of it; none where they stand within each other."""
    ends = _borders(text, pairs)
    if len(ends) != len(pairs) - 1:
        return []
    starts = (0, *ends)
    return [
        _Thing(amount, name, start, end)
        for (amount, name), start, end in zip(pairs, starts, (*ends, len(text)), strict=True)
    ]


def _of_one_head(
    text: str, amounts: Sequence[FoundAmount], names: Sequence[FoundName], tree: FamilyTree
) -> list[tuple[FoundAmount, FoundName]] | None:
    """*Rum: dark 1 oz, light 1 oz*: what stands beside each amount is a kind of the first name."""
    head = names[0]
    alone = len(amounts) < 2 and not text[head.end :].startswith(":")
    if alone or head.start > amounts[0].start:
        return None
    kind = text[head.start : head.end]
    found: list[tuple[FoundAmount, FoundName]] = []
    at = head.end
    for number, amount in enumerate(amounts):
        until = amounts[number + 1].start if number + 1 < len(amounts) else len(text)
        which = _kind_told(text, at, amount.start, kind, tree=tree)
        which = which or _kind_told(text, amount.end, until, kind, tree=tree)
        if which is None:
            return None
        found.append((amount, which))
        at = max(amount.end, which.end)
    return found


def _kind_told(text: str, start: int, end: int, kind: str, *, tree: FamilyTree) -> FoundName | None:
    """The words of a stretch that tell which one of a kind is meant: *dark*, of rum."""
    words = [
        (each.start() + start, each.end() + start, each.group())
        for each in WORD.finditer(text[start:end])
    ]
    for count in (3, 2, 1):
        for at in range(len(words) - count + 1):
            said = " ".join(word for _, _, word in words[at : at + count])
            found = match_name(f"{said} {kind}", tree)
            exact = found is not None and found.confidence >= ADJUSTED and not found.stated
            if found and found.key and exact and folded(said) not in ADJECTIVES:
                alone = match_name(kind, tree)
                named_so = folded(said) in folded(found.matched or "")
                if alone is None or alone.key != found.key or named_so:
                    return FoundName(words[at][0], words[at + count - 1][1], found.key)
    return None


def _is_made_up_of_others(pairs: Sequence[tuple[FoundAmount, FoundName]], tree: FamilyTree) -> bool:
    """*1 oz rum blend: 1/2 oz Jamaican, 1/2 oz Demerara*: whether one amount is the others' sum."""
    for amount, name in pairs:
        kinds = [
            each.amount.value
            for each, other in pairs
            if other is not name and tree.is_a(other.key, name.key)
        ]
        if len(kinds) > 1 and abs(sum(kinds) - amount.amount.value) < 0.01:
            return True
    return False


def _in_one_word(word: str, tree: FamilyTree) -> tuple[str, str] | None:
    """The two words that one was run together of: *darkrum*, *ouncesof*; None for any other."""
    plain = folded(word)
    if len(plain) < 6 or not plain.isalpha() or plain in tree.words or tells_nothing_else(plain):
        return None
    parted = [(plain[:at], plain[at:]) for at in range(2, len(plain) - 1)]
    known = [each for each in parted if all(_is_known(part, tree) for part in each)]
    return known[0] if len(known) == 1 else None


def _is_known(part: str, tree: FamilyTree) -> bool:
    if part in ("of", "and", "the", "with"):
        return True
    return len(part) > 2 and (part in tree.words or unit_named(part) is not None)


def put_apart(said: Traced, tree: FamilyTree) -> Traced:
    """The line with words that were run together put apart, and slips of the keys put right."""
    for word in reversed([*WORD.finditer(said.text)]):
        plain = folded(word.group())
        if (
            plain in tree.words
            or _is_accounted_for(plain)
            or is_a_number(plain)
            or unit_named(plain)
        ):
            continue
        if singular(plain) in tree.words:
            continue
        before = folded(said.text[: word.start()]).split()[-1:]
        unit = put_right(plain, unit_slips()) if before and is_a_number(before[0]) else None
        if unit:
            said = said.said_instead(word.start(), word.end(), unit)
            continue
        once = _THRICE.sub(r"\1\1", plain)
        if once != plain and once in tree.words:
            said = said.said_instead(word.start(), word.end(), once)
            continue
        parted = _in_one_word(plain, tree)
        meant = " ".join(parted) if parted else put_right(plain, tree.slips)
        if meant and not _is_a_form_of(plain, meant):
            said = said.said_instead(word.start(), word.end(), meant)
    return said


def _strange(
    words: Sequence[re.Match[str]], tree: FamilyTree
) -> Iterator[tuple[int, re.Match[str], str]]:
    """The words that are no name, unit, number or other word that is known, with their places.

    One written large may be a maker's, and is none of them.
    """
    for number, word in enumerate(words):
        plain = folded(word.group())
        known = plain in tree.words or _is_accounted_for(plain) or unit_named(plain)
        if not known and not is_a_number(plain) and word.group().islower():
            yield number, word, plain


def with_a_name_put_right(said: Traced, tree: FamilyTree) -> Traced:
    """*1 oz lemn juice*: the one word by which what stands there is the whole name of a kind.

    Where two kinds are as near it stays as it is, and so does a word written large.
    """
    words = list(WORD.finditer(said.text))
    for number, word, _plain in _strange(words, tree):
        found: dict[str, set[str]] = {}
        for start, end in _rows_around(number, len(words)):
            row = [folded(each.group()) for each in words[start:end]]
            between = said.text[words[start].start() : words[end - 1].end()]
            if _STOPS.search(between):
                continue
            for meant in put_right_beside(row, number - start, tree.words):
                row[number - start] = meant
                key = tree.by_name.get(" ".join(row))
                if key:
                    found.setdefault(meant, set()).add(key)
        if len(found) == 1:
            return said.said_instead(word.start(), word.end(), next(iter(found)))
    return said


def with_a_whole_name_put_right(said: Traced, tree: FamilyTree) -> Traced:
    """*0.5 oz grenedine*, *elderflwr liqueur*: a whole name with letters wrong, or vowels left out.

    Where two kinds are as near it stays as it is, and so does a word written large.
    """
    words = list(WORD.finditer(said.text))
    for number, word, plain in _strange(words, tree):
        alone = {each for each in whole_names_near(plain, tree.words) if each in tree.by_name}
        short = without_vowels_of(plain, tree.words)
        found = {each: {tree.by_name[each]} for each in alone}
        for start, end in (*_rows_around(number, len(words)), (number, number + 1)):
            row = [folded(each.group()) for each in words[start:end]]
            if _STOPS.search(said.text[words[start].start() : words[end - 1].end()]):
                continue
            for meant in short:
                row[number - start] = meant
                key = tree.by_name.get(" ".join(row))
                if key:
                    found.setdefault(meant, set()).add(key)
        if len(found) == 1:
            return said.said_instead(word.start(), word.end(), next(iter(found)))
    return said


def _rows_around(at: int, count: int) -> Iterator[tuple[int, int]]:
    """The rows of two and three words that hold one of them."""
    for length in (3, 2):
        for start in range(max(0, at - length + 1), min(at, count - length) + 1):
            yield start, start + length


_THRICE = re.compile(r"(\w)\1{2,}")
"""*Beeer*: no word has a letter three times over."""


@cache
def unit_slips() -> Mapping[str, tuple[str, ...]]:
    """The words of units as fingers slip."""
    return slips_of(each for each in words_of_units() if each.isalpha())


_ENDINGS = frozenset({"y", "s", "ed", "d", "er", "r", "ing", "ish", "n", "ie"})


def _is_a_form_of(word: str, meant: str) -> bool:
    """*Peachy* and *limes* are no slips."""
    return word.startswith(meant) and word[len(meant) :] in _ENDINGS


def _is_said_twice(pairs: Sequence[tuple[FoundAmount, FoundName]]) -> bool:
    """Whether the same is measured twice: one of the two may put the other right."""
    keys = [name.key for _, name in pairs]
    return len(set(keys)) < len(keys)


def _paired(
    text: str, amounts: Sequence[FoundAmount], names: Sequence[FoundName]
) -> list[tuple[FoundAmount, FoundName]] | None:
    """Each amount with its name: the next one, or the one before where none follows."""
    first = names[0].start < amounts[0].start
    if first and _take_turns(names, amounts):
        return [*zip(amounts, names, strict=True)]
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


def _take_turns(names: Sequence[FoundName], amounts: Sequence[FoundAmount]) -> bool:
    """Whether each name has its amount behind it: *dark rum one ounce light rum one ounce*."""
    if len(names) != len(amounts):
        return False
    found = [each for pair in zip(names, amounts, strict=True) for each in pair]
    return all(one.end <= other.start for one, other in pairwise(found))


def _belongs(gap: str) -> bool:
    """Whether a name right behind an amount is what it measures: *two ounces of the rye*."""
    if _STOPS.search(gap):
        return False
    joining = ADJECTIVES | {"of", "the", "a", "an", "your", "our", "my"}
    return all(folded(word.group()) in joining for word in WORD.finditer(gap))


_JOINT = re.compile(
    r"[;/|+&]|:(?=[ ])|(?<!\bca)(?<!\bc)(?<!approx)(?<!max)(?<!min)[.](?=[ ])"
    r"|\b(?:and|then|plus|with|now)\b",
    re.IGNORECASE,
)

_COMMA = re.compile(r",")


def _borders(text: str, pairs: Sequence[tuple[FoundAmount, FoundName]]) -> tuple[int, ...]:
    """Where what is told of one thing ends and of the next begins."""
    found: list[int] = []
    for (one_amount, one_name), (amount, name) in pairwise(pairs):
        ends = max(one_amount.end, one_name.end)
        begins = min(amount.start, name.start)
        if begins < ends:
            return ()
        between = text[ends:begins]
        stops = [*_JOINT.finditer(between)] or [*_COMMA.finditer(between)]
        most = len(between) if len(between.split()) > 2 else 0
        found.append(ends + (stops[-1].start() if stops else most))
    return tuple(found)


def _in_order(
    said: Traced, thing: _Thing, makers: set[tuple[int, int]], tree: FamilyTree
) -> Traced:
    """One thing in the usual order: its amount, its name with its maker, and all else behind."""
    name_at = thing.name.start
    own = [start for start, end in makers if thing.start <= start and end <= name_at]
    begins = min(own) if own and not _STOPS.search(said.text[min(own) : name_at]) else name_at
    whole = [(begins, thing.name.end)]
    parts: list[Traced | str] = []
    if thing.amount is not None:
        hedge = re.search(r"[~≈±][ ]?$", said.text[: thing.amount.start])
        starts = hedge.start() if hedge else thing.amount.start
        whole.append((starts, thing.amount.end))
        parts = [said.part(starts, thing.amount.start), _written(said, thing.amount), " "]
    parts.append(said.part(begins, thing.name.end))
    if _names_nothing(said.text[begins : thing.name.end], thing.name.key, tree):
        parts[-1] = _in_full(said.part(begins, thing.name.end), thing.name.key, tree)
    at = thing.start
    for start, end in (*sorted(whole), (thing.end, thing.end)):
        for chunk in _chunks(said.part(at, max(at, start))):
            parts += [", ", chunk]
        at = max(at, end)
    return joined(parts)


def _names_nothing(words: str, key: str, tree: FamilyTree) -> bool:
    """Whether words are no name by themselves, but told which one of a kind was meant."""
    found = match_name(words, tree)
    return found is None or not found.key or not tree.is_a(found.key, key)


def _in_full(part: Traced, key: str, tree: FamilyTree) -> Traced:
    name = tree.in_sentence(key)
    return Traced(name, (part.place(0),) * len(name))


def _written(said: Traced, amount: FoundAmount) -> Traced:
    """The words of an amount, a range in figures."""
    part = said.part(amount.start, amount.end).stripped()
    read = amount.amount
    if read.high is None and (read.unit is None or read.unit_at or part.text[0].isdigit()):
        if folded(part.text) in ("a", "an"):
            return Traced("1", part.places[:1])
        return part
    if read.high is None:  # three quarters, of the unit that the others are in
        share = f"{show_number(read.value, fractions=False, mark='.')} {read.unit}"
        return Traced(share, (part.place(0),) * len(share))
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


_NO_PART_OF_A_NAME = frozenset(
    {"of", "and", "the", "a", "an", "then", "plus", "with", "so", "it", "or", "in", "to", "from"}
    | {"any", "other", "another", "similar", "your", "my", "our"}
)

_ONLY_JOINS = frozenset(
    {"of", "and", "the", "a", "an", "then", "plus", "with", "so", "it", "or", "in", "to", "from"}
)
