"""A riff beside its parent and the versions of a drink, as the page of a spec tells them."""

from __future__ import annotations

from dataclasses import replace

import pytest
from PySide6.QtCore import Qt
from PySide6.QtWidgets import QApplication, QLabel

from barkeep.desktop.specs.family import FamilyBranch, FamilySection, beside_parent, version_rows
from barkeep.desktop.specs.page import SpecsScreen
from barkeep.desktop.widgets.labels import LinkLabel
from barkeep.domain.drink.comparison import compare, figure_rows
from barkeep.domain.specs.riffs import riff_on
from tests.desktop.audit import cut_off
from tests.desktop.pages import shown_page

pytestmark = pytest.mark.qt_log_ignore("^This plugin does not support", extend=True)


RIFF, PARENT = "Request Stop on Sunday", "Request Stop"


@pytest.fixture
def page(bar, qtbot, tmp_path):
    with shown_page(SpecsScreen, bar, qtbot, tmp_path) as shown:
        yield shown


@pytest.fixture
def screen(page):
    return page.screen


def said(screen) -> list[str]:
    """What the parts about kin say, top to bottom."""
    page = screen.detail.widget()
    parts = [each for each in page.findChildren(FamilySection) if each.isVisibleTo(page)]
    labels = [label for part in parts for label in part.findChildren(QLabel)]
    plain = (each.plain_text if isinstance(each, LinkLabel) else each.text() for each in labels)
    return [each for each in plain if each]


class TestBesideItsParent:
    def test_lines_stand_in_pairs_with_a_mark_and_a_word(self, bar):
        rows = beside_parent(bar.specs.get(RIFF), bar.snapshot).pairs
        assert [(row.before, row.after, row.mark, row.word) for row in rows[:2]] == [
            ("2 oz London dry gin", "1 ½ oz Old Tom gin", "⇄", "Swapped"),
            ("¾ oz lime juice", "¾ oz lime juice", "=", ""),
        ]
        assert (rows[-1].before, rows[-1].word) == ("", "Added")
        assert rows[0].in_words == "Swapped: 2 oz London dry gin → 1 ½ oz Old Tom gin"
        assert rows[1].in_words == "The same: ¾ oz lime juice"
        assert rows[-1].in_words == "Added: ½ oz fino sherry"

    def test_lines_are_shown_as_the_bar_shows_them(self, bar):
        bar.settings.change(replace(bar.snapshot.settings, shown_in="ml"))
        row = beside_parent(bar.specs.get(RIFF), bar.snapshot).pairs[0]
        assert (row.before, row.after) == ("60 ml London dry gin", "45 ml Old Tom gin")

    def test_the_page_tells_both_and_what_changes(self, bar, screen):
        screen.show_thing(RIFF)
        texts = said(screen)
        assert texts[:3] == ["Beside its parent", PARENT, RIFF]
        assert {"⇄", "=", "+", "Swapped", "Added", "—"} <= set(texts)
        found = compare(bar.specs.get(PARENT), bar.specs.get(RIFF), bar.snapshot)
        for row in figure_rows(found):
            at = texts.index(row.label)
            assert texts[at + 1 : at + 4] == [row.before, row.after, row.change]
        assert found.change.abv_percent < 0 and "−" in texts[texts.index("Strength") + 3]

    def test_what_is_the_same_says_so(self, bar, screen):
        bar.specs.add([riff_on(bar.specs.get(PARENT), "Halt")])
        screen.show_thing("Halt")
        assert said(screen).count("no change") == 5

    def test_the_parent_can_be_followed(self, screen, qtbot):
        screen.show_thing(RIFF)
        link = next(
            each for each in screen.detail.findChildren(LinkLabel) if each.plain_text == PARENT
        )
        link.setFocus(Qt.FocusReason.TabFocusReason)
        qtbot.keyClick(link, Qt.Key.Key_Return)
        assert screen.current.spec.name == PARENT

    def test_a_parent_that_is_gone_is_said(self, bar, screen):
        bar.specs.remove(bar.specs.get(PARENT).id)
        screen.show_thing(RIFF)
        assert f"{PARENT} is no longer in the book: there is nothing to set it beside." in said(
            screen
        )

    def test_what_is_no_riff_has_no_such_part(self, screen):
        screen.show_thing(PARENT)
        assert "Beside its parent" not in said(screen)


class TestVersions:
    def test_the_family_is_told_parents_first_with_what_won(self, screen):
        screen.show_thing("Upper Berth in the Corridor")
        texts = said(screen)
        at = texts.index("Versions")
        assert texts[at + 1 :] == [
            "Upper Berth",
            "Won",
            "2 trials: Balance 3.8, Flavour 3.8, On theme 4.8",
            "Upper Berth by the Window",
            "1 trial: Balance 3.5, Flavour 3, On theme 3",
            "Upper Berth in the Corridor",
            "This one; 1 trial: Balance 2.5, Flavour 4, On theme 1",
        ]

    def test_a_spec_without_kin_has_none(self, bar, screen):
        screen.show_thing("Gangway")
        assert said(screen) == []
        assert version_rows(bar.specs.get("Gangway"), bar.snapshot) == ()

    def test_a_classic_tells_the_riffs_on_it(self, bar, screen):
        bar.specs.add([riff_on(bar.specs.get("Daiquiri"), "Semaphore")])
        screen.show_thing("Daiquiri")
        texts = said(screen)
        assert texts[1:3] == ["Daiquiri", "This one"] and "Semaphore" in texts

    def test_each_other_version_can_be_followed(self, screen, qtbot):
        screen.show_thing("Upper Berth")
        for name in ("Upper Berth in the Corridor", "Upper Berth by the Window"):
            link = next(
                each for each in screen.detail.findChildren(LinkLabel) if each.plain_text == name
            )
            link.followed.emit(link.links[0].target)
            assert screen.current.spec.name == name

    def test_branches_go_on_as_long_as_something_hangs_on_them(self, bar):
        for parent, name in (("Gangway", "A"), ("A", "B"), ("A", "C"), ("Gangway", "D")):
            bar.specs.add([riff_on(bar.specs.get(parent), name)])
        rows = version_rows(bar.specs.get("C"), bar.snapshot)
        assert [(row.name, row.goes_on) for row in rows] == [
            ("Gangway", ()),
            ("A", (True,)),
            ("B", (True, True)),
            ("C", (True, False)),
            ("D", (False,)),
        ]
        assert [row.is_this for row in rows] == [False, False, False, True, False]

    def test_a_branch_is_drawn_where_it_turns(self, qtbot):
        branch = FamilyBranch((False, True), 10)
        qtbot.addWidget(branch)
        branch.resize(branch.width(), 40)
        branch.setAutoFillBackground(True)
        picture = branch.grab().toImage()
        ground = picture.pixelColor(2, 2)
        across = [picture.pixelColor(26, down) != ground for down in (2, 10, 30)]
        assert across == [True, True, True]
        assert all(picture.pixelColor(8, down) == ground for down in (2, 10, 30))
        assert picture.pixelColor(31, 10) != ground == picture.pixelColor(31, 20)

    def test_twelve_versions_with_long_names_are_all_readable(self, bar, screen):
        name = "Gangway"
        for number in range(11):
            longer = f"Gangway to the Longest Pier of All the Harbours, Cut Number {number}"
            bar.specs.add([riff_on(bar.specs.get(name), longer)])
            name = longer
        screen.show_thing(name)
        QApplication.processEvents()
        assert len([each for each in said(screen) if each.startswith("Gangway")]) == 14
        assert cut_off(screen) == []


def test_tags_credit_and_source_are_told(bar, page, screen):
    spec = bar.specs.get(PARENT)
    bar.specs.replace(replace(spec, tags=("spring", "house"), credit="Wren", source="a notebook"))
    screen.show_thing(PARENT)
    texts = page.detail_texts()
    assert "Tags: spring, house" in texts
    assert {"Credit: Wren", "Source: a notebook"} <= set(texts)
