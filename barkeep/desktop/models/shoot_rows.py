"""How the Shoots list shows a shoot, and what the page of one says."""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from dataclasses import dataclass
from datetime import datetime
from functools import cached_property

from barkeep.desktop.models.row_table import Column
from barkeep.desktop.widgets.roles import ICONS_ROLE, SUBTITLE_ROLE
from barkeep.domain.answers.making import ToMake
from barkeep.domain.answers.mise_en_place import MiseEnPlace, mise_en_place
from barkeep.domain.answers.shoot_plan import ShootPlan, as_of, plan, shortfall
from barkeep.domain.level_words import in_doubt, quantity
from barkeep.domain.shoots import (
    STATES,
    LoggedBottle,
    ServeCounts,
    Shoot,
    ShootDrink,
    ShootState,
    find_shoots,
    orders_of,
    spec_of,
    still_chosen,
)
from barkeep.domain.snapshot import Snapshot
from barkeep.errors import spoken_list

STATE_WORDS: Mapping[ShootState, str] = {
    "idea": "Idea",
    "planned": "Planned",
    "filmed": "Filmed",
    "logged": "Logged",
}
STATE_PICTURES: Mapping[ShootState, str] = {
    "idea": "info",
    "planned": "calendar",
    "filmed": "shoots",
    "logged": "check",
}


@dataclass(frozen=True)
class ShootAnswer:
    """Everything asked about one shoot: the menu against the levels, and what to have ready."""

    shoot: Shoot
    snapshot: Snapshot
    plan: ShootPlan
    mise: MiseEnPlace

    @cached_property
    def starts(self) -> datetime | None:
        """When it begins, None where no hour was said."""
        begins = self.shoot.starts
        return None if begins is None else datetime.combine(self.shoot.on, begins)


def answer_for(shoot: Shoot, snapshot: Snapshot) -> ShootAnswer:
    """Ask everything about one shoot."""
    then = as_of(shoot, snapshot)
    ready = mise_en_place(orders_of(shoot, then), then, on=then.on)
    return ShootAnswer(shoot, snapshot, plan(shoot, snapshot), ready)


def shoot_columns() -> tuple[Column[Shoot], ...]:
    """Theme with its drinks, day, state."""
    return (
        Column(
            "Theme",
            lambda row: row.theme,
            roles={SUBTITLE_ROLE: drinks_in_brief},
            tooltip=lambda row: f"{row.theme}\n{drinks_in_brief(row)}",
        ),
        Column("Day", lambda row: row.on.isoformat(), key=lambda row: (row.on, row.id or 0)),
        Column(
            "State",
            lambda row: STATE_WORDS[row.state],
            key=lambda row: STATES.index(row.state),
            roles={ICONS_ROLE: lambda row: (STATE_PICTURES[row.state],)},
        ),
    )


def drinks_in_brief(shoot: Shoot) -> str:
    """The names of its drinks."""
    return ", ".join(shoot.names) if shoot.drinks else "No drink yet"


def found_by(shoot: Shoot, words: str, snapshot: Snapshot) -> bool:
    """Whether a search finds it: by theme, drink, notes, day, state or bottle."""
    titles = {each.id: each.product.title for each in snapshot.bottles}
    return bool(find_shoots((shoot,), words, titles))


def when_in_words(shoot: Shoot) -> str:
    """The day, the hour and the state."""
    at = f", {shoot.starts:%H:%M}" if shoot.starts else ""
    day = f"{shoot.on:%A} {shoot.on.day} {shoot.on:%B %Y}{at}"
    return f"{day} · {STATE_WORDS[shoot.state]}"


def serves_in_words(serves: ServeCounts) -> str:
    """How many serves, and what for.

    >>> serves_in_words(ServeCounts(1, 2, 0))
    '3 serves: 1 test, 2 on camera'
    """
    parts = (
        (serves.tests, "test" if serves.tests == 1 else "tests"),
        (serves.camera, "on camera"),
        (serves.tasting, "to taste"),
    )
    said = ", ".join(f"{count} {word}" for count, word in parts if count)
    total = "1 serve" if serves.total == 1 else f"{serves.total} serves"
    return f"{total}: {said}" if said else "no serves"


def chosen_in_words(drink: ShootDrink, snapshot: Snapshot) -> Iterator[tuple[int, str]]:
    """Each line that is poured otherwise than its spec says: its place, and a sentence."""
    spec, tree = spec_of(drink, snapshot), snapshot.knowledge.tree
    titles = {each.id: each.product.title for each in snapshot.bottles}
    for chosen in still_chosen(drink, spec).chosen if spec else ():
        if spec is None or chosen.ingredient not in tree:
            continue
        wanted = spec.lines[chosen.line].ingredient
        poured = titles.get(chosen.bottle_id or 0) or tree.in_sentence(chosen.ingredient)
        ratio = "" if abs(chosen.ratio - 1.0) < 1e-9 else f", {chosen.ratio:.3g} times as much"
        if chosen.ingredient == wanted or tree.is_a(chosen.ingredient, wanted):
            yield chosen.line, f"{tree.name(wanted)}: {poured}"
        else:
            yield chosen.line, f"{poured} in place of {tree.in_sentence(wanted)}{ratio}"


def shortfalls(answer: ShootAnswer) -> tuple[str, ...]:
    """What runs out, a sentence a line."""
    return tuple(shortfall(each, answer.snapshot) for each in answer.plan.menu.lacking)


def drops(answer: ShootAnswer) -> str:
    """Which serves to leave out so that the rest can be poured; empty where none need be."""
    menu = answer.plan.menu
    dropped = [
        f"{count} of {order.spec.name}"
        for order, count in zip(menu.orders, menu.drop, strict=True)
        if count
    ]
    return f"Or leave out {spoken_list(dropped, 'and')}." if dropped else ""


def draws(answer: ShootAnswer) -> tuple[str, ...]:
    """What is taken from each bottle."""
    return tuple(
        f"{each.bottle.product.title}: {quantity(each.amount, each.bottle.product.unit)}"
        for each in answer.plan.menu.draws
    )


def things_to_make(answer: ShootAnswer) -> tuple[ToMake, ...]:
    """What the mise en place has made or squeezed, and so may come on the shelf with a date."""
    found = (*answer.mise.make, *answer.mise.squeeze)
    return tuple(each for each in found if each.work in ("make", "squeeze"))


def past_dates(answer: ShootAnswer) -> tuple[str, ...]:
    """Bottles that will be past their date by then."""
    return tuple(
        f"{each.product.title} is past its date ({each.use_by}) by then and is not counted on."
        for each in answer.plan.past
    )


def logged_in_words(each: LoggedBottle) -> str:
    """What the log says of one bottle, in its own unit."""
    unit = each.unit
    said = f"Poured {quantity(each.poured, unit)}"
    if each.spilled:
        said += f", spilled {quantity(each.spilled, unit)}"
    said += f"; expected {quantity(each.expected, unit)}"
    if each.counted is None or each.variance is None:
        return f"{said}, accepted"
    missing = each.variance
    doubt = in_doubt(each.sigma, unit)
    apart = f"{quantity(abs(missing), unit)} {'less' if missing >= 0 else 'more'}"
    within = f" ({doubt})" if doubt else ""
    return f"{said}, counted {quantity(each.counted, unit)}: {apart}{within}"
