"""Tonight, and what one drink comes to."""
