"""What each line of the official list is to be read as, written down by hand from the list.

*amount unit ingredient*, in the list's order; `-` stands for nothing given.
"""

from __future__ import annotations

EXPECTED = """
Americano: 30 ml red-bitter; 30 ml sweet-vermouth; 1 splash soda-water
Angel Face: 30 ml gin; 30 ml apricot-liqueur; 30 ml calvados
Barracuda: 45 ml gold-rum; 15 ml vanilla-anise-liqueur; 60 ml pineapple-juice; 1 dash lime-juice; \
- - prosecco
Bee's Knees: 52.5 ml london-dry-gin; 2 tsp honey-syrup; 22.5 ml lemon-juice; 22.5 ml orange-juice
Black Russian: 50 ml vodka; 20 ml coffee-liqueur
Bramble: 50 ml gin; 25 ml lemon-juice; 12.5 ml simple-syrup; 15 ml creme-de-mure
Caipirinha: 60 ml cachaca; 1 each lime; 4 tsp sugar
Daiquiri: 60 ml white-rum; 20 ml lime-juice; 2 barspoon superfine-sugar
Dry Martini: 60 ml gin; 10 ml dry-vermouth
Espresso Martini: 50 ml vodka; 30 ml coffee-liqueur; 10 ml simple-syrup; 1 each espresso
Fernandito: 50 ml fernet; - - cola
French 75: 30 ml gin; 15 ml lemon-juice; 15 ml simple-syrup; 60 ml champagne
French Martini: 45 ml vodka; 15 ml raspberry-liqueur; 15 ml pineapple-juice
Gin Fizz: 45 ml gin; 30 ml lemon-juice; 10 ml simple-syrup; 1 splash soda-water
Golden Dream: 20 ml vanilla-anise-liqueur; 20 ml triple-sec; 20 ml orange-juice; 10 ml cream
Hanky Panky: 45 ml london-dry-gin; 45 ml sweet-vermouth; 7.5 ml fernet
Irish Coffee: 50 ml irish-whiskey; 120 ml coffee; 50 ml cream; 1 tsp sugar
KIR: 90 ml dry-white-wine; 10 ml creme-de-cassis
Margarita: 50 ml tequila; 20 ml triple-sec; 15 ml lime-juice
Mimosa: 75 ml orange-juice; 75 ml prosecco
Monkey Gland: 45 ml london-dry-gin; 45 ml orange-juice; 1 tbsp absinthe; 1 tbsp grenadine
Naked and Famous: 22.5 ml mezcal; 22.5 ml yellow-herbal-liqueur; 22.5 ml orange-aperitivo; \
22.5 ml lime-juice
Paper Plane: 30 ml bourbon; 30 ml grappa-amaro; 30 ml orange-aperitivo; 30 ml lemon-juice
Paradise: 30 ml gin; 20 ml apricot-liqueur; 15 ml orange-juice
Planter's Punch: 45 ml jamaican-rum; 15 ml lime-juice; 30 ml sugar-cane-juice
Ramos Fizz: 45 ml gin; 15 ml lime-juice; 15 ml lemon-juice; 30 ml simple-syrup; 60 ml cream; \
30 ml egg-white; 3 dash orange-flower-water; 2 drop vanilla-extract; - - soda-water
Sea Breeze: 40 ml vodka; 120 ml cranberry-juice; 30 ml grapefruit-juice
Sex on the Beach: 40 ml vodka; 20 ml peach-liqueur; 40 ml orange-juice; 40 ml cranberry-juice
Vesper: 45 ml gin; 15 ml vodka; 7.5 ml white-quinquina
White Lady: 40 ml gin; 30 ml triple-sec; 20 ml lemon-juice
"""


def expected() -> dict[str, list[tuple[str, str, str]]]:
    """Drink -> amount, unit and ingredient of each of its lines, as text."""
    found: dict[str, list[tuple[str, str, str]]] = {}
    for row in EXPECTED.strip().splitlines():
        drink, _, lines = row.partition(": ")
        found[drink] = [tuple(line.split()) for line in lines.split("; ")]
    return found
