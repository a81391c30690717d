"""The lines of a shoot's drinks as they will be poured, each with the bottle it comes from."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass

from barkeep.desktop.models.line_words import STAND_IN, THERE, LineState, duty
from barkeep.desktop.models.shoot_rows import ShootAnswer, chosen_in_words
from barkeep.domain.answers.menu import MenuLine, Order
from barkeep.domain.answers.shoot_plan import as_of
from barkeep.domain.answers.supply import supply_of
from barkeep.domain.ingredients import FamilyTree
from barkeep.domain.shoots import as_poured, spec_of
from barkeep.domain.shown_lines import names_in_sentence, shown_lines, worded
from barkeep.domain.specs import Line
from barkeep.errors import spoken_list

RUNS_OUT = LineState("Runs out", "verdict-short", "short")
LEFT_OUT = LineState("Not counted", "info", "muted")
"""Of a garnish or an optional line, and of a drink of which no serve is planned."""


@dataclass(frozen=True, slots=True)
class PouredLine:
    """A line as it will be poured: what goes in, where from, and whether there is enough.

    `place` is the line's in the spec, `name` what the spec asks for there, and
    `chosen` says whether it is poured otherwise than written.
    """

    place: int
    name: str
    text: str
    note: str
    chosen: bool
    state: LineState


def poured_lines(answer: ShootAnswer, number: int) -> tuple[PouredLine, ...]:
    """Every line of one drink of the running order; none where its spec was removed."""
    snapshot, drink = answer.snapshot, answer.shoot.drinks[number]
    written, spec = spec_of(drink, snapshot), as_poured(drink, snapshot)
    if written is None or spec is None:
        return ()
    tree, settings = snapshot.knowledge.tree, snapshot.settings
    shown = shown_lines(spec, tree, settings.shown_in, settings.units)
    said = dict(chosen_in_words(drink, snapshot))
    asked = _asked(answer, number)
    return tuple(
        PouredLine(
            place,
            tree.in_sentence(written.lines[place].ingredient),
            _with_duty(line, shown[place].text or _worded(line, shown[place].amount, tree)),
            _note(said.get(place, ""), _from(asked.get(place), answer), asked.get(place)),
            place in said,
            _state(asked.get(place), written.lines[place], tree),
        )
        for place, line in enumerate(spec.lines)
    )


def _asked(answer: ShootAnswer, number: int) -> dict[int, MenuLine]:
    """What the menu says of a drink's lines, by their places."""
    order = _order(answer, number)
    places = {id(line): place for place, line in enumerate(order.spec.lines)}
    return {places[id(each.line)]: each for each in answer.plan.menu.lines if each.order is order}


def _order(answer: ShootAnswer, number: int) -> Order:
    """The order of a drink: those whose spec was removed have none."""
    before = answer.shoot.drinks[:number]
    place = sum(spec_of(each, answer.snapshot) is not None for each in before)
    return answer.plan.menu.orders[place]


def _with_duty(line: Line, text: str) -> str:
    what_for = duty(line)
    return f"{text} ({what_for})" if what_for and what_for not in text.casefold() else text


def _worded(line: Line, amount: str, tree: FamilyTree) -> str:
    """A line that was chosen otherwise has no text of its own."""
    return worded(line, names_in_sentence(line, tree), amount)


def _note(chosen: str, source: str, asked: MenuLine | None) -> str:
    """What was chosen, where it comes from, and that it runs out, each a sentence of its own."""
    short = RUNS_OUT.word if asked is not None and asked.unmet else ""
    parts = (each for each in (chosen, source, short) if each)
    return ". ".join(each[:1].upper() + each[1:] for each in parts)


def _from(asked: MenuLine | None, answer: ShootAnswer) -> str:
    """Which bottles a line is poured from; empty where that is not known or needs no saying."""
    titles = [] if asked is None else list(dict.fromkeys(_titles(asked, answer)))
    if asked is None or not titles:
        return ""
    made = any(each.derivation.leaves != {each.derivation.offered} for each in asked.poured)
    return f"{'Made from' if made else 'From'} {spoken_list(titles, 'and')}"


def _titles(asked: MenuLine, answer: ShootAnswer) -> Iterator[str]:
    drawn = {each.bottle.id for each in answer.plan.menu.draws}
    stocks = supply_of(as_of(answer.shoot, answer.snapshot)).stocks
    least = asked.line.min_abv_percent or 0.0
    for key in sorted({key for each in asked.poured for key in each.derivation.leaves}):
        for stock in stocks.get(key, ()):
            bottle = stock.bottle
            if bottle is not None and bottle.id in drawn and stock.abv_percent >= least:
                yield bottle.product.title


def _state(asked: MenuLine | None, written: Line, tree: FamilyTree) -> LineState:
    if asked is None:
        return LEFT_OUT
    if asked.unmet:
        return RUNS_OUT
    poured = asked.line.ingredient
    return THERE if any(tree.is_a(poured, each) for each in written.wanted) else STAND_IN
