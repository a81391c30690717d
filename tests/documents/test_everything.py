"""The document of a whole bar: its published schema, and what is said of one that is wrong."""

from __future__ import annotations

import json
from typing import Any

import msgspec
import pytest

from barkeep import resource_files
from barkeep.application.bar import Bar
from barkeep.documents.everything import (
    WholeBar,
    everything_json,
    is_everything,
    parts_of,
    read_everything,
)
from barkeep.errors import UnreadableFile
from tests.conftest import NOON

SCHEMA_FILE = "barkeep-bar.schema.json"


def schema_json() -> str:
    """The schema of the document as it is published: to be written to `resources` anew."""
    told = {
        "$schema": "https://json-schema.org/draft/2020-12/schema",
        "title": "A whole bar, as barkeep export --everything writes it",
    }
    schema = {**told, **msgspec.json.schema(WholeBar)}
    return json.dumps(schema, ensure_ascii=False, indent=1) + "\n"


@pytest.fixture(scope="module")
def written(_sample_file, tmp_path_factory) -> str:
    """The sample bar's document."""
    copy = tmp_path_factory.mktemp("whole") / "sample.bar"
    copy.write_bytes(_sample_file.read_bytes())
    with Bar.open(copy, clock=lambda: NOON) as bar:
        return bar.backups.everything()


@pytest.fixture
def document(written) -> Any:
    return json.loads(written)


def refusal(document: Any) -> str:
    with pytest.raises(UnreadableFile) as error:
        read_everything(json.dumps(document), "all.json")
    return str(error.value).removeprefix("all.json cannot be used: ")


def test_the_published_schema_is_that_of_what_is_written():
    """A key that is published neither vanishes nor changes: change the version with the schema."""
    assert resource_files.read_text(SCHEMA_FILE) == schema_json()


def test_what_is_written_keeps_to_the_schema(document):
    jsonschema = pytest.importorskip("jsonschema", reason="it is among the test dependencies")
    schema = json.loads(resource_files.read_text(SCHEMA_FILE))
    jsonschema.Draft202012Validator.check_schema(schema)
    validator = jsonschema.Draft202012Validator(schema)
    assert validator.is_valid(document)
    document["products"][0]["size"] = 0
    document["bottles"][0]["colour"] = "green"
    del document["specs"][0]["lines"]
    paths = {tuple(each.absolute_path) for each in validator.iter_errors(document)}
    assert paths == {("products", 0, "size"), ("bottles", 0), ("specs", 0)}


def test_it_is_told_by_how_it_begins(written):
    assert is_everything(written) and is_everything("\ufeff\n " + written)
    assert not is_everything('{"format": "barkeep-specs"}')
    assert not is_everything("product,ingredient,size\n")


def test_what_is_read_is_written_again_the_same(written):
    assert everything_json(parts_of(read_everything(written, "all.json")), "bar") == written


def put(document: Any, path: str, value: object) -> None:
    *way, last = (int(each) if each.isdecimal() else each for each in path.split("."))
    for each in way:
        document = document[each]
    document[last] = value


@pytest.mark.parametrize(
    ("path", "value", "said"),
    [
        ("version", 2, "it was written by a newer barkeep (version 2; this one reads 1)."),
        ("version", "1", "its “version” is \"1\", and only 1 is known."),
        ("version", 0, "its “version” is 0, and only 1 is known."),
        ("format", "another", "its “format” is not “barkeep-bar”."),
        ("products.3.size", "700", "at products[3].size: a number is expected, and it is a text."),
        ("products.3.size", 0, "at products[3].size: a number > 0.0 is expected."),
        ("products.0.abv_percent", 140,
         "at products[0].abv_percent: a number <= 100.0 is expected."),
        ("products.0.unit", "pint", "at products[0].unit: 'pint' is none of what it may be."),
        ("bottles.0.id", None, "at bottles[0].id: a whole number is expected, and it is null."),
        ("bottles.5.received", "31.3.2026",
         "at bottles[5].received: invalid RFC3339 encoded date."),
        ("bottles.0.colour", "green", "at bottles[0]: “colour” is nothing that barkeep knows."),
        ("ledger.7.at", "2026-11-21T12:00:00Z",
         "at ledger[7].at: a moment such as 2026-03-31T18:30:00 with no timezone component is "
         "expected."),
        ("specs.1.lines.0.garnish", 1,
         "at specs[1].lines[0].garnish: true or false is expected, and it is a whole number."),
        ("specs.0.tags", {"a": 1},
         "at specs[0].tags: a list or null is expected, and it is an object."),
        ("settings.pars", [3],
         "at settings.pars[0]: an object is expected, and it is a whole number."),
        ("shoots.0.starts", "7 pm",
         "at shoots[0].starts: a text matching regex '^([01][0-9]|2[0-3]):[0-5][0-9]$' is "
         "expected."),
        ("bottles.4.product_id", 9999, "at bottles[4].product_id: 9999 is none of the products."),
        ("ledger.4.bottle_id", 9999, "at ledger[4].bottle_id: 9999 is none of the bottles."),
        ("trials.0.spec_id", 9999, "at trials[0].spec_id: 9999 is none of the specs."),
        ("bottles.1.id", 1, "at bottles[1]: is there twice."),
        ("ledger.0.reverses", 3, "at ledger[0].reverses: an entry names another one where its kind "
         "is “reverse”, and only there."),
        ("products", {}, "at products: a list is expected, and it is an object."),
    ],
)  # fmt: skip
def test_what_is_wrong_is_said_with_its_place(document, path, value, said):
    put(document, path, value)
    assert refusal(document) == said


@pytest.mark.parametrize("key", ["settings", "ledger", "own_recipes", "changed"])
def test_a_part_that_is_missing_is_named(document, key):
    del document[key]
    assert refusal(document) == f"“{key}” is missing."


def test_a_key_that_is_missing_is_named_with_its_place(document):
    del document["specs"][2]["lines"][1]["text"]
    assert refusal(document) == "at specs[2].lines[1]: “text” is missing."


def test_names_that_are_taken_are_refused(document):
    document["specs"][3]["name"] = document["specs"][1]["name"].upper()
    assert refusal(document) == "at specs[3]: another spec has its name."
    document["specs"][3]["removed"] = True
    read_everything(json.dumps(document), "all.json")  # a removed one frees its name


def test_an_entry_that_reverses_one_of_another_bottle_is_refused(document):
    last = document["ledger"][-1]
    other = next(each for each in document["ledger"] if each["bottle_id"] != last["bottle_id"])
    document["ledger"].append(
        {**last, "id": last["id"] + 1, "kind": "reverse", "reverses": other["id"]}
    )
    place = len(document["ledger"]) - 1
    assert refusal(document) == (
        f"at ledger[{place}].reverses: {other['id']} is no earlier entry of the same bottle."
    )


@pytest.mark.parametrize(
    ("text", "said"),
    [
        ('{"format": "barkeep-bar", "version": 1, x', "line 1, column 41: it is no JSON"),
        ('{"format": "barkeep-bar",\n "version": NaN}', "line 2, column 13: it is no JSON"),
        ('{"format": "barkeep-bar", "version": 1, "a": "\\ud800"}', "it is no JSON"),
        ("[" * 100_000, "an object is expected, and it is a list."),
        ('{"format": "barkeep-bar", "version": 1, "settings": ' + "[" * 100_000, "no JSON that"),
        ("", "it is no JSON (input data was truncated)."),
        ('{"format": "barkeep-bar", "version": 1' + "0" * 400 + "}", ""),
    ],
)  # fmt: skip
def test_what_is_no_json_is_refused(text, said):
    with pytest.raises(UnreadableFile) as error:
        read_everything(text, "all.json")
    assert said in str(error.value)


def test_every_cut_of_the_document_is_refused(written):
    content = written.encode("utf-8")
    for place in range(0, len(content) - 2, 997):
        with pytest.raises(UnreadableFile):
            read_everything(content[:place].decode("utf-8", "ignore"), "all.json")
