"""Bottles out of a list: looked at beside what the bar has, then taken in, all or none."""

from __future__ import annotations

from collections.abc import Callable, Iterable, Iterator, Mapping, Sequence
from dataclasses import dataclass, field, replace
from datetime import date, datetime, time
from functools import cached_property

from barkeep.application.done import Done
from barkeep.application.paying import follow_newest
from barkeep.application.session import Session
from barkeep.application.shelving import checked_draft, counted_level, level_within
from barkeep.documents.bottle_lines import read_bottle_lines, row_of_kind
from barkeep.documents.bottles_csv import (
    BottlesFile,
    CellProblem,
    ListedBottle,
    ListedRow,
    Terms,
    is_bottles_csv,
    read_bottles_csv,
    repaired,
)
from barkeep.domain.bar.snapshot import Snapshot
from barkeep.domain.bottles.bottle import (
    NEW,
    NOTHING_KNOWN,
    Bottle,
    BottleFacts,
    Entry,
    Label,
    Product,
    new_bottle,
    product_of,
)
from barkeep.domain.bottles.levels import is_guess
from barkeep.domain.bottles.paid import Paid
from barkeep.domain.ingredients.tree import FamilyTree
from barkeep.domain.phrases import folded
from barkeep.errors import (
    InvalidField,
    Problem,
    Stopped,
    TwoIngredients,
    UnusableFile,
    UserError,
)
from barkeep.store import bottles as bottle_rows
from barkeep.store.unit_of_work import UnitOfWork
from barkeep.translation import tr, tr_about, tr_noop

NO_BOTTLE = Problem(1, 1, tr_noop("there is no bottle in it"))
STILL_TO_COME = tr_noop("that day is still to come")
EVERY = 25
"""Bottles between two calls of a progress."""


@dataclass(frozen=True, slots=True)
class SameBottle:
    """A row that looks the same as a bottle that is there already."""

    row: ListedRow
    bottle: Bottle


@dataclass(frozen=True, slots=True)
class BottlePreview:
    """What a list would bring: each of its rows is in one of the three, in the file's order."""

    file: BottlesFile
    new: tuple[ListedRow, ...]
    same: tuple[SameBottle, ...]
    repair: tuple[ListedRow, ...]

    @property
    def problems(self) -> tuple[Problem, ...]:
        """Every problem with its place, those of the header first."""
        return replace(self.file, listed=self.repair).problems

    def without_same(self) -> BottlePreview:
        """The same with every row that looks like a bottle of the bar a new one."""
        new = (*self.new, *(each.row for each in self.same))
        return replace(self, new=tuple(sorted(new, key=lambda each: each.row)), same=())


def terms_of(snapshot: Snapshot) -> Terms:
    """What this bar means by what stands in a list."""
    settings = snapshot.settings
    return Terms(snapshot.knowledge.tree, settings.units, settings.currency, snapshot.on)


def look_at_bottles(
    snapshot: Snapshot, text: str, progress: Callable[[int, int], bool] | None = None
) -> BottlePreview:
    """What a CSV text would bring to the bar. Writes nothing, and needs no store.

    Raises `Stopped` where `progress` says not to go on.
    """
    terms = terms_of(snapshot)
    found = read_bottles_csv(
        text,
        terms.tree,
        terms.units,
        currency=terms.currency,
        today=terms.today,
        reached=_stopping(progress, tr("Reading")),
    )
    return sorted_out(found, found.listed, snapshot)


def look_at_list(
    snapshot: Snapshot, text: str, progress: Callable[[int, int], bool] | None = None
) -> BottlePreview:
    """As `look_at_bottles`, of a text that may be a table with a header or a bottle a line."""
    if is_bottles_csv(text):
        return look_at_bottles(snapshot, text, progress)
    found = read_bottle_lines(text, terms_of(snapshot), _stopping(progress, tr("Reading")))
    return sorted_out(found, found.listed, snapshot)


def bottles_of_kinds(keys: Iterable[str], snapshot: Snapshot) -> tuple[ListedBottle, ...]:
    """A bottle of each kind, of which nothing else is known: its size and level are guessed."""
    terms = terms_of(snapshot)
    rows = (row_of_kind(key, number, terms) for number, key in enumerate(keys, 1))
    return tuple(each.bottle for each in rows if each.bottle is not None)


def guessed_levels(rows: Iterable[ListedBottle]) -> int:
    """Of how many bottles of a list the level is a guess."""
    return sum(
        each.level is not None and is_guess(each.level.sigma, each.draft.size) for each in rows
    )


def sorted_out(file: BottlesFile, rows: Iterable[ListedRow], snapshot: Snapshot) -> BottlePreview:
    """Rows of a file, each looked up in the bar and beside the rows before it."""
    sorting = _Sorting(snapshot)
    for row in rows:
        sorting.take(row)
    return BottlePreview(file, tuple(sorting.new), tuple(sorting.same), tuple(sorting.repair))


def has_ready_answers(row: ListedRow) -> bool:
    """Whether each problem of a row has a likely answer."""
    return bool(row.problems) and all(each.column and each.likely for each in row.problems)


def with_ready_answers(
    rows: Sequence[ListedRow], terms: Terms, progress: Callable[[int, int], bool] | None = None
) -> tuple[ListedRow, ...]:
    """Rows read again with the likely answer in place of each cell that was asked about.

    Raises `Stopped` where `progress` says not to go on.
    """
    reached = _stopping(progress, tr("Reading"))
    found: list[ListedRow] = []
    for number, row in enumerate(rows):
        if number % EVERY == 0:
            reached(number, len(rows))
        answers = {each.column: each.likely for each in row.problems}
        found.append(repaired(row, {**row.cells, **answers}, terms))
    return tuple(found)


def _stopping(
    progress: Callable[[int, int], bool] | None, what: str
) -> Callable[[int, int], object]:
    def reached(done: int, of: int) -> None:
        if progress is not None and not progress(done, of):
            raise Stopped(what)

    return reached


OF_THE_PRODUCT: Mapping[str, str] = {
    tr_noop("strength"): "abv_percent",
    tr_noop("sugar"): "sugar_g_per_l",
    tr_noop("price"): "price",
    tr_noop("acid"): "acid_g_per_l",
    tr_noop("density"): "density_g_per_ml",
    tr_noop("shape"): "shape",
    tr_noop("barcode"): "barcode",
}
"""What a row may say of a product, by its word: the bar's own is kept where it says another, but
the price, which is what was paid last."""


_Named = tuple[str, float, str]
"""By what a product is known: its title, folded, its size and its unit."""


def _named(label: Label) -> _Named:
    return folded(label.title), label.size, label.unit


@dataclass
class _Sorting:
    """The rows of a list while each is looked up."""

    snapshot: Snapshot
    known: Mapping[_Named, Product] = field(init=False)
    there: dict[tuple[_Named, bool], list[Bottle]] = field(default_factory=dict)
    first: dict[_Named, ListedBottle] = field(default_factory=dict)
    new: list[ListedRow] = field(default_factory=list)
    same: list[SameBottle] = field(default_factory=list)
    repair: list[ListedRow] = field(default_factory=list)

    def __post_init__(self) -> None:
        self.known = {_named(each): each for each in self.snapshot.products}
        for bottle in self.snapshot.bottles:
            self.there.setdefault((_named(bottle.product), bottle.level.amount > 0), []).append(
                bottle
            )

    def take(self, row: ListedRow) -> None:
        """Put one row where it belongs."""
        listed = row.bottle
        if listed is None:
            self.repair.append(row)
            return
        named = _named(listed.draft)
        problem = self._another_kind(named, listed)
        if problem is not None:
            self.repair.append(replace(row, bottle=None, problems=(problem,)))
            return
        first = self.first.setdefault(named, listed)
        is_told_apart = first is not listed or named in self.known
        said = tuple(self._as_it_is(named, listed)) if is_told_apart else ()
        row = replace(row, remarks=(*row.remarks, *said)) if said else row
        alike = self.there.get((named, listed.level is None or listed.level.amount > 0), [])
        found, alike[: listed.count] = alike[: listed.count], []
        if len(found) == listed.count:
            self.same.append(SameBottle(row, found[0]))
        else:
            self.new.append(_without(len(found), row, listed) if found else row)

    def _another_kind(self, named: _Named, listed: ListedBottle) -> CellProblem | None:
        """A product that is something else in the bar, or on an earlier row."""
        tree = self.snapshot.knowledge.tree
        said: UserError | None = None
        there: Label | None = self.known.get(named)
        if there is not None:
            said = _other_in_the_bar(listed.draft, there, tree)
        elif named in self.first:
            there = self.first[named].draft
            said = _two_kinds(listed.draft, there, self.first[named].line, tree)
        if there is None or there.ingredient == listed.draft.ingredient:
            return None
        return CellProblem("ingredient", str(said), tree.name(there.ingredient))

    def _as_it_is(self, named: _Named, listed: ListedBottle) -> Iterator[str]:
        """What a row says of a product otherwise than the bar, or than an earlier row."""
        known, first = self.known.get(named), self.first[named]
        there: Label = known or first.draft
        where = tr("the bar") if known else tr("line {line}", line=first.line)
        for name, field_name in OF_THE_PRODUCT.items():
            mine, theirs = getattr(there, field_name), getattr(listed.draft, field_name)
            if theirs not in (None, "") and theirs != mine:
                kept = _shown(mine)
                if known and name == "price":
                    yield tr(
                        "The product’s price in the bar is {kept}; {paid} is noted as paid, "
                        "and is its price from now on unless it was bought again since.",
                        kept=kept,
                        paid=_shown(theirs),
                    )
                    continue
                yield tr(
                    "The product’s {name} stays as in {where}: {kept}, not {shown}.",
                    name=tr(name),
                    where=where,
                    kept=kept,
                    shown=_shown(theirs),
                )


def _without(there: int, row: ListedRow, listed: ListedBottle) -> ListedRow:
    """A row of several bottles, some of which are there already."""
    told = tr_noop("{there} of the {count} is there already.")
    if there != 1:
        told = tr_noop("{there} of the {count} are there already.")
    said = tr(told, there=there, count=listed.count)
    left = replace(listed, count=listed.count - there)
    return replace(row, bottle=left, remarks=(*row.remarks, said))


def _shown(value: float | str | None) -> str:
    if isinstance(value, float):
        return f"{value:g}"
    return value or tr_about("where a label says nothing", "none")


def _two_kinds(here: Label, there: Label, line: int, tree: FamilyTree) -> TwoIngredients:
    wanted, known = map(tree.in_sentence, (here.ingredient, there.ingredient))
    return TwoIngredients(wanted, known, line)


def _other_in_the_bar(here: Label, there: Label, tree: FamilyTree) -> InvalidField:
    wanted, known = map(tree.in_sentence, (here.ingredient, there.ingredient))
    return InvalidField(
        "ingredient", wanted, tr("the bar has {title} as {known}", title=there.title, known=known)
    )


# Taking in


@dataclass(frozen=True, slots=True)
class ImportedBottles:
    """What came in with a list: products that were new, and bottles."""

    products: int
    bottles: int


@dataclass(frozen=True, slots=True)
class _Coming:
    """A bottle that is to be taken in: of the product so named, with what its ledger begins with.

    The entries have no bottle yet.
    """

    named: _Named
    facts: BottleFacts
    entries: tuple[Entry, ...]
    bought: date
    price: float | None
    count: int


def _each_alone(coming: _Coming) -> Iterator[_Coming]:
    """Each bottle of a row by itself: the first as it is said, the others as they came, full."""
    yield coming
    for _other in range(coming.count - 1):
        yield replace(coming, entries=coming.entries[:1])


@dataclass
class TakingIn:
    """A list while it is taken in: all of it is checked before any of it is written.

    `made` holds for each new product its label and the row it comes in with.
    """

    work: UnitOfWork
    tree: FamilyTree
    made: dict[_Named, tuple[Label, ListedBottle]] = field(default_factory=dict)

    def take(
        self, rows: Sequence[ListedBottle], progress: Callable[[int, int], bool] | None = None
    ) -> tuple[Problem, ...]:
        """Receive, open and count each bottle; the problems of those that cannot be.

        Nothing is written where there are any. Raises `Stopped` where
        `progress` says not to go on.
        """
        reached = _stopping(progress, tr("The import"))
        coming: list[_Coming] = []
        problems: list[Problem] = []
        for number, row in enumerate(rows):
            if number % EVERY == 0:
                reached(number, len(rows))
            try:
                coming.append(self._coming(row))
            except UserError as error:
                problems.append(_located(error, row))
        if not problems:
            self._write(coming)
        return tuple(problems)

    @cached_property
    def _known(self) -> Mapping[_Named, Product]:
        """The products of the bar."""
        return {_named(each): each for each in bottle_rows.read_products(self.work.connection)}

    @cached_property
    def _just_received(self) -> BottleFacts:
        """What is known of a bottle of which a list says nothing."""
        return BottleFacts(received=self.work.at.date())

    def _coming(self, row: ListedBottle) -> _Coming:
        label = self._label_for(checked_draft(row.draft, self.tree), row)
        facts = self._just_received if row.facts is NOTHING_KNOWN else row.facts
        if facts.received is None:
            facts = replace(facts, received=self.work.at.date())
        assert facts.received is not None
        bought = min(facts.received, row.opened or facts.received)
        price = None if label.house_made else row.draft.price
        entries = tuple(self._entries(row, label))
        return _Coming(_named(label), facts, entries, bought=bought, price=price, count=row.count)

    def _entries(self, row: ListedBottle, label: Label) -> Iterator[Entry]:
        now = self.work.at
        if row.sealed and row.level is not None and row.level.amount:  # a jar filled so far
            filled = level_within(row.level.amount, label)
            yield Entry(0, 0, "receive", now, amount=filled, note=row.note)
            return
        yield Entry(0, 0, "receive", now, amount=label.size, note=row.note)
        if row.opened is not None:
            yield Entry(0, 0, "open", _opened_at(row.opened, now))
        if row.level is not None:
            level, of = row.level, counted_level(row.level, label)
            yield Entry(0, 0, "count", now, amount=of, method=level.method, sigma=level.sigma)

    def _label_for(self, draft: Label, row: ListedBottle) -> Label:
        """The product, which the bar has, an earlier row brings, or this one does."""
        named = _named(draft)
        if named in self._known:
            known: Label = self._known[named]
            if known.ingredient != draft.ingredient:
                raise _other_in_the_bar(draft, known, self.tree)
            return known
        known, earlier = self.made.setdefault(named, (draft, row))
        if known.ingredient != draft.ingredient:
            raise _two_kinds(draft, known, earlier.line, self.tree)
        return known

    def _write(self, coming: Sequence[_Coming]) -> None:
        work = self.work
        products = dict(self._known)
        ids = work.insert("product", [label for label, _row in self.made.values()])
        for (named, (label, _row)), product_id in zip(self.made.items(), ids, strict=True):
            products[named] = product_of(label, product_id)
        place = bottle_rows.last_position(work.connection) + 1
        each_alone = [one for each in coming for one in _each_alone(each)]
        bottles = (
            new_bottle(products[each.named], each.facts, number)
            for number, each in enumerate(each_alone, place)
        )
        bottle_ids = work.insert("bottle", bottles)
        begun = (each.entries for each in each_alone)
        work.append_all(dict(zip(bottle_ids, begun, strict=True)))
        self._note_prices(coming, products)

    def _note_prices(self, coming: Sequence[_Coming], products: Mapping[_Named, Product]) -> None:
        """Note each price of the list as paid; of a product the bar had, the last is its price."""
        paid = {
            (each.named, each.bought, each.price): Paid(
                NEW,
                products[each.named].id,
                day=each.bought,
                amount=each.price,
                size=products[each.named].size,
            )
            for each in coming
            if each.price is not None
        }
        self.work.insert("paid", paid.values())
        for named in dict.fromkeys(named for named, *_rest in paid if named in self._known):
            follow_newest(self.work, products[named].id)


def take_in_bottles(
    session: Session,
    rows: Sequence[ListedBottle],
    file: str,
    progress: Callable[[int, int], bool] | None = None,
) -> Done[ImportedBottles]:
    """Take in the bottles of a list, as `Imports.bottles` says it."""
    count = sum(each.count for each in rows)
    label = f"Import {count} bottle{'s' * (count != 1)}"
    session.before_import()
    with session.writing(label) as work:
        taken = TakingIn(work, session.tree)
        problems = taken.take(rows, progress)
        if problems:
            raise UnusableFile(file or tr("the file"), problems)
    return session.finished(work, lambda _bar: ImportedBottles(len(taken.made), count))


def _located(error: UserError, row: ListedBottle) -> Problem:
    """A problem at the field that the error is about, at the row's first where it names none."""
    name = error.field if isinstance(error, InvalidField) else None
    name = "ingredient" if isinstance(error, TwoIngredients) else name
    return Problem(row.line, row.columns.get(name or "", 1), str(error))


def _opened_at(day: date, now: datetime) -> datetime:
    if day > now.date():
        raise InvalidField("opened", day, tr(STILL_TO_COME))
    return min(datetime.combine(day, time(12)), now)
