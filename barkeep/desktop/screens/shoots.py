"""Shoots: the week around one filmed episode, from an idea to bottles counted afterwards."""

from __future__ import annotations

from collections.abc import Callable, Hashable
from datetime import timedelta
from functools import partial

from PySide6.QtCore import Qt
from PySide6.QtGui import QAction, QKeySequence
from PySide6.QtWidgets import QWidget

from barkeep.desktop.icons import wear
from barkeep.desktop.models.shoot_rows import (
    STATE_WORDS,
    ShootAnswer,
    answer_for,
    found_by,
    shoot_columns,
)
from barkeep.desktop.screens.base import EVERYTHING
from barkeep.desktop.screens.context import ScreenContext
from barkeep.desktop.screens.shoot_page import Offer, ShootPage
from barkeep.desktop.screens.shoot_work import ShootWork
from barkeep.desktop.screens.table_screen import TableScreen, on_activated, sort_by
from barkeep.desktop.widgets.buttons import primary_button
from barkeep.desktop.widgets.empty_state import EmptyState
from barkeep.desktop.widgets.filter_chips import FilterChips
from barkeep.domain.shoots import Shoot

STATES_SHOWN = (
    ("all", "All", "Every shoot"),
    ("ahead", "Ahead", "Ideas, and what is planned"),
    ("to_log", "To log", "Filmed, and its bottles not yet counted"),
    ("logged", "Logged", "Finished"),
)
OF_CHIP = {"ahead": ("idea", "planned"), "to_log": ("filmed",), "logged": ("logged",)}
NEXT_DAYS = 7
"""A new shoot is planned so many days ahead, to begin with."""


class ShootsScreen(TableScreen[Shoot]):
    """One row a shoot; its page answers whether it can all be poured."""

    key = "shoots"
    title = "Shoots"
    noun = "shoots"
    search_hint = "Search theme, drink or bottle…"
    cares_about = EVERYTHING | {"shoots"}

    def __init__(self, context: ScreenContext, parent: QWidget | None = None) -> None:
        words = "A shoot is a theme, a day, and drinks in running order"
        empty = EmptyState("picture-empty-glass", "No shoots yet", words, "New shoot…")
        super().__init__(context, shoot_columns(), empty, parent)
        self.work = ShootWork(self)
        self.page: ShootPage | None = None
        self.chips = FilterChips("Show", STATES_SHOWN, "all")
        self.chips.chosen.connect(lambda _key: self.filter_again())
        self.add_filter(self.chips)
        self.add_header_button(primary_button("New shoot…", self.write_new))
        empty.acted.connect(self.write_new)
        for column, width in enumerate((196, 88, 80)):
            self.view.setColumnWidth(column, width)
        sort_by(self.view, 1, descending=True)
        on_activated(self.view, self.edit_current)
        self.splitter.setSizes([420, 520])
        self._prepare_actions()

    def refresh(self, changes: frozenset[str]) -> None:
        shoots = self.context.bar.snapshot.shoots
        self.show_rows(shoots)
        ahead = sum(each.state in ("idea", "planned") for each in shoots)
        to_log = sum(each.state == "filmed" for each in shoots)
        self.summary.setText(f"{ahead} ahead, {to_log} to log, {len(shoots)} in all")

    def identity(self, row: Shoot) -> Hashable:
        return row.id

    def matcher(self) -> Callable[[Shoot], bool]:
        snapshot, words = self.context.bar.snapshot, self.search.text
        return lambda row: self.accepts(row) and found_by(row, words, snapshot)

    def accepts(self, row: Shoot) -> bool:
        return self.chips.choice == "all" or row.state in OF_CHIP[self.chips.choice]

    def clear_filters(self) -> None:
        self.chips.choose("all")
        super().clear_filters()

    def show_row(self, row: Shoot | None) -> None:
        if row is None:
            self.context.background.forget(self.key)
            self.detail.clear()
            self.page = None
            return
        question = partial(answer_for, row, self.context.bar.snapshot)
        self.context.background.ask(self.key, question, self._show_answer)

    # What the user does

    def write_new(self) -> None:
        """Open the editor on a new shoot, a week ahead."""
        on = self.context.bar.snapshot.on + timedelta(days=NEXT_DAYS)
        self.work.write(Shoot(None, "", on))

    def edit_current(self) -> None:
        """Open the editor on the chosen shoot."""
        self._with_current(self.work.write)

    def repeat_current(self) -> None:
        """Plan the chosen shoot once more."""

        def again(shoot: Shoot) -> None:
            if (identity := shoot.id) is not None:
                repeat = partial(self.context.bar.shoots.repeat, identity)
                self.do(repeat, lambda new: self.show_thing(new.id), f"{shoot.theme} once more")

        self._with_current(again)

    def remove_current(self) -> None:
        """Take the chosen shoot away; the toast can put it back."""

        def remove(shoot: Shoot) -> None:
            if (identity := shoot.id) is not None:
                act = partial(self.context.bar.shoots.remove, identity)
                self.do(act, say=f"Removed {shoot.theme}")

        self._with_current(remove)

    # The rest

    def _with_current(self, act: Callable[[Shoot], object]) -> None:
        self.banner.clear()
        if self.current is not None:
            act(self.current)

    def _show_answer(self, answer: ShootAnswer) -> None:
        shoot = answer.shoot
        if self.current is None or self.current.id != shoot.id:
            return
        kept = self.detail.verticalScrollBar().value()
        same = self.page is not None and self.page.shoot_id == shoot.id
        focused = self.page.focused_name() if same and self.page is not None else ""
        page = ShootPage(answer, self._next_step(shoot), self._offers(shoot))
        work = self.work
        page.rescue_wanted.connect(lambda found: work.rescue(shoot, found))
        page.as_written_wanted.connect(lambda at, line: work.pour_as_written(shoot, at, line))
        page.otherwise_wanted.connect(lambda at, where: work.pour_otherwise(shoot, at, where))
        page.batch_wanted.connect(lambda at: work.batch(shoot, at))
        page.moved.connect(lambda at, by: work.move(shoot, at, by))
        page.ticked.connect(lambda key, on: work.tick(shoot, key, on))
        page.make_wanted.connect(work.make)
        old = self.detail.takeWidget()  # a button of it may be at work just now: it goes later
        if old is not None:
            old.hide()
            old.deleteLater()
        self.page = page
        self.detail.setWidget(page)
        page.setAutoFillBackground(False)  # a scroll area fills what it is given
        self.detail.verticalScrollBar().setValue(kept if same else 0)
        if focused and not page.take_focus(focused):
            self.detail.setFocus(Qt.FocusReason.OtherFocusReason)

    def _next_step(self, shoot: Shoot) -> Offer | None:
        match shoot.state:
            case "idea":
                return Offer("Plan it", lambda: self._move(shoot, "planned"), "calendar")
            case "planned":
                return Offer("It is filmed", lambda: self._move(shoot, "filmed"), "check")
            case "filmed":
                return Offer("Log it…", lambda: self.work.log(shoot), "count")
        return None

    def _move(self, shoot: Shoot, state: str) -> None:
        if (identity := shoot.id) is not None:
            move = partial(self.context.bar.shoots.move, identity, state)  # type: ignore[arg-type]
            self.do(move, say=f"{shoot.theme}: {STATE_WORDS[state].lower()}")  # type: ignore[index]

    def _offers(self, shoot: Shoot) -> list[Offer]:
        work = self.work
        offers = [
            Offer("Run sheet…", lambda: work.run_sheet(shoot), "print"),
            Offer("On camera", lambda: work.on_camera(shoot)),
        ]
        if shoot.log is None:
            offers.append(Offer("Shopping…", lambda: work.shop(shoot), "price"))
            offers.append(Offer("Make…", work.make, "house-made"))
            offers.append(Offer("Edit…", self.edit_current))
        else:
            offers.append(Offer("Variances…", work.show_variances))
        offers.append(Offer("Repeat", self.repeat_current, "redo"))
        return offers

    def _prepare_actions(self) -> None:
        acts: tuple[tuple[str, str, str, Callable[[], object]], ...] = (
            ("New shoot…", "Ctrl+N", "add", self.write_new),
            ("Edit shoot…", "Ctrl+E", "shoots", self.edit_current),
            ("Repeat shoot", "Ctrl+R", "redo", self.repeat_current),
            ("Log shoot…", "Ctrl+G", "count", lambda: self._with_current(self.work.log)),
            ("On camera", "F8", "", lambda: self._with_current(self.work.on_camera)),
            ("Shopping for it…", "Ctrl+B", "price", lambda: self.work.shop(self.current)),
            ("Variances…", "", "history", self.work.show_variances),
            ("Remove shoot", "Delete", "remove", self.remove_current),
        )
        for text, keys, picture, act in acts:
            action = QAction(text, self)
            if keys:
                action.setShortcut(QKeySequence(keys))
            if picture:
                wear(action, picture)
            action.triggered.connect(lambda _on=False, run=act: run())
            self.add_bar_action(action)
        self.view.setContextMenuPolicy(Qt.ContextMenuPolicy.ActionsContextMenu)
        for action in self.bar_actions:
            self.view.addAction(action)
