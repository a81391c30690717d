"""Gather all words that are said into Qt's translation files: `python -m tests.write_words`.

`resources/translations/barkeep_LANGUAGE.ts` is for translators (Qt Linguist opens it): what is
new in the sources is added to it as unfinished, what is no longer said leaves it. Its `.qm` is
what the window reads. A test holds both to the sources.
"""

from __future__ import annotations

import ast
import subprocess
import sys
from collections.abc import Iterator, Mapping
from dataclasses import dataclass
from pathlib import Path
from xml.etree import ElementTree

from PySide6 import __file__ as qt_package

from tests.said_in_data import said_in_data

ROOT = Path(__file__).resolve().parent.parent
FOLDER = ROOT / "resources" / "translations"
LANGUAGES = ("de",)
REGIONS = ("en_US",)
"""English as it is said elsewhere: their files hold what differs, and nothing else."""
CONTEXT = "barkeep"
NAMING_ERRORS = ("InvalidField", "UnsureField", "UnknownName", "AmbiguousName", "DuplicateName")
"""Errors that begin with the name of a field or a kind, which is translated when they are said."""
HEAD = '<?xml version="1.0" encoding="utf-8"?>\n<!DOCTYPE TS>\n'


@dataclass(frozen=True, slots=True, order=True)
class Message:
    """Words in English, and what tells them from the same words elsewhere."""

    words: str
    about: str = ""


def said_in_sources() -> tuple[Message, ...]:
    """Every message of the program, in order of the words."""
    found: set[Message] = set()
    for path in sorted((ROOT / "barkeep").rglob("*.py")):
        found.update(said_in(path.read_text(encoding="utf-8")))
    found.update(map(Message, said_in_data()))
    return tuple(sorted(found))


def said_in(source: str) -> Iterator[Message]:
    """The messages of one module: `tr` and its like, `counted`, what errors say and name."""
    for node in ast.walk(ast.parse(source)):
        match node:
            case ast.Call(func=ast.Name("tr" | "tr_noop" | "spoken_list"), args=args):
                yield from (Message(words) for arg in args for words in _constants(arg))
            case ast.Call(func=ast.Name("tr_about"), args=[ast.Constant(str(about)), words, *_]):
                yield from (Message(each, about) for each in _constants(words))
            case ast.Call(func=ast.Name(name), args=[called, *_]) if name in NAMING_ERRORS:
                yield from (Message(words) for words in _constants(called) if words[0] != "-")
            case ast.Call(func=ast.Name("counted"), args=[_, one, *more]):
                yield from _nouns(one, more)
            case ast.Assign(targets=[ast.Name("says")], value=words):
                yield from map(Message, _constants(words))


def _constants(node: ast.expr) -> Iterator[str]:
    match node:
        case ast.Constant(str(words)) if words:
            yield words
        case ast.IfExp(body=body, orelse=otherwise):
            yield from _constants(body)
            yield from _constants(otherwise)


def _nouns(one: ast.expr, more: list[ast.expr]) -> Iterator[Message]:
    for word in _constants(one):
        yield Message(word)
        if not more:
            yield Message(word + "s")
    for each in more:
        yield from map(Message, _constants(each))


def translations(language: str) -> Mapping[Message, str]:
    """What a language's file says of each message; empty where it is unfinished."""
    path = FOLDER / f"barkeep_{language}.ts"
    if not path.exists():
        return {}
    root = ElementTree.parse(path).getroot()
    return {
        Message(each.findtext("source", ""), each.findtext("comment", "")): each.findtext(
            "translation", ""
        )
        for each in root.iter("message")
    }


def as_ts(language: str, said: Mapping[Message, str]) -> str:
    """A translation file in the form of Qt Linguist."""
    root = ElementTree.Element("TS", version="2.1", language=language, sourcelanguage="en")
    context = ElementTree.SubElement(root, "context")
    ElementTree.SubElement(context, "name").text = CONTEXT
    for message, words in sorted(said.items()):
        entry = ElementTree.SubElement(context, "message")
        ElementTree.SubElement(entry, "source").text = message.words
        if message.about:
            ElementTree.SubElement(entry, "comment").text = message.about
        translation = ElementTree.SubElement(entry, "translation")
        translation.text = words
        if not words:
            translation.set("type", "unfinished")
    ElementTree.indent(root, "")
    return f"{HEAD}{ElementTree.tostring(root, encoding='unicode')}\n"


def compiled(ts: Path, qm: Path) -> None:
    """Compile a translation file with Qt's own tool. Raises `CalledProcessError`."""
    tool = Path(qt_package).parent / "lrelease"
    subprocess.run([tool, "-silent", str(ts), "-qm", str(qm)], check=True)


def main(languages: tuple[str, ...]) -> None:
    for language in languages:
        before = translations(language)
        messages = [each for each in said_in_sources() if each in before or language in LANGUAGES]
        said = {message: before.get(message, "") for message in messages}
        path = FOLDER / f"barkeep_{language}.ts"
        path.write_text(as_ts(language, said), encoding="utf-8")
        compiled(path, path.with_suffix(".qm"))
        missing = sum(not words for words in said.values())
        print(f"{language}: {len(said)} messages, {missing} unfinished")


if __name__ == "__main__":
    main(tuple(sys.argv[1:]) or (*LANGUAGES, *REGIONS))
