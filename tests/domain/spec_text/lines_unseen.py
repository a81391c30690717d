"""More lines as bartenders write them, written down before the reader was tried on any of them.

In the form of `tests.domain.spec_text.lines_as_written`; all invented. The marks after
the ingredient are *garnish* and *optional*; `=` gives an alternative.
"""

from __future__ import annotations

UNSEEN = """
1¼ oz. reposado tequila | 1.25 oz reposado-tequila
50ml vodka (chilled) | 50 ml vodka
2 measures of vodka, poured over 1 oz lime juice | unreadable
.5oz maraschino liqueur | 0.5 oz maraschino-liqueur
three quarters of an ounce lemon juice, strained | 0.75 oz lemon-juice
1 1/4 fluid ounces aged rum | 1.25 oz aged-rum
2 cl. grenadine | 2 cl grenadine
an ounce and three quarters of cognac | 1.75 oz cognac
half an ounce each of lime juice and orgeat | 0.5 oz lime-juice ; 0.5 oz orgeat
25 ml each gin, sweet vermouth & red bitter | 25 ml gin ; 25 ml sweet-vermouth ; 25 ml red-bitter
1 oz each of white rum, gold rum, and dark rum | 1 oz white-rum ; 1 oz gold-rum ; 1 oz dark-rum
juice of two lemons | 2 each lemon
the juice of one orange | 1 each orange
juice of 1½ limes | 1.5 each lime
6-8 mint leaves, plus more for garnish | 6-8 each mint-leaf
1 bsp. rich simple syrup | 1 barspoon rich-simple-syrup
1 tsp. absinthe, to rinse | 1 tsp absinthe
lemon juice – 20ml | 20 ml lemon-juice
Campfire & Kettle mezcal 45 ml | 45 ml mezcal
egg white: 1 | 1 each egg-white
dark rum (float) | 1 float dark-rum
top with chilled champagne | - - champagne
fill up with cola | - - cola
cola, to fill | - - cola
topped up with ginger ale | - - ginger-ale
3 oz soda water or tonic water | 3 oz soda-water = tonic-water
1.5 oz blanco tequila or mezcal (or half of each) | 1.5 oz blanco-tequila = mezcal
2 oz London dry or Old Tom gin | 2 oz london-dry-gin = old-tom-gin
45 ml white, gold or dark rum | 45 ml white-rum = gold-rum = dark-rum
¼ oz crème de violette (optional) | 0.25 oz violet-liqueur optional
Optional: 1 dash saline solution | 1 dash saline-solution optional
a generous splash of ginger beer | 1 splash ginger-beer
scant ounce of lime juice | 1 oz lime-juice
1 heaping teaspoon superfine sugar | 1 tsp superfine-sugar
1. 60 ml bourbon | 60 ml bourbon
2) 20 ml lemon juice | 20 ml lemon-juice
– 30 ml dry vermouth | 30 ml dry-vermouth
3–4 dashes celery bitters | 3-4 dash celery-bitters
2 - 3 basil leaves | 2-3 each basil
garnish with a lemon twist | 1 each lemon-peel garnish
Garnish: 1 cocktail cherry | 1 each cocktail-cherry garnish
1 bottle (750 ml) prosecco | 1 bottle prosecco
60ml/2oz gin | 60 ml gin
22.5 ml (3/4 oz) fresh lemon juice | 22.5 ml lemon-juice
2 oz Wherry Quay small batch bourbon | 2 oz bourbon
30 ml Thistle Lane cold brew coffee | 30 ml cold-brew-coffee
2 oz Dunlin Sound 10-year-old single malt Scotch | 2 oz single-malt-scotch
4 oz hot water | 4 oz boiling-water
a dozen mint leaves | 12 each mint-leaf
2 large ice cubes | 2 each ice
1 thin slice of fresh ginger | 1 slice ginger
15 ml 2:1 demerara syrup | 15 ml demerara-syrup
"""
"""`unreadable`: the reader must say what it cannot use, whatever it makes of the rest."""


MORE_FALSE_FRIENDS = """
30 ml gin-scented hand soap
2 oz bourbon barbecue sauce
1 oz tequila lime tortilla chips
20 ml absinthe blotting paper
1 oz whisky sour mix powder
2 oz lime pickle
1 oz honey mustard dressing
30 ml orange squash
2 oz cherry cola syrup flavouring
1 oz rose petal jam
15 ml vanilla custard
2 oz brandy butter
1 oz milk chocolate
30 ml apple cider vinegar tonic
10 ml lavender pillow spray
1 oz cocoa butter
2 oz port salut cheese
30 ml egg noodles
1 oz cognac mustard
2 oz coffee creamer
15 ml champagne yeast
1 oz mint sauce
20 ml non-alcoholic gin
1 oz sherry vinegar
"""
"""Words that hold the name of something else."""
