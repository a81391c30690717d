"""How a sour reads beside its family, and batches that a professional would pour."""

from __future__ import annotations

from tests.second_bar.asking import Json, SecondBar, flat, fruit_counts, has


def batch(bar: SecondBar, name: str, *argv: str) -> tuple[Json, str]:
    """A batch as JSON, and as it is printed without the general words of caution."""
    shown = bar.ask("batch", name, *argv)
    own = "\n".join(each for each in shown.splitlines() if not each.startswith("! "))
    return bar.answer("batch", name, *argv), own


def ml_of(made: Json, ingredient: str) -> float:
    """The measure of a line, in ml."""
    found = (each for each in made["lines"] if ingredient in flat(each))
    return float(next(found)["amount_ml"])


def test_the_classic_daiquiri_is_within_its_family_and_a_flat_one_is_less_sour(bar):
    """30. The classic defines the family. A quarter ounce of lime against an ounce of syrup is
    flat."""
    classic, own = (
        bar.ask("spec", "analyse", name).partition("Uncertain")[0]
        for name in ("Daiquiri", "Flat Daiquiri")
    )
    assert has(own, r"(less sour|sweeter)[^.]*than\s+usual")
    assert not has(classic, r"(less sour|sweeter)[^.]*than\s+usual")


def test_a_batch_of_eight_squeezes_what_it_needs_and_lacks_nothing(bar):
    """29. 8 x 22.5 = 180 ml (177) / 38 = 4.7; vodka 480 of 500. A batch squeezes what it needs; the
    tap is there."""
    made, shown = batch(bar, "Harrow Sour", "--serves", "8")
    assert made["short"] == []
    assert 473 <= ml_of(made, "Vodka") <= 480
    assert set(fruit_counts(shown, "lemon")) == {5}
    assert not has(shown, "short of")


def test_a_batch_of_all_the_gin_is_said_low_and_pours_no_more_than_there_is(bar):
    """31. Gin limits: 200 / 30 = 6.7; what there is is poured and serves are said low. A stirred
    drink takes some 25 %. Sweet vermouth: open 200-300 ml first."""
    made, shown = batch(bar, "Negroni", "--from", "London dry gin=200 ml")
    assert has(shown, r"about 6(\.\d)? serves")
    assert not has(shown, r"\b7 serves")
    assert 177 <= ml_of(made, "London dry gin") <= 200
    assert 150 <= made["water_ml"] <= 260
    assert 530 <= made["total_ml"] - made["water_ml"] <= 615
    assert not has(shown, r"Bulwark|Old Larder|navy|old tom|\begg|cream|ice cube|cubes")


def test_a_freezer_martini_takes_just_the_water_that_keeps_it_pourable(bar):
    """32. Base is (150 x 43 + 30 x 18) / 180 = 38.8 %. Some 33 % still pours at −18 (ethanol curve,
    from memory); the rest melts in the glass or is stirred in."""
    made, shown = batch(bar, "Dry Martini", "--serves", "2", "--served", "frozen")
    assert 5 <= made["water_ml"] <= 35
    assert 32.5 <= made["abv_percent"] <= 38
    assert has(shown, "[-−]18")
    assert has(shown, r"less water|instead of[^.]* ml|\bml less\b")


def test_a_blended_drink_is_a_base_that_is_blended_by_rounds(bar):
    """33. The ice is the water. 4 x 60 = 240 of 250; 120 ml lime is 40 + 80 = 4 limes (or 5,
    freshly squeezed)."""
    made, shown = batch(bar, "Frozen Daiquiri", "--serves", "4")
    assert made["water_ml"] == 0
    assert 236 <= ml_of(made, "White rum") <= 240
    assert has(shown, "blend")
    assert has(shown, "round")
    assert not has(shown, r"stirred|freezer|water to add|in place of what ice")


def test_a_batch_of_toddies_boils_water_and_makes_its_honey_syrup_first(bar):
    """34. The kettle is always there; 60 ml juice and four peels come from the same 2 lemons;
    nobody ices a toddy."""
    made, shown = batch(bar, "Straight Toddy", "--serves", "4")
    assert made["short"] == []
    assert 470 <= ml_of(made, "oiling water") <= 480
    assert has(shown, r"make\b[^\n]*honey syrup[^\n]*\bfirst")
    assert set(fruit_counts(shown, "lemon")) == {2}
    assert not has(shown, r"\bic(e|ed|y)\b|\bchill|short of")
