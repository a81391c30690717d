"""What a drink comes to, beside every spec and while one is written, as the user reads it."""

from __future__ import annotations

import subprocess
import sys
from dataclasses import replace

import pytest
from PySide6.QtCore import QPointF, QSize, Qt
from PySide6.QtGui import QFontMetricsF, QImage
from PySide6.QtWidgets import QApplication, QLabel, QWidget
from shiboken6 import isValid

from barkeep.desktop.drink.analysis_panel import NAME, AnalysisPanel, BalancePicture
from barkeep.desktop.drink.analysis_view import (
    UNREAD,
    BalanceBar,
    before_you_pour,
    correction_words,
    every_caution,
    view_of,
)
from barkeep.desktop.drink.tonight import TonightScreen
from barkeep.desktop.look.metrics import TypeSize, font_of
from barkeep.desktop.look.theme import Theme
from barkeep.desktop.look.tones import current_tones
from barkeep.desktop.specs.drafts import for_new
from barkeep.desktop.specs.editor import SpecEditor
from barkeep.desktop.specs.page import SpecsScreen
from barkeep.desktop.stand_ins.page import StandInsScreen
from barkeep.domain.bottles.bottle import label_of
from barkeep.domain.drink.analysis import analyse
from barkeep.domain.drink.kin import kin_of
from barkeep.domain.drink.words import INFORMATION, facts, in_brief, place_in_words
from barkeep.domain.pouring.verdicts import tonight
from barkeep.domain.stand_ins.corrections import correction_for, in_words
from tests.desktop.audit import accessible_name, cut_off, focusable_without_name
from tests.desktop.pages import shown_page
from tests.walked import walked

pytestmark = pytest.mark.qt_log_ignore("^This plugin does not support", extend=True)


LONG_NAME = "Fog Lamp at the Far End of the Longest Platform on the Whole Branch Line"
LINES = ("60 ml London dry gin", "20 ml lemon juice", "15 ml simple syrup", "1 egg white")
METHOD = "Shake with ice and strain."


@pytest.fixture
def page(bar, qtbot, tmp_path):
    with shown_page(SpecsScreen, bar, qtbot, tmp_path) as shown:
        yield shown


@pytest.fixture
def editor(bar, qtbot):
    dialog = SpecEditor(for_new(), bar.snapshot, lambda _editor, _specs: True)
    dialog.show()
    qtbot.waitExposed(dialog)
    yield dialog
    dialog.text.setPlainText("")
    dialog.close()


def spec_named(bar, name: str):
    return next(spec for spec in bar.snapshot.all_specs if spec.name == name)


def brief_for(bar, found) -> str:
    return in_brief(found, bar.snapshot.knowledge.tree)


def texts_of(widget: QWidget) -> list[str]:
    labels = widget.findChildren(QLabel)
    return [label.text() for label in labels if label.text() and label.isVisibleTo(widget)]


def painted(picture: BalancePicture, width: int = 300) -> QImage:
    picture.resize(QSize(width, picture.sizeHint().height()))
    return picture.grab().toImage()


def colours_of(image: QImage) -> set[str]:
    return {
        image.pixelColor(x, y).name() for x in range(image.width()) for y in range(image.height())
    }


class TestBesideASpec:
    @walked("name", ["Daiquiri", "Silver Fizz", "Hot Toddy", "Lemonade", "Kir"])
    def test_every_figure_is_read(self, bar, page, name):
        page.screen.show_thing(name)
        found = analyse(spec_named(bar, name), bar.snapshot)
        texts = page.detail_texts()
        assert brief_for(bar, found) in texts
        assert place_in_words(found) in texts
        for fact in facts(found, bar.snapshot.knowledge.tree):
            assert fact.label in texts
            assert fact.value in texts
            assert not fact.note or fact.note in texts
        doubts = next(each for each in texts if each.startswith("• "))
        assert doubts.split("\n") == [f"• {each}" for each in found.uncertain]
        assert INFORMATION in texts

    def test_whose_a_range_is_is_stated_where_it_is_shown(self, page):
        page.screen.show_thing("Daiquiri")
        said = [each for each in page.detail_texts() if "no rule" in each]
        assert any("barkeep’s own figures" in each and "16 % vol" in each for each in said)

    def test_the_arrow_keys_take_the_analysis_along(self, bar, page, qtbot):
        page.screen.show_thing("Daiquiri")
        page.screen.focus_list()
        for _ in range(3):
            qtbot.keyClick(page.screen.view, Qt.Key.Key_Down)
            current = page.screen.current.spec
            assert brief_for(bar, analyse(current, bar.snapshot)) in page.detail_texts()
            (panel,) = page.screen.detail.findChildren(AnalysisPanel)
            assert panel.isVisible()
        assert current.name != "Daiquiri"

    def test_it_outlives_a_page_without_a_drink(self, bar, page, qtbot):
        page.screen.show_thing("Daiquiri")
        page.screen.search.set_text("zzyzx")
        QApplication.processEvents()
        assert page.screen.current is None
        page.screen.show_thing("Negroni")
        (panel,) = page.screen.detail.findChildren(AnalysisPanel)
        assert isValid(panel) and panel.isVisible()
        assert (
            brief_for(bar, analyse(spec_named(bar, "Negroni"), bar.snapshot)) in page.detail_texts()
        )

    def test_a_bottle_of_another_strength_is_seen_at_once(self, bar, page):
        page.screen.show_thing("Daiquiri")
        before = brief_for(bar, analyse(spec_named(bar, "Daiquiri"), bar.snapshot))
        rum = next(each for each in bar.snapshot.products if each.ingredient == "white-rum")
        bar.inventory.change_product(rum.id, replace(label_of(rum), abv_percent=63.0))
        after = brief_for(bar, analyse(spec_named(bar, "Daiquiri"), bar.snapshot))
        assert before != after
        assert after in page.detail_texts()

    def test_cautions_carry_their_source_and_are_said_once(self, bar, page):
        page.screen.show_thing("Silver Fizz")
        found = analyse(spec_named(bar, "Silver Fizz"), bar.snapshot)
        texts = page.detail_texts()
        for caution in found.cautions:
            assert texts.count(caution.text) == 1
            below = texts[texts.index(caution.text) + 1]
            assert below == f"Source: {caution.authority}."
        assert not any("a copy of the source" in text for text in texts)

    def test_the_same_words_are_in_the_model(self, bar):
        spec = spec_named(bar, "Silver Fizz")
        drink = next(each for each in tonight(bar.snapshot) if each.spec.name == spec.name)
        view = view_of(spec, bar.snapshot)
        shown = before_you_pour(drink.minded, drink.notices)
        every = [row for _head, rows in every_caution(drink.minded, view.general) for row in rows]
        for rows in (shown, every):
            assert len({row.text for row in rows}) == len(rows)
        assert set(drink.warnings) <= {row.text for row in (*shown, *every)}
        assert {each.text for each in view.general} <= {row.text for row in every}

    @walked("name", ["Zombie", "Ramos Fizz", "Long Island Iced Tea"])
    def test_nothing_is_cut_off(self, page, name, qtbot):
        page.screen.show_thing(name)
        page.settle(qtbot)
        QApplication.processEvents()
        assert cut_off(page.screen.detail) == []
        assert focusable_without_name(page.screen.detail) == []

    def test_a_stand_in_tonight_says_what_to_pour(self, bar, page, qtbot):
        drink, said = drink_with_correction(bar)
        page.screen.show_thing(drink.spec.name)
        page.settle(qtbot)
        assert said in page.detail_texts()
        page.screen.show_thing("Daiquiri")
        page.settle(qtbot)
        assert said not in page.detail_texts()


def drink_with_correction(bar):
    """A drink of tonight with a stand-in, and what to pour for it; its cream is fresh."""
    cream = next(each for each in bar.snapshot.bottles if each.ingredient == "double-cream")
    bar.inventory.receive(cream.product.id)
    for drink in tonight(bar.snapshot):
        found = correction_for(drink, bar.snapshot) if drink.verdict == "stand_in" else None
        if found is not None:
            return drink, correction_words(found, bar.snapshot.knowledge.tree)
    raise AssertionError("no drink of the sample bar needs a correction")


def test_an_empty_bar_shows_usual_figures_and_no_price(empty_bar, qtbot, tmp_path):
    with shown_page(SpecsScreen, empty_bar, qtbot, tmp_path) as page:
        page.screen.show_thing("Negroni")
        page.settle(qtbot)
        texts = page.detail_texts()
        assert (
            "London dry gin, red bitter aperitivo and sweet vermouth without a known price" in texts
        )
        assert any("Usual figures, not a label's: London dry gin" in each for each in texts)
        assert cut_off(page.screen.detail) == []


def test_tonight_says_what_to_pour(bar, qtbot, tmp_path):
    drink, said = drink_with_correction(bar)
    with shown_page(TonightScreen, bar, qtbot, tmp_path) as page:
        page.screen.show_thing(drink.spec.name)
        page.settle(qtbot)
        assert said in page.detail_texts()
        assert cut_off(page.screen.detail) == []
        page.screen.show_thing("Daiquiri")
        page.settle(qtbot)
        assert said not in page.detail_texts()


def test_stand_ins_say_what_to_pour_for_the_chosen_drink(bar, qtbot, tmp_path):
    drink, _said = drink_with_correction(bar)
    found = correction_for(drink, bar.snapshot)
    change = next(each for each in found.changes if each.stands_in)
    with shown_page(StandInsScreen, bar, qtbot, tmp_path) as page:
        page.screen.show_thing(change.line.ingredient)
        page.settle(qtbot)
        assert not any("keep the balance" in each for each in page.detail_texts())
        page.screen.drinks.setCurrentIndex(page.screen.drinks.findData(drink.spec.name))
        page.settle(qtbot)
        said = in_words(found, bar.snapshot.knowledge.tree)
        texts = [each.casefold() for each in page.detail_texts()]
        assert any(said.casefold() in each for each in texts)


class TestWhileWriting:
    def test_the_analysis_follows_what_is_typed(self, bar, editor, qtbot):
        briefs = []
        qtbot.keyClicks(editor.text, LONG_NAME)
        for line in LINES:
            qtbot.keyClick(editor.text, Qt.Key.Key_Return)
            qtbot.keyClicks(editor.text, line)
            qtbot.keyClick(editor.text, Qt.Key.Key_Escape)  # puts the completion away
            qtbot.waitUntil(lambda line=line: line in read_lines(editor))
            briefs.append(brief_of(editor))
        assert len(set(briefs)) == len(LINES)
        qtbot.keyClick(editor.text, Qt.Key.Key_Return)
        qtbot.keyClick(editor.text, Qt.Key.Key_Return)
        qtbot.keyClicks(editor.text, METHOD)
        qtbot.waitUntil(lambda: editor.seen.specs[0].read.method == METHOD)
        (spec,) = editor.seen.usable
        assert brief_of(editor) == brief_for(bar, analyse(spec, bar.snapshot))
        qtbot.waitUntil(lambda: cut_off(editor) == [])  # the layout comes with the next event

    def test_lines_that_cannot_be_read_are_not_counted_and_that_is_said(self, editor):
        editor.text.setPlainText(f"Fog\n{LINES[0]}\n15 ml simpel sirop\n\n{METHOD}")
        editor.read()
        assert any(UNREAD in each for each in texts_of(editor.panel))
        with_fault = brief_of(editor)
        editor.text.setPlainText(f"Fog\n{LINES[0]}\n\n{METHOD}")
        editor.read()
        assert not any(UNREAD in each for each in texts_of(editor.panel))
        assert brief_of(editor) == with_fault

    def test_cautions_come_up_with_their_authority(self, editor):
        editor.text.setPlainText("\n".join(("Fog", *LINES[:3], "", METHOD)))
        editor.read()
        assert "Before you pour" not in texts_of(editor.panel)
        editor.text.setPlainText("\n".join(("Fog", *LINES, "", METHOD)))
        editor.read()
        texts = texts_of(editor.panel)
        said = texts[texts.index("Before you pour") + 1]
        assert "Raw egg" in said
        assert "Food Code" in said

    def test_nothing_to_pour_shows_no_analysis(self, editor):
        for text in ("", "Fog", "Fog\n8 mint leaves"):
            editor.text.setPlainText(text)
            editor.read()
            assert "What it comes to" not in texts_of(editor.panel)

    def test_a_dash_is_the_bars_own(self, bar, editor, qtbot):
        bar.settings.change(replace(bar.snapshot.settings, dash_ml=0.3))
        small = SpecEditor(for_new(), bar.snapshot, lambda _editor, _specs: True)
        qtbot.addWidget(small)
        for each in (small, editor):
            each.text.setPlainText("Dashes\n20 dashes aromatic bitters\n\nBuild.")
            each.read()
        assert brief_of(small).startswith("6 ml")
        assert brief_of(editor).startswith("16 ml")
        small.text.setPlainText("")

    def test_of_several_specs_the_one_the_cursor_is_in_is_analysed(self, editor):
        editor.text.setPlainText(f"One\n30 ml gin\n\nStir on ice.\n---\nTwo\n{LINES[1]}\n\nShake.")
        editor.read()
        editor.text.go_to(1)
        first = brief_of(editor)
        editor.text.go_to(6)
        assert "without alcohol" not in first
        assert "without alcohol" in brief_of(editor)


def read_lines(editor) -> list[str]:
    return [each.read.line.text for spec in editor.seen.specs for each in spec.lines]


def brief_of(editor) -> str:
    texts = texts_of(editor.panel)
    return texts[texts.index("What it comes to") + 1]


class TestThePicture:
    BAR = BalanceBar(
        "Strength", "14.2 % vol", 0.3, 0.02, (0.33, 0.44), "usual 15 to 19.7", "weaker"
    )

    @pytest.fixture
    def picture(self, qtbot):
        made = BalancePicture()
        qtbot.addWidget(made)
        made.show_bars([self.BAR])
        return made

    def test_it_says_in_words_what_it_draws(self, picture):
        assert accessible_name(picture) == NAME
        said = "Strength 14.2 % vol, weaker, usual 15 to 19.7"
        assert picture.accessibleDescription() == picture.toolTip() == said

    def test_every_part_shows(self, picture):
        whole = painted(picture)
        for other in (
            replace(self.BAR, mark=0.6),
            replace(self.BAR, sigma=0.2),
            replace(self.BAR, usual=(0.5, 0.9)),
            replace(self.BAR, usual=None),
            replace(self.BAR, label="Sugar"),
            replace(self.BAR, value="15 % vol"),
            replace(self.BAR, range_words=""),
            replace(self.BAR, mark=1.4),
        ):
            picture.show_bars([other])
            assert painted(picture) != whole, other

    def test_far_beyond_the_scale_is_as_beyond_it(self, picture):
        images = []
        for mark in (1.4, 9.0):
            picture.show_bars([replace(self.BAR, mark=mark, sigma=0.0)])
            images.append(painted(picture))
        assert images[0] == images[1]

    @pytest.mark.parametrize("scheme", ["light", "dark"])
    def test_it_is_drawn_in_the_tones_of_the_theme(self, picture, qapp, scheme):
        theme = Theme(qapp, scheme)
        try:
            tones, colours = current_tones(), colours_of(painted(picture))
            assert {tones.link, tones.raised, tones.accent} <= colours
        finally:
            theme.remove_pictures()

    def test_at_its_narrowest_label_and_value_do_not_touch(self, bar, picture):
        letters = QFontMetricsF(font_of(TypeSize.STRONG, picture.font())).horizontalAdvance
        for spec in bar.snapshot.all_specs:
            for each in view_of(spec, bar.snapshot).bars:
                needed = letters(each.label) + letters(each.value)
                assert needed < picture.minimumSizeHint().width(), each

    def test_it_grows_with_its_bars(self, picture):
        one = picture.sizeHint().height()
        picture.show_bars([self.BAR] * 3)
        assert picture.sizeHint().height() == pytest.approx(3 * one, abs=2)


def test_an_analysis_needs_nothing_heavy():
    code = (
        "import sys; from datetime import date; from barkeep.application.knowledge import shipped;"
        "from barkeep.domain.bar.snapshot import Snapshot;"
        "from barkeep.desktop.drink.analysis_view import view_of;"
        "knowledge = shipped(); bar = Snapshot(knowledge, date(2026, 11, 21));"
        "[view_of(spec, bar) for spec in knowledge.classics];"
        "print(sorted({'numpy', 'scipy', 'networkx', 'pint'} & set(sys.modules)))"
    )
    done = subprocess.run([sys.executable, "-c", code], capture_output=True, text=True, check=True)
    assert done.stdout.strip() == "[]"


class TestAmongItsFamily:
    @pytest.fixture
    def picture(self, bar, page, qtbot):
        page.screen.show_thing("Daiquiri")
        (panel,) = page.screen.detail.findChildren(AnalysisPanel)
        page.screen.show_in_details(panel)
        qtbot.waitUntil(lambda: any(each.kin for each in panel.picture.bars))
        return panel.picture

    def test_every_other_is_there_and_named_where_it_lies(self, bar, picture):
        made = analyse(spec_named(bar, "Daiquiri"), bar.snapshot)
        kin = kin_of(made, bar.snapshot)
        strength, *_others, water = picture.bars
        assert {each.name for each in strength.kin} == {each.name for each in kin}
        assert any(each.own for each in strength.kin)
        assert water.label == "Water of the ice" and water.range_words.startswith("usual ")
        said = picture.accessibleDescription()
        less = sum(each.mark < strength.mark for each in strength.kin)
        assert f"more than {less} of the {len(kin)} others of its family" in said
        alone = strength.kin[-1]
        trough = picture._trough(0)
        at = QPointF(trough.left() + alone.mark * trough.width(), trough.center().y())
        assert alone.in_words in picture.says_at(at).split("\n")
        assert picture.says_at(QPointF(at.x(), 1.0)) == strength.in_words

    def test_the_arrow_keys_walk_them(self, picture, qtbot):
        qtbot.keyClick(picture, Qt.Key.Key_Right)
        first = picture.bars[0].kin[0]
        assert picture.accessibleDescription() == f"Strength: {first.in_words}"
        qtbot.keyClick(picture, Qt.Key.Key_Down)
        qtbot.keyClick(picture, Qt.Key.Key_Right)
        second = picture.bars[1].kin[1]
        assert picture.accessibleDescription() == f"Sugar: {second.in_words}"
        assert second.in_words.split()[0] in second.name
        assert "<svg" in picture.as_svg().decode()
