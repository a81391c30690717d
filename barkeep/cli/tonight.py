"""`barkeep tonight`: what can be made, with what, and what is missing."""

from __future__ import annotations

from collections.abc import Iterator, Sequence

from barkeep.application.bar import Bar
from barkeep.cli.arguments import WITHIN, Arguments, argument, command, whole_number
from barkeep.cli.bar_source import in_bar
from barkeep.cli.output import Answer, rounded, title_of
from barkeep.domain.ingredients.tree import FamilyTree
from barkeep.domain.phrases import capitalised
from barkeep.domain.pouring.assessment import LineAnswer
from barkeep.domain.pouring.serves_in_words import serves_in_words
from barkeep.domain.pouring.verdicts import VERDICT_WORDS, Drink, Following, tonight
from barkeep.domain.specs.called import called_in_sentence
from barkeep.domain.specs.shown_lines import named_with_kind, names_in_sentence
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
    tree = bar.snapshot.knowledge.tree
    return Answer(
        lambda: {"drinks": [_drink_json(drink, tree) for drink in drinks]}, _shown(drinks, tree)
    )


def _drink_json(drink: Drink, tree: FamilyTree) -> dict[str, object]:
    return {
        "spec": drink.spec.name,
        "verdict": drink.verdict,
        "serves": drink.serves,
        "then": [_following_json(each, tree) for each in drink.then],
        "serves_in_all": drink.serves_in_all,
        "missing": [
            *(tree.name(key) for key in drink.missing),
            *(each.text for each in drink.spec.unsettled),
        ],
        "warnings": list(drink.warnings),
        "lines": [_line_json(line, tree) for line in drink.lines],
    }


def _following_json(following: Following, tree: FamilyTree) -> dict[str, object]:
    """`bottle` and `ingredient` of what changes first; all that changes is in `lines`."""
    first = following.poured[0] if following.poured else None
    return {
        "bottle": None if first is None else title_of(first.bottle),
        "ingredient": None if first is None else tree.name(first.ingredient or ""),
        "serves": following.serves,
        "closeness": rounded(following.closeness, 3),
        "stand_in": following.is_stand_in,
        "lines": [_line_json(each, tree) for each in following.poured],
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


def _shown(drinks: Sequence[Drink], tree: FamilyTree) -> Iterator[str]:
    for verdict, words in VERDICT_WORDS.items():
        group = [drink for drink in drinks if drink.verdict == verdict]
        yield f"{words.heading} ({len(group)})"
        for drink in group:
            yield from _drink_shown(drink, tree)
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
    yield f"  {drink.spec.name}: {serves_in_words(drink, tree)}"
    for answer in drink.lines:
        if answer.required and answer.closeness < 1.0 - 1e-9:
            yield f"      {answer.why} (closeness {answer.closeness:.2f})"
        elif answer.dasher:
            name = capitalised(names_in_sentence(answer.line, tree))
            yield f"      {name}: {answer.dasher[:1].lower()}{answer.dasher[1:]}"
    for warning in drink.warnings:
        yield f"      ! {warning}"


def _keeps_it(answer: LineAnswer) -> bool:
    return answer.required and not answer.met
