## Aufgaben: Nachprüfung und Abnahme

item-next-bolt-check = Die nächste Prüfung der Schrauben
    .text = Die Fußschrauben und die Schrauben der Spannbuchse werden 8 h, 3 Tage, 1 Woche, 4 Wochen und 12 Wochen nach dem ersten Start geprüft und danach alle 8 Wochen. Im Protokoll steht das Alter bei der letzten Prüfung. Maschine: { $machine }.
    .a-hint-1 = Rechnen Sie Tage und Wochen in Stunden um und nehmen Sie das erste Alter nach der letzten Prüfung.
    .a = In welchem Alter des Antriebs ist die nächste Prüfung der Schrauben fällig?

item-next-chain-check = Wie lange noch bis zur Kette?
    .text = Durchhang und Verschleiß der Kette werden 8 h, 1 Tag, 3 Tage, 1, 2, 4 und 8 Wochen nach dem ersten Start geprüft und danach alle 4 Wochen. Maschine: { $machine }.
    .a-hint-1 = Zuerst das Alter, in dem sie fällig ist. Der Plan geht nach dem Alter des Antriebs, gleich wann zuletzt geprüft wurde.
    .a = Wie lange dauert es von jetzt an, bis die nächste Prüfung der Kette fällig ist?

item-how-many-due = Was heute fällig ist
    .text = Sie übernehmen das Protokoll. Maschine: { $machine }. Der Plan zählt ab dem ersten Start: Temperatur, Schwingung und Geräusch nach 1, 2, 4 und 8 h, 1 und 3 Tagen, 1, 2, 4 und 8 Wochen; Ölstand nach 8 h, 1 und 3 Tagen, 1, 2 und 4 Wochen; Schrauben nach 8 h, 3 Tagen, 1, 4 und 12 Wochen; Kette nach 8 h, 1 und 3 Tagen, 1, 2, 4 und 8 Wochen; Kippfuß nach 3 Tagen, 2, 8 und 26 Wochen.
    .a-hint-1 = Für jede Prüfung: das erste Alter ihrer Zeile nach der letzten Prüfung. Sie ist fällig, wenn der Antrieb schon so alt ist.
    .a = Wie viele der fünf Prüfungen sind jetzt fällig, die überfälligen mitgezählt?

item-growing-intervals = Abstände, die wachsen
    .text = Der Betrieb will Prüfabstände, die wachsen: Die erste Prüfung kommt { $follow-first_interval } nach dem ersten Start, und jeder Abstand ist das { $follow-growth }-Fache des vorigen. Maschine: { $machine }.
    .a = Wie lang ist der Abstand unmittelbar vor Prüfung Nummer { $follow-number }?
    .b-hint-1 = Alle Abstände bis zu dieser Prüfung, zusammengezählt.
    .b = Wie alt ist der Antrieb bei Prüfung Nummer { $follow-number }?

item-first-oil-change = Der erste Ölwechsel
    .text = Das neue Getriebe bekommt seinen ersten Ölwechsel nach den Betriebsstunden oder nach der Kalenderzeit auf seinem Typenschild, je nachdem, was zuerst kommt. Der Antrieb läuft nur einen Teil des Tages, an jedem Tag der Woche. Maschine: { $machine }.
    .a-hint-1 = Rechnen Sie die Betriebsstunden in Kalendertage um, bevor Sie vergleichen.
    .a = Wie viele Kalendertage nach dem Start ist der erste Ölwechsel?

item-oil-change-now = Ist es schon so weit?
    .text = Zeit seit der ersten Ölfüllung des Getriebes: { $follow-oil_days }. Maschine: { $machine }. Das Typenschild nennt Betriebsstunden und eine Kalenderzeit, und was zuerst kommt, gilt.
    .a = Wie viele Stunden ist es seither gelaufen?
    .b = Ist der erste Ölwechsel fällig?

item-later-oil-change = Der Ölwechsel danach
    .text = Das erste Öl ist gewechselt. Maschine: { $machine }. Von jetzt an lässt das Typenschild diese Betriebszeit zu: { $follow-usual_running }; nach dem Kalender sind es sechs Monate (182,6 Tage) oder drei Monate (91,3 Tage), wenn der Ölsumpf über 93 °C (200 °F) beharrt. Was zuerst kommt, gilt.
    .a = Wie viele Kalendertage später ist der nächste Ölwechsel?

item-new-chain-sag = Warum eine neue Kette morgen tiefer hängt
    .text = Eine neue Kette wurde aufgelegt und auf den Solldurchhang eingestellt. Maschine: { $machine }. Ihr Einlaufen ist bekannt: Es bringt am Ende { $follow-bedding } Längung, 63 % davon innerhalb von { $follow-bedding_time }, und gleichmäßiger Verschleiß bringt { $follow-steady } in 1000 h.
    .a = Um welchen Anteil ihrer Länge hat sie sich nach { $follow-run } gelängt?
    .b = Um wie viel ist die ganze Kette länger geworden?
    .c-hint-1 = Über die Überlänge: zuerst die Überlänge bei dem eingestellten Durchhang, dazu der Zuwachs, dann zurück zum Durchhang.
    .c = Wie tief hängt sie dann unter dem Lineal, wenn niemand nachgespannt hat?

item-chain-hours-left = Wann wird diese Kette fällig?
    .text = Seit dem Einlaufen wurde die Längung der Kette zweimal gemessen. Maschine: { $machine }.
    .a = Nach wie vielen weiteren Betriebsstunden, ab der zweiten Messung gezählt, erreicht sie die Verschleißgrenze, wenn es so weitergeht?

item-rise-baseline = Bezugswert und Grenzen
    .text = Der Antrieb ist eingelaufen. Im Protokoll stehen vier Übertemperaturen in der Beharrung, alle bei gleicher Last. Maschine: { $machine }.
    .a = Wie groß ist der Bezugswert?
    .b = Wie groß ist die mittlere gleitende Spannweite?
    .c = Wo liegt die obere Eingriffsgrenze?

item-rise-signal = Zufall oder Neuigkeit?
    .text = Bezugswert und Eingriffsgrenzen der Übertemperatur wurden gebildet, als der Antrieb eingelaufen war. Heute wurde bei gleicher Last eine weitere Übertemperatur abgelesen. Maschine: { $machine }.
    .a-hint-1 = Das Mittel, dann die mittlere gleitende Spannweite, dann beide Grenzen: Mittel plus und minus 2,66 mittlere Spannweiten.
    .a = Was sagt die heutige Übertemperatur?

item-weighted-mean = Eine kleine, bleibende Verschiebung
    .text = Die letzten beiden Übertemperaturen sehen hoch aus, doch eine einzelne Ablesung kann das immer. Darum wird ein gewichtetes Mittel geführt, das beim Bezugswert beginnt und jeder neuen Ablesung ein Gewicht von { $follow-weight } gibt. Seine Grenzen sind { $follow-width } Standardabweichungen breit. Maschine: { $machine }.
    .a-hint-1 = Eine Ablesung nach der anderen: Gewicht mal Ablesung, dazu der Rest mal dem vorigen Mittel.
    .a = Wo steht das gewichtete Mittel nach den beiden späteren Ablesungen?
    .b = Wo liegt seine obere Grenze nach vielen Ablesungen?

item-decide-from-verdicts = Annehmen, nachstellen oder anhalten
    .text = Jede Prüfung hat ihr Urteil auf dem Blatt. Ausrichtung, Schrauben, Schwingung und Strom wurden in Ordnung gefunden. Maschine: { $machine }.
    .a-hint-1 = Jedes Urteil ist ein Annehmen, ein Nachstellen oder ein Anhalten. Das schlechteste gilt für die Maschine.
    .a = Wie lautet die Entscheidung über die ganze Maschine?

item-decide-from-readings = Von den Ablesungen zur Entscheidung
    .text = Der Antrieb ist bis zur Beharrung gelaufen. Über Grundrahmen, Öl und Wellenlast ist schon entschieden; Temperatur und Kette bleiben Ihnen. Maschine: { $machine }.
    .a = Wie lautet die Entscheidung über die Temperatur? Zulässig sind { $heat-rise_limit } Übertemperatur und höchstens { $heat-sump_limit } an jedem Tag.
    .b = Wie lautet die Entscheidung über die Kette? Der ganze Weg der Trummitte ist als Anteil der Trumlänge angegeben, der Verschleiß mit seinem Grenzwert.
    .c = Wie lautet die Entscheidung über die ganze Maschine?

item-guard-off-decision = Alles in Ordnung bis auf eines
    .text = Die Prüfungen sind getan, und die Schicht will die Maschine zurück. Auf dem Blatt steht, dass der Kettenschutz danebenliegt, weil zwei seiner Schrauben fehlen. Maschine: { $machine }.
    .a = Wie lautet die Entscheidung über die ganze Maschine?

item-what-hinders-signing = Darf unterschrieben werden?
    .text = Das Blatt ist ausgefüllt, und jemand greift zum Stift. Maschine: { $machine }.
    .a-hint-1 = Die Maschine vor der Person: offene Sicherheitsmängel, dann die Entscheidung, dann Befähigung, Befugnis und Zulassung.
    .a = Was steht der Unterschrift im Weg? Nennen Sie das Schwerwiegendste.

item-whole-job-order = Die ganze Arbeit
    .text = Ein neu aufgestelltes Getriebe mit seinem Kettentrieb ist zu prüfen, in Ordnung zu bringen und zu übergeben. Maschine: { $machine }.
    .a-step-1 = Freischalten, gegen Wiedereinschalten sichern und ein Schild anhängen
    .a-step-2 = Gespeicherte Energie ablassen oder sperren und feststellen, dass keine mehr da ist
    .a-step-3 = Kippfuß, Öl, Ausrichtung, Kette und Schrauben prüfen und nachstellen, was nicht stimmt
    .a-step-4 = Jede Schutzeinrichtung wieder anbringen und befestigen
    .a-step-5 = Werkzeug und Menschen aus dem Bereich schaffen und die Schlösser von denen abnehmen lassen, die sie angebracht haben
    .a-step-6 = Starten und Temperatur, Schwingung und Geräusch von außerhalb der Schutzeinrichtungen beobachten
    .a-step-7 = Nach dem Einlauf wieder freischalten und sichern und Schrauben, Füße und Kette nachprüfen
    .a-because = Hände kommen nur heran, solange der Antrieb energiefrei und das nachgewiesen ist, und gestartet wird nur mit angebrachten Schutzeinrichtungen und ohne Menschen im Gefahrenbereich. Was sich gesetzt hat, wird nachgeprüft, und dazu wird freigeschaltet und gesichert wie beim ersten Mal.
    .a = In welcher Reihenfolge läuft die Arbeit ab?

item-recheck-after-shift = Die Prüfung nach der ersten Schicht
    .text = Der Antrieb ist seine ersten 8 h gelaufen. Schrauben, Kette und Ölstand sind fällig, und die Fertigung gibt Ihnen zwanzig Minuten. Maschine: { $machine }.
    .a-option-1 = Freischalten, sichern, Energiefreiheit feststellen, tun, was hineinpasst, den Rest als offen vermerken
    .a-option-2 = Die Kette im Lauf durch den Spalt neben der Schutzeinrichtung prüfen und nur für die Schrauben freischalten
    .a-option-3 = Mit dem Not-Halt anhalten, der hält den Antrieb lange genug für die Schrauben
    .a-option-4 = Die Schutzeinrichtungen danach weglassen, da die nächste Prüfung ohnehin morgen ist
    .a-option-5 = Das Freischalten dieses eine Mal auslassen; der Trennschalter ist in Sicht
    .a-because = Zwanzig Minuten sind kein Grund, eine Hand in einen eingeschalteten Antrieb zu halten. Ein Stopptaster schaltet nichts frei, und eine offene Prüfung wird aufgeschrieben, denn eine Lücke sieht aus wie eine Prüfung, die gemacht wurde. Über den Start entscheidet, wer dafür verantwortlich ist.
    .a = Wie nutzen Sie sie?

item-sign-for-a-friend = Ein Gefallen
    .text = Ein Kollege hat die Maschine allein geprüft und ist in Eile. Er ist befähigt, aber der Betrieb hat ihn nicht befugt, Maschinen freizugeben; Sie sind befugt. Er bittet Sie, ohne Hinsehen zu unterschreiben, er sei ja immer sorgfältig. Maschine: { $machine }.
    .a-option-1 = Alles mit ihm durchgehen und nur unterschreiben, was Sie in Ordnung gesehen haben
    .a-option-2 = Unterschreiben, da er befähigt ist und Sie befugt sind, zusammen sind Sie also beides
    .a-option-3 = Unterschreiben und seinen Namen neben Ihren setzen, damit man sieht, wer geprüft hat
    .a-option-4 = Ihn mit Ihrem Namen unterschreiben lassen, da er es ist, der geprüft hat
    .a-because = Eine Unterschrift sagt: Ich habe gesehen, dass diese Maschine laufen darf. Befähigung und Befugnis gehören zu einer Person an einer Maschine und lassen sich nicht aus zweien zusammenzählen.
    .a = Was tun Sie?

item-one-bad-of-ten = Neun zu eins
    .text = Neun Prüfungen lauten auf „annehmen“. Die zehnte sagt, dass die Kette zu locker hängt. Maschine: { $machine }.
    .a-option-1 = Nachstellen: Die schlechteste Prüfung entscheidet, die Kette wird eingestellt
    .a-option-2 = Annehmen: Neun zu eins ist eine klare Mehrheit, wie bei jeder Abstimmung
    .a-option-3 = Annehmen, mit dem Vermerk, in vier Wochen wieder nach der Kette zu sehen
    .a-option-4 = Anhalten: Eine Maschine mit einem Mangel darf nicht laufen, so klein er auch sein mag
    .a-because = Prüfungen stimmen nicht ab: Jede sieht nach etwas, das für sich allein versagen kann. Eine lockere Kette wird in Ordnung gebracht und noch einmal geprüft, das ist Nachstellen; Anhalten gilt dem, was jetzt Menschen verletzen oder die Maschine zerstören kann.
    .a = Wie lautet die Entscheidung über die Maschine?

item-when-baseline = Welche Ablesungen geben den Bezugswert?
    .text = Im Protokoll stehen Ablesungen vom ersten Start, vom ersten Tag während des Einlaufens und aus der zweiten und dritten Woche, als sie gleich blieben. Maschine: { $machine }.
    .a-option-1 = Aus denen der zweiten und dritten Woche, bei gleicher Last und Drehzahl
    .a-option-2 = Aus denen vom ersten Start, als die Maschine neu und am besten war
    .a-option-3 = Aus allen, da mehr Ablesungen ein besseres Mittel geben
    .a-option-4 = Aus der höchsten von allen, um sicherzugehen
    .a-option-5 = Aus den Grenzwerten des Herstellers, da sie im Voraus bekannt sind
    .a-because = Ein Bezugswert sagt, wie diese Maschine ist, wenn sie gesund ist. Ablesungen aus dem Einlauf liegen höher und streuen mehr; mitgerechnet heben sie das Mittel und weiten die Grenzen, sodass sich eine spätere Änderung nicht zeigt.
    .a = Aus welchen bilden Sie den Bezugswert und seine Grenzen?

item-late-check = Eine Prüfung, die zu spät kam
    .text = Die Prüfung der Schrauben war bei 72 h fällig und wurde bei 100 h gemacht. Das nächste Alter im Plan ist 168 h. Maschine: { $machine }.
    .a-option-1 = Bei 168 h, da der Plan nach dem Alter des Antriebs geht
    .a-option-2 = Bei 196 h, da der Abstand von 96 h mit der letzten Prüfung beginnt
    .a-option-3 = Bei 172 h, da sich der erste Abstand von drei Tagen wiederholt
    .a-option-4 = Sofort, um es auszugleichen
    .a-because = Der Plan folgt dem Setzen des Antriebs, und das wartet nicht auf den, der zu spät kam. Eine verspätete Prüfung lässt weniger Zeit bis zur nächsten, nicht mehr.
    .a = Wann ist die nächste fällig?
