"""How the real window looks: which pictures of it are kept, how they are taken and compared.

`python -m tests.take_pictures` takes them all anew. They are kept half as large, and compared with
some tolerance, since machines smooth letters differently.
"""

from __future__ import annotations

from collections.abc import Iterator
from contextlib import contextmanager
from dataclasses import dataclass
from datetime import datetime
from pathlib import Path
from typing import cast

from PySide6.QtCore import QCoreApplication, QElapsedTimer, QEventLoop, QPoint, QSize, Qt
from PySide6.QtGui import QImage, QPainter
from PySide6.QtWidgets import QApplication, QWidget

from barkeep.application.bar import Bar
from barkeep.application.sample import build
from barkeep.desktop.look.theme import TextSize, Theme, ThemeChoice
from barkeep.desktop.screens.window_state import WindowState
from barkeep.desktop.shell.main_window import MainWindow, WindowHooks
from barkeep.domain.bottles.bottle import Label
from barkeep.domain.specs.riffs import riff_on

KEPT = Path(__file__).resolve().parent.parent / "reference" / "pictures"
DAY = datetime(2026, 11, 21, 12, 0)
LONG = "The Very Long Night Train That Stops at Every Halt Between Tallowby and the Sea on Sundays"
MAKER = "The Old Sidings and Branch Line Distilling Company"
MOST_MS = 20_000
"""A window that works longer is at fault."""


@dataclass(frozen=True, slots=True)
class Look:
    """One picture: the window of a `kind` of bar on a page, and how it is shown.

    `ratio` is how many points of the screen a pixel has; `action` opens a dialog, which is then
    what is taken; `thing` is what the page shows.
    """

    name: str
    page: str
    size: tuple[int, int] = (1280, 800)
    scheme: ThemeChoice = "light"
    ratio: int = 1
    from_right: bool = False
    action: str = ""
    thing: object = None


SMALL, USUAL, WIDE = (1024, 640), (1280, 800), (1920, 1080)
LOOKS: dict[str, tuple[Look, ...]] = {
    "sample": (
        Look("tonight-small", "tonight", SMALL),
        Look("bottles", "bottles"),
        Look("specs-wide", "specs", WIDE),
        Look("shoots-dark", "shoots", scheme="dark"),
        Look("settings-dark", "tonight", scheme="dark", action="Settings"),
        Look("carried-high-contrast", "carried", scheme="contrast"),
        Look("tonight-high-contrast", "tonight", SMALL, scheme="contrast"),
        Look("stand-ins-fine", "stand-ins", SMALL, ratio=2),
        Look("bottles-from-right", "bottles", from_right=True),
        Look("shopping", "tonight", action="Shopping list"),
    ),
    "empty": (
        Look("tonight-empty", "tonight", SMALL),
        Look("bottles-empty", "bottles", SMALL),
    ),
    "large": (
        Look("tonight-large", "tonight", SMALL),
        Look("shoots-large", "shoots"),
    ),
    "full": (
        Look("bottles-500", "bottles"),
        Look("specs-long-names", "specs", SMALL, thing=LONG),
    ),
}
"""All that are kept, by the bar they show: the sample bar, an empty one, the sample bar in twice as
large letters, and one of 500 bottles and some very long names."""


def taken(kind: str, folder: Path, theme: Theme) -> Iterator[tuple[str, QImage]]:
    """The pictures of one kind of bar, each with its name."""
    app = cast(QApplication, QApplication.instance())
    flash, before = app.cursorFlashTime(), theme.text_size
    app.setCursorFlashTime(0)
    theme.choose_text_size(cast(TextSize, "largest" if kind == "large" else "plain"))
    own = folder / kind
    own.mkdir()
    with _bar_of(kind, own) as bar, window_over(bar, own, theme) as window:
        for look in LOOKS[kind]:
            yield look.name, _picture_of(look, window, theme)
    theme.choose_text_size(before)
    app.setCursorFlashTime(flash)


@contextmanager
def window_over(bar: Bar, folder: Path, theme: Theme) -> Iterator[MainWindow]:
    """The real window over a bar, with nothing remembered."""
    from barkeep.desktop.importing.files import import_files, import_texts
    from barkeep.desktop.shell.settings import edit_settings

    hooks = WindowHooks(lambda _bar: None, import_files, edit_settings, import_texts)
    window = MainWindow(bar, WindowState(folder / "window.ini"), theme, hooks)
    window.resize(*USUAL)
    window.show()
    window.activateWindow()
    at_rest(window, window)
    yield window
    window.close_unasked()
    window.deleteLater()


@contextmanager
def _bar_of(kind: str, folder: Path) -> Iterator[Bar]:
    path = folder / f"{kind}.barkeep"
    if kind != "empty":
        build(path, clock=lambda: DAY)
    with Bar.open(path, clock=lambda: DAY) as bar:
        if kind == "full":
            fill(bar)
        yield bar


def fill(bar: Bar) -> None:
    """Make it 500 bottles, and give a bottle and a spec more of a name than there is room for."""
    bar.specs.add([riff_on(bar.specs.get("Request Stop"), LONG)])
    long = bar.inventory.add_product(Label(LONG, MAKER, "london-dry-gin", 700)).value
    products = [long, *bar.snapshot.products]
    for number in range(500 - len(bar.snapshot.bottles)):
        bar.inventory.receive(products[number % len(products)].id)


def at_rest(window: MainWindow, shown: QWidget) -> QImage:
    """What is shown once nothing is worked on and nothing changes any more."""
    whole, before = QElapsedTimer(), QImage()
    whole.start()
    while True:
        for _ in range(4):
            QCoreApplication.processEvents(QEventLoop.ProcessEventsFlag.AllEvents, 20)
        if not window.background.is_busy:
            now = shown.grab().toImage()
            if now == before:
                return now
            before = now
        if whole.elapsed() > MOST_MS:
            raise TimeoutError("the window is still at work")


def _picture_of(look: Look, window: MainWindow, theme: Theme) -> QImage:
    app = cast(QApplication, QApplication.instance())
    theme.choose(look.scheme)
    right, left = Qt.LayoutDirection.RightToLeft, Qt.LayoutDirection.LeftToRight
    app.setLayoutDirection(right if look.from_right else left)
    window.resize(*look.size)
    if look.thing is None:
        window.show_page(look.page)
    else:
        window.go(look.page, look.thing)
    window.toast.dismiss()
    theme.finish()
    at_rest(window, window)
    shown: QWidget = _opened(look.action, window) if look.action else window
    picture = at_rest(window, shown)
    if look.ratio > 1:
        picture = _finer(shown, look.ratio)
    if shown is not window:
        shown.close()
    app.setLayoutDirection(left)
    theme.choose("light")
    return picture


def _opened(words: str, window: MainWindow) -> QWidget:
    actions = [*window.current.bar_actions, *window.actions_.all]
    named = [each for each in actions if each.text().replace("&", "").rstrip("…") == words]
    whole = QElapsedTimer()
    whole.start()
    named[0].trigger()
    while not (opened := _others(window)):
        QCoreApplication.processEvents(QEventLoop.ProcessEventsFlag.AllEvents, 20)
        if whole.elapsed() > MOST_MS:
            raise TimeoutError(f"{words} opens nothing")
    return opened[0]


def _others(window: QWidget) -> list[QWidget]:
    tops = QApplication.topLevelWidgets()
    return [each for each in tops if each.isVisible() and each is not window]


def _finer(shown: QWidget, ratio: int) -> QImage:
    """As a screen shows it that has so many points to a pixel."""
    image = QImage(shown.size() * ratio, QImage.Format.Format_RGB32)
    image.setDevicePixelRatio(ratio)
    painter = QPainter(image)
    shown.render(painter, QPoint())
    painter.end()
    image.setDevicePixelRatio(1)
    return image


# Keeping and comparing

SMALLER = 0.5
APART = 28
"""Of 255: so far may the parts of a colour be apart, since letters are smoothed otherwise."""
MOST_APART = 0.012
"""Of all points, as many as may be further apart."""


def reduced(picture: QImage) -> QImage:
    """A picture as it is kept."""
    smooth = Qt.TransformationMode.SmoothTransformation
    keep = Qt.AspectRatioMode.KeepAspectRatio
    size = QSize(round(picture.width() * SMALLER), round(picture.height() * SMALLER))
    small = picture.scaled(size, keep, smooth)
    return small.convertToFormat(QImage.Format.Format_RGB888)


def share_apart(one: QImage, other: QImage) -> float:
    """How much of two pictures is not alike, 0 to 1; all of it where they are of two sizes."""
    import numpy as np

    if one.size() != other.size():
        return 1.0
    first, second = (_points(each) for each in (one, other))
    apart = np.abs(first.astype(np.int16) - second).max(axis=2) > APART
    return float(apart.mean())


def _points(picture: QImage):
    import numpy as np

    image = picture.convertToFormat(QImage.Format.Format_RGB888)
    lines = np.frombuffer(image.constBits(), np.uint8).reshape(image.height(), -1)
    points = lines[:, : 3 * image.width()].copy()  # what it is read from goes with the image
    return points.reshape(image.height(), image.width(), 3)


def contact_sheet(pictures: list[QImage], across: int = 4, wide: int = 400) -> QImage:
    """All pictures beside and below each other, small."""
    smooth = Qt.TransformationMode.SmoothTransformation
    small = [each.scaledToWidth(wide, smooth) for each in pictures]
    rows = [small[start : start + across] for start in range(0, len(small), across)]
    high = [max(each.height() for each in row) for row in rows]
    gap = 8
    sheet = QImage(
        across * (wide + gap) + gap, sum(high) + gap * (len(high) + 1), QImage.Format.Format_RGB32
    )
    sheet.fill(Qt.GlobalColor.gray)
    painter, top = QPainter(sheet), gap
    for row, height in zip(rows, high, strict=True):
        for place, each in enumerate(row):
            painter.drawImage(gap + place * (wide + gap), top, each)
        top += height + gap
    painter.end()
    return sheet
