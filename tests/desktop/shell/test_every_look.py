"""Nothing is cut off, hidden, unnamed or wider than its window, on any page and in any size.

All pages over two windows, one of them with twice as large letters and with long names; a few
dialogs, all that an action opens with `ENDURANCE=full`.
"""

from __future__ import annotations

from PySide6.QtCore import QRect, Qt
from PySide6.QtGui import QImage, QPainter
from PySide6.QtWidgets import QApplication, QDialog, QLabel, QMenu

from barkeep.desktop.look.sides import write
from barkeep.desktop.shell.navigation import PAGES, PARTS
from barkeep.domain.bottles.bottle import Label
from barkeep.domain.specs.riffs import riff_on
from tests.desktop.audit import faults_of
from tests.desktop.shell.test_every_action import asked  # noqa: F401 (a fixture)
from tests.desktop.shell.test_main_window import settle
from tests.how_much import EVERYTHING

SIZES = ((1024, 640), (1280, 800), *(((1920, 1080),) if EVERYTHING else ()))
KEYS = [page.key for page in (*PAGES, *PARTS)]
LONG = "The Very Long Night Train That Stops at Every Halt Between Tallowby and the Sea on Sundays"
DIALOGS = {
    "tonight": ("Settings", "Shopping list", "Backups", "Keyboard shortcuts"),
    "bottles": ("Add bottle", "Count bottle", "Change its label"),
    "specs": ("New spec", "Batch"),
    "shoots": ("Log shoot", "New shoot", "Variances"),
    "stand-ins": ("Add a stand-in",),
}
NOT_A_DIALOG = ("Quit", "On camera")
"""What ends the program or fills the whole screen."""


def faults_at_rest(root, qtbot, *, across: bool = False) -> list[str]:
    """What is still wrong once all is laid out: details are filled a frame after their row."""
    found: list[str] = []

    def none_left() -> bool:
        found[:] = faults_of(root, across=across)
        return not found

    for _ in range(20):
        if none_left():
            break
        qtbot.wait(25)
    return found


def faults_of_pages(window, qtbot, size, *, across: bool = False) -> list[str]:
    window.resize(*size)
    found = []
    for key in KEYS:
        window.show_page(key)
        settle(window, qtbot)
        faults = faults_at_rest(window, qtbot, across=across)
        found += [f"{size} {key}: {each}" for each in faults]
    return found


def faults_of_dialogs(window, qtbot, wanted) -> list[str]:
    found = []
    for key, words in wanted.items():
        for word in words:
            window.show_page(key)
            settle(window, qtbot)
            actions = [*window.current.bar_actions, *window.actions_.all]
            named = [each for each in actions if plain(each.text()).rstrip("…") == word]
            assert named, (key, word)
            named[0].trigger()
            settle(window, qtbot)
            for dialog in opened(window):
                faults = faults_at_rest(dialog, qtbot, across=True)
                found += [f"{key}, {word}: {each}" for each in faults]
                dialog.close()
            settle(window, qtbot)
    return found


def plain(text: str) -> str:
    return text.replace("&", "")


def opened(window) -> list[QDialog]:
    tops = [each for each in QApplication.topLevelWidgets() if each.isVisible()]
    return [each for each in tops if each is not window and not isinstance(each, QMenu)]


def all_dialogs(window, qtbot) -> dict[str, list[str]]:
    """Of each page all actions that are offered and may open something."""
    found: dict[str, list[str]] = {}
    for key in KEYS:
        window.show_page(key)
        settle(window, qtbot)
        own = [*window.current.bar_actions, *(window.actions_.all if key == KEYS[0] else ())]
        names = [plain(each.text()) for each in own if each.isEnabled()]
        found[key] = [
            name.rstrip("…")
            for name in names
            if name.endswith("…") and name.rstrip("…") not in NOT_A_DIALOG
        ]
    return found


def test_pages_and_dialogs_have_room_from_either_side(window, qtbot, qapp, asked):  # noqa: F811
    for size in SIZES:
        assert faults_of_pages(window, qtbot, size, across=size[0] >= 1280) == []
    wanted = all_dialogs(window, qtbot) if EVERYTHING else DIALOGS
    assert faults_of_dialogs(window, qtbot, wanted) == []
    qapp.setLayoutDirection(Qt.LayoutDirection.RightToLeft)
    try:
        assert faults_of_pages(window, qtbot, (1280, 800), across=True) == []
    finally:
        qapp.setLayoutDirection(Qt.LayoutDirection.LeftToRight)


def with_long_names(bar) -> None:
    """A spec and a bottle that are called more than there ever is room for."""
    bar.specs.add([riff_on(bar.specs.get("Request Stop"), LONG)])
    maker = "The Old Sidings and Branch Line Distilling Company"
    label = Label(LONG, maker, ingredient="london-dry-gin", size=700)
    bar.inventory.receive(bar.inventory.add_product(label).value.id)


def test_twice_as_large_letters_and_long_names_have_room(bar, theme, open_window, qtbot):
    with_long_names(bar)
    theme.choose_text_size("largest")
    window = open_window()
    for size in SIZES if EVERYTHING else SIZES[:1]:
        assert faults_of_pages(window, qtbot, size) == []
        assert window.size().toTuple() == size
    for page, thing in (("specs", LONG), ("bottles", bar.snapshot.bottles[-1].id)):
        window.go(page, thing)
        settle(window, qtbot)
        assert faults_at_rest(window, qtbot) == []
        assert LONG in [each.text() for each in window.current.detail.findChildren(QLabel)]


def test_what_is_painted_reads_as_it_is_written_on_either_side(qapp):
    """Numbers about a sign keep their order where the page runs from the right."""
    for direction in Qt.LayoutDirection.LeftToRight, Qt.LayoutDirection.RightToLeft:
        picture = QImage(200, 24, QImage.Format.Format_Grayscale8)
        picture.fill(Qt.GlobalColor.white)
        painter = QPainter(picture)
        painter.setLayoutDirection(direction)
        write(painter, QRect(0, 0, 200, 24), Qt.AlignmentFlag.AlignLeft, "888 + 1")
        painter.end()
        ink = [sum(255 - picture.pixelColor(x, y).red() for y in range(24)) for x in range(200)]
        inked = [x for x, dark in enumerate(ink) if dark > 200]
        half = (inked[0] + inked[-1]) // 2
        assert sum(ink[:half]) > 1.5 * sum(ink[half:])
        from_right = direction == Qt.LayoutDirection.RightToLeft
        assert (199 - inked[-1] if from_right else inked[0]) < 5
