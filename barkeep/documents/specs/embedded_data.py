"""Things that a page describes in its own markup: microdata and RDFa, as JSON-LD says them.

Microdata: https://html.spec.whatwg.org/multipage/microdata.html (open).
RDFa Lite: https://www.w3.org/TR/rdfa-lite/ (open).
"""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from typing import Any

from barkeep.documents.markup import Element
from barkeep.documents.specs.schema_recipe import LINE

Thing = dict[str, Any]
_SCHEMA = "schema.org"
_ADDRESSES: Mapping[str, str] = {
    **dict.fromkeys(("a", "area", "link"), "href"),
    **dict.fromkeys(("audio", "embed", "iframe", "img", "source", "track", "video"), "src"),
    "object": "data",
}
_VALUES: Mapping[str, str] = {"data": "value", "meter": "value", "time": "datetime"}


def embedded_things(page: Element) -> list[Thing]:
    """The outermost things of a page, in order."""
    found: list[Thing] = []
    _walk(page, None, found, {})
    return found


def _walk(
    element: Element, thing: Thing | None, found: list[Thing], prefixes: Mapping[str, str]
) -> None:
    """Gather what an element and those within it say of `thing`; its depth is that of the page."""
    inside = _with_prefixes(element, prefixes)
    names = list(_names(element, inside))
    inner = thing
    if "itemscope" in element.attributes or "typeof" in element.attributes:
        inner = _begun(element)
        if thing is not None and names:
            _add(thing, names, inner)
        else:
            found.append(inner)
    elif thing is not None and names:
        _add(thing, names, _value(element))
    for each in element.elements():
        _walk(each, inner, found, inside)


def _begun(element: Element) -> Thing:
    kinds = element.attributes.get("itemtype") or element.attributes.get("typeof") or ""
    return {"@type": kinds.split(), LINE: element.line}


def _add(thing: Thing, names: list[str], value: Any) -> None:
    for name in names:
        if name not in thing:
            thing[name] = value
        elif isinstance(thing[name], list):
            thing[name].append(value)
        else:
            thing[name] = [thing[name], value]


def _names(element: Element, prefixes: Mapping[str, str]) -> Iterator[str]:
    """The properties of schema.org that an element gives."""
    for name in element.attributes.get("itemprop", "").split():
        yield name.rsplit("/", 1)[-1]
    for name in element.attributes.get("property", "").split():
        prefix, colon, rest = name.partition(":")
        if not colon:
            yield name
        elif _SCHEMA in name:
            yield name.rsplit("/", 1)[-1]
        elif _SCHEMA in prefixes.get(prefix, _SCHEMA if prefix == "schema" else ""):
            yield rest


def _with_prefixes(element: Element, prefixes: Mapping[str, str]) -> Mapping[str, str]:
    given = element.attributes.get("prefix")
    if not given:
        return prefixes
    words = given.split()
    pairs = zip(words[0::2], words[1::2], strict=False)
    return {**prefixes, **{name.rstrip(":"): address for name, address in pairs}}


def _value(element: Element) -> str:
    said = element.attributes
    if "content" in said:
        return said["content"]
    for which in (_ADDRESSES, _VALUES):
        attribute = which.get(element.tag)
        if attribute and attribute in said:
            return said[attribute]
    return element.words()
