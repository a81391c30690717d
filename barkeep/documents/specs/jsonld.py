"""schema.org `Recipe` as JSON-LD: out of a page or a file, and out to one.

What the vocabulary has no word for is written with the nearest: the glass is
a `tool`, the ice a `supply`, notes are `comment`, a riff `isBasedOn` its parent
and the source a `citation`. A document of ours says `encodingFormat: text/plain`,
since elsewhere texts may hold markup.

Vocabulary: https://schema.org/Recipe (open, version 15 and later).
"""

from __future__ import annotations

import json
import re
from collections.abc import Iterator, Mapping, Sequence
from typing import Any

from barkeep.documents.foreign_text import read_json
from barkeep.documents.markup import Element, read_page
from barkeep.documents.specs.embedded_data import embedded_things
from barkeep.documents.specs.schema_recipe import (
    GLASS,
    ICE,
    PLAIN,
    Thing,
    plain_words,
    recipe_parts,
    texts,
)
from barkeep.domain.spec_text.parts import SpecParts
from barkeep.errors import UnreadableFile
from barkeep.translation import tr, tr_noop

__all__ = ["is_web_page", "linked_data", "plain_words", "recipe_text", "recipes_in", "recipes_of"]

MOST_RECIPES = 20_000
NO_RECIPE = tr_noop("there is no schema.org Recipe in it")
_LINKED_DATA = "application/ld+json"


def recipes_in(text: str, file: str) -> tuple[SpecParts, ...]:
    """Every recipe that a saved page or a JSON file holds as data, also inside `@graph` and lists.

    Raises `UnreadableFile` where there is none, or the document cannot be used.
    """
    if is_web_page(text):
        return recipes_of(read_page(text, file), file)
    found = _of_values([read_json(text, file)], file)
    if not found:
        raise UnreadableFile(file, NO_RECIPE)
    return found


def recipes_of(page: Element, file: str) -> tuple[SpecParts, ...]:
    """Every recipe that a page holds as data: JSON-LD, or else microdata and RDFa.

    Raises `UnreadableFile` where there is none.
    """
    values: list[Any] = []
    broken: UnreadableFile | None = None
    for each in _scripts(page):
        try:
            values.append(read_json(each, file))
        except UnreadableFile as error:  # a page may hold a broken block beside a good one
            broken = error
    found = _of_values(values, file) or _of_values(embedded_things(page), file)
    if not found:
        raise broken or UnreadableFile(file, NO_RECIPE)
    return found


def _of_values(values: Sequence[Any], file: str) -> tuple[SpecParts, ...]:
    found: list[SpecParts] = []
    for value in values:
        known = {thing["@id"]: thing for thing in _identified(value)}
        for recipe in _recipes(value):
            if len(found) == MOST_RECIPES:
                raise UnreadableFile(
                    file, tr("it holds more than {most:,} recipes", most=MOST_RECIPES)
                )
            found.append(recipe_parts(_with_things(recipe, known)))
    return tuple(found)


def recipe_text(specs: Sequence[SpecParts]) -> str:
    """Specs as one JSON-LD document; a list in `@graph` where there are several."""
    recipes = [_recipe(spec) for spec in specs]
    context = {"@context": "https://schema.org"}
    whole = {**context, **recipes[0]} if len(recipes) == 1 else {**context, "@graph": recipes}
    text = json.dumps(whole, ensure_ascii=False, indent=2)
    # Or a name could end the script of the page that it is pasted into.
    return text.replace("<", "\\u003c") + "\n"


def _recipes(value: Any) -> Iterator[Thing]:
    """The recipes anywhere in a value, in order; depth is bounded by the reader of the text."""
    if isinstance(value, list):
        for each in value:
            yield from _recipes(each)
    elif isinstance(value, dict):
        if "recipe" in (_last_name(kind) for kind in texts(value.get("@type"))):
            yield value
            return
        for each in value.values():
            if isinstance(each, list | dict):
                yield from _recipes(each)


def _identified(value: Any) -> Iterator[Mapping[str, Any]]:
    """Everything in a value that has an `@id` and says more than that."""
    if isinstance(value, list):
        for each in value:
            yield from _identified(each)
    elif isinstance(value, dict):
        if isinstance(value.get("@id"), str) and len(value) > 1:
            yield value
        for each in value.values():
            if isinstance(each, list | dict):
                yield from _identified(each)


def _with_things(recipe: Thing, known: Mapping[str, Thing]) -> Thing:
    """A recipe with what it only points to in place of the pointers."""

    def meant(value: Any) -> Any:
        if isinstance(value, list):
            return [meant(each) for each in value]
        if isinstance(value, dict) and value.keys() == {"@id"}:
            return known.get(str(value["@id"]), value)
        return value

    return {key: meant(value) if value is not recipe else value for key, value in recipe.items()}


def _last_name(kind: str) -> str:
    """*Recipe* out of *https://schema.org/Recipe* and *schema:Recipe*."""
    return re.split(r"[/#:]", kind)[-1].casefold()


def _recipe(spec: SpecParts) -> dict[str, Any]:
    recipe: dict[str, Any] = {
        "@type": "Recipe",
        "encodingFormat": PLAIN,
        "name": spec.name,
        "recipeCategory": "Drink",
        "recipeIngredient": list(spec.lines),
        "recipeInstructions": _instructions(spec.method),
    }
    optional: dict[str, Any] = {
        "recipeYield": f"{spec.serves:g}" if spec.serves else None,
        "tool": {"@type": "HowToTool", "name": f"{GLASS}{spec.glass}"} if spec.glass else None,
        "supply": {"@type": "HowToSupply", "name": f"{ICE}{spec.ice}"} if spec.ice else None,
        "comment": [{"@type": "Comment", "text": note} for note in spec.notes],
        "isBasedOn": {"@type": "Recipe", "name": spec.riff_of} if spec.riff_of else None,
        "keywords": ", ".join(spec.tags),
        "author": {"@type": "Person", "name": spec.credit} if spec.credit else None,
        "citation": spec.source,
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


def is_web_page(text: str) -> bool:
    """Whether a text is HTML: it begins with markup, which no JSON does."""
    return text.lstrip("\ufeff \t\r\n").startswith("<")


def linked_data(text: str, file: str) -> tuple[str, ...]:
    """The JSON-LD texts of a page, in order; none where it has none.

    Raises `UnreadableFile` for a page that is too large, nests too deep or
    defines entities of its own.
    """
    return tuple(_scripts(read_page(text, file)))


def _scripts(page: Element) -> Iterator[str]:
    """The text of every script of linked data."""
    for each in page.elements():
        if each.tag == "script":
            kind = each.attributes.get("type", "").split(";")[0].strip().casefold()
            if kind == _LINKED_DATA:
                yield "".join(text for text in each.children if isinstance(text, str))
        else:
            yield from _scripts(each)
