"""Four hundred lines as people say and type them, by others who had not seen the reader.

In the form of `tests.domain.spec_text.lines_set_down`: each in whatever order it was said, with its
slips, fillers and corrections. The first half was read before it was looked at, the second again.
"""

# ruff: noqa: E501 — a line of a table is as long as what was said

from __future__ import annotations

READ = r"""
2 oz rye, bonded if we have it | 2 oz rye-whiskey # bonded
1 1/2oz. lt. rum | 1.5 oz white-rum
3/4 oz lemon, strained | 0.75 oz lemon-juice # strained
Gin (Pellow & Rudge navy strength) – 1¾ oz | 1.75 oz navy-strength-gin # Pellow & Rudge
dash or two of orange bitters | 1-2 dash orange-bitters
Vermouth, sweet, 1 oz | 1 oz sweet-vermouth
rinse of islay scotch, pour off the rest | 1 rinse smoky-scotch
Champagne to fill, about 3 oz, well chilled | 3 oz champagne # about / chilled
juice of half a lime | 0.5 each lime
2 tsps. bar sugar | 2 tsp superfine-sugar
1 jigger bourbon (1.5 oz) | 1 jigger bourbon
1 pony cognac | 1 pony cognac
30ml / 1oz dry curacao | 30 ml dry-curacao
20-25 ml fresh lemon juice | 20-25 ml lemon-juice
white of 1 small egg | 1 each egg-white # small
4-5 mint leaves, plus a sprig for the top | 4-5 each mint-leaf ; 1 sprig mint garnish
Equal parts gin, sweet vermouth, red bitter | 1 part gin ; 1 part sweet-vermouth ; 1 part red-bitter
1 oz each lemon juice & honey syrup (2:1) | 1 oz lemon-juice ; 1 oz rich-honey-syrup
2oz aged Jamaican rum, not the overproof | 2 oz aged-jamaican-rum # not the overproof
Shake hard with cubed ice, 12 seconds, fine strain | nothing
garn: brandied cherry x2 | 2 each cocktail-cherry garnish
salt rim, half only | - - salt garnish # rim / half
1,5 cl maraschino | 1.5 cl maraschino-liqueur
60mL tequlia blanco | 60 ml blanco-tequila
agave nectar 1/4 oz (scant) | 0.25 oz agave-syrup # scant
aromatic bitters 3 ds | 3 dash aromatic-bitters
1 btl prosecco for the punch bowl | 1 bottle prosecco # punch bowl
Cream - 1 oz, heavy, floated | 1 oz whipping-cream # float
hot coffee to within an inch of the rim | - - coffee # inch of the rim
2 oz. Irish whiskey (Hollow Lamp 12 yr) | 2 oz irish-whiskey # 12 yr / Hollow Lamp
1/2 oz simple (1:1) | 0.5 oz simple-syrup
3/4 oz. orgeat - house made, recipe on back of card | 0.75 oz orgeat # house made
opt. 2 drops saline | 2 drop saline-solution optional
nutmeg, grated over | - - nutmeg garnish
1 sugar cube soaked w/ 3 dashes aromatic bitters | 1 each sugar-cube ; 3 dash aromatic-bitters
2 parts white rum : 1 part lime juice : 1/2 part syrup | 2 part white-rum ; 1 part lime-juice ; 0.5 part syrup
pineapple juice (canned is fine) 1 1/2 oz | 1.5 oz pineapple-juice # canned
Fino sherry, 1½ oz; manzanilla will do | 1.5 oz fino-sherry # manzanilla
1 oz quinquina, white | 1 oz white-quinquina
lemon twist, expressed & discarded | - - lemon-peel garnish # discarded
3 slices cucumber muddled | 3 slice cucumber-slice # muddled
1 oz amaro, Nero Bastiglio if the cellar has any | 1 oz amaro # if the cellar has any / Nero Bastiglio
fat 1/4 oz falernum | 0.25 oz falernum # fat
rum: dark 1 oz, light 1 oz, overproof float 1/2 oz | 1 oz dark-rum ; 1 oz white-rum ; 0.5 oz overproof-rum # float
2 oz bourbon ⏎ no - make that rye | 2 oz rye-whiskey
Serves 1, coupe from the freezer | nothing
Crème de cassis, ½ oz, let it sink | 0.5 oz creme-de-cassis # sink
apricot brandy (the liqueur, not eau de vie) 3/4 oz | 0.75 oz apricot-liqueur
1/2oz P.X. sherry | 0.5 oz px-sherry
pinch cayenne, opt | 1 pinch cayenne optional
2 oz calvados or apple brandy | 2 oz calvados = apple-brandy
okay so two ounces of um london dry gin | 2 oz london-dry-gin
three quarters of an ounce lemon juice fresh squeezed of course | 0.75 oz lemon-juice
and then half an ounce no sorry three quarters of simple syrup | 0.75 oz simple-syrup
one and a half ounces of a good cognac v s o p | 1.5 oz cognac
for mouth sweet one ounce | 1 oz sweet-vermouth
a couple of dashes of the orange bitters | 2 dash orange-bitters
you want about an ounce maybe an ounce and a quarter of dry vermouth | 1-1.25 oz dry-vermouth
an egg white just the white not the yolk | 1 each egg-white
fifteen mil of triple sec | 15 ml triple-sec
fortyfive mils bourbon | 45 ml bourbon
quarter ounce of mara sheeno | 0.25 oz maraschino-liqueur
top it up with soda water | - - soda-water
and then you just stir that for like thirty seconds | nothing
one ounce of each gin vodka and white rum | 1 oz gin ; 1 oz vodka ; 1 oz white-rum
half an ounce of or jot syrup that's the almond one | 0.5 oz orgeat
point seven five ounces lime juice | 0.75 oz lime-juice
two point five c l dark rum | 2.5 cl dark-rum
a splash just a little splash of cranberry | 1 splash cranberry-juice
if you have it a drop or two of salt solution | 1-2 drop saline-solution optional
twenty to thirty millilitres of pineapple juice depending on how sweet it is | 20-30 ml pineapple-juice # how sweet
the juice of one whole lemon | 1 each lemon
six maybe eight mint leaves | 6-8 each mint-leaf
we used the hollow lamp bourbon two ounces of that | 2 oz bourbon # hollow lamp
grape fruit juice one ounce pink if you can get it | 1 oz grapefruit-juice # pink
tequila reposado two ounces and half an ounce of mezcal | 2 oz reposado-tequila ; 0.5 oz mezcal
rinse the glass with absinthe and throw it out | 1 rinse absinthe
ginger ale fill it to the top | - - ginger-ale
my old head barman used to say never let a guest see you count | nothing
one teaspoon of sugar super fine if you got it | 1 tsp superfine-sugar
uh a peel of lemon for garnish | 1 peel lemon-peel garnish
two ounces scotch blended nothing smoky | 2 oz blended-scotch # nothing smoky
creme de violet a quarter ounce barely | 0.25 oz violet-liqueur # barely
an ounce and a half of apple jack | 1.5 oz american-apple-brandy
so two ounces of gin and lime cordial three quarters | 2 oz gin ; 0.75 oz lime-cordial
four ounces hot water not boiling | 4 oz boiling-water # not boiling
coffee liqueur one ounce and float half an ounce of cream | 1 oz coffee-liqueur ; 0.5 oz cream # float
half a lime cut in to wedges | 0.5 each lime # wedges
a pinch of salt no a small pinch | 1 pinch salt # small
one and it has to be the white one creme de cacao three quarter ounce | 0.75 oz white-creme-de-cacao
pisco sixty mil | 60 ml pisco
elder flower liqueur twenty mil | 20 ml elderflower-liqueur
gin two ounces i said gin right yes gin | 2 oz gin
now the rum two kinds one ounce of the jamaican one ounce of the demerara | 1 oz jamaican-rum ; 1 oz demerara-rum
equal parts of all three gin sweet vermouth and the red bitter | 1 part gin ; 1 part sweet-vermouth ; 1 part red-bitter
three quarters of an ounce of pineapple juice ⏎ and the same of lime | 0.75 oz pineapple-juice ; 0.75 oz lime-juice
two shots of vodka | 2 shot vodka
three quarters ounce lemon juice ⏎ scratch that make the lemon half an ounce | 0.5 oz lemon-juice
one fifty mil of tonic | 150 ml tonic-water
twelve year old rum any aged rum will do really two ounces | 2 oz aged-rum # twelve year
to ounces old tom gin | 2 oz old-tom-gin
for ounces of club soda | 4 oz soda-water
too dashes of peach bitters | 2 dash peach-bitters
double cream thirty mil or heavy cream as the americans say | 30 ml double-cream
an ounce of brandy the cherry not the grape | 1 oz cherry-brandy
4 cl Gin (trocken) | 4 cl london-dry-gin
2 cl Zitronensaft, frisch gepresst | 2 cl lemon-juice
1 BL Zuckersirup | 1 barspoon simple-syrup
Saft einer halben Limette | 0.5 each lime
ein Spritzer Orangenbitter | 1 dash orange-bitters
mit Sekt auffüllen | - - sparkling-wine
1 Eiweiß (vom frischen Ei) | 1 each egg-white
1,5 cl Holunderblütenlikör | 1.5 cl elderflower-liqueur
6–8 Minzblätter | 6-8 each mint-leaf
Roter Wermut 3cl | 3 cl sweet-vermouth
1 EL brauner Rohrzucker | 1 tbsp demerara-sugar
Orangenzeste zum Garnieren | - - orange-peel garnish
2-3 Tropfen Salzlösung, wer mag | 2-3 drop saline-solution optional
Alles in den Shaker geben und kräftig schütteln | nothing
1 Schuss Sahne | 1 splash cream
je 2 cl Limettensaft und Cranberrysaft | 2 cl lime-juice ; 2 cl cranberry-juice
Ingwerbier (gut gekühlt), zum Auffüllen | - - ginger-beer # gekühlt
1 Prise Muskat | 1 pinch nutmeg
4 cl de rhum blanc agricole | 4 cl rhum-agricole-blanc
le jus d'un demi-citron vert | 0.5 each lime
1 c. à c. de sucre en poudre | 1 tsp superfine-sugar
2 c. à soupe de sirop de sucre de canne | 2 tbsp cane-syrup
1 trait d'amer à l'orange | 1 dash orange-bitters
compléter avec de l'eau gazeuse | - - soda-water
6 à 8 feuilles de menthe fraîche | 6-8 leaf mint-leaf
Vermouth rouge : 3 cl | 3 cl sweet-vermouth
10cl champagne brut bien frais | 10 cl champagne # frais
1 zeste d'orange (déco) | 1 each orange-peel garnish
2 gouttes de solution saline (facultatif) | 2 drop saline-solution optional
crème de cassis 1 cl, puis vin blanc sec 10 cl | 1 cl creme-de-cassis ; 10 cl dry-white-wine
Frapper au shaker et passer dans un verre à cocktail | nothing
4,5 cl calvados hors d'âge | 4.5 cl calvados # hors d'âge
liqueur d'abricot - 2 cl, pas plus | 2 cl apricot-liqueur # pas plus
15 ml sirop d'orgeat maison | 15 ml orgeat # maison
jus de pamplemousse rose, 6 cl environ | 6 cl pink-grapefruit-juice # environ
3 cl di gin | 3 cl gin
vermut rosso, 3 cl | 3 cl sweet-vermouth
succo di mezzo lime | 0.5 each lime
1 cucchiaino di zucchero di canna | 1 tsp demerara-sugar
uno spruzzo di seltz | 1 splash soda-water
prosecco q.b. | - - prosecco
2 gocce di soluzione salina, facoltative | 2 drop saline-solution optional
mezza fetta d'arancia per guarnire | 0.5 slice orange-slice garnish
albume di 1 uovo | 1 each egg-white
8 foglioline di menta | 8 leaf mint-leaf
Amaro alle erbe 2 cl (Distilleria Montefosco) | 2 cl amaro # Distilleria Montefosco
colmare con ginger beer | - - ginger-beer
4,5 cl rum bianco | 4.5 cl white-rum
1/2 cl di maraschino | 0.5 cl maraschino-liqueur
Shakerare con ghiaccio e filtrare nella coppetta | nothing
succo di pompelmo 60 ml circa | 60 ml grapefruit-juice # circa
parti uguali di vodka e liquore al caffè | 1 part vodka ; 1 part coffee-liqueur
50 ml de pisco | 50 ml pisco
45 ml tequila reposado (100% agave) | 45 ml reposado-tequila # 100% agave
zumo de limón 2 cl, recién exprimido | 2 cl lemon-juice
1 cda. de azúcar | 1 tbsp sugar
media onza de licor de naranja | 0.5 oz orange-liqueur
3 golpes de amargo aromático | 3 dash aromatic-bitters
una pizca de sal | 1 pinch salt
clara de 1 huevo | 1 each egg-white
completar con agua mineral con gas | - - soda-water
unas hojitas de hierbabuena (8-10) | 8-10 leaf mint-leaf
1½ oz de mezcal joven | 1.5 oz mezcal
jarabe de agave al gusto | - - agave-syrup
ron añejo, 2 oz (mín. 7 años) | 2 oz aged-rum # 7 años
Remover y servir en copa fría | nothing
jerez fino 4 cl bien frío | 4 cl fino-sherry # frío
un chorrito de granadina | 1 splash grenadine
2 oz Pellow & Rudge London dry gin | 2 oz london-dry-gin # Pellow & Rudge
22.5ml fresh lime | 22.5 ml lime-juice
1:1 simple - 15ml | 15 ml simple-syrup
rich demerara syrup (2:1) 1 tsp | 1 tsp demerara-syrup
2oz rye (the 100 proof one) | 2 oz rye-whiskey # 100 proof
1 1/2 oz Bourbon, wheated if you have it | 1.5 oz bourbon # wheated
1 oz Grey Ferry dry vermouth or any fino | 1 oz dry-vermouth = fino-sherry # Grey Ferry
15 ml each: lemon juice, honey syrup, pineapple juice | 15 ml lemon-juice ; 15 ml honey-syrup ; 15 ml pineapple-juice
equal parts gin, red bitter, sweet verm | 1 part gin ; 1 part red-bitter ; 1 part sweet-vermouth
5 drops saline 20% | 5 drop saline-solution # 20%
6-8 mint leaves plus a nice sprig for garnish | 6-8 each mint-leaf ; 1 sprig mint garnish
2 dash aromatic bitters (3 if the lime's sweet) | 2 dash aromatic-bitters # 3 if
Top w/ ~60ml prosecco | 60 ml prosecco # top
1 barspoon creme de cassis (scant) | 1 barspoon creme-de-cassis # scant
Rum (overproof, Jamaican) – 0.5 oz, floated | 0.5 oz white-overproof-rum # Jamaican / float
egg white x1 (or 20ml aquafaba) | 1 each egg-white # aquafaba
3 cucumber slices, muddled | 3 each cucumber-slice # muddled
Salt rim (half) optional | - - salt garnish optional # rim / half
Grated nutmeg on top | - - nutmeg garnish # grated
absinthe - rinse the glass, dump the rest | 1 rinse absinthe
20ml triple sec (40%) | 20 ml triple-sec # 40%
50 ml gin ⏎ edit: make that 60 | 60 ml gin
30ml lime cordial (mine, from ep. 14) | 30 ml lime-cordial # ep. 14
Shake hard w/ ice 12 sec, double strain into a chilled coupe | nothing
For the raspberry syrup: | nothing
Yield: 700ml, keeps 3 weeks in the fridge | nothing
250g caster sugar | 250 g superfine-sugar # caster
zest of 4 unwaxed lemons (no pith!) | 4 each lemon # unwaxed / no pith
1 tsp citric acid + 1/2 tsp malic | 1 tsp citric-acid ; 0.5 tsp malic-acid
1 btl (75cl) cheap vodka | 1 bottle vodka # 75 / cheap
2 oz (60 ml) reposado tequilla | 2 oz reposado-tequila
1oz grapefriut juice (pink) | 1 oz pink-grapefruit-juice
3-4 dashes Hollow Lamp mole bitters | 3-4 dash mole-bitters # Hollow Lamp
ginger beer 4oz (Pellow & Rudge, the spicy one) | 4 oz ginger-beer # spicy / Pellow & Rudge
1 splash pickle brine, more if you like | 1 splash pickle-brine # more if you like
1/2 a passionfruit, scooped | 0.5 each passion-fruit # scooped
2 shots vodka | 2 shot vodka
2 tsp maraschino (the liqueur not the cherries) | 2 tsp maraschino-liqueur
4cl white rum, 2cl lime, 1.5 cl sugar syrup | 4 cl white-rum ; 2 cl lime-juice ; 1.5 cl simple-syrup
- [ ] 1 oz sloe gin | 1 oz sloe-gin
• 1 oz / 30 ml / 3 cl Cognac VSOP | 1 oz cognac # VSOP
1 oz. Lemon Juice (approx. 1 lemon) | 1 oz lemon-juice
1/2-3/4 oz agave (to taste) | 0.5-0.75 oz agave-syrup # to taste
50ml gin, not the navy strength! | 50 ml gin # not the navy strength
vodka/gin 50ml (whichever) | 50 ml vodka = gin
🍸 2 oz gin 🍋 ¾ oz lemon 🍯 ¾ oz honey syrup | 2 oz gin ; 0.75 oz lemon-juice ; 0.75 oz honey-syrup
one 2-inch strip orange peel, expressed & discarded | 1 piece orange-peel garnish # 2-inch / discarded
1 heaped tbs blackberry jam | 1 tbsp blackberry-jam # heaped
1 x 400ml can coconut milk (full fat), shaken | 1 can coconut-milk # 400 / full fat
¾ oz acid adjusted OJ | 0.75 oz acid-adjusted-orange
2oz strong earl grey, cooled, no milk obv | 2 oz earl-grey-tea # cooled
follow for pt 2 where we clarify it w/ milk 🥛 | nothing
okay so um two ounces of london dry gin | 2 oz london-dry-gin
and then like three quarters of an ounce of fresh lime juice | 0.75 oz lime-juice
uh one and a half no sorry two ounces of rye whiskey | 2 oz rye-whiskey
half an ounce of simple actually make it three quarters because these lemons are really sour | 0.75 oz simple-syrup
to ounces of reposado tequila | 2 oz reposado-tequila
two dash is of orange bitters | 2 dash orange-bitters
for dashes of aromatic bitters | 4 dash aromatic-bitters
an ounce of sweet ver mouth | 1 oz sweet-vermouth
thirty mils of mess cal | 30 ml mezcal
twenty two and a half mil lemon | 22.5 ml lemon-juice
a bar spoon of absent you know the anise one | 1 barspoon absinthe
half ounce or jot the almond syrup | 0.5 oz orgeat
an ounce and a half of bour bon i'm using the pellow and rudge here | 1.5 oz bourbon
we're gonna do a little splash of soda just to lengthen it | 1 splash soda-water
egg white just the one | 1 each egg-white
six to eight mint leaves you don't wanna muddle them too hard | 6-8 each mint-leaf
and we top it with ginger beer | - - ginger-beer
hey guys welcome back to the channel so today we're making something really smoky | nothing
so shake that for like fifteen seconds until the tin gets frosty | nothing
last time i used bourbon but honestly it was too sweet | nothing
no citrus in this one | nothing
if you like it hit subscribe and i'll put the spec down below | nothing
so three quarters of an ounce each of gin lime and maraschino liqueur | 0.75 oz gin ; 0.75 oz lime-juice ; 0.75 oz maraschino-liqueur
sixty mil white rum thirty mil lime fifteen mil sugar syrup | 60 ml white-rum ; 30 ml lime-juice ; 15 ml simple-syrup
an ounce of pineapple juice and uh half an ounce of fall earn um | 1 oz pineapple-juice ; 0.5 oz falernum
ok a quarter ounce of the cinnamon syrup that i made last week | 0.25 oz cinnamon-syrup
two ounces gin wait no it's the old tom two ounces of old tom | 2 oz old-tom-gin
and a half ounce of lemon juice | 0.5 oz lemon-juice
one and a half ounces well call it an ounce and three quarters of a gold rum | 1.75 oz gold-rum
that's a full ounce of cold brew like unsweetened | 1 oz cold-brew-coffee # unsweetened
let's say three or four drops of saline | 3-4 drop saline-solution
i rinse the glass with a bit of islay style whisky and dump it | 1 rinse smoky-scotch
an orange twist you express it and drop it in | 1 each orange-peel garnish
optional but i do like a dash of celery bitters in there | 1 dash celery-bitters optional
half a cup of sugar and half a cup of water so that's the syrup | 0.5 cup sugar ; 0.5 cup water
forty five mil ka shasa | 45 ml cachaca
fifteen mil agave or honey whatever you've got | 15 ml agave-syrup = honey
zero point five ounces creme de violet | 0.5 oz violet-liqueur
an ounce of grapefruit not the liqueur the juice | 1 oz grapefruit-juice
two ouncesof darkrum | 2 oz dark-rum
dry cure a sow half an ounce | 0.5 oz dry-curacao
fill it up with tonic i'd say about a hundred and twenty mil | 120 ml tonic-water # about
so instead of the triple sec i'm doing half an ounce of elder flower liqueur | 0.5 oz elderflower-liqueur
three cucumber slices no four | 4 each cucumber-slice
one ounce lemon one ounce lime sorry not lime orange | 1 oz lemon-juice ; 1 oz orange-juice
two ounces of gin ⏎ scratch that last one it's vodka | 2 oz vodka
an ounce of lime ⏎ sorry that should've been three quarters | 0.75 oz lime-juice
quarter ounce quarter ounce of maple syrup | 0.25 oz maple-syrup
one one and a half ounces apple brandy the bonded one | 1.5 oz american-apple-brandy # bonded
scant half ounce of coffee liqueur i make mine with cold brew | 0.5 oz coffee-liqueur # scant
4 cl Gin (London Dry) | 4 cl london-dry-gin
2 cl frisch gepresster Zitronensaft | 2 cl lemon-juice
1 BL Zuckersirup (2:1) | 1 barspoon rich-simple-syrup
2–3 Spritzer Orangenbitter | 2-3 dash orange-bitters
mit Sodawasser auffüllen | - - soda-water
6 cl weißer Rum, 3 cl Limettensaft, 2 cl Rohrzuckersirup | 6 cl white-rum ; 3 cl lime-juice ; 2 cl cane-syrup
1/2 Bio-Limette, geachtelt | 0.5 each lime # geachtelt
1 Eiweiß (Gr. M) | 1 each egg-white
8-10 Minzblätter + 1 Zweig zum Garnieren | 8-10 each mint-leaf ; 1 sprig mint garnish
1 EL Holunderblütensirup, selbst gemacht | 1 tbsp elderflower-cordial # selbst gemacht
1,5 cl Kirschwasser | 1.5 cl kirsch
frisch geriebene Muskatnuss als Deko | - - nutmeg garnish
Saft von einer halben Zitrone | 0.5 each lemon
Alles auf Eis kräftig shaken und doppelt abseihen | nothing
5cl Wodka (Grey Ferry), eiskalt | 5 cl vodka # eiskalt / Grey Ferry
nach Geschmack etwas Agavendicksaft | - - agave-syrup
3 cl roter Wermut (ersatzweise Portwein) | 3 cl sweet-vermouth # Portwein
5 cl de rhum blanc agricole | 5 cl rhum-agricole-blanc
le jus d'un demi citron vert | 0.5 each lime
2 traits d'amer à l'orange | 2 dash orange-bitters
1 c. à café de sirop d'agave | 1 tsp agave-syrup
1 c. à s. bombée de confiture d'abricots | 1 tbsp apricot-jam # bombée
1,5 cl de crème de cassis | 1.5 cl creme-de-cassis
compléter avec de l'eau gazeuse bien fraîche | - - soda-water # fraîche
une dizaine de feuilles de menthe | 10 leaf mint-leaf
1 blanc d'œuf (facultatif) | 1 each egg-white optional
40 ml de gin Pellow & Rudge | 40 ml gin # Pellow & Rudge
une pincée de fleur de sel | 1 pinch salt # fleur de sel
2 cl de sirop de sucre de canne maison | 2 cl cane-syrup # maison
3 à 4 cl de cognac | 3-4 cl cognac
1 zeste d'orange pour la déco | 1 each orange-peel garnish
6 cl de jus de pamplemousse rose, sans pulpe | 6 cl pink-grapefruit-juice # sans pulpe
Frapper au shaker avec des glaçons pendant 10 s | nothing
2 gouttes d'eau de fleur d'oranger | 2 drop orange-flower-water
2 cl de vermouth sec ou blanc | 2 cl dry-vermouth # blanc
30 ml vermouth rosso | 30 ml sweet-vermouth
succo di mezzo limone | 0.5 each lemon
2 cucchiai di miele d'acacia | 2 tbsp honey # acacia
acqua tonica per colmare | - - tonic-water
sale q.b. | - - salt
5-6 foglie di basilico fresco | 5-6 leaf basil
1 fetta d'arancia per guarnire | 1 slice orange-slice garnish
45 ml grappa bianca (Lume Cavo) | 45 ml grappa # bianca / Lume Cavo
2,5 cl di liquore al caffè | 2.5 cl coffee-liqueur
Mescolate delicatamente e servite subito | nothing
150 g di fragole mature, lavate e tagliate | 150 g strawberry # mature
scorza di 3 limoni non trattati (solo la parte gialla) | 3 each lemon # non trattati / gialla
1 parte di gin, 1 parte di bitter rosso e 2 parti di spumante brut | 1 part gin ; 1 part red-bitter ; 2 part sparkling-wine # brut
500 ml alcol puro 95° | 500 ml neutral-spirit # 95
50 ml de tequila blanco | 50 ml blanco-tequila
2 oz de mezcal joven (espadín) | 2 oz mezcal # espadín
zumo de media lima | 0.5 each lime
1 cdta. de azúcar mascabado | 1 tsp brown-sugar
2 cdas de miel | 2 tbsp honey
unas gotas de amargo aromático | 3 drop aromatic-bitters
6 hojas de hierbabuena | 6 leaf mint-leaf
1 ramita de romero para decorar | 1 sprig rosemary garnish
3/4 oz de jarabe natural | 0.75 oz simple-syrup
60 ml de pisco quebranta | 60 ml pisco # quebranta
1 clara de huevo (opcional) | 1 each egg-white optional
1 chorrito de granadina | 1 splash grenadine
4 cl de ron añejo de 7 años | 4 cl aged-rum # 7 años
1 lata (355 ml) de cerveza clara | 1 can lager # 355
Agitar con hielo y colar en copa fría | nothing
2 tazas de flor de jamaica seca | 2 cup hibiscus-flowers
rodajas de pepino (3 o 4) | 3-4 each cucumber-slice
1 Fl. Sekt, gut gekühlt | 1 bottle sparkling-wine # gut gekühlt
"""
"""What is read as its writer expected."""

ASKED_RIGHTLY = """
1 oz vermouth, his usual
1 oz bitters
Grey Ferry vodka 50
3/4 oz of the green one in the tall bottle
Ginger beer, 4 oz or to top
lime wheel / mint bouquet
1 tsp rich demerara syrup, 2 tsp for the lady in 412
fifty no fifteen or was it fifty mil of the lime juice
three dashes of aromatic bitters four if you're me
two ounces of the clear stuff
5 cl weißer Rum, gern auch 6
Korn, 4 cl (Brennerei Aldenroth)
2 cl de ce qui reste dans la carafe
un soupçon d'absinthe
4/10 gin, 3/10 vermouth sec, 3/10 amer rouge
sciroppo di zucchero 1 cl (1,5 se piace dolce)
1 tazzina di caffè espresso ristretto
el jugo de 2 limones
rodaja de limón para decorar
refresco de toronja c/s
45 ml blanco tequila infused w/ jalapeño (24h)
0.75 homemade orgeat
1/2 oz lapsang souchong syrup (see below)
1 oz syrup
1 vermouth
1 oz the usual
Gin 2, lemon 3/4, simple 3/4, egg white
point seven five of my rasp berry syrup
one ounce of cherry the fino one
then grate some tonka bean over the foam that's the garnish
the juice of one whole lime which is about an ounce
twenty grams of butterfly pea flower into a bottle of vodka
two ounces of that
and then just a little bit of the green stuff
an ounce of vermouth
a seven fifty of vodka for the infusion
0,7 l Doppelkorn
2 cl Likör
3cl sirop
1 tazzina di espresso ristretto
due dita di rum
1 oz de jugo de limón
"""
"""What its writer would ask about too."""

ASKED = """
750 ml cachaca (for 12)
two ounces of rye actually you know what bourbon works better here two ounces bourbon
1.5oz coconut-fat-washed bourbon
the gin is hollow lamp navy strength fifty mil of that
4 cl calva + 2 cl citron + 1 cl grenadine
"""
"""What its writer would have understood; it is asked about, and nothing is taken."""

OTHERWISE = """
small bottle tonic water (200ml) | 1 bottle tonic-water
a slice of orange and a cherry | 1 slice orange-slice ; 1 each cocktail-cherry
honey syrup half ounce that's three parts honey one part water | 0.5 oz honey-syrup
scorza di limone (solo la parte gialla) | - - lemon-peel # solo la parte gialla
escarchar el borde con sal | - - salt garnish
1 albume pastorizzato (ca. 30 g) | 1 each pasteurised-egg-white # pastorizzato / 30 g
sal de gusano para escarchar | - - sal-de-gusano garnish
"""
"""What is put in other words than its writer expected, with nothing lost:

* small bottle tonic water (200ml): a bottle is counted, and holds what stands behind it
* a slice of orange and a cherry: nothing says that they are a garnish
* honey syrup half ounce that's three parts honey one part water: the ratio is stated in figures
* scorza di limone (solo la parte gialla): nothing says that it is a garnish
* escarchar el borde con sal: the rim is noted in one word that every screen reads
* 1 albume pastorizzato (ca. 30 g): pasteurised egg white is a kind of its own
* sal de gusano para escarchar: the rim is noted in one word that every screen reads
"""
