"""Undo and redo of an action that changed one record several times: in its own sequence."""

from __future__ import annotations

import pytest
from sqlalchemy import select

from barkeep.domain.bottles.bottle import Label
from barkeep.domain.ingredients.relations import StandIn
from barkeep.store import schema
from barkeep.store.bottles import read_products
from barkeep.store.knowledge import read_own_stand_ins, read_settings
from tests.engines import on_both
from tests.store.conftest import fill

pytestmark = on_both

GIN = Label("Dry gin", "Hollow Lamp", "london-dry-gin", 700.0)


def prices(store):
    with store.reading() as connection:
        return {each.name: each.price for each in read_products(connection)}


def stand_ins(store):
    with store.reading() as connection:
        return [(each.offered, each.closeness) for each in read_own_stand_ins(connection)]


@pytest.fixture
def shelf(store):
    fill(store)
    with store.unit_of_work("Price") as work:
        work.change("product", (1,), price=1.0)
    return store


def test_a_record_changed_twice_goes_back_to_what_it_was_and_on_to_the_last(shelf):
    with shelf.unit_of_work("Price twice") as work:
        work.change("product", (1,), price=2.0)
        work.change("product", (1,), price=3.0)
    for _ in range(2):
        assert list(prices(shelf).values()) == [3.0]
        shelf.undo_or_redo("undo")
        assert list(prices(shelf).values()) == [1.0]
        shelf.undo_or_redo("redo")
    shelf.undo_or_redo("undo")
    shelf.undo_or_redo("undo")
    assert list(prices(shelf).values()) == [None]


def test_a_record_changed_there_and_back_again_is_undone_too(shelf):
    with shelf.unit_of_work("There and back") as work:
        for price in (2.0, 1.0, 2.0):
            work.change("product", (1,), price=price)
    shelf.undo_or_redo("undo")
    assert list(prices(shelf).values()) == [1.0]
    shelf.undo_or_redo("redo")
    assert list(prices(shelf).values()) == [2.0]


def test_a_record_added_and_then_changed_is_hidden_and_comes_back_as_it_became(shelf):
    with shelf.unit_of_work("Add and price") as work:
        (key,) = work.insert("product", [GIN])
        work.change("product", (key,), price=4.0)
        work.change("product", (key,), price=5.0)
    for _ in range(2):
        assert prices(shelf)["Dry gin"] == 5.0
        shelf.undo_or_redo("undo")
        assert "Dry gin" not in prices(shelf)
        shelf.undo_or_redo("redo")


def test_a_record_added_and_taken_away_again_leaves_nothing_either_way(shelf):
    with shelf.unit_of_work("Add and remove") as work:
        (key,) = work.insert("product", [GIN])
        work.put("product", (key,), None)
    for way in ("undo", "redo", "undo"):
        assert "Dry gin" not in prices(shelf)
        shelf.undo_or_redo(way)
    assert "Dry gin" not in prices(shelf)


def test_what_is_deleted_and_put_anew_under_one_key_goes_back_in_order(store):
    key = ("gin", "vodka")

    def said(closeness):
        return StandIn("gin", "vodka", closeness, 1.0, "it is close")

    with store.unit_of_work("Say") as work:
        work.put("own_stand_in", key, said(0.5))
    with store.unit_of_work("Say otherwise") as work:
        work.put("own_stand_in", key, None)
        work.put("own_stand_in", key, said(0.6))
        work.put("own_stand_in", key, None)
        work.put("own_stand_in", key, said(0.7))
    assert stand_ins(store) == [("vodka", 0.7)]
    store.undo_or_redo("undo")
    assert stand_ins(store) == [("vodka", 0.5)]
    store.undo_or_redo("redo")
    assert stand_ins(store) == [("vodka", 0.7)]


def test_the_sequence_is_written_and_not_left_to_the_file(shelf):
    """Images are put back by their numbers, whatever order the rows lie in."""
    with shelf.unit_of_work("Names") as work:
        for name in ("one", "two", "three"):
            work.put("setting", ("name",), {"key": "name", "value": name})
    with shelf.reading() as connection:
        kept = connection.execute(
            select(schema.action_image.c.position, schema.action_image.c.after)
            .where(schema.action_image.c.action_id == 3)
            .order_by(schema.action_image.c.position)
        ).all()
    assert [(place, image["value"]) for place, image in kept] == list(
        enumerate(("one", "two", "three"))
    )
    shelf.undo_or_redo("undo")
    shelf.undo_or_redo("redo")
    with shelf.reading() as connection:
        assert read_settings(connection).name == "three"
