"""What to pour when something stands in: never worse, within bounds, and the best there is."""

from __future__ import annotations

from collections import defaultdict
from functools import cache
from itertools import product as grid

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from barkeep.domain.drink.contents import Pour, pours_for
from barkeep.domain.pouring.verdicts import tonight
from barkeep.domain.specs.spec import Spec
from barkeep.domain.stand_ins.corrections import (
    Correction,
    correction_for,
    correction_of,
    in_words,
    strength_share,
)
from barkeep.domain.stand_ins.offers import stand_in
from barkeep.domain.stand_ins.rebalancing import ChangingLine, Rebalancing, measurable, solve
from tests.domain.drink.test_analysis import BARE, TREE, bar, bottle, classic, written

KNOWN = defaultdict(list)
for each_entry in BARE.knowledge.stand_ins:
    KNOWN[each_entry.wanted].append(each_entry)
STAND_INS = [
    (spec, number, entry)
    for spec in BARE.knowledge.classics
    for number, line in enumerate(spec.lines)
    if line.required
    for entry in KNOWN.get(line.ingredient, ())
]
SOUR = "60 ml blanco tequila\n22.5 ml triple sec\n15 ml lime juice\n7.5 ml simple syrup"


def instead(spec: Spec, number: int, key: str, ratio: float = 1.0, snapshot=BARE):
    pours = list(pours_for(spec, snapshot))
    pours[number] = Pour(key, ratio=ratio)
    return correction_of(spec, pours, frozenset({number}), snapshot)


@cache
def all_of_them() -> list[Correction | None]:
    """What each known stand-in needs in each classic that it may be poured in."""
    return [instead(spec, number, each.offered, each.ratio) for spec, number, each in STAND_INS]


holds = st.tuples(st.floats(0.0, 0.5), st.floats(0.0, 0.9), st.floats(0.0, 0.06), st.just(1.0))
parts = st.builds(
    lambda per_ml, start: ChangingLine(per_ml, start, 0.5 * start, 2.0 * start),
    holds,
    st.floats(2.0, 60.0),
)
problems = st.builds(
    lambda some, sizes: Rebalancing(
        tuple(some),
        tuple(
            sum(part.per_ml[each] * part.start_ml for part in some) * size
            for each, size in enumerate(sizes)
        ),
    ),
    st.lists(parts, min_size=1, max_size=4),
    st.tuples(*[st.floats(0.4, 2.5)] * 4),
)


def marks(ml: float) -> tuple[float, ...]:
    """Steps of 2.5 ml."""
    low = ml // 2.5 * 2.5
    return tuple(each for each in (low, low + 2.5) if each)


class TestSolving:
    @given(problems)
    def test_bounds_are_kept_and_no_start_is_better(self, problem):
        found = solve(problem)
        for part, ml in zip(problem.parts, found, strict=True):
            assert part.low_ml <= ml <= part.high_ml
        assert problem.weight(found) <= problem.weight(problem.start) + 1e-6
        assert problem.distance(found) <= problem.distance(problem.start) + 1e-6

    @settings(max_examples=40)
    @given(problems.filter(lambda each: len(each.parts) <= 3))
    def test_it_is_the_best_of_a_fine_grid(self, problem):
        steps = 40 if len(problem.parts) < 3 else 14
        axes = [
            [part.low_ml + (part.high_ml - part.low_ml) * step / steps for step in range(steps + 1)]
            for part in problem.parts
        ]
        best = min(problem.weight(each) for each in grid(*axes))
        assert problem.weight(solve(problem)) <= best + 1e-6

    @given(problems)
    def test_what_can_be_measured_is_marked_or_unchanged_and_never_worse(self, problem):
        found = measurable(problem, solve(problem), marks)
        for part, ml in zip(problem.parts, found, strict=True):
            assert part.low_ml <= ml <= part.high_ml
            assert ml == part.start_ml or ml % 2.5 == pytest.approx(0.0)
        assert problem.weight(found) <= problem.weight(problem.start)
        assert problem.distance(found) <= problem.distance(problem.start) + 1e-9

    @settings(max_examples=40)
    @given(problems.filter(lambda each: len(each.parts) <= 2))
    def test_rounding_finds_the_best_marks_around(self, problem):
        exact = solve(problem)
        choices = [
            [*(ml for ml in marks(at) if part.low_ml <= ml <= part.high_ml), part.start_ml]
            for part, at in zip(problem.parts, exact, strict=True)
        ]
        # One line at a time is moved, so the least of all pairs may be missed, but not by much.
        best = min(problem.weight(each) for each in grid(*choices))
        assert problem.weight(measurable(problem, exact, marks)) <= best * 1.5 + 0.5


class TestDrinks:
    @given(st.sampled_from(STAND_INS))
    def test_the_identical_ingredient_needs_no_correction(self, case):
        spec, number, _entry = case
        assert instead(spec, number, spec.lines[number].ingredient) is None

    @given(st.sampled_from(STAND_INS))
    def test_a_correction_is_nearer_and_within_bounds(self, case):
        spec, number, entry = case
        found = instead(spec, number, entry.offered, entry.ratio)
        if found is None:
            return
        assert found.distance < found.uncorrected_distance
        for change in found.changes:
            low, high = (0.25, 3.0) if change.stands_in else (0.5, 2.0)
            assert low * change.before_ml <= change.amount_ml <= high * change.before_ml

    def test_many_of_the_known_stand_ins_need_one(self):
        found = all_of_them()
        assert 50 < sum(each is not None for each in found) < len(found)

    def test_a_sweeter_stand_in_takes_less_syrup(self):
        spec = written(f"Sour\n{SOUR}\n\nShake.")
        found = instead(spec, 1, "blue-curacao")
        by_key = {change.ingredient: change for change in found.changes}
        assert by_key["simple-syrup"].amount_ml < 7.5
        assert by_key["blue-curacao"].amount_ml > 22.5
        assert "blanco-tequila" not in by_key

    def test_only_own_sweet_and_sour_lines_move(self):
        for found in all_of_them():
            for change in found.changes if found else ():
                if not change.stands_in:
                    kind = TREE[change.ingredient]
                    assert (kind.abv_percent or 0.0) < 5.0
                    assert (kind.sugar_g_per_l or 0) >= 200 or (kind.acid_g_per_l or 0) >= 20

    def test_a_dry_spirit_for_a_dry_spirit_is_poured_by_its_ratio(self):
        assert instead(classic("Daiquiri"), 0, "overproof-rum", 0.65) is None

    def test_unless_its_strength_is_another(self):
        found = instead(classic("Daiquiri"), 0, "navy-rum")
        assert found.of_strength
        (change,) = found.changes
        assert change.amount_ml * 54.5 == pytest.approx(change.line.quantity * 40.0, rel=0.08)
        assert in_words(found, TREE) == (
            "pour 1 ½ oz of navy-style rum instead of 2 oz to keep the strength"
        )
        pours = list(pours_for(classic("Daiquiri"), BARE))
        pours[0] = Pour("navy-rum")
        lines = frozenset({0})
        assert correction_of(classic("Daiquiri"), pours, lines, BARE, by_taste=lines) is None

    @given(st.sampled_from(STAND_INS))
    def test_dry_for_dry_the_alcohol_is_never_far_off_unless_by_taste(self, case):
        spec, number, entry = case
        pour = Pour(entry.offered, ratio=entry.ratio)
        share = strength_share(spec.lines[number], pour, TREE)
        found = instead(spec, number, entry.offered, entry.ratio)
        if share is None or found is None:
            return
        (change,) = found.changes
        after = share * change.amount_ml / change.before_ml
        assert abs(after - 1.0) < abs(share - 1.0)

    def test_a_small_change_is_not_worth_saying(self):
        for found in all_of_them():
            changes = found.changes if found else ()
            moves = [abs(each.amount_ml / each.before_ml - 1.0) for each in changes]
            assert not moves or max(moves) >= 0.08

    def test_a_grouping_and_what_is_not_poured_need_none(self):
        assert instead(written(f"Sour\n{SOUR}\n\nShake."), 1, "orange-liqueur") is None
        assert instead(classic("Silver Fizz"), 2, "sugar", 0.61) is None

    def test_amounts_are_in_the_measures_of_the_spec_or_the_bar(self):
        ounces = classic("Grasshopper")
        (said,) = [
            in_words(found, TREE)
            for number in range(1)
            if (found := instead(ounces, number, "maraschino-liqueur"))
        ]
        assert " oz of maraschino liqueur instead of 1 oz" in said
        metric = bar(shown_in="ml")
        found = instead(ounces, 0, "maraschino-liqueur", snapshot=metric)
        assert " ml of maraschino liqueur instead of 30 ml" in in_words(found, TREE)

    def test_what_remains_off_is_said(self):
        found = instead(written(f"Sour\n{SOUR}\n\nShake."), 1, "orange-aperitivo")
        assert isinstance(found, Correction)
        ethanol, _sugar, _acid, _volume = found.off
        assert ethanol < -0.5
        assert f"{-ethanol:.1f} g less alcohol" in in_words(found, TREE)


class TestWhereItIsSaid:
    def test_a_stand_in_within_a_spec_carries_its_correction(self):
        spec = written(f"Sour\n{SOUR}\n\nShake.")
        shelf = bar(bottle("blue-curacao"))
        offers = {each.ingredient: each for each in stand_in(shelf, "triple-sec", spec).stand_ins}
        said = offers["blue-curacao"].corrections[0]
        assert said.startswith("pour ")
        assert "of blue curaçao instead of 22.5 ml" in said
        assert "of simple syrup instead of 7.5 ml" in said
        alone = {each.ingredient: each for each in stand_in(shelf, "triple-sec").stand_ins}
        assert not any("balance" in each for each in alone["blue-curacao"].corrections)

    def test_the_label_of_the_bottle_decides(self):
        spec = written(f"Sour\n{SOUR}\n\nShake.")

        def pour(**label) -> str:
            shelf = bar(bottle("dry-curacao", **label))
            offers = stand_in(shelf, "triple-sec", spec).stand_ins
            return next(each for each in offers if each.bottle).corrections

        assert not any("balance" in each for each in pour(abv_percent=38.0, sugar_g_per_l=250.0))
        assert any("balance" in each for each in pour(abv_percent=40.0, sugar_g_per_l=80.0))

    def test_a_drink_with_a_stand_in_has_one_and_a_ready_one_has_none(self):
        weak = bottle("white-creme-de-menthe", 1, abv_percent=16.0, sugar_g_per_l=300.0)
        rest = (bottle("white-creme-de-cacao", 2), bottle("double-cream", 3))
        shelf = bar(weak, *rest)
        drink = grasshopper(shelf)
        assert drink.verdict == "stand_in"
        found = correction_for(drink, shelf)
        (stands_in,) = [each for each in found.changes if each.stands_in]
        assert stands_in.ingredient == "white-creme-de-menthe"
        assert stands_in.amount_ml > stands_in.before_ml
        whole = bar(bottle("green-creme-de-menthe", 1), *rest)
        ready = grasshopper(whole)
        assert ready.verdict == "ready"
        assert correction_for(ready, whole) is None


def grasshopper(shelf):
    return next(each for each in tonight(shelf) if each.spec.name == "Grasshopper")
