"""Lines as people write them: what each is read as, and that none of their words is lost."""

from __future__ import annotations

import re
from dataclasses import replace

import pytest
from hypothesis import given
from hypothesis import strategies as st

from barkeep.application.knowledge import shipped
from barkeep.domain.amounts.units import unit_named
from barkeep.domain.ingredients.names import ADJECTIVES, match_ingredient
from barkeep.domain.phrases import folded
from barkeep.domain.spec_text.lines import ReadLine, read_line, read_lines
from barkeep.domain.spec_text.text import composed
from tests.domain.spec_text.lines_as_written import (
    AMOUNTS,
    FALSE_FRIENDS,
    SPOKEN,
    UNKNOWN_MAKERS,
    WORDED,
)
from tests.domain.spec_text.lines_led_in import HEDGED, LED_IN, STRANGE
from tests.domain.spec_text.lines_unseen import (
    AS_PEOPLE_SAY_IT,
    AS_THEY_MIGHT,
    MORE_FALSE_FRIENDS,
    UNSEEN,
)
from tests.walked import walked

SURE = 0.8
"""From this confidence on nobody would look at a match again."""


def rows(table: str) -> list[tuple[str, str]]:
    parted = (row.rpartition(" | ") for row in table.strip().splitlines())
    return [(text, said) for text, _, said in parted]


PLACED = [row for row in rows(STRANGE) if "asks" not in row[1]]


def as_said(read: tuple[ReadLine, ...]) -> str:
    """A reading in the tables' form."""
    if any(each.complaints for each in read):
        return "unreadable"
    return " ; ".join(_line_as_said(each.line) for each in read)


def _line_as_said(line) -> str:
    amount = "-" if line.amount is None else f"{line.amount:.4g}"
    amount += "" if line.amount_high is None else f"-{line.amount_high:.4g}"
    keys = " = ".join((line.ingredient, *line.alternatives))
    marks = " garnish" * line.garnish + " optional" * line.optional
    return f"{amount} {line.unit or '-'} {keys}{marks}"


@walked(("text", "said"), [row for table in (AMOUNTS, SPOKEN, WORDED) for row in rows(table)])
def test_a_line_is_read_as_what_it_says(tree, text, said):
    assert as_said(read_lines(text, tree)) == said


@walked(("text", "said"), rows(UNSEEN))
def test_so_is_a_line_that_was_written_before_the_reader_was_tried_on_it(tree, text, said):
    assert as_said(read_lines(text, tree)) == said


@walked(("text", "said"), rows(AS_PEOPLE_SAY_IT) + rows(AS_THEY_MIGHT))
def test_a_line_as_people_say_it_is_read_or_asked_and_its_words_are_kept(tree, text, said):
    wanted, _, words = said.partition(" # ")
    read = read_lines(text, tree)
    assert as_said(read) == wanted
    lines = [each.line for each in read]
    kept = " ".join(part for line in lines for part in (line.note, line.called, *line.stated))
    assert folded(words).replace(",", "") in folded(kept).replace(",", "")


@walked(("text", "said"), rows(HEDGED) + rows(LED_IN) + PLACED)
def test_a_hedge_is_noted_and_a_joining_word_left_behind(tree, text, said):
    wanted, _, note = said.partition(" # ")
    read = read_lines(text, tree)
    assert as_said(read) == wanted
    assert {each.line.note for each in read} == {note}


@walked("text", [row[0] for row in rows(HEDGED) + rows(LED_IN) + PLACED])
def test_composed_anew_from_its_fields_it_reads_back(tree, text):
    for each in read_lines(text, tree):
        line = each.known
        again = read_line(composed(line, tree), tree).known
        assert replace(again, text="") == replace(line, text="")


@pytest.mark.parametrize(
    "text",
    [
        "2 oz gin, served over ice",
        "1 lime, cut into 8 wedges",
        "1 oz lime juice (from 2 limes)",
        "2 oz bourbon (100 proof)",
        "2 oz gin, preferably London dry",
        "1 barspoon (5 ml) absinthe",
        "25 ml (1 oz) gin",
    ],
)
def test_what_a_note_says_of_the_line_itself_is_no_question(tree, text):
    (read,) = read_lines(text, tree)
    assert not read.complaints and (read.line.note or read.line.stated)


@walked(("text", "asked"), [row for row in rows(STRANGE) if "asks" in row[1]])
def test_what_has_no_place_in_a_line_is_asked_about(tree, text, asked):
    told = [complaint for each in read_lines(text, tree) for complaint in each.complaints]
    wanted = asked.removeprefix("asks ")
    assert any(wanted in each.say() for each in told)


@walked(("text", "said"), rows(UNKNOWN_MAKERS))
def test_an_unknown_maker_is_noted_and_its_kind_found_without_being_sure(tree, text, said):
    (read,) = read_lines(text, tree)
    assert as_said((read,)) == said
    assert 0.0 < read.confidence < SURE
    assert read.line.note and read.line.note.split()[0] in text


@walked("text", (FALSE_FRIENDS + MORE_FALSE_FRIENDS).strip().split("\n"))
def test_a_false_friend_is_never_matched_with_confidence(tree, text):
    for read in read_lines(text, tree):
        assert read.known is None or read.confidence < SURE
        assert read.complaints
    assert match_ingredient(text, tree).confidence < SURE


def test_the_tables_hold_as_many_lines_as_they_should():
    assert sum(len(rows(table)) for table in (AMOUNTS, SPOKEN, WORDED, UNKNOWN_MAKERS)) >= 190
    assert len(rows(UNSEEN)) >= 40
    assert len(rows(AS_PEOPLE_SAY_IT)) >= 80
    assert sum(len(rows(table)) for table in (HEDGED, LED_IN, STRANGE)) >= 80
    assert len(MORE_FALSE_FRIENDS.strip().splitlines()) >= 20


NUMBERS = {
    "half",
    "quarter",
    "quarters",
    "third",
    "thirds",
    "two",
    "three",
    "six",
    "twenty",
    "thirty",
    "forty",
    "five",
    "one",
    "couple",
    "few",
    "dozen",
    "equal",
}
OF_UNITS = {"bar", "fl", "fluid", "spoon", "table"}
"""First words of units that have two."""
FILLERS = {
    *ADJECTIVES,
    *("a", "an", "and", "bitter", "each", "for", "from", "garnish"),
    *("of", "or", "the", "to", "topped", "up", "with"),
}
"""Words that mean nothing by themselves, or are told by the line's own marks."""


def words_of(text: str) -> list[str]:
    return re.findall(r"[^\W\d_]+", folded(text))


def unaccounted(text: str, read: tuple[ReadLine, ...], tree) -> list[str]:
    """The words of a line that are in nothing that was made of it."""
    said = [text for each in read for text in (each.matched or "", each.line.note)]
    said += [name for each in read for key in each.line.alternatives for name in names(key, tree)]
    known = {word for each in said for word in words_of(each)} | FILLERS | NUMBERS | OF_UNITS
    if any(each.line.optional for each in read):
        known.add("optional")
    return [
        word
        for word in words_of(text)
        if word not in known and unit_named(word) is None and word.rstrip("s") not in known
    ]


def names(key: str, tree) -> tuple[str, ...]:
    return tree[key].all_names


@walked(
    "text",
    [row[0] for table in (AMOUNTS, SPOKEN, WORDED, UNKNOWN_MAKERS, UNSEEN) for row in rows(table)],
)
def test_every_word_of_a_line_is_in_what_was_made_of_it_or_in_a_complaint(tree, text):
    read = read_lines(text, tree)
    if not any(each.complaints for each in read):
        assert unaccounted(text, read, tree) == []


TREE = shipped().tree
SHARDS = [*"()/,;:–-½", "gin", "or", "and", "each", "of", "2", "1/2", "oz", "egg", "white", "float"]
FRONTS = [
    "2 oz",
    "two ounces of",
    "30 ml (1 oz)",
    "1 oz / 30 ml",
    "top with",
    "",
    "juice of half a",
]
NAMES = [
    "gin",
    "lime",
    "London dry gin",
    "rye or bourbon",
    "lemon or lime juice",
    "crème de cassis",
]
BACKS = ["", ", to top", " (optional)", ", chilled", " float", " 2 oz", ": 60 ml", " (rinse)"]
STRAY = st.sampled_from(
    ["zorble", "of zorble", "zorble, plinth", "(zorble)", "or zorble", "zorble 3"]
)


@given(
    st.sampled_from(FRONTS),
    st.sampled_from(NAMES),
    st.sampled_from(BACKS),
    STRAY,
    st.sampled_from([0, 1, 2, 3]),
)
def test_a_word_that_means_nothing_is_noted_or_complained_of_wherever_it_stands(
    front, name, back, stray, place
):
    parts = [front, name + back]
    parts.insert(place, stray)
    text = (
        " ".join(part for part in parts if part) if place < 3 else f"{front} {name}, {stray}{back}"
    )
    read = read_lines(text, TREE)
    noted = " ".join(each.line.note for each in read)
    assert "zorble" in noted or any(each.complaints for each in read), text


LEAD_INS = ["", "~", "ca. ", "about ", "and ", "+ ", "then ", "(optional) ", "- [ ] ", "Harbour "]

FIGURES = ["", "2", "1 1/2", "¾", "two", "half a", "a"]

MEASURES = ["", "oz", "ml", "dashes", "splash", "barspoon"]

MAKERS = ["", "Grey Ferry", "Old 47", "Smoke of Kelp", "Number Nine", "3 oz", "dash", "triple sec"]

KINDS = ["gin", "London dry gin", "lime juice", "orange bitters", "egg white"]

TRAILS = ["", ", chilled", " (optional)", ", 1 oz honey", " with 3 dashes absinthe", " (30 ml)"]

TRAILS += [" then 10 ml orgeat", ", strained through 2 sieves", ", to top", " 5 cl", ": about 9 cl"]

ALL_MEASURES = {*MEASURES, "cl"}

KNOWN = ["gin", "lime juice", "orange bitters", "egg white", "honey", "absinthe", "orgeat"]


@given(*(st.sampled_from(each) for each in (LEAD_INS, FIGURES, MEASURES, MAKERS, KINDS, TRAILS)))
def test_every_number_unit_and_ingredient_is_in_a_field_or_asked_about(
    lead, figure, measure, maker, kind, trail
):
    front = " ".join(each for each in (figure, measure, "of" * bool(measure), maker, kind) if each)
    text = f"{lead}{front}{trail}"
    every = read_lines(text, TREE)
    told = " ".join(wrong.say() for read in every for wrong in read.complaints)
    if told and any(read.known is None for read in every):
        return  # all of the line is asked about
    notes = " ".join(read.line.note for read in every)
    kept = " ".join((*(str(read.matched) for read in every), notes, told)).casefold()
    spent = [read.line.amount for read in every if read.line.amount is not None]
    for number in re.findall(r"1 1/2|\d+|¾|\btwo\b|\bhalf\b|\bNine\b", text):
        value = {"1 1/2": 1.5, "¾": 0.75, "two": 2.0, "half": 0.5}.get(number) or (
            float(number) if number.isdigit() else None
        )
        if value in spent:
            spent.remove(value)
        else:
            assert number.casefold() in kept, text
    units = [read.line.unit for read in every if read.line.unit]
    for word in re.findall(r"[^\W\d_]+", text):
        if word in ALL_MEASURES and unit_named(word) in units:
            units.remove(unit_named(word))
        elif word in ALL_MEASURES:
            assert word in kept, text
    assert all(name in kept for name in KNOWN if name in text), text
    by_the_piece = kind == "egg white" and not measure
    # How much the pieces are, and three ounces in another unit.
    said_again = r"30 ml|about 9 cl" if by_the_piece or maker == "3 oz" else "30 ml"
    assert told or not re.search(r"oz|ml|dash|cl", re.sub(said_again, "", notes))


@given(st.lists(st.sampled_from(SHARDS)))
def test_a_complaint_is_about_a_place_within_the_line(parts):
    text = " ".join(parts)
    for read in read_lines(text, TREE):
        for complaint in read.complaints:
            assert 0 <= complaint.at <= len(text)
            assert complaint.say()
