"""Bottles on a scale and dashes in a jug: what is learned, kept, counted with and taken back."""

from __future__ import annotations

from dataclasses import replace
from math import inf, nan

import pytest

from barkeep.application.bar import Bar
from barkeep.domain.bottles.bottle import Label, Tare, fill_sigma
from barkeep.domain.bottles.containers import container_of
from barkeep.domain.bottles.levels import MeasuredLevel, parse_level
from barkeep.errors import (
    BelowTare,
    DensityUnknown,
    InvalidField,
    TareUnknown,
    UnknownName,
    UnlikelyTare,
    WeightAboveFull,
)
from tests.application.conftest import gin_draft

GIN = Label("Lamp Room dry gin", "Pellow & Rudge", "london-dry-gin", 700.0, abv_percent=43.0)

CREAM = Label("Milk Churn", "Tansy Lock", "cream-liqueur", 700.0, abv_percent=17.0)


@pytest.fixture
def knowledge():
    """The shipped world: cream is known there."""
    from barkeep.application.knowledge import shipped

    return shipped()


def shelve(bar: Bar, draft: Label = GIN):
    return bar.inventory.receive_new(draft).value


def by_text(bar: Bar, bottle_id: int, text: str) -> MeasuredLevel:
    bottle = next(each for each in bar.snapshot.bottles if each.id == bottle_id)
    container = container_of(bottle, bar.snapshot.knowledge.tree, bar.snapshot.bottles)
    return parse_level(text, container)


def count(bar: Bar, bottle_id: int, text: str):
    (counted,) = bar.counting.count({bottle_id: by_text(bar, bottle_id, text)}).value
    return counted


class TestTare:
    def test_weighed_empty_it_is_kept_and_counted_with(self, bar, reopen):
        gin = shelve(bar)
        done = bar.counting.learn_tare(gin.id, 486.0)
        assert done.label == "Weigh Pellow & Rudge Lamp Room dry gin empty"
        assert done.value.bottle.tare == Tare(486.0, 1.0)
        assert done.value.sentence == "Pellow & Rudge Lamp Room dry gin weighs 486 g ± 2 empty."
        counted = count(bar, gin.id, "783 g")
        assert counted.counted == pytest.approx(315.2, abs=0.3)
        level = counted.bottle.level
        assert (level.method, level.sigma) == ("weight", pytest.approx(1.5, abs=0.1))
        bar.close()
        (again,) = reopen().snapshot.bottles
        assert (again.tare, again.level) == (Tare(486.0, 1.0), level)

    def test_weighed_full_what_it_should_hold_is_taken_off(self, bar):
        gin = shelve(bar)
        weighed = bar.counting.learn_tare(gin.id, 1146.0, full=True).value
        assert weighed.bottle.full_g == 1146.0
        assert weighed.bottle.tare.weight_g == pytest.approx(486.6, abs=0.1)
        assert weighed.bottle.tare.sigma_g == pytest.approx(7.7, abs=0.1)
        assert weighed.sentence == "Pellow & Rudge Lamp Room dry gin weighs 487 g ± 15 empty."
        assert count(bar, gin.id, "1146 g").counted == pytest.approx(700.0)

    def test_a_like_bottle_lends_its_own(self, bar):
        gin = shelve(bar)
        second = bar.inventory.receive(gin.product.id).value
        with pytest.raises(TareUnknown):
            by_text(bar, second.id, "783 g")
        bar.counting.learn_tare(gin.id, 486.0)
        own, lent = (by_text(bar, each, "783 g") for each in (gin.id, second.id))
        assert lent.amount == own.amount
        assert lent.sigma > 5 * own.sigma

    def test_undo_takes_it_back_and_redo_gives_it_again(self, bar):
        gin = shelve(bar)
        bar.counting.learn_tare(gin.id, 486.0)
        bar.undo()
        assert bar.snapshot.bottles == (gin,)
        with pytest.raises(TareUnknown):
            by_text(bar, gin.id, "783 g")
        bar.redo()
        assert bar.snapshot.bottles[0].tare == Tare(486.0, 1.0)

    @pytest.mark.parametrize("weight_g", [0.0, -1.0, nan, inf, 30_000.0])
    def test_what_is_no_weight_writes_nothing(self, bar, weight_g):
        gin = shelve(bar)
        label = bar.undo_label
        for full in (False, True):
            with pytest.raises(InvalidField):
                bar.counting.learn_tare(gin.id, weight_g, full)
        with pytest.raises(UnlikelyTare):
            bar.counting.learn_tare(gin.id, 400.0, full=True)
        with pytest.raises(UnknownName):
            bar.counting.learn_tare(99, 486.0)
        assert bar.undo_label == label

    def test_two_weights_that_do_not_go_together_are_kept_and_said(self, bar):
        gin = shelve(bar)
        bar.counting.learn_tare(gin.id, 486.0)
        said = bar.counting.learn_tare(gin.id, 1086.0, full=True).value.sentence
        assert "with 1086 g full that would be 637 ml in it, not 700" in said
        assert bar.snapshot.bottles[0].tare == Tare(486.0, 1.0)

    def test_an_odd_glass_is_believed_and_said(self, bar):
        gin = shelve(bar)
        weighed = bar.counting.learn_tare(gin.id, 100.0).value
        assert weighed.warning.startswith("that is light for a bottle of 700 ml")
        assert f"; {weighed.warning}." in weighed.sentence
        assert bar.counting.learn_tare(gin.id, 486.0).value.warning == ""

    def test_a_corrected_strength_moves_a_worked_out_tare(self, bar):
        gin = shelve(bar)
        bar.counting.learn_tare(gin.id, 1146.0, full=True)
        before = bar.snapshot.bottles[0].tare
        stronger = Label(GIN.name, GIN.maker, GIN.ingredient, 700.0, abv_percent=57.0)
        bar.inventory.change_product(gin.product.id, stronger)
        assert bar.snapshot.bottles[0].tare.weight_g > before.weight_g + 15
        assert count(bar, gin.id, "1146 g").counted == pytest.approx(700.0)
        bar.undo()
        bar.undo()
        assert bar.snapshot.bottles[0].tare == before

    def test_a_size_that_a_full_weight_rules_out_is_refused(self, bar):
        gin = shelve(bar)
        bar.counting.learn_tare(gin.id, 1146.0, full=True)
        before = bar.snapshot
        with pytest.raises(UnlikelyTare):
            bar.inventory.change_product(
                gin.product.id, Label(GIN.name, GIN.maker, GIN.ingredient, 1500.0)
            )
        assert bar.snapshot is before


class TestCream:
    def test_both_weighings_teach_its_density(self, bar, reopen):
        cream = shelve(bar, CREAM)
        with pytest.raises(DensityUnknown):
            by_text(bar, cream.id, "877 g")
        first = bar.counting.learn_tare(cream.id, 1242.0, full=True).value
        assert first.waits_for_empty and first.density_g_per_ml is None
        assert "once it is empty" in first.sentence
        with pytest.raises(DensityUnknown):
            by_text(bar, cream.id, "877 g")
        done = bar.counting.learn_tare(cream.id, 512.0)
        assert done.value.density_g_per_ml == pytest.approx(1.0440, abs=0.0001)
        assert "weighs 1.044 g per ml" in done.value.sentence
        counted = count(bar, cream.id, "877 g")
        assert counted.counted == pytest.approx(350.0)
        assert counted.bottle.level.sigma == pytest.approx(fill_sigma(700.0) / 2, rel=0.1)
        bar.close()
        later = reopen()
        assert later.snapshot.products[0].density_g_per_ml == done.value.density_g_per_ml
        later.undo()
        later.undo()
        assert later.snapshot.products[0].density_g_per_ml is None
        assert later.snapshot.bottles[0].full_g == 1242.0

    def test_the_next_bottle_of_it_is_weighed_full_at_once(self, bar):
        cream = shelve(bar, CREAM)
        bar.counting.learn_tare(cream.id, 512.0)
        bar.counting.learn_tare(cream.id, 1242.0, full=True)
        second = bar.inventory.receive(cream.product.id).value
        weighed = bar.counting.learn_tare(second.id, 1251.0, full=True).value
        assert weighed.bottle.tare.weight_g == pytest.approx(521.0, abs=0.1)
        assert count(bar, second.id, "1251 g").counted == pytest.approx(700.0)

    def test_its_label_may_change_and_the_density_stays(self, bar):
        cream = shelve(bar, CREAM)
        bar.counting.learn_tare(cream.id, 512.0)
        density = bar.counting.learn_tare(cream.id, 1242.0, full=True).value.density_g_per_ml
        wanted = replace(CREAM, price=15.0, density_g_per_ml=density)
        assert bar.inventory.change_product(cream.product.id, wanted).value.price == 15.0
        assert count(bar, cream.id, "512 g").counted == 0.0


class TestCounting:
    def test_a_count_says_whether_it_can_be_told_apart(self, bar):
        gin = shelve(bar)
        bar.counting.learn_tare(gin.id, 486.0)
        first = count(bar, gin.id, "0.5")
        assert first.told_apart and first.verdict == "350 ml less than expected"
        near = count(bar, gin.id, "783 g")
        assert not near.told_apart
        assert near.sentence == ("315 ml ± 3, as expected (350 ml): 35 ml less, within ± 70 ml")
        gone = count(bar, gin.id, "760 g")
        assert gone.told_apart and gone.variance == pytest.approx(24.4, abs=0.2)

    def test_pours_since_the_last_count_are_in_doubt_too(self, bar):
        gin = shelve(bar)
        bar.counting.learn_tare(gin.id, 486.0)
        count(bar, gin.id, "783 g")
        for _ in range(4):
            bar.inventory.pour(gin.id, 50.0)
        (now,) = bar.snapshot.bottles
        assert now.level.expected_sigma == pytest.approx((1.5**2 + 4 * 2.0) ** 0.5, abs=0.1)
        counted = bar.counting.count({gin.id: MeasuredLevel(109.0, "volume", 1.0)}).value[0]
        assert counted.compared.doubt == pytest.approx(6.8, abs=0.3)
        assert not counted.told_apart

    def test_a_sealed_bottle_on_the_scale_stays_sealed(self, bar):
        gin = shelve(bar)
        bar.counting.learn_tare(gin.id, 486.0)
        assert count(bar, gin.id, "1140 g").bottle.level.state == "sealed"
        assert count(bar, gin.id, "1100 g").bottle.level.state == "open"

    def test_refusals_write_nothing(self, bar):
        gin = shelve(bar)
        bar.counting.learn_tare(gin.id, 486.0)
        before = bar.snapshot
        with pytest.raises(BelowTare):
            by_text(bar, gin.id, "400 g")
        with pytest.raises(WeightAboveFull):
            by_text(bar, gin.id, "1300 g")
        assert bar.snapshot is before


class TestDasher:
    def test_it_is_kept_and_forgotten(self, bar, reopen):
        bitters = shelve(bar, gin_draft(name="Bitters", size=200.0, ingredient="aromatic-bitters"))
        done = bar.counting.set_dasher(bitters.id, 0.3)
        assert (done.value.dash_ml, done.label) == (0.3, "Set the dasher of Tansy Lock Bitters")
        bar.close()
        later = reopen()
        assert later.snapshot.bottles[0].dash_ml == 0.3
        assert later.counting.set_dasher(bitters.id, None).value.dash_ml is None
        later.undo()
        assert later.snapshot.bottles[0].dash_ml == 0.3

    @pytest.mark.parametrize("dash_ml", [0.0, -1.0, nan, inf, 30.0])
    def test_what_is_no_dash_is_refused(self, bar, dash_ml):
        bitters = shelve(bar)
        with pytest.raises(InvalidField, match=r"a dash is 0\.05 to 2 ml"):
            bar.counting.set_dasher(bitters.id, dash_ml)

    def test_limes_have_none(self, bar):
        limes = shelve(bar, Label("Limes", "", "lime", 12.0, "each"))
        with pytest.raises(InvalidField, match="only what is poured"):
            bar.counting.set_dasher(limes.id, 0.3)
        with pytest.raises(InvalidField, match="not poured"):
            bar.counting.learn_tare(limes.id, 500.0)
