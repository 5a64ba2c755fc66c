## Aufgaben: Kette

item-working-pull = Zug im Lasttrum
    .text = Ein Leistungsmesser in der Zuleitung, der die Verluste des Motors selbst abzieht, zeigt, was der Motor an seiner Welle abgibt. Maschine: { $machine }. Das Getriebe nimmt seine Verluste weg, bevor die Kette etwas davon bekommt.
    .a = Welche Leistung überträgt die Kette?
    .b = Wie schnell läuft die Kette?
    .c = Wie stark zieht das Lasttrum?

item-safety-on-breaking-load = Sicherheit gegen die Bruchkraft
    .text = Die Kette ist eine Einfachkette und mit einem Verschlussglied geschlossen, das Presssitz hat. Die Liste ihres Herstellers nennt die Mindestbruchkraft. Maschine: { $machine }.
    .a-hint-1 = Leistung und Drehzahl sind die an der Kette, nicht die des Motors: Von der Leistung gehen die Verluste ab, die Drehzahl wird durch die Getriebeübersetzung geteilt.
    .a = Wie stark zieht das Lasttrum?
    .b = Wie groß ist die Sicherheit gegen die Bruchkraft?
    .c = Ist das sicher genug?

item-chain-rating = Ist die Kette groß genug?
    .text = Die Last wurde erhöht, und die übertragbare Leistung der Kette wird gegen das gehalten, was sie jetzt überträgt. Maschine: { $machine }. Strangfaktoren: 1 Strang 1,0; 2 Stränge 1,7; 3 Stränge 2,5; 4 Stränge 3,3.
    .a = Welcher Strangfaktor gehört hinein?
    .b-hint-1 = Beginnen Sie mit der Leistung, die das Getriebe abgibt. Stöße vergrößern sie um ihren Faktor; die Stränge teilen sie unter sich.
    .b = Wie groß ist die Auslegungsleistung für einen Strang?
    .c = Welche Leistung vertragen die Laschen eines Strangs?
    .d = Bekannt ist auch, was Rollen und Buchsen eines Strangs bei dieser Drehzahl vertragen (sehr viel, wo sie langsam laufen und selten Schläge bekommen): Wie groß ist die übertragbare Leistung eines Strangs?
    .e = Ist die Kette groß genug?

item-chain-lubrication = Wie die Kette ihr Öl braucht
    .text = Auf der Liste an der Wand steht für jede Teilung, bis zu welcher Kettengeschwindigkeit Hand- oder Tropfschmierung genügt und bis zu welcher ein Ölbad; darüber braucht es Druckumlaufschmierung. Maschine: { $machine }. 3/8 in (9,525 mm): 370 und 2850 ft/min (1,88 und 14,5 m/s). 1/2 in (12,7 mm): 300 und 2300 (1,52 und 11,7). 5/8 in (15,875 mm): 250 und 2000 (1,27 und 10,2). 3/4 in (19,05 mm): 220 und 1800 (1,12 und 9,14). 1 in (25,4 mm): 170 und 1500 (0,86 und 7,62). 1 1/4 in (31,75 mm): 150 und 1300 (0,76 und 6,60). 1 1/2 in (38,1 mm): 130 und 1200 (0,66 und 6,10). 1 3/4 in (44,45 mm): 115 und 1100 (0,58 und 5,59). 2 in (50,8 mm): 100 und 1000 (0,51 und 5,08).
    .a = Wie schnell läuft die Kette?
    .b = Welche Art der Schmierung braucht sie mindestens?
    .c-option-1 = Innen auf das Leertrum, an die Kanten der Laschen
    .c-option-2 = Außen auf das Lasttrum, wo man es am besten sieht und erreicht
    .c-option-3 = Nur auf die Zähne der Kettenräder: Die Kette selbst verschleißt nur dort
    .c-option-4 = Auf den Kettenschutz über der Kette, damit es ringsum herabtropft
    .c-because = Was verschleißt, sind Bolzen und Buchse. Die Laschen des Leertrums stehen ein wenig auseinander, und Öl, das innen aufgebracht wird, wird durch das Gelenk nach außen geschleudert. Übliche Praxis. Von Hand nur bei freigeschaltetem und gesichertem Antrieb.
    .c = Wohin kommt das Öl?

item-sag-check-order = Den Durchhang prüfen, der Reihe nach
    .text = Der Durchhang der Kette ist zu prüfen. Maschine: { $machine }.
    .a-step-1 = Den Antrieb anhalten, freischalten und das eigene Schloss an den Trennschalter hängen
    .a-step-2 = Sehen, dass keine Last mehr zurücklaufen kann, dann einen Einschaltversuch machen: Nichts darf sich bewegen
    .a-step-3 = Den Kettenschutz abnehmen
    .a-step-4 = Den Antrieb von Hand drehen, bis das eine Trum gerade ist und der ganze Durchhang im anderen liegt
    .a-step-5 = Das Lineal an das Leertrum legen und den Durchhang in der Trummitte ablesen
    .a-step-6 = Die Kette von Hand weiterdrehen und an drei weiteren Stellen ablesen
    .a-step-7 = Den Kettenschutz wieder anbringen und anschrauben
    .a-because = Das Schloss kommt vor dem Einschaltversuch, und der Versuch, bevor der Kettenschutz ab ist: Geöffnet wird er nur an einer Maschine, die als energiefrei nachgewiesen ist. Der ganze Durchhang muss in einem Trum liegen, bevor etwas abgelesen wird.
    .a = Bringen Sie die Schritte in die richtige Reihenfolge.

item-take-up-order = Die Kette nachspannen, der Reihe nach
    .text = Der Antrieb steht still, und seine Kette soll an den Spannschrauben des Grundrahmens nachgespannt werden, auf dem Motor und Getriebe gemeinsam stehen. Maschine: { $machine }.
    .a-step-1 = Freischalten und gegen Wiedereinschalten sichern, die Last abnehmen oder halten lassen und die Energiefreiheit feststellen
    .a-step-2 = Die Schutzeinrichtung abnehmen und den vorgefundenen Durchhang ablesen
    .a-step-3 = Die Fußschrauben nur so weit lösen, dass sich der Grundrahmen verschieben lässt
    .a-step-4 = Alle Spannschrauben um denselben Teil einer Umdrehung drehen
    .a-step-5 = Die Fußschrauben mit ihrem Drehmoment anziehen
    .a-step-6 = Die Ausrichtung der Kettenräder prüfen und den Durchhang noch einmal ablesen
    .a-step-7 = Die Schutzeinrichtung wieder anbringen, bevor jemand ein Schloss abnimmt
    .a-because = Der Grundrahmen trägt Motor und Getriebe, also bleibt die Kupplung zwischen ihnen unberührt. Die letzte Ablesung macht man bei festgezogenen Schrauben, denn das Anziehen verschiebt den Grundrahmen. Die Schutzeinrichtung kommt wieder an, solange die Schlösser noch hängen.
    .a = Bringen Sie die Schritte in die richtige Reihenfolge.

item-start-after-chain-work = Wieder in Betrieb
    .text = Die Arbeit an der Kette ist getan, der Durchhang stimmt, und die Schrauben sind fest. Maschine: { $machine }.
    .a-step-1 = Werkzeug und Lappen vollzählig aus dem Antrieb nehmen und ihn einmal von Hand herumdrehen
    .a-step-2 = Die Schutzeinrichtung anbringen und alle ihre Schrauben festziehen
    .a-step-3 = Sehen, dass niemand im Gefahrenbereich ist, und ansagen, dass der Antrieb anläuft
    .a-step-4 = Jeder nimmt sein eigenes Schloss ab, und der Trennschalter wird eingeschaltet
    .a-step-5 = Starten und von außerhalb der Schutzeinrichtung hören und schauen
    .a-step-6 = Nach der Einlaufzeit anhalten, wieder freischalten und sichern und Durchhang, Schrauben und Ausrichtung nachprüfen
    .a-because = Von Hand drehen vor dem Strom, Schutzeinrichtung dran, bevor die Schlösser abkommen, alle aus dem Gefahrenbereich vor dem Einschalten. Eine neue Kette läuft sich schnell ein, darum kommt die erste Nachprüfung bald.
    .a = Bringen Sie die Schritte in die richtige Reihenfolge.

item-wear-check-order = Den Verschleiß messen, der Reihe nach
    .text = Der Antrieb steht zur Inspektion, und der Verschleiß seiner Kette ist zu messen. Maschine: { $machine }.
    .a-step-1 = Freischalten, gegen Wiedereinschalten sichern und feststellen, dass sich nichts bewegen kann
    .a-step-2 = Die Schutzeinrichtung abnehmen und die Kette sauber wischen
    .a-step-3 = Das Trum straff ziehen, damit kein Gelenk lose hängt
    .a-step-4 = Die Teilungen abzählen und den Maßstab von Bolzen zu Bolzen anlegen
    .a-step-5 = Die abgelesene Länge durch die Neulänge ebenso vieler Teilungen teilen
    .a-step-6 = Den Verschleiß gegen den Grenzwert dieses Antriebs halten und die Zähne der Kettenräder ansehen
    .a-because = Schmutz und ein loses Trum verdecken beide den Verschleiß: erst sauber, dann straff, dann zählen, dann messen. Der Grenzwert gehört zum Antrieb: Sein großes Kettenrad und sein Achsabstand bestimmen ihn.
    .a = Bringen Sie die Schritte in die richtige Reihenfolge.

item-chain-slaps-while-running = Eine Kette, die schlägt
    .text = Im Lauf schlägt die Kette gegen ihren Schutz. Maschine: { $machine }. Der Schichtführer will sofort wissen, wie locker sie ist.
    .a-option-1 = Anhalten lassen, freischalten, sichern, Energiefreiheit nachweisen und erst dann messen
    .a-option-2 = Im Lauf die Schauklappe öffnen und den Durchhang aus sicherem Abstand nach Augenmaß beurteilen
    .a-option-3 = Die Spannschrauben im Lauf um eine halbe Umdrehung drehen und horchen, ob das Schlagen aufhört
    .a-option-4 = Durch die Klappe mit einem Holzstiel auf das laufende Trum drücken
    .a-option-5 = Den Stopptaster drücken und hineingreifen, sobald die Kette steht
    .a-because = Eine laufende Kette zieht einen Ärmel schneller ein, als eine Hand loslassen kann, und ein Stopptaster schaltet nichts frei. Der Durchhang wird nur am freigeschalteten und gesicherten Antrieb gemessen, und die Last darf nicht zurücklaufen können.
    .a = Was tun Sie?

item-sprocket-diameters = Von der Kettennummer zum Kettenrad
    .text = Die Nummer ist in die Außenlaschen der Kette geschlagen, und die Zähne des kleinen Kettenrads lassen sich zählen. Das Rad muss bestimmt werden, bevor man eines bestellt. Maschine: { $machine }.
    .a-hint-1 = In der Nummer steckt die Teilung: Zählen Sie Achtel eines Zolls, oder Sechzehntel, wenn ein B am Ende steht. Ein Zoll hat 25,4 mm.
    .a = Welche Teilung hat die Kette?
    .b-hint-1 = Die Kette liegt als Vieleck auf dem Rad. Eine halbe Seite und die Linie zu ihrer Ecke schließen den halben Winkel eines Zahns ein, 180° geteilt durch die Zähnezahl.
    .b = Welchen Teilkreisdurchmesser hat das kleine Kettenrad?
    .c = Wie groß ist der Durchmesser des Kreises durch die Zahnspitzen (Kopfkreisdurchmesser)?

item-large-sprocket-speed = Welches Rad dreht wie schnell
    .text = Das kleine Kettenrad sitzt auf der Abtriebswelle des Getriebes, das große auf der getriebenen Welle. Am Motor wird ein Drehzahlmesser angesetzt. Maschine: { $machine }.
    .a = Mit welcher Drehzahl läuft das kleine Kettenrad?
    .b = Wie groß ist die Übersetzung des Kettentriebs allein?
    .c-hint-1 = Am größeren Rad müssen mehr Zähne vorbei, also dreht es langsamer.
    .c = Mit welcher Drehzahl sollte das große Kettenrad laufen?

item-chain-velocity = Wie schnell die Kette läuft
    .text = Wie die Kette zu schmieren ist und wie stark sie zieht, hängt beides von ihrer Geschwindigkeit ab. Maschine: { $machine }.
    .a-hint-1 = Bei jeder Umdrehung des kleinen Kettenrads laufen so viele Teilungen vorbei, wie es Zähne hat.
    .a = Wie schnell läuft die Kette?

item-links-to-fit = Wie viele Glieder?
    .text = Eine neue Kette wird abgelängt. Die Spannvorrichtung steht so, dass der Achsabstand der auf der Zeichnung ist. Maschine: { $machine }.
    .a-hint-1 = Teilen Sie zuerst den Achsabstand durch die Teilung; dann ist jedes Glied der Formel eine Zahl von Teilungen.
    .a-hint-2 = Hin und zurück zwischen den Achsen, die Hälfte jedes Kettenrads und ein wenig für die Schräge der Trume.
    .a = Wie lang muss die Kette in Teilungen nach der dreigliedrigen Formel sein? Geben Sie zwei Dezimalstellen an.
    .b = Wie viele Glieder werden aufgelegt, ohne gekröpftes Glied?
    .c-option-1 = Sie braucht ein gekröpftes Glied, das schwächer ist als die anderen und die Kette begrenzt
    .c-option-2 = Dann trifft bei jedem Umlauf dasselbe Glied auf denselben Zahn, und beide verschleißen
    .c-option-3 = Die Kette lässt sich um zwei Kettenräder gar nicht schließen
    .c-option-4 = Die Teilung einer ungeraden Kette ist etwas kürzer
    .c-because = Innen- und Außenglieder wechseln sich ab, darum lässt sich eine ungerade Zahl nur mit einem gekröpften Glied schließen. Seine gebogenen Laschen tragen weniger, und das schwächste Glied begrenzt die ganze Kette.
    .c = Warum meidet man eine ungerade Gliederzahl?

item-centres-without-slack = Achsabstand ohne Durchhang
    .text = Die Glieder der neuen Kette sind gezählt. Der Monteur will wissen, wo die Spannvorrichtung steht, wenn der letzte Durchhang heraus ist, damit er sieht, wie viel Spannweg nach beiden Seiten bleibt. Maschine: { $machine }.
    .a-hint-1 = Ziehen Sie die Hälfte aller Zähne von der Gliederzahl ab: Was bleibt, läuft zwischen den Kettenrädern, hin und zurück.
    .a-hint-2 = Bei gleichen Rädern ist das alles; bei ungleichen wird der Achsabstand etwas kürzer.
    .a = Bei welchem Achsabstand hat die neue Kette gar keinen Durchhang mehr?

item-wrap-small-sprocket = Wie weit die Kette das kleine Rad umschlingt
    .text = Vor der Abnahme wird die Anordnung des Kettentriebs aus dem geprüft, was sich messen und zählen lässt. Maschine: { $machine }.
    .a = Wie viele Teilungen lang ist der Achsabstand?
    .b-hint-1 = Berechnen Sie zuerst beide Teilkreisdurchmesser. Die Hälfte ihrer Differenz, geteilt durch den Achsabstand, ist der Sinus des Trumwinkels.
    .b = Wie weit umschlingt die Kette das kleine Kettenrad?
    .c = Ist diese Umschlingung groß genug?

item-free-span = Die Länge, die frei hängt
    .text = Ein Prozentsatz für den Durchhang sagt wenig, solange nicht gesagt ist, von welcher Länge. Das Bandmaß gibt den Abstand der Wellenmitten; die freie Trumlänge ist die gerade Strecke zwischen den beiden Punkten, an denen das Leertrum von seinen Kettenrädern abläuft. Maschine: { $machine }.
    .a = Welchen Teilkreisdurchmesser hat das kleine Kettenrad?
    .b = Welchen Teilkreisdurchmesser hat das große Kettenrad?
    .c-hint-1 = Ein rechtwinkliges Dreieck: Der Achsabstand ist die lange Seite, die halbe Differenz der Durchmesser eine kurze.
    .c = Wie lang ist die freie Trumlänge?
    .d-option-1 = Sein Durchhang ist höchstens um einige Prozent seiner selbst zu tief, zu wenig für den Maßstab
    .d-option-2 = Sein Durchhang ist etwa halb so groß, wie er sein soll, da die Trumlänge der doppelte Achsabstand ist
    .d-option-3 = Sein Durchhang ist etwa doppelt so groß, wie er sein soll, da die Trumlänge der halbe Achsabstand ist
    .d-option-4 = Nichts: Die Trumlänge ist immer genau der Achsabstand, gleich bei welchen Kettenrädern
    .d-because = Die Trumlänge ist etwas kürzer als der Achsabstand, selbst bei sehr ungleichen Kettenrädern um ein oder zwei Prozent. Die Länge gehört trotzdem genannt. Viel mehr schadet es, Durchhang und ganzen Weg zu verwechseln, ein Faktor von 2,31.
    .d = Das Blatt dieses Antriebs gibt den Durchhang in Prozent der Trumlänge an. Ein Kollege nimmt denselben Prozentsatz vom Achsabstand. Was kommt dabei heraus?

item-chordal-variation = Warum wenige Zähne rau laufen
    .text = Die Kette liegt als Vieleck auf dem kleinen Kettenrad, darum hebt und senkt sie sich bei jedem Zahn ein wenig, und ihre Geschwindigkeit schwankt. Maschine: { $machine }.
    .a-hint-1 = Zwischen zwei Ecken des Vielecks sinkt der Radius von eins auf den Kosinus des halben Zahnwinkels.
    .a = Wie groß ist der Polygoneffekt am kleinen Kettenrad, als Abnahme des Radius in Prozent gerechnet?
    .b-option-1 = Eine Kette mit kleinerer Teilung auf Rädern mit mehr Zähnen
    .b-option-2 = Eine Kette mit größerer Teilung auf Rädern mit weniger Zähnen
    .b-option-3 = Eine straffere Kette auf denselben Rädern
    .b-option-4 = Eine schwerere Kette derselben Teilung
    .b-because = Der Polygoneffekt hängt am Winkel eines Zahns: doppelt so viele Zähne, ein Viertel des Effekts. Spannen ändert das Vieleck nicht.
    .b = Was ließe die Kette bei gleicher Übersetzung ruhiger laufen?

item-sag-to-set = Wie viel Durchhang einzustellen ist
    .text = Das Blatt gibt den Durchhang des Leertrums unter einem Lineal als Anteil der freien Trumlänge an. Maschine: { $machine }.
    .a = Wie tief soll das Trum in seiner Mitte unter dem Lineal hängen?

item-sag-by-centres = Zwei Regeln für denselben Durchhang
    .text = Das Blatt gibt den Durchhang des Leertrums als Anteil an und sagt nicht, von welcher Länge. Der Hersteller meint die freie Trumlänge; ein älteres Blatt nahm den Achsabstand. Maschine: { $machine }.
    .a = Wie tief soll das Trum nach der Regel mit dem Achsabstand hängen?
    .b-hint-1 = Die freie Trumlänge ist etwas kürzer als der Achsabstand: Berechnen Sie sie aus den beiden Teilkreisdurchmessern.
    .b = Und nach dem Anteil der freien Trumlänge?

item-window-on-the-scale = Von der Art des Antriebs zum Maßstab
    .text = Für die Kette ist kein Blatt zur Hand. Sie wissen, wie der Antrieb liegt und wie seine Last kommt, und haben einen Stahlmaßstab. Maschine: { $machine }.
    .a = Wie groß ist der ganze Weg der Trummitte mindestens, in Prozent der freien Trumlänge?
    .b = Und höchstens?
    .c = Um wie viel muss sich die Trummitte mindestens bewegen lassen?
    .d-hint-1 = Beide Enden des Bereichs sind Anteile derselben Länge.
    .d = Um wie viel darf sie sich höchstens bewegen lassen?

item-sag-as-found = Durchhang als Anteil der Trumlänge
    .text = Der Antrieb ist freigeschaltet und gesichert, seine Schutzeinrichtung ist ab. Das Lasttrum ist gerade gezogen, und ein Lineal liegt am Leertrum von Kettenrad zu Kettenrad. Maschine: { $machine }.
    .a-hint-1 = Die freie Trumlänge ist etwas kürzer als der Achsabstand: Berechnen Sie sie aus den beiden Teilkreisdurchmessern.
    .a = Welcher Anteil der freien Trumlänge, in Prozent, ist der Durchhang unter dem Lineal?

item-sag-to-movement = Vom Durchhang zum ganzen Weg
    .text = Der Durchhang wurde unter dem Lineal abgelesen, aber das Blatt nennt einen Bereich für den ganzen Weg der Trummitte, von Hand niedergedrückt und dann hochgezogen. Maschine: { $machine }.
    .a-hint-1 = Dieselbe Überlänge, die in einem Bogen hängt, wird in zwei gerade Hälften gezogen, und die reichen etwas tiefer: 2 geteilt durch die Wurzel aus 3.
    .a = Wie tief unter das Lineal käme die Trummitte, wenn man sie von Hand niederdrückt?
    .b = Wie groß wäre der ganze Weg der Trummitte, niedergedrückt und dann hochgezogen?
    .c = Welcher Anteil der freien Trumlänge, in Prozent, ist dieser ganze Weg?
    .d = Ist die Kette richtig eingestellt?

item-movement-to-sag = Vom ganzen Weg zum Durchhang
    .text = Kein Lineal war lang genug, also wurde die Mitte des Leertrums von Hand niedergedrückt und hochgezogen und der ganze Weg an einem Maßstab abgelesen. Maschine: { $machine }.
    .a-hint-1 = Die Hälfte des ganzen Weges ist die niedergedrückte Tiefe; geteilt durch 1,155 ergibt sie die Tiefe des frei hängenden Trums.
    .a = Wie tief hängt das Trum von selbst unter einem Lineal?
    .b = Welcher Anteil der freien Trumlänge, in Prozent, ist dieser Durchhang?

item-movement-verdict = Zu straff, richtig oder zu locker
    .text = Die Mitte des Leertrums wurde niedergedrückt und dann hochgezogen und der ganze Weg an einem Maßstab abgelesen. Das Blatt nennt den Bereich für den ganzen Weg als Anteil der freien Trumlänge. Maschine: { $machine }.
    .a = Welcher Anteil der freien Trumlänge, in Prozent, ist der ganze Weg?
    .b = Wie lautet Ihr Urteil?

item-which-sag-reading = Zwei Ablesungen, zwei Bereiche
    .text = Das Blatt verlangt für die Trummitte einen ganzen Weg von { $chain-movement_low } bis { $chain-movement_high } der Trumlänge. Ein Kollege legt ein Lineal an das Leertrum, liest einen Durchhang von 2,2 % der Trumlänge ab, sagt „zu straff“ und greift zum Schraubenschlüssel. Maschine: { $machine }.
    .a-option-1 = Lassen: Ein Durchhang von 2,2 % ist ein ganzer Weg von etwa 5,1 %, also im Bereich
    .a-option-2 = Weitermachen: 2,2 % liegen unter den 4 %, mit denen der Bereich beginnt, also ist die Kette zu straff
    .a-option-3 = Lockern, bis das Lineal 5 % zeigt, die Mitte des Bereichs
    .a-option-4 = Spannen: 2,2 % der Trumlänge sind etwa 5 % des Achsabstands
    .a-because = Der ganze Weg ist das 2,31-Fache des Durchhangs: 1,155 fürs Geradedrücken, und zweimal, weil es nach beiden Seiten geht. Ein Durchhang von 5 % wäre ein Weg von 11,5 %.
    .a = Was sagen Sie ihm?

item-tightest-place = Der Durchhang ist nicht überall gleich
    .text = Am freigeschalteten und gesicherten Antrieb wird die Kette von Hand jeweils um ein Viertel ihrer Länge weitergedreht und an jeder Stelle der Durchhang des Leertrums abgelesen. Die Ablesungen unterscheiden sich. Maschine: { $machine }.
    .a-option-1 = Nach dem kleinsten Durchhang: Wo die Kette am straffsten ist, darf sie nicht zu straff sein
    .a-option-2 = Nach dem größten Durchhang: Wo die Kette am lockersten ist, darf sie nicht zu locker sein
    .a-option-3 = Nach dem Mittel der Ablesungen, da es die Unterschiede ausgleicht
    .a-option-4 = Nach der ersten von allen Ablesungen, denn die anderen zeigen nur, dass die Kette verschlissen ist
    .a-because = Ungleicher Verschleiß und ein schlagendes Kettenrad machen eine Stelle straffer als den Rest, und dort werden die Lager am stärksten belastet. Liegt dann die lockerste Stelle außerhalb des Bereichs, ist die Kette oder ein Kettenrad fällig. Übliche Praxis.
    .a = Nach welcher Ablesung wird die Kette eingestellt?

item-slack-length = Wie wenig Überlänge einen tiefen Durchhang macht
    .text = Das Leertrum hängt in einem flachen Bogen unter dem Lineal. Es ist ein wenig länger als die gerade Trumlänge: Diese Differenz ist seine Überlänge. Maschine: { $machine }.
    .a = Wie groß ist die vorgefundene Überlänge des Trums?
    .b-option-1 = Etwa sieben Zehntel: Der Durchhang geht mit der Wurzel der Überlänge
    .b-option-2 = Die Hälfte: Der Durchhang geht im gleichen Verhältnis wie die Überlänge
    .b-option-3 = Etwa ein Viertel: Der Durchhang geht mit dem Quadrat der Überlänge
    .b-option-4 = Nichts: Die andere Hälfte liegt im Lasttrum
    .b-because = Die Überlänge geht mit dem Quadrat des Durchhangs, die halbe Überlänge lässt also 1 durch die Wurzel aus 2, das sind 71 %, des Durchhangs.
    .b = Die Hälfte dieser Überlänge wird herausgenommen. Was bleibt vom Durchhang?

item-pressed-slack = Überlänge aus einem niedergedrückten Trum
    .text = Die Mitte des Leertrums wird von Hand niedergedrückt, bis beide Hälften gerade sind, und die Tiefe unter dem Lineal wird abgelesen. Maschine: { $machine }.
    .a-hint-1 = So niedergedrückt bilden Trumlänge und Trum zwei rechtwinklige Dreiecke, jedes eine halbe Trumlänge lang.
    .a = Wie groß ist die Überlänge des Trums?

item-take-up-slack-chain = Durchhang herausnehmen
    .text = Die Kette hängt tiefer, als ihr Blatt es will. Die ganze Überlänge liegt in dem Trum unter dem Lineal. Werden die Wellen auseinandergerückt, zählt das positiv. Maschine: { $machine }.
    .a = Wie groß ist die vorgefundene Überlänge?
    .b = Wie tief soll das Trum unter dem Lineal hängen?
    .c = Wie groß ist die Überlänge bei diesem Durchhang?
    .d-hint-1 = Rechnen Sie mit Überlängen, nicht mit Durchhängen: Eine Verschiebung der Wellen streckt beide Trume.
    .d = Wie weit müssen die Wellen auseinandergerückt werden?
    .e = Wie viele Umdrehungen sind das an jeder Spannschraube?
    .f = Reicht der Spannweg?

item-slacken-tight-chain = Durchhang zugeben
    .text = Die Kette wurde zu straff gespannt und muss auf das gelockert werden, was ihr Blatt will. Werden die Wellen auseinandergerückt, zählt das positiv, werden sie zusammengerückt, negativ. Maschine: { $machine }.
    .a = Wie groß ist die vorgefundene Überlänge?
    .b = Wie groß ist die Überlänge bei dem Solldurchhang?
    .c-hint-1 = Die Überlänge ist zu klein: Die nötige Änderung ist negativ, also auch die Verschiebung.
    .c = Wie weit und in welche Richtung müssen die Wellen verschoben werden?
    .d = Wie viele Umdrehungen sind das an jeder Spannschraube? Geben Sie das Vorzeichen an.

item-turns-from-readings = Vom Maßstab zum Schraubenschlüssel
    .text = Sie stehen mit Lineal, Maßstab und Bandmaß vor dem Antrieb. Die Kette hängt tiefer, als das Blatt es will, die ganze Überlänge liegt in einem Trum. Maschine: { $machine }.
    .a-hint-1 = Der Weg: beide Teilkreisdurchmesser, freie Trumlänge, vorgefundene Überlänge, Solldurchhang, gewünschte Überlänge, Verschiebung der Wellen, Umdrehungen.
    .a = Um wie viele Umdrehungen drehen Sie jede Spannschraube, um den Durchhang unter dem Lineal auf den gewünschten Anteil der freien Trumlänge zu bringen?

item-sag-after-turns = Wie tief das Trum jetzt hängen wird
    .text = Die Spannschrauben sind gedreht, alle gleich, und die Wellen auseinandergerückt. Bevor das Lineal wieder angelegt wird, sagen Sie vorher, was es zeigen soll: Eine große Abweichung heißt, dass etwas gerutscht ist. Maschine: { $machine }.
    .a = Wie weit sind die Wellen gerückt?
    .b = Wie groß war die Überlänge vor der Verschiebung, bei dem gegebenen Durchhang?
    .c = Wie groß ist die Überlänge nach der Verschiebung?
    .d = Wie tief soll das Trum jetzt unter dem Lineal hängen? (Die Trumlänge ändert sich kaum.)

item-slack-tension = Zug im Leertrum aus seinem Durchhang
    .text = Ein Lineal liegt am Leertrum. Selbst im Stillstand zieht das Trum durch sein Eigengewicht an beiden Wellen. Maschine: { $machine }.
    .a-hint-1 = Nur der Teil des Gewichts, der quer zum Trum liegt, biegt es durch.
    .a-hint-2 = Der Zug ist das Gewicht je Länge mal dem Quadrat der Trumlänge, geteilt durch das Achtfache des Durchhangs.
    .a = Wie stark zieht das Leertrum?

item-slack-tension-from-layout = Zug im Leertrum aus der Anordnung
    .text = Die Mittenlinie, also die Linie zwischen den Wellenmitten, steigt zum großen Kettenrad hin an, und das Leertrum ist das untere. Der Winkelmesser wurde an die Mittenlinie gelegt, nicht an das Trum. Maschine: { $machine }.
    .a = Welchen Winkel schließt das Trum mit der Mittenlinie ein?
    .b-hint-1 = Die beiden Trume laufen zum großen Kettenrad hin auseinander: Das untere steigt weniger als die Mittenlinie, oder es fällt sogar.
    .b = Welche Neigung hat das Leertrum (das untere) gegen die Waagerechte? Eine zum großen Kettenrad hin fallende Neigung ist negativ.
    .c = Wie lang ist die freie Trumlänge?
    .d = Wie stark zieht das Leertrum?

item-tight-chain-costs = Was eine zu straffe Kette anrichtet
    .text = „Straff ist sicher“, sagt ein Kollege und verringert den Durchhang auf ein Viertel dessen, was das Blatt will. Maschine: { $machine }.
    .a-option-1 = Er wird etwa viermal so groß: Der Zug geht mit eins durch Durchhang
    .a-option-2 = Er wird etwa doppelt so groß: Der Zug geht mit eins durch die Wurzel des Durchhangs
    .a-option-3 = Er ändert sich kaum: Die Kette wiegt, was sie gewogen hat
    .a-option-4 = Er wird etwa sechzehnmal so groß: Der Zug geht mit eins durch das Quadrat des Durchhangs
    .a-because = H = w L²/(8 δ): Gewicht und Trumlänge bleiben, also ist ein Viertel des Durchhangs der vierfache Zug.
    .a = Was geschieht mit dem Zug im Leertrum?
    .b-option-1 = Lager, Wellen und die Gelenke der Kette selbst, die diesen Zug bei jeder Umdrehung tragen
    .b-option-2 = Niemand: Das Lasttrum wird um denselben Betrag entlastet
    .b-option-3 = Nur der Motor, der beim Anlauf mehr Strom aufnimmt
    .b-option-4 = Nur der Kettenschutz, weil die Kette nicht mehr dagegenschlägt und ihn rüttelt
    .b-because = Die Querkraft am Wellenende wächst um den Zug des Leertrums, die abtriebsseitigen Lager laufen wärmer und leben kürzer, und die Gelenke verschleißen unter dem höheren Druck schneller.
    .b = Wer bezahlt dafür?

item-sag-for-a-pull = Der Durchhang zu einem Zug
    .text = Jemand hat berechnet, wie stark das Leertrum jetzt zieht, und will am Maßstab sehen, wie das aussieht. Maschine: { $machine }.
    .a-hint-1 = Der Zug ist das Gewicht je Länge mal dem Quadrat der Trumlänge, geteilt durch das Achtfache des Durchhangs: Lösen Sie nach dem Durchhang auf.
    .a = Wie tief hängt das Trum unter dem Lineal, wenn es so stark zieht?

item-wear-measured = Ist die Kette verschlissen?
    .text = Der Antrieb ist freigeschaltet und gesichert. Ein Trum der Kette ist straff gezogen, und ein Maßstab liegt von der Mitte eines Bolzens zur Mitte eines anderen; die Teilungen dazwischen sind gezählt. Maschine: { $machine }.
    .a-hint-1 = Die Neulänge ist die Zahl der Teilungen mal der Teilung. Behalten Sie jede Stelle: Die Längung ist eine kleine Differenz zweier großer Längen.
    .a = Um wie viel Prozent ihrer Neulänge hat sich die Kette gelängt?
    .b = Wie groß ist die Verschleißgrenze dieses Antriebs, in Prozent?
    .c = Wie lautet Ihr Urteil?

item-wear-measured-in-service = Wie weit ist die Kette verschlissen?
    .text = Der Antrieb ist freigeschaltet und gesichert. Ein Trum der Kette ist straff gezogen, und ein Maßstab liegt von der Mitte eines Bolzens zur Mitte eines anderen; die Teilungen dazwischen sind gezählt. Maschine: { $machine }.
    .a-hint-1 = Die Neulänge ist die Zahl der Teilungen mal der Teilung. Behalten Sie jede Stelle: Die Längung ist eine kleine Differenz zweier großer Längen.
    .a = Um wie viel Prozent ihrer Neulänge hat sich die Kette gelängt?
    .b = Wie groß ist die Verschleißgrenze dieses Antriebs, in Prozent?
    .c = Wie lautet Ihr Urteil?

item-scale-mark-for-wear = Eine Marke auf dem Maßstab
    .text = Damit niemand vor Ort rechnen muss, wird auf einem Stahlmaßstab eine Marke angerissen: Reichen die gemessenen Teilungen bis an sie heran, wird die Kette ersetzt. Maschine: { $machine }.
    .a-hint-1 = Drei Grenzwerte stehen nebeneinander, und der kleinste gilt.
    .a = Wie groß ist die Verschleißgrenze dieses Antriebs, in Prozent?
    .b = Bei welcher Länge, von Bolzen zu Bolzen über die gegebenen Teilungen, kommt die Marke hin?

item-wear-growth = Wohin der Zuwachs geht
    .text = Der Verschleiß der Kette wurde nur über einige Teilungen gemessen, aber jedes Gelenk der Kette ist verschlissen. Maschine: { $machine }.
    .a = Um wie viel Prozent ihrer Neulänge hat sich die Kette gelängt?
    .b = Um wie viel ist die ganze Kette länger geworden?
    .c-option-1 = Im Leertrum: Alles kommt zu seiner Überlänge dazu
    .c-option-2 = Je zur Hälfte in jedem Trum, beide hängen also etwas tiefer als vorher
    .c-option-3 = Nirgends: Die verschlissenen Gelenke werden von der Last zusammengedrückt
    .c-option-4 = Im Lasttrum, das die Last trägt und ihr nachgibt
    .c-because = Das Lasttrum wird von der Last gerade gezogen. Um was die Kette länger geworden ist, das hängt im anderen Trum, und dessen Durchhang wächst mit der Wurzel davon; einige Millimeter Zuwachs können den Durchhang verdoppeln.
    .c = Wären die Wellen nicht verschoben worden, seit die Kette neu war, wo würde sich dieser Zuwachs zeigen?

item-worn-sprockets = Eine neue Kette auf alten Kettenrädern
    .text = Die Kette hat ihre Verschleißgrenze erreicht. Die Zähne des kleinen Kettenrads sind hakenförmig geworden. Maschine: { $machine }.
    .a-option-1 = Eine neue Kette und neue Kettenräder zusammen
    .a-option-2 = Jetzt eine neue Kette, die Kettenräder beim nächsten Wechsel
    .a-option-3 = Die alte Kette, um zwei Glieder gekürzt
    .a-option-4 = Eine neue Kette der nächstgrößeren Teilung auf den alten Kettenrädern
    .a-because = Die Haken hat die lange Teilung der verschlissenen Kette geformt; eine neue Kette reitet auf ihren Flanken und verschleißt schnell. Zwei Glieder weniger bringen den Durchhang zurück, aber nicht die Teilung. Übliche Praxis.
    .a = Was wird eingebaut?
