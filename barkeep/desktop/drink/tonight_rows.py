"""How Tonight's list shows a drink, and what it leaves open until that has been worked out."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, field
from typing import TYPE_CHECKING

from PySide6.QtCore import Qt

from barkeep.application.kept_verdicts import KeptVerdicts
from barkeep.desktop.drink.bases import bases_in
from barkeep.desktop.screens.row_table import Column
from barkeep.desktop.widgets.delegates import ICONS_ROLE, SUBTITLE_ROLE, VERDICT_ROLE
from barkeep.domain.bar.snapshot import Snapshot
from barkeep.domain.drink.at_the_bar import WHOSE, Whose, whose
from barkeep.domain.drink.search import filmed_next
from barkeep.domain.ingredients.tree import FamilyTree
from barkeep.domain.phrases import capitalised
from barkeep.domain.pouring.evening import Evening, evening_of, verdicts_of
from barkeep.domain.pouring.memory import Memory
from barkeep.domain.pouring.serves_in_words import serves_in_words
from barkeep.domain.pouring.verdict import VERDICT_WORDS, VERDICTS, Verdict
from barkeep.domain.specs.called import named_by
from barkeep.domain.specs.shown_lines import ingredients_in_brief, names_of
from barkeep.domain.specs.spec import Spec
from barkeep.errors import spoken_list
from barkeep.translation import tr, tr_about, tr_noop

if TYPE_CHECKING:
    from barkeep.domain.drink.picture import DrinkPicture
    from barkeep.domain.pouring.sourcing import Within
    from barkeep.domain.pouring.verdicts import Drink

MANY = 10**6
"""Sorts what nothing limits after every number."""
NOT_YET, NOT_YET_SAID = "…", tr_noop("Not worked out yet")
"""What stands where something has not been worked out, and what is said of it."""
NONE = "—"
WHOSE_BRIEFLY: Mapping[Whose, str] = {
    "shoot": tr_noop("Shoot"),
    "own": tr_noop("Own"),
    "classic": tr_noop("Classic"),
}
_BEST_FIRST = {verdict: place for place, verdict in enumerate(VERDICTS)}
_WHOSE_FIRST = {each: place for place, each in enumerate(WHOSE)}


@dataclass(frozen=True, slots=True, eq=False)
class TonightRow:
    """One spec with its verdict; `place` counts the drinks from the best verdict on.

    `base` is in words, `base_kind` a key, None without a base.
    """

    spec: Spec
    verdict: Verdict
    place: int
    whose: Whose
    base: str
    base_kind: str | None
    evening: Evening = field(repr=False)
    _hindrances: dict[int, str] = field(repr=False)
    """What hinders each drink of the evening, by its place, as far as that is worded."""
    _pictures: dict[int, DrinkPicture | None] = field(repr=False)
    """The picture of each, as far as that is worked out."""

    @property
    def makeable(self) -> bool:
        """Whether it can be made tonight at all."""
        return self.verdict in ("ready", "stand_in")

    @property
    def drink(self) -> Drink | None:
        """What is poured for it; None while that has not been worked out."""
        return self.evening.known(self.spec)

    def worked_out(self) -> Drink:
        """What is poured for it, worked out now where it is not known yet."""
        drink = self.evening.drink(self.spec)
        if self.place not in self._hindrances:
            tree = self.evening.snapshot.knowledge.tree
            self._hindrances[self.place] = hindrance(drink, tree)
        return drink

    def drawn(self) -> DrinkPicture | None:
        """Its picture, worked out now with what is poured for it where it is not known yet."""
        from barkeep.domain.drink.picture import poured_picture  # a list draws none

        drink = self.worked_out()
        if self.place not in self._pictures:
            self._pictures[self.place] = poured_picture(drink, self.evening.snapshot)
        return self._pictures[self.place]

    @property
    def is_drawn(self) -> bool:
        """Whether its picture is known, be it none."""
        return self.place in self._pictures

    @property
    def picture(self) -> DrinkPicture | None:
        """Its picture; None while that has not been worked out, and where there is none."""
        return self._pictures.get(self.place)

    @property
    def tags(self) -> str:
        """Whose it is unless a classic, what it lacks, and what is to be minded, in one line."""
        mine = "" if self.whose == "classic" else tr(WHOSE_BRIEFLY[self.whose])
        lacks = "" if self.makeable else self.hindrance
        minded = self.drink.minded.in_brief if self.drink else NOT_YET
        return " · ".join(filter(None, (mine, lacks, minded)))

    @property
    def hindrance(self) -> str | None:
        """What is missing or runs out first, in words; None while that has not been worked out."""
        return self._hindrances.get(self.place)


@dataclass(frozen=True)
class Answered:
    """The rows of an evening, and what the filters may offer."""

    evening: Evening
    rows: tuple[TonightRow, ...] = ()

    @property
    def snapshot(self) -> Snapshot:
        """The bar that was asked."""
        return self.evening.snapshot


def answered(
    snapshot: Snapshot,
    within: Within,
    serves: int,
    memory: Memory,
    kept: KeptVerdicts | None = None,
) -> Answered:
    """Tonight for so many serves; the verdicts as they were `kept`, where they were.

    Where something is kept of this bar and these are not, they are kept now.
    """
    known = kept.found(snapshot, within, serves) if kept else None
    found = known or verdicts_of(snapshot, within, serves, memory)
    if kept and not known:
        kept.keep(snapshot, within, serves, found)
    evening = evening_of(snapshot, within, serves, memory, found=found)
    return Answered(evening, rows_of(evening, memory))


def rows_of(evening: Evening, memory: Memory) -> tuple[TonightRow, ...]:
    """A row for each drink, best verdict first."""
    snapshot = evening.snapshot
    bases, filmed = bases_in(snapshot.knowledge.tree, memory), filmed_next(snapshot)
    hindrances: dict[int, str] = {}
    pictures: dict[int, DrinkPicture | None] = {}
    return tuple(
        TonightRow(
            spec=each.spec,
            verdict=each.verdict,
            place=each.place,
            whose=whose(each.spec, filmed),
            base=(found := bases.of(each.spec)).name,
            base_kind=found.kind,
            evening=evening,
            _hindrances=hindrances,
            _pictures=pictures,
        )
        for each in evening.placed
    )


def tonight_columns(tree: FamilyTree) -> tuple[Column[TonightRow], ...]:
    """Drink with its tags, verdict, serves, what is missing or runs out first; whose, base."""
    return (
        Column(
            tr("Drink"),
            lambda row: row.spec.name,
            roles={
                SUBTITLE_ROLE: lambda row: row.drink.minded.in_brief if row.drink else NOT_YET,
                Qt.ItemDataRole.AccessibleDescriptionRole: lambda row: (
                    row.drink.minded.in_brief if row.drink else tr(NOT_YET_SAID)
                ),
                ICONS_ROLE: lambda row: ("warning",) if row.drink and row.drink.notices else (),
            },
            tooltip=lambda row: _tip(row.worked_out(), tree),
        ),
        Column(
            tr("Tonight"),
            lambda row: VERDICT_WORDS[row.verdict].name,
            key=lambda row: (_BEST_FIRST[row.verdict], row.spec.name.casefold()),
            roles={VERDICT_ROLE: lambda row: row.verdict},
        ),
        Column(
            tr_about("column", "Serves"),
            serves_shown,
            key=_serves,
            right=True,
            roles={Qt.ItemDataRole.AccessibleTextRole: _serves_said},
            tooltip=lambda row: serves_in_words(row.worked_out(), tree) if row.makeable else "",
            known=lambda row: not row.makeable or row.drink is not None,
        ),
        Column(
            tr("Limited by"),
            lambda row: NOT_YET if row.hindrance is None else row.hindrance,
            roles={
                Qt.ItemDataRole.AccessibleTextRole: lambda row: (
                    tr(NOT_YET_SAID) if row.hindrance is None else row.hindrance
                )
            },
            known=lambda row: row.hindrance is not None,
        ),
        Column(
            tr("Whose"),
            lambda row: tr(WHOSE_BRIEFLY[row.whose]),
            key=lambda row: (_WHOSE_FIRST[row.whose], row.place),
        ),
        Column(tr("Base"), lambda row: row.base),
    )


def _tip(drink: Drink, tree: FamilyTree) -> str:
    """What is in it, what to mind, and what to know of its bottles."""
    said = (ingredients_in_brief(drink.spec, tree), drink.minded.in_brief, *drink.notices)
    return "\n".join(each for each in said if each)


def _serves(row: TonightRow) -> int:
    drink = row.drink
    if drink is None:
        return 0  # it cannot be made; else nothing is sorted by serves before they are known
    return MANY if drink.serves is None else drink.serves


def _serves_said(row: TonightRow) -> str:
    said = serves_shown(row)
    return tr(NOT_YET_SAID) if said == NOT_YET else said


def serves_shown(row: TonightRow) -> str:
    """How many serves, or that this is still to be worked out; an em dash for none."""
    if not row.makeable:
        return NONE
    return NOT_YET if row.drink is None else serves_in_brief(row.drink)


def card_in_words(row: TonightRow) -> str:
    """All that a drink's card shows, in a row."""
    verdict, serves = VERDICT_WORDS[row.verdict].name, _serves_said(row)
    many = (
        tr("{serves} serves", serves=serves)
        if row.makeable and row.drink
        else serves
        if row.makeable
        else ""
    )
    return ", ".join(filter(None, (row.spec.name, verdict, many, *row.tags.split(" · "))))


def serves_in_brief(drink: Drink) -> str:
    """How many serves of the bottles shown, and after the plus of others; an em dash for none."""
    if not drink.makeable:
        return NONE
    if drink.serves is None:
        return tr("no limit")
    more = [each.serves for each in drink.then]
    if not more:
        return str(drink.serves)
    if None in more:
        return tr("{serves} + any", serves=drink.serves)
    return f"{drink.serves} + {sum(each or 0 for each in more)}"


def hindrance(drink: Drink, tree: FamilyTree) -> str:
    """What is missing or not understood, or else what ends the serves."""
    if drink.lacking:
        names = [capitalised(names_of(line, tree)) for line in drink.missing_lines]
        return spoken_list([*names, *drink.questions], "and")
    return named_by(drink.spec.lines, tree).name(drink.runs_out) if drink.runs_out else ""
