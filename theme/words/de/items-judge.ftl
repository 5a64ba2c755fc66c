## Aufgaben: Urteile über eine ganze Maschine

item-which-chain-fault = Was stimmt an diesem Kettentrieb nicht?
    .text = Der Antrieb ist freigeschaltet, gesichert, als energiefrei nachgewiesen und offen. Höchstens eines stimmt an ihm nicht. Maschine: { $machine }.
    .a-hint-1 = Teilen Sie den ganzen Weg durch den Achsabstand auf der Zeichnung: Der ist der Trumlänge nahe genug, um danach zu urteilen.
    .a-hint-2 = Berechnen Sie den Verschleiß aus der gemessenen Länge.
    .a-because = Berechnet: der ganze Weg als Anteil der Trumlänge, der Verschleiß über die gemessenen Teilungen und wie weit außen das Kettenrad sitzt, gegen die Mitte des Wellenendes.
    .a = Was erklärt alle Ablesungen?

item-which-foot-fault = Was stimmt unter dem Getriebe nicht?
    .text = Der Antrieb ist freigeschaltet und gesichert. Die Messuhr stand neben jedem Fuß auf dem Grundrahmen, während allein seine Schraube gelöst wurde, und an den Ecken wurde mit der Fühlerlehre geprüft; höchstens eines stimmt unter dem Getriebe nicht. Maschine: { $machine }.
    .a-hint-1 = Halten Sie jede Art der Ablesung gegen das, was ein guter Grundrahmen zeigt: Hübe, Ecken, Waage.
    .a-because = Ein Kippfuß hebt sich beim Lösen; ein schräger Fuß steht an einer Ecke weiter offen als an der gegenüberliegenden; ein Grundrahmen, der nicht in Waage steht, zeigt sich in keinem von beiden.
    .a = Was erklärt alle Ablesungen?

item-which-oil-fault = Was stimmt am Öl oder am Entlüfter nicht?
    .text = Der kalte Ölstand wurde vor dem Start abgelesen, der Druck bei Betriebstemperatur, und eine Probe ging ins Labor. Höchstens eines stimmt nicht. Maschine: { $machine }.
    .a-hint-1 = Welche Viskositätsklasse hat eine Viskosität wie die Probe? Lassen Sie 10 % nach beiden Seiten der Klassenzahl zu.
    .a-because = Der Ölstand gehört zwischen die beiden Marken, die Viskosität bei 40 °C auf 10 % an die Klasse auf dem Typenschild, und ein offener Entlüfter lässt keinen Druck stehen.
    .a = Was erklärt alle Ablesungen?

item-whole-machine-diagnosis = Ein Blick auf die ganze Maschine
    .text = Vor Ihnen liegt ein Prüfblatt, ausgefüllt am freigeschalteten und gesicherten Antrieb; Temperatur und Leistung wurden vor dem Anhalten abgelesen. Höchstens eines stimmt nicht. Maschine: { $machine }.
    .a-hint-1 = Halten Sie jede Ablesung gegen ihren Grenzwert und kennzeichnen Sie die, die ihn nicht einhalten.
    .a-because = Gehen Sie das Blatt einmal durch und halten Sie jede Ablesung gegen ihren Grenzwert; die ihn verletzt, weist auf die Ursache.
    .a = Was erklärt alle Ablesungen?

item-sag-sheet-odd = Ein Fehler auf dem Kettenblatt
    .text = Am Leertrum wurden drei Tiefen abgelesen: hängend, niedergedrückt und der ganze Weg. Eine davon wurde falsch abgelesen oder falsch aufgeschrieben. Maschine: { $machine }.
    .a-hint-1 = Die niedergedrückte Tiefe ist das 1,155-Fache des Durchhangs und der ganze Weg das Doppelte der niedergedrückten Tiefe: Zwei der drei passen zusammen.
    .a-because = Niedergedrückt liegt das Trum 1,155-mal so tief, wie es hängt, und der ganze Weg ist das Doppelte der niedergedrückten Tiefe.
    .a = Welche passt nicht zu den anderen?

item-torque-sheet-odd = Ein Fehler auf dem Lastblatt
    .text = Ein Kollege hat vom Motor bis zur Kette durchgerechnet und die Ergebnisse auf ein Blatt geschrieben. Maschine: { $machine }. Die Typenschilder sind richtig abgeschrieben; ein Ergebnis stimmt nicht.
    .a-hint-1 = Gehen Sie das Blatt vom Motor an durch; prüfen Sie dann, ob die späteren Ergebnisse auseinander folgen.
    .a-because = Jeder Schritt lässt sich aus dem vorigen berechnen und mit dem nächsten prüfen: Der falsche Wert stört beides, und kein anderer tut das.
    .a = Welches Ergebnis passt nicht zu den anderen?

item-oil-sheet-odd = Ein Fehler auf dem Ölblatt
    .text = Auf dem Blatt stehen der Ölstand, die Menge, die er bedeutet, und was die Wärme daraus macht. Maschine: { $machine }. Ein Wert wurde falsch aufgeschrieben.
    .a-because = Ölstand und Menge gehören zueinander, Ausdehnung und Anstieg auch, und der Stand bei heißem Öl ist der kalte plus der Anstieg.
    .a = Welcher Wert passt nicht zu den anderen?

item-decide-base = Darf der Grundrahmen so bleiben?
    .text = Vor dem Ausrichten wird der Grundrahmen geprüft: Eine Schraube nach der anderen wird gelöst, und längs der Welle liegt eine Wasserwaage. Maschine: { $machine }.
    .a-finding-1 = Unter einem Fuß klafft mehr, als zulässig ist
    .a-finding-2 = Der Grundrahmen steht nicht in der Waage, und mit ihm steht der Ölstand schief
    .a-because = Das Ausrichten kommt nach den Füßen: Was auf einem Kippfuß ausgerichtet wurde, verschiebt sich, wenn seine Schraube angezogen wird.
    .b = Was gibt den Ausschlag?
    .a = Annehmen, nachstellen oder anhalten?

item-decide-chain = Darf diese Kette wieder laufen?
    .text = Der Antrieb ist freigeschaltet und gesichert, und die Kette wird gemessen: der Weg des Leertrums und die Länge über einige Teilungen, straff gezogen. Maschine: { $machine }.
    .a-finding-1 = Die Kette ist zu straff, und die Lager tragen ihren Zug
    .a-finding-2 = Die Kette ist zu locker und kann schlagen oder auf die Zähne steigen
    .a-finding-3 = Die Kette ist über ihre Grenze verschlissen und kann über die Zähne springen
    .b = Was gibt den Ausschlag?
    .a = Annehmen, nachstellen oder anhalten?

item-decide-shaft-end = Darf diese Last an der Welle hängen?
    .text = Das Kettenrad sitzt, die Last ist bekannt, und der Katalog nennt die zulässige Querkraft in der Mitte des Wellenendes. Maschine: { $machine }.
    .a-finding-1 = Das Kettenrad sitzt für diese Last zu weit außen, und innen ist noch Platz
    .a-finding-2 = Die Last ist größer, als das Wellenende an irgendeiner Stelle trägt
    .a-finding-3 = Die Kette ist zu straff
    .a-finding-4 = Die Kette ist zu locker
    .b = Was gibt den Ausschlag?
    .a = Annehmen, nachstellen oder anhalten?

item-decide-oil = Darf er mit diesem Öl anfahren?
    .text = Vor dem ersten Start steht der Antrieb kalt und in der Waage; das Ölschauglas und der Laborbericht der Probe liegen vor Ihnen. Maschine: { $machine }.
    .a-finding-1 = Das Öl steht unter der unteren Marke: Zahnräder oder Lager liefen trocken an
    .a-finding-2 = Das Öl steht über der oberen Marke und würde sich heiß planschen
    .a-finding-3 = Das Öl ist zu dünn, um die Zähne getrennt zu halten
    .a-finding-4 = Das Öl ist dicker, als das Typenschild verlangt
    .a-finding-5 = Das Öl gehört zu keiner Viskositätsklasse: Es wurden zwei Sorten gemischt
    .a-because = Ein Ölstand wird kalt und im Stillstand abgelesen und gegen die Marken der Einbaulage gehalten, in der das Getriebe sitzt.
    .b = Was gibt den Ausschlag?
    .a = Annehmen, nachstellen oder anhalten?
