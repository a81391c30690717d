"""The help says what is true, leads where it says, and is found by what people type."""

from __future__ import annotations

import ast
import re
import shlex
import tomllib
from collections.abc import Iterator
from pathlib import Path

import pytest

import barkeep
from barkeep import resource_files
from barkeep.cli.arguments import COMMANDS, parse
from barkeep.cli.output import table, wrapped
from barkeep.documents.help.glossary import glossary, read_glossary, slug, word_called
from barkeep.documents.help.pages import HelpPage, parted, shipped_help, table_called
from barkeep.documents.help.plain import plain
from barkeep.documents.help.searching import look_up
from barkeep.errors import KnowledgeError
from tests.write_help import commands_table

QUESTIONS = Path(__file__).resolve().parent.parent / "reference" / "help_questions.toml"
PAGES = shipped_help().pages
SOURCES = Path(barkeep.__file__).parent
LINK = re.compile(r"\[[^\]]+\]\(([^)]+)\)")


def commands_of(text: str) -> Iterator[str]:
    """Every line of its blocks of commands."""
    for block in re.findall(r"^```sh\n(.*?)^```$", text, re.MULTILINE | re.DOTALL):
        yield from block.splitlines()


def leads_somewhere(place: str) -> bool:
    key, heading = parted(place)
    page = PAGES.get(key)
    return page is not None and heading in {each.slug for each in page.sections} | {""}


def test_what_people_type_finds_the_page_first():
    asked = tomllib.loads(QUESTIONS.read_text("utf-8"))["asked"]
    assert len(asked) >= 40
    wrong = {}
    for each in asked:
        found = [one.page.key for one in look_up(each["words"])[:1]]
        if not found or found[0] not in {each["first"], *each.get("also", ())}:
            wrong[each["words"]] = found
    assert wrong == {}


def test_what_is_found_nowhere_finds_nothing():
    assert look_up("xyzzy quux") == ()


def test_every_link_leads_somewhere():
    links = [
        *((page.key, link) for page in PAGES.values() for link in LINK.findall(page.text)),
        *((f"[{word.key}]", word.page) for word in glossary().values()),
        *((f"[{word.key}]", word.place) for word in glossary().values()),
        *(("[where]", place) for place in shipped_help().where.values()),
    ]
    assert [(of, link) for of, link in links if not leads_somewhere(link)] == []


def test_every_file_is_a_page_and_begins_with_what_it_is_about():
    assert {f"{key}.md" for key in PAGES} == set(resource_files.names("help", suffix=".md"))
    for page in PAGES.values():
        assert page.text.startswith(f"# {page.title}\n\n"), page.key
        assert page.about.endswith("."), page.key


def test_every_command_of_the_help_and_the_readme_is_understood():
    """None is run: what each does is tried where that command is."""
    of_help = [line for page in PAGES.values() for line in commands_of(page.text)]
    readme = (SOURCES.parent / "README.md").read_text("utf-8")
    of_readme = [line for line in commands_of(readme) if line.startswith("barkeep ")]
    assert len(of_help) > 90 and len(of_readme) > 40
    for line in (*of_help, *of_readme):
        words = shlex.split(line, comments=True)
        assert words[0] == "barkeep", line
        try:
            parse(words[1:])
        except SystemExit as left:
            # Only the help of a command leaves, and as it should.
            assert left.code == 0 and "--help" in words, line


def test_every_command_is_in_its_table():
    """Written anew by `python -m tests.write_help`."""
    assert table_called("commands") == commands_table()
    assert {each.name for each in COMMANDS} >= {"help", "desktop-entry"}


def test_every_class_that_the_help_tells_of_is_there():
    there = {
        node.name
        for path in (SOURCES / "desktop").rglob("*.py")
        for node in ast.walk(ast.parse(path.read_text("utf-8")))
        if isinstance(node, ast.ClassDef)
    }
    assert set(shipped_help().where) - there == set()


def test_every_page_and_dialog_of_the_window_is_told_of():
    """Each that is shown itself; what others are made from need not be."""
    bases: dict[str, set[str]] = {}
    for path in (SOURCES / "desktop").rglob("*.py"):
        for node in ast.walk(ast.parse(path.read_text("utf-8"))):
            if isinstance(node, ast.ClassDef):
                above = {ast.unparse(each).partition("[")[0] for each in node.bases}
                bases[node.name] = above

    def is_one(name: str) -> bool:
        return any(each in ("Screen", "QDialog") or is_one(each) for each in bases.get(name, ()))

    made_from = set().union(*bases.values())
    shown = {name for name in bases if is_one(name)} - made_from
    assert len(shown) > 30
    assert shown - set(shipped_help().where) == set()


def test_a_word_is_found_by_any_of_its_forms():
    for asked, key in (("Pars", "par"), ("±", "doubt"), ("RIFF", "riff"), ("0.65", "closeness")):
        word = word_called(asked)
        assert word is not None and word.key == key
    assert word_called("moon") is None
    assert word_called("") is None


@pytest.mark.parametrize(
    ("text", "told"),
    [
        ('[a]\npage = "x"\n', "says"),
        ('[a]\nsays = "b"\npage = "x"\nmore = 1\n', "more"),
        ('[a]\nsays = "b"\npage = "x"\n[b]\nsays = "b"\npage = "x"\nalso = ["A"]\n', "“A” is “a”"),
    ],
)
def test_a_broken_glossary_names_what_is_wrong(text, told):
    with pytest.raises(KnowledgeError, match=re.escape(told)):
        read_glossary(text)


def test_headings_in_code_are_no_headings():
    page = HelpPage("x", "X", "# X\n\nAbout.\n\n```\n# no\n```\n\n## Yes, this\n\nWords.\n", "")
    assert [(each.heading, each.slug) for each in page.sections] == [
        ("", ""),
        ("Yes, this", "yes-this"),
    ]


def test_plain_text_has_all_words_and_no_marks():
    text = (
        "# A page\n\nSee [the *other*](x#y) by `F1`\nand **now**.\n\n- one\n  more\n- two\n\n"
        "| a | b |\n|---|---|\n| `x` | p \\| q |\n\n```sh\nbarkeep 'a*b*c'\n```\n"
    )
    shown = plain(text, lambda words, mark: "\n".join(wrapped(words, mark)), table)
    assert shown.split("\n\n") == [
        "A page\n══════",
        "See the other by F1 and now.",
        "- one more\n- two",
        "a  b\n─  ─────\nx  p | q",
        "    barkeep 'a*b*c'",
    ]
    assert slug("Crème de cassis") == "creme-de-cassis"
