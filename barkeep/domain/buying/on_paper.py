"""A bar changed on paper: with bottles that are not there, and without some that are.

Every answer is asked of a snapshot, so one that is changed gets every answer. Whoever shows one
says `OnPaper.in_words` before it. Nothing of it is ever written.
"""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from dataclasses import dataclass, replace

from barkeep.domain.bar.snapshot import Snapshot
from barkeep.domain.bottles.bottle import Bottle, Level, Product
from barkeep.domain.buying.packages import Purchase
from barkeep.domain.ingredients.tree import FamilyTree
from barkeep.domain.pouring.words import plain_amount
from barkeep.errors import spoken_list
from barkeep.translation import tr


@dataclass(frozen=True, slots=True)
class OnPaper:
    """A bar as it would be: `snapshot` with these `bought`, and without what is `gone`.

    `not_there` are keys of what else is always there.
    """

    snapshot: Snapshot
    bought: tuple[Purchase, ...] = ()
    gone: tuple[Bottle, ...] = ()
    not_there: tuple[str, ...] = ()

    @property
    def is_changed(self) -> bool:
        """Whether anything is other than in the bar."""
        return bool(self.bought or self.gone or self.not_there)

    @property
    def with_words(self) -> tuple[str, ...]:
        """What is there on paper alone: *700 ml of vodka*."""
        tree = self.snapshot.knowledge.tree
        return tuple(_bought_in_words(each, tree) for each in self.bought)

    @property
    def without_words(self) -> tuple[str, ...]:
        """What is not there on paper."""
        tree = self.snapshot.knowledge.tree
        titles = (f"{each.product.title} (#{each.id})" for each in self.gone)
        return (*titles, *(tree.in_sentence(each) for each in self.not_there))

    @property
    def in_words(self) -> str:
        """The sentence that stands before each answer; empty where nothing is changed."""
        more = tr("with {names}", names=spoken_list(self.with_words, "and"))
        less = tr("without {names}", names=spoken_list(self.without_words, "and"))
        if self.with_words and self.without_words:
            said = tr("{more}, and {less}", more=more, less=less)
        elif self.with_words or self.without_words:
            said = more if self.with_words else less
        else:
            return ""
        return tr("On paper, not as the bar is: {said}.", said=said)

    def is_only_there(self, bottle_id: int) -> bool:
        """Whether a bottle is there on paper alone."""
        return bottle_id < 0 and bottle_id in self.snapshot.bottle_by_id

    def anew(self, snapshot: Snapshot) -> OnPaper:
        """The same changes to another picture of the bar; what is not there any more is gone."""
        left = [each for each in self.gone if each.id in snapshot.bottle_by_id]
        return changed_on_paper(snapshot, self.bought, left, self.not_there)


def changed_on_paper(
    snapshot: Snapshot,
    bought: Sequence[Purchase] = (),
    gone: Sequence[Bottle] = (),
    not_there: Sequence[str] = (),
) -> OnPaper:
    """The bar with these bought, without these bottles and without what is always there."""
    ids = {each.id for each in gone}
    left = tuple(each for each in snapshot.bottles if each.id not in ids)
    settings = replace(
        snapshot.settings, not_there=snapshot.settings.not_there | frozenset(not_there)
    )
    less = snapshot.changed(bottles=left, settings=settings)
    return OnPaper(with_bought(less, bought), tuple(bought), tuple(gone), tuple(not_there))


def _bought_in_words(bought: Purchase, tree: FamilyTree) -> str:
    unit = tree[bought.ingredient].unit
    name = tree.in_sentence(bought.ingredient) if bought.product is None else bought.product.title
    amount = plain_amount(bought.stock.amount, unit)
    return (
        f"{amount} × {name}"
        if unit == "each"
        else tr("{amount} of {name}", amount=amount, name=name)
    )


def with_bought(snapshot: Snapshot, purchases: Iterable[Purchase]) -> Snapshot:
    """The bar after really buying these: full, sealed, received today.

    Bottles and products on paper have ids below 0, which none in a bar has.
    """
    products, bottles = list(snapshot.products), list(snapshot.bottles)
    for each in purchases:
        product = each.product
        if product is None:
            product = _unknown_product(each, snapshot, _below(one.id for one in products))
            products.append(product)
        for _package in range(each.packages):
            number = _below(one.id for one in bottles)
            level = Level(product.size, "sealed")
            place = 1 + max((one.position for one in bottles), default=0)
            bottles.append(Bottle(number, product, level, place, received=snapshot.on))
    return snapshot.changed(products=tuple(products), bottles=tuple(bottles))


def _below(ids: Iterable[int]) -> int:
    return min(0, min(ids, default=0)) - 1


def _unknown_product(bought: Purchase, snapshot: Snapshot, number: int) -> Product:
    """What stands for a product that the bar does not know yet."""
    kind = snapshot.knowledge.tree[bought.ingredient]
    return Product(
        name=kind.name,
        maker="",
        ingredient=kind.key,
        size=bought.stock.amount,
        unit=kind.unit,
        price=bought.price,
        id=number,
    )
