"""Specs as CSV: what is written reads back, and what cannot be read is placed."""

from __future__ import annotations

import pytest
from hypothesis import given
from hypothesis import strategies as st

from barkeep.documents.specs.csv import COLUMNS, specs_csv
from barkeep.domain.spec_text.parts import SpecParts
from barkeep.errors import Problem, UnusableFile
from tests.documents.specs.readers import parts_in_csv

HEADER = ",".join(COLUMNS)
LETTERS = st.characters(exclude_categories=("Cs", "Cc", "Zl", "Zp"))


def texts(least=1, without=""):
    """Texts on one line with single spaces, and no line break of any kind."""
    return (
        st.text(LETTERS, max_size=20)
        .map(lambda text: " ".join("".join(c for c in text if c not in without).split()))
        .filter(lambda text: len(text) >= least and len(text.splitlines()) <= 1)
    )


def lists(of):
    return st.lists(of, max_size=4).map(tuple)


@st.composite
def spec_parts(draw):
    method = draw(lists(texts()))
    return SpecParts(
        draw(texts()),
        draw(lists(texts())),
        method,
        draw(texts(0)),
        draw(texts(0)),
        draw(lists(texts())),
        draw(texts(0)),
        draw(st.none() | st.sampled_from((0.5, 1.0, 2.0, 12.0))),
        draw(lists(texts(without=","))),
        draw(texts(0)),
    )


def of_other_names(specs):
    """Rows of one name beside each other are one spec, so neighbours must differ."""
    kept = [spec for n, spec in enumerate(specs) if n == 0 or spec.name != specs[n - 1].name]
    return tuple(kept)


@given(st.lists(spec_parts(), min_size=1, max_size=4).map(of_other_names))
def test_what_is_written_reads_back(specs):
    again = parts_in_csv(specs_csv(specs), "a.csv")
    assert [bare(each) for each in again] == [bare(each) for each in specs]


def bare(parts):
    return {n: getattr(parts, n) for n in parts.__dataclass_fields__ if n not in ("row", "rows")}


def test_one_row_a_line_with_what_there_is_once_in_the_first():
    spec = SpecParts("A", ("2 oz gin", "1 oz lime juice"), ("Shake.", "", "Strain."), "coupe")
    assert specs_csv([spec]).split("\r\n")[:4] == [
        HEADER,
        'A,2 oz gin,"Shake.\n\nStrain.",coupe,,,,,,,',
        "A,1 oz lime juice,,,,,,,,,",
        "",
    ]


def test_columns_in_any_order_and_an_empty_name_is_the_one_above():
    text = "Ingredient;Name;Glass\n2 oz gin;A;coupe\n1 oz lime;;\n60 ml rum;B;\n"
    first, second = parts_in_csv(text, "a.csv")
    assert (first.name, first.lines, first.glass) == ("A", ("2 oz gin", "1 oz lime"), "coupe")
    assert (second.name, second.lines, second.where) == ("B", ("60 ml rum",), "line 4")


@pytest.mark.parametrize(
    ("text", "problem"),
    [
        ("", Problem(1, 1, f"the first line names the columns: {HEADER}")),
        ("spec,glass\nA,coupe\n", Problem(1, 1, "the column “line” is missing")),
        ("spec,line,line\nA,b,c\n", Problem(1, 3, "the column “line” is there twice")),
        ("spec,line\n,2 oz gin\n", Problem(2, 1, "spec is empty")),
        (
            "spec,serves,line\nA,many,2 oz gin\n",
            Problem(2, 2, "serves cannot be “many”: it is a number above nothing"),
        ),
    ],
)
def test_what_cannot_be_read_is_placed(text, problem):
    with pytest.raises(UnusableFile) as refused:
        parts_in_csv(text, "a.csv")
    assert refused.value.problems == (problem,)
