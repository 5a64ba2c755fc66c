## Aufgaben: Öl

item-oil-at-running = Wie dick ist es dort, wo es arbeitet?
    .text = Ein Labor hat eine Probe bei zwei Temperaturen gemessen. Maschine: { $machine }. Der Antrieb ist in Beharrung, und die Temperatur seines Gehäuses gilt als die des Öls.
    .a-hint-1 = Der doppelte Logarithmus der Viskosität (plus 0,7), aufgetragen über dem Logarithmus der Kelvin, gibt eine Gerade durch beide Messwerte.
    .a = Welche Viskosität hat das Öl bei Betriebstemperatur?

item-oil-thick-enough = Dick genug, wo es arbeitet?
    .text = Die Betriebsanleitung des Getriebes gibt ein Fenster für die Viskosität bei Betriebstemperatur vor. Maschine: { $machine }. Der Antrieb ist in Beharrung, und eine Probe wurde gemessen.
    .a = Welche Viskosität hat das Öl bei Betriebstemperatur?
    .b = Wie lautet Ihr Urteil darüber?

item-oil-label-at-running = Was die Angabe auf dem Schild heiß bedeutet
    .text = Das Typenschild nennt eine Viskositätsklasse, und das Datenblatt des Öls nennt seinen Viskositätsindex. Maschine: { $machine }. Der Antrieb ist in Beharrung.
    .a-hint-1 = Die Zahl der Klasse gilt bei 40 °C (104 °F). Folgen Sie von dort im Viskositätsdiagramm der Linie für den Viskositätsindex des Öls.
    .a = Welche Viskosität hat ein Öl in der Mitte dieser Klasse bei Betriebstemperatur?

item-oil-too-thin-at = Wie heiß darf dieses Öl werden?
    .text = Eine Probe wurde bei zwei Temperaturen gemessen, und die Betriebsanleitung nennt die kleinste Viskosität bei Betriebstemperatur. Maschine: { $machine }.
    .a-hint-1 = Dieselbe Gerade wie für die Viskosität, in der anderen Richtung gelesen.
    .a = Bei welcher Temperatur ist das Öl auf die kleinste Viskosität verdünnt?

item-oil-viscosity-index = Viskositätsindex einer Probe
    .text = Die Probe wurde bei zwei Temperaturen gemessen. Maschine: { $machine }. L und H stehen in der Tabelle der Norm bei ihrer Viskosität bei 100 °C (212 °F).
    .a-hint-1 = Vergleichen Sie zuerst die Viskosität bei 40 °C (104 °F) mit H: Daran sieht man, welches der beiden Verfahren gilt.
    .a = Wie groß ist ihr Viskositätsindex?

item-oil-band-of-grade = Von wo bis wo reicht eine Klasse?
    .text = Das Typenschild nennt eine Viskositätsklasse. Maschine: { $machine }. Sie wollen den Wert eines Labors für die Viskosität bei 40 °C (104 °F) beurteilen.
    .a = Welches ist die kleinste Viskosität bei 40 °C (104 °F), die zur Klasse gehört?
    .b = Und welches ist die größte?

item-oil-right-grade = Ist das richtige Öl darin?
    .text = Niemand weiß, aus welchem Fass befüllt wurde. Maschine: { $machine }. Eine Probe wurde warm gezogen und an ein Labor geschickt.
    .a-hint-1 = Eine Klasse reicht 10 % nach beiden Seiten ihrer Zahl, und zwischen den Bereichen sind Lücken.
    .a = Zu welcher ISO-Viskositätsklasse gehört die Probe?
    .b = Wie lautet Ihr Urteil über das eingefüllte Öl?

item-oil-choose-grade = Eine Viskositätsklasse für diese Temperatur
    .text = Für ein Ersatzgetriebe derselben Bauart ist nur die kleinste Viskosität bei Betriebstemperatur bekannt. Maschine: { $machine }. Es wird so warm laufen wie dieses, und die Öle im Lager haben alle denselben Viskositätsindex. Sie haben das Viskositätsdiagramm für diesen Index.
    .a-hint-1 = Gehen Sie im Diagramm bei der Betriebstemperatur nach oben, bis Sie die erste Linie über der verlangten Viskosität treffen.
    .a = Welche ist die dünnste Klasse, die genügt, gerechnet mit der Mitte ihres Bereichs?

item-oil-mixed = Eine halbe Kanne von etwas anderem
    .text = Der Ölstand ist niedrig. Maschine: { $machine }. Im Getriebe ist ein synthetisches Öl; im Lager steht eine halbe Kanne Mineralöl derselben ISO-Viskositätsklasse.
    .a-option-1 = Das Öl besorgen, das darin ist, da sich zwei Öle einer Klasse schlecht vertragen können
    .a-option-2 = Einfüllen, da dieselbe ISO-Viskositätsklasse dasselbe Öl bedeutet
    .a-option-3 = Einfüllen, aber nur bis zur unteren Marke, damit sich wenig mischt
    .a-option-4 = Ein um eine Klasse dickeres Mineralöl einfüllen, das den Unterschied der Grundöle ausgleicht
    .a-because = Eine Viskositätsklasse sagt, wie dick ein Öl bei 40 °C (104 °F) ist, und nichts über sein Grundöl oder seine Zusätze. Zwei Öle können sich nicht vertragen: Schaum, Schlamm, schrumpfende Dichtungen. Solange Hersteller oder Öllieferant nicht sagen, dass sie sich mischen lassen, kommt in den Ölsumpf das, was darin ist, oder er wird abgelassen und gespült.
    .a = Was tun Sie?

item-oil-level-verdict = Zwischen den Marken?
    .text = Der Antrieb steht kalt, in der Waage und gesichert, und das Öl ist zurückgelaufen. Maschine: { $machine }. Die Skala seines Ölschauglases hat zwei Paare von Marken, da sich das Getriebe in zwei Einbaulagen aufstellen lässt.
    .a = Wie lautet Ihr Urteil über den Ölstand?

item-oil-to-add = Wie viel nachfüllen?
    .text = Der Ölstand ist niedrig. Maschine: { $machine }. Abgelesen wurde er heute Morgen bei kaltem Öl; ein Kollege hat außerdem den Stand vom gestrigen Abend notiert, bald nach dem Anhalten abgelesen.
    .a = Welchen Stand auf der Skala streben Sie an, in der Mitte zwischen den Marken?
    .b-hint-1 = Fläche mal der fehlenden Höhe; achten Sie auf die Einheiten.
    .b = Wie viel Öl bringt ihn vom kalten Stand dorthin?

item-oil-to-drain = Wie viel ablassen?
    .text = Jemand meinte es gut und hat weit über die obere Marke gefüllt. Maschine: { $machine }. Das Getriebe steht kalt und ist freigeschaltet und gesichert.
    .a = Welchen Stand auf der Skala streben Sie an, in der Mitte zwischen den Marken?
    .b = Wie viel Öl muss heraus?

item-oil-swells = Was die Erwärmung mit dem Ölstand macht
    .text = Das Getriebe wird kalt befüllt. Maschine: { $machine }. Sie wollen vorher wissen, wo das Öl stehen wird, wenn es bis zur Beharrungstemperatur gelaufen ist und angehalten wurde.
    .a = Wie viel Öl ist kalt darin?
    .b-hint-1 = Zuerst der Anstieg der Öltemperatur seit dem Befüllen.
    .b = Um wie viel dehnt sich das Öl beim Erwärmen aus?
    .c = Um wie viel steigt der Ölstand?

item-oil-read-hot = Nur eine heiße Ablesung
    .text = Der Antrieb wurde soeben angehalten, freigeschaltet und gesichert, und bis zum Schichtende wird er nicht abgekühlt sein. Maschine: { $machine }. Das Öl ist zurückgelaufen, und sein Stand wird heiß abgelesen. Die Marken gelten für kaltes Öl.
    .a-hint-1 = Das ganze Öl schrumpft, auch das unter dem Nullpunkt der Skala.
    .a = Wo wird das Öl stehen, wenn es auf Umgebungstemperatur abgekühlt ist?
    .b = Wie lautet Ihr Urteil über diesen Stand?

item-oil-expansion = Ausdehnung nach Datenblatt
    .text = Das Datenblatt des Mineralöls nennt seine Dichte. Maschine: { $machine }.
    .a = Um welchen Anteil dehnt es sich je Grad aus?

item-oil-topped-hot = Gleich nach dem Anhalten nachgefüllt
    .text = Zehn Minuten nach dem Anhalten stand das Öl, noch heiß, ein wenig unter der unteren Marke. Maschine: { $machine }. Ein Auszubildender hat nachgefüllt, bis es die untere Marke erreichte, und es abgezeichnet.
    .a-option-1 = Kalt wird es wieder unter der unteren Marke stehen, da heißes Öl mehr Platz braucht
    .a-option-2 = Nichts, da auf der Marke zwischen den Marken ist
    .a-option-3 = Nach dem Abkühlen wird es über der oberen Marke stehen
    .a-option-4 = Kaltes und heißes Öl stehen gleich hoch, also spielt die Wärme keine Rolle
    .a-because = Öl dehnt sich je 10 °C um etwa 0,7 % aus (je 10 °F um 0,4 %; übliche Praxis), und die Marken gelten für kaltes Öl. Was heiß auf der Marke steht, steht kalt darunter. Lesen Sie es kalt ab, oder berechnen Sie, wo es stehen wird.
    .a = Was stimmt daran nicht?

item-oil-sealed-air = Der Entlüfter war überlackiert
    .text = Ein überlackierter Entlüfter hat das kalte Getriebe dicht verschlossen; dann lief es bis zur Beharrungstemperatur. Maschine: { $machine }.
    .a-hint-1 = Der absolute Druck geht mit der absoluten Temperatur; ein Manometer zeigt, was über dem Luftdruck draußen liegt.
    .a = Welchen Druck würde ein Manometer am Gehäuse zeigen, wenn man nur die Luft rechnet?

item-oil-sealed-both = Und das Öl dehnt sich auch aus
    .text = Der Entlüfter ist verstopft, und das Getriebe läuft von kalt bis zur Beharrungstemperatur. Maschine: { $machine }. Die Luft wird warm, das Öl auch: Indem es sich ausdehnt, nimmt es der Luft Raum weg.
    .a = Wie groß ist der Luftraum über dem kalten Öl?
    .b = Welchen Druck würde ein Manometer hinter einem verstopften Entlüfter bei Betriebstemperatur zeigen?

item-oil-breather-verdict = Atmet es?
    .text = An einer Wellendichtung schwitzt Öl aus. Maschine: { $machine }. Ein Niederdruckmanometer wurde am kalten, freigeschalteten und gesicherten Gehäuse angebracht und wird bei Betriebstemperatur durch die Schutzeinrichtung abgelesen.
    .a = Wie lautet Ihr Urteil über den Entlüfter?

item-oil-hot-plug = Druck hinter der Verschlussschraube
    .text = Das Manometer am Gehäuse zeigt bei Betriebstemperatur { $oil-gauge }, also ist der Entlüfter verstopft. Maschine: { $machine }. Er muss frei gemacht werden.
    .a-option-1 = Freischalten, sichern, Energiefreiheit feststellen, abkühlen lassen, dann langsam öffnen
    .a-option-2 = Im Lauf die Einfüllschraube langsam anlösen, damit der Druck vor dem Anhalten entwichen ist
    .a-option-3 = Anhalten, sichern und den Entlüfter sofort herausnehmen, solange das Öl noch heiß und dünn ist
    .a-option-4 = Den Entlüfter im Lauf mit Schutzbrille von außen freibohren
    .a-because = Heißes Öl mit Druck dahinter spritzt und verbrüht. Gesichert kann der Antrieb nicht unter Ihren Händen anlaufen, und kühl hat er keinen Druck: Die Luft ist wieder zusammengeschrumpft. Auch dann löst man eine Verschlussschraube langsam, das Gesicht abgewandt und mit Augenschutz.
    .a = Wie gehen Sie vor?

item-oil-life-hot = Wie lange hält heißes Öl?
    .text = Das Öl hat bis zu einer bestimmten Temperatur seine volle Lebensdauer; der Antrieb läuft heißer. Maschine: { $machine }. Benutzen Sie die Zehn-Grad-Regel.
    .a = Welcher Anteil seiner Lebensdauer bleibt?
    .b = Wie viele Stunden sind das?

item-oil-hottest = Wie heiß für diesen Abstand?
    .text = Der Planer will einen Ölwechsel frühestens nach diesem Anteil der vollen Lebensdauer des Öls: { $oil-share_wanted }. Maschine: { $machine }. Benutzen Sie die Zehn-Grad-Regel.
    .a-hint-1 = Wie viele Halbierungen sind dieser Anteil? Jede ist 10 °C (18 °F) wert.
    .a = Bis zu welcher Öltemperatur lässt sich das einhalten?

item-oil-check-order = Die Ölprüfung vor dem ersten Start
    .text = Das neue Getriebe wurde gestern befüllt. Maschine: { $machine }. Vor dem ersten Start ist das Öl zu prüfen; das Ölschauglas liegt hinter der Schutzeinrichtung.
    .a-step-2 = Die Schutzeinrichtung abnehmen und Ölschauglas, Verschlussschrauben und den Boden darunter abwischen
    .a-step-3 = Sehen, dass das Getriebe in der Waage steht und in welcher Einbaulage es sitzt
    .a-step-4 = Den kalten Ölstand gegen die Marken dieser Einbaulage ablesen und sehen, dass der Entlüfter angebracht und offen ist
    .a-step-5 = Auffüllen, was fehlt, warten, bis es abgelaufen ist, und noch einmal ablesen
    .a-step-6 = Verschlussschrauben schließen, Schutzeinrichtung anbringen, Werkzeug wegräumen und sehen, dass niemand im Gefahrenbereich ist
    .a-step-7 = Die Schlösser von denen abnehmen lassen, die sie angebracht haben, und starten
    .a-step-8 = Nach dem ersten Lauf anhalten, freischalten und sichern und den Stand noch einmal ablesen
    .a-because = Nichts wird geöffnet oder angefasst, bevor der Antrieb gesichert und nachweislich energiefrei ist. Die Marken bedeuten nur etwas, wenn das Getriebe in der Waage steht und seine Einbaulage bekannt ist. Die Schutzeinrichtung ist angebracht, bevor die Schlösser abgenommen werden, und auch die zweite Ablesung geschieht gesichert: Der erste Lauf füllt Kanäle und Lager, und der Ölstand sinkt.
    .a-step-1 = Freischalten, gegen Wiedereinschalten sichern und Energiefreiheit feststellen
    .a = In welcher Reihenfolge arbeiten Sie?
