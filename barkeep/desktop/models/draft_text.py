"""The text of a draft after its lines or its name were changed elsewhere than in the text."""

from __future__ import annotations

from collections.abc import Sequence
from difflib import SequenceMatcher

from barkeep.desktop.dialogs.spec_reading import SeenSpec
from barkeep.domain.spec_headers import header_in
from barkeep.domain.spec_text import text_around
from barkeep.domain.specs import Spec


def with_lines(text: str, spec: SeenSpec | None, lines: Sequence[str]) -> str:
    """The text with these lines of ingredients, each as near as can be to where it stood.

    Without any, the method says that it is one, or its first row would be read as a line.
    """
    rows = text.split("\n")
    if spec is None:
        return "\n".join((*rows, *lines))
    slots = sorted({seen.number for seen in spec.lines})
    if not slots:
        below = spec.first if spec.read.name else spec.first - 1
        return "\n".join((*rows[:below], *lines, *rows[below:]))
    at = _placed([rows[slot - 1] for slot in slots], lines)
    changed: list[str] = []
    before = dict(zip(slots, at[1:], strict=True))
    for number, row in enumerate(rows, 1):
        changed += at[0] if number == slots[0] else []
        changed += before.get(number, [row])
        begins = not (lines or row.strip()) and number > slots[-1] and "Method:" not in changed
        changed += ["Method:"] if begins and spec.read.method and number <= spec.last else []
    return "\n".join(changed)


def with_name(text: str, spec: SeenSpec | None, name: str) -> str:
    """The text in which the spec has this name; without one, in which it has none."""
    rows = text.split("\n")
    first = 0 if spec is None else spec.first - 1
    end = first + 1 if spec is not None and spec.read.name else first
    plain = " ".join(name.split())
    row = text_around(Spec(plain, ()), ()).rstrip("\n")
    if plain and end > first:
        header = header_in(rows[first])
        row = f"Name: {plain}" if header and header.name == "name" else row
    return "\n".join((*rows[:first], *([row] if plain else []), *rows[end:]))


def _placed(old: Sequence[str], new: Sequence[str]) -> list[list[str]]:
    """The new lines in the places of the old ones: what goes before all, then one list a place."""
    at: list[list[str]] = [[] for _ in range(len(old) + 1)]
    for what, start, end, first, last in SequenceMatcher(None, old, new, False).get_opcodes():
        lines = list(new[first:last])
        if what == "insert":
            at[start] += lines
            continue
        for place in range(start, end):
            at[place + 1] += lines[:1] if place < end - 1 else lines
            lines = lines[1:] if place < end - 1 else []
    return at
