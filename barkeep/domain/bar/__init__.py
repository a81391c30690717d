"""What one bar keeps, and the frozen snapshot of all of it that every answer starts from."""
