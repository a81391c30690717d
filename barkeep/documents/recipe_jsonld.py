"""schema.org `Recipe` as JSON-LD: out of a page or a file, and out to one.

What the vocabulary has no word for is written with the nearest: the glass is
a `tool`, the ice a `supply`, notes are `comment`, and a riff `isBasedOn` its
parent. A document of ours says `encodingFormat: text/plain`, since elsewhere
texts may hold markup.

Vocabulary: https://schema.org/Recipe (open, version 15 and later).
"""

from __future__ import annotations

import json
import re
from collections.abc import Iterator, Mapping, Sequence
from typing import Any

from barkeep.documents.json_text import read_json
from barkeep.documents.web_page import is_web_page, linked_data, plain_words
from barkeep.domain.spec_parts import SpecParts
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
