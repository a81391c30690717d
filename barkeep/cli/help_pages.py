"""`help`: a page of the help, what a word means, or the pages that some words are found on."""

from __future__ import annotations

from collections.abc import Iterator, Mapping, Sequence
from functools import partial

from barkeep.cli.arguments import Arguments, argument, command
from barkeep.cli.output import Answer, table, wrapped
from barkeep.documents.help.glossary import Word, word_called
from barkeep.documents.help.pages import TRANSLATED, Help, HelpPage, shipped_help
from barkeep.documents.help.plain import plain
from barkeep.documents.help.searching import Found, look_up
from barkeep.domain.phrases import capitalised
from barkeep.errors import UserError
from barkeep.translation import ENGLISH

MOST_FOUND = 5
"""Pages; those beyond fit less and less."""


class NothingSaid(UserError):
    """The help has nothing on what was asked."""

    asked: str
    says = "The help says nothing of “{asked}”. Its pages: barkeep help."


@command(
    argument("topic", nargs="*", metavar="TOPIC", help="a page, a word, or what you look for"),
    argument(
        "--language",
        choices=(ENGLISH, *TRANSLATED),
        default=ENGLISH,
        help="in which the pages and words are written",
    ),
    description="""\
A page of the help by its name, what one of barkeep's words means, or where the help
speaks of what you look for. Without a topic: which pages there are. A word that is a
page as well is told first.""",
    epilog="""\
keys of the JSON:
  page     name title text (Markdown), or null
  word     word says also page, or null
  found    name title section: what fits, the likeliest first
  pages    part name title about: all there are, where no topic is given""",
)
def show(arguments: Arguments) -> Answer:
    """A page, a word, or what is found."""
    asked = " ".join(arguments.topic).strip()
    language = arguments.language
    pages = shipped_help(language)
    if not asked:
        return Answer(partial(_contents_json, pages), _contents(pages))
    page, word = pages.pages.get(asked.lower()), word_called(asked, language)
    found = () if page or word else look_up(asked, language)[:MOST_FOUND]
    if not (page or word or found):
        raise NothingSaid(asked)
    return Answer(
        partial(_json, page, word, found),
        "\n\n".join(_shown(page, word, found)),
    )


def _shown(page: HelpPage | None, word: Word | None, found: Sequence[Found]) -> Iterator[str]:
    if word is not None:
        yield "\n".join(wrapped(f"{capitalised(word.name)}: {word.says}", ""))
        if page is None:
            yield f"More: barkeep help {word.page.partition('#')[0]}"
    if page is not None:
        yield plain(page.text, lambda text, mark: "\n".join(wrapped(text, mark)), table)
    if found:
        rows = [(f"barkeep help {each.page.key}", _place(each)) for each in found]
        yield table(("page", "where"), rows)


def _place(found: Found) -> str:
    heading = found.section.heading
    return f"{found.page.title}: {heading}" if heading else found.page.title


def _contents(shipped: Help) -> Iterator[str]:
    for title, pages in shipped.parts:
        yield title
        for page in pages:
            yield f"  {page.key:<12}{page.title}"
        yield ""
    yield "barkeep help PAGE prints one, barkeep help WORD explains a word."


def _json(page: HelpPage | None, word: Word | None, found: Sequence[Found]) -> Mapping[str, object]:
    return {
        "page": page and {"name": page.key, "title": page.title, "text": page.text},
        "word": word
        and {"word": word.name, "says": word.says, "also": list(word.also), "page": word.page},
        "found": [
            {"name": each.page.key, "title": each.page.title, "section": each.section.heading}
            for each in found
        ],
        "pages": [],
    }


def _contents_json(shipped: Help) -> Mapping[str, object]:
    pages = [
        {"part": part, "name": each.key, "title": each.title, "about": each.about}
        for part, within in shipped.parts
        for each in within
    ]
    return {"page": None, "word": None, "found": [], "pages": pages}
