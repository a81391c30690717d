"""Drafts of specs: what the editor starts from, kept while written, and offered again."""

from __future__ import annotations

import json
from collections.abc import Iterable, Mapping
from contextlib import suppress
from dataclasses import dataclass
from datetime import datetime
from pathlib import Path
from typing import Any
from uuid import uuid4

from barkeep.desktop.screens.kept import folder_of, write_whole
from barkeep.domain.amounts.units import US_UNITS, BarUnits
from barkeep.domain.ingredients.tree import FamilyTree
from barkeep.domain.phrases import folded
from barkeep.domain.spec_text.text import write_spec
from barkeep.domain.specs.riffs import riff_on
from barkeep.domain.specs.spec import Spec
from barkeep.translation import tr, tr_noop

NEW, EDIT, RIFF = tr_noop("New spec"), tr_noop("Edit {name}"), tr_noop("Riff on {name}")


@dataclass(frozen=True, slots=True)
class SpecDraft:
    """`changes` is the spec being changed; `renames` says that a name is still to be chosen.

    `text` is what it starts from; `written` what was written since, where a
    draft is gone on with. `is_stale` says that the spec was changed since then.
    `words` are its title before it is translated, with the name that stands in it.
    """

    words: str
    text: str = ""
    changes: Spec | None = None
    renames: bool = False
    written: str | None = None
    is_stale: bool = False
    about: str = ""

    @property
    def title(self) -> str:
        """What is being written, as the editor is headed."""
        return tr(self.words, name=self.about) if self.about else tr(self.words)


def for_new() -> SpecDraft:
    """An empty page."""
    return SpecDraft(NEW)


def for_edit(spec: Spec, tree: FamilyTree, units: BarUnits = US_UNITS) -> SpecDraft:
    """The text of a spec that is there."""
    return SpecDraft(EDIT, write_spec(spec, tree, units), spec, about=spec.name)


def for_riff(
    spec: Spec, taken: Iterable[str], tree: FamilyTree, units: BarUnits = US_UNITS
) -> SpecDraft:
    """The text of a spec under a new name, with *Riff of* what it comes from."""
    used = {folded(name) for name in taken}
    riff = riff_on(spec, _free_name(spec.name, used))
    return SpecDraft(RIFF, write_spec(riff, tree, units), renames=True, about=spec.name)


def _free_name(name: str, used: set[str]) -> str:
    free, number = tr("{name} riff", name=name), 2
    while folded(free) in used:
        free, number = tr("{name} riff {number}", name=name, number=number), number + 1
    return free


FOLDER = "drafts"
_OPEN: set[Path] = set()
"""Files of the drafts that editors of this process are writing."""


@dataclass(frozen=True, slots=True)
class KeptDraft:
    """A draft as it was left. `spec_id` is that of the spec it changes, None for a new one."""

    file: Path
    words: str
    text: str
    at: datetime
    spec_id: int | None = None
    base: str = ""
    about: str = ""

    @property
    def name(self) -> str:
        """What it is the draft of."""
        first = next((row.strip() for row in self.text.splitlines() if row.strip()), "")
        return first or SpecDraft(self.words, about=self.about).title

    def resumed(self, spec: Spec | None, tree: FamilyTree, units: BarUnits = US_UNITS) -> SpecDraft:
        """The editor's start; without the spec that it changed it is a new one."""
        kept = spec is not None or self.spec_id is None
        return SpecDraft(
            self.words if kept else NEW,
            self.base if kept else "",
            spec,
            written=self.text,
            is_stale=spec is not None and write_spec(spec, tree, units) != self.base,
            about=self.about,
        )


class DraftKeeper:
    """Keeps one draft in a file while it is written; a full disk costs the copy only."""

    def __init__(self, file: Path, draft: SpecDraft) -> None:
        self.file, self._draft = file, draft
        self._kept: str | None = None
        _OPEN.add(file)

    def keep(self, text: str) -> None:
        """Keep the text as it is now; an unchanged or empty one is not kept."""
        if text == self._kept:
            return
        self._kept = text
        if not text.strip() or text.strip() == self._draft.text.strip():
            self.drop()
            return
        changes = self._draft.changes
        values = {
            "title": self._draft.words,
            "about": self._draft.about,
            "text": text,
            "base": self._draft.text,
            "spec_id": None if changes is None else changes.id,
            "at": datetime.now().isoformat(timespec="seconds"),
        }
        with suppress(OSError):
            write_whole(self.file, values)

    def drop(self) -> None:
        """Keep it no longer: it is saved, or thrown away."""
        with suppress(OSError):
            self.file.unlink(missing_ok=True)

    def leave(self) -> None:
        """The editor is gone; what is kept may be offered."""
        _OPEN.discard(self.file)


class KeptDrafts:
    """The drafts of one bar, in a folder of their own beside the window's state."""

    def __init__(self, state_folder: Path, bar: Path) -> None:
        self._folder = folder_of(bar, state_folder, FOLDER)

    def begin(self, draft: SpecDraft) -> DraftKeeper:
        """Keep another draft from now on."""
        return DraftKeeper(self._folder / f"{uuid4().hex}.json", draft)

    def go_on(self, kept: KeptDraft, draft: SpecDraft) -> DraftKeeper:
        """Go on keeping one in its own file."""
        return DraftKeeper(kept.file, draft)

    def offered(self) -> tuple[KeptDraft, ...]:
        """Drafts that nobody is writing now, the newest first; a broken file is none."""
        files = self._folder.glob("*.json") if self._folder.is_dir() else ()
        found = (_read(file) for file in files if file not in _OPEN)
        kept = (each for each in found if each is not None)
        return tuple(sorted(kept, key=lambda each: (each.at, each.file.name), reverse=True))


def _read(file: Path) -> KeptDraft | None:
    try:
        values: Mapping[str, Any] = json.loads(file.read_text(encoding="utf-8"))
        spec_id = values["spec_id"]
        return KeptDraft(
            file=file,
            words=str(values["title"]),
            text=str(values["text"]),
            at=datetime.fromisoformat(values["at"]),
            spec_id=None if spec_id is None else int(spec_id),
            base=str(values["base"]),
            about=str(values.get("about", "")),
        )
    except (OSError, ValueError, KeyError, TypeError):
        return None
