## Aufgaben: Antriebsstrang

item-output-speed = Drehzahl der Abtriebswelle
    .text = An der Motorwelle steht ein Drehzahlmesser. Die Übersetzung wird vom Typenschild des Getriebes abgelesen. Maschine: { $machine }.
    .a = Mit welcher Drehzahl läuft die Abtriebswelle?

item-reducer-ratio = Das Schild ist überlackiert
    .text = Das Typenschild des Getriebes ist nicht zu lesen. Beide Drehzahlen wurden zur selben Zeit abgelesen, mit angebrachten Schutzeinrichtungen. Maschine: { $machine }.
    .a-hint-1 = Die Übersetzung eines Untersetzungsgetriebes ist größer als 1.
    .a = Welche Übersetzung hat das Getriebe?

item-motor-share = Wie stark der Motor ausgelastet ist
    .text = Der Antrieb läuft mit seiner gewöhnlichen Last. Ein Leistungsmesser in der Zuleitung, der die Verluste des Motors selbst abzieht, zeigt die Leistung, die der Motor an seiner Welle abgibt. Maschine: { $machine }.
    .a = Welchen Anteil der Leistung auf seinem Typenschild gibt der Motor ab?

item-train-efficiency = Stufe um Stufe
    .text = Das Getriebe hat mehrere Stufen hintereinander, alle gleich gut. Maschine: { $machine }.
    .a-hint-1 = Die zweite Stufe bekommt nur, was die erste durchlässt.
    .a = Welchen Wirkungsgrad hat das ganze Getriebe?

item-power-out = Was bei der Kette ankommt
    .text = Die Leistung, die der Motor abgibt, wurde an einem Leistungsmesser abgelesen, der die Verluste des Motors selbst abzieht. Ein Teil davon bleibt als Wärme im Getriebe. Maschine: { $machine }.
    .a = Welchen Wirkungsgrad hat das ganze Getriebe?
    .b = Wie viel Leistung kommt an der Abtriebswelle aus dem Getriebe?

item-motor-torque = Drehmoment des Motors
    .text = Der Antrieb läuft unter Last. Die abgegebene Leistung des Motors wurde an einem Leistungsmesser abgelesen, der die Verluste des Motors selbst abzieht, seine Drehzahl am Drehzahlmesser. Maschine: { $machine }.
    .a = Welches Drehmoment gibt der Motor in das Getriebe?

item-output-torque-steps = Drehmoment an der Abtriebswelle, Schritt für Schritt
    .text = Sie haben die Leistung, die der Motor abgibt, seine Drehzahl und die Werte des Getriebes. Maschine: { $machine }.
    .a = Mit welcher Drehzahl läuft die Abtriebswelle?
    .b = Welchen Wirkungsgrad hat das ganze Getriebe?
    .c = Welches Drehmoment steht an der Abtriebswelle?

item-output-torque = Drehmoment an der Abtriebswelle
    .text = Der Antrieb läuft mit seiner gewöhnlichen Last. Das sagen der Drehzahlmesser, ein Leistungsmesser, der die Verluste des Motors selbst abzieht, und die Papiere des Getriebes. Maschine: { $machine }.
    .a-hint-1 = Die Drehzahl wird durch die Übersetzung kleiner, das Drehmoment um sie größer, und die Verluste gehen vom Drehmoment ab.
    .a = Welches Drehmoment steht an der Abtriebswelle?

item-torque-through-reducer = Das Drehmoment durch das Getriebe
    .text = Verfolgen Sie das Drehmoment von der Motorwelle durch das Getriebe bis zum Kettenrad. Maschine: { $machine }.
    .a = Welches Drehmoment gibt der Motor in das Getriebe?
    .b = Welchen Wirkungsgrad hat das ganze Getriebe?
    .c = Welches Drehmoment steht an der Abtriebswelle? Gehen Sie vom Drehmoment des Motors aus.

item-output-shaft-power = Leistung aus Drehmoment und Drehzahl
    .text = Für einen Abnahmelauf wurde an der Abtriebswelle ein Drehmomentmesser angebracht und zur selben Zeit die Drehzahl dieser Welle abgelesen. Maschine: { $machine }.
    .a = Wie viel Leistung kommt an der Abtriebswelle aus dem Getriebe?

item-measured-efficiency = Wirkungsgrad aus einem Versuchslauf
    .text = Für einen Abnahmelauf wurde an der Abtriebswelle ein Drehmomentmesser angebracht. Der Leistungsmesser in der Zuleitung, der die Verluste des Motors selbst abzieht, zeigte zur selben Zeit die Leistung, die der Motor abgab. Maschine: { $machine }.
    .a = Wie viel Leistung kam an der Abtriebswelle aus dem Getriebe?
    .b = Welchen Wirkungsgrad hatte das Getriebe?

item-motor-torque-back = Von der Abtriebswelle zurück zum Motor
    .text = Was angetrieben wird, verlangt an der Abtriebswelle des Getriebes ein bestimmtes Drehmoment. Maschine: { $machine }.
    .a = Welchen Wirkungsgrad hat das ganze Getriebe?
    .b-hint-1 = Der Motor muss die Verluste zusätzlich aufbringen.
    .b = Welches Drehmoment muss der Motor aufbringen?

item-motor-big-enough = Ist der Motor groß genug?
    .text = Das Drehmoment, das die angetriebene Maschine an der Abtriebswelle verlangt, ist bekannt. Verfolgen Sie es durch das Getriebe zurück zum Motor. Maschine: { $machine }.
    .a = Welchen Wirkungsgrad hat das ganze Getriebe?
    .b = Welches Drehmoment muss der Motor aufbringen?
    .c = Welche Leistung muss der Motor an seiner Welle abgeben?
    .d = Welcher Anteil der Leistung auf seinem Typenschild ist das?

item-what-losses-take = Was die Verluste wegnehmen
    .text = Das Getriebe hat einen Wirkungsgrad von { $drive-efficiency }. Maschine: { $machine }.
    .a-option-1 = Sie dreht genau mit der Motordrehzahl geteilt durch die Übersetzung, und die Verluste fehlen an ihrem Drehmoment
    .a-option-2 = Sie dreht etwas langsamer als die Motordrehzahl geteilt durch die Übersetzung, und ihr Drehmoment ist das des Motors mal der Übersetzung
    .a-option-3 = Drehzahl und Drehmoment sind beide etwas kleiner, als die Übersetzung sagt, von jedem die Hälfte der Verluste
    .a-option-4 = Sie hat die volle Drehzahl und das volle Drehmoment; die Verluste gleicht der Motor aus
    .a-because = Zähne, die ineinandergreifen, können nicht durchrutschen, also liegt die Drehzahl durch die Zähnezahlen fest. Reibung wirkt dem Drehen entgegen, verloren geht also Drehmoment, und es kommt als Wärme heraus.
    .a = Welche Aussage über die Abtriebswelle ist wahr?

item-plate-or-meter = Typenschild oder Leistungsmesser
    .text = Auf dem Typenschild des Motors steht { $drive-motor_power }. Nach dem Leistungsmesser gibt der Motor an seiner Welle { $drive-power } ab. Maschine: { $machine }.
    .a-option-1 = Mit der am Leistungsmesser abgelesenen, da der Motor abgibt, was die Last verlangt
    .a-option-2 = Mit der auf dem Typenschild, da der Motor sie immer abgibt, gleich bei welcher Last
    .a-option-3 = Mit der Summe der beiden: die des Typenschilds für den Motor und die des Leistungsmessers für die Last
    .a-option-4 = Mit dem Mittel der beiden, um sicherzugehen
    .a-because = Ein Motor am Netz bleibt nahe bei seiner Drehzahl und gibt das Drehmoment, das die Last verlangt, und genau das spürt die Kette. Das Typenschild sagt, was er auf Dauer abgeben darf; nach diesem Wert wählt man ein Getriebe aus, die heutige Last beurteilt man nach dem Leistungsmesser.
    .a = Sie wollen den Zug wissen, den die Kette jetzt hat. Mit welcher Leistung rechnen Sie?

item-motor-overloaded = Über dem Typenschild
    .text = Auf dem Typenschild des Motors steht { $drive-motor_power }. Nach dem Leistungsmesser gibt er seit einer halben Stunde { $drive-power } ab, und die Last ist gleichmäßig. Ausgelöst hat nichts. Maschine: { $machine }.
    .a-option-1 = Anhalten, freischalten und sichern lassen und die Ursache suchen, bevor er wieder läuft
    .a-option-2 = Laufen lassen, da ein zu heißer Motor von selbst auslöst
    .a-option-3 = Den Motorschutz höher einstellen lassen, damit der Antrieb nicht mitten in der Schicht stehen bleibt
    .a-option-4 = Bis zum wöchentlichen Rundgang lassen: Getriebe sind mit einer Reserve gebaut
    .a-option-5 = Im Lauf den Klemmenkasten des Motors öffnen und den Strom in jedem Leiter prüfen
    .a-because = Eine Überlast, die bleibt, tragen Motor, Zähne, Lager, Welle und Kette gleichermaßen, und ein zu hoch eingestellter Motorschutz verdeckt sie. Die Last wegnehmen lassen. Auf die gewöhnliche Weise anhalten, freischalten und sichern, Energiefreiheit feststellen und die Ursache suchen. Die Einstellung des Motorschutzes und der Klemmenkasten sind Sache befugter Elektrofachkräfte.
    .a = Was tun Sie?

item-speed-check-order = Die Abtriebsdrehzahl ablesen
    .text = Sie sollen die Drehzahl der Abtriebswelle mit einem optischen Drehzahlmesser prüfen, der eine reflektierende Marke auf der Welle braucht. Maschine: { $machine }.
    .a-step-1 = Den Antrieb freischalten, gegen Wiedereinschalten sichern und durch einen Einschaltversuch die Energiefreiheit feststellen
    .a-step-2 = Die Schutzeinrichtung abnehmen, eine Stelle der Welle reinigen und die Marke aufkleben
    .a-step-3 = Die Schutzeinrichtung wieder befestigen und sehen, dass niemand im Gefahrenbereich ist
    .a-step-4 = Die Schlösser abnehmen, den Antrieb starten lassen und warten, bis die Last gleichmäßig ist
    .a-step-5 = Den Drehzahlmesser durch das Gitter ablesen, von außerhalb der Schutzeinrichtung
    .a-step-6 = Die Ablesung gegen die Motordrehzahl geteilt durch die Übersetzung halten
    .a-because = Die Marke kommt an, solange sich die Welle nicht drehen kann, und abgelesen wird mit angebrachter Schutzeinrichtung. Weicht die Drehzahl von Motordrehzahl durch Übersetzung ab, so ist die Übersetzung eine andere, als das Typenschild sagt, oder die Ablesung gehört nicht zu dieser Welle.
    .a = In welcher Reihenfolge arbeiten Sie?
