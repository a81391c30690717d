"""More lines as bartenders write them, written down before the reader was tried on any of them.

In the form of `tests.domain.spec_text.lines_as_written`; all invented. The marks after
the ingredient are *garnish* and *optional*; `=` gives an alternative.
"""

# ruff: noqa: E501 — a line of a table is as long as what was said

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


AS_PEOPLE_SAY_IT = """
2 oz rye (high proof, if you've got it) | 2 oz high-proof-rye # high proof
1¾ oz bourbon, cask strength | 1.75 oz high-proof-bourbon # cask
vermouth: dry, 20 ml | 20 ml dry-vermouth
1 oz rum (dark, Jamaican) | 1 oz dark-jamaican-rum
30ml sherry (oloroso, dry) | 30 ml oloroso-sherry # dry
1 oz vodka, citrus | 1 oz lemon-vodka # citrus
½ oz syrup, ginger | 0.5 oz ginger-syrup
3/4 oz honey syrup (3:1) | 0.75 oz honey-syrup # 3:1
2 oz whiskey (Irish) | 2 oz irish-whiskey
45 ml tequila (reposado, additive-free) | 45 ml reposado-tequila # additive-free
1.5 oz Thornwick & Daughters rye, bonded | 1.5 oz bonded-rye-whiskey # Thornwick
¾ oz amaro (Casa Ventrell) | 0.75 oz amaro # Casa Ventrell
2 dashes Old Pell orange bitters | 2 dash orange-bitters # Old Pell
2 oz gin (not London dry!) | 2 oz gin # not London dry
3 oz tonic, slimline | 3 oz light-tonic # slimline
1 oz lemon juice, or more to taste | 1 oz lemon-juice # to taste
5 cl white port, chilled | 5 cl white-port # chilled
6 raspberries, plus 2 to garnish | 6 each raspberry ; 2 each raspberry garnish
2 basil leaves, torn, plus 1 to garnish | 2 each basil ; 1 each basil garnish # torn
juice from 1/2 orange (about 30 ml) | 0.5 each orange # juice
zest of 1 lemon, no pith | 1 each lemon # no pith
12 mint leaves and a sprig for garnish | 12 each mint-leaf ; 1 sprig mint garnish
4 oz prosecco, to top | 4 oz prosecco # to top
soda water - top | - - soda-water # top
splash soda (about 1 oz) | unreadable
1 egg yolk (about 15 ml) | 1 each egg-yolk # about 15 ml
1 oz gin / 1 oz sweet vermouth / 1 oz red bitter aperitivo | 1 oz gin ; 1 oz sweet-vermouth ; 1 oz red-bitter
gin, lemon, honey syrup: 2 oz, 3/4 oz, 3/4 oz | unreadable
¾ oz ea lemon juice and simple syrup | 0.75 oz lemon-juice ; 0.75 oz simple-syrup
2 dsh. absinthe | 2 dash absinthe
30 ml walnut-infused bourbon | unreadable
2 oz fat-washed rye | unreadable
1 oz light coconut milk | unreadable
1-inch knob of ginger, sliced | 1 piece ginger # 1-inch knob
2-inch strip of cucumber | 1 piece cucumber # 2-inch strip
pinch of coarse salt | 1 pinch salt # coarse
1 oz half-and-half | 1 oz half-and-half
| London dry gin | 2 oz | | 2 oz london-dry-gin
| 1 oz | Lime juice | strained | 1 oz lime-juice # strained
2 oz rum? white | unreadable
1 tsp sugar (or 1/4 oz simple syrup) | 1 tsp sugar # or 1/4 oz simple
2 oz cognac (or 1 oz each cognac and rye) | 2 oz cognac # or 1 oz each cognac and rye
1 oz pineapple juice (canned is fine) | 1 oz pineapple-juice # canned is fine
4 cl milk chocolate liqueur | 4 cl chocolate-cream-liqueur # milk chocolate
1 oz ruby port or tawny | 1 oz ruby-port = tawny-port
2 oz bourbon or rye, 100 proof | 2 oz bourbon = rye-whiskey # 100 proof
1.5 oz dark rum — aged 8 years | 1.5 oz dark-rum # aged 8 years
1 lrg egg white | 1 each egg-white
two ounces of gin the Plymouth style | 2 oz gin # the Plymouth style
so two ounces of that Old Tom gin | 2 oz old-tom-gin
an ounce of sherry the dry kind fino | 1 oz fino-sherry
an ounce and a half tequila blanco | 1.5 oz blanco-tequila
now some lime juice three quarters of an ounce | 0.75 oz lime-juice # some
forty mils of Calder Bank rum the dark one | 40 ml dark-rum # Calder Bank
two ounces bourbon half an ounce maple syrup two dashes orange bitters | 2 oz bourbon ; 0.5 oz maple-syrup ; 2 dash orange-bitters
an ounce each of gin Campfire bitters and sweet vermouth | unreadable
an ounce of lime juice and the same again of orgeat | 1 oz lime-juice ; 1 oz orgeat
thirty mil lemon juice and as much simple syrup | 30 ml lemon-juice ; 30 ml simple-syrup
two, sorry, three dashes of orange bitters | 3 dash orange-bitters
one ounce, no, half an ounce of crème de cacao | 0.5 oz creme-de-cacao
an ounce of gin, wait no, genever | 1 oz genever
two ounces of what do you call it cachaça | 2 oz cachaca
a half ounce of, er, whatsit, orgeat | 0.5 oz orgeat
two ounces of vodka make it the citrus one | 2 oz lemon-vodka # citrus
two to one gin and dry vermouth | unreadable
a three to one mix of gin to dry vermouth | 3 part gin ; 1 part dry-vermouth
equal parts mezcal and aperol style bitter | unreadable
half an ounce of simple, skip it if you like it dry | 0.5 oz simple-syrup optional # skip it if you like it dry
a bit of orange flower water, like three drops | 3 drop orange-flower-water # a bit
just enough soda to fill the glass | - - soda-water # fill
stick a lime wedge on the rim | 1 each lime-wedge garnish # rim
drop a cherry in the bottom | 1 each cocktail-cherry # bottom
finish with a grating of nutmeg | 1 grating nutmeg # to top
and then a lemon peel for garnish | 1 each lemon-peel garnish
there's no sugar in this at all | unreadable
half a grapefruit juiced | 0.5 each grapefruit # juiced
the juice of one small lime | 1 each lime # juice
a shot of espresso cooled | 1 shot espresso # cooled
two ounces of white rum lightly aged | 2 oz aged-white-rum
a small pinch of sea salt | 1 pinch salt # small
quarter ounce of allspice dram, go easy | 0.25 oz allspice-dram # go easy
one ounce of cream of coconut not coconut cream | 1 oz cream-of-coconut
twelve ounces of lager straight from the fridge | 12 oz lager # fridge
"""
"""As `UNSEEN`; behind `#` words that must still be seen with what was read."""


AS_THEY_MIGHT = """
2 oz gin the London dry kind | 2 oz london-dry-gin
2 oz gin, 1 egg white, 3/4 lemon, 3/4 simple | 2 oz gin ; 1 each egg-white ; 0.75 oz lemon-juice ; 0.75 oz simple-syrup
60 ml gin, 30 lemon, 15 simple | 60 ml gin ; 30 ml lemon-juice ; 15 ml simple-syrup
60 ml gin, 2 limes | 60 ml gin ; 2 each lime
2 oz gin, garnish with an olive and a cherry | 2 oz gin ; 1 each olive garnish ; 1 each cocktail-cherry garnish
2 oz gin with 3 dashes orange bitters | 2 oz gin ; 3 dash orange-bitters
two, no three, ounces of sparkling wine | 3 oz sparkling-wine
a lime cut in wedges | 1 each lime # cut in wedges
reposado / grapefruit / lime / agave / soda | unreadable
2 oz each of gin and spirit, Grape and fruit | unreadable
2 oz White rum, sorry, I mean añejo | unreadable
1 oz rum (spanish-style) | 1 oz column-still-rum
1 oz sweetened lime cordial | 1 oz lime-cordial # sweetened
1 oz sweetened coconut milk | unreadable
1 oz coffee cold | unreadable
a half ounce of, er, gibberish, orgeat | unreadable
1 oz vermouth, the usual one | unreadable
2 oz gin, the usual one | 2 oz gin # the usual one
drop in two sugar cubes | 2 each sugar-cube
a drop of absinthe | 1 drop absinthe
an ounce of gin and one of vermouth, make the gin two | 2 oz gin ; 1 oz vermouth
1 oz gin, 1 oz vermouth, no vermouth | unreadable
1.25 oz mezcal .75 oz reposado | 1.25 oz mezcal ; 0.75 oz reposado-tequila
gin 1 oz, vermouth 1 oz, bitters 2 dashes | 1 oz gin ; 1 oz vermouth ; 2 dash aromatic-bitters
2 oz beer ginger | unreadable
2 oz rum aged 8 years | 2 oz aged-rum # aged 8 years
two ounces of rum no bourbon | unreadable
2 oz ron blanco, sorry, I mean Tequila | unreadable
2 oz honey syrup, sorry, I mean tea | unreadable
two ounces of Irish whiskey, I mean Scotch | 2 oz scotch-whisky
"""
"""More of what went wrong while the reader learnt the lines above, in the same form."""
