"""Files and pasted texts for the bar: bottles or specs, told by what they hold."""

from __future__ import annotations

from collections.abc import Sequence
from pathlib import Path

from PySide6.QtCore import Qt
from PySide6.QtWidgets import QMessageBox, QWidget

from barkeep.application.bottle_imports import terms_of
from barkeep.application.imports import NamedText
from barkeep.desktop.importing.bottles import preview_bottles
from barkeep.desktop.importing.specs import preview_specs
from barkeep.desktop.screens.operations import run_operation
from barkeep.desktop.screens.screen import ScreenContext
from barkeep.desktop.widgets.buttons import accept_by_keys
from barkeep.documents.bottles_or_specs import ListsBottles, lists_bottles
from barkeep.documents.bytes_read import decoded
from barkeep.documents.foreign_text import LARGEST_CHARACTERS
from barkeep.documents.specs.files import holds_specs
from barkeep.errors import UnreadableFile
from barkeep.translation import tr, tr_noop


def import_files(context: ScreenContext, files: Sequence[Path], parent: QWidget) -> None:
    """Show what the files hold: all specs together, each list of bottles on its own."""
    texts: list[NamedText] = []
    for file in files:
        run_operation(
            parent,
            lambda file=file: read_file(file),  # type: ignore[misc]
            texts.append,
            context.refuse,
        )
    import_texts(context, texts, parent)


def import_texts(context: ScreenContext, texts: Sequence[NamedText], parent: QWidget) -> None:
    """As `import_files`, for what has been read."""
    terms = terms_of(context.bar.snapshot)
    specs: list[NamedText] = []
    for each in texts:
        if not holds_specs(each.text, each.file):
            preview_bottles(context, each, parent)
        elif (found := lists_bottles(each.text, each.file, terms)) is not None:
            _ask_which(context, each, found, parent)
        else:
            specs.append(each)
    if specs:
        preview_specs(context, specs, parent)


def _ask_which(
    context: ScreenContext, named: NamedText, found: ListsBottles, parent: QWidget
) -> None:
    """Ask of lines that may be either whether they list bottles, as is likely, or hold specs."""
    box = QMessageBox(parent)
    box.setIcon(QMessageBox.Icon.Question)
    box.setWindowTitle(tr("Bottles or specs?"))
    box.setTextFormat(Qt.TextFormat.PlainText)
    box.setText(tr("{file} reads like a list of bottles", file=named.file))
    box.setInformativeText(
        tr("{bottles} of its {lines} lines name one.", bottles=found.bottles, lines=found.lines)
    )
    bottles = box.addButton(tr("They are &bottles"), QMessageBox.ButtonRole.AcceptRole)
    specs = box.addButton(tr("They are &specs"), QMessageBox.ButtonRole.ActionRole)
    box.setEscapeButton(box.addButton(tr("Cancel"), QMessageBox.ButtonRole.RejectRole))
    box.setDefaultButton(bottles)
    accept_by_keys(box)
    box.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose)

    def answered(_result: int) -> None:
        if box.clickedButton() is bottles:
            _take_as_list(context, named)
        elif box.clickedButton() is specs:
            preview_specs(context, [named], parent)

    box.finished.connect(answered)
    box.open()


def _take_as_list(context: ScreenContext, named: NamedText) -> None:
    """Put the lines into the page for a list, below what stands there."""
    context.go("bottle-list", named.text)
    if named.read_as:
        context.toast.say(named.read_as)


def read_file(path: Path) -> NamedText:
    """A file's name and text. Raises `UnreadableFile`."""
    try:
        if path.stat().st_size > LARGEST_CHARACTERS:
            raise UnreadableFile(path.name, tr_noop("it is too large"))
        found = decoded(path.read_bytes(), path.name)
        return NamedText(path.name, found.text, found.read_as)
    except OSError as error:
        raise UnreadableFile(
            path.name, (error.strerror or tr_noop("it cannot be read")).lower()
        ) from None
