"""`barkeep batch`: one serve made many."""

from __future__ import annotations

import argparse
from collections.abc import Iterator
from typing import get_args

from barkeep.application.finding import find_ingredient, find_spec
from barkeep.cli.arguments import Arguments
from barkeep.cli.bar_source import opened_bar
from barkeep.cli.output import print_json, rounded
from barkeep.cli.table import table
from barkeep.domain.amounts import Amount, parse_amount
from barkeep.domain.answers.analysis_words import caution_in_words
from barkeep.domain.batching import (
    Batch,
    BatchLine,
    ForServes,
    ForVessel,
    ForVolume,
    FromIngredient,
    Served,
    Target,
    batch,
)
from barkeep.domain.ingredients import FamilyTree
from barkeep.domain.measures import show_quantity, to_quantity
from barkeep.domain.snapshot import Snapshot
from barkeep.errors import AmountError, InvalidField

FROM = "write the ingredient, = and how much of it there is, such as “gin=700 ml”"


def configure(parser: argparse.ArgumentParser) -> None:
    """Its arguments."""
    parser.add_argument("name", metavar="NAME", help="the drink's name")
    much = parser.add_mutually_exclusive_group(required=True)
    much.add_argument("--serves", metavar="N", help="so many serves")
    much.add_argument("--volume", metavar="V", help="so much in all, water added, such as 3 l")
    much.add_argument(
        "--vessel", metavar="V", help="as much as a vessel of this size takes, such as 4 l"
    )
    much.add_argument(
        "--from",
        dest="pivot",
        metavar="INGREDIENT=V",
        help="all there is of one ingredient, such as gin=700 ml; the rest follows",
    )
    parser.add_argument(
        "--room",
        metavar="SHARE",
        default="10 %",
        help="what to leave free in the vessel for ice or foam (default: 10 %%)",
    )
    parser.add_argument(
        "--served",
        choices=get_args(Served),
        default="cold",
        help="cold (the default: chilled, water added), over_ice, hot, frozen (from the freezer)",
    )
    parser.set_defaults(run=run)


def run(arguments: Arguments) -> int:
    """Print a batch; with `--json` under stable keys."""
    with opened_bar(arguments) as bar:
        snapshot = bar.snapshot
    spec = find_spec(snapshot, arguments.name)
    made = batch(spec, snapshot, _target(arguments, snapshot), arguments.served)
    cautions = [caution_in_words(each) for each in made.cautions]
    tree = snapshot.knowledge.tree
    if arguments.json:
        print_json(_batch_json(made, cautions, tree))
    else:
        print("\n".join(_shown(made, cautions, tree)))
    return 0


def _target(arguments: Arguments, snapshot: Snapshot) -> Target:
    if arguments.serves is not None:
        return ForServes(_number(arguments.serves))
    if arguments.volume is not None:
        return ForVolume(_volume(arguments.volume, snapshot))
    if arguments.vessel is not None:
        return ForVessel(_volume(arguments.vessel, snapshot), _share(arguments.room))
    name, equals, amount = arguments.pivot.rpartition("=")
    if not equals or not name.strip():
        raise AmountError(arguments.pivot, FROM)
    key = find_ingredient(snapshot.knowledge.tree, name.strip())
    unit = snapshot.knowledge.tree[key].unit
    units = snapshot.settings.units
    return FromIngredient(key, to_quantity(parse_amount(amount, units), unit, units))


def _volume(text: str, snapshot: Snapshot) -> float:
    units = snapshot.settings.units
    return to_quantity(parse_amount(text, units), "ml", units)


def _number(text: str) -> float:
    amount: Amount = parse_amount(text)
    if amount.unit != "each" or amount.high is not None:
        raise AmountError(text, "write one number, such as 12")
    return amount.value


def _share(text: str) -> float:
    percent = text.strip().removesuffix("%").strip()
    try:
        share = float(percent.replace(",", "."))
    except ValueError:
        raise InvalidField("room", text, "write a share such as 10 % or 0.1") from None
    return share / 100.0 if text.strip().endswith("%") else share


def _batch_json(made: Batch, cautions: list[str], tree: FamilyTree) -> dict[str, object]:
    return {
        "spec": made.spec.name,
        "served": made.served,
        "serves": rounded(made.serves, 2),
        "lines": [_line_json(line, tree) for line in made.lines],
        "water_ml": rounded(made.water_ml, 1),
        "total_ml": rounded(made.total_ml, 1),
        "abv_percent": rounded(made.abv_percent, 2),
        "short": [
            {
                "ingredient": tree.name(each.ingredient),
                _in("need", each.unit): rounded(each.need, 1),
                _in("have", each.unit): rounded(each.have, 1),
            }
            for each in made.short
        ],
        "cautions": cautions,
        "notes": list(made.notes),
    }


def _line_json(line: BatchLine, tree: FamilyTree) -> dict[str, object]:
    return {
        "ingredient": tree.name(line.ingredient),
        _in("amount", line.unit): rounded(line.exact, 2),
        "shown": show_quantity(line.amount, line.unit),
        "held": line.held,
    }


def _in(what: str, unit: str) -> str:
    """The key of an amount in a unit: *amount_ml*, *need_g*, *have* for pieces."""
    return what if unit == "each" else f"{what}_{unit}"


def _shown(made: Batch, cautions: list[str], tree: FamilyTree) -> Iterator[str]:
    how = {"over_ice": "over ice", "frozen": "from the freezer"}.get(made.served, made.served)
    yield f"{made.spec.name}, {made.serves:.4g} serves of {made.serve_ml:.0f} ml, {how}"
    yield ""
    rows = [
        (show_quantity(line.amount, line.unit), tree.name(line.ingredient), _remark(line))
        for line in made.lines
    ]
    if made.water_ml:
        rows.append(
            (show_quantity(made.water_ml, "ml"), "Water", "in place of what ice would give")
        )
    yield table(("measure", "of", ""), rows, right="rll")
    yield ""
    strength = "" if made.abv_percent is None else f", {made.abv_percent:.1f} % vol"
    yield f"{made.total_ml:.0f} ml in all{strength}."
    for each in made.short:
        need, have = show_quantity(each.need, each.unit), show_quantity(each.have, each.unit)
        yield f"Short of {tree.in_sentence(each.ingredient)}: {need} needed, {have} there."
    yield from made.notes
    yield from (f"! {caution}" for caution in cautions)


def _remark(line: BatchLine) -> str:
    off = f"{100.0 * line.error:+.0f} % rounded" if abs(line.error) >= 0.01 else ""
    return "; ".join(each for each in (line.held, off) if each)
