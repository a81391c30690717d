"""Which bottle next, and what a shoot on a day to come wants."""

from __future__ import annotations

from datetime import date

from tests.second_bar.asking import Json, about, flat, fruit_counts, has

SHOOT_DAY = date(2026, 12, 5)
MINT = r"(^|· )mint( leaf| leaves| sprigs?)?( ·|$)"
JUICES_AND_SYRUPS = {"Lime juice", "Lemon juice", "Honey syrup"}


def rows(bar) -> list[Json]:
    """What Next bottle says that turns a drink, in its order."""
    return [each for each in bar.answer("next-bottle")["candidates"] if each["unlocks"]]


def names_of(row: Json) -> str:
    """What a row would have one buy: its kind and its forms."""
    return " · ".join(dict.fromkeys((row["ingredient"], *row.get("forms", ()))))


def is_from_market(row: Json) -> bool:
    """Whether it is bought at the market."""
    return any(each == "market" for each in row.values())


def test_mint_is_one_purchase_at_the_market(bar):
    """35. A bunch is bought; leaves are plucked from it. Bottles lead; what fruit or honey gives
    here is never a purchase."""
    found = rows(bar)
    (mint,) = (each for each in found if has(names_of(each), MINT))
    assert is_from_market(mint)
    assert {"Mojito", "Southside", "Mint Julep"} <= set(mint["unlocks"])
    assert found.index(mint) > 0
    assert not is_from_market(found[0])
    for row in found:
        assert not set(names_of(row).split(" · ")) & JUICES_AND_SYRUPS


def test_grenadine_and_its_fruit_are_one_purchase(bar):
    """36. One need, three ways. The carton is past its date but three oranges give 204 ml: two
    Sunrises."""
    found = rows(bar)
    (grenadine,) = (each for each in found if has(names_of(each), "grenadine|pomegranate"))
    assert "Tequila Sunrise" in grenadine["unlocks"]
    assert has(names_of(grenadine), "grenadine")
    assert has(names_of(grenadine), "pomegranate")
    assert not any(has(names_of(each), "^orange juice|· orange juice") for each in found)


def test_limes_and_lemons_of_a_shoot_agree_in_sheet_and_shopping(changed):
    """37. 120 / 26 = 4.6, so 5 squeezed; one more cut in six for 4 wedges; by then the jar is bad.
    6 wedges are one lemon. No large cube is used."""
    shoot = changed.shoot({"Daiquiri": 4, "Sexton's Smash": 2}, on=SHOOT_DAY)
    assert shoot.drawn("Lime juice") == 0
    mise = "\n".join(shoot.steps)
    limes = fruit_counts(mise, "lime")
    assert set(limes) == {6} or sum(limes) == 6, limes
    assert set(fruit_counts(mise, "lemon")) == {1}
    assert max(fruit_counts(shoot.sheet, "lime")) <= 6
    assert set(fruit_counts(shoot.sheet, "lemon")) == {1}
    assert not has("\n".join(map(flat, shoot.items)), "lime|lemon")


def test_ice_of_a_shoot_is_cubes_and_crushed_with_a_source(changed):
    """37. 120 / 26 = 4.6, so 5 squeezed; one more cut in six for 4 wedges; by then the jar is bad.
    6 wedges are one lemon. No large cube is used."""
    shoot = changed.shoot({"Daiquiri": 4, "Sexton's Smash": 2}, on=SHOOT_DAY)
    ice = [each for each in shoot.sheet.splitlines() if has(each, r"\bice\b|\bcubes?\b")]
    steps = [each for each in ice if each.startswith("[ ]")]
    cubes, crushed = about(steps, "cube"), about(steps, "crushed")
    assert cubes
    assert crushed
    assert cubes != crushed
    assert not has("\n".join(steps), "large")
    assert has("\n".join(ice), r"common practice|from memory|source|p\. ")
