"""Tables of ingredients: which column is what, told by its title or else by what stands in it."""

from __future__ import annotations

import re
from collections.abc import Callable, Iterator, Mapping, Sequence
from dataclasses import dataclass
from typing import Literal

from barkeep.domain.amounts.spoken import any_amount_at_start
from barkeep.domain.amounts.units import unit_named
from barkeep.domain.phrases import folded
from barkeep.errors import UserError
from barkeep.translation import tr, tr_noop

Meaning = Literal[
    "name",
    "line",
    "amount",
    "unit",
    "ingredient",
    "remark",
    "method",
    "glass",
    "ice",
    "garnish",
    "notes",
    "riff_of",
    "serves",
    "tags",
    "credit",
    "source",
]
"""What a column holds; a *line* is an ingredient with its amount, a *remark* one on a line."""
OF_A_LINE: tuple[Meaning, ...] = ("line", "amount", "unit", "ingredient", "remark")
MEANING_WORDS: Mapping[Meaning, str] = {
    "name": tr_noop("name of the drink"),
    "line": tr_noop("a whole line"),
    "amount": tr_noop("amount"),
    "unit": tr_noop("unit"),
    "ingredient": tr_noop("ingredient"),
    "remark": tr_noop("note on a line"),
    "method": tr_noop("method"),
    "glass": tr_noop("glass"),
    "ice": tr_noop("ice"),
    "garnish": tr_noop("garnish"),
    "notes": tr_noop("notes"),
    "riff_of": tr_noop("riff of"),
    "serves": tr_noop("serves"),
    "tags": tr_noop("tags"),
    "credit": tr_noop("credit"),
    "source": tr_noop("source"),
}

# English first, then German, French, Italian and Spanish; as `folded` gives them.
_TITLES: Mapping[Meaning, str] = {
    "name": "name, drink, cocktail, spec, title, recipe, drink name, cocktail name, recipe name, "
    "getrank, rezept, cocktailname, titel, nom, boisson, titre, recette, nome, bevanda, titolo, "
    "ricetta, nombre, bebida, titulo, receta, trago, coctel",
    "line": "line, lines, ingredient line",
    "amount": "amount, qty, quantity, measure amount, how much, menge, anzahl, quantite, dose, "
    "quantita, dosi, cantidad",
    "unit": "unit, units, measure, uom, einheit, mass, unite, mesure, unita, misura, unidad, "
    "medida",
    "ingredient": "ingredient, ingredients, item, component, what, zutat, zutaten, ingredienten, "
    "ingrediente, ingredienti, ingredientes",
    "remark": "ingredient note, ingredient notes, preparation note, line note",
    "method": "method, instructions, directions, preparation, steps, build, procedure, "
    "zubereitung, anleitung, methode, instructions de preparation, procedimento, preparazione, "
    "metodo, preparacion, elaboracion, instrucciones",
    "glass": "glass, glassware, glas, verre, bicchiere, vaso, copa",
    "ice": "ice, eis, glace, glacons, ghiaccio, hielo",
    "garnish": "garnish, garnishes, garnitur, dekoration, deko, garniture, decoration, "
    "decorazione, guarnizione, decoracion, adorno",
    "notes": "notes, note, comment, comments, remarks, notizen, notiz, bemerkung, bemerkungen, "
    "remarque, remarques, notas, nota, observaciones",
    "riff_of": "riff of, based on, riff_of",
    "serves": "serves, servings, yield, makes, portionen, portions, porzioni, porciones, raciones",
    "tags": "tags, tag, keywords, schlagworte, mots cles, etichette, etiquetas",
    "credit": "credit, author, by, creator, urheber, autor, auteur, autore",
    "source": "source, quelle, fonte, fuente, origin",
}
TITLES: Mapping[str, Meaning] = {
    title.strip(): meaning for meaning, titles in _TITLES.items() for title in titles.split(",")
}
_NUMBERED = re.compile(r"(?P<title>.*?)[ _.#-]*(?P<number>[0-9]{1,2})")
LOOKED_AT = 40
"""Rows; more tell nothing new about a column."""


@dataclass(frozen=True, slots=True)
class Titled:
    """What a column's title says: its meaning, and which of several lines in a row it is of."""

    meaning: Meaning | None
    number: int = 0


def titled(title: str) -> Titled:
    """What a title says.

    >>> titled("Unit 2"), titled("Menge").meaning, titled("colour").meaning
    (Titled(meaning='unit', number=2), 'amount', None)
    """
    plain = " ".join(folded(title).split())
    meaning = TITLES.get(plain)
    if meaning:
        return Titled(meaning)
    numbered = _NUMBERED.fullmatch(plain)
    if numbered:
        meaning = TITLES.get(numbered["title"])
        if meaning in OF_A_LINE or meaning == "garnish":
            return Titled(meaning, int(numbered["number"]))
    return Titled(None)


def has_amount(text: str) -> bool:
    """Whether a text begins with an amount: *2*, *1 1/2 oz*, *20 ml gin*."""
    try:
        return bool(text) and any_amount_at_start(text) is not None
    except UserError:
        return True


def is_amount(text: str) -> bool:
    """Whether a text is an amount and nothing else, with or without a unit."""
    try:
        found = any_amount_at_start(text) if text else None
    except UserError:
        return False
    return found is not None and not text[found.end :].strip(" .")


def is_unit(text: str) -> bool:
    """Whether a text is the word of a unit."""
    return bool(text) and len(text) <= 20 and unit_named(text.strip(" .").casefold()) is not None


def guessed(columns: Sequence[Sequence[str]], *, named: bool) -> list[Meaning | None]:
    """What columns of texts are by what stands in them; `named` where one may name drinks.

    Whatever is neither amounts nor units is a text: the short one with the most
    different texts is the ingredients, the first that says less the names.
    """
    found: list[Meaning | None] = [_by_content(column) for column in columns]
    open_ones = [place for place, each in enumerate(found) if each is None and any(columns[place])]
    if named and len(open_ones) > 1 - ("line" in found):
        name = _likely_name(open_ones, columns)
        found[name] = "name"
        open_ones.remove(name)
    if "line" not in found and open_ones:
        long = {place for place in open_ones if _is_long(columns[place])}
        short = [place for place in open_ones if place not in long]
        if short:
            found[max(short, key=lambda place: (_variety(columns[place]), -place))] = "ingredient"
        for place in long:
            found[place] = "method"
            break
    return found


def _likely_name(open_ones: Sequence[int], columns: Sequence[Sequence[str]]) -> int:
    """The first column that is filled from its first row on and repeats itself most."""
    begun = [place for place in open_ones if columns[place][0] and not _is_long(columns[place])]
    most = max(_variety(columns[place]) for place in open_ones)
    fewer = [place for place in begun if _variety(columns[place]) < most]
    return min(fewer or begun or open_ones)


def _by_content(column: Sequence[str]) -> Meaning | None:
    texts = [text for text in column if text]
    if not texts:
        return None
    if _share(texts, is_unit) > 0.7:
        return "unit"
    if _share(texts, is_amount) > 0.7:
        return "amount"
    return "line" if _share(texts, has_amount) > 0.6 and not _is_long(texts) else None


def _share(texts: Sequence[str], holds: Callable[[str], bool]) -> float:
    return sum(holds(text) for text in texts) / len(texts)


def _variety(column: Sequence[str]) -> int:
    return len({folded(text) for text in column if text})


def _is_long(column: Sequence[str]) -> bool:
    texts = [text for text in column if text]
    return bool(texts) and sum(map(len, texts)) / len(texts) > 40


def composed(amount: str, unit: str, ingredient: str, remark: str = "") -> str:
    """A line made of what stands in its columns."""
    text = " ".join(" ".join((amount, unit, ingredient)).split())
    said = " ".join(remark.split())
    return f"{text} ({said})" if said and text else text or said


def table_lines(rows: Sequence[Sequence[str]]) -> tuple[list[str], list[str]]:
    """The lines of one drink's table, and in words what of it was left aside.

    The first row is its head where no cell of it has an amount.
    """
    if not rows:
        return [], []
    head = None if any(map(has_amount, rows[0])) else rows[0]
    body = [row for row in rows if row is not head]
    width = max(map(len, rows))
    columns = [[row[place] if place < len(row) else "" for row in body] for place in range(width)]
    meanings = _meanings(head, [column[:LOOKED_AT] for column in columns])
    lines = [line for row in body if (line := _line(row, meanings))]
    return lines, list(_unread(head, columns, meanings))


def _meanings(head: Sequence[str] | None, columns: Sequence[Sequence[str]]) -> list[Meaning | None]:
    told: list[Meaning | None] = [None] * len(columns)
    for place, title in enumerate(head or ()):
        meaning = titled(title).meaning
        told[place] = "remark" if meaning == "notes" else meaning
        if told[place] not in OF_A_LINE:
            told[place] = None
    if "line" in told or "ingredient" in told:
        return told
    by_content = guessed(columns, named=False)
    return [first or second for first, second in zip(told, by_content, strict=True)]


def _line(row: Sequence[str], meanings: Sequence[Meaning | None]) -> str:
    cells: dict[Meaning, list[str]] = {}
    for text, meaning in zip(row, meanings, strict=False):
        if meaning and text.strip():
            cells.setdefault(meaning, []).append(text)
    words = {meaning: " ".join(texts) for meaning, texts in cells.items()}
    if "line" in words:
        return composed("", "", words["line"], words.get("remark", ""))
    amount, unit, ingredient, remark = (words.get(each, "") for each in OF_A_LINE[1:])
    return composed(amount, unit, ingredient, remark)


def _unread(
    head: Sequence[str] | None,
    columns: Sequence[Sequence[str]],
    meanings: Sequence[Meaning | None],
) -> Iterator[str]:
    for place, meaning in enumerate(meanings):
        texts = [text for text in columns[place] if text]
        if meaning in OF_A_LINE or not texts:
            continue
        title = head[place] if head and place < len(head) else ""
        yield tr(
            "the column “{title}” ({texts})",
            title=title or place + 1,
            texts=", ".join(texts[:3]),
        )
