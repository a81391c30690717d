"""Looking a bar's file over, also one that cannot be opened, and saving what can be read of it."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from pathlib import Path

from barkeep.application.bar import Bar
from barkeep.application.findings import said_of
from barkeep.application.likely_bars import with_likely
from barkeep.domain.bar.knowledge import Knowledge
from barkeep.domain.phrases import counted
from barkeep.errors import spoken_list
from barkeep.store import opening
from barkeep.store.address import At, Location
from barkeep.store.location import read_location
from barkeep.store.place import in_a_file, place_of
from barkeep.store.refusals import NoBarThere
from barkeep.store.saving import Salvage, save_what_can_be, what_can_be_saved
from barkeep.translation import tr_noop

_NAMES: Mapping[str, tuple[str, str]] = {
    "product": (tr_noop("product"), tr_noop("products")),
    "bottle": (tr_noop("bottle"), tr_noop("bottles")),
    "ledger": (tr_noop("ledger entry"), tr_noop("ledger entries")),
    "spec": (tr_noop("spec"), tr_noop("specs")),
    "trial": (tr_noop("trial"), tr_noop("trials")),
    "shoot": (tr_noop("shoot"), tr_noop("shoots")),
    "own_ingredient": (tr_noop("ingredient of your own"), tr_noop("ingredients of your own")),
    "own_stand_in": (tr_noop("stand-in of your own"), tr_noop("stand-ins of your own")),
    "own_recipe": (tr_noop("recipe of your own"), tr_noop("recipes of your own")),
    "setting": (tr_noop("setting"), tr_noop("settings")),
}
"""The tables a person knows of, in the words of the screens."""


@dataclass(frozen=True, slots=True)
class Saveable:
    """What of a bar can be read: how many of each thing, and in sentences what is lost."""

    counts: Mapping[str, int]
    lost: tuple[str, ...]

    @property
    def in_words(self) -> str:
        """How much there is, as it stands in a sentence: *2 products and 1 setting*."""
        words = (
            counted(self.counts[many], one, many)
            for one, many in _NAMES.values()
            if self.counts[many]
        )
        return spoken_list(tuple(words), "and")


@dataclass(frozen=True, slots=True)
class Checked:
    """What was found wrong with a bar's file, in sentences, and whether it can be opened.

    `saveable` is what of a bar that cannot be opened can be saved, None for one that can.
    One that `may_be_taken` can be as it is, but barkeep did not write it so.
    """

    file: At
    findings: tuple[str, ...]
    opens: bool
    saveable: Saveable | None = None
    may_be_taken: bool = False


def check(location: Location, knowledge: Knowledge | None = None) -> Checked:
    """Look a bar's file over and change nothing of it.

    A bar of an older schema is looked over as it is: what it means is said once it is opened.
    Raises `UnreadableFile` for what is no bar, `NewerBar` or `BarIsBusy`.
    """
    place = place_of(location)
    try:
        looked = place.looked_over()
    except NoBarThere as none:
        raise with_likely(none) from None
    if looked.faults:
        said = tuple(said_of(place, each) for each in looked.faults)
        if not isinstance(place.at, Path):
            return Checked(place.at, said, False)
        may_be_taken = all(each.foreign for each in looked.faults)
        saveable = _told(what_can_be_saved(place.at))
        return Checked(place.at, said, False, saveable, may_be_taken=may_be_taken)
    if looked.is_older:
        return Checked(place.at, (), True)
    with Bar.open(place.at, knowledge, new=False) as bar:
        return Checked(place.at, bar.check(), True)


def save(location: Location, target: str | Path) -> Saveable:
    """Write a new bar with all that can be read of one, sound or not; the old file stays.

    Raises what `check` does, and `CannotWrite` where the target exists or cannot be written.
    """
    return _told(
        save_what_can_be(in_a_file(read_location(location)), Path(target).expanduser().absolute())
    )


def take_as_it_is(location: Location) -> tuple[str, ...]:
    """Make a bar's own what something else has changed in it; in sentences what that was.

    Raises `DamagedBar` where more than that is wrong with it, and what `check` does.
    """
    path = in_a_file(read_location(location))
    try:
        return tuple(f"{each}." for each in opening.take_as_it_is(path))
    except NoBarThere as none:
        raise with_likely(none) from None


def _told(found: Salvage) -> Saveable:
    counts = {many: found.counts.get(table, 0) for table, (_one, many) in _NAMES.items()}
    return Saveable(counts, tuple(f"{each}." for each in found.lost))
