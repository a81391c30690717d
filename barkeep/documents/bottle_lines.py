"""Bottles out of lines as owners write them: one a line, its parts in any order.

Each line becomes the cells that a row of a list of bottles has, and those are read as a
row is, so a cell that may mean two things is asked about in the same words. What a line
does not say of size and level is guessed, and said to be. No word is dropped: what is no
size, level, strength, price or day stays with the name, or is asked about.

======================================  ==============================================
Grey Ferry London dry gin 70 cl half    maker, kind, size, level
2 x sweet vermouth, 3/4 full            two bottles, the first three quarters full
| Fino | Chalk Hill | 75 cl |           a row of a table without a header
- [x] cognac                            one of a list with ticks; what has none is asked
6 limes                                 six pieces
## Spirits, Bitters:                    a heading: left aside, and told of
======================================  ==============================================
"""

from __future__ import annotations

import csv
import re
from collections.abc import Callable, Iterator, Mapping, Sequence
from dataclasses import dataclass, field, replace
from functools import cache

from barkeep.documents.bottle_cells import (
    LIKE_ENOUGH,
    MOST_BOTTLES,
    NUMBER,
    is_currency,
    read_day,
    says_nothing,
    words,
)
from barkeep.documents.bottles_csv import (
    EVERY,
    BottlesFile,
    CellProblem,
    ListedRow,
    Terms,
    repaired,
    row_of,
)
from barkeep.domain.amounts.measures import show_quantity
from barkeep.domain.ingredients.names import Match, find_name, guesses, named, rather_named
from barkeep.domain.ingredients.slips import (
    one_letter_off,
    put_right,
    slips_beside,
    whole_names_near,
)
from barkeep.domain.ingredients.tree import FamilyTree
from barkeep.domain.phrases import folded
from barkeep.errors import UserError
from barkeep.translation import tr

LONGEST = 400
"""Characters; a longer line is prose."""
SOON_OFF_DAYS = 14
"""What keeps no longer once it is open is taken as unopened: nobody lists a flat tonic."""
STRONG = 15.0
"""From so many % vol on a percentage that is no multiple of five is rather a strength."""
LIKE_ITS_KIND = (0.75, 1.35)
"""So far from the usual strength of its kind a bare percentage is still taken for a strength."""

_BULLET = re.compile(
    r"^\s*(?:>\s*)*(?:(?:[-*+•·–—▪◦‣]|[0-9]{1,3}[.)])\s+)?"
    r"(?:\[(?P<box>[ xX✓✔])\]\s*|(?P<sign>[☐☑✓✔✗☒])\s*)?"
)
_RULE = re.compile(r"[\s|:=\-_*~+]*")
_HEADING = re.compile(r"\s*(?:#{1,6}\s+(?P<marked>.+?)[\s#:]*|(?P<plain>[^:,;0-9]{2,40}):)\s*")
_SEVERAL = re.compile(r"[^:,;0-9]{2,30}:\s*[^,]+(?:,[^,]+)+")
_STRUCK = re.compile(r"~~(.+?)~~")
_BOLD = re.compile(r"(\*\*|__|`)(?P<in>.+?)\1")
_PARTS = re.compile(r"\s*(?:[,;|\t]|\s[-–—/]\s)\s*")
_CLOSED_UP = re.compile(r"[^,]*,\S[^,]*,\S")

_N = r"(?:[0-9]{1,7}(?:[.,][0-9]{1,3})?|[0-9]{1,3}\s*[¼½¾⅓⅔]|[¼½¾⅓⅔])"
_UNITS = r"(?:ml|cl|dl|ltrs?|lit(?:er|re)s?|l|fl\.?\s?oz|oz|ounces?|kg|grams?|g|pints?|quarts?)"
_SIZE = re.compile(rf"(?<![\w.,/])(?P<size>{_N}\s?{_UNITS})\b\.?", re.IGNORECASE)
_A_SIZE = re.compile(r"\b(?:an?|one)\s(?P<size>lit(?:er|re)|pint|quart)\s+(?:of\s+)?", re.I)
_PACK = re.compile(rf"(?<![\w.])(?P<count>[0-9]{{1,2}})\s?[x×*]\s?(?={_N}\s?{_UNITS}\b)", re.I)
_TIMES = re.compile(
    r"(?:^|(?<=[\s(]))(?:(?P<before>[0-9]{1,2})\s?[x×](?=\s|$|\)|\D)|[x×]\s?(?P<behind>[0-9]{1,2})\b)",
    re.IGNORECASE,
)
_STARTS_WITH = re.compile(
    r"(?P<count>[0-9]{1,2})\s+(?!years?|yrs?|yo\b|y/o|[0-9])(?=[^\W\d_])", re.I
)
_PERCENT = re.compile(
    r"(?<![\w.,])(?P<number>[0-9]{1,3}(?:[.,][0-9]+)?)\s?"
    r"(?:(?P<proof>proof)\b|%(?!\s*(?:blue\s+)?agave)\s*(?P<vol>(?:vol|abv|alc)\b\.?)?"
    r"(?P<left>\s*(?:full|left|remaining)\b)?)",
    re.IGNORECASE,
)
_ABV = re.compile(
    r"\b(?:abv|alc\.?|vol\.?)\s*[: ]\s*(?P<number>[0-9]{1,2}(?:[.,][0-9]+)?)\s?%?", re.I
)
_SHARE = r"(?:[0-9]{1,2}\s?/\s?[0-9]{1,2}|[¼½¾⅓⅔]|0?[.,][0-9]{1,2})"
_FRACTION_FULL = re.compile(
    rf"(?<![\w/.,])(?P<share>{_SHARE})\s*(?P<word>full|left|remaining|empty|gone|voll)?(?=\s*(?:$|\)))",
    re.IGNORECASE,
)
_A_SHARE_OF = re.compile(
    rf"^(?P<share>{_SHARE}|half|most|a third|a quarter|two thirds|three quarters)\s+"
    r"(?:of\s+)?(?:an?\s+)?(?P<container>\w+)\s+(?:of\s+)?",
    re.IGNORECASE,
)
_OPENED = re.compile(
    r"\b(?P<word>open(?:ed)?(?:\s+(?:on|since|in))?|since)\s+(?P<day>.+)$", re.IGNORECASE
)
_MADE = re.compile(r"\bmade(?:\s+on)?\s+(?P<day>.+)$", re.IGNORECASE)
_PRICE = re.compile(
    r"(?:(?P<before>[£$€¥]|\b[A-Z]{3})\s?(?P<first>[0-9]{1,5}(?:[.,][0-9]{2})?)"
    r"|(?P<second>[0-9]{1,5}(?:[.,][0-9]{2})?)\s?(?P<after>[£€¥]|(?:EUR|GBP|USD|CHF|CAD|AUD|euros?)\b))"
    r"(?![\w%])"
)


def read_bottle_lines(
    text: str, terms: Terms, reached: Callable[[int, int], object] = lambda _done, _of: None
) -> BottlesFile:
    """Every bottle of a text of lines; `reached` is told of how many lines so many are read.

    Never raises. Each line that says something is a row, or a heading in `left_aside`.
    """
    lines = text.removeprefix("\ufeff").splitlines()
    ticks = [_box(each) for each in lines]
    some_ticked = True in ticks
    rows: list[ListedRow] = []
    aside: list[str] = []
    under = ""
    for number, line in enumerate(lines, 1):
        if number % EVERY == 0:
            reached(number, len(lines))
        heading = _heading(line)
        if heading:
            under = heading
            aside.append(heading)
        elif not _RULE.fullmatch(line):
            unticked = some_ticked and ticks[number - 1] is False
            place = _Place(number, under, unticked=unticked)
            rows.append(_read_line(line, place, terms))
    return BottlesFile(tuple(rows), headings=tuple(aside))


def row_of_kind(key: str, number: int, terms: Terms) -> ListedRow:
    """A bottle of a kind of which nothing else is said, as a line with its name alone is read."""
    return _read_line(terms.tree.name(key), _Place(number, ""), terms)


def answered(row: ListedRow, column: str, text: str, terms: Terms) -> ListedRow:
    """A row read again with an answer to what is asked of one column.

    A size that was guessed is the usual one of the kind that the answer names.
    """
    cells = {**row.cells, column: text}
    if column == "ingredient" and "size" in row.guessed:
        key = terms.tree.by_name.get(folded(text))
        if key is not None:
            kind = terms.tree[key]
            cells["size"] = show_quantity(kind.typical_size, kind.unit)
            row = replace(row, cells={**row.cells, "size": cells["size"]})
    return repaired(row, cells, terms)


@dataclass(frozen=True, slots=True)
class _Place:
    """Where a line stands: its number, the heading above it, and whether its box is empty."""

    number: int
    under: str
    unticked: bool = False


@dataclass
class _Reading:
    """One line while its parts are taken off: the cells found, what is asked, what is left."""

    written: str
    left: list[str]
    cells: dict[str, str] = field(default_factory=dict)
    asked: list[CellProblem] = field(default_factory=list)

    def ask(self, column: str, message: str, likely: str) -> None:
        """Ask about one cell, the first time there is something to ask."""
        if all(each.column != column for each in self.asked):
            self.asked.append(CellProblem(column, message, likely))

    def take(self, pattern: re.Pattern[str], use: Callable[[re.Match[str]], bool]) -> None:
        """Take what a pattern finds off the first part in which it can be used."""
        for place, part in enumerate(self.left):
            for found in pattern.finditer(part):
                if use(found):
                    rest = f"{part[: found.start()]} {part[found.end() :]}"
                    self.left[place] = _tidied(rest)
                    return


def _read_line(line: str, place: _Place, terms: Terms) -> ListedRow:
    written = " ".join(line.split())[:LONGEST]
    plain = _without_marks(line)
    reading = _Reading(written, [*_parts(plain)])
    if _STRUCK.search(line):
        reading.ask("product", tr("it is struck out: leave it out, or take it"), "")
    if place.unticked:
        reading.ask("product", tr("others are ticked and it is not: leave it out, or take it"), "")
    _take_facts(reading)
    _take_name(reading, place, terms)
    return _row(reading, place, terms)


def _box(line: str) -> bool | None:
    """Whether a line's box is ticked, None where it has none."""
    found = _BULLET.match(line)
    mark = (found["box"] or found["sign"]) if found else None
    return None if mark is None else mark not in " ☐✗☒"


def _heading(line: str) -> str:
    """The words of a heading, empty where it is none: *## Gin*, *Bitters:*."""
    found = _HEADING.fullmatch(_BOLD.sub(r"\g<in>", line))
    if found:
        return (found["marked"] or found["plain"]).strip()
    cells = [folded(each) for each in _cells_of_table(line)]
    known = {folded(each) for group in words().columns.values() for each in group}
    return ", ".join(cells) if len(cells) > 1 and all(each in known for each in cells) else ""


def _cells_of_table(line: str) -> list[str]:
    plain = line.strip()
    return [each.strip() for each in plain.strip("|").split("|")] if plain[:1] == "|" else []


def _without_marks(line: str) -> str:
    found = _BULLET.match(line)
    plain = line[found.end() :] if found else line
    return _BOLD.sub(r"\g<in>", _STRUCK.sub(r"\1", plain)).strip()


def _parts(plain: str) -> Iterator[str]:
    """The fields of a line: of a table, of CSV, or what commas and brackets part."""
    fields = _cells_of_table(plain) or _csv_fields(plain)
    for each in fields or [plain]:
        bracketed = re.sub(r"[(\[]([^()\[\]]*)[)\]]", r", \1 ,", each)
        parts = [bracketed] if fields and bracketed == each else _split(bracketed)
        yield from (tidy for part in parts if (tidy := _tidied(part)) and not says_nothing(tidy))


def _split(text: str) -> list[str]:
    """Parts between commas and dashes; a decimal comma is none."""
    held = re.sub(r"(?<=[0-9]),(?=[0-9])", "\0", text)
    return [each.replace("\0", ",") for each in _PARTS.split(held)]


def _csv_fields(plain: str) -> list[str]:
    """The fields of a row of CSV without a header, none where the line is plain words."""
    mark = next((each for each in ";\t" if each in plain), "")
    if not mark and ('"' in plain or _CLOSED_UP.match(plain)):
        mark = ","
    if not mark:
        return []
    try:
        return [each.strip() for each in next(csv.reader([plain], delimiter=mark), [])]
    except csv.Error:
        return []


def _tidied(text: str) -> str:
    return re.sub(r"\s+", " ", text).strip(" ,;:!-–—•")


# What is measured


def _take_facts(reading: _Reading) -> None:
    cells = reading.cells

    def put(column: str, text: str) -> bool:
        if column in cells:
            return False
        cells[column] = " ".join(text.split())
        return True

    reading.take(_FRACTION_FULL, lambda found: bool(found["word"]) and _fraction(found, put))
    _take_how_full(reading, put)
    reading.take(_PACK, lambda found: put("count", found["count"]))
    reading.take(_PRICE, lambda found: _price(found, put))
    reading.take(_A_SIZE, lambda found: put("size", f"1 {found['size']}"))
    for _again in range(2):
        reading.take(_SIZE, lambda found: _size(reading, found, put))
    reading.take(_ABV, lambda found: put("abv", f"{found['number']} %"))
    for _again in range(2):
        reading.take(_PERCENT, lambda found: _percent(found, put, cells))
    reading.take(_FRACTION_FULL, lambda found: _fraction(found, put))
    reading.take(_OPENED, lambda found: _opened(reading, found, put))
    reading.take(_MADE, lambda found: _made(found, put))
    _take_states(reading, put)
    reading.take(_TIMES, lambda found: put("count", found["before"] or found["behind"]))
    reading.take(_containers(), lambda found: _counted(found, put))
    _take_bare_numbers(reading, put)


Put = Callable[[str, str], bool]


@cache
def _listed(name: str) -> tuple[str, ...]:
    """The words of one list, the longest first, so that *not opened* goes before *opened*."""
    return tuple(sorted(getattr(words().line, name), key=len, reverse=True))


def _any_of(texts: Sequence[str]) -> str:
    longest_first = sorted(texts, key=len, reverse=True)
    return "|".join(re.escape(each).replace(r"\ ", r"\s+") for each in longest_first)


@cache
def _levels_at_end() -> re.Pattern[str]:
    """A level in words as a part of its own or at the end of one."""
    known = words()
    texts = [*known.levels, *known.about]
    several = [each for each in texts if " " in each]
    alone = (
        "full",
        "half",
        "empty",
        "voll",
        "leer",
        "halb",
        "halbvoll",
        "halbleer",
        "vide",
        "vuota",
        "vacia",
    )
    hedges = _any_of(known.line.hedges)
    return re.compile(
        rf"(?:(?:^|(?<=\s))(?:(?:{hedges})\s*)?(?:one\s+(?:is\s+)?)?"
        rf"(?P<level>{_any_of([*several, *alone])})(?:\s+(?:{_any_of(known.line.left)}))?$)"
        rf"|^(?:(?:{hedges})\s*)?(?P<whole>{_any_of(texts)})(?:\s+(?:{_any_of(known.line.left)}))?$",
        re.IGNORECASE,
    )


@cache
def _containers() -> re.Pattern[str]:
    known = words().line
    numbers = _any_of(known.numbers)
    return re.compile(
        rf"(?:^|(?<=\s))(?:(?P<count>[0-9]{{1,2}}|{numbers}|an?)\s+)?(?:{_any_of(known.containers)})"
        rf"(?:\s+(?:of|von|de|di)\b)?",
        re.IGNORECASE,
    )


@cache
def _states() -> re.Pattern[str]:
    known = words().line
    return re.compile(
        rf"(?:^|(?<=\s))(?:(?:one|all|both)\s+(?:is\s+|are\s+)?)?"
        rf"(?:(?P<sealed>{_any_of(known.sealed)})|(?P<open>{_any_of(known.open)})"
        rf"|(?P<here>{_any_of(known.here)})|(?P<guessed>{_any_of(known.guessed)}))$",
        re.IGNORECASE,
    )


@cache
def _amount_left() -> re.Pattern[str]:
    return re.compile(
        rf"(?<![\w.,])(?P<amount>{_N}\s?{_UNITS})\s+(?:left(?:\s+in\s+it)?|remaining|to\s+go|übrig)\b",
        re.IGNORECASE,
    )


def _take_how_full(reading: _Reading, put: Put) -> None:
    containers = words().line.containers

    def share_of(found: re.Match[str]) -> bool:
        if folded(found["container"]) not in containers:
            return False
        share = "0.8" if found["share"].casefold() == "most" else found["share"]
        return put("level", share)

    reading.take(_A_SHARE_OF, share_of)
    reading.take(_amount_left(), lambda found: put("level", found["amount"]))
    reading.take(_levels_at_end(), lambda found: _in_words(found, put))


def _in_words(found: re.Match[str], put: Put) -> bool:
    return put("level", found["level"] or found["whole"])


def _price(found: re.Match[str], put: Put) -> bool:
    sign = found["before"] or found["after"]
    number = found["first"] or found["second"]
    return is_currency(sign) and put("price", f"{number} {sign}")


def _size(reading: _Reading, found: re.Match[str], put: Put) -> bool:
    size = found["size"]
    if put("size", size):
        return True
    if put("level", size):
        what = tr(
            "is “{left}” what is left? “{size}” is taken for its size",
            left=size,
            size=reading.cells["size"],
        )
        reading.ask("level", what, size)
        return True
    return False


def _percent(found: re.Match[str], put: Put, cells: Mapping[str, str]) -> bool:
    number = found["number"]
    if found["proof"]:
        return put("abv", f"{number} proof")
    if found["vol"]:
        return put("abv", f"{number} %")
    if found["left"]:
        return put("level", f"{number} %")
    if "abv" in cells:
        return put("level", f"{number} %")
    return put(BARE, f"{number} %")


BARE = "bare"
"""Where a percentage waits until the kind tells whether it is a strength."""


def _fraction(found: re.Match[str], put: Put) -> bool:
    share, word = found["share"].replace(" ", ""), folded(found["word"] or "")
    if word in words().line.gone:
        low, _slash, high = share.partition("/")
        share = f"{int(high) - int(low)}/{high}" if high else share
    return put("level", share.replace(",", "."))


def _opened(reading: _Reading, found: re.Match[str], put: Put) -> bool:
    day = found["day"].strip()
    try:
        read_day(day, None, "opened")
    except UserError:
        if found["word"].casefold() == "since":
            return False
        if put("opened", "yes"):
            said = tr(
                "“{day}” is no day that can be read; write one as 2026-03-31, or take today",
                day=day,
            )
            reading.ask("opened", said, "yes")
        return True
    return put("opened", day)


def _made(found: re.Match[str], put: Put) -> bool:
    try:
        read_day(found["day"].strip(), None, "made")
    except UserError:
        return False
    put("house_made", "yes")
    return put("made", found["day"].strip())


def _take_states(reading: _Reading, put: Put) -> None:
    def state(found: re.Match[str]) -> bool:
        if found["sealed"]:
            return put("opened", "no")
        if found["open"]:
            return put("opened", "yes")
        if found["guessed"]:
            return put("level", "?")
        return put("house_made", "yes")

    for _again in range(3):
        reading.take(_states(), state)


def _counted(found: re.Match[str], put: Put) -> bool:
    if not found["count"]:
        return bool(found.group().strip())
    numbers = words().line.numbers
    said = folded(found["count"])
    count = numbers.index(said) + 1 if said in numbers else said
    return True if count in ("a", "an") else put("count", str(count))


def _take_bare_numbers(reading: _Reading, put: Put) -> None:
    """Numbers that are a field of their own: a share, then a size, then what is left of it."""
    for place, part in enumerate(reading.left):
        if not NUMBER.fullmatch(part):
            continue
        number = float(part.replace(",", "."))
        column = "level" if number <= 1 else "size"
        if put(column, part) or (number > 1 and put("level", part)):
            reading.left[place] = ""


# What it is


@dataclass(frozen=True, slots=True)
class _Name:
    """What a line names: the words of its label, who makes it, and the kind in words.

    `likely` is the name of the kind to be asked about, where those words name none for sure;
    `odd` is what stands beside the name and says nothing known.
    """

    product: str
    maker: str
    kind: str
    likely: str = ""
    odd: str = ""


def _take_name(reading: _Reading, place: _Place, terms: Terms) -> None:
    tree, left = terms.tree, [each for each in reading.left if each]
    left = _without_count(reading, left, tree)
    if not left:
        likely = _sure(place.under, tree)
        reading.cells["product"] = reading.cells["ingredient"] = likely or reading.written
        if likely:
            reading.ask(
                "ingredient",
                tr("it names no kind; it stands below “{under}”", under=place.under),
                likely,
            )
        return
    if _SEVERAL.fullmatch(", ".join(left)):
        reading.ask("product", tr("it may be several bottles: write each on a line of its own"), "")
    name = _name_of(left, tree)
    name = _below_heading(left, name, place, tree)
    reading.cells.update({"product": name.product, "ingredient": name.kind})
    if name.maker:
        reading.cells["maker"] = name.maker
    if name.odd:
        reading.ask(
            "product",
            tr("“{odd}” says nothing known; it stays with the name", odd=name.odd),
            name.product,
        )
    if name.likely:
        kind = tree.in_sentence(tree.by_name[folded(name.likely)])
        reading.ask(
            "ingredient",
            tr("“{left}” is likely {kind}", left=" ".join(left), kind=kind),
            name.likely,
        )


def _without_count(reading: _Reading, left: list[str], tree: FamilyTree) -> list[str]:
    """The parts without a number that begins the first: *6 limes*, *two limes*."""
    if not left:
        return left
    numbers = words().line.numbers
    first, _space, rest = left[0].partition(" ")
    found = _STARTS_WITH.match(left[0])
    in_words = folded(first) in numbers and rest[:1].islower()
    if (not found and not in_words) or "count" in reading.cells or find_exact(left[0], tree):
        return left
    count = found["count"] if found else str(numbers.index(folded(first)) + 1)
    if not 1 <= int(count) <= MOST_BOTTLES:
        return left
    behind = left[0][found.end() :] if found else rest
    reading.cells["count"] = count
    return [behind, *left[1:]]


def find_exact(text: str, tree: FamilyTree) -> bool:
    """Whether a text is a kind's own name as it stands, number and all."""
    return named(text, tree) is not None


def _name_of(left: Sequence[str], tree: FamilyTree) -> _Name:
    whole = ", ".join(left)
    found, notes = find_name(whole, tree)
    foreign = tree.called(whole) if found is None or found.maker else None
    if foreign is not None:
        found, notes = Match(foreign, tree.name(foreign), 1.0, called=whole), ()
    if found is not None and found.key is not None and not found.changed:
        name = _as_found(found, notes, left, tree)
        slip = _one_slip_from(whole, tree) if found.maker else ""
        return replace(name, product=slip, maker="", likely=slip) if slip else name
    said = ", ".join(left)
    misspelt = _without_slips(said, tree)
    within = "" if misspelt else _kind_within(left, tree)
    likely = misspelt or within or _most_like(said, tree)
    return _Name(said if within or not likely else likely, "", said, likely)


def _without_slips(text: str, tree: FamilyTree) -> str:
    """The name of the kind that a text names once slips of the keys are put right."""
    pieces = folded(text).split()
    right = [_put_right(each, tree) for each in pieces]
    found = None if right == pieces else find_name(" ".join(right), tree)[0]
    return "" if found is None or found.changed else _kind_named(found.key, tree)


def _one_slip_from(text: str, tree: FamilyTree) -> str:
    """The name of the kind whose whole name a text is but for one slip: *Orage bitters*."""
    pieces = folded(text).split()
    for at, word in enumerate(pieces):
        if word in tree.words:
            continue
        near = one_letter_off(word, tree.slips) | slips_beside(word, tree.words)
        for other in sorted(near | {_put_right(word, tree)}):
            found = named(" ".join([*pieces[:at], other, *pieces[at + 1 :]]), tree)
            if found and (kind := _kind_named(found.key, tree)):
                return kind
    return ""


def _most_like(text: str, tree: FamilyTree) -> str:
    like = guesses(text, tree)[:1]
    return _kind_named(like[0].key, tree) if like and like[0].confidence >= LIKE_ENOUGH else ""


def _kind_named(key: str | None, tree: FamilyTree) -> str:
    """The name of what is bought as such, empty for a grouping and for nothing."""
    return "" if key is None or tree[key].family else tree.name(key)


def _put_right(word: str, tree: FamilyTree) -> str:
    if word in tree.words:
        return word
    near = whole_names_near(word, tree.words)
    return put_right(word, tree.slips) or (next(iter(near)) if len(near) == 1 else word)


def _as_found(found: Match, notes: tuple[str, ...], left: Sequence[str], tree: FamilyTree) -> _Name:
    assert found.key is not None
    key = rather_named(tree.name(found.key), tree) or found.key
    kind = tree.name(key)
    if tree[key].family:
        return _Name(", ".join(left), "", ", ".join(left), "")
    makers = [each for each in notes if _is_a_maker(each)]
    odd = [each for each in notes if not _is_a_maker(each)]
    maker = " ".join(filter(None, (found.maker, *makers)))
    rest = [each for each in left if each not in notes]
    product = ", ".join(rest)
    if found.maker and product.startswith(found.maker):
        product = product[len(found.maker) :].strip(" ,")
    elif found.maker and product.endswith(found.maker):
        product = product[: -len(found.maker)].strip(" ,")
    product = " ".join(filter(None, (product or kind, *odd)))
    if product[:1].islower() and (product.casefold() == folded(kind) or not found.maker):
        product = product[:1].upper() + product[1:]
    return _Name(product, maker, kind, odd=", ".join(odd))


def _is_a_maker(note: str) -> bool:
    said = note.split()
    return bool(said) and all(
        each[:1].isupper() or each[:1].isdigit() or each in ("&", "and", "of") for each in said
    )


def _kind_within(left: Sequence[str], tree: FamilyTree) -> str:
    """The name of a kind that stands in a line as it is spelt: the longest it ends in, or holds."""
    pieces = " ".join(left).split()
    places = [(start, end) for end in range(len(pieces), 0, -1) for start in range(end)]
    behind = [each for each in places if each[1] == len(pieces)]
    rest = sorted(places[len(behind) :], key=lambda each: each[0] - each[1])
    for start, end in (*behind, *rest):
        found = named(" ".join(pieces[start:end]), tree)
        if found and (kind := _kind_named(found.key, tree)):
            return kind
    return ""


def _sure(text: str, tree: FamilyTree) -> str:
    """The name of the kind that a heading names, empty where it names none."""
    found = named(text, tree) if text else None
    return "" if found is None else _kind_named(found.key, tree)


def _below_heading(left: Sequence[str], name: _Name, place: _Place, tree: FamilyTree) -> _Name:
    """What a line is below a heading that names a kind: *orange* below *Bitters*."""
    above = _sure(place.under, tree)
    if not above:
        return name
    said = " ".join(left)
    both = named(f"{said} {place.under}", tree)
    kind = _kind_named(both.key, tree) if both else ""
    if not kind and (name.likely or folded(name.kind) not in tree.by_name):
        kind = _kind_within([said, above], tree)
    return replace(name, likely=kind) if kind and kind != name.kind else name


# The row


def _row(reading: _Reading, place: _Place, terms: Terms) -> ListedRow:
    cells, tree = reading.cells, terms.tree
    bare = cells.pop(BARE, "")
    likely = {each.column: each.likely for each in reading.asked}
    kind = likely.get("ingredient") or cells["ingredient"]
    key = tree.by_name.get(folded(kind))
    if bare:
        _settle_percent(bare, reading, None if key is None else tree[key].abv_percent)
    guessed = frozenset(_guess(reading, key, tree))
    row = ListedRow(
        row=place.number,
        line=place.number,
        cells=dict(cells),
        columns=dict.fromkeys(cells, 1),
        written=reading.written,
        guessed=guessed,
    )
    read = row_of(row, terms, reading.asked)
    if "size" not in cells and any(each.column == "ingredient" for each in read.problems):
        named_so = next(each.likely for each in read.problems if each.column == "ingredient")
        read = _with_usual_size(read, tree.by_name.get(folded(named_so)), tree)
    return replace(read, problems=tuple(_ready(each, cells) for each in read.problems))


def _ready(problem: CellProblem, cells: Mapping[str, str]) -> CellProblem:
    """With an answer where it has none: a price in another currency may be left out."""
    ready = {"price": "none", "product": cells["product"]}.get(problem.column, "")
    return problem if problem.likely else replace(problem, likely=ready)


def _with_usual_size(row: ListedRow, key: str | None, tree: FamilyTree) -> ListedRow:
    """A row whose kind is asked about, with the usual size of the likely one."""
    asked = tuple(each for each in row.problems if each.column != "size")
    if key is None:
        return replace(row, problems=asked)
    cells = {**row.cells, "size": show_quantity(tree[key].typical_size, tree[key].unit)}
    return replace(row, cells=cells, problems=asked, guessed=row.guessed | {"size"})


def _settle_percent(bare: str, reading: _Reading, usual: float | None) -> None:
    share = float(bare.split()[0].replace(",", "."))
    low, high = LIKE_ITS_KIND
    if usual and low * usual <= share <= high * usual:
        reading.cells.setdefault("abv", bare)
        return
    if share > 100:
        reading.cells.setdefault("abv", bare)
        return
    if usual and usual >= STRONG and share % 5:
        reading.cells.setdefault("abv", bare)
        reading.ask(
            "abv", tr("“{bare}” is likely its strength, and not what is left", bare=bare), bare
        )
        return
    reading.cells.setdefault("level", bare)
    reading.ask(
        "level", tr("“{bare}” is likely what is left, and not its strength", bare=bare), bare
    )


def _guess(reading: _Reading, key: str | None, tree: FamilyTree) -> Iterator[str]:
    """Put the usual size and a guessed level where the line says none; the columns guessed."""
    cells = reading.cells
    if key is None:
        if "level" not in cells and cells.get("opened") != "no":
            cells["level"] = "?"
            yield "level"
        return
    kind = tree[key]
    if "size" not in cells:
        by_the_piece = kind.unit == "each"
        if by_the_piece and "count" in cells:
            cells["size"] = cells.pop("count")
        else:
            cells["size"] = show_quantity(kind.typical_size, kind.unit)
            yield "size"
    if "level" in cells or cells.get("opened") == "no" or kind.unit == "each":
        return
    yield "level"
    days = kind.shelf_life_days
    if cells.get("opened") == "yes" or days is None or days > SOON_OFF_DAYS:
        cells["level"] = "?"
