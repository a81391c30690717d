"""How long the answers take on bars of any size, beside plainer ways to find the same."""
