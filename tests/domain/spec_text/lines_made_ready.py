"""Two hundred and seventy lines more, by others who had not seen the reader, and some of its kind.

In the form of `tests.domain.spec_text.lines_set_down`. Of the first hundred and fifty 86 in a hundred
were read as their writer meant before any of them was looked at, of the next hundred and twenty 93.
"""

# ruff: noqa: E501 — a line of a table is as long as what was said

from __future__ import annotations

READ = r"""
2 oz rye whiskey, 100 proof | 2 oz rye-whiskey # 100 proof
3/4 oz fresh lime juice (about 1 lime) | 0.75 oz lime-juice
1.5oz bourbon | 1.5 oz bourbon
½ oz curaçao, dry, orange | 0.5 oz dry-curacao
60ml blanco tequila | 60 ml blanco-tequila
3 dashes aromatic bitters, plus one for luck | 3 dash aromatic-bitters # luck
Soda water, to top | - - soda-water
Juice of 1/2 lemon | 0.5 each lemon # juice
1 egg white (optional, but it's better with) | 1 each egg-white optional
8-10 mint leaves, plus a nice sprig for the top | 8-10 each mint-leaf ; 1 sprig mint garnish
Absinthe rinse | 1 rinse absinthe
Garnish: lemon twist | - - lemon-peel garnish
1 scant barspoon maraschino liqueur | 1 barspoon maraschino-liqueur # scant
1 1/2 oz Pellow & Rudge London dry gin | 1.5 oz london-dry-gin # Pellow & Rudge
2 oz gin (Grey Ferry if you can find it) | 2 oz gin # if you can find it / Grey Ferry
1oz sweet vermouth - something big and vanilla-y | 1 oz sweet-vermouth # vanilla
2 oz (60 ml) cognac, VSOP | 2 oz cognac # VSOP
45 mL aged Jamaican rum, overproof pref. | 45 ml aged-jamaican-rum # overproof
Equal parts gin, sweet vermouth and red bitter | 1 part gin ; 1 part sweet-vermouth ; 1 part red-bitter
1 oz each lemon juice & simple | 1 oz lemon-juice ; 1 oz simple-syrup
Shake hard with ice for 12 seconds and fine strain. | nothing
Salt for the rim (half the glass only) | - - salt garnish # rim
1 sugar cube soaked with 4 dashes aromatic bitters | 1 each sugar-cube ; 4 dash aromatic-bitters
4-5 oz. ginger beer (the really spicy kind) | 4-5 oz ginger-beer # spicy
a fat ounce of mezcal | 1 oz mezcal # fat
1/2 oz cinnamon syrup (recipe below) | 0.5 oz cinnamon-syrup
4 drops saline solution (20%) | 4 drop saline-solution # 20%
Prosecco to fill, well chilled | - - prosecco # chilled
1 bottle (750 ml) dry white wine | 1 bottle dry-white-wine
2 cups strong black tea, cooled | 2 cup black-tea # strong / cooled
1 15-oz can cream of coconut | 1 can cream-of-coconut # 15
6 raspberries + 2 more for garnish | 6 each raspberry ; 2 each raspberry garnish
1/2 ripe pear, peeled, diced and muddled | 0.5 each pear # ripe
3 parts gin to 1 part lime cordial | 3 part gin ; 1 part lime-cordial
2 oz gin or vodka | 2 oz gin = vodka
white rum – 2oz | 2 oz white-rum
Grapefruit juice, pink, 1.5 oz, strained | 1.5 oz pink-grapefruit-juice # pink
splash of cranberry for color | 1 splash cranberry-juice
couple dashes bitters | 2 dash aromatic-bitters
For the oleo saccharum: | nothing
Makes 6 to 8 drinks | nothing
3/4 oz lemon juice ⏎ edit: a full ounce of lemon was better | 1 oz lemon-juice
1½–2 oz añejo tequila, depending on your mood | 1.5-2 oz anejo-tequila
2 barspoons cherry brandy (the liqueur, not the eau de vie) | 2 barspoon cherry-brandy
No garnish. | nothing
Freshly grated nutmeg over the foam | - - nutmeg garnish # grated
4.5 cl white port, 9 cl tonic | 4.5 cl white-port ; 9 cl tonic-water
5 whole cloves, 1 cinnamon stick, 3 allspice berries | 5 each cloves ; 1 each cinnamon-stick ; 3 each allspice
1 T. powdered sugar | 1 tbsp icing-sugar
1 oz gentian liqueur (Hollow Lamp) or a bit less if you're not used to it | 1 oz gentian-aperitif # less / Hollow Lamp
1.5 oz tequila / .75 oz triple sec / .75 oz lime | 1.5 oz tequila ; 0.75 oz triple-sec ; 0.75 oz lime-juice
2 oz OJ, fresh squeezed obvs | 2 oz orange-juice # fresh
1/4 oz 12-year-old islay single malt, floated | 0.25 oz smoky-scotch # 12 / float
3/4 oz. raspberry syrup (or grenadine in a pinch) | 0.75 oz raspberry-syrup # grenadine
okay so we're gonna start with two ounces of bourbon | 2 oz bourbon
then three quarters of an ounce of fresh lemon juice | 0.75 oz lemon-juice
half an ounce of simple and that's one to one | 0.5 oz simple-syrup # one to one
to dashes of orange bidders | 2 dash orange-bitters
an ounce and a half of gin I'm using Pellow and Rudge today | 1.5 oz gin # Pellow and Rudge
for ounces of tonic water | 4 oz tonic-water
half ounce of or jaw that's the almond syrup | 0.5 oz orgeat
and we're gonna top it off with some ginger beer | - - ginger-beer
so grab your shaker and throw in some ice | nothing
uh like a bar spoon of maraschino not the cherry juice the actual liqueur | 1 barspoon maraschino-liqueur
two ounces no sorry one and a half ounces of reposado tequila | 1.5 oz reposado-tequila
I'm gonna squeeze in half a lime | 0.5 each lime # squeeze
about eight mint leaves give them a little slap | 8 each mint-leaf # about
thirty mils of sweet vermouth | 30 ml sweet-vermouth
twenty five mil vodka and then same again of coffee liqueur | 25 ml vodka ; 25 ml coffee-liqueur
just a tiny splash of soda | 1 splash soda-water # tiny
and please don't use the lime juice that comes in the plastic lime | nothing
a pinch of salt trust me on this | 1 pinch salt
so first rinse the glass with a little bit of absinthe and dump it out | 1 rinse absinthe
one ounce of dry for mouth | 1 oz dry-vermouth
quarter ounce of creme de violet | 0.25 oz violet-liqueur
two ounces of white rum you could use an aged one if that's what you've got | 2 oz white-rum # aged
garnish with a brandied cherry or two | 1-2 each cocktail-cherry garnish
orange peel express it over the top and drop it in | - - orange-peel garnish # express
three quarters of an ounce each of gin lemon juice maraschino and the green herbal liqueur | 0.75 oz gin ; 0.75 oz lemon-juice ; 0.75 oz maraschino-liqueur ; 0.75 oz green-herbal-liqueur # green
one heaping teaspoon of raspberry jam the seedy kind is fine | 1 tsp raspberry-jam # heaping
so my grandmother used to make this one every christmas | nothing
two ounces of whisky it's a blended scotch nothing fancy | 2 oz blended-scotch
if you like it sweeter add another quarter ounce of agave | 0.25 oz agave-syrup optional
one ounce of pineapple juice scratch that make it two | 2 oz pineapple-juice
six ounces of hot water not boiling | 6 oz boiling-water # hot
two and a quarter ounces of gin and three quarter ounce dry vermouth | 2.25 oz gin ; 0.75 oz dry-vermouth
one fifty mil of champagne nice and cold | 150 ml champagne # cold
two ounces of Jamaican rum the funky pot still one | 2 oz jamaican-pot-still-rum # pot still
half an ounce of fall ernum and an eighth of an ounce of all spice dram | 0.5 oz falernum ; 0.125 oz allspice-dram
whole egg yolk and all | - - egg
4 cl Gin (am besten ein London Dry) | 4 cl gin
2 cl Zitronensaft, frisch gepresst | 2 cl lemon-juice # frisch
2 Spritzer Orangenbitter | 2 dash orange-bitters
Mit eiskaltem Sodawasser auffüllen | - - soda-water
1 BL Zuckersirup (2:1) | 1 barspoon rich-simple-syrup # 2:1
6–8 Minzblätter + 1 Zweig für die Deko | 6-8 each mint-leaf ; 1 sprig mint garnish
2 gehäufte EL brauner Zucker | 2 tbsp brown-sugar # gehäufte
1 Flasche Sekt (0,75 l), gut gekühlt | 1 bottle sparkling-wine # gekühlt
1 Schuss Maracujasaft, wer mag | 1 splash passion-fruit-puree optional
Alles kräftig shaken und doppelt abseihen. | nothing
1,5 cl Holunderblütensirup, nach Geschmack auch etwas mehr | 1.5 cl elderflower-cordial # mehr
5 cl de rhum blanc agricole (50°) | 5 cl rhum-agricole-blanc # 50
2 traits d'amer aromatique | 2 dash aromatic-bitters
1 c. à café de sirop de sucre de canne | 1 tsp cane-syrup
Compléter avec de l'eau gazeuse | - - soda-water
1 blanc d'œuf (facultatif) | 1 each egg-white optional
1 à 2 cl de crème de cassis selon les goûts | 1-2 cl creme-de-cassis
une dizaine de feuilles de menthe fraîche | 10 leaf mint-leaf # dizaine
20 ml jus de citron jaune | 20 ml lemon-juice
Un zeste d'orange pour la déco | 1 each orange-peel garnish
Verser dans un verre rempli de glaçons et remuer doucement | nothing
3 cl di gin | 3 cl gin
vermouth rosso, 30 ml | 30 ml sweet-vermouth
3 cl di bitter rosso | 3 cl red-bitter
zucchero q.b. | - - sugar
2 cucchiaini di zucchero di canna | 2 tsp demerara-sugar # canna
prosecco 9 cl, ben freddo | 9 cl prosecco # freddo
mezza fetta d'arancia per guarnire | 0.5 slice orange-slice garnish
una spruzzata di seltz | 1 splash soda-water
10-12 foglie di basilico | 10-12 leaf basil
Shakerare bene e filtrare nella coppetta già raffreddata | nothing
50 ml de tequila blanco 100% agave | 50 ml blanco-tequila # 100%
2 cdas. de azúcar blanca | 2 tbsp sugar
un chorrito de granadina | 1 splash grenadine
Completar con agua con gas | - - soda-water
6 u 8 hojas de hierbabuena | 6-8 leaf mint-leaf
3 oz de pisco, mejor si es quebranta | 3 oz pisco # quebranta
1/2 taza de jugo de piña natural | 0.5 cup pineapple-juice # natural
Una rodaja de naranja para decorar | 1 slice orange-slice garnish
2 oz bourbon | 2 oz bourbon
60ml white rum | 60 ml white-rum
3/4 oz lime juice, freshly squeezed | 0.75 oz lime-juice
22.5 ml simple syrup (1:1) | 22.5 ml simple-syrup
Sweet vermouth 1 oz | 1 oz sweet-vermouth
dry vermouth - 15 ml | 15 ml dry-vermouth
1 1/2 ounces reposado tequila | 1.5 oz reposado-tequila
¾ oz fresh lemon | 0.75 oz lemon-juice
½oz orgeat | 0.5 oz orgeat
6–8 mint leaves | 6-8 each mint-leaf
soda water to top | - - soda-water
1 dash saline solution (20%) | 1 dash saline-solution # 20%
1.5 oz Pellow & Rudge London dry gin | 1.5 oz london-dry-gin # Pellow & Rudge
30 ml aged rum (Hollow Lamp 8 year) | 30 ml aged-rum # 8 year / Hollow Lamp
Absinthe, to rinse the glass | 1 rinse absinthe
lemon twist, for garnish | - - lemon-peel garnish
1 tsp caster sugar | 1 tsp superfine-sugar
1 part lime, 2 parts sugar syrup, 3 parts dark rum | 1 part lime-juice ; 2 part simple-syrup ; 3 part dark-rum
1/2 oz cinnamon syrup (optional) | 0.5 oz cinnamon-syrup optional
Freshly grated nutmeg - garnish | - - nutmeg garnish # grated
1 can cola (330 ml) | 1 can cola # 330
1/2 bottle prosecco | 0.5 bottle prosecco
2 oz (60 ml) cognac VSOP | 2 oz cognac # vsop
1 ozz lemmon juice | 1 oz lemon-juice
0,75 oz pineapple juice | 0.75 oz pineapple-juice
1-1/2 oz rye | 1.5 oz rye-whiskey
1 to 2 dashes orange bitters | 1-2 dash orange-bitters
about 20 ml falernum | 20 ml falernum # about
scant 3/4 oz grapefruit juice | 0.75 oz grapefruit-juice # scant
3 slices cucumber, muddled | 3 slice cucumber-slice # muddled
5 raspberries | 5 each raspberry
splash of grenadine | 1 splash grenadine
Shake with ice and double strain into a coupe. | nothing
For the syrup: | nothing
1 oz gin ⏎ (no, make that 1.5) | 1.5 oz gin
1 oz rye + 1 oz bonded apple brandy | 1 oz rye-whiskey ; 1 oz american-apple-brandy
Jamaican overproof rum 0.5oz | 0.5 oz white-overproof-rum
1 oz cream (heavy) | 1 oz whipping-cream
1 heaped tbsp apricot jam | 1 tbsp apricot-jam # heaped
2 x 25ml vodka | 50 ml vodka
0.75 oz blackstrap rum or any very dark rum | 0.75 oz blackstrap-rum # any very dark rum
1 whole egg | 1 each egg
crème de cassis, 1 cl | 1 cl creme-de-cassis
2 cl triple sec / dry curaçao | 2 cl triple-sec = dry-curacao
Orange peel, expressed and discarded | - - orange-peel garnish # discarded
3 drops hot sauce | 3 drop hot-sauce
1 1/4 fl oz genever | 1.25 oz genever
100 g strawberries, hulled | 100 g strawberry # hulled
islay scotch 1/4 oz (float) | 0.25 oz smoky-scotch # float
1 oz sherry (fino) | 1 oz fino-sherry
3 oz sparkling wine, chilled | 3 oz sparkling-wine # chilled
Coarse salt, for half the rim | - - salt garnish # half / rim
2 teaspoons honey syrup 3:1 | 2 tsp honey-syrup # 3:1
London dry gin, Hollow Lamp, 50ml | 50 ml london-dry-gin # Hollow Lamp
* 1 oz cold-brew coffee, strong | 1 oz cold-brew-coffee # strong
two ounces of bourbon | 2 oz bourbon
an ounce and a half of gin | 1.5 oz gin
three quarters of an ounce of fresh lemon juice | 0.75 oz lemon-juice
and then half an ounce of simple | 0.5 oz simple-syrup
so we're gonna go with one and three quarter ounces of a nice white rum | 1.75 oz white-rum
a couple dashes of aromatic bitters | 2 dash aromatic-bitters
just a bar spoon of rich demerara syrup | 1 barspoon demerara-syrup
uh one ounce no sorry three quarters of an ounce of sweet vermouth | 0.75 oz sweet-vermouth
i'm gonna add roughly an ounce of pineapple juice | 1 oz pineapple-juice # roughly
top it off with some club soda | - - soda-water
two ounces of rye whiskey and one ounce of vermouth the sweet one | 2 oz rye-whiskey ; 1 oz sweet-vermouth
let's do sixty mils of tequila blanco | 60 ml blanco-tequila
the juice of one whole lime | 1 each lime # juice
quarter ounce of maraschino liqueur | 0.25 oz maraschino-liqueur
okay one egg white goes in | 1 each egg-white
half ounce lime juice half ounce simple syrup | 0.5 oz lime-juice ; 0.5 oz simple-syrup
and we garnish that with a lemon twist | 1 each lemon-peel garnish
give it a good hard shake for about fifteen seconds | nothing
fifteen mil of creme de violet | 15 ml violet-liqueur
two ounces of mess cal | 2 oz mezcal
three quarter ounce of line juice | 0.75 oz lime-juice
one ounce of or zhah you know the almond syrup | 1 oz orgeat
one point five ounces of cognac | 1.5 oz cognac
you want eight to ten mint leaves | 8-10 each mint-leaf
half an ounce of coffee liqueur you can leave that out if you don't like coffee | 0.5 oz coffee-liqueur optional
an ounce each of gin sweet vermouth and red bitter | 1 oz gin ; 1 oz sweet-vermouth ; 1 oz red-bitter
hey everyone welcome back to the bar today we're making a daiquiri | nothing
a tiny pinch of salt | 1 pinch salt
4 cl Gin | 4 cl gin
2 cl frisch gepresster Zitronensaft | 2 cl lemon-juice
1 BL Zuckersirup | 1 barspoon simple-syrup
2 Spritzer Orangenbitter | 2 dash orange-bitters
mit Sodawasser auffüllen | - - soda-water
Saft einer halben Limette | 0.5 each lime
6 cl weißer Rum und 1,5 cl Läuterzucker | 6 cl white-rum ; 1.5 cl simple-syrup
5 cl de rhum agricole blanc | 5 cl rhum-agricole-blanc
2 traits de bitter aromatique | 2 dash aromatic-bitters
compléter avec de l'eau gazeuse | - - soda-water
une dizaine de feuilles de menthe | 10 leaf mint-leaf
15 ml de liqueur de fleur de sureau | 15 ml elderflower-liqueur
3 cl de vermouth rouge, bien frais | 3 cl sweet-vermouth # frais
3 cl di gin | 3 cl gin
mezzo lime, tagliato a pezzi | 0.5 each lime # tagliato
2 cucchiaini di zucchero di canna | 2 tsp demerara-sugar
Pepe nero q.b. | - - black-pepper
una scorza d'arancia per guarnire | 1 each orange-peel garnish
uno spruzzo di soda | 1 splash soda-water
30 ml di vermut rosso | 30 ml sweet-vermouth
60 ml de tequila reposado | 60 ml reposado-tequila
1 oz de jugo de lima | 1 oz lime-juice
media onza de jarabe simple | 0.5 oz simple-syrup
2 golpes de amargo de naranja | 2 dash orange-bitters
8 hojas de hierbabuena | 8 leaf mint-leaf
completar con agua tónica | - - tonic-water
1 clara de huevo | 1 each egg-white
"""
"""What is read as its writer expected."""

OTHERWISE = """
15 ml honey syrup 2:1 | 15 ml rich-honey-syrup # 2:1
Saft einer halben Limette | 0.5 each lime
le jus d'un demi-citron vert | 0.5 each lime
succo di mezzo lime | 0.5 each lime
el zumo de media lima | 0.5 each lime
sal para escarchar el borde del vaso | - - salt garnish
some bitters | - - aromatic-bitters
"""
"""What is put in other words than its writer expected, with nothing lost:

* 15 ml honey syrup 2:1: so much honey to so much water is rich honey syrup
* Saft einer halben Limette, and its like: the fruit, noted as juice
* sal para escarchar el borde del vaso: the rim is noted in one word that every screen reads
* some bitters: bitters without another word are aromatic ones
"""

ASKED_RIGHTLY = """
Gin 50, dry vermouth 10
1 oz syrup
1 wine-glass of old brandy
2oz house blend
and then a shot of espresso straight off the machine
point seven five of lime
two of white rum one of lime three quarters of simple
an ounce of the stuff in the green bottle
some of that batch I made last week about three ounces
1 c. à s. de miel liquide délayé dans un peu d'eau chaude
una tazzina di caffè espresso ristretto
1 oz de jugo de limón recién exprimido
1 clara de huevo y unas gotas de amargo
30 dry curaçao
Grey Ferry bitters, 3 dashes
1.5 amaro
normally it's an ounce but today i'm doing three quarters of lemon juice
two of the gin and one of the dry vermouth
"""
"""What its writer would ask about too."""

ASKED = """
1 1/2oz. bourbn whisky
and um two ounces of the uh what's it called the grape brandy pisco
45ml blanco tequila, infused with jalapeño
for the rum i'm using two ounces of something aged from barbados
1 c. à café de sucre de canne
"""
"""What its writer would have understood; it is asked about, and nothing is taken."""

OF_THE_SAME_KIND = """
¾ oz lem juice | 0.75 oz lemon-juice
¾ oz lime jce | 0.75 oz lime-juice
.5 oz simp | 0.5 oz simple-syrup
2 dashes aro. bitters | 2 dash aromatic-bitters
1 bspn maraschino liq. | 1 barspoon maraschino-liqueur
1/2 oz raspberry syrup, or grenadine in a pinch | 0.5 oz raspberry-syrup # grenadine
1 whole egg, yolk and all | 1 each egg # yolk
chilli slice x2 (seeds out) | 2 each fresh-chilli # seeds
so you want about an ounce and a half of bourbon and we'll go with something high rye | 1.5 oz high-rye-bourbon # about / rye
just a hair under an ounce of lime juice | 1 oz lime-juice # hair under
lemon peel express the oils over the drink and discard | - - lemon-peel garnish # discard
top it off with some tonic | - - tonic-water
and then we're just gonna finish it off with a little bit of soda | - - soda-water
two ounces of scotch just a blended one nothing too smoky | 2 oz blended-scotch # nothing too smoky
two ounces of gin it's a london dry nothing crazy | 2 oz london-dry-gin # nothing crazy
half ounce of fall ernum | 0.5 oz falernum
an ounce of sweet vermouth keep it in the fridge by the way | 1 oz sweet-vermouth # fridge
and for garnish just a lime wheel | 1 each lime-wedge garnish
welcome back everyone | nothing
pour in sixty mils of gin nice and cold | 60 ml gin # cold
4 cl Gin (am liebsten London Dry) | 4 cl gin # London Dry
6 cl Rum (weiß, aus Kuba) | 6 cl white-rum # Kuba
1 Prise Salz, kein Muss | 1 pinch salt optional
4 cl de gin, de préférence un London Dry | 4 cl gin # London Dry
4 cl di gin, meglio se London Dry | 4 cl gin # London Dry
6 cl di vino bianco fermo, ben freddo | 6 cl white-wine # freddo
60 ml de tequila reposado, si es posible 100% agave | 60 ml reposado-tequila # agave
ginger beer as much as fits in the glass | - - ginger-beer # fits
finish with a light dusting of cinnamon | - - cinnamon garnish # dusting
pop a cherry on top and you're done | 1 each cocktail-cherry garnish
anywhere from three quarters to an ounce of lime | 0.75-1 oz lime-juice
two ounces of gin you can do vodka too | 2 oz gin # vodka
forty mil mezcal the smokier the better | 40 ml mezcal # smokier
one teaspoon caster sugar stir till it dissolves | 1 tsp superfine-sugar # dissolves
an ounce of cream of coconut shake the can first | 1 oz cream-of-coconut # shake
strip of lemon peel no pith | - - lemon-peel # pith
now before we shake add your egg white | - - egg-white
2 lemons (zest + juice) | 2 each lemon # zest
1 oz Hollow Lamp (amaro) | 1 oz amaro # Hollow Lamp
100 ml Wasser, kochend | 100 ml boiling-water
4 cl Bourbon oder Rye | 4 cl bourbon = rye-whiskey
bien mélanger avec des glaçons | nothing
1 oliva verde in salamoia | 1 each olive # verde
2 ounes gin | 2 oz gin
1 teaspooon sugar | 1 tsp sugar
1 tablspoon honey | 1 tbsp honey
2 oz burbon | 2 oz bourbon
1 oz sweet vermoth | 1 oz sweet-vermouth
1 oz sweet vermuth | 1 oz sweet-vermouth
¼ oz marachino liqueur | 0.25 oz maraschino-liqueur
3 oz ginger beeer | 3 oz ginger-beer
1 oz cofee liqueur | 1 oz coffee-liqueur
1 oz pinapple juice | 1 oz pineapple-juice
1 oz grapfruit juice | 1 oz grapefruit-juice
2 oz proscecco | 2 oz prosecco
½ oz orgeate | 0.5 oz orgeat
1½ oz gin - London Dry - Grey Ferry | 1.5 oz london-dry-gin # Grey Ferry
2 oz *gin* | 2 oz gin
2 oz gin (sub: vodka) | 2 oz gin # vodka
2 oz gin [sub vodka] | 2 oz gin # vodka
2 oz gin, subbing vodka is fine | 2 oz gin # vodka
2 oz gin, vodka works too | 2 oz gin # vodka
2 oz rye e.g. Hollow Lamp | 2 oz rye-whiskey # Hollow Lamp
2 oz rye whiskey like Hollow Lamp or Grey Ferry | 2 oz rye-whiskey # Hollow Lamp
10ml syrup from the cherry jar | 10 ml cocktail-cherry-syrup # jar
squeeze of lemon, to finish | - - lemon # squeeze
cherry x 2, skewered | 2 each cocktail-cherry # skewered
fill glass with tonic | - - tonic-water
don't forget 2 dashes bitters! | 2 dash aromatic-bitters
one ounce of demerara rum for richness | 1 oz demerara-rum # richness
two ounces of vermouth half sweet half dry | 1 oz sweet-vermouth ; 1 oz dry-vermouth
two ounces of pineapple juice canned is fine | 2 oz pineapple-juice # canned
peel of one orange no pith | 1 each orange # pith
no garnish on this one | nothing
so you're gonna take your mixing glass and in there goes two ounces of rye | 2 oz rye-whiskey
for some spice two dashes of hot sauce | 2 dash hot-sauce
now the star of the show two ounces of mezcal | 2 oz mezcal
my favorite part a float of dark rum | 1 float dark-rum
one dash maybe two of celery bitters | 1-2 dash celery-bitters
two or so dashes of peach bitters | 2 dash peach-bitters # or so
lime wedge squeeze it and drop it in | - - lime-wedge # squeeze
sprinkle of sea salt | - - salt # sprinkle
egg whites from two eggs | 2 each egg-white
one ounce heavy cream unsweetened | 1 oz whipping-cream # unsweetened
one ounce of full fat coconut milk | 1 oz coconut-milk # full fat
now i know this sounds weird but a pinch of msg | 1 pinch msg
cap it off with ginger ale | - - ginger-ale
Two (2) oz. gin | 2 oz gin
1 ounce lemon juice from 1 lemon | 1 oz lemon-juice # 1 lemon
1 oz rosemary simple syrup | 1 oz rosemary-syrup
½ oz honey simple syrup | 0.5 oz honey-syrup
2 oz white or silver rum | 2 oz white-rum
½ oz coffee liqueur – cold brew style | 0.5 oz coffee-liqueur # cold brew
splash o' grenadine | 1 splash grenadine
drizzle of honey | - - honey # drizzle
rimmed with celery salt | - - celery-salt garnish # rim
1 c sugar | 1 cup sugar
2 c. water | 2 cup water
3 cl frischer Limettensaft, ca. 1 Limette | 3 cl lime-juice # 1 Limette
Gläser vorher kühlen | nothing
il succo di un limone e mezzo | 1.5 each lemon
noce moscata grattugiata al momento | - - nutmeg # grattugiata
el zumo de una lima y media | 1.5 each lime
cerveza lager bien fría | - - lager # fría
tear up a couple of basil leaves and chuck them in | 2 each basil
grind of black pepper | - - black-pepper # grind
squeeze of lemon to brighten it up | - - lemon # squeeze
celery stick for the garnish obviously | - - celery garnish
an ounce each of rum and pineapple | 1 oz rum ; 1 oz pineapple-juice
an ounce of cream don't use half and half | 1 oz cream # half and half
two ounces espresso let it cool first or it'll melt all your ice | 2 oz espresso # cool
half an ounce cinnamon syrup recipe in the description | 0.5 oz cinnamon-syrup # recipe
half an ounce of pineapple syrup see my last video | 0.5 oz pineapple-syrup # video
garnish with all the mint you can find | - - mint garnish # all
half an ounce of water for dilution | 0.5 oz water # dilution
1 1/2-oz. vodka | 1.5 oz vodka
whites of 2 eggs | 2 each egg-white
Bitters: 2 dashes orange | 2 dash orange-bitters
1 C. frozen mango | 1 cup mango # frozen
4 cl Rum (alternativ: Cachaça) | 4 cl rum # Cacha
1 branche de romarin légèrement brûlée | 1 sprig rosemary # brûlée
"""
"""Lines that were written down to learn from, and were asked about or misread at first."""
