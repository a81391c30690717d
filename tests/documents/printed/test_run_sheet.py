"""A run sheet in texts, compared with a file that was read through by hand."""

from __future__ import annotations

from pathlib import Path

import pytest

from barkeep.application.bar import Bar
from barkeep.application.publishing import publish_text_of, run_sheet_of
from barkeep.documents.printed.blocks import Text, Tick, job_text
from barkeep.documents.printed.descriptions import episode_markdown
from barkeep.documents.printed.jobs import run_sheet_job
from barkeep.documents.printed.paper import shipped_sizes
from barkeep.documents.printed.run_sheet import (
    RUN_SHEET_PARTS,
    RunSheetContent,
    removed_in_words,
    run_sheet_groups,
    run_sheet_text,
)
from barkeep.documents.printed.templates import shipped_templates
from tests.shoots_to_run import branch_line

REFERENCE = Path(__file__).resolve().parents[2] / "reference" / "published"


def written(snapshot) -> dict[str, str]:
    """The sheet and the episode's text by the name of their reference files."""
    shoot = branch_line(snapshot)
    episode = publish_text_of(shoot, snapshot)
    return {
        "run-sheet.txt": run_sheet_text(run_sheet_of(shoot, snapshot)),
        "episode.txt": episode.text,
        "episode.md": episode.markdown,
    }


@pytest.fixture
def snapshot(sample_bar, clock):
    """The sample bar as a frozen picture."""
    with Bar.open(sample_bar, clock=clock) as bar:
        return bar.snapshot


@pytest.mark.parametrize("name", ["run-sheet.txt", "episode.txt", "episode.md"])
def test_each_is_as_it_was(name, snapshot):
    assert written(snapshot)[name] == (REFERENCE / name).read_text(encoding="utf-8")


@pytest.mark.parametrize("template", shipped_templates("run_sheet"), ids=lambda each: each.key)
def test_every_template_prints_every_part(template, snapshot):
    sheet = run_sheet_of(branch_line(snapshot), snapshot)
    assert set(template.parts) == set(RUN_SHEET_PARTS)
    job = run_sheet_job(sheet, template, shipped_sizes()["paper"][0])
    rows = set(job_text(job.groups).splitlines())
    assert set(run_sheet_text(sheet).splitlines()) <= rows
    assert job.title == "Run sheet, Drinks of the branch line"


def test_a_step_that_is_ticked_is_shown_so(snapshot):
    sheet = run_sheet_of(branch_line(snapshot), snapshot)
    blocks = [block for group in run_sheet_groups(sheet, ("steps",)) for block in group]
    ticks = [each for each in blocks if isinstance(each, Tick)]
    assert [each.text for each in ticks if each.done] == ["Chill soda water."]
    assert "[x] Chill soda water." in run_sheet_text(sheet)
    assert run_sheet_text(sheet).count("[ ]") == len(ticks) - 1 + len(sheet.shopping)


def test_a_heading_stays_with_what_it_stands_over(snapshot):
    sheet = run_sheet_of(branch_line(snapshot), snapshot)
    for group in run_sheet_groups(sheet, tuple(RUN_SHEET_PARTS)):
        last = group[-1]
        assert not (isinstance(last, Text) and last.style in ("section", "when")), group


def test_what_there_is_nothing_of_has_no_heading():
    sheet = RunSheetContent("Nothing yet", "Friday 2026-11-27", (), "No drink is planned yet.")
    text = run_sheet_text(sheet)
    assert text.splitlines()[0] == "Nothing yet"
    for heading in ("Mise en place", "To buy", "Tools", "Running order", "Please mind", "Notes"):
        assert heading not in text


def test_a_theme_with_marks_is_no_markup():
    assert episode_markdown("*Gin* [1] <b>", []) == "# \\*Gin\\* \\[1\\] \\<b\\>\n"


def test_removed_drinks_are_named_together():
    assert removed_in_words(()) == ""
    assert removed_in_words(("A", "B")) == "A and B: their specs were removed."


def rewrite() -> None:
    """Write the reference files anew; then read them through: `python -m` this module."""
    from tempfile import TemporaryDirectory

    from barkeep.application.sample import build
    from tests.conftest import NOON

    with TemporaryDirectory() as folder:
        path = Path(folder) / "sample.bar"
        build(path, clock=lambda: NOON)
        with Bar.open(path, clock=lambda: NOON) as bar:
            for name, text in written(bar.snapshot).items():
                (REFERENCE / name).write_text(text, encoding="utf-8")


if __name__ == "__main__":
    rewrite()
