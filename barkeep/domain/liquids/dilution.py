"""How much water ice adds, by technique and strength.

All figures are *from memory* or *common practice*, as `resources/liquids.toml`
says of each; one bar's ice and hands are not another's.
"""

from __future__ import annotations

from dataclasses import dataclass

from barkeep.domain.liquids.constants import constants, polynomial, within
from barkeep.domain.specs import Technique

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

    @property
    def share_of_final(self) -> float:
        """The same water as a share of the drink after ice; what some books mean by dilution."""
        return self.share / (1.0 + self.share)


def fitted_dilution(technique: Technique, abv_percent: float) -> float:
    """Dilution of a stirred or shaken drink by Arnold's formulas, *from memory*.

    Range: 15 to 45 % vol before ice, shaken or stirred. Raises `OutsideRange`, `ValueError`.
    """
    if technique not in ("shaken", "stirred"):
        raise ValueError(f"there is no formula for a drink that is {technique}")
    return _formula(technique, within("strength", abv_percent, WEAKEST, STRONGEST, "% vol"))


def expected_dilution(technique: Technique, abv_percent: float) -> Dilution:
    """The dilution to expect of any technique, with more doubt where the formula is stretched.

    Raises `OutsideRange` for what is no strength.
    """
    abv = within("strength", abv_percent, 0.0, 100.0, "% vol")
    # A strength is a quotient: rounding must not decide on which side of a limit it lies.
    fitted = WEAKEST <= round(abv, 9) <= STRONGEST
    known: Technique = "built" if technique == "unknown" else technique
    table = constants("dilution")[known]
    share, doubt, note = _formula(known, min(abv, 60.0)), float(table["doubt"]), ""
    if technique == "unknown":
        note = "the method does not say how it is chilled; taken as built on ice"
    elif table["square"] and not fitted:
        doubt = max(doubt, DOUBT_OUTSIDE)
        note = f"the dilution formula was fitted to 15 to 45 % vol, and this is {abv:.0f} % vol"
    return Dilution(share, share * doubt, str(table["basis"]), note)


def least_dilution(from_c: float, to_c: float, heat_j_per_g_k: float = 4.2) -> float:
    """Grams of ice at 0 °C that must melt to chill a gram of drink: the floor under any dilution.

    By the heat balance, with 333.55 J/g for melting ice (CRC, *from memory*).
    Range: from 0 to 40 °C down to -10 °C. Raises `OutsideRange`.
    """
    start = within("temperature before", from_c, 0.0, 40.0, "°C")
    end = within("temperature after", to_c, -10.0, start, "°C")
    # What melts comes to the drink's own temperature too: it takes up more above 0 °C, less below.
    return heat_j_per_g_k * (start - end) / (_ICE_J_PER_G + _WATER_J_PER_G_K * end)


def _formula(technique: str, abv_percent: float) -> float:
    table = constants("dilution")[technique]
    terms = [table["constant"], table["linear"], table["square"]]
    return float(polynomial(terms, abv_percent / 100.0))
