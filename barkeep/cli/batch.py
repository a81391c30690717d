"""`barkeep batch`: one serve made many."""

from __future__ import annotations

from collections.abc import Iterator
from typing import get_args

from barkeep.application.bar import Bar
from barkeep.application.finding import find_ingredient, find_spec
from barkeep.cli.arguments import DRINK, Arguments, argument, command, one_of
from barkeep.cli.bar_source import in_bar
from barkeep.cli.output import Answer, assumed_json, rounded, table
from barkeep.domain.amounts.amount import parse_amount, spaced
from barkeep.domain.amounts.measures import quantity_in, show_quantity
from barkeep.domain.amounts.rounding import down_to, rounded_down
from barkeep.domain.bar.snapshot import Snapshot
from barkeep.domain.bottles.levels import share_in
from barkeep.domain.cautions.caution_words import caution_in_words, cautions_in_brief
from barkeep.domain.ingredients.tree import FamilyTree
from barkeep.domain.making.available import Taken, all_there_is
from barkeep.domain.making.batch_measures import (
    BatchLine,
    ForServes,
    ForVessel,
    ForVolume,
    FromIngredient,
    Target,
    called,
    called_with_kind,
    kind_poured,
)
from barkeep.domain.making.batches import Batch, Served, batch
from barkeep.domain.making.by_rounds import Rounds
from barkeep.domain.making.portions import (
    TinRounds,
    in_bottles,
    past_inputs,
    shipped_vessel_kinds,
    tin_rounds,
    whole_bottles,
)
from barkeep.domain.phrases import capitalised
from barkeep.domain.specs.glasses import Glass, glass_named
from barkeep.domain.specs.spec import Line
from barkeep.errors import AmountError, InvalidField

FROM = "write the ingredient, = and how much of it there is, such as “gin=700 ml”"


@command(
    DRINK,
    one_of(
        argument("--serves", metavar="N", help="so many serves"),
        argument("--volume", metavar="V", help="so much in all, water added, such as 3 l"),
        argument(
            "--vessel", metavar="V", help="as much as a vessel of this size takes, such as 4 l"
        ),
        argument(
            "--from",
            dest="pivot",
            metavar="INGREDIENT=V",
            help="all there is of one ingredient, such as gin=700 ml or “lemon juice=all”; "
            "the rest follows",
        ),
        required=True,
    ),
    argument(
        "--room",
        metavar="SHARE",
        help="what to leave free in the vessel for ice or foam (default: 10 %%, or what is usual "
        "in a bowl, dispenser, bottle or slow cooker)",
    ),
    argument(
        "--served",
        choices=get_args(Served),
        help="cold (chilled, water added), over_ice, hot, frozen (from the freezer); "
        "default: hot for a hot drink, over_ice for what is built on it, else cold",
    ),
    argument(
        "--tin", metavar="NAME", help="plan it in rounds on ice through a tin, such as “large tin”"
    ),
)
@in_bar
def run(arguments: Arguments, bar: Bar) -> Answer:
    """A batch, with stable keys in JSON."""
    snapshot = bar.snapshot
    spec = find_spec(snapshot, arguments.name)
    tin = None if arguments.tin is None else _tin(arguments.tin)
    made = batch(spec, snapshot, _target(arguments, snapshot), arguments.served, tin=tin)
    cautions = [caution_in_words(each) for each in made.cautions]
    rounds = None if tin is None else tin_rounds(made, tin)
    told = (made, cautions, rounds, snapshot)
    return Answer(lambda: _batch_json(*told), _shown(*told))


def _tin(name: str) -> Glass:
    glass = glass_named(name)
    if glass is None or glass.kind not in ("tin", "mixing_glass"):
        raise InvalidField("tin", name, "name a tin or a mixing glass, such as “large tin”")
    return glass


def _target(arguments: Arguments, snapshot: Snapshot) -> Target:
    if arguments.room is not None and arguments.vessel is None:
        expected = "it is left free in a vessel; name that with --vessel, such as --vessel “4 l”"
        raise InvalidField("room", arguments.room, expected)
    if arguments.serves is not None:
        return ForServes(_number(arguments.serves))
    if arguments.volume is not None:
        return ForVolume(quantity_in(arguments.volume, "ml", snapshot.settings.units))
    if arguments.vessel is not None:
        return _in_vessel(arguments, snapshot)
    name, equals, amount = arguments.pivot.rpartition("=")
    if not equals or not name.strip():
        raise AmountError(arguments.pivot, FROM)
    key = find_ingredient(snapshot.knowledge.tree, name.strip(), owned=snapshot.owned)
    unit = snapshot.knowledge.tree[key].unit
    if amount.strip().casefold() == "all":
        return FromIngredient(key, _all_of(key, snapshot))
    return FromIngredient(key, quantity_in(amount, unit, snapshot.settings.units))


def _all_of(key: str, snapshot: Snapshot) -> float:
    there = all_there_is(key, snapshot)
    if not there > 0.0:
        name = snapshot.knowledge.tree.in_sentence(key)
        raise InvalidField("from", f"{name}=all", f"there is no {name} to make it from")
    return there


def _in_vessel(arguments: Arguments, snapshot: Snapshot) -> ForVessel:
    """The vessel, with the room that is usual in its kind where none is said."""
    text = arguments.vessel.strip()
    kinds = shipped_vessel_kinds().values()
    kind = next((each for each in kinds if text.casefold().startswith(each.name)), None)
    size = text[len(kind.name) :] if kind else text
    if kind and not size.strip():
        volume_ml = kind.size_ml
    else:
        volume_ml = quantity_in(size, "ml", snapshot.settings.units)
    if arguments.room is not None:
        return ForVessel(volume_ml, _room(arguments.room))
    return kind.target(volume_ml) if kind else ForVessel(volume_ml)


def _number(text: str) -> float:
    amount = parse_amount(text)
    if amount.unit != "each" or amount.high is not None:
        raise AmountError(text, "write one number, such as 12")
    return amount.value


def _room(text: str) -> float:
    share = share_in(spaced(text.strip()), "ml")
    if share is None:
        raise InvalidField("room", text, "write a share such as 10 % or 0.1")
    return share


def _batch_json(
    made: Batch, cautions: list[str], rounds: TinRounds | None, snapshot: Snapshot
) -> dict[str, object]:
    tree = snapshot.knowledge.tree
    return {
        "spec": made.spec.name,
        "served": made.served,
        "serves": down_to(made.serves, 2),
        "lines": [_line_json(line, tree) for line in made.lines],
        "water_ml": rounded(made.water_ml, 1),
        "total_ml": down_to(made.total_ml, 1),
        "abv_percent": rounded(made.abv_percent, 2),
        "short": [
            {
                "ingredient": tree.name(each.ingredient),
                "as_written": each.line.as_written,
                _in("need", each.unit): rounded(each.need, 1),
                _in("have", each.unit): down_to(each.have, 1),
            }
            for each in made.short
        ],
        "cautions": cautions,
        "notes": list(made.notes),
        "past": list(past_inputs(made, snapshot)),
        "whole_bottles": [
            {
                "ingredient": tree.name(each.ingredient),
                "count": each.count,
                "size": each.size,
                "error_percent": rounded(100.0 * each.error, 1),
            }
            for each in whole_bottles(made, snapshot).values()
        ],
        "rounds": None
        if rounds is None
        else {
            "tin": rounds.tin.name,
            "count": rounds.count,
            "each_ml": rounded(rounds.each_ml, 1),
        },
        "left_out": [
            {
                "ingredient": tree.name(each.line.ingredient)
                if isinstance(each.line, Line)
                else None,
                "as_written": each.line.text,
                "why": each.why,
            }
            for each in made.left_out
        ],
        "assumed": assumed_json(made.assumed),
        "serves_shown": made.serves_in_words,
        "made_first": [_made_json(each, tree) for each in made.made_first],
        "by_rounds": None if made.rounds is None else _rounds_json(made.rounds),
        "method": made.spec.method,
    }


def _made_json(taken: Taken, tree: FamilyTree) -> dict[str, object]:
    """What is made before the batch is mixed, and of what."""
    return {
        "ingredient": tree.name(taken.ingredient),
        _in("amount", tree[taken.ingredient].unit): rounded(taken.made, 1),
        "from": [
            {"ingredient": tree.name(key), _in("amount", tree[key].unit): rounded(amount, 2)}
            for key, amount in taken.inputs.items()
        ],
    }


def _rounds_json(rounds: Rounds) -> dict[str, object]:
    """The rounds a batch is worked in as it is served."""
    return {
        "worked": rounds.worked,
        "count": rounds.count,
        "serves_each": rounded(rounds.serves_each, 2),
        "base_ml": rounded(rounds.base_ml, 1),
        "apart": list(rounds.apart),
        "ice_g": rounded(rounds.ice_g, 0),
    }


def _line_json(line: BatchLine, tree: FamilyTree) -> dict[str, object]:
    return {
        "ingredient": tree.name(line.ingredient),
        "as_written": line.as_written,
        "called": called(line, tree),
        _in("amount", line.unit): rounded(line.exact, 2)
        if line.most is None
        else down_to(line.exact, 2),
        "shown": show_quantity(line.amount, line.unit),
        "held": line.held,
    }


def _named(line: BatchLine, tree: FamilyTree) -> str:
    """What the spec calls it, with the kind to pour where that is another."""
    kind = kind_poured(line, tree)
    return f"{called(line, tree)} ({kind})" if kind else called(line, tree)


def _in(what: str, unit: str) -> str:
    """The key of an amount in a unit: *amount_ml*, *need_g*, *have* for pieces."""
    return what if unit == "each" else f"{what}_{unit}"


def _shown(
    made: Batch, cautions: list[str], rounds: TinRounds | None, snapshot: Snapshot
) -> Iterator[str]:
    tree, bottles = snapshot.knowledge.tree, whole_bottles(made, snapshot)
    how = {"over_ice": "over ice", "frozen": "from the freezer"}.get(made.served, made.served)
    yield f"{made.spec.name}, {made.serves_in_words} of {made.serve_ml:.0f} ml, {how}"
    yield ""
    rows = [
        (show_quantity(line.amount, line.unit), _named(line, tree), line.remark)
        for line in made.lines
    ]
    if made.water_ml:
        rows.append(
            (show_quantity(made.water_ml, "ml"), "Water", "in place of what ice would give")
        )
    yield table(("measure", "of", ""), rows, right="rll")
    yield ""
    strength = "" if made.abv_percent is None else f", {made.abv_percent:.1f} % vol"
    yield f"{made.total_in_words}{strength}."
    for each in made.short:
        need = show_quantity(each.need, each.unit)
        have = show_quantity(rounded_down(each.have, each.unit), each.unit)
        also = ", counting what is made first" if each.counts_made else ""
        yield f"Short of {called_with_kind(each.line, tree)}: {need} needed, {have} there{also}."
    names = {each.ingredient: called(each, tree) for each in made.lines}
    for whole in bottles.values():
        name = capitalised(names[whole.ingredient])
        yield f"{name} in whole bottles: {in_bottles(whole, snapshot)}."
    yield from past_inputs(made, snapshot)
    if rounds is not None:
        yield rounds.sentence
    yield from made.notes
    yield from (f"! {caution}" for caution in cautions_in_brief(made.cautions))
    yield f'Every caution: barkeep spec analyse "{made.spec.name}" --full'
