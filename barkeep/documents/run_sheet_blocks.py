"""A run sheet as groups of blocks, part by part, and as plain text."""

from __future__ import annotations

from collections.abc import Callable, Iterator, Mapping, Sequence
from itertools import groupby

from barkeep.documents.print_blocks import (
    NO_BREAK,
    Block,
    Group,
    Rows,
    Text,
    Tick,
    card_blocks,
    job_text,
)
from barkeep.documents.run_sheet import SPEC_REMOVED, RunSheetContent, RunSheetDrink

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


def _heading(sheet: RunSheetContent) -> Iterator[Group]:
    yield (Text("title", sheet.theme),)
    yield (Text("subtitle", sheet.when),)


def _verdict(sheet: RunSheetContent) -> Iterator[Group]:
    short = [Text("short", each) for each in sheet.short]
    yield from _section("Can it be poured?", [Text("verdict", sheet.verdict), *short])


def _steps(sheet: RunSheetContent) -> Iterator[Group]:
    """Steps of one moment stay together under it."""
    heading: tuple[Block, ...] = (Text("section", "Mise en place"),)
    for when, steps in groupby(sheet.steps, key=lambda each: each.when):
        first, *others = [Tick("step", each.text, each.done) for each in steps]
        yield (*heading, Text("when", when), first)
        yield from ((each,) for each in others)
        heading = ()


def _drinks(sheet: RunSheetContent) -> Iterator[Group]:
    heading: tuple[Block, ...] = (Text("section", "Running order"),)
    for drink in sheet.drinks:
        yield (*heading, *_drink(drink))
        heading = ()


def _drink(drink: RunSheetDrink) -> Iterator[Block]:
    yield Text("name", f"{drink.number}. {drink.name}")
    yield Text("serves", drink.serves)
    if drink.card is None:
        yield Text("short", SPEC_REMOVED)
    else:
        yield from card_blocks(drink.card, _CARD_PARTS)


def _set_out(sheet: RunSheetContent) -> Iterator[Group]:
    for title, rows in (
        ("Glassware", sheet.glassware),
        ("Tools", sheet.tools),
        ("Ice", sheet.ice),
    ):
        yield from _table(title, rows)


def _draws(sheet: RunSheetContent) -> Iterator[Group]:
    yield from _table("Drawn from each bottle", sheet.draws)


def _table(title: str, rows: tuple[tuple[str, str], ...]) -> Iterator[Group]:
    kept = tuple((amount.replace(" ", NO_BREAK), name) for amount, name in rows)
    yield from _section(title, [Rows("table", kept)] if kept else [])


def _shopping(sheet: RunSheetContent) -> Iterator[Group]:
    yield from _section("To buy", [Tick("step", each) for each in sheet.shopping])


def _cautions(sheet: RunSheetContent) -> Iterator[Group]:
    yield from _section("Please mind", [Text("caution", each) for each in sheet.cautions])


def _notes(sheet: RunSheetContent) -> Iterator[Group]:
    yield from _section("Notes", [Text("note", each) for each in sheet.notes])


def _space(sheet: RunSheetContent) -> Iterator[Group]:
    """Ruled lines; the last block keeps the rule above it inside the group."""
    lines = [Text("ruled", NO_BREAK)] * RULED_LINES
    yield (Text("section", "From the shoot"), *lines, Text("small", NO_BREAK))


RUN_SHEET_PARTS: Mapping[str, Callable[[RunSheetContent], Iterator[Group]]] = {
    "heading": _heading,
    "verdict": _verdict,
    "steps": _steps,
    "shopping": _shopping,
    "set_out": _set_out,
    "draws": _draws,
    "drinks": _drinks,
    "cautions": _cautions,
    "notes": _notes,
    "space": _space,
}
