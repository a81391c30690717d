"""How cards are laid out on sheets."""

from __future__ import annotations

import pytest
from hypothesis import given
from hypothesis import strategies as st

from barkeep.documents.printed.paper import (
    FITS_MM,
    Grid,
    Size,
    cut_marks,
    grid_for,
    read_sizes,
    shipped_sizes,
    size_named,
)
from barkeep.errors import KnowledgeError

LENGTHS = st.floats(min_value=20, max_value=400)

SIZES = st.builds(lambda w, h: Size("a", "A", w, h), LENGTHS, LENGTHS)


@pytest.mark.parametrize(
    ("paper", "card", "each", "landscape"),
    [
        ("a4", "a6", 4, False),
        ("a4", "a5", 2, True),
        ("letter", "a6", 2, False),
        ("letter", "index-3x5", 4, False),
        ("letter", "half-letter", 2, True),
        ("a5", "half-letter", 1, False),
    ],
)
def test_how_many_a_sheet_takes(paper, card, each, landscape):
    grid = grid_for(size_named("paper", paper), size_named("card", card))
    assert grid.each == each
    assert (grid.sheet.width_mm > grid.sheet.height_mm) == landscape


def test_a_card_larger_than_the_paper_is_its_own_sheet():
    card = size_named("card", "half-letter")
    assert grid_for(size_named("paper", "a5"), card) == Grid(card, card, 1, 1)


@given(SIZES, SIZES)
def test_cards_lie_on_their_sheet_and_apart(paper, card):
    grid = grid_for(paper, card)
    corners = [grid.corner(number) for number in range(grid.each)]
    for left, top in corners:
        assert left >= -FITS_MM and top >= -FITS_MM
        assert left + card.width_mm <= grid.sheet.width_mm + FITS_MM
        assert top + card.height_mm <= grid.sheet.height_mm + FITS_MM
    assert len({(round(left, 3), round(top, 3)) for left, top in corners}) == grid.each


@given(SIZES, SIZES)
def test_marks_lie_on_the_sheet_and_on_cuts(paper, card):
    grid = grid_for(paper, card)
    xs = [grid.left_mm + n * card.width_mm for n in range(grid.columns + 1)]
    ys = [grid.top_mm + n * card.height_mm for n in range(grid.rows + 1)]
    for mark in cut_marks(grid):
        upright = mark.x1_mm == mark.x2_mm
        assert upright != (mark.y1_mm == mark.y2_mm)
        assert (mark.x1_mm in xs) if upright else (mark.y1_mm in ys)
        assert -FITS_MM <= mark.x1_mm <= mark.x2_mm <= grid.sheet.width_mm + FITS_MM
        assert -FITS_MM <= mark.y1_mm <= mark.y2_mm <= grid.sheet.height_mm + FITS_MM


def test_four_quarters_of_a_sheet_are_cut_along_two_lines():
    grid = grid_for(size_named("paper", "a4"), size_named("card", "a6"))
    upright = {mark.x1_mm for mark in cut_marks(grid) if mark.x1_mm == mark.x2_mm}
    assert upright == {105.0}


def test_a_card_on_a_sheet_of_its_own_has_no_marks():
    card = size_named("card", "a6")
    assert cut_marks(Grid(card, card, 1, 1)) == ()


def test_every_kind_has_its_sizes():
    assert [len(sizes) for sizes in shipped_sizes().values()] == [4, 5, 3]


@pytest.mark.parametrize(
    ("text", "reason"),
    [
        ("[paper.a4]\n", "is missing"),
        ("[paper.a4]\ntitle = 'A'\nwidth_mm = 5\nheight_mm = 9\n", "20 or more"),
        ("[screen.a]\n", "no such entry"),
        ("paper = 1\n", "paper: write it as a table"),
        ("", "paper: write at least one"),
    ],
)
def test_a_broken_file_names_its_place(text, reason):
    with pytest.raises(KnowledgeError, match=reason):
        read_sizes(text)
