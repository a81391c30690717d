"""The owner's specs."""

from __future__ import annotations

from dataclasses import replace

import pytest

from barkeep.domain.specs.spec import Line
from barkeep.errors import AmbiguousName, DuplicateName, InvalidField, UnknownName
from tests.application.conftest import DAISY, NOON, plough
from tests.worlds import without_id


def test_specs_are_added_together_and_read_back_whole(bar, reopen):
    line = Line("a", "bourbon", 1.5, 2.0, "oz", 45.0, True, False, "n", 50.0)
    full = plough(
        "Night Sleeper",
        lines=(line, replace(line, garnish=True, amount=None)),
        method="Stir.\nStrain.",
        technique="stirred",
        glass="coupe",
        ice="one cube",
        notes="Episode 4",
        riff_of="Signal Daisy",
    )
    done = bar.specs.add([plough(), full])
    assert done.label == "Add 2 specs" and done.changes == {"specs"}
    assert [without_id(each) for each in done.value] == [plough(), full]
    assert {each.added for each in done.value} == {NOON.date()}
    assert reopen().snapshot.specs == bar.snapshot.specs == tuple(reversed(done.value))
    assert bar.specs.add([plough("Branch Line")]).label == "Add spec Branch Line"


def test_no_spec_is_added_where_one_cannot_be(bar):
    bar.specs.add([plough()])
    wrong = {
        DuplicateName: [plough("Branch Line"), plough("SNOW  plough")],
        InvalidField: [plough("Branch Line"), plough(" ")],
        UnknownName: [plough("Branch Line"), plough("X", lines=(Line("moss", "moss"),))],
    }
    for error, specs in wrong.items():
        with pytest.raises(error):
            bar.specs.add(specs)
    with pytest.raises(InvalidField, match="at least one"):
        bar.specs.add([plough("Empty", lines=())])
    with pytest.raises(DuplicateName):
        bar.specs.add([plough("Branch Line"), plough("branch line")])
    assert [each.name for each in bar.snapshot.specs] == ["Snow Plough"]


def test_a_classic_keeps_its_name(bar):
    with pytest.raises(DuplicateName, match="signal daisy"):
        bar.specs.add([plough("signal daisy")])


def test_no_specs_are_no_action(bar):
    assert bar.specs.add([]).value == () and bar.undo_label is None


def test_a_spec_is_replaced_under_its_id(bar):
    old = bar.specs.add([plough(), plough("Branch Line")]).value[0]
    new = replace(old, name="Snow Blower", lines=old.lines[:1], glass="rocks")
    done = bar.specs.replace(new)
    assert done.value == new and done.label == "Change spec Snow Blower"
    assert bar.specs.get("snow blower") == new
    with pytest.raises(DuplicateName):
        bar.specs.replace(replace(new, name="branch line"))
    bar.specs.replace(replace(new, name="SNOW BLOWER"))
    with pytest.raises(UnknownName, match="a classic"):
        bar.specs.replace(replace(DAISY, name="Daisy"))
    with pytest.raises(UnknownName):
        bar.specs.replace(replace(new, id=999))


def test_a_removed_spec_frees_its_name(bar):
    spec = bar.specs.add([plough()]).value[0]
    assert bar.specs.remove(spec.id).label == "Remove spec Snow Plough"
    with pytest.raises(UnknownName):
        bar.specs.remove(spec.id)
    again = bar.specs.add([plough()]).value[0]
    assert again.id != spec.id
    bar.undo()
    bar.undo()
    assert bar.snapshot.specs == (spec,)


def test_a_spec_is_found_by_its_name_or_words_of_it(bar):
    own = bar.specs.add([plough(), plough("Snow Train")]).value
    assert bar.specs.get("snow PLOUGH") == own[0]
    assert bar.specs.get("plough") == own[0]
    assert bar.specs.get("daisy") == DAISY
    with pytest.raises(AmbiguousName) as several:
        bar.specs.get("snow")
    assert set(several.value.choices) == {"Snow Plough", "Snow Train"}
    with pytest.raises(UnknownName) as unknown:
        bar.specs.get("Snoe Plogh")
    assert unknown.value.nearest[0] == "Snow Plough"


def test_a_riff_is_of_a_spec_there_is(bar):
    with pytest.raises(UnknownName) as unknown:
        bar.specs.add([plough("Branch Line"), plough("Ploughed", riff_of="Signal Dazy")])
    assert unknown.value.nearest[0] == "Signal Daisy" and bar.snapshot.specs == ()
    with pytest.raises(InvalidField, match="no spec is a riff of itself"):
        bar.specs.add([plough("Branch Line", riff_of="branch line")])
    batch = [plough("Second", riff_of="first"), plough("First", riff_of="signal daisy")]
    second, first = bar.specs.add(batch).value
    assert (second.riff_of, first.riff_of) == ("first", "signal daisy")
    with pytest.raises(UnknownName):
        bar.specs.replace(replace(first, riff_of="Nope"))
    bar.specs.remove(first.id)
    changed = replace(second, notes="The first is gone.")
    assert bar.specs.replace(changed).value == changed
