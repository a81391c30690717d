"""Put a bottle on the shelf: of a product the bar knows, or of a new one."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass
from datetime import date
from functools import partial
from typing import TYPE_CHECKING

from PySide6.QtCore import QModelIndex, Signal
from PySide6.QtWidgets import QCheckBox, QLineEdit, QWidget

from barkeep.application.finding import find_ingredient
from barkeep.desktop.dialogs.form_dialog import FormDialog
from barkeep.desktop.models.amount_text import read_amount, read_number
from barkeep.desktop.models.bottle_words import number
from barkeep.desktop.models.name_completion import (
    NameCompleter,
    ingredient_names,
    product_names,
)
from barkeep.desktop.operations import run_operation
from barkeep.domain.drafts import ProductDraft
from barkeep.domain.ingredients import Unit, folded
from barkeep.domain.inventory import Bottle, Product
from barkeep.domain.levels import parse_level
from barkeep.errors import DuplicateName, InvalidField, LevelAboveSize, UnknownName, UserError

if TYPE_CHECKING:
    from barkeep.application.bar import Bar
    from barkeep.application.done import Done

WIDTH = 560
NEW = "Begin to type: what the bar knows is offered; anything else is a new product."
KNOWN = "The bar knows this product, so only the bottle is new. Change the name for another one."
LABEL_FIELDS = ("maker", "ingredient", "size", "strength", "sugar", "price", "barcode")


@dataclass(frozen=True, slots=True)
class _There:
    """What is in the bottle, None for full, and its use-by date."""

    amount: float | None
    use_by: date | None


class AddBottleDialog(FormDialog):
    """`added` carries the bottle."""

    added = Signal(object)

    def __init__(self, bar: Bar, parent: QWidget | None = None) -> None:
        super().__init__("Add a bottle", "Add bottle", parent)
        self._bar = bar
        self._tree = bar.snapshot.knowledge.tree
        self._known: Product | None = None
        self.edits = {name: QLineEdit() for name in ("name", *LABEL_FIELDS, "level", "use by")}
        self.house_made = QCheckBox("Made here")
        self._add_fields()
        self._complete()
        self.say_intro(NEW)
        self.setMinimumWidth(WIDTH)
        self.edits["name"].setFocus()

    @property
    def known(self) -> Product | None:
        """The product that was chosen from what the bar knows."""
        return self._known

    def submit(self) -> None:
        inventory = self._bar.inventory
        known = self._known
        if known is not None:
            there = self._read_there(known)
            self._receive(lambda: inventory.receive(known.id, there.amount, there.use_by))
            return
        draft = self._draft()
        there = self._read_there(draft)
        if draft is None:
            self.has_problems()
            return
        self._receive(lambda: inventory.receive_new(draft, there.amount, there.use_by))

    def field_of(self, error: UserError) -> str | None:
        match error:
            case UnknownName():
                return "ingredient"
            case DuplicateName():
                return "name"
            case LevelAboveSize():
                return "level"
        return super().field_of(error)

    def choose_product(self, product: Product) -> None:
        """Fill the form from a product the bar knows; only the bottle stays open."""
        self._known = product
        tree = self._tree
        shown = {
            "name": product.name,
            "maker": product.maker,
            "ingredient": tree.name(product.ingredient),
            "size": number(product.size, product.unit),
            "strength": _shown(product.abv_percent),
            "sugar": _shown(product.sugar_g_per_l),
            "price": "" if product.price is None else f"{product.price:.2f}",
            "barcode": product.barcode,
        }
        for name, text in shown.items():
            self.edits[name].setText(text)
            self.forgive(name)
        self.house_made.setChecked(product.house_made)
        self._show_unit(product.unit)
        self._open_label_fields(False)
        self.say_intro(KNOWN)
        self.edits["level"].setFocus()

    def choose_ingredient(self, key: str) -> None:
        """Take an ingredient and what is usual for it, where nothing else is written."""
        ingredient = self._tree[key]
        self.edits["ingredient"].setText(ingredient.name)
        self.forgive("ingredient")
        self._show_unit(ingredient.unit)
        self.edits["size"].setPlaceholderText(number(ingredient.typical_size, ingredient.unit))
        usual = _shown(ingredient.abv_percent)
        self.edits["strength"].setPlaceholderText(f"Usual: {usual}" if usual else "")

    def _add_fields(self) -> None:
        currency = self._bar.snapshot.settings.currency
        labels = {
            "name": ("&Name", ""),
            "maker": ("&Maker", ""),
            "ingredient": ("&Ingredient", ""),
            "size": ("&Size", "ml"),
            "strength": ("S&trength", "% vol"),
            "sugar": ("S&ugar", "g per litre"),
            "price": ("&Price", currency),
            "barcode": ("&Barcode", ""),
        }
        for name, (label, after) in labels.items():
            self.add_field(name, label, self.edits[name], after)
        self.add_field("house_made", "", self.house_made)
        self.house_made.setAccessibleName("Made here")
        self.add_field("level", "&Left in it", self.edits["level"])
        self.edits["level"].setPlaceholderText("Full; or such as 0.5 or 350 ml")
        self.add_field("use by", "Us&e by", self.edits["use by"])
        self.edits["use by"].setPlaceholderText(f"Optional, such as {self._bar.snapshot.on}")

    def _complete(self) -> None:
        products = NameCompleter(product_names(self._bar.snapshot.products), self)
        _complete_with(self.edits["name"], products, self._on_product)
        ingredients = NameCompleter(ingredient_names(self._tree), self)
        _complete_with(self.edits["ingredient"], ingredients, self._on_ingredient)
        self.edits["name"].textEdited.connect(self._on_name_edited)
        self.edits["ingredient"].editingFinished.connect(self._on_ingredient_left)

    def _on_product(self, index: QModelIndex) -> None:
        product = NameCompleter.value(index)
        if isinstance(product, Product):
            self.choose_product(product)

    def _on_ingredient(self, index: QModelIndex) -> None:
        self.choose_ingredient(str(NameCompleter.value(index)))

    def _on_ingredient_left(self) -> None:
        text = self.edits["ingredient"].text()
        key = self._tree.by_name.get(folded(text))
        if key is not None:
            self.choose_ingredient(key)

    def _on_name_edited(self, _text: str) -> None:
        """Another name is another product: its label is to be written anew."""
        if self._known is not None:
            self._known = None
            self._open_label_fields(True)
            self.say_intro(NEW)

    def _open_label_fields(self, is_open: bool) -> None:
        for name in LABEL_FIELDS:
            self.edits[name].setEnabled(is_open)
        self.house_made.setEnabled(is_open)

    def _show_unit(self, unit: Unit) -> None:
        self.unit_label("size").setText("pieces" if unit == "each" else unit)

    def _draft(self) -> ProductDraft | None:
        """What the fields say of a product; None where one of them cannot be used."""
        text = {name: edit.text().strip() for name, edit in self.edits.items()}
        if not text["name"]:
            self.refuse("name", "A product needs a name.")
        key = None
        if not text["ingredient"]:
            self.refuse("ingredient", "Say what it is, such as London dry gin.")
        else:
            find = partial(find_ingredient, self._tree, text["ingredient"])
            key = self.read("ingredient", find)
        unit: Unit = self._tree[key].unit if key else "ml"
        size = self.read("size", lambda: self._size(text["size"], key, unit))
        strength = self._number("strength", "43")
        sugar = self._number("sugar", "20")
        price = self._number("price", "24.50")
        if key is None or size is None or any(self.problem(name) for name in self.fields):
            return None
        return ProductDraft(
            text["name"],
            text["maker"],
            key,
            size,
            unit,
            strength,
            sugar,
            price,
            text["barcode"],
            self.house_made.isChecked(),
        )

    def _number(self, name: str, example: str) -> float | None:
        text = self.edits[name].text()
        return self.read(name, lambda: read_number(name, text, example))

    def _size(self, text: str, key: str | None, unit: Unit) -> float:
        if not text and key is not None:
            return self._tree[key].typical_size
        return read_amount(text, unit)

    def _read_there(self, product: Product | ProductDraft | None) -> _There:
        """What the fields say of the bottle; an empty field says nothing."""
        level, last = self.edits["level"].text().strip(), self.edits["use by"].text().strip()
        use_by = self.read("use by", lambda: _read_date(last)) if last else None
        amount = None
        if level and product is not None:
            size, unit, title = product.size, product.unit, product.title
            measured = self.read("level", lambda: parse_level(level, size, unit, title))
            amount = measured.amount if measured else None
        return _There(amount, use_by)

    def _receive(self, receive: Callable[[], Done[Bottle]]) -> None:
        if self.has_problems():
            return

        def finish(done: Done[Bottle]) -> None:
            self.accept()
            self.added.emit(done.value)

        run_operation(self, receive, finish)


def _complete_with(
    edit: QLineEdit, completer: NameCompleter, on_chosen: Callable[[QModelIndex], None]
) -> None:
    edit.setCompleter(completer)
    completer.activated[QModelIndex].connect(on_chosen)  # type: ignore[index]


def _read_date(text: str) -> date:
    try:
        return date.fromisoformat(text)
    except ValueError:
        raise InvalidField("use by", text, "write year, month and day: 2026-12-31") from None


def _shown(value: float | None) -> str:
    return "" if value is None else f"{value:g}"
