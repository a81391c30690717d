"""tonight, next-bottle and stand-in: JSON with stable keys, and text for a person."""

from __future__ import annotations

import pytest

from barkeep.application.bar import Bar
from barkeep.domain.buying.next_bottle import next_bottle
from barkeep.domain.pouring.verdicts import VERDICTS, tonight
from barkeep.errors import spoken_list

DRINK = ["spec", "verdict", "serves", "then", "serves_in_all", "missing", "warnings", "lines"]
LINE = ["wanted", "as_written", "called", "bottle", "ingredient", "closeness", "ratio", "why"]
CANDIDATE = ["ingredient", "unlocks", "price", "why"]
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

    def test_text_groups_by_verdict_and_says_what_is_missing(self, barkeep, bar, snapshot):
        shown = barkeep("--bar", bar, "tonight").out
        drinks = tonight(snapshot)
        for heading, verdict in (("Ready", "ready"), ("One short", "one_short")):
            count = sum(each.verdict == verdict for each in drinks)
            assert f"{heading} ({count})\n" in shown
        short = next(each for each in drinks if each.verdict == "one_short")
        (missing,) = short.missing
        name = snapshot.knowledge.tree.in_sentence(missing)
        assert f"  {short.spec.name}: no {name}\n" in shown
        assert "local rules first" in shown and shown.count("Alcohol harms") == 1

    def test_three_missing_are_told_as_a_sentence_would(self, barkeep, tmp_path):
        path = tmp_path / "spec.txt"
        path.write_text(
            "Three Short\n2 oz vodka\n1 oz cranberry juice drink\n1 oz grapefruit juice\n",
            encoding="utf-8",
        )
        empty = tmp_path / "empty.bar"
        barkeep("--bar", empty, "spec", "add", path)
        assert (
            "  Three Short: no vodka, no cranberry juice drink and no grapefruit juice\n"
            in barkeep("--bar", empty, "tonight").out
        )

    def test_a_stand_in_and_a_warning_are_said(self, barkeep, bar, snapshot):
        shown = barkeep("--bar", bar, "tonight").out
        for drink in tonight(snapshot):
            if drink.makeable:
                for warning in drink.warnings:
                    assert f"      ! {warning}\n" in shown
                for answer in drink.lines:
                    if answer.required and answer.closeness < 1.0:
                        assert f"      {answer.why} (closeness {answer.closeness:.2f})" in shown

    @pytest.mark.parametrize("serves", ["0", "-1", "2.5", "many", "9999999999"])
    def test_serves_is_a_whole_number(self, barkeep, bar, serves, capsys):
        with pytest.raises(SystemExit) as left:
            barkeep("--bar", bar, "tonight", f"--serves={serves}")
        assert left.value.code == 2
        assert "is not a whole number from 1" in capsys.readouterr().err


class TestNextBottle:
    def test_candidates_come_most_unlocked_first_with_stable_keys(self, barkeep, bar, snapshot):
        answer = barkeep("--bar", bar, "next-bottle", "--json").answer
        assert list(answer) == ["candidates", "not_counted"]
        assert all(list(each) == CANDIDATE for each in answer["candidates"])
        counts = [len(each["unlocks"]) for each in answer["candidates"]]
        assert counts == sorted(counts, reverse=True) and counts[0] >= 1
        specs = {spec.name for spec in snapshot.all_specs}
        assert all(specs.issuperset(each["unlocks"]) for each in answer["candidates"])

    def test_text_names_the_first_with_its_drinks(self, barkeep, bar, snapshot):
        best = next_bottle(snapshot)[0]
        shown = barkeep("--bar", bar, "next-bottle").out.splitlines()
        assert shown[0].startswith(snapshot.knowledge.tree.name(best.ingredient))
        assert spoken_list(best.unlocks, "and") in shown[1]

    def test_an_empty_bar_still_gets_an_answer(self, barkeep, tmp_path):
        ran = barkeep("--bar", tmp_path / "new.bar", "next-bottle")
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
