"""`barkeep next-bottle`: the one purchase that turns most drinks to ready."""

from __future__ import annotations

import argparse

from barkeep.cli.arguments import Arguments, add_within
from barkeep.cli.bar_source import opened_bar
from barkeep.cli.output import counted, print_json, rounded
from barkeep.domain.buying.next_bottle import Candidate, next_bottle
from barkeep.domain.ingredients.tree import FamilyTree
from barkeep.domain.phrases import price_in_words

SHOWN = 12
"""Candidates that a person is shown; JSON gives them all."""


def configure(parser: argparse.ArgumentParser) -> None:
    """Its arguments."""
    add_within(parser)
    parser.set_defaults(run=run)


def run(arguments: Arguments) -> int:
    """Print the candidates, most unlocked first."""
    with opened_bar(arguments) as bar:
        snapshot = bar.snapshot
    candidates = next_bottle(snapshot, arguments.within)
    tree = snapshot.knowledge.tree
    if arguments.json:
        print_json({"candidates": [_candidate_json(each, tree) for each in candidates]})
        return 0
    useful = [each for each in candidates if each.unlocks]
    for each in useful[:SHOWN]:
        drinks = counted(len(each.unlocks), "more drink")
        price = price_in_words(each.price, snapshot.settings.currency)
        told = f"{drinks}, {price}" if price else drinks
        print(f"{tree.name(each.ingredient)}: {told}\n    {each.why}")
    if not useful:
        print("No single bottle turns another drink to ready.")
    elif len(useful) > SHOWN:
        print(f"{len(useful) - SHOWN} more turn a drink; --json lists them all.")
    return 0


def _candidate_json(candidate: Candidate, tree: FamilyTree) -> dict[str, object]:
    return {
        "ingredient": tree.name(candidate.ingredient),
        "unlocks": list(candidate.unlocks),
        "price": rounded(candidate.price, 2),
        "why": candidate.why,
    }
