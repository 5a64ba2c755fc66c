## Größen, Beziehungen, ihre Quellen und Fehler: Öl

quantity-oil-plate-grade = Viskositätsklasse auf dem Typenschild des Getriebes
    .choice-1 = ISO VG 2
    .choice-2 = ISO VG 3
    .choice-3 = ISO VG 5
    .choice-4 = ISO VG 7
    .choice-5 = ISO VG 10
    .choice-6 = ISO VG 15
    .choice-7 = ISO VG 22
    .choice-8 = ISO VG 32
    .choice-9 = ISO VG 46
    .choice-10 = ISO VG 68
    .choice-11 = ISO VG 100
    .choice-12 = ISO VG 150
    .choice-13 = ISO VG 220
    .choice-14 = ISO VG 320
    .choice-15 = ISO VG 460
    .choice-16 = ISO VG 680
    .choice-17 = ISO VG 1000
    .choice-18 = ISO VG 1500
    .choice-19 = ISO VG 2200
    .choice-20 = ISO VG 3200

quantity-oil-fill-share = Viskosität der Füllung als Anteil der Klasse auf dem Typenschild

quantity-oil-index = Viskositätsindex auf dem Datenblatt

quantity-oil-sample-40 = Viskosität der Probe bei 40 °C (104 °F)

quantity-oil-sample-100 = Viskosität der Probe bei 100 °C (212 °F)

quantity-oil-running = Viskosität bei Betriebstemperatur

quantity-oil-grade-running = Viskosität der Klasse auf dem Typenschild bei Betriebstemperatur

quantity-oil-least-share = kleinste geforderte Viskosität als Anteil der Klasse auf dem Typenschild

quantity-oil-most-share = größte geforderte Viskosität als Anteil der Klasse auf dem Typenschild

quantity-oil-wanted-least = kleinste geforderte Viskosität bei Betriebstemperatur

quantity-oil-wanted-most = größte geforderte Viskosität bei Betriebstemperatur

quantity-oil-window-verdict = Urteil über die Viskosität bei Betriebstemperatur
    .choice-1 = im Fenster
    .choice-2 = zu dünn
    .choice-3 = zu dick

quantity-oil-thin-at = Temperatur, bei der das Öl auf die kleinste geforderte Viskosität abgefallen ist

quantity-oil-band-least = kleinste Viskosität der Klasse bei 40 °C (104 °F)

quantity-oil-band-most = größte Viskosität der Klasse bei 40 °C (104 °F)

quantity-oil-sample-grade = Viskositätsklasse der Probe
    .choice-1 = ISO VG 2
    .choice-2 = ISO VG 3
    .choice-3 = ISO VG 5
    .choice-4 = ISO VG 7
    .choice-5 = ISO VG 10
    .choice-6 = ISO VG 15
    .choice-7 = ISO VG 22
    .choice-8 = ISO VG 32
    .choice-9 = ISO VG 46
    .choice-10 = ISO VG 68
    .choice-11 = ISO VG 100
    .choice-12 = ISO VG 150
    .choice-13 = ISO VG 220
    .choice-14 = ISO VG 320
    .choice-15 = ISO VG 460
    .choice-16 = ISO VG 680
    .choice-17 = ISO VG 1000
    .choice-18 = ISO VG 1500
    .choice-19 = ISO VG 2200
    .choice-20 = ISO VG 3200
    .choice-21 = keine Klasse

quantity-oil-grade-verdict = Urteil über das eingefüllte Öl
    .choice-1 = richtige Klasse
    .choice-2 = zu dünn
    .choice-3 = zu dick
    .choice-4 = keine Klasse

quantity-oil-chosen-grade = dünnste Viskositätsklasse, die genügt
    .choice-1 = ISO VG 2
    .choice-2 = ISO VG 3
    .choice-3 = ISO VG 5
    .choice-4 = ISO VG 7
    .choice-5 = ISO VG 10
    .choice-6 = ISO VG 15
    .choice-7 = ISO VG 22
    .choice-8 = ISO VG 32
    .choice-9 = ISO VG 46
    .choice-10 = ISO VG 68
    .choice-11 = ISO VG 100
    .choice-12 = ISO VG 150
    .choice-13 = ISO VG 220
    .choice-14 = ISO VG 320
    .choice-15 = ISO VG 460
    .choice-16 = ISO VG 680
    .choice-17 = ISO VG 1000
    .choice-18 = ISO VG 1500
    .choice-19 = ISO VG 2200
    .choice-20 = ISO VG 3200

quantity-oil-reference-l = Viskosität des Bezugsöls mit Index 0 bei 40 °C (104 °F)

quantity-oil-reference-h = Viskosität des Bezugsöls mit Index 100 bei 40 °C (104 °F)

quantity-oil-sample-index = Viskositätsindex der Probe

quantity-oil-free-share = vom Öl bedeckter Anteil des Rechtecks zwischen den Füßen

quantity-oil-sump-area = freie Grundfläche des Ölsumpfs

quantity-oil-below-datum = Öl unter dem Nullpunkt der Skale am Ölschauglas

quantity-oil-other-low = untere Marke für die andere Einbaulage

quantity-oil-other-high = obere Marke für die andere Einbaulage

quantity-oil-target-level = Ölstand in der Mitte zwischen den Marken

quantity-oil-fill-level = eingefüllter Ölstand als Anteil des Wegs von der unteren zur oberen Marke

quantity-oil-cold-volume = Ölvolumen, kalt

quantity-oil-density = Dichte des Öls bei 15 °C (60 °F)

quantity-oil-expansion = Ausdehnung des Öls je Grad

quantity-oil-growth = Volumenzunahme des Öls von kalt bis Betriebstemperatur

quantity-oil-level-gain = Anstieg des Ölstands von kalt bis Betriebstemperatur

quantity-oil-hot-level = Ölstand bald nach dem Anhalten, heiß

quantity-oil-level-verdict = Urteil über den Ölstand
    .choice-1 = zwischen den Marken
    .choice-2 = zu niedrig
    .choice-3 = überfüllt

quantity-oil-to-add = nachzufüllendes Öl

quantity-oil-to-drain = abzulassendes Öl

quantity-oil-breather = Zustand des Entlüfters
    .choice-1 = offen
    .choice-2 = verstopft

quantity-oil-atmosphere = absoluter Druck der Außenluft

quantity-oil-air-gauge = Überdruck hinter einem verstopften Entlüfter, nur die Luft gerechnet

quantity-oil-cover-height = Höhe der Deckelinnenseite auf der Skale des Ölschauglases

quantity-oil-air-space = Luftraum über dem kalten Öl

quantity-oil-sealed-gauge = Überdruck hinter einem verstopften Entlüfter, Luft und Öl gerechnet

quantity-oil-breather-verdict = Urteil über den Entlüfter
    .choice-1 = offen
    .choice-2 = verstopft

quantity-oil-base-temperature = Temperatur, bis zu der das Öl seine volle Lebensdauer hat

quantity-oil-base-life = Lebensdauer des Öls bis zu dieser Temperatur

quantity-oil-life-share = bei Betriebstemperatur verbleibender Anteil der Lebensdauer des Öls

quantity-oil-life = Lebensdauer des Öls bei Betriebstemperatur

quantity-oil-share-wanted = geforderter Anteil der vollen Lebensdauer des Öls

quantity-oil-hottest = höchste Öltemperatur, die den geforderten Anteil lässt

relation-oil-sample-40-fill = Viskosität der Füllung bei 40 °C
    .method = Die Mitte der Klasse auf dem Typenschild, mal dem Faktor, um den die Füllung dicker oder dünner ist.
    .source = Definition des Anteils

relation-oil-wanted-least-window = Kleinste geforderte Viskosität
    .method = Die Mitte der Klasse auf dem Typenschild, mal dem Anteil, bis zu dem der Hersteller das Öl dünner werden lässt.
    .source = Definition des Anteils

relation-oil-wanted-most-window = Größte geforderte Viskosität
    .method = Die Mitte der Klasse auf dem Typenschild, mal dem Anteil, bis zu dem der Hersteller das Öl dicker werden lässt.
    .source = Definition des Anteils

relation-oil-sample-100-index = Viskosität der Füllung bei 100 °C
    .method = Die Viskosität bei 100 °C, die den Index des Datenblatts ergibt, durch Halbieren gefunden.
    .place = Abschnitte 5 und 6, rückwärts gerechnet

relation-oil-running-two-readings = Viskosität bei Betriebstemperatur aus zwei Messwerten
    .limits = zwischen den beiden Messwerten und in ihrer Nähe, ab 2 mm²/s; die Gehäusetemperatur steht für die des Öls
    .place = Kurzform nach Walther
    .turn-straight-line = Sie haben zwischen den beiden Viskositäten eine Gerade gezogen; Öl wird anfangs steil dünner, und gerade ist nur log log der Viskosität über log der Kelvin.
    .turn-celsius-for-kelvin = Sie haben den Logarithmus von Grad Celsius genommen; zählen Sie zuerst 273,15 dazu, das Diagramm rechnet in Kelvin.
    .turn-fahrenheit-for-absolute = Sie haben den Logarithmus von Grad Fahrenheit genommen; rechnen Sie zuerst in Kelvin um (oder zählen Sie 459,67 dazu).
    .turn-one-logarithm = Sie haben die Viskosität einmal logarithmiert; das geschieht zweimal.
    .turn-ambient = Sie haben die Umgebungstemperatur benutzt; das Öl läuft so warm wie das Gehäuse.
    .turn-reading-at-40-c = Sie haben die Viskosität bei 40 °C (104 °F) angegeben; das Öl läuft heißer und ist dünner.
    .turn-reading-at-100-c = Sie haben die Viskosität bei 100 °C (212 °F) angegeben; so heiß läuft das Öl nicht.

relation-oil-grade-running-grade-and-index = Viskosität der Klasse auf dem Typenschild bei Betriebstemperatur
    .method = Im Viskositätsdiagramm: durch die Zahl der Klasse bei 40 °C (104 °F) die Gerade mit dem Index des Öls ziehen und bei Betriebstemperatur ablesen.
    .limits = Mitte der Klasse; das Öl eines einzelnen Fasses kann 10 % darüber oder darunter liegen
    .place = Mitte der Klasse, Index, Gerade
    .turn-grade-s-own-number = Sie haben die Zahl der Klasse angegeben; sie gilt bei 40 °C (104 °F), und das Öl läuft heißer.
    .turn-straight-line = Sie sind von 40 bis 100 °C (104 bis 212 °F) auf einer Geraden gegangen; Öl wird anfangs steil dünner.
    .turn-celsius-for-kelvin = Sie haben den Logarithmus von Grad Celsius genommen; zählen Sie zuerst 273,15 dazu, das Diagramm rechnet in Kelvin.
    .turn-ambient = Sie haben die Umgebungstemperatur benutzt; das Öl läuft so warm wie das Gehäuse.
    .turn-viscosity-at-100-c = Sie haben die Viskosität bei 100 °C (212 °F) angegeben; so heiß läuft das Öl nicht.
    .turn-index-0 = Sie haben das steilste Öl benutzt, das es gibt, Index 0; nehmen Sie die Gerade mit dem Index des Datenblatts.

relation-oil-window-verdict-window = Urteil über die Viskosität bei Betriebstemperatur
    .method = Die Viskosität bei Betriebstemperatur gegen beide Enden des Fensters halten; genau auf einem Ende liegt sie darin.
    .limits = das Fenster der Betriebsanleitung
    .turn-at-40-c = Sie haben die Viskosität bei 40 °C (104 °F) gegen das Fenster gehalten; es gilt für die Betriebstemperatur.
    .turn-at-100-c = Sie haben die Viskosität bei 100 °C (212 °F) gegen das Fenster gehalten; es gilt für die Betriebstemperatur.
    .turn-turned-round = Sie haben dünn und dick verwechselt; eine kleine Viskosität heißt dünnes Öl.

relation-oil-thin-at-two-readings = Temperatur, bei der das Öl gerade noch dick genug ist
    .limits = in der Nähe der beiden Messwerte; was weit außerhalb liegt, ist geraten
    .place = Kurzform nach Walther
    .turn-straight-line = Sie haben zwischen den beiden Viskositäten eine Gerade gezogen; gerade ist nur log log der Viskosität über log der Kelvin.
    .turn-one-logarithm = Sie haben die Viskosität einmal logarithmiert; das geschieht zweimal.
    .turn-kelvin = Sie haben Kelvin als Grad angegeben; ziehen Sie 273,15 ab, das ergibt Grad Celsius.
    .turn-greatest-viscosity = Sie haben die größte Viskosität benutzt; zu dünn wird das Öl bei der kleinsten.
    .turn-now-running = Sie haben die Temperatur angegeben, bei der es jetzt läuft; gefragt ist, wie heiß es werden darf.

relation-oil-band-least-iso-3448 = Kleinste Viskosität einer Klasse
    .method = Zehn Prozent unter der Mitte des Bereichs; die Mitte ist die Zahl der Klasse (2,2, 3,2, 4,6 und 6,8 bei VG 2, 3, 5 und 7).
    .limits = bei 40 °C (104 °F); die Grenze gehört zur Klasse; VG 2200 und 3200 sind aus dem Gedächtnis
    .place = Klassen, Grenzen 10 % über und unter der Mitte
    .turn-the-number-itself = Sie haben die Mitte des Bereichs angegeben; eine Klasse reicht 10 % darunter.
    .turn-5 = Sie haben 5 % abgezogen; eine Klasse reicht 10 % unter ihre Mitte.
    .turn-10-mm-s = Sie haben 10 mm²/s (10 cSt) abgezogen; es sind 10 Prozent der Mitte.
    .turn-the-greatest = Sie haben die obere Grenze des Bereichs angegeben; gefragt ist die untere.
    .turn-divided-by-1-1 = Sie haben durch 1,1 geteilt; zehn Prozent darunter ist 0,9-mal die Mitte.

relation-oil-band-most-iso-3448 = Größte Viskosität einer Klasse
    .method = Zehn Prozent über der Mitte des Bereichs; die Mitte ist die Zahl der Klasse (2,2, 3,2, 4,6 und 6,8 bei VG 2, 3, 5 und 7).
    .limits = bei 40 °C (104 °F); die Grenze gehört zur Klasse; VG 2200 und 3200 sind aus dem Gedächtnis
    .place = Klassen, Grenzen 10 % über und unter der Mitte
    .turn-the-number-itself = Sie haben die Mitte des Bereichs angegeben; eine Klasse reicht 10 % darüber.
    .turn-5 = Sie haben 5 % dazugezählt; eine Klasse reicht 10 % über ihre Mitte.
    .turn-10-mm-s = Sie haben 10 mm²/s (10 cSt) dazugezählt; es sind 10 Prozent der Mitte.
    .turn-the-least = Sie haben die untere Grenze des Bereichs angegeben; gefragt ist die obere.

relation-oil-sample-grade-iso-3448 = Viskositätsklasse einer Probe
    .method = Die Klasse, in deren Bereich, 10 % über und unter ihrer Zahl, die Viskosität bei 40 °C (104 °F) liegt; keine Klasse, wenn es keine solche gibt.
    .limits = die Bereiche stoßen nicht aneinander: ein Öl kann zu keiner Klasse gehören
    .place = Klassen, Grenzen 10 % über und unter der Mitte
    .turn-nearest = Sie haben die nächstliegende Klasse genommen; die Bereiche stoßen nicht aneinander, und was zwischen zweien liegt, gehört zu keiner.
    .turn-rounded-up = Sie haben die erste Klasse genommen, deren Zahl groß genug ist; eine Klasse reicht 10 % über und unter ihre Zahl.
    .turn-at-100-c = Sie haben mit der Viskosität bei 100 °C (212 °F) nachgesehen; die Klassen richten sich nach der Viskosität bei 40 °C (104 °F).
    .turn-at-running-temperature = Sie haben mit der Viskosität bei Betriebstemperatur nachgesehen; die Klassen richten sich nach der Viskosität bei 40 °C (104 °F).

relation-oil-grade-verdict-plate = Urteil über das eingefüllte Öl
    .method = Die Klasse der Probe mit der Klasse auf dem Typenschild vergleichen; eine Probe in keinem Bereich hat keine Klasse.
    .limits = Typenschild oder Betriebsanleitung entscheiden; ein Öl in keinem Bereich kann eine Mischung sein oder sich im Gebrauch verändert haben
    .turn-nearest-grade = Sie haben die Probe in die nächstliegende Klasse gezwungen; sie gehört zu keiner.
    .turn-running-temperature = Sie haben die Viskosität bei Betriebstemperatur gegen die Klasse auf dem Typenschild gehalten; die Klassen richten sich nach 40 °C (104 °F).
    .turn-turned-round = Sie haben dünn und dick verwechselt; die größere Zahl ist das dickere Öl.

relation-oil-chosen-grade-thinnest-that-serves = Viskositätsklasse für eine Betriebstemperatur
    .method = Im Viskositätsdiagramm die Gerade jeder Klasse mit dem Index des Öls, bei Betriebstemperatur abgelesen: die erste Klasse, die noch so dick ist wie gefordert.
    .limits = die Tabelle des Herstellers geht vor; prüfen, ob das Öl beim kältesten Start noch fließt
    .turn-at-40-c = Sie haben gewählt, als liefe das Öl bei 40 °C (104 °F); gefordert ist die Viskosität bei Betriebstemperatur, wo das Öl viel dünner ist als seine Zahl.
    .turn-one-too-thin = Sie haben die nächstdünnere Klasse genommen; bei Betriebstemperatur erreicht sie die kleinste Viskosität nicht.
    .turn-ambient = Sie haben für die Umgebungstemperatur gewählt; das Öl läuft so warm wie das Gehäuse.
    .turn-index-0 = Sie haben für das steilste Öl gewählt, das es gibt, Index 0; nehmen Sie die Gerade mit dem Index des Datenblatts.
    .turn-at-100-c = Sie haben gewählt, als liefe das Öl bei 100 °C (212 °F); so heiß läuft es nicht.

relation-oil-reference-l-table = Viskosität des Bezugsöls mit Index 0
    .method = Aus der Tabelle von ASTM D2270 zur Viskosität des Öls bei 100 °C (212 °F), oder aus den quadratischen Gleichungen, die für sie stehen.
    .limits = ab 2 mm²/s bei 100 °C (212 °F)
    .place = Abschnitte 5.1.2 und 6.1.2, Tabelle X2.1
    .turn-h-for-l = Sie haben H genommen, den Wert des Öls mit Index 100; L gehört zu Index 0 und ist größer.
    .turn-looked-up-at-40-c = Sie haben mit der Viskosität bei 40 °C (104 °F) nachgesehen; die Tabelle richtet sich nach der bei 100 °C (212 °F).

relation-oil-reference-h-table = Viskosität des Bezugsöls mit Index 100
    .method = Aus der Tabelle von ASTM D2270 zur Viskosität des Öls bei 100 °C (212 °F), oder aus den quadratischen Gleichungen, die für sie stehen.
    .limits = ab 2 mm²/s bei 100 °C (212 °F)
    .place = Abschnitte 5.1.2 und 6.1.2, Tabelle X2.1
    .turn-l-for-h = Sie haben L genommen, den Wert des Öls mit Index 0; H gehört zu Index 100 und ist kleiner.
    .turn-looked-up-at-40-c = Sie haben mit der Viskosität bei 40 °C (104 °F) nachgesehen; die Tabelle richtet sich nach der bei 100 °C (212 °F).

relation-oil-sample-index-astm-d2270 = Viskositätsindex einer Probe
    .method = U, Y: Viskosität bei 40 und 100 °C (104 und 212 °F). U mindestens H: 100 × (L − U) / (L − H), Verfahren A. U unter H: N = (log H − log U) / log Y, dann (10^N − 1) / 0,00715 + 100, Verfahren B.
    .limits = ab 2 mm²/s bei 100 °C (212 °F); als ganze Zahl angegeben
    .place = Abschnitte 5.1.3 und 6.1.3
    .turn-wrong-procedure = Sie haben das andere Verfahren benutzt; A gilt, wo das Öl bei 40 °C (104 °F) dicker ist als H, B, wo es dünner ist.
    .turn-l-and-h-swapped = Sie haben L und H vertauscht; L ist größer.
    .turn-part-not-missing = Sie haben den Teil angegeben, der bis 100 fehlt; der Index zählt von L abwärts.
    .turn-divided-by-l = Sie haben durch L allein geteilt; unter den Bruchstrich gehört L minus H.

relation-oil-sump-area-housing = Grundfläche des Ölsumpfs
    .source = Definition des Anteils

relation-oil-cold-level-as-filled = Eingefüllter Ölstand
    .source = Definition des Anteils

relation-oil-target-level-halfway = Ölstand in der Mitte zwischen den Marken
    .limits = kalt, im Stillstand, Getriebe waagerecht; die Marken dieser Einbaulage
    .turn-high-mark = Sie haben bis zur oberen Marke gefüllt; lassen Sie Platz und füllen Sie bis zur Mitte zwischen den Marken.
    .turn-other-position = Sie haben die Marken einer anderen Einbaulage benutzt; dasselbe Öl steht dort anders hoch.
    .turn-half-the-distance = Sie haben den halben Abstand der Marken angegeben; zählen Sie ihn zur unteren Marke.
    .turn-low-mark = Sie haben an der unteren Marke aufgehört; füllen Sie bis zur Mitte zwischen den Marken.

relation-oil-cold-volume-level = Ölvolumen aus dem Ölstand
    .limits = senkrechte Wände zwischen den Marken; im Stillstand abgelesen, nachdem das Öl zurückgelaufen ist
    .source = Volumen eines geraden Prismas
    .turn-below-nought-left-out = Sie haben das Öl unter dem Nullpunkt der Skale weggelassen; auch das ist im Ölsumpf.
    .turn-hot-level = Sie haben den heißen Ölstand benutzt; kaltes Öl und kalter Ölstand gehören zusammen.
    .turn-taken-off = Sie haben das Öl unter dem Nullpunkt der Skale abgezogen; zählen Sie es dazu.
    .turn-high-mark = Sie haben die obere Marke benutzt; das Volumen richtet sich nach dem abgelesenen Ölstand.

relation-oil-expansion-density = Ausdehnung eines Öls aus seiner Dichte
    .limits = mineralisches Schmieröl; die Faustregel ist 0,0007 je °C (0,0004 je °F)
    .place = Gruppe der Schmieröle
    .turn-per-f-for-per-c = Sie haben die Konstante für Grad Fahrenheit mit Grad Celsius benutzt; eine Ausdehnung je °C ist 1,8-mal so groß wie die je °F.
    .turn-per-c-for-per-f = Sie haben die Konstante für Grad Celsius mit Grad Fahrenheit benutzt; eine Ausdehnung je °F ist die kleinere.

relation-oil-growth-expansion = Volumenzunahme des Öls beim Erwärmen
    .limits = ab der Temperatur, bei der der Ölstand kalt abgelesen wurde
    .source = Definition der Ausdehnung
    .turn-f-with-per-c = Sie haben Grad Fahrenheit mit einer Ausdehnung je °C malgenommen oder die Erwärmung zweimal umgerechnet; bleiben Sie bei beidem in einer Skale.
    .turn-c-with-per-f = Sie haben Grad Celsius mit einer Ausdehnung je °F malgenommen; bleiben Sie bei beidem in einer Skale.
    .turn-temperature-for-rise = Sie haben die Gehäusetemperatur benutzt; das Öl dehnt sich mit der Erwärmung seit dem Einfüllen aus.
    .turn-temperature-for-rise-f = Sie haben die Gehäusetemperatur benutzt; das Öl dehnt sich mit der Erwärmung seit dem Einfüllen aus.
    .turn-whole-volume = Sie haben das Volumen im heißen Zustand angegeben; die Zunahme ist, was dazukam.
    .turn-scale-only = Sie haben nur das Öl über dem Nullpunkt der Skale wachsen lassen; alles Öl dehnt sich aus.

relation-oil-level-gain-area = Anstieg des Ölstands beim Erwärmen
    .limits = auch das Gehäuse dehnt sich aus, etwa ein Zwanzigstel so viel; das ist weggelassen
    .source = Volumen eines geraden Prismas
    .turn-whole-volume = Sie haben alles Öl auf die Fläche verteilt; nur die Zunahme hebt den Ölstand.
    .turn-two-sides = Sie haben die Zunahme halbiert; sie hebt den Ölstand im Ölsumpf ganz.

relation-oil-hot-level-risen = Ölstand im heißen Zustand
    .limits = im Stillstand, nachdem das Öl zurückgelaufen ist
    .source = Definition des Anstiegs
    .turn-rise-alone = Sie haben den Anstieg des Ölstands angegeben; zählen Sie den kalten Ölstand dazu.
    .turn-taken-off = Sie haben den Anstieg abgezogen; warmes Öl steht höher.
    .turn-from-the-high-mark = Sie haben ab der oberen Marke gezählt; zählen Sie ab dem kalt abgelesenen Ölstand.
    .turn-from-halfway = Sie haben ab der Mitte zwischen den Marken gezählt; zählen Sie ab dem kalt abgelesenen Ölstand.

relation-oil-cold-level-from-hot = Kalter Ölstand hinter einer heißen Ablesung
    .source = Volumen eines geraden Prismas
    .turn-hot-level-as-read = Sie haben die heiße Ablesung für die kalte genommen; der Ölstand sinkt, wenn das Öl abkühlt.
    .turn-risen-once-more = Sie haben den Ölstand steigen lassen; er sinkt, wenn das Öl abkühlt.
    .turn-f-with-per-c = Sie haben Grad Fahrenheit mit einer Ausdehnung je °C malgenommen; bleiben Sie bei beidem in einer Skale.
    .turn-temperature-for-rise = Sie haben die Gehäusetemperatur benutzt; das Öl zieht sich um die Erwärmung zusammen, die es verliert.
    .turn-temperature-for-rise-f = Sie haben die Gehäusetemperatur benutzt; das Öl zieht sich um die Erwärmung zusammen, die es verliert.

relation-oil-level-verdict-marks = Urteil über den Ölstand
    .method = Den kalten Ölstand mit beiden Marken dieser Einbaulage vergleichen; genau auf einer Marke zählt als dazwischen.
    .limits = kalt, im Stillstand, Getriebe waagerecht, die Marken dieser Einbaulage
    .turn-other-position = Sie haben die Marken einer anderen Einbaulage benutzt; dasselbe Öl steht dort anders hoch.
    .turn-hot-level = Sie haben den heißen Ölstand gegen kalte Marken gehalten; warmes Öl steht höher als nach dem Abkühlen.
    .turn-turned-round = Sie haben die Marken verwechselt; unter der unteren Marke ist zu niedrig.

relation-oil-to-add-area = Nachzufüllendes Öl
    .limits = Ölstand und Ziel kalt; dasselbe Öl wie im Ölsumpf; warten und wieder ablesen
    .source = Volumen eines geraden Prismas
    .turn-topped-up-hot = Sie haben nach dem heißen Ölstand nachgefüllt; ist das Öl abgekühlt, steht es wieder zu niedrig.
    .turn-to-the-high-mark = Sie haben bis zur oberen Marke gefüllt; füllen Sie bis zur Mitte zwischen den Marken.
    .turn-to-the-low-mark = Sie haben nur bis zur unteren Marke gefüllt; füllen Sie bis zur Mitte zwischen den Marken.
    .turn-other-position = Sie haben bis zu den Marken einer anderen Einbaulage gefüllt.
    .turn-whole-height = Sie haben alles Öl bis zu diesem Stand angegeben; nachgefüllt wird nur, was fehlt.

relation-oil-to-drain-area = Abzulassendes Öl
    .limits = Ölstand und Ziel kalt; in ein sauberes Gefäß ablassen, freigeschaltet und gegen Wiedereinschalten gesichert
    .source = Volumen eines geraden Prismas
    .turn-drained-hot = Sie haben nach dem heißen Ölstand abgelassen; ist das Öl abgekühlt, steht es zu niedrig.
    .turn-to-the-high-mark = Sie haben nur bis zur oberen Marke abgelassen; lassen Sie bis zur Mitte zwischen den Marken ab.
    .turn-other-position = Sie haben bis zu den Marken einer anderen Einbaulage abgelassen.
    .turn-whole-height = Sie haben alles Öl bis zum jetzigen Stand angegeben; abgelassen wird nur, was zu viel ist.

relation-oil-air-gauge-air-alone = Überdruck hinter einem verstopften Entlüfter, nur die Luft
    .limits = Luft kalt eingeschlossen und bei gleichem Volumen erwärmt; die Ausdehnung des Öls kommt noch dazu
    .source = Gesetz des idealen Gases, absolute Drücke und Temperaturen
    .turn-celsius = Sie haben Grad Celsius geteilt; ein Gas richtet sich nach der absoluten Temperatur, zählen Sie also zuerst 273,15 dazu.
    .turn-fahrenheit = Sie haben Grad Fahrenheit geteilt; ein Gas richtet sich nach der absoluten Temperatur, zählen Sie also zuerst 459,67 dazu.
    .turn-absolute-pressure = Sie haben den absoluten Druck angegeben; ein Manometer zeigt, was über dem Druck der Außenluft liegt, ziehen Sie diesen also ab.
    .turn-gauge-pressure-at-the-start = Sie sind von null am Manometer ausgegangen; das Gesetz verlangt absolute Drücke, und die Luft wurde beim Druck der Außenluft eingeschlossen.
    .turn-over-the-hot-temperature = Sie haben durch die heiße Temperatur geteilt; eingeschlossen wurde die Luft bei der kalten.
    .turn-share-of-the-rise = Sie haben 273 zu Grad Fahrenheit gezählt oder die Skalen vermischt; bleiben Sie bei Erwärmung und absoluter Temperatur in einer Skale.

relation-oil-air-space-cover = Luftraum über dem kalten Öl
    .limits = senkrechte Wände, die von den Zahnrädern eingenommene Fläche ist nicht mitgerechnet
    .source = Volumen eines geraden Prismas
    .turn-whole-height = Sie haben die ganze Höhe für Luft genommen; bis zu seinem Stand füllt sie das Öl.
    .turn-oil-for-air = Sie haben das Öl über dem Nullpunkt der Skale angegeben; die Luft ist über dem Ölstand.
    .turn-hot-level = Sie haben den heißen Ölstand benutzt; eingeschlossen wurde die Luft über kaltem Öl.

relation-oil-sealed-gauge-air-and-oil = Überdruck hinter einem verstopften Entlüfter, Luft und Öl
    .limits = kalt eingeschlossen; eine Dichtung, die nachgibt, hält ihn niedriger
    .source = Gesetz des idealen Gases, absolute Drücke und Temperaturen
    .turn-air-alone = Sie haben dem Öl sein Volumen gelassen; auch das Öl dehnt sich aus und drückt die Luft zusammen.
    .turn-air-stretched = Sie haben den Luftraum um die Zunahme des Öls größer werden lassen; um so viel wird er kleiner.
    .turn-oil-for-air = Sie haben das Ölvolumen eingesetzt, wo der Luftraum hingehört.
    .turn-celsius = Sie haben Grad Celsius geteilt; ein Gas richtet sich nach der absoluten Temperatur, zählen Sie also zuerst 273,15 dazu.
    .turn-fahrenheit = Sie haben Grad Fahrenheit geteilt; ein Gas richtet sich nach der absoluten Temperatur, zählen Sie also zuerst 459,67 dazu.
    .turn-absolute-pressure = Sie haben den absoluten Druck angegeben; ein Manometer zeigt, was über dem Druck der Außenluft liegt.

relation-oil-gauge-breather = Überdruck im Gehäuse
    .method = Null, solange der Entlüfter offen ist, der Überdruck des geschlossenen Gehäuses, wenn er verstopft ist.
    .source = durch einen offenen Entlüfter gleichen sich die Drücke innen und außen aus

relation-oil-breather-verdict-gauge = Urteil über den Entlüfter
    .method = Das Manometer mit dem größten Überdruck vergleichen, den ein offener Entlüfter lässt; genau darauf zählt als offen.
    .limits = bei Betriebstemperatur; ein Manometer, das am kalten, freigeschalteten und gegen Wiedereinschalten gesicherten Getriebe angebracht wurde
    .turn-absolute-pressure = Sie haben den absoluten Druck beurteilt; das Manometer lässt den der Außenluft schon weg.
    .turn-as-foretold = Sie haben den Druck beurteilt, den ein verstopfter Entlüfter ergäbe; das Manometer sagt, was da ist.
    .turn-below-the-sealed-pressure = Sie haben alles bis zum vollen Überdruck des geschlossenen Gehäuses durchgehen lassen; ein offener Entlüfter lässt kaum Überdruck.

relation-oil-life-share-ten-degrees = Bei Betriebstemperatur verbleibender Anteil der Lebensdauer des Öls
    .limits = halbiert sich je 10 °C (18 °F) über der Bezugstemperatur; eine Faustregel, für heutige Öle umstritten
    .place = Zehn-Grad-Regel
    .turn-in-proportion = Sie haben je 10 °C (18 °F) gleichmäßig die halbe Lebensdauer abgezogen; jeder Schritt halbiert, was der vorige übrig ließ.
    .turn-halved-once = Sie haben die Lebensdauer einmal halbiert; sie halbiert sich je 10 °C (18 °F) über der Bezugstemperatur.
    .turn-doubled = Sie haben verdoppelt statt halbiert; heißeres Öl hält weniger lange.
    .turn-10-f = Sie haben je 10 °F halbiert; die Regel sagt 10 °C, das sind 18 °F.
    .turn-18-c = Sie haben je 18 °C halbiert; die Regel sagt 10 °C, das sind 18 °F.
    .turn-rise-over-ambient = Sie haben ab der Umgebung gezählt; zählen Sie ab der Temperatur, bis zu der das Öl seine volle Lebensdauer hat.
    .turn-what-is-lost = Sie haben den verlorenen Anteil angegeben; gefragt ist der verbleibende.

relation-oil-life-share = Lebensdauer des Öls bei Betriebstemperatur
    .limits = Wasser, Schmutz und Luft verkürzen sie weiter; eine Ölprobe sagt mehr als die Regel
    .place = Zehn-Grad-Regel
    .turn-divided = Sie haben durch den Anteil geteilt; heißeres Öl hält weniger lange.
    .turn-what-is-lost = Sie haben die verlorenen Stunden angegeben; gefragt sind die verbleibenden.
    .turn-full-life = Sie haben die volle Lebensdauer angegeben; über der Bezugstemperatur ist sie kürzer.
    .turn-in-proportion = Sie haben je 10 °C (18 °F) gleichmäßig die halbe Lebensdauer abgezogen; jeder Schritt halbiert, was der vorige übrig ließ.
    .turn-10-f = Sie haben je 10 °F halbiert; die Regel sagt 10 °C, das sind 18 °F.

relation-oil-hottest-ten-degrees = Höchste Öltemperatur für einen Anteil der Lebensdauer
    .limits = eine Faustregel; die eigene Grenze des Gehäuses geht vor
    .place = Zehn-Grad-Regel
    .turn-in-proportion = Sie haben die Lebensdauer geradlinig gerechnet; sie halbiert sich je 10 °C (18 °F).
    .turn-downwards = Sie sind unter die Bezugstemperatur gegangen; eine kürzere Lebensdauer lässt ein heißeres Öl zu.
    .turn-10-f = Sie haben je 10 °F halbiert; die Regel sagt 10 °C, das sind 18 °F.
    .turn-ln-2-left-out = Sie haben ln 2 unter dem Bruchstrich weggelassen; die Lebensdauer halbiert sich mit jedem Schritt und fällt nicht um den Faktor e.
    .turn-common-logarithm = Sie haben den Logarithmus zur Basis 10 benutzt und nicht durch den von 2 geteilt.
