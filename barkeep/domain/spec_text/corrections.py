"""Slips that are put right while speaking, within a line or on the next.

| said                                             | read as                            |
|--------------------------------------------------|------------------------------------|
| an ounce of gin, no, make that an ounce and a half | an ounce and a half of gin       |
| fifteen, excuse me, fifty ml of vodka            | fifty ml of vodka                  |
| two ounces of bourbon, sorry, I mean rye         | two ounces of rye                  |
| an ounce of, no not lemon, grapefruit juice      | an ounce of grapefruit juice       |
| one ounce of simple, well, call it a half        | half an ounce of simple            |
| an ounce of sweet vermouth, make the vermouth ¾  | ¾ of an ounce of sweet vermouth    |
| two dashes of orange bitters, change that to aromatic | two dashes of aromatic bitters |
| an ounce of gin, double that; …, cut that in half | 2 oz of gin; ½ oz                 |
| a dash of saline, well, three or four drops really | three or four drops of saline    |

What a correction puts in place stands where the old words did; nothing else of
the line is touched. One that corrects nothing is left for the reader to ask about.
"""

from __future__ import annotations

import re
from collections.abc import Sequence

from barkeep.domain.amounts.amount import show_amount, show_number
from barkeep.domain.amounts.spoken import HOW_FULL
from barkeep.domain.amounts.units import BarUnits
from barkeep.domain.ingredients.names import match_ingredient, named
from barkeep.domain.ingredients.tree import FamilyTree, words_of_a_name
from barkeep.domain.phrases import folded
from barkeep.domain.spec_text.found import (
    FoundAmount,
    FoundName,
    amount_at,
    amounts_in,
    is_a_number,
    names_in,
    share_at,
)
from barkeep.domain.spec_text.traced import Traced, joined, squeezed

_SURE = (
    r"(?:no,|nope,?|no,?[ ]wait,?|wait,|wait,?[ ]no,?|(?:i'm[ ])?sorry,?|excuse[ ]me,?|pardon,?"
    r"|pardon[ ]me,?|(?:scratch|strike)[ ]that,?|correction[:,]?|or[ ]rather,?|rather,|i[ ]mean\b,?"
    r"|i[ ]meant|i[ ]said[ ][\w ]{1,20},[ ]*(?:but[ ])?i[ ]mean(?:t)?|i[ ]should[ ](?:say"
    r"|have[ ]said)"
    r"|or[ ]was[ ]it,?[ ](?:yeah|yes|yep),?|no,?[ ](?:less|more),?[ ]like|actually,?"
    r"|edit\b[:,]?|update\b[:,]?|edited[:,]?|fix[:,]|should['’]?ve[ ]been|shoulda[ ]been"
    r"|(?:that|it)[ ](?:should(?:['’]ve|[ ]have)?[ ]been|should[ ]be|was[ ]meant[ ]to[ ]be"
    r"|ought[ ]to[ ]be)"
    r"|oops,?|make[ ](?:that|it)|call[ ](?:that|it)|hang[ ]on,?|hold[ ]on,?"
    r"|let's[ ](?:say|make[ ](?:it|that)|call[ ]it|go)|no,?[ ](?=make|i[ ]mean|sorry|not[ ])"
    r"|no,?[ ](?=(?:one|two|three|four|five|six|half|ten|fifteen|twenty|thirty|[0-9])\b)"
    r"|(?<=\bof[ ])no,?[ ](?=(?:just|only|maybe|about)[ ]"
    r"(?:one|two|three|four|five|six|half|an?|[0-9¼½¾])\b)"
    r"|no,?[ ](?=an?[ ](?:(?:small|big|large|good|tiny|little|generous|heavy|light|scant|full)[ ])?"
    r"(?:ounce|half|quarter|dash|splash|barspoon|teaspoon|pinch|drop|tablespoon|cup|couple)\b)"
    r"|no[ ]*[-–—][ ]*(?=make|i[ ]mean|sorry|scratch|wait)|no[ ](?=make[ ](?:that|it)))"
)
_SMALL = r"(?:oh,?|er,?|uh,?|um,?|well,?)"
_JOINT = (
    rf"(?:{_SURE}|{_SMALL}|let's|go|with|it's|it|that's|that|should[ ]be|to|for|we'll|we|do|use|say"
    r"|want|i'll|no,?|make|be|just|a[ ]bit[ ]more,?|a[ ]bit[ ]less,?)"
)
_SLIP = re.compile(
    rf"(?P<gap>^|[ ]*[,.;…–—-]+[ ]*|[ ]+)(?:and[ ]|but[ ]|or[ ])?(?:{_SMALL}[ ]+)*{_SURE}"
    rf"(?:[ ,]*{_JOINT}(?![\w'-]))*[ ,]*(?=\S)",
    re.IGNORECASE,
)
_NOT_IT = re.compile(r"not[ ](?P<wrong>[^,]+),[ ]*(?:but[ ])?(?P<right>.+)", re.IGNORECASE)
_HOW_FULL = re.compile(rf"an?[ ](?P<how>{'|'.join(HOW_FULL)})[ ](?=\w)", re.IGNORECASE)
_IT_NOT = re.compile(r"(?P<right>.+?),?[ ]not[ ](?P<wrong>.+)", re.IGNORECASE)
_CHANGE = re.compile(
    r"(?:[ ]*[,.;–—-]+[ ]*|^|[ ]+(?=(?:(?:oh|and|then|no|wait|sorry|actually)[ ,]+)*"
    r"(?:swap|switch|change|double|halve)[ ](?:the|that|it)[ ]))"
    r"(?:(?:and|then|now|no|wait|sorry|actually|oh)[ ,]+)*"
    r"(?:(?:change|swap|switch)[ ](?:(?:that|it)(?:[ ]last[ ]one)?|(?:the[ ])?(?P<changed>[\w ]+?))"
    r"[ ](?:to|for|into)[ ](?P<to>.+)"
    r"|(?:(?:scratch|strike|forget)[ ]that[ ,]+"
    r"|hang[ ]on[ ,]+)?make[ ](?:the[ ])(?P<made>[\w ]+?)[ ]"
    r"(?P<amount>(?:an?[ ]|one|two|three|four|half|[0-9¼-¾.]).*)"
    r"|(?:the[ ])?(?P<should>[\w ]+?)[ ]should[ ](?:be|have[ ]been)[ ](?P<be>.+)"
    r"|(?:you[ ]know[ ]what[, ]+)?(?:let's[ ])?(?:bump|take|bring|drop|knock|push|cut)[ ]"
    r"(?:that|it|the[ ](?P<moved>[\w ]+?))[ ](?:up|down|back)[ ]to[ ](?P<moved_to>.+)"
    r"|(?P<double>double)[ ](?:that|it)(?:[ ]last[ ]one)?[ .]*"
    r"|(?:halve[ ](?:that|it)|cut[ ](?:that|it)(?:[ ]last[ ]one)?[ ]in[ ]half)(?P<halve>)[ .]*)$",
    re.IGNORECASE,
)
_TAKEN_OUT = re.compile(
    r"(?:(?:and|no|wait|actually|oh|sorry|so|then|but)[ ,]+)*(?:let's[ ])?"
    r"(?:scratch|skip|drop|lose|forget|strike|omit|cut|leave[ ]out|take[ ]out|hold)[ ]"
    r"(?:out[ ])?(?:the|that)[ ](?P<what>[^,.]+?)(?:[ ]out)?[ .,!]*"
    r"|leave[ ](?:the|that)[ ](?P<left>[^,.]+?)[ ](?:out|off)[ .,!]*"
    r"|(?:(?:actually|sorry|wait|oh|oops)[ ,]+)*(?:there['’]s[ ]"
    r"|there[ ]is[ ])?no[ ](?P<none>[^,.]+?)"
    r"[ ]in[ ](?:this|that|here|it)(?:[ ](?:one|drink|spec|recipe))?"
    r"(?:[ ,.]+(?:my[ ]mistake|my[ ]bad|sorry|that['’]s[ ]wrong|after[ ]all))?[ .,!]*",
    re.IGNORECASE,
)
_SAID_AGAIN = re.compile(
    r"(?:did|have)[ ]i[ ]sa(?:y|id)[ ](?P<what>[^?.,]+)[?.,].*\b(?:i[ ]did|yes|yeah|good"
    r"|right)\b.*",
    re.IGNORECASE,
)
_SAME = re.compile(
    r"(?:(?:and|then|plus|also|with|next|now)[ ,]+)*(?:(?:the[ ])?same(?:[ ]amount|[ ]again"
    r"|[ ]measure|[ ]quantity|[ ]much)?|ditto|as[ ]much|an?[ ]equal[ ](?:amount|measure))"
    r"[ ](?:of[ ])?(?:the[ ])?(?P<what>.+)",
    re.IGNORECASE,
)


_ON_SECOND_THOUGHT = (
    r"(?:actually|you[ ]know[ ]what|no|nah|nope|wait|hmm+|oh|well|sorry|hang[ ]on|hold[ ]on|and|but"
    r"|scratch[ ]that|on[ ]second[ ]thoughts?|i[ ]take[ ]that[ ]back)"
)
_USE_INSTEAD = (
    r"(?:let['’]?s[ ]|we['’]?ll[ ]|i['’]?ll[ ])?"
    r"(?:use|do|go[ ]with|try|pour|take|put[ ]in|make[ ]it)"
)
_ASKED_ONESELF = re.compile(
    rf"(?P<gap>^|[ ]*[,.;–—-]+[ ]*|[ ]+)(?:{_ON_SECOND_THOUGHT}[ ,.]+)*(?:did"
    rf"|have)[ ]i[ ]sa(?:y|id)"
    r"[ ](?P<old>[^?.,]+?)[?.,]*[ ]+(?:(?:no|sorry|but|oh|well|of[ ]course)[ ,]+)*"
    r"(?:i[ ]meant|i[ ]mean|make[ ](?:that|it)|(?:it|that)[ ]should(?:['’]ve|[ ]have)?[ ]be(?:en)?"
    r"|should(?:['’]ve|[ ]have)?[ ]be(?:en)?|it['’]?s|that['’]?s)[ ,]+(?P<new>[^?]+?)[ .!]*$",
    re.IGNORECASE,
)
_INSTEAD = re.compile(
    rf"(?P<gap>^|[ ]*[,.;–—-]+[ ]*|[ ]+)(?:{_ON_SECOND_THOUGHT}[ ,.]+)+{_USE_INSTEAD}[ ]"
    r"(?:the[ ]|an?[ ])?(?P<new>[^,.?]+?)[ ]instead(?:[ ]of[ ](?:the[ ]"
    r"|that[ ])?(?P<old>[^,.?]+?))?"
    r"[ .!]*$",
    re.IGNORECASE,
)
_PUTS_RIGHT = re.compile(
    rf"(?:{_ON_SECOND_THOUGHT}[ ,.]+)*"
    r"(?:i[ ]meant?\b|(?:did|have)[ ]i[ ]sa(?:y|id)\b|i[ ]said\b|make[ ]that\b"
    r"|should['’]?ve\b"
    r"|(?:my[ ](?:bad|mistake|fault)|change[ ]of[ ]plans?|(?:on|upon)[ ]reflection)\b"
    r"|i[ ](?:messed[ ]up|misspoke|lied|got[ ](?:that|it)[ ]wrong|take[ ]it[ ]back)\b"
    r"|let[ ]me[ ](?:rephrase|correct|start[ ]over|try[ ]again)\b|that['’]s[ ]wrong\b"
    r"|(?:that|it)[ ]should[ ](?:say|read|have|be(?![ ](?:plenty|enough|good|fine|it|about"
    r"|all)\b))\b|forget[ ](?:the|that|about)\b"
    rf"|on[ ]second[ ]thought|i[ ]take[ ]that[ ]back|scratch[ ]that"
    rf"|{_USE_INSTEAD}[ ].*[ ]instead[ .!]*$|[^,;()]*[^,;( ][ ]instead[ .!]*$)",
    re.IGNORECASE,
)
"""How a row begins that puts another one right, whether or not it is understood."""


def meant_instead(said: Traced) -> Traced:
    """*Did I say lemon, I meant lime* as *change the lemon to lime*; any other as it is."""
    plain = said.text.casefold()
    asked = _ASKED_ONESELF.search(said.text) if " i sa" in plain else None
    found = asked or (_INSTEAD.search(said.text) if " instead" in plain else None)
    if found is None:
        return said
    before, new = said.part(0, found.start()), said.part(*found.span("new"))
    gap = ", " if before.text.strip() else ""
    if not found["old"] or is_a_number(found["old"].split()[0]):
        return joined((before, f"{gap}I mean ", new))
    return joined((before, f"{gap}change the ", said.part(*found.span("old")), " to ", new))


def speaks_of_putting_right(text: str) -> bool:
    """Whether a row begins as one that puts another right: it is never a line of its own."""
    return _PUTS_RIGHT.match(text.strip()) is not None


def corrected(said: Traced, tree: FamilyTree, units: BarUnits) -> Traced:
    """A line with each slip in it put right, the last first said; else as it is."""
    meant = meant_instead(said)
    put = said if meant is said else corrected(meant, tree, units)
    if put is not meant and put is not said:
        return put
    for _ in range(4):  # nobody corrects a line more often in one breath
        better = (
            _change(said, tree, units)
            or _slip(said, tree, units)
            or _thought_better(said, tree, units)
        )
        if better is None:
            return said
        said = better
    return said


_POINTS_BACK = re.compile(r"\(?[ ]*(?:\^+|[↑⬆]\ufe0f?)[ ,:]*(?P<told>.*?)[ )]*", re.DOTALL)


def points_back(text: str) -> str | None:
    """What a row tells of the one before, which a mark points at: *^ make that Old Tom*.

    None for a row without such a mark.
    """
    found = _POINTS_BACK.fullmatch(text.strip())
    return found["told"] if found else None


def put_right(text: str, tree: FamilyTree, units: BarUnits) -> bool:
    """Whether a text holds a correction that found what it corrects."""
    said = squeezed(text)
    return corrected(said, tree, units) != said


def corrects(text: str) -> bool:
    """Whether a line of its own begins as a correction of what was said before."""
    slip = _SLIP.match(text)
    return bool(slip and slip["gap"] == "") or bool(_CHANGE.match(text))


def without_its_lead(text: str) -> str | None:
    """What a correction puts in place, where it stands alone: *no, make that an ounce of gin*."""
    slip = _SLIP.match(text)
    return text[slip.end() :] if slip and slip["gap"] == "" else None


def is_left(note: str) -> bool:
    """Whether a note is a correction that corrected nothing: *make it a whole lime*."""
    if _ONLY_LEADS_IN.fullmatch(note.strip(" .,")):
        return False
    alone = note.casefold().strip(" .!") in _ALONE
    return alone or corrects(f"{note} x") or taken_out(note) is not None


_ONLY_LEADS_IN = re.compile(
    r"(?:(?:uh|um|er|so|okay|ok|well|and|then|now|right)[ ,]+)*let['’]s[ ](?:say|go|call[ ]it)",
    re.IGNORECASE,
)
"""What is said before an amount to look for it, and corrects nothing."""

_ALONE = frozenset({"no", "nope", "wait", "no wait", "sorry", "actually", "oops", "scratch that"})


def target(text: str, before: Sequence[str], tree: FamilyTree) -> int | None:
    """Which of the lines before, from 0, a correction is of: one whose thing it names, or the last.

    None where there is none.
    """
    if not before:
        return None
    change = _CHANGE.match(text)
    named = (
        (change["changed"] or change["made"] or change["should"] or change["moved"])
        if change
        else None
    )
    slip = None if named else _SLIP.match(text)
    wrong = (
        (_NOT_IT.match(text[slip.end() :]) or _IT_NOT.match(text[slip.end() :])) if slip else None
    )
    named = named or (wrong["wrong"] if wrong else None)
    if named is None:
        return len(before) - 1
    return thing_named(named, before, tree)


def thing_named(name: str, before: Sequence[str], tree: FamilyTree) -> int | None:
    """The last of the lines that speaks of a thing by this name, None where none does."""
    words = folded(name).removeprefix("the ").strip(" .")
    for number in range(len(before) - 1, -1, -1):
        if re.search(rf"(?<!\w){re.escape(words)}(?!\w)", folded(before[number])):
            return number
    wanted = {each.key for each in names_in(name, tree)}
    for number in range(len(before) - 1, -1, -1):
        keys = {each.key for each in names_in(before[number], tree)}
        if any(tree.is_a(key, want) for key in keys for want in wanted):
            return number
    return None


def taken_out(text: str) -> str | None:
    """What a line takes out again: *scratch the syrup*; None where it takes out nothing."""
    found = _TAKEN_OUT.fullmatch(text.strip())
    return (found["what"] or found["left"] or found["none"]) if found else None


def says_again(text: str, before: Sequence[str], tree: FamilyTree) -> bool:
    """Whether a line only asks after an earlier one and leaves it be: *did I say rye? I did*."""
    found = _SAID_AGAIN.fullmatch(text.strip())
    number = thing_named(found["what"], before, tree) if found else None
    if number is None:
        return False
    there = {each.key for each in names_in(before[number], tree)}
    return {each.key for each in names_in(text, tree)} <= there


def with_the_same(text: str, before: str, units: BarUnits) -> str | None:
    """*The same amount of syrup* with the amount of the line before; None where it says no such."""
    same = _SAME.fullmatch(text.strip())
    amount = next((each for each in amounts_in(before, units)), None) if same else None
    if same is None or amount is None:
        return None
    return f"{before[amount.start : amount.end]} {same['what']}"


def _slip(said: Traced, tree: FamilyTree, units: BarUnits) -> Traced | None:
    for slip in _SLIP.finditer(said.text):
        before, after = said.part(0, slip.start()), said.part(slip.end())
        if not before.text.strip() or after.text.casefold().startswith("split "):
            continue
        wrong = _NOT_IT.match(after.text)
        right = wrong.start("right") if wrong else None
        after = _without_what_it_is_not(after, tree) if right is None else after.part(right)
        other = None if wrong else _IT_NOT.fullmatch(after.text)
        if other:
            after = after.part(0, other.end("right"))
        better = _put_right(before, after, tree, units)
        if better:
            return better
    return None


_RATHER = re.compile(
    r"[ ,.–—-]+(?:well|okay|ok|hm+|(?:or[ ])?more[ ]like|or[ ]rather)[ ,]+"
    r"(?P<after>[^,.;]+?)[ ,]+"
    r"(?:really|actually|rather|i[ ]guess|i[ ]suppose|i[ ]think|to[ ]be[ ]honest)[ .!]*$",
    re.IGNORECASE,
)
"""*A dash of saline, well, three or four drops really*."""


def _thought_better(said: Traced, tree: FamilyTree, units: BarUnits) -> Traced | None:
    """With the amount that is said last, where it is all that is said then."""
    found = _RATHER.search(said.text)
    amount = amount_at(f"{found['after']} ", units) if found else None
    if found is None or amount is None or amount.unit is None:
        return None
    if found["after"][amount.end :].strip():
        return None
    before, after = said.part(0, found.start()), said.part(*found.span("after"))
    return _put_right(before, after, tree, units)


def _without_what_it_is_not(after: Traced, tree: FamilyTree) -> Traced:
    """*Not lime orange*: two names in a row behind *not* are what it is not, and what it is."""
    if not after.text.casefold().startswith("not "):
        return after
    names = list(names_in(after.text, tree))
    if len(names) < 2 or names[0].start > len("not the "):
        return after
    return after.part(names[1].start) if names[1].start == names[0].end + 1 else after


def _change(said: Traced, tree: FamilyTree, units: BarUnits) -> Traced | None:
    for change in _CHANGE.finditer(said.text):
        before = said.part(0, change.start())
        if not before.text.strip():
            continue
        amount = _last_amount(before.text, units)
        if change["double"] or change["halve"] is not None:
            if amount is None:
                return None
            times = 2.0 if change["double"] else 0.5
            return before.said_instead(amount.start, amount.end, _times(amount, times, units))
        group = next(each for each in ("to", "amount", "be", "moved_to") if change[each])
        after = said.part(*change.span(group))
        thing = change["changed"] or change["made"] or change["should"] or change["moved"]
        names = list(names_in(before.text, tree)) if thing else []
        ends = _end_of_the_thing(thing, before.text, names, tree) if thing else None
        if ends is not None and names and ends < names[-1].start:  # and not the last one said
            first = before.part(0, ends)
            better = _put_right(first, after, tree, units)
            return joined((better, before.part(ends))) if better else None
        return _put_right(before, after, tree, units) or _completed(before, after, tree, units)
    return None


def _end_of_the_thing(
    thing: str, text: str, names: Sequence[FoundName], tree: FamilyTree
) -> int | None:
    """Where the name that a correction speaks of ends, the last of several."""
    wanted = {each.key for each in names_in(thing, tree)}
    words = words_of_a_name(folded(thing))
    for each in reversed(names):
        said = words_of_a_name(folded(text[each.start : each.end]))
        if words <= said or any(tree.is_a(each.key, want) for want in wanted):
            return each.end
    return None


_WHY = re.compile(
    r"[ ,]+(?:(?:be)?cause|['’]cause|cuz|cos|since|as[ ](?:these|the|this|my|it|they|i|we)"
    r"|seeing[ ]as|otherwise"
    r"|so[ ](?:that|it|we|the)|it['’]?s[ ](?:a|so|too|really)|they['’]?re|these[ ]are|this[ ]is"
    r"|i[ ]think|if[ ]"
    r"(?:you|the|it|they)|when[ ]the|for[ ]this[ ]one|this[ ]time|today|tonight|i[ ](?:like|want"
    r"|prefer))\b.*$",
    re.IGNORECASE,
)
"""*Make it three quarters because the lemons are sour*: why, which corrects nothing itself."""


def _put_right(before: Traced, after: Traced, tree: FamilyTree, units: BarUnits) -> Traced | None:
    """What was said before with what is said after in its place; None where that is neither."""
    why = _WHY.search(after.text)
    if why and after.text[: why.start()].strip():
        better = _put_right(before, after.part(0, why.start()), tree, units)
        return joined((better, ", ", after.part(why.start()).stripped())) if better else None
    amount, name = _last_amount(before.text, units), _last_name(before.text, tree, units)
    recounted = _recounted(before, after, name, tree)
    if recounted:
        return recounted
    is_a_name = named(after.text.strip(" .!"), tree) is not None  # I mean 151 rum
    given = None if is_a_name else amount_at(f"{after.text} ", units)
    full = _HOW_FULL.match(after.text) if given is None and not is_a_name else None
    if full and amount_at(f"a {after.text[full.end() :]} ", units):  # no, a small pinch
        after = joined(("a ", after.part(full.end()), f", {full['how']}"))
        given = amount_at(f"{after.text} ", units)
    number = share_at(after.text) if given is None and not is_a_name else None
    end = given.end if given else (number or (0, ""))[0]
    rest = after.part(end)
    has_name = next(names_in(rest.text, tree), None) is not None
    if given is None and number is None:
        completed = _completed(before, after, tree, units)
        if not has_name or (completed and _is_another(after, completed, tree)):
            return None if has_name else completed
        return completed or _renamed(before, after, name, tree)
    if amount is None:
        return None
    words = after.text[:end].rstrip()
    if (given is not None and given.unit is None) or number is not None:
        words = f"{number[1] if number else words} {_unit_of(before.text, amount, units)}".strip()
    put = before.said_instead(amount.start, amount.end, words)
    if not has_name:
        return joined((put, rest)) if rest.text.strip(" .,!") else put
    if name and _is_part_of(rest.text, before.text[name.start : name.end]):
        return put
    gap = " " if rest.text[:1].strip() else ""
    return joined((before.part(0, amount.start), f"{words}{gap}", rest))


def _is_another(after: Traced, completed: Traced, tree: FamilyTree) -> bool:
    """Whether new words alone name something else than with the old name's: *I mean añejo*."""
    alone = named(after.text.strip(" .!"), tree)
    last = next(reversed(list(names_in(completed.text, tree))), None)
    if alone is None or alone.key is None or last is None:
        return False
    both_poured = tree[alone.key].unit == tree[last.key].unit == "ml"
    return both_poured and alone.key != last.key


def _is_part_of(said: str, name: str) -> bool:
    """Whether words only say again what a name has: *honey* of *honey syrup*."""
    words = words_of_a_name(folded(said.strip(" .,!")))
    return bool(words) and words <= words_of_a_name(folded(name))


def _unit_of(text: str, amount: FoundAmount, units: BarUnits) -> str:
    """The unit of an amount as it is written, or of the one before where it has none."""
    measured = [
        each
        for each in amounts_in(text[: amount.end], units)
        if each.amount.unit not in (None, "each")
    ]
    last = amount if amount.amount.unit else (measured[-1] if measured else amount)
    return text[_unit_begins(last) : last.end].strip()


def _completed(before: Traced, after: Traced, tree: FamilyTree, units: BarUnits) -> Traced | None:
    """*Change that to aromatic*: the last words of the old name belong to the new one."""
    name = _last_name(before.text, tree, units)
    words = before.text[name.start : name.end].split() if name else []
    bare = after.part(0, len(after.text.rstrip(" .!")))
    bare = _without_one(bare)
    for start in (*range(1, len(words)), 0)[: len(words)]:
        longer = joined((bare, f" {' '.join(words[start:])}"))
        if named(longer.text, tree):
            return _renamed(before, longer, name, tree)
    return None


_WHICH_ONE = re.compile(
    r"(?:(?:the|an?)[ ])?(?P<which>.+?)(?:[ ](?:one|kind|sort|style|stuff|type|version))?", re.I
)


def _without_one(after: Traced) -> Traced:
    """*The citrus one*, *the navy strength*: the word that tells which."""
    which = _WHICH_ONE.fullmatch(after.text)
    return after.part(*which.span("which")) if which else after


_A_PIECE = re.compile(r"(?:an?[ ]|the[ ])?(?:whole|half|quarter|full)\b", re.IGNORECASE)


def _renamed(
    before: Traced, after: Traced, name: FoundName | None, tree: FamilyTree
) -> Traced | None:
    if _A_PIECE.match(after.text):
        return _recounted(before, after, name, tree)
    article = re.match(r"(?:an?|the|some)[ ]+", after.text, re.IGNORECASE)
    after = after.part(article.end()) if article else after
    if name is None:
        if re.search(r"\b(?:of|the|with)[ ,]*$", before.text, re.IGNORECASE):
            return joined((before.part(0, len(before.text.rstrip(" ,"))), " ", after))
        return _unfinished(before, after)
    whole = match_ingredient(before.text[name.start :], tree)
    end = name.end if whole.key == name.key else len(before.text)  # gin (Old Tom), I mean rye
    return joined((before.part(0, name.start), after, before.part(end)))


_HOW_MUCH_OF_ONE = re.compile(
    r"(?:an?[ ])?(?:half|quarter|third|whole|full)[ ](?:of[ ])?(?:an?[ ])?$|\b(?:an?|one|1)[ ]$",
    re.IGNORECASE,
)


def _recounted(
    before: Traced, after: Traced, name: FoundName | None, tree: FamilyTree
) -> Traced | None:
    """*Half a lime …, make it a whole lime*: how much of one, where it is of the same."""
    piece = _A_PIECE.match(after.text)
    found = next(names_in(after.text[piece.end() :], tree), None) if piece else None
    old = _HOW_MUCH_OF_ONE.search(before.text[: name.start]) if name else None
    if piece is None or found is None or name is None or old is None:
        return None
    if not tree.is_a(name.key, found.key) and not tree.is_a(found.key, name.key):
        return None
    whole = re.search(r"whole|full", piece.group(), re.IGNORECASE)
    words = "one " if whole else f"{piece.group().strip()} a "
    return before.said_instead(old.start(), old.end(), words)


_UNFINISHED = re.compile(r"(?P<begun>.*\bof )[\w'-]+(?: [\w'-]+)?[ ,]*", re.IGNORECASE)


def _unfinished(before: Traced, after: Traced) -> Traced | None:
    """*Thirty ml of sweet, no wait, dry vermouth*: a name that was only begun."""
    begun = _UNFINISHED.fullmatch(before.text)
    return joined((before.part(0, begun.end("begun")), after)) if begun else None


def _last_amount(text: str, units: BarUnits) -> FoundAmount | None:
    bare = re.sub(r"\([^()]*\)", lambda aside: " " * len(aside.group()), text)
    found = list(amounts_in(bare, units))
    measured = [each for each in found if each.amount.unit is not None]
    of_it = [each for each in found if bare.startswith(" of ", each.end)]
    if measured and of_it and of_it[-1].start > measured[-1].start:
        return of_it[-1]  # one ounce of lemon and one of honey syrup
    return next(reversed(measured or found), None)


def _last_name(text: str, tree: FamilyTree, units: BarUnits) -> FoundName | None:
    """The last name in a text, with all that is said of it, as far as one name goes."""
    found = list(names_in(text, tree))
    amount = _last_amount(text, units)
    found = [each for each in found if amount is None or each.start >= amount.end]
    if not found:
        return None
    return FoundName(found[0].start, found[-1].end, found[-1].key)


def _unit_begins(amount: FoundAmount) -> int:
    return amount.start + amount.amount.unit_at


def _times(found: FoundAmount, times: float, units: BarUnits) -> str:
    value, unit = found.amount.value * times, found.amount.unit
    if unit is None:
        return show_number(value, fractions=True, mark=".")
    return show_amount(value, unit, units)
