"""Make a syrup, juice, cordial or infusion here: what it draws is shown while it is filled in."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import date
from functools import partial

from PySide6.QtCore import QModelIndex, Qt
from PySide6.QtWidgets import (
    QCheckBox,
    QComboBox,
    QHBoxLayout,
    QLineEdit,
    QPlainTextEdit,
    QPushButton,
    QVBoxLayout,
    QWidget,
)

from barkeep.application.done import Done
from barkeep.application.finding import find_ingredient
from barkeep.application.making import InputsShort, NoRecipe
from barkeep.desktop.bottles.labels import read_date
from barkeep.desktop.look.metrics import UNIT, TypeSize, dialog_size
from barkeep.desktop.publishing.publish import publish_label
from barkeep.desktop.screens.form_dialog import FormDialog
from barkeep.desktop.screens.name_completion import NameCompleter, complete_with, makeable_names
from barkeep.desktop.screens.operations import run_operation
from barkeep.desktop.screens.screen import ScreenContext
from barkeep.desktop.widgets.buttons import button, day_field, day_in
from barkeep.desktop.widgets.details import ScrolledPage, add_heading, grid_of_rows
from barkeep.desktop.widgets.labels import copyable, in_danger, text_label
from barkeep.desktop.widgets.layouts import column_of
from barkeep.desktop.widgets.tips import plain_tip
from barkeep.domain.amounts.measures import read_amount
from barkeep.domain.amounts.units import Unit
from barkeep.domain.bar.snapshot import Snapshot
from barkeep.domain.bottles.bottle import Bottle
from barkeep.domain.bottles.level_words import quantity
from barkeep.domain.days import day_said
from barkeep.domain.ingredients.relations import Input, MadeFrom
from barkeep.domain.ingredients.tree import FamilyTree
from barkeep.domain.making.house_made import (
    Making,
    batch_sizes,
    drawn_in_words,
    figures_in_words,
    recipes_for,
    short_in_words,
)
from barkeep.domain.spec_text.recipes import UnusableInput, exactly, read_inputs, write_inputs
from barkeep.errors import InvalidField, UnknownName, UserError, spoken_list
from barkeep.translation import tr, tr_noop


@dataclass(frozen=True, slots=True)
class InputRow:
    """One input: how much, of what, and where it comes from; `short` where it does not do."""

    amount: str
    name: str
    source: str
    short: bool


@dataclass(frozen=True, slots=True)
class MakingView:
    """A batch in words, part by part."""

    inputs: tuple[InputRow, ...]
    short: tuple[str, ...]
    past: tuple[str, ...]
    gives: tuple[str, ...]
    how: str
    cautions: tuple[str, ...]


def making_view(plan: Making, tree: FamilyTree) -> MakingView:
    """The words of a batch."""
    rows = tuple(
        InputRow(
            quantity(each.need, each.unit),
            tree.name(each.ingredient),
            drawn_in_words(each),
            each.short,
        )
        for each in plan.inputs
    )
    comes_to = figures_in_words(plan.figures)
    keeps = (
        tr(
            "Made on {made}, use by {use_by}.",
            made=day_said(plan.made),
            use_by=day_said(plan.use_by),
        )
        if plan.use_by
        else ""
    )
    gives = (comes_to, *plan.figures.unknown, keeps, *plan.notes)
    return MakingView(
        inputs=rows,
        short=tuple(short_in_words(each, tree) for each in plan.short),
        past=plan.past,
        gives=tuple(each for each in gives if each),
        how=tr(plan.recipe.how) if plan.recipe.how else "",
        cautions=plan.cautions,
    )


def recipe_words(recipe: MadeFrom, tree: FamilyTree) -> str:
    """A recipe by what it takes, to choose it by."""
    inputs = spoken_list([tree.in_sentence(each.ingredient) for each in recipe.inputs], "and")
    return (
        tr("Your own: {inputs}", inputs=inputs)
        if recipe.own
        else tr("From {inputs}", inputs=inputs)
    )


def made_words(bottle: Bottle) -> str:
    """What has come on the shelf, and how long it keeps."""
    said = quantity(bottle.level.amount, bottle.product.unit)
    keeps = tr(", use by {use_by}", use_by=day_said(bottle.use_by)) if bottle.use_by else ""
    return tr(
        "{name} is on the shelf: {said}{keeps}.", name=bottle.product.name, said=said, keeps=keeps
    )


LEAST_WIDTH = 360


class MakingPanel(ScrolledPage):
    """Built anew for each batch."""

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(tr("What it takes and gives"), LEAST_WIDTH, parent)

    def say(self, sentence: str) -> None:
        """Show nothing but a sentence: what is still to be filled in."""
        column = self._begin()
        column.addWidget(text_label(sentence, quiet=True, wrap=True))
        column.addStretch(1)

    def show_view(self, view: MakingView) -> None:
        """Show a batch."""
        column = self._begin()
        column.addWidget(text_label(tr("It takes"), TypeSize.STRONG))
        self._add_inputs(column, view)
        for sentence in view.short:
            column.addWidget(in_danger(text_label(sentence, wrap=True)))
        for sentence in view.past:
            column.addWidget(text_label(sentence, quiet=True, wrap=True))
        add_heading(column, tr("It gives"))
        for sentence in view.gives:
            column.addWidget(copyable(sentence))
        if view.how:
            add_heading(column, tr("How"))
            column.addWidget(copyable(view.how))
        if view.cautions:
            add_heading(column, tr("To mind"))
            for sentence in view.cautions:
                column.addWidget(copyable(sentence))
        column.addStretch(1)

    def _add_inputs(self, column: QVBoxLayout, view: MakingView) -> None:
        grid = grid_of_rows()
        grid.setColumnStretch(1, 0)
        grid.setColumnStretch(2, 1)
        top = Qt.AlignmentFlag.AlignTop
        for number, row in enumerate(view.inputs):
            amount = text_label(row.amount)
            amount.setAlignment(Qt.AlignmentFlag.AlignRight | top)
            grid.addWidget(amount, number, 0, top)
            grid.addWidget(text_label(row.name), number, 1, top)
            source = text_label(row.source, quiet=not row.short, wrap=True)
            grid.addWidget(in_danger(source) if row.short else source, number, 2, top)
        column.addLayout(grid)

    def _begin(self) -> QVBoxLayout:
        page = QWidget()
        column = column_of(on=page, margins=(0, 0, UNIT, 0))
        self.show_page(page)
        return column


SIZE = (920, 580)
WHAT, AMOUNT, RECIPE, MADE, USE_BY = (
    tr_noop("ingredient"),
    tr_noop("amount"),
    "recipe",
    "made",
    "use by",
)
INPUTS, YIELDS, HOW, KEEP = "inputs", "yields", "how", "keep"
OWN = (INPUTS, YIELDS, HOW, KEEP)
INTRO = tr_noop(
    "It is drawn from the bottles, and what it makes comes on the shelf with its dates."
)
FIRST = tr_noop("Choose what to make; what it takes and gives is shown here.")
INPUT_LINES, HOW_LINES = 4, 2


@dataclass(frozen=True, slots=True)
class _Wanted:
    """What the fields say."""

    key: str
    amount: float
    recipe: MadeFrom | None
    made: date
    use_by: date | None


class MakeDialog(FormDialog):
    """A batch out of what the bar holds; once it is on the shelf, the dialog stays open."""

    def __init__(
        self,
        context: ScreenContext,
        parent: QWidget | None = None,
        ingredient: str | None = None,
        amount: float | None = None,
    ) -> None:
        super().__init__(tr("Make it here"), tr("Make it"), parent)
        self._context, self._bar = context, context.bar
        self._key: str | None = None
        self.what, self.amount, self.recipe = QLineEdit(), QComboBox(), QComboBox()
        today = self._snapshot.on
        self.made_on = day_field(today, latest=today)
        self.use_by = QLineEdit()
        self.inputs, self.yields = QPlainTextEdit(), QLineEdit()
        self.how, self.keep = QPlainTextEdit(), QCheckBox(tr("&Keep it as my own recipe"))
        self.change_button: QPushButton = button(tr("C&hange the recipe"), self.change_recipe)
        self.forget_button: QPushButton = button(tr("&Forget my recipe"), self.forget_recipe)
        self.panel = MakingPanel()
        self._add_fields()
        self._lay_out_panel()
        self.say_intro(tr(INTRO))
        self.resize(dialog_size(*SIZE))
        if ingredient is not None:
            self.choose(ingredient, amount)
        self._renew()
        self.what.setFocus()

    @property
    def _snapshot(self) -> Snapshot:
        return self._bar.snapshot

    @property
    def _tree(self) -> FamilyTree:
        return self._snapshot.knowledge.tree

    @property
    def changing(self) -> bool:
        """Whether the recipe is being written anew."""
        return not self.inputs.isHidden()

    # What the user does

    def choose(self, key: str, amount: float | None = None) -> None:
        """Take what is to be made, and a batch of it that suits the bar."""
        self._key = key
        self.what.setText(self._tree.name(key))
        self.forgive(WHAT)
        self.unit_label(AMOUNT).setText(self._unit)
        self._offer_recipes()
        self._offer_sizes(amount)
        self._show_own(not self.recipe.count())
        self._renew()

    def change_recipe(self) -> None:
        """Write the recipe anew, begun from the one that is chosen; or leave it as it was."""
        self._show_own(not self.changing)
        self._renew()
        (self.inputs if self.changing else self.recipe).setFocus()

    def forget_recipe(self) -> None:
        """Take the own recipe back; what barkeep knows itself counts again."""
        key = self._key
        if key is None:
            return
        forget = partial(self._bar.knowledge.remove_recipe, key)
        run_operation(self, forget, lambda _done: self.choose(key))

    def submit(self) -> None:
        self.clear_refusal()
        key = self.read(WHAT, self._read_what)
        if key is None:
            self.has_problems()
            return
        if key != self._key:  # it is shown before it is made
            self.choose(key)
            self.amount.setFocus()
            return
        wanted = self._read_fields(key)
        if wanted is None or self.has_problems():
            self.has_problems()
            return
        act = partial(
            self._bar.house.make,
            wanted.key,
            wanted.amount,
            recipe=wanted.recipe,
            made=wanted.made,
            use_by=wanted.use_by,
            keep_recipe=wanted.recipe is not None and self.changing and self.keep.isChecked(),
        )
        run_operation(self, act, self._finish)

    def field_of(self, error: UserError) -> str | None:
        match error:
            case InputsShort():
                return AMOUNT
            case NoRecipe() | UnknownName():
                return WHAT
            case InvalidField(field="yield"):
                return YIELDS
            case InvalidField(field="input"):
                return INPUTS
        return super().field_of(error)

    # Showing

    def _renew(self) -> None:
        """Show the batch as far as the fields say; a mistake in the making is no mistake yet."""
        try:
            self.panel.show_view(making_view(self._plan(), self._tree))
        except UserError as error:
            self.panel.say(tr(FIRST) if self._key is None else str(error))

    def _plan(self) -> Making:
        key = self._read_what()
        made = day_in(self.made_on)
        recipe = self._recipe(key)
        plan = self._bar.house.plan(key, self._read_amount(), recipe=recipe, made=made)
        shown = plan.use_by.isoformat() if plan.use_by else tr("Optional, such as 2026-12-31")
        self.use_by.setPlaceholderText(shown)
        return plan

    def _offer_recipes(self) -> None:
        assert self._key is not None
        self.recipe.blockSignals(True)
        self.recipe.clear()
        for each in recipes_for(self._key, self._snapshot.knowledge):
            self.recipe.addItem(recipe_words(each, self._tree), each)
        self.recipe.blockSignals(False)
        self.recipe.setToolTip(plain_tip(self.recipe.currentText()))

    def _offer_sizes(self, amount: float | None) -> None:
        recipe = self.recipe.currentData()
        sizes = batch_sizes(recipe, self._snapshot) if recipe is not None else ()
        usual = self._tree[self._key or ""].typical_size
        chosen = amount or (recipe.yields if recipe is not None else usual)
        nearest = min(sizes, key=lambda each: abs(each - chosen), default=chosen)
        self.amount.blockSignals(True)
        self.amount.clear()
        for size in sizes:
            self.amount.addItem(quantity(size, self._tree[recipe.made].unit))
        shown = chosen if amount is not None else nearest
        self.amount.setCurrentText(quantity(shown, self._tree[self._key or ""].unit))
        self.amount.blockSignals(False)

    def _show_own(self, shown: bool) -> None:
        for name in OWN:
            field = self.fields[name]
            field.label.setVisible(shown and name != KEEP)
            field.widget.setVisible(shown)
            self.forgive(name)
        self.fields[RECIPE].label.setVisible(not shown)
        self.recipe.setVisible(not shown)
        can_leave = self.recipe.count() > 0
        self.change_button.setText(
            tr("Leave the recipe &as it was") if shown else tr("C&hange the recipe")
        )
        self.change_button.setAccessibleName(self.change_button.text().replace("&", ""))
        self.change_button.setEnabled(self._key is not None and (can_leave or not shown))
        recipe = self.recipe.currentData()
        self.forget_button.setVisible(not shown and recipe is not None and recipe.own)
        if shown:
            self._fill_own(recipe)

    def _fill_own(self, recipe: MadeFrom | None) -> None:
        """Begin from a recipe, or from nothing."""
        self.inputs.setPlainText(write_inputs(recipe, self._tree) if recipe else "")
        self.yields.setText(exactly(recipe.yields, self._made_unit) if recipe else "")
        self.how.setPlainText(recipe.how if recipe else "")

    @property
    def _unit(self) -> str:
        unit = self._made_unit
        return tr("pieces") if unit == "each" else unit

    @property
    def _made_unit(self) -> Unit:
        return self._tree[self._key].unit if self._key is not None else "ml"

    # Reading

    def _read_fields(self, key: str) -> _Wanted | None:
        amount = self.read(AMOUNT, self._read_amount)
        recipe = self._read_recipe(key)
        last = self.use_by.text().strip()
        use_by = self.read(USE_BY, lambda: read_date(last)) if last else None
        if amount is None:
            return None
        return _Wanted(
            key=key, amount=amount, recipe=recipe, made=day_in(self.made_on), use_by=use_by
        )

    def _read_what(self) -> str:
        text = self.what.text().strip()
        if not text:
            raise InvalidField(WHAT, "", tr("say what to make"))
        return find_ingredient(self._tree, text)

    def _read_amount(self) -> float:
        return read_amount(
            self.amount.currentText(), self._made_unit, self._snapshot.settings.units
        )

    def _read_recipe(self, key: str) -> MadeFrom | None:
        """The recipe; a line or a yield that cannot be used is said below its own field."""
        if not self.changing:
            return self._recipe(key)
        self.read(INPUTS, self._read_inputs)
        self.read(YIELDS, self._read_yields)
        return None if self.has_problems() else self._recipe(key)

    def _recipe(self, key: str) -> MadeFrom | None:
        if self.changing:
            how = self.how.toPlainText()
            return MadeFrom(key, self._read_inputs(), self._read_yields(), how)
        chosen: MadeFrom | None = self.recipe.currentData()
        return chosen if chosen is not None and chosen.made == key else None

    def _read_inputs(self) -> tuple[Input, ...]:
        inputs = read_inputs(self.inputs.toPlainText(), self._tree, self._snapshot.settings.units)
        if not inputs:
            raise UnusableInput(1, "", tr("write what it takes, such as 500 g sugar"))
        return inputs

    def _read_yields(self) -> float:
        return read_amount(self.yields.text(), self._made_unit, self._snapshot.settings.units)

    # Building

    def _add_fields(self) -> None:
        self.what.setPlaceholderText(tr("Begin to type, such as simple syrup"))
        self.add_field(WHAT, tr("&What"), self.what)
        self.amount.setEditable(True)
        self.amount.setInsertPolicy(QComboBox.InsertPolicy.NoInsert)
        self.amount.setCompleter(None)  # type: ignore[arg-type]
        self.add_field(AMOUNT, tr("A&mount"), self.amount, tr("pieces"))
        word = self.unit_label(AMOUNT)
        word.setMinimumWidth(word.sizeHint().width())
        word.setText("ml")
        self.recipe.setSizeAdjustPolicy(
            QComboBox.SizeAdjustPolicy.AdjustToMinimumContentsLengthWithIcon
        )
        self.recipe.setMinimumContentsLength(18)
        self.add_field(RECIPE, tr("&Recipe"), self.recipe)
        self._add_own_fields()
        row = QHBoxLayout()
        for each in (self.change_button, self.forget_button):
            each.setAutoDefault(False)
            row.addWidget(each)
        self.form.addLayout(row, 3 * len(self.fields), 1)
        self.fields["change"] = self.fields[RECIPE]  # its row in the grid is taken
        self.add_field(MADE, tr("Ma&de on"), self.made_on)
        self.add_field(USE_BY, tr("&Use by"), self.use_by)
        del self.fields["change"]
        self._show_own(False)
        self._connect()

    def _lay_out_panel(self) -> None:
        self.body.addWidget(self.panel, 1)
        column = self.layout()
        assert isinstance(column, QVBoxLayout)
        column.setStretchFactor(self.body, 100)  # the panel takes all the height there is

    def _add_own_fields(self) -> None:
        for edit, lines in ((self.inputs, INPUT_LINES), (self.how, HOW_LINES)):
            edit.setTabChangesFocus(True)
            edit.setFixedHeight(lines * edit.fontMetrics().lineSpacing() + 20)
        self.inputs.setPlaceholderText(tr("500 g sugar\n500 ml water"))
        self.add_field(INPUTS, tr("It &takes"), self.inputs, tall=True)
        self.yields.setPlaceholderText(tr("Such as 800 ml"))
        self.add_field(YIELDS, tr("It &yields"), self.yields)
        self.add_field(HOW, tr("H&ow"), self.how, tall=True)
        self.keep.setChecked(True)
        self.add_field(KEEP, tr("Keep"), self.keep)
        self.keep.setAccessibleName(tr("Keep it as my own recipe"))

    def _connect(self) -> None:
        names = makeable_names(self._snapshot.knowledge, self._snapshot.owned)
        completer = NameCompleter(names, self)
        complete_with(self.what, completer, self._on_completed)
        self.what.editingFinished.connect(self._on_what_left)
        self.amount.editTextChanged.connect(lambda _text: self._on_edited(AMOUNT))
        self.recipe.currentIndexChanged.connect(lambda _index: self._on_recipe())
        self.inputs.textChanged.connect(lambda: self._on_edited(INPUTS))
        self.yields.textChanged.connect(lambda _text: self._on_edited(YIELDS))
        self.how.textChanged.connect(lambda: self._on_edited(HOW))
        self.made_on.dateChanged.connect(lambda _date: self._on_edited(MADE))

    def _on_completed(self, index: QModelIndex) -> None:
        self.choose(str(NameCompleter.value(index)))

    def _on_what_left(self) -> None:
        key = self._tree.called(self.what.text())
        if key is not None and key != self._key and not self.what.hasFocus():
            self.choose(key)

    def _on_recipe(self) -> None:
        self.recipe.setToolTip(plain_tip(self.recipe.currentText()))
        self._renew()

    def _on_edited(self, name: str) -> None:
        self.forgive(name)
        self._renew()

    def _finish(self, done: Done[Bottle]) -> None:
        bottle = done.value
        self.cancel_button.setText(tr("Close"))
        self.cancel_button.setAccessibleName(tr("Close"))
        self._offer_recipes()
        self._show_own(False)
        self._renew()
        label = partial(publish_label, bottle, self._context, self)
        self.banner.say(made_words(bottle), "done", tr("Print its label…"), label)
        self._fit()
