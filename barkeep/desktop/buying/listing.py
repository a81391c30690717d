"""The parts of the page Buying, and what they share: putting things on the shopping list."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace

from PySide6.QtGui import QKeySequence

from barkeep.desktop.screens.parts import OfParts
from barkeep.desktop.widgets.detail_bar import DetailActs
from barkeep.desktop.widgets.offered import Offered
from barkeep.domain.bar.changes import Changes, Part
from barkeep.domain.bar.snapshot import Settings
from barkeep.domain.bar.to_buy import ToBuy, with_to_buy
from barkeep.domain.buying.shopping import things_in_words
from barkeep.translation import tr, tr_noop

BUYING = (
    ("next-bottle", tr_noop("Next bottle"), tr_noop("What each single purchase would turn ready")),
    (
        "buying-plan",
        tr_noop("A plan"),
        tr_noop("The best set of so many bottles, or for so much money"),
    ),
    ("carried", tr_noop("What each carries"), tr_noop("What would be lost without each bottle")),
    ("pairs", tr_noop("Pairs"), tr_noop("Purchases that turn much together and little apart")),
)
"""The parts of the page: key, word, explanation."""
ADD = tr_noop("&Add to the shopping list")
ADD_KEYS = "Ctrl+Shift+L"


class ListingScreen(OfParts):
    """A part of the page from which things go on the shopping list."""

    parts = BUYING
    _settings: Settings | None = None
    """As they were when something changed last."""

    def notice(self, changes: Changes) -> None:
        """What is put on the list changes no answer: none is asked for again."""
        before, now = self._settings, self.context.bar.snapshot.settings
        self._settings = now
        others = None if before is None else replace(before, to_buy=now.to_buy)
        if changes != {Part.SETTINGS} or others != now:
            super().notice(changes)

    def listing_acts(self, *others: Offered) -> DetailActs:
        """What is done with a row: it goes on the shopping list; and what else there is."""
        keys = QKeySequence(ADD_KEYS)  # its words are said in more than one language
        add = next(each for each in self.bar_actions if each.shortcut() == keys)
        return DetailActs((self.offered(add), *others))

    def put_on_list(self, things: Sequence[ToBuy]) -> None:
        """Put these on the list, and say so; what is on it already is not bought twice."""
        if not things:
            return
        tree = self.context.bar.snapshot.knowledge.tree
        there = self.context.bar.snapshot.settings.to_buy
        new = [
            each for each in things if not any(each.ingredient == one.ingredient for one in there)
        ]
        self._settings = self.context.bar.snapshot.settings
        if len(things) == 1:
            said = _one_listed(tree.name(things[0].ingredient), is_new=bool(new))
        else:
            said = _many_listed(len(new), len(things) - len(new))
        if with_to_buy(there, things) == there:
            self.context.toast.say(said)  # nothing was done, so there is nothing to undo
            return
        self.do(lambda: self.context.bar.shopping.add(things), None, said)


def _one_listed(name: str, *, is_new: bool) -> str:
    if is_new:
        return tr("{name} is on the shopping list", name=name)
    return tr("{name} was on the shopping list already", name=name)


def _many_listed(new: int, old: int) -> str:
    said = tr("{things} put on the shopping list", things=things_in_words(new))
    if not old:
        return said
    if old == 1:
        return said + tr("; {old} of the plan was on it already", old=old)
    return said + tr("; {old} of the plan were on it already", old=old)
