"""What is written of specs, compared with files that were read through by hand."""

from __future__ import annotations

from html.parser import HTMLParser
from pathlib import Path
from pprint import pformat

import pytest

from barkeep.documents.printed.descriptions import (
    description_html,
    description_markdown,
    description_text,
)
from barkeep.documents.printed.menus import menu_content
from barkeep.documents.specs.files import EXPORT_FORMATS, exported
from barkeep.documents.specs.jsonld import recipes_in
from barkeep.documents.specs.own_json import parts_in_json
from barkeep.domain.bar.snapshot import Settings
from barkeep.domain.spec_text.parts import parts_of, read_parts
from barkeep.domain.spec_text.text import read_specs
from barkeep.errors import UnreadableFile
from tests.documents.printed.drinks_to_publish import MARKED_UP, cards, specs
from tests.documents.specs.readers import parts_in_csv, parts_in_markdown
from tests.walked import walked

REFERENCE = Path(__file__).resolve().parents[2] / "reference" / "published"


def written(tree) -> dict[str, str]:
    """Every form of the same drinks, by the name of its reference file."""
    drinks, shown = specs(tree), cards(tree)
    forms = {
        f"specs{suffix}": exported(drinks, f"specs{suffix}", tree) for suffix in EXPORT_FORMATS
    }
    return forms | {
        "description.txt": description_text(shown),
        "description.md": description_markdown(shown),
        "description.html": description_html(shown),
        "cards.txt": pformat(shown, width=100) + "\n",
        "menu.txt": pformat(menu_content("Platform One", shown), width=100) + "\n",
    }


NAMES = (
    *(f"specs{suffix}" for suffix in EXPORT_FORMATS),
    *("description.txt", "description.md", "description.html", "cards.txt", "menu.txt"),
)


@walked("name", NAMES)
def test_each_form_is_as_it_was(name, tree):
    with (REFERENCE / name).open(encoding="utf-8", newline="") as file:
        assert written(tree)[name] == file.read()


def test_every_form_reads_back(tree):
    drinks = specs(tree)
    parts = [parts_of(spec, tree) for spec in drinks]
    readers = {
        ".md": lambda text: parts_in_markdown(text),
        ".json": lambda text: parts_in_json(text, "a"),
        ".jsonld": lambda text: recipes_in(text, "a"),
        ".csv": lambda text: parts_in_csv(text, "a"),
    }
    for suffix, read in readers.items():
        again = read(exported(drinks, f"a{suffix}", tree))
        assert [unplaced(each) for each in again] == [unplaced(each) for each in parts], suffix
        assert [read_parts(each, tree).spec for each in again] == list(drinks), suffix
    text = [each.spec for each in read_specs(exported(drinks, "a.txt", tree), tree)]
    assert text == list(drinks)


def unplaced(parts):
    return {
        name: getattr(parts, name)
        for name in parts.__dataclass_fields__
        if name not in ("row", "rows", "number") and getattr(parts, name)
    }


def test_markup_in_a_name_is_only_text(tree):
    marked = [card for card in cards(tree) if card.name == MARKED_UP]
    seen = Texts()
    seen.feed(description_html(marked))
    assert seen.headings[0] == MARKED_UP
    assert "b" not in seen.tags
    assert description_markdown(marked).startswith("# A \\<b\\>Bold\\</b\\> & \\*Starred\\*")


class Texts(HTMLParser):
    def __init__(self):
        super().__init__()
        self.tags, self.headings, self._in_heading = set(), [], False

    def handle_starttag(self, tag, attrs):
        self.tags.add(tag)
        self._in_heading = tag == "h1"

    def handle_data(self, data):
        if self._in_heading:
            self.headings.append(data)
            self._in_heading = False


def test_both_measures_stand_beside_each_other(tree):
    first, *_ = cards(tree)
    shown = {line.name: (line.amount, line.first, line.second) for line in first.lines}
    assert shown["London dry gin"] == ("1 ½ oz", "1 ½ oz", "45 ml")
    assert shown["absinthe"] == ("1 barspoon", "1 barspoon", "5 ml")
    assert shown["aromatic bitters"] == ("2–3 dashes", "2–3 dashes", "")
    assert shown["egg white"] == ("1", "1", "")
    assert shown["mint leaves"] == ("8", "8", "")
    assert shown["soda water to top"] == ("", "", "")


def test_a_range_is_one_in_both_measures(tree):
    accented = cards(tree)[3]
    assert accented.lines[0].both == "1 ½–2 oz (45–60 ml)"
    assert accented.lines[1].name == "crème de cassis (optional)"


def test_a_card_for_the_bench_is_in_the_measure_of_the_bar(tree):
    metric, *_ = cards(tree, Settings(shown_in="ml"))
    assert [line.amount for line in metric.lines[:2]] == ["45 ml", "22.5 ml"]
    imperial, *_ = cards(tree, Settings(ounce="imp_oz"))
    assert imperial.lines[0].amount == "1 ½ US oz"  # the spec’s own ounce, not the bar’s
    assert (imperial.lines[0].first, imperial.lines[0].second) == ("1 ½ oz", "45 ml")


def test_cautions_begin_with_local_rules(tree):
    text = description_text(cards(tree)[:1])
    mind = text.split("Please mind\n")[1].splitlines()
    assert "Local rules come first" in mind[0]
    assert mind[1:] == [
        "- Raw egg: follow your local food rules.",
        "- Do not drive after drinking.",
    ]


def test_a_menu_marks_only_what_is_wanted(tree):
    drinks = cards(tree)[:1]
    assert menu_content("", drinks).drinks[0].marks == ("about 17 % vol", "Contains egg and milk")
    assert menu_content("", drinks, strength=False).drinks[0].marks == ("Contains egg and milk",)
    assert menu_content("", drinks, strength=False, allergens=False).drinks[0].marks == ()


def test_an_unknown_suffix_is_refused(tree):
    with pytest.raises(UnreadableFile, match=r"must end in \.txt, \.md"):
        exported(specs(tree), "drinks.pdf", tree)
    with pytest.raises(UnreadableFile):
        exported(specs(tree), "csv", tree)


def rewrite() -> None:
    """Write the reference files anew; then read them through: `python -m` this module."""
    from barkeep.application.knowledge import shipped

    REFERENCE.mkdir(parents=True, exist_ok=True)
    for name, text in written(shipped().tree).items():
        with (REFERENCE / name).open("w", encoding="utf-8", newline="") as file:
            file.write(text)


if __name__ == "__main__":
    rewrite()
