"""What is true of a bar: frozen values and functions. No store, no Qt, no files."""
