"""What to buy: the next bottle, packages, and the shopping list."""
