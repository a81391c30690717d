"""A shoot asked of the bar: its menu, its plan, mise en place and the log after."""
