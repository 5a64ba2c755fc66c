## Aufgaben: Querkraft und Lager

item-load-for-life = Eine Last für die verlangte Lebensdauer
    .text = Der Betrieb verlangt vom kettenseitigen Lager eine bestimmte Lebensdauer. Maschine: { $machine }. Tragzahl und Bauart stehen in den Unterlagen des Lagers.
    .a = Wie groß ist der Lebensdauerexponent des kettenseitigen Lagers?
    .b-hint-1 = Wie viele Millionen Umdrehungen sind das? Die Last ist die Tragzahl durch die Wurzel aus dieser Zahl.
    .b = Unter welcher Last erreicht es die verlangte Lebensdauer? Rechnen Sie mit vier Stellen des Exponenten.

item-light-running = Einen Teil der Zeit leicht belastet
    .text = Der Antrieb läuft einen Teil der Zeit unter der jetzigen Last und die übrige Zeit leicht belastet, bei gleicher Drehzahl. Maschine: { $machine }. Im Betriebsbuch steht, welchen Anteil der Zeit er leicht belastet läuft und wie groß die Last des kettenseitigen Lagers dann ist.
    .a-hint-1 = Erheben Sie jede Last zur Potenz des Lebensdauerexponenten, bevor Sie das zeitliche Mittel bilden, und ziehen Sie am Ende die Wurzel.
    .a = Welche gleichbleibende Last würde das kettenseitige Lager ebenso schnell verbrauchen? Rechnen Sie mit vier Stellen des Lebensdauerexponenten.

item-strands-at-an-angle = Zwei Trume, die nicht ganz parallel sind
    .text = Die Kette läuft auf ihr kleines Kettenrad auf und in einem Winkel dazu wieder ab. Maschine: { $machine }. Die Züge sind ohne Faktoren angegeben.
    .a-hint-1 = Das Lasttrum trägt außer dem Zug des Leertrums den Zug der laufenden Kette.
    .a-hint-2 = Die Trume sind zwei Seiten eines Dreiecks mit dem Umschlingungswinkel dazwischen: Kosinussatz.
    .a = Wie stark ziehen beide Trume zusammen an der Welle, den Winkel zwischen ihnen eingerechnet?

item-connection-factor = Zuschlagfaktor aus einer Liste
    .text = Die Liste, die dieser Betrieb für Ketten benutzt, geht nach der Zähnezahl des Kettenrads auf der belasteten Welle. Weniger als 13 Zähne: 1,40. Von 13 bis 19 Zähnen: 1,30. 20 Zähne und mehr: 1,00. Maschine: { $machine }. Auf der Abtriebswelle sitzt das kleine Kettenrad, und der Zug im Lasttrum ist aus der Prüfung der Kette bekannt.
    .a = Wie groß ist der Zuschlagfaktor für die Abtriebswelle des Getriebes?
    .b = Wie groß ist die Querkraft der laufenden Kette mit allen Faktoren?

item-overhung-load = Zug am Wellenende
    .text = Das Drehmoment an der Abtriebswelle ist berechnet, und das kleine Kettenrad darauf zieht die Kette. Maschine: { $machine }.
    .a = Wie groß ist die Querkraft der laufenden Kette mit allen gegebenen Faktoren?

item-overhung-steps = Von den Typenschildern bis zum Wellenende
    .text = Noch niemand hat hier etwas gerechnet. Maschine: { $machine }. Sie haben einen Leistungsmesser, der zeigt, was der Motor an seiner Welle abgibt, den Drehzahlmesser, die Unterlagen des Getriebes und die Daten des Kettenrads.
    .a = Mit welcher Drehzahl läuft die Abtriebswelle?
    .b = Welches Drehmoment liegt an der Abtriebswelle an?
    .c = Wie groß ist der Teilkreisdurchmesser des Kettenrads auf der Abtriebswelle?
    .d = Wie groß ist die Querkraft der laufenden Kette mit allen gegebenen Faktoren?

item-overhung-whole = Die Querkraft in einem Zug gerechnet
    .text = Der Antrieb läuft mit seiner gewöhnlichen Last. Maschine: { $machine }. Alles, wovon die Last am Wellenende abhängt, steht auf diesem Blatt.
    .a = Wie groß ist die Querkraft der laufenden Kette mit allen gegebenen Faktoren?

item-whole-load = Beide Trume ziehen
    .text = Die Querkraft der laufenden Kette ist bekannt. Maschine: { $machine }. Daneben hängt das Leertrum zwischen den Kettenrädern und zieht ebenfalls.
    .a-hint-1 = Der Zug des Leertrums ist auch im Lasttrum vorhanden.
    .a = Wie groß ist die gesamte Last am Wellenende?

item-sag-to-shaft = Vom Durchhang zur Welle
    .text = Am freigeschalteten und gesicherten Antrieb wurden der Durchhang des Leertrums in der Trummitte unter einem Lineal und die Neigung des Trums mit einem Winkelmesser gemessen. Maschine: { $machine }.
    .a = Wie stark zieht das Leertrum?
    .b = Wie groß ist die gesamte Last am Wellenende?

item-slack-allowed = Was das Wellenende noch trüge
    .text = Die zulässige Last an der Stelle des Kettenrads und die Querkraft der laufenden Kette sind bekannt. Maschine: { $machine }. Was übrig ist, ist eine Schranke und keine Einstellung: Eingestellt wird die Kette nach dem zulässigen Bereich ihres Durchhangs.
    .a = Welchen Zug des Leertrums trüge das Wellenende neben der Last der laufenden Kette noch?

item-life-left = Was eine straffe Kette kostet
    .text = Die Kette ist zu straff gespannt. Maschine: { $machine }. Vergleichen Sie die Lebensdauer des kettenseitigen Lagers unter der gesamten Last mit der unter der Last der laufenden Kette allein.
    .a = Wie groß ist der Lebensdauerexponent des kettenseitigen Lagers?
    .b-hint-1 = Stelle und Drehzahl sind in beiden Fällen gleich, also zählen nur die Lasten.
    .b = Welchen Anteil der Lagerlebensdauer lässt der Zug des Leertrums übrig? Rechnen Sie mit vier Stellen des Exponenten.

item-sag-to-life = Vom Durchhang zum Lager
    .text = Das Leertrum hängt so, wie es am freigeschalteten und gesicherten Antrieb gemessen wurde. Maschine: { $machine }. Verfolgen Sie es bis zum kettenseitigen Lager.
    .a = Wie stark zieht das Leertrum?
    .b = Wie groß ist die gesamte Last am Wellenende?
    .c = Wie groß ist die Lagerkraft des kettenseitigen Lagers?
    .d = Wie groß ist die nominelle Lebensdauer des kettenseitigen Lagers in Stunden? Rechnen Sie mit vier Stellen des Lebensdauerexponenten.

item-allowed-here = Der Katalogwert an einer anderen Stelle
    .text = Die Unterlagen des Getriebes nennen die zulässige Querkraft in der Mitte des Wellenendes. Maschine: { $machine }. Die Mittelebene des Kettenrads liegt anderswo.
    .a = Welche Last ist an der Stelle des Kettenrads zulässig, wenn das kettenseitige Lager maßgebend ist?

item-load-margin = Reserve am Wellenende
    .text = Die gesamte Last am Wellenende ist bekannt. Maschine: { $machine }. Der Katalogwert gilt für die Mitte des Wellenendes.
    .a = Welche Last ist an der Stelle des Kettenrads zulässig, wenn das kettenseitige Lager maßgebend ist?
    .b = Wie groß ist die Reserve, also die zulässige Last durch die gesamte Last?

item-verdict-short = Annehmen, nach innen setzen oder anhalten
    .text = Jemand hat berechnet, was das Wellenende an der Stelle des Kettenrads tragen darf. Maschine: { $machine }. Den Rest haben Sie.
    .a = Wie groß ist die gesamte Last am Wellenende?
    .b = Wie lautet das Urteil?

item-load-verdict = Das Wellenende beurteilen
    .text = Beurteilen Sie die Last am Wellenende: was zieht, und was dort zulässig ist, wo es zieht. Maschine: { $machine }. Das kettenseitige Lager ist maßgebend.
    .a-hint-1 = Zwei Lasten werden gegeneinander gehalten: alles, was zieht, und was an eben dieser Stelle zulässig ist.
    .a = Wie lautet das Urteil?

item-farthest-place = Wie weit außen es sitzen darf
    .text = Eine Schutzeinrichtung ist im Weg, und weiter außen ließe sich das Kettenrad leichter anbringen. Maschine: { $machine }. Die gesamte Last am Wellenende ist bekannt.
    .a = Wie weit darf die Mittelebene des Kettenrads vom kettenseitigen Lager entfernt sein, wenn dieses maßgebend ist?

item-smallest-sprocket = Ein kleineres Kettenrad?
    .text = Jemand wünscht auf der Abtriebswelle ein kleineres Kettenrad, um eine niedrigere Drehzahl zu erhalten. Maschine: { $machine }. Drehmoment, Stelle und Zug im Leertrum bleiben, wie sie sind.
    .a-hint-1 = Ziehen Sie zuerst den doppelten Zug des Leertrums von der zulässigen Last ab: Der Rest bleibt für die laufende Kette.
    .a = Welcher kleinste Teilkreisdurchmesser hält die zulässige Last noch ein?

item-near-reaction = Das Lager neben dem Kettenrad
    .text = Das Kettenrad sitzt fliegend außerhalb der beiden Lager der Abtriebswelle. Maschine: { $machine }.
    .a-hint-1 = Nehmen Sie die Hebel um das ferne Lager.
    .a = Wie groß ist die Lagerkraft des kettenseitigen Lagers aus der gesamten Last?

item-both-reactions = Beide Lager
    .text = Die gesamte Last am Wellenende ist bekannt. Maschine: { $machine }. Die Verzahnungskräfte im Getriebe bleiben außer Betracht.
    .a = Wie groß ist die Lagerkraft des fernen Lagers?
    .b-hint-1 = Das ferne Lager hält das hintere Ende der Welle fest: Es zieht in dieselbe Richtung wie die Kette.
    .b = Wie groß ist die Lagerkraft des kettenseitigen Lagers?

item-bearing-life = Nominelle Lebensdauer in Stunden
    .text = Die Lagerkraft des kettenseitigen Lagers ist bekannt. Maschine: { $machine }. Tragzahl und Bauart stehen in den Unterlagen des Lagers.
    .a = Wie groß ist die nominelle Lebensdauer des kettenseitigen Lagers in Stunden? Rechnen Sie mit vier Stellen des Lebensdauerexponenten.

item-life-turns = Erst Umdrehungen, dann Stunden
    .text = Die Lagerkraft des kettenseitigen Lagers ist bekannt. Maschine: { $machine }.
    .a = Wie groß ist der Lebensdauerexponent des kettenseitigen Lagers?
    .b = Wie groß ist die nominelle Lebensdauer des kettenseitigen Lagers in Millionen Umdrehungen? Rechnen Sie mit vier Stellen des Exponenten.
    .c = Wie viele Stunden sind das?

item-shaft-bending = Die Welle wird gebogen
    .text = Das Kettenrad sitzt fliegend jenseits des kettenseitigen Lagers, wo die Welle rund ist und einen einzigen Durchmesser hat. Maschine: { $machine }.
    .a = Wie groß ist das Biegemoment der Welle am kettenseitigen Lager?
    .b = Wie groß ist dort die Nennspannung aus Biegung?

item-shaft-torsion = Die Welle wird verdreht
    .text = Die Abtriebswelle trägt ihr Drehmoment vom Zahnrad zum Kettenrad. Maschine: { $machine }.
    .a = Wie groß ist die Nennspannung der Welle aus Torsion?

item-shaft-combined = Gebogen und verdreht zugleich
    .text = Biegemoment und Drehmoment der Abtriebswelle am kettenseitigen Lager sind bekannt. Maschine: { $machine }. Nehmen Sie die Nennspannungen; der Konstrukteur des Herstellers multipliziert sie für Wellenabsätze und Passfedernuten.
    .a = Wie groß ist die Biegespannung?
    .b = Wie groß ist die Torsionsspannung?
    .c = Wie groß ist die Vergleichsspannung aus beiden, die gegen eine Grenze für Zug zu halten ist?
    .d = Wie groß ist die größte Schubspannung aus beiden, die gegen eine Grenze für Schub zu halten ist?

item-why-tight-hurts = Straff ist nicht sicher
    .text = Ein Kollege will die Kette straffer spannen, als auf dem Blatt steht, damit sie nicht überspringen kann. Maschine: { $machine }.
    .a-option-1 = Am Wellenende zieht der Zug des Leertrums doppelt, und das kettenseitige Lager lebt kürzer
    .a-option-2 = Das Wellenende spürt nichts davon, da das Leertrum kein Drehmoment überträgt
    .a-option-3 = Das Wellenende wird entlastet, weil sich dann beide Trume das Drehmoment teilen
    .a-option-4 = Das Drehmoment an der Welle wächst, sodass der Motor im selben Maß mehr Leistung aufnimmt
    .a-because = Der Zug im Leertrum erzeugt kein Drehmoment, denn beide Trume haben ihn, und ihr Unterschied bleibt; die Welle aber spürt ihre Summe, und die Lebensdauer des kettenseitigen Lagers fällt mit der dritten oder einer höheren Potenz seiner Last. Eine Kette arbeitet mit ihren Zähnen und braucht keine Vorspannung: Was sie am Überspringen hindert, sind der richtige Durchhang, genug Umschlingung und wenig Verschleiß.
    .a = Was bewirkt eine zu straffe Kette am Getriebe?

item-farther-out = Bündig mit der Stirnfläche der Welle
    .text = Das Kettenrad ist neu anzubringen, und auf dem Wellenende ist Platz. Maschine: { $machine }. Die Kette muss fluchten, wo immer das Kettenrad sitzt, und das andere Kettenrad lässt sich passend versetzen.
    .a-option-1 = So nahe am Gehäuse, wie Schutzeinrichtung, Nabe, Dichtung und Unterlagen es zulassen
    .a-option-2 = Genau bündig mit der Stirnfläche der Welle, wo die Schrauben am besten zu erreichen sind
    .a-option-3 = In der Mitte des Wellenendes, da es dort mehr tragen darf als irgendwo sonst
    .a-option-4 = Irgendwo: Das Drehmoment ist an jeder Stelle gleich
    .a-because = Das Drehmoment ändert sich mit der Stelle nicht, wohl aber die Hebel: Je weiter außen, desto größer werden die Lagerkraft des kettenseitigen Lagers und die Biegung der Welle. Die Mitte ist nur die Stelle, auf die sich der Katalogwert bezieht; weiter innen ist mehr zulässig. Das letzte Wort haben die Unterlagen des Herstellers.
    .a = Wo auf das Wellenende kommt das Kettenrad?

item-which-list = Zwei Listen
    .text = Für die Kette finden Sie zwei Zuschlagfaktoren: einen in den Unterlagen des Getriebes und einen anderen in einem Handbuch. Maschine: { $machine }.
    .a-option-1 = Den aus den Unterlagen des Getriebes, und das Prüfblatt nennt die Liste
    .a-option-2 = Das Mittel der beiden, da beide übliche Praxis sind und Listen auseinandergehen
    .a-option-3 = Den kleineren, weil eine Kette ohne Vorspannung läuft und so weniger zieht
    .a-option-4 = Keinen: Der Faktor lässt die Last nur größer aussehen, als sie wirklich ist
    .a-because = Die Faktoren sind übliche Praxis und keine Norm, und die Listen stimmen nicht überein. Faktor und Katalogwert eines Herstellers gehören zusammen, denn der Katalogwert wurde mit Blick auf diese Liste aufgestellt.
    .a = Welchen nehmen Sie?

item-overloaded-shaft-end = Mehr, als das Wellenende trägt
    .text = Sie stellen fest, dass die gesamte Last am Wellenende { $load-total } beträgt. Maschine: { $machine }. Selbst in der Mitte des Wellenendes sind nur { $load-rating_middle } zulässig. So läuft es seit gestern.
    .a-option-1 = Anhalten und sichern lassen, bis die Verantwortlichen den Antrieb oder seine Last geändert haben
    .a-option-2 = Laufen lassen und aufschreiben, denn ein Tag Betrieb beweist, dass die Welle fest genug ist
    .a-option-3 = Das Kettenrad bei der nächsten Wartung ein Stück nach innen setzen und bis dahin laufen lassen
    .a-option-4 = Die Kette im Lauf lockern, bis die Last niedrig genug ist
    .a-option-5 = Die Schutzeinrichtung abnehmen und im Lauf beobachten, ob das Wellenende taumelt
    .a-because = Eine Welle biegt sich bei jeder Umdrehung hin und her: Nach vielen Umdrehungen bricht sie durch Ermüdung ohne jede Warnung, und für diesen Augenblick ist die Schutzeinrichtung da. Wer für den Antrieb verantwortlich ist, entscheidet mit den Werten des Herstellers über ein größeres Kettenrad, ein Außenlager, weniger Last oder ein anderes Getriebe. Melden Sie es sofort.
    .a = Was tun Sie?

item-move-sprocket-order = Das Kettenrad nach innen setzen
    .text = Das Kettenrad auf der Abtriebswelle sitzt zu weit außen. Maschine: { $machine }. Sie sind befugt, es nach innen zu setzen.
    .a-step-1 = Den Antrieb freischalten und gegen Wiedereinschalten sichern, durch einen Einschaltversuch die Energiefreiheit feststellen
    .a-step-2 = Die Last auf der getriebenen Seite abnehmen oder festsetzen lassen und die Schutzeinrichtung abnehmen
    .a-step-3 = Die Kette an der Spannvorrichtung lockern, öffnen und beiseitelegen
    .a-step-4 = Das Kettenrad lösen, nach innen setzen und mit dem vorgegebenen Drehmoment befestigen
    .a-step-5 = Das andere Kettenrad dazu in Flucht bringen
    .a-step-6 = Die Kette schließen, ihren Durchhang einstellen und die Stelle des Kettenrads noch einmal messen
    .a-step-7 = Die Schutzeinrichtung befestigen und sehen, dass niemand im Gefahrenbereich ist, bevor die Schlösser abgenommen werden
    .a-because = Zuerst die Energie, dann die gespeicherte Last, dann die Kette; das Kettenrad wird ohne Kette versetzt. Die Flucht kommt vor dem Durchhang, denn das Versetzen eines Kettenrads ändert beides. Schutzeinrichtung und Menschen kommen vor dem Einschalten.
    .a = In welcher Reihenfolge arbeiten Sie?

item-load-check-order = Das Wellenende nachprüfen
    .text = Sie sollen beurteilen, ob die Kette zu stark an der Abtriebswelle des Getriebes zieht. Maschine: { $machine }.
    .a-step-1 = Die abgegebene Leistung, die Drehzahl des Motors, die Übersetzung und den Wirkungsgrad ablesen
    .a-step-2 = Das Drehmoment an der Abtriebswelle berechnen
    .a-step-3 = Das doppelte Drehmoment durch den Teilkreisdurchmesser des Kettenrads teilen und mit den Faktoren malnehmen
    .a-step-4 = Den doppelten Zug des Leertrums dazuzählen
    .a-step-5 = Diese gesamte Last gegen die zulässige Last an der Stelle des Kettenrads halten
    .a-step-6 = Annehmen, das Kettenrad nach innen setzen lassen oder anhalten, und aufschreiben, welche Liste und welcher Katalogwert benutzt wurden
    .a-because = Leistung und Drehzahl ergeben das Drehmoment, Drehmoment und Halbmesser den Zug, der Zug des Leertrums kommt dazu, und erst dann ist eine Last da, die sich beurteilen lässt.
    .a = Jeder Schritt braucht den vorigen. In welcher Reihenfolge rechnen Sie?
