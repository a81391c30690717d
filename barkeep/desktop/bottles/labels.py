"""Dialogs about a label: a bottle put on the shelf, a label corrected, and the fields of both."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from dataclasses import dataclass, replace
from datetime import date
from functools import partial

from PySide6.QtCore import QModelIndex, Qt, Signal
from PySide6.QtWidgets import QCheckBox, QComboBox, QLineEdit, QWidget

from barkeep.application.bar import Bar
from barkeep.application.done import Done
from barkeep.application.finding import find_ingredient
from barkeep.application.shopping import read_money
from barkeep.desktop.ingredients.teaching import teach
from barkeep.desktop.look.metrics import dialog_width
from barkeep.desktop.screens.form_dialog import FormDialog, read_number
from barkeep.desktop.screens.name_completion import (
    NameCompleter,
    complete_with,
    ingredient_names,
    product_names,
)
from barkeep.desktop.screens.operations import run_operation
from barkeep.desktop.widgets.buttons import button
from barkeep.domain.amounts.measures import read_amount
from barkeep.domain.amounts.units import Unit
from barkeep.domain.bottles.bottle import Bottle, BottleFacts, Label, Product
from barkeep.domain.bottles.containers import container_for, like_tare
from barkeep.domain.bottles.level_words import number
from barkeep.domain.bottles.levels import MeasuredLevel, parse_level
from barkeep.domain.bottles.package_sizes import PackageSize, package_size
from barkeep.domain.bottles.paid import Payment
from barkeep.domain.bottles.shapes import shipped_shapes
from barkeep.domain.liquids.ethanol import read_strength
from barkeep.domain.phrases import capitalised, folded
from barkeep.errors import DuplicateName, InvalidField, LevelAboveSize, UnknownName, UserError
from barkeep.translation import tr, tr_noop

TEXTS = ("name", "maker", "ingredient", "size", "strength", "sugar", "price", "barcode")
ACID = "acid"
NEW_INGREDIENT = tr_noop("New ingredient…")
USUAL_SHAPE = tr_noop("The usual one of its kind and size")


class LabelFields:
    """Adds its fields to a form and reads them; mistakes are said below the fields there.

    Acid is asked for where `with_acid`: few labels say it, and a form has little room.
    """

    def __init__(self, form: FormDialog, bar: Bar, *, with_acid: bool = False) -> None:
        snapshot = bar.snapshot
        self._form, self._bar = form, bar
        self._tree = snapshot.knowledge.tree
        self._units = snapshot.settings.units
        names = (*TEXTS, ACID) if with_acid else TEXTS
        self.edits: Mapping[str, QLineEdit] = {name: QLineEdit() for name in names}
        self.shape = _shape_choice()
        self.house_made = QCheckBox(tr("Made here"))
        self.teach_button = button(tr("Ne&w…"), self.teach)
        self.teach_button.setAccessibleName(tr(NEW_INGREDIENT))
        self.teach_button.setToolTip(tr("New ingredient…, or another name for one that is known"))
        self.teach_button.setAutoDefault(False)
        self._add(snapshot.settings.currency)
        self._offer_names()
        self.edits["ingredient"].editingFinished.connect(self._on_ingredient_left)
        self.edits["size"].textChanged.connect(lambda _text: self._say_weight())
        form.add_action("ingredient", self.teach_button)

    def fill(self, product: Product) -> None:
        """Show what is known of a product."""
        shown = {
            "name": product.name,
            "maker": product.maker,
            "ingredient": self._tree.name(product.ingredient),
            "size": _shown(product.size),
            "strength": _shown_strength(product.abv_percent),
            "sugar": _shown(product.sugar_g_per_l),
            ACID: _shown(product.acid_g_per_l),
            "price": "" if product.price is None else f"{product.price:.2f}",
            "barcode": product.barcode,
        }
        for name, edit in self.edits.items():
            edit.setText(shown[name])
            self._form.forgive(name)
        self.shape.setCurrentIndex(max(0, self.shape.findData(product.shape)))
        self.house_made.setChecked(product.house_made)
        self._show_unit(product.unit)

    def open(self, is_open: bool, *, apart_from: str = "") -> None:
        """Let the fields be written in, or only be read."""
        for name, edit in self.edits.items():
            edit.setEnabled(is_open or name == apart_from)
        self.shape.setEnabled(is_open)
        self.teach_button.setEnabled(is_open)
        self.house_made.setEnabled(is_open)

    def choose_ingredient(self, key: str) -> None:
        """Take an ingredient and what is usual for it, where nothing else is written."""
        ingredient = self._tree[key]
        self.edits["ingredient"].setText(self._tree.name(key))
        self._form.forgive("ingredient")
        self._say_weight()
        self.edits["size"].setPlaceholderText(number(ingredient.typical_size, ingredient.unit))
        usual = {
            "strength": ingredient.abv_percent,
            "sugar": ingredient.sugar_g_per_l,
            ACID: ingredient.acid_g_per_l,
        }
        for name in usual.keys() & self.edits.keys():
            value = _shown(usual[name])
            self.edits[name].setPlaceholderText(
                tr("Usual: {value}", value=value) if usual[name] else ""
            )

    def teach(self) -> None:
        """Ask what the ingredient that is written is, where the bar does not know it."""
        written = self.edits["ingredient"].text().strip()
        words = "" if folded(written) in self._tree.by_name else written
        teach(self._bar, words, self._form, self._on_taught)

    def _on_taught(self, key: str) -> None:
        self._tree = self._bar.snapshot.knowledge.tree
        self._offer_names()
        self.choose_ingredient(key)
        self.edits["ingredient"].setFocus(Qt.FocusReason.OtherFocusReason)

    def _offer_names(self) -> None:
        completer = NameCompleter(
            ingredient_names(self._tree, self._bar.snapshot.owned), self._form
        )
        complete_with(self.edits["ingredient"], completer, self._on_ingredient)

    def read(self) -> Label | None:
        """What the fields say of a product; None where one of them cannot be used."""
        text = {name: edit.text().strip() for name, edit in self.edits.items()}
        if not text["name"]:
            self._form.refuse("name", tr("A product needs a name."))
        key = self._key(text["ingredient"])
        unit: Unit = self._tree[key].unit if key else "ml"
        size = self._form.read("size", lambda: self._size(text["size"], key, unit))
        written = text["strength"]
        strength = self._form.read("strength", lambda: read_strength(written)) if written else None
        sugar = self._number("sugar", "20")
        price = self._number("price", "24.50")
        acid = self._number(ACID, "45") if ACID in self.edits else None
        wrong = any(self._form.problem(name) for name in self.edits)
        if key is None or size is None or wrong:
            return None
        return Label(
            name=text["name"],
            maker=text["maker"],
            ingredient=key,
            size=size,
            unit=unit,
            abv_percent=strength,
            sugar_g_per_l=sugar,
            price=price,
            barcode=text["barcode"],
            house_made=self.house_made.isChecked(),
            shape=self.shape.currentData() if unit == "ml" else None,
            acid_g_per_l=acid,
        )

    def _add(self, currency: str) -> None:
        add, edits = self._form.add_field, self.edits
        labels = {
            "name": (tr("&Name"), ""),
            "maker": (tr("&Maker"), ""),
            "ingredient": (tr("&Ingredient"), ""),
            "size": (tr("&Size"), "ml"),
            "strength": (tr("S&trength"), "% vol"),
            "sugar": (tr("S&ugar"), tr("g per litre")),
            ACID: (tr("Aci&d"), tr("g per litre")),
        }
        for name in (each for each in labels if each in edits):
            add(name, labels[name][0], edits[name], labels[name][1])
        add("shape", tr("S&hape"), self.shape)
        add("price", tr("&Price"), edits["price"], currency)
        add("barcode", tr("&Barcode"), edits["barcode"])
        add("house_made", "", self.house_made)
        self.house_made.setAccessibleName(tr("Made here"))

    def _key(self, name: str) -> str | None:
        if name:
            return self._form.read("ingredient", partial(find_ingredient, self._tree, name))
        self._form.refuse("ingredient", tr("Say what it is, such as London dry gin."))
        return None

    def _number(self, name: str, example: str) -> float | None:
        text = self.edits[name].text()
        return self._form.read(name, lambda: read_number(name, text, example))

    def _size(self, text: str, key: str | None, unit: Unit) -> float:
        if not text and key is not None:
            return self._tree[key].typical_size
        if key is None or not any(letter.isalpha() for letter in text):
            return read_amount(text, unit, self._units)
        return self._on_package(text, key).amount

    def _on_package(self, text: str, key: str) -> PackageSize:
        return package_size(text, key, self._tree, self._units)

    def _show_unit(self, unit: Unit) -> None:
        self._form.unit_label("size").setText(tr("pieces") if unit == "each" else unit)

    def _say_weight(self) -> None:
        """Behind a size that is written as a weight, what it comes to."""
        key = self._tree.called(self.edits["ingredient"].text())
        if key is None:
            return
        unit = self._tree[key].unit
        try:
            found = self._on_package(self.edits["size"].text(), key)
        except UserError:
            found = PackageSize(0.0)
        self._show_unit(unit)
        if found.said:
            self._form.unit_label("size").setText(f"= {number(round(found.amount), unit)} {unit}")

    def _on_ingredient(self, index: QModelIndex) -> None:
        self.choose_ingredient(str(NameCompleter.value(index)))

    def _on_ingredient_left(self) -> None:
        key = self._tree.called(self.edits["ingredient"].text())
        if key is not None:
            self.choose_ingredient(key)


def _of_a_label(error: UserError, *, too_much: str) -> str | None:
    """The field a refusal is about; `too_much` is the one that says how much there is."""
    match error:
        case UnknownName():
            return "ingredient"
        case DuplicateName():
            return "name"
        case LevelAboveSize():
            return too_much
    return None


def _shape_choice() -> QComboBox:
    box = QComboBox()
    box.addItem(tr(USUAL_SHAPE), None)
    for key, shape in shipped_shapes().items():
        box.addItem(capitalised(shape.name_said), key)
        box.setItemData(box.count() - 1, shape.about_said, Qt.ItemDataRole.ToolTipRole)
    box.setMaxVisibleItems(box.count())
    return box


def _shown_strength(value: float | None) -> str:
    """As it is read again: a bare number below 1 would be asked about."""
    return f"{_shown(value)} %" if value and value < 1.0 else _shown(value)


def _shown(value: float | None) -> str:
    return "" if value is None else f"{value:g}"


WIDTH = 560
NEW = tr_noop("Begin to type: what the bar knows is offered; anything else is a new product.")
KNOWN = tr_noop(
    "The bar knows this product, so only the bottle is new. Change the name for another one."
)


@dataclass(frozen=True, slots=True)
class _There:
    """What is in the bottle, None for full, what else is written of it, and what was paid."""

    amount: float | None
    facts: BottleFacts
    payment: Payment | None


class AddBottleDialog(FormDialog):
    """`added` carries the bottle."""

    scrolls = True
    added = Signal(object)

    def __init__(self, bar: Bar, parent: QWidget | None = None) -> None:
        super().__init__(tr("Add a bottle"), tr("Add bottle"), parent)
        self._bar = bar
        self.known: Product | None = None
        """The product that was chosen from what the bar knows."""
        self.label = LabelFields(self, bar)
        own = ("level", "use by", "paid", "shop")
        self.edits = {**self.label.edits, **{name: QLineEdit() for name in own}}
        self._add_fields()
        self._complete()
        self.say_intro(NEW)
        self.setMinimumWidth(dialog_width(WIDTH))
        self.edits["name"].setFocus()

    def submit(self) -> None:
        inventory = self._bar.inventory
        known = self.known
        if known is not None:
            there = self._read_there(known)
            self._receive(
                lambda: inventory.receive(known.id, there.amount, there.facts, there.payment)
            )
            return
        draft = self.label.read()
        there = self._read_there(draft)
        if draft is None:
            self.has_problems()
            return
        self._receive(
            lambda: inventory.receive_new(draft, there.amount, there.facts, there.payment)
        )

    def field_of(self, error: UserError) -> str | None:
        return _of_a_label(error, too_much="level") or super().field_of(error)

    def choose_product(self, product: Product) -> None:
        """Fill the form from a product the bar knows; only the bottle stays open."""
        self.known = product
        self.label.fill(product)
        self.label.open(False, apart_from="name")
        self.say_intro(KNOWN)
        self.edits["level"].setFocus()

    def begin_with_code(self, code: str) -> None:
        """Begin with the barcode of what nobody has yet; its name comes next."""
        self.edits["barcode"].setText(code)
        self.say_intro(f"{tr('No bottle has the barcode {code} yet.', code=code)} {tr(NEW)}")

    def _add_fields(self) -> None:
        self.add_field("level", tr("&Left in it"), self.edits["level"])
        self.edits["level"].setPlaceholderText(tr("Full; or such as 0.5, 350 ml or 11.5 cm high"))
        self.add_field("use by", tr("Us&e by"), self.edits["use by"])
        self.edits["use by"].setPlaceholderText(
            tr("Optional, such as {day}", day=self._bar.snapshot.on)
        )
        self.add_field(
            "paid", tr("Pai&d"), self.edits["paid"], self._bar.snapshot.settings.currency
        )
        self.edits["paid"].setPlaceholderText(tr("Optional: what this one cost, such as 24.50"))
        self.add_field("shop", tr("Sh&op"), self.edits["shop"])
        self.edits["shop"].setPlaceholderText(tr("Optional: where it was bought"))

    def _complete(self) -> None:
        products = NameCompleter(product_names(self._bar.snapshot.products), self, free=True)
        complete_with(self.edits["name"], products, self._on_product)
        self.edits["name"].textEdited.connect(self._on_name_edited)

    def _on_product(self, index: QModelIndex) -> None:
        product = NameCompleter.value(index)
        if isinstance(product, Product):
            self.choose_product(product)

    def _on_name_edited(self, _text: str) -> None:
        """Another name is another product: its label is to be written anew."""
        if self.known is not None:
            self.known = None
            self.label.open(True)
            self.say_intro(NEW)

    def _read_there(self, product: Label | None) -> _There:
        """What the fields say of the bottle; an empty field says nothing."""
        level, last = self.edits["level"].text().strip(), self.edits["use by"].text().strip()
        use_by = self.read("use by", lambda: read_date(last)) if last else None
        amount = None
        if level and product is not None:
            measured = self.read("level", lambda: self._level(level, product))
            amount = measured.amount if measured else None
        return _There(amount, BottleFacts(use_by=use_by), self._payment())

    def _payment(self) -> Payment | None:
        """What was paid; where only the shop is written, it is asked for."""
        written, shop = self.edits["paid"].text().strip(), self.edits["shop"].text().strip()
        if not written:
            if shop:
                self.refuse("paid", tr("Say what was paid there, or leave the shop out."))
            return None
        currency = self._bar.snapshot.settings.currency
        amount = self.read("paid", lambda: read_money(written, "paid", currency))
        return None if amount is None else Payment(amount, shop)

    def _level(self, text: str, product: Label) -> MeasuredLevel:
        snapshot = self._bar.snapshot
        tare = like_tare(product, snapshot.bottles) if isinstance(product, Product) else None
        container = container_for(product, snapshot.knowledge.tree, tare)
        return parse_level(text, container, snapshot.settings.units)

    def _receive(self, receive: Callable[[], Done[Bottle]]) -> None:
        if self.has_problems():
            return

        def finish(done: Done[Bottle]) -> None:
            self.accept()
            self.added.emit(done.value)

        run_operation(self, receive, finish)


def read_date(text: str) -> date:
    """A use-by day as year, month and day. Raises `InvalidField`."""
    try:
        return date.fromisoformat(text)
    except ValueError:
        raise InvalidField("use by", text, tr("write year, month and day: 2026-12-31")) from None


CHANGE_WIDTH = 560

INTRO = tr_noop(
    "What is written here counts for every bottle of it. The shape is for measuring by height."
)


class ChangeLabelDialog(FormDialog):
    """`done_with` carries the sentence to say once the change is written."""

    done_with = Signal(str)

    def __init__(self, bar: Bar, product: Product, parent: QWidget | None = None) -> None:
        super().__init__(tr("Change the label"), tr("Change"), parent)
        self._bar, self._product = bar, product
        self.label = LabelFields(self, bar, with_acid=True)
        self.edits = self.label.edits
        self.label.choose_ingredient(product.ingredient)
        self.label.fill(product)
        self.say_intro(INTRO)
        self.setMinimumWidth(dialog_width(CHANGE_WIDTH))
        self.edits["name"].setFocus()

    def submit(self) -> None:
        draft = self.label.read()
        if draft is None:
            self.has_problems()
            return
        product = self._product
        wanted = replace(draft, density_g_per_ml=product.density_g_per_ml)
        change = self._bar.inventory.change_product
        run_operation(self, lambda: change(product.id, wanted, product), self._finish)

    def see(self, theirs: Product) -> None:
        self._bar.refresh()
        self._product = theirs

    def show_theirs(self) -> None:
        self.label.choose_ingredient(self._product.ingredient)
        self.label.fill(self._product)

    def field_of(self, error: UserError) -> str | None:
        return _of_a_label(error, too_much="size") or super().field_of(error)

    def _finish(self, done: Done[Product]) -> None:
        self.accept()
        if done.changes:
            self.done_with.emit(tr("Changed the label of {title}", title=done.value.title))
