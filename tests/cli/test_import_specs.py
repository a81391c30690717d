"""`barkeep import` with documents of specs."""

from __future__ import annotations

import json

import pytest

FOG = "Fog Lamp\n60 ml London dry gin\n20 ml lemon juice\n\nShake with ice.\n"
RECIPE = {
    "@context": "https://schema.org",
    "@type": "Recipe",
    "name": "Fog Lamp",
    "recipeIngredient": ["60 ml London dry gin", "20 ml lemon juice"],
    "recipeInstructions": ["Shake with ice."],
}
DOCUMENTS = {
    "fog.txt": FOG,
    "fog.md": "# Fog Lamp\n\n- 60 ml London dry gin\n- 20 ml lemon juice\n\n1. Shake with ice.\n",
    "fog.json": json.dumps(RECIPE),
    "fog.jsonld": json.dumps({"@graph": [RECIPE]}),
    "fog.html": f'<html><script type="application/ld+json">{json.dumps(RECIPE)}</script></html>',
    "fog.csv": "spec,line,method\nFog Lamp,60 ml London dry gin,Shake with ice.\n"
    "Fog Lamp,20 ml lemon juice,\n",
}


def specs_of(barkeep, bar) -> list[str]:
    return [
        each["name"] for each in barkeep("--bar", bar, "spec", "list", "--json").answer["specs"]
    ]


@pytest.fixture
def written(tmp_path):
    def write(name: str, text: str):
        path = tmp_path / name
        path.write_text(text, encoding="utf-8")
        return path

    return write


@pytest.mark.parametrize("name", DOCUMENTS)
def test_every_kind_of_document_comes_in(barkeep, bar, written, name):
    file = written(name, DOCUMENTS[name])
    answer = barkeep("--bar", bar, "import", file, "--json").answer
    assert answer == {
        "added": ["Fog Lamp"],
        "replaced": [],
        "kept": [],
        "same": [],
        "differing": [],
        "remarks": [],
        "left_aside": [],
    }
    assert "20 ml lemon juice" in barkeep("--bar", bar, "spec", "show", "Fog Lamp").out
    assert barkeep("--bar", bar, "undo").out == "Undone: Import 1 spec.\n"
    assert "Fog Lamp" not in specs_of(barkeep, bar)


def test_a_dry_run_says_the_same_and_writes_nothing(barkeep, bar, written):
    before = bar.read_bytes()
    ran = barkeep("--bar", bar, "import", written("fog.txt", FOG), "--dry-run")
    assert (ran.status, ran.out) == (0, "1 spec would be added (Fog Lamp).\n")
    assert bar.read_bytes() == before


def test_what_differs_is_shown_and_kept_unless_theirs_is_to_be_taken(barkeep, bar, written):
    barkeep("--bar", bar, "import", written("fog.txt", FOG))
    other = written("other.txt", FOG.replace("60 ml", "45 ml").replace("Shake", "Stir"))
    ran = barkeep("--bar", bar, "import", other)
    assert "60 ml London dry gin  ->  45 ml London dry gin" in ran.out
    assert "method: Shake with ice.  ->  Stir with ice." in ran.out
    assert ran.out.endswith("1 spec kept as in the bar (Fog Lamp).\n")
    answer = barkeep("--bar", bar, "import", other, "--take-theirs", "--json").answer
    assert answer["replaced"] == ["Fog Lamp"]
    assert answer["differing"] == [
        {
            "spec": "Fog Lamp",
            "where": "line 1",
            "classic": False,
            "lines": [
                {
                    "mine": "60 ml London dry gin",
                    "theirs": "45 ml London dry gin",
                    "change": "amount",
                },
                {"mine": "20 ml lemon juice", "theirs": "20 ml lemon juice", "change": "same"},
            ],
            "fields": [{"field": "method", "mine": "Shake with ice.", "theirs": "Stir with ice."}],
        }
    ]
    assert barkeep("--bar", bar, "import", other).out == "1 spec there already.\n"


def test_a_classic_stays_even_so(barkeep, bar, written):
    file = written("n.txt", "Negroni\n60 ml London dry gin\n")
    answer = barkeep("--bar", bar, "import", file, "--take-theirs", "--json").answer
    assert (answer["kept"], answer["replaced"]) == (["Negroni"], [])
    assert answer["differing"][0]["classic"] is True


def test_each_problem_is_said_with_its_place_and_nothing_comes_in(barkeep, bar, written):
    before = bar.read_bytes()
    file = written("fog.txt", f"{FOG}---\nMoss\n60 ml moss\n")
    assert barkeep("--bar", bar, "import", file).refusal.startswith(f"{file}, line 8, column 7: no")
    recipe = {**RECIPE, "recipeIngredient": ["60 ml London dry gin", "20 ml moss"]}
    page = written("fog.json", json.dumps(recipe, indent=1))
    said = barkeep("--bar", bar, "import", page, "--json").refusal
    row = page.read_text("utf-8").splitlines()
    at = next(number for number, each in enumerate(row, 1) if "moss" in each)
    assert said.startswith(f"{page}, line {at}, column {row[at - 1].index('moss') + 1}: ")
    assert "ingredient 2 of “Fog Lamp”" in said
    for name, text, told in (
        ("a.json", '{\n "x": ]', "a.json, line 2, column 7: it is not JSON: "),
        ("b.html", "<p>nothing</p>", "no schema.org Recipe"),
        ("c.md", "# Only a heading\n", "no spec"),
        ("d.csv", "spec,line,serves\nFog,60 ml gin,none\n", "line 2, column 3"),
    ):
        assert told in barkeep("--bar", bar, "import", written(name, text)).refusal
    assert bar.read_bytes() == before


def test_a_remark_is_given(barkeep, bar, written):
    file = written("fog.json", json.dumps({**RECIPE, "isBasedOn": "Long Gone"}))
    answer = barkeep("--bar", bar, "import", file, "--json").answer
    assert [each["spec"] for each in answer["remarks"]] == ["Fog Lamp"]
    assert "Long Gone" in answer["remarks"][0]["remark"]


def test_the_options_are_for_specs(barkeep, bar, written):
    file = written("gin.csv", "product,ingredient,size\nGin,gin,700\n")
    for option in ("--dry-run", "--take-theirs"):
        assert "it lists bottles" in barkeep("--bar", bar, "import", file, option).refusal
