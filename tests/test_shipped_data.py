"""Shipped tables become frozen values, and each fault names file, place and reason."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, field
from typing import Annotated, Literal, NamedTuple

import pytest

from barkeep.errors import KnowledgeError
from barkeep.shipped_data import (
    Days,
    Limits,
    Percent,
    Positive,
    Text,
    Texts,
    by_key,
    parse,
    read,
    tables,
)


class Ends(NamedTuple):
    low: float
    high: float


@dataclass(frozen=True, slots=True)
class Lid:
    width_mm: Positive


@dataclass(frozen=True, slots=True)
class Jar:
    key: str
    name: Text
    lid: Lid = Lid(60.0)
    kinds: tuple[Literal["jam", "pickle"], ...] = ()
    words: Texts = ()
    full: Percent | None = None
    keeps: Days | None = None
    rows: tuple[tuple[float, float], ...] = ()
    ends: Ends | None = None
    local: Mapping[str, Texts] = field(default_factory=dict)
    marks: Annotated[str, Limits(pattern="^#", description="written as #1")] = "#1"
    shut: bool = field(default=False, metadata={"called": "closed"})


def jar(text: str) -> Jar:
    return read(parse(text, "jars.toml"), Jar, "jars.toml", "jar", key="a")


def test_a_table_is_read_whole():
    text = """
    name = "Jar"
    lid = { width_mm = 70 }
    kinds = ["jam"]
    words = ["glass"]
    full = 50
    keeps = 3
    rows = [[1, 2], [3, 4.5]]
    ends = [1, 2]
    local = { UK = ["pot"] }
    closed = true
    """
    assert jar(text) == Jar(
        key="a",
        name="Jar",
        lid=Lid(70.0),
        kinds=("jam",),
        words=("glass",),
        full=50.0,
        keeps=3,
        rows=((1.0, 2.0), (3.0, 4.5)),
        ends=Ends(1.0, 2.0),
        local={"UK": ("pot",)},
        shut=True,
    )
    assert jar("name = 'Jar'") == Jar("a", "Jar")


@pytest.mark.parametrize(
    ("line", "place", "reason"),
    [
        ("name = ''", "jar", "“name” is empty or has blanks around it"),
        ("name = ' Jar'", "jar", "“name” is empty or has blanks around it"),
        ("key = 'b'", "jar", "there is no field “key”"),
        ("shut = true", "jar", "there is no field “shut”"),
        ("closed = 1", "jar", "“closed” must be true or false, not 1"),
        ("lid = { width_mm = 0 }", "jar.lid", "“width_mm” is 0; it must be more than 0"),
        ("lid = { width_mm = 1, high = 2 }", "jar.lid", "there is no field “high”"),
        ("lid = {}", "jar.lid", "“width_mm” is missing"),
        ("lid = 7", "jar", "“lid” must be a table, not 7"),
        ("kinds = ['jam', 'ham']", "jar", "“kinds” has “ham”; it must be one of jam, pickle"),
        ("kinds = 'jam'", "jar", "“kinds” must be a list of texts, not 'jam'"),
        ("words = ['a', 'b', 'a']", "jar", "“words” has “a” twice"),
        ("words = ['a', ' ']", "jar", "has an empty text, or one with blanks around it"),
        ("words = ['a', 7]", "jar", "“words” must be a list of texts, not ['a', 7]"),
        ("full = 101", "jar", "“full” is 101; it must be 0 or more and at most 100"),
        ("full = nan", "jar", "“full” is nan; it must be 0 or more and at most 100"),
        ("full = true", "jar", "“full” must be a number, not True"),
        ("keeps = 0", "jar", "“keeps” is 0; it must be more than 0 (whole days)"),
        ("keeps = 1.5", "jar", "“keeps” must be whole days, not 1.5"),
        ("rows = [[1, 2, 3]]", "jar", "“rows” must be a list of rows of 2 numbers"),
        ("ends = [1]", "jar", "“ends” must be 2 numbers, not [1]"),
        ("local = { UK = 7 }", "jar.local", "“UK” must be a list of texts, not 7"),
        ("local = { UK = ['a', 'a'] }", "jar.local", "“UK” has “a” twice"),
        ("marks = 'red'", "jar", "“marks” must be written as #1, not 'red'"),
    ],
)
def test_a_fault_names_its_place(line, place, reason):
    name = "" if line.startswith("name") else "name = 'Jar'\n"
    with pytest.raises(KnowledgeError) as fault:
        jar(name + line)
    assert (fault.value.file, fault.value.key) == ("jars.toml", place)
    assert reason in fault.value.reason


def test_what_is_no_table_is_located():
    with pytest.raises(KnowledgeError, match=r"jars.toml, shelf.a: write it as a table, \[shelf"):
        by_key({"a": 7}, Jar, "jars.toml", "shelf")
    with pytest.raises(KnowledgeError, match=r"jars.toml, jar: write each as \[\[jar\]\]"):
        tables(parse("jar = 7", "jars.toml"), "jar", "jars.toml")
    with pytest.raises(KnowledgeError, match=r"jars.toml, jra: there is no such entry"):
        parse("[jra]", "jars.toml", "jar")
