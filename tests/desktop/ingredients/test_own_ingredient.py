"""Own ingredients by keyboard in the real window: wherever a name is unknown, from nothing."""

from __future__ import annotations

import pytest
from PySide6.QtCore import Qt
from PySide6.QtGui import QGuiApplication
from PySide6.QtWidgets import QAbstractButton, QApplication, QLineEdit

from barkeep.application.imports import NamedText
from barkeep.desktop.importing.bottles import ImportDialog
from barkeep.desktop.importing.files import import_files, import_texts
from barkeep.desktop.importing.specs import ImportSpecsDialog
from barkeep.desktop.ingredients.own_ingredient import OwnIngredientDialog
from barkeep.desktop.shell.main_window import WindowHooks
from barkeep.domain.ingredients.relations import StandIn
from barkeep.domain.ingredients.tree import Ingredient
from tests.desktop.audit import cut_off, focusable_without_name
from tests.desktop.pages import settle, tabbed
from tests.walked import walked

pytestmark = [
    pytest.mark.qt_log_ignore("^This plugin does not support", extend=True),
    pytest.mark.left_at("bottles"),
]

Keys = Qt.Key
CTRL, ALT = Qt.KeyboardModifier.ControlModifier, Qt.KeyboardModifier.AltModifier
SHIFT = Qt.KeyboardModifier.ShiftModifier
LANTERN = "Lantern\n60 ml gin\n15 ml smoked maple syrup\n\nStir.\n"


@pytest.fixture
def window(open_window, qtbot):
    """The whole window over the sample bar, with its ways to take documents in."""
    return open_window(WindowHooks(import_files=import_files, import_texts=import_texts))


def shown(window, page, qtbot):
    window.show_page(page)
    settle(window, qtbot)
    return window.current


def key(qtbot, pressed, held=Qt.KeyboardModifier.NoModifier):
    """A key where the focus is; a button pressed by its letter stays down for a moment."""
    qtbot.keyClick(QApplication.focusWidget(), pressed, held)
    qtbot.waitUntil(
        lambda: (
            not any(
                each.isDown()
                for top in QApplication.topLevelWidgets()
                for each in top.findChildren(QAbstractButton)
            )
        )
    )


def write(qtbot, words):
    qtbot.keyClicks(QApplication.focusWidget(), words)


def form_over(parent, qtbot) -> OwnIngredientDialog:
    """The form that has just been opened, with the cursor in one of its fields."""
    qtbot.waitUntil(lambda: parent.findChild(OwnIngredientDialog) is not None)
    form = parent.findChild(OwnIngredientDialog)
    qtbot.waitUntil(
        lambda: (
            isinstance(QApplication.focusWidget(), QLineEdit)
            and form.isAncestorOf(QApplication.focusWidget())
        )
    )
    return form


def activate(window, qtbot):
    """As a window manager does once a dialog is gone."""
    with qtbot.waitActive(window):
        window.show()
        window.activateWindow()


def close_popups():
    while QApplication.activePopupWidget() is not None:
        QApplication.activePopupWidget().hide()


def verdict(window, qtbot, name: str) -> str:
    """What the Tonight page says of a drink, in the words the user reads."""
    page = shown(window, "tonight", qtbot)
    model = page.table
    rows = range(model.rowCount())
    read = {model.index(row, 0).data(): model.index(row, 1).data() for row in rows}
    return read[name]


def write_lantern(window, qtbot):
    """The editor with a spec of which one ingredient is unknown."""
    page = shown(window, "specs", qtbot)
    QGuiApplication.clipboard().setText(LANTERN)
    page.view.setFocus()
    key(qtbot, Keys.Key_N, CTRL)
    qtbot.waitUntil(lambda: page.editor is not None and page.editor.text.hasFocus())
    key(qtbot, Keys.Key_V, CTRL)
    page.editor.read()
    return page.editor


def test_from_nothing_to_ready_and_back(window, bar, qtbot):
    editor = write_lantern(window, qtbot)
    assert [each.unknown for each in editor.seen.faults] == ["smoked maple syrup"]
    said = [each.text() for each in editor.panel.teach_buttons]
    assert said == ["New ingredient…", "Another name…"]

    # Taught where it was met: the name and the likely kind are ready, Enter is enough.
    key(qtbot, Keys.Key_I, CTRL)
    form = form_over(editor, qtbot)
    assert form.edits["name"].text() == "smoked maple syrup"
    assert form.edits["kind"].text() == "Maple syrup"
    key(qtbot, Keys.Key_Return)
    qtbot.waitUntil(lambda: not editor.seen.faults)
    assert bar.undo_label == "Add ingredient smoked maple syrup"
    activate(editor, qtbot)
    editor.text.setFocus()
    key(qtbot, Keys.Key_S, CTRL)
    assert [line.ingredient for line in bar.specs.get("Lantern").lines] == [
        "gin",
        "smoked-maple-syrup",
    ]
    settle(window, qtbot)
    activate(window, qtbot)
    assert verdict(window, qtbot, "Lantern") != "Ready"

    # A bottle of it.
    page = shown(window, "bottles", qtbot)
    page.add_bottle()
    dialog = page.dialog
    qtbot.waitUntil(lambda: dialog.edits["name"].hasFocus())
    write(qtbot, "Hearth")
    key(qtbot, Keys.Key_I, ALT)
    write(qtbot, "smoked maple syrup")
    close_popups()
    key(qtbot, Keys.Key_S, ALT)
    write(qtbot, "500")
    key(qtbot, Keys.Key_Return)
    qtbot.waitUntil(lambda: any(each.product.name == "Hearth" for each in bar.snapshot.bottles))
    settle(window, qtbot)
    activate(window, qtbot)
    assert verdict(window, qtbot, "Lantern") == "Ready"

    # And back, a step each.
    for _ in range(3):
        bar.undo()
    assert "smoked-maple-syrup" not in bar.snapshot.knowledge.tree
    assert bar.redo().label == "Add ingredient smoked maple syrup"


def test_another_name_is_asked_for_once(window, bar, qtbot):
    editor = write_lantern(window, qtbot)
    editor.text.selectAll()
    write(qtbot, "Lantern")
    key(qtbot, Keys.Key_Return)
    write(qtbot, "60 ml snowbank spirit")
    close_popups()
    editor.read()
    key(qtbot, Keys.Key_I, CTRL | SHIFT)
    form = form_over(editor, qtbot)
    assert form.edits["name"].text() == "snowbank spirit"
    assert form.fields["strength"].widget.isHidden() or not form.edits["strength"].isVisible()
    QApplication.focusWidget().selectAll()
    write(qtbot, "vodka")
    close_popups()
    key(qtbot, Keys.Key_Return)
    qtbot.waitUntil(lambda: not editor.seen.faults)
    assert "snowbank spirit" in bar.snapshot.knowledge.tree["vodka"].aliases
    assert bar.undo_label == "Let Vodka be called snowbank spirit"
    (line,) = editor.seen.specs[0].lines
    assert line.read.line.ingredient == "vodka"


def test_the_button_in_the_panel_does_the_same(window, qtbot):
    editor = write_lantern(window, qtbot)
    editor.panel.teach_buttons[0].setFocus()
    key(qtbot, Keys.Key_Space)
    form = form_over(editor, qtbot)
    assert form.windowTitle() == "New ingredient"
    form.reject()
    assert editor.seen.faults


def test_a_bottle_of_something_unknown(window, bar, qtbot):
    page = shown(window, "bottles", qtbot)
    page.add_bottle()
    dialog = page.dialog
    qtbot.waitUntil(lambda: dialog.edits["name"].hasFocus())
    write(qtbot, "Box")
    key(qtbot, Keys.Key_I, ALT)
    write(qtbot, "quince gum")
    close_popups()
    key(qtbot, Keys.Key_Return)
    assert "There is no ingredient called “quince gum”" in dialog.problem("ingredient")
    key(qtbot, Keys.Key_W, ALT)
    form = form_over(dialog, qtbot)
    assert form.edits["name"].text() == "quince gum" and form.edits["kind"].hasFocus()
    write(qtbot, "syrup")
    close_popups()
    key(qtbot, Keys.Key_Return)
    qtbot.waitUntil(lambda: not dialog.problem("ingredient"))
    assert dialog.edits["name"].text() == "Box"
    assert dialog.edits["ingredient"].text() == "quince gum"
    activate(dialog, qtbot)
    dialog.edits["size"].setFocus()
    write(qtbot, "500")
    key(qtbot, Keys.Key_Return)
    settle(window, qtbot)
    assert [
        each.product.ingredient for each in bar.snapshot.bottles if each.product.name == "Box"
    ] == ["quince-gum"]


def test_an_import_of_specs_is_read_again_with_what_was_decided(window, bar, qtbot):
    spec = bar.snapshot.specs[0]
    text = f"{LANTERN}---\n{spec.name}\n60 ml gin\n\nStir.\n"
    import_texts(window.context, [NamedText("drinks.txt", text)], window)
    dialog = window.findChild(ImportSpecsDialog)
    settle(window, qtbot)
    dialog.view.selectRow(1)
    dialog.details.chips.choose("add")
    dialog.details.name_field.clear()
    qtbot.keyClicks(dialog.details.name_field, "Theirs")
    dialog.view.selectRow(0)
    dialog.view.setFocus()
    key(qtbot, Keys.Key_I, CTRL)
    form_over(dialog, qtbot)
    key(qtbot, Keys.Key_Return)
    settle(window, qtbot)
    assert [(row.group, row.outcome) for row in dialog.shown.shown_rows()] == [
        ("differing", "Comes in as Theirs"),
        ("new", "Comes in"),
    ]
    assert dialog.shown.row(dialog.view.currentIndex()).name == "Lantern"
    dialog.import_button.click()
    qtbot.waitUntil(lambda: {"Lantern", "Theirs"} <= {each.name for each in bar.snapshot.specs})


def test_a_list_of_bottles_is_read_again(window, bar, qtbot):
    rows = "product,ingredient,size\nBox,smoked maple syrup,500 ml\nLamp,snowbank,700 ml\n"
    import_texts(window.context, [NamedText("bottles.csv", rows)], window)
    dialog = window.findChild(ImportDialog)
    qtbot.waitUntil(lambda: QApplication.activeWindow() is dialog)
    qtbot.waitUntil(lambda: len(dialog.table.rows) == 2)
    dialog.view.setFocus()
    key(qtbot, Keys.Key_I, CTRL)
    form_over(dialog, qtbot)
    key(qtbot, Keys.Key_Return)
    to_repair = lambda: [each for each in dialog.table.rows if each.group == "repair"]  # noqa: E731
    qtbot.waitUntil(lambda: len(to_repair()) == 1)
    activate(dialog, qtbot)
    dialog.details.form.teach_buttons[1].setFocus()
    key(qtbot, Keys.Key_Space)
    form = form_over(dialog, qtbot)
    assert form.edits["name"].text() == "snowbank"
    write(qtbot, "vodka")
    close_popups()
    key(qtbot, Keys.Key_Return)
    qtbot.waitUntil(lambda: not to_repair())
    assert dialog.import_button.text() == "&Import 2 bottles"
    with qtbot.waitSignal(dialog.accepted):
        dialog.import_button.click()
    found = {each.product.name: each.product.ingredient for each in bar.snapshot.bottles}
    assert (found["Box"], found["Lamp"]) == ("smoked-maple-syrup", "vodka")


def test_the_stand_ins_page_adds_finds_changes_and_removes_them(window, bar, qtbot):
    page = shown(window, "stand-ins", qtbot)
    page.search.set_text("rail dust syrup")
    page.view.setFocus()
    key(qtbot, Keys.Key_N, CTRL | SHIFT)
    form = form_over(page, qtbot)
    assert form.edits["name"].text() == "rail dust syrup"
    key(qtbot, Keys.Key_T, ALT)
    write(qtbot, "12")
    key(qtbot, Keys.Key_S, ALT)
    row = form.stand_ins.rows[0]
    write(qtbot, "honey syrup")
    close_popups()
    row.closeness.setFocus()
    write(qtbot, "0,7")
    key(qtbot, Keys.Key_L, ALT)
    key(qtbot, Keys.Key_Space)
    form.edits["other names"].setFocus()
    write(qtbot, "dusty, rail syrup")
    key(qtbot, Keys.Key_Return)
    settle(window, qtbot)
    made = bar.snapshot.knowledge.tree["rail-dust-syrup"]
    assert (made.abv_percent, made.allergens) == (12.0, ("milk",))
    assert made.aliases == ("dusty", "rail syrup")
    said = [(each.offered, each.closeness) for each in bar.knowledge.own_stand_ins_of(made.key)]
    assert said == [("honey-syrup", 0.7)]
    assert page.current.key == "rail-dust-syrup" and page.current.family.endswith("· own")

    # Found by being the owner's own, and changed.
    activate(window, qtbot)
    page.search.set_text("own rail")
    page.focus_list()
    key(qtbot, Keys.Key_F2)
    form = form_over(page, qtbot)
    assert form.windowTitle() == "Change rail dust syrup"
    assert form.stand_ins.rows[0].name.text() == "Honey syrup"
    form.edits["strength"].selectAll()
    form.edits["strength"].setFocus()
    write(qtbot, "20")
    key(qtbot, Keys.Key_Return)
    settle(window, qtbot)
    assert bar.snapshot.knowledge.tree["rail-dust-syrup"].abv_percent == 20.0
    assert bar.undo_label == "Change ingredient rail dust syrup"

    # Removed, and brought back in one step.
    activate(window, qtbot)
    page.focus_list()
    key(qtbot, Keys.Key_Delete, SHIFT)
    settle(window, qtbot)
    assert "rail-dust-syrup" not in bar.snapshot.knowledge.tree
    bar.undo()
    assert len(bar.knowledge.own_stand_ins_of("rail-dust-syrup")) == 1


def test_what_is_in_use_is_not_removed_and_what_uses_it_is_said(window, bar, qtbot):
    bar.knowledge.add_ingredient(Ingredient("fog-syrup", "Fog syrup", ("syrup",)))
    bar.knowledge.add_ingredient(Ingredient("thick-fog", "Thick fog syrup", ("fog-syrup",)))
    page = shown(window, "stand-ins", qtbot)
    page.show_thing("fog-syrup")
    page.focus_list()
    key(qtbot, Keys.Key_Delete, SHIFT)
    assert page.banner.text == (
        "Fog syrup cannot be removed: the kind Thick fog syrup still refers to it."
    )


@pytest.fixture
def form(window, bar, qtbot):
    """The form over the Stand-ins page, empty."""
    page = shown(window, "stand-ins", qtbot)
    page.view.setFocus()
    key(qtbot, Keys.Key_N, CTRL | SHIFT)
    return form_over(page, qtbot)


@walked(
    "fields, where, said",
    [
        ({"name": ""}, "name", "Write what it is called."),
        ({"name": "gin"}, "name", "There is already an ingredient called “gin”"),
        ({"name": "dash"}, "name", "such words say how much"),
        ({"name": "2 oz foo"}, "name", "a line would read an amount in it"),
        ({"kind": ""}, "kind", "Say what it is a kind of"),
        ({"kind": "quite unknown"}, "kind", "There is no ingredient called “quite unknown”"),
        ({"other names": "Fog, vodka"}, "other names", "already an ingredient called “vodka”"),
        ({"other names": "optional"}, "other names", "such words say how much"),
        ({"strength": "0.43"}, "strength", "write 43 % or 0.43 %"),
        ({"strength": "strong"}, "strength", "write % vol"),
        ({"sugar": "-1"}, "sugar", "it is 0 g/l or more"),
        ({"acid": "99999"}, "acid", "it is 0 to 1,700 g/l"),
        ({"keeps": "a while"}, "keeps", "it is a whole number of days"),
        ({"keeps": "99999"}, "keeps", "it is 0 to 36,500 days"),
    ],
)
def test_a_mistake_is_said_below_its_field(bar, form, fields, where, said):
    before = bar.undo_label
    for edit in form.edits.values():
        edit.clear()
    for name, text in ({"name": "Fog thing", "kind": "Gin"} | fields).items():
        form.edits[name].setText(text)
    form.accept_button.click()
    assert form.isVisible() and said in form.problem(where)
    assert bar.undo_label == before


@walked(
    "row, said",
    [
        ({"name": "quite unknown"}, "there is no ingredient of this name"),
        ({"name": "rum", "closeness": "5"}, "it is more than 0 and at most 1"),
        ({"name": "rum", "closeness": "near"}, "it is a number such as 0.8"),
        ({"name": "rum", "ratio": "0"}, "it is more than 0"),
        ({"closeness": "0.5"}, "say which ingredient"),
    ],
)
def test_a_mistake_in_a_stand_in_is_said_below_them(bar, form, row, said):
    form.edits["name"].setText("Fog thing")
    form.edits["kind"].setText("Gin")
    for name in ("name", "closeness", "ratio"):
        getattr(form.stand_ins.rows[0], name).setText(row.get(name, ""))
    form.accept_button.click()
    assert form.isVisible() and said in form.problem("stand-ins")
    assert "fog-thing" not in bar.snapshot.knowledge.tree


def test_a_stand_in_is_taken_away_and_one_with_a_scope_keeps_it(window, bar, qtbot):
    bar.knowledge.add_ingredient(
        Ingredient("fog-syrup", "Fog syrup", ("syrup",)),
        [
            StandIn("fog-syrup", "honey-syrup", 0.5, 1.0, "a", ("shaken",)),
            StandIn("agave-syrup", "fog-syrup", 0.6, 1.5, "b"),
        ],
    )
    page = shown(window, "stand-ins", qtbot)
    page.show_thing("fog-syrup")
    page.focus_list()
    key(qtbot, Keys.Key_F2)
    form = form_over(page, qtbot)
    shown_rows = {each.name.text(): each for each in form.stand_ins.rows}
    assert shown_rows["Agave syrup"].way.currentText() == "It instead of"
    shown_rows["Agave syrup"].away.click()
    form.submit()
    (left,) = bar.knowledge.own_stand_ins_of("fog-syrup")
    assert left == StandIn("fog-syrup", "honey-syrup", 0.5, 1.0, "a", ("shaken",), own=True)


def test_tab_goes_from_the_top_to_the_buttons(form, qtbot):
    form.edits["name"].setText("Fog thing")
    form.edits["kind"].setText("Gin")
    form.stand_ins.rows[0].name.setText("Vodka")
    stops = tabbed(form, form.ways.chip("new"), qtbot)
    names = [each.accessibleName() for each in stops]
    first = ["It is: Something of its own", "Name", "A kind of", "Kept in", "Other names"]
    assert names[:5] == first
    one, two = names.index("Stand-in 1: which way"), names.index("Stand-in 2: which way")
    assert names[one : one + 6] == [
        "Stand-in 1: which way",
        "Stand-in 1: ingredient",
        "Stand-in 1: closeness",
        "Stand-in 1: ratio",
        "Stand-in 1: why",
        "Take stand-in 1 away",
    ]
    assert two == one + 6
    assert names[-2:] == ["Cancel", "Add ingredient"]


def test_what_its_kind_carries_is_said(form):
    form.edits["kind"].setText("Orgeat")
    texts = [each.text() for each in form.allergens.findChildren(type(form.heading))]
    assert any("Orgeat carries tree nuts" in each for each in texts)


def test_the_form_has_names_and_cuts_nothing_off(form, qtbot):
    assert not focusable_without_name(form)
    assert not cut_off(form)
    form.ways.choose("name")
    assert not form.allergens.isVisible()
    assert form.accept_button.text() == "Add the name"
    assert not cut_off(form)
