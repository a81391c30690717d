"""Lines composed from the whole grammar: each reads back to what it was composed of, or asks.

`CASES=100000 pytest tests/domain/spec_text/test_grammar.py` tries as many lines as one wants.
"""

from __future__ import annotations

import os
from dataclasses import dataclass

from hypothesis import given, settings
from hypothesis import strategies as st

from barkeep.application.knowledge import shipped
from barkeep.domain.amounts.units import unit_named
from barkeep.domain.phrases import folded
from barkeep.domain.spec_text.lines import ReadLine, read_lines

TREE = shipped().tree
CASES = int(os.environ.get("CASES", "120"))

LEADS = (
    ("", ""),
    ("- [ ] ", ""),
    ("• ", ""),
    ("2) ", ""),
    ("and ", ""),
    ("then add ", ""),
    ("plus ", ""),
    ("so I'm going to start with ", "start with"),
    ("next up we've got ", "next up"),
    ("now we're adding ", "adding"),
    ("followed by ", "followed"),
)
HEDGES = (
    ("", ""),
    ("about ", "about"),
    ("~", "about"),
    ("ca. ", "ca."),
    ("roughly ", "roughly"),
    ("just under ", "just under"),
    ("a generous ", "generous"),
    ("a good ", "good"),
    ("maybe ", "maybe"),
    ("(optional) ", "optional"),
)
AMOUNTS = (
    ("2 oz", 2.0, None, "oz"),
    ("2oz", 2.0, None, "oz"),
    ("1 1/2 oz", 1.5, None, "oz"),
    ("1 and 1/2 oz", 1.5, None, "oz"),
    ("¾ oz", 0.75, None, "oz"),
    ("two ounces", 2.0, None, "oz"),
    ("three quarters of an ounce", 0.75, None, "oz"),
    ("one and a half ounces", 1.5, None, "oz"),
    ("45 ml", 45.0, None, "ml"),
    ("22,5 ml", 22.5, None, "ml"),
    ("seven point five mil", 7.5, None, "ml"),
    ("a hundred and twenty ml", 120.0, None, "ml"),
    ("2 x 25 ml", 50.0, None, "ml"),
    ("4 cl", 4.0, None, "cl"),
    ("2 tsp", 2.0, None, "tsp"),
    ("3 barspoons", 3.0, None, "barspoon"),
    ("2-3 oz", 2.0, 3.0, "oz"),
    ("10 to 15 ml", 10.0, 15.0, "ml"),
    ("2 parts", 2.0, None, "part"),
)
NOTES = (
    ("", ""),
    (", chilled", "chilled"),
    (" (strained)", "strained"),
    (", to top", "to top"),
    (" on top", "on top"),
    (" in the tin", "in the tin"),
    (", if you like", "optional"),
    (" (optional)", "optional"),
    (" - the usual one", "usual"),
)
JOINTS = (", ", " and ", " + ", "; ", ", then ", " plus ")


def _poured() -> tuple[tuple[str, str], ...]:
    """Every name of what is poured, with its key, but for *shot of espresso* and its like."""
    named = {
        folded(name): (name, key)
        for key in TREE
        if TREE[key].unit == "ml"
        for name in (TREE[key].name, *TREE[key].aliases)
    }
    return tuple(
        each
        for name, each in named.items()
        if TREE.by_name[name] == each[1]
        and unit_named(name.split()[0]) is None
        and TREE.may_be(name) in ((), (each[1],))  # and none that means another thing elsewhere
    )


def _narrowed() -> tuple[tuple[str, str], ...]:
    """*Vermouth (dry)*, *vermouth, dry* of each name whose end is the name of what it is one of."""
    found = []
    for name, key in _poured():
        words = name.split()
        for count in range(1, len(words)):
            kind = TREE.by_name.get(folded(" ".join(words[count:])))
            if kind and kind != key and TREE.is_a(key, kind) and TREE[kind].unit == "ml":
                front, back = " ".join(words[:count]), " ".join(words[count:])
                found += [(f"{back} ({front})", key), (f"{back}, {front}", key)]
                break
    return tuple(found)


NAMES = _poured() + _narrowed()


@dataclass(frozen=True)
class Said:
    """A line of one ingredient, and what it must be read as."""

    text: str
    amount: float
    high: float | None
    unit: str
    key: str
    kept: tuple[str, ...]


@st.composite
def items(draw, noted: bool = True) -> Said:
    """One ingredient with its amount, before or behind its name."""
    hedge, hedged = draw(st.sampled_from(HEDGES))
    written, value, high, unit = draw(st.sampled_from(AMOUNTS))
    name, key = NAMES[draw(st.integers(0, len(NAMES) - 1))]
    note, noticed = draw(st.sampled_from(NOTES)) if noted else ("", "")
    of = draw(st.sampled_from(("", "of ")))
    text = f"{hedge}{written} {of}{name}{note}"
    return Said(text, value, high, unit, key, tuple(each for each in (hedged, noticed) if each))


def kept_of(read: ReadLine) -> str:
    """All the words that were kept of a line."""
    line = read.line
    marks = ["optional"] if line.optional else []
    return folded(" ".join((line.note, line.called, *line.stated, *marks)))


def differs(read: ReadLine, said: Said) -> str:
    """In what a reading differs from what was said; empty where in nothing."""
    line = read.line
    if line.ingredient != said.key:
        return f"{line.ingredient}, not {said.key}"
    if (line.amount, line.amount_high, line.unit) != (said.amount, said.high, said.unit):
        return f"{line.amount}-{line.amount_high} {line.unit}"
    lost = [word for word in said.kept if folded(word) not in kept_of(read)]
    return f"lost {lost} ({kept_of(read)})" if lost else ""


def holds(text: str, wanted: tuple[Said, ...]) -> None:
    """It is read as what was said, or asked about."""
    read = read_lines(text, TREE)
    if any(each.complaints for each in read):
        return
    assert len(read) == len(wanted), text
    for each, said in zip(read, wanted, strict=True):
        assert not differs(each, said), (text, differs(each, said))


@settings(max_examples=CASES)
@given(items(), st.sampled_from(LEADS))
def test_one_ingredient_reads_back_or_asks(said, lead):
    holds(lead[0] + said.text, (said,))


@settings(max_examples=CASES)
@given(items(), items(noted=False), st.sampled_from(JOINTS))
def test_two_ingredients_on_a_line_read_back_or_ask(one, other, joint):
    holds(f"{one.text}{joint}{other.text}", (one, other))


@settings(max_examples=CASES)
@given(items(noted=False), st.sampled_from(AMOUNTS))
def test_an_amount_that_is_put_right_counts(said, better):
    written, value, high, unit = better
    right = Said("", value, high, unit, said.key, ())
    holds(f"{said.text}, no, make that {written}", (right,))


@settings(max_examples=CASES)
@given(items(noted=False), st.integers(0, len(NAMES) - 1))
def test_so_does_a_name(said, number):
    name, key = NAMES[number]
    right = Said("", said.amount, said.high, said.unit, key, ())
    holds(f"{said.text}, sorry, I mean {name}", (right,))


@settings(max_examples=CASES)
@given(
    st.integers(0, len(NAMES) - 1),
    st.sampled_from(AMOUNTS),
    st.sampled_from((" ", ": ", " - ", ", ")),
    st.sampled_from(HEDGES[:6]),
)
def test_an_amount_behind_the_name_counts(number, amount, gap, hedge):
    name, key = NAMES[number]
    written, value, high, unit = amount
    said = Said("", value, high, unit, key, (hedge[1],) if hedge[1] else ())
    holds(f"{name}{gap}{hedge[0]}{written}", (said,))


@settings(max_examples=CASES)
@given(
    st.integers(0, len(NAMES) - 1),
    st.integers(0, len(NAMES) - 1),
    st.sampled_from(AMOUNTS),
    st.sampled_from(("{a} each of {x} and {y}", "{x} and {y}, {a} of each", "{a} each: {x}, {y}")),
)
def test_one_amount_of_each_counts_for_each(first, second, amount, form):
    (x, key_x), (y, key_y) = NAMES[first], NAMES[second]
    written, value, high, unit = amount
    text = form.format(a=written, x=x, y=y)
    wanted = tuple(Said("", value, high, unit, key, ()) for key in (key_x, key_y))
    holds(text, wanted)


def test_most_of_it_is_read_and_not_only_asked_about():
    asked = 0
    tried = 0
    for number in range(0, len(NAMES), 7):
        name, _ = NAMES[number]
        for written, *_ in AMOUNTS[::4]:
            tried += 1
            asked += any(each.complaints for each in read_lines(f"{written} {name}", TREE))
    assert asked <= tried * 0.03
