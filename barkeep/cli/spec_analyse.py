"""`barkeep spec analyse`, `riff` and `compare`: what a drink comes to, and a new version of it."""

from __future__ import annotations

import textwrap
from collections.abc import Iterator, Mapping, Sequence
from typing import get_args

from barkeep.application.bar import Bar
from barkeep.application.finding import find_spec
from barkeep.cli.arguments import DRINK, Arguments, argument, command, flag
from barkeep.cli.bar_source import in_bar
from barkeep.cli.output import IN_FULL, Answer, rounded, table, wrapped
from barkeep.cli.spec import spec_json
from barkeep.cli.using import USE, chosen_for
from barkeep.domain.bar.snapshot import Snapshot
from barkeep.domain.cautions.caution_words import caution_in_words, cautions_json
from barkeep.domain.cautions.cautions import IN_GENERAL, of_tier
from barkeep.domain.drink.analysis import Analysis, Frozen, analyse
from barkeep.domain.drink.comparison import DrinkFigures, RiffComparison, compare, figure_rows
from barkeep.domain.drink.kin import Figure, Kin, figures_of, kin_of
from barkeep.domain.drink.words import INFORMATION, about_ranges, facts, place_in_words
from barkeep.domain.ingredients.relations import Technique
from barkeep.domain.ingredients.tree import FamilyTree
from barkeep.domain.spec_text.text import write_spec
from barkeep.domain.specs.riffs import riff_on
from barkeep.domain.specs.spec import Line, Spec
from barkeep.domain.stand_ins.in_a_drink import riff_with
from barkeep.errors import InvalidField

WIDTH, LABEL = 92, 15


METHODS = tuple(each for each in get_args(Technique) if each != "unknown")


@command(
    DRINK,
    argument(
        "--method",
        choices=METHODS,
        help="how it is made (default: as the words of its method say)",
    ),
    flag("--full", "every caution in full, with its source"),
    flag("--family", "with all others of its family in the book, each with its figures"),
)
@in_bar
def figures(arguments: Arguments, bar: Bar) -> Answer:
    """An analysis, with stable keys in JSON."""
    tree = bar.snapshot.knowledge.tree
    found = analyse(find_spec(bar.snapshot, arguments.name), bar.snapshot, arguments.method)
    shown = _shown(found, tree, in_full=arguments.full)
    if not arguments.family:
        return Answer(lambda: _analysis_json(found), shown)
    kin = kin_of(found, bar.snapshot)
    return Answer(
        lambda: {**_analysis_json(found), "family": [_kin_json(each) for each in kin]},
        [*shown, "", *_kin_shown(found, kin)],
    )


def _kin_json(kin: Kin) -> dict[str, object]:
    return {
        "spec": kin.name,
        "own": kin.own,
        **{key: rounded(kin.figures.get(figure), 2) for figure, key in _KIN_KEYS.items()},
    }


_KIN_KEYS: Mapping[Figure, str] = {
    "strength": "abv_percent",
    "sugar": "sugar_g_per_l",
    "acid": "acid_g_per_l",
    "water": "water_percent",
}


def _kin_shown(analysis: Analysis, kin: Sequence[Kin]) -> Iterator[str]:
    """The drink and the others of its family, from the weakest to the strongest."""
    if not kin:
        yield "It is of no family whose usual ranges are known."
        return
    own = Kin(f"{analysis.spec.name} (this one)", True, figures_of(analysis))
    ordered = sorted((own, *kin), key=lambda each: each.figures.get("strength", 0.0))
    rows = [
        (each.name, *(_figure(each.figures.get(figure)) for figure in _KIN_KEYS))
        for each in ordered
    ]
    yield table(("drink", "% vol", "sugar g/l", "acid g/l", "water %"), rows, right="lrrrr")


def _figure(value: float | None) -> str:
    return "" if value is None else f"{value:.1f}"


def _analysis_json(analysis: Analysis) -> dict[str, object]:
    frozen, fit, style = analysis.frozen, analysis.fit, analysis.style
    return {
        "start_volume_ml": rounded(analysis.start_volume_ml, 2),
        "dilution": rounded(analysis.dilution.share, 4),
        "served_volume_ml": rounded(analysis.served_volume_ml, 2),
        "abv_percent": rounded(analysis.abv_percent, 2),
        "sugar_g_per_l": rounded(analysis.sugar_g_per_l, 2),
        "acid_g_per_l": rounded(analysis.acid_g_per_l, 2),
        "ethanol_g": rounded(analysis.ethanol_g, 2),
        "standard_drinks": rounded(analysis.standard_drinks, 2),
        "kcal": rounded(analysis.kcal, 1),
        "kj": rounded(analysis.kj, 1),
        "cost": rounded(analysis.cost.amount, 2),
        "allergens": [each.word for each in analysis.allergens],
        "cautions": [
            caution_in_words(each) for each in (*analysis.cautions, *analysis.general_cautions)
        ],
        "uncertain": list(analysis.uncertain),
        "sugar_to_acid": rounded(analysis.sugar_to_acid, 2),
        "country": analysis.country,
        "freezing_point_c": rounded(_freezing_point_c(frozen), 1),
        "style": None if style is None else style.name,
        "fit": None if fit is None else fit.why or "fits",
        "minded": cautions_json((*analysis.minded.all_cautions, *analysis.general_cautions)),
    }


def _freezing_point_c(frozen: Frozen | None) -> float | None:
    """Where it freezes; a mere bound is no figure."""
    return None if frozen is None or frozen.is_bound else frozen.point_c


def _shown(analysis: Analysis, tree: FamilyTree, *, in_full: bool) -> Iterator[str]:
    made = "" if analysis.technique == "unknown" else f", {analysis.technique}"
    yield f"{analysis.spec.name}{made}"
    yield ""
    for fact in facts(analysis, tree):
        said = f"{fact.value} ({fact.note})" if fact.note else fact.value
        yield from textwrap.wrap(
            said,
            WIDTH,
            initial_indent=f"{fact.label:{LABEL}}",
            subsequent_indent=" " * LABEL,
        )
    yield ""
    if analysis.style is not None:
        said = f"{place_in_words(analysis)} {about_ranges(analysis.style)}"
        yield from (*textwrap.wrap(said, WIDTH), "")
    yield from _minded(analysis, in_full)
    yield "Uncertain"
    for sentence in analysis.uncertain:
        yield from wrapped(sentence, "  - ")
    yield ""
    if not in_full:
        yield from _left_to_full(analysis)
    yield INFORMATION


def _left_to_full(analysis: Analysis) -> Iterator[str]:
    """The general cautions in one sentence, and how to read what was not said."""
    if analysis.general_cautions:
        yield from wrapped(IN_GENERAL, "")
    if analysis.general_cautions or any(each.tier != "now" for each in analysis.cautions):
        yield IN_FULL


def _minded(analysis: Analysis, in_full: bool) -> Iterator[str]:
    """What can hurt now; in full all the rest as well."""
    minded = analysis.minded
    shown = minded.all_cautions if in_full else of_tier(minded.all_cautions, "now")
    parts = [("Cautions", "  ! ", shown)]
    if in_full:
        parts.append(("Before anyone drinks", "  - ", analysis.general_cautions))
    for heading, mark, cautions in parts:
        if cautions:
            yield heading
        for caution in cautions:
            yield from wrapped(caution_in_words(caution), mark)


@command(
    argument("name", metavar="NAME", help="the drink it comes from"),
    argument("new_name", metavar="NEWNAME", help="what the riff is called"),
    USE,
    flag("--add", "add it to the bar as it is, instead of printing it"),
)
@in_bar
def riff(arguments: Arguments, bar: Bar) -> Answer:
    """A copy of a spec as a riff on it, with what is used for its lines, as text or added."""
    spec = find_spec(bar.snapshot, arguments.name)
    tree, units = bar.snapshot.knowledge.tree, bar.snapshot.settings.units
    name = " ".join(arguments.new_name.split())
    chosen = chosen_for(spec, arguments.use, bar.snapshot)
    made = riff_with(spec, chosen, name, bar.snapshot) if chosen else riff_on(spec, name)
    if arguments.add:
        (made,) = bar.specs.add([made]).value
    text = write_spec(made, tree, units)
    said = f"Added {made.name}, a riff of {spec.name}."
    return Answer(
        lambda: {"specs": [spec_json(made, tree)], "text": text, "is_added": arguments.add},
        said if arguments.add else text.removesuffix("\n"),
    )


@command(
    argument("name", metavar="NAME", help="the riff"),
    argument("other", metavar="OTHER", nargs="?", help="the spec before it (default: its parent)"),
)
@in_bar
def side_by_side(arguments: Arguments, bar: Bar) -> Answer:
    """Two specs side by side with what changes in the glass."""
    spec = find_spec(bar.snapshot, arguments.name)
    found = compare(_parent(spec, arguments.other, bar.snapshot), spec, bar.snapshot)
    return Answer(lambda: _json(found), _compared(found))


def _compared(found: RiffComparison) -> Iterator[str]:
    lines = [(_text(each.before), _text(each.after), each.change) for each in found.pairs]
    yield table((found.parent.name, found.riff.name, ""), lines)
    yield ""
    rows = [(each.label, each.before, each.after, each.change) for each in figure_rows(found)]
    yield table(("", found.parent.name, found.riff.name, "change"), rows, right="lrrr")
    yield from found.not_compared


def _parent(spec: Spec, other: str | None, snapshot: Snapshot) -> Spec:
    if other is not None:
        return find_spec(snapshot, other)
    if spec.riff_of is None:
        expected = "it is no riff; name the spec to set beside it as well"
        raise InvalidField("what to compare", spec.name, expected)
    return find_spec(snapshot, spec.riff_of)


def _json(found: RiffComparison) -> dict[str, object]:
    return {
        "parent": found.parent.name,
        "riff": found.riff.name,
        "lines": [
            {
                "before": each.before and each.before.text,
                "after": each.after and each.after.text,
                "change": each.change,
            }
            for each in found.pairs
        ],
        "changes": figures_json(found.change),
        "not_compared": list(found.not_compared),
    }


def figures_json(figures: DrinkFigures) -> dict[str, object]:
    """What a drink comes to, or by how much that changes; null where it cannot be said."""
    return {
        "abv_percent": rounded(figures.abv_percent, 2),
        "sugar_g_per_l": rounded(figures.sugar_g_per_l, 2),
        "acid_g_per_l": rounded(figures.acid_g_per_l, 2),
        "served_volume_ml": rounded(figures.served_volume_ml, 2),
        "cost": rounded(figures.cost, 2),
    }


def _text(line: Line | None) -> str:
    return "" if line is None else line.text
