"""The linked data and the words of a saved web page."""

from __future__ import annotations

import html
import re
from collections.abc import Iterator

from barkeep.errors import UnreadableFile

LARGEST_CHARACTERS = 50_000_000
DEEPEST = 150
"""Elements within elements; no page that was written for people nests deeper."""

_LINKED_DATA = "application/ld+json"
_VOID = "area base br col embed hr img input link meta param source track wbr"
_MAY_STAY_OPEN = "p li dt dd option tr td th thead tbody tfoot colgroup rt rp"
_OFTEN_UNCLOSED = frozenset(f"{_VOID} {_MAY_STAY_OPEN}".split())
_OWN_ENTITY = re.compile(r"<!ENTITY\b", re.IGNORECASE)
_RAW = frozenset({"script", "style"})
"""Elements whose text is no markup up to their own end."""
# One pass whatever the text holds: the library's own parser takes a time that grows with the
# square of a page's unclosed tags.
_MARK = re.compile(r"<(?:(?P<comment>!--)|(?P<end>/?)(?P<tag>[a-zA-Z][^\s<>/]*)(?P<rest>[^<>]*)>)")
_TYPE = re.compile(r"(?:^|\s)type\s?=\s?(?P<quote>[\"']?)(?P<kind>[^\"'>]{0,100})", re.IGNORECASE)
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
    return tuple(_scripts(text, file))


def plain_words(text: str) -> str:
    """A text without markup, its entities as characters: *2 oz&nbsp;gin* is *2 oz gin*.

    >>> plain_words("<p>1&frac12; oz gin &amp; tonic</p>")
    '1½ oz gin & tonic'
    """
    shown = html.unescape(_MARKUP.sub(" ", text))
    return re.sub(r"[ \t\xa0]+", " ", shown).strip()


def _scripts(text: str, file: str) -> Iterator[str]:
    """The text of every script of linked data, while the depth of the elements is watched."""
    at, depth = 0, 0
    while mark := _MARK.search(text, at):
        at = mark.end()
        if mark["comment"]:
            at = text.find("-->", at)
            if at < 0:
                return
            continue
        tag = mark["tag"].lower()
        if mark["end"]:
            depth = max(0, depth - (tag not in _OFTEN_UNCLOSED))
        elif tag in _RAW:
            begins, at = at, _end_of(tag, text, at)
            if tag == "script" and _is_linked_data(mark["rest"]):
                yield text[begins:at]
        elif tag not in _OFTEN_UNCLOSED and not mark["rest"].endswith("/"):
            depth += 1
            if depth > DEEPEST:
                line = text.count("\n", 0, mark.start()) + 1
                reason = f"line {line}: its elements are nested more than {DEEPEST} deep"
                raise UnreadableFile(file, reason)


def _end_of(tag: str, text: str, at: int) -> int:
    """Where the text of an element whose text is no markup ends."""
    end = re.compile(rf"</{tag}\b", re.IGNORECASE).search(text, at)
    return end.start() if end else len(text)


def _is_linked_data(attributes: str) -> bool:
    kind = _TYPE.search(attributes)
    return kind is not None and kind["kind"].split(";")[0].strip().casefold() == _LINKED_DATA
