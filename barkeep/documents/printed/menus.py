"""What a menu says: a title, each drink with what is in it, and what every guest should know."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

from barkeep.documents.printed.cards import CardContent
from barkeep.domain.phrases import capitalised
from barkeep.translation import tr, tr_noop

UNSAID = frozenset({"ice", "water"})
"""What goes into a drink and is not worth a word on a menu."""
ASK = tr_noop("Recipes and bottles change: ask about allergens before you order.")


@dataclass(frozen=True, slots=True)
class MenuDrink:
    """One drink: `description` is what is in it; `marks` its strength and allergens if wanted."""

    name: str
    description: str
    marks: tuple[str, ...] = ()


@dataclass(frozen=True, slots=True)
class MenuContent:
    """A whole menu; `small_print` are sentences for its end."""

    title: str
    drinks: tuple[MenuDrink, ...]
    small_print: tuple[str, ...] = ()


def menu_content(
    title: str,
    cards: Sequence[CardContent],
    *,
    strength: bool = True,
    allergens: bool = True,
    cautions: Sequence[str] = (),
) -> MenuContent:
    """A menu of these drinks in their order."""
    drinks = tuple(
        MenuDrink(card.name, _description(card), tuple(_marks(card, strength, allergens)))
        for card in cards
    )
    return MenuContent(title, drinks, (tr(ASK), *cautions) if drinks else ())


def _description(card: CardContent) -> str:
    names = [line.name for line in card.lines if line.name.casefold() not in UNSAID]
    words = ", ".join(names)
    return capitalised(words)


def _marks(card: CardContent, strength: bool, allergens: bool) -> list[str]:
    said = [card.strength] * strength + [card.allergens] * allergens
    return [each for each in said if each]
