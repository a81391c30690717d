"""Count the shelf."""
