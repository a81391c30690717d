"""The look, size and paper of what is printed, and what a menu marks."""

from __future__ import annotations

from PySide6.QtCore import QLocale, Qt, Signal
from PySide6.QtWidgets import (
    QCheckBox,
    QComboBox,
    QGridLayout,
    QLabel,
    QLineEdit,
    QSizePolicy,
    QWidget,
)

from barkeep.desktop.look.metrics import HALF, PAD, UNIT
from barkeep.desktop.screens.window_state import WindowState
from barkeep.desktop.widgets.chips import FlowLayout
from barkeep.desktop.widgets.labels import text_label
from barkeep.desktop.widgets.layouts import row_of, wide
from barkeep.documents.printed.paper import Size, shipped_sizes
from barkeep.documents.printed.templates import SHORT, TITLES, Kind, Template, shipped_templates
from barkeep.translation import tr, tr_about, tr_noop

ITSELF = "itself"
"""The paper that is as large as the card."""
_ITSELF_WORDS: dict[Kind, str] = {
    "card": tr_noop("The card itself"),
    "label": tr_noop("The label itself"),
}
"""Kinds that have a size of their own, with what the paper as large is called."""
_US_PAPER = "letter"


class PrintOptions(QWidget):
    """`changed` comes with every other choice; each kind remembers its own."""

    changed = Signal()

    def __init__(self, state: WindowState, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._state = state
        self._kind: Kind = "card"
        self.template, self.size_, self.paper = QComboBox(), QComboBox(), QComboBox()
        self.title = QLineEdit()
        self.strength = QCheckBox(tr("&Strength"))
        self.allergens = QCheckBox(tr("Aller&gens"))
        self._labels = {
            "size": text_label(tr("Si&ze")),
            "title": text_label(tr("T&itle")),
        }
        self._lay_out()
        for combo in (self.template, self.size_, self.paper):
            combo.setSizeAdjustPolicy(QComboBox.SizeAdjustPolicy.AdjustToContents)
            combo.setSizePolicy(QSizePolicy.Policy.Fixed, QSizePolicy.Policy.Fixed)
            combo.currentIndexChanged.connect(self._tell)
        self.title.textChanged.connect(self._tell)
        for box in (self.strength, self.allergens):
            box.setChecked(True)
            box.toggled.connect(self._tell)

    @property
    def chosen_template(self) -> Template:
        """The template that is chosen."""
        template = self.template.currentData()
        assert isinstance(template, Template)
        return template

    @property
    def chosen_size(self) -> Size | None:
        """The size of a card or label; None for what has none."""
        size = self.size_.currentData()
        return size if isinstance(size, Size) else None

    @property
    def chosen_paper(self) -> Size | None:
        """The paper, None for the card itself."""
        paper = self.paper.currentData()
        return paper if isinstance(paper, Size) else None

    def show_kind(self, kind: Kind, title: str) -> None:
        """Offer what there is for a kind, as it was left; `title` is a menu's to begin with."""
        self._kind = kind
        self.blockSignals(True)
        _offer(self.template, [(_said(each), each) for each in shipped_templates(kind)])
        itself = _ITSELF_WORDS.get(kind)
        sizes = shipped_sizes()
        if itself is not None:
            which = sizes["card"] if kind == "card" else sizes["label"]
            _offer(self.size_, [(each.title, each) for each in which])
        else:
            self.size_.clear()
        papers: list[tuple[str, object]] = [(each.title, each) for each in sizes["paper"]]
        _offer(self.paper, papers + ([(tr(itself), ITSELF)] if itself else []))
        for sized in (self.size_, self._labels["size"]):
            sized.setVisible(itself is not None)
        for titled in (self.title, self._labels["title"]):
            titled.setVisible(kind in ("menu", "prep"))
        for box in (self.strength, self.allergens):
            box.setVisible(kind == "menu")
        self.title.setText(title)
        self._restore()
        self.blockSignals(False)
        self.changed.emit()

    def _restore(self) -> None:
        for name, combo in self._combos():
            kept = self._state.text(f"publish/{self._kind}/{name}", _usual(name))
            for number in range(combo.count()):
                if _key(combo.itemData(number)) == kept:
                    combo.setCurrentIndex(number)

    def _tell(self, _value: object = None) -> None:
        if self.signalsBlocked():
            return
        for name, combo in self._combos():
            if combo.count():
                self._state.keep_text(f"publish/{self._kind}/{name}", _key(combo.currentData()))
        self.changed.emit()

    def _combos(self) -> tuple[tuple[str, QComboBox], ...]:
        return (("template", self.template), ("size", self.size_), ("paper", self.paper))

    def _lay_out(self) -> None:
        grid = QGridLayout(self)
        grid.setContentsMargins(0, 0, 0, 0)
        grid.setHorizontalSpacing(UNIT)
        grid.setVerticalSpacing(UNIT)
        above = (
            (text_label(tr("&Template")), self.template),
            (self._labels["size"], self.size_),
            (text_label(tr("Pa&per")), self.paper),
        )
        first = FlowLayout(gap=UNIT + HALF, asks_for_one_row=True)
        for label, widget in above:
            _name(label, widget)
            pair = QWidget()
            row_of(label, widget, on=pair)
            first.addWidget(pair)
        _name(self._labels["title"], self.title)
        grid.addLayout(first, 0, 0)
        grid.addLayout(row_of(self._labels["title"], wide(self.title)), 1, 0)
        boxes = (self.strength, self.allergens)
        grid.addLayout(FlowLayout(boxes, PAD, asks_for_one_row=True), 2, 0)


def _said(template: Template) -> str:
    if template.title == SHORT:
        return tr_about("a list with less on it", "Short")
    return tr(template.title) if template.title in TITLES else template.title


def _name(label: QLabel, widget: QWidget) -> None:
    label.setBuddy(widget)
    label.setTextFormat(Qt.TextFormat.AutoText)  # a buddy's mnemonic is drawn, not printed
    # Its hint is the text's advance, beyond which the last letter may reach.
    label.setMinimumWidth(label.fontMetrics().horizontalAdvance(label.text()))
    widget.setAccessibleName(label.text().replace("&", ""))


def _offer(combo: QComboBox, things: list[tuple[str, object]]) -> None:
    combo.clear()
    for title, thing in things:
        combo.addItem(title, thing)


def _key(thing: object) -> str:
    return thing.key if isinstance(thing, Size | Template) else str(thing)


def _usual(name: str) -> str:
    """The paper that is usual here; the first of everything else."""
    systems = QLocale.MeasurementSystem
    inches = QLocale().measurementSystem() == systems.ImperialUSSystem
    return _US_PAPER if name == "paper" and inches else ""
