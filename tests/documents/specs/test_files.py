"""What kind of document a text is, and where its problems stand."""

from __future__ import annotations

import pytest
from hypothesis import given
from hypothesis import strategies as st

from barkeep.documents.specs.files import (
    EXPORT_FORMATS,
    exported,
    holds_specs,
    is_specs_csv,
    kind_of,
    parts_in_file,
    placed,
)
from barkeep.domain.spec_text.parts import (
    SpecParts,
    parts_of,
    read_parts,
    text_of_all,
    text_of_parts,
)
from barkeep.domain.spec_text.text import read_specs
from barkeep.errors import UserError
from tests.walked import walked

PLAIN = "Fog Lamp\n60 ml London dry gin\n20 ml lemon juice\n"
PAGE = '<html><script type="application/ld+json">{"@type":"Recipe","name":"Fog"}</script></html>'


@walked(
    ("text", "file", "kind"),
    [
        (PLAIN, "fog.txt", "text"),
        (PLAIN, "fog.md", "text"),
        (PLAIN, "", "text"),
        ("", "fog.txt", "text"),
        ("# Fog Lamp\n- 60 ml gin", "fog.txt", "markdown"),
        ("Words first\n\n# Fog Lamp\n- 60 ml gin", "fog.md", "markdown"),
        ("Words first\n\n# Fog Lamp\n- 60 ml gin", "fog.txt", "text"),
        ("spec,line\nFog Lamp,60 ml gin", "fog.txt", "csv"),
        ("line;Spec;glass\n60 ml gin;Fog Lamp;coupe", "", "csv"),
        ("product,size\nGin,700", "gin.csv", "csv"),
        ('{"format": "barkeep-specs", "version": 1, "specs": []}', "x.txt", "json"),
        ('\ufeff [{"@type": "Recipe"}]', "x.json", "jsonld"),
        (PAGE, "saved.txt", "page"),
        (" \n<!-- a page -->", "", "page"),
    ],
)
def test_a_text_is_told_by_how_it_begins(text, file, kind):
    assert kind_of(text, file) == kind


@pytest.mark.parametrize(
    ("text", "file", "specs"),
    [
        (PLAIN, "fog.txt", True),
        (PLAIN, "standard input", True),
        ("spec,line\nFog Lamp,60 ml gin", "fog.csv", True),
        ("product,ingredient,size\nGin,gin,700", "gin.csv", False),
        ("product,ingredient,size\nGin,gin,700", "standard input", False),
        ("whatever,it,is", "gin.csv", False),
        (PAGE, "saved.html", True),
    ],
)
def test_specs_are_told_from_bottles(text, file, specs):
    assert holds_specs(text, file) is specs


def test_a_broken_header_is_no_list_of_specs():
    assert not is_specs_csv('"spec,line\n')
    assert not is_specs_csv("\x00" * 10)


@pytest.mark.parametrize("suffix", [each for each in EXPORT_FORMATS if each != ".txt"])
def test_what_barkeep_writes_it_reads_whatever_the_file_is_called(tree, knowledge, suffix):
    specs = knowledge.classics[:20]
    text = exported(specs, f"specs{suffix}", tree)
    found = [read_parts(each, tree).spec for each in parts_in_file(text, "unnamed")]
    assert [each.name for each in found] == [each.name for each in specs]
    assert [len(each.lines) for each in found] == [len(each.lines) for each in specs]


@given(st.text(max_size=80))
def test_any_text_has_a_kind_and_is_read_or_refused(text):
    if kind_of(text, "x.md") == "text":
        return
    try:
        parts = parts_in_file(text, "x.md")
    except UserError as error:
        assert str(error)
    else:
        assert all(isinstance(each, SpecParts) for each in parts)


@pytest.mark.parametrize("suffix", [each for each in EXPORT_FORMATS if each != ".txt"])
def test_a_problem_is_placed_at_the_words_it_is_about(tree, suffix):
    good = read_specs(PLAIN + "---\nAsh Lamp\n60 ml London dry gin\n5 ml absinthe", tree)
    text = exported([each.spec for each in good], f"x{suffix}", tree)
    broken = text.replace("5 ml absinthe", '5 ml "moss" ä' if suffix == ".md" else "5 ml moss")
    parts = parts_in_file(broken, f"x{suffix}")[1]
    (problem,) = read_parts(parts, tree).problems
    found = placed(problem, parts, broken)
    row = broken.splitlines()[found.line - 1]
    assert row[found.column - 1 :].replace("\\", "").startswith(("moss", '"moss"'))


def test_a_problem_of_the_whole_spec_is_at_its_name(tree):
    text = 'x\n{"name": "Fog Lamp", "lines": []}'
    parts = SpecParts("Fog Lamp", ())
    problem = read_parts(parts, tree).problems[0]
    assert (placed(problem, parts, text).line, placed(problem, parts, text).column) == (2, 11)


def test_words_that_a_format_hides_are_placed_where_the_spec_begins(tree):
    parts = SpecParts("Fog Lamp", ("60 ml moss",), row=3)
    problem = read_parts(parts, tree).problems[0]
    assert placed(problem, parts, "a\nb\nc\nd").line == 3


def test_pieces_as_text_read_to_the_same_spec(tree, knowledge):
    for spec in knowledge.classics:
        parts = parts_of(spec, tree)
        (read,) = read_specs(text_of_parts(parts), tree)
        assert read.spec == read_parts(parts, tree).spec, spec.name


def test_several_are_parted_and_line_breaks_within_a_piece_are_spaces(tree):
    one = SpecParts("Fog\nLamp", ("60 ml\n gin",), ("Shake.", "", "Strain\nit."), notes=("A\nb",))
    text = text_of_all((one, one))
    assert text.count("---\n") == 1
    assert text.startswith("Fog Lamp\n60 ml gin\nNotes: A b\n\nShake.\n\nStrain it.\n---\n")
