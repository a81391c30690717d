"""Next bottle, the shopping list and the pars."""
