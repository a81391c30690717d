"""An owner's first hour: an empty bar's greeting, a list that is pasted, kinds that are ticked."""
