"""Names offered while they are typed, in every field that takes one.

The likeliest name stands first. Enter takes the first one that holds what was typed as it is
spelt; what is only alike is offered and never taken unless the arrow keys come to it, since a
guess must not change what somebody wrote. Escape leaves what was typed.

What begins as it was typed goes first, then what has a word that does; what only holds it within
a word comes after those, and is offered as a guess is.
"""

from __future__ import annotations

from collections.abc import Callable, Collection, Iterable, Iterator, Mapping, Sequence
from dataclasses import dataclass, replace
from functools import cached_property
from typing import Protocol, runtime_checkable

from PySide6.QtCore import QAbstractListModel, QEvent, QModelIndex, QObject, Qt, QTimer, Signal
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
from barkeep.domain.ingredients.finder import Found, ranked, with_kinds_above
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

    In a field that takes new words too, `free`, Enter takes only what somebody came to. `picked`
    comes when one was, by Enter or the mouse, and stands in the field: where Enter does something
    with what is written there, this does it too, and no second one is needed.
    """

    picked = Signal()

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
        self._moves_on = False
        """Whether Tab takes a name: the next field is gone to, and nothing else done."""
        self.activated.connect(self._on_activated)

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
            self._moves_on = True
            self._take(chosen)
            self._moves_on = False
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

    def _on_activated(self, _name: str) -> None:
        if not self._moves_on:
            QTimer.singleShot(0, self, self.picked.emit)  # once the field has the name


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
        found = [_as_sure_as(hit.fit, hit.value) for hit in self._index.hits(text)]
        others = (each for each in self._all if _holds(text, _names(each)))
        return with_others(found, others)


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
        return iter(self._every_name)

    def _named(self) -> Iterator[Suggestion]:
        """Every kind by its own name, with what is said of it."""
        for key in filter(self._is_among, self.tree):
            name = self.tree.name(key)
            family = family_of(key, self.tree)
            yield Suggestion(name, name, key, beside=family, there=key in self._in_bar)

    @cached_property
    def _in_bar(self) -> frozenset[str]:
        return with_kinds_above(self.there, self.tree)

    @cached_property
    def _every_name(self) -> tuple[Suggestion, ...]:
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
        return tuple(sorted(found, key=lambda each: each.shown.casefold()))

    def fitting(self, text: str) -> Sequence[Suggestion]:
        """What fits, likeliest first; every name where nothing is written."""
        if not text.strip():
            return tuple(self)
        found = ranked(text, self.tree, there=self.there)
        fitting = [self.offered(each) for each in found if self._is_among(each.key)]
        return with_others(fitting, self.holding(text))

    def holding(self, text: str) -> Iterator[Suggestion]:
        """The kinds whose own name holds a text, be it within a word."""
        return (each for each in self._named() if _holds(text, (each.shown,)))

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


LEAST_WITHIN = 3
"""Letters; fewer are within too many words."""


def _holds(text: str, names: Iterable[str]) -> bool:
    """Whether a text stands within a word of one of some names."""
    wanted = folded(text)
    return len(wanted) >= LEAST_WITHIN and any(wanted in folded(each) for each in names)


def with_others(
    found: Sequence[Suggestion],
    others: Iterable[Suggestion],
) -> Sequence[Suggestion]:
    """What was found as it is spelt, then others that hold it so, then what is only alike."""
    sure = [each for each in found if each.sure]
    known = {each.value for each in sure}
    within = [replace(each, sure=False) for each in others if each.value not in known]
    known |= {each.value for each in within}
    return [*sure, *within, *(each for each in found if not each.sure and each.value not in known)]


def _as_sure_as(fit: Fit, each: Suggestion) -> Suggestion:
    if fit > Fit.LIKE or not each.sure:
        return each
    return replace(each, sure=False)


_ENTER = (Qt.Key.Key_Return, Qt.Key.Key_Enter)
_STEPS: Mapping[int, int] = {
    Qt.Key.Key_Down: 1,
    Qt.Key.Key_Up: -1,
    Qt.Key.Key_PageDown: 1,
    Qt.Key.Key_PageUp: -1,
}
_PAGES = (Qt.Key.Key_PageDown, Qt.Key.Key_PageUp)
