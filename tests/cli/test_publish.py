"""publish and export."""

from __future__ import annotations

import json

import pytest

from barkeep.documents.specs.files import EXPORT_FORMATS


@pytest.mark.parametrize(
    ("form", "begins"),
    [
        ("text", "Request Stop\n\n2 oz (60 ml) London dry gin\n"),
        ("markdown", "# Request Stop\n"),
        ("html", "<!DOCTYPE html>\n"),
        ("json-ld", '{\n  "@context": "https://schema.org",\n'),
        ("json", '{\n  "format": "barkeep-specs",\n'),
    ],
)
def test_each_form_goes_to_standard_output(barkeep, bar, form, begins):
    ran = barkeep("--bar", bar, "publish", "request stop", "--as", form)
    assert (ran.status, ran.err) == (0, "")
    assert ran.out.startswith(begins)
    assert "London dry gin" in ran.out


def test_text_is_the_usual_form_with_what_must_be_said(barkeep, bar):
    text = barkeep("--bar", bar, "publish", "Request Stop").out
    for said in (
        "Glass: coupe",
        "Garnish: lime wedge",
        "% vol",
        "Contains tree nuts",
        "Local rules",
    ):
        assert said in text


def test_it_goes_to_a_file(barkeep, bar, tmp_path):
    file = tmp_path / "stop.html"
    answer = barkeep(
        "--bar", bar, "publish", "Request Stop", "--as", "html", "--to", file, "--json"
    ).answer
    assert list(answer) == ["spec", "as", "file", "text", "picture"]
    assert answer["picture"].startswith("A ") and " filled to " in answer["picture"]
    assert (answer["spec"], answer["as"], answer["file"]) == ("Request Stop", "html", str(file))
    assert file.read_text("utf-8") == answer["text"]
    said = barkeep("--bar", bar, "publish", "Request Stop", "--to", file).out
    assert said == f"Request Stop was written to {file}.\n"


def test_an_unknown_name_is_refused(barkeep, bar):
    assert "no spec called “Nothing”" in barkeep("--bar", bar, "publish", "Nothing").refusal


@pytest.mark.parametrize("suffix", EXPORT_FORMATS)
def test_export_by_suffix(barkeep, bar, tmp_path, suffix):
    file = tmp_path / f"specs{suffix.upper()}"
    answer = barkeep("--bar", bar, "export", file, "--json").answer
    assert list(answer) == ["file", "specs"]
    assert answer["file"] == str(file)
    text = file.read_bytes().decode()
    assert "Request Stop" in answer["specs"]
    assert all(name in text or json.dumps(name) in text for name in answer["specs"])


def test_exported_text_is_read_again(barkeep, bar, tmp_path):
    file = tmp_path / "specs.txt"
    names = barkeep("--bar", bar, "export", file, "--json").answer["specs"]
    read = barkeep("--bar", bar, "spec", "read", file, "--json").answer["specs"]
    assert [spec["name"] for spec in read] == names
    assert not any(spec["problems"] for spec in read)


def test_named_specs_and_classics(barkeep, bar, tmp_path):
    file = tmp_path / "specs.csv"
    said = barkeep("--bar", bar, "export", file, "Upper Berth", "Daiquiri").out
    assert said == f"2 specs were written to {file}.\n"
    everything = barkeep("--bar", bar, "export", file, "--classics", "--json").answer["specs"]
    assert {"Daiquiri", "Upper Berth"} < set(everything)


def test_what_cannot_be_exported_is_said(barkeep, bar, tmp_path):
    assert "must end in .txt" in barkeep("--bar", bar, "export", tmp_path / "a.pdf").refusal
    new = barkeep("--bar", tmp_path / "new.barkeep", "--new", "export", tmp_path / "a.csv")
    assert (new.status, new.out) == (1, "")
    assert "no spec of your own" in new.err
    folder = barkeep("--bar", bar, "export", tmp_path / "nowhere" / "a.csv").refusal
    assert "cannot be written" in folder


def test_help_names_the_kinds_of_file(barkeep, capsys):
    with pytest.raises(SystemExit):
        barkeep("export", "--help")
    shown = capsys.readouterr().out
    assert all(suffix in shown for suffix in EXPORT_FORMATS)
