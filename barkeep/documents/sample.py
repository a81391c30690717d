"""The sample bar's bottles, known products and episodes, out of their TOML texts.

Pure; each fault is a `KnowledgeError` that names the file and the entry. Days
count from the day the sample is built, so that it never ages.
"""

from __future__ import annotations

import re
from collections.abc import Mapping, Sequence
from dataclasses import dataclass, replace
from datetime import time
from typing import Annotated, Literal, cast

from barkeep.domain.amounts.units import Unit
from barkeep.domain.bar.shoots import ServeCounts, ShootState
from barkeep.domain.bar.snapshot import Settings
from barkeep.domain.bottles.bottle import LEAST_DASH_ML, MOST_DASH_ML, Label
from barkeep.domain.bottles.shapes import shipped_shapes
from barkeep.domain.ingredients.tree import FamilyTree
from barkeep.domain.phrases import folded
from barkeep.domain.specs.trials import Scale, Score, read_score
from barkeep.errors import KnowledgeError, UserError
from barkeep.shipped_data import (
    Limits,
    Positive,
    Table,
    Text,
    Texts,
    parse,
    parted,
    read,
    read_field,
    refuse_twice,
    tables,
    without,
)

EventKind = Literal["open", "count", "pour", "waste", "empty"]

FURTHEST = 3650
"""Days; a date further away than this is a misprint."""

Day = Annotated[int, Limits(ge=-FURTHEST, le=FURTHEST, description="whole days")]

Past = Annotated[int, Limits(ge=-FURTHEST, lt=0, description="a day in the past, such as -30")]

Dash = Annotated[float, Limits(ge=LEAST_DASH_ML, le=MOST_DASH_ML)]

_EVENT = re.compile(r"(?P<kind>open|count|pour|waste|empty) (?P<day>-[1-9]\d*)(?: (?P<rest>.+))?")

_TAKEN = re.compile(
    r"(?P<amount>\d+(?:\.\d+)?) (?P<unit>ml|g|each)(?: for (?P<shoot>[^:]+):)?(?: (?P<note>.+))?"
)

_PATTERNS: Mapping[str, str] = {
    "open": "“open DAY”",
    "pour": "“pour DAY AMOUNT UNIT note”",
    "waste": "“waste DAY AMOUNT UNIT note”",
}


@dataclass(frozen=True, slots=True)
class Event:
    """One line of a bottle's history, amounts in the bottle's unit; `text` as written.

    `level` is what was counted, as it was typed; `shoot` the theme of the shoot
    that it was poured or spilled at.
    """

    text: str
    kind: EventKind
    day: int
    amount: float = 0.0
    level: str = ""
    shoot: str = ""
    note: str = ""


@dataclass(frozen=True, slots=True)
class SampleBottle:
    """One bottle with its days and history. `entry` names it in messages.

    `level` is what came in where that is less than the size, `dash_ml` what
    one dash from it comes to where that is not what the bar means by a dash.
    """

    file: str
    entry: str
    draft: Label
    history: tuple[Event, ...]
    received: int
    made: int | None
    use_by: Day | None = None
    level: Positive | None = None
    tare_g: Positive | None = None
    dash_ml: Dash | None = None


@dataclass(frozen=True, slots=True)
class Episode:
    """The drinks of one episode, by name, the day they were written, and its shoot.

    `on` is the day of the shoot, `drinks` what was filmed, so many serves of each.
    """

    name: Text
    written: Past
    specs: Texts
    on: Day
    state: ShootState
    serves: ServeCounts
    drinks: Texts = ()
    starts: time | None = None
    notes: str = ""


@dataclass(frozen=True, slots=True)
class SampleTrial:
    """One tasting of the spec of this name, on a day."""

    spec: Text
    day: Past
    scores: tuple[Score, ...]
    notes: str = ""
    changed: str = ""
    won: bool = False


def read_bar(text: str, file: str = "bar.toml") -> tuple[Settings, tuple[Episode, ...]]:
    """The bar's settings and its episodes."""
    document = parse(text, file, "name", "currency", "episode")
    name, currency = (
        read_field(document, name=each, kind=Text, file=file, place="the bar")
        for each in ("name", "currency")
    )
    episodes = tuple(_episode(each, file) for each in tables(document, "episode", file))
    refuse_twice((each.name for each in episodes), file)
    refuse_twice((spec for each in episodes for spec in each.specs), file)
    return Settings(name=name, currency=currency), episodes


def read_shelves(texts: Mapping[str, str], tree: FamilyTree) -> tuple[SampleBottle, ...]:
    """The bottles of several files, by file name, as one shelf in that order."""
    drafts: dict[str, Label] = {}
    return tuple(
        _bottle(table, place=f"bottle {number}", file=file, tree=tree, drafts=drafts)
        for file, text in texts.items()
        for number, table in enumerate(tables(parse(text, file, "bottle"), "bottle", file), 1)
    )


def read_known_products(
    text: str, tree: FamilyTree, file: str = "known_products.toml"
) -> tuple[Label, ...]:
    """Products the owner knows the price of and has no bottle of."""
    found = []
    for table in tables(parse(text, file, "product"), "product", file):
        draft = _draft(table, file, tree)
        if draft.price is None:
            raise KnowledgeError(file, draft.title, "“price” is missing")
        found.append(draft)
    refuse_twice((each.title for each in found), file)
    return tuple(found)


def read_trials(
    text: str, scales: Sequence[Scale], file: str = "trials.toml"
) -> tuple[SampleTrial, ...]:
    """The trials, each with its scores on the scales of the bar."""
    document = parse(text, file, "trial")
    return tuple(_trial(each, scales, file) for each in tables(document, "trial", file))


def _trial(table: Table, scales: Sequence[Scale], file: str) -> SampleTrial:
    place = f"trial of {table.get('spec', '')}".strip()
    scores = []
    for each in read_field(
        {"scores": (), **table}, name="scores", kind=Texts, file=file, place=place
    ):
        try:
            scores.append(read_score(each, scales))
        except UserError as error:
            raise KnowledgeError(file, place, f"“{each}”: {error}") from error
    return read(without(table, "scores"), SampleTrial, file, place, scores=tuple(scores))


def _episode(table: Table, file: str) -> Episode:
    place = f"episode {table.get('name', '')}".strip()
    counts, rest = parted(table, ServeCounts, file, place)
    episode = read(rest, Episode, file, place, serves=read(counts, ServeCounts, file, place))
    for drink in episode.drinks:
        if drink not in episode.specs:
            reason = f"“drinks” names {drink}, which is not among its specs"
            raise KnowledgeError(file, place, reason)
    if not episode.specs:
        raise KnowledgeError(file, place, "“specs” names no drink")
    return replace(episode, drinks=episode.drinks or episode.specs)


def _bottle(
    table: Table, place: str, file: str, tree: FamilyTree, drafts: dict[str, Label]
) -> SampleBottle:
    """One bottle; its product is described here, or before where this is another of it."""
    if "another" in table:
        title = read_field(table, name="another", kind=Text, file=file, place=place)
        entry, rest = f"another {title}", without(table, "another")
        if folded(title) not in drafts:
            reason = "no product of this maker and name comes before it"
            raise KnowledgeError(file, entry, reason)
    else:
        own, rest = parted(table, Label, file, place)
        draft = _draft(own, file, tree)
        entry = title = draft.title
        if folded(title) in drafts:
            reason = "it is described before; write “another” for a further bottle"
            raise KnowledgeError(file, entry, reason)
        drafts[folded(title)] = draft
    draft = drafts[folded(title)]
    lines = read_field({"history": (), **rest}, name="history", kind=Texts, file=file, place=entry)
    events = tuple(_event(each, draft.unit, file, entry) for each in lines)
    came = "made" if draft.house_made else "received"
    day = read_field(rest, name=came, kind=Past, file=file, place=entry)
    given = {
        "file": file,
        "entry": entry,
        "draft": draft,
        "history": events,
        "received": day,
        "made": day if draft.house_made else None,
    }
    bottle = read(without(rest, "history", came), SampleBottle, file, entry, **given)
    _refuse_disorder(bottle)
    return bottle


def _draft(table: Table, file: str, tree: FamilyTree) -> Label:
    place = f"{table.get('maker', '')} {table.get('name', '')}".strip()
    ingredient = read_field(table, name="ingredient", kind=Text, file=file, place=place)
    if ingredient not in tree:
        raise KnowledgeError(file, place, f"“{ingredient}” is not an ingredient")
    draft = read({"maker": "", **table}, Label, file, place, unit=tree[ingredient].unit)
    if draft.shape is not None and draft.shape not in shipped_shapes():
        known = ", ".join(shipped_shapes())
        raise KnowledgeError(file, place, f"“shape” is “{draft.shape}”; it must be one of {known}")
    return draft


def _refuse_disorder(bottle: SampleBottle) -> None:
    day = bottle.received
    for event in bottle.history:
        if event.day < day:
            reason = f"“{event.text}” comes before what stands above it"
            raise KnowledgeError(bottle.file, bottle.entry, reason)
        day = event.day


def _event(text: str, unit: Unit, file: str, entry: str) -> Event:
    found = _EVENT.fullmatch(text)
    if found is None:
        reason = f"“{text}” is no line of a history; the days are past, such as -3"
        raise KnowledgeError(file, entry, reason)
    kind, day = cast(EventKind, found["kind"]), int(found["day"])
    rest = found["rest"] or ""
    match kind:
        case "count":
            return Event(text, kind, day, level=rest)
        case "pour" | "waste":
            return _taken(text, kind=kind, day=day, rest=rest, unit=unit, file=file, entry=entry)
        case "open" if rest:
            reason = f"“{text}” says too much; write {_PATTERNS[kind]}"
            raise KnowledgeError(file, entry, reason)
    return Event(text, kind, day, note=rest)


def _taken(
    text: str, kind: EventKind, day: int, rest: str, unit: Unit, file: str, entry: str
) -> Event:
    found = _TAKEN.fullmatch(rest)
    if found is None:
        reason = f"“{text}” cannot be read; write {_PATTERNS[kind]}"
        raise KnowledgeError(file, entry, reason)
    if found["unit"] != unit:
        reason = f"“{text}” is in {found['unit']}, and the bottle in {unit}"
        raise KnowledgeError(file, entry, reason)
    shoot, note = found["shoot"] or "", found["note"] or ""
    return Event(text, kind, day, float(found["amount"]), shoot=shoot, note=note)
