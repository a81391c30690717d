"""Amounts behind a hedge or a lead-in, from `spec read` and `spec add` to `batch`."""

from __future__ import annotations

import pytest

HEDGED = """Down Distant
~2 oz gin
and 3/4 oz lime juice
(optional) 2 dashes saline solution
- [ ] approx. 15 ml simple syrup
Garnish: lemon peel

Shake with ice.
"""

SWALLOWED = """Up Distant
60 ml gin (with 1 oz lime juice)
Harbour 2 oz rye
2 oz Old 47 bourbon
2 oz gin (and a drop of honey)

Shake with ice.
"""

UNSAID = "Bare Post\n2 oz gin\nsimple syrup, as it needs\n1 cup raspberries\n\nShake with ice.\n"


@pytest.fixture
def write(tmp_path):
    def written(text):
        path = tmp_path / "specs.txt"
        path.write_text(text, encoding="utf-8")
        return path

    return written


def test_each_amount_is_read_its_hedge_noted_and_optional_kept(barkeep, write):
    (spec,) = barkeep("spec", "read", write(HEDGED), "--json").answer["specs"]
    assert spec["problems"] == []
    read = [(each["amount"], each["unit"], each["ingredient"]) for each in spec["lines"][:4]]
    assert read == [
        (2.0, "oz", "Gin"),
        (0.75, "oz", "Lime juice"),
        (2.0, "dash", "Saline solution"),
        (15.0, "ml", "Simple syrup"),
    ]
    assert [each["note"] for each in spec["lines"][:4]] == ["about", "", "", "approx."]
    assert [each["optional"] for each in spec["lines"][:4]] == [False, False, True, False]


def test_what_has_no_place_is_named_where_it_stands_and_nothing_is_added(barkeep, write, bar):
    path, before = write(SWALLOWED), bar.read_bytes()
    shown = barkeep("spec", "read", path).out
    assert "line 2, column 17: “1 oz” is a second amount" in shown
    assert "line 2, column 22: “lime juice” is another ingredient" in shown
    assert "line 3, column 9: “2 oz” was not understood as the amount" in shown
    assert "line 4, column 10: “47” stands where only a maker's words may" in shown
    assert "line 5, column 15: “a drop” is a second amount" in shown
    refusal = barkeep("--bar", bar, "spec", "add", path).refusal
    assert "line 3, column 9: “2 oz” was not understood as the amount" in refusal
    assert bar.read_bytes() == before


def test_a_batch_pours_the_hedged_lines_and_names_what_it_leaves_out(barkeep, write, bar):
    barkeep("--bar", bar, "spec", "add", write(HEDGED))
    answer = barkeep("--bar", bar, "batch", "Down Distant", "--serves", "10", "--json").answer
    poured = {each["ingredient"] for each in answer["lines"]}
    assert len(answer["lines"]) == 3 and {"Lime juice", "Simple syrup"} <= poured
    assert answer["left_out"] == [
        {
            "ingredient": "Saline solution",
            "as_written": "(optional) 2 dashes saline solution",
            "why": "optional",
        },
        {"ingredient": "Lemon peel", "as_written": "Garnish: lemon peel", "why": "garnish"},
    ]
    shown = barkeep("--bar", bar, "batch", "Down Distant", "--serves", "10").out
    assert "Not in the batch: “(optional) 2 dashes saline solution”, for it is optional." in shown
    assert "Not in the batch: “Garnish: lemon peel”, for it is a garnish" in shown


def test_a_line_without_an_amount_is_named_by_the_batch(barkeep, write, bar):
    barkeep("--bar", bar, "spec", "add", write(UNSAID))
    shown = barkeep("--bar", bar, "batch", "Bare Post", "--serves", "10").out
    assert "Not in the batch: “simple syrup, as it needs”, for it gives no amount." in shown
    assert "“1 cup raspberries”, for how much its amount comes to is not known." in shown


def test_a_shoot_its_run_sheet_and_its_shopping_name_what_they_do_not_count(barkeep, write, bar):
    text = "Bare Post\n2 oz gin\nsimple syrup, as it needs\n(optional) 1 dash absinthe\n\nShake.\n"
    barkeep("--bar", bar, "spec", "add", write(text))
    plan = ("shoot", "plan", "Bare night", "--on", "2099-01-02", "--drink", "Bare Post=0+2+0")
    assert barkeep("--bar", bar, *plan).status == 0
    said = (
        "90 ml a serve is guessed in Bare Post: “simple syrup, as it needs”, "
        "for it gives no amount.",
        "Not counted in Bare Post: “(optional) 1 dash absinthe”, for it is optional.",
    )
    for words in (
        ("shoot", "check", "Bare night"),
        ("shoot", "show", "Bare night", "--run-sheet"),
        ("buy",),
    ):
        shown = " ".join(barkeep("--bar", bar, *words).out.split())
        assert all(each in shown for each in said), words
    for words in (("shoot", "check", "Bare night"), ("buy",)):
        answer = barkeep("--bar", bar, *words, "--json").answer
        assert list(said) == answer["not_counted"]
