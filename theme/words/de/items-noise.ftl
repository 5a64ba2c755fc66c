## Aufgaben: Geräusch

item-noise-two-machines = Zwei Maschinen zusammen
    .text = In der Nähe des Antriebs wurde jede von zwei Maschinen am selben Ort allein gemessen, die andere angehalten. Maschine: { $machine }.
    .a-hint-1 = Dezibel sind Logarithmen. Machen Sie Energien daraus, zählen Sie diese zusammen und rechnen Sie zurück.
    .a = Wie laut ist es dort, wenn beide laufen?

item-noise-three-machines = Drei Maschinen zusammen
    .text = Um einen Arbeitsplatz in der Nähe des Antriebs stehen drei Maschinen. Maschine: { $machine }. Jede wurde dort allein gemessen.
    .a = Wie laut ist es dort, wenn alle drei laufen?

item-noise-background = Der Antrieb ohne seine Umgebung
    .text = Der Schallpegel wird an einem Ort zweimal abgelesen: einmal mit laufendem Antrieb und einmal mit angehaltenem, während ringsum alles weiterläuft. Maschine: { $machine }.
    .a-hint-1 = Das Fremdgeräusch steckt in der ersten Ablesung. Ziehen Sie Energien ab, nicht Dezibel.
    .a = Wie laut ist der Antrieb allein?

item-noise-equal-machines = Noch einer von derselben Art
    .text = Ein Antrieb wie dieser erzeugt an einem Arbeitsplatz 84 dB. Maschine: { $machine }. Ein zweiter, genau gleicher wird daneben aufgestellt, ebenso weit entfernt.
    .a-option-1 = 87 dB
    .a-option-2 = 168 dB
    .a-option-3 = 84 dB
    .a-option-4 = 90 dB
    .a-option-5 = 85 dB
    .a-because = Zwei gleiche Quellen haben die doppelte Energie, und die doppelte Energie sind 3 dB, gleich bei welchem Pegel. 6 dB wären der doppelte Schalldruck, und den ergeben getrennte Maschinen nicht.
    .a = Wie laut ist es dort jetzt?

item-noise-too-close = Zu wenig Unterschied
    .text = Neben dem Antrieb lesen Sie 82 dB ab, wenn er läuft, und 80 dB, wenn er steht. Maschine: { $machine }.
    .a-option-1 = Höchstens etwa 81 dB, und dass die Ablesungen für mehr zu nah beieinander liegen
    .a-option-2 = 2 dB, da der Antrieb so viel zu seiner Umgebung hinzufügt
    .a-option-3 = 78 dB, da der Unterschied von 2 dB von der Umgebung abgeht
    .a-option-4 = 82 dB, da der Antrieb lauter ist als seine Umgebung und darum allein zählt
    .a-because = Unter 6 dB Unterschied wächst die Korrektur so schnell, dass ein kleiner Fehler in einer der Ablesungen über das Ergebnis entscheidet; die Norm lässt dann 1,3 dB zu und nennt das Ergebnis eine obere Schranke. 82 minus 1,3 sind etwa 81 dB. Kommen Sie in der Pause wieder.
    .a = Was schreiben Sie für den Antrieb allein auf?

item-noise-louder = Lauter als im letzten Monat
    .text = Am selben Ort, mit demselben Messgerät und bei derselben Last zeigt der Antrieb 6 dB mehr als vor einem Monat. Maschine: { $machine }. Die Umgebung hat sich nicht geändert.
    .a-option-1 = Er strahlt die vierfache Energie ab, also hat sich an ihm etwas geändert
    .a-option-2 = Er ist 6 % lauter, was innerhalb der Streuung eines solchen Geräts liegt
    .a-option-3 = Nichts über die Maschine, solange der Pegel unter 90 dB bleibt
    .a-option-4 = Er ist lauter, weil er eingelaufen ist und die Zähne jetzt frei ineinandergreifen
    .a-because = Je zehn Dezibel ist die Energie zehnmal so groß: 6 dB sind die vierfache Energie, so viel, wie die doppelte Schwinggeschwindigkeit abstrahlen würde. Also wird als Nächstes die Schwingung abgelesen. Ein eingelaufener Antrieb wird leiser. Eine Grenze für die Ohren sagt nichts darüber, ob eine Maschine gesund ist.
    .a = Was sagt Ihnen das?

item-noise-how-long = Wie lange bei diesem Pegel?
    .text = Jemand arbeitet neben dem laufenden Antrieb, ohne Gehörschutz zu tragen. Maschine: { $machine }. Die Regel: 90 dBA für 8 Stunden, je 5 dB mehr nur die halbe Zeit.
    .a = Wie lange darf dieser Pegel am Tag dauern, wenn es sonst ruhig ist?

item-noise-how-loud = Wie laut für diese Zeit?
    .text = Eine Arbeit neben dem Antrieb dauert jeden Tag eine bekannte Zeit; sonst ist der Tag ruhig. Maschine: { $machine }. Eine Schallschutzhaube soll gebaut werden. Die Regel: 90 dBA für 8 Stunden, je 5 dB mehr nur die halbe Zeit.
    .a-hint-1 = Wie viele Halbierungen von 8 Stunden sind das? Jede ist 5 dB wert.
    .a = Bis zu welchem Pegel darf es an diesem Platz für diese Zeit laut sein?

item-noise-day = Zwei Arbeitsplätze an einem Tag
    .text = In einer Schicht wird eine Zeit neben dem Antrieb und eine andere anderswo im Werk gearbeitet; sonst ist der Tag ruhig. Maschine: { $machine }. Die Regel: 90 dBA für 8 Stunden, je 5 dB mehr nur die halbe Zeit; gezählt werden Pegel ab 80 dBA.
    .a = Wie lange darf der Pegel des ersten Platzes dauern?
    .b = Wie lange darf der Pegel des zweiten Platzes dauern?
    .c-hint-1 = Verbrachte Zeit durch zulässige Zeit, für jeden Platz, zusammengezählt.
    .c = Wie groß ist die Lärmdosis des Tages?

item-noise-dose-verdict = Was verlangt dieser Tag?
    .text = Eine Schicht neben dem Antrieb und anderswo, gemessen ohne Gehörschutz. Maschine: { $machine }. Die Regel: 90 dBA für 8 Stunden, je 5 dB mehr nur die halbe Zeit.
    .a = Wie groß ist die Lärmdosis des Tages?
    .b = Wie lautet Ihr Urteil darüber?
    .c = Welcher Pegel ergäbe, 8 Stunden gehalten, dieselbe Dosis?

item-noise-plugs = Nur ein kurzer Blick
    .text = Ein Schild am Antrieb sagt, dass Gehörschutz zu tragen ist. Maschine: { $machine }. Ihrer liegt im Spind, und Sie wollen nur eine Anzeige ablesen, höchstens zwei Minuten.
    .a-option-1 = Ihn holen und aufsetzen, bevor Sie am Schild vorbeigehen
    .a-option-2 = Schnell hineingehen, da zwei Minuten in der Dosis eines Tages nichts sind
    .a-option-3 = Auf dem Weg die Finger in die Ohren stecken
    .a-option-4 = Hineingehen, da Sie den Lärm gewohnt sind und wissen, wie er klingen soll
    .a-because = Was der Lärm am Gehör zerstört, kommt nicht wieder, und das Schild gilt für alle und für jede Minute. Den Lärm gewohnt zu sein ist das erste Zeichen eines Verlusts. Gewohnheiten bilden sich bei den kurzen Besuchen.
    .a = Was tun Sie?

item-noise-order = Das Geräusch eines Antriebs messen
    .text = Am Arbeitsplatz ist das Geräusch des Antriebs zu messen, nur das des Antriebs. Maschine: { $machine }.
    .a-step-1 = Gehörschutz anlegen und denen, die den Antrieb fahren, sagen, was Sie vorhaben
    .a-step-2 = Das Messgerät mit seinem Kalibrator prüfen und auf A stellen
    .a-step-3 = Den Ort kennzeichnen, in Ohrhöhe, außerhalb der Schutzeinrichtungen und frei von bewegten Teilen
    .a-step-4 = Den Pegel ablesen, während der Antrieb mit seiner gewöhnlichen Last läuft, Schutzeinrichtungen angebracht
    .a-step-5 = Den Antrieb von denen anhalten lassen, die ihn fahren, und am selben Ort das Fremdgeräusch ablesen
    .a-step-6 = Ihn wieder starten lassen, wenn niemand im Gefahrenbereich ist
    .a-step-7 = Das Messgerät noch einmal prüfen und den Pegel des Antriebs allein berechnen
    .a-because = Zuerst kommt das Gehör. Ein Messgerät, das vorher und nachher nicht geprüft wurde, hat nichts gemessen. Beide Ablesungen werden an einem Ort und außerhalb der Schutzeinrichtungen genommen; diese bleiben angebracht, und starten und anhalten tun die, die den Antrieb fahren.
    .a = In welcher Reihenfolge arbeiten Sie?
