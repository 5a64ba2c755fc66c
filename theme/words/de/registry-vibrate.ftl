## Größen, Beziehungen, ihre Quellen und Fehler: Schwingung

quantity-vibrate-motor-frequency = Drehfrequenz der Motorwelle

quantity-vibrate-output-frequency = Drehfrequenz der Abtriebswelle des Getriebes

quantity-vibrate-pinion-teeth = Zähnezahl des Ritzels auf der Antriebswelle des Getriebes

quantity-vibrate-gear-teeth = Zähnezahl des Rads, das vom Ritzel getrieben wird

quantity-vibrate-mesh = Zahneingriffsfrequenz der ersten Getriebestufe

quantity-vibrate-gear-speed = Drehzahl des Rads, das vom Ritzel getrieben wird

quantity-vibrate-chain-pass = Eingriffsfrequenz der Kettenrollen am kleinen Kettenrad

quantity-vibrate-chain-loop = Umlauffrequenz eines Kettenglieds

quantity-vibrate-elements = Zahl der Wälzkörper

quantity-vibrate-element-dia = Durchmesser der Wälzkörper

quantity-vibrate-bearing-pitch-dia = Teilkreisdurchmesser des Lagers

quantity-vibrate-contact-angle = Druckwinkel des Lagers

quantity-vibrate-order-cage = Umläufe des Käfigs je Umdrehung der Welle

quantity-vibrate-order-outer = Überrollungen einer Stelle des Außenrings je Umdrehung der Welle

quantity-vibrate-order-inner = Überrollungen einer Stelle des Innenrings je Umdrehung der Welle

quantity-vibrate-order-spin = Umdrehungen eines Wälzkörpers um sich selbst je Umdrehung der Welle

quantity-vibrate-cage = Käfigfrequenz des Lagers

quantity-vibrate-outer = Außenringfrequenz des Lagers

quantity-vibrate-inner = Innenringfrequenz des Lagers

quantity-vibrate-spin = Eigendrehfrequenz der Wälzkörper

quantity-vibrate-outer-quick = Außenringfrequenz des Lagers, aus der Zahl der Wälzkörper geschätzt

quantity-vibrate-inner-quick = Innenringfrequenz des Lagers, aus der Zahl der Wälzkörper geschätzt

quantity-vibrate-line-motor = Linie bei der Drehfrequenz des Motors, effektiv

quantity-vibrate-line-double = Linie bei der doppelten Drehfrequenz des Motors, effektiv

quantity-vibrate-line-output = Linie bei der Drehfrequenz der Abtriebswelle, effektiv

quantity-vibrate-line-chain = Linie bei der Eingriffsfrequenz der Kettenrollen, effektiv

quantity-vibrate-line-mesh = Linie bei der Zahneingriffsfrequenz, effektiv

quantity-vibrate-line-bearing = Linie bei der Außenringfrequenz des Lagers, effektiv

quantity-vibrate-rest = alles zwischen den Linien, effektiv

quantity-vibrate-peak-frequency = Frequenz der stärksten Linie

quantity-vibrate-peak-part = Herkunft der stärksten Linie
    .choice-1 = Motorwelle, einmal je Umdrehung
    .choice-2 = Motorwelle, zweimal je Umdrehung
    .choice-3 = Abtriebswelle, einmal je Umdrehung
    .choice-4 = Kette, Rollen setzen sich in das kleine Kettenrad
    .choice-5 = Zahneingriff der ersten Stufe
    .choice-6 = Außenring des Abtriebslagers
    .choice-7 = nichts davon

quantity-vibrate-tone = Frequenz der einen betrachteten Schwingung

quantity-vibrate-displacement = Schwingweg der einen Schwingung, Spitze-Spitze-Wert

quantity-vibrate-velocity-peak = Schwinggeschwindigkeit der einen Schwingung, Scheitelwert

quantity-vibrate-velocity-rms = Schwinggeschwindigkeit der einen Schwingung, Effektivwert

quantity-vibrate-acceleration = Schwingbeschleunigung der einen Schwingung, Scheitelwert

quantity-vibrate-group = Gruppe der Maschine nach der Leistung auf dem Typenschild
    .choice-1 = über 300 kW
    .choice-2 = über 15 kW bis 300 kW
    .choice-3 = bis 15 kW

quantity-vibrate-motor-group = Gruppe des Elektromotors nach seiner Achshöhe
    .choice-1 = 315 mm und mehr
    .choice-2 = 160 mm bis unter 315 mm
    .choice-3 = unter 160 mm

quantity-vibrate-support = Aufstellung der Maschine
    .choice-1 = starr
    .choice-2 = elastisch

quantity-vibrate-limit-ab = Grenze zwischen den Zonen A und B

quantity-vibrate-limit-bc = Grenze zwischen den Zonen B und C

quantity-vibrate-limit-cd = Grenze zwischen den Zonen C und D

quantity-vibrate-velocity = jetzige Schwinggeschwindigkeit am Lagergehäuse, effektiv

quantity-vibrate-limit-share = ausgenutzter Anteil der Grenze zwischen den Zonen B und C

quantity-vibrate-zone = Schwingstärkezone
    .choice-1 = A
    .choice-2 = B
    .choice-3 = C
    .choice-4 = D

quantity-vibrate-first = Schwinggeschwindigkeit beim ersten Start, effektiv

quantity-vibrate-reading-1 = erste Schwingungsablesung in Beharrung, effektiv

quantity-vibrate-reading-2 = zweite Schwingungsablesung in Beharrung, effektiv

quantity-vibrate-reading-3 = dritte Schwingungsablesung in Beharrung, effektiv

quantity-vibrate-reading-4 = vierte Schwingungsablesung in Beharrung, effektiv

quantity-vibrate-baseline = Bezugswert der Schwinggeschwindigkeit, effektiv

quantity-vibrate-run-in-fall = Rückgang der Schwingung während des Einlaufs

quantity-vibrate-alarm = Einstellwert der Warnung, effektiv

quantity-vibrate-trip = höchster Einstellwert der Abschaltung, effektiv

quantity-vibrate-alarm-verdict = Urteil über die jetzige Ablesung nach Warnung und Abschaltung
    .choice-1 = unter der Warnung
    .choice-2 = Warnung, Ursache suchen
    .choice-3 = Abschaltung, Antrieb anhalten

quantity-vibrate-change-verdict = Urteil über die Änderung gegen den Bezugswert
    .choice-1 = nicht wesentlich
    .choice-2 = wesentlich

quantity-vibrate-mean-range = mittlere gleitende Spannweite der Ablesungen

quantity-vibrate-control-upper = obere Eingriffsgrenze, effektiv

quantity-vibrate-control-lower = untere Eingriffsgrenze, effektiv

quantity-vibrate-control-verdict = Urteil über die jetzige Ablesung nach den Eingriffsgrenzen
    .choice-1 = kein Signal
    .choice-2 = Signal

quantity-vibrate-day-1 = Tag der ersten Ablesung des Verlaufs

quantity-vibrate-day-2 = Tag der zweiten Ablesung des Verlaufs

quantity-vibrate-day-3 = Tag der dritten Ablesung des Verlaufs

quantity-vibrate-trend-1 = erste Ablesung des Verlaufs, effektiv

quantity-vibrate-trend-2 = zweite Ablesung des Verlaufs, effektiv

quantity-vibrate-trend-3 = dritte Ablesung des Verlaufs, effektiv

quantity-vibrate-days-left = Zeit von der dritten Ablesung des Verlaufs bis zur Grenze zwischen den Zonen B und C, nach einer Geraden

quantity-vibrate-days-left-growing = Zeit von der dritten Ablesung des Verlaufs bis zur Grenze zwischen den Zonen B und C, bei exponentiellem Wachstum

quantity-vibrate-doubling = Verdopplungszeit der Ablesungen des Verlaufs bei exponentiellem Wachstum

quantity-vibrate-share-motor = Anteil der Linie bei der Drehfrequenz des Motors

quantity-vibrate-share-double = Anteil der Linie bei der doppelten Drehfrequenz des Motors

quantity-vibrate-share-output = Anteil der Linie bei der Drehfrequenz der Abtriebswelle

quantity-vibrate-share-chain = Anteil der Linie bei der Eingriffsfrequenz der Kettenrollen

quantity-vibrate-share-mesh = Anteil der Linie bei der Zahneingriffsfrequenz

quantity-vibrate-share-bearing = Anteil der Linie bei der Außenringfrequenz des Lagers

quantity-vibrate-share-rest = Anteil von allem zwischen den Linien

quantity-vibrate-grown-mesh = Wachstum der Linie bei der Zahneingriffsfrequenz

quantity-vibrate-grown-bearing = Wachstum der Linie bei der Außenringfrequenz des Lagers

quantity-vibrate-bearing-slip = Schlupf der Wälzkörper

quantity-vibrate-run-in = Überhöhung der Schwingung beim ersten Start

quantity-vibrate-scatter-1 = Streuung der ersten Ablesung in Beharrung

quantity-vibrate-scatter-2 = Streuung der zweiten Ablesung in Beharrung

quantity-vibrate-scatter-3 = Streuung der dritten Ablesung in Beharrung

quantity-vibrate-scatter-4 = Streuung der vierten Ablesung in Beharrung

quantity-vibrate-settled-motor = Linie in Beharrung bei der Drehfrequenz des Motors

quantity-vibrate-settled-double = Linie in Beharrung bei der doppelten Drehfrequenz des Motors

quantity-vibrate-settled-output = Linie in Beharrung bei der Drehfrequenz der Abtriebswelle

quantity-vibrate-settled-mesh = Linie in Beharrung bei der Zahneingriffsfrequenz

quantity-vibrate-settled-bearing = Linie in Beharrung bei der Außenringfrequenz des Lagers

quantity-vibrate-settled = Schwinggeschwindigkeit des Antriebs in Beharrung

quantity-vibrate-size = Schwingungshöhe eines gesunden Antriebs dieser Leistung im Verhältnis zu der des größten seiner Größenklasse

quantity-vibrate-phases = Zahl der Einbauphasen des ersten Radpaars

quantity-vibrate-pinion-repeat = Zahl der Umdrehungen des Ritzels, bis sich dieselben zwei Zähne wieder treffen

quantity-vibrate-gear-repeat = Zahl der Umdrehungen des Rads, bis sich dieselben zwei Zähne wieder treffen

quantity-vibrate-hunting = Zahnpaarfrequenz des ersten Radpaars

quantity-vibrate-phase-frequency = Einbauphasenfrequenz des ersten Radpaars

quantity-vibrate-unit-class = Klasse des Getriebes
    .choice-1 = Klasse I
    .choice-2 = Klasse II
    .choice-3 = Klasse III
    .choice-4 = Klasse IV

quantity-vibrate-unit-subclass = Unterklasse des Getriebes
    .choice-1 = a
    .choice-2 = b, kleine Leistung
    .choice-3 = b, große Leistung

quantity-vibrate-unit-rating = Einstufungswert der Schwinggeschwindigkeit des Getriebes, effektiv

quantity-vibrate-unit-ab = Grenze zwischen den Zonen A und B des Getriebes

quantity-vibrate-unit-cd = Grenze zwischen den Zonen C und D des Getriebes

quantity-vibrate-unit-line-limit = größte zulässige Schwinggeschwindigkeit des Getriebes bei der Frequenz der einen Schwingung, effektiv

quantity-vibrate-unit-zone = Schwingstärkezone des Getriebes
    .choice-1 = A
    .choice-2 = B
    .choice-3 = C
    .choice-4 = D

quantity-vibrate-unit-acceptance = größte Ablesung, mit der das Getriebe abgenommen wird

quantity-vibrate-unit-verdict = Urteil über die Abnahme des Getriebes
    .choice-1 = abgenommen
    .choice-2 = nicht abgenommen

relation-vibrate-motor-frequency-speed = Drehfrequenz der Motorwelle
    .source = Umdrehungen je Sekunde mal dem, was je Umdrehung vorbeikommt
    .turn-output-shaft = Sie haben die Drehzahl der Abtriebswelle benutzt; zur Drehfrequenz des Motors gehört seine eigene.
    .turn-rad-s = Sie haben Radiant je Sekunde angegeben; eine Frequenz zählt ganze Umdrehungen, teilen Sie also durch 2π.
    .turn-supply = Sie haben die Netzfrequenz angegeben; die Welle dreht mit ihrer eigenen, die durch Polzahl und Schlupf niedriger liegt.

relation-vibrate-output-frequency-speed = Drehfrequenz der Abtriebswelle
    .source = Umdrehungen je Sekunde mal dem, was je Umdrehung vorbeikommt
    .turn-motor = Sie haben die Drehzahl des Motors benutzt; die Abtriebswelle dreht um die Übersetzung des Getriebes langsamer.
    .turn-rad-s = Sie haben Radiant je Sekunde angegeben; eine Frequenz zählt ganze Umdrehungen, teilen Sie also durch 2π.

relation-vibrate-mesh-pinion = Zahneingriffsfrequenz vom Ritzel her
    .limits = Motor und Antriebswelle an einer Kupplung
    .place = Zahneingriffsfrequenz
    .turn-teeth-of-the-wrong-gear = Sie haben die Zähnezahl des getriebenen Rads mit der Drehzahl des Ritzels genommen; Zähnezahl und Drehzahl gehören zu ein und demselben Rad.
    .turn-output-speed = Sie haben die Drehzahl der Abtriebswelle benutzt; das Ritzel dreht mit dem Motor.
    .turn-teeth-of-both = Sie haben die Zähnezahlen beider Räder zusammengezählt; es kommt immer ein Zahnpaar nach dem anderen in Eingriff.
    .turn-divided-by-teeth = Sie haben durch die Zähnezahl geteilt; jeder Zahn kommt einmal je Umdrehung in Eingriff, nehmen Sie also mal.
    .turn-sprocket = Sie haben die Zähnezahl des Kettenrads genommen; der Zahneingriff liegt zwischen den Rädern im Getriebe.

relation-vibrate-gear-speed-teeth = Drehzahl des Rads, das vom Ritzel getrieben wird
    .place = Zahneingriffsfrequenz
    .turn-turned-over = Sie haben das Verhältnis der Zähnezahlen umgedreht; das größere Rad dreht langsamer.
    .turn-output-shaft = Sie haben die Drehzahl der Abtriebswelle angegeben; das Rad der ersten Stufe dreht schneller, wenn weitere Stufen folgen.

relation-vibrate-mesh-gear = Zahneingriffsfrequenz vom getriebenen Rad her
    .place = Zahneingriffsfrequenz
    .turn-teeth-of-the-wrong-gear = Sie haben die Zähnezahl des Ritzels mit der Drehzahl des Rads genommen; Zähnezahl und Drehzahl gehören zu ein und demselben Rad.
    .turn-pinion-speed = Sie haben die Drehzahl des Ritzels mit der Zähnezahl des Rads genommen; Zähnezahl und Drehzahl gehören zu ein und demselben Rad.

relation-vibrate-chain-pass-small-sprocket = Eingriffsfrequenz der Kettenrollen am kleinen Kettenrad
    .source = Umdrehungen je Sekunde mal dem, was je Umdrehung vorbeikommt
    .turn-large-sprocket = Sie haben die Zähnezahl des großen Kettenrads mit der Drehzahl des kleinen genommen; Zähnezahl und Drehzahl gehören zu ein und demselben Kettenrad.
    .turn-motor-speed = Sie haben die Drehzahl des Motors benutzt; das kleine Kettenrad sitzt auf der Abtriebswelle.
    .turn-shaft-only = Sie haben die Drehfrequenz der Welle angegeben; bei jedem Zahn einer Umdrehung setzt sich eine Rolle ein.
    .turn-pinion = Sie haben die Zähnezahl eines Rads im Getriebe genommen; die Kette läuft auf dem Kettenrad.

relation-vibrate-chain-loop-links = Umlauffrequenz eines Kettenglieds
    .limits = ein steifes Glied oder eine beschädigte Rolle zeigt sich dort
    .source = Umdrehungen je Sekunde mal dem, was je Umdrehung vorbeikommt
    .turn-links-left-out = Sie haben die Gliederzahl weggelassen; so oft setzen sich Rollen ein, und ein Glied kommt nur einmal herum, während alle Glieder vorbeikommen.
    .turn-large-sprocket = Sie haben die Zähnezahl des großen Kettenrads mit der Drehzahl des kleinen genommen; Zähnezahl und Drehzahl gehören zu ein und demselben Kettenrad.
    .turn-motor-speed = Sie haben die Drehzahl des Motors benutzt; das kleine Kettenrad sitzt auf der Abtriebswelle.
    .turn-shaft-over-links = Sie haben die Drehfrequenz der Welle durch die Gliederzahl geteilt; je Umdrehung rückt die Kette um so viele Glieder weiter, wie das Kettenrad Zähne hat.
    .turn-turned-over = Sie haben Zähnezahl und Gliederzahl vertauscht; die Kette läuft langsamer um als das Kettenrad.

relation-vibrate-order-cage-geometry = Käfigordnung des Lagers
    .source = Abrollen der Wälzkörper auf beiden Ringen ohne Schlupf, Außenring in Ruhe
    .turn-plus-for-minus = Sie haben das Verhältnis der Durchmesser dazugezählt; bei ruhendem Außenring läuft der Käfig langsamer als mit der halben Drehzahl der Welle.
    .turn-not-halved = Sie haben nicht halbiert; der Käfig läuft mit etwas weniger als der halben Drehzahl der Welle.
    .turn-radius = Sie haben den halben Durchmesser des Wälzkörpers mit dem ganzen Teilkreisdurchmesser benutzt; beides sind Durchmesser.

relation-vibrate-order-outer-geometry = Außenringordnung des Lagers
    .source = Abrollen der Wälzkörper auf beiden Ringen ohne Schlupf, Außenring in Ruhe
    .turn-inner-ring = Sie haben plus gerechnet, das ist der Innenring; zum Außenring gehört minus.
    .turn-angle-left-out = Sie haben den Druckwinkel weggelassen; sein Kosinus gehört zum Verhältnis der Durchmesser.
    .turn-not-halved = Sie haben die Zahl der Wälzkörper nicht halbiert.
    .turn-cage = Sie haben die Zahl der Wälzkörper weggelassen; jeder von ihnen kommt bei jedem Umlauf des Käfigs einmal an der Stelle vorbei.
    .turn-radius = Sie haben den halben Durchmesser des Wälzkörpers mit dem ganzen Teilkreisdurchmesser benutzt; beides sind Durchmesser.

relation-vibrate-order-inner-geometry = Innenringordnung des Lagers
    .source = Abrollen der Wälzkörper auf beiden Ringen ohne Schlupf, Außenring in Ruhe
    .turn-outer-ring = Sie haben minus gerechnet, das ist der Außenring; der Innenring dreht gegen den Käfig, zu ihm gehört plus.
    .turn-angle-left-out = Sie haben den Druckwinkel weggelassen; sein Kosinus gehört zum Verhältnis der Durchmesser.
    .turn-not-halved = Sie haben die Zahl der Wälzkörper nicht halbiert.
    .turn-elements-left-out = Sie haben die Zahl der Wälzkörper weggelassen; jeder von ihnen kommt an der Stelle vorbei.

relation-vibrate-order-spin-geometry = Ordnung der Eigendrehung der Wälzkörper
    .source = Abrollen der Wälzkörper auf beiden Ringen ohne Schlupf, Außenring in Ruhe
    .turn-both-rings = Sie haben beide Ringe gezählt; eine Stelle am Wälzkörper schlägt je Umdrehung zweimal an, die Eigendrehung ist die einfache Umdrehung.
    .turn-not-squared = Sie haben das Verhältnis der Durchmesser nicht quadriert.
    .turn-not-halved = Sie haben mit 2 malgenommen, wo die Formel durch 2 teilt.
    .turn-bracket-left-out = Sie haben die Klammer weggelassen; der Wälzkörper rollt auf beiden Ringen und dreht sich etwas langsamer.

relation-vibrate-cage-order = Käfigfrequenz
    .limits = wirkliche Lager liegen wegen des Schlupfs 1 bis 3 % daneben; suchen Sie 3 % nach beiden Seiten
    .source = Abrollen der Wälzkörper auf beiden Ringen ohne Schlupf, Außenring in Ruhe
    .turn-motor-speed = Sie haben die Drehzahl des Motors benutzt; das Lager sitzt auf der Abtriebswelle.
    .turn-divided = Sie haben durch die Ordnung geteilt; die Ordnung sagt, wie oft es je Umdrehung geschieht, nehmen Sie also mal.

relation-vibrate-outer-order = Außenringfrequenz
    .limits = wirkliche Lager liegen wegen des Schlupfs 1 bis 3 % daneben; suchen Sie 3 % nach beiden Seiten
    .source = Abrollen der Wälzkörper auf beiden Ringen ohne Schlupf, Außenring in Ruhe
    .turn-motor-speed = Sie haben die Drehzahl des Motors benutzt; das Lager sitzt auf der Abtriebswelle.
    .turn-inner-ring = Sie haben die Ordnung des Innenrings benutzt.
    .turn-every-element = Sie haben mit allen Wälzkörpern malgenommen; der Käfig läuft langsamer als mit der halben Drehzahl der Welle, also kommen je Umdrehung weniger vorbei.

relation-vibrate-inner-order = Innenringfrequenz
    .limits = wirkliche Lager liegen wegen des Schlupfs 1 bis 3 % daneben; suchen Sie 3 % nach beiden Seiten
    .source = Abrollen der Wälzkörper auf beiden Ringen ohne Schlupf, Außenring in Ruhe
    .turn-motor-speed = Sie haben die Drehzahl des Motors benutzt; das Lager sitzt auf der Abtriebswelle.
    .turn-outer-ring = Sie haben die Ordnung des Außenrings benutzt.
    .turn-every-element = Sie haben mit allen Wälzkörpern malgenommen; der Käfig läuft mit der Welle mit, also kommen je Umdrehung weniger vorbei.

relation-vibrate-spin-order = Eigendrehfrequenz der Wälzkörper
    .limits = wirkliche Lager liegen wegen des Schlupfs 1 bis 3 % daneben; suchen Sie 3 % nach beiden Seiten
    .source = Abrollen der Wälzkörper auf beiden Ringen ohne Schlupf, Außenring in Ruhe
    .turn-motor-speed = Sie haben die Drehzahl des Motors benutzt; das Lager sitzt auf der Abtriebswelle.
    .turn-both-rings = Sie haben beide Ringe gezählt; so oft schlägt eine Stelle am Wälzkörper an, die Eigendrehung ist die Hälfte davon.

relation-vibrate-outer-quick-elements = Außenringfrequenz, aus der Zahl der Wälzkörper geschätzt
    .limits = auf etwa 20 % genau, um zu wissen, wo man sucht; es entscheiden die eigenen Maße des Lagers
    .turn-inner-ring = Sie haben 0,6 genommen, das gehört zum Innenring; an einer Stelle des Außenrings kommt weniger als die Hälfte der Wälzkörper vorbei.
    .turn-every-element = Sie haben mit allen Wälzkörpern malgenommen; der Käfig läuft langsamer als mit der halben Drehzahl der Welle, also kommen je Umdrehung weniger vorbei.
    .turn-half-the-elements = Sie haben die Hälfte der Wälzkörper genommen; der Käfig läuft etwas langsamer als mit der halben Drehzahl der Welle, also trifft 0,4 davon besser zu.
    .turn-cage = Sie haben die Zahl der Wälzkörper weggelassen; jeder von ihnen kommt bei jedem Umlauf des Käfigs einmal an der Stelle vorbei.
    .turn-motor-speed = Sie haben die Drehzahl des Motors benutzt; das Lager sitzt auf der Abtriebswelle.

relation-vibrate-inner-quick-elements = Innenringfrequenz, aus der Zahl der Wälzkörper geschätzt
    .limits = auf etwa 20 % genau, um zu wissen, wo man sucht; es entscheiden die eigenen Maße des Lagers
    .turn-outer-ring = Sie haben 0,4 genommen, das gehört zum Außenring; der Innenring dreht gegen den Käfig, also kommt mehr als die Hälfte der Wälzkörper vorbei.
    .turn-every-element = Sie haben mit allen Wälzkörpern malgenommen; der Käfig läuft mit der Welle mit, also kommen je Umdrehung weniger vorbei.
    .turn-half-the-elements = Sie haben die Hälfte der Wälzkörper genommen; der Innenring dreht etwas mehr als doppelt so schnell wie der Käfig, also trifft 0,6 davon besser zu.
    .turn-elements-left-out = Sie haben die Zahl der Wälzkörper weggelassen; jeder von ihnen kommt an der Stelle vorbei.
    .turn-motor-speed = Sie haben die Drehzahl des Motors benutzt; das Lager sitzt auf der Abtriebswelle.

relation-vibrate-velocity-lines = Gesamtwert aus den Linien des Spektrums
    .limits = Linien effektiv, im Frequenzbereich des Gesamtwerts
    .source = mittleres Quadrat einer Summe von Sinusschwingungen verschiedener Frequenz
    .turn-lines-added = Sie haben die Linien zusammengezählt; sie erreichen ihren Scheitel nicht zugleich, also addieren sich ihre Quadrate.
    .turn-largest-line = Sie haben die größte Linie für das Ganze genommen; die anderen zählen auch.
    .turn-root-left-out = Sie haben die Wurzel aus der Summe der Quadrate weggelassen.
    .turn-rest-left-out = Sie haben weggelassen, was zwischen den Linien liegt; es gehört zum Ganzen.
    .turn-root-mean-of-the-lines = Sie haben die Summe der Quadrate durch die Zahl der Linien geteilt; sie sind alle zugleich da, also addieren sich ihre Quadrate.

relation-vibrate-peak-frequency-strongest = Frequenz der stärksten Linie
    .method = die größte Linie; die des Lagers steht wegen des Schlupfs etwas unter seiner Außenringfrequenz
    .source = die größte der Linien

relation-vibrate-peak-part-nearest = Herkunft der stärksten Linie
    .method = das Teil, dessen Frequenz der Linie am nächsten liegt, wenn es innerhalb von 3 % ist
    .limits = Wellen und Zahneingriffe liegen innerhalb von 1 %; ein Wälzlager wegen des Schlupfs bis zu 3 % daneben
    .turn-once-for-twice = Sie haben die Frequenz halbiert; eine Linie bei zweimal je Umdrehung sagt etwas anderes als eine bei einmal.
    .turn-twice-for-once = Sie haben die Frequenz verdoppelt; eine Linie bei einmal je Umdrehung sagt etwas anderes als eine bei zweimal.
    .turn-hertz-as-cycles-a-minute = Sie haben Hertz und Schwingungen je Minute vermengt; 1 Hz sind 60 cpm.
    .turn-cycles-a-minute-as-hertz = Sie haben Hertz und Schwingungen je Minute vermengt; 1 Hz sind 60 cpm.
    .turn-slip-not-allowed-for = Sie haben einen genauen Treffer verlangt; ein Wälzlager hat Schlupf, suchen Sie also bis zu 3 % nach beiden Seiten.
    .turn-inner-ring = Sie haben die Innenringfrequenz für die des Außenrings benutzt.
    .turn-teeth-of-the-gear = Sie haben die Zähnezahl des Ritzels mit der Drehzahl des Rads genommen; Zähnezahl und Drehzahl gehören zu ein und demselben Rad.

relation-vibrate-tone-motor-shaft = Die eine betrachtete Schwingung: die Drehfrequenz des Motors
    .source = die Linie bei der Drehfrequenz des Motors wird für sich betrachtet

relation-vibrate-displacement-line = Schwingweg der einen betrachteten Schwingung
    .source = Ableitung einer Sinusschwingung

relation-vibrate-velocity-peak-displacement = Scheitelwert der Geschwindigkeit aus dem Schwingweg
    .limits = eine einzelne Sinusschwingung
    .source = Ableitung einer Sinusschwingung
    .turn-peak-to-peak-as-peak = Sie haben den ganzen Ausschlag benutzt; zum Scheitelwert der Geschwindigkeit gehört die Hälfte davon.
    .turn-halved-twice = Sie haben den Ausschlag zweimal halbiert.
    .turn-2-left-out = Sie haben die 2π weggelassen; eine Sinusschwingung der Frequenz f ändert sich mit 2π f.
    .turn-r-m-s = Sie haben bis zum Effektivwert weitergerechnet; gefragt ist der Scheitelwert.
    .turn-mil-for-micrometre = Sie haben Mikrometer als mil gelesen; ein mil ist ein Tausendstel Zoll, 25,4 µm.
    .turn-micrometre-for-mil = Sie haben mil als Mikrometer gelesen; ein mil ist ein Tausendstel Zoll, 25,4 µm.

relation-vibrate-velocity-rms-peak = Effektivwert der Geschwindigkeit aus dem Scheitelwert
    .limits = eine einzelne Sinusschwingung
    .source = mittleres Quadrat einer Sinusschwingung
    .turn-multiplied = Sie haben mit √2 malgenommen; der Effektivwert ist kleiner als der Scheitelwert.
    .turn-peak-itself = Sie haben den Scheitelwert als Effektivwert angegeben; teilen Sie durch √2.
    .turn-halved = Sie haben den Scheitelwert halbiert; bei einer Sinusschwingung teilt man durch √2.
    .turn-peak-to-peak = Sie haben den Wert für einen Spitze-Spitze-Wert gehalten und durch 2√2 geteilt; er ist schon ein Scheitelwert.
    .turn-average = Sie haben 0,637 benutzt, das Mittel einer Halbwelle; der Effektivwert ist 0,707 des Scheitelwerts.

relation-vibrate-velocity-peak-r-m-s = Scheitelwert der Geschwindigkeit aus dem Effektivwert
    .limits = eine einzelne Sinusschwingung
    .source = mittleres Quadrat einer Sinusschwingung
    .turn-r-m-s-doubled = Sie haben den Effektivwert verdoppelt; 2 führt vom Scheitelwert zum Spitze-Spitze-Wert, und √2 vom Effektivwert zum Scheitelwert.
    .turn-divided = Sie haben durch √2 geteilt; der Scheitelwert ist größer als der Effektivwert.
    .turn-peak-to-peak = Sie haben bis zum Spitze-Spitze-Wert weitergerechnet; gefragt ist der Scheitelwert.

relation-vibrate-displacement-velocity = Schwingweg aus dem Scheitelwert der Geschwindigkeit
    .limits = eine einzelne Sinusschwingung
    .source = Ableitung einer Sinusschwingung
    .turn-peak = Sie haben beim Scheitelwert aufgehört; der Schwingweg wird als Spitze-Spitze-Wert angegeben, das ist das Doppelte.
    .turn-2-left-out = Sie haben die 2π weggelassen; eine Sinusschwingung der Frequenz f ändert sich mit 2π f.
    .turn-r-m-s-doubled = Sie haben einen Effektivwert verdoppelt, um den Spitze-Spitze-Wert zu bekommen; vom Effektivwert aus ist der Faktor 2√2.
    .turn-mil-for-micrometre = Sie haben mil und Mikrometer vermengt; ein mil ist ein Tausendstel Zoll, 25,4 µm.
    .turn-micrometre-for-mil = Sie haben mil und Mikrometer vermengt; ein mil ist ein Tausendstel Zoll, 25,4 µm.

relation-vibrate-acceleration-velocity = Scheitelwert der Beschleunigung aus dem der Geschwindigkeit
    .limits = eine einzelne Sinusschwingung
    .source = Ableitung einer Sinusschwingung
    .turn-2-left-out = Sie haben die 2π weggelassen; eine Sinusschwingung der Frequenz f ändert sich mit 2π f.
    .turn-divided = Sie haben durch 2π f geteilt; von der Geschwindigkeit zur Beschleunigung wird malgenommen.
    .turn-squared = Sie haben die Frequenz im Quadrat benutzt; das führt vom Schwingweg zur Beschleunigung.
    .turn-r-m-s = Sie haben den Effektivwert der Geschwindigkeit benutzt; zum Scheitelwert der Beschleunigung gehört der Scheitelwert der Geschwindigkeit.

relation-vibrate-acceleration-displacement = Scheitelwert der Beschleunigung aus dem Schwingweg
    .limits = eine einzelne Sinusschwingung
    .source = Ableitung einer Sinusschwingung
    .turn-not-squared = Sie haben die Frequenz nicht quadriert.
    .turn-peak-to-peak-as-peak = Sie haben den ganzen Ausschlag benutzt; zum Scheitelwert der Beschleunigung gehört die Hälfte davon.
    .turn-2-not-squared = Sie haben die Frequenz quadriert, die 2π aber nicht.

relation-vibrate-displacement-acceleration = Schwingweg aus dem Scheitelwert der Beschleunigung
    .limits = eine einzelne Sinusschwingung
    .source = Ableitung einer Sinusschwingung
    .turn-peak = Sie haben beim Scheitelwert aufgehört; der Schwingweg wird als Spitze-Spitze-Wert angegeben, das ist das Doppelte.
    .turn-not-squared = Sie haben die Frequenz nicht quadriert; von der Beschleunigung zum Schwingweg sind es zwei Schritte.
    .turn-2-not-squared = Sie haben die Frequenz quadriert, die 2π aber nicht.
    .turn-2-left-out = Sie haben die 2π weggelassen; eine Sinusschwingung der Frequenz f ändert sich mit 2π f.
    .turn-g-taken-for-m-s = Sie haben die Zahl der g als m/s² benutzt; ein g sind 9,807 m/s².
    .turn-r-m-s-doubled = Sie sind über den Effektivwert gegangen und haben ihn verdoppelt; vom Effektivwert zum Spitze-Spitze-Wert ist der Faktor 2√2.
    .turn-mil-for-micrometre = Sie haben mil und Mikrometer vermengt; ein mil ist ein Tausendstel Zoll, 25,4 µm.
    .turn-micrometre-for-mil = Sie haben mil und Mikrometer vermengt; ein mil ist ein Tausendstel Zoll, 25,4 µm.

relation-vibrate-velocity-peak-acceleration = Scheitelwert der Geschwindigkeit aus dem der Beschleunigung
    .limits = eine einzelne Sinusschwingung
    .source = Ableitung einer Sinusschwingung
    .turn-2-left-out = Sie haben die 2π weggelassen; eine Sinusschwingung der Frequenz f ändert sich mit 2π f.
    .turn-g-taken-for-m-s = Sie haben die Zahl der g als m/s² benutzt; ein g sind 9,807 m/s².
    .turn-r-m-s = Sie haben bis zum Effektivwert weitergerechnet; gefragt ist der Scheitelwert.

relation-vibrate-group-plate-power = Gruppe der Maschine
    .method = auf dem Typenschild bis 15 kW, darüber bis 300 kW oder über 300 kW
    .place = Tabelle A.1 und A.2 (nach einer Abschrift)
    .turn-one-too-large = Sie haben die falsche Gruppe genommen; es gilt die Leistung auf dem Typenschild: über 300 kW, über 15 kW oder bis 15 kW.
    .turn-one-too-small = Sie haben die falsche Gruppe genommen; es gilt die Leistung auf dem Typenschild: über 300 kW, über 15 kW oder bis 15 kW.

relation-vibrate-motor-group-shaft-height = Gruppe des Elektromotors für sich
    .method = 315 mm (12,4 in) und mehr: Gruppe 1. 160 mm (6,3 in) und mehr: Gruppe 2. Darunter hat die Tabelle keine Zeile.
    .limits = ein Elektromotor für sich betrachtet; sind die Gruppen von Motor und Maschine verschieden, wird jeder Teil nach seiner eigenen beurteilt
    .place = Tabelle A.1 und A.2 (nach einer Abschrift)
    .turn-one-too-large = Sie haben die falsche Gruppe genommen; bei einem Elektromotor gilt die Höhe der Welle über den Füßen, seine Achshöhe: 315 mm und mehr, 160 mm und mehr oder unter 160 mm.
    .turn-one-too-small = Sie haben die falsche Gruppe genommen; bei einem Elektromotor gilt die Höhe der Welle über den Füßen, seine Achshöhe: 315 mm und mehr, 160 mm und mehr oder unter 160 mm.
    .turn-by-the-power = Sie haben nach der Leistung gewählt wie bei der getriebenen Maschine; bei einem Elektromotor gilt die Achshöhe.

relation-vibrate-limit-ab-table = Grenze zwischen den Zonen A und B
    .method = die Zeile der Tabelle für Gruppe und Aufstellung
    .limits = Lagergehäuse; bis 15 kW die unteren Enden aus ISO 20816-1, Tabelle C.1, gleich bei welcher Aufstellung
    .place = Tabelle A.1 und A.2 (nach einer Abschrift)
    .turn-wrong-group = Sie haben die Zeile einer anderen Gruppe gelesen.
    .turn-wrong-group-other = Sie haben die Zeile einer anderen Gruppe gelesen.
    .turn-wrong-support = Sie haben die Zeile der anderen Aufstellung gelesen.
    .turn-next-limit = Sie haben die Grenze zwischen B und C gelesen.

relation-vibrate-limit-bc-table = Grenze zwischen den Zonen B und C
    .method = die Zeile der Tabelle für Gruppe und Aufstellung
    .limits = Lagergehäuse; bis 15 kW die unteren Enden aus ISO 20816-1, Tabelle C.1, gleich bei welcher Aufstellung
    .place = Tabelle A.1 und A.2 (nach einer Abschrift)
    .turn-wrong-group = Sie haben die Zeile einer anderen Gruppe gelesen.
    .turn-wrong-group-other = Sie haben die Zeile einer anderen Gruppe gelesen.
    .turn-wrong-support = Sie haben die Zeile der anderen Aufstellung gelesen.
    .turn-limit-before = Sie haben die Grenze zwischen A und B gelesen.
    .turn-next-limit = Sie haben die Grenze zwischen C und D gelesen.

relation-vibrate-limit-cd-table = Grenze zwischen den Zonen C und D
    .method = die Zeile der Tabelle für Gruppe und Aufstellung
    .limits = Lagergehäuse; bis 15 kW die unteren Enden aus ISO 20816-1, Tabelle C.1, gleich bei welcher Aufstellung
    .place = Tabelle A.1 und A.2 (nach einer Abschrift)
    .turn-wrong-group = Sie haben die Zeile einer anderen Gruppe gelesen.
    .turn-wrong-group-other = Sie haben die Zeile einer anderen Gruppe gelesen.
    .turn-wrong-support = Sie haben die Zeile der anderen Aufstellung gelesen.
    .turn-limit-before = Sie haben die Grenze zwischen B und C gelesen.

relation-vibrate-limit-share-limit = Ausgenutzter Anteil der Grenze zwischen den Zonen B und C
    .source = Definition des Anteils
    .turn-turned-over = Sie haben die Grenze durch die Ablesung geteilt; der Anteil ist die Ablesung durch die Grenze.
    .turn-what-is-left = Sie haben angegeben, was bis zur Grenze noch fehlt.
    .turn-limit-a-to-b = Sie haben die Grenze zwischen A und B benutzt.
    .turn-limit-c-to-d = Sie haben die Grenze zwischen C und D benutzt.
    .turn-peak-for-r-m-s = Sie haben die effektive Ablesung in einen Scheitelwert umgerechnet; die Grenzen sind Effektivwerte.

relation-vibrate-zone-limits = Schwingstärkezone der Ablesung
    .method = A bis zur ersten Grenze, B bis zur zweiten, C bis zur dritten, D darüber
    .limits = effektiv, die größte Ablesung aller Stellen und Richtungen
    .place = Zonen (nach einer Abschrift); eine Ablesung auf einer Grenze zählt zur besseren Zone
    .turn-wrong-group = Sie haben die Grenzen einer anderen Gruppe benutzt.
    .turn-wrong-group-other = Sie haben die Grenzen einer anderen Gruppe benutzt.
    .turn-wrong-support = Sie haben die Grenzen der anderen Aufstellung benutzt.
    .turn-peak-for-r-m-s = Sie haben die effektive Ablesung in einen Scheitelwert umgerechnet; die Grenzen sind Effektivwerte.
    .turn-taken-for-a-peak = Sie haben die Ablesung durch √2 geteilt; sie ist schon effektiv, wie die Grenzen.
    .turn-mm-s-against-in-s = Sie haben mm/s gegen Grenzen in in/s gehalten.
    .turn-in-s-against-mm-s = Sie haben in/s gegen Grenzen in mm/s gehalten.

relation-vibrate-baseline-settled-mean = Bezugswert aus Ablesungen in Beharrung
    .limits = nach dem Einlauf, bei gleichmäßiger Drehzahl, Last und Temperatur
    .turn-first-start = Sie haben die Ablesung vom ersten Start genommen; der Bezugswert wird gebildet, wenn die Maschine eingelaufen und in Beharrung ist.
    .turn-run-in-and-all = Sie haben die Ablesung vom ersten Start in das Mittel genommen; der Bezugswert wird gebildet, wenn die Maschine eingelaufen und in Beharrung ist.
    .turn-sum = Sie haben die Ablesungen zusammengezählt und nicht durch ihre Zahl geteilt.

relation-vibrate-run-in-fall-baseline = Rückgang der Schwingung während des Einlaufs
    .limits = ein gewisser Rückgang ist üblich; ein Anstieg ist keiner
    .source = Definition des Anteils
    .turn-of-the-baseline = Sie haben durch den Bezugswert geteilt; der Rückgang ist ein Anteil dessen, wovon er ausging.
    .turn-what-is-left = Sie haben angegeben, was übrig ist; der Rückgang ist, was weggefallen ist.

relation-vibrate-alarm-baseline = Einstellwert der Warnung
    .limits = höchstens das 1,25-Fache der Grenze zwischen B und C
    .place = Abschnitt 5.4 (wie zitiert)
    .turn-start-up-reading = Sie haben die Warnung nach der Ablesung vom ersten Start eingestellt; sie wird nach dem Bezugswert in Beharrung eingestellt.
    .turn-quarter-of-the-baseline = Sie haben ein Viertel des Bezugswerts dazugezählt; dazu kommt ein Viertel der Grenze zwischen B und C.
    .turn-limit-a-to-b = Sie haben die Grenze zwischen A und B benutzt; zur Warnung gehört ein Viertel der Grenze zwischen B und C.
    .turn-limit-c-to-d = Sie haben die Grenze zwischen C und D benutzt; zur Warnung gehört ein Viertel der Grenze zwischen B und C.
    .turn-baseline-left-out = Sie haben den Bezugswert weggelassen; die Warnung liegt um ein Viertel der Grenze darüber.
    .turn-whole-limit = Sie haben die ganze Grenze dazugezählt; dazu kommt ein Viertel davon.
    .turn-limit-itself = Sie haben die Grenze selbst genommen; die Warnung liegt über dem eigenen Bezugswert dieser Maschine.
    .turn-2-5-times = Sie haben den Bezugswert mit 2,5 malgenommen; das steht in keiner Norm.

relation-vibrate-trip-limit = Höchster Einstellwert der Abschaltung
    .place = Abschnitt 5.4 (wie zitiert)
    .turn-limit-b-to-c = Sie haben die Grenze zwischen B und C benutzt; die Abschaltung richtet sich nach der Grenze zwischen C und D.
    .turn-quarter = Sie haben ein Viertel der Grenze genommen; die Abschaltung darf ein Viertel über ihr liegen.
    .turn-limit-itself = Sie haben die Grenze selbst genommen; die Abschaltung darf bis zu einem Viertel über ihr liegen.

relation-vibrate-alarm-verdict-settings = Urteil nach Warnung und Abschaltung
    .method = bis zur Warnung nichts, darüber Ursache suchen, über der Abschaltung anhalten
    .turn-limit-for-alarm = Sie haben die Grenze zwischen B und C für die Warnung benutzt; die Warnung wird nach dem eigenen Bezugswert dieser Maschine eingestellt.
    .turn-limit-for-trip = Sie haben die Grenze zwischen B und C für die Abschaltung benutzt; die Abschaltung richtet sich nach der Grenze zwischen C und D.
    .turn-alarm-taken-for-trip = Sie haben den Antrieb schon bei der Warnung angehalten; die Warnung fragt nach der Ursache, und die Abschaltung hält an.

relation-vibrate-change-verdict-quarter-of-the-limit = Urteil über die Änderung gegen den Bezugswert
    .method = der Betrag von Ablesung minus Bezugswert, gegen ein Viertel der Grenze zwischen B und C gehalten; nach oben und unten zählt gleich
    .place = Abschnitt 5.3 (wie zitiert)
    .turn-start-up-reading = Sie haben mit der Ablesung vom ersten Start verglichen; verglichen wird mit dem Bezugswert in Beharrung.
    .turn-quarter-of-the-baseline = Sie haben ein Viertel des Bezugswerts genommen; es zählt ein Viertel der Grenze zwischen B und C.
    .turn-fall-ignored = Sie haben einen Rückgang durchgehen lassen; ein großer Rückgang ist ebenso wesentlich wie ein Anstieg.
    .turn-whole-limit = Sie haben die Änderung gegen die ganze Grenze gehalten; es zählt ein Viertel davon.
    .turn-reading-against-limit = Sie haben die Ablesung gegen die Grenze gehalten; hier zählt die Änderung gegen den Bezugswert.

relation-vibrate-mean-range-moving-ranges = Mittlere gleitende Spannweite der Ablesungen in Beharrung
    .place = 6.3.2.2 (wie zitiert)
    .turn-divided-by-readings = Sie haben durch die Zahl der Ablesungen geteilt; es gibt einen Schritt weniger als Ablesungen.
    .turn-signs-kept = Sie haben die Vorzeichen behalten, so hob sich Auf und Ab gegenseitig auf; eine Spannweite ist ein Betrag.
    .turn-whole-spread = Sie haben größte minus kleinste Ablesung genommen; die gleitende Spannweite geht von jeder Ablesung zur nächsten.
    .turn-sum = Sie haben die Spannweiten zusammengezählt und nicht durch ihre Zahl geteilt.

relation-vibrate-control-upper-moving-range = Obere Eingriffsgrenze
    .limits = wenige Ablesungen geben eine erste Schätzung; bilden Sie die Grenzen neu, wenn mehr da sind
    .place = 6.3.2.2 (wie zitiert)
    .turn-3-for-2-66 = Sie haben die mittlere Spannweite mit 3 malgenommen; drei Standardabweichungen sind 2,66 mittlere Spannweiten.
    .turn-3-267 = Sie haben 3,267 benutzt, das begrenzt die Spannweiten; zu den Ablesungen gehört 2,66.
    .turn-range-limit = Sie haben die Grenze der gleitenden Spannweiten angegeben; gefragt ist die der Ablesungen.
    .turn-factor-left-out = Sie haben die 2,66 weggelassen.
    .turn-first-start = Sie sind von der Ablesung vom ersten Start ausgegangen; die Grenzen liegen um das Mittel in Beharrung.

relation-vibrate-control-lower-moving-range = Untere Eingriffsgrenze
    .limits = unter null sagt sie nichts
    .place = 6.3.2.2 (wie zitiert)
    .turn-3-for-2-66 = Sie haben die mittlere Spannweite mit 3 malgenommen; drei Standardabweichungen sind 2,66 mittlere Spannweiten.
    .turn-3-267 = Sie haben 3,267 benutzt, das begrenzt die Spannweiten; zu den Ablesungen gehört 2,66.
    .turn-factor-left-out = Sie haben die 2,66 weggelassen.
    .turn-upper = Sie haben die obere Grenze angegeben.

relation-vibrate-control-verdict-limits = Urteil nach den Eingriffsgrenzen
    .method = eine Ablesung jenseits einer Grenze ist ein Signal; eine genau auf der Grenze nicht
    .place = 6.3.1 (wie zitiert)
    .turn-severity-limit = Sie haben die Grenze der Schwingstärke benutzt; eine Ablesung kann weit innerhalb liegen und trotzdem eine Änderung dieser Maschine anzeigen.
    .turn-fall-ignored = Sie haben einen Rückgang durchgehen lassen; unter der unteren Grenze ist auch ein Signal.
    .turn-mean-as-limit = Sie haben die Ablesung gegen das Mittel gehalten; die Hälfte aller Ablesungen liegt darüber.

relation-vibrate-days-left-line = Tage bis zur Grenze nach einer Geraden
    .method = eine Gerade nach kleinsten Quadraten durch die Ablesungen legen, sehen, wann sie die Grenze erreicht, und den Tag der letzten Ablesung abziehen
    .limits = steigende Ablesungen, nach dem Einlauf; je weiter die Gerade über sie hinausreicht, desto weniger ist sie wert
    .source = kleinste Quadrate
    .turn-from-the-first = Sie haben ab der ersten Ablesung gezählt; was bleibt, zählt ab der letzten.
    .turn-from-nought = Sie haben ab Tag null gezählt; was bleibt, zählt ab der letzten Ablesung.
    .turn-last-two = Sie haben die Gerade durch die letzten beiden Ablesungen gezogen; alle drei zählen.
    .turn-limit-over-slope = Sie haben die ganze Grenze durch den Anstieg je Tag geteilt; es zählt nur, was bis zur Grenze noch fehlt.
    .turn-limit-c-to-d = Sie sind bis zur Grenze zwischen C und D gegangen; planen Sie für die Grenze zwischen B und C.
    .turn-exponential = Sie haben es um gleiche Anteile wachsen lassen; gefragt war die Gerade.

relation-vibrate-days-left-growing-exponential = Tage bis zur Grenze bei exponentiellem Wachstum
    .method = eine Gerade durch die Logarithmen der Ablesungen legen, sehen, wann sie den der Grenze erreicht, und den Tag der letzten Ablesung abziehen
    .limits = steigende Ablesungen, nach dem Einlauf; üblich, wenn sich ein Schaden ausbreitet
    .source = kleinste Quadrate durch die Logarithmen
    .turn-straight-line = Sie haben eine Gerade gezogen; ein Schaden, der sich ausbreitet, wächst um gleiche Anteile und ist früher da.
    .turn-from-the-first = Sie haben ab der ersten Ablesung gezählt; was bleibt, zählt ab der letzten.
    .turn-from-nought = Sie haben ab Tag null gezählt; was bleibt, zählt ab der letzten Ablesung.
    .turn-limit-c-to-d = Sie sind bis zur Grenze zwischen C und D gegangen; planen Sie für die Grenze zwischen B und C.

relation-vibrate-doubling-exponential = Zeit, in der sich die Ablesungen verdoppeln
    .method = eine Gerade durch die natürlichen Logarithmen der Ablesungen legen; 0,693 durch ihren Anstieg je Tag ist die Zahl der Tage
    .limits = steigende Ablesungen, nach dem Einlauf; die halbe Verdopplungszeit ist eine brauchbare Zeit bis zur nächsten Ablesung (übliche Praxis)
    .source = kleinste Quadrate durch die Logarithmen
    .turn-straight-line = Sie haben eine Gerade bis zum Doppelten der ersten Ablesung gezogen; Wachstum um gleiche Anteile verdoppelt immer wieder in derselben Zeit.
    .turn-last-two = Sie haben sich nach den letzten beiden Ablesungen gerichtet; alle drei zählen.
    .turn-first-two = Sie haben sich nach den ersten beiden Ablesungen gerichtet; alle drei zählen.
    .turn-e-fold = Sie haben ln 2 weggelassen; eins durch das Wachstum ist die Zeit bis zum 2,718-Fachen.
    .turn-tenfold = Sie haben die Zeit bis zum Zehnfachen angegeben.
    .turn-halved = Sie haben die Hälfte angegeben, die Zeit bis zum 1,41-Fachen.
    .turn-to-the-limit = Sie haben die Zeit bis zur Grenze angegeben; gefragt ist die Zeit, in der sich die Ablesungen verdoppeln.

relation-vibrate-size-power = Schwingungshöhe eines gesunden Antriebs im Verhältnis zu der des größten seiner Größenklasse
    .method = Das 1,6-Fache je fünffacher Leistung: von 15 kW abwärts, darüber von 75 kW abwärts; über 75 kW nicht mehr.
    .source = ISO 10816-1: Die Grenzen der Größenklassen, bis 15 kW, bis 75 kW und darüber, steigen von einer zur nächsten auf das 1,6-Fache; dass die Schwingungshöhe innerhalb einer Klasse der Leistung folgt, ist übliche Praxis

relation-vibrate-settled-motor-soft-foot = Linie in Beharrung bei der Drehfrequenz des Motors

relation-vibrate-settled-double-alignment = Linie in Beharrung bei der doppelten Drehfrequenz des Motors

relation-vibrate-settled-output-share = Linie in Beharrung bei der Drehfrequenz der Abtriebswelle
    .source = Definition des Anteils

relation-vibrate-line-chain-wear = Linie bei der Eingriffsfrequenz der Kettenrollen

relation-vibrate-settled-mesh-load = Linie in Beharrung bei der Zahneingriffsfrequenz

relation-vibrate-settled-bearing-share = Linie in Beharrung bei der Außenringfrequenz des Lagers
    .source = Definition des Anteils

relation-vibrate-rest-share = Alles zwischen den Linien
    .source = Definition des Anteils

relation-vibrate-settled-lines = Schwinggeschwindigkeit des Antriebs in Beharrung
    .source = mittleres Quadrat einer Summe von Sinusschwingungen verschiedener Frequenz

relation-vibrate-line-motor-base-bolts = Jetzige Linie bei der Drehfrequenz des Motors

relation-vibrate-line-double-base-bolts = Jetzige Linie bei der doppelten Drehfrequenz des Motors

relation-vibrate-line-output-bushing = Jetzige Linie bei der Drehfrequenz der Abtriebswelle

relation-vibrate-line-mesh-grown = Jetzige Linie bei der Zahneingriffsfrequenz

relation-vibrate-line-bearing-grown = Jetzige Linie bei der Außenringfrequenz des Lagers

relation-vibrate-first-run-in = Schwinggeschwindigkeit beim ersten Start
    .source = Definition des Anteils

relation-vibrate-reading-1-scatter = Erste Ablesung in Beharrung
    .source = Definition des Anteils

relation-vibrate-reading-2-scatter = Zweite Ablesung in Beharrung
    .source = Definition des Anteils

relation-vibrate-reading-3-scatter = Dritte Ablesung in Beharrung
    .source = Definition des Anteils

relation-vibrate-reading-4-scatter = Vierte Ablesung in Beharrung
    .source = Definition des Anteils

relation-vibrate-trend-1-growth = Erste Ablesung des Verlaufs
    .source = Wachstum um gleiche Anteile in gleichen Zeiten

relation-vibrate-trend-2-growth = Zweite Ablesung des Verlaufs
    .source = Wachstum um gleiche Anteile in gleichen Zeiten

relation-vibrate-trend-3-now = Dritte Ablesung des Verlaufs, die jetzige
    .source = Wachstum um gleiche Anteile in gleichen Zeiten

relation-vibrate-phases-common-divisor = Zahl der Einbauphasen des ersten Radpaars
    .method = Die größte Zahl, die beide Zähnezahlen teilt. Bei 1 trifft jeder Zahn jeden anderen, und der Verschleiß verteilt sich gleichmäßig.
    .place = Einbauphase und Zahnpaarfrequenz
    .turn-difference = Sie haben die Differenz der Zähnezahlen genommen; gefragt ist die größte Zahl, die beide teilt.
    .turn-smaller-divisor = Sie haben bei einem kleineren Teiler aufgehört; gefragt ist die größte Zahl, die beide teilt.
    .turn-common-multiple = Sie haben das kleinste gemeinsame Vielfache angegeben; gefragt ist der größte gemeinsame Teiler.

relation-vibrate-pinion-repeat-teeth = Umdrehungen des Ritzels, bis sich dieselben zwei Zähne wieder treffen
    .source = das kleinste gemeinsame Vielfache der Zähnezahlen, geteilt durch jede von ihnen
    .turn-turns-of-the-gear = Sie haben die Umdrehungen des Rads angegeben; das Ritzel dreht öfter.
    .turn-divisor-left-out = Sie haben die Zähnezahl des Rads genommen, wie sie ist; ein gemeinsamer Teiler bringt die Zähne früher zusammen.
    .turn-both-multiplied = Sie haben die Zähnezahlen miteinander malgenommen; so viele Zähne kommen vorbei, und das Ritzel bringt bei jeder Umdrehung mehrere davon.

relation-vibrate-gear-repeat-teeth = Umdrehungen des Rads, bis sich dieselben zwei Zähne wieder treffen
    .source = das kleinste gemeinsame Vielfache der Zähnezahlen, geteilt durch jede von ihnen
    .turn-turns-of-the-pinion = Sie haben die Umdrehungen des Ritzels angegeben; das Rad dreht seltener.
    .turn-divisor-left-out = Sie haben die Zähnezahl des Ritzels genommen, wie sie ist; ein gemeinsamer Teiler bringt die Zähne früher zusammen.

relation-vibrate-hunting-phases = Zahnpaarfrequenz des ersten Radpaars
    .limits = ein Klappern in diesem Takt deutet auf je einen beschädigten Zahn an beiden Rädern
    .place = Einbauphase und Zahnpaarfrequenz
    .turn-phases-left-out = Sie haben die Einbauphasen weggelassen; ein gemeinsamer Teiler bringt dieselben Zähne um so viele Male früher zusammen.
    .turn-phases-times-the-pinion = Sie haben die Umdrehungen des Ritzels mit dem gemeinsamen Teiler malgenommen; dieselben zwei Zähne treffen sich weit seltener.
    .turn-one-gear-s-teeth = Sie haben allein durch die Zähnezahl des Ritzels geteilt; so oft dreht das Ritzel.
    .turn-phase-frequency = Sie haben durch die Zahl der Einbauphasen geteilt; das ist die Einbauphasenfrequenz.

relation-vibrate-phase-frequency-phases = Einbauphasenfrequenz des ersten Radpaars
    .limits = zeigt, wo ein verschlissenes Paar in einer anderen Phase zusammengebaut wurde als vorher; kennzeichnen Sie die Zähne, bevor Sie es trennen
    .place = Einbauphase und Zahnpaarfrequenz
    .turn-multiplied = Sie haben mit der Zahl der Einbauphasen malgenommen; teilen Sie.
    .turn-hunting = Sie haben die Zahnpaarfrequenz angegeben; teilen Sie die Zahneingriffsfrequenz allein durch die Zahl der Einbauphasen.

relation-vibrate-unit-rating-table = Einstufungswert der Schwinggeschwindigkeit des Getriebes
    .method = Aus der Tabelle nach Klasse und Unterklasse. Unterklassen a und b, kleine Leistung: I 3,15, II 5, III 8 mm/s (0,124; 0,197; 0,315 in/s), IV 20 mm/s (0,787 in/s) bei a und 12,5 mm/s (0,492 in/s) bei b, kleine Leistung. Unterklasse b, große Leistung: 5; 8; 12,5; 20 mm/s (0,197; 0,315; 0,492; 0,787 in/s).
    .limits = die Klasse nennt der Hersteller oder der Vertrag; man schätzt sie nicht aus der Leistung
    .place = Tabelle 5 (nach einer Abschrift anderer)
    .turn-class-above = Sie haben die Zeile der nächsthöheren Klasse gelesen.
    .turn-class-below = Sie haben die Zeile der Klasse darunter gelesen.
    .turn-low-power = Sie haben die Zeile der Unterklasse b, kleine Leistung, gelesen.
    .turn-high-power = Sie haben die Zeile der Unterklasse b, große Leistung, gelesen.

relation-vibrate-unit-ab-rating = Grenze zwischen den Zonen A und B des Getriebes
    .method = Eine Stufe unter dem Einstufungswert in der Reihe 2; 3,15; 5; 8; 12,5; 20; 31,5 mm/s (0,079; 0,124; 0,197; 0,315; 0,492; 0,787; 1,240 in/s).
    .place = Tabelle 3 (nach einer Abschrift anderer)
    .turn-rating-itself = Sie haben den Einstufungswert selbst angegeben, das ist die Grenze zwischen B und C.
    .turn-step-up = Sie sind in der Reihe eine Stufe nach oben gegangen; A endet eine Stufe unter dem Einstufungswert.
    .turn-half = Sie haben den Einstufungswert halbiert; die Stufen der Reihe liegen etwa um den Faktor 1,6 auseinander.

relation-vibrate-unit-cd-rating = Grenze zwischen den Zonen C und D des Getriebes
    .method = Eine Stufe über dem Einstufungswert in der Reihe 2; 3,15; 5; 8; 12,5; 20; 31,5 mm/s (0,079; 0,124; 0,197; 0,315; 0,492; 0,787; 1,240 in/s).
    .place = Tabelle 3 (nach einer Abschrift anderer)
    .turn-rating-itself = Sie haben den Einstufungswert selbst angegeben, das ist die Grenze zwischen B und C.
    .turn-step-down = Sie sind in der Reihe eine Stufe nach unten gegangen; C endet eine Stufe über dem Einstufungswert.
    .turn-double = Sie haben den Einstufungswert verdoppelt; die Stufen der Reihe liegen etwa um den Faktor 1,6 auseinander.

relation-vibrate-unit-zone-rating = Schwingstärkezone des Getriebes
    .method = B endet beim Einstufungswert, A eine Stufe darunter und C eine Stufe darüber, in der Reihe 2; 3,15; 5; 8; 12,5; 20; 31,5 mm/s.
    .place = Tabelle 3 (nach einer Abschrift anderer)
    .turn-rating-for-a = Sie haben alles bis zum Einstufungswert zu Zone A gezählt; beim Einstufungswert endet B, und A endet eine Stufe darunter.
    .turn-peak-for-r-m-s = Sie haben die effektive Ablesung in einen Scheitelwert umgerechnet; die Grenzen sind Effektivwerte.
    .turn-taken-for-a-peak = Sie haben die Ablesung durch √2 geteilt; sie ist schon effektiv, wie die Grenzen.
    .turn-machine-s-zones = Sie haben die Grenzen für Maschinen im Allgemeinen benutzt; dieses Getriebe hat eine eigene Klasse.

relation-vibrate-unit-acceptance-limit = Größte Ablesung, mit der das Getriebe abgenommen wird
    .limits = auf dem Prüfstand oder wie vereinbart; Ziel ist Zone A
    .place = Abschnitt 8.3 (nach einer Abschrift anderer)
    .turn-limit-itself = Sie haben die Grenze zwischen A und B angegeben; ein Viertel mehr wird gewöhnlich abgenommen.
    .turn-from-the-rating = Sie haben ein Viertel mehr als den Einstufungswert genommen; es ist ein Viertel mehr als die Grenze zwischen A und B.

relation-vibrate-unit-verdict-acceptance = Urteil über die Abnahme des Getriebes
    .method = Abgenommen bis zum 1,25-Fachen der Grenze zwischen den Zonen A und B.
    .place = Abschnitt 8.3 (nach einer Abschrift anderer)
    .turn-rating-as-limit = Sie haben es gegen den Einstufungswert gehalten, bis zu dem ein laufendes Getriebe weiterlaufen darf; ein neues muss besser sein.
    .turn-zone-a-only = Sie haben Zone A verlangt; ein Viertel mehr wird gewöhnlich abgenommen.

relation-vibrate-unit-line-limit-frequency = Größte zulässige Schwinggeschwindigkeit des Getriebes bei einer Frequenz
    .limits = effektiv, eine Linie des Gehäusespektrums; der Gesamtwert wird gegen den Einstufungswert gehalten
    .place = Bild A.2 (nach einer Abschrift anderer)
    .turn-rating-itself = Sie haben den Einstufungswert genommen, wie er dasteht; unter 45 Hz und über 1590 Hz ist weniger zulässig.
    .turn-straight = Sie haben die Potenz 0,7 weggelassen und die Grenze im Gleichschritt mit der Frequenz fallen lassen.
    .turn-upside-down = Sie haben durch den Anteil geteilt; außerhalb des mittleren Bereichs ist weniger zulässig, nicht mehr.
    .turn-displacement-s-curve = Sie haben die Kurve für den Schwingweg benutzt; die Geschwindigkeit fällt unter 45 Hz und über 1590 Hz ab.
