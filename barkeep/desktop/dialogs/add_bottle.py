"""Put a bottle on the shelf: of a product the bar knows, or of a new one."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass
from datetime import date
from typing import TYPE_CHECKING

from PySide6.QtCore import QModelIndex, Signal
from PySide6.QtWidgets import QLineEdit, QWidget

from barkeep.desktop.dialogs.form_dialog import FormDialog
from barkeep.desktop.dialogs.label_fields import LabelFields, complete_with
from barkeep.desktop.models.name_completion import NameCompleter, product_names
from barkeep.desktop.operations import run_operation
from barkeep.domain.containers import container_for, like_tare
from barkeep.domain.drafts import ProductDraft
from barkeep.domain.inventory import Bottle, Product
from barkeep.domain.levels import MeasuredLevel, parse_level
from barkeep.errors import DuplicateName, InvalidField, LevelAboveSize, UnknownName, UserError

if TYPE_CHECKING:
    from barkeep.application.bar import Bar
    from barkeep.application.done import Done

WIDTH = 560
NEW = "Begin to type: what the bar knows is offered; anything else is a new product."
KNOWN = "The bar knows this product, so only the bottle is new. Change the name for another one."


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
        self._known: Product | None = None
        self.label = LabelFields(self, bar.snapshot)
        self.edits = {**self.label.edits, "level": QLineEdit(), "use by": QLineEdit()}
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
        draft = self.label.read()
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
        self.label.fill(product)
        self.label.open(False, apart_from="name")
        self.say_intro(KNOWN)
        self.edits["level"].setFocus()

    def _add_fields(self) -> None:
        self.add_field("level", "&Left in it", self.edits["level"])
        self.edits["level"].setPlaceholderText("Full; or such as 0.5, 350 ml or 11.5 cm high")
        self.add_field("use by", "Us&e by", self.edits["use by"])
        self.edits["use by"].setPlaceholderText(f"Optional, such as {self._bar.snapshot.on}")

    def _complete(self) -> None:
        products = NameCompleter(product_names(self._bar.snapshot.products), self)
        complete_with(self.edits["name"], products, self._on_product)
        self.edits["name"].textEdited.connect(self._on_name_edited)

    def _on_product(self, index: QModelIndex) -> None:
        product = NameCompleter.value(index)
        if isinstance(product, Product):
            self.choose_product(product)

    def _on_name_edited(self, _text: str) -> None:
        """Another name is another product: its label is to be written anew."""
        if self._known is not None:
            self._known = None
            self.label.open(True)
            self.say_intro(NEW)

    def _read_there(self, product: Product | ProductDraft | None) -> _There:
        """What the fields say of the bottle; an empty field says nothing."""
        level, last = self.edits["level"].text().strip(), self.edits["use by"].text().strip()
        use_by = self.read("use by", lambda: read_date(last)) if last else None
        amount = None
        if level and product is not None:
            measured = self.read("level", lambda: self._level(level, product))
            amount = measured.amount if measured else None
        return _There(amount, use_by)

    def _level(self, text: str, product: Product | ProductDraft) -> MeasuredLevel:
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
        raise InvalidField("use by", text, "write year, month and day: 2026-12-31") from None
