"""What is said to a person, and its translations: complete, fitting, and compiled as they stand.

`python -m tests.write_words` brings the files up to date with the sources.
"""

from __future__ import annotations

import re
from collections.abc import Iterator
from datetime import date
from string import Formatter

import pytest
from PySide6.QtCore import QTranslator

from barkeep.desktop.look.language import Language
from barkeep.domain.days import day_of_year_short, day_said
from tests.write_words import (
    CONTEXT,
    FOLDER,
    LANGUAGES,
    REGIONS,
    Message,
    as_ts,
    compiled,
    said_in,
    said_in_sources,
    translations,
)

MODULE = '''
"""A module that is read as the program's are."""
HINT = tr_noop("How it looks.")

class Refused(UserError):
    says = "It is {what}."

def told(bottles, glass, kept):
    return [
        tr("{bottles} are here", bottles=counted(bottles, "bottle")),
        counted(glass, "glass", "glasses"),
        tr_about("to empty a field", "Clear"),
        tr("Kept" if kept else "Left"),
        spoken_list(bottles, "and"),
        unsaid("Not a word"),
    ]
'''


@pytest.fixture(scope="module")
def said() -> tuple[Message, ...]:
    return said_in_sources()


@pytest.fixture(scope="module", params=LANGUAGES)
def language(request) -> str:
    return request.param


def test_all_that_is_said_is_gathered_and_nothing_else():
    assert sorted(said_in(MODULE)) == [
        Message("Clear", "to empty a field"),
        Message("How it looks."),
        Message("It is {what}."),
        Message("Kept"),
        Message("Left"),
        Message("and"),
        Message("bottle"),
        Message("bottles"),
        Message("glass"),
        Message("glasses"),
        Message("{bottles} are here"),
    ]


def test_a_file_holds_what_the_sources_say_and_all_of_it_is_translated(said, language):
    held = translations(language)
    new = [each for each in said if each not in held]
    still = set(said)
    gone = [each for each in held if each not in still]
    assert (new, gone) == ([], []), "bring it up to date: python -m tests.write_words"
    assert [each for each, words in held.items() if not words] == []
    text = (FOLDER / f"barkeep_{language}.ts").read_text(encoding="utf-8")
    assert 'type="' not in text  # unfinished, vanished, obsolete
    assert text == as_ts(language, held)


def test_a_translation_has_the_fields_of_the_english_in_the_same_forms(language):
    assert [
        (each.words, words)
        for each, words in translations(language).items()
        if words and fields_of(each.words) != fields_of(words)
    ] == []


def test_a_translation_underlines_a_letter_where_the_english_does(language):
    assert [
        (each.words, words)
        for each, words in translations(language).items()
        if words and letters_of(each.words) != letters_of(words)
    ] == []


def test_what_the_window_reads_is_what_stands_in_the_file(said, language, tmp_path):
    committed = FOLDER / f"barkeep_{language}.qm"
    made = tmp_path / committed.name
    compiled(committed.with_suffix(".ts"), made)
    read, anew = (list(spoken(path.read_bytes(), said)) for path in (committed, made))
    held = translations(language)
    differing = [
        (each, *words)
        for each, *words in zip(said, read, anew, map(held.get, said), strict=True)
        if len(set(words)) > 1
    ]
    assert differing[:3] == [], "compile it anew: python -m tests.write_words"


def test_what_is_translated_may_be_translated_once_more(language):
    """A widget translates what its table declares, which may be said in the language already."""
    held = {each.words: words for each, words in translations(language).items() if not each.about}
    again = {words: held[words] for words in held.values() if held.get(words, words) != words}
    assert again == {}


def test_days_are_said_as_a_region_says_them(qapp):
    spoken_there = Language(qapp, "en_US")
    try:
        assert day_said(date(2026, 12, 3)) == "December 3, 2026"
        assert day_of_year_short(date(2026, 12, 3)) == "Dec 3"
    finally:
        spoken_there.leave()
    assert day_said(date(2026, 12, 3)) == "3 December 2026"


@pytest.mark.parametrize("region", REGIONS)
def test_a_region_says_only_what_is_still_said(said, region):
    held = translations(region)
    assert held and set(held) <= set(said)
    assert all(fields_of(each.words) == fields_of(words) for each, words in held.items())


def fields_of(words: str) -> set[tuple[str, str]]:
    """The fields of a sentence with their forms; none of words in which braces mean nothing.

    A day may be written in another form.
    """
    try:
        parts = list(Formatter().parse(words))
    except ValueError:
        return set()
    return {(name, _form(form)) for _text, name, form, _conversion in parts if name is not None}


def _form(form: str | None) -> str:
    """How a field is said; each language has its own order of day, month and year."""
    return "moment" if form and form.startswith("%") else form or ""


def letters_of(words: str) -> int:
    """How many letters are underlined; an & between words, or before another, underlines none."""
    return len(re.findall(r"&\w", words.replace("&&", "")))


def spoken(data: bytes, said: tuple[Message, ...]) -> Iterator[str]:
    translator = QTranslator()
    assert translator.load(data)
    for each in said:
        yield translator.translate(CONTEXT, each.words, each.about or None)
