"""Names offered while they are typed, in every field that takes one.

The likeliest name stands first. Enter takes the first one that holds what was typed as it is
spelt; what is only alike is offered and never taken unless the arrow keys come to it, since a
guess must not change what somebody wrote. Escape leaves what was typed.
"""

from __future__ import annotations

from collections.abc import Callable, Collection, Iterable, Iterator, Mapping, Sequence
from dataclasses import dataclass
from typing import Protocol, runtime_checkable

from PySide6.QtCore import QAbstractListModel, QEvent, QModelIndex, QObject, Qt
from PySide6.QtGui import QKeyEvent
from PySide6.QtWidgets import QCompleter, QLineEdit

from barkeep.desktop.screens.offer_list import (
    BESIDE,
    SURE,
    THERE,
    OfferDelegate,
    OfferList,
    beside,
)
from barkeep.desktop.widgets.delegates import Index
from barkeep.domain.bar.knowledge import Knowledge
from barkeep.domain.bottles.bottle import Product
from barkeep.domain.bottles.level_words import quantity
from barkeep.domain.ingredients.finder import Found, ranked
from barkeep.domain.ingredients.tree import FamilyTree
from barkeep.domain.name_search import Fit, Named, NameIndex
from barkeep.domain.phrases import folded
from barkeep.translation import tr

MOST_SHOWN = 10
MOST_OFFERED = 30
VALUE = Qt.ItemDataRole.UserRole
TEXT = Qt.ItemDataRole.UserRole + 1
_NOWHERE = QModelIndex()


@dataclass(frozen=True, slots=True)
class Suggestion:
    """What is offered, what it writes into the field, and what it stands for.

    `beside` goes beside it in small letters; `there` says that it is in the bar; a guess is
    not `sure`.
    """

    shown: str
    text: str
    value: object
    beside: str = ""
    there: bool = False
    sure: bool = True


@runtime_checkable
class Offers(Protocol):
    """All that may be offered, and what of it fits a text, likeliest first."""

    def __iter__(self) -> Iterator[Suggestion]: ...

    def fitting(self, text: str) -> Sequence[Suggestion]:
        """What fits, likeliest first."""
        ...


class OfferedNames(QAbstractListModel):
    """Suggestions as the rows of a list."""

    def __init__(self, suggestions: Sequence[Suggestion] = (), parent: QObject | None = None):
        super().__init__(parent)
        self.suggestions = tuple(suggestions)

    def offer(self, suggestions: Sequence[Suggestion]) -> None:
        """Offer these and no others."""
        self.beginResetModel()
        self.suggestions = tuple(suggestions)
        self.endResetModel()

    def rowCount(self, parent: Index = _NOWHERE) -> int:
        return 0 if parent.isValid() else len(self.suggestions)

    def data(self, index: Index, role: int = Qt.ItemDataRole.DisplayRole) -> object:
        said = _SAID.get(role)
        return said(self.suggestions[index.row()]) if said and index.isValid() else None


class NameCompleter(QCompleter):
    """Offers what fits a text, likeliest first.

    In a field that takes new words too, `free`, Enter takes only what somebody came to.
    """

    def __init__(
        self,
        offered: Iterable[Suggestion],
        parent: QObject | None = None,
        *,
        free: bool = False,
    ) -> None:
        super().__init__(parent)
        self._offers = offered if isinstance(offered, Offers) else Listed(offered)
        self._free = free
        self._offered = OfferedNames(tuple(self._offers), self)
        self.setModel(self._offered)
        self.setCompletionMode(QCompleter.CompletionMode.UnfilteredPopupCompletion)
        self.setMaxVisibleItems(MOST_SHOWN)
        self.list = OfferList()
        self.setPopup(self.list)
        self.list.setItemDelegate(OfferDelegate(self.list))
        self.list.setAccessibleName(tr("Names"))

    def pathFromIndex(self, index: Index) -> str:
        return str(index.data(TEXT))

    def splitPath(self, path: str) -> list[str]:
        """Offer what fits the text; Qt asks this for each key, and then shows all there is."""
        found = self._offers.fitting(path)[:MOST_OFFERED]
        self._offered.offer(found)
        first = bool(found) and found[0].sure and not self._free
        self.list.begin(offers_first=first)
        return [""]

    def eventFilter(self, watched: QObject, event: QEvent) -> bool:
        if (
            isinstance(event, QKeyEvent)
            and event.type() == QEvent.Type.KeyPress
            and watched is self.list
            and self._has_taken(event)
        ):
            return True
        return super().eventFilter(watched, event)

    @staticmethod
    def value(index: Index) -> object:
        """What a chosen suggestion stands for."""
        return index.data(VALUE)

    def _has_taken(self, event: QKeyEvent) -> bool:
        """Whether a key was meant for the list."""
        key, chosen = event.key(), self.list.chosen
        if key in _STEPS:
            self.list.walk(_STEPS[key] * (self.list.rows_seen if key in _PAGES else 1))
        elif key in _ENTER and chosen.isValid():
            self._take(chosen)
        elif key == Qt.Key.Key_Escape:
            self.list.hide()
        elif key == Qt.Key.Key_Tab and self.list.walked:
            self._take(chosen)
            return False  # and on to the next field
        elif key in _ENTER:
            self.list.selectionModel().clearCurrentIndex()  # or Qt would take the first
            return False
        else:
            return False
        return True

    def _take(self, index: QModelIndex) -> None:
        text = self.pathFromIndex(index)
        self.list.hide()
        self.activated[QModelIndex].emit(index)  # type: ignore[index]
        self.activated.emit(text)


def complete_with(
    edit: QLineEdit, completer: NameCompleter, on_chosen: Callable[[QModelIndex], None]
) -> None:
    """Offer names while they are typed, and hear which was chosen."""
    edit.setCompleter(completer)
    completer.activated[QModelIndex].connect(on_chosen)  # type: ignore[index]


class Listed:
    """Suggestions given one by one, found by what they show and what they write."""

    def __init__(self, suggestions: Iterable[Suggestion]) -> None:
        self._all = tuple(suggestions)
        self._index = NameIndex(Named(each, _names(each)) for each in self._all)

    def __iter__(self) -> Iterator[Suggestion]:
        return iter(self._all)

    def fitting(self, text: str) -> Sequence[Suggestion]:
        """What fits, likeliest first; all of it where nothing is written."""
        if not text.strip():
            return self._all
        return [_as_sure_as(hit.fit, hit.value) for hit in self._index.hits(text)]


@dataclass(frozen=True)
class Kinds:
    """The kinds of a tree, or those of them that are `among`; `there` are those in the bar."""

    tree: FamilyTree
    there: Collection[str] = ()
    among: Collection[str] | None = None

    def __post_init__(self) -> None:
        _ = self.tree.name_index  # made before the first key, which should not wait for it

    def __iter__(self) -> Iterator[Suggestion]:
        """Every name of every kind; an alias says what it is a name of."""
        found = []
        for key in filter(self._is_among, self.tree):
            name = self.tree.name(key)
            found.append(Suggestion(name, name, key))
            others = dict.fromkeys(self.tree[key].offered_names)
            found += [
                Suggestion(f"{each} ({name})", name, key)
                for each in others
                if folded(each) != folded(name)
            ]
        return iter(sorted(found, key=lambda each: each.shown.casefold()))

    def fitting(self, text: str) -> Sequence[Suggestion]:
        """What fits, likeliest first; every name where nothing is written."""
        if not text.strip():
            return tuple(self)
        found = ranked(text, self.tree, there=self.there)
        return [self.offered(each) for each in found if self._is_among(each.key)]

    def offered(self, found: Found) -> Suggestion:
        """One kind that was found, as it is offered."""
        shown = f"{found.called} ({found.name})" if found.called else found.name
        return Suggestion(
            shown,
            found.name,
            found.key,
            beside=family_of(found.key, self.tree),
            there=found.there,
            sure=found.is_sure,
        )

    def _is_among(self, key: str) -> bool:
        return self.among is None or key in self.among


def family_of(key: str, tree: FamilyTree) -> str:
    """What a kind is first of all one of, as it stands inside a sentence; empty at the top."""
    return next((tree.in_sentence(parent) for parent in tree[key].parents), "")


def ingredient_names(tree: FamilyTree, there: Collection[str] = ()) -> Kinds:
    """Every name of every ingredient; `there` are the keys of what is in the bar."""
    return Kinds(tree, there)


def makeable_names(knowledge: Knowledge, there: Collection[str] = ()) -> Kinds:
    """Every name of whatever has a recipe."""
    return Kinds(knowledge.tree, there, frozenset(each.made for each in knowledge.made_from))


def product_names(products: Iterable[Product]) -> tuple[Suggestion, ...]:
    """Every product by title and size."""
    found = (
        Suggestion(f"{each.title}, {quantity(each.size, each.unit)}", each.name, each)
        for each in products
    )
    return tuple(sorted(found, key=lambda each: each.shown.casefold()))


def _told(each: Suggestion) -> str:
    """All that is drawn, in words for a screen reader."""
    more = beside(each.beside, sure=each.sure, there=each.there, joiner=", ")
    return f"{each.shown}, {more}" if more else each.shown


_SAID: Mapping[int, Callable[[Suggestion], object]] = {
    Qt.ItemDataRole.DisplayRole: lambda each: each.shown,
    Qt.ItemDataRole.AccessibleTextRole: _told,
    VALUE: lambda each: each.value,
    TEXT: lambda each: each.text,
    BESIDE: lambda each: each.beside,
    THERE: lambda each: each.there,
    SURE: lambda each: each.sure,
}


def _names(each: Suggestion) -> tuple[str, ...]:
    return (each.shown,) if each.shown == each.text else (each.shown, each.text)


def _as_sure_as(fit: Fit, each: Suggestion) -> Suggestion:
    if fit > Fit.LIKE or not each.sure:
        return each
    return Suggestion(
        each.shown, each.text, each.value, beside=each.beside, there=each.there, sure=False
    )


_ENTER = (Qt.Key.Key_Return, Qt.Key.Key_Enter)
_STEPS: Mapping[int, int] = {
    Qt.Key.Key_Down: 1,
    Qt.Key.Key_Up: -1,
    Qt.Key.Key_PageDown: 1,
    Qt.Key.Key_PageUp: -1,
}
_PAGES = (Qt.Key.Key_PageDown, Qt.Key.Key_PageUp)
