"""Print and publish: what is chosen, seen as pages, and where it goes."""
