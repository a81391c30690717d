"""Drinks made ready to be printed and published, and files of them written."""

from __future__ import annotations

import os
from collections.abc import Iterable, Sequence
from dataclasses import dataclass
from pathlib import Path
from tempfile import NamedTemporaryFile

from barkeep.application.finding import find_spec
from barkeep.documents.cards import CardContent, DrinkFacts, card_content
from barkeep.documents.labels import LabelContent, label_content
from barkeep.documents.menus import MenuContent, menu_content
from barkeep.domain.answers.analysis import analyse
from barkeep.domain.cautions import shipped_cautions
from barkeep.domain.inventory import Bottle
from barkeep.domain.safety import allergens_of, cautions_for, occasion_of
from barkeep.domain.snapshot import Snapshot
from barkeep.domain.specs import Spec
from barkeep.errors import UserError
from barkeep.store.faults import CannotWrite


@dataclass
class NothingToExport(UserError):
    """An export of all the owner's specs where there are none."""

    def __str__(self) -> str:
        return "There is no spec of your own to export; name a classic, or ask for all of them."


def drink_facts(spec: Spec, snapshot: Snapshot, *, general: bool = True) -> DrinkFacts:
    """Strength, standard drinks, allergens and cautions of a spec made as it is written.

    Without `general`, what is true of every drink with alcohol is left out.
    """
    tree = snapshot.knowledge.tree
    keys = frozenset(key for line in spec.lines for key in line.wanted)
    found = analyse(spec, snapshot)
    known = found.served_volume_ml > 0.0
    if found.optional_alcohol and not found.ethanol_g:
        known = False  # It may be poured with alcohol or without: a card promises neither.
    strength = found.abv_percent if known else None
    drinks = found.standard_drinks if known and not found.is_batch else None
    occasion = occasion_of(found.spec, keys, tree, abv_percent=strength, standard_drinks=drinks)
    return DrinkFacts(
        strength,
        drinks,
        found.country,
        tuple(each.word for each in allergens_of(keys, tree)),
        tuple(each.text for each in cautions_for(occasion, tree, general=general)),
    )


def cards_of(specs: Iterable[Spec], snapshot: Snapshot) -> tuple[CardContent, ...]:
    """What is printed of each spec."""
    tree, settings = snapshot.knowledge.tree, snapshot.settings
    return tuple(card_content(spec, tree, settings, drink_facts(spec, snapshot)) for spec in specs)


def menu_of(
    title: str,
    specs: Sequence[Spec],
    snapshot: Snapshot,
    *,
    strength: bool = True,
    allergens: bool = True,
) -> MenuContent:
    """A menu of these specs; where one holds alcohol, with what is true of every such drink."""
    return menu_content(
        title,
        cards_of(specs, snapshot),
        strength=strength,
        allergens=allergens,
        cautions=cautions_of_any(specs, snapshot),
    )


def cautions_of_any(specs: Iterable[Spec], snapshot: Snapshot) -> tuple[str, ...]:
    """The general cautions where one of these specs holds alcohol, else none."""
    alcoholic = snapshot.knowledge.tree.alcoholic
    strong = any(key in alcoholic for spec in specs for line in spec.lines for key in line.wanted)
    return general_cautions() if strong else ()


def general_cautions() -> tuple[str, ...]:
    """What is true of every drink with alcohol, and needs no figures."""
    rules = (each for each in shipped_cautions() if each.general and not each.shows)
    return tuple(each.caution.text for each in rules)


def house_made(snapshot: Snapshot) -> tuple[Bottle, ...]:
    """The bottles of what is made here, by name, the newest first."""
    made = [bottle for bottle in snapshot.bottles if bottle.product.house_made]
    made.sort(key=lambda each: -(each.made.toordinal() if each.made else 0))
    return tuple(sorted(made, key=lambda each: each.product.name.casefold()))


def labels_of(bottles: Iterable[Bottle], snapshot: Snapshot) -> tuple[LabelContent, ...]:
    """The label of each bottle, with what its ingredient and its inputs commonly carry."""
    return tuple(label_content(each, _allergens(each, snapshot)) for each in bottles)


def specs_to_export(
    snapshot: Snapshot, names: Sequence[str] = (), *, classics: bool = False
) -> tuple[Spec, ...]:
    """The specs of these names, or all of the owner's, with `classics` those as well.

    Each once. Raises `UnknownName`, `AmbiguousName` or `NothingToExport`.
    """
    if names:
        chosen = [find_spec(snapshot, name) for name in names]
    else:
        chosen = [spec for spec in snapshot.all_specs if not spec.classic]
    if classics:
        chosen += [spec for spec in snapshot.all_specs if spec.classic]
    if not chosen:
        raise NothingToExport()
    return tuple(dict.fromkeys(chosen))


def write_file(path: str | Path, content: str | bytes) -> Path:
    """Write a whole file or leave the old one as it was. Raises `CannotWrite`."""
    target = Path(path).expanduser().absolute()
    data = content.encode("utf-8") if isinstance(content, str) else content
    beside: Path | None = None
    try:
        with NamedTemporaryFile(dir=target.parent, prefix=f".{target.name}.", delete=False) as out:
            beside = Path(out.name)
            out.write(data)
        _give_ordinary_rights(beside)
        beside.replace(target)
    except OSError as error:
        if beside is not None:
            beside.unlink(missing_ok=True)
        raise CannotWrite(str(target), error.strerror or str(error)) from error
    return target


def _allergens(bottle: Bottle, snapshot: Snapshot) -> tuple[str, ...]:
    knowledge = snapshot.knowledge
    keys = {bottle.ingredient}
    for recipe in knowledge.made_from:
        if recipe.made == bottle.ingredient:
            keys |= {each.ingredient for each in recipe.inputs}
    return tuple(each.word for each in allergens_of(keys, knowledge.tree))


def _give_ordinary_rights(path: Path) -> None:
    """A temporary file is its owner's alone; what is written for others should not be."""
    mask = os.umask(0)
    os.umask(mask)
    path.chmod(0o666 & ~mask)
