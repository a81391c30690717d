"""A drink to be poured, with stand-ins on its lines: words and figures for the panel that asks."""

from __future__ import annotations

from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass, replace

from barkeep.desktop.drink.analysis_view import (
    BalanceBar,
    CautionRow,
    before_you_pour,
    view_of,
)
from barkeep.desktop.drink.words import LineState, line_state, with_duty
from barkeep.domain.amounts.amount import show_number
from barkeep.domain.bar.shoots import ChosenPour
from barkeep.domain.bar.snapshot import Snapshot
from barkeep.domain.drink.comparison import FigureRow, compare, figure_rows
from barkeep.domain.drink.picture import DrinkPicture
from barkeep.domain.ingredients.tree import FamilyTree
from barkeep.domain.phrases import as_sentence, capitalised
from barkeep.domain.pouring.assessment import LineAnswer
from barkeep.domain.pouring.verdicts import Drink
from barkeep.domain.shoots.one_drink import poured_out
from barkeep.domain.specs.shown_lines import ShownLine, shown_lines
from barkeep.domain.specs.spec import Spec
from barkeep.domain.stand_ins.in_a_drink import (
    LineOffers,
    chosen_offer,
    line_offers,
    riff_name,
    with_pours,
)
from barkeep.domain.stand_ins.offers import UNKNOWN, Offer
from barkeep.domain.stand_ins.words import closeness_in_words
from barkeep.errors import spoken_list
from barkeep.translation import tr, tr_noop

MOST_BEYOND = 4
"""So many stand-ins that are not here are named with a line."""


@dataclass(frozen=True, slots=True)
class Choice:
    """One thing that may go into a line; `chosen` is None for what the line asks for."""

    words: str
    chosen: ChosenPour | None = None
    note: str = ""


@dataclass(frozen=True, slots=True)
class LineChoices:
    """One line with what may go into it, of which the one at `begins` stands at first.

    Without `choices` nothing can be poured instead. `rest` says what is not offered, and why.
    """

    place: int
    text: str
    state: LineState
    choices: tuple[Choice, ...] = ()
    begins: int = 0
    rest: str = ""


@dataclass(frozen=True, slots=True)
class PourAsked:
    """A drink with what may go into each of its lines."""

    drink: Drink
    lines: tuple[LineChoices, ...]

    @property
    def first_open(self) -> int:
        """The number of the line that most asks for a choice."""
        offered = [number for number, each in enumerate(self.lines) if each.choices]
        short = (each for each in offered if self.lines[each].begins or self._lacks(each))
        return next(short, offered[0] if offered else -1)

    def _lacks(self, number: int) -> bool:
        return self.lines[number].state.tone != "ready"


@dataclass(frozen=True, slots=True)
class PourSeen:
    """The drink as it would be poured: its figures beside those as written, and what to mind.

    `lacking` says why it cannot be poured; `brought` what allergens come in with it.
    """

    figures: tuple[FigureRow, ...]
    bars: tuple[BalanceBar, ...]
    picture: DrinkPicture | None
    cautions: tuple[CautionRow, ...]
    brought: str
    lacking: tuple[str, ...]
    likely_name: str
    is_changed: bool


def pour_asked(drink: Drink, snapshot: Snapshot) -> PourAsked:
    """Each line of a drink with what may go into it."""
    tree, settings = snapshot.knowledge.tree, snapshot.settings
    shown = shown_lines(drink.spec, tree, settings.shown_in, settings.units)
    offers = {each.place: each for each in line_offers(drink, snapshot)}
    lines = (
        _line(place, answer, shown[place], offers.get(place), drink=drink, snapshot=snapshot)
        for place, answer in enumerate(drink.lines)
    )
    return PourAsked(drink, tuple(lines))


def pour_seen(
    spec: Spec, chosen: Sequence[ChosenPour], snapshot: Snapshot, serves: int = 1
) -> PourSeen:
    """The drink with what is chosen for its lines; the figures are of one serve."""
    tree = snapshot.knowledge.tree
    found = poured_out(spec, snapshot, chosen, serves)
    before, after = view_of(spec, snapshot), view_of(found.spec, snapshot)
    minded = () if after is None else before_you_pour(after.minded)
    carried, carries = (
        {each.word for each in view.minded.allergens} if view else set[str]()
        for view in (before, after)
    )
    new = sorted(carries - carried)
    is_changed = found.spec.lines != spec.lines
    return PourSeen(
        figures=figure_rows(compare(spec, found.spec, snapshot)),
        bars=_bars(before.bars if before else (), after.bars if after else (), moved=is_changed),
        picture=None if after is None else after.picture,
        cautions=minded,
        brought=tr("Brings in {allergens}.", allergens=spoken_list(list(map(tr, new)), "and"))
        if new and is_changed
        else "",
        lacking=found.lacking,
        likely_name=riff_name(spec, chosen, tree),
        is_changed=is_changed,
    )


def _bars(
    before: Sequence[BalanceBar], after: Sequence[BalanceBar], *, moved: bool
) -> tuple[BalanceBar, ...]:
    """The bars of what is poured, each with where the drink as written stands."""
    was: Mapping[str, BalanceBar] = {each.label: each for each in before} if moved else {}
    return tuple(
        replace(each, was=was[each.label].mark, was_value=was[each.label].value)
        if each.label in was and was[each.label].value != each.value
        else each
        for each in after
    )


def _line(
    place: int,
    answer: LineAnswer,
    shown: ShownLine,
    offers: LineOffers | None,
    *,
    drink: Drink,
    snapshot: Snapshot,
) -> LineChoices:
    tree = snapshot.knowledge.tree
    text, state = with_duty(answer.line, shown.text), line_state(answer, tree)
    if offers is None:
        return LineChoices(place, text, state)
    rest = "" if state.tone == "ready" else " ".join(_rest(offers, tree))
    if not offers.owned:
        return LineChoices(place, text, state, rest=rest)
    others = tuple(_choice(drink.spec, place, each, snapshot) for each in offers.owned)
    likely = offers.likely
    return LineChoices(
        place=place,
        text=text,
        state=state,
        choices=(Choice(_as_written(answer)), *others),
        begins=0 if likely is None else 1 + offers.owned.index(likely),
        rest=rest,
    )


def _as_written(answer: LineAnswer) -> str:
    """The choice of pouring what the line asks for, and whether that is here."""
    is_here = answer.met and answer.closeness >= 1.0
    return tr("As written") if is_here else tr("As written, which is not here")


def _choice(spec: Spec, place: int, offer: Offer, snapshot: Snapshot) -> Choice:
    tree, settings = snapshot.knowledge.tree, snapshot.settings
    chosen = chosen_offer(spec, place, offer, snapshot)
    poured = with_pours(spec, [chosen], tree)
    amount = shown_lines(poured, tree, settings.shown_in, settings.units)[place].amount
    name = " ".join(filter(None, (amount, tree.in_sentence(offer.ingredient))))
    times = show_number(round(chosen.ratio, 2), fractions=False)
    alike = tree[spec.lines[place].ingredient].unit == tree[offer.ingredient].unit
    ratio = (
        tr("{times} times as much.", times=times)
        if alike and abs(chosen.ratio - 1.0) > 0.005
        else ""
    )
    from_bottle = (
        "" if offer.bottle is None else tr("From {title}.", title=offer.bottle.product.title)
    )
    changes = as_sentence("; ".join(offer.corrections)) if offer.corrections else ""
    said = " ".join(filter(None, (ratio, offer.why, from_bottle, changes)))
    return Choice(f"{name} · {closeness_in_words(offer.closeness)}", chosen, said)


def _rest(offers: LineOffers, tree: FamilyTree) -> Iterator[str]:
    """What is not offered for a line that is not met as written, and why."""
    found = offers.stand_ins
    if found.none_because and not offers.owned:
        because = tr(found.none_because)
        yield as_sentence(
            because
            if found.none_because == UNKNOWN
            else tr("nothing stands in for it: {because}", because=because)
        )
    if offers.beyond:
        named = [_with_closeness(each, tree) for each in offers.beyond[:MOST_BEYOND]]
        yield tr("Not in the bar: {named}.", named=spoken_list(named, "and"))
    if offers.far:
        named = [_with_closeness(each, tree) for each in offers.far]
        yield tr("Too far off: {named}.", named=spoken_list(named, "and"))
    for friend in found.confusables:
        yield tr(
            "Never {ingredient}: {why}.",
            ingredient=tree.in_sentence(friend.ingredient),
            why=tr(friend.why).rstrip("."),
        )


def _with_closeness(offer: Offer, tree: FamilyTree) -> str:
    return f"{tree.in_sentence(offer.ingredient)} ({offer.closeness:.2f})"


def figure_in_words(row: FigureRow) -> str:
    """A figure, and where it was where it has moved: *21.0 % vol → 19.6 % vol (−1.4 % vol)*."""
    return f"{row.before} → {row.after} ({row.change})" if row.change else row.after


def brief_of(seen: PourSeen) -> str:
    """Strength, sweet and sour in one line, each with where it was where it has moved."""
    return " · ".join(
        tr(
            said,
            figure=f"{each.before.removesuffix(unit)} → {each.after}"
            if each.change
            else each.after,
        )
        for each, (said, unit) in zip(seen.figures, _BRIEFLY, strict=False)
    )


_BRIEFLY = (
    ("{figure}", " % vol"),
    (tr_noop("sweet {figure}"), " g/l"),
    (tr_noop("sour {figure}"), " g/l"),
)
"""How each of the first figures stands in the brief line, and its unit."""


def told_of(seen: PourSeen) -> str:
    """All figures in one sentence, for those who do not see them."""
    said = (f"{each.label} {figure_in_words(each)}" for each in seen.figures)
    return capitalised("; ".join(said))
