"""Specs as plain text: read with located problems, and written so that they read back.

A spec is its name, then a line for each ingredient and, if wanted, *Glass:*,
*Ice:*, *Garnish:*, *Serves:*, *Tags:*, *Credit:*, *Source:*, *Notes:* and
*Riff of:*; after an empty line comes the method. Several specs in one text are
parted by a line of dashes or by two empty lines, or by one where each is a name
with its ingredients under it; a line of ingredients within
a method is taken for a sign that they were not. A name, or a row of a method,
that would be taken for something else has *Name:* or *Method:* before it.
A drink may also stand on one line: *Night Mail: 2 oz gin, 1 oz lemon juice; shake*.
"""

from __future__ import annotations

import re
from collections.abc import Callable, Iterable, Iterator, Sequence
from dataclasses import dataclass, field, replace
from decimal import Decimal
from functools import partial

from barkeep.domain.amounts.amount import amount_at_start, show_number
from barkeep.domain.amounts.units import US_UNITS, BarUnits, unit_words
from barkeep.domain.ingredients.names import ADJUSTED, Match, guesses
from barkeep.domain.ingredients.tree import FamilyTree
from barkeep.domain.phrases import as_sentence, folded
from barkeep.domain.spec_text.around_the_name import MARK
from barkeep.domain.spec_text.blocks import Row, blocks
from barkeep.domain.spec_text.corrections import (
    corrects,
    meant_instead,
    points_back,
    put_right,
    says_again,
    speaks_of_putting_right,
    taken_out,
    target,
    thing_named,
    with_the_same,
)
from barkeep.domain.spec_text.found import amounts_in, names_in
from barkeep.domain.spec_text.headers import (
    RULE,
    Header,
    HeaderFields,
    header_and_rest,
    header_in,
    is_chatter,
    measures_something,
    names_a_glass,
    serves_in_method,
    serves_in_title,
    speaks_of_nothing_poured,
    tells_of_another_time,
    tells_of_the_page,
    tells_what_to_do_elsewhere,
    times_in_title,
)
from barkeep.domain.spec_text.lines import (
    LONGEST,
    Complaint,
    ReadLine,
    read_line,
    read_lines,
    unknown_name,
)
from barkeep.domain.spec_text.traced import squeezed
from barkeep.domain.specs.garnish_notes import (
    GARNISH,
    garnish_notes,
    is_garnish_note,
    unknown_garnish,
)
from barkeep.domain.specs.shown_lines import names_of, without_garnish, worded
from barkeep.domain.specs.spec import Line, Spec, UnsettledLine
from barkeep.domain.specs.technique import begins_a_method, technique_of, tells_what_to_do
from barkeep.errors import Problem
from barkeep.translation import kept_in_english, tr, tr_noop

HOW_PARTED = tr_noop("part specs with a line of --- or two empty lines")
MOST_LINES = 100
"""Ingredients of one spec; a longer text is no spec, and reading it all would only take time."""
MOST_STEPS = 500
"""Lines of one method, for the same reason."""
TOO_MANY_LINES = tr_noop("a spec has at most {most} ingredients; the rest of this one is not read")
TOO_MANY_STEPS = tr_noop(
    "a spec has at most {most} lines of method; the rest of this one is not read"
)
MOST_PROBLEMS = 100
"""Of one spec; whoever puts these right is told of the next ones."""
MOST_HINTS = 200
"""Unknown names of one text for which the nearest known ones are looked up."""
LONGEST_NAME = 200
_BETWEEN = re.compile(r"[ ]?(?:,|&|\+|;|\b(?:and|und|et|y|e)\b)[ ]?", re.IGNORECASE)


@dataclass(frozen=True, slots=True)
class ReadSpec:
    """One spec of a text as far as it was understood, and all its lines as they were read.

    `understood` holds as unsettled what its lines leave to be asked. `row` is
    the line of the text it begins on, from 1. `remarks` are sentences about what
    was kept in another way than one may have meant.
    """

    understood: Spec
    lines: tuple[ReadLine, ...] = ()
    problems: tuple[Problem, ...] = ()
    row: int = 1
    remarks: tuple[str, ...] = ()

    @property
    def spec(self) -> Spec | None:
        """The spec, None where there are problems."""
        return None if self.problems else self.understood

    @property
    def with_questions(self) -> Spec | None:
        """The spec with the lines that were not understood kept as they were written.

        None where something else is wrong: without a name, say, it is no spec.
        """
        return self.understood if all(each.asks for each in self.problems) else None

    @property
    def name(self) -> str:
        """The name of the drink, empty where none was read."""
        return self.understood.name

    @property
    def method(self) -> str:
        """The method as far as it was read."""
        return self.understood.method

    @property
    def glass(self) -> str:
        """The glass, empty where none is named."""
        return self.understood.glass


_STRAINED = re.compile(
    r"(?:(?:and|then|now|so|that|this|it|we|all)[ ,]+)*"
    r"(?:(?:(?:double|fine|finely)[ -])?strain(?:ed)?|goes|go|served?|poured?|comes|sits)[ ]"
    r"(?:(?:it|this|that|everything|into|in|the|a|glass)[ ])*(?:over|onto)\b",
    re.IGNORECASE,
)
"""*Strain it over …*: what is done last, whatever it is poured over."""


_STEP = re.compile(r"[ ]*step[ ](?:[0-9]{1,2}|one|two|three|four|five)[ ]*[:.)–-]*[ ]+", re.I)
"""*Step 2: add …*"""

_NUMBERED = re.compile(r"[ ]*[0-9]{1,2}[.)][ ]+(?=[^\W\d_])")
"""*2. Add …*"""

_AND_DONE = re.compile(
    r"(?:add|pour|put|combine|place)[ ].*\b(?:and|then)[ ](?:then[ ])?(?:[^\W\d_]+ly[ ])?"
    r"(?:stir|shake|strain|mix|muddle|blend|swirl|whisk|serve)\b[^,;:]*",
    re.IGNORECASE,
)
"""*Add the lime juice and stir*: what is added and what is done with it."""

_ADDS = re.compile(r"(?:add|pour|put|combine|place)[ ]", re.IGNORECASE)
_TOPS = re.compile(r"(?:garnish|top|fill|float|rinse|rim|decorate)\b", re.IGNORECASE)
"""Steps that name what is nowhere else: they are lines."""

_IN_BRACKETS = re.compile(r"^[(\[]([^()\[\]]*)[)\]]$")


def _is_a_step(text: str) -> bool:
    """*Step 3 - Shake …*, *2. Add the lime juice and stir*: a row of the method by its number."""
    step = _STEP.match(text) or _NUMBERED.match(text)
    told = text[step.end() :] if step else ""
    if not told or _TOPS.match(told):
        return False
    begins = tells_what_to_do(told) and begins_a_method(told)
    added = step is not None and _STEP.match(text) is not None and _ADDS.match(told) is not None
    return begins or added or _AND_DONE.fullmatch(told.strip()) is not None


def _without_its_step(text: str) -> str:
    """*Step 4: Garnish with a lime wedge*: what is told, without which step it is."""
    step = _STEP.match(text)
    return text[step.end() :] if step and _TOPS.match(text, step.end()) else text


@dataclass
class Hints:
    """How many more unknown names of a text are worth looking up."""

    left: int = MOST_HINTS


@dataclass(frozen=True, slots=True)
class _Asked:
    """A text whose lines, from one number to another, were not all understood."""

    first: int
    end: int
    text: str
    question: str


def _moved(asked: _Asked, gone: int) -> _Asked:
    """The same place once the line with this number is gone."""
    if asked.first < gone:
        return asked
    return replace(asked, first=asked.first - 1, end=asked.end - 1)


@dataclass
class Reading:
    """A spec while its rows are gone through; `row` is where it begins."""

    tree: FamilyTree
    units: BarUnits
    row: int = 1
    hints: Hints = field(default_factory=Hints)
    name: str = ""
    lines: list[ReadLine] = field(default_factory=list)
    method: list[str] = field(default_factory=list)
    fields: HeaderFields = field(default_factory=HeaderFields)
    garnishes: list[str] = field(default_factory=list)
    problems: list[Problem] = field(default_factory=list)
    _asked: list[_Asked] = field(default_factory=list)
    _full: set[str] = field(default_factory=set)
    _stray: bool = False
    _remarks: list[str] = field(default_factory=list)

    def complain(
        self,
        row: int,
        column: int,
        message: str,
        *,
        unknown: str | None = None,
        answer: str | None = None,
        asks: bool = False,
    ) -> None:
        """Note a problem; row and column count from 1. The rest is as in `Problem`."""
        if len(self.problems) == MOST_PROBLEMS:
            message = tr(
                "more than {most} things cannot be used; this is the first not told",
                most=MOST_PROBLEMS,
            )
            unknown, asks = None, False
        if len(self.problems) <= MOST_PROBLEMS:
            told = Problem(row, column, message, unknown=unknown, answer=answer, asks=asks)
            self.problems.append(told)

    def remark(self, words: str) -> None:
        """Tell of what was kept in another way than one may have meant."""
        self._remarks.append(as_sentence(words))

    def take_name(self, name: str, row: int) -> None:
        """Take the name in."""
        self.name = " ".join(name.split())
        if len(self.name) > LONGEST_NAME:
            told = tr("the name of a drink has at most {most} characters", most=LONGEST_NAME)
            self.complain(row, 1, told)
            self.name = self.name[:LONGEST_NAME].rstrip()

    def take_title(self, title: str, row: int) -> None:
        """Take a name in, and what it says of how many it serves: *Night Mail (serves two)*."""
        said = serves_in_title(title)
        if said is None or self.fields.serves is not None:
            self.take_name(title, row)
            return
        self.take_name(said[0], row)
        self.take_header(said[1], row)

    def take_header(self, header: Header, row: int) -> None:
        """Take a field in, a garnish as lines of its own."""
        if header.name == "garnish":
            if header.value:
                self._take_garnish(header.value, row)
            return
        wrong = self.fields.take(header, self.units)
        if wrong:
            self.complain(row, header.at + 1, wrong)

    def take_line(self, text: str, row: int) -> bool:
        """Take a line in; whether it turned out to begin the method instead."""
        if len(self.lines) >= MOST_LINES:
            self._refuse_more(row, MOST_LINES, TOO_MANY_LINES)
            return False
        if _is_a_step(text) and not _measures(text, self.units):
            self.method.append(text)
            return False
        text = _without_its_step(text)
        if self._takes_out(text) or self._only_says_again(text) or self._corrects(text, row):
            return False
        read = self._read_after_the_last(text)
        if self.lines and speaks_of_putting_right(text):
            self._ask(text, row, tuple(_puts_right_what(each, text) for each in read))
            return False
        wrong = any(each.complaints for each in read) or self._only_ices(text, read)
        if wrong and self.lines and (begins_a_method(text) or _is_one_word_of_method(text)):
            self.method.append(text)
            return True
        told_plainly = _STEP.sub("", MARK.sub("", text, 1), 1)
        if (
            wrong
            and (tells_what_to_do(told_plainly) or tells_what_to_do_elsewhere(told_plainly))
            and not any(each.guesses for each in read)
            and not _measures_a_thing(text, self.tree, self.units)
        ):
            self.method.append(text)
            return False
        if wrong and not _measures(text, self.units) and names_a_glass(text):
            self.method.append(text)
            return False
        if wrong and self._only_tells(text):
            words = " ".join(text.split())
            self.fields.notes.append(words)
            self.remark(tr("“{words}” is kept as a note", words=words))
            return False
        if wrong and tells_of_the_page(text) and not _measures(text, self.units):
            self.fields.notes.append(" ".join(text.split()))
            return False
        self._ask(text, row, read)
        return False

    def take_field(self, header: Header, row: int) -> bool:
        """Take a field in, and what its row measures behind it; whether that began the method.

        *Serves 8: 1 bottle of dry white wine* says how many, and has an ingredient.
        """
        parted = header_and_rest(header, self.units)
        if parted is None or next(names_in(parted[1], self.tree), None) is None:
            self.take_header(header, row)
            named = next(names_in(header.value, self.tree), None)
            if named and measures_something(header, self.units):
                told = tr(
                    "“{words}” names an ingredient; give it a line of its own", words=header.value
                )
                self.complain(row, header.at + 1, told)
            return False
        self.take_header(parted[0], row)
        return self.take_line(parted[1], row)

    def _ask(self, text: str, row: int, read: Sequence[ReadLine]) -> None:
        """Take lines in as they were read, with what is asked about them."""
        first, asked, asks = len(self.lines), list[Callable[[], str]](), may_be_kept(text)
        for each in read:
            line = replace(each, row=row, complaints=())
            for complaint in each.complaints:
                line, say = self._told(line, complaint)
                at, unknown = complaint.at + 1, complaint.unknown
                answer = complaint.answer if len(read) == 1 else None  # it is all of the row
                self.complain(row, at, say(), unknown=unknown, answer=answer, asks=asks)
                asked.append(say)
            self.lines.append(line)
        if asked:
            with kept_in_english():  # it is kept with the spec
                question = _in_one(asked)
            self._asked.append(_Asked(first, len(self.lines), " ".join(text.split()), question))

    def _only_ices(self, text: str, read: Sequence[ReadLine]) -> bool:
        """*Strain over one big rock*: whether a row says what to do, and names but its ice."""
        ices = all(self.tree.is_a(each.line.ingredient, "ice") for each in read if each.known)
        if any(each.line.unit == "cup" for each in read if not each.complaints):
            return False  # blend it with a cup of crushed ice
        strained = _STRAINED.match(text) is not None
        return ices and (strained or (begins_a_method(text) and tells_what_to_do(text)))

    def _only_tells(self, text: str) -> bool:
        """Whether a text tells something, and of nothing that is poured."""
        speaks = is_chatter(text) or speaks_of_nothing_poured(text)
        told = tells_of_another_time(text) and not self._counts_anything(text)
        return (speaks and not self._names_anything(text)) or told

    def _counts_anything(self, text: str) -> bool:
        """Whether a text measures something, or begins with a number."""
        return _measures(text, self.units) or text.strip()[:1].isnumeric()

    def _names_anything(self, text: str) -> bool:
        """Whether a text has a number, a unit or the name of an ingredient."""
        counted = any(mark.isnumeric() for mark in text) or _measures(text, self.units)
        return counted or next(names_in(text, self.tree), None) is not None

    def _read_after_the_last(self, text: str) -> tuple[ReadLine, ...]:
        """A line, which may take as much as the one before: *the same amount of syrup*."""
        before = self.lines[-1].line.text if self.lines else ""
        if points_back(text) is not None:
            return (_points_at_nothing(text),)
        whole = with_the_same(text, before, self.units) if before else None
        if whole is None:
            return read_lines(text, self.tree, self.units)
        read = read_lines(whole, self.tree, self.units)
        return tuple(replace(each, line=replace(each.line, text=text.strip())) for each in read)

    def _corrects(self, text: str, row: int) -> bool:
        """Put an earlier line right, where this one is a correction of it, or points at it."""
        pointed = points_back(text)
        said = _IN_BRACKETS.sub(r"\1", text.strip()) if pointed is None else pointed
        said = meant_instead(squeezed(said)).text
        if not self.lines or not (pointed or corrects(said)):
            return False
        number = target(said, [each.line.text for each in self.lines], self.tree)
        if number is None:
            return False
        old = self.lines[number]
        joint = f"{without_garnish(old.line.text)}, {said}"
        read = read_lines(joint, self.tree, self.units, garnish=old.line.garnish)
        new = read[0]
        applied = bool(pointed) or put_right(joint, self.tree, self.units)
        if len(read) != 1 or new.complaints or not applied:
            return False
        if old.line.text != without_garnish(old.line.text):
            new = replace(new, line=replace(new.line, text=f"Garnish: {joint}"))
        self.lines[number] = replace(new, row=row)
        if sum(each.row == old.row for each in self.lines) == 0:
            self.problems = [each for each in self.problems if each.line != old.row]
            self._asked = [each for each in self._asked if each.first != number]
        return True

    def _only_says_again(self, text: str) -> bool:
        """Keep in the notes what only asks after an earlier line and leaves it as it is."""
        if not says_again(text, [each.line.text for each in self.lines], self.tree):
            return False
        self.fields.notes.append(" ".join(text.split()))
        return True

    def _takes_out(self, text: str) -> bool:
        """Take an earlier line out again, where this one says so; its words stay in the notes."""
        what = taken_out(text)
        if not what:
            return False
        number = thing_named(what, [each.line.text for each in self.lines], self.tree)
        if number is None:
            return False
        out = self.lines.pop(number)
        self._asked = [_moved(each, number) for each in self._asked if each.first != number]
        self.fields.notes.append(f"Taken out: {out.line.text} ({text.strip()})")
        return True

    def take_method(self, text: str, row: int, column: int, *, sure: bool = False) -> None:
        """Take a row of the method in, unless `sure`, with a look whether it is one.

        Of several in a row that are none the first is told.
        """
        if len(self.method) >= MOST_STEPS:
            self._refuse_more(row, MOST_STEPS, TOO_MANY_STEPS)
            return
        plain = " ".join(text.split())
        before, self._stray = self._stray, not sure and is_plainly_a_line(plain, self.tree)
        if self._stray and not before:
            begun = any(each.strip() for each in self.method)
            message = (
                tr("this looks like a line of another spec; {do}", do=tr(HOW_PARTED))
                if begun
                else tr(
                    "this looks like an ingredient; it belongs above the empty line "
                    "before the method"
                )
            )
            self.complain(row, column, message)
        self.method.append(plain)

    def finished(self) -> ReadSpec:
        """The spec as it was read."""
        method, fields = joined(self.method), self.fields
        remarks = [*self._remarks, *self._serves_of(method)]
        serves = fields.serves or 1.0
        read = tuple(for_one(line, serves) for line in self.lines)
        lines, unsettled = self._settled(read)
        if not any(line.required for line in lines) and not self.problems:
            message = tr("a spec needs at least one line such as “60 ml London dry gin”")
            self.complain(self.row, 1, message)
        spec = Spec(
            name=self.name,
            lines=lines,
            method=method,
            technique=technique_of(method),
            glass=fields.once.get("glass", ""),
            ice=fields.once.get("ice", ""),
            notes="\n".join((*garnish_notes(self.garnishes), *fields.notes)),
            riff_of=fields.once.get("riff of"),
            serves=serves,
            tags=tuple(fields.tags),
            credit=fields.once.get("credit", ""),
            source=fields.once.get("source", ""),
            unsettled=unsettled,
        )
        remarks += map(unknown_garnish, self.garnishes)
        return ReadSpec(spec, read, tuple(self.problems), self.row, remarks=tuple(remarks))

    def _serves_of(self, method: str) -> Iterator[str]:
        """Take how many it serves from the method, where no field says so; and tell of it."""
        said = serves_in_method(method) if self.fields.serves is None else None
        if said is not None and not self.fields.take(said, self.units) and self.fields.serves:
            yield tr(
                "The method says “{words}”, so the amounts are taken "
                "for {serves:g} serves together.",
                words=f"{said.name} {said.value}",
                serves=self.fields.serves,
            )

    def _settled(
        self, read: Sequence[ReadLine]
    ) -> tuple[tuple[Line, ...], tuple[UnsettledLine, ...]]:
        """The lines that were understood, and in their places the texts that were not."""
        asked = {each.first: each for each in self._asked}
        lines: list[Line] = []
        unsettled: list[UnsettledLine] = []
        number = 0
        while number < len(read):
            if here := asked.get(number):
                place = len(lines) + len(unsettled)
                unsettled.append(UnsettledLine(here.text, place, here.question))
                number = here.end
                continue
            if line := read[number].known:
                lines.append(line)
            number += 1
        return tuple(lines), tuple(unsettled)

    def _take_garnish(self, value: str, row: int) -> None:
        """Garnishes that are ingredients become lines; anything else stays one in words."""
        for text, read in self._garnishes(value):
            if read.complaints:
                self.garnishes.append(text)
            elif len(self.lines) >= MOST_LINES:
                self._refuse_more(row, MOST_LINES, TOO_MANY_LINES)
            else:
                line = replace(read.line, text=f"Garnish: {read.line.text}")
                self.lines.append(replace(read, line=line, row=row))

    def _garnishes(self, value: str) -> Sequence[tuple[str, ReadLine]]:
        """The garnishes of one line: its parts where each is one, else all of it, else some."""
        read = partial(read_line, tree=self.tree, units=self.units, garnish=True)
        several = read_lines(value, self.tree, self.units, garnish=True)
        whole = several[0]
        if len(several) > 1:  # 1 lime wedge + 1 mint sprig
            sure = not any(each.complaints for each in several)
            return (
                [(each.line.text, each) for each in several]
                if sure
                else [(value, _unsure(several))]
            )
        in_one = not whole.complaints and not whole.line.note
        if len(value) > LONGEST or in_one:
            return [(value, whole)]
        parts = [(part, read(part)) for part in _parted_between_names(value, self.tree)]
        understood = [not each.complaints and each.confidence >= ADJUSTED for _, each in parts]
        if all(understood) or (whole.complaints and any(understood)):
            return parts
        return [(value, whole)]

    def _refuse_more(self, row: int, most: int, things: str) -> None:
        if things not in self._full:
            self._full.add(things)
            self.complain(row, 1, tr(things, most=most))

    def _told(self, line: ReadLine, complaint: Complaint) -> tuple[ReadLine, Callable[[], str]]:
        """What says what is wrong; while hints last, with what may be meant by an unknown name."""
        if complaint.unknown is None or line.guesses:
            return line, complaint.say
        if self.hints.left <= 0:
            return line, partial(unknown_name, complaint.unknown, ())
        self.hints.left -= 1
        likely = guesses(complaint.unknown, self.tree)
        return replace(line, guesses=likely), partial(_unknown, complaint.unknown, likely)


def _unknown(name: str, likely: Sequence[Match]) -> str:
    return unknown_name(name, [str(each.matched) for each in likely])


def question_in(read: Sequence[ReadLine], tree: FamilyTree) -> str:
    """What is asked of a line that was read, as it is kept with its spec."""
    return _in_one(
        [
            one.say
            if one.unknown is None or each.guesses
            else partial(_unknown, one.unknown, guesses(one.unknown, tree))
            for each in read
            for one in each.complaints
        ]
    )


def _in_one(asked: Sequence[Callable[[], str]]) -> str:
    return as_sentence("; ".join(say() for say in asked))


def _puts_right_what(read: ReadLine, text: str) -> ReadLine:
    """What was not understood of a row that puts another right: it is no line of its own."""
    words = " ".join(text.split())
    asked = Complaint(
        0,
        lambda: tr(
            "“{words}” puts a line before it right; write on that line what is meant", words=words
        ),
    )
    line = replace(read.line, ingredient="", alternatives=(), note="", called="", stated=())
    return replace(read, line=line, complaints=(asked,))


def _unsure(several: Sequence[ReadLine]) -> ReadLine:
    """The first of several lines of which one is not understood."""
    return next(each for each in several if each.complaints)


def _parted_between_names(value: str, tree: FamilyTree) -> Iterator[str]:
    """The garnishes of a list, never parted within a name: *tomato and clam juice* is one."""
    names = [(each.start, each.end) for each in names_in(value, tree)]
    start = 0
    for gap in (*_BETWEEN.finditer(value), None):
        if gap and any(begins < gap.end() and gap.start() < ends for begins, ends in names):
            continue
        part = value[start : gap.start() if gap else len(value)]
        start = gap.end() if gap else start
        if part:
            yield part


def _measures(text: str, units: BarUnits) -> bool:
    """Whether a text has an amount with its unit."""
    return any(each.amount.unit not in (None, "each") for each in amounts_in(text, units))


def _measures_a_thing(text: str, tree: FamilyTree, units: BarUnits) -> bool:
    """Whether a text has an amount with its unit and the name of something."""
    return _measures(text, units) and any(
        not tree.is_a(each.key, "ice") for each in names_in(text, tree)
    )


def may_be_kept(text: str) -> bool:
    """Whether a line that is not understood would be read as one again when it is written."""
    plain = text.strip()
    header = header_in(plain) or RULE.fullmatch(plain)
    return bool(plain) and not header and len(plain) <= LONGEST


def _is_one_word_of_method(text: str) -> bool:
    """Whether a row is nothing but a word such as *Shake.*"""
    words = text.split()
    return len(words) == 1 and technique_of(words[0]) != "unknown"


def is_a_line(text: str, tree: FamilyTree) -> bool:
    """Whether a text has a number, a unit and a known ingredient."""
    if not any(mark.isnumeric() for mark in text[:20]):
        return False
    return _has_all(read_line(text, tree).line)


def is_plainly_a_line(text: str, tree: FamilyTree) -> bool:
    """Whether a text is an amount, a unit and a name with hardly a word beside them."""
    if not any(mark.isnumeric() for mark in text[:20]):
        return False
    read = read_line(text, tree)
    beside = len(read.line.note.split())
    sure = not read.complaints and read.confidence >= ADJUSTED
    return _has_all(read.line) and sure and beside < 2


def _has_all(line: Line) -> bool:
    return bool(line.ingredient) and line.unit not in (None, "each")


def joined(rows: Sequence[str]) -> str:
    """A method's rows: paragraphs parted by one empty line, no space at the ends."""
    return re.sub(r"\n{2,}", "\n\n", "\n".join(" ".join(row.split()) for row in rows)).strip()


def for_one(read: ReadLine, serves: float) -> ReadLine:
    """A line whose quantity is for one serve of so many."""
    line = read.line
    if serves == 1.0 or line.quantity is None:
        return read
    each = float(f"{line.quantity / serves:.12g}")
    return replace(read, line=replace(line, quantity=each))


__all__ = [
    "HOW_PARTED",
    "ReadSpec",
    "composed",
    "each_spec",
    "for_one",
    "line_text",
    "names_twice",
    "read_specs",
    "text_around",
    "write_spec",
    "write_specs",
]


MOST_SPECS = 20_000
"""Specs of one text; a book never holds more, and other texts only look like one."""


def read_specs(text: str, tree: FamilyTree, units: BarUnits = US_UNITS) -> tuple[ReadSpec, ...]:
    """Every spec of a text, in order, at a bar that means `units` by its measures.

    Never raises: what is wrong is in each spec's problems.
    """
    return tuple(each_spec(text, tree, units))


def each_spec(text: str, tree: FamilyTree, units: BarUnits = US_UNITS) -> Iterator[ReadSpec]:
    """As `read_specs`, one spec at a time."""
    hints = Hints()
    found = blocks(text, units, partial(is_plainly_a_line, tree=tree))
    for count, rows in enumerate(found):
        row = rows[0].number
        if count == MOST_SPECS:
            message = tr(
                "a text holds at most {most:,} specs; from here on it is not read", most=MOST_SPECS
            )
            yield ReadSpec(Spec("", ()), (), (Problem(row, 1, message),), row)
            return
        yield _read_one(rows, Reading(tree, units, row, hints))


def names_twice(specs: Iterable[ReadSpec]) -> Iterator[Problem]:
    """A problem for each spec of a text whose name an earlier one of it has."""
    first: dict[str, int] = {}
    for each in specs:
        row = first.setdefault(folded(each.name), each.row)
        if each.name and row != each.row:
            message = tr(
                "“{name}” is in this text twice; it is also on line {row}", name=each.name, row=row
            )
            yield Problem(each.row, 1, message)


def _read_one(rows: Sequence[Row], reading: Reading) -> ReadSpec:
    in_method = False
    for row in _after_name(reading, rows):
        if row.odd:
            reading.remark(
                tr(
                    "line {row} is taken for the method of “{name}”",
                    row=row.number,
                    name=reading.name,
                )
            )
        header = None if row.empty else header_in(row.text)
        if header and header.name == "method":
            in_method = True
            reading.take_method(header.value, row.number, row.column, sure=bool(header.value))
        elif header:
            in_method = reading.take_field(header, row.number) or in_method
        elif in_method:
            reading.take_method(row.text, row.number, row.column)
        elif row.empty:
            in_method = bool(reading.lines)
        else:
            in_method = reading.take_line(row.text, row.number)
    return reading.finished()


def _after_name(reading: Reading, rows: Sequence[Row]) -> Sequence[Row]:
    """The rows after the name, which is the first unless that is plainly something else."""
    first = rows[0]
    if first.odd:
        reading.take_name(first.text, first.number)
        told = tr(
            "the other drinks of this list stand on a line each, with a colon behind the name; "
            "this line is kept as it is"
        )
        reading.complain(first.number, first.column, told)
        return rows[1:]
    header = header_in(first.text)
    if header and header.name == "name" and header.value:
        reading.take_name(header.value, first.number)
        return rows[1:]
    if header or is_a_line(first.text, reading.tree):
        message = tr("a spec begins with the name of the drink on a line of its own")
        reading.complain(first.number, 1, message)
        return rows
    reading.take_title(first.text, first.number)
    times = times_in_title(first.text)
    if times:
        told = tr(
            "“{times}” may say how many the amounts are for; write “Serves: {count}” "
            "below the name, or “Name: {name}” here",
            times=times,
            count=times[1:].strip(),
            name=reading.name,
        )
        reading.complain(first.number, 1, told)
    return rows[1:]


def write_spec(spec: Spec, tree: FamilyTree, units: BarUnits = US_UNITS) -> str:
    """A spec as text that `read_specs` reads back at the same bar.

    A line's own text is kept where it says what the line says; otherwise the
    line is written anew from its fields. One that was not understood stands
    there as it was written, to be asked about again.
    """
    lines = [
        each.text if isinstance(each, UnsettledLine) else line_text(each, tree, units)
        for each in spec.in_order
    ]
    garnishes = garnishes_to_write(spec, tree, units)
    method = [_method_row(row, tree) for row in _rows(spec)]
    return _text(spec, [*lines, *garnishes], method, tree, written=len(garnishes))


def garnishes_to_write(spec: Spec, tree: FamilyTree, units: BarUnits = US_UNITS) -> tuple[str, ...]:
    """The garnishes in words that read back when they stand among the lines of a spec.

    They are the first of its notes; any others are written as notes, so that none moves.
    """
    rows = [note.strip() for note in spec.notes.splitlines() if note.strip()]
    found: list[str] = []
    for row in rows:
        if not is_garnish_note(row):
            break
        reading = Reading(tree, units)
        reading.take_header(Header("garnish", row[len(GARNISH) :].strip(), 0), 1)
        if reading.lines or list(garnish_notes(reading.garnishes)) != [row]:
            break
        found.append(row)
    return tuple(found)


def text_around(spec: Spec, lines: Iterable[str]) -> str:
    """A spec as text, with the lines of its ingredients as given."""
    return _text(spec, lines, _rows(spec), None)


def write_specs(specs: Sequence[Spec], tree: FamilyTree, units: BarUnits = US_UNITS) -> str:
    """Several specs as one text."""
    return "---\n".join(write_spec(spec, tree, units) for spec in specs)


def line_text(line: Line, tree: FamilyTree, units: BarUnits = US_UNITS) -> str:
    """A line as text that reads back to it: as it was written, or else composed anew."""
    return line.text if reads_back(line, tree, units) else composed(line, tree, units)


def composed(line: Line, tree: FamilyTree, units: BarUnits = US_UNITS) -> str:
    """A line's text made from its fields."""
    return worded(line, names_of(line, tree), _amount_text(line, units))


def _text(
    spec: Spec,
    lines: Iterable[str],
    method: Sequence[str],
    tree: FamilyTree | None,
    *,
    written: int = 0,
) -> str:
    """A spec as text; the first `written` of its notes stand among the lines already."""
    name = " ".join(spec.name.split())
    misread = (
        header_in(name)
        or RULE.fullmatch(name)
        or (tree and is_a_line(name, tree))
        or serves_in_title(name)
        or times_in_title(name)
    )
    head = [f"Name: {name}" if misread else name]
    head += [f"Riff of: {spec.riff_of}"] if spec.riff_of else []
    head += lines
    head += (f"{field}: {value}" for field, value in _fields(spec) if value)
    notes = [note for note in spec.notes.splitlines() if note.strip()]
    head += [f"Notes: {note}" for note in notes[written:]]
    text = "\n".join(head) + "\n"
    return "\n".join((text, *method, "")) if method else text


def _points_at_nothing(text: str) -> ReadLine:
    """A row that points at the one before, and nothing there is put right by it."""
    told = " ".join(text.split())
    asked = Complaint(
        0,
        lambda: tr(
            "“{words}” points at the line before; write on that line what is meant", words=told
        ),
    )
    return ReadLine(Line(told, ""), (asked,))


def _fields(spec: Spec) -> Iterator[tuple[str, str]]:
    yield "Glass", spec.glass
    yield "Ice", spec.ice
    told = spec.serves == 1.0 and serves_in_method(joined(spec.method.split("\n"))) is None
    yield "Serves", "" if told else _exact(spec.serves)
    yield "Tags", ", ".join(spec.tags)
    yield "Credit", spec.credit
    yield "Source", spec.source


def _rows(spec: Spec) -> list[str]:
    method = joined(spec.method.split("\n"))
    return method.split("\n") if method else []


def _method_row(row: str, tree: FamilyTree) -> str:
    """A row of a method, with *Method:* before one that would be taken for something else."""
    misread = header_in(row) or RULE.fullmatch(row) or is_plainly_a_line(row, tree)
    return f"Method: {row}" if misread else row


def _amount_text(line: Line, units: BarUnits) -> str:
    if line.amount is None:
        return ""
    high = "" if line.amount_high is None else f"-{_exact(line.amount_high)}"
    unit = "" if line.unit in (None, "each") else f" {unit_words(str(line.unit), units)}"
    return f"{_exact(line.amount)}{high}{unit}"


def _exact(value: float) -> str:
    """A number that reads back to the very same."""
    shown = show_number(value, fractions=True, mark=".")
    read = amount_at_start(shown)
    return shown if read and read.value == value else f"{Decimal(repr(value)):f}"


def reads_back(line: Line, tree: FamilyTree, units: BarUnits) -> bool:
    """Whether a line's own text is read to all that the line holds."""
    header = header_in(line.text)
    if header and header.name != "garnish":
        return False
    text = header.value if header else line.text
    read = read_lines(text, tree, units, garnish=header is not None)
    if len(read) != 1 or read[0].complaints:
        return False
    # The quantity follows from the rest, and from what a dash is at this bar.
    again = replace(read[0].line, text=line.text, quantity=line.quantity)
    if not line.called:  # kept before its words were; the text says them
        again = replace(again, called="", stated=again.stated if line.stated else ())
    return line.text == line.text.strip() and again == line
