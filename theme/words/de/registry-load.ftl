## Größen, Beziehungen, ihre Quellen und Fehler: Querkraft und Lager

quantity-load-connection-factor = Zuschlagfaktor des Übertragungselements

quantity-load-location-factor = Ortsfaktor

quantity-load-service-factor = Betriebsfaktor für die Querkraft

quantity-load-overhung = Querkraft der laufenden Kette

quantity-load-total = gesamte Last am Wellenende

quantity-load-bearing-span = Abstand der beiden Lager der Abtriebswelle

quantity-load-shaft-middle = Abstand vom kettenseitigen Lager zur Mitte des Wellenendes

quantity-load-sprocket-distance = Abstand vom kettenseitigen Lager zur Mittelebene des Kettenrads

quantity-load-rating-share = Querkraft als Anteil des Katalogwerts

quantity-load-rating-middle = zulässige Querkraft in der Mitte des Wellenendes (Katalogwert)

quantity-load-allowable = an der Stelle des Kettenrads zulässige Last

quantity-load-margin = zulässige Last durch gesamte Last

quantity-load-verdict = Urteil über die Last am Wellenende
    .choice-1 = zulässig
    .choice-2 = Kettenrad nach innen setzen
    .choice-3 = anhalten: überlastet

quantity-load-farthest = größter Abstand vom kettenseitigen Lager, in dem die Last zulässig ist

quantity-load-slack-allowed = Zug des Leertrums, den das Wellenende noch trüge

quantity-load-smallest-sprocket = kleinster an der Stelle des Kettenrads zulässiger Teilkreisdurchmesser

quantity-load-reaction-far = Lagerkraft des fernen Lagers

quantity-load-bearing-kind = Bauart des kettenseitigen Lagers
    .choice-1 = Kugellager
    .choice-2 = Rollenlager

quantity-load-life-exponent = Lebensdauerexponent

quantity-load-design-life = geforderte Lebensdauer des kettenseitigen Lagers

quantity-load-bearing-capacity = dynamische Tragzahl des kettenseitigen Lagers

quantity-load-life-turns = nominelle Lebensdauer des kettenseitigen Lagers in Umdrehungen

quantity-load-life = nominelle Lebensdauer des kettenseitigen Lagers

quantity-load-life-share = Anteil der Lagerlebensdauer, den das Leertrum übrig lässt

quantity-load-moment = Biegemoment der Welle am kettenseitigen Lager

quantity-load-design-stress = Spannung, für die die Welle ausgelegt wurde

quantity-load-bending-stress = Biegespannung der Welle am kettenseitigen Lager

quantity-load-torsion-stress = Torsionsspannung der Welle

quantity-load-equivalent-stress = Vergleichsspannung aus Biegung und Torsion

quantity-load-max-shear = größte Schubspannung aus Biegung und Torsion

quantity-load-resultant = Zug beider Trume zusammen, mit dem Winkel zwischen ihnen

quantity-load-load-for-life = Last, bei der das kettenseitige Lager die geforderte Lebensdauer erreicht

quantity-load-light-time = Anteil der Laufzeit, in dem der Antrieb leer läuft

quantity-load-light-share = Last des kettenseitigen Lagers im Leerlauf als Anteil der jetzigen

quantity-load-mean-load = gleichbleibende Last, die das kettenseitige Lager ebenso schnell verbraucht

relation-load-connection-factor-teeth = Zuschlagfaktor einer Kette, aus der Liste nach Zähnezahl
    .method = Weniger als 13 Zähne: 1,40. 13 bis 19 Zähne: 1,30. 20 Zähne und mehr: 1,00.
    .limits = die Listen der Hersteller sind verschieden: Liste nennen und dem Hersteller des Getriebes folgen
    .turn-large-sprocket = Sie haben mit der Zähnezahl des großen Kettenrads nachgesehen; der Faktor richtet sich nach dem Kettenrad auf dieser Welle.
    .turn-first-row = Sie haben die Zeile für weniger als 13 Zähne genommen.
    .turn-middle-row = Sie haben die Zeile für 13 bis 19 Zähne genommen.
    .turn-last-row = Sie haben die Zeile für 20 Zähne und mehr genommen.
    .turn-gear = Sie haben den Faktor eines Zahnrads genommen; für Ketten gibt es eigene Zeilen.
    .turn-v-belt = Sie haben den Faktor eines Keilriemens genommen; eine Kette braucht keine Vorspannung, ihr Faktor ist kleiner.

relation-load-overhung-torque = Querkraft aus dem Drehmoment der Abtriebswelle
    .limits = Teilkreisdurchmesser, nie Außendurchmesser; Faktoren aus der Liste des Getriebeherstellers, denn die Listen sind verschieden; entweder den Ortsfaktor oder die an der Stelle des Kettenrads zulässige Last anwenden, nicht beides
    .turn-radius-for-diameter = Sie haben das doppelte Drehmoment durch den Radius geteilt; die 2 in der Formel macht aus dem Teilkreisdurchmesser schon den Radius.
    .turn-diameter-for-radius = Sie haben das Drehmoment durch den ganzen Durchmesser geteilt; die Kette zieht am Radius, teilen Sie also das doppelte Drehmoment durch den Durchmesser.
    .turn-motor-torque = Sie haben das Drehmoment des Motors benutzt; das Kettenrad sitzt auf der Abtriebswelle, deren Drehmoment um die Übersetzung größer ist.
    .turn-ratio-again = Sie haben das Abtriebsdrehmoment noch einmal mit der Übersetzung malgenommen; sie steckt schon darin.
    .turn-efficiency-again = Sie haben den Wirkungsgrad noch einmal berücksichtigt; im Abtriebsdrehmoment sind die Verluste schon abgezogen.
    .turn-connection-factor-left-out = Sie haben den Zuschlagfaktor weggelassen; nehmen Sie die Querkraft mit ihm mal.
    .turn-location-factor-left-out = Sie haben den Ortsfaktor weggelassen; nehmen Sie die Querkraft mit ihm mal.
    .turn-service-factor-left-out = Sie haben den Betriebsfaktor weggelassen; nehmen Sie die Querkraft mit ihm mal.
    .turn-all-factors-left-out = Sie haben den bloßen Kettenzug angegeben; die Querkraft ist der Zug mal Zuschlagfaktor, Ortsfaktor und Betriebsfaktor.
    .turn-divided-by-the-factors = Sie haben durch die Faktoren geteilt; jeder von ihnen macht die Querkraft größer, nehmen Sie also mal.
    .turn-factors-added = Sie haben die drei Faktoren zusammengezählt; nehmen Sie sie miteinander mal.
    .turn-outside-diameter = Sie haben den Außendurchmesser des Kettenrads benutzt; die Kette zieht am Teilkreis.
    .turn-large-sprocket = Sie haben den Durchmesser des großen Kettenrads benutzt; auf der Getriebewelle sitzt das kleine.
    .turn-shaft-diameter = Sie haben den Durchmesser der Welle benutzt; die Kette zieht am Teilkreis des Kettenrads.
    .turn-arm-along-the-shaft = Sie haben das Drehmoment durch den Abstand längs der Welle geteilt; der Hebelarm des Drehmoments ist der Radius des Kettenrads.

relation-load-overhung-power = Querkraft unmittelbar aus Leistung und Drehzahl
    .limits = 126 000 ist um 0,04 % abgerundet
    .turn-motor-speed = Sie haben die Drehzahl des Motors benutzt; das Kettenrad dreht mit der Abtriebswelle.
    .turn-efficiency-left-out = Sie haben den Wirkungsgrad weggelassen; was im Getriebe verloren geht, kommt nie an die Kette.
    .turn-efficiency-divided = Sie haben durch den Wirkungsgrad geteilt; die Verluste machen die Querkraft kleiner, nehmen Sie also mal.
    .turn-plate-power = Sie haben die Leistung auf dem Typenschild benutzt; hier zählt, was der Motor abgibt, am Leistungsmesser abgelesen.
    .turn-radius-for-diameter = Sie haben durch den Radius geteilt; die Konstante dieser Formel gilt für den Teilkreisdurchmesser.
    .turn-torque-s-constant = Sie haben die Konstante der Drehmomentformel genommen; mit dem Durchmesser unter dem Bruchstrich ist die Konstante doppelt so groß.
    .turn-connection-factor-left-out = Sie haben den Zuschlagfaktor weggelassen; nehmen Sie die Querkraft mit ihm mal.
    .turn-location-factor-left-out = Sie haben den Ortsfaktor weggelassen; nehmen Sie die Querkraft mit ihm mal.
    .turn-service-factor-left-out = Sie haben den Betriebsfaktor weggelassen; nehmen Sie die Querkraft mit ihm mal.
    .turn-all-factors-left-out = Sie haben den bloßen Kettenzug angegeben; die Querkraft ist der Zug mal Zuschlagfaktor, Ortsfaktor und Betriebsfaktor.

relation-load-overhung-pull = Querkraft aus dem Betriebszug der Kette
    .turn-connection-factor-left-out = Sie haben den Zuschlagfaktor weggelassen; nehmen Sie den Zug mit ihm mal.
    .turn-location-factor-left-out = Sie haben den Ortsfaktor weggelassen; nehmen Sie den Zug mit ihm mal.
    .turn-service-factor-left-out = Sie haben den Betriebsfaktor weggelassen; nehmen Sie den Zug mit ihm mal.
    .turn-all-factors-left-out = Sie haben den bloßen Kettenzug angegeben; die Querkraft ist der Zug mal Zuschlagfaktor, Ortsfaktor und Betriebsfaktor.
    .turn-divided-by-the-factors = Sie haben durch die Faktoren geteilt; jeder von ihnen macht die Querkraft größer, nehmen Sie also mal.
    .turn-both-strands = Sie haben den Zug für zwei Trume verdoppelt; den Betriebszug trägt nur das Lasttrum.

relation-load-total-slack = Gesamte Last am Wellenende, mit dem Zug im Leertrum
    .limits = Trume als parallel angenommen
    .source = Statik zweier paralleler Trume: das Leertrum zieht mit seinem Zug, das Lasttrum dazu noch mit dem Betriebszug
    .turn-slack-tension-once = Sie haben den Zug im Leertrum einmal dazugezählt; beide Trume tragen ihn, also zählt er doppelt.
    .turn-slack-tension-left-out = Sie haben den Zug im Leertrum weggelassen; beide Trume ziehen damit, also kommt er zweimal dazu.
    .turn-slack-tension-subtracted = Sie haben den Zug im Leertrum abgezogen; beide Trume ziehen die Welle in dieselbe Richtung, zählen Sie ihn also dazu.
    .turn-strands-difference = Sie haben die Differenz der beiden Trume genommen; sie ergibt das Drehmoment, aber die Welle trägt die Summe.
    .turn-slack-tension-four-times = Sie haben den Zug im Leertrum viermal dazugezählt; er zählt einmal für jedes der beiden Trume.
    .turn-doubled = Sie haben auch die Querkraft der laufenden Kette verdoppelt; nur der Zug im Leertrum zählt doppelt.
    .turn-slack-tension-alone = Sie haben nur den Zug angegeben, auf den die Kette eingestellt ist; die Querkraft der laufenden Kette kommt noch dazu.

relation-load-resultant-wrap = Zug beider Trume zusammen, aus dem Winkel zwischen ihnen
    .limits = die bloßen Züge, ohne Faktoren; bei 180° Umschlingung ist es der Betriebszug und zweimal der Zug im Leertrum
    .source = Kosinussatz: die Trume stehen unter 180° minus Umschlingungswinkel zueinander
    .turn-difference = Sie haben den Betriebszug angegeben; auch das Leertrum zieht an der Welle, und das Lasttrum zieht um ebenso viel mehr.
    .turn-tight-strand-without-the-slack-pull = Sie haben dem Lasttrum nur den Betriebszug gegeben; es trägt dazu noch den Zug im Leertrum.
    .turn-slack-strand-left-out = Sie haben das Leertrum weggelassen; beide Trume ziehen an der Welle.
    .turn-right-angle = Sie haben die Quadrate zusammengezählt, als stünden die Trume im rechten Winkel; sie sind nahezu parallel.
    .turn-plus-for-minus = Sie haben vor den Kosinus des Umschlingungswinkels ein Plus gesetzt; der Winkel ist größer als ein rechter, sein Kosinus also schon negativ.
    .turn-half-the-wrap = Sie haben den halben Umschlingungswinkel genommen; die Trume laufen an den beiden Enden des ganzen ab.
    .turn-angle-left-out = Sie haben die beiden Züge einfach zusammengezählt; die Trume sind nicht ganz parallel.

relation-load-slack-allowed-loads = Zug des Leertrums, den das Wellenende noch trüge
    .limits = eine Schranke des Wellenendes und keine Einstellung: die Kette wird nach dem zulässigen Bereich ihres Durchhangs eingestellt, der lange vorher erreicht ist
    .source = gesamte Last gleich der zulässigen gesetzt
    .turn-not-halved = Sie haben dem Leertrum alles gegeben, was übrig ist; beide Trume tragen seinen Zug, also darf jedes die Hälfte haben.
    .turn-rating-as-it-stands = Sie haben den Katalogwert für die Mitte des Wellenendes benutzt; nehmen Sie die Last, die an der Stelle des Kettenrads zulässig ist.
    .turn-running-load-left-out = Sie haben dem Leertrum die ganze zulässige Last gegeben; zuerst nimmt sich die laufende Kette ihren Teil.
    .turn-whole-load = Sie haben die gesamte Last abgezogen, in der der jetzige Zug im Leertrum schon steckt; ziehen Sie die Querkraft der laufenden Kette ab.

relation-load-smallest-sprocket-allowed = Kleinster Teilkreisdurchmesser, der die zulässige Last einhält
    .limits = Drehmoment und Zug im Leertrum unverändert; das nächstgrößere Kettenrad nehmen
    .source = Querkraft der laufenden Kette und Zug im Leertrum gleich der zulässigen Last gesetzt
    .turn-radius = Sie haben den Radius ausgerechnet; gefragt ist der Teilkreisdurchmesser.
    .turn-slack-tension-left-out = Sie haben der laufenden Kette die ganze zulässige Last gegeben; vorher geht der doppelte Zug im Leertrum ab.
    .turn-slack-tension-once = Sie haben den Zug im Leertrum einmal abgezogen; beide Trume tragen ihn, also geht er zweimal ab.
    .turn-rating = Sie haben den Katalogwert für die Mitte des Wellenendes benutzt; nehmen Sie die Last, die an der Stelle des Kettenrads zulässig ist.
    .turn-motor-torque = Sie haben das Drehmoment des Motors benutzt; das Kettenrad sitzt auf der Abtriebswelle, deren Drehmoment um die Übersetzung größer ist.
    .turn-connection-factor-left-out = Sie haben den Zuschlagfaktor weggelassen; er macht das Kettenrad größer.
    .turn-location-factor-left-out = Sie haben den Ortsfaktor weggelassen; er macht das Kettenrad größer.
    .turn-service-factor-left-out = Sie haben den Betriebsfaktor weggelassen; er macht das Kettenrad größer.
    .turn-all-factors-left-out = Sie haben Zuschlagfaktor, Ortsfaktor und Betriebsfaktor weggelassen; sie machen das Kettenrad größer.
    .turn-upside-down = Sie haben den Durchmesser mit der Last wachsen lassen; ein kleineres Kettenrad macht die Last größer, das Verhältnis gehört also umgedreht.

relation-load-rating-middle-share = Katalogwert der Querkraft aus dem genutzten Anteil
    .source = Definition des Anteils

relation-load-allowable-place = An der Stelle des Kettenrads zulässige Last
    .limits = solange das kettenseitige Lager maßgebend ist; weit außen ist es die Biegung der Welle, und weniger ist zulässig
    .source = Statik des überkragenden Trägers: dieselbe Kraft am kettenseitigen Lager wie beim Katalogwert
    .turn-rating-as-it-stands = Sie haben den Katalogwert genommen, wie er dasteht; er gilt für die Mitte des Wellenendes, und das Kettenrad sitzt woanders.
    .turn-distances-alone = Sie haben nur mit den Abständen vom kettenseitigen Lager umgerechnet; zu beiden gehört der Lagerabstand, denn die Welle hebelt um das ferne Lager.
    .turn-upside-down = Sie haben das Verhältnis auf den Kopf gestellt; weiter außen ist weniger zulässig, weiter innen mehr.
    .turn-straight-line = Sie haben die Last geradlinig mit dem Abstand fallen lassen; sie fällt mit dem Kehrwert von Lagerabstand plus Abstand.
    .turn-span-alone = Sie haben die Stelle weggelassen, für die der Katalogwert gilt; das ist die Mitte des Wellenendes, zählen Sie also diesen Abstand über dem Bruchstrich zum Lagerabstand.
    .turn-at-the-bearing = Sie haben den Abstand des Kettenrads weggelassen und die Last angegeben, die in der Ebene des kettenseitigen Lagers zulässig ist.
    .turn-distance-as-factor = Sie haben nur durch den Abstand des Kettenrads geteilt; teilen Sie durch den Lagerabstand plus diesen Abstand.

relation-load-margin-loads = Zulässige Last durch gesamte Last
    .limits = mindestens 1
    .source = Definition der Reserve
    .turn-inverted = Sie haben die Last durch die zulässige geteilt; die Reserve ist die zulässige durch die vorhandene, und über 1 ist es sicher.
    .turn-rating-as-it-stands = Sie haben den Katalogwert für die Mitte des Wellenendes benutzt; nehmen Sie die Last, die an der Stelle des Kettenrads zulässig ist.
    .turn-slack-tension-left-out = Sie haben nur durch die Querkraft der laufenden Kette geteilt; auch der Zug im Leertrum wirkt auf die Welle.
    .turn-surplus = Sie haben den Überschuss über die Last angegeben; die gefragte Reserve ist das ganze Verhältnis.

relation-load-verdict-place = Urteil über die Last am Wellenende
    .method = An der Stelle des Kettenrads zulässig: zulässig. Nur in der Mitte des Wellenendes zulässig: das Kettenrad nach innen setzen lassen. Auch dort nicht zulässig: anhalten, das Wellenende ist überlastet.
    .limits = die gesamte Last, mit dem Zug im Leertrum; versetzt wird nur am freigeschalteten und gegen Wiedereinschalten gesicherten Antrieb; was der Hersteller angibt, geht vor
    .turn-rating-as-it-stands = Sie haben die Last gegen den Katalogwert gehalten, wie er dasteht; er gilt für die Mitte des Wellenendes, nehmen Sie also die Last, die an der Stelle des Kettenrads zulässig ist.
    .turn-slack-tension-left-out = Sie haben nur die Querkraft der laufenden Kette beurteilt; auch der Zug im Leertrum wirkt auf die Welle.
    .turn-other-way-round = Sie haben die beiden Lasten verkehrt herum verglichen; die vorhandene darf nicht größer sein als die zulässige.
    .turn-moving-in-cannot-help = Sie haben das Kettenrad nach innen setzen lassen; die Last ist aber auch in der Mitte des Wellenendes zu groß: So darf der Antrieb nicht laufen.
    .turn-stopped-too-soon = Sie haben den Antrieb angehalten; in der Mitte des Wellenendes ist dieselbe Last aber zulässig: Setzen Sie das Kettenrad nach innen.

relation-load-farthest-load = Größter Abstand vom kettenseitigen Lager, in dem die Last zulässig ist
    .limits = solange das kettenseitige Lager maßgebend ist, und nie über das Ende der Welle hinaus
    .source = Statik des überkragenden Trägers: dieselbe Kraft am kettenseitigen Lager wie beim Katalogwert
    .turn-span-not-taken-off = Sie haben beim Abstand vom fernen Lager aufgehört; ziehen Sie den Lagerabstand ab, denn gemessen wird ab dem kettenseitigen.
    .turn-distances-alone = Sie haben nur den Abstand umgerechnet; der Lagerabstand gehört dazu, denn die Welle hebelt um das ferne Lager.
    .turn-upside-down = Sie haben das Verhältnis der Lasten auf den Kopf gestellt; eine kleinere darf weiter außen wirken.
    .turn-slack-tension-left-out = Sie haben die Stelle nur für die Querkraft der laufenden Kette gesucht; auch der Zug im Leertrum wirkt auf die Welle.
    .turn-middle-taken-off = Sie haben ab der Mitte des Wellenendes gemessen; gefragt ist der Abstand vom kettenseitigen Lager.
    .turn-moved-load = Sie haben die an der Stelle des Kettenrads zulässige Last mit dem Abstand der Mitte zusammengebracht; ein Katalogwert gehört zu der Stelle, für die er gilt.

relation-load-reaction-near-beam = Lagerkraft des kettenseitigen Lagers
    .limits = allein die Last aus der Kette; Zahnkräfte im Getriebe sind weggelassen
    .source = Statik des überkragenden Trägers
    .turn-equal-split = Sie haben die Last zur Hälfte geteilt; eine Last außerhalb der Lager bringt auf das kettenseitige mehr als sich selbst.
    .turn-load-itself = Sie haben dem kettenseitigen Lager die Last selbst gegeben; es trägt dazu noch die Kraft des fernen Lagers.
    .turn-near-and-far-swapped = Sie haben die Lagerkraft des fernen Lagers angegeben; das kettenseitige sitzt neben dem Kettenrad und trägt mehr.
    .turn-far-reaction-subtracted = Sie haben die Lagerkraft des fernen Lagers abgezogen; sie zieht in dieselbe Richtung wie die Kette, also trägt das kettenseitige beide.
    .turn-between-the-bearings = Sie haben den Hebel umgedreht, wie bei einer Last zwischen den Lagern; bei einer Last außerhalb ist die Kraft am kettenseitigen Lager größer als die Last.
    .turn-over-the-distance = Sie haben durch den Abstand des Kettenrads geteilt; die Hebelarme zählen ab dem fernen Lager, teilen Sie also durch den Lagerabstand.
    .turn-middle = Sie haben die Mitte des Wellenendes benutzt; nehmen Sie den Abstand zur Mittelebene des Kettenrads.
    .turn-slack-tension-left-out = Sie haben nur die Querkraft der laufenden Kette benutzt; auch der Zug im Leertrum wirkt auf die Welle.

relation-load-reaction-far-beam = Lagerkraft des fernen Lagers
    .limits = sie wirkt in Richtung der Last, der Kraft des kettenseitigen Lagers entgegen
    .source = Statik des überkragenden Trägers
    .turn-equal-split = Sie haben die Last zur Hälfte geteilt; zählen Sie die Hebelarme ab dem kettenseitigen Lager.
    .turn-near-and-far-swapped = Sie haben die Lagerkraft des kettenseitigen Lagers angegeben; das ferne sitzt auf der vom Kettenrad abgewandten Seite und trägt weniger.
    .turn-upside-down = Sie haben den Hebel umgedreht; die Last hat den kurzen Arm x und das ferne Lager den langen Arm s.
    .turn-whole-length = Sie haben durch die ganze Länge vom fernen Lager bis zum Kettenrad geteilt; der Hebelarm des fernen Lagers ist der Lagerabstand allein.
    .turn-what-is-left = Sie haben die Kraft des fernen Lagers von der Last abgezogen; gefragt ist die Lagerkraft selbst.
    .turn-middle = Sie haben die Mitte des Wellenendes benutzt; nehmen Sie den Abstand zur Mittelebene des Kettenrads.
    .turn-slack-tension-left-out = Sie haben nur die Querkraft der laufenden Kette benutzt; auch der Zug im Leertrum wirkt auf die Welle.

relation-load-reaction-near-balance = Lagerkraft des kettenseitigen Lagers aus dem Gleichgewicht der Kräfte
    .source = Statik des überkragenden Trägers
    .turn-far-reaction-subtracted = Sie haben die Lagerkraft des fernen Lagers abgezogen; sie zieht in dieselbe Richtung wie die Kette, also trägt das kettenseitige beide.
    .turn-load-itself = Sie haben dem kettenseitigen Lager die Last selbst gegeben; es trägt dazu noch die Kraft des fernen Lagers.
    .turn-slack-tension-left-out = Sie haben nur die Querkraft der laufenden Kette benutzt; auch der Zug im Leertrum wirkt auf die Welle.

relation-load-reaction-far-balance = Lagerkraft des fernen Lagers aus dem Gleichgewicht der Kräfte
    .source = Statik des überkragenden Trägers
    .turn-added = Sie haben Last und Kraft des kettenseitigen Lagers zusammengezählt; diese hält der Last und der Kraft des fernen Lagers zusammen das Gleichgewicht, ziehen Sie also die Last davon ab.
    .turn-near-reaction = Sie haben die Lagerkraft des kettenseitigen Lagers angegeben; ziehen Sie die Last davon ab.
    .turn-slack-tension-left-out = Sie haben nur die Querkraft der laufenden Kette abgezogen; auch der Zug im Leertrum wirkt auf die Welle.

relation-load-life-exponent-kind = Lebensdauerexponent des Lagers
    .method = Kugeln berühren in einem Punkt: 3. Rollen berühren längs einer Linie: 10/3.
    .place = nominelle Lebensdauer
    .turn-other-kind = Sie haben den Exponenten der anderen Lagerbauart genommen; er ist 3 bei Kugeln und 10/3 bei Rollen.

relation-load-bearing-capacity-design = Dynamische Tragzahl aus der Lebensdauer, für die das Lager ausgelegt wurde
    .place = nominelle Lebensdauer

relation-load-life-turns-capacity = Nominelle Lebensdauer des kettenseitigen Lagers in Umdrehungen
    .limits = neun von zehn Lagern halten mindestens so lange; Last bis etwa zur halben Tragzahl, sauberes Öl der richtigen Viskositätsklasse
    .place = nominelle Lebensdauer
    .turn-exponent-of-the-other-kind = Sie haben den Exponenten der anderen Lagerbauart benutzt; er ist 3 bei Kugeln und 10/3 bei Rollen.
    .turn-load-itself = Sie haben die Last am Kettenrad benutzt; das Lager spürt seine eigene Lagerkraft.
    .turn-far-bearing = Sie haben die Lagerkraft des fernen Lagers benutzt; die Tragzahl gehört zum kettenseitigen.
    .turn-upside-down = Sie haben die Last durch die Tragzahl geteilt; eine größere Last muss die Lebensdauer verkürzen, also gehört die Tragzahl nach oben.
    .turn-no-exponent = Sie haben den Exponenten weggelassen; die Lebensdauer ist das Verhältnis von Tragzahl zu Last, hoch diesem Exponenten.
    .turn-exponent-multiplied = Sie haben mit dem Exponenten malgenommen; erheben Sie das Verhältnis zu dieser Potenz.
    .turn-squared = Sie haben das Verhältnis quadriert; der Exponent ist 3 bei Kugeln und 10/3 bei Rollen.

relation-load-life-capacity = Nominelle Lebensdauer des kettenseitigen Lagers in Stunden
    .limits = neun von zehn Lagern halten mindestens so lange; Last bis etwa zur halben Tragzahl, sauberes Öl der richtigen Viskositätsklasse
    .place = nominelle Lebensdauer
    .turn-minutes = Sie haben Minuten angegeben; die Drehzahl zählt Umdrehungen je Minute, teilen Sie für Stunden also durch 60.
    .turn-seconds-in-an-hour = Sie haben durch 3600 geteilt; die Drehzahl zählt Umdrehungen je Minute, und 60 Minuten machen die Stunde.
    .turn-exponent-of-the-other-kind = Sie haben den Exponenten der anderen Lagerbauart benutzt; er ist 3 bei Kugeln und 10/3 bei Rollen.
    .turn-load-itself = Sie haben die Last am Kettenrad benutzt; das Lager spürt seine eigene Lagerkraft.
    .turn-far-bearing = Sie haben die Lagerkraft des fernen Lagers benutzt; die Tragzahl gehört zum kettenseitigen.
    .turn-motor-speed = Sie haben die Drehzahl des Motors benutzt; das Lager dreht mit der Abtriebswelle.
    .turn-no-exponent = Sie haben den Exponenten weggelassen; die Lebensdauer ist das Verhältnis von Tragzahl zu Last, hoch diesem Exponenten.
    .turn-upside-down = Sie haben die Last durch die Tragzahl geteilt; eine größere Last muss die Lebensdauer verkürzen, also gehört die Tragzahl nach oben.

relation-load-life-turns = Nominelle Lebensdauer in Stunden aus den Umdrehungen
    .place = nominelle Lebensdauer
    .turn-minutes = Sie haben Minuten angegeben; die Drehzahl zählt Umdrehungen je Minute, teilen Sie für Stunden also durch 60.
    .turn-seconds-in-an-hour = Sie haben durch 3600 geteilt; die Drehzahl zählt Umdrehungen je Minute, und 60 Minuten machen die Stunde.
    .turn-motor-speed = Sie haben die Drehzahl des Motors benutzt; das Lager dreht mit der Abtriebswelle.

relation-load-life-share-loads = Anteil der Lagerlebensdauer, den der Zug im Leertrum übrig lässt
    .limits = gleiche Stelle, gleiche Drehzahl: beide Lasten haben denselben Hebel
    .place = nominelle Lebensdauer
    .turn-inverted = Sie haben das Verhältnis auf den Kopf gestellt; eine größere Last lässt weniger Lebensdauer übrig, der Anteil liegt also unter 1.
    .turn-no-exponent = Sie haben den Exponenten weggelassen; die Lebensdauer fällt mit der Last hoch Exponent, weit schneller, als die Last wächst.
    .turn-exponent-of-the-other-kind = Sie haben den Exponenten der anderen Lagerbauart benutzt; er ist 3 bei Kugeln und 10/3 bei Rollen.
    .turn-lost-part = Sie haben den verlorenen Teil der Lebensdauer angegeben; gefragt ist der Teil, der übrig bleibt.
    .turn-slack-tension-once = Sie haben den Zug im Leertrum einmal dazugezählt; beide Trume tragen ihn, also zählt er doppelt.
    .turn-slack-tension-four-times = Sie haben den Zug im Leertrum viermal gezählt; er zählt einmal für jedes der beiden Trume.

relation-load-load-for-life-capacity = Last, bei der das kettenseitige Lager die geforderte Lebensdauer erreicht
    .limits = neun von zehn Lagern halten mindestens so lange; bis etwa zur halben Tragzahl, sauberes Öl der richtigen Viskositätsklasse
    .place = nominelle Lebensdauer
    .turn-minutes-for-hours = Sie haben Stunden mit Umdrehungen je Minute malgenommen; 60 Minuten machen die Stunde.
    .turn-motor-speed = Sie haben die Drehzahl des Motors benutzt; das Lager dreht mit der Abtriebswelle.
    .turn-exponent-of-the-other-kind = Sie haben die Wurzel der anderen Lagerbauart gezogen; es ist die dritte bei Kugeln und die 10/3-te bei Rollen.
    .turn-no-root = Sie haben die Wurzel weggelassen; die Lebensdauer geht mit der Last hoch Exponent, also geht die Last mit der Wurzel der Lebensdauer.
    .turn-square-root = Sie haben die Quadratwurzel gezogen; der Exponent ist 3 bei Kugeln und 10/3 bei Rollen.
    .turn-multiplied = Sie haben mit der Wurzel malgenommen; eine längere Lebensdauer lässt weniger Last zu, teilen Sie also.
    .turn-load-now = Sie haben die jetzige Last des Lagers angegeben; gefragt ist die, welche die geforderte Lebensdauer zulässt.

relation-load-mean-load-duty = Gleichbleibende Last, die das Lager so schnell verbraucht wie Last und Leerlauf zusammen
    .limits = gleiche Drehzahl in beiden Teilen; die Lebensdauer bei dieser Last zählt alle Stunden zusammen
    .place = Beispiel 18-9, S. 512
    .turn-plain-mean = Sie haben einfach nach der Zeit gemittelt; das Lager verbraucht sich mit der Last hoch Exponent, der schwere Teil zählt also weit mehr.
    .turn-root-mean-square = Sie haben den quadratischen Mittelwert genommen; der Exponent ist 3 bei Kugeln und 10/3 bei Rollen.
    .turn-exponent-of-the-other-kind = Sie haben den Exponenten der anderen Lagerbauart benutzt; er ist 3 bei Kugeln und 10/3 bei Rollen.
    .turn-times-swapped = Sie haben die Zeitanteile vertauscht; der Leerlaufanteil gehört zur kleinen Last, der andere zur großen.
    .turn-time-left-out = Sie haben beiden Lasten gleich viel Zeit gegeben; jede zählt mit ihrem Anteil.
    .turn-light-part-left-out = Sie haben den Leerlauf weggelassen; auch er nutzt das Lager ein wenig ab.
    .turn-root-left-out = Sie haben die Wurzel weggelassen; die Potenzen ergeben zusammen eine Potenz der Last.
    .turn-full-load = Sie haben die jetzige Last angegeben; einen Teil der Zeit läuft der Antrieb leer.

relation-load-moment-overhang = Biegemoment der Welle am kettenseitigen Lager
    .source = Statik des überkragenden Trägers
    .turn-span = Sie haben den Lagerabstand als Hebelarm genommen; der Arm der Last reicht vom kettenseitigen Lager bis zum Kettenrad.
    .turn-from-the-far-bearing = Sie haben den Hebelarm ab dem fernen Lager genommen; das Moment ist am kettenseitigen Lager am größten, und dort beginnt der Arm.
    .turn-middle = Sie haben die Mitte des Wellenendes benutzt; nehmen Sie den Abstand zur Mittelebene des Kettenrads.
    .turn-reaction = Sie haben die Lagerkraft des kettenseitigen Lagers benutzt; das Moment dort ist die Last am Kettenrad mal deren Hebelarm.
    .turn-slack-tension-left-out = Sie haben nur die Querkraft der laufenden Kette benutzt; auch der Zug im Leertrum wirkt auf die Welle.
    .turn-pitch-radius = Sie haben den Radius des Kettenrads als Hebelarm genommen; dieser Arm verdreht die Welle, der Arm längs der Welle biegt sie.
    .turn-between-the-bearings = Sie haben die Last behandelt, als stünde sie zwischen den Lagern; sie wirkt außerhalb.

relation-load-shaft-diameter-design = Durchmesser der Welle aus der Spannung, für die sie ausgelegt wurde
    .source = R. G. Budynas, J. K. Nisbett, Shigley's Mechanical Engineering Design, Gestaltänderungsenergiehypothese

relation-load-bending-stress-round = Biegespannung der Welle am kettenseitigen Lager
    .limits = Nennspannung: Passfedernut, Wellenabsatz und Reibkorrosion unter einer aufgezogenen Nabe kommen hinzu (Kerbwirkung), die Zahl allein sagt also nicht, dass eine Welle hält; es entscheidet die Querkraft, die der Hersteller zulässt; mit einer Dauerfestigkeit vergleichen, denn eine umlaufende Welle wird hin und her gebogen
    .source = R. G. Budynas, J. K. Nisbett, Shigley's Mechanical Engineering Design; Balkentheorie
    .turn-torsion-s-16 = Sie haben die 16 der Torsion benutzt; für eine runde Welle unter Biegung ist es die 32.
    .turn-radius-for-diameter = Sie haben den Radius in die dritte Potenz erhoben; die 32 gehört zum Durchmesser.
    .turn-64 = Sie haben die 64 aus dem Flächenmoment zweiten Grades und den Durchmesser als Abstand zur Oberfläche genommen; mit dem halben Durchmesser wird daraus 32.
    .turn-torque = Sie haben das Drehmoment benutzt; das Biegemoment ist die Last mal Hebelarm längs der Welle.

relation-load-torsion-stress-round = Torsionsspannung der Welle
    .limits = Nennspannung: Passfedernuten vervielfachen sie
    .source = R. G. Budynas, J. K. Nisbett, Shigley's Mechanical Engineering Design; Balkentheorie
    .turn-bending-s-32 = Sie haben die 32 der Biegung benutzt; für eine runde Welle unter Torsion ist es die 16.
    .turn-radius-for-diameter = Sie haben den Radius in die dritte Potenz erhoben; die 16 gehört zum Durchmesser.
    .turn-motor-torque = Sie haben das Drehmoment des Motors benutzt; diese Welle überträgt das Abtriebsdrehmoment, das um die Übersetzung größer ist.
    .turn-bending-moment = Sie haben das Biegemoment benutzt; verdreht wird die Welle vom Drehmoment.

relation-load-equivalent-stress-energy = Vergleichsspannung aus Biegung und Torsion nach von Mises
    .limits = mit einem Grenzwert für Zug vergleichen
    .source = R. G. Budynas, J. K. Nisbett, Shigley's Mechanical Engineering Design, Gestaltänderungsenergiehypothese
    .turn-added = Sie haben die beiden Spannungen zusammengezählt; sie wirken in verschiedene Richtungen und ergeben zusammen die Wurzel aus ihren Quadraten.
    .turn-without-the-3 = Sie haben die 3 vor dem Quadrat der Torsionsspannung weggelassen.
    .turn-3-on-bending = Sie haben die 3 zur Biegespannung gesetzt; sie gehört zur Torsionsspannung.
    .turn-3-squared = Sie haben auch die 3 quadriert; quadriert wird nur die Torsionsspannung.
    .turn-4-for-3 = Sie haben die 4 benutzt, wie bei der verdoppelten größten Schubspannung; zur Vergleichsspannung nach von Mises gehört die 3.
    .turn-greatest-shear = Sie haben die größte Schubspannung angegeben; die Vergleichsspannung hält man gegen einen Grenzwert für Zug, und in ihr steht die ganze Biegespannung.
    .turn-greatest-normal = Sie haben die größte Normalspannung angegeben; gefragt ist die Vergleichsspannung nach von Mises.
    .turn-bending-alone = Sie haben die Torsion weggelassen; die Welle wird zugleich gebogen und verdreht.

relation-load-max-shear-circle = Größte Schubspannung aus Biegung und Torsion
    .limits = mit einem Grenzwert für Schub vergleichen
    .source = Mohrscher Spannungskreis
    .turn-not-halved = Sie haben die Biegespannung nicht halbiert; nur die Hälfte von ihr wirkt als Schub.
    .turn-halved-after-squaring = Sie haben das Quadrat der Biegespannung halbiert; halbieren Sie zuerst die Spannung und quadrieren Sie dann.
    .turn-added = Sie haben halbe Biegespannung und Torsionsspannung zusammengezählt; zusammen ergeben sie die Wurzel aus ihren Quadraten.
    .turn-torsion-alone = Sie haben die Biegung weggelassen; die Hälfte der Biegespannung wirkt als Schub.
    .turn-greatest-normal = Sie haben die halbe Biegespannung noch dazugezählt und so die größte Normalspannung erhalten; die Schubspannung ist die Wurzel allein.
    .turn-von-mises = Sie haben die Vergleichsspannung nach von Mises angegeben; gefragt ist die größte Schubspannung.
    .turn-both-halved = Sie haben auch die Torsionsspannung halbiert; halbiert wird nur die Biegespannung.
