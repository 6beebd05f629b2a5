### Deutsch. Jeder Satz steht hier einmal; wer ein Wort davon ändert, ändert nur diese Datei. Siehe docs/LANGUAGES.md


## Numbers, units and fields: what is said of what somebody typed. Each of them stands behind the label of its field

field-refused = { $label }: { $why }
number-plain = Zahl eingeben, z. B. 240 oder 1,5
number-too-small = zu klein. 0 oder mehr eingeben.
number-written-out = alle Ziffern eingeben, z. B. 1500 oder 0,001
number-one-mark = nur ein Komma oder Punkt
number-spaces = Zahl ohne Leerzeichen eingeben, z. B. 1500
number-over-zero = Bruch wie 1/2 eingeben, nicht 1/0
unit-which = Einheit eingeben: { $units }
    .oz = oz für Gewicht oder US fl oz
    .fl-oz = US fl oz oder imp fl oz
    .pt = US pt oder imp pt
    .gal = US gal oder imp gal
    .qt = US qt oder Liter
unit-of-another = „{ $typed }“ ist Einheit für { $other }, nicht { $quantity }
unit-unknown = „{ $typed }“ unbekannt. Zahl allein oder andere Einheit eingeben.
quantity-mass = Masse
quantity-volume = Volumen
quantity-length = Länge
quantity-area = Fläche
quantity-angle = Winkel
quantity-temperature = Temperatur
quantity-time = Zeit
quantity-density = Dichte
quantity-areal-weight = Flächengewicht
quantity-weight-per-length = Gewicht je Länge
quantity-speed = Geschwindigkeit
quantity-flow = Luftmenge je Zeit
quantity-stress = mechanische Spannung
quantity-equivalent-weight = Äquivalentgewicht
quantity-share = Anteile
quantity-count = Anzahl
units-help = Andere Einheit hinter die Zahl.
field-number = Zahl eingeben
    .unit = Zahl eingeben ({ $unit })
field-whole = ganze Zahl eingeben
field-within = { $low } bis { $high } eingeben
field-above = mehr als { $low }, höchstens { $high } eingeben
# Einheiten wie in „7 ft 10 in“
field-finer = nach { $large } kommt { $small }, z. B. 1 { $large } 4 { $small }
    .whole = erst ganze { $large } eingeben, dann weniger als { $most }
field-parts = Teile eingeben, z. B. 100:30 oder 2:1
    .count = { $least } bis { $most } Zahlen mit Doppelpunkten eingeben, z. B. 100:30
    .one = „{ $typed }“: { $why }
    .each = jede Zahl mehr als { $low }, höchstens { $high }
field-amount = Menge eingeben
    .unit = Menge eingeben ({ $unit })
    .positive = mehr als null eingeben
    .most = höchstens { $most }
field-choose = { $options } wählen
    .each = „{ $option }“
field-phone = Nummer in Ziffern eingeben, z. B. +48 22 123 45 67
field-words = Wörter eingeben
field-letters = zu lang, höchstens { $most } Zeichen
field-too-long = zu lang, weniger eingeben
field-no-such = „{ $row }“ nicht in der Liste. Wählen oder Werte eingeben.
    .thing = nicht in der Liste. Wählen oder Werte eingeben.
field-list = muss eine Liste sein
field-rows =
    .most = höchstens { $most } behalten
    .least = mindestens { $least } hinzufügen
    .none = keine
field-clock = Uhrzeit eingeben, z. B. 8:30 oder 14:05
field-of-what = { $label }, wovon
# hinter „gelesen als“
field-read =
    .comma = { $read } (Komma für Dezimalen). Für Tausender { $whole } eingeben.
    .point = { $read } (Punkt für Dezimalen). Für Tausender { $whole } eingeben.
unit-which-pfund = lb oder 500 g

## Door: cards, links and what leaves the phone

made-with = Erstellt mit Version { $release }
    .build = Erstellt mit Version { $release }, Build { $build }
recalled-unread = Version nicht bekannt. Mit dem Harzetikett vergleichen.
recalled-before = Zurückgerufene Version: Covemix vor { $release }.
recalled-with = Zurückgerufene Version: Covemix { $release }.
card-of-row = { $field }, { $each } { $count }
card-row = { $each } { $count }
card-field = { $field }: { $text }
card-line = { $label }: { $text }
    .question = { $label } { $text }
    .rough = { $line } ({ $rough })
card-title = Covemix, { $title }
card-caution = Vorsicht: { $caution }
card-trial = Probebecher
card-not-worked-out = Kein Ergebnis
card-more = Mehr auf der Karte.
-link-untouched = Nichts wurde geändert.
link-too-long = Link zu lang für Covemix. { -link-untouched }
link-newer = Link von neuerem Covemix. Aktualisieren, erneut öffnen. { -link-untouched }
link-cut = Link abgeschnitten oder geändert. Neu schicken lassen. { -link-untouched }
link-foreign = Link hat hier nur { $names }. { -link-untouched }
link-strange = Link mit nicht bekannten Eingaben: { $names }. Vielleicht andere Mischung. { -link-untouched }
link-twice = Link mit zwei Werten für { $names }. Neu schicken lassen. { -link-untouched }
link-name = „{ $name }“
link-names = { $names } und { $more } weitere
link-more = { $count } weitere
recalled-one =
    .wrong = Konnte bei Etikett nach Gewicht Hübe 1 : 1 nennen, Einheiten verwechseln, nach Zurückstellen der Uhr mehr Minuten geben.
    .check = Verhältnis und Einheiten mit dem Harzetikett vergleichen.

## Spreader

spreader-radii = Radius jedes Hohlkehlspachtels
    .help = Mehrere mit Doppelpunkten.
spreader-paper = Papier
spreader-printed = Balken misst
spreader-too-many = Passen nicht auf ein Blatt. Weniger eingeben, höchstens { $largest }. Größere: gebogene Straklatte.
spreader-measure = Zuerst den Balken messen
    .text = Er muss { "100 mm" } lang sein. Sonst mit 100 % drucken, ohne Anpassen an die Seite. Immer noch falsch: eingeben, was er misst.
    .again = Berichtigt. Er muss { "100 mm" } lang sein. Sonst sein Feld leeren, drucken, messen.
spreader-radius = Spachtel, Radius
    .rough = runde Spitze, { $width } breit
spreader-cut = Dann ausschneiden
    .text = Papier auf steife Platte kleben, bis zur Linie schneiden, schleifen. Ecken nicht runden. Am kleinsten und größten Winkel probieren.
spreader-sheet = Spachtel in wahrer Größe
    .bar = messen: { "100 mm" }
    .print = Mit 100 % drucken. Bis zur Linie schneiden.
    .corrected = Wenn aus { "100 mm" } { $printed } werden.
    .radius = R { $radius }
    .told = Wahre Größe: Balken { "100 mm" } zum Messen, Spachtel, Radius { $radii }.

## Kit

kit-kind = Art
kit-new-thing = Eingeben, oder Typisches ändern.
kit-no-name = Name: Namen eingeben
kit-started-from = Werte ({ $mark }) durch eigene ersetzen
shelf-mixes = Reicht noch für
kit-shelf = Haltbarkeit
shelf-soon = Warnung vor dem Ende
shelf-last = Aufbrauchen bis { $day }.
    .past = Abgelaufen am { $day }. Erst Probebecher mischen.
    .soon = Endet am { $day }. Erst aufbrauchen.
shelf-crystals = Harz trüb oder körnig
    .text = Deckel lockern, im Wasserbad von { $warm } wärmen, bis klar, ohne Rühren bis zu { $hours }. Rühren. Vor dem Mischen abkühlen lassen, sonst viel früher steif (übliche Praxis).
kit-used-up = Leer
    .text = „Boot“ nimmt die anderen Rollen.
kit-test-cup = Probebecher: eigene Zeiten
kit-as-built-in = Eingebaute Werte
    .text = Nicht gemessen. Eigene eingeben: { $fields }

## Door: the moves by name

# Namen der Rechenschritte und was sie tun; nur für Programme, die sie aufrufen
move-ratio = Mischungsverhältnis
    .purpose = Komponenten nach Gewicht und Volumen berechnen
move-measure = Abmessen
    .purpose = Gewichte oder Hübe nennen
move-rescue = Retten
    .purpose = Berechnen, was noch in den Becher muss
move-thicken = Andicken
    .purpose = Füllstoff für Mischung und Steifigkeit berechnen
move-pouring = Schritt für Schritt mischen
    .purpose = Schritt für Schritt mischen und korrigieren
move-heat = Wärme
    .purpose = Verarbeitungszeit und Spitzentemperatur berechnen
move-trial = Probebecher
    .purpose = Tempo und Wärmeverlust eines Systems zeigen
move-cure = Aushärtung
    .purpose = Zeigen, wann abziehen, beschichten, schleifen, belasten
move-dew = Taupunkt
    .purpose = Abstand zum Taupunkt zeigen
move-joint = Verbindung
    .purpose = Hohlkehle, Glasband und Harz einer Naht berechnen
move-spreader = Hohlkehlspachtel
    .purpose = Schablone in wahrer Größe zeigen
move-coats = Beschichten
    .purpose = Harz, Film und Uhrzeiten für Schichten nennen
move-sheathing = Überziehen
    .purpose = Gewebe, Harz, Füllschichten und Stöße nennen
move-fairing = Spachteln
    .purpose = Spachtel, Aufträge und Mehrgewicht nennen
move-gluing = Leimen
    .purpose = Reines Harz, Leim und Zwingen nennen
move-fillets = Hohlkehlen ohne Glasband
    .purpose = Radius und Spachtelmasse nennen
move-boat = Boot
    .purpose = Einkauf, Zuschnitt und Mehrgewicht nennen
move-plan = Plan
    .purpose = Nähte eines Tages in Ansätze teilen
move-run = Ansatz ausführen
    .purpose = Einen Ansatz Schritt für Schritt ausführen
move-pot = Laufender Ansatz
    .purpose = Restzeit, nächsten Schritt, Alarm zeigen
move-timer = Timer
    .purpose = Rest eines Schritts zeigen
move-kit = Ausrüstung
    .purpose = Ausrüstung speichern
move-log = Protokoll
    .purpose = Ansatz im Protokoll speichern
move-timings = Eigene Zeiten
    .purpose = Eigene Zeiten mit dem Etikett vergleichen
move-own-rates = Eigenes Arbeitstempo
    .purpose = Lernen, wie schnell dieses Team ist
move-aid = Erste Hilfe
    .purpose = Sagen, was sofort zu tun ist
move-calls = Notrufnummern
    .purpose = Eigene Notrufnummern bereithalten
move-safety = Sicherheit
    .purpose = Warnungen nennen
move-air = Luft
    .purpose = Minuten, Grenzen und Luftmenge berechnen
move-sources = Quellen
    .purpose = Alle Werte mit Quelle zeigen

## Kinds of things, and the kit

# kurze Namen eingebauter Dinge, solange niemand andere eingibt
called-system =
    .one = Eins zu eins
    .two = Zwei zu eins
    .three = Drei zu eins
    .four = Vier zu eins
    .five = Fünf zu eins
called-scale =
    .kitchen = Küchenwaage
    .fine = Feinwaage
    .old = Alte Waage
called-pumps =
    .equal = Gleiche Pumpen
called-cup =
    .small = Kleiner Becher
    .medium = Konischer Becher
    .tin = Gerade Dose
    .tub = Weite Dose
called-graduated =
    .medicine = Medizinbecher
    .mixing = Mischbecher
    .large = Großer Mischbecher
called-syringes =
    .unequal = 60 und 20
    .equal = Zwei mit 10
called-filler =
    .glass-spheres = Glashohlkugeln
called-room =
    .shed = Werkstatt
    .garage = Garage
    .tent = Zelt
called-fan =
    .small = Fensterventilator
    .box = Großer Ventilator
called-roll =
    .tape = Glasband 75
    .cloth = Glasgewebe
    .ply = Abreißgewebe 150
statements-most = Höchstens { $most } Gefahrenhinweise eingeben
statements-none = „{ $typed }“ ist kein Gefahrenhinweis. Codes aus dem Sicherheitsdatenblatt, Abschnitt 2, eingeben, z. B. H315, H317, H411
# ein Startwert: „10 bis 35 g, aus dem Gedächtnis.“
remembered-help = { $range }, { $mark }.
remembered-range = { $low } bis { $high }
remembered-filler =
    .cove = Holzmehl für eine Hohlkehle.
    .epoxy = Holzmehl, in % des gemischten Epoxids.
remembered-each-mix = Je Ansatz.
kind-name = Name
kind-unsaid = nicht bekannt
kind-origin = Herkunft der Werte
    .label = mit dem Etikett verglichen
    .row = aus der eingebauten Liste
    .link = aus einem Link
    .typed = wie eingegeben
    .fold = Herkunft der Werte
    .help = „mit dem Etikett verglichen“ erst danach wählen.
kind-system = Harzsystem
kind-system-fold = Mehr vom Etikett
kind-system-by-weight = Gewichtsteile
    .help = Vom Etikett, Harz zuerst: 100:30
kind-system-by-volume = Volumenteile
    .help = Wie auf dem Etikett, Harz zuerst: 3:1
kind-system-densities = Dichten
    .help = In Reihenfolge der Komponenten: 1,15 : 0,98 oder 1,15 0,98
kind-system-weighed = Gleiche Volumen, gewogen
    .help = Spritze mit jeder zum selben Strich füllen, ohne Spritze wiegen, der Reihe nach: { "23.1 : 19.4 g" }
kind-system-parts = Namen der Komponenten
    .help = In Reihenfolge der Komponenten, mit Doppelpunkten
kind-system-tolerance = Erlaubter Mischfehler laut Etikett
kind-system-eew = Epoxid-Äquivalentgewicht, EEW
    .help = Prüft mit dem nächsten die Chemie
kind-system-ahew = Amin-H-Äquivalentgewicht, AHEW
kind-system-speed = Härtertempo
    .fast = Schnell
    .medium = Mittel
    .slow = Langsam
kind-system-pot-time = Topfzeit
kind-system-pot-mass = bei einer Masse von
kind-system-pot-temperature = bei einer Temperatur von
kind-system-pot-meaning = Topfzeit bedeutet
    .open = nicht gesagt: Ende der Verarbeitung
    .gel = die Zeit bis zum Gel
    .work = die Verarbeitungszeit
kind-system-film-time = Verarbeitungszeit als dünner Film
kind-system-lowest = Niedrigste Verarbeitungs{ "\u00AD" }temperatur
# die Wörter in Anführungszeichen versteht SPELT in things/kept_words.py; gespeichert werden englische
kind-system-timings = Eigene Zeiten der Ansätze
    .help = „anziehend 31 min { "240 g" } Becher { "20 degC" }“. Draußen „in der Sonne“ dahinter. Dazwischen Strichpunkt. Gehen vor.
kind-system-trials = Probebecher
    .help = Vom Probebecher.
kind-system-lot = Charge
kind-system-statements = Gefahrenhinweise im Sicherheits{ "\u00AD" }datenblatt
    .help = Z. B. H315, H317, H411. Gehen vor.
kind-system-shelf = Im Regal
kind-system-left = Rest je Komponente
    .help = Ohne Dosen: { "1200 : 430 g" }. Protokoll zieht ab.
kind-system-made = Hergestellt am
    .like = Jahr zuerst: 2026-03 oder 2026-03-15
kind-system-shelf-life = Haltbar in Monaten, zu
kind-system-opened = Geöffnet am
kind-system-open-life = Haltbar in Monaten, offen
kind-system-no-ratio = Verhältnis vom Etikett eingeben, nach Gewicht oder Volumen
kind-system-other-count = Nach Volumen: so viele Zahlen wie nach Gewicht
kind-system-each = je Komponente eine Zahl eingeben, in Reihenfolge
kind-system-apart = Komponente { $part } weicht nach Gewicht und Dichten um { $off } vom Volumenverhältnis ab. Etikett prüfen. Löschen, was nicht darauf steht.
kind-system-too-dense = Nach beiden wäre Komponente { $part } { $times }-mal so dicht wie die erste. Etikett prüfen. Löschen, was nicht darauf steht.
kind-scale = Waage
kind-scale-step = Teilung (kleinster Schritt)
kind-scale-most = Höchstes Gewicht
kind-scale-own-error = Eigener Fehler, ohne Teilung
    .help = Linearität und Nullpunktdrift, ± höchstens, laut Datenblatt oder Prüfgewicht. Leer: { $share } der Teilung.
kind-pumps = Pumpensatz
kind-pumps-strokes = Ein Hub jeder Pumpe
    .help = In Reihenfolge der Komponenten: { "10 : 3.4 mL" }
kind-pumps-ten-strokes = Zehn Hübe jeder Pumpe, gewogen
    .help = In Reihenfolge der Komponenten: { "115 : 33 g" }. Geht vor.
kind-pumps-no-strokes = Hub jeder Pumpe in mL eingeben oder zehn Hübe wiegen
kind-cup = Becher
kind-cup-bottom = Innendurchmesser am Boden
kind-cup-top = Innendurchmesser am Rand
kind-cup-height = Innenhöhe
    .help = Innen senkrecht bis zum Rand
kind-graduated = Messbecher
kind-graduated-holds = Höchster Strich
kind-graduated-step = Von Strich zu Strich
    .too-far = Von Strich zu Strich: höchstens, was der Becher fasst
kind-syringes = Spritzen
kind-syringes-holds = Inhalt je Spritze
    .help = In Reihenfolge der Komponenten: { "60 : 20 mL" }. Eine Zahl gilt für alle.
kind-syringes-steps = Von Strich zu Strich
    .count = Von Strich zu Strich: eine Zahl für alle oder eine je Spritze eingeben
    .too-far = Von Strich zu Strich: höchstens, was die Spritze fasst
    .help = In Reihenfolge der Komponenten: { "1 : 0.5 mL" }. Eine Zahl gilt für alle.
kind-filler = Füllstoff
kind-filler-doses = Füllstoff auf 100 Teile Mischung, nach Gewicht
    .help = Für die fünf Steifigkeiten, weichste zuerst: 8 : 15 : 25 : 38 : 50
kind-filler-density = Reindichte, benetzt
kind-filler-loose = Schüttdichte
    .help = Gestrichen vollen Becher wiegen
kind-filler-fold = Was er kann
kind-filler-grain = Körner
    .other = Mehl, Fasern, Flocken
    .sphere = Hohlkugeln
kind-filler-carries = In einer tragenden Naht
    .yes = Darf Last tragen
    .no = Nur zum Straken
kind-filler-alone = Allein
    .yes = Steht allein
    .no = Braucht anderen Füllstoff
kind-room = Raum
kind-room-length = Länge
kind-room-width = Breite
kind-room-height = Höhe
kind-room-volume = Volumen, falls bekannt
    .help = Gilt statt Länge, Breite und Höhe
kind-room-no-size = Raum: Länge, Breite, Höhe oder Volumen eingeben
kind-fan = Ventilator
kind-fan-flow = Luftstrom
    .help = Filter oder Schlauch nimmt bis zur Hälfte.
kind-people = Team
    .alone = Allein
    .two = Zwei
    .three = Drei
    .four = Vier
    .five = Fünf
    .six = Sechs
kind-people-fold = Arbeitstempo einer Person, liegende Naht
kind-people-hands = Wie viele Personen
kind-people-learned = Aus eigenen Ansätzen
    .help = Aus dem Protokoll. Ein Tempo oben geht vor.
kind-roll = Rolle oder Reststück
kind-roll-of = Material
    .tape = Glasband
    .cloth = Glasgewebe
    .ply = Abreißgewebe
kind-roll-width = Breite
kind-roll-weight = Trockengewicht
    .help = Bei Abreißgewebe nicht nötig
kind-roll-length = Restlänge
    .help = „Boot“ kann den Zuschnitt abziehen
kind-roll-no-kind = Material: Glasband, Glasgewebe oder Abreißgewebe wählen
kind-roll-no-weight = Trockengewicht: bei Glasband und Glasgewebe eingeben
kind-numbers = Notrufnummern
    .none = Noch keine eingegeben
kind-numbers-name =
    .help = Wo sie gelten
kind-numbers-ambulance = Rettungsdienst, Notruf
kind-numbers-poison = Giftnotruf
kind-numbers-who = Wen anrufen
kind-numbers-person = Nummer dieser Person
kind-numbers-no-number = Mindestens eine Nummer eingeben

## Log and rates

batch-each = Ansatz
log-what = Was gemischt wurde
    .help = Mischung, wie auf der Seite
    .none = Ein Ansatz
log-seam = Welche Naht
log-temperature = Temperatur der Werkstatt
log-outcome = Ergebnis
    .unknown = Noch nicht bekannt
    .good = Gut ausgehärtet
    .slow = Langsam ausgehärtet
    .soft = Weich oder klebrig
    .stiff = Zu früh steif geworden
    .hot = Zu heiß geworden
log-went-in-fold = Was hineinkam
log-lot = Chargennummern
log-mass = Gemischte Masse
log-readings = Wirklich abgelesen
log-times-fold = Zeiten
log-own-time = Steif nach
    .help = Ab erstem Rühren, bis zu steif
log-label-time = Das Etikett sagt
log-note = Notiz
log-laid-fold = Nach Plan verarbeitet: wie schnell
log-crew = Wer es verarbeitet hat
log-hands = Wie viele Personen
log-laid = Verarbeitete Meter
    .help = Als liegende Naht, stehende zählt mehr.
log-rows = Verarbeitete Ansätze
log-empty = Noch nichts zu speichern
    .text = Mindestens eine Angabe eingeben.
# was von einem Ansatz bekannt ist: „Kiel, 240 g, 18 °C, Charge 7, abgelesen 163 mL, 2,4 m verarbeitet“
log-piece =
    .lot = Charge { $lot }
    .read = abgelesen { $readings }
    .laid = { $length } verarbeitet
    .none = sonst nichts
log-stiffened = Steif nach
    .against = { $own }, Etikett { $label }: { $against }
log-against =
    .sooner = { $share } % früher
    .longer = { $share } % später
timings-rows = Ansätze mit Zeit, älteste zuerst
timings-none = Eigene Zeiten
    .text = Noch keine. Notieren, wann ein Ansatz steif wird.
timings-shortest = Bisher kürzeste
    .rough = Ansätze: { $count }, Masse und Wärme verschieden
timings-share = Eigene Zeiten gegenüber dem Etikett
    .rough = mittlerer Wert, Ansätze: { $count }
timings-drawing = Minuten, bis steif, älteste zuerst. Balken: eigene, Linie: Etikett.
    .told = Minuten, bis steif, älteste zuerst ({ $count }): { $minutes }.
own-rates = Eigenes Arbeitstempo
    .none = Noch keins. Im „Plan“ Schritte tippen.
    .text = Aus eigenen Ansätzen: { $rates }
    .rough =
        aus { $count ->
            [one] 1 eigenen Ansatz
           *[other] { $count } eigenen Ansätzen
        }, { $low } bis { $high }. Wenige: näher an „aus dem Gedächtnis“.
    .use = Eigenes Tempo nehmen
# Arbeitsschritte in einer Liste: „auftragen 2, abziehen 1, säubern 1,25 m/min“
pace-place = auftragen
pace-tool = abziehen
pace-clean = säubern
pace-wet = tränken
pace-lay = auflegen
pace-roll = entlüften
pace-peel = Abreißgewebe
pace-all = alle
pace-learned =
    { $pace } aus { $count ->
        [one] 1 eigenen Ansatz
       *[other] { $count } eigenen Ansätzen
    }, { $low } bis { $high }
pace-whence =
    { $paces }: { $whence ->
        [typed] eingegeben
        [crew] vom Team
       *[remembered] aus dem Gedächtnis
    }
# die Wörter in Anführungszeichen bleiben englisch: so werden sie gespeichert
learned-rates-like = Aus eigenen Ansätzen: wie „roll 0.5, 0.41 to 0.6, from 3“, dazwischen Strichpunkt
own-timings-like = Eigene Zeiten: wie „anziehend 31 min { "240 g" } Becher { "20 degC" }“, dazwischen Strichpunkt
own-timings-counted =
    aus { $count ->
        [one] 1 eigenen Zeit
       *[other] { $count } eigenen Zeiten
    }
trials-like = Probebecher: nur, was er zeigt, dazwischen Strichpunkt

## Ratio: label, parts, doubt, error

part-resin = Harz
    .inside = Harz
part-hardener = Härter
    .inside = Härter
part-number = Komponente { $number }
    .inside = Komponente { $number }
label-only =
    Das Etikett nennt nur { $known ->
        [weight] Gewichtsteile. Für Volumen
       *[other] Volumenteile. Für Gewichte
    } Dichte jeder Komponente eingeben.
label-amount-only =
    Die Menge ist nach { $known ->
        [weight] Gewicht. Für Volumen
       *[other] Volumen. Für Gewichte
    } Dichte jeder Komponente eingeben.
label-no-name = Dieses Harzsystem
label-by-link = Aus einem Link
    .text =
        { $system } ist aus einem Link. { $what ->
            [pot-life] Topfzeit
            [both] Verhältnis und Topfzeit
           *[ratio] Verhältnis
        } mit dem Etikett vergleichen, dann unter „Herkunft der Werte“ angeben.
label-example = Nur ein Beispiel, kein Etikett
    .text =
        { $system }: { $what ->
            [pot-life] Topfzeit
            [both] Verhältnis und Topfzeit
           *[ratio] Verhältnis
        } mit keinem Etikett verglichen.
label-whose = Welches Etikett
    .text = { $system }: { $whose }
    .no-name = Ohne Namen
    .built-in = eingebaut ({ $mark })
    .over = geändert: { $fields }
ratio-amount = Menge
    .total = gemischt, gesamt
    .part-a = vorhandenes Harz
    .part-b = vorhandener Härter
    .strokes = Hübe der Harzpumpe
    .putty = gewünschte Spachtelmasse
# { "\u00AD" } ist ein weicher Trennstrich: fünf Tasten in einer Reihe
ratio-way = Gemessen mit
    .scale = Waage
    .pumps = Pumpen
    .syringes = Spritzen
    .graduated = Mess{ "\u00AD" }becher
    .stick = Rührstab
ratio-bench-fold = Werkzeug am Platz
ratio-compare = Was am genauesten misst
    .no = Nur das Gewählte
    .yes = Alle Werkzeuge am Platz vergleichen
ratio-pumps = Pumpen
ratio-scale =
    .help = Bei Pumpen: nur zum Nachgeben.
ratio-weighed-strokes = Dichten: für gewogene Hübe je Komponente eine eingeben
ratio-putty-needs = Ein Volumen Spachtelmasse braucht sie.
ratio-type-ml = Oder Menge in mL eingeben.
ratio-type-g = Oder Menge in g eingeben.
ratio-no-figure = noch kein Wert
ratio-mixed-mass = Gemischt, nach Gewicht
ratio-mixed-volume = Gemischt, nach Volumen
    .rough = typische Dichten, nicht geprüft, auf einige Prozent
ratio-usual = Menge, etwa
    .by-volume = { $typed } zählen als { $counted }, bei { $density }. Verhältnis bleibt. Für Gewichte je Komponente eine Dichte eingeben.
    .by-weight = { $typed } zählen als { $counted }, bei { $density }. Verhältnis bleibt. Für Volumen je Komponente eine Dichte eingeben.
ratio-mixed-density = Dichte der Mischung
    .rough = gemischt, vor der Aushärtung, Volumen als Summe
ratio-by-weight = Nach Gewicht
ratio-by-volume = Nach Volumen
ratio-phr = Auf 100 Teile Harz, phr
    .rough = auf 100 Teile Harz, nach Gewicht
ratio-chemistry = Gegen die Chemie
    .text = { $share } von { $ideal } phr
    .rough = gegen 100 AHEW / EEW. Etikett geht vor.
ratio-far-off = Äquivalentgewichte
    .text = Weit vom Etikett. Prüfen.
ratio-wrong-way = Harz zuerst?
    .text = Mehr Härter als Harz: { $typed }. Sagt das Etikett { $turned }: das eingeben.
ratio-label-apart = Stimmt das Etikett in sich?
    .text = Nach Gewicht und Dichten weicht { $part } zu { $first } um { $off } vom Volumenverhältnis ab. Gewichte folgen dem ersten, Volumen dem zweiten.
doubt-no-reading =
    .weight =
        Noch kein Wert nach Gewicht. { $whence ->
            [remembered] Dichten typisch, nicht geprüft
            [typed] Dichten mit zu wenigen Stellen
           *[weighed] Gleiche Volumen zu grob gewogen
        }.
    .volume =
        Noch kein Wert nach Volumen. { $whence ->
            [remembered] Dichten typisch, nicht geprüft
            [typed] Dichten mit zu wenigen Stellen
           *[weighed] Gleiche Volumen zu grob gewogen
        }.
doubt-right-amount = Richtige Menge Härter: bis zu { $more } mehr oder { $less } weniger.
doubt-way-out =
    { $basis ->
        [weight] Gewichtsteile oder Dichten vom Etikett eingeben. Oder gleiche Volumen wiegen.
       *[other] Wiegen oder Dichten vom technischen Datenblatt eingeben.
    }
doubt-no-figure =
    .weight =
        kein Gewicht: { $whence ->
            [remembered] Dichten typisch, nicht geprüft
            [typed] Dichten mit zu wenigen Stellen
           *[weighed] gleiche Volumen zu grob gewogen
        }
    .volume =
        kein Volumen: { $whence ->
            [remembered] Dichten typisch, nicht geprüft
            [typed] Dichten mit zu wenigen Stellen
           *[weighed] gleiche Volumen zu grob gewogen
        }
doubt-in-short = ±{ $off } wegen der Dichten
doubt-beside = Verhältnis unsicher
    .text =
        ±{ $off }: { $whence ->
            [remembered] Dichten typisch, nicht geprüft
            [typed] Dichten mit zu wenigen Stellen
           *[weighed] gleiche Volumen zu grob gewogen
        }
    .rough =
        Härter bis zu { $more } mehr oder { $less } weniger. { $basis ->
            [weight] Gewichtsteile
           *[other] Volumenteile
        } vom Etikett eingeben.
aim-rough = bis { $good } % ist gut, { $much } % zu viel (unsere Einschätzung). Etikett geht vor.
aim-our-own = { $aim } (unsere Einschätzung)
error-in-ratio = Verhältnis stimmt
error-short = zu wenig { $part }
error-too-much = zu viel { $part }
error-poured = Mischfehler wie gegossen
    .beyond = mehr als { $aim }
    .within = innerhalb von { $aim }
error-cost = Was der Fehler kostet
    .text = Erweichungspunkt bis { $most } niedriger
    .beyond = Erweichungspunkt über { $most } niedriger
    .usual = meist { $usual }, mindestens { $least }
    .already = schon { $off } daneben: meist { $usual }, mindestens { $least }
    .short = { $costs }. Bis { $loose } Harz bindet nie, auch nicht mit Wärme. Ideales Netzwerk, aus dem Gedächtnis. Keine Festigkeitstabelle gefunden.
    .over = { $costs }. Bis { $loose } Härter bindet nie, bildet Aminröte, nimmt Wasser auf. Ideales Netzwerk, aus dem Gedächtnis. Keine Festigkeitstabelle gefunden.

## Fillers and doses

# was die Masse am Rührstab tut
filler-stiffness =
    .runs = Läuft vom Stab
    .slumps = Fällt in Klumpen
    .clings = Haftet, Spitzen knicken um
    .stands = Steht, für Hohlkehlen
    .dry-edged = Steht, trockene Kanten
# steht hinter „wie“
stiffness-trade =
    .runs = Sirup
    .slumps = Ketchup
    .clings = Mayonnaise
    .stands = Erdnussbutter
    .dry-edged = fester Teig
filling-fold = Spachtelmasse: Füllstoff, Mischung, Naht
filling-thicken = Andicken
    .no = Flüssig lassen
    .yes = Andicken
filling-stiffness = Wie steif
filling-trade-word = wie { $trade }
filling-blend = Stattdessen eine Füllstoffmischung
filling-blend-share = Anteil nach Gewicht
filling-shares-over = Anteile: Summe { $whole }, { $off } zu viel. Bis 100 % ändern.
filling-shares-short = Anteile: Summe { $whole }, { $off } zu wenig. Bis 100 % ändern.
filling-batches = Eigene Ansätze mit diesem Füllstoff
filling-batches-mixed = Harz und Härter
filling-batches-before = Füllstoffdose vorher
filling-batches-after = Füllstoffdose nachher
    .less = Füllstoffdose nachher: weniger als vorher
    .too-much = Füllstoffdose nachher: mehr als 3-mal so viel Füllstoff wie Harz und Härter. Mit Dose wiegen.
filling-batches-came-out = Wie steif es wurde
filling-batches-count = Ansatz zählen
    .auto = außer er fällt aus der Reihe
    .always = immer
    .never = nie
filling-doses-rise = jeden Wert höher als davor, weichste Stufe zuerst
filling-packed = Körner würden { $share } füllen. Bei etwa { $touch } berühren sie sich ohne Harz. Weicher oder feiner mischen: höchstens { $most } auf 100 Teile Mischung, nach Gewicht.
filling-position =
    .level = Naht liegend, Hohlkehle nach oben
    .upright = Naht senkrecht oder an einer Wand
    .overhead = Über Kopf

## Measure: what the tool must show

measure-fold =
    .poured = Was wirklich gemessen wurde
    .warm = Temperatur
measure-zeroing = Waage auf null stellen
    .once = einmal, mit leerem Becher
    .each = vor jeder Komponente neu
measure-tolerance = Erlaubter Mischfehler
    .help = Leer: laut Etikett oder { $aim } % (unsere Einschätzung).
# dahinter steht eine Zahl
measure-row = Komponente
    .after = Nach Komponente
measure-readings = Was die Waage wirklich zeigte
    .after = Nach dieser Komponente
measure-strokes = Wirklich gepumpte Hübe
    .of = Von dieser Komponente
measure-drawn = Wirklich aufgezogen
    .of = Gesamt
measure-levels = Wirklicher Stand im Becher
    .after = Nach dieser Komponente, am Strich
measure-heights = Wirkliche Höhe im Becher
    .after = Nach dieser Komponente
    .help = Vom Innenboden, am Stab entlang
measure-syringes = Spritzen
    .help = Je Komponente eine eigene Spritze.
measure-graduated = Messbecher
measure-cup = Becher
    .help = Innen messen, für die Striche am Rührstab.
measure-air = Lufttemperatur
    .help = Wo der Becher steht. Leer: wie die Mischung oder vom Etikett.
measure-temperature = Temperatur der Mischung
    .help = Leer: wie die Luft.
measure-order = Vor den späteren eingeben
measure-parts = Etikett hat nur { $count } Komponenten. Leer lassen.
measure-rises = Mehr als davor eingeben: Der Stand steigt
measure-above =
    { $edge ->
        [rim] Höher als der Rand. Höhe oder Becher prüfen.
       *[mark] Höher als der oberste Strich. Strich oder Becher prüfen.
    }
measure-too-full =
    Der Rest stiege über den { $edge ->
        [rim] Rand
       *[mark] obersten Strich
    }. In größeren Becher umfüllen oder Rest wiegen.
measure-as-read = selbst abgelesen
measure-follows = nach den Messungen
measure-example = Beispiel
    .with = Beispiel, { $said }
measure-smallest = Kleinster Ansatz im Verhältnis
measure-pours = Becher zu klein für alles
    .text = { $count } gleiche Ansätze
measure-in-cup = Im Becher, mit Füllstoff
    .plain = Im Becher, höchstens
    .then = Dann im Becher, mit Füllstoff

## Scale

scale-densities = Dichten: { $why } Eine Waage braucht sie.
scale-order = Vor den späteren eingeben
scale-grows = Mehr als davor eingeben: Ohne Nullstellen steigt die Anzeige
scale-tare = Becher auf der Waage
    .once = Einmal auf null stellen. Zugeben, bis die Summe steht.
    .each = Vor jeder Komponente auf null stellen.
# vor dem ersten Komma steht der Name groß, dahinter der Rest klein
scale-reading = { $part }, bis die Waage zeigt
    .zeroed = { $part }, auf null, bis die Waage zeigt
    .follows = an das Zugegebene angepasst
    .not-again = nicht auf null stellen: Summe im Becher
scale-poured = { $part } zugegeben
    .rough = selbst abgelesen, geplant { $mass }
scale-over = Zu schwer für diese Waage
    .text = Mischung { $mix }, Waage bis { $most }. In zwei Bechern wiegen.
scale-rounding = Mischfehler durch Runden
    .rough = allein durch die Teilung: { $off }
scale-spread = Waage hält das Verhältnis auf
    .own = bei etwa 95 von 100 Ansätzen, aus Teilung { $step } und Fehler der Waage ±{ $error }
    .both = bei etwa 95 von 100 Ansätzen, aus Teilung { $step }, Fehler der Waage ±{ $error } und Dichten
    .guess = Fehler der Waage: eigene Schätzung
scale-smallest =
    .rough = aufgerundet, für { $aim } durch Ablesen. Runden und Fehler der Waage kommen dazu
scale-too-small = Ansatz zu klein für diese Waage
    .text = Mindestens { $least }. Mehr mischen oder feinere Waage nehmen.
scale-add = { $mass } auf der Waage
    .nothing = { $mass }, weniger als die Waage zeigt

# ein Ansatz, der nicht stimmt: was dazu muss, wie es das Werkzeug zeigt
fix-until = { $part }, { $mass } zugeben, bis Waage zeigt
fix-part = { $part }, zugeben
fix-strokes = { $part }, nachpumpen
    .all = { $count } insgesamt, in ganzen Hüben
fix-draw = { $part }, noch aufziehen
    .all = { $volume } insgesamt
fix-why = Mischfehler { $off }. Herausnehmen geht nicht.
    .with = { $rough }. Mischfehler { $off }. Herausnehmen geht nicht.
fix-said = Verhältnis falsch. { $what } { $figure }
fix-asks =
    .pumps = Hübe insgesamt

## Pumps

pumps-densities = Dichten: { $why } Pumpen brauchen sie.
pumps-for-each = Pumpen: { $parts } Komponenten, { $pumps } Pumpen. Je Komponente einen Hub eingeben.
pumps-strokes =
    { $count ->
        [one] { $count } Hub
       *[other] { $count } Hübe
    }
    .rough = { $volume }, { $each } je Hub
pumps-pumped = Hübe, gesamt
    .rough = gewünscht { $volume }
pumps-error = Mischfehler durch ganze Hübe
    .rough = { $off }, wenn alle Hübe voll und gleich sind
    .much = { $off }, mehr als { $aim }: nachgeben oder andere Menge
pumps-top-up = { $part }, fürs genaue Verhältnis nachgeben
    .rough = nach den Hüben oben
pumps-smallest = { $counts } Hübe, { $volume }
    .rough = für { $aim } mit diesen Pumpen, nur ganze, gleiche Hübe, aufgerundet
    .none = keiner mit diesen Pumpen
    .tried = bis { $strokes } Hübe hält keine ganze Zahl { $aim }. Mit Waage nachgeben oder wiegen.
pumps-yours = Diese Pumpen?
    .text = Beispiel: zwei gleiche. Fürs Verhältnis gemachte sind anders. Hub jeder eingeben.

## Marks on a cup

marks-densities = Dichten: { $why } Spritzen und Messbecher brauchen sie.
marks-for-each = Inhalt je Spritze: { $parts } Komponenten, { $syringes } Spritzen. Je Komponente eine eingeben.
marks-drawn = { $part }, in eigener Spritze
    .wanted = gewünscht { $volume }
    .fills = { $times } × { $full } + { $last }
marks-level = { $part }, bis zum Strich
    .rough = gewünscht { $volume }, bis zum Strich { $marked }
marks-pours =
    .one = Becher fasst { $holds }. Striche: ein Ansatz.
    .all = Becher fasst { $holds }. Striche: ein Ansatz, alle { $volume }.
marks-more = Viel mehr als gewünscht
    .text = { $marked } statt { $wanted }: weniger endet an keinem Strich. Feinere Striche oder Waage nehmen.
marks-none = Diese Striche sind zu grob
    .text = Kein Strich hält { $aim }. Feinere Striche, Spritzen oder Waage nehmen.
    .finer = Kein Strich hält { $aim }. Bei Strichen alle { $step } muss er { $volume } fassen. Feinere Striche, Spritzen oder Waage nehmen.
marks-error = Mischfehler durch ganze Striche
marks-spread = Ablesen hält das Verhältnis auf
    .rough = bei etwa 95 von 100 Ansätzen, auf Augenhöhe
marks-measured = Gemessen, ein Ansatz
    .rough = insgesamt gewünscht { $volume }
marks-coarse = Striche zu grob
    .text = { $part }: { $volume }, Striche alle { $step }. Mehr mischen, feinere Striche oder Waage nehmen.
marks-smallest =
    .rough =
        für { $wanted } nach Strichen und Ablesen, jedes für sich, mit { $tool ->
            [syringes] diesen Spritzen
           *[graduated] diesem Becher
        }, aufgerundet
    .none =
        keiner mit { $tool ->
            [syringes] diesen Spritzen
           *[graduated] diesem Becher
        }
    .why = für { $wanted }. Feinere Striche oder Waage nehmen.
marks-too-small = Ansatz zu klein für diese Striche
    .text = Mindestens { $least }. Mehr mischen, feinere Striche oder Waage nehmen.

## Stick

stick-densities = Dichten: { $why } Ein Rührstab braucht sie.
stick-mark = { $part }, zugeben bis
    .rough = vom Innenboden aus, Stab senkrecht in der Mitte
stick-pours =
    .rough = Platz für { $volume }, mit Raum zum Rühren. Striche: ein Ansatz. Oder größerer Becher.
    .room = Platz für { $volume }, mit Raum zum Rühren. Oder größerer Becher.
stick-each-mark = { $error } Fehler je Strich
stick-spread = Mischfehler bei { $error } Fehler je Strich
    .rough = üblich, jeder für sich; höchstens { $worst }, gewünscht { $wanted }
stick-cost = { $part } { $error } zu hoch
    .rough = Mischfehler, { $off }
stick-smallest =
    .rough = für { $wanted } in diesem Becher, üblicher Fehler, aufgerundet
    .none = keiner in diesem Becher
    .why = selbst voll kostet { $error } je Strich mehr als { $wanted }
stick-narrower = Engeren Becher nehmen
    .text = Gerade, innen höchstens { $width } weit, Mischung { $height } hoch. Oder wiegen.
    .none = Keiner ist eng und weit genug zum Rühren. Wiegen oder Spritzen.
    .rough = bei { $error } Fehler je Strich
stick-narrows = Wird der Becher nach oben enger?
    .text = Rand enger als Boden. Falsch? Tauschen. Sonst Stab senkrecht in der Mitte.
stick-yours = Stimmt dieser Becher?
    .text = Nur Beispiel. Eigenen innen messen: Boden, Rand, Höhe.
stick-stands = Höhe im Becher
    .rough = von { $height }, dazu Füllstoff
stick-drawing = Becher von der Seite, maßstäblich
    .mark = { $part } bis { $height }
    .told = Ein Becher, innen { $height } hoch: { $marks }.

## Tools side by side

tools-way =
    .scale = Waage
    .syringes = Spritzen
    .graduated = Messbecher
    .stick = Becher und Rührstab
    .pumps = Pumpen
tools-best = Hier am genauesten
    .text = { $tool }, { $within }
    .rough = Runden und Ablesen, gewünscht { $wanted }
tools-none-holds = Kein Werkzeug hält das Verhältnis
    .text = Keines hält ±{ $limit }. Mehr mischen oder feiner messen.
tools-here = hier { $within }, im Verhältnis ab { $least }
    .none = hier { $within }, kein Ansatz für { $wanted }
tools-counts =
    .scale = Runden und Ablesen. Kleinster Ansatz: nur Ablesen.
    .marks = Runden und Ablesen. Kleinster Ansatz: jedes für sich.
    .pumps = Hübe weichen um { $deviation } ab (Standardabweichung, typisch, nicht geprüft). Kleinster Ansatz: nur ganze Hübe.
tools-unfit =
    .scale = nicht für dieses Etikett: Dichten zu ungenau
    .volumes = nicht für dieses Etikett: je Komponente eines, dazu Dichten oder Volumenteile
    .graduated = Striche zu grob für dieses Verhältnis

## Thicken

thicken-scoop = Ein gestrichener Messlöffel fasst
thicken-position = Lage der Naht
thicken-layer = Spachtelmasse je Gang, Dicke
    .help = Von der Ecke nach außen (Kehldicke).
thicken-purpose = Verwendet für
    .seam = Tragende Naht
    .fairing = Nur zum Straken
thicken-densities = Dichten: je Komponente eine eingeben, für Gewicht und Volumen der Spachtelmasse.
thicken-packed = Zu viel Füllstoff
thicken-filler = Füllstoff
    .this = Dieser Füllstoff
    .caution = Staub: Staubmaske auf, bevor die Dose aufgeht. Deckel sofort wieder zu.
thicken-both = { $one } und { $other }
thicken-scoops = { $filler }, gestrichene Messlöffel
    .text = { $scoops } zu je { $volume }
    .rough = auf halbe. Loses Pulver weicht ein Drittel und mehr ab: wiegen.
thicken-loose = { $filler }, lose
    .rough = wie in der Dose. Eingebaute: typischer Wert, nicht geprüft.
thicken-first = Zuerst einrühren
    .rough = { $share } davon. Boden und Ecken abstreifen. Rest nach und nach.
thicken-share =
    .half = die Hälfte
    .third = ein Drittel
    .two-thirds = zwei Drittel
thicken-dose = Füllstoff auf 100 Teile Mischung, nach Gewicht
    .memory = ±{ $spread }, aus dem Gedächtnis
    .own =
        ±{ $spread }, aus { $count ->
            [one] 1 eigenen Ansatz
           *[other] { $count } eigenen Ansätzen
        }
thicken-putty = Spachtelmasse
    .rough = mit { $air } Luft, aus dem Gedächtnis ({ $range })
thicken-density = Dichte der Spachtelmasse
    .rough = mit Luft
thicken-thicker = Dicker als die Flüssigkeit
    .text = etwa { $times }-mal so zäh
    .rough = nicht haftende Kugeln, Krieger & Dougherty (1959)
thicken-room = Spachtelmasse passt nicht in den Becher
    .text = { $volume }, Platz im Becher { $room }
    .rough = mit Raum zum Rühren. Flüssiges verrühren, dann in größeren Becher umfüllen.
thicken-needed = Steif genug, sackt nicht ab
    .none = keine der fünf
    .doubled = rho g h, doppelt: Fließgrenzen typisch, nicht geprüft (halb bis doppelt)
    .times = rho g h, mal { $sure }: Fließgrenzen typisch, nicht geprüft (1/{ $sure }- bis { $sure }-fach)
    .overhead = { $how }. Muss auch kleben: in dünnen Gängen eindrücken.
thicken-pass = Höchstens in einem Gang
    .rough = bei dieser Steifigkeit und Lage, abgerundet
thicken-sags = Das sackt ab
    .passes = „{ $stiffness }“ zu weich für { $layer }. In Gängen bis { $thickest } auftragen.
    .stiffer = „{ $stiffness }“ zu weich für { $layer }. Steifer: „{ $stiffer }“. Oder in Gängen bis { $thickest } auftragen.
thicken-fairing-only = Nicht für eine tragende Naht
    .text = { $fillers }: nur zum Straken, nie für Last. Holzmehl, Baumwollflocken oder pyrogene Kieselsäure nehmen.
    .rough = übliche Praxis, technisches Datenblatt entscheidet
thicken-may-it-carry = Darf das Last tragen?
    .text = { $fillers }: nicht angegeben. Im technischen Datenblatt nachsehen, in „Ausrüstung“ eintragen.
thicken-not-alone = Steht nicht allein
    .text = { $filler } setzt sich ab. Teil durch pyrogene Kieselsäure ersetzen.
    .rough = aus dem Gedächtnis
thicken-own = Eigene Ansätze ändern die Dosis um
    .rough = eigene Ansätze { $share }, Rest Tabelle
thicken-batch = Eigener Ansatz { $number }
    .text = { $dose } auf 100 Teile Mischung, nach Gewicht, { $change } gegenüber der Tabelle
    .counts = zählt
    .left-out = zählt nicht
thicken-odd = Ansatz { $number } fällt aus der Reihe
    .text = Dosis { $change } gegenüber der Tabelle. Dosengewichte und Steifigkeit prüfen. Zählt erst mit „Ansatz zählen“: „immer“. Oder entfernen.
thicken-contradict = Zwei Ansätze widersprechen sich
    .text = Einer nahm { $more } mehr Füllstoff. Noch einer zeigt, welcher stimmt.
thicken-far = Weit weg von der Tabelle
    .text = Dosis { $change } gegenüber der Tabelle. Dosengewichte und Steifigkeit prüfen.

## Rescue

rescue-fold = Misslungenen Ansatz retten
rescue-asked = Beim Ansatz ging etwas schief
    .no = Nein
    .yes = Ja, was nun?
rescue-in-cup = Jetzt im Becher
    .help = In Reihenfolge der Komponenten, ohne Füllstoff. Leer: Werte oben.
    .mass = Nach Gewicht
    .strokes = oder gezählte Hübe
    .missing = Menge jeder Komponente eingeben, 0 für keine
    .empty = Becher leer. Wie oben von null mischen.
rescue-mass =
    .each = Gewicht jeder Komponente eingeben, 0 für keine
    .parts = Etikett hat nur { $count } Komponenten. Leer lassen.
rescue-strokes =
    .both = Gezählte Hübe: Hübe oder Gewicht eingeben, nicht beides
    .pumps = Gezählte Hübe: „Pumpen“ wählen oder Gewicht eingeben
    .each = Pumpen: je Komponente einen Hub eingeben
    .densities = Dichten: je Komponente eine eingeben, für Hübe
rescue-filler-in = Füllstoff schon drin
rescue-first-contact = Erster Kontakt von Harz und Härter, bei Minute
rescue-now = Jetzt, bei Minute
    .before = Jetzt: nicht vor dem ersten Kontakt
rescue-half-told = Bei welcher Masse und Temperatur?
    .text = Zur Topfzeit eingeben. Warm, fadenziehend oder klumpig: nicht mehr zu retten.
rescue-untold = Wie viel Zeit bleibt?
    .text = Topfzeit vom Etikett eingeben. Warm, fadenziehend oder klumpig: nicht mehr zu retten.
rescue-no-warmth = Wie warm ist die Mischung?
    .text = Temperatur eingeben. Warm, fadenziehend oder klumpig: nicht mehr zu retten.
rescue-signs = Egal, was die Uhr sagt
    .text = Warm, fadenziehend oder klumpig: nicht mehr zu retten.
    .rough = übliche Praxis
# „Die Mischung“; steht hinter „Nicht mehr zu retten“
rescue-spread-out = Kann überhitzen. Sofort dünn ausbreiten: im Freien, auf bloßem Erdboden oder in einer Schale, nie unter einem Deckel. Qualmt er oder ist zu heiß zum Halten: stehen lassen, Abstand halten. Dann neu mischen.
rescue-usable = Verarbeitungszeit ab erstem Kontakt
    .rough = { $rest }, abgerundet. Für Restzeit beide Zeiten eingeben.
rescue-late = Nicht mehr zu retten
    .text = Keine Zeit mehr zum Zugeben und Rühren.
    .rough = Verarbeitungszeit { $usable } ab erstem Kontakt: { $rest }
rescue-left = Restzeit
    .rough = mit { $stir } Rühren, abgerundet. Gesamt { $usable } ab erstem Kontakt: { $rest }.
rescue-missing = Eine Komponente fehlt
    .text = Davon ist noch nichts im Becher.
rescue-off = Mischfehler im Becher
    .rough = { $off }, gewünscht { $aim }
rescue-stays = Kann so bleiben
    .text = schon innerhalb von { $aim }
rescue-add = { $part }, zugeben
    .rough = für das genaue Verhältnis
rescue-nothing = Nichts zugeben
    .text = Die Mischung stimmt im Verhältnis.
rescue-least = { $part }, mindestens zugeben
    .rough = für { $aim }, aufgerundet
rescue-how = Wie
    .text = Waage mit Becher auf null stellen. Zugeben, alles neu verrühren.
rescue-total = Danach im Becher, flüssig
    .rough = für das genaue Verhältnis
    .pumped = mit den Hüben oben
rescue-filler = Füllstoff, für gleiche Steifigkeit
    .rough = Zählt nie zum Verhältnis. Erst Flüssiges gut einrühren.
    .least = Füllstoff bei kleinster Zugabe
rescue-stirred = Mit Füllstoff darin
    .text = Durcharbeiten, bis keine Schliere bleibt, auch an Boden und Ecken.
    .rough = übliche Praxis
rescue-no-room = Passt nicht in den Becher
    .text = { $volume }, Platz im Becher { $room }
    .rough = mit Raum zum Rühren. In größeren Becher umfüllen, abstreifen, zugeben.
rescue-fits = Passt in den Becher
    .text = { $volume } von { $room }
    .rough = mit Raum zum Rühren
    .filler = mit Raum zum Rühren, dazu Füllstoff

## Pour step by step

-pouring-scrape = Boden, Ecken und Rührstab abstreifen.
pouring-step = { $number }. { $label }
# bei Schritten steht vor dem ersten Komma das Wort groß, dahinter der Rest
pouring-cup = Becher auf die Waage, einstellen auf
    .said = Becher auf die Waage, dann auf null stellen
# wird vorgelesen
pouring-said =
    .scale = { $part } bis { $figure }
    .pumps = { $part }, { $figure }
    .syringes = { $part }, { $figure } aufziehen
    .graduated = { $part } bis zum Strich { $figure }
    .stick = { $part } bis { $figure }
# dahinter steht „, falls anders“
pouring-asks =
    .scale = Waage zeigt
    .pumps = Gepumpte Hübe
    .syringes = Aufgezogen, gesamt
    .stands = Stand
pouring-zero = Erst Waage auf null stellen.
pouring-one-of = { $pours }: einer davon. { $under }
pouring-off = Mischfehler, jetzt
    .under = { $off }. Fehlendes zugeben, herausnehmen geht nicht.
    .said = Verhältnis falsch. Erst den Ansatz retten, dann weiter.
pouring-warned = { $label }: { $text }
    .figure = { $label }: { $text }.
    .said = { $label }. { $then }
pouring-stir = Rühren, nur Flüssiges
    .under = Tippen startet die Uhr. { -pouring-scrape } Übliche Praxis.
    .cold = Tippen startet die Uhr. { -pouring-scrape } Unter { $cold }: { $longer }. Übliche Praxis.
    .said = { $time } rühren. { -pouring-scrape }
pouring-first = { $fillers }, zuerst { $share }
    .caution = Erst wenn Flüssiges ganz gemischt ist.
    .said = Jetzt der Füllstoff. Zuerst { $mass }. Einrühren.
pouring-rest = { $fillers }, nach und nach, etwa
    .under = Aufhören, wenn die Steifigkeit stimmt: { $dose }. { -pouring-scrape }
    .said = Rest nach und nach, etwa { $mass }. Aufhören, wenn die Steifigkeit stimmt.
pouring-weigh = Füllstoffdose wieder wiegen
    .under = Beide Gewichte eingeben, und wie steif. Spätere Dosen folgen dem.
    .said = Füllstoffdose wieder wiegen.
pouring-done = Fertig, jetzt verarbeiten
    .under = Ein voller Becher heizt sich selbst auf: jetzt ausbreiten oder verarbeiten.
    .in-sun = Ein voller Becher heizt sich selbst auf: jetzt verarbeiten oder im Schatten ausbreiten.
    .said = Fertig. Ein voller Becher heizt sich selbst auf: jetzt verarbeiten.
pouring-done-within = Fertig, verarbeiten binnen
    .under = Ab erstem Kontakt: { $rest }.
    .said = Fertig. Ein voller Becher heizt sich selbst auf: binnen { $time } ab erstem Kontakt verarbeiten.
pouring-parts = Zugegebene Komponenten
pouring-logged = { $much } { $name }
    .mixed = gemischt
    .thickened = { $what }, angedickt

## Time in the cup

cup-time = Verarbeitungszeit im Becher
    .rough = { $rests }; ab erstem Kontakt, abgerundet
cup-time-peak = Spitzentemperatur, falls im Becher gelassen
    .rough = { $open }; in der Mitte wird es heißer
cup-time-at = bei { $air }
    .label = bei { $air } (Etikett; wärmer heißt kürzer)
    .mix = bei { $air } Luft, Mischung { $mix }
cup-time-rests =
    .shade = im Schatten gerechnet
    .memory = Topfzeit: typischer Wert, nicht geprüft
cup-time-clock = Uhr starten

## Heat: usable time and peak

container-cup = Becher
    .help = Steht auf der Werkbank
container-bag = Spritzbeutel
    .help = Voll in der Hand oder auf der Werkbank
container-tray = Schale
    .help = In einer Schale
container-bead = Hohlkehle auf Holz
    .help = Spachtelmasse, in die Ecke gezogen
container-roll = Gerolltes nasses Glasband
    .help = Gerollt: wieder eine dicke Masse
container-film = Dünner Film
    .help = Auf Holz gerollt
# „Er“ ist der Ansatz; dahinter steht „, etwa 20 min nach dem Mischen.“
hot-holds = Er wird zu heiß zum Halten, erweicht den Becher
    .may = Er wird vielleicht zu heiß zum Halten, erweicht den Becher
hot-runs-away = Er qualmt, schäumt, schmilzt den Becher, verbrennt Haut, kann Feuer fangen
    .may = Er kann qualmen, schäumen, den Becher schmelzen, Haut verbrennen und Feuer fangen
hot-pot-caution = Im Auge behalten. Lässt er sich noch halten: ins Freie auf bloßen Erdboden, weg von allem, was brennt. Dünn ausbreiten, wenn er noch fließt. Nie einen Deckel darauf, nie in den Müll. Rauch nicht einatmen. Rauch oder Flammen drinnen: raus, Tür zu, Feuerwehr rufen.
heat-temperature = Lufttemperatur
    .missing = am Ort des Ansatzes eingeben. Davon hängen alle Zeiten ab
heat-system = Harzsystem
heat-batch = Masse im Behälter
    .help = Mit Füllstoff.
heat-container = Behälter
heat-use = Verwendung
heat-where = Wohin der Ansatz kommt
    .help = Steht beim laufenden Ansatz.
heat-resin = Harztemperatur
    .help = Leer: wie die Luft.
heat-filler = Anteil Füllstoff oder Glas
    .help = Vom Gewicht. Leer: keiner; in nassem Glasband { $glass } % Glas (unsere Einschätzung).
heat-grain = Reindichte des Füllstoffs
    .help = Leer: Holzmehl, { $flour } (aus dem Gedächtnis). Für nasses Glasband nicht nötig.
heat-wanted = Muss verarbeitbar bleiben für
    .help = Zeigt den größten Ansatz dafür.
heat-cup-width = Becher, Innenweite
    .help = Leer: so weit, wie die Mischung hoch steht.
heat-bag-width = Spritzbeutel, Dicke gefüllt
heat-tray-length = Schale, Länge
heat-tray-width = Schale, Breite
heat-radius = Hohlkehle, Radius
heat-panel = Plattendicke
heat-tape-width = Breite des Glasbands
heat-film = Filmdicke
heat-moving = Luftbewegung
heat-fold =
    .use = Verwendung und Ort
    .sizes = Maße und Luft
    .more = Warmes Harz, Füllstoff, gewünschte Zeit
# Zeile: Zustand [noch verarbeitbar], nach [31 min], Masse [240 g], Behälter [Becher]
heat-timings = Eigene Zeiten dieses Systems
    .each = Zeit
heat-timing =
    .said = Zustand
    .stiffening = zieht an
    .good = noch verarbeitbar
    .gone = zu steif
    .after = nach
    .mass = Masse
    .in = Behälter
heat-label =
    .mass = Topfzeit: auch ihre Masse eingeben
    .temperature = Topfzeit: auch ihre Temperatur eingeben
    .film = Verarbeitungszeit als dünner Film: auch ihre Temperatur eingeben
    .unknown = Topfzeit vom Etikett mit Masse und Temperatur eingeben. Oder eine eigene.
usable-means =
    .open = { $share } % von { $minutes } min, Topfzeit vom Etikett als Ende
    .gel = { $share } % von { $minutes } min, Gelzeit vom Etikett
    .work = { $share } % von { $minutes } min, Verarbeitungszeit vom Etikett
    .gone = { $share } % von { $minutes } min: Nicht schnellerer Ansatz war { $seen }
    .good = { $share } % von { $minutes } min: Nicht langsamerer Ansatz war { $seen }
    .timed = { $share } % von { $minutes } min, bis es dick ist, { $counted }
# steht in Klammern
usable-whose =
    .own = eigene Zeit
    .label = Topfzeit vom Etikett
usable-warmer = je { "10 K" } wärmer halb so lang
    .times = je { "10 K" } wärmer geteilt durch { $times }
usable-rule =
    .film-label = Filmzeit vom Etikett, { $warmer }
    .multiple = { $times }-mal die Topfzeit von { $hundred } ({ $whose }), { $warmer }
    .tray = wie im Becher so tief, höchstens wie ein Film
    .root = nach der Kubikwurzel der Masse ({ $whose }), { $warmer }
    .power = nach der Masse hoch { $power } ({ $whose }), { $warmer }
usable-open-ends = Spanne aus Wärme, Härter, Becher und Luft, aus dem Gedächtnis
usable-peak =
    .over = über { $most }
    .or-hardly = { $hot } oder kaum wärmer als die Luft
    .or-only = { $hot }, bestenfalls { $cool }
# hinter „war“ (good, gone) und am Satzanfang
usable-seen =
    { $said ->
        [good] noch verarbeitbar
        [gone] zu steif
       *[stiffening] am Anziehen
    } nach { $minutes } min, { $mass } { $container ->
        [bag] im Spritzbeutel
        [tray] in der Schale
        [bead] als Hohlkehle
        [roll] als Rolle
        [film] als Film
       *[cup] im Becher
    } bei { $air }
    .filler = { $share } % Füllstoff
    .resin = Harz mit { $resin }
heat-minutes = { $minutes } min
    .none = weniger als 1 min
    .hours = { $hours } h
    .both = { $hours } h { $minutes } min
heat-usable = Verarbeitbar für
    .rough = { $meaning }. Kürzere von zwei Schätzungen, abgerundet, bei { $air }. Dicker: aufhören.
heat-air = { $air } Luft
heat-cold = Zu kalt für dieses System
    .text = Niedrigste Verarbeitungstemperatur: { $lowest }. Darunter kann die Aushärtung für immer stehen bleiben, auch wenn die Mischung flüssig bleibt. Erst Werkstatt, Holz und Harz wärmen oder schnelleren Härter nehmen.
heat-peak = Erwartete Spitzentemperatur
    .hardly = kaum wärmer als die Luft
    .hardly-rough = höchstens { $within } mehr
    .rough = Wenn alles darin bleibt ({ $open }). Mitte bis zu ein Viertel des Anstiegs heißer.
    .below = Wenn alles darin bleibt ({ $open }), beides unter { $hot }. Mitte bis zu ein Viertel des Anstiegs heißer.
heat-runaway =
    .hot = Dieser Ansatz wird heiß
    .may-hot = Dieser Ansatz kann heiß werden
    .away = Dieser Ansatz würde überhitzen
    .may-away = Dieser Ansatz kann überhitzen
    .sure = { $does }, etwa { $time } nach dem Mischen. { $do }
    .may = { $does }, ab { $time } nach dem Mischen. { $do }
heat-do =
    .use = Binnen { $time } verarbeiten oder dünn ausbreiten.
    .shade = Erst in den Schatten, dann verarbeiten oder dünn ausbreiten.
    .thinner = Dünner ausbreiten oder weniger mischen.
heat-deep = Ist der Becher weiter?
    .text = Bei { $across } Weite steht er { $high } hoch. Wirkliche eingeben.
heat-tray = Sofort in die Schale gegossen
    .sun = In einer Schale in dieser Sonne
    .no-help = hilft nicht: erst in den Schatten
heat-half = Halber Ansatz
heat-gain = { $time } länger
    .none = nicht länger
heat-largest = Größter Ansatz für { $time }
    .none = in diesem Behälter keiner
    .none-rough = Keiner hält so lange. Schale, langsameren Härter oder kühlere Stunden nehmen.
    .none-sun = Keiner hält so lange. Schatten, langsameren Härter oder kühlere Stunden nehmen.
    .more = { $mass } oder mehr
    .more-rough = die Zeit ist nicht die Grenze
    .rough = nach der kürzeren Schätzung, abgerundet
heat-too-much = Zu viel für diese Zeit
    .text = Höchstens { $mass } auf einmal mischen oder sofort in die Schale.
    .sun = Höchstens { $mass } auf einmal mischen.
heat-thick = Dick nach
    .rough = { $share } % davon verarbeitbar (unsere Einschätzung)
heat-balance = Nach der Wärmebilanz
    .rough = bis zu { $latest } mit anderen Aktivierungsenergien; überall gleich warm
heat-quick = Nach der Faustregel
    .rough = { $rule }; aus dem Gedächtnis
heat-then = Temperatur am Ende der Verarbeitungszeit
    .rough = nach der Wärmebilanz: dick oder zu heiß zum Halten
heat-layer = Schicht, die in der Schale kühl bleibt
    .text = höchstens { $layer }
    .rough = vorsichtig: schnellste Reaktion
heat-in-mix = Wärme im gemischten Harz
    .text = { $heat } J/g
    .rough = aus Verhältnis und Äquivalentgewicht, { $least } bis { $most } kJ/mol
heat-fact =
    .pot = Topfzeit vom Etikett
    .film = Filmzeit vom Etikett
    .own = Eigene Zeit { $number }
    .good = nur für nicht schnellere Ansätze
    .met = passt zur Schätzung
    .long = Schätzung war { $off } % zu lang
    .short = Schätzung war { $off } % zu kurz
    .rough = eigene Zeiten gehen denen vom Etikett vor
heat-apart = Passen diese Zeiten zusammen?
    .text = Mehr als { $apart } % auseinander. Minuten, Masse, Temperatur prüfen. Eigene zählen zuerst.
heat-energy = Aktivierungsenergie
    .text = { $energy } kJ/mol
    .rough = veröffentlicht { $least } bis { $most }; { $middle }, wenn Zeiten sie nicht zeigen
heat-memory = Zeiten nicht vom Etikett
    .text = Topfzeit: typischer Wert, nicht geprüft. Vom Etikett mit Masse und Temperatur eingeben.
heat-plan = Den Tag planen
heat-test = Probebecher: eigene Zeiten
heat-curve = Temperatur im Lauf der Zeit
    .told = Fläche: { $usable } Minuten verarbeitbar. Kurve: am heißesten { $hottest } Minuten nach dem Mischen, { $peak }.
    .tray-told = In der Schale: Spitze { $peak }.
heat-curve-tray = Schale
heat-curve-usable = verarbeitbar
heat-curve-degrees = { $degrees }°
heat-curve-peak =
    .about = etwa { $peak }
    .over = über { $peak }
usable-other-sun = In anderer Sonne gemessen
    .text =
        { $count ->
            [one] 1 eigene Zeit
           *[other] { $count } eigene Zeiten
        } bei anderer Sonne: nur als Grenze.
usable-contradict = Diese Zeiten widersprechen sich
    .text = { $one }, aber { $other }. Die kürzere zählt. Falsche löschen.

## Sun

sun-asked = Sonne auf der Mischung
sun-unsaid = Ohne Angabe: Schatten
sun-looks = Was die Sonne bescheint
sun-cover = Abdeckung
sun-fold = In der Sonne: Oberfläche und Abdeckung
sun-level =
    .shade = Keine: drinnen oder tiefer Schatten
    .open = Schatten unter freiem Himmel
    .some = Etwas: dünne Wolken, lichter Schatten
    .full = Volle Sonne
sun-look =
    .unknown = Unbekannt
    .white = Weiße Schale, weiße oder klare Mischung
    .bare = Rohes Holz
    .wet = Getränktes Holz oder Glasband auf Holz
    .putty = Spachtelmasse mit Holzmehl
    .dark = Dunkle Spachtelmasse
    .black = Schwarze Folie, Becher oder Schale
sun-covered =
    .open = Keine Abdeckung
    .glass = Glas oder klare Folie
# hinter „gerechnet“
sun-where =
    .open = im Schatten unter freiem Himmel
    .some = in etwas Sonne
    .full = in voller Sonne
sun-in =
    .open = { $what } im Schatten unter freiem Himmel
    .some = { $what } in etwas Sonne
    .full = { $what } in voller Sonne
sun-not-said = In der Sonne?
    .text = Mit Schatten gerechnet. In der Sonne viel kürzer: „Sonne auf der Mischung“ angeben.
sun-shade-first = Erst in den Schatten
    .tray = In dieser Sonne keine Schale: Darin hält die Mischung { $tray }, im Schatten dieser Ansatz { $shade }. Schale hilft nur im Schatten.
    .thin = Dünn nimmt am meisten Sonne auf: hier { $sun }, im Schatten { $shade }.
sun-in-shade = Im Schatten verarbeitbar
sun-taken = Aufgenommene Sonne
    .text = { $flux } W/m²
    .warm = { $flux } W/m²: Sonne allein wärmt auf { $warm }
sun-rests =
    .level = { $sun } W/m² auf ebener Fläche, { $least } bis { $most } ({ $source })
    .taken = { $share } % aufgenommen, { $least } bis { $most } ({ $source })
    .cover = „{ $cover }“: { $passes } % kommen hinein, { $given } % der Wärme hinaus ({ $source })
    .wind = kein Wind gerechnet

## Test cup

trial-mass = Masse im Becher
    .help = Ohne Füllstoff.
trial-air =
    .help = Im Schatten, wo der Becher steht.
    .missing = Temperatur am Ort des Bechers eingeben
trial-stirred = Temperatur nach dem Rühren
    .help = Leer: wie die Luft.
trial-readings = Thermometer
    .each = Messung
trial-minute = Minute
    .order = muss später sein als davor
trial-shows = Temperatur
    .too-hot = heißer, als diese Mischung wird. War es °F?
    .too-cold = kälter als Luft und Mischung am Anfang. Prüfen.
    .again = was abkühlt, wird nicht wieder warm. Prüfen.
    .soon = so früh wird keine so heiß. Prüfen.
    .misfit = passt nicht zu den anderen. Prüfen.
trial-seen = Mit dem Auge gesehen
trial-first = Das erste Mal.
trial-last = Das letzte Mal.
trial-strings = Zieht Fäden nach
trial-hottest = Am heißesten nach
trial-good = Noch streichbar nach
trial-stiff = Zu steif nach
trial-too-soon =
    .good = muss später sein als „Noch streichbar nach“. Eines korrigieren.
    .strings = muss später sein als „Zieht Fäden nach“. Eines korrigieren.
trial-one-reading = Eine Messung reicht nicht. Zwei mehr oder „Zieht Fäden nach“ eingeben.
trial-minute-misfit = Passt nicht zu den anderen. Prüfen.
trial-place = Ort
    .text = Becher draußen auf bloßen Erdboden, im Schatten, ohne Wind. Weg von allem, was brennt.
trial-mix = Mischen
    .text = Höchstens { $most } mischen, im Verhältnis vom Etikett. Beim ersten Rühren Uhr starten.
trial-thermometer = Thermometer
    .text = Nie wieder für Lebensmittel. Spitze mit Stab in der Mitte halten. Abwischen, bevor es fest wird.
trial-read = Messungen
    .text = Beim Erwärmen, am heißesten, beim Abkühlen ablesen. Oder nur, wann sie Fäden zieht.
trial-hot = Der Becher wird heiß
    .text = Ab { $hot } kann er qualmen, Haut verbrennen und Feuer fangen: stehen lassen. Niemand beugt sich über den Becher. Nie in der Hand halten. Handschuhe und Schutzbrille, Wind im Rücken. Das Sicherheitsdatenblatt geht vor.
trial-not-sure = Noch nicht sicher
    .text = Dick { $least } bis { $most } nach dem Mischen: zu ungenau. Mehr Messungen eingeben, am besten beim Erwärmen, oder wann sie Fäden zieht.
# das Komma trennt die Zeilen der Überschrift
trial-usable = Dieser Becher, verarbeitbar für
    .rough = neun von zehn Mal { $least } bis { $most }, { $share } % der Zeit, bis es dick ist
trial-usual = { $mass } im Becher
    .rough = { $least } bis { $most }
    .before = ohne den Probebecher { $time }
    .far = weit mehr als geprüft, unsicher
trial-times = { $one }- bis { $other }-mal
trial-cures = Härtet aus
    .rough = so schnell wie vorher geschätzt
trial-sheds = Gibt Wärme ab
    .rough = so schnell wie geschätzt; langsamer heißt heißer
    .usual = wie geschätzt
    .usual-rough = Messungen beim Abkühlen zeigen es
trial-keep = Mit diesem System sichern

## Cure

label-cure-fold = Aushärtezeiten vom Etikett
label-cure-recoat = Überarbeiten ohne Schleifen, ab
label-cure-until = Überarbeiten ohne Schleifen, bis
    .early = Überarbeiten bis: muss später sein als „ab“
label-cure-peel = Abreißgewebe ab nach
label-cure-handle = Bewegen nach
label-cure-sand = Schleifen nach
label-cure-full = Volle Festigkeit nach
label-cure-temperature = alles bei einer Temperatur von
    .missing = Aushärtezeiten: ihre Temperatur eingeben, oft { "20 degC" }
label-cure-nothing = Härtertempo: wählen, oder Aushärtezeiten vom Etikett eingeben
lowest-known-by = { $temperature } ({ $mark })
    .slow = langsamer Härter, aus dem Gedächtnis: die vom Etikett eingeben
cure-fold = Aushärtung: kommende Temperaturen
cure-system = Harzsystem
cure-course = Temperatur der Naht
    .same = bleibt wie jetzt
    .day = Höchste und tiefste des Tages
    .points = Stunde für Stunde
cure-air = Lufttemperatur
cure-high = Höchste, am Nachmittag
    .cold = Höchste: darf nicht unter der tiefsten liegen
cure-low = Tiefste, bei Tagesanbruch
cure-points = Kommende Temperaturen
    .hours = Stunden nach dem Mischen
    .temperature = Temperatur
    .missing = Kommende Temperaturen: mindestens die beim Mischen, Stunde 0
    .late = Mit der Temperatur beim Mischen beginnen, Stunde 0
    .order = Stunden der Reihe nach eingeben
    .gap = Keine Temperatur von Stunde { $last } bis { $following }. Alle { $most } Stunden eine eingeben.
cure-mixed-at = Gemischt um
    .help = Zeigt die Fenster auch als Uhrzeit.
    .missing = Gemischt um: Uhrzeit eingeben, für die Nacht
cure-post-fold = Aushärtung: Tempern und Sonne
cure-post-to = Tempern bei
    .half = Tempern: Temperatur und Dauer eingeben
cure-post-for = Tempern für
cure-hull-colour = Rumpffarbe über der Naht
    .unsaid = nicht angegeben
cure-hull-air = Heißeste Luft in voller Sonne
    .help = Leer: { $air }.
cure-days = { $days } Tage
cure-never = nicht bei diesen Temperaturen
    .rough = kann für immer weich bleiben
cure-recoat = Überarbeiten ohne Schleifen
    .cold = siehe unten
    .shut = kein sicheres Fenster
    .shut-rough = kann vorher schließen: waschen, schleifen
    .after = { $opens } bis { $closes } nach dem Mischen
    .rough = an beiden Enden vorsichtig. Beschichten, { $look }
    .clock = { $opens } bis { $closes }
    .clock-rough = { $opens } bis { $closes } nach dem Mischen, an beiden Enden vorsichtig. Beschichten, { $look }
cure-handle = Bewegen
    .look = bewegen, nicht belasten
cure-stage = { $time } nach dem Mischen
    .clock = { $time } nach dem Mischen ({ $clock })
    .rough = frühestens: { $look }
cure-full =
    .by-post = nach dem eingegebenen Tempern
    .by-post-rough = zählt so viel wie die Tage
    .warmer = hart, bleibt aber nahe { $share } stehen, bis auf { $least } erwärmt, und erweicht über { $glass }
    .longer = hart, bleibt aber nahe { $share } stehen, bis länger erwärmt, und erweicht über { $glass }
    .rough = nur Stunden bei { $least } oder mehr zählen
cure-cold = Zu kalt für diesen Härter
    .stops = Unter { $lowest } zählt nichts, die Aushärtung kann für immer stehen bleiben.
    .lost = { $time } unter { $lowest } zählen nicht.
    .do = Naht wärmen, nicht nur die Luft: Zelt, sanftes elektrisches Heizgerät außerhalb der Dämpfe, nie offene Flamme. Oder auf wärmere Tage warten.
cure-day-counts = Die ersten 24 h zählen als
    .rough = Bei { $temperature }, Aktivierungsenergie { $energy } kJ/mol. Stunden oben mit { $least } bis { $most }: die vorsichtigere.
# $stages: „Abreißgewebe ab, Schleifen“
cure-counted = Quelle der Stunden
    .typical =
        Typische Werte, nicht geprüft, für einen { $speed ->
            [fast] schnellen
            [medium] mittleren
           *[slow] langsamen
        } Härter bei { $temperatures }. Etikett geht vor. Mit Kontrollprobe prüfen: etwas vom Ansatz neben der Naht.
    .label = Vom Etikett: { $stages }, bei { $temperature }.
    .rest =
        Übrige Stunden: typische Werte, nicht geprüft, für einen { $speed ->
            [fast] schnellen
            [medium] mittleren
           *[slow] langsamen
        } Härter bei { $temperatures }. Mit Kontrollprobe prüfen.
    .rest-unknown = Rest unbekannt: Härtertempo wählen. Mit Kontrollprobe prüfen.
cure-held = Nach dem letzten Punkt
    .text = { $temperature } gilt weiter. Auch die Nacht eingeben.
cure-softens = Erweicht über
    .rough = höchstens { $best }, lange bei { $held } gehalten, aus dem Gedächtnis
cure-stops = Aushärtung bleibt stehen nahe
    .share = { $least } bis { $most } %
    .rough = der vollen Aushärtung, aus dem Gedächtnis, bis wärmer als { $held }
cure-post = Für mehr Hitze
    .text = Beim Erweichungspunkt tempern: { $time } bei { $temperature }, kühler länger.
    .how = Höchstens { $climb } pro Stunde. Rumpf in Form stützen: Naht wird weich. Technisches Datenblatt geht vor.
    .typed = Tempern bei { $temperature } für { $time }
    .short = Zu kurz: dort { $time }.
    .short-rough = wie { $time } bei { $temperature }, übliche Praxis
    .nothing = Hilft nicht sicher: mehr erwärmen.
    .raised = Naht erweicht erst über { $glass }.
    .raised-from = Naht erweicht erst über { $glass }, ohne Tempern schon über { $before }.
cure-sun = Rumpf in der Sonne
    .hot = Sonne auf diesem Rumpf
    .any = In voller Sonne bei { $air } Luft: dunkler Rumpf bis { $dark }, weißer bis { $white }.
    .colour = Rumpffarbe wählen: Naht kann dort erweichen.
    .one = Bis { $most }, bei leichtem Wind { $least }, bei { $air } Luft.
    .stays = Naht erweicht erst über { $glass }.
    .may = Naht kann über { $glass } erweichen.
    .softens = Naht erweicht über { $glass }.
    .shade = Beschatten, in Form stützen, heiß nicht belasten.
    .shade-paint = Beschatten, in Form stützen, heiß nicht belasten. Oder weiß streichen.
    .shade-post = Beschatten, in Form stützen, heiß nicht belasten. Oder vorher tempern.
    .shade-paint-post = Beschatten, in Form stützen, heiß nicht belasten. Oder weiß streichen. Oder vorher tempern.
    .rough = Erweichung: typischer Wert, nicht geprüft

## Dew point

dew-fold = Tau und Nacht
dew-air = Lufttemperatur
dew-humidity = Relative Luftfeuchte
    .help = Hygrometer neben der Arbeit.
    .missing = Relative Luftfeuchte: eingeben, für Tau in der Nacht
dew-surface = Oberflächen{ "\u00AD" }temperatur
    .help = Leer: wie die Luft. Gelagertes Holz ist oft kälter.
dew-night = Kälteste Luft in der Nacht
dew-sky = Nachts liegt die Naht
    .under = unter Dach oder Plane
    .open = unter freiem Himmel
dew-margin = Abstand zum Taupunkt
    .unknown = relative Luftfeuchte eingeben
    .why = Kälte und Feuchte bringen Aminröte
dew-margin-now = Abstand zum Taupunkt, jetzt
    .rough = Abgerundet. Mindestens { $wanted }. Hygrometer weichen bis zu { $unsure } ab.
dew-damp =
    .wet = Die Oberfläche ist nass
    .near = Zu nah am Taupunkt
    .text = Nicht beschichten, kein Glasband auflegen. Auf { $wanted } über Taupunkt wärmen oder warten. Nicht mit Gasflamme: gibt Wasser ab.
dew-humid = Feuchte Luft
    .text = Über { $share } Luftfeuchte bilden viele Härter Aminröte, auch auf Warmem.
dew-point = Taupunkt
    .rough = dieser Luft, aufgerundet
dew-night-margin = Abstand zum Taupunkt, nachts
    .rough = abgerundet, bei gleichem Wasser in der Luft
    .open = Abgerundet, bei gleichem Wasser in der Luft. Freier Himmel kühlt weitere { $colder } oder mehr.
dew-night-damp =
    .wet = Nachts Tau
    .near = Nachts fast Tau
    .text = Naht über { $least } halten, bis sie nicht klebt: abdecken, Türen zu, wärmen. Oder früh beschichten: hart bis zur Nacht.
dew-blush-wash = Fettiger Film (Aminröte): erst waschen
    .text = Abreißgewebe abziehen, mit Wasser und Pad waschen. Kein Lösemittel: verteilt sie.
dew-blush-dry = Dann trocknen
    .text = Mit sauberem Tuch, bevor das Wasser trocknet. Oft wechseln.
dew-blush-sand = Dann schleifen
    .text = Maske und Handschuhe an. Erst jetzt, und nur, was hart ist. Sonst reibt es Aminröte ein.
dew-blush-look = Dann ansehen
    .text = Wasser muss als Film stehen. Perlt es: wieder waschen.

## Running pot, timer and the phone's clocks

# how long something lasts or lasted, also aloud
span-minutes =
    { $count ->
        [one] { $count } Minute
       *[other] { $count } Minuten
    }
span-seconds =
    { $count ->
        [one] { $count } Sekunde
       *[other] { $count } Sekunden
    }
# what the page measures and hands in by itself; nobody types it
elapsed-now = Jetzt
    .help = Sekunden seit 1970 in UTC.
elapsed-steady = Nach der stetigen Uhr
    .help = Sekunden seit dem Start, Uhr nicht verstellbar. Leer nach Neuladen.
elapsed-seen = Vergangen, zuletzt gesehen
    .help = Sekunden seit dem Start, wie zuletzt angezeigt.
elapsed-seen-at = Zuletzt gesehen um
    .help = Sekunden seit 1970 in UTC.
elapsed-watched = Immer auf dem Bildschirm
    .yes = ja
    .no = nein: verdeckt, oder Telefon im Schlaf
elapsed-jumped = Vorher vorgestellt
    .help = So weit sprang die Uhr des Telefons vor: `keep_jumped` der letzten Antwort.
elapsed-unseen = Vorher ungesehen
    .help = Zeit, die niemand sah: `keep_unseen` der letzten Antwort.
elapsed-lost = Vorher Zeit verloren
    .no = nein
    .yes = ja
    .help = `keep_lost` der letzten Antwort.
elapsed-kept = Für die nächste Frage behalten
timer-lasts = Dauer
timer-bound = Machen
    .least = mindestens so lange
    .most = höchstens so lange
timer-left = Noch
    .rough = aufgerundet
timer-doubt = Unsicher
    .lost = Die Uhr des Telefons wurde zurückgestellt. Gezählt ab dem letzten Wert.
    .unseen = { $span } nur nach der Uhr des Telefons: Seite geschlossen oder Telefon im Schlaf.
timer-passed = Vergangen
pot-started = Gestartet
    .help = Sekunden seit 1970 in UTC.
pot-duration = Verarbeitbar für
pot-share = Anteil der Zeit, bis es dick ist
pot-zone = Uhr hier vor UTC
pot-zone-next = Uhr umgestellt um
    .help = Sekunden seit 1970 in UTC. Leer: keine.
pot-zone-then = Uhr hier vor UTC, ab dann
pot-sent = Link erstellt
    .help = Sekunden seit 1970 in UTC.
pot-by = Erstellt mit
    .help = Version, Punkt, Kennung des Builds.
# $span is in minutes and seconds: "12:30"
pot-left-now = Jetzt noch
    .help = Vom anderen Telefon: Minuten, oder Minuten und Sekunden.
    .unread = Jetzt noch: Minuten eingeben, oder Minuten und Sekunden, z. B. 12 oder 12:30
    .long = Jetzt noch: höchstens { $span }, so lange hält er
pot-batch = Ansatz
pot-container = Behälter
pot-place = Wohin der Ansatz kommt
pot-steps = Schritte
    .each = Schritt
    .name = Schritt
    .minute = Fällig nach
    .done = Erledigt
    .not-yet = noch nicht
    .is-done = erledigt
    .unnamed = Schritt: Namen eingeben, wird vorgelesen
    .order = Fällig nach: Schritte nach der Zeit ordnen
pot-changes = Andere Luft
    .each = Änderung
    .after = Nach
    .usable = Verarbeitbar in dieser Luft für
    .usable-help = Als dort gemischt: nach Wärmebilanz oder Etikett.
    .order = Nach: Änderungen nach der Zeit ordnen
# what a mix is for
pot-use =
    .any = alles
    .putty = Spachtelmasse in eine Hohlkehle
    .wet = Glasband tränken
pot-start = Uhr starten
pot-remaining = Noch
    .rough = zur Sicherheit abgerundet
    .soon = letzte Minuten: nichts mehr mischen
pot-over = Zu Ende seit
    .rough = Verarbeitungszeit vorbei
pot-stop = Die Zeit ist um
    .text = Nichts mehr davon verwenden.
# $span is in minutes and seconds: "12:30"
pot-next = Als Nächstes
    .due = fällig in { $span }
    .late = zu spät seit { $span }
pot-ends = Ende
    .rough = auf die Minute abgerundet
pot-alarm = Auch den Wecker des Telefons stellen
    .rough = klingelt nur bei hellem Bildschirm
    .of-step = für den Wecker des Telefons
# times on the clock: $before, $after, $end
pot-clocks-change = Uhr wird umgestellt
    .rough = vorher gehen die Uhren von { $before } auf { $after }
    .text = Ende: { $end }. Vorher gehen die Uhren von { $before } auf { $after }.
pot-meaning = Was die Minuten sagen
    .text = { $share } der Zeit, bis es dick ist
# read aloud. $batch: what the user calls the pot, $step: what comes next, in the user's words
pot-aloud = Vorgelesen
    .left = { $batch }: noch { $span }.
    .over = { $batch }: seit { $span } zu Ende. Nicht mehr verwenden.
    .next-in = Als Nächstes: { $step }, in { $span }.
    .next-now = Als Nächstes: { $step }, jetzt.
pot-passed = Seit dem Mischen
pot-used = Fürs Protokoll
    .text = verbraucht { $span } nach dem Mischen
pot-again = Falls noch verarbeitbar
    .text = in { $span } wieder prüfen
pot-set = Vergangen, wie eingegeben
pot-step-place = Stelle des nächsten Schritts
# what a running pot cannot know
pot-recalled = Von einer zurückgerufenen Version
pot-long-ago = Lange her
    .text = Zu Ende, als die Seite zu war.
pot-link-times = Der Link passt nicht
    .text = Laut Link vor dem Mischen erstellt. Im Zweifel als verbraucht ansehen. Unten Restzeit vom anderen Telefon eingeben.
pot-clocks-differ = Uhren der Telefone weichen ab
    .text = Dieses Telefon geht mindestens { $span } nach. Gezählt ab dem Link, Zeit unterwegs unbekannt. Unten Restzeit vom anderen Telefon eingeben.
pot-on-its-way = Unterwegs
    .text = Link vor { $span } erstellt. Kam er eben erst an, weichen die Uhren ab. Unten Restzeit vom anderen Telefon eingeben.
pot-clock-changed = Die Uhr des Telefons wurde verstellt
    .ahead = Sie geht { $span } vor. Nach dem früheren Alarm richten.
    .before = Sie zeigt { $span } vor dem Mischen. Nach dem früheren Alarm richten.
    .behind = Sie geht { $span } nach. Nach dem früheren Alarm richten.
pot-lost = Gezählte Zeit unsicher
    .text = Vielleicht verging mehr Zeit: Die Uhr des Telefons wurde zurückgestellt. Im Zweifel als verbraucht ansehen.
pot-unseen = Unbeobachtet
    .text = { $span } nur nach der Uhr des Telefons: Seite geschlossen oder Telefon im Schlaf. Zurückgestellt: bleibt weniger.
pot-unnamed = Ansatz
pot-start-batch = { $mass } bei { $air }
pot-start-next = Glasband auf die weiche Hohlkehle rollen

## Clock times

clock-fold = Uhr und Pausen
clock-hours = Uhr
    .whole = 24 h
    .half = am / pm
# a time on a clock of 12 h: "2:00"
clock-am = { $time } am
clock-pm = { $time } pm
# a time that is not of the first day
clock-next-day = { $time }, nächster Tag
clock-day-before = { $time }, am Tag davor
clock-on-day = { $time }, Tag { $day }
clock-on-weekday = { $time } am { $day }
clock-weekday =
    .mo = Montag
    .tu = Dienstag
    .we = Mittwoch
    .th = Donnerstag
    .fr = Freitag
    .sa = Samstag
    .su = Sonntag

## Plan

plan-pieces = Stücke, der Reihe nach
    .each = Stück
plan-piece-name = Name
plan-piece-face = Fläche
plan-piece-length = Länge
plan-piece-putty = Spachtelmasse
    .help = 0 bei Glasband ohne Hohlkehle.
plan-piece-wet = Tränkharz
    .help = 0 ohne Glasband.
plan-piece-layers = Lagen Glasband
    .help = Jede tränken, auflegen, entlüften.
plan-piece-position = Wie die Naht liegt
plan-surfaces = Schichten und Gewebe, nach den Nähten
plan-surface-wet = Harz ins Gewebe
    .help = Rechnet „Flächen“ aus.
plan-surface-coats =
    .help = Gewebe ist die erste.
plan-crew = Team
plan-people = Leute heute
    .as-above = Wie oben
plan-hand = Übung
plan-system = Harzsystem
plan-temperature-is = Temperatur
    .constant = bleibt gleich
    .points = ändert sich im Lauf des Tages
plan-temperature = Temperatur von Holz und Luft
    .help = Die wärmste zählt.
    .missing = zuerst eingeben. Davon hängen alle Zeiten ab
plan-points = Temperatur im Lauf des Tages
    .each = Uhrzeit
    .help = Von Anfang bis Ende der Arbeit.
plan-point-at = Uhrzeit
plan-point-temperature = Temperatur
plan-start = Start
    .help = Beginn des Mischens.
plan-finish = Fertig bis
plan-pause = Pause zwischen Ansätzen
    .help = Handschuhe, Aufräumen, Nächstes.
plan-one-mix = Eine Mischung für Spachtelmasse und Glasband
    .sound = wo es sicher ist
    .never = nie
plan-long = Ein zu langes Stück
    .cut = wird geteilt, mit Überlappung
    .whole = bleibt ganz
plan-overlap = Überlappung am Schnitt
plan-scale = Waage
plan-smallest = Kleinste genau messbare Mischung
    .help = Leer: aus Waage, Verhältnis und Mischfehler.
plan-most = Größte gewünschte Mischung
    .help = Mit Füllstoff. Leer: { $calm }, bei Wärme { $warm } (unsere Einschätzung), mehr, wenn es nicht überhitzen kann.
plan-filler = Füllstoff in der Spachtelmasse
plan-left-putty = Bleibt in Becher und Beutel
plan-left-wet = Bleibt in Becher und Schaumrolle
plan-spare = Reserve
plan-soft = Eine Hohlkehle bleibt weich, bei { $at }
    .help = Leer: { $times }-mal die Topfzeit von { $mass } (aus dem Gedächtnis, { $low } bis { $high }).
plan-film = Ein Film bleibt nass, bei { $at }
    .help = Leer: Etikett, oder { $times }-mal die Topfzeit von { $mass } (aus dem Gedächtnis, { $low } bis { $high }).
# the typed words stay English: they are read as they are
plan-timings = Eigene Zeiten neben denen des Systems
    .help = „anziehend 31 min { "240 g" } Becher { "20 degC" }“. Dazwischen Strichpunkt. „Uhr“ trägt sie ein.
plan-exponent = Topfzeit sinkt mit der Masse hoch
    .help =
        Leer: { $power ->
            [third] ein Drittel
           *[other] { $power }
        } (aus dem Gedächtnis, { $low } bis { $high }).
plan-doubling = Schneller je { "10 K" } wärmer
    .help = { $times }-mal: übliche Praxis, { $low } bis { $high }.
plan-share = Nutzbarer Anteil eines Zeitfensters
# minutes of mixing
plan-mixing-help = Aus dem Gedächtnis, { $low } bis { $high }.
# m/min
plan-rate-help = Leer: vom Team, oder { $rate } (aus dem Gedächtnis, { $low } bis { $high }).
plan-pace = Liegend, eine Person.
plan-fold-left = Was zurückbleibt
plan-fold-times = Verarbeitungszeiten
plan-fold-rates = Eigenes Arbeitstempo
plan-fold-live = Läuft
plan-fold-batch = Ansatz { $number }: Mengen und Schritte
plan-running = Der Tag
    .no = ist nur geplant
    .yes = läuft
plan-clock = Uhrzeit jetzt
    .help = Das Telefon trägt es ein.
plan-done = Bisher erledigt
    .each = Schritt
    .coats = Schichten bisher erledigt
plan-done-batch = Ansatz
plan-done-minute = Erledigt nach
    .help = Minuten nach Start. Minus heißt davor.
plan-now = Jetzt
    .help = Minuten nach dem Start.
plan-done-step = Schritt
    .mix = Spachtelmasse gemischt und eingefüllt
    .place = Beutel leer
    .tool = Hohlkehle abgezogen
    .clean = Kanten sauber
    .wet-mix = Tränkharz gemischt
    .wet = Glasband getränkt
    .lay = Glasband aufgelegt
    .roll = Glasband entlüftet
    .peel = Abreißgewebe aufgelegt
plan-refused-pot-time = Topfzeit: vom Etikett oder eigene eingeben
plan-refused-pot-mass = Topfzeit: ihre Masse eingeben
plan-refused-pot-temperature = Topfzeit: ihre Temperatur vom Etikett eingeben, oft { "20 degC" } oder { "25 degC" }
plan-refused-densities = Dichten oder „Kleinste genau messbare Mischung“ eingeben
plan-refused-nothing-to-do = Spachtelmasse oder Tränkharz eingeben oder Stück entfernen
plan-refused-pieces = Zu viele Stücke: mehr als { $most }. Nur Nähte eines Tages planen
plan-refused-batches = Zu viele Ansätze: mehr als { $most }. Nur Nähte eines Tages planen
plan-refused-points = Temperatur im Lauf des Tages: Uhrzeit und Temperatur am Start eingeben
    .twice = Uhrzeit: doppelt. Spätere eingeben
    .back = Uhrzeit: der Reihe nach, an einem Tag
    .late = Uhrzeit: erste um { $start } oder früher
plan-refused-step-twice = Schritt: in Ansatz { $batch } zweimal. Einen entfernen
plan-refused-step-order = Erledigt nach: passt nicht zur Reihenfolge. Korrigieren
# what may run out: each stands inside a sentence or in brackets
plan-limit-bag = Spachtelmasse im Beutel
    .why = Beutel leeren, bevor die Spachtelmasse anzieht.
    .done = Beutel leer
    .late = Beutel sofort leeren: Rest im Freien dünn ausbreiten. Nächstes Mal weniger mischen.
plan-limit-cup = Tränkharz im Becher
    .why = Becher in die Schale leeren, bevor das Harz anzieht.
    .done = Becher leer, Harz in der Schale
    .late = Harz sofort in die Schale oder im Freien dünn ausbreiten. Nächstes Mal weniger mischen.
plan-limit-cove = weiche Hohlkehle
    .why = Glasband entlüften, solange die Hohlkehle weich ist.
    .why-bare = Hohlkehle abziehen, solange sie weich ist.
    .done = Glasband auf weicher Hohlkehle entlüftet
    .done-bare = Hohlkehle abgezogen, solange weich
    .late = Kein Glasband in anziehende Spachtelmasse drücken. Aushärten lassen, waschen, anschleifen.
    .late-bare = Aushärten lassen, anschleifen, füllen, was fehlt.
plan-limit-film = Tränkharz auf dem Glasband
    .why = Abreißgewebe auflegen, solange das Harz darunter nass ist.
    .done = Abreißgewebe auf nassem Glasband
    .late = Nur auf nasses Glasband. Sonst aushärten lassen, waschen, anschleifen.
plan-limit-size = größte gewünschte Mischung
    .why = Keine Mischung ist größer als gewünscht.
    .late = Weniger auf einmal mischen.
# why no mix is larger than $most; $calm: what does not run away
plan-largest-typed = höchstens { $most }, wie eingegeben
plan-largest-calm = höchstens { $most }: Mehr kann überhitzen (aus dem Gedächtnis). Ändern: „Größte gewünschte Mischung“
plan-largest-coarse = höchstens { $most }. Über { $calm } kann überhitzen (aus dem Gedächtnis). Feinere Waage nehmen. Ändern: „Größte gewünschte Mischung“
    .putty = höchstens { $most }. Über { $calm } kann überhitzen (aus dem Gedächtnis). Feinere Waage nehmen. Ändern: „Größte gewünschte Mischung“
plan-largest-alone = höchstens { $most }, mehr nur, wo ein Stück es braucht. Mehr kann überhitzen (aus dem Gedächtnis): sofort verarbeiten oder kürzere Stücke. Ändern: „Größte gewünschte Mischung“
plan-largest-not = kein Plan geht mit höchstens { $most }. Mehr kann überhitzen (aus dem Gedächtnis): sofort verarbeiten. Oder weniger Nähte, mehr Hände, kühlere Stunden
# a piece without a name
plan-piece = Stück { $number }
# a piece that is cut
plan-piece-part = { $name } ({ $part } von { $parts })
# $crews is more than one
plan-batches =
    { $count ->
        [one] { $count } Ansatz
       *[other] { $count } Ansätze
    }
    .crews =
        { $count ->
            [one] { $count } Ansatz
           *[other] { $count } Ansätze
        }, { $crews } Paare nebeneinander
plan-window-bag = Beutel von höchstens { $mass }
plan-window-cup = { $mass } im Becher
plan-window-cove = Hohlkehle bleibt weich
plan-window-film = Nasses Glasband bleibt nass
plan-window-at = { $time } bei { $air }
plan-window-typed = { $share } von { $time }, der eingegebenen Zeit
# $by and $other: each one of plan-by
plan-window-by = { $meaning }, nach { $by }
    .longer = { $meaning }, nach { $by }. { $other }: { $longer }. Die kürzere gilt
plan-by-label = Filmzeit vom Etikett
plan-by-rule = Faustregel
    .own = Faustregel nach eigener Zeit
# $own: like "from 3 own timings"
plan-by-heat = Wärmebilanz
    .own = Wärmebilanz { $own }
plan-count = Zu mischen
plan-memory = { $what } aus dem Gedächtnis
    .own-first = { $what } aus dem Gedächtnis, eigene Zeiten gehen vor
    .none = nach eigenen Zeiten und Arbeitstempo
    .rule = Faustregel
    .windows = Zeiten
    .rates = Arbeitstempo
plan-end-tape = Letztes Abreißgewebe aufgelegt
plan-end-cove = Letzte Kanten sauber
plan-end-rough = bei diesem Tempo, { $pause } zwischen Ansätzen, aufgerundet
plan-slack = Kleinste Zeitreserve
    .missed = keine: { $time } zu spät
    .rough = dazu { $share } Reserve
# $why: one of plan-largest
plan-largest = Größte Mischung
    .filler = mit Füllstoff, { $why }
plan-surplus = Überschuss insgesamt
    .rough = keine Mischung unter { $least } ist genau messbar. Feinere Waage, Pumpen, Spritzen oder mehr Nähte je Ansatz. Überschuss in Löcher, Hirnholz
plan-rates = Arbeitstempo, eine Person
# $what: one of plan-limit; $all: batches in the nominative ("3 Ansätze")
plan-binds = Begrenzt durch
    .some = { $what } ({ $all }, davon { $ended } so begrenzt)
    .all = { $what }, bei jedem Ansatz außer dem letzten
    .least = { $what }: kleinste Zeitreserve
    .one = { $what }: kleinste Zeitreserve
    .counted = Gezählt: { $window }
plan-ready = Bereitlegen
    .cups =
        { $count ->
            [one] { $count } Becher
           *[other] { $count } Becher
        }
    .bags =
        { $count ->
            [one] { $count } Beutel
           *[other] { $count } Beutel
        }
    .gloves =
        { $count ->
            [one] { $count } Paar Handschuhe
           *[other] { $count } Paar Handschuhe
        }
    .for-mix = ein Becher je Mischung
    .for-putty = ein Becher je Mischung, ein Beutel je Spachtelmasse
# $help: one of plan-help; $batches: how many it takes with it
plan-help = Das würde helfen
    .batches = { $help }: { $batches }
    .instead = statt { $count }
    .nothing = Nichts ergibt weniger Ansätze
    .tried =
        geprüft: Helfer, kühlere Stunden, langsamerer Härter, kleine { $of ->
            [bags] Beutel
           *[cups] Becher
        }
plan-help-helper = Mit einem Helfer
plan-help-shade = Schatten über allem
plan-help-cooler = Früher anfangen oder in den Schatten, { $cooler } kühler
plan-help-earlier =
    { $hours ->
        [2] Zwei
       *[other] { $hours }
    } Stunden früher anfangen
plan-help-slower = Härter, { $times }-mal so langsam
plan-help-small =
    Zwei kleine { $of ->
        [bags] Beutel
       *[cups] Becher
    } je Mischung
    .tray =
        Zwei kleine { $of ->
            [bags] Beutel
           *[cups] Becher
        } je Mischung, oder erst in Schale ausbreiten
plan-cold = Zu kalt für diesen Härter
    .text = { $air }, mindestens { $lowest }. Werkstatt wärmen oder schnelleren Härter nehmen.
    .label = laut Etikett
# $where: sun-where
plan-sun = Zeiten { $where }. Schale und Fertiges im Schatten halten.
# names of pieces; $parts: more than one
# $limit: one of plan-limit; $mark: how the overlap is known
plan-cut = Zu lang für einen Ansatz
    .one = { $name }: in { $parts } Teile, Glasband { $lap } überlappt.
    .each = { $names }: je in { $parts } Teile, Glasband { $lap } überlappt.
    .more = { $names } und noch { $more }: je in { $parts } Teile, Glasband { $lap } überlappt.
    .rough = Grenze: { $limit }, Überlappung: { $mark }
plan-none = Kein Plan
    .late = { $name }: { $over } zu spät ({ $limit }).
    .temperature = Stücke zu spät: Temperatur ändert sich.
    .scale = { $name } geht nicht: keine Mischung unter { $least } ist genau messbar, größte gewünschte: { $most }.
    .whole = { $name } geht nicht: Nötig sind { $least }, größte gewünschte: { $most }.
    .cut = { $name } geht nicht: ganz nötig { $least }, geteilt mehr als größte gewünschte, { $most }.
    .by-scale = aus Waage, Verhältnis und Mischfehler
    .by-typed = kleinste genaue Mischung wie eingegeben
    .filler = mit Füllstoff
plan-change = Ändern
    .cut = Am Schott oder erlaubter Überlappung teilen. Neu planen.
    .cut-or-mix = Am Schott oder erlaubter Überlappung teilen. Oder größere Mischung. Neu planen.
    .scale = Feinere Waage, Pumpen, Spritzen oder größere Mischung nehmen.
    .all = Kürzere Stücke, mehr Hände, kühlere Stunden, langsameren Härter.
plan-asked-temperature = Temperatur
    .gap = Zwischen { $before } und { $after } fehlt eine.
    .after = Nach { $time } keine: Die letzte gilt weiter.
plan-long-day = Mehr als ein Tag?
    .text = Dauert bis { $end }. Nur Stücke eines Tages planen.
plan-too-late = Nicht rechtzeitig fertig
    .text = { $over } nach { $finish }. Ganze Ansätze an anderem Tag.
# $own: like "from 3 own timings"
plan-own-timings = Eigene Zeiten von diesem System?
    .text = Zeiten { $own } in diesem Plan. Bei anderem System leeren.
plan-not-here = Bisher erledigt
    .batch = Dieser Plan hat keinen Ansatz { $number }. Korrigieren oder entfernen.
    .step = Ansatz { $number }: „{ $step }“ hier kein Schritt.
plan-batch = Ansatz { $number }
    .done = Ansatz { $number }, fertig
    .begun = Ansatz { $number }, läuft
    .pair = Ansatz { $number }, Paar { $pair }
    .pair-done = Ansatz { $number }, Paar { $pair }, fertig
    .pair-begun = Ansatz { $number }, Paar { $pair }, läuft
plan-span = { $start } bis { $end }
plan-air = Luft beim Mischen
# $what: one of plan-limit
plan-missed = Zu spät
    .text = Fertig erst { $when }, aber { $what } hält nur bis { $by }.
plan-do-not-start = Nicht anfangen
    .text = Ansatz { $number } würde nicht rechtzeitig fertig.
    .finish = er würde nicht rechtzeitig fertig
    .latest = spätester Start war { $time }
plan-latest = Spätester Start
    .rough = danach auf anderen Tag verschieben
plan-amount-mix = Mischung für Spachtelmasse und Glasband
    .rough = im Becher mischen, { $tray } in die Schale. { $filler } Füllstoff in den Rest, dann Beutel: etwa { $bag } Spachtelmasse (aus dem Gedächtnis)
    .surplus = im Becher mischen, { $tray } in die Schale, davon { $over } Überschuss. { $filler } Füllstoff in den Rest, dann Beutel: etwa { $bag } Spachtelmasse (aus dem Gedächtnis)
plan-amount-putty = Spachtelmasse
    .rough = Becher, dann { $filler } Füllstoff, dann Beutel, etwa { $bag } Spachtelmasse (aus dem Gedächtnis)
plan-amount-wet = Tränkharz
    .rough = Becher, sofort in die Schale
# $parts: like "100 g resin + 30 g hardener"
# $ratio: like "3 : 1"
plan-amount-parts = { $mass }: { $parts }
    .part = { $mass } { $name }
    .by-volume = { $mass }: { $ratio } nach Volumen
plan-over = Überschuss
    .rough = keine Mischung unter { $least } ist genau messbar
plan-by-tape = Tränkharz mischen
    .one-mix = Mit dem Tränken anfangen
    .rough = danach Glasband an anderem Tag auf die Hohlkehle
plan-by = bis { $time }
    .rough = zur Sicherheit abgerundet
plan-step-mix = Spachtelmasse mischen, in den Beutel füllen
    .one-mix = Für beides mischen: Teil zum Tränken, Rest andicken, in den Beutel
plan-step-place = Spachtelmasse auftragen
plan-step-tool = Hohlkehle abziehen
plan-step-clean = Kanten säubern
    .side-by-side = Abziehen und säubern, Stück für Stück
plan-step-wet-mix = Tränkharz mischen, sofort in die Schale
plan-step-wet = Glasband in der Schale tränken
plan-step-lay = Glasband auflegen
    .soft = Glasband auf die weiche Hohlkehle legen
plan-step-roll = Glasband entlüften
    .side-by-side = Tränken, auflegen, entlüften, Stück für Stück
plan-step-peel = Abreißgewebe auflegen
plan-step-done = erledigt
# who of a pair does it; $step: one of plan-step
plan-who-first = Erste Person: { $step }
plan-who-second = Zweite Person: { $step }
plan-who-mixer = Wer mischt: { $step }
# a coat; $name: its face
plan-layer = { $name }, Schicht { $number } von { $count }
    .cloth = { $name }, Gewebe
plan-layer-next = Nächste Schicht ab { $opens }, fertig bis { $closes }, sonst waschen und schleifen ab { $sands }
    .late = Waschen und schleifen ab { $sands }, dann die nächste Schicht
    .open = Nächste Schicht ab { $opens }
plan-layers-end = Letzte Schicht aufgetragen
    .rough = bei diesem Tempo (unsere Einschätzung), die letzte Temperatur bleibt. Etikett geht vor.
plan-layers-mixing = Ansatz mischen um
plan-timeline = Ansätze des Tages
    .batch = Ansatz { $number } von { $start } bis { $end }
    .mix = Mischen
    .putty = Spachteln
    .tape = Glasband
    .peel = Abreißgewebe
    .cove = Hohlkehle hart
    .film = nasses Glasband steif
    .both = Hohlkehle hart oder Band steif
plan-begin = Tag starten
# $what: one of plan-amount
plan-pour = Ansatz { $number } mischen: { $what }
    .card = Mischen: { $what }
plan-tap = Ansatz { $number }: { $step }
plan-start-clock = Uhr für Ansatz { $number } starten, geplant { $time }
plan-logged = Ansatz { $number } des Plans
plan-pieces-to = { $first } bis { $last }

## Joint

joint-fold =
    .along = Wechselnder Winkel, Anzahl
    .cove = Größe der Hohlkehle
    .edges = Plattenkanten
    .glass = Glasband und Lagen
    .on-top = Abreißgewebe und Schichten
    .losses = Verluste und Reserve
    .strength = Festigkeit der Platte
joint-kind = Art der Verbindung
    .inside = Innenecke
    .inside-help = Hohlkehle und Glasband
    .outside = Außenecke
    .outside-help = V füllen, Kante runden, Glasband herum
    .both = Ecke, beide Flächen
    .bulkhead = Schott
    .bulkhead-help = Zwei Innenecken
    .butt = Stumpfstoß
    .butt-help = Platten in einer Ebene
    .strip = Verstärkungsstreifen
    .strip-help = Glasband auf ebener Fläche
joint-thickness = Plattendicke
    .help = Die dünnere Platte zählt.
joint-angle-is = Winkel
    .constant = überall gleich
    .stations = ändert sich
joint-angle = Innenwinkel
joint-stations = Winkel entlang der Naht
    .help = Erste bis letzte Stelle, dazwischen gleichmäßig.
joint-station = Stelle
joint-station-at = Abstand
joint-length = Nahtlänge
joint-gap = Spalt
joint-copies = Anzahl
    .help = Spiegelbilder mitzählen.
joint-layers = Lagen Glasband
    .help = Die erste liegt auf der Spachtelmasse.
joint-layer = Lage
joint-layer-width = Breite
joint-layer-weight = Trockengewicht
joint-layer-side = Fläche
    .each = jede
    .first = innen oder erste Seite
    .second = außen oder andere Seite
joint-sized = Größe der Hohlkehle
    .rule = nach Kehldicke und Breite
    .flank = so breit wie das Glasband zulässt
    .radius = nach einem Radius
    .spreader = nach vorhandenem Spachtel
joint-radius-typed = Radius
    .help = An der Spitze des Spachtels.
joint-throat-wanted = Gewünschte Kehldicke
    .help = Leer: Plattendicke (übliche Praxis) oder nach der Breite.
joint-cove-width = Breite der Hohlkehle
    .help = Gerade gemessen. Ist auch die Kehldicke leer: höchstens { $times } × Plattendicke (übliche Praxis, { $low } bis { $high }).
    .rough = gerade gemessen
joint-least = Kleinster Radius
joint-flank = Glasband auf blanker Platte, je Seite
joint-clear = Freie Platte, je Seite
    .help = Stringer, Boden nahe. Leer: keine Grenze.
joint-bevel = Schräge je Kante
    .help = Vom rechten Winkel. Außen steht vor.
joint-touch = Kanten berühren sich
    .cut = wie zugeschnitten
    .outer = an den Außenecken
joint-finish = Außenkante
    .round = gerundet
    .sharp = scharfkantig gefüllt
    .chord = bündig gefüllt, von Ecke zu Ecke
joint-round-over-typed = Radius der Rundung
    .help = Leer: die Plattendicke.
joint-overlap = Überlappung der Enden
joint-stagger = Versatz der Lagenenden
joint-reach = Längstes Stück in einem Zug
    .help = Was eine Person auflegen kann (aus dem Gedächtnis).
joint-fraction = Glasanteil nach Gewicht
    .help = Unsere Einschätzung: { $buying } %. Übliche Praxis: { $skilled } % geübt, { $equal } % bei gleichen Massen.
joint-fibre-density = Dichte des Glases
    .help = Voreinstellung: E-Glas.
joint-resin-density = Dichte des gemischten Harzes
joint-ply-wanted = Abreißgewebe
    .yes = über dem Glasband
    .no = keins
joint-ply-margin = Abreißgewebe über dem Glasband, je Seite
joint-ply-takes-up = Harz im Abreißgewebe
joint-primed = Blankes Holz grundiert
    .no = nein
    .faces = unter dem Glasband
    .edges = unter dem Glasband und an den Kanten
joint-weave-filled = Gewebe gefüllt
    .once = einmal
    .twice = zweimal
    .no = nein
joint-putty-density = Dichte der Spachtelmasse
joint-tooling = Beim Abziehen weggenommen
    .rough = von der aufgetragenen Spachtelmasse (aus dem Gedächtnis)
joint-bag = Bleibt in jedem Beutel
joint-cup = Bleibt in jedem Becher
joint-tray = Bleibt in der Schale, je getränkter Fläche
joint-roller = Bleibt in der Schaumrolle
joint-spare = Reserve bei Flüssigem
joint-batches = Zahl der Ansätze
joint-panel = Platte
    .ply = Sperrholz
    .solid = Vollholz
joint-grain = Faser der Deckfurniere
    .unknown = nicht bekannt
    .along = längs der Naht
    .across = quer zur Naht
    .help = Nicht bekannt: zählt als stärkere Platte.
joint-plies = Furnierlagen
    .help = Leer: eine je { $ply } (übliche Praxis).
joint-panel-strength =
    .help = In Faserrichtung. Leer: Sperrholz { $ply } ({ $range }, aus dem Gedächtnis), Vollholz { $solid } (unsere Einschätzung).
joint-knock = Rest von Glas und Spachtelmasse
    .help = Nach Wasser, Ermüdung, Luft: { $range }, unsere Einschätzung.
# was den Radius der Hohlkehle bestimmt hat; mehrere stehen mit Strichpunkt nebeneinander
joint-why =
    .rule = nach der Kehldicke (übliche Praxis)
    .width = nach der Breite, { $times } × Plattendicke (übliche Praxis)
    .least = kleinster für Glas und Werkzeug (aus dem Gedächtnis)
    .tape = Glasband muss auf blanker Platte liegen
    .room = begrenzt durch freie Platte je Seite
    .flat = ab { $angle }° nur flaches Glasband (übliche Praxis)
    .own = eigener Wert
# eine Fläche einer Verbindung, hinter „Glasband,“
joint-face =
    .inside = innen
    .outside = außen
    .one-side = eine Seite
    .other-side = andere Seite
    .one-face = eine Fläche
    .other-face = andere Fläche
    .strip = Streifen
joint-putty = Spachtelmasse, zu mischen
    .rough = aufgerundet, mit Verlusten (Dichte aus dem Gedächtnis)
joint-liquid = Tränkharz
    .rough = Harz und Härter, aufgerundet, mit Verlusten und Reserve
joint-cove = Hohlkehle
    .none = keine: flaches Glasband
joint-radius = Hohlkehlradius
joint-throat = Kehldicke
    .rough = auf der Winkelhalbierenden, abgerundet
joint-tack = Heften höchstens bis
    .rough = ab der Ecke, abgerundet. Bis hier säubern.
    .rough-narrowest = schmalste Stelle, abgerundet. Bis hier säubern.
joint-arc = Bogenlänge der Hohlkehle
joint-passes = Gänge
    .rough = dicker als { $throat } wird heiß und sackt ab. Ersten Gang anziehen lassen (unsere Einschätzung).
joint-tape-carries = Was die Naht trägt
    .text = Glasband, wo die Hohlkehle begrenzt ist oder fehlt
    .rough = dort Kehldicke kleiner als Plattendicke
joint-station-line = Bei { $at }
    .cove = { $angle }, Radius { $radius }
    .flat = { $angle }, flaches Glasband
joint-other-side = Andere Seite
    .at = Bei { $at }, andere Seite
joint-round-over = Außenkante runden mit Radius
    .panel = die Plattendicke
joint-cover = Bleibt an der Ecke
    .rough = Holz und Spachtelmasse, dünnste Stelle
joint-thin-cover = Dünne Kante
    .text = Radius { $radius } lässt nur { $cover }. Weniger runden.
joint-outside-flank = Glasband auf der Platte außen
    .rough = je Seite der Rundung, die schmalste Lage
joint-tape = Glasband
    .of-face = Glasband, { $face }
    .text = { $pieces }, { $width } breit, { $weight }
    .rough = der Reihe nach, Überlappung { $overlap }
joint-pieces = { $copies } × { $pieces }
    .several = { $copies } × ({ $pieces })
joint-laminate = Dicke der Lagen
    .text = { $thickness } { $unit }
    .rough = mindestens, ohne Luft.
joint-ply = Abreißgewebe
    .text = { $length }, { $width } breit
    .rough = aufgerundet
joint-section = Querschnitt der Spachtelmasse
    .rough = in der Naht, Mittel über die Länge
    .rough-faces = in der Naht, beide Flächen, im Mittel
joint-putty-in-place = Spachtelmasse in der Naht
    .rough = wie gezeichnet, ohne Verluste
joint-kept = Bleibt in Beutel und Becher
    .rough = je Ansatz gleich (aus dem Gedächtnis)
joint-wet-out = Harz im Glas
    .rough = für { $glass } Glas
joint-ply-takes = Harz im Abreißgewebe
    .rough = aus dem Gedächtnis
joint-resin-on = Harz, das bleibt
    .times = { $times } × Glas
    .rough = in Glas und Gewebe, fürs Gewicht. Gewogen: { $low } bis { $high } × (übliche Praxis). Mehr mischen, { $mixed } ×, damit es reicht.
joint-spare-kept = Reserve bei Flüssigem
joint-prime = Grundierung auf blankem Holz
    .rough = ein eigener Ansatz (aus dem Gedächtnis)
joint-weave = Harz zum Füllen des Gewebes
    .rough = ein eigener Ansatz, später (aus dem Gedächtnis)
joint-added = Mehrgewicht am Rumpf
    .rough = Spachtelmasse, Glas und Harz, die bleiben
joint-strength = Schwächer von Naht und Platte
    .seam = die Naht: { $share } der Platte
    .panel = die Platte: die Naht trägt { $share } davon
    .share = { $share } der Platte
    .estimate = Schätzung, keine Zulassung. Bauplan, Klassenregeln gehen vor.
    .knock = Glas und Spachtelmasse zählen mit { $left }: Wasser, Ermüdung, Luft.
    .inner = Gebogen, innen gezogen
    .outer = Gebogen, außen gezogen
    .one-face = Gebogen, erste Fläche gezogen
    .other-face = Gebogen, andere Fläche gezogen
    .pull = Gerade gezogen
    .sideways = Schott seitlich gebogen
    .off = Schott abgezogen
    .tears = zuerst reißt das Glas
    .crushed = zuerst bricht das Glas unter Druck
    .shears = zuerst schert das Holz unter dem Glasband
    .cracks = zuerst reißt die Spachtelmasse
    .pressed = zuerst bricht die Spachtelmasse unter Druck
    .peels = zuerst schält das Deckfurnier ab, ohne Glasband gerechnet
joint-strength-flank = Glasband auf der Platte
    .text = { $flank } je Seite, hilft bis { $useful }
    .enough = lang genug: zuerst reißt das Glas
    .short = kurz: ab { $wanted } reißt zuerst das Glas
    .wood = Holz darunter schwächer als Glas
joint-strength-lap = Überlappung für die Festigkeit
    .text = { $lap } von { $overlap } nötig
    .enough = lang genug
    .short = zu kurz
joint-would-carry = Das würde tragen
    .text = { $layers } × { $weight }, { $width } breit, auf jeder Fläche
    .bends = { $layers } × { $weight }, { $width } breit, auf jeder Fläche: für Biegung, nicht für geraden Zug
    .none = keines: Holz darunter zu schwach für geraden Zug
joint-strength-model = Wie die Festigkeit geschätzt ist
    .text = Platte mit { $strength } in Faserrichtung. Glas nach ISO 12215-5, aus dem Gedächtnis. Holz darunter und Spachtelmasse: unsere Einschätzung.
joint-wide-gap = Breiter Spalt?
    .text = Spalt { $gap }, breiter als die Platte dick. Holz hineinlegen.
joint-narrow-flank = Glasband breiter?
    .text = Je Seite nur { $flank } Glasband auf blanker Platte, gewünscht { $wanted }.
joint-heavy-glass = Glas zu schwer?
    .text = Eine Lage dicker als die Platte. Einheit prüfen.
joint-to-run = Diese Naht Schritt für Schritt
joint-to-boat = Ins Boot
joint-to-spreader = Schablone für den Spachtel
joint-to-pour =
    .putty = Spachtelmasse mischen
    .wet-out = Tränkharz mischen
    .putty-of = Spachtelmasse für { $joints }
    .wet-out-of = Tränkharz für { $joints }
joint-tooling-all = Weniger eingeben: Es muss etwas bleiben
joint-strip-bare = Verstärkungsstreifen ist Glasband: Lage hinzufügen
joint-reach-short = Stücke zu kurz: mehr als { $least } eingeben (Überlappung plus zweimal Versatz)
joint-reach-many = Bei Stücken von { $reach } und { $overlap } Überlappung mehr als { $most } Stücke je Lage. Längere Stücke oder weniger Überlappung eingeben
joint-stations-few = Mindestens zwei Stellen eingeben oder „überall gleich“
joint-station-order = Falsche Reihenfolge: größeren Abstand als davor eingeben
joint-angle-flat = Innenwinkel unter 180° eingeben, auch bei Außenecken. In einer Ebene: „Stumpfstoß“ wählen
joint-angle-narrow = Unter { $least }° passt kein Werkzeug. Verbindung ändern oder füllen
joint-bulkhead-flat = Ein Schott steht mit { $least }° bis { $most }°. Flacher: „Innenecke“ wählen
joint-cove-alone = Bei { $angle } trägt Hohlkehle allein nichts. Flaches Glasband hinzufügen
joint-tape-narrow = Glasband von { $width } zu schmal: Hohlkehle mit Radius { $radius } bei { $angle } braucht mindestens { $needs }
joint-room-little = Zu wenig Platz: Bei { $angle } kleinste Hohlkehle { $takes } je Platte
joint-radius-large = Radius zu groß: Bei { $angle } { $reaches } je Platte, frei sind { $free }. Höchstens { $most }
joint-opening-wide = Öffnung zu weit: Bei { $angle } { $opening }, Hohlkehle { $reaches } je Platte. Schließen oder größerer Radius
joint-edges-overlap = Bei { $angle } jede Kante mindestens { $cut }° abschrägen. Sonst überlappen sie { $overlap }
joint-rounding-through = Bei { $angle } bricht die Rundung innen durch. Weniger als { $most } eingeben
joint-tape-short = Glasband von { $width } reicht bei { $angle } nicht um die Kante: mindestens { $least }

## Surfaces: coats, cloth, glue, fairing

surface-work = Arbeit
    .coat = beschichten
    .sheathe = mit Gewebe überziehen
    .fair = spachteln
    .scarf = Schäftung leimen
    .laminate = Lamellen verleimen
    .gap = Kanten oder Spalt leimen
    .fillet = Hohlkehle ohne Glasband
surface-faces = Flächen
    .no-size = Länge und Breite oder die Fläche eingeben
surface-face = Fläche
surface-length = Länge
surface-widths = Breite oder Umfang
    .help = Wenn sie wechselt, mehrere in gleichen Abständen: 0,4 : 1,2 : 0,9
surface-area = Fläche, wenn bekannt
    .help = Ersetzt beides.
surface-count = Anzahl
    .help = Jede Seite zählen.
surface-lie = Lage
    .level = waagrecht
    .leans = geneigt
    .upright = senkrecht
    .under = über Kopf
surface-wood = Untergrund
    .bare = rohes Holz
    .sealed = versiegelt oder beschichtet
surface-fold =
    .amounts = Mengen
    .clock = Uhrzeiten und Tempo
    .edges = Kanten und Hirnholz
surface-pots = Ansätze je Schicht
    .cloth = Ansätze zum Tränken
    .fair = Ansätze
    .text = { $count ->
          [one] { $count } Ansatz zu { $mass }
         *[other] { $count } Ansätze zu je { $mass }
      }
    .by-heat = damit kein Becher { $mass } oder mehr enthält
    .by-film = solange der Film offen ist: { $time }
    .caution = Jeden Ansatz sofort ausgießen. In Becher oder Schale wird er heiß und kann qualmen.
surface-reach = Ein Ansatz reicht für
    .rough = bei diesem Tempo (unsere Einschätzung). Eigenes eingeben.
surface-no-pot-life = Keine Topfzeit bekannt
    .text = Topfzeit vom Etikett mit Masse und Temperatur eingeben.
surface-area-line = Fläche, gesamt
    .rough = Trapezregel zwischen den Breiten, längs eben
surface-stays = Bleibt am Boot
    .rough = aufgerundet, ohne Reserve, Werkzeug und Schale
surface-to-pour =
    .pot = Einen Ansatz mischen
    .all = Alles als einen Ansatz mischen
    .neat = Reines Harz mischen
    .glue = Angedickten Leim mischen
    .batch = Einen Ansatz Spachtel mischen
surface-to-sanding = Vor dem Schleifen
surface-to-joint = Als Verbindung zeichnen
coats-count = Schichten
coats-tool = Werkzeug
    .roller = Rolle
    .brush = Pinsel
coats-edge-length = Offene Kanten, Länge insgesamt
coats-edge-thickness = Dicke der Kanten
coats-soaks = Eine Kante, mal so viel wie Fläche
coats-day-from = Arbeitsbeginn
coats-day-until = Arbeitsende
    .early = Arbeitsende: muss nach dem Beginn liegen
coats-pace = Zeit für eine Schicht auf { "1 m2" }
coats-first = Erste Schicht auf rohem Holz
coats-later = Jede weitere Schicht
coats-brush = Rest im Pinsel
coats-tray-area = Benetzte Fläche der Schale
coats-mix = Harz für alle Schichten
    .rough = mit Reserve, Werkzeug, Schale, aufgerundet. Je nach Holz: erste { $first }, weitere { $later }.
coats-first-mix = Erste Schicht
    .rough = zu mischen, aufgerundet (aus dem Gedächtnis). Erste wiegen und eingeben.
coats-later-mix = Jede weitere Schicht
coats-film = Film der nächsten Schicht
    .rough = ohne Lösemittel verdunstet nichts
coats-heaviest = Dickste Schicht, die hält
    .rough = abgerundet (aus dem Gedächtnis, halb genutzt). Dickes Harz hält mehr, dünnes weniger.
coats-three = Drei Schichten, nicht zwei
    .text = Auf rohem Holz, das nass wird, drei (übliche Praxis).
coats-whole = Film insgesamt, mindestens
    .rough = ohne das, was ins rohe Holz zieht
coats-edge = Fläche der Kanten
coats-left = Rest in Werkzeug, Schale, Bechern
    .rough = jede Schicht für sich (aus dem Gedächtnis)
coats-lasts = Eine Schicht dauert
    .rough = Töpfe nacheinander gemischt, aufgerundet
coats-rising = Bei sinkender Temperatur beschichten
    .text = Rohes Holz, das warm wird, bläst Blasen. Spät am Tag im Schatten.
coats-runs = Diese Schicht läuft
    .text = Höchstens { $heaviest } rollen, dafür mehr Schichten.
coats-cold = Zu kalt
    .text = Erst das Holz wärmen: Unter { $lowest } härtet dieser Härter vielleicht nie.
coats-sand = Zwischen zwei Schichten schleifen
    .text = Zeit ohne Schleifen endet vorher. Waschen, trocknen, schleifen, beschichten.
coats-no-window = Keine Uhrzeit für diese Schichten
    .text = Härtertempo oder Stunden vom Etikett eingeben, Tag länger als eine Schicht.
coats-today = Schichten, die heute gehen
    .text = { $today } von { $count }
    .rough = jede so früh wie möglich, bei gleicher Temperatur
coats-start = Schicht { $place } beginnen
    .text = von { $earliest } bis { $latest }
    .sand = ab { $earliest }, vorher waschen und schleifen
    .rough = Daumen im Handschuh aufdrücken: hält die nächste, noch eine Delle. Etikett geht vor.
sheathing-fold =
    .glass = Glas und Harz
    .cloth = Bahnen und Überlappung
    .weave = Gewebe füllen
sheathing-cloth-weight = Gewebe, Gewicht trocken
sheathing-cloth-width = Gewebebreite
    .narrow = Zu viele Bahnen. Breiteres Gewebe eingeben.
sheathing-cloth-layers = Lagen Gewebe
sheathing-ply-wanted = über dem Gewebe
sheathing-way = Richtung der Bahnen
    .fewest = quer, wenn ein Zehntel weniger
    .along = der Länge nach
    .across = quer zur Länge
sheathing-lap = Überlappung zweier Bahnen
    .wide = Überlappung: weniger als die halbe Gewebebreite
sheathing-edge-spare = Gewebe über jede Kante
sheathing-glass-share = Glas nach Gewicht
    .help = Unsere Einschätzung: { $buying } zum Einkauf, über Kopf weniger.
sheathing-glass-volume = Glas nach Volumen, wenn bekannt
    .help = Gilt statt Glas nach Gewicht.
sheathing-drinks = Rohes Holz unter dem Gewebe nimmt auf
sheathing-weave-depth = Tiefe des Gewebes
    .help = Leer: { $share } der Dicke einer Lage (unsere Einschätzung, { $range }).
sheathing-weave-empty = Anteil dieser Tiefe ohne Glas
sheathing-sanded-off = Über dem Glas zum Schleifen
sheathing-fill-coat = Füllschicht, höchstens
sheathing-wet-pace = Zeit zum Tränken und Abziehen von { "1 m2" }
sheathing-dry = Holz zuerst versiegeln
    .text = Trocken auf rohem, senkrechtem Holz bleibt es mager. Erst beschichten, auflegen, wenn es klebt.
sheathing-mix = Harz insgesamt
    .rough = Tränken, Füllen, Reserve, Reste, aufgerundet (aus dem Gedächtnis und unsere Einschätzung)
sheathing-cloth = Gewebe
    .rough = alle Lagen mit Überlappung, aufgerundet
sheathing-fill = Gewebe füllen
    .text = { $count ->
          [one] { $mass } in { $count } Schicht zu { $each }
         *[other] { $mass } in { $count } Schichten zu { $each }
      }
    .rough = Schleifen nimmt { $sanded } oder schneidet Glas an (unsere Einschätzung)
sheathing-stays =
    .rough = Glas und Harz, nach dem Schleifen, aufgerundet
sheathing-pour-out = Ansatz auf das Gewebe gießen
    .text = Sofort. Überschuss abziehen, sonst schwimmt Gewebe.
sheathing-ply = Abreißgewebe spart eine Füllschicht
    .text = Spart auch das Waschen, nimmt Harz mit.
sheathing-deep-weave = Gewebe tiefer als dick?
    .text = Tiefer als alle Lagen. Einheit prüfen.
sheathing-strips = Bahnen auf Fläche { $place }
    .no-join = keine Überlappung
    .joins = Mitte jeder Überlappung ab der ersten Kante: { $joins }
sheathing-glass = Glas, gelegt
sheathing-wet =
    .rough = { $share } Glas nach Gewicht
sheathing-drinks-line = Harz ins rohe Holz
sheathing-thick = Dicke aller Lagen
sheathing-depth = Tiefe des Gewebes
    .rough = unsere Einschätzung, wenn nichts eingegeben
sheathing-lapped = Fläche der Überlappungen
sheathing-drawing = Gewebebahnen
    .told = { $count } Gewebebahnen. Mitte jeder Überlappung ab der ersten Kante: { $joins }
    .told-one = Eine Bahn
fairing-depths = Messungen unter der Straklatte
    .help = Über die Fläche verteilt, hohe Stellen als 0: 0 : 1,5 : 2. Gilt statt der Tiefe.
fairing-depth = Mittlere Tiefe
fairing-light = Füllstoff zum Spachteln
    .dry = kein Harz zwischen Körnern: { $share }, höchstens { $most }
fairing-sanded = Wieder abgeschliffen
fairing-dust = Staub beim Schleifen
    .text = Staubmaske und Schutzbrille, Staub absaugen. Nur hart Ausgehärtetes schleifen.
fairing-placed = Spachtel auftragen
    .rough = alle Aufträge, mit Verlusten, aufgerundet (Füllstoff aus dem Gedächtnis)
fairing-mix = Harz darin
    .rough = mit Reserve, aufgerundet. Füllstoff: { $filler } für das Aufgetragene.
fairing-pots =
    .caution = Jeden Ansatz sofort auftragen. Leichter Spachtel hält die Wärme.
fairing-passes = Aufträge
    .rough = an der tiefsten Stelle, je höchstens { $most } (unsere Einschätzung)
fairing-stays =
    .rough = aufgerundet. Abgeschliffen: { $sanded }.
fairing-heavy = Füllstoff zum Spachteln?
    .text = Trägt Last, schwer zu schleifen.
fairing-dark = Nicht dunkel streichen
    .text = Phenol-Microballons erweichen in voller Sonne (übliche Praxis). Weiß streichen.
fairing-never = Nie unter Glasband
    .text = Trägt nichts: keine Hohlkehle, kein Leim, keine Schraube.
fairing-mean = Mittlere Tiefe
    .read = Mittel der Messungen
    .typed = wie eingegeben
fairing-density = Dichte des Spachtels
    .rough = nach Volumen von Harz, Füllstoff und Luft
gluing-fold =
    .bond = Leim, Festigkeit
    .clamps = Zwingen
gluing-thickness = Dicke einer Lage
gluing-width = Breite einer Lamelle
gluing-scarf-width = Breite der Platte
gluing-scarf-of = Material
    .ply = Sperrholz
    .wood = Massivholz
gluing-ratio = Schäftung, zu 1
    .help = Sperrholz { $ply } (übliche Praxis). Massivholz { $wood } oder flacher (veröffentlicht).
gluing-piece =
    .short = Schäftung länger als dieses Teil
gluing-piece-one = Erstes Teil, Länge
gluing-piece-two = Zweites Teil, Länge
gluing-strips = Lamellen
gluing-length = Länge
gluing-bend = Gewünschter Biegeradius
    .help = Leer: gerade.
gluing-to-hull = Auch am Rumpf verleimt
    .no = nein
    .yes = ja
gluing-gaps = Spalt
    .help = Wenn er wechselt, mehrere in gleichen Abständen: 0,5 : 2
gluing-gap-depth = Tiefe der Kante
gluing-copies = Anzahl
gluing-prime = Reines Harz je Fläche
gluing-end-prime = Hirnholz, mal so viel
gluing-bond-line = Dicke der Leimfuge
gluing-squeezed = Herausgedrückt
gluing-soak = Warten nach dem Grundieren
gluing-panel-strength = Biegefestigkeit der Platte
    .help = Vorgabe: höherer veröffentlichter Wert, { $range }. Quer zur Faser weniger.
gluing-pressure = Druck auf die Leimfläche
gluing-clamp = Eine Zwinge drückt mit
gluing-apart = Abstand der Zwingen, höchstens
gluing-mix = Harz insgesamt
    .rough = Grundieren und Leim mit Reserve und Becher, aufgerundet (unsere Einschätzung)
gluing-neat = Zuerst rein, auf beide Flächen
    .rough = Hirnholz mehr. Wo matt, wieder, nie bis zur Haut warten.
gluing-glue = Dann angedickt, bis es haftet
    .stands = Dann Spachtelmasse, bis sie steht
    .rough = auf eine Fläche, mit dem, was austritt, aufgerundet
gluing-stays =
    .rough = Grundierung und Leimfuge, aufgerundet
gluing-bond = Leimfläche
gluing-resin = Harz im angedickten Leim
    .rough = Holzmehl als Füllstoff (aus dem Gedächtnis)
gluing-lightly = Leicht zwingen
    .text = Drücken, bis überall etwas austritt, nicht mehr: sonst mager (übliche Praxis).
gluing-steep = Schäftung zu steil
    .text = Mindestens { $wanted } zu 1 schneiden.
gluing-wide = Zu weit für Leim
    .text = Über { $gap } stehende Spachtelmasse, Spalt hinterlegen (unsere Einschätzung).
gluing-tight = Lamellen können brechen
    .text = Radius kleiner als { $times } mal die Dicke einer Lage (unsere Einschätzung). Dünnere nehmen oder probieren.
gluing-two-pots = Zwei Ansätze mischen
    .big = { $mass } oder mehr in einem Becher kann qualmen. Erst reines Harz mischen, Leim nach dem Warten, in mehreren Bechern.
    .text = Grundieren, Warten, Auftragen dauern { $needed }, der Becher { $lasts }. Leim danach mischen.
gluing-bevel = Länge der Schräge
gluing-joined = Länge nach dem Leimen
    .rough = abgerundet, nicht besäumt
gluing-shear = Schub in der Leimfuge
    .rough = wenn die Platte bricht. Schätzung, keine Zulassung.
gluing-pull = Zug quer zur Leimfuge
gluing-butt = Stumpf, keine Schäftung
    .text = Etwa { $share } der Holzfestigkeit. Schäftung: { $times } mal den Querschnitt als Leimfläche (veröffentlicht).
gluing-plans = Bauplan und Klassenregeln gehen vor
    .text = Probestück leimen und brechen. Hitze und Nässe schwächen.
gluing-clamps = Zwingen
    .rough = mindestens, mit Zulage darunter (unsere Einschätzung)
gluing-lines = Leimfugen
gluing-former = Radius der Form
    .rough = mindestens diese Rückfederung: gleiche Lamellen, steifer Leim. Weicher oder warmer federt mehr: probieren.
gluing-strain = Dehnung der Außenfasern
gluing-one-pot = Ein Ansatz reicht für beides
    .text = zuerst grundieren, Rest andicken: { $needed } von { $lasts }
    .rough = bis zum Auftragen. Kleinerer Rest hält länger.
fillets-panel = Dicke der stehenden Platte
fillets-face-pull = Deckfurnier reißt ab bei
fillets-radius = Radius, auf der Seite mit { $angle }
    .both = Radius, auf beiden Seiten
    .rough = { $times } mal die Platte, aufgerundet. Übliche Praxis: { $low } bis { $high } mal. Schätzung, keine Zulassung.
fillets-putty =
    .rough = beide Seiten, mit Verlusten, aufgerundet
fillets-foot = Hohlkehle reicht an jeder Seite
fillets-model = Wie gerechnet
    .text = Fuß trägt in Biegung wie die Platte, bis das Deckfurnier bei { $pull } abreißt (unsere Einschätzung).

## Boat

boat-fold =
    .phase = In Baureihenfolge
    .faces = Schichten, Gewebe und Leim
    .stock = Rollen und Reststücke
    .work = Arbeitsweise
    .buy = Einkaufsliste
    .cut = Zuschnittliste
    .joint = Jede Verbindung
    .wall = Karten für die Wand
boat-joints = Verbindungen
    .none = Noch keine Verbindung: hinzufügen
boat-surfaces = Flächen, Leim und Spachtel
boat-surface = Fläche oder Leimfuge
    .nth = { $count }: { $work }
boat-joint = Verbindung
    .nth = Verbindung { $count }
    .now = im nächsten Ansatz
    .radii = R { $radii }
    .flat = flaches Glasband
    .putty = { $putty } Spachtelmasse in der Naht
    .tape = { $tape } Glasband
    .copies = alle zusammen
    .capped = begrenzt durch das Glasband
    .width = nach der Breite der Hohlkehle
    .flank = je Seite nur { $flank } Glasband auf blanker Platte
boat-joint-refused = { $joint }: { $why }
boat-joint-name = Name
boat-joint-angle =
    .help = Einer, oder mehrere entlang der Naht: 95 : 120 : 150
boat-joint-length = Länge
    .help = Gesamt, oder je Abschnitt: { "0.8 : 1.4 m" }
    .stretches = eine Länge, oder eine je Abschnitt eingeben
boat-joint-gap = Spalt
boat-joint-copies = Anzahl
boat-joint-width = Breite des Glasbands
    .help = Eine für alle Lagen, oder eine je Lage: { "75 : 100 mm" }
# each, in und out werden in allen Sprachen so eingegeben, wie sie hier stehen
boat-joint-faces = Flächen der Lagen
    .help = Je Lage „beide“, „innen“ oder „außen“. Leer: beide.
    .words = je Lage „beide“, „innen“ oder „außen“
boat-joint-strip-bare = Verstärkungsstreifen ist Glasband: Lage hinzufügen
boat-joint-radius =
    .help = Leer: nach der Kehldicke.
boat-pour = Nächster Ansatz
    .later = nicht dabei
    .now = dabei
    .none = Zusammen mischen: je „dabei“ wählen, zu „Mischen“ tippen.
boat-system = Harzsystem
boat-packs-sold = Gebindegrößen des Harzes
    .help = Jedes mit Härter im Verhältnis.
    .wide = Gebindegrößen des Harzes: größte mehr als { $most }-mal die kleinste. Eine entfernen
boat-prices = Preis je Gebinde
    .help = In Reihenfolge der Größen, mit Härter.
    .many = Je Größe einen Preis eingeben
boat-people = Personen
boat-temperature = Temperatur von Holz und Luft
    .help = Zählt die Ansätze. Leer: { $warmth }.
boat-most = Größte gewünschte Mischung
    .little = Größte gewünschte Mischung: mehr, als in Beutel und Becher bleibt
boat-filler-dose = Füllstoff auf { "100 g" } Epoxid
boat-roll = Rollenlänge Glasband, Gewebe
boat-ply-roll = Rollenlänge Abreißgewebe
boat-remnants = Vorhandene Reststücke
boat-remnant = Reststück
boat-remnant-length = Länge
boat-remnant-name = Name
boat-least = Kleinster Hohlkehlradius
boat-reach-long = Stücke nicht länger als eine Rolle { $what }
boat-thousands = { $thousands } { $rest }
boat-many-angles = { $joint }: alle Verbindungen: { $count } Winkel, höchstens { $most }. Weniger eingeben oder Boot teilen
boat-many-pieces =
    .copies = { $joint }: alle Verbindungen: { $count } Stücke Glasband und Abreißgewebe, höchstens { $most }. Weniger eingeben oder Boot teilen
    .length = { $joint }: alle Verbindungen: { $count } Stücke Glasband und Abreißgewebe, höchstens { $most }. Kürzere Naht eingeben oder Boot teilen
boat-many-faces =
    .copies = { $joint }: alle Verbindungen: { $count } Arbeitsflächen, höchstens { $most }. Weniger eingeben oder Boot teilen
    .length = { $joint }: alle Verbindungen: { $count } Arbeitsflächen, höchstens { $most }. Kürzere Naht eingeben oder Boot teilen
boat-many-rolls = { $length } { $what }: mehr als { $most } Rollen je { $roll }. Längere Rollen eingeben oder Boot teilen
boat-batches = Zu mischen
    .text =
        { $count ->
            [one] { $count } Ansatz
           *[other] { $count } Ansätze
        }
boat-counted =
    .plan = { $count } nach dem Plan der Nähte
    .mass = kein Plan für alle Nähte: nach größter Mischung
    .coats = Schichten nach Gewicht
    .warmth = bei { $warmth }
    .surplus = { $surplus } zu viel: kleinste genau messbare
    .surfaces = { $count } für Flächen und Leim
boat-putty = Spachtelmasse für Kehlen, gesamt
    .rough =
        { $count ->
            [one] 1 Ansatz
           *[other] { $count } Ansätze
        }, aufgerundet, mit Verlusten und Reserve
boat-added =
    .rough = Spachtelmasse, Glas, Harz in der Naht, ohne Verluste
boat-seams = Nähte gesamt
    .rough =
        { $count ->
            [one] 1 Naht
           *[other] { $count } Nähte
        }, alle gezählt
boat-filler = Füllstoff
    .rough = { $dose } auf 100 Teile Epoxid nach Gewicht, ±{ $doubt } % (aus dem Gedächtnis), aufgerundet, mit { $spare } Reserve
# hinter „Spachtelmasse für“
boat-chosen =
    { $count ->
        [one] { $count } Verbindung
       *[other] { $count } Verbindungen
    }
    .all = alle Verbindungen
boat-mixed = Epoxid gesamt, zu mischen
    .rough = { $putty } in Spachtelmasse, { $liquid } flüssig, { $spare } Reserve
    .surfaces = { $seams } für Nähte, { $surfaces } für Flächen und Leim, mit Reserve
boat-resin = Harz, zu kaufen
    .and = { $parts } und { $part }
    .rough = nach Etikett, aufgerundet, mit { $spare } Reserve
    .rough-doubt = nach Etikett ({ $doubt }), aufgerundet, mit { $spare } Reserve
boat-packs = Gebinde
    .each = { $count } × ({ $parts })
    .rough = Paare im Verhältnis, kleinster Rest: { $over } { $part }
    .none = Keine: Das Regal reicht
boat-shelf = Im Regal, nicht zu kaufen
    .rough = gibt { $mixes }
    .rough-day = gibt { $mixes }, aufbrauchen bis { $day }
boat-cost = Preis dieser Gebinde
    .rough = { $boat } am Boot, { $waste } in Bechern, Werkzeug und Reserve, { $left } bleibt übrig
boat-cheapest = Gebinde, kleinster Preis
    .rough = Preis { $cost }, { $over } { $part } bleibt übrig
boat-ply =
    .pieces =
        { $count ->
            [one] { $count } Stück
           *[other] { $count } Stücke
        }
boat-from-rolls =
    { $count ->
        [one] { $count } Rolle, davon { $length } geschnitten
       *[other] { $count } Rollen, davon { $length } geschnitten
    }
    .none = keine neue Rolle nötig
    .least = Suche abgebrochen: mindestens { $count } nötig
    .saved = Suche abgebrochen: höchstens { $length } weniger
boat-gloves = Handschuhe
    .text = { $count } Paar
    .rough = Personen × (Ansätze + 1), oder doppelt
boat-bags = Beutel für Spachtelmasse
    .rough = einer je Ansatz Spachtelmasse
boat-cups = Becher
boat-sticks = Rührstäbe
boat-mix-each = einer je Mischung
boat-tray = Folie für die Schale
    .text =
        { $count ->
            [one] { $count } Bogen
           *[other] { $count } Bögen
        }
    .rough = einer je Ansatz Tränkharz
boat-brushes = Pinsel oder Schaumrollen
    .rough = einer je flüssigem Ansatz
boat-blanks = Rohe Spachtel
    .rough = einer je Radius, auf den Millimeter
boat-backing = Klebeband für die Rückseite
    .rough = hinter jedem Spalt, plus { $more } %
boat-ties = Drahtbindungen
    .rough = eine je { $each } Naht ({ $mark })
boat-abrasive = Schleifblätter
    .rough = eins für { $tape } Glasband ({ $mark })
boat-cartridges = Filter
    .text =
        { $count ->
            [one] { $count } Satz
           *[other] { $count } Sätze
        }
    .rough = je Person. Dampf und Staub brauchen andere Filter: „Sicherheit“.
boat-spreaders = Spachtel zum Zuschneiden
    .each = R { $radius }
    .text = { $radii } { $unit }
    .rough = Hohlkehle an jeder Stelle, auf den Millimeter
boat-phase =
    .glue = Leimen
    .tack = Heften
    .inside = Nähte innen
    .outside = Nähte außen
    .sheathe = Mit Gewebe überziehen
    .fair = Spachteln
    .seal = Versiegeln, erste Schicht
    .coat = Beschichten
    .resin = Epoxid
    .putty = Spachtelmasse
    .glass = Glas
    .light = für allen Spachtel, nach Gewicht
boat-saved =
    .cloth = Leichter ohne Gewebe
    .coat = Leichter ohne die letzte Schicht
    .fairing = Leichter ohne Spachtel
    .rough = bliebe weniger am Boot
boat-wall =
    .putty = Spachtelmasse auftragen: { $putty }
    .resin = Tränkharz: { $resin } ohne Becher, Rolle, Reserve
    .spreader = Spachtel { $radii }
    .tape = Glasband { $width }: { $numbers }
boat-plan = Diese Nähte planen
    .insides = Innenseiten planen
    .outsides = Außenseiten planen, Rumpf gedreht
    .faces = Schichten und Gewebe planen
    .part = { $plan }: Stücke { $first } bis { $last } von { $all }
demo-boat =
    .keel = Kiel
    .chine = Kimm
    .transom-bottom = Spiegel am Boden
    .transom-side = Spiegel an der Seite
    .bow-transom = Bugspiegel
    .middle-bulkhead = Mittelschott
    .fore-bulkhead = Vorderes Schott
    .side-butt = Stoß der Seitenplatten
    .skeg = Skegleiste
    .gunwale = Schäftung der Scheuerleiste
    .seats = Hohlkehlen der Sitze
    .cloth = Gewebe am Boden
    .fairing = Spachteln am Boden
    .coats = Innen beschichten

## Cutting

cut-roll = Rolle { $count }
cut-remnant = Reststück, { $length }
    .named = { $name }, { $length }
    .nth = Reststück { $count }
    .left = { $remnant }: Rest
    .rough = { $used } von { $length } abgeschnitten
    .untouched = nicht geschnitten
cut-from = { $what }: { $stock }
    .rough = in der Reihenfolge des Auflegens, Rest { $left }
cut-pieces = { $length }: { $numbers }
cut-numbers = { $first } bis { $last }
cut-left = Rest { $length }
cut-strips =
    { $what }: { $count } { $count ->
        [one] Stück
       *[other] Stücke
    }. Die Liste unten zeigt, woraus.

## Drawings

sheet-tape = Band { $width }
    .none = Kein Glasband.
    .told = Glasband { $widths } breit, dicker gezeichnet.
section-across = Quer zur Naht
section-along = Entlang der Naht
    .told = Schnitte entlang der Naht, gleicher Maßstab: { $stations }.
section-station =
    .cove = bei { $at } { $angle }, Radius { $radius }
    .flat = bei { $at } { $angle }, flaches Glasband
    .short = flach
# in der Zeichnung neben den Linien: kurz, höchstens etwa fünf Buchstaben vor dem Maß
section-radius = R { $radius }
section-throat = Kehldicke { $length }
section-tack = heften { $length }
section-gap = Spalt { $gap }
section-inside-up = Schnitt im Maßstab, innen oben.
section-corner = Im Maßstab: Masse kariert, Band gestrichelt
    .told = Zwei Platten, { $thickness } dick, { $angle } Grad.
    .apart = Zwei Platten, { $thickness } dick, { $angle } Grad, { $gap } Abstand.
section-cove = Hohlkehle mit Radius { $radius }, { $throat } tief von der Ecke aus, { $tack } auf jeder Platte.
    .none = Keine Hohlkehle: nur flaches Glasband.
section-outside =
    .round = Außenkante: Radius { $radius }.
    .flush = Außenkante bündig gefüllt.
    .sharp = Außenkante scharfkantig gefüllt.
section-flat =
    .apart = Schnitt im Maßstab. Zwei Platten in einer Ebene, { $thickness } dick, { $gap } Abstand, Spalt gefüllt.
    .butt = Schnitt im Maßstab. Zwei Platten in einer Ebene, { $thickness } dick.
    .strip = Schnitt im Maßstab. Eine Platte, { $thickness } dick.
section-bulkhead = Schnitt im Maßstab. Schott, { $thickness } dick, auf seiner Platte. Auf einer Seite { $one }, anderen { $other }.
    .cove = Hohlkehle mit Radius { $radius }, { $angle } Grad
    .flat = nur flaches Glasband, { $angle } Grad
    .measures = { $angle } und { $other }, { $thickness }

## Safety: cautions and what is said of each task

safety-task = Nächste Arbeit
    .any = Jede Arbeit
safety-powder = Welches Pulver
safety-cured = Wie weit ausgehärtet
    .unknown = Unsicher
    .soft = Gummiartig, Fingernagel drückt sich ein
    .hard = Hart, Staub ist trocken
safety-system = Harzsystem
    .fold = Dein Produkt
safety-rest = Mehr zu dieser Arbeit
safety-products = Übliche Gefahrenhinweise
safety-first = Zuerst
    .text = Sicherheitsdatenblatt, örtliche Vorschriften, zugelassene Fachleute gehen vor.
safety-powder-dust = Staubgrenzwert, Arbeitstag
# steht auf jeder Seite, solange nichts Dringenderes da ist
caution-reminder = Handschuhe und Schutzbrille an, bevor ein Gebinde aufgeht. Das Sicherheitsdatenblatt geht vor.
    .short = Handschuhe und Schutzbrille an vor dem Öffnen.
caution-in-place = { $label }. { $text }
caution-always-gloves = Hände
    .text = Schutzhandschuhe tragen: Nitril, zwei Paar. Nie Latex als einzige Schutzschicht. Nasse oder gerissene Handschuhe sofort ausziehen. Wie lange sie halten: ISO-374-Daten des Handschuhherstellers für dieses Produkt.
caution-always-sensitise = Haut
    .text = Kann allergische Hautreaktionen verursachen. Die Allergie bleibt ein Leben lang. Mit Seife und viel Wasser waschen. Nie Lösemittel.
caution-always-skin-first-aid = Auf der Haut
caution-always-eyes = Augen
    .text = Härter kann schwere Verätzungen der Haut und schwere Augenschäden verursachen. Schutzbrille auf, bevor ein Gebinde aufgeht.
caution-always-eyes-first-aid = In den Augen
caution-always-air = Luft
    .text = Bei Durchzug arbeiten. Kinder und andere fernhalten. Eine Staubmaske hält keine Dämpfe auf. Im Rumpf oder Tank: nur mit eigenem Plan und zugelassenen Fachleuten.
caution-always-heat = Heißer Ansatz
    .text = Angemischtes Harz heizt sich selbst auf. Ein voller Becher kann qualmen, Haut verbrennen und Feuer fangen. Nur mischen, was sich verarbeiten lässt. Heißes ins Freie auf bloßen Erdboden, nie unter einen Deckel. Dünn ausbreiten, wenn er noch fließt.
caution-always-dust = Staub
    .text = Pulver oder Schleifstaub: Staubmaske auf: EN 149 FFP2 oder FFP3, oder 42 CFR 84 N95 oder besser. Epoxid nie schleifen, bevor es ausgehärtet ist.
caution-always-waste = Reste
    .text = Reste im Freien dünn ausbreiten, aushärten lassen. Inhalt und Behälter nach örtlichen Vorschriften entsorgen. Freisetzung in die Umwelt vermeiden.
# $signal: Gefahr oder Achtung; $code: H330; $official: amtlicher Wortlaut ohne Punkt
caution-hot-now = Der Ansatz ist heiß
    .text = Ins Freie auf bloßen Erdboden, nie ein Deckel. Dünn ausbreiten, wenn er noch fließt.
caution-hull = Im Rumpf
    .text = Nur mit Luftzufuhr, geprüfter Luft, jemandem draußen und zugelassenen Fachleuten.
caution-poison = { $signal }, Produkt { $code }
    .text = { $official }.
caution-asthma = { $signal }, Produkt { $code }
    .text = { $official }.
caution-eyes = Schutzbrille auf: { $code }
caution-vapour = Lösemitteldampf
    .text = Keine Flamme, kein Funke, Durchzug. Gramm nachsehen.
    .short = Keine Flamme, kein Funke, Durchzug.
caution-uncured = Nicht ausgehärtet
    .text = Nicht schleifen: Staub von nicht ausgehärtetem Epoxid kann Allergien auslösen.
caution-big-pot = Großer Ansatz
    .text = { $amount } in einem Becher: kann qualmen. Teilen oder sofort in einer Schale ausbreiten.
    .short = { $amount } in einem Becher: kann qualmen.
    .in-sun = { $amount } in einem Becher: kann qualmen. Teilen oder im Schatten ausbreiten.
caution-warm-pot = Heute warm
    .text = Bei { $temperature } überhitzt ein Becher mit { $amount } eher. Weniger mischen und sofort ausbreiten.
    .short = Bei { $temperature } überhitzt ein Becher mit { $amount } eher.
    .in-sun = Bei { $temperature } überhitzt ein Becher mit { $amount } eher. Weniger mischen und im Schatten ausbreiten.
caution-hot-pot = Ansatz kann überhitzen
    .text = { $amount } in einem Becher gelassen: kann qualmen und brennen. Verarbeiten oder sofort in einer Schale ausbreiten.
    .short = { $amount } im Becher gelassen: kann qualmen und brennen.
    .left = { $amount } beisammen gelassen: kann qualmen und brennen.
    .in-sun = { $amount } in einem Becher gelassen: kann qualmen und brennen. Verarbeiten oder im Schatten ausbreiten.
caution-in-sun = In der Sonne
    .text = Erst in den Schatten, dann ausbreiten. Dünn in der Sonne wird es eher dick als im Becher im Schatten.
    .short = Erst in den Schatten, dann ausbreiten.
caution-short-pot = Wenig Zeit
    .text = Im Becher etwa { $minutes }. Erst alles bereitlegen.
    .short = Im Becher etwa { $minutes }.
# $filler: Name des Pulvers
caution-powder = { $filler }
    .text = Staubmaske und Schutzbrille auf, bevor der Sack aufgeht.
    .short = Staubmaske und Schutzbrille auf, bevor der Sack aufgeht.
    .other = Pulver
    .unnamed = Pulver
caution-sanding = Staub
    .text = Staubmaske tragen, Staub am Werkzeug absaugen.
caution-lasting = { $signal }, Produkt { $code }
    .text = { $official }.
caution-corrosive = { $signal }, Schutzbrille auf: { $code }
    .text = { $official }.
# $room: Volumen; $changes: Luftwechsel
caution-small-room = Wenig Luft
    .text = { $room }, { $changes } Luftwechsel pro Stunde: zwei Seiten öffnen, bevor ein Gebinde aufgeht.
caution-thick = Dicke Schicht
    .text = Spachtelmasse { $depth } tief: heizt sich auch am Boot auf. In zwei Gängen auftragen.
    .short = Spachtelmasse { $depth } tief: heizt sich auch am Boot auf.
caution-cold = Kalt
    .text = Gebinde im Wasserbad wärmen, nie mit Flamme. Kein Heizgerät mit Flamme.
    .short = Gebinde im Wasserbad wärmen, nie mit Flamme.
caution-blush = Erst waschen
    .text = Erst Wasser und Pad, dann schleifen. Sonst reibt es Aminröte ein.
caution-gloves = Handschuhe
    .text = Zwei Paar, dazu Schutzbrille. Nasse oder gerissene Handschuhe sofort ausziehen.
    .short = Zwei Paar, dazu Schutzbrille.
caution-wash = Ein Tropfen auf der Haut
    .text = Aufhören, mit Seife und viel Wasser waschen. Nie Lösemittel.
    .short = Aufhören, mit Seife und viel Wasser waschen.
caution-from-big = Große Masse in einem Becher
caution-from-big-warm = Große Masse in einem Becher, wenn es warm ist
caution-from-runs-away = Spitzentemperatur, ab der ein Ansatz überhitzt
caution-from-least-peak = Kleinste Masse mit Spitzentemperatur
caution-from-warm = Warme Luft
caution-from-cold = Kalte Luft
caution-from-hot = Heißer Ansatz
caution-from-short = Kurze Verarbeitungszeit
caution-from-few-changes = Wenig Luftwechsel
caution-from-small-room = Kleiner Raum
caution-from-thick = Dicke Spachtelmasse
task-open = Öffnen und abmessen
task-mix = Mischen
task-powder = Pulver zugeben
task-lay = Auflegen und entlüften
task-confined = Im Rumpf oder in engen Räumen
task-wipe = Mit Lösemittel abwischen
task-clean = Werkzeug reinigen
task-peel = Abreißgewebe abziehen, abwaschen
task-sand = Schleifen
task-hot = Heißer Ansatz
task-leftover = Reste
task-waste = Abfall
task-spill = Verschüttetes
task-fire = Feuer
topic-have = Bereithalten
topic-hands = Hände
topic-eyes = Augen
topic-breathing = Atmen
topic-skin = Haut
topic-clothes = Kleidung
topic-air = Luft
topic-fire = Feuer
topic-others = Unbeteiligte und Kinder
topic-never = Nie
topic-aid = Erste Hilfe
topic-stop = Wann aufhören
do-open-have = Handschuhe, Schutzbrille, Seife, Wasser, Papier, Beutel für Abfall.
do-open-eyes = Härter kann schwere Verätzungen der Haut und schwere Augenschäden verursachen. Beim Öffnen Gesicht weg.
do-open-stop = Nichts öffnen, das gewölbt ist, leckt oder kein Etikett hat.
do-mix-have = Bloßer Erdboden oder Schale im Freien für heiße Ansätze, freier Weg dorthin.
do-mix-fire = Angemischtes Harz heizt sich selbst auf. Nur mischen, was sich verarbeiten lässt. Bald aus dem Becher.
do-mix-never = Nie das Verhältnis ändern, damit es schneller oder langsamer aushärtet.
do-mix-stop = Wird der Becher warm: sofort ausbreiten.
do-powder-have = Maske auf. Messlöffel, Deckel, nasses Tuch.
do-powder-air = Kein Ventilator auf das Pulver. Dicht über dem Becher zugeben, einrühren, dann Luft herein.
do-powder-eyes = Pulver staubt beim Schütten auf. Schutzbrille tragen, eine normale Brille reicht nicht.
do-powder-breathing = Staub nicht einatmen. Dicht sitzende Halbmasken lassen höchstens ein Zehntel durch.
do-powder-fire = Holzstaub kann brennen. Funken fernhalten.
do-powder-never = Nie wegblasen. Nie trocken kehren.
do-powder-stop = Aufhören, wenn Staub im Licht schwebt oder das Atmen durch die Maske schwer wird.
do-lay-have = Mehr Handschuhe als gedacht. Platz für Nasses.
do-lay-eyes = Rollen spritzen. Schutzbrille oder Brille mit Seitenschutz tragen, vor allem über Kopf.
do-lay-clothes = Lange Ärmel, Overall oder Schürze, Knie und Haare bedeckt.
do-lay-never = Nie in nassem Harz knien. Nie mit nassem Handschuh ans Telefon.
do-lay-stop = Zieht es Fäden, wird warm oder zäh: aufhören, nie verdünnen.
do-confined-first = Nicht hineingehen ohne schriftlichen Plan, ein Mittel, um herausgezogen zu werden, eine geschulte Person draußen, die bleibt und nie nachsteigt, und zugelassene Fachleute, wo das Gesetz sie verlangt.
do-confined-tested = Vor dem Betreten die Luft messen, in dieser Reihenfolge: Sauerstoff 19,5 bis 22 %, brennbare Dämpfe unter einem Zehntel der unteren Explosionsgrenze, giftige Dämpfe.
do-confined-air = Dampf ist schwerer als Luft und liegt in der Bilge. Die ganze Zeit Luft per Schlauch zum Gesicht hin leiten und an der tiefsten Stelle hinaus.
do-confined-breathing = Eine Filtermaske hilft nicht, wo Sauerstoff fehlen oder sich Dampf sammeln kann. Nötig: Luft von außen, Schulung.
do-confined-fire = Ein verschütteter Becher Lösemittel kann einen Rumpf mit Dampf füllen. Kein Lösemittel, kein Funke, nur Lampen und Werkzeuge für solche Luft.
do-confined-never = Nie allein hinein, nie mit Lösemittel. Nie jemandem nachsteigen, der zusammengebrochen ist: Hilfe rufen.
do-confined-aid = Jemand ist drinnen zusammengebrochen: zuerst den Notruf wählen, Luft einblasen, nicht hineingehen.
do-confined-stop = Ventilator steht, Alarm oder Person draußen muss weg: alle raus.
do-confined-deck = Kann es warten: warten. Oder von außen, mit langem Stiel.
do-wipe-have = Wenig Lösemittel in Metallkanne mit Deckel, Lappen, Metalleimer mit Deckel im Freien.
do-wipe-hands = Dünnes Nitril hält Ketone nur Minuten zurück. Handschuh nach Sicherheitsdatenblatt des Lösemittels tragen. Nass: wechseln.
do-wipe-eyes = Lösemittel spritzt von Lappen und Pinsel. Schutzbrille tragen.
do-wipe-breathing = Frische Luft geht vor Maske.
do-wipe-skin = Lösemittel entfettet die Haut. Fernhalten.
do-wipe-clothes = Kunstfasern können Funken schlagen: Baumwolle. Nass: wechseln.
do-wipe-air = Lieber im Freien. Drinnen zählen Gramm, Minuten, Raum: „Luft“.
do-wipe-fire-low = Dampf kriecht am Boden und kann sich an Heizung, Schalter oder Ventilator entzünden.
do-wipe-never = Epoxid, das nicht ausgehärtet ist, nie mit Lösemittel von Mensch oder Handschuh wischen.
do-wipe-stop = Aufhören, wenn unter „Luft“ der Grenzwert überschritten ist oder der Ventilator steht.
do-clean-have = Erst Schaber und Papier, dann wenig Reiniger.
do-clean-breathing = Mit Deckel und Durchzug trägt man meist keine Maske.
do-clean-never = Reiniger nie in den Abfluss oder auf den Boden gießen.
do-peel-have = Wasser, Pad, saubere Lappen, dicke Handschuhe, Beutel für das Abreißgewebe.
do-peel-hands = Dicke Handschuhe gegen Kanten im Glas, wasserdichte zum Waschen.
do-peel-eyes = Splitter fliegen, wenn es abgeht. Schutzbrille tragen.
do-peel-breathing = Nass braucht keine Maske. Schleifen danach schon.
do-peel-skin = Fettiger Film (Aminröte): mit Wasser von Naht und Haut waschen.
do-peel-never = Aminröte nie schleifen. Erst abwaschen.
do-peel-stop = Ist es unter dem Abreißgewebe klebrig: aushärten lassen.
do-sand-unsure = Ausgehärtet? Fingernagel eindrücken, einmal schleifen. Abdruck, oder Staub klumpt: warten.
do-sand-soft = Staub von nicht ausgehärtetem Epoxid kann Allergien auslösen. Nicht schleifen. Wärmen, warten oder in Spänen abziehen.
do-sand-hard = Aufhören, wo Staub klumpt oder es riecht: nicht ausgehärtet.
do-sand-have = Absaugen am Werkzeug, oder nass schleifen. Maske. Kleidung, die dort bleibt.
do-sand-hands = Handschuhe aus Nitril, Stulpen unter den Ärmeln. Nichts Loses an die Scheibe.
do-sand-eyes = Staub zerkratzt die Augen. Dicht sitzende Schutzbrille tragen.
do-sand-skin = Ärmel unten, Handgelenke und Hals bedeckt. Danach kaltes Wasser und Seife, erst dann ans Gesicht.
do-sand-clothes = Kleidung, die dort bleibt. Absaugen, nie ausklopfen oder abblasen.
do-sand-air = Staub am Werkzeug absaugen. Luft ins Freie blasen, weg von Menschen.
do-sand-fire = Holzstaub kann brennen. Beutel im Freien leeren, weg von Funken.
do-sand-never = Epoxid nie schleifen, bevor es ausgehärtet ist.
do-gloves-pair = Zwei Paar aus Nitril. Das äußere wechseln: wenn nass oder gerissen, und nach den Zeiten des Handschuhherstellers.
do-gloves-type = Typ A, B, C: wie viele von 18 Prüfchemikalien er wie lange abhält. Epoxid ist nicht darunter. Beim Handschuhhersteller fragen.
do-goggles = Seitlich geschlossene Schutzbrille auf, bevor ein Gebinde aufgeht.
do-skin-wash = Tropfen auf der Haut: aufhören, mit Seife und viel Wasser waschen, dann weiter.
do-skin-covered = Ärmel unten, Handgelenke bedeckt. Nicht mit dem Handschuh ins Gesicht.
do-vapour-mask = Eine Staubmaske hält keine Dämpfe auf. Mit Durchzug trägt man meist keine Maske.
do-vapour-amine = Härterdampf kann der Lunge schaden und geht durch die Haut. Grenzwert: 1 ppm für Diethylentriamin über einen Arbeitstag, 0,1 mg/m³ für m-Xylylendiamin zu jeder Zeit. Härter ohne bekannten Grenzwert kann ebenso schaden.
do-vapour-filter = Gasfilter laut Sicherheitsdatenblatt: Typ A gegen organische Dämpfe, die über { "65 degC" } sieden, AX für darunter (Aceton), K für Ammoniak und organische Derivate.
do-dust-mask = Vor dem Staub: Staubmaske auf: EN 149 FFP2 oder FFP3, oder 42 CFR 84 N95 oder besser.
do-mask-fit = Eine Maske muss dicht sitzen. Mit Bart nicht.
do-air-through = Türen und Fenster auf, zwei Seiten, Luft im Rücken.
do-no-flame = Keine Flamme, kein Heizgerät mit Flamme, nicht rauchen.
do-others-away = Kinder, Tiere, andere fernhalten. Deckel auf Gebinde, Becher beschriften, auch für eine Minute.
do-no-solvent-on-skin = Nie Lösemittel auf die Haut: Es trägt Harz hinein.
do-no-latex = Nie Latex als einzige Schutzschicht tragen.
do-no-food = Nie beim Harz essen, trinken, rauchen. Nie in einem Trinkbecher mischen.
do-aid-burn = Verbrennung: 20 Minuten kühles fließendes Wasser. Nicht abziehen, was klebt. Ärztliche Hilfe holen.
do-stop-rash = Juckreiz, Ausschlag, geschwollene Augen oder enge Brust: für heute aufhören, ärztliche Hilfe holen. Die Allergie bleibt ein Leben lang.
do-stop-dizzy = Kopfschmerzen, Schwindel oder man riecht nichts mehr: sofort an die frische Luft.
do-sheet-at-hand = Sicherheitsdatenblätter, auf Papier oder Telefon. Ihre Werte gehen vor.
do-hot-have = Freier Weg ins Freie, bloßer Erdboden oder Schale aus Metall, Metalleimer, Lederhandschuhe, Gartenschlauch.
do-hot-hands = Einen qualmenden Becher nicht in dünnen Handschuhen tragen: Sie schmelzen. Metalleimer oder Zange nehmen.
do-hot-eyes = Kann spritzen. Schutzbrille auf, Gesicht weg.
do-hot-breathing = Rauch nicht einatmen. Keine Maske hier ist dafür.
do-hot-skin = Heißes Harz klebt und brennt weiter. Ärmel unten.
do-hot-clothes = Kunstfasern schmelzen auf der Haut: weit weg bleiben.
do-hot-air = Ins Freie, Türen auf. Dort bleiben, wo der Wind herkommt.
do-hot-fire = Ins Freie auf bloßen Erdboden, weg von allem, was brennt. Dünn in einer Schale ausbreiten, wenn er noch fließt.
do-hot-others = Alle aus dem Rauch. Niemand beugt sich über den Becher.
do-hot-never = Nie einen Deckel darauf, nie in den Müll.
do-hot-stop = Qualmt er und lässt sich nicht mit ausgestrecktem Arm tragen: weggehen, Feuerwehr rufen.
do-leftover-have = Flache Schale mit Folie, im Freien, unter Dach.
do-leftover-fire = In einem Becher können Reste noch nach Stunden qualmen und brennen. Im Freien dünn ausbreiten, höchstens einen Finger dick.
do-leftover-others = Kinder und Tiere fernhalten, bis alles hart ist.
do-leftover-never = Nie einen Deckel darauf. Nie alle in einen Becher.
do-leftover-stop = Wird sie warm: dünner ausbreiten, weiter weg vom Haus.
do-waste-have = Metalleimer mit Deckel im Freien, Beutel, Etiketten, die den Inhalt nennen.
do-waste-hands = Nur mit Handschuhen. Sie auf links abziehen, in den Beutel.
do-waste-eyes = Schutzbrille tragen beim Umgießen und beim Ausdrücken von Beuteln.
do-waste-breathing = Gegen Staub eine Staubmaske tragen. Sonst im Freien meist keine Maske.
do-waste-skin = Danach Hände und Arme mit Seife waschen.
do-waste-air = Abfall im Freien sortieren.
do-waste-fire = Lösemittellappen auf einem Haufen können sich entzünden. Flach im Freien trocknen oder unter Wasser in Metalleimer mit Deckel.
do-waste-never = Nie flüssiges Harz, Härter oder Lösemittel in den Müll oder Abfluss. Örtliche Vorschriften sagen, wohin.
do-waste-others = Abfall von Kindern fernhalten. Abholern sagen, was drin ist.
do-spill-have = Sand, Erde oder Katzenstreu, Schaber, Beutel, Seife, Wasser, Handschuhe.
do-spill-air = Türen und Fenster auf. Lösemittel drinnen: raus, keinen Schalter berühren, bis die Luft frisch ist.
do-spill-fire = Angemischtes Harz oder Härter kann sich in einem Haufen Sägemehl oder Papier aufheizen. Sand nehmen.
do-spill-stop = Dauert es, oder läuft es in einen Abfluss: Hilfe rufen.
do-fire-have = Schaum-, Pulver- oder CO2-Löscher an der Tür, allen bekannt. Notrufnummer.
do-fire-fire = Kleines Feuer, Tür im Rücken: einmal löschen. Sonst raus, Tür zu, Feuerwehr rufen.
do-fire-breathing = Epoxidrauch ist giftig. Tief bleiben, raus.
do-fire-eyes = Rauch nimmt die Sicht. Den Fluchtweg auch tastend finden.
do-fire-skin = Kleidung brennt: stehen bleiben, hinlegen, wälzen, Wasser darauf.
do-fire-air = Ventilator aus. Türen hinter dir zu.
do-fire-others = Zuerst alle raus und zählen.
do-fire-never = Nie Wasserstrahl auf brennendes Lösemittel. Nie wieder hinein.
do-fire-stop = Löscht ein Löscher es nicht: raus.
facts-cautions-always = Warnungen, die immer gelten
facts-cautions-moment = Warnungen für den Moment
facts-caution-from = Grenzen der Warnungen
facts-do-wet = Was tun: nasses Epoxid
facts-do-between = Was tun: zwischen Lagen
facts-do-shared = Was tun: mehrere Arbeiten
facts-do-trouble = Was tun: Notfall

## First aid and hazard statements

aid-hot = Ansatz qualmt oder brennt
aid-112 = In der EU
    .text = In der EU von jedem Telefon aus 112 wählen.
aid-sheet = Zuerst gilt das Sicherheitsdatenblatt
    .text = Für Produkte, die Haut und Augen verätzen, wie es Härter kann.
    .rough = Wortlaut der P-Codes: { $source }
aid-water = Bereithalten
    .text = Sauberes Wasser für { $minutes } Minuten: { $water }.
    .rough = { $source }; aufgerundet
aid-call = ANRUFEN
aid-clothes = KLEIDUNG
# steht hinter einem amtlichen Schritt
aid-eyes-minutes = Mindestens { $minutes } Minuten spülen, auch auf dem Weg zum Arzt.
aid-eyes-lids = Augenlider offen halten.
aid-skin-minutes = Mindestens { $minutes } Minuten spülen.
aid-skin-hardener = Bei Härter: erst spülen, unter dem Wasser ausziehen, weiter spülen.
aid-swallowed-rest = Ruhen. Zum Arzt gehen.
aid-inhaled-upright = Halb aufrecht lagern. Beschwerden können erst nach Stunden kommen.
aid-call-doctor = In jedem Fall zum Arzt.
aid-call-label = Etikett und Sicherheitsdatenblatt bereithalten.
smoking-pot-out = Alle raus. Dort bleiben, wo der Wind herkommt. Rauch nicht einatmen.
smoking-pot-carry = Lässt er sich noch halten? Schutzbrille auf, Lederhandschuhe oder Zange. Ins Freie auf bloßen Erdboden oder Metall.
smoking-pot-spread = Dünn ausbreiten, wenn er noch fließt. Nie einen Deckel darauf, nie in den Müll.
smoking-pot-water = Nie Wasser hinein: Kann spritzen. Kaltes Wasser um den Becher, in einem Metalleimer, kann bremsen.
smoking-pot-leave = Brennt er, oder lässt er sich nicht tragen: raus, Tür zu, Feuerwehr rufen.
smoking-pot-burns = Nur kleines Feuer löschen, Tür im Rücken: Pulver, Schaum, CO2 oder Wassersprühstrahl. Gebinde daneben mit Wassersprühstrahl kühlen.
smoking-pot-watch = Stundenlang beobachten, bis er kalt ist.
aid-rinsing-minutes = Augen oder Haut spülen, mindestens
aid-rinsing-water = Wasser einer Augendusche pro Minute
calls-numbers = Notrufnummern
    .fold = Eigene Notrufnummern
calls-none = Noch keine Notrufnummern
    .text = In „Ausrüstung“ eintragen. Bleibt auf diesem Telefon.
calls-ambulance = Rettungsdienst
calls-poison = Giftnotruf
calls-person = Eine Person
# ein Code vom Sicherheitsdatenblatt des Produkts
own-code = Dein Produkt, { $code }
    .rough = vom Etikett; Wortlaut { $where }
    .unknown = Unbekannt, behalten. Im Sicherheitsdatenblatt nachsehen.
    .letters = Unbekannt. Im Sicherheitsdatenblatt nachsehen.
# amtlicher Wortlaut ohne Punkt am Ende
own-code-ended = { $words }.
own-code-others = Auf anderen Etiketten: { $words }
own-code-signal = Signalwort
usual-product = { $codes }. { $about } Das Sicherheitsdatenblatt geht vor.
    .no-codes = { $about } Das Sicherheitsdatenblatt geht vor.
# was jemand hört, der das Zeichen nicht sieht
pictogram-told = Rote Raute, darin: { $picture }
# die Namen der Zeichen: Anhang V der CLP-Verordnung nennt sie Flamme, Ätzwirkung, Totenkopf mit gekreuzten Knochen, Gesundheitsgefahr, Ausrufezeichen, Umwelt
pictogram-bomb = Explodierende Bombe, GHS01
    .picture = Bombe, die birst: kann explodieren
pictogram-flame = Flamme, GHS02
    .picture = Flamme über einer Linie: brennt
pictogram-oxidiser = Flamme über einem Kreis, GHS03
    .picture = Flamme über einem Kreis: facht Feuer an
pictogram-gas = Gasflasche, GHS04
    .picture = Gasflasche: steht unter Druck
pictogram-corrosion = Ätzwirkung, GHS05
    .picture = Tropfen auf Hand und Balken: verätzt Haut und Augen
pictogram-skull = Totenkopf mit gekreuzten Knochen, GHS06
    .picture = Totenkopf mit gekreuzten Knochen: in kleinen Mengen giftig
pictogram-health = Gesundheitsgefahr, GHS08
    .picture = Stern auf der Brust: bleibende Schäden
pictogram-exclamation = Ausrufezeichen, GHS07
    .picture = Ausrufezeichen: reizt, macht allergisch oder schadet der Gesundheit
pictogram-environment = Umwelt, GHS09
    .picture = Toter Baum und Fisch: giftig für Leben im Wasser
usual-resin = Epoxidharz aus Bisphenol A
    .text = Mittlere Molmasse bis 700.
usual-hardener = Aminhärter
    .text = Verschieden. Manche auch: Asthma, H334.
usual-solvent = Lösemittel zum Abwischen
    .text = Typisch für Aceton, Alkohole und Butanon.
usual-powder = Pulver
    .text = Staub ist die Gefahr. Meist ohne Hinweis.
# die Tabellen dazu und ihre Zeilen
facts-hazard-statements = Gefahrenhinweise
facts-precautions = Sicherheitshinweise
facts-usual-products = Was übliche Produkte tragen
facts-pictograms = Gefahrenpiktogramme
facts-precedence = Piktogramm ersetzt ein anderes
    .every = jedes Ausrufezeichen
facts-first-aid = Erste Hilfe, Schritt für Schritt
    .swallowed = Verschluckt
    .inhaled = Eingeatmet
    .call = Anrufen
facts-first-aid-added = Erste Hilfe, Zusätze
facts-rinsing = Erste Hilfe, Spülen
facts-emergency = Notrufnummern
facts-smoking-pot = Ansatz qualmt, Schritt für Schritt
    .out = Raus
    .carry = Tragen
    .spread = Ausbreiten
    .water = Wasser
    .leave = Weg
    .burns = Brand
    .watch = Beobachten
# AMTLICHE TEXTE, NIE ÄNDERN. Deutscher Wortlaut der Verordnung (EG) Nr. 1272/2008 (CLP): Signalwörter Anhang I, Gefahrenhinweise Anhang III.
# Ohne Schlusspunkt, wie im Englischen hier (own-code-ended setzt ihn). Was nicht im EU-Recht steht (H227, H401, H402, P316, P317), hat einen eigenen Kommentar.
ghs-danger = Gefahr
ghs-warning = Achtung
# CLP, Anhang III, Teil 1, Tabelle 1.1
ghs-h222 = Extrem entzündbares Aerosol
ghs-h223 = Entzündbares Aerosol
ghs-h224 = Flüssigkeit und Dampf extrem entzündbar
ghs-h225 = Flüssigkeit und Dampf leicht entzündbar
ghs-h226 = Flüssigkeit und Dampf entzündbar
# H227: nicht in der CLP-Verordnung; übliche deutsche Fassung des UN-GHS
ghs-h227 = Brennbare Flüssigkeit
ghs-h228 = Entzündbarer Feststoff
ghs-h229 = Behälter steht unter Druck: kann bei Erwärmung bersten
ghs-h240 = Erwärmung kann Explosion verursachen
ghs-h241 = Erwärmung kann Brand oder Explosion verursachen
ghs-h242 = Erwärmung kann Brand verursachen
ghs-h250 = Entzündet sich in Berührung mit Luft von selbst
ghs-h251 = Selbsterhitzungsfähig; kann in Brand geraten
ghs-h252 = In großen Mengen selbsterhitzungsfähig; kann in Brand geraten
ghs-h260 = In Berührung mit Wasser entstehen entzündbare Gase, die sich spontan entzünden können
ghs-h261 = In Berührung mit Wasser entstehen entzündbare Gase
ghs-h270 = Kann Brand verursachen oder verstärken; Oxidationsmittel
ghs-h271 = Kann Brand oder Explosion verursachen; starkes Oxidationsmittel
ghs-h272 = Kann Brand verstärken; Oxidationsmittel
ghs-h280 = Enthält Gas unter Druck; kann bei Erwärmung explodieren
ghs-h281 = Enthält tiefgekühltes Gas; kann Kälteverbrennungen oder -verletzungen verursachen
ghs-h290 = Kann gegenüber Metallen korrosiv sein
# CLP, Anhang III, Teil 1, Tabelle 1.2
ghs-h300 = Lebensgefahr bei Verschlucken
ghs-h301 = Giftig bei Verschlucken
ghs-h302 = Gesundheitsschädlich bei Verschlucken
ghs-h303 = Kann bei Verschlucken gesundheitsschädlich sein
ghs-h304 = Kann bei Verschlucken und Eindringen in die Atemwege tödlich sein
ghs-h305 = Kann bei Verschlucken und Eindringen in die Atemwege gesundheitsschädlich sein
ghs-h310 = Lebensgefahr bei Hautkontakt
ghs-h311 = Giftig bei Hautkontakt
ghs-h312 = Gesundheitsschädlich bei Hautkontakt
ghs-h313 = Kann bei Hautkontakt gesundheitsschädlich sein
ghs-h314 = Verursacht schwere Verätzungen der Haut und schwere Augenschäden
ghs-h315 = Verursacht Hautreizungen
ghs-h316 = Verursacht leichte Hautreizungen
ghs-h317 = Kann allergische Hautreaktionen verursachen
    .sentence = Kann allergische Hautreaktionen verursachen.
ghs-h318 = Verursacht schwere Augenschäden
ghs-h319 = Verursacht schwere Augenreizung
ghs-h320 = Verursacht Augenreizung
ghs-h330 = Lebensgefahr bei Einatmen
ghs-h331 = Giftig bei Einatmen
ghs-h332 = Gesundheitsschädlich bei Einatmen
ghs-h333 = Kann bei Einatmen gesundheitsschädlich sein
ghs-h334 = Kann bei Einatmen Allergie, asthmaartige Symptome oder Atembeschwerden verursachen
ghs-h335 = Kann die Atemwege reizen
ghs-h336 = Kann Schläfrigkeit und Benommenheit verursachen
# H340 bis H373: was der Anhang in Klammern offen lässt (Expositionsweg, Organ), ist wie im Englischen weggelassen
ghs-h340 = Kann genetische Defekte verursachen
ghs-h341 = Kann vermutlich genetische Defekte verursachen
ghs-h350 = Kann Krebs erzeugen
ghs-h350i = Kann bei Einatmen Krebs erzeugen
ghs-h351 = Kann vermutlich Krebs erzeugen
ghs-h360 = Kann die Fruchtbarkeit beeinträchtigen oder das Kind im Mutterleib schädigen
ghs-h360F = Kann die Fruchtbarkeit beeinträchtigen
ghs-h360D = Kann das Kind im Mutterleib schädigen
ghs-h360FD = Kann die Fruchtbarkeit beeinträchtigen. Kann das Kind im Mutterleib schädigen
ghs-h360Fd = Kann die Fruchtbarkeit beeinträchtigen. Kann vermutlich das Kind im Mutterleib schädigen
ghs-h360Df = Kann das Kind im Mutterleib schädigen. Kann vermutlich die Fruchtbarkeit beeinträchtigen
ghs-h361 = Kann vermutlich die Fruchtbarkeit beeinträchtigen oder das Kind im Mutterleib schädigen
ghs-h361f = Kann vermutlich die Fruchtbarkeit beeinträchtigen
ghs-h361d = Kann vermutlich das Kind im Mutterleib schädigen
ghs-h361fd = Kann vermutlich die Fruchtbarkeit beeinträchtigen. Kann vermutlich das Kind im Mutterleib schädigen
ghs-h362 = Kann Säuglinge über die Muttermilch schädigen
ghs-h370 = Schädigt die Organe
ghs-h371 = Kann die Organe schädigen
ghs-h372 = Schädigt die Organe bei längerer oder wiederholter Exposition
ghs-h373 = Kann die Organe schädigen bei längerer oder wiederholter Exposition
# CLP, Anhang III, Teil 1, Tabellen 1.3 und 1.4. H401, H402: nicht in der CLP-Verordnung; übliche deutsche Fassung des UN-GHS
ghs-h400 = Sehr giftig für Wasserorganismen
ghs-h401 = Giftig für Wasserorganismen
ghs-h402 = Schädlich für Wasserorganismen
ghs-h410 = Sehr giftig für Wasserorganismen mit langfristiger Wirkung
ghs-h411 = Giftig für Wasserorganismen, mit langfristiger Wirkung
ghs-h412 = Schädlich für Wasserorganismen, mit langfristiger Wirkung
ghs-h413 = Kann für Wasserorganismen schädlich sein, mit langfristiger Wirkung
ghs-h420 = Schädigt die öffentliche Gesundheit und die Umwelt durch Ozonabbau in der äußeren Atmosphäre
# CLP, Anhang III, Teile 2 und 3 (Anhang II)
ghs-euh018 = Kann bei Verwendung explosionsfähige/entzündbare Dampf/Luft-Gemische bilden
ghs-euh019 = Kann explosionsfähige Peroxide bilden
ghs-euh066 = Wiederholter Kontakt kann zu spröder oder rissiger Haut führen
ghs-euh070 = Giftig bei Berührung mit den Augen
ghs-euh071 = Wirkt ätzend auf die Atemwege
ghs-euh204 = Enthält Isocyanate. Kann allergische Reaktionen hervorrufen
ghs-euh205 = Enthält epoxidhaltige Verbindungen. Kann allergische Reaktionen hervorrufen
ghs-euh208 = Enthält (Name des sensibilisierenden Stoffes). Kann allergische Reaktionen hervorrufen
ghs-euh209 = Kann bei Verwendung leicht entzündbar werden
ghs-euh210 = Sicherheitsdatenblatt auf Anfrage erhältlich
ghs-euh211 = Achtung! Beim Sprühen können gefährliche lungengängige Tröpfchen entstehen. Aerosol oder Nebel nicht einatmen
ghs-euh212 = Achtung! Bei der Verwendung kann gefährlicher lungengängiger Staub entstehen. Staub nicht einatmen
ghs-euh380 = Kann beim Menschen endokrine Störungen verursachen
ghs-euh381 = Steht in dem Verdacht, beim Menschen endokrine Störungen zu verursachen
ghs-euh430 = Kann endokrine Störungen in der Umwelt verursachen
ghs-euh431 = Steht in dem Verdacht, endokrine Störungen in der Umwelt zu verursachen
ghs-euh440 = Anreicherung in der Umwelt und in lebenden Organismen einschließlich Menschen
ghs-euh441 = Starke Anreicherung in der Umwelt und in lebenden Organismen einschließlich Menschen
ghs-euh450 = Kann lang anhaltende und diffuse Verschmutzung von Wasserressourcen verursachen
ghs-euh451 = Kann sehr lang anhaltende und diffuse Verschmutzung von Wasserressourcen verursachen
# mehrere Wege zusammen: CLP, Anhang III, Teil 1, Tabelle 1.2
ghs-h300-h310 = Lebensgefahr bei Verschlucken oder Hautkontakt
ghs-h300-h330 = Lebensgefahr bei Verschlucken oder Einatmen
ghs-h310-h330 = Lebensgefahr bei Hautkontakt oder Einatmen
ghs-h300-h310-h330 = Lebensgefahr bei Verschlucken, Hautkontakt oder Einatmen
ghs-h301-h311 = Giftig bei Verschlucken oder Hautkontakt
ghs-h301-h331 = Giftig bei Verschlucken oder Einatmen
ghs-h311-h331 = Giftig bei Hautkontakt oder Einatmen
ghs-h301-h311-h331 = Giftig bei Verschlucken, Hautkontakt oder Einatmen
ghs-h302-h312 = Gesundheitsschädlich bei Verschlucken oder Hautkontakt
ghs-h302-h332 = Gesundheitsschädlich bei Verschlucken oder Einatmen
ghs-h312-h332 = Gesundheitsschädlich bei Hautkontakt oder Einatmen
ghs-h302-h312-h332 = Gesundheitsschädlich bei Verschlucken, Hautkontakt oder Einatmen
# Sicherheitshinweise: CLP, Anhang IV. other: Wortlaut auf Etiketten einer anderen Fassung. when, do: der Satz in zwei Teilen, mit gewählter Klammer
ghs-p210 = Von Hitze, heißen Oberflächen, Funken, offenen Flammen sowie anderen Zündquellen fernhalten. Nicht rauchen.
ghs-p260 = Staub/Rauch/Gas/Nebel/Dampf/Aerosol nicht einatmen.
ghs-p261 = Einatmen von Staub/Rauch/Gas/Nebel/Dampf/Aerosol vermeiden.
ghs-p264 = Nach Gebrauch … gründlich waschen.
ghs-p271 = Nur im Freien oder in gut belüfteten Räumen verwenden.
ghs-p272 = Kontaminierte Arbeitskleidung nicht außerhalb des Arbeitsplatzes tragen.
ghs-p273 = Freisetzung in die Umwelt vermeiden.
ghs-p280 = Schutzhandschuhe/Schutzkleidung/Augenschutz/Gesichtsschutz/… tragen.
ghs-p302-p352 = BEI BERÜHRUNG MIT DER HAUT: Mit viel Wasser/… waschen.
    .other = BEI BERÜHRUNG MIT DER HAUT: Mit viel Wasser und Seife waschen.
ghs-p304-p340 = BEI EINATMEN: Die Person an die frische Luft bringen und für ungehinderte Atmung sorgen.
    .other = BEI EINATMEN: An die frische Luft bringen und in einer Position ruhigstellen, die das Atmen erleichtert.
    .when = BEI EINATMEN
    .do = Die Person an die frische Luft bringen und für ungehinderte Atmung sorgen.
ghs-p305-p351-p338 = BEI KONTAKT MIT DEN AUGEN: Einige Minuten lang behutsam mit Wasser spülen. Eventuell vorhandene Kontaktlinsen nach Möglichkeit entfernen. Weiter spülen.
    .when = BEI KONTAKT MIT DEN AUGEN
    .do = Einige Minuten lang behutsam mit Wasser spülen. Eventuell vorhandene Kontaktlinsen nach Möglichkeit entfernen. Weiter spülen.
ghs-p301-p310 = BEI VERSCHLUCKEN: Sofort GIFTINFORMATIONSZENTRUM/Arzt/… anrufen.
ghs-p301-p330-p331 = BEI VERSCHLUCKEN: Mund ausspülen. KEIN Erbrechen herbeiführen.
    .when = BEI VERSCHLUCKEN
    .do = Mund ausspülen. KEIN Erbrechen herbeiführen.
ghs-p303-p361-p353 = BEI BERÜHRUNG MIT DER HAUT (oder dem Haar): Alle kontaminierten Kleidungsstücke sofort ausziehen. Haut mit Wasser abwaschen [oder duschen].
    .when = BEI BERÜHRUNG MIT DER HAUT (oder dem Haar)
    .do = Alle kontaminierten Kleidungsstücke sofort ausziehen. Haut mit Wasser abwaschen oder duschen.
# P316 und P317 (UN-GHS, 9. Fassung): kein amtlicher deutscher Wortlaut gefunden; P317 ist hier die zweite Hälfte von P313. Aus dem Gedächtnis
ghs-p310 = Sofort GIFTINFORMATIONSZENTRUM/Arzt/… anrufen.
    .other = Sofort notärztliche Hilfe holen. (P316)
    .do = Sofort GIFTINFORMATIONSZENTRUM/Arzt anrufen.
ghs-p313 = Ärztliche Hilfe hinzuziehen. (P317)
    .other = Ärztlichen Rat einholen/ärztliche Hilfe hinzuziehen.
ghs-p316 = Sofort notärztliche Hilfe holen.
    .other = Sofort GIFTINFORMATIONSZENTRUM/Arzt/… anrufen. (P310)
ghs-p317 = Ärztliche Hilfe hinzuziehen.
    .other = Ärztlichen Rat einholen/ärztliche Hilfe hinzuziehen. (P313)
ghs-p333-p313 = Bei Hautreizung oder -ausschlag: Ärztliche Hilfe hinzuziehen. (P333+P317)
    .other = Bei Hautreizung oder -ausschlag: Ärztlichen Rat einholen/ärztliche Hilfe hinzuziehen.
ghs-p333-p317 = Bei Hautreizung oder -ausschlag: Ärztliche Hilfe hinzuziehen.
    .other = Bei Hautreizung oder -ausschlag: Ärztlichen Rat einholen/ärztliche Hilfe hinzuziehen. (P333+P313)
# CLP, Anhang IV
ghs-p342-p311 = Bei Symptomen der Atemwege: GIFTINFORMATIONSZENTRUM/Arzt/… anrufen.
ghs-p362-p364 = Kontaminierte Kleidung ausziehen und vor erneutem Tragen waschen.
ghs-p363 = Kontaminierte Kleidung vor erneutem Tragen waschen.
ghs-p391 = Verschüttete Mengen aufnehmen.
ghs-p501 = Inhalt/Behälter … zuführen.
# mehrere zusammen, wie auf einem Etikett: P302+P352 mit P333+P317, P305+P351+P338 mit P317, P304+P340 mit P317
ghs-aid-skin = BEI BERÜHRUNG MIT DER HAUT: Mit viel Wasser waschen. Bei Hautreizung oder -ausschlag: Ärztliche Hilfe hinzuziehen.
ghs-aid-eyes = BEI KONTAKT MIT DEN AUGEN: Einige Minuten lang behutsam mit Wasser spülen. Eventuell vorhandene Kontaktlinsen nach Möglichkeit entfernen. Weiter spülen. Ärztliche Hilfe hinzuziehen.
ghs-aid-inhaled = BEI EINATMEN: Die Person an die frische Luft bringen und für ungehinderte Atmung sorgen. Ärztliche Hilfe hinzuziehen.

## Air and dust

air-place = Wo
    .room = Raum oder Werkstatt
    .hull = Im Rumpf, Tank oder Stauraum
air-room-fold = Raum und Ventilator
air-in-it-fold = Lösemittel und Staub in der Luft
air-room = Raum
air-draught = Öffnungen
    .shut = Alles zu
    .one = Auf einer Seite offen
    .two = Auf zwei Seiten offen
air-fan = Ventilator
    .off = Kein Ventilator
    .in = Bläst hinein
    .out = Bläst hinaus
air-which-fan = Welcher Ventilator
air-opening = Öffnung gegenüber dem Ventilator
    .help = Freie Fläche für die Luft
air-mixing = Mischfaktor der Luft
    .help = 1: ganz gemischt. Übliche Räume: { $least } (unsere Einschätzung) bis { $most }
air-clear = Anteil zum Ablüften
air-solvent = Lösemittel zum Wischen
    .none = Keins
    .other = Anderes, aus dem Sicherheitsdatenblatt
air-solvent-mass = Lösemittelmenge
air-wiping = Wischdauer
air-molar = Molmasse, g/mol
    .missing = Molmasse aus dem Sicherheitsdatenblatt eingeben oder Lösemittel wählen
air-limit = Grenzwert in der Luft, ppm
    .missing = Grenzwert in der Luft aus dem Sicherheitsdatenblatt eingeben oder Lösemittel wählen
air-lower = Untere Explosionsgrenze
    .missing = Untere Explosionsgrenze aus dem Sicherheitsdatenblatt eingeben oder Lösemittel wählen
air-dust = Staub
    .none = Keiner
air-temperature = Lufttemperatur
air-solvent-asked = Lösemittel
    .text = Für den Dampf im Raum Gramm und Minuten eingeben.
air-average = Mittelwert im Raum
    .text = Nahe der Arbeit viel höher. Örtliche Vorschriften, Sicherheitsdatenblatt gehen vor.
air-hull = Nicht hineingehen
    .text = Im Rumpf oder Tank: nur mit eigenem Plan und zugelassenen Fachleuten. Keine Werte.
air-permit = Bevor jemand hineingeht
air-cleared = Zeit, bis { $share } % weg sind
    .text = { $minutes } min
    .rough = auf die Minute aufgerundet, Mischfaktor { $mixing }, ab dem letzten Dampf oder Staub
    .rough-hours = { $hours } h { $minutes } min, auf die Minute aufgerundet, Mischfaktor { $mixing }, ab dem letzten Dampf oder Staub
air-changes = Luftwechsel
    .text = { $changes } pro Stunde
    .fan = durch Ventilator
    .draught = Durchzug, { $mark }: stehende Luft gibt weniger
air-volume = Raum
air-make-up = Nötige Öffnung für den Ventilator
    .text = mindestens { $area }
    .rough = aufgerundet; { $pressure } Pa und eine einfache Öffnung, { $mark }
air-no-make-up = Keine Öffnung für den Ventilator
    .text = Ventilator zählt nicht: Öffnung gegenüber fehlt. Dort { $area } öffnen.
air-small-make-up = Öffnung zu klein
    .text = Lässt etwa { $passes } von { $flow } des Ventilators durch. { $area } öffnen.
air-needed = Nötige Luftmenge
    .rough = aufgerundet, Mischfaktor { $mixing }; { $where }
air-lowest-limit = niedrigster Grenzwert, { $where }
air-vapour = Dampf am Ende
    .rough = im Mittel, gleichmäßig verdunstet
air-ppm = { $share } ppm
air-percent = { $share } %
air-of-limit = Anteil am Grenzwert, { $limit }
air-of-lower = Anteil an der unteren Explosionsgrenze
    .rough = unter { $most } % bleiben, niedrigster Wert der Quellen
air-explosive = Dampf kann Feuer fangen
    .text =
        So nicht arbeiten: mehr als { $share ->
            [50] die Hälfte
            [25] ein Viertel
            [20] ein Fünftel
            [10] ein Zehntel
           *[other] { $share } %
        } der unteren Explosionsgrenze. Weniger nehmen, ins Freie, keine Funken.
air-over-limit = Grenzwert überschritten
    .text = Zu viel Dampf für diesen Raum. Weniger nehmen, ins Freie oder mehr Luft.
air-fan-spark = Ventilatormotor
    .text = Kein Dampf durch einen Motor, der Funken schlagen kann. Saubere Luft hinein.
air-handbook = Anders gerechnet
    .rough = Handbuch, Regel 403, bei { "21 degC" }; nicht gegen Feuer
air-dust-room = Dieser Grenzwert in diesem Raum
    .text = { $mass } mg in der Luft
    .rough = eine Prise, abgerundet; keine sichere Menge
air-dust-mask = Staub
    .text = { $about } Erst Staubmaske auf. Dicht sitzende Halbmasken: bis zum { $times }-Fachen des Grenzwerts.
# $fraction: welcher Teil des Staubs; $region: wo er gilt; $where: von wem
dust-limit = { $limit } mg/m³
    .rough = niedrigster Grenzwert, { $fraction }, { $region }, { $where }
dust-total = Gesamtstaub
dust-inhalable = einatembarer Staub
dust-thoracic = thorakaler Staub
dust-fine = alveolengängiger Staub
solvent-molar = Molmasse
solvent-density = Dichte
solvent-lower = untere Explosionsgrenze
solvent-upper = obere Explosionsgrenze
solvent-day = Grenzwert für einen Arbeitstag
solvent-short = Grenzwert für 15 Minuten
row-room =
    .shed = Werkstatt, { $length } mal { $width } mal { $height }
    .garage = Garage, { $length } mal { $width } mal { $height }
    .tent = Zelt über dem Boot, { $length } mal { $width } mal { $height }
row-fan =
    .small = Fensterventilator, { $flow }
    .box = Großer Ventilator, { $flow }
air-drawing = Weg der Luft
    .you = du
    .work = Arbeit
    .in = Zuluft
    .out = Abluft
    .fan = Ventilator
    .told = Von oben: Luft herein, an dir, dann an der Arbeit vorbei, hinaus.
    .told-in = Von oben: Luft herein, an dir, dann an der Arbeit vorbei, hinaus. Ventilator vorn.
    .told-out = Von oben: Luft herein, an dir, dann an der Arbeit vorbei, hinaus. Ventilator am Ende.
powder-wood-flour = Holzmehl
    .about = Holzstaub kann brennen und gilt als Krebsursache.
powder-silica = Pyrogene Kieselsäure
    .about = Bleibt lange in der Luft, trocknet Haut und Augen.
powder-quartz = Quarz- oder Steinmehl
    .about = Quarzstaub vernarbt die Lunge und gilt als Krebsursache.
powder-cotton = Baumwollflocken
    .about = Macht die Brust eng, vor allem Rohfasern.
powder-milled-glass = Gemahlene Glasfaser
    .about = Splitter stechen in Haut und Augen. Spülen, nicht reiben.
powder-glass-spheres = Glashohlkugeln
    .about = Ein Hauch wirbelt alles auf. Boden wird glatt.
powder-phenolic-balloons = Phenolharz-Microballons
    .about = Ein Hauch wirbelt alles auf. Kann in der Luft brennen.
powder-talc = Talkum
    .about = Nur ohne Asbest: im Sicherheitsdatenblatt nachsehen.
powder-other = Anderes Pulver
    .about = Erst Sicherheitsdatenblatt lesen. Es nennt den Grenzwert.
dust-sanding-epoxy = Ausgehärtetes Epoxid schleifen
    .about = Der niedrigste Grenzwert zählt.
dust-sanding-glass = Ausgehärtetes Glasband schleifen
    .about = Sticht: Handgelenke und Hals bedeckt.
dust-sanding-wood = Sperrholz schleifen
    .about = Holzstaub kann brennen und gilt als Krebsursache.
dust-sanding-cedar = Western Red Cedar schleifen
    .about = Der Staub kann Asthma auslösen und brennen.
mask-half = Halbmaske oder filtrierende Halbmaske
mask-full = Vollmaske, auf Dichtsitz geprüft
region-germany = Deutschland
region-eu = EU
region-us = USA
solvent-acetone = Aceton
solvent-isopropanol = Isopropanol
solvent-ethanol = Ethanol
solvent-butanone = 2-Butanon
air-rule-mixing-lowest = Mischfaktor, kleinster in üblichen Räumen
air-rule-mixing-highest = Mischfaktor, größter in üblichen Räumen
air-rule-pressure = Druck eines Ventilators, höchstens
air-rule-discharge = Durchflusszahl einer Öffnung
air-rule-explosive = Höchster Anteil an der unteren Explosionsgrenze
facts-dust-limits = Staubgrenzwerte
    .wood = Holz
    .red-cedar = Western Red Cedar
    .silica = Kieselsäure
    .quartz = Quarz
    .cotton = Baumwolle
    .talc = Talkum
    .glass = Glas
facts-powders = Pulver
facts-sanding = Schleifen
facts-masks = Maske, Schutzfaktor
facts-solvents = Lösemittel
facts-air-rules = Luft, Grenzen

## Catalogue: tables and what their rows are called

# Zeilen der Ausrüstung, mit denen man beginnt. Ihre Werte sind metrisch
row-system = { $ratio } nach Volumen
row-scale = Waage, Teilung { $step }
row-pumps = Zwei gleiche Pumpen, { $stroke }
row-cup =
    .small = Kleiner konischer Becher, etwa { $holds }
    .medium = Konischer Becher, etwa { $holds }
    .tin = Gerade Dose, etwa { $holds }
    .tub = Weite Dose, etwa { $holds }
row-graduated =
    .medicine = Medizinbecher, { $holds }, Striche je { $step }
    .mixing = Mischbecher, { $holds }, Striche je { $step }
row-syringes =
    .one-each = Eine mit { $first }, eine mit { $last }
    .two-alike = Zwei mit { $first }
row-roll =
    .tape = Glasband, { $width }, { $weight }
    .cloth = Glasgewebe, { $width } breit, { $weight }
    .ply = Abreißgewebe, { $width }
row-filler =
    .wood-flour = Holzmehl
    .silica = Pyrogene Kieselsäure
    .cotton = Baumwollflocken
    .milled-glass = Gemahlene Glasfaser
    .glass-spheres = Glashohlkugeln
    .phenolic-balloons = Phenolharz-Microballons
    .talc = Talkum
# eine Tabelle und ihre Zeilen, wie man danach sucht: „Becher und Rührstab: Becher höchstens füllen, Anteil der Höhe“
facts-ratio-error = Mischfehler beim Härter
    .aim = Gut bis
    .stop = Zu viel ab
facts-ratio-cost = Verlust durch falsches Verhältnis
    .lost-per-percent = Glastemperatur je Prozent
    .lost-at-most = Glastemperatur an beiden Grenzen, höchstens
    .told-evenly = Je Prozent gezeigt bis zu
facts-odd-label = Verhältnis vom Etikett prüfen
    .wrong-way = Mehr Härter als Harz, ab
    .far-off = Abstand von den Äquivalentgewichten, ab
    .lightest = Dichte zur ersten Komponente, kleinste
    .heaviest = Dichte zur ersten Komponente, größte
facts-part-density = Typische Dichte einer Komponente
    .resin = Harz
    .hardener = Härter
    .same-mark = Eine Spritze, zweimal gefüllt
facts-ratio-doubt = Unsicherheit nur aus Dichten, k = 2
    .aim = Gezeigt über
    .stop = Keine Waage über
facts-stirring = Rühren, wie lange
    .stir-short = Ein kleiner Ansatz
    .stir-long = Ein großer oder kalter Ansatz
    .small = Kleiner Ansatz, bis
    .cold = Kalte Mischung, unter
    .densest = Dichte, wenn unbekannt
facts-stick = Becher und Rührstab
    .mark-error = Fehler eines Strichs
    .tallest = Becher zu hoch, Höhe zu Breite
    .room = Becher höchstens gefüllt, Anteil der Höhe
facts-pumps = Pumpen und Waagen
    .furthest = Ansatz wächst höchstens
    .own-error = Fehler der Waage, je Teilung
    .alike = Gleich nah, Anteil der Teilung
    .stroke-deviation = Pumpenhub, Standardabweichung
facts-damp = Tau und Aminröte
    .margin = Oberfläche über dem Taupunkt, mindestens
    .damp = Zu feucht über
    .sky = Freier Himmel, kälter um
    .meter-off = Hygrometer weicht ab um
facts-angle = Winkel einer Verbindung
    .narrowest = Ecke zu eng unter
    .flattest = Schott zu flach unter
    .flat-from = Nur flaches Glasband ab
facts-cove = Hohlkehle in flacher Ecke
    .width = Breite, von der Plattendicke
facts-outer-edge = Außenkante, gerundet
    .thin-cover = Zu dünn unter, von der Platte
facts-tape-pieces = Glasband in Stücken
    .most-tapes = Stücke einer Lage, höchstens
facts-hot-pot = Ansatz, der heiß wird
    .most-peak = Höchste gezeigte Spitzentemperatur
    .hardly-above = Keine Spitze gezeigt, über der Luft
    .deepest-cup = Tiefe zur Breite, Rückfrage über
facts-pot-clock = Uhr eines laufenden Ansatzes
    .soon = Letzte Minuten ab
    .again = Noch verarbeitbar: wieder prüfen nach
    .on-way = Link vom anderen Telefon gilt als neu
    .long-ago = Zeit abgelaufen: Rückfrage nach
    .away = Seite verdeckt: unsicher nach
    .clocks-apart = Zwei Uhren weichen ab um
facts-timings-apart = Zeiten passen nicht zusammen
    .times-apart = Zeiten vom Etikett, Rückfrage ab
    .shallower = Beutel, Anteil eines steifen Bechers
    .roughly = Ein Ansatz zieht später an um
    .own-doubt = Unsicherheit der eigenen Zeit
    .label-doubt = Unsicherheit der Topfzeit
    .film-doubt = Unsicherheit der Filmzeit
facts-container-size = Behälter, wenn nicht gemessen
    .small-cup = Becher, Breite, auch fast leer
    .bag-width = Spritzbeutel, Dicke gefüllt
    .tray-length = Schale, Länge
    .tray-width = Schale, Breite
    .radius = Hohlkehle, Radius
    .panel = Plattendicke
    .tape-width = Breite des Glasbands
    .film = Filmdicke
facts-test-cup = Probebecher
    .mass = Menge im Probebecher
    .least-mass = Menge im Probebecher, kleinste
    .most-mass = Menge im Probebecher, größte
    .reading = Küchenthermometer weicht ab um
    .lag = Küchenthermometer zu spät um
    .minute = Eingegebene Minute weicht ab um
    .moment = Gesehene Zeit weicht ab um
    .off-model = Eine Temperatur im Becher weicht ab um, vom Anstieg
    .off-time = Eine Temperatur im Becher weicht ab um, von der Zeit
    .off-end = Zeit weicht ab um, mindestens
    .stringy = Zieht Fäden, wenn ausgehärtet zu
    .stringy-spread = Fadenziehen weicht ab um
    .loss-spread = Wärmeverlust weicht ab um
    .heat-spread = Wärme der Mischung weicht ab um
    .strange = Rückfrage, Abweichungen
    .unsure = Zu unsicher zum Behalten
    .not-told = Ohne Wärmeverlust ab Unsicherheit
    .swings = Kühler und wieder warm um
    .up-to = Hoher Verlust bis zu, von seiner Masse
    .another = Neuer, wenn die Luft abweicht um
    .ninety = Neun von zehn Mal, Abweichungen
facts-plan-most = Plan, seine Grenzen
    .most-pieces = Stücke an einem Tag, höchstens
    .most-work = Stücke, lange geteilt, höchstens
    .most-parts = Teile eines Stücks, höchstens
    .most-batches = Ansätze an einem Tag, höchstens
    .most-told = Ansätze in Schritten, höchstens
facts-plan-odd = Plan, was geprüft wird
    .long-day = Ein langer Tag, Stunden
    .points-gap = Stunden zwischen zwei Temperaturen
    .before = Vor dem Start
facts-plan-help = Plan, was helfen kann
    .cooler = In den Schatten, kühler um
    .earlier = Früher beginnen um
    .slower = Langsamerer Härter, Verarbeitungszeit
facts-run = Ausführen, was frei bleibt
    .least-tape = Kürzestes Glasband
    .spare-time = Freie Zeit eines Fensters
    .spare-share = Freier Anteil der Arbeit, die kommt
facts-boat-most = Boot, Grenzen einer Liste
    .most-cut = Stücke Glasband und Abreißgewebe
    .most-faces = Flächen zum Bearbeiten
    .most-angles = Winkel entlang aller Nähte
    .most-rolls = Rollen, höchstens
    .widest-packs = Größtes Gebinde zum kleinsten
    .warmth = Temperatur, wenn keine eingegeben
facts-filler-parts = Füllstoff, Teile
    .first-parts = Anteil zuerst
facts-start = Startwerte der Eingaben
    .batch = Ansatz
    .scoop = Gestrichener Messlöffel
    .seam = Nahtlänge
    .boat-seam = Nahtlänge in der Liste des Boots
    .glued-length = Länge einer Leimung
    .glued-width = Breite einer Leimung
    .radius-small = Radius des kleinen Hohlkehlspachtels
    .radius-middling = Radius des mittleren
    .radius-large = Radius des großen Hohlkehlspachtels
    .packs = Gebinde Harz
    .pause = Pause zwischen zwei Ansätzen
    .opening = Andere Öffnung
    .mixing-factor = Mischfaktor des Raums
    .cleared = Anteil der Luft, der wechselt
    .air = Lufttemperatur im Raum
facts-sun = Sonne, W/m², von, bis
facts-looks = Aufgenommener Anteil der Sonne, von, bis
facts-cover = Sonne hinein, Wärme hinaus
facts-sun-on-pot = Sonne auf einem Ansatz
    .beam = Sonne senkrecht auf die Fläche, W/m²
    .upright = Sonne auf aufrechter Fläche, zur waagerechten
    .uneven = Aufgenommene Sonne, doppelt bei tiefem Ansatz, W/m²
    .tray-up-to = Aufgenommene Sonne, keine Schale ab, W/m²
facts-cure-stops = Wo die Aushärtung stehen bleibt
    .fresh = Glastemperatur, frisch gemischt
    .cured = Glastemperatur, ganz ausgehärtet
    .lambda = Lambda
    .above-cure = Glastemperatur über der Aushärtetemperatur
facts-post-cure = Tempern und volle Festigkeit
    .full-from = Volle Festigkeit gerechnet ab
    .held-at = Tempern, gehalten bei
    .held-for = Tempern, gehalten für
    .climb = Tempern, Anstieg pro Stunde
    .within = Wärme gezählt innerhalb von
    .long = Wärme voll gezählt nach
facts-hull-colour = Sonne, die ein Rumpf aufnimmt
    .white = Weiß
    .mid = Farbig, grau oder blankes Holz
    .dark = Dunkel oder schwarz
facts-hull-sun = Rumpf in der Sonne
    .full = Volle Sonne
    .air = Rumpf in der Sonne, Luft
    .sky = Freier Himmel, kälter um
    .still = Konvektion, ruhende Luft
    .breeze = Konvektion, leichter Wind
    .emittance = Emissionsgrad von Lack
facts-stiffness = Steifigkeit, Fließgrenze
facts-putty = Spachtelmasse
    .dose-spread = Jede Dosis, plus oder minus
    .air = Luft vom Rühren
    .packing = Hohlkugeln berühren sich bei
    .sphere-packing = Eingerührte Kugeln packen bis
    .sure = Steifer als nötig
facts-own-batches = Eigene Ansätze Spachtelmasse
    .batch-deviation = Standardabweichung
    .batch-worth = Wert dieser Schätzung, Ansätze
    .stands-out = Ansatz fällt auf, Standardabweichungen
    .apart = Zwei widersprechen sich ab
    .far = Weit von der Tabelle, unter und über
facts-glass-tape = Glasband
    .fibre-density = Dichte der Faser
facts-hand-laminate = Glasanteil nach Gewicht von Hand
    .for-buying = Zum Kaufen gerechnet
    .skilled = In geübten Händen
    .equal-masses = So viel Harz wie Glas
facts-weighed = Gewogene Nähte
    .resin = Harz, vom Gewicht des Glases
facts-strength = Festigkeit einer Naht
    .solid = Vollholz, Biegung bis
    .ply-pulls = Sperrholz, Zug, von der Biegefestigkeit
    .solid-pulls = Vollholz, Zug, von der Biegefestigkeit
    .solid-across = Vollholz quer zur Faser, von längs
    .ply-across = Furnier quer, von der Steifigkeit längs
    .panel-stiff = Steifigkeit der Platte
    .veneer = Eine Furnierlage, nicht gezählt
    .rolls = Furnier, quer geschert, im Mittel
    .rolls-stiff = Seine Schubsteifigkeit
    .putty-bends = Spachtelmasse, Biegung bis
    .putty-push = Spachtelmasse, Druck bis
    .putty-stiff = Steifigkeit der Spachtelmasse
    .knock = Rest von Glas und Spachtelmasse
    .tapes = Breiten, probiert
    .most-layers = Lagen auf einer Fläche, höchstens
facts-air = An die Luft abgegebene Wärme
    .still = Ruhende Luft
    .moving = Leichter Wind oder ein Ventilator
facts-pot-cure = Wie ein Ansatz aushärtet
    .uncatalysed = Tempo ohne Katalysator, zu mit
    .too-hot = Zu heiß zum Halten ab
    .usable-conversion = Nicht verarbeitbar, wenn ausgehärtet zu
facts-hot = Ein Ansatz, der so heiß wird
facts-walls = Wärmewiderstand der Wand
    .cup = Becher, Polypropylen
    .bag = Beutel, Polyethylen
    .tray = Schale, dünnes Polypropylen
facts-matter = Was einen Ansatz erwärmt und kühlt
    .heat-per-epoxide = Wärme je Epoxidgruppe
    .epoxide-weight = Epoxid-Äquivalentgewicht, wenn unbekannt
    .undiluted = Rein
    .phr = Härter auf 100 Teile Harz, nach Gewicht
    .specific-heat = Spezifische Wärme der Mischung
    .filler-heat = Spezifische Wärme des Füllstoffs
    .conductivity = Wärmeleitfähigkeit der Mischung
    .density = Dichte der Mischung, wenn unbekannt
    .wood = Wärmeleitfähigkeit von Sperrholz, quer
    .bench = Wärmewiderstand einer Holzbank
facts-lowest = Niedrigste Verarbeitungstemperatur
    .fast = Schneller Härter
    .medium = Mittlerer Härter
    .slow = Langsamer Härter
facts-windows = Wie lange eine Mischung verarbeitbar ist
    .soft = Hohlkehle auf Holz
    .film = Ein dünner Film
    .exponent = Topfzeit: Masse hoch minus
    .doubling = Schneller je { "10 K" } wärmer
    .share = Anteil für einen Plan
    .film-share = Anteil der Gelzeit eines Films
facts-counted-at = Gerechnet bei
    .opens = Fenster öffnet
    .closes = Fenster schließt
facts-day = Ein Tag, Stunden nach Mitternacht
    .coldest = Am kältesten
    .warmest = Am wärmsten
facts-points-gap = Aushärtung, eingegebene Temperaturen
    .points-gap = Lücke, Stunden über
facts-cure-energy = Aushärtung und Temperatur
    .energy = Aktivierungsenergie
# was dann getan wird und woran man sieht, dass die Naht so weit ist
facts-stages = Stunden bis zum Schritt, nach Härter
    .recoat-from = Überarbeiten ohne Schleifen, ab
    .recoat-from-look = fest, ein Handschuh klebt noch
    .recoat-until = Überarbeiten ohne Schleifen, bis
    .recoat-until-look = solange der Daumennagel eine Delle macht. Später: waschen, schleifen
    .tack-free = Nicht mehr klebrig
    .tack-free-look = ein Handschuh klebt nicht mehr
    .peel = Abreißgewebe abziehen
    .peel-look = hart, Glasband bleibt. Oder drauf bis zum Schleifen
    .sand = Schleifen
    .sand-look = erst, wenn nichts schmiert. Aminröte vorher abwaschen
    .turn = Rumpf drehen
    .turn-look = die Kontrollprobe ist hart. Rumpf an Schotten halten, nicht an frischer Naht
    .light = Leicht belasten
    .light-look = die Kontrollprobe ist hart
    .full = Volle Festigkeit
    .full-look = 5 bis 7 Tage üblich, längere gilt
facts-learning = Eigenes Arbeitstempo
    .at-once = Nicht gemessen unter
    .behind = Glasband nach der Hohlkehle
    .far = Schneller oder langsamer, ohne ab
    .deviation = Dieselben Hände, Standardabweichung
facts-hands = Wie schnell Hände sind
    .practised = Geübt
    .novice = Neu dabei
facts-mixing = Zeit zum Mischen
    .mix-putty = Spachtelmasse mischen, in den Beutel füllen
    .mix-wet = Tränkharz mischen
facts-positions = Wie die Naht liegt
    .downhand = Liegend
    .vertical = Stehend
    .overhead = Über Kopf
facts-rates = Tempo einer Person
    .place = Spachtelmasse auftragen
    .tool = Hohlkehle abziehen
    .clean = Kanten säubern
    .wet = In der Schale tränken
    .lay = Glasband auflegen
    .roll = Glasband entlüften
    .peel = Abreißgewebe
facts-losses = Verluste
    .spare = Reserve bei Flüssigem
    .tooling = Abziehen, vom Aufgetragenen
    .backing = Klebeband, Reserve
    .edges = Von einer Kante aufgesogen
    .cup = Bleibt in Becher und am Rührstab
    .bag = Bleibt im Beutel
    .tray = Bleibt in der Schale, je getränkter Fläche
    .roller = Bleibt in der Schaumrolle
    .peel-ply = Vom Abreißgewebe aufgesogen
    .first-coat = Erste Schicht auf blankem Sperrholz
    .weave = Füllt das Gewebe
    .flank = Glasband auf blanker Platte, je Seite
    .least-radius = Kleinster Radius für Glas und Werkzeug
    .one-pass = Kehldicke in einem Gang, höchstens
    .ply-margin = Abreißgewebe über dem Glasband, je Seite
    .overlap = Überlappung zweier Stücke
    .stagger = Abstand der Enden zweier Lagen
    .putty-density = Spachtelmasse einer Hohlkehle, mit Luft
    .resin-density = Harz und Härter, gemischt
    .reach = Längstes Glasband für eine Person
    .abrasive = Glasband je Blatt
    .tie-spacing = Abstand der Drahtbindungen
facts-draughts = Durchzug
facts-surfaces = Flächen, Gewebe, Leim und Spachtel
    .later-coat = Eine weitere Schicht
    .brush = Rest im Pinsel
    .tray-area = Nasse Fläche einer Schale
    .coat-pace = Zeit je Quadratmeter
    .wet-pace = Zeit zum Tränken und Abziehen je Quadratmeter
    .wood-drinks = Harz in rohes Holz unter Gewebe
    .weave-share = Tiefe des Gewebes, von der Dicke
    .weave-empty = Tiefe des Gewebes ohne Glas
    .sanded-off = Über dem Glas zum Schleifen
    .cloth-lap = Überlappung zweier Gewebebahnen
    .cloth-spare = Gewebe über jede Kante
    .glue-prime = Reines Harz auf einer Leimfläche
    .end-prime = Hirnholz, mal Fläche
    .bond-line = Dicke einer Leimfuge
    .squeezed = Leim, herausgedrückt
    .soak = Warten nach dem Grundieren
    .pressure = Druck auf eine Leimfuge
    .clamp = Eine Zwinge drückt mit
    .apart = Abstand der Zwingen, höchstens
    .fair-depth = Mittlere Tiefe zum Spachteln
    .fair-sanded = Abgeschliffener Spachtel
    .face-pull = Reißt Deckfurnier ab
facts-bonds = Leimfugen und Aufträge
    .plywood = Sperrholz in Biegung
    .butt-reaches = Stumpf, vom Holz
    .scarf-wood = Schäftung von Massivholz, Verhältnis
    .scarf-least = Schäftung von Massivholz, kleinstes
    .scarf-ply = Schäftung von Sperrholz, Verhältnis
    .gap-glue = Spalt zu weit für Leim, über
    .bend-cold = Holz kalt biegen, Radius zu Dicke
    .bare-fillet = Hohlkehle ohne Glasband, Radius zu Dicke
    .pass-flat = Spachteln, ein Auftrag waagrecht
    .pass-upright = Spachteln, ein Auftrag an einer Seite
    .lean = Schräg, gegen waagrecht
    .sheet-length = Länge einer Sperrholzplatte
    .sheet-width = Breite einer Sperrholzplatte

## Sources

mark-published = veröffentlicht
mark-common-practice = übliche Praxis
mark-from-memory = aus dem Gedächtnis
mark-own-judgement = unsere Einschätzung
mark-from-label = vom Etikett
mark-own-figure = eigener Wert
mark-with-source = { $mark }: { $source }
sources-mark = Zeigen
    .all = Alle
    .published = Veröffentlicht
    .common-practice = Übliche Praxis
    .from-memory = Aus dem Gedächtnis
    .own-judgement = Unsere Einschätzung
sources-find = Suchen
    .help = Ein, zwei Wörter eingeben: Dichte Härter
facts-row = { $table }: { $what }
facts-between = { $figure } ({ $low } bis { $high })
# $figure kann mehrere Zahlen sein
facts-unit =
    .an-hour = { $figure } pro Stunde
    .times = { $figure }-mal
    .of-rate = { $figure } × Arbeitstempo
    .m-a-minute = { $figure } m pro Minute
    .ft-a-minute = { $figure } ft pro Minute
    .air-changes = { $figure } Luftwechsel pro Stunde
    .pot-life = { $figure } × Topfzeit von { $mass }
    .face = { $figure } × Menge für eine Fläche
facts-other = Andere
facts-none = Nichts gefunden
    .text = Ein Wort versuchen oder alle.

## Pages: what templates say

page-about = Mischrechnung für Epoxidnähte, ohne Empfang.
page-skip = Zum Ergebnis
page-old-browser = Browser zu alt. Aktualisieren oder anderen nehmen.
page-safety = Sicherheit
page-caution = Vorsicht
page-screens = Seiten
page-work-it-out = Berechnen
boat-page =
    .print = Drucken
    .use-rolls = Eigene Rollen nehmen
    .cut-rolls = Geschnitten: Rollen kürzer
    .demo = Beispielboot laden
    .empty = Boot leeren
clock-page =
    .pots = Laufende Ansätze
    .try-alarm = Alarm probieren
    .aloud = Vorlesen
    .awake = Bildschirm anlassen
unheard-notify = Mitteilung am Ende der Topfzeit
unheard-sound = Kein Ton, bis diese Seite angetippt wird.
unheard-denied = Dieser Browser sperrt Mitteilungen. Covemix im Blick behalten.
unheard-granted = Eine Mitteilung kommt, wenn Covemix nicht zu sehen ist. Ein Telefon kann sie verzögern: rechtzeitig nachsehen.
welcome-mix = Abmessen
welcome-seam = Eine Naht machen
welcome-boat = Ein Boot planen
amount-of-what = wovon
pick-yours = Eigene
pick-as-typed = Wie unten eingegeben
pick-built-in = Eingebaut, typische Werte
pick-keep = In die Ausrüstung
select-unsaid = ohne Angabe
editor-leave = Abbrechen
editor-keep = Speichern
row-up = Hoch
row-down = Runter
row-remove = Entfernen
row-copy = Auf die andere Seite kopieren
row-sides = backbord steuerbord bb stb links rechts
kit-page =
    .none = Wo hier nichts Eigenes steht, gelten typische Werte, manche nicht geprüft.
    .add = Hinzufügen
    .unread = Gespeichert, aber hier nicht lesbar
    .log = Protokoll der Ansätze
    .reference = Aus einem Programm nutzen
    .phone = Dieses Telefon
    .no-scripts = Skripte einschalten, um zu speichern. Hier probieren.
setting-hand = Bedienhand
setting-hand-right = Rechts
setting-hand-left = Links
setting-light = Anzeige
setting-light-as-phone = Wie Telefon
setting-light-sun = Sonne
setting-light-dark = Dunkel
setting-voice = Schritte vorlesen
    .none = Keine deutsche Stimme auf diesem Telefon: nur Ton.
setting-voice-asked = Auf Wunsch
setting-voice-each = Alle
setting-units = Einheiten
    .help = Für alle Seiten. Eingaben bleiben. Andere Einheit oder Bruch: Einheit neben dem Feld antippen.
backup-copy = Kopie von allem
backup-save = Alles als Datei speichern
backup-bring-back = Aus Datei zurückholen
backup-leave = So lassen
backup-add = Ergänzen
backup-replace = Alles ersetzen
backup-brought = Neueste zuerst. Spätere Änderungen bleiben.
backup-undo = Neuestes rückgängig
page-correct = Erst die markierten Felder korrigieren.
page-list = { $one }, { $more }
    .apart = { $one }; { $more }
page-fill-in = Erst die fehlenden Werte eingeben.
log-page =
    .search = Im Protokoll suchen
    .add = Ansatz eintragen
    .none = Noch keine. Ansätze von „Mischen“ stehen hier.
    .not-found = Kein Ansatz enthält alle diese Wörter.
    .more = Mehr zeigen
    .table = Als Tabelle speichern (CSV)
    .everything = Alles speichern: in „Ausrüstung“
    .no-scripts = Skripte einschalten, um zu speichern.
    .when = Wann
plan-page =
    .take-boat = Nähte vom Boot
    .own-rates = Tempo aus dem Protokoll
    .print = Plan und Karte je Ansatz drucken
pour-page =
    .along = Schritt für Schritt
    .keep = Ins Protokoll
    .cup = Der Becher, maßstäblich
    .parts = Alle Komponenten und mehr Werte
safety-page =
    .first-aid = Erste Hilfe
    .ways = Was ist passiert?
    .hot = Becher heiß
    .eyes = Augen
    .skin = Haut
    .swallowed = Verschluckt
    .fire = Feuer
    .spill = Verschüttet
    .sources = Quellen aller Werte
share-share = Teilen
page-old = Alte Werte: neue werden berechnet
share-hand-over = Weitergeben
share-carries = Der QR-Code enthält
share-carries-link = Link
share-carries-words = Klartext
share-carries-help = Klartext: für Telefon ohne Covemix.
share-link = Link
share-send = Senden
share-copy-link = Link kopieren
share-copy-words = Text kopieren
share-print = Karte drucken
share-paste = Link einfügen
share-scan-elsewhere = Scannen geht nicht: mit der Kamera, dann Link einfügen.
share-look = Link prüfen
share-scan = Code scannen
share-close = Schließen
share-words-label = Der Klartext
card-blank =
    .when = Datum und Uhrzeit
    .temperature = Temperatur in der Werkstatt
    .lots = Chargennummern
    .seam = Naht
    .who = Gemischt von
    .outcome = Ergebnis
card-class = Karten für einen Kurs, bis { $most }
    .number = { $number } von { $all }: { $title }
    .name = Name
    .empty = Leerer Becher wiegt
    .full = Becher mit Mischung wiegt
    .met = Härter kam dazu um
    .stiff = Zog an um
spreader-page =
    .print = Mit 100 % drucken
files-page =
    .name = Dateien
    .shopping = Einkaufsliste (CSV)
    .cuts = Zuschnittliste (CSV)
    .cuts-drawn = Zuschnitt, gezeichnet (SVG)
    .save = Boot als Datei sichern
    .open = Datei eines Boots öffnen
    .opened = Das Boot aus der Datei ist eingetragen.
    .no-boat = In dieser Datei ist kein Boot.
    .batches = Ansätze (CSV)
    .day = Tag
    .calendar = In einen Kalender (iCal)
    .section = Zeichnung in wahrer Größe (SVG)
    .template = Schablone (SVG)
    .cutter = Für eine Schneidmaschine (DXF)
# Spalte einer Tabelle und ihre Einheit
file-head = { $name } [{ $unit }]
file-item = Was
file-mass = Masse
file-piece = Stück
file-stock = Geschnitten aus
    .roll = Rolle
file-face = Seite
file-batch = Ansatz
file-start = Beginn
file-end = Ende
file-done = Fertig
file-day = Tag
file-coat = Schicht
file-mixed-at = Erst eingeben, wann gemischt wurde.
file-no-day = Einen Tag wählen.
pour-along-on = Weiter bei Schritt { $step } von { $all }
steps-name = Schritt für Schritt
steps-tub-before = Füllstoffdose vorher
steps-tub-after = Füllstoffdose nachher
steps-came-out = Wie steif es wurde
steps-keep-batch = Ansatz speichern
steps-rescue = Retten
steps-undo = Zurück
steps-say = Vorlesen
steps-leave = Verlassen
trial-page =
    .more = Probebecher: weitere Werte
surface-page =
    .way = Flächen: Anstrich, Gewebe, Leim
joint-page =
    .more = Verbindung: weitere Werte
field-understood = gelesen als { $read }
pick-own = { $name } ({ $whence })
record-figures = { $label }: Werte
record-mark = Werte: { $mark }. Durch eigene ersetzen.
row-add = { $each }: hinzufügen
row-name = { $each } { $count }
fold-more = { $label }: weitere Werte
backup-would = „{ $button }“ würde ändern:
# steht hinter „Waage zeigt“
steps-otherwise = { "" }, falls anders
page-pour = Mischen
page-joint = Verbindung
page-surface = Flächen
page-boat = Boot
page-spreader = Spachtel
page-clock = Uhr
page-trial = Probebecher
page-plan = Plan
page-kit = Ausrüstung
page-log = Protokoll
page-sources = Quellen
sources-page =
    .all = Alle { $count } zeigen

## Scripts: notices, buttons and what the page says of itself

page-stale = Alte Ergebnisse: neue werden berechnet.
engine-fault =
    .unstarted = Rechenprogramm nicht gestartet
    .fell = Rechenprogramm abgestürzt
    .hung = Rechenprogramm zu lange ohne Antwort
    .unreadable = Antwort nicht lesbar
    .late = Rechenprogramm lädt noch
    .unreached = keine Verbindung
    .lacks = dem Browser fehlt ein Teil
    .damaged = { $file } ist beschädigt
page-undo = Rückgängig
backup-wrong = Datei nicht lesbar. Nichts wurde geändert.
    .not-ours = Datei nicht von Covemix. Nichts wurde geändert.
    .too-large = Datei zu groß. Nichts wurde geändert.
    .newer = Datei von neuerem Covemix. Nichts wurde geändert. Aktualisieren.
    .unread = Daten auf diesem Telefon nicht lesbar. Nichts wurde geändert.
entry-no-figures = Keine Ergebnisse.
entry-unread = Unlesbarer Eintrag
    .why = Bleibt gespeichert. Kein Ergebnis nutzt es.
    .removed = Eintrag entfernt.
entry-remove = Entfernen
kit-added = { $name } ist in der Ausrüstung.
kit-nameless = Nummer { $id }
page-not-whole = Covemix nicht ganz geladen. Mit guter Verbindung noch einmal öffnen.
    .of = Covemix nicht ganz geladen ({ $names }). Mit guter Verbindung noch einmal öffnen.
engine-started-anew = Neu gestartet. Eingaben sind noch da.
lead-here = { $label }: Werte eingetragen.
offline-plain = http-Adresse: Covemix geht nur mit Verbindung. Ohne Empfang: von https-Adresse öffnen (covemix export).
offline-half = Covemix nicht ganz geladen: kein Empfang, eine Anmeldeseite oder volles Telefon. Ohne Empfang geht es noch nicht. Mit guter Verbindung neu öffnen.
offline-half-update = Update nicht ganz geladen: kein Empfang, eine Anmeldeseite oder volles Telefon. Diese Version geht weiter.
update-whole = Ein Update ist bereit. Es wartet, weil ein Ansatz läuft. Dessen Uhr läuft danach weiter.
update-ready = Ein Update ist bereit.
update-now = Aktualisieren
update-unfetched = Update nicht geladen. Mit Verbindung noch einmal versuchen.
update-none = Noch kein Update da.
offline-ready = Covemix ist hier gespeichert und geht ohne Empfang.
offline-icon = iPhone: In Safari löscht eine Woche ohne Besuch Ausrüstung und Protokoll. Teilen antippen, dann „Zum Home-Bildschirm“.
    .across = Das Symbol beginnt leer: mit Empfang öffnen, hier als Datei speichern, dort laden.
offline-unkept = Dieser Browser kann Covemix nicht speichern: nur mit Verbindung.
part-unfetched = Teil nicht geladen. Mit Verbindung noch einmal versuchen.
recalled-this = Diese Version von Covemix ist zurückgerufen.
page-close = Schließen
page-unanswered = Keine Antwort. Eingabe in Ordnung. Noch einmal tippen.
pot-empty = Leer
pot-still-good = Noch gut
pot-stiffening = Zieht an
pot-gone = Zu steif
pot-end = Ansatz beenden
pot-air = Die Luft hat sich geändert
    .label = Lufttemperatur jetzt (kältere gibt keine Zeit dazu)
    .act = Übernehmen
pot-left = Restzeit eingeben
    .label = Restzeit laut anderem Telefon oder Uhr
    .act = Übernehmen
pot-nameless = Ansatz
pot-done = Fertig: { $step }
pot-doubt =
    .unshown = Keine Uhr. Ansatz selbst beobachten.
    .working = Uhr wird berechnet. Ansatz selbst beobachten.
    .behind = Alte Minuten. Ansatz selbst beobachten.
    .not-started = Keine Uhr: Telefon kann nicht speichern. Wecker stellen.
    .no-start = Keine Uhr: Mischzeit nicht bekannt.
    .strange = Uhr nicht lesbar. Ansatz selbst beobachten. Beenden: „Uhr“.
card-code = QR-Code des Links: { $told }
card-opens = Zum Öffnen scannen
link-not-looked-at = Link nicht geprüft: keine Verbindung. Eigene Werte sind unverändert.
link-used = Werte aus dem Link eingetragen.
link-use = Übernehmen
link-keep-mine = Eigene behalten
link-try-again = Noch einmal
link-shows = Im Link steht: { $words }. Eigene Werte sind unverändert.
    .this = Aus einem Link. Eigene Werte sind unverändert.
paste-strange = Kein Link von Covemix. Nichts wurde geändert.
paste-no-camera = Kamera geht nicht: Link einfügen.
paste-unread = Link nicht geprüft. Noch einmal versuchen.
share-copied = Link kopiert.
    .link = Link kopiert. Er öffnet sich ohne Empfang.
    .words = Text kopiert.
share-copy-the-link = Link kopieren
share-pot = Anderes Telefon: scannen, zeigt dieselbe Uhr.
share-code = QR-Code des Links { $link }
share-too-much = Zu viel für einen QR-Code. Link senden.
share-unmade = Link nicht erstellt. Noch einmal versuchen.
share-copy-marked = Markierten Text oben kopieren.
store-blocked = Älterer Tab sperrt Ausrüstung und Protokoll. Ihn schließen.
store-failed = Der Browser kann nicht speichern (privater Modus oder volles Telefon). Eingaben sind noch da.
store-newer = Ein neueres Covemix hat hier Ausrüstung, Protokoll und laufende Ansätze gespeichert. Mit Verbindung neu öffnen.
store-may-clear = Bei wenig Platz kann der Browser Ausrüstung und Protokoll löschen. Ab und zu als Datei speichern.
backup-nothing = Nichts: Alles ist schon hier.
backup-nameless = ohne Namen
backup-replaced = Die Datei hat alles ersetzt.
backup-added = Datei geladen.
boat-demo = Beispiel-Dingi eingetragen.
boat-emptied = Boot ist leer.
boat-full = Liste voll. Erst ein Reststück entfernen.
boat-no-roll = Braucht keine Rolle aus der Ausrüstung.
boat-rolls =
    Die Zuschnittliste nutzt jetzt { $count ->
        [one] 1 Rolle
       *[other] { $count } Rollen
    } aus der Ausrüstung.
boat-left = Rest in der Ausrüstung: { $left }.
clock-mixed = Jetzt gemischt. Lufttemperatur dieser Seite gilt.
pot-link = Im Link ist ein laufender Ansatz. { $words }
    .unread = Im Link ist ein laufender Ansatz, nicht geprüft.
    .again = Noch einmal
    .add = Hinzufügen
pot-logged = Der Ansatz ist im Protokoll.
pot-ended = Ansatz zu Ende.
kit-copy = { $name }, Kopie
kit-copied = { $name } ist kopiert.
kit-removed = { $name } ist entfernt.
kit-taught = { $name } hat jetzt ein eigenes Arbeitstempo.
kit-use-rates = Eigenes Tempo nehmen
entry-change = Ändern
entry-copy = Kopieren
setting-unkept = Dieser Browser kann nicht speichern. Gilt, bis die Seite geschlossen wird.
log-removed = Der Ansatz ist entfernt.
log-again = Neu mischen
    .done = Steht wieder unter „Mischen“.
plan-no-seams = Das Boot hat noch keine Nähte.
pour-unkept = Nicht gespeichert: Der Browser kann es nicht.
pour-batch-logged = Im Protokoll, zählt ab jetzt.
pour-anew = Neu: letzte Messungen gelöscht.
pour-logged = Der Ansatz ist im Protokoll.
    .more = Naht, Charge, Ergebnis
engine-missing = Rechenprogramm nicht geladen. Mit Verbindung neu öffnen. Sonst ist der Browser zu alt.
    .server = Rechenprogramm nicht geladen. Mit Verbindung fragt „Berechnen“ den Server.
pick-put-away = Neue Wahl: vorige Werte beiseitegelegt.
page-not-old = Alte Ergebnisse: auf neue warten.
store-unkept = Dieser Browser kann nicht speichern. Gilt, bis die Seite geschlossen wird.
page-our-fault = Berechnung fehlgeschlagen. Eingabe in Ordnung. Jede Änderung rechnet neu.
    .why = Berechnung fehlgeschlagen ({ $why }). Eingabe in Ordnung. Jede Änderung rechnet neu.
row-removed = { $called } ist entfernt.
steps-working = Rechnet. Unten: der Schritt davor.
steps-step = Schritt { $step } von { $all }: tippen, wenn fertig
steps-then = Dann: { $label } { $figure }
backup-begun = begonnen { $when }
backup-names = { $names } und { $count } weitere
backup-changes =
    { $way ->
        [comes] Neu
       *[goes] Entfernt
    }: { $store ->
        [kit] { $count } Stück Ausrüstung
        [log]
            { $count ->
                [one] { $count } Protokolleintrag
               *[other] { $count } Protokolleinträge
            }
       *[pots]
            { $count ->
                [one] { $count } laufender Ansatz
               *[other] { $count } laufende Ansätze
            }
    } ({ $names })
backup-holds = Datei: { $file }. Dieses Telefon: { $phone }.
backup-over =
    Keine Uhr startet: { $count ->
        [one] 1 Ansatz ist
       *[other] { $count } Ansätze sind
    } längst zu Ende ({ $names })
backup-runs-on = Weiter laufen hier: { $pots }.
backup-count =
    { $things } in der Ausrüstung, { $count ->
        [one] 1 Ansatz
       *[other] { $count } Ansätze
    }
    .others =
        { $count ->
            [one] { $count } anderer Protokolleintrag
           *[other] { $count } andere Protokolleinträge
        }
    .pots =
        { $count ->
            [one] { $count } laufender Ansatz
           *[other] { $count } laufende Ansätze
        }
lost-newer = Ein Update ist bereit. Es wartet, weil vielleicht ein Ansatz läuft. Dessen Uhr läuft danach weiter.
lost-back = Covemix mit Verbindung noch einmal öffnen. Ausrüstung und Protokoll sind getrennt gespeichert.
lost-pots =
    { $count ->
        [one] Ein Ansatz läuft
       *[other] { $count } Ansätze laufen
    }, und hier klingelt kein Alarm. Wecker stellen, Ansatz selbst beobachten.
lost-pot = Ein Ansatz
    .unread = { $called }: Uhr nicht lesbar.
    .mixed = { $called }: gemischt um { $mixed }.
    .lasts = { $called }: gemischt um { $mixed }, ab da { $lasts } verarbeitbar.
lost-gone = Covemix ist auf diesem Telefon gelöscht, und es gibt keinen Empfang.
lost-damaged = Covemix auf diesem Telefon ist beschädigt, Teil nicht geladen.
offline-damaged = Covemix auf diesem Telefon ist beschädigt: Teil nicht geladen ({ $part }).
    .mend = Covemix mit guter Verbindung neu öffnen. Ausrüstung und Protokoll liegen getrennt.

## Language: how another one is taken up

language-offer = Covemix gibt es auch auf Deutsch.
language-stay = Jetzt nicht
language-unfetched = Sprache nicht geladen. Mit Verbindung noch einmal versuchen.
language-unkept = Dieser Browser kann nicht speichern, dieser Server sendet nur eine Sprache.
setting-language = Sprache
    .help = Für alle Seiten. Eingaben bleiben. Kein Bootsbauer hat das Deutsche geprüft.

## Data: what was kept as words before

log-volume = Gemischtes Volumen
kept-word =
    .stiffening = anziehend
    .good = brauchbar
    .gone = steif
    .cup = Becher
    .bag = Spritzbeutel
    .tray = Schale
    .bead = Hohlkehle
    .roll = Rolle
    .film = Film
    .filler = Füllstoff
    .resin = Harz
    .sun = Sonne
    .some = etwas
    .full = voll
    .white = weiß
    .bare = roh
    .wet = nass
    .putty = Spachtelmasse
    .dark = dunkel
    .black = schwarz
    .glass = Glas
    .thick = dick
    .doubt = Zweifel
    .mass = Masse
    .air = Luft
    .loss = Verlust
    .heat = Wärme
    .width = Breite
    .mix = Mischung
    .place = auftragen
    .tool = abziehen
    .clean = säubern
    .soak = tränken
    .lay = auflegen
    .press = entlüften
    .peel = Abreißgewebe
    .to = bis
    .from = aus
    .each = beide
    .in = innen
    .out = außen
lead-done = { $label }: erledigt.

## From a laptop to a phone: the page of `covemix serve --lan`, in plain http

bring-title = Covemix für dieses Telefon
    .why = { $name } gibt Covemix an Telefone in seinem Netz. Ein Telefon, das dem Zertifikat vertraut, behält die App und braucht danach kein Netz mehr.
    .covers = Das Zertifikat gilt nur für { $covered }. Es kann für keine andere Seite bürgen.
    .remove = Von einem Telefon entfernen
bring-compare = Fingerabdruck vergleichen
    .why = Jemand in diesem Netz könnte diese Seite verändern. Was das Telefon vom Zertifikat zeigt, mit dem Bildschirm des Laptops vergleichen. Weicht ein Zeichen ab, nicht vertrauen, sondern entfernen.
    .sum = SHA-256-Fingerabdruck des Zertifikats
bring-iphone = iPhone und iPad
    .get = Diese Seite in Safari öffnen. Das Profil laden und erlauben.
    .file = Profil laden
    .install = Einstellungen öffnen, „Profil geladen“ antippen. Dort „Mehr Details“, dann das Zertifikat, und SHA-256 vergleichen.
    .agree = Ist es gleich, zurückgehen und „Installieren“ antippen.
    .trust = Einstellungen, Allgemein, Info, Zertifikatsvertrauenseinstellungen öffnen. Das mit dem Namen Covemix einschalten.
bring-android = Android-Telefon
    .get = Diese Seite in Chrome öffnen. Das Zertifikat laden. Warnt Chrome vor der Datei, sie behalten.
    .file = Zertifikat laden
    .install = In den Einstellungen nach „CA-Zertifikat“ suchen. „Trotzdem installieren“ wählen, dann die Datei.
    .compare = In den Einstellungen nach „Vertrauenswürdige Anmeldedaten“ suchen. „Nutzer“ öffnen, das Zertifikat antippen, SHA-256 vergleichen.
    .notice = Android meldet dann, das Netz könne überwacht werden: bei jedem selbst installierten Zertifikat.
bring-computer = Anderer Computer
    .get = Das Zertifikat laden. SHA-256 vergleichen, dann im Browser oder System als vertraut für Webseiten hinzufügen.
bring-open = Covemix öffnen
    .stays = Mit diesem Namen öffnen. Er bleibt, welche Adresse der Router dem Laptop auch gibt.
    .missing = Dieses Telefon findet { $name } nicht. Die Adresse darunter nehmen.
    .by-address = Mit der Adresse, wenn das Telefon den Namen nicht findet:
bring-moves = Wenn sich die Adresse ändert
    .why = Das Telefon behält Ausrüstung und Protokoll unter der geöffneten Adresse. Unter einer anderen beginnt Covemix leer.
    .router = Mit { $address } geöffnet? Im Router diese Adresse für den Laptop reservieren.
    .save = Eine Kopie als Datei sichern:
    .back = Unter der neuen Adresse die Ausrüstung öffnen und „{ $button }“ antippen.
bring-remove = Zertifikat entfernen
    .iphone = iPhone und iPad: Einstellungen, Allgemein, VPN und Geräteverwaltung, das mit dem Namen Covemix, Profil entfernen.
    .android = Android: in den Einstellungen nach „Vertrauenswürdige Anmeldedaten“ suchen, „Nutzer“ öffnen, das mit dem Namen Covemix antippen, entfernen.
    .computer = Anderer Computer: dort löschen, wo es hinzugefügt wurde.
    .stays = Die App öffnet weiter, mit Ausrüstung und Protokoll. Neues von hier bekommt sie nicht.
bring-not-here = Unter dieser Adresse steht nichts.
    .back = Zurück zum Zertifikat
missing-page = Unter dieser Adresse steht keine Seite von Covemix.
    .back = Covemix öffnen
backup-address = Dieses Telefon behält alles unter der Adresse { $address }. Unter einer anderen beginnt Covemix leer. Vorher eine Kopie sichern.


## Run: a batch of a plan from the wood to the peel ply, a step at a time

run-go = Nächster Ansatz, Schritt für Schritt
knock-off = Doppelt klopfen: aus
knock-on = Doppelt klopfen: ein
knock-try = Telefon auf die Werkbank legen. Zur Probe daneben zweimal klopfen.
knock-felt = Gespürt. Zweimal klopfen: nächster Schritt. Beim Abmessen und beim Start einer Uhr tippen. Auch zwei Hammerschläge können zählen: Rückgängig.
knock-none = Hier ist kein Bewegungssensor. Stattdessen tippen.
knock-refused = Dieses Telefon gibt den Bewegungssensor nicht frei. Stattdessen tippen.
run-calendar = Termine für den Kalender
run-refused = Kein Ansatz mehr. Siehe Plan.
run-part = Stück für Helfer
    .none = Stück jetzt nicht im Ansatz. Nachfragen.
    .what = Helfer: { $piece }
run-hand = Stück an Helfer geben
    .piece = { $piece }: scannen für gleiche Minuten. Wenn fertig gerufen, Schritte hier tippen.
run-tape = Zu wenig Zeit für das Glasband
    .fits = Auflegen, was geht
    .all = Alles auflegen
run-air = Luft abgelesen vor
    .plan = Jetzt das Thermometer ablesen.
    .age = Vor { $span } abgelesen. Noch einmal.
run-ready = Alles bereit
    .under = Beutel, Abziehform, Schaber, Lappen, zwei Paar Handschuhe.
    .tape = Glasband und Abreißgewebe geschnitten: { $lengths }. Beutel, Schale, Rolle, Schaber, Lappen, zwei Paar Handschuhe.
run-prepare = Holz vorbereiten
    .under = Trocken, angeschliffen, ohne Staub, abgeklebt.
run-protect = Handschuhe und Schutzbrille an
    .under = Sicherheitsdatenblatt lesen. Frische Luft herein.
run-keep = In die Schale, zuerst
run-filler = Füllstoff, bis es steht, etwa
    .under = Maske auf, bevor die Dose offen ist.
run-bag = Spachtelmasse in den Beutel, sofort
    .under = Ein voller Becher wird heiß. Beutel, Abziehform und Schaber bereit.
run-place = Wird der Beutel heiß: aufhören. Ins Freie.
run-clean = Haut nie mit Lösemittel säubern.
run-gate = Zeit reicht nicht für alles. Jetzt nur
    .all = Zu zweit: alles auflegen
run-tray = Alles in die Schale gießen
    .under = Frische Handschuhe. Nichts im Becher lassen: wird heiß.
run-lay = Mitte auf die Ecke. Enden überlappen.
run-roll = Weiße Stellen: Harz darauf, wieder rollen.
run-peel = Ohne Falten andrücken.
run-cleanup = Aufräumen
    .under = Reste im Freien dünn ausbreiten, ohne Deckel. Handschuhe aus, mit Seife und Wasser waschen.
run-date = Abreißgewebe abziehen ab
    .bare = Fertig
    .unknown = Wann es weiter geht, sagt das Etikett.
    .under = Erst fühlen: darf nicht kleben.
    .coat = Zweite Schicht von { $opens } bis { $closes }. Erst fühlen: klebrig, aber nicht mehr nass.
    .shut = Vor der zweiten Schicht schleifen: Zeit endet, bevor das Abreißgewebe ab darf.
    .off = Abreißgewebe abziehen
    .coats = Zweite Schicht
run-kept = Steht im Protokoll und im Plan.
run-window =
    .bag = Beutel
    .cup = Becher
    .cove = Weiche Hohlkehle
    .film = Nasser Film
    .hurry = beeilen
    .late = reicht nicht
    .over = vorbei
run-saved = Noch zu retten
    .bag = Zeit reicht nicht. Auftragen, was fließt, dann aufhören. Strang gerade abschneiden.
    .bag-over = Beutelzeit ist um. Aufhören, wenn es Fäden zieht oder heiß wird. Nie verdünnen.
    .cove = Die Hohlkehle bleibt nicht weich. Nur fertig machen, was weich ist. Rest nach dem Härten schleifen, zweite Lage.
    .cove-over = Zeit der Hohlkehle ist um. Aufhören, wenn das Werkzeug reißt. Nach dem Härten schleifen, zweite Lage.
    .cup = Becher jetzt in die Schale gießen.
    .film = Zeit reicht nicht. Rollen, was liegt. Darauf Abreißgewebe. Rest nach dem Härten schleifen.
    .cut = Zeit nur für { $length } Glasband. Dort abschneiden. Rest nach dem Härten.
    .cut-done = Glasband dort abschneiden. Rest nach dem Härten.
    .leave = Kein Harz mischen. Glasband erst nach dem Härten.
    .two = Zu zweit passt alles: eine Person tränkt, eine legt auf.
    .roll = Höchstens noch { $length } auflegen. Gerade abschneiden. Rollen, was liegt.
    .roll-over = Nichts mehr auflegen. Rollen, was liegt, gerade abschneiden. Rest nach dem Härten.
