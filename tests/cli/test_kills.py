"""Whatever writes to a bar is killed at its writes; the next command finds all of it or nothing.

A few places each in the ordinary run. All of them, with half-done writes and
lost power: `ENDURANCE=full python -m pytest tests/cli/test_kills.py -s`.
"""

from __future__ import annotations

import json
import os
import re
import shutil
from dataclasses import replace
from pathlib import Path

import pytest

from tests.cli.kill_points import BAR, Kills
from tests.cli.test_openings import dump, kill, names, old_bar

pytestmark = pytest.mark.endurance

FULL = os.environ.get("ENDURANCE") == "full"
WAYS = ("killed", "torn", "powerless")

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
    "new bar": ["--new", "bottles"],
    "schema 1": ["bottles"],
    "schema 2": ["bottles"],
    "schema 3": ["bottles"],
    "schema 4": ["bottles"],
    "save": ["check", "--save-what-can-be", "{folder}/saved.barkeep"],
}


def contents(bar: Path) -> list[str]:
    """All that is in a bar but for the moments at which commands ran."""
    return [_MOMENT.sub("then", line) for line in dump(bar)]


@pytest.fixture
def plan(request, built_sample, tmp_path, barkeep):
    """The kills of one kind of write."""
    before, rows = tmp_path / "before.barkeep", tmp_path / "list.csv"
    rows.write_text(CSV, encoding="utf-8")
    what = request.param
    if what.startswith("schema"):
        shutil.copyfile(old_bar(int(what[-1])), before)
    elif what != "new bar":
        shutil.copyfile(built_sample, before)
    if what == "undo":
        assert barkeep("--bar", before, "count", "1", "0.4").status == 0
    command = [each.replace("{list}", str(rows)) for each in WRITES[what]]
    old = str(before) if before.exists() else ""
    is_opening = command[-1] == "bottles"
    then = command if is_opening else ["check", "--json"]
    return Kills(old, str(tmp_path / "killed"), command, then, every=1 if FULL else 9)


@pytest.mark.parametrize("how", WAYS if FULL else ("torn",))
@pytest.mark.parametrize("plan", WRITES, indirect=True, ids=str)
def test_a_killed_write_is_done_or_not_done(plan, how, record_property):
    folder = Path(plan.folder)
    *killed, alive = kill(replace(plan, how=how))
    assert alive["first_status"] == 0 and alive["first"]["status"] == 0, alive
    assert killed
    done = contents(Path(alive["folder"], BAR))
    may_be = [done]
    if plan.then != plan.command:  # else the next command does what was killed
        may_be.append(contents(Path(plan.old)))
    for each in killed:
        here, where = Path(each["folder"]), (each["folder"], each["killed_at"])
        assert each["first_status"] == -9, where
        assert each["then"]["status"] == 0, (where, each["then"])
        if plan.then != plan.command:
            assert json.loads(each["then"]["out"])["findings"] == [], where
        assert contents(here / BAR) in may_be, where
        assert f"{BAR}-journal" not in names(here), where
    record_property("kills", len(killed))
    print(f"\n{' '.join(plan.command)[:40]}, {how}: {len(killed)} kills, all right")
    shutil.rmtree(folder)
