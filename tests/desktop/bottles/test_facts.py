"""Weighing a bottle, setting its dasher and correcting its label, from the Bottles page."""

from __future__ import annotations

import re
from datetime import date

import pytest
from PySide6.QtCore import Qt

from barkeep.application.bar import Bar
from barkeep.desktop.bottles.labels import USUAL_SHAPE
from barkeep.domain.bottles.bottle import Label, Tare
from barkeep.domain.bottles.shapes import shipped_shapes
from tests.desktop.bottles.bottle_page import bottle_named, bottles_page, texts
from tests.desktop.pages import offered_in_details
from tests.walked import walked

pytestmark = pytest.mark.qt_log_ignore("^This plugin does not support", extend=True)


GIN = "Pellow & Rudge Lamp Room dry gin"
GENEVER = "Teasel Weir Malt Floor oude genever"
WEIGHING = ["Weigh it empty…", "Weigh it full…"]
CREAM = "Tansy Lock Milk Churn cream liqueur"


@pytest.fixture
def page(bar, qtbot, tmp_path):
    with bottles_page(bar, qtbot, tmp_path) as made:
        yield made


@pytest.fixture
def screen(page):
    return page.screen


def choose(page, title, state=None):
    bottle = bottle_named(page.bar, title, state)
    page.screen.choose(bottle.id)
    return bottle


def ask(screen, key):
    screen.actions_by_key[key].trigger()
    return screen.dialog


def now(page, bottle):
    return next(each for each in page.bar.snapshot.bottles if each.id == bottle.id)


class TestWeighing:
    def test_empty(self, page, screen, qtbot):
        genever = choose(page, GENEVER)
        assert "Weigh it empty or full to count it on a scale." in texts(screen.detail)
        dialog = ask(screen, "tare")
        assert dialog.intro.text() == "Put the empty bottle on the scale, without its cap."
        qtbot.keyClicks(dialog.fact, "50")
        assert dialog.outcome.text() == ""  # a mistake is no mistake while it is typed
        qtbot.keyClicks(dialog.fact, "0 g")
        assert dialog.outcome.text() == f"{GENEVER} weighs 500 g ± 2 empty."
        dialog.accept_button.click()
        assert screen.dialog is None
        assert now(page, genever).tare == Tare(500.0, 1.0)
        assert page.toast.text == f"Weighed {GENEVER} empty"
        shown = texts(screen.detail)
        assert "500 g ± 2" in shown and "weighed empty" in shown
        page.toast._button.click()
        assert now(page, genever) == genever
        assert "Weigh it empty or full" in texts(screen.detail)

    def test_full(self, page, screen, qtbot):
        genever = choose(page, GENEVER)
        dialog = ask(screen, "full")
        qtbot.keyClicks(dialog.fact, "1167 g")
        assert dialog.outcome.text() == f"{GENEVER} weighs 500 g ± 17 empty."
        qtbot.keyClick(dialog.fact, Qt.Key.Key_Return)
        assert now(page, genever).full_g == 1167.0
        assert "worked out from 1167 g full" in texts(screen.detail)

    def test_what_is_known_so_far_is_said(self, page, screen):
        choose(page, GIN, "open")
        dialog = ask(screen, "tare")
        assert "So far it is taken to weigh 486 g ± 2." in dialog.intro.text()
        dialog.reject()

    def test_a_like_bottle_says_whose_weight_it_is(self, page, screen):
        choose(page, GIN, "sealed")
        assert "as another bottle of it" in texts(screen.detail)

    def test_cream_learns_its_density_from_both(self, page, screen, qtbot):
        cream = page.bar.inventory.receive_new(
            Label("Churn", "Hollow Lamp", "cream-liqueur", 700.0)
        ).value
        screen.choose(cream.id)
        assert "It holds cream, milk, egg or coconut" in texts(screen.detail)
        dialog = ask(screen, "full")
        qtbot.keyClicks(dialog.fact, "1242 g")
        assert "Weigh it again once it is empty" in dialog.outcome.text()
        dialog.accept_button.click()
        dialog = ask(screen, "tare")
        qtbot.keyClicks(dialog.fact, "512 g")
        assert "1.044 g per ml" in dialog.outcome.text()
        dialog.accept_button.click()
        assert "learned by weighing" in texts(screen.detail)
        assert now(page, cream).product.density_g_per_ml == pytest.approx(1.044, abs=0.001)
        dialog = ask(screen, "count")
        qtbot.keyClicks(dialog.amount, "877 g")
        assert dialog.outcome.text().startswith("877 g: 350 ml ± 8.5. 350 ml less than expected")
        dialog.accept_button.click()
        assert now(page, cream).level.method == "weight"
        assert "weighed, ± 8.5 ml" in texts(screen.detail)

    @walked(
        "key, text, reason",
        [
            ("tare", "", "Write it down, such as 520 g."),
            ("tare", "520", "needs its unit"),
            ("tare", "520 ml", "is a volume"),
            ("tare", "0 g", "more than nothing"),
            ("full", "600 g", "too little for the 700 ml"),
            ("full", "-5 g", "below nothing"),
        ],
    )
    def test_a_mistake_is_said_below_the_field(self, page, screen, qtbot, key, text, reason):
        choose(page, GENEVER)
        label = page.bar.undo_label
        dialog = ask(screen, key)
        qtbot.keyClicks(dialog.fact, text)
        dialog.accept_button.click()
        assert dialog.isVisible()
        assert reason in dialog.problem("fact")
        assert page.bar.undo_label == label
        dialog.reject()

    def test_limes_are_not_weighed(self, page, screen):
        choose(page, "Limes")
        for key in ("tare", "full", "dasher"):
            assert ask(screen, key) is None
            assert "Limes is not poured" in screen.banner.text


class TestUseBy:
    def test_set_corrected_and_forgotten(self, page, screen, qtbot):
        gin = choose(page, GIN, "open")
        dialog = ask(screen, "use_by")
        assert dialog.outcome.text() == "It has no use-by day."
        qtbot.keyClicks(dialog.fact, "2031-03-04")
        assert dialog.outcome.text() == "It is used by 4 March 2031."
        dialog.accept_button.click()
        assert now(page, gin).use_by == date(2031, 3, 4)
        dialog = ask(screen, "use_by")
        assert "So far it is 4 March 2031." in dialog.intro.text()
        dialog.accept_button.click()
        assert now(page, gin).use_by is None

    def test_of_limes_too_and_a_day_that_is_none_is_refused(self, page, screen, qtbot):
        limes = choose(page, "Limes")
        before = limes.use_by
        dialog = ask(screen, "use_by")
        qtbot.keyClicks(dialog.fact, "soon")
        dialog.accept_button.click()
        assert "write year, month and day: 2026-12-31" in dialog.problem("fact")
        assert now(page, limes).use_by == before
        dialog.reject()


class TestDasher:
    def test_set_and_forgotten(self, page, screen, qtbot):
        bitters = choose(page, "Hollow Lamp Aromatic bitters")
        dialog = ask(screen, "dasher")
        assert dialog.outcome.text() == "A dash is what the bar means by one, 0.8 ml."
        qtbot.keyClicks(dialog.fact, "0.3 ml")
        assert dialog.outcome.text() == "So about 33 dashes are 10 ml."
        dialog.accept_button.click()
        assert now(page, bitters).dash_ml == 0.3
        assert "0.3 ml" in texts(screen.detail)
        dialog = ask(screen, "dasher")
        dialog.accept_button.click()
        assert now(page, bitters).dash_ml is None

    def test_a_pour_in_dashes_is_that_bottle_s(self, page, screen, qtbot):
        bitters = choose(page, "Hollow Lamp Aromatic bitters")
        page.bar.counting.set_dasher(bitters.id, 0.5)
        dialog = ask(screen, "pour")
        qtbot.keyClicks(dialog.amount, "4 dashes")
        assert dialog.outcome.text() == "Leaves 78 of 200 ml"
        dialog.accept_button.click()
        assert now(page, bitters).level.amount == pytest.approx(78.0)

    def test_too_much_for_a_dash(self, page, screen, qtbot):
        choose(page, "Hollow Lamp Aromatic bitters")
        dialog = ask(screen, "dasher")
        qtbot.keyClicks(dialog.fact, "30 ml")
        dialog.accept_button.click()
        assert "a dash is 0.05 to 2 ml" in dialog.problem("fact")
        dialog.reject()


class TestLabel:
    def test_a_shape_is_chosen_by_name(self, page, screen):
        genever = choose(page, GENEVER)
        dialog = ask(screen, "label")
        shape = dialog.label.shape
        assert shape.currentText() == "Tall round bottle"
        names = [shape.itemText(number) for number in range(shape.count())]
        assert names[0] == USUAL_SHAPE and len(names) == 1 + len(shipped_shapes())
        assert all(name[0].isupper() for name in names)
        assert all(shape.itemData(n, Qt.ItemDataRole.ToolTipRole) for n in range(1, len(names)))
        shape.setCurrentIndex(shape.findData("square"))
        dialog.accept_button.click()
        assert now(page, genever).product.shape == "square"
        assert "Square bottle" in texts(screen.detail)
        assert page.toast.text == f"Changed the label of {GENEVER}"
        page.toast._button.click()
        assert now(page, genever) == genever

    def test_nothing_changed_writes_nothing(self, page, screen):
        cream = choose(page, CREAM)
        label = page.bar.undo_label
        ask(screen, "label").accept_button.click()
        assert page.bar.undo_label == label
        assert now(page, cream) == cream  # also the density that was learned

    def test_sugar_and_acid(self, page, screen, qtbot):
        cordial = choose(page, "Lime cordial")
        dialog = ask(screen, "label")
        assert dialog.edits["acid"].placeholderText().startswith("Usual: ")
        qtbot.keyClicks(dialog.edits["acid"], "42,5")
        dialog.accept_button.click()
        assert now(page, cordial).product.acid_g_per_l == 42.5
        assert "42.5 g per litre" in texts(screen.detail)

    @walked(
        "field, text, reason",
        [
            ("name", "", "A product needs a name"),
            ("ingredient", "moss", "There is no ingredient"),
            ("strength", "140", "0 to 100"),
            ("size", "200", "is more than"),
            ("acid", "sour", "it is a number such as 45"),
        ],
    )
    def test_a_mistake_is_said_below_its_field(self, page, screen, field, text, reason):
        choose(page, GENEVER)
        dialog = ask(screen, "label")
        dialog.edits[field].setText(text)
        dialog.accept_button.click()
        assert dialog.isVisible()
        assert reason in dialog.problem(field)
        dialog.reject()


class TestWhereToFindThem:
    def test_the_details_and_the_bar_menu_offer_them(self, page, screen):
        choose(page, GIN, "open")
        words = [
            "Weigh it empty…",
            "Weigh it full…",
            "Set its dasher…",
            "Make it a house pour…",
            "Set its use-by day…",
            "Change its label…",
            "What was paid…",
        ]
        assert set(words) <= set(offered_in_details(screen))
        menu = [action.text().replace("&", "") for action in screen.bar_actions]
        assert set(words) <= set(menu)

    def test_limes_have_only_a_label(self, page, screen):
        choose(page, "Limes")
        facts = [each for each in offered_in_details(screen) if "its" in each or "Weigh" in each]
        assert facts == ["Set its use-by day…", "Change its label…"]
        assert "What was paid…" in offered_in_details(screen)

    def test_nothing_is_chosen_in_an_empty_bar(self, empty_bar, qtbot, tmp_path):
        with bottles_page(empty_bar, qtbot, tmp_path) as page:
            for key in ("tare", "full", "dasher", "label"):
                assert ask(page.screen, key) is None


class TestTheCountDialog:
    @walked(
        "text, found",
        [
            ("783 g", r"783 g: 315 ml ± 3\. As expected: 0\.3 ml more, within ± 70 ml"),
            ("9.5 cm", r"9\.5 cm: 3\d\d ml ± \d\d\. As expected: .* within ± \d+ ml"),
            ("300 ml", r"300 ml: 300 ml ± 10\. As expected: 15 ml less, within ± 71 ml"),
            ("0.2", r"0\.2: 140 ml ± 70\. 175 ml less than expected: beyond the doubt of ± 99 ml"),
        ],
    )
    def test_every_way_says_how_it_was_read(self, page, screen, qtbot, text, found):
        gin = choose(page, GIN, "open")
        dialog = ask(screen, "count")
        assert "without its cap" in dialog.intro.text()
        qtbot.keyClicks(dialog.amount, text)
        assert re.fullmatch(found, dialog.outcome.text())
        dialog.accept_button.click()
        (counted,) = [each for each in page.bar.snapshot.bottles if each.id == gin.id]
        assert counted.level.counted is not None
        page.bar.undo()

    def test_a_new_bottle_is_measured_by_its_height(self, page, screen, qtbot, sample_bar, clock):
        screen.actions_by_key["add"].trigger()
        dialog = screen.dialog
        for name, text in {"name": "Own gin", "ingredient": "gin", "size": "700"}.items():
            dialog.edits[name].setText(text)
        dialog.label.shape.setCurrentIndex(dialog.label.shape.findData("tall-round"))
        dialog.edits["level"].setText("812 g")
        dialog.accept_button.click()
        assert "is not known yet" in dialog.problem("level")
        dialog.edits["level"].setText("9.46 cm")
        dialog.accept_button.click()
        assert screen.dialog is None
        with Bar.open(sample_bar, clock=clock) as fresh:
            added = bottle_named(fresh, "Own gin")
        assert added.level.amount == pytest.approx(315, abs=0.5)
        assert added.product.shape == "tall-round"
