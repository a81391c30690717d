"""The page Buying (next bottle, a plan, what each bottle carries, pairs), shopping and pars."""
