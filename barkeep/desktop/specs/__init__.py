"""The Specs page, the editor, drafts, trials and the family of a spec."""
