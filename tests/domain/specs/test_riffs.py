"""A riff beside its parent, and its family."""

from __future__ import annotations

from datetime import date

from barkeep.domain.specs.riffs import family, line_pairs
from barkeep.domain.specs.spec import Line, Spec
from barkeep.domain.specs.trials import Scale, Score, Trial, mean_scores, winner


def ml(key, amount, **more):
    return Line(f"{amount} ml {key}", key, amount, None, "ml", amount, **more)


PARENT = Spec("Sour", (ml("london-dry-gin", 60), ml("lemon-juice", 22.5), ml("simple-syrup", 15)))


def test_lines_are_paired_by_ingredient_then_by_kin(tree):
    riff = Spec(
        "Riff",
        (ml("orgeat", 15), ml("lime-juice", 22.5), ml("old-tom-gin", 60), ml("simple-syrup", 10)),
        riff_of="Sour",
    )
    pairs = line_pairs(PARENT, riff, tree)
    shown = [
        (p.before and p.before.ingredient, p.after and p.after.ingredient, p.change) for p in pairs
    ]
    assert shown == [
        ("london-dry-gin", "old-tom-gin", "swapped"),
        ("lemon-juice", "lime-juice", "swapped"),
        ("simple-syrup", "simple-syrup", "amount"),
        (None, "orgeat", "added"),
    ]


def test_another_range_is_another_amount_though_neither_can_be_counted(tree):
    before, after = (Line(f"2-{high} sprigs mint", "mint", 2, high, "sprig") for high in (3, 4))
    (pair,) = line_pairs(Spec("Julep", (before,)), Spec("Riff", (after,)), tree)
    assert pair.change == "amount"


def test_a_spec_beside_itself_is_the_same_in_every_line(tree, knowledge):
    for spec in knowledge.classics:
        assert {pair.change for pair in line_pairs(spec, spec, tree)} == {"same"}


def test_every_line_of_both_is_in_exactly_one_pair(tree, knowledge):
    for one, other in zip(knowledge.classics, knowledge.classics[1:], strict=False):
        pairs = line_pairs(one, other, tree)
        assert [pair.before for pair in pairs if pair.before] == list(one.lines)
        after = [pair.after for pair in pairs if pair.after]
        assert sorted(map(repr, after)) == sorted(map(repr, other.lines))


def test_a_family_is_told_from_its_oldest_down():
    specs = [
        Spec("A", PARENT.lines),
        Spec("C", PARENT.lines, riff_of="b"),
        Spec("B", PARENT.lines, riff_of="A"),
        Spec("D", PARENT.lines, riff_of="A"),
        Spec("Other", PARENT.lines),
    ]
    told = [(version.spec.name, version.depth) for version in family("c", specs)]
    assert told == [("A", 0), ("B", 1), ("C", 2), ("D", 1)]
    assert [version.spec.name for version in family("Other", specs)] == ["Other"]
    assert family("nobody", specs) == ()


def test_a_circle_of_riffs_is_cut():
    specs = [Spec("A", (), riff_of="B"), Spec("B", (), riff_of="A")]
    assert sorted(version.spec.name for version in family("A", specs)) == ["A", "B"]


def test_a_lost_parent_ends_the_climb():
    told = family("B", [Spec("B", (), riff_of="gone"), Spec("C", (), riff_of="B")])
    assert [(version.spec.name, version.parent) for version in told] == [("B", None), ("C", "B")]


def trial(number, spec_id, day, won=False, *scores):
    return Trial(number, spec_id, date(2026, 11, day), tuple(scores), won=won)


def test_scores_are_means_over_tasters_and_trials():
    one = trial(1, 1, 2, False, Score("Ada", "Balance", 4), Score("Ben", "Balance", 2))
    two = trial(2, 1, 3, False, Score("Ada", "Balance", 3), Score("Ada", "On theme", 5))
    assert mean_scores([one, two]) == {"Balance": 3.0, "On theme": 5.0}
    assert one.tasters == ("Ada", "Ben")


def test_the_version_that_won_last_is_the_winner():
    trials = [trial(1, 1, 5, True), trial(2, 2, 5, True), trial(3, 3, 9, True), trial(4, 1, 9)]
    assert winner(trials, [1, 2]) == 2
    assert winner(trials, [1, 2, 3]) == 3
    assert winner(trials, [4]) is None


def test_a_scale_may_run_either_way():
    assert Scale("Balance", 1, 5).holds(5)
    assert Scale("Faults", 5, 1).holds(1)
    assert not Scale("Balance").holds(5.5)
