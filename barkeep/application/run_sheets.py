"""A shoot made ready to be printed and published: its run sheet, and the text of its episode."""

from __future__ import annotations

from dataclasses import dataclass

from barkeep.application.publishing import cautions_of_any, drink_facts
from barkeep.documents.cards import CardContent, card_content
from barkeep.documents.episodes import episode_markdown, episode_text
from barkeep.documents.run_sheet import Drawn, Outlook, RunSheetContent, run_sheet_content
from barkeep.domain.answers.mise_en_place import mise_en_place
from barkeep.domain.answers.shoot_plan import as_of, plan, shortfall
from barkeep.domain.answers.shopping import shopping_for
from barkeep.domain.answers.shopping_words import name_in_words, packages_in_words
from barkeep.domain.shoots import (
    Shoot,
    ShootDrink,
    as_poured,
    orders_of,
    without_spec,
)
from barkeep.domain.snapshot import Snapshot
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
    poured = as_poured(drink, snapshot)
    if poured is None:
        return None
    facts = drink_facts(poured, snapshot, general=False)
    return card_content(poured, snapshot.knowledge.tree, snapshot.settings, facts)
