"""Three hundred lines as bartenders bring them, by somebody who had not seen the reader, but four.

In the form of `tests.domain.spec_text.lines_set_down`; four are left out of whose reading nobody was
sure. What was learned from those that were misread stands for its whole kind at the end.
"""

# ruff: noqa: E501 — a line of a table is as long as what was said

from __future__ import annotations

READ = r"""
2 oz London dry gin (something juniper-heavy) | 2 oz london-dry-gin # juniper-heavy
3/4 oz lemon juice, strained | 0.75 oz lemon-juice # strained
45ml reposado tequila | 45 ml reposado-tequila
0.75oz Demerara syrup (2:1) | 0.75 oz demerara-syrup
1 ½ oz bourbon, bottled in bond | 1.5 oz bonded-bourbon
22.5 ml fresh lime | 22.5 ml lime-juice
1oz. orange juice (blood orange if you can find it) | 1 oz orange-juice # blood orange
3 dashes aromatic bitters | 3 dash aromatic-bitters
1 bsp maraschino | 1 barspoon maraschino-liqueur
barspoon of rich simple | 1 barspoon rich-simple-syrup
Absinthe, to rinse the glass | 1 rinse absinthe
Soda water to top | - - soda-water
Garnish: grapefruit twist, discarded | - - grapefruit-peel garnish # discarded
6-8 mint leaves | 6-8 each mint-leaf
1 egg white (optional, but don't skip it) | 1 each egg-white optional
dry vermouth - 15ml | 15 ml dry-vermouth
Equal parts gin, sweet vermouth and red bitter | 1 part gin ; 1 part sweet-vermouth ; 1 part red-bitter
1½ parts blended Scotch | 1.5 part blended-scotch
2 oz (60 ml) aged Jamaican rum | 2 oz aged-jamaican-rum
50 ml / 1⅔ oz cachaça | 50 ml cachaca
3 drops saline (20%) | 3 drop saline-solution # 20%
Pinch of sea salt | 1 pinch salt
scant 1/2 oz falernum | 0.5 oz falernum # scant
heaping 3/4 oz orgeat | 0.75 oz orgeat # heaping
1 to 1.5 oz club soda, depending on the size of your glass | 1-1.5 oz soda-water # depending
4 oz. boiling water | 4 oz boiling-water
1 tsp. superfine sugar | 1 tsp superfine-sugar
1 sugar cube soaked with 4 dashes aromatic bitters | 1 each sugar-cube ; 4 dash aromatic-bitters
1 (750 ml) bottle dry sparkling wine, chilled | 1 bottle sparkling-wine # dry / chilled
1 14-oz can coconut milk | 1 can coconut-milk # 14
3 cups brewed black tea, cooled | 3 cup black-tea # cooled
1 qt water, filtered | 1 quart water # filtered
2 sprigs thyme, plus one for garnish | 2 sprig thyme ; 1 each thyme garnish
1 long strip of orange peel | 1 each orange-peel # long
A lemon wheel and a cocktail cherry, to garnish | 1 each lemon-wedge garnish ; 1 each cocktail-cherry garnish
Salt rim (half) | - - salt garnish # rim / half
½ oz Pellow & Rudge dry curaçao | 0.5 oz dry-curacao # Pellow & Rudge
2 oz bourbon (Hollow Lamp 8 year) | 2 oz bourbon # 8 year / Hollow Lamp
1.5 oz Grey Ferry gin | 1.5 oz gin # Grey Ferry
30ml sweet vermouth, preferably Casa Bellandi | 30 ml sweet-vermouth # Casa Bellandi
1/2 oz amaro (I use Fratelli Ombra) | 0.5 oz amaro # Fratelli Ombra
2 oz rye or bourbon | 2 oz rye-whiskey = bourbon
1 oz coffee liqueur - not too sweet | 1 oz coffee-liqueur # not too sweet
2oz rhum agricole blanc | 2 oz rhum-agricole-blanc
1-1/2 oz pisco | 1.5 oz pisco
1 - 2 dashes mole bitters | 1-2 dash mole-bitters
2 x 25ml vodka | 50 ml vodka
1 shot of espresso, freshly pulled | 1 shot espresso
1 jigger Irish whiskey | 1 jigger irish-whiskey
a glug of olive brine | 1 splash olive-brine # glug
splash of cranberry | 1 splash cranberry-juice
Fill the glass with crushed ice and swizzle until it frosts | nothing
Shake hard with ice and double strain into a chilled coupe. | nothing
For the honey syrup: | nothing
Serves 4 (or 2 on a Friday) | nothing
Glass: Nick & Nora | nothing
Stir 30 seconds over a big cube; the gin should come straight from the freezer. | nothing
Shake 2 oz gin, 3/4 oz lemon juice and 1/2 oz honey syrup with ice | 2 oz gin ; 0.75 oz lemon-juice ; 0.5 oz honey-syrup
Top with 2 oz prosecco | 2 oz prosecco
Champagne, to fill | - - champagne
½ oz overproof rum, floated | 0.5 oz overproof-rum # floated
Dusting of ground cinnamon over the foam | - - cinnamon garnish # Dusting
3 coffee beans, on top | 3 each coffee-beans garnish
2 brandied cherries on a pick (garnish) | 2 each cocktail-cherry garnish
1 lime wedge, for serving | 1 each lime-wedge garnish
1 lime, cut into 8 wedges | 1 each lime # 8 wedges
100 g caster sugar | 100 g superfine-sugar
200gr frozen raspberries | 200 g raspberry # frozen
2 dashes bitters | 2 dash aromatic-bitters
2 oz tequila (not gold!) | 2 oz tequila # not gold
1/4 oz cinnamon syrup, or to taste | 0.25 oz cinnamon-syrup # to taste
sugar to taste | - - sugar
Worcestershire sauce, a few dashes | 3 dash worcestershire-sauce # few
A couple of dashes of celery bitters | 2 dash celery-bitters
2oz vodak | 2 oz vodka
0,5 oz triple sec | 0.5 oz triple-sec
.5 oz allspice dram | 0.5 oz allspice-dram
1oz each: gin, lemon juice, triple sec | 1 oz gin ; 1 oz lemon-juice ; 1 oz triple-sec
3/4 oz each of lime & pineapple juice | 0.75 oz lime-juice ; 0.75 oz pineapple-juice
gin, 2 oz; lime cordial, 3/4 oz | 2 oz gin ; 0.75 oz lime-cordial
1 cup (8 fl oz / 240 ml) whole milk | 1 cup milk
1/2 pint stout | 0.5 pint stout
1.5 cl crème de violette | 1.5 cl violet-liqueur
creme de cacao (white) 3/4 oz | 0.75 oz white-creme-de-cacao
1 oz creme de menthe, green not white | 1 oz green-creme-de-menthe
3 slices cucumber, muddled, + 1 ribbon to garnish | 3 slice cucumber-slice ; 1 piece cucumber-slice garnish # muddled / ribbon
1 thumb-size piece of ginger, peeled | 1 piece ginger # thumb
1 heaped tbsp. raspberry jam | 1 tbsp raspberry-jam # heaped
1 T lemon juice | 1 tbsp lemon-juice
1 t vanilla extract | 1 tsp vanilla-extract
1 oz clarified lime juice | 1 oz lime-juice # clarified
½ oz heavy cream, lightly whipped | 0.5 oz whipping-cream # lightly whipped
Fino sherry 1oz, well chilled | 1 oz fino-sherry # well chilled
1 oz PX | 1 oz px-sherry
2oz VSOP cognac | 2 oz cognac # VSOP
4 oz OJ, no pulp | 4 oz orange-juice # no pulp
1.5oz Gin (navy strength), 0.5oz Lime, 0.5oz Simple | 1.5 oz navy-strength-gin ; 0.5 oz lime-juice ; 0.5 oz simple-syrup
Whiskey - 2oz - rye, 107 proof | 2 oz rye-whiskey # 107 proof
2 oz gin (sub vodka if you must) | 2 oz gin # vodka
Optional: 2 drops orange flower water | 2 drop orange-flower-water optional
¾ - 1 oz grapefruit juice (depends how sour it is) | 0.75-1 oz grapefruit-juice # depends how sour
1 bottle (12 oz) ginger beer | 1 bottle ginger-beer # 12 oz
1 oz Islay single malt (or other smoky whisky) | 1 oz smoky-scotch
2 oz gin, London dry ⏎ ^ make that Old Tom | 2 oz old-tom-gin
two ounces of london dry gin | 2 oz london-dry-gin
and then three quarters of an ounce of fresh lemon juice | 0.75 oz lemon-juice
okay so we're going to start with an ounce and a half of mezcal | 1.5 oz mezcal
uh half an ounce of what's it called maraschino | 0.5 oz maraschino-liqueur
two dashes of orange bidders | 2 dash orange-bitters
one ounce sweet for mouth | 1 oz sweet-vermouth
sixty mils of bourbon | 60 ml bourbon
twenty two and a half mil of lime | 22.5 ml lime-juice
a quarter ounce of simple | 0.25 oz simple-syrup
two ounces no sorry one and three quarter ounces of rye | 1.75 oz rye-whiskey
Gin, two ounces. Lemon, three quarters. Honey syrup, half. | 2 oz gin ; 0.75 oz lemon-juice ; 0.5 oz honey-syrup
and we top it up with soda | - - soda-water
just a tiny splash of water at the end | 1 splash water # tiny
rinse the glass with absinthe and dump it | 1 rinse absinthe
I give it a quick shake maybe ten seconds | nothing
alright hi everyone welcome back to the bar | nothing
and we garnish with a big orange peel | 1 each orange-peel garnish # big
throw in like six or seven mint leaves | 6-7 each mint-leaf
half a bar spoon of fernet | 0.5 barspoon fernet
an ounce of the grey ferry dry vermouth | 1 oz dry-vermouth # grey ferry
two ounces of tequila blanco and an ounce of grapefruit juice | 2 oz blanco-tequila ; 1 oz grapefruit-juice
point seven five ounces of pineapple juice | 0.75 oz pineapple-juice
half ounce of or jot | 0.5 oz orgeat
one egg white if you're into that | 1 each egg-white optional
pinch of salt trust me on this one | 1 pinch salt
so this is two parts gin to one part dry vermouth | 2 part gin ; 1 part dry-vermouth
three ounces of ginger beer ice cold please | 3 oz ginger-beer # ice cold
a cup and a half of strong black coffee | 1.5 cup coffee # strong
couple dashes of chocolate bitters | 2 dash chocolate-bitters
i'm using overproof jamaican rum for this one so just one ounce | 1 oz white-overproof-rum
one and a half ounces that's forty five mils of pisco | 1.5 oz pisco
an ounce of sherry fino sherry | 1 oz fino-sherry
thirty mil dry vermouth thirty mil sweet | 30 ml dry-vermouth ; 30 ml sweet-vermouth
one fifty mils of tonic | 150 ml tonic-water
a teaspoon of sugar the superfine kind | 1 tsp superfine-sugar
half a lime cut up into wedges | 0.5 each lime # wedges
three quarters of an ounce of lemon juice ⏎ actually scratch that make it an ounce | 1 oz lemon-juice
two ounces of gin ⏎ sorry not gin vodka | 2 oz vodka
an ounce of lime and an ounce of no just three quarters of agave | 1 oz lime-juice ; 0.75 oz agave-syrup
two ounces of cashasa | 2 oz cachaca
half ounce of cream to violet | 0.5 oz violet-liqueur
three quarter ounce triple sack | 0.75 oz triple-sec
quarter ounce of all spice dram | 0.25 oz allspice-dram
half an ounce of cinnamon syrup which i made last week | 0.5 oz cinnamon-syrup
now this part is important don't over dilute it | nothing
strain it over a big rock | nothing
lemon twist on top express it over the glass | - - lemon-peel garnish # express
grate some nutmeg over the top | - - nutmeg garnish # grate
salt half the rim | - - salt garnish # half / rim
float a half ounce of dark rum on top | 0.5 oz dark-rum # float
it's a two to one simple syrup half an ounce | 0.5 oz rich-simple-syrup
one and one half ounces islay scotch | 1.5 oz smoky-scotch
four to five ounces of soda water | 4-5 oz soda-water
two ounces vodka or gin whatever you've got | 2 oz vodka = gin
some passion fruit puree i don't know maybe an ounce | 1 oz passion-fruit-puree # maybe
a dash of saline well three or four drops really | 3-4 drop saline-solution
eight dashes yes eight of aromatic bitters | 8 dash aromatic-bitters
one and a quarter ounce apple brandy | 1.25 oz apple-brandy
half an ounce of lemon juice comma strained period | 0.5 oz lemon-juice # strained
one slash two ounce of grenadine | 0.5 oz grenadine
2 oz gin 1 oz lemon juice 3/4 oz simple syrup 1 egg white | 2 oz gin ; 1 oz lemon-juice ; 0.75 oz simple-syrup ; 1 each egg-white
two and a quarter ounces of bonded rye | 2.25 oz bonded-rye-whiskey
i'll do a fat three quarters of an ounce of lime | 0.75 oz lime-juice # fat
to ounces of white rum | 2 oz white-rum
one tablespoon of maple syrup the dark one | 1 tbsp maple-syrup # dark
three raspberries and one more for the garnish | 3 each raspberry ; 1 each raspberry garnish
um fifteen mil of lemon fifteen mil of gomme and thirty of cognac | 15 ml lemon-juice ; 15 ml gum-syrup ; 30 ml cognac
finish with a sprig of rosemary torched a little as a garnish | 1 sprig rosemary garnish # torched
two ounces of coconut cream not coconut milk | 2 oz coconut-cream
half ounce of coffee liqueur from hollow lamp | 0.5 oz coffee-liqueur # hollow lamp
the gin i'm using is pellow and rudge two ounces | 2 oz gin # pellow and rudge
so that's the whole drink cheers see you next week | nothing
one ounce of port tawny not ruby | 1 oz tawny-port
6 cl London Dry Gin | 6 cl london-dry-gin
3 cl frisch gepresster Zitronensaft | 3 cl lemon-juice
2 cl Zuckersirup (1:1) | 2 cl simple-syrup
1 BL Maraschino | 1 barspoon maraschino-liqueur
2 Spritzer Orangenbitter | 2 dash orange-bitters
1 Eiweiß (optional) | 1 each egg-white optional
1 EL brauner Rohrzucker | 1 tbsp demerara-sugar
mit Sekt auffüllen | - - sparkling-wine
4–6 Blätter Minze | 4-6 leaf mint-leaf
1,5 cl trockener Wermut | 1.5 cl dry-vermouth
ein Schuss Soda | 1 splash soda-water
Orangenzeste zum Garnieren | - - orange-peel garnish
5 cl Wodka, eiskalt | 5 cl vodka # eiskalt
ca. 10 cl Ginger Beer | 10 cl ginger-beer # ca
0,2 l naturtrüber Apfelsaft | 0.2 l cloudy-apple-juice
1/2 Bio-Limette, geachtelt | 0.5 each lime # geachtelt
Alle Zutaten mit Eis in den Shaker geben und kräftig schütteln. | nothing
je 3 cl Gin, roter Wermut und roter Bitter | 3 cl gin ; 3 cl sweet-vermouth ; 3 cl red-bitter
4 cl Rum (weiß, kubanisch) | 4 cl white-rum
1 daumengroßes Stück Ingwer | 1 piece ginger # daumengroß
1 Fl. trockener Weißwein (0,75 l), gut gekühlt | 1 bottle dry-white-wine # gekühlt
2-3 Tr. Salzlösung | 2-3 drop saline-solution
5 cl de rhum blanc agricole | 5 cl rhum-agricole-blanc
2 cl de jus de citron vert frais | 2 cl lime-juice
1,5 cl de sirop de sucre de canne | 1.5 cl cane-syrup
2 traits de bitter aromatique | 2 dash aromatic-bitters
1 c. à c. de sucre en poudre | 1 tsp superfine-sugar
1 c. à s. de miel liquide | 1 tbsp honey # liquide
un trait d'absinthe | 1 dash absinthe
Compléter avec de l'eau gazeuse | - - soda-water
1 zeste d'orange pour la déco | 1 each orange-peel garnish
8 feuilles de menthe fraîche | 8 leaf mint-leaf
3 cl de vermouth rouge | 3 cl sweet-vermouth
Champagne brut bien frais | - - champagne # brut / bien frais
une pincée de fleur de sel | 1 pinch salt
1 blanc d'œuf (facultatif) | 1 each egg-white optional
4 à 5 cl de cognac | 4-5 cl cognac
1/2 citron vert coupé en quartiers | 0.5 each lime # quartiers
Servir dans un tumbler rempli de glaçons. | nothing
6 cl de gin (Maison Vervelle) | 6 cl gin # Maison Vervelle
1 bonne cuillère à soupe de crème de cassis | 1 tbsp creme-de-cassis # bonne
environ 10 cl de tonic | 10 cl tonic-water # environ
1 bâton de cannelle | 1 each cinnamon-stick
Pastis 2 cl, eau fraîche à volonté | 2 cl pastis ; - - water # fraîche
4,5 cl di gin secco | 4.5 cl london-dry-gin
3 cl di vermouth rosso | 3 cl sweet-vermouth
2 cl succo di limone fresco | 2 cl lemon-juice
2 gocce di bitter all'arancia | 2 drop orange-bitters
sale q.b. | - - salt
Top di soda | - - soda-water
colmare con prosecco ben freddo | - - prosecco # freddo
1 cucchiaino di zucchero di canna | 1 tsp demerara-sugar
mezzo lime a pezzetti | 0.5 each lime # pezzetti
scorza di limone per guarnire | - - lemon-peel garnish
1 albume d'uovo | 1 each egg-white
una spruzzata di selz | 1 splash soda-water
6-8 foglie di menta | 6-8 leaf mint-leaf
30 ml bitter rosso | 30 ml red-bitter
1 barspoon di sciroppo d'agave | 1 barspoon agave-syrup
50 ml rum chiaro | 50 ml white-rum
1 fetta d'arancia | 1 slice orange-slice
Shakerare con ghiaccio e filtrare in coppetta. | nothing
25 ml amaro alle erbe, non troppo dolce | 25 ml amaro # non troppo dolce
2 cl sciroppo di zucchero (rapporto 2:1) | 2 cl rich-simple-syrup
3 parti di prosecco, 2 di aperitivo, 1 di seltz | 3 part prosecco ; 2 part aperitivo ; 1 part soda-water
grappa bianca 4 cl (facoltativa) | 4 cl grappa optional # bianca
1 bottiglia di vino rosso corposo | 1 bottle red-wine # corposo
60 ml de tequila blanco | 60 ml blanco-tequila
22 ml de jugo de lima | 22 ml lime-juice
15 ml de jarabe de agave | 15 ml agave-syrup
2 golpes de bitter de naranja | 2 dash orange-bitters
5 cl de ron blanco | 5 cl white-rum
10 hojas de hierbabuena | 10 leaf mint-leaf
2 cucharaditas de azúcar | 2 tsp sugar
completar con agua con gas | - - soda-water
1 rodaja de naranja para decorar | 1 slice orange-slice garnish
4 cl de ginebra | 4 cl gin
un chorrito de granadina | 1 splash grenadine
una pizca de sal | 1 pinch salt
1 clara de huevo | 1 each egg-white
45 ml de mezcal joven | 45 ml mezcal # joven
Agitar con mucho hielo y colar doble. | nothing
aprox. 120 ml de refresco de toronja | 120 ml grapefruit-soda # aprox
1/2 taza de jugo de piña natural | 0.5 cup pineapple-juice
salsa picante al gusto | - - hot-sauce
25 ml de licor de café, mejor poco dulce | 25 ml coffee-liqueur # poco dulce
1 ramita de romero (opcional) | 1 sprig rosemary optional
ron añejo, 2 oz | 2 oz aged-rum
we want about two ounces of rum i like a jamaican here | 2 oz jamaican-rum # about / here
1 oz swet vermoth | 1 oz sweet-vermouth # swet vermoth
"""
"""What is read as its writer expected."""

ASKED_RIGHTLY = r"""
Gin 50 / Dry vermouth 10 / 1 dash orange bitters
3/4 oz citrus
1 oz vermouth
1 oz syrup
3/4 oz limne juice
1 egg white or 3/4 oz aquafaba
1/2 oz + 1 barspoon ginger syrup
3/4 oz of the blue stuff
three quarters lime juice
two fingers of scotch
half an ounce of that syrup we made earlier
wahlweise 4 cl Korn oder Wodka
rhum vieux ou ambré, 4 cl
1 bicchierino di limoncello
30 ml de jugo de limón
30 ml de crema de coco
"""
"""What its writer would ask about too."""

ASKED = r"""
2 oz blanco tequila infused with jalapeño
1.5oz brown-butter-washed bourbon
for the batch one whole bottle of gin
2 TL Honig, in etwas heißem Wasser gelöst
"""
"""What its writer would have understood; it is asked about, and nothing is taken."""

OTHERWISE = r"""
Juice of 2 limes | 2 each lime # juice
handful of basil | 1 handful basil # handful
the juice of half a lemon | 0.5 each lemon # juice
Saft einer halben Limette | 0.5 each lime # juice
le jus d'un demi-citron | 0.5 each lemon # juice
Quelques gouttes d'eau de fleur d'oranger | 3 drop orange-flower-water # a few
il succo di mezzo pompelmo rosa | 0.5 each grapefruit # juice
sal para escarchar el borde | - - salt garnish # rim
zumo de medio limón | 0.5 each lemon # juice
"""
"""What is put in other words than its writer expected, with nothing lost:

* juice of a fruit, in any language: so much of the fruit, noted juice
* handful of basil: a handful is a measure
* quelques gouttes d'eau de fleur d'oranger: a few drops are counted as three, and said to be a few
* sal para escarchar el borde: the rim is noted in one word that every screen reads
"""

OF_THE_SAME_KIND = r"""
demerara 151 ¾ oz | 0.75 oz 151-rum
rum 151 1 1/2 oz | 1.5 oz 151-rum
2 oz gin ⏎ ^ chilled | 2 oz gin # chilled
2 oz gin ⏎ ^ or vodka | 2 oz gin = vodka
2 oz gin ⏎ ^ Old Tom | 2 oz old-tom-gin
2 oz gin ⏎ (^ make it 1.5 oz) | 1.5 oz gin
2 oz gin ⏎ ^ optional | 2 oz gin optional
three slices of cucumber and another for garnish | 3 slice cucumber-slice ; 1 each cucumber garnish
one egg white if that's your thing | 1 each egg-white optional
2 dashes saline, if you're so inclined | 2 dash saline-solution optional
1 T. lemon juice | 1 tbsp lemon-juice
2 Tbl sugar | 2 tbsp sugar
two ounces of gin comma chilled full stop | 2 oz gin # chilled
three slash four ounce of lime juice | 0.75 oz lime-juice
pinch of salt believe me | 1 pinch salt # believe me
2 oz gin, ice cold | 2 oz gin # ice cold
2 oz lemon juice, sugar to taste | 2 oz lemon-juice ; - - sugar # to taste
sugar the rim of the glass | - - sugar garnish # rim
double strain it over a large cube | nothing
1 oz simple syrup (ratio 2:1) | 1 oz rich-simple-syrup
an ounce of rum or more like two ounces really | 2 oz rum
2 oz vdoka | 2 oz vodka
2 oz coffee liqueur by hollow lamp | 2 oz coffee-liqueur # by hollow lamp
2 oz gin, tonic water, to taste | 2 oz gin ; - - tonic-water # to taste
8 freshly slapped mint leaves | 8 each mint-leaf # freshly slapped
1 bottle dry white wine (0,75 l), well chilled | 1 bottle dry-white-wine # chilled / 0,75 l
2 tsp honey, dissolved in a little hot water | 2 tsp honey # dissolved in a little hot water
"""
"""Lines that are understood by what was learned from these."""

ASKED_OF_THE_SAME_KIND = r"""
1 oz lemon juice ⏎ ^ Old Tom
2 oz gin ⏎ ↑ 1.5 oz
^ Old Tom
1 T VANILLA EXTRACT
1 T. Zucker, gehäuft
3/4 oz citrus juice
one ounce that's sixty mils of pisco
2 oz gin (lemon juice if you have it)
2 oz gin, vodka if you must
a dash of dash gin
2 oz gin no just a splash of soda
2 oz gin and one more for the garnish
1 oz bourbn whisky
2 oz lundon gin
"""
"""Lines like them that mean something else, or may."""
