"""The dialogs of the Help menu: what this is, what is new, the keys read off the actions."""

from __future__ import annotations

from collections.abc import Sequence

from PySide6.QtCore import Qt
from PySide6.QtGui import QAction, QGuiApplication, QKeySequence
from PySide6.QtWidgets import (
    QApplication,
    QDialog,
    QFrame,
    QGridLayout,
    QHBoxLayout,
    QScrollArea,
    QTextBrowser,
    QWidget,
)

from barkeep import __version__, resource_files
from barkeep.application import paths
from barkeep.desktop.look.metrics import PAD, UNIT, WIDE, TypeSize, dialog_width
from barkeep.desktop.shell.faults import versions
from barkeep.desktop.widgets.buttons import accept_by_keys, button, primary_button
from barkeep.desktop.widgets.labels import PictureLabel, text_label
from barkeep.desktop.widgets.layouts import SPRING, at_top, column_of, row_of, wide
from barkeep.translation import spoken, tr, tr_noop

WORDS = tr_noop("What is in the bar, what it makes tonight, what stands in, and what to buy next.")
QT_WORDS = tr_noop(
    "Drawn with Qt for Python, which is free software under the LGPL version 3: its libraries are "
    "files of their own, and may be replaced."
)


class AboutDialog(QDialog):
    """`details` is what *Copy details* puts on the clipboard."""

    def __init__(self, where: str, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        accept_by_keys(self)
        self.setWindowTitle(tr("About barkeep"))
        self._places = (
            (tr("Bar"), where),
            (tr("Window and log"), paths.state_folder()),
            (tr("Settings"), paths.config_folder()),
        )
        column_of(
            self._head(),
            text_label(tr(QT_WORDS), quiet=True, wrap=True),
            self._facts(),
            self._buttons(),
            on=self,
            margins=(WIDE, WIDE, WIDE, PAD),
            gap=PAD,
        )
        self.setMinimumWidth(dialog_width(520))

    @property
    def details(self) -> str:
        """Versions and places, one a line."""
        return "\n".join((versions(), *(f"{name}: {path}" for name, path in self._places)))

    def copy(self) -> None:
        """Put the details on the clipboard."""
        QGuiApplication.clipboard().setText(self.details)

    def show_licences(self) -> None:
        """Show barkeep's own licence, then those of what it is built on."""
        TextDialog(tr("Licences"), licences_as_markdown(), self).open()

    def _head(self) -> QHBoxLayout:
        words = column_of(
            text_label(f"barkeep {__version__}", TypeSize.TITLE),
            text_label(tr(WORDS), wrap=True),
            gap=None,
        )
        return row_of(at_top(PictureLabel("barkeep", 64)), wide(words), gap=PAD)

    def _facts(self) -> QGridLayout:
        grid = QGridLayout()
        grid.setHorizontalSpacing(PAD)
        grid.setVerticalSpacing(UNIT)
        grid.setColumnStretch(1, 1)
        rows = [(tr("Versions"), ", ".join(versions().splitlines()))]
        rows += [(name, str(path)) for name, path in self._places]
        for number, (name, text) in enumerate(rows):
            shown = text_label(text.replace("/", "/\u200b"), wrap=True)
            grid.addWidget(text_label(name, quiet=True), number, 0, Qt.AlignmentFlag.AlignTop)
            grid.addWidget(shown, number, 1)
        return grid

    def _buttons(self) -> QHBoxLayout:
        close = primary_button(tr("C&lose"), self.accept)
        close.setDefault(True)
        return row_of(
            button(tr("&Copy details"), self.copy),
            button(tr("&Licences…"), self.show_licences),
            button(tr("About &Qt"), QApplication.aboutQt),
            SPRING,
            close,
        )


class TextDialog(QDialog):
    """A long text that was written in Markdown, to be read, searched and copied."""

    def __init__(self, title: str, markdown: str, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        accept_by_keys(self)
        self.setWindowTitle(title)
        self.resize(640, 560)
        self.text = QTextBrowser()
        self.text.setAccessibleName(title)
        self.text.setFrameShape(QFrame.Shape.NoFrame)
        self.text.setMarkdown(markdown)
        column_of(
            wide(self.text), _only_close(self), on=self, margins=(WIDE, PAD, PAD, PAD), gap=PAD
        )


def licences_as_markdown() -> str:
    """Every licence under a heading of its own, barkeep's first, after a list of what is used."""
    from barkeep.application.licences import packages, texts  # with a reader of letters: slow
    from barkeep.documents.help.pages import markdown_table

    rows = [(each.name, each.version, each.licence) for each in packages()]
    listed = markdown_table((tr("built on"), tr("version"), tr("under")), rows) if rows else ""
    parts = [f"## {name}\n\n```\n{text}\n```" for name, text in texts()]
    return "\n\n".join((parts[0], listed, *parts[1:]))


def changes_as_markdown() -> str:
    """What is new for a user, by version."""
    return resource_files.read_said("changes.md", language=spoken())


def _only_close(dialog: QDialog) -> QHBoxLayout:
    close = primary_button(tr("C&lose"), dialog.accept)
    close.setDefault(True)
    return row_of(SPRING, close)


Group = tuple[str, Sequence[QAction]]


def rows_of(actions: Sequence[QAction]) -> tuple[tuple[str, str], ...]:
    """What each action is called and which keys call it; those without keys left out."""
    return tuple((words_of(action), keys_of(action)) for action in actions if action.shortcuts())


def keys_of(action: QAction) -> str:
    """An action's shortcuts as this platform writes them."""
    native = QKeySequence.SequenceFormat.NativeText
    return f" {tr('or')} ".join(each.toString(native) for each in action.shortcuts())


class ShortcutsDialog(QDialog):
    """Groups of shortcuts under headings."""

    def __init__(self, groups: Sequence[Group], parent: QWidget | None = None) -> None:
        super().__init__(parent)
        accept_by_keys(self)
        self.setWindowTitle(tr("Keyboard shortcuts"))
        self.resize(dialog_width(460), 560)
        page = QWidget()
        grid = QGridLayout(page)
        grid.setContentsMargins(0, 0, PAD, 0)
        grid.setHorizontalSpacing(WIDE)
        grid.setVerticalSpacing(UNIT)
        grid.setColumnStretch(0, 1)
        for heading, actions in groups:
            _add_group(grid, heading, rows_of(actions))
        grid.setRowStretch(grid.rowCount(), 1)
        area = QScrollArea()
        area.setWidgetResizable(True)
        area.setFrameShape(QFrame.Shape.NoFrame)
        area.setAccessibleName(tr("Keyboard shortcuts"))
        area.setWidget(page)
        column_of(wide(area), _only_close(self), on=self, margins=(WIDE, PAD, PAD, PAD), gap=PAD)


def _add_group(grid: QGridLayout, heading: str, rows: Sequence[tuple[str, str]]) -> None:
    if not rows:
        return
    first = grid.rowCount()
    title = text_label(heading, TypeSize.SUBTITLE)
    title.setContentsMargins(0, UNIT if first > 1 else 0, 0, 0)
    grid.addWidget(title, first, 0, 1, 2)
    for number, (words, keys) in enumerate(rows, first + 1):
        grid.addWidget(text_label(words), number, 0)
        grid.addWidget(text_label(keys, TypeSize.STRONG), number, 1, Qt.AlignmentFlag.AlignRight)


def words_of(action: QAction) -> str:
    """The menu text without mnemonic and ellipsis, and without what undo would undo."""
    text = bare(action.text())
    steps = (tr("Undo"), tr("Redo"))
    return next((each for each in steps if text.startswith(f"{each}: ")), text)


def bare(text: str) -> str:
    """The text of a menu without mnemonic, ellipsis and number."""
    plain = text.replace("&&", "\0").replace("&", "").replace("\0", "&")
    return plain.partition("\t")[0].rstrip("…").lstrip("0123456789 ")
