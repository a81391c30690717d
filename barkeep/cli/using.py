"""`--use`: what is poured for a line of a drink instead of what it asks for."""

from __future__ import annotations

from collections.abc import Iterable

from barkeep.application.pouring import poured_instead
from barkeep.cli.arguments import many
from barkeep.domain.bar.shoots import ChosenPour
from barkeep.domain.bar.snapshot import Snapshot
from barkeep.domain.specs.spec import Spec
from barkeep.domain.stand_ins.in_a_drink import measurable
from barkeep.errors import InvalidField

USE = many(
    "--use",
    '"WANTED=INSTEAD"',
    "pour a stand-in or a bottle of yours for a line, as much of it as replaces the line",
)
HOW = "write what a line asks for, = and what to pour instead"


def chosen_for(spec: Spec, written: Iterable[str], snapshot: Snapshot) -> tuple[ChosenPour, ...]:
    """What is poured for the lines named (*WANTED=INSTEAD*), so much of it as can be measured.

    Raises `InvalidField` for words that do not fit and for a line that is named twice.
    """
    found: dict[int, ChosenPour] = {}
    for text in written:
        wanted, equals, instead = text.partition("=")
        if not (equals and wanted.strip() and instead.strip()):
            raise InvalidField("--use", text, HOW)
        each = poured_instead(spec, wanted, instead, "--use", snapshot=snapshot)
        if each.line in found:
            raise InvalidField("--use", text, "each line is named once")
        found[each.line] = measurable(spec, each, snapshot)
    return tuple(found.values())
