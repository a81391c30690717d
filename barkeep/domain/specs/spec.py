"""A spec: the exact lines and method of one drink, and what can be read off them."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import dataclass
from datetime import date
from typing import TypeVar

from barkeep.domain.ingredients.relations import Role, Technique
from barkeep.domain.ingredients.tree import FamilyTree
from barkeep.domain.specs.telling_garnishes import (
    TellingGarnish,
    is_rim,
    shipped_telling_garnishes,
)

T = TypeVar("T")
U = TypeVar("U")

ACCENT_ML = 7.5
"""A line of no more than this is an accent (*common practice*: a quarter ounce)."""
ACCENT_UNITS = frozenset({"dash", "drop", "pinch"})
"""A line in one of these is an accent as well."""


FEW_LINES = 3
"""With no more lines than these beside it, the one garnish tells the drink (*common practice*)."""


@dataclass(frozen=True, slots=True)
class Line:
    """One ingredient of a spec and its amount.

    `text` is the line as written. `amount` (and `amount_high` of a range) is in
    `unit` as written; `quantity` is the same for one serve in the ingredient's
    own unit (ml, g or each), None where the text gives none (*top with soda*).
    `alternatives` are the keys of what the line says would do as well, all in
    the same unit: *rye or bourbon*. `called` is what the writer called the
    ingredient, as written, such as *apple cider*: empty where that is just the
    kind's own name, or nobody wrote it. `stated` is what the line asks of the
    bottle beyond its kind and no kind holds: *8 year*, *smoked*.
    """

    text: str
    ingredient: str
    amount: float | None = None
    amount_high: float | None = None
    unit: str | None = None
    quantity: float | None = None
    optional: bool = False
    garnish: bool = False
    note: str = ""
    min_abv_percent: float | None = None
    alternatives: tuple[str, ...] = ()
    called: str = ""
    stated: tuple[str, ...] = ()

    @property
    def wanted(self) -> tuple[str, ...]:
        """The keys of which any one is just what the line asks for, its first choice first."""
        return (self.ingredient, *self.alternatives)

    @property
    def required(self) -> bool:
        """Whether the drink cannot be made without it."""
        return not (self.optional or self.garnish)

    @property
    def on_the_rim(self) -> bool:
        """Whether it is a garnish on the rim of the glass."""
        return self.garnish and is_rim(self.text, self.note)

    @property
    def telling(self) -> TellingGarnish | None:
        """Why a drink is another one without this garnish, None where it is not."""
        said = shipped_telling_garnishes().get(self.ingredient) if self.garnish else None
        return None if said is None or (said.rim and not self.on_the_rim) else said


@dataclass(frozen=True, slots=True)
class UnsettledLine:
    """A line that was not understood when its spec was kept.

    `text` is the line as written, `place` its place among all lines of the
    spec as they were written, from 0, and `question` a sentence that says what
    was not understood.
    """

    text: str
    place: int
    question: str

    @property
    def named(self) -> str:
        """The line as it is named inside a sentence."""
        return f"“{self.text}”"


@dataclass(frozen=True, slots=True)
class Spec:
    """One drink. `id` is None for a classic that barkeep brings along.

    The lines make `serves` serves; `credit` says whose it is, `source` where
    its proportions come from. `unsettled` are the lines that nobody has
    understood yet: none of them is in `lines`, nothing of them is counted, and
    whatever is told of the spec names them.
    """

    name: str
    lines: tuple[Line, ...]
    method: str = ""
    technique: Technique = "unknown"
    glass: str = ""
    ice: str = ""
    notes: str = ""
    riff_of: str | None = None
    id: int | None = None
    classic: bool = False
    added: date | None = None
    serves: float = 1.0
    tags: tuple[str, ...] = ()
    credit: str = ""
    source: str = ""
    unsettled: tuple[UnsettledLine, ...] = ()

    @property
    def in_order(self) -> tuple[Line | UnsettledLine, ...]:
        """All its lines as they were written one below the other, understood or not."""
        return with_unsettled(self, self.lines, lambda each: each)

    @property
    def required_lines(self) -> tuple[Line, ...]:
        """The lines the drink cannot be made without."""
        plain = (not (line.optional or line.garnish) for line in self.lines)
        both = zip(self.lines, plain, strict=True)
        return tuple(line for line, is_plain in both if is_plain or self.requires(line))

    def requires(self, line: Line) -> bool:
        """Whether the drink cannot be made without one of its lines: an onion may be its name."""
        said = None if line.required else line.telling
        return line.required or (said is not None and said.needed and line is self.told_by)

    @property
    def told_by(self) -> Line | None:
        """The garnish that the drink is: its one onion or olive, or its rim."""
        garnishes = [line for line in self.lines if line.garnish and not line.optional]
        rims = [line for line in garnishes if line.on_the_rim and line.telling]
        if rims:
            return rims[0]
        few = sum(line.required for line in self.lines) <= FEW_LINES
        bare = few and self.technique in ("stirred", "unknown")  # a spritz is not its olive
        alone = len(garnishes) == 1 and not garnishes[0].alternatives
        return garnishes[0] if bare and alone and garnishes[0].telling else None

    @property
    def wanted(self) -> frozenset[str]:
        """The keys of all that any of its lines would take."""
        return frozenset(key for line in self.lines for key in line.wanted)


def with_unsettled(
    spec: Spec, rows: Sequence[T], made: Callable[[UnsettledLine], U]
) -> tuple[T | U, ...]:
    """One row for each line of a spec, with one more in its place for each that is unsettled."""
    found: list[T | U] = list(rows)
    for each in sorted(spec.unsettled, key=lambda one: one.place):
        found.insert(min(each.place, len(found)), made(each))
    return tuple(found)


def role(line: Line, spec: Spec, tree: FamilyTree) -> Role:
    """What a line does in the drink: an accent, the base, or a modifier.

    The base is the largest alcoholic line, or the largest of all in a drink
    without alcohol (*common practice*).
    """
    return role_beside(line, lambda: base_ml(spec.required_lines, tree), tree)


def role_beside(line: Line, largest: Callable[[], float], tree: FamilyTree) -> Role:
    """What a line does in a drink whose `base_ml` is the `largest`, which is asked if need be."""
    if line.quantity is None or line.unit in ACCENT_UNITS:
        return "accent"
    if tree[line.ingredient].unit != "ml":
        return "modifier"
    if line.quantity <= ACCENT_ML:
        return "accent"
    return "base" if line.quantity >= largest() else "modifier"


def base(spec: Spec, tree: FamilyTree) -> str | None:
    """The ingredient of the line the drink is built on, None for a spec without volumes."""
    bases = [line for line in spec.required_lines if role(line, spec, tree) == "base"]
    return bases[0].ingredient if bases else None


def base_kind(key: str, tree: FamilyTree) -> str:
    """The widest kind above an ingredient that a shop sells as such; else the ingredient."""
    above = [each for each in tree.ancestors(key) if not tree[each].family]
    return max(above, key=lambda each: (len(tree.descendants(each)), each), default=key)


def base_ml(lines: Sequence[Line], tree: FamilyTree) -> float:
    """What the largest alcoholic line pours, or the largest of all in a drink without alcohol."""
    poured = [line for line in lines if line.quantity and tree[line.ingredient].unit == "ml"]
    strong = [line for line in poured if line.ingredient in tree.alcoholic]
    return max((line.quantity or 0.0 for line in strong or poured), default=0.0)
