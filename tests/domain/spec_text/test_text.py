"""Specs as plain text, both ways."""

from __future__ import annotations

from dataclasses import replace

import pytest
from hypothesis import given
from hypothesis import strategies as st

from barkeep import resource_files
from barkeep.documents.knowledge import read_tree
from barkeep.domain.amounts.amount import Amount
from barkeep.domain.ingredients.composition import read_portions, shipped_portions
from barkeep.domain.spec_text.lines import read_line
from barkeep.domain.spec_text.text import composed, names_twice, read_specs, write_spec, write_specs
from barkeep.domain.specs.quantities import quantity_of
from barkeep.domain.specs.spec import Line, Spec
from barkeep.domain.specs.technique import technique_of
from barkeep.errors import KnowledgeError
from tests.walked import walked

_TREE = read_tree(
    resource_files.read_text("ingredients.toml"), resource_files.read_text("confusables.toml")
)


SNOW_SHED = """\
Snow Shed
1 1/2 oz London dry gin
3/4 oz lime juice (strained)
½ oz simple syrup
2-3 dashes orange bitters (optional)
Top with soda water
Garnish: lime wedge
Glass: highball
Ice: cubed
Notes: Branch Line, first drink.
Riff of: Collins of the House

Shake the first four with ice and strain over ice.
Top with the soda.

Serve at once.
"""


@pytest.fixture(scope="module")
def tree():
    return _TREE


def only(text, tree):
    (read,) = read_specs(text, tree)
    return read


def test_a_spec_is_read_with_all_its_parts(tree):
    read = only(SNOW_SHED, tree)
    assert read.problems == ()
    spec = read.spec
    assert (spec.name, spec.glass, spec.ice) == ("Snow Shed", "highball", "cubed")
    assert spec.notes == "Branch Line, first drink."
    assert spec.riff_of == "Collins of the House"
    assert spec.technique == "shaken"
    assert spec.method == (
        "Shake the first four with ice and strain over ice.\nTop with the soda.\n\nServe at once."
    )
    assert [line.ingredient for line in spec.lines] == [
        *("london-dry-gin", "lime-juice", "simple-syrup"),
        *("orange-bitters", "soda-water", "lime-wedge"),
    ]
    gin, lime, _, bitters, soda, wedge = spec.lines
    assert (gin.amount, gin.unit, gin.amount_high) == (1.5, "oz", None)
    assert gin.quantity == pytest.approx(44.36, abs=0.01)
    assert lime.note == "strained"
    assert (bitters.amount, bitters.amount_high, bitters.optional) == (2, 3, True)
    assert bitters.quantity == pytest.approx(1.6)
    assert (soda.amount, soda.quantity, soda.note) == (None, None, "to top")
    assert wedge.garnish and not wedge.required and wedge.text == "Garnish: lime wedge"
    assert read.lines[0].matched == "London dry gin" and read.lines[0].confidence == 1.0


def test_several_specs_are_parted_by_a_rule_or_two_empty_lines(tree):
    body = "1 oz gin\n\nStir."
    text = f"One\n{body}\n---\nTwo\n{body}\n=====\n\nThree\n{body}\n\n\n\nFour\n{body}\n---\n"
    assert [read.name for read in read_specs(text, tree)] == ["One", "Two", "Three", "Four"]
    assert read_specs("", tree) == ()
    assert read_specs("\n \n---\n\n", tree) == ()


def test_windows_line_ends_a_byte_order_mark_and_bullets_are_read(tree):
    text = (
        "\ufeffSiding\r\n\r\nIngredients:\r\n- 2 oz gin\r\n• 1 oz dry vermouth\r\n\r\n"
        "Stir with ice.\r\n"
    )
    read = only(text, tree)
    assert read.problems == ()
    assert [line.quantity for line in read.spec.lines] == [pytest.approx(59.147, abs=0.001)] * 1 + [
        pytest.approx(29.574, abs=0.001)
    ]
    assert read.spec.technique == "stirred"


def test_a_method_right_after_the_lines_is_a_method(tree):
    read = only("Points\n2 oz blended Scotch\nFill up with soda water\nPour over ice.\nLift.", tree)
    assert read.problems == ()
    assert [line.ingredient for line in read.spec.lines] == ["blended-scotch", "soda-water"]
    assert read.method == "Pour over ice.\nLift."
    assert read.spec.technique == "built"


def test_a_garnish_that_is_no_ingredient_is_a_note(tree):
    text = "Lamp\n2 oz gin\nGarnish: a paper signal flag\nNotes: Lit from below."
    spec = only(text, tree).spec
    assert [line.garnish for line in spec.lines] == [False]
    assert spec.notes == "Garnish: a paper signal flag\nLit from below."
    spec = only("Lamp\n2 oz gin\nGarnish: lemon peel and cocktail cherry", tree).spec
    assert [line.ingredient for line in spec.lines[1:]] == ["lemon-peel", "cocktail-cherry"]


@walked(
    ("text", "ingredient", "quantity", "note"),
    [
        ("splash of soda water", "soda-water", 7.5, ""),
        ("A splash of Soda Water", "soda-water", 7.5, ""),
        ("Dash orange bitters", "orange-bitters", 0.8, ""),
        ("2 Drops vanilla extract", "vanilla-extract", 0.1, ""),
        ("1 Table Spoon absinthe", "absinthe", 14.78676478125, ""),
        ("rinse of absinthe", "absinthe", 5, ""),
        ("2 parts gin", "gin", 60, ""),
        ("1 egg white", "egg-white", 32, ""),
        ("1 strong espresso", "espresso", 30, ""),
        ("4 Teaspoons White Cane Sugar", "sugar", 16.66, ""),
        ("10 g honey", "honey", 6.978, ""),
        ("pinch of salt", "salt", 0.37, ""),
        ("1 sugar cube", "sugar-cube", 1, ""),
        ("juice of 1 lime", "lime", 1, "juice"),
        ("Juice of half a lime", "lime", 0.5, "juice"),
        ("juice of a lime", "lime", 1, "juice"),
        ("1 Lime cut into small wedges", "lime", 1, "cut into small wedges"),
        ("1 lime, cut into small wedges", "lime", 1, "cut into small wedges"),
        ("50 ml Fresh cream (Chilled)", "cream", 50, "Chilled"),
        ("10 mint leaves", "mint-leaf", 10, ""),
        ("8-10 leaves of mint", "mint-leaf", 8, ""),
        ("2 slices orange", "orange-slice", 2, ""),
        ("a mint sprig", "mint", 1, ""),
        ("2 sprigs of mint", "mint", 2, ""),
        ("5 g mint", "mint", None, "by weight"),
        ("1 cup raspberries", "raspberry", None, "by volume"),
        ("2 leaves rosemary", "rosemary", None, "by the leaf"),
        ("2 tsp dried hibiscus", "hibiscus-flowers", None, "by volume"),
        ("soda water", "soda-water", None, ""),
        ("¾ oz (22 ml) lime juice", "lime-juice", 22.18, "22 ml"),
        ("2 oz / 60 ml gin", "gin", 59.15, "60 ml"),
        ("60 ml (2 oz) gin", "gin", 60, "2 oz"),
        ("1 oz 151-proof rum", "151-rum", 29.57, ""),
    ],
)
def test_lines_as_people_write_them(tree, text, ingredient, quantity, note):
    read = read_line(text, tree)
    assert read.complaints == ()
    assert (read.line.ingredient, read.line.note) == (ingredient, note)
    if quantity is None:
        assert read.line.quantity is None
    else:
        assert read.line.quantity == pytest.approx(quantity, abs=0.01)
    assert read.line.text == text


def test_a_least_strength_and_optional_are_no_notes(tree):
    for text in (
        "60 ml bourbon (at least 50 %)",
        "60 ml bourbon (50% or more)",
        "60 ml bourbon, at least 50 % vol",
        "60 ml bourbon at least 50 %",
    ):
        line = read_line(text, tree).line
        assert (line.min_abv_percent, line.note, line.optional) == (50.0, "", False), text
    line = read_line("60 ml bourbon, aged (at least 50 %, optional)", tree).line
    assert (line.min_abv_percent, line.note, line.optional) == (50.0, "", True)
    assert line.stated == ("aged",)


BROKEN = """\
Broken Rail
2 oz London dry gin
30 g London dry gin
1 oz bourban
  -2 oz lime juice
1 absinthe
3/0 oz lime juice

Stir.
---
Sound Rail
2 oz gin

Stir.
"""


def test_every_problem_has_its_place_and_the_rest_is_read(tree):
    broken, sound = read_specs(BROKEN, tree)
    assert broken.spec is None and broken.name == "Broken Rail"
    assert [(each.line, each.column) for each in broken.problems] == [
        *((3, 1), (4, 6), (5, 3), (6, 1), (7, 1)),
    ]
    messages = [each.message for each in broken.problems]
    assert "“30 g” is a weight" in messages[0]
    assert "the nearest are Bourbon" in messages[1]
    assert "below nothing" in messages[2]
    assert "“1” needs a unit" in messages[3]
    assert "divided by zero" in messages[4]
    assert len(broken.lines) == 6
    assert broken.lines[0].line.ingredient == "london-dry-gin"
    assert (broken.lines[2].known, broken.lines[2].line.amount) == (None, 1)
    assert sound.spec is not None and sound.problems == ()


@walked(
    ("text", "line", "column", "said"),
    [
        ("Only a Name", 1, 1, "at least one line"),
        ("2 oz gin\n1 oz dry vermouth", 1, 1, "begins with the name"),
        ("Glass: coupe\n2 oz gin", 1, 1, "begins with the name"),
        ("Void\n2 oz", 2, 5, "an ingredient is missing"),
        ("Void\nGarnish: lemon peel", 1, 1, "at least one line"),
        ("Void\n0z gin", 2, 1, "this amount cannot be read"),
        ("Void\n6o ml gin", 2, 1, "this amount cannot be read"),
        ("Void\n2 oz moss", 2, 6, "no ingredient is called “moss”"),
        (f"Void\n2 oz gin {'x' * 300}", 2, 1, "at most 300"),
    ],
)
def test_what_is_missing_is_said(tree, text, line, column, said):
    read = only(text, tree)
    assert read.spec is None
    (problem,) = read.problems
    assert (problem.line, problem.column) == (line, column)
    assert said in problem.message


@walked(
    ("method", "technique"),
    [
        ("Shake with ice and strain.", "shaken"),
        ("Dry shake, then shake with ice.", "shaken"),
        ("Shake without ice, then hard with ice. Stir in the soda.", "shaken"),
        ("Stir with ice and pour into a chilled coupe.", "stirred"),
        ("Do not shake: stir with ice.", "stirred"),
        ("Build over ice in the glass and stir once.", "built"),
        ("Pour over ice.", "built"),
        ("Blend with crushed ice until smooth.", "blended"),
        ("Pour the blended Scotch over ice.", "built"),
        ("Swizzle until the glass frosts.", "swizzled"),
        ("Throw between two tins.", "thrown"),
        ("Build in the mug with boiling water.", "hot"),
        ("Warm gently, never boil.", "hot"),
        ("Build over ice, hot sauce last.", "built"),
        ("Build over ice with hot pepper sauce and hot ginger beer.", "built"),
        ("Fill with hot water and a dash of hot sauce.", "hot"),
        ("Shake the rest and add to the hot water.", "shaken"),
        ("", "unknown"),
        ("Mix as the list says.", "unknown"),
    ],
)
def test_the_technique_is_what_the_method_says(method, technique):
    assert technique_of(method) == technique


def test_a_spec_written_reads_back(tree):
    spec = only(SNOW_SHED, tree).spec
    assert only(write_spec(spec, tree), tree).spec == spec


def test_the_sample_bars_specs_read_without_a_problem_and_back(tree):
    text = resource_files.read_text("specs.txt", folder="sample_db")
    specs = [read.spec for read in read_specs(text, tree)]
    assert None not in specs
    again = read_specs(write_specs(specs, tree), tree)
    assert [read.spec for read in again] == specs


def test_a_line_that_does_not_say_what_it_is_is_written_anew(tree):
    line = Line("as written", "london-dry-gin", 1.5, None, "oz", 44.3602943437, note="cold, sharp")
    spec = Spec("Points", (line,), "Stir.", "stirred")
    text = write_spec(spec, tree)
    assert text == "Points\n1 ½ oz London dry gin (cold, sharp)\n\nStir.\n"
    (again,) = only(text, tree).spec.lines
    assert replace(again, text=line.text) == line


# Words that no line, header or technique begins with.
_WORDS = st.lists(
    st.sampled_from(["signal", "lamp", "frost", "Nº 9", "très", "sidings", "7th"]),
    min_size=1,
    max_size=4,
).map(" ".join)
_POURED = sorted(key for key in _TREE if _TREE[key].unit == "ml" and not _TREE[key].family)
_METHODS = ["", "Shake with ice.", "Stir.\n\nStrain.", "Build over ice.\nLift.", "Serve hot."]


@st.composite
def lines(draw):
    ingredient = _TREE[draw(st.sampled_from(_POURED))]
    unit = draw(st.sampled_from(["ml", "cl", "oz", "imp_oz", "dash", "barspoon", "tsp", "part"]))
    amount = draw(st.none() | st.floats(0.01, 500))
    high = None if amount is None else draw(st.none() | st.floats(0.1, 50).map(amount.__add__))
    quantity = None
    if amount is not None:
        quantity, _ = quantity_of(Amount(amount, high, unit), ingredient)
    line = Line(
        "",
        ingredient.key,
        amount,
        high,
        None if amount is None else unit,
        quantity,
        draw(st.booleans()),
        draw(st.booleans()),
        draw(st.sampled_from(["", "chilled", "cold, then warm", "from the cellar"])),
        draw(st.none() | st.integers(10, 75).map(float)),
    )
    return replace(line, text=composed(line, _TREE))


@given(
    _WORDS,
    st.lists(lines(), min_size=1, max_size=6).filter(
        lambda each: any(one.required for one in each)
    ),
    st.sampled_from(_METHODS),
    st.sampled_from(["", "coupe", "rocks glass"]),
    st.sampled_from(["", "one large cube"]),
    st.lists(_WORDS, max_size=2),
    st.none() | _WORDS,
)
def test_every_spec_written_reads_back(name, made, method, glass, ice, notes, riff_of):
    technique = technique_of(method)
    spec = Spec(name, tuple(made), method, technique, glass, ice, "\n".join(notes), riff_of)
    read = only(write_spec(spec, _TREE), _TREE)
    assert read.problems == ()
    assert read.spec == spec


@given(st.text(max_size=300))
def test_no_text_raises(text):
    for read in read_specs(text, _TREE):
        assert (read.spec is None) == bool(read.problems)


_SHARDS = (
    "2 oz gin|\n|\n\n|---|Glass:|Garnish:|½|1/0|-|(|)|,|optional|Shake.|top with|juice of|a |%|"
    "at least|8-10|leaves|mint|Notes: x|\u2028|\t|lime"
)
_PIECES = st.sampled_from(_SHARDS.split("|"))


@given(st.lists(_PIECES, max_size=25).map(" ".join))
def test_no_text_that_is_nearly_a_spec_raises_and_what_is_read_is_written_back(text):
    rows = text.split("\n")
    for read in read_specs(text, _TREE):
        for problem in read.problems:
            assert 1 <= problem.line <= len(rows)
            assert 1 <= problem.column <= len(rows[problem.line - 1]) + 1
        if read.spec is not None:
            assert only(write_spec(read.spec, _TREE), _TREE).spec == read.spec


def test_portions_are_of_ingredients_that_are_measured_otherwise():
    portions = shipped_portions()
    for key in portions.piece_ml:
        assert _TREE[key].unit == "ml"
    for key in portions.piece_g:
        assert _TREE[key].unit == "g"
    for key in portions.g_per_ml:
        assert _TREE[key].unit in ("g", "ml")


@pytest.mark.parametrize(
    ("text", "said"),
    [
        ("[piece_ml", "not TOML"),
        ("[pieces]\nlime = 1", "misspelling"),
        ("[piece_ml]\negg-white = 0", "“egg-white” is 0; it must be more than 0"),
        ("[piece_ml]\negg-white = 'much'", "“egg-white” must be a number"),
        ("piece_ml = 3", "a table"),
    ],
)
def test_a_broken_portions_file_names_its_place(text, said):
    with pytest.raises(KnowledgeError, match=said):
        read_portions(text)


def test_several_garnishes_on_one_line_are_several(tree):
    (read,) = read_specs("Late Tea\n2 oz gin\nGarnish: orange slice, mint\n\nStir.", tree)
    garnishes = [each.line for each in read.lines if each.line.garnish]
    assert [line.ingredient for line in garnishes] == ["orange-slice", "mint"]
    (read,) = read_specs("Late Tea\n2 oz gin\nGarnish: lime wedge, cut thick\n\nStir.", tree)
    garnishes = [each.line for each in read.lines if each.line.garnish]
    assert [(line.ingredient, line.note) for line in garnishes] == [("lime-wedge", "cut thick")]


ONE_EMPTY_LINE = """\
Fine One
2 oz gin

Stir.

Bad One
2 oz bourban
1 oz dry vermouth
  1 oz lime juice
1 tsp sugar

Fine Two
2 oz bourbon

Stir.
"""


def test_specs_parted_by_one_empty_line_are_told_apart_by_their_lines(tree):
    read = only(ONE_EMPTY_LINE, tree)
    assert read.spec is None
    said = "this looks like a line of another spec; part specs with a line of --- or two empty"
    assert [(each.line, each.column) for each in read.problems] == [(8, 1), (13, 1)]
    assert all(said in each.message for each in read.problems)
    indented = only("One\n2 oz gin\n\nStir.\nTwo\n  ½ oz  lime juice\n", tree)
    assert [(each.line, each.column) for each in indented.problems] == [(6, 3)]


def test_an_ingredient_below_the_empty_line_is_told(tree):
    (problem,) = only("One\n2 oz gin\n\n1 oz dry vermouth\n1 oz lime juice\n", tree).problems
    assert (problem.line, problem.column) == (4, 1)
    assert "belongs above the empty line" in problem.message


@pytest.mark.parametrize(
    "row",
    [
        "Add 2 oz of soda and stir.",
        "2 oz of soda water go in at the very end, slowly.",
        "1. Shake the gin with ice.",
        "2 minutes of stirring.",
        "3 cubes in the glass.",
        "A dash of bitters to finish.",
    ],
)
def test_a_method_may_speak_of_amounts(tree, row):
    read = only(f"One\n2 oz gin\n\nStir.\n{row}\n", tree)
    assert read.problems == () and read.spec.method == f"Stir.\n{row}"


def test_a_name_twice_in_a_text_is_a_problem_of_the_second(tree):
    text = "One\n2 oz gin\n---\nTwo\n2 oz gin\n---\n\nONE\n1 oz gin\n"
    read = read_specs(text, tree)
    assert [each.row for each in read] == [1, 4, 8]
    (problem,) = names_twice(read)
    assert (problem.line, problem.column) == (8, 1)
    assert problem.message == "“ONE” is in this text twice; it is also on line 1"


def test_the_classics_read_without_a_problem_and_each_riff_is_of_a_spec_there_is(tree):
    texts = [
        resource_files.read_text("classics", name)
        for name in resource_files.names("classics", suffix=".txt")
    ]
    texts.append(resource_files.read_text("specs.txt", folder="sample_db"))
    read = [each for text in texts for each in read_specs(text, tree)]
    assert len(read) > 100
    assert [(each.name, each.problems) for each in read if each.problems] == []
    names = {each.name for each in read}
    assert {each.spec.riff_of for each in read if each.spec.riff_of} <= names


@pytest.mark.parametrize(
    ("line", "column", "said"),
    [
        ("0 oz bourbon", 1, "“0” is nothing; an amount is above nothing"),
        ("  0.0 ml gin", 3, "is nothing"),
        ("0-0.0 oz gin", 1, "a range runs from"),
        ("1 parsec gin", 1, "“parsec” is no unit that is known; Gin takes a volume"),
        ("1 large absinthe", 1, "“1” needs a unit"),
    ],
)
def test_an_amount_that_is_none_is_told(tree, line, column, said):
    (problem,) = only(f"Void\n{line}\n", tree).problems
    assert (problem.line, problem.column) == (2, column)
    assert said in problem.message


def test_a_range_may_begin_at_nothing(tree):
    assert only("Void\n2 oz gin\n0-2 dashes orange bitters\n", tree).problems == ()


@walked(
    "said",
    [
        "## For the syrup",
        "Jump to Recipe",
        "★★★★☆ 4.6 from 212 votes",
        "4.5/5 (30 ratings)",
        "Prep time: 5 mins | Total: 5 mins",
        "$16",
        "Tastes like a gin sour that went to the beach",
        "Adapted from a hotel menu, vermouth cut by half",
        "there's no vodka in this one, so don't write to me about it",
    ],
)
def test_what_a_page_says_beside_the_lines_is_kept_as_a_note(tree, said):
    (read,) = read_specs(f"Ferry Light\n2 oz gin\n{said}\n1 oz dry vermouth\n", tree)
    assert [each.line.ingredient for each in read.lines] == ["gin", "dry-vermouth"]
    assert not read.problems
    assert said in f"{read.understood.notes}\n{read.method}"


@pytest.mark.parametrize("said", ["4/5 zorbles", "# zorble", "★★★ 2 oz zorble", "for the zorble"])
def test_what_may_be_a_line_is_asked_about_and_no_note(tree, said):
    (read,) = read_specs(f"Ferry Light\n2 oz gin\n{said}\n", tree)
    assert read.problems


def test_a_garnish_is_never_parted_within_its_name(tree):
    (read,) = read_specs("Sea Light\n2 oz gin\nGarnish: Tomato and clam juice (chilled)\n", tree)
    assert [each.line.ingredient for each in read.lines] == ["gin", "tomato-clam-juice"]


def test_a_thing_that_is_not_in_it_after_all_is_taken_out_and_noted(tree):
    text = "Ferry Light\n1 oz lemon juice\n2 oz gin\nno lemon in this one, my mistake\n"
    (read,) = read_specs(text, tree)
    assert [each.line.ingredient for each in read.lines] == ["gin"]
    assert "1 oz lemon juice" in read.understood.notes


def test_a_line_that_only_asks_after_an_earlier_one_leaves_it_be(tree):
    (read,) = read_specs("Ferry Light\n2 oz rye\ndid I say rye? I did, good, rye\n", tree)
    assert [each.line.ingredient for each in read.lines] == ["rye-whiskey"]
    assert "did I say rye" in read.understood.notes and not read.problems


def test_half_of_one_is_made_a_whole_one(tree):
    (read,) = read_specs("Ferry Light\nhalf a lime cut into wedges\nmake it a whole lime\n", tree)
    (line,) = (each.line for each in read.lines)
    assert (line.amount, line.ingredient, line.note) == (1.0, "lime", "cut into wedges")
