<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="de" sourcelanguage="en">
<context>
<name>barkeep</name>
<message>
<source> (1 more problem)</source>
<translation> (1 weiteres Problem)</translation>
</message>
<message>
<source> (stand-in)</source>
<translation> (Ersatz)</translation>
</message>
<message>
<source> (still off: {remains})</source>
<translation> (weicht noch ab: {remains})</translation>
</message>
<message>
<source> (what is there gives no more; the rest is bought)</source>
<translation> (mehr gibt nicht her, was da ist; der Rest wird gekauft)</translation>
</message>
<message>
<source> ({more} more problems)</source>
<translation> ({more} weitere Probleme)</translation>
</message>
<message>
<source> ({spare} % more than the drinks take)</source>
<translation> ({spare} % mehr, als die Drinks brauchen)</translation>
</message>
<message>
<source> It is worth {worth:g} as you weigh drinks.</source>
<translation> So wie du die Drinks gewichtest, ist er {worth:g} wert.</translation>
</message>
<message>
<source> It rests {hours}.</source>
<translation> Es ruht {hours}.</translation>
</message>
<message>
<source> Its spec was removed.</source>
<translation> Das Rezept wurde entfernt.</translation>
</message>
<message>
<source> Leave {hours} for it to rest.</source>
<translation> Zum Ruhen {hours} einplanen.</translation>
</message>
<message>
<source> Not there any more, so left out: {gone}.</source>
<translation> Nicht mehr da, darum weggelassen: {gone}.</translation>
</message>
<message>
<source> The shoot was changed since then: saving puts this in its place.</source>
<translation> Der Dreh wurde seitdem geändert: Beim Sichern tritt dies an seine Stelle.</translation>
</message>
<message>
<source> The spec of {names} was removed: its pours are not known.</source>
<translation> Das Rezept von {names} wurde entfernt: Was davon ausgeschenkt wurde, ist nicht bekannt.</translation>
</message>
<message>
<source> There is enough for {most}.</source>
<translation> Es reicht für {most}.</translation>
</message>
<message>
<source> and </source>
<translation> und </translation>
</message>
<message>
<source> and needs no making</source>
<translation> und muss nicht erst gemacht werden</translation>
</message>
<message>
<source> filled to {left:.1f} cm below the brim</source>
<translation>, gefüllt bis {left:.1f} cm unter den Rand</translation>
</message>
<message>
<source> full to the brim</source>
<translation>, randvoll</translation>
</message>
<message>
<source> or </source>
<translation> oder </translation>
</message>
<message>
<source> {bottles} beyond the doubt.</source>
<translation> Mehr als die Unsicherheit: {bottles}.</translation>
</message>
<message>
<source>% vol</source>
<translation>% vol</translation>
</message>
<message>
<source>&amp;About barkeep</source>
<translation>Ü&amp;ber barkeep</translation>
</message>
<message>
<source>&amp;Add a stand-in…</source>
<translation>&amp;Ersatz hinzufügen…</translation>
</message>
<message>
<source>&amp;Add bottle…</source>
<translation>&amp;Flasche hinzufügen…</translation>
</message>
<message>
<source>&amp;Add line</source>
<translation>Zeile &amp;hinzufügen</translation>
</message>
<message>
<source>&amp;Add to the shelf</source>
<translation>Ins &amp;Regal stellen</translation>
</message>
<message>
<source>&amp;Add to the shopping list</source>
<translation>&amp;Auf die Einkaufsliste setzen</translation>
</message>
<message>
<source>&amp;Add {count} to the shelf</source>
<translation>{count} ins &amp;Regal stellen</translation>
</message>
<message>
<source>&amp;Address</source>
<translation>&amp;Adresse</translation>
</message>
<message>
<source>&amp;All cautions…</source>
<translation>&amp;Alle Warnhinweise…</translation>
</message>
<message>
<source>&amp;Always there</source>
<translation>&amp;Immer da</translation>
</message>
<message>
<source>&amp;Answer {asked} first</source>
<translation>Zuerst {asked} &amp;beantworten</translation>
</message>
<message>
<source>&amp;As a wall, or a list</source>
<translation>Als Wand &amp;oder Liste</translation>
</message>
<message>
<source>&amp;As the system</source>
<translation>&amp;Wie das System</translation>
</message>
<message>
<source>&amp;Back</source>
<translation>&amp;Zurück</translation>
</message>
<message>
<source>&amp;Back a page</source>
<translation>Seite &amp;zurück</translation>
</message>
<message>
<source>&amp;Back to the bar as it is</source>
<translation>Zurück zur Bar, wie &amp;sie ist</translation>
</message>
<message>
<source>&amp;Back to the neighbour before	Backspace</source>
<translation>&amp;Zurück zum vorigen Nachbarn	Rücktaste</translation>
</message>
<message>
<source>&amp;Back up…</source>
<translation>Sicherung an&amp;legen…</translation>
</message>
<message>
<source>&amp;Bar</source>
<translation>Ba&amp;r</translation>
</message>
<message>
<source>&amp;Barcode</source>
<translation>Strich&amp;code</translation>
</message>
<message>
<source>&amp;Batch…</source>
<translation>&amp;Ansatz…</translation>
</message>
<message>
<source>&amp;Begin a new bar there</source>
<translation>Dort eine &amp;neue Bar beginnen</translation>
</message>
<message>
<source>&amp;Book of classics</source>
<translation>Buch der Kl&amp;assiker</translation>
</message>
<message>
<source>&amp;Bottles</source>
<translation>&amp;Flaschen</translation>
</message>
<message>
<source>&amp;Bring back</source>
<translation>Zurück&amp;holen</translation>
</message>
<message>
<source>&amp;Bring back…</source>
<translation>Zurück&amp;holen…</translation>
</message>
<message>
<source>&amp;Closeness</source>
<translation>Nä&amp;he</translation>
</message>
<message>
<source>&amp;Contents of the help</source>
<translation>&amp;Inhalt der Hilfe</translation>
</message>
<message>
<source>&amp;Copy as text</source>
<translation>Als Text &amp;kopieren</translation>
</message>
<message>
<source>&amp;Copy details</source>
<translation>&amp;Angaben kopieren</translation>
</message>
<message>
<source>&amp;Copy list</source>
<translation>Liste &amp;kopieren</translation>
</message>
<message>
<source>&amp;Copy publish text</source>
<translation>Text zum Veröffentlichen &amp;kopieren</translation>
</message>
<message>
<source>&amp;Copy report</source>
<translation>Bericht &amp;kopieren</translation>
</message>
<message>
<source>&amp;Copy rows</source>
<translation>&amp;Zeilen kopieren</translation>
</message>
<message>
<source>&amp;Copy text</source>
<translation>Text &amp;kopieren</translation>
</message>
<message>
<source>&amp;Count bottle…</source>
<translation>Flasche &amp;zählen…</translation>
</message>
<message>
<source>&amp;Currency</source>
<translation>&amp;Währung</translation>
</message>
<message>
<source>&amp;Dark</source>
<translation>&amp;Dunkel</translation>
</message>
<message>
<source>&amp;Date</source>
<translation>&amp;Datum</translation>
</message>
<message>
<source>&amp;Day</source>
<translation>&amp;Tag</translation>
</message>
<message>
<source>&amp;Days ahead</source>
<translation>&amp;Tage voraus</translation>
</message>
<message>
<source>&amp;Discard</source>
<translation>&amp;Verwerfen</translation>
</message>
<message>
<source>&amp;Down</source>
<translation>Nach &amp;unten</translation>
</message>
<message>
<source>&amp;Edit</source>
<translation>&amp;Bearbeiten</translation>
</message>
<message>
<source>&amp;Edit spec…</source>
<translation>Rezept &amp;bearbeiten…</translation>
</message>
<message>
<source>&amp;Empty</source>
<translation>Als leer &amp;melden</translation>
</message>
<message>
<source>&amp;Export bottles…</source>
<translation>Flaschen &amp;exportieren…</translation>
</message>
<message>
<source>&amp;File</source>
<translation>&amp;Datei</translation>
</message>
<message>
<source>&amp;Find</source>
<translation>&amp;Suchen</translation>
</message>
<message>
<source>&amp;Forget my recipe</source>
<translation>Mein Rezept &amp;verwerfen</translation>
</message>
<message>
<source>&amp;Forget the chosen one</source>
<translation>Gewählte &amp;vergessen</translation>
</message>
<message>
<source>&amp;Full weight</source>
<translation>&amp;Vollgewicht</translation>
</message>
<message>
<source>&amp;Go on</source>
<translation>&amp;Weiter</translation>
</message>
<message>
<source>&amp;Go on editing</source>
<translation>&amp;Weiter bearbeiten</translation>
</message>
<message>
<source>&amp;Go on looking</source>
<translation>Weite&amp;r ansehen</translation>
</message>
<message>
<source>&amp;Go on repairing</source>
<translation>Weiter &amp;berichtigen</translation>
</message>
<message>
<source>&amp;Help</source>
<translation>&amp;Hilfe</translation>
</message>
<message>
<source>&amp;Help on this</source>
<translation>&amp;Hilfe hierzu</translation>
</message>
<message>
<source>&amp;High contrast</source>
<translation>Hoher &amp;Kontrast</translation>
</message>
<message>
<source>&amp;House pour for</source>
<translation>&amp;Hausmarke für</translation>
</message>
<message>
<source>&amp;How much</source>
<translation>&amp;Wie viel</translation>
</message>
<message>
<source>&amp;Import</source>
<translation>&amp;Importieren</translation>
</message>
<message>
<source>&amp;Import bottles…</source>
<translation>Flaschen &amp;importieren…</translation>
</message>
<message>
<source>&amp;Import {bottles:,} bottle</source>
<translation>{bottles:,} Flasche &amp;importieren</translation>
</message>
<message>
<source>&amp;Import {bottles:,} bottles</source>
<translation>{bottles:,} Flaschen &amp;importieren</translation>
</message>
<message>
<source>&amp;Import {specs:,} spec</source>
<translation>{specs:,} Rezept &amp;importieren</translation>
</message>
<message>
<source>&amp;Import {specs:,} specs</source>
<translation>{specs:,} Rezepte &amp;importieren</translation>
</message>
<message>
<source>&amp;Ingredient</source>
<translation>&amp;Zutat</translation>
</message>
<message>
<source>&amp;Keep counting</source>
<translation>&amp;Weiterzählen</translation>
</message>
<message>
<source>&amp;Keep it as my own recipe</source>
<translation>Als &amp;eigenes Rezept behalten</translation>
</message>
<message>
<source>&amp;Keep writing</source>
<translation>&amp;Weiterschreiben</translation>
</message>
<message>
<source>&amp;Keyboard shortcuts</source>
<translation>&amp;Tastenkürzel</translation>
</message>
<message>
<source>&amp;Language</source>
<translation>&amp;Sprache</translation>
</message>
<message>
<source>&amp;Larger</source>
<translation>&amp;Etwas größer</translation>
</message>
<message>
<source>&amp;Leave the count	Esc</source>
<translation>Zählung &amp;verlassen	Esc</translation>
</message>
<message>
<source>&amp;Left in it</source>
<translation>Noch &amp;darin</translation>
</message>
<message>
<source>&amp;Level</source>
<translation>&amp;Füllstand</translation>
</message>
<message>
<source>&amp;Licences…</source>
<translation>&amp;Lizenzen…</translation>
</message>
<message>
<source>&amp;Light</source>
<translation>&amp;Hell</translation>
</message>
<message>
<source>&amp;Look it over…</source>
<translation>&amp;Prüfen…</translation>
</message>
<message>
<source>&amp;Make something here…</source>
<translation>Etwas selbst ma&amp;chen…</translation>
</message>
<message>
<source>&amp;Maker</source>
<translation>&amp;Hersteller</translation>
</message>
<message>
<source>&amp;More or less</source>
<translation>&amp;Mehr oder weniger</translation>
</message>
<message>
<source>&amp;Name</source>
<translation>&amp;Name</translation>
</message>
<message>
<source>&amp;Name of the bar</source>
<translation>&amp;Name der Bar</translation>
</message>
<message>
<source>&amp;New bar…</source>
<translation>&amp;Neue Bar…</translation>
</message>
<message>
<source>&amp;New ingredient…</source>
<translation>&amp;Neue Zutat…</translation>
</message>
<message>
<source>&amp;New spec…</source>
<translation>&amp;Neues Rezept…</translation>
</message>
<message>
<source>&amp;Next page</source>
<translation>Seite &amp;vor</translation>
</message>
<message>
<source>&amp;Note</source>
<translation>&amp;Notiz</translation>
</message>
<message>
<source>&amp;Note it</source>
<translation>&amp;Notieren</translation>
</message>
<message>
<source>&amp;Notes</source>
<translation>&amp;Notizen</translation>
</message>
<message>
<source>&amp;One dash is</source>
<translation>&amp;Ein Dash ist</translation>
</message>
<message>
<source>&amp;Open</source>
<translation>&amp;Öffnen</translation>
</message>
<message>
<source>&amp;Open another bar…</source>
<translation>&amp;Andere Bar öffnen…</translation>
</message>
<message>
<source>&amp;Open bar…</source>
<translation>Bar ö&amp;ffnen…</translation>
</message>
<message>
<source>&amp;Open the bar</source>
<translation>&amp;Bar öffnen</translation>
</message>
<message>
<source>&amp;Open the new bar</source>
<translation>&amp;Neue Bar öffnen</translation>
</message>
<message>
<source>&amp;Opened</source>
<translation>Geöff&amp;net</translation>
</message>
<message>
<source>&amp;Other names</source>
<translation>&amp;Weitere Namen</translation>
</message>
<message>
<source>&amp;Paid ({currency})</source>
<translation>Be&amp;zahlt ({currency})</translation>
</message>
<message>
<source>&amp;Pars, and what I listed</source>
<translation>&amp;Sollbestände und was ich notiert habe</translation>
</message>
<message>
<source>&amp;Password</source>
<translation>&amp;Passwort</translation>
</message>
<message>
<source>&amp;Paste specs…</source>
<translation>Rezepte &amp;einfügen…</translation>
</message>
<message>
<source>&amp;Pour instead</source>
<translation>Stattdessen &amp;nehmen</translation>
</message>
<message>
<source>&amp;Pour…</source>
<translation>&amp;Einschenken…</translation>
</message>
<message>
<source>&amp;Price</source>
<translation>&amp;Preis</translation>
</message>
<message>
<source>&amp;Print and publish…</source>
<translation>&amp;Drucken und veröffentlichen…</translation>
</message>
<message>
<source>&amp;Product</source>
<translation>&amp;Produkt</translation>
</message>
<message>
<source>&amp;Put the list on the shelf</source>
<translation>&amp;Liste ins Regal stellen</translation>
</message>
<message>
<source>&amp;Quit</source>
<translation>&amp;Beenden</translation>
</message>
<message>
<source>&amp;Rate trials on</source>
<translation>Versuche &amp;bewerten nach</translation>
</message>
<message>
<source>&amp;Ratio</source>
<translation>&amp;Verhältnis</translation>
</message>
<message>
<source>&amp;Read again</source>
<translation>Neu &amp;einlesen</translation>
</message>
<message>
<source>&amp;Read it so</source>
<translation>So &amp;lesen</translation>
</message>
<message>
<source>&amp;Recipe</source>
<translation>&amp;Rezept</translation>
</message>
<message>
<source>&amp;Redo</source>
<translation>&amp;Wiederholen</translation>
</message>
<message>
<source>&amp;Remove par</source>
<translation>Sollbestand &amp;entfernen</translation>
</message>
<message>
<source>&amp;Remove spec</source>
<translation>Rezept &amp;entfernen</translation>
</message>
<message>
<source>&amp;Restore</source>
<translation>&amp;Wiederherstellen</translation>
</message>
<message>
<source>&amp;Restore…</source>
<translation>&amp;Wiederherstellen…</translation>
</message>
<message>
<source>&amp;Save what can be read…</source>
<translation>&amp;Lesbares sichern…</translation>
</message>
<message>
<source>&amp;Scores</source>
<translation>&amp;Bewertungen</translation>
</message>
<message>
<source>&amp;Settings…</source>
<translation>Eins&amp;tellungen…</translation>
</message>
<message>
<source>&amp;Shoot</source>
<translation>&amp;Dreh</translation>
</message>
<message>
<source>&amp;Shopping list…</source>
<translation>E&amp;inkaufsliste…</translation>
</message>
<message>
<source>&amp;Show specs in</source>
<translation>Re&amp;zepte zeigen in</translation>
</message>
<message>
<source>&amp;Show the new one</source>
<translation>Die &amp;neue zeigen</translation>
</message>
<message>
<source>&amp;Size</source>
<translation>&amp;Größe</translation>
</message>
<message>
<source>&amp;Stand-ins</source>
<translation>E&amp;rsatz</translation>
</message>
<message>
<source>&amp;Starts at</source>
<translation>&amp;Beginn um</translation>
</message>
<message>
<source>&amp;Stop</source>
<translation>&amp;Anhalten</translation>
</message>
<message>
<source>&amp;Stop looking</source>
<translation>Suche &amp;abbrechen</translation>
</message>
<message>
<source>&amp;Strength</source>
<translation>Alk&amp;oholgehalt</translation>
</message>
<message>
<source>&amp;Take it as it is</source>
<translation>&amp;So übernehmen</translation>
</message>
<message>
<source>&amp;Tasters</source>
<translation>Ver&amp;koster</translation>
</message>
<message>
<source>&amp;Template</source>
<translation>&amp;Vorlage</translation>
</message>
<message>
<source>&amp;Theme</source>
<translation>&amp;Aussehen</translation>
</message>
<message>
<source>&amp;Theme</source>
<comment>of a shoot</comment>
<translation>T&amp;hema</translation>
</message>
<message>
<source>&amp;Tick what you own</source>
<translation>Ankreuzen, &amp;was du hast</translation>
</message>
<message>
<source>&amp;Try again</source>
<translation>&amp;Erneut versuchen</translation>
</message>
<message>
<source>&amp;Twice as large</source>
<translation>&amp;Doppelt so groß</translation>
</message>
<message>
<source>&amp;Undo</source>
<translation>&amp;Rückgängig</translation>
</message>
<message>
<source>&amp;Untick all</source>
<translation>Alle Kreuze &amp;entfernen</translation>
</message>
<message>
<source>&amp;Up</source>
<translation>Nach &amp;oben</translation>
</message>
<message>
<source>&amp;Use by</source>
<translation>H&amp;altbar bis</translation>
</message>
<message>
<source>&amp;Use this row</source>
<translation>Diese Zeile ver&amp;wenden</translation>
</message>
<message>
<source>&amp;Use up what goes off</source>
<translation>Aufbrauchen, was bald verdir&amp;bt</translation>
</message>
<message>
<source>&amp;View</source>
<translation>&amp;Ansicht</translation>
</message>
<message>
<source>&amp;Waste…</source>
<translation>Als Verl&amp;ust buchen…</translation>
</message>
<message>
<source>&amp;Weight</source>
<translation>&amp;Gewicht</translation>
</message>
<message>
<source>&amp;What</source>
<translation>&amp;Was</translation>
</message>
<message>
<source>&amp;What if…</source>
<translation>Wa&amp;s wäre wenn…</translation>
</message>
<message>
<source>&amp;What is left</source>
<translation>&amp;Was noch da ist</translation>
</message>
<message>
<source>&amp;What to print</source>
<translation>&amp;Was gedruckt wird</translation>
</message>
<message>
<source>&amp;Where they are kept…</source>
<translation>&amp;Ort der Sicherungen…</translation>
</message>
<message>
<source>&amp;Why</source>
<translation>&amp;Warum</translation>
</message>
<message>
<source>&amp;Work it out</source>
<translation>Bere&amp;chnen</translation>
</message>
<message>
<source>&amp;Write it there again</source>
<translation>&amp;Wieder dorthin schreiben</translation>
</message>
<message>
<source>&amp;Write the log</source>
<translation>Protokoll &amp;schreiben</translation>
</message>
<message>
<source>&amp;Write to a file…</source>
<translation>In &amp;Datei schreiben…</translation>
</message>
<message>
<source>&amp;at</source>
<translation>be&amp;i</translation>
</message>
<message>
<source>&amp;on</source>
<translation>&amp;am</translation>
</message>
<message>
<source>, and </source>
<translation> und </translation>
</message>
<message>
<source>, as a stand-in</source>
<translation>, als Ersatz</translation>
</message>
<message>
<source>, by your own entry</source>
<translation>, nach deinem eigenen Eintrag</translation>
</message>
<message>
<source>, empty, since nothing that goes in it has an amount</source>
<translation>, leer, weil nichts darin eine Menge hat</translation>
</message>
<message>
<source>, in place of {wanted}</source>
<translation>, anstelle von {wanted}</translation>
</message>
<message>
<source>, or paste </source>
<translation>, oder übernimm </translation>
</message>
<message>
<source>, spilled {amount}</source>
<translation>, verschüttet {amount}</translation>
</message>
<message>
<source>, the outermost tenth left out at either end</source>
<translation>, ohne das äußerste Zehntel an beiden Enden</translation>
</message>
<message>
<source>, then </source>
<translation>, dann </translation>
</message>
<message>
<source>, then {hours} to stand</source>
<translation>, dann {hours} stehen lassen</translation>
</message>
<message>
<source>, to go into {drink}</source>
<translation>, für {drink}</translation>
</message>
<message>
<source>, use by {use_by}</source>
<translation>, haltbar bis {use_by}</translation>
</message>
<message>
<source>, which takes a stand-in</source>
<translation>, mit einem Ersatz</translation>
</message>
<message>
<source>, {abv_percent:.1f} % vol</source>
<translation>, {abv_percent:.1f} % vol</translation>
</message>
<message>
<source>, {colours} from the bottom up</source>
<translation>, von unten nach oben {colours}</translation>
</message>
<message>
<source>, {drinks:.1f} standard drinks a serve</source>
<translation>, {drinks:.1f} Standarddrinks je Portion</translation>
</message>
<message>
<source>, {ratio:.2g} times as much</source>
<translation>, davon {ratio:.2g}-mal so viel</translation>
</message>
<message>
<source>, {ratio:.3g} times as much</source>
<translation>, {ratio:.3g}-mal so viel</translation>
</message>
<message>
<source>, {ratio:g} times as much</source>
<translation>, {ratio:g}-mal so viel</translation>
</message>
<message>
<source>, {undecided} of them not counted</source>
<translation>, davon {undecided} nicht gezählt</translation>
</message>
<message>
<source>0 or 1</source>
<translation>0 oder 1</translation>
</message>
<message>
<source>0 or more</source>
<translation>0 oder mehr</translation>
</message>
<message>
<source>0 or more, beside each tare</source>
<translation>0 oder mehr, neben jedem Leergewicht</translation>
</message>
<message>
<source>0 to 10,000,000</source>
<translation>0 bis 10.000.000</translation>
</message>
<message>
<source>0 to 100</source>
<translation>0 bis 100</translation>
</message>
<message>
<source>1 counted bottle is not confirmed yet.</source>
<translation>1 gezählte Flasche ist noch nicht bestätigt.</translation>
</message>
<message>
<source>1 found</source>
<translation>1 gefunden</translation>
</message>
<message>
<source>1 line runs out</source>
<translation>1 Zeile reicht nicht</translation>
</message>
<message>
<source>1 line understood</source>
<translation>1 Zeile verstanden</translation>
</message>
<message>
<source>1 package is in the bar</source>
<translation>1 Packung ist in der Bar</translation>
</message>
<message>
<source>1 part = {size}</source>
<translation>1 Teil = {size}</translation>
</message>
<message>
<source>1 problem</source>
<translation>1 Problem</translation>
</message>
<message>
<source>1 question</source>
<translation>1 Frage</translation>
</message>
<message>
<source>1 row is copied</source>
<translation>1 Zeile ist kopiert</translation>
</message>
<message>
<source>1 tenth</source>
<translation>1 Zehntel</translation>
</message>
<message>
<source>1 thing goes off {within}, and no drink uses any of it.</source>
<translation>1 Flasche ist {within} aufzubrauchen, und kein Drink verbraucht etwas davon.</translation>
</message>
<message>
<source>2 tenths</source>
<translation>2 Zehntel</translation>
</message>
<message>
<source>21 CFR 172.575 (at most 83 parts per million, declared)</source>
<translation>21 CFR 172.575 (höchstens 83 Teile je Million, gekennzeichnet)</translation>
</message>
<message>
<source>21 CFR 172.575 limits quinine in carbonated drinks to 83 parts per million</source>
<translation>21 CFR 172.575 begrenzt Chinin in kohlensäurehaltigen Getränken auf 83 Teile je Million</translation>
</message>
<message>
<source>21 CFR 189.110 (calamus) and 189.180 (safrole)</source>
<translation>21 CFR 189.110 (Kalmus) und 189.180 (Safrol)</translation>
</message>
<message>
<source>21 CFR 189.130</source>
<translation>21 CFR 189.130</translation>
</message>
<message>
<source>26 USC 5601 and 27 CFR 19.51, a US federal crime</source>
<translation>26 USC 5601 und 27 CFR 19.51, nach US-Bundesrecht eine Straftat</translation>
</message>
<message>
<source>27 CFR 16.21, the US health warning</source>
<translation>27 CFR 16.21, der US-Gesundheitshinweis</translation>
</message>
<message>
<source>3 tenths</source>
<translation>3 Zehntel</translation>
</message>
<message>
<source>4 tenths</source>
<translation>4 Zehntel</translation>
</message>
<message>
<source>5 tenths</source>
<translation>5 Zehntel</translation>
</message>
<message>
<source>500 g sugar
500 ml water</source>
<translation>500 g sugar
500 ml water</translation>
</message>
<message>
<source>6 tenths</source>
<translation>6 Zehntel</translation>
</message>
<message>
<source>7 tenths</source>
<translation>7 Zehntel</translation>
</message>
<message>
<source>8 tenths</source>
<translation>8 Zehntel</translation>
</message>
<message>
<source>812 g, 11.5 cm, 315 ml</source>
<translation>812 g, 11.5 cm, 315 ml</translation>
</message>
<message>
<source>9 tenths</source>
<translation>9 Zehntel</translation>
</message>
<message>
<source>: no {named} is there, so get some</source>
<translation>: von {named} ist nichts da, also besorgen</translation>
</message>
<message>
<source>: {parts}</source>
<translation> ({parts})</translation>
</message>
<message>
<source>; 1 more fault</source>
<translation>; 1 weiterer Fehler</translation>
</message>
<message>
<source>; expected {amount}</source>
<translation>; erwartet {amount}</translation>
</message>
<message>
<source>; it is low</source>
<translation>; sie ist fast leer</translation>
</message>
<message>
<source>; not counted until understood: {asked}</source>
<translation>; nicht gezählt, bis sie verstanden sind: {asked}</translation>
</message>
<message>
<source>; the nearest are {countries}</source>
<translation>; am nächsten sind {countries}</translation>
</message>
<message>
<source>; the nearest is {country}</source>
<translation>; am nächsten ist {country}</translation>
</message>
<message>
<source>; what is left is too little</source>
<translation>; was noch da ist, reicht nicht</translation>
</message>
<message>
<source>; what is left of it is too little</source>
<translation>; was davon noch da ist, reicht nicht</translation>
</message>
<message>
<source>; {names} was there already</source>
<translation>; {names} war schon da</translation>
</message>
<message>
<source>; {names} were there already</source>
<translation>; {names} waren schon da</translation>
</message>
<message>
<source>; {old} of the plan was on it already</source>
<translation>; {old} aus dem Plan stand schon darauf</translation>
</message>
<message>
<source>; {old} of the plan were on it already</source>
<translation>; {old} aus dem Plan standen schon darauf</translation>
</message>
<message>
<source>; {others} more faults</source>
<translation>; {others} weitere Fehler</translation>
</message>
<message>
<source>A &amp;dash is</source>
<translation>Ein &amp;Dash ist</translation>
</message>
<message>
<source>A &amp;kind of</source>
<translation>Eine Ar&amp;t von</translation>
</message>
<message>
<source>A charged siphon can burst: fill it to its line at most, use only the chargers made for it, vent it before opening, never breathe the gas. Its maker's instructions and local law come first.</source>
<translation>Ein geladener Siphon kann bersten: höchstens bis zur Markierung füllen, nur die dafür gemachten Kapseln verwenden, vor dem Öffnen entlüften, das Gas nie einatmen. Die Anleitung des Herstellers und örtliches Recht gehen vor.</translation>
</message>
<message>
<source>A classic that barkeep brings along. To change it, write a riff of it.</source>
<translation>Ein Klassiker, den barkeep mitbringt. Um ihn zu ändern, schreibe eine Abwandlung davon.</translation>
</message>
<message>
<source>A command, drink, bottle, ingredient or shoot…</source>
<translation>Befehl, Drink, Flasche, Zutat oder Dreh…</translation>
</message>
<message>
<source>A copy to try everything on. Nothing of it is kept, and your bar stays as it is.</source>
<translation>Eine Kopie, um alles auszuprobieren. Nichts davon bleibt, und deine Bar bleibt, wie sie ist.</translation>
</message>
<message>
<source>A count was begun on {when} and is not written down yet.</source>
<translation>Eine Zählung, begonnen am {when}, noch nicht eingetragen.</translation>
</message>
<message>
<source>A cream liqueur brings alcohol, sugar and flavour; cream brings only body.</source>
<translation>Ein Sahnelikör bringt Alkohol, Zucker und Geschmack; Sahne bringt nur Körper.</translation>
</message>
<message>
<source>A dash is what the bar means by one, {dash_ml:g} ml.</source>
<translation>Ein Dash ist, was die Bar darunter versteht: {dash_ml:g} ml.</translation>
</message>
<message>
<source>A desktop entry</source>
<translation>Ein Eintrag im Startmenü</translation>
</message>
<message>
<source>A digit for the tenths that are left, or Enter for ml, a weight or a height; nothing is written before you confirm</source>
<translation>Eine Ziffer für die Zehntel, die noch da sind, oder Enter für ml, ein Gewicht oder eine Höhe; geschrieben wird erst, wenn du bestätigst</translation>
</message>
<message>
<source>A dirty drink is dirty with brine; oil floats on it.</source>
<translation>„Dirty“ wird ein Drink durch Lake; Öl schwimmt obenauf.</translation>
</message>
<message>
<source>A drink of the book…</source>
<translation>Ein Drink aus dem Buch…</translation>
</message>
<message>
<source>A drinking shrub is sour with vinegar; as a syrup it doubles the acid of the drink.</source>
<translation>Ein Trinkshrub ist sauer von Essig; als Sirup verdoppelt er die Säure des Drinks.</translation>
</message>
<message>
<source>A family, which no line asks for</source>
<translation>Eine Familie, die keine Zeile verlangt</translation>
</message>
<message>
<source>A kind of</source>
<translation>Eine Art von</translation>
</message>
<message>
<source>A line for each drink, which can be sorted (Ctrl+G)</source>
<translation>Eine Zeile je Drink, sortierbar (Strg+G)</translation>
</message>
<message>
<source>A line for maraschino in ml means the liqueur; maraschino cherries are a garnish.</source>
<translation>Eine Zeile mit Maraschino in ml meint den Likör; Maraschinokirschen sind eine Garnitur.</translation>
</message>
<message>
<source>A line of --- or two blank lines begin another spec; several can be pasted at once.</source>
<translation>Eine Zeile aus --- oder zwei Leerzeilen beginnen ein weiteres Rezept; es lassen sich mehrere auf einmal einfügen.</translation>
</message>
<message>
<source>A list of bottles was left on {when} and is not on the shelf yet.</source>
<translation>Eine Liste von Flaschen blieb am {when} liegen und steht noch nicht im Regal.</translation>
</message>
<message>
<source>A new ingredient, a kind of one that is known</source>
<translation>Eine neue Zutat, eine Art einer bekannten</translation>
</message>
<message>
<source>A new shoot</source>
<translation>Ein neuer Dreh</translation>
</message>
<message>
<source>A par is the least you want to have of something. What is below it comes on the list.</source>
<translation>Ein Sollbestand ist das, was du mindestens dahaben willst. Was darunter liegt, kommt auf die Liste.</translation>
</message>
<message>
<source>A plan</source>
<translation>Ein Plan</translation>
</message>
<message>
<source>A pour</source>
<translation>Je Drink</translation>
</message>
<message>
<source>A product needs a name.</source>
<translation>Ein Produkt braucht einen Namen.</translation>
</message>
<message>
<source>A setting is about “{key}”, which is no ingredient.</source>
<translation>Eine Einstellung betrifft „{key}“, und das ist keine Zutat.</translation>
</message>
<message>
<source>A share of the bottle, a volume, its weight with what is in it but without its cap, or the height of the liquid above the table.</source>
<translation>Ein Anteil der Flasche, ein Volumen, ihr Gewicht mit Inhalt, aber ohne Verschluss, oder die Höhe der Flüssigkeit über dem Tisch.</translation>
</message>
<message>
<source>A shoot is a theme, a day, and drinks in running order</source>
<translation>Ein Dreh ist ein Thema, ein Tag und Drinks in ihrer Reihenfolge</translation>
</message>
<message>
<source>A single measure: stubby, with thick glass and a short neck</source>
<translation>Für eine einzelne Portion: gedrungen, mit dickem Glas und kurzem Hals</translation>
</message>
<message>
<source>A spec is found that</source>
<translation>Gefunden wird ein Rezept, das</translation>
</message>
<message>
<source>A spec is plain text: its name, then one ingredient a line</source>
<translation>Ein Rezept ist einfacher Text: erst der Name, dann je Zeile eine Zutat</translation>
</message>
<message>
<source>A spec that says no more than {name} pours it first where it suits the drink, in place of {before}.</source>
<translation>Ein Rezept, das nicht mehr als {name} sagt, nimmt sie zuerst, wo sie zum Drink passt, anstelle von {before}.</translation>
</message>
<message>
<source>A spec that says no more than {name} pours it first where it suits the drink.</source>
<translation>Ein Rezept, das nicht mehr als {name} sagt, nimmt sie zuerst, wo sie zum Drink passt.</translation>
</message>
<message>
<source>A spec that says no more than {name} pours it first, in place of {before}.</source>
<translation>Ein Rezept, das nicht mehr als {name} sagt, nimmt sie zuerst, anstelle von {before}.</translation>
</message>
<message>
<source>A spec that says no more than {name} pours it first.</source>
<translation>Ein Rezept, das nicht mehr als {name} sagt, nimmt sie zuerst.</translation>
</message>
<message>
<source>A stand-in for this is known already; what you write here takes its place.</source>
<translation>Ein solcher Ersatz ist schon bekannt; was du hier schreibst, tritt an seine Stelle.</translation>
</message>
<message>
<source>A stand-in or choice of bottle brings in {allergens}.</source>
<translation>Ein Ersatz oder die gewählte Flasche bringt neu hinein: {allergens}.</translation>
</message>
<message>
<source>A team keeps its bar in a database of a PostgreSQL server, where all of them see each other’s changes at once.</source>
<translation>Ein Team führt seine Bar in einer Datenbank auf einem PostgreSQL-Server; dort sehen alle sofort, was die anderen ändern.</translation>
</message>
<message>
<source>A usual pour</source>
<translation>Übliche Menge</translation>
</message>
<message>
<source>A volume in all</source>
<translation>Ein Volumen insgesamt</translation>
</message>
<message>
<source>A wire holds a stopper with a rubber ring: syrups, cordials and whatever is made here</source>
<translation>Ein Bügel hält einen Stopfen mit Gummiring: Sirupe, Cordials und alles selbst Gemachte</translation>
</message>
<message>
<source>A word with a colon that is none of these is looked for as it stands, and so is what stands in quotation marks. A line that is not understood is no proof that a drink is without anything.</source>
<translation>Ein Wort mit Doppelpunkt, das keines davon ist, wird gesucht, wie es dasteht, ebenso was in Anführungszeichen steht. Eine nicht verstandene Zeile beweist nicht, dass ein Drink ohne etwas ist.</translation>
</message>
<message>
<source>A {vessel} has no room for so much ice. Use less.</source>
<translation>Für so viel Eis ist kein Platz ({vessel}). Nimm weniger.</translation>
</message>
<message>
<source>A {vessel} of this size ({room:.0f} % left free {why})</source>
<translation>{vessel} dieser Größe ({room:.0f} % bleiben frei {why})</translation>
</message>
<message>
<source>A {volume}</source>
<translation>{volume}</translation>
</message>
<message>
<source>A&amp;ccept</source>
<translation>&amp;Annehmen</translation>
</message>
<message>
<source>A&amp;llergens</source>
<translation>A&amp;llergene</translation>
</message>
<message>
<source>A&amp;mount</source>
<translation>&amp;Menge</translation>
</message>
<message>
<source>About &amp;Qt</source>
<translation>Über &amp;Qt</translation>
</message>
<message>
<source>About barkeep</source>
<translation>Über barkeep</translation>
</message>
<message>
<source>About {much} from {inputs}. {how}</source>
<translation>Etwa {much} aus {inputs}. {how}</translation>
</message>
<message>
<source>Aci&amp;d</source>
<translation>&amp;Säure</translation>
</message>
<message>
<source>Acid</source>
<translation>Säure</translation>
</message>
<message>
<source>Activated charcoal takes up medicines, the contraceptive pill among them, and is no approved food colour in the United States: tell guests first; a pharmacist and local food rules decide.</source>
<translation>Aktivkohle bindet Medikamente, auch die Antibabypille, und ist in den Vereinigten Staaten kein zugelassener Lebensmittelfarbstoff: Gäste vorher darauf hinweisen; Apotheke und örtliche Lebensmittelvorschriften entscheiden.</translation>
</message>
<message>
<source>Add</source>
<translation>Hinzufügen</translation>
</message>
<message>
<source>Add a bottle</source>
<translation>Eine Flasche hinzufügen</translation>
</message>
<message>
<source>Add a stand-in for {wanted}</source>
<translation>Ersatz für {wanted} hinzufügen</translation>
</message>
<message>
<source>Add a stand-in…</source>
<translation>Ersatz hinzufügen…</translation>
</message>
<message>
<source>Add a trial…</source>
<translation>Versuch hinzufügen…</translation>
</message>
<message>
<source>Add another</source>
<translation>Noch eine hinzufügen</translation>
</message>
<message>
<source>Add bottle</source>
<translation>Flasche hinzufügen</translation>
</message>
<message>
<source>Add bottle…</source>
<translation>Flasche hinzufügen…</translation>
</message>
<message>
<source>Add ingredient</source>
<translation>Zutat hinzufügen</translation>
</message>
<message>
<source>Add stand-in</source>
<translation>Ersatz hinzufügen</translation>
</message>
<message>
<source>Add the &amp;whole plan to it</source>
<translation>Den &amp;ganzen Plan daraufsetzen</translation>
</message>
<message>
<source>Add the name</source>
<translation>Namen hinzufügen</translation>
</message>
<message>
<source>Add the whole plan</source>
<translation>Ganzen Plan hinzufügen</translation>
</message>
<message>
<source>Add to a s&amp;hoot…</source>
<translation>Zu einem &amp;Dreh hinzufügen…</translation>
</message>
<message>
<source>Add to a shoot</source>
<translation>Zu einem Dreh hinzufügen</translation>
</message>
<message>
<source>Added</source>
<translation>Hinzugefügt</translation>
</message>
<message>
<source>Added at the end: {names}.</source>
<translation>Am Ende kommt hinzu: {names}.</translation>
</message>
<message>
<source>Added {names} to {theme}</source>
<translation>{names} zu {theme} hinzugefügt</translation>
</message>
<message>
<source>Added {said}</source>
<translation>{said} hinzugefügt</translation>
</message>
<message>
<source>Added {title}</source>
<translation>{title} hinzugefügt</translation>
</message>
<message>
<source>After a blank line comes the method.</source>
<translation>Nach einer Leerzeile kommt die Zubereitung.</translation>
</message>
<message>
<source>After {riff_of}</source>
<translation>Nach {riff_of}</translation>
</message>
<message>
<source>After {serves}</source>
<translation>Nach {serves}</translation>
</message>
<message>
<source>After {serves}: {said}</source>
<translation>Nach {serves}: {said}</translation>
</message>
<message>
<source>Agave on a spec may mean the syrup or a spirit: one sweetens, the other is the strength of the drink.</source>
<translation>Agave kann in einem Rezept den Sirup oder einen Brand meinen: Der eine süßt, der andere bringt dem Drink den Alkohol.</translation>
</message>
<message>
<source>Agricole is grassy cane-juice rum; spiced rum is sweetened and tastes of vanilla.</source>
<translation>Agricole ist grasiger Rum aus Zuckerrohrsaft; Spiced Rum ist gesüßt und schmeckt nach Vanille.</translation>
</message>
<message>
<source>Ahead</source>
<translation>Anstehend</translation>
</message>
<message>
<source>Alcohol</source>
<translation>Alkohol</translation>
</message>
<message>
<source>Alcohol and many medicines do not mix: whoever takes any should ask a doctor or pharmacist.</source>
<translation>Alkohol und viele Medikamente vertragen sich nicht: Wer welche nimmt, sollte in einer Arztpraxis oder Apotheke fragen.</translation>
</message>
<message>
<source>Alcohol harms: never before you drive, when pregnant, below the legal drinking age or with medicines; local rules first.</source>
<translation>Alkohol schadet: nie vor dem Fahren, nie in der Schwangerschaft, nie unter dem gesetzlichen Mindestalter und nie zusammen mit Medikamenten; örtliche Vorschriften gehen vor.</translation>
</message>
<message>
<source>Alcohol-free, under 0.5 % vol</source>
<translation>Alkoholfrei, unter 0,5 % vol</translation>
</message>
<message>
<source>All</source>
<translation>Alle</translation>
</message>
<message>
<source>All bottles are written to {file}</source>
<translation>Alle Flaschen stehen in {file}</translation>
</message>
<message>
<source>All cautions</source>
<translation>Alle Warnhinweise</translation>
</message>
<message>
<source>All counts are thrown away; nothing was written</source>
<translation>Alle Zählungen sind verworfen; geschrieben wurde nichts</translation>
</message>
<message>
<source>All is rounded down, so that it comes to no more than {most}.</source>
<translation>Alles ist abgerundet, damit es nicht mehr als {most} ergibt.</translation>
</message>
<message>
<source>All of it is added over the ice; what that melts is not counted.</source>
<translation>Alles wird auf das Eis gegossen; was dabei schmilzt, ist nicht gezählt.</translation>
</message>
<message>
<source>All that was saved is on the server; Bar ▸ Check this bar looks it over</source>
<translation>Alles Gesicherte ist auf dem Server; Bar ▸ Bar prüfen sieht es durch</translation>
</message>
<message>
<source>All {specs:,}</source>
<translation>Alle {specs:,}</translation>
</message>
<message>
<source>Aller&amp;gens</source>
<translation>Aller&amp;gene</translation>
</message>
<message>
<source>Allergens</source>
<translation>Allergene</translation>
</message>
<message>
<source>Allergens: {allergens}.</source>
<translation>Allergene: {allergens}.</translation>
</message>
<message>
<source>Almond extract is used by the drop; orgeat is a syrup poured by the measure.</source>
<translation>Mandelextrakt nimmt man tropfenweise; Orgeat ist ein Sirup, den man mit dem Barmaß abmisst.</translation>
</message>
<message>
<source>Almond milk is thin and barely sweet; orgeat is a syrup.</source>
<translation>Mandelmilch ist dünn und kaum süß; Orgeat ist ein Sirup.</translation>
</message>
<message>
<source>Also close stand-ins, 0.8 and better</source>
<translation>Auch naher Ersatz, 0.8 und besser</translation>
</message>
<message>
<source>Also in this text</source>
<translation>Auch in diesem Text</translation>
</message>
<message>
<source>Also loose stand-ins, 0.6 and better</source>
<translation>Auch entfernter Ersatz, 0.6 und besser</translation>
</message>
<message>
<source>Also what cannot be made</source>
<translation>Auch, was nicht machbar ist</translation>
</message>
<message>
<source>Americano is an aromatised wine, and a drink made with red bitter; the bottle of that name is not the bitter.</source>
<translation>Americano ist ein aromatisierter Wein und ein Drink mit rotem Bitter; die Flasche dieses Namens ist nicht der Bitter.</translation>
</message>
<message>
<source>Among {family} it is {off} than usual, but {same}.</source>
<translation>Unter {family} ist er {off} als üblich, aber {same}.</translation>
</message>
<message>
<source>Among {family} it is {off} than usual.</source>
<translation>Unter {family} ist er {off} als üblich.</translation>
</message>
<message>
<source>Among {family} it is {same} as usual.</source>
<translation>Unter {family} ist er {same} wie üblich.</translation>
</message>
<message>
<source>Amount</source>
<translation>Menge</translation>
</message>
<message>
<source>An &amp;ounce is</source>
<translation>Eine &amp;Unze ist</translation>
</message>
<message>
<source>An amount, or so many bottles: 1.4 l, 12, 2 bottles.</source>
<translation>Eine Menge oder so viele Flaschen: 1.4 l, 12, 2 bottles.</translation>
</message>
<message>
<source>An energy drink holds much caffeine; with alcohol it hides how drunk one is. Not for children, nor in pregnancy; with a heart condition ask a doctor.</source>
<translation>Ein Energydrink enthält viel Koffein; mit Alkohol verdeckt es, wie betrunken man ist. Nicht für Kinder und nicht in der Schwangerschaft; bei einem Herzleiden ärztlichen Rat holen.</translation>
</message>
<message>
<source>An {volume}</source>
<translation>{volume}</translation>
</message>
<message>
<source>And more</source>
<translation>Und mehr</translation>
</message>
<message>
<source>Anisette is a liqueur; pastis is nearly dry, tastes of liquorice and is poured with water.</source>
<translation>Anisette ist ein Likör; Pastis ist fast trocken, schmeckt nach Lakritz und wird mit Wasser aufgegossen.</translation>
</message>
<message>
<source>Anisette is very sweet and less than half as strong; a rinse of absinthe is neither.</source>
<translation>Anisette ist sehr süß und weniger als halb so stark; ein Hauch Absinth zum Ausschwenken ist keines von beiden.</translation>
</message>
<message>
<source>Another &amp;bottle…</source>
<translation>Weitere &amp;Flasche…</translation>
</message>
<message>
<source>Another &amp;list</source>
<translation>Noch eine &amp;Liste</translation>
</message>
<message>
<source>Another bottle</source>
<translation>Eine andere Flasche</translation>
</message>
<message>
<source>Another file lies in the place of {file} since it was opened. What is shown is still the bar that was opened, and nothing can be written to it.</source>
<translation>An der Stelle von {file} liegt eine andere Datei als beim Öffnen. Gezeigt wird weiter die Bar, die geöffnet wurde; schreiben lässt sich nichts in sie.</translation>
</message>
<message>
<source>Another name</source>
<translation>Anderer Name</translation>
</message>
<message>
<source>Another name for an ingredient that is known</source>
<translation>Ein anderer Name für eine bekannte Zutat</translation>
</message>
<message>
<source>Another name…</source>
<translation>Anderer Name…</translation>
</message>
<message>
<source>Another window or a command has changed {what}</source>
<translation>Ein anderes Fenster oder ein Befehl hat inzwischen etwas geändert: {what}</translation>
</message>
<message>
<source>Another window or a command has changed {what} since you began, so nothing was written. {told}.</source>
<translation>Ein anderes Fenster oder ein Befehl hat {what} geändert, seit du begonnen hast; es wurde nichts geschrieben. {told}.</translation>
</message>
<message>
<source>Another window or a command has removed {what} since you began, so nothing was written. Undo may bring it back.</source>
<translation>Ein anderes Fenster oder ein Befehl hat {what} entfernt, seit du begonnen hast; es wurde nichts geschrieben. Rückgängig kann es zurückholen.</translation>
</message>
<message>
<source>Any base</source>
<translation>Jede Basis</translation>
</message>
<message>
<source>Any round bottle whose own shape nobody has looked up: between tall and squat</source>
<translation>Jede runde Flasche, deren Form niemand nachgeschlagen hat: zwischen hoch und gedrungen</translation>
</message>
<message>
<source>Any strength</source>
<translation>Jede Stärke</translation>
</message>
<message>
<source>Any tag</source>
<translation>Jedes Schlagwort</translation>
</message>
<message>
<source>Any wine bottle whose own shape nobody has looked up: between high and sloping shoulders</source>
<translation>Jede Weinflasche, deren Form niemand nachgeschlagen hat: zwischen hohen und abfallenden Schultern</translation>
</message>
<message>
<source>Anyone's</source>
<translation>Von allen</translation>
</message>
<message>
<source>Apart</source>
<translation>Einzeln</translation>
</message>
<message>
<source>Apple cider and apple cider vinegar differ by a word; the vinegar is five per cent acetic acid.</source>
<translation>Apple Cider und Apple Cider Vinegar unterscheidet ein Wort; der Essig enthält fünf Prozent Essigsäure.</translation>
</message>
<message>
<source>Apple cider is unfermented juice in the United States and an alcoholic drink in Britain.</source>
<translation>Apple Cider ist in den Vereinigten Staaten unvergorener Saft und in Großbritannien ein alkoholisches Getränk.</translation>
</message>
<message>
<source>Apple liqueur is sweet and half as strong; apple brandy is a dry spirit.</source>
<translation>Apfellikör ist süß und halb so stark; Apfelbrand ist ein trockener Brand.</translation>
</message>
<message>
<source>Apr</source>
<translation>Apr.</translation>
</message>
<message>
<source>Apricot brandy on a spec is a liqueur, not a brandy.</source>
<translation>Apricot Brandy in einem Rezept ist ein Likör, kein Brandy.</translation>
</message>
<message>
<source>Apricot brandy on a spec is a sweet liqueur; the eau-de-vie is dry and nearly twice as strong.</source>
<translation>Apricot Brandy in einem Rezept ist ein süßer Likör; der Obstbrand ist trocken und fast doppelt so stark.</translation>
</message>
<message>
<source>April</source>
<translation>April</translation>
</message>
<message>
<source>Arak is an aniseed spirit from the Levant; arrack from Batavia is a funky cane and rice spirit.</source>
<translation>Arak ist ein Anisschnaps aus der Levante; Arrak aus Batavia ist ein wilder Brand aus Zuckerrohr und Reis.</translation>
</message>
<message>
<source>Argentina</source>
<translation>Argentinien</translation>
</message>
<message>
<source>Around the specs</source>
<translation>Rund um die Rezepte</translation>
</message>
<message>
<source>Arrows move, Space ticks, letters find, Enter puts what is ticked on the shelf.</source>
<translation>Pfeile gehen weiter, die Leertaste kreuzt an, Buchstaben suchen, Enter stellt das Angekreuzte ins Regal.</translation>
</message>
<message>
<source>As</source>
<translation>Als</translation>
</message>
<message>
<source>As a list</source>
<translation>Als Liste</translation>
</message>
<message>
<source>As a picture</source>
<translation>Als Bild</translation>
</message>
<message>
<source>As if there &amp;were also</source>
<translation>Als ob &amp;auch da wäre</translation>
</message>
<message>
<source>As if there were &amp;not</source>
<translation>Als ob &amp;nicht da wäre</translation>
</message>
<message>
<source>As it was found</source>
<translation>Wie es gefunden wurde</translation>
</message>
<message>
<source>As its kind</source>
<translation>Wie ihre Art</translation>
</message>
<message>
<source>As little as an open bottle loses in a month: evaporation, or drops on the jigger.</source>
<translation>So wenig verliert eine offene Flasche im Monat: Verdunstung oder Tropfen am Messbecher.</translation>
</message>
<message>
<source>As planned it takes</source>
<translation>Wie geplant braucht er</translation>
</message>
<message>
<source>As written</source>
<translation>Wie geschrieben</translation>
</message>
<message>
<source>As written this makes about {volume}; figures are for the whole</source>
<translation>Wie geschrieben ergibt das etwa {volume}; die Werte gelten für das Ganze</translation>
</message>
<message>
<source>As written → as poured</source>
<translation>Wie geschrieben → wie eingeschenkt</translation>
</message>
<message>
<source>As written, which is not here</source>
<translation>Wie geschrieben, aber nicht da</translation>
</message>
<message>
<source>As you left it on {moment}: {typed}. </source>
<translation>So, wie du es am {moment} verlassen hast: {typed}. </translation>
</message>
<message>
<source>As you left it on {moment}; nothing of it is saved yet.</source>
<translation>So, wie du es am {moment} verlassen hast; noch ist nichts davon gesichert.</translation>
</message>
<message>
<source>Asked</source>
<translation>Gefragt</translation>
</message>
<message>
<source>At three quarters alcohol it is almost twice as strong as dark rum, and it catches fire.</source>
<translation>Mit drei Vierteln Alkohol ist er fast doppelt so stark wie dunkler Rum, und er fängt Feuer.</translation>
</message>
<message>
<source>At {abv_percent:.0f} % vol ice begins {begins}, so in a freezer at {freezer_c:.0f} °C it {freezes}.</source>
<translation>Mit {abv_percent:.0f} % vol beginnt Eis {begins}; im Gefrierfach bei {freezer_c:.0f} °C {freezes}.</translation>
</message>
<message>
<source>Aug</source>
<translation>Aug.</translation>
</message>
<message>
<source>August</source>
<translation>August</translation>
</message>
<message>
<source>Australia</source>
<translation>Australien</translation>
</message>
<message>
<source>Austria</source>
<translation>Österreich</translation>
</message>
<message>
<source>B&amp;udget</source>
<translation>B&amp;udget</translation>
</message>
<message>
<source>Bac&amp;kups…</source>
<translation>Sicherun&amp;gen…</translation>
</message>
<message>
<source>Back</source>
<translation>Zurück</translation>
</message>
<message>
<source>Back &amp;up now</source>
<translation>&amp;Jetzt sichern</translation>
</message>
<message>
<source>Back to the bar as it is (F4)</source>
<translation>Zurück zur Bar, wie sie ist (F4)</translation>
</message>
<message>
<source>Back to the drink (Esc)</source>
<translation>Zurück zum Drink (Esc)</translation>
</message>
<message>
<source>Back to {title}</source>
<translation>Zurück zu {title}</translation>
</message>
<message>
<source>Back up</source>
<translation>Sicherung anlegen</translation>
</message>
<message>
<source>Back up now makes the first.</source>
<translation>„Jetzt sichern“ legt die erste an.</translation>
</message>
<message>
<source>Backed up to {path}</source>
<translation>Gesichert in {path}</translation>
</message>
<message>
<source>Backspace</source>
<translation>Rücktaste</translation>
</message>
<message>
<source>Backups</source>
<translation>Sicherungen</translation>
</message>
<message>
<source>Balance</source>
<translation>Balance</translation>
</message>
<message>
<source>Balance among its family</source>
<translation>Balance innerhalb der Familie</translation>
</message>
<message>
<source>Bar</source>
<translation>Bar</translation>
</message>
<message>
<source>Barcod&amp;e</source>
<translation>Strichco&amp;de</translation>
</message>
<message>
<source>Barcode</source>
<translation>Strichcode</translation>
</message>
<message>
<source>Bare copper or brass: a drink below pH 6, as most are, dissolves it. Use a lined mug or a glass, and follow your local food rules.</source>
<translation>Blankes Kupfer oder Messing: Ein Drink unter pH 6, und das sind die meisten, löst es. Einen beschichteten Becher oder ein Glas verwenden und die örtlichen Lebensmittelvorschriften befolgen.</translation>
</message>
<message>
<source>Bars (*.barkeep);;All files (*)</source>
<translation>Bars (*.barkeep);;Alle Dateien (*)</translation>
</message>
<message>
<source>Bars and documents of a whole bar (*.barkeep *.json);;All files (*)</source>
<translation>Bars und Dokumente einer ganzen Bar (*.barkeep *.json);;Alle Dateien (*)</translation>
</message>
<message>
<source>Base</source>
<translation>Basis</translation>
</message>
<message>
<source>Batch of {name}</source>
<translation>Ansatz von {name}</translation>
</message>
<message>
<source>Batch…</source>
<translation>Ansatz…</translation>
</message>
<message>
<source>Beans are ground and brewed first; they garnish a drink but do not fill it.</source>
<translation>Bohnen werden erst gemahlen und gebrüht; sie garnieren einen Drink, füllen ihn aber nicht.</translation>
</message>
<message>
<source>Before</source>
<translation>Vorher</translation>
</message>
<message>
<source>Before anyone drinks</source>
<translation>Bevor jemand trinkt</translation>
</message>
<message>
<source>Before you pour</source>
<translation>Vor dem Einschenken</translation>
</message>
<message>
<source>Begin to type a name</source>
<translation>Namen tippen</translation>
</message>
<message>
<source>Begin to type any of its names</source>
<translation>Einen seiner Namen eintippen</translation>
</message>
<message>
<source>Begin to type, such as simple syrup</source>
<translation>Eintippen, etwa simple syrup</translation>
</message>
<message>
<source>Begin to type: what the bar knows is offered; anything else is a new product.</source>
<translation>Fang an zu tippen: Was die Bar kennt, wird angeboten; alles andere ist ein neues Produkt.</translation>
</message>
<message>
<source>Begin with your shelf: </source>
<translation>Fang mit deinem Regal an: </translation>
</message>
<message>
<source>Begin with {amount:g} {unit} of {name} and bring it up by taste: strong flavours do not always scale (common practice).</source>
<translation>Mit {amount:g} {unit} {name} anfangen und nach Geschmack steigern: Kräftige Aromen wachsen nicht immer mit (übliche Praxis).</translation>
</message>
<message>
<source>Bench</source>
<translation>Arbeitsplatz</translation>
</message>
<message>
<source>Beside its parent</source>
<translation>Neben dem Original</translation>
</message>
<message>
<source>Bitter is a red liqueur in Italy and a beer in Britain.</source>
<translation>Bitter ist in Italien ein roter Likör und in Großbritannien ein Bier.</translation>
</message>
<message>
<source>Bitter is beer in Britain; bitters are a seasoning used by the dash.</source>
<translation>Bitter ist in Großbritannien ein Bier; Bitters sind eine Würze, die man dashweise nimmt.</translation>
</message>
<message>
<source>Bitter lemon is a sweet carbonated mixer with quinine.</source>
<translation>Bitter Lemon ist ein süßer Filler mit Kohlensäure und Chinin.</translation>
</message>
<message>
<source>Bitters are a seasoning used by the dash, a red bitter is a liqueur poured by the measure: one letter, thirty times the amount.</source>
<translation>Bitters sind eine Würze, die man dashweise nimmt, ein roter Bitter ist ein Likör, den man mit dem Barmaß abmisst: ein Buchstabe, das Dreißigfache der Menge.</translation>
</message>
<message>
<source>Blackberry brandy on a spec is a liqueur, not a brandy.</source>
<translation>Blackberry Brandy in einem Rezept ist ein Likör, kein Brandy.</translation>
</message>
<message>
<source>Blackcurrant cordial has no alcohol and more acid; crème de cassis is a liqueur.</source>
<translation>Schwarzer Johannisbeersirup hat keinen Alkohol und mehr Säure; Crème de Cassis ist ein Likör.</translation>
</message>
<message>
<source>Blend it as it is served, in {rounds}: {what} a round (common practice).</source>
<translation>Beim Servieren mixen, in {rounds}: je Runde {what} (übliche Praxis).</translation>
</message>
<message>
<source>Blend it with the peel and squeeze through a cloth.</source>
<translation>Mit der Schale mixen und durch ein Tuch drücken.</translation>
</message>
<message>
<source>Blend one stalk with a spoonful of water and squeeze through a cloth; it carries celery.</source>
<translation>Eine Stange mit einem Löffel Wasser mixen und durch ein Tuch drücken; es enthält Sellerie.</translation>
</message>
<message>
<source>Blend the almonds with the water, leave them four hours, squeeze through a cloth, stir in the sugar and perfume it; it carries almond.</source>
<translation>Die Mandeln mit dem Wasser mixen, vier Stunden stehen lassen, durch ein Tuch drücken, den Zucker einrühren und parfümieren; es enthält Mandel.</translation>
</message>
<message>
<source>Blend the flesh and strain.</source>
<translation>Das Fruchtfleisch mixen und abseihen.</translation>
</message>
<message>
<source>Blend the flesh and strain; a small melon of some 4 kg.</source>
<translation>Das Fruchtfleisch mixen und abseihen; eine kleine Melone von etwa 4 kg.</translation>
</message>
<message>
<source>Blend the flesh with a little water and strain out the seeds.</source>
<translation>Das Fruchtfleisch mit etwas Wasser mixen und die Kerne abseihen.</translation>
</message>
<message>
<source>Blend them and sieve out the pips.</source>
<translation>Mixen und die Kerne heraussieben.</translation>
</message>
<message>
<source>Blended</source>
<translation>Gemixt</translation>
</message>
<message>
<source>Boil it.</source>
<translation>Kochen.</translation>
</message>
<message>
<source>Both are called aguardiente: one tastes of aniseed, the other of plain cane.</source>
<translation>Beide heißen Aguardiente: Der eine schmeckt nach Anis, der andere nach reinem Zuckerrohr.</translation>
</message>
<message>
<source>Both are dark and bitter, but fernet is poured by the measure and bitters by the dash.</source>
<translation>Beide sind dunkel und bitter, aber Fernet misst man mit dem Barmaß ab, Bitters nimmt man dashweise.</translation>
</message>
<message>
<source>Both are green; one is a strong liqueur of many herbs, the other is sugar and mint at less than half the strength.</source>
<translation>Beide sind grün; der eine ist ein starker Likör aus vielen Kräutern, der andere Zucker und Minze mit weniger als der halben Stärke.</translation>
</message>
<message>
<source>Both are pale, but bianco has three times the sugar or more of dry vermouth.</source>
<translation>Beide sind hell, aber Bianco hat mindestens dreimal so viel Zucker wie trockener Wermut.</translation>
</message>
<message>
<source>Both are sold as framboise: one is a sweet red liqueur, the other a clear dry spirit.</source>
<translation>Beide heißen Framboise: Der eine ist ein süßer roter Likör, der andere ein klarer trockener Brand.</translation>
</message>
<message>
<source>Both are sold as poire: one is sweet at about 22 % vol, the other dry at over 40.</source>
<translation>Beide heißen Poire: Der eine ist süß mit etwa 22 % vol, der andere trocken mit über 40.</translation>
</message>
<message>
<source>Bottle</source>
<translation>Flasche</translation>
</message>
<message>
<source>Bottle shop</source>
<translation>Spirituosenladen</translation>
</message>
<message>
<source>Bottle, and what it is</source>
<translation>Flasche, und was es ist</translation>
</message>
<message>
<source>Bottles</source>
<translation>Flaschen</translation>
</message>
<message>
<source>Bottles at most</source>
<translation>Flaschen höchstens</translation>
</message>
<message>
<source>Bottles bought against drinks that can be made</source>
<translation>Gekaufte Flaschen gegen machbare Drinks</translation>
</message>
<message>
<source>Bottles by name or number, or all of a kind: #12; lemon juice</source>
<translation>Flaschen nach Name oder Nummer, oder alle einer Zutat: #12; lemon juice</translation>
</message>
<message>
<source>Bottles can be moved while the list is in the order of the shelf.</source>
<translation>Flaschen lassen sich verschieben, solange die Liste in der Reihenfolge des Regals steht.</translation>
</message>
<message>
<source>Bottles counted</source>
<translation>Gezählte Flaschen</translation>
</message>
<message>
<source>Bottles of the file</source>
<translation>Flaschen der Datei</translation>
</message>
<message>
<source>Bottles of the shoot</source>
<translation>Flaschen des Drehs</translation>
</message>
<message>
<source>Bottles or specs?</source>
<translation>Flaschen oder Rezepte?</translation>
</message>
<message>
<source>Bottles to count</source>
<translation>Flaschen zum Zählen</translation>
</message>
<message>
<source>Bottles: a li&amp;st</source>
<translation>Flaschen: &amp;Liste</translation>
</message>
<message>
<source>Bottles: tic&amp;k</source>
<translation>Flaschen: an&amp;kreuzen</translation>
</message>
<message>
<source>Bough&amp;t on</source>
<translation>&amp;Gekauft am</translation>
</message>
<message>
<source>Bought on</source>
<translation>Gekauft am</translation>
</message>
<message>
<source>Bought together</source>
<translation>Zusammen gekauft</translation>
</message>
<message>
<source>Break the sticks, simmer ten minutes in the water, stir in the sugar and strain when cool.</source>
<translation>Die Stangen brechen, zehn Minuten im Wasser sieden, den Zucker einrühren und nach dem Abkühlen abseihen.</translation>
</message>
<message>
<source>Bring them back</source>
<translation>Zurückholen</translation>
</message>
<message>
<source>Brings in {allergens}.</source>
<translation>Bringt neu hinein: {allergens}.</translation>
</message>
<message>
<source>Brings near</source>
<translation>Bringt näher</translation>
</message>
<message>
<source>Bruise and slice the stalks, simmer them ten minutes in the water, stir in the sugar and strain when cool.</source>
<translation>Die Stängel anklopfen und in Scheiben schneiden, zehn Minuten im Wasser sieden, den Zucker einrühren und nach dem Abkühlen abseihen.</translation>
</message>
<message>
<source>Budget</source>
<translation>Budget</translation>
</message>
<message>
<source>Built</source>
<translation>Im Glas gebaut</translation>
</message>
<message>
<source>Buying</source>
<translation>Einkauf</translation>
</message>
<message>
<source>Buying: &amp;what each carries</source>
<translation>Einkauf: &amp;was an jeder hängt</translation>
</message>
<message>
<source>Buying: a &amp;plan</source>
<translation>Einkauf: &amp;Plan</translation>
</message>
<message>
<source>Buying: pa&amp;irs</source>
<translation>Einkauf: Paa&amp;re</translation>
</message>
<message>
<source>By the factors of Regulation (EU) 1169/2011</source>
<translation>Nach den Faktoren der Verordnung (EU) Nr. 1169/2011</translation>
</message>
<message>
<source>C&amp;hange ingredient…</source>
<translation>Zutat än&amp;dern…</translation>
</message>
<message>
<source>C&amp;hange the recipe</source>
<translation>Reze&amp;pt ändern</translation>
</message>
<message>
<source>C&amp;heck this bar</source>
<translation>Bar &amp;prüfen</translation>
</message>
<message>
<source>C&amp;lose</source>
<translation>Sch&amp;ließen</translation>
</message>
<message>
<source>CSV</source>
<translation>CSV</translation>
</message>
<message>
<source>Calamus (sweet flag) and sassafras, with its safrole, are prohibited in food in the United States because they may cause cancer: leave them out, and follow your local food rules.</source>
<translation>Kalmus und Sassafras mit seinem Safrol sind in den Vereinigten Staaten in Lebensmitteln verboten, weil sie Krebs verursachen können: weglassen und die örtlichen Lebensmittelvorschriften befolgen.</translation>
</message>
<message>
<source>Camera</source>
<translation>Kamera</translation>
</message>
<message>
<source>Can be made with a stand-in</source>
<translation>Mit einem Ersatz machbar</translation>
</message>
<message>
<source>Can it all be poured?</source>
<translation>Ist alles machbar?</translation>
</message>
<message>
<source>Can it be poured?</source>
<translation>Ist es machbar?</translation>
</message>
<message>
<source>Canada</source>
<translation>Kanada</translation>
</message>
<message>
<source>Cancel</source>
<translation>Abbrechen</translation>
</message>
<message>
<source>Cannot be poured so</source>
<translation>So nicht möglich</translation>
</message>
<message>
<source>Cannot be read</source>
<translation>Nicht lesbar</translation>
</message>
<message>
<source>Cannot be used</source>
<translation>Nicht zu gebrauchen</translation>
</message>
<message>
<source>Cannot {what} “{label}”: {reason}. Nothing was changed.</source>
<translation>„{label}“ lässt sich nicht {what}: {reason}. Nichts wurde geändert.</translation>
</message>
<message>
<source>Care</source>
<translation>Umsicht</translation>
</message>
<message>
<source>Caution</source>
<translation>Vorsicht</translation>
</message>
<message>
<source>Celery salt tastes of celery and carries a common allergen.</source>
<translation>Selleriesalz schmeckt nach Sellerie und enthält ein verbreitetes Allergen.</translation>
</message>
<message>
<source>Centred</source>
<translation>Zentriert</translation>
</message>
<message>
<source>Change</source>
<translation>Ändern</translation>
</message>
<message>
<source>Change ingredient…</source>
<translation>Zutat ändern…</translation>
</message>
<message>
<source>Change its &amp;label…</source>
<translation>Etikett än&amp;dern…</translation>
</message>
<message>
<source>Change the label</source>
<translation>Das Etikett ändern</translation>
</message>
<message>
<source>Change trial of {name}</source>
<translation>Versuch von {name} ändern</translation>
</message>
<message>
<source>Change {name}</source>
<translation>{name} ändern</translation>
</message>
<message>
<source>Change {theme}</source>
<translation>{theme} ändern</translation>
</message>
<message>
<source>Changed</source>
<translation>Geändert</translation>
</message>
<message>
<source>Changed by somebody else</source>
<translation>Von anderer Seite geändert</translation>
</message>
<message>
<source>Changed last</source>
<translation>Zuletzt geändert</translation>
</message>
<message>
<source>Changed the label of {title}</source>
<translation>Etikett von {title} geändert</translation>
</message>
<message>
<source>Changed {name}</source>
<translation>{name} geändert</translation>
</message>
<message>
<source>Changed: {changed}</source>
<translation>Geändert: {changed}</translation>
</message>
<message>
<source>Cheapest</source>
<translation>Am günstigsten</translation>
</message>
<message>
<source>Check it, or leave it out</source>
<translation>Prüfen oder weglassen</translation>
</message>
<message>
<source>Check this bar</source>
<translation>Bar prüfen</translation>
</message>
<message>
<source>Check this bar…</source>
<translation>Bar prüfen…</translation>
</message>
<message>
<source>Cherry brandy as bars mean it is a sweet red liqueur; kirsch is a clear dry spirit twice as strong.</source>
<translation>Cherry Brandy, wie Bars ihn meinen, ist ein süßer roter Likör; Kirschwasser ist ein klarer trockener Brand, doppelt so stark.</translation>
</message>
<message>
<source>Cherry brandy on a spec is a liqueur, not a brandy.</source>
<translation>Cherry Brandy in einem Rezept ist ein Likör, kein Brandy.</translation>
</message>
<message>
<source>Chile</source>
<translation>Chile</translation>
</message>
<message>
<source>Chill {said}.</source>
<translation>Kühlen: {said}.</translation>
</message>
<message>
<source>Chocolate bitters are a seasoning used by the dash.</source>
<translation>Schokoladenbitters sind eine Würze, die man dashweise nimmt.</translation>
</message>
<message>
<source>Choose a bottle first</source>
<translation>Erst eine Flasche wählen</translation>
</message>
<message>
<source>Choose an ingredient first</source>
<translation>Zuerst eine Zutat wählen</translation>
</message>
<message>
<source>Choose drinks…</source>
<translation>Drinks wählen…</translation>
</message>
<message>
<source>Choose one of the {noun} first</source>
<translation>Wähle zuerst eine Zeile ({noun})</translation>
</message>
<message>
<source>Choose what to make; what it takes and gives is shown here.</source>
<translation>Wähle, was gemacht wird; was es braucht und ergibt, steht dann hier.</translation>
</message>
<message>
<source>Chop the ginger fine, simmer it ten minutes in the water, stir in the sugar and strain when cool.</source>
<translation>Den Ingwer fein hacken, zehn Minuten im Wasser sieden, den Zucker einrühren und nach dem Abkühlen abseihen.</translation>
</message>
<message>
<source>Cider vinegar is five per cent acetic acid; a measure of it ruins the drink.</source>
<translation>Apfelessig enthält fünf Prozent Essigsäure; ein ganzes Barmaß davon verdirbt den Drink.</translation>
</message>
<message>
<source>Citric acid looks like sugar in the jar; a spoonful makes the drink undrinkable.</source>
<translation>Zitronensäure sieht im Glas aus wie Zucker; ein Löffel davon macht den Drink untrinkbar.</translation>
</message>
<message>
<source>Clam juice is plain broth of clams; tomato and clam juice is mostly sweetened tomato.</source>
<translation>Muschelsaft ist reine Brühe von Muscheln; Tomaten-Muschel-Saft ist vor allem gesüßte Tomate.</translation>
</message>
<message>
<source>Classic</source>
<translation>Klassiker</translation>
</message>
<message>
<source>Classics</source>
<translation>Klassiker</translation>
</message>
<message>
<source>Clear all &amp;filters</source>
<translation>Alle &amp;Filter aufheben</translation>
</message>
<message>
<source>Clear filter</source>
<translation>Filter aufheben</translation>
</message>
<message>
<source>Clear search</source>
<translation>Suche leeren</translation>
</message>
<message>
<source>Clear {count}</source>
<translation>{count} aufheben</translation>
</message>
<message>
<source>Clear {filters}</source>
<translation>{filters} aufheben</translation>
</message>
<message>
<source>Close</source>
<translation>Schließen</translation>
</message>
<message>
<source>Close</source>
<comment>closeness</comment>
<translation>Nah</translation>
</message>
<message>
<source>Close every part</source>
<translation>Alle Teile zuklappen</translation>
</message>
<message>
<source>Close without saving what you wrote?</source>
<translation>Schließen, ohne zu sichern, was du geschrieben hast?</translation>
</message>
<message>
<source>Co&amp;rrect…</source>
<translation>&amp;Korrigieren…</translation>
</message>
<message>
<source>Cocoa is an unsweetened powder and does not dissolve in a cold drink.</source>
<translation>Kakao ist ein ungesüßtes Pulver und löst sich nicht in einem kalten Drink.</translation>
</message>
<message>
<source>Coconut cream is unsweetened, cream of coconut is a thick syrup: the names differ by a word, the sugar by a factor of ten.</source>
<translation>Kokoscreme ist ungesüßt, cream of coconut ein dicker Sirup: Die Namen unterscheidet ein Wort, den Zucker ein Faktor zehn.</translation>
</message>
<message>
<source>Coconut is on neither the European nor, since 2025, the US list of allergens, yet some people react to it: ask your guests, and the label comes first.</source>
<translation>Kokosnuss steht weder auf der europäischen noch, seit 2025, auf der US-Liste der Allergene; trotzdem reagieren manche darauf: Gäste fragen; das Etikett geht vor.</translation>
</message>
<message>
<source>Coconut rum is a sweet liqueur at about half the strength of rum.</source>
<translation>Kokosrum ist ein süßer Likör mit etwa der halben Stärke von Rum.</translation>
</message>
<message>
<source>Coconut rum is a sweet liqueur without fat; coconut cream is fatty, unsweetened and without alcohol.</source>
<translation>Kokosrum ist ein süßer Likör ohne Fett; Kokoscreme ist fett, ungesüßt und ohne Alkohol.</translation>
</message>
<message>
<source>Coconut rum is a sweet liqueur without fat; coconut milk is fatty, unsweetened and without alcohol.</source>
<translation>Kokosrum ist ein süßer Likör ohne Fett; Kokosmilch ist fett, ungesüßt und ohne Alkohol.</translation>
</message>
<message>
<source>Coconut syrup is sugar that tastes of coconut; coconut milk has fat and no sugar.</source>
<translation>Kokossirup ist Zucker, der nach Kokosnuss schmeckt; Kokosmilch hat Fett und keinen Zucker.</translation>
</message>
<message>
<source>Coconut water is the thin clear liquid inside the fruit; coconut milk is pressed from its fatty flesh.</source>
<translation>Kokoswasser ist die dünne klare Flüssigkeit in der Frucht; Kokosmilch wird aus ihrem fetten Fleisch gepresst.</translation>
</message>
<message>
<source>Coffee or cola with alcohol: caffeine hides how drunk one is and sobers nobody up. In pregnancy or with a heart condition ask a doctor.</source>
<translation>Kaffee oder Cola mit Alkohol: Koffein verdeckt, wie betrunken man ist, und macht niemanden nüchtern. In der Schwangerschaft oder bei einem Herzleiden ärztlichen Rat holen.</translation>
</message>
<message>
<source>Cold brew has neither sugar nor alcohol; the liqueur has plenty of both.</source>
<translation>Cold Brew hat weder Zucker noch Alkohol; der Likör hat von beidem reichlich.</translation>
</message>
<message>
<source>Colorado State University Extension on eggnog</source>
<translation>Colorado State University Extension zu Eggnog</translation>
</message>
<message>
<source>Column {place}</source>
<translation>Spalte {place}</translation>
</message>
<message>
<source>Comes in</source>
<translation>Kommt hinzu</translation>
</message>
<message>
<source>Comes in as {name}</source>
<translation>Kommt als {name} hinzu</translation>
</message>
<message>
<source>Comes in too</source>
<translation>Kommt auch hinzu</translation>
</message>
<message>
<source>Comes in with {questions}</source>
<translation>Kommt mit {questions} hinzu</translation>
</message>
<message>
<source>Condensed milk is more than half sugar and as thick as honey.</source>
<translation>Kondensmilch (gesüßt) ist mehr als zur Hälfte Zucker und dick wie Honig.</translation>
</message>
<message>
<source>Confirm the coun&amp;ts…</source>
<translation>Zählun&amp;g bestätigen…</translation>
</message>
<message>
<source>Confirm the count</source>
<translation>Die Zählung bestätigen</translation>
</message>
<message>
<source>Confirm {bottles}…</source>
<translation>{bottles} bestätigen…</translation>
</message>
<message>
<source>Confirm…</source>
<translation>Bestätigen…</translation>
</message>
<message>
<source>Contains liquorice: with high blood pressure, or medicine for it, ask a doctor first.</source>
<translation>Enthält Süßholz (Lakritze): bei hohem Blutdruck oder Mitteln dagegen zuerst ärztlichen Rat holen.</translation>
</message>
<message>
<source>Contains quinine, as the label says: with heart or blood-thinning medicine, in pregnancy, or after a reaction to it, ask a doctor or pharmacist first.</source>
<translation>Enthält Chinin, wie das Etikett sagt: bei Herzmitteln oder Blutverdünnern, in der Schwangerschaft oder nach einer Reaktion darauf zuerst in einer Arztpraxis oder Apotheke fragen.</translation>
</message>
<message>
<source>Contains {allergens}</source>
<translation>Enthält {allergens}</translation>
</message>
<message>
<source>Contains {allergens}, which can cause allergic reactions; the bottle's label comes first.</source>
<translation>Enthält {allergens}; das kann allergische Reaktionen auslösen. Das Etikett der Flasche geht vor.</translation>
</message>
<message>
<source>Copied</source>
<translation>Kopiert</translation>
</message>
<message>
<source>Copy as &amp;Markdown</source>
<translation>Als &amp;Markdown kopieren</translation>
</message>
<message>
<source>Copy picture</source>
<translation>Bild kopieren</translation>
</message>
<message>
<source>Copy picture as SVG</source>
<translation>Bild als SVG kopieren</translation>
</message>
<message>
<source>Copy rows as CS&amp;V</source>
<translation>Zeilen als CS&amp;V kopieren</translation>
</message>
<message>
<source>Core it, slice it thin and dip it in lemon juice.</source>
<translation>Entkernen, dünn in Scheiben schneiden und in Zitronensaft tauchen.</translation>
</message>
<message>
<source>Correct</source>
<translation>Korrigieren</translation>
</message>
<message>
<source>Correct {title}</source>
<translation>{title} korrigieren</translation>
</message>
<message>
<source>Corrected {amount}</source>
<translation>Korrigiert {amount}</translation>
</message>
<message>
<source>Corrected {title}</source>
<translation>{title} korrigiert</translation>
</message>
<message>
<source>Cost</source>
<translation>Kosten</translation>
</message>
<message>
<source>Cou&amp;nt</source>
<translation>&amp;Zählen</translation>
</message>
<message>
<source>Coun&amp;try</source>
<translation>&amp;Land</translation>
</message>
<message>
<source>Count</source>
<translation>Zählen</translation>
</message>
<message>
<source>Count the &amp;shelf</source>
<translation>&amp;Regal zählen</translation>
</message>
<message>
<source>Count the dashes that fill 10 ml, and divide 10 ml by them. Left empty, a dash is what the bar means by one.</source>
<translation>Zähle die Dashes, die 10 ml füllen, und teile 10 ml durch sie. Bleibt es leer, ist ein Dash, was die Bar darunter versteht.</translation>
</message>
<message>
<source>Count the shelf</source>
<translation>Regal zählen</translation>
</message>
<message>
<source>Count the shelf ({keys})</source>
<translation>Regal zählen ({keys})</translation>
</message>
<message>
<source>Count the shelf first</source>
<translation>Erst das Regal zählen</translation>
</message>
<message>
<source>Count {title}</source>
<translation>{title} zählen</translation>
</message>
<message>
<source>Counted</source>
<translation>Gezählt</translation>
</message>
<message>
<source>Counted in {drink}: “{line}” as {taken}.</source>
<translation>In {drink} gezählt: „{line}“ als {taken}.</translation>
</message>
<message>
<source>Counted {amount}</source>
<translation>Gezählt {amount}</translation>
</message>
<message>
<source>Counted {bottles}</source>
<translation>{bottles} gezählt</translation>
</message>
<message>
<source>Counted {title}: {amount}</source>
<translation>{title} gezählt: {amount}</translation>
</message>
<message>
<source>Count…</source>
<translation>Zählen…</translation>
</message>
<message>
<source>Cream of coconut is a coconut syrup; it is far sweeter and tastes of nothing else.</source>
<translation>Cream of coconut ist ein Kokossirup; er ist weit süßer und schmeckt nach nichts anderem.</translation>
</message>
<message>
<source>Cream of coconut is more than half sugar; coconut milk leaves the drink thin and sour.</source>
<translation>Kokossirupcreme (cream of coconut) ist mehr als zur Hälfte Zucker; mit Kokosmilch wird der Drink dünn und sauer.</translation>
</message>
<message>
<source>Cream sherry is a sweet fortified wine and holds no cream.</source>
<translation>Cream Sherry ist ein süßer verstärkter Wein und enthält keine Sahne.</translation>
</message>
<message>
<source>Cream soda is a sweet vanilla soft drink; soda water has no taste and no sugar.</source>
<translation>Cream Soda ist eine süße Vanillelimonade; Sodawasser hat weder Geschmack noch Zucker.</translation>
</message>
<message>
<source>Cream soda is a vanilla soft drink and holds no cream.</source>
<translation>Cream Soda ist eine Vanillelimonade und enthält keine Sahne.</translation>
</message>
<message>
<source>Credit: {credit}</source>
<translation>Von: {credit}</translation>
</message>
<message>
<source>Credit: {credit}.</source>
<translation>Von: {credit}.</translation>
</message>
<message>
<source>Crush the berries into the sugar, leave them a day in the cold, add the vinegar and strain.</source>
<translation>Die Beeren mit dem Zucker zerdrücken, einen Tag kalt stehen lassen, den Essig zugeben und abseihen.</translation>
</message>
<message>
<source>Crush the berries into the sugar, leave them an hour, add the water, warm gently and strain without pressing.</source>
<translation>Die Beeren mit dem Zucker zerdrücken, eine Stunde stehen lassen, das Wasser zugeben, sanft erwärmen und abseihen, ohne zu pressen.</translation>
</message>
<message>
<source>Crush the berries into the sugar, leave them an hour, add the water, warm gently and strain.</source>
<translation>Die Beeren mit dem Zucker zerdrücken, eine Stunde stehen lassen, das Wasser zugeben, sanft erwärmen und abseihen.</translation>
</message>
<message>
<source>Crush the peel into the sugar, leave it four hours or overnight, loosen it with hot water and strain.</source>
<translation>Die Schale mit dem Zucker zerdrücken, vier Stunden oder über Nacht stehen lassen, mit heißem Wasser lösen und abseihen.</translation>
</message>
<message>
<source>Crush the peel into the sugar, leave it four hours, stir in juice and water and strain.</source>
<translation>Die Schale mit dem Zucker zerdrücken, vier Stunden stehen lassen, Saft und Wasser einrühren und abseihen.</translation>
</message>
<message>
<source>Crush the pepper, simmer it five minutes in the water, stir in the sugar and strain when cool.</source>
<translation>Den Pfeffer zerstoßen, fünf Minuten im Wasser sieden, den Zucker einrühren und nach dem Abkühlen abseihen.</translation>
</message>
<message>
<source>Crush the pods, simmer them five minutes in the water, stir in the sugar and strain when cool.</source>
<translation>Die Kapseln zerdrücken, fünf Minuten im Wasser sieden, den Zucker einrühren und nach dem Abkühlen abseihen.</translation>
</message>
<message>
<source>Crème de cacao is clear of milk; a cream liqueur clouds the drink, curdles with citrus and carries milk.</source>
<translation>Crème de Cacao ist frei von Milch; ein Sahnelikör trübt den Drink, gerinnt mit Zitrus und enthält Milch.</translation>
</message>
<message>
<source>Crème in the name of a liqueur means sweet; crème de cacao holds no milk.</source>
<translation>Crème im Namen eines Likörs heißt süß; Crème de Cacao enthält keine Milch.</translation>
</message>
<message>
<source>Ctrl</source>
<translation>Strg</translation>
</message>
<message>
<source>Cut</source>
<translation>Schneiden</translation>
</message>
<message>
<source>Cut it across and drop the ends.</source>
<translation>Quer schneiden und die Enden weglassen.</translation>
</message>
<message>
<source>Cut it across in slices and each slice in wedges.</source>
<translation>Quer in Scheiben und jede Scheibe in Spalten schneiden.</translation>
</message>
<message>
<source>Cut it across on the slant and dip it in lemon juice.</source>
<translation>Schräg quer schneiden und in Zitronensaft tauchen.</translation>
</message>
<message>
<source>Cut it across or in long ribbons.</source>
<translation>Quer oder in lange Bänder schneiden.</translation>
</message>
<message>
<source>Cut it across, drop the ends and halve the slices.</source>
<translation>Quer schneiden, die Enden weglassen und die Scheiben halbieren.</translation>
</message>
<message>
<source>Cut it in slices and the slices in wedges.</source>
<translation>In Scheiben und die Scheiben in Spalten schneiden.</translation>
</message>
<message>
<source>Cut it lengthwise in half and each half in four.</source>
<translation>Längs halbieren und jede Hälfte vierteln.</translation>
</message>
<message>
<source>Cut it lengthwise in half and each half in three.</source>
<translation>Längs halbieren und jede Hälfte dritteln.</translation>
</message>
<message>
<source>Cut the flesh off the stone and slice it.</source>
<translation>Das Fruchtfleisch vom Stein schneiden und in Scheiben schneiden.</translation>
</message>
<message>
<source>Cut {many} from {pieces:g} × {fruit}</source>
<translation>{many} aus {pieces:g} × {fruit} schneiden</translation>
</message>
<message>
<source>Cut {much} from {inputs}</source>
<translation>{much} aus {inputs} schneiden</translation>
</message>
<message>
<source>D&amp;rinks</source>
<translation>D&amp;rinks</translation>
</message>
<message>
<source>Damage or another program changed it: {fault}.</source>
<translation>Ein Schaden oder ein anderes Programm hat sie verändert: {fault}.</translation>
</message>
<message>
<source>Damson gin is a sweet fruit liqueur; it is not a gin.</source>
<translation>Damson Gin ist ein süßer Fruchtlikör; er ist kein Gin.</translation>
</message>
<message>
<source>Danger</source>
<translation>Gefahr</translation>
</message>
<message>
<source>Dash</source>
<translation>Dash</translation>
</message>
<message>
<source>Dates</source>
<translation>Daten</translation>
</message>
<message>
<source>Day</source>
<translation>Datum</translation>
</message>
<message>
<source>Days ahead</source>
<translation>Tage voraus</translation>
</message>
<message>
<source>Days by which things should be used</source>
<translation>Tage, bis zu denen etwas aufzubrauchen ist</translation>
</message>
<message>
<source>Dec</source>
<translation>Dez.</translation>
</message>
<message>
<source>December</source>
<translation>Dezember</translation>
</message>
<message>
<source>Denmark</source>
<translation>Dänemark</translation>
</message>
<message>
<source>Densit&amp;y</source>
<translation>Dich&amp;te</translation>
</message>
<message>
<source>Density</source>
<translation>Dichte</translation>
</message>
<message>
<source>Description as Markdown</source>
<translation>Beschreibung als Markdown</translation>
</message>
<message>
<source>Description as a web page</source>
<translation>Beschreibung als Webseite</translation>
</message>
<message>
<source>Description as text</source>
<translation>Beschreibung als Text</translation>
</message>
<message>
<source>Descriptions</source>
<translation>Beschreibungen</translation>
</message>
<message>
<source>Details</source>
<translation>Einzelheiten</translation>
</message>
<message>
<source>Did you mean {likely}?</source>
<translation>Meinst du {likely}?</translation>
</message>
<message>
<source>Difference</source>
<translation>Differenz</translation>
</message>
<message>
<source>Differs</source>
<translation>Abweichend</translation>
</message>
<message>
<source>Dip the leaves ten seconds in boiling water and then in iced, blend them into the cold syrup and strain.</source>
<translation>Die Blätter zehn Sekunden in kochendes und dann in eiskaltes Wasser tauchen, in den kalten Sirup mixen und abseihen.</translation>
</message>
<message>
<source>Discard counts</source>
<translation>Zählungen verwerfen</translation>
</message>
<message>
<source>Dismiss</source>
<translation>Ausblenden</translation>
</message>
<message>
<source>Distilling at home is a crime in many places, and spirit of unknown origin can hold methanol, which blinds and kills: buy it from a licensed maker. Local law comes first.</source>
<translation>Zu Hause zu brennen ist vielerorts eine Straftat, und Alkohol unbekannter Herkunft kann Methanol enthalten, das blind macht und tötet: bei einem zugelassenen Hersteller kaufen. Örtliches Recht geht vor.</translation>
</message>
<message>
<source>Do</source>
<translation>Was geschieht</translation>
</message>
<message>
<source>Do not count on {title}: its date is {until}. {what}.</source>
<translation>Nicht mit {title} rechnen: Datum {until}. {what}.</translation>
</message>
<message>
<source>Do not drive or use machinery after drinking, whatever the local limit is.</source>
<translation>Nach dem Trinken nicht fahren und keine Maschinen bedienen, gleich welche Grenze örtlich gilt.</translation>
</message>
<message>
<source>Documents of a whole bar (*.json);;All files (*)</source>
<translation>Dokumente einer ganzen Bar (*.json);;Alle Dateien (*)</translation>
</message>
<message>
<source>Done again</source>
<translation>Wiederholt</translation>
</message>
<message>
<source>Doubt</source>
<translation>Unsicherheit</translation>
</message>
<message>
<source>Drag a drink to its place, or move it with Alt+Up and Alt+Down. Delete takes it out, Ctrl+Z takes that back.</source>
<translation>Einen Drink an seinen Platz ziehen oder mit Alt+Pfeil hoch und Alt+Pfeil runter verschieben. Entf nimmt ihn heraus, Strg+Z macht das rückgängig.</translation>
</message>
<message>
<source>Drag the drink to its place (Alt+Up, Alt+Down)</source>
<translation>Den Drink an seinen Platz ziehen (Alt+Pfeil hoch, Alt+Pfeil runter)</translation>
</message>
<message>
<source>Drawn from each bottle</source>
<translation>Entnahme je Flasche</translation>
</message>
<message>
<source>Drawn with Qt for Python, which is free software under the LGPL version 3: its libraries are files of their own, and may be replaced.</source>
<translation>Gezeichnet mit Qt for Python, freier Software unter der LGPL Version 3: Ihre Bibliotheken sind eigene Dateien und dürfen ersetzt werden.</translation>
</message>
<message>
<source>Drink</source>
<translation>Drink</translation>
</message>
<message>
<source>Drink to add</source>
<translation>Drink zum Hinzufügen</translation>
</message>
<message>
<source>Drink {drink} of {drinks}: {name}   step {step} of {steps}</source>
<translation>Drink {drink} von {drinks}: {name}   Schritt {step} von {steps}</translation>
</message>
<message>
<source>Drinks</source>
<translation>Drinks</translation>
</message>
<message>
<source>Dry ice and liquid nitrogen must be gone, all of it, before anyone drinks. They freeze skin and burst closed vessels, and the gas suffocates: open windows, and local food rules first.</source>
<translation>Trockeneis und flüssiger Stickstoff müssen restlos verdampft sein, bevor jemand trinkt. Sie verursachen Erfrierungen, sprengen geschlossene Gefäße, und das Gas erstickt: Fenster öffnen; örtliche Lebensmittelvorschriften gehen vor.</translation>
</message>
<message>
<source>Due</source>
<translation>Fällig</translation>
</message>
<message>
<source>EFSA 2015 on the safety of caffeine</source>
<translation>EFSA 2015 zur Sicherheit von Koffein</translation>
</message>
<message>
<source>EFSA 2016, acute reference dose for cyanide in apricot kernels</source>
<translation>EFSA 2016, akute Referenzdosis für Cyanid in Aprikosenkernen</translation>
</message>
<message>
<source>Each</source>
<translation>Je</translation>
</message>
<message>
<source>Each comes in at its usual size and about half full, or unopened where it soon goes flat: a guess, until you count it.</source>
<translation>Jede kommt in ihrer üblichen Größe und etwa halb voll hinzu, oder ungeöffnet, wo sie schnell schal wird: geschätzt, bis du sie zählst.</translation>
</message>
<message>
<source>Each drink in its glass on a shelf (Ctrl+G)</source>
<translation>Jeder Drink in seinem Glas im Regal (Strg+G)</translation>
</message>
<message>
<source>Each is counted here, one after the other, and there is none</source>
<translation>Hier wird eine nach der anderen gezählt, und es gibt keine</translation>
</message>
<message>
<source>Each line of the spec with its amount, unit and ingredient</source>
<translation>Jede Zeile des Rezepts mit Menge, Einheit und Zutat</translation>
</message>
<message>
<source>Each of these can be as it is, but barkeep did not write it so. If another program was to change it, take the bar as it is; if not, restore a backup.</source>
<translation>All das kann so sein, aber barkeep hat es nicht so geschrieben. Sollte ein anderes Programm es ändern, übernimm die Bar, wie sie ist; wenn nicht, stell eine Sicherung wieder her.</translation>
</message>
<message>
<source>Earlier</source>
<translation>Früher</translation>
</message>
<message>
<source>Edit shoot…</source>
<translation>Dreh bearbeiten…</translation>
</message>
<message>
<source>Edit {name}</source>
<translation>{name} bearbeiten</translation>
</message>
<message>
<source>Edit…</source>
<translation>Bearbeiten…</translation>
</message>
<message>
<source>Egg liqueur is a thick sweet liqueur; it neither foams nor binds as an egg does.</source>
<translation>Eierlikör ist ein dicker süßer Likör; er schäumt und bindet nicht wie ein Ei.</translation>
</message>
<message>
<source>Elderberries poison when raw, and so do elder leaves and stems: ripe berries only, off the stem and cooked through, and ask your local food agency.</source>
<translation>Rohe Holunderbeeren sind giftig, ebenso Blätter und Stiele des Holunders: nur reife Beeren, abgezupft und durchgekocht, und bei der örtlichen Lebensmittelbehörde nachfragen.</translation>
</message>
<message>
<source>Emptied</source>
<translation>Geleert</translation>
</message>
<message>
<source>Emptied {title}</source>
<translation>{title} als leer gemeldet</translation>
</message>
<message>
<source>Empty</source>
<translation>Leer</translation>
</message>
<message>
<source>Empty</source>
<comment>a weight of a bottle</comment>
<translation>Leer</translation>
</message>
<message>
<source>Empty where PGPASSWORD or the file ~/.pgpass has it. It is written down nowhere.</source>
<translation>Leer, wenn es in PGPASSWORD oder der Datei ~/.pgpass steht. Es wird nirgends aufgeschrieben.</translation>
</message>
<message>
<source>Empty: make anew</source>
<translation>Leer: neu ansetzen</translation>
</message>
<message>
<source>Empty: {weight}</source>
<translation>Leer: {weight}</translation>
</message>
<message>
<source>Emptying each bottle on paper…</source>
<translation>Jede Flasche wird auf dem Papier geleert…</translation>
</message>
<message>
<source>End</source>
<translation>Ende</translation>
</message>
<message>
<source>Energy</source>
<translation>Energie</translation>
</message>
<message>
<source>Enter</source>
<translation>Enter</translation>
</message>
<message>
<source>Esc</source>
<translation>Esc</translation>
</message>
<message>
<source>Every change is in {where} at once</source>
<translation>Jede Änderung steht sofort in {where}</translation>
</message>
<message>
<source>Every drink, and what it lacks</source>
<translation>Jeder Drink, und was ihm fehlt</translation>
</message>
<message>
<source>Every open bottle is counted.</source>
<translation>Jede offene Flasche ist gezählt.</translation>
</message>
<message>
<source>Every page then answers as if the bar were like this. Nothing of it is written, and nothing else can be, until you go back: F4.</source>
<translation>Jede Seite antwortet dann, als wäre die Bar so. Nichts davon wird geschrieben, und auch sonst nichts, bis du zurückgehst: F4.</translation>
</message>
<message>
<source>Every row can come in.</source>
<translation>Jede Zeile kann hinzukommen.</translation>
</message>
<message>
<source>Every row of the file</source>
<translation>Jede Zeile der Datei</translation>
</message>
<message>
<source>Every shoot</source>
<translation>Jeder Dreh</translation>
</message>
<message>
<source>Every spec that is not there already</source>
<translation>Jedes Rezept, das noch nicht da ist</translation>
</message>
<message>
<source>Everything is here</source>
<translation>Alles ist da</translation>
</message>
<message>
<source>Everything on the shelf</source>
<translation>Alles, was im Regal steht</translation>
</message>
<message>
<source>Everywhere</source>
<translation>Überall</translation>
</message>
<message>
<source>Exact</source>
<translation>Genau</translation>
</message>
<message>
<source>Exact</source>
<comment>closeness</comment>
<translation>Genau</translation>
</message>
<message>
<source>Exact amount</source>
<translation>Genaue Menge</translation>
</message>
<message>
<source>Expected</source>
<translation>Erwartet</translation>
</message>
<message>
<source>Export bottles</source>
<translation>Flaschen exportieren</translation>
</message>
<message>
<source>Export e&amp;verything…</source>
<translation>&amp;Alles exportieren…</translation>
</message>
<message>
<source>Export everything</source>
<translation>Alles exportieren</translation>
</message>
<message>
<source>F&amp;orward</source>
<translation>&amp;Vorwärts</translation>
</message>
<message>
<source>FASTER Act 2021 (sesame)</source>
<translation>FASTER Act 2021 (Sesam)</translation>
</message>
<message>
<source>Faded</source>
<translation>Nachgelassen</translation>
</message>
<message>
<source>Family</source>
<translation>Familie</translation>
</message>
<message>
<source>Far</source>
<comment>closeness</comment>
<translation>Weit</translation>
</message>
<message>
<source>Fat and protein of cream and milk are usual figures: energy is good to about 10 %.</source>
<translation>Fett und Eiweiß von Sahne und Milch sind übliche Werte: Die Energie stimmt auf etwa 10 %.</translation>
</message>
<message>
<source>Fat-washed spirit: chill it, strain out all the fat, keep it in the fridge, and tell guests what the fat was: milk, nuts and sesame stay behind. Follow your local food rules.</source>
<translation>Mit Fett aromatisierte Spirituose (Fat Washing): kühlen, das Fett ganz abseihen, im Kühlschrank aufbewahren und Gästen sagen, welches Fett es war: Milch, Nüsse und Sesam bleiben zurück. Die örtlichen Lebensmittelvorschriften befolgen.</translation>
</message>
<message>
<source>Feb</source>
<translation>Feb.</translation>
</message>
<message>
<source>February</source>
<translation>Februar</translation>
</message>
<message>
<source>Fields</source>
<translation>Felder</translation>
</message>
<message>
<source>Figures</source>
<translation>Kennwerte</translation>
</message>
<message>
<source>Figures are information, not advice: health authorities and local rules come first.</source>
<translation>Die Werte sind Information, kein Rat: Gesundheitsbehörden und örtliche Vorschriften gehen vor.</translation>
</message>
<message>
<source>Film</source>
<translation>Drehen</translation>
</message>
<message>
<source>Filmed</source>
<translation>Gedreht</translation>
</message>
<message>
<source>Filmed today</source>
<translation>Heute gedreht</translation>
</message>
<message>
<source>Filmed, and its bottles not yet counted</source>
<translation>Gedreht, die Flaschen noch nicht gezählt</translation>
</message>
<message>
<source>Find &amp;next</source>
<translation>&amp;Nächster Treffer</translation>
</message>
<message>
<source>Find an&amp;ything…</source>
<translation>Alles &amp;durchsuchen…</translation>
</message>
<message>
<source>Find anything</source>
<translation>Alles durchsuchen</translation>
</message>
<message>
<source>Find pr&amp;evious</source>
<translation>V&amp;origer Treffer</translation>
</message>
<message>
<source>Finished</source>
<translation>Abgeschlossen</translation>
</message>
<message>
<source>Finland</source>
<translation>Finnland</translation>
</message>
<message>
<source>Fino is bone dry; cream and Pedro Ximénez sherries are sweet to syrupy.</source>
<translation>Fino ist knochentrocken; Cream und Pedro Ximénez sind süß bis sirupartig.</translation>
</message>
<message>
<source>Fire: never pour from a bottle onto a flame, keep sleeves, hair and guests away, have a lid ready to smother it, and put it out before serving. Local fire rules come first.</source>
<translation>Feuer: nie aus einer Flasche in eine Flamme gießen, Ärmel, Haare und Gäste fernhalten, einen Deckel zum Ersticken bereithalten und die Flamme vor dem Servieren löschen. Örtliche Brandschutzvorschriften gehen vor.</translation>
</message>
<message>
<source>First</source>
<translation>Zuerst</translation>
</message>
<message>
<source>First take the {amount} there is.</source>
<translation>Zuerst {amount} nehmen, die schon da sind.</translation>
</message>
<message>
<source>Flat and oval, made for a pocket: small bottles of spirit</source>
<translation>Flach und oval, für die Tasche gemacht: kleine Flaschen Spirituosen</translation>
</message>
<message>
<source>Foam of egg takes room that is not counted in the volume, up to a third more.</source>
<translation>Eischaum braucht Platz, der im Volumen nicht mitgezählt ist, bis zu einem Drittel mehr.</translation>
</message>
<message>
<source>Food Allergen Labeling and Consumer Protection Act 2004</source>
<translation>US-Gesetz zur Allergenkennzeichnung (FALCPA) 2004</translation>
</message>
<message>
<source>Food Code interpretation of 31 October 2018</source>
<translation>Auslegung des US Food Code vom 31. Oktober 2018</translation>
</message>
<message>
<source>For any drink</source>
<translation>Für jeden Drink</translation>
</message>
<message>
<source>For one serve the spec says: {method}</source>
<translation>Für eine Portion sagt das Rezept: {method}</translation>
</message>
<message>
<source>For the bench</source>
<translation>Für den Arbeitsplatz</translation>
</message>
<message>
<source>For these shoots</source>
<translation>Für diese Drehs</translation>
</message>
<message>
<source>For which drink</source>
<translation>Für welchen Drink</translation>
</message>
<message>
<source>For {drink}</source>
<translation>Für {drink}</translation>
</message>
<message>
<source>For {serves:g} serves the spec says: {method}</source>
<translation>Für {serves:g} Portionen sagt das Rezept: {method}</translation>
</message>
<message>
<source>Forgotten</source>
<translation>Vergessen</translation>
</message>
<message>
<source>Fortified muscat is three times as strong as moscato, which is low in alcohol and fizzy.</source>
<translation>Verstärkter Muskat ist dreimal so stark wie Moscato, der wenig Alkohol und Kohlensäure hat.</translation>
</message>
<message>
<source>Found</source>
<translation>Gefunden</translation>
</message>
<message>
<source>Four flat sides with rounded edges and short shoulders: some whiskies, gins and liqueurs</source>
<translation>Vier flache Seiten mit runden Kanten und kurzen Schultern: manche Whiskys, Gins und Liköre</translation>
</message>
<message>
<source>Framed</source>
<translation>Gerahmt</translation>
</message>
<message>
<source>France</source>
<translation>Frankreich</translation>
</message>
<message>
<source>Free of</source>
<translation>Frei von</translation>
</message>
<message>
<source>Freeze or buy {parts} for the glass: one a serve, and some to spare ({basis}).</source>
<translation>Gefrieren oder kaufen: {parts} fürs Glas, je Portion eins und etwas Reserve ({basis}).</translation>
</message>
<message>
<source>Freeze or buy {total} of {what}{uses}, a quarter to spare for what melts ({basis}).</source>
<translation>Gefrieren oder kaufen: {total} {what}{uses}, ein Viertel mehr als nötig für das, was schmilzt ({basis}).</translation>
</message>
<message>
<source>Friday</source>
<translation>Freitag</translation>
</message>
<message>
<source>From midnight to midnight, by the ledger; at the prices that are known now.</source>
<translation>Von Mitternacht bis Mitternacht, nach dem Verlauf; zu den jetzt bekannten Preisen.</translation>
</message>
<message>
<source>From now on the name is understood wherever it is written.</source>
<translation>Ab jetzt wird der Name überall verstanden, wo er steht.</translation>
</message>
<message>
<source>From so much {what}</source>
<translation>Aus so viel {what}</translation>
</message>
<message>
<source>From the shoot</source>
<translation>Vom Dreh</translation>
</message>
<message>
<source>From {first} on {day} to {now} today, in {n} entries, 1 count among them</source>
<translation>Von {first} am {day} bis heute {now}, in {n} Einträgen, darunter 1 Zählung</translation>
</message>
<message>
<source>From {first} on {day} to {now} today, in {n} entries, {counts} counts among them</source>
<translation>Von {first} am {day} bis heute {now}, in {n} Einträgen, darunter {counts} Zählungen</translation>
</message>
<message>
<source>From {inputs}</source>
<translation>Aus {inputs}</translation>
</message>
<message>
<source>From {title}.</source>
<translation>Aus {title}.</translation>
</message>
<message>
<source>Full; or such as 0.5, 350 ml or 11.5 cm high</source>
<translation>Voll; oder etwa 0.5, 350 ml oder 11.5 cm hoch</translation>
</message>
<message>
<source>Garlic or herbs in oil can grow the botulism poison, which nobody can taste: keep it in the fridge and use it within a week, or freeze it. Local food advice comes first.</source>
<translation>In Öl eingelegter Knoblauch oder eingelegte Kräuter können Botulismusgift bilden, das niemand schmeckt: im Kühlschrank aufbewahren und innerhalb einer Woche verbrauchen oder einfrieren. Örtliche Lebensmittelempfehlungen gehen vor.</translation>
</message>
<message>
<source>Garnish</source>
<translation>Garnitur</translation>
</message>
<message>
<source>Gas in sealed glass bursts it: carbonate or ferment only in a vessel made for the pressure, vent a ferment daily, keep it cold. Local food advice comes first.</source>
<translation>Gas in verschlossenem Glas sprengt es: nur in einem Gefäß karbonisieren oder vergären, das für den Druck gemacht ist, Gärendes täglich entlüften und kalt halten. Örtliche Lebensmittelempfehlungen gehen vor.</translation>
</message>
<message>
<source>Germany</source>
<translation>Deutschland</translation>
</message>
<message>
<source>Get {many}: {there}.</source>
<translation>{many} besorgen: {there}.</translation>
</message>
<message>
<source>Ginger beer as a mixer is a sweet soft drink and no beer.</source>
<translation>Ginger Beer als Filler ist eine süße Limonade und kein Bier.</translation>
</message>
<message>
<source>Ginger wine is still, sweet and as strong as wine; ginger beer is a fizzy mixer.</source>
<translation>Ingwerwein ist still, süß und stark wie Wein; Ginger Beer ist ein Filler mit Kohlensäure.</translation>
</message>
<message>
<source>Glass</source>
<translation>Glas</translation>
</message>
<message>
<source>Glass: {glass}</source>
<translation>Glas: {glass}</translation>
</message>
<message>
<source>Glassware</source>
<translation>Gläser</translation>
</message>
<message>
<source>Go on counting</source>
<translation>Weiterzählen</translation>
</message>
<message>
<source>Go on with the draft of {name}</source>
<translation>Mit dem Entwurf von {name} weitermachen</translation>
</message>
<message>
<source>Go on with the list</source>
<translation>Weiter mit der Liste</translation>
</message>
<message>
<source>Go on with the log</source>
<translation>Weiter mit dem Protokoll</translation>
</message>
<message>
<source>Go to your own bar</source>
<translation>Zur eigenen Bar</translation>
</message>
<message>
<source>Goes off within {days} days</source>
<translation>Innerhalb von {days} Tagen aufzubrauchen</translation>
</message>
<message>
<source>Going on: {bottles} counted before on {when}, not written down yet</source>
<translation>Weiter: {bottles} schon gezählt am {when}, noch nicht aufgeschrieben</translation>
</message>
<message>
<source>Going on: {bottles} counted before, not written down yet</source>
<translation>Weiter: {bottles} schon gezählt, noch nicht aufgeschrieben</translation>
</message>
<message>
<source>Gone besides</source>
<translation>Darüber hinaus weg</translation>
</message>
<message>
<source>Good</source>
<translation>Gut</translation>
</message>
<message>
<source>Got</source>
<translation>Gekauft</translation>
</message>
<message>
<source>Grapefruit and Seville orange change how some medicines work, even hours later: whoever takes medicine should ask a doctor or pharmacist first.</source>
<translation>Grapefruit und Bitterorange verändern die Wirkung mancher Medikamente, auch noch Stunden später: Wer Medikamente nimmt, sollte zuerst in einer Arztpraxis oder Apotheke fragen.</translation>
</message>
<message>
<source>Grate it fine and squeeze through a cloth.</source>
<translation>Fein reiben und durch ein Tuch drücken.</translation>
</message>
<message>
<source>Grate or juice it and squeeze through a cloth; a little lemon keeps it pale.</source>
<translation>Reiben oder entsaften und durch ein Tuch drücken; etwas Zitrone hält es hell.</translation>
</message>
<message>
<source>Grenadine is a syrup; the juice is tart and cannot sweeten a drink.</source>
<translation>Grenadine ist ein Sirup; der Saft ist säuerlich und kann keinen Drink süßen.</translation>
</message>
<message>
<source>Grind coarse, steep twelve to eighteen hours in the cold and filter.</source>
<translation>Grob mahlen, zwölf bis achtzehn Stunden kalt ziehen lassen und filtern.</translation>
</message>
<message>
<source>Grind fine, tamp and pull one shot in some 25 seconds; it needs a machine.</source>
<translation>Fein mahlen, andrücken und einen Shot in etwa 25 Sekunden ziehen; dazu braucht es eine Maschine.</translation>
</message>
<message>
<source>Grind white sugar in short bursts and let the dust settle; it is finer than from a shop, so weigh it.</source>
<translation>Weißen Zucker in kurzen Stößen mahlen und den Staub sich setzen lassen; er ist feiner als gekaufter, deshalb abwiegen.</translation>
</message>
<message>
<source>Grind, pour over just off the boil and filter after four minutes.</source>
<translation>Mahlen, kurz nach dem Kochen aufgießen und nach vier Minuten filtern.</translation>
</message>
<message>
<source>H&amp;ow</source>
<translation>W&amp;ie</translation>
</message>
<message>
<source>Halve and press it, and strain.</source>
<translation>Halbieren, pressen und abseihen.</translation>
</message>
<message>
<source>Halve and press it, and strain; grapefruit acts on many medicines.</source>
<translation>Halbieren, pressen und abseihen; Grapefruit wirkt auf viele Medikamente.</translation>
</message>
<message>
<source>Halve it across.</source>
<translation>Quer halbieren.</translation>
</message>
<message>
<source>Halve it, press it gently and strain out the many seeds.</source>
<translation>Halbieren, sanft pressen und die vielen Kerne abseihen.</translation>
</message>
<message>
<source>Halve it, press it over a strainer for the seeds, the same day.</source>
<translation>Halbieren und am selben Tag über einem Sieb für die Kerne pressen.</translation>
</message>
<message>
<source>Halve it, seed it and cut it in thin wedges.</source>
<translation>Halbieren, entkernen und in dünne Spalten schneiden.</translation>
</message>
<message>
<source>Halve it, stone it and slice it.</source>
<translation>Halbieren, entsteinen und in Scheiben schneiden.</translation>
</message>
<message>
<source>Hard seltzer holds about as much alcohol as beer; plain seltzer holds none.</source>
<translation>Hard Seltzer enthält etwa so viel Alkohol wie Bier; einfacher Seltzer enthält keinen.</translation>
</message>
<message>
<source>Have {count} × {name} ready, for {drinks}.</source>
<translation>{count} × {name} bereithalten, für {drinks}.</translation>
</message>
<message>
<source>Have {many} ready.</source>
<translation>{many} bereithalten.</translation>
</message>
<message>
<source>Health Canada (one week)</source>
<translation>Health Canada (eine Woche)</translation>
</message>
<message>
<source>Health authorities say how much is low-risk (in the United Kingdom 14 units a week at most, spread over three days or more); look up those where you are, and ask a doctor what is so for you.</source>
<translation>Gesundheitsbehörden sagen, wie viel risikoarm ist (im Vereinigten Königreich höchstens 14 Einheiten in der Woche, verteilt auf drei oder mehr Tage); sieh nach, was an deinem Ort gilt, und frag in einer Arztpraxis, was für dich selbst gilt.</translation>
</message>
<message>
<source>Heat drives off some alcohol: about {share:.0f} % stays in (USDA retention factors, 2007). The figures count all of it.</source>
<translation>Hitze treibt Alkohol aus: Etwa {share:.0f} % bleiben darin (USDA-Faktoren, 2007). Die Werte zählen ihn ganz.</translation>
</message>
<message>
<source>Help – barkeep</source>
<translation>Hilfe – barkeep</translation>
</message>
<message>
<source>Ho&amp;use pours</source>
<translation>&amp;Hausmarken</translation>
</message>
<message>
<source>Holds a bottle of 50 % vol or more, which catches fire without warming: keep it from any flame. Local fire rules come first.</source>
<translation>Enthält eine Flasche mit 50 % vol oder mehr, die schon ohne Erwärmen Feuer fängt: von jeder Flamme fernhalten. Örtliche Brandschutzvorschriften gehen vor.</translation>
</message>
<message>
<source>Home</source>
<translation>Pos1</translation>
</message>
<message>
<source>Home-made tonic from cinchona bark: nothing limits the quinine in it, and too much poisons. Buy tonic water instead; it has a legal limit. Ask a doctor or pharmacist.</source>
<translation>Selbst gemachtes Tonic aus Chinarinde: Nichts begrenzt das Chinin darin, und zu viel davon ist giftig. Stattdessen Tonic Water kaufen; dafür gilt ein gesetzlicher Grenzwert. In einer Arztpraxis oder Apotheke fragen.</translation>
</message>
<message>
<source>Honey holds more or less water: its sugar differs by about 5 % (common practice).</source>
<translation>Honig enthält mal mehr, mal weniger Wasser: Sein Zucker schwankt um etwa 5 % (Erfahrungswert).</translation>
</message>
<message>
<source>Honey liqueur is about a third alcohol and has a fraction of the sugar.</source>
<translation>Honiglikör ist etwa zu einem Drittel Alkohol und hat nur einen Bruchteil des Zuckers.</translation>
</message>
<message>
<source>Honey liqueur is about a third alcohol and has less than half the sugar.</source>
<translation>Honiglikör ist etwa zu einem Drittel Alkohol und hat weniger als den halben Zucker.</translation>
</message>
<message>
<source>Hong Kong</source>
<translation>Hongkong</translation>
</message>
<message>
<source>Hot</source>
<translation>Heiß</translation>
</message>
<message>
<source>Hot sauce is salt and vinegar with chilli; the syrup is sugar with chilli.</source>
<translation>Scharfe Sauce ist Salz und Essig mit Chili; der Sirup ist Zucker mit Chili.</translation>
</message>
<message>
<source>Hot: use a heatproof vessel, add spirit off the heat and away from any flame, and serve it cool enough to sip. Cool a scald under running water and get medical advice.</source>
<translation>Heiß: ein hitzefestes Gefäß verwenden, Alkohol abseits von Herd und Flamme zugeben und so weit abgekühlt servieren, dass man daran nippen kann. Eine Verbrühung unter fließendem Wasser kühlen und ärztlichen Rat holen.</translation>
</message>
<message>
<source>House-made</source>
<translation>Selbst gemacht</translation>
</message>
<message>
<source>House-made things to print</source>
<translation>Selbst Gemachtes zum Drucken</translation>
</message>
<message>
<source>How</source>
<translation>Wie</translation>
</message>
<message>
<source>How close it is, up to 1, which tastes the same</source>
<translation>Wie nah er ist, bis 1: schmeckt gleich</translation>
</message>
<message>
<source>How far the shoot is</source>
<translation>Wie weit der Dreh ist</translation>
</message>
<message>
<source>How it is served</source>
<translation>Wie serviert wird</translation>
</message>
<message>
<source>How many days a thing keeps once open or made, where you know better: sweet vermouth = 60. Semicolons part several.</source>
<translation>Wie viele Tage etwas offen oder selbst gemacht hält, wo du es besser weißt: sweet vermouth = 60. Mehrere trennt ein Semikolon.</translation>
</message>
<message>
<source>How many packages were bought: type over it</source>
<translation>Wie viele Packungen gekauft wurden: einfach überschreiben</translation>
</message>
<message>
<source>How much</source>
<translation>Wie viel</translation>
</message>
<message>
<source>How much a weight of {bottle} leaves cannot be worked out: {because}. Weigh a bottle of it once full and once empty, or count it in another way.</source>
<translation>Wie viel bei diesem Gewicht von {bottle} übrig ist, lässt sich nicht ausrechnen: {because}. Wiege eine Flasche davon einmal voll und einmal leer, oder zähle sie auf andere Weise.</translation>
</message>
<message>
<source>How much is done</source>
<translation>Wie viel getan ist</translation>
</message>
<message>
<source>How much of it replaces one part of {wanted}</source>
<translation>Wie viel davon einen Teil {wanted} ersetzt</translation>
</message>
<message>
<source>How much of the strength, sugar and acid comes from {names} is not known: those usual for {made} count.</source>
<translation>Wie viel von Stärke, Zucker und Säure aus {names} kommt, ist nicht bekannt: Es zählt, was für {made} üblich ist.</translation>
</message>
<message>
<source>How much of the sugar and acid comes from {names} is not known: those usual for {made} count.</source>
<translation>Wie viel von Zucker und Säure aus {names} kommt, ist nicht bekannt: Es zählt, was für {made} üblich ist.</translation>
</message>
<message>
<source>How much replaces one part</source>
<translation>Wie viel einen Teil ersetzt</translation>
</message>
<message>
<source>How sure this is</source>
<translation>Wie sicher das ist</translation>
</message>
<message>
<source>How the amounts of specs are shown, rounded to what can be measured. Dashes and pieces stay what they are, and nothing that is written changes.</source>
<translation>Wie die Mengen der Rezepte gezeigt werden, gerundet auf das, was sich messen lässt. Dashes und Stücke bleiben, was sie sind, und nichts Geschriebenes ändert sich.</translation>
</message>
<message>
<source>How the text is understood</source>
<translation>Wie der Text verstanden wird</translation>
</message>
<message>
<source>How to write a spec</source>
<translation>Wie man ein Rezept schreibt</translation>
</message>
<message>
<source>How your list is understood</source>
<translation>So ist deine Liste verstanden</translation>
</message>
<message>
<source>Hull, blend and sieve them.</source>
<translation>Entstielen, mixen und durch ein Sieb streichen.</translation>
</message>
<message>
<source>Hungary</source>
<translation>Ungarn</translation>
</message>
<message>
<source>I have a &amp;list</source>
<translation>Ich habe eine &amp;Liste</translation>
</message>
<message>
<source>I have a list</source>
<translation>Ich habe eine Liste</translation>
</message>
<message>
<source>I&amp;mport specs…</source>
<translation>Re&amp;zepte importieren…</translation>
</message>
<message>
<source>I&amp;ngredient</source>
<translation>&amp;Zutat</translation>
</message>
<message>
<source>Ice</source>
<translation>Eis</translation>
</message>
<message>
<source>Ice adds {share:.0f} % ± {sigma:.0f} % to what is mixed on it ({basis}); your ice and hands are others.</source>
<translation>Eis gibt dem, was darauf gemixt wird, {share:.0f} % ± {sigma:.0f} % hinzu ({basis}); dein Eis und deine Hände sind andere.</translation>
</message>
<message>
<source>Ice cream is sweetened and frozen, and it often holds egg.</source>
<translation>Eiscreme ist gesüßt und gefroren und enthält oft Ei.</translation>
</message>
<message>
<source>Ice forms {begins}; a freezer has {freezer:.0f} °C</source>
<translation>Eis bildet sich {begins}; ein Gefrierfach hat {freezer:.0f} °C</translation>
</message>
<message>
<source>Iceland</source>
<translation>Island</translation>
</message>
<message>
<source>Idea</source>
<translation>Idee</translation>
</message>
<message>
<source>Ideas, and what is planned</source>
<translation>Ideen und Geplantes</translation>
</message>
<message>
<source>Import bottles</source>
<translation>Flaschen importieren</translation>
</message>
<message>
<source>Import specs</source>
<translation>Rezepte importieren</translation>
</message>
<message>
<source>Importing…</source>
<translation>Wird importiert…</translation>
</message>
<message>
<source>Import…</source>
<translation>Importieren…</translation>
</message>
<message>
<source>In a freezer</source>
<translation>Im Gefrierfach</translation>
</message>
<message>
<source>In all</source>
<translation>Insgesamt</translation>
</message>
<message>
<source>In rounds through a {tin}</source>
<translation>In Runden, darin: {tin}</translation>
</message>
<message>
<source>In the bar</source>
<translation>In der Bar</translation>
</message>
<message>
<source>In the bar.</source>
<translation>In der Bar.</translation>
</message>
<message>
<source>In the glass</source>
<translation>Im Glas</translation>
</message>
<message>
<source>In {unit}</source>
<translation>In {unit}</translation>
</message>
<message>
<source>India</source>
<translation>Indien</translation>
</message>
<message>
<source>Ingredient</source>
<translation>Zutat</translation>
</message>
<message>
<source>Ingredients</source>
<translation>Zutaten</translation>
</message>
<message>
<source>Instead of it</source>
<translation>Statt ihrer</translation>
</message>
<message>
<source>Ireland</source>
<translation>Irland</translation>
</message>
<message>
<source>Is a name &amp;for</source>
<translation>Ist ein Name &amp;für</translation>
</message>
<message>
<source>Is left out</source>
<translation>Bleibt weg</translation>
</message>
<message>
<source>It &amp;takes</source>
<translation>Es &amp;braucht</translation>
</message>
<message>
<source>It &amp;yields</source>
<translation>Es er&amp;gibt</translation>
</message>
<message>
<source>It cannot be done just now</source>
<translation>Das geht gerade nicht</translation>
</message>
<message>
<source>It comes in.</source>
<translation>Sie kommt hinzu.</translation>
</message>
<message>
<source>It comes to {figures}.</source>
<translation>Das ergibt {figures}.</translation>
</message>
<message>
<source>It costs</source>
<translation>Sie kostet</translation>
</message>
<message>
<source>It does not come in</source>
<translation>Es kommt nicht hinzu</translation>
</message>
<message>
<source>It fits, up to the wash line</source>
<translation>Es passt, bis zur Fülllinie</translation>
</message>
<message>
<source>It gives</source>
<translation>Es ergibt</translation>
</message>
<message>
<source>It has no use-by day.</source>
<translation>Sie hat kein Haltbarkeitsdatum.</translation>
</message>
<message>
<source>It has no water, {less} less than ice would give ({each_ml:.0f} ml a serve), and would not pour even so: keep it in the fridge instead, as it is served cold.</source>
<translation>Es enthält kein Wasser, {less} weniger, als Eis geben würde ({each_ml:.0f} ml je Portion), und ließe sich trotzdem nicht gießen: lieber in den Kühlschrank stellen, wie beim kalten Servieren.</translation>
</message>
<message>
<source>It holds as much sugar as it can at 20 °C: crystals may settle in the cold.</source>
<translation>Es enthält so viel Zucker, wie es bei 20 °C lösen kann: In der Kälte können sich Kristalle absetzen.</translation>
</message>
<message>
<source>It holds fat and parts as it stands: shake it before use (common practice).</source>
<translation>Es enthält Fett und trennt sich beim Stehen: vor Gebrauch schütteln (übliche Praxis).</translation>
</message>
<message>
<source>It instead of</source>
<translation>Sie statt</translation>
</message>
<message>
<source>It is</source>
<translation>Es ist</translation>
</message>
<message>
<source>It is a whisky liqueur with as much sugar as a syrup; the drink has no room for it as the base.</source>
<translation>Er ist ein Whiskylikör mit so viel Zucker wie ein Sirup; als Basis hat der Drink keinen Platz dafür.</translation>
</message>
<message>
<source>It is drawn from the bottles, and what it makes comes on the shelf with its dates.</source>
<translation>Es wird aus den Flaschen genommen, und was daraus wird, kommt mit seinen Daten ins Regal.</translation>
</message>
<message>
<source>It is filmed</source>
<translation>Ist gedreht</translation>
</message>
<message>
<source>It is filmed; its log is still to be written, and cannot take one line as planned.</source>
<translation>Er ist gedreht; das Protokoll fehlt noch und kann eine Zeile nicht wie geplant aufnehmen.</translation>
</message>
<message>
<source>It is filmed; its log is still to be written, and cannot take {count} lines as planned.</source>
<translation>Er ist gedreht; das Protokoll fehlt noch und kann {count} Zeilen nicht wie geplant aufnehmen.</translation>
</message>
<message>
<source>It is filmed; its log is still to be written.</source>
<translation>Er ist gedreht; das Protokoll fehlt noch.</translation>
</message>
<message>
<source>It is heated: how much of the alcohol stays is not known.</source>
<translation>Es wird erhitzt: Wie viel Alkohol bleibt, ist nicht bekannt.</translation>
</message>
<message>
<source>It is left out, as you said.</source>
<translation>Sie wird weggelassen, wie du gesagt hast.</translation>
</message>
<message>
<source>It is made without ice, so no dilution is counted.</source>
<translation>Er wird ohne Eis gemacht, darum ist keine Verdünnung gezählt.</translation>
</message>
<message>
<source>It is not UTF-8 and was read as Windows-1252, which is a guess; look at these letters</source>
<translation>Es ist kein UTF-8 und wurde als Windows-1252 gelesen, was geraten ist; sieh dir diese Buchstaben an</translation>
</message>
<message>
<source>It is not an ingredient of your own</source>
<translation>Das ist keine eigene Zutat von dir</translation>
</message>
<message>
<source>It is one more bottle of the same product</source>
<translation>Es ist noch eine Flasche desselben Produkts</translation>
</message>
<message>
<source>It is said to be a riff of “{parent}”, which is not here; that became a note.</source>
<translation>Es soll eine Abwandlung von „{parent}“ sein, das nicht hier ist; daraus wurde eine Notiz.</translation>
</message>
<message>
<source>It is the bottle that is there; nothing comes in</source>
<translation>Es ist die Flasche, die da ist; nichts kommt hinzu</translation>
</message>
<message>
<source>It is the same plan as before</source>
<translation>Es ist derselbe Plan wie vorher</translation>
</message>
<message>
<source>It is too small: {spilt:.0f} ml find no room below the brim.</source>
<translation>Es ist zu klein: {spilt:.0f} ml finden unter dem Rand keinen Platz.</translation>
</message>
<message>
<source>It is used by {day}.</source>
<translation>Sie ist haltbar bis {day}.</translation>
</message>
<message>
<source>It looks like a bottle that is there already, so it does not come in.</source>
<translation>Sie sieht aus wie eine Flasche, die schon da ist, und kommt darum nicht hinzu.</translation>
</message>
<message>
<source>It looks like the bottle that is there already, with {left} left.</source>
<translation>Sie sieht aus wie die Flasche, die schon da ist, mit {left} darin.</translation>
</message>
<message>
<source>It takes</source>
<translation>Es braucht</translation>
</message>
<message>
<source>It takes {less} less than ice would give ({each_ml:.0f} ml a serve), so that it still pours at {freezer_c:.0f} °C: stir each serve on ice for the rest, or pour it smaller.</source>
<translation>Es braucht {less} weniger, als Eis geben würde ({each_ml:.0f} ml je Portion), damit es sich bei {freezer_c:.0f} °C noch gießen lässt: für den Rest jede Portion auf Eis rühren oder kleiner ausschenken.</translation>
</message>
<message>
<source>It was cheapest at {shop}: {cost} on {day}.</source>
<translation>Am günstigsten war es bei {shop}: {cost} am {day}.</translation>
</message>
<message>
<source>It was logged on {day}.</source>
<translation>Er wurde am {day} protokolliert.</translation>
</message>
<message>
<source>It was read as UTF-16.</source>
<translation>Es wurde als UTF-16 gelesen.</translation>
</message>
<message>
<source>It was stopped</source>
<translation>Es wurde abgebrochen</translation>
</message>
<message>
<source>It was stopped before any drink was found.</source>
<translation>Es wurde abgebrochen, bevor ein Drink gefunden war.</translation>
</message>
<message>
<source>Italy</source>
<translation>Italien</translation>
</message>
<message>
<source>Its dasher gives less than a dash: measure ten of them with the dasher's setting.</source>
<translation>Der Dasher gibt weniger als einen Dash: zehn davon abmessen und in seiner Einstellung eintragen.</translation>
</message>
<message>
<source>Its dasher gives more than a dash: measure ten of them with the dasher's setting.</source>
<translation>Der Dasher gibt mehr als einen Dash: zehn davon abmessen und in seiner Einstellung eintragen.</translation>
</message>
<message>
<source>Its family</source>
<translation>Ihre Familie</translation>
</message>
<message>
<source>Its lines that are not understood stay as they are written, to be settled later</source>
<translation>Seine nicht verstandenen Zeilen bleiben, wie sie geschrieben sind, und werden später geklärt</translation>
</message>
<message>
<source>Its neighbours</source>
<translation>Ihre Nachbarn</translation>
</message>
<message>
<source>Its newest good backup is “{backup}” {told}</source>
<translation>Die neueste brauchbare Sicherung ist „{backup}“ {told}</translation>
</message>
<message>
<source>Its spec was removed.</source>
<translation>Das Rezept wurde entfernt.</translation>
</message>
<message>
<source>Its strength is not known, so it is not set among drinks of its kind.</source>
<translation>Sein Alkoholgehalt ist nicht bekannt, darum wird er nicht unter Drinks seiner Art eingeordnet.</translation>
</message>
<message>
<source>Its time was over</source>
<translation>Die Zeit war um</translation>
</message>
<message>
<source>JSON</source>
<translation>JSON</translation>
</message>
<message>
<source>JSON-LD</source>
<translation>JSON-LD</translation>
</message>
<message>
<source>Jan</source>
<translation>Jan.</translation>
</message>
<message>
<source>January</source>
<translation>Januar</translation>
</message>
<message>
<source>Japan</source>
<translation>Japan</translation>
</message>
<message>
<source>Jul</source>
<translation>Juli</translation>
</message>
<message>
<source>July</source>
<translation>Juli</translation>
</message>
<message>
<source>Jun</source>
<translation>Juni</translation>
</message>
<message>
<source>June</source>
<translation>Juni</translation>
</message>
<message>
<source>Kalinowski and Humphreys 2016</source>
<translation>Kalinowski und Humphreys 2016</translation>
</message>
<message>
<source>Keep</source>
<translation>Behalten</translation>
</message>
<message>
<source>Keep both</source>
<translation>Beide behalten</translation>
</message>
<message>
<source>Keep counting</source>
<translation>Weiterzählen</translation>
</message>
<message>
<source>Keep for &amp;later</source>
<translation>Für &amp;später behalten</translation>
</message>
<message>
<source>Keep it as a spec of your own ({keys})</source>
<translation>Als eigenes Rezept behalten ({keys})</translation>
</message>
<message>
<source>Keep it as my own recipe</source>
<translation>Als eigenes Rezept behalten</translation>
</message>
<message>
<source>Keep mine</source>
<translation>Meins behalten</translation>
</message>
<message>
<source>Keep them &amp;beside the bar</source>
<translation>Ne&amp;ben der Bar aufbewahren</translation>
</message>
<message>
<source>Keep with 1 question</source>
<translation>Mit 1 Frage behalten</translation>
</message>
<message>
<source>Keep with their &amp;questions</source>
<translation>Mit ihren &amp;Fragen behalten</translation>
</message>
<message>
<source>Keep with {count} questions</source>
<translation>Mit {count} Fragen behalten</translation>
</message>
<message>
<source>Keep with {questions}</source>
<translation>Mit {questions} behalten</translation>
</message>
<message>
<source>Keeps</source>
<translation>Hält</translation>
</message>
<message>
<source>Keeps &amp;for</source>
<translation>&amp;Hält</translation>
</message>
<message>
<source>Kept &amp;in</source>
<translation>Gemessen &amp;in</translation>
</message>
<message>
<source>Kernels of apricots, peaches, plums and cherries, and bitter almonds, give off cyanide; about three small apricot kernels are an adult's limit. Leave them out; your food agency says more.</source>
<translation>Kerne von Aprikosen, Pfirsichen, Pflaumen und Kirschen sowie Bittermandeln setzen Blausäure frei; etwa drei kleine Aprikosenkerne sind die Grenze für Erwachsene. Weglassen; mehr weiß deine Lebensmittelbehörde.</translation>
</message>
<message>
<source>Keyboard shortcuts</source>
<translation>Tastenkürzel</translation>
</message>
<message>
<source>Keys</source>
<translation>Tasten</translation>
</message>
<message>
<source>Kind</source>
<translation>Art</translation>
</message>
<message>
<source>Kinds of it</source>
<translation>Arten davon</translation>
</message>
<message>
<source>Kinds or products, one after a semicolon: vodka; Lamp Room dry gin</source>
<translation>Zutaten oder Produkte, durch Semikolon getrennt: vodka; Lamp Room dry gin</translation>
</message>
<message>
<source>Kinds to tick</source>
<translation>Zutaten zum Ankreuzen</translation>
</message>
<message>
<source>Kirsch is a dry spirit with no sugar; maraschino is a liqueur with some 350 grams a litre.</source>
<translation>Kirschwasser ist ein trockener Brand ohne Zucker; Maraschino ist ein Likör mit rund 350 Gramm im Liter.</translation>
</message>
<message>
<source>L&amp;arge</source>
<translation>&amp;Groß</translation>
</message>
<message>
<source>Label</source>
<translation>Etikett</translation>
</message>
<message>
<source>Labels</source>
<translation>Etiketten</translation>
</message>
<message>
<source>Labels of house-made things</source>
<translation>Etiketten für selbst Gemachtes</translation>
</message>
<message>
<source>Language: </source>
<translation>Sprache: </translation>
</message>
<message>
<source>Last: {what}, {day}</source>
<translation>Zuletzt: {what}, {day}</translation>
</message>
<message>
<source>Later</source>
<translation>Später</translation>
</message>
<message>
<source>Leas&amp;t</source>
<translation>&amp;Mindestens</translation>
</message>
<message>
<source>Leave</source>
<translation>Verlassen</translation>
</message>
<message>
<source>Leave &amp;out</source>
<translation>&amp;Weglassen</translation>
</message>
<message>
<source>Leave for &amp;later</source>
<translation>Für s&amp;päter lassen</translation>
</message>
<message>
<source>Leave it for &amp;later</source>
<translation>Für s&amp;päter lassen</translation>
</message>
<message>
<source>Leave out</source>
<translation>Weglassen</translation>
</message>
<message>
<source>Leave out what the market sells: fruit, dairy, dry goods</source>
<translation>Weglassen, was es auf dem Markt gibt: Obst, Milchprodukte, Trockenwaren</translation>
</message>
<message>
<source>Leave the count first</source>
<translation>Erst die Zählung verlassen</translation>
</message>
<message>
<source>Leave the count with Esc to search; what is counted stays</source>
<translation>Zum Suchen die Zählung mit Esc verlassen; was gezählt ist, bleibt</translation>
</message>
<message>
<source>Leave the recipe &amp;as it was</source>
<translation>Rezept &amp;so lassen, wie es war</translation>
</message>
<message>
<source>Leave {typed} unwritten?</source>
<translation>Gehen, ohne es zu schreiben: {typed}?</translation>
</message>
<message>
<source>Leaves {left} of {size}</source>
<translation>Es bleiben {left} von {size}</translation>
</message>
<message>
<source>Ledger</source>
<translation>Verlauf</translation>
</message>
<message>
<source>Ledger, {n} entries</source>
<translation>Verlauf, {n} Einträge</translation>
</message>
<message>
<source>Left</source>
<translation>Noch da</translation>
</message>
<message>
<source>Left aside</source>
<translation>Beiseitegelassen</translation>
</message>
<message>
<source>Left out</source>
<translation>Weggelassen</translation>
</message>
<message>
<source>Lemonade is a clear fizzy drink in Britain and still lemon, sugar and water in the United States.</source>
<translation>Lemonade ist in Großbritannien eine klare Limonade mit Kohlensäure, in den Vereinigten Staaten Zitrone, Zucker und stilles Wasser.</translation>
</message>
<message>
<source>Less than {least:g} {unit}</source>
<translation>Weniger als {least:g} {unit}</translation>
</message>
<message>
<source>Less went out than the pours say: short pours, or a serve that was not made.</source>
<translation>Weniger ging weg, als ausgeschenkt sein soll: knapp ausgeschenkt oder eine Portion nicht gemacht.</translation>
</message>
<message>
<source>Level</source>
<translation>Füllstand</translation>
</message>
<message>
<source>Level over time</source>
<translation>Füllstand im Lauf der Zeit</translation>
</message>
<message>
<source>Licences</source>
<translation>Lizenzen</translation>
</message>
<message>
<source>Light, up to 12 % vol</source>
<translation>Leicht, bis 12 % vol</translation>
</message>
<message>
<source>Likely reason</source>
<translation>Wahrscheinlicher Grund</translation>
</message>
<message>
<source>Lime cordial is sweetened and half as sour; as juice it leaves the drink flat and sugary.</source>
<translation>Limettencordial ist gesüßt und halb so sauer; als Saft lässt er den Drink flach und zuckrig.</translation>
</message>
<message>
<source>Limited by</source>
<translation>Begrenzt durch</translation>
</message>
<message>
<source>Limoncello is a sweet liqueur from lemon peel and has almost no acid.</source>
<translation>Limoncello ist ein süßer Likör aus Zitronenschale und hat fast keine Säure.</translation>
</message>
<message>
<source>Line</source>
<translation>Zeile</translation>
</message>
<message>
<source>Line {line}</source>
<translation>Zeile {line}</translation>
</message>
<message>
<source>Line {line}, “{text}”: {reason}.</source>
<translation>Zeile {line}, „{text}“: {reason}.</translation>
</message>
<message>
<source>Line {line}: {message}</source>
<translation>Zeile {line}: {message}</translation>
</message>
<message>
<source>Line {line}: {words}</source>
<translation>Zeile {line}: {words}</translation>
</message>
<message>
<source>Lines</source>
<translation>Zeilen</translation>
</message>
<message>
<source>Lines of the spec</source>
<translation>Zeilen des Rezepts</translation>
</message>
<message>
<source>Lines such as Glass: coupe, Garnish: lemon peel, Riff of: and Notes: say what they hold.</source>
<translation>Zeilen wie Glas: Coupette, Garnitur: Zitronenzeste, Riff of: und Notizen: sagen, was sie enthalten.</translation>
</message>
<message>
<source>Lines that cannot be read yet are not counted.</source>
<translation>Zeilen, die noch nicht lesbar sind, sind nicht gezählt.</translation>
</message>
<message>
<source>List</source>
<translation>Liste</translation>
</message>
<message>
<source>Lists of bottles (*.csv)</source>
<translation>Listen von Flaschen (*.csv)</translation>
</message>
<message>
<source>Lists of bottles (*.csv);;All files (*)</source>
<translation>Listen von Flaschen (*.csv);;Alle Dateien (*)</translation>
</message>
<message>
<source>Log a shoot and count its bottles: what is gone without a pour shows here.</source>
<translation>Einen Dreh protokollieren und seine Flaschen zählen: Hier steht dann, was weg ist, ohne ausgeschenkt zu sein.</translation>
</message>
<message>
<source>Log it…</source>
<translation>Protokollieren…</translation>
</message>
<message>
<source>Log not written</source>
<translation>Protokoll nicht geschrieben</translation>
</message>
<message>
<source>Log shoot…</source>
<translation>Dreh protokollieren…</translation>
</message>
<message>
<source>Log {theme}</source>
<translation>{theme} protokollieren</translation>
</message>
<message>
<source>Logged</source>
<translation>Fertig</translation>
</message>
<message>
<source>Logged {theme}</source>
<translation>{theme} protokolliert</translation>
</message>
<message>
<source>Look around the sample &amp;bar</source>
<translation>In der &amp;Beispielbar umsehen</translation>
</message>
<message>
<source>Look at </source>
<translation>Ansehen: </translation>
</message>
<message>
<source>Look out</source>
<translation>Achtung</translation>
</message>
<message>
<source>Looking for the best plan…</source>
<translation>Der beste Plan wird gesucht…</translation>
</message>
<message>
<source>Looking for the best plan… so far it is worth {opens}, and none exceeds {bound}</source>
<translation>Der beste Plan wird gesucht … bisher ist er {opens} wert, und keiner übertrifft {bound}</translation>
</message>
<message>
<source>Looking for the drinks that use most…</source>
<translation>Die Drinks werden gesucht, die am meisten verbrauchen…</translation>
</message>
<message>
<source>Loose</source>
<comment>closeness</comment>
<translation>Entfernt</translation>
</message>
<message>
<source>Lost</source>
<translation>Verloren</translation>
</message>
<message>
<source>Lost without it</source>
<translation>Ohne sie verloren</translation>
</message>
<message>
<source>Low</source>
<translation>Fast leer</translation>
</message>
<message>
<source>Low or due</source>
<translation>Fast leer oder fällig</translation>
</message>
<message>
<source>Ma&amp;de on</source>
<translation>Gema&amp;cht am</translation>
</message>
<message>
<source>Made</source>
<translation>Hergestellt</translation>
</message>
<message>
<source>Made</source>
<comment>a backup</comment>
<translation>Angelegt</translation>
</message>
<message>
<source>Made &amp;here</source>
<translation>Selbst ge&amp;macht</translation>
</message>
<message>
<source>Made any way</source>
<translation>Jede Zubereitung</translation>
</message>
<message>
<source>Made from</source>
<translation>Gemacht aus</translation>
</message>
<message>
<source>Made here</source>
<translation>Selbst gemacht</translation>
</message>
<message>
<source>Made how</source>
<translation>Zubereitung</translation>
</message>
<message>
<source>Made of it</source>
<translation>Daraus gemacht</translation>
</message>
<message>
<source>Made on {made}, use by {use_by}.</source>
<translation>Gemacht am {made}, haltbar bis {use_by}.</translation>
</message>
<message>
<source>Make</source>
<translation>Herstellen</translation>
</message>
<message>
<source>Make a warm syrup of sugar and water, let it cool and stir in the strained pulp.</source>
<translation>Aus Zucker und Wasser einen warmen Sirup machen, abkühlen lassen und das abgeseihte Fruchtfleisch einrühren.</translation>
</message>
<message>
<source>Make it</source>
<translation>Machen</translation>
</message>
<message>
<source>Make it a house pou&amp;r…</source>
<translation>Zur &amp;Hausmarke machen…</translation>
</message>
<message>
<source>Make it here</source>
<translation>Hier selbst machen</translation>
</message>
<message>
<source>Make up with water what boils away beyond the yield (common practice).</source>
<translation>Was über den Ertrag hinaus verkocht, mit Wasser auffüllen (übliche Praxis).</translation>
</message>
<message>
<source>Make {much} from {inputs}</source>
<translation>{much} aus {inputs} herstellen</translation>
</message>
<message>
<source>Make {name}…</source>
<translation>{name} herstellen…</translation>
</message>
<message>
<source>Make {title} a house pour</source>
<translation>{title} zur Hausmarke machen</translation>
</message>
<message>
<source>Makeable</source>
<translation>Machbar</translation>
</message>
<message>
<source>Maker</source>
<translation>Hersteller</translation>
</message>
<message>
<source>Makes {serves:g}</source>
<translation>Ergibt {serves:g}</translation>
</message>
<message>
<source>Make…</source>
<translation>Herstellen…</translation>
</message>
<message>
<source>Mar</source>
<translation>März</translation>
</message>
<message>
<source>Maraschino is clear and tastes of cherry stones and flowers; cherry liqueur is red, fruity and jammy.</source>
<translation>Maraschino ist klar und schmeckt nach Kirschkern und Blüten; Kirschlikör ist rot, fruchtig und marmeladig.</translation>
</message>
<message>
<source>March</source>
<translation>März</translation>
</message>
<message>
<source>Mark as won</source>
<translation>Als beste festlegen</translation>
</message>
<message>
<source>Markdown</source>
<translation>Markdown</translation>
</message>
<message>
<source>Market</source>
<translation>Markt</translation>
</message>
<message>
<source>Marsala is a fortified wine; only the first letters are alike.</source>
<translation>Marsala ist ein verstärkter Wein; nur die ersten Buchstaben sind gleich.</translation>
</message>
<message>
<source>May</source>
<translation>Mai</translation>
</message>
<message>
<source>Measure</source>
<translation>Abmessen</translation>
</message>
<message>
<source>Measures of your own, understood wherever an amount is typed: small ladle = 1.5 oz. Semicolons part several. A spec keeps what its lines came to when they were written.</source>
<translation>Eigene Maße, verstanden überall, wo eine Menge eingegeben wird: small ladle = 1.5 oz. Mehrere trennt ein Semikolon. Ein Rezept behält, was seine Zeilen ergaben, als sie geschrieben wurden.</translation>
</message>
<message>
<source>Measuring</source>
<translation>Messen</translation>
</message>
<message>
<source>Medium, 12 to 20 % vol</source>
<translation>Mittel, 12 bis 20 % vol</translation>
</message>
<message>
<source>Melt half the sugar dry until amber, take it off the heat, pour in the water from afar, since it spits, and stir in the rest.</source>
<translation>Die Hälfte des Zuckers trocken schmelzen, bis er bernsteinfarben ist, vom Herd nehmen, das Wasser mit Abstand zugießen, denn es spritzt, und den Rest einrühren.</translation>
</message>
<message>
<source>Menu</source>
<translation>Getränkekarte</translation>
</message>
<message>
<source>Menu as text</source>
<translation>Getränkekarte als Text</translation>
</message>
<message>
<source>Method</source>
<translation>Zubereitung</translation>
</message>
<message>
<source>Method, glass, notes and further specs are in the text.</source>
<translation>Zubereitung, Glas, Notizen und weitere Rezepte stehen im Text.</translation>
</message>
<message>
<source>Method: {method}</source>
<translation>Zubereitung: {method}</translation>
</message>
<message>
<source>Mexico</source>
<translation>Mexiko</translation>
</message>
<message>
<source>Mise en place</source>
<translation>Mise en Place</translation>
</message>
<message>
<source>Mise en place: {done} of {of} done</source>
<translation>Mise en Place: {done} von {of} erledigt</translation>
</message>
<message>
<source>Missing</source>
<translation>Fehlt</translation>
</message>
<message>
<source>Mix cocoa and sugar with a little milk, add the rest and heat without boiling.</source>
<translation>Kakao und Zucker mit etwas Milch anrühren, den Rest zugeben und erhitzen, ohne zu kochen.</translation>
</message>
<message>
<source>Monday</source>
<translation>Montag</translation>
</message>
<message>
<source>More</source>
<translation>Mehr</translation>
</message>
<message>
<source>More is gone than the pours say: a spill or a drink nobody wrote down.</source>
<translation>Mehr ist weg, als ausgeschenkt sein soll: etwas verschüttet oder ein Drink, den niemand notiert hat.</translation>
</message>
<message>
<source>More of the details</source>
<translation>Mehr zu den Einzelheiten</translation>
</message>
<message>
<source>More than one ingredient is missing</source>
<translation>Mehr als eine Zutat fehlt</translation>
</message>
<message>
<source>More that can be done</source>
<translation>Was sich sonst tun lässt</translation>
</message>
<message>
<source>More that can be done ({keys})</source>
<translation>Was sich sonst tun lässt ({keys})</translation>
</message>
<message>
<source>Move &amp;down the shelf</source>
<translation>Im Regal nach &amp;hinten</translation>
</message>
<message>
<source>Move &amp;up the shelf</source>
<translation>Im Regal na&amp;ch vorn</translation>
</message>
<message>
<source>Move the drink down</source>
<translation>Drink nach unten</translation>
</message>
<message>
<source>Move the drink up</source>
<translation>Drink nach oben</translation>
</message>
<message>
<source>Move the line down</source>
<translation>Zeile nach unten schieben</translation>
</message>
<message>
<source>Move the line down (Alt+Down)</source>
<translation>Zeile nach unten schieben (Alt+Pfeil runter)</translation>
</message>
<message>
<source>Move the line up</source>
<translation>Zeile nach oben schieben</translation>
</message>
<message>
<source>Move the line up (Alt+Up)</source>
<translation>Zeile nach oben schieben (Alt+Pfeil hoch)</translation>
</message>
<message>
<source>Moved {name}</source>
<translation>{name} verschoben</translation>
</message>
<message>
<source>Moved {name} down the shelf</source>
<translation>{name} im Regal nach hinten gerückt</translation>
</message>
<message>
<source>Moved {name} up the shelf</source>
<translation>{name} im Regal nach vorn gerückt</translation>
</message>
<message>
<source>Moved {name}: it stands before {other}</source>
<translation>{name} verschoben: steht vor {other}</translation>
</message>
<message>
<source>Moved {name}: it stands last</source>
<translation>{name} verschoben: steht zuletzt</translation>
</message>
<message>
<source>Name</source>
<translation>Name</translation>
</message>
<message>
<source>Name of the drink</source>
<translation>Name des Drinks</translation>
</message>
<message>
<source>Name of the drink
60 ml London dry gin
20 ml lemon juice
2 dashes orange bitters
Garnish: lemon peel
Glass: coupe

Shake with ice and strain.</source>
<translation>Name des Drinks
60 ml London Dry Gin
20 ml Zitronensaft
2 Dashes Orange Bitters
Garnitur: Zitronenzeste
Glas: Coupette

Mit Eis schütteln und abseihen.</translation>
</message>
<message>
<source>Name the kind that it is poured for where a spec says no more. The settings list your house pours, and take one away.</source>
<translation>Nenne die Zutat, für die sie genommen wird, wo ein Rezept nicht mehr sagt. Die Einstellungen listen deine Hausmarken auf und nehmen auch eine weg.</translation>
</message>
<message>
<source>Name under which theirs comes in</source>
<translation>Name, unter dem das andere hinzukommt</translation>
</message>
<message>
<source>Names</source>
<translation>Namen</translation>
</message>
<message>
<source>Narrow at the foot and widest at the shoulder: some aperitifs, vodkas and liqueurs</source>
<translation>Schmal am Fuß und am breitesten an der Schulter: manche Aperitifs, Wodkas und Liköre</translation>
</message>
<message>
<source>Ne&amp;w…</source>
<translation>N&amp;eu…</translation>
</message>
<message>
<source>Nearer is closer. A bottle marks what is in the bar. Enter or a click goes on, Backspace back.</source>
<translation>Je näher, desto ähnlicher. Eine Flasche zeigt, was in der Bar ist. Enter oder ein Klick geht weiter, die Rücktaste zurück.</translation>
</message>
<message>
<source>Need</source>
<translation>Bedarf</translation>
</message>
<message>
<source>Netherlands</source>
<translation>Niederlande</translation>
</message>
<message>
<source>Neutral spirit at 96 % vol is for infusions; poured as vodka it is more than twice as strong and unsafe to drink.</source>
<translation>Neutralalkohol mit 96 % vol ist für Auszüge; als Wodka eingeschenkt ist er mehr als doppelt so stark und gefährlich zu trinken.</translation>
</message>
<message>
<source>Never as the base</source>
<translation>Nie als Basis</translation>
</message>
<message>
<source>Never garnish with a poisonous plant, such as foxglove, lily of the valley, monkshood or oleander: use flowers sold as food. After a mishap call your local poison centre at once.</source>
<translation>Nie mit einer giftigen Pflanze garnieren, etwa Fingerhut, Maiglöckchen, Eisenhut oder Oleander: nur Blüten nehmen, die als Lebensmittel verkauft werden. Nach einem Missgeschick sofort die örtliche Giftnotrufzentrale anrufen.</translation>
</message>
<message>
<source>Never {ingredient}: {why}.</source>
<translation>Nie {ingredient}: {why}.</translation>
</message>
<message>
<source>New</source>
<translation>Neu</translation>
</message>
<message>
<source>New York City Department of Health orders, 2016 to 2018</source>
<translation>Anordnungen der Gesundheitsbehörde von New York City, 2016 bis 2018</translation>
</message>
<message>
<source>New Zealand</source>
<translation>Neuseeland</translation>
</message>
<message>
<source>New bar</source>
<translation>Neue Bar</translation>
</message>
<message>
<source>New ingredient</source>
<translation>Neue Zutat</translation>
</message>
<message>
<source>New ingredient…</source>
<translation>Neue Zutat…</translation>
</message>
<message>
<source>New ingredient…, or another name for one that is known</source>
<translation>Neue Zutat…, oder ein weiterer Name für eine bekannte</translation>
</message>
<message>
<source>New shoot</source>
<translation>Neuer Dreh</translation>
</message>
<message>
<source>New shoot…</source>
<translation>Neuer Dreh…</translation>
</message>
<message>
<source>New spec</source>
<translation>Neues Rezept</translation>
</message>
<message>
<source>New spec…</source>
<translation>Neues Rezept…</translation>
</message>
<message>
<source>Next bottle</source>
<translation>Nächste Flasche</translation>
</message>
<message>
<source>Next shoot</source>
<translation>Nächster Dreh</translation>
</message>
<message>
<source>Next: {next_step}</source>
<translation>Als Nächstes: {next_step}</translation>
</message>
<message>
<source>No alcohol {without}</source>
<translation>Kein Alkohol {without}</translation>
</message>
<message>
<source>No backup of {file} could be made: {reason} What you did is written all the same.</source>
<translation>Von {file} konnte keine Sicherung gemacht werden: {reason} Was du getan hast, ist trotzdem gespeichert.</translation>
</message>
<message>
<source>No backup yet</source>
<translation>Noch keine Sicherung</translation>
</message>
<message>
<source>No bottle has the barcode {code} yet.</source>
<translation>Den Strichcode {code} hat noch keine Flasche.</translation>
</message>
<message>
<source>No bottle has the barcode {code}. {why}</source>
<translation>Den Strichcode {code} hat keine Flasche. {why}</translation>
</message>
<message>
<source>No bottle has the barcode {code}; “barkeep product add” takes one in with --barcode.</source>
<translation>Keine Flasche hat den Strichcode {code}; „barkeep product add“ nimmt eine mit --barcode auf.</translation>
</message>
<message>
<source>No bottle here fits</source>
<translation>Keine Flasche hier passt</translation>
</message>
<message>
<source>No bottles yet</source>
<translation>Noch keine Flaschen</translation>
</message>
<message>
<source>No bottles yet: every drink is short until the bar knows what is there.</source>
<translation>Noch keine Flaschen: Jedem Drink fehlt etwas, bis die Bar weiß, was da ist.</translation>
</message>
<message>
<source>No column holds a name; the drink is called after its file, “{name}”.</source>
<translation>Keine Spalte enthält einen Namen; der Drink heißt nach seiner Datei, „{name}“.</translation>
</message>
<message>
<source>No day is given, so it counts as opened today.</source>
<translation>Es ist kein Tag angegeben, also gilt sie als heute geöffnet.</translation>
</message>
<message>
<source>No drink is planned yet.</source>
<translation>Noch ist kein Drink geplant.</translation>
</message>
<message>
<source>No drink to show</source>
<translation>Kein Drink zu zeigen</translation>
</message>
<message>
<source>No drink uses any of {many}, which are marked.</source>
<translation>Kein Drink verbraucht etwas von {many}; sie sind markiert.</translation>
</message>
<message>
<source>No drink uses it.</source>
<translation>Kein Drink verbraucht etwas davon.</translation>
</message>
<message>
<source>No drink yet</source>
<translation>Noch kein Drink</translation>
</message>
<message>
<source>No drink yet: put some in with Edit.</source>
<translation>Noch kein Drink: mit „Bearbeiten“ kommen welche hinein.</translation>
</message>
<message>
<source>No egg</source>
<translation>Kein Ei</translation>
</message>
<message>
<source>No fewer serves use {share} of all that could be used; that is proved.</source>
<translation>Mit weniger Portionen lässt sich nicht {share} von allem verbrauchen, was sich verbrauchen ließe; das ist bewiesen.</translation>
</message>
<message>
<source>No ice is named, so no dilution is counted.</source>
<translation>Es ist kein Eis genannt, darum ist keine Verdünnung gezählt.</translation>
</message>
<message>
<source>No ingredient is called “{garnish}”; it stays a garnish in words.</source>
<translation>Keine Zutat heißt „{garnish}“; es bleibt eine Garnitur in Worten.</translation>
</message>
<message>
<source>No ingredient is called “{name}”.</source>
<translation>Keine Zutat heißt „{name}“.</translation>
</message>
<message>
<source>No ingredients</source>
<translation>Keine Zutaten</translation>
</message>
<message>
<source>No maker</source>
<translation>Kein Hersteller</translation>
</message>
<message>
<source>No more than the doubt of the levels explains.</source>
<translation>Nicht mehr, als die Unsicherheit der Füllstände erklärt.</translation>
</message>
<message>
<source>No name</source>
<translation>Kein Name</translation>
</message>
<message>
<source>No name yet</source>
<translation>Noch ohne Namen</translation>
</message>
<message>
<source>No nuts</source>
<translation>Keine Nüsse</translation>
</message>
<message>
<source>No open bottles</source>
<translation>Keine offenen Flaschen</translation>
</message>
<message>
<source>No ordinary {name} is there: {named} are poured only when asked for, and are not close enough to stand in.</source>
<translation>Von {name} ist die gewöhnliche Art nicht da: {named} werden nur auf Verlangen genommen und sind als Ersatz nicht nah genug.</translation>
</message>
<message>
<source>No ordinary {name} is there: {named} is poured only when asked for, and is not close enough to stand in.</source>
<translation>Von {name} ist die gewöhnliche Art nicht da: {named} wird nur auf Verlangen genommen und ist als Ersatz nicht nah genug.</translation>
</message>
<message>
<source>No ordinary {wanted} is there: {offered} is poured only when asked for; pour {times} times as much.</source>
<translation>Von {wanted} ist die gewöhnliche Art nicht da: {offered} wird nur auf Verlangen genommen; nimm {times}-mal so viel.</translation>
</message>
<message>
<source>No pairs</source>
<translation>Keine Paare</translation>
</message>
<message>
<source>No par is set yet</source>
<translation>Noch kein Sollbestand gesetzt</translation>
</message>
<message>
<source>No price is known for {names}, so the cost is not.</source>
<translation>Für {names} ist kein Preis bekannt, darum auch nicht die Kosten.</translation>
</message>
<message>
<source>No price is known for {names}, so the cost is not; the rest costs {known}.</source>
<translation>Für {names} ist kein Preis bekannt, darum auch nicht die Kosten; der Rest kostet {known}.</translation>
</message>
<message>
<source>No purchase would each turn a drink ready</source>
<translation>Kein einzelner Kauf würde einen Drink machbar machen</translation>
</message>
<message>
<source>No row is chosen to be copied</source>
<translation>Keine Zeile zum Kopieren gewählt</translation>
</message>
<message>
<source>No serves</source>
<translation>Keine Portionen</translation>
</message>
<message>
<source>No shoot is to be filmed: name one with --to, or write one down with barkeep shoot plan THEME --on DAY.</source>
<translation>Kein Dreh steht an: Nenn einen mit --to, oder schreib einen auf mit barkeep shoot plan THEME --on DAY.</translation>
</message>
<message>
<source>No shoots yet</source>
<translation>Noch keine Drehs</translation>
</message>
<message>
<source>No spec has a line that asks for it</source>
<translation>Kein Rezept hat eine Zeile, die sie verlangt</translation>
</message>
<message>
<source>No specs yet</source>
<translation>Noch keine Rezepte</translation>
</message>
<message>
<source>No stand-in for it is your own</source>
<translation>Kein Ersatz dafür ist von dir</translation>
</message>
<message>
<source>No tin: all in one</source>
<translation>Kein Shaker: alles auf einmal</translation>
</message>
<message>
<source>No trial yet. Taste it, and write down what each taster made of it.</source>
<translation>Noch kein Versuch. Verkoste ihn und schreib auf, was jeder davon hielt.</translation>
</message>
<message>
<source>No use-by date: check it</source>
<translation>Kein Haltbarkeitsdatum: prüfen</translation>
</message>
<message>
<source>No usual range is known for a drink of this kind.</source>
<translation>Für einen Drink dieser Art ist kein üblicher Bereich bekannt.</translation>
</message>
<message>
<source>No water goes in ahead: the ice gives it, and brings each serve to about {served_ml:.0f} ml at {abv_percent:.0f} % vol.</source>
<translation>Vorher kommt kein Wasser hinein: Das Eis gibt es und bringt jede Portion auf etwa {served_ml:.0f} ml mit {abv_percent:.0f} % vol.</translation>
</message>
<message>
<source>No {allergen}</source>
<translation>Ohne {allergen}</translation>
</message>
<message>
<source>No {name} here has {least:g} % vol or more: the strongest, {title}, has {abv:g} %.</source>
<translation>Kein {name} hier hat {least:g} % vol oder mehr: Am stärksten ist {title} mit {abv:g} %.</translation>
</message>
<message>
<source>No {name} in the bar, and nothing close enough to stand in for it.</source>
<translation>{name} ist nicht in der Bar, und nichts ist als Ersatz nah genug.</translation>
</message>
<message>
<source>No {noun} match</source>
<translation>Keine {noun} passen</translation>
</message>
<message>
<source>No {serves} use more, ready drinks first; that is proved.</source>
<translation>Mit {serves} lässt sich nicht mehr verbrauchen, machbare Drinks zuerst; das ist bewiesen.</translation>
</message>
<message>
<source>No, only my own specs</source>
<translation>Nein, nur meine eigenen Rezepte</translation>
</message>
<message>
<source>No: {lacks}.</source>
<translation>Nein: {lacks}.</translation>
</message>
<message>
<source>Nobody has walked among neighbours yet</source>
<translation>Noch ist niemand durch die Nachbarn gegangen</translation>
</message>
<message>
<source>Nobody knows what {names} costs.</source>
<translation>Niemand weiß, was {names} kostet.</translation>
</message>
<message>
<source>None</source>
<comment>of what is not in a drink</comment>
<translation>Nichts</translation>
</message>
<message>
<source>None is your own yet: write one with New spec…, import some, or riff on a classic</source>
<translation>Noch ist keines dein eigenes: schreib eines mit „Neues Rezept…“, importiere welche oder wandle einen Klassiker ab</translation>
</message>
<message>
<source>None yet</source>
<translation>Noch keine</translation>
</message>
<message>
<source>Not all is taken from a bottle: {lacking}</source>
<translation>Nicht alles kommt aus einer Flasche: {lacking}</translation>
</message>
<message>
<source>Not compared, for it is not understood: {named} of {name}.</source>
<translation>Nicht verglichen, weil nicht verstanden: {named} aus {name}.</translation>
</message>
<message>
<source>Not counted</source>
<translation>Nicht mitgezählt</translation>
</message>
<message>
<source>Not counted in {drink}: {because}.</source>
<translation>In {drink} nicht gerechnet: {because}.</translation>
</message>
<message>
<source>Not counted, for how much it gives is not known: {names}.</source>
<translation>Nicht gezählt, weil nicht bekannt ist, wie viel es ergibt: {names}.</translation>
</message>
<message>
<source>Not counted, for it is not understood: {named}. {question}</source>
<translation>Nicht gezählt, weil nicht verstanden: {named}. {question}</translation>
</message>
<message>
<source>Not counted, for it is optional: {optional}.</source>
<translation>Nicht gezählt, weil optional: {optional}.</translation>
</message>
<message>
<source>Not counted, for the line gives no amount: {names}.</source>
<translation>Nicht gezählt, weil die Zeile keine Menge nennt: {names}.</translation>
</message>
<message>
<source>Not in its file</source>
<translation>Nicht in der Datei</translation>
</message>
<message>
<source>Not in the bar.</source>
<translation>Nicht in der Bar.</translation>
</message>
<message>
<source>Not in the bar: {named}.</source>
<translation>Nicht in der Bar: {named}.</translation>
</message>
<message>
<source>Not in the batch: {because}.</source>
<translation>Nicht im Ansatz: {because}.</translation>
</message>
<message>
<source>Not known: {why}</source>
<translation>Nicht bekannt: {why}</translation>
</message>
<message>
<source>Not looked at, since no price is known: {names}. Say what one costs, and it counts.</source>
<translation>Nicht betrachtet, weil kein Preis bekannt ist: {names}. Gib an, was eins davon kostet, und es zählt mit.</translation>
</message>
<message>
<source>Not shown in parts: that takes two lines in more than spoons, dashes or pieces</source>
<translation>Nicht in Teilen gezeigt: Dazu braucht es zwei Zeilen in mehr als Löffeln, Dashes oder Stücken</translation>
</message>
<message>
<source>Not taken from a bottle</source>
<translation>Kommt aus keiner Flasche</translation>
</message>
<message>
<source>Not the same, never pour it instead</source>
<translation>Nicht dasselbe, nie stattdessen nehmen</translation>
</message>
<message>
<source>Not there, and not needed</source>
<translation>Nicht da und nicht nötig</translation>
</message>
<message>
<source>Not understood</source>
<translation>Nicht verstanden</translation>
</message>
<message>
<source>Not won after all</source>
<translation>Doch nicht die beste</translation>
</message>
<message>
<source>Not worked out yet</source>
<translation>Noch nicht berechnet</translation>
</message>
<message>
<source>Note</source>
<translation>Hinweis</translation>
</message>
<message>
<source>Note it…</source>
<translation>Notieren…</translation>
</message>
<message>
<source>Noted</source>
<translation>Notiert</translation>
</message>
<message>
<source>Notes</source>
<translation>Notizen</translation>
</message>
<message>
<source>Nothing</source>
<translation>Nichts</translation>
</message>
<message>
<source>Nothing before the steps after it: they need it.</source>
<translation>Nichts für sich allein: Die Schritte danach brauchen ihn.</translation>
</message>
<message>
<source>Nothing goes off within {days} days</source>
<translation>Innerhalb von {days} Tagen ist nichts aufzubrauchen</translation>
</message>
<message>
<source>Nothing in it can be counted yet.</source>
<translation>Noch lässt sich nichts darin zählen.</translation>
</message>
<message>
<source>Nothing in it is poured otherwise</source>
<translation>Nichts darin wird anders eingeschenkt</translation>
</message>
<message>
<source>Nothing in the help has these words</source>
<translation>Nichts in der Hilfe enthält diese Wörter</translation>
</message>
<message>
<source>Nothing is being worked out</source>
<translation>Es wird gerade nichts berechnet</translation>
</message>
<message>
<source>Nothing is called “{name}”. You may:</source>
<translation>Nichts heißt „{name}“. Du kannst:</translation>
</message>
<message>
<source>Nothing is counted yet, so there is nothing to confirm</source>
<translation>Noch ist nichts gezählt, also gibt es nichts zu bestätigen</translation>
</message>
<message>
<source>Nothing is counted yet, so there is nothing to throw away</source>
<translation>Noch ist nichts gezählt, also gibt es nichts zu verwerfen</translation>
</message>
<message>
<source>Nothing is filtered</source>
<translation>Nichts ist gefiltert</translation>
</message>
<message>
<source>Nothing is known of the strength and sugar of {name}.</source>
<translation>Über Stärke und Zucker von {name} ist nichts bekannt.</translation>
</message>
<message>
<source>Nothing is known yet</source>
<translation>Noch ist nichts bekannt</translation>
</message>
<message>
<source>Nothing is poured from {names}.</source>
<translation>Nichts wird genommen aus {names}.</translation>
</message>
<message>
<source>Nothing is read from {columns}.</source>
<translation>Aus {columns} wird nichts gelesen.</translation>
</message>
<message>
<source>Nothing is taken for {named} of {name}: it is not understood.</source>
<translation>Für {named} in {name} wird nichts entnommen: Es ist nicht verstanden.</translation>
</message>
<message>
<source>Nothing is ticked: Space ticks the kind that is framed</source>
<translation>Nichts ist angekreuzt: Die Leertaste kreuzt die umrahmte Zutat an</translation>
</message>
<message>
<source>Nothing is written.</source>
<translation>Es wird nichts geschrieben.</translation>
</message>
<message>
<source>Nothing is wrong with this bar</source>
<translation>Mit dieser Bar ist alles in Ordnung</translation>
</message>
<message>
<source>Nothing limits the serves</source>
<translation>Nichts begrenzt die Portionen</translation>
</message>
<message>
<source>Nothing of it is written yet.</source>
<translation>Noch ist nichts davon geschrieben.</translation>
</message>
<message>
<source>Nothing of them is in the ledger. Left for later, they are kept.</source>
<translation>Nichts davon steht im Verlauf. Für später gelassen, bleiben sie erhalten.</translation>
</message>
<message>
<source>Nothing stands in</source>
<translation>Kein Ersatz</translation>
</message>
<message>
<source>Nothing stands in for it: {because}.</source>
<translation>Dafür gibt es keinen Ersatz: {because}.</translation>
</message>
<message>
<source>Nothing that can be bought {within} turns another drink ready.</source>
<translation>Nichts, was sich {within} kaufen lässt, macht einen weiteren Drink machbar.</translation>
</message>
<message>
<source>Nothing that can be bought {within} turns another drink that counts ready.</source>
<translation>Nichts, was sich {within} kaufen lässt, macht einen weiteren Drink machbar, der zählt.</translation>
</message>
<message>
<source>Nothing that carries egg</source>
<translation>Nichts, was Ei enthält</translation>
</message>
<message>
<source>Nothing that carries tree nuts or peanuts</source>
<translation>Nichts, was Schalenfrüchte oder Erdnüsse enthält</translation>
</message>
<message>
<source>Nothing that is here goes off {within}.</source>
<translation>Nichts, was da ist, muss {within} aufgebraucht werden.</translation>
</message>
<message>
<source>Nothing that you made is ever deleted. A bottle comes back with its history.</source>
<translation>Nichts, was du gemacht hast, wird je gelöscht. Eine Flasche kommt mit ihrem Verlauf zurück.</translation>
</message>
<message>
<source>Nothing to buy</source>
<translation>Nichts zu kaufen</translation>
</message>
<message>
<source>Nothing to compare yet</source>
<translation>Noch nichts zu vergleichen</translation>
</message>
<message>
<source>Nothing to count</source>
<translation>Nichts zu zählen</translation>
</message>
<message>
<source>Nothing to count here yet; Esc goes back to the list</source>
<translation>Hier gibt es noch nichts zu zählen; Esc führt zurück zur Liste</translation>
</message>
<message>
<source>Nothing to use up</source>
<translation>Nichts aufzubrauchen</translation>
</message>
<message>
<source>Nothing was done to it that can be undone.</source>
<translation>Es gibt darin nichts, was rückgängig zu machen wäre.</translation>
</message>
<message>
<source>Nothing was noted yet</source>
<translation>Noch wurde nichts notiert</translation>
</message>
<message>
<source>Nothing was poured on this day</source>
<translation>An diesem Tag wurde nichts eingeschenkt</translation>
</message>
<message>
<source>Nothing was poured or counted.</source>
<translation>Nichts wurde ausgeschenkt oder gezählt.</translation>
</message>
<message>
<source>Nothing was removed</source>
<translation>Nichts wurde entfernt</translation>
</message>
<message>
<source>Nothing within these limits opens a drink: allow more bottles, or more money</source>
<translation>Innerhalb dieser Grenzen wird kein Drink machbar: Erlaube mehr Flaschen oder mehr Geld</translation>
</message>
<message>
<source>Nothing would be added</source>
<translation>Es käme nichts hinzu</translation>
</message>
<message>
<source>Nothing {within} does better; that is proved.</source>
<translation>Nichts {within} ist besser; das ist bewiesen.</translation>
</message>
<message>
<source>Nov</source>
<translation>Nov.</translation>
</message>
<message>
<source>November</source>
<translation>November</translation>
</message>
<message>
<source>Now: {drinks} can be made</source>
<translation>Jetzt: {drinks} machbar</translation>
</message>
<message>
<source>Oct</source>
<translation>Okt.</translation>
</message>
<message>
<source>October</source>
<translation>Oktober</translation>
</message>
<message>
<source>Of it {things} can be saved.</source>
<translation>Davon lässt sich sichern: {things}.</translation>
</message>
<message>
<source>Of several versions the one that won last is marked.</source>
<translation>Von mehreren Fassungen ist die markiert, die zuletzt festgelegt wurde.</translation>
</message>
<message>
<source>Of the rinse of {ingredient} about 1 ml stays, ± 1 ml.</source>
<translation>Vom Ausschwenken mit {ingredient} bleibt etwa 1 ml, ± 1 ml.</translation>
</message>
<message>
<source>Of what is low {bottle} matters most: {lost} would be lost.</source>
<translation>Von den fast leeren zählt {bottle} am meisten: ohne sie {lost} weniger.</translation>
</message>
<message>
<source>Off the list: {what}</source>
<translation>Von der Liste genommen: {what}</translation>
</message>
<message>
<source>Old-style genever is malty like a whisky and hardly tastes of juniper; it makes another drink altogether.</source>
<translation>Genever alten Stils (Oude) ist malzig wie ein Whisky und schmeckt kaum nach Wacholder; er ergibt einen ganz anderen Drink.</translation>
</message>
<message>
<source>On</source>
<translation>Am</translation>
</message>
<message>
<source>On &amp;camera</source>
<translation>Vor der &amp;Kamera</translation>
</message>
<message>
<source>On camera</source>
<translation>Vor der Kamera</translation>
</message>
<message>
<source>On ice instead of with the water: {how}.</source>
<translation>Auf Eis statt mit dem Wasser: {how}.</translation>
</message>
<message>
<source>On ice: {how}.</source>
<translation>Auf Eis: {how}.</translation>
</message>
<message>
<source>On paper, not as the bar is: {said}.</source>
<translation>Auf dem Papier, nicht wie die Bar ist: {said}.</translation>
</message>
<message>
<source>One a page</source>
<translation>Eines je Seite</translation>
</message>
<message>
<source>One after another</source>
<translation>Fortlaufend</translation>
</message>
<message>
<source>One dash</source>
<translation>Ein Dash</translation>
</message>
<message>
<source>One ingredient is missing</source>
<translation>Eine Zutat fehlt</translation>
</message>
<message>
<source>One is a liqueur, the other a sweet mixer without alcohol; neither brings what the other does.</source>
<translation>Eines ist ein Likör, das andere ein süßer Filler ohne Alkohol; keines bringt, was das andere bringt.</translation>
</message>
<message>
<source>One is chilli and vinegar, the other anchovy and spice; the second carries fish.</source>
<translation>Das eine ist Chili und Essig, das andere Sardelle und Gewürz; das zweite enthält Fisch.</translation>
</message>
<message>
<source>One is kept before the first change of each day and before each import: all of the last {days} days, then one of each of {weeks} weeks, then one of every month. Those you asked for stay. They are kept in {folder}.</source>
<translation>Eine entsteht vor der ersten Änderung jedes Tages und vor jedem Import: alle der letzten {days} Tage bleiben, dann je eine aus {weeks} Wochen, dann eine aus jedem Monat. Die du selbst angelegt hast, bleiben. Sie liegen in {folder}.</translation>
</message>
<message>
<source>One letter on the label and five per cent of alcohol lie between them.</source>
<translation>Dazwischen liegen ein Buchstabe auf dem Etikett und fünf Prozent Alkohol.</translation>
</message>
<message>
<source>One purchase, in any of these forms</source>
<translation>Ein Kauf, in einer dieser Formen</translation>
</message>
<message>
<source>One serve holds about {standard_drinks} standard drinks; what counts as one differs from country to country.</source>
<translation>Eine Portion enthält etwa {standard_drinks} Standarddrinks; was als einer gilt, ist von Land zu Land verschieden.</translation>
</message>
<message>
<source>One short</source>
<translation>Eine fehlt</translation>
</message>
<message>
<source>One that is in a file already.</source>
<translation>Eine, die schon in einer Datei liegt.</translation>
</message>
<message>
<source>One thing is left aside; the specs and the end of the list say which.</source>
<translation>Eines ist beiseitegelassen; die Rezepte und das Ende der Liste sagen, was.</translation>
</message>
<message>
<source>One undo takes all of it back. 19 times in 20 a level lies within its ±.</source>
<translation>Einmal Rückgängig nimmt alles zurück. Ein Füllstand liegt in 19 von 20 Fällen innerhalb seines ±.</translation>
</message>
<message>
<source>One {fruit} is taken to give {juice_ml:g} ml of juice; how hard it is pressed tells (common practice).</source>
<translation>Angenommen: {fruit} ergibt {juice_ml:g} ml Saft; es kommt darauf an, wie fest gepresst wird (Erfahrungswert).</translation>
</message>
<message>
<source>Only as an accent, by the dash or barspoon</source>
<translation>Nur als Akzent, dash- oder barlöffelweise</translation>
</message>
<message>
<source>Only bottles</source>
<translation>Nur Flaschen</translation>
</message>
<message>
<source>Only empty ones</source>
<translation>Nur leere</translation>
</message>
<message>
<source>Only in shaken drinks</source>
<translation>Nur in geschüttelten Drinks</translation>
</message>
<message>
<source>Only in stirred drinks</source>
<translation>Nur in gerührten Drinks</translation>
</message>
<message>
<source>Only its name and its kind are needed; figures left empty are as its kind has them.</source>
<translation>Nötig sind nur ihr Name und wovon sie eine Art ist; leere Kennwerte gelten wie dort.</translation>
</message>
<message>
<source>Only low ones</source>
<translation>Nur fast leere</translation>
</message>
<message>
<source>Only one spec can be changed at a time; take the others out, or write them as new specs.</source>
<translation>Es lässt sich nur ein Rezept auf einmal ändern; nimm die anderen heraus oder schreib sie als neue Rezepte.</translation>
</message>
<message>
<source>Only open ones</source>
<translation>Nur offene</translation>
</message>
<message>
<source>Only sealed ones</source>
<translation>Nur verschlossene</translation>
</message>
<message>
<source>Only the classics barkeep brings along</source>
<translation>Nur die Klassiker, die barkeep mitbringt</translation>
</message>
<message>
<source>Only those: {group}</source>
<translation>Nur diese: {group}</translation>
</message>
<message>
<source>Only together</source>
<translation>Nur zusammen</translation>
</message>
<message>
<source>Only together ({number})</source>
<translation>Nur zusammen ({number})</translation>
</message>
<message>
<source>Only what carries nothing</source>
<translation>Nur woran nichts hängt</translation>
</message>
<message>
<source>Only what is not in the bar</source>
<translation>Nur, was nicht in der Bar ist</translation>
</message>
<message>
<source>Only what the spec asks for</source>
<translation>Nur was das Rezept verlangt</translation>
</message>
<message>
<source>Only what turns a drink ready</source>
<translation>Nur was einen Drink machbar macht</translation>
</message>
<message>
<source>Only what you put on the list yourself, or from a plan, can be taken off it</source>
<translation>Von der Liste nehmen lässt sich nur, was du selbst oder aus einem Plan daraufgesetzt hast</translation>
</message>
<message>
<source>Only your own specs</source>
<translation>Nur deine eigenen Rezepte</translation>
</message>
<message>
<source>Only {have:g} there</source>
<translation>Nur {have:g} da</translation>
</message>
<message>
<source>Only {left} of {name} is left and {needed} is needed.</source>
<translation>Nur {left} {name} sind übrig, gebraucht werden {needed}.</translation>
</message>
<message>
<source>Only {left} of {name} of {least:g} % vol or more is left and {needed} is needed.</source>
<translation>Nur {left} {name} mit {least:g} % vol oder mehr sind übrig, gebraucht werden {needed}.</translation>
</message>
<message>
<source>Open</source>
<translation>Offen</translation>
</message>
<message>
<source>Open a ba&amp;r…</source>
<translation>Eine Ba&amp;r öffnen…</translation>
</message>
<message>
<source>Open a bar on a server</source>
<translation>Eine Bar auf einem Server öffnen</translation>
</message>
<message>
<source>Open bar</source>
<translation>Bar öffnen</translation>
</message>
<message>
<source>Open bar on a se&amp;rver…</source>
<translation>Bar auf einem Se&amp;rver öffnen…</translation>
</message>
<message>
<source>Open every part</source>
<translation>Alle Teile aufklappen</translation>
</message>
<message>
<source>Open log &amp;folder</source>
<translation>&amp;Protokollordner öffnen</translation>
</message>
<message>
<source>Open one on a &amp;server…</source>
<translation>Eine auf einem &amp;Server öffnen…</translation>
</message>
<message>
<source>Open ones that are nearly used up, and what is due or past its date</source>
<translation>Offene, die fast aufgebraucht sind, und was fällig oder abgelaufen ist</translation>
</message>
<message>
<source>Open since {day}</source>
<translation>Offen seit {day}</translation>
</message>
<message>
<source>Open the spec</source>
<translation>Rezept öffnen</translation>
</message>
<message>
<source>Open the spec</source>
<comment>on a button</comment>
<translation>Rezept</translation>
</message>
<message>
<source>Open {bar}</source>
<translation>{bar} öffnen</translation>
</message>
<message>
<source>Opened</source>
<translation>Geöffnet</translation>
</message>
<message>
<source>Opened {title}</source>
<translation>{title} geöffnet</translation>
</message>
<message>
<source>Opening the bar…</source>
<translation>Die Bar wird geöffnet…</translation>
</message>
<message>
<source>Opens</source>
<translation>Neu</translation>
</message>
<message>
<source>Opens ({number})</source>
<translation>Neu machbar ({number})</translation>
</message>
<message>
<source>Optional</source>
<translation>Optional</translation>
</message>
<message>
<source>Optional, such as 2026-12-31</source>
<translation>Optional, etwa 2026-12-31</translation>
</message>
<message>
<source>Optional, such as {day}</source>
<translation>Optional, etwa {day}</translation>
</message>
<message>
<source>Optional: what this one cost, such as 24.50</source>
<translation>Optional: was diese gekostet hat, etwa 24.50</translation>
</message>
<message>
<source>Optional: where it was bought</source>
<translation>Optional: wo sie gekauft wurde</translation>
</message>
<message>
<source>Or buy {names}.</source>
<translation>Oder kaufe {names}.</translation>
</message>
<message>
<source>Or leave out {dropped}.</source>
<translation>Oder {dropped} weglassen.</translation>
</message>
<message>
<source>Or look at </source>
<translation>Oder ansehen: </translation>
</message>
<message>
<source>Or see all {n} drinks, each with {lack}.</source>
<translation>Oder sieh dir alle {n} Drinks an, jeden mit dem, {lack}.</translation>
</message>
<message>
<source>Orange bitters are a seasoning used by the dash; an aperitivo is a bitter liqueur poured by the measure.</source>
<translation>Orange Bitters sind eine Würze, die man dashweise nimmt; ein Aperitivo ist ein bitterer Likör, den man mit dem Barmaß abmisst.</translation>
</message>
<message>
<source>Orange bitters are used by the dash; a measure of them is undrinkable.</source>
<translation>Orange Bitters nimmt man dashweise; ein ganzes Barmaß davon ist untrinkbar.</translation>
</message>
<message>
<source>Orange flower water is a perfume of blossom, not of peel; by the dash of bitters it tastes of soap.</source>
<translation>Orangenblütenwasser duftet nach Blüte, nicht nach Schale; dashweise wie Bitters schmeckt es nach Seife.</translation>
</message>
<message>
<source>Orange flower water is a perfumed essence used by the drop.</source>
<translation>Orangenblütenwasser ist eine duftende Essenz, die man tropfenweise nimmt.</translation>
</message>
<message>
<source>Origin</source>
<translation>Herkunft</translation>
</message>
<message>
<source>Other names</source>
<translation>Weitere Namen</translation>
</message>
<message>
<source>Out of reach</source>
<translation>Nicht erreichbar</translation>
</message>
<message>
<source>Over ice it goes on thinning; the figures are for the first sip.</source>
<translation>Auf Eis verwässert er weiter; die Werte gelten für den ersten Schluck.</translation>
</message>
<message>
<source>Overproof rum is half as strong again and far more pungent: measure for measure the drink is out of balance and too strong.</source>
<translation>Overproof-Rum ist um die Hälfte stärker und weit kräftiger: In gleicher Menge bringt er den Drink aus der Balance und macht ihn zu stark.</translation>
</message>
<message>
<source>Own</source>
<translation>Eigen</translation>
</message>
<message>
<source>Own</source>
<comment>whose a spec is</comment>
<translation>Eigenes</translation>
</message>
<message>
<source>Own &amp;measures</source>
<translation>Eigene &amp;Maße</translation>
</message>
<message>
<source>P&amp;ars</source>
<translation>Soll&amp;bestände</translation>
</message>
<message>
<source>P&amp;rices</source>
<translation>P&amp;reise</translation>
</message>
<message>
<source>P&amp;rint…</source>
<translation>&amp;Drucken…</translation>
</message>
<message>
<source>PDF (*.pdf)</source>
<translation>PDF (*.pdf)</translation>
</message>
<message>
<source>Pa&amp;per</source>
<translation>Pa&amp;pier</translation>
</message>
<message>
<source>Pa&amp;rs…</source>
<translation>S&amp;ollbestände…</translation>
</message>
<message>
<source>Page {number} of {count}{more}</source>
<translation>Seite {number} von {count}{more}</translation>
</message>
<message>
<source>Page {number} of {total}…</source>
<translation>Seite {number} von {total}…</translation>
</message>
<message>
<source>Pages</source>
<translation>Seiten</translation>
</message>
<message>
<source>Pages of the help</source>
<translation>Seiten der Hilfe</translation>
</message>
<message>
<source>Pai&amp;d</source>
<translation>Bezah&amp;lt</translation>
</message>
<message>
<source>Paid</source>
<translation>Bezahlt</translation>
</message>
<message>
<source>Paid, in {currency}</source>
<translation>Bezahlt, in {currency}</translation>
</message>
<message>
<source>Pairs</source>
<translation>Paare</translation>
</message>
<message>
<source>Pantry</source>
<translation>Vorrat</translation>
</message>
<message>
<source>Pars</source>
<translation>Sollbestände</translation>
</message>
<message>
<source>Parted by commas</source>
<translation>Durch Kommas getrennt</translation>
</message>
<message>
<source>Parted by commas; each has a row below. Only who scores is kept, and who tastes alone needs no name.</source>
<translation>Durch Kommas getrennt; jeder hat unten eine Zeile. Behalten wird nur, wer bewertet; wer allein verkostet, braucht keinen Namen.</translation>
</message>
<message>
<source>Parts</source>
<translation>Teile</translation>
</message>
<message>
<source>Past</source>
<translation>Abgelaufen</translation>
</message>
<message>
<source>Past its best: taste it first</source>
<translation>Nicht mehr auf der Höhe: erst probieren</translation>
</message>
<message>
<source>Past its date</source>
<translation>Abgelaufen</translation>
</message>
<message>
<source>Past its use-by date, {day}: not counted, make it anew or waste it</source>
<translation>Abgelaufen (haltbar bis {day}): nicht mitgezählt, neu machen oder als Verlust buchen</translation>
</message>
<message>
<source>Past its use-by date, {day}: taste it before using it</source>
<translation>Abgelaufen (haltbar bis {day}): vor dem Verwenden probieren</translation>
</message>
<message>
<source>Past its use-by: discard, make anew</source>
<translation>Haltbarkeit abgelaufen: wegwerfen, neu ansetzen</translation>
</message>
<message>
<source>Paste or drop it, a bottle a line, in any words. What is doubtful is asked.</source>
<translation>Einfügen oder hineinziehen, eine Flasche je Zeile, in beliebigen Worten. Was unklar ist, wird gefragt.</translation>
</message>
<message>
<source>Paste or type a list first</source>
<translation>Erst eine Liste einfügen oder tippen</translation>
</message>
<message>
<source>Paste your list, or drop a file: a bottle a line, in your own words.

London dry gin 70 cl half full
2 x tonic water
sweet vermouth, opened 3 May 2026
rum, white, 1 l, 3/4</source>
<translation>Füge deine Liste ein oder zieh eine Datei hinein: eine Flasche je Zeile, in deinen Worten.

London Dry Gin 70 cl halb voll
2 x Tonic Water
roter Wermut, 3/4
weißer Rum, 1 l</translation>
</message>
<message>
<source>Peach brandy on a spec is mostly the sweet liqueur; the eau-de-vie is dry and twice as strong.</source>
<translation>Peach Brandy in einem Rezept ist meist der süße Likör; der Obstbrand ist trocken und doppelt so stark.</translation>
</message>
<message>
<source>Peanuts: a trace can stop a guest's breath. Ask before serving, use clean tins and spoons, and call for help at once; the label comes first.</source>
<translation>Erdnüsse: Eine Spur kann einem Gast den Atem nehmen. Vor dem Servieren fragen, saubere Shaker und Löffel verwenden und bei einer Reaktion sofort Hilfe rufen; das Etikett geht vor.</translation>
</message>
<message>
<source>Peel it and cut it across.</source>
<translation>Schälen und quer schneiden.</translation>
</message>
<message>
<source>Peel it and press it in a juicer.</source>
<translation>Schälen und im Entsafter pressen.</translation>
</message>
<message>
<source>Peel it, blend it shortly and strain out the seeds.</source>
<translation>Schälen, kurz mixen und die Kerne abseihen.</translation>
</message>
<message>
<source>Peel it, cut the flesh off the stone, blend and strain.</source>
<translation>Schälen, das Fruchtfleisch vom Stein schneiden, mixen und abseihen.</translation>
</message>
<message>
<source>Peel, core and blend it, strain it, and let the foam settle.</source>
<translation>Schälen, entkernen und mixen, abseihen und den Schaum sich setzen lassen.</translation>
</message>
<message>
<source>Penn State Extension (ten days)</source>
<translation>Penn State Extension (zehn Tage)</translation>
</message>
<message>
<source>Pepper vodka is hot with chilli and takes over the drink.</source>
<translation>Pfefferwodka ist scharf von Chili und übernimmt den Drink.</translation>
</message>
<message>
<source>Peppermint extract is used by the drop; a measure of it is undrinkable.</source>
<translation>Pfefferminzextrakt nimmt man tropfenweise; ein ganzes Barmaß davon ist untrinkbar.</translation>
</message>
<message>
<source>Pictures of what drinks ask for most: go over your shelf and tick it.</source>
<translation>Bilder dessen, was Drinks am häufigsten verlangen: Geh dein Regal durch und kreuz es an.</translation>
</message>
<message>
<source>Pieces</source>
<translation>Stück</translation>
</message>
<message>
<source>Pieces are whole: {need:g} × {name} give a little more than is needed.</source>
<translation>Stücke sind ganz: {need:g} × {name} ergeben etwas mehr als nötig.</translation>
</message>
<message>
<source>Pierce two eyes and drain it through a strainer.</source>
<translation>Zwei Augen durchstechen und durch ein Sieb ablaufen lassen.</translation>
</message>
<message>
<source>Place</source>
<translation>Platz</translation>
</message>
<message>
<source>Plain</source>
<translation>Schlicht</translation>
</message>
<message>
<source>Plan it</source>
<translation>Einplanen</translation>
</message>
<message>
<source>Planned</source>
<translation>Geplant</translation>
</message>
<message>
<source>Please mind</source>
<translation>Bitte beachten</translation>
</message>
<message>
<source>Pluck the leaves from a sprig.</source>
<translation>Die Blätter von einem Zweig zupfen.</translation>
</message>
<message>
<source>Poland</source>
<translation>Polen</translation>
</message>
<message>
<source>Pomegranate molasses is boiled-down juice, fiercely sour and dark; grenadine is a sweet syrup.</source>
<translation>Granatapfelmelasse ist eingekochter Saft, sehr sauer und dunkel; Grenadine ist ein süßer Sirup.</translation>
</message>
<message>
<source>Portugal</source>
<translation>Portugal</translation>
</message>
<message>
<source>PostgreSQL cannot keep what is in it ({said})</source>
<translation>PostgreSQL kann den Inhalt nicht aufnehmen ({said})</translation>
</message>
<message>
<source>Pour</source>
<translation>Einschenken</translation>
</message>
<message>
<source>Pour as written</source>
<translation>Wie geschrieben ausschenken</translation>
</message>
<message>
<source>Pour boiling water over flowers and ginger, leave them overnight, strain, and stir in the sugar.</source>
<translation>Blüten und Ingwer mit kochendem Wasser übergießen, über Nacht stehen lassen, abseihen und den Zucker einrühren.</translation>
</message>
<message>
<source>Pour from {title}</source>
<translation>Aus {title} einschenken</translation>
</message>
<message>
<source>Pour instead</source>
<translation>Stattdessen</translation>
</message>
<message>
<source>Pour instead, from the bar</source>
<translation>Stattdessen nehmen, aus der Bar</translation>
</message>
<message>
<source>Pour it so</source>
<translation>So einschenken</translation>
</message>
<message>
<source>Pour otherwise…</source>
<translation>Anders ausschenken…</translation>
</message>
<message>
<source>Pour over and strain after five minutes.</source>
<translation>Aufgießen und nach fünf Minuten abseihen.</translation>
</message>
<message>
<source>Pour over and strain after four minutes.</source>
<translation>Aufgießen und nach vier Minuten abseihen.</translation>
</message>
<message>
<source>Pour what there is</source>
<translation>Ausschenken, was da ist</translation>
</message>
<message>
<source>Pour {name} otherwise</source>
<translation>{name} anders ausschenken</translation>
</message>
<message>
<source>Pour {poured} from this dasher instead of {written}.</source>
<translation>Aus diesem Dasher {poured} statt {written} nehmen.</translation>
</message>
<message>
<source>Pour {several}{name}</source>
<translation>{several}{name} einschenken</translation>
</message>
<message>
<source>Poured</source>
<translation>Ausgeschenkt</translation>
</message>
<message>
<source>Poured</source>
<comment>column</comment>
<translation>Eingeschenkt</translation>
</message>
<message>
<source>Poured</source>
<comment>for so many drinks</comment>
<translation>Drinks</translation>
</message>
<message>
<source>Poured for</source>
<translation>Gebraucht für</translation>
</message>
<message>
<source>Poured {amount}</source>
<translation>Eingeschenkt {amount}</translation>
</message>
<message>
<source>Poured {amount} of {title}</source>
<translation>{amount} {title} eingeschenkt</translation>
</message>
<message>
<source>Poured {several}{name}</source>
<translation>{several}{name} eingeschenkt</translation>
</message>
<message>
<source>Pour…</source>
<translation>Einschenken…</translation>
</message>
<message>
<source>Pregnant, or perhaps so: no alcohol. A doctor or midwife can say more.</source>
<translation>Schwanger oder vielleicht schwanger: kein Alkohol. Mehr wissen Arztpraxis oder Hebamme.</translation>
</message>
<message>
<source>Prep list</source>
<translation>Vorbereitungsliste</translation>
</message>
<message>
<source>Prep list, {day}</source>
<translation>Vorbereitungsliste, {day}</translation>
</message>
<message>
<source>Prepare</source>
<translation>Vorbereiten</translation>
</message>
<message>
<source>Preview</source>
<translation>Vorschau</translation>
</message>
<message>
<source>Pri&amp;ce</source>
<translation>Prei&amp;s</translation>
</message>
<message>
<source>Price</source>
<translation>Preis</translation>
</message>
<message>
<source>Prices</source>
<translation>Preise</translation>
</message>
<message>
<source>Print and publish</source>
<translation>Drucken und veröffentlichen</translation>
</message>
<message>
<source>Print its label…</source>
<translation>Etikett drucken…</translation>
</message>
<message>
<source>Print {title}</source>
<translation>{title} drucken</translation>
</message>
<message>
<source>Products</source>
<translation>Produkte</translation>
</message>
<message>
<source>Pull the espresso and lengthen it with hot water.</source>
<translation>Den Espresso ziehen und mit heißem Wasser verlängern.</translation>
</message>
<message>
<source>Pull the good inner leaves and wash them.</source>
<translation>Die guten inneren Blätter abziehen und waschen.</translation>
</message>
<message>
<source>Purchases that turn much together and little apart</source>
<translation>Käufe, die zusammen viel und einzeln wenig machbar machen</translation>
</message>
<message>
<source>Put &amp;mine over it</source>
<translation>Mit &amp;meiner überschreiben</translation>
</message>
<message>
<source>Put into the &amp;bar</source>
<translation>In die &amp;Bar stellen</translation>
</message>
<message>
<source>Put the empty bottle on the scale, without its cap.</source>
<translation>Stell die leere Flasche auf die Waage, ohne Verschluss.</translation>
</message>
<message>
<source>Put the full bottle on the scale, without its cap. What it should hold is taken off, to within what makers may fill over or under.</source>
<translation>Stell die volle Flasche auf die Waage, ohne Verschluss. Was sie enthalten sollte, wird abgezogen, bis auf das, was Hersteller zu viel oder zu wenig füllen dürfen.</translation>
</message>
<message>
<source>Put this in the bar’s place?</source>
<translation>Dies an die Stelle der Bar setzen?</translation>
</message>
<message>
<source>Putting purchases together…</source>
<translation>Käufe werden zusammengestellt…</translation>
</message>
<message>
<source>Questions</source>
<translation>Fragen</translation>
</message>
<message>
<source>R&amp;iff…</source>
<translation>Ab&amp;wandeln…</translation>
</message>
<message>
<source>Raw egg: use pasteurised egg for anyone at risk (pregnant, very young, old or unwell); spirit does not make it safe. Follow your local food rules.</source>
<translation>Rohes Ei: für Gefährdete (Schwangere, kleine Kinder, Alte oder Kranke) pasteurisiertes Ei verwenden; Alkohol macht es nicht sicher. Die örtlichen Lebensmittelvorschriften befolgen.</translation>
</message>
<message>
<source>Raw milk can carry germs that make people very ill: use pasteurised milk, above all for anyone pregnant, very young, old or unwell. Follow your local food rules.</source>
<translation>Rohmilch kann Keime enthalten, die sehr krank machen: pasteurisierte Milch verwenden, vor allem für Schwangere, kleine Kinder, Alte oder Kranke. Die örtlichen Lebensmittelvorschriften befolgen.</translation>
</message>
<message>
<source>Re&amp;gion</source>
<translation>Re&amp;gion</translation>
</message>
<message>
<source>Re&amp;move ingredient</source>
<translation>Zutat en&amp;tfernen</translation>
</message>
<message>
<source>Re&amp;move line</source>
<translation>Zeile &amp;entfernen</translation>
</message>
<message>
<source>Read again: nobody else has changed the bar</source>
<translation>Neu eingelesen: Niemand sonst hat die Bar geändert</translation>
</message>
<message>
<source>Read as {kind}: {many}.</source>
<translation>Gelesen als {kind}: {many}.</translation>
</message>
<message>
<source>Read the label as well: makers differ.</source>
<translation>Lies auch das Etikett: Hersteller unterscheiden sich.</translation>
</message>
<message>
<source>Read-only</source>
<translation>Schreibgeschützt</translation>
</message>
<message>
<source>Reading</source>
<translation>Das Lesen</translation>
</message>
<message>
<source>Reading…</source>
<translation>Wird gelesen…</translation>
</message>
<message>
<source>Ready</source>
<translation>Machbar</translation>
</message>
<message>
<source>Ready with stand-ins</source>
<translation>Mit Ersatz machbar</translation>
</message>
<message>
<source>Recei&amp;ved</source>
<translation>&amp;Erhalten</translation>
</message>
<message>
<source>Receive</source>
<translation>Aufnehmen</translation>
</message>
<message>
<source>Receive a&amp;nother</source>
<translation>Noch eine &amp;aufnehmen</translation>
</message>
<message>
<source>Received</source>
<translation>Erhalten</translation>
</message>
<message>
<source>Received {amount}</source>
<translation>Erhalten {amount}</translation>
</message>
<message>
<source>Received {title}</source>
<translation>{title} aufgenommen</translation>
</message>
<message>
<source>Recipes and bottles change: ask about allergens before you order.</source>
<translation>Rezepte und Flaschen ändern sich: Frage vor dem Bestellen nach Allergenen.</translation>
</message>
<message>
<source>Recipes mean the sweetened drink; unsweetened cranberry juice is far more sour.</source>
<translation>Rezepte meinen das gesüßte Getränk; ungesüßter Cranberrysaft ist weit saurer.</translation>
</message>
<message>
<source>Redo</source>
<translation>Wiederholen</translation>
</message>
<message>
<source>Regulation (EC) 1334/2008, Annex III</source>
<translation>Verordnung (EG) Nr. 1334/2008, Anhang III</translation>
</message>
<message>
<source>Regulation (EU) 1169/2011, Annex II</source>
<translation>Verordnung (EU) Nr. 1169/2011, Anhang II</translation>
</message>
<message>
<source>Regulation (EU) 1169/2011, Annex III</source>
<translation>Verordnung (EU) Nr. 1169/2011, Anhang III</translation>
</message>
<message>
<source>Remark</source>
<translation>Anmerkung</translation>
</message>
<message>
<source>Remo&amp;ve</source>
<translation>E&amp;ntfernen</translation>
</message>
<message>
<source>Remo&amp;ve my stand-in</source>
<translation>Meinen E&amp;rsatz entfernen</translation>
</message>
<message>
<source>Remove</source>
<translation>Entfernen</translation>
</message>
<message>
<source>Remove ingredient</source>
<translation>Zutat entfernen</translation>
</message>
<message>
<source>Remove my stand-in</source>
<translation>Meinen Ersatz entfernen</translation>
</message>
<message>
<source>Remove my stand-in…</source>
<translation>Meinen Ersatz entfernen…</translation>
</message>
<message>
<source>Remove shoot</source>
<translation>Dreh entfernen</translation>
</message>
<message>
<source>Removed the trial of {day}</source>
<translation>Versuch vom {day} entfernt</translation>
</message>
<message>
<source>Removed things</source>
<translation>Entferntes</translation>
</message>
<message>
<source>Removed your ingredient {name}</source>
<translation>Deine Zutat {name} ist entfernt</translation>
</message>
<message>
<source>Removed your stand-in {name}</source>
<translation>Dein Ersatz {name} ist entfernt</translation>
</message>
<message>
<source>Removed {names}</source>
<translation>{names} entfernt</translation>
</message>
<message>
<source>Removed {specs}</source>
<translation>{specs} entfernt</translation>
</message>
<message>
<source>Removed {what}</source>
<translation>{what} entfernt</translation>
</message>
<message>
<source>Repeat</source>
<translation>Wiederholen</translation>
</message>
<message>
<source>Repeat shoot</source>
<translation>Dreh wiederholen</translation>
</message>
<message>
<source>Reset &amp;columns</source>
<translation>Spal&amp;ten zurücksetzen</translation>
</message>
<message>
<source>Restore</source>
<translation>Wiederherstellen</translation>
</message>
<message>
<source>Restore a &amp;file…</source>
<translation>Aus &amp;Datei wiederherstellen…</translation>
</message>
<message>
<source>Restore a file</source>
<translation>Aus einer Datei wiederherstellen</translation>
</message>
<message>
<source>Restore that backup</source>
<translation>Diese Sicherung wiederherstellen</translation>
</message>
<message>
<source>Rhubarb liqueur is a sweet fruit liqueur; the amaro is bitter, from the root.</source>
<translation>Rhabarberlikör ist ein süßer Fruchtlikör; der Amaro ist bitter, aus der Wurzel.</translation>
</message>
<message>
<source>Riff</source>
<translation>Abwandlung</translation>
</message>
<message>
<source>Riff of </source>
<translation>Abwandlung von </translation>
</message>
<message>
<source>Riff of {riff_of}</source>
<translation>Abwandlung von {riff_of}</translation>
</message>
<message>
<source>Riff of: {riff_of}</source>
<translation>Abwandlung von: {riff_of}</translation>
</message>
<message>
<source>Riff on {name}</source>
<translation>{name} abwandeln</translation>
</message>
<message>
<source>Riff’s name</source>
<translation>Name der Abwandlung</translation>
</message>
<message>
<source>Riff…</source>
<translation>Abwandeln…</translation>
</message>
<message>
<source>Roll it, halve it and press it the same day; strain.</source>
<translation>Rollen, halbieren und am selben Tag pressen; abseihen.</translation>
</message>
<message>
<source>Root beer is a sweet soft drink and no beer.</source>
<translation>Root Beer ist eine süße Limonade und kein Bier.</translation>
</message>
<message>
<source>Rosé is pink wine; rose water is a flower essence used by the drop.</source>
<translation>Rosé ist rosa Wein; Rosenwasser ist eine Blütenessenz, die man tropfenweise nimmt.</translation>
</message>
<message>
<source>Rounded down, so that no more {name} is measured than there is.</source>
<translation>Abgerundet, damit nicht mehr {name} abgemessen wird, als da ist.</translation>
</message>
<message>
<source>Row</source>
<translation>Zeile</translation>
</message>
<message>
<source>Row {row}</source>
<translation>Zeile {row}</translation>
</message>
<message>
<source>Rows were repaired, and nothing has come in yet. Write all rows to a file as they stand now, or discard the repairs?</source>
<translation>Zeilen wurden berichtigt, und noch nichts ist hinzugekommen. Alle Zeilen, wie sie jetzt sind, in eine Datei schreiben oder die Berichtigungen verwerfen?</translation>
</message>
<message>
<source>Royal Horticultural Society, list of potentially harmful garden plants</source>
<translation>Royal Horticultural Society, Liste möglicherweise schädlicher Gartenpflanzen</translation>
</message>
<message>
<source>Rub the peel into the sugar, leave it an hour, stir in warm water and then the juice, and strain.</source>
<translation>Die Schale in den Zucker reiben, eine Stunde stehen lassen, warmes Wasser und dann den Saft einrühren und abseihen.</translation>
</message>
<message>
<source>Run sheet of {theme}</source>
<translation>Ablaufplan von {theme}</translation>
</message>
<message>
<source>Run sheet, {theme}</source>
<translation>Ablaufplan, {theme}</translation>
</message>
<message>
<source>Run sheet…</source>
<translation>Ablaufplan…</translation>
</message>
<message>
<source>Running order</source>
<translation>Reihenfolge</translation>
</message>
<message>
<source>Runs out</source>
<translation>Reicht nicht</translation>
</message>
<message>
<source>S&amp;hape</source>
<translation>F&amp;orm</translation>
</message>
<message>
<source>S&amp;trength</source>
<translation>Al&amp;koholgehalt</translation>
</message>
<message>
<source>S&amp;ugar</source>
<translation>Z&amp;ucker</translation>
</message>
<message>
<source>SQLite keeps this name for the journal of {name}</source>
<translation>SQLite hält diesen Namen für das Journal von {name} frei</translation>
</message>
<message>
<source>Sa&amp;ve as…</source>
<translation>&amp;Sichern als…</translation>
</message>
<message>
<source>Sake is brewed like wine at about 16 % vol; shochu is a distilled spirit without sugar.</source>
<translation>Sake wird gebraut und hat etwa 16 % vol wie Wein; Shochu ist ein Destillat ohne Zucker.</translation>
</message>
<message>
<source>Saturday</source>
<translation>Samstag</translation>
</message>
<message>
<source>Save</source>
<translation>Sichern</translation>
</message>
<message>
<source>Save P&amp;DF…</source>
<translation>PDF s&amp;ichern…</translation>
</message>
<message>
<source>Save PDF</source>
<translation>PDF sichern</translation>
</message>
<message>
<source>Save as</source>
<translation>Sichern als</translation>
</message>
<message>
<source>Save as a new one</source>
<translation>Als neues sichern</translation>
</message>
<message>
<source>Save as a riff</source>
<translation>Als Abwandlung sichern</translation>
</message>
<message>
<source>Save the &amp;rest…</source>
<translation>Den &amp;Rest sichern…</translation>
</message>
<message>
<source>Save the rest</source>
<translation>Den Rest sichern</translation>
</message>
<message>
<source>Save what can be read</source>
<translation>Lesbares sichern</translation>
</message>
<message>
<source>Save what is shown</source>
<translation>Gezeigtes sichern</translation>
</message>
<message>
<source>Save what is shown &amp;elsewhere…</source>
<translation>Gezeigtes &amp;anderswo sichern…</translation>
</message>
<message>
<source>Save {count} specs</source>
<translation>{count} Rezepte sichern</translation>
</message>
<message>
<source>Saved</source>
<translation>Gesichert</translation>
</message>
<message>
<source>Saved in {file}</source>
<translation>Gesichert in {file}</translation>
</message>
<message>
<source>Saved {pages} as {file}</source>
<translation>{pages} gesichert als {file}</translation>
</message>
<message>
<source>Saved {path}</source>
<translation>{path} gesichert</translation>
</message>
<message>
<source>Say how close it is, 0.01 to 0.99.</source>
<translation>Gib an, wie nah er ist, 0.01 bis 0.99.</translation>
</message>
<message>
<source>Say what is poured instead.</source>
<translation>Gib an, was stattdessen genommen wird.</translation>
</message>
<message>
<source>Say what is there</source>
<translation>Angeben, was da ist</translation>
</message>
<message>
<source>Say what it is a kind of, such as syrup.</source>
<translation>Gib an, wovon sie eine Art ist, etwa syrup.</translation>
</message>
<message>
<source>Say what it is, such as London dry gin.</source>
<translation>Sag, was es ist, etwa London Dry Gin.</translation>
</message>
<message>
<source>Say what was paid there, or leave the shop out.</source>
<translation>Sag, was dort bezahlt wurde, oder lass den Laden weg.</translation>
</message>
<message>
<source>Say what “{words}” is ({keys})</source>
<translation>Angeben, was „{words}“ ist ({keys})</translation>
</message>
<message>
<source>Say which column is what, and the drinks of that list are read.</source>
<translation>Sag, welche Spalte was ist, dann werden die Drinks dieser Liste gelesen.</translation>
</message>
<message>
<source>Say which ingredient is meant.</source>
<translation>Gib an, welche Zutat gemeint ist.</translation>
</message>
<message>
<source>Say why in a few words: the reason is shown with every offer.</source>
<translation>Sag in wenigen Worten, warum: Der Grund steht bei jedem Vorschlag.</translation>
</message>
<message>
<source>Scoop out the pulp and rub it through a sieve.</source>
<translation>Das Fruchtfleisch herauslöffeln und durch ein Sieb streichen.</translation>
</message>
<message>
<source>Score</source>
<translation>Bewertung</translation>
</message>
<message>
<source>Scored by {tasters}</source>
<translation>Bewertet von {tasters}</translation>
</message>
<message>
<source>Sealed</source>
<translation>Verschlossen</translation>
</message>
<message>
<source>Sealed, empty and pantry ones can be counted as well</source>
<translation>Verschlossene, leere und der Vorrat lassen sich auch zählen</translation>
</message>
<message>
<source>Sealed, empty and pantry too</source>
<translation>Auch verschlossene, leere und Vorrat</translation>
</message>
<message>
<source>Sealed, open and empty ones</source>
<translation>Verschlossene, offene und leere</translation>
</message>
<message>
<source>Search</source>
<translation>Suchen</translation>
</message>
<message>
<source>Search bottles and drinks…</source>
<translation>Flaschen und Drinks suchen…</translation>
</message>
<message>
<source>Search bottles for “{text}”</source>
<translation>Flaschen nach „{text}“ durchsuchen</translation>
</message>
<message>
<source>Search bottles, makers, kinds and barcodes…</source>
<translation>Flaschen, Hersteller, Zutaten und Strichcodes suchen…</translation>
</message>
<message>
<source>Search bottles…</source>
<translation>Flaschen suchen…</translation>
</message>
<message>
<source>Search drinks and bottles…</source>
<translation>Drinks und Flaschen suchen…</translation>
</message>
<message>
<source>Search drinks and ingredients…</source>
<translation>Drinks und Zutaten suchen…</translation>
</message>
<message>
<source>Search ingredients and drinks…</source>
<translation>Zutaten und Drinks suchen…</translation>
</message>
<message>
<source>Search ingredients and other names for them…</source>
<translation>Zutaten und ihre weiteren Namen suchen…</translation>
</message>
<message>
<source>Search purchases and drinks…</source>
<translation>Käufe und Drinks suchen…</translation>
</message>
<message>
<source>Search specs and ingredients…</source>
<translation>Rezepte und Zutaten suchen…</translation>
</message>
<message>
<source>Search steps and drinks…</source>
<translation>Schritte und Drinks suchen…</translation>
</message>
<message>
<source>Search the help…</source>
<translation>Hilfe durchsuchen…</translation>
</message>
<message>
<source>Search the specs for “{text}”</source>
<translation>Rezepte nach „{text}“ durchsuchen</translation>
</message>
<message>
<source>Search theme, drink or bottle…</source>
<translation>Thema, Drink oder Flasche suchen…</translation>
</message>
<message>
<source>Search {noun}…</source>
<translation>{noun} suchen…</translation>
</message>
<message>
<source>Searching…</source>
<translation>Suche läuft…</translation>
</message>
<message>
<source>Search…</source>
<translation>Suchen…</translation>
</message>
<message>
<source>See </source>
<translation>Ansehen: </translation>
</message>
<message>
<source>See &amp;tonight</source>
<translation>&amp;Heute Abend ansehen</translation>
</message>
<message>
<source>See to {line} of {drink} yourself: it is not understood, and nothing of it is counted.</source>
<translation>Um {line} in {drink} selbst kümmern: Es ist nicht verstanden, und nichts davon wird gerechnet.</translation>
</message>
<message>
<source>See to “{name}” yourself, for {drinks}: no ingredient is called so.</source>
<translation>Um „{name}“ selbst kümmern, für {drinks}: Keine Zutat heißt so.</translation>
</message>
<message>
<source>Seed it and press it in a juicer.</source>
<translation>Entkernen und im Entsafter pressen.</translation>
</message>
<message>
<source>Sep</source>
<translation>Sept.</translation>
</message>
<message>
<source>Separate</source>
<translation>Trennen</translation>
</message>
<message>
<source>Separate it just before use and keep it cold; raw egg can carry salmonella, so not for anyone at risk.</source>
<translation>Erst kurz vor Gebrauch trennen und kalt halten; rohes Ei kann Salmonellen tragen, also nichts für gefährdete Personen.</translation>
</message>
<message>
<source>Separate {much} from {inputs}</source>
<translation>{much} von {inputs} trennen</translation>
</message>
<message>
<source>September</source>
<translation>September</translation>
</message>
<message>
<source>Ser&amp;ves</source>
<translation>Portione&amp;n</translation>
</message>
<message>
<source>Serve nobody below the legal drinking age where you are, and ask when in doubt.</source>
<translation>Niemandem unter dem Mindestalter ausschenken, das bei dir gilt; im Zweifel nachfragen.</translation>
</message>
<message>
<source>Served {how}</source>
<translation>Servieren: {how}</translation>
</message>
<message>
<source>Serves</source>
<translation>Portionen</translation>
</message>
<message>
<source>Serves</source>
<comment>column</comment>
<translation>Anzahl</translation>
</message>
<message>
<source>Serves at most</source>
<translation>Portionen höchstens</translation>
</message>
<message>
<source>Serves left</source>
<translation>Portionen übrig</translation>
</message>
<message>
<source>Serves of {name}</source>
<translation>Portionen von {name}</translation>
</message>
<message>
<source>Serves really made</source>
<translation>Wirklich gemachte Portionen</translation>
</message>
<message>
<source>Set</source>
<translation>Setzen</translation>
</message>
<message>
<source>Set its das&amp;her…</source>
<translation>Dasher e&amp;instellen…</translation>
</message>
<message>
<source>Set its use-b&amp;y day…</source>
<translation>Hal&amp;tbarkeitsdatum setzen…</translation>
</message>
<message>
<source>Set out a saucer of {named} to rim {rims}{lacking}.</source>
<translation>Einen Teller mit {named} bereitstellen, für {rims} mit Rand{lacking}.</translation>
</message>
<message>
<source>Set out {count} × {name}.</source>
<translation>{count} × {name} bereitstellen.</translation>
</message>
<message>
<source>Set out {tools}.</source>
<translation>{tools} bereitstellen.</translation>
</message>
<message>
<source>Set par</source>
<translation>Sollbestand setzen</translation>
</message>
<message>
<source>Set the dasher of {title}</source>
<translation>Dasher von {title} einstellen</translation>
</message>
<message>
<source>Set the use-by day of {title}</source>
<translation>Haltbarkeitsdatum von {title} setzen</translation>
</message>
<message>
<source>Settings</source>
<translation>Einstellungen</translation>
</message>
<message>
<source>Settings changed</source>
<translation>Einstellungen geändert</translation>
</message>
<message>
<source>Settings changed. {kept}</source>
<translation>Einstellungen geändert. {kept}</translation>
</message>
<message>
<source>Settle</source>
<translation>Klären</translation>
</message>
<message>
<source>Settled questions of {name}</source>
<translation>Fragen von {name} geklärt</translation>
</message>
<message>
<source>Sh&amp;op</source>
<translation>L&amp;aden</translation>
</message>
<message>
<source>Shake it as it is served, in {rounds}: {what} a round (common practice).</source>
<translation>Beim Servieren schütteln, in {rounds}: je Runde {what} (übliche Praxis).</translation>
</message>
<message>
<source>Shaken</source>
<translation>Geschüttelt</translation>
</message>
<message>
<source>Shape</source>
<translation>Form</translation>
</message>
<message>
<source>Shelf</source>
<translation>Regal</translation>
</message>
<message>
<source>Shoot</source>
<translation>Dreh</translation>
</message>
<message>
<source>Shoots</source>
<translation>Drehs</translation>
</message>
<message>
<source>Shoots to shop for</source>
<translation>Drehs, für die eingekauft wird</translation>
</message>
<message>
<source>Shop</source>
<translation>Einkauf</translation>
</message>
<message>
<source>Shop</source>
<comment>where it was bought</comment>
<translation>Laden</translation>
</message>
<message>
<source>Shop, if wanted</source>
<translation>Laden, wenn gewünscht</translation>
</message>
<message>
<source>Shopping for it…</source>
<translation>Dafür einkaufen…</translation>
</message>
<message>
<source>Shopping list</source>
<translation>Einkaufsliste</translation>
</message>
<message>
<source>Shopping…</source>
<translation>Einkaufen…</translation>
</message>
<message>
<source>Short</source>
<translation>Mehrere fehlen</translation>
</message>
<message>
<source>Short</source>
<comment>a list with less on it</comment>
<translation>Kurz</translation>
</message>
<message>
<source>Short and wide with flat shoulders, often a stopper: many aged rums, brandies and liqueurs</source>
<translation>Kurz und breit mit flachen Schultern, oft mit Stopfen: viele gereifte Rums, Brände und Liköre</translation>
</message>
<message>
<source>Short of more</source>
<translation>Mehr als eine fehlt</translation>
</message>
<message>
<source>Short of {name}: {need} needed, {have} there.</source>
<translation>Zu wenig {name}: {need} nötig, {have} da.</translation>
</message>
<message>
<source>Show</source>
<translation>Zeigen</translation>
</message>
<message>
<source>Show all</source>
<translation>Alle zeigen</translation>
</message>
<message>
<source>Show all {count} trials</source>
<translation>Alle {count} Versuche zeigen</translation>
</message>
<message>
<source>Show all {n} entries</source>
<translation>Alle {n} Einträge zeigen</translation>
</message>
<message>
<source>Show every drink again ({keys})</source>
<translation>Wieder jeden Drink zeigen ({keys})</translation>
</message>
<message>
<source>Show in &amp;Tonight</source>
<translation>In „Heute Aben&amp;d“ zeigen</translation>
</message>
<message>
<source>Show in Tonight</source>
<translation>In „Heute Abend“ zeigen</translation>
</message>
<message>
<source>Show it in Tonight</source>
<translation>In „Heute Abend“ zeigen</translation>
</message>
<message>
<source>Show it so</source>
<translation>So zeigen</translation>
</message>
<message>
<source>Show the bottle</source>
<translation>Flasche zeigen</translation>
</message>
<message>
<source>Show the shelf as a l&amp;ist</source>
<translation>Regal als &amp;Liste zeigen</translation>
</message>
<message>
<source>Show the shelf as a p&amp;icture</source>
<translation>Regal als Bi&amp;ld zeigen</translation>
</message>
<message>
<source>Si&amp;ze</source>
<translation>&amp;Größe</translation>
</message>
<message>
<source>Sift the powder and whisk it into water just off the boil.</source>
<translation>Das Pulver sieben und in Wasser kurz nach dem Kochen schlagen.</translation>
</message>
<message>
<source>Simmer sliced ginger and honey five minutes in the water, leave it overnight and strain.</source>
<translation>Ingwerscheiben und Honig fünf Minuten im Wasser sieden, über Nacht stehen lassen und abseihen.</translation>
</message>
<message>
<source>Since the last trial, such as less lemon</source>
<translation>Seit dem letzten Versuch, etwa weniger Zitrone</translation>
</message>
<message>
<source>Size</source>
<translation>Größe</translation>
</message>
<message>
<source>Size, level</source>
<translation>Größe, Füllstand</translation>
</message>
<message>
<source>Slice it from tip to stalk.</source>
<translation>Von der Spitze zum Stiel in Scheiben schneiden.</translation>
</message>
<message>
<source>Slice it thin and dry it four to six hours in an oven at 90 °C.</source>
<translation>Dünn in Scheiben schneiden und vier bis sechs Stunden bei 90 °C im Ofen trocknen.</translation>
</message>
<message>
<source>Slice it thin and dry it three to four hours in an oven at 90 °C.</source>
<translation>Dünn in Scheiben schneiden und drei bis vier Stunden bei 90 °C im Ofen trocknen.</translation>
</message>
<message>
<source>Slice the berries into the sugar, leave them overnight in the cold, add the water and strain.</source>
<translation>Die Beeren in den Zucker schneiden, über Nacht kalt stehen lassen, das Wasser zugeben und abseihen.</translation>
</message>
<message>
<source>Slice the chilli with gloves on, steep half an hour, tasting as you go, and strain.</source>
<translation>Die Chili mit Handschuhen in Scheiben schneiden, eine halbe Stunde ziehen lassen, dabei probieren, und abseihen.</translation>
</message>
<message>
<source>Slice the chillies with gloves on, steep ten minutes in the warm syrup, tasting as you go, and strain.</source>
<translation>Die Chilis mit Handschuhen in Scheiben schneiden, zehn Minuten im warmen Sirup ziehen lassen, dabei probieren, und abseihen.</translation>
</message>
<message>
<source>Slice the ginger, pour over and strain after ten minutes.</source>
<translation>Den Ingwer in Scheiben schneiden, übergießen und nach zehn Minuten abseihen.</translation>
</message>
<message>
<source>Slice the stalks, simmer them ten minutes with sugar and water and strain without pressing; never the leaves.</source>
<translation>Die Stangen in Scheiben schneiden, zehn Minuten mit Zucker und Wasser sieden und abseihen, ohne zu pressen; niemals die Blätter.</translation>
</message>
<message>
<source>Sloe gin is a sweet fruit liqueur at about 26 % vol; it is not a gin.</source>
<translation>Sloe Gin ist ein süßer Fruchtlikör mit etwa 26 % vol; er ist kein Gin.</translation>
</message>
<message>
<source>Small and round with a long neck and a dasher in its mouth</source>
<translation>Klein und rund mit langem Hals und einem Dasher in der Öffnung</translation>
</message>
<message>
<source>Small, round shoulders and a crown cork: beer, cider and mixers</source>
<translation>Kleine, runde Schultern und ein Kronkorken: Bier, Cider und Filler</translation>
</message>
<message>
<source>So about {n:.0f} dashes are 10 ml.</source>
<translation>Also sind etwa {n:.0f} Dashes 10 ml.</translation>
</message>
<message>
<source>So far it is taken to weigh {weight}.</source>
<translation>Bisher gilt sie als {weight} schwer.</translation>
</message>
<message>
<source>So far it is {day}.</source>
<translation>Bisher ist es der {day}.</translation>
</message>
<message>
<source>So far nothing stands in for it: {nothing}. What you say goes before that.</source>
<translation>Bisher gibt es keinen Ersatz dafür: {nothing}. Was du angibst, geht vor.</translation>
</message>
<message>
<source>So many serves</source>
<translation>So viele Portionen</translation>
</message>
<message>
<source>Soak the gum in 100 ml of the water overnight, make a warm syrup of the rest and stir the two together.</source>
<translation>Das Gummi über Nacht in 100 ml des Wassers quellen lassen, aus dem Rest einen warmen Sirup machen und beides verrühren.</translation>
</message>
<message>
<source>Some 150 grams of sugar a litre against fewer than 50: one cannot be poured for the other.</source>
<translation>Rund 150 Gramm Zucker im Liter gegen weniger als 50: Das eine lässt sich nicht für das andere nehmen.</translation>
</message>
<message>
<source>Some do that cannot be made: tick “Also what cannot be made” to see them</source>
<translation>Manche passen, sind aber nicht machbar: Kreuze „Auch, was nicht machbar ist“ an, um sie zu sehen</translation>
</message>
<message>
<source>Some of it is in the bar, but too little</source>
<translation>Etwas davon ist in der Bar, aber zu wenig</translation>
</message>
<message>
<source>Something of its own</source>
<translation>Etwas Eigenes</translation>
</message>
<message>
<source>Something other than barkeep changed {file}: another program, or damage. What stands there now is shown; look at what it is before you go on.</source>
<translation>Etwas anderes als barkeep hat {file} geändert: ein anderes Programm oder ein Schaden. Gezeigt wird, was jetzt dort steht; sieh nach, was es ist, bevor du weitermachst.</translation>
</message>
<message>
<source>Sorrel is a sweetened hibiscus drink without alcohol; the liqueur of that name has about 20 % vol.</source>
<translation>Sorrel ist ein gesüßtes Hibiskusgetränk ohne Alkohol; der Likör dieses Namens hat etwa 20 % vol.</translation>
</message>
<message>
<source>Sort by shelf</source>
<translation>Nach Regal sortieren</translation>
</message>
<message>
<source>Sour mix is sweetened already; with the syrup of the spec the drink is twice too sweet.</source>
<translation>Sour Mix ist schon gesüßt; mit dem Sirup des Rezepts wird der Drink doppelt so süß, wie er sein soll.</translation>
</message>
<message>
<source>Source: {authority}.</source>
<translation>Quelle: {authority}.</translation>
</message>
<message>
<source>Source: {source}</source>
<translation>Quelle: {source}</translation>
</message>
<message>
<source>Sources disagree on the acid of {ingredient}: ± {share:.0f} %.</source>
<translation>Die Quellen sind sich über die Säure von {ingredient} nicht einig: ± {share:.0f} %.</translation>
</message>
<message>
<source>Space</source>
<translation>Leertaste</translation>
</message>
<message>
<source>Spain</source>
<translation>Spanien</translation>
</message>
<message>
<source>Spec</source>
<translation>Rezept</translation>
</message>
<message>
<source>Spec cards</source>
<translation>Rezeptkarten</translation>
</message>
<message>
<source>Specs</source>
<translation>Rezepte</translation>
</message>
<message>
<source>Specs ({documents});;All files (*)</source>
<translation>Rezepte ({documents});;Alle Dateien (*)</translation>
</message>
<message>
<source>Specs as CSV</source>
<translation>Rezepte als CSV</translation>
</message>
<message>
<source>Specs as JSON-LD</source>
<translation>Rezepte als JSON-LD</translation>
</message>
<message>
<source>Specs as Markdown</source>
<translation>Rezepte als Markdown</translation>
</message>
<message>
<source>Specs as barkeep’s own JSON</source>
<translation>Rezepte als JSON von barkeep</translation>
</message>
<message>
<source>Specs as plain text</source>
<translation>Rezepte als einfacher Text</translation>
</message>
<message>
<source>Specs come in with the lines that are not understood, to be settled later</source>
<translation>Rezepte kommen mit den nicht verstandenen Zeilen hinzu; geklärt werden sie später</translation>
</message>
<message>
<source>Specs of the file</source>
<translation>Rezepte der Datei</translation>
</message>
<message>
<source>Specs to print</source>
<translation>Rezepte zum Drucken</translation>
</message>
<message>
<source>Spilled</source>
<translation>Verschüttet</translation>
</message>
<message>
<source>Split the pod, scrape it into the warm syrup, leave both in it overnight and strain.</source>
<translation>Die Schote aufschlitzen, in den warmen Sirup auskratzen, beides über Nacht darin lassen und abseihen.</translation>
</message>
<message>
<source>Squeeze</source>
<translation>Auspressen</translation>
</message>
<message>
<source>Squeeze {much} from {inputs}</source>
<translation>{much} aus {inputs} pressen</translation>
</message>
<message>
<source>Stand-in</source>
<translation>Ersatz</translation>
</message>
<message>
<source>Stand-in {number}: which way</source>
<translation>Ersatz {number}: in welcher Richtung</translation>
</message>
<message>
<source>Stand-in {number}: {named}</source>
<translation>Ersatz {number}: {named}</translation>
</message>
<message>
<source>Stand-ins</source>
<translation>Ersatz</translation>
</message>
<message>
<source>Stands in for</source>
<translation>Ersetzt</translation>
</message>
<message>
<source>Start afresh</source>
<translation>Neu beginnen</translation>
</message>
<message>
<source>State</source>
<translation>Status</translation>
</message>
<message>
<source>Stays as you have it</source>
<translation>Bleibt, wie du es hast</translation>
</message>
<message>
<source>Steep food-grade flowers ten minutes in the hot syrup and strain; longer tastes of soap.</source>
<translation>Essbare Blüten zehn Minuten im heißen Sirup ziehen lassen und abseihen; länger schmeckt es nach Seife.</translation>
</message>
<message>
<source>Steep peel, ginger and cloves in the warm syrup overnight and strain; this one is without almond.</source>
<translation>Schale, Ingwer und Nelken über Nacht im warmen Sirup ziehen lassen und abseihen; dieser ist ohne Mandel.</translation>
</message>
<message>
<source>Steep peel, ginger, cloves and toasted almonds in the warm syrup overnight and strain; it carries almond.</source>
<translation>Schale, Ingwer, Nelken und geröstete Mandeln über Nacht im warmen Sirup ziehen lassen und abseihen; er enthält Mandel.</translation>
</message>
<message>
<source>Steep the flowers ten minutes in boiling water, strain, and stir in the sugar.</source>
<translation>Die Blüten zehn Minuten in kochendem Wasser ziehen lassen, abseihen und den Zucker einrühren.</translation>
</message>
<message>
<source>Steep the leaves ten minutes in the hot syrup and strain.</source>
<translation>Die Blätter zehn Minuten im heißen Sirup ziehen lassen und abseihen.</translation>
</message>
<message>
<source>Steep the peel two hours and strain.</source>
<translation>Die Schale zwei Stunden ziehen lassen und abseihen.</translation>
</message>
<message>
<source>Steep the sprigs fifteen minutes in the hot syrup and strain.</source>
<translation>Die Zweige fünfzehn Minuten im heißen Sirup ziehen lassen und abseihen.</translation>
</message>
<message>
<source>Step</source>
<translation>Schritt</translation>
</message>
<message>
<source>Still and others, Am. Surg. 63:252 (1997), three burns that needed grafts</source>
<translation>Still und andere, Am. Surg. 63:252 (1997), drei Verbrennungen, die Hauttransplantationen brauchten</translation>
</message>
<message>
<source>Stir equal amounts of cold brew and sugar until clear, warm but not boiling.</source>
<translation>Cold Brew und Zucker zu gleichen Teilen klar rühren, warm, aber nicht kochend.</translation>
</message>
<message>
<source>Stir equal amounts of hot tea and sugar until clear.</source>
<translation>Heißen Tee und Zucker zu gleichen Teilen klar rühren.</translation>
</message>
<message>
<source>Stir equal amounts of juice and sugar cold until clear.</source>
<translation>Saft und Zucker zu gleichen Teilen kalt klar rühren.</translation>
</message>
<message>
<source>Stir equal amounts of juice and sugar until clear, warm but not boiling.</source>
<translation>Saft und Zucker zu gleichen Teilen klar rühren, warm, aber nicht kochend.</translation>
</message>
<message>
<source>Stir equal amounts of juice and sugar until clear; warming takes the sharpest heat away.</source>
<translation>Saft und Zucker zu gleichen Teilen klar rühren; Erwärmen nimmt die größte Schärfe.</translation>
</message>
<message>
<source>Stir equal amounts of strong hot coffee and sugar until clear.</source>
<translation>Starken heißen Kaffee und Zucker zu gleichen Teilen klar rühren.</translation>
</message>
<message>
<source>Stir equal amounts of strong hot tea and sugar until clear.</source>
<translation>Starken heißen Tee und Zucker zu gleichen Teilen klar rühren.</translation>
</message>
<message>
<source>Stir equal volumes together warm; no honey for children under one year.</source>
<translation>Zu gleichen Volumen warm verrühren; kein Honig für Kinder unter einem Jahr.</translation>
</message>
<message>
<source>Stir equal weights until clear; warm water is quicker.</source>
<translation>Zu gleichen Gewichten klar rühren; mit warmem Wasser geht es schneller.</translation>
</message>
<message>
<source>Stir juice and syrup and top up with cold soda; never seal it under pressure.</source>
<translation>Saft und Sirup verrühren und mit kaltem Sodawasser auffüllen; nie unter Druck verschließen.</translation>
</message>
<message>
<source>Stir syrup and juice and top up with cold soda; never seal it under pressure.</source>
<translation>Sirup und Saft verrühren und mit kaltem Sodawasser auffüllen; nie unter Druck verschließen.</translation>
</message>
<message>
<source>Stir the cordial and top it up with cold soda; never seal it under pressure.</source>
<translation>Das Cordial rühren und mit kaltem Sodawasser auffüllen; nie unter Druck verschließen.</translation>
</message>
<message>
<source>Stir the sugar into the hot tea, add the lemon and chill.</source>
<translation>Den Zucker in den heißen Tee rühren, die Zitrone zugeben und kalt stellen.</translation>
</message>
<message>
<source>Stir the sugar into the juice cold until clear.</source>
<translation>Den Zucker kalt in den Saft rühren, bis er klar ist.</translation>
</message>
<message>
<source>Stir the sugar into the juice until clear and skim the foam.</source>
<translation>Den Zucker in den Saft rühren, bis er klar ist, und den Schaum abnehmen.</translation>
</message>
<message>
<source>Stir the sugar into unsweetened almond milk until clear, add the extract and perfume it; it carries almond.</source>
<translation>Den Zucker in ungesüßte Mandelmilch rühren, bis sie klar ist, den Extrakt zugeben und parfümieren; es enthält Mandel.</translation>
</message>
<message>
<source>Stir the syrup and a strong rum together, then the juice and water, and let it rest an hour; it carries almond where the syrup does.</source>
<translation>Den Sirup und einen kräftigen Rum verrühren, dann Saft und Wasser, und eine Stunde ruhen lassen; es enthält Mandel, wo der Sirup sie enthält.</translation>
</message>
<message>
<source>Stir together and chill.</source>
<translation>Verrühren und kalt stellen.</translation>
</message>
<message>
<source>Stir together and let it rest an hour.</source>
<translation>Verrühren und eine Stunde ruhen lassen.</translation>
</message>
<message>
<source>Stir together and use it within a day; it is sweetened already.</source>
<translation>Verrühren und binnen eines Tages verbrauchen; es ist schon gesüßt.</translation>
</message>
<message>
<source>Stir together.</source>
<translation>Verrühren.</translation>
</message>
<message>
<source>Stir together; it is a little stronger than bottled.</source>
<translation>Verrühren; es ist etwas stärker als das aus der Flasche.</translation>
</message>
<message>
<source>Stir two parts of honey into one of water, warm; no honey for children under one year.</source>
<translation>Zwei Teile Honig warm in einen Teil Wasser rühren; kein Honig für Kinder unter einem Jahr.</translation>
</message>
<message>
<source>Stir two parts of juice and one of syrup together and keep it cold.</source>
<translation>Zwei Teile Saft und einen Teil Sirup verrühren und kalt aufbewahren.</translation>
</message>
<message>
<source>Stir until clear: one part of salt in five by weight; use it by the drop.</source>
<translation>Klar rühren: ein Gewichtsteil Salz in fünf; tropfenweise verwenden.</translation>
</message>
<message>
<source>Stir until clear; a scale that shows tenths of a gram is needed, and powdered acid burns the eyes.</source>
<translation>Klar rühren; dazu braucht es eine Waage, die Zehntelgramm zeigt, und Säurepulver brennt in den Augen.</translation>
</message>
<message>
<source>Stir until clear; powdered acid burns the eyes.</source>
<translation>Klar rühren; Säurepulver brennt in den Augen.</translation>
</message>
<message>
<source>Stirred</source>
<translation>Gerührt</translation>
</message>
<message>
<source>Stone, peel and blend it; a little lemon keeps it pale.</source>
<translation>Entsteinen, schälen und mixen; etwas Zitrone hält es hell.</translation>
</message>
<message>
<source>Stop, and keep the best so &amp;far</source>
<translation>Anhalten und das Beste bis &amp;jetzt behalten</translation>
</message>
<message>
<source>Straight and wide with a wide mouth: cherries, syrups and whatever steeps</source>
<translation>Gerade und weit mit weiter Öffnung: Kirschen, Sirupe und alles, was zieht</translation>
</message>
<message>
<source>Straight sides below, then a long even slope to the neck: many whiskies and rums</source>
<translation>Unten gerade Seiten, dann eine lange, gleichmäßige Schräge zum Hals: viele Whiskys und Rums</translation>
</message>
<message>
<source>Straight sides, a short round shoulder and a long neck: many gins, vodkas and vermouths</source>
<translation>Gerade Seiten, eine kurze, runde Schulter und ein langer Hals: viele Gins, Wodkas und Wermuts</translation>
</message>
<message>
<source>Straight sides, marked round shoulders, a hollow foot: most red wine, port and sherry</source>
<translation>Gerade Seiten, deutliche, runde Schultern, ein hohler Boden: die meisten Rotweine, Portweine und Sherrys</translation>
</message>
<message>
<source>Strength</source>
<translation>Alkoholgehalt</translation>
</message>
<message>
<source>Strength</source>
<comment>filter</comment>
<translation>Stärke</translation>
</message>
<message>
<source>Strength is told in this country's standard drinks too.</source>
<translation>Der Alkoholgehalt wird auch in Standarddrinks dieses Landes angegeben.</translation>
</message>
<message>
<source>Strength not known: {why}.</source>
<translation>Alkoholgehalt nicht bekannt: {why}.</translation>
</message>
<message>
<source>Strong, 20 % vol and up</source>
<translation>Stark, ab 20 % vol</translation>
</message>
<message>
<source>Strong, at about {abv_percent} % vol as served: pour it small and have water beside it. Low-risk advice is for your local health authority.</source>
<translation>Stark, serviert mit etwa {abv_percent} % vol: klein einschenken und Wasser dazustellen. Was risikoarm ist, sagt die örtliche Gesundheitsbehörde.</translation>
</message>
<message>
<source>Su&amp;gar</source>
<translation>Z&amp;ucker</translation>
</message>
<message>
<source>Such as +{some} or −{some}</source>
<translation>Etwa +{some} oder −{some}</translation>
</message>
<message>
<source>Such as 0.3 ml</source>
<translation>Etwa 0.3 ml</translation>
</message>
<message>
<source>Such as 0.45, 315 ml, 812 g or 11.5 cm</source>
<translation>Etwa 0.45, 315 ml, 812 g oder 11.5 cm</translation>
</message>
<message>
<source>Such as 1230 g</source>
<translation>Etwa 1230 g</translation>
</message>
<message>
<source>Such as 2 bottles</source>
<translation>Etwa 2 bottles</translation>
</message>
<message>
<source>Such as 2026-12-31</source>
<translation>Etwa 2026-12-31</translation>
</message>
<message>
<source>Such as 24.50</source>
<translation>Etwa 24.50</translation>
</message>
<message>
<source>Such as 250 g, or 0.4 of it</source>
<translation>Etwa 250 g oder 0.4 davon</translation>
</message>
<message>
<source>Such as 4</source>
<translation>Etwa 4</translation>
</message>
<message>
<source>Such as 520 g</source>
<translation>Etwa 520 g</translation>
</message>
<message>
<source>Such as 800 ml</source>
<translation>Etwa 800 ml</translation>
</message>
<message>
<source>Such as Wren, Osk</source>
<translation>Etwa Wren, Osk</translation>
</message>
<message>
<source>Such as {example}. Where the database holds several bars, add ?schema= and the one’s name.</source>
<translation>Etwa {example}. Hält die Datenbank mehrere Bars, häng ?schema= und den Namen der einen an.</translation>
</message>
<message>
<source>Such as {kinds}</source>
<translation>Etwa {kinds}</translation>
</message>
<message>
<source>Such as {some}</source>
<translation>Etwa {some}</translation>
</message>
<message>
<source>Such as {some} or 2 oz</source>
<translation>Etwa {some} oder 2 oz</translation>
</message>
<message>
<source>Sugar</source>
<translation>Zucker</translation>
</message>
<message>
<source>Sugar to acid</source>
<translation>Zucker zu Säure</translation>
</message>
<message>
<source>Summed over the shoots that counted a bottle. Reasons are common practice.</source>
<translation>Summe der Drehs, die eine Flasche gezählt haben. Die Gründe sind Erfahrungswerte.</translation>
</message>
<message>
<source>Sunday</source>
<translation>Sonntag</translation>
</message>
<message>
<source>Swapped</source>
<translation>Getauscht</translation>
</message>
<message>
<source>Switzerland</source>
<translation>Schweiz</translation>
</message>
<message>
<source>Swizzled</source>
<translation>Gequirlt</translation>
</message>
<message>
<source>T&amp;are</source>
<translation>&amp;Leergewicht</translation>
</message>
<message>
<source>T&amp;itle</source>
<translation>&amp;Titel</translation>
</message>
<message>
<source>Ta&amp;ke off the list</source>
<translation>Von der Liste ne&amp;hmen</translation>
</message>
<message>
<source>Tag</source>
<translation>Schlagwort</translation>
</message>
<message>
<source>Tags: {tags}</source>
<translation>Schlagworte: {tags}</translation>
</message>
<message>
<source>Take</source>
<translation>Nehmen</translation>
</message>
<message>
<source>Take &amp;theirs</source>
<translation>&amp;Andere übernehmen</translation>
</message>
<message>
<source>Take it &amp;in</source>
<translation>A&amp;ufnehmen</translation>
</message>
<message>
<source>Take it out of the bottles ({keys})</source>
<translation>Aus den Flaschen entnehmen ({keys})</translation>
</message>
<message>
<source>Take out the seeds, press them without breaking the pips and strain.</source>
<translation>Die Kerne herausnehmen, auspressen, ohne sie zu zerdrücken, und abseihen.</translation>
</message>
<message>
<source>Take read&amp;y answers ({ready:,})</source>
<translation>&amp;Klare Antworten übernehmen ({ready:,})</translation>
</message>
<message>
<source>Take stand-in {number} away</source>
<translation>Ersatz {number} wegnehmen</translation>
</message>
<message>
<source>Take the drink out</source>
<translation>Drink herausnehmen</translation>
</message>
<message>
<source>Take theirs</source>
<translation>Das andere nehmen</translation>
</message>
<message>
<source>Taken back</source>
<translation>Zurückgenommen</translation>
</message>
<message>
<source>Takes the place of yours</source>
<translation>Ersetzt deins</translation>
</message>
<message>
<source>Tasting</source>
<translation>Verkosten</translation>
</message>
<message>
<source>Te&amp;xt size</source>
<translation>Schrift&amp;größe</translation>
</message>
<message>
<source>Technique</source>
<translation>Technik</translation>
</message>
<message>
<source>Tell barkeep what you have, and it says what you can make tonight.</source>
<translation>Sag barkeep, was du hast, und es sagt dir, was du heute Abend machen kannst.</translation>
</message>
<message>
<source>Tests</source>
<translation>Tests</translation>
</message>
<message>
<source>Text</source>
<translation>Text</translation>
</message>
<message>
<source>Text of the spec</source>
<translation>Text des Rezepts</translation>
</message>
<message>
<source>Text size: </source>
<translation>Schriftgröße: </translation>
</message>
<message>
<source>That is {over} more than it holds</source>
<translation>Das sind {over} mehr, als hineinpasst</translation>
</message>
<message>
<source>That is {short} more than the ledger says is left</source>
<translation>Das sind {short} mehr, als laut Verlauf noch da ist</translation>
</message>
<message>
<source>The amaro is a liqueur poured by the measure, the bitters a seasoning used by the dash.</source>
<translation>Der Amaro ist ein Likör, den man mit dem Barmaß abmisst, die Bitters sind eine Würze, die man dashweise nimmt.</translation>
</message>
<message>
<source>The bar as it is</source>
<translation>Die Bar, wie sie ist</translation>
</message>
<message>
<source>The bar cannot be opened as it is. Nothing of it is changed here.</source>
<translation>So lässt sich die Bar nicht öffnen. Hier wird nichts an ihr geändert.</translation>
</message>
<message>
<source>The bar has faults. Back it up before anything else.</source>
<translation>Die Bar hat Fehler. Leg vor allem anderen eine Sicherung an.</translation>
</message>
<message>
<source>The bar holds {things} now.</source>
<translation>Jetzt in der Bar: {things}.</translation>
</message>
<message>
<source>The bar is in {file} again, with everything that is shown</source>
<translation>Die Bar ist wieder in {file}, mit allem, was gezeigt wird</translation>
</message>
<message>
<source>The bar is read-only</source>
<translation>Die Bar ist schreibgeschützt</translation>
</message>
<message>
<source>The bar is taken as it is</source>
<translation>Die Bar ist so übernommen, wie sie ist</translation>
</message>
<message>
<source>The bar knows this product, so only the bottle is new. Change the name for another one.</source>
<translation>Die Bar kennt dieses Produkt, also ist nur die Flasche neu. Für ein anderes den Namen ändern.</translation>
</message>
<message>
<source>The best set of so many bottles, or for so much money</source>
<translation>Die beste Auswahl aus so vielen Flaschen oder für so viel Geld</translation>
</message>
<message>
<source>The bitters are a seasoning used by the dash, the juice fills the glass.</source>
<translation>Die Bitters sind eine Würze, die man dashweise nimmt, der Saft füllt das Glas.</translation>
</message>
<message>
<source>The bottles on the screen are not those in the file; open the bar again.</source>
<translation>Die gezeigten Flaschen sind nicht die in der Datei; öffne die Bar noch einmal.</translation>
</message>
<message>
<source>The bottles stand side by side, but cordial is a syrup and bottled lime juice has no sugar added.</source>
<translation>Die Flaschen stehen nebeneinander, aber Cordial ist ein Sirup, und Limettensaft aus der Flasche hat keinen Zucker.</translation>
</message>
<message>
<source>The card itself</source>
<translation>Die Karte selbst</translation>
</message>
<message>
<source>The chosen row</source>
<translation>Die gewählte Zeile</translation>
</message>
<message>
<source>The chosen spec</source>
<translation>Das gewählte Rezept</translation>
</message>
<message>
<source>The columns are as they were at first</source>
<translation>Die Spalten sind, wie sie anfangs waren</translation>
</message>
<message>
<source>The connection to {file} was lost just as the change was being written, so it may be written or not. Look whether it is there before you do it again.</source>
<translation>Die Verbindung zu {file} riss ab, als die Änderung gerade geschrieben wurde; sie kann also geschrieben sein oder nicht. Sieh nach, ob sie da ist, bevor du sie wiederholst.</translation>
</message>
<message>
<source>The connection to {file} was lost, and nothing was changed. Try again in a moment; barkeep connects again by itself.</source>
<translation>Die Verbindung zu {file} ist abgerissen, und nichts wurde geändert. Versuch es gleich noch einmal; barkeep verbindet sich von selbst wieder.</translation>
</message>
<message>
<source>The counts of {bottles} are left out, as they are gone or smaller by now</source>
<translation>Die Zählungen von {bottles} fallen weg, weil es sie nicht mehr gibt oder sie jetzt kleiner sind</translation>
</message>
<message>
<source>The counts of {bottles} are thrown away</source>
<translation>Die Zählungen von {bottles} sind verworfen</translation>
</message>
<message>
<source>The counts of {bottles} is left out, as it is gone or smaller by now</source>
<translation>Die Zählung von {bottles} fällt weg, weil es sie nicht mehr gibt oder sie jetzt kleiner ist</translation>
</message>
<message>
<source>The database is damaged: {fault}.</source>
<translation>Die Datenbank ist beschädigt: {fault}.</translation>
</message>
<message>
<source>The drink in its glass</source>
<translation>Das Getränk in seinem Glas</translation>
</message>
<message>
<source>The drink is its garnish, {name} ({words}): {telling}.</source>
<translation>Der Drink lebt von seiner Garnitur, {name} ({words}): {telling}.</translation>
</message>
<message>
<source>The file is damaged: {fault}.</source>
<translation>Die Datei ist beschädigt: {fault}.</translation>
</message>
<message>
<source>The file was checked as it was opened now, and is sound: all that was saved is in it</source>
<translation>Die Datei wurde eben beim Öffnen geprüft und ist in Ordnung: Alles Gesicherte ist darin</translation>
</message>
<message>
<source>The first drink would be</source>
<translation>Der erste Drink wäre</translation>
</message>
<message>
<source>The first rows</source>
<translation>Die ersten Zeilen</translation>
</message>
<message>
<source>The first rows of {file}</source>
<translation>Die ersten Zeilen von {file}</translation>
</message>
<message>
<source>The help says nothing of “{asked}”. Its pages: barkeep help.</source>
<translation>Die Hilfe sagt nichts über „{asked}“. Ihre Seiten: barkeep help.</translation>
</message>
<message>
<source>The house pour of {kind} is a product that is not there.</source>
<translation>Die Hausmarke für {kind} ist ein Produkt, das es nicht gibt.</translation>
</message>
<message>
<source>The ice in the glass is counted on for part of the water: serve it on fresh ice.</source>
<translation>Einen Teil des Wassers soll das Eis im Glas geben: auf frischem Eis servieren.</translation>
</message>
<message>
<source>The ice in the glass is counted on for the water: serve it on fresh ice.</source>
<translation>Das Wasser soll das Eis im Glas geben: auf frischem Eis servieren.</translation>
</message>
<message>
<source>The import</source>
<translation>Der Import</translation>
</message>
<message>
<source>The ingredient “{key}” is used in this bar, but not known to this barkeep.</source>
<translation>Die Zutat „{key}“ wird in dieser Bar verwendet, ist diesem barkeep aber nicht bekannt.</translation>
</message>
<message>
<source>The jars look alike; taste before you measure.</source>
<translation>Die Gläser sehen gleich aus; koste, bevor du abmisst.</translation>
</message>
<message>
<source>The label itself</source>
<translation>Das Etikett selbst</translation>
</message>
<message>
<source>The largest size of a spirit, stout so that it can still be held, often with a handle</source>
<translation>Die größte Größe einer Spirituose, gedrungen, damit man sie noch halten kann, oft mit Griff</translation>
</message>
<message>
<source>The last step may not have been done; you can go on. If it happens again, send the report to whoever looks after barkeep: it says where it happened, and nothing of what is in your bar.</source>
<translation>Der letzte Schritt ist vielleicht nicht getan; du kannst weitermachen. Geschieht es wieder, schick den Bericht an alle, die barkeep betreuen: Er sagt, wo es geschah, und nichts von dem, was in deiner Bar ist.</translation>
</message>
<message>
<source>The ledger of {title} (#{id}) says it holds {held:g} of {size:g} {unit}.</source>
<translation>Nach dem Verlauf enthält {title} (#{id}) {held:g} von {size:g} {unit}.</translation>
</message>
<message>
<source>The ledger says {left}</source>
<translation>Laut Verlauf sind es {left}</translation>
</message>
<message>
<source>The level is that of one bottle; the other counts as full.</source>
<translation>Der Füllstand gilt für eine Flasche; die andere zählt als voll.</translation>
</message>
<message>
<source>The level is that of one bottle; the other {others} count as full.</source>
<translation>Der Füllstand gilt für eine Flasche; die anderen {others} zählen als voll.</translation>
</message>
<message>
<source>The liqueur is poured by the measure, the bitters are a seasoning used by the dash.</source>
<translation>Den Likör nimmt man nach Maß, die Bitters sind eine Würze, die man dashweise nimmt.</translation>
</message>
<message>
<source>The liquid of chickpeas foams; the brine of olives and pickles is salt.</source>
<translation>Die Flüssigkeit von Kichererbsen schäumt; die Lake von Oliven und Gurken ist Salz.</translation>
</message>
<message>
<source>The list is empty: write or paste a bottle a line first.</source>
<translation>Die Liste ist leer: Schreib oder füge zuerst eine Flasche je Zeile ein.</translation>
</message>
<message>
<source>The list was copied</source>
<translation>Die Liste ist kopiert</translation>
</message>
<message>
<source>The log</source>
<translation>Das Protokoll</translation>
</message>
<message>
<source>The log of {theme} was begun on {when} and is not written yet.</source>
<translation>Das Protokoll von {theme} wurde am {when} begonnen und ist noch nicht geschrieben.</translation>
</message>
<message>
<source>The method says “{words}”, so the amounts are taken for {serves:g} serves together.</source>
<translation>Die Zubereitung sagt „{words}“, daher gelten die Mengen für {serves:g} Portionen zusammen.</translation>
</message>
<message>
<source>The name comes first, then one ingredient a line.</source>
<translation>Erst kommt der Name, dann je Zeile eine Zutat.</translation>
</message>
<message>
<source>The nearest are {names}.</source>
<translation>Am nächsten kommen {names}.</translation>
</message>
<message>
<source>The nearest is {names}.</source>
<translation>Am nächsten kommt {names}.</translation>
</message>
<message>
<source>The newest there are {newest}.</source>
<translation>Die neuesten dort sind {newest}.</translation>
</message>
<message>
<source>The page holds no recipe data; it was read by its headings and lists.</source>
<translation>Die Seite enthält keine Rezeptdaten; sie wurde nach ihren Überschriften und Listen gelesen.</translation>
</message>
<message>
<source>The printer takes nothing. Is it switched on, and is its queue open?</source>
<translation>Der Drucker nimmt nichts an. Ist er eingeschaltet, und ist seine Warteschlange offen?</translation>
</message>
<message>
<source>The product’s price in the bar is {kept}; {paid} is noted as paid, and is its price from now on unless it was bought again since.</source>
<translation>Der Preis des Produkts in der Bar ist {kept}; {paid} wird als bezahlt notiert und ist von nun an sein Preis, wenn es seither nicht wieder gekauft wurde.</translation>
</message>
<message>
<source>The product’s {name} stays as in {where}: {kept}, not {shown}.</source>
<translation>Beim Produkt ({name}) bleibt es wie in {where}: {kept}, nicht {shown}.</translation>
</message>
<message>
<source>The publish text was copied</source>
<translation>Der Text zum Veröffentlichen wurde kopiert</translation>
</message>
<message>
<source>The publish text was copied as Markdown</source>
<translation>Der Text zum Veröffentlichen wurde als Markdown kopiert</translation>
</message>
<message>
<source>The row to repair</source>
<translation>Die Zeile, die zu berichtigen ist</translation>
</message>
<message>
<source>The same</source>
<translation>Gleich</translation>
</message>
<message>
<source>The same: {after}</source>
<translation>Gleich: {after}</translation>
</message>
<message>
<source>The serves made take more than there is: {lacking}{reach}</source>
<translation>Die gemachten Portionen brauchen mehr, als da ist: {lacking}{reach}</translation>
</message>
<message>
<source>The shelf</source>
<translation>Das Regal</translation>
</message>
<message>
<source>The shoot “{theme}” is {state} and has a log.</source>
<translation>Der Dreh „{theme}“ ist {state} und hat ein Protokoll.</translation>
</message>
<message>
<source>The shoot “{theme}” is {state} and has no log.</source>
<translation>Der Dreh „{theme}“ ist {state} und hat kein Protokoll.</translation>
</message>
<message>
<source>The spec as plain text</source>
<translation>Das Rezept als einfacher Text</translation>
</message>
<message>
<source>The spec of {drink} was removed, so what {theme} poured of it is not known: undo that, put its serves at 0, or take it out of the shoot.</source>
<translation>Das Rezept von {drink} wurde entfernt, darum ist nicht bekannt, was {theme} davon ausgeschenkt hat: Mach das rückgängig, setz die Portionen auf 0 oder nimm den Drink aus dem Dreh.</translation>
</message>
<message>
<source>The spec of {names} was removed: put another in its place or take it out.</source>
<translation>Das Rezept von {names} wurde entfernt: Setz ein anderes an die Stelle oder nimm den Drink heraus.</translation>
</message>
<message>
<source>The syrup in a jar of maraschino cherries is coloured sugar water, not the liqueur of that name.</source>
<translation>Der Sirup im Glas mit Maraschinokirschen ist gefärbtes Zuckerwasser, nicht der Likör dieses Namens.</translation>
</message>
<message>
<source>The text was copied</source>
<translation>Der Text wurde kopiert</translation>
</message>
<message>
<source>The tins look alike: condensed milk is more than half sugar, evaporated milk has none added.</source>
<translation>Die Dosen sehen gleich aus: Gesüßte Kondensmilch ist mehr als zur Hälfte Zucker, Kondensmilch ohne Zucker hat keinen Zusatz.</translation>
</message>
<message>
<source>The usual one of its kind and size</source>
<translation>Die übliche für Zutat und Größe</translation>
</message>
<message>
<source>The usual one; its label may say another.</source>
<translation>Die übliche; das Etikett kann eine andere nennen.</translation>
</message>
<message>
<source>The water is what the ice would give, give or take {share:.0f} % of what is poured: taste before all of it is in.</source>
<translation>Das Wasser ist das, was das Eis geben würde, plus oder minus {share:.0f} % der eingegossenen Menge: probieren, bevor alles drin ist.</translation>
</message>
<message>
<source>The white foams, the yolk enriches: neither does the other's work.</source>
<translation>Das Eiweiß schäumt, das Eigelb macht gehaltvoll: Keines leistet die Arbeit des anderen.</translation>
</message>
<message>
<source>The whole bar is written to {file}</source>
<translation>Die ganze Bar steht in {file}</translation>
</message>
<message>
<source>The whole file</source>
<translation>Die ganze Datei</translation>
</message>
<message>
<source>The window that was opened on {day} at {time} was not closed but ended, as by a crash or a power cut. {checked}.</source>
<translation>Das Fenster, das am {day} um {time} geöffnet wurde, wurde nicht geschlossen, sondern brach ab, etwa durch einen Absturz oder Stromausfall. {checked}.</translation>
</message>
<message>
<source>The {name} is past its date{until} and is not counted.</source>
<translation>Über dem Datum{until} und nicht gezählt: {name}.</translation>
</message>
<message>
<source>The {name} of {day} is past its date{until} and is not counted.</source>
<translation>Über dem Datum{until} und nicht gezählt: {name} vom {day}.</translation>
</message>
<message>
<source>The {name} that goes in is to be used by {first}, before the {last} of what it makes.</source>
<translation>{name} darin ist bis {first} zu verbrauchen, vor dem {last} dessen, was daraus wird.</translation>
</message>
<message>
<source>Theirs</source>
<translation>Andere Fassung</translation>
</message>
<message>
<source>Theirs comes in beside yours, under another name</source>
<translation>Das andere kommt unter anderem Namen neben deins</translation>
</message>
<message>
<source>Theirs takes the place of yours; undo brings yours back</source>
<translation>Das andere ersetzt deins; Rückgängig bringt deins zurück</translation>
</message>
<message>
<source>Theme</source>
<translation>Thema</translation>
</message>
<message>
<source>Theme: </source>
<translation>Aussehen: </translation>
</message>
<message>
<source>Then</source>
<translation>Danach</translation>
</message>
<message>
<source>Then one short ({number})</source>
<translation>Danach fehlt noch eine Zutat ({number})</translation>
</message>
<message>
<source>Then with a stand-in</source>
<translation>Dann mit Ersatz</translation>
</message>
<message>
<source>There</source>
<translation>Da</translation>
</message>
<message>
<source>There already</source>
<translation>Schon da</translation>
</message>
<message>
<source>There already: {names}.</source>
<translation>Schon da: {names}.</translation>
</message>
<message>
<source>There is already a {kind} called “{name}”; choose another name.</source>
<translation>„{name}“ gibt es schon ({kind}); wähle einen anderen Namen.</translation>
</message>
<message>
<source>There is already an ingredient of yours called “{name}”; “barkeep ingredient change” changes {ingredient}.</source>
<translation>Es gibt schon eine eigene Zutat namens „{name}“; „barkeep ingredient change“ ändert {ingredient}.</translation>
</message>
<message>
<source>There is already an {kind} called “{name}”; choose another name.</source>
<translation>„{name}“ gibt es schon ({kind}); wähle einen anderen Namen.</translation>
</message>
<message>
<source>There is no backup yet</source>
<translation>Es gibt noch keine Sicherung</translation>
</message>
<message>
<source>There is no backup “{name}”, neither as a file nor in {folder}.</source>
<translation>Es gibt keine Sicherung „{name}“, weder als Datei noch in {folder}.</translation>
</message>
<message>
<source>There is no bar in {file}: {reason}.</source>
<translation>In {file} ist keine Bar: {reason}.</translation>
</message>
<message>
<source>There is no bottle of {product}, which has the barcode {code}.</source>
<translation>Es gibt keine Flasche {product} mit dem Strichcode {code}.</translation>
</message>
<message>
<source>There is no bottle to export.</source>
<translation>Es gibt keine Flasche zum Exportieren.</translation>
</message>
<message>
<source>There is no house-made thing in this bar yet</source>
<translation>In dieser Bar gibt es noch nichts selbst Gemachtes</translation>
</message>
<message>
<source>There is no other row to go to</source>
<translation>Es gibt keine weitere Zeile</translation>
</message>
<message>
<source>There is no recipe for {ingredient}: say what it is made from.</source>
<translation>Für {ingredient} gibt es kein Rezept: Gib an, woraus es gemacht wird.</translation>
</message>
<message>
<source>There is no spec in this bar yet</source>
<translation>In dieser Bar gibt es noch kein Rezept</translation>
</message>
<message>
<source>There is no spec of your own to export; name a classic, or ask for all of them.</source>
<translation>Es gibt kein eigenes Rezept zum Exportieren; nenne einen Klassiker oder verlange alle.</translation>
</message>
<message>
<source>There is no text to paste</source>
<translation>Es gibt keinen Text zum Einfügen</translation>
</message>
<message>
<source>There is no {kind} called “{name}”.</source>
<translation>„{name}“ gibt es nicht ({kind}).</translation>
</message>
<message>
<source>There is nothing else to {what}</source>
<translation>Sonst gibt es nichts, was sich {what} ließe</translation>
</message>
<message>
<source>There is nothing in the plan</source>
<translation>Im Plan steht nichts</translation>
</message>
<message>
<source>There is nothing to buy.</source>
<translation>Es ist nichts zu kaufen.</translation>
</message>
<message>
<source>There is nothing to import.</source>
<translation>Es gibt nichts zu importieren.</translation>
</message>
<message>
<source>There is nothing to import: {said}.</source>
<translation>Es gibt nichts zu importieren: {said}.</translation>
</message>
<message>
<source>There is nothing to pour from.</source>
<translation>Es ist nichts zum Ausschenken da.</translation>
</message>
<message>
<source>There is nothing to redo</source>
<translation>Es gibt nichts zu wiederholen</translation>
</message>
<message>
<source>There is nothing to save yet: write a name, and below it one ingredient a line.</source>
<translation>Es gibt noch nichts zu sichern: schreib einen Namen und darunter je Zeile eine Zutat.</translation>
</message>
<message>
<source>There is nothing to undo</source>
<translation>Es gibt nichts rückgängig zu machen</translation>
</message>
<message>
<source>There is nothing to {what}.</source>
<translation>Es gibt nichts, was sich {what} ließe.</translation>
</message>
<message>
<source>These are the usual cautions. Local rules come first, and so does whoever is qualified to advise you.</source>
<translation>Das sind die üblichen Warnhinweise. Örtliche Regeln gehen vor, ebenso wer dich fachkundig beraten kann.</translation>
</message>
<message>
<source>These count as there without a bottle. Untick one that is not: what needs it, and what is made from it, is then no longer ready.</source>
<translation>Diese gelten ohne Flasche als da. Nimm das Kreuz weg, wenn eines fehlt: Was damit gemacht wird oder daraus entsteht, ist dann nicht mehr machbar.</translation>
</message>
<message>
<source>They are &amp;bottles</source>
<translation>Es sind &amp;Flaschen</translation>
</message>
<message>
<source>They are &amp;specs</source>
<translation>Es sind &amp;Rezepte</translation>
</message>
<message>
<source>Thick glass, sloping shoulders and a deep hollow foot, made for pressure</source>
<translation>Dickes Glas, abfallende Schultern und ein tief hohler Boden, für Druck gemacht</translation>
</message>
<message>
<source>Things &amp;keep</source>
<translation>Haltbar&amp;keit</translation>
</message>
<message>
<source>This &amp;version is settled on</source>
<translation>Diese &amp;Fassung steht fest</translation>
</message>
<message>
<source>This bar cannot be opened</source>
<translation>Diese Bar lässt sich nicht öffnen</translation>
</message>
<message>
<source>This is a copy of the sample bar to look around in: nothing you do here is kept.</source>
<translation>Das ist eine Kopie der Beispielbar zum Umsehen: Nichts, was du hier tust, bleibt erhalten.</translation>
</message>
<message>
<source>This is the bar as it is</source>
<translation>Das ist die Bar, wie sie ist</translation>
</message>
<message>
<source>This is the first bottle: there is none to go back to</source>
<translation>Das ist die erste Flasche: Es gibt keine davor</translation>
</message>
<message>
<source>This is the last page you went to</source>
<translation>Das ist die letzte Seite, auf der du warst</translation>
</message>
<message>
<source>This is where you began</source>
<translation>Hier hast du begonnen</translation>
</message>
<message>
<source>This one</source>
<translation>Diese hier</translation>
</message>
<message>
<source>This version is settled on</source>
<translation>Diese Fassung steht fest</translation>
</message>
<message>
<source>Those that differ:</source>
<translation>Die abweichenden:</translation>
</message>
<message>
<source>Three letters, such as EUR</source>
<translation>Drei Buchstaben, etwa EUR</translation>
</message>
<message>
<source>Throw it away</source>
<translation>Wegwerfen</translation>
</message>
<message>
<source>Throw it away and make it anew</source>
<translation>Wegwerfen und neu herstellen</translation>
</message>
<message>
<source>Thrown</source>
<translation>Geworfen</translation>
</message>
<message>
<source>Thursday</source>
<translation>Donnerstag</translation>
</message>
<message>
<source>Tick &amp;all</source>
<translation>&amp;Alle ankreuzen</translation>
</message>
<message>
<source>Tick &amp;more</source>
<translation>&amp;Mehr ankreuzen</translation>
</message>
<message>
<source>Tick all of the l&amp;ist</source>
<translation>Ganze L&amp;iste ankreuzen</translation>
</message>
<message>
<source>Tick at least one house-made thing to see its page here</source>
<translation>Kreuze mindestens etwas selbst Gemachtes an, um die Seite hier zu sehen</translation>
</message>
<message>
<source>Tick at least one spec to see its page here</source>
<translation>Kreuze mindestens ein Rezept an, um die Seite hier zu sehen</translation>
</message>
<message>
<source>Tick something first</source>
<translation>Erst etwas ankreuzen</translation>
</message>
<message>
<source>Tick what you bought first</source>
<translation>Erst ankreuzen, was du gekauft hast</translation>
</message>
<message>
<source>Tick what you bought; how many you got and what each cost can be typed over.</source>
<translation>Kreuze an, was du gekauft hast; wie viele es waren und was jedes gekostet hat, lässt sich überschreiben.</translation>
</message>
<message>
<source>Tick what you own</source>
<translation>Ankreuzen, was du hast</translation>
</message>
<message>
<source>Tin</source>
<translation>Shakerbecher</translation>
</message>
<message>
<source>To be bought: {lacking}.</source>
<translation>Zu kaufen: {lacking}.</translation>
</message>
<message>
<source>To buy</source>
<translation>Zu kaufen</translation>
</message>
<message>
<source>To cut</source>
<translation>Zu schneiden</translation>
</message>
<message>
<source>To cut from {fruit}</source>
<translation>Zu schneiden aus {fruit}</translation>
</message>
<message>
<source>To cut from {fruit}.</source>
<translation>Zu schneiden aus {fruit}.</translation>
</message>
<message>
<source>To draw from</source>
<translation>Kommt aus</translation>
</message>
<message>
<source>To go on with there is {there}{stand_in}{ratio}.</source>
<translation>Weiter geht es mit {there}{stand_in}{ratio}.</translation>
</message>
<message>
<source>To know</source>
<translation>Zu wissen</translation>
</message>
<message>
<source>To log</source>
<translation>Ohne Protokoll</translation>
</message>
<message>
<source>To make</source>
<translation>Zu machen</translation>
</message>
<message>
<source>To mind</source>
<translation>Zu beachten</translation>
</message>
<message>
<source>To repair</source>
<translation>Zu berichtigen</translation>
</message>
<message>
<source>Tobacco in a drink: nobody can control the dose of nicotine, and a little poisons. Do not serve it; after a mishap call your local poison centre.</source>
<translation>Tabak im Drink: Niemand kann die Menge Nikotin beherrschen, und schon wenig vergiftet. Nicht servieren; nach einem Missgeschick die örtliche Giftnotrufzentrale anrufen.</translation>
</message>
<message>
<source>Tomato and clam juice is sweetened and carries molluscs and fish.</source>
<translation>Tomaten-Muschel-Saft ist gesüßt und enthält Weichtiere und Fisch.</translation>
</message>
<message>
<source>Tonic water is bitter with quinine and as sweet as cola; soda water is neither.</source>
<translation>Tonic Water ist bitter von Chinin und süß wie Cola; Sodawasser ist keines von beiden.</translation>
</message>
<message>
<source>Tonight</source>
<translation>Heute Abend</translation>
</message>
<message>
<source>Tonight, as a wall</source>
<translation>Heute Abend, als Wand</translation>
</message>
<message>
<source>Tonight: &amp;use up</source>
<translation>Heute Abend: auf&amp;brauchen</translation>
</message>
<message>
<source>Tonka, woodruff and other coumarin: not allowed as an addition to food in the United States and limited in Europe, for the liver's sake. Follow your local food rules.</source>
<translation>Tonkabohne, Waldmeister und anderes Cumarin: in den Vereinigten Staaten als Zusatz zu Lebensmitteln nicht erlaubt und in Europa begrenzt, der Leber wegen. Die örtlichen Lebensmittelvorschriften befolgen.</translation>
</message>
<message>
<source>Too far off: {named}.</source>
<translation>Zu weit entfernt: {named}.</translation>
</message>
<message>
<source>Too far to offer</source>
<translation>Zu weit entfernt, um ihn anzubieten</translation>
</message>
<message>
<source>Tools</source>
<translation>Werkzeug</translation>
</message>
<message>
<source>Top cold juice up with cold soda; never seal it under pressure.</source>
<translation>Kalten Saft mit kaltem Sodawasser auffüllen; nie unter Druck verschließen.</translation>
</message>
<message>
<source>Tree nuts: a trace can stop a guest's breath. Ask before serving, use clean tins and spoons, and call for help at once; the label comes first.</source>
<translation>Schalenfrüchte (Nüsse): Eine Spur kann einem Gast den Atem nehmen. Vor dem Servieren fragen, saubere Becher und Löffel verwenden und im Notfall sofort Hilfe rufen; das Etikett geht vor.</translation>
</message>
<message>
<source>Trial of {name}</source>
<translation>Versuch von {name}</translation>
</message>
<message>
<source>Trials</source>
<translation>Versuche</translation>
</message>
<message>
<source>Try again</source>
<translation>Erneut versuchen</translation>
</message>
<message>
<source>Try fewer or other words, or a wider filter</source>
<translation>Versuch es mit weniger oder anderen Wörtern oder einem weiteren Filter</translation>
</message>
<message>
<source>Tuesday</source>
<translation>Dienstag</translation>
</message>
<message>
<source>Turn between the list and the picture ({keys})</source>
<translation>Zwischen Liste und Bild wechseln ({keys})</translation>
</message>
<message>
<source>Turns nothing by itself</source>
<translation>Macht allein nichts machbar</translation>
</message>
<message>
<source>Turns ready</source>
<translation>Neu machbar</translation>
</message>
<message>
<source>Turns ready ({number})</source>
<translation>Neu machbar ({number})</translation>
</message>
<message>
<source>Turns {drinks} ready</source>
<translation>Macht {drinks} machbar</translation>
</message>
<message>
<source>Turns {drinks} ready with a stand-in</source>
<translation>Macht {drinks} mit Ersatz machbar</translation>
</message>
<message>
<source>Turns {drinks} ready, of which {beside} with a stand-in</source>
<translation>Macht {drinks} machbar, davon {beside} mit Ersatz</translation>
</message>
<message>
<source>Two columns</source>
<translation>Zweispaltig</translation>
</message>
<message>
<source>Two purchases that open a drink only together are listed here, and there are none</source>
<translation>Hier stehen zwei Käufe, die nur zusammen einen Drink machbar machen, und es gibt keine</translation>
</message>
<message>
<source>Type some of a name. Every command:</source>
<translation>Tipp ein Stück eines Namens. Alle Befehle:</translation>
</message>
<message>
<source>Type some of a name. Used lately, then every command:</source>
<translation>Tipp ein Stück eines Namens. Zuletzt Benutztes, dann alle Befehle:</translation>
</message>
<message>
<source>UK FSA advice 2006</source>
<translation>Empfehlung der britischen FSA 2006</translation>
</message>
<message>
<source>UK low-risk guideline, as the British Dietetic Association gives it</source>
<translation>britische Richtlinie für risikoarmes Trinken, nach der British Dietetic Association</translation>
</message>
<message>
<source>US CDC on alcohol and caffeine</source>
<translation>US CDC zu Alkohol und Koffein</translation>
</message>
<message>
<source>US CDC, MMWR: poisoning from elderberry juice, California, 1983</source>
<translation>US CDC, MMWR: Vergiftung durch Holundersaft, Kalifornien, 1983</translation>
</message>
<message>
<source>US FDA Food Code 3-302.13 and 3-801.11</source>
<translation>US FDA Food Code 3-302.13 und 3-801.11</translation>
</message>
<message>
<source>US FDA Food Code 4-101.14</source>
<translation>US FDA Food Code 4-101.14</translation>
</message>
<message>
<source>US FDA advice on grapefruit juice and medicines</source>
<translation>Empfehlung der US FDA zu Grapefruitsaft und Medikamenten</translation>
</message>
<message>
<source>US FDA alert of 30 August 2018</source>
<translation>Warnung der US-Behörde FDA vom 30. August 2018</translation>
</message>
<message>
<source>US FDA and CDC advice on raw milk</source>
<translation>Empfehlungen von US FDA und CDC zu Rohmilch</translation>
</message>
<message>
<source>US FDA guidance of January 2025</source>
<translation>Leitfaden der US FDA vom Januar 2025</translation>
</message>
<message>
<source>US National Institute on Alcohol Abuse and Alcoholism</source>
<translation>US National Institute on Alcohol Abuse and Alcoholism</translation>
</message>
<message>
<source>US fluid ounce</source>
<translation>US-Flüssigunze</translation>
</message>
<message>
<source>Unclear</source>
<translation>Unklar</translation>
</message>
<message>
<source>Understood</source>
<translation>Verstanden</translation>
</message>
<message>
<source>Understood, but look again</source>
<translation>Verstanden, aber sieh noch einmal hin</translation>
</message>
<message>
<source>Undo</source>
<translation>Rückgängig</translation>
</message>
<message>
<source>Undone</source>
<translation>Rückgängig gemacht</translation>
</message>
<message>
<source>Unit</source>
<translation>Einheit</translation>
</message>
<message>
<source>United Kingdom</source>
<translation>Vereinigtes Königreich</translation>
</message>
<message>
<source>United States</source>
<translation>Vereinigte Staaten</translation>
</message>
<message>
<source>Unsaved text</source>
<translation>Ungesicherter Text</translation>
</message>
<message>
<source>Until when each is good stands with </source>
<translation>Bis wann etwas gut ist, steht bei </translation>
</message>
<message>
<source>Us&amp;e by</source>
<translation>Halt&amp;bar bis</translation>
</message>
<message>
<source>Use &amp;by</source>
<translation>Halt&amp;bar bis</translation>
</message>
<message>
<source>Use by</source>
<translation>Haltbar bis</translation>
</message>
<message>
<source>Use by {day}</source>
<translation>Haltbar bis {day}</translation>
</message>
<message>
<source>Use today</source>
<translation>Heute verbrauchen</translation>
</message>
<message>
<source>Use up</source>
<translation>Aufbrauchen</translation>
</message>
<message>
<source>Use within {days}</source>
<translation>Innerhalb von {days} verbrauchen</translation>
</message>
<message>
<source>Use {stand_in} in {drink}</source>
<translation>{stand_in} in {drink} verwenden</translation>
</message>
<message>
<source>Uses</source>
<translation>Verbraucht</translation>
</message>
<message>
<source>Uses something that is due within {days} days</source>
<translation>Verbraucht etwas, das in {days} Tagen fällig ist</translation>
</message>
<message>
<source>Usual figures, not a label's: {figures}. Each strength is good to ± {strength:.0f} % of itself, sugar and acid to ± {others:.0f} %.</source>
<translation>Übliche Werte, nicht vom Etikett: {figures}. Jeder Alkoholgehalt stimmt auf ± {strength:.0f} % seines Werts, Zucker und Säure auf ± {others:.0f} %.</translation>
</message>
<message>
<source>Usual is where the {classics} classics of this kind in barkeep’s book lie by barkeep’s own figures{most}; their middle is {strength:g} % vol, {sugar:g} g/l sugar and {acid:g} g/l acid. A habit, no rule.</source>
<translation>Üblich ist, wo die {classics} Klassiker dieser Art in barkeeps Buch nach barkeeps eigenen Werten liegen{most}; ihre Mitte ist {strength:g} % vol, {sugar:g} g/l Zucker und {acid:g} g/l Säure. Eine Gewohnheit, keine Regel.</translation>
</message>
<message>
<source>Usual: {value:g}</source>
<translation>Üblich: {value:g}</translation>
</message>
<message>
<source>Usual: {value}</source>
<translation>Üblich: {value}</translation>
</message>
<message>
<source>Usually contains {words}</source>
<translation>Enthält meist {words}</translation>
</message>
<message>
<source>Vanilla extract is used by the drop; the liqueur is poured by the measure.</source>
<translation>Vanilleextrakt nimmt man tropfenweise; den Likör nach Maß.</translation>
</message>
<message>
<source>Variances</source>
<translation>Abweichungen</translation>
</message>
<message>
<source>Variances over all shoots</source>
<translation>Abweichungen über alle Drehs</translation>
</message>
<message>
<source>Variances…</source>
<translation>Abweichungen…</translation>
</message>
<message>
<source>Verdict</source>
<translation>Ergebnis</translation>
</message>
<message>
<source>Versions</source>
<translation>Versionen</translation>
</message>
<message>
<source>Very strong, 28 % vol and up</source>
<translation>Sehr stark, ab 28 % vol</translation>
</message>
<message>
<source>Very tall and slim, all slope, flat below: aromatic white wine and some fruit spirits</source>
<translation>Sehr hoch und schlank, ganz abfallend, unten flach: aromatische Weißweine und manche Obstbrände</translation>
</message>
<message>
<source>View</source>
<translation>Ansicht</translation>
</message>
<message>
<source>Volumes are added up as they are: contraction would change strength by less than {share} % vol (OIML R 22).</source>
<translation>Volumen werden einfach addiert: Die Kontraktion änderte den Alkoholgehalt um weniger als {share} % vol (OIML R 22).</translation>
</message>
<message>
<source>W&amp;here</source>
<translation>W&amp;o</translation>
</message>
<message>
<source>WHO 2014 on methanol poisoning</source>
<translation>WHO 2014 zu Methanolvergiftungen</translation>
</message>
<message>
<source>Waits for its columns</source>
<translation>Wartet auf seine Spalten</translation>
</message>
<message>
<source>Wall</source>
<translation>Wand</translation>
</message>
<message>
<source>Warm full-fat milk, stir in the sugar until it is gone and let it cool; it is thinner than from coconut cream.</source>
<translation>Vollfette Milch erwärmen, den Zucker einrühren, bis er gelöst ist, und abkühlen lassen; sie ist dünner als aus Kokoscreme.</translation>
</message>
<message>
<source>Warm it gently and never boil it, or leave it to the boiling water: alcohol burns, and its vapour catches fire.</source>
<translation>Sanft erwärmen und nie kochen, oder es dem kochenden Wasser überlassen: Alkohol brennt, und sein Dampf fängt Feuer.</translation>
</message>
<message>
<source>Warm it gently and never boil it: alcohol burns, and its vapour catches fire.</source>
<translation>Sanft erwärmen und nie kochen: Alkohol brennt, und sein Dampf fängt Feuer.</translation>
</message>
<message>
<source>Warm the cream, stir in the sugar until it is gone and let it cool; stir again before use.</source>
<translation>Die Creme erwärmen, den Zucker einrühren, bis er gelöst ist, und abkühlen lassen; vor Gebrauch noch einmal rühren.</translation>
</message>
<message>
<source>Warm the pulp in the water, rub it through a strainer and stir in the sugar.</source>
<translation>Das Fruchtfleisch im Wasser erwärmen, durch ein Sieb streichen und den Zucker einrühren.</translation>
</message>
<message>
<source>Warm two parts of sugar by weight in one of water until clear, without boiling; it may seed crystals in the cold.</source>
<translation>Zwei Gewichtsteile Zucker in einem Teil Wasser erwärmen, bis es klar ist, ohne zu kochen; in der Kälte können sich Kristalle bilden.</translation>
</message>
<message>
<source>Warm two parts of sugar by weight in one of water until clear.</source>
<translation>Zwei Gewichtsteile Zucker in einem Teil Wasser erwärmen, bis es klar ist.</translation>
</message>
<message>
<source>Wash it and press it in a juicer.</source>
<translation>Waschen und im Entsafter pressen.</translation>
</message>
<message>
<source>Wash it well and cut broad strips, with as little white as can be.</source>
<translation>Gut waschen und breite Streifen schneiden, mit so wenig Weißem wie möglich.</translation>
</message>
<message>
<source>Wash it well and cut broad strips, with as little white as can be; grapefruit acts on many medicines.</source>
<translation>Gut waschen und breite Streifen schneiden, mit so wenig Weißem wie möglich; Grapefruit wirkt auf viele Medikamente.</translation>
</message>
<message>
<source>Waste</source>
<translation>Als Verlust buchen</translation>
</message>
<message>
<source>Waste from {title}</source>
<translation>Verlust aus {title} buchen</translation>
</message>
<message>
<source>Wasted {amount}</source>
<translation>Verlust {amount}</translation>
</message>
<message>
<source>Wasted {amount} of {title}</source>
<translation>{amount} {title} als Verlust gebucht</translation>
</message>
<message>
<source>Water</source>
<translation>Wasser</translation>
</message>
<message>
<source>Water of the ice</source>
<translation>Schmelzwasser</translation>
</message>
<message>
<source>Wednesday</source>
<translation>Mittwoch</translation>
</message>
<message>
<source>Weigh it &amp;full…</source>
<translation>V&amp;oll wiegen…</translation>
</message>
<message>
<source>Weigh it e&amp;mpty…</source>
<translation>Leer &amp;wiegen…</translation>
</message>
<message>
<source>Weigh it empty or full to count it on a scale.</source>
<translation>Wiege sie leer oder voll, um sie auf der Waage zu zählen.</translation>
</message>
<message>
<source>Weigh {title} empty</source>
<translation>{title} leer wiegen</translation>
</message>
<message>
<source>Weigh {title} full</source>
<translation>{title} voll wiegen</translation>
</message>
<message>
<source>Weighed {title} empty</source>
<translation>{title} leer gewogen</translation>
</message>
<message>
<source>Weighed {title} full</source>
<translation>{title} voll gewogen</translation>
</message>
<message>
<source>Weighing purchases…</source>
<translation>Käufe werden abgewogen…</translation>
</message>
<message>
<source>What</source>
<translation>Was</translation>
</message>
<message>
<source>What a purchase costs, where the bar does not know or is wrong</source>
<translation>Was ein Kauf kostet, wo die Bar es nicht weiß oder falsch liegt</translation>
</message>
<message>
<source>What an evenin&amp;g cost…</source>
<translation>Was ein Abend gekostet &amp;hat…</translation>
</message>
<message>
<source>What an evening cost</source>
<translation>Was ein Abend gekostet hat</translation>
</message>
<message>
<source>What an old receipt says can be noted here; a price nobody knows is never taken as free</source>
<translation>Was auf einem alten Beleg steht, lässt sich hier notieren; ein unbekannter Preis gilt nie als kostenlos</translation>
</message>
<message>
<source>What another program wrote was read</source>
<translation>Was ein anderes Programm schrieb, ist eingelesen</translation>
</message>
<message>
<source>What barkeep itself knows of {name} counts again</source>
<translation>Für {name} gilt wieder, was barkeep selbst weiß</translation>
</message>
<message>
<source>What becomes of those that differ</source>
<translation>Was aus den abweichenden wird</translation>
</message>
<message>
<source>What came of it</source>
<translation>Was daraus wurde</translation>
</message>
<message>
<source>What can be done…</source>
<translation>Was zu tun ist…</translation>
</message>
<message>
<source>What can be made</source>
<translation>Machbar</translation>
</message>
<message>
<source>What can be searched for</source>
<translation>Wonach sich suchen lässt</translation>
</message>
<message>
<source>What did this {title} cost? Nobody knows its price; nothing is noted yet.</source>
<translation>Was hat {title} diesmal gekostet? Niemand kennt den Preis; noch ist nichts notiert.</translation>
</message>
<message>
<source>What did this {title} cost? The last price is {price}; nothing is noted yet.</source>
<translation>Was hat {title} diesmal gekostet? Der letzte Preis ist {price}; noch ist nichts notiert.</translation>
</message>
<message>
<source>What each bottle carries</source>
<translation>Was an jeder Flasche hängt</translation>
</message>
<message>
<source>What each carries</source>
<translation>Was an jeder hängt</translation>
</message>
<message>
<source>What each of them cost: type over it</source>
<translation>Was jede davon gekostet hat: einfach überschreiben</translation>
</message>
<message>
<source>What each single purchase would turn ready</source>
<translation>Was jeder einzelne Kauf machbar machen würde</translation>
</message>
<message>
<source>What goes in</source>
<translation>Was hineinkommt</translation>
</message>
<message>
<source>What goes off</source>
<translation>Was aufzubrauchen ist</translation>
</message>
<message>
<source>What goes off soon is listed here with the drinks that use it, and nothing does</source>
<translation>Hier steht, was bald aufzubrauchen ist, mit den Drinks dafür; zurzeit ist es nichts</translation>
</message>
<message>
<source>What goes off soon, and the drinks that use most of it in time</source>
<translation>Was bald aufzubrauchen ist, und die Drinks, die rechtzeitig am meisten davon verbrauchen</translation>
</message>
<message>
<source>What happens</source>
<translation>Was geschieht</translation>
</message>
<message>
<source>What if</source>
<translation>Was wäre wenn</translation>
</message>
<message>
<source>What is &amp;new</source>
<translation>Was ist &amp;neu</translation>
</message>
<message>
<source>What is counted in pieces or weighed</source>
<translation>Was in Stück gezählt oder gewogen wird</translation>
</message>
<message>
<source>What is in it</source>
<translation>Was darin ist</translation>
</message>
<message>
<source>What is in the bar, what it makes tonight, what stands in, and what to buy next.</source>
<translation>Was in der Bar ist, was sie heute Abend hergibt, was einspringt und was als Nächstes zu kaufen ist.</translation>
</message>
<message>
<source>What is left empty is not scored. The scales are chosen in Settings.</source>
<translation>Was leer bleibt, wird nicht bewertet. Die Skalen wählst du in den Einstellungen.</translation>
</message>
<message>
<source>What is new</source>
<translation>Was ist neu</translation>
</message>
<message>
<source>What is poured</source>
<translation>Was eingeschenkt wird</translation>
</message>
<message>
<source>What is poured costs {priced}, and nobody knows what {names} costs.</source>
<translation>Das Eingeschenkte kostet {priced}, und was {names} kostet, weiß niemand.</translation>
</message>
<message>
<source>What is poured costs {price}.</source>
<translation>Das Eingeschenkte kostet {price}.</translation>
</message>
<message>
<source>What is poured in Tonight, from Bottles and in the log of a shoot is counted</source>
<translation>Gezählt wird, was in „Heute Abend“, aus „Flaschen“ und im Protokoll eines Drehs eingeschenkt wird</translation>
</message>
<message>
<source>What is shown is in {path}</source>
<translation>Gezeigtes steht in {path}</translation>
</message>
<message>
<source>What is usual; the label comes first</source>
<translation>Was üblich ist; das Etikett geht vor</translation>
</message>
<message>
<source>What is written here counts for every bottle of it. The shape is for measuring by height.</source>
<translation>Was hier steht, gilt für jede Flasche davon. Die Form dient dem Messen nach Höhe.</translation>
</message>
<message>
<source>What it carries</source>
<translation>Was an ihr hängt</translation>
</message>
<message>
<source>What it comes to</source>
<translation>Was es ergibt</translation>
</message>
<message>
<source>What it is</source>
<translation>Was es ist</translation>
</message>
<message>
<source>What it is called suggests this kind; write another where that is wrong.</source>
<translation>Der Name legt diese Art nahe; schreib eine andere, wenn das nicht stimmt.</translation>
</message>
<message>
<source>What it takes and gives</source>
<translation>Was es braucht und ergibt</translation>
</message>
<message>
<source>What one comes to: {least} to 1 ml from a bitters bottle, about {japanese} ml from a Japanese-style dasher. To find out, count the dashes in a 5 ml spoon.</source>
<translation>Was einer ergibt: {least} bis 1 ml aus einer Bitterflasche, etwa {japanese} ml aus einer japanischen Dash-Flasche. Um es herauszufinden, zähle die Dashes in einem 5-ml-Löffel.</translation>
</message>
<message>
<source>What one more bottle would open is listed here, and all that is asked for is there</source>
<translation>Hier steht, was eine weitere Flasche machbar machen würde, und alles Verlangte ist da</translation>
</message>
<message>
<source>What stands in for {name}?</source>
<translation>Was ersetzt {name}?</translation>
</message>
<message>
<source>What stands in?</source>
<translation>Was ersetzt es?</translation>
</message>
<message>
<source>What stands on your shelf is listed here, with what is left of each</source>
<translation>Was in deinem Regal steht, wird hier aufgelistet, mit dem, was jeweils noch da ist</translation>
</message>
<message>
<source>What stands on your shelf?</source>
<translation>Was steht in deinem Regal?</translation>
</message>
<message>
<source>What the bar holds now is kept as a backup first. Undo goes no further back than it does in what is put in its place.</source>
<translation>Was die Bar jetzt enthält, wird zuerst gesichert. Rückgängig reicht danach nur so weit zurück wie in dem, was an ihre Stelle kommt.</translation>
</message>
<message>
<source>What the riff is called</source>
<translation>Wie die Abwandlung heißt</translation>
</message>
<message>
<source>What things are called where nobody wrote a name: club soda in the US is soda water in the UK. What you write is shown as you wrote it, and every name is understood everywhere.</source>
<translation>Wie etwas heißt, wo niemand einen Namen geschrieben hat: club soda in den USA ist soda water in Großbritannien. Was du schreibst, wird so gezeigt, wie du es geschrieben hast, und jeder Name wird überall verstanden.</translation>
</message>
<message>
<source>What to begin with</source>
<translation>Womit anfangen</translation>
</message>
<message>
<source>What to buy</source>
<translation>Was zu kaufen ist</translation>
</message>
<message>
<source>What to know</source>
<translation>Was zu wissen ist</translation>
</message>
<message>
<source>What to make</source>
<translation>Was gemacht wird</translation>
</message>
<message>
<source>What to print</source>
<translation>Was gedruckt wird</translation>
</message>
<message>
<source>What trials are scored on, each with its ends, the better one last: Balance 1 to 5. What was scored before stays.</source>
<translation>Worauf Versuche bewertet werden, jedes mit seinen Enden, das bessere zuletzt: Balance 1 to 5. Was schon bewertet ist, bleibt.</translation>
</message>
<message>
<source>What was &amp;changed</source>
<translation>Was &amp;geändert wurde</translation>
</message>
<message>
<source>What was asked is done, but the answer could not be printed: {reason}.</source>
<translation>Die Aufgabe ist erledigt, aber die Antwort konnte nicht ausgegeben werden: {reason}.</translation>
</message>
<message>
<source>What was done last in it is “{label}”, on {day} at {time}.</source>
<translation>Zuletzt geschah darin „{label}“, am {day} um {time}.</translation>
</message>
<message>
<source>What was found</source>
<translation>Was gefunden wurde</translation>
</message>
<message>
<source>What was pa&amp;id…</source>
<translation>Wa&amp;s bezahlt wurde…</translation>
</message>
<message>
<source>What was paid</source>
<translation>Was bezahlt wurde</translation>
</message>
<message>
<source>What was paid for {title}</source>
<translation>Was für {title} bezahlt wurde</translation>
</message>
<message>
<source>What was pasted</source>
<translation>Eingefügter Text</translation>
</message>
<message>
<source>What was poured</source>
<translation>Was eingeschenkt wurde</translation>
</message>
<message>
<source>What was there is kept as {name}.</source>
<translation>Was da war, bleibt als {name} erhalten.</translation>
</message>
<message>
<source>What was used</source>
<translation>Was verbraucht wurde</translation>
</message>
<message>
<source>What will be written</source>
<translation>Was geschrieben wird</translation>
</message>
<message>
<source>What would be lost without each bottle</source>
<translation>Was ohne die einzelne Flasche verloren ginge</translation>
</message>
<message>
<source>What would be lost without each is shown here</source>
<translation>Hier steht, was ohne jede einzelne verloren ginge</translation>
</message>
<message>
<source>What you can make of each stands here</source>
<translation>Hier steht, was du davon machen kannst</translation>
</message>
<message>
<source>What you did is written, but {file} {why} just now, so it does not show yet. Read it again in a moment.</source>
<translation>Was du getan hast, ist gespeichert, aber {file} {why}; deshalb ist es noch nicht zu sehen. Lies gleich noch einmal ein.</translation>
</message>
<message>
<source>What you pour where a spec says no more than rum: rum = the label of a bottle. Semicolons part several.</source>
<translation>Was du nimmst, wo ein Rezept nur Rum sagt: rum = das Etikett einer Flasche. Mehrere trennt ein Semikolon.</translation>
</message>
<message>
<source>What you say goes before what is known already.</source>
<translation>Was du angibst, geht dem vor, was schon bekannt ist.</translation>
</message>
<message>
<source>What you typed is kept, not saved: {again} goes on with it.</source>
<translation>Was du getippt hast, bleibt erhalten, ist aber nicht gesichert: {again} macht damit weiter.</translation>
</message>
<message>
<source>What you typed is still here, and can be saved as a new one.</source>
<translation>Was du geschrieben hast, ist noch da und lässt sich als neues sichern.</translation>
</message>
<message>
<source>What you typed is still there, and nothing of it is written yet. Below is what differs. Where yours is put over theirs, undo brings theirs back.</source>
<translation>Was du getippt hast, ist noch da, und nichts davon ist gespeichert. Unten steht, worin sich beide unterscheiden. Überschreibst du die andere Fassung mit deiner, bringt Rückgängig sie zurück.</translation>
</message>
<message>
<source>What {bottle} weighs without its contents is not known yet: weigh it once full or once empty first.</source>
<translation>Was {bottle} ohne Inhalt wiegt, ist noch nicht bekannt: wiege die Flasche zuerst einmal voll oder einmal leer.</translation>
</message>
<message>
<source>What {column} holds</source>
<translation>Was {column} enthält</translation>
</message>
<message>
<source>What “oz” means wherever it is read from now on. Specs that are there keep theirs, and say which it is where it is not this one.</source>
<translation>Was „oz“ bedeutet, wo immer es von jetzt an gelesen wird. Vorhandene Rezepte behalten ihre und sagen dazu, welche es ist, wo es nicht diese ist.</translation>
</message>
<message>
<source>Whatever it carries</source>
<translation>Was immer er enthält</translation>
</message>
<message>
<source>Where backups are kept</source>
<translation>Wo Sicherungen liegen</translation>
</message>
<message>
<source>Where it happened is in {stacks}.</source>
<translation>Wo es geschah, steht in {stacks}.</translation>
</message>
<message>
<source>Where something else was poured, choose it for that line before the log is written.</source>
<translation>Wo etwas anderes ausgeschenkt wurde, wähl es für die Zeile, bevor das Protokoll geschrieben wird.</translation>
</message>
<message>
<source>Where what is ticked was bought; kept with what it cost</source>
<translation>Wo das Angekreuzte gekauft wurde; wird mit den Kosten behalten</translation>
</message>
<message>
<source>Whether the classics that barkeep brings along are in the book. Left out, they are neither listed nor counted; your own specs and riffs stay.</source>
<translation>Ob die Klassiker, die barkeep mitbringt, im Buch stehen. Ohne sie werden sie weder gezeigt noch gezählt; deine eigenen Rezepte und Abwandlungen bleiben.</translation>
</message>
<message>
<source>Whether your bar is safe could not be checked ({error}).</source>
<translation>Ob deine Bar heil ist, ließ sich nicht prüfen ({error}).</translation>
</message>
<message>
<source>Which column is what</source>
<translation>Welche Spalte was ist</translation>
</message>
<message>
<source>Which drinks count</source>
<translation>Welche Drinks zählen</translation>
</message>
<message>
<source>Whisk cocoa and sugar with a little of the water, add the rest and simmer two minutes.</source>
<translation>Kakao und Zucker mit etwas von dem Wasser verquirlen, den Rest zugeben und zwei Minuten sieden.</translation>
</message>
<message>
<source>Whole bottles</source>
<translation>Ganze Flaschen</translation>
</message>
<message>
<source>Whole page</source>
<translation>Ganze Seite</translation>
</message>
<message>
<source>Whose</source>
<translation>Wessen</translation>
</message>
<message>
<source>Why</source>
<translation>Warum</translation>
</message>
<message>
<source>Why, in a few words</source>
<translation>Warum, in wenigen Worten</translation>
</message>
<message>
<source>Wider, with shoulders that slope gently to the neck and a hollow foot: much white wine</source>
<translation>Breiter, mit sanft zum Hals abfallenden Schultern und hohlem Boden: viele Weißweine</translation>
</message>
<message>
<source>Window and log</source>
<translation>Fenster und Protokoll</translation>
</message>
<message>
<source>With this drink</source>
<translation>Bei diesem Drink</translation>
</message>
<message>
<source>Without its {name} it is a {other}.</source>
<translation>Ohne {name} ist er ein {other}.</translation>
</message>
<message>
<source>Without {drinks}, the others can be poured.</source>
<translation>Ohne {drinks} lassen sich die anderen ausschenken.</translation>
</message>
<message>
<source>Won</source>
<translation>Steht fest</translation>
</message>
<message>
<source>Work clean, chill at once and write the date on it. When in doubt, throw it out.</source>
<translation>Arbeite sauber, kühle sofort und schreib das Datum darauf. Im Zweifel wegwerfen.</translation>
</message>
<message>
<source>Work out the &amp;plan</source>
<translation>&amp;Plan berechnen</translation>
</message>
<message>
<source>Working out the shoot…</source>
<translation>Der Dreh wird berechnet…</translation>
</message>
<message>
<source>Working out tonight…</source>
<translation>Heute Abend wird berechnet…</translation>
</message>
<message>
<source>Working out what is poured…</source>
<translation>Was eingeschenkt wird, wird berechnet…</translation>
</message>
<message>
<source>Working out what stands in…</source>
<translation>Der Ersatz wird berechnet…</translation>
</message>
<message>
<source>Working out what to buy…</source>
<translation>Was zu kaufen ist, wird berechnet…</translation>
</message>
<message>
<source>Working out what you can make…</source>
<translation>Es wird ausgerechnet, was du machen kannst…</translation>
</message>
<message>
<source>World Health Organization</source>
<translation>Weltgesundheitsorganisation</translation>
</message>
<message>
<source>Worse</source>
<translation>Schlechter</translation>
</message>
<message>
<source>Would stand in, once bought</source>
<translation>Wäre ein Ersatz, wenn gekauft</translation>
</message>
<message>
<source>Wrap it in a cloth and beat it, or crush it; what melts runs off.</source>
<translation>In ein Tuch wickeln und klopfen oder zerstoßen; was schmilzt, läuft ab.</translation>
</message>
<message>
<source>Write 1 count</source>
<translation>1 Zählung schreiben</translation>
</message>
<message>
<source>Write an amount {hint}.</source>
<translation>Schreib eine Menge, {hint}.</translation>
</message>
<message>
<source>Write as</source>
<translation>Schreiben als</translation>
</message>
<message>
<source>Write down</source>
<translation>Aufschreiben</translation>
</message>
<message>
<source>Write down the count of {bottles}?</source>
<translation>Die Zählung von {bottles} aufschreiben?</translation>
</message>
<message>
<source>Write it down, {hint}.</source>
<translation>Schreib es auf, {hint}.</translation>
</message>
<message>
<source>Write one on the page </source>
<translation>Schreib eines auf der Seite </translation>
</message>
<message>
<source>Write the day until which it is good.{known} Left empty, it has none.</source>
<translation>Schreib den Tag, bis zu dem sie gut ist.{known} Bleibt es leer, hat sie keinen.</translation>
</message>
<message>
<source>Write what it is called.</source>
<translation>Schreib, wie sie heißt.</translation>
</message>
<message>
<source>Write {n} counts</source>
<translation>{n} Zählungen schreiben</translation>
</message>
<message>
<source>Write {text} instead</source>
<translation>Stattdessen {text} schreiben</translation>
</message>
<message>
<source>Write “{text}” instead</source>
<translation>Stattdessen „{text}“ schreiben</translation>
</message>
<message>
<source>Written to {log}</source>
<translation>Geschrieben in {log}</translation>
</message>
<message>
<source>Written: {written}</source>
<translation>Geschrieben: {written}</translation>
</message>
<message>
<source>Wrote down the trial of {day}</source>
<translation>Versuch vom {day} aufgeschrieben</translation>
</message>
<message>
<source>Yes</source>
<translation>Ja</translation>
</message>
<message>
<source>Yes: every serve can be poured.</source>
<translation>Ja: Jede Portion ist machbar.</translation>
</message>
<message>
<source>You can make {tonight}, and {one_more}.</source>
<translation>Du kannst {tonight} machen und {one_more}.</translation>
</message>
<message>
<source>You have said this before; what you write here takes its place.</source>
<translation>Das hast du schon einmal angegeben; was du hier schreibst, tritt an seine Stelle.</translation>
</message>
<message>
<source>Your bar was checked just now, and something is wrong with it. Back it up before anything else. {findings}</source>
<translation>Deine Bar wurde eben geprüft, und etwas stimmt nicht mit ihr. Leg vor allem anderen eine Sicherung an. {findings}</translation>
</message>
<message>
<source>Your bar was checked just now: its database is sound, and all that was saved is in it.</source>
<translation>Deine Bar wurde eben geprüft: Ihre Datenbank ist in Ordnung, und alles Gesicherte ist darin.</translation>
</message>
<message>
<source>Your bar was checked just now: its file is sound, and all that was saved is in it.</source>
<translation>Deine Bar wurde eben geprüft: Ihre Datei ist in Ordnung, und alles Gesicherte ist darin.</translation>
</message>
<message>
<source>Your desktop may not notice: {program} could not go through {place}</source>
<translation>Der Desktop bemerkt es vielleicht nicht: {program} kam durch {place} nicht durch</translation>
</message>
<message>
<source>Your desktop may notice only once you log in again: there is no {program} here</source>
<translation>Der Desktop bemerkt es vielleicht erst nach der nächsten Anmeldung: {program} gibt es hier nicht</translation>
</message>
<message>
<source>Your list, a bottle a line</source>
<translation>Deine Liste, eine Flasche je Zeile</translation>
</message>
<message>
<source>Your own</source>
<translation>Eigenes</translation>
</message>
<message>
<source>Your own ingredient</source>
<translation>Deine eigene Zutat</translation>
</message>
<message>
<source>Your own riff</source>
<translation>Deine eigene Abwandlung</translation>
</message>
<message>
<source>Your own specs and the classics</source>
<translation>Deine eigenen Rezepte und die Klassiker</translation>
</message>
<message>
<source>Your own, not offered here</source>
<translation>Deine eigenen, hier nicht angeboten</translation>
</message>
<message>
<source>Your own: {inputs}</source>
<translation>Dein eigenes: {inputs}</translation>
</message>
<message>
<source>Yours</source>
<translation>Deine Fassung</translation>
</message>
<message>
<source>Yours and theirs</source>
<translation>Deine und die andere Fassung</translation>
</message>
<message>
<source>Yours is a classic that barkeep brings along; it stays as it is.</source>
<translation>Deins ist ein Klassiker, den barkeep mitbringt; er bleibt, wie er ist.</translation>
</message>
<message>
<source>Yours stays as it is; theirs does not come in</source>
<translation>Deins bleibt, wie es ist; das andere kommt nicht hinzu</translation>
</message>
<message>
<source>Zoom of the preview</source>
<translation>Zoom der Vorschau</translation>
</message>
<message>
<source>a bar needs a name</source>
<translation>eine Bar braucht einen Namen</translation>
</message>
<message>
<source>a bitter too, dark spice in place of orange; press an orange peel over it</source>
<translation>auch ein Bitter, dunkle Würze statt Orange; drück eine Orangenschale darüber aus</translation>
</message>
<message>
<source>a bitter too, orange in place of dark spice</source>
<translation>auch ein Bitter, Orange statt dunkler Würze</translation>
</message>
<message>
<source>a bottle holds more than nothing</source>
<translation>in einer Flasche ist mehr als nichts</translation>
</message>
<message>
<source>a bottle weighs more than nothing</source>
<translation>eine Flasche wiegt mehr als nichts</translation>
</message>
<message>
<source>a bottle's size is a volume above nothing</source>
<translation>die Größe einer Flasche ist ein Volumen über null</translation>
</message>
<message>
<source>a citrusy seed too, cooler</source>
<translation>auch ein zitrusfrischer Samen, kühler</translation>
</message>
<message>
<source>a classic</source>
<translation>ein Klassiker</translation>
</message>
<message>
<source>a dark berry too, far sharper</source>
<translation>auch eine dunkle Beere, weit säuerlicher</translation>
</message>
<message>
<source>a dark berry too, sharper</source>
<translation>auch eine dunkle Beere, säuerlicher</translation>
</message>
<message>
<source>a dark berry too, sweeter</source>
<translation>auch eine dunkle Beere, süßer</translation>
</message>
<message>
<source>a dark berry too, sweeter and sharper</source>
<translation>auch eine dunkle Beere, süßer und säuerlicher</translation>
</message>
<message>
<source>a dark berry too, tarter</source>
<translation>auch eine dunkle Beere, säuerlicher</translation>
</message>
<message>
<source>a dark bitter too, with cocoa</source>
<translation>auch ein dunkler Bitter, mit Kakao</translation>
</message>
<message>
<source>a dark bitter too, with nut: mind allergies</source>
<translation>auch ein dunkler Bitter, mit Nuss: Allergien beachten</translation>
</message>
<message>
<source>a dark bitter too, without the cocoa</source>
<translation>auch ein dunkler Bitter, ohne den Kakao</translation>
</message>
<message>
<source>a dark bitter too, without the nut</source>
<translation>auch ein dunkler Bitter, ohne die Nuss</translation>
</message>
<message>
<source>a dark dried fruit too and much denser, so pour less</source>
<translation>auch eine dunkle Trockenfrucht und viel dichter, darum weniger nehmen</translation>
</message>
<message>
<source>a dark dried fruit too, sharper: mind sulphites</source>
<translation>auch eine dunkle Trockenfrucht, säuerlicher: Sulfite beachten</translation>
</message>
<message>
<source>a dash</source>
<translation>ein Dash</translation>
</message>
<message>
<source>a dash gives {least:g} to {most:g} ml</source>
<translation>ein Dash gibt {least:g} bis {most:g} ml</translation>
</message>
<message>
<source>a dash is {least:g} to {most:g} ml</source>
<translation>ein Dash ist {least:g} bis {most:g} ml</translation>
</message>
<message>
<source>a dash is {range}</source>
<translation>ein Dash ist {range}</translation>
</message>
<message>
<source>a day such as 2026-03-31</source>
<translation>ein Tag wie 2026-03-31</translation>
</message>
<message>
<source>a doubt is a length</source>
<translation>eine Unsicherheit ist eine Länge</translation>
</message>
<message>
<source>a dry hill herb too, softer</source>
<translation>auch ein trockenes Bergkraut, weicher</translation>
</message>
<message>
<source>a few tenths of a gram thicken a litre, and nothing else in the bar does</source>
<translation>ein paar Zehntel Gramm binden einen Liter, und nichts anderes in der Bar tut das</translation>
</message>
<message>
<source>a fino left to age, with nuts</source>
<translation>ein gereifter Fino, mit Nüssen</translation>
</message>
<message>
<source>a flower to look at too</source>
<translation>auch eine Blüte fürs Auge</translation>
</message>
<message>
<source>a flower to look at too, larger</source>
<translation>auch eine Blüte fürs Auge, größer</translation>
</message>
<message>
<source>a flower to look at too, smaller</source>
<translation>auch eine Blüte fürs Auge, kleiner</translation>
</message>
<message>
<source>a flower too, earthier</source>
<translation>auch eine Blüte, erdiger</translation>
</message>
<message>
<source>a flower too, greener</source>
<translation>auch eine Blüte, grüner</translation>
</message>
<message>
<source>a flower too, purple and earthier</source>
<translation>auch eine Blüte, violett und erdiger</translation>
</message>
<message>
<source>a flower too, sweeter and without the resin</source>
<translation>auch eine Blüte, süßer und ohne das Harz</translation>
</message>
<message>
<source>a flower too, to look at only</source>
<translation>auch eine Blüte, nur fürs Auge</translation>
</message>
<message>
<source>a fruity bitter too, drier</source>
<translation>auch ein fruchtiger Bitter, trockener</translation>
</message>
<message>
<source>a fruity bitter too, softer: mind allergies to nuts</source>
<translation>auch ein fruchtiger Bitter, weicher: Allergien gegen Nüsse beachten</translation>
</message>
<message>
<source>a fruity bitter too, tarter</source>
<translation>auch ein fruchtiger Bitter, säuerlicher</translation>
</message>
<message>
<source>a gentle flower too, fruitier</source>
<translation>auch eine sanfte Blüte, fruchtiger</translation>
</message>
<message>
<source>a kind of</source>
<translation>eine Art</translation>
</message>
<message>
<source>a label that says only Scotch is mostly a blend</source>
<translation>ein Etikett, das nur Scotch sagt, ist meist ein Blend</translation>
</message>
<message>
<source>a label that says only port mostly means a ruby</source>
<translation>ein Etikett, das nur Port sagt, meint meist einen Ruby</translation>
</message>
<message>
<source>a label that says only rum mostly means a light one</source>
<translation>ein Etikett, das nur Rum sagt, meint meist einen leichten</translation>
</message>
<message>
<source>a label that says only rum mostly means a light or a gold one</source>
<translation>ein Etikett, das nur Rum sagt, meint meist einen leichten oder goldenen</translation>
</message>
<message>
<source>a label that says only rum mostly means a lighter one</source>
<translation>ein Etikett, das nur Rum sagt, meint meist einen leichteren</translation>
</message>
<message>
<source>a label that says only rum mostly means a younger one</source>
<translation>ein Etikett, das nur Rum sagt, meint meist einen jüngeren</translation>
</message>
<message>
<source>a label that says only rum mostly means molasses</source>
<translation>ein Etikett, das nur Rum sagt, meint meist Melasse</translation>
</message>
<message>
<source>a label that says only rum seldom means a dark one</source>
<translation>ein Etikett, das nur Rum sagt, meint selten einen dunklen</translation>
</message>
<message>
<source>a label that says only rum seldom means so fruity a one</source>
<translation>ein Etikett, das nur Rum sagt, meint selten einen so fruchtigen</translation>
</message>
<message>
<source>a label that says only tequila may mean a blanco or a gold one</source>
<translation>ein Etikett, das nur Tequila sagt, kann einen Blanco oder einen goldenen meinen</translation>
</message>
<message>
<source>a label that says only tequila seldom means an old one</source>
<translation>ein Etikett, das nur Tequila sagt, meint selten einen alten</translation>
</message>
<message>
<source>a label that says only whisky mostly means a light blend</source>
<translation>ein Etikett, das nur Whisky sagt, meint meist einen leichten Blend</translation>
</message>
<message>
<source>a label that says only whisky seldom means new oak</source>
<translation>ein Etikett, das nur Whisky sagt, meint selten neue Eiche</translation>
</message>
<message>
<source>a length</source>
<translation>eine Länge</translation>
</message>
<message>
<source>a length such as 11.5 cm or 4.5 in</source>
<translation>eine Länge wie 11.5 cm oder 4.5 in</translation>
</message>
<message>
<source>a level is one number, not a range</source>
<translation>ein Füllstand ist eine Zahl, kein Bereich</translation>
</message>
<message>
<source>a light grain spirit with little juniper; a lemon peel helps</source>
<translation>ein leichter Kornbrand mit wenig Wacholder; eine Zitronenschale hilft</translation>
</message>
<message>
<source>a line has at most {most} characters</source>
<translation>eine Zeile hat höchstens {most} Zeichen</translation>
</message>
<message>
<source>a list</source>
<translation>eine Liste</translation>
</message>
<message>
<source>a list of drinks has at most {most} columns</source>
<translation>eine Liste von Drinks hat höchstens {most} Spalten</translation>
</message>
<message>
<source>a little less fat</source>
<translation>etwas weniger Fett</translation>
</message>
<message>
<source>a little more fat</source>
<translation>etwas mehr Fett</translation>
</message>
<message>
<source>a little oak and colour come along</source>
<translation>etwas Eiche und Farbe kommen mit</translation>
</message>
<message>
<source>a little sweeter and less bitter</source>
<translation>etwas süßer und weniger bitter</translation>
</message>
<message>
<source>a little thinner and without the depth</source>
<translation>etwas dünner und ohne die Tiefe</translation>
</message>
<message>
<source>a little weaker, so pour a little more</source>
<translation>etwas schwächer, darum etwas mehr nehmen</translation>
</message>
<message>
<source>a logged shoot keeps the drinks it was logged with</source>
<translation>ein protokollierter Dreh behält die Drinks, mit denen er protokolliert wurde</translation>
</message>
<message>
<source>a meadow flower too, fruitier: mind sulphites</source>
<translation>auch eine Wiesenblüte, fruchtiger: Sulfite beachten</translation>
</message>
<message>
<source>a melon too, green in place of red</source>
<translation>auch eine Melone, grün statt rot</translation>
</message>
<message>
<source>a melon too, larger and thinner in taste</source>
<translation>auch eine Melone, größer und dünner im Geschmack</translation>
</message>
<message>
<source>a melon too, of another colour</source>
<translation>auch eine Melone, in anderer Farbe</translation>
</message>
<message>
<source>a melon too, thinner</source>
<translation>auch eine Melone, dünner</translation>
</message>
<message>
<source>a moment such as 2026-03-31 18:00:00.000000</source>
<translation>ein Zeitpunkt wie 2026-03-31 18:00:00.000000</translation>
</message>
<message>
<source>a moment such as 2026-03-31T18:30:00</source>
<translation>ein Zeitpunkt wie 2026-03-31T18:30:00</translation>
</message>
<message>
<source>a name</source>
<translation>ein Name</translation>
</message>
<message>
<source>a name has letters</source>
<translation>ein Name hat Buchstaben</translation>
</message>
<message>
<source>a name it needs is taken by now</source>
<translation>ein Name, den es braucht, ist inzwischen vergeben</translation>
</message>
<message>
<source>a number</source>
<translation>eine Zahl</translation>
</message>
<message>
<source>a number of pieces</source>
<translation>eine Stückzahl</translation>
</message>
<message>
<source>a number of pieces such as 2</source>
<translation>eine Stückzahl wie 2</translation>
</message>
<message>
<source>a number of pieces such as 4</source>
<translation>eine Stückzahl, etwa 4</translation>
</message>
<message>
<source>a number of serves is more than nothing</source>
<translation>eine Zahl von Portionen ist mehr als nichts</translation>
</message>
<message>
<source>a nut syrup too, almond in place of hazelnut: mind allergies</source>
<translation>auch ein Nusssirup, Mandel statt Haselnuss: Allergien beachten</translation>
</message>
<message>
<source>a nut syrup too, almond in place of macadamia: mind allergies</source>
<translation>auch ein Nusssirup, Mandel statt Macadamia: Allergien beachten</translation>
</message>
<message>
<source>a nut syrup too, almond in place of pistachio: mind allergies</source>
<translation>auch ein Nusssirup, Mandel statt Pistazie: Allergien beachten</translation>
</message>
<message>
<source>a nut syrup too, almond in place of walnut: mind allergies</source>
<translation>auch ein Nusssirup, Mandel statt Walnuss: Allergien beachten</translation>
</message>
<message>
<source>a nut too, paler: mind allergies</source>
<translation>auch eine Nuss, heller: Allergien beachten</translation>
</message>
<message>
<source>a pepper too, hot in place of tingling</source>
<translation>auch ein Pfeffer, scharf statt prickelnd</translation>
</message>
<message>
<source>a pepper too, hotter and without the sweetness</source>
<translation>auch eine Paprikaschote, schärfer und ohne die Süße</translation>
</message>
<message>
<source>a piece of no fixed size</source>
<translation>ein Stück ohne feste Größe</translation>
</message>
<message>
<source>a plum too, with gin behind it</source>
<translation>auch eine Pflaume, auf Gin angesetzt</translation>
</message>
<message>
<source>a product needs a name</source>
<translation>ein Produkt braucht einen Namen</translation>
</message>
<message>
<source>a quarter of the fat, and it does not float</source>
<translation>ein Viertel des Fetts, und sie schwimmt nicht</translation>
</message>
<message>
<source>a range runs from the smaller number to the larger</source>
<translation>ein Bereich geht von der kleineren Zahl zur größeren</translation>
</message>
<message>
<source>a recipe takes at least one thing</source>
<translation>ein Rezept braucht mindestens eine Zutat</translation>
</message>
<message>
<source>a recipe without a name</source>
<translation>ein Rezept ohne Namen</translation>
</message>
<message>
<source>a red berry too, softer</source>
<translation>auch eine rote Beere, weicher</translation>
</message>
<message>
<source>a red berry too, tarter</source>
<translation>auch eine rote Beere, säuerlicher</translation>
</message>
<message>
<source>a red berry too, whole</source>
<translation>auch eine rote Beere, ganz</translation>
</message>
<message>
<source>a red fruit bitter too</source>
<translation>auch ein roter Fruchtbitter</translation>
</message>
<message>
<source>a red fruit on a pick, tart in place of sweet</source>
<translation>eine rote Frucht am Spieß, säuerlich statt süß</translation>
</message>
<message>
<source>a red stone fruit too, sharper and with gin behind it</source>
<translation>auch rotes Steinobst, säuerlicher und auf Gin angesetzt</translation>
</message>
<message>
<source>a rim</source>
<translation>ein Rand</translation>
</message>
<message>
<source>a roasted nut too: mind allergies</source>
<translation>auch eine geröstete Nuss: Allergien beachten</translation>
</message>
<message>
<source>a round of every drink more, less</source>
<translation>eine Runde mit jedem Drink mehr, weniger</translation>
</message>
<message>
<source>a salty bite too, with vinegar</source>
<translation>auch ein salziger Bissen, mit Essig</translation>
</message>
<message>
<source>a salty bite too, without the vinegar</source>
<translation>auch ein salziger Bissen, ohne den Essig</translation>
</message>
<message>
<source>a scale needs a name</source>
<translation>eine Skala braucht einen Namen</translation>
</message>
<message>
<source>a scented tonic too, herbs in place of the flower</source>
<translation>auch ein duftendes Tonic, Kräuter statt der Blüte</translation>
</message>
<message>
<source>a shade sweeter</source>
<translation>eine Spur süßer</translation>
</message>
<message>
<source>a share of the bottle is 0 to 1; anything else needs a unit, such as 315 ml, 812 g on a scale or 11.5 cm high</source>
<translation>ein Anteil der Flasche ist 0 bis 1; alles andere braucht eine Einheit, etwa 315 ml, 812 g auf der Waage oder 11.5 cm hoch</translation>
</message>
<message>
<source>a share of the bottle such as 0.4 or 4/10, a volume such as 315 ml, a weight on a scale such as 812 g, or the height of the liquid such as 11.5 cm</source>
<translation>einen Anteil der Flasche, etwa 0.4 oder 4/10, ein Volumen, etwa 315 ml, ein Gewicht auf der Waage, etwa 812 g, oder die Höhe der Flüssigkeit, etwa 11.5 cm</translation>
</message>
<message>
<source>a share of the drink</source>
<translation>ein Anteil am Drink</translation>
</message>
<message>
<source>a share: .45</source>
<translation>ein Anteil: .45</translation>
</message>
<message>
<source>a shoot has a theme</source>
<translation>ein Dreh hat ein Thema</translation>
</message>
<message>
<source>a slice of fruit too, crisp and pale</source>
<translation>auch eine Obstscheibe, knackig und hell</translation>
</message>
<message>
<source>a small green leaf too, with a taste of its own</source>
<translation>auch ein kleines grünes Blatt, mit eigenem Geschmack</translation>
</message>
<message>
<source>a soft sweet nut too: mind allergies</source>
<translation>auch eine weiche süße Nuss: Allergien beachten</translation>
</message>
<message>
<source>a sour squeeze too, from the other fruit</source>
<translation>auch ein saurer Spritzer, von der anderen Frucht</translation>
</message>
<message>
<source>a spec begins with the name of the drink on a line of its own</source>
<translation>ein Rezept beginnt mit dem Namen des Drinks auf einer eigenen Zeile</translation>
</message>
<message>
<source>a spec has at most {most} ingredients; the rest of this one is not read</source>
<translation>ein Rezept hat höchstens {most} Zutaten; der Rest von diesem wird nicht gelesen</translation>
</message>
<message>
<source>a spec has at most {most} lines of method; the rest of this one is not read</source>
<translation>ein Rezept hat höchstens {most} Zeilen Zubereitung; der Rest von diesem wird nicht gelesen</translation>
</message>
<message>
<source>a spec has at most {most} tags</source>
<translation>ein Rezept hat höchstens {most} Schlagworte</translation>
</message>
<message>
<source>a spec needs a name</source>
<translation>ein Rezept braucht einen Namen</translation>
</message>
<message>
<source>a spec needs at least one line such as “60 ml London dry gin”</source>
<translation>ein Rezept braucht mindestens eine Zeile wie „60 ml London Dry Gin“</translation>
</message>
<message>
<source>a spiced bitter too, with anise and cherry</source>
<translation>auch ein gewürzter Bitter, mit Anis und Kirsche</translation>
</message>
<message>
<source>a spiced bitter too, with one spice in front</source>
<translation>auch ein gewürzter Bitter, ein Gewürz voran</translation>
</message>
<message>
<source>a spiced bitter too, without the anise</source>
<translation>auch ein gewürzter Bitter, ohne den Anis</translation>
</message>
<message>
<source>a spiced bitter too, without the cardamom</source>
<translation>auch ein gewürzter Bitter, ohne den Kardamom</translation>
</message>
<message>
<source>a spill</source>
<translation>ein Verlust</translation>
</message>
<message>
<source>a spreadsheet means {day} by it</source>
<translation>eine Tabellenkalkulation meint damit {day}</translation>
</message>
<message>
<source>a stand-in needs a reason</source>
<translation>ein Ersatz braucht einen Grund</translation>
</message>
<message>
<source>a straw</source>
<translation>ein Trinkhalm</translation>
</message>
<message>
<source>a sweet nut too, but another one: mind allergies to almond</source>
<translation>auch eine süße Nuss, aber eine andere: Allergien gegen Mandel beachten</translation>
</message>
<message>
<source>a sweet nut too, but another one: mind allergies to hazelnut</source>
<translation>auch eine süße Nuss, aber eine andere: Allergien gegen Haselnuss beachten</translation>
</message>
<message>
<source>a sweet spice too, nearer to clove</source>
<translation>auch ein süßes Gewürz, näher an Nelke</translation>
</message>
<message>
<source>a sweet spice too, woody in place of warm</source>
<translation>auch ein süßes Gewürz, holzig statt warm</translation>
</message>
<message>
<source>a sweet vegetable too, earthier</source>
<translation>auch ein süßes Gemüse, erdiger</translation>
</message>
<message>
<source>a sweet vegetable too, harder</source>
<translation>auch ein süßes Gemüse, härter</translation>
</message>
<message>
<source>a tart berry too, black in place of red</source>
<translation>auch eine säuerliche Beere, schwarz statt rot</translation>
</message>
<message>
<source>a tart berry too, red in place of black</source>
<translation>auch eine säuerliche Beere, rot statt schwarz</translation>
</message>
<message>
<source>a tart bitter too, with citrus peel</source>
<translation>auch ein säuerlicher Bitter, mit Zitrusschale</translation>
</message>
<message>
<source>a tea too, black and fuller</source>
<translation>auch ein Tee, schwarz und voller</translation>
</message>
<message>
<source>a text</source>
<translation>ein Text</translation>
</message>
<message>
<source>a text holds at most {most:,} specs; from here on it is not read</source>
<translation>ein Text enthält höchstens {most:,} Rezepte; ab hier wird er nicht gelesen</translation>
</message>
<message>
<source>a text in UTF-8</source>
<translation>ein Text in UTF-8</translation>
</message>
<message>
<source>a theme</source>
<translation>ein Thema</translation>
</message>
<message>
<source>a third of the fat, and it does not whip</source>
<translation>ein Drittel des Fetts, und sie lässt sich nicht schlagen</translation>
</message>
<message>
<source>a third of the fat, so the drink is thinner</source>
<translation>ein Drittel des Fetts, darum ist der Drink dünner</translation>
</message>
<message>
<source>a time of day such as 18:30</source>
<translation>eine Uhrzeit wie 18:30</translation>
</message>
<message>
<source>a trial cannot be in the future</source>
<translation>ein Versuch kann nicht in der Zukunft liegen</translation>
</message>
<message>
<source>a vessel is more than nothing</source>
<translation>ein Gefäß ist mehr als nichts</translation>
</message>
<message>
<source>a volume</source>
<translation>ein Volumen</translation>
</message>
<message>
<source>a volume is more than nothing</source>
<translation>ein Volumen ist mehr als nichts</translation>
</message>
<message>
<source>a volume such as 60 ml or 2 oz</source>
<translation>ein Volumen wie 60 ml oder 2 oz</translation>
</message>
<message>
<source>a warm spice too, hot in place of cool</source>
<translation>auch ein warmes Gewürz, scharf statt kühl</translation>
</message>
<message>
<source>a warm spice too, sweeter</source>
<translation>auch ein warmes Gewürz, süßer</translation>
</message>
<message>
<source>a warm spice too, without the heat</source>
<translation>auch ein warmes Gewürz, ohne die Schärfe</translation>
</message>
<message>
<source>a warm spice too; a drop of anise spirit is not to be added for those who take no alcohol</source>
<translation>auch ein warmes Gewürz; für alle, die keinen Alkohol nehmen, keinen Tropfen Anisschnaps zugeben</translation>
</message>
<message>
<source>a web page</source>
<translation>Webseite</translation>
</message>
<message>
<source>a weight</source>
<translation>ein Gewicht</translation>
</message>
<message>
<source>a weight is one number, not a range</source>
<translation>ein Gewicht ist eine Zahl, kein Bereich</translation>
</message>
<message>
<source>a weight needs its unit, such as 520 g</source>
<translation>ein Gewicht braucht seine Einheit, etwa 520 g</translation>
</message>
<message>
<source>a weight such as 10 g</source>
<translation>ein Gewicht wie 10 g</translation>
</message>
<message>
<source>a weight such as 250 g, or a share such as 0.4</source>
<translation>ein Gewicht, etwa 250 g, oder einen Anteil, etwa 0.4</translation>
</message>
<message>
<source>a white flower too, nearer to fruit</source>
<translation>auch eine weiße Blüte, näher an Frucht</translation>
</message>
<message>
<source>a whole line</source>
<translation>eine ganze Zeile</translation>
</message>
<message>
<source>a whole number</source>
<translation>eine ganze Zahl</translation>
</message>
<message>
<source>a whole number from 0 to {most}</source>
<translation>eine ganze Zahl von 0 bis {most}</translation>
</message>
<message>
<source>a whole number, 0 or more</source>
<translation>eine ganze Zahl, 0 oder mehr</translation>
</message>
<message>
<source>a woody herb too</source>
<translation>auch ein holziges Kraut</translation>
</message>
<message>
<source>a {glass}{filled}{coloured}</source>
<translation>{glass}{filled}{coloured}</translation>
</message>
<message>
<source>a {quantity} of {value:.6g}{unit} cannot be used: it is {low:.6g} to {high:.6g}{unit}.</source>
<translation>{quantity}: {value:.6g}{unit} geht nicht; möglich sind {low:.6g} bis {high:.6g}{unit}.</translation>
</message>
<message>
<source>a {shape} of {size_ml:g} ml</source>
<translation>{shape} mit {size_ml:g} ml</translation>
</message>
<message>
<source>a {unit} is too small to measure a level in; write {wanted}</source>
<translation>{unit} ist zu klein, um darin einen Füllstand zu messen; schreib {wanted}</translation>
</message>
<message>
<source>about {number} standard drink</source>
<translation>etwa {number} Standarddrink</translation>
</message>
<message>
<source>about {number} standard drink each</source>
<translation>je etwa {number} Standarddrink</translation>
</message>
<message>
<source>about {number} standard drinks</source>
<translation>etwa {number} Standarddrinks</translation>
</message>
<message>
<source>about {number} standard drinks each</source>
<translation>je etwa {number} Standarddrinks</translation>
</message>
<message>
<source>about {serves:g} serve</source>
<translation>etwa {serves:g} Portion</translation>
</message>
<message>
<source>about {serves:g} serves</source>
<translation>etwa {serves:g} Portionen</translation>
</message>
<message>
<source>about {strength:.0f} % vol</source>
<translation>etwa {strength:.0f} % vol</translation>
</message>
<message>
<source>about {time}</source>
<translation>etwa {time}</translation>
</message>
<message>
<source>abv</source>
<translation>Alkoholgehalt</translation>
</message>
<message>
<source>acid</source>
<translation>Säure</translation>
</message>
<message>
<source>acid in g per litre</source>
<translation>Säure in g je Liter</translation>
</message>
<message>
<source>add it by the glass</source>
<translation>erst im Glas zugeben</translation>
</message>
<message>
<source>after {first} {low}</source>
<translation>nach {first} {low}</translation>
</message>
<message>
<source>after {first} {low} and before {high}</source>
<translation>nach {first} {low} und vor {high}</translation>
</message>
<message>
<source>agave all the same, wilder and sourer</source>
<translation>doch auch Agave, wilder und saurer</translation>
</message>
<message>
<source>agave all the same, with smoke in front</source>
<translation>doch auch Agave, Rauch voran</translation>
</message>
<message>
<source>agave roasted too, with less smoke</source>
<translation>auch geröstete Agave, mit weniger Rauch</translation>
</message>
<message>
<source>agave too, far cleaner</source>
<translation>auch Agave, weit sauberer</translation>
</message>
<message>
<source>agave too, with more smoke</source>
<translation>auch Agave, mit mehr Rauch</translation>
</message>
<message>
<source>agave with far more oak than smoke</source>
<translation>Agave mit weit mehr Eiche als Rauch</translation>
</message>
<message>
<source>agave with oak in place of smoke</source>
<translation>Agave mit Eiche statt Rauch</translation>
</message>
<message>
<source>agave with smoke in place of oak</source>
<translation>Agave mit Rauch statt Eiche</translation>
</message>
<message>
<source>agave without oak too, wilder and sourer</source>
<translation>auch Agave ohne Eiche, wilder und saurer</translation>
</message>
<message>
<source>agave without oak too, with smoke in front</source>
<translation>auch Agave ohne Eiche, Rauch voran</translation>
</message>
<message>
<source>agave without the earth and smoke</source>
<translation>Agave ohne Erde und Rauch</translation>
</message>
<message>
<source>agave without the smoke</source>
<translation>Agave ohne den Rauch</translation>
</message>
<message>
<source>aged, with nuts in place of salt</source>
<translation>gereift, Nüsse statt Salz</translation>
</message>
<message>
<source>alias</source>
<translation>weiterer Name</translation>
</message>
<message>
<source>all of it has bubbles, which are never shaken</source>
<translation>alles darin sprudelt, und das wird nie geschüttelt</translation>
</message>
<message>
<source>all that is ticked must hold, and no drink is both</source>
<translation>alles Angekreuzte muss gelten, und kein Drink ist beides</translation>
</message>
<message>
<source>all {of} there</source>
<translation>alle {of} da</translation>
</message>
<message>
<source>allergen</source>
<translation>Allergen</translation>
</message>
<message>
<source>allergens</source>
<translation>Allergene</translation>
</message>
<message>
<source>almond from fruit stones too, red and sharper</source>
<translation>auch Mandel aus Obstkernen, rot und markanter</translation>
</message>
<message>
<source>almond from fruit stones too, without the red</source>
<translation>auch Mandel aus Obstkernen, ohne das Rot</translation>
</message>
<message>
<source>almond in place of pistachio: mind allergies</source>
<translation>Mandel statt Pistazie: Allergien beachten</translation>
</message>
<message>
<source>almond without alcohol, more than twice as sweet, so pour less</source>
<translation>Mandel ohne Alkohol, mehr als doppelt so süß, darum weniger nehmen</translation>
</message>
<message>
<source>always there</source>
<translation>immer da</translation>
</message>
<message>
<source>always_there</source>
<translation>immer da</translation>
</message>
<message>
<source>amber</source>
<translation>bernsteinfarben</translation>
</message>
<message>
<source>amount</source>
<translation>Menge</translation>
</message>
<message>
<source>amount of {ingredient}</source>
<translation>Menge {ingredient}</translation>
</message>
<message>
<source>amount that could not be read</source>
<translation>Menge, die nicht zu lesen war</translation>
</message>
<message>
<source>amounts that could not be read</source>
<translation>Mengen, die nicht zu lesen waren</translation>
</message>
<message>
<source>an amount is more than nothing</source>
<translation>eine Menge ist mehr als nichts</translation>
</message>
<message>
<source>an earlier entry of the same bottle</source>
<translation>ein früherer Eintrag derselben Flasche</translation>
</message>
<message>
<source>an entry names another one where its kind is “reverse”, and only there</source>
<translation>ein Eintrag nennt nur dort einen anderen, wo seine Art „reverse“ ist</translation>
</message>
<message>
<source>an hour</source>
<translation>eine Stunde</translation>
</message>
<message>
<source>an hour before</source>
<translation>eine Stunde vorher</translation>
</message>
<message>
<source>an ingredient is missing here</source>
<translation>hier fehlt eine Zutat</translation>
</message>
<message>
<source>an ingredient needs a name</source>
<translation>eine Zutat braucht einen Namen</translation>
</message>
<message>
<source>an insurer's note on flaming drinks</source>
<translation>Merkblatt eines Versicherers zu brennenden Drinks</translation>
</message>
<message>
<source>an object</source>
<translation>ein Objekt</translation>
</message>
<message>
<source>anchovy, tamarind and vinegar are aged together; soy sauce is only salt and brown</source>
<translation>Sardelle, Tamarinde und Essig reifen zusammen; Sojasauce ist nur Salz und braun</translation>
</message>
<message>
<source>and</source>
<translation>und</translation>
</message>
<message>
<source>and {left} more</source>
<translation>und {left} weitere</translation>
</message>
<message>
<source>and {more} more</source>
<translation>und {more} weitere</translation>
</message>
<message>
<source>anise and green too</source>
<translation>auch Anis und Grün</translation>
</message>
<message>
<source>anise in front too, with liquorice and some sugar; a rinse hardly shows it</source>
<translation>auch Anis voran, mit Lakritz und etwas Zucker; beim Ausschwenken merkt man es kaum</translation>
</message>
<message>
<source>anise too, drier and stronger</source>
<translation>auch Anis, trockener und stärker</translation>
</message>
<message>
<source>anise too, sweeter and weaker</source>
<translation>auch Anis, süßer und schwächer</translation>
</message>
<message>
<source>anise too, with liquorice</source>
<translation>auch Anis, mit Lakritz</translation>
</message>
<message>
<source>anise too, with liquorice and some sugar</source>
<translation>auch Anis, mit Lakritz und etwas Zucker</translation>
</message>
<message>
<source>anise with some sugar, without the wormwood</source>
<translation>Anis mit etwas Zucker, ohne das Wermutkraut</translation>
</message>
<message>
<source>anise with wormwood, stronger and without sugar</source>
<translation>Anis mit Wermutkraut, stärker und ohne Zucker</translation>
</message>
<message>
<source>anise without the liquorice</source>
<translation>Anis ohne das Lakritz</translation>
</message>
<message>
<source>anise, drier and a little stronger</source>
<translation>Anis, trockener und etwas stärker</translation>
</message>
<message>
<source>anise, dry and strong, without the wormwood</source>
<translation>Anis, trocken und stark, ohne das Wermutkraut</translation>
</message>
<message>
<source>aniseed and grape too, a little stronger</source>
<translation>auch Anis und Traube, etwas stärker</translation>
</message>
<message>
<source>aniseed and grape too, a little weaker</source>
<translation>auch Anis und Traube, etwas schwächer</translation>
</message>
<message>
<source>aniseed too and much stronger, so pour less</source>
<translation>auch Anis und viel stärker, darum weniger nehmen</translation>
</message>
<message>
<source>aniseed too, a little sweet and much stronger, so pour less</source>
<translation>auch Anis, etwas süß und viel stärker, darum weniger nehmen</translation>
</message>
<message>
<source>aniseed too, a little sweet and weaker</source>
<translation>auch Anis, etwas süß und schwächer</translation>
</message>
<message>
<source>aniseed too, dry and stronger</source>
<translation>auch Anis, trocken und stärker</translation>
</message>
<message>
<source>aniseed too, with liquorice and sugar</source>
<translation>auch Anis, mit Lakritz und Zucker</translation>
</message>
<message>
<source>another amount</source>
<translation>eine andere Menge</translation>
</message>
<message>
<source>another ingredient</source>
<translation>eine andere Zutat</translation>
</message>
<message>
<source>another ingredient than what is offered</source>
<translation>eine andere Zutat als die angebotene</translation>
</message>
<message>
<source>another one has the same name</source>
<translation>ein anderer Eintrag hat denselben Namen</translation>
</message>
<message>
<source>another product has its name and size</source>
<translation>ein anderes Produkt hat denselben Namen und dieselbe Größe</translation>
</message>
<message>
<source>another spec has its name</source>
<translation>ein anderes Rezept hat denselben Namen</translation>
</message>
<message>
<source>any number</source>
<translation>beliebig viele</translation>
</message>
<message>
<source>any number of serves</source>
<translation>beliebig viele Portionen</translation>
</message>
<message>
<source>apple too, finer and weaker, so pour more</source>
<translation>auch Apfel, feiner und schwächer, darum mehr nehmen</translation>
</message>
<message>
<source>apple too, mostly weaker, so pour more</source>
<translation>auch Apfel, meist schwächer, darum mehr nehmen</translation>
</message>
<message>
<source>apple too, wherever it is from</source>
<translation>auch Apfel, woher er auch kommt</translation>
</message>
<message>
<source>apple too, with new oak and stronger, so pour less</source>
<translation>auch Apfel, mit neuer Eiche und stärker, darum weniger nehmen</translation>
</message>
<message>
<source>apple where grape is meant, and stronger, so pour less</source>
<translation>Apfel, wo Traube gemeint ist, und stärker, darum weniger nehmen</translation>
</message>
<message>
<source>apple where grape is meant, as much oak</source>
<translation>Apfel, wo Traube gemeint ist, ebenso viel Eiche</translation>
</message>
<message>
<source>arrack, sugar and spice are rested together; poured side by side they stay apart</source>
<translation>Arrak, Zucker und Gewürz reifen zusammen; nebeneinander eingeschenkt bleiben sie getrennt</translation>
</message>
<message>
<source>as alpine, resin in place of wormwood</source>
<translation>ebenso alpin, Harz statt Wermutkraut</translation>
</message>
<message>
<source>as alpine, wormwood in place of resin</source>
<translation>ebenso alpin, Wermutkraut statt Harz</translation>
</message>
<message>
<source>as another bottle of it</source>
<translation>wie eine andere Flasche davon</translation>
</message>
<message>
<source>as barkeep comes</source>
<translation>wie barkeep es mitbringt</translation>
</message>
<message>
<source>as barkeep writes it</source>
<translation>so, wie barkeep es schreibt</translation>
</message>
<message>
<source>as bitter and much sweeter</source>
<translation>ebenso bitter und viel süßer</translation>
</message>
<message>
<source>as bitter, sweeter and without the herbs</source>
<translation>ebenso bitter, süßer und ohne die Kräuter</translation>
</message>
<message>
<source>as bitter, without the flower; a barspoon of elderflower cordial brings it back</source>
<translation>ebenso bitter, ohne die Blüte; ein Barlöffel Holunderblütencordial bringt sie zurück</translation>
</message>
<message>
<source>as chosen for each</source>
<translation>wie einzeln gewählt</translation>
</message>
<message>
<source>as clean, a little firmer</source>
<translation>ebenso sauber, etwas fester</translation>
</message>
<message>
<source>as clean, drier</source>
<translation>ebenso sauber, trockener</translation>
</message>
<message>
<source>as clean, less oily</source>
<translation>ebenso sauber, weniger ölig</translation>
</message>
<message>
<source>as clean, stronger and without the apple</source>
<translation>ebenso sauber, stärker und ohne den Apfel</translation>
</message>
<message>
<source>as clean, sweeter</source>
<translation>ebenso sauber, süßer</translation>
</message>
<message>
<source>as clean, weaker and of apple</source>
<translation>ebenso sauber, schwächer und von Apfel</translation>
</message>
<message>
<source>as clear, rounder and less fruity</source>
<translation>ebenso klar, runder und weniger fruchtig</translation>
</message>
<message>
<source>as clear, sweeter, so pour less</source>
<translation>ebenso klar, süßer, darum weniger nehmen</translation>
</message>
<message>
<source>as clear, tarter and not as sweet</source>
<translation>ebenso klar, säuerlicher und nicht so süß</translation>
</message>
<message>
<source>as clear, with little of the ripe fruit</source>
<translation>ebenso klar, mit wenig reifer Frucht</translation>
</message>
<message>
<source>as clear, without the oak</source>
<translation>ebenso klar, ohne die Eiche</translation>
</message>
<message>
<source>as cold and fat, vanilla in place of chocolate</source>
<translation>ebenso kalt und fett, Vanille statt Schokolade</translation>
</message>
<message>
<source>as cold and sweet, another fruit; some lemon juice helps</source>
<translation>ebenso kalt und süß, eine andere Frucht; etwas Zitronensaft hilft</translation>
</message>
<message>
<source>as cold and sweet, sourer</source>
<translation>ebenso kalt und süß, saurer</translation>
</message>
<message>
<source>as cool, without the anise and cumin</source>
<translation>ebenso kühl, ohne Anis und Kreuzkümmel</translation>
</message>
<message>
<source>as crisp when firm, softer in taste</source>
<translation>fest ebenso knackig, weicher im Geschmack</translation>
</message>
<message>
<source>as crisp, tarter</source>
<translation>ebenso knackig, säuerlicher</translation>
</message>
<message>
<source>as crisp, without the anise: mind allergies</source>
<translation>ebenso knackig, ohne den Anis: Allergien beachten</translation>
</message>
<message>
<source>as dark and dense, wood in place of fruit</source>
<translation>ebenso dunkel und dicht, Holz statt Frucht</translation>
</message>
<message>
<source>as dark and jammy, bramble in place of cherry; sweeter, so pour a little less</source>
<translation>ebenso dunkel und marmeladig, Brombeere statt Kirsche; süßer, darum etwas weniger nehmen</translation>
</message>
<message>
<source>as dark and moist, plainer</source>
<translation>ebenso dunkel und feucht, schlichter</translation>
</message>
<message>
<source>as dark and much weaker, so pour more</source>
<translation>ebenso dunkel und viel schwächer, darum mehr nehmen</translation>
</message>
<message>
<source>as dark and sour and denser, so pour less</source>
<translation>ebenso dunkel und sauer und dichter, darum weniger nehmen</translation>
</message>
<message>
<source>as dark and sweet, without the wintergreen</source>
<translation>ebenso dunkel und süß, ohne das Wintergrün</translation>
</message>
<message>
<source>as dark, a berry in place of the stone fruit</source>
<translation>ebenso dunkel, eine Beere statt des Steinobsts</translation>
</message>
<message>
<source>as dark, earthy in place of smoky</source>
<translation>ebenso dunkel, erdig statt rauchig</translation>
</message>
<message>
<source>as dark, smoky</source>
<translation>ebenso dunkel, rauchig</translation>
</message>
<message>
<source>as dark, tarter</source>
<translation>ebenso dunkel, säuerlicher</translation>
</message>
<message>
<source>as dark, with less ripe fruit</source>
<translation>ebenso dunkel, mit weniger reifer Frucht</translation>
</message>
<message>
<source>as dark, with molasses in place of wood</source>
<translation>ebenso dunkel, Melasse statt Holz</translation>
</message>
<message>
<source>as dark, with wood and burnt sugar in place of molasses</source>
<translation>ebenso dunkel, Holz und gebrannter Zucker statt Melasse</translation>
</message>
<message>
<source>as deep but drier and much stronger, so pour less</source>
<translation>ebenso tief, aber trockener und viel stärker, darum weniger nehmen</translation>
</message>
<message>
<source>as deep, a little thinner</source>
<translation>ebenso tief, etwas dünner</translation>
</message>
<message>
<source>as dense, a little grassy</source>
<translation>ebenso dicht, etwas grasig</translation>
</message>
<message>
<source>as dense, silkier</source>
<translation>ebenso dicht, seidiger</translation>
</message>
<message>
<source>as dense, sweeter on the tongue</source>
<translation>ebenso dicht, süßer auf der Zunge</translation>
</message>
<message>
<source>as dense, tasting of maple</source>
<translation>ebenso dicht, schmeckt nach Ahorn</translation>
</message>
<message>
<source>as dense, with a grassy note</source>
<translation>ebenso dicht, mit grasiger Note</translation>
</message>
<message>
<source>as dense, with a note of its own</source>
<translation>ebenso dicht, mit eigener Note</translation>
</message>
<message>
<source>as dense, with caramel</source>
<translation>ebenso dicht, mit Karamell</translation>
</message>
<message>
<source>as dense, with toffee and colour</source>
<translation>ebenso dicht, mit Toffee und Farbe</translation>
</message>
<message>
<source>as dense, with toffee and without the silk</source>
<translation>ebenso dicht, mit Toffee und ohne das Seidige</translation>
</message>
<message>
<source>as dense, without the silk</source>
<translation>ebenso dicht, ohne das Seidige</translation>
</message>
<message>
<source>as dense, without the toffee</source>
<translation>ebenso dicht, ohne das Toffee</translation>
</message>
<message>
<source>as dry, but lighter and more flowery</source>
<translation>ebenso trocken, aber leichter und blumiger</translation>
</message>
<message>
<source>as dry, pink and with red fruit</source>
<translation>ebenso trocken, rosa und mit roter Frucht</translation>
</message>
<message>
<source>as dry, rootier and weaker, so pour more</source>
<translation>ebenso trocken, wurzeliger und schwächer, darum mehr nehmen</translation>
</message>
<message>
<source>as dry, salt and nuts in place of herbs</source>
<translation>ebenso trocken, Salz und Nüsse statt Kräutern</translation>
</message>
<message>
<source>as dry, sharper with juniper</source>
<translation>ebenso trocken, kräftiger im Wacholder</translation>
</message>
<message>
<source>as dry, with citrus or flowers ahead of the juniper</source>
<translation>ebenso trocken, Zitrus oder Blüten vor dem Wacholder</translation>
</message>
<message>
<source>as dry, with less juniper and more root and spice</source>
<translation>ebenso trocken, mit weniger Wacholder und mehr Wurzel und Gewürz</translation>
</message>
<message>
<source>as earthy and sweet, orange in place of red</source>
<translation>ebenso erdig und süß, orange statt rot</translation>
</message>
<message>
<source>as earthy, with smoke</source>
<translation>ebenso erdig, mit Rauch</translation>
</message>
<message>
<source>as expected</source>
<translation>wie erwartet</translation>
</message>
<message>
<source>as fat, and it tastes of coconut</source>
<translation>ebenso fett, und sie schmeckt nach Kokosnuss</translation>
</message>
<message>
<source>as fat, runny</source>
<translation>ebenso fett, flüssig</translation>
</message>
<message>
<source>as feathery, sweeter with anise</source>
<translation>ebenso gefiedert, süßer von Anis</translation>
</message>
<message>
<source>as feathery, without the anise</source>
<translation>ebenso gefiedert, ohne den Anis</translation>
</message>
<message>
<source>as fine on the nose, lighter in body</source>
<translation>ebenso fein im Duft, leichter im Körper</translation>
</message>
<message>
<source>as fine, grape where apple is meant</source>
<translation>ebenso fein, Traube, wo Apfel gemeint ist</translation>
</message>
<message>
<source>as firm, a little weaker</source>
<translation>ebenso fest, etwas schwächer</translation>
</message>
<message>
<source>as fizzy, without the cucumber; two slices and some syrup help</source>
<translation>ebenso spritzig, ohne die Gurke; zwei Scheiben und etwas Sirup helfen</translation>
</message>
<message>
<source>as flowery, fruitier and sweeter</source>
<translation>ebenso blumig, fruchtiger und süßer</translation>
</message>
<message>
<source>as flowery, without the fruit</source>
<translation>ebenso blumig, ohne die Frucht</translation>
</message>
<message>
<source>as fresh, from agave</source>
<translation>ebenso frisch, aus Agave</translation>
</message>
<message>
<source>as fresh, greener</source>
<translation>ebenso frisch, grüner</translation>
</message>
<message>
<source>as fresh, hot in place of lemony; press a lemon peel over it</source>
<translation>ebenso frisch, scharf statt zitronig; drück eine Zitronenschale darüber aus</translation>
</message>
<message>
<source>as full of small seeds, tarter and green</source>
<translation>ebenso voller kleiner Kerne, säuerlicher und grün</translation>
</message>
<message>
<source>as full, burnt sugar and wood in front</source>
<translation>ebenso voll, gebrannter Zucker und Holz voran</translation>
</message>
<message>
<source>as full, far fruitier</source>
<translation>ebenso voll, weit fruchtiger</translation>
</message>
<message>
<source>as full, less fine on the nose</source>
<translation>ebenso voll, weniger fein im Duft</translation>
</message>
<message>
<source>as full, spicier and without any smoke</source>
<translation>ebenso voll, würziger und ohne Rauch</translation>
</message>
<message>
<source>as full, spicier and without malt depth</source>
<translation>ebenso voll, würziger und ohne Malztiefe</translation>
</message>
<message>
<source>as full, with a taste of bean: mind allergies to soya; it curdles sooner</source>
<translation>ebenso voll, mit Bohnengeschmack: Allergien gegen Soja beachten; sie gerinnt eher</translation>
</message>
<message>
<source>as full, with a taste of grain: mind gluten</source>
<translation>ebenso voll, mit Getreidegeschmack: Gluten beachten</translation>
</message>
<message>
<source>as full, without the spice of raw barley</source>
<translation>ebenso voll, ohne die Würze roher Gerste</translation>
</message>
<message>
<source>as gentle but dry, so add half a barspoon of syrup</source>
<translation>ebenso sanft, aber trocken, darum einen halben Barlöffel Sirup zugeben</translation>
</message>
<message>
<source>as gentle in oak, with far more ripe fruit</source>
<translation>ebenso sanft im Fass, mit weit mehr reifer Frucht</translation>
</message>
<message>
<source>as gentle, caramel in place of mountain herbs</source>
<translation>ebenso sanft, Karamell statt Bergkräutern</translation>
</message>
<message>
<source>as gentle, lighter</source>
<translation>ebenso sanft, leichter</translation>
</message>
<message>
<source>as gentle, with mountain herbs</source>
<translation>ebenso sanft, mit Bergkräutern</translation>
</message>
<message>
<source>as gentle, younger</source>
<translation>ebenso sanft, jünger</translation>
</message>
<message>
<source>as gently aged, with the colour left in</source>
<translation>ebenso sanft gereift, die Farbe ist noch darin</translation>
</message>
<message>
<source>as gently aged, without the colour</source>
<translation>ebenso sanft gereift, ohne die Farbe</translation>
</message>
<message>
<source>as golden and honeyed, herbs in place of saffron</source>
<translation>ebenso golden und honigartig, Kräuter statt Safran</translation>
</message>
<message>
<source>as golden, stronger and less sweet</source>
<translation>ebenso golden, stärker und weniger süß</translation>
</message>
<message>
<source>as golden, through oak in place of colouring</source>
<translation>ebenso golden, durch Eiche statt Farbstoff</translation>
</message>
<message>
<source>as green and fresh, cooler</source>
<translation>ebenso grün und frisch, kühler</translation>
</message>
<message>
<source>as green and fresh, sweet and peppery</source>
<translation>ebenso grün und frisch, süß und pfeffrig</translation>
</message>
<message>
<source>as green and plain: mind allergies to celery</source>
<translation>ebenso grün und schlicht: Allergien gegen Sellerie beachten</translation>
</message>
<message>
<source>as green and savoury, without the anise: mind allergies to celery</source>
<translation>ebenso grün und herzhaft, ohne den Anis: Allergien gegen Sellerie beachten</translation>
</message>
<message>
<source>as green and watery, saltier: mind allergies to celery</source>
<translation>ebenso grün und wässrig, salziger: Allergien gegen Sellerie beachten</translation>
</message>
<message>
<source>as green and watery, without the salt of celery</source>
<translation>ebenso grün und wässrig, ohne das Salz des Selleries</translation>
</message>
<message>
<source>as green, cooler</source>
<translation>ebenso grün, kühler</translation>
</message>
<message>
<source>as green, less bitter</source>
<translation>ebenso grün, weniger bitter</translation>
</message>
<message>
<source>as green, to be squeezed rather than eaten</source>
<translation>ebenso grün, zum Ausdrücken statt zum Essen</translation>
</message>
<message>
<source>as heavy and dark, with less fruit</source>
<translation>ebenso schwer und dunkel, mit weniger Frucht</translation>
</message>
<message>
<source>as heavy and old, burnt sugar in place of ripe fruit</source>
<translation>ebenso schwer und alt, gebrannter Zucker statt reifer Frucht</translation>
</message>
<message>
<source>as heavy and old, ripe fruit in place of burnt sugar</source>
<translation>ebenso schwer und alt, reife Frucht statt gebranntem Zucker</translation>
</message>
<message>
<source>as heavy, burnt sugar in place of ripe fruit</source>
<translation>ebenso schwer, gebrannter Zucker statt reifer Frucht</translation>
</message>
<message>
<source>as heavy, molasses in place of ripe fruit</source>
<translation>ebenso schwer, Melasse statt reifer Frucht</translation>
</message>
<message>
<source>as heavy, though not always dark</source>
<translation>ebenso schwer, aber nicht immer dunkel</translation>
</message>
<message>
<source>as heavy, with more ripe fruit</source>
<translation>ebenso schwer, mit mehr reifer Frucht</translation>
</message>
<message>
<source>as hot, without the vinegar</source>
<translation>ebenso scharf, ohne den Essig</translation>
</message>
<message>
<source>as juicy and mild, without the rose</source>
<translation>ebenso saftig und mild, ohne die Rose</translation>
</message>
<message>
<source>as light and clear</source>
<translation>ebenso leicht und klar</translation>
</message>
<message>
<source>as light and fizzy, apple in place of pear</source>
<translation>ebenso leicht und spritzig, Apfel statt Birne</translation>
</message>
<message>
<source>as light and fizzy, far drier; a barspoon of syrup helps</source>
<translation>ebenso leicht und spritzig, weit trockener; ein Barlöffel Sirup hilft</translation>
</message>
<message>
<source>as light and fizzy, pear in place of apple</source>
<translation>ebenso leicht und spritzig, Birne statt Apfel</translation>
</message>
<message>
<source>as light in strength, cleaner and less bitter</source>
<translation>ebenso leicht an Alkohol, sauberer und weniger bitter</translation>
</message>
<message>
<source>as light in strength, more hops and fruit</source>
<translation>ebenso leicht an Alkohol, mehr Hopfen und Frucht</translation>
</message>
<message>
<source>as light, a little greener</source>
<translation>ebenso leicht, etwas grüner</translation>
</message>
<message>
<source>as light, cloudy and fruity, brewed with wheat</source>
<translation>ebenso leicht an Alkohol, trüb und fruchtig, mit Weizen gebraut</translation>
</message>
<message>
<source>as light, more fruit and honey</source>
<translation>ebenso leicht, mehr Frucht und Honig</translation>
</message>
<message>
<source>as light, pink and with red fruit</source>
<translation>ebenso leicht, rosa und mit roter Frucht</translation>
</message>
<message>
<source>as light, thinner</source>
<translation>ebenso leicht, dünner</translation>
</message>
<message>
<source>as light, with less fruit</source>
<translation>ebenso leicht, mit weniger Frucht</translation>
</message>
<message>
<source>as light, with malt and perhaps a trace of smoke</source>
<translation>ebenso leicht, mit Malz und vielleicht einer Spur Rauch</translation>
</message>
<message>
<source>as light, with perhaps a trace of smoke</source>
<translation>ebenso leicht, vielleicht mit einer Spur Rauch</translation>
</message>
<message>
<source>as light, with some roast</source>
<translation>ebenso leicht, mit etwas Röstung</translation>
</message>
<message>
<source>as light, without any smoke</source>
<translation>ebenso leicht, ohne Rauch</translation>
</message>
<message>
<source>as light, without banana and clove</source>
<translation>ebenso leicht, ohne Banane und Nelke</translation>
</message>
<message>
<source>as light, without the red fruit</source>
<translation>ebenso leicht, ohne die rote Frucht</translation>
</message>
<message>
<source>as light, without the short rest in oak</source>
<translation>ebenso leicht, ohne die kurze Zeit im Fass</translation>
</message>
<message>
<source>as listed</source>
<translation>wie notiert</translation>
</message>
<message>
<source>as many as you like</source>
<translation>so viele du willst</translation>
</message>
<message>
<source>as mild, with apple</source>
<translation>ebenso mild, mit Apfel</translation>
</message>
<message>
<source>as much oak, apple where grape is meant</source>
<translation>ebenso viel Eiche, Apfel, wo Traube gemeint ist</translation>
</message>
<message>
<source>as much oak, grape where apple is meant</source>
<translation>ebenso viel Eiche, Traube, wo Apfel gemeint ist</translation>
</message>
<message>
<source>as much oak, without the smoke</source>
<translation>ebenso viel Eiche, ohne den Rauch</translation>
</message>
<message>
<source>as much sugar in water, with toffee</source>
<translation>ebenso viel Zucker in Wasser, mit Toffee</translation>
</message>
<message>
<source>as much sugar, without the toffee</source>
<translation>ebenso viel Zucker, ohne das Toffee</translation>
</message>
<message>
<source>as nutty, a little rougher</source>
<translation>ebenso nussig, etwas rauer</translation>
</message>
<message>
<source>as nutty, drier and less sharp</source>
<translation>ebenso nussig, trockener und weniger scharf</translation>
</message>
<message>
<source>as nutty, dry and lighter</source>
<translation>ebenso nussig, trocken und leichter</translation>
</message>
<message>
<source>as nutty, dry; add a little syrup</source>
<translation>ebenso nussig, trocken; gib etwas Sirup zu</translation>
</message>
<message>
<source>as nutty, dry; add a little syrup and lemon</source>
<translation>ebenso nussig, trocken; gib etwas Sirup und Zitrone zu</translation>
</message>
<message>
<source>as nutty, finer</source>
<translation>ebenso nussig, feiner</translation>
</message>
<message>
<source>as nutty, fuller</source>
<translation>ebenso nussig, voller</translation>
</message>
<message>
<source>as nutty, heavier</source>
<translation>ebenso nussig, schwerer</translation>
</message>
<message>
<source>as nutty, lighter</source>
<translation>ebenso nussig, leichter</translation>
</message>
<message>
<source>as nutty, mostly not as sweet</source>
<translation>ebenso nussig, meist nicht so süß</translation>
</message>
<message>
<source>as nutty, not as sour</source>
<translation>ebenso nussig, nicht so sauer</translation>
</message>
<message>
<source>as nutty, sourer</source>
<translation>ebenso nussig, saurer</translation>
</message>
<message>
<source>as nutty, sourer and not as sweet</source>
<translation>ebenso nussig, saurer und nicht so süß</translation>
</message>
<message>
<source>as nutty, sweeter</source>
<translation>ebenso nussig, süßer</translation>
</message>
<message>
<source>as nutty, sweeter and not as sour</source>
<translation>ebenso nussig, süßer und nicht so sauer</translation>
</message>
<message>
<source>as nutty, sweeter and sourer</source>
<translation>ebenso nussig, süßer und saurer</translation>
</message>
<message>
<source>as oaky, drier and grassy</source>
<translation>ebenso eichig, trockener und grasiger</translation>
</message>
<message>
<source>as oaky, grape where apple is meant</source>
<translation>ebenso eichig, Traube, wo Apfel gemeint ist</translation>
</message>
<message>
<source>as old, darker and much stronger, so pour less</source>
<translation>ebenso alt, dunkler und viel stärker, darum weniger nehmen</translation>
</message>
<message>
<source>as old, drier and lighter</source>
<translation>ebenso alt, trockener und leichter</translation>
</message>
<message>
<source>as old, far less fruity</source>
<translation>ebenso alt, weit weniger fruchtig</translation>
</message>
<message>
<source>as old, sweeter and without the grass</source>
<translation>ebenso alt, süßer und ohne das Gras</translation>
</message>
<message>
<source>as pale and drier, salt and nuts in place of herbs</source>
<translation>ebenso hell und trockener, Salz und Nüsse statt Kräutern</translation>
</message>
<message>
<source>as pale and light, brewed with wheat and hardly sour; a squeeze of lemon helps</source>
<translation>ebenso hell und leicht, mit Weizen gebraut und kaum sauer; ein Spritzer Zitrone hilft</translation>
</message>
<message>
<source>as pale and orangey, less bitter</source>
<translation>ebenso hell und orangig, weniger bitter</translation>
</message>
<message>
<source>as pale and orangey, more bitter and sweeter</source>
<translation>ebenso hell und orangig, bitterer und süßer</translation>
</message>
<message>
<source>as pale and sweet, hardly bitter; add a dash of orange bitters</source>
<translation>ebenso hell und süß, kaum bitter; gib einen Dash Orange Bitters zu</translation>
</message>
<message>
<source>as pale and sweet, more bitter</source>
<translation>ebenso hell und süß, bitterer</translation>
</message>
<message>
<source>as pale and sweet, with herbs</source>
<translation>ebenso hell und süß, mit Kräutern</translation>
</message>
<message>
<source>as pale, herbal and dry; add a barspoon of syrup</source>
<translation>ebenso hell, kräuterig und trocken; gib einen Barlöffel Sirup zu</translation>
</message>
<message>
<source>as pale, herbal and sweeter</source>
<translation>ebenso hell, kräuterig und süßer</translation>
</message>
<message>
<source>as pale, less sweet, with orange and quinine</source>
<translation>ebenso hell, weniger süß, mit Orange und Chinin</translation>
</message>
<message>
<source>as pale, sweeter and hardly bitter</source>
<translation>ebenso hell, süßer und kaum bitter</translation>
</message>
<message>
<source>as pink and tart</source>
<translation>ebenso rosa und säuerlich</translation>
</message>
<message>
<source>as pink, softer</source>
<translation>ebenso rosa, weicher</translation>
</message>
<message>
<source>as pink, sweet in place of sharp</source>
<translation>ebenso rosa, süß statt säuerlich</translation>
</message>
<message>
<source>as pungent and much weaker, so pour more</source>
<translation>ebenso kräftig und viel schwächer, darum mehr nehmen</translation>
</message>
<message>
<source>as pungent and stronger, so pour less</source>
<translation>ebenso kräftig und stärker, darum weniger nehmen</translation>
</message>
<message>
<source>as pungent in its own way, grassy in place of ripe fruit</source>
<translation>auf eigene Art ebenso kräftig, grasig statt reifer Frucht</translation>
</message>
<message>
<source>as pungent, fruit in place of smoke</source>
<translation>ebenso kräftig, Frucht statt Rauch</translation>
</message>
<message>
<source>as pungent, ripe fruit in place of grass</source>
<translation>ebenso kräftig, reife Frucht statt Gras</translation>
</message>
<message>
<source>as pungent, smokier and less fruity</source>
<translation>ebenso kräftig, rauchiger und weniger fruchtig</translation>
</message>
<message>
<source>as pungent, smokier and weaker</source>
<translation>ebenso kräftig, rauchiger und schwächer</translation>
</message>
<message>
<source>as raw, grassy in place of ripe fruit, and weaker</source>
<translation>ebenso rau, grasig statt reifer Frucht, und schwächer</translation>
</message>
<message>
<source>as red and far hotter, so take a fifth</source>
<translation>ebenso rot und weit schärfer, darum ein Fünftel nehmen</translation>
</message>
<message>
<source>as red and full, with tannin and caffeine</source>
<translation>ebenso rot und voll, mit Gerbstoff und Koffein</translation>
</message>
<message>
<source>as red and sharp, harder</source>
<translation>ebenso rot und scharf, härter</translation>
</message>
<message>
<source>as red and sweet, fruity; add a dash of aromatic bitters</source>
<translation>ebenso rot und süß, fruchtig; gib einen Dash Aromatic Bitters zu</translation>
</message>
<message>
<source>as red and sweet, less bitter</source>
<translation>ebenso rot und süß, weniger bitter</translation>
</message>
<message>
<source>as red and sweet, less bitter; add a dash of aromatic bitters</source>
<translation>ebenso rot und süß, weniger bitter; gib einen Dash Aromatic Bitters zu</translation>
</message>
<message>
<source>as red and sweet, more bitter</source>
<translation>ebenso rot und süß, bitterer</translation>
</message>
<message>
<source>as red and sweet, pomegranate where cherry is meant</source>
<translation>ebenso rot und süß, Granatapfel, wo Kirsche gemeint ist</translation>
</message>
<message>
<source>as red and sweet, quinine in place of herbs</source>
<translation>ebenso rot und süß, Chinin statt Kräutern</translation>
</message>
<message>
<source>as red and sweet, without the bitterness</source>
<translation>ebenso rot und süß, ohne die Bitterkeit</translation>
</message>
<message>
<source>as red and tart</source>
<translation>ebenso rot und säuerlich</translation>
</message>
<message>
<source>as red and tart, a berry in place of the flower</source>
<translation>ebenso rot und säuerlich, eine Beere statt der Blüte</translation>
</message>
<message>
<source>as red and tart, flowery</source>
<translation>ebenso rot und säuerlich, blumig</translation>
</message>
<message>
<source>as red and tart, fruity</source>
<translation>ebenso rot und säuerlich, fruchtig</translation>
</message>
<message>
<source>as red and tart, softer</source>
<translation>ebenso rot und säuerlich, weicher</translation>
</message>
<message>
<source>as red and tart, with seeds</source>
<translation>ebenso rot und säuerlich, mit Kernen</translation>
</message>
<message>
<source>as red, a little less bitter</source>
<translation>ebenso rot, etwas weniger bitter</translation>
</message>
<message>
<source>as red, deeper and tarter</source>
<translation>ebenso rot, tiefer und säuerlicher</translation>
</message>
<message>
<source>as red, herbs in place of quinine</source>
<translation>ebenso rot, Kräuter statt Chinin</translation>
</message>
<message>
<source>as red, lighter and less tart</source>
<translation>ebenso rot, leichter und weniger säuerlich</translation>
</message>
<message>
<source>as red, more bitter and sweeter</source>
<translation>ebenso rot, bitterer und süßer</translation>
</message>
<message>
<source>as red, pomegranate in place of cherry</source>
<translation>ebenso rot, Granatapfel statt Kirsche</translation>
</message>
<message>
<source>as red, pomegranate where raspberry is meant</source>
<translation>ebenso rot, Granatapfel, wo Himbeere gemeint ist</translation>
</message>
<message>
<source>as red, raspberry where pomegranate is meant</source>
<translation>ebenso rot, Himbeere, wo Granatapfel gemeint ist</translation>
</message>
<message>
<source>as red, sweeter and not as tart</source>
<translation>ebenso rot, süßer und nicht so säuerlich</translation>
</message>
<message>
<source>as resinous and green</source>
<translation>ebenso harzig und grün</translation>
</message>
<message>
<source>as resinous, coarser</source>
<translation>ebenso harzig, gröber</translation>
</message>
<message>
<source>as resinous, coarser, so take less</source>
<translation>ebenso harzig, gröber, darum weniger nehmen</translation>
</message>
<message>
<source>as resinous, finer</source>
<translation>ebenso harzig, feiner</translation>
</message>
<message>
<source>as resinous, softer</source>
<translation>ebenso harzig, weicher</translation>
</message>
<message>
<source>as resinous, without the flower</source>
<translation>ebenso harzig, ohne die Blüte</translation>
</message>
<message>
<source>as rich, fresh in taste</source>
<translation>ebenso gehaltvoll, frisch im Geschmack</translation>
</message>
<message>
<source>as rich, nutty and brown</source>
<translation>ebenso gehaltvoll, nussig und braun</translation>
</message>
<message>
<source>as rich, sourer and nutty</source>
<translation>ebenso gehaltvoll, saurer und nussig</translation>
</message>
<message>
<source>as roasted and stronger, so pour less</source>
<translation>ebenso geröstet und stärker, darum weniger nehmen</translation>
</message>
<message>
<source>as roasted, cocoa in place of coffee</source>
<translation>ebenso geröstet, Kakao statt Kaffee</translation>
</message>
<message>
<source>as round and old, without the pot still in the blend</source>
<translation>ebenso rund und alt, ohne Pot-Still-Anteil</translation>
</message>
<message>
<source>as round, through malt instead of sugar</source>
<translation>ebenso rund, durch Malz statt Zucker</translation>
</message>
<message>
<source>as round, through oak instead of sugar</source>
<translation>ebenso rund, durch Eiche statt Zucker</translation>
</message>
<message>
<source>as round, through sugar instead of oak</source>
<translation>ebenso rund, durch Zucker statt Eiche</translation>
</message>
<message>
<source>as round, with some bitterness</source>
<translation>ebenso rund, mit etwas Bitterkeit</translation>
</message>
<message>
<source>as rounded, with its colour</source>
<translation>ebenso rund, mit seiner Farbe</translation>
</message>
<message>
<source>as rustic, apple where grape is meant</source>
<translation>ebenso rustikal, Apfel, wo Traube gemeint ist</translation>
</message>
<message>
<source>as salty and savoury, without the fish: mind soya, wheat and gluten</source>
<translation>ebenso salzig und herzhaft, ohne den Fisch: Soja, Weizen und Gluten beachten</translation>
</message>
<message>
<source>as salty on a pick, less sour</source>
<translation>ebenso salzig am Spieß, weniger sauer</translation>
</message>
<message>
<source>as salty on a pick, milder</source>
<translation>ebenso salzig am Spieß, milder</translation>
</message>
<message>
<source>as salty, less sharp</source>
<translation>ebenso salzig, weniger scharf</translation>
</message>
<message>
<source>as salty, less sour</source>
<translation>ebenso salzig, weniger sauer</translation>
</message>
<message>
<source>as salty, without the heat; a drop of hot sauce helps</source>
<translation>ebenso salzig, ohne die Schärfe; ein Tropfen scharfe Sauce hilft</translation>
</message>
<message>
<source>as salty, without the peel; grate some into it</source>
<translation>ebenso salzig, ohne die Schale; reib etwas hinein</translation>
</message>
<message>
<source>as salty, without the smoke</source>
<translation>ebenso salzig, ohne den Rauch</translation>
</message>
<message>
<source>as savoury, more resin, so take less</source>
<translation>ebenso herzhaft, mehr Harz, darum weniger nehmen</translation>
</message>
<message>
<source>as scented, fruit in place of petals</source>
<translation>ebenso duftend, Frucht statt Blütenblättern</translation>
</message>
<message>
<source>as scented, petals in place of fruit</source>
<translation>ebenso duftend, Blütenblätter statt Frucht</translation>
</message>
<message>
<source>as sharp, plainer</source>
<translation>ebenso scharf, schlichter</translation>
</message>
<message>
<source>as small and sour, without the scent of mandarin</source>
<translation>ebenso klein und sauer, ohne den Mandarinenduft</translation>
</message>
<message>
<source>as soft and dark, cocoa in place of vanilla</source>
<translation>ebenso weich und dunkel, Kakao statt Vanille</translation>
</message>
<message>
<source>as soft and fat: mind allergies</source>
<translation>ebenso weich und fett: Allergien beachten</translation>
</message>
<message>
<source>as soft and of meadow, without the flower</source>
<translation>ebenso weich und nach Wiese, ohne die Blüte</translation>
</message>
<message>
<source>as soft and often stronger</source>
<translation>ebenso weich und oft stärker</translation>
</message>
<message>
<source>as soft and sweet, without the green</source>
<translation>ebenso weich und süß, ohne das Grün</translation>
</message>
<message>
<source>as soft and tropical, sharper</source>
<translation>ebenso weich und tropisch, säuerlicher</translation>
</message>
<message>
<source>as soft and yellow, less tropical</source>
<translation>ebenso weich und gelb, weniger tropisch</translation>
</message>
<message>
<source>as soft, a little sootier</source>
<translation>ebenso weich, etwas rußiger</translation>
</message>
<message>
<source>as soft, of apple in place of milk</source>
<translation>ebenso weich, von Apfel statt Milch</translation>
</message>
<message>
<source>as sour</source>
<translation>genauso sauer</translation>
</message>
<message>
<source>as sour and salty, without the sugar; add a barspoon of syrup</source>
<translation>ebenso sauer und salzig, ohne den Zucker; gib einen Barlöffel Sirup zu</translation>
</message>
<message>
<source>as sour and thin</source>
<translation>ebenso sauer und dünn</translation>
</message>
<message>
<source>as sour and thin, a little fizzy</source>
<translation>ebenso sauer und dünn, etwas spritzig</translation>
</message>
<message>
<source>as sour, apple in place of malt</source>
<translation>ebenso sauer, Apfel statt Malz</translation>
</message>
<message>
<source>as sour, drier</source>
<translation>ebenso sauer, trockener</translation>
</message>
<message>
<source>as sour, from the other fruit</source>
<translation>ebenso sauer, von der anderen Frucht</translation>
</message>
<message>
<source>as sour, leaner</source>
<translation>ebenso sauer, magerer</translation>
</message>
<message>
<source>as sour, of apple in place of lemon</source>
<translation>ebenso sauer, von Apfel statt Zitrone</translation>
</message>
<message>
<source>as sour, of lemon</source>
<translation>ebenso sauer, von Zitrone</translation>
</message>
<message>
<source>as sour, of lemon in place of apple</source>
<translation>ebenso sauer, von Zitrone statt Apfel</translation>
</message>
<message>
<source>as sour, paler: mind sulphites</source>
<translation>ebenso sauer, heller: Sulfite beachten</translation>
</message>
<message>
<source>as sour, plainer</source>
<translation>ebenso sauer, schlichter</translation>
</message>
<message>
<source>as sour, red: mind sulphites</source>
<translation>ebenso sauer, rot: Sulfite beachten</translation>
</message>
<message>
<source>as sour, rounder and of green apple</source>
<translation>ebenso sauer, runder und von grünem Apfel</translation>
</message>
<message>
<source>as sour, sharp in place of soft</source>
<translation>ebenso sauer, spitz statt weich</translation>
</message>
<message>
<source>as sour, sharper and greener</source>
<translation>ebenso sauer, spitzer und grüner</translation>
</message>
<message>
<source>as sour, sharper and of lemon</source>
<translation>ebenso sauer, spitzer und von Zitrone</translation>
</message>
<message>
<source>as sour, softer and sweeter on the nose</source>
<translation>ebenso sauer, weicher und süßer im Duft</translation>
</message>
<message>
<source>as sour, thicker; let it down with milk</source>
<translation>ebenso sauer, dicker; verdünne es mit Milch</translation>
</message>
<message>
<source>as sour, thinner</source>
<translation>ebenso sauer, dünner</translation>
</message>
<message>
<source>as sour, with a perfume of its own</source>
<translation>ebenso sauer, mit eigenem Duft</translation>
</message>
<message>
<source>as sour, with a scent of mandarin</source>
<translation>ebenso sauer, mit Mandarinenduft</translation>
</message>
<message>
<source>as sour, with a taste of lemon</source>
<translation>ebenso sauer, mit Zitronengeschmack</translation>
</message>
<message>
<source>as sour, with apple</source>
<translation>ebenso sauer, mit Apfel</translation>
</message>
<message>
<source>as sour, without the orange; add a little syrup</source>
<translation>ebenso sauer, ohne die Orange; gib etwas Sirup zu</translation>
</message>
<message>
<source>as sour, without the orange; an orange peel helps</source>
<translation>ebenso sauer, ohne die Orange; eine Orangenschale hilft</translation>
</message>
<message>
<source>as sour, without the perfume</source>
<translation>ebenso sauer, ohne den Duft</translation>
</message>
<message>
<source>as sour, without the perfume; a little mandarin peel helps</source>
<translation>ebenso sauer, ohne den Duft; etwas Mandarinenschale hilft</translation>
</message>
<message>
<source>as sour, without the scent of mandarin; a little orange juice helps</source>
<translation>ebenso sauer, ohne den Mandarinenduft; etwas Orangensaft hilft</translation>
</message>
<message>
<source>as sour, without the sugar; add a little syrup: mind sulphites</source>
<translation>ebenso sauer, ohne den Zucker; gib etwas Sirup zu: Sulfite beachten</translation>
</message>
<message>
<source>as sour; it keeps fruit from browning less well</source>
<translation>ebenso sauer; es schützt Obst weniger gut vor dem Braunwerden</translation>
</message>
<message>
<source>as spicy and stronger, so pour less</source>
<translation>ebenso würzig und stärker, darum weniger nehmen</translation>
</message>
<message>
<source>as spicy, a little sweeter</source>
<translation>ebenso würzig, etwas süßer</translation>
</message>
<message>
<source>as spicy, sweeter</source>
<translation>ebenso würzig, süßer</translation>
</message>
<message>
<source>as spicy, sweeter and weaker</source>
<translation>ebenso würzig, süßer und schwächer</translation>
</message>
<message>
<source>as strong</source>
<translation>genauso stark</translation>
</message>
<message>
<source>as strong and dry, with less spice</source>
<translation>ebenso stark und trocken, mit weniger Würze</translation>
</message>
<message>
<source>as strong and dry, with more spice</source>
<translation>ebenso stark und trocken, mit mehr Würze</translation>
</message>
<message>
<source>as strong and light, without any coconut</source>
<translation>ebenso stark und leicht, ganz ohne Kokosnuss</translation>
</message>
<message>
<source>as strong, drier and spicier</source>
<translation>ebenso stark, trockener und würziger</translation>
</message>
<message>
<source>as strong, freshly pulled with its crema</source>
<translation>ebenso stark, frisch gezogen mit seiner Crema</translation>
</message>
<message>
<source>as strong, sweeter and less spicy</source>
<translation>ebenso stark, süßer und weniger würzig</translation>
</message>
<message>
<source>as strong, though not always white</source>
<translation>ebenso stark, aber nicht immer weiß</translation>
</message>
<message>
<source>as strong, without the crema</source>
<translation>ebenso stark, ohne die Crema</translation>
</message>
<message>
<source>as sweet</source>
<translation>genauso süß</translation>
</message>
<message>
<source>as sweet and earthy, orange in place of red</source>
<translation>ebenso süß und erdig, orange statt rot</translation>
</message>
<message>
<source>as sweet and earthy, red in place of orange</source>
<translation>ebenso süß und erdig, rot statt orange</translation>
</message>
<message>
<source>as sweet and fizzy, lemon in place of the flower</source>
<translation>ebenso süß und spritzig, Zitrone statt der Blüte</translation>
</message>
<message>
<source>as sweet and nutty, less sharp</source>
<translation>ebenso süß und nussig, weniger scharf</translation>
</message>
<message>
<source>as sweet and of grain: mind gluten</source>
<translation>ebenso süß und nach Getreide: Gluten beachten</translation>
</message>
<message>
<source>as sweet and strong, herbs in place of vanilla</source>
<translation>ebenso süß und stark, Kräuter statt Vanille</translation>
</message>
<message>
<source>as sweet and strong, with vanilla in front</source>
<translation>ebenso süß und stark, Vanille voran</translation>
</message>
<message>
<source>as sweet, caramel in place of orange; press an orange peel over it</source>
<translation>ebenso süß, Karamell statt Orange; drück eine Orangenschale darüber aus</translation>
</message>
<message>
<source>as sweet, drier and with less molasses</source>
<translation>ebenso süß, trockener und mit weniger Melasse</translation>
</message>
<message>
<source>as sweet, lighter and less of flowers</source>
<translation>ebenso süß, leichter und weniger blumig</translation>
</message>
<message>
<source>as sweet, orange in place of caramel</source>
<translation>ebenso süß, Orange statt Karamell</translation>
</message>
<message>
<source>as sweet, softer and with more molasses</source>
<translation>ebenso süß, weicher und mit mehr Melasse</translation>
</message>
<message>
<source>as sweet, stronger and full of flowers</source>
<translation>ebenso süß, stärker und voller Blüten</translation>
</message>
<message>
<source>as sweet, tasting of honey</source>
<translation>ebenso süß, schmeckt nach Honig</translation>
</message>
<message>
<source>as sweet, tasting of maple</source>
<translation>ebenso süß, schmeckt nach Ahorn</translation>
</message>
<message>
<source>as sweet, toffee in place of maple</source>
<translation>ebenso süß, Toffee statt Ahorn</translation>
</message>
<message>
<source>as sweet, with molasses</source>
<translation>ebenso süß, mit Melasse</translation>
</message>
<message>
<source>as sweet, with more fruit</source>
<translation>ebenso süß, mit mehr Frucht</translation>
</message>
<message>
<source>as sweet, with toffee</source>
<translation>ebenso süß, mit Toffee</translation>
</message>
<message>
<source>as sweet, with toffee and slower to dissolve</source>
<translation>ebenso süß, mit Toffee und langsamer löslich</translation>
</message>
<message>
<source>as sweet, without any honey</source>
<translation>ebenso süß, ganz ohne Honig</translation>
</message>
<message>
<source>as sweet, without the cucumber; crush two slices in the shaker</source>
<translation>ebenso süß, ohne die Gurke; drück zwei Scheiben im Shaker an</translation>
</message>
<message>
<source>as sweet, without the molasses</source>
<translation>ebenso süß, ohne die Melasse</translation>
</message>
<message>
<source>as sweet, without the note of agave</source>
<translation>ebenso süß, ohne die Agavennote</translation>
</message>
<message>
<source>as sweet, without the toffee</source>
<translation>ebenso süß, ohne das Toffee</translation>
</message>
<message>
<source>as thick and orange, without the bitter peel</source>
<translation>ebenso dick und orange, ohne die bittere Schale</translation>
</message>
<message>
<source>as thick and tropical</source>
<translation>ebenso dick und tropisch</translation>
</message>
<message>
<source>as thick and tropical, sharper</source>
<translation>ebenso dick und tropisch, säuerlicher</translation>
</message>
<message>
<source>as thick and white, less sharp; some lime helps</source>
<translation>ebenso dick und weiß, weniger säuerlich; etwas Limette hilft</translation>
</message>
<message>
<source>as thick and yellow, less tropical</source>
<translation>ebenso dick und gelb, weniger tropisch</translation>
</message>
<message>
<source>as thick, caramel in place of flowers</source>
<translation>ebenso dick, Karamell statt Blüten</translation>
</message>
<message>
<source>as thick, much milder</source>
<translation>ebenso dick, viel milder</translation>
</message>
<message>
<source>as thick, tasting of honey</source>
<translation>ebenso dick, schmeckt nach Honig</translation>
</message>
<message>
<source>as thin and crisp</source>
<translation>ebenso dünn und knusprig</translation>
</message>
<message>
<source>as thin and nutty: mind allergies</source>
<translation>ebenso dünn und nussig: Allergien beachten</translation>
</message>
<message>
<source>as thin, softer</source>
<translation>ebenso dünn, weicher</translation>
</message>
<message>
<source>as this system is set, {region}</source>
<translation>wie dieses System eingestellt ist, {region}</translation>
</message>
<message>
<source>as usual</source>
<translation>wie üblich</translation>
</message>
<message>
<source>as wild, from agave</source>
<translation>ebenso wild, aus Agave</translation>
</message>
<message>
<source>as wild, from another plant</source>
<translation>ebenso wild, aus anderer Pflanze</translation>
</message>
<message>
<source>as woody, with nut: mind allergies</source>
<translation>ebenso holzig, mit Nuss: Allergien beachten</translation>
</message>
<message>
<source>as written</source>
<translation>wie geschrieben</translation>
</message>
<message>
<source>as written {value}</source>
<translation>wie geschrieben {value}</translation>
</message>
<message>
<source>as yellow and soft</source>
<translation>ebenso gelb und weich</translation>
</message>
<message>
<source>asks for {words}</source>
<translation>verlangt {words}</translation>
</message>
<message>
<source>at least {strength:g} % vol</source>
<translation>mindestens {strength:g} % vol</translation>
</message>
<message>
<source>at {degrees} °C</source>
<translation>bei {degrees} °C</translation>
</message>
<message>
<source>at {path}</source>
<translation>bei {path}</translation>
</message>
<message>
<source>at {where}</source>
<translation>bei {where}</translation>
</message>
<message>
<source>back, not counted</source>
<translation>zurück, nicht gezählt</translation>
</message>
<message>
<source>backups</source>
<translation>Sicherungen</translation>
</message>
<message>
<source>balloon glass</source>
<translation>Ballonglas</translation>
</message>
<message>
<source>bar spoon</source>
<translation>Barlöffel</translation>
</message>
<message>
<source>barcode</source>
<translation>Strichcode</translation>
</message>
<message>
<source>bare copper</source>
<translation>blankes Kupfer</translation>
</message>
<message>
<source>barkeep cannot start</source>
<translation>barkeep kann nicht starten</translation>
</message>
<message>
<source>barkeep has a fault</source>
<translation>barkeep hat einen Fehler</translation>
</message>
<message>
<source>barkeep is now {version}.</source>
<translation>barkeep ist jetzt {version}.</translation>
</message>
<message>
<source>barkeep met a fault ({kind}), which is written in {log}.</source>
<translation>barkeep stieß auf einen Fehler ({kind}); er steht in {log}.</translation>
</message>
<message>
<source>barkeep’s own JSON</source>
<translation>JSON von barkeep</translation>
</message>
<message>
<source>basis</source>
<translation>Grundlage</translation>
</message>
<message>
<source>beer glass</source>
<translation>Bierglas</translation>
</message>
<message>
<source>before</source>
<translation>vor</translation>
</message>
<message>
<source>begin with + for more or − for less than the ledger says, such as +30 ml</source>
<translation>beginne mit + für mehr oder − für weniger, als der Verlauf sagt, etwa +30 ml</translation>
</message>
<message>
<source>below {degrees} °C</source>
<translation>unter {degrees} °C</translation>
</message>
<message>
<source>beside the bar</source>
<translation>neben der Bar</translation>
</message>
<message>
<source>beyond the doubt of {doubt}</source>
<translation>mehr als die Unsicherheit von {doubt}</translation>
</message>
<message>
<source>bitter and sweet too, orange before herbs</source>
<translation>auch bitter und süß, Orange vor Kräutern</translation>
</message>
<message>
<source>bitter orange too, a little lighter</source>
<translation>auch Bitterorange, etwas leichter</translation>
</message>
<message>
<source>bitter orange too, a little richer</source>
<translation>auch Bitterorange, etwas gehaltvoller</translation>
</message>
<message>
<source>bitter, fizzy citrus too, another fruit</source>
<translation>auch bittere Zitrusfrucht mit Kohlensäure, eine andere</translation>
</message>
<message>
<source>bitters bottle</source>
<translation>Bitterflasche</translation>
</message>
<message>
<source>black berry in place of red, sweeter</source>
<translation>schwarze Beere statt roter, süßer</translation>
</message>
<message>
<source>black tea too, with bergamot</source>
<translation>auch Schwarztee, mit Bergamotte</translation>
</message>
<message>
<source>black tea too, without the bergamot; a strip of lemon peel helps</source>
<translation>auch Schwarztee, ohne die Bergamotte; ein Streifen Zitronenschale hilft</translation>
</message>
<message>
<source>blended drinks</source>
<translation>Drinks aus dem Mixer</translation>
</message>
<message>
<source>blender</source>
<translation>Mixer</translation>
</message>
<message>
<source>blue</source>
<translation>blau</translation>
</message>
<message>
<source>body from oak in place of malt, and more juniper</source>
<translation>Körper aus Eiche statt Malz und mehr Wacholder</translation>
</message>
<message>
<source>bottle</source>
<translation>Flasche</translation>
</message>
<message>
<source>bottle with sloped shoulders</source>
<translation>Flasche mit abfallenden Schultern</translation>
</message>
<message>
<source>bottles</source>
<translation>Flaschen</translation>
</message>
<message>
<source>bottles bought</source>
<translation>gekaufte Flaschen</translation>
</message>
<message>
<source>bottles, what carries most first</source>
<translation>Flaschen, die wichtigste zuerst</translation>
</message>
<message>
<source>bought</source>
<translation>gekauft</translation>
</message>
<message>
<source>bowl</source>
<translation>Bowle</translation>
</message>
<message>
<source>bright citrus oil too, greener</source>
<translation>auch frisches Zitrusöl, grüner</translation>
</message>
<message>
<source>bright citrus oil too, less bitter</source>
<translation>auch frisches Zitrusöl, weniger bitter</translation>
</message>
<message>
<source>bright citrus oil too, more bitter</source>
<translation>auch frisches Zitrusöl, bitterer</translation>
</message>
<message>
<source>bright citrus oil too, softer</source>
<translation>auch frisches Zitrusöl, weicher</translation>
</message>
<message>
<source>bright green</source>
<translation>leuchtend grün</translation>
</message>
<message>
<source>brings in {brought} (allergen)</source>
<translation>bringt neu hinein: {brought} (Allergen)</translation>
</message>
<message>
<source>brought to the same acid, tasting of orange; hold back some of the syrup</source>
<translation>auf dieselbe Säure gebracht, schmeckt nach Orange; halte etwas Sirup zurück</translation>
</message>
<message>
<source>budget</source>
<translation>Budget</translation>
</message>
<message>
<source>built on</source>
<translation>aufgebaut auf</translation>
</message>
<message>
<source>burnt sugar in place of molasses</source>
<translation>gebrannter Zucker statt Melasse</translation>
</message>
<message>
<source>by eye</source>
<translation>nach Augenmaß</translation>
</message>
<message>
<source>by height</source>
<translation>nach Höhe</translation>
</message>
<message>
<source>by its other digits the last one is {expected}; type it again</source>
<translation>nach den anderen Ziffern ist die letzte {expected}; tipp ihn noch einmal</translation>
</message>
<message>
<source>by the height of the liquid</source>
<translation>nach der Höhe der Flüssigkeit</translation>
</message>
<message>
<source>by way of your own</source>
<translation>über deinen eigenen</translation>
</message>
<message>
<source>caffeine</source>
<translation>Koffein</translation>
</message>
<message>
<source>calamus or sassafras</source>
<translation>Kalmus oder Sassafras</translation>
</message>
<message>
<source>calvados = 30; absinthe = 45</source>
<translation>calvados = 30; absinthe = 45</translation>
</message>
<message>
<source>cane juice and oak too, drier</source>
<translation>auch Zuckerrohrsaft und Eiche, trockener</translation>
</message>
<message>
<source>cane juice too and stronger, so pour less</source>
<translation>auch Zuckerrohrsaft und stärker, darum weniger nehmen</translation>
</message>
<message>
<source>cane juice too, cleaner and less wild</source>
<translation>auch Zuckerrohrsaft, sauberer und weniger wild</translation>
</message>
<message>
<source>cane juice too, drier and stronger, so pour less</source>
<translation>auch Zuckerrohrsaft, trockener und stärker, darum weniger nehmen</translation>
</message>
<message>
<source>cane juice too, perhaps with oak</source>
<translation>auch Zuckerrohrsaft, vielleicht mit Eiche</translation>
</message>
<message>
<source>cane juice too, rounder and less dry</source>
<translation>auch Zuckerrohrsaft, runder und weniger trocken</translation>
</message>
<message>
<source>cane juice too, rounder and weaker, so pour a little more</source>
<translation>auch Zuckerrohrsaft, runder und schwächer, darum etwas mehr nehmen</translation>
</message>
<message>
<source>cane juice too, rounder and weaker, so pour more</source>
<translation>auch Zuckerrohrsaft, runder und schwächer, darum mehr nehmen</translation>
</message>
<message>
<source>cane juice too, weaker, with the taste of its wood</source>
<translation>auch Zuckerrohrsaft, schwächer, mit dem Geschmack seines Holzes</translation>
</message>
<message>
<source>cane juice too, wilder</source>
<translation>auch Zuckerrohrsaft, wilder</translation>
</message>
<message>
<source>cane juice too, with years of oak</source>
<translation>auch Zuckerrohrsaft, mit Jahren in Eiche</translation>
</message>
<message>
<source>cane juice, grassy, dry and stronger, so pour less</source>
<translation>Zuckerrohrsaft, grasig, trocken und stärker, darum weniger nehmen</translation>
</message>
<message>
<source>cane too, lighter and cleaner</source>
<translation>auch Zuckerrohr, leichter und sauberer</translation>
</message>
<message>
<source>cannot be reached</source>
<translation>ist gerade nicht zu erreichen</translation>
</message>
<message>
<source>cannot be read</source>
<translation>nicht lesbar</translation>
</message>
<message>
<source>caramel in place of orange; press an orange peel over it</source>
<translation>Karamell statt Orange; drück eine Orangenschale darüber aus</translation>
</message>
<message>
<source>caramel too and much denser, so pour less</source>
<translation>auch Karamell und viel dichter, darum weniger nehmen</translation>
</message>
<message>
<source>caraway and dill are the whole drink, and no other dry spirit has them</source>
<translation>Kümmel und Dill sind der ganze Drink, und kein anderer trockener Schnaps hat sie</translation>
</message>
<message>
<source>caraway in sugar is in no other liqueur</source>
<translation>Kümmel in Zucker ist in keinem anderen Likör</translation>
</message>
<message>
<source>carries nothing</source>
<translation>nichts hängt daran</translation>
</message>
<message>
<source>carries the tag</source>
<translation>trägt das Schlagwort</translation>
</message>
<message>
<source>celery</source>
<translation>Sellerie</translation>
</message>
<message>
<source>centilitres</source>
<translation>Zentiliter</translation>
</message>
<message>
<source>changed</source>
<translation>Änderung</translation>
</message>
<message>
<source>changed by you</source>
<translation>von dir geändert</translation>
</message>
<message>
<source>charcoal</source>
<translation>Aktivkohle</translation>
</message>
<message>
<source>charged siphon</source>
<translation>geladener Siphon</translation>
</message>
<message>
<source>cherry and spice too, with anise</source>
<translation>auch Kirsche und Würze, mit Anis</translation>
</message>
<message>
<source>cherry stone, flowers and dryness come from no other bottle; red cherry liqueurs and kirsch are something else</source>
<translation>Kirschkern, Blüten und Trockenheit kommen aus keiner anderen Flasche; rote Kirschliköre und Kirschwasser sind etwas anderes</translation>
</message>
<message>
<source>cherry too, sweeter and less tart: mind sulphites</source>
<translation>auch Kirsche, süßer und weniger säuerlich: Sulfite beachten</translation>
</message>
<message>
<source>chilli too, with cocoa</source>
<translation>auch Chili, mit Kakao</translation>
</message>
<message>
<source>chocolate too, thicker and brown; read its label for milk</source>
<translation>auch Schokolade, dicker und braun; lies auf dem Etikett, ob Milch darin ist</translation>
</message>
<message>
<source>chocolate too, thicker and darker; read its label for milk</source>
<translation>auch Schokolade, dicker und dunkler; lies auf dem Etikett, ob Milch darin ist</translation>
</message>
<message>
<source>chocolate too, thicker; read its label for milk</source>
<translation>auch Schokolade, dicker; lies auf dem Etikett, ob Milch darin ist</translation>
</message>
<message>
<source>chocolate without alcohol, sweeter and thick, so pour half</source>
<translation>Schokolade ohne Alkohol, süßer und dick, darum die Hälfte nehmen</translation>
</message>
<message>
<source>choose another name</source>
<translation>wähle einen anderen Namen</translation>
</message>
<message>
<source>cinchona bark</source>
<translation>Chinarinde</translation>
</message>
<message>
<source>cinnamon among other dark spice</source>
<translation>Zimt unter anderen dunklen Gewürzen</translation>
</message>
<message>
<source>citrus and sugar too, without the bitterness</source>
<translation>auch Zitrus und Zucker, ohne die Bitterkeit</translation>
</message>
<message>
<source>citrus and sugar too: mind sulphites</source>
<translation>auch Zitrus und Zucker: Sulfite beachten</translation>
</message>
<message>
<source>citrus oil too, more bitter</source>
<translation>auch Zitrusöl, bitterer</translation>
</message>
<message>
<source>citrus oil too, sharper</source>
<translation>auch Zitrusöl, spitzer</translation>
</message>
<message>
<source>citrus oil too, sweeter</source>
<translation>auch Zitrusöl, süßer</translation>
</message>
<message>
<source>citrus peel too, more bitter</source>
<translation>auch Zitrusschale, bitterer</translation>
</message>
<message>
<source>citrus peel too, rounder</source>
<translation>auch Zitrusschale, runder</translation>
</message>
<message>
<source>citrus peel too, sharper</source>
<translation>auch Zitrusschale, spitzer</translation>
</message>
<message>
<source>citrus peel too, sweeter on the nose</source>
<translation>auch Zitrusschale, süßer im Duft</translation>
</message>
<message>
<source>citrus peel too, sweeter on the nose and stronger, so pour less</source>
<translation>auch Zitrusschale, süßer im Duft und stärker, darum weniger nehmen</translation>
</message>
<message>
<source>citrus peel too, without the bitterness</source>
<translation>auch Zitrusschale, ohne die Bitterkeit</translation>
</message>
<message>
<source>citrus too, more bitter</source>
<translation>auch Zitrus, bitterer</translation>
</message>
<message>
<source>citrus too, sourer</source>
<translation>auch Zitrus, saurer</translation>
</message>
<message>
<source>citrus too, sweeter</source>
<translation>auch Zitrus, süßer</translation>
</message>
<message>
<source>citrus too, without the bitterness</source>
<translation>auch Zitrus, ohne die Bitterkeit</translation>
</message>
<message>
<source>classic</source>
<translation>Klassiker</translation>
</message>
<message>
<source>classics</source>
<translation>Klassiker</translation>
</message>
<message>
<source>clean but weaker and with a grain note, so pour more</source>
<translation>sauber, aber schwächer und mit einer Getreidenote, darum mehr nehmen</translation>
</message>
<message>
<source>clean where grass is meant</source>
<translation>sauber, wo Gras gemeint ist</translation>
</message>
<message>
<source>clean where grass is meant; a squeezed lime shell helps</source>
<translation>sauber, wo Gras gemeint ist; eine ausgedrückte Limettenhälfte hilft</translation>
</message>
<message>
<source>cleaner and much stronger, so pour less</source>
<translation>sauberer und viel stärker, darum weniger nehmen</translation>
</message>
<message>
<source>cleaner, without the grass</source>
<translation>sauberer, ohne das Gras</translation>
</message>
<message>
<source>clear</source>
<translation>klar</translation>
</message>
<message>
<source>clear grape spirit too, heavier with skins</source>
<translation>auch klarer Traubenbrand, schwerer von den Schalen</translation>
</message>
<message>
<source>clear grape spirit too, less perfumed</source>
<translation>auch klarer Traubenbrand, weniger duftend</translation>
</message>
<message>
<source>clear grape spirit too, more of muscat flowers</source>
<translation>auch klarer Traubenbrand, mehr Muskatblüten</translation>
</message>
<message>
<source>closeness</source>
<translation>Nähe</translation>
</message>
<message>
<source>clove among cinnamon and pepper</source>
<translation>Nelke zwischen Zimt und Pfeffer</translation>
</message>
<message>
<source>clove is the loudest part of it, so take more</source>
<translation>Nelke ist der lauteste Teil davon, darum mehr nehmen</translation>
</message>
<message>
<source>clove, pepper and rum in one dash are its own; a cinnamon liqueur lacks all three</source>
<translation>Nelke, Pfeffer und Rum in einem Dash hat nur er; einem Zimtlikör fehlen alle drei</translation>
</message>
<message>
<source>cocktail glass</source>
<translation>Cocktailglas</translation>
</message>
<message>
<source>cocoa too, without chilli and cinnamon</source>
<translation>auch Kakao, ohne Chili und Zimt</translation>
</message>
<message>
<source>coconut</source>
<translation>Kokosnuss</translation>
</message>
<message>
<source>coconut milk is fat and water has no taste</source>
<translation>Kokosmilch ist Fett, und Wasser hat keinen Geschmack</translation>
</message>
<message>
<source>coconut too, twice as strong and nearly dry, so pour half and add syrup</source>
<translation>auch Kokosnuss, doppelt so stark und fast trocken, darum die Hälfte nehmen und Sirup zugeben</translation>
</message>
<message>
<source>coffee brown</source>
<translation>kaffeebraun</translation>
</message>
<message>
<source>cold</source>
<translation>kalt</translation>
</message>
<message>
<source>collins glass</source>
<translation>Longdrinkglas</translation>
</message>
<message>
<source>colour and molasses in place of oak</source>
<translation>Farbe und Melasse statt Eiche</translation>
</message>
<message>
<source>colour, sugar and molasses are all missing</source>
<translation>Farbe, Zucker und Melasse fehlen alle</translation>
</message>
<message>
<source>column {number} is there twice</source>
<translation>Spalte {number} ist zweimal da</translation>
</message>
<message>
<source>common practice</source>
<translation>gängige Praxis</translation>
</message>
<message>
<source>common practice: crushed ice, taken as shaken</source>
<translation>Erfahrungswert: Crushed Ice, wie geschüttelt angenommen</translation>
</message>
<message>
<source>common practice: taken as stirred</source>
<translation>Erfahrungswert: wie gerührt angenommen</translation>
</message>
<message>
<source>confirm</source>
<translation>bestätigen</translation>
</message>
<message>
<source>copper</source>
<translation>kupferfarben</translation>
</message>
<message>
<source>coral</source>
<translation>korallenrot</translation>
</message>
<message>
<source>cordial glass</source>
<translation>Likörglas</translation>
</message>
<message>
<source>correction</source>
<translation>Berichtigung</translation>
</message>
<message>
<source>coumarin</source>
<translation>Cumarin</translation>
</message>
<message>
<source>count</source>
<translation>Zählung</translation>
</message>
<message>
<source>count</source>
<comment>of packages</comment>
<translation>Anzahl</translation>
</message>
<message>
<source>count it if something is left</source>
<translation>zähle sie, falls noch etwas darin ist</translation>
</message>
<message>
<source>count the shelf</source>
<translation>zähle das Regal</translation>
</message>
<message>
<source>counted</source>
<translation>gezählt</translation>
</message>
<message>
<source>counted exactly</source>
<translation>genau gezählt</translation>
</message>
<message>
<source>country</source>
<translation>Land</translation>
</message>
<message>
<source>counts</source>
<translation>Zählungen</translation>
</message>
<message>
<source>coupe</source>
<translation>Coupette</translation>
</message>
<message>
<source>cream</source>
<translation>cremefarben</translation>
</message>
<message>
<source>cream and spirit too, with chocolate in front</source>
<translation>auch Sahne und Alkohol, Schokolade voran</translation>
</message>
<message>
<source>cream and spirit too, with less chocolate</source>
<translation>auch Sahne und Alkohol, mit weniger Schokolade</translation>
</message>
<message>
<source>credit</source>
<translation>Urheber</translation>
</message>
<message>
<source>crushed</source>
<translation>Crushed Ice</translation>
</message>
<message>
<source>crushed ice</source>
<translation>Crushed Ice</translation>
</message>
<message>
<source>crustaceans</source>
<translation>Krebstiere</translation>
</message>
<message>
<source>cubes</source>
<translation>Eiswürfel</translation>
</message>
<message>
<source>currency</source>
<translation>Währung</translation>
</message>
<message>
<source>d MMMM yyyy</source>
<comment>how a field writes a day</comment>
<translation>d. MMMM yyyy</translation>
</message>
<message>
<source>damage or another program changed it ({fault}{more})</source>
<translation>ein Schaden oder ein anderes Programm hat sie verändert ({fault}{more})</translation>
</message>
<message>
<source>dark and stronger still, so pour less and keep it from flames</source>
<translation>dunkel und noch stärker, darum weniger nehmen und von Flammen fernhalten</translation>
</message>
<message>
<source>dark berry too, softer and not as sweet</source>
<translation>auch dunkle Beere, weicher und nicht so süß</translation>
</message>
<message>
<source>dark berry too, tarter and sweeter, so pour less</source>
<translation>auch dunkle Beere, säuerlicher und süßer, darum weniger nehmen</translation>
</message>
<message>
<source>dark red, blackcurrant where pomegranate is meant</source>
<translation>dunkelrot, Schwarze Johannisbeere, wo Granatapfel gemeint ist</translation>
</message>
<message>
<source>dark spice without cocoa and chilli</source>
<translation>dunkle Würze ohne Kakao und Chili</translation>
</message>
<message>
<source>dark stone fruit too</source>
<translation>auch dunkles Steinobst</translation>
</message>
<message>
<source>darker and drier</source>
<translation>dunkler und trockener</translation>
</message>
<message>
<source>darker and drier with roast</source>
<translation>dunkler und trockener, mit Röstung</translation>
</message>
<message>
<source>darker and more bitter</source>
<translation>dunkler und bitterer</translation>
</message>
<message>
<source>darker and rounder</source>
<translation>dunkler und runder</translation>
</message>
<message>
<source>darker, with burnt sugar and wood</source>
<translation>dunkler, mit gebranntem Zucker und Holz</translation>
</message>
<message>
<source>dash</source>
<translation>Dash</translation>
</message>
<message>
<source>day</source>
<translation>Datum</translation>
</message>
<message>
<source>days</source>
<translation>Tage</translation>
</message>
<message>
<source>deep brown</source>
<translation>tiefbraun</translation>
</message>
<message>
<source>deep red</source>
<translation>tiefrot</translation>
</message>
<message>
<source>denser and much milder, so pour less</source>
<translation>dichter und viel milder, darum weniger nehmen</translation>
</message>
<message>
<source>denser, as full, tasting of maple</source>
<translation>dichter, ebenso voll, schmeckt nach Ahorn</translation>
</message>
<message>
<source>denser, caramel in place of maple</source>
<translation>dichter, Karamell statt Ahorn</translation>
</message>
<message>
<source>denser, tasting of maple, so pour less</source>
<translation>dichter, schmeckt nach Ahorn, darum weniger nehmen</translation>
</message>
<message>
<source>denser, toffee in place of honey</source>
<translation>dichter, Toffee statt Honig</translation>
</message>
<message>
<source>denser, with a note of its own, so pour less</source>
<translation>dichter, mit eigener Note, darum weniger nehmen</translation>
</message>
<message>
<source>denser, with as much depth</source>
<translation>dichter, mit ebenso viel Tiefe</translation>
</message>
<message>
<source>denser, with caramel</source>
<translation>dichter, mit Karamell</translation>
</message>
<message>
<source>denser, with toffee and colour, so pour less</source>
<translation>dichter, mit Toffee und Farbe, darum weniger nehmen</translation>
</message>
<message>
<source>density</source>
<translation>Dichte</translation>
</message>
<message>
<source>density in g per ml</source>
<translation>Dichte in g je ml</translation>
</message>
<message>
<source>dispenser</source>
<translation>Zapfspender</translation>
</message>
<message>
<source>dissolves as fast; the starch in it clouds a clear drink</source>
<translation>löst sich ebenso schnell; die Stärke darin trübt einen klaren Drink</translation>
</message>
<message>
<source>done</source>
<comment>how a stop of a shoot stands</comment>
<translation>erledigt</translation>
</message>
<message>
<source>drier</source>
<translation>trockener</translation>
</message>
<message>
<source>drier and finer, without the raisins</source>
<translation>trockener und feiner, ohne die Rosinen</translation>
</message>
<message>
<source>drier and lighter in colour</source>
<translation>trockener und heller</translation>
</message>
<message>
<source>drier and more spice</source>
<translation>trockener und mehr Würze</translation>
</message>
<message>
<source>drier and rootier, so add half a barspoon of syrup</source>
<translation>trockener und wurzeliger, darum einen halben Barlöffel Sirup zugeben</translation>
</message>
<message>
<source>drier and rougher, without the raisins</source>
<translation>trockener und rauer, ohne die Rosinen</translation>
</message>
<message>
<source>drier and spicier</source>
<translation>trockener und würziger</translation>
</message>
<message>
<source>drier and spicier, as many a bar makes its Toronto; stronger, so pour a little less</source>
<translation>trockener und würziger, so machen viele Bars ihren Toronto; stärker, darum etwas weniger nehmen</translation>
</message>
<message>
<source>drier and stronger</source>
<translation>trockener und stärker</translation>
</message>
<message>
<source>drier and stronger, so pour less</source>
<translation>trockener und stärker, darum weniger nehmen</translation>
</message>
<message>
<source>drier and yeasty, finer than the drink needs</source>
<translation>trockener und hefig, feiner, als der Drink braucht</translation>
</message>
<message>
<source>drier, so add half a barspoon of syrup to each measure</source>
<translation>trockener, darum auf jedes Maß einen halben Barlöffel Sirup zugeben</translation>
</message>
<message>
<source>drier, spicier and a little weaker</source>
<translation>trockener, würziger und etwas schwächer</translation>
</message>
<message>
<source>drier, spicier and far stronger, so pour much less</source>
<translation>trockener, würziger und weit stärker, darum viel weniger nehmen</translation>
</message>
<message>
<source>drier, spicier and much stronger, so pour less</source>
<translation>trockener, würziger und viel stärker, darum weniger nehmen</translation>
</message>
<message>
<source>drier, spicier and stronger, so pour less</source>
<translation>trockener, würziger und stärker, darum weniger nehmen</translation>
</message>
<message>
<source>drier, with finer bubbles</source>
<translation>trockener, mit feineren Perlen</translation>
</message>
<message>
<source>drink</source>
<translation>Drink</translation>
</message>
<message>
<source>drink of {theme}</source>
<translation>Drink von {theme}</translation>
</message>
<message>
<source>drinking jar</source>
<translation>Trinkglas mit Henkel</translation>
</message>
<message>
<source>drinks</source>
<translation>Drinks</translation>
</message>
<message>
<source>drinks by how they scored</source>
<translation>Drinks nach ihrer Bewertung</translation>
</message>
<message>
<source>drinks lost without it, hollow: made worse; ▼ low</source>
<translation>ohne sie verlorene Drinks; hohl: schlechter; ▼ fast leer</translation>
</message>
<message>
<source>drinks makeable</source>
<translation>machbare Drinks</translation>
</message>
<message>
<source>drinks with sparkling wine</source>
<translation>Drinks mit Schaumwein</translation>
</message>
<message>
<source>driving</source>
<translation>Fahren</translation>
</message>
<message>
<source>dry and clear too, from a berry</source>
<translation>auch trocken und klar, aus einer Beere</translation>
</message>
<message>
<source>dry and clear too, from a stone fruit</source>
<translation>auch trocken und klar, aus Steinobst</translation>
</message>
<message>
<source>dry and grassy</source>
<translation>trocken und grasig</translation>
</message>
<message>
<source>dry and much stronger, so pour less and add some syrup</source>
<translation>trocken und viel stärker, darum weniger nehmen und etwas Sirup zugeben</translation>
</message>
<message>
<source>dry ice or nitrogen</source>
<translation>Trockeneis oder Stickstoff</translation>
</message>
<message>
<source>dry stirred drinks</source>
<translation>trockenen gerührten Drinks</translation>
</message>
<message>
<source>dry, but rooty where flowers are meant</source>
<translation>trocken, aber wurzelig, wo Blüten gemeint sind</translation>
</message>
<message>
<source>due</source>
<translation>fällig</translation>
</message>
<message>
<source>each carton is a blend of its own; mix two or three juices instead</source>
<translation>jeder Karton ist eine eigene Mischung; mische stattdessen zwei oder drei Säfte</translation>
</message>
<message>
<source>each is named once</source>
<translation>jede wird einmal genannt</translation>
</message>
<message>
<source>each sip is taken through the salt</source>
<translation>jeder Schluck geht durch das Salz</translation>
</message>
<message>
<source>each sip is taken through the sugar</source>
<translation>jeder Schluck geht durch den Zucker</translation>
</message>
<message>
<source>each stands in the running order once</source>
<translation>jeder steht einmal in der Reihenfolge</translation>
</message>
<message>
<source>earthy and herbal, from another plant</source>
<translation>erdig und kräuterig, aus anderer Pflanze</translation>
</message>
<message>
<source>egg</source>
<translation>Ei</translation>
</message>
<message>
<source>egg yolk, sugar and spirit have to be cooked together</source>
<translation>Eigelb, Zucker und Alkohol müssen zusammen gekocht werden</translation>
</message>
<message>
<source>empty</source>
<translation>leer</translation>
</message>
<message>
<source>empty</source>
<comment>a weight of a bottle</comment>
<translation>leer</translation>
</message>
<message>
<source>en</source>
<comment>the code of the language that is spoken</comment>
<translation>de</translation>
</message>
<message>
<source>en</source>
<comment>the language in which months are named</comment>
<translation>de</translation>
</message>
<message>
<source>energy drink</source>
<translation>Energydrink</translation>
</message>
<message>
<source>every drink alike</source>
<translation>alle Drinks gleich</translation>
</message>
<message>
<source>exactly</source>
<translation>genau</translation>
</message>
<message>
<source>exactly: 315 ml, 812 g on a scale, 11.5 cm high</source>
<translation>genau: 315 ml, 812 g auf der Waage, 11.5 cm hoch</translation>
</message>
<message>
<source>expected</source>
<translation>erwartet</translation>
</message>
<message>
<source>family</source>
<translation>Familie</translation>
</message>
<message>
<source>far heavier, with burnt sugar and wood</source>
<translation>weit schwerer, mit gebranntem Zucker und Holz</translation>
</message>
<message>
<source>far heavier, with ripe fruit and oak</source>
<translation>weit schwerer, mit reifer Frucht und Eiche</translation>
</message>
<message>
<source>far lighter, with little of the ripe fruit</source>
<translation>weit leichter, mit wenig reifer Frucht</translation>
</message>
<message>
<source>far more juniper and no malt</source>
<translation>weit mehr Wacholder und kein Malz</translation>
</message>
<message>
<source>far stronger and without its touch of sugar, so pour less than half</source>
<translation>weit stärker und ohne seinen Hauch Zucker, darum weniger als die Hälfte nehmen</translation>
</message>
<message>
<source>fat-washed</source>
<translation>mit Fett aromatisiert</translation>
</message>
<message>
<source>fermented in its bottle too, finer than the drink needs</source>
<translation>auch in der Flasche vergoren, feiner, als der Drink braucht</translation>
</message>
<message>
<source>fermented in its bottle too, plainer</source>
<translation>auch in der Flasche vergoren, schlichter</translation>
</message>
<message>
<source>file</source>
<translation>Datei</translation>
</message>
<message>
<source>files</source>
<translation>Dateien</translation>
</message>
<message>
<source>filmed {day}</source>
<translation>gedreht am {day}</translation>
</message>
<message>
<source>filter</source>
<translation>Filter</translation>
</message>
<message>
<source>filters</source>
<translation>Filter</translation>
</message>
<message>
<source>fine strainer</source>
<translation>Feinsieb</translation>
</message>
<message>
<source>finer, without the sweet new oak</source>
<translation>feiner, ohne die süße neue Eiche</translation>
</message>
<message>
<source>fish</source>
<translation>Fisch</translation>
</message>
<message>
<source>five</source>
<translation>fünf</translation>
</message>
<message>
<source>fizzy and sour too, lemon in place of yuzu</source>
<translation>auch spritzig und sauer, Zitrone statt Yuzu</translation>
</message>
<message>
<source>fizzy citrus too, lemon and lime in place of orange</source>
<translation>auch Zitrus mit Kohlensäure, Zitrone und Limette statt Orange</translation>
</message>
<message>
<source>fizzy citrus too, sweeter and without the bitterness</source>
<translation>auch Zitrus mit Kohlensäure, süßer und ohne die Bitterkeit</translation>
</message>
<message>
<source>fizzy citrus too, without the bitterness</source>
<translation>auch Zitrus mit Kohlensäure, ohne die Bitterkeit</translation>
</message>
<message>
<source>fizzy lemon too, bitter</source>
<translation>auch Zitrone mit Kohlensäure, bitter</translation>
</message>
<message>
<source>fizzy lemon too, sweeter</source>
<translation>auch Zitrone mit Kohlensäure, süßer</translation>
</message>
<message>
<source>fizzy lemon too, tarter and without the lime</source>
<translation>auch Zitrone mit Kohlensäure, säuerlicher und ohne die Limette</translation>
</message>
<message>
<source>fizzy lemon without the bitterness</source>
<translation>Zitrone mit Kohlensäure ohne die Bitterkeit</translation>
</message>
<message>
<source>flame</source>
<translation>Feuer</translation>
</message>
<message>
<source>flash points of ethanol and water</source>
<translation>Flammpunkte von Ethanol und Wasser</translation>
</message>
<message>
<source>flat flask</source>
<translation>flache Taschenflasche</translation>
</message>
<message>
<source>flat, wilted or dried out</source>
<translation>schal, welk oder ausgetrocknet</translation>
</message>
<message>
<source>flute</source>
<translation>Flöte</translation>
</message>
<message>
<source>foam</source>
<translation>Schaum</translation>
</message>
<message>
<source>foams as well without egg, thinner and with a faint taste of peas</source>
<translation>schäumt ohne Ei ebenso gut, dünner und mit einem Hauch von Erbsen</translation>
</message>
<message>
<source>foams as well without egg: some 15 ml for each ml</source>
<translation>schäumt ohne Ei ebenso gut: rund 15 ml je ml</translation>
</message>
<message>
<source>for a block of ice and the ladle</source>
<translation>für einen Eisblock und die Kelle</translation>
</message>
<message>
<source>for ice</source>
<translation>für Eis</translation>
</message>
<message>
<source>for steam and foam; never over three quarters of what its maker allows</source>
<translation>für Dampf und Schaum; nie mehr als drei Viertel dessen, was der Hersteller erlaubt</translation>
</message>
<message>
<source>for the glass</source>
<translation>fürs Glas</translation>
</message>
<message>
<source>for the shoot {named} alone</source>
<translation>nur für den Dreh {named}</translation>
</message>
<message>
<source>for what swells in the cold, and to pour</source>
<translation>für das, was sich in der Kälte ausdehnt, und zum Gießen</translation>
</message>
<message>
<source>for {budget}</source>
<translation>für {budget}</translation>
</message>
<message>
<source>four</source>
<translation>vier</translation>
</message>
<message>
<source>four grams, a level teaspoon, with toffee</source>
<translation>vier Gramm, ein gestrichener Teelöffel, mit Toffee</translation>
</message>
<message>
<source>freezer temperature</source>
<translation>Temperatur des Gefrierfachs</translation>
</message>
<message>
<source>freezes</source>
<comment>a drink in a freezer</comment>
<translation>gefriert</translation>
</message>
<message>
<source>freezes</source>
<comment>in a freezer it …</comment>
<translation>gefriert es</translation>
</message>
<message>
<source>fresh ice</source>
<translation>frisches Eis</translation>
</message>
<message>
<source>from</source>
<translation>von</translation>
</message>
<message>
<source>from memory: Arnold, Liquid Intelligence, 2014, p. 123; 120 g of ice, about 10 s</source>
<translation>aus dem Gedächtnis: Arnold, Liquid Intelligence, 2014, S. 123; 120 g Eis, etwa 10 s</translation>
</message>
<message>
<source>from memory: Arnold, Liquid Intelligence, 2014, p. 123; 120 g of small cubes, about 15 s</source>
<translation>aus dem Gedächtnis: Arnold, Liquid Intelligence, 2014, S. 123; 120 g kleine Würfel, etwa 15 s</translation>
</message>
<message>
<source>from memory: Arnold, Liquid Intelligence, 2014, pp. 125-126</source>
<translation>aus dem Gedächtnis: Arnold, Liquid Intelligence, 2014, S. 125–126</translation>
</message>
<message>
<source>from memory: Arnold, Liquid Intelligence, 2014, pp. 125-126; built on one large piece of ice</source>
<translation>aus dem Gedächtnis: Arnold, Liquid Intelligence, 2014, S. 125–126; auf einem großen Stück Eis gebaut</translation>
</message>
<message>
<source>from strength and sugar</source>
<translation>aus Alkoholgehalt und Zucker</translation>
</message>
<message>
<source>from the freezer</source>
<translation>aus dem Gefrierschrank</translation>
</message>
<message>
<source>from {titles}</source>
<translation>aus {titles}</translation>
</message>
<message>
<source>fruit in place of nuts</source>
<translation>Frucht statt Nüssen</translation>
</message>
<message>
<source>fruit, sugar and vinegar too, of a paler fruit</source>
<translation>auch Frucht, Zucker und Essig, von einer helleren Frucht</translation>
</message>
<message>
<source>fruit, sugar and vinegar too, of red berries</source>
<translation>auch Frucht, Zucker und Essig, von roten Beeren</translation>
</message>
<message>
<source>fruitier and softer</source>
<translation>fruchtiger und weicher</translation>
</message>
<message>
<source>fruitier and softer, with larger bubbles</source>
<translation>fruchtiger und weicher, mit größeren Perlen</translation>
</message>
<message>
<source>full</source>
<translation>voll</translation>
</message>
<message>
<source>full</source>
<comment>a weight of a bottle</comment>
<translation>voll</translation>
</message>
<message>
<source>fuller, and dearer than the drink needs</source>
<translation>voller und teurer, als der Drink braucht</translation>
</message>
<message>
<source>g per litre</source>
<translation>g je Liter</translation>
</message>
<message>
<source>g/l acid</source>
<translation>g/l Säure</translation>
</message>
<message>
<source>g/l of acid</source>
<translation>g/l Säure</translation>
</message>
<message>
<source>g/l of sugar</source>
<translation>g/l Zucker</translation>
</message>
<message>
<source>g/l sugar</source>
<translation>g/l Zucker</translation>
</message>
<message>
<source>garnish</source>
<translation>Garnitur</translation>
</message>
<message>
<source>gas under pressure</source>
<translation>Gas unter Druck</translation>
</message>
<message>
<source>gin with no style on its label is mostly made in the London manner</source>
<translation>Gin ohne Stil auf dem Etikett ist meist nach Londoner Art gemacht</translation>
</message>
<message>
<source>ginger without lime and clove</source>
<translation>Ingwer ohne Limette und Nelke</translation>
</message>
<message>
<source>ginger, sweeter and twice as strong, so pour less</source>
<translation>Ingwer, süßer und doppelt so stark, darum weniger nehmen</translation>
</message>
<message>
<source>give it as PGPASSWORD, in the file ~/.pgpass or in the address</source>
<translation>gib es als PGPASSWORD, in der Datei ~/.pgpass oder in der Adresse an</translation>
</message>
<message>
<source>glass</source>
<translation>Glas</translation>
</message>
<message>
<source>glasses</source>
<translation>Gläser</translation>
</message>
<message>
<source>gluten</source>
<translation>Gluten</translation>
</message>
<message>
<source>goblet</source>
<translation>Pokal</translation>
</message>
<message>
<source>gold</source>
<translation>gold</translation>
</message>
<message>
<source>grain and a malty body in place of the oak</source>
<translation>Korn und malziger Körper statt der Eiche</translation>
</message>
<message>
<source>grape and oak too, mostly plainer</source>
<translation>auch Traube und Eiche, meist schlichter</translation>
</message>
<message>
<source>grape and oak too, rougher and fuller</source>
<translation>auch Traube und Eiche, rauer und voller</translation>
</message>
<message>
<source>grape and oak too, smoother</source>
<translation>auch Traube und Eiche, glatter</translation>
</message>
<message>
<source>grape and oak too, without the skins</source>
<translation>auch Traube und Eiche, ohne die Schalen</translation>
</message>
<message>
<source>grape without oak too, earthier and less flowery</source>
<translation>auch Traube ohne Eiche, erdiger und weniger blumig</translation>
</message>
<message>
<source>grape without oak too, flowery in place of earthy</source>
<translation>auch Traube ohne Eiche, blumig statt erdig</translation>
</message>
<message>
<source>grape, but without any oak</source>
<translation>Traube, aber ganz ohne Eiche</translation>
</message>
<message>
<source>grapefruit and medicines</source>
<translation>Grapefruit und Medikamente</translation>
</message>
<message>
<source>grassy and a little raw, clear all the same</source>
<translation>grasig und etwas rau, aber ebenso klar</translation>
</message>
<message>
<source>grassy and dry, so only where lime leads</source>
<translation>grasig und trocken, darum nur, wo Limette führt</translation>
</message>
<message>
<source>grassy and raw where most rum is round</source>
<translation>grasig und rau, wo der meiste Rum rund ist</translation>
</message>
<message>
<source>grassy, dry and stronger, so pour less</source>
<translation>grasig, trocken und stärker, darum weniger nehmen</translation>
</message>
<message>
<source>grater</source>
<translation>Reibe</translation>
</message>
<message>
<source>green</source>
<translation>grün</translation>
</message>
<message>
<source>green tea too, with a flower</source>
<translation>auch grüner Tee, mit einer Blüte</translation>
</message>
<message>
<source>ground coffee does not dissolve; use brewed coffee and less water instead</source>
<translation>gemahlener Kaffee löst sich nicht; nimm stattdessen gebrühten Kaffee und weniger Wasser</translation>
</message>
<message>
<source>guessed, nobody looked</source>
<translation>geschätzt, niemand hat nachgesehen</translation>
</message>
<message>
<source>half an hour before</source>
<translation>eine halbe Stunde vorher</translation>
</message>
<message>
<source>half as strong again and heavier, so pour much less</source>
<translation>um die Hälfte stärker und schwerer, darum viel weniger nehmen</translation>
</message>
<message>
<source>half as strong again, so pour much less</source>
<translation>um die Hälfte stärker, darum viel weniger nehmen</translation>
</message>
<message>
<source>half of the fat, and it does not whip</source>
<translation>die Hälfte des Fetts, und sie lässt sich nicht schlagen</translation>
</message>
<message>
<source>hardly any fat, so the drink is thin</source>
<translation>kaum Fett, darum ist der Drink dünn</translation>
</message>
<message>
<source>has a line of rum, or of anything that is a rum</source>
<translation>hat eine Zeile mit Rum oder mit etwas, das ein Rum ist</translation>
</message>
<message>
<source>has both words in its name, ingredients, glass or tags</source>
<translation>hat beide Wörter im Namen, in Zutaten, Glas oder Schlagworten</translation>
</message>
<message>
<source>has no such line and carries no such allergen</source>
<translation>hat keine solche Zeile und kein solches Allergen</translation>
</message>
<message>
<source>has not, and carries none where that is an allergen</source>
<translation>hat das Wort nicht, und auch nicht das Allergen, wo es eines ist</translation>
</message>
<message>
<source>has these words in a row</source>
<translation>hat diese Wörter nacheinander</translation>
</message>
<message>
<source>headings: {headings}</source>
<translation>Überschriften: {headings}</translation>
</message>
<message>
<source>heatproof cup</source>
<translation>hitzefeste Tasse</translation>
</message>
<message>
<source>heatproof glass</source>
<translation>hitzefestes Glas</translation>
</message>
<message>
<source>heatproof jug</source>
<translation>hitzefester Krug</translation>
</message>
<message>
<source>heatproof mug</source>
<translation>hitzefester Becher</translation>
</message>
<message>
<source>heavier and sweeter</source>
<translation>schwerer und süßer</translation>
</message>
<message>
<source>heavier, with much more oak</source>
<translation>schwerer, mit viel mehr Eiche</translation>
</message>
<message>
<source>heavier, with much more oak, and stronger, so pour less</source>
<translation>schwerer, mit viel mehr Eiche, und stärker, darum weniger nehmen</translation>
</message>
<message>
<source>heavier, with sweet new oak</source>
<translation>schwerer, mit süßer neuer Eiche</translation>
</message>
<message>
<source>heavier, with sweet new oak, and stronger, so pour less</source>
<translation>schwerer, mit süßer neuer Eiche, und stärker, darum weniger nehmen</translation>
</message>
<message>
<source>heavier, without the vanilla</source>
<translation>schwerer, ohne die Vanille</translation>
</message>
<message>
<source>heavy with ripe fruit where a light rum is meant</source>
<translation>schwer von reifer Frucht, wo ein leichter Rum gemeint ist</translation>
</message>
<message>
<source>herbal and much sweeter, so pour less</source>
<translation>kräuterig und viel süßer, darum weniger nehmen</translation>
</message>
<message>
<source>herbal too, stronger, so pour less</source>
<translation>auch kräuterig, stärker, darum weniger nehmen</translation>
</message>
<message>
<source>herbs and bitterness too, drier and more spice</source>
<translation>auch Kräuter und Bitterkeit, trockener und mehr Würze</translation>
</message>
<message>
<source>herbs and bitterness, each in its own measure</source>
<translation>Kräuter und Bitterkeit, jeder auf seine Weise</translation>
</message>
<message>
<source>herbs and honey too, fresher</source>
<translation>auch Kräuter und Honig, frischer</translation>
</message>
<message>
<source>herbs and honey too, on brandy</source>
<translation>auch Kräuter und Honig, auf Brandy</translation>
</message>
<message>
<source>herbs and honey too, on brandy and rounder</source>
<translation>auch Kräuter und Honig, auf Brandy und runder</translation>
</message>
<message>
<source>herbs and honey too, on whisky</source>
<translation>auch Kräuter und Honig, auf Whisky</translation>
</message>
<message>
<source>herbs in oil</source>
<translation>Kräuter in Öl</translation>
</message>
<message>
<source>herbs too, drier and stronger</source>
<translation>auch Kräuter, trockener und stärker</translation>
</message>
<message>
<source>herbs too, sweeter and weaker</source>
<translation>auch Kräuter, süßer und schwächer</translation>
</message>
<message>
<source>herbs without the smoke</source>
<translation>Kräuter ohne den Rauch</translation>
</message>
<message>
<source>highball glass</source>
<translation>Longdrinkglas</translation>
</message>
<message>
<source>home distilling</source>
<translation>Brennen zu Hause</translation>
</message>
<message>
<source>honey too, perhaps without whisky</source>
<translation>auch Honig, vielleicht ohne Whisky</translation>
</message>
<message>
<source>hops in place of nuts and malt</source>
<translation>Hopfen statt Nüssen und Malz</translation>
</message>
<message>
<source>hot</source>
<translation>heiß</translation>
</message>
<message>
<source>hot {names} melts more ice than the formula knows of; twice the doubt</source>
<translation>heiß schmilzt {names} mehr Eis, als die Formel kennt; die doppelte Unsicherheit</translation>
</message>
<message>
<source>house</source>
<translation>Hausmarke</translation>
</message>
<message>
<source>house pour</source>
<translation>Hausmarke</translation>
</message>
<message>
<source>how many {units}? {examples}</source>
<translation>wie viele {units}? {examples}</translation>
</message>
<message>
<source>how much its amount comes to is not known</source>
<translation>wie viel die Menge ausmacht, ist nicht bekannt</translation>
</message>
<message>
<source>how much of each is this?</source>
<translation>wie viel ist das von jedem?</translation>
</message>
<message>
<source>hurricane glass</source>
<translation>Hurricaneglas</translation>
</message>
<message>
<source>ice</source>
<translation>Eis</translation>
</message>
<message>
<source>ice cubes</source>
<translation>Eiswürfel</translation>
</message>
<message>
<source>ice in cubes</source>
<translation>Eiswürfel</translation>
</message>
<message>
<source>image of a step</source>
<translation>Bild eines Schritts</translation>
</message>
<message>
<source>imperial fluid ounce</source>
<translation>britische Flüssigunze</translation>
</message>
<message>
<source>in all as expected</source>
<translation>insgesamt wie erwartet</translation>
</message>
<message>
<source>in all {amount} less than expected</source>
<translation>insgesamt {amount} weniger als erwartet</translation>
</message>
<message>
<source>in all {amount} more than expected</source>
<translation>insgesamt {amount} mehr als erwartet</translation>
</message>
<message>
<source>in place of what ice would give</source>
<translation>anstelle dessen, was Eis geben würde</translation>
</message>
<message>
<source>in the United States 23 USC 158</source>
<translation>in den Vereinigten Staaten 23 USC 158</translation>
</message>
<message>
<source>in the bar</source>
<translation>in der Bar</translation>
</message>
<message>
<source>ingredient</source>
<translation>Zutat</translation>
</message>
<message>
<source>ingredient of your own</source>
<translation>eigene Zutat</translation>
</message>
<message>
<source>ingredient of yours</source>
<translation>eigene Zutat</translation>
</message>
<message>
<source>ingredient {number} of {recipe}</source>
<translation>Zutat {number} von {recipe}</translation>
</message>
<message>
<source>ingredient, {family}</source>
<translation>Zutat, {family}</translation>
</message>
<message>
<source>ingredients</source>
<translation>Zutaten</translation>
</message>
<message>
<source>ingredients of your own</source>
<translation>eigene Zutaten</translation>
</message>
<message>
<source>input</source>
<translation>Zutat</translation>
</message>
<message>
<source>inputs</source>
<translation>Zutaten</translation>
</message>
<message>
<source>is built on gin, or on anything that is a gin</source>
<translation>baut auf Gin auf oder auf etwas, das ein Gin ist</translation>
</message>
<message>
<source>is filmed in the next shoot</source>
<translation>wird im nächsten Dreh gefilmt</translation>
</message>
<message>
<source>is in use by another program</source>
<translation>wird gerade von einem anderen Programm benutzt</translation>
</message>
<message>
<source>is one of the owner's, came with barkeep</source>
<translation>ist ein eigenes, kam mit barkeep</translation>
</message>
<message>
<source>is that strong when served, in % vol (or proof); 20 is 19 to 21</source>
<translation>ist im Glas so stark, in % vol (oder proof); 20 ist 19 bis 21</translation>
</message>
<message>
<source>is there twice</source>
<translation>kommt doppelt vor</translation>
</message>
<message>
<source>is this of one {fruit}, or likely “{line}”?</source>
<translation>ist das von einem Stück ({fruit}), oder wohl „{line}“?</translation>
</message>
<message>
<source>is under 0.5, from there to 12, from 12 to 20, from 20 % vol on</source>
<translation>ist unter 0,5, von da bis 12, von 12 bis 20, ab 20 % vol</translation>
</message>
<message>
<source>is “{left}” what is left? “{size}” is taken for its size</source>
<translation>ist „{left}“ das, was noch da ist? „{size}“ gilt als Größe</translation>
</message>
<message>
<source>it adds or takes away an amount</source>
<translation>sie fügt eine Menge hinzu oder zieht eine ab</translation>
</message>
<message>
<source>it cannot be opened</source>
<translation>sie lässt sich nicht öffnen</translation>
</message>
<message>
<source>it cannot be read</source>
<translation>sie lässt sich nicht lesen</translation>
</message>
<message>
<source>it counts as always there and is never bought</source>
<translation>es gilt als immer da und wird nie gekauft</translation>
</message>
<message>
<source>it defines entities of its own, which may be endless</source>
<translation>sie legt eigene Entitäten fest, die endlos sein können</translation>
</message>
<message>
<source>it does not answer</source>
<translation>er antwortet nicht</translation>
</message>
<message>
<source>it does not keep once mixed: add it in the last hour or by the glass</source>
<translation>hält gemischt nicht: in der letzten Stunde oder erst im Glas zugeben</translation>
</message>
<message>
<source>it gives no amount</source>
<translation>sie nennt keine Menge</translation>
</message>
<message>
<source>it has bubbles: add it as it is served</source>
<translation>sprudelt: erst beim Servieren zugeben</translation>
</message>
<message>
<source>it has changed since it was compared; look at the file again</source>
<translation>es hat sich seit dem Vergleich geändert; sieh dir die Datei noch einmal an</translation>
</message>
<message>
<source>it has more than {most:,} characters</source>
<translation>sie hat mehr als {most:,} Zeichen</translation>
</message>
<message>
<source>it has no cocoa in it but the fat, and no other chocolate is white</source>
<translation>vom Kakao ist nur das Fett darin, und keine andere Schokolade ist weiß</translation>
</message>
<message>
<source>it has no name</source>
<translation>es hat keinen Namen</translation>
</message>
<message>
<source>it has {n} digits, and the number under a barcode has 8, 12, 13 or 14</source>
<translation>er hat {n} Ziffern, und die Zahl unter einem Strichcode hat 8, 12, 13 oder 14</translation>
</message>
<message>
<source>it holds a whole bar and no list of specs; {do}</source>
<translation>sie enthält eine ganze Bar und keine Liste von Rezepten; {do}</translation>
</message>
<message>
<source>it holds cream, milk, egg or coconut, and strength and sugar say nothing of those</source>
<translation>sie enthält Sahne, Milch, Ei oder Kokos, und über die sagen Alkoholgehalt und Zucker nichts</translation>
</message>
<message>
<source>it holds more than 0 and up to {most}</source>
<translation>es fasst mehr als 0 und bis zu {most}</translation>
</message>
<message>
<source>it holds more than {most:,} recipes</source>
<translation>sie enthält mehr als {most:,} Rezepte</translation>
</message>
<message>
<source>it holds nothing</source>
<translation>er fasst nichts</translation>
</message>
<message>
<source>it holds one volume, not a range</source>
<translation>es fasst ein Volumen, keinen Bereich</translation>
</message>
<message>
<source>it is 0 g/l or more</source>
<translation>möglich sind 0 g/l oder mehr</translation>
</message>
<message>
<source>it is 0 to 100 % vol</source>
<translation>möglich sind 0 bis 100 % vol</translation>
</message>
<message>
<source>it is 0 to {densest:,.0f} g/l</source>
<translation>möglich sind 0 bis {densest:,.0f} g/l</translation>
</message>
<message>
<source>it is 0 to {most:,} days</source>
<translation>erlaubt sind 0 bis {most:,} Tage</translation>
</message>
<message>
<source>it is 0 to {most:.0f}</source>
<translation>erlaubt ist 0 bis {most:.0f}</translation>
</message>
<message>
<source>it is 0 to {most}</source>
<translation>erlaubt ist 0 bis {most}</translation>
</message>
<message>
<source>it is 1 to {most}</source>
<translation>erlaubt ist 1 bis {most}</translation>
</message>
<message>
<source>it is UTF-16 text that breaks off or is damaged</source>
<translation>es ist UTF-16-Text, der abbricht oder beschädigt ist</translation>
</message>
<message>
<source>it is a bar or another SQLite file; {another}</source>
<translation>es ist eine Bar oder eine andere SQLite-Datei; {another}</translation>
</message>
<message>
<source>it is a classic that barkeep brings along; keep it, or add theirs under a name</source>
<translation>es ist ein Klassiker, den barkeep mitbringt; behalte ihn oder füge das andere unter einem Namen hinzu</translation>
</message>
<message>
<source>it is a code of three capital letters, such as EUR</source>
<translation>gemeint ist ein Kürzel aus drei Großbuchstaben, etwa EUR</translation>
</message>
<message>
<source>it is a folder</source>
<translation>es ist ein Ordner</translation>
</message>
<message>
<source>it is a garnish</source>
<translation>sie ist eine Garnitur</translation>
</message>
<message>
<source>it is a kind of {kind_of}</source>
<translation>es ist eine Art {kind_of}</translation>
</message>
<message>
<source>it is a kind of {wanted} and is poured for it anyway</source>
<translation>es ist eine Art {wanted} und wird ohnehin dafür genommen</translation>
</message>
<message>
<source>it is a number such as 4 or 3.5</source>
<translation>es ist eine Zahl wie 4 oder 3,5</translation>
</message>
<message>
<source>it is a number such as {example}</source>
<translation>es ist eine Zahl wie {example}</translation>
</message>
<message>
<source>it is a unit already</source>
<translation>das ist schon eine Einheit</translation>
</message>
<message>
<source>it is a whole number of days, 1 to {most:,}</source>
<translation>gemeint ist eine ganze Zahl von Tagen, 1 bis {most:,}</translation>
</message>
<message>
<source>it is a whole number of days, such as 30</source>
<translation>es ist eine ganze Zahl von Tagen, etwa 30</translation>
</message>
<message>
<source>it is a whole number of pieces</source>
<translation>gemeint ist eine ganze Zahl von Stücken</translation>
</message>
<message>
<source>it is all scent of ripe pear, and no other dry fruit spirit comes near it</source>
<translation>er ist ganz Duft reifer Birne, und kein anderer trockener Obstbrand kommt ihm nahe</translation>
</message>
<message>
<source>it is almost only scent and water, and other juices are neither</source>
<translation>er ist fast nur Duft und Wasser, und andere Säfte sind keines von beiden</translation>
</message>
<message>
<source>it is also called {called}</source>
<translation>es heißt auch {called}</translation>
</message>
<message>
<source>it is always there</source>
<translation>das ist immer da</translation>
</message>
<message>
<source>it is as sour as it is sweet, and no syrup is both</source>
<translation>er ist so sauer wie süß, und kein Sirup ist beides</translation>
</message>
<message>
<source>it is as written, oz, ml, cl or parts</source>
<translation>möglich sind as written, oz, ml, cl oder parts</translation>
</message>
<message>
<source>it is called so</source>
<translation>es heißt so</translation>
</message>
<message>
<source>it is called “{name}” now</source>
<translation>es heißt jetzt „{name}“</translation>
</message>
<message>
<source>it is counted in {unit} by {users}</source>
<translation>in {unit} wird es gezählt durch: {users}</translation>
</message>
<message>
<source>it is damaged</source>
<translation>sie ist beschädigt</translation>
</message>
<message>
<source>it is damaged ({faults})</source>
<translation>sie ist beschädigt ({faults})</translation>
</message>
<message>
<source>it is damaged ({fault}{more})</source>
<translation>sie ist beschädigt ({fault}{more})</translation>
</message>
<message>
<source>it is empty</source>
<translation>sie ist leer</translation>
</message>
<message>
<source>it is empty (0 bytes)</source>
<translation>sie ist leer (0 Bytes)</translation>
</message>
<message>
<source>it is empty, though other bars are beside it</source>
<translation>sie ist leer, obwohl andere Bars daneben liegen</translation>
</message>
<message>
<source>it is empty, though there are backups of it</source>
<translation>sie ist leer, obwohl es Sicherungen von ihr gibt</translation>
</message>
<message>
<source>it is fermented honey, and honey let down with wine tastes of neither</source>
<translation>er ist vergorener Honig, und mit Wein verdünnter Honig schmeckt nach keinem von beiden</translation>
</message>
<message>
<source>it is filmed</source>
<translation>er ist gedreht</translation>
</message>
<message>
<source>it is gone, though other bars are beside it</source>
<translation>sie ist verschwunden, obwohl andere Bars daneben liegen</translation>
</message>
<message>
<source>it is in the bar</source>
<translation>es ist in der Bar</translation>
</message>
<message>
<source>it is kept as if nothing had been said there</source>
<translation>es bleibt, als wäre dort nichts gesagt worden</translation>
</message>
<message>
<source>it is made here, not bought</source>
<translation>es wird hier gemacht, nicht gekauft</translation>
</message>
<message>
<source>it is missing</source>
<translation>es fehlt</translation>
</message>
<message>
<source>it is ml, g or each</source>
<translation>möglich sind ml, g oder each</translation>
</message>
<message>
<source>it is more than 0</source>
<translation>es ist mehr als 0</translation>
</message>
<message>
<source>it is more than 0 and at most 1</source>
<translation>es ist mehr als 0 und höchstens 1</translation>
</message>
<message>
<source>it is more than 0 and at most {most:.0f}</source>
<translation>möglich ist mehr als 0 und höchstens {most:.0f}</translation>
</message>
<message>
<source>it is more than nothing</source>
<translation>es ist mehr als nichts</translation>
</message>
<message>
<source>it is more than nothing and at most {most:g} kg</source>
<translation>möglich ist mehr als nichts und höchstens {most:g} kg</translation>
</message>
<message>
<source>it is mostly texture, and no other juice has it</source>
<translation>es ist vor allem Konsistenz, und die hat kein anderer Saft</translation>
</message>
<message>
<source>it is neither a path nor a database URL</source>
<translation>es ist weder ein Pfad noch die Adresse einer Datenbank</translation>
</message>
<message>
<source>it is nested more than {most} deep</source>
<translation>sie ist mehr als {most} Ebenen tief verschachtelt</translation>
</message>
<message>
<source>it is no JSON ({reason})</source>
<translation>es ist kein JSON ({reason})</translation>
</message>
<message>
<source>it is no JSON that can be read</source>
<translation>es ist kein lesbares JSON</translation>
</message>
<message>
<source>it is no text in UTF-8, UTF-16 or Windows-1252</source>
<translation>es ist kein Text in UTF-8, UTF-16 oder Windows-1252</translation>
</message>
<message>
<source>it is not JSON</source>
<translation>es ist kein JSON</translation>
</message>
<message>
<source>it is not a SQLite file</source>
<translation>es ist keine SQLite-Datei</translation>
</message>
<message>
<source>it is not an ordinary file</source>
<translation>es ist keine gewöhnliche Datei</translation>
</message>
<message>
<source>it is not as barkeep wrote it</source>
<translation>es ist nicht, wie barkeep es geschrieben hat</translation>
</message>
<message>
<source>it is not clear which column holds the ingredients.</source>
<translation>es ist nicht klar, welche Spalte die Zutaten enthält.</translation>
</message>
<message>
<source>it is not clear which column holds the names of the drinks.</source>
<translation>es ist nicht klar, welche Spalte die Namen der Drinks enthält.</translation>
</message>
<message>
<source>it is not clear which column is what.</source>
<translation>es ist nicht klar, welche Spalte was ist.</translation>
</message>
<message>
<source>it is not known to stand in for {asked}{why}</source>
<translation>als Ersatz für {asked} ist es nicht bekannt{why}</translation>
</message>
<message>
<source>it is not poured</source>
<translation>sie wird nicht eingeschenkt</translation>
</message>
<message>
<source>it is not understood</source>
<translation>sie ist nicht verstanden</translation>
</message>
<message>
<source>it is nothing or more</source>
<translation>es ist null oder mehr</translation>
</message>
<message>
<source>it is of an older barkeep, and may only be looked at</source>
<translation>sie stammt von einem älteren barkeep und darf nur angesehen werden</translation>
</message>
<message>
<source>it is oil of the peel by the drop; press a peel over the drink instead</source>
<translation>es ist das Öl der Schale, tropfenweise; drück stattdessen eine Schale über dem Drink aus</translation>
</message>
<message>
<source>it is one of {shapes}</source>
<translation>möglich sind {shapes}</translation>
</message>
<message>
<source>it is optional</source>
<translation>sie ist optional</translation>
</message>
<message>
<source>it is quinine, sugar and acid together; bought tonic water is that already let down</source>
<translation>es ist Chinin, Zucker und Säure zusammen; gekauftes Tonic Water ist das schon verdünnt</translation>
</message>
<message>
<source>it is read-only</source>
<translation>sie ist schreibgeschützt</translation>
</message>
<message>
<source>it is read-only, and of an older barkeep; copy it to where it can be written</source>
<translation>sie ist schreibgeschützt und von einem älteren barkeep; kopiere sie dorthin, wo sie beschrieben werden kann</translation>
</message>
<message>
<source>it is said never to have been opened, and something is gone</source>
<translation>sie soll nie geöffnet worden sein, und doch fehlt etwas</translation>
</message>
<message>
<source>it is served hot</source>
<translation>heiß serviert</translation>
</message>
<message>
<source>it is several kinds; likely {names}</source>
<translation>das sind mehrere Zutaten; wohl {names}</translation>
</message>
<message>
<source>it is small letters and digits with hyphens between</source>
<translation>gemeint sind kleine Buchstaben und Ziffern mit Bindestrichen dazwischen</translation>
</message>
<message>
<source>it is spelt much like it</source>
<translation>es schreibt sich sehr ähnlich</translation>
</message>
<message>
<source>it is struck out: leave it out, or take it</source>
<translation>es ist durchgestrichen: weglassen oder übernehmen</translation>
</message>
<message>
<source>it is the US or the imperial ounce</source>
<translation>gemeint ist die US- oder die britische Unze</translation>
</message>
<message>
<source>it is the backbone of that blend; stronger, so pour less</source>
<translation>das Rückgrat dieses Verschnitts; stärker, darum weniger nehmen</translation>
</message>
<message>
<source>it is the bar that is open; {another}</source>
<translation>es ist die Bar, die gerade offen ist; {another}</translation>
</message>
<message>
<source>it is the fat and the salt that float on the drink, and no oil tastes of it</source>
<translation>Fett und Salz schwimmen auf dem Drink, und kein Öl schmeckt danach</translation>
</message>
<message>
<source>it is the salt of shellfish, and fish sauce and brine are only salt</source>
<translation>es ist das Salz von Schalentieren, und Fischsauce und Lake sind nur Salz</translation>
</message>
<message>
<source>it is the whole path of a folder, or “{beside}”</source>
<translation>gemeint ist der ganze Pfad eines Ordners oder „{beside}“</translation>
</message>
<message>
<source>it is there</source>
<translation>es ist da</translation>
</message>
<message>
<source>it is there for infusions, and nothing else is strong enough to draw and keep the oils</source>
<translation>er ist für Auszüge da, und nichts anderes ist stark genug, die Öle zu lösen und zu halten</translation>
</message>
<message>
<source>it is there for its lantern</source>
<translation>sie ist wegen ihrer Laterne da</translation>
</message>
<message>
<source>it is there to be eaten</source>
<translation>sie ist zum Essen da</translation>
</message>
<message>
<source>it is there twice</source>
<translation>es steht zweimal da</translation>
</message>
<message>
<source>it is too large</source>
<translation>sie ist zu groß</translation>
</message>
<message>
<source>it is worth {worth:g}, and nothing more than {most:g}</source>
<translation>er ist {worth:g} wert, und nichts mehr als {most:g}</translation>
</message>
<message>
<source>it is {choices}</source>
<translation>möglich ist {choices}</translation>
</message>
<message>
<source>it is {ends}</source>
<translation>erlaubt ist {ends}</translation>
</message>
<message>
<source>it is {holds}, which is no kind of {wanted}</source>
<translation>es ist {holds}, und das ist keine Art {wanted}</translation>
</message>
<message>
<source>it is {least} to {most}</source>
<translation>es ist {least} bis {most}</translation>
</message>
<message>
<source>it is {lightest:g} to {heaviest:g} g/ml</source>
<translation>möglich sind {lightest:g} bis {heaviest:g} g/ml</translation>
</message>
<message>
<source>it is {words}</source>
<translation>es ist {words}</translation>
</message>
<message>
<source>it may be several bottles: write each on a line of its own</source>
<translation>es können mehrere Flaschen sein: schreib jede in eine eigene Zeile</translation>
</message>
<message>
<source>it must have {abv:g} % vol or more</source>
<translation>es muss mindestens {abv:g} % vol haben</translation>
</message>
<message>
<source>it names no database</source>
<translation>sie nennt keine Datenbank</translation>
</message>
<message>
<source>it names no file</source>
<translation>sie nennt keine Datei</translation>
</message>
<message>
<source>it names no kind; it stands below “{under}”</source>
<translation>es nennt keine Zutat; es steht unter „{under}“</translation>
</message>
<message>
<source>it names no schema</source>
<translation>sie nennt kein Schema</translation>
</message>
<message>
<source>it opens {worth:g}, and nothing more than {most:g}</source>
<translation>er macht {worth:g} machbar, und nichts mehr als {most:g}</translation>
</message>
<message>
<source>it runs between two different numbers</source>
<translation>sie läuft zwischen zwei verschiedenen Zahlen</translation>
</message>
<message>
<source>it shares a part of the name</source>
<translation>es hat einen Teil des Namens gemeinsam</translation>
</message>
<message>
<source>it takes coconut fat and sugar together; stir sugar into coconut cream rather than pouring it plain</source>
<translation>es braucht Kokosfett und Zucker zusammen; rühr Zucker in Kokoscreme, statt sie pur zu nehmen</translation>
</message>
<message>
<source>it was made on {day}, after that</source>
<translation>gemacht wurde es am {day}, also danach</translation>
</message>
<message>
<source>it was made on {made}, after that</source>
<translation>sie wurde erst am {made} gemacht</translation>
</message>
<message>
<source>it was opened on {day}</source>
<translation>geöffnet wurde sie am {day}</translation>
</message>
<message>
<source>it was received on {received}, after that</source>
<translation>es kam am {received}, also danach</translation>
</message>
<message>
<source>it was worked out anew</source>
<translation>es wurde neu berechnet</translation>
</message>
<message>
<source>it was written by a newer barkeep (version {version}; this one reads {known})</source>
<translation>es wurde von einem neueren barkeep geschrieben (Version {version}; dieses liest {known})</translation>
</message>
<message>
<source>it would be read as part of an amount</source>
<translation>es würde als Teil einer Menge gelesen</translation>
</message>
<message>
<source>its bottles are counted in {unit}</source>
<translation>seine Flaschen werden in {unit} gezählt</translation>
</message>
<message>
<source>its brine and fat are tasted with every sip</source>
<translation>ihre Lake und ihr Fett schmeckt man bei jedem Schluck</translation>
</message>
<message>
<source>its day was {day}</source>
<translation>sein Tag war der {day}</translation>
</message>
<message>
<source>its elements are nested more than {most} deep</source>
<translation>ihre Elemente sind mehr als {most} Ebenen tief verschachtelt</translation>
</message>
<message>
<source>its folder takes no file</source>
<translation>ihr Ordner nimmt keine Datei an</translation>
</message>
<message>
<source>its kinds would run in a circle</source>
<translation>seine Arten liefen im Kreis</translation>
</message>
<message>
<source>its larger cousin, so take less than half as many</source>
<translation>die größere Verwandte, darum weniger als halb so viele nehmen</translation>
</message>
<message>
<source>its log is not written</source>
<translation>sein Protokoll fehlt</translation>
</message>
<message>
<source>its loudest spice alone</source>
<translation>sein lautestes Gewürz allein</translation>
</message>
<message>
<source>its method does not shake, stir or throw it</source>
<translation>seine Zubereitung schüttelt, rührt oder wirft es nicht</translation>
</message>
<message>
<source>its name begins so</source>
<translation>sein Name beginnt so</translation>
</message>
<message>
<source>its name holds these words</source>
<translation>sein Name enthält diese Wörter</translation>
</message>
<message>
<source>its name is one to three words of letters</source>
<translation>sein Name besteht aus ein bis drei Wörtern aus Buchstaben</translation>
</message>
<message>
<source>its name must end in {names}, which says what it will be</source>
<translation>ihr Name muss auf {names} enden, das sagt, was sie wird</translation>
</message>
<message>
<source>its schema “{schema}” holds the tables of another program</source>
<translation>ihr Schema „{schema}“ enthält die Tabellen eines anderen Programms</translation>
</message>
<message>
<source>its smaller cousin, a little sharper and more scented</source>
<translation>die kleinere Verwandte, etwas säuerlicher und duftender</translation>
</message>
<message>
<source>its smaller cousin, so take two</source>
<translation>die kleinere Verwandte, darum zwei nehmen</translation>
</message>
<message>
<source>its strength and sugar are beyond what the tables reach</source>
<translation>Alkoholgehalt und Zucker liegen außerhalb der Tabellen</translation>
</message>
<message>
<source>its strength is not known</source>
<translation>ihr Alkoholgehalt ist nicht bekannt</translation>
</message>
<message>
<source>its version is {found!r}; this barkeep reads {known}</source>
<translation>ihre Version ist {found!r}; dieses barkeep liest {known}</translation>
</message>
<message>
<source>its “format” is not “{format}”</source>
<translation>„format“ ist darin nicht „{format}“</translation>
</message>
<message>
<source>its “version” is {shown}, and only {known} is known</source>
<translation>„version“ ist {shown}, und bekannt ist nur {known}</translation>
</message>
<message>
<source>jigger</source>
<translation>Messbecher</translation>
</message>
<message>
<source>judged in tenths</source>
<translation>in Zehnteln geschätzt</translation>
</message>
<message>
<source>jug</source>
<translation>Krug</translation>
</message>
<message>
<source>julep cup</source>
<translation>Julepbecher</translation>
</message>
<message>
<source>juniper first and much stronger, so pour less</source>
<translation>Wacholder voran und viel stärker, darum weniger nehmen</translation>
</message>
<message>
<source>juniper is there, berries and a little sugar come along</source>
<translation>Wacholder ist da, Beeren und etwas Zucker kommen mit</translation>
</message>
<message>
<source>just before</source>
<translation>kurz vorher</translation>
</message>
<message>
<source>keep both</source>
<translation>beide behalten</translation>
</message>
<message>
<source>keep mine</source>
<translation>meins behalten</translation>
</message>
<message>
<source>keeps</source>
<translation>Haltbarkeit</translation>
</message>
<message>
<source>keeps for, in days</source>
<translation>Haltbarkeit in Tagen</translation>
</message>
<message>
<source>keeps {days}</source>
<translation>hält {days}</translation>
</message>
<message>
<source>keeps {days} by your own figure</source>
<translation>hält nach deiner eigenen Angabe {days}</translation>
</message>
<message>
<source>kept apart: it goes in round by round</source>
<translation>beiseite: kommt Runde für Runde hinein</translation>
</message>
<message>
<source>kept in</source>
<translation>geführt in</translation>
</message>
<message>
<source>kettle or pan</source>
<translation>Wasserkocher oder Topf</translation>
</message>
<message>
<source>key</source>
<translation>Schlüssel</translation>
</message>
<message>
<source>kind</source>
<translation>Art</translation>
</message>
<message>
<source>kind or bottle</source>
<translation>Zutat oder Flasche</translation>
</message>
<message>
<source>large coupe</source>
<translation>große Coupette</translation>
</message>
<message>
<source>large cubes of 5 cm</source>
<translation>große Würfel von 5 cm</translation>
</message>
<message>
<source>large jug</source>
<translation>großer Krug</translation>
</message>
<message>
<source>large mixing glass</source>
<translation>großes Rührglas</translation>
</message>
<message>
<source>large rocks glass</source>
<translation>großer Tumbler</translation>
</message>
<message>
<source>large round bottle</source>
<translation>große runde Flasche</translation>
</message>
<message>
<source>large tin</source>
<translation>großer Shakerbecher</translation>
</message>
<message>
<source>large wine glass</source>
<translation>großes Weinglas</translation>
</message>
<message>
<source>later</source>
<comment>how a stop of a shoot stands</comment>
<translation>später</translation>
</message>
<message>
<source>learned by weighing</source>
<translation>durch Wiegen gelernt</translation>
</message>
<message>
<source>leave</source>
<translation>verlassen</translation>
</message>
<message>
<source>leaves {amount}</source>
<translation>es bleiben {amount}</translation>
</message>
<message>
<source>ledger entries</source>
<translation>Einträge im Verlauf</translation>
</message>
<message>
<source>ledger entry</source>
<translation>Eintrag im Verlauf</translation>
</message>
<message>
<source>left out, as they are gone or smaller: {gone}</source>
<translation>weggelassen, weil nicht mehr da oder kleiner: {gone}</translation>
</message>
<message>
<source>lemon peel, juice and sugar too</source>
<translation>auch Zitronenschale, Saft und Zucker</translation>
</message>
<message>
<source>lemon without the fruit too, coarser</source>
<translation>auch Zitrone ohne die Frucht, gröber</translation>
</message>
<message>
<source>lemon without the fruit too, finer</source>
<translation>auch Zitrone ohne die Frucht, feiner</translation>
</message>
<message>
<source>lemon, peel and sugar too, sweeter, so pour less</source>
<translation>auch Zitrone, Schale und Zucker, süßer, darum weniger nehmen</translation>
</message>
<message>
<source>less</source>
<translation>weniger</translation>
</message>
<message>
<source>less acid</source>
<translation>weniger Säure</translation>
</message>
<message>
<source>less alcohol</source>
<translation>weniger Alkohol</translation>
</message>
<message>
<source>less bitter molasses and less colour</source>
<translation>weniger bittere Melasse und weniger Farbe</translation>
</message>
<message>
<source>less sour</source>
<translation>weniger sauer</translation>
</message>
<message>
<source>less sugar</source>
<translation>weniger Zucker</translation>
</message>
<message>
<source>less than half of the fat, and it does not float</source>
<translation>weniger als die Hälfte des Fetts, und sie schwimmt nicht</translation>
</message>
<message>
<source>less watered</source>
<translation>weniger verwässert</translation>
</message>
<message>
<source>level</source>
<translation>Füllstand</translation>
</message>
<message>
<source>levels</source>
<translation>Füllstände</translation>
</message>
<message>
<source>light grain and little juniper, so only where citrus leads</source>
<translation>leichtes Korn und wenig Wacholder, darum nur, wo Zitrus führt</translation>
</message>
<message>
<source>lighter and fresher</source>
<translation>leichter und frischer</translation>
</message>
<message>
<source>lighter and sweeter, without any smoke</source>
<translation>leichter und süßer, ohne Rauch</translation>
</message>
<message>
<source>lighter and thinner</source>
<translation>leichter und dünner</translation>
</message>
<message>
<source>lighter and weaker, so pour more</source>
<translation>leichter und schwächer, darum mehr nehmen</translation>
</message>
<message>
<source>lighter in juniper and weaker, so pour more</source>
<translation>weniger Wacholder und schwächer, darum mehr nehmen</translation>
</message>
<message>
<source>lighter, with grain whisky in it</source>
<translation>leichter, mit Grain Whisky darin</translation>
</message>
<message>
<source>lighter, without the oak: hardly missed in a long drink, more in a stirred one</source>
<translation>leichter, ohne die Eiche: im Longdrink kaum vermisst, im gerührten mehr</translation>
</message>
<message>
<source>lighter, without the sweet new oak</source>
<translation>leichter, ohne die süße neue Eiche</translation>
</message>
<message>
<source>line</source>
<translation>Zeile</translation>
</message>
<message>
<source>line of {name}</source>
<translation>Zeile von {name}</translation>
</message>
<message>
<source>line {line}</source>
<translation>Zeile {line}</translation>
</message>
<message>
<source>line {line} by {name}</source>
<translation>Zeile {line} mit {name}</translation>
</message>
<message>
<source>line {line}, column {column}</source>
<translation>Zeile {line}, Spalte {column}</translation>
</message>
<message>
<source>line {line}, column {column}: {message}</source>
<translation>Zeile {line}, Spalte {column}: {message}</translation>
</message>
<message>
<source>line {row}</source>
<translation>Zeile {row}</translation>
</message>
<message>
<source>line {row} is taken for the method of “{name}”</source>
<translation>Zeile {row} gilt als Zubereitung von „{name}“</translation>
</message>
<message>
<source>lines</source>
<translation>Zeilen</translation>
</message>
<message>
<source>liquorice</source>
<translation>Süßholz</translation>
</message>
<message>
<source>list</source>
<translation>Liste</translation>
</message>
<message>
<source>local law</source>
<translation>örtliches Recht</translation>
</message>
<message>
<source>log</source>
<comment>of a shoot</comment>
<translation>Protokoll</translation>
</message>
<message>
<source>log the shoot, which says what was poured</source>
<translation>protokollier den Dreh, damit dasteht, was ausgeschenkt wurde</translation>
</message>
<message>
<source>logged {day}, {bottles}</source>
<translation>protokolliert am {day}, {bottles}</translation>
</message>
<message>
<source>long drinks with citrus</source>
<translation>Longdrinks mit Zitrus</translation>
</message>
<message>
<source>long drinks without citrus</source>
<translation>Longdrinks ohne Zitrus</translation>
</message>
<message>
<source>long-neck bottle</source>
<translation>Langhalsflasche</translation>
</message>
<message>
<source>longer in oak and brown</source>
<translation>länger im Fass und braun</translation>
</message>
<message>
<source>looks alike, earthier</source>
<translation>sieht gleich aus, erdiger</translation>
</message>
<message>
<source>looks alike, fresher</source>
<translation>sieht gleich aus, frischer</translation>
</message>
<message>
<source>lost without it: {drinks}</source>
<translation>ohne sie verloren: {drinks}</translation>
</message>
<message>
<source>low</source>
<translation>fast leer</translation>
</message>
<message>
<source>low risk drinking</source>
<translation>risikoarmes Trinken</translation>
</message>
<message>
<source>lupin</source>
<translation>Lupinen</translation>
</message>
<message>
<source>made</source>
<comment>a date of a bottle</comment>
<translation>gemacht</translation>
</message>
<message>
<source>made from {titles}</source>
<translation>hergestellt aus {titles}</translation>
</message>
<message>
<source>made here</source>
<translation>selbst gemacht</translation>
</message>
<message>
<source>made on the same model, a little rougher</source>
<translation>nach demselben Vorbild gemacht, etwas rauer</translation>
</message>
<message>
<source>made on the same model, cleaner</source>
<translation>nach demselben Vorbild gemacht, sauberer</translation>
</message>
<message>
<source>made on the same model, fuller</source>
<translation>nach demselben Vorbild gemacht, voller</translation>
</message>
<message>
<source>made on the same model, with less weight</source>
<translation>nach demselben Vorbild gemacht, mit weniger Gewicht</translation>
</message>
<message>
<source>made on {day}</source>
<translation>gemacht am {day}</translation>
</message>
<message>
<source>made {day}</source>
<translation>hergestellt {day}</translation>
</message>
<message>
<source>made {made} of {of}</source>
<translation>{made} von {of} hergestellt</translation>
</message>
<message>
<source>make {names} first ({took})</source>
<translation>zuerst {names} machen ({took})</translation>
</message>
<message>
<source>maker</source>
<translation>Hersteller</translation>
</message>
<message>
<source>malty and hardly juniper, so another drink comes of it</source>
<translation>malzig und kaum Wacholder, darum wird ein anderer Drink daraus</translation>
</message>
<message>
<source>margarita glass</source>
<translation>Margaritaglas</translation>
</message>
<message>
<source>mass fraction of ethanol</source>
<translation>Massenanteil Ethanol</translation>
</message>
<message>
<source>mass of ethanol</source>
<translation>Masse Ethanol</translation>
</message>
<message>
<source>may carry more</source>
<translation>kann mehr enthalten</translation>
</message>
<message>
<source>may hold some ice</source>
<comment>in a freezer it …</comment>
<translation>kann es etwas Eis enthalten</translation>
</message>
<message>
<source>measure</source>
<translation>Maß</translation>
</message>
<message>
<source>measured</source>
<translation>gemessen</translation>
</message>
<message>
<source>measured by taste, not by strength: {share:.0f} % less alcohol</source>
<translation>nach Geschmack bemessen, nicht nach Alkohol: {share:.0f} % weniger Alkohol</translation>
</message>
<message>
<source>measured by taste, not by strength: {share:.0f} % more alcohol</source>
<translation>nach Geschmack bemessen, nicht nach Alkohol: {share:.0f} % mehr Alkohol</translation>
</message>
<message>
<source>measured by volume</source>
<translation>nach Volumen gemessen</translation>
</message>
<message>
<source>medicines</source>
<translation>Medikamente</translation>
</message>
<message>
<source>menthol and bitter roots in so dry a liqueur are its own; a milder amaro makes another drink</source>
<translation>Menthol und bittere Wurzeln in einem so trockenen Likör hat nur er; ein milderer Amaro ergibt einen anderen Drink</translation>
</message>
<message>
<source>menthol and far more bitter, so pour less</source>
<translation>Menthol und weit bitterer, darum weniger nehmen</translation>
</message>
<message>
<source>method</source>
<translation>Zubereitung</translation>
</message>
<message>
<source>milk</source>
<translation>Milch</translation>
</message>
<message>
<source>milk has too much water and no sugar, and syrup has no body</source>
<translation>Milch hat zu viel Wasser und keinen Zucker, und Sirup hat keinen Körper</translation>
</message>
<message>
<source>milk white</source>
<translation>milchweiß</translation>
</message>
<message>
<source>milky brown</source>
<translation>milchig braun</translation>
</message>
<message>
<source>milky green</source>
<translation>milchig grün</translation>
</message>
<message>
<source>millilitres</source>
<translation>Milliliter</translation>
</message>
<message>
<source>miniature</source>
<translation>Miniatur</translation>
</message>
<message>
<source>missing</source>
<translation>fehlt</translation>
</message>
<message>
<source>missing {names}</source>
<translation>es fehlt {names}</translation>
</message>
<message>
<source>missing; {instead} is there instead</source>
<translation>fehlt; stattdessen ist {instead} da</translation>
</message>
<message>
<source>mixing glass</source>
<translation>Rührglas</translation>
</message>
<message>
<source>molasses and colour come forward</source>
<translation>Melasse und Farbe treten vor</translation>
</message>
<message>
<source>molasses and oak too, a little rounder</source>
<translation>auch Melasse und Eiche, etwas runder</translation>
</message>
<message>
<source>molasses and oak too, far fruitier</source>
<translation>auch Melasse und Eiche, weit fruchtiger</translation>
</message>
<message>
<source>molasses takes over the drink</source>
<translation>Melasse übernimmt den Drink</translation>
</message>
<message>
<source>molasses too, darker with burnt sugar and wood</source>
<translation>auch Melasse, dunkler mit gebranntem Zucker und Holz</translation>
</message>
<message>
<source>molasses too, lighter</source>
<translation>auch Melasse, leichter</translation>
</message>
<message>
<source>molluscs</source>
<translation>Weichtiere</translation>
</message>
<message>
<source>month</source>
<translation>Monat</translation>
</message>
<message>
<source>months</source>
<translation>Monate</translation>
</message>
<message>
<source>more</source>
<translation>mehr</translation>
</message>
<message>
<source>more acid</source>
<translation>mehr Säure</translation>
</message>
<message>
<source>more alcohol</source>
<translation>mehr Alkohol</translation>
</message>
<message>
<source>more bitter and without the pink</source>
<translation>bitterer und ohne das Rosa</translation>
</message>
<message>
<source>more drink</source>
<translation>weiterer Drink</translation>
</message>
<message>
<source>more drinks</source>
<translation>weitere Drinks</translation>
</message>
<message>
<source>more fat, so let it down with a little water</source>
<translation>mehr Fett, darum mit etwas Wasser verdünnen</translation>
</message>
<message>
<source>more fat, so whip it less</source>
<translation>mehr Fett, darum weniger schlagen</translation>
</message>
<message>
<source>more juniper and less grain, but as much body</source>
<translation>mehr Wacholder und weniger Korn, aber ebenso viel Körper</translation>
</message>
<message>
<source>more spice still and less sweetness</source>
<translation>noch mehr Würze und weniger Süße</translation>
</message>
<message>
<source>more spice still, drier and stronger, so pour less</source>
<translation>noch mehr Würze, trockener und stärker, darum weniger nehmen</translation>
</message>
<message>
<source>more sugar</source>
<translation>mehr Zucker</translation>
</message>
<message>
<source>more than 0</source>
<translation>mehr als 0</translation>
</message>
<message>
<source>more than 0 and at most 1</source>
<translation>mehr als 0 und höchstens 1</translation>
</message>
<message>
<source>more than twice the fat, so pour less</source>
<translation>mehr als doppelt so viel Fett, darum weniger nehmen</translation>
</message>
<message>
<source>more than {less} of the {number} others of its family</source>
<translation>mehr als {less} der {number} anderen seiner Familie</translation>
</message>
<message>
<source>more than {most} things cannot be used; this is the first not told</source>
<translation>mehr als {most} Dinge lassen sich nicht verwenden; dies ist das erste, das nicht genannt wird</translation>
</message>
<message>
<source>more watered</source>
<translation>stärker verwässert</translation>
</message>
<message>
<source>most plain gin is as dry and a little sharper</source>
<translation>gewöhnlicher Gin ist meist ebenso trocken und etwas kantiger</translation>
</message>
<message>
<source>mostly a lighter blend</source>
<translation>meist ein leichterer Blend</translation>
</message>
<message>
<source>mostly a malt too, but smoke covers the rest</source>
<translation>meist auch ein Malt, aber Rauch verdeckt den Rest</translation>
</message>
<message>
<source>mostly a ruby, with fruit in place of nuts</source>
<translation>meist ein Ruby, mit Frucht statt Nüssen</translation>
</message>
<message>
<source>mostly drier, without the raisins</source>
<translation>meist trockener, ohne die Rosinen</translation>
</message>
<message>
<source>mostly made so, with a little oak</source>
<translation>meist so gemacht, mit etwas Eiche</translation>
</message>
<message>
<source>mostly made so, without the oak</source>
<translation>meist so gemacht, ohne die Eiche</translation>
</message>
<message>
<source>mostly more fat, so pour less</source>
<translation>meist mehr Fett, darum weniger nehmen</translation>
</message>
<message>
<source>mostly of that colour, a little fuller</source>
<translation>meist von dieser Farbe, etwas voller</translation>
</message>
<message>
<source>mostly of that style and much stronger, so pour less</source>
<translation>meist von diesem Stil und viel stärker, darum weniger nehmen</translation>
</message>
<message>
<source>mostly of that style but half as strong again, so pour less</source>
<translation>meist von diesem Stil, aber um die Hälfte stärker, darum weniger nehmen</translation>
</message>
<message>
<source>mostly the same spirit without the colouring</source>
<translation>meist derselbe Brand ohne den Farbstoff</translation>
</message>
<message>
<source>mostly the same wine sweetened, so hold back the syrup</source>
<translation>meist derselbe Wein, gesüßt, darum Sirup zurückhalten</translation>
</message>
<message>
<source>mountain herbs too, drier; a little honey helps</source>
<translation>auch Bergkräuter, trockener; etwas Honig hilft</translation>
</message>
<message>
<source>mountain herbs too, far stronger and sweeter, so pour less</source>
<translation>auch Bergkräuter, weit stärker und süßer, darum weniger nehmen</translation>
</message>
<message>
<source>mountain herbs too, sweeter, so pour less</source>
<translation>auch Bergkräuter, süßer, darum weniger nehmen</translation>
</message>
<message>
<source>move</source>
<translation>weiter</translation>
</message>
<message>
<source>much denser, with a grassy note, so pour less</source>
<translation>viel dichter, mit grasiger Note, darum weniger nehmen</translation>
</message>
<message>
<source>much denser, with caramel; loosen it with warm water</source>
<translation>viel dichter, mit Karamell; verdünne ihn mit warmem Wasser</translation>
</message>
<message>
<source>much lighter and younger</source>
<translation>viel leichter und jünger</translation>
</message>
<message>
<source>much lighter, and no molasses</source>
<translation>viel leichter und ohne Melasse</translation>
</message>
<message>
<source>much maltier and rounder</source>
<translation>viel malziger und runder</translation>
</message>
<message>
<source>much more ripe fruit</source>
<translation>viel mehr reife Frucht</translation>
</message>
<message>
<source>muddler</source>
<translation>Stößel</translation>
</message>
<message>
<source>mug</source>
<translation>Becher</translation>
</message>
<message>
<source>mustard</source>
<translation>Senf</translation>
</message>
<message>
<source>name</source>
<translation>Name</translation>
</message>
<message>
<source>name another bottle</source>
<translation>nenne eine andere Flasche</translation>
</message>
<message>
<source>name at least one</source>
<translation>nenne mindestens eine</translation>
</message>
<message>
<source>name at least one thing</source>
<translation>nenne mindestens eins</translation>
</message>
<message>
<source>name of the drink</source>
<translation>Name des Drinks</translation>
</message>
<message>
<source>national definitions</source>
<translation>nationale Definitionen</translation>
</message>
<message>
<source>nearly as fat, and it tastes of coconut</source>
<translation>fast ebenso fett, und sie schmeckt nach Kokosnuss</translation>
</message>
<message>
<source>nearly black</source>
<translation>fast schwarz</translation>
</message>
<message>
<source>nearly twice as strong, so pour half and keep it from flames</source>
<translation>fast doppelt so stark, darum die Hälfte nehmen und von Flammen fernhalten</translation>
</message>
<message>
<source>nearly {serves:g} serves</source>
<translation>fast {serves:g} Portionen</translation>
</message>
<message>
<source>neighbour</source>
<translation>Nachbar</translation>
</message>
<message>
<source>neighbours</source>
<translation>Nachbarn</translation>
</message>
<message>
<source>never changed</source>
<translation>nie geändert</translation>
</message>
<message>
<source>new product</source>
<translation>neues Produkt</translation>
</message>
<message>
<source>new products</source>
<translation>neue Produkte</translation>
</message>
<message>
<source>next</source>
<comment>how a stop of a shoot stands</comment>
<translation>als Nächstes</translation>
</message>
<message>
<source>no</source>
<translation>nein</translation>
</message>
<message>
<source>no alcohol</source>
<translation>kein Alkohol</translation>
</message>
<message>
<source>no amount here is above {most:.0f}</source>
<translation>keine Menge ist hier größer als {most:.0f}</translation>
</message>
<message>
<source>no change</source>
<translation>keine Änderung</translation>
</message>
<message>
<source>no colour and no berries; a raspberry in the shaker brings both</source>
<translation>ohne Farbe und Beeren; eine Himbeere im Shaker bringt beides</translation>
</message>
<message>
<source>no connection to the server can be made ({said})</source>
<translation>es kommt keine Verbindung zum Server zustande ({said})</translation>
</message>
<message>
<source>no drink</source>
<translation>kein Drink</translation>
</message>
<message>
<source>no drink that can be made</source>
<translation>keinen machbaren Drink</translation>
</message>
<message>
<source>no drink uses it</source>
<translation>kein Drink verbraucht es</translation>
</message>
<message>
<source>no drink yet</source>
<translation>noch kein Drink</translation>
</message>
<message>
<source>no fruit is as earthy and thick</source>
<translation>keine Frucht ist so erdig und dick</translation>
</message>
<message>
<source>no ice</source>
<translation>ohne Eis</translation>
</message>
<message>
<source>no ingredient and no allergen is called that</source>
<translation>keine Zutat und kein Allergen heißt so</translation>
</message>
<message>
<source>no ingredient is called that</source>
<translation>keine Zutat heißt so</translation>
</message>
<message>
<source>no ingredient is called “{name}”</source>
<translation>keine Zutat heißt „{name}“</translation>
</message>
<message>
<source>no limit</source>
<translation>unbegrenzt</translation>
</message>
<message>
<source>no limit, or 80 {currency}</source>
<translation>keine Grenze, oder 80 {currency}</translation>
</message>
<message>
<source>no oak at all</source>
<translation>gar keine Eiche</translation>
</message>
<message>
<source>no oak, and stronger, so pour less</source>
<translation>ohne Eiche und stärker, darum weniger nehmen</translation>
</message>
<message>
<source>no other berry is as green and sharp</source>
<translation>keine andere Beere ist so grün und säuerlich</translation>
</message>
<message>
<source>no other bitters are cool</source>
<translation>keine anderen Bitters sind kühl</translation>
</message>
<message>
<source>no other bitters are savoury</source>
<translation>keine anderen Bitters sind herzhaft</translation>
</message>
<message>
<source>no other bitters taste of lavender, and the dried flower needs days</source>
<translation>keine anderen Bitters schmecken nach Lavendel, und die getrocknete Blüte braucht Tage</translation>
</message>
<message>
<source>no other bitters taste of smoke, and a smoky whisky by the drop is another seasoning</source>
<translation>keine anderen Bitters schmecken nach Rauch, und rauchiger Whisky tropfenweise ist eine andere Würze</translation>
</message>
<message>
<source>no other bulb tastes of it</source>
<translation>keine andere Zwiebel schmeckt danach</translation>
</message>
<message>
<source>no other dried flower tastes of apple and hay</source>
<translation>keine andere getrocknete Blüte schmeckt nach Apfel und Heu</translation>
</message>
<message>
<source>no other flower tastes of violet, and the liqueur brings alcohol</source>
<translation>keine andere Blüte schmeckt nach Veilchen, und der Likör bringt Alkohol mit</translation>
</message>
<message>
<source>no other flower water smells of rose, and orange flower is a different perfume</source>
<translation>kein anderes Blütenwasser riecht nach Rose, und Orangenblüte ist ein anderer Duft</translation>
</message>
<message>
<source>no other fresh fruit is as honeyed and full of seeds</source>
<translation>keine andere frische Frucht ist so honigartig und voller Kerne</translation>
</message>
<message>
<source>no other fruit is a cup of its own seeds</source>
<translation>keine andere Frucht ist ein Becher voll eigener Kerne</translation>
</message>
<message>
<source>no other fruit is a star</source>
<translation>keine andere Frucht ist ein Stern</translation>
</message>
<message>
<source>no other fruit is as brown and sour; pomegranate molasses is a syrup</source>
<translation>keine andere Frucht ist so braun und sauer; Granatapfelmelasse ist ein Sirup</translation>
</message>
<message>
<source>no other fruit is as fat</source>
<translation>keine andere Frucht ist so fett</translation>
</message>
<message>
<source>no other fruit is as green and tart</source>
<translation>keine andere Frucht ist so grün und säuerlich</translation>
</message>
<message>
<source>no other fruit is as green and tart; crush a kiwi instead</source>
<translation>keine andere Frucht ist so grün und säuerlich; zerdrücke stattdessen eine Kiwi</translation>
</message>
<message>
<source>no other fruit smells so of it</source>
<translation>keine andere Frucht riecht so danach</translation>
</message>
<message>
<source>no other garnish is as sharp and crisp</source>
<translation>keine andere Garnitur ist so scharf und knackig</translation>
</message>
<message>
<source>no other garnish is smoke and fat</source>
<translation>keine andere Garnitur ist Rauch und Fett</translation>
</message>
<message>
<source>no other garnish tastes of it</source>
<translation>keine andere Garnitur schmeckt danach</translation>
</message>
<message>
<source>no other garnish tastes of onion so lightly</source>
<translation>keine andere Garnitur schmeckt so leicht nach Zwiebel</translation>
</message>
<message>
<source>no other garnish tastes of the sea so</source>
<translation>keine andere Garnitur schmeckt so nach Meer</translation>
</message>
<message>
<source>no other heat goes to the nose</source>
<translation>keine andere Schärfe steigt in die Nase</translation>
</message>
<message>
<source>no other herb tastes of it</source>
<translation>kein anderes Kraut schmeckt danach</translation>
</message>
<message>
<source>no other herb tastes of it; steep a few sprigs in warm syrup instead</source>
<translation>kein anderes Kraut schmeckt danach; lass stattdessen ein paar Zweige in warmem Sirup ziehen</translation>
</message>
<message>
<source>no other jam is as deep and honeyed</source>
<translation>keine andere Marmelade ist so tief und honigartig</translation>
</message>
<message>
<source>no other juice smells of roses and grapes at once, and the liqueur brings alcohol</source>
<translation>kein anderer Saft riecht zugleich nach Rosen und Trauben, und der Likör bringt Alkohol mit</translation>
</message>
<message>
<source>no other leaf gives so slowly in the warm</source>
<translation>kein anderes Blatt gibt sein Aroma in der Wärme so langsam ab</translation>
</message>
<message>
<source>no other leaf smells of it</source>
<translation>kein anderes Blatt riecht danach</translation>
</message>
<message>
<source>no other leaf smells of it, and curry powder is something else</source>
<translation>kein anderes Blatt riecht danach, und Currypulver ist etwas anderes</translation>
</message>
<message>
<source>no other leaf smells of it; it is to be smelt and not eaten</source>
<translation>kein anderes Blatt riecht danach; es ist zum Riechen da und nicht zum Essen</translation>
</message>
<message>
<source>no other liqueur tastes of banana</source>
<translation>kein anderer Likör schmeckt nach Banane</translation>
</message>
<message>
<source>no other liqueur tastes of butter and burnt sugar; syrup and vanilla come nearer than another bottle</source>
<translation>kein anderer Likör schmeckt nach Butter und gebranntem Zucker; Sirup und Vanille kommen näher als eine andere Flasche</translation>
</message>
<message>
<source>no other liqueur tastes of green apple, and apple brandy has none of its sugar</source>
<translation>kein anderer Likör schmeckt nach grünem Apfel, und Apfelbrand hat nichts von seinem Zucker</translation>
</message>
<message>
<source>no other liqueur tastes of melon, nor is as green</source>
<translation>kein anderer Likör schmeckt nach Melone oder ist so grün</translation>
</message>
<message>
<source>no other liqueur tastes of pear, and the dry spirit has none of its sugar</source>
<translation>kein anderer Likör schmeckt nach Birne, und der trockene Brand hat nichts von seinem Zucker</translation>
</message>
<message>
<source>no other mixer has its caramel, spice and sharp acid at once</source>
<translation>kein anderer Filler hat zugleich sein Karamell, sein Gewürz und seine spitze Säure</translation>
</message>
<message>
<source>no other mixer is tea, vinegar and fizz at once</source>
<translation>kein anderer Filler ist Tee, Essig und Kohlensäure zugleich</translation>
</message>
<message>
<source>no other mixer tastes of cherry; cherry syrup and soda come nearer than another bottle</source>
<translation>kein anderer Filler schmeckt nach Kirsche; Kirschsirup und Sodawasser kommen näher als eine andere Flasche</translation>
</message>
<message>
<source>no other mixer tastes of it, and none holds as much caffeine</source>
<translation>kein anderer Filler schmeckt danach, und keiner enthält so viel Koffein</translation>
</message>
<message>
<source>no other mixer tastes of rhubarb; rhubarb syrup and soda come nearer than another bottle</source>
<translation>kein anderer Filler schmeckt nach Rhabarber; Rhabarbersirup und Sodawasser kommen näher als eine andere Flasche</translation>
</message>
<message>
<source>no other nut tastes so of roast, and other nuts are other allergens</source>
<translation>keine andere Nuss schmeckt so nach Röstung, und andere Nüsse sind andere Allergene</translation>
</message>
<message>
<source>no other oil tastes of coconut</source>
<translation>kein anderes Öl schmeckt nach Kokosnuss</translation>
</message>
<message>
<source>no other powder makes so airy a foam, and egg white is an egg</source>
<translation>kein anderes Pulver gibt so luftigen Schaum, und Eiweiß ist Ei</translation>
</message>
<message>
<source>no other purée is as thick and sweet; blend a ripe banana instead</source>
<translation>kein anderes Püree ist so dick und süß; püriere stattdessen eine reife Banane</translation>
</message>
<message>
<source>no other seed tastes of it</source>
<translation>kein anderer Samen schmeckt danach</translation>
</message>
<message>
<source>no other seed tastes of it when toasted</source>
<translation>kein anderer Samen schmeckt geröstet danach</translation>
</message>
<message>
<source>no other slice tastes of it</source>
<translation>keine andere Scheibe schmeckt danach</translation>
</message>
<message>
<source>no other small fruit is as juicy and mild</source>
<translation>keine andere kleine Frucht ist so saftig und mild</translation>
</message>
<message>
<source>no other spice is as cool and warm at once</source>
<translation>kein anderes Gewürz ist zugleich so kühl und warm</translation>
</message>
<message>
<source>no other spice tastes of it, and turmeric only shares the colour</source>
<translation>kein anderes Gewürz schmeckt danach, und Kurkuma teilt nur die Farbe</translation>
</message>
<message>
<source>no other spice tastes of it; steep a pinch of threads in warm syrup instead</source>
<translation>kein anderes Gewürz schmeckt danach; lass stattdessen eine Prise Fäden in warmem Sirup ziehen</translation>
</message>
<message>
<source>no other spirit is hot; steep a cut chilli in plain vodka for half an hour instead</source>
<translation>keine andere Spirituose ist scharf; lass stattdessen eine aufgeschnittene Chili eine halbe Stunde in reinem Wodka ziehen</translation>
</message>
<message>
<source>no other syrup has its dry heat; simmer crushed pepper in sugar and water instead</source>
<translation>kein anderer Sirup hat seine trockene Schärfe; koch stattdessen zerstoßenen Pfeffer in Zucker und Wasser</translation>
</message>
<message>
<source>no other syrup has the bark; boil a stick in sugar and water instead</source>
<translation>kein anderer Sirup hat die Rinde; koch stattdessen eine Stange in Zucker und Wasser</translation>
</message>
<message>
<source>no other syrup is as green and tart</source>
<translation>kein anderer Sirup ist so grün und säuerlich</translation>
</message>
<message>
<source>no other syrup is as light; stir sugar into the juice instead</source>
<translation>kein anderer Sirup ist so leicht; rühr stattdessen Zucker in den Saft</translation>
</message>
<message>
<source>no other syrup tastes of banana, and the liqueur brings alcohol</source>
<translation>kein anderer Sirup schmeckt nach Banane, und der Likör bringt Alkohol mit</translation>
</message>
<message>
<source>no other tea is as red and tart</source>
<translation>kein anderer Tee ist so rot und säuerlich</translation>
</message>
<message>
<source>no other tea is cool</source>
<translation>kein anderer Tee ist kühl</translation>
</message>
<message>
<source>no other tea is hot with ginger; pour boiling water over slices of it</source>
<translation>kein anderer Tee ist scharf von Ingwer; gieß kochendes Wasser über Scheiben davon</translation>
</message>
<message>
<source>no other tea tastes of apple and hay</source>
<translation>kein anderer Tee schmeckt nach Apfel und Heu</translation>
</message>
<message>
<source>no other wine is a syrup of raisins</source>
<translation>kein anderer Wein ist ein Sirup aus Rosinen</translation>
</message>
<message>
<source>no pale beer has the roast</source>
<translation>kein helles Bier hat das Röstige</translation>
</message>
<message>
<source>no serve is planned</source>
<translation>keine Portion ist geplant</translation>
</message>
<message>
<source>no serves</source>
<translation>keine Portionen</translation>
</message>
<message>
<source>no spec is a riff of itself</source>
<translation>kein Rezept ist eine Abwandlung von sich selbst</translation>
</message>
<message>
<source>no stand-in for it is known</source>
<translation>kein Ersatz dafür ist bekannt</translation>
</message>
<message>
<source>no standard drink of that country is known</source>
<translation>von diesem Land ist kein Standarddrink bekannt</translation>
</message>
<message>
<source>no vegetable broth is as deep, and meat is what is asked for</source>
<translation>keine Gemüsebrühe ist so tief, und verlangt ist Fleisch</translation>
</message>
<message>
<source>no {name}</source>
<translation>ohne {name}</translation>
</message>
<message>
<source>no {name}, and nothing stands in for it: {alone}</source>
<translation>kein {name}, und es gibt keinen Ersatz dafür: {alone}</translation>
</message>
<message>
<source>nobody pours “{words}” itself</source>
<translation>niemand schenkt „{words}“ selbst ein</translation>
</message>
<message>
<source>none</source>
<translation>keines</translation>
</message>
<message>
<source>none</source>
<comment>where a label says nothing</comment>
<translation>nichts</translation>
</message>
<message>
<source>none beyond doubt</source>
<translation>keine Abweichung über die Unsicherheit hinaus</translation>
</message>
<message>
<source>none chosen</source>
<translation>keine gewählt</translation>
</message>
<message>
<source>none is there</source>
<translation>nichts ist da</translation>
</message>
<message>
<source>none of its lines has a volume</source>
<translation>keine seiner Zeilen hat ein Volumen</translation>
</message>
<message>
<source>none of your own</source>
<translation>keine eigenen</translation>
</message>
<message>
<source>none: the kinds' own names</source>
<translation>keine: die eigenen Namen der Zutaten</translation>
</message>
<message>
<source>not counted</source>
<translation>nicht gezählt</translation>
</message>
<message>
<source>not in the bar</source>
<translation>nicht in der Bar</translation>
</message>
<message>
<source>not known</source>
<translation>unbekannt</translation>
</message>
<message>
<source>not known here, so see to it yourself</source>
<translation>hier nicht bekannt, kümmere dich selbst darum</translation>
</message>
<message>
<source>not needed</source>
<comment>how a stop of a shoot stands</comment>
<translation>nicht nötig</translation>
</message>
<message>
<source>not on the label</source>
<translation>nicht auf dem Etikett</translation>
</message>
<message>
<source>not safe</source>
<translation>nicht sicher</translation>
</message>
<message>
<source>not there</source>
<translation>nicht da</translation>
</message>
<message>
<source>note on a line</source>
<translation>Notiz zu einer Zeile</translation>
</message>
<message>
<source>note on the bottles</source>
<translation>Hinweis zu den Flaschen</translation>
</message>
<message>
<source>notes</source>
<translation>Notizen</translation>
</message>
<message>
<source>notes on the bottles</source>
<translation>Hinweise zu den Flaschen</translation>
</message>
<message>
<source>nothing</source>
<translation>nichts</translation>
</message>
<message>
<source>nothing can be divided by zero</source>
<translation>durch null lässt sich nichts teilen</translation>
</message>
<message>
<source>nothing else ferments grain to such a smell of ripe fruit</source>
<translation>nichts anderes vergärt Getreide zu einem solchen Duft reifer Früchte</translation>
</message>
<message>
<source>nothing else in the bar is frozen, sweet and fat at once</source>
<translation>nichts anderes in der Bar ist gefroren, süß und fett zugleich</translation>
</message>
<message>
<source>nothing else is as thick, savoury and red</source>
<translation>nichts anderes ist so dick, herzhaft und rot</translation>
</message>
<message>
<source>nothing else is blossom rather than peel</source>
<translation>nichts anderes ist Blüte statt Schale</translation>
</message>
<message>
<source>nothing else melts to sugar foam</source>
<translation>nichts anderes schmilzt zu Zuckerschaum</translation>
</message>
<message>
<source>nothing else rounds a tincture without sugar</source>
<translation>nichts anderes rundet eine Tinktur ohne Zucker</translation>
</message>
<message>
<source>nothing else thickens and rounds a drink so without splitting</source>
<translation>nichts anderes macht einen Drink so dick und rund, ohne zu gerinnen</translation>
</message>
<message>
<source>nothing else turns from blue to pink with citrus</source>
<translation>nichts anderes wechselt mit Zitrus von Blau zu Rosa</translation>
</message>
<message>
<source>nothing in it is poured otherwise</source>
<translation>nichts darin wird anders eingeschenkt</translation>
</message>
<message>
<source>nothing is in it; the first line names the columns: {columns}</source>
<translation>es steht nichts darin; die erste Zeile nennt die Spalten: {columns}</translation>
</message>
<message>
<source>nothing is lost without it</source>
<translation>ohne sie geht nichts verloren</translation>
</message>
<message>
<source>nothing is made from itself</source>
<translation>nichts wird aus sich selbst gemacht</translation>
</message>
<message>
<source>nothing is {verb} yet. --yes puts what stands right in the place of what is there:
{rows}</source>
<translation>noch nichts ist {verb}. --yes setzt, was rechts steht, an die Stelle dessen, was da ist:
{rows}</translation>
</message>
<message>
<source>nothing of it can be read</source>
<translation>nichts davon ist lesbar</translation>
</message>
<message>
<source>nothing stands in for it: {because}</source>
<translation>dafür gibt es keinen Ersatz: {because}</translation>
</message>
<message>
<source>nothing stands in for itself</source>
<translation>nichts ersetzt sich selbst</translation>
</message>
<message>
<source>nothing to buy</source>
<translation>nichts zu kaufen</translation>
</message>
<message>
<source>nothing to make ahead</source>
<translation>nichts vorab herzustellen</translation>
</message>
<message>
<source>number</source>
<translation>Nummer</translation>
</message>
<message>
<source>nuts in place of fresh fruit</source>
<translation>Nüsse statt frischer Frucht</translation>
</message>
<message>
<source>nutty and brown where red fruit is meant</source>
<translation>nussig und braun, wo rote Frucht gemeint ist</translation>
</message>
<message>
<source>nutty, but sweet where a dry wine is meant, so leave out the syrup</source>
<translation>nussig, aber süß, wo ein trockener Wein gemeint ist, darum den Sirup weglassen</translation>
</message>
<message>
<source>oak and vanilla come along and the drink turns brown</source>
<translation>Eiche und Vanille kommen mit, und der Drink wird braun</translation>
</message>
<message>
<source>oak and vanilla cover part of the juniper</source>
<translation>Eiche und Vanille verdecken einen Teil des Wacholders</translation>
</message>
<message>
<source>oak covers the flowers</source>
<translation>Eiche verdeckt die Blüten</translation>
</message>
<message>
<source>oak is there, the grass is not</source>
<translation>Eiche ist da, das Gras nicht</translation>
</message>
<message>
<source>oak takes the place of the earthy roots</source>
<translation>Eiche statt der erdigen Wurzeln</translation>
</message>
<message>
<source>oaky and weaker, so pour more</source>
<translation>eichig und schwächer, darum mehr nehmen</translation>
</message>
<message>
<source>of raisins and sweet as a syrup where a dry wine is meant, so pour little</source>
<translation>aus Rosinen und süß wie Sirup, wo ein trockener Wein gemeint ist, darum wenig nehmen</translation>
</message>
<message>
<source>of {moment} ({held})</source>
<translation>vom {moment} ({held})</translation>
</message>
<message>
<source>of {size}, {share} full</source>
<translation>von {size}, zu {share} voll</translation>
</message>
<message>
<source>offered</source>
<translation>angebotene Zutat</translation>
</message>
<message>
<source>often flavoured with rye, but lighter</source>
<translation>oft mit Roggen im Geschmack, aber leichter</translation>
</message>
<message>
<source>older or younger, but the same spirit</source>
<translation>älter oder jünger, aber derselbe Brand</translation>
</message>
<message>
<source>olive green</source>
<translation>olivgrün</translation>
</message>
<message>
<source>on</source>
<translation>Datum</translation>
</message>
<message>
<source>on {weekday} {day}</source>
<translation>am {weekday}, {day}</translation>
</message>
<message>
<source>once it is filmed</source>
<translation>sobald er gedreht ist</translation>
</message>
<message>
<source>once its drinks are chosen</source>
<translation>sobald seine Drinks gewählt sind</translation>
</message>
<message>
<source>one bottle at a time</source>
<translation>eine Flasche nach der anderen</translation>
</message>
<message>
<source>one large cube</source>
<translation>ein großer Würfel</translation>
</message>
<message>
<source>one large piece</source>
<translation>ein großes Stück</translation>
</message>
<message>
<source>one large piece of ice</source>
<translation>ein großes Stück Eis</translation>
</message>
<message>
<source>one line runs out</source>
<translation>eine Zeile reicht nicht</translation>
</message>
<message>
<source>one more day</source>
<translation>noch ein Tag</translation>
</message>
<message>
<source>one of {many} more</source>
<translation>eines von {many} weiteren</translation>
</message>
<message>
<source>one serve</source>
<translation>eine Portion</translation>
</message>
<message>
<source>only a SQLite file or a PostgreSQL server can hold a bar</source>
<translation>nur eine SQLite-Datei oder ein PostgreSQL-Server kann eine Bar enthalten</translation>
</message>
<message>
<source>only in theirs</source>
<translation>nur im anderen</translation>
</message>
<message>
<source>only in yours</source>
<translation>nur in deinem</translation>
</message>
<message>
<source>only what counts as always there can be missing</source>
<translation>fehlen kann nur, was als immer da gilt</translation>
</message>
<message>
<source>only what is poured has a dasher</source>
<translation>nur was eingeschenkt wird, hat einen Dasher</translation>
</message>
<message>
<source>only {amount} there</source>
<translation>nur {amount} da</translation>
</message>
<message>
<source>only {drinks}</source>
<translation>nur {drinks}</translation>
</message>
<message>
<source>only {have:g} there</source>
<translation>nur {have:g} da</translation>
</message>
<message>
<source>open</source>
<translation>offen</translation>
</message>
<message>
<source>open bottle</source>
<translation>offene Flasche</translation>
</message>
<message>
<source>open bottles</source>
<translation>offene Flaschen</translation>
</message>
<message>
<source>opened</source>
<translation>geöffnet</translation>
</message>
<message>
<source>opened on {day}</source>
<translation>geöffnet am {day}</translation>
</message>
<message>
<source>opens nothing before what follows; {drinks}</source>
<translation>macht nichts machbar vor dem, was folgt; {drinks}</translation>
</message>
<message>
<source>opens {drinks}</source>
<translation>macht {drinks} machbar</translation>
</message>
<message>
<source>opens {drinks} with a stand-in</source>
<translation>macht {drinks} mit Ersatz machbar</translation>
</message>
<message>
<source>opens {drinks}, of which {beside} with a stand-in</source>
<translation>macht {drinks} machbar, davon {beside} mit Ersatz</translation>
</message>
<message>
<source>option</source>
<translation>Option</translation>
</message>
<message>
<source>optional</source>
<translation>nach Belieben</translation>
</message>
<message>
<source>or</source>
<translation>oder</translation>
</message>
<message>
<source>orange</source>
<translation>orange</translation>
</message>
<message>
<source>orange and bitter in the same way, gentler and weaker, so pour more</source>
<translation>auf dieselbe Art orangig und bitter, sanfter und schwächer, darum mehr nehmen</translation>
</message>
<message>
<source>orange and bitter in the same way, much stronger, so pour less</source>
<translation>auf dieselbe Art orangig und bitter, viel stärker, darum weniger nehmen</translation>
</message>
<message>
<source>orange brought to the same sourness, without the bitterness</source>
<translation>Orange, auf dieselbe Säure gebracht, ohne die Bitterkeit</translation>
</message>
<message>
<source>orange in place of mountain herbs</source>
<translation>Orange statt Bergkräutern</translation>
</message>
<message>
<source>orange on brandy too, a little drier</source>
<translation>auch Orange auf Brandy, etwas trockener</translation>
</message>
<message>
<source>orange on brandy too, a little sweeter</source>
<translation>auch Orange auf Brandy, etwas süßer</translation>
</message>
<message>
<source>orange peel and brandy too, less sweet on the nose</source>
<translation>auch Orangenschale und Brandy, weniger süß im Duft</translation>
</message>
<message>
<source>orange peel and sourness too; a wedge with its peel for each</source>
<translation>auch Orangenschale und Säure; je eine Spalte mit Schale</translation>
</message>
<message>
<source>orange peel too, sharper and clear</source>
<translation>auch Orangenschale, spitzer und klar</translation>
</message>
<message>
<source>orange too, cleaner and sweeter</source>
<translation>auch Orange, sauberer und süßer</translation>
</message>
<message>
<source>orange too, drier and on brandy</source>
<translation>auch Orange, trockener und auf Brandy</translation>
</message>
<message>
<source>orange too, drier and without the blue</source>
<translation>auch Orange, trockener und ohne das Blau</translation>
</message>
<message>
<source>orange too, weaker, sweeter and blue</source>
<translation>auch Orange, schwächer, süßer und blau</translation>
</message>
<message>
<source>orange too, with oak and colour</source>
<translation>auch Orange, mit Eiche und Farbe</translation>
</message>
<message>
<source>orange too, without oak</source>
<translation>auch Orange, ohne Eiche</translation>
</message>
<message>
<source>order of the lines</source>
<translation>Reihenfolge der Zeilen</translation>
</message>
<message>
<source>orgeat and liqueurs bring sugar with the almond, so a drop of it has no equal</source>
<translation>Orgeat und Liköre bringen zur Mandel Zucker mit, darum hat ein Tropfen davon nicht seinesgleichen</translation>
</message>
<message>
<source>other</source>
<translation>weiteren Sache</translation>
</message>
<message>
<source>other green tea is a leaf to be strained, and does not colour or thicken a drink</source>
<translation>anderer grüner Tee ist ein Blatt zum Abseihen und färbt und bindet keinen Drink</translation>
</message>
<message>
<source>other names</source>
<translation>Weitere Namen</translation>
</message>
<message>
<source>others</source>
<translation>weiteren Sachen</translation>
</message>
<message>
<source>others are ticked and it is not: leave it out, or take it</source>
<translation>andere sind angekreuzt und diese nicht: weglassen oder übernehmen</translation>
</message>
<message>
<source>ounce</source>
<translation>Unze</translation>
</message>
<message>
<source>ounces</source>
<translation>Unzen</translation>
</message>
<message>
<source>over</source>
<translation>vorbei</translation>
</message>
<message>
<source>over ice</source>
<translation>auf Eis</translation>
</message>
<message>
<source>own</source>
<translation>eigene</translation>
</message>
<message>
<source>own drinks alone</source>
<translation>nur eigene Drinks</translation>
</message>
<message>
<source>own drinks three times</source>
<translation>eigene Drinks dreifach</translation>
</message>
<message>
<source>package</source>
<translation>Packung</translation>
</message>
<message>
<source>packages</source>
<translation>Packungen</translation>
</message>
<message>
<source>page</source>
<translation>Seite</translation>
</message>
<message>
<source>pages</source>
<translation>Seiten</translation>
</message>
<message>
<source>paid</source>
<translation>Preis</translation>
</message>
<message>
<source>pairs</source>
<translation>Paare</translation>
</message>
<message>
<source>pale blue</source>
<translation>blassblau</translation>
</message>
<message>
<source>pale gold</source>
<translation>hellgold</translation>
</message>
<message>
<source>pale green</source>
<translation>blassgrün</translation>
</message>
<message>
<source>pale lemon</source>
<translation>blass zitronengelb</translation>
</message>
<message>
<source>pale pink</source>
<translation>blassrosa</translation>
</message>
<message>
<source>pantry</source>
<translation>Vorrat</translation>
</message>
<message>
<source>par</source>
<translation>Sollbestand</translation>
</message>
<message>
<source>par is {amount} of {name}</source>
<translation>Sollbestand ist {amount} {name}</translation>
</message>
<message>
<source>par is {par}, and {left} will be left</source>
<translation>Sollbestand ist {par}, und {left} bleiben übrig</translation>
</message>
<message>
<source>parents</source>
<translation>Art</translation>
</message>
<message>
<source>pars</source>
<translation>Sollbestände</translation>
</message>
<message>
<source>part of it is of that style; darker and stronger</source>
<translation>ein Teil davon ist von diesem Stil; dunkler und stärker</translation>
</message>
<message>
<source>part of it is of that style; stronger, so pour less</source>
<translation>ein Teil davon ist von diesem Stil; stärker, darum weniger nehmen</translation>
</message>
<message>
<source>part specs with a line of --- or two empty lines</source>
<translation>trenne Rezepte mit einer Zeile aus --- oder zwei Leerzeilen</translation>
</message>
<message>
<source>parts of one another</source>
<translation>Teile voneinander</translation>
</message>
<message>
<source>past its best</source>
<translation>über seine beste Zeit</translation>
</message>
<message>
<source>peanuts</source>
<translation>Erdnüsse</translation>
</message>
<message>
<source>peel and sugar with juice, so hold back the lemon</source>
<translation>Schale und Zucker mit Saft, darum Zitrone zurückhalten</translation>
</message>
<message>
<source>peel and sugar without the juice; add a squeeze of lemon</source>
<translation>Schale und Zucker ohne den Saft; gib einen Spritzer Zitrone zu</translation>
</message>
<message>
<source>peel, juice and sugar too, mostly of lemon</source>
<translation>auch Schale, Saft und Zucker, vor allem von Zitrone</translation>
</message>
<message>
<source>peeler</source>
<translation>Sparschäler</translation>
</message>
<message>
<source>perhaps</source>
<translation>vielleicht</translation>
</message>
<message>
<source>perhaps a little less bitter</source>
<translation>vielleicht etwas weniger bitter</translation>
</message>
<message>
<source>perhaps a little more bitter</source>
<translation>vielleicht etwas bitterer</translation>
</message>
<message>
<source>perhaps a little sweeter</source>
<translation>vielleicht etwas süßer</translation>
</message>
<message>
<source>perhaps less fat</source>
<translation>vielleicht weniger Fett</translation>
</message>
<message>
<source>perhaps more or less fat</source>
<translation>vielleicht mehr oder weniger Fett</translation>
</message>
<message>
<source>perhaps {likely}</source>
<translation>vielleicht {likely}</translation>
</message>
<message>
<source>permission is denied</source>
<translation>der Zugriff ist verweigert</translation>
</message>
<message>
<source>pieces</source>
<translation>Stück</translation>
</message>
<message>
<source>pink</source>
<translation>rosa</translation>
</message>
<message>
<source>pink and with red fruit</source>
<translation>rosa und mit roter Frucht</translation>
</message>
<message>
<source>pint glass</source>
<translation>Pintglas</translation>
</message>
<message>
<source>place {place}</source>
<translation>Platz {place}</translation>
</message>
<message>
<source>plain genever is mostly lighter in malt</source>
<translation>gewöhnlicher Genever ist meist weniger malzig</translation>
</message>
<message>
<source>plain genever is mostly the young kind</source>
<translation>gewöhnlicher Genever ist meist der junge</translation>
</message>
<message>
<source>plain gin has more juniper and fewer flowers</source>
<translation>gewöhnlicher Gin hat mehr Wacholder und weniger Blüten</translation>
</message>
<message>
<source>plain gin is drier, so add half a barspoon of syrup</source>
<translation>gewöhnlicher Gin ist trockener, darum einen halben Barlöffel Sirup zugeben</translation>
</message>
<message>
<source>plain gin is weaker, so pour more</source>
<translation>gewöhnlicher Gin ist schwächer, darum mehr nehmen</translation>
</message>
<message>
<source>plain salt has no celery, and the seed alone no salt</source>
<translation>einfaches Salz hat keinen Sellerie, und der Samen allein kein Salz</translation>
</message>
<message>
<source>plain soda has none of its alcohol, and beer and cider taste of what they are made from</source>
<translation>einfaches Sodawasser hat nichts von seinem Alkohol, und Bier und Cider schmecken nach dem, woraus sie sind</translation>
</message>
<message>
<source>plain text</source>
<translation>einfacher Text</translation>
</message>
<message>
<source>plant milk too, fuller and sweeter: mind gluten</source>
<translation>auch Pflanzenmilch, voller und süßer: Gluten beachten</translation>
</message>
<message>
<source>plant milk too, fuller: mind allergies to soya</source>
<translation>auch Pflanzenmilch, voller: Allergien gegen Soja beachten</translation>
</message>
<message>
<source>plant milk too, sweeter: mind gluten</source>
<translation>auch Pflanzenmilch, süßer: Gluten beachten</translation>
</message>
<message>
<source>plant milk too, thinner: mind allergies to nuts</source>
<translation>auch Pflanzenmilch, dünner: Allergien gegen Nüsse beachten</translation>
</message>
<message>
<source>plant milk too, thinner: mind allergies to soya</source>
<translation>auch Pflanzenmilch, dünner: Allergien gegen Soja beachten</translation>
</message>
<message>
<source>plum and dry too, heavier and less of flowers</source>
<translation>auch Pflaume und trocken, schwerer und weniger blumig</translation>
</message>
<message>
<source>poisonous plants</source>
<translation>Giftpflanzen</translation>
</message>
<message>
<source>pour it on as it is served</source>
<translation>erst beim Servieren aufgießen</translation>
</message>
<message>
<source>pour {amounts} to keep the balance{still}</source>
<translation>nimm {amounts}, um die Balance zu halten{still}</translation>
</message>
<message>
<source>pour {amounts} to keep the strength{still}</source>
<translation>nimm {amounts}, um den Alkoholgehalt zu halten{still}</translation>
</message>
<message>
<source>pour {amount} of {ingredient} instead of {asked}</source>
<translation>nimm {amount} {ingredient} statt {asked}</translation>
</message>
<message>
<source>poured for none</source>
<translation>für keinen gebraucht</translation>
</message>
<message>
<source>poured for {drinks}, {pour} ({cost}) a serve, {left} left</source>
<translation>gebraucht für {drinks}, je Portion {pour} ({cost}), noch {left}</translation>
</message>
<message>
<source>poured or counted since, so look again: {moved}</source>
<translation>seither eingeschenkt oder gezählt, also noch einmal nachsehen: {moved}</translation>
</message>
<message>
<source>pregnancy</source>
<translation>Schwangerschaft</translation>
</message>
<message>
<source>preserving jar</source>
<translation>Einmachglas</translation>
</message>
<message>
<source>price</source>
<translation>Preis</translation>
</message>
<message>
<source>price unknown</source>
<translation>Preis unbekannt</translation>
</message>
<message>
<source>price {price}</source>
<translation>Preis {price}</translation>
</message>
<message>
<source>prices of this bar are in {currency}</source>
<translation>Preise dieser Bar sind in {currency}</translation>
</message>
<message>
<source>printed</source>
<translation>auf Etiketten</translation>
</message>
<message>
<source>product</source>
<translation>Produkt</translation>
</message>
<message>
<source>product {number}</source>
<translation>Produkt {number}</translation>
</message>
<message>
<source>products</source>
<translation>Produkte</translation>
</message>
<message>
<source>proper</source>
<translation>Eigenname</translation>
</message>
<message>
<source>punch bowl</source>
<translation>Bowle</translation>
</message>
<message>
<source>punch cup</source>
<translation>Punschtasse</translation>
</message>
<message>
<source>purchase</source>
<translation>Kauf</translation>
</message>
<message>
<source>purchases</source>
<translation>Käufe</translation>
</message>
<message>
<source>purple</source>
<translation>purpurn</translation>
</message>
<message>
<source>quinine</source>
<translation>Chinin</translation>
</message>
<message>
<source>quinine and sugar make it; soda has neither</source>
<translation>Chinin und Zucker machen es aus; Sodawasser hat keines von beiden</translation>
</message>
<message>
<source>ratio</source>
<translation>Verhältnis</translation>
</message>
<message>
<source>raw and very fruity, without any oak</source>
<translation>rau und sehr fruchtig, ganz ohne Eiche</translation>
</message>
<message>
<source>raw cane, but much milder</source>
<translation>rohes Zuckerrohr, aber viel milder</translation>
</message>
<message>
<source>raw egg</source>
<translation>rohes Ei</translation>
</message>
<message>
<source>raw elderberry</source>
<translation>roher Holunder</translation>
</message>
<message>
<source>raw milk</source>
<translation>Rohmilch</translation>
</message>
<message>
<source>read as {matched}; the words before that, as its maker</source>
<translation>gelesen als {matched}; die Wörter davor als Hersteller</translation>
</message>
<message>
<source>received</source>
<translation>Eingang</translation>
</message>
<message>
<source>recipe of your own</source>
<translation>eigene Zubereitung</translation>
</message>
<message>
<source>recipe of yours</source>
<translation>eigene Herstellung</translation>
</message>
<message>
<source>recipes of your own</source>
<translation>eigene Zubereitungen</translation>
</message>
<message>
<source>red</source>
<translation>rot</translation>
</message>
<message>
<source>red berry in place of black, not as sweet</source>
<translation>rote Beere statt schwarzer, nicht so süß</translation>
</message>
<message>
<source>red berry too, smaller and tarter</source>
<translation>auch rote Beere, kleiner und säuerlicher</translation>
</message>
<message>
<source>red berry too, softer</source>
<translation>auch rote Beere, weicher</translation>
</message>
<message>
<source>red berry too, softer and sweeter</source>
<translation>auch rote Beere, weicher und süßer</translation>
</message>
<message>
<source>red berry too, tarter</source>
<translation>auch rote Beere, säuerlicher</translation>
</message>
<message>
<source>red wine and quinine too, lighter in spice</source>
<translation>auch Rotwein und Chinin, leichter gewürzt</translation>
</message>
<message>
<source>red wine and quinine too, sweeter and spicier</source>
<translation>auch Rotwein und Chinin, süßer und würziger</translation>
</message>
<message>
<source>redate</source>
<translation>Daten</translation>
</message>
<message>
<source>redo</source>
<comment>inside a sentence</comment>
<translation>wiederholen</translation>
</message>
<message>
<source>region</source>
<translation>Region</translation>
</message>
<message>
<source>regional</source>
<translation>regional</translation>
</message>
<message>
<source>removed bottle</source>
<translation>entfernte Flasche</translation>
</message>
<message>
<source>removed paid</source>
<translation>entfernte Zahlung</translation>
</message>
<message>
<source>removed product</source>
<translation>entferntes Produkt</translation>
</message>
<message>
<source>removed shoot</source>
<translation>entfernter Dreh</translation>
</message>
<message>
<source>removed spec</source>
<translation>entferntes Rezept</translation>
</message>
<message>
<source>removed trial</source>
<translation>entfernter Versuch</translation>
</message>
<message>
<source>restore it by “barkeep import”, or in the window by File, Backups…</source>
<translation>hol sie mit „barkeep import“ zurück oder im Fenster mit Datei, Sicherungen…</translation>
</message>
<message>
<source>reverse where it names another entry</source>
<translation>reverse, wo es einen anderen Eintrag nennt</translation>
</message>
<message>
<source>rice and its mould make a savour that no grape wine has</source>
<translation>Reis und sein Schimmel ergeben eine Würze, die kein Traubenwein hat</translation>
</message>
<message>
<source>riff</source>
<translation>Abwandlung</translation>
</message>
<message>
<source>riff of</source>
<translation>Abwandlung von</translation>
</message>
<message>
<source>roasted agave too, wilder</source>
<translation>auch geröstete Agave, wilder</translation>
</message>
<message>
<source>roasted agave too, with less smoke</source>
<translation>auch geröstete Agave, mit weniger Rauch</translation>
</message>
<message>
<source>roasted agave too, with more smoke</source>
<translation>auch geröstete Agave, mit mehr Rauch</translation>
</message>
<message>
<source>rocks glass</source>
<translation>Tumbler</translation>
</message>
<message>
<source>room</source>
<translation>Freiraum</translation>
</message>
<message>
<source>round</source>
<translation>Runde</translation>
</message>
<message>
<source>round bottle</source>
<translation>runde Flasche</translation>
</message>
<message>
<source>rounded down to what there is</source>
<translation>abgerundet auf das, was da ist</translation>
</message>
<message>
<source>rounder and a little sweet, so hold back some of the syrup</source>
<translation>runder und etwas süß, darum etwas Sirup zurückhalten</translation>
</message>
<message>
<source>rounder and far less fruity</source>
<translation>runder und weit weniger fruchtig</translation>
</message>
<message>
<source>rounds</source>
<translation>Runden</translation>
</message>
<message>
<source>row</source>
<translation>Zeile</translation>
</message>
<message>
<source>rows</source>
<translation>Zeilen</translation>
</message>
<message>
<source>ruby</source>
<translation>rubinrot</translation>
</message>
<message>
<source>rum = the label of a bottle</source>
<translation>rum = das Etikett einer Flasche</translation>
</message>
<message>
<source>rye, rock sugar and citrus are steeped together for days</source>
<translation>Rye, Kandis und Zitrus ziehen tagelang zusammen</translation>
</message>
<message>
<source>salt and chilli too, without the smoke and savour</source>
<translation>auch Salz und Chili, ohne Rauch und Würze</translation>
</message>
<message>
<source>salt is not savour</source>
<translation>Salz ist nicht herzhaft</translation>
</message>
<message>
<source>salty too, with vinegar, dill and mustard seed</source>
<translation>auch salzig, mit Essig, Dill und Senfsaat</translation>
</message>
<message>
<source>salty too, without the vinegar</source>
<translation>auch salzig, ohne den Essig</translation>
</message>
<message>
<source>say how many bottles, or how much may be spent</source>
<translation>gib an, wie viele Flaschen es sein dürfen oder wie viel Geld</translation>
</message>
<message>
<source>say how much of it, as {wanted}</source>
<translation>sag, wie viel davon, als {wanted}</translation>
</message>
<message>
<source>say of what, since it is no amount to keep; likely “{n} bottles”</source>
<translation>sag, wovon, denn das ist keine Menge, die man vorhält; wahrscheinlich „{n} Flaschen“</translation>
</message>
<message>
<source>say of what, since it is no amount to keep; likely “{n} bottle”</source>
<translation>sag, wovon, denn das ist keine Menge, die man vorhält; wahrscheinlich „{n} Flasche“</translation>
</message>
<message>
<source>say what it is a kind of</source>
<translation>gib an, wovon es eine Art ist</translation>
</message>
<message>
<source>say what there would be, or what would not</source>
<translation>sag, was da wäre oder was nicht</translation>
</message>
<message>
<source>say what to make</source>
<translation>gib an, was gemacht wird</translation>
</message>
<message>
<source>say whether it is US proof or UK proof</source>
<translation>sag, ob es US proof oder UK proof ist</translation>
</message>
<message>
<source>say which column holds the ingredients, as “ingredient=4”</source>
<translation>sag, welche Spalte die Zutaten enthält, etwa „ingredient=4“</translation>
</message>
<message>
<source>say which ingredient, or take the row away</source>
<translation>gib an, welche Zutat, oder nimm die Zeile weg</translation>
</message>
<message>
<source>says so</source>
<translation>sagt es so</translation>
</message>
<message>
<source>scale</source>
<translation>Skala</translation>
</message>
<message>
<source>scales</source>
<translation>Skalen</translation>
</message>
<message>
<source>scope</source>
<translation>Geltung</translation>
</message>
<message>
<source>score</source>
<translation>Bewertung</translation>
</message>
<message>
<source>score for {name}</source>
<translation>Bewertung für {name}</translation>
</message>
<message>
<source>scores</source>
<translation>Noten</translation>
</message>
<message>
<source>sealed</source>
<translation>verschlossen</translation>
</message>
<message>
<source>see its text</source>
<translation>siehe Text</translation>
</message>
<message>
<source>serve</source>
<translation>Portion</translation>
</message>
<message>
<source>serves</source>
<translation>Portionen</translation>
</message>
<message>
<source>serves cannot be {serves:g}: it is a number from 1 to {most:.0f}</source>
<translation>Portionen können nicht {serves:g} sein: es ist eine Zahl von 1 bis {most:.0f}</translation>
</message>
<message>
<source>serves cannot be “{text}”: it is a number above nothing</source>
<translation>Portionen können nicht „{text}“ sein: es ist eine Zahl über null</translation>
</message>
<message>
<source>serves cannot be “{value}”: it is a number from 1 to {most:.0f}</source>
<translation>Portionen können nicht „{value}“ sein: es ist eine Zahl von 1 bis {most:.0f}</translation>
</message>
<message>
<source>serves is given twice; it is {serves:g} above</source>
<translation>Portionen stehen zweimal da; oben sind es {serves:g}</translation>
</message>
<message>
<source>serves made</source>
<translation>gemachte Portionen</translation>
</message>
<message>
<source>serves of {name}</source>
<translation>Portionen {name}</translation>
</message>
<message>
<source>sesame</source>
<translation>Sesam</translation>
</message>
<message>
<source>sets firmer and needs boiling</source>
<translation>geliert fester und muss kochen</translation>
</message>
<message>
<source>sets softer and melts in the mouth; it comes from animals</source>
<translation>geliert weicher und schmilzt im Mund; es stammt von Tieren</translation>
</message>
<message>
<source>setting</source>
<translation>Einstellung</translation>
</message>
<message>
<source>settings</source>
<translation>Einstellungen</translation>
</message>
<message>
<source>settled on</source>
<translation>Entscheidung</translation>
</message>
<message>
<source>seven</source>
<translation>sieben</translation>
</message>
<message>
<source>shaken and stirred</source>
<translation>geschüttelt und gerührt</translation>
</message>
<message>
<source>shaker tins</source>
<translation>Shakerbecher</translation>
</message>
<message>
<source>shape</source>
<translation>Form</translation>
</message>
<message>
<source>sharper and much stronger, so pour less</source>
<translation>kantiger und viel stärker, darum weniger nehmen</translation>
</message>
<message>
<source>shelf life</source>
<translation>Haltbarkeit</translation>
</message>
<message>
<source>sherry glass</source>
<translation>Sherryglas</translation>
</message>
<message>
<source>shoot</source>
<translation>Dreh</translation>
</message>
<message>
<source>shoot, {day}</source>
<translation>Dreh, {day}</translation>
</message>
<message>
<source>shoots</source>
<translation>Drehs</translation>
</message>
<message>
<source>shop</source>
<translation>Laden</translation>
</message>
<message>
<source>short drinks built on ice</source>
<translation>auf Eis gebauten Shortdrinks</translation>
</message>
<message>
<source>shot glass</source>
<translation>Schnapsglas</translation>
</message>
<message>
<source>shown in</source>
<translation>gezeigt in</translation>
</message>
<message>
<source>shown-in</source>
<translation>gezeigt in</translation>
</message>
<message>
<source>six</source>
<translation>sechs</translation>
</message>
<message>
<source>size</source>
<translation>Größe</translation>
</message>
<message>
<source>sizes</source>
<translation>Größen</translation>
</message>
<message>
<source>slender wine bottle</source>
<translation>schlanke Weinflasche</translation>
</message>
<message>
<source>sling glass</source>
<translation>Slingglas</translation>
</message>
<message>
<source>slow cooker</source>
<translation>Schongarer</translation>
</message>
<message>
<source>small</source>
<comment>how words begin inside a sentence: small, or as written</comment>
<translation>as written</translation>
</message>
<message>
<source>small coupe</source>
<translation>kleine Coupette</translation>
</message>
<message>
<source>small highball glass</source>
<translation>kleines Longdrinkglas</translation>
</message>
<message>
<source>small ladle = 1.5 oz; thimble = 10 ml</source>
<translation>kleine Kelle = 1.5 oz; Fingerhut = 10 ml</translation>
</message>
<message>
<source>small rocks glass</source>
<translation>kleiner Tumbler</translation>
</message>
<message>
<source>small tin</source>
<translation>kleiner Shakerbecher</translation>
</message>
<message>
<source>small wine glass</source>
<translation>kleines Weinglas</translation>
</message>
<message>
<source>smoke covers the drink, so pour less</source>
<translation>Rauch verdeckt den Drink, darum weniger nehmen</translation>
</message>
<message>
<source>smoke covers the rest</source>
<translation>Rauch verdeckt den Rest</translation>
</message>
<message>
<source>smoky and drier</source>
<translation>rauchig und trockener</translation>
</message>
<message>
<source>smoky and dry where orange is meant</source>
<translation>rauchig und trocken, wo Orange gemeint ist</translation>
</message>
<message>
<source>smoky and pungent, so pour less</source>
<translation>rauchig und kräftig, darum weniger nehmen</translation>
</message>
<message>
<source>smoky where fresh herbs are meant</source>
<translation>rauchig, wo frische Kräuter gemeint sind</translation>
</message>
<message>
<source>snifter</source>
<translation>Schwenker</translation>
</message>
<message>
<source>so much bitters is seldom poured; which are these, or how many dashes?</source>
<translation>so viel Bitters nimmt man selten; welche sind das, oder wie viele Dashes?</translation>
</message>
<message>
<source>so not counted</source>
<translation>also nicht mitgezählt</translation>
</message>
<message>
<source>so taste it first</source>
<translation>also erst kosten</translation>
</message>
<message>
<source>softer and a little sweet</source>
<translation>weicher und etwas süß</translation>
</message>
<message>
<source>softer and often weaker</source>
<translation>weicher und oft schwächer</translation>
</message>
<message>
<source>softer and weaker, so pour a little more</source>
<translation>weicher und schwächer, darum etwas mehr nehmen</translation>
</message>
<message>
<source>softer and weaker, so pour more</source>
<translation>weicher und schwächer, darum mehr nehmen</translation>
</message>
<message>
<source>softer, sweeter and weaker, so pour more</source>
<translation>weicher, süßer und schwächer, darum mehr nehmen</translation>
</message>
<message>
<source>softer, without the pink</source>
<translation>weicher, ohne das Rosa</translation>
</message>
<message>
<source>some oak in the taste, none in the colour</source>
<translation>etwas Eiche im Geschmack, keine in der Farbe</translation>
</message>
<message>
<source>some oak, none of the grass</source>
<translation>etwas Eiche, nichts vom Gras</translation>
</message>
<message>
<source>some of its rows are not as barkeep wrote them</source>
<translation>manche Zeilen sind nicht, wie barkeep sie geschrieben hat</translation>
</message>
<message>
<source>sour glass</source>
<translation>Sourglas</translation>
</message>
<message>
<source>sour too, cloudy and tasting of lemon</source>
<translation>auch sauer, trüb und mit Zitronengeschmack</translation>
</message>
<message>
<source>sour too, much sharper, so pour less than half</source>
<translation>auch sauer, viel spitzer, darum weniger als die Hälfte nehmen</translation>
</message>
<message>
<source>sour {figure}</source>
<translation>sauer {figure}</translation>
</message>
<message>
<source>source</source>
<translation>Quelle</translation>
</message>
<message>
<source>sourer</source>
<translation>saurer</translation>
</message>
<message>
<source>sours sweetened with liqueur</source>
<translation>Sours mit Likör</translation>
</message>
<message>
<source>sours sweetened with syrup</source>
<translation>Sours mit Sirup</translation>
</message>
<message>
<source>sours with egg white</source>
<translation>Sours mit Eiweiß</translation>
</message>
<message>
<source>soya</source>
<translation>Soja</translation>
</message>
<message>
<source>sparkling wine bottle</source>
<translation>Schaumweinflasche</translation>
</message>
<message>
<source>spears of 3.5 × 12 cm</source>
<translation>Stangen von 3,5 × 12 cm</translation>
</message>
<message>
<source>spec</source>
<translation>Rezept</translation>
</message>
<message>
<source>spec of yours</source>
<translation>eigenes Rezept</translation>
</message>
<message>
<source>spec {number}</source>
<translation>Rezept {number}</translation>
</message>
<message>
<source>specs</source>
<translation>Rezepte</translation>
</message>
<message>
<source>spheres of 6 cm</source>
<translation>Kugeln von 6 cm</translation>
</message>
<message>
<source>spice too, sweeter and weaker</source>
<translation>auch Würze, süßer und schwächer</translation>
</message>
<message>
<source>spicier and often stronger</source>
<translation>würziger und oft stärker</translation>
</message>
<message>
<source>spill</source>
<translation>Verlust</translation>
</message>
<message>
<source>spills</source>
<translation>Verluste</translation>
</message>
<message>
<source>square bottle</source>
<translation>eckige Flasche</translation>
</message>
<message>
<source>squat round bottle</source>
<translation>gedrungene runde Flasche</translation>
</message>
<message>
<source>stand-in</source>
<translation>Ersatz</translation>
</message>
<message>
<source>stand-in of your own</source>
<translation>eigener Ersatz</translation>
</message>
<message>
<source>stand-in of yours</source>
<translation>eigener Ersatz</translation>
</message>
<message>
<source>stand-ins</source>
<translation>Ersatz</translation>
</message>
<message>
<source>stand-ins of your own</source>
<translation>eigene Ersatzangaben</translation>
</message>
<message>
<source>standard drinks</source>
<translation>Standarddrinks</translation>
</message>
<message>
<source>starts</source>
<comment>a shoot, at what time</comment>
<translation>Beginn</translation>
</message>
<message>
<source>state</source>
<translation>Zustand</translation>
</message>
<message>
<source>stays liquid</source>
<comment>a drink in a freezer</comment>
<translation>bleibt flüssig</translation>
</message>
<message>
<source>stays liquid</source>
<comment>in a freezer it …</comment>
<translation>bleibt es flüssig</translation>
</message>
<message>
<source>stays liquid only just</source>
<comment>a drink in a freezer</comment>
<translation>bleibt gerade noch flüssig</translation>
</message>
<message>
<source>step</source>
<translation>Schritt</translation>
</message>
<message>
<source>steps</source>
<translation>Schritte</translation>
</message>
<message>
<source>stirred aperitifs</source>
<translation>gerührten Aperitifs</translation>
</message>
<message>
<source>stirred drinks with vermouth or wine</source>
<translation>gerührten Drinks mit Wermut oder Wein</translation>
</message>
<message>
<source>stirred drinks without vermouth</source>
<translation>gerührten Drinks ohne Wermut</translation>
</message>
<message>
<source>stone fruit and dry too</source>
<translation>auch Steinobst und trocken</translation>
</message>
<message>
<source>stone fruit and dry too, deeper</source>
<translation>auch Steinobst und trocken, tiefer</translation>
</message>
<message>
<source>stone fruit and dry too, lighter</source>
<translation>auch Steinobst und trocken, leichter</translation>
</message>
<message>
<source>stone fruit and dry too, sharper</source>
<translation>auch Steinobst und trocken, kantiger</translation>
</message>
<message>
<source>stone fruit and dry too, sweeter on the nose</source>
<translation>auch Steinobst und trocken, süßer im Duft</translation>
</message>
<message>
<source>stone fruit and dry too, without the almond of the cherry stone</source>
<translation>auch Steinobst und trocken, ohne die Mandel des Kirschkerns</translation>
</message>
<message>
<source>stone fruit kernels</source>
<translation>Obstkerne</translation>
</message>
<message>
<source>stone fruit too, darker</source>
<translation>auch Steinobst, dunkler</translation>
</message>
<message>
<source>stone fruit too, sharper</source>
<translation>auch Steinobst, spitzer</translation>
</message>
<message>
<source>stone fruit too: mind allergies to nuts</source>
<translation>auch Steinobst: Allergien gegen Nüsse beachten</translation>
</message>
<message>
<source>strainer</source>
<translation>Barsieb</translation>
</message>
<message>
<source>straw yellow</source>
<translation>strohgelb</translation>
</message>
<message>
<source>strength</source>
<translation>Alkoholgehalt</translation>
</message>
<message>
<source>strength beside {sugar:g} g/l of sugar</source>
<translation>Alkoholgehalt neben {sugar:g} g/l Zucker</translation>
</message>
<message>
<source>strength in % vol</source>
<translation>Alkoholgehalt in % vol</translation>
</message>
<message>
<source>strong bottle</source>
<translation>starke Flasche</translation>
</message>
<message>
<source>strong serve</source>
<translation>starke Portion</translation>
</message>
<message>
<source>stronger</source>
<translation>stärker</translation>
</message>
<message>
<source>stronger and a little spicier, so pour less</source>
<translation>stärker und etwas würziger, darum weniger nehmen</translation>
</message>
<message>
<source>stronger and much more juniper, so pour less</source>
<translation>stärker und viel mehr Wacholder, darum weniger nehmen</translation>
</message>
<message>
<source>such as 15:00</source>
<translation>etwa 15:00</translation>
</message>
<message>
<source>sugar</source>
<translation>Zucker</translation>
</message>
<message>
<source>sugar alone does not give the silk, and other gums set to a jelly</source>
<translation>Zucker allein gibt das Seidige nicht, und andere Gummis werden zu Gelee</translation>
</message>
<message>
<source>sugar content</source>
<translation>Zuckergehalt</translation>
</message>
<message>
<source>sugar in g per litre</source>
<translation>Zucker in g je Liter</translation>
</message>
<message>
<source>sulphites</source>
<translation>Sulfite</translation>
</message>
<message>
<source>sweet and bitter, each in its own measure</source>
<translation>süß und bitter, jeder auf seine Weise</translation>
</message>
<message>
<source>sweet and bitter, mostly without smoke</source>
<translation>süß und bitter, meist ohne Rauch</translation>
</message>
<message>
<source>sweet and bitter, though not always with orange</source>
<translation>süß und bitter, aber nicht immer mit Orange</translation>
</message>
<message>
<source>sweet and soft where spice is meant</source>
<translation>süß und weich, wo Würze gemeint ist</translation>
</message>
<message>
<source>sweet anise too, softer</source>
<translation>auch süßer Anis, weicher</translation>
</message>
<message>
<source>sweet anise too, stronger</source>
<translation>auch süßer Anis, stärker</translation>
</message>
<message>
<source>sweet anise too, weaker</source>
<translation>auch süßer Anis, schwächer</translation>
</message>
<message>
<source>sweet vermouth = 60</source>
<translation>sweet vermouth = 60</translation>
</message>
<message>
<source>sweet with herbs, honey behind them</source>
<translation>süß mit Kräutern, Honig dahinter</translation>
</message>
<message>
<source>sweet {figure}</source>
<translation>süß {figure}</translation>
</message>
<message>
<source>sweetened and full of vanilla, so hold back some of the syrup</source>
<translation>gesüßt und voller Vanille, darum etwas Sirup zurückhalten</translation>
</message>
<message>
<source>sweeter</source>
<translation>süßer</translation>
</message>
<message>
<source>sweeter and rounder, as many a bar makes its Manhattan; a dash more bitters helps</source>
<translation>süßer und runder, so machen viele Bars ihren Manhattan; ein Dash Bitters mehr hilft</translation>
</message>
<message>
<source>sweeter and softer</source>
<translation>süßer und weicher</translation>
</message>
<message>
<source>sweeter and stronger, so pour less</source>
<translation>süßer und stärker, darum weniger nehmen</translation>
</message>
<message>
<source>sweeter and weaker</source>
<translation>süßer und schwächer</translation>
</message>
<message>
<source>sweeter, less spicy and weaker</source>
<translation>süßer, weniger würzig und schwächer</translation>
</message>
<message>
<source>sweeter, more molasses and weaker, so pour more</source>
<translation>süßer, mehr Melasse und schwächer, darum mehr nehmen</translation>
</message>
<message>
<source>sweeter, orange and quinine in place of herbs, so pour less</source>
<translation>süßer, Orange und Chinin statt Kräutern, darum weniger nehmen</translation>
</message>
<message>
<source>sweeter, rounder and much stronger, so pour less</source>
<translation>süßer, runder und viel stärker, darum weniger nehmen</translation>
</message>
<message>
<source>sweeter, with caramel</source>
<translation>süßer, mit Karamell</translation>
</message>
<message>
<source>sweeter, with orange</source>
<translation>süßer, mit Orange</translation>
</message>
<message>
<source>sweeter, with raisin and sherry cask</source>
<translation>süßer, mit Rosine und Sherryfass</translation>
</message>
<message>
<source>swing-top bottle</source>
<translation>Bügelflasche</translation>
</message>
<message>
<source>swizzle stick</source>
<translation>Swizzle-Quirl</translation>
</message>
<message>
<source>tagged {tag} three times</source>
<translation>mit {tag} markierte dreifach</translation>
</message>
<message>
<source>tags</source>
<translation>Schlagworte</translation>
</message>
<message>
<source>take theirs</source>
<translation>das andere nehmen</translation>
</message>
<message>
<source>take {amount} instead of {asked}</source>
<translation>nimm {amount} statt {asked}</translation>
</message>
<message>
<source>take {amount} of {ingredient} instead of {asked}</source>
<translation>nimm {amount} {ingredient} statt {asked}</translation>
</message>
<message>
<source>take {times} times the amount</source>
<translation>nimm die {times}-fache Menge</translation>
</message>
<message>
<source>tall glass</source>
<translation>hohes Glas</translation>
</message>
<message>
<source>tall round bottle</source>
<translation>hohe runde Flasche</translation>
</message>
<message>
<source>tapered bottle</source>
<translation>konische Flasche</translation>
</message>
<message>
<source>taster</source>
<translation>Verkoster</translation>
</message>
<message>
<source>technique</source>
<translation>Technik</translation>
</message>
<message>
<source>temperature</source>
<translation>Temperatur</translation>
</message>
<message>
<source>tenths</source>
<translation>Zehntel</translation>
</message>
<message>
<source>test</source>
<translation>Test</translation>
</message>
<message>
<source>tests</source>
<translation>Tests</translation>
</message>
<message>
<source>that cell is left empty</source>
<translation>diese Zelle bleibt leer</translation>
</message>
<message>
<source>that day is still to come</source>
<translation>dieser Tag kommt erst noch</translation>
</message>
<message>
<source>that folder is read-only</source>
<translation>dieser Ordner ist schreibgeschützt</translation>
</message>
<message>
<source>that is heavy for a bottle of {size}, so look at the scale again</source>
<translation>das ist schwer für eine Flasche mit {size}, also noch einmal auf die Waage sehen</translation>
</message>
<message>
<source>that is light for a bottle of {size}, so look at the scale again</source>
<translation>das ist leicht für eine Flasche mit {size}, also noch einmal auf die Waage sehen</translation>
</message>
<message>
<source>that would be {serves:.3g} serves; {most:g} is the most</source>
<translation>das wären {serves:.3g} Portionen; höchstens sind es {most:g}</translation>
</message>
<message>
<source>the address is not understood ({said})</source>
<translation>die Adresse ist nicht zu verstehen ({said})</translation>
</message>
<message>
<source>the backbone of the style at less strength, so pour more</source>
<translation>das Rückgrat des Stils, weniger stark, darum mehr nehmen</translation>
</message>
<message>
<source>the bar</source>
<translation>der Bar</translation>
</message>
<message>
<source>the bar has {title} as {known}</source>
<translation>die Bar führt {title} als {known}</translation>
</message>
<message>
<source>the berry fresh, without the crunch</source>
<translation>die Beere frisch, ohne das Knusprige</translation>
</message>
<message>
<source>the bitterness of green walnuts is in no other nut liqueur</source>
<translation>die Bitterkeit grüner Walnüsse ist in keinem anderen Nusslikör</translation>
</message>
<message>
<source>the bubbles without the strength, and sweeter</source>
<translation>die Perlen ohne die Stärke, und süßer</translation>
</message>
<message>
<source>the column is there twice, with “{first}” and “{other}”</source>
<translation>die Spalte kommt doppelt vor, mit „{first}“ und „{other}“</translation>
</message>
<message>
<source>the column “line” is missing</source>
<translation>die Spalte „line“ fehlt</translation>
</message>
<message>
<source>the column “{column}” is missing</source>
<translation>die Spalte „{column}“ fehlt</translation>
</message>
<message>
<source>the column “{column}” is there twice</source>
<translation>die Spalte „{column}“ kommt doppelt vor</translation>
</message>
<message>
<source>the column “{title}” ({texts})</source>
<translation>die Spalte „{title}“ ({texts})</translation>
</message>
<message>
<source>the column “{title}” is there twice</source>
<translation>die Spalte „{title}“ ist zweimal da</translation>
</message>
<message>
<source>the dasher of {title}</source>
<translation>den Dasher von {title}</translation>
</message>
<message>
<source>the dates of {title}</source>
<translation>die Daten von {title}</translation>
</message>
<message>
<source>the day before</source>
<translation>am Tag davor</translation>
</message>
<message>
<source>the dilution formula was fitted to 15 to 45 % vol, and this is {abv:.0f} % vol</source>
<translation>die Verdünnungsformel ist an 15 bis 45 % vol angepasst, und dies sind {abv:.0f} % vol</translation>
</message>
<message>
<source>the disk is full</source>
<translation>der Datenträger ist voll</translation>
</message>
<message>
<source>the disk is full or reported an error</source>
<translation>der Datenträger ist voll oder meldet einen Fehler</translation>
</message>
<message>
<source>the disk reported an error</source>
<translation>der Datenträger meldet einen Fehler</translation>
</message>
<message>
<source>the drinks of {theme}</source>
<translation>die Drinks von {theme}</translation>
</message>
<message>
<source>the entry is left out, so count that bottle again</source>
<translation>der Eintrag ist weggelassen; zähle diese Flasche neu</translation>
</message>
<message>
<source>the file</source>
<translation>die Datei</translation>
</message>
<message>
<source>the file is damaged ({reason})</source>
<translation>die Datei ist beschädigt ({reason})</translation>
</message>
<message>
<source>the file or its folder is read-only</source>
<translation>die Datei oder ihr Ordner ist schreibgeschützt</translation>
</message>
<message>
<source>the first line names the columns: {columns}</source>
<translation>die erste Zeile nennt die Spalten: {columns}</translation>
</message>
<message>
<source>the flower is its own, and what else holds it brings alcohol or bubbles</source>
<translation>die Blüte hat nur er, und was sie sonst enthält, bringt Alkohol oder Kohlensäure mit</translation>
</message>
<message>
<source>the folder for temporary files</source>
<translation>Der Ordner für vorläufige Dateien</translation>
</message>
<message>
<source>the folder {parent} does not exist</source>
<translation>den Ordner {parent} gibt es nicht</translation>
</message>
<message>
<source>the folder {parent} is read-only</source>
<translation>der Ordner {parent} ist schreibgeschützt</translation>
</message>
<message>
<source>the fruit in place of its leaf</source>
<translation>die Frucht statt ihres Blatts</translation>
</message>
<message>
<source>the fruit without its spice; add half as much cinnamon or plain syrup</source>
<translation>die Frucht ohne ihr Gewürz; gib halb so viel Zimtsirup oder einfachen Sirup zu</translation>
</message>
<message>
<source>the fruit without its syrup</source>
<translation>die Frucht ohne ihren Sirup</translation>
</message>
<message>
<source>the fruity half of the style at less strength, so pour more</source>
<translation>die fruchtige Hälfte des Stils, weniger stark, darum mehr nehmen</translation>
</message>
<message>
<source>the heading “{words}”</source>
<translation>die Überschrift „{words}“</translation>
</message>
<message>
<source>the heat without the honey</source>
<translation>die Schärfe ohne den Honig</translation>
</message>
<message>
<source>the height of the liquid is a length</source>
<translation>die Höhe der Flüssigkeit ist eine Länge</translation>
</message>
<message>
<source>the honey without the heat; crush a slice of ginger in the shaker</source>
<translation>der Honig ohne die Schärfe; drück eine Scheibe Ingwer im Shaker an</translation>
</message>
<message>
<source>the house {kind}</source>
<translation>die Hausmarke für {kind}</translation>
</message>
<message>
<source>the ingredient {name}</source>
<translation>die Zutat {name}</translation>
</message>
<message>
<source>the juniper comes forward and the flowers step back</source>
<translation>der Wacholder tritt vor, die Blüten treten zurück</translation>
</message>
<message>
<source>the key of an ingredient</source>
<translation>der Schlüssel einer Zutat</translation>
</message>
<message>
<source>the kind {name}</source>
<translation>die Zutat {name}</translation>
</message>
<message>
<source>the label of {title}</source>
<translation>das Etikett von {title}</translation>
</message>
<message>
<source>the last day is today</source>
<translation>heute ist der letzte Tag</translation>
</message>
<message>
<source>the library for PostgreSQL is not here; install it by: pip install 'barkeep[team]'</source>
<translation>die Bibliothek für PostgreSQL fehlt; installiere sie mit: pip install 'barkeep[team]'</translation>
</message>
<message>
<source>the look of it without the fruit</source>
<translation>das Aussehen ohne die Frucht</translation>
</message>
<message>
<source>the look of it without the juice</source>
<translation>das Aussehen ohne den Saft</translation>
</message>
<message>
<source>the loudest part of it, so take half</source>
<translation>der lauteste Teil davon, darum die Hälfte nehmen</translation>
</message>
<message>
<source>the loudest spice of allspice alone</source>
<translation>das lauteste Gewürz des Piments allein</translation>
</message>
<message>
<source>the lower strength comes first</source>
<translation>der niedrigere Alkoholgehalt kommt zuerst</translation>
</message>
<message>
<source>the method does not say how it is chilled; taken as built on ice</source>
<translation>die Zubereitung sagt nicht, wie gekühlt wird; angenommen ist: auf Eis im Glas gebaut</translation>
</message>
<message>
<source>the name of a drink has at most {most} characters</source>
<translation>der Name eines Drinks hat höchstens {most} Zeichen</translation>
</message>
<message>
<source>the nearest berry, black in place of red</source>
<translation>die nächste Beere, schwarz statt rot</translation>
</message>
<message>
<source>the nearest berry, brighter</source>
<translation>die nächste Beere, heller</translation>
</message>
<message>
<source>the nearest berry, darker</source>
<translation>die nächste Beere, dunkler</translation>
</message>
<message>
<source>the nearest berry, larger and darker</source>
<translation>die nächste Beere, größer und dunkler</translation>
</message>
<message>
<source>the nearest berry, red in place of black</source>
<translation>die nächste Beere, rot statt schwarz</translation>
</message>
<message>
<source>the nearest berry, smaller and brighter</source>
<translation>die nächste Beere, kleiner und heller</translation>
</message>
<message>
<source>the nearest berry, sweeter and without alcohol</source>
<translation>die nächste Beere, süßer und ohne Alkohol</translation>
</message>
<message>
<source>the nearest citrus and larger, so take half</source>
<translation>die nächste Zitrusfrucht und größer, darum die Hälfte nehmen</translation>
</message>
<message>
<source>the nearest citrus and smaller, so take two</source>
<translation>die nächste Zitrusfrucht und kleiner, darum zwei nehmen</translation>
</message>
<message>
<source>the nearest citrus peel</source>
<translation>die nächste Zitrusschale</translation>
</message>
<message>
<source>the nearest citrus, larger and softer</source>
<translation>die nächste Zitrusfrucht, größer und weicher</translation>
</message>
<message>
<source>the nearest citrus, less scented</source>
<translation>die nächste Zitrusfrucht, weniger duftend</translation>
</message>
<message>
<source>the nearest citrus, smaller and sharper</source>
<translation>die nächste Zitrusfrucht, kleiner und säuerlicher</translation>
</message>
<message>
<source>the nearest citrus, sweeter on the nose</source>
<translation>die nächste Zitrusfrucht, süßer im Duft</translation>
</message>
<message>
<source>the nearest nut, more bitter: mind allergies</source>
<translation>die nächste Nuss, bitterer: Allergien beachten</translation>
</message>
<message>
<source>the nearest nut, sweeter: mind allergies</source>
<translation>die nächste Nuss, süßer: Allergien beachten</translation>
</message>
<message>
<source>the nearest orchard fruit, sharper</source>
<translation>das nächste Kernobst, säuerlicher</translation>
</message>
<message>
<source>the nearest orchard fruit, softer</source>
<translation>das nächste Kernobst, weicher</translation>
</message>
<message>
<source>the nearest peel, less sweet on the nose</source>
<translation>die nächste Schale, weniger süß im Duft</translation>
</message>
<message>
<source>the nearest root, hotter and less of pine</source>
<translation>die nächste Wurzel, schärfer und weniger nach Kiefer</translation>
</message>
<message>
<source>the nearest root, hotter and without the colour</source>
<translation>die nächste Wurzel, schärfer und ohne die Farbe</translation>
</message>
<message>
<source>the nearest stone fruit and larger</source>
<translation>das nächste Steinobst und größer</translation>
</message>
<message>
<source>the nearest stone fruit, lighter</source>
<translation>das nächste Steinobst, leichter</translation>
</message>
<message>
<source>the nearest stone fruit, sharper</source>
<translation>das nächste Steinobst, säuerlicher</translation>
</message>
<message>
<source>the nearest stone fruit, softer</source>
<translation>das nächste Steinobst, weicher</translation>
</message>
<message>
<source>the nearest stone fruit, tarter</source>
<translation>das nächste Steinobst, säuerlicher</translation>
</message>
<message>
<source>the onion is what gives it its name and its savour</source>
<translation>die Zwiebel gibt ihm Namen und Würze</translation>
</message>
<message>
<source>the other drinks of this list stand on a line each, with a colon behind the name; this line is kept as it is</source>
<translation>die anderen Drinks dieser Liste stehen je auf einer Zeile, mit Doppelpunkt hinter dem Namen; diese Zeile bleibt, wie sie ist</translation>
</message>
<message>
<source>the par of it</source>
<translation>sein Sollbestand</translation>
</message>
<message>
<source>the par of {name}</source>
<translation>den Sollbestand von {name}</translation>
</message>
<message>
<source>the peat smoke is dried into the malt; other whisky lacks it and mezcal smells of another fire</source>
<translation>der Torfrauch ist ins Malz getrocknet; anderem Whisky fehlt er, und Mezcal riecht nach anderem Feuer</translation>
</message>
<message>
<source>the product {name}</source>
<translation>das Produkt {name}</translation>
</message>
<message>
<source>the recipe for {name}</source>
<translation>das Rezept für {name}</translation>
</message>
<message>
<source>the rest of the page (1 word)</source>
<translation>der Rest der Seite (1 Wort)</translation>
</message>
<message>
<source>the rest of the page ({count:,} words)</source>
<translation>der Rest der Seite ({count:,} Wörter)</translation>
</message>
<message>
<source>the rests of several bottles together</source>
<translation>die Reste mehrerer Flaschen zusammen</translation>
</message>
<message>
<source>the room left in the vessel is a share below 1</source>
<translation>der freie Raum im Gefäß ist ein Anteil unter 1</translation>
</message>
<message>
<source>the roundest gin there is, without the malt</source>
<translation>der rundeste Gin, den es gibt, ohne das Malz</translation>
</message>
<message>
<source>the row is left out</source>
<translation>die Zeile ist weggelassen</translation>
</message>
<message>
<source>the rum with oak in place of added vanilla</source>
<translation>der Rum mit Eiche statt zugesetzter Vanille</translation>
</message>
<message>
<source>the rum without the fruit, with more oak</source>
<translation>der Rum ohne die Frucht, mit mehr Eiche</translation>
</message>
<message>
<source>the rum without the fruit; a barspoon of pineapple syrup helps</source>
<translation>der Rum ohne die Frucht; ein Barlöffel Ananassirup hilft</translation>
</message>
<message>
<source>the rum without the spice; a drop of vanilla syrup and a clove help</source>
<translation>der Rum ohne das Gewürz; ein Tropfen Vanillesirup und eine Nelke helfen</translation>
</message>
<message>
<source>the same</source>
<translation>gleich</translation>
</message>
<message>
<source>the same ale, livelier and often stronger</source>
<translation>dasselbe Ale, lebhafter und oft stärker</translation>
</message>
<message>
<source>the same bark ground; it clouds the drink and has to be strained</source>
<translation>dieselbe Rinde gemahlen; sie trübt den Drink und muss abgeseiht werden</translation>
</message>
<message>
<source>the same bark to be grated, about three grams each</source>
<translation>dieselbe Rinde zum Reiben, je etwa drei Gramm</translation>
</message>
<message>
<source>the same bean ground and partly without fat</source>
<translation>dieselbe Bohne gemahlen und teils entfettet</translation>
</message>
<message>
<source>the same bean in pieces, to be steeped and strained</source>
<translation>dieselbe Bohne in Stücken, zum Ziehen und Abseihen</translation>
</message>
<message>
<source>the same bean without sugar and fat, as a dusting</source>
<translation>dieselbe Bohne ohne Zucker und Fett, zum Bestäuben</translation>
</message>
<message>
<source>the same bean without the colour</source>
<translation>dieselbe Bohne ohne die Farbe</translation>
</message>
<message>
<source>the same bean, and it turns the drink brown</source>
<translation>dieselbe Bohne, und sie färbt den Drink braun</translation>
</message>
<message>
<source>the same bean, far stronger; top it up with hot water</source>
<translation>dieselbe Bohne, weit stärker; füll mit heißem Wasser auf</translation>
</message>
<message>
<source>the same bean, more bitter and thinner; let it cool</source>
<translation>dieselbe Bohne, bitterer und dünner; lass ihn abkühlen</translation>
</message>
<message>
<source>the same bean, much thinner, and it does not foam</source>
<translation>dieselbe Bohne, viel dünner, und er schäumt nicht</translation>
</message>
<message>
<source>the same bean, perhaps brown</source>
<translation>dieselbe Bohne, vielleicht braun</translation>
</message>
<message>
<source>the same bean, perhaps without the colour</source>
<translation>dieselbe Bohne, vielleicht ohne die Farbe</translation>
</message>
<message>
<source>the same bean, smoother, and it foams less</source>
<translation>dieselbe Bohne, glatter, und er schäumt weniger</translation>
</message>
<message>
<source>the same bean, softer; it has to be heated</source>
<translation>dieselbe Bohne, weicher; er muss erhitzt werden</translation>
</message>
<message>
<source>the same bean, stronger and more bitter; let it cool</source>
<translation>dieselbe Bohne, stärker und bitterer; lass ihn abkühlen</translation>
</message>
<message>
<source>the same berry with its skin</source>
<translation>dieselbe Beere mit ihrer Haut</translation>
</message>
<message>
<source>the same berry without its skin, sharper</source>
<translation>dieselbe Beere ohne ihre Haut, säuerlicher</translation>
</message>
<message>
<source>the same berry, drier and stronger; a little syrup helps</source>
<translation>dieselbe Beere, trockener und stärker; etwas Sirup hilft</translation>
</message>
<message>
<source>the same berry, sweeter and less sour, so pour less</source>
<translation>dieselbe Beere, süßer und weniger sauer, darum weniger nehmen</translation>
</message>
<message>
<source>the same berry, sweeter and weaker, so pour a little less</source>
<translation>dieselbe Beere, süßer und schwächer, darum etwas weniger nehmen</translation>
</message>
<message>
<source>the same bitterness without the lemon; squeeze a wedge in</source>
<translation>dieselbe Bitterkeit ohne die Zitrone; drück eine Spalte hinein</translation>
</message>
<message>
<source>the same botanicals without the oak</source>
<translation>dieselben Botanicals ohne die Eiche</translation>
</message>
<message>
<source>the same bubbles</source>
<translation>dieselben Perlen</translation>
</message>
<message>
<source>the same bubbles without the pink</source>
<translation>dieselben Perlen ohne das Rosa</translation>
</message>
<message>
<source>the same bubbles, mostly plainer</source>
<translation>dieselben Perlen, meist schlichter</translation>
</message>
<message>
<source>the same bubbles, perhaps drier</source>
<translation>dieselben Perlen, vielleicht trockener</translation>
</message>
<message>
<source>the same cane boiled down, without the fresh grass; make up the juice with water</source>
<translation>dasselbe Zuckerrohr eingekocht, ohne das frische Gras; füll den Saft mit Wasser auf</translation>
</message>
<message>
<source>the same cane juice with years of oak</source>
<translation>derselbe Zuckerrohrsaft mit Jahren in Eiche</translation>
</message>
<message>
<source>the same cane juice, perhaps with oak</source>
<translation>derselbe Zuckerrohrsaft, vielleicht mit Eiche</translation>
</message>
<message>
<source>the same cane juice, perhaps without oak</source>
<translation>derselbe Zuckerrohrsaft, vielleicht ohne Eiche</translation>
</message>
<message>
<source>the same cane juice, without oak and stronger, so pour less</source>
<translation>derselbe Zuckerrohrsaft, ohne Eiche und stärker, darum weniger nehmen</translation>
</message>
<message>
<source>the same cane spirit without the wood</source>
<translation>derselbe Zuckerrohrbrand ohne das Holz</translation>
</message>
<message>
<source>the same clove and cinnamon, drier</source>
<translation>dieselbe Nelke und derselbe Zimt, trockener</translation>
</message>
<message>
<source>the same coconut with less water; let it down by as much</source>
<translation>dieselbe Kokosnuss mit weniger Wasser; verdünne sie um ebenso viel</translation>
</message>
<message>
<source>the same coconut with more water, so the drink is thinner</source>
<translation>dieselbe Kokosnuss mit mehr Wasser, darum ist der Drink dünner</translation>
</message>
<message>
<source>the same coffee and sugar without alcohol</source>
<translation>derselbe Kaffee und Zucker ohne Alkohol</translation>
</message>
<message>
<source>the same coffee thinner, so pour more</source>
<translation>derselbe Kaffee dünner, darum mehr nehmen</translation>
</message>
<message>
<source>the same coffee with a fine foam</source>
<translation>derselbe Kaffee mit feinem Schaum</translation>
</message>
<message>
<source>the same coffee without its fine foam</source>
<translation>derselbe Kaffee ohne seinen feinen Schaum</translation>
</message>
<message>
<source>the same dark spice, more allspice and cinnamon</source>
<translation>dieselbe dunkle Würze, mehr Piment und Zimt</translation>
</message>
<message>
<source>the same direction, longer in oak</source>
<translation>dieselbe Richtung, länger im Fass</translation>
</message>
<message>
<source>the same direction, with more oak</source>
<translation>dieselbe Richtung, mit mehr Eiche</translation>
</message>
<message>
<source>the same direction, younger and lighter</source>
<translation>dieselbe Richtung, jünger und leichter</translation>
</message>
<message>
<source>the same drink with all its sugar</source>
<translation>dasselbe Getränk mit seinem ganzen Zucker</translation>
</message>
<message>
<source>the same drink without the colour</source>
<translation>dasselbe Getränk ohne die Farbe</translation>
</message>
<message>
<source>the same drink; let it get cold</source>
<translation>dasselbe Getränk; lass es kalt werden</translation>
</message>
<message>
<source>the same family with the malt left out</source>
<translation>dieselbe Familie ohne das Malz</translation>
</message>
<message>
<source>the same flower dried, to be sprinkled</source>
<translation>dieselbe Blüte getrocknet, zum Streuen</translation>
</message>
<message>
<source>the same flower without alcohol and far sweeter, so pour less than half</source>
<translation>dieselbe Blüte ohne Alkohol und weit süßer, darum weniger als die Hälfte nehmen</translation>
</message>
<message>
<source>the same flower without alcohol, much sweeter and sour, so pour less than half</source>
<translation>dieselbe Blüte ohne Alkohol, viel süßer und sauer, darum weniger als die Hälfte nehmen</translation>
</message>
<message>
<source>the same flower without alcohol, much sweeter, so pour less than half</source>
<translation>dieselbe Blüte ohne Alkohol, viel süßer, darum weniger als die Hälfte nehmen</translation>
</message>
<message>
<source>the same flower without sugar and ginger; add some ginger syrup</source>
<translation>dieselbe Blüte ohne Zucker und Ingwer; gib etwas Ingwersirup zu</translation>
</message>
<message>
<source>the same flower, a little sour</source>
<translation>dieselbe Blüte, etwas sauer</translation>
</message>
<message>
<source>the same flower, without the sourness</source>
<translation>dieselbe Blüte, ohne die Säure</translation>
</message>
<message>
<source>the same fruit and sugar</source>
<translation>dieselbe Frucht und derselbe Zucker</translation>
</message>
<message>
<source>the same fruit as a strip of peel</source>
<translation>dieselbe Frucht als Schalenstreifen</translation>
</message>
<message>
<source>the same fruit at three quarters of the strength, so pour more</source>
<translation>dieselbe Frucht mit drei Vierteln der Stärke, darum mehr nehmen</translation>
</message>
<message>
<source>the same fruit fresh</source>
<translation>dieselbe Frucht frisch</translation>
</message>
<message>
<source>the same fruit fresh, sharper</source>
<translation>dieselbe Frucht frisch, säuerlicher</translation>
</message>
<message>
<source>the same fruit half as strong again, so pour less</source>
<translation>dieselbe Frucht, um die Hälfte stärker, darum weniger nehmen</translation>
</message>
<message>
<source>the same fruit heated, flat and a little weaker</source>
<translation>dieselbe Frucht erhitzt, flach und etwas schwächer</translation>
</message>
<message>
<source>the same fruit unfermented and sweeter; a dash of cider vinegar and soda help</source>
<translation>dieselbe Frucht unvergoren und süßer; ein Dash Apfelessig und Sodawasser helfen</translation>
</message>
<message>
<source>the same fruit with a furry skin</source>
<translation>dieselbe Frucht mit pelziger Haut</translation>
</message>
<message>
<source>the same fruit with a smooth skin</source>
<translation>dieselbe Frucht mit glatter Haut</translation>
</message>
<message>
<source>the same fruit with less oak</source>
<translation>dieselbe Frucht mit weniger Eiche</translation>
</message>
<message>
<source>the same fruit with much sugar, so leave out other syrup</source>
<translation>dieselbe Frucht mit viel Zucker, darum anderen Sirup weglassen</translation>
</message>
<message>
<source>the same fruit without alcohol, sweeter, so pour half</source>
<translation>dieselbe Frucht ohne Alkohol, süßer, darum die Hälfte nehmen</translation>
</message>
<message>
<source>the same fruit without the colour</source>
<translation>dieselbe Frucht ohne die Farbe</translation>
</message>
<message>
<source>the same fruit without the fizz</source>
<translation>dieselbe Frucht ohne die Kohlensäure</translation>
</message>
<message>
<source>the same fruit without the red</source>
<translation>dieselbe Frucht ohne das Rot</translation>
</message>
<message>
<source>the same fruit without the sugar; add as much simple syrup</source>
<translation>dieselbe Frucht ohne den Zucker; gib ebenso viel Zuckersirup zu</translation>
</message>
<message>
<source>the same fruit's larger cousin, a little less sour and scented</source>
<translation>die größere Verwandte der Frucht, etwas weniger sauer und duftend</translation>
</message>
<message>
<source>the same fruit, clearer and thinner</source>
<translation>dieselbe Frucht, klarer und dünner</translation>
</message>
<message>
<source>the same fruit, heavier and stronger, so pour less</source>
<translation>dieselbe Frucht, schwerer und stärker, darum weniger nehmen</translation>
</message>
<message>
<source>the same fruit, louder and without oak, so pour less</source>
<translation>dieselbe Frucht, lauter und ohne Eiche, darum weniger nehmen</translation>
</message>
<message>
<source>the same fruit, perhaps with oak and colour</source>
<translation>dieselbe Frucht, vielleicht mit Eiche und Farbe</translation>
</message>
<message>
<source>the same fruit, smaller</source>
<translation>dieselbe Frucht, kleiner</translation>
</message>
<message>
<source>the same fruit, softened by oak</source>
<translation>dieselbe Frucht, von Eiche gemildert</translation>
</message>
<message>
<source>the same fruit, sweeter and less sour</source>
<translation>dieselbe Frucht, süßer und weniger sauer</translation>
</message>
<message>
<source>the same fruit, thick and red</source>
<translation>dieselbe Frucht, dick und rot</translation>
</message>
<message>
<source>the same fruit, thicker and less sweet</source>
<translation>dieselbe Frucht, dicker und weniger süß</translation>
</message>
<message>
<source>the same fruit, thicker; let it down with syrup</source>
<translation>dieselbe Frucht, dicker; verdünne sie mit Sirup</translation>
</message>
<message>
<source>the same fruit, thicker; let it down with water</source>
<translation>dieselbe Frucht, dicker; verdünne sie mit Wasser</translation>
</message>
<message>
<source>the same fruit, thinner and sweetened</source>
<translation>dieselbe Frucht, dünner und gesüßt</translation>
</message>
<message>
<source>the same fruit, to be cut in wedges</source>
<translation>dieselbe Frucht, in Spalten zu schneiden</translation>
</message>
<message>
<source>the same grain with little oak</source>
<translation>dasselbe Korn mit wenig Eiche</translation>
</message>
<message>
<source>the same grain with much more oak</source>
<translation>dasselbe Korn mit viel mehr Eiche</translation>
</message>
<message>
<source>the same grain with much more oak, and stronger, so pour less</source>
<translation>dasselbe Korn mit viel mehr Eiche und stärker, darum weniger nehmen</translation>
</message>
<message>
<source>the same grain, a little tamed and weaker</source>
<translation>dasselbe Korn, etwas gezähmt und schwächer</translation>
</message>
<message>
<source>the same grain, raw and stronger, so pour less</source>
<translation>dasselbe Korn, roh und stärker, darum weniger nehmen</translation>
</message>
<message>
<source>the same heat without alcohol, sweeter, so pour half</source>
<translation>dieselbe Schärfe ohne Alkohol, süßer, darum die Hälfte nehmen</translation>
</message>
<message>
<source>the same heat, coarser</source>
<translation>dieselbe Schärfe, gröber</translation>
</message>
<message>
<source>the same heat, finer and quicker</source>
<translation>dieselbe Schärfe, feiner und schneller</translation>
</message>
<message>
<source>the same herbs, milder, sweeter and weaker</source>
<translation>dieselben Kräuter, milder, süßer und schwächer</translation>
</message>
<message>
<source>the same herbs, sharper and stronger, so pour less</source>
<translation>dieselben Kräuter, kantiger und stärker, darum weniger nehmen</translation>
</message>
<message>
<source>the same honey let down with water, so pour twice as much</source>
<translation>derselbe Honig, mit Wasser verdünnt, darum doppelt so viel nehmen</translation>
</message>
<message>
<source>the same honey, denser, so pour less</source>
<translation>derselbe Honig, dichter, darum weniger nehmen</translation>
</message>
<message>
<source>the same honey, thinner, so pour more</source>
<translation>derselbe Honig, dünner, darum mehr nehmen</translation>
</message>
<message>
<source>the same kind of plum in gin, drier</source>
<translation>dieselbe Pflaumenart in Gin, trockener</translation>
</message>
<message>
<source>the same kind of plum in gin, rounder</source>
<translation>dieselbe Pflaumenart in Gin, runder</translation>
</message>
<message>
<source>the same leaf with anise</source>
<translation>dasselbe Blatt mit Anis</translation>
</message>
<message>
<source>the same leaf without alcohol, sweeter, so pour half</source>
<translation>dasselbe Blatt ohne Alkohol, süßer, darum die Hälfte nehmen</translation>
</message>
<message>
<source>the same leaf without the anise</source>
<translation>dasselbe Blatt ohne den Anis</translation>
</message>
<message>
<source>the same leaf, clear and thinner</source>
<translation>dasselbe Blatt, klar und dünner</translation>
</message>
<message>
<source>the same light spirit, mostly younger</source>
<translation>derselbe leichte Brand, meist jünger</translation>
</message>
<message>
<source>the same light spirit, perhaps with some oak</source>
<translation>derselbe leichte Brand, vielleicht mit etwas Eiche</translation>
</message>
<message>
<source>the same light spirit, with less or more oak</source>
<translation>derselbe leichte Brand, mit weniger oder mehr Eiche</translation>
</message>
<message>
<source>the same lightness, perhaps from another root or grain</source>
<translation>ebenso leicht, vielleicht aus anderer Wurzel oder anderem Korn</translation>
</message>
<message>
<source>the same lightness, weaker and a little sweet</source>
<translation>ebenso leicht, schwächer und etwas süß</translation>
</message>
<message>
<source>the same mash without the charcoal, and stronger, so pour less</source>
<translation>dieselbe Maische ohne die Kohle und stärker, darum weniger nehmen</translation>
</message>
<message>
<source>the same mash without the charcoal, often stronger</source>
<translation>dieselbe Maische ohne die Kohle, oft stärker</translation>
</message>
<message>
<source>the same mash, softened through charcoal and often weaker</source>
<translation>dieselbe Maische, durch Kohle gemildert und oft schwächer</translation>
</message>
<message>
<source>the same milk with its fat</source>
<translation>dieselbe Milch mit ihrem Fett</translation>
</message>
<message>
<source>the same mint without the green</source>
<translation>dieselbe Minze ohne das Grün</translation>
</message>
<message>
<source>the same mint, and it may turn the drink green</source>
<translation>dieselbe Minze, und sie färbt den Drink vielleicht grün</translation>
</message>
<message>
<source>the same mint, and it turns the drink green</source>
<translation>dieselbe Minze, und sie färbt den Drink grün</translation>
</message>
<message>
<source>the same mint, fresher and without alcohol</source>
<translation>dieselbe Minze, frischer und ohne Alkohol</translation>
</message>
<message>
<source>the same mint, perhaps without the green</source>
<translation>dieselbe Minze, vielleicht ohne das Grün</translation>
</message>
<message>
<source>the same nut with its fat, so the drink turns cloudy and thick</source>
<translation>dieselbe Nuss mit ihrem Fett, darum wird der Drink trüb und dick</translation>
</message>
<message>
<source>the same oak with less spice</source>
<translation>dieselbe Eiche mit weniger Würze</translation>
</message>
<message>
<source>the same oak with much more spice</source>
<translation>dieselbe Eiche mit viel mehr Würze</translation>
</message>
<message>
<source>the same oak with no spice</source>
<translation>dieselbe Eiche ohne Würze</translation>
</message>
<message>
<source>the same oak with some rye spice</source>
<translation>dieselbe Eiche mit etwas Roggenwürze</translation>
</message>
<message>
<source>the same peel without its sugar</source>
<translation>dieselbe Schale ohne ihren Zucker</translation>
</message>
<message>
<source>the same plant's stalk: mind allergies</source>
<translation>die Stange derselben Pflanze: Allergien beachten</translation>
</message>
<message>
<source>the same pod without alcohol, sweeter, so pour half</source>
<translation>dieselbe Schote ohne Alkohol, süßer, darum die Hälfte nehmen</translation>
</message>
<message>
<source>the same pod, needing time or warmth to give its taste</source>
<translation>dieselbe Schote, die Zeit oder Wärme braucht, um zu schmecken</translation>
</message>
<message>
<source>the same ripe fruit, darker and a little sweet</source>
<translation>dieselbe reife Frucht, dunkler und etwas süß</translation>
</message>
<message>
<source>the same ripe fruit, lighter in colour and drier</source>
<translation>dieselbe reife Frucht, heller und trockener</translation>
</message>
<message>
<source>the same ripe fruit, perhaps without the colour</source>
<translation>dieselbe reife Frucht, vielleicht ohne die Farbe</translation>
</message>
<message>
<source>the same root fresh, so take four times as much</source>
<translation>dieselbe Wurzel frisch, darum viermal so viel nehmen</translation>
</message>
<message>
<source>the same root without alcohol, sweeter, so pour half</source>
<translation>dieselbe Wurzel ohne Alkohol, süßer, darum die Hälfte nehmen</translation>
</message>
<message>
<source>the same root, hot and unsweetened: some 5 g a slice</source>
<translation>dieselbe Wurzel, scharf und ungesüßt: rund 5 g je Scheibe</translation>
</message>
<message>
<source>the same root, hotter and cloudy</source>
<translation>dieselbe Wurzel, schärfer und trüb</translation>
</message>
<message>
<source>the same root, milder; a slice of fresh ginger helps</source>
<translation>dieselbe Wurzel, milder; eine Scheibe frischer Ingwer hilft</translation>
</message>
<message>
<source>the same root, sweeter; a little lemon helps</source>
<translation>dieselbe Wurzel, süßer; etwas Zitrone hilft</translation>
</message>
<message>
<source>the same root, thinner and a little sour, so pour more</source>
<translation>dieselbe Wurzel, dünner und etwas sauer, darum mehr nehmen</translation>
</message>
<message>
<source>the same root, weaker and not as sweet, so pour more</source>
<translation>dieselbe Wurzel, schwächer und nicht so süß, darum mehr nehmen</translation>
</message>
<message>
<source>the same rum, perhaps with colour</source>
<translation>derselbe Rum, vielleicht mit Farbe</translation>
</message>
<message>
<source>the same rum, perhaps younger</source>
<translation>derselbe Rum, vielleicht jünger</translation>
</message>
<message>
<source>the same salt in water</source>
<translation>dasselbe Salz in Wasser</translation>
</message>
<message>
<source>the same salt without its water; a small pinch goes a long way</source>
<translation>dasselbe Salz ohne sein Wasser; eine kleine Prise reicht weit</translation>
</message>
<message>
<source>the same smoke without the oak</source>
<translation>derselbe Rauch ohne die Eiche</translation>
</message>
<message>
<source>the same sour grape, and it colours the drink</source>
<translation>dieselbe saure Traube, und sie färbt den Drink</translation>
</message>
<message>
<source>the same sour grape, perhaps red</source>
<translation>dieselbe saure Traube, vielleicht rot</translation>
</message>
<message>
<source>the same sour grape, perhaps white</source>
<translation>dieselbe saure Traube, vielleicht weiß</translation>
</message>
<message>
<source>the same sour grape, without the colour</source>
<translation>dieselbe saure Traube, ohne die Farbe</translation>
</message>
<message>
<source>the same spice without alcohol, sweeter, so pour half</source>
<translation>dasselbe Gewürz ohne Alkohol, süßer, darum die Hälfte nehmen</translation>
</message>
<message>
<source>the same spice without alcohol, sweeter, so pour less</source>
<translation>dasselbe Gewürz ohne Alkohol, süßer, darum weniger nehmen</translation>
</message>
<message>
<source>the same spices with tea</source>
<translation>dieselben Gewürze mit Tee</translation>
</message>
<message>
<source>the same spices without the tea</source>
<translation>dieselben Gewürze ohne den Tee</translation>
</message>
<message>
<source>the same spirit with less oak</source>
<translation>derselbe Brand mit weniger Eiche</translation>
</message>
<message>
<source>the same spirit with more oak</source>
<translation>derselbe Brand mit mehr Eiche</translation>
</message>
<message>
<source>the same spirit with no oak at all</source>
<translation>derselbe Brand ganz ohne Eiche</translation>
</message>
<message>
<source>the same spirit with some months of oak</source>
<translation>derselbe Brand mit einigen Monaten in Eiche</translation>
</message>
<message>
<source>the same spirit with years of oak, and dearer than the drink needs</source>
<translation>derselbe Brand mit Jahren in Eiche und teurer, als der Drink braucht</translation>
</message>
<message>
<source>the same spirit with years of oak; the fresh agave is gone</source>
<translation>derselbe Brand mit Jahren in Eiche; die frische Agave ist weg</translation>
</message>
<message>
<source>the same spirit without the cherry; a barspoon of cherry liqueur brings it back</source>
<translation>derselbe Brand ohne die Kirsche; ein Barlöffel Kirschlikör bringt sie zurück</translation>
</message>
<message>
<source>the same spirit without the coffee; four beans shaken with it help</source>
<translation>derselbe Brand ohne den Kaffee; vier mitgeschüttelte Bohnen helfen</translation>
</message>
<message>
<source>the same spirit without the cucumber; crush two slices in the shaker</source>
<translation>derselbe Brand ohne die Gurke; drück zwei Scheiben im Shaker an</translation>
</message>
<message>
<source>the same spirit without the fruit; a barspoon of crème de cassis brings it back</source>
<translation>derselbe Brand ohne die Frucht; ein Barlöffel Crème de Cassis bringt sie zurück</translation>
</message>
<message>
<source>the same spirit without the fruit; crush a strawberry in the shaker</source>
<translation>derselbe Brand ohne die Frucht; drück eine Erdbeere im Shaker an</translation>
</message>
<message>
<source>the same spirit without the fruit; crush three blackberries in the shaker</source>
<translation>derselbe Brand ohne die Frucht; drück drei Brombeeren im Shaker an</translation>
</message>
<message>
<source>the same spirit without the fruit; crush three raspberries in the shaker</source>
<translation>derselbe Brand ohne die Frucht; drück drei Himbeeren im Shaker an</translation>
</message>
<message>
<source>the same spirit without the fruit; press a grapefruit peel over the shaker</source>
<translation>derselbe Brand ohne die Frucht; drück eine Grapefruitschale über dem Shaker aus</translation>
</message>
<message>
<source>the same spirit without the lemon; press a lemon peel over the shaker</source>
<translation>derselbe Brand ohne die Zitrone; drück eine Zitronenschale über dem Shaker aus</translation>
</message>
<message>
<source>the same spirit without the oak</source>
<translation>derselbe Brand ohne die Eiche</translation>
</message>
<message>
<source>the same spirit without the orange; press an orange peel over the shaker</source>
<translation>derselbe Brand ohne die Orange; drück eine Orangenschale über dem Shaker aus</translation>
</message>
<message>
<source>the same spirit without the peach; a barspoon of peach liqueur brings it back</source>
<translation>derselbe Brand ohne den Pfirsich; ein Barlöffel Pfirsichlikör bringt ihn zurück</translation>
</message>
<message>
<source>the same spirit without the pear</source>
<translation>derselbe Brand ohne die Birne</translation>
</message>
<message>
<source>the same spirit without the pineapple</source>
<translation>derselbe Brand ohne die Ananas</translation>
</message>
<message>
<source>the same spirit without vanilla; sweeten with vanilla syrup if there is room</source>
<translation>derselbe Brand ohne Vanille; süße mit Vanillesirup, wenn Platz ist</translation>
</message>
<message>
<source>the same spirit, but hardly more than its oak is tasted</source>
<translation>derselbe Brand, aber man schmeckt kaum mehr als seine Eiche</translation>
</message>
<message>
<source>the same spirit, but the hay and vanilla of the grass are gone</source>
<translation>derselbe Brand, aber Heu und Vanille des Grases fehlen</translation>
</message>
<message>
<source>the same spirit, younger</source>
<translation>derselbe Brand, jünger</translation>
</message>
<message>
<source>the same stalk, sweeter and less sour, so pour less</source>
<translation>dieselbe Stange, süßer und weniger sauer, darum weniger nehmen</translation>
</message>
<message>
<source>the same style a quarter weaker, so pour more</source>
<translation>derselbe Stil, ein Viertel schwächer, darum mehr nehmen</translation>
</message>
<message>
<source>the same style a third stronger, so pour less and stir a little longer</source>
<translation>derselbe Stil, ein Drittel stärker, darum weniger nehmen und etwas länger rühren</translation>
</message>
<message>
<source>the same style, mostly blended to be lighter</source>
<translation>derselbe Stil, meist leichter verschnitten</translation>
</message>
<message>
<source>the same sugar in water, so the drink gets a little thinner</source>
<translation>derselbe Zucker in Wasser, darum wird der Drink etwas dünner</translation>
</message>
<message>
<source>the same sugar in water, without the grit</source>
<translation>derselbe Zucker in Wasser, ohne das Körnige</translation>
</message>
<message>
<source>the same sugar loose: four grams, a level teaspoon</source>
<translation>derselbe Zucker lose: vier Gramm, ein gestrichener Teelöffel</translation>
</message>
<message>
<source>the same sugar pressed, four grams each; crush it</source>
<translation>derselbe Zucker gepresst, je vier Gramm; zerdrücke ihn</translation>
</message>
<message>
<source>the same sugar with darker spice</source>
<translation>derselbe Zucker mit dunklerer Würze</translation>
</message>
<message>
<source>the same sugar with lighter spice</source>
<translation>derselbe Zucker mit leichterer Würze</translation>
</message>
<message>
<source>the same sugar, coarser and without the starch</source>
<translation>derselbe Zucker, gröber und ohne die Stärke</translation>
</message>
<message>
<source>the same sugar, dark spice in place of vanilla</source>
<translation>derselbe Zucker, dunkle Würze statt Vanille</translation>
</message>
<message>
<source>the same sugar, denser and silkier, so pour less</source>
<translation>derselbe Zucker, dichter und seidiger, darum weniger nehmen</translation>
</message>
<message>
<source>the same sugar, denser, so pour less</source>
<translation>derselbe Zucker, dichter, darum weniger nehmen</translation>
</message>
<message>
<source>the same sugar, pink and with red fruit</source>
<translation>derselbe Zucker, rosa und mit roter Frucht</translation>
</message>
<message>
<source>the same sugar, thinner, so pour more</source>
<translation>derselbe Zucker, dünner, darum mehr nehmen</translation>
</message>
<message>
<source>the same sugar, vanilla in place of dark spice</source>
<translation>derselbe Zucker, Vanille statt dunkler Würze</translation>
</message>
<message>
<source>the same sugar, without the red fruit</source>
<translation>derselbe Zucker, ohne die rote Frucht</translation>
</message>
<message>
<source>the same sweetness without the berries and the red</source>
<translation>dieselbe Süße ohne die Beeren und das Rot</translation>
</message>
<message>
<source>the same sweetness without the colour</source>
<translation>dieselbe Süße ohne die Farbe</translation>
</message>
<message>
<source>the same sweetness, and it colours the drink</source>
<translation>dieselbe Süße, und sie färbt den Drink</translation>
</message>
<message>
<source>the same taste without the blue</source>
<translation>derselbe Geschmack ohne das Blau</translation>
</message>
<message>
<source>the same taste: half a star for each gram</source>
<translation>derselbe Geschmack: ein halber Stern je Gramm</translation>
</message>
<message>
<source>the same tea with a flower</source>
<translation>derselbe Tee mit einer Blüte</translation>
</message>
<message>
<source>the same tea without the flower</source>
<translation>derselbe Tee ohne die Blüte</translation>
</message>
<message>
<source>the same tea without the smoke</source>
<translation>derselbe Tee ohne den Rauch</translation>
</message>
<message>
<source>the same whiskey a little weaker, so pour more</source>
<translation>derselbe Whiskey, etwas schwächer, darum mehr nehmen</translation>
</message>
<message>
<source>the same whiskey weaker, so pour more</source>
<translation>derselbe Whiskey, schwächer, darum mehr nehmen</translation>
</message>
<message>
<source>the same whiskey, lighter and less oily</source>
<translation>derselbe Whiskey, leichter und weniger ölig</translation>
</message>
<message>
<source>the same whiskey, weaker, so pour a little more</source>
<translation>derselbe Whiskey, schwächer, darum etwas mehr nehmen</translation>
</message>
<message>
<source>the same whisky weaker, so pour more</source>
<translation>derselbe Whisky, schwächer, darum mehr nehmen</translation>
</message>
<message>
<source>the same white dried; stir an eighth of its weight into water first</source>
<translation>dasselbe Eiweiß getrocknet; rühr zuerst ein Achtel seines Gewichts in Wasser</translation>
</message>
<message>
<source>the same white made safe by heat, slower to foam</source>
<translation>dasselbe Eiweiß, durch Hitze sicher gemacht, schäumt langsamer</translation>
</message>
<message>
<source>the same white with its water</source>
<translation>dasselbe Eiweiß mit seinem Wasser</translation>
</message>
<message>
<source>the same wine before it ages, lighter</source>
<translation>derselbe Wein vor dem Reifen, leichter</translation>
</message>
<message>
<source>the same wine from inland, a little less salty</source>
<translation>derselbe Wein aus dem Landesinneren, etwas weniger salzig</translation>
</message>
<message>
<source>the same wine without its sugar; add a barspoon of syrup</source>
<translation>derselbe Wein ohne seinen Zucker; gib einen Barlöffel Sirup zu</translation>
</message>
<message>
<source>the same wine, perhaps drier</source>
<translation>derselbe Wein, vielleicht trockener</translation>
</message>
<message>
<source>the same wine, perhaps sweeter</source>
<translation>derselbe Wein, vielleicht süßer</translation>
</message>
<message>
<source>the scent of it without the juice</source>
<translation>der Duft ohne den Saft</translation>
</message>
<message>
<source>the scent of the fruit's peel, without the leaf</source>
<translation>der Duft der Fruchtschale, ohne das Blatt</translation>
</message>
<message>
<source>the schema “{schema}” in that database is empty</source>
<translation>das Schema „{schema}“ in dieser Datenbank ist leer</translation>
</message>
<message>
<source>the server does not take the password of {user}; {how}</source>
<translation>der Server nimmt das Passwort nicht an ({user}); {how}</translation>
</message>
<message>
<source>the server is out of memory</source>
<translation>dem Server fehlt Speicher</translation>
</message>
<message>
<source>the server says “{said}”</source>
<translation>der Server sagt „{said}“</translation>
</message>
<message>
<source>the server takes no changes</source>
<translation>der Server nimmt keine Änderungen an</translation>
</message>
<message>
<source>the server wants a password of {user}; {how}</source>
<translation>der Server verlangt ein Passwort ({user}); {how}</translation>
</message>
<message>
<source>the server's disk is full</source>
<translation>der Datenträger des Servers ist voll</translation>
</message>
<message>
<source>the serves made</source>
<translation>die gemachten Portionen</translation>
</message>
<message>
<source>the settings</source>
<translation>die Einstellungen</translation>
</message>
<message>
<source>the shoot {name}</source>
<translation>der Dreh {name}</translation>
</message>
<message>
<source>the shoot {theme}</source>
<translation>den Dreh {theme}</translation>
</message>
<message>
<source>the shopping list</source>
<translation>die Einkaufsliste</translation>
</message>
<message>
<source>the spec of {names} was removed</source>
<translation>das Rezept von {names} wurde entfernt</translation>
</message>
<message>
<source>the spec {name}</source>
<translation>das Rezept {name}</translation>
</message>
<message>
<source>the spice of apple bitters without the fruit</source>
<translation>die Würze von Apfelbitters ohne die Frucht</translation>
</message>
<message>
<source>the strongest of the ordinary rums, so pour a little more</source>
<translation>der stärkste der gewöhnlichen Rums, darum etwas mehr nehmen</translation>
</message>
<message>
<source>the sugar without its water; dissolve it in the citrus before the ice</source>
<translation>der Zucker ohne sein Wasser; löse ihn im Zitrussaft, bevor das Eis kommt</translation>
</message>
<message>
<source>the sugar without the spice; grind some cinnamon into it</source>
<translation>der Zucker ohne das Gewürz; mahle etwas Zimt hinein</translation>
</message>
<message>
<source>the sugar without the vanilla; a drop of extract helps where alcohol is no matter</source>
<translation>der Zucker ohne die Vanille; ein Tropfen Extrakt hilft, wo Alkohol nichts ausmacht</translation>
</message>
<message>
<source>the tables of a bar are not in its schema “{schema}” any more</source>
<translation>die Tabellen einer Bar sind nicht mehr in ihrem Schema „{schema}“</translation>
</message>
<message>
<source>the taste is one earthy root, and other bitters hide it behind orange and caramel</source>
<translation>der Geschmack ist eine einzige erdige Wurzel, und andere Bittere verstecken sie hinter Orange und Karamell</translation>
</message>
<message>
<source>the tea without its sugar; add a little syrup</source>
<translation>der Tee ohne seinen Zucker; gib etwas Sirup zu</translation>
</message>
<message>
<source>the tea without the flower</source>
<translation>der Tee ohne die Blüte</translation>
</message>
<message>
<source>the tea without the spices</source>
<translation>der Tee ohne die Gewürze</translation>
</message>
<message>
<source>the tin</source>
<translation>der Shakerbecher</translation>
</message>
<message>
<source>the title “{words}” in its method</source>
<translation>der Titel „{words}“ in der Zubereitung</translation>
</message>
<message>
<source>the trial of {name}</source>
<translation>den Versuch von {name}</translation>
</message>
<message>
<source>the user “{user}”</source>
<translation>der Benutzer „{user}“</translation>
</message>
<message>
<source>the vessel takes {usable_ml:.0f} ml and one serve is {serve_ml:.0f} ml</source>
<translation>das Gefäß fasst {usable_ml:.0f} ml, und eine Portion ist {serve_ml:.0f} ml</translation>
</message>
<message>
<source>the weight of {title}</source>
<translation>das Gewicht von {title}</translation>
</message>
<message>
<source>the {glass}es</source>
<translation>die Gläser ({glass})</translation>
</message>
<message>
<source>the {glass}s</source>
<translation>die Gläser ({glass})</translation>
</message>
<message>
<source>the {record} was changed in another way since</source>
<translation>seither wurde auf andere Weise etwas daran geändert ({record})</translation>
</message>
<message>
<source>theme</source>
<translation>Thema</translation>
</message>
<message>
<source>then {each}</source>
<translation>dann {each}</translation>
</message>
<message>
<source>there</source>
<translation>vorhanden</translation>
</message>
<message>
<source>there are no own measures to take away</source>
<translation>es gibt keine eigenen Maße zum Entfernen</translation>
</message>
<message>
<source>there is a bar in it already</source>
<translation>darin ist schon eine Bar</translation>
</message>
<message>
<source>there is a file of that name already</source>
<translation>eine Datei dieses Namens gibt es schon</translation>
</message>
<message>
<source>there is no bar in it</source>
<translation>darin ist keine Bar</translation>
</message>
<message>
<source>there is no bottle in it</source>
<translation>es steht keine Flasche darin</translation>
</message>
<message>
<source>there is no column “{where}”</source>
<translation>es gibt keine Spalte „{where}“</translation>
</message>
<message>
<source>there is no database “{database}” on that server</source>
<translation>auf diesem Server gibt es keine Datenbank „{database}“</translation>
</message>
<message>
<source>there is no ingredient of this name; add it first</source>
<translation>es gibt keine Zutat dieses Namens; füge sie zuerst hinzu</translation>
</message>
<message>
<source>there is no ingredient of this name; the nearest are {names}</source>
<translation>es gibt keine Zutat dieses Namens; am nächsten sind {names}</translation>
</message>
<message>
<source>there is no schema “{schema}” in that database</source>
<translation>in dieser Datenbank gibt es kein Schema „{schema}“</translation>
</message>
<message>
<source>there is no schema.org Recipe in it</source>
<translation>es ist kein Recipe von schema.org darin</translation>
</message>
<message>
<source>there is no schema.org Recipe in it, nor a text that is plainly a recipe</source>
<translation>es ist kein Recipe von schema.org darin und auch kein Text, der klar ein Rezept ist</translation>
</message>
<message>
<source>there is no spec in it</source>
<translation>es ist kein Rezept darin</translation>
</message>
<message>
<source>there is no such day</source>
<translation>diesen Tag gibt es nicht</translation>
</message>
<message>
<source>there is no such file</source>
<translation>diese Datei gibt es nicht</translation>
</message>
<message>
<source>there is no such folder</source>
<translation>diesen Ordner gibt es nicht</translation>
</message>
<message>
<source>there is no such measure to take away; there are {names}</source>
<translation>ein solches Maß gibt es nicht; es gibt {names}</translation>
</message>
<message>
<source>there is no such measure to take away; there is {name}</source>
<translation>ein solches Maß gibt es nicht; es gibt {name}</translation>
</message>
<message>
<source>there is no {ingredient} in it</source>
<translation>darin ist kein {ingredient}</translation>
</message>
<message>
<source>there is none in the bar</source>
<translation>davon ist nichts in der Bar</translation>
</message>
<message>
<source>there is none of it to take away</source>
<translation>davon ist nichts da, was sich wegnehmen ließe</translation>
</message>
<message>
<source>there is nothing to do</source>
<translation>es gibt nichts zu tun</translation>
</message>
<message>
<source>thing</source>
<translation>Posten</translation>
</message>
<message>
<source>things</source>
<translation>Posten</translation>
</message>
<message>
<source>thinner, as full, tasting of honey</source>
<translation>dünner, ebenso voll, schmeckt nach Honig</translation>
</message>
<message>
<source>thinner, as full, tasting of maple</source>
<translation>dünner, ebenso voll, schmeckt nach Ahorn</translation>
</message>
<message>
<source>thinner, tasting of honey, so pour more</source>
<translation>dünner, schmeckt nach Honig, darum mehr nehmen</translation>
</message>
<message>
<source>thinner, toffee in place of caramel</source>
<translation>dünner, Toffee statt Karamell</translation>
</message>
<message>
<source>thinner, with a taste of nut: mind allergies</source>
<translation>dünner, mit Nussgeschmack: Allergien beachten</translation>
</message>
<message>
<source>thinner, without the note of agave, so pour more</source>
<translation>dünner, ohne die Agavennote, darum mehr nehmen</translation>
</message>
<message>
<source>thinner, without the silk, so pour more</source>
<translation>dünner, ohne das Seidige, darum mehr nehmen</translation>
</message>
<message>
<source>thinner, without the toffee, so pour more</source>
<translation>dünner, ohne das Toffee, darum mehr nehmen</translation>
</message>
<message>
<source>this amount cannot be read; {examples}</source>
<translation>diese Menge lässt sich nicht lesen; {examples}</translation>
</message>
<message>
<source>this bar reckons in {currency}; write what it comes to in that</source>
<translation>diese Bar rechnet in {currency}; schreib, wie viel es darin ist</translation>
</message>
<message>
<source>this column is missing</source>
<translation>diese Spalte fehlt</translation>
</message>
<message>
<source>this corrects a line before it, and there is none</source>
<translation>dies berichtigt eine Zeile davor, und es gibt keine</translation>
</message>
<message>
<source>this is not CSV: {error}</source>
<translation>das ist kein CSV: {error}</translation>
</message>
<message>
<source>this looks like a line of another spec; {do}</source>
<translation>das sieht nach einer Zeile eines anderen Rezepts aus; {do}</translation>
</message>
<message>
<source>this looks like an ingredient; it belongs above the empty line before the method</source>
<translation>das sieht nach einer Zutat aus; sie gehört über die Leerzeile vor der Zubereitung</translation>
</message>
<message>
<source>this one is kept, but hidden</source>
<translation>dieser bleibt, aber ausgeblendet</translation>
</message>
<message>
<source>this reads like a step of the method</source>
<translation>das liest sich wie ein Schritt der Zubereitung</translation>
</message>
<message>
<source>this row has more fields than the header's {width}; quote a field with commas ({said} stands beyond)</source>
<translation>diese Zeile hat mehr Felder als die {width} der Kopfzeile; setze ein Feld mit Kommas in Anführungszeichen ({said} steht dahinter)</translation>
</message>
<message>
<source>this system's desktop knows programs otherwise</source>
<translation>der Desktop dieses Systems kennt Programme auf andere Weise</translation>
</message>
<message>
<source>this table is missing</source>
<translation>diese Tabelle fehlt</translation>
</message>
<message>
<source>this user</source>
<translation>dieser Benutzer</translation>
</message>
<message>
<source>three</source>
<translation>drei</translation>
</message>
<message>
<source>three-piece shaker</source>
<translation>dreiteiliger Shaker</translation>
</message>
<message>
<source>tick what you own</source>
<translation>kreuze an, was du hast</translation>
</message>
<message>
<source>ticked</source>
<translation>angekreuzt</translation>
</message>
<message>
<source>tiki mug</source>
<translation>Tikibecher</translation>
</message>
<message>
<source>times as much</source>
<translation>-mal so viel</translation>
</message>
<message>
<source>tin</source>
<translation>Shakerbecher</translation>
</message>
<message>
<source>to blend with</source>
<translation>zum Mixen</translation>
</message>
<message>
<source>to buy</source>
<translation>zu kaufen</translation>
</message>
<message>
<source>to cut from {named}</source>
<translation>zu schneiden aus {named}</translation>
</message>
<message>
<source>to make from {named}</source>
<translation>zu machen aus {named}</translation>
</message>
<message>
<source>to shake with</source>
<translation>zum Schütteln</translation>
</message>
<message>
<source>to stir with</source>
<translation>zum Rühren</translation>
</message>
<message>
<source>to swizzle with</source>
<translation>zum Swizzeln</translation>
</message>
<message>
<source>to the drop</source>
<translation>auf den Tropfen genau</translation>
</message>
<message>
<source>to throw with</source>
<translation>zum Werfen</translation>
</message>
<message>
<source>to {day}, which is over: {left} left of {there}</source>
<translation>bis {day}, das ist vorbei: {left} von {there} übrig</translation>
</message>
<message>
<source>to {day}: {left} left of {there}</source>
<translation>bis {day}: {left} von {there} übrig</translation>
</message>
<message>
<source>tobacco</source>
<translation>Tabak</translation>
</message>
<message>
<source>today</source>
<translation>heute</translation>
</message>
<message>
<source>today</source>
<comment>when a shoot is filmed</comment>
<translation>heute</translation>
</message>
<message>
<source>toffee too and denser, so pour less</source>
<translation>auch Toffee und dichter, darum weniger nehmen</translation>
</message>
<message>
<source>together also {drinks}; {apart}</source>
<translation>zusammen auch {drinks}; {apart}</translation>
</message>
<message>
<source>tomorrow</source>
<comment>when a shoot is filmed</comment>
<translation>morgen</translation>
</message>
<message>
<source>tree nuts</source>
<translation>Schalenfrüchte</translation>
</message>
<message>
<source>trial</source>
<translation>Versuch</translation>
</message>
<message>
<source>trials</source>
<translation>Versuche</translation>
</message>
<message>
<source>trials need at least one to be scored on</source>
<translation>Versuche brauchen mindestens eine, auf der bewertet wird</translation>
</message>
<message>
<source>tropical too, less of flowers</source>
<translation>auch tropisch, weniger blumig</translation>
</message>
<message>
<source>tropical too, sharper</source>
<translation>auch tropisch, säuerlicher</translation>
</message>
<message>
<source>true or false</source>
<translation>wahr oder falsch</translation>
</message>
<message>
<source>turns to slush</source>
<comment>a drink in a freezer</comment>
<translation>wird zu Eisbrei</translation>
</message>
<message>
<source>turns to slush</source>
<comment>in a freezer it …</comment>
<translation>wird es zu Eisbrei</translation>
</message>
<message>
<source>turns {number} ready</source>
<translation>macht {number} machbar</translation>
</message>
<message>
<source>twice the fat, so pour less</source>
<translation>doppelt so viel Fett, darum weniger nehmen</translation>
</message>
<message>
<source>two</source>
<translation>zwei</translation>
</message>
<message>
<source>two hours before</source>
<translation>zwei Stunden vorher</translation>
</message>
<message>
<source>two tins</source>
<translation>zwei Shakerbecher</translation>
</message>
<message>
<source>typical size</source>
<translation>übliche Größe</translation>
</message>
<message>
<source>under</source>
<translation>unter</translation>
</message>
<message>
<source>under 1 %</source>
<translation>unter 1 %</translation>
</message>
<message>
<source>under age</source>
<translation>Minderjährige</translation>
</message>
<message>
<source>undiluted, so pour less and stir it into the citrus first</source>
<translation>unverdünnt, darum weniger nehmen und zuerst in den Zitrussaft rühren</translation>
</message>
<message>
<source>undo</source>
<comment>inside a sentence</comment>
<translation>rückgängig machen</translation>
</message>
<message>
<source>unit</source>
<translation>Einheit</translation>
</message>
<message>
<source>units</source>
<translation>Einheiten</translation>
</message>
<message>
<source>unopened</source>
<translation>ungeöffnet</translation>
</message>
<message>
<source>use by</source>
<translation>haltbar bis</translation>
</message>
<message>
<source>use by</source>
<comment>a date of a bottle</comment>
<translation>haltbar bis</translation>
</message>
<message>
<source>use by {day}</source>
<translation>haltbar bis {day}</translation>
</message>
<message>
<source>use by {last}</source>
<translation>haltbar bis {last}</translation>
</message>
<message>
<source>used</source>
<translation>verbraucht</translation>
</message>
<message>
<source>uses something of the bar that is due in 7, in 14 days</source>
<translation>verbraucht etwas aus der Bar, das in 7, in 14 Tagen fällig ist</translation>
</message>
<message>
<source>usual size</source>
<translation>übliche Größe</translation>
</message>
<message>
<source>usual {low:g} to {high:g}</source>
<translation>üblich {low:g} bis {high:g}</translation>
</message>
<message>
<source>usually {abv:g} % vol</source>
<translation>meist {abv:g} % vol</translation>
</message>
<message>
<source>version</source>
<translation>Version</translation>
</message>
<message>
<source>versions</source>
<translation>Fassungen</translation>
</message>
<message>
<source>video of a step</source>
<translation>Video eines Schritts</translation>
</message>
<message>
<source>violet</source>
<translation>violett</translation>
</message>
<message>
<source>was done again already</source>
<translation>wurde schon wiederholt</translation>
</message>
<message>
<source>was followed by another change</source>
<translation>ist nicht mehr die letzte Änderung</translation>
</message>
<message>
<source>was followed by “{label}”</source>
<translation>ist nicht mehr die letzte Änderung, danach kam „{label}“</translation>
</message>
<message>
<source>was undone already</source>
<translation>wurde schon rückgängig gemacht</translation>
</message>
<message>
<source>weaker</source>
<translation>schwächer</translation>
</message>
<message>
<source>weaker, white and fruitier, so pour a little more</source>
<translation>schwächer, weiß und fruchtiger, darum etwas mehr nehmen</translation>
</message>
<message>
<source>week</source>
<translation>Woche</translation>
</message>
<message>
<source>weeks</source>
<translation>Wochen</translation>
</message>
<message>
<source>weigh</source>
<translation>wiegen</translation>
</message>
<message>
<source>weighed</source>
<translation>gewogen</translation>
</message>
<message>
<source>weighed empty</source>
<translation>leer gewogen</translation>
</message>
<message>
<source>weight</source>
<translation>Gewicht</translation>
</message>
<message>
<source>what is in {title} weighs {density_g_per_ml:.3f} g per ml</source>
<translation>der Inhalt von {title} wiegt {density_g_per_ml:.3f} g je ml</translation>
</message>
<message>
<source>what is left is a volume</source>
<translation>was noch da ist, ist ein Volumen</translation>
</message>
<message>
<source>what is poured is a number of ml</source>
<translation>was ausgeschenkt wird, ist eine Zahl in ml</translation>
</message>
<message>
<source>what is there cannot be read as a bar; keep it by pg_dump first</source>
<translation>was dort ist, lässt sich nicht als Bar lesen; sichere es zuerst mit pg_dump</translation>
</message>
<message>
<source>what it belongs to cannot be read</source>
<translation>wozu es gehört, ist nicht lesbar</translation>
</message>
<message>
<source>what it lacks</source>
<translation>was ihm fehlt</translation>
</message>
<message>
<source>what it says of ingredients: {error}</source>
<translation>was sie von Zutaten sagt: {error}</translation>
</message>
<message>
<source>what stands there is kept as it is</source>
<translation>was dort steht, bleibt, wie es ist</translation>
</message>
<message>
<source>what stood there is lost</source>
<translation>was dort stand, ist verloren</translation>
</message>
<message>
<source>what to compare</source>
<translation>Vergleich</translation>
</message>
<message>
<source>what was pasted</source>
<translation>das Eingefügte</translation>
</message>
<message>
<source>what you can make</source>
<translation>was du machen kannst</translation>
</message>
<message>
<source>what you say of {offered} for {wanted}</source>
<translation>was du über {offered} für {wanted} angibst</translation>
</message>
<message>
<source>wheat</source>
<translation>Weizen</translation>
</message>
<message>
<source>when it was is not known</source>
<translation>wann es war, ist nicht bekannt</translation>
</message>
<message>
<source>where one is named, each score needs who gave it</source>
<translation>wo einer genannt ist, braucht jede Bewertung einen Namen</translation>
</message>
<message>
<source>which day? {how}</source>
<translation>welcher Tag? {how}</translation>
</message>
<message>
<source>which garnish is this? write what it is, such as a lemon peel</source>
<translation>welche Garnitur ist das? Schreib, was es ist, etwa eine Zitronenzeste</translation>
</message>
<message>
<source>which one is meant, {names}?</source>
<translation>was ist gemeint, {names}?</translation>
</message>
<message>
<source>which {kinds} are “{words}”?</source>
<translation>was für {kinds} sind „{words}“?</translation>
</message>
<message>
<source>which {kind} is “{words}”?</source>
<translation>was für {kind} ist „{words}“?</translation>
</message>
<message>
<source>which {kind} is “{words}”? write its name</source>
<translation>was für {kind} ist „{words}“? Schreib den Namen</translation>
</message>
<message>
<source>which {name} is this?</source>
<translation>was für {name} ist das?</translation>
</message>
<message>
<source>which {name} is this? write its name</source>
<translation>was für {name} ist das? Schreib den Namen</translation>
</message>
<message>
<source>whichever of them is there</source>
<translation>was davon da ist</translation>
</message>
<message>
<source>whisk or frother</source>
<translation>Schneebesen oder Milchschäumer</translation>
</message>
<message>
<source>whisky without its barrel</source>
<translation>Whisky ohne sein Fass</translation>
</message>
<message>
<source>who looks after the server can make one for that user: </source>
<translation>wer den Server betreut, kann eines für diesen Benutzer anlegen: </translation>
</message>
<message>
<source>whoever asks for it asks for no alcohol, and each is made to a taste of its own</source>
<translation>wer das verlangt, verlangt keinen Alkohol, und jeder ist auf eigenen Geschmack gemacht</translation>
</message>
<message>
<source>whoever asks for it asks for no alcohol, and every other beer has some</source>
<translation>wer das verlangt, verlangt keinen Alkohol, und jedes andere Bier hat welchen</translation>
</message>
<message>
<source>whoever asks for it asks for no alcohol, and every other bitter aperitif has some</source>
<translation>wer das verlangt, verlangt keinen Alkohol, und jeder andere bittere Aperitif hat welchen</translation>
</message>
<message>
<source>whoever asks for it asks for no alcohol, and every sparkling wine has some</source>
<translation>wer das verlangt, verlangt keinen Alkohol, und jeder Schaumwein hat welchen</translation>
</message>
<message>
<source>whoever asks for it leaves out egg, and nothing else without egg foams as well</source>
<translation>wer das verlangt, lässt Ei weg, und nichts anderes ohne Ei schäumt so gut</translation>
</message>
<message>
<source>why</source>
<translation>Grund</translation>
</message>
<message>
<source>wine bottle</source>
<translation>Weinflasche</translation>
</message>
<message>
<source>wine bottle with high shoulders</source>
<translation>Weinflasche mit hohen Schultern</translation>
</message>
<message>
<source>wine bottle with sloping shoulders</source>
<translation>Weinflasche mit abfallenden Schultern</translation>
</message>
<message>
<source>wine glass</source>
<translation>Weinglas</translation>
</message>
<message>
<source>with</source>
<translation>mit</translation>
</message>
<message>
<source>with a stand-in</source>
<translation>mit Ersatz</translation>
</message>
<message>
<source>with a stand-in then: {drinks}</source>
<translation>dann mit Ersatz: {drinks}</translation>
</message>
<message>
<source>with {beside}</source>
<translation>dazu {beside}</translation>
</message>
<message>
<source>with {full_g:g} g full that would be {holds_ml:.0f} ml in it, not {size:g}, so look at both weights again</source>
<translation>mit {full_g:g} g voll wären das {holds_ml:.0f} ml darin, nicht {size:g}, also beide Gewichte noch einmal prüfen</translation>
</message>
<message>
<source>with {names}</source>
<translation>mit {names}</translation>
</message>
<message>
<source>within {bottles}</source>
<translation>mit höchstens {bottles}</translation>
</message>
<message>
<source>within {bottles} and for {budget}</source>
<translation>mit höchstens {bottles} und für {budget}</translation>
</message>
<message>
<source>within {days} day</source>
<translation>innerhalb von {days} Tag</translation>
</message>
<message>
<source>within {days} days</source>
<translation>innerhalb von {days} Tagen</translation>
</message>
<message>
<source>without</source>
<translation>ohne</translation>
</message>
<message>
<source>without alcohol</source>
<translation>ohne Alkohol</translation>
</message>
<message>
<source>without the optional {names}</source>
<translation>ohne {names} (optional)</translation>
</message>
<message>
<source>without {names}</source>
<translation>ohne {names}</translation>
</message>
<message>
<source>worded otherwise</source>
<translation>anders formuliert</translation>
</message>
<message>
<source>words of its name begin so</source>
<translation>Wörter seines Namens beginnen so</translation>
</message>
<message>
<source>worked out</source>
<translation>errechnet</translation>
</message>
<message>
<source>worked out from {full_g:g} g full</source>
<translation>errechnet aus {full_g:g} g voll</translation>
</message>
<message>
<source>write % vol, such as 41.2, or proof, such as 86 proof</source>
<translation>schreib % vol, etwa 41.2, oder proof, etwa 86 proof</translation>
</message>
<message>
<source>write a day as 2026-03-31</source>
<translation>schreib einen Tag als 2026-03-31</translation>
</message>
<message>
<source>write a name, an equals sign and what it holds, such as small ladle = 1.5 oz</source>
<translation>schreib einen Namen, ein Gleichheitszeichen und was es fasst, etwa small ladle = 1.5 oz</translation>
</message>
<message>
<source>write a number and a unit, such as 60 ml, 1 1/2 oz or 2 dashes</source>
<translation>schreib eine Zahl und eine Einheit, etwa 60 ml, 1 1/2 oz oder 2 dashes</translation>
</message>
<message>
<source>write a number of days, such as due:14</source>
<translation>schreib eine Zahl von Tagen, etwa due:14</translation>
</message>
<message>
<source>write a number, such as 24.50</source>
<translation>schreib eine Zahl wie 24.50</translation>
</message>
<message>
<source>write a share or an amount</source>
<translation>schreib einen Anteil oder eine Menge</translation>
</message>
<message>
<source>write a strength such as &gt;25, &lt;12 or 18..24, in % vol, or light</source>
<translation>schreib einen Alkoholgehalt wie &gt;25, &lt;12 oder 18..24, in % vol, oder light</translation>
</message>
<message>
<source>write an amount such as 80 or 79.50</source>
<translation>schreib einen Betrag, etwa 80 oder 79.50</translation>
</message>
<message>
<source>write an hour and minutes, such as 15:00</source>
<translation>schreib Stunde und Minuten, etwa 15:00</translation>
</message>
<message>
<source>write g per ml, such as 0.957</source>
<translation>schreib g je ml, etwa 0.957</translation>
</message>
<message>
<source>write how many bottles it is, 1 to {most}</source>
<translation>schreib, wie viele Flaschen es sind, 1 bis {most}</translation>
</message>
<message>
<source>write how many pieces it holds, about {likely}</source>
<translation>schreib, wie viele Stück darin sind, etwa {likely}</translation>
</message>
<message>
<source>write it as sqlite:/// and the path, with nothing more</source>
<translation>schreib sie als sqlite:/// und den Pfad, ohne mehr</translation>
</message>
<message>
<source>write it as {likely}</source>
<translation>schreib es so: {likely}</translation>
</message>
<message>
<source>write it in ml, such as {example}</source>
<translation>schreib es in ml, etwa {example}</translation>
</message>
<message>
<source>write its unit, such as 0.7 l, 70 cl or 700 ml</source>
<translation>schreib die Einheit dazu, etwa 0.7 l, 70 cl oder 700 ml</translation>
</message>
<message>
<source>write one amount, not a range</source>
<translation>schreib eine Menge, keinen Bereich</translation>
</message>
<message>
<source>write one amount, such as 20 ml</source>
<translation>schreib eine Menge, etwa 20 ml</translation>
</message>
<message>
<source>write one number of serves, such as 12</source>
<translation>schreib eine Zahl von Portionen, etwa 12</translation>
</message>
<message>
<source>write one of {words}</source>
<translation>schreib eines von {words}</translation>
</message>
<message>
<source>write the kind, = and what a purchase of it costs, such as “calvados=30”</source>
<translation>schreib die Zutat, = und was ein Kauf davon kostet, etwa „calvados=30“</translation>
</message>
<message>
<source>write the scale and a number, who tasted before them if several did: “Ada Balance 4”</source>
<translation>schreib die Skala und eine Zahl, davor den Namen, wenn mehrere verkostet haben: „Ada Balance 4“</translation>
</message>
<message>
<source>write them as “Balance 1 to 5, On theme 1 to 10”</source>
<translation>schreib sie als „Balance 1 to 5, On theme 1 to 10“</translation>
</message>
<message>
<source>write what it takes, such as 500 g sugar</source>
<translation>schreib, was es braucht, etwa 500 g sugar</translation>
</message>
<message>
<source>write year, month and day: 2026-12-31</source>
<translation>schreib Jahr, Monat und Tag: 2026-12-31</translation>
</message>
<message>
<source>write yes or no</source>
<translation>schreib yes oder no</translation>
</message>
<message>
<source>write {abv:g} % vol or {abv:g} proof; the kind has about {usual:g} % vol</source>
<translation>schreib {abv:g} % vol oder {abv:g} proof; diese Zutat hat etwa {usual:g} % vol</translation>
</message>
<message>
<source>write {degrees} % where that is % vol, or {degrees} proof</source>
<translation>schreib {degrees} %, wenn das % vol sind, oder {degrees} proof</translation>
</message>
<message>
<source>write {number:g} % or {number:g} ml</source>
<translation>schreib {number:g} % oder {number:g} ml</translation>
</message>
<message>
<source>write {number:g} US proof or {number:g} UK proof: they are not the same</source>
<translation>schreib {number:g} US proof oder {number:g} UK proof: das ist nicht dasselbe</translation>
</message>
<message>
<source>write {percent:g} % or {number:g} %, whichever is meant</source>
<translation>schreib {percent:g} % oder {number:g} %, je nachdem, was gemeint ist</translation>
</message>
<message>
<source>write {said}</source>
<translation>schreib {said}</translation>
</message>
<message>
<source>write {share} where it is a share, or {abv:g} % where it is as weak as that</source>
<translation>schreib {share}, wenn es ein Anteil ist, oder {abv:g} %, wenn es so schwach ist</translation>
</message>
<message>
<source>write {size:g} cl or {size:g} ml</source>
<translation>schreib {size:g} cl oder {size:g} ml</translation>
</message>
<message>
<source>write {wanted}</source>
<translation>schreib {wanted}</translation>
</message>
<message>
<source>write {whole} for thousands or {decimal} for a decimal</source>
<translation>schreib {whole} für Tausend oder {decimal} für eine Dezimalzahl</translation>
</message>
<message>
<source>written as {matched}</source>
<translation>geschrieben als {matched}</translation>
</message>
<message>
<source>written on {moment}</source>
<translation>geschrieben am {moment}</translation>
</message>
<message>
<source>year</source>
<translation>Jahr</translation>
</message>
<message>
<source>years</source>
<translation>Jahre</translation>
</message>
<message>
<source>yellow</source>
<translation>gelb</translation>
</message>
<message>
<source>yellow stone fruit and dry too</source>
<translation>auch gelbes Steinobst und trocken</translation>
</message>
<message>
<source>yes</source>
<translation>ja</translation>
</message>
<message>
<source>yield</source>
<translation>Ergibt</translation>
</message>
<message>
<source>you put it on the list</source>
<translation>du hast es auf die Liste gesetzt</translation>
</message>
<message>
<source>young cane spirit too, grassier</source>
<translation>auch junger Zuckerrohrbrand, grasiger</translation>
</message>
<message>
<source>young cane spirit too, less grassy</source>
<translation>auch junger Zuckerrohrbrand, weniger grasig</translation>
</message>
<message>
<source>younger and far less fruity</source>
<translation>jünger und weit weniger fruchtig</translation>
</message>
<message>
<source>your bottles</source>
<translation>deinen Flaschen</translation>
</message>
<message>
<source>your own</source>
<translation>von dir</translation>
</message>
<message>
<source>your own spec</source>
<translation>dein eigenes Rezept</translation>
</message>
<message>
<source>{a_round} round is too much to shake in a {vessel}: up to {most} before ice shakes well. Make it in {goes} goes.</source>
<translation>Eine Runde von {a_round} ist zu viel zum Schütteln ({vessel}): bis {most} vor dem Eis schüttelt es sich gut. Mach sie in {goes} Gängen.</translation>
</message>
<message>
<source>{a_round} round is too much to stir in a {vessel}: up to {most} before ice stirs well. Make it in {goes} goes.</source>
<translation>Eine Runde von {a_round} ist zu viel zum Rühren ({vessel}): bis {most} vor dem Eis rührt es sich gut. Mach sie in {goes} Gängen.</translation>
</message>
<message>
<source>{act} trial of {day}</source>
<translation>{act} Versuch vom {day}</translation>
</message>
<message>
<source>{ahead} ahead, {to_log} to log, {all} in all</source>
<translation>{ahead} kommend, {to_log} ohne Protokoll, {all} insgesamt</translation>
</message>
<message>
<source>{amount:.0f} g/l of sugar</source>
<translation>{amount:.0f} g/l Zucker</translation>
</message>
<message>
<source>{amount:.1f} g/l of acid</source>
<translation>{amount:.1f} g/l Säure</translation>
</message>
<message>
<source>{amount:.2f} was paid for it; leave one of the two out</source>
<translation>bezahlt wurden {amount:.2f}; lass eins von beiden weg</translation>
</message>
<message>
<source>{amount:g} {unit} cannot be taken from {bottle}: the ledger says {left:g} {unit} is left. Count it first.</source>
<translation>{amount:g} {unit} lassen sich nicht aus {bottle} nehmen: nach dem Verlauf sind noch {left:g} {unit} übrig. Zähle sie zuerst.</translation>
</message>
<message>
<source>{amount:g} {unit} cannot have been spilled of {bottle}: {left:g} {unit} of it is left after what was poured. Write {left:g} {unit} if all of that was spilled.</source>
<translation>{amount:g} {unit} können aus {bottle} nicht verschüttet worden sein: Nach dem Ausschenken sind {left:g} {unit} davon übrig. Schreib {left:g} {unit}, wenn das alles verschüttet wurde.</translation>
</message>
<message>
<source>{amount} a serve</source>
<translation>{amount} je Portion</translation>
</message>
<message>
<source>{amount} a serve is guessed in {drink}: {because}.</source>
<translation>{amount} je Portion sind in {drink} geschätzt: {because}.</translation>
</message>
<message>
<source>{amount} left</source>
<translation>noch {amount}</translation>
</message>
<message>
<source>{amount} less</source>
<translation>{amount} weniger</translation>
</message>
<message>
<source>{amount} less than expected</source>
<translation>{amount} weniger als erwartet</translation>
</message>
<message>
<source>{amount} less, within {doubt}</source>
<translation>{amount} weniger, innerhalb {doubt}</translation>
</message>
<message>
<source>{amount} more</source>
<translation>{amount} mehr</translation>
</message>
<message>
<source>{amount} more than expected</source>
<translation>{amount} mehr als erwartet</translation>
</message>
<message>
<source>{amount} more, within {doubt}</source>
<translation>{amount} mehr, innerhalb {doubt}</translation>
</message>
<message>
<source>{amount} of the base</source>
<translation>{amount} der Basis</translation>
</message>
<message>
<source>{amount} of {bottle}</source>
<translation>{amount} {bottle}</translation>
</message>
<message>
<source>{amount} of {ingredient}</source>
<translation>{amount} {ingredient}</translation>
</message>
<message>
<source>{amount} of {ingredient} instead of {was}</source>
<translation>{amount} {ingredient} statt {was}</translation>
</message>
<message>
<source>{amount} of {name}</source>
<translation>{amount} {name}</translation>
</message>
<message>
<source>{amount} of {name} short for {drink}</source>
<translation>{amount} {name} fehlen für {drink}</translation>
</message>
<message>
<source>{amount} of {title} was spilled: not counted.</source>
<translation>{amount} {title} verschüttet: nicht mitgezählt.</translation>
</message>
<message>
<source>{amount} too much left</source>
<translation>{amount} zu viel übrig</translation>
</message>
<message>
<source>{asked}; the bar has it already</source>
<translation>{asked}; die Bar hat es schon</translation>
</message>
<message>
<source>{at:%Y-%m-%d} at {at:%H:%M}</source>
<translation>{at:%d.%m.%Y} um {at:%H:%M}</translation>
</message>
<message>
<source>{bar} – barkeep</source>
<translation>{bar} – barkeep</translation>
</message>
<message>
<source>{bar} – on paper – barkeep</source>
<translation>{bar} – auf dem Papier – barkeep</translation>
</message>
<message>
<source>{because}; volume and strength are without it</source>
<translation>{because}; Volumen und Alkoholgehalt sind ohne es</translation>
</message>
<message>
<source>{bottles:,} bottle came in</source>
<translation>{bottles:,} Flasche kam hinzu</translation>
</message>
<message>
<source>{bottles:,} bottles came in</source>
<translation>{bottles:,} Flaschen kamen hinzu</translation>
</message>
<message>
<source>{bottles} are there, but past their dates.</source>
<translation>{bottles} sind da, aber über ihrem Datum.</translation>
</message>
<message>
<source>{bottles} came in.</source>
<translation>{bottles} hinzugekommen.</translation>
</message>
<message>
<source>{bottles} carry nothing that can be made.</source>
<translation>An {bottles} hängt nichts, was machbar ist.</translation>
</message>
<message>
<source>{bottles} counted again</source>
<translation>{bottles} wieder gezählt</translation>
</message>
<message>
<source>{bottles} counted and not written down yet.</source>
<translation>{bottles} gezählt und noch nicht aufgeschrieben.</translation>
</message>
<message>
<source>{bottles} counted on {when} and not written down yet.</source>
<translation>{bottles}, gezählt am {when}, noch nicht eingetragen.</translation>
</message>
<message>
<source>{bottles} in the order of the shelf</source>
<translation>{bottles} in der Reihenfolge des Regals</translation>
</message>
<message>
<source>{bottles} in the order of the shelf, {lit} lit by the search</source>
<translation>{bottles} in der Reihenfolge des Regals, {lit} davon durch die Suche hervorgehoben</translation>
</message>
<message>
<source>{bottles} not logged</source>
<translation>{bottles} nicht protokolliert</translation>
</message>
<message>
<source>{bottles} of its {lines} lines name one.</source>
<translation>{bottles} von {lines} Zeilen nennen eine.</translation>
</message>
<message>
<source>{bottles} open but not counted keep what the ledger says.</source>
<translation>{bottles}, offen und nicht gezählt, behalten, was der Verlauf sagt.</translation>
</message>
<message>
<source>{bottles} open but not counted keeps what the ledger says.</source>
<translation>{bottles}, offen und nicht gezählt, behält, was der Verlauf sagt.</translation>
</message>
<message>
<source>{bottles} to come in</source>
<translation>{bottles} kommen hinzu</translation>
</message>
<message>
<source>{bottles}, none open</source>
<translation>{bottles}, keine offen</translation>
</message>
<message>
<source>{bottles}: {counts} counted, {rest} as expected.</source>
<translation>{bottles}: {counts} gezählt, {rest} wie erwartet.</translation>
</message>
<message>
<source>{bottle} carries nothing that can be made.</source>
<translation>An {bottle} hängt nichts, was machbar ist.</translation>
</message>
<message>
<source>{bottle} is past its date of {last_day} and is not counted: look at it before you use it.</source>
<translation>{bottle} ist über dem Datum {last_day} und wird nicht gezählt: vor Gebrauch ansehen.</translation>
</message>
<message>
<source>{bottle} is past its date of {last_day} and is not counted: make it anew.</source>
<translation>{bottle} ist über dem Datum {last_day} und wird nicht gezählt: neu machen.</translation>
</message>
<message>
<source>{bottle} is there, but past its date.</source>
<translation>{bottle} ist da, aber über dem Datum.</translation>
</message>
<message>
<source>{bottle} is {state} already: {advice}.</source>
<translation>{bottle} ist schon {state}: {advice}.</translation>
</message>
<message>
<source>{bottle} made on {day}</source>
<translation>{bottle}, gemacht am {day}</translation>
</message>
<message>
<source>{called}: asks for {least:g} % vol or more, and no bottle of it here is as strong.</source>
<translation>{called}: verlangt {least:g} % vol oder mehr, und keine Flasche davon hier ist so stark.</translation>
</message>
<message>
<source>{called}: asks for {unsaid}; check the bottle, {title}.</source>
<translation>{called}: verlangt {unsaid}; prüfe die Flasche, {title}.</translation>
</message>
<message>
<source>{camera} for the camera</source>
<translation>{camera} für die Kamera</translation>
</message>
<message>
<source>{closeness:g} close</source>
<translation>{closeness:g} nah</translation>
</message>
<message>
<source>{column} is empty</source>
<translation>{column} ist leer</translation>
</message>
<message>
<source>{count:,} row still needs a repair and would not come in. Write it to a file for later, or discard it and import the others?</source>
<translation>{count:,} Zeile ist noch zu berichtigen und käme nicht hinzu. Für später in eine Datei schreiben, oder verwerfen und die anderen importieren?</translation>
</message>
<message>
<source>{count:,} rows still need a repair and would not come in. Write them to a file for later, or discard them and import the others?</source>
<translation>{count:,} Zeilen sind noch zu berichtigen und kämen nicht hinzu. Für später in eine Datei schreiben, oder verwerfen und die anderen importieren?</translation>
</message>
<message>
<source>{country}: {grams:g} g of alcohol each</source>
<translation>{country}: je {grams:g} g Alkohol</translation>
</message>
<message>
<source>{count} at the bottle shop</source>
<translation>{count} im Spirituosenladen</translation>
</message>
<message>
<source>{count} at the market</source>
<translation>{count} auf dem Markt</translation>
</message>
<message>
<source>{count} bottle carries nothing that can be made.</source>
<translation>An {count} Flasche hängt nichts, was machbar ist.</translation>
</message>
<message>
<source>{count} bottles carry nothing that can be made.</source>
<translation>An {count} Flaschen hängt nichts, was machbar ist.</translation>
</message>
<message>
<source>{count} drinks</source>
<translation>{count} Drinks</translation>
</message>
<message>
<source>{count} kinds ({names})</source>
<translation>{count} Zutaten ({names})</translation>
</message>
<message>
<source>{count} lines run out</source>
<translation>{count} Zeilen reichen nicht</translation>
</message>
<message>
<source>{count} lines understood</source>
<translation>{count} Zeilen verstanden</translation>
</message>
<message>
<source>{count} more pieces of the page</source>
<translation>{count} weitere Stücke der Seite</translation>
</message>
<message>
<source>{count} of them</source>
<translation>{count} davon</translation>
</message>
<message>
<source>{count} of {drink}</source>
<translation>{count} von {drink}</translation>
</message>
<message>
<source>{count} packages are in the bar</source>
<translation>{count} Packungen sind in der Bar</translation>
</message>
<message>
<source>{count} pair turns a drink that neither purchase turns alone</source>
<translation>{count} Paar macht einen Drink machbar, den keiner der Käufe allein machbar macht</translation>
</message>
<message>
<source>{count} pairs turn drinks that neither purchase turns alone</source>
<translation>{count} Paare machen Drinks machbar, die keiner der Käufe allein machbar macht</translation>
</message>
<message>
<source>{count} products ({names})</source>
<translation>{count} Produkte ({names})</translation>
</message>
<message>
<source>{count} questions</source>
<translation>{count} Fragen</translation>
</message>
<message>
<source>{count} recipes for ({names})</source>
<translation>{count} Rezepte dafür ({names})</translation>
</message>
<message>
<source>{count} shoots ({names})</source>
<translation>{count} Drehs ({names})</translation>
</message>
<message>
<source>{count} specs ({names})</source>
<translation>{count} Rezepte ({names})</translation>
</message>
<message>
<source>{count} thing</source>
<comment>on the shopping list</comment>
<translation>{count} Posten</translation>
</message>
<message>
<source>{count} things</source>
<comment>on the shopping list</comment>
<translation>{count} Posten</translation>
</message>
<message>
<source>{count} ticked</source>
<translation>{count} angekreuzt</translation>
</message>
<message>
<source>{count} × {name} for {drinks}</source>
<translation>{count} × {name} für {drinks}</translation>
</message>
<message>
<source>{days} days before</source>
<translation>{days} Tage vorher</translation>
</message>
<message>
<source>{days} more days</source>
<translation>noch {days} Tage</translation>
</message>
<message>
<source>{day} {month}</source>
<translation>{day}. {month}</translation>
</message>
<message>
<source>{day} {month} {year}</source>
<translation>{day}. {month} {year}</translation>
</message>
<message>
<source>{day} {short_month}</source>
<translation>{day}. {short_month}</translation>
</message>
<message>
<source>{day} {short_month} {year}</source>
<translation>{day}. {short_month} {year}</translation>
</message>
<message>
<source>{day}, and nothing is left</source>
<translation>{day}, und nichts ist mehr da</translation>
</message>
<message>
<source>{density:.3f} g per ml</source>
<translation>{density:.3f} g je ml</translation>
</message>
<message>
<source>{done} of {of} steps ticked</source>
<translation>{done} von {of} Schritten angekreuzt</translation>
</message>
<message>
<source>{drinks} as a stand-in</source>
<translation>{drinks} als Ersatz</translation>
</message>
<message>
<source>{drinks} ask for it</source>
<translation>{drinks} verlangen es</translation>
</message>
<message>
<source>{drinks} asks for it</source>
<translation>{drinks} verlangt es</translation>
</message>
<message>
<source>{drinks} can be made</source>
<translation>{drinks} machbar</translation>
</message>
<message>
<source>{drinks} then</source>
<translation>dann {drinks}</translation>
</message>
<message>
<source>{drinks} tonight</source>
<translation>heute Abend {drinks}</translation>
</message>
<message>
<source>{drinks} tonight ({some} of them with a stand-in)</source>
<translation>heute Abend {drinks} ({some} davon mit Ersatz)</translation>
</message>
<message>
<source>{drinks} tonight, with a stand-in</source>
<translation>heute Abend {drinks}, mit Ersatz</translation>
</message>
<message>
<source>{drinks} with one more bottle</source>
<translation>{drinks} mit einer Flasche mehr</translation>
</message>
<message>
<source>{drinks}: its spec was removed.</source>
<translation>{drinks}: Das Rezept wurde entfernt.</translation>
</message>
<message>
<source>{drinks}: their specs were removed.</source>
<translation>{drinks}: Die Rezepte wurden entfernt.</translation>
</message>
<message>
<source>{drink} cannot be poured so. {lacking}</source>
<translation>{drink} lässt sich so nicht einschenken. {lacking}</translation>
</message>
<message>
<source>{drink} does not fit a {vessel} of {volume}.</source>
<translation>{drink} passt nicht in das Gefäß ({vessel}, {volume}).</translation>
</message>
<message>
<source>{drink} fills a {vessel} past its wash line of {wash_line}.</source>
<translation>{drink} füllt das Gefäß ({vessel}) über seine Fülllinie von {wash_line}.</translation>
</message>
<message>
<source>{drink} is counted for no bottle until its questions are settled: {questions}.</source>
<translation>{drink} zählt für keine Flasche, bis die Fragen dazu geklärt sind: {questions}.</translation>
</message>
<message>
<source>{drink} lacks {amount} of {name}, for {unmet:.3g} of {serves} serves.</source>
<translation>In {drink} fehlen {amount} {name}, für {unmet:.3g} von {serves} Portionen.</translation>
</message>
<message>
<source>{drink} with {volume} of ice</source>
<translation>{drink} mit {volume} Eis</translation>
</message>
<message>
<source>{drink}, which asks for {stated}</source>
<translation>{drink}, mit dem Wunsch nach {stated}</translation>
</message>
<message>
<source>{drink}: pour {line} as written</source>
<translation>{drink}: {line} wie geschrieben einschenken</translation>
</message>
<message>
<source>{each}, a part being {part_ml:g} ml</source>
<translation>{each}, ein Teil zu {part_ml:g} ml</translation>
</message>
<message>
<source>{each}, for it gives no amount</source>
<translation>{each}, denn es nennt keine Menge</translation>
</message>
<message>
<source>{each}, the lower end of what it says</source>
<translation>{each}, das untere Ende des Genannten</translation>
</message>
<message>
<source>{each}, the middle of what it says</source>
<translation>{each}, die Mitte des Genannten</translation>
</message>
<message>
<source>{empty_g:.5g} g empty and {full_g:.5g} g full do not go with the {size_ml:g} ml that {bottle} holds; one of the two was not what it was taken for.</source>
<translation>{empty_g:.5g} g leer und {full_g:.5g} g voll passen nicht zu den {size_ml:g} ml, die {bottle} fasst; eins von beiden war nicht das, wofür es gehalten wurde.</translation>
</message>
<message>
<source>{empty_g:.5g} g is no weight of an empty bottle of {size_ml:g} ml.</source>
<translation>{empty_g:.5g} g ist kein Gewicht einer leeren Flasche von {size_ml:g} ml.</translation>
</message>
<message>
<source>{error:+.0f} % rounded</source>
<translation>{error:+.0f} % gerundet</translation>
</message>
<message>
<source>{expected}, a number of {unit}</source>
<translation>{expected}, eine Zahl in {unit}</translation>
</message>
<message>
<source>{family} · price {price}</source>
<translation>{family} · Preis {price}</translation>
</message>
<message>
<source>{field} cannot be “{value}”: {expected}.</source>
<translation>{field}: „{value}“ geht nicht: {expected}.</translation>
</message>
<message>
<source>{field} differs</source>
<translation>{field} weicht ab</translation>
</message>
<message>
<source>{field}: yours “{mine}”, theirs “{theirs}”</source>
<translation>{field}: deins „{mine}“, anderes „{theirs}“</translation>
</message>
<message>
<source>{files} and {more} more</source>
<translation>{files} und {more} weitere</translation>
</message>
<message>
<source>{file} can be reached again.</source>
<translation>{file} ist wieder erreichbar.</translation>
</message>
<message>
<source>{file} cannot be reached just now, and nothing was changed.</source>
<translation>{file} ist gerade nicht zu erreichen, und nichts wurde geändert.</translation>
</message>
<message>
<source>{file} cannot be reached just now. What is shown was read before that, and nothing can be written to it until it is; barkeep goes on trying by itself.</source>
<translation>{file} ist gerade nicht erreichbar. Gezeigt wird, was vorher gelesen wurde; bis dahin lässt sich nichts schreiben. barkeep versucht es von selbst weiter.</translation>
</message>
<message>
<source>{file} cannot be used just now: {reason}. Nothing was changed.</source>
<translation>{file} lässt sich gerade nicht verwenden: {reason}. Nichts wurde geändert.</translation>
</message>
<message>
<source>{file} cannot be used yet: {why}</source>
<translation>{file} lässt sich noch nicht verwenden: {why}</translation>
</message>
<message>
<source>{file} cannot be used yet: {why} Its columns are {seen}. Say {columns}.</source>
<translation>{file} kann noch nicht verwendet werden: {why} Die Spalten sind {seen}. Gib {columns} an.</translation>
</message>
<message>
<source>{file} cannot be used: {told}.</source>
<translation>{file} lässt sich nicht verwenden: {told}.</translation>
</message>
<message>
<source>{file} cannot be written: {reason}. Nothing was changed.</source>
<translation>{file} lässt sich nicht schreiben: {reason}. Nichts wurde geändert.</translation>
</message>
<message>
<source>{file} could not be opened: it is in use by another program, which has not finished within {waited_s:g} s. Nothing of it was lost; open it again when the other program has finished or is closed.</source>
<translation>{file} ließ sich nicht öffnen: ein anderes Programm benutzt die Bar und war nach {waited_s:g} s noch nicht fertig. Nichts ging verloren; öffne sie wieder, wenn das andere Programm fertig oder geschlossen ist.</translation>
</message>
<message>
<source>{file} is back, as it was opened.</source>
<translation>{file} ist wieder da, wie beim Öffnen.</translation>
</message>
<message>
<source>{file} is gone: it was deleted, moved or renamed. What is shown was read before that, and nothing can be written to it.</source>
<translation>{file} ist weg: gelöscht, verschoben oder umbenannt. Gezeigt wird, was vorher gelesen wurde; schreiben lässt sich nichts.</translation>
</message>
<message>
<source>{file} is in use by another program just now, and nothing was changed. Try again in a moment.</source>
<translation>{file} wird gerade von einem anderen Programm benutzt, und nichts wurde geändert. Versuch es gleich noch einmal.</translation>
</message>
<message>
<source>{file} is on a server and in no file: what that needs is done there, by pg_dump and pg_restore. “Export everything” and a backup are files that barkeep takes back.</source>
<translation>{file} liegt auf einem Server und in keiner Datei: das geschieht dort, mit pg_dump und pg_restore. „Alles exportieren“ und eine Sicherung sind Dateien, die barkeep zurücknimmt.</translation>
</message>
<message>
<source>{file} is open in another window already; it does not answer just now.</source>
<translation>{file} ist schon in einem anderen Fenster offen; es antwortet gerade nicht.</translation>
</message>
<message>
<source>{file} is open in another window already; it was brought to the front.</source>
<translation>{file} ist schon in einem anderen Fenster offen; es wurde nach vorn geholt.</translation>
</message>
<message>
<source>{file} is read-only: it can be looked at, and nothing in it can be changed.</source>
<translation>{file} ist schreibgeschützt: die Bar lässt sich ansehen, aber nichts darin ändern.</translation>
</message>
<message>
<source>{file} reads like a list of bottles</source>
<translation>{file} liest sich wie eine Liste von Flaschen</translation>
</message>
<message>
<source>{file} reads like a list of bottles: {bottles} of its {lines} lines name one, and nothing came in. Say --bottles to bring them in, or --specs if it holds specs.</source>
<translation>{file} liest sich wie eine Liste von Flaschen: {bottles} von {lines} Zeilen nennen eine, und nichts kam hinzu. Sag --bottles, um sie hereinzuholen, oder --specs, wenn es Rezepte sind.</translation>
</message>
<message>
<source>{file} was deleted, moved or replaced while it was open here, and nothing was changed. What is shown was read before that.</source>
<translation>{file} wurde gelöscht, verschoben oder ersetzt, während sie hier offen war, und nichts wurde geändert. Was du siehst, wurde vorher gelesen.</translation>
</message>
<message>
<source>{file} was opened anew</source>
<translation>{file} wurde neu geöffnet</translation>
</message>
<message>
<source>{file} was put back to an older state, which is what is shown now. {newest}</source>
<translation>{file} wurde auf einen älteren Stand zurückgesetzt, der jetzt gezeigt wird. {newest}</translation>
</message>
<message>
<source>{file} was written by a newer barkeep (schema {found}; this one knows {known}). It has not been touched; update barkeep to open it.</source>
<translation>{file} wurde von einem neueren barkeep geschrieben (Schema {found}; dieses kennt {known}). Die Datei blieb unberührt; erneuere barkeep, um sie zu öffnen.</translation>
</message>
<message>
<source>{file}, {key}: {reason}</source>
<translation>{file}, {key}: {reason}</translation>
</message>
<message>
<source>{file}: the family tree runs in a circle: {circle}</source>
<translation>{file}: der Stammbaum läuft im Kreis: {circle}</translation>
</message>
<message>
<source>{forms} does it as a stand-in{making}.</source>
<translation>{forms} macht es als Ersatz{making}.</translation>
</message>
<message>
<source>{forms} does the same{making}.</source>
<translation>{forms} macht dasselbe{making}.</translation>
</message>
<message>
<source>{form} turns {drinks}.</source>
<translation>{form} macht {drinks} machbar.</translation>
</message>
<message>
<source>{full_g:.5g} g full is too little for the {size_ml:g} ml that {bottle} holds and a bottle.</source>
<translation>{full_g:.5g} g voll ist zu wenig für die {size_ml:g} ml, die {bottle} fasst, und eine Flasche.</translation>
</message>
<message>
<source>{full_g:.5g} g full is too much for the {size_ml:g} ml that {bottle} holds and a bottle.</source>
<translation>{full_g:.5g} g voll ist zu viel für die {size_ml:g} ml, die {bottle} fasst, und eine Flasche.</translation>
</message>
<message>
<source>{grams:g} g per litre</source>
<translation>{grams:g} g je Liter</translation>
</message>
<message>
<source>{guessed} level is guessed: count the shelf when you like.</source>
<translation>{guessed} Füllstand ist geschätzt: zähle das Regal, wann du magst.</translation>
</message>
<message>
<source>{guessed} level is guessed: {count} when you like.</source>
<translation>{guessed} Füllstand ist geschätzt: {count}, wann du magst.</translation>
</message>
<message>
<source>{guessed} levels are guessed: count the shelf when you like.</source>
<translation>{guessed} Füllstände sind geschätzt: zähle das Regal, wann du magst.</translation>
</message>
<message>
<source>{guessed} levels are guessed: {count} when you like.</source>
<translation>{guessed} Füllstände sind geschätzt: {count}, wann du magst.</translation>
</message>
<message>
<source>{height_cm:.4g} cm is above the mouth: {bottle} is brimful at {brim_cm:.3g} cm. Measure again, or choose another shape.</source>
<translation>{height_cm:.4g} cm liegt über der Mündung: {bottle} ist bei {brim_cm:.3g} cm randvoll. Miss noch einmal oder wähle eine andere Form.</translation>
</message>
<message>
<source>{height_cm:.4g} cm is above the whole bottle: {bottle} is {tallest_cm:.3g} cm tall. Measure again, or choose another shape.</source>
<translation>{height_cm:.4g} cm ist höher als die ganze Flasche: {bottle} ist {tallest_cm:.3g} cm hoch. Miss noch einmal oder wähle eine andere Form.</translation>
</message>
<message>
<source>{here} here, {there} on line {line}, for the same product.</source>
<translation>{here} hier, {there} in Zeile {line}, für dasselbe Produkt.</translation>
</message>
<message>
<source>{hours:g} hours</source>
<translation>{hours:g} Stunden</translation>
</message>
<message>
<source>{hours} hours before</source>
<translation>{hours} Stunden vorher</translation>
</message>
<message>
<source>{how}: {after} against {before} {unit}</source>
<translation>{how}: {after} gegenüber {before} {unit}</translation>
</message>
<message>
<source>{ice_g} g of crushed ice</source>
<translation>{ice_g} g Crushed Ice</translation>
</message>
<message>
<source>{ice} ice</source>
<translation>Eis: {ice}</translation>
</message>
<message>
<source>{kind}, added on {day}</source>
<translation>{kind}, hinzugefügt am {day}</translation>
</message>
<message>
<source>{lacks} Nothing stands in for it: {because}.</source>
<translation>{lacks} Dafür gibt es keinen Ersatz: {because}.</translation>
</message>
<message>
<source>{lacks} What stands in for it is not here either.</source>
<translation>{lacks} Auch der Ersatz dafür ist nicht da.</translation>
</message>
<message>
<source>{lacks} What stands in for it is {name} ({closeness:.2f}).</source>
<translation>{lacks} Ersatz dafür ist {name} ({closeness:.2f}).</translation>
</message>
<message>
<source>{last} (made {begun}, {keeps}, then {after})</source>
<translation>{last} (gemacht {begun}, {keeps}, danach {after})</translation>
</message>
<message>
<source>{last} (opened {begun}, {keeps}, then {after})</source>
<translation>{last} (geöffnet {begun}, {keeps}, danach {after})</translation>
</message>
<message>
<source>{least} to {most}</source>
<translation>{least} bis {most}</translation>
</message>
<message>
<source>{left} left</source>
<translation>{left} übrig</translation>
</message>
<message>
<source>{left} of {of} to buy</source>
<translation>{left} von {of} zu kaufen</translation>
</message>
<message>
<source>{left} of {size}</source>
<translation>{left} von {size}</translation>
</message>
<message>
<source>{level:g} {unit} is more than {bottle} holds ({size:g} {unit}).</source>
<translation>{level:g} {unit} ist mehr, als {bottle} fasst ({size:g} {unit}).</translation>
</message>
<message>
<source>{line} is kept as it is. {question}</source>
<translation>{line} bleibt, wie es ist. {question}</translation>
</message>
<message>
<source>{line} is not understood. {question}</source>
<translation>{line} ist nicht verstanden. {question}</translation>
</message>
<message>
<source>{line} is not understood: what it adds, its strength and allergens, is not known.</source>
<translation>{line} ist nicht verstanden: was es beiträgt, Alkoholgehalt und Allergene, ist nicht bekannt.</translation>
</message>
<message>
<source>{line} is understood now and can be settled.</source>
<translation>{line} ist jetzt verstanden und lässt sich klären.</translation>
</message>
<message>
<source>{line}, for {reason}</source>
<translation>{line}, denn {reason}</translation>
</message>
<message>
<source>{line}: what is poured</source>
<translation>{line}: was genommen wird</translation>
</message>
<message>
<source>{low} to {high}</source>
<translation>{low} bis {high}</translation>
</message>
<message>
<source>{made} cannot be made: {missing}.</source>
<translation>{made} lässt sich nicht machen: {missing}.</translation>
</message>
<message>
<source>{made} for {drinks}</source>
<translation>{made} für {drinks}</translation>
</message>
<message>
<source>{many} counted</source>
<translation>{many} gezählt</translation>
</message>
<message>
<source>{many} found</source>
<translation>{many} gefunden</translation>
</message>
<message>
<source>{many} lines run out</source>
<translation>{many} Zeilen reichen nicht</translation>
</message>
<message>
<source>{many} on camera</source>
<translation>{many} vor der Kamera</translation>
</message>
<message>
<source>{many} rows are copied</source>
<translation>{many} Zeilen sind kopiert</translation>
</message>
<message>
<source>{many} taken as expected</source>
<translation>{many} wie erwartet übernommen</translation>
</message>
<message>
<source>{many} things go off {within}, and no drink uses any of it.</source>
<translation>{many} Flaschen sind {within} aufzubrauchen, und kein Drink verbraucht etwas davon.</translation>
</message>
<message>
<source>{many} to taste</source>
<translation>{many} zum Verkosten</translation>
</message>
<message>
<source>{message}. Perhaps {likely}.</source>
<translation>{message}. Vielleicht {likely}.</translation>
</message>
<message>
<source>{minutes:.0f} minutes</source>
<translation>{minutes:.0f} Minuten</translation>
</message>
<message>
<source>{moment:%Y-%m-%d %H:%M}</source>
<translation>{moment:%d.%m.%Y, %H:%M}</translation>
</message>
<message>
<source>{more} more</source>
<translation>{more} weitere</translation>
</message>
<message>
<source>{more} more: Enter shows them</source>
<translation>{more} weitere: Die Eingabetaste zeigt sie</translation>
</message>
<message>
<source>{more}, and {less}</source>
<translation>{more} und {less}</translation>
</message>
<message>
<source>{much} give about {gives}.</source>
<translation>{much} geben etwa {gives}.</translation>
</message>
<message>
<source>{much} gives about {gives}.</source>
<translation>{much} gibt etwa {gives}.</translation>
</message>
<message>
<source>{named} is not understood</source>
<translation>{named} ist nicht verstanden</translation>
</message>
<message>
<source>{named} is not understood.</source>
<translation>{named} ist nicht verstanden.</translation>
</message>
<message>
<source>{names} are not understood</source>
<translation>{names} sind nicht verstanden</translation>
</message>
<message>
<source>{names} has no amount</source>
<translation>{names} hat keine Menge</translation>
</message>
<message>
<source>{names} have no amount</source>
<translation>{names} haben keine Menge</translation>
</message>
<message>
<source>{names} is not understood</source>
<translation>{names} ist nicht verstanden</translation>
</message>
<message>
<source>{names} was in {theme} already; nothing is added</source>
<translation>{names} war schon in {theme}; nichts kommt hinzu</translation>
</message>
<message>
<source>{names} were in {theme} already; nothing is added</source>
<translation>{names} waren schon in {theme}; nichts kommt hinzu</translation>
</message>
<message>
<source>{names} without a known price</source>
<translation>{names} ohne bekannten Preis</translation>
</message>
<message>
<source>{name} (garnish): {words}.</source>
<translation>{name} (Garnitur): {words}.</translation>
</message>
<message>
<source>{name} alone ({number})</source>
<translation>{name} allein ({number})</translation>
</message>
<message>
<source>{name} alone none</source>
<translation>{name} allein keinen</translation>
</message>
<message>
<source>{name} alone {drinks}</source>
<translation>{name} allein {drinks}</translation>
</message>
<message>
<source>{name} begins with it, and is read where an amount stands before</source>
<translation>{name} beginnt damit und wird gelesen, wo eine Menge davorsteht</translation>
</message>
<message>
<source>{name} beside it would be lost, as SQLite keeps a file of that name; give that one another name first</source>
<translation>{name} daneben ginge verloren, da SQLite eine Datei dieses Namens führt; gib ihr zuerst einen anderen Namen</translation>
</message>
<message>
<source>{name} brings in {brought} (allergen).</source>
<translation>{name} bringt neu hinein: {brought} (Allergen).</translation>
</message>
<message>
<source>{name} can be made here first.</source>
<translation>{name} kann vorher hier gemacht werden.</translation>
</message>
<message>
<source>{name} carries {carried}, so this does as well.</source>
<translation>{name} enthält {carried}, also auch diese Zutat.</translation>
</message>
<message>
<source>{name} counts as always there.</source>
<translation>{name} gilt als immer da.</translation>
</message>
<message>
<source>{name} for {drink} is made with {margin:.0%} to spare</source>
<translation>{name} für {drink} wird mit {margin:.0%} Reserve gemacht</translation>
</message>
<message>
<source>{name} has no amount: taken as {amount} ± {sigma_ml:.0f} ml.</source>
<translation>{name} hat keine Menge: angenommen {amount} ± {sigma_ml:.0f} ml.</translation>
</message>
<message>
<source>{name} has no such line</source>
<translation>{name} hat keine solche Zeile</translation>
</message>
<message>
<source>{name} is a classic that barkeep brings along; it cannot be changed.</source>
<translation>{name} ist ein Klassiker, den barkeep mitbringt; er lässt sich nicht ändern.</translation>
</message>
<message>
<source>{name} is a classic that barkeep brings along; it cannot be removed.</source>
<translation>{name} ist ein Klassiker, den barkeep mitbringt; er lässt sich nicht entfernen.</translation>
</message>
<message>
<source>{name} is a kind of {wanted}</source>
<translation>{name} ist eine Art {wanted}</translation>
</message>
<message>
<source>{name} is a kind of {wanted}, poured for it exactly.</source>
<translation>{name} ist eine Art {wanted} und wird genau dafür genommen.</translation>
</message>
<message>
<source>{name} is a kind of {wanted}, poured for it only when asked.</source>
<translation>{name} ist eine Art {wanted} und wird nur auf Verlangen dafür genommen.</translation>
</message>
<message>
<source>{name} is a kind of {wanted}.</source>
<translation>{name} ist eine Art {wanted}.</translation>
</message>
<message>
<source>{name} is back</source>
<translation>{name} ist zurück</translation>
</message>
<message>
<source>{name} is changed</source>
<translation>{name} ist geändert</translation>
</message>
<message>
<source>{name} is in the running order already</source>
<translation>{name} steht schon in der Reihenfolge</translation>
</message>
<message>
<source>{name} is in your book, a riff of {parent}</source>
<translation>{name} steht in deinem Buch, eine Abwandlung von {parent}</translation>
</message>
<message>
<source>{name} is known now</source>
<translation>{name} ist jetzt bekannt</translation>
</message>
<message>
<source>{name} is made here from {names}</source>
<translation>{name} wird hier gemacht aus {names}</translation>
</message>
<message>
<source>{name} is not settled on</source>
<translation>{name} steht nicht mehr fest</translation>
</message>
<message>
<source>{name} is on the shelf: {said}{keeps}.</source>
<translation>{name} steht im Regal: {said}{keeps}.</translation>
</message>
<message>
<source>{name} is on the shopping list</source>
<translation>{name} steht auf der Einkaufsliste</translation>
</message>
<message>
<source>{name} is poured from {title}{strength}; another would differ.</source>
<translation>{name} kommt aus {title}{strength}; mit einer anderen Flasche wäre es anders.</translation>
</message>
<message>
<source>{name} is the first of the list already.</source>
<translation>{name} steht schon am Anfang der Liste.</translation>
</message>
<message>
<source>{name} is the last of the list already.</source>
<translation>{name} steht schon am Ende der Liste.</translation>
</message>
<message>
<source>{name} is the version that won</source>
<translation>{name} ist die Fassung, die feststeht</translation>
</message>
<message>
<source>{name} may be many things: taken as {abv} % vol and {sugar} g/l sugar, the middle of its kinds ({abv_low} to {abv_high} % vol, {sugar_low} to {sugar_high} g/l).</source>
<translation>{name} kann vieles sein: angenommen {abv} % vol und {sugar} g/l Zucker, die Mitte seiner Arten ({abv_low} bis {abv_high} % vol, {sugar_low} bis {sugar_high} g/l).</translation>
</message>
<message>
<source>{name} needs at least one</source>
<translation>{name} braucht mindestens eine</translation>
</message>
<message>
<source>{name} riff</source>
<translation>{name} abgewandelt</translation>
</message>
<message>
<source>{name} riff {number}</source>
<translation>{name} abgewandelt {number}</translation>
</message>
<message>
<source>{name} takes {wanted}, and “{text}” is {given}</source>
<translation>{name} verlangt {wanted}, und „{text}“ ist {given}</translation>
</message>
<message>
<source>{name} was on the shopping list already</source>
<translation>{name} stand schon auf der Einkaufsliste</translation>
</message>
<message>
<source>{name}, made {day}</source>
<translation>{name}, hergestellt {day}</translation>
</message>
<message>
<source>{name}, {abv:g} % vol or more</source>
<translation>{name}, mindestens {abv:g} % vol</translation>
</message>
<message>
<source>{name}, {there}, has {neighbours}.</source>
<translation>{name}, {there}, hat {neighbours}.</translation>
</message>
<message>
<source>{name}: neither strength nor sugar is known; it is counted as water.</source>
<translation>{name}: Weder Alkoholgehalt noch Zucker ist bekannt; gezählt als Wasser.</translation>
</message>
<message>
<source>{name}: {said} is counted as its middle.</source>
<translation>{name}: {said} ist mit der Mitte gezählt.</translation>
</message>
<message>
<source>{name}: {serves} of {serve_ml:.0f} ml, {how}</source>
<translation>{name}: {serves} zu {serve_ml:.0f} ml, {how}</translation>
</message>
<message>
<source>{need} of {name} is needed and {have} is there</source>
<translation>{need} {name} werden gebraucht, {have} sind da</translation>
</message>
<message>
<source>{number} found</source>
<translation>{number} gefunden</translation>
</message>
<message>
<source>{number} is no earlier entry of the same bottle</source>
<translation>{number} ist kein früherer Eintrag derselben Flasche</translation>
</message>
<message>
<source>{number} is none of the {part}</source>
<translation>{number} gibt es in {part} nicht</translation>
</message>
<message>
<source>{number} of {of}</source>
<translation>{number} von {of}</translation>
</message>
<message>
<source>{number} problems</source>
<translation>{number} Probleme</translation>
</message>
<message>
<source>{number} ticked</source>
<translation>{number} angekreuzt</translation>
</message>
<message>
<source>{number}. {what}: {more} more{opened}; {makeable} can be made</source>
<translation>{number}. {what}: {more} weitere{opened}; {makeable} machbar</translation>
</message>
<message>
<source>{n} beyond doubt</source>
<translation>{n} über die Unsicherheit hinaus</translation>
</message>
<message>
<source>{n} counted bottles are not confirmed yet.</source>
<translation>{n} gezählte Flaschen sind noch nicht bestätigt.</translation>
</message>
<message>
<source>{n} day ago</source>
<translation>vor {n} Tag</translation>
</message>
<message>
<source>{n} days ago</source>
<translation>vor {n} Tagen</translation>
</message>
<message>
<source>{n} due or past use by</source>
<translation>{n} fällig oder abgelaufen</translation>
</message>
<message>
<source>{n} left out</source>
<translation>{n} weggelassen</translation>
</message>
<message>
<source>{n} low</source>
<translation>{n} fast leer</translation>
</message>
<message>
<source>{n} of {bottles} counted</source>
<translation>{n} von {bottles} gezählt</translation>
</message>
<message>
<source>{n} pieces</source>
<translation>{n} Stück</translation>
</message>
<message>
<source>{n} there already</source>
<translation>{n} schon da</translation>
</message>
<message>
<source>{n} to answer</source>
<translation>{n} zu beantworten</translation>
</message>
<message>
<source>{offered} for {wanted}</source>
<translation>{offered} für {wanted}</translation>
</message>
<message>
<source>{offered} made from {inputs}</source>
<translation>{offered}, gemacht aus {inputs}</translation>
</message>
<message>
<source>{offered} must never stand in for {wanted}: {why}</source>
<translation>{offered} darf {wanted} nie ersetzen: {why}</translation>
</message>
<message>
<source>{offered} stands in for {wanted}</source>
<translation>{offered} ersetzt {wanted}</translation>
</message>
<message>
<source>{offered} stands in for {wanted}: {why}</source>
<translation>{offered} ersetzt {wanted}: {why}</translation>
</message>
<message>
<source>{open} open, {sealed} sealed</source>
<translation>{open} offen, {sealed} verschlossen</translation>
</message>
<message>
<source>{own} of your own, {others} classics</source>
<translation>{own} eigene, {others} Klassiker</translation>
</message>
<message>
<source>{pages} went to the printer</source>
<translation>{pages} gingen an den Drucker</translation>
</message>
<message>
<source>{page}: details</source>
<translation>{page}: Einzelheiten</translation>
</message>
<message>
<source>{parent} is no longer in the book: there is nothing to set it beside.</source>
<translation>{parent} ist nicht mehr im Buch: Es gibt nichts zum Danebenstellen.</translation>
</message>
<message>
<source>{parts} guessed ({sign})</source>
<translation>{parts} geschätzt ({sign})</translation>
</message>
<message>
<source>{part}, closed</source>
<translation>{part}, zugeklappt</translation>
</message>
<message>
<source>{part}, open</source>
<translation>{part}, aufgeklappt</translation>
</message>
<message>
<source>{pieces:g} in all</source>
<translation>{pieces:g} insgesamt</translation>
</message>
<message>
<source>{place} along the shelf</source>
<translation>{place} im Regal</translation>
</message>
<message>
<source>{place}: {found} stands there, and it must be {expected}</source>
<translation>{place}: dort steht {found}, verlangt ist {expected}</translation>
</message>
<message>
<source>{poured} for as many more as you like</source>
<translation>{poured} für so viele weitere, wie du willst</translation>
</message>
<message>
<source>{poured} for {serves} more</source>
<translation>{poured} für {serves} weitere</translation>
</message>
<message>
<source>{poured} in place of {wanted}{ratio}</source>
<translation>{poured} anstelle von {wanted}{ratio}</translation>
</message>
<message>
<source>{priced} and {names} without a known price</source>
<translation>{priced} und {names} ohne bekannten Preis</translation>
</message>
<message>
<source>{price} at {shop}</source>
<translation>{price} bei {shop}</translation>
</message>
<message>
<source>{price} for {maker} {name}</source>
<translation>{price} für {maker} {name}</translation>
</message>
<message>
<source>{price} for {things}</source>
<translation>{price} für {things}</translation>
</message>
<message>
<source>{price} for {things}.</source>
<translation>{price} für {things}.</translation>
</message>
<message>
<source>{purchases} for {cost}</source>
<translation>{purchases} für {cost}</translation>
</message>
<message>
<source>{purchases} for {cost} and the price of {others}</source>
<translation>{purchases} für {cost} und den Preis von {others}</translation>
</message>
<message>
<source>{purchases} would each turn a drink ready</source>
<translation>{purchases}, die je einen Drink machbar machen</translation>
</message>
<message>
<source>{purchases}: {drinks} can be made, {in_all} in all.</source>
<translation>{purchases}: {drinks} machbar, {in_all} insgesamt.</translation>
</message>
<message>
<source>{question} likely “{line}”</source>
<translation>{question} Wohl „{line}“</translation>
</message>
<message>
<source>{ratio:g} times as much</source>
<translation>{ratio:g}-mal so viel</translation>
</message>
<message>
<source>{ratio:g} to 1</source>
<translation>{ratio:g} zu 1</translation>
</message>
<message>
<source>{ready} ready</source>
<translation>{ready} machbar</translation>
</message>
<message>
<source>{reason} here</source>
<translation>{reason} an dieser Stelle</translation>
</message>
<message>
<source>{rounds} of {each_ml:.0f} ml through a {tin}, which works {at_once_ml:.0f} ml at once beside its ice</source>
<translation>{rounds} zu {each_ml:.0f} ml, darin: {tin}, fasst neben dem Eis {at_once_ml:.0f} ml auf einmal</translation>
</message>
<message>
<source>{rounds} of {serves:g} serve</source>
<translation>{rounds} zu {serves:g} Portion</translation>
</message>
<message>
<source>{rounds} of {serves:g} serves</source>
<translation>{rounds} zu {serves:g} Portionen</translation>
</message>
<message>
<source>{rows:,} row was left out</source>
<translation>{rows:,} Zeile blieb weg</translation>
</message>
<message>
<source>{rows:,} row was written to {file}.</source>
<translation>{rows:,} Zeile wurde in {file} geschrieben.</translation>
</message>
<message>
<source>{rows:,} rows were left out</source>
<translation>{rows:,} Zeilen blieben weg</translation>
</message>
<message>
<source>{rows:,} rows were written to {file}.</source>
<translation>{rows:,} Zeilen wurden in {file} geschrieben.</translation>
</message>
<message>
<source>{said}, accepted</source>
<translation>{said}, übernommen</translation>
</message>
<message>
<source>{said}, counted {amount}: {apart}{within}</source>
<translation>{said}, gezählt {amount}: {apart}{within}</translation>
</message>
<message>
<source>{said}. That was the last bottle: Ctrl+Enter to confirm</source>
<translation>{said}. Das war die letzte Flasche: Strg+Enter bestätigt</translation>
</message>
<message>
<source>{said}; {unpriced} has no known price.</source>
<translation>{said}; {unpriced} hat keinen bekannten Preis.</translation>
</message>
<message>
<source>{said}; {unpriced} have no known price.</source>
<translation>{said}; {unpriced} haben keinen bekannten Preis.</translation>
</message>
<message>
<source>{scale} is scored already; name who gave each</source>
<translation>{scale} ist schon bewertet; nenne, wer was gab</translation>
</message>
<message>
<source>{scale} runs from {ends}</source>
<translation>{scale} geht von {ends}</translation>
</message>
<message>
<source>{serves:g} serve</source>
<translation>{serves:g} Portion</translation>
</message>
<message>
<source>{serves:g} serves</source>
<translation>{serves:g} Portionen</translation>
</message>
<message>
<source>{serves} + any</source>
<translation>{serves} + beliebig</translation>
</message>
<message>
<source>{serves} of {drinks} use as much as so many can of what goes off {within}.</source>
<translation>{serves} aus {drinks} verbrauchen von dem, was {within} aufzubrauchen ist, so viel, wie so viele können.</translation>
</message>
<message>
<source>{serves} of {drinks} use nearly all that can be used of what goes off {within}.</source>
<translation>{serves} aus {drinks} verbrauchen von dem, was {within} aufzubrauchen ist, fast alles, was sich verbrauchen lässt.</translation>
</message>
<message>
<source>{serves} of {drink}</source>
<translation>{serves} × {drink}</translation>
</message>
<message>
<source>{serves} serves</source>
<translation>{serves} Portionen</translation>
</message>
<message>
<source>{serves} serves, amounts for one</source>
<translation>{serves} Portionen, Mengen für eine</translation>
</message>
<message>
<source>{serves}, then out of {ingredient}</source>
<translation>{serves}, dann ist {ingredient} aus</translation>
</message>
<message>
<source>{share:.0f} % more than was poured by the specs: over-pouring, or pours not logged.</source>
<translation>{share:.0f} % mehr, als nach den Rezepten ausgeschenkt wurde: großzügig ausgeschenkt oder nicht alles notiert.</translation>
</message>
<message>
<source>{shop} · in the bar, but too little is left</source>
<translation>{shop} · in der Bar, aber es ist zu wenig da</translation>
</message>
<message>
<source>{shop} · or {others}</source>
<translation>{shop} · oder {others}</translation>
</message>
<message>
<source>{short} that cannot be made</source>
<translation>{short} nicht machbar</translation>
</message>
<message>
<source>{short} that cannot be made (not shown)</source>
<translation>{short} nicht machbar (nicht gezeigt)</translation>
</message>
<message>
<source>{shown} of {total} {noun}</source>
<translation>{shown} von {total} {noun}</translation>
</message>
<message>
<source>{sign} half</source>
<translation>{sign} halb</translation>
</message>
<message>
<source>{size:.0f} kB</source>
<translation>{size:.0f} kB</translation>
</message>
<message>
<source>{specs:,} are in the bar already.</source>
<translation>{specs:,} sind schon in der Bar.</translation>
</message>
<message>
<source>{specs:,} cannot be read and will be left out.</source>
<translation>Nicht lesbar und weggelassen: {specs:,}.</translation>
</message>
<message>
<source>{specs:,} is in the bar already.</source>
<translation>{specs:,} ist schon in der Bar.</translation>
</message>
<message>
<source>{specs:,} spec came in</source>
<translation>{specs:,} Rezept kam hinzu</translation>
</message>
<message>
<source>{specs:,} spec replaced</source>
<translation>{specs:,} Rezept ersetzt</translation>
</message>
<message>
<source>{specs:,} specs came in</source>
<translation>{specs:,} Rezepte kamen hinzu</translation>
</message>
<message>
<source>{specs:,} specs replaced</source>
<translation>{specs:,} Rezepte ersetzt</translation>
</message>
<message>
<source>{specs} keep what their lines came to when they were written</source>
<translation>{specs} behalten, was ihre Zeilen ergaben, als sie geschrieben wurden</translation>
</message>
<message>
<source>{spec} cannot be batched: {reason}.</source>
<translation>{spec} lässt sich nicht ansetzen: {reason}.</translation>
</message>
<message>
<source>{spec} keeps what its lines came to when they were written</source>
<translation>{spec} behält, was seine Zeilen ergaben, als sie geschrieben wurden</translation>
</message>
<message>
<source>{spec} takes no rounds through a tin: {reason}.</source>
<translation>{spec} geht nicht in Runden durch einen Shaker: {reason}.</translation>
</message>
<message>
<source>{stand_in} goes into {drink}</source>
<translation>{stand_in} kommt in {drink}</translation>
</message>
<message>
<source>{stand_in} with a stand-in</source>
<translation>{stand_in} mit Ersatz</translation>
</message>
<message>
<source>{start}, no ice melted in</source>
<translation>{start}, kein Schmelzwasser</translation>
</message>
<message>
<source>{start}; ice adds {share:.0f} ± {sigma:.0f} %</source>
<translation>{start}; Eis gibt {share:.0f} ± {sigma:.0f} % hinzu</translation>
</message>
<message>
<source>{state}, low</source>
<translation>{state}, fast leer</translation>
</message>
<message>
<source>{sugar:.1f} to 1</source>
<translation>{sugar:.1f} zu 1</translation>
</message>
<message>
<source>{taken} give {gives}.</source>
<translation>{taken} ergeben {gives}.</translation>
</message>
<message>
<source>{taken} gives {gives}.</source>
<translation>{taken} ergibt {gives}.</translation>
</message>
<message>
<source>{task} {made} from {inputs} first.</source>
<translation>{task}: {made} aus {inputs}, vorab.</translation>
</message>
<message>
<source>{taster} has scored {scale} already</source>
<translation>{taster} hat {scale} schon bewertet</translation>
</message>
<message>
<source>{tasting} to taste</source>
<translation>{tasting} zum Verkosten</translation>
</message>
<message>
<source>{text} (not understood)</source>
<translation>{text} (nicht verstanden)</translation>
</message>
<message>
<source>{text}, before it is squeezed.</source>
<translation>{text}, vor dem Auspressen.</translation>
</message>
<message>
<source>{theme} is logged and keeps the drinks it was logged with; nothing is added.</source>
<translation>{theme} ist protokolliert und behält die Drinks, mit denen er protokolliert wurde; nichts kommt hinzu.</translation>
</message>
<message>
<source>{theme} is on {on}, which is still to come, so it cannot be filmed yet; nothing is changed. Where it was filmed earlier, give it that day first.</source>
<translation>{theme} ist am {on}, also noch nicht gewesen, und kann darum noch nicht gedreht sein; nichts ist geändert. Wurde er früher gedreht, gib ihm zuerst diesen Tag.</translation>
</message>
<message>
<source>{theme} is on {on}, which is still to come; there is nothing to log.</source>
<translation>{theme} ist am {on}, also noch nicht gewesen; es gibt nichts zu protokollieren.</translation>
</message>
<message>
<source>{theme} once more</source>
<translation>{theme} noch einmal</translation>
</message>
<message>
<source>{theme} was logged on {at:%Y-%m-%d at %H:%M} already; nothing is written. Undo that log first, or count the bottles by themselves.</source>
<translation>{theme} wurde schon am {at:%d.%m.%Y um %H:%M} protokolliert; nichts ist geschrieben. Mach zuerst jenes Protokoll rückgängig, oder zähl die Flaschen für sich.</translation>
</message>
<message>
<source>{theme}: filmed today, {today}, not on {on}</source>
<translation>{theme}: heute gedreht, {today}, nicht am {on}</translation>
</message>
<message>
<source>{there} of the {count} are there already.</source>
<translation>{there} der {count} sind schon da.</translation>
</message>
<message>
<source>{there} of the {count} is there already.</source>
<translation>{there} der {count} ist schon da.</translation>
</message>
<message>
<source>{there} of {all} known ingredients are in the bar</source>
<translation>{there} von {all} bekannten Zutaten sind in der Bar</translation>
</message>
<message>
<source>{things:,} things are left aside; the specs and the end of the list say which.</source>
<translation>{things:,} Dinge sind beiseitegelassen; die Rezepte und das Ende der Liste sagen, welche.</translation>
</message>
<message>
<source>{things} are in the new bar; what could be undone is not.</source>
<translation>In der neuen Bar: {things}. Was rückgängig zu machen war, ist nicht dabei.</translation>
</message>
<message>
<source>{things} put on the shopping list</source>
<translation>{things} auf die Einkaufsliste gesetzt</translation>
</message>
<message>
<source>{things} thing could not be read:</source>
<translation>{things} Ding ließ sich nicht lesen:</translation>
</message>
<message>
<source>{things} things could not be read:</source>
<translation>{things} Dinge ließen sich nicht lesen:</translation>
</message>
<message>
<source>{things} to buy; no price is known.</source>
<translation>{things} zu kaufen; kein Preis ist bekannt.</translation>
</message>
<message>
<source>{things} to make</source>
<translation>{things} herzustellen</translation>
</message>
<message>
<source>{thing} cannot be removed: {users} still refer to it.</source>
<translation>{thing} lässt sich nicht entfernen: Darauf beziehen sich noch {users}.</translation>
</message>
<message>
<source>{thing} cannot be removed: {users} still refers to it.</source>
<translation>{thing} lässt sich nicht entfernen: Darauf bezieht sich noch {users}.</translation>
</message>
<message>
<source>{times} times as much.</source>
<translation>{times}-mal so viel.</translation>
</message>
<message>
<source>{title} (#{id}) was made on {made} and to be used by {use_by}, before that.</source>
<translation>{title} (#{id}) wurde am {made} gemacht und wäre bis {use_by} aufzubrauchen, also davor.</translation>
</message>
<message>
<source>{title} (#{id}) weighs {empty_g:g} g empty and {full_g:g} g full.</source>
<translation>{title} (#{id}) wiegt leer {empty_g:g} g und voll {full_g:g} g.</translation>
</message>
<message>
<source>{title} has {left} left.</source>
<translation>In {title} sind noch {left}.</translation>
</message>
<message>
<source>{title} has {value:,.0f} g/l of {what}, more than there can be.</source>
<translation>{title} hat {value:,.0f} g/l {what}, mehr als möglich ist.</translation>
</message>
<message>
<source>{title} is a house pour</source>
<translation>{title} ist eine Hausmarke</translation>
</message>
<message>
<source>{title} is empty</source>
<translation>{title} ist leer</translation>
</message>
<message>
<source>{title} is made here, not bought.</source>
<translation>{title} wird hier gemacht, nicht gekauft.</translation>
</message>
<message>
<source>{title} is not poured, so its bottle needs no weighing</source>
<translation>{title} wird nicht eingeschenkt, also muss nichts gewogen werden</translation>
</message>
<message>
<source>{title} is not poured, so there is nothing to weigh or to dash.</source>
<translation>{title} wird nicht eingeschenkt, also gibt es nichts zu wiegen und keine Dashes.</translation>
</message>
<message>
<source>{title} is past its date of {last_day} by then and is not counted on.</source>
<translation>{title} ist bis dahin über sein Datum {last_day} hinaus; damit wird nicht gerechnet.</translation>
</message>
<message>
<source>{title} is past its use-by date of {last}: {after}.</source>
<translation>{title} war nur bis {last} haltbar: {after}.</translation>
</message>
<message>
<source>{title} was made {ago} and {keeps}: {after}.</source>
<translation>{title} wurde {ago} gemacht und {keeps}: {after}.</translation>
</message>
<message>
<source>{title} was opened {ago} and {keeps}: {after}.</source>
<translation>{title} wurde {ago} geöffnet und {keeps}: {after}.</translation>
</message>
<message>
<source>{title} was past its date of {last_day} by then, so the log takes nothing from it.</source>
<translation>{title} war da schon über sein Datum {last_day} hinaus, darum nimmt das Protokoll nichts davon.</translation>
</message>
<message>
<source>{title} weighs {density:g} g/ml, which nothing poured does.</source>
<translation>{title} wiegt {density:g} g/ml; so schwer oder leicht ist nichts, was man einschenkt.</translation>
</message>
<message>
<source>{title} weighs {tare} empty</source>
<translation>{title} wiegt leer {tare}</translation>
</message>
<message>
<source>{title} weighs {weight_g:g} g full. Weigh it again once it is empty: then the density of what is in it is known, and bottles of it can be counted on a scale.</source>
<translation>{title} wiegt voll {weight_g:g} g. Wiege sie noch einmal, wenn sie leer ist: Dann ist die Dichte des Inhalts bekannt, und Flaschen davon lassen sich auf der Waage zählen.</translation>
</message>
<message>
<source>{title} – help – barkeep</source>
<translation>{title} – Hilfe – barkeep</translation>
</message>
<message>
<source>{title} – on paper</source>
<translation>{title} – auf dem Papier</translation>
</message>
<message>
<source>{title}, expected {expected}, counted {counted}, {method}: {difference}</source>
<translation>{title}, erwartet {expected}, gezählt {counted}, {method}: {difference}</translation>
</message>
<message>
<source>{title}, expected {expected}, not counted</source>
<translation>{title}, erwartet {expected}, nicht gezählt</translation>
</message>
<message>
<source>{title}: how many pieces? Enter takes them</source>
<translation>{title}: wie viele Stück? Enter übernimmt sie</translation>
</message>
<message>
<source>{title}: no</source>
<translation>{title}: nein</translation>
</message>
<message>
<source>{title}: not counted after all</source>
<translation>{title}: doch nicht gezählt</translation>
</message>
<message>
<source>{title}: yes</source>
<translation>{title}: ja</translation>
</message>
<message>
<source>{told} {more} more below.</source>
<translation>{told} Unten noch {more}.</translation>
</message>
<message>
<source>{told}; likely “{line}”</source>
<translation>{told}; wohl „{line}“</translation>
</message>
<message>
<source>{told}; the nearest are {names}</source>
<translation>{told}; am nächsten: {names}</translation>
</message>
<message>
<source>{total_ml:.0f} ml in all</source>
<translation>{total_ml:.0f} ml insgesamt</translation>
</message>
<message>
<source>{typed} is no key here; for an exact amount, Enter first, then 315 ml</source>
<translation>{typed} ist hier keine Taste; für eine genaue Menge erst Enter, dann 315 ml</translation>
</message>
<message>
<source>{user} may not do that in it</source>
<translation>{user} darf das darin nicht</translation>
</message>
<message>
<source>{user} may not look into its schema “{schema}”</source>
<translation>{user} darf nicht in ihr Schema „{schema}“ sehen</translation>
</message>
<message>
<source>{user} may not make the schema “{schema}”; </source>
<translation>{user} darf das Schema „{schema}“ nicht anlegen; </translation>
</message>
<message>
<source>{user} may not write into “{schema}”; </source>
<translation>{user} darf nicht in „{schema}“ schreiben; </translation>
</message>
<message>
<source>{value} is none of what it may be</source>
<translation>{value} ist nichts, was dort stehen darf</translation>
</message>
<message>
<source>{volume} at {abv:.0f} % vol, {drinks}</source>
<translation>{volume} mit {abv:.0f} % vol, {drinks}</translation>
</message>
<message>
<source>{volume} batch</source>
<translation>Ein Ansatz von {volume}</translation>
</message>
<message>
<source>{volume} drink</source>
<translation>Ein Drink von {volume}</translation>
</message>
<message>
<source>{volume} poured</source>
<translation>{volume} eingeschenkt</translation>
</message>
<message>
<source>{volume}, strength not known: {why}</source>
<translation>{volume}, Alkoholgehalt nicht bekannt: {why}</translation>
</message>
<message>
<source>{volume}, {abv:.0f} % vol, {drinks}</source>
<translation>{volume}, {abv:.0f} % vol, {drinks}</translation>
</message>
<message>
<source>{wanted} is expected, and it is {given}</source>
<translation>{wanted} wird erwartet, und es ist {given}</translation>
</message>
<message>
<source>{wanted}{limit} is expected</source>
<translation>{wanted}{limit} wird erwartet</translation>
</message>
<message>
<source>{way} now means “{next_one}”</source>
<translation>{way} beträfe jetzt „{next_one}“</translation>
</message>
<message>
<source>{weekday} {day}</source>
<translation>{weekday}, {day}</translation>
</message>
<message>
<source>{weekday} {day}, {time}</source>
<translation>{weekday}, {day}, {time}</translation>
</message>
<message>
<source>{weight_g:.5g} g is less than {bottle} weighs empty ({tare_g:.4g} g). Is it on the scale, without its cap?</source>
<translation>{weight_g:.5g} g ist weniger, als {bottle} leer wiegt ({tare_g:.4g} g). Steht sie auf der Waage, ohne Verschluss?</translation>
</message>
<message>
<source>{weight_g:.5g} g is more than {bottle} weighs when it is full (about {full_g:.4g} g).</source>
<translation>{weight_g:.5g} g ist mehr, als {bottle} voll wiegt (etwa {full_g:.4g} g).</translation>
</message>
<message>
<source>{what} cannot be used: {reason}.</source>
<translation>{what} lässt sich nicht verwenden: {reason}.</translation>
</message>
<message>
<source>{what} was stopped; nothing was written.</source>
<translation>{what}: angehalten; nichts wurde geschrieben.</translation>
</message>
<message>
<source>{what} “{text}” of line {line}</source>
<translation>{what} „{text}“ aus Zeile {line}</translation>
</message>
<message>
<source>{what} “{words}”</source>
<translation>{what} „{words}“</translation>
</message>
<message>
<source>{where} can be looked at, and nothing can be changed</source>
<translation>{where} lässt sich ansehen, aber nicht ändern</translation>
</message>
<message>
<source>{where} is not the file that was opened.</source>
<translation>{where} ist nicht die Datei, die geöffnet wurde.</translation>
</message>
<message>
<source>{where} must be an object</source>
<translation>{where} muss ein Objekt sein</translation>
</message>
<message>
<source>{where}, line {number}</source>
<translation>{where}, Zeile {number}</translation>
</message>
<message>
<source>{where}: a line has no field “{key}”</source>
<translation>{where}: eine Zeile hat kein Feld „{key}“</translation>
</message>
<message>
<source>{where}: its fields must be an object with an “ingredient”</source>
<translation>{where}: die Felder müssen ein Objekt mit „ingredient“ sein</translation>
</message>
<message>
<source>{where}: “fields” must be a list with one for each line</source>
<translation>{where}: „fields“ muss eine Liste mit einem Eintrag je Zeile sein</translation>
</message>
<message>
<source>{where}: “serves” must be a number</source>
<translation>{where}: „serves“ muss eine Zahl sein</translation>
</message>
<message>
<source>{where}: “{key}” cannot be {value!r}</source>
<translation>{where}: „{key}“ kann nicht {value!r} sein</translation>
</message>
<message>
<source>{where}: “{key}” must be a list of texts</source>
<translation>{where}: „{key}“ muss eine Liste von Texten sein</translation>
</message>
<message>
<source>{where}: “{key}” must be a text</source>
<translation>{where}: „{key}“ muss ein Text sein</translation>
</message>
<message>
<source>{whose}’s score for {name}</source>
<translation>Bewertung von {whose} für {name}</translation>
</message>
<message>
<source>{why} Closeness {closeness:.2f}.</source>
<translation>{why} Nähe {closeness:.2f}.</translation>
</message>
<message>
<source>{why} Filmed today? Say {same} with --on {today}.</source>
<translation>{why} Heute gedreht? Gib {same} mit --on {today} an.</translation>
</message>
<message>
<source>{why} Filmed today? Then first: barkeep shoot plan "#{shoot_id}" --state filmed --on {today}</source>
<translation>{why} Heute gedreht? Dann zuerst: barkeep shoot plan "#{shoot_id}" --state filmed --on {today}</translation>
</message>
<message>
<source>{why} Say with --made what was made, or --what-there-is to pour that much.</source>
<translation>{why} Gib mit --made an, was gemacht wurde, oder mit --what-there-is, dass so viel ausgeschenkt wird.</translation>
</message>
<message>
<source>{why} Use less ice, or a larger glass.</source>
<translation>{why} Nimm weniger Eis oder ein größeres Glas.</translation>
</message>
<message>
<source>{why} before it was known whether anything does better: {reached}.</source>
<translation>{why}, bevor bekannt war, ob etwas besser ist: {reached}.</translation>
</message>
<message>
<source>{why} before it was known whether anything uses more, or as much in less.</source>
<translation>{why}, bevor klar war, ob etwas mehr verbraucht oder gleich viel mit weniger Portionen.</translation>
</message>
<message>
<source>{why}; brings {drinks} to one short.</source>
<translation>{why}; bei {drinks} fehlt danach nur noch eine Zutat.</translation>
</message>
<message>
<source>{words} Nothing is written until you go back to the bar as it is.</source>
<translation>{words} Nichts wird geschrieben, bis du zur Bar zurückkehrst, wie sie ist.</translation>
</message>
<message>
<source>{word} of {name}</source>
<translation>{word} von {name}</translation>
</message>
<message>
<source>{word}; its price is {price}</source>
<translation>{word}; der Preis ist {price}</translation>
</message>
<message>
<source>{written} of {name} is about {shown}.</source>
<translation>{written} {name} sind etwa {shown}.</translation>
</message>
<message>
<source>{year:04}-{month:02}-{day:02}</source>
<comment>a day in figures</comment>
<translation>{day:02}.{month:02}.{year:04}</translation>
</message>
<message>
<source>{{}} short for {drink}</source>
<translation>{{}} fehlen für {drink}</translation>
</message>
<message>
<source>{{}} short to cut {garnishes}</source>
<translation>{{}} fehlen zum Schneiden von {garnishes}</translation>
</message>
<message>
<source>{{}} short to garnish {drinks}</source>
<translation>{{}} fehlen zum Garnieren von {drinks}</translation>
</message>
<message>
<source>“bitter” may be {meant} or {name}</source>
<translation>„bitter“ kann {meant} oder {name} sein</translation>
</message>
<message>
<source>“have” may be “half”</source>
<translation>„have“ kann „half“ sein</translation>
</message>
<message>
<source>“specs” must be a list</source>
<translation>„specs“ muss eine Liste sein</translation>
</message>
<message>
<source>“{bare}” is likely its strength, and not what is left</source>
<translation>„{bare}“ ist wohl der Alkoholgehalt und nicht, was übrig ist</translation>
</message>
<message>
<source>“{bare}” is likely what is left, and not its strength</source>
<translation>„{bare}“ ist wohl, was übrig ist, und nicht der Alkoholgehalt</translation>
</message>
<message>
<source>“{day}” is no day that can be read; write one as 2026-03-31, or take today</source>
<translation>„{day}“ ist kein lesbarer Tag; schreib ihn als 2026-03-31, oder nimm heute</translation>
</message>
<message>
<source>“{key}” begins a list that does not end on its line</source>
<translation>„{key}“ beginnt eine Liste, die nicht auf ihrer Zeile endet</translation>
</message>
<message>
<source>“{key}” holds names of its own; give it a text or a list</source>
<translation>„{key}“ enthält eigene Namen; gib ihm einen Text oder eine Liste</translation>
</message>
<message>
<source>“{key}” is of a kind that is not read; write it on one line</source>
<translation>„{key}“ ist von einer Art, die nicht gelesen wird; schreib es auf eine Zeile</translation>
</message>
<message>
<source>“{label}” {gone}, here, in another window or by a command, so nothing was changed. {left}.</source>
<translation>„{label}“ {gone}, hier, in einem anderen Fenster oder durch einen Befehl; deshalb wurde nichts geändert. {left}.</translation>
</message>
<message>
<source>“{left}” is likely {kind}</source>
<translation>„{left}“ ist wohl {kind}</translation>
</message>
<message>
<source>“{maker}” names no kind, nor this row’s maker</source>
<translation>„{maker}“ nennt weder eine Zutat noch den Hersteller dieser Zeile</translation>
</message>
<message>
<source>“{name}”</source>
<translation>„{name}“</translation>
</message>
<message>
<source>“{name}” could be more than one {kind}: {choices}. Say which.</source>
<translation>„{name}“ kann mehreres sein ({kind}): {choices}. Sag, welches.</translation>
</message>
<message>
<source>“{name}” is given twice; it is “{once}” above</source>
<translation>„{name}“ steht zweimal da; oben ist es „{once}“</translation>
</message>
<message>
<source>“{name}” is in this text twice; it is also on line {row}</source>
<translation>„{name}“ steht zweimal in diesem Text; auch auf Zeile {row}</translation>
</message>
<message>
<source>“{name}” is missing</source>
<translation>„{name}“ fehlt</translation>
</message>
<message>
<source>“{name}” is nothing that barkeep knows</source>
<translation>„{name}“ kennt barkeep nicht</translation>
</message>
<message>
<source>“{name}” is there twice; it is also at {where} of {file}, and the two differ</source>
<translation>„{name}“ ist zweimal da, auch bei {where} von {file}, und die beiden unterscheiden sich</translation>
</message>
<message>
<source>“{name}” is there twice; it is also at {where}, and the two differ</source>
<translation>„{name}“ ist zweimal da, auch bei {where}, und die beiden unterscheiden sich</translation>
</message>
<message>
<source>“{name}” is understood as {as_} already.</source>
<translation>„{name}“ wird schon als {as_} verstanden.</translation>
</message>
<message>
<source>“{name}” was begun on {day}, {time} and not saved.</source>
<translation>„{name}“ wurde am {day}, {time} begonnen und nicht gesichert.</translation>
</message>
<message>
<source>“{notes}” says more than {name} does</source>
<translation>„{notes}“ sagt mehr als {name}</translation>
</message>
<message>
<source>“{odd}” says nothing known; it stays with the name</source>
<translation>„{odd}“ sagt nichts Bekanntes; es bleibt beim Namen</translation>
</message>
<message>
<source>“{other}” is there already, and it would be read as that</source>
<translation>„{other}“ ist schon da, und es würde als das gelesen</translation>
</message>
<message>
<source>“{ratio}” is how a syrup is made</source>
<translation>„{ratio}“ sagt, wie man einen Sirup macht</translation>
</message>
<message>
<source>“{term}” finds nothing: {expected}.</source>
<translation>„{term}“ findet nichts: {expected}.</translation>
</message>
<message>
<source>“{text}” cannot be read as an amount: {expected}.</source>
<translation>„{text}“ lässt sich nicht als Menge lesen: {expected}.</translation>
</message>
<message>
<source>“{text}” does not say which column is what: {reason}.</source>
<translation>„{text}“ sagt nicht, welche Spalte was ist: {reason}.</translation>
</message>
<message>
<source>“{text}” holds bytes that are no text (UTF-8); write it anew.</source>
<translation>„{text}“ enthält Bytes, die kein Text sind (UTF-8); schreib es neu.</translation>
</message>
<message>
<source>“{text}” is below nothing; an amount is zero or more.</source>
<translation>„{text}“ ist weniger als nichts; eine Menge ist null oder mehr.</translation>
</message>
<message>
<source>“{text}” is {given}, and a measure holds a volume such as 1.5 oz</source>
<translation>„{text}“ ist {given}, und ein Maß fasst ein Volumen wie 1.5 oz</translation>
</message>
<message>
<source>“{text}” is {given}; {wanted} is expected here.</source>
<translation>„{text}“ ist {given}; hier wird {wanted} erwartet.</translation>
</message>
<message>
<source>“{text}” may be any of several kinds</source>
<translation>„{text}“ kann mehrere Zutaten meinen</translation>
</message>
<message>
<source>“{text}” needs a unit: {name} takes {wanted}</source>
<translation>„{text}“ braucht eine Einheit: {name} verlangt {wanted}</translation>
</message>
<message>
<source>“{text}” of {name} is about {likely} pieces; write how many there are.</source>
<translation>„{text}“ {name} sind etwa {likely} Stück; schreib, wie viele es sind.</translation>
</message>
<message>
<source>“{text}” stands beyond the last column; put a text that holds what parts the columns in double quotes</source>
<translation>„{text}“ steht hinter der letzten Spalte; setze einen Text, der das Trennzeichen der Spalten enthält, in doppelte Anführungszeichen</translation>
</message>
<message>
<source>“{times}” may say how many the amounts are for; write “Serves: {count}” below the name, or “Name: {name}” here</source>
<translation>„{times}“ kann sagen, für wie viele die Mengen sind; schreib „Serves: {count}“ unter den Namen oder „Name: {name}“ hierher</translation>
</message>
<message>
<source>“{typing}” is being typed and not counted yet.</source>
<translation>„{typing}“ wird gerade getippt und ist noch nicht gezählt.</translation>
</message>
<message>
<source>“{value:g}” is nothing; an amount is above nothing</source>
<translation>„{value:g}“ ist nichts; eine Menge ist mehr als nichts</translation>
</message>
<message>
<source>“{value}” for {field} is not clear: {expected}.</source>
<translation>{field}: „{value}“ ist nicht eindeutig: {expected}.</translation>
</message>
<message>
<source>“{words}” corrects nothing that was found here</source>
<translation>„{words}“ berichtigt nichts, was hier gefunden wurde</translation>
</message>
<message>
<source>“{words}” has no place in this line; write it as a note in brackets, or correct it</source>
<translation>„{words}“ hat in dieser Zeile keinen Platz; schreib es als Notiz in Klammern oder berichtige es</translation>
</message>
<message>
<source>“{words}” is a number that belongs to nothing here; write what it counts</source>
<translation>„{words}“ ist eine Zahl, die hier zu nichts gehört; schreib, was sie zählt</translation>
</message>
<message>
<source>“{words}” is a proportion; write how much goes into one</source>
<translation>„{words}“ ist ein Verhältnis; schreib, wie viel in einen Drink kommt</translation>
</message>
<message>
<source>“{words}” is a second amount; give what it measures a line of its own</source>
<translation>„{words}“ ist eine zweite Menge; gib dem, was sie misst, eine eigene Zeile</translation>
</message>
<message>
<source>“{words}” is another ingredient; give it a line of its own</source>
<translation>„{words}“ ist eine andere Zutat; gib ihr eine eigene Zeile</translation>
</message>
<message>
<source>“{words}” is kept as a note</source>
<translation>„{words}“ bleibt als Notiz</translation>
</message>
<message>
<source>“{words}” is more than {kind}; likely a new ingredient, a kind of {kind}</source>
<translation>„{words}“ ist mehr als {kind}; wohl eine neue Zutat, eine Art {kind}</translation>
</message>
<message>
<source>“{words}” is no unit that is known</source>
<translation>„{words}“ ist keine bekannte Einheit</translation>
</message>
<message>
<source>“{words}” is no unit that is known; {name} takes {wanted}</source>
<translation>„{words}“ ist keine bekannte Einheit; {name} verlangt {wanted}</translation>
</message>
<message>
<source>“{words}” is not like “amount=2”</source>
<translation>„{words}“ ist nicht wie „amount=2“</translation>
</message>
<message>
<source>“{words}” is not understood; put it in brackets behind the ingredient</source>
<translation>„{words}“ ist nicht verstanden; setze es in Klammern hinter die Zutat</translation>
</message>
<message>
<source>“{words}” may be a {meant}</source>
<translation>„{words}“ kann {meant} heißen</translation>
</message>
<message>
<source>“{words}” may be {meant}</source>
<translation>„{words}“ kann {meant} sein</translation>
</message>
<message>
<source>“{words}” may be {names}; write which</source>
<translation>„{words}“ kann {names} sein; schreib, was</translation>
</message>
<message>
<source>“{words}” may make something else of {kind}</source>
<translation>„{words}“ kann aus {kind} etwas anderes machen</translation>
</message>
<message>
<source>“{words}” may say that so much goes in {times} times</source>
<translation>„{words}“ kann sagen, dass diese Menge {times}-mal hineinkommt</translation>
</message>
<message>
<source>“{words}” names an ingredient; give it a line of its own</source>
<translation>„{words}“ nennt eine Zutat; gib ihr eine eigene Zeile</translation>
</message>
<message>
<source>“{words}” points at the line before; write on that line what is meant</source>
<translation>„{words}“ verweist auf die Zeile davor; schreib auf jene Zeile, was gemeint ist</translation>
</message>
<message>
<source>“{words}” puts a line before it right; write on that line what is meant</source>
<translation>„{words}“ berichtigt eine Zeile davor; schreib auf jene Zeile, was gemeint ist</translation>
</message>
<message>
<source>“{words}” says that this is for {count:g}; write what goes into one</source>
<translation>„{words}“ sagt, dass das für {count:g} ist; schreib, was in einen Drink kommt</translation>
</message>
<message>
<source>“{words}” says that this is not settled yet</source>
<translation>„{words}“ sagt, dass das noch nicht feststeht</translation>
</message>
<message>
<source>“{words}” stands where only a maker's words may; put the maker behind the ingredient in brackets, or correct it</source>
<translation>„{words}“ steht, wo nur der Hersteller stehen darf; setze den Hersteller in Klammern hinter die Zutat oder berichtige es</translation>
</message>
<message>
<source>“{words}” was not understood as the amount; begin the line with it</source>
<translation>„{words}“ wurde nicht als Menge verstanden; beginne die Zeile damit</translation>
</message>
<message>
<source>“{word}” is none of {words}</source>
<translation>„{word}“ ist keines von {words}</translation>
</message>
<message>
<source>“{word}” is there twice</source>
<translation>„{word}“ ist zweimal da</translation>
</message>
<message>
<source>“{word}” is there twice; number them, as “{word}1=…,{word}2=…”</source>
<translation>„{word}“ ist zweimal da; nummeriere sie, etwa „{word}1=…,{word}2=…“</translation>
</message>
</context>
</TS>
