"""What one shoot still has to buy, of all that it takes; and with that where it stands."""

from __future__ import annotations

from barkeep.domain.bar.snapshot import Snapshot
from barkeep.domain.buying.shopping import shopping_for
from barkeep.domain.shoots.mise_en_place import MiseEnPlace
from barkeep.domain.shoots.plan import ShootPlan
from barkeep.domain.shoots.stops import StopLine, ToShop, stop_line

NOTHING = ToShop((), 0)


def to_shop(plan: ShootPlan, snapshot: Snapshot) -> ToShop:
    """The kinds that one shoot takes from bottles or lacks, less what is made here."""
    bought = shopping_for((plan.shoot,), snapshot, pars=False).items
    left = tuple(each.ingredient for each in bought)
    bottles = (each.bottle for each in plan.menu.draws)
    there = {each.ingredient for each in bottles if not each.product.house_made}
    return ToShop(left, len(there.union(left)))


def stops_for(plan: ShootPlan, mise: MiseEnPlace, snapshot: Snapshot) -> StopLine:
    """Where a shoot stands in the bar as it is; one that was filmed buys nothing."""
    ahead = plan.shoot.state in ("idea", "planned")
    return stop_line(plan, mise, to_shop(plan, snapshot) if ahead else NOTHING, snapshot.on)
