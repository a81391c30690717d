"""A page of the help as plain text, for a terminal: the same words without their marks."""

from __future__ import annotations

import re
from collections.abc import Callable, Iterator, Sequence
from itertools import groupby

_LINK = re.compile(r"\[(?P<words>[^\]]*)\]\([^)]*\)")
_MARKS = re.compile(
    r"\*\*(?P<bold>[^*\n]+)\*\*|(?<![\w*])\*(?P<slanted>[^*\n]+)\*(?![\w*])|`(?P<code>[^`\n]+)`"
)

Table = Callable[[Sequence[str], Sequence[Sequence[str]]], str]
"""What lays rows out under a head."""


def plain(markdown: str, wrap: Callable[[str, str], str], table: Table) -> str:
    """Markdown as text; `wrap` breaks a paragraph after its mark, `table` lays out a table."""
    return "\n\n".join(_blocks(markdown, wrap, table))


def plain_words(text: str) -> str:
    """Words without marks and links.

    >>> plain_words("press `Ctrl+N`, see [the *book*](specs)")
    'press Ctrl+N, see the book'
    """
    linked = _LINK.sub(lambda found: found["words"], text)
    return _MARKS.sub(lambda found: found["bold"] or found["slanted"] or found["code"], linked)


def _blocks(markdown: str, wrap: Callable[[str, str], str], table: Table) -> Iterator[str]:
    for number, block in enumerate(re.split(r"(^```.*?^```$)", markdown, flags=re.M | re.S)):
        if number % 2:
            yield "\n".join(f"    {line}" if line else "" for line in block.splitlines()[1:-1])
            continue
        for each in filter(None, map(str.strip, block.split("\n\n"))):
            yield _block(each, wrap, table)


def _block(block: str, wrap: Callable[[str, str], str], table: Table) -> str:
    if block.startswith("#"):
        words = plain_words(block.lstrip("#").strip())
        return f"{words}\n{('═' if block.startswith('# ') else '─') * len(words)}"
    if block.startswith("|"):
        head, _rule, *rows = map(_cells, block.splitlines())
        return table(head, rows)
    if block.startswith("- "):
        return "\n".join(wrap(plain_words(each), "- ") for each in _items(block))
    return wrap(plain_words(" ".join(block.split())), "")


def _cells(row: str) -> list[str]:
    cells = re.split(r"(?<!\\)\|", row.strip()[1:-1])
    return [plain_words(each.strip().replace("\\|", "|")) for each in cells]


def _items(block: str) -> Iterator[str]:
    number = 0
    lines = []
    for line in block.splitlines():
        number += line.startswith("- ")
        lines.append((number, line.removeprefix("- ").strip()))
    for _number, together in groupby(lines, key=lambda each: each[0]):
        yield " ".join(line for _of, line in together)
