"""What the owner chose for this bar."""

from __future__ import annotations

import re
from collections.abc import Sequence
from dataclasses import replace
from math import isfinite

from barkeep.application.done import Done
from barkeep.application.finding import find_ingredient
from barkeep.application.session import Session
from barkeep.domain.amounts import OUNCES, show_range
from barkeep.domain.ingredients import folded
from barkeep.domain.inventory import LEAST_DASH_ML, MOST_DASH_ML
from barkeep.domain.pars import MOST_PAR, Par, with_par
from barkeep.domain.printing import STYLES
from barkeep.domain.snapshot import Settings, Snapshot
from barkeep.domain.trial_words import show_scale
from barkeep.domain.trials import Scale
from barkeep.errors import InvalidField, UnknownName
from barkeep.store.owner_knowledge import read_settings, setting_rows
from barkeep.store.unit_of_work import UnitOfWork

_CURRENCY = re.compile(r"[A-Z]{3}")  # ISO 4217's form; which codes exist changes by the year


class BarSettings:
    """The use cases of `bar.settings`."""

    def __init__(self, session: Session) -> None:
        self._session = session

    def change(self, settings: Settings) -> Done[Settings]:
        """Write the settings that differ. Raises `InvalidField`."""
        checked = self._checked(settings)
        with self._session.writing("Change settings") as work:
            self._write(work, checked)
        return self._session.finished(work, lambda bar: bar.settings)

    def set_par(self, ingredient: str, amount: float | None) -> Done[Settings]:
        """Say the least to have of an ingredient, in its own unit; None or 0 wants none.

        `ingredient` is a key or any name. Raises `UnknownName` or `InvalidField`.
        """
        key = find_ingredient(self._session.tree, ingredient)
        name = self._session.tree.in_sentence(key)
        with self._session.writing() as work:
            before = read_settings(work.connection)
            par = _checked_par(Par(key, amount or 0.0), self._session.snapshot)
            work.label = f"{'Set' if par.amount else 'Remove'} the par of {name}"
            self._write(work, replace(before, pars=with_par(before.pars, par)))
        return self._session.finished(work, lambda bar: bar.settings)

    def _write(self, work: UnitOfWork, settings: Settings) -> None:
        there = setting_rows(read_settings(work.connection))
        for row in setting_rows(settings):
            if row not in there:
                work.put("setting", (row["key"],), row)

    def _checked(self, settings: Settings) -> Settings:
        name = " ".join(settings.name.split())
        if not name:
            raise InvalidField("name", settings.name, "a bar needs a name")
        if not _CURRENCY.fullmatch(settings.currency):
            expected = "it is a code of three capital letters, such as EUR"
            raise InvalidField("currency", settings.currency, expected)
        _refuse_wrong_units(settings)
        _refuse_unknown_country(settings.country)
        scales = _checked_scales(settings.scales)
        tree = self._session.tree
        for key in sorted(settings.not_there):
            if key not in tree or not tree[key].always_there:
                expected = "only what counts as always there can be missing"
                raise InvalidField("not there", key, expected)
        return replace(settings, name=name, scales=scales)


def _checked_par(par: Par, snapshot: Snapshot) -> Par:
    if not isfinite(par.amount) or not 0.0 <= par.amount <= MOST_PAR:
        raise InvalidField("par", par.amount, f"it is 0 to {MOST_PAR:.0f}")
    if par.amount and par.ingredient in snapshot.always_there:
        name = snapshot.knowledge.tree.name(par.ingredient)
        raise InvalidField("par", name, "it counts as always there and is never bought")
    return par


def _refuse_wrong_units(settings: Settings) -> None:
    if settings.ounce not in OUNCES:
        raise InvalidField("ounce", settings.ounce, "it is the US or the imperial ounce")
    if not LEAST_DASH_ML <= settings.dash_ml <= MOST_DASH_ML:
        expected = f"a dash is {show_range(LEAST_DASH_ML, MOST_DASH_ML, 'ml')}"
        raise InvalidField("dash", f"{settings.dash_ml:g} ml", expected)
    if settings.shown_in not in STYLES:
        expected = "it is as written, oz, ml, cl or parts"
        raise InvalidField("shown in", settings.shown_in, expected)


def _checked_scales(scales: Sequence[Scale]) -> tuple[Scale, ...]:
    checked = tuple(replace(each, name=" ".join(each.name.split())) for each in scales)
    if not checked:
        raise InvalidField("scales", "", "trials need at least one to be scored on")
    for place, scale in enumerate(checked):
        earlier = {folded(each.name) for each in checked[:place]}
        if not scale.name:
            raise InvalidField("scales", show_scale(scale).strip(), "a scale needs a name")
        if folded(scale.name) in earlier:
            raise InvalidField("scales", scale.name, "it is there twice")
        if not (isfinite(scale.low) and isfinite(scale.high) and scale.low != scale.high):
            expected = "it runs between two different numbers"
            raise InvalidField("scales", show_scale(scale), expected)
    return checked


def _refuse_unknown_country(country: str) -> None:
    from barkeep.domain.liquids.drinks import standard_drink  # reads a file that few commands do

    try:
        standard_drink(country)
    except UnknownName as error:
        expected = "no standard drink of that country is known"
        if error.nearest:
            expected += f"; the nearest is {error.nearest[0]}"
        raise InvalidField("country", country, expected) from None
