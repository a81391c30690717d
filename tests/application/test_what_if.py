"""A bar on paper: every question is asked of it, and nothing is written."""

from __future__ import annotations

import pytest

from barkeep.application.bar import Bar
from barkeep.application.session import OnlyOnPaper
from barkeep.domain.bar.changes import EVERYTHING
from barkeep.domain.bar.to_buy import ToBuy
from barkeep.domain.bottles.bottle import Label
from barkeep.errors import InvalidField, UserError


@pytest.fixture
def bar(tmp_path, clock):
    with Bar.open(tmp_path / "one.bar", clock=clock) as opened:
        opened.inventory.receive_new(Label("Signal Oak gin", "", "gin", 700.0))
        yield opened


def titles(bar) -> list[str]:
    return [each.product.title for each in bar.snapshot.bottles]


def test_every_question_is_asked_of_it_until_one_goes_back(bar):
    as_it_is, told = bar.snapshot, []
    bar.subscribe(told.append)
    paper = bar.what_if(["vodka"], ["Signal Oak gin"])
    assert bar.on_paper is paper
    assert titles(bar) == ["Vodka"]
    assert bar.snapshot is bar.snapshot
    bar.as_it_is()
    assert bar.on_paper is None
    assert bar.snapshot is as_it_is
    assert told == [EVERYTHING, EVERYTHING]


def test_nothing_is_written_and_each_way_says_why(bar):
    bar.what_if(["vodka"], [])
    on_paper = next(each for each in bar.snapshot.bottles if each.id < 0)
    for write in (
        lambda: bar.inventory.receive_new(Label("More gin", "", "gin", 700.0)),
        lambda: bar.inventory.remove(on_paper.id),
        lambda: bar.shopping.add([ToBuy("gin", 1)]),
        lambda: bar.settings.set_par("gin", 700.0),
        lambda: bar.undo(),
        lambda: bar.beside(),
    ):
        with pytest.raises(OnlyOnPaper) as refused:
            write()
        assert str(refused.value) == (
            "On paper, not as the bar is: with 700 ml of vodka. "
            "Nothing is written until you go back to the bar as it is."
        )
    bar.as_it_is()
    assert titles(bar) == ["Signal Oak gin"]
    bar.undo()
    assert titles(bar) == []


def test_what_another_program_writes_is_seen_beneath(bar, clock):
    (gin,) = bar.snapshot.bottles
    bar.what_if(["vodka"], [f"#{gin.id}"])
    with Bar.open(bar.path, clock=clock) as other:
        other.inventory.remove(gin.id)
        other.inventory.receive_new(Label("Tarn rum", "", "rum", 700.0))
    assert bar.refresh()
    assert sorted(titles(bar)) == ["Tarn rum", "Vodka"]
    assert "Signal Oak" not in bar.on_paper.in_words


@pytest.mark.parametrize(
    ("bought", "gone", "error"),
    [([], [], InvalidField), (["moonglow"], [], UserError), ([], ["#99"], UserError)],
)
def test_what_cannot_be_is_refused_and_changes_nothing(bar, bought, gone, error):
    with pytest.raises(error):
        bar.what_if(bought, gone)
    assert bar.on_paper is None
