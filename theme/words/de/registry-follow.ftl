## Größen, Beziehungen, ihre Quellen und Fehler: Nachprüfung und Abnahme

quantity-follow-base = Entscheidung über den Grundrahmen
    .choice-1 = annehmen
    .choice-2 = nachstellen
    .choice-3 = anhalten

quantity-follow-oil = Entscheidung über das Öl
    .choice-1 = annehmen
    .choice-2 = nachstellen
    .choice-3 = anhalten

quantity-follow-chain = Entscheidung über die Kette
    .choice-1 = annehmen
    .choice-2 = nachstellen
    .choice-3 = anhalten

quantity-follow-load = Entscheidung über die Wellenlast
    .choice-1 = annehmen
    .choice-2 = nachstellen
    .choice-3 = anhalten

quantity-follow-lie = Entscheidung über die Ausrichtung
    .choice-1 = annehmen
    .choice-2 = nachstellen
    .choice-3 = anhalten

quantity-follow-bolts = Entscheidung über Schrauben, Passfeder und Spannbuchse
    .choice-1 = annehmen
    .choice-2 = nachstellen
    .choice-3 = anhalten

quantity-follow-heat = Entscheidung über die Temperatur
    .choice-1 = annehmen
    .choice-2 = nachstellen
    .choice-3 = anhalten

quantity-follow-vibration = Entscheidung über die Schwingung
    .choice-1 = annehmen
    .choice-2 = nachstellen
    .choice-3 = anhalten

quantity-follow-motor = Entscheidung über den Motor und seine Versorgung
    .choice-1 = annehmen
    .choice-2 = nachstellen
    .choice-3 = anhalten

quantity-follow-standstill = Entscheidung über die Prüfungen im Stillstand
    .choice-1 = annehmen
    .choice-2 = nachstellen
    .choice-3 = anhalten

quantity-follow-running = Entscheidung über die Ablesungen im Lauf
    .choice-1 = annehmen
    .choice-2 = nachstellen
    .choice-3 = anhalten

quantity-follow-decision = Entscheidung über die ganze Maschine
    .choice-1 = annehmen
    .choice-2 = nachstellen
    .choice-3 = anhalten

quantity-follow-person = Person, die unterschreiben will
    .choice-1 = befähigt, befugt und mit Zulassung
    .choice-2 = befähigt und befugt, ohne Zulassung
    .choice-3 = befähigt, hier nicht befugt
    .choice-4 = befugt, aber für diese Arbeit nicht ausgebildet

quantity-follow-licence = ob das örtliche Recht eine Zulassung verlangt
    .choice-1 = keine Zulassung verlangt
    .choice-2 = Zulassung verlangt

quantity-follow-hindrance = was der Unterschrift im Weg steht
    .choice-1 = nichts, es darf unterschrieben werden
    .choice-2 = ein Sicherheitsmangel ist offen
    .choice-3 = die Entscheidung lautet nicht „annehmen“
    .choice-4 = die Person ist für diese Arbeit nicht befähigt
    .choice-5 = die Person ist nicht befugt
    .choice-6 = die Zulassung fehlt

quantity-follow-age = jetziges Alter des Antriebs

quantity-follow-reading-last = Alter bei den letzten Ablesungen von Temperatur, Schwingung und Geräusch

quantity-follow-level-last = Alter bei der letzten Prüfung des Ölstands

quantity-follow-bolts-last = Alter bei der letzten Prüfung der Schrauben

quantity-follow-chain-last = Alter bei der letzten Prüfung der Kette

quantity-follow-foot-last = Alter bei der letzten Prüfung auf Kippfuß

quantity-follow-reading-due = Alter, in dem die nächsten Ablesungen fällig sind

quantity-follow-level-due = Alter, in dem die nächste Prüfung des Ölstands fällig ist

quantity-follow-bolts-due = Alter, in dem die nächste Prüfung der Schrauben fällig ist

quantity-follow-chain-due = Alter, in dem die nächste Prüfung der Kette fällig ist

quantity-follow-foot-due = Alter, in dem die nächste Prüfung auf Kippfuß fällig ist

quantity-follow-due-count = Zahl der jetzt fälligen unter den fünf Prüfungen

quantity-follow-chain-left = Zeit bis zur nächsten Prüfung der Kette

quantity-follow-first-interval = erster Prüfabstand

quantity-follow-growth = Faktor, um den jeder Abstand wächst

quantity-follow-number = Nummer der Prüfung, von der ersten an gezählt

quantity-follow-interval = Abstand vor dieser Prüfung

quantity-follow-check-age = Alter, in dem diese Prüfung fällig ist

quantity-follow-hours-a-day = Stunden, die der Antrieb an einem Tag von 24 h läuft

quantity-follow-run-share = Anteil der Zeit, in der der Antrieb läuft

quantity-follow-first-running = zulässige Betriebsstunden bis zum ersten Ölwechsel

quantity-follow-first-calendar = zulässige Kalenderzeit bis zum ersten Ölwechsel

quantity-follow-first-change = Kalendertage vom Start bis zum ersten Ölwechsel

quantity-follow-usual-running = zulässige Betriebsstunden zwischen späteren Ölwechseln

quantity-follow-usual-calendar = zulässige Kalenderzeit zwischen späteren Ölwechseln

quantity-follow-next-change = Kalendertage vom ersten Ölwechsel bis zum nächsten

quantity-follow-oil-days = Kalendertage seit dem Einfüllen des Öls

quantity-follow-oil-hours = Betriebsstunden seit dem Einfüllen des Öls

quantity-follow-change-verdict = Urteil über den ersten Ölwechsel
    .choice-1 = noch nicht fällig
    .choice-2 = fällig

quantity-follow-bedding = Endwert der Einlauflängung

quantity-follow-bedding-time = Zeitkonstante der Einlauflängung

quantity-follow-steady = Längung durch gleichmäßigen Verschleiß in 1000 h

quantity-follow-run = Laufzeit der neuen Kette

quantity-follow-wear-in = Längung der neuen Kette nach dieser Zeit

quantity-follow-growth-in = Längenzuwachs der ganzen Kette in dieser Zeit

quantity-follow-excess-in = Überlänge der Kette nach dieser Zeit

quantity-follow-sag-in = Durchhang unter dem Lineal nach dieser Zeit

quantity-follow-time-1 = Laufzeit bei der ersten nach dem Einlaufen gemessenen Längung

quantity-follow-time-2 = Laufzeit bei der zweiten nach dem Einlaufen gemessenen Längung

quantity-follow-wear-1 = erste nach dem Einlaufen gemessene Längung

quantity-follow-wear-2 = zweite nach dem Einlaufen gemessene Längung

quantity-follow-chain-hours = Laufzeit von der zweiten Messung bis zur Verschleißgrenze

quantity-follow-scatter-1 = Verhältnis der ersten beharrenden Übertemperatur zur wahren

quantity-follow-scatter-2 = Verhältnis der zweiten beharrenden Übertemperatur zur wahren

quantity-follow-scatter-3 = Verhältnis der dritten beharrenden Übertemperatur zur wahren

quantity-follow-scatter-4 = Verhältnis der vierten beharrenden Übertemperatur zur wahren

quantity-follow-scatter-5 = Verhältnis der ersten späteren Übertemperatur zur wahren

quantity-follow-scatter-6 = Verhältnis der zweiten späteren Übertemperatur zur wahren

quantity-follow-rise-1 = erste beharrende Übertemperatur im Protokoll

quantity-follow-rise-2 = zweite beharrende Übertemperatur im Protokoll

quantity-follow-rise-3 = dritte beharrende Übertemperatur im Protokoll

quantity-follow-rise-4 = vierte beharrende Übertemperatur im Protokoll

quantity-follow-rise-5 = erste spätere Übertemperatur im Protokoll

quantity-follow-rise-6 = zweite spätere Übertemperatur im Protokoll

quantity-follow-rise-mean = Bezugswert der Übertemperatur

quantity-follow-rise-range = mittlere gleitende Spannweite der beharrenden Übertemperaturen

quantity-follow-rise-upper = obere Eingriffsgrenze der Übertemperatur

quantity-follow-rise-lower = untere Eingriffsgrenze der Übertemperatur

quantity-follow-rise-verdict = Urteil über die jüngste Übertemperatur nach den Eingriffsgrenzen
    .choice-1 = kein Signal
    .choice-2 = Signal

quantity-follow-weight = Gewicht der neuesten Ablesung im gewichteten Mittel

quantity-follow-weighted = gewichtetes Mittel der Übertemperatur nach den zwei späteren Ablesungen

quantity-follow-width = Breite der Grenzen des gewichteten Mittels in Standardabweichungen

quantity-follow-weighted-upper = obere Grenze des gewichteten Mittels nach vielen Ablesungen

quantity-follow-weighted-verdict = Urteil über das gewichtete Mittel
    .choice-1 = kein Signal
    .choice-2 = Signal

relation-follow-base-worst = Entscheidung über den Grundrahmen
    .method = Spalt innerhalb der Grenze und Grundrahmen waagerecht genug: annehmen. Sonst nachstellen.
    .turn-soft-foot-let-pass = Sie haben den Kippfuß durchgehen lassen; darauf festgezogene Schrauben verspannen das Gehäuse, darum wird er vorher mit Blechen unterlegt oder nachgearbeitet.
    .turn-level-let-pass = Sie haben die Neigung durchgehen lassen; auf einem Grundrahmen, der nicht in Waage ist, sagen die Ölmarken nichts.
    .turn-stopped = Sie haben die Maschine deswegen angehalten; das wird in Ordnung gebracht und noch einmal geprüft, und genau das heißt „nachstellen“.

relation-follow-oil-worst = Entscheidung über das Öl
    .method = Zu wenig Öl: anhalten. Zu viel Öl, eine andere Sorte als auf dem Typenschild oder ein verstopfter Entlüfter: nachstellen. Sonst annehmen.
    .turn-low-oil-run-on = Sie haben mit zu wenig Öl weiterlaufen lassen; was das Öl nicht erreicht, ist in Minuten zerstört, zu wenig heißt also „anhalten“.
    .turn-grade-let-pass = Sie haben das falsche Öl durchgehen lassen, weil der Stand stimmt; die Sorte ist ein Befund für sich.
    .turn-breather-let-pass = Sie haben den verstopften Entlüfter durchgehen lassen; der Druck dahinter drückt das Öl an den Dichtungen hinaus.
    .turn-level-alone = Sie haben nur nach dem Stand entschieden; Sorte und Entlüfter zählen auch.
    .turn-overfull-stopped = Sie haben wegen zu viel Öl angehalten; zu viel Öl macht das Getriebe heiß, und das Ablassen ist ein Nachstellen.

relation-follow-chain-worst = Entscheidung über die Kette
    .method = Weg der Trummitte im zulässigen Bereich und Verschleiß innerhalb der Grenze: annehmen. Sonst nachstellen: Kette spannen oder eine neue auflegen.
    .turn-tight-let-pass = Sie haben die straffe Kette durchgehen lassen; eine straffe Kette verschleißt sich selbst, die Kettenräder und die Lager.
    .turn-slack-let-pass = Sie haben die lockere Kette durchgehen lassen; sie schlägt und überspringt Zähne.
    .turn-wear-let-pass = Sie haben die verschlissene Kette durchgehen lassen, weil ihr Durchhang stimmt; Verschleiß über der Grenze heißt: neue Kette.
    .turn-stopped = Sie haben die Maschine deswegen angehalten; die Kette zu spannen oder zu ersetzen ist ein Nachstellen.

relation-follow-load-verdict = Entscheidung über die Wellenlast
    .method = Zulässig: annehmen. Kettenrad nach innen setzen: nachstellen. Überlastet: anhalten.
    .turn-run-on = Sie haben eine Stufe zu milde entschieden; eine Last über der zulässigen biegt die Welle und verschleißt die Lager bei jeder Umdrehung.
    .turn-stopped = Sie haben die Maschine angehalten, obwohl es genügt, das Kettenrad nach innen zu setzen.

relation-follow-lie-worst = Entscheidung über die Ausrichtung
    .method = Kettenräder sowie Motor gegen Getriebe, senkrecht und waagerecht, alle innerhalb ihrer Grenzen: annehmen. Sonst nachstellen.
    .turn-sprockets-let-pass = Sie haben die Kettenräder durchgehen lassen; zwischen Kettenrädern, die nicht fluchten, verschleißen die Laschen der Kette von der ersten Stunde an.
    .turn-coupling-let-pass = Sie haben nur auf die Kettenräder gesehen; auch der Motor muss mit dem Getriebe fluchten.
    .turn-one-plane-only = Sie haben die waagerechte Ausrichtung durchgehen lassen; Wellen müssen in beiden Ebenen fluchten.
    .turn-stopped = Sie haben die Maschine deswegen angehalten; Ausrichten ist ein Nachstellen.

relation-follow-bolts-worst = Entscheidung über Schrauben, Passfeder und Spannbuchse
    .method = Eine Schraube außerhalb ihrer Grenzen, eine zu kurze Passfeder oder eine Spannbuchse, deren Kegel nicht greift: anhalten. Fußschrauben oder Schrauben der Spannbuchse nachzuziehen: nachstellen. Sonst annehmen.
    .turn-adjusted = Sie haben es ein Nachstellen genannt; was sich im Lauf lösen kann, kann Menschen verletzen, also bleibt die Maschine stehen, bis es in Ordnung ist.
    .turn-bolt-alone = Sie haben nur nach der Schraube entschieden; auch Passfeder und Spannbuchse können versagen.
    .turn-key-let-pass = Sie haben die zu kurze Passfeder durchgehen lassen.
    .turn-bushing-let-pass = Sie haben die Spannbuchse durchgehen lassen; liegt ihr Flansch an der Nabe an, so greift der Kegel nicht.
    .turn-recheck-let-pass = Sie haben die Nachprüfung durchgehen lassen; Schrauben, die Drehmoment verloren haben, werden nachgezogen, bevor die Maschine angenommen wird.
    .turn-recheck-stopped = Sie haben die Maschine angehalten, weil Schrauben etwas Drehmoment verloren haben; sie werden nachgezogen, und das heißt „nachstellen“.

relation-follow-heat-verdict = Entscheidung über die Temperatur
    .method = Zulässig: annehmen. Nicht bestanden, Ursache suchen: nachstellen, und vor dem Annehmen wird neu abgelesen. Anhalten und Ursache suchen: anhalten.
    .turn-run-on = Sie haben eine Stufe zu milde entschieden; Wärme, die nicht da sein sollte, hat eine Ursache, und die wird gesucht.
    .turn-stopped = Sie haben die Maschine angehalten, obwohl sie innerhalb der Grenze für jeden Tag liegt; suchen Sie die Ursache, und das heißt „nachstellen“.

relation-follow-vibration-zone = Entscheidung über die Schwingung
    .method = Zonen A und B: annehmen. C: nachstellen. D: anhalten.
    .source = ISO 20816-1, Bedeutung der Zonen
    .turn-one-zone-worse = Sie haben eine Zone zu streng entschieden; B taugt für den Dauerlauf, C für begrenzte Zeit.
    .turn-one-zone-better = Sie haben eine Zone zu milde entschieden; C verlangt Abhilfe, und D kann Schaden anrichten.

relation-follow-motor-worst = Entscheidung über den Motor und seine Versorgung
    .method = Überlastet oder falsche Drehrichtung: anhalten. Spannung zu weit vom Sollwert oder zu ungleich: nachstellen. Sonst annehmen.
    .turn-overload-run-on = Sie haben einen überlasteten Motor weiterlaufen lassen; er brennt durch, oder sein Schutz löst aus, während die Last hängt.
    .turn-wrong-way-run-on = Sie haben ihn in der falschen Richtung laufen lassen; das kann Rücklaufsperre, Pumpe und Last zerstören, heißt also „anhalten“.
    .turn-supply-let-pass = Sie haben die Versorgung durchgehen lassen; wenige Prozent Unsymmetrie erwärmen eine Wicklung weit mehr als die Last.
    .turn-unbalance-let-pass = Sie haben nur auf die mittlere Spannung gesehen; auch müssen die drei Außenleiter einander gleichen.
    .turn-stopped = Sie haben die Maschine allein wegen ihrer Versorgung angehalten; lassen Sie das von denen in Ordnung bringen, die es dürfen, und das heißt „nachstellen“.

relation-follow-standstill-every-check = Entscheidung über die Prüfungen im Stillstand
    .method = Die schlechteste von allen zählt: Ein „anhalten“ hält die Maschine an, bei einem „nachstellen“ wird sie nicht angenommen.
    .turn-most-of-them = Sie haben nach den meisten Prüfungen entschieden; gute Prüfungen überstimmen keine schlechte.
    .turn-best = Sie haben nach der besten Prüfung entschieden; die schlechteste entscheidet.
    .turn-added-up = Sie haben aus mehrmals „nachstellen“ ein „anhalten“ gemacht; jedes davon wird in Ordnung gebracht, und keines hält die Maschine an.
    .turn-guard-forgotten = Sie haben die Schutzeinrichtungen vergessen; ohne sie läuft die Maschine nicht, gleich was die Prüfungen sagen.

relation-follow-standstill-without-alignment-and-bolts = Entscheidung über die Prüfungen im Stillstand, ohne Ausrichtung und Schrauben
    .method = Die schlechteste von allen zählt: Ein „anhalten“ hält die Maschine an, bei einem „nachstellen“ wird sie nicht angenommen.
    .limits = auch Ausrichtung, Schrauben, Passfeder und Spannbuchse werden geprüft, bevor jemand unterschreibt
    .turn-most-of-them = Sie haben nach den meisten Prüfungen entschieden; gute Prüfungen überstimmen keine schlechte.
    .turn-best = Sie haben nach der besten Prüfung entschieden; die schlechteste entscheidet.
    .turn-added-up = Sie haben aus mehrmals „nachstellen“ ein „anhalten“ gemacht; jedes davon wird in Ordnung gebracht, und keines hält die Maschine an.
    .turn-guard-forgotten = Sie haben die Schutzeinrichtungen vergessen; ohne sie läuft die Maschine nicht, gleich was die Prüfungen sagen.

relation-follow-running-every-reading = Entscheidung über die Ablesungen im Lauf
    .method = Die schlechteste von allen zählt: Ein „anhalten“ hält die Maschine an, bei einem „nachstellen“ wird sie nicht angenommen.
    .turn-most-of-them = Sie haben nach den meisten Ablesungen entschieden; gute Ablesungen überstimmen keine schlechte.
    .turn-best = Sie haben nach der besten Ablesung entschieden; die schlechteste entscheidet.
    .turn-added-up = Sie haben aus mehrmals „nachstellen“ ein „anhalten“ gemacht; keines davon hält die Maschine an.

relation-follow-running-temperature-and-vibration = Entscheidung über Temperatur und Schwingung
    .method = Die schlechteste von allen zählt: Ein „anhalten“ hält die Maschine an, bei einem „nachstellen“ wird sie nicht angenommen.
    .limits = auch der Motorstrom wird abgelesen, bevor jemand unterschreibt
    .turn-temperature-alone = Sie haben nur nach der Temperatur entschieden; die Schwingung zählt auch.
    .turn-vibration-alone = Sie haben nur nach der Schwingung entschieden; die Temperatur zählt auch.
    .turn-added-up = Sie haben aus zweimal „nachstellen“ ein „anhalten“ gemacht; keines davon hält die Maschine an.

relation-follow-running-temperature = Entscheidung allein über die Temperatur
    .method = Ist sonst keine Ablesung zu beurteilen, so steht die Entscheidung über die Temperatur für alle.
    .limits = auch Schwingung und Motorstrom werden abgelesen, bevor jemand unterschreibt
    .turn-milder = Sie haben die Entscheidung über die Temperatur um eine Stufe gemildert; nichts spricht dafür.

relation-follow-decision-worst = Entscheidung über die ganze Maschine
    .method = Die schlechteste von allen zählt: Ein „anhalten“ hält die Maschine an, bei einem „nachstellen“ wird sie nicht angenommen.
    .turn-best = Sie haben nach der besseren der beiden entschieden; die schlechtere entscheidet.
    .turn-added-up = Sie haben aus zweimal „nachstellen“ ein „anhalten“ gemacht; jedes davon wird in Ordnung gebracht, und keines hält die Maschine an.
    .turn-it-runs-well = Sie haben den guten Lauf schwerer wiegen lassen als den Befund im Stillstand; sie läuft gut, bis sie versagt.
    .turn-standstill-alone = Sie haben nur nach den Prüfungen im Stillstand entschieden; was die laufende Maschine zeigt, zählt auch.
    .turn-one-step-milder = Sie haben den schlechtesten Befund gemildert; er gilt, wie er ist.

relation-follow-hindrance-gravest = Was der Unterschrift im Weg steht
    .method = In dieser Reihenfolge: ein offener Sicherheitsmangel, eine andere Entscheidung als „annehmen“, dann die Person: befähigt, vom Betrieb befugt, mit Zulassung, wo das örtliche Recht eine verlangt. Genannt wird das Erste, woran es fehlt.
    .limits = das örtliche Recht und die Regeln des Betriebs sagen, wer befähigt und befugt ist und eine Zulassung hat
    .turn-guard-can-follow = Sie haben die Schutzeinrichtung auf später verschoben; ein offener Sicherheitsmangel geht allem anderen vor.
    .turn-adjust-is-near-enough = Sie haben die Entscheidung übergangen; nur eine angenommene Maschine wird abgenommen.
    .turn-skill-is-enough = Sie haben Können für Befugnis genommen; wer eine Maschine freigeben darf, sagt der Betrieb.
    .turn-rank-is-enough = Sie haben Befugnis für Können genommen; wer unterschreibt, muss für diese Arbeit ausgebildet und als befähigt befunden sein.
    .turn-licence-passed-over = Sie haben die Zulassung übergangen; wo das örtliche Recht eine verlangt, braucht die Unterschrift sie.
    .turn-licence-asked-for-anyway = Sie haben eine Zulassung verlangt, wo das örtliche Recht keine verlangt.
    .turn-person-first = Sie haben nur auf die Person gesehen; zuerst muss die Maschine so sein, dass man für sie unterschreiben darf.

relation-follow-reading-due-plan = Alter, in dem die nächsten Ablesungen fällig sind
    .method = Das erste Alter im Plan nach der letzten Prüfung: 1 h, 2 h, 4 h, 8 h, 1 Tag, 3 Tage, 1 Woche, 2 Wochen, 4 Wochen und 8 Wochen, ab dem ersten Start gezählt; danach wiederholt sich der letzte Abstand.
    .turn-counted-from-the-last-check = Sie haben den Abstand zum Alter bei der letzten Prüfung gezählt; der Plan richtet sich nach dem Alter des Antriebs, und eine verspätete Prüfung verschiebt ihn nicht.
    .turn-one-row-on = Sie sind im Plan eine Zeile zu weit gegangen; das erste Alter nach der letzten Prüfung gilt.
    .turn-row-of-the-last = Sie haben die Zeile angegeben, zu der die letzte Prüfung gehörte; die nächste ist in dem Alter danach fällig.
    .turn-another-check-s-plan = Sie haben den Plan der Kette gelesen; jede Prüfung hat ihren eigenen.

relation-follow-level-due-plan = Alter, in dem die nächste Prüfung des Ölstands fällig ist
    .method = Das erste Alter im Plan nach der letzten Prüfung: 8 h, 1 Tag, 3 Tage, 1 Woche, 2 Wochen und 4 Wochen, ab dem ersten Start gezählt; danach wiederholt sich der letzte Abstand.
    .turn-counted-from-the-last-check = Sie haben den Abstand zum Alter bei der letzten Prüfung gezählt; der Plan richtet sich nach dem Alter des Antriebs, und eine verspätete Prüfung verschiebt ihn nicht.
    .turn-one-row-on = Sie sind im Plan eine Zeile zu weit gegangen; das erste Alter nach der letzten Prüfung gilt.
    .turn-row-of-the-last = Sie haben die Zeile angegeben, zu der die letzte Prüfung gehörte; die nächste ist in dem Alter danach fällig.
    .turn-another-check-s-plan = Sie haben den Plan für den Kippfuß gelesen; jede Prüfung hat ihren eigenen.

relation-follow-bolts-due-plan = Alter, in dem die nächste Prüfung der Schrauben fällig ist
    .method = Das erste Alter im Plan nach der letzten Prüfung: 8 h, 3 Tage, 1 Woche, 4 Wochen und 12 Wochen, ab dem ersten Start gezählt; danach wiederholt sich der letzte Abstand.
    .turn-counted-from-the-last-check = Sie haben den Abstand zum Alter bei der letzten Prüfung gezählt; der Plan richtet sich nach dem Alter des Antriebs, und eine verspätete Prüfung verschiebt ihn nicht.
    .turn-one-row-on = Sie sind im Plan eine Zeile zu weit gegangen; das erste Alter nach der letzten Prüfung gilt.
    .turn-row-of-the-last = Sie haben die Zeile angegeben, zu der die letzte Prüfung gehörte; die nächste ist in dem Alter danach fällig.
    .turn-another-check-s-plan = Sie haben den Plan der Kette gelesen; jede Prüfung hat ihren eigenen.

relation-follow-chain-due-plan = Alter, in dem die nächste Prüfung der Kette fällig ist
    .method = Das erste Alter im Plan nach der letzten Prüfung: 8 h, 1 Tag, 3 Tage, 1 Woche, 2 Wochen, 4 Wochen und 8 Wochen, ab dem ersten Start gezählt; danach wiederholt sich der letzte Abstand.
    .turn-counted-from-the-last-check = Sie haben den Abstand zum Alter bei der letzten Prüfung gezählt; der Plan richtet sich nach dem Alter des Antriebs, und eine verspätete Prüfung verschiebt ihn nicht.
    .turn-one-row-on = Sie sind im Plan eine Zeile zu weit gegangen; das erste Alter nach der letzten Prüfung gilt.
    .turn-row-of-the-last = Sie haben die Zeile angegeben, zu der die letzte Prüfung gehörte; die nächste ist in dem Alter danach fällig.
    .turn-another-check-s-plan = Sie haben den Plan der Schrauben gelesen; jede Prüfung hat ihren eigenen.

relation-follow-foot-due-plan = Alter, in dem die nächste Prüfung auf Kippfuß fällig ist
    .method = Das erste Alter im Plan nach der letzten Prüfung: 3 Tage, 2 Wochen, 8 Wochen und 26 Wochen, ab dem ersten Start gezählt; danach wiederholt sich der letzte Abstand.
    .turn-counted-from-the-last-check = Sie haben den Abstand zum Alter bei der letzten Prüfung gezählt; der Plan richtet sich nach dem Alter des Antriebs, und eine verspätete Prüfung verschiebt ihn nicht.
    .turn-one-row-on = Sie sind im Plan eine Zeile zu weit gegangen; das erste Alter nach der letzten Prüfung gilt.
    .turn-row-of-the-last = Sie haben die Zeile angegeben, zu der die letzte Prüfung gehörte; die nächste ist in dem Alter danach fällig.
    .turn-another-check-s-plan = Sie haben den Plan der Kette gelesen; jede Prüfung hat ihren eigenen.

relation-follow-due-count-ages = Wie viele der fünf Prüfungen jetzt fällig sind
    .method = Eine Prüfung ist fällig, wenn der Antrieb das Alter erreicht hat, in dem die nächste fällig ist.
    .turn-those-not-due = Sie haben die Prüfungen gezählt, die noch nicht fällig sind.
    .turn-readings-left-out = Sie haben die Ablesungen weggelassen; Temperatur, Schwingung und Geräusch sind auch eine Prüfung.
    .turn-soft-foot-left-out = Sie haben den Kippfuß weggelassen; er hat im Plan eine eigene Zeile.

relation-follow-chain-left-plan = Zeit bis zur nächsten Prüfung der Kette
    .method = Das Alter, in dem die nächste Prüfung der Kette fällig ist, minus das jetzige Alter; null, wenn sie überfällig ist.
    .turn-age-when-due = Sie haben das Alter angegeben, in dem sie fällig ist; was bleibt, ist dieses minus das jetzige Alter.
    .turn-from-the-last-check = Sie haben das Alter bei der letzten Prüfung abgezogen; seither ist der Antrieb weitergelaufen.
    .turn-since-the-last-check = Sie haben die Zeit seit der letzten Prüfung angegeben.
    .turn-counted-from-the-last-check = Sie haben den Abstand zum Alter bei der letzten Prüfung gezählt; der Plan richtet sich nach dem Alter des Antriebs.

relation-follow-interval-growing = Abstand vor einer Prüfung
    .source = Summe einer geometrischen Reihe; wachsende Abstände sind übliche Praxis, ohne Quelle
    .turn-one-too-many = Sie haben den Abstand einmal zu oft wachsen lassen; die erste Prüfung kommt nach dem ersten Abstand, so wie er ist.
    .turn-one-too-few = Sie haben den Abstand einmal zu wenig wachsen lassen.
    .turn-not-growing = Sie haben den ersten Abstand angegeben; jeder weitere ist um den Faktor länger.
    .turn-added = Sie haben ihn jedes Mal um denselben Schritt wachsen lassen; jeder Abstand ist der vorige mal den Faktor.
    .turn-age = Sie haben das Alter bei der Prüfung angegeben; gefragt ist der Abstand davor.

relation-follow-check-age-series = Alter bei einer Prüfung, wenn die Abstände wachsen
    .limits = ein Faktor größer als 1
    .source = Summe einer geometrischen Reihe; wachsende Abstände sind übliche Praxis, ohne Quelle
    .turn-interval-for-age = Sie haben den Abstand vor dieser Prüfung angegeben; das Alter sind alle Abstände bis dahin zusammen.
    .turn-even-intervals = Sie haben die Abstände gleich gelassen; jeder ist der vorige mal den Faktor.
    .turn-one-check-on = Sie haben eine Prüfung zu viel gezählt.
    .turn-one-check-back = Sie haben eine Prüfung zu wenig gezählt.
    .turn-power-only = Sie haben den ersten Abstand hochgerechnet und die Abstände davor nicht dazugezählt.

relation-follow-run-share-hours-a-day = Anteil der Zeit, in der der Antrieb läuft
    .source = ein Tag hat 24 h
    .turn-standing = Sie haben den Anteil der Zeit angegeben, in der er steht.
    .turn-of-a-shift = Sie haben ihn auf eine Schicht von 8 h bezogen; der Kalender zählt alle 24.

relation-follow-first-change-first-of-two-clocks = Wann das Öl eines neuen Getriebes zum ersten Mal gewechselt wird
    .limits = die Angaben des Herstellers gehen vor; 500 Betriebsstunden oder vier Wochen sind übliche Praxis
    .source = was zuerst erreicht ist
    .turn-running-hours-on-the-calendar = Sie haben Betriebsstunden für Kalenderstunden genommen; der Antrieb läuft nicht die ganze Zeit.
    .turn-later-of-the-two = Sie haben den späteren der beiden Zeitpunkte genommen; es zählt, was zuerst erreicht ist.
    .turn-running-hours-alone = Sie haben nur nach den Betriebsstunden entschieden; der Kalender kann schneller sein, denn Öl altert auch im Stillstand.
    .turn-calendar-alone = Sie haben nur nach dem Kalender entschieden; die Betriebsstunden können früher aufgebraucht sein.
    .turn-multiplied = Sie haben mit dem Anteil malgenommen; ein Antrieb, der weniger läuft, braucht länger bis zu seinen Betriebsstunden.
    .turn-usual-change = Sie haben die Stunden der späteren Wechsel genommen; der erste kommt viel früher und trägt den Abrieb des Einlaufs hinaus.

relation-follow-usual-calendar-sump-temperature = Kalenderzeit zwischen späteren Ölwechseln
    .method = Sechs Monate, oder drei Monate, wo der Ölsumpf über 93 °C (200 °F) beharrt. Sechs Monate sind 182,6 Tage.
    .place = Schmierung eines Getriebes, S. 3-1280
    .turn-hot-for-any = Sie haben den Abstand eines heißen Ölsumpfs genommen; er gilt über 93 °C (200 °F).
    .turn-shortest = Sie haben einen Monat genommen; der gilt für die heißesten Ölsümpfe.
    .turn-usual-for-any = Sie haben für jede Temperatur sechs Monate genommen; bei heißem Ölsumpf wird früher gewechselt.

relation-follow-next-change-first-of-two-clocks = Wann das Öl danach gewechselt wird
    .place = Schmierung eines Getriebes, S. 3-1280
    .turn-running-hours-on-the-calendar = Sie haben Betriebsstunden für Kalenderstunden genommen; der Antrieb läuft nicht die ganze Zeit.
    .turn-later-of-the-two = Sie haben den späteren der beiden Zeitpunkte genommen; es zählt, was zuerst erreicht ist.
    .turn-multiplied = Sie haben mit dem Anteil malgenommen; ein Antrieb, der weniger läuft, braucht länger bis zu seinen Betriebsstunden.
    .turn-first-change = Sie haben die Werte des ersten Wechsels genommen; die späteren liegen weiter auseinander.

relation-follow-oil-hours-hours-a-day = Betriebsstunden seit dem Einfüllen des Öls
    .source = ein Tag hat 24 h
    .turn-calendar-hours = Sie haben die Kalenderstunden angegeben; der Antrieb läuft nur seinen Anteil davon.
    .turn-divided = Sie haben durch den Anteil geteilt; er läuft weniger, als der Kalender zählt, nehmen Sie also mal.

relation-follow-change-verdict-either-clock = Urteil über den ersten Ölwechsel
    .method = Fällig, sobald die Betriebsstunden oder die Kalenderzeit seit dem Einfüllen des Öls aufgebraucht sind.
    .turn-both-clocks = Sie haben beide Uhren abgewartet; es zählt die erste, die abgelaufen ist.
    .turn-running-hours-alone = Sie haben nur nach den Betriebsstunden entschieden; auch der Kalender redet mit.
    .turn-calendar-alone = Sie haben nur nach dem Kalender entschieden; auch die Betriebsstunden reden mit.
    .turn-calendar-hours-as-running = Sie haben die Kalenderstunden als Betriebsstunden gezählt.
    .turn-usual-change = Sie haben es gegen die Stunden der späteren Wechsel gehalten; der erste kommt viel früher.

relation-follow-wear-in-curve = Längung einer neuen Kette beim Einlaufen
    .limits = Bolzen und Hülsen, die unter der gewöhnlichen Last einlaufen
    .source = eigene Kurve dieses Kurses: abklingende Einlauflängung und gleichmäßiger Verschleiß; dass sich eine neue Kette anfangs am schnellsten längt, ist übliche Praxis
    .turn-steady-alone = Sie haben die Einlauflängung weggelassen; in den ersten Stunden längt sich eine neue Kette durch sie mehr als durch Verschleiß.
    .turn-bedding-alone = Sie haben den gleichmäßigen Verschleiß weggelassen.
    .turn-bedding-at-once = Sie haben die ganze Einlauflängung auf einmal genommen; sie kommt mit ihrer Zeitkonstante.
    .turn-still-to-come = Sie haben den Teil der Einlauflängung genommen, der noch kommt; was schon da ist, ist 1 minus dieser Anteil.

relation-follow-growth-in-links = Längenzuwachs der ganzen Kette in den ersten Stunden
    .source = jedes Glied wächst um denselben Anteil, und alles davon hängt im Leertrum
    .turn-one-strand = Sie haben die halbe Kette genommen; der Zuwachs beider Seiten hängt im Leertrum.
    .turn-one-pitch = Sie haben den Zuwachs einer Teilung angegeben; nehmen Sie ihn mit der Zahl der Glieder mal.
    .turn-of-the-span = Sie haben die Längung des Trums genommen; die ganze Kette ist gewachsen, und alles davon hängt im Leertrum.

relation-follow-excess-in-sum = Überlänge nach den ersten Stunden
    .source = jedes Glied wächst um denselben Anteil, und alles davon hängt im Leertrum
    .turn-growth-alone = Sie haben nur den Zuwachs angegeben; das Trum hatte vom Einstellen her schon seine Überlänge.
    .turn-shared = Sie haben jedem Trum den halben Zuwachs gegeben; das Lasttrum ist gerade gezogen, also hängt alles im Leertrum.
    .turn-taken-off = Sie haben den Zuwachs abgezogen; eine längere Kette hat mehr Überlänge.

relation-follow-sag-in-excess = Durchhang nach den ersten Stunden
    .limits = eine Kette, die neu auf den gewünschten Durchhang eingestellt und seither nicht nachgespannt wurde
    .source = erstes Glied der Bogenlänge einer flachen Parabel
    .turn-growth-added-to-the-sag = Sie haben den Zuwachs zum Durchhang gezählt; rechnen Sie über die Überlänge, denn ein kleiner Zuwachs vertieft den Durchhang um ein Vielfaches.
    .turn-in-step = Sie haben den Durchhang im gleichen Verhältnis wie die Überlänge umgerechnet; er geht mit ihrer Quadratwurzel.
    .turn-pressed = Sie haben die Formel für ein Trum benutzt, das zu zwei geraden Hälften niedergedrückt ist; dieses hängt in einem Bogen.
    .turn-as-set = Sie haben den eingestellten Durchhang angegeben; die Kette ist seither gewachsen.

relation-follow-wear-1-curve = Längung bei der ersten Messung
    .source = eigene Kurve dieses Kurses: abklingende Einlauflängung und gleichmäßiger Verschleiß; dass sich eine neue Kette anfangs am schnellsten längt, ist übliche Praxis

relation-follow-wear-2-curve = Längung bei der zweiten Messung
    .source = eigene Kurve dieses Kurses: abklingende Einlauflängung und gleichmäßiger Verschleiß; dass sich eine neue Kette anfangs am schnellsten längt, ist übliche Praxis

relation-follow-chain-hours-line = Laufzeit, die bis zur Verschleißgrenze bleibt
    .limits = beide nach dem Einlaufen gemessen, bei gewöhnlicher Last und Schmierung; je weiter die Vorhersage reicht, desto weniger ist sie wert
    .source = eine Gerade durch zwei Messungen
    .turn-from-new = Sie haben die Gerade ab der neuen Kette gezogen; die Einlauflängung der ersten Stunden steckt darin und lässt den Verschleiß schneller aussehen, als er ist.
    .turn-from-the-first-measurement = Sie haben ab der ersten Messung gezählt; was bleibt, zählt ab der zweiten.
    .turn-life-of-the-chain = Sie haben die ganze Lebensdauer der Kette angegeben; was bleibt, zählt ab der zweiten Messung.
    .turn-whole-limit = Sie haben die ganze Grenze durch den Verschleiß je Stunde geteilt; es zählt nur, was davon noch bleibt.
    .turn-spent = Sie haben die Zeit für den Verschleiß ausgerechnet, der schon da ist; es zählt, was bis zur Grenze bleibt.

relation-follow-rise-1-log = Erste beharrende Übertemperatur im Protokoll
    .source = eigene Streuung dieses Kurses für eine protokollierte Übertemperatur

relation-follow-rise-2-log = Zweite beharrende Übertemperatur im Protokoll
    .source = eigene Streuung dieses Kurses für eine protokollierte Übertemperatur

relation-follow-rise-3-log = Dritte beharrende Übertemperatur im Protokoll
    .source = eigene Streuung dieses Kurses für eine protokollierte Übertemperatur

relation-follow-rise-4-log = Vierte beharrende Übertemperatur im Protokoll
    .source = eigene Streuung dieses Kurses für eine protokollierte Übertemperatur

relation-follow-rise-5-log = Erste spätere Übertemperatur im Protokoll
    .source = eigene Streuung dieses Kurses für eine protokollierte Übertemperatur

relation-follow-rise-6-log = Zweite spätere Übertemperatur im Protokoll
    .source = eigene Streuung dieses Kurses für eine protokollierte Übertemperatur

relation-follow-rise-mean-settled-mean = Bezugswert der Übertemperatur
    .limits = Ablesungen in Beharrung, nach dem Einlauf, bei gleicher Last und Drehzahl
    .turn-sum = Sie haben die Ablesungen zusammengezählt und nicht durch ihre Anzahl geteilt.
    .turn-later-readings-in-it = Sie haben die späteren Ablesungen in den Bezugswert genommen; sie werden gegen ihn gehalten.
    .turn-latest = Sie haben die jüngste Ablesung genommen; sie wird mit dem Bezugswert verglichen.

relation-follow-rise-range-moving-ranges = Mittlere gleitende Spannweite der beharrenden Übertemperaturen
    .place = 6.3.2.2 (wie zitiert)
    .turn-divided-by-readings = Sie haben durch die Anzahl der Ablesungen geteilt; es gibt einen Schritt weniger als Ablesungen.
    .turn-signs-kept = Sie haben die Vorzeichen behalten, so hoben sich Auf und Ab auf; eine Spannweite ist ein Betrag.
    .turn-sum = Sie haben die Spannweiten zusammengezählt und nicht durch ihre Anzahl geteilt.

relation-follow-rise-upper-moving-range = Obere Eingriffsgrenze der Übertemperatur
    .limits = wenige Ablesungen geben einen ersten Anhalt; bestimmen Sie die Grenzen neu, wenn mehr vorliegen
    .place = 6.3.2.2 (wie zitiert)
    .turn-3-for-2-66 = Sie haben die mittlere Spannweite mit 3 malgenommen; drei Standardabweichungen sind 2,66 mittlere Spannweiten.
    .turn-3-267 = Sie haben 3,267 benutzt, das begrenzt die Spannweiten; zu den Ablesungen gehört 2,66.
    .turn-factor-left-out = Sie haben die 2,66 weggelassen.
    .turn-lower = Sie haben die untere Grenze angegeben.
    .turn-reach-alone = Sie haben den Abstand vom Mittel angegeben; die Grenze liegt so weit darüber.

relation-follow-rise-lower-moving-range = Untere Eingriffsgrenze der Übertemperatur
    .place = 6.3.2.2 (wie zitiert)
    .turn-3-for-2-66 = Sie haben die mittlere Spannweite mit 3 malgenommen; drei Standardabweichungen sind 2,66 mittlere Spannweiten.
    .turn-factor-left-out = Sie haben die 2,66 weggelassen.
    .turn-upper = Sie haben die obere Grenze angegeben.

relation-follow-rise-verdict-limits = Urteil über die jüngste Übertemperatur
    .method = Eine Übertemperatur jenseits einer Grenze, nach oben oder unten, ist ein Signal; eine genau auf der Grenze nicht.
    .place = 6.3.1 (wie zitiert)
    .turn-rise-limit = Sie haben sie gegen die Grenze der Übertemperatur gehalten; eine Übertemperatur kann weit darunter liegen und doch sagen, dass sich diese Maschine verändert hat.
    .turn-mean-as-limit = Sie haben sie gegen das Mittel gehalten; die Hälfte aller Ablesungen liegt darüber.
    .turn-fall-ignored = Sie haben ein Fallen durchgehen lassen; auch unter der unteren Grenze ist es ein Signal.
    .turn-first-later-reading = Sie haben die Ablesung davor beurteilt; gefragt ist die jüngste.

relation-follow-weighted-two-readings = Gewichtetes Mittel nach zwei späteren Ablesungen
    .method = Ablesung für Ablesung: neues Mittel = Gewicht × Ablesung + (1 − Gewicht) × voriges Mittel; das erste vorige Mittel ist der Bezugswert.
    .place = S. 428 (wie zitiert)
    .turn-weights-swapped = Sie haben das Gewicht dem alten Mittel gegeben und den Rest der neuen Ablesung; es ist umgekehrt.
    .turn-latest-alone = Sie haben die jüngste Ablesung angegeben; sie zählt nur mit ihrem Gewicht.
    .turn-readings-swapped = Sie haben die beiden Ablesungen in der falschen Reihenfolge genommen; die neueste zählt am meisten.
    .turn-started-at-the-first = Sie haben mit der ersten späteren Ablesung angefangen; der Anfang ist das Mittel der beharrenden Ablesungen.
    .turn-first-step-only = Sie haben nach der ersten der beiden Ablesungen aufgehört.
    .turn-baseline-left-out = Sie haben den Bezugswert weggelassen; was an Gewicht nicht auf die Ablesungen fällt, fällt auf ihn.

relation-follow-weighted-upper-many-readings = Obere Grenze des gewichteten Mittels
    .limits = nach vielen Ablesungen; bei den ersten ist sie noch enger
    .place = S. 428 (wie zitiert)
    .turn-range-for-deviation = Sie haben die mittlere Spannweite genommen, wie sie ist; die Standardabweichung ist die mittlere Spannweite durch 1,128.
    .turn-limit-of-single-readings = Sie haben die Grenze einzelner Ablesungen angegeben; ein gewichtetes Mittel streut weniger, also sind seine Grenzen enger.
    .turn-root-left-out = Sie haben die Wurzel vergessen.
    .turn-weight-s-part-left-out = Sie haben die Wurzel mit dem Gewicht weggelassen; um diesen Faktor streut ein Mittel weniger als eine Ablesung.
    .turn-after-one-reading = Sie haben die Grenze nach einer Ablesung angegeben; gefragt ist die nach vielen.

relation-follow-weighted-verdict-upper-limit = Urteil über das gewichtete Mittel
    .method = Über seiner Grenze zeigt das gewichtete Mittel eine kleine bleibende Verschiebung an, die einzelne Ablesungen noch nicht zeigen.
    .place = S. 428 (wie zitiert)
    .turn-limit-of-single-readings = Sie haben das Mittel gegen die Grenze einzelner Ablesungen gehalten; seine eigene Grenze ist enger.
    .turn-single-reading = Sie haben die einzelne Ablesung gegen die Grenze des gewichteten Mittels gehalten.
