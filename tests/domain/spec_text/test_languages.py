"""German, French, Italian and Spanish: lines, names and headings, and that nothing is lost."""

from __future__ import annotations

import re
from itertools import chain, pairwise

import pytest
from hypothesis import given
from hypothesis import strategies as st

from barkeep import resource_files
from barkeep.application.finding import find_ingredient
from barkeep.application.knowledge import shipped
from barkeep.domain.amounts.units import unit_named
from barkeep.domain.ingredients.languages import (
    header_words,
    meanings,
    plain,
    read_language,
    shipped_languages,
)
from barkeep.domain.ingredients.names import match_ingredient
from barkeep.domain.phrases import folded
from barkeep.domain.spec_text.headers import header_in
from barkeep.domain.spec_text.languages import in_english
from barkeep.domain.spec_text.lines import LONGEST, read_line, read_lines
from barkeep.domain.spec_text.text import read_specs, write_spec
from barkeep.errors import KnowledgeError, UnknownName
from tests.domain.spec_text import lines_as_written, lines_led_in, lines_unseen
from tests.domain.spec_text.lines_in_languages import (
    ASKED,
    ENGLISH,
    FRENCH,
    GERMAN,
    ITALIAN,
    MAY_BE,
    SPANISH,
)
from tests.domain.spec_text.test_lines_as_written import as_said, rows
from tests.walked import walked

TREE = shipped().tree
TABLES = {"german": GERMAN, "french": FRENCH, "italian": ITALIAN, "spanish": SPANISH}
EVERY = [row for table in TABLES.values() for row in rows(table)]
LINES = [text for text, _ in EVERY]
ENGLISH_TABLES = (
    *(lines_as_written.AMOUNTS, lines_as_written.SPOKEN, lines_as_written.WORDED),
    *(lines_as_written.UNKNOWN_MAKERS, lines_led_in.HEDGED, lines_led_in.LED_IN),
    *(lines_led_in.STRANGE, lines_unseen.UNSEEN),
)


@walked(("text", "said"), EVERY)
def test_a_foreign_line_is_read_as_what_it_says(text, said):
    wanted, _, note = said.partition(" # ")
    read = read_lines(text, TREE)
    assert as_said(read) == wanted
    assert {each.line.note for each in read} <= {note, "a few"}


@walked("text", LINES)
def test_a_line_keeps_the_words_it_was_written_in(text):
    read = read_lines(text, TREE)
    if len(read) == 1:
        assert read[0].line.text == text.strip()
    else:
        assert all(each.line.text.split()[-1] in text for each in read)


@walked("row", MAY_BE.strip().splitlines())
def test_a_word_of_two_meanings_is_asked_about(row):
    text, words, keys = row.split(" | ")
    read = read_line(text.removeprefix("Decoración: "), TREE)
    (complaint,) = read.complaints
    assert [each.key for each in read.guesses] == keys.split()
    assert complaint.say().startswith(f"“{words}” may be ")
    at = text.removeprefix("Decoración: ").index(words)
    assert (complaint.at, complaint.unknown) == (at, words)


@walked("text", ASKED.strip().splitlines())
def test_what_is_not_understood_is_asked_in_the_words_it_was_written_in(text):
    complaints = read_line(text, TREE).complaints
    assert complaints
    for complaint in complaints:
        assert 0 <= complaint.at < len(text)
        for quoted in re.findall(r"^“([^”]+)”|called “([^”]+)”", complaint.say()):
            assert "".join(quoted) in text


@pytest.mark.parametrize(
    ("text", "column", "quoted"),
    [
        ("2 Esslöffel Nebel", 12, "Nebel"),
        ("1 lasagna di limone", 2, "lasagna di limone"),
        ("2 cuillères à soupe de neige", 23, "neige"),
        ("le jus de 2 brouillards", 12, "brouillards"),
    ],
)
def test_a_complaint_stands_at_the_word_as_it_was_written(text, column, quoted):
    told = {each.at: each.say() for each in read_line(text, TREE).complaints}
    assert f"“{quoted}”" in told[column]


@walked("text", ENGLISH.strip().splitlines())
def test_a_line_that_may_be_english_stays_as_it_is(text):
    said = in_english(text, TREE)
    assert (said.text, said.language) == (text, None)


def test_no_english_line_is_touched():
    classics = (line.text for spec in shipped().classics for line in spec.lines)
    written = (text for table in ENGLISH_TABLES for text, _ in rows(table))
    for text in chain(classics, written):
        assert in_english(text, TREE).language is None, text


def test_a_name_in_english_names_no_language():
    for key in TREE:
        for name in TREE[key].all_names:
            read = read_line(f"2 {name}", TREE)
            assert read.line.ingredient == key or in_english(f"2 {name}", TREE).language is None


@pytest.mark.parametrize(("language", "table"), TABLES.items())
def test_the_language_is_known_without_a_switch(language, table):
    said = [in_english(text, TREE).language for text, _ in rows(table)]
    named = [each for each in said if each is not None]
    assert named.count(language) > 0.85 * len(named)


OTHERS = (
    "gin",
    "Tansy",
    "Lock",
    "xyzzy",
    "(oder",
    "so)",
    "2",
    "cl",
    "½",
    "de",
    "l'",
    "–",
    "3-4",
    ",",
)
FOREIGN = st.sampled_from([*sorted({word for text in LINES for word in text.split()}), *OTHERS])


@given(st.lists(FOREIGN, min_size=1, max_size=9).map(" ".join))
def test_each_word_is_put_into_english_or_stands(text):
    said = in_english(text, TREE)
    if said.language is None:
        assert said.text == text
        return
    covered = [False] * len(text)
    for piece in said.pieces:
        for at in range(piece.from_start, piece.from_end):
            covered[at] = True
        if piece.same:
            before = text[piece.from_start : piece.from_end]
            assert said.text[piece.start : piece.end] == before
    lost = [text[at] for at, there in enumerate(covered) if not there and text[at].isalnum()]
    assert lost == []
    ends = [(piece.start, piece.end) for piece in said.pieces]
    assert (ends[0][0], ends[-1][1]) == (0, len(said.text))
    assert all(one[1] == other[0] for one, other in pairwise(ends))


@given(st.lists(FOREIGN, min_size=1, max_size=9).map(" ".join))
def test_a_line_of_any_words_is_read_with_its_words_kept(text):
    read = read_lines(text, TREE)
    assert read
    if len(read) == 1:
        assert read[0].line.text == text.strip()
    for each in read:
        assert all(0 <= complaint.at <= len(text) for complaint in each.complaints)
        assert all(complaint.say() for complaint in each.complaints)


@given(st.text(max_size=LONGEST + 20))
def test_any_text_at_all_is_read(text):
    said = in_english(text, TREE)
    assert said.language is not None or said.text == text


@given(st.sampled_from(sorted(meanings())))
def test_each_name_of_one_meaning_is_read_in_a_line(name):
    key = TREE.called(name)
    if key is None:
        return
    read = read_line(f"2 {name}", TREE)
    asked = bool(read.complaints)
    assert asked or TREE.is_a(read.line.ingredient, key) or TREE.is_a(key, read.line.ingredient)


@walked(
    ("name", "key"),
    [
        ("Zitronensaft", "lemon-juice"),
        ("zitronensaft", "lemon-juice"),
        ("Laeuterzucker", "simple-syrup"),
        ("weißer Rum", "white-rum"),
        ("blanc d'œuf", "egg-white"),
        ("BLANC D’OEUF", "egg-white"),
        ("succo di limone", "lemon-juice"),
        ("zumo de lima", "lime-juice"),
        ("vino blanco seco", "dry-white-wine"),
        ("rhum", "rhum-agricole"),  # an English name goes first
    ],
)
def test_a_name_is_found_wherever_one_is_typed(name, key):
    assert find_ingredient(TREE, name) == key
    assert match_ingredient(name, TREE).key == key


@pytest.mark.parametrize(
    ("name", "meant"), [("jugo de limón", {"Lemon juice", "Lime juice"}), ("Eis", None)]
)
def test_a_name_of_two_meanings_is_none(name, meant):
    with pytest.raises(UnknownName) as caught:
        find_ingredient(TREE, name)
    assert set(caught.value.nearest) == (meant or {"Ice", "Vanilla ice cream"})
    assert set(match_ingredient(name, TREE).nearest) == set(caught.value.nearest)


def test_foreign_words_are_never_barkeeps_own():
    own = {folded(name) for key in TREE for name in TREE[key].all_names}
    assert "zitronensaft" in meanings() and "zitronensaft" not in own
    assert "zitronensaft" not in TREE.by_name


GERMAN_SPEC = """\
Gleisdreieck

Zutaten:
5 cl weißer Rum
2 cl Limettensaft
1 EL Zuckersirup
mit Sodawasser auffüllen

Garnitur: eine Limettenscheibe und Minze
Glas: coupe
Für 2 Personen

Zubereitung:
Alles mit Eis schütteln.
"""
FRENCH_SPEC = """\
Aiguillage
Ingrédients
5 cl de rhum blanc
le jus d'un demi-citron
Verre : coupe
Garniture : zeste d'orange

Préparation
Frapper avec de la glace.
"""
ITALIAN_SPEC = """\
Scambio
Ingredienti:
4 cl di gin
2 cl di succo di limone
Bicchiere: coupe
Decorazione: scorza d'arancia
Preparazione: Agitare con ghiaccio.
"""
SPANISH_SPEC = """\
Cambio de vía
Para 4 personas
Ingredientes
60 ml de ron blanco
20 ml de zumo de lima
Copa: coupe
Adorno: piel de naranja
Preparación
Agitar con hielo.
"""


@pytest.mark.parametrize(
    ("text", "keys", "garnishes", "serves"),
    [
        (
            GERMAN_SPEC,
            ["white-rum", "lime-juice", "simple-syrup", "soda-water"],
            ["lime-wedge", "mint"],
            2,
        ),
        (FRENCH_SPEC, ["white-rum", "lemon"], ["orange-peel"], 1),
        (ITALIAN_SPEC, ["gin", "lemon-juice"], ["orange-peel"], 1),
        (SPANISH_SPEC, ["white-rum", "lime-juice"], ["orange-peel"], 4),
    ],
)
def test_a_whole_spec_is_read_by_its_headings(text, keys, garnishes, serves):
    (read,) = read_specs(text, TREE)
    assert read.problems == ()
    spec = read.spec
    assert [line.ingredient for line in spec.lines if not line.garnish] == keys
    assert [line.ingredient for line in spec.lines if line.garnish] == garnishes
    assert (spec.glass, spec.serves) == ("coupe", serves)
    assert len(spec.method.split()) >= 3
    assert "\n" not in spec.method
    again = read_specs(write_spec(spec, TREE), TREE)[0]
    assert again.spec == spec


@pytest.mark.parametrize(
    "text",
    [
        "Zubereitung",
        "Vaso",
        "Per 4 cl gin",
        "Bitte: nicht schütteln",
        "Orange",
        "Champagne",
        "Pour 2 oz",
    ],
)
def test_a_row_is_a_heading_only_where_it_can_be_nothing_else(text):
    header = header_in(text)
    assert (header is None) == (text != "Zubereitung")


def test_each_language_says_what_a_line_is_made_of():
    for language in shipped_languages():
        known = {TREE.key_of(key) for key in language.ingredients}
        assert None not in known
        assert len(known) > 120
        assert all(unit_named(unit) for unit in language.units if unit not in _LATER)
        assert {*_UNITS} <= set(language.units)
        assert {"1", "2", "3", "1/2", "1/4"} <= set(language.numbers)
        assert {"ingredients", "method", "glass", "garnish"} <= set(language.headers)
        for unsure in language.unsure:
            assert all(key in TREE or unit_named(key) for key in unsure.may_be)
            assert all(key in TREE for key in unsure.settled.values())


_UNITS = ("tbsp", "tsp", "barspoon", "dash", "drop", "splash", "pinch", "slice", "leaf", "sprig")
_LATER = ("can", "bottle", "glass")
"""What no line can be measured in: the reader says so itself."""


def test_no_word_of_a_language_is_in_two_of_its_meanings():
    for language in shipped_languages():
        seen: dict[str, str] = {}
        for key, names in language.ingredients.items():
            for name in names:
                assert seen.setdefault(plain(name), key) == key, (language.key, name)


def test_headings_are_plain_fields():
    assert header_words()["zutaten"] == header_words()["ingredientes"] == "ingredients"
    assert header_words()["vaso"] == "glass"


def test_a_fault_in_a_file_is_told_with_its_place():
    text = resource_files.read_text("languages", "german.toml")
    with pytest.raises(KnowledgeError, match=r"german\.toml"):
        read_language(text.replace("[units]", "[unitz]"), "german.toml")
