"""The ice of a shoot: in cubes, crushed and large, by what each of it is for.

Every figure is *common practice*: a tin two thirds full and a mixing glass
three quarters full of cubes, fresh for every serve; a glass filled to its brim;
a large cube a serve; and a quarter more for what melts in the bucket. It comes
to 0.3 to 0.6 kg a drink on ice, the half kilogram that caterers reckon (*from
memory*). What a drink needs to be chilled is far less: 120 g in Arnold's
measurements (*Liquid Intelligence*, 2014, p. 123), of which a part melts.
"""

from __future__ import annotations

import math
import re
from collections.abc import Iterable, Iterator, Mapping, Sequence
from dataclasses import dataclass, replace
from typing import Literal

from barkeep.domain.amounts.rounding import whole_up
from barkeep.domain.drink.ice import meets_ice
from barkeep.domain.ingredients.relations import Technique
from barkeep.domain.shoots.menu import Order
from barkeep.domain.specs.glasses import Glass, Ice, glass_named, ice_named
from barkeep.domain.specs.spec import Spec
from barkeep.errors import spoken_list
from barkeep.translation import tr, tr_noop

IceForm = Literal["cubes", "crushed", "large"]

BASIS = tr_noop("common practice")
SPARE = 0.25
"""What melts and breaks before it is used, a share of what the drinks take."""
WORKED_WITH: Mapping[Technique, tuple[IceForm, str, float]] = {
    "shaken": ("cubes", tr_noop("to shake with"), 250.0),
    "stirred": ("cubes", tr_noop("to stir with"), 200.0),
    "thrown": ("cubes", tr_noop("to throw with"), 250.0),
    "swizzled": ("crushed", tr_noop("to swizzle with"), 250.0),
    "blended": ("crushed", tr_noop("to blend with"), 150.0),
}
"""The ice a serve is worked with, in grams: its form, what for, how much."""
A_SCOOP_G = 120.0
"""Of crushed ice in a tin: it chills faster than cubes, and more would drown the drink."""
G_PER_ML: Mapping[IceForm, float] = {"cubes": 0.5, "crushed": 0.6}
"""What a millilitre of a glass filled to its brim holds, the air between the pieces counted."""
LARGE: tuple[tuple[re.Pattern[str], str, float], ...] = (
    (re.compile(r"\b(?:spheres?|balls?)\b"), tr_noop("spheres of 6 cm"), 104.0),
    (re.compile(r"\bspears?\b"), tr_noop("spears of 3.5 × 12 cm"), 135.0),
    (re.compile(""), tr_noop("large cubes of 5 cm"), 115.0),
)
"""What is counted in pieces: words that ask for it, its name, and the grams of one."""

IN_THE_GLASS = tr_noop("for the glass")

_CLAUSES = re.compile(r"[.;,\n]|\band\b|\bthen\b")
_ON_ICE = r"(?P<ice>(?:[\w-]+\s+){0,3}?(?:ice|cubes?|rocks))\b"
_OVER_ICE = re.compile(
    rf"(?<!not )(?<!never )\b(?:over|onto|on|fill\w*\s+with)\s+{_ON_ICE}", re.IGNORECASE
)
_WITH_ICE = re.compile(rf"(?<!not )(?<!never )\b(?:with|over|on)\s+{_ON_ICE}", re.IGNORECASE)
_WORKING = re.compile(r"\b(?:shak|stir|throw|roll|whip)\w*", re.IGNORECASE)


@dataclass(frozen=True, slots=True)
class IceNeed:
    """Ice of one form for one use, in grams, with what is to spare.

    `pieces` counts what is large, and is 0 for the rest; `thing` is what it is called.
    """

    form: IceForm
    use: str
    thing: str
    grams: float
    pieces: int = 0

    @property
    def kind(self) -> str:
        """What it is and what for.

        >>> IceNeed("cubes", "to shake with", "cubes", 300.0).kind
        'cubes to shake with'
        """
        return f"{tr(self.thing)} {tr(self.use)}"

    @property
    def shown(self) -> str:
        """How much: pieces where they are counted, else kilograms, never less than it takes."""
        return f"{self.pieces} ×" if self.pieces else _kg(self.grams)


def ice_for(orders: Sequence[Order]) -> tuple[IceNeed, ...]:
    """What all orders take, with what is to spare; cubes first, then crushed, then large."""
    found: dict[tuple[str, str], IceNeed] = {}
    for order in (each for each in orders if each.serves > 0):
        for each in _taken(order):
            before = found.get((each.thing, each.use))
            found[each.thing, each.use] = each if before is None else _with(before, each)
    forms: tuple[IceForm, ...] = ("cubes", "crushed", "large")
    in_order = sorted(
        found.values(), key=lambda each: (forms.index(each.form), each.use == IN_THE_GLASS)
    )
    return tuple(map(_with_spare, in_order))


def ice_in_words(needs: Iterable[IceNeed]) -> Iterator[tuple[str, str]]:
    """What to freeze or buy, a sentence a form, each with the form it is ticked off by."""
    needs = tuple(needs)
    for form in dict.fromkeys(each.form for each in needs):
        some = [each for each in needs if each.form == form]
        yield form, _pieces_in_words(some) if form == "large" else _weight_in_words(form, some)


def _weight_in_words(form: IceForm, some: Sequence[IceNeed]) -> str:
    what = tr("ice in cubes") if form == "cubes" else tr("crushed ice")
    total = _kg(sum(_tenths_up(each.grams) for each in some) * 100.0)
    parts = spoken_list([f"{each.shown} {tr(each.use)}" for each in some], "and")
    uses = f" {tr(some[0].use)}" if len(some) == 1 else tr(": {parts}", parts=parts)
    return tr(
        "Freeze or buy {total} of {what}{uses}, a quarter to spare for what melts ({basis}).",
        total=total,
        what=what,
        uses=uses,
        basis=tr(BASIS),
    )


def _pieces_in_words(some: Sequence[IceNeed]) -> str:
    parts = [f"{each.pieces} × {tr(each.thing)} ({_kg(each.grams)})" for each in some]
    return tr(
        "Freeze or buy {parts} for the glass: one a serve, and some to spare ({basis}).",
        parts=spoken_list(parts, "and"),
        basis=tr(BASIS),
    )


def _taken(order: Order) -> Iterator[IceNeed]:
    """The ice of one order, nothing to spare."""
    glass, served = glass_named(order.spec.glass), _served_ice(order.spec)
    in_the_glass = glass is not None and served is not None and served.share > 0.0
    if glass is not None and served is not None and in_the_glass:
        yield _in_glasses(order, glass, served)
    # A swizzle is worked on the ice it is served on.
    if not (order.spec.technique == "swizzled" and in_the_glass):
        yield from _worked_with(order)


def _in_glasses(order: Order, glass: Glass, served: Ice) -> IceNeed:
    glasses = order.serves / order.spec.serves if glass.kind == "jug" else order.serves
    form = _form(served)
    if form == "large":
        return _large(f"{order.spec.ice} {order.spec.method}", int(whole_up(glasses)), IN_THE_GLASS)
    grams = glass.brim_ml * G_PER_ML[form] * glasses
    return IceNeed(form, IN_THE_GLASS, _thing(form), grams)


def _worked_with(order: Order) -> Iterator[IceNeed]:
    spec = order.spec
    usual = WORKED_WITH.get(spec.technique)
    if usual is None or not meets_ice(spec, spec.technique):
        return
    form, use, grams = usual
    named = _working_ice(spec)
    if named is not None and form == "cubes" and _form(named) == "crushed":
        form, grams = "crushed", A_SCOOP_G
    yield IceNeed(form, use, _thing(form), grams * order.serves)


def _large(words: str, count: int, use: str) -> IceNeed:
    asked = words.casefold()
    thing, each_g = next((name, grams) for sign, name, grams in LARGE if sign.search(asked))
    return IceNeed("large", use, thing, each_g * count, pieces=count)


def _form(ice: Ice) -> IceForm:
    return ice.key if ice.key in ("crushed", "large") else "cubes"  # type: ignore[return-value]


def _thing(form: IceForm) -> str:
    return tr_noop("crushed ice") if form == "crushed" else tr_noop("cubes")


def _with(one: IceNeed, other: IceNeed) -> IceNeed:
    return replace(one, grams=one.grams + other.grams, pieces=one.pieces + other.pieces)


def _with_spare(need: IceNeed) -> IceNeed:
    if not need.pieces:
        return replace(need, grams=need.grams * (1.0 + SPARE))
    pieces = int(whole_up(need.pieces * (1.0 + SPARE)))
    return replace(need, grams=need.grams * pieces / need.pieces, pieces=pieces)


def _served_ice(spec: Spec) -> Ice | None:
    """The ice a drink is served on: as its spec names it, else as its method puts it."""
    if spec.ice:
        return ice_named(spec.ice)
    for clause in _CLAUSES.split(spec.method):
        found = _OVER_ICE.search(clause)
        if found and (spec.technique == "built" or not _WORKING.search(clause)):
            return ice_named(found["ice"])
    return None


def _working_ice(spec: Spec) -> Ice | None:
    """The ice its method names where it speaks of shaking or stirring."""
    for clause in _CLAUSES.split(spec.method):
        found = _WITH_ICE.search(clause) if _WORKING.search(clause) else None
        if found:
            return ice_named(found["ice"])
    return None


def _tenths_up(grams: float) -> int:
    return max(1, math.ceil(grams / 100.0 - 1e-9))


def _kg(grams: float) -> str:
    return f"{_tenths_up(grams) / 10.0:.1f} kg"
