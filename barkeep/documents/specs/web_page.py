"""Specs out of a web page: its recipe data, or else its text where that is plainly a recipe.

Read as text are headings, lists, tables and paragraphs; what leads through a
site, sells, or was written by its readers is left aside and said.
"""

from __future__ import annotations

import re
from collections.abc import Iterator
from dataclasses import replace

from barkeep.documents.markup import BLOCKS, RAW, Element, read_page
from barkeep.documents.specs.document import Document, in_short
from barkeep.documents.specs.jsonld import NO_RECIPE, recipes_of
from barkeep.documents.specs.outline import Block, specs_of
from barkeep.errors import UnreadableFile
from barkeep.translation import tr, tr_noop

AS_TEXT = tr_noop("The page holds no recipe data; it was read by its headings and lists.")
_MENUS = frozenset({"nav", "aside", "footer", "form", "menu", "dialog"})
_NEVER_SHOWN = frozenset(
    {*RAW, "noscript", "template", "svg", "iframe", "button", "select", "head"}
)
_AROUND = re.compile(
    r"(?:^|[\s_-])(?:comments?|respond|ads?|adverts?|advertisement|sponsor(?:ed)?|promo|sidebar|share"
    r"|sharing|social|related|newsletter|subscribe|cookies?|nav|navbar|navigation|menu|breadcrumbs?"
    r"|footer|masthead|pagination|widget|popup|modal)(?:$|[\s_-])",
    re.IGNORECASE,
)
_COMMENTS = re.compile(
    r"[0-9 ]*(?:comments?|repl(?:y|ies)|leave a reply|responses?)\b.{0,40}", re.I
)
_HEADINGS = {f"h{level}": level for level in range(1, 7)}
_MOST_SAID = 12
"""Pieces of a page that are said one by one; the others are counted."""


def page_document(text: str, file: str) -> Document:
    """The specs of a page. Raises `UnreadableFile` where it holds none."""
    page = read_page(text, file)
    try:
        parts = recipes_of(page, file)
    except UnreadableFile as error:
        if error.reason != NO_RECIPE:
            raise
    else:
        return Document(parts, tuple(_rest_of(page)))
    found = _as_text(page)
    if not found.parts:
        raise UnreadableFile(
            file, tr("there is no schema.org Recipe in it, nor a text that is plainly a recipe")
        )
    return found


def _rest_of(page: Element) -> Iterator[str]:
    """How much a page says beside its recipe data."""
    words = _words_around(page)
    if words:
        yield (
            tr("the rest of the page (1 word)")
            if words == 1
            else tr("the rest of the page ({count:,} words)", count=words)
        )


def _words_around(element: Element) -> int:
    if element.tag in _NEVER_SHOWN:
        return 0
    kinds = f"{element.attributes.get('itemtype', '')} {element.attributes.get('typeof', '')}"
    if "recipe" in kinds.casefold():
        return 0
    own = sum(len(each.split()) for each in element.children if isinstance(each, str))
    return own + sum(map(_words_around, element.elements()))


def _as_text(page: Element) -> Document:
    reading = _Reading()
    reading.go_through(page)
    found = specs_of(reading.blocks, strict=True)
    if len(found.parts) == 1 and not found.parts[0].name.strip():
        titled = replace(found.parts[0], name=_title(page))
        found = replace(found, parts=(titled,))
    aside = (*found.left_aside, *(f"“{in_short(each)}”" for each in reading.around))
    more = len(aside) - _MOST_SAID
    if more > 1:
        aside = (*aside[:_MOST_SAID], tr("{count} more pieces of the page", count=more))
    return replace(found, left_aside=aside, remarks=(tr(AS_TEXT),))


def _title(page: Element) -> str:
    """What the page calls itself, without the site's own name behind it."""
    for each in page.elements():
        words = " ".join(each.words().split()) if each.tag == "title" else _title(each)
        if words:
            return re.split(r" [|–—-] ", words)[0]
    return ""


class _Reading:
    """`blocks` are what a page says in order, `around` the words of what stands around that."""

    def __init__(self) -> None:
        self.blocks: list[Block] = []
        self.around: list[str] = []
        self._in_comments = 0

    def go_through(self, element: Element) -> None:
        """Take an element in; its depth is bounded by the reader of the page."""
        loose: list[str] = []
        for each in element.children:
            if isinstance(each, str):
                loose.append(each)
            elif each.tag in BLOCKS or each.tag in _NEVER_SHOWN or _holds_blocks(each):
                self._take_loose(loose, element)
                self._take(each)
            elif each.tag == "br":
                self._take_loose(loose, element)
            else:
                loose.append(_inline(each))
        self._take_loose(loose, element)

    def _take(self, element: Element) -> None:
        tag = element.tag
        if tag in _NEVER_SHOWN or "hidden" in element.attributes:
            return
        if _is_around(element):
            self._leave(element)
        elif tag in _HEADINGS:
            self._take_heading(element)
        elif self._in_comments:
            self._leave(element)
        elif tag in ("ul", "ol"):
            for each in element.elements():
                self._take_item(each, "step" if tag == "ol" else "item")
        elif tag == "tr":
            cells = tuple(" ".join(each.words().split()) for each in element.elements())
            self._add(Block("row", "", element.line, cells=cells))
        else:
            self.go_through(element)

    def _take_item(self, element: Element, kind: str) -> None:
        if any(each.tag in ("ul", "ol", "table") for each in element.elements()):
            self.go_through(element)
            return
        words = " ".join(element.words().split())
        self._add(Block("step" if kind == "step" else "item", words, element.line))

    def _take_heading(self, element: Element) -> None:
        level = _HEADINGS[element.tag]
        words = " ".join(element.words().split())
        if self._in_comments and level > self._in_comments:
            self._leave(element)
            return
        self._in_comments = level if _COMMENTS.fullmatch(words) else 0
        if self._in_comments:
            self._leave(element)
        else:
            self._add(Block("heading", words, element.line, level))

    def _take_loose(self, loose: list[str], element: Element) -> None:
        words = " ".join("".join(loose).split())
        loose.clear()
        if not words:
            return
        if self._in_comments:
            self.around.append(words)
        else:
            self._add(Block("text", words, element.line))

    def _leave(self, element: Element) -> None:
        words = " ".join(element.words().split())
        if words:
            self.around.append(words)

    def _add(self, block: Block) -> None:
        if block.text or block.cells:
            self.blocks.append(block)


def _is_around(element: Element) -> bool:
    if element.tag in _MENUS:
        return True
    if element.tag in ("html", "body", "main", "article"):
        return False
    named = f"{element.attributes.get('class', '')} {element.attributes.get('id', '')}"
    return element.attributes.get("role") in ("navigation", "complementary") or bool(
        _AROUND.search(named)
    )


def _holds_blocks(element: Element) -> bool:
    return any(each.tag in BLOCKS or _holds_blocks(each) for each in element.elements())


def _inline(element: Element) -> str:
    return " ".join(element.words().split("\n")) if element.tag not in _NEVER_SHOWN else ""
