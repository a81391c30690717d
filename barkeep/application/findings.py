"""What is wrong with an open bar, in sentences: its file, what stands in it, what that means."""

from __future__ import annotations

from collections.abc import Iterable, Iterator

from barkeep.application.knowledge import NOT_KNOWN
from barkeep.application.session import Session
from barkeep.application.shelving import DENSEST_G_PER_L, ROUNDING
from barkeep.domain.bar.snapshot import Snapshot
from barkeep.domain.bottles.bottle import Bottle, Product
from barkeep.domain.bottles.taring import HEAVIEST_G_PER_ML, LIGHTEST_G_PER_ML
from barkeep.store.bottles import read_bottles
from barkeep.store.knowledge import read_own_ingredients


def findings(session: Session) -> Iterator[str]:
    """Everything that is wrong, the worst first; nothing for a sound bar."""
    faults = session.store.faults()
    yield from (f"The file is damaged: {fault}." for fault in faults)
    if faults:
        return  # what it means cannot be told before
    with session.store.reading() as connection:
        written, own = read_bottles(connection), read_own_ingredients(connection)
    bar = session.snapshot
    for bottle in written:
        yield from _of_bottle(bottle)
    if written != bar.bottles:
        yield "The bottles on the screen are not those in the file; open the bar again."
    for product in bar.products:
        yield from _of_product(product)
    yield from _of_references(bar)
    known = session.shipped.tree.ingredients.keys() | {each.key for each in own}
    yield from _of_strangers(bar.knowledge.tree.ingredients.keys() - known)


def _of_bottle(bottle: Bottle) -> Iterator[str]:
    held, product = bottle.level.amount, bottle.product
    if held > product.size + ROUNDING:
        said = f"{held:g} of {product.size:g} {product.unit}"
        yield f"The ledger of {product.title} (#{bottle.id}) says it holds {said}."
    if bottle.made and bottle.use_by and bottle.use_by < bottle.made:
        said = f"made on {bottle.made} and to be used by {bottle.use_by}, before that"
        yield f"{product.title} (#{bottle.id}) was {said}."
    if bottle.tare and bottle.full_g is not None and bottle.full_g < bottle.tare.weight_g:
        said = f"{bottle.tare.weight_g:g} g empty and {bottle.full_g:g} g full"
        yield f"{product.title} (#{bottle.id}) weighs {said}."


def _of_product(product: Product) -> Iterator[str]:
    for what, value in (("sugar", product.sugar_g_per_l), ("acid", product.acid_g_per_l)):
        if value is not None and value > DENSEST_G_PER_L:
            yield f"{product.title} has {value:,.0f} g/l of {what}, more than there can be."
    density = product.density_g_per_ml
    if density is not None and not LIGHTEST_G_PER_ML <= density <= HEAVIEST_G_PER_ML:
        yield f"{product.title} weighs {density:g} g/ml, which nothing poured does."


def _of_references(bar: Snapshot) -> Iterator[str]:
    """What names a thing that is not there any more, where nothing in the file ties the two."""
    titles = {each.id for each in bar.products}
    for pour in bar.settings.house:
        if pour.product not in titles:
            yield f"The house pour of {_kind(bar, pour.kind)} is a product that is not there."
    named = [each.ingredient for each in bar.settings.pars]
    named += [each.kind for each in bar.settings.keeps]
    named += [each.ingredient for each in bar.settings.to_buy]
    for key in sorted(set(named) - bar.knowledge.tree.ingredients.keys()):
        yield f"A setting is about “{key}”, which is no ingredient."
    for shoot in bar.shoots:
        if (shoot.state == "logged") != (shoot.log is not None):
            log = "no log" if shoot.log is None else "a log"
            yield f"The shoot “{shoot.theme}” is {shoot.state} and has {log}."


def _kind(bar: Snapshot, key: str) -> str:
    tree = bar.knowledge.tree
    return tree.in_sentence(key) if key in tree else f"“{key}”"


def _of_strangers(keys: Iterable[str]) -> Iterator[str]:
    yield from (f"The ingredient “{key}” is {NOT_KNOWN}." for key in sorted(keys))
