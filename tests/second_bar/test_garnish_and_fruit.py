"""How a garnish stands, and how much fruit and how many eggs a drink takes."""

from __future__ import annotations

import pytest

from tests.second_bar.asking import about, flat, fruit_counts, has

TWO_OZ_AND_THREE_QUARTERS_ML = (2 + 0.75) * 29.5735


def test_a_gibson_without_its_onion_is_none(bar, changed):
    """23. The onion is the drink. Everything else is there."""
    said = bar.garnish("Gibson")
    assert has(said, "onion")
    assert has(said, r"\bmissing\b")
    listed = bar.shown("Gibson")
    assert not listed or has(listed, "onion")
    items = changed.shoot({"Gibson": 1}).items
    assert has("\n".join(map(flat, items)), "onion")


def test_orange_peel_is_to_cut_from_oranges(bar, changed):
    """24. Three oranges stand there; one gives five peels."""
    said = bar.garnish("Keeper's Measure")
    assert has(said, "to cut.*orange")
    assert not has(said, r"\bmissing\b")
    shoot = changed.shoot({"Keeper's Measure": 3})
    assert has(about(shoot.steps, "orange", "peel"), r"\b3\b")
    assert not has("\n".join(map(flat, shoot.items)), "orange")


def test_a_salt_rim_is_there_and_laid_out_before_the_shake(bar, changed):
    """25. 300 g of salt: a rimmed saucer is laid out before the shake."""
    said = bar.garnish("Salt Margin")
    assert has(said, "salt")
    assert has(said, r"\bthere\b")
    assert not has(said, r"\bmissing\b|no salt")
    shoot = changed.shoot({"Salt Margin": 1})
    assert has("\n".join(shoot.steps), "(rim|saucer)[^\n]*salt|salt[^\n]*(rim|saucer)")
    assert not has("\n".join(map(flat, shoot.items)), "salt")


def test_muddled_wedges_give_their_juice_and_take_two_lemons_for_four(bar, changed):
    """26. A wedge is a sixth, pressed it gives 5-7 ml at 48 g/l: this is a sour."""
    found = bar.answer("spec", "analyse", "Sexton's Smash")
    juice_ml = found["start_volume_ml"] - TWO_OZ_AND_THREE_QUARTERS_ML
    assert 15 - 0.5 <= juice_ml <= 21 + 0.5
    assert 0.7 < found["acid_g_per_l"] * found["served_volume_ml"] / 1000 < 1.05
    shoot = changed.shoot({"Sexton's Smash": 4})
    assert shoot.drawn("Lemons") == 2
    assert set(fruit_counts("\n".join(shoot.steps), "lemon")) == {2}


def test_peeled_lemons_are_still_squeezed(changed):
    """27. 2 x 22.5 = 45 ml / 38 = 2 lemons; the peels come off the same fruit before it is
    halved."""
    shoot = changed.shoot({"Army and Navy": 2})
    assert shoot.drawn("Lemons") == 2
    counts = fruit_counts("\n".join(shoot.steps), "lemon")
    assert 2 in counts
    assert max(counts) == 2


def test_four_whites_are_four_eggs(changed):
    """28. One white a drink is exact: no margin breaks a fifth egg. 4 x 22.5 = 90 / 38 = 2.4."""
    changed.empty("Liquid egg white")
    shoot = changed.shoot({"Moth": 4})
    assert shoot.drawn("Eggs") == 4
    assert shoot.drawn("Lemons") == 3
    steps = "\n".join(shoot.steps)
    assert not has(steps, r"\b[56] (× )?(whole )?eggs?\b")
    assert has(steps, r"\b4 (× )?(whole )?eggs?\b")
    assert 3 in fruit_counts(steps, "lemon")


@pytest.mark.parametrize("serves", [1, 6])
def test_whites_for_so_many_are_just_so_many_eggs(changed, serves):
    """28. One white a drink is exact: no margin breaks a fifth egg. 4 x 22.5 = 90 / 38 = 2.4."""
    changed.empty("Liquid egg white")
    steps = "\n".join(changed.shoot({"Moth": serves}).steps)
    counts = fruit_counts(steps, "(?:whole )?egg")
    assert set(counts) <= {serves}, steps
