"""Every action and button of the real window does something that can be seen, or says why not.

Over an empty bar and over the sample bar; dialogs are closed as they come.
"""

from __future__ import annotations

from collections.abc import Iterator
from functools import partial

import pytest
from PySide6.QtGui import QAction, QImage
from PySide6.QtWidgets import (
    QAbstractButton,
    QApplication,
    QDialog,
    QFileDialog,
    QPushButton,
    QToolButton,
    QWhatsThis,
    QWidget,
)

from barkeep.desktop.importing.files import import_files, import_texts
from barkeep.desktop.screens.window_state import WindowState
from barkeep.desktop.shell.main_window import MainWindow, WindowHooks
from barkeep.desktop.shell.navigation import PAGES, PARTS
from barkeep.desktop.shell.settings import edit_settings
from tests.desktop.shell.test_main_window import settle
from tests.walked import walked

pytestmark = pytest.mark.qt_log_ignore("^This plugin does not support", extend=True)


KEYS = [page.key for page in PAGES]
PART_KEYS = [part.key for part in PARTS]

CLOSES_THE_WINDOW = ("&Quit",)


@pytest.fixture(autouse=True)
def a_cursor_that_does_not_blink(qapp):
    time = qapp.cursorFlashTime()
    qapp.setCursorFlashTime(0)
    yield
    qapp.setCursorFlashTime(time)


@pytest.fixture
def asked(monkeypatch):
    """What was asked of the user by the platform's own dialogs, each left without an answer."""
    asked: list[str] = []

    def file(_parent, title, *_args, **_named):
        asked.append(title)
        return "", ""

    def files(_parent, title, *_args, **_named):
        asked.append(title)
        return [], ""

    for name, answer in (
        ("getOpenFileName", file),
        ("getSaveFileName", file),
        ("getOpenFileNames", files),
    ):
        monkeypatch.setattr(QFileDialog, name, staticmethod(answer))
    monkeypatch.setattr(QWhatsThis, "showText", lambda _at, text, *_more: asked.append(text))
    return asked


@pytest.fixture(params=["empty", "sample"])
def window(request, theme, qtbot, tmp_path):
    over = request.getfixturevalue("empty_bar" if request.param == "empty" else "bar")
    hooks = WindowHooks(
        lambda _path: None,
        import_files,
        edit_settings,
        import_texts,
        new_bar=lambda _path: None,
    )
    shown = MainWindow(over, WindowState(tmp_path / "window.ini"), theme, hooks)
    shown.resize(1024, 640)
    qtbot.addWidget(shown)
    with qtbot.waitActive(shown):
        shown.show()
        shown.activateWindow()
    settle(shown, qtbot)
    yield shown
    shown.close_unasked()


def others(window) -> list[QWidget]:
    """Dialogs, menus and sheets that stand over the window."""
    return [each for each in QApplication.topLevelWidgets() if each.isVisible() and each != window]


def known(window, asked) -> tuple[object, ...]:
    """What a user could see to have changed without looking at the picture of the window."""
    focus = QApplication.focusWidget()
    over = [type(each) for each in others(window)]
    ticks = [each.isChecked() for each in window.actions_.all]
    return window.current.key, focus, ticks, over, len(asked)


def put_away(window) -> None:
    """Close what came up."""
    for each in others(window):
        each.close()
    window.toast.dismiss()
    window.activateWindow()


def picture_of(window, qtbot) -> QImage:
    """The window at rest: with its answers, and what is worked out of the rows that are painted."""
    while True:
        settle(window, qtbot)
        picture = window.grab().toImage()
        if not window.background.is_busy:
            return picture


def begin(window, key, qtbot) -> None:
    """The page with nothing before it and nothing done to its list."""
    window.show_page(key)
    settle(window, qtbot)
    page = window.current
    if key == "bottles":
        page.leave_count()
    page.clear_filters()
    page.banner.clear()
    page.focus_list()
    put_away(window)


def shows(window, qtbot, asked, act) -> bool:
    """Whether a user could see that anything was done; pictures take long, and are taken last."""
    picture, before = picture_of(window, qtbot), known(window, asked)
    act()
    settle(window, qtbot)
    shown = known(window, asked) != before or picture_of(window, qtbot) != picture
    put_away(window)
    return shown


def explained(thing) -> bool:
    """Whether a thing that cannot be done says why in its tooltip."""
    plain = thing.text().replace("&", "").split("\t")[0].rstrip("…")
    return bool(thing.toolTip()) and not thing.toolTip().startswith(plain)


def idle(thing) -> bool:
    """Whether it is one of several choices, and chosen already."""
    group = thing.actionGroup() if isinstance(thing, QAction) else thing.group()
    exclusive = group is not None or getattr(thing, "autoExclusive", bool)()
    return thing.isCheckable() and thing.isChecked() and exclusive


@walked("key", KEYS)
def test_every_action_of_the_menus_shows_or_says_why_not(window, key, qtbot, asked):
    assert silent_actions(window, key, qtbot, asked) == []


def silent_actions(window, key, qtbot, asked) -> list[str]:
    begin(window, key, qtbot)
    own = window.current.bar_actions
    # The window's own actions are the same on every page: once is enough.
    actions = [*own, *(window.actions_.all if key == KEYS[0] else ())]
    silent = []
    for action in actions:
        if action.isSeparator() or not action.isVisible() or action.text() in CLOSES_THE_WINDOW:
            continue
        begin(window, key, qtbot)
        if not action.isEnabled():
            if not explained(action):
                silent.append(f"{action.text()} is disabled and does not say why")
        elif not idle(action) and not shows(window, qtbot, asked, action.trigger):
            silent.append(f"{action.text()} does nothing that shows")
    return silent


@pytest.mark.parametrize("window", ["sample"], indirect=True)
def test_no_button_or_action_of_a_dialog_of_the_menus_is_deaf(window, qtbot, asked):
    deaf: dict[str, None] = {}
    opened: set[str] = set()
    for key in (*KEYS, *PART_KEYS):
        begin(window, key, qtbot)
        for action in (*window.current.bar_actions, *(window.actions_.all if not opened else ())):
            if not opens(action):
                continue
            action.trigger()
            for dialog in filter(lambda each: isinstance(each, QDialog), others(window)):
                opened.add(type(dialog).__name__)
                deaf |= dict.fromkeys(
                    f"{type(dialog).__name__}: {each}" for each in unheard(dialog)
                )
            begin(window, key, qtbot)
    assert len(opened) >= 20, opened
    assert list(deaf) == []


def opens(action) -> bool:
    """Whether it is given, and asks for something first."""
    return action.isVisible() and action.isEnabled() and action.text().split("\t")[0].endswith("…")


def unheard(dialog) -> Iterator[str]:
    """The buttons and actions of a dialog that nobody hears."""
    of_actions = {each for each in dialog.findChildren(QToolButton) if each.defaultAction()}
    for each in {*dialog.findChildren(QPushButton), *dialog.findChildren(QToolButton)} - of_actions:
        sent = ("2clicked(bool)", "2toggled(bool)", "2clicked()", "2triggered(QAction*)")
        if each.menu() is None and each.group() is None and not any(map(each.receivers, sent)):
            yield each.text() or each.accessibleName() or each.objectName()
    for each in dialog.findChildren(QAction):
        sent = ("2triggered(bool)", "2triggered()", "2toggled(bool)")
        stands_alone = each.menu() is None and each.actionGroup() is None and not each.isSeparator()
        if stands_alone and not any(map(each.receivers, sent)):
            yield each.text()


def name_of(button) -> tuple[str, str, str]:
    return type(button).__name__, button.text(), button.accessibleName()


def buttons(window) -> list[QAbstractButton]:
    """The buttons of the shown page that can be seen, scrolled to or not."""
    page = window.current
    return [each for each in page.findChildren(QAbstractButton) if each.isVisibleTo(page)]


@walked("key", KEYS)
def test_every_button_shows_or_says_why_not(window, key, qtbot, asked):
    assert silent_buttons(window, key, qtbot, asked) == []


@pytest.mark.parametrize("window", ["sample"], indirect=True)
@walked("key", PART_KEYS)
def test_so_it_is_with_every_part_of_a_page(window, key, qtbot, asked):
    assert silent_actions(window, key, qtbot, asked) == []
    assert silent_buttons(window, key, qtbot, asked) == []


def silent_buttons(window, key, qtbot, asked) -> list[str]:
    begin(window, key, qtbot)
    assert not shows(window, qtbot, asked, lambda: None)  # what does nothing is seen to do nothing
    names = list(dict.fromkeys(map(name_of, buttons(window))))
    assert names
    silent = []
    for name in names:
        begin(window, key, qtbot)
        found = next((each for each in buttons(window) if name_of(each) == name), None)
        if found is None:
            continue  # what was done before took it away, such as a step that is done
        if not found.isEnabled():
            if not explained(found):
                silent.append(f"{name} is disabled and does not say why")
        elif not idle(found) and not shows(window, qtbot, asked, partial(press, found)):
            silent.append(f"{name} does nothing that shows")
    return silent


def press(button) -> None:
    """Click it; a menu of its own is opened without waiting for it."""
    area = button.window().current.detail.scrolled
    if area.isAncestorOf(button):
        area.ensureWidgetVisible(button)
    menu = button.menu() if isinstance(button, QPushButton) else None
    if menu is not None:
        menu.popup(button.mapToGlobal(button.rect().bottomLeft()))
    else:
        button.click()
