"""Two hands on a bar that lies on a server: edits that are stale, and what each learns of."""

from __future__ import annotations

from contextlib import ExitStack, contextmanager
from dataclasses import replace

import pytest

from barkeep.application.bar import Bar
from barkeep.application.stale import ChangedSince
from barkeep.store.place import place_of
from barkeep.store.refusals import WrittenNotRead
from tests.application.conftest import NOON, gin_draft, plough, small_knowledge


@pytest.fixture
def hands(server):
    """The same bar, opened twice."""
    address, known = server.new_bar(), small_knowledge()
    with ExitStack() as stack:
        yield [
            stack.enter_context(Bar.open(address, known, lambda: NOON, new=new))
            for new in (True, False)
        ]


def test_a_stale_edit_is_refused_with_both_versions(hands):
    mine, theirs = hands
    mine.specs.add([plough()])
    theirs.refresh()
    seen, settings = theirs.snapshot.specs[0], theirs.snapshot.settings
    mine.specs.replace(replace(seen, glass="coupe"), seen)
    with pytest.raises(ChangedSince, match="Glass: yours “flute”, theirs “coupe”"):
        theirs.specs.replace(replace(seen, glass="flute"), seen)
    mine.settings.change(replace(settings, name="Branch line"), settings)
    with pytest.raises(ChangedSince, match="Name: yours “Signal box”, theirs “Branch line”"):
        theirs.settings.change(replace(settings, name="Signal box"), settings)
    assert theirs.follow() == "written"
    assert theirs.snapshot == mine.snapshot
    assert (theirs.snapshot.specs[0].glass, theirs.snapshot.settings.name) == (
        "coupe",
        "Branch line",
    )


def test_each_learns_of_the_other_and_of_an_older_state_that_is_put_back(hands, tmp_path):
    mine, theirs = hands
    told = []
    theirs.subscribe(told.append)
    kept = mine.back_up(tmp_path / "kept.barkeep")
    product = mine.inventory.add_product(gin_draft()).value
    assert (mine.follow(), theirs.follow(), theirs.follow()) == ("same", "written", "same")
    assert len(told) == 1 and theirs.snapshot == mine.snapshot
    theirs.inventory.receive(product.id)  # after which it had not to be read anew by itself
    assert theirs.follow() == "same" and mine.undo().label == theirs.next_step("redo").label
    place_of(mine.at).put_in_place(kept)
    assert (mine.follow(), theirs.follow()) == ("restored", "restored")
    assert mine.snapshot.products == theirs.snapshot.products == ()
    assert mine.next_step("undo") is None


def test_what_is_written_as_the_server_goes_away_is_said_to_be_written(own_server, monkeypatch):
    with Bar.open(own_server.new_bar(), small_knowledge(), lambda: NOON, new=True) as bar:
        product = bar.inventory.add_product(gin_draft()).value
        place = bar._session.store.place
        writing = place.writing

        @contextmanager
        def written_just_in_time():
            with writing() as connection:
                yield connection
            own_server.stop("immediate")

        monkeypatch.setattr(place, "writing", written_just_in_time)
        with pytest.raises(WrittenNotRead, match=r"is written, but .* cannot be reached just now"):
            bar.inventory.receive(product.id)
        assert bar.follow() == "away" and bar.snapshot.bottles == ()
        own_server.start()
        assert bar.follow() == "written" and len(bar.snapshot.bottles) == 1
