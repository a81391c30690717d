"""Specs as Markdown: read from what people write, and written so that it reads back.

Written: the name as a heading, a list of lines, *Method* as a numbered list,
and a list of whatever else there is. Read: headings, names in bold, lists, tasks,
tables and front matter, as `barkeep.documents.specs.outline` puts them together.
"""

from __future__ import annotations

import re
from collections.abc import Iterator, Sequence
from dataclasses import replace

from barkeep.documents.specs.document import Document
from barkeep.documents.specs.front_matter import FrontMatter, front_matter_in
from barkeep.documents.specs.outline import LOWEST, SECTIONS, Block, begins_with_amount, specs_of
from barkeep.domain.spec_text.headers import header_in
from barkeep.domain.spec_text.parts import SpecParts

_HEADING = re.compile(r"(?P<marks>#{1,6})[ \t]+(?P<text>.*?)(?:[ \t]+#+)?")
_ITEM = re.compile(r"[ \t]*(?:[-*+•]|[0-9]{1,3}[.)])[ \t]+(?:\[[ xX]\][ \t]+)?(?P<text>.*)")
_NUMBERED = re.compile(r"[ \t]*[0-9]{1,3}[.)][ \t]")
_CONTINUED = re.compile(r"[ \t]{2,}\S")
_QUOTE = re.compile(r"[ ]{0,3}>[ ]?(?P<text>.*)")
_BOLD = re.compile(r"(?P<marks>\*\*|__)(?P<text>[^*_\s][^*_]{0,78}?)(?:(?P=marks):?|:(?P=marks))")
_UNDERLINE = re.compile(r"[ ]{0,3}(?P<mark>=+|-{2,})[ \t]*")
_RULE = re.compile(r"[ ]{0,3}(?:(?:-[ \t]*){3,}|(?:\*[ \t]*){3,}|(?:_[ \t]*){3,})")
_COMMENT = re.compile(r"[ ]{0,3}<!--.*-->[ ]*")
_DIVIDER = re.compile(r"[ ]{0,3}\|?[ ]*:?-{1,}:?[ ]*(?:\|[ ]*:?-{1,}:?[ ]*)*\|?[ ]*")
_CELLS = re.compile(r"(?<!\\)\|")
_EMPHASIS = re.compile(r"(?<![\w*])(\*{1,3}|_{1,3})(?=\S)(.{1,400}?)(?<=\S)\1(?![\w*])")
_LONGEST_MARKED = 2_000
"""Characters; looking for the marks of a longer row would take too long, so it keeps them."""
_MOST_CELLS = 100
_SET_ASIDE = 0xE000  # private use: where escaped marks wait while emphasis is taken off
_PUT_BACK = {_SET_ASIDE + code: chr(code) for code in range(33, 127)}
_LINK = re.compile(r"!?\[(?P<text>[^\[\]]{0,500})\]\([^()\s]{0,2000}\)")
_ESCAPED = re.compile(r"\\([\\`*_{}\[\]()#+\-.!|<>~&])")
_SPECIAL = re.compile(r"([\\`*_\[\]<>|])")
_LISTLIKE = re.compile(r"^([0-9]{0,3})([-+#.)])")
_STEP_BREAK = "\\"


def is_markdown(text: str, *, named_so: bool) -> bool:
    """Whether a text shows that it is Markdown; more counts where its file is `named_so`."""
    rows = text.removeprefix("\ufeff").splitlines()
    said = (place for place, row in enumerate(rows) if row.strip())
    first = next(said, None)
    if first is None:
        return False
    plainly = _opens(rows, first) and not _is_underlined(rows, first)
    if front_matter_in(rows) is not None or plainly or _is_table(rows, first):
        return True
    places = range(len(rows)) if named_so else ()
    return any(_opens(rows, each) or _is_table(rows, each) for each in places)


def markdown_document(text: str, file: str) -> Document:
    """The specs of a Markdown text, none in one without a heading, and what was left aside.

    Raises `UnusableFile` for front matter of which something known cannot be read.
    """
    rows = text.removeprefix("\ufeff").splitlines()
    front = front_matter_in(rows)
    if front is None:
        return specs_of(_blocks(rows, 0), strict=False)
    front.refuse_problems(file)
    found = specs_of([*_front_name(front), *_blocks(rows, front.rows)], strict=False)
    return _with_front(found, front)


def _front_name(front: FrontMatter) -> Iterator[Block]:
    if front.name:
        yield Block("heading", front.name, 1, 1)


def _with_front(found: Document, front: FrontMatter) -> Document:
    """A document whose front matter is of its only spec; of several it is of none."""
    if len(found.parts) == 1:
        parts = (front.added_to(found.parts[0]),)
        return replace(found, parts=parts, left_aside=(*front.left_aside, *found.left_aside))
    return replace(found, left_aside=(*front.all_in_words(), *found.left_aside))


def _blocks(rows: Sequence[str], start: int) -> Iterator[Block]:
    """The pieces of a text from a row on, each as it is shown."""
    place = start
    while place < len(rows):
        row, number = rows[place], place + 1
        heading = _HEADING.fullmatch(row.strip())
        if heading:
            yield Block("heading", _plain(heading["text"]).strip(), number, len(heading["marks"]))
        elif _opens(rows, place):
            yield Block("heading", _title(row), number, _level(rows, place))
            place += _is_underlined(rows, place)
        elif _is_table(rows, place):
            end = _end_of_table(rows, place)
            for at in (place, *range(place + 2, end)):
                yield Block("row", "", at + 1, cells=_cells_of(rows[at]))
            place = end - 1
        elif not (_RULE.fullmatch(row) or _COMMENT.fullmatch(row)):
            block, place = _piece(rows, place)
            if block.text or block.kind == "break":
                yield block
        place += 1


def _piece(rows: Sequence[str], place: int) -> tuple[Block, int]:
    """An item, a quotation or a row of text, and the last row it takes."""
    row = rows[place]
    item, quote = _ITEM.fullmatch(row), _QUOTE.fullmatch(row)
    if item is None:
        words = _plain(quote["text"] if quote else row).strip()
        return Block("quote" if quote else "text", words, place + 1), place
    if item["text"].strip() == _STEP_BREAK:
        return Block("break", "", place + 1), place
    said, last = [item["text"]], place
    while last + 1 < len(rows) and _goes_on(rows[last + 1]):
        last += 1
        said.append(rows[last].strip())
    words = _plain(" ".join(said)).strip()
    return Block("step" if _NUMBERED.match(row) else "item", words, place + 1), last


def _goes_on(row: str) -> bool:
    """Whether a row is the rest of the item above it."""
    return bool(_CONTINUED.match(row)) and not _ITEM.fullmatch(row)


def _title(row: str) -> str:
    return _plain(row).strip().rstrip(":").strip()


def _level(rows: Sequence[str], place: int) -> int:
    underline = _UNDERLINE.fullmatch(rows[place + 1]) if _is_underlined(rows, place) else None
    if underline:
        return 1 if underline["mark"].startswith("=") else 2
    return LOWEST


def _opens(rows: Sequence[str], place: int) -> bool:
    """Whether a row is a heading of any kind."""
    row = rows[place].strip()
    if _HEADING.fullmatch(row) or _is_underlined(rows, place):
        return True
    bold = _BOLD.fullmatch(row)
    if bold is None or begins_with_amount(bold["text"]) or bold["text"].endswith((".", "!")):
        return False
    if bold["text"].rstrip(" :").casefold() in SECTIONS:
        return True
    rest = (each for each in rows[place + 1 : place + 4] if each.strip())
    return _ITEM.fullmatch(next(rest, "")) is not None


def _is_underlined(rows: Sequence[str], place: int) -> bool:
    """Whether a lone row has a line of `=` or `-` under it."""
    row = rows[place]
    if place + 1 >= len(rows) or not row.strip() or (place and rows[place - 1].strip()):
        return False
    if not _UNDERLINE.fullmatch(rows[place + 1]) or _ITEM.fullmatch(row):
        return False
    return not (begins_with_amount(row) or header_in(row) or "|" in row or _RULE.fullmatch(row))


def _is_table(rows: Sequence[str], place: int) -> bool:
    if place + 1 >= len(rows) or not 0 < rows[place].count("|") <= _MOST_CELLS:
        return False
    under = rows[place + 1]
    return "-" in under and "|" in under and _DIVIDER.fullmatch(under) is not None


def _end_of_table(rows: Sequence[str], place: int) -> int:
    end = place + 2
    while end < len(rows) and "|" in rows[end]:
        end += 1
    return end


def _cells_of(row: str) -> tuple[str, ...]:
    inner = row.strip().removeprefix("|")
    cells = _CELLS.split(inner)
    if len(cells) > 1 and not cells[-1].strip():
        cells = cells[:-1]
    return tuple(_plain(cell).strip() for cell in cells)


def markdown(specs: Sequence[SpecParts]) -> str:
    """Specs as one Markdown text that `markdown_document` reads back."""
    return "\n".join("\n".join(_written(spec)) + "\n" for spec in specs)


def _written(spec: SpecParts) -> Iterator[str]:
    yield f"# {escaped(spec.name)}\n"
    yield from (f"- {escaped(line)}" for line in spec.lines)
    if spec.method:
        yield "\n## Method\n"
        for number, step in enumerate(spec.method, 1):
            yield f"{number}. {escaped(step) if step else _STEP_BREAK}"
    details = list(_details(spec))
    if details:
        yield "\n## Details\n"
        yield from (f"- {name}: {escaped(value)}" for name, value in details)
    if spec.notes:
        yield "\n## Notes\n"
        yield from (f"- {escaped(note)}" for note in spec.notes)


def _details(spec: SpecParts) -> Iterator[tuple[str, str]]:
    fields = {
        "Glass": spec.glass,
        "Ice": spec.ice,
        "Serves": f"{spec.serves:g}" if spec.serves else "",
        "Riff of": spec.riff_of,
        "Tags": ", ".join(spec.tags),
        "Credit": spec.credit,
        "Source": spec.source,
    }
    yield from ((name, value) for name, value in fields.items() if value)


def escaped(text: str) -> str:
    """A text in which nothing is taken for Markdown."""
    return _LISTLIKE.sub(r"\1\\\2", _SPECIAL.sub(r"\\\1", text))


def _plain(text: str) -> str:
    """A text without emphasis, links and escapes."""
    shown = _ESCAPED.sub(lambda found: chr(_SET_ASIDE + ord(found[1])), text)
    shown = _LINK.sub(lambda found: found["text"], shown)
    if len(shown) <= _LONGEST_MARKED:
        for _ in range(3):
            shown = _EMPHASIS.sub(r"\2", shown)
    return shown.translate(_PUT_BACK)
