"""A spec cut into the steps that are shown on camera, one after the other. Pure."""

from __future__ import annotations

import re
from collections.abc import Iterator, Sequence
from dataclasses import dataclass

from barkeep.documents.printed.cards import PrintedLine, poured_lines, printed_lines
from barkeep.domain.bar.snapshot import Settings
from barkeep.domain.drink.picture import DrinkPicture
from barkeep.domain.ingredients.tree import FamilyTree
from barkeep.domain.specs.garnish_notes import garnishes_in_words
from barkeep.domain.specs.glasses import glass_in_words, ice_in_words
from barkeep.domain.specs.spec import Spec
from barkeep.translation import tr

_SENTENCE = re.compile(r"(?<=[.;!])\s+")


@dataclass(frozen=True, slots=True)
class CameraStep:
    """One step: what is read out, what stands smaller below it, and the line it pours.

    `line` is the place among the poured lines, None for what pours nothing.
    """

    text: str
    below: str = ""
    line: int | None = None


@dataclass(frozen=True, slots=True)
class CameraDrink:
    """One drink: its name, its poured lines as the list beside shows them, and the steps.

    `picture` is how it looks in its glass, where that is known.
    """

    name: str
    lines: tuple[str, ...]
    steps: tuple[CameraStep, ...]
    picture: DrinkPicture | None = None


def camera_drink(
    spec: Spec,
    tree: FamilyTree,
    settings: Settings,
    *,
    serves: int = 1,
    cautions: Sequence[str] = (),
    picture: DrinkPicture | None = None,
) -> CameraDrink:
    """The steps of one serve: the name, each line in both measures, the method, garnish, care.

    `serves` says how many are made in front of the camera; the amounts are
    always those of one.
    """
    poured = printed_lines(poured_lines(spec), tree, settings)
    said = tuple(f"{each.both} {each.name}".strip() for each in poured)
    steps = (
        CameraStep(spec.name, _head(spec, serves)),
        *_pours(poured),
        *_method(spec),
        *_garnishes(spec, tree, settings),
        *(CameraStep(each) for each in cautions),
    )
    return CameraDrink(spec.name, said, steps, picture)


def _head(spec: Spec, serves: int) -> str:
    made = tr("one serve") if serves == 1 else tr("{serves} serves, amounts for one", serves=serves)
    return " · ".join(
        each for each in (glass_in_words(spec.glass), ice_in_words(spec.ice), made) if each
    )


def _pours(poured: Sequence[PrintedLine]) -> Iterator[CameraStep]:
    for number, each in enumerate(poured):
        yield CameraStep(f"{each.first} {each.name}".strip(), each.second, number)


def _method(spec: Spec) -> Iterator[CameraStep]:
    for sentence in _SENTENCE.split(" ".join(spec.method.split())):
        if sentence:
            yield CameraStep(sentence)


def _garnishes(spec: Spec, tree: FamilyTree, settings: Settings) -> Iterator[CameraStep]:
    garnishes = [line for line in spec.lines if line.garnish]
    for each in printed_lines(garnishes, tree, settings):
        yield CameraStep(f"{each.first} {each.name}".strip(), tr("garnish"))
    for said in garnishes_in_words(spec.notes):
        yield CameraStep(said, tr("garnish"))
