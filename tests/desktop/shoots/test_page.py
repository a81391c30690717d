"""The Shoots page over the sample bar: what it says, and what its buttons do."""

from __future__ import annotations

from dataclasses import replace
from datetime import timedelta

import pytest
from PySide6.QtCore import Qt
from PySide6.QtWidgets import QApplication, QPushButton

from barkeep.application.bar import Bar
from barkeep.desktop.shoots.page import ShootsScreen
from barkeep.domain.bar.shoots import ServeCounts, Shoot, ShootDrink
from tests.desktop.audit import cut_off, focusable_without_name
from tests.desktop.pages import do_in_details, said_in, shown_page
from tests.walked import walked

pytestmark = pytest.mark.qt_log_ignore("^This plugin does not support", extend=True)


@pytest.fixture
def page(bar, qtbot, tmp_path):
    with shown_page(ShootsScreen, bar, qtbot, tmp_path) as shown:
        yield shown


def themes(page):
    return [each.theme for each in page.screen.shown.shown_rows()]


def said(page):
    return said_in(page.screen.page)


def press(page, qtbot, text):
    do_in_details(page.screen, text, qtbot)
    page.settle(qtbot)


def choose(page, qtbot, theme):
    shoot = next(each for each in page.bar.snapshot.shoots if each.theme == theme)
    page.screen.show_thing(shoot.id)
    page.settle(qtbot)
    return shoot


def shoot_called(page, theme):
    return next(each for each in page.bar.snapshot.shoots if each.theme == theme)


def test_every_shoot_and_its_state(page):
    assert themes(page)[:2] == ["Summer Excursion", "Snow Plough"] and len(themes(page)) == 6
    assert page.screen.summary.text() == "1 ahead, 1 to log, 6 in all"
    days = [page.screen.shown.index(row, 1).data() for row in range(6)]
    assert days[0] == "25 Nov 2026" and days == [
        f"{each.on.day} {each.on:%b} {each.on.year}" for each in page.screen.shown.shown_rows()
    ]  # and by the date, not by its letters
    dates = [each.on for each in page.screen.shown.shown_rows()]
    assert dates == sorted(dates, reverse=True)
    page.screen.chips.choose("logged")
    assert len(themes(page)) == 4
    page.screen.chips.choose("to_log")
    assert themes(page) == ["Snow Plough"]


@walked(
    ("words", "found"),
    [
        ("snow", ["Snow Plough"]),
        ("gangway", ["Harbour Halt"]),
        ("irish whiskey", ["Night Sleeper"]),
        ("steamed up", ["Snow Plough"]),
        ("25 nov 2026", ["Summer Excursion"]),
        ("2026-11-25", ["Summer Excursion"]),
        ("25 november", ["Summer Excursion"]),
        ("filmed snow", ["Snow Plough"]),
        ("no such thing", []),
    ],
)
def test_searched_by_theme_drink_bottle_and_notes(page, qtbot, words, found):
    page.screen.search.set_text("")
    qtbot.waitUntil(lambda: len(themes(page)) > 1)  # nothing that was found before
    page.screen.search.set_text(words)
    qtbot.waitUntil(lambda: themes(page) == found)


def test_what_runs_out_and_what_would_save_it(page, qtbot):
    choose(page, qtbot, "Summer Excursion")
    assert "No: 3 lines run out." in said(page)
    assert "Sand in the Points lacks 88.7 ml of mezcal, for 3 of 3 serves." in said(page)
    press(page, qtbot, "Use blanco tequila in Sand in the Points")
    assert "No: 2 lines run out." in said(page)
    assert "Blanco tequila in place of mezcal, 1.1 times as much" in " ".join(said(page)).replace(
        "blanco", "Blanco"
    )
    press(page, qtbot, "Pour as written")
    assert "No: 3 lines run out." in said(page)


def test_a_bottle_is_chosen_for_a_line(page, qtbot):
    shoot = choose(page, qtbot, "Snow Plough")
    menu = page.screen.menu_for(shoot, 0)
    below = [each.menu() for each in menu.actions()]
    words = [action.text() for action in below[0].actions() if action.text()]
    assert words[0] == "As written" and any("genever" in each for each in words[1:])
    next(each for each in below[0].actions() if "genever" in each.text()).trigger()
    page.settle(qtbot)
    (chosen,) = shoot_called(page, "Snow Plough").drinks[0].chosen
    assert chosen.bottle_id is not None
    assert any("genever" in each for each in said(page))


def test_a_tick_survives_reopening(page, qtbot, tmp_path):
    choose(page, qtbot, "Summer Excursion")
    key, box = next(iter(page.screen.page.ticks.items()))
    qtbot.mouseClick(box.parentWidget(), Qt.MouseButton.LeftButton)
    page.settle(qtbot)
    assert any("1 of" in each for each in said(page))
    with Bar.open(page.bar.path) as again:
        assert key in next(s for s in again.snapshot.shoots if s.state == "planned").ticked


def test_the_running_order_moves(page, qtbot):
    shoot = choose(page, qtbot, "Summer Excursion")
    press(page, qtbot, "Later")
    moved = shoot_called(page, "Summer Excursion")
    assert moved.names == (shoot.names[1], shoot.names[0], shoot.names[2])


def test_from_idea_to_filmed(page, qtbot):
    page.bar.shoots.add(replace(shoot_called(page, "Branch Line"), id=None, state="idea", log=None))
    page.screen.show_thing(max(each.id for each in page.bar.snapshot.shoots))
    page.settle(qtbot)
    press(page, qtbot, "Plan it")
    assert page.screen.current.state == "planned"
    press(page, qtbot, "It is filmed")
    assert page.screen.current.state == "filmed"
    press(page, qtbot, "Log it…")
    assert page.screen.dialog.windowTitle() == "Log Branch Line"
    page.screen.dialog.close()


def test_repeated_removed_and_put_back(page, qtbot):
    choose(page, qtbot, "Mail Train")
    page.screen.repeat_current()
    page.settle(qtbot)
    assert themes(page).count("Mail Train") == 2
    assert page.screen.current.state == "idea" and page.screen.current.on == page.bar.snapshot.on
    page.screen.remove_current()
    page.settle(qtbot)
    assert themes(page).count("Mail Train") == 1
    page.bar.undo()
    page.settle(qtbot)
    assert themes(page).count("Mail Train") == 2


def test_a_logged_one_says_what_it_did(page, qtbot):
    shoot = choose(page, qtbot, "Harbour Halt")
    words = said(page)
    assert "The log" in words and words.index("The log") < words.index("Running order")
    (gin,) = [each for each in shoot.log.bottles if "navy-strength gin" in each.title]
    below = words[words.index(gin.title) + 1]
    assert below.startswith(f"Poured {gin.poured:.0f} ml; expected {gin.expected:.0f} ml")
    assert f"counted {gin.counted:.0f} ml: {gin.variance:.0f} ml less" in below
    page.screen.show_variances()
    dialog = page.screen.dialog
    assert dialog.table.rows and dialog.reason.text().startswith(dialog.table.rows[0].title)
    dialog.close()


def test_a_removed_spec_is_named_and_comes_back(page, qtbot):
    page.bar.specs.remove(page.bar.specs.get("Brazier").id)
    choose(page, qtbot, "Snow Plough")
    assert "The spec of Brazier was removed: put another in its place or take it out." in said(page)
    assert "2 serves: 2 on camera. Its spec was removed." in said(page)
    page.bar.undo()
    page.settle(qtbot)
    assert "It is filmed; its log is still to be written." in said(page)


def test_an_empty_bar(empty_bar, qtbot, tmp_path):
    with shown_page(ShootsScreen, empty_bar, qtbot, tmp_path) as page:
        assert page.screen.list_stack.currentWidget() is page.screen.list_stack.empty
        assert page.screen.list_stack.empty.title.text() == "No shoots yet"


def test_a_hundred_shoots_with_long_names(page, qtbot):
    long = "A theme with a name of sixty letters that goes on and on again"
    spec = page.bar.specs.get("Brazier")
    drinks = (ShootDrink(spec.id, spec.name, ServeCounts(1, 2, 3)),)
    on = page.bar.snapshot.on
    for number in range(94):
        shoot = Shoot(None, f"{long} {number}", on - timedelta(days=number), drinks)
        page.bar.shoots.add(shoot)
    page.settle(qtbot)
    assert len(themes(page)) == 100
    choose(page, qtbot, f"{long} 5")
    assert "6 serves: 1 test, 2 on camera, 3 to taste." in said(page)
    assert not cut_off(page.screen.page)


def test_nothing_is_cut_off_and_all_is_named(page, qtbot):
    for theme in ("Summer Excursion", "Snow Plough", "Harbour Halt"):
        choose(page, qtbot, theme)
        assert not cut_off(page.screen.page)
        assert not focusable_without_name(page.screen)


def test_every_line_says_what_it_is_poured_from(page, qtbot):
    choose(page, qtbot, "Summer Excursion")
    words = said(page)

    def below(text):
        return words[words.index(text) + 1]

    assert below("2 oz white rum") == "From Marrow Hill Tarpaulin white rum"
    assert below("1 oz mezcal") == "Runs out"
    assert below("¾ oz lime juice") == "Made from Limes"
    press(page, qtbot, "Use blanco tequila in Sand in the Points")
    words = said(page)
    assert below("1.1 oz blanco tequila, in place of mezcal") == (
        "Blanco tequila in place of mezcal, 1.1 times as much. "
        "From Hollow Lamp Split Pin blanco tequila"
    )


def test_the_keyboard_stays_where_it_was(page, qtbot):
    """The page is made anew after each change, and the keyboard must not notice."""
    choose(page, qtbot, "Summer Excursion")
    keys = list(page.screen.page.ticks)
    bar = page.screen.detail.verticalScrollBar()
    page.screen.detail.scrolled.ensureWidgetVisible(page.screen.page.ticks[keys[-1]])
    scrolled = bar.value()
    assert scrolled > 0
    for key in keys[-2:]:
        before = page.screen.page
        before.ticks[key].setFocus()
        qtbot.keyClick(before.ticks[key], Qt.Key.Key_Space)
        page.settle(qtbot)
        assert page.screen.page is not before and page.screen.page.ticks[key].isChecked()
        assert page.screen.page.ticks[key].hasFocus()
    assert bar.value() == scrolled
    second = page.screen.page.drinks[1].buttons["Later"]
    second.setFocus()
    qtbot.keyClick(second, Qt.Key.Key_Space)
    page.settle(qtbot)
    moved = page.screen.page.drinks[2]
    assert "Later" not in moved.buttons and moved.buttons["Batch…"].hasFocus()


def test_the_keyboard_stays_on_the_page_where_its_button_went(page, qtbot):
    choose(page, qtbot, "Summer Excursion")
    buttons = page.screen.page.findChildren(QPushButton)
    use = next(each for each in buttons if each.text().startswith("Use blanco"))
    use.setFocus()
    qtbot.keyClick(use, Qt.Key.Key_Space)
    page.settle(qtbot)
    assert QApplication.focusWidget() is page.screen.detail.scrolled


def test_only_the_left_button_ticks(page, qtbot):
    choose(page, qtbot, "Summer Excursion")
    box = next(iter(page.screen.page.ticks.values()))
    qtbot.mouseClick(box.parentWidget(), Qt.MouseButton.RightButton)
    assert not box.isChecked()


def test_a_step_is_made_from_the_list(page, qtbot):
    choose(page, qtbot, "Summer Excursion")
    (button,) = [
        each
        for each in page.screen.page.findChildren(QPushButton)
        if each.accessibleName() == "Make lime juice…"
    ]
    qtbot.mouseClick(button, Qt.MouseButton.LeftButton)
    dialog = page.screen.dialog
    assert dialog.what.text() == "Lime juice"
    assert dialog.amount.currentText().startswith("153")
    dialog.close()


def test_the_menu_opens_below_its_button_and_marks_what_is_poured(page, qtbot):
    shoot = choose(page, qtbot, "Summer Excursion")
    button = page.screen.page.drinks[0].buttons["Pour otherwise…"]
    page.screen.detail.scrolled.ensureWidgetVisible(button)
    button.setFocus()
    qtbot.keyClick(button, Qt.Key.Key_Space)
    menu = page.screen.dialog
    assert menu.isVisible()
    assert menu.pos() == button.mapToGlobal(button.rect().bottomLeft())
    menu.close()
    rum = page.screen.menu_for(shoot, 0).actions()[0].menu().actions()
    assert [each.text() for each in rum if each.isChecked()] == ["As written"]
    wanted = next(each for each in rum if each.text().startswith("Marrow Hill"))
    text = wanted.text()
    wanted.trigger()
    page.settle(qtbot)
    again = page.screen.menu_for(page.screen.current, 0).actions()[0].menu().actions()
    assert [each.text() for each in again if each.isChecked()] == [text]
    (maraschino,) = [
        each.menu()
        for each in page.screen.menu_for(page.screen.current, 0).actions()
        if each.text() == "Maraschino liqueur"
    ]
    assert maraschino.actions()[-1].text() == "No bottle here fits"
    assert not maraschino.actions()[-1].isEnabled()


def test_the_log_of_a_shoot_ahead_is_refused_by_its_key_too(page, qtbot):
    """Before anything is typed that could not be written."""
    choose(page, qtbot, "Summer Excursion")
    (log,) = [each for each in page.screen.bar_actions if each.text() == "Log shoot…"]
    log.trigger()
    assert "Filmed today" in [each.text() for each in page.screen.banner.findChildren(QPushButton)]
    assert page.screen.dialog is None
