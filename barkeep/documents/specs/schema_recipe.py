"""One schema.org `Recipe` in pieces, whatever it was written in: JSON-LD, microdata or RDFa.

An ingredient may be a text, or an object with its amount and unit in any of the
shapes the vocabulary has: `PropertyValue`, `QuantitativeValue`, `HowToSupply`
with a `requiredQuantity`. What a spec has no place for is left aside by name.

Vocabulary: https://schema.org/Recipe (open, version 15 and later); the codes of units are those
of UN/CEFACT recommendation 20.
"""

from __future__ import annotations

import html
import re
from collections.abc import Iterator, Mapping, Sequence
from typing import Any

from barkeep.documents.markup import BLOCKS
from barkeep.documents.specs.document import in_short
from barkeep.domain.spec_text.parts import SpecParts
from barkeep.translation import tr

Thing = Mapping[str, Any]

PLAIN = "text/plain"
"""`encodingFormat` of a document of ours: elsewhere texts may hold markup."""
GLASS, ICE = "Glass: ", "Ice: "
LINE = "@line"
"""Where in its page a recipe begins, from 1; no key of the vocabulary."""

_YIELD = re.compile(
    r"(?:(?:serves|makes|yields?|about|for)[ :]{1,2}){0,3}(?P<number>[0-9]{1,4}(?:[.,][0-9]{1,2})?)"
    r"[ ]?(?:serv\w*|drinks?|cocktails?|people|persons?|portions?|glass(?:es)?|guests?)?[ .]*",
    re.IGNORECASE,
)
_MARKUP = re.compile(r"<(?:/?(?P<tag>[a-zA-Z][a-zA-Z0-9]{0,20})\b[^<>]{0,500}|!--[^<>]{0,500}--)>")
_MOST_ESCAPED = 4
"""How many times over a text may be escaped; each gives the same text in the end."""
_UNIT_CODES: Mapping[str, str] = {
    **{"MLT": "ml", "CLT": "cl", "DLT": "dl", "LTR": "l"},
    **{"OZA": "fl oz", "OZI": "imp fl oz", "ONZ": "oz", "GRM": "g", "KGM": "kg", "LBR": "lb"},
    **{"G21": "cup", "G24": "tbsp", "G25": "tsp", "PTL": "pint", "QTL": "quart"},
    **{"C62": "", "EA": "", "H87": "", "NAR": ""},
}
_READ = frozenset(
    {
        *("name", "recipeIngredient", "ingredients", "recipeInstructions", "description"),
        *("isBasedOn", "keywords", "author", "citation", "url", "mainEntityOfPage"),
        *("encodingFormat",),
    }
)
_NOT_CONTENT = re.compile(
    r"@.*|additionalType|inLanguage|potentialAction|publisher|isPartOf|date(?:Published|Modified"
    r"|Created)|headline|identifier|sameAs|copyright.*|license|position|wordCount|commentCount"
)
"""What tells of the page or the machine rather than of the drink."""
_A_DRINK = frozenset({"drink", "drinks", "cocktail", "cocktails", "beverage", "beverages"})


def recipe_parts(recipe: Thing) -> SpecParts:
    """The pieces of a recipe."""
    plain = recipe.get("encodingFormat") == PLAIN
    tools, supplies = said(recipe, "tool", plain), said(recipe, "supply", plain)
    lines, unused = _lines(recipe, plain)
    steps = _Steps(plain)
    method = list(steps.of(recipe.get("recipeInstructions")))
    serves = _serves(recipe.get("recipeYield") or recipe.get("yield"))
    notes = said(recipe, "comment" if plain else "description", plain)
    aside = () if plain else (*_left_aside(recipe, unused, serves), *steps.titles)
    return SpecParts(
        name=" ".join("".join(said(recipe, "name", plain)[:1]).split()),
        lines=tuple(lines),
        method=tuple(method),
        glass=_after(GLASS, tools),
        ice=_after(ICE, supplies),
        notes=tuple(note for note in notes if note.strip()),
        riff_of="".join(said(recipe, "isBasedOn", plain)[:1]),
        serves=serves,
        tags=tuple(_tags(recipe, plain)),
        credit=", ".join(said(recipe, "author", plain)),
        source=_source(recipe, plain),
        row=_whole(recipe.get(LINE)) or 0,
        left_aside=aside,
    )


def said(recipe: Thing, key: str, plain: bool) -> list[str]:
    """The texts of a property."""
    return [text if plain else plain_words(text) for text in texts(recipe.get(key))]


def texts(value: Any) -> Iterator[str]:
    """The texts of a value: itself, each of a list, or the text or name of a thing."""
    if isinstance(value, str):
        yield value
    elif isinstance(value, int | float) and not isinstance(value, bool):
        yield f"{value:.10g}"
    elif isinstance(value, list):
        for each in value:
            yield from texts(each)
    elif isinstance(value, dict):
        own = ("text", "name", "value", "@value")
        yield from texts(next((value[key] for key in own if value.get(key)), None))


def plain_words(text: str) -> str:
    """A text without markup, its entities as characters, however often they were escaped.

    >>> plain_words("<p>1&frac12; oz gin &amp;amp; tonic</p>")
    '1½ oz gin & tonic'
    """
    shown = text
    for _ in range(_MOST_ESCAPED):
        before, shown = shown, html.unescape(shown)
        if shown == before:
            break
    shown = _MARKUP.sub(_without, shown)
    rows = re.sub(r"[ \t\xa0\u202f]+", " ", shown)
    return re.sub(r" ?\x00[ \x00]*", "\n", rows).strip()


def _without(mark: re.Match[str]) -> str:
    """What stands in place of a tag: a new row where it begins one."""
    tag = (mark["tag"] or "").lower()
    return "\x00" if tag in BLOCKS or tag == "br" else " "


# Ingredients


def _lines(recipe: Thing, plain: bool) -> tuple[list[str], set[str]]:
    """The lines, and the properties that hold some and were not needed."""
    found: list[str] = []
    unused: set[str] = set()
    for key in ("recipeIngredient", "ingredients", "supply"):
        value = recipe.get(key)
        if value is None or (plain and key == "supply"):
            continue
        if found:
            unused.add(key)
        else:
            found = [
                row
                for text in ingredient_texts(value)
                for row in ([text] if plain else plain_words(text).split("\n"))
                if row.strip()
            ]
    return found, unused


def ingredient_texts(value: Any) -> Iterator[str]:
    """Each ingredient of a value as a line: *1.5 oz dark rum*."""
    if isinstance(value, list):
        for each in value:
            yield from ingredient_texts(each)
    elif isinstance(value, dict):
        inner = value.get("itemListElement", value.get("item"))
        if isinstance(inner, list | dict):
            yield from ingredient_texts(_in_order(inner))
        else:
            yield _ingredient(value)
    else:
        yield from texts(value)


def _ingredient(thing: Thing) -> str:
    own = thing.get("text")
    if isinstance(own, str) and own.strip():
        return own
    name = " ".join(texts(thing.get("name") or thing.get("@value")))
    keys = ("requiredQuantity", "quantity", "amount", "size", "weight")
    quantity = next((thing[key] for key in keys if thing.get(key) is not None), None)
    amount = _amount(thing if quantity is None else quantity)
    if quantity is not None and not isinstance(quantity, dict):
        amount = " ".join([amount, _unit(thing)]).strip()
    notes = [
        note
        for key in ("description", "disambiguatingDescription")
        for note in texts(thing.get(key))
    ]
    return " ".join([*filter(None, (amount, name)), *(f"({note})" for note in notes)])


def _amount(value: Any) -> str:
    """An amount with its unit: *2-3 dashes*."""
    if not isinstance(value, dict):
        return " ".join(texts(value))
    inner = value.get("value")
    if isinstance(inner, dict):
        return " ".join(filter(None, (_amount(inner), _unit(value))))
    number = " ".join(texts(inner))
    if not number:
        ends = [*texts(value.get("minValue")), *texts(value.get("maxValue"))]
        number = "-".join(dict.fromkeys(ends))
    return " ".join(filter(None, (number, _unit(value))))


def _unit(value: Thing) -> str:
    words = " ".join(texts(value.get("unitText") or value.get("unit")))
    if words:
        return words
    code = " ".join(texts(value.get("unitCode"))).rsplit("/", 1)[-1]
    return _UNIT_CODES.get(code, code)


def _in_order(value: Any) -> Any:
    """The members of a list by their `position`, where they all have one."""
    if not isinstance(value, list):
        return value
    places = [each.get("position") if isinstance(each, dict) else None for each in value]
    numbers = [number for place in places if (number := _whole(place)) is not None]
    if len(numbers) < len(value):
        return value
    return [value[place] for place in sorted(range(len(value)), key=numbers.__getitem__)]


def _whole(value: Any) -> int | None:
    if isinstance(value, str) and re.fullmatch(r"[0-9]{1,6}", value):
        return int(value)
    return value if isinstance(value, int) and not isinstance(value, bool) else None


# The method


class _Steps:
    """The steps of instructions; `titles` are names of steps and sections that are no text."""

    def __init__(self, plain: bool) -> None:
        self._plain = plain
        self.titles: list[str] = []

    def of(self, value: Any) -> Iterator[str]:
        """Each step, an empty one between sections."""
        values = value if isinstance(value, list) else [value]
        begun = False
        for each in values:
            if not isinstance(each, dict):
                yield from self._rows(each)
                begun = True
                continue
            inner = each.get("itemListElement")
            if inner is not None:
                if begun and _is_section(each):
                    yield ""
                self._note_title(each, "")
                yield from self.of(_in_order(inner))
            elif isinstance(each.get("item"), dict | list):
                yield from self.of(each["item"])
            else:
                self._note_title(each, "".join(texts(each.get("text"))))
                yield from self._rows(each)
            begun = True

    def _rows(self, value: Any) -> Iterator[str]:
        for text in texts(value):
            yield from (text if self._plain else plain_words(text)).splitlines()

    def _note_title(self, thing: Thing, text: str) -> None:
        name = plain_words(" ".join(texts(thing.get("name"))))
        inside = thing.get("itemListElement") is not None or text
        if name and inside and name.rstrip(". …").casefold() not in plain_words(text).casefold():
            self.titles.append(tr("the title “{words}” in its method", words=in_short(name)))
        for key in ("image", "video"):
            if thing.get(key):
                told = tr("image of a step") if key == "image" else tr("video of a step")
                self.titles.append(told)


def _is_section(thing: Thing) -> bool:
    return "ListItem" not in " ".join(texts(thing.get("@type")))


# The rest


def _source(recipe: Thing, plain: bool) -> str:
    for key in ("citation",) if plain else ("citation", "url", "mainEntityOfPage"):
        value = recipe.get(key)
        if key == "mainEntityOfPage" and isinstance(value, dict):
            value = value.get("url") or value.get("@id")
        found = " ".join("".join([*texts(value)][:1]).split())
        if found and not found.startswith("#"):
            return found if plain else plain_words(found)
    return ""


def _tags(recipe: Thing, plain: bool) -> Iterator[str]:
    for text in said(recipe, "keywords", plain):
        yield from (tag.strip() for tag in text.split(",") if tag.strip())


def _after(front: str, values: Sequence[str]) -> str:
    found = (text.removeprefix(front) for text in values if text.startswith(front))
    return next(found, "")


def _serves(value: Any) -> float | None:
    """How many serves; a yield in litres is no number of them."""
    for text in texts(value):
        found = _YIELD.fullmatch(plain_words(text))
        if found and 0 < float(found["number"].replace(",", ".")) <= 1000:
            return float(found["number"].replace(",", "."))
    return None


def _left_aside(recipe: Thing, unused: set[str], serves: float | None) -> Iterator[str]:
    """Each property that carries something a spec has no place for."""
    used = _READ - unused
    if serves is not None:
        used |= {"recipeYield", "yield"}
    if not unused and not any(recipe.get(key) for key in ("recipeIngredient", "ingredients")):
        used |= {"supply"}
    for key, value in recipe.items():
        if key in used or _NOT_CONTENT.fullmatch(key):
            continue
        words = [each for each in _all_texts(value) if each.strip()]
        drink = key == "recipeCategory" and {each.casefold() for each in words} <= _A_DRINK
        if words and not drink:
            yield f"{key} ({in_short(plain_words(', '.join(words)))})"


def _all_texts(value: Any) -> Iterator[str]:
    """Every text within a value; its depth is bounded by the reader of the document."""
    if isinstance(value, dict):
        for key, each in value.items():
            if not key.startswith("@"):
                yield from _all_texts(each)
    elif isinstance(value, list):
        for each in value:
            yield from _all_texts(each)
    else:
        yield from texts(value)
