"""Names a bartender brings, and the kind each is to be read as, written down by hand.

*kind: name; name …*; a row that is set in goes on from the one above it.
"""

from __future__ import annotations

NAMES = """
vodka: potato vodka
lemon-vodka: citrus vodka; lemon vodka
vanilla-vodka: vanilla vodka
pepper-vodka: pepper vodka
bison-grass-vodka: bison grass vodka
london-dry-gin: london dry gin
contemporary-gin: contemporary gin
old-tom-gin: old tom gin
navy-strength-gin: navy strength gin
barrel-aged-gin: barrel-aged gin
pink-gin: pink gin
genever: genever
jonge-genever: jonge genever
oude-genever: oude genever
white-rum: white Puerto Rican rum; Puerto Rican white rum; Cuban white rum; light rum; silver rum
gold-rum: Puerto Rican gold rum; gold Puerto Rican rum; gold Cuban rum; gold rum; amber rum
aged-rum: aged rum
dark-rum: dark Puerto Rican rum; dark Cuban rum; dark rum; black rum
blackstrap-rum: blackstrap
navy-rum: navy rum
jamaican-rum: Jamaican rum
aged-jamaican-rum: gold Jamaican rum; Jamaican gold rum; aged jamaican rum
demerara-rum: demerara rum
overproof-rum: Puerto Rican overproof rum; Cuban overproof rum; overproof Barbados rum
white-overproof-rum: overproof Jamaican rum; Jamaican overproof rum; Jamaica overproof white rum;
    overproof white rum
151-rum: 151; overproof demerara rum; 151-proof demerara rum
rhum-agricole: rhum agricole
rhum-agricole-blanc: rhum agricole blanc
rhum-agricole-vieux: rhum agricole vieux; aged rhum agricole
cachaca: cachaça
spiced-rum: spiced rum
batavia-arrack: batavia arrack
blanco-tequila: blanco tequila; silver tequila; tequila plata
reposado-tequila: reposado; reposado tequila; rested tequila
anejo-tequila: añejo; añejo tequila
mezcal: joven mezcal; espadín mezcal
raicilla: raicilla
sotol: sotol
bourbon: bourbon
wheated-bourbon: wheated bourbon
bonded-bourbon: bonded bourbon
rye-whiskey: straight rye whiskey; straight rye whisky; rye whiskey
bonded-rye-whiskey: bonded rye
tennessee-whiskey: tennessee whiskey
corn-whiskey: corn whiskey
white-dog: moonshine
canadian-whisky: canadian whisky
irish-whiskey: irish whiskey
single-pot-still-irish-whiskey: single pot still irish whiskey
blended-scotch: blended scotch
single-malt-scotch: single malt scotch; speyside scotch; highland single malt
smoky-scotch: islay scotch; peated scotch
japanese-whisky: japanese whisky
cognac: cognac; VSOP cognac
armagnac: armagnac
pisco: pisco; pisco acholado
grappa: smooth grappa; white grappa; white smooth grappa; grappa
apple-brandy: apple brandy
calvados: calvados
american-apple-brandy: bonded apple brandy; applejack
kirsch: kirsch; kirschwasser
pear-eau-de-vie: pear brandy; poire williams
raspberry-eau-de-vie: framboise; raspberry eau de vie
apricot-eau-de-vie: apricot eau de vie
plum-eau-de-vie: slivovitz
aquavit: aquavit
absinthe: absinthe
pastis: pastis
ouzo: ouzo
arak: arak
shochu: shochu
soju: soju
baijiu: baijiu
cherry-vodka: cherry vodka; cherry-flavored vodka
peach-vodka: peach vodka; peach-flavored vodka; peach-flavoured vodka
raspberry-vodka: raspberry vodka
blackberry-vodka: blackberry-flavored vodka
coffee-vodka: coffee-flavored vodka
column-still-rum: Puerto Rican rum; Cuban rum; spanish-style rum; column still rum
white-jamaican-rum: white Jamaican rum; Jamaican white rum
dark-jamaican-rum: dark Jamaican rum; Jamaican dark rum
barbadian-rum: Barbadian rum; Barbados rum
white-barbadian-rum: white Barbadian rum
aged-barbadian-rum: gold Barbados rum; Barbadian gold rum; dark Barbados rum
molasses-rhum: molasses rhum; rhum traditionnel
clairin: clairin
aguardiente-de-cana: aguardiente de caña; Cuban aguardiente
aged-cachaca: aged cachaça
strong-coconut-rum: full-strength coconut rum; coconut-flavored rum
pineapple-rum: pineapple rum
bacanora: bacanora
aged-mezcal: mezcal reposado
extra-anejo-tequila: extra añejo tequila
cristalino-tequila: cristalino tequila
high-proof-bourbon: high-proof bourbon
mirabelle: mirabelle
singani: singani
raki: raki
dry-white-wine: dry white wine
red-wine: red wine
rose-wine: rosé wine
sparkling-wine: crémant; brut sparkling wine
champagne: champagne
prosecco: prosecco
cava: cava
sake: sake
ruby-port: ruby port
tawny-port: red tawny port wine; tawny port
white-port: white port
fino-sherry: fino sherry
manzanilla-sherry: manzanilla sherry
amontillado-sherry: amontillado
oloroso-sherry: oloroso sherry
px-sherry: PX sherry
cream-sherry: cream sherry
madeira: madeira
marsala: marsala
dry-vermouth: dry vermouth; french vermouth; vermouth dry
extra-dry-vermouth: extra dry vermouth
sweet-vermouth: sweet vermouth; red vermouth; vermouth rosso; rosso vermouth; italian vermouth
bianco-vermouth: blanc vermouth; bianco vermouth; vermouth bianco
rose-vermouth: rosé vermouth
quinquina: quinquina
white-quinquina: white quinquina
palo-cortado-sherry: palo cortado
sweet-white-wine: sauternes
muscat-wine: muscat wine
chinato: chinato
dry-madeira: rainwater madeira
sweet-madeira: bual madeira
lager: lager; pilsner
pale-ale: IPA
wheat-beer: wheat beer
stout: stout
cider: hard cider; dry cider
mead: mead
perry: perry
hard-seltzer: hard seltzer
kombucha: kombucha
tepache: tepache
aperitivo: aperitivo
red-bitter: red bitter; red bitter aperitivo
amaro: amaro
alpine-amaro: alpine amaro
artichoke-amaro: artichoke amaro
rhubarb-amaro: rhubarb amaro
fernet: fernet
gentian-aperitif: gentian liqueur
orange-liqueur: orange liqueur
triple-sec: triple sec
dry-curacao: dry curaçao; orange curaçao
blue-curacao: blue curaçao
maraschino-liqueur: maraschino liqueur
cherry-liqueur: cherry liqueur
cherry-brandy: cherry-flavored brandy
apricot-liqueur: apricot liqueur; apricot brandy
peach-liqueur: peach-flavored brandy; peach liqueur; peach schnapps; crème de pêche
creme-de-cassis: crème de cassis
creme-de-mure: crème de mûre; blackberry liqueur
raspberry-liqueur: crème de framboise; raspberry liqueur
strawberry-liqueur: strawberry schnapps; strawberry liqueur
creme-de-banane: crème de banane; banana liqueur
pear-liqueur: pear liqueur
melon-liqueur: melon liqueur
lychee-liqueur: lychee liqueur
pineapple-liqueur: pineapple liqueur
passion-fruit-liqueur: passion fruit liqueur
limoncello: limoncello
coconut-rum: coconut rum
sloe-gin: sloe gin
blackberry-brandy: blackberry-flavored brandy
herbal-liqueur: herbal liqueur
yellow-herbal-liqueur: yellow herbal liqueur
creme-de-menthe: crème de menthe
green-creme-de-menthe: green crème de menthe
white-creme-de-menthe: white crème de menthe
anisette: anisette
sambuca: sambuca
cinnamon-liqueur: cinnamon liqueur
allspice-dram: allspice dram; pimento dram
falernum: falernum; velvet falernum
ginger-liqueur: ginger liqueur
elderflower-liqueur: elderflower liqueur
violet-liqueur: crème de violette
honey-liqueur: honey liqueur
rock-and-rye: rock and rye
swedish-punsch: swedish punsch
alpine-liqueur: alpine liqueur
genepi: génépy; génépi
saffron-liqueur: saffron liqueur
butterscotch-liqueur: butterscotch schnapps
rose-liqueur: rose liqueur
sorrel-liqueur: sorrel liqueur
amaretto: amaretto
hazelnut-liqueur: hazelnut liqueur
nocino: walnut liqueur; nocino
coffee-liqueur: coffee-flavored brandy; coffee liqueur
chocolate-liqueur: chocolate liqueur
creme-de-cacao: crème de cacao
white-creme-de-cacao: white crème de cacao
dark-creme-de-cacao: dark crème de cacao
cream-liqueur: irish cream
egg-liqueur: advocaat
aromatic-bitters: aromatic bitters
anise-bitters: creole bitters
orange-bitters: orange bitters
chocolate-bitters: chocolate bitters
mole-bitters: mole bitters
celery-bitters: celery bitters
peach-bitters: peach bitters
grapefruit-bitters: grapefruit bitters
lavender-bitters: lavender bitters
walnut-bitters: black walnut bitters
cardamom-bitters: cardamom bitters
rhubarb-bitters: rhubarb bitters
saline-solution: saline solution; saline; salt solution
cherry-bitters: cherry bitters
cranberry-bitters: cranberry bitters
lemon-bitters: lemon bitters
tiki-bitters: tiki bitters
mint-bitters: mint bitters
coffee-bitters: coffee bitters
lime-juice: fresh lime juice
lemon-juice: lemon juice
orange-juice: orange juice
blood-orange-juice: blood orange juice
grapefruit-juice: grapefruit juice
pink-grapefruit-juice: pink grapefruit juice
yuzu-juice: yuzu juice
pineapple-juice: pineapple juice
apple-juice: apple juice
cloudy-apple-juice: apple cider
cranberry-juice: cranberry juice
tomato-juice: tomato juice
pomegranate-juice: pomegranate juice
grape-juice: grape juice
red-grape-juice: concord grape juice
verjus: verjus
passion-fruit-puree: passion fruit juice; passion fruit purée
strawberry-puree: strawberry purée
raspberry-puree: raspberry purée
peach-puree: peach purée; white peach purée
watermelon-juice: watermelon juice
celery-juice: celery juice
carrot-juice: carrot juice
cucumber-juice: cucumber juice
ginger-juice: ginger juice
coconut-water: coconut water
olive-brine: olive brine
pickle-brine: pickle brine
key-lime-juice: key lime juice; fresh key lime juice
calamansi-juice: calamansi juice
mandarin-juice: mandarin juice; tangerine juice; clementine juice
mango-puree: mango purée
mango-juice: mango nectar
guava-juice: guava nectar
papaya-juice: papaya juice
pear-juice: pear juice; pear nectar
peach-juice: peach nectar
apricot-juice: apricot nectar
beetroot-juice: beetroot juice; beet juice
clam-juice: clam juice
sweet-pickle-brine: sweet pickle brine
grapefruit-cinnamon-mix: grapefruit and cinnamon mix; cinnamon grapefruit mix
sorrel-drink: sorrel
simple-syrup: simple syrup; sugar syrup
rich-simple-syrup: rich simple syrup
demerara-syrup: rich demerara; demerara syrup; rich demerara syrup; muscovado syrup
cane-syrup: cane syrup
gum-syrup: gomme syrup
honey-syrup: honey syrup
agave-syrup: agave; agave syrup; agave nectar
maple-syrup: maple; maple syrup
grenadine: grenadine
raspberry-syrup: raspberry syrup
strawberry-syrup: strawberry syrup
passion-fruit-syrup: passion fruit syrup
pineapple-syrup: pineapple syrup
ginger-syrup: ginger syrup
cinnamon-syrup: cinnamon syrup
vanilla-syrup: vanilla syrup
mint-syrup: mint syrup
lavender-syrup: lavender syrup
rosemary-syrup: rosemary syrup
hibiscus-syrup: hibiscus syrup
chilli-syrup: jalapeño syrup
chocolate-syrup: chocolate syrup
orgeat: orgeat; almond syrup
lime-cordial: lime cordial; lime juice cordial
elderflower-cordial: elderflower syrup; elderflower cordial
shrub: shrub
oleo-saccharum: oleo saccharum
rich-honey-syrup: honey syrup 2:1; 2:1 honey syrup
honey-ginger-syrup: honey-ginger syrup
thyme-syrup: thyme syrup
basil-syrup: basil syrup
chamomile-syrup: chamomile syrup
chai-syrup: chai syrup
gingerbread-syrup: gingerbread syrup
coconut-syrup: coconut syrup
caramel-syrup: caramel syrup
hazelnut-syrup: hazelnut syrup
pistachio-syrup: pistachio orgeat
rhubarb-syrup: rhubarb syrup
blackberry-syrup: blackberry syrup
chamomile-cordial: chamomile cordial
sugar: white sugar
superfine-sugar: caster sugar; superfine sugar
icing-sugar: powdered sugar
brown-sugar: brown sugar
demerara-sugar: demerara sugar
sugar-cube: sugar cube
honey: honey
molasses: molasses
brown-sugar-cube: brown sugar cube
marmalade: marmalade; orange marmalade
apricot-jam: apricot jam
raspberry-jam: raspberry jam
fig-jam: fig jam
boiling-water: hot water; boiling water
ice: big rock; ice
crushed-ice: crushed ice
soda-water: club soda; soda water; sparkling water; seltzer
tonic-water: tonic water
ginger-ale: ginger ale
ginger-beer: ginger beer
cola: cola
sparkling-lemonade: lemonade
lemon-lime-soda: lemon-lime soda
bitter-lemon: bitter lemon
grapefruit-soda: grapefruit soda
cream-soda: cream soda
root-beer: root beer
elderflower-tonic: elderflower tonic
energy-drink: energy drink
diet-cola: diet cola
orange-soda: orange soda
egg: whole egg
egg-white: egg white
egg-yolk: egg yolk
aquafaba: aquafaba
milk: whole milk
single-cream: light cream
whipping-cream: heavy cream; whipping cream; whipped cream
double-cream: double cream
half-and-half: half and half
condensed-milk: condensed milk
ice-cream: vanilla ice cream
butter: butter
oat-milk: oat milk
almond-milk: almond milk
soya-milk: soy milk
coconut-milk: coconut milk
coconut-cream: coconut purée; coconut cream
cream-of-coconut: cream of coconut
evaporated-milk: evaporated milk
yogurt: yogurt; yoghurt
buttermilk: buttermilk
foaming-agent: foaming agent
coffee: hot coffee; black coffee
espresso: espresso
cold-brew-coffee: cold brew coffee; cold brew
black-tea: black tea
green-tea: green tea
earl-grey-tea: earl grey tea
coffee-beans: coffee beans
cocoa-powder: cocoa powder
oolong-tea: oolong; oolong tea
rooibos: rooibos
chamomile-tea: chamomile tea
jasmine-tea: jasmine tea
hibiscus-tea: hibiscus tea
mint-tea: mint tea
chai: chai; masala chai
nitro-coffee: nitro coffee; nitro cold brew
matcha: matcha; matcha powder
cacao-nibs: cacao nibs
dark-chocolate: chocolate shavings; dark chocolate
banana: banana
passion-fruit: passion fruit
watermelon: watermelon
strawberry: strawberry
raspberry: raspberries
blackberry: blackberries
cranberries: cranberries
key-lime: key lime
calamansi: calamansi
mango: mango
guava: guava
lychee: lychee
kiwi: kiwi
fig: fig
grape: grapes
blueberry: blueberries
tamarind: tamarind
lemon-peel: expressed lemon peel; lemon peel; lemon twist; lemon zest
orange-peel: orange peel; orange twist
grapefruit-peel: grapefruit peel; grapefruit twist
lemon-wedge: lemon wedge
lime-wedge: lime wheel; lime wedge
orange-slice: orange slice; orange wheel
apple-slice: apple slice; apple fan
dried-citrus-wheel: dehydrated lime wheel; dehydrated orange wheel; dehydrated lemon
pineapple-wedge: pineapple wedge
pineapple-leaf: pineapple frond; pineapple leaf
cucumber-slice: cucumber slice; cucumber ribbon
cocktail-cherry: cherry; maraschino cherry; brandied cherry; cocktail cherry; amarena cherry
olive: olive; green olive
cocktail-onion: cocktail onion; pearl onion
citrus-peel: expressed peel
pear-slice: pear slice
peach-slice: peach slice
half-passion-fruit: half passion fruit
edible-flower: edible flower
edible-orchid: orchid
candied-ginger: candied ginger
mint: mint sprig
mint-leaf: mint leaves
basil: basil leaves
rosemary: rosemary sprig
thyme: thyme sprig
sage: sage leaf
coriander-leaf: cilantro; coriander leaves
shiso: shiso leaf
celery: celery stick; celery stalk
fresh-chilli: red chilli pepper; red chili pepper; jalapeño slice; chilli
ginger: ginger; fresh ginger
horseradish: horseradish
dill: dill; dill sprig
thai-basil: thai basil
makrut-lime-leaf: kaffir lime leaf
lemongrass: lemongrass
bay-leaf: bay leaf
lavender-sprig: lavender sprig
turmeric: turmeric
nutmeg: nutmeg; grated nutmeg; freshly grated nutmeg
cinnamon: ground cinnamon
cinnamon-stick: cinnamon stick
cloves: clove; whole cloves
star-anise: star anise
allspice: allspice
black-pepper: black pepper
vanilla-pod: vanilla bean
salt: sea salt; kosher salt
celery-salt: celery salt
citric-acid: citric acid
malic-acid: malic acid
tartaric-acid: tartaric acid
gum-arabic: gum arabic
citric-acid-solution: citric acid solution
cardamom: cardamom; cardamom pods; cardamom pod
saffron: saffron; saffron threads
pink-pepper: pink peppercorn
cayenne: cayenne
paprika: smoked paprika
smoked-salt: smoked salt
lactic-acid: lactic acid
acid-phosphate: acid phosphate
xanthan-gum: xanthan gum
gelatine: gelatine
vanilla-extract: vanilla extract
orange-flower-water: orange flower water; orange blossom water
rose-water: rose water
cider-vinegar: apple cider vinegar
white-wine-vinegar: champagne vinegar
hot-sauce: hot sauce
worcestershire-sauce: worcestershire sauce
soy-sauce: soy sauce
olive-oil: olive oil
sesame-oil: sesame oil
balsamic-vinegar: balsamic vinegar
beef-broth: beef broth
"""


def kinds_by_name() -> dict[str, str]:
    """Name -> the key of its kind."""
    found: dict[str, str] = {}
    for row in NAMES.strip().replace("\n    ", " ").splitlines():
        kind, _, names = row.partition(": ")
        found |= dict.fromkeys(names.split("; "), kind)
    return found
