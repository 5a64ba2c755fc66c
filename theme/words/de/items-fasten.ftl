## Aufgaben: Schrauben, Passfedern und Spannbuchsen

item-bolt-preload = Wie stark soll sie ziehen?
    .text = Bei den Fußschrauben steht die Gewindebezeichnung auf der Zeichnung und die Festigkeit auf dem Kopf. Sie werden eines Tages wieder herausgenommen. Maschine: { $machine }.
    .a = Wie groß ist der Spannungsquerschnitt einer Schraube?
    .b-hint-1 = Schlagen Sie zu dem Kennzeichen am Kopf die Prüfspannung nach, nicht die Zugfestigkeit.
    .b = Auf welche Vorspannkraft wird sie angezogen?

item-bolt-torque = Drehmoment für den Schlüssel
    .text = Eine Fußschraube soll mit dem Drehmomentschlüssel angezogen werden. Ein Drehmoment des Herstellers ist nicht zur Hand, nehmen Sie also einen Reibfaktor K von 0,20 für eine trockene und 0,15 für eine geschmierte Schraube. Maschine: { $machine }.
    .a = Wie groß ist die Vorspannkraft?
    .b-hint-1 = Reibfaktor K mal Nenndurchmesser mal Vorspannkraft; achten Sie auf die Einheit des Durchmessers.
    .b = Welches Drehmoment ergibt sie?

item-pull-from-torque = Wie stark zieht dieses Drehmoment?
    .text = Eine Fußschraube wurde mit dem Drehmomentschlüssel angezogen. Nehmen Sie einen Reibfaktor K von 0,20 für eine trockene und 0,15 für eine geschmierte Schraube. Maschine: { $machine }.
    .a = Wie stark zieht die Schraube?

item-torque-card = Eine Karte für andere Schrauben?
    .text = Der Monteur hat die Fußschrauben nach der Anziehkarte an der Wand eingestellt. Sie vergleichen den Zustand, für den die Karte geschrieben wurde, mit dem, in dem die Schrauben eingesetzt wurden. Nehmen Sie einen Reibfaktor K von 0,20 trocken und 0,15 geschmiert. Maschine: { $machine }.
    .a = Wie stark zieht das Drehmoment der Karte in dieser Schraube?
    .b = Welchen Anteil ihrer Prüfspannung nutzt das aus?
    .c = Wie lautet Ihr Urteil über die Schraube?

item-card-verdict = Für die Schrauben unterschreiben?
    .text = Sie sollen für die Fußschrauben unterschreiben. Gewinde, Kennzeichen am Kopf, der Zustand beim Einsetzen und die Karte, nach der sie eingestellt wurden, stehen auf dem Blatt. Nehmen Sie einen Reibfaktor K von 0,20 trocken und 0,15 geschmiert. Maschine: { $machine }.
    .a = Wie lautet Ihr Urteil über die Schrauben?

item-oiled-with-dry-torque = Öl macht sie leichtgängig
    .text = Die Anziehkarte neben dem Antrieb gilt für trockene Schrauben. Ein Lehrling wollte es gut machen, ölte alle Gewinde und Scheibenflächen und stellte dann das Drehmoment der Karte ein. Maschine: { $machine }.
    .a-option-1 = Sie ziehen etwa um ein Drittel zu stark und können über der Prüfspannung sein; neue einsetzen
    .a-option-2 = Sie ziehen um ein Viertel schwächer als gewollt, also noch einmal mit demselben Drehmoment darübergehen
    .a-option-3 = Nichts: Drehmoment ist Drehmoment, gleich was auf dem Gewinde ist, also können sie bleiben
    .a-option-4 = Sie ziehen stärker als gewollt, also jede um eine Vierteldrehung zurückdrehen
    .a-because = Das meiste Drehmoment geht in die Reibung. Mit weniger Reibung zieht dasselbe Drehmoment stärker: 0,20 durch 0,15 ist ein Drittel mehr (übliche Praxis für die beiden Faktoren). Eine Schraube, die über ihre Prüfkraft gezogen wurde, hat sich gelängt und wird nicht wiederverwendet; Zurückdrehen heilt sie nicht. Neue Schrauben bekommen das Drehmoment für geölte Gewinde.
    .a = Was ist mit den Schrauben geschehen?

item-bolt-turn = Nach Drehwinkel statt nach Drehmoment
    .text = Reibung macht das Drehmoment unsicher, darum wird eine Fußschraube angezogen, indem die Mutter von der satten Auflage an um einen Winkel weitergedreht wird. Die Verbindung gilt als starr, und das Gewinde soll über die ganze Klemmlänge reichen. Maschine: { $machine }.
    .a = Um wie viel längt sich die Schraube?
    .b = Um welchen Winkel wird die Mutter von der satten Auflage an gedreht?

item-bolt-outside-load = Die Kette hebt einen Fuß
    .text = Beim Start versucht die Kette, die Füße auf einer Seite anzuheben. Die Fußschrauben dort sind fest, und nur ein Anteil dieses Zuges erreicht jede von ihnen. Maschine: { $machine }.
    .a = Wie stark zieht die Schraube dann?
    .b = Welchen Spannungsquerschnitt brauchte sie, wenn man nur den äußeren Zug rechnet, wie bei einer losen Schraube?

item-star-place = Welche Schraube als Nächstes?
    .text = Die Schrauben eines Flansches stehen im Kreis und sind ringsum beziffert. Angezogen wird über Kreuz, von Schraube 1 an: bei gerader Zahl in gegenüberliegenden Paaren, jedes neue Paar in die größte verbliebene Lücke (die niedrigere Nummer zuerst); bei ungerader Zahl in Schritten von knapp einem halben Kreis. Maschine: { $machine }.
    .a = Welche Schraube wird an dieser Stelle der Reihenfolge angezogen?

item-tighten-round = Der erste Durchgang
    .text = Die Fußschrauben werden in Durchgängen angezogen, jeder mit einem Anteil des vollen Drehmoments. Maschine: { $machine }.
    .a = Auf welches Drehmoment wird der Schlüssel für diesen Durchgang eingestellt?

item-tightening-steps = Einen Grundrahmen festziehen, der Reihe nach
    .text = Das Getriebe steht auf seinen Unterlegblechen, und seine vier Fußschrauben, ringsum beziffert, sind anzuziehen. Maschine: { $machine }.
    .a-step-1 = Sehen, dass alle Schrauben und Scheiben die richtigen sind und in dem Zustand, für den das Drehmoment gilt
    .a-step-2 = Alle vier Muttern von Hand beidrehen, bis sie satt aufliegen
    .a-step-3 = Über Kreuz, 1, 3, 2, 4, auf etwa ein Drittel des Drehmoments
    .a-step-4 = Über Kreuz auf etwa zwei Drittel
    .a-step-5 = Über Kreuz auf das volle Drehmoment
    .a-step-6 = Noch einmal ringsum mit dem vollen Drehmoment, bis sich keine Mutter mehr bewegt
    .a-step-7 = Kippfuß und Ausrichtung noch einmal prüfen und die Muttern kennzeichnen
    .a-because = Über Kreuz und in Durchgängen setzt sich der Grundrahmen eben auf; eine Ecke auf einmal mit vollem Drehmoment angezogen kippt das Gehäuse und verspannt es. Jede Schraube lockert ihre Nachbarn ein wenig, darum folgt ein letzter Durchgang. Anziehen verschiebt die Maschine: Die Ausrichtung wird bei festgezogenen Schrauben abgelesen.
    .a = In welcher Reihenfolge arbeiten Sie?

item-base-check = Die Fußschrauben nach einer Woche
    .text = Die Fußschrauben wurden vor einer Woche nach der Anziehkarte eingestellt. Jetzt, freigeschaltet und gesichert, wird mit einem anzeigenden Drehmomentschlüssel gezogen, bis sich die Mutter gerade weiterdreht. Maschine: { $machine }.
    .a = Welchen Anteil ihres Drehmoments hat die Schraube verloren?
    .b = Wie lautet Ihr Urteil?

item-key-size = Eine Passfeder für diese Welle
    .text = Die Passfeder des Kettenrads ist verloren, und aus Keilstahl wird eine neue geschnitten. Sie haben die Tabelle der Passfedern nach Wellendurchmesser. Maschine: { $machine }.
    .a = Wie breit ist die Passfeder?
    .b = Wie hoch ist sie?

item-key-fit = Passt diese Passfeder?
    .text = Für das Kettenrad liegt eine Passfeder bereit. Die Breiten von Passfeder und Nut wurden mit dem Messschieber gemessen. Maschine: { $machine }.
    .a = Wie viel Spiel hat die Passfeder in ihrer Nut? Eine zu breite Passfeder zählt negativ.
    .b = Wie lautet Ihr Urteil über die Passfeder?

item-key-stress = Was die Passfeder trägt
    .text = Die Passfeder in der Abtriebswelle überträgt das ganze Drehmoment auf das Kettenrad. Schlagen Sie ihren Querschnitt in der Tabelle nach. Maschine: { $machine }.
    .a = Welche Kraft drückt am Wellenumfang auf die Passfeder?
    .b = Wie groß ist die Scherspannung in der Passfeder?
    .c = Wie groß ist die Flächenpressung zwischen Passfeder und Nut?

item-key-length = Lang genug?
    .text = Die Passfeder in der Abtriebswelle sieht kurz aus. Der schwächste Werkstoff von Passfeder, Welle und Nabe ist bekannt und ebenso die gewünschte Sicherheit; auf Abscheren lassen Sie die halbe Streckgrenze zu. Maschine: { $machine }.
    .a = Welche Passfederlänge verlangt das Abscheren?
    .b = Welche Passfederlänge verlangt die Flächenpressung?
    .c = Wie lautet Ihr Urteil über die Länge der Passfeder?

item-key-longest = Länger und länger
    .text = Jemand will eine schwache Passfeder durch eine sehr lange wettmachen. Maschine: { $machine }.
    .a = Welches ist die längste Passfeder, die sich auf dieser Welle lohnt?

item-bushing-draw = Wie weit zieht sie sich ein?
    .text = Das Kettenrad sitzt auf einer geschlitzten Spannbuchse. Bei noch losen Schrauben wird der Spalt zwischen dem Flansch der Buchse und der Nabe gemessen. Maschine: { $machine }.
    .a = Wie weit zieht sich die Buchse ein, bis sie auf der Welle greift?
    .b = Welcher Spalt bleibt zwischen Flansch und Nabe?

item-bushing-clearance = Ist die Welle verschlissen?
    .text = Eine Spannbuchse zog sich ein gutes Stück ein, bevor sie griff, und der Einzug wurde aufgeschrieben. Kein Mikrometer kommt an die Welle darunter. Maschine: { $machine }.
    .a = Welches Spiel im Durchmesser hat dieser Einzug aufgebraucht?

item-bushing-gap = Fest oder nur zu?
    .text = Die Schrauben der Spannbuchse haben ihr Drehmoment, und der Spalt zwischen Flansch und Nabe wurde ringsum gefühlt. Der Hersteller will, dass ein Spalt bleibt. Maschine: { $machine }.
    .a = Wie lautet Ihr Urteil über den Spalt?

item-bushing-pull = Was die Schrauben ziehen
    .text = Die Schrauben der Spannbuchse sind gleichmäßig auf das Drehmoment des Herstellers angezogen, in dem genannten Zustand. Nehmen Sie einen Reibfaktor K von 0,20 trocken und 0,15 geschmiert. Maschine: { $machine }.
    .a-hint-1 = Eine Schraube zieht mit ihrem Drehmoment geteilt durch Reibfaktor K und Durchmesser.
    .a = Mit welcher Kraft ziehen alle Schrauben zusammen die Buchse ein?

item-bushing-retorque = Nach dem ersten Lauf
    .text = Der Antrieb hat seine erste Schicht hinter sich und ist wieder freigeschaltet und gesichert. Die Schrauben der Spannbuchse werden mit einem anzeigenden Drehmomentschlüssel geprüft, er zeigt das Drehmoment, bei dem sie sich gerade weiterdrehen. Maschine: { $machine }.
    .a = Welchen Anteil ihres Drehmoments haben die Schrauben verloren?
    .b = Wie lautet Ihr Urteil?

item-bushing-wobble = Ungleich angezogen
    .text = Eine Schraube der Spannbuchse wurde zuerst festgezogen, und der Spalt um ihren Flansch ist ungleich. Er wird ringsum gefühlt. Maschine: { $machine }.
    .a = Wie groß ist der Planschlag des Kettenrads am Teilkreis?

item-bushing-order = Eine Spannbuchse einbauen, der Reihe nach
    .text = Das Kettenrad soll auf seine Spannbuchse gesetzt werden. Die Kette ist ab, und das Rad ist so schwer, dass es Zehen brechen kann. Maschine: { $machine }.
    .a-step-1 = Freischalten, gegen Wiedereinschalten sichern, Energiefreiheit feststellen und das Kettenrad in eine Schlinge hängen
    .a-step-2 = Welle, Bohrung und Kegel bis auf das blanke, trockene Metall reinigen und sehen, dass die Passfeder in ihre Nut passt
    .a-step-3 = Buchse und Kettenrad mit fingerfesten Schrauben aufschieben und den losen Spalt messen
    .a-step-4 = Das Kettenrad mit dem Lineal ausrichten
    .a-step-5 = Die Schrauben reihum anziehen, jedes Mal ein wenig, bis zum Drehmoment des Herstellers
    .a-step-6 = Den Spalt ringsum fühlen: gleichmäßig und nicht geschlossen
    .a-step-7 = Schlinge und Werkzeug wegräumen, Kette und Schutzeinrichtung anbringen, dann die Schlösser abnehmen lassen und starten
    .a-step-8 = Nach dem ersten Lauf anhalten, freischalten und sichern und jede Schraube noch einmal prüfen
    .a-because = Der Antrieb ist energiefrei und das Kettenrad hängt sicher, bevor Hände dazwischenkommen. Öl oder Farbe auf dem Kegel lässt dasselbe Drehmoment die Buchse zu weit einziehen und kann die Nabe sprengen, und ein geschlossener Spalt heißt, dass der Flansch die Schraubenkraft trägt. Farbe und Erhebungen setzen sich in den ersten Stunden, darum werden die Schrauben danach noch einmal geprüft, freigeschaltet und gesichert.
    .a = In welcher Reihenfolge arbeiten Sie?

item-loose-bolt-running = Eine Mutter, die sich von Hand drehen lässt
    .text = Beim Vorbeigehen am laufenden Antrieb sehen Sie, wie sich die Mutter einer Fußschraube ein wenig hin und her dreht. Maschine: { $machine }.
    .a-option-1 = Anhalten, freischalten und sichern lassen, dann alle Fußschrauben und die Ursache prüfen
    .a-option-2 = Diese Mutter sofort im Lauf mit einem langen Schlüssel anziehen, bevor sie abgeht
    .a-option-3 = Bis zum nächsten geplanten Stillstand lassen, da die drei anderen Schrauben den Antrieb noch halten
    .a-option-4 = Die Mutter kennzeichnen und am Ende der Schicht wieder nachsehen
    .a-because = Eine lose Fußschraube lässt den Antrieb wippen: Die anderen übernehmen ihre Last, und Kette und Kupplung geraten aus der Flucht. An einen laufenden Antrieb kommt kein Schlüssel. Eine lose Schraube ist selten allein, und sie hat sich aus einem Grund gelöst: ein Kippfuß, ein falsches Drehmoment oder eine Schraube über ihrer Prüfkraft. Kippfuß und Ausrichtung werden geprüft, bevor der Reihe nach angezogen wird.
    .a = Was tun Sie?
