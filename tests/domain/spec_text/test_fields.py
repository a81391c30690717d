"""A line in its fields and its text again from these."""

from __future__ import annotations

from dataclasses import replace

import pytest
from hypothesis import given
from hypothesis import strategies as st

from barkeep.domain.spec_text.fields import LineFields, fields_of, text_of
from barkeep.domain.spec_text.lines import read_line
from barkeep.domain.specs.spec import Line
from tests.domain.spec_text.lines_as_written import AMOUNTS, SPOKEN, UNKNOWN_MAKERS, WORDED
from tests.domain.spec_text.lines_unseen import UNSEEN
from tests.walked import walked

WRITTEN = "\n".join((AMOUNTS, SPOKEN, WORDED, UNKNOWN_MAKERS, UNSEEN))
LINES = [row.partition(" | ")[0] for row in WRITTEN.splitlines() if " | " in row]


def rest(**said):
    return Line("", "", **said)


@walked(
    ("text", "fields"),
    [
        ("60 ml London dry gin", LineFields("60", "ml", "London dry gin")),
        ("1½ oz London dry gin", LineFields("1½", "oz", "London dry gin")),
        ("1 1/2 oz gin, cold", LineFields("1 1/2", "oz", "gin", rest(note="cold"))),
        (
            "2 dashes orange bitters (optional)",
            LineFields("2", "dashes", "orange bitters", rest(optional=True)),
        ),
        ("22-30 ml lime juice, sour", LineFields("22-30", "ml", "lime juice", rest(note="sour"))),
        ("- 60ml gin", LineFields("60", "ml", "gin")),
        ("soda water, to top", LineFields("", "", "soda water", rest(note="to top"))),
        ("45 ml rum (at least 50 %)", LineFields("45", "ml", "rum", rest(min_abv_percent=50.0))),
        ("3 mint leaves", LineFields("3", "", "mint leaves")),
    ],
)
def test_a_line_comes_apart_in_its_own_words(tree, text, fields):
    assert fields_of(read_line(text, tree), tree) == fields


def test_a_garnish_says_so_again(tree):
    read = read_line("lemon peel", tree, garnish=True)
    read = replace(read, line=replace(read.line, text="Garnish: lemon peel"))
    fields = fields_of(read, tree)
    assert fields == LineFields("", "", "lemon peel", rest(garnish=True))
    assert text_of(fields) == "Garnish: lemon peel"


@pytest.mark.parametrize(
    "text", ["60 ml zzyzx", "60 zzyzx of moss, cold (optional)", "zzyzx", "60 ml"]
)
def test_a_line_that_cannot_be_read_keeps_every_word(tree, text):
    fields = fields_of(read_line(text, tree), tree)
    assert text_of(fields) == text


@walked("text", LINES)
def test_every_line_that_people_write_reads_back_from_its_fields(tree, text):
    read = read_line(text, tree)
    fields = fields_of(read, tree)
    before = read.known
    if before is None or read.complaints:
        return
    plain = replace(fields, rest=replace(fields.rest, garnish=False))
    again = read_line(text_of(plain), tree, garnish=before.garnish).known
    assert replace(again, text="") == replace(before, text="")


words = st.text(st.sampled_from("abc gin lemon60ml½/,.-()%"), max_size=40)


@given(words, words)
def test_nothing_that_can_be_typed_makes_it_fail(tree, first, second):
    read = read_line(f"{first} {second}", tree)
    assert isinstance(text_of(fields_of(read, tree)), str)


def test_one_field_changed_leaves_the_others_as_they_are_written(tree):
    read = read_line("1½ oz London dry gin, cold", tree)
    fields = fields_of(read, tree)
    fields = replace(fields, rest=replace(fields.rest, optional=True))
    assert text_of(fields) == "1½ oz London dry gin, cold (optional)"
