"""Lines as bartenders write and dictate them, and what each must be read as.

All invented for these tests; none is taken from a published list. The right
side is *amount unit ingredient [marks]*; `-` stands for nothing, `2-3` for a
range, `;` parts the lines that one text makes, `=` an alternative.
"""

from __future__ import annotations

AMOUNTS = """
2 oz gin | 2 oz gin
2oz gin | 2 oz gin
2 oz. gin | 2 oz gin
2oz. bourbon | 2 oz bourbon
60ml gin | 60 ml gin
60 mL gin | 60 ml gin
6 cl gin | 6 cl gin
6cl gin | 6 cl gin
0.75 oz lime juice | 0.75 oz lime-juice
.75 oz lime juice | 0.75 oz lime-juice
0,75 oz lime juice | 0.75 oz lime-juice
2,5 cl lemon juice | 2.5 cl lemon-juice
22.5 ml lime juice | 22.5 ml lime-juice
¾ oz lime juice | 0.75 oz lime-juice
3/4 oz lime juice | 0.75 oz lime-juice
3⁄4 oz lime juice | 0.75 oz lime-juice
1 1/2 oz rye | 1.5 oz rye-whiskey
1-1/2 oz rye | 1.5 oz rye-whiskey
1½ oz rye | 1.5 oz rye-whiskey
1 ½ oz rye | 1.5 oz rye-whiskey
1½ ounces rye whiskey | 1.5 oz rye-whiskey
2 1/4 oz white rum | 2.25 oz white-rum
2 fl oz vodka | 2 oz vodka
2 fl. oz. vodka | 2 oz vodka
1 ounce cognac | 1 oz cognac
1 Ounce Cognac | 1 oz cognac
4 centilitres pisco | 4 cl pisco
45 millilitres pisco | 45 ml pisco
1 tbsp honey | 1 tbsp honey
1 Tbsp. honey | 1 tbsp honey
2 tsp sugar | 2 tsp sugar
2 teaspoons sugar | 2 tsp sugar
1 bar spoon maraschino | 1 barspoon maraschino-liqueur
1 barspoon of absinthe | 1 barspoon absinthe
1/2 barspoon absinthe | 0.5 barspoon absinthe
2 dashes aromatic bitters | 2 dash aromatic-bitters
2 ds. orange bitters | 2 dash orange-bitters
1 dash orange bitters | 1 dash orange-bitters
Dash of orange bitters | 1 dash orange-bitters
2-3 dashes orange bitters | 2-3 dash orange-bitters
2 to 3 dashes orange bitters | 2-3 dash orange-bitters
2 or 3 dashes orange bitters | 2-3 dash orange-bitters
2–3 dashes orange bitters | 2-3 dash orange-bitters
8-10 leaves mint | 8-10 leaf mint-leaf
8-10 mint leaves | 8-10 each mint-leaf
5 to 6 basil leaves | 5-6 each basil
6/8 pcs raspberries | 6-8 piece raspberry
4 raspberries | 4 each raspberry
3 pcs blackberries | 3 piece blackberry
1 part gin | 1 part gin
2 parts bourbon | 2 part bourbon
1/2 part lemon juice | 0.5 part lemon-juice
1 jigger brandy | 1 jigger brandy
1 pony triple sec | 1 pony triple-sec
20 g sugar | 20 g sugar
1 cup milk | 1 cup milk
1 pint stout | 1 pint stout
1 litre soda water | 1 l soda-water
750 ml sparkling wine | 750 ml sparkling-wine
1 sugar cube | 1 each sugar-cube
1 egg white | 1 each egg-white
1 white of egg | 1 each egg-white
1 whole egg | 1 each egg
1 egg yolk | 1 each egg-yolk
1 sprig rosemary | 1 sprig rosemary
1/2 cucumber, sliced | 0.5 each cucumber
30ml (1 oz) lime juice | 30 ml lime-juice
1 oz (30 ml) lime juice | 1 oz lime-juice
1 oz / 30 ml lime juice | 1 oz lime-juice
3 drops saline solution | 3 drop saline-solution
10 drops saline solution | 10 drop saline-solution
1 pinch salt | 1 pinch salt
"""
"""Amounts in figures."""


SPOKEN = """
half an ounce lemon juice | 0.5 oz lemon-juice
half an ounce of lemon juice | 0.5 oz lemon-juice
half ounce lemon juice | 0.5 oz lemon-juice
a half ounce of lemon juice | 0.5 oz lemon-juice
one half ounce of lemon juice | 0.5 oz lemon-juice
quarter ounce simple syrup | 0.25 oz simple-syrup
a quarter of an ounce of simple syrup | 0.25 oz simple-syrup
quarter of an ounce simple syrup | 0.25 oz simple-syrup
three quarters of an ounce of lime juice | 0.75 oz lime-juice
three-quarters of an ounce of lime juice | 0.75 oz lime-juice
three quarter ounce lime juice | 0.75 oz lime-juice
two thirds of an ounce lime juice | 0.6667 oz lime-juice
an ounce of gin | 1 oz gin
one ounce of gin | 1 oz gin
an ounce and a half of bourbon | 1.5 oz bourbon
one and a half ounces bourbon | 1.5 oz bourbon
one ounce and a half of bourbon | 1.5 oz bourbon
two and a half ounces of bourbon | 2.5 oz bourbon
an ounce and a quarter of bourbon | 1.25 oz bourbon
one and three quarters ounces of rye | 1.75 oz rye-whiskey
two ounces of gin | 2 oz gin
Two Ounces Gin | 2 oz gin
twenty millilitres of lemon juice | 20 ml lemon-juice
forty-five ml pisco | 45 ml pisco
thirty mils of lemon juice | 30 ml lemon-juice
two dashes aromatic bitters | 2 dash aromatic-bitters
two dashes of aromatic bitters | 2 dash aromatic-bitters
a couple of dashes of orange bitters | 2 dash orange-bitters
couple dashes orange bitters | 2 dash orange-bitters
a few dashes orange bitters | 3 dash orange-bitters
a few drops of saline solution | 3 drop saline-solution
few drops saline solution | 3 drop saline-solution
a dash of orange bitters | 1 dash orange-bitters
a pinch of salt | 1 pinch salt
pinch of salt | 1 pinch salt
a teaspoon of sugar | 1 tsp sugar
half a teaspoon of absinthe | 0.5 tsp absinthe
a barspoon of maraschino | 1 barspoon maraschino-liqueur
one egg white | 1 each egg-white
the white of one egg | 1 each egg-white
six mint leaves | 6 each mint-leaf
a handful of mint leaves | 1 handful mint-leaf
two to three dashes orange bitters | 2-3 dash orange-bitters
a splash of soda water | 1 splash soda-water
splash soda water | 1 splash soda-water
equal parts gin | 1 part gin
one part gin | 1 part gin
"""
"""Amounts as they are said."""


WORDED = """
juice of half a lime | 0.5 each lime
juice of 1/2 lime | 0.5 each lime
juice of one lemon | 1 each lemon
Juice of 1 lemon | 1 each lemon
the juice of a lime | 1 each lime
juice from half a lemon | 0.5 each lemon
top with soda | - - soda-water
top up with soda water | - - soda-water
top with sparkling wine | - - sparkling-wine
soda water to top | - - soda-water
soda water, to top | - - soda-water
ginger beer to fill | - - ginger-beer
fill with ginger beer | - - ginger-beer
topped with tonic water | - - tonic-water
top with 2 oz soda water | 2 oz soda-water
2 oz soda water, to top | 2 oz soda-water
float of dark rum | 1 float dark-rum
dark rum float | 1 float dark-rum
0.5 oz dark rum float | 0.5 oz dark-rum
float 15 ml dark rum | 15 ml dark-rum
rinse of absinthe | 1 rinse absinthe
absinthe rinse | 1 rinse absinthe
absinthe, to rinse | 1 rinse absinthe
absinthe (rinse) | 1 rinse absinthe
simple syrup to taste | - - simple-syrup
salt, to taste | - - salt
0.5 oz orgeat (optional) | 0.5 oz orgeat optional
optional: 0.5 oz orgeat | 0.5 oz orgeat optional
0.5 oz orgeat, optional | 0.5 oz orgeat optional
2 oz rum, preferably aged | 2 oz rum
2 oz gin, preferably London dry | 2 oz gin
3 oz champagne, chilled | 3 oz champagne
3 oz chilled champagne | 3 oz champagne
1 oz freshly squeezed lime juice | 1 oz lime-juice
1 oz fresh lime juice | 1 oz lime-juice
1 oz fresh-pressed pineapple juice | 1 oz pineapple-juice
3/4 ounce fresh lemon juice (strained) | 0.75 oz lemon-juice
1 oz lime juice, freshly squeezed | 1 oz lime-juice
gin 2 oz | 2 oz gin
Gin – 60 ml | 60 ml gin
gin, 60 ml | 60 ml gin
gin: 60 ml | 60 ml gin
Gin - 2 oz | 2 oz gin
lime juice 3/4 oz | 0.75 oz lime-juice
aromatic bitters 2 dashes | 2 dash aromatic-bitters
aromatic bitters, 2 dashes | 2 dash aromatic-bitters
• 45 ml red bitter | 45 ml red-bitter
* 45 ml red bitter | 45 ml red-bitter
- 45 ml red bitter | 45 ml red-bitter
1) 45 ml red bitter | 45 ml red-bitter
orange twist, for garnish | - - orange-peel garnish
garnish: orange twist | - - orange-peel garnish
lemon peel (garnish) | - - lemon-peel garnish
5-6 mint leaves, gently slapped | 5-6 each mint-leaf
1 tablespoon honey syrup (2:1) | 1 tbsp rich-honey-syrup
2 oz each gin and sweet vermouth | 2 oz gin ; 2 oz sweet-vermouth
1 oz each: gin, red bitter, sweet vermouth | 1 oz gin ; 1 oz red-bitter ; 1 oz sweet-vermouth
30 ml each of lemon juice and simple syrup | 30 ml lemon-juice ; 30 ml simple-syrup
1 oz rye or bourbon | 1 oz rye-whiskey = bourbon
2 oz gin or vodka | 2 oz gin = vodka
60 ml white rum or cachaça | 60 ml white-rum = cachaca
1 oz lemon or lime juice | 1 oz lemon-juice = lime-juice
1 oz cream of coconut | 1 oz cream-of-coconut
"""
"""Amounts in words, words around amounts, several in one line."""


UNKNOWN_MAKERS = """
30 ml Boggart's maraschino | 30 ml maraschino-liqueur
1 oz Tallow ginger liqueur | 1 oz ginger-liqueur
2 oz Old Sidings bourbon | 2 oz bourbon
60 ml Grey Ferry London dry gin | 60 ml london-dry-gin
2 oz Pellow & Rudge gin | 2 oz gin
1.5 oz Harbour Lamp 12 year aged rum | 1.5 oz aged-rum
20 ml Marrow Hill crème de cassis | 20 ml creme-de-cassis
0.5 oz Hollow Lamp orange liqueur | 0.5 oz orange-liqueur
1 oz Copperbend sweet vermouth | 1 oz sweet-vermouth
2 dashes Tansy Lock orange bitters | 2 dash orange-bitters
"""
"""A maker nobody knows in front of a kind that is known."""


FALSE_FRIENDS = """
1 oz crème de coconut shampoo
1 oz ginger wine vinegar
30 ml vermouth-scented candle oil
1 oz rum raisin ice cream
2 oz root beer barrel
1 oz soy
10 ml bitter almond extract oil
"""
"""What must not be read, with confidence, as something it is not."""
