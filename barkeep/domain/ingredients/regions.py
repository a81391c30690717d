"""Regions, and what each calls an ingredient where nobody wrote a name for it."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, field
from functools import cache

from barkeep import resource_files
from barkeep.domain.ingredients.tree import FamilyTree
from barkeep.domain.phrases import folded
from barkeep.errors import UnknownName
from barkeep.shipped_data import Text, Texts, parse, read

FILE = "regions.toml"


@dataclass(frozen=True, slots=True)
class Region:
    """Where names agree. `countries` are ISO 3166 codes and what systems write for them.

    `names` are by ingredient and as they stand inside a sentence.
    """

    key: str
    called: Text
    countries: Texts
    names: Mapping[str, Text] = field(default_factory=dict)


@cache
def shipped_regions() -> Mapping[str, Region]:
    """The regions barkeep brings along, by key. Raises `KnowledgeError` for a broken resource."""
    entries = parse(resource_files.read_text(FILE), FILE).items()
    return {key: read(entry, Region, FILE, key, key=key) for key, entry in entries}


def region_named(words: str) -> Region:
    """The region of this key, name or country. Raises `UnknownName`.

    >>> region_named("nz").key
    'AU'
    """
    wanted = folded(words)
    for region in shipped_regions().values():
        if wanted in map(folded, (region.key, region.called, *region.countries)):
            return region
    raise UnknownName("region", words.strip(), tuple(shipped_regions()))


def names_in(key: str, tree: FamilyTree) -> Mapping[str, str]:
    """What a region calls the ingredients of a tree; nothing for no region or one nobody knows.

    Left out is what the owner calls something else, and what would be read as
    another ingredient.
    """
    region = shipped_regions().get(key) if key else None
    names = region.names.items() if region else ()
    return {
        ingredient: name
        for ingredient, name in names
        if ingredient in tree and tree.by_name.get(folded(name)) == ingredient
    }
