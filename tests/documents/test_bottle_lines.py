"""Lines as owners paste them, each with the bottle that it should be."""

from __future__ import annotations

import re
import tomllib
from datetime import date
from pathlib import Path

import pytest

from barkeep.application.bottle_imports import with_ready_answers
from barkeep.documents.bottle_cells import words
from barkeep.documents.bottle_lines import read_bottle_lines
from barkeep.documents.bottles_csv import Terms
from barkeep.domain.amounts.units import US_UNITS
from barkeep.domain.phrases import folded
from tests.walked import walked

ROWS = tomllib.loads(
    (Path(__file__).parents[1] / "reference" / "shelf_lines.toml").read_text("utf-8")
)["line"]
TODAY = date(2026, 11, 21)


@pytest.fixture(scope="module")
def terms(tree):
    return Terms(tree, US_UNITS, "EUR", TODAY)


@walked("case", [each for each in ROWS if "heading" not in each])
def test_a_line_is_the_bottle_that_its_owner_means(case, terms):
    (row,) = read_bottle_lines(case["text"], terms).listed
    asked = case.get("asked", False)
    assert asked == "may" or bool(row.problems) == asked, row.problems
    ready = all(each.likely for each in row.problems)
    assert ready or "kind" not in case
    if not ready:
        return
    (row,) = with_ready_answers([row], terms) if row.problems else (row,)
    bottle = row.bottle
    assert bottle is not None
    draft = bottle.draft
    if "kind" not in case:
        return
    assert terms.tree.name(draft.ingredient) == case["kind"]
    assert case.get("name", "") in draft.title
    by_the_piece = case.get("piece", False)
    assert (draft.size if by_the_piece else bottle.count) == case.get("count", 1)
    if "size" in case:
        assert draft.size == pytest.approx(case["size"])
    elif not by_the_piece:
        assert "size" in row.guessed
    if "level" in case:
        level = draft.size if bottle.level is None else bottle.level.amount
        assert level / draft.size == pytest.approx(case["level"], abs=0.02)
    elif not by_the_piece:
        assert "level" in row.guessed or case.get("asked")
    assert draft.abv_percent == case.get("abv")
    assert draft.price == case.get("price") or case.get("asked")
    assert "opened" not in case or str(bottle.opened) == case["opened"]


def _understood() -> frozenset[str]:
    """The words of sizes, levels and states, which come to be figures."""
    said = words()
    texts = [*said.levels, *said.about, *(each for group in said.months.values() for each in group)]
    line = said.line
    for group in (line.containers, line.left, line.gone, line.hedges, line.open, line.sealed):
        texts += group
    texts += [*line.here, *line.numbers]
    units = "ml cl dl litre kg oz of vol proof year made most"
    return frozenset(re.findall(r"[^\W\d_]{2,}", folded(" ".join([*texts, units]))))


UNDERSTOOD = _understood()


@walked("text", [each["text"] for each in ROWS])
def test_every_word_of_a_line_stands_in_a_cell_or_is_asked_about(text, terms):
    file = read_bottle_lines(text, terms)
    said = " ".join(
        [
            *file.headings,
            *(cell for row in file.listed for cell in row.cells.values()),
            *(each.message for row in file.listed for each in row.problems),
        ]
    )
    kept = set(re.findall(r"[^\W\d_]{2,}", folded(said)))
    lost = {each for each in re.findall(r"[^\W\d_]{2,}", folded(text)) if each not in kept}
    assert lost - UNDERSTOOD == set()


def test_each_line_is_a_row_or_a_heading_and_headings_help_what_names_no_kind(terms):
    text = (
        "# My shelf\n\n## Gin\n- Pellow Gate dry\n- [x] Marsh Pike Old Tom 50 cl\n- [ ] sloe\n"
        "---\nBitters:\n1) orange\n2) ~~aromatic~~\n"
    )
    file = read_bottle_lines(text, terms)
    assert file.headings == ("My shelf", "Gin", "Bitters")
    assert [each.row for each in file.listed] == [4, 5, 6, 9, 10]
    dry, old_tom, sloe, orange, aromatic = file.listed
    assert [each.likely for each in dry.problems] == ["London dry gin"]
    assert old_tom.bottle is not None and old_tom.bottle.draft.ingredient == "old-tom-gin"
    assert "ticked" in sloe.problems[0].message
    assert [each.likely for each in orange.problems][:1] == ["Orange bitters"]
    assert "struck out" in aromatic.problems[0].message


def test_a_guess_is_half_full_give_or_take_all_and_what_goes_flat_is_taken_as_unopened(terms):
    gin, tonic, two = read_bottle_lines("gin\ntonic water\n2 x cognac, 1/4", terms).listed
    assert gin.bottle.level.amount == 350 and gin.bottle.level.sigma == 175
    assert gin.guessed == {"size", "level"}
    assert gin.bottle.note == "listed as “gin”; size and level guessed"
    assert tonic.bottle.level is None and tonic.guessed == {"size", "level"}
    assert two.bottle.count == 2 and two.bottle.level.amount == 175
    assert two.remarks[-1] == "The level is that of one bottle; the other counts as full."
