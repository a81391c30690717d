"""Random and mutated texts and documents: a reader says what is wrong and raises nothing else.

`BARKEEP_FUZZ=100000 pytest tests/documents/test_reader_fuzz.py` tries that many in place of 6,000.
"""

from __future__ import annotations

import os
from random import Random

import pytest

from barkeep.documents.specs.columns import ColumnsUnclear
from barkeep.documents.specs.csv import specs_csv
from barkeep.documents.specs.files import kind_of, parts_in_file
from barkeep.documents.specs.jsonld import recipe_text
from barkeep.documents.specs.markdown import markdown
from barkeep.documents.specs.own_json import specs_json
from barkeep.domain.spec_text.parts import parts_of, read_parts
from barkeep.domain.spec_text.text import read_specs, write_spec
from barkeep.errors import UnreadableFile, UnusableFile
from tests.domain.spec_text.lines_as_written import AMOUNTS, SPOKEN, WORDED
from tests.domain.spec_text.lines_led_in import HEDGED, LED_IN, STRANGE
from tests.domain.spec_text.lines_unseen import UNSEEN

TRIES = int(os.environ.get("BARKEEP_FUZZ", "1500"))
ROUNDS = 10
LINES = [
    row.split(" | ")[0]
    for table in (AMOUNTS, SPOKEN, WORDED, UNSEEN, HEDGED, LED_IN, STRANGE)
    for row in table.strip().splitlines()
]
FIELDS = ["Glass: coupe", "Serves: 4", "Tags: a, b", "By: us", "Source: x", "Garnish: lime", "Ice:"]
STEPS = ["", "---", "\n\n", "Shake with ice.", "Method: 2 oz gin", "Strain.", "Notes: cold"]
SHARDS = [
    *("½", "1/0", "-", "–", "(", ")", ",", "/", " or ", " each ", "\n", "\r\n", "\t", "\u2028"),
    *("\x00", "\ufeff", "\ud7ff", "🍸", "ﷺ", "́", "9" * 40, "{", "[", '"', "\\", "<", ">", "&#0;"),
    *("<script type=application/ld+json>", "</script>", "<!--", "null", "NaN", "1e999", "* ", "# "),
    *("optional: ", "top with ", "juice of ", "at least 50 %", "²", "٣", "Ⅷ", "%s", "${x}", "'"),
]
DEEP = ["[" * 200 + "]" * 200, '{"a":' * 200 + "1" + "}" * 200, "<div>" * 200, "<b>" * 200 + "x"]


def a_text(chance: Random) -> str:
    rows = [f"Drink {chance.randint(1, 9)}"]
    rows += [chance.choice(LINES) for _ in range(chance.randint(0, 4))]
    rows += [chance.choice(FIELDS) for _ in range(chance.randint(0, 2))]
    rows += [chance.choice(STEPS) for _ in range(chance.randint(0, 3))]
    return "\n".join(rows)


def a_document(chance: Random, parts) -> str:
    some = [chance.choice(parts) for _ in range(chance.choice([1, 1, 2]))]
    form = chance.choice([recipe_text, specs_json, markdown, specs_csv, page])
    return form(some)


def page(parts) -> str:
    data = recipe_text(parts)
    return f"<!DOCTYPE html><p>x<script type='application/ld+json'>{data}</script><p>y"


def mutated(text: str, chance: Random) -> str:
    for _ in range(chance.choice([0, 1, 1, 2, 4])):
        at, length = chance.randint(0, len(text)), chance.choice([0, 1, 3, 20])
        cut = text[at : at + length]
        put = chance.choice(["", cut * 2, chance.choice(SHARDS), chance.choice(LINES)])
        text = text[:at] + put + text[at + length :]
    return text


def noise(chance: Random) -> str:
    pool = [*SHARDS, *FIELDS, *STEPS, *LINES[:40], *map(chr, range(32, 127))]
    return "".join(chance.choice(pool) for _ in range(chance.randint(0, 30)))


def check_text(text: str, tree, *, both_ways: bool) -> None:
    rows = text.replace("\r\n", "\n").replace("\r", "\n").removeprefix("\ufeff").split("\n")
    for read in read_specs(text, tree):
        assert (read.spec is None) == bool(read.problems)
        for problem in read.problems:
            assert 1 <= problem.line <= len(rows), (text, problem)
            assert 1 <= problem.column <= len(rows[problem.line - 1]) + 1, (text, problem)
        if both_ways and read.spec is not None:
            (again,) = read_specs(write_spec(read.spec, tree), tree)
            assert again.spec == read.spec, text


def check_document(text: str, file: str, tree) -> None:
    try:
        parts = parts_in_file(text, file)
    except (UnreadableFile, UnusableFile, ColumnsUnclear) as refusal:
        assert str(refusal)
        return
    for each in parts:
        read = read_parts(each, tree)
        assert (read.spec is None) == bool(read.problems)
        if read.spec is not None:
            write_spec(read.spec, tree)


@pytest.fixture(scope="module")
def parts(knowledge):
    return [parts_of(spec, knowledge.tree) for spec in knowledge.classics]


@pytest.mark.parametrize("number", range(ROUNDS))
def test_whatever_a_text_or_a_document_holds_it_is_read_or_refused_in_words(number, tree, parts):
    chance = Random(number)
    for count in range(TRIES // ROUNDS):
        kind = count % 4
        if kind == 0:
            text = mutated(a_document(chance, parts), chance)
        else:
            text = noise(chance) if kind == 1 else mutated(a_text(chance), chance)
        if kind or count % 5 == 0:  # a document read as text is mostly names to look up
            check_text(text, tree, both_ways=kind and count % 3 == 0)
        file = chance.choice(["a.md", "a.json", "a.csv", "a.html", "a.txt"])
        if kind_of(text, file) != "text":
            check_document(text, file, tree)


@pytest.mark.parametrize("text", DEEP)
def test_what_nests_too_deep_is_refused_with_a_sentence(text, tree):
    with pytest.raises(UnreadableFile, match="nested more than"):
        parts_in_file(text, "a.json")
    check_text(text, tree, both_ways=True)
