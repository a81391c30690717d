"""tonight, next-bottle and stand-in: JSON with stable keys, and text for a person."""

from __future__ import annotations

from datetime import date

import pytest

from barkeep.application.bar import Bar
from barkeep.domain.buying.next_bottle import next_bottle
from barkeep.domain.pouring.verdict import VERDICTS
from barkeep.domain.pouring.verdicts import tonight

DRINK = ["spec", "verdict", "serves", "then", "serves_in_all", "missing", "make_first", "warnings"]
DRINK += ["lines", "garnishes", "own", "next_shoot", "made", "tags", "allergens", "cautions"]
LINE = ["wanted", "as_written", "called", "bottle", "ingredient", "closeness", "ratio", "why"]
CANDIDATE = [
    *("ingredient", "forms", "unlocks", "price", "why"),
    *("shop", "make_first", "by_form"),
]
OFFER = [
    "ingredient",
    "bottle",
    "closeness",
    "ratio",
    "path",
    "why",
    "corrections",
    "owned",
    "to_buy",
    "or_buy",
]


@pytest.fixture
def snapshot(bar):
    with Bar.open(bar) as opened:
        return opened.snapshot


def shown_row(shown, name):
    """The line of a drink."""
    (row,) = (each for each in shown.splitlines() if each.startswith(f"  {name}: "))
    return row


class TestTonight:
    def test_every_spec_is_there_once_best_first_with_stable_keys(self, barkeep, bar, snapshot):
        answer = barkeep("--bar", bar, "tonight", "--json").answer
        assert list(answer) == ["drinks"]
        names = [drink["spec"] for drink in answer["drinks"]]
        assert sorted(names) == sorted(spec.name for spec in snapshot.all_specs)
        places = [VERDICTS.index(drink["verdict"]) for drink in answer["drinks"]]
        assert places == sorted(places)
        for drink in answer["drinks"]:
            assert list(drink) == DRINK
            assert all(list(line) == LINE for line in drink["lines"])

    def test_ingredients_are_shown_by_name(self, barkeep, bar, tree):
        names = {tree.name(key) for key in tree}
        for drink in barkeep("--bar", bar, "tonight", "--json").answer["drinks"]:
            assert names.issuperset(drink["missing"])
            for line in drink["lines"]:
                assert line["wanted"] in names
                assert line["ingredient"] is None or line["ingredient"] in names
                assert line["why"].endswith(".")

    def test_it_says_what_the_answer_says(self, barkeep, bar, snapshot):
        drinks = tonight(snapshot, "loose", 2)
        said = barkeep("--bar", bar, "tonight", "--within", "loose", "--serves", "2", "--json")
        assert [
            (each["spec"], each["verdict"], each["serves"]) for each in said.answer["drinks"]
        ] == [(each.spec.name, each.verdict, each.serves) for each in drinks]

    def test_exact_takes_no_stand_in(self, barkeep, bar):
        said = barkeep("--bar", bar, "tonight", "--within", "exact", "--json").answer["drinks"]
        assert "ready" in {drink["verdict"] for drink in said}
        assert "stand_in" not in {drink["verdict"] for drink in said}

    def test_what_cannot_be_made_is_said_when_asked(self, barkeep, bar, snapshot):
        drinks = tonight(snapshot)
        short = next(each for each in drinks if each.verdict == "one_short")
        (missing,) = short.missing
        why = f"  {short.spec.name}: no {snapshot.knowledge.tree.in_sentence(missing)}\n"
        count = sum(each.verdict == "one_short" for each in drinks)
        shown, all_shown = (barkeep("--bar", bar, "tonight", *more).out for more in ((), ["--all"]))
        assert f"One short ({count})\n" in all_shown and why in all_shown
        assert why not in shown and "--all shows them" in shown.splitlines()[0]
        for each in (shown, all_shown):
            assert each.count("local rules first") == each.count("Alcohol harms") == 1

    def test_ones_own_come_before_the_classics(self, barkeep, bar, snapshot):
        rows = barkeep("--bar", bar, "tonight").out.splitlines()
        own = next(each for each in tonight(snapshot) if each.makeable and not each.spec.classic)
        classic = next(each for each in tonight(snapshot) if each.verdict == "ready")
        heads = [
            place for place, each in enumerate(rows) if each.startswith(("Your own (", "Clas"))
        ]
        named = [
            next(place for place, row in enumerate(rows) if row.startswith(f"  {each.spec.name}: "))
            for each in (own, classic)
        ]
        assert classic.spec.classic
        assert heads[0] < named[0] < heads[1] < named[1]

    def test_the_next_shoots_drinks_are_told_even_where_they_cannot_be_made(self, barkeep, bar):
        planned = ("Negroni", "Zombie")
        more = [each for name in planned for each in ("--drink", f"{name}=0+1+0")]
        barkeep("--bar", bar, "shoot", "plan", "Tomorrow", "--on", str(date.today()), *more)
        try:
            said = barkeep("--bar", bar, "tonight").out
            drinks = barkeep("--bar", bar, "tonight", "shoot", "--json").answer["drinks"]
        finally:
            barkeep("--bar", bar, "undo")
        first = said.partition("Your own")[0].splitlines()
        assert first[2] == "Next shoot (1)"
        assert first[3].startswith("  Negroni: ") and first[3].endswith("sulphites *")
        assert first[4] == "  Not yet: Zombie. --all says why."
        assert {each["spec"] for each in drinks} == set(planned)
        assert all(each["next_shoot"] and not each["own"] for each in drinks)

    def test_a_query_asks_as_it_does_of_specs(self, barkeep, bar):
        asked = "own with:vermouth -egg"
        drinks = barkeep("--bar", bar, "tonight", asked, "--json").answer["drinks"]
        found = barkeep("--bar", bar, "spec", "list", asked, "--json").answer["specs"]
        assert {each["spec"] for each in drinks} == {each["name"] for each in found} != set()
        assert all(each["own"] and "egg" not in each["allergens"] for each in drinks)
        shown = barkeep("--bar", bar, "tonight", asked).out
        assert drinks[0]["spec"] in shown and "Classics" not in shown
        refused = barkeep("--bar", bar, "tonight", "base:moonpetal").refusal
        assert "“base:moonpetal”" in refused and "no ingredient is called that" in refused

    def test_one_line_says_what_hurts_now_and_what_an_allergic_guest_must_know(self, barkeep, bar):
        row = shown_row(barkeep("--bar", bar, "tonight").out, "Drift Fence")
        assert row.endswith("· ! raw egg, tree nuts · egg · sulphites")
        full = " ".join(barkeep("--bar", bar, "tonight", "Drift Fence", "--full").out.split())
        assert "! Raw egg: use pasteurised egg" in full and "Food Code 3-302.13" in full
        assert "27 CFR 16.21" in full and "Low-risk" not in row

    def test_three_missing_are_told_as_a_sentence_would(self, barkeep, tmp_path):
        path = tmp_path / "spec.txt"
        path.write_text(
            "Three Short\n2 oz vodka\n1 oz cranberry juice drink\n1 oz grapefruit juice\n",
            encoding="utf-8",
        )
        empty = tmp_path / "empty.bar"
        barkeep("--bar", empty, "--new", "spec", "add", path)
        assert (
            "  Three Short: no vodka, no cranberry juice drink and no grapefruit juice\n"
            in barkeep("--bar", empty, "tonight", "--all").out
        )

    def test_a_stand_in_and_a_warning_are_said(self, barkeep, bar, snapshot):
        shown, full = (barkeep("--bar", bar, "tonight", *more).out for more in ((), ["--full"]))
        once = " ".join(shown.split())
        for drink in tonight(snapshot):
            if drink.makeable:
                for warning in drink.warnings:
                    assert f"      ! {warning}\n" in full
                for notice in drink.notices:
                    assert once.count(f"! {notice} ") == 1
                for answer in drink.lines:
                    if answer.required and answer.closeness < 1.0:
                        said = f"(closeness {answer.closeness:.2f})"
                        assert f"      {answer.why} {said}" in full
                        assert f"({answer.closeness:.2f})" in shown_row(shown, drink.spec.name)

    @pytest.mark.parametrize("serves", ["0", "-1", "2.5", "many", "9999999999"])
    def test_serves_is_a_whole_number(self, barkeep, bar, serves, capsys):
        with pytest.raises(SystemExit) as left:
            barkeep("--bar", bar, "tonight", f"--serves={serves}")
        assert left.value.code == 2
        assert "is not a whole number from 1" in capsys.readouterr().err


class TestNextBottle:
    def test_bottles_lead_and_most_unlocked_come_first_with_stable_keys(
        self, barkeep, bar, snapshot
    ):
        answer = barkeep("--bar", bar, "next-bottle", "--json").answer
        assert list(answer) == ["candidates", "not_counted"]
        assert all(list(each) == CANDIDATE for each in answer["candidates"])
        useful = [each for each in answer["candidates"] if each["unlocks"]]
        assert answer["candidates"][: len(useful)] == useful
        shops = [each["shop"] for each in useful]
        assert shops == sorted(shops) and set(shops) == {"bottle_shop", "market"}
        for shop in ("bottle_shop", "market"):
            counts = [len(each["unlocks"]) for each in useful if each["shop"] == shop]
            assert counts == sorted(counts, reverse=True) and counts[0] >= 1
        assert all(each["forms"][0] == each["ingredient"] for each in answer["candidates"])
        specs = {spec.name for spec in snapshot.all_specs}
        assert all(specs.issuperset(each["unlocks"]) for each in answer["candidates"])

    def test_text_names_the_first_with_its_drinks(self, barkeep, bar, snapshot):
        best = next_bottle(snapshot)[0]
        shown = barkeep("--bar", bar, "next-bottle").out.splitlines()
        assert shown[0] == "At the bottle shop"
        assert shown[1].startswith(f"  {snapshot.knowledge.tree.name(best.ingredient)}: ")
        assert all(drink in shown[2] for drink in best.unlocks)
        market = shown[shown.index("At the market") + 1 :]
        grenadine = next(each for each in market if "make grenadine first" in each.lower())
        assert (
            "Grenadine does the same and needs no making. Pomegranate does the same. "
            "Make grenadine first (10 min)."
        ) in grenadine

    def test_an_empty_bar_still_gets_an_answer(self, barkeep, tmp_path):
        ran = barkeep("--bar", tmp_path / "new.bar", "--new", "next-bottle")
        assert ran.status == 0 and ran.out


class TestStandIn:
    def test_offers_with_stable_keys_owned_first(self, barkeep, bar):
        answer = barkeep("--bar", bar, "stand-in", "rye whiskey", "--json").answer
        assert list(answer) == ["wanted", "none_because", "stand_ins"]
        assert (answer["wanted"], answer["none_because"]) == ("Rye whiskey", None)
        assert all(list(each) == OFFER for each in answer["stand_ins"])
        owned = [each["owned"] for each in answer["stand_ins"]]
        assert owned == sorted(owned, reverse=True) and owned[0]
        assert answer["stand_ins"][0]["bottle"]

    def test_each_thing_is_printed_once_with_what_to_buy_for_it(self, barkeep, bar):
        asked = ("--bar", bar, "stand-in", "coffee liqueur", "--for", "Espresso Martini")
        heads = [
            row.strip()
            for row in barkeep(*asked).out.splitlines()
            if row.startswith("  ") and ", closeness " in row
        ]
        assert heads
        names = [(head.split(" (")[0], "buy" in head or "not in" in head) for head in heads]
        assert len(names) == len(set(names))
        for offer in barkeep(*asked, "--json").answer["stand_ins"]:
            assert offer["owned"] == (not offer["to_buy"])
            if offer["to_buy"] and offer["to_buy"] != [offer["ingredient"]]:
                bought = offer["to_buy"][0]
                assert f"(to buy: {bought[0].lower()}{bought[1:]})" in barkeep(*asked).out

    def test_where_nothing_stands_in_it_says_why(self, barkeep, bar, knowledge):
        wanted, why = next(iter(knowledge.none_because.items()))
        answer = barkeep("--bar", bar, "stand-in", wanted, "--json").answer
        assert (answer["none_because"], answer["stand_ins"]) == (why, [])
        assert why in barkeep("--bar", bar, "stand-in", wanted).out

    def test_within_a_drink(self, barkeep, bar):
        asked = barkeep("--bar", bar, "stand-in", "rye whiskey", "--for", "buffer stop", "--json")
        assert asked.answer["wanted"] == "Rye whiskey"
        said = barkeep("--bar", bar, "stand-in", "vodka", "--for", "Buffer Stop").refusal
        assert said == "--for cannot be “Buffer Stop”: it has no line of vodka."

    def test_what_must_never_be_poured_is_named(self, barkeep, bar, knowledge):
        pair = knowledge.tree.confusables[0]
        shown = barkeep("--bar", bar, "stand-in", pair.first).out
        assert f"never {knowledge.tree.in_sentence(pair.second)}" in shown

    def test_an_unknown_name_gets_the_nearest(self, barkeep, bar):
        said = barkeep("--bar", bar, "stand-in", "bourban").refusal
        assert said.startswith("There is no ingredient called “bourban”. The nearest are Bourbon,")
        said = barkeep("--bar", bar, "stand-in", "bourbon", "--for", "Bufer Stop").refusal
        assert said.startswith("There is no spec called “Bufer Stop”.")
        assert "Buffer Stop" in said
