"""A riff beside its parent, in the glass."""

from __future__ import annotations

from dataclasses import replace

import pytest

from barkeep.domain.drink.analysis import analyse
from barkeep.domain.drink.comparison import NOT_KNOWN, compare, figure_rows
from barkeep.domain.specs.riffs import line_pairs, riff_on
from barkeep.domain.specs.spec import Line, Spec
from tests.worlds import bottle, snapshot


def ml(key, amount):
    return Line(f"{amount} ml {key}", key, amount, None, "ml", float(amount))


PARENT = Spec("Sour", (ml("london-dry-gin", 60), ml("lemon-juice", 20), ml("simple-syrup", 20)))
RIFF = replace(riff_on(PARENT, "Dry"), lines=(ml("london-dry-gin", 60), ml("lemon-juice", 20)))


@pytest.fixture
def bar(knowledge):
    priced = [bottle(1, "london-dry-gin", 300), bottle(2, "lemon-juice", 300)]
    priced = [replace(each, product=replace(each.product, price=14.0)) for each in priced]
    return snapshot(knowledge, priced, (PARENT, RIFF))


def test_what_changes_is_the_riff_less_its_parent(bar):
    found = compare(PARENT, RIFF, bar)
    before, after = analyse(PARENT, bar), analyse(RIFF, bar)
    assert found.pairs == line_pairs(PARENT, RIFF, bar.knowledge.tree)
    assert found.change.abv_percent == pytest.approx(after.abv_percent - before.abv_percent)
    assert found.change.sugar_g_per_l == pytest.approx(after.sugar_g_per_l - before.sugar_g_per_l)
    assert found.change.served_volume_ml < -15
    assert found.change.acid_g_per_l > 0 > found.change.sugar_g_per_l


def test_a_spec_beside_itself_changes_nothing(bar):
    found = compare(PARENT, PARENT, bar)
    assert {each.change for each in figure_rows(found)} == {""}
    assert found.change.abv_percent == 0.0


def test_the_change_is_that_of_the_printed_figures(bar, knowledge):
    for one, other in zip(knowledge.classics, knowledge.classics[1:], strict=False):
        for row in figure_rows(compare(one, other, bar)):
            if not row.change:
                continue
            before, after = (float(each.split()[0]) for each in (row.before, row.after))
            shown = float(row.change.split()[0].replace("−", "-"))
            assert shown == pytest.approx(after - before) and shown != 0.0, row


def test_what_nobody_knows_is_said(bar):
    unpriced = replace(RIFF, lines=(*RIFF.lines, ml("green-herbal-liqueur", 10)))
    rows = {each.label: each for each in figure_rows(compare(PARENT, unpriced, bar))}
    assert (rows["Cost"].after, rows["Cost"].change) == (NOT_KNOWN, "")
    empty = compare(PARENT, Spec("Salt", (Line("salt", "salt"),)), bar)
    assert empty.after.abv_percent is None is empty.change.abv_percent
    assert figure_rows(empty)[0].after == NOT_KNOWN


def test_a_riff_says_what_it_comes_from_and_is_nobodys_classic_yet(knowledge):
    classic = knowledge.classics[0]
    riff = riff_on(classic, "Other")
    assert (riff.name, riff.riff_of, riff.classic, riff.id) == ("Other", classic.name, False, None)
    assert riff.lines == classic.lines
