"""A list of rows: what is kept, in which order, and what stays chosen."""

from __future__ import annotations

from functools import partial
from random import Random

import pytest
from PySide6.QtCore import QPersistentModelIndex, Qt

from barkeep.desktop.screens.row_table import Column, RowFilter, RowTable, ranked

UP, DOWN = Qt.SortOrder.AscendingOrder, Qt.SortOrder.DescendingOrder


def words(row: tuple[int, str]) -> str:
    return row[1]


def at_least(least: int, row: tuple[int, str]) -> bool:
    return row[0] >= least


@pytest.fixture
def table(qapp):
    known = Column[tuple[int, str]]("Size", lambda row: str(row[0]), key=lambda row: row[0])
    return RowTable([Column("Word", words), known])


@pytest.fixture
def shown(table):
    return RowFilter(table)


def some_rows(chance: Random) -> list[tuple[int, str]]:
    """Rows with many equal keys, so that their order among equals is seen as well."""
    return [(chance.randrange(6), chance.choice("aBcAb")) for _ in range(chance.randrange(40))]


def test_any_rows_are_kept_and_sorted_as_python_does_it(table, shown, qtmodeltester):
    for seed in range(60):
        chance = Random(seed)
        rows, least = some_rows(chance), chance.randrange(6)
        column, order = chance.choice([(0, UP), (0, DOWN), (1, UP), (1, DOWN)])
        steps = [
            partial(table.show_rows, rows),
            partial(shown.keep, partial(at_least, least)),
            partial(shown.sort, column, order),
        ]
        chance.shuffle(steps)
        for step in steps:
            step()
        key = (lambda row: row[1].casefold()) if column == 0 else (lambda row: row[0])
        kept = [row for row in rows if row[0] >= least]
        assert list(shown.shown_rows()) == sorted(kept, key=key, reverse=order == DOWN), seed
    qtmodeltester.check(shown, force_py=True)


def test_what_is_chosen_stays_chosen_while_it_is_kept(table, shown):
    table.show_rows([(3, "c"), (1, "a"), (2, "b")])
    chosen = QPersistentModelIndex(shown.index(0, 1))
    shown.sort(1, UP)
    assert (chosen.row(), chosen.column()) == (2, 1)
    shown.keep(lambda row: row[0] > 1)
    assert chosen.row() == 1 and shown.row(chosen) == (3, "c")
    shown.keep(lambda row: row[0] < 3)
    assert not chosen.isValid()


def test_a_row_that_is_replaced_moves_or_goes(table, shown):
    table.show_rows([(3, "c"), (1, "a"), (2, "b")])
    shown.sort(1, UP)
    shown.keep(lambda row: row[0] < 9)
    table.replace_row(1, (4, "a"))
    assert [row[0] for row in shown.shown_rows()] == [2, 3, 4]
    table.replace_row(1, (9, "a"))
    assert [row[0] for row in shown.shown_rows()] == [2, 3]


class Guess:
    """A row of which something is found out later."""

    def __init__(self, name: str) -> None:
        self.name = name
        self.size: int | None = None


def test_a_row_says_more_once_it_is_told_and_stays_where_it_stands(qapp):
    looked_at: list[Guess] = []
    table: RowTable[Guess] = RowTable(
        [
            Column("Name", lambda row: row.name),
            Column(
                "Size",
                lambda row: "…" if row.size is None else str(row.size),
                key=lambda row: row.size or 0,
                known=lambda row: row.size is not None,
            ),
        ]
    )
    table.look_at = looked_at.append
    shown = RowFilter(table)
    shown.is_ready = lambda: not shown.lacking(shown.kept())
    large, small = Guess("large"), Guess("small")
    table.show_rows([large, small])
    assert shown.index(0, 1).data() == "…" and looked_at == [large]
    shown.sort(1, UP)
    assert shown.lacking(shown.kept()) == [large, small]
    large.size, small.size = 9, 1
    changed: list[int] = []
    shown.dataChanged.connect(lambda first, _last: changed.append(first.row()))
    table.tell([0, 1])
    assert changed == [0, 1]
    assert [row.name for row in shown.shown_rows()] == ["large", "small"]
    assert shown.index(0, 1).data() == "9"
    shown.arrange()
    assert [row.name for row in shown.shown_rows()] == ["small", "large"]


def test_equal_keys_share_a_rank():
    assert ranked([(1, "b"), (0, "z"), (1, "b"), (2, "")]) == [1, 0, 1, 2]
    assert ranked([]) == []
