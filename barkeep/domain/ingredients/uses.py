"""What a line does in a drink and how the drink is made, as it bears on what may stand in."""

from __future__ import annotations

from typing import Literal, get_args

Technique = Literal["shaken", "stirred", "built", "blended", "thrown", "swizzled", "hot", "unknown"]
Role = Literal["base", "modifier", "accent"]


Scope = Literal["shaken", "stirred", "accent", "never_base"]
SCOPES: tuple[Scope, ...] = get_args(Scope)
