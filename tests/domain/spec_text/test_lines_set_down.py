"""Lines that somebody set down who had not seen the reader: read as meant, or asked about."""

from __future__ import annotations

from barkeep.application.knowledge import shipped
from barkeep.domain.phrases import folded
from barkeep.domain.spec_text.text import ReadSpec, read_specs
from tests.domain.spec_text import (
    lines_brought_in,
    lines_from_afar,
    lines_in_any_order,
    lines_jotted,
    lines_made_ready,
    lines_never_seen,
    lines_set_down,
    lines_told,
)
from tests.domain.spec_text.test_lines_as_written import _line_as_said, rows
from tests.walked import walked

TREE = shipped().tree
TABLES = (
    *(lines_set_down, lines_in_any_order, lines_brought_in, lines_made_ready),
    *(lines_told, lines_from_afar, lines_jotted, lines_never_seen),
)
READ_AS_MEANT = "\n".join(part.strip() for each in TABLES for part in (each.READ, each.OTHERWISE))
ASKED = "\n".join(part.strip() for each in TABLES for part in (each.ASKED_RIGHTLY, each.ASKED))
NO_LINE = "a spec needs at least one line such as “60 ml London dry gin”"


def in_a_spec(text: str) -> ReadSpec:
    (read,) = read_specs(f"Night Mail\n{text.replace(' ⏎ ', chr(10))}\n", TREE)
    return read


READ_AS_MEANT += f"\n{lines_brought_in.OF_THE_SAME_KIND.strip()}"
READ_AS_MEANT += f"\n{lines_made_ready.OF_THE_SAME_KIND.strip()}"
READ_AS_MEANT += f"\n{lines_jotted.OF_THE_SAME_KIND.strip()}"
ASKED += f"\n{lines_jotted.ASKED_OF_THE_SAME_KIND.strip()}"
ASKED += f"\n{lines_brought_in.ASKED_OF_THE_SAME_KIND.strip()}"


@walked(("text", "said"), rows(READ_AS_MEANT))
def test_a_line_is_read_as_it_was_meant_and_its_words_are_kept(text, said):
    wanted, _, words = said.partition(" # ")
    read = in_a_spec(text)
    assert [each.message for each in read.problems if each.message != NO_LINE] == []
    lines = [each.line for each in read.lines]
    assert (" ; ".join(map(_line_as_said, lines)) or "nothing") == wanted
    kept = " ".join(part for each in lines for part in (each.note, each.called, *each.stated))
    for word in filter(None, words.split(" / ")):
        assert folded(word) in folded(kept)


@walked("text", ASKED.splitlines())
def test_what_is_not_understood_is_asked_and_the_line_is_kept(text):
    read = in_a_spec(text)
    assert any(each.asks for each in read.problems)
    assert read.with_questions is not None
    kept = " ".join(each.text for each in read.with_questions.in_order)
    assert folded(text.replace(" ⏎ ", " ").split()[-1]) in folded(kept + read.understood.notes)


@walked(
    "text",
    [row for row, said in rows(READ_AS_MEANT) if said.startswith("nothing")],
)
def test_what_is_no_ingredient_stays_in_the_words_of_the_spec(text):
    spec = in_a_spec(text).understood
    fields = (spec.method, spec.notes, spec.glass, spec.ice, spec.name, f"serves {spec.serves:g}")
    kept = folded(" ".join(fields))
    lost = [word for word in folded(text).split() if word.strip(".,:()") not in kept]
    assert set(lost) <= {"glass:", "ice:", "yield:", "drink", "ingredients"}  # names of fields


def test_a_measure_behind_how_many_it_serves_that_is_no_line_is_asked_about():
    for text in ("Serves 4 (2 oz gin each)", "Serves 1 2 oz gin"):
        told = [each.message for each in in_a_spec(text).problems]
        assert any("give it a line of its own" in each for each in told)


def test_all_three_hundred_are_there():
    first = lines_set_down
    tables = (first.READ, first.OTHERWISE, first.ASKED_RIGHTLY, first.ASKED)
    assert sum(len(table.strip().splitlines()) for table in tables) == 300
    last = lines_brought_in
    tables = (last.READ, last.OTHERWISE, last.ASKED_RIGHTLY, last.ASKED)
    assert sum(len(table.strip().splitlines()) for table in tables) == 296
    later = {lines_told: 200, lines_from_afar: 300, lines_jotted: 300, lines_never_seen: 300}
    for each, count in later.items():
        tables = (each.READ, each.OTHERWISE, each.ASKED_RIGHTLY, each.ASKED)
        assert sum(len(table.strip().splitlines()) for table in tables) == count
