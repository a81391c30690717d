"""The colours can be read, in every scheme, and the theme follows what is asked of it."""

from __future__ import annotations

from dataclasses import fields

import pytest
from PySide6.QtCore import QEvent, QObject, Qt
from PySide6.QtGui import QColor, QPalette
from PySide6.QtWidgets import (
    QApplication,
    QCheckBox,
    QComboBox,
    QLineEdit,
    QPushButton,
    QSpinBox,
    QVBoxLayout,
    QWidget,
)

from barkeep.desktop.look import theme as theme_module
from barkeep.desktop.look import tones as tones_module
from barkeep.desktop.look.metrics import TypeSize, font_of
from barkeep.desktop.look.theme import StylePictures, Theme, style_sheet
from barkeep.desktop.look.tones import (
    SCHEMES,
    Tones,
    blend,
    current_tones,
    palette_of,
    read_tones,
    tones_for,
)
from barkeep.desktop.widgets.notices import Banner
from barkeep.errors import KnowledgeError


def contrast(one: str, other: str) -> float:
    """The contrast ratio of two colours, 1 to 21 (WCAG 2.2, relative luminance)."""
    lighter, darker = sorted((luminance(QColor(one)), luminance(QColor(other))), reverse=True)
    return (lighter + 0.05) / (darker + 0.05)


def luminance(colour: QColor) -> float:
    parts = (linear(each) for each in (colour.redF(), colour.greenF(), colour.blueF()))
    return sum(w * part for w, part in zip((0.2126, 0.7152, 0.0722), parts, strict=True))


def linear(part: float) -> float:
    return part / 12.92 if part <= 0.04045 else ((part + 0.055) / 1.055) ** 2.4


READABLE, STRONG, DRAWN = 4.5, 7.0, 3.0
GROUNDS = ("window", "base", "raised")
MARKS = ("ready", "stand_in", "one_short", "short", "warning", "danger", "info")
TEXT_ON = {
    # `hover` and `pressed` lie under the words of a button, `highlight` under a chosen row.
    "text": (*GROUNDS, "button", "hover", "pressed", "highlight", "line"),
    "muted": (*GROUNDS, "button", "hover", "highlight"),
    "disabled": (*GROUNDS, "button"),  # it says what could be done, and its tip why it cannot
    "on_accent": ("accent",),
    "on_highlight": ("highlight",),
    "link": (*GROUNDS, "highlight"),
    "accent": ("highlight",),
    "on_nav": ("nav",),
    "nav_muted": ("nav",),
    "lamp": ("nav",),
    "on_lamp": ("lamp",),
    **dict.fromkeys(MARKS, (*GROUNDS, "highlight", "pill", "banner")),
}
"""What words are drawn in, and all that they are drawn on."""
SHAPES_ON = {
    "accent": (*GROUNDS, "button", "hover", "highlight"),
    "edge": (*GROUNDS, "button", "highlight"),  # of fields, buttons and scroll bars
    "glass": (*GROUNDS, "button", "highlight"),
    "liquid": GROUNDS,
    "on_lamp": ("liquid",),  # tenths and doubt over what is in a bottle
    "link": ("raised",),  # the needle of a balance
    "nav_line": ("nav",),
    **dict.fromkeys(MARKS, ("button", "hover")),
}
"""What shapes are drawn in, and all that they are drawn on."""


def colours(scheme, drawn):
    """Every colour of a scheme by name, with those that are mixed for what is `drawn`."""
    tones = read_tones(scheme)
    found = {field.name: getattr(tones, field.name) for field in fields(Tones)}
    role, palette = QPalette.ColorRole, palette_of(tones)
    mixed = {"hover": role.Light, "pressed": role.Midlight, "edge": role.Dark}
    found |= {name: palette.color(each).name() for name, each in mixed.items()}
    if drawn in MARKS:
        found["pill"] = blend(found[drawn], tones.base, 0.12).name()
        found["banner"] = blend(found[drawn], tones.base, 0.10).name()
    return found


def too_faint(scheme, pairs, least):
    """The pairs of a table whose contrast is less than it must be, with what it is."""
    found = []
    for drawn, grounds in pairs.items():
        of = colours(scheme, drawn)
        for ground in grounds:
            ratio = contrast(of[drawn], of[ground])
            found += [(drawn, ground, round(ratio, 2))] if ratio < least(drawn, ground) else []
    return found


@pytest.fixture
def themed(qapp):
    """A theme that leaves the application as it was."""
    palette, sheet, font = qapp.palette(), qapp.styleSheet(), qapp.font()
    theme = Theme(qapp, "light")
    yield theme
    qapp.setPalette(palette)
    qapp.setStyleSheet(sheet)
    qapp.setFont(font)
    theme.deleteLater()


def test_contrast_is_that_of_the_published_formula():
    # WCAG 2.2: black on white is 21, and #767676 is the lightest grey that passes on white.
    assert contrast("#000000", "#ffffff") == pytest.approx(21.0)
    assert contrast("#767676", "#ffffff") == pytest.approx(4.54, abs=0.005)
    assert contrast("#777777", "#ffffff") < 4.5
    assert contrast("#123456", "#123456") == pytest.approx(1.0)


@pytest.mark.parametrize("scheme", SCHEMES)
def test_every_pair_that_is_drawn_can_be_read(scheme):
    """On a chosen, pressed or disabled ground AA is enough for strong contrast as well."""

    def least(drawn, ground):
        is_plain = ground in (*GROUNDS, "button", "nav", "accent") and drawn != "disabled"
        return STRONG if scheme == "contrast" and is_plain else READABLE

    assert too_faint(scheme, TEXT_ON, least) == []
    assert too_faint(scheme, SHAPES_ON, lambda _drawn, _ground: DRAWN) == []


@pytest.mark.parametrize("scheme", SCHEMES)
def test_disabled_text_is_quieter_than_quiet_text(scheme):
    tones = read_tones(scheme)
    assert contrast(tones.disabled, tones.window) < contrast(tones.muted, tones.window)


@pytest.mark.parametrize("scheme", SCHEMES)
@pytest.mark.parametrize("mark", ["info", "warning", "danger", "ready"])
def test_words_can_be_read_on_a_banner(scheme, mark):
    tones = read_tones(scheme)
    ground = blend(getattr(tones, mark), tones.base, 0.10).name()
    assert contrast(tones.text, ground) >= READABLE
    assert contrast(getattr(tones, mark), ground) >= DRAWN


@pytest.mark.parametrize("scheme", SCHEMES)
def test_the_palette_is_the_table(scheme, qapp):
    tones = read_tones(scheme)
    palette = palette_of(tones)
    role = QPalette.ColorRole
    assert palette.color(role.Accent).name() == tones.accent
    assert palette.color(role.PlaceholderText).name() == tones.muted
    disabled = QPalette.ColorGroup.Disabled
    assert palette.color(disabled, role.ButtonText).name() == tones.disabled
    assert tones_for(palette) == tones


def test_a_foreign_palette_lends_its_own_colours(qapp):
    palette = QPalette(QColor("black"))
    palette.setColor(QPalette.ColorRole.WindowText, QColor("yellow"))
    tones = tones_for(palette)
    assert {tones.ready, tones.short, tones.danger, tones.text} == {"#ffff00"}
    assert tones.window == palette.color(QPalette.ColorRole.Window).name()


def test_a_table_with_a_hole_names_the_colour(monkeypatch):
    monkeypatch.setattr(tones_module, "read_text", lambda _name: '[light]\nwindow = "#zzz"')
    read_tones.cache_clear()
    try:
        with pytest.raises(KnowledgeError) as caught:
            read_tones("light")
    finally:
        monkeypatch.undo()
        read_tones.cache_clear()
    assert caught.value.key == "light.window"


@pytest.fixture
def furniture(qtbot):
    """One of each of what the style sheet colours, with what draws its pictures."""
    page, column = QWidget(), QVBoxLayout()
    combo, ticked, plain = QComboBox(), QCheckBox("Ticked"), QPushButton("Plain")
    combo.addItem("One")
    ticked.setChecked(True)
    parts = (QLineEdit("Typed"), combo, QSpinBox(), ticked, plain, Banner())
    for each in parts:
        column.addWidget(each)
    parts[-1].say("Said", "warning")
    page.setLayout(column)
    qtbot.addWidget(page)
    return page


@pytest.mark.parametrize("shown", [True, False], ids=["seen", "seen only afterwards"])
def test_choosing_changes_palette_tones_and_all_that_is_drawn(themed, furniture, qtbot, shown):
    def drawn():
        furniture.show()
        themed.finish()
        return furniture.grab().toImage()

    light = drawn()
    furniture.setVisible(shown)
    with qtbot.waitSignal(themed.changed):
        themed.choose("dark")
    assert current_tones() == read_tones("dark")
    dark = drawn()
    app, sheet = QApplication.instance(), QApplication.instance().styleSheet()
    app.setStyleSheet("")
    app.setStyleSheet(sheet)  # everything is made anew of what is there now
    assert drawn() == dark != light
    plain = furniture.findChild(QPushButton).grab().toImage()
    assert plain.pixelColor(6, plain.height() // 2).name() == read_tones("dark").button
    themed.choose("light")
    assert drawn() == light


class Paints(QObject):
    """Counts how often a widget is painted."""

    def __init__(self, widget):
        super().__init__(widget)
        self.number = 0
        widget.installEventFilter(self)

    def eventFilter(self, _watched, event):
        self.number += event.type() == QEvent.Type.Paint
        return False


def test_a_window_is_painted_once_for_another_theme(themed, furniture, qtbot, qapp):
    with qtbot.waitExposed(furniture):
        furniture.show()
    qapp.processEvents()
    paints = Paints(furniture)
    themed.choose("dark")
    qapp.processEvents()
    assert paints.number == 1
    assert furniture.updatesEnabled()


def test_what_lies_on_the_navigation_has_one_colour_in_both_schemes():
    light, dark = read_tones("light"), read_tones("dark")
    assert (light.lamp, light.nav_line) == (dark.lamp, dark.nav_line)


def test_an_unknown_system_is_light(themed, qapp):
    assert qapp.styleHints().colorScheme() == Qt.ColorScheme.Unknown
    themed.choose("system")
    assert themed.scheme == "light"


def test_a_system_that_asks_for_strong_contrast_has_it_unless_another_theme_is_chosen(
    themed, monkeypatch
):
    wants = property(lambda _self: True)
    monkeypatch.setattr(theme_module.Theme, "system_wants_contrast", wants)
    themed.choose("system")
    assert current_tones() == read_tones("contrast")
    for chosen in ("dark", "light", "contrast"):  # whoever chooses has looked at it
        themed.choose(chosen)
        assert current_tones() == read_tones(chosen)
    themed.choose("system")
    assert current_tones() == read_tones("contrast")
    monkeypatch.undo()
    themed.apply()
    assert current_tones() == read_tones("light")


def test_the_style_sheet_is_filled_in_and_understood(themed, qapp, qtlog):
    pictures = StylePictures()  # kept: its folder goes with it
    sheet = style_sheet(read_tones("dark"), pictures.write(read_tones("dark")))
    assert "$" not in sheet
    qapp.setStyleSheet(sheet)
    assert not [each for each in qtlog.records if "parse" in each.message.lower()]
    qapp.setStyleSheet("")
    pictures.remove()


def test_the_type_scale_rises_from_the_platforms_font(qapp):
    base = QApplication.font().pointSizeF()
    sizes = [font_of(size).pointSizeF() for size in TypeSize]
    assert sizes == sorted(sizes)
    assert font_of(TypeSize.BODY).pointSizeF() == base
    small = QApplication.font()
    small.setPixelSize(20)
    assert font_of(TypeSize.TITLE, small).pixelSize() == round(20 * TypeSize.TITLE.factor)


def test_every_tone_is_a_colour():
    for scheme in SCHEMES:
        tones = read_tones(scheme)
        assert all(QColor(getattr(tones, each.name)).isValid() for each in fields(Tones))
