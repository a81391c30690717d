"""Drinks and shoots made ready to be printed, published and shown on camera."""

from __future__ import annotations

from collections.abc import Callable, Iterable, Iterator, Mapping, Sequence
from dataclasses import dataclass
from typing import Literal

from barkeep.application.finding import find_spec
from barkeep.documents.bottles_written import bottles_csv
from barkeep.documents.printed.blocks import job_text
from barkeep.documents.printed.camera import CameraDrink, camera_drink
from barkeep.documents.printed.cards import CardContent, DrinkFacts, card_content
from barkeep.documents.printed.dates import day_on_paper
from barkeep.documents.printed.descriptions import (
    Draw,
    description_html,
    description_markdown,
    description_text,
    episode_markdown,
    episode_text,
)
from barkeep.documents.printed.jobs import (
    Job,
    cards_job,
    descriptions_job,
    labels_job,
    menu_job,
    prep_job,
)
from barkeep.documents.printed.labels import LabelContent, label_content, prep_content
from barkeep.documents.printed.menus import MenuContent, menu_content
from barkeep.documents.printed.paper import Size
from barkeep.documents.printed.run_sheet import Drawn, Outlook, RunSheetContent, run_sheet_content
from barkeep.documents.printed.templates import Kind, Template
from barkeep.documents.specs.files import EXPORT_FORMATS, exported
from barkeep.domain.bar.shoots import Shoot, ShootDrink
from barkeep.domain.bar.snapshot import Snapshot
from barkeep.domain.bottles.bottle import Bottle
from barkeep.domain.buying.shopping import name_in_words, packages_in_words, shopping_for
from barkeep.domain.cautions.allergens import allergens_of
from barkeep.domain.cautions.caution_words import caution_in_words
from barkeep.domain.cautions.cautions import (
    IN_GENERAL,
    Caution,
    cautions_for,
    cautions_of_any_drink,
    occasion_of,
)
from barkeep.domain.drink.analysis import analyse
from barkeep.domain.drink.picture import picture_of
from barkeep.domain.pouring.minded import Minded
from barkeep.domain.shoots.drinks import as_poured, orders_of, without_spec
from barkeep.domain.shoots.log import not_taken_as_planned
from barkeep.domain.shoots.mise_en_place import mise_en_place
from barkeep.domain.shoots.plan import (
    ShootPlan,
    as_of,
    asked_of_bottles,
    not_counted,
    plan,
    shortfall,
)
from barkeep.domain.specs.spec import Spec, UnsettledLine
from barkeep.errors import UserError, spoken_list
from barkeep.translation import tr, tr_noop


class NothingToExport(UserError):
    """An export of all the owner's specs where there are none."""

    says = "There is no spec of your own to export; name a classic, or ask for all of them."


class NoBottlesToExport(UserError):
    """A list of bottles of a bar that has none."""

    says = "There is no bottle to export."


Words = Literal["brief", "bare", "full"]
"""How many words of caution a document has: what can hurt now, and the general ones in a sentence;
without that sentence; or every caution with its authority."""


def drink_facts(spec: Spec, snapshot: Snapshot, *, words: Words = "brief") -> DrinkFacts:
    """Strength, standard drinks, allergens and cautions of a spec made as it is written.

    Of what is true of every drink with alcohol, in *full* only what needs its figures is there.
    """
    tree = snapshot.knowledge.tree
    keys = frozenset(key for line in spec.lines for key in line.wanted)
    found = analyse(spec, snapshot)
    known = found.served_volume_ml > 0.0
    if spec.unsettled or (found.optional_alcohol and not found.ethanol_g):
        known = False  # It may be poured with alcohol or without: a card promises neither.
    strength = found.abv_percent if known else None
    drinks = found.standard_drinks if known and not found.is_batch else None
    occasion = occasion_of(found.spec, keys, tree, abv_percent=strength, standard_drinks=drinks)
    minded = Minded(cautions_for(occasion, tree), allergens_of(keys, tree))
    general = [each for each in cautions_for(occasion, tree, general=True) if each.general]
    return DrinkFacts(
        abv_percent=strength,
        standard_drinks=drinks,
        country=found.country,
        allergens=tuple(tr(each.word) for each in minded.allergens),
        cautions=(
            *map(_not_understood, spec.unsettled),
            *_cautions_in_words(minded, general, words),
        ),
        in_general=bool(general) and words == "brief",
        picture=picture_of(found, tree),
    )


def _not_understood(line: UnsettledLine) -> str:
    return tr(
        "{line} is not understood: what it adds, its strength and allergens, is not known.",
        line=line.named,
    )


def _cautions_in_words(minded: Minded, general: Sequence[Caution], words: Words) -> Iterator[str]:
    if words != "full":
        yield from (tr(each.text) for each in minded.all_cautions if each.tier != "general")
        if general and words == "brief":
            yield tr(IN_GENERAL)
        return
    every = cautions_of_any_drink()
    yield from map(caution_in_words, minded.all_cautions)
    yield from (caution_in_words(each) for each in general if each not in every)


def cards_of(specs: Iterable[Spec], snapshot: Snapshot) -> tuple[CardContent, ...]:
    """What is printed of each spec."""
    return _cards([(spec, drink_facts(spec, snapshot)) for spec in specs], snapshot)


def _cards(known: Iterable[tuple[Spec, DrinkFacts]], snapshot: Snapshot) -> tuple[CardContent, ...]:
    tree, settings = snapshot.knowledge.tree, snapshot.settings
    return tuple(card_content(spec, tree, settings, facts) for spec, facts in known)


def described_of(specs: Iterable[Spec], snapshot: Snapshot) -> tuple[CardContent, ...]:
    """The same for one document of them all: the general words stand with the last that has any."""
    known = [(spec, drink_facts(spec, snapshot)) for spec in specs]
    last = max((number for number, each in enumerate(known) if each[1].in_general), default=0)
    bare = [(spec, facts.without_general) for spec, facts in known[:last]]
    return _cards([*bare, *known[last:]], snapshot)


def menu_of(
    title: str,
    specs: Sequence[Spec],
    snapshot: Snapshot,
    *,
    strength: bool = True,
    allergens: bool = True,
) -> MenuContent:
    """A menu of these specs; where one holds alcohol, with what is true of every such drink."""
    return menu_content(
        title,
        cards_of(specs, snapshot),
        strength=strength,
        allergens=allergens,
        cautions=cautions_of_any(specs, snapshot),
    )


def cautions_of_any(
    specs: Iterable[Spec], snapshot: Snapshot, *, words: Words = "brief"
) -> tuple[str, ...]:
    """The general cautions where one of these specs holds alcohol, else none."""
    alcoholic = snapshot.knowledge.tree.alcoholic
    strong = any(
        spec.unsettled or any(key in alcoholic for line in spec.lines for key in line.wanted)
        for spec in specs
    )
    return general_cautions(words) if strong else ()


def general_cautions(words: Words = "brief") -> tuple[str, ...]:
    """What is true of every drink with alcohol, and needs no figures."""
    if words == "brief":
        return (tr(IN_GENERAL),)
    every = cautions_of_any_drink()
    return tuple(caution_in_words(each) if words == "full" else tr(each.text) for each in every)


def house_made(snapshot: Snapshot) -> tuple[Bottle, ...]:
    """The bottles of what is made here, by name, the newest first."""
    made = [bottle for bottle in snapshot.bottles if bottle.product.house_made]
    made.sort(key=lambda each: -(each.made.toordinal() if each.made else 0))
    return tuple(sorted(made, key=lambda each: each.product.name.casefold()))


def labels_of(bottles: Iterable[Bottle], snapshot: Snapshot) -> tuple[LabelContent, ...]:
    """The label of each bottle, with what its ingredient and its inputs commonly carry."""
    return tuple(label_content(each, _allergens(each, snapshot)) for each in bottles)


def list_of_bottles(snapshot: Snapshot) -> str:
    """All bottles as a CSV text that comes back as it is. Raises `NoBottlesToExport`."""
    if not snapshot.bottles:
        raise NoBottlesToExport()
    return bottles_csv(snapshot.bottles, snapshot.settings.currency)


def specs_to_export(
    snapshot: Snapshot, names: Sequence[str] = (), *, classics: bool = False
) -> tuple[Spec, ...]:
    """The specs of these names, or all of the owner's, with `classics` those as well.

    Each once. Raises `UnknownName`, `AmbiguousName` or `NothingToExport`.
    """
    if names:
        chosen = [find_spec(snapshot, name) for name in names]
    else:
        chosen = [spec for spec in snapshot.all_specs if not spec.classic]
    if classics:
        chosen += [spec for spec in snapshot.all_specs if spec.classic]
    if not chosen:
        raise NothingToExport()
    return tuple(dict.fromkeys(chosen))


def _allergens(bottle: Bottle, snapshot: Snapshot) -> tuple[str, ...]:
    knowledge = snapshot.knowledge
    keys = {bottle.ingredient}
    for recipe in knowledge.made_from:
        if recipe.made == bottle.ingredient:
            keys |= {each.ingredient for each in recipe.inputs}
    home_made = {bottle.ingredient} if bottle.product.house_made else ()
    return tuple(tr(each.word) for each in allergens_of(keys, knowledge.tree, home_made))


OF_SPECS: tuple[Kind, ...] = ("card", "menu", "description")
"""Kinds that are made of specs; the others are made of house-made bottles."""


@dataclass(frozen=True)
class PrintChoice:
    """What is printed how. `paper` None is the card itself; `card` counts for cards and labels.

    `strength` and `allergens` say whether a menu marks them. A web page shows the drinks
    where somebody can `draw` them.
    """

    template: Template
    paper: Size | None
    card: Size | None = None
    specs: tuple[Spec, ...] = ()
    bottles: tuple[Bottle, ...] = ()
    title: str = ""
    strength: bool = True
    allergens: bool = True
    draw: Draw | None = None

    @property
    def kind(self) -> Kind:
        """What kind of document it is."""
        return self.template.kind

    @property
    def empty(self) -> bool:
        """Whether nothing is chosen to be printed."""
        return not (self.specs if self.kind in OF_SPECS else self.bottles)


@dataclass(frozen=True, slots=True)
class TextForm:
    """One form of text: what it is called, the suffix of its file, and how it is written."""

    title: str
    suffix: str
    write: Callable[[PrintChoice, Snapshot], str]


def job_for(choice: PrintChoice, snapshot: Snapshot) -> Job:
    """The pages to be laid out. Pure, so that it may be asked for off the GUI thread."""
    template, paper, card = choice.template, choice.paper, choice.card
    if choice.kind == "card" and card is not None:
        return cards_job(cards_of(choice.specs, snapshot), template, paper, card)
    if choice.kind == "label" and card is not None:
        return labels_job(labels_of(choice.bottles, snapshot), template, paper, card)
    if paper is None:
        raise ValueError(f"a {choice.kind} needs a paper, and cards and labels their own size")
    if choice.kind == "menu":
        marks = {"strength": choice.strength, "allergens": choice.allergens}
        menu = menu_of(choice.title, choice.specs, snapshot, **marks)
        return menu_job(menu, template, paper)
    if choice.kind == "prep":
        title = choice.title or tr("Prep list, {day}", day=day_on_paper(snapshot.on))
        prep = prep_content(title, choice.bottles, snapshot)
        return prep_job(prep, template, paper)
    return descriptions_job(described_of(choice.specs, snapshot), template, paper)


def text_for(choice: PrintChoice, snapshot: Snapshot) -> str:
    """The same as plain text, such as for the clipboard."""
    if choice.kind in ("card", "description"):
        return description_text(described_of(choice.specs, snapshot))
    return job_text(job_for(choice, snapshot).groups)


def text_forms(kind: Kind) -> Sequence[TextForm]:
    """The forms of text that a kind of document can be saved in, the usual one first."""
    return _FORMS[kind]


def _described(
    write: Callable[[Sequence[CardContent]], str],
) -> Callable[[PrintChoice, Snapshot], str]:
    return lambda choice, snapshot: write(described_of(choice.specs, snapshot))


def _as_page(choice: PrintChoice, snapshot: Snapshot) -> str:
    return description_html(described_of(choice.specs, snapshot), draw=choice.draw)


def _as_specs(suffix: str) -> Callable[[PrintChoice, Snapshot], str]:
    return lambda choice, snapshot: exported(
        choice.specs, f"specs{suffix}", snapshot.knowledge.tree, snapshot.settings.units
    )


_DESCRIPTIONS = (
    TextForm(tr_noop("Description as text"), ".txt", _described(description_text)),
    TextForm(tr_noop("Description as Markdown"), ".md", _described(description_markdown)),
    TextForm(tr_noop("Description as a web page"), ".html", _as_page),
)
_SPECS_AS: Mapping[str, str] = {
    ".txt": tr_noop("Specs as plain text"),
    ".md": tr_noop("Specs as Markdown"),
    ".json": tr_noop("Specs as barkeep’s own JSON"),
    ".jsonld": tr_noop("Specs as JSON-LD"),
    ".csv": tr_noop("Specs as CSV"),
}
_SPECS = tuple(TextForm(_SPECS_AS[suffix], suffix, _as_specs(suffix)) for suffix in EXPORT_FORMATS)
_WORDS = (TextForm(tr_noop("Text"), ".txt", text_for),)
_FORMS: Mapping[Kind, Sequence[TextForm]] = {
    "card": (*_SPECS, *_DESCRIPTIONS),
    "menu": (TextForm(tr_noop("Menu as text"), ".txt", text_for), *_SPECS),
    "description": (*_DESCRIPTIONS, *_SPECS),
    "label": _WORDS,
    "prep": _WORDS,
}


@dataclass(frozen=True, slots=True)
class PublishText:
    """The text of one episode, in two forms."""

    text: str
    markdown: str


def run_sheet_of(shoot: Shoot, snapshot: Snapshot) -> RunSheetContent:
    """The run sheet of a shoot, with what is to be bought for it while it lies ahead."""
    then = as_of(shoot, snapshot)
    cards = [_card(drink, then, "full") for drink in shoot.drinks]
    orders = orders_of(shoot, then)
    return run_sheet_content(
        shoot,
        cards=cards,
        ready=mise_en_place(orders, then),
        outlook=_outlook(shoot, then),
        shopping=_to_buy(shoot, then),
        general_cautions=cautions_of_any([each.spec for each in orders], then, words="full"),
    )


def publish_text_of(shoot: Shoot, snapshot: Snapshot) -> PublishText:
    """The text for all drinks of an episode, as they are poured in it."""
    found = [_card(drink, snapshot, "bare") for drink in shoot.drinks]
    cards = [card for card in found if card is not None]
    removed = without_spec(shoot, snapshot)
    specs = [each.spec for each in orders_of(shoot, snapshot)]
    general = cautions_of_any(specs, snapshot, words="bare")
    told = (shoot.theme, cards, removed, general)
    return PublishText(episode_text(*told), episode_markdown(*told))


def _outlook(shoot: Shoot, snapshot: Snapshot) -> Outlook:
    """What the bar can pour; of a logged shoot, what it did pour."""
    found = plan(shoot, snapshot)
    if shoot.log is not None:
        drawn = [
            Drawn(each.title, each.poured + each.spilled, each.unit) for each in shoot.log.bottles
        ]
        return Outlook(found.verdict, (), tuple(drawn))
    filmed = shoot.state == "filmed"
    short = [*(not_taken_as_planned(shoot, snapshot) if filmed else _runs_short(found, snapshot))]
    short += not_counted(found.menu.orders, snapshot)
    short += asked_of_bottles(found.menu, snapshot)
    drawn = [
        Drawn(each.bottle.product.title, each.amount, each.bottle.product.unit)
        for each in found.menu.draws
    ]
    return Outlook(found.verdict, tuple(short), tuple(drawn))


def _runs_short(found: ShootPlan, snapshot: Snapshot) -> Iterator[str]:
    yield from (shortfall(line, snapshot) for line in found.menu.lacking)
    drop = zip(found.menu.orders, found.menu.drop, strict=True)
    dropped = tuple(
        tr("{count} of {drink}", count=count, drink=order.spec.name)
        for order, count in drop
        if count
    )
    if dropped:
        yield tr("Without {drinks}, the others can be poured.", drinks=spoken_list(dropped, "and"))


def _to_buy(shoot: Shoot, snapshot: Snapshot) -> tuple[str, ...]:
    if shoot.state in ("filmed", "logged"):
        return ()
    tree = snapshot.knowledge.tree
    found = shopping_for([shoot], snapshot, pars=False)
    return tuple(f"{name_in_words(each, tree)}: {packages_in_words(each)}" for each in found.items)


def _card(drink: ShootDrink, snapshot: Snapshot, words: Words) -> CardContent | None:
    """A drink as it is poured, what replaces another saying so; None without its spec."""
    poured = as_poured(drink, snapshot)
    if poured is None:
        return None
    facts = drink_facts(poured, snapshot, words=words)
    return card_content(poured, snapshot.knowledge.tree, snapshot.settings, facts)


def camera_drinks_of(shoot: Shoot, snapshot: Snapshot) -> tuple[CameraDrink, ...]:
    """Every drink of a shoot as it will be poured; those whose spec was removed are left out."""
    poured = ((each, as_poured(each, snapshot)) for each in shoot.drinks)
    return camera_drinks(
        ((spec, each.serves.camera) for each, spec in poured if spec is not None), snapshot
    )


def camera_drinks(specs: Iterable[tuple[Spec, int]], snapshot: Snapshot) -> tuple[CameraDrink, ...]:
    """Specs with their serves on camera, with the cautions that belong to them."""
    tree, settings = snapshot.knowledge.tree, snapshot.settings
    return tuple(
        camera_drink(
            spec,
            tree,
            settings,
            serves=max(1, serves),
            cautions=_cautions(facts),
            picture=facts.picture,
        )
        for spec, serves in specs
        for facts in [drink_facts(spec, snapshot)]
    )


def _cautions(facts: DrinkFacts) -> tuple[str, ...]:
    named = ", ".join(map(tr, facts.allergens))
    allergens = (tr("Allergens: {allergens}.", allergens=named),) if named else ()
    return (*allergens, *facts.cautions)
