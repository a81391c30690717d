"""A small bar of fresh things, for what is cut, squeezed and made of them."""

from __future__ import annotations

from pathlib import Path

from barkeep.cli import main

BOTTLES = """\
product,maker,ingredient,abv,size,level
Thimble London dry gin,Quillon Yard,London dry gin,43,700 ml,200 ml
Plain Harrow vodka,Brack Lane,vodka,40,700 ml,500 ml
Low Water white rum,Tidewrack,white rum,40,700 ml,250 ml
Cooper's Stile bourbon,Brack Lane,bourbon,45,700 ml,690 ml
Kiln Bridge blended Scotch,Brack Lane,blended Scotch,40,700 ml,350 ml
Ledra blanco tequila,Ledra Hollow,blanco tequila,40,700 ml,330 ml
Vask triple sec,Vask & Daughter,triple sec,38,700 ml,350 ml
Vask red bitter,Vask & Daughter,red bitter aperitivo,25,700 ml,500 ml
Red Comb sweet vermouth,Mottled Hen,sweet vermouth,16,750 ml,750 ml
White Feather dry vermouth,Mottled Hen,dry vermouth,18,750 ml,400 ml
Sorrelgate bitters,Sorrelgate,aromatic bitters,44,200 ml,120 ml
Simple syrup,,simple syrup,0,500 ml,400 ml
Tonic water,Pinder Gate,tonic water,0,1000 ml,800 ml
Runny honey,Pinder Gate,honey,0,250 ml,200 ml
Double cream,Pinder Gate,double cream,0,300 ml,200 ml
Eggs,Pinder Gate,whole egg,,6 each,6
Lemons,,lemon,,6 each,6
Limes,,lime,,7 each,7
Oranges,,orange,,3 each,3
Cocktail cherries,Pinder Gate,cocktail cherry,,30 each,20
Green olives,Pinder Gate,green olive,,40 each,12
Fine salt,Pinder Gate,salt,,500 g,300
"""

SPECS = """\
Harrow Sour
2 oz vodka
3/4 oz lemon juice
3/4 oz simple syrup
Garnish: lemon peel
Glass: coupe

Shake with ice and fine-strain.
---
Even Three
1 oz London dry gin
1 oz red bitter aperitivo
1 oz sweet vermouth
Garnish: orange peel
Glass: rocks
Ice: cubes

Stir with ice and strain over fresh ice.
---
Ten to Two
2 1/2 oz London dry gin
1/2 oz dry vermouth
Garnish: cocktail onion
Glass: Nick and Nora

Stir with ice and strain.
---
Snow Rum
2 oz white rum
1 oz lime juice
1 oz simple syrup
Glass: coupe

Blend with a cup of crushed ice until smooth.
---
Moth
1 1/2 oz London dry gin
3/4 oz lemon juice
3/4 oz simple syrup
1 egg white
Glass: coupe

Dry shake, then shake with ice and fine-strain.
---
Cream Step
1 1/2 oz bourbon
3/4 oz triple sec
1 oz double cream
Garnish: grated nutmeg
Glass: coupe

Shake with ice and strain.
---
Straight Toddy
2 oz blended Scotch
1/2 oz lemon juice
1/2 oz honey syrup
4 oz boiling water
Garnish: lemon peel
Glass: heatproof mug
Ice: none

Build in the warm mug and top with boiling water.
---
Long Porch
2 oz London dry gin
4 oz tonic water
Garnish: lime wedge
Glass: highball
Ice: cubes

Build over ice and lift once with a spoon.
---
Salt Margin
2 oz blanco tequila
3/4 oz triple sec
3/4 oz lime juice
Garnish: salt rim
Glass: coupe

Salt the rim of the glass. Shake with ice and strain.
---
Cherry Sour
2 oz London dry gin
3/4 oz lemon juice
3/4 oz simple syrup
Garnish: cocktail cherry
Glass: sour

Shake with ice and strain.
---
Sexton's Smash
2 oz bourbon
3/4 oz simple syrup
3 lemon wedges
Glass: rocks
Ice: crushed

Muddle the wedges with the syrup, shake with the bourbon and ice, and strain over crushed ice.
---
Half Lime
2 oz white rum
1/2 lime
1/2 oz simple syrup
Glass: rocks

Muddle the lime with the syrup, add rum and crushed ice, and stir.
---
Paper Boat
2 oz white rum
1/2 oz simple syrup
Garnish: a paper lantern
Glass: coupe

Stir with ice and strain.
"""


def build(folder: Path) -> Path:
    """The bar as a file in a folder, all of it there since today."""
    bottles, specs, bar = folder / "bottles.csv", folder / "specs.txt", folder / "small.barkeep"
    bottles.write_text(BOTTLES, "utf-8")
    specs.write_text(SPECS, "utf-8")
    for words in (("--new", "import", bottles), ("spec", "add", specs, "--keep-questions")):
        assert main(["--bar", str(bar), *map(str, words)]) == 0
    return bar
