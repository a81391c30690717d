"""What is printed and published, as data before it is laid out."""
