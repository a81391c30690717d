"""Names found while typing, by keyboard in the real window: half-typed, misspelt, unknown."""

from __future__ import annotations

import pytest
from PySide6.QtCore import Qt
from PySide6.QtWidgets import QApplication

from barkeep.desktop.specs.lines import INGREDIENT
from tests.desktop.pages import settle

pytestmark = [
    pytest.mark.qt_log_ignore("^This plugin does not support", extend=True),
    pytest.mark.left_at("bottles"),
]

Keys = Qt.Key
CTRL = Qt.KeyboardModifier.ControlModifier
SPEC = "Down Distant\n45 ml gin\n\nShake with ice.\n"


@pytest.fixture
def keyboard(qtbot):
    return Keyboard(qtbot)


class Keyboard:
    """Keys go where the window system sends them: to the list that is open, else to the focus."""

    def __init__(self, qtbot) -> None:
        self.bot = qtbot

    def press(self, key, held=Qt.KeyboardModifier.NoModifier) -> None:
        self.bot.keyClick(QApplication.activePopupWidget() or QApplication.focusWidget(), key, held)

    def type(self, words: str) -> None:
        for letter in words:
            self.bot.keyClicks(
                QApplication.activePopupWidget() or QApplication.focusWidget(), letter
            )

    def write_over(self, words: str) -> None:
        self.press(Keys.Key_A, CTRL)
        self.type(words)


def offered(field) -> list[str]:
    """What a reader of the list is told, row by row; nothing where it is closed."""
    names = field.completer().list
    if not names.isVisible():
        return []
    role = Qt.ItemDataRole.AccessibleTextRole
    rows = range(names.model().rowCount())
    return [names.model().index(row, 0).data(role) for row in rows]


@pytest.fixture
def ingredient(window, qtbot, keyboard):
    """The ingredient field of a new bottle."""
    window.show_page("bottles")
    settle(window, qtbot)
    screen = window.current
    screen.view.setFocus()
    keyboard.press(Keys.Key_N, CTRL)
    qtbot.waitUntil(lambda: screen.dialog is not None and screen.dialog.edits["name"].hasFocus())
    field = screen.dialog.edits["ingredient"]
    while QApplication.focusWidget() is not field:
        keyboard.press(Keys.Key_Tab)
    yield field
    while screen.dialog is not None and screen.dialog.isVisible():
        keyboard.press(Keys.Key_Escape)


def test_the_first_is_right_and_enter_takes_it(ingredient, keyboard):
    keyboard.type("sweet v")
    assert offered(ingredient)[0] == "Sweet vermouth, vermouth, in the bar"
    assert ingredient.text() == "sweet v"
    keyboard.press(Keys.Key_Return)
    assert ingredient.text() == "Sweet vermouth" and offered(ingredient) == []


def test_arrow_keys_walk_and_what_was_typed_stays_until_one_is_taken(ingredient, keyboard):
    keyboard.type("gin")
    assert offered(ingredient)[0] == "Gin, juniper spirit, in the bar"
    second = offered(ingredient)[1].split(",")[0]
    assert second.endswith("gin")
    keyboard.press(Keys.Key_Down)
    keyboard.press(Keys.Key_Down)
    assert ingredient.text() == "gin"
    keyboard.press(Keys.Key_Up)
    keyboard.press(Keys.Key_PageDown)
    keyboard.press(Keys.Key_PageUp)
    keyboard.press(Keys.Key_Down)
    keyboard.press(Keys.Key_Return)
    assert ingredient.text() == second


def test_escape_closes_the_list_alone_and_keeps_what_was_typed(window, ingredient, keyboard):
    keyboard.type("lim")
    keyboard.press(Keys.Key_Down)
    keyboard.press(Keys.Key_Down)
    assert offered(ingredient)
    keyboard.press(Keys.Key_Escape)
    assert offered(ingredient) == [] and ingredient.text() == "lim"
    assert window.current.dialog.isVisible()
    keyboard.type("e")
    assert ingredient.text() == "lime"
    assert [each.split(",")[0] for each in offered(ingredient)[:2]] == ["Lime", "Lime juice"]


def test_a_guess_is_taken_only_by_going_to_it(ingredient, keyboard):
    keyboard.type("vermuht")
    assert offered(ingredient)[0] == "Vermouth, perhaps, aromatised wine, in the bar"
    keyboard.press(Keys.Key_Return)
    assert ingredient.text() == "vermuht" and offered(ingredient) == []
    keyboard.write_over("gni")
    assert offered(ingredient)[0].startswith("Gin, ")
    keyboard.press(Keys.Key_Down)
    keyboard.press(Keys.Key_Return)
    assert ingredient.text() == "Gin"


def test_tab_goes_on_and_takes_only_what_was_come_to(window, ingredient, keyboard):
    keyboard.type("bourb")
    keyboard.press(Keys.Key_Tab)
    assert ingredient.text() == "bourb" and not ingredient.hasFocus()
    keyboard.press(Keys.Key_Backtab, Qt.KeyboardModifier.ShiftModifier)
    assert ingredient.hasFocus()
    keyboard.write_over("bourb")
    keyboard.press(Keys.Key_Down)
    keyboard.press(Keys.Key_Tab)
    assert ingredient.text() == "Bourbon" and not ingredient.hasFocus()


def test_what_is_like_nothing_is_offered_nothing_and_said(window, ingredient, keyboard):
    keyboard.type("gravel")
    assert offered(ingredient) == []
    dialog = window.current.dialog
    dialog.accept_button.click()
    assert dialog.problem("ingredient") == "There is no ingredient called “gravel”."
    dialog.edits["ingredient"].setFocus()
    keyboard.write_over("bourban")
    keyboard.press(Keys.Key_Escape)
    dialog.accept_button.click()
    assert "The nearest are Bourbon, Wheated bourbon" in dialog.problem("ingredient")


def test_a_word_only_understood_finds_its_kind_and_is_not_shown(bar, ingredient, keyboard):
    tree = bar.snapshot.knowledge.tree
    kind = next(each for each in tree.ingredients.values() if each.printed)
    keyboard.type(kind.printed[0][:-1])
    rows = offered(ingredient)
    assert rows[0].startswith(kind.name)
    assert not any(kind.printed[0] in each for each in rows)
    keyboard.press(Keys.Key_Down)
    keyboard.press(Keys.Key_Return)
    assert ingredient.text() == kind.name


def test_a_new_products_name_is_never_changed_by_enter(window, ingredient, keyboard):
    name = window.current.dialog.edits["name"]
    name.setFocus()
    title = window.bar.snapshot.products[0].title
    keyboard.type(title.split()[0])
    assert offered(name)
    keyboard.press(Keys.Key_Return)
    assert name.text() == title.split()[0]


@pytest.fixture
def line(window, qtbot, keyboard):
    """The ingredient field of the first line of a new spec."""
    window.show_page("specs")
    settle(window, qtbot)
    screen = window.current
    screen.view.setFocus()
    keyboard.press(Keys.Key_N, CTRL)
    qtbot.waitUntil(lambda: screen.editor is not None and screen.editor.text.hasFocus())
    editor = screen.editor
    editor.text.setPlainText(SPEC)
    editor.read()
    while QApplication.focusWidget() is not editor.views.chip("text"):
        keyboard.press(Keys.Key_Backtab, Qt.KeyboardModifier.ShiftModifier)
    keyboard.press(Keys.Key_Right)
    while QApplication.focusWidget() is not editor.lines.view:
        keyboard.press(Keys.Key_Tab)
    editor.lines.view.setCurrentIndex(editor.lines.table.index(0, INGREDIENT))
    keyboard.press(Keys.Key_F2)
    keyboard.press(Keys.Key_A, CTRL)
    yield QApplication.focusWidget()
    editor.text.setPlainText("")


def written(window) -> str:
    return window.current.editor.text.toPlainText().splitlines()[1]


def test_a_line_takes_the_first_and_an_alias_typed_in_full_stays_as_written(
    window, line, keyboard, qtbot
):
    keyboard.type("white r")
    assert offered(line)[0].startswith("White rum, rum")
    keyboard.press(Keys.Key_Return)
    qtbot.waitUntil(lambda: written(window) == "45 ml white rum")
    editor = window.current.editor
    lines = editor.lines
    with qtbot.waitActive(editor):
        editor.activateWindow()  # as a window manager leaves it once a list has closed
    lines.view.setFocus()
    lines.view.setCurrentIndex(lines.table.index(0, INGREDIENT))
    keyboard.press(Keys.Key_F2)
    keyboard.write_over("red vermouth")
    assert offered(QApplication.focusWidget())[0].startswith("red vermouth (Sweet vermouth)")
    keyboard.press(Keys.Key_Return)
    qtbot.waitUntil(lambda: written(window) == "45 ml red vermouth")


def test_a_line_offers_the_shelf_beside_the_kinds(window, bar, line, keyboard, qtbot):
    product = next(each.product for each in bar.snapshot.bottles if each.product.unit == "ml")
    keyboard.type(product.title[:-1])
    assert offered(line)[0].startswith(f"{product.title}: ")
    keyboard.press(Keys.Key_Return)
    qtbot.waitUntil(lambda: product.title in written(window))


def test_the_text_of_a_spec_offers_the_likeliest_too(window, qtbot, keyboard):
    window.show_page("specs")
    settle(window, qtbot)
    screen = window.current
    screen.view.setFocus()
    keyboard.press(Keys.Key_N, CTRL)
    qtbot.waitUntil(lambda: screen.editor is not None and screen.editor.text.hasFocus())
    text = screen.editor.text
    text.setPlainText("Down Distant\n20 ml lim")
    text.go_to(2, 10)
    keyboard.type("e j")
    assert text.offers[0] == "lime juice"
    keyboard.press(Keys.Key_Down)
    keyboard.press(Keys.Key_Return)
    assert text.toPlainText() == "Down Distant\n20 ml lime juice"
    text.setPlainText("")


def test_what_begins_so_comes_first_then_words_that_do_then_what_holds_it(
    ingredient, keyboard, subtests
):
    for typed, in_order in (
        ("lem", ("Lemon, ", "Lemongrass, ")),
        ("berry", ("Berry shrub, ", "Juniper berries, ", "Raspberry eau-de-vie, perhaps")),
        ("sec", ("Triple sec, ", "Prosecco, perhaps")),
        ("lernum", ("Falernum, perhaps", "Falernum syrup, perhaps")),
        ("monade", ("Sparkling lemonade, perhaps",)),
        ("vermuht", ("Vermouth, perhaps",)),
    ):
        with subtests.test(typed=typed):
            keyboard.write_over(typed)
            rows = offered(ingredient)
            places = [
                next(n for n, row in enumerate(rows) if row.startswith(each)) for each in in_order
            ]
            assert places == sorted(places) and places[0] == 0
            keyboard.press(Keys.Key_Escape)


def test_what_is_only_held_within_a_word_is_never_taken_by_enter_alone(ingredient, keyboard):
    keyboard.type("lernum")
    keyboard.press(Keys.Key_Return)
    assert ingredient.text() == "lernum"
    keyboard.write_over("lernum")
    keyboard.press(Keys.Key_Down)
    keyboard.press(Keys.Key_Return)
    assert ingredient.text() == "Falernum"


@pytest.fixture
def drink(window, qtbot, keyboard):
    """The field for a drink of a new shoot, and the names in its running order."""
    window.show_page("shoots")
    settle(window, qtbot)
    screen = window.current
    screen.view.setFocus()
    keyboard.press(Keys.Key_N, CTRL)
    qtbot.waitUntil(lambda: screen.dialog is not None and screen.dialog.isVisible())
    dialog = screen.dialog
    dialog.drink.setFocus()

    def order() -> list[str]:
        return [dialog.table.item(row, 0).text() for row in range(dialog.table.rowCount())]

    yield dialog.drink, order
    dialog.reject()


def test_a_drink_that_is_picked_is_in_the_running_order_without_a_second_enter(
    drink, keyboard, qtbot
):
    field, order = drink

    def go_back() -> None:
        """The dialog is the active window again, as a window manager leaves it."""
        if not field.window().isActiveWindow():
            with qtbot.waitActive(field.window()):
                field.window().activateWindow()
        field.setFocus()

    keyboard.type("manh")
    assert offered(field)[0] == "Manhattan"
    keyboard.press(Keys.Key_Return)
    qtbot.waitUntil(lambda: order() == ["Manhattan"])
    assert field.text() == ""
    go_back()
    keyboard.type("moj")
    names = field.completer().list
    row = names.visualRect(names.model().index(0, 0)).center()
    qtbot.mouseClick(names.viewport(), Qt.MouseButton.LeftButton, pos=row)
    qtbot.waitUntil(lambda: order() == ["Manhattan", "Mojito"])
    assert field.text() == ""
    go_back()
    keyboard.type("Gin Sour")
    keyboard.press(Keys.Key_Escape)
    go_back()
    keyboard.press(Keys.Key_Return)
    assert order() == ["Manhattan", "Mojito", "Gin Sour"]
    keyboard.type("daiq")
    keyboard.press(Keys.Key_Down)
    keyboard.press(Keys.Key_Tab)
    assert field.text() == "Daiquiri" and order()[-1] == "Gin Sour"


def test_an_ingredient_of_a_form_is_picked_and_the_form_stays(window, ingredient, keyboard, qtbot):
    dialog = window.current.dialog
    keyboard.type("sweet v")
    keyboard.press(Keys.Key_Return)
    qtbot.waitUntil(lambda: ingredient.text() == "Sweet vermouth")
    settle(window, qtbot)
    assert dialog.isVisible() and not any(each.problem.text() for each in dialog.fields.values())


def test_an_answer_that_is_picked_is_given_without_a_second_enter(window, keyboard, qtbot):
    window.go("bottle-list", None)
    settle(window, qtbot)
    page = window.current
    page.edit.setPlainText("Londn gin 70 cl\n")
    settle(window, qtbot)
    page.edit.setFocus()
    keyboard.press(Keys.Key_Return, CTRL)
    answer = page.question.edit
    assert len(page.found.asked) == 1 and answer.hasFocus()
    keyboard.write_over("old t")
    assert "Old Tom gin" in offered(answer)[0]
    keyboard.press(Keys.Key_Return)
    qtbot.waitUntil(lambda: not page.found.asked)
    assert [each.draft.ingredient for each in page.found.coming] == ["old-tom-gin"]
    page.edit.clear()
