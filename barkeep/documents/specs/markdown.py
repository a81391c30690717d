"""Specs as Markdown: read from what people write, and written so that it reads back.

Written: the name as a heading, a list of lines, *Method* as a numbered list,
and a list of whatever else there is. Read: any heading opens a spec, or one of
its parts where a deeper one says *Ingredients*, *Method*, *Notes* or the like; lists
before the method are lines.
"""

from __future__ import annotations

import re
from collections.abc import Callable, Iterator, Mapping, Sequence
from dataclasses import dataclass, field

from barkeep.domain.spec_text.parts import SpecParts

_HEADING = re.compile(r"(?P<marks>#{1,6})[ \t]+(?P<text>.*?)(?:[ \t]+#+)?")

_ITEM = re.compile(r"[ \t]*(?:[-*+•]|[0-9]{1,3}[.)])[ \t]+(?P<text>.*)")

_NUMBERED = re.compile(r"[ \t]*[0-9]{1,3}[.)][ \t]")

_FIELD = re.compile(
    r"(?P<name>glass(?:ware)?|ice|riff of|serves|yield|tags|credit|by|notes?)\s*:\s*(?P<value>.+)",
    re.IGNORECASE,
)

_EMPHASIS = re.compile(r"(?<![\w*])(\*{1,3}|_{1,3})(?=\S)(.{1,400}?)(?<=\S)\1(?![\w*])")

_LONGEST_MARKED = 2_000
"""Characters; looking for the marks of a longer row would take too long, so it keeps them."""

_SET_ASIDE = 0xE000  # private use: where escaped marks wait while emphasis is taken off

_PUT_BACK = {_SET_ASIDE + code: chr(code) for code in range(33, 127)}

_LINK = re.compile(r"!?\[(?P<text>[^\[\]]{0,500})\]\([^()\s]{0,2000}\)")

_ESCAPED = re.compile(r"\\([\\`*_{}\[\]()#+\-.!|<>~&])")

_SPECIAL = re.compile(r"([\\`*_\[\]<>|])")

_LISTLIKE = re.compile(r"^([0-9]{0,3})([-+#.)])")

_SECTIONS: Mapping[str, str] = {
    **dict.fromkeys(("ingredients", "lines", "you need", "spec"), "lines"),
    **dict.fromkeys(
        ("method", "instructions", "directions", "preparation", "build", "steps"), "method"
    ),
    **dict.fromkeys(("notes", "note", "description", "about"), "notes"),
    **dict.fromkeys(("details", "service", "serving"), "details"),
    **dict.fromkeys(("garnish", "garnishes"), "garnish"),
}

_STEP_BREAK = "\\"


@dataclass
class _Draft:
    name: str
    row: int
    level: int
    lines: list[str] = field(default_factory=list)
    method: list[str] = field(default_factory=list)
    notes: list[str] = field(default_factory=list)
    fields: dict[str, str] = field(default_factory=dict)

    @property
    def empty(self) -> bool:
        return not (self.lines or self.method or self.notes or self.fields)


def parts_in_markdown(text: str) -> tuple[SpecParts, ...]:
    """The specs of a Markdown text. Never raises; a text without a heading or a list has none."""
    drafts: list[_Draft] = []
    section = "lines"
    for number, row in enumerate(text.removeprefix("\ufeff").splitlines(), 1):
        heading = _HEADING.fullmatch(row.strip())
        title = _plain(heading["text"]).strip() if heading else ""
        part = _SECTIONS.get(title.rstrip(":").casefold())
        if heading and part and drafts and len(heading["marks"]) > drafts[-1].level:
            section = part
        elif heading:
            drafts.append(_Draft(title, number, len(heading["marks"])))
            section = "lines"
        elif drafts:
            section = _take(drafts[-1], row, section)
    return tuple(_finished(draft) for draft in drafts if not draft.empty)


def markdown(specs: Sequence[SpecParts]) -> str:
    """Specs as one Markdown text that `parts_in_markdown` reads back."""
    return "\n".join("\n".join(_written(spec)) + "\n" for spec in specs)


def _take(draft: _Draft, row: str, section: str) -> str:
    """Take one row in; the section that the next row belongs to."""
    item = _ITEM.fullmatch(row)
    text = _plain(item["text"] if item else row).strip()
    if not text:
        return section
    named = _FIELD.fullmatch(text)
    if named and section in ("lines", "details"):
        _take_field(draft, named)
        return section
    if section == "lines" and (not item or _NUMBERED.match(row)) and draft.lines:
        section = "method"  # prose, or steps, after the list of ingredients
    into: Mapping[str, Callable[[str], None]] = {
        "lines": draft.lines.append if item else draft.notes.append,
        "method": draft.method.append,
        "garnish": lambda each: draft.lines.append(f"Garnish: {each}"),
    }
    taken = "" if section == "method" and item and item["text"].strip() == _STEP_BREAK else text
    into.get(section, draft.notes.append)(taken)
    return section


def _take_field(draft: _Draft, named: re.Match[str]) -> None:
    name = named["name"].casefold()
    name = {"glassware": "glass", "yield": "serves", "by": "credit"}.get(name, name)
    if name.startswith("note"):
        draft.notes.append(named["value"])
    else:
        draft.fields[name] = named["value"]


def _finished(draft: _Draft) -> SpecParts:
    fields = draft.fields
    return SpecParts(
        name=draft.name,
        lines=tuple(draft.lines),
        method=tuple(draft.method),
        glass=fields.get("glass", ""),
        ice=fields.get("ice", ""),
        notes=tuple(draft.notes),
        riff_of=fields.get("riff of", ""),
        serves=_number(fields.get("serves", "")),
        tags=tuple(tag.strip() for tag in fields.get("tags", "").split(",") if tag.strip()),
        credit=fields.get("credit", ""),
        row=draft.row,
    )


def _number(text: str) -> float | None:
    found = re.match(r"[0-9]{1,3}(?:\.[0-9]{1,2})?", text)
    return float(found.group()) or None if found else None


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
