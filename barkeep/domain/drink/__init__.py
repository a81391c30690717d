"""What a drink comes to in the glass, how surely, and how it lies among its family."""
