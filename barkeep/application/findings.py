"""What is wrong with an open bar, in sentences: its file, what stands in it, what that means."""

from __future__ import annotations

from collections.abc import Iterable, Iterator

from barkeep.application.session import Session
from barkeep.application.shelving import DENSEST_G_PER_L, ROUNDING
from barkeep.domain.bar.snapshot import Snapshot
from barkeep.domain.bottles.bottle import Bottle, Product
from barkeep.domain.bottles.taring import HEAVIEST_G_PER_ML, LIGHTEST_G_PER_ML
from barkeep.domain.days import day_said
from barkeep.store.bottles import read_bottles
from barkeep.store.faults import Fault
from barkeep.store.knowledge import read_own_ingredients
from barkeep.store.place import Place
from barkeep.translation import tr, tr_noop


def findings(session: Session) -> Iterator[str]:
    """Everything that is wrong, the worst first; nothing for a sound bar."""
    faults = session.store.faults()
    yield from (said_of(session.store.place, fault) for fault in faults)
    if not all(each.foreign for each in faults):
        return  # what it means cannot be told before
    with session.store.reading() as connection:
        written, own = read_bottles(connection), read_own_ingredients(connection)
    bar = session.snapshot
    for bottle in written:
        yield from _of_bottle(bottle)
    if written != bar.bottles:
        yield tr("The bottles on the screen are not those in the file; open the bar again.")
    for product in bar.products:
        yield from _of_product(product)
    yield from _of_references(bar)
    known = session.shipped.tree.ingredients.keys() | {each.key for each in own}
    yield from _of_strangers(bar.knowledge.tree.ingredients.keys() - known)


def said_of(place: Place, fault: Fault) -> str:
    """What is wrong with a bar, as a sentence."""
    if fault.foreign:
        return tr("Damage or another program changed it: {fault}.", fault=fault)
    if place.kind == "file":
        return tr("The file is damaged: {fault}.", fault=fault)
    return tr("The database is damaged: {fault}.", fault=fault)


def _of_bottle(bottle: Bottle) -> Iterator[str]:
    held, product = bottle.level.amount, bottle.product
    if held > product.size + ROUNDING:
        yield tr(
            "The ledger of {title} (#{id}) says it holds {held:g} of {size:g} {unit}.",
            title=product.title,
            id=bottle.id,
            held=held,
            size=product.size,
            unit=product.unit,
        )
    if bottle.made and bottle.use_by and bottle.use_by < bottle.made:
        yield tr(
            "{title} (#{id}) was made on {made} and to be used by {use_by}, before that.",
            title=product.title,
            id=bottle.id,
            made=day_said(bottle.made),
            use_by=day_said(bottle.use_by),
        )
    if bottle.tare and bottle.full_g is not None and bottle.full_g < bottle.tare.weight_g:
        yield tr(
            "{title} (#{id}) weighs {empty_g:g} g empty and {full_g:g} g full.",
            title=product.title,
            id=bottle.id,
            empty_g=bottle.tare.weight_g,
            full_g=bottle.full_g,
        )


def _of_product(product: Product) -> Iterator[str]:
    for what, value in (
        (tr_noop("sugar"), product.sugar_g_per_l),
        (tr_noop("acid"), product.acid_g_per_l),
    ):
        if value is not None and value > DENSEST_G_PER_L:
            yield tr(
                "{title} has {value:,.0f} g/l of {what}, more than there can be.",
                title=product.title,
                value=value,
                what=tr(what),
            )
    density = product.density_g_per_ml
    if density is not None and not LIGHTEST_G_PER_ML <= density <= HEAVIEST_G_PER_ML:
        yield tr(
            "{title} weighs {density:g} g/ml, which nothing poured does.",
            title=product.title,
            density=density,
        )


def _of_references(bar: Snapshot) -> Iterator[str]:
    """What names a thing that is not there any more, where nothing in the file ties the two."""
    titles = {each.id for each in bar.products}
    for pour in bar.settings.house:
        if pour.product not in titles:
            yield tr(
                "The house pour of {kind} is a product that is not there.",
                kind=_kind(bar, pour.kind),
            )
    named = [each.ingredient for each in bar.settings.pars]
    named += [each.kind for each in bar.settings.keeps]
    named += [each.ingredient for each in bar.settings.to_buy]
    for key in sorted(set(named) - bar.knowledge.tree.ingredients.keys()):
        yield tr("A setting is about “{key}”, which is no ingredient.", key=key)
    for shoot in bar.shoots:
        if (shoot.state == "logged") != (shoot.log is not None):
            state = tr(shoot.state)
            if shoot.log is None:
                yield tr(
                    "The shoot “{theme}” is {state} and has no log.", theme=shoot.theme, state=state
                )
            else:
                yield tr(
                    "The shoot “{theme}” is {state} and has a log.", theme=shoot.theme, state=state
                )


def _kind(bar: Snapshot, key: str) -> str:
    tree = bar.knowledge.tree
    return tree.in_sentence(key) if key in tree else f"“{key}”"


def _of_strangers(keys: Iterable[str]) -> Iterator[str]:
    yield from (
        tr(
            "The ingredient “{key}” is used in this bar, but not known to this barkeep.",
            key=key,
        )
        for key in sorted(keys)
    )
