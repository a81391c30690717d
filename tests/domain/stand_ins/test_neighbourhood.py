"""The neighbours of an ingredient, and their places in its picture."""

from __future__ import annotations

from itertools import combinations

import pytest

from barkeep.application.knowledge import shipped
from barkeep.domain.ingredients.relations import NoStandIn, StandIn
from barkeep.domain.stand_ins.neighbourhood import RELATIONS, neighbourhood
from barkeep.domain.stand_ins.track_plan import LEAST_CLOSE, MOST, Box, TrackPlan, track_plan

KNOWN = shipped()
LINE = 18.0


def letters(words: str) -> float:
    """A type of which every letter is as wide."""
    return 6.5 * len(words)


def around(key: str, *owned: str):
    return neighbourhood(KNOWN, owned, key)


def drawn(key: str, wide: float = 460.0, opened=()) -> TrackPlan:
    return track_plan(around(key), wide, LINE, letters, opened=opened)


def meet(one: Box, other: Box) -> bool:
    """Whether the two share more than an edge."""
    across = one.x < other.right and other.x < one.right
    return across and one.y < other.bottom and other.y < one.bottom


def overlaps(plan: TrackPlan) -> list[tuple[Box, Box]]:
    return [pair for pair in combinations(plan.labels, 2) if meet(*pair)]


@pytest.mark.parametrize(("wide", "opened"), [(300.0, RELATIONS), (460.0, ()), (1200.0, RELATIONS)])
def test_no_label_lies_on_another_for_any_kind_of_the_tree(wide, opened):
    for key in KNOWN.tree:
        plan = drawn(key, wide, opened)
        assert not overlaps(plan), key
        for box in plan.labels:
            assert box.wide > 0 and box.x >= 0 and box.right <= wide, key
            assert box.y >= 0 and box.bottom <= plan.high, key
        marks = [each.mark for each in plan.stops]
        assert len(set(marks)) == len(marks), key
        for stop in plan.stops:
            assert plan.at(stop.label.middle) == plan.stops.index(stop), key


def test_no_track_runs_through_a_label():
    """The way to each stop meets no words but its own."""
    for key in KNOWN.tree:
        plan = drawn(key)
        others = [box for _words, box, _side in plan.headings] + [s.label for s in plan.stops]
        for stop in plan.stops:
            for (x, y), (to_x, to_y) in zip(stop.line, stop.line[1:], strict=False):
                for share in (0.25, 0.5, 0.75):
                    point = (x + share * (to_x - x), y + share * (to_y - y))
                    assert not any(box.holds(point) for box in others), (key, stop.words)


def test_the_nearer_is_the_closer_and_the_figure_is_said():
    plan = drawn("gold-rum")
    middle = plan.middle.middle[0]
    for side in ("stands_in", "stands_for"):
        stops = [each for each in plan.stops if each.relation == side and each.neighbour]
        far = [(abs(each.mark[0] - middle), each.neighbour.closeness) for each in stops]
        assert [c for _far, c in sorted(far)] == sorted((c for _far, c in far), reverse=True)
        assert all(each.figure == f"{each.neighbour.closeness:.2f}" for each in stops)
        assert all(c >= LEAST_CLOSE for _far, c in far)


def test_the_closest_are_picked_and_the_rest_counted_until_asked_for():
    many = around("gold-rum").by("stands_in")
    shut = drawn("gold-rum")
    shown = [each for each in shut.stops if each.relation == "stands_in"]
    assert next(s.neighbour for s in shown if s.neighbour) == many[0]
    assert len(shown) == MOST["stands_in"] + 1
    (more,) = [each for each in shown if each.neighbour is None]
    assert more.words == f"and {len(many) - MOST['stands_in']} more"
    everything = drawn("gold-rum", opened=["stands_in"])
    assert {s.neighbour for s in everything.stops if s.relation == "stands_in"} == set(many)
    assert everything.high > shut.high


def test_every_neighbour_can_be_walked_to_by_the_arrows():
    """From the middle, by arrow keys alone, and what is drawn is the same each time."""
    for key in ("gold-rum", "sugar", "lime-juice", "spirit", "simple-syrup"):
        plan = drawn(key)
        assert plan == drawn(key)
        seen, waiting = set[int](), [None]
        while waiting:
            at = waiting.pop()
            for way in ("left", "right", "up", "down"):
                to = plan.towards(at, way)
                if to is not None and to not in seen:
                    seen.add(to)
                    waiting.append(to)
        assert seen == set(range(len(plan.stops))), key


def test_what_is_said_of_neighbours():
    rum = around("gold-rum", "aged-rum")
    by = {(each.relation, each.key): each for each in rum.neighbours}
    assert by["above", "rum"].there and not rum.there
    aged = by["stands_in", "aged-rum"]
    assert aged.why.startswith("Close, 0.80, aged rum for gold rum: ") and aged.why.endswith(".")
    assert aged.in_words.endswith("In the bar.")
    assert "Aged rum (0.80, in the bar)" in rum.in_words
    syrup = around("simple-syrup", "sugar", "water")
    inputs = syrup.by("made_from")
    assert [each.key for each in inputs] == ["sugar", "water"]
    assert "give" in inputs[0].why and "of simple syrup" in inputs[0].why
    sugar = around("sugar")
    assert "simple-syrup" in {each.key for each in sugar.by("makes")}
    assert all(each.relation != "above" or each.closeness is None for each in sugar.neighbours)


def test_the_owners_word_and_what_nothing_replaces():
    entry = StandIn("gold-rum", "bourbon", 0.4, 0.5, "in a pinch", ("accent",), own=True)
    knowledge = type(KNOWN)(
        KNOWN.tree,
        stand_ins=(entry,),
        none=(NoStandIn("absinthe", "its wormwood"),),
    )
    (own,) = neighbourhood(knowledge, (), "gold-rum").by("stands_in")
    assert own.own and own.why == (
        "Far, 0.40, 0.5 times as much, by your own entry, bourbon for gold rum: in a pinch. "
        "Only as an accent, by the dash or barspoon."
    )
    alone = neighbourhood(knowledge, (), "absinthe")
    assert alone.in_words.endswith("Nothing stands in for it: its wormwood.")
    plan = track_plan(alone, 460.0, LINE, letters)
    assert "Nothing stands in" in [words for words, _box, _side in plan.headings]
