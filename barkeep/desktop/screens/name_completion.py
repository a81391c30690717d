"""Finding an ingredient or a product by any part of any of its names."""

from __future__ import annotations

from collections.abc import Callable, Iterable
from dataclasses import dataclass

from PySide6.QtCore import QModelIndex, QObject, Qt
from PySide6.QtGui import QStandardItem, QStandardItemModel
from PySide6.QtWidgets import QCompleter, QLineEdit

from barkeep.desktop.widgets.delegates import Index
from barkeep.domain.bar.knowledge import Knowledge
from barkeep.domain.bottles.bottle import Product
from barkeep.domain.bottles.level_words import quantity
from barkeep.domain.ingredients.tree import FamilyTree
from barkeep.domain.phrases import folded

MOST_SHOWN = 12
VALUE = Qt.ItemDataRole.UserRole
TEXT = Qt.ItemDataRole.UserRole + 1


@dataclass(frozen=True, slots=True)
class Suggestion:
    """What is offered, what it writes into the field, and what it stands for."""

    shown: str
    text: str
    value: object


class NameCompleter(QCompleter):
    """Completes on any part of a name."""

    def __init__(self, offered: Iterable[Suggestion], parent: QObject | None = None) -> None:
        super().__init__(parent)
        known = QStandardItemModel(self)
        for each in offered:
            item = QStandardItem(each.shown)
            item.setData(each.value, VALUE)
            item.setData(each.text, TEXT)
            known.appendRow(item)
        self.setModel(known)
        self.setCaseSensitivity(Qt.CaseSensitivity.CaseInsensitive)
        self.setFilterMode(Qt.MatchFlag.MatchContains)
        self.setCompletionMode(QCompleter.CompletionMode.PopupCompletion)
        self.setMaxVisibleItems(MOST_SHOWN)

    def pathFromIndex(self, index: Index) -> str:
        return str(index.data(TEXT))

    @staticmethod
    def value(index: Index) -> object:
        """What a chosen suggestion stands for."""
        return index.data(VALUE)


def complete_with(
    edit: QLineEdit, completer: NameCompleter, on_chosen: Callable[[QModelIndex], None]
) -> None:
    """Offer names while they are typed, and hear which was chosen."""
    edit.setCompleter(completer)
    completer.activated[QModelIndex].connect(on_chosen)  # type: ignore[index]


def ingredient_names(tree: FamilyTree) -> tuple[Suggestion, ...]:
    """Every name of every ingredient; an alias says what it is a name of."""
    found = []
    for key in tree:
        name = tree.name(key)
        found.append(Suggestion(name, name, key))
        others = dict.fromkeys(tree[key].all_names)
        found += [
            Suggestion(f"{other} ({name})", name, key)
            for other in others
            if folded(other) != folded(name)
        ]
    return tuple(sorted(found, key=lambda each: each.shown.casefold()))


def makeable_names(knowledge: Knowledge) -> tuple[Suggestion, ...]:
    """Every name of whatever has a recipe."""
    made = {each.made for each in knowledge.made_from}
    return tuple(each for each in ingredient_names(knowledge.tree) if each.value in made)


def product_names(products: Iterable[Product]) -> tuple[Suggestion, ...]:
    """Every product by title and size."""
    found = (
        Suggestion(f"{each.title}, {quantity(each.size, each.unit)}", each.name, each)
        for each in products
    )
    return tuple(sorted(found, key=lambda each: each.shown.casefold()))
