"""What was paid, when and where: noted, asked for, undone, moved along; and what a day cost."""

from __future__ import annotations

import json
import shutil

import pytest

from tests.cli.test_openings import old_bar

BOURBON = "Copperbend Straight bourbon"


@pytest.fixture
def product(barkeep, bar):
    """Run one of its actions."""
    return lambda *argv: barkeep("--bar", bar, "product", *argv)


@pytest.fixture
def shown(product):
    """What was paid for the bourbon as (amount, shop), newest first, and its price."""

    def now():
        answer = product("show", BOURBON, "--json").answer
        return [(each["amount"], each["shop"]) for each in answer["paid"]], answer["price"]

    return now


def test_what_a_bottle_cost_is_kept_by_shop_and_its_price_follows_the_newest(
    barkeep, bar, product, shown
):
    before = shown()
    assert before[0] == []
    assert "What was paid for it was never noted." in product("show", BOURBON).out
    received = ("receive", BOURBON, "--paid", "24,50 EUR", "--shop", " Quay  Stores ")
    assert "24.50 EUR at Quay Stores was paid for it." in barkeep("--bar", bar, *received).out
    product("paid", BOURBON, "22", "--on", "2020-01-02", "--shop", "Tide Wine")
    assert shown() == ([(24.5, "Quay Stores"), (22.0, "Tide Wine")], 24.5)
    barkeep("--bar", bar, "buy", "--received", f"{BOURBON}*2=30", "--shop", "Far Cellar")
    paid = [(30.0, "Far Cellar"), (24.5, "Quay Stores"), (22.0, "Tide Wine")]
    assert shown() == (paid, 30.0)
    told = product("show", BOURBON).out
    assert "It was cheapest at Tide Wine: 22.00 EUR on 2 January 2020." in told
    assert product("show", BOURBON, "--json").answer["paid"][2] == {
        "on": "2020-01-02",
        "amount": 22.0,
        "shop": "Tide Wine",
    }
    product("forget", BOURBON, "1")
    assert shown() == (paid[1:], 24.5)
    (gone,) = barkeep("--bar", bar, "removed", "list", "--json").answer["removed"]
    assert gone["name"].startswith(f"30.00 for {BOURBON}, ")
    barkeep("--bar", bar, "removed", "bring-back", "paid", str(gone["id"]))
    assert shown() == (paid, 30.0)
    for _step in range(5):
        barkeep("--bar", bar, "undo")
    assert shown() == before
    assert barkeep("--bar", bar, "removed", "list", "--json").answer["removed"] == []
    for _step in range(3):
        barkeep("--bar", bar, "redo")
    assert shown() == (paid, 30.0)
    assert "Nothing is wrong" in barkeep("--bar", bar, "check").out


def test_an_unknown_cost_stays_unknown_and_is_said(barkeep, bar, product):
    product("add", "Box gin", "--ingredient", "gin")
    assert "Nobody knows what it cost" in barkeep("--bar", bar, "receive", "Box gin").out
    answer = product("show", "Box gin", "--json").answer
    assert (answer["price"], answer["paid"]) == (None, [])


def test_what_cannot_have_been_paid_is_one_sentence_and_writes_nothing(barkeep, bar, product):
    before = product("list", "--json").answer
    receive = ("--bar", bar, "receive", BOURBON)
    for argv, said in {
        ("--paid=-3",): "paid cannot be “-3.0”: it is nothing or more.",
        ("--paid", "lots"): "paid cannot be “lots”: write an amount such as 80 or 79.50.",
        ("--paid", "24.50 USD"): "paid cannot be “24.50 USD”: prices of this bar are in EUR.",
        ("--shop", "Quay"): "shop cannot be “Quay”: say with --paid what was paid there.",
    }.items():
        assert barkeep(*receive, *argv).refusal == said
    made = product("paid", "Cinnamon syrup", "3").refusal
    assert made == "product cannot be “Cinnamon syrup”: it is made here, not bought."
    assert "still to come" in product("paid", BOURBON, "3", "--on", "2199-01-01").refusal
    assert "nothing is noted" in product("forget", BOURBON, "1").refusal
    assert "--received" in barkeep("--bar", bar, "buy", "--shop", "Quay").refusal
    assert product("list", "--json").answer == before


def test_a_list_notes_its_prices_and_says_what_becomes_of_the_bars(
    barkeep, bar, product, shown, tmp_path
):
    rows = (
        "product,maker,ingredient,abv,size,level,price,opened",
        "Straight bourbon,Copperbend,bourbon,45,700 ml,full,27.25,",
        "Box gin,Grey Ferry,gin,43,700 ml,full,19,",
        "Tin gin,Grey Ferry,gin,43,700 ml,full,,",
    )
    listed = tmp_path / "list.csv"
    listed.write_text("\n".join(rows), encoding="utf-8")
    told = barkeep("--bar", bar, "import", listed, "--again").out
    assert "price in the bar is 29.9; 27.25 is noted as paid" in told
    assert shown() == ([(27.25, "")], 27.25)
    assert product("show", "Box gin", "--json").answer["paid"][0]["amount"] == 19.0
    assert product("show", "Tin gin", "--json").answer["paid"] == []
    barkeep("--bar", bar, "undo")
    assert shown()[0] == []


def test_an_evening_costs_what_was_poured_and_names_what_nobody_knows(barkeep, bar, product):
    nothing = barkeep("--bar", bar, "evening", "2020-01-01", "--json").answer
    assert (nothing["poured"], nothing["cost"]) == ([], 0.0)
    assert "Nothing was poured on 2020-01-01." in barkeep("--bar", bar, "evening", "2020-01-01").out
    shoots = barkeep("--bar", bar, "shoot", "list", "--json").answer["shoots"]
    filmed = next(each for each in shoots if each["state"] == "logged")
    answer = barkeep("--bar", bar, "evening", filmed["on"], "--json").answer
    costs = [each["cost"] for each in answer["poured"] if each["cost"] is not None]
    assert answer["poured"] and answer["priced"] == pytest.approx(sum(costs), abs=0.05)
    told = barkeep("--bar", bar, "evening", filmed["on"]).out
    assert "What is poured costs" in told
    assert (answer["cost"] is None) == bool(answer["unpriced"])


def test_a_bar_of_schema_7_keeps_its_prices_and_has_no_history(barkeep, tmp_path):
    bar = tmp_path / "old.barkeep"
    shutil.copy(old_bar(7), bar)
    products = barkeep("--bar", bar, "product", "list", "--json").answer["products"]
    assert next(each["price"] for each in products if each["product"] == BOURBON) == 29.9
    assert barkeep("--bar", bar, "product", "show", BOURBON, "--json").answer["paid"] == []
    barkeep("--bar", bar, "product", "paid", BOURBON, "25", "--shop", "Quay")
    assert "Nothing is wrong" in barkeep("--bar", bar, "check").out


def test_the_whole_document_and_what_can_be_saved_carry_what_was_paid(
    barkeep, bar, product, tmp_path
):
    product("paid", BOURBON, "25", "--shop", "Quay", "--on", "2026-01-02")
    product("paid", BOURBON, "26", "--shop", "Tide")
    product("forget", BOURBON, "1")
    written, again = tmp_path / "all.json", tmp_path / "again.barkeep"
    barkeep("--bar", bar, "export", "--everything", written)
    document = json.loads(written.read_text(encoding="utf-8"))
    assert [(each["amount"], each["removed"]) for each in document["paid"]] == [
        (25.0, False),
        (26.0, True),
    ]
    barkeep("--bar", again, "--new", "import", written, "--yes")
    saved = tmp_path / "saved.barkeep"
    barkeep("--bar", bar, "check", "--save-what-can-be", saved)
    for other in (again, saved):
        answer = barkeep("--bar", other, "product", "show", BOURBON, "--json").answer
        assert answer["paid"] == [{"on": "2026-01-02", "amount": 25.0, "shop": "Quay"}]
        (gone,) = barkeep("--bar", other, "removed", "list", "--json").answer["removed"]
        barkeep("--bar", other, "removed", "bring-back", "paid", str(gone["id"]))
        assert barkeep("--bar", other, "product", "show", BOURBON, "--json").answer["price"] == 26.0
