"""The bar's settings: its name, what prices are in, what its measures mean, what is there."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import replace
from functools import partial
from typing import TypeVar

from PySide6.QtCore import Qt, Signal
from PySide6.QtWidgets import QComboBox, QLineEdit, QWidget

from barkeep.application.bar import Bar
from barkeep.application.done import Done
from barkeep.application.settings import (
    CLASSICS_HINT,
    COUNTRY_HINT,
    MEASURES_HINT,
    OUNCE_HINT,
    REGION_HINT,
    SCALES_HINT,
    SHOWN_IN_HINT,
    STYLE_NAMES,
    dash_hint,
    kept_in_words,
    ounce_names,
    read_dash_ml,
    region_names,
    with_changes,
)
from barkeep.application.settings_of_kinds import (
    HOUSE,
    HOUSE_HINT,
    KEEPS,
    KEEPS_HINT,
    read_house_pours,
    read_shelf_lives,
    show_house_pours,
    show_shelf_lives,
)
from barkeep.desktop.look.metrics import dialog_width
from barkeep.desktop.screens.form_dialog import FormDialog
from barkeep.desktop.screens.operations import run_operation
from barkeep.desktop.screens.screen import ScreenContext
from barkeep.desktop.widgets.ticks import CheckGroup
from barkeep.domain.amounts.measures import show_measures, show_volume, with_measures
from barkeep.domain.amounts.units import BarUnits, OwnMeasure
from barkeep.domain.bar.of_kinds import HousePour, ShelfLife
from barkeep.domain.bar.snapshot import Settings
from barkeep.domain.specs.trials import read_scales, show_scales
from barkeep.errors import AmbiguousName, InvalidField, UnknownName
from barkeep.translation import tr, tr_noop

Key = TypeVar("Key", bound=str)

WIDTH = 780
NAME, CURRENCY, NOT_THERE = "name", "currency", "not there"
OUNCE, DASH, SHOWN_IN, COUNTRY = "ounce", "dash", "shown in", "country"

COUNTRIES = (
    tr_noop("Argentina"),
    tr_noop("Australia"),
    tr_noop("Austria"),
    tr_noop("Canada"),
    tr_noop("Chile"),
    tr_noop("Denmark"),
    tr_noop("Finland"),
    tr_noop("France"),
    tr_noop("Germany"),
    tr_noop("Hong Kong"),
    tr_noop("Hungary"),
    tr_noop("Iceland"),
    tr_noop("India"),
    tr_noop("Ireland"),
    tr_noop("Italy"),
    tr_noop("Japan"),
    tr_noop("Mexico"),
    tr_noop("Netherlands"),
    tr_noop("New Zealand"),
    tr_noop("Poland"),
    tr_noop("Portugal"),
    tr_noop("Spain"),
    tr_noop("Switzerland"),
    tr_noop("United Kingdom"),
    tr_noop("United States"),
    tr_noop("World Health Organization"),
)
"""Every country whose standard drink is known, by name."""
SCALES, CLASSICS, MEASURES, REGION = "scales", "classics", "measure", "region"

THERE_HINT = tr_noop(
    "These count as there without a bottle. Untick one that is not: what needs it, and what is "
    "made from it, is then no longer ready."
)


def edit_settings(context: ScreenContext, parent: QWidget) -> None:
    """Ask for the settings of the bar."""
    dialog = SettingsDialog(context.bar, parent)
    dialog.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose)
    dialog.changed.connect(
        lambda said: context.toast.say(
            said, tr("Undo"), partial(context.undo, context.bar.last_step)
        )
    )
    dialog.open()


class SettingsDialog(FormDialog):
    """`changed` comes with what there is to say, once something else than before is written."""

    scrolls = True  # its fields with all that is said of them are higher than small screens
    changed = Signal(str)

    def __init__(self, bar: Bar, parent: QWidget | None = None) -> None:
        super().__init__(tr("Settings"), tr("Save"), parent)
        self._bar = bar
        self._seen = self._began = bar.snapshot.settings
        tree = bar.snapshot.knowledge.tree
        self.name, self.currency, self.dash = QLineEdit(), QLineEdit(), QLineEdit()
        self.ounce = _choice(ounce_names())
        self.shown_in = _choice({key: tr(words) for key, words in STYLE_NAMES.items()})
        self.country = _choice({each: tr(each) for each in sorted(COUNTRIES, key=tr)})
        self.region = _choice(region_names())
        self.classics = _choice({"yes": tr("Yes"), "no": tr("No, only my own specs")})
        self.scales, self.measures = QLineEdit(), QLineEdit()
        self.measures.setPlaceholderText(tr("small ladle = 1.5 oz; thimble = 10 ml"))
        there = sorted((key for key in tree if tree[key].always_there), key=tree.name)
        self.there = CheckGroup({key: tree.name(key) for key in there}, tr(THERE_HINT))
        self.house, self.keeps = QLineEdit(), QLineEdit()
        self.house.setPlaceholderText(tr("rum = the label of a bottle"))
        self.keeps.setPlaceholderText(tr("sweet vermouth = 60"))
        self.show_theirs()
        self._add_fields()
        self.setMinimumWidth(dialog_width(WIDTH))
        self.name.setFocus()
        self.name.selectAll()

    def see(self, theirs: Settings) -> None:
        self._bar.refresh()
        self._seen = theirs

    def show_theirs(self) -> None:
        settings = self._began = self._seen
        bar = self._bar.snapshot.changed(settings=settings)
        self._dash_before = show_volume(settings.dash_ml)
        self._measures_before = show_measures(settings.measures, settings.units)
        self._house_before, self._keeps_before = show_house_pours(bar), show_shelf_lives(bar)
        for field, said in (
            (self.name, settings.name),
            (self.currency, settings.currency),
            (self.dash, self._dash_before),
            (self.scales, show_scales(settings.scales)),
            (self.measures, self._measures_before),
            (self.house, self._house_before),
            (self.keeps, self._keeps_before),
        ):
            field.setText(said)
            field.setCursorPosition(0)
        _choose(self.ounce, settings.ounce)
        _choose(self.shown_in, settings.shown_in)
        _choose(self.country, settings.country)
        _choose(self.region, settings.region)
        _choose(self.classics, "yes" if settings.classics else "no")
        self.there.choose(frozenset(self.there.boxes) - settings.not_there)

    def submit(self) -> None:
        self.clear_refusal()
        try:
            wanted = self._wanted()
        except InvalidField as error:
            self.show_refusal(error)
            return
        except (UnknownName, AmbiguousName) as error:  # of what is in the bar
            self.show_refusal(error)
            return
        if wanted == self._began:
            self.accept()
            return
        kept = kept_in_words(self._bar.snapshot, wanted)
        wanted = with_changes(self._seen, self._began, wanted)
        said = tr("Settings changed. {kept}", kept=kept) if kept else tr("Settings changed")
        finish = partial(self._finish, said)
        run_operation(self, lambda: self._bar.settings.change(wanted, self._seen), finish)

    def _wanted(self) -> Settings:
        """What the fields say, checked by nobody yet. Raises `InvalidField`."""
        before, dash = self._began, self.dash.text()
        ounce = self.ounce.currentData()
        return replace(
            before,
            name=self.name.text(),
            currency=self.currency.text().strip().upper(),
            not_there=frozenset(self.there.boxes) - set(self.there.chosen),
            ounce=ounce,
            # What is shown may have fewer digits than what is meant.
            dash_ml=before.dash_ml if dash == self._dash_before else read_dash_ml(dash),
            shown_in=self.shown_in.currentData(),
            country=self.country.currentData(),
            region=self.region.currentData(),
            classics=self.classics.currentData() == "yes",
            scales=read_scales(self.scales.text()),
            measures=self._wanted_measures(BarUnits(ounce, before.dash_ml)),
            house=self._wanted_house(),
            keeps=self._wanted_keeps(),
        )

    def _wanted_house(self) -> tuple[HousePour, ...]:
        """What the field says, and nothing beside it; a bottle that is gone stays as it is."""
        bar, text = self._bar.snapshot, self.house.text()
        if text == self._house_before:
            return self._began.house
        none = replace(bar, settings=replace(bar.settings, house=()))
        return read_house_pours(none, text).house

    def _wanted_keeps(self) -> tuple[ShelfLife, ...]:
        """What the field says, and nothing beside it."""
        bar, text = self._bar.snapshot, self.keeps.text()
        if text == self._keeps_before:
            return self._began.keeps
        none = replace(bar, settings=replace(bar.settings, keeps=()))
        return read_shelf_lives(none, text).keeps

    def _wanted_measures(self, units: BarUnits) -> tuple[OwnMeasure, ...]:
        """What the field says; what is shown may have fewer digits than what is meant."""
        text = self.measures.text()
        if text == self._measures_before:
            return self._began.measures
        return with_measures(text, units)

    def _finish(self, said: str, done: Done[Settings]) -> None:
        self.accept()
        if done.changes:
            self.changed.emit(said)

    def _add_fields(self) -> None:
        self.add_field(NAME, tr("&Name of the bar"), self.name)
        self.currency.setPlaceholderText(tr("Three letters, such as EUR"))
        self.add_field(CURRENCY, tr("&Currency"), self.currency)
        self.add_field(COUNTRY, tr("Coun&try"), self.country, hint=tr(COUNTRY_HINT))
        self.add_field(REGION, tr("Re&gion"), self.region, hint=tr(REGION_HINT))
        self.add_field(NOT_THERE, tr("&Always there"), self.there, tall=True)
        self.there.ticked.connect(lambda: self.forgive(NOT_THERE))
        self.add_field(SCALES, tr("&Rate trials on"), self.scales, hint=tr(SCALES_HINT))
        self.add_field(HOUSE, tr("Ho&use pours"), self.house, hint=tr(HOUSE_HINT))
        self.explain(HOUSE, "house pour")
        self.begin_column()
        self.add_field(OUNCE, tr("An &ounce is"), self.ounce, hint=tr(OUNCE_HINT))
        self.add_field(DASH, tr("A &dash is"), self.dash, hint=dash_hint())
        self.add_field(MEASURES, tr("Own &measures"), self.measures, hint=tr(MEASURES_HINT))
        self.add_field(SHOWN_IN, tr("&Show specs in"), self.shown_in, hint=tr(SHOWN_IN_HINT))
        self.add_field(KEEPS, tr("Things &keep"), self.keeps, hint=tr(KEEPS_HINT))
        self.add_field(CLASSICS, tr("&Book of classics"), self.classics, hint=tr(CLASSICS_HINT))


def _choice(words: Mapping[Key, str]) -> QComboBox:
    """A box of the words, each with its key."""
    box = QComboBox()
    for key, said in words.items():
        box.addItem(said, key)
    return box


def _choose(box: QComboBox, chosen: str) -> None:
    """Choose by the key; what is chosen is there even if it is not known."""
    if box.findData(chosen) < 0:
        box.insertItem(0, chosen, chosen)
    box.setCurrentIndex(box.findData(chosen))
