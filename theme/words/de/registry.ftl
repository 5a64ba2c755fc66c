## Größen, Beziehungen, ihre Quellen und Fehler

topic-mount = Aufstellung und Kippfuß

topic-oil = Öl, Ölstand und Entlüfter

quantity-oil-low-mark = untere Marke für die jetzige Einbaulage

quantity-oil-high-mark = obere Marke für die jetzige Einbaulage

quantity-oil-cold-level = Ölstand, kalt

quantity-oil-gauge = Überdruck im Gehäuse bei Betriebstemperatur

quantity-oil-gauge-limit = größter Überdruck, den ein offener Entlüfter lässt

topic-drive = Der Antriebsstrang

quantity-drive-motor-power = Leistung auf dem Typenschild des Motors

quantity-drive-power = vom Motor abgegebene Leistung

quantity-drive-stage-efficiency = Wirkungsgrad einer Getriebestufe

quantity-drive-stages = Zahl der Getriebestufen

quantity-drive-efficiency = Wirkungsgrad des Getriebes

quantity-drive-output-speed = Drehzahl der Abtriebswelle

topic-chain = Kette

quantity-chain-centres-planned = Achsabstand auf der Zeichnung

quantity-chain-movement = ganzer Weg der Trummitte, niedergedrückt und dann hochgezogen

quantity-chain-movement-low = kleinster zulässiger Weg, als Anteil der Trumlänge

quantity-chain-movement-high = größter zulässiger Weg, als Anteil der Trumlänge

topic-load = Querkraft und Lager

quantity-load-reaction-near = Lagerkraft des kettenseitigen Lagers

quantity-load-shaft-diameter = Durchmesser der Welle

topic-heat = Betriebstemperatur

quantity-heat-ambient = Umgebungstemperatur

quantity-heat-housing = Gehäusetemperatur in der Beharrung

quantity-heat-rise = Übertemperatur des Gehäuses

quantity-heat-rise-limit = größte zulässige Übertemperatur

quantity-heat-sump-limit = höchste zulässige Gehäusetemperatur an jedem Tag

quantity-heat-allowed = höchste zulässige Temperatur bei dieser Umgebung

quantity-heat-allowed-rise = größte zulässige Übertemperatur bei dieser Umgebung

quantity-heat-verdict = Urteil über die Beharrungstemperatur
    .choice-1 = zulässig
    .choice-2 = nicht bestanden, Ursache suchen
    .choice-3 = anhalten und Ursache suchen

quantity-heat-gear-loss = Wärme aus den Verzahnungen

quantity-heat-friction = Reibwert des kettenseitigen Lagers

quantity-heat-bearing-loss = Wärme aus dem kettenseitigen Lager

quantity-heat-loss = Wärme aus dem ganzen Getriebe

quantity-heat-design-rise = Übertemperatur in der Beharrung bei voller Motorleistung

quantity-heat-conductance = Wärmeabgabe je Grad Übertemperatur

quantity-heat-settled-rise = Übertemperatur, bei der das Getriebe beharrt

quantity-heat-settled = Temperatur, bei der das Getriebe beharrt

quantity-heat-efficiency-seen = Wirkungsgrad, der die Übertemperatur erklärt

quantity-heat-allowed-power = größte Leistung, ohne zu heiß zu werden

quantity-heat-other-ambient = Umgebungstemperatur im anderen Fall

quantity-heat-other-share = Last im anderen Fall als Anteil der jetzigen

quantity-heat-fixed-share = lastunabhängiger Anteil der Wärme

quantity-heat-expected = im anderen Fall zu erwartende Gehäusetemperatur

quantity-heat-time-constant = Zeitkonstante der Erwärmung

quantity-heat-peak-height = Höhe der Einlaufspitze

quantity-heat-peak-time = Zeitpunkt der Einlaufspitze

quantity-heat-asked-time = Zeit seit dem Kaltstart

quantity-heat-warm = Temperatur eines eingelaufenen Getriebes nach dieser Zeit

quantity-heat-peak-reading = höchste Ablesung der Erwärmung

quantity-heat-peak-verdict = Urteil über die höchste Ablesung
    .choice-1 = Einlaufspitze, kein Fehler
    .choice-2 = keine Spitze, gewöhnliche Erwärmung
    .choice-3 = Beharrung über dem Zulässigen, ein Fehler

quantity-heat-first-time = Zeit der Ablesung 1 nach dem Start

quantity-heat-interval = Abstand der Ablesungen

quantity-heat-time-2 = Zeit der Ablesung 2 nach dem Start

quantity-heat-time-3 = Zeit der Ablesung 3 nach dem Start

quantity-heat-reading-1 = Temperaturablesung 1

quantity-heat-reading-2 = Temperaturablesung 2

quantity-heat-reading-3 = Temperaturablesung 3

quantity-heat-settled-foretold = vorhergesagte Beharrungstemperatur

quantity-heat-rise-foretold = vorhergesagte Übertemperatur in der Beharrung

quantity-heat-time-constant-foretold = Zeitkonstante aus den Ablesungen

quantity-heat-settling = was die drei Ablesungen sagen
    .choice-1 = in Beharrung
    .choice-2 = noch steigend, aber es wird beharren
    .choice-3 = nach einer Spitze rückläufig
    .choice-4 = noch keine Beharrung abzusehen

quantity-heat-margin-wanted = Abstand von der Beharrungstemperatur, der als Beharrung gilt

quantity-heat-time-to-settle = Zeit von Ablesung 3 bis zur Beharrung

quantity-heat-warm-up-time = Zeit vom Kaltstart bis zur Beharrung

quantity-heat-emissivity-set = am Gerät eingestellter Emissionsgrad

quantity-heat-emissivity = Emissionsgrad der Oberfläche

quantity-heat-infrared = Infrarotablesung am Gehäuse

quantity-heat-infrared-true = Gehäusetemperatur hinter der Infrarotablesung

quantity-heat-emissivity-found = mit dem Kontaktthermometer ermittelter Emissionsgrad

topic-align = Ausrichten

topic-fasten = Schrauben, Passfedern und Spannbuchsen

topic-start = Anfahren

topic-vibrate = Schwingung

topic-noise = Geräusch

topic-follow = Nachprüfung und Abnahme

relation-drive-efficiency-stages = Wirkungsgrad des Getriebes aus seinen Stufen
    .limits = gleiche Stufen; Planschen des Öls weggelassen
    .source = Definition des Wirkungsgrads
    .turn-one-stage = Sie haben den Wirkungsgrad einer Stufe für das ganze Getriebe genommen; jede Stufe hat ihren Verlust, erheben Sie ihn zur Potenz der Stufenzahl.
    .turn-multiplied = Sie haben den Wirkungsgrad der Stufe mit der Stufenzahl malgenommen; nehmen Sie ihn mit sich selbst mal, einmal je Stufe.
    .turn-divided = Sie haben den Wirkungsgrad der Stufe durch die Stufenzahl geteilt; nehmen Sie ihn mit sich selbst mal, einmal je Stufe.
    .turn-losses = Sie haben den Verlustanteil angegeben; der Wirkungsgrad ist der Anteil, der durchkommt.
    .turn-root = Sie haben eine Wurzel aus dem Wirkungsgrad der Stufe gezogen, so kam das Getriebe besser heraus als seine Stufen; erheben Sie ihn zur Potenz der Stufenzahl.

relation-drive-output-power-efficiency = Leistung, die aus dem Getriebe kommt
    .source = Definition des Wirkungsgrads
    .turn-divided = Sie haben durch den Wirkungsgrad geteilt; aus dem Getriebe kommt weniger Leistung, als hineingeht.
    .turn-no-loss = Sie haben den Wirkungsgrad weggelassen; das Getriebe macht einen Teil der Leistung zu Wärme.
    .turn-lost-part = Sie haben die verlorene Leistung angegeben; heraus kommt die Leistung mal dem Wirkungsgrad.
    .turn-plate-power = Sie haben die Leistung auf dem Typenschild genommen; hier zählt, was der Motor abgibt, am Leistungsmesser abgelesen.
    .turn-one-stage = Sie haben nur den Verlust einer Stufe abgezogen; jede Stufe hat ihren eigenen.

relation-drive-efficiency-powers = Wirkungsgrad des Getriebes aus zugeführter und abgegebener Leistung
    .source = Definition des Wirkungsgrads
    .turn-inverted = Sie haben die zugeführte durch die abgegebene Leistung geteilt; der Wirkungsgrad ist abgegeben durch zugeführt und nie über 1.
    .turn-plate-power = Sie haben durch die Leistung auf dem Typenschild geteilt; das Getriebe nimmt auf, was der Motor wirklich abgibt.
    .turn-lost-part = Sie haben den Verlustanteil angegeben; der Wirkungsgrad ist der Anteil, der durchkommt.

relation-heat-rise-over-ambient = Übertemperatur des Gehäuses
    .limits = beide zur selben Zeit abgelesen, die Umgebung im Schatten neben dem Getriebe
    .source = Definition der Temperaturdifferenz
    .turn-celsius-reading = Sie haben die Gehäusetemperatur selbst angegeben; eine Übertemperatur zählt ab der Umgebung, ziehen Sie diese also ab.
    .turn-fahrenheit-reading = Sie haben die Gehäusetemperatur selbst angegeben; eine Übertemperatur zählt ab der Umgebung, ziehen Sie diese also ab.
    .turn-32-added = Sie haben 32 zu einer Differenz gezählt; die 32 gehört nur zu Ablesungen und fällt aus einer Differenz heraus.
    .turn-32-taken-off = Sie haben 32 von einer Differenz abgezogen, als wäre sie eine Ablesung; eine Differenz von 1,8 °F ist eine von 1 °C, und das ist alles.
    .turn-fahrenheit-read-as-celsius = Sie haben mit 1,8 malgenommen statt geteilt; eine Übertemperatur ist in °C eine kleinere Zahl als in °F.
    .turn-celsius-read-as-fahrenheit = Sie haben durch 1,8 geteilt statt malgenommen; eine Übertemperatur ist in °F eine größere Zahl als in °C.
    .turn-stopped-too-early = Sie haben die letzte Ablesung der Erwärmung benutzt; die Übertemperatur zählt erst, wenn die Temperatur beharrt.
    .turn-turned-round = Sie haben das Gehäuse von der Umgebung abgezogen; die Übertemperatur ist Gehäuse minus Umgebung.
    .turn-added = Sie haben die beiden Temperaturen zusammengezählt; die Übertemperatur ist ihre Differenz.
    .turn-added-in-f = Sie haben die beiden Temperaturen zusammengezählt; die Übertemperatur ist ihre Differenz.

relation-heat-allowed-lower-of-two = Höchste zulässige Temperatur bei dieser Umgebung
    .limits = das Niedrigere gilt; üblich sind 93 °C (200 °F) auf Dauer und 56 °C (100 °F) über der Umgebung
    .turn-higher-of-two = Sie haben die höhere der beiden Grenzen genommen; beide müssen halten, also gilt die niedrigere.
    .turn-rise-as-reading-c = Sie haben die Grenze der Übertemperatur für eine Temperatur genommen; sie zählt ab der Umgebung, zählen Sie diese also dazu.
    .turn-rise-as-reading-f = Sie haben die Grenze der Übertemperatur für eine Temperatur genommen; sie zählt ab der Umgebung, zählen Sie diese also dazu.
    .turn-32-taken-off = Sie haben 32 von der Grenze der Übertemperatur abgezogen, als wäre sie eine Ablesung; eine Differenz von 1,8 °F ist eine von 1 °C, und das ist alles.
    .turn-ambient-taken-off = Sie haben die Grenze der Übertemperatur von der Umgebung abgezogen; zählen Sie sie dazu.

relation-heat-allowed-rise-from-allowed-temperature = Größte zulässige Übertemperatur bei dieser Umgebung
    .source = Definition der Temperaturdifferenz
    .turn-celsius-reading = Sie haben die zulässige Temperatur selbst angegeben; ziehen Sie die Umgebung ab, das ergibt die Übertemperatur.
    .turn-fahrenheit-reading = Sie haben die zulässige Temperatur selbst angegeben; ziehen Sie die Umgebung ab, das ergibt die Übertemperatur.
    .turn-rise-limit-on-a-hot-day = Sie haben die Grenze der Übertemperatur genommen, wie sie dasteht; an einem heißen Tag lässt die Ölsumpfgrenze weniger übrig.
    .turn-32-taken-off = Sie haben 32 von einer Differenz abgezogen, als wäre sie eine Ablesung.
    .turn-32-added = Sie haben 32 zu einer Differenz gezählt; die 32 gehört nur zu Ablesungen.

relation-heat-verdict-rise-and-sump-limit = Urteil über die Beharrungstemperatur
    .method = Über der Ölsumpfgrenze: anhalten und Ursache suchen. Sonst, über der Grenze der Übertemperatur: nicht bestanden, Ursache suchen. Sonst zulässig. Ein Wert auf der Grenze besteht.
    .limits = Beharrungstemperatur, keine aus der Erwärmung; übliche Grenzen sind 56 °C (100 °F) über der Umgebung und 93 °C (200 °F) auf Dauer
    .turn-celsius-reading = Sie haben die Gehäusetemperatur selbst gegen die Grenze der Übertemperatur gehalten; nur die Übertemperatur darf man dagegenhalten.
    .turn-fahrenheit-reading = Sie haben die Gehäusetemperatur selbst gegen die Grenze der Übertemperatur gehalten; nur die Übertemperatur darf man dagegenhalten.
    .turn-sump-limit-only = Sie haben nur auf die Temperatur gesehen; die Übertemperatur hat eine eigene Grenze.
    .turn-rise-limit-only = Sie haben nur auf die Übertemperatur gesehen; über der Ölsumpfgrenze wird angehalten, gleich bei welcher Umgebung.
    .turn-limit-as-a-reading = Sie haben die Grenze der Übertemperatur mit der 32 der Fahrenheitskale umgerechnet; 100 °F Übertemperatur sind 56 °C, nicht 38 °C.
    .turn-stopped-for-the-rise = Sie haben allein wegen der Übertemperatur angehalten; unter der Ölsumpfgrenze ist sie nicht bestanden, und beobachtet wird nur, solange man ohne Verzug die Ursache sucht.
    .turn-stopped-too-early = Sie haben die letzte Ablesung der Erwärmung beurteilt; das Urteil gilt der Beharrungstemperatur.
    .turn-peak-judged = Sie haben die höchste Ablesung der Erwärmung beurteilt; eine Einlaufspitze geht zurück, und das Urteil gilt der Beharrungstemperatur.
    .turn-hand-test = Sie haben es zu heiß genannt, weil keine Hand daran bleibt; das ist bei etwa 60 °C (140 °F) so, weit innerhalb der Grenzen.

relation-heat-peak-verdict-where-it-settles = Urteil über die höchste Ablesung der Erwärmung
    .method = Beharrung über der zulässigen Temperatur: ein Fehler. Sonst, wenn die höchste Ablesung mehr als 2 °C (3,6 °F) über der Beharrung lag: eine Einlaufspitze, kein Fehler. Sonst eine gewöhnliche Erwärmung.
    .limits = eine kurze frühe Spitze allein ist kein Fehler; eine, die nicht zurückgeht, schon
    .turn-peak-judged = Sie haben das Getriebe nach seiner frühen Spitze beurteilt; ein neues, das zurückgeht und innerhalb der Grenze beharrt, hat keinen Fehler.
    .turn-any-peak-a-fault = Sie haben die Einlaufspitze einen Fehler genannt; Dichtungen und Zähne laufen sich in den ersten Stunden ein, und es zählt, wo es beharrt.
    .turn-any-peak-excused = Sie haben es durchgehen lassen, weil es von einer Spitze zurückging; wo es beharrt, liegt noch über der Grenze.
    .turn-hot-but-steady = Sie haben nur gefragt, ob es eine Spitze gab; halten Sie zuerst die Beharrungstemperatur gegen die Grenze.

relation-heat-gear-loss-lost-share = Wärme aus den Verzahnungen
    .limits = Leistung, die in das Getriebe hineingeht; Wirkungsgrad aller Stufen zusammen
    .source = Erhaltung der Energie
    .turn-efficiency-itself = Sie haben mit dem Wirkungsgrad malgenommen; das ergibt die abgegebene Leistung, und die Wärme ist der Rest, 1 − η.
    .turn-output-power = Sie haben den Verlustanteil von der Abtriebsleistung genommen; er bezieht sich auf die zugeführte Leistung.
    .turn-divided-by-efficiency = Sie haben die Leistung als abgegebene genommen und auf die zugeführte zurückgerechnet; hier ist sie die zugeführte.
    .turn-motor-plate = Sie haben die Leistung vom Typenschild des Motors benutzt; die Wärme kommt aus der Leistung, die der Antrieb wirklich aufnimmt.
    .turn-all-of-it = Sie haben die ganze Leistung für Wärme genommen; nur der Verlustanteil, 1 − η, wird zu Wärme.

relation-heat-bearing-loss-friction = Wärme aus dem kettenseitigen Lager
    .limits = Wälzlager mit gewöhnlichem Fett oder Öl; der Wellendurchmesser steht für die Bohrung
    .place = Beispiel 18-1, S. 507
    .turn-diameter-for-radius = Sie haben den Durchmesser statt des Radius benutzt; die Reibung wirkt am halben Durchmesser.
    .turn-quarter-diameter = Sie haben den Durchmesser zweimal halbiert; die Reibung wirkt am halben Durchmesser.
    .turn-r-min-as-rad-s = Sie haben r/min benutzt, wo rad/s hingehören; teilen Sie r/min durch 9,549.
    .turn-2-left-out = Sie haben Umdrehungen je Sekunde ohne die 2π benutzt; die Gleitgeschwindigkeit ist Radius mal 2π mal Umdrehungen je Sekunde.

relation-heat-loss-sum = Wärme aus dem ganzen Getriebe
    .source = Erhaltung der Energie
    .turn-bearing-only = Sie haben die Verzahnungen weggelassen; sie erzeugen den größten Teil der Wärme.
    .turn-input-power = Sie haben die ganze zugeführte Leistung für Wärme genommen; das meiste geht über die Welle hinaus.

relation-heat-loss-from-the-rise = Wärmeabgabe bei beharrender Übertemperatur
    .limits = sobald die Temperatur beharrt
    .source = Newtonsches Abkühlungsgesetz im Beharrungszustand
    .turn-celsius-reading = Sie haben die Gehäusetemperatur benutzt; die Wärme fließt nach der Übertemperatur.
    .turn-fahrenheit-reading = Sie haben die Gehäusetemperatur benutzt; die Wärme fließt nach der Übertemperatur.
    .turn-32-added = Sie haben 32 zu einer Differenz gezählt; die 32 gehört nur zu Ablesungen.
    .turn-32-taken-off = Sie haben 32 von einer Differenz abgezogen, als wäre sie eine Ablesung.

relation-heat-conductance-full-power = Wärmeabgabe je Grad, aus den Werten bei voller Leistung
    .source = Newtonsches Abkühlungsgesetz im Beharrungszustand
    .turn-efficiency-itself = Sie haben den Wirkungsgrad benutzt; die Wärme ist der Verlustanteil, 1 − η.
    .turn-all-of-it = Sie haben die ganze Leistung durch die Übertemperatur geteilt; nur der Verlustanteil wird zu Wärme.

relation-heat-conductance-measured = Wärmeabgabe je Grad, aus einer beharrenden Übertemperatur
    .limits = sobald die Temperatur beharrt; Schmutz am Gehäuse, eine Abdeckung oder ein fehlender Lüfter verringern sie
    .source = Newtonsches Abkühlungsgesetz im Beharrungszustand
    .turn-celsius-reading = Sie haben durch die Gehäusetemperatur geteilt; die Wärme fließt nach der Übertemperatur.
    .turn-fahrenheit-reading = Sie haben durch die Gehäusetemperatur geteilt; die Wärme fließt nach der Übertemperatur.
    .turn-input-power = Sie haben die zugeführte Leistung durch die Übertemperatur geteilt; durch das Gehäuse fließt nur die Wärme.
    .turn-32-added = Sie haben 32 zu einer Differenz gezählt; die 32 gehört nur zu Ablesungen.
    .turn-32-taken-off = Sie haben 32 von einer Differenz abgezogen, als wäre sie eine Ablesung.

relation-heat-settled-rise-heat-balance = Übertemperatur, bei der das Getriebe abgibt, was es erzeugt
    .limits = gleichmäßige Last, sauberes Gehäuse, freie Luft
    .source = Newtonsches Abkühlungsgesetz im Beharrungszustand
    .turn-input-power = Sie haben die zugeführte Leistung geteilt; nur der Verlustanteil erwärmt das Gehäuse.
    .turn-output-power = Sie haben die abgegebene Leistung geteilt; die Wärme ist, was nicht herauskommt.
    .turn-32-added = Sie haben 32 zu einer Differenz gezählt; die 32 gehört nur zu Ablesungen.
    .turn-32-taken-off = Sie haben 32 von einer Differenz abgezogen, als wäre sie eine Ablesung.
    .turn-ambient-added = Sie haben die Umgebung dazugezählt; das ergibt die Temperatur, gefragt ist die Übertemperatur.
    .turn-ambient-added-in-f = Sie haben die Umgebung dazugezählt; das ergibt die Temperatur, gefragt ist die Übertemperatur.

relation-heat-settled-ambient-and-rise = Temperatur, bei der das Getriebe beharrt
    .source = Definition der Temperaturdifferenz
    .turn-ambient-left-out = Sie haben die Übertemperatur als Temperatur angegeben; zählen Sie die Umgebung dazu.
    .turn-ambient-left-out-f = Sie haben die Übertemperatur als Temperatur angegeben; zählen Sie die Umgebung dazu.
    .turn-32-added = Sie haben auch noch 32 dazugezählt; der Nullpunkt der Skale steckt schon in der Umgebungstemperatur.
    .turn-taken-off = Sie haben die Übertemperatur von der Umgebung abgezogen; ein Getriebe, das Wärme erzeugt, ist wärmer als der Raum.

relation-heat-housing-settled = Die Beharrungstemperatur zeigt sich am Gehäuse
    .source = Definition der Beharrungstemperatur

relation-heat-efficiency-seen-from-the-rise = Wirkungsgrad, der die Übertemperatur erklärt
    .limits = beharrende Übertemperatur; jeder Verlust des Getriebes steckt darin, auch Lager und Dichtungen
    .source = Erhaltung der Energie
    .turn-lost-share = Sie haben den Verlustanteil angegeben; der Wirkungsgrad ist eins weniger diesen Anteil.
    .turn-celsius-reading = Sie haben die Gehäusetemperatur benutzt; die Wärme fließt nach der Übertemperatur.
    .turn-fahrenheit-reading = Sie haben die Gehäusetemperatur benutzt; die Wärme fließt nach der Übertemperatur.

relation-heat-allowed-power-thermal-limit = Größte Leistung, ohne zu heiß zu werden
    .limits = gleichmäßige Last; an einem heißen Tag ist die zulässige Übertemperatur kleiner und mit ihr die Grenze
    .source = Erhaltung der Energie
    .turn-efficiency-itself = Sie haben durch den Wirkungsgrad geteilt; die Wärme ist der Verlustanteil, 1 − η, der Leistung.
    .turn-loss-only = Sie haben bei der Wärmeabgabe des Gehäuses aufgehört; teilen Sie durch den Verlustanteil, 1 − η, das ergibt die Leistung.
    .turn-output-power = Sie haben bis zur Abtriebsleistung weitergerechnet; gefragt ist die Grenze der zugeführten Leistung.
    .turn-ambient-left-out = Sie haben die zulässige Temperatur selbst benutzt; ziehen Sie die Umgebung ab, denn die Wärme fließt nach der Übertemperatur.
    .turn-ambient-left-out-f = Sie haben die zulässige Temperatur selbst benutzt; ziehen Sie die Umgebung ab, denn die Wärme fließt nach der Übertemperatur.
    .turn-present-rise = Sie haben die jetzige Übertemperatur benutzt; die Grenze richtet sich nach der zulässigen.
    .turn-32-taken-off = Sie haben 32 von einer Differenz abgezogen, als wäre sie eine Ablesung.

relation-heat-expected-other-load-and-ambient = Gehäusetemperatur bei anderer Last und Umgebung
    .limits = gleiche Drehzahl, gleiches Öl, gleiche Luft am Gehäuse
    .turn-old-ambient = Sie haben die jetzige Umgebung behalten; die Übertemperatur kommt zur Umgebung des anderen Falls.
    .turn-rise-not-scaled = Sie haben die Übertemperatur gelassen, wie sie ist; bei anderer Last ist andere Wärme abzugeben.
    .turn-fixed-share-left-out = Sie haben die ganze Übertemperatur mit der Last gehen lassen; das Planschen des Öls erzeugt seinen Anteil bei jeder Last.
    .turn-fixed-share-dropped = Sie haben den lastabhängigen Anteil umgerechnet und den festen fallen lassen; beide erzeugen Wärme.
    .turn-share-upside-down = Sie haben den Anteil auf den Kopf gestellt; weniger Last macht weniger Übertemperatur.
    .turn-temperature-scaled = Sie haben die Temperatur umgerechnet; nur die Übertemperatur geht mit der Last.
    .turn-temperature-scaled-f = Sie haben die Temperatur umgerechnet; nur die Übertemperatur geht mit der Last.
    .turn-ambient-left-out = Sie haben die Übertemperatur als Temperatur angegeben; zählen Sie die Umgebung des anderen Falls dazu.
    .turn-ambient-left-out-f = Sie haben die Übertemperatur als Temperatur angegeben; zählen Sie die Umgebung des anderen Falls dazu.
    .turn-rise-on-the-old-housing = Sie haben die neue Übertemperatur zur jetzigen Gehäusetemperatur gezählt; sie geht von der Umgebung des anderen Falls aus.

relation-heat-time-2-one-interval-on = Zeit der Ablesung 2
    .source = gleiche Abstände
    .turn-interval-only = Sie haben den Abstand angegeben; Ablesung 2 kommt einen Abstand nach Ablesung 1.
    .turn-two-intervals = Sie sind zwei Abstände weitergegangen; das ist Ablesung 3.

relation-heat-time-3-two-intervals-on = Zeit der Ablesung 3
    .source = gleiche Abstände
    .turn-one-interval = Sie sind einen Abstand weitergegangen; Ablesung 3 kommt zwei Abstände nach Ablesung 1.
    .turn-three-intervals = Sie sind drei Abstände weitergegangen; zwischen drei Ablesungen liegen zwei Abstände.
    .turn-start-forgotten = Sie haben ab Ablesung 1 gezählt; die Zeit zählt ab dem Start.

relation-heat-reading-1-warm-up-curve = Temperatur bei Ablesung 1
    .source = Erwärmung einer Masse erster Ordnung; der Einlaufanteil ist ein eigenes Modell dieses Kurses, ohne Quelle

relation-heat-reading-2-warm-up-curve = Temperatur bei Ablesung 2
    .source = Erwärmung einer Masse erster Ordnung; der Einlaufanteil ist ein eigenes Modell dieses Kurses, ohne Quelle

relation-heat-reading-3-warm-up-curve = Temperatur bei Ablesung 3
    .source = Erwärmung einer Masse erster Ordnung; der Einlaufanteil ist ein eigenes Modell dieses Kurses, ohne Quelle

relation-heat-peak-reading-top-of-the-curve = Höchste Ablesung der Erwärmung
    .method = Das erste Maximum der Erwärmungskurve mit ihrer Einlaufspitze, durch Halbieren gefunden; die Beharrung, wenn sie höher liegt oder es keine Spitze gibt.
    .source = Erwärmung einer Masse erster Ordnung; der Einlaufanteil ist ein eigenes Modell dieses Kurses, ohne Quelle

relation-heat-warm-warm-up-curve = Temperatur einige Zeit nach einem Kaltstart
    .limits = gleichbleibende Last ab Kaltstart, ein schon eingelaufenes Getriebe; 63 % der Übertemperatur nach einer Zeitkonstante, 95 % nach dreien
    .source = Erwärmung einer Masse erster Ordnung, Newtonsches Abkühlungsgesetz
    .turn-straight-line = Sie haben die Temperatur gerade ansteigen lassen; sie steigt immer langsamer.
    .turn-what-is-left = Sie haben e^(−t/τ) selbst benutzt; dieser Anteil der Übertemperatur fehlt noch, und 1 minus ihn ist da.
    .turn-ambient-left-out = Sie haben die bisherige Übertemperatur als Temperatur angegeben; zählen Sie die Umgebung dazu.
    .turn-ambient-left-out-f = Sie haben die bisherige Übertemperatur als Temperatur angegeben; zählen Sie die Umgebung dazu.
    .turn-temperature-for-rise = Sie haben die Beharrungstemperatur eingesetzt, wo die Übertemperatur hingehört; die Umgebung zählt dann zweimal.
    .turn-temperature-for-rise-f = Sie haben die Beharrungstemperatur eingesetzt, wo die Übertemperatur hingehört; die Umgebung zählt dann zweimal.
    .turn-upside-down = Sie haben die Zeitkonstante über die Zeit gesetzt; der Exponent ist minus Zeit durch Zeitkonstante.
    .turn-settled-already = Sie haben es für die Beharrung genommen; zu dieser Zeit ist es noch unterwegs.

relation-heat-warm-up-time-from-cold = Zeit vom Kaltstart bis zur Beharrung
    .limits = es kommt immer näher und nie ganz an, darum muss man eine Schranke nennen
    .source = Erwärmung einer Masse erster Ordnung, Newtonsches Abkühlungsgesetz
    .turn-one-time-constant = Sie haben eine Zeitkonstante angegeben; bis dahin sind erst 63 % der Übertemperatur da.
    .turn-three-time-constants = Sie haben drei Zeitkonstanten angegeben; 95 % der Übertemperatur sind da, und der Rest ist mehr als die Schranke.
    .turn-common-logarithm = Sie haben den Logarithmus zur Basis 10 benutzt; hierher gehört der natürliche, ln.
    .turn-celsius-reading = Sie haben die Beharrungstemperatur benutzt; was abklingt, ist der Abstand von der Umgebung, die Übertemperatur.
    .turn-fahrenheit-reading = Sie haben die Beharrungstemperatur benutzt; was abklingt, ist der Abstand von der Umgebung, die Übertemperatur.
    .turn-no-logarithm = Sie haben den Logarithmus weggelassen; die Zeit ist die Zeitkonstante mal ln des Verhältnisses.

relation-heat-settled-foretold-three-readings = Wo die Temperatur beharren wird
    .limits = gleiche Abstände; beide Schritte mit gleichem Vorzeichen und der zweite deutlich kleiner, sonst ist noch keine Beharrung abzusehen; nicht während einer Einlaufspitze
    .source = Aitkens Delta-Quadrat-Formel, genau für eine Kurve erster Ordnung
    .turn-last-reading = Sie haben die letzte Ablesung für die Beharrung genommen; die Ablesungen steigen noch.
    .turn-one-more-step = Sie haben den letzten Schritt gerade fortgesetzt; jeder Schritt ist kleiner als der vorige, und es kommen noch mehr.
    .turn-two-more-steps = Sie haben den letzten Schritt gerade fortgesetzt; jeder Schritt ist kleiner als der vorige.
    .turn-from-the-middle = Sie haben den Rest zu Ablesung 2 gezählt; er zählt ab Ablesung 3.
    .turn-first-step-below = Sie haben durch den ersten Schritt geteilt; teilen Sie durch die Differenz der beiden Schritte.
    .turn-rest-only-c = Sie haben angegeben, was noch kommt; zählen Sie es zu Ablesung 3.
    .turn-rest-only-f = Sie haben angegeben, was noch kommt; zählen Sie es zu Ablesung 3.

relation-heat-rise-foretold-over-ambient = Vorhergesagte Übertemperatur in der Beharrung
    .source = Definition der Temperaturdifferenz
    .turn-celsius-reading = Sie haben die Temperatur selbst angegeben; ziehen Sie die Umgebung ab, das ergibt die Übertemperatur.
    .turn-fahrenheit-reading = Sie haben die Temperatur selbst angegeben; ziehen Sie die Umgebung ab, das ergibt die Übertemperatur.
    .turn-last-reading = Sie haben bei der letzten Ablesung aufgehört; die Übertemperatur zählt bis dahin, wo das Getriebe beharren wird.
    .turn-from-reading-1 = Sie haben ab Ablesung 1 gezählt; die Übertemperatur zählt ab der Umgebung.
    .turn-32-added = Sie haben 32 zu einer Differenz gezählt; die 32 gehört nur zu Ablesungen.
    .turn-32-taken-off = Sie haben 32 von einer Differenz abgezogen, als wäre sie eine Ablesung.

relation-heat-time-constant-foretold-three-readings = Zeitkonstante aus drei Ablesungen
    .limits = gleiche Abstände; beide Schritte mit gleichem Vorzeichen und der zweite deutlich kleiner
    .source = Erwärmung einer Masse erster Ordnung, Newtonsches Abkühlungsgesetz
    .turn-common-logarithm = Sie haben den Logarithmus zur Basis 10 benutzt; hierher gehört der natürliche, ln.
    .turn-whole-time = Sie haben die Zeit von Ablesung 1 bis 3 benutzt; hierher gehört der Abstand zweier Nachbarn.
    .turn-steps-upside-down = Sie haben den späteren Schritt durch den früheren geteilt, das macht den Logarithmus negativ; der frühere Schritt gehört nach oben.
    .turn-no-logarithm = Sie haben die Zeit durch das Verhältnis der Schritte geteilt; unten gehört der Logarithmus dieses Verhältnisses hin.
    .turn-readings-for-steps = Sie haben das Verhältnis zweier Ablesungen genommen; hierher gehört das Verhältnis der beiden Schritte.
    .turn-readings-for-steps-f = Sie haben das Verhältnis zweier Ablesungen genommen; hierher gehört das Verhältnis der beiden Schritte.
    .turn-multiplied = Sie haben mit dem Logarithmus malgenommen; teilen Sie durch ihn.

relation-heat-time-constant-foretold-settled-temperature-known = Zeitkonstante aus zwei Ablesungen und der Beharrung
    .limits = beide Ablesungen deutlich von der Beharrung entfernt; nicht während einer Einlaufspitze
    .source = Erwärmung einer Masse erster Ordnung, Newtonsches Abkühlungsgesetz
    .turn-common-logarithm = Sie haben den Logarithmus zur Basis 10 benutzt; hierher gehört der natürliche, ln.
    .turn-over-ambient = Sie haben die Übertemperaturen benutzt; was abklingt, ist der Abstand von der Beharrung.
    .turn-readings = Sie haben das Verhältnis zweier Ablesungen genommen; hierher gehören die Abstände von der Beharrung.
    .turn-readings-f = Sie haben das Verhältnis zweier Ablesungen genommen; hierher gehören die Abstände von der Beharrung.
    .turn-no-logarithm = Sie haben die Zeit durch das Verhältnis der Abstände geteilt; unten gehört dessen Logarithmus hin.

relation-heat-settling-three-readings = Was die drei Ablesungen sagen
    .method = Alle drei innerhalb von 2 °C (3,6 °F) und nicht jede höher als die vorige: in Beharrung. Sonst, die letzte niedriger als eine frühere: nach einer Spitze rückläufig. Sonst, der zweite Schritt kleiner als der erste: noch steigend, aber es wird beharren. Sonst: noch keine Beharrung abzusehen.
    .limits = Ablesungen im Abstand von 30 Minuten
    .place = 2. Ausgabe (2012), Abschnitt 32.2, für Motoren geschrieben, hier nur als Kriterium benutzt
    .turn-last-step-only = Sie haben nur auf den letzten Schritt gesehen; alle drei Ablesungen müssen innerhalb von 2 °C (3,6 °F) liegen und dürfen nicht weiter steigen.
    .turn-small-but-rising = Sie haben es Beharrung genannt, weil die Änderung klein ist; solange jede Ablesung höher ist als die vorige, steigt es noch.
    .turn-any-rise-will-settle = Sie haben angenommen, dass es beharren wird; dazu muss der zweite Schritt kleiner sein als der erste, und das ist er nicht.
    .turn-any-rise-runs-away = Sie haben jedes Steigen für endlos gehalten; die Schritte werden kleiner, also sagen die Ablesungen, wo es beharren wird.
    .turn-fall-taken-as-settled = Sie haben das Fallen für das Ende der Erwärmung gehalten; es geht von einer Spitze zurück und ist abzulesen, bis es eben ist.
    .turn-fall-not-looked-at = Sie haben übersehen, dass die Temperatur sinkt; sie hat eine Spitze hinter sich und geht zurück.

relation-heat-time-to-settle-from-reading-3 = Zeit von Ablesung 3 bis zur Beharrung
    .limits = es kommt immer näher und nie ganz an, darum muss man eine Schranke nennen
    .source = Erwärmung einer Masse erster Ordnung, Newtonsches Abkühlungsgesetz
    .turn-straight-line = Sie haben den letzten Schritt gerade weitergehen lassen; es steigt immer langsamer, dauert also länger.
    .turn-one-time-constant = Sie haben eine Zeitkonstante angegeben; danach bleiben 37 % des Abstands.
    .turn-three-time-constants = Sie haben drei Zeitkonstanten angegeben; die Zeit richtet sich danach, wie weit es noch ist, und nach der Schranke.
    .turn-common-logarithm = Sie haben den Logarithmus zur Basis 10 benutzt; hierher gehört der natürliche, ln.
    .turn-from-ambient = Sie haben ab der Umgebung gezählt; mit Ablesung 3 ist schon ein Teil des Wegs getan.
    .turn-rise-so-far = Sie haben die bisherige Übertemperatur benutzt; hierher gehört der Abstand, der noch fehlt.
    .turn-celsius-reading = Sie haben die Beharrungstemperatur selbst benutzt; hierher gehört der Abstand, der noch fehlt.
    .turn-fahrenheit-reading = Sie haben die Beharrungstemperatur selbst benutzt; hierher gehört der Abstand, der noch fehlt.
    .turn-no-logarithm = Sie haben den Logarithmus weggelassen; die Zeit ist die Zeitkonstante mal ln des Verhältnisses.

relation-heat-infrared-emissivity = Was das Infrarotgerät zeigt
    .limits = graue, undurchsichtige Fläche, alle Wellenlängen, die Umgebung spiegelt sich darin; ein Gerät, das nur einen Bereich sieht, weicht etwas ab
    .source = Stefan-Boltzmann-Gesetz mit Spiegelung an einer grauen, undurchsichtigen Fläche
    .turn-housing-itself = Sie haben die Gehäusetemperatur angegeben; bei falsch eingestelltem Emissionsgrad zeigt das Gerät eine andere.
    .turn-swapped = Sie haben die beiden Emissionsgrade vertauscht; eine blanke Fläche bei hoher Einstellung wird zu niedrig gelesen.
    .turn-no-reflection = Sie haben weggelassen, was sich in der Fläche spiegelt; der Raum strahlt zurück und hebt die Ablesung.
    .turn-celsius = Sie haben Grad Celsius in die vierte Potenz erhoben; die Temperaturen müssen absolut sein, zählen Sie erst 273,15 dazu.
    .turn-fahrenheit = Sie haben Grad Fahrenheit in die vierte Potenz erhoben; die Temperaturen müssen absolut sein, zählen Sie erst 459,67 dazu.
    .turn-first-power = Sie haben die Übertemperatur im Verhältnis der Emissionsgrade umgerechnet; die Strahlung geht mit der vierten Potenz der absoluten Temperatur.
    .turn-times-emissivity = Sie haben die Ablesung mit dem Emissionsgrad malgenommen; die Strahlung geht mit der vierten Potenz der absoluten Temperatur.
    .turn-times-emissivity-f = Sie haben die Ablesung mit dem Emissionsgrad malgenommen; die Strahlung geht mit der vierten Potenz der absoluten Temperatur.

relation-heat-infrared-true-emissivity = Gehäusetemperatur hinter der Infrarotablesung
    .limits = graue, undurchsichtige Fläche, alle Wellenlängen, die Umgebung spiegelt sich darin; besser auf mattem Lack oder Klebeband messen
    .source = Stefan-Boltzmann-Gesetz mit Spiegelung an einer grauen, undurchsichtigen Fläche
    .turn-reading-itself = Sie haben die Infrarotablesung genommen, wie sie dasteht; sie muss um den Emissionsgrad der Fläche berichtigt werden.
    .turn-swapped = Sie haben die beiden Emissionsgrade vertauscht; eine blanke Fläche ist heißer, als sie aussieht.
    .turn-no-reflection = Sie haben weggelassen, was sich in der Fläche spiegelt; ein Teil dessen, was das Gerät sieht, kommt aus dem Raum.
    .turn-celsius = Sie haben Grad Celsius in die vierte Potenz erhoben; die Temperaturen müssen absolut sein, zählen Sie erst 273,15 dazu.
    .turn-fahrenheit = Sie haben Grad Fahrenheit in die vierte Potenz erhoben; die Temperaturen müssen absolut sein, zählen Sie erst 459,67 dazu.
    .turn-first-power = Sie haben die Übertemperatur im Verhältnis der Emissionsgrade umgerechnet; die Strahlung geht mit der vierten Potenz der absoluten Temperatur.
    .turn-divided-by-emissivity = Sie haben die Ablesung durch den Emissionsgrad geteilt; die Strahlung geht mit der vierten Potenz der absoluten Temperatur.
    .turn-divided-by-emissivity-f = Sie haben die Ablesung durch den Emissionsgrad geteilt; die Strahlung geht mit der vierten Potenz der absoluten Temperatur.

relation-heat-emissivity-found-contact-thermometer = Emissionsgrad mit dem Kontaktthermometer
    .limits = Fläche deutlich wärmer als der Raum
    .source = Stefan-Boltzmann-Gesetz mit Spiegelung an einer grauen, undurchsichtigen Fläche
    .turn-no-reflection = Sie haben weggelassen, was sich in der Fläche spiegelt; ziehen Sie oben und unten die vierte Potenz der Umgebung ab.
    .turn-celsius = Sie haben Grad Celsius in die vierte Potenz erhoben; die Temperaturen müssen absolut sein, zählen Sie erst 273,15 dazu.
    .turn-fahrenheit = Sie haben Grad Fahrenheit in die vierte Potenz erhoben; die Temperaturen müssen absolut sein, zählen Sie erst 459,67 dazu.
    .turn-setting-left-out = Sie haben die Einstellung des Geräts weggelassen; das Verhältnis ist ein Anteil des eingestellten Emissionsgrads.
    .turn-first-power = Sie haben das Verhältnis der Übertemperaturen benutzt; die Strahlung geht mit der vierten Potenz der absoluten Temperatur.
    .turn-ratio-of-readings = Sie haben das Verhältnis der beiden Ablesungen benutzt; hier gehören die vierten Potenzen der absoluten Temperaturen hin, vermindert um die der Umgebung.
    .turn-ratio-of-readings-f = Sie haben das Verhältnis der beiden Ablesungen benutzt; hier gehören die vierten Potenzen der absoluten Temperaturen hin, vermindert um die der Umgebung.
