"""Specs: every drink of the bar, own and classic, and what can be done with it."""

from __future__ import annotations

from collections.abc import Callable, Hashable, Iterator, Sequence
from dataclasses import replace
from functools import partial

from PySide6.QtCore import QSize, Qt
from PySide6.QtGui import QKeySequence
from PySide6.QtWidgets import QComboBox, QWidget

from barkeep.application.done import Done
from barkeep.application.publishing import camera_drinks
from barkeep.application.stale import spec_changed_since
from barkeep.desktop.drink.analysis_view import bars_among_kin, correction_words, view_of
from barkeep.desktop.drink.camera_sheet import open_on_camera
from barkeep.desktop.drink.dragged_specs import DragsSpecs
from barkeep.desktop.drink.finding import Finding, language_as_help
from barkeep.desktop.drink.to_shoot import ADD_TO_SHOOT, ADD_TO_SHOOT_KEYS, add_to_shoot
from barkeep.desktop.drink.words import ANY_BASE, kinds_by_name
from barkeep.desktop.making.batch import open_batch
from barkeep.desktop.screens.list_stack import set_widths
from barkeep.desktop.screens.operations import run_operation
from barkeep.desktop.screens.screen import ScreenContext
from barkeep.desktop.screens.table_screen import (
    OneOrMore,
    TableScreen,
    on_activated,
    one_or_many,
    sort_by,
)
from barkeep.desktop.specs.drafts import for_edit, for_new, for_riff
from barkeep.desktop.specs.editor import SpecEditor, SpecWriting
from barkeep.desktop.specs.family import (
    FamilySection,
    TrialRow,
    beside_parent,
    in_brief,
    kin_in_brief,
    trial_rows,
    version_rows,
)
from barkeep.desktop.specs.one_spec import SpecPage, SpecPart, SpecShown
from barkeep.desktop.specs.rows import SpecRow, spec_columns, spec_rows
from barkeep.desktop.specs.trials import TrialActs, TrialDialog, TrialsSection, day_of
from barkeep.desktop.widgets.buttons import offer_choices, primary_button
from barkeep.desktop.widgets.chips import FilterChips
from barkeep.desktop.widgets.delegates import VerdictDelegate
from barkeep.desktop.widgets.detail_bar import NO_ACTS, DetailActs
from barkeep.desktop.widgets.empty_state import WIDER, EmptyState
from barkeep.desktop.widgets.offered import Offered
from barkeep.domain.bar.changes import Changes, Part
from barkeep.domain.bar.snapshot import Snapshot
from barkeep.domain.drink.search import facts_for
from barkeep.domain.phrases import counted
from barkeep.domain.pouring.evening import Evening, evening_of
from barkeep.domain.pouring.memory import Memory
from barkeep.domain.pouring.verdicts import Drink
from barkeep.domain.spec_text.settling import OpenQuestion, open_questions
from barkeep.domain.specs.called import named_by
from barkeep.domain.specs.query import SpecFacts
from barkeep.domain.specs.shown_lines import shown_lines, style_note
from barkeep.domain.specs.spec import Spec
from barkeep.domain.specs.trials import Trial
from barkeep.domain.stand_ins.corrections import correction_for
from barkeep.translation import tr, tr_noop

NONE_OWN = tr_noop(
    "None is your own yet: write one with New spec…, import some, or riff on a classic"
)
NEVER_CHANGED = tr_noop("{name} is a classic that barkeep brings along; it cannot be changed.")
NEVER_REMOVED = tr_noop("{name} is a classic that barkeep brings along; it cannot be removed.")
QUESTION = "specs-search"
"""Under which slow facts are asked for in the background."""


def _facts_of(snapshot: Snapshot, asks: frozenset[str], memory: Memory) -> Sequence[SpecFacts]:
    return facts_for(snapshot.all_specs, snapshot, asks, memory)


def _specs_tonight(snapshot: Snapshot, memory: Memory) -> tuple[Evening, tuple[SpecRow, ...]]:
    """Tonight, and every spec with its verdict."""
    evening = evening_of(snapshot, memory=memory)
    return evening, spec_rows(snapshot, memory, evening)


ORIGINS = (
    ("all", tr_noop("All"), tr_noop("Your own specs and the classics")),
    ("own", tr_noop("Own"), tr_noop("Only your own specs")),
    ("classics", tr_noop("Classics"), tr_noop("Only the classics barkeep brings along")),
)
CORRECTION, KIN = "specs-correction", "specs-kin"
"""Under which the question is asked what a drink with stand-ins needs."""

Keys = QKeySequence.StandardKey

EDIT, RIFF, REMOVE = tr_noop("&Edit spec…"), tr_noop("R&iff…"), tr_noop("&Remove spec")
SHOW_TONIGHT, BATCH, ON_CAMERA = (
    tr_noop("Show in &Tonight"),
    tr_noop("&Batch…"),
    tr_noop("On &camera"),
)
COLUMN_WIDTHS = (236, 104, 124, 88, 112, 72)


class SpecsScreen(TableScreen[SpecRow]):
    """One row a spec; verdicts follow as soon as tonight has been asked."""

    key = "specs"
    title = tr_noop("Specs")
    only_looks = frozenset({SHOW_TONIGHT, BATCH, ON_CAMERA})
    noun = tr_noop("specs")
    search_hint = tr_noop("Search specs and ingredients…")

    @property
    def search_help(self) -> str:  # type: ignore[override]
        """What can be searched for, in the language that is spoken as the page is made."""
        return language_as_help()

    def __init__(self, context: ScreenContext, parent: QWidget | None = None) -> None:
        words = tr("A spec is plain text: its name, then one ingredient a line")
        empty = EmptyState("picture-empty-glass", tr("No specs yet"), words, tr("New spec…"))
        super().__init__(context, spec_columns(), empty, parent)
        self._memory = Memory()
        self._evening: Evening | None = None
        self._finding: Finding[Snapshot] = Finding(
            context.background, QUESTION, _facts_of, self.filter_again, waiting=self.waiting
        )
        self._page = SpecPage(self.detail.folds)
        self._page.ingredient_followed.connect(lambda key: context.go("stand-ins", key))
        self._page.spec_followed.connect(self.show_thing)
        self._page.balance_seen.connect(self._ask_of_kin)
        self.detail.show_page(self._page)
        self._page.hide()  # until there is a spec to speak of
        self.writing = SpecWriting(self, self._add, self._replace)
        self.origins = FilterChips(tr("Show"), ORIGINS, "all")
        self.bases = QComboBox()
        self._prepare_filters()
        self._prepare_actions()
        self._prepare_view()
        self.add_header_button(primary_button(tr("New spec…"), self.write_new))
        empty.acted.connect(self.write_new)

    @property
    def editor(self) -> SpecEditor | None:
        """The editor that was opened last."""
        return self.writing.editor

    # What a table screen asks

    def make_ready(self, size: QSize) -> None:
        self._page.make_ready()
        super().make_ready(size)

    def refresh(self, changes: Changes) -> None:
        snapshot = self.context.bar.snapshot
        self._finding.prepare(snapshot)
        if self.table.rows and changes != {Part.BOTTLES}:  # at first they come with the verdicts
            self._show_specs(spec_rows(snapshot, self._memory, self._evening))
        if changes == {Part.TRIALS}:
            return  # they change no verdict
        self.writing.offer()
        question = partial(_specs_tonight, snapshot, self._memory)
        self.ask(question, self._show_answer, tr("Working out tonight…"))

    def identity(self, row: SpecRow) -> Hashable:
        return row.spec.name

    def matcher(self, rows: Sequence[SpecRow]) -> Callable[[SpecRow], bool]:
        snapshot = self.context.bar.snapshot
        self.search.show_problem(self._finding.read(self.search.text, snapshot))
        found = self._finding.finder(snapshot)
        origin, kind = self.origins.choice, self.bases.currentData()

        def matches(row: SpecRow) -> bool:
            if origin != "all" and row.spec.classic != (origin == "classics"):
                return False
            return (kind is None or row.base.kind == kind) and found(row.spec)

        return matches

    def chosen_specs(self) -> tuple[str, ...]:
        return tuple(row.spec.name for row in self.chosen)

    def clear_filters(self) -> None:
        self.origins.choose("all")
        self.bases.setCurrentIndex(0)
        super().clear_filters()

    def hold(self, reason: str) -> None:
        renew = reason != self.held and self.current is not None
        super().hold(reason)
        if renew:
            self.show_row(self.current)  # what stands within the details writes too

    def show_row(self, row: SpecRow | None) -> None:
        self.context.background.forget(CORRECTION)
        self.context.background.forget(KIN)
        self._page.setVisible(row is not None)
        if row is None:
            self.detail.show_bar("", NO_ACTS)
            return
        drink = row.drink()
        shown = self._shown(row.spec, drink)
        self.detail.show_bar(row.spec.name, self._acts(row.spec, shown.questions))
        self._page.fill(shown, list(self._further_of(row.spec)))
        self.detail.scroll_to(0)
        if drink is not None and drink.verdict == "stand_in":
            snapshot, tree = self.context.bar.snapshot, shown.tree
            self.context.background.ask(
                CORRECTION,
                partial(correction_for, drink, snapshot),
                lambda found: self._page.show_correction(
                    correction_words(found, named_by(row.spec.lines, tree))
                ),
            )

    def _ask_of_kin(self) -> None:
        """Set the drink that is looked at among the others of its family."""
        row = self.current
        if row is not None:
            question = partial(bars_among_kin, row.spec, self.context.bar.snapshot)
            self.context.background.ask(KIN, question, self._page.show_bars)

    def _shown(self, spec: Spec, drink: Drink | None) -> SpecShown:
        snapshot = self.context.bar.snapshot
        tree, settings = snapshot.knowledge.tree, snapshot.settings
        return SpecShown(
            spec=spec,
            drink=drink,
            lines=shown_lines(spec, tree, settings.shown_in, settings.units),
            tree=tree,
            view=view_of(spec, snapshot),
            known=spec.riff_of is not None
            and any(each.name == spec.riff_of for each in snapshot.all_specs),
            amounts_note=style_note(spec, tree, settings.shown_in, settings.units),
            questions=open_questions(spec, tree, settings.units),
        )

    def _acts(self, spec: Spec, questions: Sequence[OpenQuestion]) -> DetailActs:
        """An own spec is edited, a classic riffed on; what is asked of its lines goes first."""
        offered, own = self._of_a_row, not spec.classic
        often = [
            self.offered(offered[RIFF], tr("Riff…")),
            self.offered(offered[SHOW_TONIGHT], tr("Show in Tonight")),
        ]
        if own:
            often.insert(0, self.offered(offered[EDIT], tr("Edit…")))
        if own and any(each.settles for each in questions):
            often.insert(0, Offered(tr("Settle"), self.settle_current))
        rest = [offered[each] for each in (BATCH, ON_CAMERA, *([REMOVE] if own else []))]
        rest.insert(1, offered[ADD_TO_SHOOT])
        return DetailActs(tuple(often), tuple(map(self.offered, rest)))

    def _further_of(self, spec: Spec) -> Iterator[SpecPart]:
        """The further parts of a spec's page: its kin, and the trials of an own one."""
        snapshot = self.context.bar.snapshot
        kin = kin_in_brief(spec, snapshot)
        if kin:
            yield SpecPart("family", tr("Family"), kin, partial(self._family_of, spec))
        if spec.id is not None:
            rows = trial_rows(spec, snapshot)
            brief = in_brief([each.trial for each in rows]) or tr("None yet")
            yield SpecPart("trials", tr("Trials"), brief, partial(self._trials_of, rows))

    def _family_of(self, spec: Spec) -> FamilySection:
        snapshot = self.context.bar.snapshot
        beside, versions = beside_parent(spec, snapshot), version_rows(spec, snapshot)
        section = FamilySection(spec.name, beside, versions)
        section.followed.connect(self.show_thing)
        return section

    # What the user does

    def write_new(self) -> None:
        """Open the editor on nothing."""
        self.writing.write(for_new())

    def edit_current(self) -> None:
        """Open the editor on the chosen spec; a classic offers a riff instead."""
        spec = self._chosen()
        if spec is None or self._is_classic(spec, NEVER_CHANGED):
            return
        snapshot = self.context.bar.snapshot
        draft = for_edit(spec, snapshot.knowledge.tree, snapshot.settings.units)
        self.writing.write(draft)

    def settle_current(self) -> None:
        """Read again what was not understood of the chosen spec and is by now."""
        spec = self._chosen()
        if spec is not None and spec.id is not None:
            settle = partial(self.context.bar.specs.settle, spec.id)
            self.do(settle, say=tr("Settled questions of {name}", name=spec.name))

    def riff_current(self) -> None:
        """Open the editor on a copy of the chosen spec."""
        spec = self._chosen()
        if spec is not None:
            snapshot = self.context.bar.snapshot
            taken = [each.name for each in snapshot.all_specs]
            tree, units = snapshot.knowledge.tree, snapshot.settings.units
            self.writing.write(for_riff(spec, taken, tree, units))

    def remove_current(self) -> None:
        """Take the chosen specs out of the book; the toast can put them back."""
        self.banner.clear()
        chosen = [row.spec for row in self.chosen]
        if any(self._is_classic(spec, NEVER_REMOVED) for spec in chosen):
            return
        specs = {spec.id: spec.name for spec in chosen if spec.id is not None}
        if specs:
            remove = partial(self.context.bar.specs.remove, *specs)
            self.do(
                remove,
                say=tr("Removed {specs}", specs=one_or_many(list(specs.values()), "specs")),
            )

    def show_tonight(self) -> None:
        """Show the chosen spec on the Tonight page."""
        spec = self._chosen()
        if spec is not None:
            self.context.go("tonight", spec.name)

    def batch_current(self) -> None:
        """Make the chosen spec many."""
        spec = self._chosen()
        if spec is not None:
            open_batch(self.context, spec, self)

    def show_on_camera(self) -> None:
        """Step through the chosen spec in large type."""
        spec = self._chosen()
        if spec is not None:
            open_on_camera(camera_drinks([(spec, 1)], self.context.bar.snapshot), self)

    def add_to_shoot(self) -> None:
        """Put the chosen specs into a shoot."""
        self.banner.clear()
        add_to_shoot(self, [row.spec for row in self.chosen])

    # What is done with the trials of the chosen spec

    def add_trial(self) -> None:
        """Ask how the chosen spec tasted."""
        spec = self.current.spec if self.current is not None else None
        if spec is not None and spec.id is not None:
            self._ask_trial(Trial(None, spec.id, self.context.bar.snapshot.on), spec.name)

    def edit_trial(self, trial: Trial) -> None:
        """Ask what was really said."""
        if self.current is not None:
            self._ask_trial(trial, self.current.spec.name)

    def remove_trial(self, trial: Trial) -> None:
        """Take a trial away; the toast can put it back."""
        remove = partial(self.context.bar.trials.remove, trial.id or 0)
        if self.do(remove, say=tr("Removed the trial of {day}", day=day_of(trial))):
            self._come_back_to_trials()

    def mark_won(self, trial: Trial, won: bool) -> None:
        """Say that a trial settled on this version, or take that back."""
        name = "" if self.current is None else self.current.spec.name
        said = (
            tr("{name} is the version that won", name=name)
            if won
            else tr("{name} is not settled on", name=name)
        )
        if self.do(partial(self.context.bar.trials.mark_won, trial.id or 0, won), say=said):
            self._come_back_to_trials()

    def _trials_of(self, rows: Sequence[TrialRow]) -> TrialsSection:
        acts = TrialActs(self.add_trial, self.edit_trial, self.mark_won, self.remove_trial)
        return TrialsSection(rows, acts, self.held)

    def _ask_trial(self, trial: Trial, name: str) -> None:
        self.clear_refusal()
        dialog = TrialDialog(self.context.bar, trial, name, self)
        dialog.written.connect(self._on_trial_written)
        self.open_dialog(dialog, self._come_back_to_trials)

    def _on_trial_written(self, done: Done[Trial]) -> None:
        if done.changes:
            self.say_done(tr("Wrote down the trial of {day}", day=day_of(done.value)))

    def _come_back_to_trials(self) -> None:
        """The page, and with it the button that was pressed, may have been built anew."""
        section = self._page.shown_part(TrialsSection)
        if section is not None:
            section.add_button.setFocus(Qt.FocusReason.OtherFocusReason)
            self.show_in_details(section)

    # The rest

    def _chosen(self) -> Spec | None:
        self.banner.clear()
        return None if self.current is None else self.current.spec

    def _is_classic(self, spec: Spec, words: str) -> bool:
        """Whether the spec is a classic, said above the list with what to do instead."""
        if spec.classic:
            self.banner.say(tr(words, name=spec.name), "info", tr("Riff…"), self.riff_current)
        return spec.classic

    def _add(self, editor: SpecEditor, specs: Sequence[Spec]) -> bool:
        def saved(done: Done[tuple[Spec, ...]]) -> None:
            names = [spec.name for spec in done.value]
            said = names[0] if len(names) == 1 else counted(len(names), "spec")
            self._after_saving(tr("Added {said}", said=said), names[0])

        return run_operation(editor, partial(self.context.bar.specs.add, specs), saved)

    def _replace(self, editor: SpecEditor, specs: Sequence[Spec]) -> bool:
        before = editor.changes
        if before is None:  # it was removed since
            return self._add(editor, specs)

        def saved(done: Done[Spec]) -> None:
            self._after_saving(tr("Changed {name}", name=done.value.name), done.value.name)

        changed = replace(specs[0], id=before.id)
        if editor.is_stale:
            editor.show_refusal(spec_changed_since(changed, before))
            return False
        act = partial(self.context.bar.specs.replace, changed, before)
        return run_operation(editor, act, saved)

    def _after_saving(self, said: str, name: str) -> None:
        self.say_done(said)
        self.show_thing(name)
        self.focus_list()

    def _show_answer(self, answer: tuple[Evening, tuple[SpecRow, ...]]) -> None:
        self._evening, rows = answer
        self._show_specs(rows)

    def _show_specs(self, rows: Sequence[SpecRow]) -> None:
        self._offer_bases(rows)
        self.show_rows(rows)
        self._sum_up()

    def _sum_up(self) -> None:
        own = sum(not row.spec.classic for row in self.table.rows)
        self.summary.setText(
            tr("{own} of your own, {others} classics", own=own, others=len(self.table.rows) - own)
        )
        if self.list_stack is not None:
            self.list_stack.no_match.line.setText(tr(WIDER if own else NONE_OWN))

    def _offer_bases(self, rows: Sequence[SpecRow]) -> None:
        """Every kind something is built on, by name; the choice stays where it still stands."""
        tree = self.context.bar.snapshot.knowledge.tree
        kinds = kinds_by_name({row.base.kind for row in rows if row.base.kind}, tree)
        any_base, of_none = ANY_BASE
        offer_choices(self.bases, [(tr(any_base), of_none), *kinds])

    def _prepare_filters(self) -> None:
        self.origins.chosen.connect(lambda _choice: self.filter_again())
        self.bases.setAccessibleName(tr("Base"))
        self.bases.setSizeAdjustPolicy(
            QComboBox.SizeAdjustPolicy.AdjustToMinimumContentsLengthWithIcon
        )
        self.bases.setMinimumContentsLength(14)
        self.bases.addItem(tr(ANY_BASE[0]), None)
        self.bases.currentIndexChanged.connect(lambda _index: self.filter_again())
        self.add_filter(self.origins)
        self.add_filter(self.bases)

    def _prepare_actions(self) -> None:
        self._offer_actions(
            (
                (tr("&New spec…"), Keys.New, "add", self.write_new, False),
                (EDIT, ("Ctrl+E", "F2"), "specs", self.edit_current, True),
                (RIFF, "Ctrl+R", "stand-ins", self.riff_current, True),
                (REMOVE, Keys.Delete, "remove", self.remove_current, True),
                (SHOW_TONIGHT, "Ctrl+T", "tonight", self.show_tonight, True),
                (BATCH, "Ctrl+B", "pour", self.batch_current, True),
                (ON_CAMERA, "F8", "shoots", self.show_on_camera, True),
                (ADD_TO_SHOOT, ADD_TO_SHOOT_KEYS, "add", self.add_to_shoot, True),
            )
        )

    def _offer_actions(
        self, actions: Sequence[tuple[str, OneOrMore, str, Callable[[], object], bool]]
    ) -> None:
        """Offer these, and keep those of a row by their words before they are translated."""
        self.list_actions(actions)
        words = [words for words, *_others, of_a_row in actions if of_a_row]
        self._of_a_row = dict(zip(words, self.of_a_row, strict=True))

    def _prepare_view(self) -> None:
        self.view.setItemDelegateForColumn(1, VerdictDelegate(self.view))
        DragsSpecs(self.view, self.chosen_specs)
        set_widths(self.view, COLUMN_WIDTHS, whole={1})
        sort_by(self.view, 0)
        on_activated(self.view, self.edit_current)
