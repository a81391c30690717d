"""What is made here: house-made things and batches."""
