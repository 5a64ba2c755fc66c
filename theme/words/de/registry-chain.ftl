## Größen, Beziehungen, ihre Quellen und Fehler: Kette

quantity-chain-size = Nummer der Kette
    .choice-1 = 06B
    .choice-2 = 08B
    .choice-3 = 10B
    .choice-4 = 12B
    .choice-5 = 16B
    .choice-6 = 20B
    .choice-7 = 24B
    .choice-8 = 35
    .choice-9 = 40
    .choice-10 = 50
    .choice-11 = 60
    .choice-12 = 80
    .choice-13 = 100
    .choice-14 = 120
    .choice-15 = 140
    .choice-16 = 160
    .choice-17 = 28B
    .choice-18 = 32B

quantity-chain-pitch = Teilung der Kette

quantity-chain-mass = Masse der Kette je Länge, alle Stränge

quantity-chain-breaking-load = Mindestbruchkraft der Kette, alle Stränge

quantity-chain-teeth-small = Zähnezahl des kleinen Kettenrads

quantity-chain-teeth-large = Zähnezahl des großen Kettenrads

quantity-chain-lie = Lage des Kettentriebs
    .choice-1 = waagerecht oder nahezu
    .choice-2 = steil oder senkrecht

quantity-chain-load-comes = Art der Last
    .choice-1 = gleichmäßig
    .choice-2 = stoßweise oder mit wechselnder Richtung

quantity-chain-fixed-centres = ob der Achsabstand fest ist
    .choice-1 = nein
    .choice-2 = ja

quantity-chain-pitch-dia-small = Teilkreisdurchmesser des kleinen Kettenrads

quantity-chain-pitch-dia-large = Teilkreisdurchmesser des großen Kettenrads

quantity-chain-outside-dia-small = Kopfkreisdurchmesser des kleinen Kettenrads

quantity-chain-ratio = Übersetzung des Kettentriebs

quantity-chain-speed-small = Drehzahl des kleinen Kettenrads

quantity-chain-speed-large = Drehzahl des großen Kettenrads

quantity-chain-velocity = Kettengeschwindigkeit

quantity-chain-chordal = Ungleichförmigkeit durch den Polygoneffekt am kleinen Kettenrad

quantity-chain-length-pitches = Kettenlänge in Teilungen beim Achsabstand auf der Zeichnung

quantity-chain-length-exact = genaue Kettenlänge in Teilungen beim Achsabstand auf der Zeichnung

quantity-chain-links = Gliederzahl der Kette

quantity-chain-centres-taut = Achsabstand, bei dem die neue Kette keine Überlänge hat

quantity-chain-centres = gemessener Achsabstand

quantity-chain-centres-pitches = Achsabstand in Teilungen

quantity-chain-span = freie Trumlänge zwischen den Kettenrädern

quantity-chain-tangent-angle = Winkel zwischen einem Trum und der Mittenlinie

quantity-chain-wrap-small = Umschlingungswinkel am kleinen Kettenrad

quantity-chain-wrap-verdict = Urteil über die Umschlingung
    .choice-1 = Umschlingung groß genug
    .choice-2 = Umschlingung zu klein

quantity-chain-set-sag = Durchhang beim letzten Spannen der Kette, als Anteil der Trumlänge

quantity-chain-sag-share-wanted = Solldurchhang unter dem Lineal, als Anteil der Trumlänge

quantity-chain-sag-wanted = Solldurchhang unter dem Lineal

quantity-chain-sag-by-centres = Solldurchhang, wenn der Anteil vom Achsabstand genommen wird

quantity-chain-sag = Durchhang des Leertrums unter dem Lineal, in der Trummitte

quantity-chain-sag-share = Durchhang als Anteil der Trumlänge

quantity-chain-sag-pressed = Eindrücktiefe: Tiefe der Trummitte unter dem Lineal, von Hand niedergedrückt

quantity-chain-movement-share = ganzer Weg der Trummitte als Anteil der Trumlänge

quantity-chain-movement-least = kleinster zulässiger Weg der Trummitte

quantity-chain-movement-most = größter zulässiger Weg der Trummitte

quantity-chain-sag-verdict = Urteil über den Weg des Leertrums
    .choice-1 = zu straff
    .choice-2 = im zulässigen Bereich
    .choice-3 = zu locker

quantity-chain-excess = Überlänge der Kette (Trum minus gerade Trumlänge)

quantity-chain-excess-wanted = Überlänge bei Solldurchhang

quantity-chain-incline = Neigung der Mittenlinie gegen die Waagerechte, zum großen Kettenrad hin steigend

quantity-chain-strand-incline = Neigung des Leertrums (unten) gegen die Waagerechte

quantity-chain-slack-tension = Zug im Leertrum

quantity-chain-take-up-move = Verschiebung der Wellen auseinander

quantity-chain-screw-lead = Gewindesteigung der Spannschraube

quantity-chain-screw-turns = Umdrehungen der Spannschraube

quantity-chain-turns-made = ausgeführte Umdrehungen der Spannschraube, Wellen auseinander

quantity-chain-move-made = ausgeführte Verschiebung der Wellen auseinander

quantity-chain-excess-after = Überlänge nach der Verschiebung

quantity-chain-sag-after = Durchhang unter dem Lineal nach der Verschiebung

quantity-chain-take-up-left = verbleibender Spannweg

quantity-chain-take-up-verdict = Urteil über den Spannweg
    .choice-1 = verbleibender Spannweg reicht
    .choice-2 = verbleibender Spannweg reicht nicht

quantity-chain-wear = Längung der Kette durch Verschleiß

quantity-chain-wear-set = Längung beim letzten Spannen der Kette

quantity-chain-wear-pitches = Zahl der Teilungen, über die gemessen wird

quantity-chain-wear-length = über diese Teilungen gemessene Länge, Kette straff gezogen

quantity-chain-wear-limit = Längung, bei der die Kette ersetzt wird

quantity-chain-wear-length-limit = Länge über die Teilungen, bei der die Kette ersetzt wird

quantity-chain-wear-verdict = Urteil über den Verschleiß
    .choice-1 = innerhalb der Grenze
    .choice-2 = Kette ersetzen

quantity-chain-wear-growth = Zuwachs der ganzen Kette durch Verschleiß

quantity-chain-pull = Kettenzug im Lasttrum

quantity-chain-service-factor = Betriebsfaktor

quantity-chain-strands = Zahl der Stränge

quantity-chain-strand-factor = Strangfaktor

quantity-chain-tooth-factor = Zähnezahlfaktor

quantity-chain-design-power = Auslegungsleistung für einen Strang

quantity-chain-rating-plates = Leistung, die die Laschen eines Strangs vertragen

quantity-chain-rating-rollers = Leistung, die Rollen und Buchsen eines Strangs vertragen

quantity-chain-rating = übertragbare Leistung eines Strangs

quantity-chain-rating-verdict = Urteil über die übertragbare Leistung
    .choice-1 = groß genug
    .choice-2 = zu klein

quantity-chain-safety-factor = Sicherheit gegen Bruch

quantity-chain-safety-verdict = Urteil über die Sicherheit einer Kette mit Verschlussglied im Presssitz
    .choice-1 = sicher genug
    .choice-2 = nicht sicher genug

quantity-chain-lubrication = Art der Schmierung
    .choice-1 = von Hand oder Tropfschmierung
    .choice-2 = Ölbad oder Schleuderscheibe
    .choice-3 = Druckumlaufschmierung

relation-chain-pitch-table = Teilung aus der Nummer der Kette
    .method = Die Ziffern vor der letzten sind Achtelzoll (60: 6/8 in); vor einem B sind es Sechzehntelzoll (12B: 12/16 in).
    .place = Maßtabelle (Zoll- und B-Reihe)
    .turn-roller = Sie haben den Rollendurchmesser genommen; die Teilung ist der Abstand von Bolzen zu Bolzen.
    .turn-width = Sie haben die lichte Weite zwischen den Innenlaschen genommen; die Teilung ist der Abstand von Bolzen zu Bolzen.
    .turn-doubled = Sie haben zwei Teilungen als eine gezählt; die Teilung reicht von einem Bolzen zum allernächsten, nicht von einem Außenglied zum nächsten.

relation-chain-mass-table = Masse der Kette je Länge aus ihrer Nummer
    .method = Suchen Sie die Nummer der Kette in der Kettentabelle; jeder Strang wiegt noch einmal so viel.
    .limits = die Listen weichen in der Zollreihe bis 5 %, in der B-Reihe bis 10 % voneinander ab und geben für Mehrfachketten etwas weniger oder mehr an als das entsprechende Vielfache; 140 und 160 aus dem Gedächtnis
    .place = Tabelle 17-19 (Zollreihe); Maßtabelle (B-Reihe)
    .turn-row-below = Sie haben die Zeile der nächstgrößeren Kette abgelesen.
    .turn-one-strand = Sie haben die Masse eines Strangs genommen; jeder Strang der Kette wiegt ebenso viel.

relation-chain-breaking-load-table = Mindestbruchkraft aus der Nummer der Kette
    .method = Suchen Sie die Nummer der Kette mit der Zahl ihrer Stränge in der Kettentabelle. In der Zollreihe zählt jeder Strang ganz; in der B-Reihe halten zwei oder drei weniger als das Zwei- oder Dreifache.
    .limits = B-Reihe nach ISO 606:2004, aus dem Gedächtnis; vier Stränge und mehr im Verhältnis zu dreien
    .place = Mindestbruchkraft
    .turn-row-below = Sie haben die Zeile der nächstgrößeren Kette abgelesen.
    .turn-one-strand = Sie haben einen Strang genommen; die Kette hat mehr davon und hält mehr.

relation-chain-pitch-dia-small-sine = Teilkreisdurchmesser des kleinen Kettenrads
    .place = Teilkreisdurchmesser des Kettenrads
    .turn-radius = Sie haben den Radius angegeben; gefragt ist der Durchmesser.
    .turn-outside = Sie haben den Kopfkreisdurchmesser über die Zahnspitzen ausgerechnet; der Teilkreis geht durch die Bolzenmitten.
    .turn-whole-turn = Sie haben 360° durch die Zähnezahl geteilt; in die Formel gehört der halbe Zahnwinkel, 180°/z.
    .turn-no-pi = Sie haben die Teilung mit der Zähnezahl malgenommen, und das geht einmal um das Kettenrad herum; der Durchmesser ist etwa um den Faktor π kleiner.
    .turn-large = Sie haben die Zähnezahl des großen Kettenrads genommen; hier geht es um das kleine.

relation-chain-pitch-dia-large-sine = Teilkreisdurchmesser des großen Kettenrads
    .place = Teilkreisdurchmesser des Kettenrads
    .turn-radius = Sie haben den Radius angegeben; gefragt ist der Durchmesser.
    .turn-whole-turn = Sie haben 360° durch die Zähnezahl geteilt; in die Formel gehört der halbe Zahnwinkel, 180°/z.
    .turn-no-pi = Sie haben die Teilung mit der Zähnezahl malgenommen, und das geht einmal um das Kettenrad herum; der Durchmesser ist etwa um den Faktor π kleiner.
    .turn-small = Sie haben die Zähnezahl des kleinen Kettenrads genommen; hier geht es um das große.

relation-chain-outside-dia-small-cotangent = Kopfkreisdurchmesser des kleinen Kettenrads
    .limits = Kettenrad mit gedrehtem Außendurchmesser, Näherung
    .place = Kopfkreisdurchmesser, Näherung
    .turn-pitch-circle = Sie haben den Teilkreisdurchmesser ausgerechnet; die Zähne stehen über den Teilkreis hinaus.
    .turn-no-0-6 = Sie haben die 0,6 weggelassen; um diesen Anteil der Teilung stehen die Zähne über die Sehne hinaus.
    .turn-radius = Sie haben den Radius angegeben; gefragt ist der Durchmesser.

relation-chain-ratio-teeth = Übersetzung aus den Zähnezahlen
    .source = jeder Zahn nimmt an beiden Kettenrädern eine Teilung auf
    .turn-inverted = Sie haben den Kehrwert der Übersetzung genommen; das kleine Kettenrad treibt, also teilt man die große Zähnezahl durch die kleine.
    .turn-difference = Sie haben die Differenz der Zähnezahlen genommen; die Übersetzung ist die eine geteilt durch die andere.

relation-chain-speed-small-shaft = Drehzahl des kleinen Kettenrads
    .method = Das kleine Kettenrad sitzt mit einer Passfeder auf der Abtriebswelle des Getriebes, also drehen sich beide gleich.
    .source = das kleine Kettenrad sitzt auf der Abtriebswelle des Getriebes
    .turn-motor = Sie haben die Drehzahl des Motors genommen; das kleine Kettenrad sitzt auf der Abtriebswelle des Getriebes und dreht sich mit ihr.
    .turn-large-sprocket = Sie haben die Übersetzung des Kettentriebs hineingerechnet; sie ändert nur die Drehzahl des großen Kettenrads.

relation-chain-speed-large-teeth = Drehzahl des großen Kettenrads
    .source = jeder Zahn nimmt an beiden Kettenrädern eine Teilung auf
    .turn-inverted = Sie haben den Kehrwert der Übersetzung genommen; das größere Kettenrad dreht sich langsamer.
    .turn-motor = Sie sind von der Drehzahl des Motors ausgegangen; zwischen Motor und Kette liegt noch das Getriebe.
    .turn-no-ratio = Sie haben die Übersetzung weggelassen; die Kette überträgt von einem Kettenrad zum anderen ihre Geschwindigkeit, nicht die Drehzahl.

relation-chain-velocity-teeth = Kettengeschwindigkeit aus Zähnezahl, Teilung und Drehzahl
    .source = je Zahn läuft eine Teilung durch
    .turn-wrong-teeth = Sie haben die Zähnezahl des großen Kettenrads mit der Drehzahl des kleinen genommen; Zähnezahl und Drehzahl müssen zum selben Kettenrad gehören.
    .turn-wrong-speed = Sie haben die Drehzahl des großen Kettenrads mit der Zähnezahl des kleinen genommen; Zähnezahl und Drehzahl müssen zum selben Kettenrad gehören.
    .turn-motor = Sie haben die Drehzahl des Motors genommen; das kleine Kettenrad dreht sich mit der Abtriebswelle des Getriebes.
    .turn-pi = Sie haben auch noch mit π malgenommen; Zähnezahl mal Teilung ist schon einmal um das Kettenrad herum.

relation-chain-velocity-pitch-circle = Kettengeschwindigkeit aus dem Teilkreis
    .limits = die Kette liegt als Vieleck auf dem Kettenrad: ab 13 Zähnen bis 1 % mehr als Zähnezahl mal Teilung
    .source = Geschwindigkeit eines Punktes auf dem Teilkreis
    .turn-radius = Sie haben den Radius genommen; einmal um den Teilkreis ist π mal der Durchmesser.
    .turn-no-pi = Sie haben π weggelassen; jede Umdrehung bewegt die Kette um π mal den Durchmesser weiter.
    .turn-large = Sie haben den Durchmesser des großen Kettenrads mit der Drehzahl des kleinen genommen; beide müssen zum selben Kettenrad gehören.
    .turn-motor = Sie haben die Drehzahl des Motors genommen; das kleine Kettenrad dreht sich mit der Abtriebswelle des Getriebes.

relation-chain-chordal-radius = Polygoneffekt als Abnahme des Radius
    .source = Vieleck in seinem Umkreis
    .turn-whole-turn = Sie haben 360° durch die Zähnezahl geteilt; in die Formel gehört der halbe Zahnwinkel, 180°/z.
    .turn-large = Sie haben die Zähnezahl des großen Kettenrads genommen; ungleichförmig läuft die Kette durch das kleine.
    .turn-cosine = Sie haben den Kosinus selbst angegeben; gefragt ist, was ihm zu eins fehlt.

relation-chain-chordal-range = Polygoneffekt als Schwankung der Kettengeschwindigkeit, geteilt durch ihren Mittelwert
    .limits = eine zweite Definition, einige Hundertstel über der Abnahme des Radius
    .place = Gl. 17-31 (Nummer aus dem Gedächtnis)
    .turn-large = Sie haben die Zähnezahl des großen Kettenrads genommen; ungleichförmig läuft die Kette durch das kleine.

relation-chain-length-pitches-three-term = Kettenlänge in Teilungen nach der dreigliedrigen Formel
    .limits = weicht bei üblichen Übersetzungen um weniger als 0,06 Teilungen von der genauen Länge ab; Achsabstand 30 bis 50 Teilungen, höchstens 80
    .place = Kap. 14
    .turn-two-terms = Sie haben das dritte Glied der Formel weggelassen; bei ungleichen Kettenrädern liegen die Trume schräg und umschlingen das große weiter.
    .turn-centres-once = Sie haben den Achsabstand einmal genommen; die Kette läuft hin und zurück, also zählt er doppelt.
    .turn-all-teeth = Sie haben alle Zähne dazugezählt; die Kette liegt auf jedem Kettenrad nur etwa zur Hälfte auf.
    .turn-not-divided-by-two-pi = Sie haben im dritten Glied der Formel die Teilung durch 2π weggelassen; teilen Sie die Differenz der Zähnezahlen durch 2π, bevor Sie quadrieren.
    .turn-divided-by-pi = Sie haben im dritten Glied der Formel durch π geteilt; es sind 2π.
    .turn-third-term-upside-down = Sie haben das dritte Glied der Formel mit dem Achsabstand in Teilungen malgenommen; es wird durch ihn geteilt.

relation-chain-length-exact-tangents = Kettenlänge in Teilungen aus Bögen und Tangenten
    .method = Der Winkel des Trums zur Mittenlinie ist asin((D2 − D1)/(2C)); die Tangenten sind C mal seinem Kosinus, die Bögen zählt man in Zähnen.
    .source = gemeinsame Tangenten zweier Kreise
    .turn-two-terms = Sie haben beide Trume parallel zur Mittenlinie und jedes Kettenrad zur Hälfte genommen; bei ungleichen Kettenrädern liegen die Trume schräg und umschlingen das große weiter.
    .turn-centres-once = Sie haben ein Trum gezählt; die Kette läuft hin und zurück.
    .turn-all-teeth = Sie haben alle Zähne dazugezählt; die Kette liegt auf jedem Kettenrad nur etwa zur Hälfte auf.

relation-chain-links-even = Erforderliche Gliederzahl
    .method = Runden Sie auf die nächste gerade Zahl auf: Eine ungerade verlangt ein gekröpftes Glied, und das ist schwächer. Liegt die Länge nur wenige Hundertstel einer Teilung über einer geraden Zahl, höchstens 0,05, so bleibt es bei dieser: Achsabstände sind gerundet, und die Spannvorrichtung gibt den Rest her.
    .limits = die 0,05 Teilung ist übliche Praxis, ohne Quelle
    .place = Rollenkette
    .turn-odd = Sie haben auf die nächste ganze Zahl aufgerundet; eine ungerade verlangt ein schwaches gekröpftes Glied, gehen Sie also weiter zur nächsten geraden.
    .turn-down = Sie haben abgerundet; die Kette wäre zu kurz und ließe sich bei diesem Achsabstand nicht schließen.
    .turn-nearest = Sie haben auf die nächstliegende ganze Zahl gerundet; runden Sie auf, und zwar auf eine gerade. Nur 0,05 Teilung darüber bleibt außer Betracht.
    .turn-one-pair-more = Sie sind ein Gliederpaar zu weit gegangen; nehmen Sie die erste gerade Zahl, die die Länge erreicht oder übersteigt. Höchstens 0,05 Teilung über einer geraden Zahl bleibt außer Betracht.

relation-chain-links-exact = Erforderliche Gliederzahl, aus der genauen Länge
    .method = Runden Sie auf die nächste gerade Zahl auf: Eine ungerade verlangt ein gekröpftes Glied, und das ist schwächer. Liegt die Länge nur wenige Hundertstel einer Teilung über einer geraden Zahl, höchstens 0,05, so bleibt es bei dieser: Achsabstände sind gerundet, und die Spannvorrichtung gibt den Rest her.
    .limits = die 0,05 Teilung ist übliche Praxis, ohne Quelle
    .place = Rollenkette
    .turn-odd = Sie haben auf die nächste ganze Zahl aufgerundet; eine ungerade verlangt ein schwaches gekröpftes Glied, gehen Sie also weiter zur nächsten geraden.
    .turn-down = Sie haben abgerundet; die Kette wäre zu kurz und ließe sich bei diesem Achsabstand nicht schließen.
    .turn-nearest = Sie haben auf die nächstliegende ganze Zahl gerundet; runden Sie auf, und zwar auf eine gerade. Nur 0,05 Teilung darüber bleibt außer Betracht.

relation-chain-centres-taut-exact = Achsabstand zu einer ganzen Gliederzahl, genau
    .method = Ändern Sie den Achsabstand, bis die genaue Länge in Teilungen gleich der Gliederzahl ist.
    .source = gemeinsame Tangenten zweier Kreise
    .turn-equal-sprockets = Sie haben gerechnet, als wären die Kettenräder gleich; ungleiche nehmen dem Achsabstand etwas Kettenlänge weg.
    .turn-not-halved = Sie haben nicht halbiert; die Kette läuft zwischen den Wellen hin und zurück.
    .turn-all-teeth = Sie haben alle Zähne abgezogen; die Kette liegt auf jedem Kettenrad nur etwa zur Hälfte auf.
    .turn-odd-pair = Sie haben ein Glied zu wenig gezählt.

relation-chain-centres-taut-three-term = Achsabstand zu einer ganzen Gliederzahl, dreigliedrige Formel
    .limits = weicht bei üblichen Übersetzungen höchstens um etwa 0,03 Teilungen vom genauen Achsabstand ab
    .place = Kap. 14
    .turn-equal-sprockets = Sie haben gerechnet, als wären die Kettenräder gleich; ungleiche nehmen dem Achsabstand etwas Kettenlänge weg.
    .turn-two-for-four = Sie haben durch zwei geteilt; in der umgestellten Formel steht ein Viertel der Teilung.
    .turn-all-teeth = Sie haben alle Zähne abgezogen; die Kette liegt auf jedem Kettenrad nur etwa zur Hälfte auf.
    .turn-not-divided-by-two-pi = Sie haben unter der Wurzel die Teilung durch 2π weggelassen; teilen Sie die Differenz der Zähnezahlen durch 2π, bevor Sie quadrieren.

relation-chain-centres-set = Achsabstand, bei dem die Kette zuletzt gespannt wurde
    .method = Verschieben Sie die Wellen von dem Achsabstand aus, bei dem die neue Kette straff liegt, bis die Kette mit ihrer damaligen Längung den eingestellten Durchhang hat.
    .source = eingestellter Durchhang, die Überlänge dazu, damaliger Verschleiß und die Verschiebung der Wellen, die dazu gehört

relation-chain-centres-pitches-quotient = Achsabstand in Teilungen
    .limits = üblich 30 bis 50, ohne Spannrad höchstens 80
    .source = Definition
    .turn-span-in-pairs = Sie haben Gliederpaare gezählt; teilen Sie durch eine einzelne Teilung.
    .turn-teeth-added = Sie haben die Länge der ganzen Kette ausgerechnet; gefragt ist nur der Achsabstand, in Teilungen.

relation-chain-span-tangent = Freie Trumlänge zwischen den Kettenrädern
    .source = gemeinsame Tangenten zweier Kreise
    .turn-diameters = Sie haben die Differenz der Durchmesser genommen; die kurze Seite des Dreiecks ist die Differenz der Radien.
    .turn-plus = Sie haben die Quadrate zusammengezählt; der Achsabstand ist die lange Seite des Dreiecks, also ist das Trum kürzer.
    .turn-gap = Sie haben die Lücke zwischen den Kettenrädern genommen; die Trumlänge reicht von Berührpunkt zu Berührpunkt.
    .turn-both-strands = Sie haben beide Trume genommen; die freie Trumlänge gilt für eines.

relation-chain-tangent-angle-sine = Winkel zwischen einem Trum und der Mittenlinie
    .source = gemeinsame Tangenten zweier Kreise
    .turn-diameters = Sie haben die Differenz der Durchmesser durch den Achsabstand geteilt; es gehört die Differenz der Radien hin.
    .turn-doubled = Sie haben den Winkel zwischen den beiden Trumen angegeben; gefragt ist der eines Trums zur Mittenlinie.

relation-chain-wrap-small-sine = Umschlingungswinkel am kleinen Kettenrad
    .limits = mindestens 120°
    .source = gemeinsame Tangenten zweier Kreise
    .turn-large = Sie haben dazugezählt; das ist die Umschlingung des großen Kettenrads. Das kleine ist um weniger als eine halbe Umdrehung umschlungen.
    .turn-once = Sie haben den Winkel des Trums einmal abgezogen; er verkürzt die Umschlingung an beiden Enden.
    .turn-diameters = Sie haben die Differenz der Durchmesser durch den Achsabstand geteilt; es gehört die Differenz der Radien hin oder, mit Durchmessern, der doppelte Achsabstand in den Nenner.
    .turn-angle-only = Sie haben den Winkel zwischen den Trumen angegeben; die Umschlingung ist, was er von 180° übrig lässt.

relation-chain-wrap-verdict-limit = Urteil über die Umschlingung
    .method = Der Umschlingungswinkel am kleinen Kettenrad muss mindestens 120° betragen.
    .turn-half-a-turn = Sie haben eine halbe Umdrehung verlangt; 120° am kleinen Kettenrad genügen.

relation-chain-excess-loop = Überlänge der gelängten Kette bei ihrem Achsabstand
    .method = Gelängte Kette minus straffe Schleife bei diesem Achsabstand: Die ganze Überlänge liegt in einem Trum.
    .source = Länge der gelängten Kette minus straffe Schleife um die Kettenräder

relation-chain-sag-wanted-span = Solldurchhang aus dem Anteil der Trumlänge
    .limits = nahezu waagerechte Kettentriebe haben, niedergedrückt und hochgezogen, einen ganzen Weg von 4 bis 6 % der Trumlänge, und das entspricht etwa 2 % Durchhang; die Hälfte davon, wo die Last stößt oder die Richtung wechselt oder der Trieb senkrecht steht
    .turn-of-centres = Sie haben den Prozentsatz vom Achsabstand genommen; er gilt von der freien Trumlänge.
    .turn-of-half-the-span = Sie haben den Prozentsatz von der halben Trumlänge genommen; gemessen wird der Durchhang in der Trummitte, aber der Prozentsatz gilt von der ganzen.
    .turn-of-the-chain = Sie haben den Prozentsatz von der Länge der ganzen Kette genommen; er gilt von der freien Trumlänge.
    .turn-as-movement = Sie haben den ganzen Weg der Trummitte ausgerechnet; gefragt ist der Durchhang unter dem Lineal.
    .turn-from-movement = Sie haben den Prozentsatz als ganzen Weg genommen; hier gilt er dem Durchhang unter dem Lineal.

relation-chain-sag-excess = Durchhang aus der Überlänge
    .limits = Durchhang bis etwa 5 % der Trumlänge: auf 0,5 % genau
    .source = erstes Glied der Reihe für die Bogenlänge einer flachen Parabel
    .turn-pressed = Sie haben die Formel für ein Trum benutzt, das zu zwei geraden Hälften gedrückt ist; dieses hängt in einem Bogen.
    .turn-upside-down = Sie haben die drei Achtel umgedreht.
    .turn-slack-itself = Sie haben die Überlänge als Durchhang genommen; ein wenig Überlänge ergibt einen weit tieferen Durchhang.
    .turn-half-the-slack = Sie haben die Überlänge auf beide Trume verteilt; das Lasttrum ist gerade, also hängt sie ganz in dem einen.

relation-chain-sag-movement = Durchhang aus dem ganzen Weg
    .source = dieselbe Überlänge, hängend und gedrückt
    .turn-half = Sie haben den Weg halbiert; das ist die Eindrücktiefe, und ein frei hängendes Trum hängt 1,155-mal weniger tief.
    .turn-whole = Sie haben den ganzen Weg als Durchhang genommen; er geht von der geraden Linie nach beiden Seiten und ist von Hand gedrückt.
    .turn-not-halved = Sie haben den ganzen Weg als Eindrücktiefe genommen; er geht nach beiden Seiten, halbieren Sie ihn also zuerst.
    .turn-wrong-way = Sie haben mit 1,155 malgenommen; der Durchhang ist kleiner als die Eindrücktiefe, teilen Sie also.

relation-chain-sag-share-span = Durchhang als Anteil der Trumlänge
    .source = Definition
    .turn-of-centres = Sie haben den Anteil vom Achsabstand genommen; gefragt ist der Anteil der freien Trumlänge.
    .turn-of-half-the-span = Sie haben den Anteil von der halben Trumlänge genommen; er bezieht sich auf die ganze.
    .turn-movement = Sie haben den ganzen Weg genommen; gefragt ist der Durchhang unter dem Lineal.

relation-chain-sag-pressed-excess = Eindrücktiefe aus der Überlänge
    .source = Satz des Pythagoras an den beiden Hälften des Trums, erstes Glied der Reihe
    .turn-hanging = Sie haben die Formel für ein hängendes Trum benutzt; zu zwei geraden Hälften gedrückt, geht es tiefer.
    .turn-slack-itself = Sie haben die Überlänge als Tiefe genommen; ein wenig Überlänge lässt das Trum weit tiefer gehen.
    .turn-not-halved = Sie haben die Hälfte unter der Wurzel weggelassen.

relation-chain-sag-pressed-sag = Eindrücktiefe aus dem Durchhang
    .source = dieselbe Überlänge, hängend und gedrückt
    .turn-divided = Sie haben durch 1,155 geteilt; ein gerade gedrücktes Trum geht tiefer als eines, das hängt.
    .turn-same = Sie haben den Durchhang genommen; zu zwei geraden Hälften gedrückt, geht das Trum 1,155-mal so tief.
    .turn-doubled = Sie haben den Durchhang verdoppelt; die Eindrücktiefe zählt nur nach einer Seite.

relation-chain-sag-pressed-movement = Eindrücktiefe aus dem ganzen Weg
    .source = das Trum bewegt sich über die gerade Linie ebenso weit hinaus wie darunter
    .turn-whole = Sie haben den ganzen Weg genommen; er geht von der geraden Linie nach beiden Seiten, halbieren Sie ihn also.
    .turn-hanging = Sie haben den Durchhang ausgerechnet; gefragt ist die Tiefe, wenn von Hand gedrückt wird.

relation-chain-movement-pressed = Ganzer Weg aus der Eindrücktiefe
    .source = das Trum bewegt sich über die gerade Linie ebenso weit hinaus wie darunter
    .turn-one-side = Sie haben nur eine Seite genommen; der ganze Weg reicht von niedergedrückt bis hochgezogen.
    .turn-from-sag = Sie haben mit 2,31 malgenommen, und das gehört zum Durchhang; die Eindrücktiefe wird einfach verdoppelt.

relation-chain-movement-sag = Ganzer Weg aus dem Durchhang
    .source = dieselbe Überlänge, hängend und gedrückt
    .turn-doubled = Sie haben den Durchhang verdoppelt; von Hand gedrückt geht das Trum 1,155-mal so tief, bis es gerade ist.
    .turn-same = Sie haben den Durchhang als Weg genommen; der Weg ist niedergedrückt und dann hochgezogen, das 2,31-Fache des Durchhangs.
    .turn-one-side = Sie haben nur eine Seite genommen; der ganze Weg geht nach beiden Seiten.

relation-chain-movement-share-span = Ganzer Weg als Anteil der Trumlänge
    .source = Definition
    .turn-of-centres = Sie haben den Anteil vom Achsabstand genommen; gefragt ist der Anteil der freien Trumlänge.
    .turn-half-movement = Sie haben den halben Weg genommen; der zulässige Bereich gilt dem ganzen, nach beiden Seiten.
    .turn-doubled = Sie haben den Weg verdoppelt oder die Trumlänge halbiert; der Weg ist schon der ganze, und der Anteil bezieht sich auf die ganze Trumlänge.
    .turn-hanging-sag = Sie haben den Durchhang genommen; gefragt ist der ganze Weg der Trummitte.

relation-chain-sag-verdict-window = Urteil über den Weg
    .method = Halten Sie den ganzen Weg gegen den zulässigen Bereich: Darunter ist die Kette zu straff, darüber zu locker.
    .limits = 4 bis 6 % der Trumlänge, wenn der Kettentrieb nahezu waagerecht liegt; 2 bis 3 %, wenn er stoßweise oder in wechselnder Richtung läuft oder senkrecht steht
    .turn-half-movement = Sie haben den halben Weg gegen den zulässigen Bereich gehalten; der Bereich gilt dem ganzen, nach beiden Seiten.
    .turn-doubled = Sie haben den Weg verdoppelt; er ist schon der ganze, nach beiden Seiten.
    .turn-hanging-sag = Sie haben den Durchhang gegen den zulässigen Bereich gehalten; der Bereich gilt dem ganzen Weg der Trummitte.
    .turn-tight-for-slack = Sie haben straff und locker verwechselt; bei einem Weg über dem zulässigen Bereich ist die Kette zu locker.

relation-chain-excess-sag = Überlänge aus dem Durchhang
    .limits = Durchhang bis etwa 5 % der Trumlänge: auf 0,5 % genau
    .source = erstes Glied der Reihe für die Bogenlänge einer flachen Parabel
    .turn-pressed = Sie haben die Formel für ein Trum benutzt, das zu zwei geraden Hälften gedrückt ist; dieses hängt in einem Bogen.
    .turn-no-eight = Sie haben in der Formel für die Überlänge die 8 vergessen.
    .turn-no-three = Sie haben die 3 im Nenner vergessen.
    .turn-upside-down = Sie haben die acht Drittel umgedreht.
    .turn-sag-itself = Sie haben den Durchhang als Überlänge genommen; die Überlänge ist weit kleiner, 8δ²/(3L).
    .turn-movement = Sie haben den ganzen Weg eingesetzt, wo der Durchhang hingehört.

relation-chain-excess-catenary = Überlänge aus dem Durchhang, genaue Kurve
    .method = Finden Sie u aus sinh²(u/2)/u = δ/L durch Probieren; die Überlänge ist L (sinh u/u − 1).
    .source = Bogenlänge der Kettenlinie s = c sinh(x/c)
    .turn-pressed = Sie haben die Formel für ein Trum benutzt, das zu zwei geraden Hälften gedrückt ist; dieses hängt in einem Bogen.

relation-chain-excess-pressed = Überlänge aus der Eindrücktiefe
    .source = Satz des Pythagoras an den beiden Hälften des Trums, erstes Glied der Reihe
    .turn-hanging = Sie haben die Formel für ein hängendes Trum benutzt; dieses ist zu zwei geraden Hälften gedrückt.
    .turn-whole-movement = Sie haben den ganzen Weg eingesetzt; die Tiefe zählt ab der geraden Linie und ist die Hälfte davon.
    .turn-no-two = Sie haben die 2 weggelassen, das ergibt die Überlänge einer Hälfte des Trums; gedrückt sind beide Hälften.

relation-chain-excess-wanted-sag = Überlänge bei Solldurchhang
    .limits = Durchhang bis etwa 5 % der Trumlänge: auf 0,5 % genau
    .source = erstes Glied der Reihe für die Bogenlänge einer flachen Parabel
    .turn-linear = Sie haben die Überlänge im gleichen Verhältnis wie den Durchhang umgerechnet; sie wächst mit dem Quadrat des Durchhangs.
    .turn-pressed = Sie haben die Formel für ein Trum benutzt, das zu zwei geraden Hälften gedrückt ist; dieses hängt in einem Bogen.
    .turn-no-eight = Sie haben in der Formel für die Überlänge die 8 vergessen.
    .turn-no-three = Sie haben die 3 im Nenner vergessen.
    .turn-sag-itself = Sie haben den Durchhang als Überlänge genommen; die Überlänge ist weit kleiner, 8δ²/(3L).

relation-chain-movement-low-lie = Kleinster Weg aus Lage des Kettentriebs und Art der Last
    .method = Waagerecht oder nahezu waagerecht bei gleichmäßiger Last: 4 %. Steil oder senkrecht, eine stoßweise oder in der Richtung wechselnde Last, oder beides: 2 %.
    .limits = von der freien Trumlänge; die Betriebsanleitung des Herstellers geht vor
    .turn-other-window = Sie haben den Bereich der anderen Art von Kettentrieb genommen; 4 bis 6 % gelten für einen waagerechten mit gleichmäßiger Last, 2 bis 3 % für jeden anderen.
    .turn-halved-twice = Sie haben einmal für die Lage und einmal für die Stöße halbiert; jedes von beiden halbiert den Bereich, und beide zusammen nicht weiter.
    .turn-most = Sie haben das obere Ende des Bereichs angegeben.
    .turn-as-sag = Sie haben den Weg in einen Durchhang umgerechnet; der Bereich gilt dem Weg selbst.

relation-chain-movement-high-lie = Größter Weg aus Lage des Kettentriebs und Art der Last
    .method = Waagerecht oder nahezu waagerecht bei gleichmäßiger Last: 6 %. Steil oder senkrecht, eine stoßweise oder in der Richtung wechselnde Last, oder beides: 3 %.
    .limits = von der freien Trumlänge; die Betriebsanleitung des Herstellers geht vor
    .turn-other-window = Sie haben den Bereich der anderen Art von Kettentrieb genommen; 4 bis 6 % gelten für einen waagerechten mit gleichmäßiger Last, 2 bis 3 % für jeden anderen.
    .turn-halved-twice = Sie haben einmal für die Lage und einmal für die Stöße halbiert; jedes von beiden halbiert den Bereich, und beide zusammen nicht weiter.
    .turn-least = Sie haben das untere Ende des Bereichs angegeben.
    .turn-as-sag = Sie haben den Weg in einen Durchhang umgerechnet; der Bereich gilt dem Weg selbst.

relation-chain-movement-least-span = Kleinster Weg am Maßstab aus seinem Anteil der Trumlänge
    .limits = von der freien Trumlänge; die Betriebsanleitung des Herstellers geht vor
    .turn-of-centres = Sie haben den Anteil vom Achsabstand genommen; der Bereich ist ein Anteil der freien Trumlänge.
    .turn-halved = Sie haben halbiert, als wäre es die Ablesung nach einer Seite oder der Anteil der halben Trumlänge; der Bereich gilt dem ganzen Weg nach beiden Seiten, als Anteil der ganzen Trumlänge.
    .turn-most = Sie haben das obere Ende des Bereichs angegeben.
    .turn-hanging-sag = Sie haben den Durchhang ausgerechnet; gefragt ist der ganze Weg der Trummitte.
    .turn-taken-for-sag = Sie haben den Anteil für einen Durchhang genommen und den Weg daraus gerechnet; es ist schon der Anteil des Weges.

relation-chain-movement-most-span = Größter Weg am Maßstab aus seinem Anteil der Trumlänge
    .limits = von der freien Trumlänge; die Betriebsanleitung des Herstellers geht vor
    .turn-of-centres = Sie haben den Anteil vom Achsabstand genommen; der Bereich ist ein Anteil der freien Trumlänge.
    .turn-halved = Sie haben halbiert, als wäre es die Ablesung nach einer Seite oder der Anteil der halben Trumlänge; der Bereich gilt dem ganzen Weg nach beiden Seiten, als Anteil der ganzen Trumlänge.
    .turn-least = Sie haben das untere Ende des Bereichs angegeben.
    .turn-hanging-sag = Sie haben den Durchhang ausgerechnet; gefragt ist der ganze Weg der Trummitte.
    .turn-taken-for-sag = Sie haben den Anteil für einen Durchhang genommen und den Weg daraus gerechnet; es ist schon der Anteil des Weges.

relation-chain-sag-by-centres-centres = Solldurchhang aus dem Anteil des Achsabstands
    .limits = bei üblichen Kettentrieben etwa ein Prozent größer als aus der freien Trumlänge: Sagen Sie, welche Länge ein Prüfblatt meint
    .turn-of-half-the-centres = Sie haben den Prozentsatz vom halben Achsabstand genommen; gemessen wird der Durchhang in der Mitte, aber der Prozentsatz gilt vom ganzen.
    .turn-of-the-chain = Sie haben den Prozentsatz von der Länge der ganzen Kette genommen; diese Regel nimmt den Achsabstand.
    .turn-as-movement = Sie haben den ganzen Weg der Trummitte ausgerechnet; gefragt ist der Durchhang unter dem Lineal.
    .turn-from-movement = Sie haben den Prozentsatz als ganzen Weg genommen; hier gilt er dem Durchhang unter dem Lineal.

relation-chain-strand-incline-lower = Neigung des Leertrums
    .limits = Leertrum unten, Mittenlinie steigt zum großen Kettenrad hin
    .source = gemeinsame Tangenten zweier Kreise
    .turn-upper = Sie haben den Winkel des Trums dazugezählt; das untere Trum steigt weniger als die Mittenlinie.
    .turn-line-of-centres = Sie haben die Neigung der Mittenlinie genommen; das Trum liegt schräg zu ihr.
    .turn-doubled = Sie haben den Winkel zwischen den beiden Trumen abgezogen; zwischen einem Trum und der Mittenlinie liegt nur die Hälfte davon.

relation-chain-slack-tension-parabola = Zug im Leertrum aus seinem Durchhang
    .limits = ein Trum; auf 0,2 % genau bis zu einem Durchhang von 2 % der Trumlänge; Trum nicht steiler als 85°
    .place = Kap. 10, parabelförmig hängendes Seil
    .turn-no-eight = Sie haben die 8 im Nenner vergessen.
    .turn-mass-for-weight = Sie haben die Masse je Meter als Gewicht benutzt; nehmen Sie sie mit 9,81 m/s² mal, das ergibt Newton je Meter.
    .turn-four = Sie haben durch 4 statt durch 8 geteilt.
    .turn-half-span = Sie haben die halbe Trumlänge genommen; das steckt schon in der 8, setzen Sie also die ganze ein.
    .turn-movement = Sie haben den ganzen Weg eingesetzt, wo der Durchhang hingehört.
    .turn-pressed = Sie haben die Eindrücktiefe eingesetzt, wo der Durchhang hingehört.
    .turn-incline-left-out = Sie haben die Neigung weggelassen; nur der Teil des Gewichts, der quer zum Trum liegt, biegt es durch.
    .turn-sine = Sie haben den Sinus der Neigung genommen; das Gewicht quer zum Trum geht mit ihrem Kosinus.
    .turn-whole-weight = Sie haben das Gewicht des Trums ausgerechnet; sein Zug ist weit größer, und zwar umso mehr, je flacher es hängt.
    .turn-sag-and-span-swapped = Sie haben Durchhang und Trumlänge vertauscht.

relation-chain-slack-tension-catenary = Zug im Leertrum nach der genauen Kurve
    .method = Finden Sie u aus sinh²(u/2)/u = δ/L durch Probieren; der Zug ist w L/(2u), mit w als Gewicht je Länge quer zum Trum.
    .limits = ein Trum; genau, wenn es waagerecht liegt
    .source = Kettenlinie y = c cosh(x/c), H = w c
    .turn-mass-for-weight = Sie haben die Masse je Meter als Gewicht benutzt; nehmen Sie sie mit 9,81 m/s² mal, das ergibt Newton je Meter.
    .turn-movement = Sie haben den ganzen Weg eingesetzt, wo der Durchhang hingehört.
    .turn-incline-left-out = Sie haben die Neigung weggelassen; nur der Teil des Gewichts, der quer zum Trum liegt, biegt es durch.

relation-chain-sag-tension = Durchhang, bei dem das Leertrum so stark zieht
    .limits = ein Trum; auf 0,2 % genau bis zu einem Durchhang von 2 % der Trumlänge; Trum nicht steiler als 85°
    .place = Kap. 10, parabelförmig hängendes Seil
    .turn-no-eight = Sie haben die 8 im Nenner vergessen.
    .turn-four = Sie haben durch 4 statt durch 8 geteilt.
    .turn-mass-for-weight = Sie haben die Masse je Meter als Gewicht benutzt; nehmen Sie sie mit 9,81 m/s² mal, das ergibt Newton je Meter.
    .turn-half-span = Sie haben die halbe Trumlänge genommen; das steckt schon in der 8, setzen Sie also die ganze ein.
    .turn-incline-left-out = Sie haben die Neigung weggelassen; nur der Teil des Gewichts, der quer zum Trum liegt, biegt es durch.
    .turn-sine = Sie haben den Sinus der Neigung genommen; das Gewicht quer zum Trum geht mit ihrem Kosinus.
    .turn-both-strands = Sie haben den Zug für zwei Trume verdoppelt; jedes Trum zieht mit seinem eigenen Zug, und dieses hängt allein an dem seinen.
    .turn-sag-wanted = Sie haben den Solldurchhang angegeben; gefragt ist der Durchhang, der zu diesem Zug gehört.

relation-chain-sag-tension-exact-curve = Durchhang, bei dem das Leertrum so stark zieht, genaue Kurve
    .method = Mit u = w L/(2 H), w als Gewicht je Länge quer zum Trum, beträgt der Durchhang L sinh²(u/2)/u.
    .limits = ein Trum; genau, wenn es waagerecht liegt
    .source = Kettenlinie y = c cosh(x/c), H = w c
    .turn-mass-for-weight = Sie haben die Masse je Meter als Gewicht benutzt; nehmen Sie sie mit 9,81 m/s² mal, das ergibt Newton je Meter.
    .turn-incline-left-out = Sie haben die Neigung weggelassen; nur der Teil des Gewichts, der quer zum Trum liegt, biegt es durch.
    .turn-half-span = Sie haben die halbe Trumlänge eingesetzt, wo in der Formel die ganze steht; die Formel halbiert sie selbst.

relation-chain-take-up-move-excess = Verschiebung der Wellen bis zum Solldurchhang
    .method = Auseinander zählt positiv, zueinander negativ. Bei fast gleichen Kettenrädern ist die Verschiebung die halbe Änderung der Überlänge.
    .limits = das andere Trum gerade, sodass die ganze Überlänge in einem liegt; Wellen parallel halten und alle Schrauben gleich weit drehen
    .source = beide Trume wachsen um die Verschiebung mal den Kosinus ihres Winkels zur Mittenlinie
    .turn-sag-difference = Sie haben die Wellen um die Differenz der Durchhänge verschoben; eine kleine Verschiebung ändert den Durchhang um ein Vielfaches, gehen Sie also über die Überlängen.
    .turn-half-the-sag-difference = Sie haben die Wellen um die halbe Differenz der Durchhänge verschoben; gehen Sie über die Überlängen, nicht über die Durchhänge.
    .turn-whole-slack = Sie haben um die ganze Differenz der Überlängen verschoben; jede Verschiebung nimmt Überlänge aus beiden Trumen, also genügt die Hälfte.
    .turn-all-of-it = Sie haben die ganze Überlänge herausgenommen; lassen Sie so viel übrig, wie der Solldurchhang braucht.
    .turn-other-way = Sie haben in die falsche Richtung verschoben; auseinander nimmt Überlänge heraus, zueinander gibt sie dazu.
    .turn-wanted-only = Sie haben um die halbe Soll-Überlänge verschoben; es zählt die Differenz zur vorgefundenen.

relation-chain-screw-turns-lead = Umdrehungen der Spannschraube
    .source = eine Umdrehung verschiebt die Mutter um eine Steigung
    .turn-upside-down = Sie haben die Steigung durch die Verschiebung geteilt; die Umdrehungen sind die Verschiebung geteilt durch die Steigung.
    .turn-doubled = Sie haben die Umdrehungen verdoppelt; die Welle verschiebt sich um den ganzen Weg der Schraube.
    .turn-halved = Sie haben die Umdrehungen halbiert; die Verschiebung der Wellen berücksichtigt die beiden Trume schon.
    .turn-sag-difference = Sie haben die Schraube um die Differenz der Durchhänge gedreht; es zählt die Verschiebung der Wellen.

relation-chain-move-made-lead = Verschiebung durch Drehen der Schraube
    .limits = alle Schrauben gleich weit gedreht
    .source = eine Umdrehung verschiebt die Mutter um eine Steigung
    .turn-divided = Sie haben die Steigung durch die Umdrehungen geteilt; jede Umdrehung verschiebt die Welle um eine Steigung.
    .turn-halved = Sie haben die Verschiebung halbiert; die Welle verschiebt sich um den ganzen Weg der Schraube.
    .turn-doubled = Sie haben die Verschiebung verdoppelt; die Welle verschiebt sich um den Weg der Schraube, die Überlänge ändert sich um etwa das Doppelte.

relation-chain-excess-after-move = Überlänge nach der Verschiebung
    .limits = das andere Trum gerade, sodass die ganze Überlänge in einem liegt
    .source = beide Trume wachsen um die Verschiebung mal den Kosinus ihres Winkels zur Mittenlinie
    .turn-one-strand = Sie haben die Verschiebung einmal abgezogen; beide Trume wachsen, also nimmt die Überlänge um etwa das Doppelte ab.
    .turn-added = Sie haben dazugezählt; wenn die Wellen auseinandergehen, nimmt die Überlänge ab.
    .turn-taken-only = Sie haben die herausgenommene Überlänge angegeben; gefragt ist, was übrig bleibt.
    .turn-not-moved = Sie haben die Verschiebung weggelassen; gefragt ist die Überlänge danach.

relation-chain-sag-after-excess = Durchhang nach der Verschiebung
    .limits = Durchhang bis etwa 5 % der Trumlänge: auf 0,5 % genau; die Trumlänge ändert sich mit der Verschiebung kaum
    .source = erstes Glied der Reihe für die Bogenlänge einer flachen Parabel
    .turn-linear = Sie haben den Durchhang im gleichen Verhältnis wie die Überlänge umgerechnet; er wächst mit ihrer Quadratwurzel.
    .turn-move-taken-off = Sie haben die Verschiebung vom Durchhang abgezogen; gehen Sie über die Überlänge, denn eine kleine Verschiebung ändert den Durchhang um ein Vielfaches.
    .turn-pressed = Sie haben die Formel für ein Trum benutzt, das zu zwei geraden Hälften gedrückt ist; dieses hängt in einem Bogen.
    .turn-before = Sie haben die Überlänge vor der Verschiebung benutzt.

relation-chain-take-up-verdict-travel = Ob der Spannweg reicht
    .method = Der verbleibende Spannweg muss mindestens so groß sein wie die Verschiebung. Ist er es nicht, nimmt man zwei Glieder heraus oder ersetzt eine gelängte Kette.
    .limits = Spannweg von insgesamt mindestens zwei Teilungen
    .turn-sag-difference = Sie haben die Differenz der Durchhänge gegen den verbleibenden Spannweg gehalten; es zählt die Verschiebung der Wellen.
    .turn-whole-slack = Sie haben die ganze Änderung der Überlänge gegen den verbleibenden Spannweg gehalten; die Wellen verschieben sich um etwa die Hälfte davon.
    .turn-backwards = Sie haben den Vergleich verkehrt herum gelesen; der verbleibende Spannweg muss mindestens so groß sein wie die Verschiebung.

relation-chain-wear-length-worn = Länge, die an der gelängten Kette gemessen wird
    .source = Definition

relation-chain-wear-measured = Längung aus einer gemessenen Länge
    .limits = Kette straff gezogen, Länge von Bolzen zu Bolzen oder von gleicher Kante zu gleicher Kante der Rollen
    .source = Definition
    .turn-rollers-short = Sie haben eine Teilung zu wenig gezählt; die angegebene Zahl zählt schon Teilungen, nicht Rollen.
    .turn-rollers-over = Sie haben die Rollen als Teilungen gezählt, eine zu viel; die Teilungen liegen zwischen den Rollen.
    .turn-of-the-measured = Sie haben den Zuwachs als Anteil der gemessenen Länge genommen; er ist ein Anteil der neuen Länge.
    .turn-not-subtracted = Sie haben die gemessene Länge als Anteil der neuen angegeben; die Längung ist nur, was über 100 % liegt.
    .turn-for-each-pitch = Sie haben die Längung durch die Zahl der Teilungen geteilt; der Anteil ist für eine Teilung derselbe wie für alle.

relation-chain-wear-limit-least = Verschleißgrenze
    .method = Der kleinste der Werte 3 %, 200 % geteilt durch die Zähnezahl des großen Kettenrads (ab 67 Zähnen maßgebend) und, bei festem Achsabstand, 1,5 %.
    .turn-always-three = Sie haben ohne Rücksicht auf den Kettentrieb 3 % genommen; bei festem Achsabstand sind 1,5 % zulässig, und ab 67 Zähnen am großen Kettenrad sind es 200/z %.
    .turn-fixed-left-out = Sie haben außer Acht gelassen, dass der Achsabstand fest ist; nachspannen lässt sich nicht, also ist die Grenze 1,5 %.
    .turn-fixed-always = Sie haben die Grenze für festen Achsabstand genommen; dieser lässt sich verstellen.
    .turn-teeth-always = Sie haben 200/z genommen, obwohl es über der üblichen Grenze liegt; maßgebend ist die kleinste der Grenzen.
    .turn-small-sprocket = Sie haben die Zähnezahl des kleinen Kettenrads genommen; die Kette steigt zuerst am großen auf.

relation-chain-wear-length-limit-limit = Länge, bei der die Kette ersetzt wird
    .source = Definition
    .turn-rollers-over = Sie haben die Rollen als Teilungen gezählt, eine zu viel; die Teilungen liegen zwischen den Rollen.
    .turn-rollers-short = Sie haben eine Teilung zu wenig gezählt; die angegebene Zahl zählt schon Teilungen.
    .turn-new-length = Sie haben die Länge der neuen Kette angegeben; bis zur Grenze darf sie sich längen.
    .turn-growth-only = Sie haben nur den Zuwachs angegeben; gefragt ist die ganze Länge, die der Maßstab zeigt.

relation-chain-wear-verdict-limit = Urteil über den Verschleiß
    .method = Ersetzen Sie die Kette, wenn ihre Längung die Grenze erreicht hat; sehen Sie dann auch nach den Kettenrädern.
    .turn-always-three = Sie haben ohne Rücksicht auf den Kettentrieb gegen 3 % gehalten; bei festem Achsabstand und großen Kettenrädern ist weniger zulässig.
    .turn-fixed-always = Sie haben gegen die Grenze für festen Achsabstand gehalten; dieser lässt sich verstellen.
    .turn-one-pitch-short = Sie haben eine Teilung zu wenig gezählt; so sieht eine gute Kette verschlissen aus.
    .turn-one-pitch-over = Sie haben die Rollen als Teilungen gezählt; das verdeckt den Verschleiß.

relation-chain-wear-growth-links = Zuwachs der ganzen Kette durch Verschleiß
    .source = jedes Glied wächst um denselben Anteil, und alles zusammen hängt im Leertrum
    .turn-measured-part = Sie haben nur die gemessenen Teilungen genommen; gelängt hat sich die ganze Kette.
    .turn-one-strand = Sie haben die halbe Kette genommen; der Zuwachs beider Trume hängt im Leertrum.
    .turn-one-pitch = Sie haben den Zuwachs einer Teilung angegeben; nehmen Sie ihn mit der Gliederzahl mal.

relation-chain-pull-power = Kettenzug im Lasttrum aus Leistung und Geschwindigkeit
    .source = Leistung ist Kraft mal Geschwindigkeit
    .turn-motor-power = Sie haben die Leistung auf dem Typenschild des Motors genommen; die Kette überträgt, was aus dem Getriebe kommt.
    .turn-power-in = Sie haben die Leistung am Motor genommen; vor der Kette gehen noch die Verluste des Getriebes ab.
    .turn-motor-speed = Sie haben die Kettengeschwindigkeit aus der Drehzahl des Motors gerechnet; das Kettenrad dreht sich mit der Abtriebswelle des Getriebes.
    .turn-service-factor = Sie haben den Betriebsfaktor hineingerechnet; gefragt ist der Kettenzug selbst.
    .turn-both-strands = Sie haben den Kettenzug auf beide Trume verteilt; das Lasttrum trägt ihn ganz.

relation-chain-pull-torque = Kettenzug im Lasttrum aus dem Drehmoment
    .limits = stimmt ab 13 Zähnen auf 1 % mit dem Wert aus Leistung und Geschwindigkeit überein
    .source = Drehmoment ist Kraft mal Radius
    .turn-diameter = Sie haben das Drehmoment durch den Durchmesser geteilt; der Kettenzug wirkt am Radius.
    .turn-motor-torque = Sie haben das Drehmoment des Motors genommen; das Kettenrad sitzt auf der Abtriebswelle des Getriebes.
    .turn-large-sprocket = Sie haben den Durchmesser des großen Kettenrads mit dem Drehmoment an der Welle des kleinen genommen.
    .turn-outside = Sie haben den Kopfkreisdurchmesser genommen; die Kette zieht am Teilkreis.
    .turn-radius-twice = Sie haben durch den Radius geteilt und auch noch mit zwei malgenommen; tun Sie nur eines von beiden.

relation-chain-strand-factor-table = Strangfaktor aus der Tabelle
    .method = 1 Strang 1,0; 2 Stränge 1,7; 3 Stränge 2,5; 4 Stränge 3,3; 5 Stränge 3,9; 6 Stränge 4,6; 8 Stränge 6,0.
    .place = Tabelle 17-23
    .turn-strands = Sie haben die Zahl der Stränge selbst genommen; die Stränge tragen nicht gleich viel, also ist der Faktor kleiner.
    .turn-one = Sie haben die Kette als Einfachkette genommen; mehr Stränge tragen mehr.
    .turn-one-row-on = Sie haben die Tabelle eine Zeile zu weit abgelesen.

relation-chain-design-power-factors = Auslegungsleistung für einen Strang
    .limits = der Zähnezahlfaktor gehört zu Tabellen, die für 17 Zähne gedruckt sind; er ist 1, wenn die übertragbare Leistung für die wirkliche Zähnezahl gilt
    .place = Kap. 14, Beispiele 14.2 und 14.3
    .turn-service-divided = Sie haben durch den Betriebsfaktor geteilt; Stöße verlangen eine stärkere Kette, nehmen Sie also mal.
    .turn-no-service = Sie haben den Betriebsfaktor weggelassen.
    .turn-strands-multiplied = Sie haben mit dem Strangfaktor malgenommen; mehrere Stränge teilen sich die Last, teilen Sie also.
    .turn-teeth-multiplied = Sie haben mit dem Zähnezahlfaktor malgenommen; auf einem größeren Kettenrad überträgt die Kette mehr, teilen Sie also.
    .turn-no-teeth = Sie haben den Zähnezahlfaktor weggelassen.
    .turn-no-strands = Sie haben den Strangfaktor weggelassen.
    .turn-motor-power = Sie haben die Leistung auf dem Typenschild des Motors genommen; hier zählt die Leistung, die die Kette überträgt.
    .turn-strand-count = Sie haben durch die Zahl der Stränge geteilt; die Stränge tragen nicht gleich viel, nehmen Sie also den Strangfaktor.

relation-chain-rating-plates-formula = Leistung, die die Laschen vertragen
    .limits = neuere Tabellen der Norm folgen dieser Formel nicht; für die B-Reihe eine Schätzung
    .place = Gl. 17-32 (Nummer aus dem Gedächtnis); Leistungen nach ANSI B29.1-1975
    .turn-large-teeth = Sie haben die Zähnezahl des großen Kettenrads genommen; die Leistung gilt für das kleine.
    .turn-large-speed = Sie haben die Drehzahl des großen Kettenrads genommen; die Leistung gilt für das kleine.
    .turn-motor = Sie haben die Drehzahl des Motors genommen; das kleine Kettenrad dreht sich mit der Abtriebswelle des Getriebes.
    .turn-cube = Sie haben die Teilung in die dritte Potenz erhoben; der Exponent ist 3 minus 0,07 mal die Teilung in Zoll.
    .turn-light = Sie haben 0,0022 genommen, und das gehört zur leichten Halbzollkette; andere Ketten haben 0,004.

relation-chain-rating-rollers-formula = Leistung, die Rollen und Buchsen vertragen
    .method = In hp: 1000 K z^1,5 p^0,8 / n^1,5 mit p in Zoll und n in r/min; K ist 17, bei der Kette 35, die keine Rollen hat, 29. 1 hp sind 0,7457 kW.
    .limits = neuere Tabellen der Norm folgen dieser Formel nicht; für die B-Reihe eine Schätzung
    .place = Gl. 17-33 (Nummer aus dem Gedächtnis); Leistungen nach ANSI B29.1-1975
    .turn-large-teeth = Sie haben die Zähnezahl oder die Drehzahl des großen Kettenrads genommen; die Leistung gilt für das kleine.
    .turn-motor = Sie haben die Drehzahl des Motors genommen; das kleine Kettenrad dreht sich mit der Abtriebswelle des Getriebes.
    .turn-rollerless = Sie haben 29 genommen, und das gehört zu Ketten ohne Rollen; Rollenketten haben 17.
    .turn-roller = Sie haben 17 genommen, und das gehört zu Rollenketten; die Kette 35 hat keine Rollen und dafür 29.

relation-chain-rating-lower = Übertragbare Leistung eines Strangs
    .place = Rollenkette, übertragbare Leistung als kleinere der beiden Grenzen
    .turn-higher = Sie haben die größere der beiden Grenzen genommen; das schwächere Teil entscheidet.
    .turn-added = Sie haben die beiden Grenzen zusammengezählt; jede gilt für sich, und die kleinere entscheidet.
    .turn-averaged = Sie haben den Mittelwert der beiden Grenzen genommen; die kleinere entscheidet.

relation-chain-rating-verdict-design = Ob die Kette groß genug ist
    .method = Die übertragbare Leistung muss mindestens so groß sein wie die Auslegungsleistung.
    .place = Kap. 14
    .turn-no-factors = Sie haben die übertragbare Leistung gegen die bloße Leistung gehalten; halten Sie sie gegen die Auslegungsleistung mit allen Faktoren.
    .turn-higher-limit = Sie haben die größere der beiden Grenzen als übertragbare Leistung genommen; die kleinere entscheidet.
    .turn-backwards = Sie haben den Vergleich verkehrt herum gelesen; die übertragbare Leistung muss mindestens so groß sein wie die Auslegungsleistung.

relation-chain-safety-factor-breaking = Sicherheit gegen Bruch
    .limits = mindestens 6 bei Verschlussgliedern mit Presssitz, 9 bei einem Verschlussglied mit Spielsitz oder einem gekröpften Glied
    .place = Kap. 14, Beispiel 14.7
    .turn-upside-down = Sie haben den Kettenzug durch die Bruchkraft geteilt; die Sicherheit ist Bruchkraft durch Kettenzug.
    .turn-service-factor = Sie haben den Betriebsfaktor hineingerechnet; gefragt ist die Sicherheit beim bloßen Kettenzug.
    .turn-slack-pull = Sie haben den Zug im Leertrum genommen; die Last trägt das Lasttrum.

relation-chain-safety-verdict-six = Urteil über die Sicherheit
    .method = Bei einem Verschlussglied mit Presssitz muss die Sicherheit mindestens 6 betragen.
    .turn-nine = Sie haben 9 verlangt, und das gehört zu einem Verschlussglied mit Spielsitz oder einem gekröpften Glied; beim Presssitz genügen 6.
    .turn-one = Sie haben nur verlangt, dass die Kette nicht sofort reißt; im Betrieb muss die Sicherheit 6 betragen.

relation-chain-lubrication-speed = Art der Schmierung aus Teilung und Kettengeschwindigkeit
    .method = Suchen Sie die Zeile der Teilung (oder der nächstgrößeren): bis zur ersten Geschwindigkeit von Hand oder Tropfschmierung, bis zur zweiten Ölbad, darüber Druckumlaufschmierung.
    .turn-motor-speed = Sie haben die Kettengeschwindigkeit aus der Drehzahl des Motors gerechnet; das Kettenrad dreht sich mit der Abtriebswelle des Getriebes.
    .turn-wrong-row = Sie haben die Zeile einer kleineren Teilung abgelesen; eine größere Teilung braucht bei gleicher Geschwindigkeit mehr Öl.
    .turn-wrong-teeth = Sie haben die Kettengeschwindigkeit aus der Zähnezahl des großen Kettenrads und der Drehzahl des kleinen gerechnet.

quantity-chain-wanted-verdict = Urteil über den Solldurchhang nach dem zulässigen Bereich des Wegs
    .choice-1 = zu straff
    .choice-2 = im zulässigen Bereich
    .choice-3 = zu locker

relation-chain-wanted-verdict-window = Urteil über den Solldurchhang
    .method = Eine Kette mit dem Solldurchhang bewegt sich insgesamt um das 2,31-Fache davon. Unter dem zulässigen Bereich ist sie damit zu straff eingestellt, darüber zu locker.
    .limits = Durchhang und zulässiger Bereich des Wegs auf einem Blatt müssen zueinander passen
    .turn-sag-for-movement = Sie haben den Durchhang selbst gegen den zulässigen Bereich gehalten; der gilt für den ganzen Weg, das 2,31-Fache des Durchhangs.
    .turn-one-way = Sie haben den Weg nach einer Seite gegen den zulässigen Bereich gehalten; der gilt für den ganzen Weg, nach beiden Seiten.
    .turn-tight-for-slack = Sie haben straff und locker verwechselt; ein Weg über dem zulässigen Bereich ist zu locker.

quantity-chain-window-share = Lage des Wegs im zulässigen Bereich, vom unteren zum oberen Ende

relation-chain-window-share-window = Lage des Wegs im zulässigen Bereich
    .method = Wie weit der Weg über dem kleinsten zulässigen liegt, als Anteil der Breite des Bereichs.
    .source = 0 % beim kleinsten zulässigen Weg, 100 % beim größten
