"""What can go wrong, each error with its fields and one clear sentence.

A `UserError` speaks to the person at the bar and may be shown as it is. Any
other exception is a fault of the program and belongs in the crash dialog.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from typing import ClassVar, dataclass_transform

from barkeep.translation import tr, tr_about, tr_noop


@dataclass_transform(eq_default=False)
class BarkeepError(Exception):
    """The root of every error barkeep raises on purpose.

    A kind of error declares its fields, in order and with their types, as a dataclass does, and
    `says`, its sentence with the fields in braces; where that is not enough it has a `__str__`.
    Fields that are `in_words` of barkeep's own are said in the language that is spoken.
    (Decorating them all as dataclasses would take longer than the rest of this module.)
    """

    __match_args__: ClassVar[tuple[str, ...]] = ()
    says = ""
    in_words: ClassVar[tuple[str, ...]] = ()

    def __init_subclass__(cls) -> None:
        cls.__match_args__ = (*cls.__match_args__, *cls.__annotations__)  # type: ignore[misc]

    def __init__(self, *values: object, **named: object) -> None:
        names = self.__match_args__
        given = dict(zip(names, values, strict=False)) | named
        held = {name: getattr(self, name) for name in names if hasattr(self, name)} | given
        if held.keys() != set(names) or len(given) < len(values) + len(named):
            raise TypeError(f"{type(self).__name__} holds {names}, not {values} and {named}")
        super().__init__(*(held[name] for name in names))  # from which it is copied
        self.__dict__.update(held)

    def __str__(self) -> str:
        held = vars(self)
        return tr(self.says, **held | self._in_words()) if held else tr(self.says)

    def _in_words(self) -> dict[str, str]:
        return {name: tr(getattr(self, name)) for name in self.in_words}

    def __repr__(self) -> str:
        held = (f"{name}={getattr(self, name)!r}" for name in self.__match_args__)
        return f"{type(self).__qualname__}({', '.join(held)})"


class UserError(BarkeepError):
    """Something the user gave cannot be used; `str()` says what and why."""


def spoken_list(words: Sequence[str], joiner: str = tr_noop("or")) -> str:
    """Join words as a sentence would.

    >>> spoken_list(["gin", "rum", "rye"])
    'gin, rum or rye'
    """
    if len(words) < 2:
        return "".join(words)
    return f"{', '.join(words[:-1])} {tr(joiner)} {words[-1]}"


class AmountError(UserError):
    """An amount that cannot be read: `text` as written, `expected` in words."""

    text: str
    expected: str
    in_words = ("expected",)
    says = "“{text}” cannot be read as an amount: {expected}."


class WrongDimension(UserError):
    """An amount of the wrong kind, such as grams where a volume is meant."""

    text: str
    given: str
    wanted: str
    in_words = ("given", "wanted")
    says = "“{text}” is {given}; {wanted} is expected here."


class NegativeAmount(UserError):
    """An amount below nothing."""

    text: str
    says = "“{text}” is below nothing; an amount is zero or more."


class LevelAboveSize(UserError):
    """More in a bottle than the bottle holds; both in the bottle's unit."""

    level: float
    size: float
    unit: str
    bottle: str
    says = "{level:g} {unit} is more than {bottle} holds ({size:g} {unit})."


class OutsideRange(UserError):
    """A quantity outside what a formula or a table is good for."""

    quantity: str
    value: float
    low: float
    high: float
    unit: str

    def __str__(self) -> str:
        unit = f" {self.unit}" if self.unit else ""
        return tr(
            "a {quantity} of {value:.6g}{unit} cannot be used: "
            "it is {low:.6g} to {high:.6g}{unit}.",
            quantity=tr(self.quantity),
            value=self.value,
            low=self.low,
            high=self.high,
            unit=unit,
        )


class HeightAboveBottle(UserError):
    """A height of liquid that no liquid in the bottle can have; all in cm from the table.

    `tallest_cm` is the height of the whole bottle, `brim_cm` of its mouth.
    """

    height_cm: float
    tallest_cm: float
    brim_cm: float
    bottle: str

    def __str__(self) -> str:
        if self.height_cm > self.tallest_cm:
            says = tr_noop(
                "{height_cm:.4g} cm is above the whole bottle: "
                "{bottle} is {tallest_cm:.3g} cm tall. Measure again, or choose another shape."
            )
        else:
            says = tr_noop(
                "{height_cm:.4g} cm is above the mouth: {bottle} is brimful at {brim_cm:.3g} cm. "
                "Measure again, or choose another shape."
            )
        return tr(says, **vars(self))


class TareUnknown(UserError):
    """A weight of a bottle whose own weight nobody knows."""

    bottle: str
    says = (
        "What {bottle} weighs without its contents is not known yet: "
        "weigh it once full or once empty first."
    )


class DensityUnknown(UserError):
    """A weight of a bottle with something in it whose density nobody knows.

    `because` is part of a sentence.
    """

    bottle: str
    because: str
    in_words = ("because",)
    says = (
        "How much a weight of {bottle} leaves cannot be worked out: {because}. "
        "Weigh a bottle of it once full and once empty, or count it in another way."
    )


class BelowTare(UserError):
    """A weight below that of the empty bottle, in g."""

    weight_g: float
    tare_g: float
    bottle: str
    says = (
        "{weight_g:.5g} g is less than {bottle} weighs empty "
        "({tare_g:.4g} g). Is it on the scale, without its cap?"
    )


class WeightAboveFull(UserError):
    """A weight above that of the full bottle, in g."""

    weight_g: float
    full_g: float
    bottle: str
    says = "{weight_g:.5g} g is more than {bottle} weighs when it is full (about {full_g:.4g} g)."


class UnlikelyTare(UserError):
    """Weights of a bottle that cannot both be right, in g; `size_ml` is what it holds.

    Of `empty_g` and `full_g` one may be None: it was not weighed so.
    """

    bottle: str
    size_ml: float
    empty_g: float | None
    full_g: float | None

    def __str__(self) -> str:
        held = vars(self) | {"full_g": self.full_g or 0.0}
        if self.empty_g is None and held["full_g"] > 3.0 * self.size_ml:
            says = tr_noop(
                "{full_g:.5g} g full is too much for the {size_ml:g} ml "
                "that {bottle} holds and a bottle."
            )
        elif self.empty_g is None:
            says = tr_noop(
                "{full_g:.5g} g full is too little for the {size_ml:g} ml "
                "that {bottle} holds and a bottle."
            )
        elif self.full_g is None:
            says = tr_noop("{empty_g:.5g} g is no weight of an empty bottle of {size_ml:g} ml.")
        else:
            says = tr_noop(
                "{empty_g:.5g} g empty and {full_g:.5g} g full do not go with the {size_ml:g} ml "
                "that {bottle} holds; one of the two was not what it was taken for."
            )
        return tr(says, **held)


class NotEnoughLeft(UserError):
    """A pour of more than the ledger says is left; both in the bottle's unit."""

    amount: float
    left: float
    unit: str
    bottle: str
    says = (
        "{amount:g} {unit} cannot be taken from {bottle}: "
        "the ledger says {left:g} {unit} is left. Count it first."
    )


class UnknownName(UserError):
    """A name that nothing answers to, with the nearest names there are."""

    kind: str
    name: str
    nearest: tuple[str, ...] = ()

    def __str__(self) -> str:
        sentence = tr("There is no {kind} called “{name}”.", kind=tr(self.kind), name=self.name)
        if not self.nearest:
            return sentence
        names = spoken_list(self.nearest, "and")
        if len(self.nearest) > 1:
            return f"{sentence} {tr('The nearest are {names}.', names=names)}"
        return f"{sentence} {tr('The nearest is {names}.', names=names)}"


class AmbiguousName(UserError):
    """A name that several things answer to."""

    kind: str
    name: str
    choices: tuple[str, ...]

    def __str__(self) -> str:
        return tr(
            "“{name}” could be more than one {kind}: {choices}. Say which.",
            name=self.name,
            kind=tr(self.kind),
            choices=spoken_list(self.choices),
        )


class DuplicateName(UserError):
    """A second thing of one kind with a name that is taken."""

    kind: str
    name: str

    def __str__(self) -> str:
        kind = tr(self.kind)
        if self.kind[:1] in "aeiou":
            says = tr_noop("There is already an {kind} called “{name}”; choose another name.")
        else:
            says = tr_noop("There is already a {kind} called “{name}”; choose another name.")
        return tr(says, kind=kind, name=self.name)


class InvalidField(UserError):
    """One field of a form or a record that cannot hold what was given."""

    field: str
    value: object
    expected: str
    in_words = ("field", "expected")
    says = "{field} cannot be “{value}”: {expected}."


class CannotBatch(UserError):
    """A batch that makes no sense: of which spec, and why."""

    spec: str
    reason: str
    in_words = ("reason",)
    says = "{spec} cannot be batched: {reason}."


class BadQuery(UserError):
    """A term of a search that means nothing: `term` as typed, `expected` in words."""

    term: str
    expected: str
    in_words = ("expected",)
    says = "“{term}” finds nothing: {expected}."


class TwoIngredients(UserError):
    """One product of a file with two ingredients: here, and on an earlier line."""

    here: str
    there: str
    line: int
    says = "{here} here, {there} on line {line}, for the same product."


def way_in_words(what: str) -> str:
    """*undo* or *redo* as a sentence has it."""
    if what == "redo":
        return tr_about("inside a sentence", "redo")
    return tr_about("inside a sentence", "undo")


class NothingToUndo(UserError):
    """Undo or redo with nothing before or after; `what` is which of the two."""

    what: str

    def __str__(self) -> str:
        return tr("There is nothing to {what}.", what=way_in_words(self.what))


@dataclass(frozen=True)
class Problem:
    """One place in a text that cannot be used; line and column count from 1.

    `unknown` is the text that names no ingredient known, where that is what is wrong;
    `answer` is the line as it is likely meant, where only saying so is missing;
    `asks` says that it is a question about one line, which may be kept with its spec.
    """

    line: int
    column: int
    message: str
    unknown: str | None = None
    answer: str | None = None
    asks: bool = False

    def __str__(self) -> str:
        return tr(
            "line {line}, column {column}: {message}",
            line=self.line,
            column=self.column,
            message=self.message,
        )


class UnusableFile(UserError):
    """A file with problems, each located; nothing of it was written.

    `way_out` is what may be done about them, empty where that is to put them right.
    """

    file: str
    problems: tuple[Problem, ...]
    way_out: str = ""

    def __str__(self) -> str:
        told = f"{self.file}, {self.problems[0]}" if self.problems else self.file
        more = len(self.problems) - 1
        if more == 1:
            told += tr(" (1 more problem)")
        elif more > 1:
            told += tr(" ({more} more problems)", more=more)
        return f"{told}; {tr(self.way_out)}" if self.way_out else told


class UnreadableFile(UserError):
    """A file that cannot be opened or is not of the kind that was expected.

    `line` and `column` count from 1 and are 0 where no place can be told;
    `overall` is said before the place, `reason` after it.
    """

    file: str
    reason: str
    line: int = 0
    column: int = 0
    overall: str = ""

    def __str__(self) -> str:
        place = tr("line {line}", line=self.line) if self.line else ""
        if self.line and self.column:
            place = tr("line {line}, column {column}", line=self.line, column=self.column)
        said = (tr(self.overall), place, tr(self.reason))
        told = ": ".join(each for each in said if each)
        return tr("{file} cannot be used: {told}.", file=self.file, told=told)

    @property
    def problem(self) -> Problem:
        """The same as a place in the file, its beginning where none can be told."""
        told = ": ".join(each for each in (self.overall, self.reason) if each)
        return Problem(self.line or 1, self.column or 1, told)


class NotText(UserError):
    """Something written that holds bytes which are no letters, shown as far as it can be."""

    text: str
    says = "“{text}” holds bytes that are no text (UTF-8); write it anew."


class NotPrinted(UserError):
    """An answer that could not be printed, though what was asked was done."""

    reason: str
    in_words = ("reason",)
    says = "What was asked is done, but the answer could not be printed: {reason}."


class CannotUse(UserError):
    """Something of this machine, most often a file, that cannot be used; `reason` says why."""

    what: str
    reason: str
    in_words = ("what", "reason")
    says = "{what} cannot be used: {reason}."


class Stopped(UserError):
    """The user stopped something before it was done; `what` names it. Nothing was written."""

    what: str
    in_words = ("what",)
    says = "{what} was stopped; nothing was written."


class NewerBar(UserError):
    """A bar written by a later barkeep; the file is left as it is."""

    file: str
    found: int
    known: int
    says = (
        "{file} was written by a newer barkeep (schema {found}; this one knows "
        "{known}). It has not been touched; update barkeep to open it."
    )


class KnowledgeError(BarkeepError):
    """A resource that cannot be used: which file, which key, and the reason."""

    file: str
    key: str
    reason: str
    others: tuple[str, ...] = ()
    says = "{file}, {key}: {reason}"


class CyclicFamily(KnowledgeError):
    """A family tree that runs in a circle; `others` are the keys of the circle."""

    def __str__(self) -> str:
        circle = " → ".join(self.others)
        return tr(
            "{file}: the family tree runs in a circle: {circle}", file=self.file, circle=circle
        )
