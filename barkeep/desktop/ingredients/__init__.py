"""Saying what an unknown name is: an ingredient of the owner's own, or another name for one."""
