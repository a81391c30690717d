"""The physics of what is in a bottle and in a glass.

Strength and density of ethanol and water (`ethanol`), of sugar and water
(`sucrose`), of sweetened spirits, and what a scale shows of them (`sweetened`);
freezing (`freezing`); what a drink holds (`content`).

Amounts arrive here as plain numbers whose unit is in the name: what has
another dimension was refused where it was read (`barkeep.domain.amounts.measures`).
Each function names its source and its range, and raises `OutsideRange` for
what lies beyond. Constants are in `resources/liquids.toml`.
"""
