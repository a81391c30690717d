"""The bytes of a file: the letters are told, or it is refused; nothing else is raised."""

from __future__ import annotations

import pytest
from hypothesis import given
from hypothesis import strategies as st

from barkeep.application.knowledge import shipped
from barkeep.documents.bytes_read import decoded
from barkeep.documents.specs.columns import ColumnsUnclear
from barkeep.documents.specs.files import holds_specs, specs_in
from barkeep.domain.amounts.units import US_UNITS
from barkeep.errors import UnreadableFile, UserError

TEXT = "Crème Dépôt\n1½ oz gin\n"
FILES = ("a.txt", "a.md", "a.html", "a.json", "a.csv")
PIECES = st.sampled_from(
    [
        *(
            b"<div itemscope itemtype=Recipe>",
            b"<li itemprop=recipeIngredient>",
            b"<table><tr><td>",
        ),
        *(
            b"<script type=application/ld+json>",
            b"</script>",
            b"<!--",
            b"2 oz gin",
            b"&amp;frac34;",
        ),
        *(b"---\n", b"title: [a\n", b"|a|b|\n|-|-|\n", b"**X**\n", b"- [ ] ", b"# X\n", b"===\n"),
        *(
            b"name,amount,unit,ingredient\n",
            b"A,2,oz,gin\n",
            b'"',
            b";",
            b"\t",
            b"\n\n",
            b"X: 2 oz ",
        ),
        *(b'{"@type": "Recipe", ', b'"recipeIngredient": [{"value": {}}]}', b"\xff\xfe"),
    ]
)


@pytest.mark.parametrize(
    ("encoding", "said"),
    [
        ("utf-8", ""),
        ("utf-8-sig", ""),
        ("utf-16", "It was read as UTF-16."),
        ("utf-16-le", "It was read as UTF-16."),
        ("utf-16-be", "It was read as UTF-16."),
        ("cp1252", "a guess; look at these letters: è é ô ½"),
    ],
)
def test_letters_are_told_and_a_guess_is_said(encoding, said):
    found = decoded(TEXT.encode(encoding), "a.txt")
    assert found.text == TEXT
    assert said in found.read_as
    assert bool(said) == bool(found.read_as)


@pytest.mark.parametrize(
    "content",
    [
        b"\x89PNG\r\n\x1a\n\x00\x00\x00\rIHDR",
        b"\xff\xd8\xff\xe0\x00\x10JFIF",
        b"\x81\x8d",
    ],
)
def test_what_is_no_text_is_refused(content):
    with pytest.raises(UnreadableFile, match="it is no text"):
        decoded(content, "a.txt")


def test_text_that_breaks_off_is_told():
    with pytest.raises(UnreadableFile, match="breaks off"):
        decoded(b"\xff\xfeA\x00B", "a.txt")


@given(
    pieces=st.lists(st.binary(max_size=12) | PIECES, max_size=12),
    file=st.sampled_from(FILES),
)
def test_any_bytes_are_read_or_refused_in_a_sentence(pieces, file):
    tree = shipped().tree
    try:
        text = decoded(b"".join(pieces), file).text
        holds_specs(text, file)
        specs, _document = specs_in(text, file, tree, US_UNITS)
    except ColumnsUnclear as error:
        assert error.request.columns
    except UserError as error:
        assert str(error)
    else:
        assert all((each.spec is None) == bool(each.problems) for each in specs)
