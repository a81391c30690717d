"""`barkeep tonight`: what can be made, with what, and what is missing."""

from __future__ import annotations

from collections.abc import Iterator, Sequence

from barkeep.application.bar import Bar
from barkeep.cli.arguments import WITHIN, Arguments, argument, command, whole_number
from barkeep.cli.bar_source import in_bar
from barkeep.cli.output import Answer, counted, rounded, title_of
from barkeep.domain.ingredients.tree import FamilyTree
from barkeep.domain.phrases import as_sentence, capitalised
from barkeep.domain.pouring.assessment import LineAnswer
from barkeep.domain.pouring.garnishes import Garnish, garnishes_of, garnishes_told
from barkeep.domain.pouring.made_first import make_first
from barkeep.domain.pouring.verdicts import VERDICT_WORDS, Drink, tonight
from barkeep.domain.specs.called import called_in_sentence, named_by
from barkeep.domain.specs.shown_lines import named_with_kind, names_in_sentence
from barkeep.domain.specs.spec import Spec
from barkeep.errors import spoken_list

FOOTER = (
    "Levels are as last counted or poured. Closeness is a judgement, allergens are what an\n"
    "ingredient usually carries: read the label, ask your guests, and go by local rules first.\n"
    "Alcohol harms; measure it, offer water, and never serve anyone who drives."
)


@command(
    WITHIN,
    argument(
        "--serves", type=whole_number, default=1, metavar="N", help="how many of each (default: 1)"
    ),
)
@in_bar
def run(arguments: Arguments, bar: Bar) -> Answer:
    """Every spec's verdict, best first."""
    drinks = tonight(bar.snapshot, arguments.within, arguments.serves)
    tree, specs = bar.snapshot.knowledge.tree, bar.snapshot.all_specs
    return Answer(
        lambda: {"drinks": [_drink_json(drink, tree) for drink in drinks]},
        _shown(drinks, specs, tree),
    )


def _drink_json(drink: Drink, tree: FamilyTree) -> dict[str, object]:
    return {
        "spec": drink.spec.name,
        "verdict": drink.verdict,
        "serves": drink.serves,
        "missing": [
            *(tree.name(key) for key in drink.missing),
            *(each.text for each in drink.spec.unsettled),
        ],
        "make_first": make_first(drink.lines, tree) if drink.makeable else "",
        "warnings": list(drink.warnings),
        "lines": [_line_json(line, tree) for line in drink.lines],
        "garnishes": [_garnish_json(each, tree) for each in garnishes_of(drink, tree)],
    }


def _garnish_json(garnish: Garnish, tree: FamilyTree) -> dict[str, object]:
    """How a garnish stands; `from` is what it is cut or made from."""
    return {
        "garnish": garnish.name,
        "standing": garnish.standing,
        "from": [tree.name(each) for each in garnish.made_of],
        "words": garnish.words(tree),
        "makes_the_drink": bool(garnish.telling),
    }


def _line_json(answer: LineAnswer, tree: FamilyTree) -> dict[str, object]:
    return {
        "wanted": tree.name(answer.line.ingredient),
        "as_written": answer.line.text,
        "called": called_in_sentence(answer.line, tree),
        "bottle": title_of(answer.bottle),
        "ingredient": None if answer.ingredient is None else tree.name(answer.ingredient),
        "closeness": rounded(answer.closeness, 3),
        "ratio": rounded(answer.ratio, 3),
        "why": answer.why,
    }


def _shown(drinks: Sequence[Drink], specs: Sequence[Spec], tree: FamilyTree) -> Iterator[str]:
    for verdict, words in VERDICT_WORDS.items():
        group = [drink for drink in drinks if drink.verdict == verdict]
        yield f"{words.heading} ({len(group)})"
        for drink in group:
            yield from _drink_shown(drink, tree)
            yield from (f"      {each}" for each in garnishes_told(drink, specs, tree))
        yield ""
    yield FOOTER


def _drink_shown(drink: Drink, tree: FamilyTree) -> Iterator[str]:
    if not drink.makeable:
        names = (f"no {named_with_kind(line, tree)}" for line in drink.missing_lines)
        missing = [*names, *drink.questions]
        yield f"  {drink.spec.name}: {spoken_list(missing, 'and')}"
        if drink.verdict == "one_short":
            yield from (f"      {each.why}" for each in drink.lines if _keeps_it(each))
        return
    yield f"  {drink.spec.name}: {_serves(drink, tree)}{_garnish_shown(drink, tree)}"
    if first := make_first(drink.lines, tree):
        yield f"      {as_sentence(first)}"
    for answer in drink.lines:
        if answer.required and answer.closeness < 1.0 - 1e-9:
            yield f"      {answer.why} (closeness {answer.closeness:.2f})"
        elif answer.dasher:
            name = capitalised(names_in_sentence(answer.line, tree))
            yield f"      {name}: {answer.dasher[:1].lower()}{answer.dasher[1:]}"
    for warning in drink.warnings:
        yield f"      ! {warning}"


def _garnish_shown(drink: Drink, tree: FamilyTree) -> str:
    """The garnishes that are there or cut; what else is to be said of any stands below."""
    shown = [
        f"{each.name} {each.words(tree)}"
        for each in garnishes_of(drink, tree)
        if each.standing in ("there", "cut") and not each.telling
    ]
    return f"; garnish: {spoken_list(shown, 'and')}" if shown else ""


def _keeps_it(answer: LineAnswer) -> bool:
    return answer.required and not answer.met


def _serves(drink: Drink, tree: FamilyTree) -> str:
    if drink.serves is None:
        return "as many as you like"
    named = named_by(drink.spec.lines, tree)
    then = f", then out of {named.in_sentence(drink.runs_out)}" if drink.runs_out else ""
    return counted(drink.serves, "serve") + then
