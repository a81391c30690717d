"""`barkeep publish`: one drink described for others, or as data."""

from __future__ import annotations

import argparse
from collections.abc import Callable, Mapping

from barkeep.application.finding import find_spec
from barkeep.application.publishing import cards_of
from barkeep.cli.arguments import Arguments
from barkeep.cli.bar_source import opened_bar
from barkeep.cli.output import print_json
from barkeep.documents.printed.cards import CardContent
from barkeep.documents.printed.descriptions import (
    description_html,
    description_markdown,
    description_text,
)
from barkeep.documents.specs.files import exported
from barkeep.domain.bar.snapshot import Snapshot
from barkeep.domain.specs.spec import Spec

_DESCRIBED: Mapping[str, Callable[[tuple[CardContent, ...]], str]] = {
    "text": description_text,
    "markdown": description_markdown,
    "html": description_html,
}
_AS_DATA = {"json-ld": "spec.jsonld", "json": "spec.json"}


def configure(parser: argparse.ArgumentParser) -> None:
    """Its arguments."""
    parser.description = (
        "Describe a drink for others: amounts in ounces and millilitres, method, glass, ice, "
        "garnish, credits, strength, allergens and the usual cautions. The forms json-ld and "
        "json are the spec itself, to be read by programs."
    )
    parser.add_argument("name", metavar="NAME", help="the drink's name")
    parser.add_argument(
        "--as",
        dest="form",
        choices=(*_DESCRIBED, *_AS_DATA),
        default="text",
        help="what it is to be (default: text)",
    )
    parser.add_argument(
        "--to", metavar="FILE", help="write it to a file, in place of an old one, never of a bar"
    )
    parser.set_defaults(run=run)


def run(arguments: Arguments) -> int:
    """Print or write one description."""
    with opened_bar(arguments) as bar:
        spec = find_spec(bar.snapshot, arguments.name)
        text = _published(spec, arguments.form, bar.snapshot)
        file = None if arguments.to is None else str(bar.write_file(arguments.to, text))
    if arguments.json:
        print_json({"spec": spec.name, "as": arguments.form, "file": file, "text": text})
    elif file is None:
        print(text, end="")
    else:
        print(f"{spec.name} was written to {file}.")
    return 0


def _published(spec: Spec, form: str, snapshot: Snapshot) -> str:
    if form in _AS_DATA:
        tree, units = snapshot.knowledge.tree, snapshot.settings.units
        return exported([spec], _AS_DATA[form], tree, units)
    return _DESCRIBED[form](cards_of([spec], snapshot))
