"""Names that only a published list prints: completion never offers them."""

from __future__ import annotations

from barkeep.desktop.screens.name_completion import ingredient_names


def test_no_name_that_only_a_list_prints_is_offered(knowledge):
    tree = knowledge.tree
    printed = {name for key in tree for name in tree[key].printed}
    offered = tuple(ingredient_names(tree))
    assert printed and len(offered) > len(tree)
    shown = [each for each in offered if any(each.shown.startswith(name) for name in printed)]
    assert shown == []
