"""`barkeep history`: what the ledger says happened to a bottle."""

from __future__ import annotations

import argparse

from barkeep.application.finding import find_bottle
from barkeep.cli.arguments import Arguments
from barkeep.cli.bar_source import opened_bar
from barkeep.cli.output import print_json, rounded
from barkeep.cli.table import table
from barkeep.domain.amounts.measures import show_quantity
from barkeep.domain.amounts.units import Unit
from barkeep.domain.bottles.bottle import Entry
from barkeep.domain.bottles.level_words import certainty

_WITHOUT_AMOUNT = ("open", "empty")


def configure(parser: argparse.ArgumentParser) -> None:
    """Its arguments."""
    parser.add_argument("bottle", metavar="BOTTLE", help="its id, or its maker and name")
    parser.set_defaults(run=run)


def run(arguments: Arguments) -> int:
    """Print a bottle's entries, oldest first, each with the level after it."""
    with opened_bar(arguments) as bar:
        bottle = find_bottle(bar.snapshot, arguments.bottle)
        steps = bar.inventory.history(bottle.id)
    product = bottle.product
    if arguments.json:
        entries = [_entry_json(entry, level) for entry, level in steps]
        print_json({"bottle": product.title, "unit": product.unit, "entries": entries})
        return 0
    print(f"{product.title} (#{bottle.id})")
    rows = [_entry_row(entry, level, product.unit) for entry, level in steps]
    print(table(("when", "what", "amount", "level", "how", "note"), rows, right="llrr"))
    return 0


def _entry_json(entry: Entry, level: float) -> dict[str, object]:
    amount = None if entry.kind in _WITHOUT_AMOUNT else rounded(entry.amount, 2)
    return {
        "at": entry.at.isoformat(timespec="seconds"),
        "kind": entry.kind,
        "amount": amount,
        "level": rounded(level, 2),
        "method": entry.method,
        "sigma": rounded(entry.sigma, 2),
        "note": entry.note,
    }


def _entry_row(entry: Entry, level: float, unit: Unit) -> tuple[str, ...]:
    sign = "−" if entry.amount < 0 else ""
    amount = sign + show_quantity(abs(entry.amount), unit)
    return (
        f"{entry.at:%Y-%m-%d %H:%M}",
        entry.kind,
        "" if entry.kind in _WITHOUT_AMOUNT else amount,
        show_quantity(level, unit),
        certainty(entry.method, entry.sigma, unit),
        entry.note,
    )
