"""Every spec barkeep brings along, written as each kind of document and read back, is the same."""

from __future__ import annotations

from dataclasses import replace

import pytest

from barkeep import resource_files
from barkeep.documents.specs.csv import specs_csv
from barkeep.documents.specs.jsonld import recipe_text, recipes_in
from barkeep.documents.specs.markdown import markdown
from barkeep.documents.specs.own_json import parts_in_json, specs_json
from barkeep.domain.spec_text.parts import parts_of, read_parts
from barkeep.domain.spec_text.text import read_specs, write_specs
from tests.documents.specs.readers import parts_in_csv, parts_in_markdown
from tests.worlds import without_id

FORMS = {
    "JSON-LD": (recipe_text, lambda text: recipes_in(text, "a.jsonld")),
    "JSON": (specs_json, lambda text: parts_in_json(text, "a.json")),
    "Markdown": (markdown, parts_in_markdown),
    "CSV": (specs_csv, lambda text: parts_in_csv(text, "a.csv")),
}


@pytest.fixture(scope="module")
def specs(knowledge):
    """The sample bar's specs and the classics, with two that say more than those do."""
    tree = knowledge.tree
    sample = read_specs(resource_files.read_text("specs.txt", folder="sample_db"), tree)
    own = tuple(each.spec for each in sample)
    assert None not in own and len(own) > 20 and len(knowledge.classics) >= 200
    full = replace(
        own[0],
        name="Two Trains",
        serves=1.0,
        tags=("winter", "low proof"),
        credit="A. Signalwoman",
        riff_of=own[1].name,
        notes="One.\nTwo.",
    )
    text = "Choice\n2 oz each rye or bourbon and gin\nServes: 3\n\nStir.\n"
    (choice,) = read_specs(text.replace(" and gin", "").replace("each ", ""), tree)
    return (*own, *knowledge.classics, full, choice.spec)


def bare(spec):
    """What a document carries: no identity and no date."""
    return replace(without_id(spec), classic=False)


@pytest.mark.parametrize("form", FORMS)
def test_every_spec_reads_back_to_itself(form, specs, knowledge):
    tree = knowledge.tree
    write, read = FORMS[form]
    parts = read(write([parts_of(spec, tree) for spec in specs]))
    again = [read_parts(each, tree) for each in parts]
    assert [(each.name, each.problems) for each in again if each.problems] == []
    assert [each.spec for each in again] == [bare(spec) for spec in specs]


def test_so_does_plain_text_with_its_sources(specs, knowledge):
    again = read_specs(write_specs(specs, knowledge.tree), knowledge.tree)
    assert [each.spec for each in again] == [
        replace(without_id(spec), classic=False) for spec in specs
    ]
