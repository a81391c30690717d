"""What every screen is made of: a list with its details, forms, answers in the background."""
