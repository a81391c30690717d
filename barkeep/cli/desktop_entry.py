"""`desktop-entry`: barkeep among this user's programs, and taken away again."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from functools import partial
from pathlib import Path

from barkeep.application import desktop_entry
from barkeep.application.desktop_entry import Entry
from barkeep.cli.arguments import Arguments, command
from barkeep.cli.output import Answer
from barkeep.domain.phrases import as_sentence, counted

JSON = """\
keys of the JSON:
  folder    the user's data folder (XDG_DATA_HOME)
  written   paths that were written now
  replaced  those of them that held something else before
  removed   paths that were taken away now
  there     paths that are there just as they should be
  missing   paths that are not there
  other     paths that are there and hold something else
  told      sentences on what is left to be done"""


@command(
    description="""\
Put an entry, pictures and the type of a bar's file (*.barkeep) into your own data folder, as
the standards of freedesktop.org have it. barkeep then stands among your programs, and a double
click on a bar opens it. Nothing is asked of root, and nobody else sees it.""",
    epilog=JSON,
)
def install(_arguments: Arguments) -> Answer:
    """Write what is not there."""
    before, told = desktop_entry.install()
    written = (*before.missing, *before.other)
    said = (
        f"{counted(len(written), 'file')} written below {before.folder}."
        if written
        else f"All of it is in {before.folder} already."
    )
    return _answer(before, told, said, written=written, replaced=before.other)


@command(description="Take away all that desktop-entry install writes.", epilog=JSON)
def remove(_arguments: Arguments) -> Answer:
    """Take away what is there."""
    before, told = desktop_entry.remove()
    gone = (*before.there, *before.other)
    said = (
        f"{counted(len(gone), 'file')} taken away from {before.folder}."
        if gone
        else f"There is nothing of it in {before.folder}."
    )
    return _answer(before, told, said, removed=gone)


@command(description="Say what is there, and show the entry that would be written.", epilog=JSON)
def show(_arguments: Arguments) -> Answer:
    """Say what is there."""
    found = desktop_entry.entry()
    text = next(each for path, each in found.files.items() if path.suffix == ".desktop").decode()
    lists = (("there", found.there), ("not there", found.missing), ("otherwise", found.other))
    rows = [f"{word:<10} {path}" for word, paths in lists for path in paths]
    return _answer(found, (), "\n".join((*rows, "", text.rstrip())))


def _answer(before: Entry, told: Sequence[str], said: str, **did: Sequence[Path]) -> Answer:
    as_json = partial(_json, before.folder, told, did)
    return Answer(as_json, "\n".join((said, *map(as_sentence, told))))


def _json(
    folder: Path, told: Sequence[str], did: Mapping[str, Sequence[Path]]
) -> Mapping[str, object]:
    now = desktop_entry.entry()
    paths = {
        **dict.fromkeys(("written", "replaced", "removed"), ()),
        **did,
        "there": now.there,
        "missing": now.missing,
        "other": now.other,
    }
    return {
        "folder": str(folder),
        **{name: [str(each) for each in some] for name, some in paths.items()},
        "told": list(told),
    }
