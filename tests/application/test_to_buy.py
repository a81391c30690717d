"""What is put on the shopping list: told with its reasons, and off it once it has come."""

from __future__ import annotations

import pytest

from barkeep.application.bar import Bar
from barkeep.application.shopping import Bought, bought_of
from barkeep.domain.bar.to_buy import ToBuy
from barkeep.domain.bottles.bottle import Label
from barkeep.domain.buying.listed import listed_as, whole_list
from barkeep.domain.buying.shopping import shopping_for, still_to_film
from barkeep.errors import InvalidField, UnknownName


@pytest.fixture
def bar(tmp_path, clock):
    with Bar.open(tmp_path / "one.bar", clock=clock) as opened:
        yield opened


@pytest.fixture
def gin(bar):
    """A product that the bar knows and has none of."""
    label = Label("Signal Oak gin", "", "gin", 700.0, price=21.0)
    return bar.inventory.add_product(label).value


def listed(bar) -> list[tuple[str, int, float | None, str]]:
    found = whole_list((), bar.snapshot)
    return [
        (each.ingredient, each.packages, each.cost, "; ".join(each.why)) for each in found.items
    ]


def test_what_is_put_on_the_list_is_bought_once_and_says_why(bar, gin):
    bar.shopping.put_on_list([ToBuy("gin", 2, gin.id, "for Milepost"), ToBuy("sweet-vermouth", 1)])
    bar.shopping.put_on_list([ToBuy("gin", 1, gin.id)])
    assert listed(bar) == [
        ("gin", 2, 42.0, "put on the list for Milepost"),
        ("sweet-vermouth", 1, None, "put on the list"),
    ]


def test_one_bottle_serves_the_list_and_a_par(bar, gin):
    bar.settings.set_par("gin", 700.0)
    bar.shopping.put_on_list([ToBuy("gin", 1, gin.id)])
    assert [each[:3] for each in listed(bar)] == [("gin", 1, 21.0)]
    bar.settings.set_par("gin", 2100.0)
    (row,) = listed(bar)
    assert row[:3] == ("gin", 3, 63.0)
    assert "par is 3 bottles" in row[3]


def test_a_product_on_paper_is_never_bought(bar):
    bar.settings.set_par("gin", 1400.0)
    bar.shopping.put_on_list([ToBuy("gin", 1)])
    (item,) = whole_list((), bar.snapshot).items
    assert (item.product, item.price, item.packages) == (None, None, 2)
    made = bought_of(
        item, count=2, price=20.0, received=bar.snapshot.on, tree=bar.snapshot.knowledge.tree
    )
    bar.shopping.receive([made])
    assert len(bar.snapshot.bottles) == 2
    assert bar.snapshot.settings.to_buy == ()


@pytest.mark.parametrize(
    ("count", "left"), [(1, [("gin", 2)]), (3, []), (4, [])], ids=["some", "all", "more"]
)
def test_what_came_is_off_the_list_and_one_undo_puts_it_back(bar, gin, count, left):
    bar.shopping.put_on_list([ToBuy("gin", 3, gin.id)])
    bar.shopping.receive([Bought(gin.id, count)])
    assert [(each.ingredient, each.packages) for each in bar.snapshot.settings.to_buy] == left
    bar.undo()
    assert bar.snapshot.settings.to_buy == (ToBuy("gin", 3, gin.id),)
    assert not bar.snapshot.bottles


def test_another_label_of_the_kind_is_what_was_meant(bar, gin):
    bar.shopping.put_on_list([ToBuy("spirit", 1), ToBuy("gin", 1, gin.id)])
    bar.shopping.receive([Bought(Label("Other gin", "", "london-dry-gin", 500.0), 1)])
    assert bar.snapshot.settings.to_buy == (ToBuy("gin", 1, gin.id),)
    bar.shopping.receive([Bought(Label("Third gin", "", "gin", 500.0), 1)])
    assert bar.snapshot.settings.to_buy == ()


def test_it_is_taken_off_by_hand(bar, gin):
    bar.shopping.put_on_list([ToBuy("gin", 1, gin.id), ToBuy("sweet-vermouth", 1)])
    item, vermouth = whole_list((), bar.snapshot).items
    assert listed_as(item, bar.snapshot) == ToBuy("gin", 1, gin.id)
    bar.shopping.take_off_list(listed_as(vermouth, bar.snapshot))
    assert bar.snapshot.settings.to_buy == (ToBuy("gin", 1, gin.id),)
    with pytest.raises(InvalidField, match="not on the shopping list"):
        bar.shopping.take_off_list(ToBuy("sweet-vermouth", 1))


def test_it_stays_over_a_restart_and_without_its_product(bar, gin, clock):
    bar.shopping.put_on_list([ToBuy("gin", 1, gin.id)])
    bar.close()
    with Bar.open(bar.path, clock=clock) as again:
        assert again.snapshot.settings.to_buy == (ToBuy("gin", 1, gin.id),)
    gone = again.snapshot.changed(products=())
    (item,) = whole_list((), gone).items
    assert (item.ingredient, item.product) == ("gin", None)


def test_nonsense_is_refused(bar, gin):
    for thing, error in (
        ([], InvalidField),
        ([ToBuy("gin", 0)], InvalidField),
        ([ToBuy("sweet-vermouth", 1, gin.id)], InvalidField),
        ([ToBuy("gin", 1, 999)], UnknownName),
        ([ToBuy("moonglow", 1)], UnknownName),
    ):
        with pytest.raises(error):
            bar.shopping.put_on_list(thing)
    assert bar.snapshot.settings.to_buy == ()


def test_an_empty_list_is_what_shoots_and_pars_need(sample_bar, clock):
    with Bar.open(sample_bar, clock=clock) as sample:
        ahead = still_to_film(sample.snapshot)
        assert whole_list(ahead, sample.snapshot) == shopping_for(ahead, sample.snapshot)
