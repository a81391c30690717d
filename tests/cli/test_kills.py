"""Whatever writes to a bar is killed at its writes; the next command finds all of it or nothing.

A few places each in the ordinary run. All of them, with half-done writes and
lost power: `ENDURANCE=full python -m pytest tests/cli/test_kills.py -s`; a number in
place of *full* tries at most so many of a kind.
"""

from __future__ import annotations

import json
import os
import re
import shutil
from pathlib import Path
from typing import Any

import pytest

from tests.cli.kill_points import Kills
from tests.cli.test_openings import OLD_SCHEMAS, dump, killed_one_by_one, old_bar

pytestmark = pytest.mark.endurance

ASKED = os.environ.get("ENDURANCE", "")
FULL = bool(ASKED)
WAYS = ("killed", "torn", "powerless") if FULL else ("torn",)
MOST = None if ASKED == "full" else int(ASKED or 1)

_MOMENT = re.compile(r"\d{4}-\d\d-\d\d[ T]\d\d:\d\d:\d\d(\.\d+)?")

CSV = (
    "product,maker,ingredient,abv,size,level,price,opened\n"
    "Signal Dry,Pellow & Rudge,London dry gin,43,70 cl,full,24.50,\n"
    "Branch Rye,Copperbend,Rye whiskey,50,70 cl,half,38,2026-03-01\n"
)

WRITES = {
    "count": ["count", "1", "0.4"],
    "import": ["import", "{list}"],
    "log": ["shoot", "log", "Snow Plough", "--spill", "1=10 ml"],
    "make": ["make", "Simple syrup", "500 ml"],
    "undo": ["undo"],
    "save": ["check", "--save-what-can-be", "{folder}/saved.barkeep"],
    "new bar": ["bottles"],
}
MORE = {"redo": ["redo"], "change": ["setting", "name", "Signal yard"]} if FULL else {}
UPGRADES = {f"schema {number}": ["bottles"] for number in OLD_SCHEMAS} if FULL else {}
"""In the ordinary run `test_openings` has them."""


def contents(bar: Path) -> list[str]:
    """All that is in a bar but for the moments at which commands ran."""
    own = (line for line in dump(bar) if not line.startswith('INSERT INTO "seal"'))
    return [_MOMENT.sub("then", line) for line in own]  # the seal is over the moments too


@pytest.fixture
def plans(request, built_sample, tmp_path, barkeep) -> list[Kills]:
    """The kills of every kind of write, in one way."""
    rows, counted = tmp_path / "list.csv", tmp_path / "counted.barkeep"
    rows.write_text(CSV, encoding="utf-8")
    shutil.copyfile(built_sample, counted)
    assert barkeep("--bar", counted, "count", "1", "0.4").status == 0
    undone = tmp_path / "undone.barkeep"
    shutil.copyfile(counted, undone)
    assert barkeep("--bar", undone, "undo").status == 0
    before = {"new bar": "", "undo": str(counted), "redo": str(undone)}
    before |= {f"schema {number}": str(old_bar(number)) for number in OLD_SCHEMAS}
    return [
        Kills(
            before.get(what, str(built_sample)),
            str(tmp_path / what),
            command := [each.replace("{list}", str(rows)) for each in words],
            command if command[-1] == "bottles" else ["check", "--json"],
            how=request.param,
            most=MOST,
            usual=what == "new bar",
        )
        for what, words in {**WRITES, **MORE, **UPGRADES}.items()
    ]


@pytest.mark.parametrize("plans", WAYS, indirect=True)
def test_a_killed_write_is_done_or_not_done(plans):
    for plan, runs in zip(plans, killed_one_by_one(plans), strict=True):
        all_or_nothing(plan, runs)
        shutil.rmtree(plan.folder)


def all_or_nothing(plan: Kills, runs: list[dict[str, Any]]) -> None:
    *killed, alive = runs
    assert alive["first_status"] == 0 and alive["first"]["status"] == 0, alive
    assert killed
    done = contents(Path(alive["folder"], plan.name))
    goes_on = plan.then == plan.command  # the next command does what was killed
    may_be = [done] if goes_on else [done, contents(Path(plan.old))]
    for each in runs:
        here, where = Path(each["folder"]), (each["folder"], each["killed_at"], each["then"])
        assert each["then"]["status"] == 0, where
        if not goes_on:
            assert json.loads(each["then"]["out"])["findings"] == [], where
        assert contents(here / plan.name) in (may_be if each is not alive else [done]), where
    assert all(each["first_status"] == -9 for each in killed)
