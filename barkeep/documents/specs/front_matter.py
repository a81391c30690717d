"""What stands between two lines of dashes at the head of a Markdown text: *title: Ballast*.

Only plain texts and lists of them are read; anything deeper is left aside in
words, and where it is of something a spec has, it is a problem with its place.
"""

from __future__ import annotations

import re
from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass, field, replace

from barkeep.documents.specs.document import in_short
from barkeep.domain.amounts.units import US_UNITS
from barkeep.domain.spec_text.headers import Header, HeaderFields
from barkeep.domain.spec_text.parts import SpecParts
from barkeep.errors import Problem, UnusableFile
from barkeep.translation import tr, tr_noop

_KEY = re.compile(r"(?P<key>[A-Za-z][\w \-]{0,40}?)[ ]*:(?:[ ]+(?P<value>.*))?")
_ENTRY = re.compile(r"[ \t]*-[ ]+(?P<text>.*)")
_QUOTED = re.compile(r"(?P<mark>[\"'])(?P<text>.*)(?P=mark)")
_REMARK = re.compile(r"[ ]#.*$")
_MEANINGS: Mapping[str, str] = {
    **dict.fromkeys(("title", "name", "drink"), "name"),
    **dict.fromkeys(("glass", "glassware"), "glass"),
    **dict.fromkeys(("author", "by", "credit"), "credit"),
    **dict.fromkeys(("tags", "tag", "keywords"), "tags"),
    **dict.fromkeys(("serves", "servings", "yield", "makes"), "serves"),
    **dict.fromkeys(("source", "url", "link"), "source"),
    **dict.fromkeys(("notes", "note", "description"), "notes"),
    **dict.fromkeys(("ingredients", "lines"), "lines"),
    **dict.fromkeys(("method", "instructions", "directions", "steps"), "method"),
    **dict.fromkeys(("garnish", "garnishes"), "garnish"),
    "ice": "ice",
    "riff of": "riff_of",
    "riff_of": "riff_of",
}
_ONCE = ("glass", "ice", "riff_of", "credit", "source")
_MOST_ROWS = 200


@dataclass(frozen=True, slots=True)
class _Entry:
    """A key with its texts; `fault` says why they could not be read."""

    key: str
    row: int
    values: tuple[str, ...]
    fault: str = ""

    @property
    def meaning(self) -> str | None:
        return _MEANINGS.get(self.key.casefold())

    @property
    def words(self) -> str:
        said = ", ".join(self.values)
        return f"{self.key} ({in_short(said)})" if said else self.key


@dataclass(frozen=True, slots=True)
class FrontMatter:
    """The front matter of a text, which takes its first `rows` rows."""

    rows: int
    entries: tuple[_Entry, ...]

    @property
    def name(self) -> str:
        """The name of the drink, empty where none is said."""
        return " ".join(" ".join(self._of("name")).split())

    @property
    def left_aside(self) -> tuple[str, ...]:
        """In words, what no spec has a place for."""
        return tuple(each.words for each in self.entries if each.meaning is None)

    def all_in_words(self) -> tuple[str, ...]:
        """In words, all of it but the name."""
        return tuple(each.words for each in self.entries if each.meaning != "name")

    def refuse_problems(self, file: str) -> None:
        """Raises `UnusableFile` where something that a spec has could not be read."""
        wrong = [each for each in self.entries if each.fault and each.meaning]
        if wrong:
            problems = (Problem(each.row, 1, tr(each.fault, key=each.key)) for each in wrong)
            raise UnusableFile(file, tuple(problems))

    def added_to(self, parts: SpecParts) -> SpecParts:
        """A spec with what the front matter says of it and its own text does not."""
        fields = HeaderFields()
        for value in self._of("serves"):
            if fields.take(Header("serves", value, 0), US_UNITS):
                fields.notes.append(f"Serves: {value}")
        garnishes = tuple(f"Garnish: {each}" for each in self._of("garnish"))
        tags = (tag for each in self._of("tags") for tag in re.split(r"\s*[,;]\s*", each))
        said = {key: ", ".join(self._of(key)) for key in _ONCE}
        both = (
            f"{key.replace('_', ' ').capitalize()}: {value}"
            for key, value in said.items()
            if value and getattr(parts, key) not in ("", value)
        )
        return replace(
            parts,
            glass=parts.glass or said["glass"],
            ice=parts.ice or said["ice"],
            riff_of=parts.riff_of or said["riff_of"],
            credit=parts.credit or said["credit"],
            source=parts.source or said["source"],
            lines=(*self._of("lines"), *parts.lines, *garnishes),
            method=(*self._of("method"), *parts.method),
            notes=(*self._of("notes"), *fields.notes, *both, *parts.notes),
            serves=parts.serves or fields.serves,
            tags=(*(tag for tag in tags if tag), *parts.tags),
        )

    def _of(self, meaning: str) -> tuple[str, ...]:
        return tuple(
            value for each in self.entries if each.meaning == meaning for value in each.values
        )


def front_matter_in(rows: Sequence[str]) -> FrontMatter | None:
    """The front matter that a text begins with, None where it begins with something else."""
    if not rows or rows[0].rstrip() != "---":
        return None
    ends = (
        place for place in range(1, min(len(rows), _MOST_ROWS)) if rows[place].rstrip() == "---"
    )
    end = next(ends, None)
    if end is None or end == 1 or not _KEY.fullmatch(rows[1].rstrip()):
        return None
    reading = _Reading()
    for place in range(1, end):
        if not reading.take(rows[place].rstrip(), place + 1):
            return None
    return FrontMatter(end + 1, tuple(reading.finished()))


@dataclass
class _Reading:
    entries: list[_Entry] = field(default_factory=list)

    def take(self, row: str, number: int) -> bool:
        """Take one row in; whether it is one of front matter."""
        if not row.strip() or row.lstrip().startswith("#"):
            return True
        key = _KEY.fullmatch(row)
        if key:
            self.entries.append(_begun(key["key"].strip(), (key["value"] or "").strip(), number))
            return True
        entry = _ENTRY.fullmatch(row)
        if self.entries and (entry or row[:1] in " \t"):
            last = self.entries.pop()
            self.entries.append(_with_row(last, entry["text"] if entry else "", row))
            return True
        return False

    def finished(self) -> Iterator[_Entry]:
        yield from self.entries


def _begun(key: str, value: str, row: int) -> _Entry:
    if value[:1] in ("|", ">", "&", "*", "!") and len(value) < 4:
        return _Entry(
            key, row, (), tr_noop("“{key}” is of a kind that is not read; write it on one line")
        )
    if value.startswith("{"):
        return _Entry(
            key, row, (value,), tr_noop("“{key}” holds names of its own; give it a text or a list")
        )
    if value.startswith("["):
        if not value.endswith("]"):
            return _Entry(
                key, row, (value,), tr_noop("“{key}” begins a list that does not end on its line")
            )
        inner = (_text(each) for each in value[1:-1].split(","))
        return _Entry(key, row, tuple(each for each in inner if each))
    text = _text(value)
    return _Entry(key, row, (text,) if text else ())


def _with_row(entry: _Entry, item: str, row: str) -> _Entry:
    """An entry with another row: of its list, or of something deeper."""
    if item and not (_KEY.fullmatch(item) and item[:1] not in "\"'"):
        return replace(entry, values=(*entry.values, _text(item)))
    fault = entry.fault or tr_noop("“{key}” holds names of its own; give it a text or a list")
    return replace(entry, values=(*entry.values, " ".join(row.split())), fault=fault)


def _text(value: str) -> str:
    plain = value.strip()
    quoted = _QUOTED.fullmatch(plain)
    return quoted["text"] if quoted else _REMARK.sub("", plain).strip()
