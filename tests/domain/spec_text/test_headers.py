"""What a spec's text says beside its lines: serves, tags, credit, source, and awkward names."""

from __future__ import annotations

from dataclasses import replace

import pytest
from hypothesis import given
from hypothesis import strategies as st

from barkeep.application.knowledge import shipped
from barkeep.domain.amounts.amount import Amount
from barkeep.domain.amounts.units import BarUnits
from barkeep.domain.spec_text.text import (
    MOST_LINES,
    MOST_PROBLEMS,
    MOST_SPECS,
    MOST_STEPS,
    composed,
    read_specs,
    write_spec,
    write_specs,
)
from barkeep.domain.specs.quantities import in_dashes_of, quantity_of
from barkeep.domain.specs.shown_lines import shown_lines
from barkeep.domain.specs.spec import Line, Spec
from barkeep.domain.specs.technique import technique_of
from tests.walked import walked

TREE = shipped().tree
WHOLE = """\
Snow Punch
3 oz rye or bourbon
2 oz each of lemon juice and simple syrup
2 dashes aromatic bitters
Glass: punch cup
Serves: 4
Tags: winter, House, winter
Tags: #punch
Credit: The Signal Box
Source: a notebook
Notes: Good cold.

Stir with ice.
"""


def only(text):
    (read,) = read_specs(text, TREE)
    return read


def test_all_fields_are_read_and_quantities_are_those_of_one_serve():
    read = only(WHOLE)
    assert read.problems == ()
    spec = read.spec
    assert (spec.serves, spec.tags) == (4.0, ("winter", "House", "punch"))
    assert (spec.credit, spec.source, spec.notes) == ("The Signal Box", "a notebook", "Good cold.")
    whisky, lemon, syrup, bitters = spec.lines
    assert (whisky.ingredient, whisky.alternatives) == ("rye-whiskey", ("bourbon",))
    assert (whisky.amount, whisky.quantity) == (3.0, pytest.approx(3 * 29.5735 / 4, abs=0.001))
    assert (lemon.text, syrup.text) == ("2 oz lemon juice", "2 oz simple syrup")
    assert bitters.quantity == pytest.approx(0.4)
    assert [line.row for line in read.lines] == [2, 3, 3, 4]


def test_it_is_written_so_that_it_reads_back():
    spec = only(WHOLE).spec
    text = write_spec(spec, TREE)
    assert only(text).spec == spec
    for said in ("Serves: 4", "Tags: winter, House, punch", "Credit: The", "Source: a notebook"):
        assert said in text


def test_a_choice_is_shown_in_words_and_amounts_are_those_of_the_whole():
    spec = only(WHOLE).spec
    shown = [line.text for line in shown_lines(spec, TREE, "ml")]
    assert shown[0] == "90 ml rye or bourbon"
    assert composed(spec.lines[0], TREE) == "3 oz rye or bourbon"


def test_dashes_of_a_bar_are_shared_among_the_serves():
    spec = only(WHOLE).spec
    own = in_dashes_of(BarUnits(dash_ml=1.0), spec, TREE)
    assert own.lines[3].quantity == pytest.approx(0.5)
    assert in_dashes_of(BarUnits(dash_ml=0.8), spec, TREE) is spec


@walked(
    ("row", "serves", "notes"),
    [
        ("Serves: 4", 4.0, ""),
        ("Serves 4", 4.0, ""),
        ("Makes: 2 drinks", 2.0, ""),
        ("Yield: 6 servings", 6.0, ""),
        ("Serves: about 8", 8.0, ""),
        ("Serves: two", 2.0, ""),
        ("Makes: 1 1/2", 1.5, ""),
        ("Serves: 4-6 people", 4.0, "Serves: 4-6 people"),
        ("Yield: 750 ml", 1.0, "Yield: 750 ml"),
        ("Serves: 12 (in small cups)", 12.0, "Serves: 12 (in small cups)"),
        ("Serves:", 1.0, ""),
    ],
)
def test_a_yield_is_a_number_of_serves_and_nothing_said_is_lost(row, serves, notes):
    read = only(f"Late\n2 oz gin\n{row}\n")
    assert read.problems == ()
    assert (read.spec.serves, read.spec.notes) == (serves, notes)
    assert only(write_spec(read.spec, TREE)).spec == read.spec


@pytest.mark.parametrize(
    ("row", "column", "said"),
    [
        ("Serves: many", 9, "serves cannot be “many”"),
        ("Serves: 0", 9, "serves cannot be “0”"),
        ("Serves: 5000", 9, "from 1 to 1000"),
        ("Serves: -2", 9, "below nothing"),
        ("  Glass: coupe", 10, "“glass” is given twice; it is “rocks” above"),
    ],
)
def test_a_field_that_cannot_be_used_is_told_with_its_place(row, column, said):
    (problem,) = only(f"Late\n2 oz gin\nGlass: rocks\n{row}\n").problems
    assert (problem.line, problem.column) == (4, column)
    assert said in problem.message


def test_a_field_said_twice_in_the_same_words_is_no_problem():
    assert only("Late\n2 oz gin\nGlass: coupe\nGlass: coupe\n").problems == ()


@pytest.mark.parametrize(
    "name",
    [
        "2 oz gin",
        "Ice: a Drink",
        "---",
        "Serves 4",
        "Name: It",
        "Method: None",
        "0 g sugar",
        "By: Us",
    ],
)
@walked(
    "method",
    [
        "2 oz gin",
        "Stir.\n---\nStrain.",
        "Stir.\nGlass: any.\n\nMethod: stir.",
        "Notes: none",
        "=====",
    ],
)
def test_a_name_or_a_method_that_looks_like_something_else_reads_back(name, method):
    spec = replace(only("A\n2 oz gin").spec, name=name, method=method)
    spec = replace(spec, technique=technique_of(method))
    first, second = read_specs(write_specs([spec, spec], TREE), TREE)
    assert (first.problems, first.spec) == ((), spec)
    assert second.spec == spec


def test_a_line_whose_own_text_would_be_a_field_is_written_anew():
    line = Line("Ice: 2 cubes", "ice", 2.0, None, "cube")
    spec = Spec("A", (replace(line), *only("A\n2 oz gin").spec.lines))
    (again, _) = only(write_spec(spec, TREE)).spec.lines
    assert (again.ingredient, again.amount, again.unit) == ("ice", 2.0, "cube")


def test_a_text_that_is_no_spec_is_not_read_for_ever():
    lines = only("Prose\n" + "2 oz gin\n" * (MOST_LINES + 50))
    (problem,) = lines.problems
    assert f"at most {MOST_LINES} ingredients" in problem.message
    assert problem.line == MOST_LINES + 2
    prose = only("Prose\n" + "an odd thing\n" * 900)
    assert len(prose.problems) == MOST_PROBLEMS + 1
    assert prose.problems[-1].line == MOST_PROBLEMS + 2
    method = only("Prose\n2 oz gin\n\n" + "Stir.\n" * (MOST_STEPS + 9))
    (problem,) = method.problems
    assert f"at most {MOST_STEPS} lines of method" in problem.message
    assert problem.line == MOST_STEPS + 4
    fields = only("Prose\n2 oz gin\n" + "".join(f"Glass: {n}\n" for n in range(300)))
    assert len(fields.problems) == MOST_PROBLEMS + 1
    assert "this is the first not told" in fields.problems[-1].message
    tags = only("Prose\n2 oz gin\n" + "".join(f"Tags: t{n}\n" for n in range(60)))
    assert "at most 50 tags" in tags.problems[0].message
    book = read_specs("a\n---\n" * (MOST_SPECS + 5), TREE)
    assert len(book) == MOST_SPECS + 1 and "from here on" in book[-1].problems[0].message


def test_the_likeliest_names_come_with_how_likely_they_are():
    (line,) = only("Late\n2 oz bourban\n").lines
    assert line.known is None and line.guesses[0].key == "bourbon"
    sure = [each.confidence for each in line.guesses]
    assert sure == sorted(sure, reverse=True) and 0.4 < sure[0] < 0.8


WORDS = st.lists(
    st.sampled_from(
        ["signal", "lamp", "Nº 9", "très", "7th", "2 oz gin", "Ice:", "or", "a,b", "(x)"]
    ),
    min_size=1,
    max_size=4,
).map(" ".join)
POURED = sorted(
    key
    for key in TREE
    if TREE[key].unit == "ml" and not TREE[key].family and " or " not in TREE.name(key)
)
METHODS = st.lists(
    st.sampled_from(["Shake.", "2 oz gin", "---", "Glass: x", "Method: y", "", "Serves 4"]),
    max_size=6,
)


@st.composite
def lines(draw, serves):
    key, *others = draw(st.lists(st.sampled_from(POURED), min_size=1, max_size=3, unique=True))
    unit = draw(st.sampled_from(["ml", "cl", "oz", "imp_oz", "dash", "barspoon"]))
    amount = draw(st.none() | st.floats(0.01, 500))
    quantity = None
    if amount is not None:
        whole, _ = quantity_of(Amount(amount, None, unit), TREE[key])
        quantity = float(f"{whole / serves:.12g}")
    line = Line(
        "",
        key,
        amount,
        None,
        None if amount is None else unit,
        quantity,
        draw(st.booleans()),
        note=draw(st.sampled_from(["", "chilled", "cold, then warm"])),
        alternatives=tuple(others),
    )
    return replace(line, text=composed(line, TREE))


@st.composite
def specs(draw):
    serves = draw(st.sampled_from([1.0, 2.0, 4.0, 7.5, 12.0, 0.5]))
    made = draw(st.lists(lines(serves), min_size=1, max_size=4))
    made[0] = replace(made[0], optional=False)
    made[0] = replace(made[0], text=composed(made[0], TREE))
    rows = draw(METHODS)
    method = "\n".join(row for at, row in enumerate(rows) if row or (at and rows[at - 1])).strip()
    tags = draw(st.lists(st.sampled_from(["house", "low proof", "très", "x:y"]), unique=True))
    return Spec(
        draw(WORDS),
        tuple(made),
        method,
        technique_of(method),
        draw(st.just("") | WORDS),
        notes=draw(st.lists(WORDS, max_size=2).map("\n".join)),
        riff_of=draw(st.none() | WORDS),
        serves=serves,
        tags=tuple(tags),
        credit=draw(st.just("") | WORDS),
        source=draw(st.just("") | WORDS),
    )


@given(specs())
def test_every_spec_written_reads_back_whole(spec):
    read = only(write_spec(spec, TREE))
    assert read.problems == ()
    assert read.spec == spec
