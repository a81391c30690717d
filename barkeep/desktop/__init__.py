"""The only Qt: the shell, what screens are made of, and then a package a subject."""
