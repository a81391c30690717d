"""Lines of German, French, Italian and Spanish, and what they are read as.

In the form of `tests.domain.spec_text.lines_as_written`; a note stands behind `#`.
The first rows of each table were written down before anything read them; all are invented.
"""

from __future__ import annotations

GERMAN = """
5 cl weißer Rum | 5 cl white-rum
2 cl Limettensaft dazugeben | 2 cl lime-juice # dazugeben
2 cl Limettensaft | 2 cl lime-juice
Saft einer halben Limette | 0.5 each lime # juice
Saft von einer Zitrone | 1 each lemon # juice
1 EL Zuckersirup | 1 tbsp simple-syrup
2 TL Zucker | 2 tsp sugar
1 Barlöffel Grenadine | 1 barspoon grenadine
3 Tropfen Salzlösung | 3 drop saline-solution
1 Eiweiß | 1 each egg-white
8 Minzblätter | 8 each mint-leaf
1 Zweig Minze | 1 sprig mint
mit Sodawasser auffüllen | - - soda-water # to top
Tonic Water zum Auffüllen | - - tonic-water # to top
Deko: Orangenzeste | - - orange-peel garnish
Garnitur: eine Limettenscheibe | 1 each lime-wedge garnish
4,5 cl Roggenwhiskey | 4.5 cl rye-whiskey
2 cl roter Wermut | 2 cl sweet-vermouth
1 Schuss Sahne | 1 splash cream
6 cl Ananassaft, frisch gepresst | 6 cl pineapple-juice # frisch gepresst
eine Prise Salz | 1 pinch salt
anderthalb EL Honig | 1.5 tbsp honey
2 cl Orangenlikör (optional) | 2 cl orange-liqueur optional
etwa 10 cl Ginger Beer | 10 cl ginger-beer # etwa
1 Eigelb | 1 each egg-yolk
60 ml weisser Rum | 60 ml white-rum
3 cl frischer Zitronensaft | 3 cl lemon-juice
1 TL brauner Zucker | 1 tsp brown-sugar
1 Stück Würfelzucker | 1 each sugar-cube
12 Minzeblätter | 12 each mint-leaf
1/2 Limette in Achteln | 0.5 each lime # in Achteln
1 Limette (geachtelt) | 1 each lime # geachtelt
2 Scheiben Gurke | 2 slice cucumber-slice
1 Gurkenscheibe | 1 each cucumber-slice
Sekt zum Auffüllen | - - sparkling-wine # to top
etwas Muskatnuss | - - nutmeg # etwas
frisch geriebene Muskatnuss | - - nutmeg
1 ganzes Ei | 1 each egg
1 cl Holunderblütensirup | 1 cl elderflower-cordial
4 cl Gin oder Wodka | 4 cl gin = vodka
1 Prise Zimt | 1 pinch cinnamon
Zum Garnieren: 1 Cocktailkirsche | 1 each cocktail-cherry garnish
Zur Deko eine Olive | 1 each olive garnish
1 Olive zur Deko | 1 each olive garnish
ein Viertel Teelöffel Salz | 0.25 tsp salt
eine halbe Zitrone (Saft) | 0.5 each lemon # juice
Zucker nach Geschmack | - - sugar # to taste
100 ml Orangensaft, frisch gepresst, optional | 100 ml orange-juice optional # frisch gepresst
6 cl Bourbon Whiskey | 6 cl bourbon
Saft 1/2 Zitrone | 0.5 each lemon # juice
1 Spritzer Sodawasser | 1 dash soda-water
ca. 2 cl Limettensaft | 2 cl lime-juice # ca.
gut 2 cl Limettensaft | 2 cl lime-juice # gut
knapp 2 cl Zuckersirup | 2 cl simple-syrup # knapp
zwei Barlöffel Zuckersirup | 2 barspoon simple-syrup
2cl Limettensaft | 2 cl lime-juice
LIMETTENSAFT 2 CL | 2 cl lime-juice
2 cl limettensaft | 2 cl lime-juice
Limettensaft: 2 cl | 2 cl lime-juice
2-3 Spritzer Orangenbitter | 2-3 dash orange-bitters
je 2 cl Gin und roter Wermut | 2 cl gin ; 2 cl sweet-vermouth
je 2 cl Gin, Wodka und Zitronensaft | 2 cl gin ; 2 cl vodka ; 2 cl lemon-juice
1 Zitronen-Scheibe | 1 each lemon-wedge
2 cl Himbeer-Sirup | 2 cl raspberry-syrup
2 Essloeffel Honig | 2 tbsp honey
zwei bis drei Tropfen Salzlösung | 2-3 drop saline-solution
mit 10 cl Ginger Beer auffüllen | 10 cl ginger-beer # to top
2 cl frisch gepresster Zitronensaft | 2 cl lemon-juice
2 cl Zitronensaft (frisch gepresst) | 2 cl lemon-juice # frisch gepresst
4 cl Gin (aus dem Eisfach) | 4 cl gin # aus dem Eisfach
4 cl jamaikanischer Rum | 4 cl jamaican-rum
eine halbe Limette, geviertelt | 0.5 each lime # geviertelt
- 2 cl Limettensaft | 2 cl lime-juice
1 BL Rohrzuckersirup | 1 barspoon cane-syrup
1 gestr. TL Puderzucker | 1 tsp icing-sugar # gestr.
2 gehäufte EL brauner Zucker | 2 tbsp brown-sugar # gehäufte
1 Handvoll frische Minze | 1 handful mint # by the handful
5 Blätter Basilikum | 5 leaf basil
1 Scheibe Ananas | 1 slice pineapple-wedge
1 Viertel Limette | 0.25 each lime
1 Limettenviertel | 1 each lime-wedge
1 Sternanis | 1 each star-anise
1 Stange Zimt | 1 stick cinnamon-stick
200 ml kaltes Mineralwasser mit Kohlensäure | 200 ml soda-water
ein großzügiger Schuss Sodawasser | 1 splash soda-water # großzügiger
1 Spritzer frischer Limettensaft | 1 dash lime-juice
2 Dashes Orange Bitters | 2 dash orange-bitters
Crushed Ice | - - crushed-ice
1 cl Maraschino | 1 cl maraschino-liqueur
3 cl Apricot Brandy | 3 cl apricot-liqueur
4 cl kalter Espresso | 4 cl espresso
Zeste einer Orange | 1 each orange # zest
1 cocktailkirsche als deko | 1 each cocktail-cherry garnish
Mit Tonic Water auffüllen | - - tonic-water # to top
Auffüllen mit Sekt | - - sparkling-wine # to top
mit Champagner aufgießen (ca. 8 cl) | 8 cl champagne # ca., to top
Eiweiß von einem Ei | 1 each egg-white
2 EL. Zucker | 2 tbsp sugar
mit Soda auffüllen, dann rühren | - - soda-water # to top, dann rühren
2 Limettenblätter | 2 each makrut-lime-leaf
4 cl Roggenwhiskey mit 50 % Vol. | 4 cl rye-whiskey
Absinth (zum Ausschwenken des Glases) | 1 rinse absinthe
5 cl Rum, jamaikanisch, 8 Jahre | 5 cl jamaican-rum
60 ml Blutorangensaft, frisch gepresst | 60 ml blood-orange-juice # frisch gepresst
2 Zweige Rosmarin (angeflammt) | 2 sprig rosemary # flamed
ein Spritzer Orangenblütenwasser | 1 dash orange-flower-water
3 Gurkenscheiben, eine davon als Deko | 3 each cucumber-slice # eine davon als Deko
1/2 Vanilleschote, ausgekratzt | 0.5 each vanilla-pod # ausgekratzt
10 cl Ginger Beer, eiskalt | 10 cl ginger-beer # eiskalt
2 cl Zitronensaft (ca. 1/2 Zitrone) | 2 cl lemon-juice # ca. 1/2 Zitrone
je 2 cl Limettensaft und Läuterzucker | 2 cl lime-juice ; 2 cl simple-syrup
einen guten Schuss Sodawasser | 1 splash soda-water # guten
1-2 BL Ahornsirup, je nach Süße der Früchte | 1-2 barspoon maple-syrup # je nach Süße der Früchte
Glas mit Absinth ausspülen | 1 rinse absinthe
Salzrand | - - salt garnish # rim
optional: 1 Eiweiß | 1 each egg-white optional
6 cl Rum 12 Jahre alt | 6 cl rum
ein EL Holunderblütensirup | 1 tbsp elderflower-cordial
3 cl roter Wermut, am besten gut gekühlt | 3 cl sweet-vermouth # am besten gut gekühlt
etwas Muskatnuss, frisch gerieben | - - nutmeg # frisch gerieben, etwas
0,5 cl Läuterzucker (2:1) | 0.5 cl rich-simple-syrup
ca. 100 ml kaltes Mineralwasser mit Kohlensäure | 100 ml soda-water # ca.
2 cl Zitronen- oder Limettensaft | 2 cl lemon-juice = lime-juice
6 cl Wodka, am besten aus dem Eisfach | 6 cl vodka # am besten aus dem Eisfach
4 cl Kokoslikör | 4 cl coconut-rum
2 gestrichene TL Puderzucker | 2 tsp icing-sugar # gestrichene
eine Handvoll frische Minze | 1 handful mint # by the handful
1 1/2 EL Grenadine | 1.5 tbsp grenadine
200 ml Cranberrynektar | 200 ml cranberry-juice
eine Dose Kokosmilch | 1 can coconut-milk
3 cl Haselnusslikör | 3 cl hazelnut-liqueur
6-8 Himbeeren, gefroren | 6-8 each raspberry # gefroren
5 cl Gin (mind. 45 % Vol.) | 5 cl gin # mind. 45 % Vol.
Spritzer Limettensaft nach Geschmack | 1 dash lime-juice # to taste
4 cl Rum (weiß) | 4 cl white-rum
1 dünne Scheibe Ingwer | 1 slice ginger # dünne, by the piece
Limettenzeste als Garnitur | - - lime-peel garnish
0,2 l Weizenbier | 0.2 l wheat-beer
2,5cl frisch gepresster Zitronensaft | 2.5 cl lemon-juice
mit Champagner auffüllen | - - champagne # to top
4 cl Calvados, mindestens 5 Jahre alt | 4 cl calvados # mindestens 5 Jahre alt
1 cl Orgeat (Mandelsirup) | 1 cl orgeat # Mandelsirup
2 Zentiliter trockener Wermut | 2 cl dry-vermouth
10 ml Zitronensaft und 10 ml Limettensaft | 10 ml lemon-juice ; 10 ml lime-juice
2 cl Himbeergeist oder Himbeersirup | 2 cl raspberry-eau-de-vie = raspberry-syrup
ein halber Teelöffel Salz | 0.5 tsp salt
8 cl Orangensaft ohne Fruchtfleisch | 8 cl orange-juice # ohne Fruchtfleisch
1/4 l Apfelsaft, trüb | 0.25 l cloudy-apple-juice
5 Basilikumblätter (plus eines zur Deko) | 5 each basil # plus eines zur Deko
1 Orange, davon die Zeste | 1 each orange # davon die Zeste
2 cl Zuckersirup, nach Geschmack mehr | 2 cl simple-syrup # nach Geschmack mehr
5 cl weißer Rum (kubanisch) | 5 cl white-rum
1 kleine Handvoll Basilikum | 1 handful basil # kleine, by the handful
2 cl Agavendicksaft, hell | 2 cl agave-syrup
10 ml Kokossirup | 10 ml coconut-syrup
1 Prise grobes Meersalz | 1 pinch salt # grobes
4 cl Grappa, fassgereift | 4 cl aged-grappa
eine halbe Banane, zerdrückt | 0.5 each banana # zerdrückt
15 cl heißer Kaffee, frisch gebrüht | 15 cl coffee # frisch gebrüht
1 Spritzer Worcestersauce und 2 Tropfen Chilisauce | 1 dash worcestershire-sauce ; 2 drop hot-sauce
3cl Limettensaft (frisch!) | 3 cl lime-juice # frisch!
Schale einer Zitrone | 1 each lemon # peel
2 cl Cassislikör | 2 cl creme-de-cassis
optional 1 Dash Orange Bitters | 1 dash orange-bitters optional
4 cl Whisky (torfig) | 4 cl smoky-scotch
30 g brauner Zucker | 30 g brown-sugar
"""

FRENCH = """
5 cl de rhum blanc | 5 cl white-rum
2 cl de jus de citron vert | 2 cl lime-juice
le jus d'un demi-citron | 0.5 each lemon # juice
le jus d'une orange | 1 each orange # juice
1 c. à s. de sirop de sucre | 1 tbsp simple-syrup
2 c. à café de sucre | 2 tsp sugar
1 cuillère à soupe de miel | 1 tbsp honey
3 gouttes de fleur d'oranger | 3 drop orange-flower-water
1 blanc d'œuf | 1 each egg-white
8 feuilles de menthe | 8 leaf mint-leaf
1 brin de menthe | 1 sprig mint
compléter avec de l'eau gazeuse | - - soda-water # to top
allonger de limonade | - - sparkling-lemonade # to top
Garniture : zeste d'orange | - - orange-peel garnish
une rondelle de citron vert pour décorer | 1 wheel lime-wedge garnish
4,5 cl de whisky de seigle | 4.5 cl rye-whiskey
2 cl de vermouth rouge | 2 cl sweet-vermouth
un trait de crème fraîche liquide | 1 dash cream
6 cl de jus d'ananas frais | 6 cl pineapple-juice
une pincée de sel | 1 pinch salt
environ 10 cl de champagne | 10 cl champagne # environ
2 cl de liqueur d'orange (facultatif) | 2 cl orange-liqueur optional
4 quartiers de citron vert | 4 wedge lime-wedge
10 cl de vin blanc sec | 10 cl dry-white-wine
6 cl rhum ambré | 6 cl gold-rum
25 ml de rhum vieux | 25 ml rhum-agricole-vieux
2 cl de sirop de sucre de canne | 2 cl cane-syrup
une demi-cuillère à café de sucre | 0.5 tsp sugar
1/2 c. à c. de sel | 0.5 tsp salt
1 càs de miel | 1 tbsp honey
2 cs de sucre | 2 tbsp sugar
le jus de 2 citrons verts | 2 each lime # juice
le jus d'un citron | 1 each lemon # juice
jus d'un 1/2 citron vert | 0.5 each lime # juice
un zeste d'orange | 1 each orange-peel
1 zeste de citron | 1 each lemon-peel
2 rondelles de concombre | 2 wheel cucumber-slice
une feuille de basilic | 1 leaf basil
10 feuilles de menthe fraîche | 10 leaf mint-leaf
de l'eau gazeuse | - - soda-water
eau gazeuse pour compléter | - - soda-water # to top
top de soda | - - soda-water # to top
3 glaçons | 3 each ice # by the piece
glace pilée | - - crushed-ice
un blanc d'oeuf | 1 each egg-white
1 jaune d'œuf | 1 each egg-yolk
1 demi citron | 0.5 each lemon
quelques gouttes de solution saline | 3 drop saline-solution
2 traits de bitter orange | 2 dash orange-bitters
un peu de sucre | - - sugar # un peu de
sucre au goût | - - sugar # to taste
6 cl de gin ou de vodka | 6 cl gin = vodka
champagne bien frais | - - champagne # bien frais
10 cl de champagne bien froid | 10 cl champagne # bien froid
une cuillère à café de cannelle | 1 tsp cinnamon
poivre noir moulu | - - black-pepper
1 pincée de noix de muscade râpée | 1 pinch nutmeg
2 cl de crème de cassis | 2 cl creme-de-cassis
15 cl de jus de tomate | 15 cl tomato-juice
1 branche de céleri | 1 each celery
4,5 cl gin | 4.5 cl gin
2 à 3 traits de bitter à l'orange | 2-3 dash orange-bitters
1 dose de sirop de fraise | 1 part strawberry-syrup
quelques feuilles de menthe fraîche | 3 leaf mint-leaf
2 cl sirop de cannelle | 2 cl cinnamon-syrup
2 cl de liqueur de pêche | 2 cl peach-liqueur
une ½ orange | 0.5 each orange
1 c.à.s de miel | 1 tbsp honey
2 cuil. à soupe de sucre | 2 tbsp sugar
2 cl de sirop de framboise maison | 2 cl raspberry-syrup # maison
LE JUS D’UN CITRON | 1 each lemon # juice
4 cl de cognac | 4 cl cognac
4cl de vodka | 4 cl vodka
1 cl de sirop d'orgeat | 1 cl orgeat
le jus d'1/2 citron | 0.5 each lemon # juice
jus d'une demi-orange pressée | 0.5 each orange # juice, pressée
1 cuillère à café rase de sucre en poudre | 1 tsp superfine-sugar # rase
1 c. à soupe bombée de miel | 1 tbsp honey # bombée
2 pincées de sel fin | 2 pinch salt
une goutte d'eau de fleur d'oranger | 1 drop orange-flower-water
un trait de sirop de sucre de canne | 1 dash cane-syrup
1 trait d'absinthe | 1 dash absinthe
15 cl d'eau gazeuse bien fraîche | 15 cl soda-water # bien fraîche
remplir de glace pilée | - - crushed-ice # to top
compléter de ginger beer | - - ginger-beer # to top
eau pétillante, pour allonger | - - soda-water # to top
1/2 concombre | 0.5 each cucumber
3 fines tranches de concombre | 3 slice cucumber-slice # fines
10 g de gingembre frais | 10 g ginger
1 bâton de cannelle | 1 each cinnamon-stick
2 clous de girofle | 2 each cloves
un zeste d'orange pour la déco | 1 each orange-peel garnish
feuilles de menthe pour décorer | - - mint-leaf garnish
1 oeuf entier | 1 each egg
2 blancs d'oeufs | 2 each egg-white
20 cl de lait de coco | 20 cl coconut-milk
3 cl de crème de pêche | 3 cl peach-liqueur
4 fraises fraîches | 4 each strawberry # fraîches
1/4 d'ananas | 0.25 each pineapple
une poignée de framboises | 1 handful raspberry # by the handful
2 quartiers de citron vert à piler | 2 wedge lime-wedge # à piler
6 à 8 framboises, fraîches ou surgelées | 6-8 each raspberry # fraîches ou surgelées
rincer le verre à l'absinthe | 1 rinse absinthe
un peu d'absinthe pour rincer le verre | 1 rinse absinthe # un peu d'
1 càs de crème liquide entière | 1 tbsp whipping-cream
cerise à l'eau-de-vie en déco | - - cocktail-cherry garnish
2 traits d'amers aromatiques | 2 dash aromatic-bitters
3 cl de cognac VSOP ou d'armagnac | 3 cl cognac = armagnac
4 cl de gin sec | 4 cl london-dry-gin
4 cl de cidre brut | 4 cl cider
45 ml de gin (type London Dry) | 45 ml london-dry-gin
1 blanc d'œuf (facultatif) | 1 each egg-white optional
une pincée de cannelle moulue | 1 pinch cinnamon
2 cuillères à café de sucre roux | 2 tsp brown-sugar
10 feuilles de basilic | 10 leaf basil
limonade pour allonger | - - sparkling-lemonade # to top
20 cl d'eau gazeuse bien fraîche | 20 cl soda-water # bien fraîche
3 cl de jus de citron fraîchement pressé (1/2 citron) | 3 cl lemon-juice # 1/2 citron
la moitié d'un fruit de la passion | 0.5 each passion-fruit
5 cl de calvados de 8 ans d'âge | 5 cl calvados
givrer le bord du verre avec du sel | - - salt garnish # rim
une tranche d'ananas pour décorer | 1 slice pineapple-wedge garnish
compléter le verre avec du ginger beer | - - ginger-beer # to top
1,5 cl de sirop de canne (maison) | 1.5 cl cane-syrup # maison
2,5 cl vermouth rouge italien | 2.5 cl sweet-vermouth
4 cl de rhum ambré vieilli 3 ans | 4 cl gold-rum
jus de 2 citrons verts pressés | 2 each lime # juice, pressés
1 cl de sirop de grenadine | 1 cl grenadine
une rondelle d'orange en décoration | 1 wheel orange-slice garnish
3 gouttes de bitter orange | 3 drop orange-bitters
1 c. à café rase de sucre en poudre | 1 tsp superfine-sugar # rase
12 cl de limonade bien fraîche | 12 cl sparkling-lemonade # bien fraîche
1 bâton de cannelle pour remuer | 1 each cinnamon-stick # pour remuer
80 ml de lait d'amande non sucré | 80 ml almond-milk
1 citron jaune (le jus) | 1 each lemon # juice
2 cl de liqueur de gingembre | 2 cl ginger-liqueur
1 càc de miel liquide | 1 tsp honey
une demi-gousse de vanille | 0.5 each vanilla-pod
deux ou trois traits de bitters aromatiques | 2-3 dash aromatic-bitters
4 cl de tequila reposado 100 % agave | 4 cl reposado-tequila
1 blanc d'œuf frais | 1 each egg-white
10 cl de jus de mangue | 10 cl mango-juice
un zeste de citron vert | 1 each lime-peel
2 cl de vermouth dry | 2 cl dry-vermouth
4 cl de cognac, de préférence VS | 4 cl cognac # de préférence VS
1 cl de sirop d'orgeat (ou d'amande) | 1 cl orgeat # ou d'amande
blanc d'un œuf | 1 each egg-white
2 centilitres de vermouth sec | 2 cl dry-vermouth
10 ml de jus de citron et 10 ml de jus de citron vert | 10 ml lemon-juice ; 10 ml lime-juice
une demi-cuillère à café de sel | 0.5 tsp salt
le zeste d'une orange non traitée | 1 each orange # zest, non traitée
8 feuilles de basilic (plus une pour décorer) | 8 leaf basil # plus une pour décorer
2 cl de sirop de sucre, plus selon le goût | 2 cl simple-syrup # plus, to taste
1 petite poignée de basilic | 1 handful basil # petite, by the handful
25 ml de jus de pomme trouble | 25 ml cloudy-apple-juice
3 cl de crème de mûre | 3 cl creme-de-mure
1 pincée de gros sel | 1 pinch salt
5 cl de whisky (tourbé) | 5 cl smoky-scotch
une demi-banane écrasée | 0.5 each banana # écrasée
15 cl de café chaud bien corsé | 15 cl coffee # bien corsé
le blanc de 2 œufs | 2 each egg-white
6 cl de rhum vieux (8 ans) | 6 cl rhum-agricole-vieux
option : 1 trait de bitter orange | 1 dash orange-bitters optional
2 cl de jus de citron, filtré | 2 cl lemon-juice # filtré
"""

ITALIAN = """
5 cl di rum bianco | 5 cl white-rum
2 cl di succo di lime | 2 cl lime-juice
il succo di mezzo limone | 0.5 each lemon # juice
il succo di un limone e mezzo | 1.5 each lemon # juice
il succo di un'arancia | 1 each orange # juice
1 cucchiaio di sciroppo di zucchero | 1 tbsp simple-syrup
2 cucchiaini di zucchero | 2 tsp sugar
1 cucchiaio di miele | 1 tbsp honey
3 gocce di soluzione salina | 3 drop saline-solution
1 albume d'uovo | 1 each egg-white
8 foglie di menta | 8 leaf mint-leaf
1 rametto di menta | 1 sprig mint
soda per completare | - - soda-water # to top
colmare con acqua tonica | - - tonic-water # to top
Guarnizione: scorza d'arancia | - - orange-peel garnish
Decorazione: una fetta di lime | 1 slice lime-wedge garnish
3 cl di vermut rosso | 3 cl sweet-vermouth
4,5 cl di whisky di segale | 4.5 cl rye-whiskey
uno spruzzo di panna | 1 dash cream
6 cl di succo d'ananas fresco | 6 cl pineapple-juice
un pizzico di sale | 1 pinch salt
circa 10 cl di prosecco | 10 cl prosecco # circa
2 cl di liquore all'arancia (opzionale) | 2 cl orange-liqueur optional
4 spicchi di lime | 4 wedge lime-wedge
zucchero q.b. | - - sugar # to taste
1 cucchiaino di sciroppo d'agave | 1 tsp agave-syrup
mezzo lime | 0.5 each lime
1/2 limone spremuto | 0.5 each lemon # spremuto
3 cl di gin | 3 cl gin
3 cl di bitter | 3 cl red-bitter
2 cl di liquore al caffè | 2 cl coffee-liqueur
1 fetta d'arancia | 1 slice orange-slice
mezza fetta d'arancia | 0.5 slice orange-slice
una fettina di limone | 1 slice lemon-wedge
6 foglioline di menta | 6 leaf mint-leaf
un rametto di rosmarino | 1 sprig rosemary
ghiaccio tritato | - - crushed-ice
un goccio di soda | 1 splash soda-water
una spruzzata di soda | 1 splash soda-water
acqua tonica q.b. | - - tonic-water # to taste
prosecco per colmare | - - prosecco # to top
top di soda | - - soda-water # to top
60 ml di vodka alla vaniglia | 60 ml vanilla-vodka
l'albume di un uovo | 1 each egg-white
il tuorlo di un uovo | 1 each egg-yolk
panna fresca 3 cl | 3 cl cream
noce moscata grattugiata | - - nutmeg
1 parte di gin | 1 part gin
2 parti di succo di limone | 2 part lemon-juice
un pizzico di cannella | 1 pinch cinnamon
cubetti di ghiaccio | - - ice
2 zollette di zucchero | 2 each sugar-cube
7,5 cl di succo di pompelmo rosa | 7.5 cl pink-grapefruit-juice
1 oncia di gin | 1 oz gin
4 cl gin secco | 4 cl london-dry-gin
un cucchiaio e mezzo di zucchero | 1.5 tbsp sugar
due cucchiai e mezzo di miele | 2.5 tbsp honey
1 cucchiaio colmo di zucchero | 1 tbsp sugar # colmo
q.b. zucchero | - - sugar # to taste
4 cl vodka alla vaniglia | 4 cl vanilla-vodka
uno spruzzo di soda | 1 splash soda-water
2 cl di liquore alle erbe | 2 cl herbal-liqueur
1 limone | 1 each lemon
un filo d'olio d'oliva | - - olive-oil # un filo d'
2 o 3 foglie di basilico | 2-3 leaf basil
60 ml di succo di pompelmo fresco | 60 ml grapefruit-juice
3 cl di succo di limone fresco | 3 cl lemon-juice
1 cl di sciroppo d'orzata | 1 cl orgeat
5 cl di vino bianco secco | 5 cl dry-white-wine
2 cucchiaini rasi di zucchero | 2 tsp sugar # rasi
un cucchiaio abbondante di miele | 1 tbsp honey # abbondante
uno spicchio di lime | 1 wedge lime-wedge
mezza arancia | 0.5 each orange
1/2 cetriolo | 0.5 each cucumber
2 foglie di basilico fresco | 2 leaf basil
un ciuffo di menta | 1 sprig mint
una spruzzata di seltz | 1 splash soda-water
soda q.b. | - - soda-water # to taste
acqua gassata a piacere | - - soda-water # to taste
3 gocce di bitter aromatico | 3 drop aromatic-bitters
2 spruzzi di bitter all'arancia | 2 dash orange-bitters
1 tuorlo | 1 each egg-yolk
2 albumi | 2 each egg-white
scorza di limone per guarnire | - - lemon-peel garnish
10 cl di prosecco freddo | 10 cl prosecco # freddo
6 cl di caffè freddo | 6 cl cold-brew-coffee
1 stecca di cannella | 1 each cinnamon-stick
riempire con ghiaccio tritato | - - crushed-ice # to top
100 ml di latte di cocco | 100 ml coconut-milk
4 fragole | 4 each strawberry
una manciata di lamponi | 1 handful raspberry # by the handful
due parti di gin | 2 part gin
1 parte e mezza di rum scuro | 1.5 part dark-rum
30 ml di amaro | 30 ml amaro
2 cucchiaini di zucchero di canna | 2 tsp demerara-sugar
1 cucchiaio di miele d'acacia | 1 tbsp honey
30 ml di caffè espresso appena fatto | 30 ml espresso # appena fatto
panna fresca, 2 cl (non montata) | 2 cl cream # non montata
4,5 cl di bourbon invecchiato 6 anni | 4.5 cl bourbon
4 cl di vodka alla vaniglia | 4 cl vanilla-vodka
un cucchiaino raso di zucchero a velo | 1 tsp icing-sugar # raso
2 cl di sciroppo di fragola fatto in casa | 2 cl strawberry-syrup # fatto in casa
5 foglie di basilico spezzettate | 5 leaf basil # spezzettate
mezza arancia spremuta | 0.5 each orange # spremuta
colmare il bicchiere con acqua tonica | - - tonic-water # to top
1 fetta d'arancia per guarnire | 1 slice orange-slice garnish
9 cl di prosecco DOC | 9 cl prosecco # DOC
sale grosso per bordare | - - salt garnish # rim
3 cl di rum invecchiato 8 anni | 3 cl aged-rum
1 albume (facoltativo) | 1 each egg-white optional
succo di 2 lime | 2 each lime # juice
5 cl di gin tipo London Dry | 5 cl london-dry-gin
2 parti di vermouth rosso e 1 parte di bitter | 2 part sweet-vermouth ; 1 part red-bitter
il succo di un lime intero | 1 each lime # juice, intero
1,5 cl sciroppo di zucchero (1:1) | 1.5 cl simple-syrup
10 cl di ginger beer ghiacciata | 10 cl ginger-beer # ghiacciata
una manciata di foglie di menta | 1 handful mint-leaf # by the handful
qualche goccia di salsa piccante | 3 drop hot-sauce
3 cl di liquore al caffè artigianale | 3 cl coffee-liqueur
ghiaccio tritato q.b. | - - crushed-ice # to taste
2 fragole mature a pezzetti | 2 each strawberry # mature, a pezzetti
1 stecca di cannella per decorare | 1 each cinnamon-stick garnish
mezzo cucchiaino di zenzero grattugiato | 0.5 tsp ginger # grattugiato, by volume
4,5 cl di rum bianco (cubano) | 4.5 cl white-rum
3 cl di vermouth dry | 3 cl dry-vermouth
2 cl di succo di limone filtrato | 2 cl lemon-juice # filtrato
1 cl di liquore alla nocciola | 1 cl hazelnut-liqueur
due gocce di soluzione salina | 2 drop saline-solution
una fettina di zenzero fresco | 1 slice ginger # by the piece
5 cl di tequila reposado | 5 cl reposado-tequila
150 ml di birra chiara | 150 ml lager
4 cl di cognac o brandy | 4 cl cognac = brandy
mezza lattina di cola | 0.5 can cola
1 rametto di rosmarino per decorare | 1 sprig rosemary garnish
3/4 di oncia di succo di lime | 0.75 oz lime-juice
4 more e 2 lamponi | 4 each blackberry ; 2 each raspberry
4 cl di cognac, preferibilmente VSOP | 4 cl cognac # preferibilmente VSOP
bianco di un uovo | 1 each egg-white
10 ml di succo di limone e 10 ml di succo di lime | 10 ml lemon-juice ; 10 ml lime-juice
mezzo cucchiaino di sale | 0.5 tsp salt
la scorza di un'arancia non trattata | 1 each orange # peel, non trattata
8 foglie di basilico (più una per decorare) | 8 leaf basil # più una per decorare
2 cl di sciroppo di zucchero, o più a piacere | 2 cl simple-syrup # o più, to taste
3 cl di panna leggermente montata | 3 cl whipping-cream
2 cl di liquore di ciliegia o maraschino | 2 cl cherry-liqueur = maraschino-liqueur
1 piccola manciata di basilico | 1 handful basil # piccola, by the handful
5 cl di whisky (torbato) | 5 cl smoky-scotch
15 cl di caffè caldo forte | 15 cl coffee # forte
gli albumi di 2 uova | 2 each egg-white
6 cl di rum scuro (8 anni) | 6 cl dark-rum
30 g di zucchero di canna | 30 g demerara-sugar
opzionale: 1 goccia di bitter all'arancia | 1 drop orange-bitters optional
3 cl di liquore ai fiori di sambuco | 3 cl elderflower-liqueur
la buccia di mezzo limone | 0.5 each lemon # peel
prosecco, ben freddo, per colmare | - - prosecco # ben freddo, to top
1 pizzico di sale grosso | 1 pinch salt
2 cl succo limone, filtrato | 2 cl lemon-juice # filtrato
"""

SPANISH = """
50 ml de ron blanco | 50 ml white-rum
20 ml de zumo de lima | 20 ml lime-juice
el zumo de media lima | 0.5 each lime # juice
el zumo de una naranja | 1 each orange # juice
1 cucharada de jarabe de azúcar | 1 tbsp simple-syrup
2 cucharaditas de azúcar | 2 tsp sugar
1 cucharada de miel | 1 tbsp honey
3 gotas de solución salina | 3 drop saline-solution
1 clara de huevo | 1 each egg-white
8 hojas de hierbabuena | 8 leaf mint-leaf
1 ramita de menta | 1 sprig mint
completar con agua con gas | - - soda-water # to top
rellenar con agua tónica | - - tonic-water # to top
Decoración: piel de naranja | - - orange-peel garnish
Adorno: una rodaja de lima | 1 slice lime-wedge garnish
30 ml de vermut rojo | 30 ml sweet-vermouth
1 1/2 onzas de tequila reposado | 1.5 oz reposado-tequila
un chorrito de nata | 1 splash cream
60 ml de zumo de piña recién exprimido | 60 ml pineapple-juice # recién exprimido
una pizca de sal | 1 pinch salt
aproximadamente 100 ml de cava | 100 ml cava # aproximadamente
20 ml de licor de naranja (opcional) | 20 ml orange-liqueur optional
azúcar al gusto | - - sugar # to taste
45 ml de pisco | 45 ml pisco
1 oz de jugo de naranja | 1 oz orange-juice
2 oz de ron blanco | 2 oz white-rum
2 oz de mezcal espadín joven | 2 oz mezcal
1 cda de azúcar | 1 tbsp sugar
2 cdtas de miel | 2 tsp honey
1/2 taza de azúcar | 0.5 cup sugar
3/4 oz de jarabe natural | 0.75 oz simple-syrup
tres cuartos de onza de jugo de piña | 0.75 oz pineapple-juice
unas gotas de solución salina | 3 drop saline-solution
una rama de apio | 1 each celery
sal al gusto | - - salt # to taste
sal para escarchar | - - salt garnish # rim
hielo al gusto | - - ice # to taste
cubos de hielo | - - ice
1 clara | 1 each egg-white
2 rodajas de pepino | 2 slice cucumber-slice
6 hojas de albahaca | 6 leaf basil
1 lima | 1 each lime
media naranja | 0.5 each orange
la piel de una naranja | 1 each orange # peel
1 huevo entero | 1 each egg
60 ml de café espresso | 60 ml espresso
10 cl de cerveza | 10 cl beer
completar con ginger beer | - - ginger-beer # to top
1 parte de ginebra | 1 part gin
dos partes de vermut rojo | 2 part sweet-vermouth
vino blanco 10 cl | 10 cl white-wine
una pizca de nuez moscada rallada | 1 pinch nutmeg
1 cucharadita de azúcar moreno | 1 tsp brown-sugar
100 ml de leche de coco | 100 ml coconut-milk
40 ml ginebra | 40 ml gin
una onza y media de ron añejo | 1.5 oz aged-rum
dos onzas y un cuarto de ron oscuro | 2.25 oz dark-rum
1/4 de cucharadita de sal | 0.25 tsp salt
40 ml de tequila blanca | 40 ml blanco-tequila
el zumo de medio limón | 0.5 each lemon # juice
30 ml de zumo de limón | 30 ml lemon-juice
1 oz de jugo de limón verde | 1 oz lime-juice
2 golpes de bíter de naranja | 2 dash orange-bitters
¾ oz jugo de piña | 0.75 oz pineapple-juice
50 ml ron añejo | 50 ml aged-rum
2 onzas de mezcal joven | 2 oz mezcal
1 onza de licor de café | 1 oz coffee-liqueur
1 1/2 oz de ginebra seca | 1.5 oz london-dry-gin
20 ml zumo de limón natural | 20 ml lemon-juice
30 ml de jugo de toronja fresco | 30 ml grapefruit-juice
1/2 oz de almíbar | 0.5 oz simple-syrup
1 cucharadita de granadina | 1 tsp grenadine
un chorrito de agua con gas | 1 splash soda-water
2 gotas de amargo aromático | 2 drop aromatic-bitters
hojas de menta al gusto | - - mint-leaf # to taste
10 hojas de menta fresca | 10 leaf mint-leaf
1 gajo de lima | 1 wedge lime-wedge
medio pepino | 0.5 each cucumber
1/4 de piña | 0.25 each pineapple
3 rodajas de jengibre | 3 slice ginger # by the piece
1 rama de canela | 1 each cinnamon-stick
clara de 1 huevo | 1 each egg-white
una yema de huevo | 1 each egg-yolk
100 ml de cerveza clara | 100 ml lager
completar con cava bien frío | - - cava # to top, bien frío
rellenar con hielo picado | - - crushed-ice # to top
agua tónica hasta completar | - - tonic-water # to top
twist de naranja para decorar | - - orange-peel garnish
aceituna para decorar | - - olive garnish
sal en el borde | - - salt garnish # rim
90 ml de jugo de tomate | 90 ml tomato-juice
unas gotas de salsa picante | 3 drop hot-sauce
4 fresas maduras | 4 each strawberry # maduras
leche condensada 30 ml | 30 ml condensed-milk
2 golpes de bitter aromático | 2 dash aromatic-bitters
rellenar el vaso con cerveza de jengibre | - - ginger-beer # to top
refresco de toronja, para terminar | - - grapefruit-soda # to top
ron blanco estilo cubano 6 cl | 6 cl white-rum
1 parte de cachaza y 2 partes de pulpa de maracuyá | 1 part cachaca ; 2 part passion-fruit-puree
3 oz jugo de piña natural (no de lata) | 3 oz pineapple-juice # no de lata
50 ml de pisco quebranta | 50 ml pisco
30 ml de sirope de vainilla | 30 ml vanilla-syrup
8 hojas de hierbabuena fresca | 8 leaf mint-leaf
60 ml de tequila 100% agave | 60 ml tequila
top de cerveza de jengibre | - - ginger-beer # to top
1 rodaja de pepino para decorar | 1 slice cucumber-slice garnish
medio limón amarillo exprimido | 0.5 each lemon # exprimido
cuarenta mililitros de ron dorado | 40 ml gold-rum
sal de gusano para el borde del vaso | - - sal-de-gusano garnish # rim
ron añejo 7 años 2 oz | 2 oz aged-rum
llenar la copa con champán frío | - - champagne # to top, frío
2 cdas de azúcar (o al gusto) | 2 tbsp sugar # o, to taste
15 ml licor de triple seco | 15 ml triple-sec
30 ml de jugo de limón verde recién exprimido | 30 ml lime-juice
1 cucharadita rasa de azúcar glas | 1 tsp icing-sugar # rasa
3/4 oz licor de naranja (triple sec) | 0.75 oz orange-liqueur # triple sec
una ramita de romero para decorar | 1 sprig rosemary garnish
5 cl de brandy de Jerez | 5 cl spanish-brandy
hielo picado al gusto | - - crushed-ice # to taste
dos rodajas de jalapeño fresco | 2 slice fresh-chilli # fresco
100 ml de jugo de piña frío (de lata) | 100 ml pineapple-juice # frío, de lata
1 pizca de sal marina | 1 pinch salt
6 a 8 uvas verdes | 6-8 each grape
15 ml de jarabe de jamaica casero | 15 ml hibiscus-syrup # casero
terminar con un chorrito de soda | 1 splash soda-water # to top
1 onza y media de pisco acholado | 1.5 oz pisco
2 cdas soperas de leche condensada | 2 tbsp condensed-milk
media taza de jugo de naranja | 0.5 cup orange-juice
45 ml ron oscuro | 45 ml dark-rum
250 ml de cerveza rubia bien fría | 250 ml lager # bien fría
1 rama de canela para decorar | 1 each cinnamon-stick garnish
4 fresas grandes | 4 each strawberry # grandes
20 ml de licor de café | 20 ml coffee-liqueur
agua tónica, la necesaria | - - tonic-water # la necesaria
un golpe de sifón | 1 splash soda-water
1/2 pepino pelado en rodajas | 0.5 each cucumber # pelado, en rodajas
15 ml de zumo de lima natural | 15 ml lime-juice
ginebra (50 ml) | 50 ml gin
4 cl de coñac, preferiblemente VSOP | 4 cl cognac # preferiblemente VSOP
la clara de un huevo | 1 each egg-white
10 ml de zumo de limón y 10 ml de zumo de lima | 10 ml lemon-juice ; 10 ml lime-juice
4 cl de rye, no bourbon | 4 cl rye-whiskey # no bourbon
media cucharadita de sal | 0.5 tsp salt
la piel de una naranja sin tratar | 1 each orange # peel, sin tratar
8 hojas de albahaca (más una para decorar) | 8 leaf basil # más una para decorar
2 cl de jarabe simple, o más al gusto | 2 cl simple-syrup # o más, to taste
3 cl de nata ligeramente batida | 3 cl whipping-cream
un puñado pequeño de albahaca | 1 handful basil # pequeño, by the handful
5 cl de whisky (ahumado) | 5 cl whisky
medio plátano machacado | 0.5 each banana # machacado
15 cl de café caliente fuerte | 15 cl coffee # fuerte
las claras de 2 huevos | 2 each egg-white
6 cl de ron oscuro (8 años) | 6 cl dark-rum
30 g de azúcar moreno | 30 g brown-sugar
opcional: 1 golpe de bitter de naranja | 1 dash orange-bitters optional
3 cl de licor de flor de saúco | 3 cl elderflower-liqueur
la piel de medio limón amarillo | 0.5 each lemon # peel
cava bien frío para completar | - - cava # bien frío, to top
1 pizca de sal gruesa | 1 pinch salt
2 cl zumo de lima, colado | 2 cl lime-juice # colado
1 hoja de laurel | 1 each bay-leaf
"""

MAY_BE = """
10 cl Mineralwasser | Mineralwasser | soda-water water
4 cl brauner Rum | brauner Rum | dark-rum gold-rum
40 ml Rum, braun | Rum, braun | dark-rum gold-rum
Saft von 2 Limonen | Limonen | lime lemon
1 Limone | Limone | lime lemon
2 TL Rohrzucker | Rohrzucker | demerara-sugar sugar
1 c. à s. de cassonade | cassonade | demerara-sugar brown-sugar
2 cl de crème de coco | crème de coco | cream-of-coconut coconut-cream
10 cl di limonata | limonata | sparkling-lemonade still-lemonade
5 cl rhum blanc | rhum blanc | white-rum rhum-agricole-blanc
2 oz de jugo de limón | jugo de limón | lime-juice lemon-juice
el jugo de 2 limones | limones | lime lemon
1 limón | limón | lime lemon
Decoración: piel de limón | piel de limón | lemon-peel lime-peel
media onza de jarabe de goma | jarabe de goma | gum-syrup simple-syrup
100 ml de agua mineral | agua mineral | water soda-water
25 cl de cidre doux | cidre doux | cider apple-juice
6 cl rhum | rhum | rum rhum-agricole
2 cl di rabarbaro | rabarbaro | rhubarb rhubarb-amaro
2 guindillas | guindillas | fresh-chilli pickled-chilli
"""
"""Words that mean one thing here and another there: asked about, with all that they may be."""

ASKED = """
2 cl würziger Limettensaft
2 cl alkoholfreier Gin
un verre de vin blanc
un soupçon de sel
2 halbe Limetten
jugo, 2 oz
4cl Rye, kein Bourbon
2 Kellen Vanilleeis
ohne Zucker: 3 cl Limettensaft
6 cl de gin infusé au thé
une noix de beurre doux
un pizzico di sale e pepe
succo e scorza di un limone
una punta di cucchiaino di sale
"""
"""Lines that say what one line cannot hold, or what is not known: asked, never guessed."""

ENGLISH = """
2 cl gin
rum
vermouth
menthe
2 oz Sierra Blanca tequila
2 oz Casa Verde blanco tequila
1 oz rum Alte Mole
2 cl crème de cassis
2 oz ron blanco
0.5 oz crème de menthe
2 dashes orange bitters
1 part die-cut orange peel
2 oz gin, on sale at the bar
1 trait of character
2 oz gin o vodka
top with soda
2 oz e-bottle gin
1 oz sirop de gomme
"""
"""Lines that are English, or may as well be: they stay as they are."""
