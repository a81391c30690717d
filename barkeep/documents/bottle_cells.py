"""One cell of a list of bottles: what owners write for a strength, a size, a level, a day, a price.

What may mean two things is never taken: it is an `UnsureField` that says what it
would be written as for the likelier of the two.
"""

from __future__ import annotations

import re
from collections.abc import Iterator, Mapping
from dataclasses import dataclass
from datetime import date, timedelta
from functools import cache, lru_cache

from barkeep import resource_files
from barkeep.domain.amounts.amount import Amount, parse_amount
from barkeep.domain.amounts.measures import quantity_in, to_quantity
from barkeep.domain.amounts.units import OUNCES, BarUnits
from barkeep.domain.bottles.bottle import (
    LEAST_DASH_ML,
    MOST_DASH_ML,
    SCALE_SIGMA_G,
    SIGMAS,
    TENTHS_SIGMA,
    Tare,
)
from barkeep.domain.bottles.containers import Container
from barkeep.domain.bottles.levels import (
    MeasuredLevel,
    guessed,
    judged,
    parse_level,
    read_weight_g,
)
from barkeep.domain.bottles.package_sizes import PackageSize, PiecesToCount, package_size
from barkeep.domain.bottles.shapes import shipped_shapes
from barkeep.domain.ingredients.names import find_name, guesses, rather_named
from barkeep.domain.ingredients.tree import FamilyTree
from barkeep.domain.liquids.ethanol import read_strength
from barkeep.domain.phrases import folded
from barkeep.errors import InvalidField, UnknownName
from barkeep.shipped_data import Texts, parse, read
from barkeep.translation import tr, tr_noop

FILE = "bottle_words.toml"

SMALLEST_ML = 10.0
"""A bare size below this is rather litres or centilitres than millilitres; a level, a slip."""
SMALL_ML = 100.0
"""A bare size up to this may be centilitres as well as millilitres, a level a percentage."""
SMALL_SHARE = 0.4
"""Of the usual size of its kind: a small bottle of bitters is no miniature."""
RARELY_ABOVE = 75.0
"""A bare strength from here on is often a proof, where the kind is usually far below."""
LIKE_ENOUGH = 0.42
"""The confidence from which a guess at a misspelt name is the likely answer, and below it none."""
MOST_BOTTLES = 99
"""No row of a list of bottles at home stands for more; a larger number is another column."""
ROUNDING = 1e-3
"""What the last figure of a written amount may be off."""
_SERIALS = (36526, 73050)
"""Days that spreadsheets count from the end of 1899: those of 2000 to 2099."""
_COUNTED_FROM = date(1899, 12, 30)


NUMBER = re.compile(r"[0-9]{1,7}(?:[.,][0-9]{1,9})?")
_ABV = re.compile(r"(?i)^(?:abv|alc\.?|vol\.?)[ :]*")
_DEGREES = re.compile(r"([0-9]{1,2}(?:[.,][0-9]+)?)[ ]?(?:°|º|degrees)")
_GROUPED = re.compile(r"[0-9]{1,3}(?:(?P<mark>[.,' ’])[0-9]{3})+(?:[.,][0-9]{1,2})?")
_PRICE = re.compile(r"(?P<before>[^\d\s.,-]*)\s*(?P<number>.*?)\s*(?P<after>[^\d\s,-]*)", re.DOTALL)
_ISO_DAY = re.compile(r"(?P<year>[0-9]{4})([-/.])(?P<month>[0-9]{1,2})\2(?P<day>[0-9]{1,2})")
_DAY_IN_NUMBERS = re.compile(
    r"(?P<first>[0-9]{1,2})[ ]?(?P<mark>[-/.])[ ]?(?P<second>[0-9]{1,2})[ ]?(?P=mark)[ ]?"
    r"(?P<year>[0-9]{4}|[0-9]{2})"
)
_DAY_BY_NAME = re.compile(
    r"(?:(?P<day>[0-9]{1,2})(?:st|nd|rd|th|er|º|°)?\.?[ ](?:of |de |di )?)?(?P<month>[^\W\d_]+)\.?"
    r"(?:[ ](?P<after>[0-9]{1,2})(?:st|nd|rd|th)?)?,?[ ](?:de |del )?(?P<year>[0-9]{4})",
    re.IGNORECASE,
)
_TIME = re.compile(r"[T ][0-9]{1,2}:[0-9]{2}(?::[0-9]{2}(?:\.[0-9]+)?)?(?:[ ]?[AaPp][Mm])?Z?$")


class UnsureField(InvalidField):
    """A field that may mean more than one thing; `likely` is how the likelier one is written."""

    likely: str
    says = "“{value}” for {field} is not clear: {expected}."


class UnlikeName(UnknownName):
    """A name that nothing answers to, with the one name that is most like it, if any is."""

    likely: str = ""


@dataclass(frozen=True)
class LineWords:
    """What stands in a line beside a name; see `bottle_words.toml`."""

    containers: Texts
    left: Texts
    gone: Texts
    hedges: Texts
    open: Texts
    sealed: Texts
    here: Texts
    numbers: Texts
    guessed: Texts


@dataclass(frozen=True)
class Words:
    """What owners write, folded; see `bottle_words.toml`. Levels are shares of the bottle."""

    columns: Mapping[str, Texts]
    levels: Mapping[str, float]
    about: Mapping[str, float]
    answers: Mapping[str, Texts]
    currencies: Mapping[str, Texts]
    months: Mapping[str, Texts]
    line: LineWords


@cache
def words() -> Words:
    """The words barkeep brings along. Raises `KnowledgeError` for a broken resource."""
    return read(parse(resource_files.read_text(FILE), FILE), Words, FILE, "the text")


def by_word(groups: Mapping[str, Texts]) -> Mapping[str, str]:
    """Word, folded -> the first group it stands in."""
    found: dict[str, str] = {}
    for group, texts in groups.items():
        for each in (group, *texts):
            found.setdefault(folded(each), group)
    return found


@cache
def _answers() -> Mapping[str, str]:
    return by_word(words().answers)


@cache
def _months() -> Mapping[str, int]:
    return {word: int(group) for word, group in by_word(words().months).items()}


@cache
def _levels() -> tuple[Mapping[str, float], Mapping[str, float]]:
    sure, about = words().levels, words().about
    return (
        {folded(word): share for word, share in sure.items()},
        {folded(word): share for word, share in about.items()},
    )


LIKELY = 3
"""So many of the names that are like one that is not known are told."""


@lru_cache(maxsize=4_096)
def answer(text: str) -> str:
    """What a cell answers: *yes*, *no*, *nothing*, or empty where it is something else."""
    return _answers().get(folded(text), "")


@lru_cache(maxsize=4_096)
def says_nothing(text: str) -> bool:
    """Whether a cell says that nothing is known: a dash, *n/a*."""
    word = folded(text)
    return not word or _answers().get(word) == "nothing"


def read_ingredient(text: str, tree: FamilyTree, beside: str = "") -> str:
    """The key of what a cell names; `beside` is what the row says of its maker and product.

    Raises `UnlikeName`, or `UnsureField` where words are left over.
    """
    rather = rather_named(text, tree)
    if rather:
        said = tr("“{text}” may be any of several kinds", text=text)
        raise UnsureField("ingredient", text, said, tree.name(rather))
    if text in tree:
        return text
    found, notes = find_name(text, tree)
    if found is None or found.key is None:
        like = _like(text, tree)
        nearest = tuple(tree.name(key) for key, _sure in like[:LIKELY])
        raise UnlikeName("ingredient", text, nearest, _likeliest(like, tree))
    name = tree.name(found.key)
    if found.maker and not _said_in(found.maker, beside):
        likely = _likeliest(_like(text, tree), tree) or name
        said = tr("“{maker}” names no kind, nor this row’s maker", maker=found.maker)
        raise UnsureField("ingredient", text, said, likely)
    if notes:
        said = tr("“{notes}” says more than {name} does", notes=", ".join(notes), name=name)
        raise UnsureField("ingredient", text, said, name)
    return found.key


def _said_in(words_of_maker: str, beside: str) -> bool:
    there = set(folded(beside).split())
    return set(folded(words_of_maker).split()) <= there


def _like(text: str, tree: FamilyTree) -> tuple[tuple[str, float], ...]:
    """The kinds whose names are most like a text, likeliest first, and how sure each is."""
    found = ((each.key, each.confidence) for each in guesses(text, tree))
    return tuple((key, sure) for key, sure in found if key and not tree[key].family)


def _likeliest(like: tuple[tuple[str, float], ...], tree: FamilyTree) -> str:
    """The name that is like enough to be the likely answer, empty where none is."""
    return tree.name(like[0][0]) if like and like[0][1] >= LIKE_ENOUGH else ""


def ingredient_in(product: str, tree: FamilyTree) -> str:
    """The name of the kind that a label ends in, empty where it names none."""
    found, _notes = find_name(product, tree)
    key = None if found is None else found.key
    return "" if key is None or tree[key].family else tree.name(key)


def read_abv(text: str, usual: float | None) -> float:
    """A strength in % vol; `usual` is that of the kind. A bare share is asked about.

    Raises `InvalidField`, or `UnsureField`.
    """
    plain = _ABV.sub("", text)
    degrees = _DEGREES.fullmatch(plain)
    if degrees:
        expected = tr(
            "write {degrees} % where that is % vol, or {degrees} proof", degrees=degrees[1]
        )
        raise UnsureField("abv", text, expected, f"{degrees[1]} %")
    bare = NUMBER.fullmatch(plain)
    abv = _plain(plain) if bare and _plain(plain) < 1.0 else read_strength(plain, "abv")
    if bare and 0.0 < abv < 1.0:
        share = f"{abv * 100:g} %"
        likely = share if usual is None or usual >= 1.0 else f"{abv:g} %"
        expected = tr(
            "write {share} where it is a share, or {abv:g} % where it is as weak as that",
            share=share,
            abv=abv,
        )
        raise UnsureField("abv", text, expected, likely)
    if bare and usual and abv >= RARELY_ABOVE and abv > 1.5 * usual:
        expected = tr(
            "write {abv:g} % vol or {abv:g} proof; the kind has about {usual:g} % vol",
            abv=abv,
            usual=usual,
        )
        raise UnsureField("abv", text, expected, f"{abv:g} proof")
    return abv


def read_size(text: str, key: str, tree: FamilyTree, units: BarUnits) -> PackageSize:
    """A size in the unit of its kind; a bare number is millilitres where it is likely to be.

    Raises `InvalidField`, `UnsureField`, or as `package_size` does.
    """
    bare, kind = NUMBER.fullmatch(text), tree[key]
    found = PackageSize(_plain(text)) if bare else _on_the_package(text, key, tree, units)
    size = found.amount
    if size <= 0:
        raise InvalidField("size", text, tr("it is more than nothing"))
    if bare and kind.unit == "ml" and size < SMALLEST_ML:
        expected = tr("write its unit, such as 0.7 l, 70 cl or 700 ml")
        raise UnsureField("size", text, expected, _ml(size * 1000.0))
    if bare and kind.unit == "ml" and size <= SMALL_ML and size < SMALL_SHARE * kind.typical_size:
        expected = tr("write {size:g} cl or {size:g} ml", size=size)
        raise UnsureField("size", text, expected, _ml(size * 10.0))
    return found


def _on_the_package(text: str, key: str, tree: FamilyTree, units: BarUnits) -> PackageSize:
    try:
        return package_size(text, key, tree, units)
    except PiecesToCount as error:
        expected = tr("write how many pieces it holds, about {likely}", likely=error.likely)
        raise UnsureField("size", text, expected, str(error.likely)) from None


def _ml(size: float) -> str:
    return f"{float(f'{size:.6g}'):g} ml"


def read_level(
    text: str, size_text: str, container: Container, units: BarUnits
) -> MeasuredLevel | None:
    """What is left, None for a full bottle nobody measured; `size_text` is how its size is written.

    *315 ml ± 20 ml* says how sure it is, two sigmas either way, *?* that nobody looked. Raises
    `UnsureField`, or as `parse_level` does.
    """
    if folded(text) in words().line.guessed:
        return guessed(container.size) if container.unit != "each" else None
    if container.unit != "each" and "±" in text:
        return _with_doubt(text, container, units)
    sure, about = _levels()
    share = sure.get(folded(text))
    if share is not None:
        return None if share == 1.0 else judged(share, container.size)
    if folded(text) in about:
        likely = f"{about[folded(text)] * 100:g} %"
        raise UnsureField("level", text, tr("write a share or an amount"), likely)
    if container.unit != "ml" or not NUMBER.fullmatch(text):
        return parse_level(text, container, units)
    number = _plain(text)
    bare_size = NUMBER.fullmatch(size_text)
    unit = "ml" if bare_size else parse_amount(size_text, units).unit
    amount_ml = to_quantity(Amount(number, None, unit), "ml", units)
    if unit == "ml" and SMALLEST_ML <= number <= SMALL_ML < container.size:
        expected = tr("write {number:g} % or {number:g} ml", number=number)
        raise UnsureField("level", text, expected, f"{number:g} %")
    if number > 1 and amount_ml >= SMALLEST_ML:
        text = f"{text} {OUNCES.get(unit, unit.replace('_', ' '))}"
    return parse_level(text, container, units)


def _with_doubt(text: str, container: Container, units: BarUnits) -> MeasuredLevel:
    """A level with its doubt; what is no surer than by eye was judged by eye."""
    level, _sign, doubt = text.partition("±")
    found = parse_level(level, container, units)
    sigma = quantity_in(doubt.strip(), container.unit, units) / SIGMAS
    by_eye = sigma >= TENTHS_SIGMA * container.size - ROUNDING
    return MeasuredLevel(found.amount, "tenths" if by_eye else found.method, sigma)


def read_grams_per_litre(text: str, field: str) -> float:
    """g per litre of sugar or acid. Raises `InvalidField`."""
    plain = re.sub(r"\s*g\s*/\s*l$", "", text, flags=re.IGNORECASE)
    return _number(field, plain, "write g per litre, such as 240")


def read_density(text: str) -> float:
    """g per ml. Raises `InvalidField`."""
    plain = re.sub(r"\s*g\s*/\s*ml$", "", text, flags=re.IGNORECASE)
    return _number("density", plain, tr("write g per ml, such as 0.957"))


def read_count(text: str) -> int:
    """How many bottles a row stands for. Raises `InvalidField`."""
    plain = re.sub(r"^[x×] ?| ?[x×]$", "", text.strip(), flags=re.IGNORECASE)
    if not plain.isdecimal() or not 1 <= int(plain) <= MOST_BOTTLES:
        expected = tr("write how many bottles it is, 1 to {most}", most=MOST_BOTTLES)
        raise InvalidField("count", text, expected)
    return int(plain)


def read_dash(text: str, units: BarUnits) -> float:
    """What one dash of a bottle's own dasher gives, in ml. Raises `InvalidField`."""
    dash_ml = _plain(text) if NUMBER.fullmatch(text) else quantity_in(text, "ml", units)
    if not LEAST_DASH_ML <= dash_ml <= MOST_DASH_ML:
        expected = tr(
            "a dash gives {least:g} to {most:g} ml", least=LEAST_DASH_ML, most=MOST_DASH_ML
        )
        raise InvalidField("dash", text, expected)
    return dash_ml


def read_shape(text: str) -> str:
    """The key of a bottle's shape. Raises `InvalidField`."""
    shapes = shipped_shapes()
    named = {folded(name): key for key in shapes for name in (key, shapes[key].name)}
    key = named.get(folded(text))
    if key is None:
        raise InvalidField("shape", text, tr("it is one of {shapes}", shapes=", ".join(shapes)))
    return key


def read_tare(text: str) -> Tare:
    """What the empty bottle weighs; a bare number is g. Raises `InvalidField`, `AmountError`.

    One that was worked out has its doubt behind it: *412 g ± 9 g*, two sigmas.
    """
    weight, _sign, doubt = text.partition("±")
    sigma_g = read_weight("tare", doubt) / SIGMAS if doubt.strip() else SCALE_SIGMA_G
    return Tare(read_weight("tare", weight), sigma_g)


def read_weight(field: str, text: str) -> float:
    """What a bottle weighs, in g; a bare number is g. Raises `InvalidField`, `AmountError`."""
    plain = text.strip()
    weight_g = _plain(plain) if NUMBER.fullmatch(plain) else read_weight_g(plain)
    if weight_g <= 0:
        raise InvalidField(field, plain, tr("a bottle weighs more than nothing"))
    return weight_g


HOW_PRICES = tr_noop("write a number, such as 24.50")


def read_price(text: str, currency: str) -> float:
    """A price in the bar's `currency`; one in another is refused, thousands are asked about.

    Raises `InvalidField`, or `UnsureField`.
    """
    number, sign = _parted(text)
    if sign and not _is_sign_of(sign, currency):
        known = any(_is_sign_of(sign, each) for each in words().currencies)
        if not known:
            raise InvalidField("price", text, HOW_PRICES)
        expected = tr(
            "this bar reckons in {currency}; write what it comes to in that", currency=currency
        )
        raise InvalidField("price", text, expected)
    grouped = _GROUPED.fullmatch(number)
    if grouped:
        raise UnsureField("price", text, HOW_PRICES, _in_full(number, grouped["mark"]))
    return _number("price", number, HOW_PRICES)


def _parted(text: str) -> tuple[str, str]:
    """The number of a price and the sign before or after it."""
    found = _PRICE.fullmatch(text)
    if found is None:
        return text, ""
    return found["number"], found["before"] or found["after"]


def is_currency(sign: str) -> bool:
    """Whether a word or a sign stands for a currency that is known."""
    return any(_is_sign_of(sign, each) for each in words().currencies)


def _is_sign_of(sign: str, currency: str) -> bool:
    plain = sign.casefold()
    named = {each.casefold() for each in words().currencies.get(currency, ())}
    return plain == currency.casefold() or plain in named


def _in_full(number: str, mark: str) -> str:
    """A number without the mark between its thousands: *1,024.50* as *1024.50*."""
    return number.replace(mark, "").replace(",", ".")


def _number(field: str, text: str, expected: str) -> float:
    if not NUMBER.fullmatch(text):
        raise InvalidField(field, text, expected)
    return _plain(text)


def _plain(text: str) -> float:
    return float(text.replace(",", "."))


def read_opened(text: str, today: date | None) -> date | None:
    """When the seal was broken; *yes* is today, *no* is None.

    Raises `InvalidField`, or `UnsureField` for a day that may be two.
    """
    said = answer(text)
    if said == "no":
        return None
    if said == "yes":
        if today is None:
            raise InvalidField("opened", text, HOW_DAYS)
        return today
    return read_day_gone(text, today, "opened")


def read_yes_or_no(field: str, text: str) -> bool:
    """Whether a cell says yes. Raises `InvalidField`."""
    said = answer(text)
    if said not in ("yes", "no"):
        raise InvalidField(field, text, tr("write yes or no"))
    return said == "yes"


def read_day_gone(text: str, today: date | None, field: str) -> date:
    """A day that is not to come. Raises `InvalidField`, or `UnsureField`."""
    day = read_day(text, today, field)
    if today is not None and day > today:
        raise InvalidField(field, day, tr("that day is still to come"))
    return day


HOW_DAYS = tr_noop("write a day as 2026-03-31")
NO_SUCH_DAY = tr_noop("there is no such day")


def read_day(text: str, today: date | None, field: str) -> date:
    """A day in one of the usual forms, `field` the column. Raises `InvalidField`, `UnsureField`.

    Of two days it may be, one that is over is likelier; a use-by date is likelier still to come.
    """
    plain = _TIME.sub("", text)
    found = _ISO_DAY.fullmatch(plain)
    if found:
        return _day(text, int(found["year"]), int(found["month"]), int(found["day"]), field=field)
    found = _DAY_IN_NUMBERS.fullmatch(plain)
    if found:
        return _day_in_numbers(text, found, today, field)
    found = _DAY_BY_NAME.fullmatch(plain)
    if found and folded(found["month"]) in _months():
        return _day_by_name(text, found, field)
    if re.fullmatch(r"[0-9]{5}", plain) and _SERIALS[0] <= int(plain) < _SERIALS[1]:
        day = _COUNTED_FROM + timedelta(days=int(plain))
        raise UnsureField(
            field, text, tr("a spreadsheet means {day} by it", day=day), day.isoformat()
        )
    raise InvalidField(field, text, HOW_DAYS)


def _day(text: str, year: int, month: int, day: int, *, field: str) -> date:
    try:
        return date(year, month, day)
    except ValueError:
        raise InvalidField(field, text, NO_SUCH_DAY) from None


def _day_by_name(text: str, found: re.Match[str], field: str) -> date:
    year, month = int(found["year"]), _months()[folded(found["month"])]
    number = found["day"] or found["after"]
    if number is None:
        likely = date(year, month, 1).isoformat()
        raise UnsureField(field, text, tr("which day? {how}", how=tr(HOW_DAYS)), likely)
    return _day(text, year, month, int(number), field=field)


def _day_in_numbers(text: str, found: re.Match[str], today: date | None, field: str) -> date:
    short = len(found["year"]) == 2
    year = int(found["year"]) + (2000 if short else 0)
    days = list(_both_ways(year, int(found["first"]), int(found["second"])))
    if found["mark"] == ".":  # nobody writes the month first with full stops
        days = list(_both_ways(year, int(found["first"]), int(found["second"])))[:1]
        days = [each for each in days if each.day == int(found["first"])]
    if not days:
        raise InvalidField(field, text, NO_SUCH_DAY)
    if len(days) == 1 and not short:
        return days[0]
    likely = [each for each in days if today is None or (each <= today) != (field == "use_by")]
    said = tr(" or ").join(each.isoformat() for each in days)
    raise UnsureField(field, text, tr("write {said}", said=said), (likely or days)[0].isoformat())


def _both_ways(year: int, first: int, second: int) -> Iterator[date]:
    """The days that two numbers can be, the one with the day first before the other."""
    seen: set[date] = set()
    for month, day in ((second, first), (first, second)):
        try:
            made = date(year, month, day)
        except ValueError:
            continue
        if made not in seen:
            seen.add(made)
            yield made
