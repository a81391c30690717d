"""Files of bottles as owners bring them: what comes in, what is asked, what is left aside."""

from __future__ import annotations

from dataclasses import fields
from datetime import date

import pytest

from barkeep.application.bottle_imports import look_at_bottles
from barkeep.application.knowledge import shipped
from barkeep.documents.bytes_read import decoded
from barkeep.domain.bar.snapshot import Settings, Snapshot
from barkeep.errors import UnreadableFile
from tests.bottle_files import FILES, Comes, File

TODAY = date(2026, 11, 29)
EMPTY_BAR = Snapshot(shipped(), TODAY, settings=Settings(currency="GBP"))


@pytest.mark.parametrize("file", FILES, ids=lambda file: file.name)
def test_a_file_comes_to_what_its_owner_expects(file: File):
    try:
        read = decoded(file.data, "bottles.csv")
    except UnreadableFile:
        assert file.refused
        return
    assert file.encoding in (read.read_as or "UTF-8")
    found = look_at_bottles(EMPTY_BAR, read.text)
    assert bool(found.file.listed) is not file.refused
    assert [each.bottle.draft.name for each in found.new] == [each.product for each in file.comes]
    for row, comes in zip(found.new, file.comes, strict=True):
        assert_as_expected(row.bottle, comes)
    asked = {(row.row, each.column): each.likely for row in found.repair for each in row.problems}
    assert tuple(asked) == file.asked
    for number, column, likely in file.ready:
        assert asked[number, column] == likely
    assert found.file.ignored == file.left_aside


def assert_as_expected(bottle, comes: Comes) -> None:
    """Whatever was written down of a bottle is so."""
    draft, level = bottle.draft, bottle.level
    opened = "sealed" if bottle.opened is None else bottle.opened.isoformat()
    found = {
        "product": draft.name,
        "ingredient": EMPTY_BAR.knowledge.tree.name(draft.ingredient),
        "abv": draft.abv_percent,
        "size_ml": draft.size,
        "level_ml": draft.size if level is None else level.amount,
        "price": draft.price,
        "opened": "open" if bottle.opened == TODAY else opened,
        "maker": draft.maker,
    }
    for each in fields(Comes):
        wanted = getattr(comes, each.name)
        if isinstance(wanted, float | int):
            wanted = pytest.approx(wanted, abs=0.01)
        assert wanted is None or found[each.name] == wanted, each.name
