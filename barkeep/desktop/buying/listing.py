"""The parts of the page Buying, and what they share: putting things on the shopping list."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace

from barkeep.desktop.screens.parts import OfParts
from barkeep.desktop.widgets.detail_bar import DetailActs
from barkeep.desktop.widgets.offered import Offered
from barkeep.domain.bar.changes import Changes, Part
from barkeep.domain.bar.snapshot import Settings
from barkeep.domain.bar.to_buy import ToBuy, with_to_buy
from barkeep.domain.phrases import counted

BUYING = (
    ("next-bottle", "Next bottle", "What each single purchase would turn ready"),
    ("buying-plan", "A plan", "The best set of so many bottles, or for so much money"),
    ("carried", "What each carries", "What would be lost without each bottle"),
    ("pairs", "Pairs", "Purchases that turn much together and little apart"),
)
"""The parts of the page: key, word, explanation."""
ADD = "Add to the shopping list"
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
        add = next(each for each in self.bar_actions if each.text().replace("&", "") == ADD)
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
            said = tree.name(things[0].ingredient)
            said += " is on the shopping list" if new else " was on the shopping list already"
        else:
            said = f"{counted(len(new), 'thing')} put on the shopping list"
            old = len(things) - len(new)
            said += f"; {old} of the plan {'was' if old == 1 else 'were'} on it already" * bool(old)
        if with_to_buy(there, things) == there:
            self.context.toast.say(said)  # nothing was done, so there is nothing to undo
            return
        self.do(lambda: self.context.bar.shopping.add(things), None, said)
