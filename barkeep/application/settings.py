"""What the owner chose for this bar, how each setting is said, and how it is read."""

from __future__ import annotations

import os
import re
from collections.abc import Callable, Mapping, Sequence
from dataclasses import dataclass, fields, replace
from difflib import get_close_matches
from math import isfinite
from pathlib import Path
from typing import TypeVar

from barkeep.application.done import Done
from barkeep.application.finding import find_ingredient, there
from barkeep.application.own_locale import own_region
from barkeep.application.session import UseCases
from barkeep.application.settings_of_kinds import (
    HOUSE,
    HOUSE_HINT,
    KEEPS,
    KEEPS_HINT,
    checked_house_pour,
    read_house_pours,
    read_shelf_lives,
    show_house_pours,
    show_shelf_lives,
)
from barkeep.application.stale import (
    ChangedSince,
    Words,
    differences_of,
    house_pour_in_words,
    par_in_words,
    refuse_stale,
)
from barkeep.domain.amounts.amount import Amount, parse_amount, show_number, show_range
from barkeep.domain.amounts.measures import (
    show_measures,
    show_volume,
    to_quantity,
    with_measures,
)
from barkeep.domain.amounts.rounding import STYLES, Style
from barkeep.domain.amounts.units import OUNCES, US_UNITS, BarUnits, Ounce
from barkeep.domain.bar.of_kinds import said_of
from barkeep.domain.bar.pars import MOST_PAR, Par, with_par
from barkeep.domain.bar.snapshot import Settings, Snapshot
from barkeep.domain.bottles.bottle import LEAST_DASH_ML, MOST_DASH_ML
from barkeep.domain.ingredients.regions import region_named, shipped_regions
from barkeep.domain.ingredients.tree import FamilyTree
from barkeep.domain.phrases import folded
from barkeep.domain.specs.quantities import came_to_otherwise
from barkeep.domain.specs.trials import Scale, read_scales, show_scale, show_scales
from barkeep.errors import InvalidField, UnknownName, UserError, spoken_list
from barkeep.store.knowledge import read_settings, setting_rows
from barkeep.store.unit_of_work import UnitOfWork
from barkeep.translation import tr, tr_noop

_CURRENCY = re.compile(r"[A-Z]{3}")  # ISO 4217's form; which codes exist changes by the year


class BarSettings(UseCases):
    """The use cases of `bar.settings`."""

    def change(self, settings: Settings, seen: Settings | None = None) -> Done[Settings]:
        """Write the settings that differ from those the change began from, or else from the bar's.

        Raises `InvalidField`, and `ChangedSince` where one of these is not as it was `seen`.
        """
        with self._session.writing("Change settings") as work:
            checked = self._checked(settings)
            now = read_settings(work.connection)
            if seen is not None:
                _refuse_stale(seen, now, checked, self._session.snapshot)
                checked = self._checked(with_changes(now, seen, checked))
            self._write(work, checked)
        return self._session.finished(work, lambda bar: bar.settings)

    def set_par(
        self, ingredient: str, amount: float | None, seen: Settings | None = None
    ) -> Done[Settings]:
        """Say the least to have of an ingredient, in its own unit; None or 0 wants none.

        `ingredient` is a key or any name. Raises `UnknownName`, `InvalidField`, and
        `ChangedSince` where its par is not as it was `seen`.
        """
        with self._session.writing() as work:
            key = find_ingredient(self._session.tree, ingredient)
            name = self._session.tree.in_sentence(key)
            before = read_settings(work.connection)
            par = _checked_par(Par(key, amount or 0.0), self._session.snapshot)
            work.label = f"{'Set' if par.amount else 'Remove'} the par of {name}"
            wanted = replace(before, pars=with_par(before.pars, par))
            refuse_stale(
                tr("the par of {name}", name=name),
                seen=seen,
                now=before,
                mine=wanted,
                words=lambda settings: par_in_words(settings, key, self._session.tree),
            )
            self._write(work, wanted)
        return self._session.finished(work, lambda bar: bar.settings)

    def set_house_pour(
        self, kind: str, product_id: int, seen: Settings | None = None
    ) -> Done[Settings]:
        """Make a product the usual pour of a kind, given by its key or any name.

        Raises `UnknownName`, `InvalidField` for a product that is no such kind, and
        `ChangedSince` where what is poured for it is not as it was `seen`.
        """
        with self._session.writing() as work:
            bar = self._session.snapshot
            product = there("product", bar.product_by_id.get(product_id), product_id)
            pour = checked_house_pour(kind, product, bar.knowledge.tree)
            before = read_settings(work.connection)
            work.label = f"Pour {product.title} as the house {self._session.tree.name(pour.kind)}"
            wanted = replace(before, house=said_of(before.house, pour))
            titles = {each.id: each.title for each in bar.products}
            refuse_stale(
                tr("the house {kind}", kind=self._session.tree.name(pour.kind)),
                seen=seen,
                now=before,
                mine=wanted,
                words=lambda settings: house_pour_in_words(settings, pour.kind, titles),
            )
            self._write(work, wanted)
        return self._session.finished(work, lambda bar: bar.settings)

    def _write(self, work: UnitOfWork, settings: Settings) -> None:
        written = setting_rows(read_settings(work.connection))
        for row in setting_rows(settings):
            if row not in written:
                work.put("setting", (row["key"],), row)

    def _checked(self, settings: Settings) -> Settings:
        name = " ".join(settings.name.split())
        if not name:
            raise InvalidField("name", settings.name, tr("a bar needs a name"))
        if not _CURRENCY.fullmatch(settings.currency):
            expected = tr("it is a code of three capital letters, such as EUR")
            raise InvalidField("currency", settings.currency, expected)
        _refuse_wrong_units(settings)
        _refuse_unknown_country(settings.country)
        if settings.region not in region_names():
            shown = (*shipped_regions(), _NONE, _SYSTEM)
            expected = tr("it is {choices}", choices=spoken_list(shown))
            raise InvalidField("region", settings.region, expected)
        scales = _checked_scales(settings.scales)
        if settings.backups != self._session.snapshot.settings.backups:
            settings = replace(settings, backups=_checked_folder(settings.backups))
        tree = self._session.tree
        _refuse_names_of_ingredients(settings, tree)
        for key in sorted(settings.not_there):
            if key not in tree or not tree[key].always_there:
                expected = tr("only what counts as always there can be missing")
                raise InvalidField("not there", key, expected)
        return replace(settings, name=name, scales=scales)


def _refuse_stale(seen: Settings, now: Settings, mine: Settings, bar: Snapshot) -> None:
    """Raise `ChangedSince` for what both have set, and not to the same."""
    began, theirs, wanted = (settings_in_words(each, bar) for each in (seen, now, mine))
    both = tuple(
        each
        for each in differences_of(wanted, theirs)
        if began[each.field] not in (each.mine, each.theirs)
    )
    if both:
        raise ChangedSince(tr_noop("the settings"), now, both)


def with_changes(now: Settings, seen: Settings, mine: Settings) -> Settings:
    """What the bar says by now, with what I have set otherwise than I saw it."""
    wanted = {each.name: getattr(mine, each.name) for each in fields(Settings)}
    changed = {name: value for name, value in wanted.items() if value != getattr(seen, name)}
    return replace(now, **changed)


def _checked_folder(text: str) -> str:
    """A folder for backups that is there and takes files; empty for the one beside the bar."""
    if not text.strip():
        return ""
    folder = Path(text.strip()).expanduser()
    if not folder.is_absolute():
        expected = tr("it is the whole path of a folder, or “{beside}”", beside=_BESIDE)
        raise InvalidField("backups", text, expected)
    if not folder.is_dir():
        raise InvalidField("backups", text, tr("there is no such folder"))
    if not os.access(folder, os.W_OK):
        raise InvalidField("backups", text, tr("that folder is read-only"))
    return str(folder)


def _checked_par(par: Par, snapshot: Snapshot) -> Par:
    if not isfinite(par.amount) or not 0.0 <= par.amount <= MOST_PAR:
        expected = tr("it is 0 to {most:.0f}", most=MOST_PAR)
        raise InvalidField(tr_noop("par"), par.amount, expected)
    if par.amount and par.ingredient in snapshot.always_there:
        name = snapshot.knowledge.tree.name(par.ingredient)
        raise InvalidField("par", name, tr("it counts as always there and is never bought"))
    return par


def _refuse_wrong_units(settings: Settings) -> None:
    if settings.ounce not in OUNCES:
        raise InvalidField("ounce", settings.ounce, tr("it is the US or the imperial ounce"))
    if not LEAST_DASH_ML <= settings.dash_ml <= MOST_DASH_ML:
        expected = tr("a dash is {range}", range=show_range(LEAST_DASH_ML, MOST_DASH_ML, "ml"))
        raise InvalidField("dash", f"{settings.dash_ml:g} ml", expected)
    if settings.shown_in not in STYLES:
        expected = tr("it is as written, oz, ml, cl or parts")
        raise InvalidField(tr_noop("shown in"), settings.shown_in, expected)


def _refuse_names_of_ingredients(settings: Settings, tree: FamilyTree) -> None:
    """*2 blood orange* must stay two oranges, whatever a measure is called."""
    for measure in settings.measures:
        begun = folded(measure.name)
        key = next((tree.by_name[n] for n in tree.by_name if f"{n} ".startswith(f"{begun} ")), None)
        if key is not None:
            expected = tr(
                "{name} begins with it, and is read where an amount stands before",
                name=tree.name(key),
            )
            raise InvalidField("measure", measure.name, expected)


def kept_in_words(before: Snapshot, settings: Settings) -> str:
    """What becomes of specs in own measures that other settings change or drop; empty for none."""
    tree = before.knowledge.tree
    names = [
        spec.name
        for spec in before.all_specs
        if any(came_to_otherwise(line, spec.serves, tree, settings.units) for line in spec.lines)
    ]
    if not names:
        return ""
    specs = spoken_list(names, "and")
    if len(names) == 1:
        return tr("{spec} keeps what its lines came to when they were written", spec=specs)
    return tr("{specs} keep what their lines came to when they were written", specs=specs)


def _checked_scales(scales: Sequence[Scale]) -> tuple[Scale, ...]:
    checked = tuple(replace(each, name=" ".join(each.name.split())) for each in scales)
    if not checked:
        raise InvalidField("scales", "", tr("trials need at least one to be scored on"))
    for place, scale in enumerate(checked):
        earlier = {folded(each.name) for each in checked[:place]}
        if not scale.name:
            raise InvalidField("scales", show_scale(scale).strip(), tr("a scale needs a name"))
        if folded(scale.name) in earlier:
            raise InvalidField("scales", scale.name, tr("it is there twice"))
        if not (isfinite(scale.low) and isfinite(scale.high) and scale.low != scale.high):
            expected = tr("it runs between two different numbers")
            raise InvalidField("scales", show_scale(scale), expected)
    return checked


def _refuse_unknown_country(country: str) -> None:
    from barkeep.domain.liquids.content import standard_drink  # reads a file that few commands do

    try:
        standard_drink(country)
    except UnknownName as error:
        raise _unknown_country(country, error.nearest[:1]) from None


def _unknown_country(country: str, nearest: Sequence[str]) -> InvalidField:
    expected = tr("no standard drink of that country is known")
    if len(nearest) == 1:
        expected += tr("; the nearest is {country}", country=nearest[0])
    elif nearest:
        expected += tr("; the nearest are {countries}", countries=spoken_list(nearest))
    return InvalidField("country", country.strip(), expected)


STYLE_NAMES: Mapping[Style, str] = {
    "as_written": tr_noop("as written"),
    "oz": tr_noop("ounces"),
    "ml": tr_noop("millilitres"),
    "cl": tr_noop("centilitres"),
    "parts": tr_noop("parts of one another"),
}


NAME_HINT = "What the bar is called."
CURRENCY_HINT = "What prices are in: a code of three letters, such as EUR."
OUNCE_HINT = tr_noop(
    "What “oz” means wherever it is read from now on. Specs that are there keep theirs, and "
    "say which it is where it is not this one."
)
SHOWN_IN_HINT = tr_noop(
    "How the amounts of specs are shown, rounded to what can be measured. Dashes and pieces "
    "stay what they are, and nothing that is written changes."
)
COUNTRY_HINT = tr_noop("Strength is told in this country's standard drinks too.")
CLASSICS_HINT = tr_noop(
    "Whether the classics that barkeep brings along are in the book. Left out, they are neither "
    "listed nor counted; your own specs and riffs stay."
)
REGION_HINT = tr_noop(
    "What things are called where nobody wrote a name: club soda in the US is soda water in the "
    "UK. What you write is shown as you wrote it, and every name is understood everywhere."
)
SCALES_HINT = tr_noop(
    "What trials are scored on, each with its ends, the better one last: Balance 1 to 5. What was "
    "scored before stays."
)

MEASURES_HINT = tr_noop(
    "Measures of your own, understood wherever an amount is typed: small ladle = 1.5 oz. "
    "Semicolons part several. A spec keeps what its lines came to when they were written."
)


BACKUPS_HINT = (
    "In which folder the bar’s backups are kept; another disk saves them when this one is lost. "
    "Those that there are stay where they are."
)


def ounce_names() -> Mapping[Ounce, str]:
    """What each ounce is called, with what it comes to."""
    names: dict[Ounce, str] = {"oz": tr("US fluid ounce"), "imp_oz": tr("imperial fluid ounce")}
    return {
        ounce: f"{name}, {show_volume(to_quantity(Amount(1.0, None, ounce), 'ml'))}"
        for ounce, name in names.items()
    }


def dash_hint() -> str:
    """What a dash is, in the user's own way of writing numbers."""
    least, japanese = (show_number(each, fractions=False) for each in (0.6, 0.3))
    return tr(
        "What one comes to: {least} to 1 ml from a bitters bottle, about {japanese} ml from a "
        "Japanese-style dasher. To find out, count the dashes in a 5 ml spoon.",
        least=least,
        japanese=japanese,
    )


@dataclass(frozen=True, slots=True)
class SettingWords:
    """One setting: its key, what it is, how its value is said and read in a bar."""

    key: str
    hint: Callable[[], str]
    say: Callable[[Snapshot], str]
    read: Callable[[Snapshot, str], Settings]


def setting_named(key: str) -> SettingWords:
    """The setting of this key. Raises `UnknownName`."""
    wanted = key.strip().casefold().replace("_", "-")
    for each in SETTINGS:
        if each.key == wanted:
            return each
    keys = [each.key for each in SETTINGS]
    raise UnknownName("setting", key, tuple(get_close_matches(wanted, keys, 2) or keys))


def read_dash_ml(text: str, units: BarUnits = US_UNITS) -> float:
    """What a dash comes to, from words such as *0.3*, *0,3 ml*, *1/6 tsp* or the bar's *1/32 oz*.

    Raises `InvalidField`.
    """
    try:
        amount = parse_amount(text, units)
        if amount.unit == "each":
            amount = replace(amount, unit="ml")
        if amount.high is None and amount.unit != "dash":
            return to_quantity(amount, "ml", units)
    except UserError:
        pass
    expected = tr("write it in ml, such as {example}", example=show_volume(0.8))
    raise InvalidField("dash", text.strip(), expected)


Value = TypeVar("Value", bound=str)


def _chosen(field: str, text: str, words: Mapping[str, Value], shown: Sequence[str]) -> Value:
    wanted = " ".join(text.casefold().replace("_", " ").replace("-", " ").split())
    if wanted not in words:
        raise InvalidField(field, text, f"it is {spoken_list(shown)}")
    return words[wanted]


def _ounce(bar: Snapshot, text: str) -> Settings:
    names: dict[Ounce, str] = {"oz": "oz us", "imp_oz": "imp imperial uk"}
    words = {word: ounce for ounce, some in names.items() for word in some.split()}
    plain = text.casefold().removesuffix("oz").strip(" _") or text  # us oz, imp_oz
    return replace(bar.settings, ounce=_chosen("ounce", plain, words, ("us", "imperial")))


def _style(bar: Snapshot, text: str) -> Settings:
    words = {name: style for style, name in STYLE_NAMES.items()}
    words |= {style.replace("_", " "): style for style in STYLE_NAMES} | {"part": "parts"}
    shown = ("as-written", "oz", "ml", "cl", "parts")
    return replace(bar.settings, shown_in=_chosen("shown in", text, words, shown))


def _country(bar: Snapshot, text: str) -> Settings:
    from barkeep.domain.liquids.content import country_named

    try:
        return replace(bar.settings, country=country_named(text))
    except UnknownName as unknown:
        raise _unknown_country(text, unknown.nearest) from None


def country_hint() -> str:
    """What the country is for, and which there are."""
    from barkeep.domain.liquids.content import countries

    return f"{COUNTRY_HINT} There are {spoken_list(countries(), 'and')}."


def _classics(bar: Snapshot, text: str) -> Settings:
    words = {"yes": "yes", "in": "yes", "on": "yes", "no": "", "out": "", "off": ""}
    return replace(bar.settings, classics=bool(_chosen("classics", text, words, ("yes", "no"))))


_SYSTEM = "system"
_BESIDE = "beside"
_NONE = "none"


def region_names() -> Mapping[str, str]:
    """Every region that can be chosen, by its key, in words; the system's first."""
    known = shipped_regions()
    own = known.get(own_region())
    regions = {key: f"{key}: {each.called}" for key, each in known.items()}
    system = tr("as this system is set, {region}", region=own.key if own else _NONE)
    return {"": system, **regions, _NONE: tr("none: the kinds' own names")}


def _region(bar: Snapshot, text: str) -> Settings:
    wanted = folded(text)
    if wanted in (_SYSTEM, _NONE):
        return replace(bar.settings, region="" if wanted == _SYSTEM else _NONE)
    try:
        return replace(bar.settings, region=region_named(text).key)
    except UnknownName:
        shown = (*shipped_regions(), _NONE, _SYSTEM)
        raise InvalidField("region", text.strip(), f"it is {spoken_list(shown)}") from None


OUNCE_WORDS: Mapping[Ounce, str] = {"oz": "us", "imp_oz": "imperial"}
"""Each ounce by the word that chooses it."""


def style_word(style: Style) -> str:
    """The word that chooses a style: *as-written*."""
    return style.replace("_", "-")


def settings_in_words(settings: Settings, bar: Snapshot) -> Words:
    """Every setting in words, those without a word of their own among them."""
    as_if, tree = bar.changed(settings=settings), bar.knowledge.tree
    said = {each.key: each.say(as_if) for each in SETTINGS}
    said[tr_noop("not there")] = ", ".join(sorted(tree.name(each) for each in settings.not_there))
    pars = (f"{tree.name(each.ingredient)} = {each.amount:g}" for each in settings.pars)
    said[tr_noop("pars")] = "; ".join(pars)
    to_buy = (f"{tree.name(each.ingredient)} = {each.packages}" for each in settings.to_buy)
    said[tr_noop("to buy")] = "; ".join(to_buy)
    return said


SETTINGS: tuple[SettingWords, ...] = (
    SettingWords(
        tr_noop("name"),
        lambda: NAME_HINT,
        lambda bar: bar.settings.name,
        lambda bar, text: replace(bar.settings, name=text),
    ),
    SettingWords(
        tr_noop("currency"),
        lambda: CURRENCY_HINT,
        lambda bar: bar.settings.currency,
        lambda bar, text: replace(bar.settings, currency=text.strip().upper()),
    ),
    SettingWords(
        tr_noop("ounce"), lambda: OUNCE_HINT, lambda bar: ounce_names()[bar.settings.ounce], _ounce
    ),
    SettingWords(
        tr_noop("dash"),
        dash_hint,
        lambda bar: show_volume(bar.settings.dash_ml),
        lambda bar, text: replace(bar.settings, dash_ml=read_dash_ml(text, bar.settings.units)),
    ),
    SettingWords(
        tr_noop("shown-in"),
        lambda: SHOWN_IN_HINT,
        lambda bar: tr(STYLE_NAMES[bar.settings.shown_in]),
        _style,
    ),
    SettingWords(tr_noop("country"), country_hint, lambda bar: bar.settings.country, _country),
    SettingWords(
        tr_noop("region"),
        lambda: f"{REGION_HINT} It is {spoken_list((*shipped_regions(), _NONE, _SYSTEM))}.",
        lambda bar: region_names().get(bar.settings.region, bar.settings.region),
        _region,
    ),
    SettingWords(
        tr_noop("classics"),
        lambda: CLASSICS_HINT,
        lambda bar: tr("yes") if bar.settings.classics else tr("no"),
        _classics,
    ),
    SettingWords(
        tr_noop("scales"),
        lambda: SCALES_HINT,
        lambda bar: show_scales(bar.settings.scales),
        lambda bar, text: replace(bar.settings, scales=read_scales(text)),
    ),
    SettingWords(
        tr_noop("measure"),
        lambda: f"{MEASURES_HINT} “small ladle =” takes one away.",
        lambda bar: (
            show_measures(bar.settings.measures, bar.settings.units) or tr("none of your own")
        ),
        lambda bar, text: replace(bar.settings, measures=with_measures(text, bar.settings.units)),
    ),
    SettingWords(
        HOUSE,
        lambda: f"{HOUSE_HINT} “rum =” takes one away.",
        lambda bar: show_house_pours(bar) or tr("none chosen"),
        read_house_pours,
    ),
    SettingWords(
        KEEPS,
        lambda: f"{KEEPS_HINT} “sweet vermouth =” takes one away.",
        lambda bar: show_shelf_lives(bar) or tr("as barkeep comes"),
        read_shelf_lives,
    ),
    SettingWords(
        tr_noop("backups"),
        lambda: f"{BACKUPS_HINT} “{_BESIDE}” keeps them beside the bar.",
        lambda bar: bar.settings.backups or tr("beside the bar"),
        lambda bar, text: replace(bar.settings, backups="" if text.strip() == _BESIDE else text),
    ),
)
"""Every setting, in the order they are listed."""
