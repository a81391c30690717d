"""What drinks are worth to a buying plan: by a query, by how they scored, for a shoot alone."""

from __future__ import annotations

from collections.abc import Mapping, Sequence

from barkeep.domain.bar.shoots import Shoot
from barkeep.domain.bar.snapshot import Snapshot
from barkeep.domain.drink.search import search
from barkeep.domain.specs.trials import Scale, mean_scores

TOP_SCORE_WORTH = 2.0
"""A drink that scored as high as can be is worth so much, half way up 1, as one never tried."""


def worths_of(
    snapshot: Snapshot,
    *,
    times: Sequence[tuple[str, float]] = (),
    by_score: bool = False,
    shoot: Shoot | None = None,
) -> Mapping[str, float]:
    """What each drink is worth, by name; empty where all are worth the same.

    What a query of `times` finds counts so many times (0: not at all), several after another.
    With `by_score` a drink counts by its mean score, from 0 to twice. With a `shoot` only its
    drinks count. Raises `BadQuery`.
    """
    if not (times or by_score or shoot):
        return {}
    worths = {each.name: 1.0 for each in snapshot.all_specs}
    if shoot is not None:
        filmed = drinks_of(shoot, snapshot)
        worths = {name: 1.0 if name in filmed else 0.0 for name in worths}
    for query, factor in times:
        for each in search(snapshot, query):
            worths[each.name] *= factor
    for name, share in (_score_shares(snapshot) if by_score else {}).items():
        if name in worths:
            worths[name] *= TOP_SCORE_WORTH * share
    return worths


def drinks_of(shoot: Shoot, snapshot: Snapshot) -> frozenset[str]:
    """The names of a shoot's specs, as the book has them."""
    ids = {each.spec_id for each in shoot.drinks if each.spec_id is not None}
    names = {each.name for each in shoot.drinks if each.spec_id is None}
    return frozenset(
        each.name for each in snapshot.all_specs if each.id in ids or each.name in names
    )


def _score_shares(snapshot: Snapshot) -> Mapping[str, float]:
    """How far up its scales each spec that ever scored did in the mean, 0 to 1."""
    scales = {each.name: each for each in snapshot.settings.scales}
    found = {}
    for spec in snapshot.specs:
        means = mean_scores(each for each in snapshot.trials if each.spec_id == spec.id)
        shares = [_share(value, scales[name]) for name, value in means.items() if name in scales]
        if shares:
            found[spec.name] = sum(shares) / len(shares)
    return found


def _share(value: float, scale: Scale) -> float:
    if scale.high == scale.low:
        return 0.5
    return min(1.0, max(0.0, (value - scale.low) / (scale.high - scale.low)))
