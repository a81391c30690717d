"""The sample bar: a presenter's shelf, built from readable text as of the day it is asked for."""

from __future__ import annotations

from collections.abc import Callable, Iterable, Iterator, Mapping, Sequence
from contextlib import contextmanager
from dataclasses import dataclass, field
from datetime import date, datetime, time, timedelta
from pathlib import Path
from tempfile import TemporaryDirectory

from barkeep import resource_files
from barkeep.application.knowledge import shipped
from barkeep.application.session import Session
from barkeep.application.settings import BarSettings
from barkeep.application.shelving import checked_draft, level_within, refuse_dates, taken_from
from barkeep.application.specs import Specs, Trials
from barkeep.documents.sample import (
    Episode,
    Event,
    SampleBottle,
    SampleTrial,
    read_bar,
    read_bottles,
    read_known_products,
    read_trials,
)
from barkeep.domain.bar.knowledge import Knowledge
from barkeep.domain.bar.shoots import LoggedBottle, Shoot, ShootDrink, ShootLog
from barkeep.domain.bar.snapshot import Settings
from barkeep.domain.bottles.bottle import (
    Bottle,
    BottleFacts,
    Entry,
    Label,
    Product,
    fold,
    new_bottle,
)
from barkeep.domain.bottles.levels import MeasuredLevel
from barkeep.domain.ingredients.tree import FamilyTree
from barkeep.domain.phrases import folded
from barkeep.domain.shoots.log import logged_bottle
from barkeep.domain.spec_text.text import read_specs
from barkeep.domain.specs.spec import Spec
from barkeep.domain.specs.trials import Trial
from barkeep.errors import KnowledgeError, UserError
from barkeep.store import bottles as product_rows
from barkeep.store.beginning import begin_here
from barkeep.store.bottles import bottle_row
from barkeep.store.refusals import CannotWrite
from barkeep.store.shoots import shoot_row
from barkeep.store.store import Store
from barkeep.store.unit_of_work import UnitOfWork

FOLDER = "sample_db"

BAR, KNOWN, SPECS = "bar.toml", "known_products.toml", "specs.txt"

TRIALS = "trials.toml"

SHELVES = ("bottles.toml", "pantry.toml")


MORNING = time(10)
"""When bottles come in."""

EVENING = time(18)
"""When they are opened, poured and counted."""


@dataclass(frozen=True)
class SampleText:
    """Everything the sample's texts say; days count from the day it is built."""

    settings: Settings
    episodes: tuple[Episode, ...]
    bottles: tuple[SampleBottle, ...]
    known: tuple[Label, ...]
    specs: tuple[Spec, ...]
    trials: tuple[SampleTrial, ...]


def build(
    path: str | Path,
    clock: Callable[[], datetime] = datetime.now,
    knowledge: Knowledge | None = None,
) -> None:
    """Write the sample bar to a new file; its undo begins there, with nothing to undo.

    Raises `CannotWrite` where there is a file already, another `UserError`
    where none can be made, and `KnowledgeError` for a mistake in the texts.
    """
    target = Path(path).expanduser().absolute()
    if target.exists():
        raise CannotWrite(str(target), "there is a file of that name already")
    known = shipped() if knowledge is None else knowledge
    text = read_sample(_texts(), known.tree)
    try:
        _write(target, text, known, _Calendar(clock()))
    except BaseException:
        target.unlink(missing_ok=True)
        raise


@contextmanager
def throw_away_copy(clock: Callable[[], datetime] = datetime.now) -> Iterator[Path]:
    """The path of a sample bar that is gone afterwards. Close the bar before leaving."""
    with TemporaryDirectory(prefix="barkeep-", ignore_cleanup_errors=True) as folder:
        path = Path(folder) / "sample.barkeep"
        build(path, clock)
        yield path


def read_sample(texts: Mapping[str, str], tree: FamilyTree) -> SampleText:
    """The sample out of its texts by file name. Raises `KnowledgeError`."""
    settings, episodes = read_bar(texts[BAR], BAR)
    bottles = read_bottles({file: texts[file] for file in SHELVES}, tree)
    known = read_known_products(texts[KNOWN], tree, KNOWN)
    specs = _specs(texts[SPECS], tree)
    _refuse_unequal(episodes, specs)
    trials = read_trials(texts[TRIALS], settings.scales, TRIALS)
    return SampleText(
        settings=settings,
        episodes=episodes,
        bottles=bottles,
        known=known,
        specs=specs,
        trials=trials,
    )


@dataclass
class _Calendar:
    """The clock of the bar that is being built: it can be put back some days."""

    built: datetime
    day: int = 0

    def __call__(self) -> datetime:
        return self.at(self.day, EVENING) if self.day else self.built

    def at(self, day: int, hour: time) -> datetime:
        """A moment on a day counted from the one of building."""
        return datetime.combine(self.date(day), hour)

    def date(self, day: int) -> date:
        """The date of a day counted from the one of building."""
        return self.built.date() + timedelta(days=day)


@dataclass
class _Shelved:
    """A bottle on the shelf, with its ledger as far as it is written."""

    text: SampleBottle
    id: int
    product: Product
    entries: list[Entry] = field(default_factory=list)

    @property
    def bottle(self) -> Bottle:
        """The bottle as the ledger has it so far."""
        return Bottle(self.id, self.product, fold(self.entries, self.product.unit))


def _texts() -> dict[str, str]:
    files = (BAR, *SHELVES, KNOWN, SPECS, TRIALS)
    return {file: resource_files.read_text(file, folder=FOLDER) for file in files}


def _specs(text: str, tree: FamilyTree) -> tuple[Spec, ...]:
    found = []
    for each in read_specs(text, tree):
        if each.problems or each.spec is None:
            reason = str(each.problems[0]) if each.problems else "it is not a spec"
            raise KnowledgeError(SPECS, each.name, reason)
        found.append(each.spec)
    return tuple(found)


def _refuse_unequal(episodes: Sequence[Episode], specs: Sequence[Spec]) -> None:
    """Raise where a drink of an episode has no spec, or a spec no episode."""
    named = {folded(name): name for episode in episodes for name in episode.specs}
    written = {folded(spec.name): spec.name for spec in specs}
    for missing in named.keys() - written.keys():
        raise KnowledgeError(BAR, named[missing], f"there is no such spec in {SPECS}")
    for missing in written.keys() - named.keys():
        raise KnowledgeError(SPECS, written[missing], f"no episode in {BAR} names it")


def _write(target: Path, text: SampleText, known: Knowledge, calendar: _Calendar) -> None:
    store = Store.open(target, calendar)
    try:
        session = Session(store, known, calendar)
        with _located(BAR, "the bar"):
            BarSettings(session).change(text.settings)
        _add_specs(session, text, calendar)
        _add_trials(session, text, calendar)
        calendar.day = 0
        with session.writing("Build the sample bar") as work:
            shelf = _shelve(work, text, known.tree, calendar)
            _write_ledger(work, shelf, calendar)
            specs = session.snapshot.specs
            histories = [History(each.id, each.product, each.entries) for each in shelf]
            rows = [
                shoot_row(sample_shoot(each, specs, histories, calendar.built.date()))
                for each in text.episodes
            ]
            work.insert("shoot", rows)
        with session.writing() as work:
            begin_here(work)
    finally:
        store.close()


def _add_specs(session: Session, text: SampleText, calendar: _Calendar) -> None:
    """Each episode's drinks on the day they were written."""
    by_name = {folded(spec.name): spec for spec in text.specs}
    for episode in text.episodes:
        calendar.day = episode.written
        with _located(SPECS, f"episode {episode.name}"):
            Specs(session).add([by_name[folded(name)] for name in episode.specs])


def _add_trials(session: Session, text: SampleText, calendar: _Calendar) -> None:
    """Each tasting on its day, which comes after its spec was written."""
    calendar.day = 0
    written = {folded(spec.name): spec for spec in session.snapshot.specs}
    for each in text.trials:
        spec, on = written.get(folded(each.spec)), calendar.date(each.day)
        if spec is None or spec.id is None:
            raise KnowledgeError(TRIALS, each.spec, f"there is no such spec in {SPECS}")
        if spec.added is not None and on < spec.added:
            raise KnowledgeError(TRIALS, each.spec, "it was tasted before it was written")
        trial = Trial(
            id=None,
            spec_id=spec.id,
            on=on,
            scores=each.scores,
            notes=each.notes,
            changed=each.changed,
            won=each.won,
        )
        with _located(TRIALS, f"trial of {each.spec}"):
            Trials(session).add(trial)


def _shelve(
    work: UnitOfWork, text: SampleText, tree: FamilyTree, calendar: _Calendar
) -> list[_Shelved]:
    """Take in products and bottles, in shelf order; their ledgers are empty yet."""
    products = _add_products(work, text, tree)
    rows = []
    for position, each in enumerate(text.bottles):
        product = products[folded(each.draft.title)]
        received, made, use_by = _dates(each, calendar)
        facts = BottleFacts(
            received=received, made=made, use_by=use_by, tare=each.tare, dash_ml=each.dash_ml
        )
        rows.append(bottle_row(new_bottle(product, facts, position)))
    ids = work.insert("bottle", rows)
    return [
        _Shelved(each, bottle_id, products[folded(each.draft.title)])
        for each, bottle_id in zip(text.bottles, ids, strict=True)
    ]


def _add_products(work: UnitOfWork, text: SampleText, tree: FamilyTree) -> dict[str, Product]:
    """All products by folded title: those on the shelves, then those only seen in a shop."""
    drafts: dict[str, Label] = {}
    for each in text.bottles:
        with _located(each.file, each.entry):
            drafts.setdefault(folded(each.draft.title), checked_draft(each.draft, tree))
    for draft in text.known:
        if folded(draft.title) in drafts:
            raise KnowledgeError(KNOWN, draft.title, "there is a bottle of it on the shelves")
        with _located(KNOWN, draft.title):
            drafts[folded(draft.title)] = checked_draft(draft, tree)
    work.insert("product", [product_rows.product_row(each) for each in drafts.values()])
    return {folded(each.title): each for each in product_rows.read_products(work.connection)}


def _dates(each: SampleBottle, calendar: _Calendar) -> tuple[date, date | None, date | None]:
    made = None if each.made is None else calendar.date(each.made)
    use_by = None if each.use_by is None else calendar.date(each.use_by)
    with _located(each.file, each.entry):
        refuse_dates(made, use_by)
    return calendar.date(each.received), made, use_by


def _write_ledger(work: UnitOfWork, shelf: Sequence[_Shelved], calendar: _Calendar) -> None:
    """Every bottle's history, day by day as it happened."""
    happened: list[tuple[datetime, _Shelved, Event | None]] = []
    for each in shelf:
        happened.append((calendar.at(each.text.received, MORNING), each, None))
        happened += [(calendar.at(one.day, EVENING), each, one) for one in each.text.history]
    for at, each, event in sorted(happened, key=lambda moment: moment[0]):
        if event is None:
            level = each.product.size if each.text.level is None else each.text.level
            each.entries.append(work.append(each.id, "receive", level, at=at))
        else:
            each.entries.append(_append(work, each, event, at))


def _append(work: UnitOfWork, shelved: _Shelved, event: Event, at: datetime) -> Entry:
    """One line of a history, refused as the use case would refuse it."""
    bottle, text = shelved.bottle, shelved.text
    if event.kind == "open" and bottle.level.state != "sealed":
        raise KnowledgeError(text.file, text.entry, f"“{event.text}”: it is not sealed then")
    with _located(text.file, text.entry, event.text):
        if event.level is not None:
            level = level_within(event.level.amount, bottle.product, may_be_nothing=True)
            method, sigma = event.level.method, event.level.sigma
            return work.append(bottle.id, "count", level, at=at, method=method, sigma=sigma)
        taken = taken_from(bottle, event.amount) if event.kind in ("pour", "waste") else 0.0
        return work.append(bottle.id, event.kind, taken, at=at, note=event.note)


@contextmanager
def _located(file: str, entry: str, line: str = "") -> Iterator[None]:
    """Say where in the texts a refusal comes from."""
    try:
        yield
    except UserError as error:
        reason = f"“{line}”: {error}" if line else str(error)
        raise KnowledgeError(file, entry, reason) from error


@dataclass(frozen=True, slots=True)
class History:
    """A bottle of the sample with its whole ledger."""

    bottle_id: int
    product: Product
    entries: Sequence[Entry]


def sample_shoot(
    episode: Episode, specs: Iterable[Spec], shelf: Iterable[History], built: date
) -> Shoot:
    """The shoot of one episode, as of the day the sample is built."""
    by_name = {folded(spec.name): spec for spec in specs}
    on = built + timedelta(days=episode.on)
    found = [by_name[folded(name)] for name in episode.drinks]
    drinks = tuple(ShootDrink(each.id, each.name, episode.serves) for each in found)
    starts = time.fromisoformat(episode.starts) if episode.starts else None
    log = _log(episode, on, shelf) if episode.state == "logged" else None
    return Shoot(
        id=None,
        theme=episode.name,
        on=on,
        drinks=drinks,
        state=episode.state,
        starts=starts,
        notes=episode.notes,
        log=log,
    )


def _log(episode: Episode, on: date, shelf: Iterable[History]) -> ShootLog:
    logged = [(each, _of_the_shoot(episode, on, each)) for each in shelf]
    bottles = tuple(_logged(each, own) for each, own in logged if own)
    moments = [entry.at for _each, own in logged for entry in own]
    at = max(moments, default=datetime.combine(on, time(18)))
    made = (episode.serves.total,) * len(episode.drinks)
    return ShootLog(at, made, bottles)


def _of_the_shoot(episode: Episode, on: date, history: History) -> list[Entry]:
    """The entries of that day: what was poured for it, and what was spilled."""
    return [
        each
        for each in history.entries
        if each.at.date() == on
        and (each.note.startswith(f"{episode.name}: ") or each.kind == "waste")
    ]


def _logged(history: History, own: Sequence[Entry]) -> LoggedBottle:
    """The bottle as it was counted next."""
    last = own[-1]
    later = [each for each in history.entries if each.id > last.id]
    before = [each for each in history.entries if each.id <= last.id]
    counted = None
    for each in later:
        if each.kind == "count":
            counted = each
            break
        before.append(each)
    product = history.product
    return logged_bottle(
        Bottle(history.bottle_id, product, fold(before, product.unit)),
        poured=sum(each.amount for each in own if each.kind == "pour"),
        spilled=sum(each.amount for each in own if each.kind == "waste"),
        counted=None if counted is None else _measured(counted),
    )


def _measured(count: Entry) -> MeasuredLevel:
    assert count.method is not None and count.sigma is not None  # every count has both
    return MeasuredLevel(count.amount, count.method, count.sigma)
