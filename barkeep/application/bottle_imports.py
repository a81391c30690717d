"""Many bottles from one file in one transaction."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, field, replace
from datetime import date, datetime, time
from typing import TYPE_CHECKING

from barkeep.application.done import Done
from barkeep.application.session import Session
from barkeep.application.shelving import (
    bottle_there,
    checked_draft,
    count_one,
    product_there,
    put_last,
)
from barkeep.domain.bottles.bottle import Label, Product
from barkeep.domain.ingredients.tree import FamilyTree
from barkeep.errors import InvalidField, Problem, TwoIngredients, UnusableFile, UserError
from barkeep.store import bottles as bottle_rows
from barkeep.store.unit_of_work import UnitOfWork

if TYPE_CHECKING:
    from barkeep.documents.bottles_csv import ListedBottle


@dataclass(frozen=True, slots=True)
class Imported:
    """What came in with a file: products that were new, and bottles."""

    products: int
    bottles: int


@dataclass
class _Import:
    """A file while it is taken in; `made` holds the row each new product came in with."""

    work: UnitOfWork
    tree: FamilyTree
    made: dict[int, ListedBottle] = field(default_factory=dict)


def import_rows(session: Session, rows: Sequence[ListedBottle], file: str = "") -> Done[Imported]:
    """Take in all rows or none. Raises `UnusableFile` with every row that cannot be used."""
    problems: list[Problem] = []
    label = f"Import {len(rows)} bottle{'s' * (len(rows) != 1)}"
    with session.writing(label) as work:
        taken = _Import(work, session.tree)
        for row in rows:
            try:
                _take_in(taken, row)
            except UserError as error:
                problems.append(_located(error, row))
        if problems:
            raise UnusableFile(file or "the file", tuple(problems))
    return session.finished(work, lambda _bar: Imported(len(taken.made), len(rows)))


def _located(error: UserError, row: ListedBottle) -> Problem:
    """A problem at the field that the error is about, at the row's first where it names none."""
    name = error.field if isinstance(error, InvalidField) else None
    name = "ingredient" if isinstance(error, TwoIngredients) else name
    return Problem(row.line, row.columns.get(name or "", 1), str(error))


def _take_in(taken: _Import, row: ListedBottle) -> None:
    """Receive one bottle, open and count it."""
    work = taken.work
    draft = checked_draft(row.draft, taken.tree)
    product = _product_for(taken, draft, row)
    bottle_id = put_last(work, product, replace(row.facts, received=work.at.date()))
    work.append(bottle_id, "receive", draft.size)
    if row.opened is not None:
        work.append(bottle_id, "open", at=_opened_at(row.opened, work.at))
    if row.level is not None:
        count_one(work, bottle_there(work, bottle_id), row.level)


def _product_for(taken: _Import, draft: Label, row: ListedBottle) -> Product:
    """The product, which the bar has, an earlier row brought, or this one brings."""
    known = bottle_rows.product_named(taken.work.connection, draft)
    if known is None:
        (product_id,) = taken.work.insert("product", [draft])
        taken.made[product_id] = row
        return product_there(taken.work, product_id)
    if known.ingredient != draft.ingredient:
        here, there = map(taken.tree.in_sentence, (draft.ingredient, known.ingredient))
        earlier = taken.made.get(known.id)
        if earlier:
            raise TwoIngredients(here, there, earlier.line)
        raise InvalidField("ingredient", here, f"the bar has {known.title} as {there}")
    return known


def _opened_at(day: date, now: datetime) -> datetime:
    if day > now.date():
        raise InvalidField("opened", day, "that day is still to come")
    return min(datetime.combine(day, time(12)), now)
