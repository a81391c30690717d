"""One line of a spec: text -> amount, ingredient and notes; and back.

What stands around the name is taken off by `barkeep.domain.spec_text.around_the_name`; what
is left is a name, a choice of names, or several things of one amount.
"""

from __future__ import annotations

import re
from collections.abc import Callable, Iterator, Mapping, Sequence
from dataclasses import dataclass, replace
from functools import partial
from typing import cast

from barkeep.domain.amounts.amount import EXAMPLES, spaced
from barkeep.domain.amounts.measures import dimension, to_quantity
from barkeep.domain.amounts.units import US_UNITS, BarUnits, unit_named, unit_words
from barkeep.domain.ingredients.line_words import tells_nothing_else
from barkeep.domain.ingredients.names import (
    ADJECTIVES,
    ADJUSTED,
    GUESSED,
    STATEMENT,
    Match,
    bare_name,
    find_name,
    match_name,
    named,
    narrowed,
    suggestions,
    without_notes,
)
from barkeep.domain.ingredients.slips import LEAST_LETTERS, one_letter_off, slips_beside
from barkeep.domain.ingredients.tree import FamilyTree, Ingredient, singular, words_of_a_name
from barkeep.domain.liquids.ethanol import read_strength
from barkeep.domain.phrases import folded
from barkeep.domain.spec_text.around_the_name import (
    Draft,
    begun,
    count_what_is_noted,
    hold_what_is_noted,
    is_its_size,
    take_around,
    take_how_much,
)
from barkeep.domain.spec_text.choices import Choice, choice_in, with_notes
from barkeep.domain.spec_text.corrections import corrected, is_left, without_its_lead
from barkeep.domain.spec_text.flavours import may_be_poured
from barkeep.domain.spec_text.for_so_many import question_of
from barkeep.domain.spec_text.foreign_grammar import Unsure
from barkeep.domain.spec_text.found import WORD, names_in
from barkeep.domain.spec_text.freely import (
    put_apart,
    said_freely,
    with_a_name_put_right,
    with_a_whole_name_put_right,
)
from barkeep.domain.spec_text.languages import Said, in_english
from barkeep.domain.spec_text.misplaced import put_in_place
from barkeep.domain.spec_text.prepared import Prepared, prepared_from, which_one
from barkeep.domain.spec_text.several import items_in, likely_split
from barkeep.domain.spec_text.speech import (
    in_pieces,
    put_in_writing,
    with_its_kind,
    with_its_maker_behind,
)
from barkeep.domain.spec_text.traced import Traced, squeezed
from barkeep.domain.spec_text.unplaced import Placed, unplaced
from barkeep.domain.specs.quantities import quantity_of
from barkeep.domain.specs.spec import Line
from barkeep.errors import AmountError, InvalidField, NegativeAmount, WrongDimension, spoken_list
from barkeep.translation import tr, tr_noop

LONGEST = 300
"""Characters; a line of a spec is never longer."""


_STRENGTH = (
    r"[0-9]{1,3}(?:[.,][0-9]+)?[ ]?"
    r"(?:%(?:[ ]?(?:vol|abv))?|(?:(?:us|uk|british)[ ]?)?proof)"
)

_LEAST = re.compile(
    rf"(?:at[ ]least|min(?:imum)?\.?|over)[ ](?P<least>{_STRENGTH})"
    rf"|(?P<more>{_STRENGTH})[ ](?:or[ ](?:more|above|stronger|higher|over|better|up|greater)"
    r"|minimum|and[ ](?:up|above))",
    re.IGNORECASE,
)
_OPTIONAL = frozenset(
    {
        "optional",
        "optionally",
        "opt",
        "opt.",
        "if you like",
        "if liked",
        "if you want",
        "if desired",
    }
    | {
        "if you fancy",
        "if wanted",
        "if using",
        "totally optional",
        "if available",
        "if you have it",
        "if you have any",
    }
)
_OPTIONAL_SAID = re.compile(
    r"(?<!not )\boptional\b|^(?:(?:for|as|to)[ ](?:an?[ ]|the[ ])?garnish[ ,]+)?(?:(?:and|but"
    r"|only|just|totally|it['’]?s|that['’]?s|this|is|all|use"
    r"|add|go[ ]for[ ]it"
    r"|maybe)[ ,]+)*if[ ](?:(?:you(?:['’]re|[ ]are)?|one)[ ](?:(?:really|all)[ ])?"
    r"(?:like|want|fancy|feel(?:ing)?|wish|prefer|care[ ]for|dig|enjoy|(?:so[ ])?inclined|into"
    r"|up[ ]for|keen[ ]on|a[ ]fan[ ]of|partial[ ]to|brave[ ]enough|in[ ]the[ ]mood"
    r"|swing[ ]that[ ]way|can[ ]be[ ]bothered)\b"
    r"|(?:that|it|this)(?:['’]s|[ ]is)[ ](?:your|their)[ ](?:thing|jam|bag|cup[ ]of[ ]tea|style"
    r"|taste)\b)",
    re.IGNORECASE,
)
"""What says so within other words: *and that's optional*."""

_GARNISH = frozenset(
    {
        "garnish",
        "for garnish",
        "garnish only",
        "for a garnish",
        "as garnish",
        "to garnish",
        "as a garnish",
        "for the garnish",
    }
)


_ON_TOP = re.compile(
    r"\b(?:express(?:ed)?|discard(?:ed)?|on[ ]an?[ ](?:pick|skewer|stick)|grated[, ]+(?:on|over)[ ]"
    r"(?:the[ ])?top|over[ ]the[ ]top|(?:on|for|around)[ ](?:half[ ](?:of[ ])?)?(?:the|a"
    r"|your)[ ](?:glass[ ])?rim|as[ ](?:the|an?|our|my|your)[ ]garnish|dusted"
    r"|dusting[ ]of|over[ ](?:the|its|your)[ ](?:foam|froth|head|crust)|^dusting[ ]of"
    r"|on[ ](?:the[ ])?(?:side|edge|lip)(?:[ ]of[ ](?:the|your|each)[ ]glass)?$"
    r"|^for[ ](?:the[ ]|an?[ ]|your[ ])?rim(?:ming)?$"
    r"|^to[ ](?:finish|decorate)$|^(?:(?:freshly|finely|lightly)[ ])?(?:grated|dusted|shaved"
    r"|sprinkled)"
    r"[, ]+(?:over|on)(?:[ ](?:it|top|the[ ](?:top|drink|foam|surface|glass)))?$"
    r"|^on[ ]top(?:$|[ ](?:and|of)[ ])|(?:^|,[ ])(?:for|as)[ ](?:(?:the|an?|our|my"
    r"|your)[ ])?garnish[ ]"
    r"|tuck(?:ed)?[ ]it|by[ ]the[ ]straw)\b",
    re.IGNORECASE,
)
"""What is done with a garnish and nothing else."""

_WITH_IT = re.compile(r"(?:^|, )(?:for serving|to serve|on the side)(?:$|,)", re.IGNORECASE)
"""*A lime wedge, to serve*: what is put beside the drink, where it is a piece of fruit."""

_CUT = frozenset({"wedge", "slice", "wheel", "peel", "twist", "zest", "cherry", "olive"})


def _is_cut_fruit(key: str, tree: FamilyTree) -> bool:
    return folded(tree.name(key)).split()[-1] in _CUT


_WANTED_MAYBE = re.compile(
    r"(?:only[ ])?if[ ](?:you|people|anyone|anybody|they|your[ ]guests?|guests)(?:['’]d)?[ ]"
    r"(?:really[ ])?(?:like|want|wish|fancy|prefer|care)\b.*|(?:leave|skip|omit)[ ](?:it"
    r"|this|that)\b.*",
    re.IGNORECASE,
)
"""What says that a line may be left out, and is kept for when."""

_THE_USUAL = re.compile(
    r"\b(?:the|my|our|your)[ ](?:usual|regular|normal|same|good)(?:[ ](?:one|kind|sort"
    r"|stuff|bottle))?$"
    r"|\b(?:whatever|whichever)[ ](?:you|we|i|is)\b",
    re.IGNORECASE,
)
"""What tells of a grouping no more than that it is known elsewhere which is meant."""

_SQUEEZED = frozenset({"lime", "lemon", "orange", "grapefruit", "mandarin", "yuzu"})
"""Fruit that is poured as its juice and never counted by the dozen."""

_IN_THE_DRINK = re.compile(r"\bin[ ](?:the|it|your)\b", re.IGNORECASE)

_HAVE_ONE = re.compile(
    r"(?:have|halve)[ ](?=an?[ ](?:ounce|teaspoon|barspoon|cup)\b)", re.IGNORECASE
)
"""*Half an ounce* as it may be taken down from speech."""

_DOUBT = re.compile(
    r"\bor[ ]was[ ](?:it|that)\b|\b(?:i|we)[ ](?:forget|(?:can|don)['’]?t[ ]remember"
    r"|am[ ]not[ ]sure|have[ ]forgotten)"
    r"(?:[ ]which|[ ]what)?"
    r"|\bi['’]m[ ]not[ ]sure|\bnot[ ]sure[ ]which|\btbd\b|\btbc\b|\?\?+|\?[ ]*$",
    re.IGNORECASE,
)
"""What says that the writer does not know it either."""


@dataclass(frozen=True, slots=True)
class Complaint:
    """What is wrong with a line, and at which character from 0.

    `say` tells it; looking for the nearest names is only paid for when it is told.
    `unknown` is the text that names nothing known, where that is what is wrong;
    `answer` is the line as it is likely meant, ready to be taken; `which` says that only
    the kind of a grouping is asked for, and `in_other_order` that the words may be understood
    where they are taken in another order than the usual one.
    """

    at: int
    say: Callable[[], str]
    unknown: str | None = None
    answer: str | None = None
    which: bool = False
    in_other_order: bool = False


@dataclass(frozen=True, slots=True)
class ReadLine:
    """A line as it was read, and what is wrong with it.

    The ingredient of `line` is empty where none is known by that name;
    `matched` is the name that was taken for it and `confidence` how sure that
    is. Where none is known, `guesses` are the likeliest by their spelling, to be
    asked about and never taken. `row` is the line of the text it stands on,
    from 1, and 0 where it is from no text.
    """

    line: Line
    complaints: tuple[Complaint, ...] = ()
    matched: str | None = None
    confidence: float = 0.0
    row: int = 0
    guesses: tuple[Match, ...] = ()

    @property
    def known(self) -> Line | None:
        """The line of a spec, None where its ingredient is not known."""
        return self.line if self.line.ingredient else None


def read_line(
    text: str, tree: FamilyTree, units: BarUnits = US_UNITS, *, garnish: bool = False
) -> ReadLine:
    """Read one line, the first where it is several; see `read_lines`."""
    return read_lines(text, tree, units, garnish=garnish)[0]


def read_lines(
    text: str, tree: FamilyTree, units: BarUnits = US_UNITS, *, garnish: bool = False
) -> tuple[ReadLine, ...]:
    """Read one line of a text at a bar that means `units` by its measures.

    It is several lines of a spec where it says *each*: *2 oz each of gin and
    sweet vermouth*. Never raises; what cannot be used is in the complaints.
    """
    known = cast("dict[tuple[str, BarUnits, bool], tuple[ReadLine, ...]]", tree.read_lately)
    key = (text, units, garnish)
    found = known.get(key)
    if found is None:
        if len(known) >= KEPT_LATELY:
            known.clear()
        found = known[key] = _read_anew(text, tree, units, garnish=garnish)
    return found


KEPT_LATELY = 1000
"""Lines; a text is looked at before it is read, and an editor reads it again at each key."""


def _read_anew(
    text: str, tree: FamilyTree, units: BarUnits, *, garnish: bool
) -> tuple[ReadLine, ...]:
    said = in_english(text[: LONGEST + 1], tree)
    if said.language is None:
        return _read_english(text, tree, units, garnish=garnish)
    read = _read_english(said.text, tree, units, garnish=garnish, told=said.told)
    return tuple(_in_own_words(each, said, tree, alone=len(read) == 1) for each in read)


def _in_own_words(read: ReadLine, said: Said, tree: FamilyTree, *, alone: bool) -> ReadLine:
    """A line that was read in English, told of in the words it was written in."""
    written = said.original.strip() if alone else said.as_written(read.line.text)
    matched = read.matched and said.as_written(read.matched)
    line = _line_in_own_words(read.line, written, said, read.matched)
    read = replace(read, line=line, matched=matched)
    complaints = [_complaint_in_own_words(each, said) for each in read.complaints]
    unsure = [each for each in said.unsure if each.words in written]
    if not unsure:
        return replace(read, complaints=tuple(complaints))
    either = [each for each in unsure if each.may_be]
    unknown = any(each.unknown for each in complaints)
    if either:
        complaints = [each for each in complaints if not each.unknown]
    told = either if either or unknown else unsure
    complaints += [_about(each, tree) for each in told]
    keys = [key for each in either for key in each.may_be if key in tree]
    guesses = tuple(Match(key, tree.name(key), GUESSED) for key in keys)
    return replace(read, complaints=tuple(complaints), guesses=guesses)


_TELLS_WHAT_IS_DONE = frozenset(
    {"to top", "to fill", "float", "rinse", "rim", "half rim", "juice", "zest", "peel", "expressed"}
    | {"flamed", "to taste", "a few", "by volume", "by the piece", "by weight", "by parts"}
)
"""Notes that are read again by what is made of a line, and so stay the words they are."""


def _called_as_written(line: Line, matched: str | None, said: Said) -> str:
    """What the writer called it, where that is no English name of it."""
    english = line.called or matched or ""
    for words in (english, english.lower()):
        written = said.as_written(words)
        if folded(written) != folded(english):
            return written
    return line.called


def _line_in_own_words(line: Line, written: str, said: Said, matched: str | None) -> Line:
    """A line with all that is kept of it in the words it was written in."""
    notes = (
        each if each in _TELLS_WHAT_IS_DONE else said.as_written(each)
        for each in line.note.split(", ")
    )
    return replace(
        line,
        text=written,
        note=", ".join(notes),
        called=_called_as_written(line, matched, said),
        stated=tuple(map(said.as_written, line.stated)),
    )


def _complaint_in_own_words(complaint: Complaint, said: Said) -> Complaint:
    unknown = complaint.unknown and said.as_written(complaint.unknown)
    say = partial(_as_written, complaint, said)
    return replace(complaint, at=said.place(complaint.at), say=say, unknown=unknown)


def _as_written(complaint: Complaint, said: Said) -> str:
    """What is wrong, with the words it quotes as they were written."""
    return _QUOTED.sub(
        lambda each: f"{each[1]}{said.as_written(each[2])}{each[3]}", complaint.say()
    )


_QUOTED = re.compile(r"([“„])([^“”]*)([”“])")
"""Quoted words, in English or in German; a line's own quotes are straight."""


def _about(unsure: Unsure, tree: FamilyTree) -> Complaint:
    return Complaint(
        unsure.at, partial(_either, unsure, tree), unsure.words if unsure.may_be else None
    )


def _either(unsure: Unsure, tree: FamilyTree) -> str:
    names = [tree.in_sentence(key) for key in unsure.may_be if key in tree] or unsure.may_be
    if not names:
        return tr(
            "“{words}” is not understood; put it in brackets behind the ingredient",
            words=unsure.words,
        )
    return tr("“{words}” may be {names}; write which", words=unsure.words, names=spoken_list(names))


def _read_english(
    text: str,
    tree: FamilyTree,
    units: BarUnits,
    *,
    garnish: bool,
    told: frozenset[str] = frozenset(),
) -> tuple[ReadLine, ...]:
    """A line that is in English, but for words that `told` holds and name nothing."""
    if len(text) > LONGEST:
        line = Line(text.strip()[:LONGEST], "", garnish=garnish)
        return (ReadLine(line, (Complaint(0, _too_long),)),)
    spoken = _without_mark(squeezed(spaced(text).rstrip()))
    written = put_in_writing(spoken, units, english=not told)
    said = _with_its_own(corrected(written, tree, units), tree)
    read = _read_items(items_in(said, tree, units), text, tree=tree, units=units, garnish=garnish)
    read = _without_repeats(read, said, written)
    if not any(each.in_other_order for line in read for each in line.complaints):
        return read
    pieces = in_pieces(said, units)
    apart = put_apart(pieces, tree)
    put_right = (with_a_name_put_right(apart, tree), with_a_whole_name_put_right(apart, tree))
    for better in dict.fromkeys((said, pieces, apart, *put_right)):
        ways = [said_freely(better, tree, units, told)]
        if better is not said:
            ways.insert(0, items_in(better, tree, units))
        ways += put_in_place(better, tree, units)
        for way in filter(None, ways):
            again = _read_items(way, text, tree=tree, units=units, garnish=garnish)
            if not any(each.complaints for each in again):
                called: set[int] = set()
                return tuple(
                    _with_its_slips(each, better, spoken.text, tree=tree, told=called)
                    for each in again
                )
    return read


_ITS_OWN = re.compile(
    r"\b(?:its|their)[ ](?:own[ ])?(?P<what>syrup|brine|juice|liquid|leaves)\b", re.IGNORECASE
)


def _with_its_own(said: Traced, tree: FamilyTree) -> Traced:
    """*1 cocktail cherry + 1 tsp of its syrup*: the syrup is that of what was named before."""
    plain = said.text.casefold()
    own = _ITS_OWN.search(said.text) if "its " in plain or "their " in plain else None
    name = next(reversed(list(names_in(said.text[: own.start()], tree))), None) if own else None
    if own is None or name is None:
        return said
    written = singular(folded(said.text[name.start : name.end]))
    for thing in (tree.in_sentence(name.key), written):
        if named(f"{thing} {own['what']}", tree):
            return said.said_instead(*own.span(), f"{thing} {own['what']}")
    return said


def _with_its_slips(
    read: ReadLine, said: Traced, written: str, *, tree: FamilyTree, told: set[int]
) -> ReadLine:
    """A line in whose name a slip was put right, called as it was written: *bourbn*.

    `told` are the places of slips that lines before it are called by.
    """
    line = read.line
    called = line.called or tree.in_sentence(line.ingredient)
    for word in WORD.finditer(said.text):
        places = said.places[word.start() : word.end()]
        there = written[places[0] : places[-1] + 1] if places else ""
        put = len(set(places)) == 1 and len(word.group()) > 1  # in place of another
        if put and places[0] not in told:
            there = next(
                (each.group() for each in WORD.finditer(written) if each.start() == places[0]), ""
            )
            named_so = rf"(?<!\w){re.escape(word.group())}(?!\w)"
            if re.search(named_so, called, re.IGNORECASE):
                called = re.sub(named_so, there, called, flags=re.IGNORECASE)
                line = replace(line, text=re.sub(named_so, there, line.text, flags=re.IGNORECASE))
                told.add(places[0])
    called = re.sub(r"(?<!\w)(\w+)[ ]\1(?!\w)", r"\1", called)  # run together, and put apart
    same = called == (line.called or tree.in_sentence(line.ingredient))
    return read if same else replace(read, line=replace(line, called=called))


def _without_repeats(
    read: tuple[ReadLine, ...], said: Traced, written: Traced
) -> tuple[ReadLine, ...]:
    """A line put right by saying all of it again, once: *wait no it's the Old Tom, two ounces*."""
    if said == written or len(read) < 2:
        return read
    kept: list[ReadLine] = []
    for each in read:
        line = each.line
        alike = (line.ingredient, line.amount, line.amount_high, line.unit)
        last = kept[-1].line if kept else None
        if not last or alike != (last.ingredient, last.amount, last.amount_high, last.unit):
            kept.append(each)
    return tuple(kept)


def _read_items(
    items: Sequence[Traced], text: str, *, tree: FamilyTree, units: BarUnits, garnish: bool
) -> tuple[ReadLine, ...]:
    """The things of a line, each in the usual order."""
    if len(items) == 1:
        read = _read_item(items[0], text.strip(), tree=tree, units=units, garnish=garnish)
        for way in (with_its_kind, with_its_maker_behind) if read.complaints else ():
            better = way(items[0], units)
            if better is not items[0]:
                again = _read_item(better, text.strip(), tree=tree, units=units, garnish=garnish)
                read = read if again.complaints else again
        return (_said_otherwise(read, text.strip(), tree, units),)
    return tuple(_read_item(each, "", tree=tree, units=units, garnish=garnish) for each in items)


def _said_otherwise(read: ReadLine, text: str, tree: FamilyTree, units: BarUnits) -> ReadLine:
    """A line that is likely meant as another is read: a correction alone, a split said first."""
    if not read.complaints:
        return read
    told = tr_noop("this corrects a line before it, and there is none")
    likely = without_its_lead(text)
    if likely is None:
        told, likely = tr_noop("how much of each is this?"), likely_split(text, tree, units)
    if not likely or any(each.complaints for each in read_lines(likely, tree, units)):
        return read
    line = replace(read.line, ingredient="", note="")
    asked = Complaint(0, lambda: _or_likely(tr(told), likely), answer=likely)
    return replace(read, line=line, complaints=(asked,))


def _too_long() -> str:
    return tr("a line has at most {most} characters", most=LONGEST)


def _or_likely(told: str, likely: str | None) -> str:
    """What is wrong or asked, with the line as it is likely meant, where that is known."""
    if not likely:
        return told
    if told.endswith("?"):
        return tr("{question} likely “{line}”", question=told, line=likely)
    return tr("{told}; likely “{line}”", told=told, line=likely)


def _without_mark(said: Traced) -> Traced:
    """A line without the space, bullet or number in front of it."""
    draft = begun(said.text, US_UNITS)
    return said.part(draft.at)


def _read_item(
    item: Traced, text: str, *, tree: FamilyTree, units: BarUnits, garnish: bool
) -> ReadLine:
    """One ingredient with its amount; the places of what is wrong are those of the whole line.

    `text` is all of the line, empty where others stand on it.
    """
    draft = begun(item.text, units)
    draft.beside_others, text = not text, text or item.text
    whole = draft.rest
    try:
        take_around(draft)
    except (AmountError, NegativeAmount):
        line = Line(text, "", garnish=garnish)
        wrong = Complaint(item.place(draft.begins), partial(_no_amount, item.text, units))
        return ReadLine(line, (wrong,))
    line = Line(
        text=text,
        ingredient="",
        garnish=garnish or draft.garnish,
        optional=draft.optional and bool(whole),
    )
    read = _finish(line, draft, tree)
    told = tuple(replace(each, at=item.place(each.at)) for each in read.complaints)
    return replace(read, complaints=told) if told else read


def _no_amount(text: str, units: BarUnits) -> str:
    """What is wrong with an amount, found anew: what was read is kept, and languages change."""
    try:
        take_around(begun(text, units))
    except (AmountError, NegativeAmount) as error:
        return str(error)
    raise ValueError(f"“{text}” is read by now")


def _finish(line: Line, draft: Draft, tree: FamilyTree) -> ReadLine:
    choice = _find(draft, tree)
    if choice is not None:
        hold_what_is_noted(draft, choice.notes)
        if choice.match.key and tree[choice.match.key].unit == "each":
            count_what_is_noted(draft, choice.notes)
        choice = replace(choice, notes=take_how_much(draft, choice.notes))
    amount = draft.amount
    match = choice.match if choice else Match(None, None, 0.0)
    line = replace(
        line,
        amount=amount.value if amount else None,
        amount_high=amount.high if amount else None,
        unit=amount.unit if amount else None,
        ingredient=match.key or "",
        alternatives=choice.alternatives if choice else (),
        called=_called(match, draft, tree),
        stated=match.stated,
    )
    kept = (*choice.makers, *choice.notes) if choice else without_notes(draft.rest)[-1][1]
    line = _with_notes(line, [*draft.hedges, *draft.notes, *kept])
    on_top = _ON_TOP.search(line.note) and not _IN_THE_DRINK.search(line.note)
    served = match.key and _WITH_IT.search(line.note) and _is_cut_fruit(match.key, tree)
    if match.key and ((tree[match.key].unit != "ml" and on_top) or served):
        line = replace(line, garnish=True)
    read = ReadLine(line, matched=match.matched, confidence=match.confidence)
    prepared = prepared_from(draft.rest, tree)
    if prepared is not None:
        return _made_of(prepared, read, draft, tree)
    if choice is None or match.key is None:
        unit = _unit_meant(draft) or _size_of_own_measure(draft)
        if unit:
            return replace(read, complaints=(unit,))
        told = partial(_unknown, draft.rest, tree)
        return replace(
            read, complaints=(Complaint(draft.at, told, draft.rest, in_other_order=True),)
        )
    read = _measured(read, draft, tree[match.key])
    asked = tuple(_questions(draft, choice, line.text, tree))
    read = replace(read, complaints=(*asked, *read.complaints)) if asked else read
    if read.complaints and draft.amount is None:
        return read  # the amount that cannot be read is told of once
    strays = tuple(_strays(draft, choice, tree))
    return replace(read, complaints=read.complaints + strays) if strays else read


def _a_slip_of_what_narrows(draft: Draft, choice: Choice, tree: FamilyTree) -> Complaint | None:
    """*Bourbn whisky*: what would be a maker's word is a letter off what narrows the kind."""
    below = tree.descendants(str(choice.match.key))
    words = {word for said in choice.makers for word in said.split()}
    short = {word for word in words if len(word) < LEAST_LETTERS - 1 and word.islower()}
    short -= {word for word in short if tells_nothing_else(folded(word))}
    slips = {word: sorted(one_letter_off(folded(word), tree.slips)) for word in words}
    if not any(slips.values()) and not short:
        return None
    narrowing = {
        word for key in below for each in tree[key].all_names for word in folded(each).split()
    }
    kind = folded(choice.match.called or choice.match.matched or "")
    found = [
        (word, each)
        for word in sorted(words)
        for each in (
            *slips[word],
            *(sorted(slips_beside(word, narrowing)) if word in short else ()),
        )
        if each in narrowing or (each[0] == word[0] and f"{each} {kind}" in tree.by_name)
    ]
    if not found:
        return None
    (word, meant), *_ = found
    answer = draft.plain.replace(word, meant, 1)

    def told() -> str:
        return _or_likely(tr("“{words}” may be {meant}", words=word, meant=meant), answer)

    return Complaint(draft.at, told, answer=answer)


def _questions(draft: Draft, choice: Choice, text: str, tree: FamilyTree) -> Iterator[Complaint]:
    """What a line leaves open though its name is known, the plainest first."""
    match, notes = choice.match, choice.notes
    kind = tree[str(match.key)]
    unsaid = _not_said_which(choice, draft, tree)
    if unsaid:
        yield unsaid
    alone = _which_of_a_grouping(draft, match, tree) or _which_bitters(draft, match, tree)
    if alone:
        yield alone
    usual = next((note for note in notes if _THE_USUAL.search(note)), None)
    if usual and kind.family:
        name = tree.in_sentence(kind.key)
        yield Complaint(draft.at, lambda: tr("which {kind} is “{words}”?", kind=name, words=usual))
    left = next((note for note in notes if _takes_back(note, match, tree)), None) or next(
        (note for note in (*notes, *draft.hedges) if is_left(note)), None
    )
    if left:
        yield Complaint(
            draft.at, lambda: tr("“{words}” corrects nothing that was found here", words=left)
        )
    others = (
        _one_of_a_list(draft, match),
        _a_slip_of_what_narrows(draft, choice, tree),
        _which_of_a_flavour(draft, choice, tree),
        _for_how_many(draft, choice),
        _which_made(draft, choice, tree),
        _whether_its_syrup(draft, match, tree),
        _whether_its_juice(draft, match, tree),
    )
    yield from (each for each in others if each)
    if kind.key == "garnish":
        yield Complaint(
            draft.at, lambda: tr("which garnish is this? write what it is, such as a lemon peel")
        )
    half = _HAVE_ONE.match(draft.plain)
    if half:
        likely = f"half {draft.plain[half.end() :]}"
        yield Complaint(0, lambda: _or_likely(tr("“have” may be “half”"), likely), answer=likely)
    doubt = _DOUBT.search(text)
    if doubt:
        unsure = doubt.group().strip()
        yield Complaint(
            draft.at, lambda: tr("“{words}” says that this is not settled yet", words=unsure)
        )


_OR_LIST = re.compile(
    r"[,(][ ]*(?P<list>(?:[\w' -]+,[ ]*)*[\w' -]+?[ ,]+or[ ][\w' -]+)[ .]*(?:$|[),;])",
    re.IGNORECASE,
)


def _one_of_a_list(draft: Draft, match: Match) -> Complaint | None:
    """The question of *vodka (plain, citrus, or vanilla)*, of which one narrowed the kind."""
    listed = _OR_LIST.search(draft.rest) if "or " in draft.rest.casefold() else None
    if listed is None:
        return None
    words = [each.strip() for each in re.split(r",|\bor\b", listed["list"]) if each.strip()]
    called = folded(match.called)
    taken = [
        each for each in words if re.search(rf"(?<!\w){re.escape(folded(each))}(?!\w)", called)
    ]
    before = folded(draft.rest[: listed.start()])
    taken = [each for each in taken if folded(each) not in before]
    if len(taken) == 1 and len(words) == 2 and folded(words[1]) in ("similar", "the like"):
        return None
    if not taken or len(taken) == len(words):
        return None
    front = draft.plain[: draft.at] + draft.rest[: listed.start()].rstrip(" ,(")
    answer = f"{front} ({taken[0]})"

    def told() -> str:
        return _or_likely(tr("which one is meant, {names}?", names=spoken_list(words)), answer)

    return Complaint(draft.at, told, answer=answer)


_ASKED_ALONE: Mapping[str, str] = {
    **{"vermouth": "sweet vermouth", "syrup": "simple syrup", "citrus": "lemon juice"},
    "citrus juice": "lemon juice",
    **dict.fromkeys(("juice", "liqueur", "cordial", "spirit", "shrub"), ""),
}
"""Names of groupings that say too little by themselves, with what is likeliest, if anything."""


def _which_of_a_grouping(draft: Draft, match: Match, tree: FamilyTree) -> Complaint | None:
    """The question of *1 oz vermouth*: sweet and dry stand in for each other nowhere."""
    word = folded(match.called or match.matched or "")
    name = _ASKED_ALONE.get(word)
    if word == "bitters" and draft.amount and _is_more_than_dashes(draft):
        return Complaint(draft.at, _which_or_how_many, which=True)
    told_more = match.stated or match.maker or match.changed
    if name is None or told_more or draft.amount is None or draft.beside_others:
        return None
    likely = _with_name(draft, word, name) if name else None

    def told() -> str:
        if likely:
            return _or_likely(tr("which {name} is this?", name=word), likely)
        return tr("which {name} is this? write its name", name=word)

    return Complaint(draft.at, told, answer=likely, which=True)


def _which_or_how_many() -> str:
    return tr("so much bitters is seldom poured; which are these, or how many dashes?")


_A_GLASS_OF_BEER_ML = 100.0
"""Less of what is only called bitter is hardly the ale (*common practice*)."""


def _which_bitters(draft: Draft, match: Match, tree: FamilyTree) -> Complaint | None:
    """The question of *2 dashes bitter*, *1 oz bitter*: hardly so little of the ale."""
    amount = draft.amount
    said = folded(match.called or match.matched or "")
    another = said != "bitter" and said in tree.by_name  # best bitter
    if amount is None or said.split()[-1:] != ["bitter"] or another:
        return None
    if not tree.is_a(str(match.key), "beer"):
        return None
    if dimension(amount.unit, draft.units) != "volume":
        return None
    if to_quantity(amount, "ml", draft.units) >= _A_GLASS_OF_BEER_ML:
        return None
    meant = "aromatic bitters" if amount.unit in ("dash", "drop") else "red bitter"
    likely = _with_name(draft, "bitter", meant)
    name = tree.in_sentence(str(match.key))

    def told() -> str:
        return _or_likely(tr("“bitter” may be {meant} or {name}", meant=meant, name=name), likely)

    return Complaint(draft.at, told, answer=likely)


_MOST_BITTERS_ML = 10.0
"""More of what is only called bitters is likely something else (*common practice*)."""


def _is_more_than_dashes(draft: Draft) -> bool:
    """Whether a measured volume is more than anybody dashes."""
    amount = draft.amount
    if amount is None or dimension(amount.unit, draft.units) != "volume":
        return False
    return to_quantity(amount, "ml", draft.units) > _MOST_BITTERS_ML


_RATIO = re.compile(r"[0-9.,]+[ ]?:[ ]?[0-9.,]+")


def _whether_its_syrup(draft: Draft, match: Match, tree: FamilyTree) -> Complaint | None:
    """The question of *1 oz honey, 2:1*: so much of it to so much water is a syrup."""
    ratio = next((each for each in match.stated if _RATIO.fullmatch(each)), None)
    name = tree.in_sentence(str(match.key))
    if ratio is None or "syrup" in name or named(f"{name} syrup", tree) is None:
        return None
    likely = _with_name(draft, folded(match.called or name), f"{name} syrup")

    def told() -> str:
        return _or_likely(tr("“{ratio}” is how a syrup is made", ratio=ratio), likely)

    return Complaint(draft.at, told, answer=likely)


def _whether_its_juice(draft: Draft, match: Match, tree: FamilyTree) -> Complaint | None:
    """The question of a fruit counted as nobody counts it: *¾ lemon*."""
    if draft.amount is None or not _may_be_its_juice(draft, match, tree):
        return None
    fruit = tree.in_sentence(str(match.key))
    unit = "ml" if draft.amount.value >= LEAST_ML else unit_words(draft.units.ounce, draft.units)
    likely = " ".join(f"{draft.plain[: draft.amount_end]} {unit} {fruit} juice".split())

    def told() -> str:
        return tr("is this of one {fruit}, or likely “{line}”?", fruit=fruit, line=likely)

    return Complaint(draft.amount_at, told, answer=likely)


_AS_JUICE = re.compile(r"\b(?:juiced?|pressed|squeezed)\b", re.IGNORECASE)


def _which_of_a_flavour(draft: Draft, choice: Choice, tree: FamilyTree) -> Complaint | None:
    """The question of a measured flavour: *½ oz cinnamon* is its syrup, or something else of it."""
    amount, match = draft.amount, choice.match
    if amount is None or dimension(amount.unit, draft.units) not in ("volume", "part"):
        return None
    said = match.called or match.matched or ""
    if amount.unit in _SPOONED or any(map(_AS_JUICE.search, (*draft.notes, *choice.notes, said))):
        return None
    meant = may_be_poured(said, str(match.key), amount.unit, tree)
    if meant is None:
        return None
    word, keys = meant
    names = [tree.in_sentence(key) for key in keys[:_MOST_MEANT]]
    likely = _with_name(draft, word, names[0])

    def told() -> str:
        if len(keys) == 1:
            return _or_likely(tr("nobody pours “{words}” itself", words=word), likely)
        meant = spoken_list(names)
        return _or_likely(tr("“{words}” may be {meant}", words=word, meant=meant), likely)

    return Complaint(draft.at, told, answer=likely)


_MOST_MEANT = 4


def _made_of(prepared: Prepared, read: ReadLine, draft: Draft, tree: FamilyTree) -> ReadLine:
    """The question of what somebody made of a kind: *chilli-infused tequila* is no tequila."""
    kind = tree.in_sentence(prepared.kind)

    def told() -> str:
        return tr(
            "“{words}” is more than {kind}; likely a new ingredient, a kind of {kind}",
            words=prepared.name,
            kind=kind,
        )

    asked = Complaint(draft.at, told, unknown=prepared.name)
    line = replace(read.line, ingredient="", alternatives=(), called="", stated=())
    guess = Match(prepared.kind, tree.name(prepared.kind), GUESSED)
    return replace(read, line=line, matched=None, complaints=(asked,), guesses=(guess,))


def _for_how_many(draft: Draft, choice: Choice) -> Complaint | None:
    """The question of a line that is for more than one serve: *750 ml gin per 12 guests*."""
    notes = (*draft.hedges, *draft.notes, *choice.notes)
    asked = question_of(draft.amount, notes, draft.units) if draft.amount else None
    if asked is None:
        return None
    told, words, amount = asked
    front, found, behind = draft.beside_amount.partition(words)
    if amount is None or not found:
        return Complaint(draft.at, told)
    likely = f"{amount} {front.rstrip(' ,(')}{behind.lstrip(' )')}"
    likely = " ".join(likely.split())
    return Complaint(draft.at, lambda: _or_likely(told(), likely), answer=likely)


def _with_name(draft: Draft, word: str, name: str) -> str | None:
    """The line with a name in place of the last word that stands for it, None where none does."""
    letters = ((mark, folded(mark)) for mark in draft.plain)
    plain = "".join(same if len(same) == 1 else mark.replace("-", " ") for mark, same in letters)
    found = [*re.finditer(rf"(?<!\w){re.escape(word)}(?!\w)", plain)]
    if not found:
        return None
    start, end = found[-1].span()
    return f"{draft.plain[:start]}{name}{draft.plain[end:]}".strip()


def _which_made(draft: Draft, choice: Choice, tree: FamilyTree) -> Complaint | None:
    """The question of *that syrup we made earlier*: the writer knows which, and nobody else."""
    key, notes = str(choice.match.key), (*draft.notes, *choice.notes)
    said = choice.match.called or choice.match.matched or ""
    words = which_one(draft.beside_amount, said, key, notes, tree=tree)
    if words is None:
        return None
    name = tree.in_sentence(key)
    return Complaint(
        draft.at, lambda: tr("which {kind} is “{words}”? write its name", kind=name, words=words)
    )


def _takes_back(note: str, match: Match, tree: FamilyTree) -> bool:
    """*1 oz vermouth, no vermouth*: whether a note says that there is none of it."""
    none = re.fullmatch(r"no[ ](?P<what>[\w' -]+)", note, re.IGNORECASE)
    found = named(none["what"], tree) if none else None
    return found is not None and found.key is not None and tree.is_a(str(match.key), found.key)


def _may_be_its_juice(draft: Draft, match: Match, tree: FamilyTree) -> bool:
    """*¾ lemon*: nobody cuts three quarters of a fruit; its juice is likely meant."""
    amount = draft.amount
    if amount is None or amount.unit != "each" or amount.high is not None:
        return False
    odd = amount.value not in (0.25, 0.5, 1.5) and amount.value != int(amount.value)
    squeezed_in = match.key in _SQUEEZED and _said_as_one(match)  # 30 lime, and no 30 limes
    many = amount.value >= LEAST_ML and squeezed_in
    juiced = named(f"{match.matched} juice", tree) is not None
    return (odd or many) and not draft.notes and juiced


def _called(match: Match, draft: Draft, tree: FamilyTree) -> str:
    """The words that were written for it, its maker's too; empty where they are just its name."""
    if match.key is None or not match.called:
        return ""
    if match.maker and match.maker in draft.rest:
        before = draft.rest.find(match.maker) < draft.rest.find(match.called)
        words = (match.maker, match.called) if before else (match.called, match.maker)
        return " ".join(" ".join(words).split())
    called, own = folded(match.called).split(), folded(tree.name(match.key)).split()
    same = [*map(singular, called)] == [*map(singular, own)]
    return "" if same else " ".join(match.called.split())


def _not_said_which(choice: Choice, draft: Draft, tree: FamilyTree) -> Complaint | None:
    """The question of a grouping behind a maker nobody knows: which bitters are these?"""
    key = str(choice.match.key)
    changed = choice.match.changed
    if changed:
        kind = tree.in_sentence(key)
        return Complaint(
            draft.at,
            lambda: tr("“{words}” may make something else of {kind}", words=changed, kind=kind),
            in_other_order=True,
        )
    called = folded(choice.match.called)
    if not choice.makers or called not in _ASKED_WHICH:
        return None
    whose = f"{choice.makers[0]} {choice.match.called}"
    likely = draft.plain.replace(choice.match.called, f"{_ASKED_WHICH[called]} {called}")

    def told() -> str:
        return _or_likely(tr("which {kinds} are “{words}”?", kinds=called, words=whose), likely)

    return Complaint(draft.at, told, answer=likely)


def _strays(draft: Draft, choice: Choice, tree: FamilyTree) -> tuple[Complaint, ...]:
    """What the line says that is in nothing that was made of it."""
    wanted = (str(choice.match.key), *choice.alternatives)
    notes = (*draft.hedges, *draft.notes, *choice.notes)
    told = tuple(note for each in notes for note in _single([each]) if not _tells(note))
    told = tuple(each for each in told if not is_its_size(draft, each))
    kept = (choice.match.called, *choice.match.stated, *notes)
    placed = Placed(
        amount=draft.amount,
        wanted=wanted,
        makers=choice.makers,
        notes=told,
        kept=kept,
        grouping=tree[wanted[0]].family,
    )
    beside = draft.beside_amount
    return tuple(
        Complaint(each.place_in(beside), each.say, in_other_order=True)
        for each in unplaced(placed, beside[draft.begins :], tree, draft.units)
    )


def _find(draft: Draft, tree: FamilyTree) -> Choice | None:
    """The ingredient: *2 slices orange* may be an orange slice, *8 leaves of mint* mint leaves."""
    choice = choice_in(draft.rest, tree)
    if choice is not None:
        return choice
    found, notes = find_name(draft.rest, tree)
    if found is None:
        found, notes = _completed_by_use(draft, tree)
    if found is None:
        return None
    whole = _piece_of(found, draft, tree) or _poured_of(found, draft, tree)
    if whole is not None:
        sure = min(whole.confidence, found.confidence)
        found = _with_statements(
            replace(whole, confidence=sure, maker=found.maker, called=found.called), found, tree
        )
    return with_notes(found, notes, tree)


def _with_statements(whole: Match, found: Match, tree: FamilyTree) -> Match:
    """What is poured, narrowed by what was stated of the fruit: *pink*."""
    for stated in found.stated:
        narrower = narrowed(whole, stated, tree)
        whole = replace(narrower, called=whole.called) if narrower else whole
        whole = whole if narrower else replace(whole, stated=(*whole.stated, stated))
    return whole


def _completed_by_use(draft: Draft, tree: FamilyTree) -> tuple[Match | None, tuple[str, ...]]:
    """*Two dashes aromatic* are bitters, *¾ oz rich demerara* is a syrup: the measure tells."""
    amount = draft.amount
    herb = amount is not None and amount.unit in ("handful", "bunch", "sprig")
    if amount is None or (
        not herb and dimension(amount.unit, draft.units) not in ("volume", "part")
    ):
        return None, ()
    ends = (
        ("leaf",)
        if herb
        else ("bitters",)
        if amount.unit in ("dash", "drop")
        else ("syrup", "juice", "single malt")
    )
    for name, notes in without_notes(draft.rest):
        said = folded(name).split()
        says_something = words_of_a_name(folded(name)) and said[-1] not in ADJECTIVES
        for end in ends if says_something else ():
            found = match_name(f"{name} {end}", tree)
            plain = found and all(STATEMENT.fullmatch(each) for each in found.stated)
            if found and plain and found.confidence >= ADJUSTED:
                return replace(found, confidence=ADJUSTED, called=name), notes
    return None, ()


_FROM_IT = ("{} juice", "{} syrup")
"""What a measured volume of a fruit, or of what is sold solid, is (*common practice*)."""


def _poured_of(found: Match, draft: Draft, tree: FamilyTree) -> Match | None:
    """What is poured where the name is that of a fruit: ¾ oz lemon is its juice."""
    amount = draft.amount
    if amount is None or found.key is None or tree[found.key].unit == "ml":
        return None
    if tree[found.key].unit == "g" and not _said_as_one(found):
        return None
    if dimension(amount.unit, draft.units) not in ("volume", "part"):
        return None
    if amount.unit in _SPOONED:
        return None
    names = (found.matched or "", tree.name(found.key))
    for form in _FROM_IT[: 2 if tree[found.key].unit == "each" else 1]:
        for name in names:
            poured = named(form.format(name), tree)
            if poured and poured.key and tree[poured.key].unit == "ml":
                return poured
    return None


def _said_as_one(found: Match) -> bool:
    """*Cranberry*, which is poured; cranberries are weighed or spooned."""
    words = folded(found.called or found.matched or "").split()
    return bool(words) and singular(words[-1]) == words[-1]


_SPOONED = frozenset({"cup", "pint", "imp_pint", "pinch", "handful", "bunch", "scoop"})
"""Volumes in which whole fruit is measured too: *a cup of raspberries*."""

_ASKED_WHICH: Mapping[str, str] = {"bitters": "aromatic"}
"""What a maker's words alone do not tell apart, each with what it likeliest is."""


def _piece_of(found: Match, draft: Draft, tree: FamilyTree) -> Match | None:
    """What a piece of it is called, where that is an ingredient of its own."""
    amount = draft.amount
    if amount is None or dimension(amount.unit, draft.units) not in ("loose", "count"):
        return None
    if amount.unit == "each" or found.matched is None or found.key is None:
        return None
    if amount.unit == tree[found.key].name.split()[-1].casefold():
        draft.by_the_piece = True
        return found  # 8 leaves of mint leaf
    whole, _ = find_name(f"{found.matched} {amount.unit}", tree)
    known = whole is not None and whole.confidence >= ADJUSTED and whole.key is not None
    draft.by_the_piece = draft.by_the_piece or known
    return whole if known else None


def _with_notes(line: Line, notes: list[str]) -> Line:
    """Sort the notes: *optional* and a least strength mean something, the rest is kept."""
    if not notes:
        return line
    kept: list[str] = []
    for note in _single(notes):
        least = _LEAST.fullmatch(note)
        if note.casefold() in _OPTIONAL:
            line = replace(line, optional=True)
        elif _OPTIONAL_SAID.search(note) and not note.casefold().startswith("or "):
            line = replace(line, optional=True)
            kept.append(note)
        elif note.casefold() in _GARNISH:
            line = replace(line, garnish=True)
        elif _WANTED_MAYBE.fullmatch(note):
            line = replace(line, optional=True)
            kept.append(note)
        elif least and (number := _strength(least["least"] or least["more"])) is not None:
            line = replace(line, min_abv_percent=number)
        else:
            kept.append(note)
    return replace(line, note=", ".join(dict.fromkeys(kept))) if kept else line


def _strength(text: str) -> float | None:
    """A strength in % vol; None for one that no bottle has, which stays a note."""
    try:
        return read_strength(text)
    except InvalidField:
        return None


def _single(notes: list[str]) -> list[str]:
    """Notes one by one: *(at least 50 %, optional)* is two, *(sweet, aged)* stays one."""
    found: list[str] = []
    for note in notes:
        parts = [each.strip() for each in note.split(",")]
        telling = any(_tells(each) for each in parts)
        found += parts if telling else [note]
    return [each for each in found if each]


def _tells(note: str) -> bool:
    return note.casefold() in _OPTIONAL | _GARNISH or bool(_LEAST.fullmatch(note))


def _measured(read: ReadLine, draft: Draft, ingredient: Ingredient) -> ReadLine:
    """The line with its quantity in the ingredient's own unit."""
    line, unsure = read.line, read.confidence < ADJUSTED
    if draft.amount is None:
        if not (unsure and draft.rest[:1].isdigit()):
            return read
        unread = Complaint(draft.at, _unread_amount, in_other_order=True)
        return replace(read, complaints=(unread,))
    if (draft.amount.high or draft.amount.value) <= 0:
        nothing = partial(_is_nothing, draft.amount.value)
        return replace(read, complaints=(Complaint(draft.amount_at, nothing),))
    try:
        amount = draft.amount if not draft.by_the_piece else replace(draft.amount, unit="each")
        quantity, note = quantity_of(amount, ingredient, None, draft.units)
        if draft.holds is not None:
            each, _ = quantity_of(draft.holds, ingredient, None, draft.units)
            quantity = None if each is None else each * amount.value
    except WrongDimension as error:
        # A word that is neither the name's nor an adjective stands where the unit should.
        if draft.amount.unit == "each" and ingredient.unit == "ml" and not unsure:
            return replace(read, complaints=(_without_unit(draft, error, ingredient),))
        stranger = draft.rest.split()[0] if unsure else None
        told = partial(_wrong, error, ingredient, stranger)
        meant = _unit_meant(draft) if stranger else None
        return replace(read, complaints=(meant or Complaint(draft.amount_at, told),))
    if note and note not in line.note:
        line = replace(line, note=f"{line.note}, {note}" if line.note else note)
    return replace(read, line=replace(line, quantity=quantity))


def _unread_amount() -> str:
    return tr("this amount cannot be read; {examples}", examples=tr(EXAMPLES))


def _is_nothing(value: float) -> str:
    return tr("“{value:g}” is nothing; an amount is above nothing", value=value)


_MAY_STAND_FOR: Mapping[str, str] = {"pt": "pint", "pt.": "pint", "pts": "parts", "p": "part"}
"""Short words for a measure that some mean another one by."""


def _unit_meant(draft: Draft) -> Complaint | None:
    """The question of *1 pt milk*: which measure is short for, None where no such word stands."""
    first = draft.rest.split()[:1]
    likely = _MAY_STAND_FOR.get(first[0].casefold()) if first else None
    if likely is None or draft.amount is None or draft.amount.unit != "each":
        return None
    answer = draft.plain.replace(f" {first[0]} ", f" {likely} ", 1)

    def told() -> str:
        return _or_likely(tr("“{words}” may be a {meant}", words=first[0], meant=likely), answer)

    return Complaint(draft.amount_at, told, answer=answer)


def _size_of_own_measure(draft: Draft) -> Complaint | None:
    """The question of *1 large ladle gin*, where a ladle is the bar's own and has one size."""
    size, _, others = draft.rest.partition(" ")
    word = others.split(" ", 1)[0]
    own = unit_named(word, draft.units) if word else None
    if own is None or draft.units.measure(own) is None:
        return None
    answer = draft.plain.replace(f"{size} {word}", word, 1)

    def told() -> str:
        words = f"{size} {word}"
        return _or_likely(tr("“{words}” is no unit that is known", words=words), answer)

    return Complaint(draft.amount_at, told, answer=answer)


def _without_unit(draft: Draft, error: WrongDimension, ingredient: Ingredient) -> Complaint:
    """The question of a number alone, with the bar's usual unit as its likely answer."""
    amount = draft.amount
    number = amount.value if amount else 0.0
    unit = "ml" if number >= LEAST_ML else unit_words(draft.units.ounce, draft.units)
    answer = f"{draft.plain[: draft.amount_end]} {unit} {draft.plain[draft.amount_end :]}"
    likely = " ".join(answer.split())

    def told() -> str:
        return _or_likely(_wrong(error, ingredient, None), likely)

    return Complaint(draft.amount_at, told, answer=likely)


LEAST_ML = 10.0
"""A number alone from this on is millilitres, below it ounces (*common practice*)."""


def _unknown(rest: str, tree: FamilyTree) -> str:
    return unknown_name(rest, suggestions(rest, tree))


def unknown_name(rest: str, nearest: Sequence[str]) -> str:
    """That a text names no ingredient, and which names are nearest to it."""
    name = bare_name(rest)[:60]
    if not name.strip(" ()"):
        return tr("an ingredient is missing here")
    told = tr("no ingredient is called “{name}”", name=name)
    if not nearest:
        return told
    return tr("{told}; the nearest are {names}", told=told, names=spoken_list(nearest, "and"))


def _wrong(error: WrongDimension, ingredient: Ingredient, stranger: str | None) -> str:
    if error.given == "a number of pieces":
        if stranger:
            return tr(
                "“{words}” is no unit that is known; {name} takes {wanted}",
                words=stranger,
                name=ingredient.name,
                wanted=tr(error.wanted),
            )
        return tr(
            "“{text}” needs a unit: {name} takes {wanted}",
            text=error.text,
            name=ingredient.name,
            wanted=tr(error.wanted),
        )
    return tr(
        "{name} takes {wanted}, and “{text}” is {given}",
        name=ingredient.name,
        wanted=tr(error.wanted),
        text=error.text,
        given=tr(error.given),
    )
