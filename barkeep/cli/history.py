"""`barkeep history`: what happened to a bottle."""

from __future__ import annotations

from barkeep.application.bar import Bar
from barkeep.application.finding import find_bottle
from barkeep.cli.arguments import BOTTLE, Arguments, command
from barkeep.cli.bar_source import in_bar
from barkeep.cli.output import Answer, rounded, table
from barkeep.domain.amounts.measures import show_quantity
from barkeep.domain.amounts.units import Unit
from barkeep.domain.bottles.level_steps import LevelStep, level_steps
from barkeep.domain.bottles.level_words import certainty, in_doubt

_WITHOUT_AMOUNT = ("open", "empty")


@command(BOTTLE)
@in_bar
def history(arguments: Arguments, bar: Bar) -> Answer:
    """A bottle's entries, oldest first, each with the level after it."""
    bottle = find_bottle(bar.snapshot, arguments.bottle)
    title, unit, size = bottle.product.title, bottle.product.unit, bottle.product.size
    entries = [entry for entry, _level in bar.inventory.history(bottle.id)]
    steps = level_steps(entries, unit)
    head = ("when", "what", "amount", "level", "doubt", "how", "note")
    rows = table(head, [_entry_row(each, unit, size) for each in steps], right="llrrr")
    return Answer(
        lambda: {"bottle": title, "unit": unit, "entries": [_entry_json(each) for each in steps]},
        f"{title} (#{bottle.id})\n{rows}",
    )


def _entry_json(step: LevelStep) -> dict[str, object]:
    """`sigma` is how sure a count was, `level_sigma` how sure the level is after the entry."""
    entry = step.entry
    amount = None if entry.kind in _WITHOUT_AMOUNT else rounded(entry.amount, 2)
    return {
        "at": entry.at.isoformat(timespec="seconds"),
        "kind": entry.kind,
        "amount": amount,
        "level": rounded(step.after, 2),
        "method": entry.method,
        "sigma": rounded(entry.sigma, 2),
        "note": entry.note,
        "level_sigma": rounded(step.after_sigma, 2),
    }


def _entry_row(step: LevelStep, unit: Unit, size: float) -> tuple[str, ...]:
    entry = step.entry
    sign = "−" if entry.amount < 0 else ""
    amount = sign + show_quantity(abs(entry.amount), unit)
    return (
        f"{entry.at:%Y-%m-%d %H:%M}",
        entry.kind,
        "" if entry.kind in _WITHOUT_AMOUNT else amount,
        show_quantity(step.after, unit),
        in_doubt(step.after_sigma, unit),
        certainty(entry.method, entry.sigma, unit, size),
        entry.note,
    )
