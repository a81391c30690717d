"""Files and pasted texts for the bar: bottles or specs, told by what they hold."""

from __future__ import annotations

from collections.abc import Sequence
from pathlib import Path
from typing import TYPE_CHECKING

from barkeep.application.spec_imports import NamedText
from barkeep.desktop.importing.bottles import preview_bottles
from barkeep.desktop.importing.specs import preview_specs
from barkeep.desktop.screens.operations import run_operation
from barkeep.documents.json_text import LARGEST_CHARACTERS
from barkeep.documents.specs.files import holds_specs
from barkeep.errors import UnreadableFile

if TYPE_CHECKING:
    from barkeep.desktop.shell.main_window import MainWindow


LARGEST_LIST = 4 * 1024 * 1024
"""Characters of a list of bottles; nobody has that many."""


def import_files(window: MainWindow, files: Sequence[Path]) -> None:
    """Show what the files hold: all specs together, each list of bottles on its own."""
    texts: list[NamedText] = []
    for file in files:
        run_operation(
            window,
            lambda file=file: read_file(file),  # type: ignore[misc]
            texts.append,
            window.current.show_refusal,
        )
    import_texts(window, texts)


def import_texts(window: MainWindow, texts: Sequence[NamedText]) -> None:
    """As `import_files`, for what has been read."""
    specs = [each for each in texts if holds_specs(each.text, each.file)]
    for each in texts:
        if each in specs:
            continue
        if len(each.text) > LARGEST_LIST:
            error = UnreadableFile(each.file, "it is too large for a list of bottles")
            window.current.show_refusal(error)
        else:
            preview_bottles(window, each.file, each.text)
    if specs:
        preview_specs(window, specs)


def read_file(path: Path) -> NamedText:
    """A file's name and text. Raises `UnreadableFile`."""
    try:
        if path.stat().st_size > LARGEST_CHARACTERS:
            raise UnreadableFile(path.name, "it is too large")
        return NamedText(path.name, path.read_bytes().decode("utf-8-sig"))
    except UnicodeDecodeError:
        raise UnreadableFile(path.name, "it is not UTF-8 text") from None
    except OSError as error:
        raise UnreadableFile(path.name, (error.strerror or "it cannot be read").lower()) from None
