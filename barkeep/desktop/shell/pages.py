"""The pages of the window, in their order; each is made on its first visit."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass

from barkeep.desktop.screens.context import ScreenContext
from barkeep.desktop.screens.screen import Screen


@dataclass(frozen=True, slots=True)
class Page:
    """One stop of the navigation. `make` imports what the page needs and builds it."""

    key: str
    title: str
    picture: str
    make: Callable[[ScreenContext], Screen]


def _tonight(context: ScreenContext) -> Screen:
    from barkeep.desktop.drink.tonight import TonightScreen

    return TonightScreen(context)


def _bottles(context: ScreenContext) -> Screen:
    from barkeep.desktop.bottles.page import BottlesScreen

    return BottlesScreen(context)


def _specs(context: ScreenContext) -> Screen:
    from barkeep.desktop.specs.page import SpecsScreen

    return SpecsScreen(context)


def _shoots(context: ScreenContext) -> Screen:
    from barkeep.desktop.shoots.page import ShootsScreen

    return ShootsScreen(context)


def _next_bottle(context: ScreenContext) -> Screen:
    from barkeep.desktop.buying.next_bottle import NextBottleScreen

    return NextBottleScreen(context)


def _stand_ins(context: ScreenContext) -> Screen:
    from barkeep.desktop.stand_ins.page import StandInsScreen

    return StandInsScreen(context)


PAGES = (
    Page("tonight", "Tonight", "tonight", _tonight),
    Page("bottles", "Bottles", "bottles", _bottles),
    Page("specs", "Specs", "specs", _specs),
    Page("shoots", "Shoots", "shoots", _shoots),
    Page("next-bottle", "Next bottle", "next-bottle", _next_bottle),
    Page("stand-ins", "Stand-ins", "stand-ins", _stand_ins),
)
