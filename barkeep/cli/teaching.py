"""How to teach barkeep a name that it does not know, said where such a name is met."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from contextlib import contextmanager
from dataclasses import replace

from barkeep.cli.arguments import Arguments
from barkeep.domain.ingredients.tree import FamilyTree
from barkeep.domain.phrases import folded
from barkeep.errors import Problem, UnknownName, UnusableFile

ANY_KIND = "KIND"
_MEANS_SOMETHING = str.maketrans({each: f"\\{each}" for each in '\\"$`'})
"""What a shell would take for something else between quotes."""


class UntaughtName(UnknownName):
    """A name of no ingredient that is known, and how to teach it."""

    teach: str = ""

    def __str__(self) -> str:
        return f"{super().__str__()} To teach it: {self.teach}"


@contextmanager
def saying_how_to_teach(arguments: Arguments, tree: FamilyTree) -> Iterator[None]:
    """Add to every refusal of an unknown ingredient how to make it a known one."""
    try:
        yield
    except UnknownName as error:
        if error.kind != "ingredient":
            raise
        teach = how_to_teach(error.name, tree, arguments)
        raise UntaughtName("ingredient", error.name, error.nearest, teach) from error
    except UnusableFile as error:
        told = told_how_to_teach(error.problems, tree, arguments)
        raise UnusableFile(error.file, told, error.way_out) from error


def told_how_to_teach(
    problems: Sequence[Problem], tree: FamilyTree, arguments: Arguments
) -> tuple[Problem, ...]:
    """The problems, the first with each unknown name saying how to teach that."""
    from barkeep.domain.ingredients.names import bare_name  # only a refusal needs it

    seen: set[str] = set()
    told = []
    for each in problems:
        name = folded(bare_name(each.unknown or ""))
        if name and name not in seen and any(mark.isalpha() for mark in name):
            seen.add(name)
            teach = how_to_teach(each.unknown or "", tree, arguments)
            each = replace(each, message=f"{each.message}. To teach it: {teach}")
        told.append(each)
    return tuple(told)


def how_to_teach(words: str, tree: FamilyTree, arguments: Arguments) -> str:
    """The two commands that make an unknown name known, to be pasted."""
    from barkeep.domain.ingredients.names import bare_name
    from barkeep.domain.ingredients.own import likely_kind

    name, kind = bare_name(words), likely_kind(words, tree)
    likely = ANY_KIND if kind is None else tree.name(kind)
    program = "barkeep" if arguments.bar is None else f"barkeep --bar {_quoted(arguments.bar)}"
    return (
        f"{program} ingredient add {_quoted(name)} --kind {_quoted(likely)}, or, where it is "
        f"another name: {program} ingredient alias {_quoted(likely)} {_quoted(name)}"
    )


def _quoted(words: str) -> str:
    return f'"{words.translate(_MEANS_SOMETHING)}"'
