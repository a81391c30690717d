"""The owner's specs: add, replace, remove, find."""

from __future__ import annotations

from collections.abc import Collection, Mapping, Sequence
from dataclasses import replace

from barkeep.application.done import Done
from barkeep.application.finding import find_ingredient, find_spec, nearest_names
from barkeep.application.session import Session
from barkeep.application.spec_imports import Decision, ImportedSpecs, import_previewed
from barkeep.application.spec_preview import Preview, Progress
from barkeep.domain.ingredients import folded
from barkeep.domain.snapshot import Snapshot
from barkeep.domain.spec_headers import MOST_SERVES
from barkeep.domain.specs import Spec
from barkeep.errors import DuplicateName, InvalidField, UnknownName
from barkeep.store import specs as spec_rows
from barkeep.store.unit_of_work import UnitOfWork


class Specs:
    """The use cases of `bar.specs`."""

    def __init__(self, session: Session) -> None:
        self._session = session

    def get(self, name: str) -> Spec:
        """The owner's spec or the classic of this name. Raises `UnknownName`, `AmbiguousName`."""
        return find_spec(self._session.snapshot, name)

    def add(self, specs: Sequence[Spec]) -> Done[tuple[Spec, ...]]:
        """Add specs, all of them or none.

        Raises `DuplicateName` for a name that is taken, among the classics
        too, `InvalidField`, and `UnknownName` for an ingredient or for a
        spec that one is said to be a riff of. That may be one of `specs`.
        """
        checked = [self._checked(spec) for spec in specs]
        self._refuse_unknown_riffs(checked)
        with self._session.writing(_label("Add", checked)) as work:
            self._refuse_taken(work, checked)
            today = work.at.date()
            rows = [spec_rows.spec_row(replace(each, added=today)) for each in checked]
            ids = work.insert("spec", rows) if rows else ()
        return self._session.finished(work, lambda bar: _specs_of(bar, ids))

    def replace(self, spec: Spec) -> Done[Spec]:
        """Make the owner's spec of this id what is given. Raises as `add` does.

        A spec may stay a riff of one that has been removed since.
        """
        checked = self._checked(spec)
        with self._session.writing(f"Change spec {checked.name}") as work:
            old, spec_id = _spec_there(work, spec.id)
            self._refuse_taken(work, [checked], apart_from=[spec_id])
            if checked.riff_of != old.riff_of:
                self._refuse_unknown_riffs([checked])
            row = spec_rows.spec_row(replace(checked, added=old.added))
            work.put("spec", (spec_id,), {"id": spec_id, **row})
        return self._session.finished(work, lambda bar: _specs_of(bar, [spec_id])[0])

    def import_previewed(
        self,
        looked_at: Preview,
        decisions: Mapping[int, Decision] | None = None,
        progress: Progress | None = None,
    ) -> Done[ImportedSpecs]:
        """Bring in what `spec_preview.preview` found; see `spec_imports.import_previewed`."""
        return import_previewed(self._session, looked_at, decisions or {}, progress)

    def remove(self, spec_id: int) -> Done[Spec]:
        """Take a spec out of the book. Raises `UnknownName`."""
        with self._session.writing() as work:
            spec, _ = _spec_there(work, spec_id)
            work.label = f"Remove spec {spec.name}"
            work.put("spec", (spec_id,), None)
        return self._session.finished(work, lambda _bar: spec)

    def _checked(self, spec: Spec) -> Spec:
        name = " ".join(spec.name.split())
        if not name:
            raise InvalidField("name", spec.name, "a spec needs a name")
        if not spec.lines:
            raise InvalidField("lines", "", f"{name} needs at least one")
        if not 0.0 < spec.serves <= MOST_SERVES:
            raise InvalidField(
                "serves", spec.serves, f"it is more than 0 and at most {MOST_SERVES:.0f}"
            )
        lines = tuple(
            replace(
                line,
                ingredient=find_ingredient(self._session.tree, line.ingredient),
                alternatives=tuple(
                    find_ingredient(self._session.tree, each) for each in line.alternatives
                ),
            )
            for line in spec.lines
        )
        return replace(spec, name=name, lines=lines, classic=False)

    def _refuse_unknown_riffs(self, specs: Sequence[Spec]) -> None:
        names = [each.name for each in (*self._session.snapshot.all_specs, *specs)]
        known = {folded(name) for name in names}
        for spec in specs:
            if spec.riff_of is None:
                continue
            if folded(spec.riff_of) == folded(spec.name):
                raise InvalidField("riff of", spec.riff_of, "no spec is a riff of itself")
            if folded(spec.riff_of) not in known:
                raise UnknownName("spec", spec.riff_of, nearest_names(spec.riff_of, names))

    def _refuse_taken(
        self, work: UnitOfWork, specs: Sequence[Spec], apart_from: Collection[int] = ()
    ) -> None:
        taken = set(spec_rows.taken_names(work.connection, apart_from))
        taken |= {folded(each.name) for each in self._session.shipped.classics}
        for spec in specs:
            if folded(spec.name) in taken:
                raise DuplicateName("spec", spec.name)
            taken.add(folded(spec.name))


def _spec_there(work: UnitOfWork, spec_id: int | None) -> tuple[Spec, int]:
    if spec_id is None:
        raise UnknownName("spec of yours", "a classic")
    found = spec_rows.read_spec(work.connection, spec_id)
    if found is None:
        raise UnknownName("spec of yours", f"#{spec_id}")
    return found, spec_id


def _specs_of(bar: Snapshot, ids: Sequence[int]) -> tuple[Spec, ...]:
    by_id = {spec.id: spec for spec in bar.specs}
    return tuple(by_id[spec_id] for spec_id in ids)


def _label(verb: str, specs: Sequence[Spec]) -> str:
    if len(specs) == 1:
        return f"{verb} spec {specs[0].name}"
    return f"{verb} {len(specs)} specs"
