## Aufgaben: Anfahren und Motorlast

item-start-poles = Wie viele Pole?
    .text = Das Typenschild des Motors nennt sein Netz und seine Bemessungsdrehzahl, aber nicht seine Polzahl. Maschine: { $machine }.
    .a-hint-1 = Ein Motor läuft ein wenig unter seiner Synchrondrehzahl. Welche gerade Polzahl hat eine Synchrondrehzahl gleich über der auf dem Typenschild?
    .a = Wie viele Pole hat er?
    .b = Wie groß ist seine Synchrondrehzahl?

item-start-slip = Schlupf unter Last
    .text = Die Synchrondrehzahl des Motors ist aus dem Typenschild berechnet. Maschine: { $machine }. Er läuft unter Last, und Sie lesen seine Drehzahl mit einem Drehzahlmesser durch die dafür vorgesehene Öffnung in der Schutzeinrichtung ab.
    .a = Wie groß ist jetzt sein Schlupf?

item-start-speed-expected = Welche Drehzahl erwarten Sie?
    .text = Bevor Sie den Drehzahlmesser holen, berechnen Sie, was er zeigen müsste. Maschine: { $machine }. Der Leistungsmesser in der Zuleitung zieht die Verluste des Motors selbst ab und zeigt, was der Motor an seiner Welle abgibt.
    .a = Welcher Anteil der Leistung auf dem Typenschild wird abgegeben?
    .b-hint-1 = Nur der Schlupf geht mit der Last, nicht die Drehzahl.
    .b = Mit welcher Drehzahl müsste er unter dieser Last laufen?

item-start-load-by-speed = Die Last aus dem Drehzahlmesser
    .text = Ein Leistungsmesser ist nicht da, nur ein guter Drehzahlmesser. Maschine: { $machine }.
    .a-hint-1 = Der jetzige Schlupf durch den Schlupf bei voller Last.
    .a = Welchen Anteil seiner vollen Last trägt der Motor, nach seiner Drehzahl?

item-start-voltage = Stimmt die Spannung?
    .text = Eine dazu befugte Person hat am Motor die Spannungen zwischen den Außenleitern gemessen und gemittelt. Maschine: { $machine }.
    .a = Wie weit weicht das Mittel vom Typenschild ab, als Anteil der Spannung auf dem Typenschild? Eine zu niedrige Spannung ist ein Anteil unter null.
    .b = Wie lautet Ihr Urteil darüber?

item-start-unbalance = Drei ungleiche Spannungen
    .text = Die drei Spannungen am Motor sind nicht ganz gleich. Maschine: { $machine }. Gemessen hat sie eine dazu befugte Person.
    .a-hint-1 = Der größte Abstand vom Mittel, als Anteil des Mittels.
    .a = Wie groß ist die Spannungsunsymmetrie?
    .b = Wie lautet Ihr Urteil darüber?

item-start-current-unbalance = Drei ungleiche Ströme
    .text = Die Stromzange zeigt in jedem Außenleiter des Motors einen anderen Strom. Maschine: { $machine }. Ein Außenleiter der Versorgung ist schwach.
    .a = Wie groß ist die Stromunsymmetrie?
    .b = Wie groß ist die Spannungsunsymmetrie?
    .c-option-1 = Ungleiche Spannungen bewirken das, also soll eine Elektrofachkraft die Versorgung prüfen
    .c-option-2 = Der Motor ist verbraucht, da gute Wicklungen gleiche Ströme aufnehmen, gleich welche Spannungen
    .c-option-3 = Die Stromzange zeigt falsch, da Ströme niemals ungleicher sein können als die Spannungen
    .c-option-4 = Nichts, da das Mittel der drei Ströme unter dem Strom auf dem Typenschild liegt
    .c-because = Eine kleine Unsymmetrie der Spannungen macht eine mehrmals so große in den Strömen, und die zusätzliche Wärme sitzt in einer Wicklung. Über 1 % Spannungsunsymmetrie darf ein Motor nur weniger als seine Leistung auf dem Typenschild abgeben (aus dem Gedächtnis: NEMA MG 1). Die Ursache zu suchen ist Sache einer Elektrofachkraft.
    .c = Die erste ist ein Mehrfaches der zweiten. Was schließen Sie daraus?

item-start-power-chain = Vom Netz zur Welle
    .text = Der Antrieb läuft mit seiner gewöhnlichen Last. Maschine: { $machine }. Spannung und Strom der drei Außenleiter hat eine dazu befugte Person am Motor abgelesen; Leistungsfaktor und Wirkungsgrad sind die des Motors bei dieser Last.
    .a-hint-1 = Bilden Sie zuerst die Mittel. Ein Drehstrommotor: √3 mal Volt zwischen den Außenleitern, mal Ampere, mal Leistungsfaktor.
    .a = Wie viel elektrische Leistung nimmt der Motor auf?
    .b = Wie viel Leistung steht an seiner Welle zur Verfügung?
    .c = Welcher Anteil seiner Leistung auf dem Typenschild ist das?

item-start-current-expected = Welchen Strom erwarten Sie?
    .text = Die Verfahrenstechniker sagen, wie viel Leistung der Motor abzugeben haben wird. Maschine: { $machine }. Sie wollen den Strom vor dem Start wissen, damit ein falscher sofort auffällt.
    .a = Wie groß ist die mittlere Spannung?
    .b-hint-1 = Der Motor nimmt mehr auf, als er abgibt; stellen Sie die Leistungsformel nach dem Strom um.
    .b = Welcher Strom wird in jedem Außenleiter fließen?

item-start-current-verdict = Innerhalb des Typenschilds?
    .text = Der Antrieb läuft seit einer halben Stunde unter Last. Maschine: { $machine }. Eine dazu befugte Person liest die Ströme der drei Außenleiter ab.
    .a = Wie groß ist der mittlere Strom?
    .b = Wie groß ist er im Verhältnis zum Bemessungsstrom auf dem Typenschild?
    .c = Wie lautet Ihr Urteil darüber?

item-start-load-by-current = Die Last aus der Stromzange
    .text = Nur eine Stromzange ist zur Hand. Maschine: { $machine }. Das Datenblatt des Motors nennt seinen Leerlaufstrom.
    .a = Wie groß ist der mittlere Strom?
    .b-hint-1 = Leerlaufstrom und Laststrom sind die beiden Katheten eines rechtwinkligen Dreiecks.
    .b = Welchen Anteil seiner vollen Last trägt der Motor, den Leerlaufstrom herausgerechnet?

item-start-load-rule-of-thumb = Eine Faustregel und was sie verdeckt
    .text = Der Motor wurde mit Stromzange und Spannungsmesser abgelesen. Maschine: { $machine }. Sie rechnen die Last zuerst proportional und sehen dann, was bleibt, wenn der Leerlaufstrom herausgerechnet ist.
    .a = Welchen Anteil seiner vollen Last scheint der Motor zu tragen, proportional zu Strom und Spannung gerechnet?
    .b-hint-1 = Je leichter die Last, desto mehr übertreibt die Faustregel sie.
    .b = Wie groß ist der Anteil, den Leerlaufstrom herausgerechnet?

item-start-rotation = In welche Richtung?
    .text = Der Motor wurde ausgekuppelt, mit einer Schutzeinrichtung versehen und kurz angetippt. Maschine: { $machine }. Beide Wellen sind parallel, und hier ist alles von der Kettenradseite aus gesehen.
    .a-hint-1 = Zwei Zahnräder im Eingriff drehen sich gegenläufig.
    .a = In welche Richtung muss der Motor drehen?
    .b = Wie lautet Ihr Urteil über die Drehrichtungsprobe?

item-start-backstop = Die Drehrichtungsprobe mit Rücklaufsperre
    .text = Das Getriebe hat eine Rücklaufsperre: Seine Abtriebswelle kann sich nur in eine Richtung drehen. Maschine: { $machine }. Noch niemand hat ausprobiert, in welche Richtung der Motor dreht.
    .a-option-1 = Gesichert wird der Motor ausgekuppelt; dann wird er allein hinter einer Schutzeinrichtung angetippt
    .a-option-2 = Der gekuppelte Antrieb wird nur sehr kurz angetippt; bewegt er sich nicht, ist die Richtung falsch
    .a-option-3 = Der gekuppelte Antrieb wird wie gewöhnlich gestartet, da die Rücklaufsperre hält, was auch kommt
    .a-option-4 = Der Motor wird von Hand gedreht; das zeigt, wie herum er laufen wird
    .a-because = Gegen die Rücklaufsperre geht das ganze Anlaufmoment des Motors in ein Teil, das zum Halten einer Last gemacht ist. Es kann bersten, und dann hält auch die Last nichts mehr. Ausgekuppelt kostet eine falsche Richtung nichts. Angekuppelt wird er wieder, wenn er richtig herum dreht.
    .a = Wie wird die Drehrichtung ausprobiert?

item-start-wrong-way = Er dreht verkehrt
    .text = Bei der Drehrichtungsprobe drehte der Motor verkehrt herum. Maschine: { $machine }.
    .a-option-1 = Bei gesichertem Antrieb tauscht eine Elektrofachkraft zwei der drei Außenleiter
    .a-option-2 = Bei gesichertem Antrieb tauschen Sie am Motorstarter selbst zwei Leiter, da es nur eine Minute dauert
    .a-option-3 = Bei gesichertem Antrieb setzt eine Elektrofachkraft alle drei Leiter um einen Platz weiter
    .a-option-4 = Bei gesichertem Antrieb wird die Kette gekreuzt, oder die Kettenräder werden vertauscht
    .a-because = Zwei vertauschte Außenleiter kehren einen Drehstrommotor um. Alle drei um einen Platz weiterzusetzen, lässt ihn, wie er war. Arbeiten an den Leitungen sind Sache einer Elektrofachkraft bei gesichertem und nachweislich energiefreiem Antrieb, und die Probe wird wiederholt, denn niemand glaubt einem Motor, bevor er ihn drehen gesehen hat.
    .a = Was geschieht jetzt?

item-start-ready = Darf gestartet werden?
    .text = Der neue Antrieb soll zum ersten Mal unter Last gestartet werden. Maschine: { $machine }. Der Ölstand wurde abgelesen, die Drehrichtung geprobt, und Sie sind um die Schutzeinrichtungen herumgegangen. Niemand ist im Gefahrenbereich, und alle wissen Bescheid.
    .a = Wie lautet Ihr Urteil?

item-start-order = Der erste Start
    .text = Getriebe, Ausrichtung, Kette und Schrauben sind geprüft, der Motor ist noch ausgekuppelt, und jedes Schloss ist noch angebracht. Maschine: { $machine }. Jetzt soll der Antrieb zum ersten Mal gestartet werden.
    .a-step-1 = Den Ölstand ablesen und sehen, dass jede Schraube als angezogen gekennzeichnet ist
    .a-step-2 = Werkzeug, Messmittel und Lappen wegnehmen und eine Schutzeinrichtung über die freie Motorwelle setzen
    .a-step-3 = Sehen, dass niemand im Gefahrenbereich ist, die Schlösser abnehmen lassen und den Motor antippen, um seine Drehrichtung zu sehen
    .a-step-4 = Wieder freischalten, sichern und den Motor ankuppeln
    .a-step-5 = Alle Schutzeinrichtungen befestigen, sehen, dass niemand im Gefahrenbereich ist, und die Schlösser abnehmen lassen
    .a-step-6 = Unbelastet starten und von außerhalb der Schutzeinrichtungen hinhören und hinsehen
    .a-step-7 = Stufenweise belasten und Strom, Temperatur und Schwingung ablesen
    .a-step-8 = Nach dem ersten Lauf anhalten, freischalten und sichern, Öl, Schrauben und Kette noch einmal prüfen
    .a-because = Die Drehrichtung wird geprobt, bevor etwas gekuppelt ist, hinter einer Schutzeinrichtung, und zum Kuppeln wird der Antrieb wieder gesichert. Schutzeinrichtungen und Menschen kommen vor jedem Start, auch dem kürzesten. Die Last kommt zuletzt und in Stufen, damit sich ein Fehler zeigt, solange er klein ist.
    .a = In welcher Reihenfolge arbeiten Sie?

item-start-hums = Er brummt nur
    .text = Sie drücken den Starttaster. Maschine: { $machine }. Der Motor brummt laut und dreht sich nicht.
    .a-option-1 = Sofort Stopp drücken, freischalten und sichern und eine Elektrofachkraft rufen
    .a-option-2 = Den Starttaster gedrückt halten, bis er in Gang kommt, da ein kalter Motor länger braucht
    .a-option-3 = Der Welle mit der Hand oder einer Stange einen Stoß geben, während er brummt
    .a-option-4 = Einige Male anhalten und wieder starten, bis er aus einer anderen Stellung anläuft
    .a-because = Fehlt ein Außenleiter, hat ein Motor im Stillstand kein Drehmoment und nimmt ein Mehrfaches des Stroms auf dem Typenschild auf: Er brennt innerhalb einer Minute durch. Auch ein Antrieb, der festsitzt, brummt. Und ein Motor, der brummt, kann in dem Augenblick anlaufen, in dem eine Hand ihm hilft. Er wird angehalten, gesichert und untersucht.
    .a = Was tun Sie?

item-start-overloaded = Mehr, als auf dem Typenschild steht
    .text = Seit die Last da ist, nimmt der Motor gleichmäßig { $start-current_ratio } des Stroms auf dem Typenschild auf. Maschine: { $machine }. Sein Typenschild nennt keinen Betriebsfaktor. Die Schicht will weitermachen: Der Motorschutz hat nicht ausgelöst.
    .a-option-1 = Melden und die Last sofort senken oder den Antrieb anhalten lassen
    .a-option-2 = Laufen lassen, da der Motorschutz rechtzeitig auslösen wird, wenn es sein muss
    .a-option-3 = Den Motorschutz höher einstellen lassen, damit er nachts nicht auslöst
    .a-option-4 = Laufen lassen und das Gehäuse beobachten, da ein Motor immer ein Drittel mehr verträgt
    .a-because = Mehr als der Strom auf dem Typenschild überhitzt die Wicklung, und dasselbe Drehmoment geht durch Zahnräder, Kette und Welle, die für die Leistung auf dem Typenschild ausgewählt wurden. Der Motorschutz ist für den Notfall da und keine Erlaubnis zum Weiterfahren. Wer ihn höher stellt, nimmt das Letzte weg, was zwischen der Überlast und einem Brand steht. Die Ursache wird gesucht, bevor er weiterläuft.
    .a = Was tun Sie?
