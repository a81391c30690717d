"""Documents as people bring them, in `files/`: what each holds stands in `expected.toml` there."""

from __future__ import annotations

import tomllib
from pathlib import Path

import pytest

from barkeep.application.imports import NamedText, preview
from barkeep.documents.bytes_read import decoded
from barkeep.documents.specs.columns import columns_text, read_columns
from barkeep.documents.specs.files import holds_specs
from barkeep.domain.bar.snapshot import Snapshot
from barkeep.domain.specs.garnish_notes import garnishes_in_words, other_notes
from tests.walked import walked
from tests.worlds import TODAY

FILES = Path(__file__).parent / "files"
EXPECTED = tomllib.loads((FILES / "expected.toml").read_text("utf-8"))


def amount_of(line) -> str:
    if line.amount is None:
        return ""
    high = "" if line.amount_high is None else f"-{line.amount_high:.10g}"
    return f"{line.amount:.10g}{high}"


def shown(line) -> str:
    marks = ["(garnish)" * line.garnish, "(optional)" * line.optional]
    words = (amount_of(line), line.unit or "", line.ingredient, *marks)
    return " ".join(word for word in words if word)


def said(spec) -> dict[str, object]:
    return {
        "name": spec.name,
        "lines": [shown(line) for line in spec.lines],
        "method": spec.method,
        "glass": spec.glass,
        "garnish": list(garnishes_in_words(spec.notes)),
        "notes": "\n".join(other_notes(spec.notes)),
        "source": spec.source,
        "credit": spec.credit,
        "serves": spec.serves,
        "tags": list(spec.tags),
    }


NOTHING_SAID = {
    **dict.fromkeys(("method", "glass", "notes", "source", "credit"), ""),
    **{"lines": [], "garnish": [], "tags": [], "serves": 1.0},
}


def looked_at(knowledge, name: str, columns: str = ""):
    found = decoded((FILES / name).read_bytes(), name)
    assert columns or holds_specs(found.text, name)
    uses = read_columns(columns) if columns else ()
    named = NamedText(name, found.text, found.read_as, uses)
    return preview(Snapshot(knowledge, TODAY), [named])


def test_every_document_is_told_of():
    assert {each.name for each in FILES.iterdir()} == {*EXPECTED, "expected.toml"}


@walked("name", EXPECTED)
def test_a_document_gives_its_specs_and_says_what_it_left_aside(knowledge, name):
    expected = EXPECTED[name]
    expected = {"specs": expected} if isinstance(expected, list) else expected
    found = looked_at(knowledge, name, expected.get("columns", ""))
    if "refused" in expected:
        assert expected["refused"] in found.problems[0].message
        return
    assert found.problems == ()
    specs = [{**NOTHING_SAID, **each} for each in expected["specs"]]
    assert [said(each.spec) for each in found.new] == specs
    aside = " ".join(each.what for each in found.left_aside)
    wanted = expected.get("left_aside", [])
    assert [each for each in wanted if each not in aside] == []
    assert wanted or not aside
    read_as = " ".join(each.words for each in found.remarks)
    assert expected.get("encoding", "") in read_as


@pytest.mark.parametrize("name", [each for each in EXPECTED if "columns" in EXPECTED[each]])
def test_columns_that_are_unclear_are_asked_about_with_the_likely_answer(knowledge, name):
    found = looked_at(knowledge, name)
    (asked,) = found.needs_columns
    assert (found.new, found.problems) == ((), ())
    assert columns_text(asked.request.likely) == EXPECTED[name]["columns"]
    assert [each.samples[0] for each in asked.request.columns] == list(asked.request.rows[0])
