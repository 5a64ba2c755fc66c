## Aufgaben: Zahnräder und Regelwerke

item-hunting-tooth = Wann dieselben zwei Zähne wieder zusammentreffen
    .text = Am ersten Radpaar haben ein Zahn des Ritzels und einer des Rads einen Ausbruch. Jedes Mal, wenn die beiden zusammentreffen, klopft das Getriebe. Maschine: { $machine }.
    .a = Welches ist die größte Zahl, durch die sich beide Zähnezahlen teilen lassen?
    .b = Nach wie vielen Umdrehungen des Ritzels treffen dieselben zwei Zähne wieder zusammen?
    .c-hint-1 = Das Ritzel dreht mit dem Motor.
    .c = Mit welcher Frequenz klopft es?

item-gear-unit-class = Ein Getriebe mit eigener Klasse
    .text = Der Vertrag für das Getriebe nennt seine Schwingungsklasse und Unterklasse. Maschine: { $machine }. Einstufungswerte der Unterklasse a: Klasse I 3,15, II 5, III 8 mm/s (0,124, 0,197, 0,315 in/s); b, kleine Leistung: dieselben; b, große Leistung: 5, 8, 12,5 mm/s (0,197, 0,315, 0,492 in/s). Zone B endet beim Einstufungswert, A eine Stufe darunter und C eine Stufe darüber auf der Reihe 2, 3,15, 5, 8, 12,5, 20 mm/s (0,079, 0,124, 0,197, 0,315, 0,492, 0,787 in/s).
    .a = Welchen Einstufungswert der Schwinggeschwindigkeit hat das Getriebe?
    .b = In welcher Zone liegt es mit der heutigen Ablesung?

item-gear-unit-acceptance = Ein Getriebe abnehmen
    .text = Ein neues Getriebe der gleichen Art steht auf dem Prüfstand. Maschine: { $machine }. Abgenommen wird es gewöhnlich bis zu einem Viertel über seiner Grenze zwischen den Zonen A und B, und diese Grenze liegt eine Stufe unter dem Einstufungswert auf der Reihe 2, 3,15, 5, 8, 12,5, 20 mm/s (0,079, 0,124, 0,197, 0,315, 0,492, 0,787 in/s).
    .a = Bis zu welcher Ablesung wird es höchstens abgenommen?

item-noise-recommended-rule = Die strengere Regel
    .text = Der Betrieb richtet sich nach der empfohlenen Regel: 85 dB für acht Stunden und für je 3 dB mehr die halbe Zeit. Maschine: { $machine }. Jemand arbeitet nacheinander an zwei Plätzen und den Rest des Tages in Ruhe.
    .a = Wie lange darf der Pegel des ersten Platzes nach dieser Regel dauern?
    .b = Welche Dosis ergibt der Tag nach dieser Regel?
    .c = Welchem zeitgewichteten Mittelungspegel entspricht das?

item-equal-machines = Mehr vom Gleichen
    .text = In der Halle sollen mehrere Maschinen, alle gleich, nebeneinander laufen. Eine von ihnen wurde allein gemessen. Maschine: { $machine }.
    .a = Wie laut sind sie zusammen im selben Abstand?
