"""Templates: which parts are printed in which order, and what each looks like.

They are data, one file each in `resources/print/`; lengths are in mm, type in
points.
"""

from __future__ import annotations

import re
from collections.abc import Mapping
from dataclasses import dataclass
from functools import cache
from typing import Literal, cast, get_args

from barkeep import resource_files
from barkeep.documents.printed.blocks import PARTS_OF_KIND
from barkeep.documents.printed.paper import FILE as SIZES_FILE
from barkeep.documents.printed.paper import FOLDER
from barkeep.documents.printed.run_sheet import RUN_SHEET_PARTS
from barkeep.domain.ingredients.toml_fields import Fields, Table, parse
from barkeep.errors import KnowledgeError

Kind = Literal["card", "menu", "label", "prep", "description", "run_sheet"]

KINDS: tuple[Kind, ...] = get_args(Kind)

Font = Literal["sans", "serif"]

Align = Literal["start", "centre"]

Frame = Literal["none", "line", "double"]

BODY = "body"
"""The style of whatever has none of its own."""

_PARTS: Mapping[Kind, frozenset[str]] = {
    **{kind: PARTS_OF_KIND[kind] for kind in KINDS if kind in PARTS_OF_KIND},
    "run_sheet": frozenset(RUN_SHEET_PARTS),
}

_COLOUR = re.compile(r"#[0-9a-f]{6}")


@dataclass(frozen=True, slots=True)
class BlockStyle:
    """How one kind of block looks: type and space in points, `rule` a line below it.

    `between` is the space between the rows of a table.
    """

    size: float
    bold: bool = False
    italic: bool = False
    colour: str = "#000000"
    align: Align = "start"
    before: float = 0.0
    after: float = 0.0
    between: float = 0.0
    rule: bool = False


@dataclass(frozen=True)
class Template:
    """One look of one kind of document.

    The type of a card suits one `drawn_for_mm` wide and high, and is larger on a
    larger one, smaller on a smaller. Where something does not fit it is made
    smaller still, down to `least_scale`; what then does not fit goes on on
    another card or page.
    """

    key: str
    kind: Kind
    title: str
    order: float
    parts: tuple[str, ...]
    styles: Mapping[str, BlockStyle]
    font: Font = "sans"
    frame: Frame = "none"
    margin_mm: float = 10.0
    columns: int = 1
    gap_mm: float = 0.0
    least_scale: float = 1.0
    new_page_each: bool = False
    drawn_for_mm: tuple[float, float] | None = None

    def style(self, name: str) -> BlockStyle:
        """The style of this name, or that of the body."""
        return self.styles.get(name, self.styles[BODY])


@cache
def shipped_templates(kind: Kind) -> tuple[Template, ...]:
    """The templates of a kind in the order they are offered. Raises `KnowledgeError`."""
    files = resource_files.names(FOLDER, suffix=".toml")
    all_of_them = (
        read_template(resource_files.read_text(FOLDER, file), file)
        for file in files
        if file != SIZES_FILE
    )
    of_kind = [each for each in all_of_them if each.kind == kind]
    return tuple(sorted(of_kind, key=lambda each: (each.order, each.title)))


def read_template(text: str, file: str) -> Template:
    """One template out of a TOML text. Raises `KnowledgeError`."""
    fields = Fields(parse(text, file), file, "template")
    kind = cast(Kind, fields.choice("kind", KINDS, ""))
    template = Template(
        file.removesuffix(".toml"),
        kind,
        fields.text("title"),
        fields.number_or_none("order") or 0.0,
        _parts(fields, kind),
        _styles(fields.table("style"), file),
        cast(Font, fields.choice("font", get_args(Font), "sans")),
        cast(Frame, fields.choice("frame", get_args(Frame), "none")),
        fields.number("margin_mm", most=40.0),
        int(fields.number_or_none("columns", least=1.0, most=3.0) or 1),
        fields.number_or_none("gap_mm", most=40.0) or 0.0,
        fields.number_or_none("least_scale", least=0.5, most=1.0) or 1.0,
        fields.flag("new_page_each"),
        _drawn_for(fields),
    )
    fields.finish()
    return template


def _parts(fields: Fields, kind: Kind) -> tuple[str, ...]:
    parts = fields.words("parts")
    for part in parts:
        if part not in _PARTS[kind]:
            known = ", ".join(sorted(_PARTS[kind]))
            fields.refuse(f"a {kind.replace('_', ' ')} has no part “{part}”; it may have {known}")
    if not parts:
        fields.refuse("“parts” is missing")
    return parts


def _drawn_for(fields: Fields) -> tuple[float, float] | None:
    width = fields.number_or_none("drawn_for_width_mm", above=0.0, most=1000.0)
    height = fields.number_or_none("drawn_for_height_mm", above=0.0, most=1000.0)
    return None if width is None or height is None else (width, height)


def _styles(table: Table, file: str) -> Mapping[str, BlockStyle]:
    styles = {name: _style(name, each, file) for name, each in table.items()}
    if BODY not in styles:
        raise KnowledgeError(file, f"style.{BODY}", "it is missing")
    return styles


def _style(name: str, table: object, file: str) -> BlockStyle:
    if not isinstance(table, dict):
        raise KnowledgeError(file, f"style.{name}", "it must be a table")
    fields = Fields(table, file, f"style.{name}")
    style = BlockStyle(
        fields.number("size", least=5.0, most=72.0),
        fields.flag("bold"),
        fields.flag("italic"),
        _colour(fields),
        cast(Align, fields.choice("align", get_args(Align), "start")),
        fields.number_or_none("before", most=72.0) or 0.0,
        fields.number_or_none("after", most=72.0) or 0.0,
        fields.number_or_none("between", most=72.0) or 0.0,
        fields.flag("rule"),
    )
    fields.finish()
    return style


def _colour(fields: Fields) -> str:
    colour = fields.text("colour", "#000000")
    if not _COLOUR.fullmatch(colour):
        fields.refuse(f"“colour” is “{colour}”; write it as #1d3b44")
    return colour
