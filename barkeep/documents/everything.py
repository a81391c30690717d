"""A whole bar as one JSON document, read and written; `resources` has its published schema.

The document is what a bar keeps, table by table, removed things among them; only what undo
remembers is left out. What stands here is the document: a key that is published neither
vanishes nor changes its meaning.
"""

from __future__ import annotations

import json
import re
from collections.abc import Iterator, Mapping
from datetime import date, datetime
from typing import Annotated, Any, Literal

import msgspec
from msgspec import Meta, Struct

from barkeep.domain.amounts.units import Ounce, Unit
from barkeep.domain.bar.shoots import ShootState
from barkeep.domain.bottles.bottle import CountMethod, EntryKind
from barkeep.domain.ingredients.relations import Scope, Technique
from barkeep.domain.phrases import begun_small, folded
from barkeep.errors import UnreadableFile
from barkeep.translation import tr, tr_noop

FORMAT, VERSION = "barkeep-bar", 1
HOW_TO_RESTORE = tr_noop("restore it by “barkeep import”, or in the window by File, Backups…")
"""What is said where such a document is given for something else."""

Id = Annotated[int, Meta(ge=1, le=2**63 - 1)]
Whole = Annotated[int, Meta(ge=0, le=2**31)]
Positive = Annotated[float, Meta(gt=0.0)]
NotNegative = Annotated[float, Meta(ge=0.0)]
Percent = Annotated[float, Meta(ge=0.0, le=100.0)]
Share = Annotated[float, Meta(gt=0.0, le=1.0)]
Moment = Annotated[datetime, Meta(tz=False, description="local time, without a zone")]
TimeOfDay = Annotated[str, Meta(pattern=r"^([01][0-9]|2[0-3]):[0-5][0-9]$")]
Texts = tuple[str, ...]


class Kept(Struct, frozen=True, kw_only=True, forbid_unknown_fields=True):
    """What every part of the document is: nothing in it is passed over."""


class Product(Kept, frozen=True, kw_only=True):
    """What a label says; `size` in `unit`."""

    id: Id
    name: str
    maker: str
    ingredient: str
    size: Positive
    unit: Unit
    abv_percent: Percent | None
    sugar_g_per_l: float | None
    acid_g_per_l: float | None
    density_g_per_ml: float | None
    price: NotNegative | None
    barcode: str
    house_made: bool
    shape: str | None
    removed: bool


class Bottle(Kept, frozen=True, kw_only=True):
    """One container; its level is what its entries in the ledger add up to."""

    id: Id
    product_id: Id
    position: int
    received: date | None
    made: date | None
    use_by: date | None
    tare_g: float | None
    tare_sigma_g: float | None
    full_g: float | None
    dash_ml: float | None
    removed: bool


class Paid(Kept, frozen=True, kw_only=True):
    """What one bottle or pack cost on a day, in the bar's currency; `size` as bought, if known."""

    id: Id
    product_id: Id
    day: date
    amount: NotNegative
    size: Positive | None = None
    shop: str = ""
    removed: bool = False


class Entry(Kept, frozen=True, kw_only=True):
    """One line of the ledger, in the unit of the bottle's product; the newer, the larger its id."""

    id: Id
    bottle_id: Id
    kind: EntryKind
    at: Moment
    amount: float
    method: CountMethod | None
    sigma: float | None
    note: str
    reverses: Id | None


class Line(Kept, frozen=True, kw_only=True):
    """One line of a spec; `quantity` is what it comes to in the ingredient's unit."""

    text: str
    ingredient: str
    amount: float | None
    amount_high: float | None
    unit: str | None
    quantity: float | None
    optional: bool
    garnish: bool
    note: str
    min_abv_percent: float | None
    alternatives: Texts | None
    called: str
    stated: Texts | None


class UnsettledLine(Kept, frozen=True, kw_only=True):
    """A line that was not understood, its place among the lines, and what was asked."""

    text: str
    place: Whole
    question: str


class Spec(Kept, frozen=True, kw_only=True):
    """One drink of the owner's."""

    id: Id
    name: str
    lines: tuple[Line, ...]
    unsettled: tuple[UnsettledLine, ...] | None
    method: str
    technique: Technique
    glass: str
    ice: str
    notes: str
    riff_of: str | None
    added: date | None
    serves: Positive
    tags: Texts | None
    credit: str
    source: str
    removed: bool


class Score(Kept, frozen=True, kw_only=True):
    """What one taster gave on one scale."""

    taster: str
    scale: str
    value: float


class Trial(Kept, frozen=True, kw_only=True):
    """One dated tasting of a version of a spec."""

    id: Id
    spec_id: Id
    on: date
    changed: str
    notes: str
    scores: tuple[Score, ...]
    won: bool
    removed: bool


class Serves(Kept, frozen=True, kw_only=True):
    """How many serves go into tests, in front of the camera, and to be tasted."""

    tests: Whole
    camera: Whole
    tasting: Whole


class Chosen(Kept, frozen=True, kw_only=True):
    """What a line is poured with instead: the line's place, what, and how much of it."""

    line: Whole
    ingredient: str
    ratio: Positive
    bottle_id: Id | None = None
    wanted: str = ""


class Drink(Kept, frozen=True, kw_only=True):
    """One drink of a shoot, by the id of its spec (a classic has none) and by name."""

    spec_id: Id | None
    name: str
    serves: Serves
    chosen: tuple[Chosen, ...]


class LoggedBottle(Kept, frozen=True, kw_only=True):
    """What a shoot did to one bottle, in its unit."""

    bottle_id: Id
    title: str
    unit: Unit
    poured: float
    spilled: float
    expected: float
    counted: float | None = None
    sigma: float = 0.0


class Log(Kept, frozen=True, kw_only=True):
    """What was made and poured at a shoot."""

    at: Moment
    made: tuple[Whole, ...]
    bottles: tuple[LoggedBottle, ...]


class Shoot(Kept, frozen=True, kw_only=True):
    """One filming session."""

    id: Id
    theme: str
    on: date
    starts: TimeOfDay | None
    state: ShootState
    drinks: tuple[Drink, ...]
    notes: str
    ticked: Texts
    log: Log | None
    removed: bool


class OwnIngredient(Kept, frozen=True, kw_only=True):
    """A kind that the owner added."""

    key: str
    name: str
    parents: Texts = ()
    aliases: Texts = ()
    regional: Mapping[str, Texts] = {}
    printed: Texts = ()
    family: bool = False
    proper: bool = False
    unit: Unit = "ml"
    abv_percent: Percent | None = None
    sugar_g_per_l: NotNegative | None = None
    acid_g_per_l: NotNegative | None = None
    shelf_life_days: Id | None = None
    allergens: Texts = ()
    always_there: bool = False
    typical_size: Positive = 700.0
    basis: str = ""


class OwnStandIn(Kept, frozen=True, kw_only=True):
    """What the owner says stands in for something."""

    wanted: str
    offered: str
    closeness: Share
    ratio: Positive
    why: str
    scope: tuple[Scope, ...]


class OwnRecipe(Kept, frozen=True, kw_only=True):
    """How the owner makes something; `inputs` are pairs of an ingredient and its amount."""

    made: str
    inputs: tuple[tuple[str, float], ...]
    yields: Positive
    how: str


class Scale(Kept, frozen=True, kw_only=True):
    """What trials are scored on, with its ends."""

    name: str
    low: float
    high: float


class Par(Kept, frozen=True, kw_only=True):
    """The least to have of an ingredient, in its unit."""

    ingredient: str
    amount: float


class Measure(Kept, frozen=True, kw_only=True):
    """A measure of the owner's own."""

    name: str
    amount: float
    unit: str


class HousePour(Kept, frozen=True, kw_only=True):
    """The product that is poured for a kind."""

    kind: str
    product: Id


class ShelfLife(Kept, frozen=True, kw_only=True):
    """How many days a kind keeps."""

    kind: str
    days: Whole


class ToBuy(Kept, frozen=True, kw_only=True):
    """So many packages of an ingredient, put on the shopping list by hand."""

    ingredient: str
    packages: Whole


class Settings(Kept, frozen=True, kw_only=True):
    """What the owner chose for the bar."""

    name: str
    currency: str
    not_there: Texts
    ounce: Ounce
    dash_ml: Positive
    shown_in: Literal["as_written", "oz", "ml", "cl", "parts"]
    country: str
    scales: tuple[Scale, ...]
    classics: bool
    pars: tuple[Par, ...]
    measures: tuple[Measure, ...]
    region: str
    house: tuple[HousePour, ...]
    keeps: tuple[ShelfLife, ...]
    backups: str
    to_buy: tuple[ToBuy, ...] = ()


class Changed(Kept, frozen=True, kw_only=True):
    """The last change of the bar: when, and what it is called."""

    at: Moment
    label: str


class WholeBar(Kept, frozen=True, kw_only=True):
    """Everything a bar keeps but for what undo remembers."""

    format: Literal["barkeep-bar"]
    version: Literal[1]
    changed: Changed | None
    settings: Settings
    products: tuple[Product, ...]
    bottles: tuple[Bottle, ...]
    ledger: tuple[Entry, ...]
    specs: tuple[Spec, ...]
    trials: tuple[Trial, ...]
    shoots: tuple[Shoot, ...]
    own_ingredients: tuple[OwnIngredient, ...]
    own_stand_ins: tuple[OwnStandIn, ...]
    own_recipes: tuple[OwnRecipe, ...]
    paid: tuple[Paid, ...] = ()


class _Head(Struct):
    format: Any = None
    version: Any = None


def is_everything(text: str) -> bool:
    """Whether a text says that it is such a document."""
    return text.lstrip("\ufeff \t\r\n").startswith("{") and f'"{FORMAT}"' in text[:400]


def everything_json(parts: Mapping[str, object], bar: str) -> str:
    """The parts of a bar, in JSON's own types but for days and moments, as the document.

    Each is checked as it will be when it is read. Raises `UnreadableFile` of the `bar`.
    """
    whole = {"format": FORMAT, "version": VERSION, **parts}
    plain = msgspec.to_builtins(whole)
    try:
        checked = msgspec.convert(plain, WholeBar)
    except msgspec.ValidationError as error:
        raise _located(error, bar) from error
    _refuse_what_does_not_fit(checked, bar)
    return json.dumps(msgspec.to_builtins(checked), ensure_ascii=False, indent=1) + "\n"


def read_everything(text: str, file: str) -> WholeBar:
    """The document. Raises `UnreadableFile`, which says where in it something is wrong."""
    try:
        content = text.lstrip("\ufeff").encode("utf-8")
        head = msgspec.json.decode(content, type=_Head)
        _refuse_other_versions(head, file)
        whole = msgspec.json.decode(content, type=WholeBar)
    except msgspec.ValidationError as error:
        raise _located(error, file) from error
    except msgspec.DecodeError as error:
        raise _malformed(error, text, file) from error
    except (UnicodeEncodeError, RecursionError) as error:
        raise UnreadableFile(file, tr("it is no JSON that can be read")) from error
    _refuse_what_does_not_fit(whole, file)
    return whole


def parts_of(whole: WholeBar) -> dict[str, Any]:
    """The parts of a document in JSON's own types; days and moments stay what they are."""
    built: dict[str, Any] = msgspec.to_builtins(whole, builtin_types=(date, datetime))
    for shoot in built["shoots"]:  # a log lies in one column, where a moment is a text
        if shoot["log"] is not None:
            shoot["log"]["at"] = shoot["log"]["at"].isoformat()
    return built


def _refuse_other_versions(head: _Head, file: str) -> None:
    if head.format != FORMAT:
        raise UnreadableFile(file, tr("its “format” is not “{format}”", format=FORMAT))
    if isinstance(head.version, int) and head.version > VERSION:
        reason = tr(
            "it was written by a newer barkeep (version {version}; this one reads {known})",
            version=head.version,
            known=VERSION,
        )
        raise UnreadableFile(file, reason)
    if head.version != VERSION:
        shown = json.dumps(head.version, ensure_ascii=False)
        raise UnreadableFile(
            file,
            tr("its “version” is {shown}, and only {known} is known", shown=shown, known=VERSION),
        )


_WHERE = re.compile(r" - at `\$\.?(?P<path>.*)`$")
_SAID = re.compile(r"`(?P<name>[^`]+)`")
_WORDS = {
    "str": tr_noop("a text"),
    "int": tr_noop("a whole number"),
    "float": tr_noop("a number"),
    "bool": tr_noop("true or false"),
    "array": tr_noop("a list"),
    "object": tr_noop("an object"),
    "null": "null",
    "date": tr_noop("a day such as 2026-03-31"),
    "datetime": tr_noop("a moment such as 2026-03-31T18:30:00"),
}


def _word(kind: str) -> str:
    return tr(_WORDS.get(kind, kind))


def _located(error: msgspec.ValidationError, file: str) -> UnreadableFile:
    """What msgspec says of one place, in barkeep's words."""
    told = str(error)
    found = _WHERE.search(told)
    path = found["path"] if found else ""
    told = _WHERE.sub("", told)
    names = _SAID.findall(told)
    if told.startswith("Expected") and len(names) == 2:
        wanted, given = (tr(" or ").join(map(_word, each.split(" | "))) for each in names)
        reason = tr("{wanted} is expected, and it is {given}", wanted=wanted, given=given)
    elif told.startswith("Expected `") and names:
        limit = told.removeprefix(f"Expected `{names[0]}`")
        reason = tr("{wanted}{limit} is expected", wanted=_word(names[0]), limit=limit)
    elif told.startswith("Object missing") and names:
        reason = tr("“{name}” is missing", name=names[0])
    elif told.startswith("Object contains unknown") and names:
        reason = tr("“{name}” is nothing that barkeep knows", name=names[0])
    elif told.startswith("Invalid enum value"):
        value = told.removeprefix("Invalid enum value").strip()
        reason = tr("{value} is none of what it may be", value=value)
    else:
        reason = told[:1].lower() + told[1:].replace("`", "")
    return UnreadableFile(file, reason, overall=tr("at {path}", path=path) if path else "")


_BYTE = re.compile(r" \(byte (?P<place>\d+)\)$")


def _malformed(error: msgspec.DecodeError, text: str, file: str) -> UnreadableFile:
    told = str(error)
    found = _BYTE.search(told)
    reason = _BYTE.sub("", told).removeprefix("JSON is malformed: ")
    content = text.lstrip("\ufeff").encode("utf-8", "replace")
    before = content[: int(found["place"]) if found else len(content)].decode("utf-8", "replace")
    reason = tr("it is no JSON ({reason})", reason=begun_small(reason))
    line, column = before.count("\n") + 1, len(before) - before.rfind("\n")
    return UnreadableFile(file, reason, line, column)


def _refuse_what_does_not_fit(whole: WholeBar, file: str) -> None:
    for where, reason in _misfits(whole):
        raise UnreadableFile(file, reason, overall=tr("at {where}", where=where))


def _misfits(whole: WholeBar) -> Iterator[tuple[str, str]]:
    """What each part allows and all of them together do not: the place, and why."""
    keyed: dict[str, list[Any]] = {
        "products": [each.id for each in whole.products],
        "bottles": [each.id for each in whole.bottles],
        "ledger": [each.id for each in whole.ledger],
        "paid": [each.id for each in whole.paid],
        "specs": [each.id for each in whole.specs],
        "trials": [each.id for each in whole.trials],
        "shoots": [each.id for each in whole.shoots],
        "own_ingredients": [each.key for each in whole.own_ingredients],
        "own_stand_ins": [(each.wanted, each.offered) for each in whole.own_stand_ins],
        "own_recipes": [each.made for each in whole.own_recipes],
    }
    for part, keys in keyed.items():
        yield from _twice(part, keys, tr("is there twice"))
    names = [
        None
        if each.removed
        else (folded(f"{each.maker} {each.name}".strip()), each.size, each.unit)
        for each in whole.products
    ]
    yield from _twice("products", names, tr("another product has its name and size"))
    drinks = [None if each.removed else folded(each.name) for each in whole.specs]
    yield from _twice("specs", drinks, tr("another spec has its name"))
    refers = (
        ("bottles", "product_id", [each.product_id for each in whole.bottles], "products"),
        ("paid", "product_id", [each.product_id for each in whole.paid], "products"),
        ("ledger", "bottle_id", [each.bottle_id for each in whole.ledger], "bottles"),
        ("trials", "spec_id", [each.spec_id for each in whole.trials], "specs"),
    )
    for part, key, given, to in refers:
        there = set(keyed[to])
        for place, each in enumerate(given):
            if each not in there:
                yield (
                    f"{part}[{place}].{key}",
                    tr("{number} is none of the {part}", number=each, part=to),
                )
    yield from _wrong_reversals(whole)
    for place, one in enumerate(whole.own_stand_ins):
        if one.wanted == one.offered:
            yield f"own_stand_ins[{place}]", tr("nothing stands in for itself")


def _twice(part: str, keys: list[Any], reason: str) -> Iterator[tuple[str, str]]:
    seen: set[Any] = set()
    for place, key in enumerate(keys):
        if key is not None and key in seen:
            yield f"{part}[{place}]", reason
        seen.add(key)


def _wrong_reversals(whole: WholeBar) -> Iterator[tuple[str, str]]:
    of = {each.id: each.bottle_id for each in whole.ledger}
    for place, each in enumerate(whole.ledger):
        where = f"ledger[{place}].reverses"
        if (each.kind == "reverse") != (each.reverses is not None):
            yield (
                where,
                tr("an entry names another one where its kind is “reverse”, and only there"),
            )
        elif each.reverses is not None and (
            each.reverses >= each.id or of.get(each.reverses) != each.bottle_id
        ):
            yield where, tr("{number} is no earlier entry of the same bottle", number=each.reverses)
