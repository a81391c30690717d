"""Three hundred lines by two who had not seen the reader, tried once it was done.

Of each hundred and fifty it read 145 and 139 as their writers meant at first, and none in silence as
something else but a garnish that was not called one. All are invented; in the form of
`tests.domain.spec_text.lines_set_down`.
"""

# ruff: noqa: E501 — a line of a table is as long as what was said

from __future__ import annotations

READ = r"""
60 ml blanco tequila | 60 ml blanco-tequila
1 1/2 oz bourbon, at least 100 proof | 1.5 oz bourbon
¾ oz fresh lemon juice | 0.75 oz lemon-juice
Gin - 50ml | 50 ml gin
2 dashes orange bitters | 2 dash orange-bitters
1.5oz rye whiskey (Pellow & Rudge, bonded) | 1.5 oz bonded-rye-whiskey
0.25 oz maraschino liqueur | 0.25 oz maraschino-liqueur
1 egg white (optional) | 1 each egg-white optional
top with cold soda water | - - soda-water # cold
Absinthe, to rinse the glass | 1 rinse absinthe
8-10 mint leaves, plus a sprig for garnish | 8-10 each mint-leaf ; 1 sprig mint garnish
1 oz each gin, sweet vermouth and fino sherry | 1 oz gin ; 1 oz sweet-vermouth ; 1 oz fino-sherry
30ml (1oz) dry vermouth | 30 ml dry-vermouth
1 bar spoon 2:1 demerara syrup | 1 barspoon demerara-syrup
half oz falernum | 0.5 oz falernum
2oz Jamaican rum, something funky | 2 oz jamaican-pot-still-rum # funky
1 whole egg | 1 each egg
1 tsp superfine sugar | 1 tsp superfine-sugar
3 oz champagne, well chilled | 3 oz champagne # chilled
a couple dashes of aromatic bitters | 2 dash aromatic-bitters
Lemon twist, expressed and discarded | - - lemon-peel garnish # discarded
Garnish: orange wheel & cocktail cherry | - - orange-slice garnish ; - - cocktail-cherry garnish
2 parts white rum | 2 part white-rum
1 part lime juice / 1 part simple syrup | 1 part lime-juice ; 1 part simple-syrup
Half a lime, cut into wedges | 0.5 each lime # wedges
3 slices cucumber, skin on | 3 slice cucumber-slice # skin on
45 ml cachaça | 45 ml cachaca
1/2oz crème de cacao (white) | 0.5 oz white-creme-de-cacao
20 ml creme de mure | 20 ml creme-de-mure
1 shot espresso, freshly pulled | 1 shot espresso
3 drops saline (20%) | 3 drop saline-solution # 20%
Pinch of salt | 1 pinch salt
1 bottle (750 ml) red wine, nothing fancy | 1 bottle red-wine # nothing fancy
½ oz dry curaçao or other good orange liqueur | 0.5 oz dry-curacao = orange-liqueur
1/4 oz islay scotch, floated | 0.25 oz smoky-scotch # float
2 oz London dry gin (not too citrusy) | 2 oz london-dry-gin # not too citrusy
Simple syrup (1:1), 22.5 ml | 22.5 ml simple-syrup
1 oz pinapple juice | 1 oz pineapple-juice
3/4 oz lime jucie | 0.75 oz lime-juice
1/2 oz. Grey Ferry apricot liqueur | 0.5 oz apricot-liqueur
1.25 oz pisco (Hollow Lamp) | 1.25 oz pisco
Shake everything hard with ice for 12 seconds and double strain | nothing
Step 3: Strain into a chilled coupe | nothing
For the drink: | nothing
Prep time 5 min | Serves 1 | Easy | nothing
Jump to recipe · Print · Save | nothing
Add 15 ml of orgeat and shake again without ice | 15 ml orgeat
1 barspoon (5 ml) allspice dram | 1 barspoon allspice-dram
1 lime, juiced | 1 each lime # juice
Juice of 1 small grapefruit | 1 each grapefruit # juice / small
1 oz heavy cream, lightly whipped | 1 oz whipping-cream # lightly whipped
Freshly grated nutmeg, for garnish | - - nutmeg garnish
60-75ml ginger ale | 60-75 ml ginger-ale
about 20 ml sweet vermouth | 20 ml sweet-vermouth # about
scant 3/4 oz grenadine | 0.75 oz grenadine # scant
heaping tsp raspberry jam | 1 tsp raspberry-jam # heaping
1 cup black tea, strong and cooled | 1 cup black-tea # strong / cooled
2 oz coconut water (unsweetened) | 2 oz coconut-water # unsweetened
6 blackberries | 6 each blackberry
2 oz añejo tequila (or reposado) | 2 oz anejo-tequila = reposado-tequila
navy strength gin, 1 oz | 1 oz navy-strength-gin
☐ 1 oz coffee liqueur | 1 oz coffee-liqueur
1/2 oz lemon, 1/2 oz simple, 1 egg white | 0.5 oz lemon-juice ; 0.5 oz simple-syrup ; 1 each egg-white
two ounces of rye whiskey | 2 oz rye-whiskey
three quarters of an ounce of lemon juice | 0.75 oz lemon-juice
an ounce and a half of white rum | 1.5 oz white-rum
um half an ounce of triple sec | 0.5 oz triple-sec
okay so fifty mils of gin | 50 ml gin
twenty five mil fresh lime juice | 25 ml lime-juice
a quarter ounce of simple syrup no wait make that half an ounce | 0.5 oz simple-syrup
one ounce of dry vermouth sorry sweet vermouth | 1 oz sweet-vermouth
a bar spoon of absinthe | 1 barspoon absinthe
and then top it up with soda | - - soda-water
one egg white if you like | 1 each egg-white optional
the juice of half a lemon | 0.5 each lemon # juice
seven and a half mils of ginger syrup | 7.5 ml ginger-syrup
garnish with a lemon twist | 1 each lemon-peel garnish
point seven five ounces of peach liqueur | 0.75 oz peach-liqueur
two ounces of bourbon that's been aged at least eight years | 2 oz bourbon # at least / year
one and a half ounces of mescal | 1.5 oz mezcal
two ounces of gin an ounce of lemon juice and three quarters simple | 2 oz gin ; 1 oz lemon-juice ; 0.75 oz simple-syrup
a handful of mint leaves | 1 handful mint-leaf
a pinch of cayenne | 1 pinch cayenne
half ounce of creme de violet | 0.5 oz violet-liqueur
thirty mil of cream de cassis | 30 ml creme-de-cassis
a splash of pineapple juice | 1 splash pineapple-juice
half a dozen raspberries | 6 each raspberry
one to two barspoons of maple syrup | 1-2 barspoon maple-syrup
give it a good shake and strain it into a coupe | nothing
hang on let me find the other bottle | nothing
right so this one's my favourite for a winter evening | nothing
a dash or two of orange bitters | 1-2 dash orange-bitters
four ounces of prosecco really cold | 4 oz prosecco # cold
one ounce of amaro not too sweet | 1 oz amaro # not too sweet
about a teaspoon of agave syrup | 1 tsp agave-syrup # about
sixty mils of cognac from hollow lamp | 60 ml cognac
too ounces of vodka | 2 oz vodka
for ounces of tonic water | 4 oz tonic-water
cinnamon stick for garnish | - - cinnamon-stick garnish
equal parts bourbon lemon juice and honey syrup | 1 part bourbon ; 1 part lemon-juice ; 1 part honey-syrup
4 cl Wodka | 4 cl vodka
2 cl frisch gepresster Zitronensaft | 2 cl lemon-juice
2 Spritzer Orangenbitter | 2 dash orange-bitters
Saft einer halben Limette | 0.5 each lime
mit Ginger Ale auffüllen | - - ginger-ale
Zum Garnieren: Orangenscheibe und Minzzweig | - - orange-slice garnish ; - - mint garnish
1,5 cl Holunderblütensirup | 1.5 cl elderflower-cordial
Alles mit Eis kräftig schütteln und ins Glas abseihen | nothing
5 cl de rhum agricole blanc | 5 cl rhum-agricole-blanc
2 cl de jus de citron vert | 2 cl lime-juice
1 cuillère à café de sirop de sucre de canne | 1 tsp cane-syrup
8 feuilles de menthe fraîche | 8 leaf mint-leaf
compléter avec de l'eau gazeuse | - - soda-water
une rondelle de citron pour la déco | 1 wheel lemon-wedge garnish
Le jus d'un demi-citron | 0.5 each lemon
1 blanc d'œuf (facultatif) | 1 each egg-white optional
3 cl de liqueur de café | 3 cl coffee-liqueur
Remuer à la cuillère puis filtrer dans un verre à cocktail | nothing
4 cl di gin | 4 cl gin
3 cl di vermut rosso | 3 cl sweet-vermouth
succo di mezzo limone | 0.5 each lemon
2 cucchiaini di zucchero di canna | 2 tsp demerara-sugar
colmare con acqua tonica | - - tonic-water
scorza d'arancia per guarnire | - - orange-peel garnish
6 foglie di basilico | 6 leaf basil
un pizzico di sale | 1 pinch salt
90 ml di succo d'ananas | 90 ml pineapple-juice
Servire in un bicchiere alto con molto ghiaccio | nothing
60 ml de tequila reposado | 60 ml reposado-tequila
30 ml de zumo de lima recién exprimido | 30 ml lime-juice
2 cucharadas de azúcar glas | 2 tbsp icing-sugar
2 golpes de amargo aromático | 2 dash aromatic-bitters
completar con agua con gas | - - soda-water
10 hojas de hierbabuena | 10 leaf mint-leaf
una rodaja de pepino para decorar | 1 slice cucumber-slice garnish
45 ml de ron añejo | 45 ml aged-rum
Agitar con hielo y colar en una copa fría | nothing
60ml blanco teq | 60 ml blanco-tequila
2oz bourbn (or rye) | 2 oz bourbon = rye-whiskey
1 bsp maraschino | 1 barspoon maraschino-liqueur
gin 45ml, dry verm 15ml, olive brine 1 tsp | 45 ml gin ; 15 ml dry-vermouth ; 1 tsp olive-brine
60ml gin 22ml lemon 22ml simple 1 egg wht | 60 ml gin ; 22 ml lemon-juice ; 22 ml simple-syrup ; 1 each egg-white
1oz lemon | 1 oz lemon-juice
OJ 3oz | 3 oz orange-juice
20ml cinnamn syrup | 20 ml cinnamon-syrup
gin (the juniper-heavy one) 2 oz | 2 oz gin # juniper-heavy
1 oz blanc vermouth (not dry!) | 1 oz bianco-vermouth
pinch sea salt | 1 pinch salt
handful of raspberries (abt 8) | 1 handful raspberry # 8
pineapple jce 1.5oz (tinned ok) | 1.5 oz pineapple-juice # tinned
2 tsp apricto jam (opt.) | 2 tsp apricot-jam optional
wht rum 50 ml + dark rum 10ml float | 50 ml white-rum ; 10 ml dark-rum # float
ginger beer — top | - - ginger-beer
1 ½ oz. gin, navy strength | 1.5 oz navy-strength-gin
22.5 ml lemon juice, double-strained | 22.5 ml lemon-juice # double-strained
Pellow & Rudge dry gin – 50 mL | 50 ml london-dry-gin
¼ oz Hollow Lamp falernum | 0.25 oz falernum
Equal parts gin, sweet vermouth & red bitter | 1 part gin ; 1 part sweet-vermouth ; 1 part red-bitter
1 egg white (pasteurised if serving guests) | 1 each egg-white # pasteurised
Prosecco to fill | - - prosecco
1 oz Demerara rum (151 proof) | 1 oz demerara-rum # 151
dark rum, ½ oz, floated on top | 0.5 oz dark-rum # float
15 ml rich demerara syrup (2:1) | 15 ml demerara-syrup
2 oz rye whiskey (100 proof or higher) | 2 oz rye-whiskey
approx. 20 ml fino sherry | 20 ml fino-sherry # approx
4 drops saline solution (20 %) | 4 drop saline-solution # 20
1.5 oz pisco (quebranta if you have it) | 1.5 oz pisco # quebranta
2 dashes chocolate bitters, 1 dash orange bitters | 2 dash chocolate-bitters ; 1 dash orange-bitters
Gin: one part. Tonic water: three parts. | 1 part gin ; 3 part tonic-water
Sloe gin (home-made), 25 ml | 25 ml sloe-gin # home-made
½ barspoon peated Scotch, from Islay | 0.5 barspoon smoky-scotch
calvados, at least 2 years old, 1 3/4 oz | 1.75 oz calvados # 2 years
1 1/2 ounces (45 milliliters) aged rum, preferably unsweetened | 1.5 oz aged-rum # unsweetened
2 oz / 60 mL reposado tequila | 2 oz reposado-tequila
1 (12-ounce) can club soda, chilled | 1 can soda-water # 12 / chilled
1 x 750ml bottle dry white wine | 1 bottle dry-white-wine # 750
2 cups strong black tea, cooled | 2 cup black-tea # strong / cooled
1 tablespoon agave nectar, plus more to taste | 1 tbsp agave-syrup # to taste
1/2 cucumber, peeled and diced | 0.5 each cucumber # peeled
250 g caster sugar | 250 g superfine-sugar
• 1 oz heavy cream, lightly whipped | 1 oz whipping-cream # whipped
Garnish: lemon twist + 2 brandied cherries | - - lemon-peel garnish ; 2 each cocktail-cherry garnish
Freshly grated nutmeg, to garnish (optional) | - - nutmeg garnish optional # grated
1 orange wedge, to serve | 1 each orange-slice garnish
juice of ½ a grapefruit | 0.5 each grapefruit # juice
¼ teaspoon orange blossom water (a little goes a long way) | 0.25 tsp orange-flower-water
[ ] 30 ml apricot brandy (the liqueur) | 30 ml apricot-liqueur
For the honey-ginger syrup: | nothing
Ice: one large clear cube | nothing
crushed ice | - - crushed-ice
★★★★☆ 4.6 (128 ratings) · Jump to recipe · Print | nothing
Step 2. Add everything but the soda and shake hard for 12 seconds. | nothing
You'll need a chilled coupe and a fine strainer. | nothing
Stir in the cold brew (30 ml), then strain into a rocks glass. | 30 ml cold-brew-coffee
so we're gonna start with two ounces of bourbon | 2 oz bourbon
an ounce and a half of mezcal | 1.5 oz mezcal
three quarters of an ounce fresh lime juice | 0.75 oz lime-juice
half an ounce of agave | 0.5 oz agave-syrup
and then two dashes of your favorite orange bitters | 2 dash orange-bitters
i'm going in with about sixty mils of london dry gin | 60 ml london-dry-gin # about
twenty two and a half mil of lemon juice | 22.5 ml lemon-juice
one ounce of sweet vermouth no sorry three quarters of an ounce | 0.75 oz sweet-vermouth
two ounces gin ⏎ actually make that one and a half | 1.5 oz gin
hey everybody welcome back to the channel | nothing
and just a bar spoon of maraschino liqueur | 1 barspoon maraschino-liqueur
uh one egg white if you like that sort of thing | 1 each egg-white optional
half an ounce of or jot | 0.5 oz orgeat
half ounce of fill ernum | 0.5 oz falernum
two ounces of repo sado tequila | 2 oz reposado-tequila
top it off with some soda water | - - soda-water
i like two ounces of a nice smoky scotch here | 2 oz smoky-scotch
shake that for like ten to twelve seconds | nothing
oh wow the nose on this is just incredible | nothing
forty five mils of aquavit thirty mils of lime and twenty mils of simple | 45 ml aquavit ; 30 ml lime-juice ; 20 ml simple-syrup
a little pinch of salt trust me | 1 pinch salt
six to eight basil leaves | 6-8 each basil
half a lime cut into wedges | 0.5 each lime # wedges
the juice of one lemon | 1 each lemon # juice
point seven five ounces grapefruit | 0.75 oz grapefruit-juice
two ounces of an eight year old dark rum | 2 oz dark-rum # year
equal parts mezcal sweet vermouth and red bitter | 1 part mezcal ; 1 part sweet-vermouth ; 1 part red-bitter
a quarter cup of pineapple juice fresh if you can | 0.25 cup pineapple-juice # fresh
and a teaspoon of sugar maybe two | 1-2 tsp sugar # maybe
four dashes of hollow lamp cardamom bitters | 4 dash cardamom-bitters
a scoop of vanilla ice cream | 1 scoop ice-cream
chill your glass while you're doing all of this | nothing
two ounces of pineapple rum and one ounce coconut cream | 2 oz pineapple-rum ; 1 oz coconut-cream
quarter ounce creme de violet | 0.25 oz violet-liqueur
4 cl weißer Rum | 4 cl white-rum
2 EL Zitronensaft, frisch gepresst | 2 tbsp lemon-juice
1 BL Puderzucker | 1 barspoon icing-sugar
Saft von 1/2 Limette | 0.5 each lime
2 Spritzer Orangenbitter | 2 dash orange-bitters
eine Orangenscheibe als Deko | 1 each orange-slice garnish
5 cl Gin, 2 cl Zitrone, 1,5 cl Zuckersirup | 5 cl gin ; 2 cl lemon-juice ; 1.5 cl simple-syrup
4 cl de rhum agricole blanc | 4 cl rhum-agricole-blanc
le jus d'un demi-citron vert | 0.5 each lime
1 c. à soupe de sirop de canne | 1 tbsp cane-syrup
2 traits d'amers aromatiques | 2 dash aromatic-bitters
compléter avec de l'eau gazeuse | - - soda-water
1 blanc d'œuf | 1 each egg-white
cognac VSOP : 3 cl | 3 cl cognac
3 cl di vermouth rosso | 3 cl sweet-vermouth
gin 4,5 cl | 4.5 cl gin
succo di mezzo limone | 0.5 each lemon
2 cucchiaini di zucchero semolato | 2 tsp sugar
uno spruzzo di seltz | 1 splash soda-water
mezza fetta d'arancia per guarnire | 0.5 slice orange-slice garnish
prosecco q.b. | - - prosecco
1 albume | 1 each egg-white
Versare tutto in un tumbler colmo di ghiaccio. | nothing
3 gocce di assenzio | 3 drop absinthe
2 oz de mezcal joven | 2 oz mezcal
1 cda. de jarabe de agave | 1 tbsp agave-syrup
un chorrito de granadina | 1 splash grenadine
ron añejo, 5 cl | 5 cl aged-rum
90 ml de refresco de toronja | 90 ml grapefruit-soda
una rodaja de pepino, para decorar | 1 slice cucumber-slice garnish
3/4 de taza de jugo de piña | 0.75 cup pineapple-juice
Agitar bien y colar en copa fría. | nothing
"""

OTHERWISE = r"""
1 thumb of ginger, peeled | 1 each ginger # peeled
a glug of elderflower cordial | 1 splash elderflower-cordial
1 Eiweiß (nach Belieben) | 1 each egg-white
Absinthe, for rinsing | 1 rinse absinthe
10–12 mint leaves, lightly slapped | 10-12 each mint-leaf # slapped
garnish that with a lime wheel and a sprig of mint | 1 each lime-wedge garnish ; 1 sprig mint garnish
a healthy glug of olive brine | 1 splash olive-brine # healthy
6–8 Minzblätter | 6-8 each mint-leaf
une dizaine de feuilles de menthe | 10 leaf mint-leaf
"""
"""What is put in other words than its writer expected, with nothing lost; or is read since."""

ASKED_RIGHTLY = r"""
2 dashes Tallow Lane bitters
50 reposado
1/2 oz rhubarb-ginger shrub
2 oz chamomile-infused gin
2 sprays of mezcal
rinse the glass with a little peated scotch
an ounce and a half of brown butter washed rum
1 EL Rohrzucker
¾ lime jc
45 cachaca
1oz dry curaçao -> 3/4 if it's too sweet
s. vermouth 1oz
2 dashes Grey Ferry bitters
1 oz vermouth
25 ml beetroot shrub
60 ml brown-butter-washed bourbon
1 sugar cube, soaked in aromatic bitters
for the vodka i'm using the grey ferry one so that's fifty mil
an ounce and a half of chamomile infused gin
one two three four dashes of peach bitters
mit Mineralwasser auffüllen
1 cc de cassonade
el jugo de 2 limones
45 ml de tequila infusionado con jalapeño
"""
"""What a careful reader asks about."""

ASKED = r"""
2 oz bourban
onza y media de pisco
2 dsh orange bit.
simple 2:1 - 1/4 oz
one whole egg yes the whole thing
Alles mit Eis kräftig shaken und in ein Glas abseihen.
Pour 4 personnes – Préparation : 10 min
"""
"""What is asked about though its writer would not have."""
