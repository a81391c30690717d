"""Glasses, tins and jugs: what specs call them, and whether a drink fits.

All volumes are typical ones, *common practice* (`resources/glasses.toml`).
A drink is best poured to a glass's wash line; to the brim it can be carried
nowhere. The wash line of a tin or a mixing glass is its load: the most liquid,
before ice, that still shakes or stirs well.
"""

from __future__ import annotations

import re
from collections.abc import Iterator, Mapping
from dataclasses import dataclass, replace
from functools import cache
from math import ceil, isfinite
from typing import Annotated, Literal, get_args

from barkeep.domain.amounts.measures import show_volume
from barkeep.domain.phrases import folded
from barkeep.errors import AmountError, KnowledgeError, NegativeAmount
from barkeep.shipped_data import (
    Limits,
    Positive,
    Text,
    Texts,
    by_key,
    parse,
    read_field,
    table_in,
    table_of,
)
from barkeep.translation import tr, tr_noop

FILE = "glasses.toml"
SLIGHT_ML = 0.5
"""Less than this too much is no reason to speak: volumes are shown in whole ml."""


GlassKind = Literal["glass", "tin", "mixing_glass", "jug"]
KINDS: tuple[GlassKind, ...] = get_args(GlassKind)


_STATES_LIST = """
    a an the chilled cold frozen frosted iced warm warmed hot heated preheated clean empty salted
    sugared rimmed salt sugar your favourite favorite nice
"""
_STATES = frozenset(_STATES_LIST.split())
"""Words in front of a glass's name that leave it the same glass (*common practice*)."""
_TOO_MUCH: Mapping[GlassKind, str] = {
    "tin": tr_noop(
        "{a_round} round is too much to shake in a {vessel}: up to {most} "
        "before ice shakes well. Make it in {goes} goes."
    ),
    "mixing_glass": tr_noop(
        "{a_round} round is too much to stir in a {vessel}: up to {most} "
        "before ice stirs well. Make it in {goes} goes."
    ),
}
_ALTERNATIVES = re.compile(r"\bor\b|[/,;()]")


@dataclass(frozen=True, slots=True)
class Glass:
    """A glass, or what drinks are made or served in. `name` stands after *a*."""

    key: str
    name: Text
    brim_ml: Positive
    wash_line_ml: Positive
    kind: GlassKind
    basis: Text
    aliases: Texts = ()


@dataclass(frozen=True, slots=True)
class Ice:
    """A kind of ice; `share` of a glass to its brim is taken by it as usually served."""

    key: str
    name: Text
    share: Annotated[float, Limits(ge=0.0, le=1.0)]
    names: Texts = ()

    def volume_ml(self, glass: Glass) -> float:
        """The room it takes in a glass."""
        return self.share * glass.brim_ml


@dataclass(frozen=True, slots=True)
class Fit:
    """Whether a drink fits, up to the wash line and to the brim.

    `why` says what is wrong in one or two sentences; it is empty where the drink
    fits up to the wash line.
    """

    to_wash_line: bool
    to_brim: bool
    why: str = ""


@dataclass(frozen=True, slots=True)
class Glassware:
    """Glasses and kinds of ice by key, in the order of their file."""

    glasses: Mapping[str, Glass]
    ices: Mapping[str, Ice]
    by_name: Mapping[str, Glass]


def glass_named(text: str) -> Glass | None:
    """The glass a spec's words name, None where they name none that is known.

    Of several (*coupe or flute*) the first that is known.

    >>> glass_named("chilled Martini glasses").name
    'cocktail glass'
    """
    by_name = shipped_glassware().by_name
    for choice in _ALTERNATIVES.split(_plain(text)):
        for name in _readings(choice.split()):
            if name in by_name:
                return by_name[name]
    return None


def glass_in_words(text: str) -> str:
    """A spec's glass as a person reads it.

    One of barkeep's own names is said in the language that is spoken; in English, and where
    the writer's words say more, they stay as they are.
    """
    by_name, plain = shipped_glassware().by_name, _plain(text)
    known = by_name.get(plain) or by_name.get(f"{plain} glass")
    if known is None:
        return text
    said = tr(known.name)
    return text if said == known.name else said


ICE_WORDS = (
    tr_noop("cubes"),
    tr_noop("crushed"),
    tr_noop("one large cube"),
    tr_noop("one large piece"),
    tr_noop("none"),
)
"""What the book's drinks say of their ice."""


def ice_in_words(text: str) -> str:
    """A spec's ice as a person reads it: the book's words are translated, any others stay."""
    return tr(text) if text in ICE_WORDS else text


def glass_as_written(text: str) -> Glass | None:
    """As `glass_named`, called what its writer calls it, without what only says its state.

    >>> glass_as_written("chilled Nick & Nora glasses").name
    'Nick & Nora glass'
    >>> glass_as_written("Martini").name
    'Martini glass'
    """
    for choice in _ALTERNATIVES.split(text):
        glass = glass_named(choice)
        if glass is not None:
            return replace(glass, name=_written(choice.split(), glass))
    return None


def _written(words: list[str], glass: Glass) -> str:
    """The writer's words for one such glass, which stand after *a* as its own name does."""
    while len(words) > 1 and folded(words[0]) in _STATES:
        words = words[1:]
    name = " ".join(words).rstrip(".")
    for form in (name.removesuffix("es"), name.removesuffix("s")):
        if glass_named(form) is not None:
            name = form
            break
    says_so = folded(name).endswith(("glass", "glasses"))
    return name if says_so or not glass.name.endswith("glass") else f"{name} glass"


def ice_named(text: str) -> Ice | None:
    """The kind of ice a spec's words name, None where they name none that is known.

    >>> ice_named("one large cube").key
    'large'
    """
    words = f" {_plain(text)} "
    for ice in shipped_glassware().ices.values():
        if any(f" {name} " in words for name in ice.names):
            return ice
    return None


def fits(served_ml: float, glass: Glass, ice_ml: float = 0.0, doubt_ml: float = 0.0) -> Fit:
    """Whether so much drink, and the room its ice takes, fits a glass.

    `served_ml` is what is poured in, dilution counted; `ice_ml` the ice that is
    in the glass besides, none for a blended drink. For a tin or a mixing glass
    `served_ml` is what goes in before ice, for which their load leaves room
    already. `doubt_ml` is how surely the volume is known: less than that too
    much is no reason to speak. Raises `AmountError` or `NegativeAmount`.
    """
    for value in (served_ml, ice_ml, doubt_ml):
        _refuse_nonsense(value)
    slack_ml = max(SLIGHT_ML, doubt_ml)
    to_brim = _holds(glass.brim_ml, served_ml + ice_ml, slack_ml)
    if glass.kind in _TOO_MUCH:
        why = _too_much_to_work(served_ml, glass, slack_ml, to_brim)
    else:
        why = _too_much_to_serve(
            served_ml, glass=glass, ice_ml=ice_ml, slack_ml=slack_ml, to_brim=to_brim
        )
    return Fit(to_wash_line=not why, to_brim=to_brim, why=why)


def _holds(room_ml: float, volume_ml: float, slack_ml: float) -> bool:
    return volume_ml <= room_ml + slack_ml


def _too_much_to_work(served_ml: float, glass: Glass, slack_ml: float, to_brim: bool) -> str:
    """Why a tin or a mixing glass cannot take a round, and in how many goes it can."""
    if not _holds(glass.wash_line_ml, served_ml, slack_ml):
        return tr(
            _TOO_MUCH[glass.kind],
            a_round=_a_volume(served_ml),
            vessel=glass.name,
            most=show_volume(glass.wash_line_ml),
            goes=ceil(served_ml / glass.wash_line_ml),
        )
    if to_brim:
        return ""
    return tr("A {vessel} has no room for so much ice. Use less.", vessel=glass.name)


def _too_much_to_serve(
    served_ml: float, *, glass: Glass, ice_ml: float, slack_ml: float, to_brim: bool
) -> str:
    """Why a drink or a batch is too much for what it is served in, and what would help."""
    if _holds(glass.wash_line_ml, served_ml + ice_ml, slack_ml):
        return ""
    volume, batch = _a_volume(served_ml), glass.kind == "jug"
    drink = tr("{volume} batch", volume=volume) if batch else tr("{volume} drink", volume=volume)
    if ice_ml > 0.0:
        drink = tr("{drink} with {volume} of ice", drink=drink, volume=show_volume(ice_ml))
    if to_brim:
        return tr(
            "{drink} fills a {vessel} past its wash line of {wash_line}.",
            drink=drink,
            vessel=glass.name,
            wash_line=show_volume(glass.wash_line_ml),
        )
    why = tr(
        "{drink} does not fit a {vessel} of {volume}.",
        drink=drink,
        vessel=glass.name,
        volume=show_volume(glass.brim_ml),
    )
    less_ice = ice_ml > 0.0 and _holds(glass.wash_line_ml, served_ml, slack_ml)
    return tr("{why} Use less ice, or a larger glass.", why=why) if less_ice else why


def _a_volume(volume_ml: float) -> str:
    """A volume with its article: *A 210 ml*, but *An 80 ml*."""
    shown = show_volume(volume_ml)
    number = shown.split()[0]
    vowel = number.startswith("8") or number in ("11", "18")
    return tr("An {volume}", volume=shown) if vowel else tr("A {volume}", volume=shown)


def _refuse_nonsense(value_ml: float) -> None:
    if not isfinite(value_ml):
        raise AmountError(f"{value_ml:g} ml", tr_noop("what is poured is a number of ml"))
    if value_ml < 0.0:
        raise NegativeAmount(f"{value_ml:g} ml")


def _plain(text: str) -> str:
    return " ".join(folded(text).replace("&", " and ").replace(".", " ").split())


def _readings(words: list[str]) -> Iterator[str]:
    """A name as written, then without the words in front of it that change nothing.

    Each with and without *glass* at its end, in the plural and the singular.
    """
    for start in range(len(words)):
        if any(word not in _STATES for word in words[:start]):
            return
        name = " ".join(words[start:])
        for form in (name, name.removesuffix("s"), name.removesuffix("es")):
            yield form
            yield f"{form} glass"
            yield form.removesuffix(" glass")


@cache
def shipped_glassware() -> Glassware:
    """What barkeep brings along. Raises `KnowledgeError` for a broken resource."""
    return table_of(FILE, read_glassware, Glassware)


def read_glassware(text: str, file: str = FILE) -> Glassware:
    """Glasses and ice out of a TOML text. Raises `KnowledgeError`."""
    document = parse(text, file, "basis", "glass", "ice")
    basis = read_field(document, name="basis", kind=Text, file=file, place="the text")
    glasses = by_key(table_in(document, "glass", file), Glass, file, "glass", basis=basis)
    ices = by_key(table_in(document, "ice", file), Ice, file, "ice")
    for glass in glasses.values():
        if glass.wash_line_ml > glass.brim_ml:
            reason = f"“wash_line_ml” is {glass.wash_line_ml:g}; it must be at most "
            raise KnowledgeError(file, f"glass.{glass.key}", f"{reason}{glass.brim_ml:g}")
    return Glassware(
        glasses, {key: _plainly(ice) for key, ice in ices.items()}, _by_name(glasses, file)
    )


def _plainly(ice: Ice) -> Ice:
    return replace(ice, names=tuple(_plain(each) for each in ice.names))


def _by_name(glasses: Mapping[str, Glass], file: str) -> Mapping[str, Glass]:
    found: dict[str, Glass] = {}
    for glass in glasses.values():
        for name in (glass.name, *glass.aliases):
            other = found.setdefault(_plain(name), glass)
            if other != glass:
                reason = f"the name “{name}” belongs to {other.key} already"
                raise KnowledgeError(file, f"glass.{glass.key}", reason)
    return found
