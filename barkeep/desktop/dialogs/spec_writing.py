"""Opening the spec editor from a page, and offering drafts that were not finished."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from functools import partial
from pathlib import Path

from barkeep.desktop.dialogs.kept_drafts import DraftKeeper, KeptDraft, KeptDrafts
from barkeep.desktop.dialogs.spec_draft import SpecDraft
from barkeep.desktop.dialogs.spec_editor import Save, SpecEditor
from barkeep.desktop.screens.base import Screen
from barkeep.domain.specs import Spec

Replace = Callable[[Spec, SpecEditor, Sequence[Spec]], bool]


class SpecWriting:
    """The editor over one page; `add` and `replace` put specs into the bar."""

    def __init__(self, page: Screen, add: Save, replace: Replace) -> None:
        self._page, self._add, self._replace = page, add, replace
        self.editor: SpecEditor | None = None
        context = page.context
        self.drafts = KeptDrafts(context.state.folder, context.bar.path)
        self._offered: set[Path] = set()

    def write(self, draft: SpecDraft) -> SpecEditor:
        """Open the editor on a draft."""
        return self._open(draft, self.drafts.begin(draft))

    def offer(self) -> None:
        """Offer the newest draft that was not finished above the page's list, once."""
        for kept in self.drafts.offered():
            if kept.file not in self._offered and not self._page.banner.text:
                self._offered.add(kept.file)
                words = f"“{kept.name}” was begun on {kept.at:%d %B, %H:%M} and not saved."
                act = f"Go on with the draft of {_short(kept.name)}"
                self._page.banner.say(words, "info", act, partial(self._go_on, kept))

    def _go_on(self, kept: KeptDraft) -> None:
        self._page.banner.clear()
        specs = self._page.context.bar.snapshot.specs
        spec = next((each for each in specs if each.id == kept.spec_id), None)
        draft = kept.resumed(spec)
        self._open(draft, self.drafts.go_on(kept, draft))

    def _open(self, draft: SpecDraft, keeper: DraftKeeper) -> SpecEditor:
        changes = draft.changes
        save = self._add if changes is None else partial(self._replace, changes)
        snapshot = self._page.context.bar.snapshot
        editor = SpecEditor(draft, snapshot, save, self._page, keeper)
        editor.finished.connect(lambda _result: self._offer_again(keeper))
        self.editor = editor
        editor.open()
        return editor

    def _offer_again(self, keeper: DraftKeeper) -> None:
        """What was kept for later is there to be gone on with at once."""
        self._offered.discard(keeper.file)
        self.offer()


def _short(name: str) -> str:
    return name if len(name) <= 32 else f"{name[:31].rstrip()}…"
