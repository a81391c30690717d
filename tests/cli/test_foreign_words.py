"""Other languages on the command line: a spec is read as it is, and a name finds its kind."""

from __future__ import annotations

import pytest

SPEC = """\
Gleisdreieck

Zutaten:
5 cl weißer Rum
Saft einer halben Limette
1 EL Zuckersirup

Glas: coupe
Zubereitung:
Alles schütteln.
"""


def test_a_german_spec_is_read_and_keeps_its_words(barkeep, tmp_path):
    path = tmp_path / "gleis.txt"
    path.write_text(SPEC, encoding="utf-8")
    (spec,) = barkeep("spec", "read", path, "--json").answer["specs"]
    assert spec["problems"] == []
    assert [
        (line["text"], line["amount"], line["unit"], line["ingredient"]) for line in spec["lines"]
    ] == [
        ("5 cl weißer Rum", 5.0, "cl", "White rum"),
        ("Saft einer halben Limette", 0.5, "each", "Lime"),
        ("1 EL Zuckersirup", 1.0, "tbsp", "Simple syrup"),
    ]
    assert (spec["glass"], spec["method"]) == ("coupe", "Alles schütteln.")


def test_a_word_of_two_meanings_is_a_question_with_both_as_answers(barkeep, tmp_path):
    path = tmp_path / "agujas.txt"
    path.write_text("Agujas\n2 oz de ron\n1 oz de jugo de limón\n\nAgitar.\n", encoding="utf-8")
    (spec,) = barkeep("spec", "read", path, "--json").answer["specs"]
    (problem,) = spec["problems"]
    assert (problem["line"], problem["column"]) == (3, 9)
    asked = "“jugo de limón” may be lime juice or lemon juice; write which. To teach it: "
    assert problem["message"].startswith(asked)
    assert [each["ingredient"] for each in spec["lines"][1]["guesses"]] == [
        *("Lime juice", "Lemon juice"),
    ]
    shown = barkeep("spec", "read", path).out
    assert "may be lime juice or lemon juice" in shown


@pytest.mark.parametrize(
    ("name", "wanted"),
    [("Zitronensaft", "Lemon juice"), ("blanc d’œuf", "Egg white"), ("zumo de lima", "Lime juice")],
)
def test_a_foreign_name_finds_its_kind_and_is_never_said(barkeep, bar, name, wanted):
    said = barkeep("--bar", bar, "stand-in", name, "--json")
    assert said.answer["wanted"] == wanted
    assert name not in barkeep("--bar", bar, "stand-in", name).out


def test_a_foreign_name_of_two_meanings_is_refused_with_both(barkeep, bar):
    said = barkeep("--bar", bar, "stand-in", "jugo de limón").refusal
    assert "Lemon juice and Lime juice" in said
