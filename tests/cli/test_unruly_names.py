"""Names that would be run, obeyed or read as markup elsewhere, by all ways out of the bar."""

from __future__ import annotations

import csv
import io
import json
import os
from html.parser import HTMLParser

import pytest

FORMULAS = [
    '=HYPERLINK("http://invalid","Fog")',
    "+1 Fog",
    "-2 Fog",
    "@SUM(A1)",
    "'=Fog",
    "'Fog",
    "''+Fog",
]


@pytest.mark.parametrize("name", [*FORMULAS[:3], *FORMULAS[4:6]])
def test_no_cell_of_a_list_of_bottles_is_run_and_each_comes_back(barkeep, bar, tmp_path, name):
    added = barkeep(
        *("--bar", bar, "product", "add", "--ingredient", "London dry gin", "--size", "700 ml"),
        *("--maker", name, "--", name),
    )
    assert added.status == 0, added.err
    received = barkeep("--bar", bar, "receive", f"{name} {name}")
    assert received.status == 0, received.err
    file = tmp_path / "bottles.csv"
    assert barkeep("--bar", bar, "export", file).status == 0
    assert_none_is_run(file)
    brought = barkeep("--bar", bar, "import", file, "--again")
    assert brought.status == 0, brought.err
    found = barkeep("--bar", bar, "bottles", "--json").answer["bottles"]
    assert [each["product"] for each in found].count(f"{name} {name}") == 2


def assert_none_is_run(file):
    """No cell begins as those do that a spreadsheet runs."""
    rows = csv.reader(io.StringIO(file.read_text(encoding="utf-8"), newline=""))
    assert not [cell for row in rows for cell in row if cell[:1] in {*"=+-@\t\r"}]


SPEC = "{name}\n60 ml London dry gin\n20 ml lemon juice\n\nShake.\n"


@pytest.mark.parametrize("name", ["-2 Fog", "'=1+1"])
def test_no_cell_of_a_list_of_specs_is_run_and_each_comes_back(barkeep, bar, tmp_path, name):
    text, file = tmp_path / "fog.json", tmp_path / "specs.csv"
    spec_called(barkeep, bar, tmp_path, "Fog Lamp")
    assert barkeep("--bar", bar, "export", text, "Fog Lamp").status == 0
    text.write_text(text.read_text("utf-8").replace("Fog Lamp", name), encoding="utf-8")
    assert barkeep("--bar", bar, "import", text).status == 0
    assert barkeep("--bar", bar, "export", file, name).status == 0
    assert_none_is_run(file)
    assert barkeep("--bar", bar, "undo").status == 0
    assert barkeep("--bar", bar, "import", file, "--json").answer["added"] == [name]


def spec_called(barkeep, bar, tmp_path, name):
    file = tmp_path / "named.txt"
    file.write_text(SPEC.format(name=name), encoding="utf-8")
    added = barkeep("--bar", bar, "spec", "add", file)
    assert added.status == 0, added.err


class Tags(HTMLParser):
    """The tags of a page, and whether a script ended."""

    def __init__(self):
        super().__init__()
        self.seen: list[str] = []

    def handle_starttag(self, tag, attrs):
        self.seen.append(tag)

    def handle_endtag(self, tag):
        self.seen.append(f"/{tag}")


def test_a_name_ends_no_script_and_begins_no_markup(barkeep, bar, tmp_path):
    name = "Fog </script><img src=x onerror=alert(1)>"
    spec_called(barkeep, bar, tmp_path, name)
    linked, page = tmp_path / "fog.jsonld", tmp_path / "fog.html"
    assert barkeep("--bar", bar, "export", linked, name).status == 0
    text = linked.read_text(encoding="utf-8")
    assert "<" not in text
    assert json.loads(text)["name"] == name
    published = barkeep("--bar", bar, "publish", name, "--as", "html", "--to", page)
    assert published.status == 0
    tags = Tags()
    tags.feed(page.read_text(encoding="utf-8"))
    assert "img" not in tags.seen and "/script" not in tags.seen
    shown = barkeep("--bar", bar, "publish", name, "--as", "json-ld")
    assert "<" not in shown.out


STEERING = "Fog\x1b[31m Lamp\x07\x9b2J\x7f \u202egnihton"


def test_a_name_never_steers_the_terminal(barkeep, bar, tmp_path):
    added = barkeep(
        *("--bar", bar, "product", "add", STEERING, "--ingredient", "London dry gin"),
    )
    seen = [added.out + added.err]
    for command in (
        ("product", "list"),
        ("receive", STEERING),
        ("bottles",),
        ("bottles", "--json"),
        ("undo",),
        ("spec", "show", STEERING),
        ("--bar", STEERING, "bottles"),
        ("bottles", f"--{STEERING}"),
        (STEERING,),
        ("pour", STEERING),
    ):
        try:
            ran = barkeep("--bar", bar, *command)
        except SystemExit:
            continue
        seen.append(ran.out + ran.err)
    for text in seen:
        assert not [each for each in text if each != "\n" and not each.isprintable()], text


def test_what_cannot_be_understood_is_repeated_without_steering(barkeep, bar, capsys):
    for words in ((f"--{STEERING}",), ("bottles", "--within", STEERING), ("pours", STEERING)):
        with pytest.raises(SystemExit):
            barkeep("--bar", bar, *words)
        shown = capsys.readouterr()
        text = shown.out + shown.err
        assert text
        assert not [each for each in text if each != "\n" and not each.isprintable()], text


@pytest.mark.parametrize(
    ("how", "suffix"),
    [
        *(("plain", suffix) for suffix in ("csv", "txt", "json", "jsonld")),
        *((how, "csv") for how in ("symlink", "hard link", "dotted", "link to its folder")),
    ],
)
def test_export_never_writes_over_the_open_bar(barkeep, bar, tmp_path, how, suffix):
    target = tmp_path / f"out.{suffix}"
    kept = tmp_path / f"bar.{suffix}"
    kept.write_bytes(bar.read_bytes())
    before = kept.read_bytes()
    match how:
        case "plain":
            target = kept
        case "symlink":
            target.symlink_to(kept)
        case "hard link":
            os.link(kept, target)
        case "dotted":
            target = tmp_path / "x" / ".." / kept.name
            (tmp_path / "x").mkdir()
        case "link to its folder":
            (tmp_path / "y").symlink_to(tmp_path)
            target = tmp_path / "y" / kept.name
    ran = barkeep("--bar", kept, "export", target)
    assert "it is the bar that is open; choose another name" in ran.refusal
    assert kept.read_bytes() == before
