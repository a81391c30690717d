"""`barkeep spec analyse`: what a drink comes to in the glass, and how surely."""

from __future__ import annotations

import argparse
import textwrap
from collections.abc import Iterator
from typing import get_args

from barkeep.application.finding import find_spec
from barkeep.cli.arguments import Arguments
from barkeep.cli.bar_source import opened_bar
from barkeep.cli.output import print_json, rounded
from barkeep.domain.drink.analysis import Analysis, Frozen, analyse
from barkeep.domain.drink.words import about_ranges, caution_in_words, facts, place_in_words
from barkeep.domain.ingredients.tree import FamilyTree
from barkeep.domain.ingredients.uses import Technique

WIDTH, LABEL = 92, 15

METHODS = tuple(each for each in get_args(Technique) if each != "unknown")


def configure(parser: argparse.ArgumentParser) -> None:
    """Its arguments."""
    parser.add_argument("name", metavar="NAME", help="the drink's name")
    parser.add_argument(
        "--method",
        choices=METHODS,
        help="how it is made (default: as the words of its method say)",
    )
    parser.set_defaults(run=run)


def run(arguments: Arguments) -> int:
    """Print an analysis; with `--json` under stable keys."""
    with opened_bar(arguments) as bar:
        snapshot = bar.snapshot
    analysis = analyse(find_spec(snapshot, arguments.name), snapshot, arguments.method)
    if arguments.json:
        print_json(_analysis_json(analysis))
    else:
        print("\n".join(_shown(analysis, snapshot.knowledge.tree)))
    return 0


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
    }


def _freezing_point_c(frozen: Frozen | None) -> float | None:
    """Where it freezes; a mere bound is no figure."""
    return None if frozen is None or frozen.is_bound else frozen.point_c


def _shown(analysis: Analysis, tree: FamilyTree) -> Iterator[str]:
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
    if analysis.cautions:
        yield "Cautions"
        for caution in analysis.cautions:
            yield from _wrapped(caution_in_words(caution), "! ")
    yield "Uncertain"
    for sentence in analysis.uncertain:
        yield from _wrapped(sentence, "- ")
    yield ""
    if analysis.general_cautions:
        yield "Before anyone drinks"
        for caution in analysis.general_cautions:
            yield from _wrapped(caution.text, "- ")
        yield ""
    yield "Figures are information, not advice: health authorities and local rules come first."


def _wrapped(sentence: str, mark: str) -> list[str]:
    return textwrap.wrap(
        sentence,
        WIDTH,
        initial_indent=f"  {mark}",
        subsequent_indent=" " * (2 + len(mark)),
        break_on_hyphens=False,  # the number of a law is read in one piece
    )
