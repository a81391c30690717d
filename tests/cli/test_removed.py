"""What was removed is listed and comes back, from the command line."""

from __future__ import annotations

import pytest

from barkeep.application.bar import Bar


@pytest.fixture
def with_gaps(bar):
    """A bar from which a bottle with its product, a spec and a shoot were removed."""
    with Bar.open(bar) as opened:
        seen = opened.snapshot
        alone = next(
            each
            for each in seen.bottles
            if sum(other.product.id == each.product.id for other in seen.bottles) == 1
            and each.level.amount
        )
        opened.inventory.remove(alone.id)
        opened.inventory.remove_product(alone.product.id)
        opened.specs.remove(seen.specs[0].id)
        opened.shoots.remove(seen.shoots[0].id)
    return bar, alone, seen


def listed(barkeep, bar):
    return barkeep("--bar", bar, "removed", "list", "--json").answer["removed"]


def test_a_bar_from_which_nothing_was_removed_says_so(barkeep, bar):
    assert barkeep("--bar", bar, "removed", "list").out == "Nothing was removed.\n"


def test_everything_is_listed(barkeep, with_gaps):
    bar, bottle, seen = with_gaps
    found = {each["kind"]: each for each in listed(barkeep, bar)}
    assert found.keys() == {"bottle", "product", "spec", "shoot"}
    assert found["bottle"]["id"] == bottle.id
    assert found["bottle"]["left"] == pytest.approx(bottle.level.amount, abs=0.01)
    assert found["product"]["name"] == bottle.product.title
    assert found["spec"]["name"] == seen.specs[0].name
    assert found["shoot"]["name"] == seen.shoots[0].theme


def test_each_comes_back_as_it_was_and_undo_takes_it_away_again(barkeep, with_gaps):
    bar, bottle, seen = with_gaps
    said = barkeep("--bar", bar, "removed", "bring-back", "bottle", str(bottle.id))
    assert said.out == f"The bottle {bottle.product.title} (#{bottle.id}) is back.\n"
    barkeep("--bar", bar, "removed", "bring-back", "spec", seen.specs[0].name.upper())
    barkeep("--bar", bar, "removed", "bring-back", "shoot", seen.shoots[0].theme)
    with Bar.open(bar) as opened:
        now = opened.snapshot
        assert (now.products, now.bottles) == (seen.products, seen.bottles)
        assert (now.specs, now.trials, now.shoots) == (seen.specs, seen.trials, seen.shoots)
    assert listed(barkeep, bar) == []
    for _ in range(3):
        barkeep("--bar", bar, "undo")
    assert len(listed(barkeep, bar)) == 4
    barkeep("--bar", bar, "redo")
    assert {each["kind"] for each in listed(barkeep, bar)} == {"spec", "shoot"}


def test_a_bottle_whose_coming_in_was_undone_never_was(barkeep, bar):
    title = barkeep("--bar", bar, "product", "list", "--json").answer["products"][0]["product"]
    barkeep("--bar", bar, "receive", title)
    barkeep("--bar", bar, "undo")
    assert listed(barkeep, bar) == []


def test_a_name_that_is_taken_by_now_is_refused(barkeep, bar):
    for _ in range(2):
        barkeep("--bar", bar, "product", "add", "Old gin", "--ingredient", "gin")
        barkeep("--bar", bar, "product", "remove", "Old gin")
    barkeep("--bar", bar, "product", "add", "Old gin", "--ingredient", "gin")
    (first, second) = sorted(each["id"] for each in listed(barkeep, bar))
    assert barkeep("--bar", bar, "removed", "bring-back", "product", "old gin").refusal == (
        f"“old gin” could be more than one removed product: #{second} Old gin or #{first} Old gin. "
        "Say which."
    )
    assert barkeep("--bar", bar, "removed", "bring-back", "product", f"#{first}").refusal == (
        "There is already a product called “Old gin”; choose another name."
    )


def test_what_is_not_removed_is_refused(barkeep, with_gaps):
    bar, _bottle, seen = with_gaps
    refusal = barkeep("--bar", bar, "removed", "bring-back", "spec", seen.specs[1].name).refusal
    assert refusal == (
        f"There is no removed spec called “{seen.specs[1].name}”. "
        f"The nearest is {seen.specs[0].name}."
    )
