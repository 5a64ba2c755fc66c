## Aufgaben: Messmittel

item-read-dial-rise = Die Messuhr neben einem gelösten Fuß
    .text = Der Antrieb ist freigeschaltet und gesichert. Die Messuhr neben Fuß 1 wurde bei festgezogenen Schrauben auf null gestellt; dann wurde allein die Schraube von Fuß 1 gelöst. Maschine: { $machine }.
    .a-hint-1 = Der kleine Zeiger sagt, in welche Richtung und wie viele Umdrehungen; dann zählen Sie ab der letzten überschrittenen Zahl auf der Reihe, die gilt.
    .a = Um wie viel hob sich der Fuß?

item-read-dial-pad = Die Messuhr über einer Auflage
    .text = Die Auflagen für die Füße wurden mit einer Messuhr vermessen, die über einem Bezugspunkt auf null gestellt war; jetzt steht sie über der Auflage von Fuß 3. Eine hohe Auflage drückt den Messbolzen hinein. Maschine: { $machine }.
    .a-hint-1 = Zuerst der kleine Zeiger: Auf welcher Seite der 0 steht er?
    .a = Wie hoch ist die Auflage? Eine tiefe bekommt ein Minus.

item-read-scale-sag = Der Stahlmaßstab unter dem Lineal
    .text = Der Antrieb ist freigeschaltet und gesichert, seine Schutzeinrichtung ist ab. Ein Lineal liegt über den beiden Kettenrädern, und ein Stahlmaßstab steht in der Trummitte auf dem Leertrum. Die Kante im Bild ist die des Lineals. Maschine: { $machine }.
    .a-hint-1 = Welche Zahl wurde zuletzt überschritten, und wie viel ist ein Teilstrich wert?
    .a = Wie tief hängt das Trum durch?
    .b = Welcher Anteil der Trumlänge ist das?

item-read-scale-take-up = Verbleibender Spannweg
    .text = Der Antrieb ist freigeschaltet und gesichert. Motor und Getriebe stehen auf einem gemeinsamen Grundrahmen, der sich zum Nachspannen der Kette verschieben lässt. Ein Stahlmaßstab liegt längs seiner Führung, null am Anschlag; die Kante im Bild ist die des Grundrahmens. Maschine: { $machine }.
    .a = Wie viel Spannweg bleibt?

item-read-feeler-gap = Blätter unter einem Fuß
    .text = Der Antrieb ist freigeschaltet und gesichert, drei seiner Füße sind fest, und der vierte hängt frei. Diese Blätter der Fühlerlehre gehen zusammen mit leichtem Widerstand darunter. Maschine: { $machine }.
    .a-hint-1 = Zählen Sie zusammen, was auf jedem Blatt steht, das hineingeht.
    .a = Wie groß ist der Spalt?
    .b = Wie lautet das Urteil darüber?

item-read-feeler-corner = Blätter an einer Ecke eines Fußes
    .text = Ein Fuß sitzt schräg auf seiner Auflage. An seiner Ecke 1 gehen diese Blätter zusammen hinein. Maschine: { $machine }.
    .a = Wie groß ist der Spalt an dieser Ecke?

item-read-sight-glass = Das Ölschauglas
    .text = Der Antrieb steht still, ist kalt und waagerecht. Sie stehen gerade vor seinem Ölschauglas. Maschine: { $machine }.
    .a-hint-1 = Lesen Sie den ebenen Ölspiegel ab, nicht den Rand, den er am Glas hochzieht.
    .a = Wie hoch steht das Öl?
    .b = Wie lautet das Urteil über den Ölstand?

item-read-dial-rim = Die Messuhr unten am Umfang
    .text = Der Antrieb ist freigeschaltet und gesichert. Eine Messuhr läuft auf dem Umfang der motorseitigen Kupplungshälfte; sie wurde oben auf null gestellt, und beide Wellen wurden von Hand gedreht, bis sie unten steht. Maschine: { $machine }.
    .a-hint-1 = Zuerst der kleine Zeiger: Nach welcher Seite ging er, und wie viele ganze Umdrehungen hat er überschritten?
    .a = Was zeigt sie unten? Mit Vorzeichen.

item-read-vibration-meter = Der Zeiger des Schwingungsmessers
    .text = Der Antrieb läuft mit seiner gewöhnlichen Last, seine Schutzeinrichtungen sind angebracht, und niemand greift dahinter: Der Aufnehmer wird von außen an das Lagergehäuse gehalten. Maschine: { $machine }.
    .a-hint-1 = Der Bereichsschalter sagt, welche der beiden Reihen gilt und wie viel der Vollausschlag wert ist.
    .a = Wie groß ist die Schwinggeschwindigkeit?

item-which-instrument-foot = Womit unter dem Fuß messen?
    .text = Der Antrieb ist freigeschaltet und gesichert, und ein Fuß hängt um einen gleichmäßigen Spalt frei. Ein Unterlegblech soll ihn auf wenige Hundertstel Millimeter genau füllen (ein oder zwei tausendstel Zoll). Maschine: { $machine }.
    .a-option-1 = Mit Blättern der Fühlerlehre, auf allen vier Seiten eingeschoben, bis das Paket leicht klemmt
    .a-option-2 = Mit einem Stahlmaßstab, auf allen vier Seiten an den Spalt gehalten und nach Augenmaß abgelesen
    .a-option-3 = Mit einem Bandmaß von der Auflage bis zur Oberseite des Fußes, vorher und nachher
    .a-option-4 = Mit einem Thermometer am Fuß, da ein Fuß, der die Last trägt, wärmer ist
    .a-because = Ein Maßstab ist in halbe Millimeter (64stel Zoll) geteilt, zehnmal zu grob. Blätter kommen dorthin, wo der Spalt ist, und wer alle vier Seiten prüft, unterscheidet einen gleichmäßigen Spalt von einem Keil. Übliche Praxis.
    .a = Womit wird der Spalt gemessen?

item-which-instrument-shafts = Womit zwischen den Wellen messen?
    .text = Die Kupplung lässt einen Versatz von wenigen Hundertstel Millimetern zu (wenigen tausendstel Zoll). Der Antrieb ist freigeschaltet und gesichert, die Schutzeinrichtung ist ab. Maschine: { $machine }.
    .a-option-1 = Messuhren, mit den Wellen gedreht, der Durchhang der Stange bekannt
    .a-option-2 = Ein Lineal über beiden Hälften und das Licht, das man darunter sieht
    .a-option-3 = Ein Stahlmaßstab über den Spalt, oben und unten
    .a-option-4 = Die Richtwaage auf beiden Wellen: Sind beide waagerecht, so fluchten sie
    .a-because = Ein Lineal zeigt Zehntel Millimeter und taugt für ein erstes Einstellen. Zwei waagerechte Wellen können trotzdem übereinander stehen. Hundertstel zeigt nur eine Messuhr, und ihre eigene Stange hängt um einige davon durch. Übliche Praxis.
    .a = Was zeigt, ob der Versatz innerhalb davon liegt?
