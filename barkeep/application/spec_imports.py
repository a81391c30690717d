"""Specs out of documents that were looked at: all of them come in, or none."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import dataclass, replace
from typing import Literal

from barkeep.application.done import Done
from barkeep.application.session import Session
from barkeep.application.spec_preview import EVERY, Differing, Preview, Progress, Steps, go_on
from barkeep.domain.ingredients import folded
from barkeep.domain.spec_differences import same_spec
from barkeep.domain.specs import Spec
from barkeep.errors import DuplicateName, InvalidField
from barkeep.store import specs as spec_rows
from barkeep.store.unit_of_work import UnitOfWork

Choice = Literal["keep_mine", "take_theirs", "add"]
CHANGED = "it has changed since it was compared; look at the file again"
AT_A_TIME = 250
"""Specs written between two calls of `Progress`."""


@dataclass(frozen=True, slots=True)
class Decision:
    """What becomes of a spec that differs; `name` is the one it is added under."""

    choice: Choice = "keep_mine"
    name: str = ""


@dataclass(frozen=True, slots=True)
class ImportedSpecs:
    """Names of the specs that came in, that took the place of mine, and that stayed mine."""

    added: tuple[str, ...] = ()
    replaced: tuple[str, ...] = ()
    kept: tuple[str, ...] = ()


def import_previewed(
    session: Session,
    looked_at: Preview,
    decisions: Mapping[int, Decision],
    progress: Progress | None = None,
) -> Done[ImportedSpecs]:
    """Bring in what was looked at, all of it or nothing; one step of undo.

    `decisions` are by the place in `looked_at.differing`; without one, mine is
    kept. Raises `Stopped` where `progress` says not to go on, `DuplicateName`
    for a name that is taken, and `InvalidField` for a classic that cannot be
    replaced and for a spec that is no longer as it was compared.
    """
    adding = [each.spec for each in looked_at.new]
    replacing: list[Differing] = []
    kept: list[str] = []
    for place, each in enumerate(looked_at.differing):
        decided = decisions.get(place, Decision())
        if decided.choice == "add":
            name = " ".join(decided.name.split()) or each.free_name
            adding.append(replace(each.incoming.spec, name=name))
        elif decided.choice == "take_theirs":
            replacing.append(_replaceable(each))
        else:
            kept.append(each.mine.name)
    count = len(adding) + len(replacing)
    step = Steps(count, progress or go_on, "The import")
    with session.writing(f"Import {count} spec{'s' * (count != 1)}") as work:
        _refuse_taken(session, work, adding)
        _replace_all(work, replacing, step)
        _add_all(work, adding, step)
    names = tuple(each.name for each in adding), tuple(each.mine.name for each in replacing)
    return session.finished(work, lambda _bar: ImportedSpecs(*names, tuple(kept)))


def _replaceable(each: Differing) -> Differing:
    if not each.replaceable:
        what = "it is a classic that barkeep brings along; keep it, or add theirs under a name"
        raise InvalidField("spec", each.mine.name, what)
    return each


def _refuse_taken(session: Session, work: UnitOfWork, adding: Sequence[Spec]) -> None:
    taken = set(spec_rows.taken_names(work.connection))
    taken |= {folded(each.name) for each in session.shipped.classics}
    for spec in adding:
        if folded(spec.name) in taken:
            raise DuplicateName("spec", spec.name)
        taken.add(folded(spec.name))


def _replace_all(work: UnitOfWork, replacing: Sequence[Differing], steps: Steps) -> None:
    for number, each in enumerate(replacing):
        if number % EVERY == 0:
            steps.go(number)
        spec_id = each.mine.id
        there = None if spec_id is None else spec_rows.read_spec(work.connection, spec_id)
        if spec_id is None or there is None or not same_spec(there, each.mine):
            raise InvalidField("spec", each.mine.name, CHANGED)
        theirs = replace(each.incoming.spec, name=there.name, added=there.added, classic=False)
        work.put("spec", (spec_id,), {"id": spec_id, **spec_rows.spec_row(theirs)})
    steps.go(len(replacing))


def _add_all(work: UnitOfWork, adding: Sequence[Spec], steps: Steps) -> None:
    today, before = work.at.date(), steps.done
    for start in range(0, len(adding), AT_A_TIME):
        some = adding[start : start + AT_A_TIME]
        rows = [spec_rows.spec_row(replace(each, added=today, classic=False)) for each in some]
        work.insert("spec", rows)
        steps.go(before + start + len(some))
