"""What can be done with a shoot from its page: each a small function of the screen's work."""

from __future__ import annotations

from collections.abc import Callable, Iterator, Sequence
from dataclasses import replace
from functools import partial
from typing import TYPE_CHECKING

from PySide6.QtCore import QPoint
from PySide6.QtGui import QAction
from PySide6.QtWidgets import QDialog, QMenu, QWidget

from barkeep.application.camera import camera_drinks_of
from barkeep.desktop.dialogs.shoot_editor import ShootEditor
from barkeep.desktop.screens.spec_uses import open_batch, open_on_camera
from barkeep.domain.answers.assessment import sourcing_for
from barkeep.domain.answers.shoot_plan import Rescue, as_of, rescued
from barkeep.domain.answers.words import plain_amount
from barkeep.domain.derivations import Derivation
from barkeep.domain.shoots import (
    ChosenPour,
    Shoot,
    ShootDrink,
    as_poured,
    as_written,
    choose,
    spec_of,
    still_chosen,
)
from barkeep.domain.snapshot import Snapshot

if TYPE_CHECKING:
    from barkeep.desktop.screens.shoots import ShootsScreen

MOST_OFFERED = 12
"""Kinds in one menu; more is no help."""
NO_BOTTLE = "No bottle here fits"


class ShootWork:
    """The acts of the Shoots screen on the shoot that is chosen."""

    def __init__(self, screen: ShootsScreen) -> None:
        self._screen = screen
        self._bar = screen.context.bar
        self.dialog: QWidget | None = None
        """What was opened last."""

    def write(self, shoot: Shoot) -> None:
        """Open the editor on a shoot."""
        editor = ShootEditor(self._bar, shoot, self._screen)
        editor.written.connect(lambda done: self._screen.show_thing(done.value.id))
        self._open(editor)

    def change(self, shoot: Shoot, say: str) -> None:
        """Write a changed shoot down."""
        self._screen.do(lambda: self._bar.shoots.replace(shoot), say=say)

    def rescue(self, shoot: Shoot, found: Rescue) -> None:
        """Take a stand-in for a line that runs out."""
        name = self._bar.snapshot.knowledge.tree.name(found.chosen.ingredient)
        self.change(rescued(shoot, found), f"{name} goes into {found.name}")

    def pour_as_written(self, shoot: Shoot, number: int, line: int) -> None:
        """Pour a line as its spec says again."""
        self._with_drink(shoot, number, as_written(shoot.drinks[number], line))

    def move(self, shoot: Shoot, number: int, by: int) -> None:
        """Move a drink in the running order."""
        drinks = list(shoot.drinks)
        drinks.insert(number + by, drinks.pop(number))
        self.change(replace(shoot, drinks=tuple(drinks)), f"Moved {shoot.drinks[number].name}")

    def tick(self, shoot: Shoot, key: str, done: bool) -> None:
        """Tick off a step of the mise en place, or take the tick back."""
        if shoot.id is not None:
            identity = shoot.id
            self._screen.do(lambda: self._bar.shoots.tick(identity, key, done))

    def pour_otherwise(self, shoot: Shoot, number: int, where: QPoint) -> None:
        """Offer, line by line, what a drink could be poured with."""
        menu = self.menu_for(shoot, number)
        self.dialog = menu
        menu.popup(where)

    def menu_for(self, shoot: Shoot, number: int) -> QMenu:
        """The menu of a drink's lines, each with bottles and stand-ins."""
        snapshot = as_of(shoot, self._bar.snapshot)
        drink, menu = shoot.drinks[number], QMenu(self._screen)
        menu.setTitle(f"Pour {drink.name} otherwise")
        menu.aboutToHide.connect(menu.deleteLater)  # its act is still to come, and comes first
        spec = spec_of(drink, snapshot)
        if spec is None:
            return menu
        sourcing = sourcing_for(snapshot, "loose")
        now = {each.line: each for each in still_chosen(drink, spec).chosen}
        for place, line in enumerate(spec.lines):
            if line.required:
                below = menu.addMenu(snapshot.knowledge.tree.name(line.ingredient))
                as_it_is = self._add_act(
                    below, "As written", partial(self.pour_as_written, shoot, number, place)
                )
                _mark(as_it_is, place not in now)
                below.addSeparator()
                ways = sourcing.ways_to(line, spec)
                for text, chosen in _bottles_for(place, ways, snapshot):
                    act = self._add_act(below, text, partial(self._choose, shoot, number, chosen))
                    _mark(act, _is_same(now.get(place), chosen))
                if below.actions()[-1].isSeparator():
                    below.addAction(NO_BOTTLE).setEnabled(False)
        return menu

    def _choose(self, shoot: Shoot, number: int, chosen: ChosenPour) -> None:
        self._with_drink(shoot, number, choose(shoot.drinks[number], chosen))

    def _with_drink(self, shoot: Shoot, number: int, drink: ShootDrink) -> None:
        drinks = list(shoot.drinks)
        drinks[number] = drink
        self.change(replace(shoot, drinks=tuple(drinks)), f"Changed {shoot.drinks[number].name}")

    @staticmethod
    def _add_act(menu: QMenu, text: str, act: Callable[[], object]) -> QAction:
        action = menu.addAction(text.replace("&", "&&"))
        action.triggered.connect(lambda: act())
        return action

    # What opens another window

    def log(self, shoot: Shoot) -> None:
        """Open the log after the shoot."""
        from barkeep.desktop.dialogs.log_shoot import LogDialog

        dialog = LogDialog(self._bar, shoot, self._screen)
        dialog.logged.connect(self._say_logged)
        self._open(dialog)

    def show_variances(self) -> None:
        """Show what several logs say of each bottle."""
        from barkeep.desktop.dialogs.variances import VariancesDialog

        self._open(VariancesDialog(self._bar.snapshot, self._screen))

    def run_sheet(self, shoot: Shoot) -> None:
        """Print or save the run sheet, and copy the text to publish."""
        from barkeep.desktop.dialogs.run_sheet import RunSheetDialog

        self._open(RunSheetDialog(self._screen.context, shoot, self._screen))

    def on_camera(self, shoot: Shoot) -> None:
        """Show the sheet to read from on camera."""
        drinks = camera_drinks_of(shoot, self._bar.snapshot)
        self.dialog = open_on_camera(drinks, self._screen)

    def batch(self, shoot: Shoot, number: int) -> None:
        """Make a batch of one drink as it will be poured."""
        spec = as_poured(shoot.drinks[number], self._bar.snapshot)
        if spec is not None:
            self.dialog = open_batch(self._screen.context, spec, self._screen)

    def shop(self, shoot: Shoot | None) -> None:
        """Open the shopping list."""
        from barkeep.desktop.dialogs.shopping import ShoppingDialog

        chosen = None if shoot is None or shoot.id is None else (shoot.id,)
        self._open(ShoppingDialog(self._screen.context, self._screen, chosen))

    def make(self, ingredient: str | None = None, amount: float | None = None) -> None:
        """Open the dialog that makes a syrup, juice or cordial."""
        from barkeep.desktop.dialogs.make_house_made import MakeDialog

        self._open(MakeDialog(self._screen.context, self._screen, ingredient, amount))

    def _say_logged(self, done: object) -> None:
        theme = done.value.theme  # type: ignore[attr-defined]
        self._screen.context.toast.say(f"Logged {theme}", "Undo", self._bar.undo)

    def _open(self, dialog: QDialog) -> None:
        self.dialog = dialog
        dialog.open()


def _bottles_for(
    place: int, ways: Sequence[Derivation], snapshot: Snapshot
) -> Iterator[tuple[str, ChosenPour]]:
    """Each bottle a line may be poured from, in words, and as a choice for it."""
    tree = snapshot.knowledge.tree
    for way in [each for each in ways if each.leaves == {each.offered}][:MOST_OFFERED]:
        kind = "" if way.exact else f", in place of {tree.in_sentence(way.wanted)}"
        for bottle in snapshot.usable.get(way.offered, ()):
            left = plain_amount(round(bottle.level.amount), bottle.product.unit)
            chosen = ChosenPour(place, way.offered, way.ratio, bottle.id)
            yield f"{bottle.product.title} ({left}{kind})", chosen


def _mark(action: QAction, now: bool) -> None:
    action.setCheckable(True)
    action.setChecked(now)


def _is_same(one: ChosenPour | None, other: ChosenPour) -> bool:
    return one is not None and (one.ingredient, one.bottle_id) == (
        other.ingredient,
        other.bottle_id,
    )
