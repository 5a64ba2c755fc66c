## Aufgaben: Schwingung

item-vibrate-quick-bearing = Ein Lager ohne Zeichnung
    .text = Vom Lager der Abtriebswelle ist nur die Zahl der Wälzkörper bekannt. Maschine: { $machine }. Sie wollen vorher wissen, wo im Spektrum zu suchen ist.
    .a = Wo etwa würde sich eine Schadstelle am Außenring zeigen?
    .b-hint-1 = Etwas weniger als die Hälfte der Wälzkörper überrollt bei einer Umdrehung der Welle eine Stelle des Außenrings und etwas mehr als die Hälfte eine des Innenrings: 0,4 und 0,6 von ihnen.
    .b = Und eine am Innenring?

item-vibrate-swing-from-acceleration = Wie weit schwingt es?
    .text = Ein Beschleunigungsaufnehmer gibt den Scheitelwert der Schwingbeschleunigung einer Linie an. Maschine: { $machine }.
    .a-hint-1 = Von der Beschleunigung zum Weg sind es zwei Schritte, jeder durch 2π mal die Frequenz; dann vom Scheitelwert zum ganzen Ausschlag.
    .a = Wie groß ist der Schwingweg als Spitze-Spitze-Wert?

item-vibrate-doubling = Wie schnell verdoppelt es sich?
    .text = Drei Ablesungen steigen um gleiche Anteile statt um gleiche Schritte, wie es ein sich ausbreitender Schaden tut. Maschine: { $machine }. Die Tage zählen von dem Tag an, an dem der Antrieb in Beharrung war. Sie wollen vor der Verdopplung wieder ablesen.
    .a-hint-1 = Legen Sie eine Gerade durch die natürlichen Logarithmen der Ablesungen. Zum Verdoppeln braucht es 0,693 ihres Anstiegs.
    .a = In wie vielen Tagen verdoppeln sich die Ablesungen, bei exponentiellem Wachstum durch alle drei (kleinste Fehlerquadrate der Logarithmen)?

item-vibrate-motor-group = Der Motor für sich
    .text = Der Motor ist für sich zu beurteilen. Maschine: { $machine }. Die Tabelle ordnet Elektromotoren nach der Höhe ihrer Welle über ihren Füßen: Gruppe 1 ab 315 mm (12,4 in), Gruppe 2 ab 160 mm (6,3 in); darunter hat sie keine Zeile.
    .a = Zu welcher Gruppe gehört der Motor?

item-gear-unit-line = Eine Linie eines Getriebes
    .text = Der Vertrag für das Getriebe nennt einen Einstufungswert der Schwinggeschwindigkeit. Maschine: { $machine }. Für eine einzelne Linie des Spektrums gilt er von 45 bis 1590 Hz (2700 bis 95 400 cpm); außerhalb dieses Bereichs ist weniger zulässig, im Verhältnis der Frequenzen hoch 0,7.
    .a-hint-1 = Unter 45 Hz ist das Verhältnis die Frequenz durch 45 Hz.
    .a = Wie groß darf die Linie bei der gegebenen Frequenz höchstens sein?

item-vibrate-shafts = Die Wellen und die Kette
    .text = Bevor Sie ein Spektrum ansehen, schreiben Sie auf, wo sich die Teile des Antriebs zeigen werden. Maschine: { $machine }.
    .a = Wie groß ist die Wellenfrequenz des Motors?
    .b = Wie groß ist die Wellenfrequenz der Abtriebswelle des Getriebes?
    .c-hint-1 = Zähnezahl und Drehzahl ein und desselben Kettenrads; das kleine sitzt auf der Abtriebswelle.
    .c = Mit welcher Frequenz setzen sich Rollen in das kleine Kettenrad ein?

item-vibrate-mesh = Die erste Getriebestufe
    .text = Die Zeichnung des Getriebes nennt die Zähnezahlen der ersten Stufe; das Ritzel dreht sich mit dem Motor. Maschine: { $machine }.
    .a = Mit welcher Frequenz greifen die Zähne der ersten Stufe ineinander?
    .b = Mit welcher Drehzahl dreht sich das Rad, das vom Ritzel getrieben wird?

item-vibrate-chain-loop = Ein Ticken, das wiederkehrt
    .text = Die Kette tickt, langsamer als sich das Kettenrad dreht. Maschine: { $machine }. Sie vermuten ein steifes Glied.
    .a-hint-1 = Bei einer Umdrehung rückt die Kette um so viele Glieder weiter, wie das kleine Kettenrad Zähne hat.
    .a = Wie oft kommt dasselbe Glied wieder?

item-vibrate-outer-ring = Eine Schadstelle am Außenring
    .text = Das Lager auf der Abtriebswelle ist aus seiner Zeichnung bekannt. Maschine: { $machine }.
    .a = Wie viele Wälzkörper laufen bei einer Umdrehung der Welle über eine Stelle des Außenrings?
    .b-hint-1 = Das Lager sitzt auf der Abtriebswelle.
    .b = Bei welcher Frequenz würde sich eine solche Schadstelle zeigen?

item-vibrate-inner-ring = Die anderen Teile eines Lagers
    .text = Die Zeichnung des Lagers auf der Abtriebswelle ist zur Hand. Maschine: { $machine }. Die Tabelle seiner Ordnungen fehlt, also machen Sie eine.
    .a = Wie oft dreht sich der Käfig je Umdrehung der Welle?
    .b = Wie viele Wälzkörper laufen bei einer Umdrehung der Welle über eine Stelle des Innenrings?
    .c = Wie oft dreht sich ein Wälzkörper bei einer Umdrehung der Welle um sich selbst?

item-vibrate-inner-frequency = Von Ordnungen zu Frequenzen
    .text = Eine Lagertabelle gibt die Ordnungen des Lagers auf der Abtriebswelle an: wie oft jedes Ereignis bei einer Umdrehung der Welle geschieht. Maschine: { $machine }.
    .a = Bei welcher Frequenz würde sich eine Schadstelle am Innenring zeigen?
    .b = Mit welcher Frequenz dreht sich der Käfig?
    .c = Mit welcher Frequenz dreht sich ein Wälzkörper um sich selbst?

item-vibrate-which-part = Welches Teil ist es?
    .text = Am Lagergehäuse wurde ein Spektrum aufgenommen, und daneben stehen die Frequenzen der Teile. Maschine: { $machine }. Eine Linie ragt über alle anderen.
    .a-hint-1 = Denken Sie auch an zweimal je Umdrehung, nicht nur an einmal. Ein Wälzlager kann bis zu 3 % abweichen.
    .a = Woher kommt die stärkste Linie?

item-vibrate-find-part = Vom Typenschild und der Zeichnung zum Teil
    .text = Der Analysator nennt die stärkste Linie. Maschine: { $machine }. Sie haben die Typenschilder und Zeichnungen, und noch ist nichts berechnet.
    .a = Wie groß ist die Wellenfrequenz des Motors?
    .b = Mit welcher Frequenz greifen die Zähne der ersten Stufe ineinander?
    .c = Bei welcher Frequenz würde sich eine Schadstelle am Außenring des Lagers auf der Abtriebswelle zeigen?
    .d = Woher kommt die stärkste Linie?

item-vibrate-twice = Zweimal je Umdrehung
    .text = Die stärkste Linie im Spektrum liegt bei { $vibrate-peak_frequency }. Maschine: { $machine }. Der Motor dreht mit { $vibrate-motor_frequency }, und das Gehäuse schwingt längs der Welle fast ebenso stark wie quer dazu.
    .a-option-1 = Die Ausrichtung des Motors zum Getriebe
    .a-option-2 = Die Auswuchtung des Motorläufers und seines Lüfters
    .a-option-3 = Den Außenring des Lagers auf der Abtriebswelle
    .a-option-4 = Die Zähne der ersten Getriebestufe, gleich am Motor
    .a-because = Zweimal je Umdrehung, und viel davon längs der Welle, ist das, was schlecht ausgerichtete Wellen gewöhnlich zeigen (übliche Praxis). Unwucht kommt einmal je Umdrehung und kaum längs der Welle; ein Lager und ein Zahneingriff haben eigene Frequenzen. Es ist ein Hinweis und kein Beweis: Freischalten, sichern und die Messuhren nehmen und auch Füße und Kupplung ansehen.
    .a = Was sehen Sie sich zuerst an?

item-vibrate-overall = Das Ganze aus seinen Linien
    .text = Ein Spektrum wurde Linie für Linie abgelesen; jede Linie ist ein Effektivwert. Maschine: { $machine }.
    .a-hint-1 = Die Quadrate werden zusammengezählt, nicht die Linien selbst.
    .a = Welcher Effektivwert der gesamten Schwinggeschwindigkeit gehört dazu?

item-vibrate-to-velocity = Vom Schwingweg zur Schwinggeschwindigkeit
    .text = Am Fuß des Motors zeigt das Messgerät einen Schwingweg als Spitze-Spitze-Wert, fast ganz bei einer Frequenz. Maschine: { $machine }. Die Grenzwerte gelten für den Effektivwert der Schwinggeschwindigkeit.
    .a = Wie groß ist der Scheitelwert der Schwinggeschwindigkeit?
    .b = Wie groß ist der Effektivwert der Schwinggeschwindigkeit?

item-vibrate-to-displacement = Von der Schwinggeschwindigkeit zum Schwingweg
    .text = Für eine Linie ist der Effektivwert der Schwinggeschwindigkeit gegeben. Maschine: { $machine }. Der Monteur will wissen, wie weit das Gehäuse wirklich schwingt.
    .a-hint-1 = Zuerst zum Scheitelwert, dann durch die Frequenz, dann von einer Seite zur anderen.
    .a = Wie groß ist der Schwingweg als Spitze-Spitze-Wert?

item-vibrate-acceleration = Was ein Beschleunigungsaufnehmer sieht
    .text = Dieselbe Schwingung, gesehen von einem Wegaufnehmer und von einem Beschleunigungsaufnehmer. Maschine: { $machine }.
    .a = Wie groß ist der Scheitelwert der Schwingbeschleunigung?

item-vibrate-from-acceleration = Zurück zur Schwinggeschwindigkeit
    .text = Ein Beschleunigungsaufnehmer gibt den Scheitelwert der Schwingbeschleunigung einer Linie an. Maschine: { $machine }. Die Grenzwerte gelten für den Effektivwert der Schwinggeschwindigkeit.
    .a = Wie groß ist der Scheitelwert der Schwinggeschwindigkeit?
    .b = Wie groß ist der Effektivwert der Schwinggeschwindigkeit?

item-vibrate-limits = Welche Grenzen gelten hier?
    .text = Sie haben die Tabelle der Schwingstärkezonen und stehen am Antrieb. Maschine: { $machine }. Sie schlagen die Grenzen nach, bevor Sie etwas ablesen.
    .a = Zu welcher Gruppe gehört die Maschine?
    .b = Wo liegt die Grenze zwischen den Zonen A und B?
    .c = Wo liegt die Grenze zwischen den Zonen B und C?
    .d = Wo liegt die Grenze zwischen den Zonen C und D?

item-vibrate-zone = A, B, C oder D?
    .text = Der Antrieb läuft warm mit seiner gewöhnlichen Last. Maschine: { $machine }. Der größte abgelesene Effektivwert aller Lagergehäuse und Richtungen ist aufgeschrieben, und die Grenzen sind nachgeschlagen.
    .a = In welcher Schwingstärkezone ist er?

item-vibrate-zone-plate = Vom Typenschild zur Zone
    .text = Der Antrieb läuft warm mit seiner gewöhnlichen Last. Maschine: { $machine }. Sie haben sein Typenschild, Sie sehen, wie er steht, und der größte abgelesene Effektivwert ist aufgeschrieben.
    .a = Zu welcher Gruppe gehört die Maschine?
    .b = Wo liegt die Grenze zwischen den Zonen B und C?
    .c = Wie viel von dieser Grenze ist ausgenutzt?
    .d = In welcher Schwingstärkezone ist er?

item-vibrate-zone-c = Was Zone C verlangt
    .text = Ein neuer Antrieb ist eingelaufen, und seine Schwingung bleibt in Zone C. Maschine: { $machine }.
    .a-option-1 = Er darf eine Zeit lang unter Beobachtung laufen, bis die Ursache behoben ist
    .a-option-2 = Er ist so gut wie jeder neue Antrieb, da alle in dieser Zone anfangen
    .a-option-3 = Er darf ohne zeitliche Begrenzung laufen, da allein Zone D Schaden anrichtet
    .a-option-4 = Er wird innerhalb einer Stunde zu Bruch gehen, also muss er sofort stehen
    .a-because = Neue Maschinen fallen gewöhnlich in Zone A. Zone B eignet sich für den Dauerbetrieb ohne zeitliche Begrenzung. Zone C nicht: Die Maschine läuft nur so lange, bis man sie in Ordnung bringen kann. In Zone D gilt die Schwingung als stark genug, um Schaden anzurichten (so wird die Norm zitiert).
    .a = Was folgt daraus?

item-vibrate-zone-d = Er rüttelt
    .text = Der Antrieb hat plötzlich zu rütteln begonnen; das Messgerät an der Öffnung der Schutzeinrichtung zeigt weit mehr als die Grenze zwischen den Zonen C und D. Maschine: { $machine }. Ein Kollege will mit der Hand fühlen, welche Schraube lose ist.
    .a-option-1 = Alle fernhalten, den Antrieb anhalten und sichern lassen und dann die Ursache suchen
    .a-option-2 = Den Kollegen fühlen lassen, da die Schrauben außerhalb der Schutzeinrichtung liegen
    .a-option-3 = Die Schrauben im Lauf anziehen, da man nur dann sieht, welche lose ist
    .a-option-4 = Bis zum Schichtende laufen lassen und in das Betriebsbuch schreiben
    .a-because = In Zone D kann eine Maschine auseinanderfliegen. Niemand steht daneben, niemand fasst sie an, und ein Schraubenschlüssel am laufenden Antrieb wird zum Geschoss. Angezogen wird nur an einem Antrieb, der gesichert und nachweislich energiefrei ist.
    .a = Was tun Sie?

item-vibrate-run-in = Vom ersten Start bis zur Beharrung
    .text = Die Schwingung des neuen Antriebs wurde beim ersten Start und viermal nach dem Einlauf abgelesen, immer am selben Ort und bei derselben Last. Maschine: { $machine }.
    .a = Wie groß ist der Bezugswert?
    .b = Um welchen Anteil ist die Schwingung während des Einlaufs gefallen?

item-vibrate-alarm = Wo wird die Warnung gesetzt?
    .text = Vier Ablesungen in der Beharrung liegen vor, und die Grenzen sind nachgeschlagen. Maschine: { $machine }. Warnung und Abschaltung sind einzustellen.
    .a = Wie groß ist der Bezugswert?
    .b-hint-1 = Ein Viertel der Grenze zwischen den Zonen B und C, über dem eigenen Bezugswert der Maschine.
    .b = Bei welcher Schwinggeschwindigkeit setzen Sie die Warnung?
    .c = Bis zu welcher Schwinggeschwindigkeit darf die Abschaltung eingestellt werden?

item-vibrate-alarm-verdict = Warnung oder Abschaltung?
    .text = Warnung und Abschaltung wurden nach dem Einlauf eingestellt. Maschine: { $machine }. Die heutige Ablesung liegt vor.
    .a = Wie lautet Ihr Urteil darüber?

item-vibrate-change = Hat sich die Schwingung geändert?
    .text = Die heutige Ablesung wird gegen die Ablesungen in der Beharrung gehalten. Maschine: { $machine }. Die Grenze zwischen den Zonen B und C ist nachgeschlagen.
    .a = Wie groß ist der Bezugswert?
    .b = Wie lautet Ihr Urteil über die Änderung?

item-vibrate-control = Grenzen aus der eigenen Streuung
    .text = Vier Ablesungen in der Beharrung, in der Reihenfolge, in der sie genommen wurden. Maschine: { $machine }. Eingriffsgrenzen sind zu ziehen.
    .a = Wie groß ist der Bezugswert?
    .b-hint-1 = Von jeder Ablesung zur nächsten, ohne Vorzeichen; es gibt eine Spannweite weniger als Ablesungen.
    .b = Wie groß ist die mittlere gleitende Spannweite?
    .c = Wo liegt die obere Eingriffsgrenze?
    .d = Wo liegt die untere Eingriffsgrenze?

item-vibrate-signal = Ein Signal oder Streuung?
    .text = Die Eingriffsgrenzen stehen im Diagramm. Maschine: { $machine }. Die heutige Ablesung liegt vor, und auch die Tabelle der Schwingstärkezonen ist nachgeschlagen.
    .a = Wie lautet Ihr Urteil über die Ablesung?

item-vibrate-trend-line = Wie lange noch, nach einer Geraden?
    .text = Drei Ablesungen steigen; die Tage zählen von dem Tag an, an dem der Antrieb in Beharrung war. Maschine: { $machine }. Sie wollen wissen, wann der Stillstand einzuplanen ist.
    .a-hint-1 = Zuerst die Mittel der Tage und der Ablesungen; durch beide geht die Gerade. Oder benutzen Sie die Ausgleichsgerade Ihres Taschenrechners.
    .a = In wie vielen Tagen ab der dritten Ablesung ist die Grenze zwischen den Zonen B und C erreicht, nach einer Geraden durch alle drei (kleinste Fehlerquadrate)?

item-vibrate-trend-growing = Wie lange noch, wenn es um Anteile wächst?
    .text = Drei Ablesungen steigen um gleiche Anteile statt um gleiche Schritte, wie es ein sich ausbreitender Schaden tut. Maschine: { $machine }. Die Tage zählen von dem Tag an, an dem der Antrieb in Beharrung war.
    .a-hint-1 = Nehmen Sie die Logarithmen der Ablesungen und der Grenze; dann ist es eine Gerade.
    .a = In wie vielen Tagen ab der dritten Ablesung ist die Grenze zwischen den Zonen B und C erreicht, bei exponentiellem Wachstum durch alle drei (kleinste Fehlerquadrate der Logarithmen)?

item-vibrate-rough-start = Unruhig am ersten Tag
    .text = Beim ersten Start zeigte der neue Antrieb { $vibrate-first }. Maschine: { $machine }. Jetzt ist er eingelaufen, und die letzten vier Ablesungen liegen um { $vibrate-baseline }, am selben Ort, bei derselben Last und Temperatur.
    .a-option-1 = Den Bezugswert aus den beharrenden Ablesungen bilden und die Warnung danach einstellen
    .a-option-2 = Einen Fehler melden, da die erste Ablesung so hoch war
    .a-option-3 = Die Warnung nach der ersten Ablesung einstellen, damit sie nicht zu oft kommt
    .a-option-4 = Als Bezugswert das Mittel aller fünf Ablesungen nehmen
    .a-because = Zähne, Dichtungen und Kette laufen sich in den ersten Stunden ein, und ein neuer Antrieb läuft dann unruhiger als jemals danach. Das allein ist kein Fehler, und die erste Ablesung bleibt im Prüfblatt stehen. Eine Warnung nach der ersten Ablesung würde die erste wirkliche Änderung verschlafen.
    .a = Was tun Sie?

item-vibrate-reading-order = Eine Ablesung nehmen
    .text = Sie nehmen die monatliche Schwingungsablesung. Maschine: { $machine }. Die gekennzeichnete Stelle am Lagergehäuse ist von außerhalb der Schutzeinrichtungen zu erreichen; ein Magnet hält den Aufnehmer.
    .a-step-1 = Denen Bescheid geben, die den Antrieb fahren, und sehen, dass alle Schutzeinrichtungen angebracht sind
    .a-step-2 = Leitung, Ärmel und Haare sichern und Gehör- und Augenschutz anlegen
    .a-step-3 = Sehen, dass Last, Drehzahl und Temperatur so sind wie bei den früheren Ablesungen
    .a-step-4 = Den Aufnehmer von außerhalb der Schutzeinrichtungen auf die gekennzeichnete Stelle setzen, rechtwinklig zur Fläche
    .a-step-5 = Warten, bis der Wert ruhig steht, und ihn in allen drei Richtungen ablesen
    .a-step-6 = Wert, Ort, Richtung, Last und Temperatur aufschreiben und gegen den Bezugswert halten
    .a-step-7 = Liegt er über der Warnung, es melden, bevor Sie gehen
    .a-because = Wer den Antrieb fährt, weiß, wo Sie sind, und nichts Loses kann erfasst werden. Eine Ablesung bei anderer Last oder an anderer Stelle ist eine andere Ablesung. Wo eine Stelle nur ohne Schutzeinrichtung zu erreichen ist, wird der Aufnehmer am gesicherten Antrieb angebracht und von außen abgelesen.
    .a = In welcher Reihenfolge arbeiten Sie?
