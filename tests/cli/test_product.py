"""`barkeep product`: labels without bottles, a bottle's dates; strengths as they are written."""

from __future__ import annotations

import pytest

from barkeep.application.bar import Bar


@pytest.fixture
def product(barkeep, bar):
    """Run one of its actions."""
    return lambda *argv: barkeep("--bar", bar, "product", *argv)


LABEL = ("add", "Box gin", "--maker", "Grey Ferry", "--ingredient", "London dry gin")


def listed(product) -> dict[str, dict[str, object]]:
    return {each["product"]: each for each in product("list", "--json").answer["products"]}


def test_one_is_added_received_and_only_then_kept(barkeep, bar, product):
    said = product(*LABEL, "--abv", "100 UK proof", "--size", "70 cl", "--price", "31.5").out
    assert said.startswith("Grey Ferry Box gin is known.")
    found = listed(product)["Grey Ferry Box gin"]
    assert found["abv_percent"] == pytest.approx(57.06, abs=0.005)
    assert (found["size"], found["unit"], found["bottles"]) == (700.0, "ml", 0)
    assert "Grey Ferry Box gin" in product("list").out
    barkeep("--bar", bar, "receive", "Grey Ferry Box gin")
    assert "1 bottle still refer" in product("remove", "Grey Ferry Box gin").refusal
    barkeep("--bar", bar, "undo")
    assert product("remove", "Grey Ferry Box gin").out == "Took Grey Ferry Box gin away.\n"
    assert "Grey Ferry Box gin" not in listed(product)
    barkeep("--bar", bar, "undo")
    assert "Grey Ferry Box gin" in listed(product)


@pytest.mark.parametrize(
    ("argv", "said"),
    [
        (("--abv", "100° proof"), "write 100 US proof or 100 UK proof"),
        (("--abv", "201 proof"), "it is 0 to 100 % vol"),
        (("--size", "700 g"), "is a weight"),
        (("--price", "-3"), "price"),
    ],
)
def test_what_cannot_be_is_refused_and_nothing_written(product, argv, said):
    before = listed(product)
    assert said in product(*LABEL, *argv).refusal
    assert listed(product) == before


def test_the_dates_of_a_bottle_are_corrected(barkeep, bar, product):
    made = barkeep("--bar", bar, "bottles", "--json").answer["bottles"][0]["id"]
    assert product("redate", str(made), "--use-by", "2031-03-04").out.endswith(
        "is used by 2031-03-04.\n"
    )
    dated = product("redate", str(made), "--made", "2026-05-05", "--json").answer
    assert (dated["made"], dated["use_by"]) == ("2026-05-05", "2031-03-04")
    refused = product("redate", str(made), "--use-by", "2026-05-04").refusal
    assert "it was made on 5 May 2026" in refused
    assert "say --made, --use-by or both" in product("redate", str(made)).refusal
    gone = product("redate", str(made), "--use-by", "none", "--json").answer
    assert (gone["made"], gone["use_by"]) == ("2026-05-05", None)
    barkeep("--bar", bar, "undo")
    dated = product("redate", str(made), "--made", "none", "--json").answer
    assert (dated["made"], dated["use_by"]) == (None, "2031-03-04")


def test_proof_is_read_in_a_bottle_list_a_spec_and_a_search(barkeep, bar, tmp_path):
    file = tmp_path / "bottles.csv"
    file.write_text(
        "product,maker,ingredient,abv,size\nNavy box,Grey Ferry,gin,114 proof,700\n",
        encoding="utf-8",
    )
    assert barkeep("--bar", bar, "import", file).status == 0
    found = barkeep("--bar", bar, "bottles", "--json").answer["bottles"]
    assert {each["abv_percent"] for each in found if each["product"].endswith("Navy box")} == {57.0}
    spec = tmp_path / "milepost.txt"
    spec.write_text("Milepost\n2 oz gin (at least 100 proof)\n\nStir.\n", encoding="utf-8")
    assert barkeep("--bar", bar, "spec", "add", spec).status == 0
    with Bar.open(bar) as opened:
        (line,) = next(each.lines for each in opened.snapshot.specs if each.name == "Milepost")
    assert (line.min_abv_percent, line.note) == (50.0, "")
    by_percent = barkeep("--bar", bar, "spec", "list", "strength:>25", "--json").answer
    by_proof = barkeep("--bar", bar, "spec", "list", "strength:>50proof", "--json").answer
    assert by_percent == by_proof


def test_energy_is_told_in_both_units(barkeep, bar):
    analysed = barkeep("--bar", bar, "spec", "analyse", "Bronx", "--json").answer
    assert 4.0 < analysed["kj"] / analysed["kcal"] < 4.3
    shown = barkeep("--bar", bar, "spec", "analyse", "Bronx").out
    assert f"{analysed['kcal']:.0f} kcal ({analysed['kj']:.0f} kJ)" in shown


def test_a_recipe_is_kept_without_making_it(barkeep, bar):
    made = ("make", "simple syrup", "300 ml", "--input", "sugar=200 g", "--input", "water=100 ml")
    planned = barkeep("--bar", bar, *made, "--plan", "--keep-recipe")
    assert planned.status == 0
    assert barkeep("--bar", bar, "undo").out.startswith("Undone: Keep a recipe for")


@pytest.mark.parametrize(
    ("ingredient", "size", "holds", "said"),
    [
        ("ginger", "300 g", (300.0, "g"), ""),
        ("honey", "340 g", (237.26, "ml"), "340 g of honey is about 237 ml."),
        ("cream of coconut", "0.425 kg", (340.0, "ml"), "is about 340 ml."),
        ("condensed milk", "397 g", (307.75, "ml"), "is about 308 ml."),
    ],
)
def test_what_is_sold_by_weight_may_be_taken_in_by_it(product, ingredient, size, holds, said):
    told = product("add", "Packed", "--ingredient", ingredient, "--size", size).out
    found = listed(product)["Packed"]
    assert (found["size"], found["unit"]) == (pytest.approx(holds[0], abs=0.01), holds[1])
    assert said in told


@pytest.mark.parametrize(("ingredient", "likely"), [("sugar cube", 125), ("lime", 7)])
def test_what_is_used_by_the_piece_is_asked_how_many_there_are(product, ingredient, likely):
    said = product("add", "Box", "--ingredient", ingredient, "--size", "500 g").refusal
    assert said == f"“500 g” of {ingredient} is about {likely} pieces; write how many there are."
    assert "Box" not in listed(product)
