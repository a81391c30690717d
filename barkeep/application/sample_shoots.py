"""The sample's shoots: planned as its episodes say, logged as its bottles' histories say."""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from dataclasses import dataclass
from datetime import date, datetime, time, timedelta
from math import hypot

from barkeep.documents.sample_toml import Episode
from barkeep.domain.ingredients import folded
from barkeep.domain.inventory import Entry, Product, fold
from barkeep.domain.shoots import LoggedBottle, Shoot, ShootDrink, ShootLog
from barkeep.domain.specs import Spec


@dataclass(frozen=True, slots=True)
class History:
    """A bottle of the sample with its whole ledger."""

    bottle_id: int
    product: Product
    entries: Sequence[Entry]


def sample_shoot(
    episode: Episode, specs: Iterable[Spec], shelf: Iterable[History], built: date
) -> Shoot:
    """The shoot of one episode, as of the day the sample is built."""
    by_name = {folded(spec.name): spec for spec in specs}
    on = built + timedelta(days=episode.on)
    found = [by_name[folded(name)] for name in episode.drinks]
    drinks = tuple(ShootDrink(each.id, each.name, episode.serves) for each in found)
    starts = time.fromisoformat(episode.starts) if episode.starts else None
    log = _log(episode, on, shelf) if episode.state == "logged" else None
    return Shoot(None, episode.name, on, drinks, episode.state, starts, episode.notes, log=log)


def _log(episode: Episode, on: date, shelf: Iterable[History]) -> ShootLog:
    logged = [(each, _of_the_shoot(episode, on, each)) for each in shelf]
    bottles = tuple(_logged(each, own) for each, own in logged if own)
    moments = [entry.at for _each, own in logged for entry in own]
    at = max(moments, default=datetime.combine(on, time(18)))
    made = (episode.serves.total,) * len(episode.drinks)
    return ShootLog(at, made, bottles)


def _of_the_shoot(episode: Episode, on: date, history: History) -> list[Entry]:
    """The entries of that day: what was poured for it, and what was spilled."""
    return [
        each
        for each in history.entries
        if each.at.date() == on
        and (each.note.startswith(f"{episode.name}: ") or each.kind == "waste")
    ]


def _logged(history: History, own: Sequence[Entry]) -> LoggedBottle:
    """The bottle as it was counted next."""
    last = own[-1]
    later = [each for each in history.entries if each.id > last.id]
    before = [each for each in history.entries if each.id <= last.id]
    counted = None
    for each in later:
        if each.kind == "count":
            counted = each
            break
        before.append(each)
    unit = history.product.unit
    level = fold(before, unit)
    return LoggedBottle(
        history.bottle_id,
        history.product.title,
        unit,
        sum(each.amount for each in own if each.kind == "pour"),
        sum(each.amount for each in own if each.kind == "waste"),
        level.amount,
        None if counted is None else counted.amount,
        hypot(level.expected_sigma, (counted.sigma or 0.0) if counted else 0.0),
    )
