"""The elements of a web page as a tree, whatever state the page is in.

One pass whatever the page holds: the library's own parser takes a time that
grows with the square of a page's unclosed tags. Nothing is fetched or run.
"""

from __future__ import annotations

import html
import re
from collections.abc import Iterator, Mapping
from dataclasses import dataclass, field

from barkeep.documents.foreign_text import LARGEST_CHARACTERS
from barkeep.errors import UnreadableFile
from barkeep.translation import tr

DEEPEST = 150
"""Elements within elements; no page that was written for people nests deeper."""

_OWN_ENTITY = re.compile(r"<!ENTITY\b", re.IGNORECASE)
# What stands in quotes ends at the latest where the next tag begins, so that nothing is gone
# through twice.
_MARK = re.compile(
    r"<(?:(?P<comment>!--)|(?P<other>[!?])"
    r"|(?P<end>/?)(?P<tag>[a-zA-Z][^\s<>/]*+)(?P<rest>(?:[^<>\"']++|\"[^\"<]*+\"|'[^'<]*+'|[\"'])*+)>)"
)
_ATTRIBUTE = re.compile(
    r"(?P<name>[^\s\"'=<>/]+)(?:\s*=\s*(?:\"(?P<double>[^\"]*+)\"|'(?P<single>[^']*+)'"
    r"|(?P<bare>[^\s\"'<>]+)))?"
)
_VOID = frozenset(
    {"area", "base", "br", "col", "embed", "hr", "img", "input", "link", "meta", "param"}
    | {"source", "track", "wbr"}
)
RAW = frozenset({"script", "style", "textarea", "title", "xmp"})
"""Elements whose text is no markup up to their own end."""
BLOCKS = frozenset(
    {"address", "article", "aside", "blockquote", "body", "details", "div", "fieldset", "form"}
    | {"figcaption", "figure", "footer", "header", "hr", "html", "main", "nav", "p", "pre"}
    | {"section", "summary", "h1", "h2", "h3", "h4", "h5", "h6"}
    | {"dd", "dl", "dt", "li", "menu", "ol", "ul"}
    | {"table", "tbody", "td", "tfoot", "th", "thead", "tr"}
)
"""Elements that stand on lines of their own."""
_CLOSED_BY: Mapping[str, tuple[frozenset[str], frozenset[str]]] = {
    "li": (frozenset({"li"}), frozenset({"ul", "ol", "menu"})),
    "dt": (frozenset({"dt", "dd"}), frozenset({"dl"})),
    "dd": (frozenset({"dt", "dd"}), frozenset({"dl"})),
    "tr": (frozenset({"tr"}), frozenset({"table"})),
    "td": (frozenset({"td", "th"}), frozenset({"table", "tr"})),
    "th": (frozenset({"td", "th"}), frozenset({"table", "tr"})),
    "tbody": (frozenset({"thead", "tbody", "tfoot"}), frozenset({"table"})),
    "thead": (frozenset({"thead", "tbody", "tfoot"}), frozenset({"table"})),
    "tfoot": (frozenset({"thead", "tbody", "tfoot"}), frozenset({"table"})),
    "option": (frozenset({"option"}), frozenset({"select"})),
}
"""Tag -> the open elements that it ends, and those beyond which none is looked for."""
_ENDS_NO_PARAGRAPH = frozenset({"td", "th", "li", "dd", "dt", "table", "button"})


@dataclass(slots=True)
class Element:
    """One element; `line` is the one of the page that it begins on, from 1."""

    tag: str
    attributes: Mapping[str, str] = field(default_factory=dict)
    line: int = 1
    children: list[Element | str] = field(default_factory=list)

    def elements(self) -> Iterator[Element]:
        """Its own elements, without their texts."""
        return (each for each in self.children if isinstance(each, Element))

    def words(self) -> str:
        """Its text; rows where its blocks are, and single spaces within a row."""
        pieces: list[str] = []
        _gather(self, pieces)
        rows = (" ".join(row.split()) for row in "".join(pieces).split("\n"))
        return "\n".join(row for row in rows if row)


def check_page(text: str, file: str) -> None:
    """Raises `UnreadableFile` for a page that is too large or defines entities of its own."""
    if len(text) > LARGEST_CHARACTERS:
        raise UnreadableFile(
            file, tr("it has more than {most:,} characters", most=LARGEST_CHARACTERS)
        )
    own = _OWN_ENTITY.search(text)
    if own:
        line = text.count("\n", 0, own.start()) + 1
        raise UnreadableFile(file, tr("it defines entities of its own, which may be endless"), line)


def read_page(text: str, file: str) -> Element:
    """The page as one element. Raises `UnreadableFile` where it is too large or nests too deep."""
    check_page(text, file)
    tree = _Tree(file)
    at = line = counted = 0
    while mark := _MARK.search(text, at):
        tree.take_text(text[at : mark.start()])
        line += text.count("\n", counted, mark.start())
        counted, at = mark.start(), mark.end()
        if mark["comment"]:
            end = text.find("-->", at)
            at = len(text) if end < 0 else end + 3
        elif mark["other"]:
            end = text.find(">", at)
            at = len(text) if end < 0 else end + 1
        elif mark["end"]:
            tree.close(mark["tag"].lower())
        else:
            tag = mark["tag"].lower()
            element = Element(tag, _attributes(mark["rest"]), line + 1)
            tree.open(element, alone=tag in _VOID or mark["rest"].endswith("/"))
            if tag in RAW:
                begins, at = at, _end_of(tag, text, at)
                element.children.append(_raw(tag, text[begins:at]))
                tree.close(tag)
    tree.take_text(text[at:])
    return tree.root


@dataclass(slots=True)
class _Tree:
    """A page while it is gone through; `stack` are the elements that are open."""

    file: str
    root: Element = field(default_factory=lambda: Element("page"))
    stack: list[Element] = field(default_factory=list)

    @property
    def inner(self) -> Element:
        return self.stack[-1] if self.stack else self.root

    def take_text(self, text: str) -> None:
        if text:
            self.inner.children.append(html.unescape(text))

    def open(self, element: Element, *, alone: bool) -> None:
        closes, within = _CLOSED_BY.get(element.tag, (frozenset(), frozenset()))
        if closes:
            self._close_any(closes, within)
        if element.tag in BLOCKS:
            self._close_any(frozenset({"p"}), _ENDS_NO_PARAGRAPH)
        self.inner.children.append(element)
        if not alone:
            self.stack.append(element)
            if len(self.stack) > DEEPEST:
                reason = tr("its elements are nested more than {most} deep", most=DEEPEST)
                raise UnreadableFile(self.file, reason, element.line)

    def close(self, tag: str) -> None:
        self._close_any(frozenset({tag}), frozenset())

    def _close_any(self, tags: frozenset[str], within: frozenset[str]) -> None:
        for place in range(len(self.stack) - 1, -1, -1):
            if self.stack[place].tag in tags:
                del self.stack[place:]
                return
            if self.stack[place].tag in within:
                return


def _attributes(text: str) -> Mapping[str, str]:
    found: dict[str, str] = {}
    for each in _ATTRIBUTE.finditer(text):
        value = each["double"] or each["single"] or each["bare"] or ""
        found.setdefault(each["name"].lower(), html.unescape(value))
    return found


_ENDS: dict[str, re.Pattern[str]] = {tag: re.compile(rf"</{tag}\b", re.IGNORECASE) for tag in RAW}


def _end_of(tag: str, text: str, at: int) -> int:
    """Where the text of an element whose text is no markup ends."""
    end = _ENDS[tag].search(text, at)
    return end.start() if end else len(text)


def _raw(tag: str, text: str) -> str:
    return text if tag in ("script", "style") else html.unescape(text)


def _gather(element: Element, pieces: list[str]) -> None:
    if element.tag in RAW and element.tag != "title":
        return
    block = element.tag in BLOCKS or element.tag == "br"
    if block:
        pieces.append("\n")
    for each in element.children:
        if isinstance(each, str):
            pieces.append(" ".join(each.split("\n")))
        else:
            _gather(each, pieces)
    if block:
        pieces.append("\n")
