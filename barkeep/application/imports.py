"""Specs out of files: looked at beside what the bar has, then brought in, all or none."""

from __future__ import annotations

from collections.abc import Callable, Iterator, Mapping, Sequence
from dataclasses import dataclass, field, replace
from functools import partial
from typing import Literal

from barkeep.application.done import Done
from barkeep.application.session import Session
from barkeep.application.specs import of_known_kinds, refuse_taken_names
from barkeep.documents.specs.columns import (
    ColumnRequest,
    ColumnsUnclear,
    ColumnUse,
    checked_uses,
    columns_text,
)
from barkeep.documents.specs.document import Document
from barkeep.documents.specs.files import document_in, kind_of, read_placed
from barkeep.domain.amounts.units import BarUnits
from barkeep.domain.bar.snapshot import Snapshot
from barkeep.domain.ingredients.tree import FamilyTree
from barkeep.domain.phrases import folded
from barkeep.domain.spec_text.differences import Differences, compared, same_spec
from barkeep.domain.spec_text.parts import SpecParts, text_of_parts
from barkeep.domain.spec_text.settling import open_questions
from barkeep.domain.spec_text.text import ReadSpec, each_spec
from barkeep.domain.specs.spec import Spec
from barkeep.errors import (
    InvalidField,
    Problem,
    Stopped,
    UnreadableFile,
    UnusableFile,
)
from barkeep.store import specs as spec_rows
from barkeep.store.unit_of_work import UnitOfWork
from barkeep.translation import tr, tr_noop

Progress = Callable[[int, int], bool]
"""Called with how much is done and of how much; whether to go on."""

NO_SPEC = tr_noop("there is no spec in it")

Keeps = Callable[[str, str], bool]
"""Called with a file and a place in it: whether the spec there is to be kept with its questions."""


def keep_none(_file: str, _where: str) -> bool:
    """The `Keeps` of who wants no line that is not understood."""
    return False


def keep_all(_file: str, _where: str) -> bool:
    """The `Keeps` of who wants every spec, questions and all."""
    return True


FIRST_ROWS = 100
"""Rows of a list that are looked at while its columns are chosen."""

EVERY = 25
"""Specs between two calls of `Progress`: often enough to stop at once."""


@dataclass(frozen=True, slots=True)
class NamedText:
    """A document: what its file is called, and its text.

    `read_as` is a sentence where its letters were not plain UTF-8. `columns` says
    which columns of a list are what, where that has been asked.
    """

    file: str
    text: str
    read_as: str = ""
    columns: tuple[ColumnUse, ...] = ()


@dataclass(frozen=True, slots=True)
class Incoming:
    """A spec that could be read, where it stood, and what was made of it on the way.

    `left_aside` is in words what its document says of it and no spec has a place for.
    """

    spec: Spec
    file: str
    where: str
    remarks: tuple[str, ...] = ()
    left_aside: tuple[str, ...] = ()


@dataclass(frozen=True, slots=True)
class Differing:
    """A spec whose name the bar has for another: both, side by side.

    A classic, which nobody can change, is never `replaceable`. `free_name` is
    one under which theirs could come in.
    """

    incoming: Incoming
    mine: Spec
    comparison: Differences
    free_name: str

    @property
    def replaceable(self) -> bool:
        """Whether theirs can take the place of mine."""
        return not self.mine.classic


@dataclass(frozen=True, slots=True)
class Unreadable:
    """A spec, or a whole file where `name` is empty, that cannot be used.

    The problems' lines and columns are those of the file; `text` is the spec
    as plain text, to be put right in an editor. `questions` is how many lines
    it could be kept with that are not understood, 0 where more is wrong.
    """

    file: str
    where: str
    name: str
    problems: tuple[Problem, ...]
    text: str = ""
    questions: int = 0


@dataclass(frozen=True, slots=True)
class NeedsColumns:
    """A list that cannot be read before it is said which column is what.

    The answer is `columns` of its `NamedText`, for another preview.
    """

    file: str
    request: ColumnRequest


@dataclass(frozen=True, slots=True)
class LeftAside:
    """What a document says and no spec has a place for; `spec` is empty where it is of none."""

    file: str
    spec: str
    what: str


@dataclass(frozen=True, slots=True)
class FileRemark:
    """A sentence about how a document was read."""

    file: str
    words: str


@dataclass(frozen=True, slots=True)
class ImportPreview:
    """What documents would bring: each spec of theirs is in one of the first four.

    A list whose columns are unclear is in `needs_columns`, and none of its specs anywhere.
    """

    new: tuple[Incoming, ...] = ()
    same: tuple[Incoming, ...] = ()
    differing: tuple[Differing, ...] = ()
    unreadable: tuple[Unreadable, ...] = ()
    needs_columns: tuple[NeedsColumns, ...] = ()
    left_aside: tuple[LeftAside, ...] = ()
    remarks: tuple[FileRemark, ...] = ()

    @property
    def problems(self) -> tuple[Problem, ...]:
        """Every problem, in the order of their files."""
        return tuple(problem for each in self.unreadable for problem in each.problems)


@dataclass(frozen=True, slots=True)
class _Found:
    """A spec as it was read, and where; `row` is 0 where a document does not tell.

    `kept` says that it is to be kept with its questions, where it has no other problem.
    """

    read: ReadSpec
    file: str
    where: str
    row: int
    text: str = ""
    left_aside: tuple[str, ...] = ()
    kept: bool = False

    @property
    def spec(self) -> Spec | None:
        """The spec, None where it cannot come in as it is."""
        return self.read.with_questions if self.kept else self.read.spec

    @property
    def questions(self) -> int:
        """How many lines it could be kept with that are not understood."""
        could_be = self.read.with_questions
        return 0 if could_be is None else len(could_be.unsettled)


def preview(
    snapshot: Snapshot,
    files: Sequence[NamedText],
    progress: Progress | None = None,
    keeps: Keeps = keep_none,
) -> ImportPreview:
    """What these documents would bring to the bar. Writes nothing, and needs no store.

    A file that cannot be used is one `Unreadable`, and so is a spec with lines
    that are not understood, unless `keeps` says to keep it with them. Raises
    `Stopped` where `progress` says not to go on.
    """
    met = _Met()
    met.remarks += (FileRemark(each.file, each.read_as) for each in files if each.read_as)
    found = [
        replace(each, kept=keeps(each.file, each.where))
        for each in _found(snapshot, files, met, progress or go_on)
    ]
    return replace(
        _sorted(found, snapshot, met.unreadable),
        needs_columns=tuple(met.needs_columns),
        left_aside=tuple(met.left_aside),
        remarks=tuple(met.remarks),
    )


@dataclass
class _Met:
    """What is met beside the specs while documents are read."""

    unreadable: list[Unreadable] = field(default_factory=list)
    needs_columns: list[NeedsColumns] = field(default_factory=list)
    left_aside: list[LeftAside] = field(default_factory=list)
    remarks: list[FileRemark] = field(default_factory=list)

    def take_document(self, document: Document, file: str) -> None:
        """Note what a document was read as, and what of it was left aside."""
        self.remarks += (FileRemark(file, words) for words in document.remarks)
        self.left_aside += (LeftAside(file, "", what) for what in document.left_aside)
        self.left_aside += (
            LeftAside(file, each.name, what) for each in document.parts for what in each.left_aside
        )


def first_drink(named: NamedText, columns: Sequence[ColumnUse], snapshot: Snapshot) -> str:
    """What the first drink of a list is with these columns, in its lines.

    Raises a `UserError` where these columns give none.
    """
    checked_uses(columns, columns_text(columns))
    tree, units = snapshot.knowledge.tree, snapshot.settings.units
    beginning = NamedText(named.file, _beginning(named.text))
    document = document_in(beginning.text, beginning.file, columns)
    if not document.parts:
        raise UnreadableFile(named.file, NO_SPEC)
    read = read_placed(document.parts[0], beginning.text, tree, units)
    problems = (f"! {each.message}" for each in read.problems)
    return "\n".join((document.parts[0].name, *document.parts[0].lines, *problems))


def _beginning(text: str) -> str:
    """The first rows of a list, as many as tell what its first drink is."""
    return "".join(text.splitlines(keepends=True)[:FIRST_ROWS])


def go_on(_done: int, _total: int) -> bool:
    """The `Progress` of what nobody stops."""
    return True


@dataclass
class StepCount:
    """Counts what is done, and stops where the user wants it to."""

    total: int
    progress: Progress
    what: str
    done: int = 0

    def go(self, to: int) -> None:
        """That much is done now."""
        self.done = to
        if not self.progress(min(to, self.total), self.total):
            raise Stopped(self.what)

    def go_from(self, before: int, further: int) -> None:
        """That much is done now, beyond what was done before."""
        self.go(before + further)


def _found(
    snapshot: Snapshot,
    files: Sequence[NamedText],
    met: _Met,
    progress: Progress,
) -> Iterator[_Found]:
    """Every spec of the files, read. Progress counts specs, and rows of plain texts."""
    in_parts: list[tuple[NamedText, tuple[SpecParts, ...]]] = []
    plain: list[NamedText] = []
    for each in files:
        if not each.columns and kind_of(each.text, each.file) == "text":
            plain.append(each)
        else:
            in_parts.append((each, _parts(each, met)))
    rows = [each.text.count("\n") + 1 for each in plain]
    steps = StepCount(
        sum(rows) + sum(len(parts) for _, parts in in_parts), progress, tr_noop("Reading")
    )
    steps.go(0)
    tree, units = snapshot.knowledge.tree, snapshot.settings.units
    done = 0
    for named, parts in in_parts:
        for number, one in enumerate(parts, 1):
            if number % EVERY == 0:
                steps.go(done + number)
            yield _of_parts(one, number=number, named=named, tree=tree, units=units)
        done += len(parts)
    for named, count in zip(plain, rows, strict=True):
        yield from _in_text(named, snapshot, met.unreadable, partial(steps.go_from, done))
        done += count
    steps.go(steps.total)


def _parts(named: NamedText, met: _Met) -> tuple[SpecParts, ...]:
    try:
        document = document_in(named.text, named.file, named.columns or None)
    except UnusableFile as error:
        met.unreadable.append(Unreadable(named.file, "", "", error.problems))
    except UnreadableFile as error:
        met.unreadable.append(_whole(named, error.problem))
    except ColumnsUnclear as error:
        met.needs_columns.append(NeedsColumns(named.file, error.request))
    else:
        met.take_document(document, named.file)
        if not document.parts:
            met.unreadable.append(_whole(named, _no_spec()))
        return document.parts
    return ()


def _no_spec() -> Problem:
    return Problem(1, 1, tr(NO_SPEC))


def _whole(named: NamedText, problem: Problem) -> Unreadable:
    """A file that is no document of specs."""
    return Unreadable(named.file, "", "", (problem,))


def _of_parts(
    parts: SpecParts, *, number: int, named: NamedText, tree: FamilyTree, units: BarUnits
) -> _Found:
    read = read_placed(parts, named.text, tree, units)
    where = parts.where or tr("spec {number}", number=number)
    text = text_of_parts(parts) if read.problems else ""
    return _Found(
        read=read,
        file=named.file,
        where=where,
        row=parts.row,
        text=text,
        left_aside=parts.left_aside,
    )


def _in_text(
    named: NamedText,
    snapshot: Snapshot,
    unreadable: list[Unreadable],
    reached: Callable[[int], None],
) -> Iterator[_Found]:
    rows = named.text.removeprefix("\ufeff").splitlines()
    waiting: ReadSpec | None = None
    number = 0
    specs = each_spec(named.text, snapshot.knowledge.tree, snapshot.settings.units)
    for number, read in enumerate(specs, 1):
        if number % EVERY == 0:
            reached(read.row)
        if waiting is not None:
            yield _of_rows(waiting, named.file, rows[waiting.row - 1 : read.row - 1])
        waiting = read
    if waiting is None:
        unreadable.append(_whole(named, _no_spec()))
    else:
        yield _of_rows(waiting, named.file, rows[waiting.row - 1 :])


def _of_rows(read: ReadSpec, file: str, rows: Sequence[str]) -> _Found:
    text = "\n".join(rows).rstrip(" \n-=") + "\n" if read.problems else ""
    return _Found(
        read=read, file=file, where=tr("line {row}", row=read.row), row=read.row, text=text
    )


@dataclass
class _Sorting:
    """The specs of the documents while each is looked up in the bar."""

    snapshot: Snapshot
    known: Mapping[str, Spec]
    riffable: frozenset[str]
    taken: set[str]
    new: list[Incoming] = field(default_factory=list)
    same: list[Incoming] = field(default_factory=list)
    differing: list[Differing] = field(default_factory=list)


def _sorted(
    found: Sequence[_Found], snapshot: Snapshot, unreadable: list[Unreadable]
) -> ImportPreview:
    own_last = sorted(snapshot.all_specs, key=lambda each: not each.classic)
    known = {folded(each.name): each for each in own_last}
    whole = {folded(each.read.name) for each in found if each.spec is not None}
    riffable = frozenset(known.keys() | whole)
    sorting = _Sorting(snapshot, known, riffable, set(riffable))
    first: dict[str, _Found] = {}
    for each in found:
        spec, key = each.spec, folded(each.read.name)
        if spec is None:
            unreadable.append(_unreadable(each, each.read.problems))
            continue
        earlier = first.setdefault(key, each)
        if earlier is each:
            _look_up(sorting, each, spec)
        elif earlier.spec is not None and same_spec(earlier.spec, spec):
            sorting.same.append(Incoming(spec, each.file, each.where))
        else:
            unreadable.append(_unreadable(each, (_twice(each, earlier),)))
    lists = (sorting.new, sorting.same, sorting.differing, unreadable)
    return ImportPreview(*(tuple(each) for each in lists))  # type: ignore[arg-type]


def _look_up(sorting: _Sorting, found: _Found, spec: Spec) -> None:
    mine = sorting.known.get(folded(spec.name))
    tree, units = sorting.snapshot.knowledge.tree, sorting.snapshot.settings.units
    asked = (
        tr("{line} is kept as it is. {question}", line=each.line.named, question=each.asked)
        for each in open_questions(spec, tree, units)
    )
    there = Incoming(
        spec=spec,
        file=found.file,
        where=found.where,
        remarks=(*found.read.remarks, *asked),
        left_aside=found.left_aside,
    )
    incoming = _with_known_riff(there, mine, sorting.riffable)
    if mine is None:
        sorting.new.append(incoming)
        return
    if same_spec(mine, incoming.spec):
        sorting.same.append(incoming)
        return
    comparison = compared(mine, incoming.spec, tree, units)
    name = _free_name(spec.name, sorting.taken)
    sorting.differing.append(Differing(incoming, mine, comparison, name))


def _with_known_riff(incoming: Incoming, mine: Spec | None, riffable: frozenset[str]) -> Incoming:
    """What it is a riff of must be there; otherwise that becomes a note."""
    spec = incoming.spec
    if spec.riff_of is None:
        return incoming
    parent = folded(spec.riff_of)
    if parent in riffable and parent != folded(spec.name):
        return incoming
    if mine is not None and mine.riff_of and folded(mine.riff_of) == parent:
        return incoming
    note = f"Riff of: {spec.riff_of}"
    remark = tr(
        "It is said to be a riff of “{parent}”, which is not here; that became a note.",
        parent=spec.riff_of,
    )
    notes = "\n".join(each for each in (spec.notes, note) if each)
    return replace(
        incoming, spec=replace(spec, riff_of=None, notes=notes), remarks=(*incoming.remarks, remark)
    )


def _free_name(name: str, taken: set[str]) -> str:
    number = 2
    while folded(f"{name} {number}") in taken:
        number += 1
    taken.add(folded(f"{name} {number}"))
    return f"{name} {number}"


def _unreadable(found: _Found, problems: tuple[Problem, ...]) -> Unreadable:
    only_questions = all(each.asks for each in problems)
    return Unreadable(
        file=found.file,
        where=found.where,
        name=found.read.name,
        problems=problems,
        text=found.text,
        questions=found.questions if only_questions else 0,
    )


def _twice(found: _Found, earlier: _Found) -> Problem:
    told = {"name": found.read.name, "where": earlier.where, "file": earlier.file}
    if found.file == earlier.file:
        message = tr("“{name}” is there twice; it is also at {where}, and the two differ", **told)
    else:
        message = tr(
            "“{name}” is there twice; it is also at {where} of {file}, and the two differ", **told
        )
    return Problem(found.row or 1, 1, message)


ImportChoice = Literal["keep_mine", "take_theirs", "add"]

CHANGED = tr_noop("it has changed since it was compared; look at the file again")
AT_A_TIME = 250
"""Specs written between two calls of `Progress`."""


@dataclass(frozen=True, slots=True)
class Decision:
    """What becomes of a spec that differs; `name` is the one it is added under."""

    choice: ImportChoice = "keep_mine"
    name: str = ""


@dataclass(frozen=True, slots=True)
class ImportedSpecs:
    """Names of the specs that came in, that took the place of mine, and that stayed mine."""

    added: tuple[str, ...] = ()
    replaced: tuple[str, ...] = ()
    kept: tuple[str, ...] = ()


def _replaceable(each: Differing) -> Differing:
    if not each.replaceable:
        what = tr_noop(
            "it is a classic that barkeep brings along; keep it, or add theirs under a name"
        )
        raise InvalidField("spec", each.mine.name, what)
    return each


def _replace_all(work: UnitOfWork, replacing: Sequence[Differing], steps: StepCount) -> None:
    for number, each in enumerate(replacing):
        if number % EVERY == 0:
            steps.go(number)
        spec_id = each.mine.id
        there = None if spec_id is None else spec_rows.read_spec(work.connection, spec_id)
        if spec_id is None or there is None or not same_spec(there, each.mine):
            raise InvalidField("spec", each.mine.name, CHANGED)
        theirs = replace(each.incoming.spec, name=there.name, added=there.added, classic=False)
        work.put("spec", (spec_id,), theirs)
    steps.go(len(replacing))


def _add_all(work: UnitOfWork, adding: Sequence[Spec], steps: StepCount) -> None:
    today, before = work.at.date(), steps.done
    for start in range(0, len(adding), AT_A_TIME):
        some = adding[start : start + AT_A_TIME]
        work.insert("spec", some, added=today)
        steps.go(before + start + len(some))


def take_in_specs(
    session: Session,
    looked_at: ImportPreview,
    decisions: Mapping[int, Decision],
    progress: Progress | None = None,
) -> Done[ImportedSpecs]:
    """Bring in what was looked at, as `Imports.specs` says it."""
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
    step = StepCount(count, progress or go_on, tr_noop("The import"))
    if count:
        session.before_import()
    with session.writing(f"Import {count} spec{'s' * (count != 1)}") as work:
        for spec in (*adding, *(each.incoming.spec for each in replacing)):
            of_known_kinds(spec, session.tree)  # one may have been removed since
        refuse_taken_names(session, work, adding)
        _replace_all(work, replacing, step)
        _add_all(work, adding, step)
    names = tuple(each.name for each in adding), tuple(each.mine.name for each in replacing)
    return session.finished(work, lambda _bar: ImportedSpecs(*names, tuple(kept)))
