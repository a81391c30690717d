"""`barkeep pour`: one drink out of its bottles, with stand-ins for the lines that are named."""

from __future__ import annotations

from collections.abc import Iterator

from barkeep.application.bar import Bar
from barkeep.application.finding import find_spec
from barkeep.application.pouring import refuse_lacking
from barkeep.cli.arguments import DRINK, Arguments, argument, command, flag, whole_number
from barkeep.cli.bar_source import in_bar
from barkeep.cli.output import Answer, rounded, table, wrapped
from barkeep.cli.spec_analyse import figures_json
from barkeep.cli.using import USE, chosen_for
from barkeep.domain.amounts.measures import show_quantity
from barkeep.domain.bar.snapshot import Snapshot
from barkeep.domain.cautions.caution_words import caution_in_words
from barkeep.domain.cautions.cautions import IN_GENERAL, of_tier
from barkeep.domain.drink.analysis import Analysis, analyse
from barkeep.domain.drink.comparison import RiffComparison, compare, figure_rows
from barkeep.domain.pouring.supply import Draw
from barkeep.domain.shoots.one_drink import PouredOut, poured_out
from barkeep.domain.specs.shown_lines import shown_lines
from barkeep.domain.specs.spec import Line
from barkeep.errors import spoken_list


@command(
    DRINK,
    USE,
    argument(
        "--serves", type=whole_number, default=1, metavar="N", help="how many of it (default: 1)"
    ),
    flag("--plan", "only show what it would take, and what it changes"),
)
@in_bar
def run(arguments: Arguments, bar: Bar) -> Answer:
    """Pour a drink: what was taken of each bottle, and what the stand-ins changed."""
    snapshot = bar.snapshot
    spec = find_spec(snapshot, arguments.name)
    chosen = chosen_for(spec, arguments.use, snapshot)
    found = refuse_lacking(poured_out(spec, snapshot, chosen, arguments.serves))
    changed = compare(spec, found.spec, snapshot)
    after = analyse(found.spec, snapshot)
    if not arguments.plan:
        found = bar.pouring.pour(spec, chosen, arguments.serves).value
    return Answer(
        lambda: _json(found, changed, after, snapshot, poured=not arguments.plan),
        _shown(found, changed, after, snapshot, poured=not arguments.plan),
    )


def _json(
    found: PouredOut,
    changed: RiffComparison,
    after: Analysis,
    snapshot: Snapshot,
    *,
    poured: bool,
) -> dict[str, object]:
    return {
        "spec": found.of.name,
        "serves": found.serves,
        "poured": poured,
        "lines": [_line_json(*each, snapshot) for each in _both(found)],
        "bottles": [
            {
                "bottle": each.bottle.id,
                "product": each.bottle.product.title,
                "amount": rounded(each.amount, 2),
                "unit": each.bottle.product.unit,
                "left": rounded(_left(each), 2),
            }
            for each in found.draws
        ],
        "before": figures_json(changed.before),
        "after": figures_json(changed.after),
        "changes": figures_json(changed.change),
        "allergens": [each.word for each in after.allergens],
        "cautions": [caution_in_words(each) for each in after.cautions],
    }


def _both(found: PouredOut) -> Iterator[tuple[Line, Line]]:
    """Each line as it is written, and as it is poured."""
    return zip(found.of.lines, found.spec.lines, strict=True)


def _line_json(asked: Line, poured: Line, snapshot: Snapshot) -> dict[str, object]:
    tree = snapshot.knowledge.tree
    return {
        "wanted": tree.name(asked.ingredient),
        "ingredient": tree.name(poured.ingredient),
        "amount": rounded(poured.quantity, 2),
        "unit": tree[poured.ingredient].unit,
        "stand_in": poured != asked,
    }


def _left(draw: Draw) -> float:
    return max(0.0, draw.bottle.level.amount - draw.amount)


def _shown(
    found: PouredOut,
    changed: RiffComparison,
    after: Analysis,
    snapshot: Snapshot,
    *,
    poured: bool,
) -> Iterator[str]:
    serves = "" if found.serves == 1 else f"{found.serves} "
    yield f"{'Poured' if poured else 'To pour'} {serves}{found.of.name}"
    settings = snapshot.settings
    for line in shown_lines(found.spec, snapshot.knowledge.tree, settings.shown_in, settings.units):
        yield f"  {line.text}"
    yield ""
    yield table(("bottle", "taken", "left"), list(map(_bottle_row, found.draws)), right="lrr")
    if changed.parent.lines != changed.riff.lines:
        yield ""
        rows = [(each.label, each.before, each.after, each.change) for each in figure_rows(changed)]
        yield table(("", "as written", "as poured", "change"), rows, right="lrrr")
    yield ""
    if after.allergens:
        yield f"Allergens: {spoken_list([each.word for each in after.allergens], 'and')}."
    for caution in of_tier(after.cautions, "now"):
        yield from wrapped(caution_in_words(caution), "  ! ")
    yield IN_GENERAL


def _bottle_row(draw: Draw) -> tuple[str, str, str]:
    unit = draw.bottle.product.unit
    title, left = draw.bottle.product.title, _left(draw)
    return title, show_quantity(draw.amount, unit), show_quantity(left, unit)
