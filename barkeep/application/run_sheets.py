"""A shoot made ready to be printed and published: its run sheet, and the text of its episode."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import dataclass, replace

from barkeep.application.publishing import cautions_of_any, drink_facts
from barkeep.documents.cards import CardContent, card_content
from barkeep.documents.episodes import episode_markdown, episode_text
from barkeep.documents.printed_lines import PrintedLine
from barkeep.documents.run_sheet import Drawn, Outlook, RunSheetContent, run_sheet_content
from barkeep.domain.answers.mise_en_place import mise_en_place
from barkeep.domain.answers.shoot_plan import as_of, plan, shortfall
from barkeep.domain.answers.shopping import shopping_for
from barkeep.domain.answers.shopping_words import name_in_words, packages_in_words
from barkeep.domain.shoots import (
    ChosenPour,
    Shoot,
    ShootDrink,
    as_poured,
    orders_of,
    spec_of,
    still_chosen,
    without_spec,
)
from barkeep.domain.snapshot import Snapshot
from barkeep.domain.specs import Line, Spec
from barkeep.errors import spoken_list


@dataclass(frozen=True, slots=True)
class PublishText:
    """The text of one episode, in two forms."""

    text: str
    markdown: str


def run_sheet_of(shoot: Shoot, snapshot: Snapshot) -> RunSheetContent:
    """The run sheet of a shoot, with what is to be bought for it while it lies ahead."""
    then = as_of(shoot, snapshot)
    cards = [_card(drink, then) for drink in shoot.drinks]
    orders = orders_of(shoot, then)
    return run_sheet_content(
        shoot,
        cards,
        mise_en_place(orders, then),
        _outlook(shoot, then),
        _to_buy(shoot, then),
        cautions_of_any([order.spec for order in orders], then),
    )


def publish_text_of(shoot: Shoot, snapshot: Snapshot) -> PublishText:
    """The text for all drinks of an episode, as they are poured in it."""
    found = [_card(drink, snapshot) for drink in shoot.drinks]
    cards = [card for card in found if card is not None]
    removed = without_spec(shoot, snapshot)
    general = cautions_of_any([each.spec for each in orders_of(shoot, snapshot)], snapshot)
    told = (shoot.theme, cards, removed, general)
    return PublishText(episode_text(*told), episode_markdown(*told))


def _outlook(shoot: Shoot, snapshot: Snapshot) -> Outlook:
    """What the bar can pour; of a logged shoot, what it did pour."""
    if shoot.log is not None:
        drawn = [
            Drawn(each.title, each.poured + each.spilled, each.unit) for each in shoot.log.bottles
        ]
        return Outlook(f"It was logged on {shoot.log.at:%Y-%m-%d}.", (), tuple(drawn))
    found = plan(shoot, snapshot)
    short = [shortfall(line, snapshot) for line in found.menu.lacking]
    drop = zip(found.menu.orders, found.menu.drop, strict=True)
    dropped = tuple(f"{count} of {order.spec.name}" for order, count in drop if count)
    if dropped:
        short.append(f"Without {spoken_list(dropped, 'and')}, the others can be poured.")
    drawn = [
        Drawn(each.bottle.product.title, each.amount, each.bottle.product.unit)
        for each in found.menu.draws
    ]
    return Outlook(found.verdict, tuple(short), tuple(drawn))


def _to_buy(shoot: Shoot, snapshot: Snapshot) -> tuple[str, ...]:
    if shoot.state in ("filmed", "logged"):
        return ()
    tree = snapshot.knowledge.tree
    found = shopping_for([shoot], snapshot, pars=False)
    return tuple(f"{name_in_words(each, tree)}: {packages_in_words(each)}" for each in found.items)


def _card(drink: ShootDrink, snapshot: Snapshot) -> CardContent | None:
    """A drink as it is poured, what replaces another saying so; None without its spec."""
    written, poured = spec_of(drink, snapshot), as_poured(drink, snapshot)
    if written is None or poured is None:
        return None
    facts = drink_facts(poured, snapshot, general=False)
    tree = snapshot.knowledge.tree
    card = card_content(
        _printed(written, poured, still_chosen(drink, written).chosen, snapshot),
        tree,
        snapshot.settings,
        facts,
    )
    anew = {
        tree.name(each.ingredient): tree.in_sentence(each.ingredient)
        for each in drink.chosen
        if each.ingredient in tree
    }
    return replace(card, lines=tuple(_in_sentence(each, anew) for each in card.lines))


def _in_sentence(line: PrintedLine, names: Mapping[str, str]) -> PrintedLine:
    """A line written anew names its ingredient as the others do, in small letters."""
    for name, small in names.items():
        if line.name.startswith(name):
            return replace(line, name=small + line.name.removeprefix(name))
    return line


def _printed(written: Spec, poured: Spec, chosen: Sequence[ChosenPour], snapshot: Snapshot) -> Spec:
    """The spec as poured, its lines written anew where they are poured otherwise."""
    ratios = {each.line: each.ratio for each in chosen}
    pairs = zip(written.lines, poured.lines, strict=True)
    lines = tuple(
        before
        if before.ingredient == now.ingredient and before.quantity == now.quantity
        else _line(before, now, ratios.get(number, 1.0), written.serves, snapshot)
        for number, (before, now) in enumerate(pairs)
    )
    return replace(poured, lines=lines)


def _line(before: Line, now: Line, ratio: float, serves: float, snapshot: Snapshot) -> Line:
    """A line in the words of what is poured, with what it replaces unless it is just a kind of it.

    Its unit stays the line's own where both are measured alike, and is the
    ingredient's own where they are not.
    """
    tree = snapshot.knowledge.tree
    amount, high, unit = before.amount, before.amount_high, before.unit
    if tree[now.ingredient].unit != tree[before.ingredient].unit and now.quantity is not None:
        amount, high, unit = now.quantity * serves, None, tree[now.ingredient].unit
    elif amount is not None:
        amount, high = amount * ratio, None if high is None else high * ratio
    instead = not any(tree.is_a(now.ingredient, key) for key in before.wanted)
    replaced = f"in place of {tree.in_sentence(before.ingredient)}" if instead else ""
    note = "; ".join(each for each in (before.note, replaced) if each)
    return replace(now, text="", amount=amount, amount_high=high, unit=unit, note=note)
