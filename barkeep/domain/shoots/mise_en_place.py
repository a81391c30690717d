"""What to have ready before a shoot: squeeze, make, chill, cut, set out, and when to begin each.

Worked from the specs and their serves, less what stands in the bar and keeps
until then. Margins and the order of work are *common practice*; yields and
rests are the recipes' own.
"""

from __future__ import annotations

import math
import re
from collections.abc import Callable, Collection, Iterator, Mapping, Sequence
from dataclasses import dataclass, replace
from datetime import date, datetime, timedelta

from barkeep.domain.amounts.rounding import whole_up
from barkeep.domain.bar.snapshot import Snapshot
from barkeep.domain.bottles.bottle import Bottle
from barkeep.domain.days import day_of_week, day_said
from barkeep.domain.drink.ice import is_carbonated
from barkeep.domain.ingredients.fruit import PEELS
from barkeep.domain.ingredients.relations import Technique
from barkeep.domain.ingredients.tree import FamilyTree, inside_sentence
from barkeep.domain.phrases import capitalised, counted, folded
from barkeep.domain.pouring.supply import Supply, supply_of
from barkeep.domain.pouring.words import amount_of
from barkeep.domain.shoots.garnish_needs import (
    GarnishNeed,
    GarnishSource,
    garnish_needs,
    source_of,
)
from barkeep.domain.shoots.ice import IceNeed, ice_for, ice_in_words
from barkeep.domain.shoots.making_ahead import (
    CUT_MINUTES,
    DAY_MINUTES,
    MARGIN,
    SQUEEZE_MINUTES,
    ToMake,
    to_make,
)
from barkeep.domain.shoots.menu import Order, wanted_by
from barkeep.domain.shoots.whole_pieces import WholePieces, whole_pieces
from barkeep.domain.specs.called import kinds_named_by
from barkeep.domain.specs.glasses import glass_as_written, glass_named
from barkeep.domain.specs.shown_lines import names_in_sentence
from barkeep.errors import spoken_list
from barkeep.translation import tr, tr_noop

CHILL_MINUTES = 120
PEEL_MINUTES = SQUEEZE_MINUTES + 5
"""What is peeled is peeled right before it is squeezed."""


JIGGER, STRAINER, BLENDER = tr_noop("jigger"), tr_noop("strainer"), tr_noop("blender")
KETTLE, JUG = tr_noop("kettle or pan"), tr_noop("heatproof jug")
GRATER, PEELER, WHISK = tr_noop("grater"), tr_noop("peeler"), tr_noop("whisk or frother")
_TOOLS: Mapping[Technique, tuple[str, ...]] = {
    "shaken": (tr_noop("shaker tins"), STRAINER, JIGGER),
    "stirred": (tr_noop("mixing glass"), tr_noop("bar spoon"), STRAINER, JIGGER),
    "built": (tr_noop("bar spoon"), JIGGER),
    "blended": (BLENDER, JIGGER),
    "thrown": (tr_noop("two tins"), STRAINER, JIGGER),
    "swizzled": (tr_noop("swizzle stick"), JIGGER),
    "hot": (KETTLE, JUG, JIGGER),
}
_NAMED_TOOLS: tuple[tuple[str, re.Pattern[str]], ...] = (
    (tr_noop("fine strainer"), re.compile(r"\b(?:double|fine)[ -]?strain", re.IGNORECASE)),
    (tr_noop("muddler"), re.compile(r"\bmuddl", re.IGNORECASE)),
    (GRATER, re.compile(r"\bgrat(?:e|ed|ing)\b", re.IGNORECASE)),
    (PEELER, re.compile(r"\b(?:peel|twist|zest)\b", re.IGNORECASE)),
    (WHISK, re.compile(r"\b(?:whisk(?:ed|ing)?|froth)\b", re.IGNORECASE)),
)
_RINSED = frozenset({JIGGER, PEELER, GRATER, BLENDER, KETTLE, JUG, WHISK})
"""One will do; of the others each drink gets a clean one (*common practice*)."""
_COUNT_WORDS = (
    "",
    "",
    tr_noop("two"),
    tr_noop("three"),
    tr_noop("four"),
    tr_noop("five"),
    tr_noop("six"),
    tr_noop("seven"),
)


@dataclass(frozen=True, slots=True)
class ToSetOut:
    """A thing to set out, and how many; a garnish with the key of its ingredient.

    A glass is called what its specs call it, its `kind` what it is called else,
    by which its tick is kept. The key is empty of a garnish in words; `garnish`
    is what the drinks want of it.
    """

    name: str
    count: int
    ingredient: str = ""
    kind: str = ""
    garnish: GarnishNeed | None = None


@dataclass(frozen=True, slots=True)
class Step:
    """One thing to do, to be begun `minutes_before` the start.

    The same need has the same `key` each time it is asked, so that what was
    ticked off stays so.
    """

    key: str
    minutes_before: int
    text: str

    @property
    def when(self) -> str:
        """How long before the start, in words.

        >>> [Step("", minutes, "").when for minutes in (15, 60, 1500, 4000)]
        ['just before', 'an hour before', 'the day before', 'three days before']
        """
        return _when(self.minutes_before)

    def at(self, starts: datetime) -> datetime:
        """The moment to begin it."""
        return starts - timedelta(minutes=self.minutes_before)

    def said_when(
        self, starts: datetime | None = None, said: Callable[[date], str] = day_said
    ) -> str:
        """When to begin, with day and clock time where it is known when the shoot starts."""
        if starts is None:
            return capitalised(self.when)
        at = self.at(starts)
        return tr(
            "{weekday} {day}, {time}",
            weekday=day_of_week(at),
            day=said(at.date()),
            time=f"{at:%H:%M}",
        )


@dataclass(frozen=True, slots=True)
class MiseEnPlace:
    """Everything to have ready, and the steps in the order they must be begun.

    `chill` has what is to be cold by name, as a sentence says it. `past` are
    bottles the drinks would take that are past their date on the day.
    """

    make: tuple[ToMake, ...]
    squeeze: tuple[ToMake, ...]
    ice: tuple[IceNeed, ...]
    glassware: tuple[ToSetOut, ...]
    tools: tuple[ToSetOut, ...]
    garnishes: tuple[ToSetOut, ...]
    chill: Mapping[str, str]
    past: tuple[Bottle, ...]
    pieces: tuple[WholePieces, ...]
    steps: tuple[Step, ...]


def mise_en_place(
    orders: Sequence[Order],
    snapshot: Snapshot,
    margin: float = MARGIN,
    on: date | None = None,
) -> MiseEnPlace:
    """What to have ready for these orders on a day, that of the snapshot where none is given.

    Nothing that is past its date by then is counted on.
    """
    then = snapshot if on is None or on == snapshot.on else snapshot.changed(on=on)
    wanted = tuple(order for order in orders if order.serves > 0)
    lines = (line for order in wanted for line in order.spec.lines)
    tree = kinds_named_by(lines, then.knowledge.tree)
    made = to_make(wanted, then, margin)
    parts = MiseEnPlace(
        make=tuple(each for each in made if not each.squeezed),
        squeeze=tuple(each for each in made if each.squeezed),
        ice=ice_for(wanted),
        glassware=tuple(_glassware(wanted)),
        tools=tuple(_tools(wanted)),
        garnishes=tuple(_garnishes(wanted, tree)),
        chill=_chill(wanted, then.knowledge.tree),
        past=_past(wanted, made, then),
        pieces=whole_pieces(wanted, {each.ingredient for each in made if not each.into}, tree),
        steps=(),
    )
    steps = [
        *_questions(wanted),
        *_discard(parts, made, then),
        *_making(made, tree),
        *(
            Step(_key("pieces", each.ingredient), CUT_MINUTES, each.said(tree))
            for each in parts.pieces
        ),
        *_setting(parts, then),
    ]
    return replace(parts, steps=tuple(sorted(steps, key=lambda each: -each.minutes_before)))


def _glassware(orders: Sequence[Order]) -> Iterator[ToSetOut]:
    counts: dict[str, int] = {}
    names: dict[str, dict[str, str]] = {}
    for order in orders:
        glass, written = glass_named(order.spec.glass), glass_as_written(order.spec.glass)
        kind = glass.name if glass else order.spec.glass
        if kind:
            counts[kind] = counts.get(kind, 0) + order.serves
            name = written.name if written else kind
            names.setdefault(kind, {}).setdefault(folded(name).removesuffix(" glass"), name)
    for kind, count in counts.items():
        yield ToSetOut(tr(" or ").join(map(tr, names[kind].values())), count, kind=kind)


def _tools(orders: Sequence[Order]) -> Iterator[ToSetOut]:
    counts: dict[str, int] = {}
    for order in orders:
        words = f"{order.spec.method} {' '.join(line.text for line in order.spec.lines)}"
        named = [tool for tool, sign in _NAMED_TOOLS if sign.search(words)]
        for tool in dict.fromkeys((*_TOOLS.get(order.spec.technique, ("jigger",)), *named)):
            counts[tool] = 1 if tool in _RINSED else counts.get(tool, 0) + 1
    yield from (ToSetOut(tr(name), count) for name, count in counts.items())


def _garnishes(orders: Sequence[Order], tree: FamilyTree) -> Iterator[ToSetOut]:
    counts: dict[str, ToSetOut] = {}
    for each in garnish_needs(orders, tree):
        key = each.wanted[0] if each.wanted else ""
        known = counts.get(each.name, ToSetOut(each.name, 0, key, garnish=each))
        need = replace(each, count=known.count + each.count)
        counts[each.name] = replace(known, count=need.count, garnish=need)
    yield from counts.values()


def _chill(orders: Sequence[Order], tree: FamilyTree) -> dict[str, str]:
    wanted: dict[str, dict[str, None]] = {}
    for order in orders:
        glass, written = glass_named(order.spec.glass), glass_as_written(order.spec.glass)
        says_so = "chill" in folded(f"{order.spec.glass} {order.spec.method}")
        if glass is not None and written is not None and says_so:
            said = _the_glasses(written.name)
            wanted.setdefault(_plural(glass.name), {})[said] = None
        for line in order.spec.required_lines:
            if is_carbonated(line.ingredient, tree):
                # By the kind's own name, so that a tick outlives other words for it.
                kind = tree[line.ingredient]
                name, said = inside_sentence(kind, kind.name), names_in_sentence(line, tree)
                wanted.setdefault(name, {})[said] = None
    return {name: spoken_list([*said], "and") for name, said in wanted.items()}


def _plural(name: str) -> str:
    return f"{name}es" if name.endswith("s") else f"{name}s"


def _the_glasses(name: str) -> str:
    if name.endswith("s"):
        return tr("the {glass}es", glass=tr(name))
    return tr("the {glass}s", glass=tr(name))


def _past(
    orders: Sequence[Order], made: Sequence[ToMake], snapshot: Snapshot
) -> tuple[Bottle, ...]:
    """The bottles past their date of what the drinks take or what is made for them."""
    making = {each.ingredient for each in made}
    taken = {key for each in made for key, _amount, _unit in each.inputs}
    return snapshot.past_of(wanted_by(orders) | making | taken)


def _questions(orders: Sequence[Order]) -> Iterator[Step]:
    """What nobody has understood is counted nowhere: whoever films must see to it."""
    for order in orders:
        for each in order.spec.unsettled:
            text = tr(
                "See to {line} of {drink} yourself: it is not understood, "
                "and nothing of it is counted.",
                line=each.named,
                drink=order.spec.name,
            )
            key = _key("question", f"{order.spec.name} {each.text}")
            yield Step(key, DAY_MINUTES, text)


def _discard(parts: MiseEnPlace, made: Sequence[ToMake], then: Snapshot) -> Iterator[Step]:
    tree = then.knowledge.tree
    for bottle in parts.past:
        anew = [each for each in made if tree.is_a(bottle.ingredient, each.ingredient)]
        begun = max((each.minutes_before for each in anew), default=0)
        title, until = bottle.product.title, then.last_day_in_words(bottle)
        what = tr("Check it, or leave it out")
        if bottle.product.house_made:
            what = tr("Throw it away and make it anew") if anew else tr("Throw it away")
        text = tr(
            "Do not count on {title}: its date is {until}. {what}.",
            title=title,
            until=until,
            what=what,
        )
        yield Step(f"discard:{bottle.id}", max(begun, DAY_MINUTES), text)


def _making(made: Sequence[ToMake], tree: FamilyTree) -> Iterator[Step]:
    for each in made:
        spare, share = round(100.0 * each.spare), ""
        if not each.is_all:
            share = tr(" (what is there gives no more; the rest is bought)")
        elif spare > 0:
            share = tr(" ({spare} % more than the drinks take)", spare=spare)
        use = tr(", to go into {drink}", drink=tree.in_sentence(each.into)) if each.into else ""
        rest = (
            tr(" Leave {hours} for it to rest.", hours=_hours(each.rest_hours))
            if each.rest_hours
            else ""
        )
        done = f"{_told_to(each, tree)}{share}{use}"
        text = f"{done}. {tr(each.how)}{rest}"
        yield Step(each.key, each.minutes_before, text)


def _setting(parts: MiseEnPlace, snapshot: Snapshot) -> Iterator[Step]:
    for form, text in ice_in_words(parts.ice):
        yield Step(f"ice:{form}", DAY_MINUTES, text)
    for name, said in parts.chill.items():
        yield Step(_key("chill", name), CHILL_MINUTES, tr("Chill {said}.", said=said))
    supply = supply_of(snapshot)
    squeezed = {key for each in parts.squeeze for key, _amount, _unit in each.inputs}
    for garnish in parts.garnishes:
        yield _garnish_step(garnish, squeezed, snapshot, supply)
    for glass in parts.glassware:
        text = tr("Set out {count} × {name}.", count=glass.count, name=glass.name)
        yield Step(_key("glass", glass.kind), CUT_MINUTES, text)
    if parts.tools:
        tools = spoken_list([f"{each.count} × {each.name}" for each in parts.tools], "and")
        yield Step("tools", CUT_MINUTES, tr("Set out {tools}.", tools=tools))


def _garnish_step(
    garnish: ToSetOut, squeezed: Collection[str], snapshot: Snapshot, supply: Supply
) -> Step:
    """One garnish, cut before its fruit is squeezed where only the peel is taken."""
    key, minutes = _key("garnish", garnish.name), CUT_MINUTES
    source = None if garnish.garnish is None else source_of(garnish.garnish, snapshot, supply)
    if source is None:
        text = tr(
            "See to “{name}” yourself, for {drinks}: no ingredient is called so.",
            name=garnish.name,
            drinks=counted(garnish.count, "drink"),
        )
        return Step(key, minutes, text)
    tree, fruit = snapshot.knowledge.tree, source.fruit
    many = f"{garnish.count} × {garnish.name}"
    if fruit is None:
        return Step(key, minutes, _garnish_there(garnish, source, tree))
    text = tr(
        "Cut {many} from {pieces:g} × {fruit}",
        many=many,
        pieces=whole_up(fruit.amount),
        fruit=tree.in_sentence(fruit.ingredient),
    )
    if source.ingredient in PEELS and fruit.ingredient in squeezed:
        return Step(key, PEEL_MINUTES, tr("{text}, before it is squeezed.", text=text))
    return Step(key, minutes, f"{text}.")


def _garnish_there(garnish: ToSetOut, source: GarnishSource, tree: FamilyTree) -> str:
    """What stands there, or has to be got: barkeep knows no other way to it."""
    many = f"{garnish.count} × {garnish.name}"
    if garnish.garnish is not None and garnish.garnish.on_the_rim:
        named = tree.in_sentence(source.ingredient)
        lacking = "" if source.have else tr(": no {named} is there, so get some", named=named)
        rims = counted(garnish.count, "glass", "glasses")
        return tr(
            "Set out a saucer of {named} to rim {rims}{lacking}.",
            named=named,
            rims=rims,
            lacking=lacking,
        )
    if source.have >= source.amount:
        return tr("Have {many} ready.", many=many)
    there = tr("none is there") if not source.have else tr("only {have:g} there", have=source.have)
    return tr("Get {many}: {there}.", many=many, there=there)


def _told_to(made: ToMake, tree: FamilyTree) -> str:
    """What to do: *Squeeze 90 ml of lime juice from 3 limes*."""
    parts = [amount_of(key, _rounded(amount), tree) for key, amount, _unit in made.inputs]
    inputs = spoken_list(parts, "and")
    much = amount_of(made.ingredient, _rounded(made.amount), tree)
    match made.task:
        case "make":
            return tr("Make {much} from {inputs}", much=much, inputs=inputs)
        case "squeeze":
            return tr("Squeeze {much} from {inputs}", much=much, inputs=inputs)
        case "separate":
            return tr("Separate {much} from {inputs}", much=much, inputs=inputs)
        case "cut":
            return tr("Cut {much} from {inputs}", much=much, inputs=inputs)


def _rounded(amount: float) -> float:
    """To what a kitchen can measure: whole from ten up, tenths below."""
    return float(round(amount)) if amount >= 10.0 else max(0.1, round(amount, 1))


def _hours(hours: float) -> str:
    if hours < 1.0:
        return tr("{minutes:.0f} minutes", minutes=hours * 60.0)
    return tr("an hour") if hours == 1.0 else tr("{hours:g} hours", hours=hours)


def _key(kind: str, name: str) -> str:
    plain = re.sub(r"\W+", "-", folded(name)).strip("-")
    return f"{kind}:{plain}"


def _when(minutes: int) -> str:
    if minutes < CUT_MINUTES:
        return tr("just before")
    if minutes <= 45:
        return tr("half an hour before")
    if minutes <= 90:
        return tr("an hour before")
    if minutes <= 150:
        return tr("two hours before")
    days = round(minutes / DAY_MINUTES)
    if minutes < DAY_MINUTES:
        return tr("{hours} hours before", hours=math.ceil(minutes / 60))
    if days <= 1:
        return tr("the day before")
    many = tr(_COUNT_WORDS[days]) if days < len(_COUNT_WORDS) else days
    return tr("{days} days before", days=many)
