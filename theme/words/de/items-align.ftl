## Aufgaben: Ausrichten

item-sprocket-offset = Versatz aus vier Spalten
    .text = Ein Lineal liegt über den Stirnseiten beider Kettenräder, der Antrieb ist freigeschaltet und gesichert. Vier Spalte werden gefühlt, der Reihe nach vom fernen Rand des Bezugsrads bis zum fernen Rand des anderen Rads; wo das Lineal anliegt, ist der Spalt null. Maschine: { $machine }.
    .a-hint-1 = Sehen Sie zuerst, wie das Lineal am Bezugsrad liegt: Die Differenz seiner beiden Spalte, geteilt durch ihren Abstand, ist die Neigung des Lineals.
    .a-hint-2 = Nehmen Sie an jedem Rad das Mittel der beiden Spalte, dann das, was die Neigung auf den Achsabstand ausmacht.
    .a = Wie weit steht das andere Rad in seiner Mitte hinter dem Bezugsrad? Davor zählt negativ.

item-sprocket-twist = Verdrehung aus vier Spalten
    .text = Ein Lineal liegt waagerecht über den Stirnseiten beider Kettenräder, der Antrieb ist freigeschaltet und gesichert. Die Spalte an den vier Punkten sind aufgeschrieben. Maschine: { $machine }.
    .a-hint-1 = Nur die Differenz der beiden Spalte an einem Rad ist Verdrehung.
    .a = Um welchen Winkel ist das andere Rad gegen das Bezugsrad verdreht? Positiv zählt, wenn sein ferner Rand weiter hinten liegt.

item-sprocket-judge = Verschieben oder schwenken?
    .text = So wurden die Kettenräder mit dem Lineal vorgefunden. Beide Grenzwerte stehen auf der Zeichnung. Maschine: { $machine }.
    .a = Wie weit steht das andere Rad in seiner Mitte hinter dem Bezugsrad? Davor zählt negativ.
    .b-hint-1 = Berechnen Sie auch die Verdrehung, bevor Sie entscheiden.
    .b = Was tun Sie dagegen?

item-sprocket-pass = Gut genug zum Unterschreiben?
    .text = Sie sollen für die Kettenräder unterschreiben. Die vier Spalte unter dem Lineal stehen auf dem Prüfblatt, die Grenzwerte auf der Zeichnung. Maschine: { $machine }.
    .a = Wie lautet Ihr Urteil?

item-equal-gaps = Zweimal derselbe Spalt
    .text = Das Lineal liegt satt am Bezugsrad. Am anderen Rad ist der Spalt an beiden Rändern 3 mm (0,118 in). Maschine: { $machine }.
    .a-option-1 = Das Rad steht hinter dem anderen; es wird um den Spalt auf seiner Welle verschoben
    .a-option-2 = Die Wellen sind nicht parallel; das Getriebe wird geschwenkt, bis beide zu sind
    .a-option-3 = Das Rad ist verdreht; die hinteren Füße des Getriebes werden unterlegt
    .a-option-4 = Nichts ist falsch, denn beide Spalte sind gleich, also fluchten die Stirnflächen
    .a-because = Gleiche Spalte an einem Rad sind Versatz, und Versatz behebt man längs der Welle. Verdrehung zeigt sich als Differenz der beiden Spalte; kein Verschieben behebt sie, und kein Schwenken behebt einen Versatz.
    .a = Was stimmt nicht, und wie behebt man es?

item-shafts-parallel = Laufen die Wellen auseinander?
    .text = Der Abstand der beiden Wellen wird an den Kettenrädern gemessen und noch einmal weiter hinten, beide Male rechtwinklig zu den Wellen. Ein Stehlager der getriebenen Welle bleibt, wo es ist; das andere steht dahinter und lässt sich verschieben. Maschine: { $machine }.
    .a = Um wie viel laufen die Wellen hinter den Kettenrädern auseinander? Zusammen zählt negativ.
    .b = Um wie viel muss das hintere Lager verschoben werden, um die Welle parallel zu schwenken? Von der anderen Welle weg zählt positiv.

item-twist-from-centres = Kein Platz für ein Lineal
    .text = Ein Halter der Schutzeinrichtung ist dem Lineal im Weg. Stattdessen wird der Abstand der Wellen an den Kettenrädern und weiter hinten gemessen; die Räder sitzen rechtwinklig auf ihren Wellen. Maschine: { $machine }.
    .a-hint-1 = Wellen, die hinten zusammenlaufen, drehen den fernen Rand des Rads nach hinten.
    .a = Um welchen Winkel sind die Kettenräder gegeneinander verdreht? Positiv zählt, wenn der ferne Rand des anderen Rads weiter hinten liegt.

item-bar-sag = Die Stange hängt durch
    .text = Halter und Stange der Umfangsmessuhr wurden an einem steifen Rohr geprüft, und unten zeigte die Messuhr zu wenig. Dann wurden sie an die Motorwelle geklemmt und der Umfang der Getriebenabe abgefahren. Maschine: { $machine }.
    .a = Wie weit hängt die Stange durch?
    .b-hint-1 = Unten sinkt die Stange vom Umfang weg, dort zeigt die Messuhr also zu wenig; oben, wo sie auf null gestellt wurde, war es umgekehrt.
    .b = Was liest man am Umfang von oben bis unten ab, ohne den Durchhang?

item-rim-offset = Zu hoch oder zu tief?
    .text = Eine Umfangsmessuhr ist über die Nabe des Getriebes gefahren, während beide Wellen gemeinsam von Hand gedreht wurden, der Antrieb freigeschaltet und gesichert. Dieselbe Stange wurde vorher an einem steifen Rohr geprüft. Maschine: { $machine }.
    .a-hint-1 = Die Messuhr zeigt den Versatz doppelt.
    .a = Wie hoch steht die Motorwelle in der Messebene? Zu tief zählt negativ.
    .b = Und wie weit steht sie nach 3 Uhr hin? Nach 9 Uhr hin zählt negativ.

item-fourth-reading = Ein Rohr im Weg
    .text = Bei 9 Uhr ist der Umfangsmessuhr ein Rohr im Weg. Die anderen Ablesungen stehen auf dem Blatt, oben ist null. Maschine: { $machine }.
    .a-hint-1 = An einem runden Umfang ergeben die beiden Seiten zusammen dasselbe wie oben und unten zusammen.
    .a = Was würde die Umfangsmessuhr bei 9 Uhr zeigen?

item-face-angle = Der Winkel aus der Stirnmessuhr
    .text = Die Stirnmessuhr hat die Stirnseite der Getriebenabe abgefahren, während beide Wellen gemeinsam von Hand gedreht wurden, freigeschaltet und gesichert. Maschine: { $machine }.
    .a = Wie groß ist der senkrechte Winkelfehler der Wellen? Zu den Motorfüßen hin steigend zählt positiv.
    .b = Und der waagerechte Winkelfehler? Positiv zählt, wenn es zu den Motorfüßen hin nach 3 Uhr geht.

item-feet-vertical = Unterlegbleche vorn und hinten
    .text = Der Motor soll der Höhe nach auf das Getriebe ausgerichtet werden. Die Umfangsmessuhr ergab seinen Versatz, die Stirnmessuhr seinen Winkel; die Wärmedehnung kommt später. Maschine: { $machine }.
    .a = Wie hoch steht die Motorwelle in der Messebene?
    .b = Wie groß ist der senkrechte Winkelfehler der Wellen?
    .c = Um wie viel müssen die vorderen Füße angehoben werden? Abwärts zählt negativ.
    .d = Und die hinteren Füße?

item-feet-sideways = Seitlich an den hinteren Füßen
    .text = Der Motor ist unterlegt; jetzt wird er mit seinen Druckschrauben seitlich verschoben. Die Messuhren wurden bei 3 und 9 Uhr abgelesen, vom Motor zum Getriebe gesehen. Maschine: { $machine }.
    .a = Um wie viel müssen die hinteren Füße nach 3 Uhr hin? Nach 9 Uhr hin zählt negativ.
    .b = Nach welcher Seite müssen sie?

item-coupling-verdict = Innerhalb der Grenzen der Kupplung?
    .text = Die Kupplung darf mit einem Versatz und einem Winkel bis zu den Grenzwerten ihres Herstellers laufen. Die Messuhren wurden oben und unten abgelesen; die Wärmedehnung ist hier klein und bleibt weg. Maschine: { $machine }.
    .a = Wie lautet Ihr Urteil über die senkrechte Ausrichtung?

item-reverse-angle = Zwei Umfänge, keine Stirn
    .text = Beide Wellen tragen einen Halter, und jede Messuhr fährt den Umfang der anderen Nabe ab. Beide Stangen hängen gleich weit durch. Maschine: { $machine }.
    .a = Wie hoch steht die Motorwelle an der Nabe des Getriebes?
    .b-hint-1 = Die Messuhr an der Motornabe hängt an der Getriebewelle, also kehrt sich ihr Vorzeichen um.
    .b = Wie hoch steht sie an ihrer eigenen Nabe?
    .c = Wie groß ist der senkrechte Winkelfehler der Wellen?

item-reverse-sideways = Seitlich aus zwei Umfängen
    .text = Beide Umfänge der Kupplung wurden abgefahren. Jetzt zählen nur die Ablesungen bei 3 und 9 Uhr, vom Motor zum Getriebe gesehen. Maschine: { $machine }.
    .a = Wie weit steht die Motorwelle an ihrer eigenen Nabe nach 3 Uhr hin?
    .b = Um wie viel müssen die vorderen Füße nach 3 Uhr hin?

item-hub-runout = Schlägt die Nabe, oder fluchten die Wellen nicht?
    .text = An der Kupplung wurde der Spalt oben vom Spalt unten abgezogen. Dann wurden beide Wellen gemeinsam von Hand um eine halbe Umdrehung gedreht, freigeschaltet und gesichert, und die Spalte an denselben Stellen noch einmal gefühlt. Maschine: { $machine }.
    .a = Wie viel davon ist Schlag der Nabe, der sich mit den Wellen mitdreht?
    .b = Wie viel vom Spaltunterschied gehört zur Ausrichtung?

item-growth-target = Kalt zu tief oder zu hoch setzen?
    .text = Ausgerichtet wird kalt, bei Umgebungstemperatur. Maschine: { $machine }. Im warmen Zustand dehnen sich Motor und Getriebe, jeder über die Höhe von den Füßen bis zur Welle.
    .a = Um wie viel dehnt sich der Motor an seinen hinteren Füßen?
    .b = Um wie viel hebt sich die Welle des Getriebes?
    .c = Wie hoch soll die Motorwelle über ihren hinteren Füßen im kalten Zustand stehen? Zu tief zählt negativ.

item-growth-shims = Einmal unterlegen für beides
    .text = Der Motor fluchtet nicht, und er soll am Ende auf seiner Kaltvorgabe stehen. Die Messuhren wurden abgelesen, freigeschaltet, gesichert und kalt, und die Wärmedehnungen sind berechnet. Maschine: { $machine }.
    .a = Um wie viel müssten die vorderen Füße angehoben werden, damit die Wellen kalt fluchten?
    .b = Wie hoch soll die Motorwelle über den vorderen Füßen im kalten Zustand stehen?
    .c = Um wie viel werden die Unterlegbleche unter den vorderen Füßen geändert, damit der Motor am Ende auf der Kaltvorgabe steht?
    .d = Was tun Sie mit ihnen?

item-align-order = Eine Ausrichtung, der Reihe nach
    .text = Motor und Kettenräder sollen ausgerichtet werden, nachdem das Getriebe neu aufgesetzt wurde. Maschine: { $machine }.
    .a-step-1 = Freischalten, gegen Wiedereinschalten sichern und Energiefreiheit feststellen, die Kette abgenommen oder die Last gehalten
    .a-step-2 = Schutzeinrichtungen abnehmen, Kippfuß suchen und beheben
    .a-step-3 = Sehen, dass Naben und Kettenräder auf ihren Wellen rund und plan laufen
    .a-step-4 = Die Messuhren bei 12, 3, 6 und 9 Uhr ablesen und die Füße auf Höhe unterlegen
    .a-step-5 = Den Motor seitlich verschieben, die Fußschrauben der Reihe nach festziehen und wieder ablesen
    .a-step-6 = Das Lineal an die Kettenräder legen und verschieben oder schwenken, bis sie in einer Ebene stehen
    .a-step-7 = Die Ablesungen aufschreiben, wie sie zuletzt sind, und die Schutzeinrichtungen wieder anbringen
    .a-step-8 = Die Schlösser von denen abnehmen lassen, die sie angebracht haben, starten und warm noch einmal ablesen
    .a-because = Von Hand wird nichts gedreht, bevor der Antrieb als energiefrei nachgewiesen ist. Ein Kippfuß verschiebt die Welle, jedes Mal, wenn eine Schraube angezogen wird, darum wird er zuerst behoben; eine schlagende Nabe verdirbt jede Ablesung. Die Höhe kommt vor der Seite, denn Unterlegen verschiebt die Maschine seitlich, seitliches Verschieben ändert die Höhe dagegen kaum. Die Schutzeinrichtungen sind wieder dran, bevor die Schlösser abkommen.
    .a = In welcher Reihenfolge arbeiten Sie?

item-turning-by-hand = Die Wellen für die Messuhren drehen
    .text = Um mit den Messuhren ringsum abzulesen, muss jemand beide Wellen um eine volle Umdrehung drehen. Ein Kollege bietet an, den Motor zu tippen. Maschine: { $machine }.
    .a-option-1 = Von Hand oder mit einem Bandschlüssel, der Antrieb gesichert, die Finger weg von Kupplung und Kette
    .a-option-2 = Durch kurzes Tippen des Motors, während jemand die Messuhr beobachtet und ruft, wenn er anhalten soll
    .a-option-3 = Durch kurzes Tippen des Motors, während alle die Hände hochhalten
    .a-option-4 = Von Hand bei eingeschaltetem Trennschalter, damit man den Antrieb danach gleich probieren kann
    .a-because = Messuhren, Halter und Finger sind an der Kupplung, also bleibt der Antrieb gesichert, bis sie alle fort sind. Ein Tippen dreht schneller, als man loslassen kann, und schleudert den Halter weg. Auch von Hand zieht eine Kette die Finger in das Kettenrad. Der Messuhrhalter muss ringsum frei gehen.
    .a = Wie drehen Sie sie?
