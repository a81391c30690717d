"""The fields of a form that say what a label says: filled from a product, read into a draft."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from functools import partial

from PySide6.QtCore import QModelIndex, Qt
from PySide6.QtWidgets import QCheckBox, QComboBox, QLineEdit

from barkeep.application.finding import find_ingredient
from barkeep.desktop.dialogs.form_dialog import FormDialog
from barkeep.desktop.models.amount_text import read_amount, read_number
from barkeep.desktop.models.name_completion import NameCompleter, ingredient_names
from barkeep.domain.drafts import ProductDraft
from barkeep.domain.ingredients import Unit, folded
from barkeep.domain.inventory import Product
from barkeep.domain.level_words import number
from barkeep.domain.snapshot import Snapshot
from barkeep.domain.vessels import shipped_shapes

TEXTS = ("name", "maker", "ingredient", "size", "strength", "sugar", "price", "barcode")
ACID = "acid"
USUAL_SHAPE = "The usual one of its kind and size"


class LabelFields:
    """Adds its fields to a form and reads them; mistakes are said below the fields there.

    Acid is asked for where `with_acid`: few labels say it, and a form has little room.
    """

    def __init__(self, form: FormDialog, snapshot: Snapshot, *, with_acid: bool = False) -> None:
        self._form = form
        self._tree = snapshot.knowledge.tree
        self._units = snapshot.settings.units
        names = (*TEXTS, ACID) if with_acid else TEXTS
        self.edits: Mapping[str, QLineEdit] = {name: QLineEdit() for name in names}
        self.shape = _shape_choice()
        self.house_made = QCheckBox("Made here")
        self._add(snapshot.settings.currency)
        completer = NameCompleter(ingredient_names(self._tree), form)
        complete_with(self.edits["ingredient"], completer, self._on_ingredient)
        self.edits["ingredient"].editingFinished.connect(self._on_ingredient_left)

    def fill(self, product: Product) -> None:
        """Show what is known of a product."""
        shown = {
            "name": product.name,
            "maker": product.maker,
            "ingredient": self._tree.name(product.ingredient),
            "size": _shown(product.size),
            "strength": _shown(product.abv_percent),
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
        self.house_made.setEnabled(is_open)

    def choose_ingredient(self, key: str) -> None:
        """Take an ingredient and what is usual for it, where nothing else is written."""
        ingredient = self._tree[key]
        self.edits["ingredient"].setText(ingredient.name)
        self._form.forgive("ingredient")
        self._show_unit(ingredient.unit)
        self.edits["size"].setPlaceholderText(number(ingredient.typical_size, ingredient.unit))
        usual = {
            "strength": ingredient.abv_percent,
            "sugar": ingredient.sugar_g_per_l,
            ACID: ingredient.acid_g_per_l,
        }
        for name in usual.keys() & self.edits.keys():
            value = _shown(usual[name])
            self.edits[name].setPlaceholderText(f"Usual: {value}" if usual[name] else "")

    def read(self) -> ProductDraft | None:
        """What the fields say of a product; None where one of them cannot be used."""
        text = {name: edit.text().strip() for name, edit in self.edits.items()}
        if not text["name"]:
            self._form.refuse("name", "A product needs a name.")
        key = self._key(text["ingredient"])
        unit: Unit = self._tree[key].unit if key else "ml"
        size = self._form.read("size", lambda: self._size(text["size"], key, unit))
        strength, sugar = self._number("strength", "43"), self._number("sugar", "20")
        price = self._number("price", "24.50")
        acid = self._number(ACID, "45") if ACID in self.edits else None
        wrong = any(self._form.problem(name) for name in self.edits)
        if key is None or size is None or wrong:
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
            shape=self.shape.currentData() if unit == "ml" else None,
            acid_g_per_l=acid,
        )

    def _add(self, currency: str) -> None:
        add, edits = self._form.add_field, self.edits
        labels = {
            "name": ("&Name", ""),
            "maker": ("&Maker", ""),
            "ingredient": ("&Ingredient", ""),
            "size": ("&Size", "ml"),
            "strength": ("S&trength", "% vol"),
            "sugar": ("S&ugar", "g per litre"),
            ACID: ("Aci&d", "g per litre"),
        }
        for name in (each for each in labels if each in edits):
            add(name, labels[name][0], edits[name], labels[name][1])
        add("shape", "S&hape", self.shape)
        add("price", "&Price", edits["price"], currency)
        add("barcode", "&Barcode", edits["barcode"])
        add("house_made", "", self.house_made)
        self.house_made.setAccessibleName("Made here")

    def _key(self, name: str) -> str | None:
        if name:
            return self._form.read("ingredient", partial(find_ingredient, self._tree, name))
        self._form.refuse("ingredient", "Say what it is, such as London dry gin.")
        return None

    def _number(self, name: str, example: str) -> float | None:
        text = self.edits[name].text()
        return self._form.read(name, lambda: read_number(name, text, example))

    def _size(self, text: str, key: str | None, unit: Unit) -> float:
        if not text and key is not None:
            return self._tree[key].typical_size
        return read_amount(text, unit, self._units)

    def _show_unit(self, unit: Unit) -> None:
        self._form.unit_label("size").setText("pieces" if unit == "each" else unit)

    def _on_ingredient(self, index: QModelIndex) -> None:
        self.choose_ingredient(str(NameCompleter.value(index)))

    def _on_ingredient_left(self) -> None:
        key = self._tree.by_name.get(folded(self.edits["ingredient"].text()))
        if key is not None:
            self.choose_ingredient(key)


def complete_with(
    edit: QLineEdit, completer: NameCompleter, on_chosen: Callable[[QModelIndex], None]
) -> None:
    """Offer names while they are typed, and hear which was chosen."""
    edit.setCompleter(completer)
    completer.activated[QModelIndex].connect(on_chosen)  # type: ignore[index]


def _shape_choice() -> QComboBox:
    box = QComboBox()
    box.addItem(USUAL_SHAPE, None)
    for key, shape in shipped_shapes().items():
        box.addItem(shape.name[:1].upper() + shape.name[1:], key)
        box.setItemData(box.count() - 1, shape.about, Qt.ItemDataRole.ToolTipRole)
    box.setMaxVisibleItems(box.count())
    return box


def _shown(value: float | None) -> str:
    return "" if value is None else f"{value:g}"
