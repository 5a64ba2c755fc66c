## Größen, Beziehungen, ihre Quellen und Fehler: Geräusch

quantity-noise-source-1 = Schallpegel der ersten Maschine allein

quantity-noise-source-2 = Schallpegel der zweiten Maschine allein

quantity-noise-source-3 = Schallpegel der dritten Maschine allein

quantity-noise-sum-two = Schallpegel der ersten beiden Maschinen zusammen

quantity-noise-sum-three = Schallpegel aller drei Maschinen zusammen

quantity-noise-quiet = Schallpegel des Antriebs allein in Beharrung

quantity-noise-running = Schallpegel bei laufendem Antrieb

quantity-noise-stopped = Schallpegel bei stehendem Antrieb

quantity-noise-drive = Schallpegel des Antriebs allein

quantity-noise-level-a = Schallpegel am ersten Arbeitsplatz

quantity-noise-time-a = Aufenthaltsdauer am ersten Arbeitsplatz

quantity-noise-reference-a = Bezugsdauer zum Pegel des ersten Arbeitsplatzes

quantity-noise-level-b = Schallpegel am zweiten Arbeitsplatz

quantity-noise-time-b = Aufenthaltsdauer am zweiten Arbeitsplatz

quantity-noise-reference-b = Bezugsdauer zum Pegel des zweiten Arbeitsplatzes

quantity-noise-dose = Lärmdosis des Tages

quantity-noise-dose-verdict = Urteil über die Dosis des Tages
    .choice-1 = unter dem Auslösewert
    .choice-2 = Auslösewert erreicht
    .choice-3 = über dem Höchstwert

quantity-noise-level-allowed = Pegel, der die Aufenthaltsdauer am ersten Arbeitsplatz andauern darf

quantity-noise-average = zeitgewichteter Mittelungspegel des Tages

quantity-noise-niosh-a = nach der empfohlenen Regel zulässige Dauer des Pegels am ersten Arbeitsplatz

quantity-noise-niosh-b = nach der empfohlenen Regel zulässige Dauer des Pegels am zweiten Arbeitsplatz

quantity-noise-niosh-dose = Lärmdosis des Tages nach der empfohlenen Regel

quantity-noise-niosh-average = zeitgewichteter Mittelungspegel nach der empfohlenen Regel

quantity-noise-equal-count = Zahl der Maschinen wie die erste

quantity-noise-equal-sum = Schallpegel dieser Maschinen zusammen

quantity-noise-drive-by-standard = Schallpegel des Antriebs allein nach der Regel der Norm

quantity-noise-drive-quality = Aussagekraft des Pegels des Antriebs allein
    .choice-1 = ein Pegel
    .choice-2 = nur eine Obergrenze

relation-noise-sum-two-energies = Pegel zweier Maschinen zusammen
    .source = Schallenergien addieren sich; ein Pegel ist das Zehnfache des Logarithmus einer Energie
    .turn-decibels-added = Sie haben die Dezibel zusammengezählt; zählen Sie die Energien zusammen, so machen zwei gleiche Pegel 3 dB mehr.
    .turn-mean = Sie haben das Mittel genommen; zwei Maschinen zusammen sind lauter als jede für sich.
    .turn-plain-mean = Sie haben das Mittel der Dezibel genommen; zwei Maschinen zusammen sind lauter als jede für sich.
    .turn-3-added = Sie haben 3 dB zum lauteren Pegel gezählt; das gilt nur für zwei gleiche Pegel.
    .turn-6-added = Sie haben 6 dB dazugezählt wie bei verdoppeltem Schalldruck; bei getrennten Maschinen addieren sich die Energien.
    .turn-factor-20 = Sie haben Schalldrücke zusammengezählt, mit 20 statt 10; getrennte Maschinen addieren sich als Energien.

relation-noise-sum-three-energies = Pegel dreier Maschinen zusammen
    .source = Schallenergien addieren sich; ein Pegel ist das Zehnfache des Logarithmus einer Energie
    .turn-decibels-added = Sie haben die Dezibel zusammengezählt; zählen Sie die Energien zusammen.
    .turn-mean = Sie haben die Energie durch drei geteilt, das ist das Mittel; zusammen sind sie lauter als jede für sich.
    .turn-plain-mean = Sie haben das Mittel der Dezibel genommen; zusammen sind sie lauter als jede für sich.
    .turn-third-left-out = Sie haben die dritte Maschine weggelassen.

relation-noise-drive-background = Pegel des Antriebs ohne seine Umgebung
    .limits = laufend mindestens 6 dB über stehend, sonst ist das Ergebnis nur eine Obergrenze; über 15 dB keine Korrektur
    .place = Beispielaufgabe 4, S. 51
    .turn-decibels-taken-off = Sie haben die Dezibel voneinander abgezogen; ziehen Sie die Energien ab.
    .turn-energies-added = Sie haben das Fremdgeräusch dazugezählt; es steckt schon in der Ablesung und muss heraus.
    .turn-not-corrected = Sie haben das Fremdgeräusch darin gelassen; bis 15 dB unter der Ablesung zählt es.
    .turn-mean = Sie haben das Mittel der beiden Ablesungen genommen; ziehen Sie die Energien voneinander ab.

relation-noise-running-vibration = Pegel bei laufendem Antrieb
    .source = die abgestrahlte Energie geht mit dem Quadrat der Schwinggeschwindigkeit; Energien addieren sich; was ein Fehler dazubringt, wird bei einem kleinen Antrieb als ebenso laut angenommen wie bei einem großen

relation-noise-level-a-beside-the-drive = Pegel am ersten Arbeitsplatz, neben dem laufenden Antrieb
    .source = der erste Arbeitsplatz liegt neben dem Antrieb

relation-noise-reference-a-exchange = Zulässige Dauer des Pegels am ersten Arbeitsplatz
    .place = Anhang A
    .turn-3-db-and-85 = Sie haben 85 dB und eine Halbierung je 3 dB benutzt, das ist eine andere Regel; diese hat 90 dB und 5 dB.
    .turn-halving-every-3 = Sie haben die Zeit je 3 dB halbiert; diese Regel halbiert sie je 5 dB.
    .turn-turned-over = Sie haben die Regel umgedreht; ein lauterer Platz lässt weniger Zeit.
    .turn-in-proportion = Sie haben die Zeit im Verhältnis der Dezibel genommen; sie halbiert sich je 5 dB.

relation-noise-reference-b-exchange = Zulässige Dauer des Pegels am zweiten Arbeitsplatz
    .place = Anhang A
    .turn-3-db-and-85 = Sie haben 85 dB und eine Halbierung je 3 dB benutzt, das ist eine andere Regel; diese hat 90 dB und 5 dB.
    .turn-halving-every-3 = Sie haben die Zeit je 3 dB halbiert; diese Regel halbiert sie je 5 dB.
    .turn-turned-over = Sie haben die Regel umgedreht; ein lauterer Platz lässt weniger Zeit.
    .turn-in-proportion = Sie haben die Zeit im Verhältnis der Dezibel genommen; sie halbiert sich je 5 dB.

relation-noise-dose-two-spells = Lärmdosis aus zwei Zeitabschnitten
    .method = die Zeit jedes Abschnitts durch die Bezugsdauer seines Pegels, zusammengezählt; Pegel unter 80 dB zählen nicht
    .limits = eine halbe Dosis ist der Auslösewert; eine ganze Dosis ist höchstens zulässig
    .place = Anhang A
    .turn-one-spell = Sie haben den zweiten Zeitabschnitt weggelassen; jeder Abschnitt des Tages zählt.
    .turn-spells-swapped = Sie haben die Zeiten den falschen Pegeln zugeordnet.
    .turn-turned-over = Sie haben die zulässige Zeit durch die Aufenthaltsdauer geteilt; drehen Sie den Bruch um.
    .turn-averaged = Sie haben das Mittel der beiden Anteile genommen; zählen Sie sie zusammen.
    .turn-times-over-times = Sie haben die Zeiten vor dem Teilen zusammengezählt; teilen Sie jeden Abschnitt durch seine eigene Bezugsdauer.

relation-noise-dose-verdict-action-level = Urteil über die Dosis des Tages
    .method = unter 50 % keine Maßnahme; ab 50 % ein Programm zum Schutz des Gehörs; über 100 % müssen Lärm oder Zeit herunter
    .limits = ohne Gehörschutz; andere Länder und Betriebe haben strengere Regeln, und die gehen vor
    .place = (b) und (c)(1)
    .turn-one-place-only = Sie haben nur den ersten Arbeitsplatz beurteilt; der ganze Tag zählt.
    .turn-action-as-most = Sie haben eine halbe Dosis für den Höchstwert genommen; bei einer halben Dosis beginnen die Maßnahmen, und eine ganze ist der Höchstwert.
    .turn-most-as-action = Sie haben die Maßnahmen erst bei einer ganzen Dosis beginnen lassen; sie beginnen bei einer halben.

relation-noise-level-allowed-exchange = Pegel, der die Aufenthaltsdauer am ersten Arbeitsplatz andauern darf
    .limits = ein Arbeitsplatz allein; der Rest des Tages bringt seinen Anteil dazu
    .place = Anhang A
    .turn-3-db-and-85 = Sie haben 85 dB und eine Halbierung je 3 dB benutzt, das ist eine andere Regel; diese hat 90 dB und 5 dB.
    .turn-halving-every-3 = Sie haben die Zeit je 3 dB halbiert; diese Regel halbiert sie je 5 dB.
    .turn-turned-over = Sie haben für eine kürzere Zeit Dezibel abgezogen; eine kürzere Zeit lässt mehr zu.
    .turn-logarithm-to-ten = Sie haben den Logarithmus zur Basis 10 benutzt; eine Halbierung der Zeit sind 5 dB, und Halbierungen zählt man zur Basis 2.
    .turn-day-of-8-hours = Sie haben den Pegel für 8 Stunden angegeben; eine kürzere Zeit lässt mehr zu, eine längere weniger.

relation-noise-average-dose = Zeitgewichteter Mittelungspegel aus der Dosis
    .limits = über einen Tag von acht Stunden
    .place = Anhang A
    .turn-10-for-16-61 = Sie haben mit 10 malgenommen; bei einer Halbierung je 5 dB ist der Faktor 16,61.
    .turn-per-cent = Sie haben die Prozentzahl eingesetzt; benutzen Sie sie als Anteil, 100 % sind 1.
    .turn-85-for-90 = Sie haben 85 dazugezählt; diese Regel geht von 90 dB aus.
    .turn-90-left-out = Sie haben die 90 dB weggelassen.
    .turn-natural-logarithm = Sie haben den natürlichen Logarithmus benutzt; in die Formel gehört der zur Basis 10.

relation-noise-niosh-a-exchange = Zulässige Dauer des Pegels am ersten Arbeitsplatz nach der empfohlenen Regel
    .place = wie zitiert
    .turn-5-db-and-90 = Sie haben 90 dB und eine Halbierung je 5 dB benutzt, das ist die gesetzliche Regel; die empfohlene hat 85 dB und 3 dB.
    .turn-halving-every-5 = Sie haben die Zeit je 5 dB halbiert; diese Regel halbiert sie je 3 dB.
    .turn-from-90 = Sie sind von 90 dB ausgegangen; diese Regel lässt 85 dB für acht Stunden zu.
    .turn-turned-over = Sie haben die Regel umgedreht; ein lauterer Platz lässt weniger Zeit.

relation-noise-niosh-b-exchange = Zulässige Dauer des Pegels am zweiten Arbeitsplatz nach der empfohlenen Regel
    .place = wie zitiert
    .turn-5-db-and-90 = Sie haben 90 dB und eine Halbierung je 5 dB benutzt, das ist die gesetzliche Regel; die empfohlene hat 85 dB und 3 dB.
    .turn-halving-every-5 = Sie haben die Zeit je 5 dB halbiert; diese Regel halbiert sie je 3 dB.
    .turn-from-90 = Sie sind von 90 dB ausgegangen; diese Regel lässt 85 dB für acht Stunden zu.

relation-noise-niosh-dose-two-spells = Lärmdosis aus zwei Zeitabschnitten nach der empfohlenen Regel
    .method = die Zeit jedes Abschnitts durch die nach 85 dB und 3 dB zulässige Dauer seines Pegels, zusammengezählt; Pegel unter 80 dB zählen nicht
    .limits = mehr als eine ganze Dosis wird nicht empfohlen
    .place = wie zitiert
    .turn-rule-of-the-law = Sie haben die gesetzliche Regel benutzt, 90 dB und 5 dB; die empfohlene hat 85 dB und 3 dB und fällt strenger aus.
    .turn-one-spell = Sie haben den zweiten Zeitabschnitt weggelassen; jeder Abschnitt des Tages zählt.
    .turn-spells-swapped = Sie haben die Zeiten den falschen Pegeln zugeordnet.
    .turn-averaged = Sie haben das Mittel der beiden Anteile genommen; zählen Sie sie zusammen.

relation-noise-niosh-average-dose = Zeitgewichteter Mittelungspegel nach der empfohlenen Regel
    .limits = über einen Tag von acht Stunden
    .place = wie zitiert
    .turn-16-61-for-10 = Sie haben mit 16,61 malgenommen; bei einer Halbierung je 3 dB ist der Faktor 10.
    .turn-90-for-85 = Sie haben 90 dazugezählt; diese Regel geht von 85 dB aus.
    .turn-rule-of-the-law = Sie haben die Formel der gesetzlichen Regel mit der Dosis dieser Regel benutzt; eine Dosis und ihr Mittelungspegel gehören zu einer Regel.
    .turn-natural-logarithm = Sie haben den natürlichen Logarithmus benutzt; in die Formel gehört der zur Basis 10.

relation-noise-equal-sum-count = Pegel mehrerer gleicher Maschinen zusammen
    .source = Schallenergien addieren sich; ein Pegel ist das Zehnfache des Logarithmus einer Energie
    .turn-multiplied = Sie haben die Dezibel malgenommen; nehmen Sie die Energien mal, so machen zwei gleiche Maschinen 3 dB mehr.
    .turn-3-db-each = Sie haben für jede weitere Maschine 3 dB dazugezählt; 3 dB kommen mit jeder Verdopplung ihrer Zahl.
    .turn-20-for-10 = Sie haben 20 vor den Logarithmus gesetzt wie bei Schalldrücken; getrennte Maschinen addieren sich als Energien.
    .turn-the-same = Sie haben den Pegel einer einzigen angegeben; zusammen sind sie lauter.

relation-noise-drive-by-standard-rule = Pegel des Antriebs allein nach der Regel der Norm
    .method = Differenz über 15 dB: keine Korrektur. Von 6 bis 15 dB: Energien voneinander abziehen. Unter 6 dB: 1,3 dB abziehen, und das Ergebnis ist nur eine Obergrenze.
    .place = 8.2.3 (wie zitiert; die Grenze aus dem Gedächtnis)
    .turn-decibels-taken-off = Sie haben die Dezibel voneinander abgezogen; ziehen Sie die Energien ab.
    .turn-not-corrected = Sie haben das Fremdgeräusch darin gelassen; bis 15 dB unter der Ablesung zählt es.
    .turn-largest-always = Sie haben 1,3 dB abgezogen, gleich bei welcher Differenz; das gehört zu Differenzen unter 6 dB.
    .turn-energies-below-the-bound = Sie haben die Energien voneinander abgezogen, obwohl sie weniger als 6 dB auseinanderliegen; die Norm bleibt dort bei 1,3 dB stehen.

relation-noise-drive-quality-difference = Aussagekraft des Pegels des Antriebs allein
    .method = Nur eine Obergrenze, wo der laufende weniger als 6 dB über dem stehenden liegt.
    .place = 8.2.3 (wie zitiert; die Grenze aus dem Gedächtnis)
    .turn-15-for-6 = Sie haben den Strich bei 15 dB gezogen; bis herab zu 6 dB lässt sich das Fremdgeräusch herausrechnen.
    .turn-always-good = Sie haben es einen Pegel genannt, obwohl das Fremdgeräusch weniger als 6 dB darunter liegt; dann ist es nur eine Obergrenze.
