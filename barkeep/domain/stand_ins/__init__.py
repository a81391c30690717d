"""What may be poured instead, and what to pour of it."""
