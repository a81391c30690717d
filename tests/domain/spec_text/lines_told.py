"""Two hundred lines that were written down by another who had not seen the reader.

All are invented; in the form of `tests.domain.spec_text.lines_set_down`.
"""

# ruff: noqa: E501 — a line of a table is as long as what was said

from __future__ import annotations

READ = r"""
| Gin | 45 | ml | | 45 ml gin
Cognac ........ 50 ml | 50 ml cognac
Blanco tequila: 50 ml | 50 ml blanco-tequila
40 ml	manzanilla sherry | 40 ml manzanilla-sherry
- [ ] 1 oz peach liqueur | 1 oz peach-liqueur
1) 60 ml blended scotch | 60 ml blended-scotch
ADD: 1 OZ GOLD RUM | 1 oz gold-rum
22 ml lime juice* | 22 ml lime-juice
1 oz lemon juice [strained twice] | 1 oz lemon-juice # strained
lime juice: 1oz; agave syrup: 0.5oz; mezcal: 2oz | 1 oz lime-juice ; 0.5 oz agave-syrup ; 2 oz mezcal
Build over ice: 50 ml spiced rum, 100 ml ginger ale, 10 ml lime juice | 50 ml spiced-rum ; 100 ml ginger-ale ; 10 ml lime-juice
2oz mezcal, ¾ lime, ½ agave | 2 oz mezcal ; 0.75 oz lime-juice ; 0.5 oz agave-syrup
gin 2oz (was 1.75) | 2 oz gin
3/4 oz lemon juice ⏎ EDIT: lime, not lemon | 0.75 oz lime-juice
2 oz Irish whiskey ⏎ 1 oz lemon juice ⏎ same of honey syrup | 2 oz irish-whiskey ; 1 oz lemon-juice ; 1 oz honey-syrup
1 1⁄2 oz calvados | 1.5 oz calvados
1½–2 oz tonic water | 1.5-2 oz tonic-water
.5 oz cherry liqueur | 0.5 oz cherry-liqueur
two oz. sotol | 2 oz sotol
Two (2) ounces armagnac | 2 oz armagnac
30ml/1oz bianco vermouth | 30 ml bianco-vermouth
at least 3 oz root beer | 3 oz root-beer # at least
1ozwhite port | 1 oz white-port
a few drops of orange flower water | 3 drop orange-flower-water # few
vodka (43 %) 40 ml | 40 ml vodka # 43
1 oz rye, 95 proof or more | 1 oz rye-whiskey # 95
lemon juice, 1 oz (about half a lemon) | 1 oz lemon-juice
lime juice and pineapple juice, 1 oz each | 1 oz lime-juice ; 1 oz pineapple-juice
1 jigger (44 ml) applejack | 1 jigger american-apple-brandy
1 pony of kirsch | 1 pony kirsch
1bsp absinthe | 1 barspoon absinthe
5 dsh celery bitters | 5 dash celery-bitters
2 T runny honey | 2 tbsp honey # runny
1 c strong hibiscus tea | 1 cup hibiscus-tea # strong
1/2 cup water, just off the boil | 0.5 cup water # boil
1 quart black tea, brewed and cooled | 1 quart black-tea # cooled
1 (750 ml) bottle cava | 1 bottle cava # 750
1/2 pint stout | 0.5 pint stout
3dl cloudy apple juice | 3 dl cloudy-apple-juice
5 g citric acid | 5 g citric-acid
250 g sugar + 250 g water | 250 g sugar ; 250 g water
1-inch piece of fresh ginger, peeled | 1 piece ginger # inch
30ml vodka, vanilla | 30 ml vanilla-vodka
gin, navy strength, 1 oz | 1 oz navy-strength-gin
rum (white, agricole) 1.5 oz | 1.5 oz rhum-agricole-blanc
syrup, ginger - 15 ml | 15 ml ginger-syrup
Bitters (mole): 2 dashes | 2 dash mole-bitters
1 oz Italian vermouth | 1 oz sweet-vermouth
1 oz unsweetened cranberry juice | 1 oz pure-cranberry-juice
2 oz bourbon, wheated if you have it | 2 oz bourbon # wheated
60 ml whisky (nothing peated) | 60 ml whisky # nothing peated
ginger beer (not ginger ale), 4 oz | 4 oz ginger-beer
acid-adjusted OJ 1 oz | 1 oz acid-adjusted-orange
20 ml crème de cacao (white) | 20 ml white-creme-de-cacao
vegan foamer, 6 drops | 6 drop foaming-agent
Hollow Lamp 12 yr single malt scotch 2oz | 2 oz single-malt-scotch # 12 y / Hollow Lamp
20 ml violet liqueur by Mossgate | 20 ml violet-liqueur # Mossgate
gin (preferably Grey Ferry) 2 oz | 2 oz gin # Grey Ferry
1 oz "47 Steps" dark rum | 1 oz dark-rum # 47 Steps
3/4 oz Brackle's apricot liqueur | 0.75 oz apricot-liqueur # Brackle
2 lemons, juiced | 2 each lemon # juice
1 lime, cut into 8 wedges | 1 each lime # wedges
pulp of 2 passion fruits | 2 each passion-fruit # pulp
zest of 3 oranges, no pith | 3 each orange # pith
white of 1 large egg | 1 each egg-white
1 sugar cube soaked in 4 dashes aromatic bitters | 1 each sugar-cube ; 4 dash aromatic-bitters
Garnish: 1 lime wedge + 1 mint sprig | 1 each lime-wedge garnish ; 1 each mint garnish
3 olives on a pick, garnish | 3 each olive garnish
1 cocktail cherry + 1 tsp of its syrup | 1 each cocktail-cherry ; 1 tsp cocktail-cherry-syrup
4 whole cloves | 4 each cloves
Garnish: none | nothing
Serves 2 | nothing
Stir 30 sec with one large cube, strain into a chilled glass | nothing
Vodka works here instead of gin too, just less interesting | nothing
Muddle 6 blackberries with 1/2 oz lemon juice in the tin | 6 each blackberry ; 0.5 oz lemon-juice
float 1/2 oz red wine on top | 0.5 oz red-wine # float
mist the glass with islay scotch | 1 rinse smoky-scotch # mist
we'll start with a base of forty five milliliters of pisco | 45 ml pisco
two ounces of gin that's two ounces of gin | 2 oz gin
a half a ounce of apricot liqueur | 0.5 oz apricot-liqueur
twenty two and a half mil of agave | 22.5 ml agave-syrup
a hundred and twenty milliliters of tonic water | 120 ml tonic-water
two to three ounces of ginger beer depending on how strong you like it | 2-3 oz ginger-beer
a good glug of soda | 1 splash soda-water # glug
half a teaspoon of vanilla extract | 0.5 tsp vanilla-extract
maybe four or five raspberries | 4-5 each raspberry
garnish with a torched sprig of rosemary | 1 sprig rosemary garnish # torched
the whites of two eggs | 2 each egg-white
oh and i almost forgot two dashes of orange bitters | 2 dash orange-bitters
please don't use the bottled lime juice | nothing
sixty mil of gin i mean sixty mil of vodka | 60 ml vodka
one and a half ounces that's forty five mil of white rum | 1.5 oz white-rum
two ounces of rum the funky jamaican kind | 2 oz jamaican-pot-still-rum
an ounce of sherry and make it a dry one like a fino | 1 oz fino-sherry
one ounce of sweet for mouth | 1 oz sweet-vermouth
three dashes of orange bidders | 3 dash orange-bitters
two ounces of kasha sa | 2 oz cachaca
too ounces of jin | 2 oz gin
half an ounce of demerara sir up | 0.5 oz demerara-syrup
strain that over one big rock and you're done | nothing
the shaker i'm using is linked down below | nothing
if you're making two of these just double everything | nothing
it's eight parts gin to one part dry vermouth | 8 part gin ; 1 part dry-vermouth
a nice long orange twist express the oils and drop it in as a garnish | 1 each orange-peel garnish
fill the rest of the glass with sparkling lemonade | - - sparkling-lemonade
salt and black pepper to taste | - - salt ; - - black-pepper
squeeze in half a lemon | 0.5 each lemon
blend it with a cup of crushed ice | 1 cup crushed-ice
now here's my homemade raspberry syrup three quarters of an ounce | 0.75 oz raspberry-syrup # homemade
five eighths of an ounce of passion fruit syrup | 0.625 oz passion-fruit-syrup
seven and a half mil of creme de menthe and it has to be the clear one | 7.5 ml white-creme-de-menthe
optional but i love it a dash of chocolate bitters | 1 dash chocolate-bitters optional
elderflower liqueur just a bar spoon it gets loud fast | 1 barspoon elderflower-liqueur
tequila two ounces lime juice one ounce orange liqueur one ounce | 2 oz tequila ; 1 oz lime-juice ; 1 oz orange-liqueur
an ounce of cream preferably the heavy kind | 1 oz whipping-cream
a drop or two of saline | 1-2 drop saline-solution
one shot of espresso | 1 shot espresso
three fourths of an ounce of lime cordial | 0.75 oz lime-cordial
1 EL Honig | 1 tbsp honey
2 TL feiner Zucker | 2 tsp superfine-sugar
1 frisches Eigelb | 1 each egg-yolk
1 Bio-Limette, in Achtel geschnitten | 1 each lime # achtel
1 Zweig Rosmarin | 1 sprig rosemary
ca. 10 Basilikumblätter | 10 each basil # ca
1 Schuss Sahne | 1 splash cream
trockener Wermut (2 cl) | 2 cl dry-vermouth
0,2 l Ginger Ale | 0.2 l ginger-ale
1 Flasche Sekt, gut gekühlt | 1 bottle sparkling-wine # gekühlt
Alles mit Eis kräftig shaken und abseihen | nothing
Holunderblütensirup, 1,5 cl | 1.5 cl elderflower-cordial
2-3 cl Grapefruitsaft (rosa) | 2-3 cl pink-grapefruit-juice
1 Messerspitze gemahlener Zimt | 1 pinch cinnamon
wer mag: 1 cl Mandelsirup | 1 cl orgeat optional
1 c. à soupe de miel | 1 tbsp honey
ginger beer : 10 cl | 10 cl ginger-beer
jus de citron jaune pressé, 2 cl | 2 cl lemon-juice
1/2 citron vert coupé en quartiers | 0.5 each lime # quartiers
un trait d'absinthe | 1 dash absinthe
1 pincée de piment de Cayenne | 1 pinch cayenne
2 rondelles de concombre | 2 wheel cucumber-slice
1 bâton de cannelle | 1 each cinnamon-stick
1,5 cl sirop de canne | 1.5 cl cane-syrup
Frapper avec des glaçons puis filtrer dans une coupe. | nothing
facultatif : 1 cl de liqueur de framboise | 1 cl raspberry-liqueur optional
1 cerise à cocktail sur une pique | 1 each cocktail-cherry garnish
4 cl de gin ou de vodka | 4 cl gin = vodka
Vermouth dry 4,5 cl | 4.5 cl dry-vermouth
succo d'arancia fresco, 6 cl | 6 cl orange-juice
1 cucchiaio di miele d'acacia | 1 tbsp honey # acacia
2 gocce di estratto di vaniglia | 2 drop vanilla-extract
4-5 foglie di basilico | 4-5 leaf basil
un albume | 1 each egg-white
ghiaccio tritato | - - crushed-ice
sciroppo di zucchero fatto in casa (1,5 cl) | 1.5 cl simple-syrup # casa
ginger ale fino all'orlo | - - ginger-ale
gin (tipo London Dry) 5 cl | 5 cl london-dry-gin
Shakerare bene e versare nella coppa fredda | nothing
panna fresca 3 cl | 3 cl cream
amaretto 20 ml - facoltativo | 20 ml amaretto optional
2 parti di rum scuro, 1 di succo di lime | 2 part dark-rum ; 1 part lime-juice
45 ml de ron añejo | 45 ml aged-rum
el zumo de 1 pomelo | 1 each grapefruit
2 cucharadas de azúcar moreno | 2 tbsp brown-sugar
una pizca de canela molida | 1 pinch cinnamon
4 rodajas de pepino | 4 slice cucumber-slice
un chorrito de granadina | 1 splash grenadine
1 rama de romero | 1 sprig rosemary
cáscara de naranja (decoración) | - - orange-peel garnish
vermú rojo, 3 cl | 3 cl sweet-vermouth
Agitar 15 segundos y colar en copa fría | nothing
licor de café 20 ml (opcional) | 20 ml coffee-liqueur optional
refresco de toronja, 120 ml | 120 ml grapefruit-soda
15 ml de jarabe de agave aprox. | 15 ml agave-syrup # aprox
1 a 2 gotas de salsa picante | 1-2 drop hot-sauce
1/2 taza de piña en cubos | 0.5 cup pineapple # cubos
"""
"""What is read as its writer expected."""

ASKED_RIGHTLY = r"""
~~1 oz~~ 3/4 oz lemon juice
1 oz lime juice -> 3/4 oz
0.25 oz + 1 barspoon vanilla syrup
3:2:1 gold rum, lime juice, gum syrup
1/2 oz Tern & Daughters
1 oz vermouth
2 oz (or was it 1.5?) aquavit
3/4 oz something herbal
house mix, 2 oz
two ounces of bourbon and today i'm using hollow lamp
three quarters lemon three quarters simple
a quarter ounce of fell er num
this one is gin lemon juice honey syrup and that's it
i give it a four count of vodka
some of that stuff in the blue bottle about an ounce
cut a lime in half and squeeze both halves into the tin
1 bicchierino di limoncello
"""
"""What its writer would ask about too."""

ASKED = r"""
2 oz brown-butter-washed bourbon
"""
"""What its writer would have understood; it is asked about, and nothing is taken."""

OTHERWISE = r"""
1 wineglass of Madeira | 1 wineglass madeira
1 scoop vanilla ice cream | 1 scoop ice-cream # scoop
small handful of coriander | 1 handful coriander-leaf # handful
two chunks of pineapple about this big | 2 chunk pineapple
a shot and a half of reposado | 1.5 shot reposado-tequila
quelques gouttes d'eau de rose | 3 drop rose-water # a few
1 dose de rhum ambré | 1 part gold-rum
"""
"""What is put in other words than its writer expected, with nothing lost."""
