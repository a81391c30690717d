"""Three hundred lines that were written down by somebody who had not seen the reader.

Each is read as a line of a spec, as it is typed, spoken, or written in German, French, Italian
or Spanish; all are invented. In the form of `tests.domain.spec_text.lines_as_written`, with the
words that must be kept behind `#`, parted by `/`; *nothing* is no ingredient, and `⏎` a new line.
"""

# ruff: noqa: E501 — a line of a table is as long as what was said

from __future__ import annotations

READ = """
1 Eiweiß (pasteurisiert) | 1 each pasteurised-egg-white # pasteurisiert
50ml blended Scotch, the cheap one | 50 ml blended-scotch # cheap
3/4 oz lemon (fresh, strained) | 0.75 oz lemon-juice # fresh / strained
1 oz. Jamaican rum - overproof! | 1 oz white-overproof-rum # overproof
2 oz (60 ml) rye, 100 proof | 2 oz rye-whiskey # 100 proof
Two dashes orange bitters, one dash aromatic bitters | 2 dash orange-bitters ; 1 dash aromatic-bitters
top w/ soda | - - soda-water
absinthe rinse (or a mist, if you have an atomiser) | 1 rinse absinthe # mist
salt rim, half the glass only | - - salt garnish # rim / half
1 1/2 oz gin (Pellow & Rudge London dry) | 1.5 oz london-dry-gin # Pellow & Rudge
Grey Ferry vodka 45 ml | 45 ml vodka # Grey Ferry
45ml amaro — Hollow Lamp | 45 ml amaro # Hollow Lamp
1 egg white (optional, but do it) | 1 each egg-white optional
8-10 mint leaves | 8-10 each mint-leaf
6 to 8 oz ginger beer, very cold | 6-8 oz ginger-beer # cold
½ oz maraschino (the liqueur, not the cherry juice) | 0.5 oz maraschino-liqueur
1 barspoon grenadine, homemade | 1 barspoon grenadine # homemade
juice of half a lime | 0.5 each lime
1/4 oz allspice dram, scant | 0.25 oz allspice-dram # scant
2 oz aged rum ⏎ actually 1.5 | 1.5 oz aged-rum
2 parts sweet vermouth (red) | 2 part sweet-vermouth
equal parts gin, sweet vermouth, red bitter | 1 part gin ; 1 part sweet-vermouth ; 1 part red-bitter
22 ml each mezcal, falernum and lime | 22 ml mezcal ; 22 ml falernum ; 22 ml lime-juice
Cucumber, 3 slices, muddled | 3 slice cucumber-slice # muddled
ginger (a thumb-sized piece, peeled) | - - ginger # thumb / peeled
cold brew 1oz, undiluted concentrate | 1 oz coffee-concentrate # concentrate
30 ml espresso, a single shot | 30 ml espresso # single
2oz gin (or vodka if you must) | 2 oz gin = vodka
tequila blanco or reposado, 60ml | 60 ml blanco-tequila = reposado-tequila
1 1/2 ounces pisco (acholado) | 1.5 oz pisco # acholado
20 ml Amontillado sherry | 20 ml amontillado-sherry
1½ oz. blanc vermouth (not dry) | 1.5 oz bianco-vermouth
a few drops rose water | 3 drop rose-water # few
Nutmeg, grated on top | - - nutmeg garnish # grated
lemon twist, expressed and discarded | - - lemon-peel garnish # expressed / discarded
Garnish: orange wheel + cocktail cherry | - - orange-slice garnish ; - - cocktail-cherry garnish
3 cherries (brandied) on a pick | 3 each cocktail-cherry garnish # pick
4 drops saline, 20% | 4 drop saline-solution # 20%
1 tsp superfine sugar, heaped | 1 tsp superfine-sugar # heaped
one sugar cube soaked w/ 3 dashes aromatic bitters | 1 each sugar-cube ; 3 dash aromatic-bitters # soaked
1 bottle (750ml) prosecco, chilled | 1 bottle prosecco # chilled
1 can (14 oz) coconut milk | 1 can coconut-milk # 14 oz
2 cups pineapple chunks, frozen | 2 cup pineapple # chunks / frozen
1 qt. black tea, brewed strong and cooled | 1 quart black-tea # strong / cooled
1 dozen eggs, separated | 12 each egg # separated
crushed ice, lots | - - crushed-ice # lots
Shake hard with ice, double strain. | nothing
Serves 8, or 4 thirsty people | nothing
For the syrup: | nothing
Glass: coupe, frozen if possible | nothing
(makes about 1.5 litres) | nothing
Dry shake egg white first, then add ice and go again | nothing
Bourbon 1.5oz, Lemon .75, Maple .5 | 1.5 oz bourbon ; 0.75 oz lemon-juice ; 0.5 oz maple-syrup
two ounces of london dry gin | 2 oz london-dry-gin
an ounce and a half of bourbon | 1.5 oz bourbon
three quarters of an ounce of lime juice | 0.75 oz lime-juice
to ounces of rye | 2 oz rye-whiskey
for dashes of bitters | 4 dash aromatic-bitters
ate mint leaves | 8 each mint-leaf
one ounce sweet for mouth | 1 oz sweet-vermouth
half an ounce of trip will sec | 0.5 oz triple-sec
an ounce of mess cal | 1 oz mezcal
three quarter ounce simple serum | 0.75 oz simple-syrup
one egg quite | 1 each egg-white
half ounce a gave syrup | 0.5 oz agave-syrup
sixty mils of tequila blanco | 60 ml blanco-tequila
twenty two and a half mil lemon | 22.5 ml lemon-juice
two ounces of gin no wait one and a half | 1.5 oz gin
half an ounce honey sorry three quarters honey syrup | 0.75 oz honey-syrup
uh let's say an ounce of aperitivo no an ounce of amaro | 1 oz amaro
and then a splash of soda on top | 1 splash soda-water
top it with sparkling wine whatever's open | - - sparkling-wine # whatever
a couple of dashes orange bitters | 2 dash orange-bitters
maybe a barspoon of absinthe | 1 barspoon absinthe # maybe
rinse the glass with absinthe | 1 rinse absinthe
pinch of salt | 1 pinch salt
juice of one lime and half a lemon | 1 each lime ; 0.5 each lemon
equal parts mezcal sweet vermouth and amaro an ounce each | 1 oz mezcal ; 1 oz sweet-vermouth ; 1 oz amaro
two ounces white rum one ounce lime three quarters simple | 2 oz white-rum ; 1 oz lime-juice ; 0.75 oz simple-syrup
lemon peel for the garnish | - - lemon-peel garnish
garnish with a brandied cherry or two | 1-2 each cocktail-cherry garnish
shake it for like twelve seconds and strain it | nothing
okay next one is my sister's favourite | nothing
that goes in a rocks glass with a big cube | nothing
just a touch of saline like three drops | 3 drop saline-solution
between an ounce and an ounce and a quarter of cognac | 1-1.25 oz cognac
about ninety mils of ginger beer | 90 ml ginger-beer # about
one point five ounces of reposado | 1.5 oz reposado-tequila
an inch of ginger peeled and smashed | 1 piece ginger # inch / smashed
half a dozen raspberries | 6 each raspberry
four or five basil leaves | 4-5 each basil
4 cl Gin | 4 cl gin
2 cl Zitronensaft, frisch gepresst | 2 cl lemon-juice # frisch
anderthalb cl Zuckersirup | 1.5 cl simple-syrup
1 EL brauner Zucker | 1 tbsp brown-sugar
2 Spritzer Orangenbitter | 2 dash orange-bitters
Saft einer halben Limette | 0.5 each lime
mit Soda auffüllen | - - soda-water
6–8 Minzblätter, leicht angedrückt | 6-8 each mint-leaf # angedrückt
ca. 5 cl weißer Rum | 5 cl white-rum # ca.
etwas Muskatnuss, frisch gerieben | - - nutmeg # gerieben
Zitronenzeste als Garnitur | - - lemon-peel garnish
1/2 TL Waldhonig | 0.5 tsp honey # Wald
4 cl de rhum blanc agricole | 4 cl rhum-agricole-blanc
le jus d'un demi-citron vert | 0.5 each lime
1 c. à s. de sirop de sucre de canne | 1 tbsp cane-syrup
2 traits d'amer à l'orange | 2 dash orange-bitters
compléter avec de l'eau gazeuse | - - soda-water
1 blanc d'œuf (facultatif) | 1 each egg-white optional
une dizaine de feuilles de menthe fraîche | 10 leaf mint-leaf # dizaine
1 zeste de citron jaune pour décorer | 1 each lemon-peel garnish
crème de cassis : 1 cl | 1 cl creme-de-cassis
6 cl de cognac VSOP environ | 6 cl cognac # VSOP / environ
3 cl di gin | 3 cl gin
3 cl di vermut rosso | 3 cl sweet-vermouth
succo di mezzo limone | 0.5 each lemon
un cucchiaino di zucchero di canna | 1 tsp demerara-sugar
una spruzzata di seltz | 1 splash soda-water
prosecco q.b. | - - prosecco
2 gocce di bitter all'arancia | 2 drop orange-bitters
1 albume d'uovo | 1 each egg-white
scorza d'arancia per guarnire | - - orange-peel garnish
6 foglie di basilico fresco, spezzate | 6 leaf basil # spezzate
5 cl di rum scuro | 5 cl dark-rum
colmare con ginger beer | - - ginger-beer
60 ml de tequila reposado | 60 ml reposado-tequila
el zumo de media lima | 0.5 each lime
1 cucharada de azúcar moreno | 1 tbsp brown-sugar
2 golpes de amargo aromático | 2 dash aromatic-bitters
una rodaja de naranja para decorar | 1 slice orange-slice garnish
completar con agua con gas | - - soda-water
8 hojas de hierbabuena | 8 leaf mint-leaf
1 clara de huevo (opcional) | 1 each egg-white optional
50 ml de ron añejo (Cañaveral Tordo) | 50 ml aged-rum # Cañaveral Tordo
45 ml de mezcal joven | 45 ml mezcal # joven
pulp of 2 passion fruit | 2 each passion-fruit # pulp
1 oz passionfruit puree (unsweetened) | 1 oz passion-fruit-puree # unsweetened
0,5 oz crème de cacao (white) | 0.5 oz white-creme-de-cacao
crème de menthe, green, 3/4 oz | 0.75 oz green-creme-de-menthe
gomme syrup 10 ml | 10 ml gum-syrup
2 bsp rich demerara syrup | 2 barspoon demerara-syrup # rich
Float of overproof rum, about 1/2 oz | 0.5 oz overproof-rum # float / about
tonic water, to fill | - - tonic-water
splash of soda if you like | 1 splash soda-water optional
sugar to taste | - - sugar
Worcestershire, 4 dashes; celery salt, a pinch | 4 dash worcestershire-sauce ; 1 pinch celery-salt
4 oz tomato juice (thick one) | 4 oz tomato-juice # thick
2.25 oz gin, navy strength | 2.25 oz navy-strength-gin
1 oz rhum agricole blanc 50% | 1 oz rhum-agricole-blanc # 50%
¼ oz peated Scotch over the back of a spoon | 0.25 oz smoky-scotch # spoon
Calvados or other apple brandy, 1 oz | 1 oz calvados = apple-brandy
apple jack 2 oz | 2 oz american-apple-brandy
2 oz whiskey | 2 oz whisky
bitter lemon (the soda) 4 oz | 4 oz bitter-lemon
lime cordial 22.5 ml - not fresh juice! | 22.5 ml lime-cordial
1oz coconut cream (the sweetened kind) | 1 oz cream-of-coconut
heavy cream 1 oz, lightly whipped, to float | 1 oz whipping-cream # whipped / float
3 dashes orange flower water | 3 dash orange-flower-water
6 raspberries + 3 for garnish | 6 each raspberry ; 3 each raspberry garnish
1 sprig rosemary, torched, to garnish | 1 sprig rosemary garnish # torched
25ml dry Curaçao / triple sec | 25 ml dry-curacao = triple-sec
¾ to 1 oz lemon juice, depending on the lemons | 0.75-1 oz lemon-juice # depending
1 oz agave nectar cut 1:1 with water | 1 oz agave-syrup # 1:1
2 oz cachaca, unaged | 2 oz cachaca # unaged
2 dashes creole-style bitters | 2 dash anise-bitters
5 g citric acid | 5 g citric-acid
100g caster sugar + 100 ml hot water | 100 g superfine-sugar ; 100 ml boiling-water # hot
peel of 2 lemons, no pith | 2 each lemon # no pith
cloves, whole, 5 | 5 each cloves # whole
Egg yolk x 1 | 1 each egg-yolk
2 x 25ml white rum | 50 ml white-rum
2 oz white rum (Ferris Cane Co., 3 yr) | 2 oz white-rum # 3 yr / Ferris Cane Co.
• 2 oz. Irish whiskey¹ | 2 oz irish-whiskey
NB lemons were small today | nothing
Gin (London Dry): 2 oz | Lemon juice: ¾ oz | Gentian liqueur: ¼ oz | 2 oz london-dry-gin ; 0.75 oz lemon-juice ; 0.25 oz gentian-aperitif
club soda 2-3oz optional | 2-3 oz soda-water optional
1 wedge lime, squeezed + dropped in | 1 wedge lime-wedge # squeezed
ruby port 1 1/4 oz | 1.25 oz ruby-port
1 oz aquavit / 1 oz dry vermouth / 2 dashes celery bitters | 1 oz aquavit ; 1 oz dry-vermouth ; 2 dash celery-bitters
1.75oz bourbon (if using 120 proof, cut back to 1.5) | 1.75 oz bourbon # 120 proof / 1.5
lemon juice 2 tblsp + 1 more if tart | 2 tbsp lemon-juice # 1 more
a teaspoon of raspberry jam heaped | 1 tsp raspberry-jam # heaped
tablespoon of maple syrup the dark one | 1 tbsp maple-syrup # dark
two shakes of celery salt | 2 dash celery-salt
one and three quarters ounce over proof rum | 1.75 oz overproof-rum
ounce of pineapple juice fresh not canned | 1 oz pineapple-juice # fresh
half an ounce of cassis | 0.5 oz creme-de-cassis
quarter ounce of all spice dram | 0.25 oz allspice-dram
one whole egg | 1 each egg
ounce of heavy cream and grate some nutmeg over it | 1 oz whipping-cream ; - - nutmeg garnish # grate
fill it up with tonic | - - tonic-water
a can of coconut cream the sweet stuff | 1 can coconut-cream # sweet
grey ferry vodka two ounces from the freezer | 2 oz vodka # freezer / Grey Ferry
ounce and a half of hollow lamp that's the amaro | 1.5 oz amaro # Hollow Lamp
salt the rim with smoked salt | - - smoked-salt garnish # rim
three ounces strong black coffee hot | 3 oz coffee # strong / hot
a bottle of dry cider for the punch | 1 bottle cider # dry
two cups of cranberry juice cocktail | 2 cup cranberry-juice
cinnamon stick optional | - - cinnamon-stick optional
one slice of cucumber on the side of the glass | 1 slice cucumber-slice garnish
twenty mil pickle brine | 20 ml pickle-brine
half ounce olive brine a bit more if they like it dirty | 0.5 oz olive-brine # more
two ounces calva dose | 2 oz calvados
an ounce of lime make it three quarters | 0.75 oz lime-juice
and a lime wheel to finish | 1 each lime-wedge garnish
0,75 l trockener Rotwein | 0.75 l red-wine # trocken
Alles kräftig schütteln und doppelt abseihen | nothing
3cl Kirschwasser | 3 cl kirsch
Holunderblütensirup, 2 cl | 2 cl elderflower-cordial
1 Schuss Sekt zum Schluss | 1 splash sparkling-wine
1 Barlöffel Grenadine (wer mag) | 1 barspoon grenadine optional
Absinth zum Ausschwenken des Glases | 1 rinse absinthe
Salzrand | - - salt garnish # rand
1 Dose Kokosmilch (400 ml), ungesüßt | 1 can coconut-milk # 400 ml / ungesüßt
12 cl de vin blanc sec bien frais | 12 cl dry-white-wine # sec / frais
Frapper vigoureusement puis filtrer dans une coupe | nothing
2 morceaux de sucre | 2 each sugar-cube
2 c. à c. de miel liquide | 2 tsp honey # liquide
verre rincé à l'absinthe | 1 rinse absinthe
3 à 4 cl de calvados | 3-4 cl calvados
5 cl de whisky tourbé | 5 cl smoky-scotch
2 cl de liqueur de fleur de sureau (Maison Verdelot) | 2 cl elderflower-liqueur # Maison Verdelot
25 cl de lait entier, chaud | 25 cl milk # chaud
une demi-gousse de vanille fendue | 0.5 each vanilla-pod # fendue
mezza oncia di maraschino | 0.5 oz maraschino-liqueur
Shakerare e versare in coppetta ghiacciata | nothing
1,5 cl circa di amaretto | 1.5 cl amaretto # circa
un pizzico di sale | 1 pinch salt
4 cl di grappa barricata | 4 cl aged-grappa # barricata
1 bottiglia di vino rosso corposo | 1 bottle red-wine # corposo
limoncello fatto in casa 3 cl | 3 cl limoncello # fatto in casa
3 o 4 fragole mature | 3-4 each strawberry # mature
20 ml de jarabe simple | 20 ml simple-syrup
1 ramita de romero quemada | 1 sprig rosemary # quemada
un chorrito de granadina | 1 splash grenadine
vermut blanco, 3 cl | 3 cl bianco-vermouth
cava para rellenar la copa | - - cava
2 oz de pisco quebranta | 2 oz pisco # quebranta
agitar con hielo y colar dos veces | nothing
media taza de leche condensada | 0.5 cup condensed-milk
1 lata de leche evaporada | 1 can evaporated-milk
3 rodajas de pepino sin piel | 3 slice cucumber-slice # sin piel
jerez fino muy frío 6 cl | 6 cl fino-sherry # frío
zumo de piña natural 9 cl, o de bote si no hay | 9 cl pineapple-juice # natural / bote
two ounces cashasa | 2 oz cachaca
creme de casis 15ml | 15 ml creme-de-cassis
2 oz bourbn, bottled in bond | 2 oz bonded-bourbon # bourbn / bottled in bond
"""
"""What is read as its writer expected."""

ASKED_RIGHTLY = """
fat 3/4 lime juice
Vermouth, 1 oz
bitters 2 d
gin 60, lemon 25, simple 20
1.5 gin / .75 lemon / .75 honey syrup
ounce of or shot the almond syrup
point seven five grapefruit juice pink if you've got it
une larme de grenadine
una tazzina di caffè espresso
30 ml de jugo de limón
3 oz rum (1 oz each: white, gold, overproof)
1.5 oz house blend (see page 3)
1 oz Old Fenwick
Liqueur, 15 ml
1 oz syrup
juice, 2 oz
1 oz + 1 tsp lime juice
2 oz gin infused w/ cucumber, 2h
one ounce of fall eared um
some of that red stuff from last week an ounce or so
two ounces of the good stuff
one ounce liqueur the green one
an ounce of juice
one ounce lemon one ounce lime no scratch the lime
double the gin so four ounces gin
sugar cube and muddle it with the bitters
one ounce lapsang tea syrup
je 3 cl Gin, roter Wermut und Bitter
5 cl Doppelkorn oder Wodka
2 cl Likör
3 cl de vermouth
1 cl di liquore
"""
"""What its writer would ask about too."""

ASKED = """
1 pt half & half
1 oz orgeet
dry vermouth half ounce french style no just dry vermouth
three quarters curacao dry if we have it otherwise triple sec
quarter ounce of chili tincture no sorry drops three drops
un tour de moulin de poivre noir
4 uova freschissime, solo i tuorli
"""
"""What its writer would have understood; it is asked about, and nothing is taken."""

OTHERWISE = """
0.75oz honey syrup 2:1 | 0.75 oz rich-honey-syrup # 2:1
cognac v.s.o.p. 2 oz | 2 oz cognac # v.s.o.p
quelques gouttes d'eau de fleur d'oranger | 3 drop orange-flower-water # a few
sal de gusano en el borde | - - sal-de-gusano garnish # rim
float red wine on top | 1 float red-wine # on top
a handful of basil (about 10 leaves) | 1 handful basil # about 10 leaves
~15 ml coffee liqueur | 15 ml coffee-liqueur # about
one and a half ounces of pellow and rudge gin | 1.5 oz gin # pellow and rudge
one jigger of aged rum | 1 jigger aged-rum
a pony of brandy | 1 pony brandy
givrer le bord du verre au sel fin | - - salt garnish # rim
sale per il bordo del bicchiere | - - salt garnish # rim
2 cl di amaro (Lanterna Cava), oppure a piacere | 2 cl amaro # Lanterna Cava / to taste
unas gotas de salsa picante al gusto | 3 drop hot-sauce # a few / to taste
"""
"""What is put in other words than its writer expected, with nothing lost:

* 0.75oz honey syrup 2:1: two parts of honey to one of water is the rich one
* cognac v.s.o.p. 2 oz: v.s.o.p is stated, without its last stop
* quelques gouttes d'eau de fleur d'oranger: a few drops are counted as three, and said to be a few
* sal de gusano en el borde: the rim is noted in one word that every screen reads
* float red wine on top: a float without an amount is one float
* a handful of basil (about 10 leaves): a handful, with how many leaves that is beside it
* ~15 ml coffee liqueur: the sign is noted as the word about
* one and a half ounces of pellow and rudge gin: the maker is kept as it was said
* one jigger of aged rum: a jigger is a measure of its own, of an ounce and a half
* a pony of brandy: a pony is a measure of its own, of an ounce
* givrer le bord du verre au sel fin: the rim is noted in one word that every screen reads
* sale per il bordo del bicchiere: the rim is noted in one word that every screen reads
* 2 cl di amaro (Lanterna Cava), oppure a piacere: a piacere is noted as to taste
* unas gotas de salsa picante al gusto: a few drops are counted as three, and said to be a few
"""
