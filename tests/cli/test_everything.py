"""A whole bar out to a document and in again, from the command line."""

from __future__ import annotations

import json
from pathlib import Path

import pytest


@pytest.fixture
def document(barkeep, bar, tmp_path) -> Path:
    path = tmp_path / "all.json"
    assert barkeep("--bar", bar, "export", "--everything", path).out == (
        f"The whole bar is written to {path}. What undo remembers is not in it.\n"
    )
    return path


def test_a_document_makes_an_equal_bar(barkeep, bar, document, tmp_path):
    new = tmp_path / "new.barkeep"
    said = barkeep("--bar", new, "import", document)
    assert (said.status, said.err) == (0, "")
    assert said.out == f"{new} holds what {document} holds: 81 bottles, 21 specs and 6 shoots.\n"
    for words in (
        ("bottles",), ("pantry",), ("spec", "list"), ("shoot", "list"), ("trial", "list"),
        ("setting",), ("tonight",), ("history", "1"), ("product", "list"), ("buy",),
    ):  # fmt: skip
        assert (
            barkeep("--bar", new, *words, "--json").answer
            == barkeep("--bar", bar, *words, "--json").answer
        ), words
    again = tmp_path / "again.json"
    answer = barkeep("--bar", new, "export", "--everything", again, "--json").answer
    assert answer == {"file": str(again), "bottles": 81, "products": 113, "specs": 21, "shoots": 6}
    assert again.read_bytes() == document.read_bytes()


def test_a_bar_that_holds_something_is_only_replaced_when_that_is_said(barkeep, bar, document):
    barkeep("--bar", bar, "count", "1", "0.4")
    before = bar.read_bytes()
    refusal = barkeep("--bar", bar, "import", document).refusal
    assert refusal.startswith("nothing is imported yet. --yes puts what stands right")
    assert "Count Pellow & Rudge Lamp Room dry gin" in refusal
    assert bar.read_bytes() == before
    answer = barkeep("--bar", bar, "import", document, "--yes", "--json").answer
    assert answer["before"]["last"] == "Count Pellow & Rudge Lamp Room dry gin"
    assert Path(answer["kept"]).name.endswith(" before restore.barkeep")
    assert barkeep("--bar", bar, "undo").refusal == "There is nothing to undo."
    barkeep("--bar", bar, "restore", answer["kept"], "--yes")
    assert barkeep("--bar", bar, "undo").out.startswith("Undone: Count Pellow")


def test_a_restore_takes_a_document_too(barkeep, bar, document):
    assert barkeep("--bar", bar, "restore", document, "--yes").status == 0


def test_a_wrong_document_changes_nothing(barkeep, bar, document):
    whole, before = json.loads(document.read_text("utf-8")), bar.read_bytes()
    whole["bottles"][2]["product_id"] = 10_000
    document.write_text(json.dumps(whole), encoding="utf-8")
    assert barkeep("--bar", bar, "import", document, "--yes").refusal == (
        f"{document} cannot be used: at bottles[2].product_id: 10000 is none of the products."
    )
    whole["bottles"][2]["product_id"] = 1
    circle = {"key": "gin", "name": "gin", "parents": ["london-dry-gin"]}
    whole["own_ingredients"] = [circle]
    document.write_text(json.dumps(whole), encoding="utf-8")
    assert barkeep("--bar", bar, "import", document, "--yes").refusal == (
        f"{document} cannot be used: what it says of ingredients: ingredients.toml: "
        "the family tree runs in a circle: gin → london-dry-gin → gin."
    )
    assert bar.read_bytes() == before


@pytest.mark.parametrize(
    ("words", "said"),
    [
        (("--dry-run",), "--dry-run is for parts of a bar; it holds a whole one"),
        (("--take-theirs", "--yes"), "--take-theirs is for parts of a bar; it holds a whole one"),
        (("--rest", "x.csv"), "--rest is for parts of a bar; it holds a whole one"),
    ],
)
def test_what_is_for_parts_is_refused(barkeep, bar, document, words, said):
    refusal = barkeep("--bar", bar, "import", document, *words).refusal
    assert refusal == f"{document} cannot be used: {said}."


def test_everything_is_no_part(barkeep, bar, tmp_path):
    target = tmp_path / "x.json"
    refusal = barkeep("--bar", bar, "export", target, "Night Sleeper", "--everything").refusal
    assert (
        refusal == f"{target} cannot be used: --everything writes the whole bar and no part of it."
    )
    assert not target.exists()


def test_removed_things_come_along(barkeep, bar, tmp_path):
    barkeep("--bar", bar, "product", "add", "Old gin", "--ingredient", "gin")
    barkeep("--bar", bar, "product", "remove", "Old gin")
    document = tmp_path / "all.json"
    barkeep("--bar", bar, "export", "--everything", document)
    products = json.loads(document.read_text("utf-8"))["products"]
    assert [each["name"] for each in products if each["removed"]] == ["Old gin"]
