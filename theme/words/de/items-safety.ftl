## Aufgaben: Sicheres Arbeiten

item-lock-out-order = Freischalten und sichern
    .text = Sie sind befugt, den Antrieb freizuschalten und zu sichern, und wollen ohne Schutzeinrichtungen daran arbeiten. Maschine: { $machine }.
    .a-step-1 = Jede Energiequelle des Antriebs ermitteln und denen Bescheid geben, die ihn benutzen
    .a-step-3 = Den Trennschalter jeder Quelle öffnen
    .a-step-4 = An jedem Trennschalter das eigene Schloss und Schild anbringen
    .a-step-5 = Noch gespeicherte Energie abbauen, ablassen oder sperren
    .a-step-6 = Einen Einschaltversuch machen, sehen, dass sich nichts bewegt, und die Steuerung wieder auf Aus stellen
    .a-step-7 = Die Schutzeinrichtungen abnehmen und mit der Arbeit beginnen
    .a-because = Die Reihenfolge ist die von 29 CFR 1910.147(d): vorbereiten, abschalten, trennen, Schloss anbringen, gespeicherte Energie abbauen, nachweisen und erst dann arbeiten. Der Nachweis ist ein eigener Schritt: Ein falscher Trennschalter sieht genauso aus wie der richtige, bis man den Einschaltversuch macht.
    .a-step-2 = Den Antrieb mit seiner gewöhnlichen Steuerung anhalten
    .a = In welcher Reihenfolge arbeiten Sie?

item-what-a-try-start-proves = Nach dem Einschaltversuch
    .text = Der Antrieb ist freigeschaltet und gesichert. Maschine: { $machine }. Sie haben den Starttaster gedrückt, und nichts hat sich bewegt.
    .a-option-1 = Der Motor läuft von hier aus nicht an, gespeicherte Energie kann den Antrieb aber noch bewegen
    .a-option-2 = Der Antrieb ist energiefrei, da der Motor seine einzige Quelle ist, also darf die Kette geöffnet werden
    .a-option-3 = Am Antrieb lässt sich sicher arbeiten, solange jemand am Starttaster steht
    .a-option-4 = Der Trennschalter ist in Ordnung, also kann das Schloss bei einer kurzen Arbeit ruhig wegbleiben
    .a-because = Der Einschaltversuch beweist für eine Quelle und von einer Stelle aus, dass sie abgeschaltet ist. Eine hängende Last, eine straffe Kette, eine Feder oder Druck können den Antrieb noch bewegen. Nach gespeicherter Energie wird eigens gesucht; sie wird abgebaut oder gesperrt und beobachtet, wenn sie sich wieder aufbauen kann.
    .a = Was wissen Sie jetzt?

item-stored-energy = Die Last, die wartet
    .text = Der Antrieb wurde angehalten, während auf der getriebenen Seite noch Material lag, und die Leertrumseite der Kette hängt gerade und straff. Maschine: { $machine }. Eine Rücklaufsperre hält ihn. Sie müssen die Kette lockern und die Fußschrauben lösen.
    .a-option-1 = Die Last auf der getriebenen Seite mit der Vorrichtung dafür abnehmen oder festsetzen lassen
    .a-option-2 = Sich auf die Rücklaufsperre verlassen, da sie für die Last bemessen ist und sie in dieser Richtung hält
    .a-option-3 = Die Fußschrauben langsam lösen, sodass das Getriebe der Last von selbst ein Stück entgegenkriecht
    .a-option-4 = Den Motor einen Augenblick rückwärts drehen, um die Last von der Kette zu nehmen
    .a-option-5 = Die Kette am Lasttrum öffnen und dabei seitlich stehen
    .a-because = Eine Rücklaufsperre oder Bremse am Antrieb hält nur durch eben die Teile, die Sie lösen wollen. Die Last wird dort abgenommen oder festgesetzt, wo sie hängt, und von dazu Befugten; eine belastete Kette oder ein gelöstes Getriebe bewegt sich schneller als eine Hand. Erst wenn man sieht, dass beide Trume durchhängen, wird etwas gelöst.
    .a = Was kommt zuerst?

item-move-under-power = Während der Arbeit drehen
    .text = Mitten in der Arbeit muss der Antrieb einmal mit Motorkraft gedreht werden, um ein anderes Teil herumzubringen. Maschine: { $machine }. Ihr Schloss ist angebracht.
    .a-step-1 = Werkzeug und Messmittel vom Antrieb wegräumen
    .a-step-2 = Sehen, dass niemand im Gefahrenbereich ist, und es allen sagen
    .a-step-3 = Die Schlösser abnehmen, jeder sein eigenes
    .a-step-4 = Den Trennschalter schließen und den Antrieb drehen
    .a-step-5 = Anhalten und den Trennschalter öffnen
    .a-step-6 = Die Schlösser wieder anbringen und vor dem Weiterarbeiten den Einschaltversuch machen
    .a-because = Die Reihenfolge ist die von 29 CFR 1910.147(f)(1): die Maschine freiräumen, die Menschen wegschicken, die Schlösser abnehmen, einschalten und bewegen, dann freischalten und alles wieder sichern. Wo ein bewegtes Teil erreichbar ist, bleibt die Schutzeinrichtung selbst für eine einzige Umdrehung daran.
    .a = In welcher Reihenfolge arbeiten Sie?

item-back-to-work-order = Den Antrieb wieder übergeben
    .text = Die Arbeit am Antrieb ist getan, und er soll wieder laufen. Maschine: { $machine }.
    .a-step-1 = Werkzeug, Messmittel und Klötze wegnehmen und zählen
    .a-step-2 = Jede Schutzeinrichtung wieder anbringen und befestigen
    .a-step-3 = Sehen, dass niemand im Gefahrenbereich ist, und es allen sagen
    .a-step-4 = Schlösser und Schilder abnehmen, jeder seine eigenen
    .a-step-5 = Den Trennschalter schließen
    .a-step-6 = Den Antrieb von seiner Steuerung aus starten und von außerhalb der Schutzeinrichtungen beobachten
    .a-because = Schutzeinrichtungen und Menschen kommen vor dem Einschalten. Ist ein Schloss erst ab, kann jemand anderes den Antrieb starten; darum ist bis dahin alles an seinem Platz, was an seinem Platz sein muss.
    .a = In welcher Reihenfolge arbeiten Sie?

item-guard-missing = Nur für eine Minute
    .text = Der Kettenschutz liegt zur Reparatur auf der Werkbank. Maschine: { $machine }. Der Schichtführer bittet Sie, den Antrieb eine Minute laufen zu lassen, nur um ihn zu hören.
    .a-option-1 = Gesichert lassen, bis eine vorschriftsmäßige Schutzeinrichtung befestigt ist
    .a-option-2 = Die eine Minute laufen lassen, während jemand am Stopptaster steht
    .a-option-3 = Laufen lassen, mit einem Seil quer über den Laufgang, das die Leute fernhalten soll
    .a-option-4 = Leer und langsam laufen lassen, da dann nichts herausgeschleudert wird oder bricht
    .a-because = Eine Kette zieht bei jeder Geschwindigkeit einen Ärmel ein. 29 CFR 1910.219 verlangt, dass Kettenräder und Ketten umschlossen sind, sofern sie nicht außer Reichweite sind, mehr als 7 ft (2,13 m) über dem Boden; eine Minute ist keine Ausnahme. Das sagen Sie auch dem Schichtführer.
    .a = Was tun Sie?
