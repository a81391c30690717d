"""Shoots: planned, ticked off, filmed, logged; and their drinks and choices as they are written.

Each use case is one transaction and one undo.
"""

from __future__ import annotations

import re
from collections.abc import Callable, Iterable, Mapping, Sequence
from dataclasses import replace
from datetime import date, datetime
from functools import partial

from barkeep.application.done import Done
from barkeep.application.finding import find_bottle, find_drink, find_spec, there
from barkeep.application.pouring import line_named, poured_instead
from barkeep.application.session import UseCases
from barkeep.application.shelving import bottle_there, count_one, taken_from
from barkeep.application.stale import (
    RemovedSince,
    drinks_in_words,
    refuse_stale,
    shoot_in_words,
)
from barkeep.domain.amounts.measures import quantity_in
from barkeep.domain.bar.shoots import (
    MOST_SHOOT_SERVES,
    STATES,
    LoggedBottle,
    ServeCounts,
    Shoot,
    ShootDrink,
    ShootLog,
    ShootState,
    as_written,
    choose,
    repeated,
    still_chosen,
)
from barkeep.domain.bar.snapshot import Snapshot
from barkeep.domain.bottles.containers import container_of
from barkeep.domain.bottles.levels import MeasuredLevel, parse_level
from barkeep.domain.phrases import folded
from barkeep.domain.shoots.drinks import spec_of
from barkeep.domain.shoots.log import (
    ExpectedBottle,
    LogSheet,
    expected_after,
    logged_bottle,
    refuse_pours_beyond,
    refuse_spills_beyond,
)
from barkeep.domain.shoots.running_order import Addition, moved, with_added
from barkeep.domain.specs.spec import Spec
from barkeep.errors import InvalidField, UnknownName, UserError
from barkeep.store import shoots as shoot_rows
from barkeep.store.unit_of_work import UnitOfWork
from barkeep.translation import tr


class AlreadyLogged(UserError):
    """A second log of one shoot."""

    theme: str
    at: datetime
    says = (
        "{theme} was logged on {at:%Y-%m-%d at %H:%M} already; nothing is written. "
        "Undo that log first, or count the bottles by themselves."
    )


class NotFilmedYet(UserError):
    """A log of a shoot that lies ahead."""

    theme: str
    on: date
    shoot_id: int | None = None
    says = "{theme} is on {on}, which is still to come; there is nothing to log."


class FilmedAhead(UserError):
    """A shoot that is said to be filmed, on a day that is still to come."""

    theme: str
    on: date
    shoot_id: int | None = None
    says = (
        "{theme} is on {on}, which is still to come, so it cannot be filmed yet; "
        "nothing is changed. Where it was filmed earlier, give it that day first."
    )


class SpecGone(UserError):
    """A log of a shoot with a drink whose spec was removed: what it poured is not known."""

    theme: str
    drink: str
    says = (
        "The spec of {drink} was removed, so what {theme} poured of it is not "
        "known: undo that, put its serves at 0, or take it out of the shoot."
    )


class KeepsItsDrinks(UserError):
    """Drinks for a shoot that is logged: what was poured is written already."""

    theme: str
    says = "{theme} is logged and keeps the drinks it was logged with; nothing is added."


class Shoots(UseCases):
    """The use cases of `bar.shoots`."""

    def add(self, shoot: Shoot) -> Done[Shoot]:
        """Write a shoot down.

        Raises `InvalidField`; `UnknownName` for a drink without a spec; `FilmedAhead`.
        """
        with self._session.writing() as work:
            checked = self._checked(shoot)
            self._refuse_filmed_ahead(checked)
            work.label = f"Add shoot {checked.theme}"
            (shoot_id,) = work.insert("shoot", [checked])
        return self._session.finished(work, lambda bar: bar.shoot_by_id[shoot_id])

    def replace(self, shoot: Shoot, seen: Shoot | None = None) -> Done[Shoot]:
        """Make the shoot of this id what is given; its log stays as it is.

        Raises as `add` does. A drink may stay that was there before, whatever
        became of its spec. Raises `ChangedSince` or `RemovedSince` where the
        shoot is not as it was `seen`.
        """

        def changed(now: Shoot) -> Shoot:
            words = partial(shoot_in_words, tree=self._session.tree)
            mine = replace(shoot, log=now.log)
            what = tr("the shoot {theme}", theme=now.theme)
            refuse_stale(what, seen=seen, now=now, mine=mine, words=words)
            return mine

        if seen is not None and self._is_gone(shoot.id):
            raise RemovedSince(tr("the shoot {theme}", theme=seen.theme))
        return self._rewrite(shoot.id, changed)

    def add_drinks(self, shoot_id: int, specs: Sequence[Spec]) -> Done[Addition]:
        """Put specs at the end of a shoot's running order; those there already keep their place.

        Nothing is written where all are there. Raises `UnknownName` and `KeepsItsDrinks`.
        """
        planned = with_added(self._shoot(shoot_id), specs)
        if not planned.added:
            return Done(planned, frozenset(), "")
        found: list[Addition] = []

        def changed(now: Shoot) -> Shoot:
            found.append(with_added(now, specs))
            return found[-1].shoot

        if planned.shoot.log is not None:
            raise KeepsItsDrinks(planned.shoot.theme)
        many = len(planned.added)
        names = f"{many} drinks" if many > 1 else planned.added[0]
        done = self._rewrite(shoot_id, changed, f"Add {names} to shoot {planned.shoot.theme}")
        return Done(replace(found[-1], shoot=done.value), done.changes, done.label, done.step)

    def _is_gone(self, shoot_id: int | None) -> bool:
        with self._session.store.reading() as connection:
            return shoot_rows.read_shoot(connection, shoot_id or 0) is None

    def _rewrite(
        self, of: int | None, changed: Callable[[Shoot], Shoot], label: str = ""
    ) -> Done[Shoot]:
        """Make a shoot what `changed` makes of it as it is within the transaction."""
        with self._session.writing() as work:
            before, shoot_id = _there(work, of)
            shoot = changed(before)
            kept = frozenset(each.name for each in before.drinks)
            checked = replace(self._checked(shoot, kept), log=before.log)
            if before.log and len(checked.drinks) != len(before.drinks):
                raise InvalidField(
                    "drinks", "", tr("a logged shoot keeps the drinks it was logged with")
                )
            if before.log and checked.state != "logged":
                raise AlreadyLogged(before.theme, before.log.at)
            if before.log is None and checked.state == "logged":
                raise InvalidField(
                    "state", "logged", tr("log the shoot, which says what was poured")
                )
            self._refuse_filmed_ahead(checked)
            work.label = label or f"Change shoot {checked.theme}"
            work.put("shoot", (shoot_id,), checked)
        return self._session.finished(work, lambda bar: bar.shoot_by_id[shoot_id])

    def remove(self, shoot_id: int, *others: int) -> Done[Shoot]:
        """Take a shoot, or several in one step, away. Raises `UnknownName`.

        What they poured stays in the ledger. Gives the first of them.
        """
        with self._session.writing() as work:
            shoots = {each: _there(work, each)[0] for each in (shoot_id, *others)}
            theme = shoots[shoot_id].theme
            work.label = f"Remove {len(shoots)} shoots" if others else f"Remove shoot {theme}"
            for each in shoots:
                work.put("shoot", (each,), None)
        return self._session.finished(work, lambda _bar: shoots[shoot_id])

    def repeat(self, shoot_id: int, on: date | None = None) -> Done[Shoot]:
        """Plan the same shoot once more, on a day (today by default). Raises `UnknownName`."""
        return self.add(repeated(self._shoot(shoot_id), on or self._session.clock().date()))

    def move(self, shoot_id: int, state: ShootState) -> Done[Shoot]:
        """Say that a shoot is an idea, planned or filmed. Raises as `replace` does."""
        return self._rewrite(shoot_id, lambda now: replace(now, state=state))

    def film_today(self, shoot_id: int) -> Done[Shoot]:
        """Say that a shoot was filmed, and today, whatever day it was planned for."""
        today = self._session.snapshot.on
        return self._rewrite(shoot_id, lambda now: replace(now, state="filmed", on=today))

    def tick(self, shoot_id: int, key: str, done: bool = True) -> Done[Shoot]:
        """Tick off one step of the mise en place, or take the tick back."""
        with self._session.writing() as work:
            shoot, _ = _there(work, shoot_id)
            ticked = shoot.ticked | {key} if done else shoot.ticked - {key}
            work.label = f"{'Tick' if done else 'Untick'} a step of {shoot.theme}"
            work.put("shoot", (shoot_id,), replace(shoot, ticked=ticked))
        return self._session.finished(work, lambda bar: bar.shoot_by_id[shoot_id])

    def log(
        self,
        shoot_id: int,
        sheet: LogSheet,
        *,
        what_there_is: bool = True,
        seen: Shoot | None = None,
    ) -> Done[Shoot]:
        """Write what a shoot poured, spilled and left, for all its bottles or for none.

        Of serves that take more than there is, what there is is poured; without
        `what_there_is` they raise `PouredBeyond`, so that the user may be asked.
        Raises `SpilledBeyond`, `AlreadyLogged`, `NotFilmedYet`, `SpecGone`,
        `InvalidField` for serves that make no sense, `ChangedSince` where the
        drinks are not those that were `seen`, and what a pour or a count of a
        bottle raises.
        """
        drinks = partial(drinks_in_words, tree=self._session.tree)
        with self._session.writing() as work:
            shoot, _ = _there(work, shoot_id)
            mine = seen or shoot
            what = tr("the drinks of {theme}", theme=shoot.theme)
            refuse_stale(what, seen=seen, now=shoot, mine=mine, words=drinks)
            snapshot = self._session.snapshot
            _refuse_log(shoot, sheet, snapshot)
            work.label = f"Log shoot {shoot.theme}"
            filmed = replace(shoot, state="filmed")
            expected = expected_after(filmed, snapshot, sheet)
            _refuse_strangers(expected, sheet)
            refuse_spills_beyond(expected)
            if not what_there_is:
                refuse_pours_beyond(filmed, snapshot, sheet.made)
            bottles = tuple(_log_bottle(work, shoot, each, sheet) for each in expected)
            log = ShootLog(work.at, tuple(sheet.made), bottles)
            work.put("shoot", (shoot_id,), replace(shoot, state="logged", log=log))
        return self._session.finished(work, lambda bar: bar.shoot_by_id[shoot_id])

    def _shoot(self, shoot_id: int) -> Shoot:
        return there("shoot", self._session.snapshot.shoot_by_id.get(shoot_id), shoot_id)

    def _refuse_filmed_ahead(self, shoot: Shoot) -> None:
        if shoot.state == "filmed" and shoot.on > self._session.snapshot.on:
            raise FilmedAhead(shoot.theme, shoot.on, shoot.id)

    def _checked(self, shoot: Shoot, kept: frozenset[str] = frozenset()) -> Shoot:
        theme = " ".join(shoot.theme.split())
        if not theme:
            raise InvalidField("theme", shoot.theme, tr("a shoot has a theme"))
        if shoot.state not in STATES:
            raise InvalidField("state", shoot.state, f"it is one of {', '.join(STATES)}")
        drinks = tuple(self._checked_drink(each, kept) for each in shoot.drinks)
        _refuse_repeats(drinks)
        return replace(shoot, theme=theme, notes=shoot.notes.strip(), drinks=drinks)

    def _checked_drink(self, drink: ShootDrink, kept: frozenset[str]) -> ShootDrink:
        counts = drink.serves
        for what in ("tests", "camera", "tasting"):
            count = getattr(counts, what)
            if not 0 <= count <= MOST_SHOOT_SERVES:
                raise InvalidField(
                    what,
                    count,
                    tr(
                        "a whole number from 0 to {most}",
                        most=MOST_SHOOT_SERVES,
                    ),
                )
        spec = spec_of(drink, self._session.snapshot)
        if spec is None:
            if drink.name in kept:
                return drink
            raise UnknownName("spec", drink.name)
        for chosen in drink.chosen:
            if chosen.ratio <= 0.0:
                raise InvalidField("ratio", chosen.ratio, tr("it is more than nothing"))
            if chosen.ingredient not in self._session.tree:
                raise UnknownName("ingredient", chosen.ingredient)
        return still_chosen(replace(drink, name=spec.name), spec)


def _refuse_repeats(drinks: Sequence[ShootDrink]) -> None:
    names = [folded(each.name) for each in drinks]
    for each, name in zip(drinks, names, strict=True):
        if names.count(name) > 1:
            raise InvalidField("drinks", each.name, tr("each stands in the running order once"))


def _refuse_log(shoot: Shoot, sheet: LogSheet, snapshot: Snapshot) -> None:
    if shoot.log is not None:
        raise AlreadyLogged(shoot.theme, shoot.log.at)
    if shoot.on > snapshot.on:
        raise NotFilmedYet(shoot.theme, shoot.on, shoot.id)
    if len(sheet.made) != len(shoot.drinks):
        raise InvalidField("serves made", len(sheet.made), f"one for each of {len(shoot.drinks)}")
    for drink, made in zip(shoot.drinks, sheet.made, strict=True):
        if not 0 <= made <= 3 * MOST_SHOOT_SERVES:
            raise InvalidField(
                tr("serves of {name}", name=drink.name), made, tr("a whole number, 0 or more")
            )
        if made and spec_of(drink, snapshot) is None:
            raise SpecGone(shoot.theme, drink.name)


def _refuse_strangers(expected: Sequence[ExpectedBottle], sheet: LogSheet) -> None:
    known = {each.bottle.id for each in expected}
    for bottle_id in (*sheet.spilled, *sheet.counted):
        if bottle_id not in known:
            raise UnknownName("bottle", f"#{bottle_id}")


def _log_bottle(
    work: UnitOfWork, shoot: Shoot, each: ExpectedBottle, sheet: LogSheet
) -> LoggedBottle:
    bottle = each.bottle
    if each.poured:
        amount = taken_from(bottle_there(work, bottle.id), each.poured)
        work.append(bottle.id, "pour", amount, note=shoot.theme)
    if each.spilled:
        amount = taken_from(bottle_there(work, bottle.id), each.spilled)
        work.append(bottle.id, "waste", amount, note=f"{shoot.theme}: spilled")
    before, counted = bottle_there(work, bottle.id), sheet.counted.get(bottle.id)
    if counted is not None:
        count_one(work, before, counted)
    return logged_bottle(before, poured=each.poured, spilled=each.spilled, counted=counted)


def _there(work: UnitOfWork, shoot_id: int | None) -> tuple[Shoot, int]:
    found = None if shoot_id is None else shoot_rows.read_shoot(work.connection, shoot_id)
    if found is None or shoot_id is None:
        raise UnknownName("shoot", f"#{shoot_id}")
    return found, shoot_id


HOW_SERVES = "write tests + camera + tasting, such as 1+1+2"
HOW_USED = "write the drink, a colon, what its line asks for, = and what to pour instead"
HOW_ONE = "write a name, = and how much or how many"


_SERVES = re.compile(r"\s*(\d{1,4})\s*\+\s*(\d{1,4})\s*\+\s*(\d{1,4})\s*", re.ASCII)


def with_drink(shoot: Shoot, text: str, snapshot: Snapshot) -> Shoot:
    """The shoot with a drink and its serves, written *NAME* or *NAME=1+1+2*.

    A drink that is there keeps its place and its choices; another comes last.
    Raises `InvalidField`, and for the name what `find_spec` raises.
    """
    name, equals, written = text.rpartition("=")
    spec = find_spec(snapshot, name.strip() if equals else text)
    serves = _serves(text, written) if equals else None
    drinks = list(shoot.drinks)
    for place, each in enumerate(drinks):
        if spec_of(each, snapshot) is spec:
            drinks[place] = replace(each, serves=serves or each.serves)
            return replace(shoot, drinks=tuple(drinks))
    added = ShootDrink(spec.id, spec.name, serves or ServeCounts())
    return replace(shoot, drinks=(*drinks, added))


def without_drink(shoot: Shoot, name: str) -> Shoot:
    """The shoot less one drink. Raises what `find_drink` raises."""
    dropped = find_drink(shoot, name)
    return replace(shoot, drinks=tuple(each for each in shoot.drinks if each is not dropped))


def with_drink_at(shoot: Shoot, text: str) -> Shoot:
    """The shoot with a drink at another place, written *NAME=1* for the first.

    Raises `InvalidField` for a place that is not there, and what `find_drink` raises.
    """
    name, _equals, written = text.rpartition("=")
    last = len(shoot.drinks)
    place = int(written) if re.fullmatch(r"\s*[0-9]{1,6}\s*", written) else 0
    if not name.strip() or not 1 <= place <= last:
        raise InvalidField("--move", text, f"write the drink, = and a place from 1 to {last}")
    drink = find_drink(shoot, name.strip())
    number = [each is drink for each in shoot.drinks].index(True)
    return replace(shoot, drinks=moved(shoot.drinks, number, place - 1))


def with_choice(shoot: Shoot, text: str, snapshot: Snapshot) -> Shoot:
    """The shoot with something else poured for a line: *DRINK: WANTED=STAND-IN or BOTTLE*.

    How much replaces how much comes from the stand-in graph. Raises
    `InvalidField` where the words or the two ingredients do not fit,
    `UnknownName` and `AmbiguousName`.
    """
    drink_name, colon, rest = text.partition(":")
    wanted, equals, instead = rest.partition("=")
    if not (colon and equals and instead.strip()):
        raise InvalidField("--use", text, HOW_USED)
    drink, spec = _drink_and_spec(shoot, drink_name, snapshot)
    chosen = poured_instead(spec, wanted, instead, "--use", snapshot=snapshot)
    return _with(shoot, drink, choose(drink, chosen))


def with_line_as_written(shoot: Shoot, text: str, snapshot: Snapshot) -> Shoot:
    """The shoot with a line poured as its spec says again: *DRINK: WANTED*."""
    drink_name, colon, wanted = text.partition(":")
    if not colon:
        raise InvalidField("--as-written", text, "write the drink, a colon and the ingredient")
    drink, spec = _drink_and_spec(shoot, drink_name, snapshot)
    place = line_named(spec, wanted, "--as-written", snapshot)
    return _with(shoot, drink, as_written(drink, place))


def serves_made(shoot: Shoot, written: Iterable[str]) -> tuple[int, ...]:
    """The serves really made of each drink, those planned where none are written (*NAME=3*)."""
    made = {each.name: each.serves.total for each in shoot.drinks}
    for text in written:
        name, count = _parted(text, "--made")
        if not re.fullmatch(r"[0-9]{1,6}", count):
            raise InvalidField("--made", text, "a whole number of serves, 0 or more")
        made[find_drink(shoot, name).name] = int(count)
    return tuple(made[each.name] for each in shoot.drinks)


def spills(written: Iterable[str], snapshot: Snapshot) -> Mapping[int, float]:
    """What was spilled of each bottle, in its unit (*BOTTLE=30 ml*)."""
    units, found = snapshot.settings.units, dict[int, float]()
    for text in written:
        name, amount = _parted(text, "--spill")
        bottle = find_bottle(snapshot, name, rather_open=True)
        spilled = quantity_in(amount, bottle.product.unit, units)
        found[bottle.id] = found.get(bottle.id, 0.0) + spilled
    return found


def counts(written: Iterable[str], snapshot: Snapshot) -> Mapping[int, MeasuredLevel]:
    """The level each bottle was found with (*BOTTLE=LEVEL*). Raises what `parse_level` raises."""
    found: dict[int, MeasuredLevel] = {}
    for text in written:
        name, level = _parted(text, "--count")
        bottle = find_bottle(snapshot, name, rather_open=True)
        if bottle.id in found:
            raise InvalidField("--count", bottle.product.title, "each bottle is counted once")
        container = container_of(bottle, snapshot.knowledge.tree, snapshot.bottles)
        found[bottle.id] = parse_level(level, container, snapshot.settings.units)
    return found


def _parted(text: str, option: str) -> tuple[str, str]:
    name, equals, rest = text.rpartition("=")
    if not equals or not name.strip() or not rest.strip():
        raise InvalidField(option, text, HOW_ONE)
    return name.strip(), rest.strip()


def _serves(text: str, written: str) -> ServeCounts:
    found = _SERVES.fullmatch(written)
    if found is None:
        raise InvalidField("--drink", text, HOW_SERVES)
    tests, camera, tasting = map(int, found.groups())
    return ServeCounts(tests, camera, tasting)


def _drink_and_spec(shoot: Shoot, name: str, snapshot: Snapshot) -> tuple[ShootDrink, Spec]:
    drink = find_drink(shoot, name.strip())
    spec = spec_of(drink, snapshot)
    if spec is None:
        raise UnknownName("spec", drink.name)
    return drink, spec


def _with(shoot: Shoot, before: ShootDrink, after: ShootDrink) -> Shoot:
    drinks = tuple(after if each is before else each for each in shoot.drinks)
    return replace(shoot, drinks=drinks)
