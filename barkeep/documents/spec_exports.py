"""Specs as a file, its kind told by the suffix."""

from __future__ import annotations

from collections.abc import Callable, Mapping, Sequence
from dataclasses import dataclass

from barkeep.documents.recipe_jsonld import recipe_text
from barkeep.documents.spec_json import specs_json
from barkeep.documents.spec_markdown import markdown
from barkeep.documents.specs_csv import specs_csv
from barkeep.domain.amounts import US_UNITS, BarUnits
from barkeep.domain.ingredients import FamilyTree
from barkeep.domain.spec_parts import SpecParts
from barkeep.domain.spec_text import write_specs
from barkeep.domain.spec_to_parts import parts_of
from barkeep.domain.specs import Spec
from barkeep.errors import UnreadableFile, spoken_list

Write = Callable[[Sequence[Spec], FamilyTree, BarUnits], str]


@dataclass(frozen=True, slots=True)
class ExportFormat:
    """One kind of file; barkeep reads each of them back."""

    suffix: str
    title: str
    write: Write


def _of_parts(
    write: Callable[[Sequence[SpecParts]], str],
) -> Write:
    return lambda specs, tree, units: write([parts_of(spec, tree, units) for spec in specs])


EXPORT_FORMATS: Mapping[str, ExportFormat] = {
    each.suffix: each
    for each in (
        ExportFormat(".txt", "plain text", write_specs),
        ExportFormat(".md", "Markdown", _of_parts(markdown)),
        ExportFormat(".json", "barkeep’s own JSON", _of_parts(specs_json)),
        ExportFormat(".jsonld", "JSON-LD", _of_parts(recipe_text)),
        ExportFormat(".csv", "CSV", _of_parts(specs_csv)),
    )
}
"""Suffix -> format, in the order they are offered."""


def exported(specs: Sequence[Spec], file: str, tree: FamilyTree, units: BarUnits = US_UNITS) -> str:
    """The text of a file of this name, which reads back at a bar of the same `units`.

    Raises `UnreadableFile` for a suffix nobody knows.
    """
    suffix = f".{file.rsplit('.', 1)[-1].casefold()}" if "." in file else ""
    known = EXPORT_FORMATS.get(suffix)
    if known is None:
        names = spoken_list(tuple(EXPORT_FORMATS))
        raise UnreadableFile(file, f"its name must end in {names}, which says what it will be")
    return known.write(specs, tree, units)
