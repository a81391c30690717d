"""Files and pasted texts for the bar: bottles or specs, told by what they hold."""

from __future__ import annotations

from collections.abc import Sequence
from pathlib import Path

from PySide6.QtWidgets import QWidget

from barkeep.application.imports import NamedText
from barkeep.desktop.importing.bottles import preview_bottles
from barkeep.desktop.importing.specs import preview_specs
from barkeep.desktop.screens.operations import run_operation
from barkeep.desktop.screens.screen import ScreenContext
from barkeep.documents.bytes_read import decoded
from barkeep.documents.foreign_text import LARGEST_CHARACTERS
from barkeep.documents.specs.files import holds_specs
from barkeep.errors import UnreadableFile
from barkeep.translation import tr_noop


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
    specs = [each for each in texts if holds_specs(each.text, each.file)]
    for each in texts:
        if each not in specs:
            preview_bottles(context, each, parent)
    if specs:
        preview_specs(context, specs, parent)


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
