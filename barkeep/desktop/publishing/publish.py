"""Print and publish: choose what, see it, then print it, save it or copy it."""

from __future__ import annotations

from collections.abc import Collection, Sequence
from dataclasses import replace
from functools import partial

from PySide6.QtCore import Qt
from PySide6.QtGui import QShowEvent
from PySide6.QtWidgets import QComboBox, QPushButton, QSplitter, QWidget

from barkeep.application.bar import Bar
from barkeep.application.publishing import (
    OF_SPECS,
    PrintChoice,
    house_made,
    job_for,
    text_for,
    text_forms,
)
from barkeep.desktop.look.metrics import UNIT
from barkeep.desktop.publishing import output
from barkeep.desktop.publishing.pages_dialog import PagesDialog, file_name
from barkeep.desktop.publishing.print_options import PrintOptions
from barkeep.desktop.screens.background import Background
from barkeep.desktop.screens.operations import run_operation
from barkeep.desktop.screens.screen import ScreenContext
from barkeep.desktop.screens.window_state import WindowState
from barkeep.desktop.widgets.buttons import button
from barkeep.desktop.widgets.drink_picture import drink_svg
from barkeep.desktop.widgets.labels import text_label
from barkeep.desktop.widgets.layouts import DIALOG, column_of, wide
from barkeep.desktop.widgets.ticks import Tickable, TickList
from barkeep.documents.printed.dates import day_on_paper
from barkeep.documents.printed.templates import Kind
from barkeep.domain.bottles.bottle import Bottle
from barkeep.domain.specs.shown_lines import ingredients_in_brief
from barkeep.domain.specs.spec import Spec
from barkeep.translation import tr, tr_noop

KINDS: tuple[tuple[Kind, str], ...] = (
    ("card", tr_noop("Spec cards")),
    ("menu", tr_noop("Menu")),
    ("description", tr_noop("Descriptions")),
    ("label", tr_noop("Labels of house-made things")),
    ("prep", tr_noop("Prep list")),
)
QUESTION = "publish"
KIND_KEY = "publish/kind"
SIZE = (960, 600)
LIST_WIDTH = 300


def publish(context: ScreenContext, ticked: Collection[str], parent: QWidget) -> None:
    """Open the dialog, the specs of these names ticked."""
    _dialog(context, ticked, parent).open()


def publish_label(bottle: Bottle, context: ScreenContext, parent: QWidget) -> PublishDialog:
    """Open the dialog on the label of one house-made bottle."""
    context.state.keep_text(KIND_KEY, "label")
    dialog = _dialog(context, (), parent)
    dialog.tick_only(bottle)
    dialog.open()
    return dialog


def _dialog(context: ScreenContext, ticked: Collection[str], parent: QWidget) -> PublishDialog:
    bar, state = context.bar, context.state
    dialog = PublishDialog(bar, state, context.background, ticked, parent=parent)
    dialog.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose)
    return dialog


class PublishDialog(PagesDialog):
    """Everything is shown before it leaves; nothing here changes the bar."""

    def __init__(
        self,
        bar: Bar,
        state: WindowState,
        background: Background,
        ticked: Collection[str] = (),
        parent: QWidget | None = None,
    ) -> None:
        super().__init__(bar, background, QUESTION, parent)
        self.setWindowTitle(tr("Print and publish"))
        self.resize(*SIZE)
        self._snapshot, self._state = bar.snapshot, state
        self._shown: PrintChoice | None = None
        self.what = QComboBox()
        self.specs: TickList[Spec] = TickList(tr("Specs to print"), tr("specs"))
        self.bottles: TickList[Bottle] = TickList(tr("House-made things to print"), tr("things"))
        self.options = PrintOptions(state)
        self.copy_button = button(tr("&Copy text"), self.copy_text)
        self.save_button = button(tr("Sa&ve as…"), self.save_as)
        self._lay_out()
        self._offer(ticked)
        self._connect()
        self._show_kind()

    @property
    def kind(self) -> Kind:
        """What kind of document is chosen."""
        kind: Kind = self.what.currentData()
        return kind

    @property
    def choice(self) -> PrintChoice:
        """What is chosen now."""
        options = self.options
        return PrintChoice(
            template=options.chosen_template,
            paper=options.chosen_paper,
            card=options.chosen_size,
            specs=self.specs.ticked if self.kind in OF_SPECS else (),
            bottles=self.bottles.ticked if self.kind not in OF_SPECS else (),
            title=options.title.text().strip(),
            strength=options.strength.isChecked(),
            allergens=options.allergens.isChecked(),
        )

    @property
    def outputs(self) -> Sequence[QPushButton]:
        """The buttons that need finished pages."""
        return (*super().outputs, self.copy_button, self.save_button)

    @property
    def choosers(self) -> Sequence[QWidget]:
        """The widgets in which something else could be chosen."""
        return (self.what, self.specs, self.bottles, self.options)

    # What the user does

    def tick_only(self, bottle: Bottle) -> None:
        """Of the house-made things, tick this one."""
        self._offer_bottles((_bottle_title(bottle),))
        self._renew()

    def copy_text(self) -> None:
        """Put what is shown on the clipboard as text."""
        if self._shown is not None:
            output.copy(text_for(self._shown, self._snapshot))
            self._say(tr("The text was copied"))

    def save_as(self) -> None:
        """Ask for a file and write the specs, or what is said of them, in one of many forms."""
        if self._shown is None or self._job is None:
            return
        forms = text_forms(self.kind)
        offered = f"{file_name(self._job.title)}{forms[0].suffix}"
        name, chosen = output.ask_for_file(self, tr("Save as"), offered, output.filters_of(forms))
        if not name:
            return
        form, shown = output.form_of(name, chosen, forms), replace(self._shown, draw=drink_svg)
        file = output.with_suffix(name, form.suffix)
        run_operation(
            self,
            lambda: self._bar.write_file(file, form.write(shown, self._snapshot)),
            lambda path: self._say(tr("Saved {path}", path=path)),
        )

    # Showing

    def _show_kind(self) -> None:
        kind = self.kind
        self._state.keep_text(KIND_KEY, kind)
        of_specs = kind in OF_SPECS
        self.specs.setVisible(of_specs)
        self.bottles.setVisible(not of_specs)
        self.options.show_kind(kind, self._snapshot.settings.name if kind == "menu" else "")

    def _renew(self) -> None:
        """Show what is chosen now."""
        choice = self.choice
        if choice.empty:
            self._shown = None
            self._show_nothing(self._why_nothing())
            return
        self._show_job(partial(job_for, choice, self._snapshot), partial(self._begun, choice))

    def _begun(self, choice: PrintChoice) -> None:
        self._shown = choice

    def _why_nothing(self) -> str:
        if self.kind in OF_SPECS:
            if self.specs.view.count():
                return tr("Tick at least one spec to see its page here")
            return tr("There is no spec in this bar yet")
        if self.bottles.view.count():
            return tr("Tick at least one house-made thing to see its page here")
        return tr("There is no house-made thing in this bar yet")

    # Building

    def _offer(self, ticked: Collection[str]) -> None:
        tree = self._snapshot.knowledge.tree
        specs = [
            Tickable(each, each.name, ingredients_in_brief(each, tree))
            for each in self._snapshot.all_specs
        ]
        self.specs.offer(specs, ticked)
        self._offer_bottles()
        for kind, words in KINDS:
            self.what.addItem(tr(words), kind)
        kept = self._state.text(KIND_KEY)
        of_others = bool(ticked) and kept not in OF_SPECS
        self.what.setCurrentIndex(0 if of_others else max(0, self.what.findData(kept)))

    def _offer_bottles(self, ticked: Collection[str] | None = None) -> None:
        """The house-made things, all of them ticked unless some are named."""
        things = [Tickable(each, _bottle_title(each)) for each in house_made(self._snapshot)]
        titles = [each.title for each in things]
        self.bottles.offer(things, titles if ticked is None else ticked)

    def _connect(self) -> None:
        self.what.currentIndexChanged.connect(lambda _index: self._show_kind())
        self.options.changed.connect(self._renew)
        self.specs.changed.connect(self._renew)
        self.bottles.changed.connect(self._renew)

    def _lay_out(self) -> None:
        self.print_button.setAutoDefault(False)  # Enter in the search goes to the list
        left, right = QWidget(), QWidget()
        words = text_label(tr("&What to print"))
        words.setBuddy(self.what)
        words.setTextFormat(Qt.TextFormat.AutoText)
        self.what.setAccessibleName(tr("What to print"))
        column_of(
            words, self.what, wide(self.specs), wide(self.bottles), on=left, margins=(0, 0, UNIT, 0)
        )
        column_of(self.options, wide(self.preview), on=right, margins=(UNIT, 0, 0, 0))
        sides = QSplitter(Qt.Orientation.Horizontal)
        sides.setChildrenCollapsible(False)
        sides.addWidget(left)
        sides.addWidget(right)
        sides.setStretchFactor(1, 1)
        sides.setSizes([LIST_WIDTH, SIZE[0] - LIST_WIDTH])
        column_of(
            self.banner,
            wide(sides),
            UNIT,
            self.closing_row(self.copy_button, self.save_button),
            on=self,
            margins=DIALOG,
        )

    def showEvent(self, event: QShowEvent) -> None:
        super().showEvent(event)
        (self.specs if self.kind in OF_SPECS else self.bottles).search.take_focus()


def _bottle_title(bottle: Bottle) -> str:
    name = bottle.product.name
    return (
        tr("{name}, made {day}", name=name, day=day_on_paper(bottle.made)) if bottle.made else name
    )
