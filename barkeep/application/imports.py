"""Many bottles from one file in one transaction."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from datetime import date, datetime, time
from typing import TYPE_CHECKING, Protocol

from barkeep.application.bottle_checks import bottle_there, count_one
from barkeep.application.done import Done
from barkeep.application.product_checks import checked_draft
from barkeep.application.session import Session
from barkeep.domain.drafts import ProductDraft
from barkeep.errors import InvalidField, Problem, UnusableFile, UserError
from barkeep.store import bottles as bottle_rows
from barkeep.store import products as product_rows
from barkeep.store.unit_of_work import UnitOfWork

if TYPE_CHECKING:
    from barkeep.domain.measures import MeasuredLevel


class BottleRow(Protocol):
    """One row of a file of bottles: a bottle of the product `draft` describes."""

    @property
    def line(self) -> int:
        """Where it stands in the file, from 1."""

    @property
    def draft(self) -> ProductDraft:
        """The product; one of its title and size that the bar has is taken as it is."""

    @property
    def level(self) -> MeasuredLevel | None:
        """What is left, None for a full bottle."""

    @property
    def opened(self) -> date | None:
        """When the seal was broken, None where that is not known."""


@dataclass(frozen=True, slots=True)
class Imported:
    """What came in with a file: products that were new, and bottles."""

    products: int
    bottles: int


def import_rows(session: Session, rows: Sequence[BottleRow], file: str = "") -> Done[Imported]:
    """Take in all rows or none. Raises `UnusableFile` with every row that cannot be used."""
    problems: list[Problem] = []
    new_products = 0
    label = f"Import {len(rows)} bottle{'s' * (len(rows) != 1)}"
    with session.writing(label) as work:
        for row in rows:
            try:
                new_products += _take_in(work, session, row)
            except UserError as error:
                problems.append(Problem(row.line, 1, str(error)))
        if problems:
            raise UnusableFile(file or "the file", tuple(problems))
    return session.finished(work, lambda _bar: Imported(new_products, len(rows)))


def _take_in(work: UnitOfWork, session: Session, row: BottleRow) -> bool:
    """Receive one bottle, open and count it; whether its product was new."""
    draft = checked_draft(row.draft, session.tree)
    product_id, is_new = _product_for(work, draft)
    place = bottle_rows.last_position(work.connection) + 1
    today = work.at.date()
    (bottle_id,) = work.insert(
        "bottle", [bottle_rows.bottle_row(product_id, place, today, None, None)]
    )
    work.append(bottle_id, "receive", draft.size)
    if row.opened is not None:
        work.append(bottle_id, "open", at=_opened_at(row.opened, work.at))
    if row.level is not None:
        count_one(work, bottle_there(work, bottle_id), row.level)
    return is_new


def _product_for(work: UnitOfWork, draft: ProductDraft) -> tuple[int, bool]:
    known = product_rows.product_named(work.connection, draft)
    if known is None:
        (product_id,) = work.insert("product", [product_rows.product_row(draft)])
        return product_id, True
    if known.ingredient != draft.ingredient:
        expected = f"the bar has {known.title} as {known.ingredient}"
        raise InvalidField("ingredient", draft.ingredient, expected)
    return known.id, False


def _opened_at(day: date, now: datetime) -> datetime:
    if day > now.date():
        raise InvalidField("opened", day, "that day is still to come")
    return min(datetime.combine(day, time(12)), now)
