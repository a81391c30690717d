"""Shoots: the week around one filmed episode, from an idea to bottles counted afterwards."""

from __future__ import annotations

from collections.abc import Callable, Hashable, Iterator, Sequence
from dataclasses import replace
from datetime import timedelta
from functools import partial

from PySide6.QtCore import QPoint, Qt
from PySide6.QtGui import QAction
from PySide6.QtWidgets import QDialog, QMenu, QWidget

from barkeep.application.done import Done
from barkeep.application.publishing import camera_drinks_of
from barkeep.application.shoots import FilmedAhead, NotFilmedYet
from barkeep.desktop.drink.camera_sheet import open_on_camera
from barkeep.desktop.making.batch import open_batch
from barkeep.desktop.screens.kept import LOG, KeptTyping
from barkeep.desktop.screens.list_stack import set_widths
from barkeep.desktop.screens.screen import ScreenContext
from barkeep.desktop.screens.table_screen import TableScreen, on_activated, one_or_many, sort_by
from barkeep.desktop.shoots.editor import ShootEditor
from barkeep.desktop.shoots.one_shoot import OTHERWISE, ShootActs, ShootPage
from barkeep.desktop.shoots.rows import (
    STATE_WORDS,
    ShootAnswer,
    answer_for,
    found_by,
    shoot_columns,
)
from barkeep.desktop.widgets.buttons import primary_button
from barkeep.desktop.widgets.chips import FilterChips
from barkeep.desktop.widgets.detail_bar import NO_ACTS, DetailActs
from barkeep.desktop.widgets.empty_state import EmptyState
from barkeep.desktop.widgets.layouts import column_of
from barkeep.desktop.widgets.offered import Offered
from barkeep.domain.bar.changes import EVERYTHING, Changes
from barkeep.domain.bar.shoots import (
    ChosenPour,
    Shoot,
    ShootDrink,
    as_written,
    choose,
    still_chosen,
)
from barkeep.domain.bar.snapshot import Snapshot
from barkeep.domain.days import day_said
from barkeep.domain.ingredients.derivations import Derivation
from barkeep.domain.phrases import begun_small
from barkeep.domain.pouring.sourcing import sourcing_for
from barkeep.domain.pouring.words import plain_amount
from barkeep.domain.shoots.drinks import as_poured, spec_of
from barkeep.domain.shoots.plan import Rescue, as_of, rescued
from barkeep.domain.shoots.running_order import moved
from barkeep.domain.shoots.stops import Stop, left_to_make
from barkeep.domain.specs.shown_lines import names_and_kind
from barkeep.translation import tr, tr_noop

MOST_OFFERED = 12
"""Kinds in one menu; more is no help."""
NO_BOTTLE = tr_noop("No bottle here fits")


def _bottles_for(
    place: int, ways: Sequence[Derivation], snapshot: Snapshot
) -> Iterator[tuple[str, ChosenPour]]:
    """Each bottle a line may be poured from, in words, and as a choice for it."""
    tree = snapshot.knowledge.tree
    for way in [each for each in ways if each.leaves == {each.offered}][:MOST_OFFERED]:
        kind = (
            "" if way.exact else tr(", in place of {wanted}", wanted=tree.in_sentence(way.wanted))
        )
        for bottle in snapshot.usable.get(way.offered, ()):
            left = plain_amount(round(bottle.level.amount), bottle.product.unit)
            chosen = ChosenPour(place, way.offered, way.ratio, bottle.id)
            yield f"{bottle.product.title} ({left}{kind})", chosen


def _add_act(menu: QMenu, text: str, act: Callable[[], object]) -> QAction:
    action = menu.addAction(text.replace("&", "&&"))
    action.triggered.connect(lambda: act())
    return action


def _mark(action: QAction, now: bool) -> None:
    action.setCheckable(True)
    action.setChecked(now)


def _is_same(one: ChosenPour | None, other: ChosenPour) -> bool:
    return one is not None and (one.ingredient, one.bottle_id) == (
        other.ingredient,
        other.bottle_id,
    )


STATES_SHOWN = (
    ("all", tr_noop("All"), tr_noop("Every shoot")),
    ("ahead", tr_noop("Ahead"), tr_noop("Ideas, and what is planned")),
    ("to_log", tr_noop("To log"), tr_noop("Filmed, and its bottles not yet counted")),
    ("logged", tr_noop("Logged"), tr_noop("Finished")),
)
OF_CHIP = {"ahead": ("idea", "planned"), "to_log": ("filmed",), "logged": ("logged",)}
EDIT, REPEAT, REMOVE = tr_noop("Edit shoot…"), tr_noop("Repeat shoot"), tr_noop("Remove shoot")
CAMERA, SHOPPING, VARIANCES = (
    tr_noop("On camera"),
    tr_noop("Shopping for it…"),
    tr_noop("Variances…"),
)
OFTEN = 3
"""So many things are offered at once, the rest under More."""
NEXT_DAYS = 7
"""A new shoot is planned so many days ahead, to begin with."""


class ShootsScreen(TableScreen[Shoot]):
    """One row a shoot; its page answers whether it can all be poured, then what to log."""

    key = "shoots"
    title = tr_noop("Shoots")
    only_looks = frozenset({CAMERA, SHOPPING, VARIANCES})
    noun = tr_noop("shoots")
    search_hint = tr_noop("Search theme, drink or bottle…")
    cares_about = EVERYTHING

    def __init__(self, context: ScreenContext, parent: QWidget | None = None) -> None:
        words = tr("A shoot is a theme, a day, and drinks in running order")
        empty = EmptyState("picture-empty-glass", tr("No shoots yet"), words, tr("New shoot…"))
        super().__init__(context, shoot_columns(), empty, parent)
        self.page: ShootPage | None = None
        """What is shown of the chosen shoot."""
        self._answer: ShootAnswer | None = None
        folds = self.detail.folds
        self._both = (ShootPage(folds), ShootPage(folds))
        """One is filled while the other is shown, and has the keyboard."""
        self.detail.show_page(holder := QWidget())
        column_of(*self._both, on=holder, gap=0)
        for each in self._both:
            each.hide()
        folds.turned.connect(self._show_again)
        self._kept = KeptTyping(context.state.folder, context.bar.kept_beside)
        self.chips = FilterChips(tr("Show"), STATES_SHOWN, "all")
        self.chips.chosen.connect(lambda _key: self.filter_again())
        self.add_filter(self.chips)
        self.add_header_button(primary_button(tr("New shoot…"), self.write_new))
        empty.acted.connect(self.write_new)
        set_widths(self.view, (188, 108, 80), whole=(1,))
        sort_by(self.view, 1, descending=True)
        on_activated(self.view, self.edit_current)
        self.splitter.setSizes([420, 520])
        self.waiting.dim(self.detail)  # what is worked on is one shoot, not the list
        self._prepare_actions()

    def refresh(self, changes: Changes) -> None:
        shoots = self.context.bar.snapshot.shoots
        self.show_rows(shoots)
        ahead = sum(each.state in ("idea", "planned") for each in shoots)
        to_log = sum(each.state == "filmed" for each in shoots)
        self.summary.setText(
            tr(
                "{ahead} ahead, {to_log} to log, {all} in all",
                ahead=ahead,
                to_log=to_log,
                all=len(shoots),
            )
        )

    def identity(self, row: Shoot) -> Hashable:
        return row.id

    def matcher(self, rows: Sequence[Shoot]) -> Callable[[Shoot], bool]:
        snapshot, words = self.context.bar.snapshot, self.search.text
        return lambda row: self.accepts(row) and found_by(row, words, snapshot)

    def accepts(self, row: Shoot) -> bool:
        return self.chips.choice == "all" or row.state in OF_CHIP[self.chips.choice]

    def clear_filters(self) -> None:
        self.chips.choose("all")
        super().clear_filters()

    def show_row(self, row: Shoot | None) -> None:
        if row is None:
            self.ask_no_more()
            for each in self._both:
                each.hide()
            self.page, self._answer = None, None
            self.detail.show_bar("", NO_ACTS)
            return
        question = partial(answer_for, row, self.context.bar.snapshot)
        self.ask(question, self._show_answer, tr("Working out the shoot…"))

    def hold(self, reason: str) -> None:
        renew = reason != self.held
        super().hold(reason)
        if renew:
            self._show_again()  # what stands within the details writes too

    def _show_again(self) -> None:
        """The same answer, after parts of it were opened or closed."""
        if self._answer is not None:
            self._show_answer(self._answer)

    # What the user does

    def write_new(self) -> None:
        """Open the editor on a new shoot, a week ahead."""
        on = self.context.bar.snapshot.on + timedelta(days=NEXT_DAYS)
        self.write(Shoot(None, "", on))

    def edit_current(self) -> None:
        """Open the editor on the chosen shoot."""
        self._with_current(self.write)

    def repeat_current(self) -> None:
        """Plan the chosen shoot once more."""

        def again(shoot: Shoot) -> None:
            if (identity := shoot.id) is not None:
                repeat = partial(self.context.bar.shoots.repeat, identity)
                self.do(
                    repeat,
                    lambda new: self.show_thing(new.id),
                    tr("{theme} once more", theme=shoot.theme),
                )

        self._with_current(again)

    def remove_current(self) -> None:
        """Take the chosen shoots away; the toast can put them back."""

        self.banner.clear()
        shoots = {each.id: each.theme for each in self.chosen if each.id is not None}
        if shoots:
            act = partial(self.context.bar.shoots.remove, *shoots)
            names = one_or_many(list(shoots.values()), self.noun)
            self.do(act, say=tr("Removed {names}", names=names))

    # What is done with one shoot

    def write(self, shoot: Shoot) -> None:
        """Open the editor on a shoot."""
        editor = ShootEditor(self.context.bar, shoot, self._kept, self)
        again = tr("New shoot…") if shoot.id is None else tr("Edit…")
        editor.left.connect(lambda: self._say_kept(again))
        editor.written.connect(lambda done: self.show_thing(done.value.id))
        self._open(editor)

    def change(self, before: Shoot, shoot: Shoot, say: str) -> None:
        """Write a changed shoot down, where it is still as it was before."""
        self.do(lambda: self.context.bar.shoots.replace(shoot, before), say=say)

    def rescue(self, shoot: Shoot, found: Rescue) -> None:
        """Take a stand-in for a line that runs out."""
        name = self.context.bar.snapshot.knowledge.tree.name(found.chosen.ingredient)
        self.change(
            shoot,
            rescued(shoot, found),
            tr("{stand_in} goes into {drink}", stand_in=name, drink=found.name),
        )

    def pour_as_written(self, shoot: Shoot, number: int, line: int) -> None:
        """Pour a line as its spec says again."""
        self._with_drink(shoot, number, as_written(shoot.drinks[number], line))

    def move_drink(self, shoot: Shoot, number: int, by: int) -> None:
        """Move a drink in the running order."""
        self.place_drink(shoot, number, number + by)

    def place_drink(self, shoot: Shoot, number: int, to: int) -> None:
        """Put a drink at another place of the running order."""
        self.change(
            shoot,
            replace(shoot, drinks=moved(shoot.drinks, number, to)),
            tr("Moved {name}", name=shoot.drinks[number].name),
        )

    def tick(self, shoot: Shoot, key: str, done: bool) -> None:
        """Tick off a step of the mise en place, or take the tick back."""
        if shoot.id is not None:
            identity = shoot.id
            self.do(lambda: self.context.bar.shoots.tick(identity, key, done))

    def pour_otherwise(self, shoot: Shoot, number: int, where: QPoint) -> None:
        """Offer, line by line, what a drink could be poured with."""
        menu = self.menu_for(shoot, number)
        self.dialog = menu
        menu.popup(where)

    def menu_for(self, shoot: Shoot, number: int) -> QMenu:
        """The menu of a drink's lines, each with bottles and stand-ins."""
        snapshot = as_of(shoot, self.context.bar.snapshot)
        drink, menu = shoot.drinks[number], QMenu(self)
        menu.setTitle(tr("Pour {name} otherwise", name=drink.name))
        menu.aboutToHide.connect(menu.deleteLater)  # its act is still to come, and comes first
        spec, tree = spec_of(drink, snapshot), snapshot.knowledge.tree
        if spec is None:
            return menu
        sourcing = sourcing_for(snapshot, "loose")
        now = {each.line: each for each in still_chosen(drink, spec).chosen}
        for place, line in enumerate(spec.lines):
            if line.required:
                below = menu.addMenu(names_and_kind(line, tree).replace("&", "&&"))
                as_it_is = _add_act(
                    below, tr("As written"), partial(self.pour_as_written, shoot, number, place)
                )
                _mark(as_it_is, place not in now)
                below.addSeparator()
                ways = sourcing.ways_to(line, spec)
                for text, chosen in _bottles_for(place, ways, snapshot):
                    act = _add_act(below, text, partial(self._choose, shoot, number, chosen))
                    _mark(act, _is_same(now.get(place), chosen))
                if below.actions()[-1].isSeparator():
                    below.addAction(tr(NO_BOTTLE)).setEnabled(False)
        return menu

    def _choose(self, shoot: Shoot, number: int, chosen: ChosenPour) -> None:
        self._with_drink(shoot, number, choose(shoot.drinks[number], chosen))

    def _with_drink(self, shoot: Shoot, number: int, drink: ShootDrink) -> None:
        drinks = list(shoot.drinks)
        drinks[number] = drink
        self.change(
            shoot,
            replace(shoot, drinks=tuple(drinks)),
            tr("Changed {name}", name=shoot.drinks[number].name),
        )

    # What opens another window

    def write_log(self, shoot: Shoot) -> None:
        """Open the log after the shoot."""
        from barkeep.desktop.shoots.log import LogDialog

        dialog = LogDialog(self.context.bar, shoot, self._kept, self)
        dialog.left.connect(lambda: self._say_kept(tr("Log it…")))
        dialog.logged.connect(self._say_logged)
        self._open(dialog)

    def show_variances(self) -> None:
        """Show what several logs say of each bottle."""
        from barkeep.desktop.shoots.variances import VariancesDialog

        self._open(VariancesDialog(self.context.bar.snapshot, self))

    def run_sheet(self, shoot: Shoot) -> None:
        """Print or save the run sheet, and copy the text to publish."""
        from barkeep.desktop.shoots.run_sheet import RunSheetDialog

        self._open(RunSheetDialog(self.context, shoot, self))

    def on_camera(self, shoot: Shoot) -> None:
        """Show the sheet to read from on camera."""
        drinks = camera_drinks_of(shoot, self.context.bar.snapshot)
        self.dialog = open_on_camera(drinks, self)

    def batch(self, shoot: Shoot, number: int) -> None:
        """Make a batch of one drink as it will be poured."""
        spec = as_poured(shoot.drinks[number], self.context.bar.snapshot)
        if spec is not None:
            self.dialog = open_batch(self.context, spec, self)

    def go_on_with(self, name: str) -> None:
        shoot = self.context.bar.snapshot.shoot_by_id.get(int(name.removeprefix(LOG)))
        if shoot is not None:
            self.show_thing(shoot.id)
            self.write_log(shoot)

    def shop(self, shoot: Shoot | None) -> None:
        """Open the shopping list."""
        from barkeep.desktop.buying.shopping import ShoppingDialog

        chosen = None if shoot is None or shoot.id is None else (shoot.id,)
        self._open(ShoppingDialog(self.context, self, chosen))

    def make(self, ingredient: str | None = None, amount: float | None = None) -> None:
        """Open the dialog that makes a syrup, juice or cordial."""
        from barkeep.desktop.making.house_made import MakeDialog

        self._open(MakeDialog(self.context, self, ingredient, amount))

    def _say_logged(self, done: Done[Shoot]) -> None:
        self.say_done(tr("Logged {theme}", theme=done.value.theme))

    def _say_kept(self, again: str) -> None:
        """Say that what was typed is not lost, and what goes on with it."""
        self.context.toast.say(
            tr("What you typed is kept, not saved: {again} goes on with it.", again=again)
        )

    def _open(self, dialog: QDialog) -> None:
        self.dialog = dialog
        dialog.open()

    # The rest

    def _with_current(self, act: Callable[[Shoot], object]) -> None:
        self.banner.clear()
        if self.current is not None:
            act(self.current)

    def _show_answer(self, answer: ShootAnswer) -> None:
        shoot = answer.shoot
        if self.current is None or self.current.id != shoot.id:
            return
        self._answer = answer
        self.detail.show_bar(shoot.theme, self._acts_of(answer))
        kept, before = self.detail.verticalScrollBar().value(), self.page
        same = before is not None and before.shoot_id == shoot.id
        focused = before.focused_name() if same and before is not None else ""
        page = next(each for each in self._both if each is not before)
        page.fill(answer, self._acts_on(answer))
        self.page = page
        page.show()
        if before is not None:
            before.hide()
        self.detail.scroll_to(kept if same else 0)
        if focused and not page.take_focus(focused):
            self.detail.setFocus(Qt.FocusReason.OtherFocusReason)

    def _acts_on(self, answer: ShootAnswer) -> ShootActs:
        shoot = answer.shoot
        return ShootActs(
            rescue=partial(self.rescue, shoot),
            pour_as_written=partial(self.pour_as_written, shoot),
            pour_otherwise=partial(self._pour_otherwise, shoot),
            batch=partial(self.batch, shoot),
            move=partial(self.move_drink, shoot),
            tick=partial(self.tick, shoot),
            make=self.make,
            stop=partial(self._take_stop, answer),
            held=self.held,
        )

    def _pour_otherwise(self, shoot: Shoot, number: int) -> None:
        """Offer it right below the button, wherever the mouse may be."""
        if self.page is not None:
            asked = self.page.drinks[number].buttons[tr(OTHERWISE)]
            where = asked.mapToGlobal(asked.rect().bottomLeft())
            self.pour_otherwise(shoot, number, where)

    def _acts_of(self, answer: ShootAnswer) -> DetailActs:
        """What is next first; what else moves it on or is read from it; and the rest."""
        shoot, offered = answer.shoot, {each.text(): each for each in self.bar_actions}
        stop = answer.stops.next
        first = [] if stop is None else [replace(self._next_act(answer, stop), primary=True)]
        sheet = Offered(tr("Run sheet…"), lambda: self.run_sheet(shoot), writes=False)
        edit = self.offered(offered[tr(EDIT)], tr("Edit…"))
        often, more = [*first, *self._moves_on(answer)], list[Offered]()
        if shoot.log is None:
            often += [] if stop is not None and stop.key == "idea" else [edit]
            often, more = often[:OFTEN], often[OFTEN:]
        else:
            often += [sheet, self.offered(offered[tr(VARIANCES)])]
        if shoot.state in ("idea", "planned"):
            more += [
                self.offered(offered[tr(SHOPPING)], tr("Shopping…")),
                Offered(tr("Make…"), self.make, writes=True),
            ]
        more += [
            sheet,
            self.offered(offered[tr(CAMERA)]),
            self.offered(offered[tr(REPEAT)], tr("Repeat")),
        ]
        more += [self.offered(offered[tr(each)]) for each in (VARIANCES, REMOVE)]
        taken = {each.text for each in often}
        once = {each.text: each for each in more if each.text not in taken}
        return DetailActs(tuple(often), tuple(once.values()))

    def _moves_on(self, answer: ShootAnswer) -> Iterator[Offered]:
        """What may be said of a shoot before it is next."""
        shoot, stop = answer.shoot, answer.stops.next
        if shoot.state == "idea":
            yield Offered(tr("Plan it"), lambda: self._move(shoot, "planned"))
        elif shoot.state == "planned" and stop is not None and stop.key != "film":
            yield Offered(tr("It is filmed"), lambda: self._film(shoot))

    def _next_act(self, answer: ShootAnswer, stop: Stop) -> Offered:
        """The one thing that is next of a shoot, and what does it."""
        shoot = answer.shoot
        match stop.key:
            case "idea":
                unsettled = [each for each in answer.plan.menu.orders if each.spec.unsettled]
                if not answer.plan.removed and unsettled:
                    show = partial(self.context.go, "specs", unsettled[0].spec.name)
                    return Offered(tr("Open the spec"), show, writes=False)
                return Offered(
                    tr("Choose drinks…") if not shoot.drinks else tr("Edit…"), self.edit_current
                )
            case "shop":
                return Offered(tr("Shopping…"), partial(self.shop, shoot), writes=False)
            case "prepare":
                left = left_to_make(answer.mise, shoot)
                if left:
                    name = answer.snapshot.knowledge.tree.in_sentence(left[0].ingredient)
                    make = partial(self.make, left[0].ingredient, left[0].amount)
                    return Offered(tr("Make {name}…", name=name).replace("&", "&&"), make)
                return Offered(tr("Mise en place"), self.show_mise, writes=False)
            case "film":
                return Offered(tr("It is filmed"), partial(self._film, shoot))
            case "count":
                return Offered(tr("Log it…"), partial(self._log, shoot))

    def show_mise(self) -> None:
        """Open the mise en place, and go to its first step that is not ticked."""
        self.detail.folds.turn("mise", True)
        boxes = [] if self.page is None else [*self.page.ticks.values()]
        box = next((each for each in boxes if not each.isChecked()), None)
        if box is not None:
            self.show_in_details(box)
            box.setFocus(Qt.FocusReason.OtherFocusReason)

    def _take_stop(self, answer: ShootAnswer, key: str) -> None:
        """Do what is next, as its button does; on paper nothing is written."""
        stop = answer.stops.next
        if stop is not None and stop.key == key:
            act = self._next_act(answer, stop)
            if not act.why_not(self.held):
                act.act()

    def _move(self, shoot: Shoot, state: str) -> None:
        if (identity := shoot.id) is not None:
            move = partial(self.context.bar.shoots.move, identity, state)  # type: ignore[arg-type]
            self.do(move, say=f"{shoot.theme}: {begun_small(tr(STATE_WORDS[state]))}")  # type: ignore[index]

    def _film(self, shoot: Shoot) -> None:
        if self._is_ahead(shoot):
            film = partial(self._film_today, shoot)
            self._ask_for_today(FilmedAhead(shoot.theme, shoot.on, shoot.id), film)
        else:
            self._move(shoot, "filmed")

    def _log(self, shoot: Shoot) -> None:
        """Before anything is typed that could not be written."""
        if self._is_ahead(shoot):
            log = partial(self._film_today, shoot, self.write_log)
            self._ask_for_today(NotFilmedYet(shoot.theme, shoot.on, shoot.id), log)
        else:
            self.write_log(shoot)

    def _is_ahead(self, shoot: Shoot) -> bool:
        return shoot.on > self.context.bar.snapshot.on

    def _ask_for_today(self, error: FilmedAhead | NotFilmedYet, film: Callable[[], object]) -> None:
        """The day of today is the likely answer: one key takes it."""
        said = tr(error.says, **vars(error) | {"on": day_said(error.on)})
        self.banner.say(said, "error", tr("Filmed today"), film)
        self.banner.focus_action()

    def _film_today(self, shoot: Shoot, then: Callable[[Shoot], object] | None = None) -> None:
        if (identity := shoot.id) is not None:
            self.focus_list()  # the button is about to go
            film = partial(self.context.bar.shoots.film_today, identity)
            today = self.context.bar.snapshot.on
            self.do(
                film,
                then,
                tr(
                    "{theme}: filmed today, {today}, not on {on}",
                    theme=shoot.theme,
                    today=day_said(today),
                    on=day_said(shoot.on),
                ),
            )

    def _prepare_actions(self) -> None:
        log = partial(self._with_current, self._log)
        show = partial(self._with_current, self.on_camera)
        self.list_actions(
            (
                (tr("New shoot…"), "Ctrl+N", "add", self.write_new, False),
                (EDIT, ("Ctrl+E", "F2"), "shoots", self.edit_current, True),
                (REPEAT, "Ctrl+R", "redo", self.repeat_current, True),
                (tr("Log shoot…"), "Ctrl+G", "count", log, True),
                (CAMERA, "F8", "", show, True),
                (SHOPPING, "Ctrl+B", "price", lambda: self.shop(self.current), False),
                (VARIANCES, "", "history", self.show_variances, False),
                (REMOVE, "Delete", "remove", self.remove_current, True),
            )
        )
