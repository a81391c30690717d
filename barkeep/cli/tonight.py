"""`barkeep tonight`: what can be made, with what, and what is missing."""

from __future__ import annotations

from collections.abc import Callable, Iterable, Iterator, Sequence
from functools import partial

from barkeep.cli.arguments import WITHIN, Arguments, argument, command, flag, whole_number
from barkeep.cli.on_paper import ON_PAPER, of_snapshot
from barkeep.cli.output import IN_FULL, Answer, rounded, title_of, wrapped
from barkeep.cli.query_help import query_help
from barkeep.domain.bar.snapshot import Snapshot
from barkeep.domain.cautions.caution_words import caution_in_words, cautions_json
from barkeep.domain.cautions.cautions import IN_GENERAL, Caution, cautions_of_any_drink
from barkeep.domain.drink.at_the_bar import WHOSE, Wanted, Whose, wanted_tonight
from barkeep.domain.ingredients.derivations import EXACT
from barkeep.domain.ingredients.tree import FamilyTree
from barkeep.domain.phrases import as_sentence, begun_small, capitalised
from barkeep.domain.pouring.assessment import LineAnswer
from barkeep.domain.pouring.evening import evening_asked_once
from barkeep.domain.pouring.garnishes import (
    Garnish,
    garnishes_missing,
    garnishes_of,
    garnishes_told,
    what_it_is_then,
)
from barkeep.domain.pouring.made_first import make_first
from barkeep.domain.pouring.serves_in_words import serves_in_words
from barkeep.domain.pouring.verdict import VERDICT_WORDS, how_many
from barkeep.domain.pouring.verdicts import Drink, Following
from barkeep.domain.specs.called import called_in_sentence
from barkeep.domain.specs.shown_lines import named_with_kind, names_in_sentence
from barkeep.domain.specs.spec import Spec
from barkeep.errors import spoken_list

LABELS = "Allergens are what an ingredient usually carries: read the label and ask your guests."
WATER = "Measure what you pour, offer water, and never serve anyone who drives."
WIDTH = 98


@command(
    argument("query", metavar="QUERY", nargs="*", help="which drinks (default: every one)"),
    WITHIN,
    argument(
        "--serves", type=whole_number, default=1, metavar="N", help="how many of each (default: 1)"
    ),
    flag("--all", "also what cannot be made, and why"),
    flag("--full", "every caution in full, with its source, and why each stand-in is one"),
    *ON_PAPER,
    epilog=query_help("tonight"),
)
@of_snapshot
def run(arguments: Arguments, snapshot: Snapshot) -> Answer:
    """What can be made, the owner's own and the next shoot's first, or what of it a query finds.

    JSON has every drink that is found, best verdict first, whether it can be made or not.
    """
    evening = evening_asked_once(snapshot, arguments.within, arguments.serves)
    found = wanted_tonight(evening, " ".join(arguments.query))
    tree = snapshot.knowledge.tree
    return Answer(
        lambda: {"drinks": [_wanted_json(each, tree) for each in _best_first(found)]},
        _shown(found, snapshot, in_full=arguments.full, also_short=arguments.all),
    )


def _best_first(found: Iterable[Wanted]) -> list[Wanted]:
    return sorted(found, key=lambda each: each.placed.place)


def _wanted_json(wanted: Wanted, tree: FamilyTree) -> dict[str, object]:
    drink = wanted.drink
    return {
        **_drink_json(drink, tree),
        "own": not drink.spec.classic,
        "next_shoot": wanted.whose == "shoot",
        "made": drink.spec.technique,
        "tags": list(drink.spec.tags),
        "allergens": [each.word for each in drink.minded.allergens],
        "cautions": cautions_json(drink.minded.all_cautions),
    }


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


def _shown(
    found: Sequence[Wanted], snapshot: Snapshot, *, in_full: bool, also_short: bool
) -> Iterator[str]:
    """What can be made, by whose it is; then what cannot, where that is asked for."""
    tree = snapshot.knowledge.tree
    poured = [each.drink for each in found if each.placed.makeable]
    yield _summed_up(found, also_short=also_short)
    said = partial(_drink_in_full, specs=snapshot.all_specs) if in_full else _one_line
    for whose in WHOSE:
        yield from _group(whose, [each for each in found if each.whose == whose], tree, said)
    if also_short:
        yield from _short(found, tree, snapshot.all_specs)
    yield from _every_caution(poured) if in_full else _remarks(poured, tree)
    yield ""
    yield LABELS
    yield IN_GENERAL
    yield WATER if in_full else IN_FULL


def _group(
    whose: Whose,
    wanted: Sequence[Wanted],
    tree: FamilyTree,
    said: Callable[[Drink, FamilyTree], Iterator[str]],
) -> Iterator[str]:
    """The heading of one owner's drinks, and what is `said` of each that can be made.

    Of the next shoot it is said which cannot: whoever films soon has to know.
    """
    poured = [each.drink for each in wanted if each.placed.makeable]
    short = [each.placed.spec.name for each in wanted if not each.placed.makeable]
    missed = short if whose == "shoot" else []
    if poured or missed:
        yield ""
        yield f"{WHOSE[whose]} ({len(poured)})"
    for drink in poured:
        yield from said(drink, tree)
    if missed:
        yield from wrapped(f"Not yet: {'; '.join(missed)}. --all says why.", "  ", WIDTH)


def _summed_up(found: Sequence[Wanted], *, also_short: bool) -> str:
    if not found:
        return "No drink is found by that."
    ready, stand_in, short = how_many(each.placed.verdict for each in found)
    said = [f"{ready} ready"] if ready else []
    said += [f"{stand_in} with stand-ins"] if stand_in else []
    said += [f"{short} that cannot be made"] if short else []
    hint = "; --all shows them" if short and not also_short else ""
    return f"{', '.join(said)}{hint}."


def _one_line(drink: Drink, tree: FamilyTree) -> Iterator[str]:
    instead = ", ".join(_instead(answer, tree) for answer in drink.lines if _is_stand_in(answer))
    first = make_first(drink.lines, tree)
    garnish = garnishes_missing(drink, tree)
    parts = (serves_in_words(drink, tree), instead, first, garnish, drink.minded.in_brief)
    mark = " *" if _has_remark(drink) else ""
    yield f"  {drink.spec.name}: {' · '.join(filter(None, parts))}{mark}"


def _instead(answer: LineAnswer, tree: FamilyTree) -> str:
    offered, wanted = (
        tree.in_sentence(answer.ingredient or ""),
        names_in_sentence(answer.line, tree),
    )
    made = " made here" if answer.bottle is None else ""
    instead = "" if offered == wanted else f" for {wanted}"
    return f"{offered}{made}{instead} ({answer.closeness:.2f})"


def _is_stand_in(answer: LineAnswer) -> bool:
    return answer.required and answer.met and answer.closeness < EXACT


def _has_remark(drink: Drink) -> bool:
    return bool(drink.notices) or any(each.dasher for each in drink.lines)


def _remarks(drinks: Sequence[Drink], tree: FamilyTree) -> Iterator[str]:
    """What is to be known of the bottles, each once with the drinks it is said of."""
    said: dict[str, list[str]] = {}
    for drink in drinks:
        dashes = (_dashes(each, tree) for each in drink.lines if each.dasher)
        for remark in dict.fromkeys((*drink.notices, *dashes)):
            said.setdefault(remark, []).append(drink.spec.name)
    if said:
        yield ""
        yield "* To know of the bottles"
    for remark, names in said.items():
        yield from wrapped(f"{remark} {'; '.join(names)}.", "  ! ", WIDTH)


def _drink_in_full(drink: Drink, tree: FamilyTree, specs: Sequence[Spec]) -> Iterator[str]:
    yield f"  {drink.spec.name}: {serves_in_words(drink, tree)}{_garnish_shown(drink, tree)}"
    if first := make_first(drink.lines, tree):
        yield f"      {as_sentence(first)}"
    yield from (f"      {each}" for each in garnishes_told(drink, specs, tree))
    for answer in drink.lines:
        if _is_stand_in(answer):
            yield f"      {answer.why} (closeness {answer.closeness:.2f})"
        elif answer.dasher:
            yield f"      {_dashes(answer, tree)}"
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


def _every_caution(drinks: Iterable[Drink]) -> Iterator[str]:
    """Every caution of these drinks with its source and its drinks, then the general ones."""
    of: dict[Caution, list[str]] = {}
    for drink in drinks:
        for caution in drink.minded.all_cautions:
            of.setdefault(caution, []).append(drink.spec.name)
    if of:
        yield from ("", "Cautions")
    for caution, names in of.items():
        yield from wrapped(f"{caution_in_words(caution)} {'; '.join(names)}.", "  ! ", WIDTH)
    yield from ("", "Before anyone drinks")
    for caution in cautions_of_any_drink():
        yield from wrapped(caution_in_words(caution), "  - ", WIDTH)


def _short(found: Sequence[Wanted], tree: FamilyTree, specs: Sequence[Spec]) -> Iterator[str]:
    """What cannot be made, and what is missing."""
    for verdict, words in VERDICT_WORDS.items():
        group = [each.drink for each in found if each.placed.verdict == verdict]
        if verdict in ("ready", "stand_in") or not group:
            continue
        yield ""
        yield f"{words.heading} ({len(group)})"
        for drink in group:
            yield from _drink_short(drink, tree, specs)


def _drink_short(drink: Drink, tree: FamilyTree, specs: Sequence[Spec]) -> Iterator[str]:
    names = (f"no {named_with_kind(line, tree)}" for line in drink.missing_lines)
    yield f"  {drink.spec.name}: {spoken_list([*names, *drink.questions], 'and')}"
    if drink.verdict == "one_short":
        yield from (f"      {each.why}" for each in drink.lines if _keeps_it(each))
        yield from (f"      {each}" for each in what_it_is_then(drink, specs, tree))


def _dashes(answer: LineAnswer, tree: FamilyTree) -> str:
    name = capitalised(names_in_sentence(answer.line, tree))
    return f"{name}: {begun_small(answer.dasher)}"


def _keeps_it(answer: LineAnswer) -> bool:
    return answer.required and not answer.met
