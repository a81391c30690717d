"""A run sheet: one shoot from its mise en place to its last drink, as blocks and as plain text."""

from __future__ import annotations

from collections.abc import Callable, Iterator, Mapping, Sequence
from dataclasses import dataclass
from datetime import date, datetime, time
from itertools import groupby

from barkeep.documents.printed.blocks import (
    NO_BREAK,
    Block,
    Group,
    Rows,
    Text,
    Tick,
    card_blocks,
    job_text,
)
from barkeep.documents.printed.cards import FIRST_OF_ALL, CardContent
from barkeep.domain.amounts.rounding import whole_up
from barkeep.domain.amounts.units import Unit
from barkeep.domain.bar.shoots import ServeCounts, Shoot
from barkeep.domain.days import day_of_week, day_said
from barkeep.domain.phrases import counted
from barkeep.domain.pouring.words import plain_amount
from barkeep.domain.shoots.mise_en_place import MiseEnPlace
from barkeep.errors import spoken_list
from barkeep.translation import tr, tr_noop

SPEC_REMOVED = tr_noop("Its spec was removed.")


@dataclass(frozen=True, slots=True)
class RunSheetDrink:
    """One drink of the running order; `card` is None where its spec was removed."""

    number: int
    name: str
    serves: str
    card: CardContent | None


@dataclass(frozen=True, slots=True)
class RunSheetStep:
    """One step of the mise en place, and whether it was ticked off already."""

    when: str
    text: str
    done: bool


@dataclass(frozen=True, slots=True)
class Drawn:
    """What is taken from one bottle, in its unit."""

    bottle: str
    amount: float
    unit: Unit


@dataclass(frozen=True, slots=True)
class Outlook:
    """Whether the shoot can be poured: the verdict, what runs short, and what is drawn.

    Of one that is filmed or logged it is what the log takes, or took.
    """

    verdict: str
    short: tuple[str, ...] = ()
    draws: tuple[Drawn, ...] = ()


@dataclass(frozen=True, slots=True)
class RunSheetContent:
    """A whole run sheet in texts; each table is rows of an amount and a name."""

    theme: str
    when: str
    drinks: tuple[RunSheetDrink, ...]
    verdict: str
    short: tuple[str, ...] = ()
    steps: tuple[RunSheetStep, ...] = ()
    glassware: tuple[tuple[str, str], ...] = ()
    tools: tuple[tuple[str, str], ...] = ()
    ice: tuple[tuple[str, str], ...] = ()
    draws: tuple[tuple[str, str], ...] = ()
    shopping: tuple[str, ...] = ()
    cautions: tuple[str, ...] = ()
    notes: tuple[str, ...] = ()
    filmed: bool = False


def run_sheet_content(
    shoot: Shoot,
    *,
    cards: Sequence[CardContent | None],
    ready: MiseEnPlace,
    outlook: Outlook,
    shopping: Sequence[str] = (),
    general_cautions: Sequence[str] = (),
) -> RunSheetContent:
    """A run sheet; `cards` are the drinks' in running order, None where a spec was removed.

    `general_cautions` are true of every drink, so that the cards need not say them.
    """
    starts = None if shoot.starts is None else datetime.combine(shoot.on, shoot.starts)
    drinks = tuple(
        RunSheetDrink(number, drink.name, serves_in_words(drink.serves), card)
        for number, (drink, card) in enumerate(zip(shoot.drinks, cards, strict=True), 1)
    )
    return RunSheetContent(
        theme=shoot.theme,
        when=day_and_time(shoot.on, shoot.starts),
        drinks=drinks,
        verdict=outlook.verdict,
        short=outlook.short,
        steps=tuple(
            RunSheetStep(each.said_when(starts), each.text, each.key in shoot.ticked)
            for each in ready.steps
        ),
        glassware=tuple((f"{each.count} ×", each.name) for each in ready.glassware),
        tools=tuple((f"{each.count} ×", each.name) for each in ready.tools),
        ice=tuple((each.shown, each.kind) for each in ready.ice),
        draws=tuple(_drawn(each) for each in outlook.draws),
        shopping=tuple(shopping),
        cautions=all_cautions([card for card in cards if card is not None], general_cautions),
        notes=tuple(row.strip() for row in shoot.notes.splitlines() if row.strip()),
        filmed=shoot.state in ("filmed", "logged"),
    )


def day_and_time(on: date, starts: time | None) -> str:
    """A day by its name and date, with the time where there is one.

    >>> day_and_time(date(2026, 11, 27), time(15))
    'Friday 27 November 2026, 15:00'
    """
    day = f"{day_of_week(on)} {day_said(on)}"
    return day if starts is None else f"{day}, {starts:%H:%M}"


def serves_in_words(serves: ServeCounts) -> str:
    """How many serves of a drink, and what for.

    >>> serves_in_words(ServeCounts(1, 2, 0))
    '3 serves: 1 test, 2 for the camera'
    """
    parts = [
        counted(serves.tests, "test") if serves.tests else "",
        tr("{camera} for the camera", camera=serves.camera) if serves.camera else "",
        tr("{tasting} to taste", tasting=serves.tasting) if serves.tasting else "",
    ]
    said = ", ".join(each for each in parts if each)
    many = counted(serves.total, "serve")
    return f"{many}: {said}" if said else tr("No serves")


def all_cautions(cards: Sequence[CardContent], general: Sequence[str] = ()) -> tuple[str, ...]:
    """What stands before all cautions, those that are `general`, then each with its drinks.

    Allergens come with them.
    """
    drinks: dict[str, list[str]] = {}
    for card in cards:
        carries = [f"{card.allergens}."] if card.allergens else []
        for text in (*carries, *card.own_cautions):
            drinks.setdefault(text, []).append(card.name)
    own = [f"{spoken_list(tuple(names), 'and')}: {text}" for text, names in drinks.items()]
    return (tr(FIRST_OF_ALL), *general, *own) if general or own else ()


def removed_in_words(names: Sequence[str]) -> str:
    """That drinks are named without their spec; empty where there is none."""
    if not names:
        return ""
    drinks = spoken_list(tuple(names), "and")
    if len(names) == 1:
        return tr("{drinks}: its spec was removed.", drinks=drinks)
    return tr("{drinks}: their specs were removed.", drinks=drinks)


def _drawn(each: Drawn) -> tuple[str, str]:
    if each.unit == "each":
        return f"{whole_up(each.amount):g} ×", each.bottle
    return plain_amount(round(each.amount, 1 if each.amount < 10.0 else 0), each.unit), each.bottle


RULED_LINES = 9
"""For notes by hand."""
_CARD_PARTS = ("both", "service", "method", "facts", "allergens")


def run_sheet_groups(sheet: RunSheetContent, parts: Sequence[str]) -> tuple[Group, ...]:
    """The parts of a run sheet in the template's order."""
    return tuple(group for part in parts for group in RUN_SHEET_PARTS[part](sheet) if group)


def run_sheet_text(sheet: RunSheetContent) -> str:
    """A run sheet as plain text; what is ruled to be written on is left out."""
    return job_text(run_sheet_groups(sheet, [part for part in RUN_SHEET_PARTS if part != "space"]))


def _section(title: str, blocks: Sequence[Block]) -> Iterator[Group]:
    """A heading that stays with the first of its blocks; nothing where there is none."""
    if blocks:
        yield (Text("section", title), blocks[0])
        yield from ((each,) for each in blocks[1:])


def _texts(style: str, texts: Sequence[str]) -> list[Text]:
    return [Text(style, each) for each in texts]


def _heading(sheet: RunSheetContent) -> Iterator[Group]:
    yield (Text("title", sheet.theme),)
    yield (Text("subtitle", sheet.when),)


def _verdict(sheet: RunSheetContent) -> Iterator[Group]:
    said = [Text("verdict", sheet.verdict), *_texts("short", sheet.short)]
    yield from _section(tr("The log") if sheet.filmed else tr("Can it be poured?"), said)


def _steps(sheet: RunSheetContent) -> Iterator[Group]:
    """Steps of one moment stay together under it."""
    heading: tuple[Block, ...] = (Text("section", tr("Mise en place")),)
    for when, steps in groupby(sheet.steps, key=lambda each: each.when):
        first, *others = [Tick("step", each.text, each.done) for each in steps]
        yield (*heading, Text("when", when), first)
        yield from ((each,) for each in others)
        heading = ()


def _drinks(sheet: RunSheetContent) -> Iterator[Group]:
    heading: tuple[Block, ...] = (Text("section", tr("Running order")),)
    for drink in sheet.drinks:
        yield (*heading, *_drink(drink))
        heading = ()


def _drink(drink: RunSheetDrink) -> Iterator[Block]:
    yield Text("name", f"{drink.number}. {drink.name}")
    yield Text("serves", drink.serves)
    if drink.card is None:
        yield Text("short", tr(SPEC_REMOVED))
    else:
        yield from card_blocks(drink.card, _CARD_PARTS)


def _set_out(sheet: RunSheetContent) -> Iterator[Group]:
    for title, rows in (
        (tr("Glassware"), sheet.glassware),
        (tr("Tools"), sheet.tools),
        (tr("Ice"), sheet.ice),
    ):
        yield from _table(title, rows)


def _table(title: str, rows: tuple[tuple[str, str], ...]) -> Iterator[Group]:
    kept = tuple((amount.replace(" ", NO_BREAK), name) for amount, name in rows)
    yield from _section(title, [Rows("table", kept)] if kept else [])


def _space(sheet: RunSheetContent) -> Iterator[Group]:
    """Ruled lines; the last block keeps the rule above it inside the group."""
    lines = [Text("ruled", NO_BREAK)] * RULED_LINES
    yield (Text("section", tr("From the shoot")), *lines, Text("small", NO_BREAK))


RUN_SHEET_PARTS: Mapping[str, Callable[[RunSheetContent], Iterator[Group]]] = {
    "heading": _heading,
    "verdict": _verdict,
    "steps": _steps,
    "shopping": lambda sheet: _section(
        tr("To buy"), [Tick("step", each) for each in sheet.shopping]
    ),
    "set_out": _set_out,
    "draws": lambda sheet: _table(tr("Drawn from each bottle"), sheet.draws),
    "drinks": _drinks,
    "cautions": lambda sheet: _section(tr("Please mind"), _texts("caution", sheet.cautions)),
    "notes": lambda sheet: _section(tr("Notes"), _texts("note", sheet.notes)),
    "space": _space,
}
