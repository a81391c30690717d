"""The family tree, names, figures and relations of ingredients, and the graph of stand-ins."""
