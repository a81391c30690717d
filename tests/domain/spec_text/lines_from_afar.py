"""Three hundred lines that were written down by another who had not seen the reader.

All are invented; in the form of `tests.domain.spec_text.lines_set_down`.
"""

# ruff: noqa: E501 — a line of a table is as long as what was said

from __future__ import annotations

READ = r"""
1¾ oz blanco tequila | 1.75 oz blanco-tequila
2 1/4 ounces Navy-strength gin | 2.25 oz navy-strength-gin
0.75 oz fresh lemon juice, fine-strained | 0.75 oz lemon-juice # strained
22.5 ml sweet vermouth, chilled | 22.5 ml sweet-vermouth # chilled
1/2 oz. orgeat | 0.5 oz orgeat
4 dashes aromatic bitters | 4 dash aromatic-bitters
30 ml (1 oz) aged Jamaican rum | 30 ml aged-jamaican-rum
1 scant barspoon maraschino liqueur | 1 barspoon maraschino-liqueur # scant
Absinthe, to rinse the glass | 1 rinse absinthe
Brut Champagne, to top | - - champagne
8 to 10 mint leaves | 8-10 each mint-leaf
1 (12-oz) can ginger beer | 1 can ginger-beer # 12
½ ounce ginger syrup, plus more to taste | 0.5 oz ginger-syrup # to taste
1 oz bianco vermouth (blanc also works) | 1 oz bianco-vermouth # blanc
1.5 oz bourbon, 100 proof or higher | 1.5 oz bourbon
Three-quarters of an ounce of dry curaçao | 0.75 oz dry-curacao
2 tsp superfine sugar | 2 tsp superfine-sugar
1 large egg | 1 each egg # large
1 fresh egg white | 1 each egg-white
6 oz hot water | 6 oz boiling-water
1 oz heavy cream, lightly whipped | 1 oz whipping-cream # whipped
4 oz cold-brew coffee | 4 oz cold-brew-coffee
1½ oz Islay single malt Scotch | 1.5 oz smoky-scotch
1/4 oz allspice dram | 0.25 oz allspice-dram
2 oz genever (oude) | 2 oz oude-genever
3 drops saline solution (20 %) | 3 drop saline-solution
1 oz Oloroso sherry | 1 oz oloroso-sherry
¾ oz Grey Ferry triple sec | 0.75 oz triple-sec # Grey Ferry
2 oz Hollow Lamp Old Tom gin | 2 oz old-tom-gin # Hollow Lamp
1 oz pineapple juice, freshly juiced | 1 oz pineapple-juice
1 pinch of smoked salt | 1 pinch smoked-salt
Garnish: grapefruit twist, expressed and discarded | - - grapefruit-peel garnish # discarded
Garnish with a cocktail cherry and half an orange slice | 1 each cocktail-cherry garnish ; 0.5 each orange-slice garnish
1 cucumber ribbon, for garnish | 1 each cucumber-slice garnish # ribbon
Freshly grated nutmeg | - - nutmeg
2 oz reposado tequila, 100% agave | 2 oz reposado-tequila # 100% agave
1/2 oz demerara syrup (2:1) | 0.5 oz demerara-syrup
1 oz lime cordial, homemade | 1 oz lime-cordial # homemade
5 oz dry sparkling wine | 5 oz sparkling-wine
1 tablespoon raspberry jam | 1 tbsp raspberry-jam
2 ounces Armagnac, VSOP | 2 oz armagnac
0.25 oz (7.5 ml) crème de violette | 0.25 oz violet-liqueur
2 oz. unaged corn whiskey | 2 oz corn-whiskey # unaged
1 bottle (750 ml) dry red wine | 1 bottle red-wine # 750
1 star anise pod | 1 each star-anise
2 gin oz | 2 oz gin
1.5oz rye .75 sweet verm | 1.5 oz rye-whiskey ; 0.75 oz sweet-vermouth
lime juice 3/4oz | 0.75 oz lime-juice
oj 2oz | 2 oz orange-juice
2oz teq repo | 2 oz reposado-tequila
1oz peach brandy (the dry kind, not schnapps) | 1 oz peach-eau-de-vie
aromatic bitters x2 dash | 2 dash aromatic-bitters
1/2 grapefruit, juiced | 0.5 each grapefruit # juice
soda on top | - - soda-water
a big handful of mint | 1 handful mint # big
2oz wht rum | 2 oz white-rum
1oz lemn juice | 1 oz lemon-juice
3/4 oz maple syrp | 0.75 oz maple-syrup
tbsp of agave syrup | 1 tbsp agave-syrup
1oz coconut crm (not the milk) | 1 oz coconut-cream
ginger beer - fill it up | - - ginger-beer
pinch cayenne | 1 pinch cayenne
4-5 blackberries | 4-5 each blackberry
hot sauce 3 dashes, 5 if brave | 3 dash hot-sauce # 5 if brave
celery bitters, 1 dash | 1 dash celery-bitters
worcestershire, couple dashes | 2 dash worcestershire-sauce
tonic 4oz cold | 4 oz tonic-water # cold
2 oz bourbon (or rye) | 2 oz bourbon = rye-whiskey
1 oz espresso, hot | 1 oz espresso # hot
3/4oz banana liq | 0.75 oz creme-de-banane
1oz PX | 1 oz px-sherry
1oz ea gin, sweet vermouth, red bitter | 1 oz gin ; 1 oz sweet-vermouth ; 1 oz red-bitter
simple 1/2oz (or 3/4 if limes r sour) | 0.5 oz simple-syrup # sour
1tsp rich simple | 1 tsp rich-simple-syrup
1 1/2oz mezcal, espadin | 1.5 oz mezcal
splash cran | 1 splash cranberry-juice
2 oz rum dark | 2 oz dark-rum
1 lg ice cube | 1 each ice
0.5 oz lemon j | 0.5 oz lemon-juice
prosecco 3oz ish | 3 oz prosecco # ish
2oz apple brandy - bonded if u have it | 2 oz apple-brandy # bonded
orange twist garnish | - - orange-peel garnish
• 1 ½ oz. (45 ml) light rum | 1.5 oz white-rum
▢ 2 cups crushed ice | 2 cup crushed-ice
For the syrup: | nothing
Ingredients (serves 4) | nothing
Prep time: 5 minutes | nothing
1 oz. fresh-squeezed lime juice (from about 1 lime) | 1 oz lime-juice
2 ounces gin, such as Pellow & Rudge | 2 oz gin # Pellow & Rudge
½ cup (120 ml) unsweetened pineapple juice | 0.5 cup pineapple-juice # unsweetened
1 ounce (2 tablespoons) honey syrup (see note) | 1 oz honey-syrup # see note
1 (750-milliliter) bottle chilled sparkling rosé | 1 bottle sparkling-rose # 750 / chilled
4 ounces club soda, plus more as needed | 4 oz soda-water # more as needed
Coarse salt, for the rim | - - salt garnish # rim
Lemon wheel and brandied cherry, for garnish | - - lemon-wedge garnish ; - - cocktail-cherry garnish
Step 2: Add everything to a shaker tin. | nothing
Shake hard for 12 seconds and double-strain into a chilled coupe. | nothing
1-1/2 oz. tequila | 1.5 oz tequila
2–3 dashes orange bitters | 2-3 dash orange-bitters
1 tsp. (5 ml) absinthe | 1 tsp absinthe
1 cup fresh strawberries, hulled and sliced | 1 cup strawberry # hulled / sliced
3/4 oz Sable Acre Fino sherry | 0.75 oz fino-sherry # Sable Acre
1 oz. amaro (Ostler & Bray) | 1 oz amaro # Ostler & Bray
2 oz 10-year-old tawny port | 2 oz tawny-port # 10
1 oz egg white, or aquafaba for a vegan version | 1 oz egg-white # aquafaba
Fresh mint sprigs, for garnish | - - mint garnish
1 teaspoon matcha powder (culinary grade) | 1 tsp matcha # culinary grade
1 thumb-sized piece of ginger, peeled | 1 piece ginger # thumb / peeled
6 oz. boiling water | 6 oz boiling-water
2 tablespoons fresh-pressed apple cider | 2 tbsp cloudy-apple-juice
Juice of 1 lime (about 2 tablespoons) | 1 each lime # juice
Zest of one orange, in wide strips | 1 each orange # wide strips
1 lemon, cut into 8 wedges | 1 each lemon # 8 wedges
1 oz Swedish punsch | 1 oz swedish-punsch
2 parts blended Scotch | 2 part blended-scotch
1 part dry sherry to 2 parts tonic water | 1 part dry-sherry ; 2 part tonic-water
¾ oz. falernum (Tanner's Weir, if you can find it) | 0.75 oz falernum # if you can find it / Tanner's Weir
2 oz. gin (subbed aquavit last time, great) | 2 oz gin # aquavit
1/2 fl oz. crème de cacao (white) | 0.5 oz white-creme-de-cacao
1 dash peach bitters (optional) | 1 dash peach-bitters optional
1 small bunch basil | 1 bunch basil # small
1 oz London dry gin ⏎ make that 1.5 | 1.5 oz london-dry-gin
okay so we start with two ounces of bourbon | 2 oz bourbon
one ounce of fresh lime juice | 1 oz lime-juice
and then three quarters of an ounce of lemon sorry lime juice | 0.75 oz lime-juice
i'm gonna go in with uh half an ounce of simple | 0.5 oz simple-syrup
a bar spoon of absent | 1 barspoon absinthe
one and a half ounces of mezcal the smokier the better | 1.5 oz mezcal # smokier
half an ounce of vermouth the dry one | 0.5 oz dry-vermouth
a couple dashes of orange bitters | 2 dash orange-bitters
three quarters ounce dry cure a sow | 0.75 oz dry-curacao
half an ounce of or jot | 0.5 oz orgeat
sweet vermouth one ounce | 1 oz sweet-vermouth
top it up with a little soda water | - - soda-water
give that a good shake and strain it over fresh ice | nothing
what's up everybody welcome back to the channel | nothing
this one's a real crowd pleaser you guys | nothing
an ounce and a half of gin, no wait, two ounces | 2 oz gin
thirty mils of lemon juice | 30 ml lemon-juice
sixty mil white rum | 60 ml white-rum
twenty two and a half ml of grenadine | 22.5 ml grenadine
one whole egg, yep, the yolk too | 1 each egg
i like about eight mint leaves maybe ten | 8-10 each mint-leaf # about
two ounces of rum and for this i like jamaican | 2 oz jamaican-rum
quarter ounce each of lemon juice and simple syrup | 0.25 oz lemon-juice ; 0.25 oz simple-syrup
equal parts gin sweet vermouth and red bitter aperitif | 1 part gin ; 1 part sweet-vermouth ; 1 part red-bitter
and i'm rinsing the glass with a peaty scotch | 1 rinse smoky-scotch
then like a tiny pinch of salt | 1 pinch salt # tiny
half of a lime squeezed | 0.5 each lime
you want one point five ounces of vodka | 1.5 oz vodka
and another half ounce of that honey syrup | 0.5 oz honey-syrup
five raspberries just throw them in there | 5 each raspberry
a bar spoon of that pellow and rudge maraschino | 1 barspoon maraschino-liqueur # pellow and rudge
two ounces hollow lamp gin | 2 oz gin # hollow lamp
four ounces of ginger ale not ginger beer | 4 oz ginger-ale
twelve ounces of lager poured nice and slow | 12 oz lager
a shot of tequila blanco | 1 shot blanco-tequila
one jigger of applejack | 1 jigger american-apple-brandy
one ounce of amaro and i mean any amaro you've got | 1 oz amaro # any
a half ounce no actually make it a full ounce of pineapple juice | 1 oz pineapple-juice
two and a quarter ounces of irish whiskey | 2.25 oz irish-whiskey
one teaspoon of caster sugar | 1 tsp superfine-sugar
two sugar cubes the brown ones | 2 each brown-sugar-cube
garnish that with a long lemon peel | 1 each lemon-peel garnish
and a cherry for garnish if you're into it | 1 each cocktail-cherry garnish optional
two ounces london dry jin | 2 oz london-dry-gin
half an ounce of line juice | 0.5 oz lime-juice
one ounce cash asa | 1 oz cachaca
throw in a cup and a half of crushed ice and blend | 1.5 cup crushed-ice
an ounce of cream of coconut you know the sweet stuff in the can | 1 oz cream-of-coconut
one ounce of cognac you could also use armagnac | 1 oz cognac # armagnac
um the the the orange bitters two dashes | 2 dash orange-bitters
three ounces of hot black coffee | 3 oz coffee
a heavy half ounce of allspice dram | 0.5 oz allspice-dram # heavy
quarter of an ounce elderflower liqueur | 0.25 oz elderflower-liqueur
okay let's talk about ice for a second | nothing
optional but a splash of pomegranate juice is great here | 1 splash pomegranate-juice optional
one and three quarter ounces of añejo | 1.75 oz anejo-tequila
two ounces of bourbon high rye if you've got it | 2 oz high-rye-bourbon # if you've got it
an ounce of lemon juice ⏎ did i say lemon i meant lime | 1 oz lime-juice
two ounces of gin ⏎ actually you know what use vodka instead | 2 oz vodka
one bottle of dry cider well chilled | 1 bottle cider # chilled
two slices of cucumber muddled | 2 slice cucumber-slice # muddled
one slice of jalapeño seeds out | 1 slice fresh-chilli # seeds out
half a teaspoon of vanilla extract | 0.5 tsp vanilla-extract
two ounces of aged rum something funky | 2 oz aged-rum # funky
float a half ounce of dark rum on top | 0.5 oz dark-rum # float
two parts lemonade one part lager | 2 part sparkling-lemonade ; 1 part lager
an ounce of strong black tea let it cool first | 1 oz black-tea # cool
5 cl weißer Rum | 5 cl white-rum
2 cl frisch gepresster Zitronensaft | 2 cl lemon-juice
1 EL brauner Zucker | 1 tbsp brown-sugar
1 BL Läuterzucker | 1 barspoon simple-syrup
Saft einer halben Limette | 0.5 each lime
1 Spritzer Orangenbitter | 1 dash orange-bitters
mit gut gekühltem Tonic Water auffüllen | - - tonic-water
1 Zweig Rosmarin zum Garnieren | 1 sprig rosemary garnish
3-4 Scheiben Salatgurke | 3-4 slice cucumber-slice
1 Eiweiß (optional) | 1 each egg-white optional
0,5 cl Zuckersirup | 0.5 cl simple-syrup
100 ml Sekt, eiskalt | 100 ml sparkling-wine
Alles kräftig schütteln und in ein vorgekühltes Glas abseihen. | nothing
1 Msp. Zimt | 1 pinch cinnamon
2 cl Holunderblütensirup | 2 cl elderflower-cordial
6 cl Gin (am besten Kranzhoff) | 6 cl gin # Kranzhoff
1/8 l trockener Weißwein | 0.125 l dry-white-wine
4cl Wodka, 2cl Kaffeelikör | 4 cl vodka ; 2 cl coffee-liqueur
½ Bio-Zitrone, in Achtel geschnitten | 0.5 each lemon
4 cl de rhum agricole blanc | 4 cl rhum-agricole-blanc
le jus d'un demi-citron vert | 0.5 each lime
1 trait d'amer aromatique | 1 dash aromatic-bitters
6 feuilles de menthe fraîche | 6 leaf mint-leaf
compléter avec de l'eau gazeuse | - - soda-water
1 c. à café de sirop de grenadine | 1 tsp grenadine
une demi-orange pressée | 0.5 each orange
quelques framboises | 3 each raspberry
12,5 cl de vin blanc sec | 12.5 cl dry-white-wine
1 zeste d'orange (pour le décor) | 1 each orange-peel garnish
1,5 cl de crème de cassis | 1.5 cl creme-de-cassis
3 cl de cognac VSOP | 3 cl cognac
Secouer vigoureusement puis filtrer dans un verre à cocktail. | nothing
1 pincée de fleur de sel | 1 pinch salt
2 à 3 gouttes d'eau de fleur d'oranger | 2-3 drop orange-flower-water
1 blanc d'oeuf | 1 each egg-white
5 cl gin Maison Brévaux | 5 cl gin # Maison Brévaux
10 cl de cidre brut bien frais | 10 cl cider
1 branche de thym | 1 sprig thyme
20 cl de jus d'ananas (ou de mangue) | 20 cl pineapple-juice
poivre du moulin, à votre goût | - - black-pepper
3 cl di gin | 3 cl gin
4,5 cl di vermut rosso | 4.5 cl sweet-vermouth
il succo di mezzo limone | 0.5 each lemon
2 cucchiaini di zucchero di canna | 2 tsp demerara-sugar
una spruzzata di seltz | 1 splash soda-water
1 fettina d'arancia per guarnire | 1 slice orange-slice garnish
prosecco q.b. | - - prosecco
qualche foglia di basilico | 3 leaf basil
6 cl di bitter rosso | 6 cl red-bitter
30 ml succo di lime fresco | 30 ml lime-juice
2 gocce di bitter all'arancia | 2 drop orange-bitters
ghiaccio tritato | - - crushed-ice
1 albume | 1 each egg-white
2 cl sciroppo di zucchero (1:1) | 2 cl simple-syrup
scorza di limone | - - lemon-peel
Versare tutto nello shaker, agitare bene e filtrare. | nothing
un cucchiaio di miele d'acacia | 1 tbsp honey
4 cl grappa Fratelli Corvasca | 4 cl grappa # Fratelli Corvasca
colmare con acqua tonica | - - tonic-water
2 cl di liquore al caffè, facoltativo | 2 cl coffee-liqueur optional
50 ml de tequila reposado | 50 ml reposado-tequila
el zumo de dos limones | 2 each lemon
1 cucharada de azúcar moreno | 1 tbsp brown-sugar
una pizca de sal | 1 pinch salt
rellenar con soda | - - soda-water
ron blanco, 4 cl | 4 cl white-rum
media lima exprimida | 0.5 each lime
hojas de hierbabuena (8 o 10) | 8-10 each mint-leaf
un chorrito de granadina | 1 splash grenadine
2 golpes de amargo de naranja | 2 dash orange-bitters
1 clara de huevo | 1 each egg-white
30 ml de vermut rojo | 30 ml sweet-vermouth
60ml zumo de naranja natural | 60 ml orange-juice
una rodaja de pomelo para decorar | 1 slice grapefruit-slice garnish
5 cl de ginebra Casa Ondarilla | 5 cl gin # Casa Ondarilla
1/2 cucharadita de canela molida | 0.5 tsp cinnamon
Agitar con energía y servir en copa fría. | nothing
100 ml de cava bien frío | 100 ml cava
2 cl de zumo de limón o de lima | 2 cl lemon-juice
sal gruesa para el borde del vaso | - - salt garnish
"""
"""What is read as its writer expected."""

ASKED_RIGHTLY = r"""
gin 60, lime 30, simple 20
3/4 ea lemon + simple
50 cognac
vodka 1 1/2
0.5oz amaro?? whichever
1oz cof liq
2oz overproof
2oz LDG
2 oz. vodka (plain, citrus, or vanilla)
1 oz. vermouth, sweet or dry
2 oz Quillfeather No. 9
3 dashes Marlpit bitters
2 oz scotch ⏎ (scratch that, Irish)
two ounces of disco
two fingers of rye
point seven five of lemon
one egg white or if you're vegan an ounce of aquafaba
three dashes grey ferry bitters
1 Stamperl Obstler
80 ml Maracujanektar
1 TL Honig, ersatzweise Agavendicksaft
1 tazzina di caffè espresso
un dito di amaro
un chupito de licor de hierbas
"""
"""What its writer would ask about too."""

ASKED = r"""
ein Schuss Mineralwasser
2 c. à soupe de sucre de canne
"""
"""What its writer would have understood; it is asked about, and nothing is taken."""

OTHERWISE = r"""
a good glug of olive brine | 1 splash olive-brine # good / glug
juice of one whole lemon so call it an ounce | 1 oz lemon-juice # juice
just a whisper of rose water | - - rose-water # whisper
un nuage de lait | - - milk # nuage
1 vaso de hielo picado | 1 each crushed-ice # vaso
"""
"""What is put in other words than its writer expected, with nothing lost."""
