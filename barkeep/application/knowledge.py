"""What barkeep knows before any bar is opened, out of its resources."""

from __future__ import annotations

from dataclasses import replace
from functools import cache

from barkeep import resource_files
from barkeep.documents.knowledge_toml import read_made_from, read_stand_ins, read_tree
from barkeep.domain.ingredients import FamilyTree, folded
from barkeep.domain.knowledge import Knowledge
from barkeep.domain.specs import Spec
from barkeep.errors import KnowledgeError

CLASSICS = "classics"
COMMON_PRACTICE = "common practice"
"""Where the proportions of a classic come from that names no source of its own."""


@cache
def shipped() -> Knowledge:
    """The shipped knowledge, read once. Raises `KnowledgeError` for a broken resource."""
    read = resource_files.read_text
    tree = read_tree(read("ingredients.toml"), read("confusables.toml"))
    stand_ins, nothing = read_stand_ins(read("stand_ins.toml"), tree)
    made_from = read_made_from(read("made_from.toml"), tree)
    texts = {name: read(CLASSICS, name) for name in resource_files.names(CLASSICS, suffix=".txt")}
    return Knowledge(tree, stand_ins, nothing, made_from, read_classics(texts, tree))


def read_classics(texts: dict[str, str], tree: FamilyTree) -> tuple[Spec, ...]:
    """The classic specs out of plain texts by file name. Raises `KnowledgeError`."""
    from barkeep.domain.spec_text import read_specs  # its matcher is heavy where nothing is read

    found: dict[str, Spec] = {}
    for file, text in texts.items():
        for each in read_specs(text, tree):
            if each.problems or each.spec is None:
                reason = str(each.problems[0]) if each.problems else "it is not a spec"
                raise KnowledgeError(file, each.name, reason)
            name = folded(each.spec.name)
            if name in found:
                raise KnowledgeError(file, each.name, "there are two classics of this name")
            source = each.spec.source or COMMON_PRACTICE
            found[name] = replace(each.spec, id=None, classic=True, source=source)
    return tuple(found.values())
