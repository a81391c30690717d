"""What is said to a person goes through here, so that it can be said in another language.

`tr` takes a whole sentence, its fields in braces, and returns it in the language that is spoken:
in English, as it is written, until `speak_through` names who translates. The command line, files
and JSON stay English: they are read by programs too.

A sentence in a module or a class is not said yet when it is read: it is written inside `tr_noop`,
and goes through `tr` where it is shown. The `says` of an error and the nouns given to
`phrases.counted` are translated where they are used, without being marked.
"""

from __future__ import annotations

from collections.abc import Callable, Iterator
from contextlib import contextmanager
from contextvars import ContextVar

Translator = Callable[[str, str], str]
"""A sentence in English, and what tells it from the same words elsewhere -> as it is said."""


_stays_english: ContextVar[bool] = ContextVar("stays_english", default=False)


@contextmanager
def kept_in_english() -> Iterator[None]:
    """What is said inside stays English, in this thread alone: for words that a bar keeps."""
    before = _stays_english.set(True)
    try:
        yield
    finally:
        _stays_english.reset(before)


def _in_english(words: str, _about: str) -> str:
    return words


ENGLISH = "en"
_translator: Translator = _in_english
_language = ENGLISH


def speak_through(translator: Translator | None, language: str = ENGLISH) -> None:
    """From now on words are translated so, into this language; None for English."""
    global _translator, _language
    _translator, _language = translator or _in_english, language


def spoken() -> str:
    """The language that is spoken, for texts that are files of their own: *de*."""
    return _language


def tr(words: str, /, **fields: object) -> str:
    """`words` in the language that is spoken, with its fields filled in.

    Without fields braces are what they are. A field keeps its form: `{abv:.1f}`.

    >>> tr("{left:.0f} ml of {bottle}", left=212.4, bottle="gin")
    '212 ml of gin'
    """
    return tr_about("", words, **fields)


def tr_about(about: str, words: str, /, **fields: object) -> str:
    """The same for words that mean something else elsewhere; `about` tells which is meant.

    >>> tr_about("to empty a field", "Clear")
    'Clear'
    """
    said = words if _stays_english.get() else _translator(words, about)
    return said.format_map(fields) if fields else said


def tr_noop(words: str) -> str:
    """Words to be translated later, where they are shown with `tr`."""
    return words
