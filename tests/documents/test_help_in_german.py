"""The German help says, links and shows what the English one does, and German words find it."""

from __future__ import annotations

import re
import tomllib
from collections.abc import Iterator
from pathlib import Path

import pytest

from barkeep import resource_files
from barkeep.documents.help.glossary import glossary, word_called
from barkeep.documents.help.pages import HelpPage, shipped_help, table_called
from barkeep.documents.help.searching import look_up
from barkeep.domain.specs.query import LANGUAGE
from tests.write_words import translations

QUESTIONS = Path(__file__).resolve().parent.parent / "reference" / "help_questions_de.toml"
ENGLISH, GERMAN = shipped_help(), shipped_help("de")
LINK = re.compile(r"\]\(([^)]+)\)")
BLOCK = re.compile(r"^```sh\n.*?^```$", re.MULTILINE | re.DOTALL)
OTHERWISE = {"Riff of", "settled on"}
"""What a line of a spec begins with is read in English alone, and what is not named but said."""
SAID = re.compile(r"\*\*?([^*]+?):?\*\*?")


def said_by_the_window(page: HelpPage) -> Iterator[str]:
    """What stands slanted or bold, as menus and buttons are; of a menu and its entry each."""
    for words in SAID.findall(BLOCK.sub("", page.text)):
        yield from (bare(each) for each in " ".join(words.split()).split(" ▸ "))


def bare(words: str) -> str:
    return words.replace("&", "").rstrip(" ….")


def test_every_page_is_there_in_german():
    assert set(resource_files.names("help", "de", suffix=".md")) == {
        f"{key}.md" for key in ENGLISH.pages
    }
    assert list(GERMAN.pages) == list(ENGLISH.pages)
    for (title, pages), (german, german_pages) in zip(ENGLISH.parts, GERMAN.parts, strict=True):
        assert [each.key for each in pages] == [each.key for each in german_pages], title
        assert german != title or title == "Drinks"
    assert GERMAN.where == ENGLISH.where


@pytest.mark.parametrize("key", sorted(ENGLISH.pages))
def test_a_page_says_and_links_the_same_in_both_languages(key):
    english, german = ENGLISH.pages[key], GERMAN.pages[key]
    assert german.about.endswith(".") and german.about != english.about
    assert sorted(LINK.findall(german.text)) == sorted(LINK.findall(english.text))
    slugs, there = ([each.slug for each in page.sections] for page in (english, german))
    assert sorted(there) == sorted(slugs)
    assert key == "glossary" or there == slugs
    assert BLOCK.findall(german.text) == BLOCK.findall(english.text)
    rows = [re.findall(r"^\|", page.text, re.MULTILINE) for page in (english, german)]
    assert len(rows[0]) == len(rows[1])
    assert german.text.count(" ▸") == english.text.count(" ▸")


def test_menus_and_buttons_are_called_as_the_window_calls_them():
    german: dict[str, set[str]] = {}
    for message, words in translations("de").items():
        if words:
            german.setdefault(bare(message.words), set()).add(bare(words))
    wrong = {}
    for key, page in ENGLISH.pages.items():
        there = set(said_by_the_window(GERMAN.pages[key]))
        for words in said_by_the_window(page):
            if words in german.keys() - OTHERWISE and not german[words] & there:
                wrong[f"{key}: {words}"] = german[words]
    assert wrong == {}


def test_what_is_new_is_told_in_german_entry_by_entry():
    told = [resource_files.read_said("changes.md", language=each) for each in ("en", "de")]
    english, german = (re.split(r"^(?:- |## )", text, flags=re.MULTILINE) for text in told)
    assert len(german) == len(english) > 70
    for one, other in zip(english, german, strict=True):
        commands = [sorted(re.findall(r"`([a-z-][^`]+)`", each)) for each in (one, other)]
        assert commands[0] == commands[1] and (one != other or one.startswith("0."))


def test_every_word_is_explained_in_german():
    english, german = glossary(), glossary("de")
    assert list(english) == list(german)
    for key, word in german.items():
        assert word.page == english[key].page, key
        assert word.word and word.says != english[key].says, key
    for asked, key in (("Sollbestände", "par"), ("VERLAUF", "ledger"), ("riff", "riff")):
        word = word_called(asked, "de")
        assert word is not None and word.key == key
    assert word_called("Verlauf") is None


def test_the_german_words_are_in_order_and_led_to_by_the_english():
    page = GERMAN.pages["glossary"]
    headings = [each.heading for each in page.sections[1:]]
    assert headings[:3] == ["Abwandlung", "Abweichung", "Ansatz"]
    section = page.sections[page.number_of("ledger")]
    assert section.heading == "Verlauf" and "Mehr: [Flaschen](bottles)." in section.text
    assert page.number_of("nothing of this name") == 0


def test_the_query_language_is_told_of_in_full():
    written = [f"| `{each}` |" for each, _finds in LANGUAGE]
    table = table_called("query", "de")
    assert [each for each in written if each not in table] == []
    assert table.count("\n| `") == len(written)


def test_what_a_german_bartender_types_finds_the_page_first():
    asked = tomllib.loads(QUESTIONS.read_text("utf-8"))["asked"]
    assert len(asked) >= 20
    wrong = {}
    for each in asked:
        found = [one.page.key for one in look_up(each["words"], "de")[:1]]
        if found != [each["first"]]:
            wrong[each["words"]] = found
    assert wrong == {}
    assert look_up("xyzzy quux", "de") == ()


def test_a_language_without_a_help_has_the_english_one():
    other = shipped_help("xx")
    sections = [[page.sections for page in each.pages.values()] for each in (ENGLISH, other)]
    assert sections[0] == sections[1] and glossary("xx") == glossary()
    assert [each.page.key for each in look_up("weigh a bottle", "xx")][:1] == ["counting"]
