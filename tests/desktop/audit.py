"""What every window is held to: names for those who do not see it, nothing cut off or hidden."""

from __future__ import annotations

from collections.abc import Iterator

from PySide6.QtCore import QModelIndex, Qt
from PySide6.QtGui import QAccessible, QAction
from PySide6.QtWidgets import (
    QAbstractButton,
    QAbstractItemView,
    QAbstractScrollArea,
    QAbstractSpinBox,
    QCheckBox,
    QComboBox,
    QHeaderView,
    QLabel,
    QLineEdit,
    QMenu,
    QMenuBar,
    QRubberBand,
    QScrollBar,
    QSizeGrip,
    QSplitterHandle,
    QStyleOptionViewItem,
    QTableView,
    QToolButton,
    QTreeView,
    QWidget,
)

from barkeep.desktop.widgets.delegates import WordsInFull
from barkeep.desktop.widgets.labels import ElidedLabel
from barkeep.desktop.widgets.notices import Toast

BY_THEMSELVES = (QMenu, QMenuBar, QScrollBar)
"""Kinds that are named by what they hold."""
ICON_ONLY = Qt.ToolButtonStyle.ToolButtonIconOnly


def focusable_without_name(root: QWidget) -> list[str]:
    """The widgets a keyboard can reach but a screen reader could not name."""
    return [
        described(each)
        for each in root.findChildren(QWidget)
        if _reachable(each) and not accessible_name(each)
    ]


def accessible_name(widget: QWidget) -> str:
    """What a screen reader would call it."""
    interface = QAccessible.queryAccessibleInterface(widget)
    return "" if interface is None else interface.text(QAccessible.Text.Name)


def cut_off(root: QWidget) -> list[str]:
    """Visible labels and buttons whose text is larger than they are."""
    return [described(each) for each in root.findChildren(QWidget) if _is_cut(each)]


OVER_OTHERS = (Toast, QRubberBand, QSplitterHandle, QSizeGrip, QHeaderView, QScrollBar)
"""What lies over others as it should."""


def faults_of(window: QWidget, *, across: bool = False) -> list[str]:
    """All that is wrong with what a window shows; with `across` also what scrolls sideways."""
    return [
        *(f"no name: {each}" for each in focusable_without_name(window)),
        *(f"cut off: {each}" for each in cut_off(window)),
        *(f"cut in a list: {each}" for each in cut_in_lists(window)),
        *(f"over each other: {each}" for each in over_each_other(window)),
        *(f"outside: {each}" for each in outside(window)),
        *(f"scrolls across: {each}" for each in scrolled_across(window) if across),
    ]


def over_each_other(root: QWidget) -> list[str]:
    """Neighbours of which one hides a part of the other."""
    found = []
    for parent in (root, *root.findChildren(QWidget)):
        if not parent.isVisible() or isinstance(parent, QAbstractScrollArea):
            continue
        seen = [each for each in _children_of(parent) if not isinstance(each, OVER_OTHERS)]
        for place, one in enumerate(seen):
            for other in seen[place + 1 :]:
                common = one.geometry() & other.geometry()
                if common.width() > 1 and common.height() > 1:
                    found.append(f"{described(one)} and {described(other)}")
    return found


def outside(root: QWidget) -> list[str]:
    """What reaches beyond what it stands in, where nothing scrolls to it."""
    found = []
    for parent in (root, *root.findChildren(QWidget)):
        scrolled = isinstance(parent.parent(), QAbstractScrollArea)
        if not parent.isVisible() or scrolled:
            continue
        whole = parent.rect().adjusted(-2, -2, 2, 2)
        found += [
            described(each)
            for each in _children_of(parent)
            if not isinstance(each, OVER_OTHERS) and not whole.contains(each.geometry())
        ]
    return found


def scrolled_across(root: QWidget) -> list[str]:
    """What is wider than there is room for, and scrolls from side to side."""
    return [
        f"{described(each)} by {each.horizontalScrollBar().maximum()}"
        for each in root.findChildren(QAbstractScrollArea)
        if each.isVisible()
        and each.horizontalScrollBar().maximum() > 0
        and each.horizontalScrollBarPolicy() != Qt.ScrollBarPolicy.ScrollBarAlwaysOff
    ]


def cut_in_lists(root: QWidget) -> list[str]:
    """Headers and cells that do not show their words, and do not say them when pointed at."""
    views = [each for each in root.findChildren(QAbstractItemView) if each.isVisible()]
    return [said for view in views for said in (*_cut_headers(view), *_cut_cells(view))]


def _children_of(parent: QWidget) -> list[QWidget]:
    found = parent.findChildren(QWidget, options=Qt.FindChildOption.FindDirectChildrenOnly)
    return [each for each in found if each.isVisible() and not each.isWindow()]


def _cut_headers(view: QAbstractItemView) -> Iterator[str]:
    header = _header_of(view)
    if header is None or not header.isVisible():
        return
    for section in range(header.count()):
        if header.isSectionHidden(section):
            continue
        needed = header.sectionSizeFromContents(section).width()
        told = header.model().headerData(
            section, Qt.Orientation.Horizontal, Qt.ItemDataRole.ToolTipRole
        )
        if needed > header.sectionSize(section) and not told:
            words = header.model().headerData(section, Qt.Orientation.Horizontal)
            yield f"header {words!r} of {described(view)}"


def _header_of(view: QAbstractItemView) -> QHeaderView | None:
    if isinstance(view, QTableView):
        return view.horizontalHeader()
    return view.header() if isinstance(view, QTreeView) else None


def _cut_cells(view: QAbstractItemView) -> Iterator[str]:
    """Of the rows that are seen; who draws words says them in full when pointed at."""
    model, header = view.model(), _header_of(view)
    for row in range(model.rowCount() if model else 0):
        for column in range(1 if header is None else header.count()):
            index = model.index(row, column)
            place = view.visualRect(index)
            if place.intersects(view.viewport().rect()) and index.data():
                yield from _cut_cell(view, index)


def _cut_cell(view: QAbstractItemView, index: QModelIndex) -> Iterator[str]:
    option, place = QStyleOptionViewItem(), view.visualRect(index)
    view.initViewItemOption(option)
    delegate = view.itemDelegateForIndex(index)
    needed = delegate.sizeHint(option, index)
    said = isinstance(delegate, WordsInFull) or index.data(Qt.ItemDataRole.ToolTipRole)
    if option.fontMetrics.height() > place.height() or needed.height() > place.height() + 8:
        yield f"cell {index.data()!r}, too low, of {described(view)}"
    elif _is_number(index) and needed.width() > place.width() + 8:
        yield f"number {index.data()!r} of {described(view)}"
    elif needed.width() > place.width() and not said:
        yield f"cell {index.data()!r} of {described(view)}"


def _is_number(index: QModelIndex) -> bool:
    """Whether a cell holds a number or a date: half of one is another."""
    side = index.data(Qt.ItemDataRole.TextAlignmentRole)
    is_right = side is not None and bool(Qt.AlignmentFlag(side) & Qt.AlignmentFlag.AlignRight)
    return is_right or (str(index.data())[:4].isdigit() and "-" in str(index.data()))


def shortcuts_of(actions: list[QAction]) -> list[str]:
    """Every key sequence of the actions, as portable text."""
    return [keys.toString() for action in actions for keys in action.shortcuts()]


def mnemonics(menu: QMenu) -> list[str]:
    """The underlined letters of a menu's visible entries."""
    texts = [each.text() for each in menu.actions() if each.isVisible()]
    return [letter for text in texts for letter in _mnemonic(text)]


def described(widget: QWidget) -> str:
    """A widget in a failure message: its class, name, and what it says."""
    text = getattr(widget, "text", lambda: "")()
    return f"{type(widget).__name__} {widget.objectName()!r} {text!r} {widget.size().toTuple()}"


def _reachable(widget: QWidget) -> bool:
    if isinstance(widget, BY_THEMSELVES) or not widget.isVisible():
        return False
    inside = isinstance(widget, QLineEdit) and isinstance(
        widget.parent(), QAbstractSpinBox | QComboBox
    )
    return not inside and widget.focusPolicy() != Qt.FocusPolicy.NoFocus


def _is_cut(widget: QWidget) -> bool:
    if not widget.isVisible() or isinstance(widget, ElidedLabel):
        return False
    if isinstance(widget, QLabel) and widget.text():
        return _label_is_cut(widget)
    if isinstance(widget, QAbstractButton) and widget.text():
        return _button_is_cut(widget)
    return isinstance(widget, QLineEdit) and _hint_is_cut(widget)


def _hint_is_cut(field: QLineEdit) -> bool:
    """Whether what an empty field asks for is cut off, and not said when it is pointed at."""
    words = "" if field.text() else field.placeholderText()
    return field.width() < field.fontMetrics().horizontalAdvance(words) and not field.toolTip()


def _label_is_cut(label: QLabel) -> bool:
    if label.wordWrap():
        return label.height() < label.heightForWidth(label.width())
    is_drawn_plain = label.textFormat() == Qt.TextFormat.PlainText and label.buddy() is None
    words = label.text() if is_drawn_plain else label.text().replace("&", "")
    low = label.height() < label.fontMetrics().boundingRect(words).height()
    rounded = 1  # a label asks for the whole pixels below
    return low or label.width() < label.fontMetrics().horizontalAdvance(words) - rounded


def _button_is_cut(button: QAbstractButton) -> bool:
    if isinstance(button, QToolButton) and button.toolButtonStyle() == ICON_ONLY:
        return False
    frame = 0 if isinstance(button, QCheckBox) else 8
    words = button.fontMetrics().horizontalAdvance(button.text().replace("&", ""))
    return button.width() < words + frame or button.height() < button.fontMetrics().height()


def _mnemonic(text: str) -> Iterator[str]:
    plain = text.replace("&&", "")
    place = plain.find("&")
    if 0 <= place < len(plain) - 1:
        yield plain[place + 1].lower()
