## Aufgaben: Betriebstemperatur

item-sag-for-a-pull-exactly = Der Durchhang zu einem Zug, nach der genauen Kurve
    .text = Der Zug im Leertrum der Maschine ist bekannt. Maschine: { $machine }. Für den Durchhang würde eine Parabel genügen; hier wird statt ihrer die Kurve gerechnet, in der eine Kette wirklich hängt: die Kettenlinie.
    .a-hint-1 = Nur der Teil des Gewichts, der quer zum Trum liegt, biegt es durch: w ist dieses Gewicht je Länge.
    .a-hint-2 = Mit u = w L/(2 H) beträgt der Durchhang L sinh²(u/2)/u.
    .a = Wie tief hängt das Trum nach der genauen Kurve unter dem Lineal?

item-rise-over-ambient = Übertemperatur
    .text = Der { $machine } läuft seit dem Morgen mit seiner gewöhnlichen Last, und die letzten Ablesungen gleichen sich. Die Umgebung wird im Schatten daneben abgelesen. In den Notizen steht noch eine Ablesung aus der Erwärmung.
    .a-hint-1 = Welche der Ablesungen gehört zur Beharrung?
    .a = Um wie viel liegt das beharrende Gehäuse über der Umgebung?

item-allowed-today = Wie heiß darf es heute werden?
    .text = Im Arbeitsauftrag stehen zwei Grenzen. Maschine: { $machine }. Die eine gilt der Übertemperatur, die andere der Temperatur an jedem noch so warmen Tag.
    .a-hint-1 = Beide Grenzen müssen zugleich halten.
    .a = Wie hoch darf die Gehäusetemperatur bei dieser Umgebung höchstens sein?

item-heat-verdict = Die Beharrungstemperatur beurteilen
    .text = Der { $machine } ist in Beharrung: Drei Ablesungen im Abstand einer halben Stunde gleichen sich. Sie halten ihn gegen die Grenzen des Arbeitsauftrags. In den Notizen steht auch die höchste Ablesung des Tages.
    .a = Um wie viel liegt das beharrende Gehäuse über der Umgebung?
    .b-hint-1 = Halten Sie die Übertemperatur gegen ihre Grenze und die Temperatur gegen die andere; ein Wert auf der Grenze besteht.
    .b = Wie lautet Ihr Urteil über die Beharrungstemperatur?

item-hot-day-limit = Die heißeste Woche des Jahres
    .text = Neben einem Getriebe wie diesem sind es 45 °C (113 °F) im Schatten. Maschine: { $machine }. Sein Hersteller lasse 56 °C (100 °F) Übertemperatur und 93 °C (200 °F) an jedem Tag zu.
    .a-option-1 = Die 93 °C (200 °F) gelten und lassen nur 48 °C (87 °F) Übertemperatur übrig
    .a-option-2 = Die Grenze der Übertemperatur gilt, also sind an so einem Tag 101 °C (213 °F) zulässig
    .a-option-3 = Keine gilt, denn die Grenzen sind für einen milden Tag gedacht
    .a-option-4 = Die Grenze der Übertemperatur wird größer, weil auch die Umgebung wärmer wurde
    .a-because = Beide Grenzen müssen halten, also gilt die niedrigere. 45 + 56 wären 101 °C; die andere Grenze schneidet bei 93 °C ab, 48 °C über der Umgebung.
    .a = Was folgt für diese Woche?

item-rise-in-other-units = Eine Grenze in der anderen Skale
    .text = Die Betriebsanleitung lasse 100 °F Übertemperatur zu. Maschine: { $machine }. Ihr Thermometer zeigt Grad Celsius, und die Umgebung hat 20 °C.
    .a-hint-1 = Eine Übertemperatur ist eine Differenz; die 32 der Fahrenheitskale fällt aus einer Differenz heraus.
    .a-option-1 = 76 °C
    .a-option-2 = 58 °C
    .a-option-3 = 38 °C
    .a-option-4 = 56 °C
    .a-option-5 = 120 °C
    .a-because = Eine Differenz rechnet man allein mit 1,8 um: 100 °F Übertemperatur sind 55,6 °C. Zu 20 °C gezählt ergibt das 75,6 °C, auf ein Grad 76. Die 32 gehört zu Ablesungen: 100 °F als Ablesung sind 38 °C, und das ist etwas anderes.
    .a = Bei welcher Ablesung Ihres Thermometers ist diese Grenze erreicht, auf ein Grad genau?

item-peak-or-fault = Eine Spitze oder ein Fehler?
    .text = Die Erwärmung eines neuen Getriebes wurde vom Kaltstart bis zum Ende verfolgt. Maschine: { $machine }. Sie haben die höchste Ablesung und die Beharrung.
    .a = Wie hoch darf die Gehäusetemperatur bei dieser Umgebung höchstens sein?
    .b-hint-1 = Sehen Sie zuerst, wo es beharrt, und dann, wie weit die höchste Ablesung darüber lag.
    .b = Was sagt Ihnen die höchste Ablesung?

item-peak-what-now = Heiß in der zweiten Stunde
    .text = Ein fabrikneues Getriebe stieg in seiner zweiten Stunde unter Last auf { $heat-peak_reading }. Maschine: { $machine }. Seither ist es von Ablesung zu Ablesung zurückgegangen und bleibt jetzt bei { $heat-housing }. Die Umgebung hat { $heat-ambient }. Ölstand, Geräusch und Schwingung sind, wie sie sein sollen.
    .a-option-1 = Beide Werte aufschreiben, den Beharrungswert beurteilen, bei der nächsten Prüfung wieder ablesen
    .a-option-2 = Einen Fehler melden: Die höchste Ablesung ist die, die zählt
    .a-option-3 = Anhalten und die Lager tauschen lassen, denn ein gesundes Getriebe kühlt bei gleichmäßiger Last nie ab
    .a-option-4 = Mehr Öl einfüllen, damit die nächste Spitze niedriger bleibt
    .a-option-5 = Die hohen Ablesungen aus den Notizen streichen, denn das Getriebe ist gesund
    .a-because = Dichtungen und Zahnflanken laufen sich in den ersten Stunden ein und erzeugen eine Weile mehr Wärme. Eine kurze frühe Spitze, die auf eine Beharrungstemperatur innerhalb der Grenze zurückgeht, ist für sich kein Fehler (übliche Praxis). Aufgeschrieben wird sie trotzdem: Die nächste Erwärmung soll sie nicht zeigen.
    .a = Was tun Sie?

item-peak-that-stays = Welches davon ist kein Fehler?
    .text = Vier neue Getriebe gleicher Art wurden diese Woche angefahren. Maschine: { $machine }. Der Hersteller lasse 56 °C (100 °F) Übertemperatur zu; keine Temperatur kam in die Nähe der Grenze an jedem Tag.
    .a-option-1 = Das in der zweiten Stunde auf 59 °C (106 °F) über der Umgebung stieg und seither bei 41 °C (74 °F) darüber bleibt
    .a-option-2 = Das in der zweiten Stunde auf 59 °C (106 °F) über der Umgebung stieg und nach acht Stunden noch dort ist
    .a-option-3 = Das eine Woche bei 40 °C (72 °F) über der Umgebung stand und heute bei derselben Last 54 °C (97 °F) zeigt
    .a-option-4 = Das jede halbe Stunde um dieselben 6 °C (11 °F) steigt und jetzt 45 °C (81 °F) über der Umgebung ist
    .a-because = Eine frühe Spitze allein ist kein Fehler, wenn sie zurückgeht und das Getriebe innerhalb der Grenze beharrt. Eine, die nicht zurückgeht, ist einer. Ein Sprung nach einer Woche hat eine Ursache, die zu suchen ist, auch innerhalb der Grenze; und gleiche Schritte sagen, dass noch keine Beharrung abzusehen ist.
    .a = Welches braucht nichts als die nächste Ablesung zu ihrer Zeit?

item-what-three-readings-say = Drei Ablesungen, eine Antwort
    .text = Am Gehäuse wurden bei gleichmäßiger Last drei Ablesungen im Abstand einer halben Stunde genommen. Maschine: { $machine }.
    .a-hint-1 = Schreiben Sie die beiden Schritte auf, von Ablesung 1 zu 2 und von 2 zu 3, mit ihren Vorzeichen.
    .a = Was sagen sie?

item-settled-or-not = Wann ist es in Beharrung?
    .text = Jede Zeile sind drei Ablesungen im Abstand einer halben Stunde bei gleicher Last und Umgebung. Maschine: { $machine }.
    .a-option-1 = 61,2; 61,8; 61,0 °C (142,2; 143,2; 141,8 °F)
    .a-option-2 = 59,4; 60,2; 61,0 °C (138,9; 140,4; 141,8 °F)
    .a-option-3 = 52,4; 58,0; 60,6 °C (126,3; 136,4; 141,1 °F)
    .a-option-4 = 70,0; 67,2; 65,2 °C (158,0; 153,0; 149,4 °F)
    .a-because = Die übliche Probe verlangt drei Ablesungen im Abstand einer halben Stunde, die innerhalb von 2 °C (3,6 °F) liegen und nicht weiter steigen. Von 59,4 bis 61,0 °C ist jede höher als die vorige, so nah sie beieinander liegen. Von 52,4 bis 60,6 °C steigt es, und von 70,0 bis 65,2 °C geht es von einer Spitze zurück.
    .a = In welcher Zeile beharrt die Temperatur?

item-where-it-settles = Vorhersagen, wo es beharrt
    .text = Die Schicht endet, bevor der { $machine } warm ist. Er ist eingelaufen, die Last ist gleichmäßig, und es wurden drei Ablesungen im Abstand einer halben Stunde genommen.
    .a-hint-1 = Nehmen Sie die beiden Schritte. Jeder Schritt ist derselbe Anteil des vorigen.
    .a = Bei welcher Temperatur wird es nach den drei Ablesungen beharren?
    .b = Um wie viel liegt es dann über der Umgebung?

item-how-much-longer = Wie lange noch?
    .text = Drei Ablesungen im Abstand einer halben Stunde bei gleichmäßiger Last, und die nächste Arbeit wartet. Maschine: { $machine }. Er ist eingelaufen.
    .a = Bei welcher Temperatur wird es nach den drei Ablesungen beharren?
    .b-hint-1 = Wievielmal kleiner ist der zweite Schritt als der erste? Er dauerte einen Abstand.
    .b = Wie groß ist die Zeitkonstante nach den drei Ablesungen?
    .c-hint-1 = Wievielmal kleiner muss der Abstand werden, der noch fehlt?
    .c = Wie lange nach Ablesung 3 ist es dieser Temperatur auf { $heat-margin_wanted } nahe?

item-time-constant-two-readings = Wie schnell wird es warm?
    .text = Der { $machine } wurde während der Erwärmung zweimal abgelesen und noch einmal in der Beharrung. Er ist eingelaufen, und die Last war gleichmäßig.
    .a-hint-1 = Was abklingt, ist der Abstand von der Beharrung. Wie weit war es bei den beiden Ablesungen davon entfernt?
    .a = Wie groß ist die Zeitkonstante der Erwärmung?

item-temperature-after = Wie warm ist es bis dahin?
    .text = Ein früherer Lauf bis zum Ende ergab die Übertemperatur in der Beharrung und die Zeitkonstante. Maschine: { $machine }. Er ist eingelaufen und wurde heute kalt mit derselben Last gestartet.
    .a-hint-1 = Zuerst der Anteil der Übertemperatur, der bis dahin da ist; nach einer Zeitkonstante sind es 63 %.
    .a = Welche Gehäusetemperatur erwarten Sie nach { $heat-asked_time }?

item-when-to-come-back = Wann Sie wiederkommen
    .text = Sie wollen die Beharrungstemperatur ablesen und nicht daneben warten. Maschine: { $machine }. Aus einem früheren Lauf sind die Übertemperatur in der Beharrung und die Zeitkonstante bekannt; als Beharrung gilt, wenn es dem Ende auf { $heat-margin_wanted } nahe ist.
    .a-hint-1 = Wievielmal kleiner als die ganze Übertemperatur muss der Abstand werden, der noch fehlt?
    .a = Wie lange nach einem Kaltstart dauert das?

item-heat-of-the-unit = Woher die Wärme kommt
    .text = Der Leistungsmesser wurde abgelesen; er zieht die Verluste des Motors selbst ab und zeigt, was der Motor an seiner Welle abgibt. Maschine: { $machine }. Die Stufen seines Getriebes sind gleich gut, und das kettenseitige Lager gibt seine eigene Reibung dazu.
    .a-hint-1 = Jede Stufe gibt ihren Anteil dessen weiter, was ihr die vorige ließ. Was nicht herauskommt, ist Wärme.
    .a = Wie viel Wärme erzeugen die Verzahnungen?
    .b-hint-1 = Reibkraft mal Gleitgeschwindigkeit, am halben Wellendurchmesser.
    .b = Wie viel Wärme erzeugt das kettenseitige Lager?
    .c = Wie viel Wärme erzeugt das ganze Getriebe?

item-heat-per-degree = Was das Gehäuse abgibt
    .text = Der { $machine } ist in Beharrung, sein Gehäuse gibt also genau die Wärme ab, die innen entsteht.
    .a-hint-1 = Zuerst die Übertemperatur.
    .a = Wie viel Wärme gibt das Gehäuse je Grad Übertemperatur ab?

item-settle-from-balance = Beharrungstemperatur aus der Wärme
    .text = Bekannt sind die innen erzeugte Wärme und die Wärmeabgabe je Grad Übertemperatur. Maschine: { $machine }. Das Gehäuse ist sauber, und die Luft streicht frei darum.
    .a = Bei welcher Übertemperatur beharrt es?
    .b = Bei welcher Temperatur beharrt es?

item-efficiency-from-rise = Der Wirkungsgrad, von außen gesehen
    .text = Der { $machine } ist in Beharrung. Zur Hand sind nur ein Thermometer und ein Leistungsmesser, der die Verluste des Motors selbst abzieht, und die Wärmeabgabe des Gehäuses je Grad ist aus einem früheren Versuch bekannt.
    .a-hint-1 = Alle Wärme, die das Gehäuse verlässt, ist Leistung, die nicht an der Welle herauskam.
    .a = Welcher Wirkungsgrad erklärt die Beharrungstemperatur?

item-thermal-limit = Wie viel Leistung, bevor es zu heiß wird?
    .text = Die Fertigung will mehr Durchsatz. Maschine: { $machine }. Sie berechnen, was das Gehäuse bei der heutigen Umgebung abführen kann, bevor eine der beiden Temperaturgrenzen erreicht ist.
    .a = Wie hoch darf die Gehäusetemperatur bei dieser Umgebung höchstens sein?
    .b-hint-1 = Die Wärme, die fließen darf, vermindert um die des Lagers, dürfen die Verzahnungen erzeugen.
    .b = Bis zu welcher gleichmäßigen Motorleistung bleibt es darunter? Lassen Sie die Wärme des kettenseitigen Lagers, wie sie ist.

item-another-day = Andere Last, anderer Tag
    .text = Der { $machine } ist heute in Beharrung. Nächsten Monat hat er { $heat-other_share } der heutigen Last, bei gleicher Drehzahl und gleichem Öl, und die Umgebung hat { $heat-other_ambient }. { $heat-fixed_share } seiner Wärme hängen nicht von der Last ab: Planschendes Öl und Dichtungen erzeugen sie.
    .a-hint-1 = Teilen Sie die heutige Übertemperatur in den lastabhängigen und den festen Anteil und setzen Sie die Summe auf die andere Umgebung.
    .a = Welche Gehäusetemperatur erwarten Sie dann in der Beharrung?

item-infrared-corrected = Hinter der Infrarotablesung
    .text = Ein Infrarotthermometer ist auf das lackierte Gehäuse gerichtet. Maschine: { $machine }. Der eingestellte Emissionsgrad ist nicht der des Lacks, und alles ringsum hat Umgebungstemperatur.
    .a-hint-1 = Die Strahlung geht mit der vierten Potenz der absoluten Temperatur; rechnen Sie die Ablesungen zuerst um.
    .a = Welche Temperatur hat das Gehäuse?

item-emissivity-by-contact = Den Emissionsgrad finden
    .text = An derselben Stelle wurden ein Kontakt- und ein Infrarotthermometer abgelesen, als das Gehäuse in Beharrung war. Maschine: { $machine }. Alles ringsum hat Umgebungstemperatur.
    .a-hint-1 = Die vierte Potenz der Umgebung geht von beiden Ablesungen ab, bevor man sie vergleicht.
    .a = Welchen Emissionsgrad hat die Oberfläche?

item-infrared-shiny = Ein kühler, blanker Deckel
    .text = Ein auf 0,95 eingestelltes Infrarotthermometer zeigt auf einem blanken, polierten Deckel 31 °C (88 °F) und auf dem lackierten Gehäuse daneben 58 °C (136 °F). Maschine: { $machine }. Die Umgebung hat 24 °C (75 °F).
    .a-option-1 = Die lackierte Stelle, da der polierte Deckel vor allem den Raum ringsum spiegelt
    .a-option-2 = Den polierten Deckel, denn blankes Metall zeigt die wahre Temperatur
    .a-option-3 = Das Mittel der beiden, 45 °C (112 °F), da beide zu einem Gehäuse gehören
    .a-option-4 = Dass der Deckel kalt ist, weil kein Öl hinkommt
    .a-because = Blankes Metall strahlt wenig ab und spiegelt, was ringsum steht, darum scheint es nahe der Umgebung. Messen Sie eine matt lackierte Stelle oder ein Stück mattes Klebeband, das durchgewärmt ist, immer dasselbe, und prüfen Sie es einmal mit einem Kontaktthermometer.
    .a = Was schreiben Sie auf?

item-warm-up-order = Die Temperaturprüfung von Anfang bis Ende
    .text = Ein neues Getriebe ist durch seine erste Erwärmung zu begleiten. Maschine: { $machine }. Die Messstelle muss gereinigt und gekennzeichnet werden, und sie liegt hinter der Schutzeinrichtung.
    .a-step-1 = Freischalten, gegen Wiedereinschalten sichern und Energiefreiheit feststellen
    .a-step-2 = Schutzeinrichtung abnehmen, Messstelle sauber wischen und Fühler oder mattes Klebeband anbringen
    .a-step-3 = Schutzeinrichtung wieder anbringen, Werkzeug wegräumen und sehen, dass niemand im Gefahrenbereich ist
    .a-step-4 = Die Schlösser von denen abnehmen lassen, die sie angebracht haben, starten und den Antrieb auf seine gewöhnliche Last bringen
    .a-step-5 = Gehäuse und Umgebung alle halbe Stunde zusammen ablesen, von außerhalb der Schutzeinrichtung
    .a-step-6 = Weitermachen, bis drei Ablesungen innerhalb von 2 °C (3,6 °F) liegen und nicht weiter steigen
    .a-step-7 = Die Übertemperatur in der Beharrung über der Umgebung desselben Augenblicks nehmen, beurteilen und aufschreiben
    .a-because = Die Hand geht nur hinter die Schutzeinrichtung, solange der Antrieb gesichert und als energiefrei nachgewiesen ist, und der Antrieb startet nur mit angebrachter Schutzeinrichtung und ohne Menschen im Gefahrenbereich. Die Ablesungen kommen vor dem Urteil, und das Urteil gilt der Beharrung.
    .a = In welcher Reihenfolge arbeiten Sie?

item-too-hot-stop = In Beharrung und zu heiß
    .text = Der { $machine } beharrt bei { $heat-housing }, die Umgebung hat { $heat-ambient }. Die Grenze an jedem Tag ist { $heat-sump_limit }. Der Vorgesetzte bittet, bis zum Schichtende weiterzufahren.
    .a-option-1 = Anhalten lassen, melden und die Ursache finden, bevor er wieder läuft
    .a-option-2 = Bis zum Schichtende laufen lassen, da es nicht mehr steigt
    .a-option-3 = Mit einem Wasserschlauch auf dem Gehäuse laufen lassen
    .a-option-4 = Im Lauf die Einfüllschraube öffnen, um die Wärme hinauszulassen
    .a-option-5 = Ohne den Kettenschutz laufen lassen, damit mehr Luft an das Gehäuse kommt
    .a-because = Über der Grenze wird der Ölfilm dünn, und das Öl altert schnell; dass es dort beharrt, macht es nicht besser. Kaltes Wasser auf einem heißen Gehäuse verspannt es, heißes Öl und sein Dampf verbrennen, und eine Schutzeinrichtung bleibt daran, solange sich etwas dreht.
    .a = Was tun Sie?

item-too-hot-order = Die Ursache suchen
    .text = Der { $machine } war in der Beharrung zu heiß, und es ist entschieden, ihn anzuhalten.
    .a-step-1 = Den Antrieb mit seiner gewöhnlichen Steuerung anhalten
    .a-step-2 = Freischalten und gegen Wiedereinschalten sichern, dann durch einen Einschaltversuch die Energiefreiheit feststellen
    .a-step-3 = Abkühlen lassen, bis man das Gehäuse anfassen kann, und von Schrauben und Entlüftern wegbleiben
    .a-step-4 = Die Ursache suchen: Ölstand und Viskositätsklasse, Entlüfter, Schmutz am Gehäuse, Kettenspannung
    .a-step-5 = In Ordnung bringen, was gefunden wurde, und es aufschreiben
    .a-step-6 = Schutzeinrichtungen anbringen, Menschen und Werkzeug aus dem Bereich, und die Schlösser abnehmen lassen
    .a-step-7 = Starten, die aufgenommene Leistung prüfen und die ganze Erwärmung neu ablesen
    .a-because = Er ist gesichert, bevor jemand daneben wartet, und kühl, bevor eine Schraube angefasst wird: Heißes Öl unter Druck spritzt. Die Reparatur wird durch eine neue Erwärmung bewiesen und nicht durch ihr Aussehen.
    .a = In welcher Reihenfolge arbeiten Sie?

item-inside-sump-over-rise = Über der einen Grenze, unter der anderen
    .text = Der { $machine } beharrt bei { $heat-housing }, die Umgebung hat { $heat-ambient }. Die Grenzen sind { $heat-rise_limit } Übertemperatur und { $heat-sump_limit } an jedem Tag.
    .a-option-1 = Melden, genau beobachten und ohne Verzug die Ursache suchen
    .a-option-2 = Nichts, da die Grenze an jedem Tag nicht erreicht ist
    .a-option-3 = Das Thermometer an eine kühlere Stelle setzen und neu ablesen
    .a-option-4 = Auf einen kühleren Tag warten, da die Übertemperatur dann kleiner ist
    .a-because = Er ist wärmer, als bei dieser Umgebung zulässig ist, und besteht nicht. Die Übertemperatur verrät an jedem Tag Wärme, die nicht da sein sollte oder nicht hinauskann: Schmutz, falsches oder zu viel Öl, zu viel Last, eine straffe Kette. Ablesungen in kurzen Abständen zeigen, wohin es geht. Ein kühlerer Tag senkt die Temperatur und lässt die Übertemperatur, wie sie ist. An einem heißen Tag kann dieselbe Übertemperatur die andere Grenze überschreiten.
    .a = Was tun Sie?

item-hand-test = Die Hand am Gehäuse
    .text = Ein Kollege legt die Hand auf das Gehäuse, zieht sie sofort zurück und sagt: zu heiß, abschalten. Maschine: { $machine }.
    .a-option-1 = Hände weg: Es kann innerhalb der Grenzen liegen, also mit dem Thermometer messen
    .a-option-2 = Er hat recht: Was eine Hand nicht erträgt, ist auch für die Zahnräder und das Öl zu heiß
    .a-option-3 = Er soll durch einen Handschuh fühlen; der nimmt etwas Hitze weg und gibt einen brauchbaren Eindruck
    .a-option-4 = Zur Sicherheit zehn Sekunden mit der anderen Hand probieren
    .a-because = Eine Hand gibt bei etwa 60 °C (140 °F) auf (übliche Praxis), und 56 °C (100 °F) Übertemperatur liegen an einem gewöhnlichen Tag weit darüber. Die Hand verurteilt also gesunde Antriebe, und verbrannt wird sie obendrein.
    .a = Welche Antwort ist die richtige?

item-where-to-read = Wo ist die Umgebung?
    .text = Sie sollen für die Erwärmung die Umgebungstemperatur ablesen. Maschine: { $machine }.
    .a-option-1 = Luft neben dem Getriebe, im Schatten, zugleich mit jeder Ablesung am Gehäuse
    .a-option-2 = Luft gleich über dem Gehäuse, zugleich mit jeder Ablesung, denn die kühlt es
    .a-option-3 = Was der Wetterbericht am Morgen sagte, für den ganzen Tag
    .a-option-4 = Das Gehäuse selbst vor dem Start, für den ganzen Tag
    .a-option-5 = Luft in voller Sonne neben dem Getriebe, da auch das Getriebe in der Sonne steht
    .a-because = Die Übertemperatur zählt ab der Luft, an die das Getriebe seine Wärme gibt, bevor sie erwärmt ist. Über dem Gehäuse und in seinem warmen Luftstrom ist sie schon heiß, und die Umgebung ändert sich über den Tag: Eine Übertemperatur mit der Umgebung vom Morgen ist um so viel falsch.
    .a = Welche Ablesung nehmen Sie?

item-read-thermometer = Das Thermometer am Gehäuse
    .text = Der { $machine } ist in Beharrung. Das Thermometer sitzt an seinem Gehäuse neben dem Abtriebslager, und Ihre Hände bleiben weg.
    .a-hint-1 = Die äußere Reihe gilt; die innere zeigt die andere Einheit.
    .a = Wie heiß ist das Gehäuse?
    .b = Wie weit liegt das über der Luft?

item-which-instrument-surface = Womit am Gehäuse messen?
    .text = Das Gehäuse ist mattgrau lackiert; daneben hat ein blanker, glänzender Stahldeckel etwa dieselbe Temperatur. Maschine: { $machine }. Beide sind nacheinander von außerhalb der Schutzeinrichtung abzulesen.
    .a-option-1 = Einem Kontaktfühler an beiden; dem Infrarotthermometer nur auf dem matten Lack
    .a-option-2 = Dem Infrarotthermometer an beiden, nahe genug gehalten
    .a-option-3 = Dem Infrarotthermometer nur auf dem glänzenden Deckel, weil er gut spiegelt
    .a-option-4 = Einer Hand an beiden, mit Übung
    .a-because = Eine glänzende Fläche strahlt selbst wenig Wärme ab und spiegelt, was ringsum ist, darum liest das Infrarotthermometer dort zu niedrig. Eine Hand kann über etwa 60 °C (140 °F) verbrannt werden und sagt darunter nichts.
    .a = Welcher Ablesung kann man trauen, wie sie dasteht?

item-chart-which-curve = Vier Stunden auf einem Diagramm
    .text = Vier Getriebe wurden zusammen gestartet und ihre Temperaturen auf einem Diagramm über den Stunden aufgetragen. Alle vier tragen in derselben Luft dieselbe Last. Kurve 1 steigt immer langsamer und ist ab der dritten Stunde eben. Kurve 2 steigt in der zweiten Stunde über die anderen, geht zurück und ist ab der vierten eben. Kurve 3 steigt wie die erste und steigt jede halbe Stunde um denselben Schritt weiter. Kurve 4 ist die erste, durchweg niedriger.
    .a-option-1 = Kurve 3: Sie zeigt keine Beharrung, und nichts sagt, wo sie endet
    .a-option-2 = Kurve 2: Sie war die heißeste von allen
    .a-option-3 = Kurven 2 und 3: Beide waren heißer als die erste
    .a-option-4 = Kurve 4: Ein Getriebe, das kühl bleibt, trägt seine Last nicht
    .a-because = Was beharren wird, macht jedes Mal kleinere Schritte. Eine kurze frühe Spitze, die zurückgeht, ist Einlaufen und für sich kein Fehler; eine niedrigere Beharrungstemperatur bei gleicher Last ist die bessere. Übliche Praxis.
    .a = Welches davon wird angehalten und untersucht?

item-why-is-it-hot = Warum ist es heiß, oder ist es das gar nicht?
    .text = Der { $machine } lief mit seiner gewöhnlichen Last bis zur Beharrung. Höchstens eines stimmt an ihm nicht.
    .a-hint-1 = Berechnen Sie die Last als Anteil der Leistung auf dem Typenschild des Motors, und die Übertemperatur.
    .a-because = Zuerst die Last gegen das Typenschild, dann die Übertemperatur: Ein Gehäuse, das bei angemessener Last heiß ist, gibt seine Wärme schlecht ab.
    .a = Was erklärt alle Ablesungen?

item-heat-sheet-odd = Ein Fehler in der Wärmebilanz
    .text = Auf einem Blatt steht die Wärmebilanz: was Verzahnungen und ein Lager erzeugen, was das Gehäuse je Grad abgibt und die Übertemperatur, die daraus folgt. Maschine: { $machine }. Ein Wert wurde falsch abgelesen oder falsch aufgeschrieben.
    .a-hint-1 = Zählen Sie die beiden Verluste zusammen, dann nehmen Sie die Übertemperatur mal die Wärmeabgabe je Grad: Welche Werte passen zusammen?
    .a-because = Erzeugt wird die Summe der beiden Verluste; abgegeben wird die Übertemperatur mal die Wärmeabgabe je Grad; in der Beharrung ist beides gleich.
    .a = Welcher Wert passt nicht zu den anderen?

item-decide-heat = Darf er bei dieser Temperatur weiterlaufen?
    .text = Der { $machine } ist in Beharrung, die Sonne scheint nicht mehr darauf, und das Thermometer sitzt am Gehäuse neben dem Abtriebslager.
    .a-finding-1 = Die Übertemperatur liegt über ihrer Grenze
    .a-finding-2 = Das Gehäuse liegt über der Grenze für jeden Tag
    .a-because = Beide Grenzen müssen halten, die der Übertemperatur und die für jeden Tag; über der einen wie der anderen besteht die Maschine nicht. Und ein heißes Gehäuse verbrennt die Hand: messen, nicht anfassen.
    .a = Annehmen, nachstellen oder anhalten?
