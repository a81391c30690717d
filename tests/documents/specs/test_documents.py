"""Foreign and own documents: JSON-LD, web pages, Markdown, JSON."""

from __future__ import annotations

import json
import string
from dataclasses import replace

import pytest
from hypothesis import assume, given
from hypothesis import strategies as st

from barkeep.documents.foreign_text import DEEPEST, read_json
from barkeep.documents.specs.jsonld import (
    is_web_page,
    linked_data,
    plain_words,
    recipe_text,
    recipes_in,
)
from barkeep.documents.specs.markdown import markdown
from barkeep.documents.specs.own_json import is_own_json, parts_in_json, specs_json
from barkeep.domain.spec_text.headers import header_in
from barkeep.domain.spec_text.parts import SpecParts
from barkeep.errors import UnreadableFile
from tests.documents.specs.readers import parts_in_markdown
from tests.walked import walked

PAGE = """<!DOCTYPE html><html><head><title>x</title>
<script type="text/javascript">var a = {"@type": "Recipe"};</script>
<script type="application/ld+json">{ broken </script>
<script type='application/ld+json; charset=utf-8'>
{"@context": "https://schema.org", "@graph": [
  {"@type": "WebPage", "name": "not this"},
  {"@type": ["Thing", "Recipe"], "name": "Late &amp; Letter", "recipeYield": ["2", "2 drinks"],
   "author": [{"@type": "Person", "name": "A. Signalwoman"}],
   "keywords": "night, train",
   "recipeIngredient": ["1&frac12; oz gin", "<b>20 ml</b> lime&nbsp;juice", ""],
   "recipeInstructions": [
     {"@type": "HowToSection",
      "itemListElement": [{"@type": "HowToStep", "text": "<p>Shake.</p>"}]},
     {"@type": "HowToSection", "itemListElement": [{"@type": "HowToStep", "name": "Strain."}]}]}
]}</script></head><body><p>unclosed<p>tags</body></html>"""


def test_a_saved_page_gives_its_recipe():
    (recipe,) = recipes_in(PAGE, "page.html")
    assert recipe == SpecParts(
        name="Late & Letter",
        lines=(
            "1½ oz gin",
            "20 ml  lime juice".replace("  ", " "),
        ),
        method=("Shake.", "", "Strain."),
        serves=2.0,
        tags=("night", "train"),
        credit="A. Signalwoman",
    )


@pytest.mark.parametrize(
    ("recipe", "method"),
    [
        ({"recipeInstructions": "Shake.\nStrain."}, ("Shake.", "Strain.")),
        ({"recipeInstructions": ["Shake.", "Strain."]}, ("Shake.", "Strain.")),
        ({"recipeInstructions": {"@type": "HowToStep", "text": "Shake."}}, ("Shake.",)),
        ({"recipeInstructions": 7}, ("7",)),
        ({"recipeInstructions": None}, ()),
        ({}, ()),
    ],
)
def test_instructions_come_in_many_shapes(recipe, method):
    text = json.dumps([[{"@type": "http://schema.org/Recipe", "name": "X", **recipe}]])
    assert recipes_in(text, "x.json")[0].method == method


@pytest.mark.parametrize("value", ["4 servings", "4", 4, ["4"], {"@type": "Q", "value": 4}])
def test_a_yield_comes_in_many_shapes(value):
    text = json.dumps({"@type": "Recipe", "name": "X", "recipeYield": value})
    assert recipes_in(text, "x.json")[0].serves == 4.0


@walked(
    ("text", "sentence"),
    [
        ("", "it is not JSON: line 1, column 1"),
        ("{'a': 1}", "it is not JSON: line 1, column 2"),
        ("[NaN]", "NaN is no number"),
        ("[" * 200 + "]" * 200, f"line 1: it is nested more than {DEEPEST} deep"),
        ("[" + "9" * 9000 + "]", "it is not JSON"),
        ('{"@type": "Person"}', "there is no schema.org Recipe in it"),
        ("<html><p>nothing", "there is no schema.org Recipe in it"),
        ("<html>" + "<div>" * 200, "its elements are nested more than 150 deep"),
        ('<!DOCTYPE html [<!ENTITY a "b">]><html>', "it defines entities of its own"),
    ],
)
def test_a_document_that_cannot_be_used_is_refused_with_a_sentence(text, sentence):
    with pytest.raises(UnreadableFile) as caught:
        recipes_in(text, "odd.txt")
    assert sentence in str(caught.value)


def test_brackets_within_texts_are_not_depth():
    assert read_json(json.dumps(["[" * 500, '\\"[']), "x") == ["[" * 500, '\\"[']


def test_pages_are_told_from_other_texts():
    assert is_web_page(PAGE)
    assert not is_web_page('{"name": "<b>"}')
    assert len(linked_data(PAGE, "p")) == 2
    assert plain_words("a&nbsp;<i>b</i>") == "a b"


WORDS = st.text(
    alphabet=string.ascii_letters + string.digits + " .,:;*_#-+()[]<>&\\`'/½é", max_size=25
)
TEXT = WORDS.map(lambda text: " ".join(text.split())).filter(bool)
STEPS = st.lists(TEXT, max_size=3).map(tuple)


@st.composite
def parts(draw):
    method = list(draw(STEPS))
    if len(method) > 1 and draw(st.booleans()):
        method.insert(1, "")
    return SpecParts(
        draw(TEXT),
        draw(st.lists(TEXT, min_size=1, max_size=4).map(tuple)),
        tuple(method),
        draw(TEXT),
        draw(TEXT),
        draw(STEPS),
        draw(TEXT),
        draw(st.none() | st.integers(1, 40).map(float)),
        draw(st.lists(st.text(string.ascii_lowercase, min_size=1), max_size=2).map(tuple)),
        draw(TEXT),
    )


def without_place(spec):
    return replace(spec, row=0, number=0)


@given(st.lists(parts(), min_size=1, max_size=3))
def test_what_is_written_as_json_ld_reads_back(specs):
    assert list(recipes_in(recipe_text(specs), "x")) == specs


@given(st.lists(parts(), min_size=1, max_size=3))
def test_what_is_written_as_json_reads_back(specs):
    text = specs_json(specs)
    assert is_own_json(text)
    assert [without_place(each) for each in parts_in_json(text, "x")] == specs


@given(st.lists(parts(), min_size=1, max_size=3))
def test_what_is_written_as_markdown_reads_back(specs):
    assume(not any(header_in(f"{each.name}: x") for each in specs[1:]))  # a drink called *By*
    assert [without_place(each) for each in parts_in_markdown(markdown(specs))] == specs


def test_markdown_as_people_write_it():
    text = (
        "# **Snow** Plough drinks\n\n## Drift Fence\n_for two_\n\n"
        "* 2 oz gin\n* 1 oz [lime](http://x)\n\n1. Shake.\n2. Strain.\n\n"
        "## White Cutting\n### Ingredients:\n- 1 oz rye\n### Directions\nStir.\n"
    )
    first, second = parts_in_markdown(text)
    assert (first.name, first.lines, first.method) == (
        "Drift Fence",
        ("2 oz gin", "1 oz lime"),
        ("Shake.", "Strain."),
    )
    assert first.notes == ("for two",)
    assert (second.lines, second.method) == (("1 oz rye",), ("Stir.",))


def test_a_numbered_ingredient_behind_bullets_is_an_ingredient():
    text = "# Drift Fence\n- 2 oz gin\n- 1 oz lime\n1. 2 dashes bitters\n2. Shake\n3. Strain\n"
    (found,) = parts_in_markdown(text)
    assert found.lines == ("2 oz gin", "1 oz lime", "2 dashes bitters")
    assert found.method == ("Shake", "Strain")


@pytest.mark.parametrize(
    "second", ["- 2 oz rum\n", "- rum\n- lime\n", "rum\n## Method\n1. Shake\n"]
)
def test_a_drink_called_by_is_no_credit_of_the_one_before(second):
    found = parts_in_markdown(f"# Drift Fence\n- 2 oz gin\n\n# By\n{second}")
    assert [(each.name, each.credit) for each in found] == [("Drift Fence", ""), ("By", "")]


def test_whose_a_drink_is_stands_under_by():
    (found,) = parts_in_markdown("# Drift Fence\n- 2 oz gin\n\n## By\nthe Pellow sisters\n")
    assert found.credit == "the Pellow sisters"


@pytest.mark.parametrize(
    ("whole", "sentence"),
    [
        ([], "its “format” is not “barkeep-specs”"),
        ({"format": "barkeep-specs", "version": 9}, "its version is 9; this barkeep reads 1"),
        ({"format": "barkeep-specs", "version": 1, "specs": {}}, "“specs” must be a list"),
        ({"specs": [7]}, "spec 1 must be an object"),
        ({"specs": [{"name": 7}]}, "spec 1: “name” must be a text"),
        ({"specs": [{}, {"lines": "gin"}]}, "spec 2: “lines” must be a list of texts"),
        ({"specs": [{"serves": "two"}]}, "spec 1: “serves” must be a number"),
    ],
)
def test_own_json_that_is_wrong_names_the_place(whole, sentence):
    if isinstance(whole, dict):
        whole = {"format": "barkeep-specs", "version": 1, **whole}
    with pytest.raises(UnreadableFile, match=sentence):
        parts_in_json(json.dumps(whole), "x.json")
