"""The linked data and the words of a saved web page."""

from __future__ import annotations

import html
import re
from html.parser import HTMLParser

from barkeep.errors import UnreadableFile

LARGEST_CHARACTERS = 50_000_000
DEEPEST = 150
"""Elements within elements; no page that was written for people nests deeper."""

_LINKED_DATA = "application/ld+json"
_VOID = "area base br col embed hr img input link meta param source track wbr"
_MAY_STAY_OPEN = "p li dt dd option tr td th thead tbody tfoot colgroup rt rp"
_OFTEN_UNCLOSED = frozenset(f"{_VOID} {_MAY_STAY_OPEN}".split())
_OWN_ENTITY = re.compile(r"<!ENTITY\b", re.IGNORECASE)
_MARKUP = re.compile(r"<[^<>]{0,500}>")


def is_web_page(text: str) -> bool:
    """Whether a text is HTML: it begins with markup, which no JSON does."""
    return text.lstrip("\ufeff \t\r\n").startswith("<")


def linked_data(text: str, file: str) -> tuple[str, ...]:
    """The JSON-LD texts of a page, in order; none where it has none.

    Raises `UnreadableFile` for a page that is too large, nests too deep or
    defines entities of its own.
    """
    if len(text) > LARGEST_CHARACTERS:
        raise UnreadableFile(file, f"it has more than {LARGEST_CHARACTERS:,} characters")
    own = _OWN_ENTITY.search(text)
    if own:
        line = text.count("\n", 0, own.start()) + 1
        raise UnreadableFile(
            file, f"line {line}: it defines entities of its own, which may be endless"
        )
    collector = _Collector(file)
    collector.feed(text)
    collector.close()
    return tuple(collector.found)


def plain_words(text: str) -> str:
    """A text without markup, its entities as characters: *2 oz&nbsp;gin* is *2 oz gin*.

    >>> plain_words("<p>1&frac12; oz gin &amp; tonic</p>")
    '1½ oz gin & tonic'
    """
    shown = html.unescape(_MARKUP.sub(" ", text))
    return re.sub(r"[ \t\xa0]+", " ", shown).strip()


class _Collector(HTMLParser):
    def __init__(self, file: str) -> None:
        super().__init__(convert_charrefs=True)
        self.found: list[str] = []
        self._file = file
        self._inside = False
        self._parts: list[str] = []
        self._depth = 0

    def handle_starttag(self, tag: str, attrs: list[tuple[str, str | None]]) -> None:
        if tag == "script":
            kind = dict(attrs).get("type") or ""
            self._inside = kind.split(";")[0].strip().casefold() == _LINKED_DATA
            self._parts = []
        if tag in _OFTEN_UNCLOSED:
            return
        self._depth += 1
        if self._depth > DEEPEST:
            line, _column = self.getpos()
            reason = f"line {line}: its elements are nested more than {DEEPEST} deep"
            raise UnreadableFile(self._file, reason)

    def handle_endtag(self, tag: str) -> None:
        if tag == "script" and self._inside:
            self.found.append("".join(self._parts))
            self._inside = False
        if tag not in _OFTEN_UNCLOSED:
            self._depth = max(0, self._depth - 1)

    def handle_data(self, data: str) -> None:
        if self._inside:
            self._parts.append(data)
