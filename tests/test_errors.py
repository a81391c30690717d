"""Every error holds its fields and speaks its sentence, whoever makes, copies or sends it."""

from __future__ import annotations

import copy
import pickle
from collections.abc import Iterator
from importlib import import_module
from pkgutil import walk_packages
from string import Formatter

import pytest

import barkeep
from barkeep.errors import BarkeepError, InvalidField, KnowledgeError, UnknownName, UserError
from barkeep.store.refusals import BarIsHeld


def kinds_below(kind: type[BarkeepError]) -> Iterator[type[BarkeepError]]:
    for below in kind.__subclasses__():
        yield below
        yield from kinds_below(below)


def test_every_kind_speaks_a_sentence_of_its_own_fields():
    for module in walk_packages(barkeep.__path__, "barkeep."):
        if not module.name.endswith("__main__"):
            import_module(module.name)
    kinds = [kind for kind in kinds_below(BarkeepError) if kind is not UserError]
    assert len(kinds) > 40
    for kind in kinds:
        if kind.__str__ is BarkeepError.__str__:
            assert kind.says, kind
            named = {name for _, name, _, _ in Formatter().parse(kind.says) if name is not None}
            assert named <= set(kind.__match_args__), kind


def test_fields_are_given_in_order_or_by_name_and_some_may_be_left_out():
    told = UnknownName("glass", name="tulip")
    assert (told.kind, told.name, told.nearest) == ("glass", "tulip", ())
    assert str(told) == "There is no glass called “tulip”."
    assert repr(told) == "UnknownName(kind='glass', name='tulip', nearest=())"
    match UnknownName("glass", "tulip", ("coupe",)):
        case UnknownName("glass", name, (nearest,)):
            assert (name, nearest) == ("tulip", "coupe")
        case other:
            pytest.fail(repr(other))


def test_a_kind_of_a_kind_holds_the_fields_of_both():
    held = BarIsHeld("home.bar", 5.0)
    assert (held.file, held.waited_s) == ("home.bar", 5.0)
    assert "within 5 s" in str(held)


def test_braces_in_what_was_typed_are_told_as_they_are():
    assert str(InvalidField("name", "{field}", "choose {another}")) == (
        "name cannot be “{field}”: choose {another}."
    )


@pytest.mark.parametrize(
    ("values", "named"),
    [
        (("a.toml", "key"), {}),
        (("a.toml", "key", "why", (), "more"), {}),
        (("a.toml", "key", "why"), {"key": "again"}),
        (("a.toml", "key", "why"), {"because": "x"}),
        ((), {}),
    ],
)
def test_too_few_too_many_and_strange_fields_are_refused(values, named):
    with pytest.raises(TypeError, match="KnowledgeError holds"):
        KnowledgeError(*values, **named)


@pytest.mark.parametrize(
    "again", [copy.copy, copy.deepcopy, lambda e: pickle.loads(pickle.dumps(e))]
)
def test_a_copy_says_the_same(again):
    told = InvalidField("size", value=3, expected="it is above 0")
    told.add_note("line 2")
    copied = again(told)
    assert repr(copied) == repr(told)
    assert (str(copied), copied.args) == (str(told), ("size", 3, "it is above 0"))
    assert copied.__notes__ == ["line 2"]
