"""`barkeep export bottles.csv`: all bottles go out, and come back as they were."""

from __future__ import annotations

import csv
from dataclasses import replace
from datetime import date

import pytest

from barkeep.application.bar import Bar
from barkeep.domain.bottles.bottle import Bottle, BottleFacts, Label, Tare, label_of
from barkeep.domain.bottles.levels import MeasuredLevel

FACTS = ("received", "made", "use_by", "tare", "full_g", "dash_ml")


def as_it_is(bottle: Bottle) -> tuple[object, ...]:
    """All that is known of a bottle but for its number and how it came to be so."""
    level = bottle.level
    return (
        label_of(bottle.product),
        tuple(getattr(bottle, each) for each in FACTS),
        (level.state, level.opened, round(level.amount, 6)),
    )


def doubts(bottles) -> list[float]:
    return [each.level.expected_sigma for each in bottles if each.level.state != "empty"]


def bottles_in(path) -> tuple[Bottle, ...]:
    with Bar.open(path) as bar:
        return bar.snapshot.bottles


def test_a_whole_bar_comes_back_equal(barkeep, bar, tmp_path):
    file, other = tmp_path / "bottles.csv", tmp_path / "other.bar"
    before = bottles_in(bar)
    said = barkeep("--bar", bar, "export", file).out
    assert said == f"{len(before)} bottles were written to {file}.\n"
    assert barkeep("--bar", other, "--new", "import", file).status == 0
    after = bottles_in(other)
    assert list(map(as_it_is, after)) == list(map(as_it_is, before))
    assert doubts(after) == pytest.approx(doubts(before), abs=0.1)


def test_back_in_its_own_bar_nothing_is_added(barkeep, bar, tmp_path):
    file = tmp_path / "bottles.csv"
    count = len(barkeep("--bar", bar, "export", file, "--json").answer["bottles"])
    answer = barkeep("--bar", bar, "import", file, "--json").answer
    assert (answer["bottles"], len(answer["same"]), answer["left"]) == (0, count, [])


ODD = (
    (Label("Gin, “dry”; 1=2", "O'Neill, & Co", "london-dry-gin", 700, price=1024.5), None),
    (Label("Cordial", "", "lime-cordial", 333.3, house_made=True, acid_g_per_l=61.5), 0.0),
    (Label("Limes", "", "lime", 12, "each", price=4.2), 1.0),
    (Label("Ginger", "", "ginger", 400, "g", price=0.0), 250.0),
    (Label("Small beer", "", "ginger-beer", 330, abv_percent=0.5, sugar_g_per_l=0.0), None),
    (Label("Strong one", "", "white-overproof-rum", 700, abv_percent=75.5), 33.3),
    (Label("Weighed", "", "sweet-vermouth", 750, density_g_per_ml=1.04123), 500.0),
)
FACTS_OF_ODD = BottleFacts(
    use_by=date(2026, 3, 4), tare=Tare(412.5, 4.5), full_g=1181.0, dash_ml=0.9
)
MEASURED = {"ml": ("weight", 2.0), "g": ("weight", 1.0), "each": ("volume", 0.0)}
MADE = date(2026, 2, 14)


def test_what_is_seldom_comes_back_too(barkeep, tmp_path):
    one, other, file = tmp_path / "one.bar", tmp_path / "other.bar", tmp_path / "shelf.csv"
    with Bar.open(one) as bar:
        for label, left in ODD:
            facts = replace(FACTS_OF_ODD, made=MADE if label.house_made else None)
            bottle = bar.inventory.receive_new(label, facts=facts).value
            if left is not None:
                method, sigma = MEASURED[label.unit]
                bar.counting.count({bottle.id: MeasuredLevel(left, method, sigma)})
        before = bar.snapshot.bottles
    assert barkeep("--bar", one, "export", file, "--bottles").status == 0
    assert barkeep("--bar", other, "--new", "import", file).status == 0
    after = bottles_in(other)
    assert list(map(as_it_is, after)) == list(map(as_it_is, before))
    assert doubts(after) == pytest.approx(doubts(before), abs=0.1)


def test_days_are_iso_and_each_figure_has_its_unit(barkeep, bar, tmp_path):
    file = tmp_path / "bottles.csv"
    barkeep("--bar", bar, "export", file)
    rows = list(csv.DictReader(file.read_text("utf-8").splitlines()))
    assert list(rows[0])[:9] == [
        *("product", "maker", "ingredient", "abv", "size", "level", "price", "opened", "use_by"),
    ]
    gin, sealed = rows[:2]
    assert (gin["abv"], gin["size"], gin["level"], gin["price"]) == (
        *("43 %", "700 ml", "45 %", "24.50 EUR"),
    )
    assert date.fromisoformat(gin["opened"]) and (sealed["level"], sealed["opened"]) == ("", "no")
    syrup = next(each for each in rows if each["product"] == "Simple syrup")
    assert date.fromisoformat(syrup["use_by"]) and date.fromisoformat(syrup["made"])


def test_which_is_meant_and_what_cannot_be(barkeep, bar, tmp_path):
    specs = tmp_path / "bottles.csv"
    assert barkeep("--bar", bar, "export", specs, "Daiquiri", "--json").answer["specs"]
    assert "must end in .csv" in barkeep("--bar", bar, "export", "x.json", "--bottles").refusal
    said = barkeep("--bar", bar, "export", specs, "Daiquiri", "--bottles").refusal
    assert "writes all bottles and no spec" in said
    new = ("--bar", tmp_path / "new.bar", "--new")
    said = barkeep(*new, "export", tmp_path / "bottles.csv")
    assert said.status == 1 and "There is no bottle to export." in said.err
