"""Every worked example of `data/worked_examples.csv` is worked by barkeep too.

21 of the 35 were published; the other 14 were computed or rest on a formula
from memory, and do not count as outside checks.
"""

from __future__ import annotations

import pytest

from tests.outside.tables import worked_examples
from tests.outside.worked_examples import CHECKS

ROWS = worked_examples()
PUBLISHED = [row for row in ROWS.values() if row.published]
COMPUTED = [row for row in ROWS.values() if not row.published]


def named(row) -> str:
    return f"{row.id}: {row.source}"


@pytest.mark.parametrize("row", PUBLISHED, ids=named)
def test_published(row):
    CHECKS[row.id](row)


@pytest.mark.computed
@pytest.mark.parametrize("row", COMPUTED, ids=named)
def test_computed(row):
    CHECKS[row.id](row)


def test_every_row_has_its_check_and_every_check_its_row():
    assert list(ROWS) == [f"W{number:02}" for number in (*range(1, 14), *range(17, 39))]
    assert CHECKS.keys() == ROWS.keys()


def test_21_published_rows_are_checked():
    numbers = [*range(1, 14), 17, *range(32, 39)]
    assert [row.id for row in PUBLISHED] == [f"W{number:02}" for number in numbers]
    assert len(PUBLISHED) == 21


def test_what_was_computed_is_not_counted_as_published():
    assert all(
        row.how_sure.startswith("computed") or row.how_sure == "verified numerically"
        for row in COMPUTED
    )


def test_a_figure_that_a_row_does_not_print_is_noticed():
    with pytest.raises(AssertionError, match="does not print"):
        ROWS["W01"].figure("1.85")
