"""One serve made many: to serves, a volume, a vessel, or from all there is of one ingredient."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass

from PySide6.QtCore import Qt
from PySide6.QtGui import QGuiApplication
from PySide6.QtWidgets import (
    QAbstractItemView,
    QComboBox,
    QDialog,
    QHBoxLayout,
    QHeaderView,
    QLineEdit,
    QScrollArea,
    QTableWidget,
    QTableWidgetItem,
    QWidget,
)

from barkeep.desktop.drink.all_cautions import ALL_CAUTIONS, AllCautionsDialog
from barkeep.desktop.look.metrics import PAD, UNIT, TypeSize, dialog_size
from barkeep.desktop.screens.list_stack import look_like_a_list
from barkeep.desktop.screens.screen import ScreenContext
from barkeep.desktop.widgets.buttons import accept_by_keys, button
from barkeep.desktop.widgets.labels import text_label
from barkeep.desktop.widgets.layouts import Card, column_of, wide
from barkeep.desktop.widgets.notices import Banner
from barkeep.desktop.widgets.tips import plain_tip
from barkeep.domain.amounts.amount import parse_amount
from barkeep.domain.amounts.measures import show_quantity, to_quantity
from barkeep.domain.amounts.rounding import rounded_down
from barkeep.domain.amounts.units import Unit
from barkeep.domain.bar.snapshot import Snapshot
from barkeep.domain.bottles.level_words import quantity
from barkeep.domain.cautions.caution_words import cautions_in_brief
from barkeep.domain.drink.analysis import analyse
from barkeep.domain.making.available import all_there_is
from barkeep.domain.making.batch_measures import (
    ForServes,
    ForVolume,
    FromIngredient,
    Target,
    called,
    kind_poured,
)
from barkeep.domain.making.batches import Batch, Served, batch, usually_served
from barkeep.domain.making.portions import (
    NoRounds,
    in_bottles,
    past_inputs,
    shipped_vessel_kinds,
    tin_rounds,
    whole_bottles,
)
from barkeep.domain.specs.called import named_by
from barkeep.domain.specs.glasses import Glass, shipped_glassware
from barkeep.domain.specs.spec import Spec
from barkeep.errors import AmountError, UserError
from barkeep.translation import tr, tr_noop

COLUMNS = (
    tr_noop("Ingredient"),
    tr_noop("Exact"),
    tr_noop("Measure"),
    tr_noop("Whole bottles"),
    tr_noop("To know"),
)
HOW = {
    "cold": tr_noop("cold"),
    "over_ice": tr_noop("over ice"),
    "hot": tr_noop("hot"),
    "frozen": tr_noop("from the freezer"),
}


@dataclass(frozen=True, slots=True)
class BatchView:
    """A batch in words: a headline, a row a line, and sentences below."""

    headline: str
    rows: tuple[tuple[str, ...], ...]
    sentences: tuple[str, ...]
    cautions: tuple[str, ...]

    @property
    def as_text(self) -> str:
        """All of it as plain text, to be pasted."""
        rows = (
            "\t".join((row[2], row[0], *(each for each in row[3:] if each))) for row in self.rows
        )
        cautions = (f"! {each}" for each in self.cautions)
        return "\n".join((self.headline, "", *rows, "", *self.sentences, *cautions)) + "\n"


def batch_view(made: Batch, snapshot: Snapshot, tin: Glass | None) -> BatchView:
    """A batch as the dialog shows it; with a tin, the rounds through it as well."""
    headline = tr(
        "{name}: {serves} of {serve_ml:.0f} ml, {how}",
        name=made.spec.name,
        serves=made.serves_in_words,
        serve_ml=made.serve_ml,
        how=tr(HOW[made.served]),
    )
    return BatchView(
        headline,
        tuple(_rows(made, snapshot)),
        tuple(_sentences(made, snapshot, tin)),
        cautions_in_brief(made.cautions),
    )


def _rows(made: Batch, snapshot: Snapshot) -> Iterator[tuple[str, ...]]:
    tree, bottles = snapshot.knowledge.tree, whole_bottles(made, snapshot)
    short = {each.ingredient: each for each in made.short}
    for line in made.lines:
        whole = bottles.get(line.ingredient)
        lacking = short.get(line.ingredient)
        there = (
            tr("only {amount} there", amount=_at_most(lacking.have, lacking.unit))
            if lacking
            else ""
        )
        kind = kind_poured(line, tree)
        yield (
            f"{called(line, tree)} ({kind})" if kind else called(line, tree),
            quantity(line.exact, line.unit)
            if line.most is None
            else _at_most(line.exact, line.unit),
            show_quantity(line.amount, line.unit),
            in_bottles(whole, snapshot) if whole else "",
            "; ".join(each for each in (there, line.remark) if each),
        )
    if made.water_ml:
        measure = show_quantity(made.water_ml, "ml")
        yield (tr("Water"), measure, measure, "", tr("in place of what ice would give"))


def _at_most(amount: float, unit: Unit) -> str:
    """An amount in words that are no more than it."""
    return show_quantity(rounded_down(amount, unit), unit)


def _sentences(made: Batch, snapshot: Snapshot, tin: Glass | None) -> Iterator[str]:
    strength = (
        ""
        if made.abv_percent is None
        else tr(", {abv_percent:.1f} % vol", abv_percent=made.abv_percent)
    )
    drinks = made.standard_drinks_per_serve
    each = "" if drinks is None else tr(", {drinks:.1f} standard drinks a serve", drinks=drinks)
    yield f"{made.total_in_words}{strength}{each}."
    yield from past_inputs(made, snapshot)
    yield from made.notes
    if tin is not None:
        yield _rounds_in_words(made, tin)


def _rounds_in_words(made: Batch, tin: Glass) -> str:
    """The rounds, or why there are none; the batch itself stands either way."""
    try:
        return tin_rounds(made, tin).sentence
    except NoRounds as error:
        return str(error)


SIZE = (940, 600)
WORDS_HEIGHT = 176
SERVES, VOLUME, FROM = "serves", "volume", "from:"
VESSEL = "vessel:"
NO_TIN = tr_noop("No tin: all in one")


class BatchDialog(QDialog):
    """Everything is worked out again with each change; nothing is written."""

    def __init__(self, context: ScreenContext, spec: Spec, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        accept_by_keys(self)
        self._context, self._spec = context, spec
        self._snapshot = context.bar.snapshot
        self.view: BatchView | None = None
        self.setWindowTitle(tr("Batch of {name}", name=spec.name))
        self.target = QComboBox()
        self.amount = QLineEdit("10")
        self.served = QComboBox()
        self.tin = QComboBox()
        self.banner = Banner(closable=False)
        self.headline = text_label("", TypeSize.STRONG, wrap=True)
        self.table = QTableWidget(0, len(COLUMNS))
        self.words = text_label("", wrap=True)
        self.copy_button = button(tr("&Copy as text"), self.copy)
        self.cautions_button = button(tr(ALL_CAUTIONS), self.show_all_cautions)
        self.close_button = button(tr("C&lose"), self.reject)
        self._fill_choices()
        self._lay_out()
        self.resize(dialog_size(*SIZE))
        self.target.currentIndexChanged.connect(lambda _at: self._on_target())
        self.amount.textChanged.connect(lambda _text: self.work_out())
        for box in (self.served, self.tin):
            box.currentIndexChanged.connect(lambda _at: self.work_out())
        self.work_out()
        self.amount.setFocus()
        self.amount.selectAll()

    def choose(self, target: str, amount: str) -> None:
        """Ask for another target, by its key, and an amount of it."""
        self.target.setCurrentIndex(self.target.findData(target))
        self.amount.setText(amount)

    def copy(self) -> None:
        """Put the batch on the clipboard as text."""
        if self.view is not None:
            QGuiApplication.clipboard().setText(self.view.as_text)
            self.banner.say(tr("Copied"), "info")

    def show_all_cautions(self) -> None:
        """Show every caution of the drink, with its authority."""
        one = analyse(self._spec, self._snapshot)
        AllCautionsDialog(self._spec.name, one.minded, one.general_cautions, self).open()

    def work_out(self) -> None:
        """Scale the spec to what is asked for, or say why it cannot be."""
        served: Served = self.served.currentData()
        try:
            tin = self.tin.currentData()
            made = batch(self._spec, self._snapshot, self._target(), served, tin=tin)
            self.view = batch_view(made, self._snapshot, tin)
        except UserError as error:
            self.view = None
            self.banner.say(str(error), "error")
        else:
            self.banner.clear()
        self._show()

    def _target(self) -> Target:
        key, text = self.target.currentData(), self.amount.text()
        units = self._snapshot.settings.units
        if key == SERVES:
            amount = parse_amount(text)
            if amount.unit != "each" or amount.high is not None:
                raise AmountError(text, tr("write one number of serves, such as 12"))
            return ForServes(amount.value)
        if key.startswith(FROM):
            ingredient = key.removeprefix(FROM)
            unit = self._snapshot.knowledge.tree[ingredient].unit
            amount = parse_amount(text, units)
            return FromIngredient(ingredient, to_quantity(amount, unit, units))
        volume_ml = to_quantity(parse_amount(text, units), "ml", units)
        if key == VOLUME:
            return ForVolume(volume_ml)
        return shipped_vessel_kinds()[key.removeprefix(VESSEL)].target(volume_ml)

    def _fill_choices(self) -> None:
        tree = self._snapshot.knowledge.tree
        self.target.addItem(tr("So many serves"), SERVES)
        self.target.addItem(tr("A volume in all"), VOLUME)
        for kind in shipped_vessel_kinds().values():
            words = tr(
                "A {vessel} of this size ({room:.0f} % left free {why})",
                vessel=tr(kind.name),
                room=100 * kind.room,
                why=tr(kind.why),
            )
            self.target.addItem(words, VESSEL + kind.key)
        named = named_by(self._spec.lines, tree)
        for key in self._pivots():
            words = tr("From so much {what}", what=named.in_sentence(key))
            self.target.addItem(words, FROM + key)
        for served, words in HOW.items():
            self.served.addItem(tr("Served {how}", how=tr(words)), served)
        self.served.setCurrentIndex(self.served.findData(usually_served(self._spec, tree)))
        self.tin.addItem(tr(NO_TIN), None)
        for glass in shipped_glassware().glasses.values():
            if glass.kind in ("tin", "mixing_glass"):
                self.tin.addItem(tr("In rounds through a {tin}", tin=tr(glass.name)), glass)

    def _pivots(self) -> tuple[str, ...]:
        """What the drink is poured from, each once."""
        contents = analyse(self._spec, self._snapshot).contents
        return tuple(dict.fromkeys(each.pour.ingredient for each in contents if each.quantity))

    def _on_target(self) -> None:
        """Offer an amount that goes with the target; for an ingredient, all there is of it."""
        key, tree = self.target.currentData(), self._snapshot.knowledge.tree
        offered = {SERVES: "10", VOLUME: "3 l"}.get(key, "")
        if key.startswith(VESSEL):
            size_ml = shipped_vessel_kinds()[key.removeprefix(VESSEL)].size_ml
            offered = quantity(size_ml, "ml")
        elif key.startswith(FROM):
            ingredient = key.removeprefix(FROM)
            unit = tree[ingredient].unit
            have = all_there_is(ingredient, self._snapshot)
            there = rounded_down(have, unit) or tree[ingredient].typical_size
            offered = show_quantity(there, unit)
        self.amount.setText(offered)

    def _show(self) -> None:
        view = self.view
        self.copy_button.setEnabled(view is not None)
        self.headline.setText(view.headline if view else "")
        self.words.setText("\n".join((*view.sentences, *view.cautions)) if view else "")
        rows = view.rows if view else ()
        self.table.setRowCount(len(rows))
        for number, row in enumerate(rows):
            for column, text in enumerate(row):
                item = QTableWidgetItem(text)
                item.setToolTip(plain_tip(text))
                if column in (1, 2):
                    right = Qt.AlignmentFlag.AlignRight | Qt.AlignmentFlag.AlignVCenter
                    item.setTextAlignment(right)
                self.table.setItem(number, column, item)

    def _lay_out(self) -> None:
        named = (
            (self.target, tr("What to make")),
            (self.amount, tr("How much")),
            (self.served, tr("How it is served")),
            (self.tin, tr("Tin")),
            (self.table, tr("What goes in")),
        )
        for widget, name in named:
            widget.setAccessibleName(name)
        self._prepare_table()
        first, second, last = QHBoxLayout(), QHBoxLayout(), QHBoxLayout()
        for row in (first, second, last):
            row.setSpacing(UNIT)
        first.addWidget(self.target, 3)
        first.addWidget(self.amount, 1)
        second.addWidget(self.served, 1)
        second.addWidget(self.tin, 1)
        last.addWidget(self.copy_button)
        last.addWidget(self.cautions_button)
        last.addStretch(1)
        last.addWidget(self.close_button)
        for each in (self.copy_button, self.cautions_button, self.close_button):
            each.setAutoDefault(False)
        for box in (self.target, self.served, self.tin):
            box.setSizeAdjustPolicy(
                QComboBox.SizeAdjustPolicy.AdjustToMinimumContentsLengthWithIcon
            )
            box.setMinimumContentsLength(16)
        column_of(
            text_label(self.windowTitle(), TypeSize.SUBTITLE, wrap=True),
            first,
            second,
            self.banner,
            self.headline,
            wide(Card(self.table)),
            self._below(),
            last,
            on=self,
            margins=PAD,
        )

    def _below(self) -> QScrollArea:
        """The sentences, which scroll where they are many."""
        area = QScrollArea()
        area.setFrameShape(QScrollArea.Shape.NoFrame)
        area.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        area.setWidgetResizable(True)
        area.setWidget(self.words)
        area.setAccessibleName(tr("What to know"))
        area.setFixedHeight(WORDS_HEIGHT)
        self.words.setAlignment(Qt.AlignmentFlag.AlignTop)
        return area

    def _prepare_table(self) -> None:
        self.table.setHorizontalHeaderLabels([tr(each) for each in COLUMNS])
        look_like_a_list(self.table, low=True)
        self.table.setEditTriggers(QAbstractItemView.EditTrigger.NoEditTriggers)
        self.table.setSelectionBehavior(QAbstractItemView.SelectionBehavior.SelectRows)
        header = self.table.horizontalHeader()
        header.setDefaultAlignment(Qt.AlignmentFlag.AlignLeft | Qt.AlignmentFlag.AlignVCenter)
        header.setSectionResizeMode(QHeaderView.ResizeMode.ResizeToContents)
        header.setSectionResizeMode(len(COLUMNS) - 1, QHeaderView.ResizeMode.Stretch)
        self.table.setMinimumHeight(160)


def open_batch(context: ScreenContext, spec: Spec, parent: QWidget) -> BatchDialog:
    """Show a spec made many."""
    dialog = BatchDialog(context, spec, parent)
    dialog.open()
    return dialog
