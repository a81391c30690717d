"""schema.org `Recipe` as JSON-LD: out of a page or a file, and out to one.

What the vocabulary has no word for is written with the nearest: the glass is
a `tool`, the ice a `supply`, notes are `comment`, and a riff `isBasedOn` its
parent. A document of ours says `encodingFormat: text/plain`, since elsewhere
texts may hold markup.

Vocabulary: https://schema.org/Recipe (open, version 15 and later).
"""

from __future__ import annotations

import html
import json
import re
from collections.abc import Iterator, Mapping, Sequence
from typing import Any

from barkeep.documents.foreign_text import LARGEST_CHARACTERS, read_json
from barkeep.domain.spec_text.parts import SpecParts
from barkeep.errors import UnreadableFile

MOST_RECIPES = 20_000
_PLAIN = "text/plain"
_GLASS, _ICE = "Glass: ", "Ice: "
_NUMBER = re.compile(r"[0-9]{1,4}(?:[.,][0-9]{1,2})?")


def recipes_in(text: str, file: str) -> tuple[SpecParts, ...]:
    """Every recipe of a saved page or a JSON file, also inside `@graph` and lists.

    Raises `UnreadableFile` where there is none, or the document cannot be used.
    """
    texts = linked_data(text, file) if is_web_page(text) else (text,)
    found: list[SpecParts] = []
    broken: UnreadableFile | None = None
    for each in texts:
        try:
            value = read_json(each, file)
        except UnreadableFile as error:  # a page may hold a broken block beside a good one
            broken = error
            continue
        for recipe in _recipes(value):
            found.append(_parts(recipe))
            if len(found) > MOST_RECIPES:
                raise UnreadableFile(file, f"it holds more than {MOST_RECIPES:,} recipes")
    if not found:
        raise broken or UnreadableFile(file, "there is no schema.org Recipe in it")
    return tuple(found)


def recipe_text(specs: Sequence[SpecParts]) -> str:
    """Specs as one JSON-LD document; a list in `@graph` where there are several."""
    recipes = [_recipe(spec) for spec in specs]
    context = {"@context": "https://schema.org"}
    whole = {**context, **recipes[0]} if len(recipes) == 1 else {**context, "@graph": recipes}
    return json.dumps(whole, ensure_ascii=False, indent=2) + "\n"


def _recipes(value: Any) -> Iterator[Mapping[str, Any]]:
    """The recipes anywhere in a value, in order; depth is bounded by the reader of the text."""
    if isinstance(value, list):
        for each in value:
            yield from _recipes(each)
    elif isinstance(value, dict):
        if "recipe" in (_last_name(kind) for kind in _texts(value.get("@type"))):
            yield value
            return
        for each in value.values():
            if isinstance(each, list | dict):
                yield from _recipes(each)


def _last_name(kind: str) -> str:
    """*Recipe* out of *https://schema.org/Recipe* and *schema:Recipe*."""
    return re.split(r"[/#:]", kind)[-1].casefold()


def _parts(recipe: Mapping[str, Any]) -> SpecParts:
    plain = recipe.get("encodingFormat") == _PLAIN
    tools, supplies = _said(recipe, "tool", plain), _said(recipe, "supply", plain)
    lines = _said(recipe, "recipeIngredient", plain) or _said(recipe, "ingredients", plain)
    notes = [*_said(recipe, "comment", plain)]
    if not plain:
        notes = [*_said(recipe, "description", plain), *notes]
    return SpecParts(
        name=" ".join("".join(_said(recipe, "name", plain)[:1]).split()),
        lines=tuple(line for line in lines if line.strip()),
        method=tuple(_steps(recipe.get("recipeInstructions"), plain)),
        glass=_after(_GLASS, tools),
        ice=_after(_ICE, supplies),
        notes=tuple(note for note in notes if note.strip()),
        riff_of="".join(_said(recipe, "isBasedOn", plain)[:1]),
        serves=_serves(recipe.get("recipeYield")),
        tags=tuple(_tags(recipe, plain)),
        credit=", ".join(_said(recipe, "author", plain)),
    )


def _said(recipe: Mapping[str, Any], key: str, plain: bool) -> list[str]:
    return [text if plain else plain_words(text) for text in _texts(recipe.get(key))]


def _texts(value: Any) -> Iterator[str]:
    """The texts of a property: itself, each of a list, or the text or name of a thing."""
    if isinstance(value, str):
        yield value
    elif isinstance(value, int | float) and not isinstance(value, bool):
        yield f"{value:g}"
    elif isinstance(value, list):
        for each in value:
            yield from _texts(each)
    elif isinstance(value, dict):
        yield from _texts(value.get("text") or value.get("name") or value.get("value"))


def _steps(value: Any, plain: bool) -> Iterator[str]:
    """Each step of the instructions, an empty one between the sections."""
    values = value if isinstance(value, list) else [value]
    for number, each in enumerate(values):
        inner = each.get("itemListElement") if isinstance(each, dict) else None
        if inner is not None:
            if number:
                yield ""
            yield from _steps(inner, plain)
            continue
        for text in _texts(each):
            yield from (text if plain else plain_words(text)).splitlines()


def _tags(recipe: Mapping[str, Any], plain: bool) -> Iterator[str]:
    for text in _said(recipe, "keywords", plain):
        yield from (tag.strip() for tag in text.split(",") if tag.strip())


def _after(front: str, texts: Sequence[str]) -> str:
    found = (text.removeprefix(front) for text in texts if text.startswith(front))
    return next(found, "")


def _serves(value: Any) -> float | None:
    for text in _texts(value):
        number = _NUMBER.search(text)
        if number and 0 < float(number.group().replace(",", ".")) <= 1000:
            return float(number.group().replace(",", "."))
    return None


def _recipe(spec: SpecParts) -> dict[str, Any]:
    recipe: dict[str, Any] = {
        "@type": "Recipe",
        "encodingFormat": _PLAIN,
        "name": spec.name,
        "recipeCategory": "Drink",
        "recipeIngredient": list(spec.lines),
        "recipeInstructions": _instructions(spec.method),
    }
    optional: dict[str, Any] = {
        "recipeYield": f"{spec.serves:g}" if spec.serves else None,
        "tool": {"@type": "HowToTool", "name": f"{_GLASS}{spec.glass}"} if spec.glass else None,
        "supply": {"@type": "HowToSupply", "name": f"{_ICE}{spec.ice}"} if spec.ice else None,
        "comment": [{"@type": "Comment", "text": note} for note in spec.notes],
        "isBasedOn": {"@type": "Recipe", "name": spec.riff_of} if spec.riff_of else None,
        "keywords": ", ".join(spec.tags),
        "author": {"@type": "Person", "name": spec.credit} if spec.credit else None,
    }
    return {**recipe, **{key: value for key, value in optional.items() if value}}


def _instructions(method: Sequence[str]) -> list[dict[str, Any]]:
    sections: list[list[str]] = [[]]
    for step in method:
        if step:
            sections[-1].append(step)
        else:
            sections.append([])
    steps = [[{"@type": "HowToStep", "text": step} for step in each] for each in sections if each]
    if len(steps) < 2:
        return steps[0] if steps else []
    return [{"@type": "HowToSection", "itemListElement": each} for each in steps]


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
        raise UnreadableFile(file, "it defines entities of its own, which may be endless", line)
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
                reason = f"its elements are nested more than {DEEPEST} deep"
                raise UnreadableFile(file, reason, line)


def _end_of(tag: str, text: str, at: int) -> int:
    """Where the text of an element whose text is no markup ends."""
    end = re.compile(rf"</{tag}\b", re.IGNORECASE).search(text, at)
    return end.start() if end else len(text)


def _is_linked_data(attributes: str) -> bool:
    kind = _TYPE.search(attributes)
    return kind is not None and kind["kind"].split(";")[0].strip().casefold() == _LINKED_DATA
