"""A second, invented bar of some sixty things, and forty questions answered by a bartender.

`bottles.csv`, `made_here.csv` and `specs.txt` are the bar as text. `answer_key.md` holds each
question with its answer and why, worked out by hand from these texts alone. A test asks barkeep
each of them by a command, as the owner would, and its docstring says the number and the why.
"""
