## Größen, Beziehungen, ihre Quellen und Fehler: Ausrichten

quantity-align-sprocket-offset = Versatz des Kettenrads hinter das Bezugsrad

quantity-align-twist = Verdrehung des Kettenrads gegen das Bezugsrad

quantity-align-reference-chord = Abstand der Messpunkte am Bezugsrad

quantity-align-other-chord = Abstand der Messpunkte am anderen Kettenrad

quantity-align-gap-1 = Spalt am fernen Rand des Bezugsrads

quantity-align-gap-2 = Spalt am nahen Rand des Bezugsrads

quantity-align-gap-3 = Spalt am nahen Rand des anderen Kettenrads

quantity-align-gap-4 = Spalt am fernen Rand des anderen Kettenrads

quantity-align-sprocket-offset-limit = größter zulässiger Versatz der Kettenräder

quantity-align-twist-limit = größte zulässige Verdrehung der Kettenräder

quantity-align-sprocket-verdict = Urteil über die Kettenräder
    .choice-1 = innerhalb der Grenzen
    .choice-2 = Kettenrad auf seiner Welle verschieben
    .choice-3 = zuerst die Wellen parallel stellen

quantity-align-apart = Abstand der beiden Messstellen längs der Wellen

quantity-align-centres-near = Achsabstand an den Kettenrädern

quantity-align-centres-far = Achsabstand weiter hinten

quantity-align-parallel = wie stark die Wellen hinter den Kettenrädern auseinanderlaufen

quantity-align-pivot = Abstand des zu verschiebenden Lagers von dem, das bleibt

quantity-align-swing = Verschiebung des Lagers, die die Welle parallel schwenkt

quantity-align-offset-v = senkrechter Versatz in der Messebene

quantity-align-angle-v = senkrechter Winkelfehler der Wellen

quantity-align-offset-h = waagerechter Versatz in der Messebene

quantity-align-angle-h = waagerechter Winkelfehler der Wellen

quantity-align-front = Abstand der vorderen Füße von der Messebene

quantity-align-feet-apart = Abstand zwischen vorderen und hinteren Füßen der beweglichen Maschine

quantity-align-rear = Abstand der hinteren Füße von der Messebene

quantity-align-trial = Ablesung unten bei der Probe der Stange an einem steifen Rohr

quantity-align-sag = Durchhang der Messuhrstange

quantity-align-circle = Durchmesser des Messkreises der Stirnmessuhr

quantity-align-rim-right = Umfangsablesung bei 3 Uhr

quantity-align-rim-bottom = Umfangsablesung bei 6 Uhr

quantity-align-rim-left = Umfangsablesung bei 9 Uhr

quantity-align-face-right = Stirnablesung bei 3 Uhr

quantity-align-face-bottom = Stirnablesung bei 6 Uhr

quantity-align-face-left = Stirnablesung bei 9 Uhr

quantity-align-rim-v = Umfangsablesung über die Senkrechte, ohne Durchhang

quantity-align-rim-h = Umfangsablesung über die Waagerechte

quantity-align-face-h = Stirnablesung über die Waagerechte

quantity-align-dials-apart = Abstand zwischen den beiden Umfangsmessuhren

quantity-align-own-right = Umfangsablesung der beweglichen Nabe bei 3 Uhr

quantity-align-own-bottom = Umfangsablesung der beweglichen Nabe bei 6 Uhr

quantity-align-own-left = Umfangsablesung der beweglichen Nabe bei 9 Uhr

quantity-align-own-v = Umfangsablesung der beweglichen Nabe über die Senkrechte, ohne Durchhang

quantity-align-own-h = Umfangsablesung der beweglichen Nabe über die Waagerechte

quantity-align-far-v = senkrechter Versatz an der beweglichen Nabe

quantity-align-far-h = waagerechter Versatz an der beweglichen Nabe

quantity-align-runout = Stirnschlag der Nabe

quantity-align-gap-before = Spaltunterschied zwischen den Naben vor dem Drehen

quantity-align-gap-after = Spaltunterschied zwischen den Naben nach einer halben Umdrehung beider Wellen

quantity-align-gap-standing = Spaltunterschied, der zur Ausrichtung gehört

quantity-align-move-front-v = senkrechte Verschiebung der vorderen Füße, mit der die Wellen fluchten

quantity-align-move-rear-v = senkrechte Verschiebung der hinteren Füße, mit der die Wellen fluchten

quantity-align-move-front-h = seitliche Verschiebung der vorderen Füße, mit der die Wellen fluchten

quantity-align-move-rear-h = seitliche Verschiebung der hinteren Füße, mit der die Wellen fluchten

quantity-align-way-front-h = in welche Richtung die vorderen Füße gehen
    .choice-1 = Richtung 3 Uhr
    .choice-2 = Richtung 9 Uhr
    .choice-3 = stehen lassen

quantity-align-way-rear-h = in welche Richtung die hinteren Füße gehen
    .choice-1 = Richtung 3 Uhr
    .choice-2 = Richtung 9 Uhr
    .choice-3 = stehen lassen

quantity-align-offset-limit = größter zulässiger Versatz in der Messebene

quantity-align-angle-limit = größter zulässiger Winkelfehler der Wellen

quantity-align-verdict-v = Urteil über die senkrechte Ausrichtung
    .choice-1 = innerhalb der Grenzen
    .choice-2 = neu ausrichten

quantity-align-verdict-h = Urteil über die waagerechte Ausrichtung
    .choice-1 = innerhalb der Grenzen
    .choice-2 = neu ausrichten

quantity-align-motor-expansion = Ausdehnungskoeffizient des Motorgehäuses

quantity-align-reducer-expansion = Ausdehnungskoeffizient des Getriebegehäuses

quantity-align-motor-height = Höhe der Motorwelle über ihren Füßen

quantity-align-reducer-height = Höhe der Getriebewelle über ihren Füßen

quantity-align-front-rise = Übertemperatur des Motors an den vorderen Füßen

quantity-align-rear-rise = Übertemperatur des Motors an den hinteren Füßen

quantity-align-front-warm = Temperatur des warmen Motors an den vorderen Füßen

quantity-align-rear-warm = Temperatur des warmen Motors an den hinteren Füßen

quantity-align-growth-front = Wärmedehnung des Motors an den vorderen Füßen

quantity-align-growth-rear = Wärmedehnung des Motors an den hinteren Füßen

quantity-align-growth-reducer = Wärmedehnung an der Getriebewelle

quantity-align-target-front = Kaltvorgabe der Motorwelle über den vorderen Füßen

quantity-align-target-rear = Kaltvorgabe der Motorwelle über den hinteren Füßen

quantity-align-shim-front = Änderung der Unterlegbleche unter den vorderen Füßen

quantity-align-shim-rear = Änderung der Unterlegbleche unter den hinteren Füßen

quantity-align-shim-least = kleinste Änderung der Unterlegbleche, die sich lohnt

quantity-align-way-front-v = was mit den Unterlegblechen unter den vorderen Füßen zu tun ist
    .choice-1 = Bleche unterlegen
    .choice-2 = Bleche herausnehmen
    .choice-3 = so lassen

quantity-align-way-rear-v = was mit den Unterlegblechen unter den hinteren Füßen zu tun ist
    .choice-1 = Bleche unterlegen
    .choice-2 = Bleche herausnehmen
    .choice-3 = so lassen

relation-align-gap-1-laid = Spalt am fernen Rand des Bezugsrads
    .method = Das Lineal liegt an den äußeren Stirnflächen an, ohne zu kippeln: satt am Bezugsrad, wenn das andere dahinter zurücksteht, sonst satt am anderen, sonst an je einem Punkt beider Räder. Die Spalte werden der Reihe nach gefühlt, vom fernen Rand des Bezugsrads bis zum fernen Rand des anderen.
    .limits = beide Stirnflächen gleich weit von der Mittelebene ihres Kettenrads; Messpunkte beidseits jeder Mitte in gleichem Abstand
    .source = Geometrie zweier Geraden

relation-align-gap-2-laid = Spalt am nahen Rand des Bezugsrads
    .method = Das Lineal liegt an den äußeren Stirnflächen an, ohne zu kippeln: satt am Bezugsrad, wenn das andere dahinter zurücksteht, sonst satt am anderen, sonst an je einem Punkt beider Räder. Die Spalte werden der Reihe nach gefühlt, vom fernen Rand des Bezugsrads bis zum fernen Rand des anderen.
    .limits = beide Stirnflächen gleich weit von der Mittelebene ihres Kettenrads; Messpunkte beidseits jeder Mitte in gleichem Abstand
    .source = Geometrie zweier Geraden

relation-align-gap-3-laid = Spalt am nahen Rand des anderen Kettenrads
    .method = Das Lineal liegt an den äußeren Stirnflächen an, ohne zu kippeln: satt am Bezugsrad, wenn das andere dahinter zurücksteht, sonst satt am anderen, sonst an je einem Punkt beider Räder. Die Spalte werden der Reihe nach gefühlt, vom fernen Rand des Bezugsrads bis zum fernen Rand des anderen.
    .limits = beide Stirnflächen gleich weit von der Mittelebene ihres Kettenrads; Messpunkte beidseits jeder Mitte in gleichem Abstand
    .source = Geometrie zweier Geraden

relation-align-gap-4-laid = Spalt am fernen Rand des anderen Kettenrads
    .method = Das Lineal liegt an den äußeren Stirnflächen an, ohne zu kippeln: satt am Bezugsrad, wenn das andere dahinter zurücksteht, sonst satt am anderen, sonst an je einem Punkt beider Räder. Die Spalte werden der Reihe nach gefühlt, vom fernen Rand des Bezugsrads bis zum fernen Rand des anderen.
    .limits = beide Stirnflächen gleich weit von der Mittelebene ihres Kettenrads; Messpunkte beidseits jeder Mitte in gleichem Abstand
    .source = Geometrie zweier Geraden

relation-align-sprocket-offset-gaps = Versatz der Kettenräder aus den vier Spalten
    .limits = beide Stirnflächen gleich weit von der Mittelebene ihres Kettenrads; Messpunkte beidseits jeder Mitte in gleichem Abstand
    .source = Geometrie zweier Geraden
    .turn-far-rim-gap = Sie haben den Spalt am fernen Rand für den Versatz genommen; ein Teil davon ist Verdrehung, nehmen Sie also das Mittel der beiden Spalte am Kettenrad.
    .turn-near-rim-gap = Sie haben den Spalt am nahen Rand für den Versatz genommen; ein Teil davon ist Verdrehung, nehmen Sie also das Mittel der beiden Spalte am Kettenrad.
    .turn-twist-for-offset = Sie haben die Differenz der beiden Spalte angegeben; sie zeigt die Verdrehung, der Versatz ist ihr Mittel.
    .turn-gaps-added = Sie haben die beiden Spalte am Kettenrad zusammengezählt; der Versatz in seiner Mitte ist ihr Mittel.
    .turn-reference-lay-left-out = Sie haben weggelassen, wie das Lineal am Bezugsrad liegt; seine Schräglage wirkt sich über den ganzen Achsabstand aus.
    .turn-wrong-side = Sie haben die Kettenräder vertauscht; der Versatz zählt vom Bezugsrad zum anderen.

relation-align-twist-gaps = Verdrehung der Kettenräder aus den vier Spalten
    .limits = beide Stirnflächen gleich weit von der Mittelebene ihres Kettenrads; Messpunkte beidseits jeder Mitte in gleichem Abstand
    .source = Geometrie zweier Geraden
    .turn-offset-for-twist = Sie haben den Versatz für Verdrehung genommen; gleiche Spalte an einem Kettenrad sind Versatz, nur ihre Differenz ist Verdrehung.
    .turn-far-rim-gap = Sie haben nur den fernen Spalt genommen; die Verdrehung ist die Differenz der beiden Spalte durch den Abstand zwischen ihnen.
    .turn-over-the-centres = Sie haben durch den Achsabstand geteilt; die beiden Spalte liegen um den Messpunktabstand des Kettenrads auseinander.
    .turn-radius = Sie haben durch den halben Messpunktabstand geteilt; die beiden Spalte liegen um den ganzen auseinander.
    .turn-wrong-sprocket-s-chord = Sie haben durch den Messpunktabstand des falschen Kettenrads geteilt; zu jedem Spaltpaar gehört sein eigener.
    .turn-wrong-sign = Sie haben die Spalte verkehrt herum genommen; die Verdrehung zählt positiv, wenn der ferne Rand weiter hinten liegt.

relation-align-sprocket-verdict-limits = Urteil über die Kettenräder
    .method = Verdrehung über ihrer Grenze, gleich mit welchem Vorzeichen: zuerst die Wellen parallel stellen. Sonst, Versatz über seiner Grenze: Kettenrad verschieben. Sonst innerhalb der Grenzen. Ein Wert auf der Grenze besteht.
    .limits = Grenzen nach Zeichnung oder Hersteller
    .turn-offset-only = Sie haben nur den Versatz beurteilt; auch Verdrehung verschleißt die Laschen der Kette, und kein Verschieben des Kettenrads behebt sie.
    .turn-twist-only = Sie haben nur die Verdrehung beurteilt; auch auf parallelen Wellen können die Kettenräder außerhalb einer Ebene sitzen.
    .turn-offset-taken-for-twist = Sie haben Versatz für Verdrehung genommen; liegt die Verdrehung innerhalb ihrer Grenze, sind die Wellen parallel genug, und das Kettenrad wird verschoben.
    .turn-twist-taken-for-offset = Sie haben Verdrehung für Versatz genommen; kein Verschieben des Kettenrads behebt sie, stellen Sie also zuerst die Wellen parallel.
    .turn-sign = Sie haben einen negativen Wert durchgehen lassen; das Vorzeichen sagt nur, auf welcher Seite, die Grenze gilt für den Betrag.

relation-align-centres-near-centres = An den Kettenrädern gemessener Achsabstand
    .source = die Mitten der Kettenräder sind die der Wellen

relation-align-centres-far-twist = Weiter hinten gemessener Achsabstand
    .method = Ein Kettenrad, dessen ferner Rand weiter hinten liegt, sitzt auf einer Welle, die nach hinten näher kommt.
    .source = Geometrie ähnlicher Dreiecke

relation-align-parallel-centres = Wie stark die Wellen auseinanderlaufen
    .limits = beide Achsabstände auf gleiche Weise gemessen, rechtwinklig zu den Wellen, in Wellenhöhe
    .source = Geometrie ähnlicher Dreiecke
    .turn-wrong-sign = Sie haben den ersten Achsabstand minus den zweiten genommen; positiv heißt hinten weiter auseinander, also der zweite minus der erste.
    .turn-halved = Sie haben halbiert; die Differenz der beiden Achsabstände ist schon das Ganze.
    .turn-over-the-centres = Sie haben durch den Achsabstand geteilt; teilen Sie durch den Abstand der beiden Messstellen längs der Wellen.
    .turn-difference-alone = Sie haben die Differenz angegeben, wie sie gemessen wurde; eine Neigung ist diese Differenz durch den Abstand der beiden Messstellen.

relation-align-twist-parallel = Verdrehung der Kettenräder aus dem Auseinanderlaufen der Wellen
    .limits = Kettenräder sitzen rechtwinklig auf ihren Wellen
    .source = Geometrie ähnlicher Dreiecke
    .turn-wrong-sign = Sie haben das Vorzeichen beibehalten; laufen die Wellen hinten auseinander, kommt der ferne Rand des Kettenrads nach vorn, das Vorzeichen kehrt sich also um.
    .turn-radians = Sie haben die Neigung selbst als Grad angegeben; nehmen Sie ihren Arkustangens in Grad.

relation-align-swing-pivot = Verschiebung des Lagers, die die Welle parallel schwenkt
    .limits = positiv: von der anderen Welle weg; das zu verschiebende Lager liegt hinter dem, das bleibt
    .source = Geometrie ähnlicher Dreiecke
    .turn-wrong-way = Sie haben das Lager in die falsche Richtung verschoben; Wellen, die auseinanderlaufen, werden zusammengerückt, die Verschiebung ist also negativ.
    .turn-measured-distance = Sie haben das Lager um das verschoben, was zwischen den beiden Messstellen gemessen wurde; es hat seinen eigenen Abstand von dem, das bleibt.
    .turn-halved = Sie haben die Verschiebung halbiert; das Lager, das bleibt, ist der Drehpunkt, das andere macht also den ganzen Weg.

relation-align-rim-right-position = Umfangsablesung bei 3 Uhr
    .limits = von der beweglichen Maschine zur ortsfesten gesehen; die ortsfeste Nabe ist die Messebene
    .source = Geometrie eines außermittig umfahrenen Kreises

relation-align-rim-bottom-position = Umfangsablesung bei 6 Uhr
    .limits = von der beweglichen Maschine zur ortsfesten gesehen; die ortsfeste Nabe ist die Messebene
    .source = Geometrie eines außermittig umfahrenen Kreises

relation-align-rim-left-position = Umfangsablesung bei 9 Uhr
    .limits = von der beweglichen Maschine zur ortsfesten gesehen; die ortsfeste Nabe ist die Messebene
    .source = Geometrie eines außermittig umfahrenen Kreises

relation-align-face-right-position = Stirnablesung bei 3 Uhr
    .limits = von der beweglichen Maschine zur ortsfesten gesehen; die ortsfeste Nabe ist die Messebene
    .source = Geometrie eines außermittig umfahrenen Kreises

relation-align-face-bottom-position = Stirnablesung bei 6 Uhr
    .limits = von der beweglichen Maschine zur ortsfesten gesehen; die ortsfeste Nabe ist die Messebene
    .source = Geometrie eines außermittig umfahrenen Kreises

relation-align-face-left-position = Stirnablesung bei 9 Uhr
    .limits = von der beweglichen Maschine zur ortsfesten gesehen; die ortsfeste Nabe ist die Messebene
    .source = Geometrie eines außermittig umfahrenen Kreises

relation-align-own-right-position = Umfangsablesung der beweglichen Nabe bei 3 Uhr
    .limits = von der beweglichen Maschine zur ortsfesten gesehen; die ortsfeste Nabe ist die Messebene
    .source = Geometrie eines außermittig umfahrenen Kreises

relation-align-own-bottom-position = Umfangsablesung der beweglichen Nabe bei 6 Uhr
    .limits = von der beweglichen Maschine zur ortsfesten gesehen; die ortsfeste Nabe ist die Messebene
    .source = Geometrie eines außermittig umfahrenen Kreises

relation-align-own-left-position = Umfangsablesung der beweglichen Nabe bei 9 Uhr
    .limits = von der beweglichen Maschine zur ortsfesten gesehen; die ortsfeste Nabe ist die Messebene
    .source = Geometrie eines außermittig umfahrenen Kreises

relation-align-sag-trial = Durchhang der Stange aus ihrer Probe an einem steifen Rohr
    .method = Spannen Sie die Stange so an ein steifes, gerades Rohr, wie sie später an der Welle sitzt, stellen Sie die Messuhr oben auf null, drehen Sie das Rohr um und lesen Sie ab.
    .limits = dieselbe Stange, Messuhr und Ausladung wie an der Maschine
    .source = der Durchhang drückt eine hängende Messuhr oben hinein und lässt sie unten um ebenso viel wegsinken
    .turn-not-halved = Sie haben die ganze Ablesung der Probe für den Durchhang genommen; von oben nach unten sinkt die Messuhr um den doppelten Durchhang weg.
    .turn-wrong-sign = Sie haben das Minuszeichen stehen lassen; die Probe zeigt negativ an, weil die Stange nach unten hängt, und der Durchhang sagt, wie weit.
    .turn-whole-reading = Sie haben die Ablesung der Probe angegeben; der Durchhang ist die Hälfte davon, positiv gezählt.
    .turn-quartered = Sie haben zweimal halbiert; die Hälfte der Ablesung der Probe ist der Durchhang.

relation-align-rim-v-sag = Umfangsablesung über die Senkrechte, ohne Durchhang
    .limits = Messuhr bei 12 Uhr auf null gestellt
    .place = S. 186
    .turn-sag-taken-off = Sie haben den Durchhang abgezogen; unten sinkt die Stange weg und zeigt zu wenig an, zählen Sie ihn also dazu.
    .turn-sag-once = Sie haben den Durchhang einmal dazugezählt; oben drückt er hinein und unten lässt er wegsinken, er zählt also doppelt.
    .turn-sag-four-times = Sie haben die Ablesung der Probe verdoppelt; sie ist schon der doppelte Durchhang.
    .turn-sag-left-out = Sie haben den Durchhang der Stange weggelassen; unten zeigt die Messuhr um den doppelten Durchhang zu wenig an.
    .turn-halved = Sie haben die Ablesung hier halbiert; dieser Schritt verlangt die ganze, halbiert wird erst beim Versatz.

relation-align-rim-h-sides = Umfangsablesung über die Waagerechte
    .limits = von der beweglichen Maschine zur ortsfesten gesehen; die ortsfeste Nabe ist die Messebene
    .turn-wrong-sign = Sie haben 3 Uhr minus 9 Uhr genommen; es ist 9 minus 3.
    .turn-added = Sie haben die beiden seitlichen Ablesungen zusammengezählt; ihre Differenz zeigt die waagerechte Lage, ihre Summe die senkrechte.
    .turn-one-side = Sie haben nur eine Seite genommen; die Messuhr wurde oben auf null gestellt, nicht bei 3 Uhr.
    .turn-sag-added = Sie haben die waagerechte Ablesung um den Durchhang berichtigt; auf beiden Seiten hängt die Stange gleich durch, er fällt also aus der Differenz heraus.
    .turn-halved = Sie haben die Ablesung hier halbiert; dieser Schritt verlangt die ganze, halbiert wird erst beim Versatz.

relation-align-own-v-sag = Umfangsablesung der beweglichen Nabe über die Senkrechte, ohne Durchhang
    .limits = Messuhr bei 12 Uhr auf null gestellt
    .place = S. 186
    .turn-sag-taken-off = Sie haben den Durchhang abgezogen; unten sinkt die Stange weg und zeigt zu wenig an, zählen Sie ihn also dazu.
    .turn-sag-once = Sie haben den Durchhang einmal dazugezählt; oben drückt er hinein und unten lässt er wegsinken, er zählt also doppelt.
    .turn-sag-four-times = Sie haben die Ablesung der Probe verdoppelt; sie ist schon der doppelte Durchhang.
    .turn-sag-left-out = Sie haben den Durchhang der Stange weggelassen; unten zeigt die Messuhr um den doppelten Durchhang zu wenig an.
    .turn-halved = Sie haben die Ablesung hier halbiert; dieser Schritt verlangt die ganze, halbiert wird erst beim Versatz.

relation-align-own-h-sides = Umfangsablesung der beweglichen Nabe über die Waagerechte
    .limits = von der beweglichen Maschine zur ortsfesten gesehen; die ortsfeste Nabe ist die Messebene
    .turn-wrong-sign = Sie haben 3 Uhr minus 9 Uhr genommen; es ist 9 minus 3.
    .turn-added = Sie haben die beiden seitlichen Ablesungen zusammengezählt; ihre Differenz zeigt die waagerechte Lage, ihre Summe die senkrechte.
    .turn-one-side = Sie haben nur eine Seite genommen; die Messuhr wurde oben auf null gestellt, nicht bei 3 Uhr.
    .turn-sag-added = Sie haben die waagerechte Ablesung um den Durchhang berichtigt; auf beiden Seiten hängt die Stange gleich durch, er fällt also aus der Differenz heraus.
    .turn-halved = Sie haben die Ablesung hier halbiert; dieser Schritt verlangt die ganze, halbiert wird erst beim Versatz.

relation-align-rim-left-closure = Umfangsablesung bei 9 Uhr aus den drei anderen
    .method = Antrieb freigeschaltet, gegen Wiedereinschalten gesichert und Spannungsfreiheit festgestellt, bevor eine Welle von Hand gedreht wird
    .limits = gilt mit und ohne Durchhang; weicht ein abgelesener vierter Wert um mehr als einen oder zwei Teilstriche ab, neu ablesen
    .source = Geometrie eines außermittig umfahrenen Kreises
    .turn-mirrored = Sie haben die Ablesung der anderen Seite genommen; beide Seiten zusammen ergeben die untere Ablesung, gleich sein müssen sie nicht.
    .turn-wrong-sign = Sie haben das Vorzeichen der anderen Seite umgekehrt; beide Seiten zusammen ergeben die untere Ablesung.
    .turn-added = Sie haben die Ablesungen zusammengezählt; oben und unten zusammen sind gleich den beiden Seiten zusammen.
    .turn-half-the-bottom = Sie haben die halbe untere Ablesung genommen; das gilt nur, wenn die Wellen seitlich fluchten.

relation-align-offset-v-rim = Senkrechter Versatz aus der Umfangsablesung
    .limits = von der beweglichen Maschine zur ortsfesten gesehen; die ortsfeste Nabe ist die Messebene
    .source = Geometrie eines außermittig umfahrenen Kreises
    .turn-not-halved = Sie haben die ganze Ablesung für den Versatz genommen; die Messuhr überstreicht den Versatz zweimal, einmal auf jeder Seite, also halbieren.
    .turn-wrong-sign = Sie haben das Vorzeichen umgekehrt; bei Ablesung an der ortsfesten Nabe heißt positiv, dass die bewegliche Welle hoch oder Richtung 3 Uhr steht.
    .turn-quartered = Sie haben zweimal halbiert; die Hälfte der ganzen Ablesung ist der Versatz.
    .turn-not-halved-and-turned = Sie haben das Vorzeichen umgekehrt und die Ablesung nicht halbiert; der Versatz ist die halbe Ablesung, mit deren eigenem Vorzeichen.

relation-align-offset-h-rim = Waagerechter Versatz aus der Umfangsablesung
    .limits = von der beweglichen Maschine zur ortsfesten gesehen; die ortsfeste Nabe ist die Messebene
    .source = Geometrie eines außermittig umfahrenen Kreises
    .turn-not-halved = Sie haben die ganze Ablesung für den Versatz genommen; die Messuhr überstreicht den Versatz zweimal, einmal auf jeder Seite, also halbieren.
    .turn-wrong-sign = Sie haben das Vorzeichen umgekehrt; bei Ablesung an der ortsfesten Nabe heißt positiv, dass die bewegliche Welle hoch oder Richtung 3 Uhr steht.
    .turn-quartered = Sie haben zweimal halbiert; die Hälfte der ganzen Ablesung ist der Versatz.
    .turn-not-halved-and-turned = Sie haben das Vorzeichen umgekehrt und die Ablesung nicht halbiert; der Versatz ist die halbe Ablesung, mit deren eigenem Vorzeichen.

relation-align-face-h-sides = Stirnablesung über die Waagerechte
    .limits = von der beweglichen Maschine zur ortsfesten gesehen; die ortsfeste Nabe ist die Messebene
    .turn-wrong-sign = Sie haben 3 Uhr minus 9 Uhr genommen; es ist 9 minus 3, wie am Umfang.
    .turn-added = Sie haben die beiden seitlichen Ablesungen zusammengezählt; ihre Differenz zeigt die waagerechte Lage, ihre Summe die senkrechte.
    .turn-one-side = Sie haben nur eine Seite genommen; die Messuhr wurde oben auf null gestellt, nicht bei 3 Uhr.
    .turn-halved = Sie haben die Ablesung halbiert; an der Stirn wird über den ganzen Kreis abgelesen und nicht halbiert.

relation-align-angle-v-face = Senkrechter Winkelfehler aus der Stirnablesung
    .limits = von der beweglichen Maschine zur ortsfesten gesehen; die ortsfeste Nabe ist die Messebene
    .source = Geometrie ähnlicher Dreiecke
    .turn-radius = Sie haben durch den Radius des Messkreises geteilt; die beiden Stellen der Ablesung liegen um den ganzen Durchmesser auseinander.
    .turn-halved = Sie haben die Stirnablesung halbiert; nur die Umfangsablesung wird halbiert, an der Stirn wird über den ganzen Kreis abgelesen.
    .turn-wrong-sign = Sie haben das Vorzeichen umgekehrt; ein auf einer Seite hineingedrückter Messbolzen heißt, dass der Spalt auf der anderen weiter ist.
    .turn-radius-and-sign = Sie haben durch den Radius geteilt und das Vorzeichen umgekehrt; die Neigung ist minus Stirnablesung durch den ganzen Durchmesser des Messkreises.
    .turn-rim-reading = Sie haben die Umfangsablesung benutzt; der Umfang zeigt den Versatz, die Stirn den Winkelfehler.

relation-align-angle-h-face = Waagerechter Winkelfehler aus der Stirnablesung
    .limits = von der beweglichen Maschine zur ortsfesten gesehen; die ortsfeste Nabe ist die Messebene
    .source = Geometrie ähnlicher Dreiecke
    .turn-radius = Sie haben durch den Radius des Messkreises geteilt; die beiden Stellen der Ablesung liegen um den ganzen Durchmesser auseinander.
    .turn-halved = Sie haben die Stirnablesung halbiert; nur die Umfangsablesung wird halbiert, an der Stirn wird über den ganzen Kreis abgelesen.
    .turn-wrong-sign = Sie haben das Vorzeichen umgekehrt; ein auf einer Seite hineingedrückter Messbolzen heißt, dass der Spalt auf der anderen weiter ist.
    .turn-radius-and-sign = Sie haben durch den Radius geteilt und das Vorzeichen umgekehrt; die Neigung ist minus Stirnablesung durch den ganzen Durchmesser des Messkreises.
    .turn-rim-reading = Sie haben die Umfangsablesung benutzt; der Umfang zeigt den Versatz, die Stirn den Winkelfehler.

relation-align-far-v-line = Senkrechter Versatz an der beweglichen Nabe
    .limits = von der beweglichen Maschine zur ortsfesten gesehen; die ortsfeste Nabe ist die Messebene
    .source = Geometrie ähnlicher Dreiecke
    .turn-angle-left-out = Sie haben den Versatz in der Messebene genommen; die Wellen stehen im Winkel, er ändert sich also auf dem Weg zur beweglichen Nabe.
    .turn-wrong-sign = Sie haben den Anteil des Winkelfehlers abgezogen; bei positivem Winkelfehler wächst der Versatz zu den Füßen hin.
    .turn-angle-s-part-alone = Sie haben nur den Anteil des Winkelfehlers angegeben; zählen Sie ihn zum Versatz in der Messebene.

relation-align-far-h-line = Waagerechter Versatz an der beweglichen Nabe
    .limits = von der beweglichen Maschine zur ortsfesten gesehen; die ortsfeste Nabe ist die Messebene
    .source = Geometrie ähnlicher Dreiecke
    .turn-angle-left-out = Sie haben den Versatz in der Messebene genommen; die Wellen stehen im Winkel, er ändert sich also auf dem Weg zur beweglichen Nabe.
    .turn-wrong-sign = Sie haben den Anteil des Winkelfehlers abgezogen; bei positivem Winkelfehler wächst der Versatz zu den Füßen hin.
    .turn-angle-s-part-alone = Sie haben nur den Anteil des Winkelfehlers angegeben; zählen Sie ihn zum Versatz in der Messebene.

relation-align-far-v-rim = Senkrechter Versatz an der beweglichen Nabe aus ihrer Umfangsablesung
    .limits = von der beweglichen Maschine zur ortsfesten gesehen; die ortsfeste Nabe ist die Messebene
    .source = Geometrie eines außermittig umfahrenen Kreises
    .turn-not-halved = Sie haben die ganze Ablesung für den Versatz genommen; die Messuhr überstreicht den Versatz zweimal, also halbieren.
    .turn-sign-not-turned = Sie haben das Vorzeichen beibehalten; diese Messuhr liest von der ortsfesten Welle aus die bewegliche Nabe ab, eine hoch stehende bewegliche Welle zeigt also negativ an.
    .turn-neither = Sie haben die Ablesung weder halbiert noch ihr Vorzeichen umgekehrt; der Versatz an der beweglichen Nabe ist minus die Hälfte davon.

relation-align-far-h-rim = Waagerechter Versatz an der beweglichen Nabe aus ihrer Umfangsablesung
    .limits = von der beweglichen Maschine zur ortsfesten gesehen; die ortsfeste Nabe ist die Messebene
    .source = Geometrie eines außermittig umfahrenen Kreises
    .turn-not-halved = Sie haben die ganze Ablesung für den Versatz genommen; die Messuhr überstreicht den Versatz zweimal, also halbieren.
    .turn-sign-not-turned = Sie haben das Vorzeichen beibehalten; diese Messuhr liest von der ortsfesten Welle aus die bewegliche Nabe ab, eine hoch stehende bewegliche Welle zeigt also negativ an.
    .turn-neither = Sie haben die Ablesung weder halbiert noch ihr Vorzeichen umgekehrt; der Versatz an der beweglichen Nabe ist minus die Hälfte davon.

relation-align-angle-v-reverse = Senkrechter Winkelfehler aus dem Versatz an beiden Naben
    .limits = von der beweglichen Maschine zur ortsfesten gesehen; die ortsfeste Nabe ist die Messebene
    .source = Geometrie ähnlicher Dreiecke
    .turn-sign-not-turned = Sie haben das Vorzeichen der beweglichen Nabe nicht umgekehrt; so sieht ein reiner Versatz wie ein Winkelfehler aus.
    .turn-wrong-sign = Sie haben den Versatz an der beweglichen Nabe vom anderen abgezogen; die Neigung zählt von der ortsfesten Nabe zu den Füßen hin.
    .turn-not-halved = Sie haben die ganzen Ablesungen benutzt; halbieren Sie jede, bevor Sie die Neigung bilden.
    .turn-distance-to-the-feet = Sie haben durch den Abstand der vorderen Füße geteilt; die beiden Versatzwerte liegen so weit auseinander wie die Messuhren.
    .turn-face-circle = Sie haben durch den Messkreis der Stirnmessuhr geteilt; hier tritt der Abstand der beiden Umfangsmessuhren an seine Stelle.

relation-align-angle-h-reverse = Waagerechter Winkelfehler aus dem Versatz an beiden Naben
    .limits = von der beweglichen Maschine zur ortsfesten gesehen; die ortsfeste Nabe ist die Messebene
    .source = Geometrie ähnlicher Dreiecke
    .turn-sign-not-turned = Sie haben das Vorzeichen der beweglichen Nabe nicht umgekehrt; so sieht ein reiner Versatz wie ein Winkelfehler aus.
    .turn-wrong-sign = Sie haben den Versatz an der beweglichen Nabe vom anderen abgezogen; die Neigung zählt von der ortsfesten Nabe zu den Füßen hin.
    .turn-not-halved = Sie haben die ganzen Ablesungen benutzt; halbieren Sie jede, bevor Sie die Neigung bilden.
    .turn-distance-to-the-feet = Sie haben durch den Abstand der vorderen Füße geteilt; die beiden Versatzwerte liegen so weit auseinander wie die Messuhren.
    .turn-face-circle = Sie haben durch den Messkreis der Stirnmessuhr geteilt; hier tritt der Abstand der beiden Umfangsmessuhren an seine Stelle.

relation-align-gap-before-sum = Spaltunterschied vor dem Drehen
    .limits = Spaltunterschied: Spalt unten minus Spalt oben, über den Messkreis der Stirnmessuhr
    .source = Schlag dreht sich mit den Wellen, der Ausrichtfehler bleibt, wo er ist

relation-align-gap-after-difference = Spaltunterschied nach einer halben Umdrehung beider Wellen
    .limits = Spaltunterschied: Spalt unten minus Spalt oben, über den Messkreis der Stirnmessuhr
    .source = Schlag dreht sich mit den Wellen, der Ausrichtfehler bleibt, wo er ist

relation-align-gap-standing-angle = Spaltunterschied, der zur Ausrichtung gehört
    .limits = Spaltunterschied: Spalt unten minus Spalt oben, über den Messkreis der Stirnmessuhr
    .source = Geometrie ähnlicher Dreiecke
    .turn-radius = Sie haben den Radius benutzt; oben und unten liegen um den ganzen Durchmesser auseinander.
    .turn-wrong-sign = Sie haben das Vorzeichen umgekehrt; bei positivem Winkelfehler neigt sich die Welle oben zur anderen hin, der Spalt ist also unten weiter.

relation-align-gap-standing-turned = Spaltunterschied, der zur Ausrichtung gehört, aus zwei Werten im Abstand einer halben Umdrehung
    .method = Antrieb freigeschaltet, gegen Wiedereinschalten gesichert und Spannungsfreiheit festgestellt, bevor eine Welle von Hand gedreht wird
    .limits = Spaltunterschied: Spalt unten minus Spalt oben, über den Messkreis der Stirnmessuhr
    .source = Schlag dreht sich mit den Wellen, der Ausrichtfehler bleibt, wo er ist
    .turn-first-gap = Sie haben den ersten Spaltunterschied genommen, wie er war; ein Teil davon kann Schlag der Nabe sein, der sich mit der Welle dreht.
    .turn-second-gap = Sie haben den zweiten Spaltunterschied genommen, wie er war; ein Teil davon kann Schlag der Nabe sein, der sich mit der Welle dreht.
    .turn-runout = Sie haben den Teil angegeben, der sich mit den Wellen dreht; das ist Schlag, zur Ausrichtung gehört der Teil, der bleibt.
    .turn-not-halved = Sie haben die beiden Spaltunterschiede zusammengezählt; der Teil, der bleibt, ist ihr Mittel.

relation-align-runout-turned = Schlag der Nabe aus zwei Spaltunterschieden im Abstand einer halben Umdrehung
    .method = Antrieb freigeschaltet, gegen Wiedereinschalten gesichert und Spannungsfreiheit festgestellt, bevor eine Welle von Hand gedreht wird
    .limits = Spaltunterschied: Spalt unten minus Spalt oben, über den Messkreis der Stirnmessuhr
    .source = Schlag dreht sich mit den Wellen, der Ausrichtfehler bleibt, wo er ist
    .turn-mean = Sie haben das Mittel der beiden Spaltunterschiede genommen; das ist der Teil, der bleibt, und er gehört zur Ausrichtung.
    .turn-not-halved = Sie haben die ganze Differenz genommen; der Schlag zählt vor der halben Umdrehung dazu und danach ab, also halbieren.
    .turn-wrong-sign = Sie haben den ersten Spaltunterschied vom zweiten abgezogen; es ist der erste minus der zweite.
    .turn-first-gap = Sie haben den ersten Spaltunterschied genommen, wie er war; ein Teil davon kann zur Ausrichtung gehören.

relation-align-rear-feet = Abstand der hinteren Füße von der Messebene
    .source = Strecken auf einer Geraden

relation-align-move-front-v-line = Senkrechte Verschiebung der vorderen Füße
    .limits = von der beweglichen Maschine zur ortsfesten gesehen; die ortsfeste Nabe ist die Messebene
    .source = Geometrie ähnlicher Dreiecke
    .turn-feet-swapped = Sie haben den Abstand des anderen Fußpaars benutzt; vorn und hinten gilt jeweils der eigene.
    .turn-wrong-sign = Sie haben angegeben, wo die Welle steht; verschoben wird in die andere Richtung.
    .turn-not-halved = Sie haben die ganze Umfangsablesung für den Versatz genommen; halbieren Sie zuerst.
    .turn-radius = Sie haben den Winkelfehler verdoppelt, als wäre vom Messkreis nur der Radius zu nehmen; die Stirnablesung gilt über den ganzen Durchmesser.
    .turn-offset-only = Sie haben die Füße nur um den Versatz verschoben; der Winkelfehler setzt sich bis zu den Füßen fort.
    .turn-angle-only = Sie haben die Füße nur um den Anteil des Winkelfehlers verschoben; zählen Sie den Versatz in der Messebene dazu.
    .turn-angle-s-sign = Sie haben das Vorzeichen beim Anteil des Winkelfehlers umgekehrt; bei positivem Winkelfehler wächst der Versatz zu den Füßen hin.

relation-align-move-rear-v-line = Senkrechte Verschiebung der hinteren Füße
    .limits = von der beweglichen Maschine zur ortsfesten gesehen; die ortsfeste Nabe ist die Messebene
    .source = Geometrie ähnlicher Dreiecke
    .turn-feet-swapped = Sie haben den Abstand des anderen Fußpaars benutzt; vorn und hinten gilt jeweils der eigene.
    .turn-wrong-sign = Sie haben angegeben, wo die Welle steht; verschoben wird in die andere Richtung.
    .turn-not-halved = Sie haben die ganze Umfangsablesung für den Versatz genommen; halbieren Sie zuerst.
    .turn-radius = Sie haben den Winkelfehler verdoppelt, als wäre vom Messkreis nur der Radius zu nehmen; die Stirnablesung gilt über den ganzen Durchmesser.
    .turn-offset-only = Sie haben die Füße nur um den Versatz verschoben; der Winkelfehler setzt sich bis zu den Füßen fort.
    .turn-angle-only = Sie haben die Füße nur um den Anteil des Winkelfehlers verschoben; zählen Sie den Versatz in der Messebene dazu.
    .turn-angle-s-sign = Sie haben das Vorzeichen beim Anteil des Winkelfehlers umgekehrt; bei positivem Winkelfehler wächst der Versatz zu den Füßen hin.

relation-align-move-front-h-line = Seitliche Verschiebung der vorderen Füße
    .limits = von der beweglichen Maschine zur ortsfesten gesehen; die ortsfeste Nabe ist die Messebene
    .source = Geometrie ähnlicher Dreiecke
    .turn-feet-swapped = Sie haben den Abstand des anderen Fußpaars benutzt; vorn und hinten gilt jeweils der eigene.
    .turn-wrong-sign = Sie haben angegeben, wo die Welle steht; verschoben wird in die andere Richtung.
    .turn-not-halved = Sie haben die ganze Umfangsablesung für den Versatz genommen; halbieren Sie zuerst.
    .turn-radius = Sie haben den Winkelfehler verdoppelt, als wäre vom Messkreis nur der Radius zu nehmen; die Stirnablesung gilt über den ganzen Durchmesser.
    .turn-offset-only = Sie haben die Füße nur um den Versatz verschoben; der Winkelfehler setzt sich bis zu den Füßen fort.
    .turn-angle-only = Sie haben die Füße nur um den Anteil des Winkelfehlers verschoben; zählen Sie den Versatz in der Messebene dazu.
    .turn-angle-s-sign = Sie haben das Vorzeichen beim Anteil des Winkelfehlers umgekehrt; bei positivem Winkelfehler wächst der Versatz zu den Füßen hin.

relation-align-move-rear-h-line = Seitliche Verschiebung der hinteren Füße
    .limits = von der beweglichen Maschine zur ortsfesten gesehen; die ortsfeste Nabe ist die Messebene
    .source = Geometrie ähnlicher Dreiecke
    .turn-feet-swapped = Sie haben den Abstand des anderen Fußpaars benutzt; vorn und hinten gilt jeweils der eigene.
    .turn-wrong-sign = Sie haben angegeben, wo die Welle steht; verschoben wird in die andere Richtung.
    .turn-not-halved = Sie haben die ganze Umfangsablesung für den Versatz genommen; halbieren Sie zuerst.
    .turn-radius = Sie haben den Winkelfehler verdoppelt, als wäre vom Messkreis nur der Radius zu nehmen; die Stirnablesung gilt über den ganzen Durchmesser.
    .turn-offset-only = Sie haben die Füße nur um den Versatz verschoben; der Winkelfehler setzt sich bis zu den Füßen fort.
    .turn-angle-only = Sie haben die Füße nur um den Anteil des Winkelfehlers verschoben; zählen Sie den Versatz in der Messebene dazu.
    .turn-angle-s-sign = Sie haben das Vorzeichen beim Anteil des Winkelfehlers umgekehrt; bei positivem Winkelfehler wächst der Versatz zu den Füßen hin.

relation-align-way-front-h-sign = In welche Richtung die vorderen Füße gehen
    .method = Eine Verschiebung, die nicht größer ist als die kleinste, die sich lohnt, unterbleibt. Sonst geht es bei positivem Wert Richtung 3 Uhr, bei negativem Richtung 9 Uhr.
    .limits = von der beweglichen Maschine zur ortsfesten gesehen; die ortsfeste Nabe ist die Messebene
    .turn-wrong-way = Sie haben die falsche Richtung genommen; eine positive Verschiebung geht Richtung 3 Uhr, von der beweglichen Maschine aus gesehen.

relation-align-way-rear-h-sign = In welche Richtung die hinteren Füße gehen
    .method = Eine Verschiebung, die nicht größer ist als die kleinste, die sich lohnt, unterbleibt. Sonst geht es bei positivem Wert Richtung 3 Uhr, bei negativem Richtung 9 Uhr.
    .limits = von der beweglichen Maschine zur ortsfesten gesehen; die ortsfeste Nabe ist die Messebene
    .turn-wrong-way = Sie haben die falsche Richtung genommen; eine positive Verschiebung geht Richtung 3 Uhr, von der beweglichen Maschine aus gesehen.

relation-align-verdict-v-limits = Urteil über die senkrechte Ausrichtung
    .method = Halten Sie den Betrag des Versatzes und den des Winkelfehlers jeweils gegen die eigene Grenze; beide müssen bestehen. Ein Wert auf der Grenze besteht.
    .limits = beide Maschinen so warm, wie sie laufen, oder ohne Wärmedehnung, die zu berücksichtigen wäre; Grenzen nach dem Hersteller der Kupplung
    .turn-offset-only = Sie haben nur den Versatz beurteilt; der Winkelfehler hat eine eigene Grenze.
    .turn-angle-only = Sie haben nur den Winkelfehler beurteilt; der Versatz hat eine eigene Grenze.
    .turn-not-halved = Sie haben die ganze Ablesung der Messuhr gegen die Grenze gehalten; die Grenze gilt für den Versatz, die halbe Ablesung.
    .turn-sign = Sie haben einen negativen Wert durchgehen lassen; das Vorzeichen sagt nur, auf welcher Seite, die Grenze gilt für den Betrag.

relation-align-verdict-h-limits = Urteil über die waagerechte Ausrichtung
    .method = Halten Sie den Betrag des Versatzes und den des Winkelfehlers jeweils gegen die eigene Grenze; beide müssen bestehen. Ein Wert auf der Grenze besteht.
    .limits = beide Maschinen so warm, wie sie laufen, oder ohne Wärmedehnung, die zu berücksichtigen wäre; Grenzen nach dem Hersteller der Kupplung
    .turn-offset-only = Sie haben nur den Versatz beurteilt; der Winkelfehler hat eine eigene Grenze.
    .turn-angle-only = Sie haben nur den Winkelfehler beurteilt; der Versatz hat eine eigene Grenze.
    .turn-not-halved = Sie haben die ganze Ablesung der Messuhr gegen die Grenze gehalten; die Grenze gilt für den Versatz, die halbe Ablesung.
    .turn-sign = Sie haben einen negativen Wert durchgehen lassen; das Vorzeichen sagt nur, auf welcher Seite, die Grenze gilt für den Betrag.

relation-align-front-warm-rise = Temperatur des Motors an den vorderen Füßen
    .source = Definition der Übertemperatur

relation-align-rear-warm-rise = Temperatur des Motors an den hinteren Füßen
    .source = Definition der Übertemperatur

relation-align-growth-front-warm = Wärmedehnung des Motors an den vorderen Füßen
    .limits = eine Temperatur über die ganze Höhe von den Füßen bis zur Welle, am Metall abgelesen; bei Umgebungstemperatur ausgerichtet
    .source = Definition des Ausdehnungskoeffizienten
    .turn-f-with-a-coefficient-per-c = Sie haben eine Übertemperatur in °F mit einem Koeffizienten je °C malgenommen; das ergibt 1,8-mal zu viel.
    .turn-c-with-a-coefficient-per-f = Sie haben eine Übertemperatur in °C mit einem Koeffizienten je °F malgenommen; das ergibt 1,8-mal zu wenig.
    .turn-32-taken-off = Sie haben 32 von einer Temperaturdifferenz abgezogen; die 32 gehört zu Ablesungen und fällt aus einer Differenz heraus.
    .turn-32-added = Sie haben 32 zu einer Temperaturdifferenz gezählt; die 32 gehört zu Ablesungen und fällt aus einer Differenz heraus.
    .turn-c-reading = Sie haben die Temperatur der warmen Maschine selbst benutzt; die Wärmedehnung geht nach der Erwärmung über die Temperatur, bei der ausgerichtet wurde.
    .turn-f-reading = Sie haben die Temperatur der warmen Maschine selbst benutzt; die Wärmedehnung geht nach der Erwärmung über die Temperatur, bei der ausgerichtet wurde.
    .turn-wrong-height = Sie haben die Höhe der anderen Maschine benutzt; jede dehnt sich über ihre eigene Höhe von den Füßen bis zur Welle.
    .turn-wrong-coefficient = Sie haben den Koeffizienten der anderen Maschine benutzt; jede richtet sich nach ihrem eigenen Werkstoff.
    .turn-halved = Sie haben die Höhe halbiert; die Welle steigt um die Dehnung der ganzen Höhe ab den Füßen.

relation-align-growth-rear-warm = Wärmedehnung des Motors an den hinteren Füßen
    .limits = eine Temperatur über die ganze Höhe von den Füßen bis zur Welle, am Metall abgelesen; bei Umgebungstemperatur ausgerichtet
    .source = Definition des Ausdehnungskoeffizienten
    .turn-f-with-a-coefficient-per-c = Sie haben eine Übertemperatur in °F mit einem Koeffizienten je °C malgenommen; das ergibt 1,8-mal zu viel.
    .turn-c-with-a-coefficient-per-f = Sie haben eine Übertemperatur in °C mit einem Koeffizienten je °F malgenommen; das ergibt 1,8-mal zu wenig.
    .turn-32-taken-off = Sie haben 32 von einer Temperaturdifferenz abgezogen; die 32 gehört zu Ablesungen und fällt aus einer Differenz heraus.
    .turn-32-added = Sie haben 32 zu einer Temperaturdifferenz gezählt; die 32 gehört zu Ablesungen und fällt aus einer Differenz heraus.
    .turn-c-reading = Sie haben die Temperatur der warmen Maschine selbst benutzt; die Wärmedehnung geht nach der Erwärmung über die Temperatur, bei der ausgerichtet wurde.
    .turn-f-reading = Sie haben die Temperatur der warmen Maschine selbst benutzt; die Wärmedehnung geht nach der Erwärmung über die Temperatur, bei der ausgerichtet wurde.
    .turn-wrong-height = Sie haben die Höhe der anderen Maschine benutzt; jede dehnt sich über ihre eigene Höhe von den Füßen bis zur Welle.
    .turn-wrong-coefficient = Sie haben den Koeffizienten der anderen Maschine benutzt; jede richtet sich nach ihrem eigenen Werkstoff.
    .turn-halved = Sie haben die Höhe halbiert; die Welle steigt um die Dehnung der ganzen Höhe ab den Füßen.

relation-align-growth-reducer-housing = Wärmedehnung an der Getriebewelle
    .limits = eine Temperatur über die ganze Höhe von den Füßen bis zur Welle, am Metall abgelesen; bei Umgebungstemperatur ausgerichtet
    .source = Definition des Ausdehnungskoeffizienten
    .turn-f-with-a-coefficient-per-c = Sie haben eine Übertemperatur in °F mit einem Koeffizienten je °C malgenommen; das ergibt 1,8-mal zu viel.
    .turn-c-with-a-coefficient-per-f = Sie haben eine Übertemperatur in °C mit einem Koeffizienten je °F malgenommen; das ergibt 1,8-mal zu wenig.
    .turn-32-taken-off = Sie haben 32 von einer Temperaturdifferenz abgezogen; die 32 gehört zu Ablesungen und fällt aus einer Differenz heraus.
    .turn-32-added = Sie haben 32 zu einer Temperaturdifferenz gezählt; die 32 gehört zu Ablesungen und fällt aus einer Differenz heraus.
    .turn-c-reading = Sie haben die Temperatur der warmen Maschine selbst benutzt; die Wärmedehnung geht nach der Erwärmung über die Temperatur, bei der ausgerichtet wurde.
    .turn-f-reading = Sie haben die Temperatur der warmen Maschine selbst benutzt; die Wärmedehnung geht nach der Erwärmung über die Temperatur, bei der ausgerichtet wurde.
    .turn-wrong-height = Sie haben die Höhe der anderen Maschine benutzt; jede dehnt sich über ihre eigene Höhe von den Füßen bis zur Welle.
    .turn-wrong-coefficient = Sie haben den Koeffizienten der anderen Maschine benutzt; jede richtet sich nach ihrem eigenen Werkstoff.
    .turn-halved = Sie haben die Höhe halbiert; die Welle steigt um die Dehnung der ganzen Höhe ab den Füßen.

relation-align-target-front-growth = Kaltvorgabe über den vorderen Füßen
    .limits = positiv: die Motorwelle wird kalt hoch gestellt; das Getriebe dehnt sich an beiden Enden gleich
    .source = Geometrie ähnlicher Dreiecke
    .turn-wrong-sign = Sie haben verkehrt herum vorgegeben; die Maschine, die sich mehr dehnt, wird kalt tief gestellt.
    .turn-own-growth-only = Sie haben nur die Wärmedehnung des Motors berücksichtigt; auch das Getriebe dehnt sich, und die Differenz zählt.
    .turn-reducer-s-growth-only = Sie haben nur die Wärmedehnung des Getriebes berücksichtigt; auch der Motor dehnt sich, und die Differenz zählt.
    .turn-added = Sie haben die beiden Wärmedehnungen zusammengezählt; beide Wellen steigen, es zählt also ihre Differenz.
    .turn-other-end = Sie haben die Wärmedehnung am anderen Fußpaar benutzt; vorn und hinten gilt jeweils die eigene.

relation-align-target-rear-growth = Kaltvorgabe über den hinteren Füßen
    .limits = positiv: die Motorwelle wird kalt hoch gestellt; das Getriebe dehnt sich an beiden Enden gleich
    .source = Geometrie ähnlicher Dreiecke
    .turn-wrong-sign = Sie haben verkehrt herum vorgegeben; die Maschine, die sich mehr dehnt, wird kalt tief gestellt.
    .turn-own-growth-only = Sie haben nur die Wärmedehnung des Motors berücksichtigt; auch das Getriebe dehnt sich, und die Differenz zählt.
    .turn-reducer-s-growth-only = Sie haben nur die Wärmedehnung des Getriebes berücksichtigt; auch der Motor dehnt sich, und die Differenz zählt.
    .turn-added = Sie haben die beiden Wärmedehnungen zusammengezählt; beide Wellen steigen, es zählt also ihre Differenz.
    .turn-other-end = Sie haben die Wärmedehnung am anderen Fußpaar benutzt; vorn und hinten gilt jeweils die eigene.

relation-align-shim-front-cold-target = Änderung der Unterlegbleche unter den vorderen Füßen
    .limits = positiv: Bleche unterlegen; beide Füße des Paars gleich, ein Kippfuß vorher behoben
    .source = Geometrie ähnlicher Dreiecke
    .turn-growth-left-out = Sie haben die Wellen kalt zum Fluchten gebracht; warm wandern sie auseinander, gehen Sie also weiter bis zur Kaltvorgabe.
    .turn-growth-the-wrong-way = Sie haben die Kaltvorgabe abgezogen; eine Welle, die kalt hoch stehen soll, braucht mehr unter ihren Füßen.
    .turn-target-alone = Sie haben nur die Wärmedehnung berücksichtigt; zuerst muss die Welle von dort weg, wo sie steht.
    .turn-wrong-sign = Sie haben das Vorzeichen der Verschiebung umgekehrt; eine Welle, die hoch steht, kommt herunter.
    .turn-other-feet = Sie haben die Verschiebung des anderen Fußpaars benutzt; vorn und hinten gilt jeweils die eigene.

relation-align-shim-rear-cold-target = Änderung der Unterlegbleche unter den hinteren Füßen
    .limits = positiv: Bleche unterlegen; beide Füße des Paars gleich, ein Kippfuß vorher behoben
    .source = Geometrie ähnlicher Dreiecke
    .turn-growth-left-out = Sie haben die Wellen kalt zum Fluchten gebracht; warm wandern sie auseinander, gehen Sie also weiter bis zur Kaltvorgabe.
    .turn-growth-the-wrong-way = Sie haben die Kaltvorgabe abgezogen; eine Welle, die kalt hoch stehen soll, braucht mehr unter ihren Füßen.
    .turn-target-alone = Sie haben nur die Wärmedehnung berücksichtigt; zuerst muss die Welle von dort weg, wo sie steht.
    .turn-wrong-sign = Sie haben das Vorzeichen der Verschiebung umgekehrt; eine Welle, die hoch steht, kommt herunter.
    .turn-other-feet = Sie haben die Verschiebung des anderen Fußpaars benutzt; vorn und hinten gilt jeweils die eigene.

relation-align-way-front-v-sign = Was mit den Unterlegblechen unter den vorderen Füßen zu tun ist
    .method = Eine Änderung, die nicht größer ist als die kleinste, die sich lohnt, unterbleibt. Sonst heißt positiv Bleche unterlegen, negativ Bleche herausnehmen.
    .limits = wenige dicke Bleche statt vieler dünner
    .turn-wrong-way = Sie haben die falsche Richtung genommen; eine positive Änderung hebt die Füße, also werden Bleche untergelegt.
    .turn-growth-left-out = Sie haben die Wärmedehnung weggelassen; die Füße gehen bis zur Kaltvorgabe, nicht dahin, wo die Wellen kalt fluchten.

relation-align-way-rear-v-sign = Was mit den Unterlegblechen unter den hinteren Füßen zu tun ist
    .method = Eine Änderung, die nicht größer ist als die kleinste, die sich lohnt, unterbleibt. Sonst heißt positiv Bleche unterlegen, negativ Bleche herausnehmen.
    .limits = wenige dicke Bleche statt vieler dünner
    .turn-wrong-way = Sie haben die falsche Richtung genommen; eine positive Änderung hebt die Füße, also werden Bleche untergelegt.
    .turn-growth-left-out = Sie haben die Wärmedehnung weggelassen; die Füße gehen bis zur Kaltvorgabe, nicht dahin, wo die Wellen kalt fluchten.
