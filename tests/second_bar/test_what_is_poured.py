"""What a general want pours, for how many serves, what follows, and what is used up first."""

from __future__ import annotations

import pytest

from tests.second_bar.asking import has, is_exact, line_of, then


def test_rum_in_a_shaken_sour_is_the_white_one(bar):
    """1. Shaken and sour: a light white rum; overproof, blackstrap and agricole change the drink
    and nobody asked for them."""
    rum = line_of(bar.drink("Low Daiquiri"), "2 oz rum")
    assert "Low Water white rum" in rum["bottle"]
    assert is_exact(rum)


def test_serves_are_those_of_the_white_rum_and_the_aged_one_follows(bar):
    """2. 250 ml / 60 = 4.2; limes give 40 + 7 x 26 = 222 ml = 7 serves in all; the next ordinary
    rum follows, under its own name."""
    drink = bar.drink("Low Daiquiri")
    assert drink["serves"] == 4
    following = then(drink)
    assert "Lantern aged rum" in following[0].said
    assert following[0].serves in (2, 3)
    assert not following[0].stand_in
    assert has(bar.shown("Low Daiquiri"), "4 serves, then .*aged rum.* for [23] more")


def test_rum_in_a_stirred_drink_is_the_aged_one(bar):
    """3. Stirred with sugar and bitters is an old fashioned: age carries it. Blackstrap is a
    flavour one asks for."""
    rum = line_of(bar.drink("Keeper's Measure"), "2 oz rum")
    assert "Lantern aged rum" in rum["bottle"]
    assert is_exact(rum)


def test_gin_is_london_dry_then_old_tom_and_navy_strength_last(bar):
    """4. 200 / 60 = 3.3. Old Tom is ordinary strength; 57 % goes last. Juice of 9 serves covers
    3 + 5."""
    drink = bar.drink("Fence Post")
    assert "Thimble" in line_of(drink, "2 oz gin")["bottle"]
    assert drink["serves"] == 3
    first, *after = then(drink)
    assert "Old Larder" in first.said
    assert first.serves in (4, 5)
    assert "Bulwark" not in first.said
    assert all(each.stand_in for each in after if "Bulwark" in each.said)
    assert has(bar.shown("Fence Post"), "3 serves, then old tom.* for [45] more")


def test_navy_strength_gin_stands_in_with_a_ratio_and_a_warning_where_nothing_else_is_left(changed):
    """5. 43/57 = 0.75: same alcohol with less gin. It is still a gin, but not the one the line
    means."""
    changed.without_classics()
    changed.empty("Thimble London dry gin", "Old Larder Old Tom gin")
    drink = changed.drink("Fence Post")
    gin = line_of(drink, "2 oz gin")
    assert "Bulwark" in gin["bottle"]
    assert not is_exact(gin)
    assert drink["verdict"] == "stand_in"
    assert 0.65 <= gin["ratio"] <= 0.9
    assert any(has(each, "strength|stronger|57") for each in drink["warnings"])


def test_the_owners_house_whisky_is_poured_for_whisky(changed):
    """6. Role does not choose between ordinary whiskies in a sour, so the owner's usual does:
    350 / 60 = 5.8."""
    changed.without_classics()
    changed.tell("setting", "house", "whisky=Brack Lane Kiln Bridge blended Scotch")
    drink = changed.drink("Plain Whisky Sour")
    assert "Kiln Bridge" in line_of(drink, "2 oz whisky")["bottle"]
    assert drink["serves"] == 5


def test_smoky_scotch_is_offered_for_whisky_only_as_a_stand_in_with_a_warning(changed):
    """7. A peated malt takes a sour over. It may be offered, never slipped in."""
    changed.without_classics()
    changed.empty("Cooper's Stile", "Split Gate", "Kiln Bridge")
    for within in ("close", "loose"):
        drink = changed.drink("Plain Whisky Sour", "--within", within)
        whisky = line_of(drink, "2 oz whisky")
        assert drink["verdict"] != "ready"
        assert not is_exact(whisky)
    assert "Peat Drift" in whisky["bottle"]
    assert any(has(each, "smok|peat") for each in drink["warnings"])


def test_vodka_is_plain_vodka_and_flavoured_vodka_is_none(bar):
    """8. A flavoured vodka is not vodka. Lemons suffice for 10, vodka for 8."""
    drink = bar.drink("Harrow Sour")
    assert "Plain Harrow" in line_of(drink, "2 oz vodka")["bottle"]
    assert drink["serves"] == 8
    assert all(each.stand_in for each in then(drink) if "Pith" in each.said)


def test_tequila_in_a_margarita_is_blanco_and_reposado_follows(bar):
    """9. 330 / 60 = 5.5; blanco is the role in a shaken sour; mezcal is no tequila."""
    drink = bar.drink("Margarita")
    assert "Ledra blanco" in line_of(drink, "2 oz tequila")["bottle"]
    assert drink["serves"] == 5
    following = then(drink)
    assert "Ledra reposado" in following[0].said
    assert "Smoke Ditch" not in following[0].said


def test_overproof_rum_that_a_line_asks_for_is_no_stand_in(bar):
    """10. *Only when asked* and here the line asks: the float needs the strength."""
    drink = bar.drink("Beacon")
    white, overproof = line_of(drink, "2 oz white rum"), line_of(drink, "1/4 oz overproof rum")
    assert "Low Water" in white["bottle"]
    assert "Signal" in overproof["bottle"]
    assert is_exact(white)
    assert is_exact(overproof)
    assert not any(has(each, "only when asked|stand-in|stands in") for each in drink["warnings"])


def test_bourbon_is_counted_over_both_bottles_the_open_one_first_and_rye_follows(bar, changed):
    """11. 90 + 700 = 790 / 60 = 13.2; the same product twice is *like*. Finish the open one. Rye is
    nearest; 3 oranges give 15 peels."""
    drink = bar.drink("Old Fashioned")
    assert "Cooper's Stile" in line_of(drink, "2 oz bourbon")["bottle"]
    assert drink["serves"] == 13
    following = then(drink)
    assert "Split Gate" in following[0].said
    assert following[0].stand_in
    assert following[0].serves in (2, 3, 4)
    opened, sealed = changed.ids("Cooper's Stile")
    shoot = changed.shoot({"Old Fashioned": 1})
    assert shoot.drawn_from(opened) == pytest.approx(60, abs=1)
    assert shoot.drawn_from(sealed) == 0


def test_egg_white_is_the_pasteurised_one(bar):
    """12. The same foam without the risk, open since yesterday and good for three days; raw eggs
    are kept whole."""
    drink = bar.drink("Moth")
    assert "pasteurised" in (line_of(drink, "1 egg white")["bottle"] or "")
    assert drink["serves"] == 4


def test_sweet_vermouth_is_the_open_bottle(bar, changed):
    """13. Rye: 240 / 60 = 4; that takes 120 ml of the 300 open. 21 of 49 days: good, and do not
    crack a second."""
    drink = bar.drink("Manhattan")
    assert "Red Comb" in line_of(drink, "sweet vermouth")["bottle"]
    assert drink["serves"] == 4
    assert not any("Red Comb" in each for each in drink["warnings"])
    opened, sealed = changed.ids("Red Comb")
    shoot = changed.shoot({"Manhattan": 4})
    assert shoot.drawn_from(opened) == pytest.approx(120, abs=2)
    assert shoot.drawn_from(sealed) == 0
