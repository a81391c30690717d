"""What can be made tonight, with what, how often, and why not."""

from __future__ import annotations

from collections.abc import Iterable, Mapping, Sequence
from dataclasses import dataclass
from typing import Literal, get_args

from barkeep.domain.answers import WITHIN, Within
from barkeep.domain.answers.serves import Serves, Way, allows, most_serves
from barkeep.domain.answers.sourcing import Sourcing, need, poured, thresholds
from barkeep.domain.answers.supply import Pool, supply_of
from barkeep.domain.answers.warnings import warnings_for
from barkeep.domain.answers.words import why_met, why_missing
from barkeep.domain.derivations import Derivation
from barkeep.domain.inventory import Bottle
from barkeep.domain.snapshot import Snapshot
from barkeep.domain.specs import Line, Spec
from barkeep.domain.substitution import substitution_graph

Verdict = Literal["ready", "stand_in", "one_short", "short"]
VERDICTS: tuple[Verdict, ...] = get_args(Verdict)


@dataclass(frozen=True, slots=True)
class LineAnswer:
    """How one line is met, or why it is not.

    `ingredient` is the key of what goes in, None where nothing does; `bottle`
    is the one to pour from, None for what is made here or always there.
    """

    line: Line
    ingredient: str | None
    bottle: Bottle | None
    closeness: float
    ratio: float
    why: str
    derivation: Derivation | None = None

    @property
    def met(self) -> bool:
        """Whether the bar can meet it."""
        return self.ingredient is not None

    @property
    def required(self) -> bool:
        """Whether the drink cannot be made without it."""
        return self.line.required


@dataclass(frozen=True, slots=True)
class Drink:
    """One spec's verdict. `serves` is None where nothing limits it.

    `missing` holds the keys wanted and not there; `runs_out` the key of what
    ends the serves.
    """

    spec: Spec
    verdict: Verdict
    serves: int | None
    runs_out: str | None
    missing: tuple[str, ...]
    warnings: tuple[str, ...]
    lines: tuple[LineAnswer, ...]

    @property
    def makeable(self) -> bool:
        """Whether it can be made tonight at all."""
        return self.verdict in ("ready", "stand_in")


@dataclass(frozen=True)
class Assessment:
    """A spec laid out against a supply: each required line with its derivations."""

    spec: Spec
    sourcing: Sourcing
    serves: int
    lines: tuple[Line, ...]
    ways: tuple[tuple[Derivation, ...], ...]
    supply: Mapping[Pool, float]

    def most(self, only: Sequence[int] | None = None, *, exact: bool = False) -> Serves:
        """The most serves of the lines numbered in `only` (all of them by default)."""
        numbers = range(len(self.lines)) if only is None else only
        return most_serves(self._poured_by(numbers, exact), self.supply)

    def enough(self, only: Sequence[int] | None = None, *, exact: bool = False) -> bool:
        """Whether those lines allow the serves asked for."""
        numbers = range(len(self.lines)) if only is None else only
        return allows(self._poured_by(numbers, exact), self.supply, self.serves)

    def short_lines(self) -> tuple[int, ...]:
        """The numbers of the lines that keep the drink from being made.

        First every line that cannot be met even alone; then, where the rest
        cannot be poured together, the first line whose absence lets them.
        """
        alone = [each for each in range(len(self.lines)) if not self.enough([each])]
        kept = [each for each in range(len(self.lines)) if each not in alone]
        while kept and not self.enough(kept):
            dropped = next((each for each in kept if self._enough_without(kept, each)), kept[0])
            alone.append(dropped)
            kept.remove(dropped)
        return tuple(sorted(alone))

    def chosen(self, numbers: Sequence[int], *, exact: bool = False) -> tuple[Derivation, ...]:
        """One derivation for each of those lines, the closest that leave the rest enough.

        Where a line can only be poured from several together, its closest.
        """
        allowed = [self._allowed(each, exact) for each in numbers]
        firsts = [derivations[:1] for derivations in allowed]
        if self._pour_together(numbers, firsts):
            return tuple(each[0] for each in firsts)
        for place, derivations in enumerate(allowed):
            for derivation in derivations:
                trial = [*allowed[:place], [derivation], *allowed[place + 1 :]]
                if self._pour_together(numbers, trial):
                    allowed = trial
                    break
        return tuple(each[0] for each in allowed)

    def _allowed(self, number: int, exact: bool) -> list[Derivation]:
        return [each for each in self.ways[number] if each.exact or not exact]

    def _pour_together(
        self, numbers: Sequence[int], choices: Sequence[Sequence[Derivation]]
    ) -> bool:
        lines = [self._poured(each, some) for each, some in zip(numbers, choices, strict=True)]
        return allows(lines, self.supply, self.serves)

    def _enough_without(self, kept: list[int], number: int) -> bool:
        return self.enough([each for each in kept if each != number])

    def _poured_by(self, numbers: Iterable[int], exact: bool) -> list[list[Way]]:
        return [self._poured(each, self._allowed(each, exact)) for each in numbers]

    def _poured(self, number: int, derivations: Sequence[Derivation]) -> list[Way]:
        limits = thresholds(self.spec)
        line = self.lines[number]
        return poured(line, derivations, limits, self.sourcing.supply, self.sourcing.tree)


def tonight(snapshot: Snapshot, within: Within = "close", serves: int = 1) -> tuple[Drink, ...]:
    """Every spec's verdict for so many serves, best verdict first, then by name.

    `within` is the least closeness a stand-in may have. Optional lines and
    garnishes never block a drink.
    """
    sourcing = sourcing_for(snapshot, within)
    drinks = [drink_for(spec, snapshot, sourcing, serves) for spec in snapshot.all_specs]
    return tuple(sorted(drinks, key=_best_first))


def sourcing_for(snapshot: Snapshot, within: Within) -> Sourcing:
    """The search that answers for this snapshot's bottles."""
    knowledge = snapshot.knowledge
    graph = substitution_graph(knowledge)
    return Sourcing(graph, knowledge.tree, supply_of(snapshot), WITHIN[within])


def drink_for(spec: Spec, snapshot: Snapshot, sourcing: Sourcing, serves: int = 1) -> Drink:
    """One spec's verdict."""
    laid_out = assess(spec, sourcing, serves)
    exact = laid_out.enough(exact=True)
    short = () if exact or laid_out.enough() else laid_out.short_lines()
    missing = tuple(dict.fromkeys(laid_out.lines[each].ingredient for each in short))
    most = Serves(0.0) if short else laid_out.most(exact=exact)
    answers = _answers(laid_out, snapshot, short, exact)
    return Drink(
        spec,
        _verdict(exact, missing),
        most.whole,
        most.runs_out[0] if most.runs_out else None,
        missing,
        warnings_for(spec, answers, snapshot),
        answers,
    )


def assess(spec: Spec, sourcing: Sourcing, serves: int = 1) -> Assessment:
    """Lay a spec's required lines out against the supply."""
    lines = spec.required_lines
    ways = tuple(sourcing.ways_to(line, spec) for line in lines)
    pools = sourcing.supply.pools(thresholds(spec))
    return Assessment(spec, sourcing, serves, lines, ways, pools)


def _verdict(exact: bool, missing: tuple[str, ...]) -> Verdict:
    if exact:
        return "ready"
    if not missing:
        return "stand_in"
    return "one_short" if len(missing) == 1 else "short"


def _best_first(drink: Drink) -> tuple[int, int, str]:
    return (VERDICTS.index(drink.verdict), len(drink.missing), drink.spec.name.casefold())


def _answers(
    laid_out: Assessment, snapshot: Snapshot, short: tuple[int, ...], exact: bool
) -> tuple[LineAnswer, ...]:
    """Every line of the spec with what meets it, in the spec's order."""
    kept = [each for each in range(len(laid_out.lines)) if each not in short]
    chosen = dict(zip(kept, laid_out.chosen(kept, exact=exact), strict=True))
    required = iter(range(len(laid_out.lines)))
    answers = []
    for line in laid_out.spec.lines:
        if line.required:
            derivation = chosen.get(next(required))
        else:
            derivation = next(iter(laid_out.sourcing.ways_to(line, laid_out.spec)), None)
        answers.append(_answer(line, derivation, snapshot, laid_out.sourcing))
    return tuple(answers)


def _answer(
    line: Line, derivation: Derivation | None, snapshot: Snapshot, sourcing: Sourcing
) -> LineAnswer:
    supply, tree = sourcing.supply, sourcing.tree
    if derivation is None:
        why = why_missing(line.ingredient, need(line, tree), snapshot, supply)
        return LineAnswer(line, None, None, 0.0, 1.0, why)
    bottle = supply.bottle(derivation.offered, line.min_abv_percent)
    if derivation.offered not in derivation.draws:
        bottle = None
    return LineAnswer(
        line,
        derivation.offered,
        bottle,
        derivation.closeness,
        derivation.ratio,
        why_met(derivation, bottle, snapshot),
        derivation,
    )
