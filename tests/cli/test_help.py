"""`barkeep help`: the same words as in the window, by page, by word and by search."""

from __future__ import annotations

from barkeep.documents.help.glossary import glossary
from barkeep.documents.help.pages import shipped_help


def test_without_a_topic_it_lists_every_page(barkeep):
    shown = barkeep("help").out
    for page in shipped_help().pages.values():
        assert f"  {page.key} " in shown and page.title in shown
    assert [each["name"] for each in barkeep("help", "--json").answer["pages"]] == [
        *shipped_help().pages
    ]


def test_every_page_and_every_word_is_printed(barkeep):
    for page in shipped_help().pages.values():
        shown = barkeep("help", page.key).out
        assert page.title in shown and "](" not in shown and "**" not in shown, page.key
    for word in glossary().values():
        assert word.says in " ".join(barkeep("help", word.key).out.split()), word.key


def test_a_word_is_explained_and_says_where_more_is(barkeep):
    shown = barkeep("help", "par").out
    assert shown.startswith("Par: The least you want to have of something.")
    assert shown.endswith("More: barkeep help buying\n")
    answer = barkeep("help", "beyond", "doubt", "--json").answer
    assert answer["word"]["word"] == "beyond doubt" and answer["page"] is None


def test_a_word_that_is_looked_for_names_the_pages(barkeep):
    shown = barkeep("help", "raw", "egg").out
    first = shown.splitlines()[2]
    assert "barkeep help cautions" in first and "Raw egg, milk and things made here" in first
    assert barkeep("help", "raw egg", "--json").answer["found"][0]["name"] == "cautions"


def test_the_query_language_is_the_programs_own(barkeep):
    shown = barkeep("help", "query").out
    assert "with:rum" in shown and "is built on gin" in shown


def test_what_is_nowhere_is_said(barkeep):
    assert barkeep("help", "xyzzy").refusal == (
        "The help says nothing of “xyzzy”. Its pages: barkeep help."
    )


def test_pages_words_and_what_is_found_are_told_in_german(barkeep, tmp_path):
    assert "  counting    Das Regal zählen" in barkeep("help", "--language", "de").out
    assert "Zum Nachschlagen" in barkeep("help", "--language", "de").out
    shown = barkeep("help", "Sollbestand", "--language", "de")
    assert shown.out.startswith("Sollbestand: Was du mindestens von etwas haben willst.")
    assert barkeep("help", "par", "--language", "de").out == shown.out
    found = barkeep("help", "rohes", "ei", "--language", "de").out.splitlines()[2]
    assert "barkeep help cautions" in found and "Rohes Ei, Milch und selbst Gemachtes" in found
    text = barkeep("help", "writing", "--language", "de", "--json").answer["page"]["text"]
    (spec,) = (each for each in text.split("```")[1::2] if not each.startswith("sh"))
    (tmp_path / "spec.txt").write_text(spec, "utf-8")
    read = barkeep("spec", "read", str(tmp_path / "spec.txt")).out
    assert "4.5 cl London dry gin" in read and "1 spec, none with problems." in read
