"""The sample bar's bottles, known products and episodes, out of their TOML texts.

Pure; each fault is a `KnowledgeError` that names the file and the entry. Days
count from the day the sample is built, so that it never ages.
"""

from __future__ import annotations

import re
from collections.abc import Iterable, Mapping, Sequence
from dataclasses import dataclass
from typing import Literal, cast

from barkeep.domain.amounts.units import Unit
from barkeep.domain.bar.shoots import MOST_SHOOT_SERVES, STATES, ServeCounts, ShootState
from barkeep.domain.bar.snapshot import Settings
from barkeep.domain.bottles.bottle import (
    LEAST_DASH_ML,
    MOST_DASH_ML,
    SCALE_SIGMA_G,
    ProductDraft,
    Tare,
)
from barkeep.domain.bottles.containers import Container, container_for
from barkeep.domain.bottles.levels import MeasuredLevel, parse_level
from barkeep.domain.bottles.shapes import shipped_shapes
from barkeep.domain.ingredients.toml_fields import Fields, Table, parse, refuse_other_tables, tables
from barkeep.domain.ingredients.tree import FamilyTree
from barkeep.domain.phrases import folded
from barkeep.domain.specs.trials import Scale, Score, read_score
from barkeep.errors import KnowledgeError, UserError

EventKind = Literal["open", "count", "pour", "waste", "empty"]


FURTHEST = 3650
"""Days; a date further away than this is a misprint."""


_EVENT = re.compile(r"(?P<kind>open|count|pour|waste|empty) (?P<day>-[1-9]\d*)(?: (?P<rest>.+))?")

_TAKEN = re.compile(r"(?P<amount>\d+(?:\.\d+)?) (?P<unit>ml|g|each)(?: (?P<note>.+))?")

_PATTERNS: Mapping[str, str] = {
    "open": "“open DAY”",
    "count": "“count DAY LEVEL”",
    "pour": "“pour DAY AMOUNT UNIT note”",
    "waste": "“waste DAY AMOUNT UNIT note”",
    "empty": "“empty DAY note”",
}


@dataclass(frozen=True, slots=True)
class Event:
    """One line of a bottle's history, amounts in the bottle's unit; `text` as written."""

    text: str
    kind: EventKind
    day: int
    amount: float = 0.0
    level: MeasuredLevel | None = None
    note: str = ""


@dataclass(frozen=True, slots=True)
class SampleBottle:
    """One bottle with its days and history. `entry` names it in messages.

    `level` is what came in where that is less than the size, `dash_ml` what
    one dash from it comes to where that is not what the bar means by a dash.
    """

    file: str
    entry: str
    draft: ProductDraft
    received: int
    made: int | None
    use_by: int | None
    level: float | None
    history: tuple[Event, ...]
    tare: Tare | None = None
    dash_ml: float | None = None


@dataclass(frozen=True, slots=True)
class Episode:
    """The drinks of one episode, by name, the day they were written, and its shoot.

    `on` is the day of the shoot, `drinks` what was filmed, so many serves of each.
    """

    name: str
    written: int
    specs: tuple[str, ...]
    on: int
    state: ShootState
    drinks: tuple[str, ...]
    serves: ServeCounts
    starts: str
    notes: str


@dataclass(frozen=True, slots=True)
class SampleTrial:
    """One tasting of the spec of this name, on a day."""

    spec: str
    day: int
    scores: tuple[Score, ...]
    notes: str
    changed: str
    won: bool


def read_bar(text: str, file: str = "bar.toml") -> tuple[Settings, tuple[Episode, ...]]:
    """The bar's settings and its episodes."""
    document = parse(text, file)
    refuse_other_tables(document, ("name", "currency", "episode"), file)
    head = Fields({key: document[key] for key in document if key != "episode"}, file, "the bar")
    settings = Settings(name=head.text("name"), currency=head.text("currency"))
    episodes = tuple(_episode(each, file) for each in tables(document, "episode", file))
    _refuse_twice((each.name for each in episodes), file)
    _refuse_twice((spec for each in episodes for spec in each.specs), file)
    return settings, episodes


def read_bottles(texts: Mapping[str, str], tree: FamilyTree) -> tuple[SampleBottle, ...]:
    """The bottles of several files, by file name, as one shelf in that order."""
    drafts: dict[str, ProductDraft] = {}
    found = []
    for file, text in texts.items():
        document = parse(text, file)
        refuse_other_tables(document, ("bottle",), file)
        for number, table in enumerate(tables(document, "bottle", file), 1):
            fields = Fields(table, file, f"bottle {number}")
            found.append(_bottle(fields, tree, drafts))
    return tuple(found)


def read_known_products(
    text: str, tree: FamilyTree, file: str = "known_products.toml"
) -> tuple[ProductDraft, ...]:
    """Products the owner knows the price of and has no bottle of."""
    document = parse(text, file)
    refuse_other_tables(document, ("product",), file)
    found = []
    for number, table in enumerate(tables(document, "product", file), 1):
        fields = Fields(table, file, f"product {number}")
        draft = _draft(fields, tree)
        if draft.price is None:
            fields.refuse("“price” is missing")
        fields.finish()
        found.append(draft)
    _refuse_twice((each.title for each in found), file)
    return tuple(found)


def read_trials(
    text: str, scales: Sequence[Scale], file: str = "trials.toml"
) -> tuple[SampleTrial, ...]:
    """The trials, each with its scores on the scales of the bar."""
    document = parse(text, file)
    refuse_other_tables(document, ("trial",), file)
    return tuple(_trial(each, scales, file) for each in tables(document, "trial", file))


def _trial(table: Table, scales: Sequence[Scale], file: str) -> SampleTrial:
    fields = Fields(table, file, f"trial of {table.get('spec', '')}".strip())
    trial = SampleTrial(
        spec=fields.text("spec"),
        day=_past(fields, "day"),
        scores=tuple(_score(fields, each, scales) for each in fields.words("scores")),
        notes=fields.text("notes", ""),
        changed=fields.text("changed", ""),
        won=fields.flag("won"),
    )
    fields.finish()
    return trial


def _score(fields: Fields, text: str, scales: Sequence[Scale]) -> Score:
    try:
        return read_score(text, scales)
    except UserError as error:
        fields.refuse(f"“{text}”: {error}")


def _episode(table: Table, file: str) -> Episode:
    fields = Fields(table, file, f"episode {table.get('name', '')}".strip())
    specs = fields.words("specs")
    on = _day(fields, "on")
    if on is None:
        fields.refuse("“on” is missing: the day of the shoot")
    episode = Episode(
        name=fields.text("name"),
        written=_past(fields, "written"),
        specs=specs,
        on=on,
        state=cast(ShootState, fields.choice("state", STATES, "")),
        drinks=fields.words("drinks") or specs,
        serves=ServeCounts(*(_count(fields, each) for each in ("tests", "camera", "tasting"))),
        starts=fields.text("starts", ""),
        notes=fields.text("notes", ""),
    )
    for drink in episode.drinks:
        if drink not in specs:
            fields.refuse(f"“drinks” names {drink}, which is not among its specs")
    if not episode.specs:
        fields.refuse("“specs” names no drink")
    fields.finish()
    return episode


def _bottle(fields: Fields, tree: FamilyTree, drafts: dict[str, ProductDraft]) -> SampleBottle:
    draft = _draft_of_bottle(fields, tree, drafts)
    made = _past(fields, "made") if draft.house_made else None
    received = made if made is not None else _past(fields, "received")
    tare_g = fields.number_or_none("tare_g", above=0)
    tare = None if tare_g is None else Tare(tare_g, SCALE_SIGMA_G)
    bottle = SampleBottle(
        file=fields.file,
        entry=fields.key,
        draft=draft,
        received=received,
        made=made,
        use_by=_day(fields, "use_by"),
        level=fields.number_or_none("level", above=0, most=draft.size),
        history=_history(fields, container_for(draft, tree, tare), received),
        tare=tare,
        dash_ml=fields.number_or_none("dash_ml", least=LEAST_DASH_ML, most=MOST_DASH_ML),
    )
    fields.finish()
    return bottle


def _draft_of_bottle(
    fields: Fields, tree: FamilyTree, drafts: dict[str, ProductDraft]
) -> ProductDraft:
    """The product described here, or the one described before that this is another bottle of."""
    if "another" in fields.names():
        title = fields.text("another")
        known = drafts.get(folded(title))
        fields.key = f"another {title}"
        return known or fields.refuse("no product of this maker and name comes before it")
    draft = _draft(fields, tree)
    if folded(draft.title) in drafts:
        fields.refuse("it is described before; write “another” for a further bottle")
    drafts[folded(draft.title)] = draft
    return draft


def _draft(fields: Fields, tree: FamilyTree) -> ProductDraft:
    name, maker = fields.text("name"), fields.text("maker", "")
    fields.key = f"{maker} {name}".strip()
    ingredient = fields.ingredient("ingredient", tree)
    return ProductDraft(
        name=name,
        maker=maker,
        ingredient=ingredient,
        size=fields.number("size", above=0),
        unit=tree[ingredient].unit,
        abv_percent=fields.number_or_none("abv_percent", most=100.0),
        sugar_g_per_l=fields.number_or_none("sugar_g_per_l"),
        price=fields.number_or_none("price"),
        barcode=fields.text("barcode", ""),
        house_made=fields.flag("house_made"),
        shape=_shape(fields),
        density_g_per_ml=fields.number_or_none("density_g_per_ml", above=0),
        acid_g_per_l=fields.number_or_none("acid_g_per_l"),
    )


def _shape(fields: Fields) -> str | None:
    if "shape" not in fields.names():
        return None
    return fields.choice("shape", shipped_shapes(), "")


def _history(fields: Fields, container: Container, received: int) -> tuple[Event, ...]:
    events = tuple(_event(fields, text, container) for text in fields.words("history"))
    day = received
    for event in events:
        if event.day < day:
            fields.refuse(f"“{event.text}” comes before what stands above it")
        day = event.day
    return events


def _event(fields: Fields, text: str, container: Container) -> Event:
    found = _EVENT.fullmatch(text)
    if found is None:
        fields.refuse(f"“{text}” is no line of a history; the days are past, such as -3")
    kind, day = cast(EventKind, found["kind"]), int(found["day"])
    rest = found["rest"] or ""
    match kind:
        case "count":
            return Event(text, kind, day, level=_level(fields, text, rest, container))
        case "pour" | "waste":
            amount, note = _taken(fields, text, rest, container.unit)
            return Event(text, kind, day, amount, note=note)
        case "open" if rest:
            fields.refuse(f"“{text}” says too much; write {_PATTERNS[kind]}")
    return Event(text, kind, day, note=rest)


def _level(fields: Fields, text: str, rest: str, container: Container) -> MeasuredLevel:
    try:
        return parse_level(rest, container)
    except UserError as error:
        fields.refuse(f"“{text}”: {error}")


def _taken(fields: Fields, text: str, rest: str, unit: Unit) -> tuple[float, str]:
    found = _TAKEN.fullmatch(rest)
    if found is None:
        fields.refuse(f"“{text}” cannot be read; write {_PATTERNS[text.split()[0]]}")
    if found["unit"] != unit:
        fields.refuse(f"“{text}” is in {found['unit']}, and the bottle in {unit}")
    return float(found["amount"]), found["note"] or ""


def _count(fields: Fields, name: str) -> int:
    return int(fields.number_or_none(name, least=0, most=MOST_SHOOT_SERVES) or 0)


def _past(fields: Fields, name: str) -> int:
    day = _day(fields, name)
    if day is None or day >= 0:
        fields.refuse(f"“{name}” is a day in the past, such as -30")
    return day


def _day(fields: Fields, name: str) -> int | None:
    value = fields.number_or_none(name, least=-FURTHEST, most=FURTHEST)
    if value is not None and value != int(value):
        fields.refuse(f"“{name}” is {value:g}; it is counted in whole days")
    return None if value is None else int(value)


def _refuse_twice(names: Iterable[str], file: str) -> None:
    seen: set[str] = set()
    for name in names:
        if folded(name) in seen:
            raise KnowledgeError(file, name, "it is there twice")
        seen.add(folded(name))
