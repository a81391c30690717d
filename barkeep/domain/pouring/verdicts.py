"""What can be made tonight, with what, how often, and why not."""

from __future__ import annotations

from collections.abc import Callable, Iterable, Iterator, Mapping, Sequence
from dataclasses import dataclass, field, replace
from operator import attrgetter
from typing import NamedTuple

from barkeep.collector import collector_paused
from barkeep.domain.bar.snapshot import Snapshot
from barkeep.domain.ingredients.derivations import EXACT, Derivation
from barkeep.domain.ingredients.tree import FamilyTree
from barkeep.domain.pouring.assessment import (
    Assessment,
    LineAnswer,
    assess,
    laid_out_once,
    most_drawn,
)
from barkeep.domain.pouring.memory import Memory
from barkeep.domain.pouring.minded import Minded, minded_after, minded_of
from barkeep.domain.pouring.runs import Serving, what_goes_in
from barkeep.domain.pouring.serves import Serves
from barkeep.domain.pouring.sourcing import Sourcing, Within, need, sourcing_for
from barkeep.domain.pouring.verdict import VERDICTS, Verdict, Verdicts, is_makeable
from barkeep.domain.pouring.warnings import notices_of, warnings_for
from barkeep.domain.pouring.words import asks_in_words, in_dashes_of_bottle, why_met, why_missing
from barkeep.domain.specs.by_spec import BySpec
from barkeep.domain.specs.spec import Line, Spec
from barkeep.translation import tr


@dataclass(frozen=True, slots=True)
class Following:
    """What is poured once the bottles shown are used up: so many serves more.

    `poured` are the lines that something else is poured for, none where the rests of
    several bottles make those serves together; `closeness` is that of the
    farthest of all. `serves` is None where nothing limits them.
    """

    serves: int | None
    closeness: float
    poured: tuple[LineAnswer, ...]

    @property
    def is_stand_in(self) -> bool:
        """Whether it takes a stand-in."""
        return self.closeness < EXACT


@dataclass(frozen=True, slots=True)
class Drink:
    """One spec's verdict. `serves` is what the bottles shown and like ones give.

    It is None where nothing limits it; `then` is what follows, and for how many more.

    `missing` holds the keys wanted and not there, of a choice the first; `runs_out` the key of what
    ends the serves. Each line that is not understood keeps it from being made as a missing
    ingredient does. `warnings` says all that is `minded` and every notice of the bottles.
    """

    spec: Spec
    verdict: Verdict
    serves: int | None
    runs_out: str | None
    missing: tuple[str, ...]
    warnings: tuple[str, ...]
    lines: tuple[LineAnswer, ...]
    minded: Minded = field(default_factory=Minded)
    notices: tuple[str, ...] = ()
    then: tuple[Following, ...] = ()

    @property
    def serves_in_all(self) -> int | None:
        """The serves of the bottles shown and of what follows, None where nothing limits them."""
        all_serves = (self.serves, *(each.serves for each in self.then))
        return None if None in all_serves else sum(each or 0 for each in all_serves)

    @property
    def missing_lines(self) -> tuple[Line, ...]:
        """The lines of what is missing, the first of each."""
        lines = {line.ingredient: line for line in reversed(self.spec.required_lines)}
        return tuple(lines[key] for key in self.missing)

    @property
    def makeable(self) -> bool:
        """Whether it can be made tonight at all."""
        return is_makeable(self.verdict)

    @property
    def lacking(self) -> int:
        """How many things are missing or not understood."""
        return len(self.missing) + len(self.spec.unsettled)

    @property
    def questions(self) -> tuple[str, ...]:
        """The lines that are not understood, in words: *“15 ml fog cordial” is not understood*."""
        return tuple(
            tr("{named} is not understood", named=each.named) for each in self.spec.unsettled
        )


def verdicts(
    snapshot: Snapshot,
    within: Within = "close",
    serves: int = 1,
    memory: Memory | None = None,
) -> Verdicts:
    """Every spec's verdict for so many serves, with nothing worked out of what is poured.

    Takes what `tonight` takes, and says what that says.
    """
    memory = memory or Memory()
    asked = ("verdicts", within, serves)
    return memory.answer(asked, snapshot, lambda: _verdicts(snapshot, within, serves, memory))


@collector_paused()
def _verdicts(snapshot: Snapshot, within: Within, serves: int, memory: Memory) -> Verdicts:
    from barkeep.domain.pouring.whole_book import decide, decided_by_levels  # numpy loads slowly

    closest, sourcing = decide(snapshot, within, serves, memory)
    found = decided_by_levels(closest, sourcing, serves)
    laid_out = laid_out_once(snapshot, within, memory)
    known: BySpec[_LookedAt] = memory.by_spec(
        ("looked at", within, serves), snapshot, drawn=attrgetter("drawn"), serves=serves
    )

    def look_at(spec: Spec) -> _LookedAt:
        one = laid_out.of(spec, lambda each: assess(each, sourcing))
        standing = _standing(one.for_serves(serves))
        place, drawn = VERDICTS.index(standing.verdict), most_drawn(one, sourcing.tree)
        return _LookedAt(place, standing.lacking, drawn)

    seen = known.each((spec for _place, spec in found.undecided), look_at)
    settled = found.settled([each.verdict for each in seen], [each.lacking for each in seen])

    def said() -> Verdicts:
        # The book is in the order of its names, which stays.
        return Verdicts(settled.named(VERDICTS), settled.in_order())

    return memory.once(("verdicts", within, serves), settled.said, said)


def verdicts_one_by_one(specs: Iterable[Spec], laid_out: Callable[[Spec], Assessment]) -> Verdicts:
    """The same of specs as each is laid out, one after the other: quicker for a few."""
    found = [_standing(laid_out(spec)) for spec in specs]
    places = [(VERDICTS.index(each.verdict), each.lacking) for each in found]
    return Verdicts(
        of=tuple(each.verdict for each in found),
        order=tuple(sorted(range(len(found)), key=places.__getitem__)),
    )


def tonight(
    snapshot: Snapshot,
    within: Within = "close",
    serves: int = 1,
    memory: Memory | None = None,
) -> tuple[Drink, ...]:
    """Every drink for so many serves with all that is poured for it, best verdict first.

    After the verdict it goes by how much is lacking, then by name. `within` is
    the least closeness a stand-in may have. Optional lines and garnishes never
    block a drink, but for the garnish that gives it its name. `memory` makes
    asking again after a small change quick; it changes no answer.
    """
    memory = memory or Memory()
    sourcing = sourcing_for(snapshot, within, memory)
    known: BySpec[Drink] = memory.by_spec(("tonight", within, serves), snapshot)
    drinks = (
        known.of(spec, lambda each: drink_for(each, snapshot, sourcing, serves))
        for spec in snapshot.all_specs
    )
    return tuple(sorted(drinks, key=_best_first))


def _best_first(drink: Drink) -> tuple[int, int]:
    return (VERDICTS.index(drink.verdict), drink.lacking)


def drink_for(spec: Spec, snapshot: Snapshot, sourcing: Sourcing, serves: int = 1) -> Drink:
    """One spec's verdict with all that is poured for it."""
    return drink_of(assess(spec, sourcing, serves), snapshot, sourcing)


def drink_of(laid_out: Assessment, snapshot: Snapshot, sourcing: Sourcing) -> Drink:
    """The same of a spec that is laid out."""
    spec, standing = laid_out.spec, _standing(laid_out)
    exact, short = standing.exact, standing.short
    kept = [each for each in laid_out.numbers if each not in short]
    chosen = laid_out.chosen(kept, exact=exact)
    lacking = bool(short or spec.unsettled)
    poured = Serving(chosen, Serves(0.0)) if lacking else laid_out.serving(chosen, exact=exact)
    ways = dict(zip(kept, poured.first, strict=True))
    answers = _answers(laid_out, snapshot, sourcing, ways)
    then = tuple(_following(laid_out, poured, snapshot, sourcing))
    after = tuple(answer for each in then for answer in each.poured)
    tree = snapshot.knowledge.tree
    minded = minded_of(spec, answers, tree)
    notices = (
        *notices_of(answers, snapshot, serves=poured.most.whole, after=after),
        *_minded_later(spec, answers, minded=minded, first=poured.most.whole, then=then, tree=tree),
    )
    return Drink(
        spec=spec,
        verdict=standing.verdict,
        serves=poured.most.whole,
        runs_out=poured.most.runs_out[0] if poured.most.runs_out else None,
        missing=standing.missing,
        warnings=warnings_for(minded, notices),
        lines=answers,
        minded=minded,
        notices=notices,
        then=then,
    )


def _following(
    laid_out: Assessment, served: Serving, snapshot: Snapshot, sourcing: Sourcing
) -> Iterator[Following]:
    before = served.first
    for run in served.then:
        changed = [
            each
            for each in laid_out.numbers
            if what_goes_in(run.ways[each]) != what_goes_in(before[each])
        ]
        poured = (
            _answer(laid_out.lines[each], run.ways[each], snapshot, sourcing) for each in changed
        )
        yield Following(run.serves, run.closeness, tuple(poured))
        before = run.ways
    if served.rests:
        yield Following(served.rests, served.rests_closeness, ())


def _minded_later(
    spec: Spec,
    answers: Sequence[LineAnswer],
    *,
    minded: Minded,
    first: int | None,
    then: Sequence[Following],
    tree: FamilyTree,
) -> Iterator[str]:
    """What is to be minded only of what is poured later: *After 3: raw egg …*."""
    so_far, poured, told = first or 0, list(answers), set[str]()
    for each in then:
        lines = {later.line: later for later in each.poured}
        poured = [lines.get(answer.line, answer) for answer in poured]
        for said in minded_after(minded, spec, poured, tree):
            if said not in told:
                yield tr("After {serves}: {said}", serves=so_far, said=said)
            told.add(said)
        so_far += each.serves or 0


class _LookedAt(NamedTuple):
    """What looking at one drink finds: its verdict's place, and how much it lacks.

    `drawn` is as in `most_drawn`.
    """

    verdict: int
    lacking: int
    drawn: Mapping[str, float] | None


@dataclass(frozen=True, slots=True)
class _Standing:
    """How a drink stands: whether it can be made exactly, and the numbers of the lines it lacks."""

    exact: bool
    short: tuple[int, ...]
    missing: tuple[str, ...]
    lacking: int

    @property
    def verdict(self) -> Verdict:
        return _verdict(self.exact, self.lacking)


def _standing(laid_out: Assessment) -> _Standing:
    exact, short = laid_out.exact, laid_out.short_lines
    missing = tuple(dict.fromkeys(laid_out.lines[each].ingredient for each in short))
    return _Standing(exact, short, missing, len(missing) + len(laid_out.spec.unsettled))


def _verdict(exact: bool, lacking: int) -> Verdict:
    """The verdict where so many ingredients are missing or not understood."""
    if not lacking:
        return "ready" if exact else "stand_in"
    return "one_short" if lacking == 1 else "short"


def _answers(
    laid_out: Assessment,
    snapshot: Snapshot,
    sourcing: Sourcing,
    chosen: Mapping[int, Derivation],
) -> tuple[LineAnswer, ...]:
    """Every line of the spec with what meets it, in the spec's order."""
    required = iter(laid_out.numbers)
    answers = []
    for line in laid_out.spec.lines:
        needed = laid_out.spec.requires(line)
        if needed:
            derivation = chosen.get(next(required))
        else:
            derivation = next(iter(sourcing.ways_to(line, laid_out.spec)), None)
        answer = _answer(line, derivation, snapshot, sourcing)
        answers.append(replace(answer, needed=True) if needed and line.garnish else answer)
    return tuple(answers)


def _answer(
    line: Line, derivation: Derivation | None, snapshot: Snapshot, sourcing: Sourcing
) -> LineAnswer:
    supply, tree = sourcing.supply, sourcing.tree
    if derivation is None:
        why = why_missing(line, need(line, tree), snapshot, supply)
        return LineAnswer(
            line=line, ingredient=None, bottle=None, closeness=0.0, ratio=1.0, why=why
        )
    bottle = supply.bottle(derivation.offered, line.min_abv_percent)
    if derivation.offered not in derivation.draws:
        bottle = None
    why = why_met(line, derivation, bottle, tree)
    dasher = in_dashes_of_bottle(line, bottle, derivation.ratio, snapshot.settings.units)
    return LineAnswer(
        line=line,
        ingredient=derivation.offered,
        bottle=bottle,
        closeness=derivation.closeness,
        ratio=derivation.ratio,
        why=f"{why} {dasher}".rstrip(),
        derivation=derivation,
        dasher=dasher,
        asks=asks_in_words(line, bottle, tree),
    )
