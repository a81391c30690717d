"""`barkeep spec analyse`: its keys, its table, and what it refuses."""

from __future__ import annotations

import pytest

KEYS = [
    *("start_volume_ml", "dilution", "served_volume_ml", "abv_percent", "sugar_g_per_l"),
    *("acid_g_per_l", "ethanol_g", "standard_drinks", "kcal", "kj", "cost", "allergens"),
    "cautions",
    "uncertain",
]
MORE = ["sugar_to_acid", "country", "freezing_point_c", "style", "fit", "minded"]


def test_the_keys_are_stable_and_the_figures_agree(barkeep, bar):
    found = barkeep("--bar", bar, "spec", "analyse", "daiquiri", "--json").answer
    assert list(found) == [*KEYS, *MORE]
    served = found["start_volume_ml"] * (1.0 + found["dilution"])
    assert found["served_volume_ml"] == pytest.approx(served, rel=1e-3)
    ethanol_g = served * found["abv_percent"] / 100 * 0.789239
    assert found["ethanol_g"] == pytest.approx(ethanol_g, rel=2e-3)
    assert found["standard_drinks"] == pytest.approx(found["ethanol_g"] / 14.0, abs=0.01)
    assert found["cost"] > 0.5
    assert (found["fit"], found["allergens"]) == ("fits", [])
    assert found["style"] == "sours sweetened with syrup"
    assert any("dilution" in each or "Ice adds" in each for each in found["uncertain"])


def test_another_method_thins_it_otherwise(barkeep, bar):
    def dilution(*method: str) -> float:
        return barkeep("--bar", bar, "spec", "analyse", "Daiquiri", *method, "--json").answer[
            "dilution"
        ]

    shaken, stirred = dilution(), dilution("--method", "stirred")
    assert dilution("--method", "shaken") == shaken > stirred > dilution("--method", "hot") == 0.0


def test_what_cannot_be_said_is_null(barkeep, tmp_path):
    found = barkeep(
        "--bar", tmp_path / "new.bar", "--new", "spec", "analyse", "Hot Toddy", "--json"
    )
    assert found.status == 0
    import json

    answer = json.loads(found.out)
    assert answer["cost"] is None
    assert answer["freezing_point_c"] is None
    assert answer["style"] is None
    assert any("No price is known for blended Scotch" in each for each in answer["uncertain"])


def test_it_counts_in_the_bars_country(barkeep, bar):
    barkeep("--bar", bar, "setting", "country", "United Kingdom")
    found = barkeep("--bar", bar, "spec", "analyse", "Daiquiri", "--json").answer
    assert found["country"] == "United Kingdom"
    assert found["standard_drinks"] == pytest.approx(found["ethanol_g"] / 8.0, rel=0.02)
    assert "2.4 units" in barkeep("--bar", bar, "spec", "analyse", "Daiquiri").out


def test_the_table_is_readable(barkeep, bar):
    shown = barkeep("--bar", bar, "spec", "analyse", "Silver Fizz").out
    rows = shown.splitlines()
    assert rows[0] == "Silver Fizz, shaken"
    assert max(map(len, rows)) <= 92
    assert "In the glass   259 ± 10 ml (195 ml poured; ice adds 33 ± 5 %)" in rows
    said = " ".join(shown.split())
    assert "classics of this kind in barkeep’s book lie by barkeep’s own figures" in said
    assert "  ! Raw egg: use pasteurised egg" in shown
    assert "Food Code 3-302.13" in said
    assert "Allergens      Egg (What is usual; the label comes first)" in rows
    assert rows[-1].startswith("Figures are information, not advice")


def test_an_unknown_drink_or_method_is_refused(barkeep, bar, capsys):
    said = barkeep("--bar", bar, "spec", "analyse", "Daiquirri").refusal
    assert said.startswith("There is no spec called “Daiquirri”. The nearest")
    with pytest.raises(SystemExit) as left:
        barkeep("--bar", bar, "spec", "analyse", "Daiquiri", "--method", "unknown")
    assert left.value.code == 2


def test_a_stand_in_for_a_spec_says_what_to_pour(barkeep, bar):
    found = barkeep(
        "--bar", bar, "stand-in", "green crème de menthe", "--for", "Grasshopper", "--json"
    )
    white = next(
        each for each in found.answer["stand_ins"] if each["ingredient"] == "White crème de menthe"
    )
    assert any(
        each.startswith("pour ") and each.count("oz of white crème de menthe instead of 1 oz")
        for each in white["corrections"]
    )


def test_what_has_no_amount_has_no_strength_in_the_table(barkeep, bar, tmp_path):
    file = tmp_path / "lamp.txt"
    file.write_text("Unlit Lamp\ngin\ntonic water\n\nBuild over ice.\n", encoding="utf-8")
    barkeep("--bar", bar, "spec", "add", str(file))
    answer = barkeep("--bar", bar, "spec", "analyse", "Unlit Lamp", "--json").answer
    keys = ("abv_percent", "ethanol_g", "standard_drinks", "kcal")
    assert [answer[key] for key in keys] == [None] * 4
    assert (
        "Strength       Not known: " in barkeep("--bar", bar, "spec", "analyse", "Unlit Lamp").out
    )


def test_the_family_is_told_with_its_figures(barkeep, bar):
    plain = barkeep("--bar", bar, "spec", "analyse", "Daiquiri", "--json").answer
    answer = barkeep("--bar", bar, "spec", "analyse", "Daiquiri", "--family", "--json").answer
    assert {**plain, "family": answer["family"]} == answer
    gimlet = next(each for each in answer["family"] if each["spec"] == "Southside")
    assert list(gimlet) == [
        *("spec", "own", "abv_percent", "sugar_g_per_l", "acid_g_per_l", "water_percent")
    ]
    assert any(each["own"] for each in answer["family"])
    told = barkeep("--bar", bar, "spec", "analyse", "Daiquiri", "--family").out
    assert "Daiquiri (this one)" in told and f"{gimlet['abv_percent']:.1f}" in told
    none = barkeep("--bar", bar, "spec", "analyse", "Hot Toddy", "--family").out
    assert none.endswith("It is of no family whose usual ranges are known.\n")
