"""`barkeep import` and `spec read`: columns that must be said, and what was left aside."""

from __future__ import annotations

import json

import pytest

LIST = "A,B,C,D\nSlip Coach,2,oz,gin\nSlip Coach,1,oz,lime juice\n"
WIDE = "Drinks,a,b,c,d\nSlip Coach,2 oz,gin,1 oz,lime juice\nUp,3 oz,rum,1 oz,soda water\n"
RECIPE = {
    "@type": "Recipe",
    "name": "Fog Lamp",
    "image": "https://counter.example/fog.jpg",
    "recipeIngredient": [{"name": "gin", "value": 2, "unitText": "oz"}, "1 oz lemon juice"],
}


@pytest.fixture
def written(tmp_path):
    def write(name: str, text: str):
        path = tmp_path / name
        path.write_text(text, encoding="utf-8")
        return path

    return write


def test_the_refusal_holds_the_answer_that_is_pasted_back(barkeep, bar, written):
    file, before = written("list.csv", LIST), bar.read_bytes()
    said = barkeep("--bar", bar, "import", file).refusal
    assert "it is not clear which column is what" in said
    assert "4 D (“gin” …)" in said
    columns = said.split('--columns "')[1].split('"')[0]
    assert columns == "name=1,amount=2,unit=3,ingredient=4"
    assert bar.read_bytes() == before
    answer = barkeep("--bar", bar, "import", file, "--columns", columns, "--json").answer
    assert (answer["added"], answer["left_aside"]) == (["Slip Coach"], [])
    assert "1 oz lime juice" in barkeep("--bar", bar, "spec", "show", "Slip Coach").out


def test_columns_are_named_by_title_and_numbered_where_a_row_is_a_drink(barkeep, bar, written):
    columns = "name=drinks, amount1=2, ingredient1=3, amount2=c, ingredient2=5"
    file = written("wide.csv", WIDE)
    answer = barkeep("--bar", bar, "import", file, "--columns", columns, "--json").answer
    assert answer["added"] == ["Slip Coach", "Up"]
    (spec,) = barkeep("--bar", bar, "spec", "show", "Up", "--json").answer["specs"]
    assert [each["text"] for each in spec["lines"]] == ["3 oz rum", "1 oz soda water"]


def test_a_column_that_nothing_is_read_from_is_said(barkeep, bar, written):
    file = written("list.csv", "name,ingredient,straw\nSlip,2 oz gin,green\n")
    out = barkeep("--bar", bar, "import", file, "--dry-run").out
    assert "Left aside: the column “straw” (green)." in out


@pytest.mark.parametrize(
    ("columns", "why"),
    [
        ("name=1,amount=2", "say which column holds the ingredients"),
        ("ingredient=9", "there is no column “9”"),
        ("ingredient=4,colour=1", "“colour” is none of"),
        ("ingredient=4,amount=4", "column 4 is there twice"),
        ("ingredient=4,ingredient=3", "number them"),
        ("gin", "“gin” is not like “amount=2”"),
    ],
)
def test_columns_that_cannot_be_meant_are_refused(barkeep, bar, written, columns, why):
    assert (
        why
        in barkeep("--bar", bar, "import", written("list.csv", LIST), "--columns", columns).refusal
    )


def test_a_text_beyond_the_last_column_is_a_problem_at_its_place(barkeep, bar, written):
    file = written("list.csv", "name,ingredient,method\nSlip,2 oz gin,Shake, strain.\n")
    said = barkeep("--bar", bar, "import", file).refusal
    assert "line 2, column 4: “strain.” stands beyond the last column" in said


def test_what_a_recipe_says_beside_its_spec_is_said_and_is_in_json(barkeep, bar, written):
    file = written("fog.json", json.dumps(RECIPE))
    aside = [{"spec": "Fog Lamp", "what": "image (https://counter.example/fog.jpg)"}]
    answer = barkeep("--bar", bar, "import", file, "--dry-run", "--json").answer
    assert (answer["added"], answer["left_aside"]) == (["Fog Lamp"], aside)
    out = barkeep("--bar", bar, "import", file).out
    assert "Fog Lamp: left aside: image (https://counter.example/fog.jpg)." in out


def test_spec_read_reads_every_document(barkeep, written):
    answer = barkeep("spec", "read", written("fog.json", json.dumps(RECIPE)), "--json").answer
    (spec,) = answer["specs"]
    assert [each["text"] for each in spec["lines"]] == ["2 oz gin", "1 oz lemon juice"]
    assert answer["left_aside"][0]["spec"] == "Fog Lamp"
    shown = barkeep("spec", "read", written("lamp.txt", "Lamp\n2 oz gin\nGarnish: a flag\n")).out
    assert "No ingredient is called “a flag”; it stays a garnish in words." in shown


def test_a_garnish_in_words_is_published_everywhere(barkeep, bar, written):
    barkeep("--bar", bar, "import", written("lamp.txt", "Lamp\n2 oz gin\nGarnish: a paper flag\n"))
    for form in ("text", "markdown", "html", "json", "json-ld"):
        text = barkeep("--bar", bar, "publish", "Lamp", "--as", form).out
        plain = text.replace("</strong>", "").replace("<strong>", "")
        assert "Garnish: a paper flag" in plain, form
        assert "Notes" not in text, form
