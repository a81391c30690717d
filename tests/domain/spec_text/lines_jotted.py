"""Three hundred more lines by another who had not seen the reader: jotted, spoken, from pages.

All are invented; in the form of `tests.domain.spec_text.lines_set_down`.
"""

# ruff: noqa: E501 — a line of a table is as long as what was said

from __future__ import annotations

READ = r"""
50 ml London dry gin, straight from the freezer | 50 ml london-dry-gin # freezer
22.5 ml fresh lemon juice, strained twice | 22.5 ml lemon-juice # strained
2 fl oz (60 ml) bonded rye whiskey | 2 oz bonded-rye-whiskey
¾ oz dry curaçao | 0.75 oz dry-curacao
1 tsp superfine sugar | 1 tsp superfine-sugar
1 barspoon maraschino liqueur | 1 barspoon maraschino-liqueur
1 1/4 oz pot still Jamaican rum, at least 55 % ABV | 1.25 oz jamaican-pot-still-rum
1 whole egg | 1 each egg
20 ml Italian red vermouth | 20 ml sweet-vermouth
4 dashes aromatic bitters, plus 1 dash orange bitters | 4 dash aromatic-bitters ; 1 dash orange-bitters
Lemon peel, expressed over the drink and discarded | - - lemon-peel garnish # discarded
Garnish: one brandied cherry and an orange half-wheel | 1 each cocktail-cherry garnish ; 1 each orange-slice garnish
Soda water, chilled, to top | - - soda-water # chilled
0.25 oz Islay single malt, floated | 0.25 oz smoky-scotch # Islay / float
1 part dry vermouth to 5 parts gin | 1 part dry-vermouth ; 5 part gin
30 ml egg white (about one egg) | 30 ml egg-white
One sugar cube soaked with three dashes of aromatic bitters | 1 each sugar-cube ; 3 dash aromatic-bitters
Absinthe, to rinse the glass | 1 rinse absinthe
15 ml Pellow & Rudge crème de violette | 15 ml violet-liqueur # Pellow & Rudge
60 ml blanco tequila (100 % agave) | 60 ml blanco-tequila # 100
1 oz cream sherry, not the dry kind | 1 oz cream-sherry
Half-ounce of falernum | 0.5 oz falernum
1 ounce heavy cream, lightly whipped, layered on top | 1 oz whipping-cream # whipped
90 ml hot water just off the boil | 90 ml boiling-water
Fresh nutmeg, grated over the foam | - - nutmeg garnish
2 oz Cognac VSOP | 2 oz cognac # VSOP
1½ teaspoons of cane syrup | 1.5 tsp cane-syrup
60 ml gin, navy strength for preference | 60 ml navy-strength-gin # preference
1 dash saline (4:1) | 1 dash saline-solution # 4:1
0.5 oz fino sherry (bone dry, opened this week) | 0.5 oz fino-sherry # opened this week
3 cucumber slices, muddled | 3 each cucumber-slice # muddled
1 oz (30 ml) aged rum, Barbados or similar | 1 oz aged-barbadian-rum # Barbados / similar
5 raspberries, plus 1 to garnish | 5 each raspberry ; 1 each raspberry garnish
Ginger beer – roughly 100 ml | 100 ml ginger-beer # roughly
45 ml overproof bourbon, Brindle Hare for instance | 45 ml high-proof-bourbon # Brindle Hare
15 ml sugar syrup (one part sugar, one part water, by weight) | 15 ml simple-syrup # weight
No garnish. | nothing
2oz rye | 2 oz rye-whiskey
3/4oz lemn juice | 0.75 oz lemon-juice
mezcal 1oz | 1 oz mezcal
simple 1/2 oz | 0.5 oz simple-syrup
splash oj | 1 splash orange-juice
top w ginger ale | - - ginger-ale
egg wht | - - egg-white
lime x 1/2 | 0.5 each lime
2x basil leaves | 2 each basil
60ml dk rum | 60 ml dark-rum
1/4oz elderflwr liq | 0.25 oz elderflower-liqueur
0.75oz lime jce (fresh!!) | 0.75 oz lime-juice
coffee liq - 1oz, the cheap one | 1 oz coffee-liqueur # cheap
+ 2 drops rosewater | 2 drop rose-water
1 can coconut milk | 1 can coconut-milk
pinapple jce 2oz | 2 oz pineapple-juice
2 oz tequilla repo | 2 oz reposado-tequila
ice | - - ice
mint, loads | - - mint # loads
- 1 oz PX | 1 oz px-sherry
3cl prosec | 3 cl prosecco
1 oz apple brndy 100pf | 1 oz apple-brandy # 100
0.5oz grenedine | 0.5 oz grenadine
2 oz white rum 1 oz lime 3/4 oz simple | 2 oz white-rum ; 1 oz lime-juice ; 0.75 oz simple-syrup
1oz cold brew strong | 1 oz cold-brew-coffee # strong
2 ounces (1/4 cup) dark rum | 2 oz dark-rum
1 cup (240 ml) unsweetened pineapple juice | 1 cup pineapple-juice # unsweetened
Ingredients | nothing
For the garnish: | nothing
1 (12-ounce) can ginger beer, well chilled | 1 can ginger-beer # chilled
1 1/2 oz. silver tequila | 1.5 oz blanco-tequila
• 1 oz blood orange juice, freshly squeezed | 1 oz blood-orange-juice
[ ] 3/4 oz honey syrup (see note) | 0.75 oz honey-syrup
Kosher salt, for rim | - - salt garnish # rim
6 to 8 fresh mint leaves, plus a sprig for garnish | 6-8 each mint-leaf ; 1 sprig mint garnish
1–2 jalapeño slices (seeds removed) | 1-2 each fresh-chilli # jalapeño / seeds removed
Crushed ice | - - crushed-ice
2 tablespoons freshly squeezed lime juice (from 1 lime) | 2 tbsp lime-juice
1/2 teaspoon matcha powder, sifted | 0.5 tsp matcha
1/4 cup granulated sugar | 0.25 cup sugar
Yield: 1 drink | nothing
Combine all ingredients in a shaker filled with ice; shake 12 seconds. | nothing
2 oz. aged agricole rhum | 2 oz rhum-agricole-vieux
Club soda (about 3 oz), to top | 3 oz soda-water # about
1 oz. vodka (preferably a wheat vodka) | 1 oz vodka # wheat
1/2 oz. orange liqueur such as triple sec | 0.5 oz orange-liqueur # triple sec
Lemon wheel and rosemary sprig (torched), for garnish | - - lemon-wedge garnish ; - - rosemary garnish # torched
4 oz brewed chai, cooled | 4 oz chai # cooled
1 oz crème de cacao (white) | 1 oz white-creme-de-cacao
1 Tbsp. fig jam | 1 tbsp fig-jam
1 T maple syrup | 1 tbsp maple-syrup
12 oz. lager, ice cold | 12 oz lager # cold
Dash of vanilla extract | 1 dash vanilla-extract
Pinch flaky sea salt | 1 pinch salt
2 oz gin, or to taste | 2 oz gin # to taste
Step 2: Add the lime juice and stir. | nothing
Serves 8: 1 bottle (750 ml) dry white wine | 1 bottle dry-white-wine
½ ounce blended scotch, plus more for misting | 0.5 oz blended-scotch # misting
Special equipment: fine-mesh strainer | nothing
Cocktail cherries, for serving | - - cocktail-cherry garnish
1 oz. yellow herbal liqueur | 1 oz yellow-herbal-liqueur
1 oz. ruby port | 30 ml | 1 oz ruby-port
Rating 4.5 (212 votes) | nothing
Ginger syrup* 3/4 oz | 0.75 oz ginger-syrup
3/4 oz house cinnamon syrup (2:1 demerara) | 0.75 oz cinnamon-syrup # 2:1 / demerara
0.5 oz rich honey syrup 3:1 | 0.5 oz rich-honey-syrup # 3:1
20 ml lime cordial, my batch from March | 20 ml lime-cordial # March
1/2 oz raspberry gomme | 0.5 oz raspberry-syrup # gomme
45 ml Grey Ferry Old Tom, the 47 % one | 45 ml old-tom-gin # 47 / Grey Ferry
15 ml Tarn & Weaver amaro | 15 ml amaro # Tarn & Weaver
1 dash Hollow Lamp cardamom bitters | 1 dash cardamom-bitters # Hollow Lamp
1 oz bianco vermouth (Saltmarsh Works) | 1 oz bianco-vermouth # Saltmarsh Works
0.75 oz split: half lemon, half lime | 0.375 oz lemon-juice ; 0.375 oz lime-juice
40 ml cask strength single malt, 12 yr | 40 ml cask-strength-scotch # cask / 12
10 ml pineapple gum syrup | 10 ml pineapple-syrup
6 drops 20 % saline | 6 drop saline-solution # 20
0.5 oz verjus, white | 0.5 oz white-verjus # white
22 ml super juice, lime | 22 ml lime-juice # super
1 oz batch 3 falernum, NOT the bought one | 1 oz falernum # batch 3
1 oz aquavit (caraway-forward), Tin Heron | 1 oz aquavit # caraway / Tin Heron
1 oz 151 Demerara rum | 1 oz 151-rum
15 ml toasted coconut syrup @ 50 brix | 15 ml coconut-syrup # toasted / 50 brix
2 dashes Old Quay, orange bitters | 2 dash orange-bitters # Old Quay
okay so two ounces of rye whiskey goes in first | 2 oz rye-whiskey
three quarters of an ounce of lemon juice freshly squeezed | 0.75 oz lemon-juice
um half an ounce of simple syrup | 0.5 oz simple-syrup
then I'm adding, uh, one ounce of sweet vermouth | 1 oz sweet-vermouth
to ounces of gin | 2 oz gin
for dashes of aromatic bitters | 4 dash aromatic-bitters
an ounce and a half of mezcal, the smoky one you guys know | 1.5 oz mezcal # smoky
two ounces of bourbon, no sorry, rye, two ounces of rye | 2 oz rye-whiskey
half ounce lime, actually make that three quarters | 0.75 oz lime-juice
point seven five ounces of orgeat | 0.75 oz orgeat
fifteen mils of maraschino | 15 ml maraschino-liqueur
sixty milliliters vodka | 60 ml vodka
a barspoon of absinthe, don't overdo it | 1 barspoon absinthe
and a couple dashes of orange bitters | 2 dash orange-bitters
one egg white, please use fresh eggs | 1 each egg-white
top it off with soda | - - soda-water
hey everybody welcome back to the channel | nothing
give that a good hard shake for like fifteen seconds | nothing
lime juice, three quarters of an ounce | 0.75 oz lime-juice
a quarter ounce of, what's it called, allspice dram | 0.25 oz allspice-dram
six to eight mint leaves, don't muddle them too hard | 6-8 each mint-leaf
we need one whole lime cut into wedges | 1 each lime # wedges
juice of one lemon | 1 each lemon # juice
juice of half a grapefruit | 0.5 each grapefruit # juice
two ounces aged rum, I'm using a Jamaican one | 2 oz aged-jamaican-rum # Jamaican
an ounce of pineapple juice and half an ounce of cream of coconut | 1 oz pineapple-juice ; 0.5 oz cream-of-coconut
equal parts gin, sweet vermouth and red bitter aperitivo | 1 part gin ; 1 part sweet-vermouth ; 1 part red-bitter
a teaspoon of sugar, or two if you like it sweet | 1-2 tsp sugar
garnish with a lemon twist | 1 each lemon-peel garnish
and for the garnish I've got an orange peel and a cherry | 1 each orange-peel garnish ; 1 each cocktail-cherry garnish
okay we rinse the glass with absinthe | 1 rinse absinthe
two parts rum one part lime juice and one part sugar syrup | 2 part rum ; 1 part lime-juice ; 1 part simple-syrup
thirty mil of sherry the dry one, fino | 30 ml fino-sherry
one ounce, one ounce of apricot liqueur | 1 oz apricot-liqueur
two fluid ounces of genever | 2 oz genever
some crushed ice | - - crushed-ice
a little splash of cold water | 1 splash water
fill it up with ginger beer | - - ginger-beer
three dashes of Hollow Lamp chocolate bitters | 3 dash chocolate-bitters # Hollow Lamp
one and three quarter ounces of blanco tequila | 1.75 oz blanco-tequila
one shot of espresso | 1 shot espresso
twenty two and a half mil lemon | 22.5 ml lemon-juice
that's two ounces of scotch, not the peaty stuff | 2 oz scotch-whisky # peaty
salt on half the rim | - - salt garnish # half / rim
so a half ounce of elderflower liqueur, Pellow and Rudge makes a nice one | 0.5 oz elderflower-liqueur # Pellow and Rudge
two ounces of white rum wait no I used dark rum today | 2 oz dark-rum
I forgot the bitters two dashes orange | 2 dash orange-bitters
one ounce of curacao the blue one for colour | 1 oz blue-curacao
optional but I like it, a pinch of salt | 1 pinch salt optional
a bar spoon of honey, raw honey | 1 barspoon honey
about three ounces of tonic | 3 oz tonic-water # about
toss all that in the blender with two cups of ice | 2 cup ice
muddle three strawberries in the tin | 3 each strawberry # muddle
half a banana, nice and ripe | 0.5 each banana
a can of coconut water | 1 can coconut-water
two ounces pea sco | 2 oz pisco
one ounce of fresh orange juice, none of that carton stuff | 1 oz orange-juice
and that's it cheers | nothing
three ounces prosecco or any dry sparkling wine | 3 oz prosecco = sparkling-wine
egg white goes in, that's optional by the way | - - egg-white optional
quarter teaspoon of cayenne | 0.25 tsp cayenne
four and a half ounces, no, four ounces of hot coffee | 4 oz coffee
an ounce of slow gin | 1 oz sloe-gin
one ounce of gin and the same of lemon juice | 1 oz gin ; 1 oz lemon-juice
two ounces of gin ⏎ actually let's do two and a quarter | 2.25 oz gin
4 cl Gin, gut gekühlt | 4 cl gin
2 cl Zitronensaft frisch gepresst | 2 cl lemon-juice
Saft einer halben Limette | 0.5 each lime
1 EL brauner Zucker | 1 tbsp brown-sugar
3 Spritzer Orangenbitter | 3 dash orange-bitters
mit Sekt auffüllen | - - sparkling-wine
1 Eiweiß (vom Bio-Ei) | 1 each egg-white
ein Schuss Sahne | 1 splash cream
8-10 Minzblätter | 8-10 each mint-leaf
Eiswürfel nach Belieben | - - ice
Alles in den Shaker und kräftig schütteln | nothing
5cl Bourbon (mind. 45 %) | 5 cl bourbon # 45
1,5 cl Läuterzucker | 1.5 cl simple-syrup
Orangenscheibe und Cocktailkirsche als Deko | - - orange-slice garnish ; - - cocktail-cherry garnish
1/2 Salatgurke, in Scheiben | 0.5 each cucumber
2 cl Limette | 2 cl lime-juice
200ml Tonic Water, eiskalt | 200 ml tonic-water
2 cl Holunderblütensirup, selbst gemacht | 2 cl elderflower-cordial
Saft von 1 Limette, ca. 2-3 cl | 1 each lime
4 cl de rhum blanc agricole | 4 cl rhum-agricole-blanc
le jus d'un demi citron vert | 0.5 each lime
3 cl de sirop de sucre de canne | 3 cl cane-syrup
quelques feuilles de menthe | 3 leaf mint-leaf
2 traits de bitter à l'orange | 2 dash orange-bitters
compléter avec de l'eau gazeuse | - - soda-water
1 blanc d'œuf | 1 each egg-white
glace pilée | - - crushed-ice
5 cl de cognac, pas trop vieux | 5 cl cognac
une pincée de sel fin | 1 pinch salt
2 cl de liqueur de fleur de sureau | 2 cl elderflower-liqueur
une rondelle de citron pour la déco | 1 wheel lemon-wedge garnish
Verser dans un verre à mélange et remuer | nothing
10 cl de champagne bien frais | 10 cl champagne
1,5 cl de crème de mûre | 1.5 cl creme-de-mure
vodka 6cl | 6 cl vodka
garniture : zeste d'orange | - - orange-peel garnish
1 cuillère à café de miel liquide | 1 tsp honey
2 à 3 cl de jus de pamplemousse rose | 2-3 cl pink-grapefruit-juice
3 cl di gin | 3 cl gin
30 ml vermut rosso | 30 ml sweet-vermouth
30 ml di bitter | 30 ml red-bitter
succo di mezzo lime | 0.5 each lime
2 cucchiaini di zucchero di canna | 2 tsp demerara-sugar
prosecco q.b. | - - prosecco
uno spruzzo di seltz | 1 splash soda-water
1 fetta d'arancia per guarnire | 1 slice orange-slice garnish
6 foglie di basilico fresco | 6 leaf basil
4,5 cl di rum bianco | 4.5 cl white-rum
un albume | 1 each egg-white
ghiaccio a cubetti | - - ice
1 cucchiaio di orzata | 1 tbsp orgeat
3 gocce di bitter aromatico | 3 drop aromatic-bitters
60 ml di succo di pompelmo | 60 ml grapefruit-juice
shakerare bene e filtrare nella coppa | nothing
5 cl di grappa bianca | 5 cl grappa
2 cl sciroppo di zucchero (1:1) | 2 cl simple-syrup
colmare con ginger beer | - - ginger-beer
2,5 cl limone | 2.5 cl lemon-juice
50 ml de tequila reposado | 50 ml reposado-tequila
el zumo de medio limón | 0.5 each lemon
2 cl de sirope de agave | 2 cl agave-syrup
una pizca de sal | 1 pinch salt
1 cucharadita de azúcar moreno | 1 tsp brown-sugar
rellenar con tónica | - - tonic-water
hielo picado | - - crushed-ice
6 cl de ron añejo | 6 cl aged-rum
una clara de huevo (opcional) | 1 each egg-white optional
2 golpes de bitter de naranja | 2 dash orange-bitters
10 hojas de hierbabuena | 10 leaf mint-leaf
100 ml de cava bien frío | 100 ml cava
30 ml zumo de piña natural | 30 ml pineapple-juice
una rodaja de pepino para decorar | 1 slice cucumber-slice garnish
media lima en cuartos | 0.5 each lime
agitar con mucho hielo y colar | nothing
un chorrito de granadina | 1 splash grenadine
15 ml de licor de melocotón | 15 ml peach-liqueur
4 cl de vermut rojo | 4 cl sweet-vermouth
"""
"""What is read as its writer expected."""

ASKED_RIGHTLY = r"""
10 ml agave syrup, 1:1 with hot water
1.5 bourbn .5 lemon
gin 60
1oz camomile grappa
2 dsh org bitters
1 oz sw verm
30 aperitivo
half oz amaro (the minty one??)
big squeeze lemon
twist
50ml vod
1 oz  LJ
5 ml lapsang tincture
2 oz butter-washed rum (2% salt)
2 dashes Hollow Lamp bitters
60 ml split base: 40 ml cognac + 20 ml rye
1 oz chilled oolong, 4 g / 100 ml
3 pumps vanilla syrup
3/4 lemon
one and a half ounce cash shasa
half an ounce of or shot
"""
"""What its writer would ask about too."""

ASKED = r"""
1 bottle of brut sparkling wine for six
grapefruit soda top up (sugar free)
1 oz jalapeño-infused blanco, 24 h
30 ml acid adjusted grapefruit juice
1 tsp oleo saccharum, lemon
1.5 oz coconut-washed white rum
0.75 oz rhubarb shrub
an ounce of dry vermouth or vermut however you say it
2 TL Rohrzucker
1 c. à soupe de cassonade
una ramita de romero y piel de limón para adornar
"""
"""What its writer would have understood; it is asked about, and nothing is taken."""

OTHERWISE = r"""
Ice: one large clear cube | nothing
Freshly ground black pepper, two turns | 2 each black-pepper # ground
bit of salt | - - salt
3 strips orange zest, pith removed | 3 piece orange-peel # pith removed
a heavy pour of gin | - - gin # heavy
an inch of ginger, peeled | 1 piece ginger # peeled
"""
"""What is put in other words than its writer expected, with nothing lost."""

OF_THE_SAME_KIND = r"""
Step 3 - Shake with ice and strain into a coupe | nothing
step one: pour the gin over ice | nothing
2. add mint and stir gently | nothing
Step 4: Garnish with a lime wedge | 1 each lime-wedge garnish
Step 2: Top with soda water | - - soda-water # to top
Serves: 8, 1 bottle dry white wine | 1 bottle dry-white-wine
Makes 2: 4 oz gin | 4 oz gin
Prep time 5 minutes | nothing
Difficulty easy | nothing
Calories: 210 | nothing
Author: Wren Tallow | nothing
Keywords: gin, lemon | nothing
1 oz sherry, the dry kind, manzanilla | 1 oz manzanilla-sherry
3x mint sprigs | 3 each mint # mint sprigs
2 x lime wedges | 2 each lime-wedge
1 oz gin w 2 dashes bitters | 1 oz gin ; 2 dash aromatic-bitters
soda water top up | - - soda-water # to top
60 ml gin | 2 oz | 60 ml gin # 2 oz
half an ounce, half an ounce of lime | 0.5 oz lime-juice
two dashes of bitters, or three | 2-3 dash aromatic-bitters
2 oz gin, or three if you're thirsty | 2-3 oz gin # or three if you're thirsty
oh and I forgot the lime juice one ounce | 1 oz lime-juice
oh I forgot the syrup half an ounce cinnamon | 0.5 oz cinnamon-syrup
for the garnish I'm using a mint sprig and a lemon twist | 1 each mint garnish ; 1 each lemon-peel garnish
sugar, for rimming | - - sugar garnish # for rimming
2 oz gin, old tom by preference | 2 oz old-tom-gin # by preference
2 oz rum, Jamaican or similar | 2 oz jamaican-rum # or similar
1 oz swt vrmth | 1 oz sweet-vermouth # swt vrmth
1 oz brbn | 1 oz bourbon # brbn
1 oz hibiscis syrup | 1 oz hibiscus-syrup # hibiscis
15 ml strawberry gomme syrup | 15 ml strawberry-syrup # gomme
15 ml simple syrup @ 65 brix | 15 ml simple-syrup # 65 brix
2 oz white agricole rhum | 2 oz rhum-agricole-blanc
"""
"""What else is read by the same rules."""

ASKED_OF_THE_SAME_KIND = r"""
2x oz gin
2 oz gin | 20 ml
two ounces, three ounces of gin
2 oz jamaican rhum
1 oz gin, gomme
1 oz campher
1 oz clementina
1 oz port, the ruby one, tawny
2 oz rum, dark, white
"""
"""What is near to those and may be another thing."""
