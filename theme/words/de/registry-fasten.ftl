## Größen, Beziehungen, ihre Quellen und Fehler: Schrauben, Passfedern und Spannbuchsen

quantity-fasten-thread = Gewinde der Schraube
    .choice-1 = 1/4-20
    .choice-2 = 5/16-18
    .choice-3 = 3/8-16
    .choice-4 = 7/16-14
    .choice-5 = 1/2-13
    .choice-6 = 9/16-12
    .choice-7 = 5/8-11
    .choice-8 = 3/4-10
    .choice-9 = 7/8-9
    .choice-10 = 1-8
    .choice-11 = 1 1/8-7
    .choice-12 = 1 1/4-7
    .choice-13 = 1 1/2-6
    .choice-14 = 1/4-28
    .choice-15 = 5/16-24
    .choice-16 = 3/8-24
    .choice-17 = 7/16-20
    .choice-18 = 1/2-20
    .choice-19 = 9/16-18
    .choice-20 = 5/8-18
    .choice-21 = 3/4-16
    .choice-22 = 7/8-14
    .choice-23 = 1-12
    .choice-24 = 1 1/8-12
    .choice-25 = 1 1/4-12
    .choice-26 = 1 3/8-12
    .choice-27 = 1 1/2-12
    .choice-28 = M5
    .choice-29 = M6
    .choice-30 = M8
    .choice-31 = M10
    .choice-32 = M12
    .choice-33 = M14
    .choice-34 = M16
    .choice-35 = M18
    .choice-36 = M20
    .choice-37 = M22
    .choice-38 = M24
    .choice-39 = M27
    .choice-40 = M30
    .choice-41 = M36

quantity-fasten-grade = Grade oder Festigkeitsklasse nach der Kennzeichnung auf dem Schraubenkopf
    .choice-1 = Grade 1
    .choice-2 = Grade 2
    .choice-3 = Grade 4
    .choice-4 = Grade 5
    .choice-5 = Grade 5.2
    .choice-6 = Grade 7
    .choice-7 = Grade 8
    .choice-8 = Grade 8.2
    .choice-9 = Klasse 4.6
    .choice-10 = Klasse 4.8
    .choice-11 = Klasse 5.8
    .choice-12 = Klasse 8.8
    .choice-13 = Klasse 9.8
    .choice-14 = Klasse 10.9
    .choice-15 = Klasse 12.9

quantity-fasten-lubrication = Zustand von Gewinde und Auflagefläche der Schraube
    .choice-1 = trocken
    .choice-2 = geschmiert

quantity-fasten-bolt-dia = Nenndurchmesser der Schraube

quantity-fasten-pitch = Gewindesteigung der Schraube

quantity-fasten-stress-area = Spannungsquerschnitt der Schraube

quantity-fasten-proof = Prüfspannung der Schraube

quantity-fasten-nut-factor = Reibfaktor K

quantity-fasten-proof-share = angestrebter Anteil der Prüfkraft

quantity-fasten-preload = Vorspannkraft der Schraube

quantity-fasten-torque = Anziehdrehmoment der Schraube

quantity-fasten-card-lubrication = Zustand der Schrauben, für den die Anziehkarte geschrieben ist
    .choice-1 = trocken
    .choice-2 = geschmiert

quantity-fasten-card-torque = Drehmoment auf der Anziehkarte

quantity-fasten-card-pull = Zugkraft in der Schraube beim Drehmoment der Karte

quantity-fasten-card-stress = Spannung in der Schraube beim Drehmoment der Karte

quantity-fasten-proof-used = vom Drehmoment der Karte ausgenutzter Anteil der Prüfspannung

quantity-fasten-proof-least = kleinster zulässiger Anteil der Prüfspannung

quantity-fasten-proof-most = größter zulässiger Anteil der Prüfspannung

quantity-fasten-bolt-verdict = Urteil über die angezogene Schraube
    .choice-1 = innerhalb der Grenzen
    .choice-2 = zu locker: nachziehen
    .choice-3 = zu fest: neue Schraube einsetzen

quantity-fasten-bolt-lost = seit dem Anziehen verlorener Anteil des Drehmoments der Fußschraube

quantity-fasten-bolt-found = bei der Prüfung vorgefundenes Drehmoment der Fußschraube

quantity-fasten-loss-limit = größter zulässiger Verlust an Drehmoment

quantity-fasten-base-verdict = Urteil über die Fußschraube bei der Prüfung
    .choice-1 = fest genug
    .choice-2 = der Reihe nach nachziehen

quantity-fasten-grip = Klemmlänge der Schraube

quantity-fasten-elasticity = Elastizitätsmodul der Schraube

quantity-fasten-stretch = Längung der Schraube

quantity-fasten-turn = Drehwinkel der Mutter ab satter Auflage

quantity-fasten-outside-load = äußere Zugkraft auf eine Schraube

quantity-fasten-joint-share = Anteil einer äußeren Zugkraft, der in die Schraube geht

quantity-fasten-bolt-pull = Zugkraft in der Schraube unter der äußeren Last

quantity-fasten-area-needed = Spannungsquerschnitt, den die äußere Zugkraft verlangt

quantity-fasten-bolts = Zahl der Schrauben im Kreis

quantity-fasten-turn-place = Platz in der Anziehreihenfolge

quantity-fasten-bolt-at-place = Nummer der Schraube an diesem Platz

quantity-fasten-stage-share = Anteil des vollen Drehmoments in diesem Durchgang

quantity-fasten-stage-torque = Drehmoment dieses Durchgangs

quantity-fasten-key-series = Reihe der Passfeder
    .choice-1 = metrische Passfeder
    .choice-2 = quadratische Passfeder in Zoll

quantity-fasten-key-width = Breite der Passfeder

quantity-fasten-key-height = Höhe der Passfeder

quantity-fasten-key-fill = Länge der Passfeder als Anteil der größten sinnvollen

quantity-fasten-key-longest = größte sinnvolle Länge der Passfeder

quantity-fasten-key-length = tragende Länge der Passfeder

quantity-fasten-key-force = Kraft auf die Passfeder

quantity-fasten-key-shear = Scherspannung in der Passfeder

quantity-fasten-key-bearing = Flächenpressung zwischen Passfeder und Nut

quantity-fasten-key-yield = Streckgrenze des schwächsten Teils von Passfeder, Welle und Nabe

quantity-fasten-key-shear-strength = Scherfestigkeit der Passfeder

quantity-fasten-key-factor = Sicherheit der Passfeder

quantity-fasten-key-length-shear = gegen Abscheren nötige Länge der Passfeder

quantity-fasten-key-length-bearing = wegen der Flächenpressung nötige Länge der Passfeder

quantity-fasten-key-length-needed = nötige Länge der Passfeder

quantity-fasten-key-governs = Beanspruchung, die die Länge der Passfeder bestimmt
    .choice-1 = Abscheren
    .choice-2 = Flächenpressung

quantity-fasten-key-verdict = Urteil über die Länge der Passfeder
    .choice-1 = lang genug
    .choice-2 = zu kurz

quantity-fasten-key-slack = Spiel der Passfeder in ihrer Nut, negativ bei zu breiter Passfeder

quantity-fasten-keyway = gemessene Breite der Nabennut

quantity-fasten-key-found = gemessene Breite der Passfeder

quantity-fasten-slack-limit = größtes zulässiges Spiel der Passfeder

quantity-fasten-key-fit = Urteil über den Sitz der Passfeder
    .choice-1 = sie passt
    .choice-2 = zu lose: neue Passfeder einsetzen
    .choice-3 = zu breit: richtige Passfeder einsetzen

quantity-fasten-taper = Kegelverhältnis der Spannbuchse, auf den Durchmesser bezogen

quantity-fasten-clearance = Spiel der losen Spannbuchse auf der Welle

quantity-fasten-loose-gap = Spalt zwischen Flansch und Nabe vor dem Anziehen

quantity-fasten-draw = Einzug der Spannbuchse, bis sie greift

quantity-fasten-gap-left = verbleibender Spalt zwischen Flansch und Nabe

quantity-fasten-gap-least = kleinster Spalt, der zwischen Flansch und Nabe bleiben muss

quantity-fasten-gap-verdict = Urteil über den Spalt der Spannbuchse
    .choice-1 = der Kegel greift
    .choice-2 = anhalten: der Flansch nimmt die Schraubenkraft auf

quantity-fasten-screws = Zahl der Schrauben der Spannbuchse

quantity-fasten-screw-dia = Nenndurchmesser einer Schraube der Spannbuchse

quantity-fasten-screw-torque = Drehmoment einer Schraube der Spannbuchse

quantity-fasten-screw-pull = Zugkraft aller Schrauben der Spannbuchse zusammen

quantity-fasten-torque-lost = im ersten Lauf verlorener Anteil des Drehmoments der Buchsenschrauben

quantity-fasten-torque-found = nach dem ersten Lauf vorgefundenes Drehmoment der Buchsenschrauben

quantity-fasten-screw-verdict = Urteil über die Schrauben der Spannbuchse nach dem ersten Lauf
    .choice-1 = fest genug
    .choice-2 = der Reihe nach nachziehen

quantity-fasten-flange-uneven = Unterschied zwischen weitestem und engstem Spalt rings um den Flansch der Spannbuchse

quantity-fasten-flange-gap-widest = weitester Spalt rings um den Flansch der Spannbuchse

quantity-fasten-flange-gap-narrowest = engster Spalt rings um den Flansch der Spannbuchse

quantity-fasten-flange-dia = Durchmesser des Flansches der Spannbuchse

quantity-fasten-rim-wobble = Planschlag am Teilkreis des Kettenrads

relation-fasten-bolt-dia-thread = Nenndurchmesser der Schraube
    .method = Die erste Zahl der Gewindebezeichnung: 3/4-10 heißt 3/4 in, M20 heißt 20 mm.
    .place = Nenndurchmesser
    .turn-radius = Sie haben den Radius angegeben; der Nenndurchmesser ist das Maß, nach dem das Gewinde heißt.
    .turn-across-flats = Sie haben die Schlüsselweite des Kopfes angegeben; die Schraube heißt nach dem Durchmesser über ihrem Gewinde.
    .turn-pitch = Sie haben die Steigung angegeben; der Durchmesser ist die erste Zahl der Gewindebezeichnung.

relation-fasten-pitch-thread = Gewindesteigung der Schraube
    .method = Die Bezeichnung eines Zollgewindes endet mit der Zahl der Gänge je Zoll: Die Steigung ist ein Zoll durch diese Zahl. Die Steigung eines metrischen Regelgewindes wird nachgeschlagen.
    .place = Gänge je Zoll und Steigungen der Regelgewinde (die metrischen aus dem Gedächtnis)
    .turn-other-series = Sie haben die Steigung der anderen Reihe genommen; Regel- und Feingewinde desselben Durchmessers haben verschiedene Steigungen.
    .turn-double-thread = Sie haben zwei Steigungen genommen; eine Schraube hat ein eingängiges Gewinde und rückt je Umdrehung um eine Steigung vor.

relation-fasten-stress-area-thread = Spannungsquerschnitt der Schraube
    .method = Schlagen Sie das Gewinde nach, oder rechnen Sie π/4 (d − 0,9743 P)² bei Zollgewinden und π/4 (d − 0,9382 P)² bei metrischen.
    .place = Tabelle 8-2; Spannungsquerschnitt des Gewindes
    .turn-whole-area = Sie haben den ganzen Querschnitt des Schafts genommen; das Gewinde ist hineingeschnitten, nehmen Sie also den Spannungsquerschnitt.
    .turn-root-area = Sie haben den Kernquerschnitt genommen; der Spannungsquerschnitt ist etwas größer.
    .turn-radius = Sie haben den Radius eingesetzt, wo die Formel den Durchmesser verlangt, so kam nur ein Viertel der Fläche heraus.
    .turn-other-series = Sie haben die andere Reihe genommen; ein Feingewinde hat mehr Querschnitt als ein Regelgewinde desselben Durchmessers.

relation-fasten-proof-grade = Prüfspannung der Schraube
    .method = Suchen Sie die Kennzeichnung des Kopfes und die Zeile für den Durchmesser der Schraube, in der Spalte der Prüfspannung.
    .limits = Zollgewinde tragen Grades, metrische Gewinde Festigkeitsklassen; eine Schraube ohne Kennzeichnung gilt als die schwächste
    .place = Prüfspannung (Klasse 8.8 bis 16 mm aus dem Gedächtnis)
    .turn-tensile-strength = Sie haben die Zugfestigkeit genommen, bei der die Schraube bricht; die Prüfspannung ist, was sie ohne bleibende Längung trägt.
    .turn-yield-strength = Sie haben die Streckgrenze genommen; die Prüfspannung steht in einer eigenen Spalte und ist niedriger.
    .turn-nominal-yield-of-the-class = Sie haben die beiden Zahlen der Klasse miteinander malgenommen; das ergibt die Nennstreckgrenze, und die Prüfspannung ist niedriger.
    .turn-other-family = Sie haben Grades der Zollschrauben und metrische Klassen verwechselt; Grade 8 und Klasse 8.8 sind nicht derselbe Stahl.
    .turn-stronger-bolt = Sie haben die Prüfspannung einer stärkeren Schraube abgelesen; vergleichen Sie die Kennzeichnung des Kopfes mit der Tabelle.
    .turn-weaker-bolt = Sie haben die Prüfspannung einer schwächeren Schraube abgelesen; vergleichen Sie die Kennzeichnung des Kopfes mit der Tabelle.
    .turn-row-of-other-sizes = Sie haben die Zeile für andere Größen genommen; dieselbe Festigkeit ist je nach Durchmesser schwächer oder stärker.

relation-fasten-nut-factor-lubrication = Reibfaktor K der Schraube, wie sie eingesetzt ist
    .method = 0,20 für eine trockene Schraube, 0,15 für eine geschmierte.
    .limits = die Reibung streut um ein Viertel nach oben und unten; ein Wert des Herstellers geht vor
    .turn-other-state = Sie haben den Reibfaktor des anderen Zustands genommen; eine geschmierte Schraube braucht für dieselbe Zugkraft weniger Drehmoment als eine trockene.
    .turn-unplated-black-bolt = Sie haben den Reibfaktor einer unbeschichteten schwarzen Schraube genommen, 0,30; die beiden hier benutzten Werte sind 0,20 trocken und 0,15 geschmiert.

relation-fasten-preload-proof = Vorspannkraft der Schraube aus Prüfspannung und Spannungsquerschnitt
    .limits = 0,75 der Prüfkraft bei Schrauben, die wieder ausgebaut werden
    .place = Kapitel 8
    .turn-whole-proof-load = Sie haben die Schraube mit ihrer ganzen Prüfkraft belastet; angestrebt wird der verlangte Anteil.
    .turn-share-divided = Sie haben durch den Anteil der Prüfkraft geteilt; nehmen Sie mit ihm mal.

relation-fasten-torque-preload = Anziehdrehmoment der Schraube
    .limits = streut um ein Viertel nach oben und unten; ein Drehmoment des Herstellers geht vor
    .place = Kapitel 8
    .turn-dry-torque = Sie haben den Reibfaktor einer trockenen Schraube benutzt; an einer geschmierten zieht dieses Drehmoment um ein Drittel zu stark.
    .turn-lubricated-torque = Sie haben den Reibfaktor einer geschmierten Schraube benutzt; eine trockene bleibt bei diesem Drehmoment um ein Viertel zu locker.
    .turn-radius = Sie haben den Radius benutzt; in die Formel K D F gehört der Nenndurchmesser.
    .turn-nut-factor-left-out = Sie haben den Reibfaktor weggelassen; das Drehmoment ist K mal Durchmesser mal Vorspannkraft.
    .turn-pitch = Sie haben die Steigung benutzt; in die Formel K D F gehört der Nenndurchmesser.

relation-fasten-preload-torque = Vorspannkraft, die ein Anziehdrehmoment ergibt
    .place = Kapitel 8
    .turn-radius = Sie haben den Radius benutzt; in die Formel gehört der Nenndurchmesser.
    .turn-nut-factor-left-out = Sie haben den Reibfaktor weggelassen; teilen Sie durch K und durch den Durchmesser.
    .turn-dry-bolt = Sie haben den Reibfaktor einer trockenen Schraube benutzt; diese ist geschmiert und wird stärker gezogen.
    .turn-lubricated-bolt = Sie haben den Reibfaktor einer geschmierten Schraube benutzt; diese ist trocken und wird weniger gezogen.

relation-fasten-card-torque-state = Drehmoment auf der Karte für den Zustand, für den sie geschrieben ist
    .method = Das Drehmoment K D F mit dem Reibfaktor des Zustands, den die Karte nennt.
    .place = Kapitel 8

relation-fasten-card-pull-torque = Zugkraft, die das Drehmoment der Karte in der Schraube ergibt, wie sie eingesetzt ist
    .place = Kapitel 8
    .turn-card-s-state = Sie haben den Reibfaktor benutzt, für den die Karte geschrieben ist; welche Zugkraft das Drehmoment ergibt, hängt vom Zustand der Schraube selbst ab.
    .turn-radius = Sie haben den Radius benutzt; in die Formel gehört der Nenndurchmesser.
    .turn-nut-factor-left-out = Sie haben den Reibfaktor weggelassen; teilen Sie durch K und durch den Durchmesser.

relation-fasten-card-stress-pull = Spannung in der Schraube aus ihrer Zugkraft
    .source = Definition der Spannung
    .turn-preload-aimed-at = Sie haben die angestrebte Vorspannkraft benutzt; hierher gehört die Zugkraft, die das Drehmoment der Karte wirklich ergibt.

relation-fasten-proof-used-stress = Ausgenutzter Anteil der Prüfspannung
    .source = Definition eines Anteils
    .turn-turned-over = Sie haben die Prüfspannung durch die Spannung geteilt; der ausgenutzte Anteil ist die Spannung durch die Prüfspannung.
    .turn-tensile-strength = Sie haben mit der Zugfestigkeit verglichen; schon ab der Prüfspannung längt sich die Schraube bleibend.
    .turn-share-aimed-at = Sie haben den angestrebten Anteil angegeben; rechnen Sie aus, was das Drehmoment der Karte wirklich bewirkt.

relation-fasten-bolt-verdict-limits = Urteil über die angezogene Schraube
    .method = Halten Sie den ausgenutzten Anteil der Prüfspannung gegen den kleinsten und den größten zulässigen; ein Wert genau auf einer Grenze liegt innerhalb.
    .limits = höchstens etwa 0,9 der Prüfspannung bei Verbindungen, die zusammenbleiben, übliche Praxis; eine über die Prüfspannung gezogene Schraube wird nicht wieder verwendet
    .turn-card-trusted = Sie haben der Karte vertraut; ihr Drehmoment gilt für einen anderen Zustand, rechnen Sie also aus, was es an dieser Schraube bewirkt.
    .turn-turned-round = Sie haben locker und fest vertauscht; eine geschmierte Schraube wird vom selben Drehmoment stärker gezogen, eine trockene weniger.
    .turn-tensile-strength = Sie haben nach der Zugfestigkeit geurteilt; die Grenzen sind Anteile der Prüfspannung.
    .turn-lower-limit-left-out = Sie haben nur auf die obere Grenze gesehen; eine Schraube, die zu wenig zieht, lockert sich.

relation-fasten-stretch-hooke = Längung der Schraube über ihre Klemmlänge
    .limits = Gewinde über die ganze Klemmlänge; auch die Verbindung selbst gibt nach, das ist weggelassen
    .place = Beispiel 6.2, S. 121
    .turn-diameter-for-grip = Sie haben den Schraubendurchmesser als Länge benutzt; was sich längt, ist die Klemmlänge.

relation-fasten-turn-stretch = Drehwinkel der Mutter ab satter Auflage
    .limits = die Verbindung gilt als starr; gezählt wird ab satter Auflage
    .place = Beispiel 6.2, S. 121
    .turn-half-a-turn-for-a-pitch = Sie haben 180° für eine Steigung gerechnet; die Mutter rückt mit einer ganzen Umdrehung von 360° um eine Steigung vor.
    .turn-diameter-for-pitch = Sie haben durch den Durchmesser geteilt; die Mutter rückt je Umdrehung um eine Steigung vor.

relation-fasten-bolt-pull-joint = Zugkraft in der Schraube unter einer äußeren Last
    .limits = solange die Verbindung geschlossen bleibt
    .place = Beispiel 8-3, S. 439
    .turn-whole-load-added = Sie haben die ganze äußere Last dazugezählt; in einer festen Verbindung geht nur ein Anteil davon in die Schraube.
    .turn-load-alone = Sie haben nur die äußere Last angegeben; die Vorspannkraft bleibt in der Schraube.
    .turn-members-share = Sie haben den Anteil dazugezählt, den die verspannten Teile übernehmen; die Schraube übernimmt den Rest.
    .turn-taken-off = Sie haben den Anteil der Last abgezogen; eine äußere Zugkraft kommt zur Vorspannkraft der Schraube hinzu.
    .turn-preload-alone = Sie haben nur die Vorspannkraft angegeben; ein Teil der äußeren Last kommt hinzu.

relation-fasten-area-needed-load = Spannungsquerschnitt, den die äußere Zugkraft verlangt
    .place = Kapitel 19
    .turn-whole-proof-stress = Sie haben die ganze Prüfspannung zugelassen; zulässig ist der angestrebte Anteil davon.
    .turn-share-multiplied = Sie haben die Fläche mit dem Anteil malgenommen; eine kleinere zulässige Spannung braucht mehr Fläche, teilen Sie also durch ihn.

relation-fasten-bolt-at-place-star = Schraube an einem Platz der Reihenfolge über Kreuz
    .method = Nummerieren Sie die Schrauben rings im Kreis und beginnen Sie mit Schraube 1. Eine gerade Zahl geht in gegenüberliegenden Paaren, jedes Paar in der weitesten Lücke, die noch bleibt; bei einer ungeraden Zahl geht es jeweils um knapp einen halben Kreis weiter.
    .limits = 3 Schrauben oder mehr; alle Schrauben in Durchgängen anziehen und mit vollem Drehmoment noch einmal rings herum
    .turn-round-the-circle = Sie sind rings im Kreis gegangen; das verkantet das Teil und lockert die ersten Schrauben, gehen Sie also über Kreuz.
    .turn-next-place = Sie haben die Schraube nach dieser angegeben; die erste Schraube zählt als Platz eins.
    .turn-place-before = Sie haben die Schraube vor dieser angegeben; die erste Schraube zählt als Platz eins.
    .turn-backwards = Sie sind rückwärts im Kreis gegangen; gehen Sie über Kreuz, jede Schraube gegenüber der vorigen.
    .turn-every-other-bolt = Sie haben jedes Mal eine Schraube übersprungen; gehen Sie zur gegenüberliegenden, dann in die weiteste Lücke zwischen angezogenen.

relation-fasten-stage-torque-share = Drehmoment dieses Durchgangs
    .limits = übliche Durchgänge: 30 %, 70 %, 100 % und noch einmal rings herum mit 100 %
    .turn-full-torque-at-once = Sie haben das volle Drehmoment angegeben; die ersten Durchgänge ziehen das Teil mit einem Anteil davon gleichmäßig an.
    .turn-what-is-left = Sie haben angegeben, was zum vollen Drehmoment noch fehlt; der Schlüssel wird auf den Anteil dieses Durchgangs eingestellt.
    .turn-share-divided = Sie haben durch den Anteil geteilt; nehmen Sie mit ihm mal.

relation-fasten-bolt-found-lost = Bei der Prüfung vorgefundenes Drehmoment der Fußschraube
    .source = Definition eines Anteils

relation-fasten-bolt-lost-found = Seit dem Anziehen verlorener Anteil des Drehmoments der Fußschraube
    .limits = am Schlüssel abgelesen, wenn sich die Schraube in Anziehrichtung gerade weiterdreht
    .turn-share-kept = Sie haben den Anteil angegeben, der geblieben ist; der Verlust ist, was am eingestellten Drehmoment fehlt.
    .turn-over-the-torque-found = Sie haben durch das vorgefundene Drehmoment geteilt; ein Verlust ist ein Anteil des eingestellten.
    .turn-bushing-screw-s-torque = Sie haben mit dem Drehmoment der Buchsenschrauben verglichen; eine Fußschraube wird nach ihrer eigenen Karte angezogen.

relation-fasten-base-verdict-limit = Urteil über die Fußschraube bei der Prüfung
    .method = Verlust über der Grenze: nachziehen, über Kreuz, bei freigeschaltetem und gegen Wiedereinschalten gesichertem Antrieb. Ein Verlust auf der Grenze besteht.
    .limits = die Grenze ist eine eigene dieses Kurses oder die des Herstellers; eine Schraube, die ein zweites Mal Drehmoment verliert, hat einen anderen Fehler
    .turn-share-kept = Sie haben den Anteil, der geblieben ist, gegen die Grenze gehalten; die Grenze gilt für den Anteil, der fehlt.
    .turn-turned-round = Sie haben die Grenze verkehrt herum genommen; ein Verlust darüber heißt, dass die Schrauben nachgezogen werden.
    .turn-other-screws = Sie haben die anderen Schrauben beurteilt; Fußschrauben und Buchsenschrauben setzen sich jede auf ihre Weise.

relation-fasten-screw-verdict-limit = Urteil über die Schrauben der Spannbuchse nach dem ersten Lauf
    .method = Verlust über der Grenze: nachziehen, über Kreuz, bei freigeschaltetem und gegen Wiedereinschalten gesichertem Antrieb. Ein Verlust auf der Grenze besteht.
    .limits = die Grenze ist eine eigene dieses Kurses oder die des Herstellers; eine Schraube, die ein zweites Mal Drehmoment verliert, hat einen anderen Fehler
    .turn-share-kept = Sie haben den Anteil, der geblieben ist, gegen die Grenze gehalten; die Grenze gilt für den Anteil, der fehlt.
    .turn-turned-round = Sie haben die Grenze verkehrt herum genommen; ein Verlust darüber heißt, dass die Schrauben nachgezogen werden.
    .turn-other-screws = Sie haben die anderen Schrauben beurteilt; Fußschrauben und Buchsenschrauben setzen sich jede auf ihre Weise.

relation-fasten-key-width-shaft = Breite der Passfeder nach der Welle
    .method = Suchen Sie die Zeile, in deren Bereich der Wellendurchmesser fällt: über der ersten Zahl, bis einschließlich der zweiten.
    .limits = metrische Passfedern: Wellen über 6 bis 230 mm; quadratische Passfedern in Zoll: über 5/16, vorzugsweise bis 6 1/2 in
    .place = Passfedermaße nach dem Wellendurchmesser
    .turn-row-above = Sie haben die Zeile der nächstgrößeren Wellen genommen; eine Welle am oberen Ende einer Zeile gehört noch zu ihr.
    .turn-row-below = Sie haben die Zeile der nächstkleineren Wellen genommen; jede Zeile beginnt über ihrem ersten Durchmesser.
    .turn-radius = Sie sind mit dem Radius in die Tabelle gegangen; sie richtet sich nach dem Wellendurchmesser.
    .turn-height = Sie haben die Höhe der Passfeder angegeben; die Breite liegt quer zur Nut.

relation-fasten-key-height-shaft = Höhe der Passfeder nach der Welle
    .method = Suchen Sie die Zeile, in deren Bereich der Wellendurchmesser fällt. Eine quadratische Passfeder ist so hoch wie breit.
    .place = Passfedermaße nach dem Wellendurchmesser
    .turn-row-above = Sie haben die Zeile der nächstgrößeren Wellen genommen; eine Welle am oberen Ende einer Zeile gehört noch zu ihr.
    .turn-row-below = Sie haben die Zeile der nächstkleineren Wellen genommen; jede Zeile beginnt über ihrem ersten Durchmesser.
    .turn-radius = Sie sind mit dem Radius in die Tabelle gegangen; sie richtet sich nach dem Wellendurchmesser.
    .turn-width = Sie haben die Breite der Passfeder angegeben; größere metrische Passfedern sind niedriger als breit.
    .turn-half-in-the-shaft = Sie haben den Teil angegeben, der aus der Welle herausragt; die Höhe ist die der ganzen Passfeder.
    .turn-rectangular-key = Sie haben die Höhe der rechteckigen Passfeder genommen; diese Passfeder ist quadratisch.

relation-fasten-key-longest-shaft = Größte sinnvolle Länge der Passfeder
    .limits = eine längere Passfeder verteilt die Last nicht über ihre Länge; die Länge der Nabe lässt vielleicht weniger zu
    .place = Kapitel 7
    .turn-radius = Sie haben den Radius benutzt; die Regel richtet sich nach dem Wellendurchmesser.
    .turn-diameter-itself = Sie haben den Wellendurchmesser angegeben; die Passfeder darf anderthalbmal so lang sein.
    .turn-divided = Sie haben durch anderthalb geteilt; nehmen Sie damit mal.

relation-fasten-key-length-fill = Länge der eingesetzten Passfeder
    .method = Der Anteil der längsten Passfeder, für den die Nabe Platz lässt.

relation-fasten-key-force-torque = Kraft auf die Passfeder an der Wellenoberfläche
    .source = Statik: Drehmoment durch den Wellenradius
    .turn-diameter-for-radius = Sie haben das Drehmoment durch den Durchmesser geteilt; sein Hebelarm ist der Radius, also ist die Kraft doppelt so groß.
    .turn-radius-for-diameter = Sie haben den Radius eingesetzt, wo die Formel den Durchmesser verlangt; die 2 darin hat den Durchmesser schon halbiert.
    .turn-motor-torque = Sie haben das Drehmoment des Motors benutzt; die Passfeder sitzt auf der Abtriebswelle und überträgt deren Drehmoment.
    .turn-sprocket = Sie haben den Teilkreisdurchmesser des Kettenrads benutzt; die Passfeder überträgt die Kraft an der Wellenoberfläche.

relation-fasten-key-shear-torque = Scherspannung in der Passfeder
    .limits = tragende Länge, ohne die runden Enden; das schwächste Teil von Passfeder, Welle und Nabe
    .place = S. 499-500
    .turn-diameter-for-radius = Sie haben das Drehmoment durch den Durchmesser geteilt; sein Hebelarm ist der Radius, also ist die Spannung doppelt so groß.
    .turn-radius-for-diameter = Sie haben den Radius eingesetzt, wo die Formel den Durchmesser verlangt; die 2 darin hat den Durchmesser schon halbiert.
    .turn-cross-section = Sie haben Breite mal Höhe benutzt; die Passfeder wird längs abgeschert, nehmen Sie also Breite mal Länge.
    .turn-motor-torque = Sie haben das Drehmoment des Motors benutzt; die Passfeder sitzt auf der Abtriebswelle und überträgt deren Drehmoment.

relation-fasten-key-bearing-torque = Flächenpressung zwischen Passfeder und Nut
    .limits = die halbe Höhe trägt in der Welle, die halbe in der Nabe; tragende Länge, ohne die runden Enden
    .place = S. 499-500
    .turn-whole-height = Sie haben die ganze Höhe der Passfeder benutzt; nur die Hälfte trägt in der Welle und die Hälfte in der Nabe.
    .turn-radius-for-diameter = Sie haben den Radius eingesetzt, wo die Formel den Durchmesser verlangt; die 4 darin hat den Durchmesser schon halbiert.
    .turn-cross-section = Sie haben Breite und Höhe benutzt; die Passfeder trägt auf ihrer Länge, über ihre halbe Höhe.
    .turn-motor-torque = Sie haben das Drehmoment des Motors benutzt; die Passfeder sitzt auf der Abtriebswelle und überträgt deren Drehmoment.

relation-fasten-key-shear-strength-half = Scherfestigkeit der Passfeder
    .limits = nach der Schubspannungshypothese; die Gestaltänderungsenergiehypothese lässt 0,577 zu
    .place = Beispiel 15.1, S. 332
    .turn-tension-strength = Sie haben die Streckgrenze bei Zug benutzt; bei Scherung gibt Stahl schon bei der Hälfte davon nach.
    .turn-doubled = Sie haben die Streckgrenze verdoppelt; bei Scherung gibt Stahl schon bei der Hälfte davon nach.

relation-fasten-key-length-shear-strength = Gegen Abscheren nötige Länge der Passfeder
    .limits = tragende Länge, ohne die runden Enden; das schwächste Teil von Passfeder, Welle und Nabe
    .place = Beispiel 15.1, S. 332
    .turn-factor-left-out = Sie haben die Sicherheit weggelassen; sie macht die Passfeder länger.
    .turn-factor-divided = Sie haben durch die Sicherheit geteilt; sie macht die Passfeder länger, nehmen Sie also mit ihr mal.
    .turn-diameter-for-radius = Sie haben das Drehmoment durch den Durchmesser geteilt; sein Hebelarm ist der Radius, also wird die Passfeder doppelt so lang.
    .turn-radius-for-diameter = Sie haben den Radius eingesetzt, wo die Formel den Durchmesser verlangt; die 2 darin hat den Durchmesser schon halbiert.
    .turn-motor-torque = Sie haben das Drehmoment des Motors benutzt; die Passfeder sitzt auf der Abtriebswelle und überträgt deren Drehmoment.

relation-fasten-key-length-bearing-strength = Wegen der Flächenpressung nötige Länge der Passfeder
    .limits = tragende Länge, ohne die runden Enden; das schwächste Teil von Passfeder, Welle und Nabe
    .place = Beispiel 15.1, S. 332
    .turn-whole-height = Sie haben die ganze Höhe der Passfeder benutzt; nur die Hälfte trägt in der Welle und die Hälfte in der Nabe.
    .turn-factor-left-out = Sie haben die Sicherheit weggelassen; sie macht die Passfeder länger.
    .turn-factor-divided = Sie haben durch die Sicherheit geteilt; sie macht die Passfeder länger, nehmen Sie also mit ihr mal.
    .turn-shear-strength = Sie haben die Scherfestigkeit benutzt; die Seite der Nut wird gedrückt, nehmen Sie also die Streckgrenze.
    .turn-motor-torque = Sie haben das Drehmoment des Motors benutzt; die Passfeder sitzt auf der Abtriebswelle und überträgt deren Drehmoment.

relation-fasten-key-length-needed-greater = Nötige Länge der Passfeder
    .source = beide Spannungen müssen innerhalb ihrer Festigkeit bleiben
    .turn-smaller = Sie haben die kürzere der beiden Längen genommen; die Passfeder muss beides aushalten, nehmen Sie also die längere.
    .turn-added = Sie haben die beiden Längen zusammengezählt; dieselbe Länge der Passfeder dient beidem, nehmen Sie also die längere.
    .turn-mean = Sie haben das Mittel der beiden Längen genommen; die Passfeder muss beides aushalten, nehmen Sie also die längere.

relation-fasten-key-governs-greater = Beanspruchung, die die Länge der Passfeder bestimmt
    .method = Maßgebend ist die Beanspruchung, die die längere Passfeder verlangt; verlangen beide dasselbe, so gilt die Flächenpressung.
    .source = beide Spannungen müssen innerhalb ihrer Festigkeit bleiben
    .turn-shorter-length = Sie haben die Beanspruchung mit der kürzeren Länge genannt; maßgebend ist die, die die längere Passfeder verlangt.
    .turn-always-shear = Sie haben das Abscheren vorausgesetzt; vergleichen Sie mit der Länge, die die Flächenpressung verlangt.

relation-fasten-key-verdict-length = Urteil über die Länge der Passfeder
    .method = Halten Sie die eingesetzte tragende Länge gegen die nötige; genauso lang ist lang genug.
    .source = beide Spannungen müssen innerhalb ihrer Festigkeit bleiben
    .turn-shear-alone = Sie haben nur nach dem Abscheren geurteilt; die Flächenpressung verlangt eine längere Passfeder.
    .turn-bearing-alone = Sie haben nur nach der Flächenpressung geurteilt; das Abscheren verlangt eine längere Passfeder.
    .turn-longest-key = Sie haben die größte sinnvolle Länge beurteilt; die eingesetzte Passfeder ist kürzer.
    .turn-factor-left-out = Sie haben in der nötigen Länge die Sicherheit weggelassen.

relation-fasten-keyway-key = Gemessene Breite der Nabennut
    .limits = Nut auf die Breite in der Tabelle gefertigt
    .source = eine Passfeder füllt ihre Nut bis auf ihr Spiel

relation-fasten-key-found-slack = Gemessene Breite der Passfeder
    .source = eine Passfeder füllt ihre Nut bis auf ihr Spiel

relation-fasten-key-slack-measured = Spiel der Passfeder in ihrer Nut
    .limits = an beiden Enden der Passfeder gemessen; das kleinere Maß zählt
    .source = eine Passfeder füllt ihre Nut bis auf ihr Spiel
    .turn-turned-round = Sie haben die Nut von der Passfeder abgezogen; Spiel ist, was die Nut mehr hat, also Nut minus Passfeder.
    .turn-one-side = Sie haben das Spiel auf die zwei Seiten verteilt und halbiert; eine Passfeder liegt an einer Seite an, und das ganze Spiel ist auf der anderen.
    .turn-height = Sie haben die Höhe der Passfeder abgezogen; quer in der Nut liegt ihre Breite.

relation-fasten-key-fit-limit = Urteil über den Sitz der Passfeder
    .method = Spiel unter null: zu breit. Spiel über der Grenze: zu lose. Von null bis zur Grenze passt sie.
    .limits = die Grenze ist eine eigene dieses Kurses; die Toleranzen der Zeichnung gehen vor
    .turn-turned-round = Sie haben das Vorzeichen umgekehrt; ein positives Spiel heißt, dass die Passfeder schmaler ist als ihre Nut.
    .turn-wide-passes = Sie haben eine Passfeder durchgehen lassen, die breiter ist als ihre Nut; eingetrieben sprengt sie die Nabe oder drückt sie aus der Mitte.
    .turn-loose-passes = Sie haben eine lose Passfeder durchgehen lassen; sie wackelt bei jedem Start und schlägt ihre Nut aus.

relation-fasten-draw-clearance = Einzug, der das Spiel aufbraucht
    .limits = saubere und trockene Flächen; erst freies Spiel, dann Griff
    .source = Geometrie des Kegels
    .turn-multiplied = Sie haben mit dem Kegelverhältnis malgenommen; die Buchse zieht sich viel weiter ein, als sie sich schließt, teilen Sie also.
    .turn-taper-a-side = Sie haben das Kegelverhältnis für das einer Seite genommen; es ist auf den Durchmesser bezogen.
    .turn-clearance-a-side = Sie haben das halbe Spiel genommen; Kegelverhältnis und Spiel sind beide auf den Durchmesser bezogen.

relation-fasten-clearance-draw = Spiel, das ein Einzug aufbraucht
    .source = Geometrie des Kegels
    .turn-divided = Sie haben durch das Kegelverhältnis geteilt; die Bohrung schließt sich viel weniger, als die Buchse sich einzieht, nehmen Sie also mal.
    .turn-one-side = Sie haben das Spiel einer Seite angegeben; Kegelverhältnis und Spiel sind beide auf den Durchmesser bezogen.
    .turn-both-sides = Sie haben für zwei Seiten verdoppelt; das Kegelverhältnis ist schon auf den Durchmesser bezogen.

relation-fasten-gap-left-draw = Verbleibender Spalt zwischen Flansch und Nabe
    .source = Geometrie: der Flansch bewegt sich so weit, wie sich die Buchse einzieht
    .turn-draw-itself = Sie haben den Einzug angegeben; der verbleibende Spalt ist der Spalt der losen Buchse minus den Einzug.
    .turn-clearance-taken-off = Sie haben das Spiel vom Spalt abgezogen; die Buchse zieht sich weiter ein, um das Spiel durch das Kegelverhältnis.
    .turn-loose-gap = Sie haben den Spalt der losen Buchse angegeben; das Anziehen schließt ihn.
    .turn-added = Sie haben den Einzug dazugezählt; das Anziehen schließt den Spalt.

relation-fasten-gap-verdict-least = Urteil über den Spalt der Spannbuchse
    .method = Rings herum muss mindestens der kleinste Spalt bleiben; genau so viel genügt.
    .limits = der kleinste Spalt nach Hersteller; eine verschlissene oder falsche Buchse oder eine zu dünne Welle schließt ihn
    .turn-closed-is-tight = Sie haben einen geschlossenen Spalt für eine feste Buchse gehalten; liegt der Flansch an, so nimmt er die Schraubenkraft auf, und der Kegel greift nicht.
    .turn-loose-gap-judged = Sie haben den Spalt vor dem Anziehen beurteilt; beurteilen Sie, was davon bleibt.
    .turn-draw-judged = Sie haben den Einzug beurteilt; beurteilen Sie den Spalt, den er übrig lässt.

relation-fasten-screw-pull-torque = Zugkraft aller Schrauben der Spannbuchse zusammen
    .limits = das Drehmoment des Herstellers; Schrauben reihum gleichmäßig angezogen
    .place = Kapitel 8
    .turn-one-screw = Sie haben die Zugkraft einer Schraube angegeben; alle zusammen ziehen die Buchse ein.
    .turn-radius = Sie haben den Radius benutzt; in die Formel gehört der Nenndurchmesser der Schraube.
    .turn-nut-factor-left-out = Sie haben den Reibfaktor weggelassen; teilen Sie durch K und durch den Durchmesser.
    .turn-base-bolt = Sie haben den Durchmesser der Fußschraube benutzt; hierher gehört der der Buchsenschraube.
    .turn-base-bolt-s-torque = Sie haben das Drehmoment der Fußschraube benutzt; die Schrauben der Spannbuchse haben ihr eigenes.

relation-fasten-torque-found-lost = Nach dem ersten Lauf vorgefundenes Drehmoment der Buchsenschrauben
    .source = Definition eines Anteils

relation-fasten-torque-lost-found = Im ersten Lauf verlorener Anteil des Drehmoments der Buchsenschrauben
    .limits = nach dem ersten Lauf jede Schraube nachziehen, in derselben Reihenfolge über Kreuz
    .turn-share-kept = Sie haben den Anteil angegeben, der geblieben ist; der Verlust ist, was am eingestellten Drehmoment fehlt.
    .turn-over-the-torque-found = Sie haben durch das vorgefundene Drehmoment geteilt; ein Verlust ist ein Anteil des eingestellten.

relation-fasten-flange-gap-widest-uneven = Weitester Spalt rings um den Flansch der Spannbuchse
    .source = ein gekippter Flansch steht auf einer Seite um so viel weiter ab, wie er auf der anderen näher steht

relation-fasten-flange-gap-narrowest-uneven = Engster Spalt rings um den Flansch der Spannbuchse
    .source = ein gekippter Flansch steht auf einer Seite um so viel weiter ab, wie er auf der anderen näher steht

relation-fasten-rim-wobble-gaps = Planschlag durch einen ungleichmäßig angezogenen Flansch
    .source = ähnliche Dreiecke
    .turn-difference-alone = Sie haben den Unterschied am Flansch angegeben; er wächst mit dem Durchmesser bis hinaus zum Teilkreis des Kettenrads.
    .turn-turned-over = Sie haben die Durchmesser vertauscht; der größere Kreis schlägt mehr.
    .turn-widest-gap = Sie haben den weitesten Spalt benutzt; nur der Unterschied zwischen weitestem und engstem kippt die Nabe.
    .turn-half = Sie haben von der Mitte bis zum Rand gerechnet; eine Messuhr erfasst den ganzen Durchmesser.
    .turn-shaft-diameter = Sie haben den Wellendurchmesser benutzt; die Spalte wurden rings um den Flansch gefühlt.
