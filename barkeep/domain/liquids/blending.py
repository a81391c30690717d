"""Pearson's square: how much of a strong and a weak one meet in between."""

from __future__ import annotations

from dataclasses import dataclass

from barkeep.domain.liquids.constants import within


@dataclass(frozen=True, slots=True)
class Square:
    """Parts of the stronger and of the weaker, by volume for % vol, by mass for Brix."""

    stronger: float
    weaker: float

    @property
    def share_stronger(self) -> float:
        """The stronger one's share of the whole, 0 to 1."""
        return self.stronger / (self.stronger + self.weaker)

    def of_total(self, total: float) -> tuple[float, float]:
        """How much of the stronger and of the weaker make up a total."""
        return total * self.share_stronger, total * (1.0 - self.share_stronger)


def pearson_square(stronger: float, weaker: float, wanted: float) -> Square:
    """The parts that blend to a wanted strength, any unit but the same for all three.

    Volumes are taken to add up, which is right to a fifth of a % vol at the
    strengths of drinks. Where the two are equally strong, all of it is the
    stronger. Raises `OutsideRange` where `wanted` lies outside the two, or one
    is below nothing.

    >>> pearson_square(40.0, 15.0, 20.0)
    Square(stronger=5.0, weaker=20.0)
    """
    within("weaker strength", weaker, 0.0, 1e6, unit="")
    within("stronger strength", stronger, weaker, 1e6, unit="")
    within("wanted strength", wanted, weaker, stronger, unit="")
    if stronger == weaker:
        return Square(1.0, 0.0)
    return Square(wanted - weaker, stronger - wanted)
