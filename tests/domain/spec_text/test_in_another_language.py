"""A spec is read to the very same in any language; only what is said of it is translated."""

from __future__ import annotations

from collections.abc import Iterator

import pytest

from barkeep.application.knowledge import shipped
from barkeep.documents.specs.files import EXPORT_FORMATS, exported
from barkeep.domain.spec_text.settling import open_questions
from barkeep.domain.spec_text.text import read_specs
from barkeep.translation import speak_through
from tests.domain.spec_text.test_asked_with_an_answer import ANSWERED, ASKED
from tests.domain.spec_text.test_lines_as_written import rows

TREE = shipped().tree

LINES = (
    *(line for line, _ in rows(ANSWERED + ASKED)),
    "5 cl Gin (ein Schuss Moonwater)",
    "1/0 oz gin",
    "3-2 oz gin",
    "1,500 ml gin",
    "ounces of gin",
    "2 gin",
    "2 oz mint",
    "0 ml gin",
    "2 oz bogus bitters",
    "1 oz moonwater",
    "2 oz gin, 1 oz",
    "¾ lemon",
    "2 dashes bitter",
    "½ oz cinnamon",
    "1 garnish",
    "2 oz gin or so? tbd",
)


@pytest.fixture
def spoken() -> Iterator[None]:
    """Every word that is translated stands between ⟦ and ⟧, its quotes as they are in German."""
    speak_through(lambda words, about: f"⟦{words.replace('“', '„').replace('”', '“')}⟧")
    yield
    speak_through(None)


def read(lines: tuple[str, ...]):
    return [
        read_specs(f"Night Mail\n60 ml gin\n{each}\n\nShake with ice.", TREE)[0] for each in lines
    ]


def test_what_a_spec_holds_is_in_no_language(spoken):
    in_another = read(LINES)
    speak_through(None)
    for line, here, there in zip(LINES, read(LINES), in_another, strict=True):
        assert there.understood == here.understood, line
        assert [each.answer for each in there.problems] == [each.answer for each in here.problems]
        said = [each.message for each in there.problems]
        assert all("⟦" in each for each in said), line
        assert len(said) == len(here.problems)


def test_what_is_quoted_stays_as_it_was_written(spoken):
    (read_one,) = read(("2 oz Moonwater",))
    assert read_one.problems[0].message.startswith("⟦no ingredient is called „Moonwater“")
    (foreign,) = read(("5 cl Mondwasser vom Hof",))
    assert "Mondwasser" in foreign.problems[0].message
    (wrong,) = read(("1,500 ml gin",))
    assert "⟦write 1500 for thousands" in wrong.problems[0].message
    assert wrong.understood.unsettled[0].question.startswith("“1,500” cannot be read as an amount")
    assert "⟦" not in wrong.understood.unsettled[0].question


def test_a_kept_question_is_asked_in_the_language_that_is_spoken(spoken):
    (found,) = read(("1 oz liqueur",))
    kept = found.with_questions
    assert kept is not None
    assert kept.unsettled[0].question == "Which liqueur is this? write its name."
    (asked,) = open_questions(kept, TREE)
    assert "⟦which liqueur is this? write its name⟧" in asked.sentence.replace("W", "w")
    speak_through(None)
    (asked,) = open_questions(kept, TREE)
    assert (
        asked.sentence == "“1 oz liqueur” is not understood. Which liqueur is this? write its name."
    )


def test_files_are_the_same_in_any_language(spoken):
    specs = tuple(kept for each in read(LINES) if (kept := each.with_questions))
    spoken_files = [exported(specs, f"a{suffix}", TREE) for suffix in EXPORT_FORMATS]
    speak_through(None)
    assert spoken_files == [exported(specs, f"a{suffix}", TREE) for suffix in EXPORT_FORMATS]
    assert not any("⟦" in each for each in spoken_files)
