"""The sample bar: a presenter's shelf, built from readable text as of the day it is asked for."""

from __future__ import annotations

from collections.abc import Callable, Iterable, Iterator, Mapping, Sequence
from contextlib import contextmanager
from dataclasses import dataclass, replace
from datetime import date, datetime, time, timedelta
from pathlib import Path

from barkeep import resource_files
from barkeep.application.counting import put_measured, weighed
from barkeep.application.knowledge import shipped, sound_specs
from barkeep.application.session import Session
from barkeep.application.settings import BarSettings
from barkeep.application.shelving import (
    checked_draft,
    count_one,
    empty_one,
    open_one,
    shelve,
    take_in,
    take_one,
)
from barkeep.application.shoots import Shoots
from barkeep.application.specs import Specs, Trials
from barkeep.documents.sample import (
    Episode,
    Event,
    SampleBottle,
    SampleTrial,
    read_bar,
    read_known_products,
    read_shelves,
    read_trials,
)
from barkeep.domain.bar.knowledge import Knowledge
from barkeep.domain.bar.shoots import LoggedBottle, Shoot, ShootDrink, ShootLog
from barkeep.domain.bar.snapshot import Settings
from barkeep.domain.bottles.bottle import Bottle, BottleFacts, Entry, Label, Product, fold
from barkeep.domain.bottles.containers import container_of
from barkeep.domain.bottles.levels import MeasuredLevel, parse_level
from barkeep.domain.ingredients.tree import FamilyTree
from barkeep.domain.phrases import folded
from barkeep.domain.shoots.log import logged_bottle
from barkeep.domain.specs.spec import Spec
from barkeep.domain.specs.trials import Trial
from barkeep.errors import KnowledgeError, UserError
from barkeep.store.bottles import entries_by_bottle, read_bottles
from barkeep.store.history import begin_here
from barkeep.store.refusals import CannotWrite
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
        now = clock()
        _write(target, text, known, _Calendar(now, now))
    except BaseException:
        target.unlink(missing_ok=True)
        raise


def read_sample(texts: Mapping[str, str], tree: FamilyTree) -> SampleText:
    """The sample out of its texts by file name. Raises `KnowledgeError`."""
    settings, episodes = read_bar(texts[BAR], BAR)
    bottles = read_shelves({file: texts[file] for file in SHELVES}, tree)
    known = read_known_products(texts[KNOWN], tree, KNOWN)
    specs = tuple(sound_specs(texts[SPECS], tree, SPECS))
    _refuse_unequal(episodes, specs)
    _refuse_strange_shoots(episodes, bottles)
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
    now: datetime

    def __call__(self) -> datetime:
        return self.now

    def date_of(self, day: int) -> date:
        """The date of a day counted from the one of building."""
        return self.built.date() + timedelta(days=day)

    def known(self, day: int | None) -> date | None:
        """The same, where there is a day."""
        return None if day is None else self.date_of(day)

    def put(self, day: int, hour: time = EVENING) -> datetime:
        """Put the clock to an hour of a day counted from the one of building."""
        self.now = datetime.combine(self.date_of(day), hour)
        return self.now


def _texts() -> dict[str, str]:
    files = (BAR, *SHELVES, KNOWN, SPECS, TRIALS)
    return {file: resource_files.read_text(file, folder=FOLDER) for file in files}


def _refuse_unequal(episodes: Sequence[Episode], specs: Sequence[Spec]) -> None:
    """Raise where a drink of an episode has no spec, or a spec no episode."""
    named = {folded(name): name for episode in episodes for name in episode.specs}
    written = {folded(spec.name): spec.name for spec in specs}
    for missing in named.keys() - written.keys():
        raise KnowledgeError(BAR, named[missing], f"there is no such spec in {SPECS}")
    for missing in written.keys() - named.keys():
        raise KnowledgeError(SPECS, written[missing], f"no episode in {BAR} names it")


def _refuse_strange_shoots(episodes: Sequence[Episode], bottles: Sequence[SampleBottle]) -> None:
    """Raise for a line of a history that names a shoot which was not logged that day."""
    days = {each.name: each.on for each in episodes if each.state == "logged"}
    for bottle in bottles:
        for event in bottle.history:
            if event.shoot and days.get(event.shoot) != event.day:
                reason = f"“{event.text}”: no logged shoot of {BAR} has that name and day"
                raise KnowledgeError(bottle.file, bottle.entry, reason)


def _write(target: Path, text: SampleText, known: Knowledge, calendar: _Calendar) -> None:
    """Everything the texts tell, done on its day by the use cases that an owner has."""
    store = Store.open(target, calendar)
    try:
        session = Session(store, known, calendar)
        with _located(BAR, "the bar"):
            BarSettings(session).change(text.settings)
        _add_specs(session, text, calendar)
        _add_trials(session, text, calendar)
        with session.writing("Build the sample bar") as work:
            shelf = _shelve(session, work, text, calendar)
            logged = _happen(session, work, shelf, calendar)
        calendar.now = calendar.built
        specs = {folded(each.name): each for each in session.snapshot.specs}
        for episode in text.episodes:
            with _located(BAR, f"episode {episode.name}"):
                drinks = [specs[folded(each)] for each in episode.drinks]
                bottles = logged.get(episode.name, {})
                Shoots(session).add(_shoot(episode, drinks, bottles, calendar))
        with session.writing() as work:
            begin_here(work)
    finally:
        store.close()


def _add_specs(session: Session, text: SampleText, calendar: _Calendar) -> None:
    """Each episode's drinks on the day they were written."""
    by_name = {folded(spec.name): spec for spec in text.specs}
    for episode in text.episodes:
        calendar.put(episode.written)
        with _located(SPECS, f"episode {episode.name}"):
            Specs(session).add([by_name[folded(name)] for name in episode.specs])


def _add_trials(session: Session, text: SampleText, calendar: _Calendar) -> None:
    """Each tasting on its day, which comes after its spec was written."""
    written = {folded(spec.name): spec for spec in session.snapshot.specs}
    for each in text.trials:
        spec, on = written.get(folded(each.spec)), calendar.date_of(each.day)
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
        calendar.put(each.day)
        with _located(TRIALS, f"trial of {each.spec}"):
            Trials(session).add(trial)


def _shelve(
    session: Session, work: UnitOfWork, text: SampleText, calendar: _Calendar
) -> Mapping[int, SampleBottle]:
    """Take in products and bottles, each on the morning of its day; by id, in shelf order."""
    products: dict[str, Product] = {}
    shelf = {}
    for each in text.bottles:
        work.at = calendar.put(each.received, MORNING)
        title = folded(each.draft.title)
        with _located(each.file, each.entry):
            if title not in products:
                products[title] = take_in(work, checked_draft(each.draft, session.tree))
            made, use_by = calendar.known(each.made), calendar.known(each.use_by)
            facts = BottleFacts(made=made, use_by=use_by)
            bottle_id = shelve(
                session, work=work, product=products[title], amount=each.level, facts=facts
            )
        shelf[bottle_id] = each
    for draft in text.known:
        if folded(draft.title) in products:
            raise KnowledgeError(KNOWN, draft.title, "there is a bottle of it on the shelves")
        with _located(KNOWN, draft.title):
            take_in(work, checked_draft(draft, session.tree))
    for bottle in read_bottles(work.connection):
        _measure(session, work, bottle, shelf[bottle.id])
    return shelf


def _measure(session: Session, work: UnitOfWork, bottle: Bottle, text: SampleBottle) -> None:
    """What the scale and the spoon tell of a bottle."""
    with _located(text.file, text.entry):
        if text.tare_g is not None:
            bottle = weighed(bottle, text.tare_g, False, session.snapshot).bottle
        if text.tare_g is not None or text.dash_ml is not None:
            put_measured(work, replace(bottle, dash_ml=text.dash_ml))


def _happen(
    session: Session, work: UnitOfWork, shelf: Mapping[int, SampleBottle], calendar: _Calendar
) -> Mapping[str, Mapping[int, LoggedBottle]]:
    """Every bottle's history, day by day; theme of a shoot -> what it did to which bottles.

    A bottle of a shoot was counted when it was counted next.
    """
    bottles = {each.id: each for each in read_bottles(work.connection)}
    entries = {key: list(own) for key, own in entries_by_bottle(work.connection).items()}
    happened = [(event, key) for key in shelf for event in shelf[key].history]
    logged: dict[str, dict[int, LoggedBottle]] = {}
    for event, key in sorted(happened, key=lambda each: each[0].day):
        work.at = calendar.put(event.day)
        before = bottles[key]
        with _located(shelf[key].file, shelf[key].entry, event.text):
            entry = _write_down(session, work, before, event)
        entries[key].append(entry)
        after = bottles[key] = replace(before, level=fold(entries[key], before.product.unit))
        if event.shoot:
            found = logged.setdefault(event.shoot, {})
            found[key] = _drawn(found.get(key), after, entry)
        if entry.kind == "count":
            for found in logged.values():
                if key in found and found[key].counted is None:
                    found[key] = _counted(found[key], before, entry)
    return logged


def _write_down(session: Session, work: UnitOfWork, bottle: Bottle, event: Event) -> Entry:
    """One line of a history, done by what the use case of its kind does."""
    match event.kind:
        case "open":
            return open_one(work, bottle)
        case "pour":
            note = f"{event.shoot}: {event.note}" if event.shoot else event.note
            return take_one(work, bottle=bottle, kind="pour", amount=event.amount, note=note)
        case "waste":
            return take_one(work, bottle=bottle, kind="waste", amount=event.amount, note=event.note)
        case "empty":
            return empty_one(work, bottle, event.note)
        case "count":
            measured = parse_level(event.level, container_of(bottle, session.tree))
            return count_one(work, bottle, measured)


def _drawn(before: LoggedBottle | None, bottle: Bottle, entry: Entry) -> LoggedBottle:
    """What a shoot did to a bottle, with one more entry, after which it is `bottle`."""
    poured, spilled = (before.poured, before.spilled) if before else (0.0, 0.0)
    poured += entry.amount if entry.kind == "pour" else 0.0
    spilled += entry.amount if entry.kind == "waste" else 0.0
    return logged_bottle(bottle, poured=poured, spilled=spilled, counted=None)


def _counted(logged: LoggedBottle, expected: Bottle, count: Entry) -> LoggedBottle:
    """The same, counted when the bottle was expected to be as it is given."""
    assert count.method is not None and count.sigma is not None  # every count has both
    counted = MeasuredLevel(count.amount, count.method, count.sigma)
    return logged_bottle(expected, poured=logged.poured, spilled=logged.spilled, counted=counted)


def _shoot(
    episode: Episode,
    specs: Iterable[Spec],
    bottles: Mapping[int, LoggedBottle],
    calendar: _Calendar,
) -> Shoot:
    """The shoot of one episode, as of the day the sample is built; its bottles in shelf order."""
    drinks = tuple(ShootDrink(each.id, each.name, episode.serves) for each in specs)
    on, log = calendar.date_of(episode.on), None
    if episode.state == "logged":
        made = (episode.serves.total,) * len(drinks)
        in_order = tuple(bottles[key] for key in sorted(bottles))
        log = ShootLog(datetime.combine(on, EVENING), made, in_order)
    return Shoot(
        id=None,
        theme=episode.name,
        on=on,
        drinks=drinks,
        state=episode.state,
        starts=episode.starts,
        notes=episode.notes,
        log=log,
    )


@contextmanager
def _located(file: str, entry: str, line: str = "") -> Iterator[None]:
    """Say where in the texts a refusal comes from."""
    try:
        yield
    except UserError as error:
        reason = f"“{line}”: {error}" if line else str(error)
        raise KnowledgeError(file, entry, reason) from error
