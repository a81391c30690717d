"""Tick what you own: the kinds that drinks ask for most, as pictures."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from itertools import groupby

from PySide6.QtWidgets import QWidget

from barkeep.application.bottle_imports import bottles_of_kinds
from barkeep.desktop.first_hour.enter import pressed_by_enter
from barkeep.desktop.first_hour.taking_in import TakingIn
from barkeep.desktop.first_hour.tiles import KindTiles, Tile
from barkeep.desktop.screens.screen import ScreenContext
from barkeep.desktop.widgets.buttons import button, offer, primary_button
from barkeep.desktop.widgets.labels import text_label
from barkeep.desktop.widgets.layouts import Card, column_of, wide
from barkeep.domain.bar.changes import Changes
from barkeep.domain.bar.snapshot import Snapshot
from barkeep.domain.buying.common_kinds import CommonKind, common_kinds
from barkeep.domain.drink.looks import shipped_looks
from barkeep.domain.ingredients.tree import FamilyTree
from barkeep.domain.phrases import counted
from barkeep.translation import tr, tr_noop

HOW = tr_noop("Arrows move, Space ticks, letters find, Enter puts what is ticked on the shelf.")
GUESSES = tr_noop(
    "Each comes in at its usual size and about half full, or unopened where it soon goes flat: "
    "a guess, until you count it."
)
REST = tr_noop("And more")


def tiles_of(snapshot: Snapshot) -> tuple[Tile, ...]:
    """The common kinds of a bar with a heading over each group."""
    return tuple(_tiles(common_kinds(snapshot), snapshot))


def _tiles(kinds: Sequence[CommonKind], snapshot: Snapshot) -> Iterator[Tile]:
    tree, owned = snapshot.knowledge.tree, snapshot.usable
    for group, of_it in groupby(kinds, key=lambda each: each.group):
        yield Tile("", tree.name(group) if group else tr(REST))
        for each in of_it:
            yield _tile(each, tree, there=each.key in owned)


def _tile(kind: CommonKind, tree: FamilyTree, *, there: bool) -> Tile:
    ingredient = tree[kind.key]
    told = tr_noop("{drinks} asks for it" if kind.specs == 1 else "{drinks} ask for it")
    asked = tr(told, drinks=counted(kind.specs, "drink"))
    return Tile(
        key=kind.key,
        name=tree.name(kind.key),
        colour=shipped_looks().tint_of(kind.key, tree).hex,
        unit=ingredient.unit,
        there=there,
        names=(tree.name(kind.key), *ingredient.all_names),
        said=tr("{asked}; the bar has it already", asked=asked) if there else asked,
    )


class TickScreen(TakingIn):
    """One picture a kind; what is ticked stays so until it is on the shelf."""

    key = "tick-bottles"
    title = tr_noop("Tick what you own")
    noun = "kinds"
    more = tr_noop("Tick &more")

    def __init__(self, context: ScreenContext, parent: QWidget | None = None) -> None:
        super().__init__(context, parent)
        self.view = KindTiles()
        self.add_button = primary_button("", self.add_ticked, "add")
        self.list_button = button(tr("I have a &list"), lambda: context.go("bottle-list", None))
        self.add_header_button(self.list_button)
        self.add_header_button(self.add_button)
        self.of_the_form = (self.list_button, self.add_button)
        column_of(
            text_label(f"{tr(HOW)} {tr(GUESSES)}", quiet=True, wrap=True),
            wide(Card(self.view)),
            on=self.form,
        )
        self.view.ticks_changed.connect(self._say_ticked)
        self.view.wanted.connect(self.add_ticked)
        pressed_by_enter(self.add_button, self.list_button)
        self._say_ticked()

    def refresh(self, changes: Changes) -> None:
        self.view.show_tiles(tiles_of(self.context.bar.snapshot), frozenset(self.view.ticked))
        self._say_ticked()

    def add_ticked(self) -> None:
        """Put a bottle of each ticked kind on the shelf."""
        keys = self.view.ticked
        if keys:
            self.put_on_shelf(bottles_of_kinds(keys, self.context.bar.snapshot))
        else:
            self.context.toast.say(tr("Nothing is ticked: Space ticks the kind that is framed"))

    def forget(self) -> None:
        self.view.show_tiles(tiles_of(self.context.bar.snapshot), frozenset())
        self._say_ticked()

    def focus_list(self) -> None:
        if self.is_done:
            self.ending.take_focus()
        else:
            self.view.setFocus()

    def _say_ticked(self) -> None:
        count = len(self.view.ticked)
        add = tr("&Add {count} to the shelf", count=count)
        self.add_button.setText(add if count else tr("&Add to the shelf"))
        offer(self.add_button, "" if count else tr("Tick something first"))
        self.summary.setText(tr("{count} ticked", count=count) if count else "")
