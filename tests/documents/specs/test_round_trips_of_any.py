"""Any spec, made up of lines as people write them, comes back from every document as it was."""

from __future__ import annotations

import json
from dataclasses import replace
from string import ascii_letters

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from barkeep.application.knowledge import shipped
from barkeep.documents.specs.files import EXPORT_FORMATS, exported, specs_in
from barkeep.domain.amounts.units import US_UNITS
from barkeep.domain.spec_text.text import read_specs
from barkeep.domain.specs.spec import Line
from tests.worlds import without_id

LINES = (
    *("2 oz London dry gin", "¾ oz lemon juice", "22.5 ml lime juice", "2-3 dashes orange bitters"),
    *("1 1/2 oz rye or bourbon", "1 egg white (optional)", "soda water to top", "5 cl dark rum"),
    *("8 mint leaves", "1 barspoon absinthe", "2 oz gin (at least 45 %)", "Garnish: lemon peel"),
    *("Garnish: a paper lantern", "Garnish: lime wedge, cut thick", "1 tsp sugar"),
)
WORDS = st.lists(
    st.text(ascii_letters + "éüß", min_size=2, max_size=8), min_size=1, max_size=4
).map(" ".join)
NAMES = WORDS.map(lambda words: f"The {words}")
SENTENCES = WORDS.map(lambda words: f"Shake {words}.")


@st.composite
def texts_of_specs(draw) -> str:
    lines = draw(st.lists(st.sampled_from(LINES), min_size=1, max_size=6))
    rows = [draw(NAMES), "2 oz gin", *lines]
    for field in ("Glass", "Ice", "Credit", "Source"):
        if draw(st.booleans()):
            rows.append(f"{field}: {draw(WORDS)}")
    rows += [f"Serves: {draw(st.integers(2, 12))}"] * draw(st.booleans())
    rows += [f"Tags: {', '.join(sorted(draw(st.sets(WORDS, min_size=1, max_size=3))))}"] * draw(
        st.booleans()
    )
    rows += [f"Notes: {each}" for each in draw(st.lists(SENTENCES, max_size=2))]
    paragraphs = draw(st.lists(st.lists(SENTENCES, min_size=1, max_size=2), max_size=2))
    return "\n".join(rows) + "\n" + "".join("\n" + "\n".join(each) + "\n" for each in paragraphs)


@pytest.mark.parametrize("suffix", EXPORT_FORMATS)
@settings(max_examples=30)
@given(text=texts_of_specs(), other=texts_of_specs())
def test_every_field_of_it_comes_back(suffix, text, other):
    tree = shipped().tree
    specs = [read_specs(each, tree)[0].spec for each in (text, other)]
    if None in specs or specs[0].name == specs[1].name:
        return
    again, document = specs_in(exported(specs, f"a{suffix}", tree), f"a{suffix}", tree, US_UNITS)
    assert [each.problems for each in again] == [(), ()]
    assert [each.spec for each in again] == specs
    assert document.left_aside == ()


AMOUNTS = st.none() | st.floats(0.01, 500).map(lambda amount: float(f"{amount:.6g}"))


@st.composite
def odd_lines(draw) -> Line:
    """Lines whose text says something else than they hold, as after somebody put them right."""
    return Line(
        text=draw(st.sampled_from(LINES)),
        ingredient=draw(st.sampled_from(("gin", "lemon-juice", "orange-peel", "mint-leaf"))),
        amount=draw(AMOUNTS),
        amount_high=draw(AMOUNTS),
        unit=draw(st.sampled_from((None, "oz", "ml", "dash", "each", "part"))),
        quantity=draw(AMOUNTS),
        optional=draw(st.booleans()),
        garnish=draw(st.booleans()),
        note=draw(st.just("") | WORDS),
        min_abv_percent=draw(st.none() | st.floats(1, 90)),
        alternatives=draw(st.sampled_from(((), ("vodka",), ("vodka", "lime-juice")))),
    )


@given(text=texts_of_specs(), lines=st.lists(odd_lines(), min_size=1, max_size=4))
def test_our_own_json_loses_nothing_of_any_line(text, lines):
    tree = shipped().tree
    (read,) = read_specs(text, tree)
    if read.spec is None:
        return
    spec = replace(read.spec, lines=tuple(lines))
    again, _ = specs_in(exported([spec], "a.json", tree), "a.json", tree, US_UNITS)
    found = again[0].understood
    assert [without_quantity(each) for each in found.lines] == [
        without_quantity(each) for each in lines
    ]
    assert replace(found, lines=()) == replace(without_id(spec), lines=())


def without_quantity(line: Line) -> Line:
    """A line without what follows from the rest of it, and from what a dash is at a bar."""
    return replace(line, quantity=None)


def test_a_text_that_was_changed_in_the_file_counts(tree):
    (read,) = read_specs("Fog\n2 oz gin\n", tree)
    line = replace(read.spec.lines[0], note="cold")
    whole = json.loads(exported([replace(read.spec, lines=(line,))], "a.json", tree))
    assert whole["specs"][0]["fields"][0]["note"] == "cold"
    whole["specs"][0]["lines"][0] = "3 oz rum"
    again, _ = specs_in(json.dumps(whole), "a.json", tree, US_UNITS)
    assert [(each.ingredient, each.amount) for each in again[0].spec.lines] == [("rum", 3.0)]
