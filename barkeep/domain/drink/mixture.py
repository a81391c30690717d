"""The lines of a drink together: the water that ice adds, by technique and strength.

All figures are *from memory* or *common practice*, as `resources/liquids.toml`
says of each; one bar's ice and hands are not another's.
"""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass, replace
from functools import cached_property

from barkeep.domain.drink.contents import Content
from barkeep.domain.ingredients.relations import Technique
from barkeep.domain.ingredients.tree import FamilyTree
from barkeep.domain.liquids.constants import constants, polynomial, within
from barkeep.domain.liquids.content import alcohol_kept
from barkeep.translation import tr

WEAKEST, STRONGEST = 15.0, 45.0
"""The strengths before ice, % vol, that the published formulas were fitted to."""
DOUBT_OUTSIDE = 0.3
_ICE_J_PER_G, _WATER_J_PER_G_K = 333.55, 4.2


@dataclass(frozen=True, slots=True)
class Dilution:
    """Water added as a share of the volume before ice, and its one-sigma doubt, also a share.

    `note` says what is uncertain beyond that, empty where nothing is.
    """

    share: float
    sigma: float
    basis: str
    note: str = ""


def expected_dilution(technique: Technique, abv_percent: float) -> Dilution:
    """The dilution to expect of any technique, with more doubt where the formula is stretched.

    Raises `OutsideRange` for what is no strength.
    """
    abv = within("strength", abv_percent, 0.0, 100.0, unit="% vol")
    # A strength is a quotient: rounding must not decide on which side of a limit it lies.
    fitted = WEAKEST <= round(abv, 9) <= STRONGEST
    known: Technique = "built" if technique == "unknown" else technique
    table = constants("dilution")[known]
    share, doubt, note = _formula(known, min(abv, 60.0)), float(table["doubt"]), ""
    if technique == "unknown":
        note = tr("the method does not say how it is chilled; taken as built on ice")
    elif table["square"] and not fitted:
        doubt = max(doubt, DOUBT_OUTSIDE)
        note = tr(
            "the dilution formula was fitted to 15 to 45 % vol, and this is {abv:.0f} % vol",
            abv=abv,
        )
    return Dilution(share, share * doubt, str(table["basis"]), note)


def _formula(technique: str, abv_percent: float) -> float:
    table = constants("dilution")[technique]
    terms = [table["constant"], table["linear"], table["square"]]
    return float(polynomial(terms, abv_percent / 100.0))


HOT_KEPT = "added to boiling liquid, off the heat"
"""What a hot drink is taken for in the table of what stays of its alcohol."""
HOT_MELTS_MORE = 2.0
"""The dilution of what goes hot onto ice is doubted so many times as much (a choice)."""
_HOT = ("hot-drink", "boiling-water")
_COLD = ("cold-brew-coffee", "brewed-tea")
"""Kinds among the hot ones that a cold drink is made with once they have cooled."""


Measure = Callable[[Content], float]


@dataclass(frozen=True)
class Mixture:
    """The counted lines, for each whether it meets the ice, and how the drink is made."""

    contents: tuple[Content, ...]
    on_ice: tuple[bool, ...]
    technique: Technique
    tree: FamilyTree

    @cached_property
    def start_ml(self) -> float:
        """Everything poured, before ice."""
        return self.total(lambda each: each.volume_ml)

    @cached_property
    def iced_ml(self) -> float:
        """What of it meets the ice."""
        return self._iced(lambda each: each.volume_ml)

    @cached_property
    def iced(self) -> Dilution:
        """The water the ice adds, as a share of what meets it."""
        if not self.iced_ml:
            return expected_dilution("hot", 0.0)
        abv = 100.0 * self._iced(lambda each: each.ethanol_ml) / self.iced_ml
        found = expected_dilution(self.technique, abv)
        return replace(found, sigma=found.sigma * HOT_MELTS_MORE) if self.hot_on_ice else found

    @property
    def whole(self) -> Dilution:
        """The same water as a share of everything poured."""
        part = self.iced_ml / self.start_ml if self.start_ml else 0.0
        return replace(self.iced, share=self.iced.share * part, sigma=self.iced.sigma * part)

    @cached_property
    def hot_on_ice(self) -> tuple[str, ...]:
        """Keys of what meets the ice while it is hot."""
        return tuple(
            each.pour.ingredient
            for each, iced in zip(self.contents, self.on_ice, strict=True)
            if iced and each.volume_ml and self._is_hot(each.pour.ingredient)
        )

    @cached_property
    def served_ml(self) -> float:
        """Everything poured and the water of the ice."""
        return self.start_ml + self.iced.share * self.iced_ml

    @cached_property
    def unknown_alcohol(self) -> tuple[str, ...]:
        """Keys of alcoholic lines without an amount, for which no strength can be said.

        Bitters without one hardly count beside anything stronger in the glass.
        """
        without = [
            each.pour.ingredient
            for each in self.contents
            if each.line.quantity is None and not each.counted and each.liquid.abv.value >= 1.0
        ]
        if self.total(lambda each: each.ethanol_ml):
            without = [key for key in without if not self.tree.is_a(key, "bitters")]
        return tuple(dict.fromkeys(without))

    @property
    def alcohol_kept(self) -> float:
        """The share of the alcohol that stays in."""
        return alcohol_kept()[HOT_KEPT] if self.technique == "hot" else 1.0

    def total(self, amount: Measure) -> float:
        """How much of something the drink holds."""
        return sum(map(amount, self.contents))

    def per_l(self, amount: Measure) -> float:
        """How much of something a litre of the drink as served holds."""
        return 1000.0 * self.total(amount) / self.served_ml if self.served_ml else 0.0

    @property
    def abv_percent(self) -> float | None:
        """Its strength as served, in % vol; None where something alcoholic has no amount."""
        return None if self.unknown_alcohol else self.counted_abv_percent

    @property
    def counted_abv_percent(self) -> float:
        """The strength that what is counted comes to, in % vol."""
        return self.per_l(lambda each: each.ethanol_ml) / 10.0

    @property
    def served_sigma_ml(self) -> float:
        """Doubt of the volume served."""
        pours = zip(self.contents, self._grows, strict=True)
        water = self.iced.sigma * self.iced_ml
        return _root(water, *(grow * each.sigma_ml for each, grow in pours))

    def sigma(self, held: Measure, doubt: Measure, further: float = 0.0) -> float:
        """Doubt of a concentration; `held` and `doubt` are each line's own, in the same unit.

        `further` is another doubt of the whole concentration.
        """
        served = self.served_ml
        if not served:
            return 0.0
        whole = self.total(lambda each: held(each) * each.volume_ml) / served
        parts = [further, whole * self.iced.sigma * self.iced_ml / served]
        for each, grow in zip(self.contents, self._grows, strict=True):
            parts.append((held(each) - whole * grow) * each.sigma_ml / served)
            parts.append(doubt(each) * each.volume_ml / served)
        return _root(*parts)

    @property
    def _grows(self) -> list[float]:
        """By how much the drink grows for each millilitre more of each line."""
        return [1.0 + self.iced.share * iced for iced in self.on_ice]

    def _iced(self, amount: Measure) -> float:
        both = zip(self.contents, self.on_ice, strict=True)
        return sum(amount(each) for each, iced in both if iced)

    def _is_hot(self, key: str) -> bool:
        is_any = self.tree.is_a
        return any(is_any(key, each) for each in _HOT) and not any(
            is_any(key, each) for each in _COLD
        )


def _root(*parts: float) -> float:
    return float(sum(part * part for part in parts) ** 0.5)
