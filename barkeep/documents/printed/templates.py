"""Templates: which parts are printed in which order, and what each looks like.

They are data, one file each in `resources/print/`; lengths are in mm, type in
points.
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from functools import cache
from typing import Annotated, Literal, get_args

from barkeep import resource_files
from barkeep.documents.printed.blocks import PARTS_OF_KIND
from barkeep.documents.printed.paper import FILE as SIZES_FILE
from barkeep.documents.printed.paper import FOLDER
from barkeep.documents.printed.run_sheet import RUN_SHEET_PARTS
from barkeep.errors import KnowledgeError
from barkeep.shipped_data import Limits, NotNegative, Text, Texts, parse, read, table_in, without
from barkeep.translation import tr_noop

Kind = Literal["card", "menu", "label", "prep", "description", "run_sheet"]
KINDS: tuple[Kind, ...] = get_args(Kind)
Font = Literal["sans", "serif"]
Align = Literal["start", "centre"]
Frame = Literal["none", "line", "double"]

Space = Annotated[float, Limits(ge=0.0, le=72.0)]

Gap = Annotated[float, Limits(ge=0.0, le=40.0)]

Length = Annotated[float, Limits(gt=0.0, le=1000.0)]

Colour = Annotated[str, Limits(pattern=r"\A#[0-9a-f]{6}\Z", description="written as #1d3b44")]

TITLES = (
    tr_noop("Bench"),
    tr_noop("Centred"),
    tr_noop("Plain"),
    tr_noop("One a page"),
    tr_noop("One after another"),
    tr_noop("Framed"),
    tr_noop("Two columns"),
    tr_noop("For the bench"),
)
"""What shipped templates are called, to be translated where they are offered."""
SHORT = "Short"
"""One more, whose word means something else of a drink."""
BODY = "body"
"""The style of whatever has none of its own."""
_PARTS: Mapping[Kind, frozenset[str]] = {
    **{kind: PARTS_OF_KIND[kind] for kind in KINDS if kind in PARTS_OF_KIND},
    "run_sheet": frozenset(RUN_SHEET_PARTS),
}


@dataclass(frozen=True, slots=True)
class BlockStyle:
    """How one kind of block looks: type and space in points, `rule` a line below it.

    `between` is the space between the rows of a table.
    """

    size: Annotated[float, Limits(ge=5.0, le=72.0)]
    bold: bool = False
    italic: bool = False
    colour: Colour = "#000000"
    align: Align = "start"
    before: Space = 0.0
    after: Space = 0.0
    between: Space = 0.0
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
    title: Text
    parts: Texts
    styles: Mapping[str, BlockStyle]
    margin_mm: Gap
    order: NotNegative = 0.0
    font: Font = "sans"
    frame: Frame = "none"
    columns: Annotated[int, Limits(ge=1, le=3)] = 1
    gap_mm: Gap = 0.0
    least_scale: Annotated[float, Limits(ge=0.5, le=1.0)] = 1.0
    new_page_each: bool = False
    drawn_for_mm: tuple[Length, Length] | None = None

    def style(self, name: str) -> BlockStyle:
        """The style of this name, or that of the body."""
        return self.styles.get(name, self.styles[BODY])


def shipped_templates(kind: Kind) -> tuple[Template, ...]:
    """The templates of a kind in the order they are offered. Raises `KnowledgeError`."""
    of_kind = [each for each in _all() if each.kind == kind]
    return tuple(sorted(of_kind, key=lambda each: (each.order, each.title)))


@cache
def _all() -> tuple[Template, ...]:
    files = resource_files.names(FOLDER, suffix=".toml")
    return tuple(
        read_template(resource_files.read_text(FOLDER, file), file)
        for file in files
        if file != SIZES_FILE
    )


def read_template(text: str, file: str) -> Template:
    """One template out of a TOML text. Raises `KnowledgeError`."""
    document = parse(text, file)
    styles = {
        name: read(each, BlockStyle, file, f"style.{name}")
        for name, each in table_in(document, "style", file).items()
    }
    if BODY not in styles:
        raise KnowledgeError(file, f"style.{BODY}", "it is missing")
    template = read(
        without(document, "style"),
        Template,
        file,
        "template",
        key=file.removesuffix(".toml"),
        styles=styles,
    )
    for part in template.parts:
        if part not in _PARTS[template.kind]:
            known = ", ".join(sorted(_PARTS[template.kind]))
            kind = template.kind.replace("_", " ")
            reason = f"a {kind} has no part “{part}”; it may have {known}"
            raise KnowledgeError(file, "template", reason)
    if not template.parts:
        raise KnowledgeError(file, "template", "“parts” is missing")
    return template
