"""The pictures a desktop is given are those of the program's own drawing."""

from __future__ import annotations

from PySide6.QtGui import QColor, QImage

from barkeep.application.desktop_entry import SIZES
from tests.draw_icons import ICONS, drawn

NEAR = 12
"""How far a channel of the average pixel may be off: another Qt smooths edges otherwise."""


def test_every_size_is_drawn_from_the_picture(qapp):
    """Drawn anew by `python -m tests.draw_icons`."""
    for size in SIZES:
        kept, wanted = QImage(str(ICONS / f"{size}.png")), drawn(size)
        assert kept.size() == wanted.size()
        step = max(1, size // 16)
        for across in range(0, size, step):
            for down in range(0, size, step):
                one, other = (each.pixelColor(across, down) for each in (kept, wanted))
                assert _far(one, other) <= NEAR, (size, across, down)


def _far(one: QColor, other: QColor) -> float:
    return sum(abs(a - b) for a, b in zip(one.getRgb(), other.getRgb(), strict=True)) / 4
