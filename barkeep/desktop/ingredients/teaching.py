"""Wherever words name nothing that is known: what can be done about it, and the keys for that."""

from __future__ import annotations

from collections.abc import Callable, Iterator
from functools import partial

from PySide6.QtCore import Qt
from PySide6.QtGui import QKeySequence, QShortcut
from PySide6.QtWidgets import QPushButton, QSizePolicy, QWidget

from barkeep.application.bar import Bar
from barkeep.desktop.ingredients.own_ingredient import OwnIngredientDialog, Way
from barkeep.desktop.widgets.tips import plain_tip
from barkeep.domain.bar.snapshot import Snapshot
from barkeep.translation import tr, tr_noop

TEACH: dict[Way, tuple[str, str]] = {
    "new": (tr_noop("New ingredient…"), "Ctrl+I"),
    "name": (tr_noop("Another name…"), "Ctrl+Shift+I"),
}
"""What is done about words that name nothing, and the keys for it."""
Teach = Callable[[QWidget, str, Way, Callable[[Snapshot], object]], object]
"""Asks over a widget what unknown words are; the last is called with what is known then."""


def teacher(bar: Bar) -> Teach:
    """How a page over this bar asks what unknown words are."""

    def ask(over: QWidget, words: str, way: Way, learn: Callable[[Snapshot], object]) -> None:
        teach(bar, words, over, lambda _key: learn(bar.snapshot), way=way)

    return ask


def teach(
    bar: Bar,
    words: str,
    parent: QWidget,
    on_taught: Callable[[str], object],
    *,
    way: Way = "new",
) -> None:
    """Ask what unknown words are; `on_taught` is given the key of what they are now."""
    dialog = OwnIngredientDialog(bar, words, way=way, parent=parent)
    dialog.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose)
    dialog.taught.connect(on_taught)
    dialog.open()


def teach_buttons(words: str, act: Callable[[str, Way], object]) -> Iterator[QPushButton]:
    """A button for each of what can be done about these words."""
    for way, (said, keys) in TEACH.items():
        made = QPushButton(tr(said))
        made.setProperty("chip", True)
        made.setAutoDefault(False)
        made.setAccessibleName(tr("{what} “{words}”", what=tr(said), words=words))
        made.setToolTip(plain_tip(tr("Say what “{words}” is ({keys})", words=words, keys=keys)))
        made.setSizePolicy(QSizePolicy.Policy.Maximum, QSizePolicy.Policy.Fixed)
        made.clicked.connect(partial(_act, act, words, way))
        yield made


def teach_by_keys(over: QWidget, act: Callable[[Way], object]) -> None:
    """Do the same by key anywhere in a dialog."""
    for way, (_said, keys) in TEACH.items():
        QShortcut(QKeySequence(keys), over).activated.connect(partial(act, way))


def _act(act: Callable[[str, Way], object], words: str, way: Way, _checked: bool = False) -> None:
    act(words, way)
