### Aufgabenblätter, Lösungen, Seiten zum Antworten am Bildschirm, Ergebnisse.

## Auf mehreren Seiten

marks =
    { $count ->
        [1] { $count } Punkt
       *[other] { $count } Punkte
    }
table-what = Größe
table-symbol = Zeichen
table-value = Wert
table-unit = Einheit
table-scrolls = { $heading }, seitlich verschiebbar

## Fußzeile

sheet-paper = Blatt { $code }
sheet-sheet = Seite
sheet-of = von

print-page = Seite { $page } von { $pages }

## Das Aufgabenblatt

paper-title = { $exam }: Aufgabenblatt { $code }, { $candidate }
paper-plant = Betrieb
paper-candidate = Prüfling
paper-code = Blattnummer
paper-date = Datum
paper-marks = Punkte
paper-time-allowed = Zeit
paper-minutes = { $minutes } Minuten
paper-caution = Vorsicht
paper-policy = So wird dieses Blatt bewertet
paper-question = Aufgabe { $number }: { $title }
paper-given = Gegeben
paper-other-units = Andere Einheiten
paper-the-same = gleich
paper-answer-to = Antwort { $label }
paper-answer = Antwort
paper-way = Zwischenergebnisse
paper-each-unit = jedes mit seiner Einheit
paper-with-unit = mit Einheit ({ $unit } oder eine andere)
paper-end = Ende des Blatts

## Mehrere Blätter in einer Datei

bundle-papers = { $exam }: Aufgabenblätter
bundle-large = { $exam }: Aufgabenblätter in Großdruck
bundle-keys = { $exam }: Lösungen

## Antworten am Bildschirm

screen-no-script = Diese Seite braucht Skripte, um Ihre Antworten zu behalten. Lassen Sie sich das Blatt auf Papier geben.
screen-keeping = So bleiben Ihre Antworten erhalten
screen-stays = Was Sie schreiben, bleibt auf diesem Gerät und in diesem Browser, Buchstabe für Buchstabe. Nichts wird gesendet.
screen-save-and-hand-in = Wenn Sie fertig sind, speichern Sie die Antworten am Ende dieser Seite in eine Datei und geben Sie diese Datei ab.
screen-take-back = Auswahl zurücknehmen
screen-semicolons = jedes mit seiner Einheit, durch Strichpunkte getrennt
screen-hand-in = Abgeben
screen-save = Antworten in eine Datei speichern
screen-load = Antworten aus einer früher gespeicherten Datei übernehmen:
screen-count = { $written } von { $all } Teilen beantwortet.
screen-kept = Auf diesem Gerät behalten.
screen-not-kept = Dieser Browser kann sie nicht behalten: Speichern Sie sie in eine Datei, bevor Sie die Seite verlassen.
screen-saved = Gespeichert als answers-{ $code }.json. Geben Sie diese Datei ab.
screen-took = { $count } Antworten aus { $file } übernommen.
screen-none = { $file } enthält keine Antworten zum Blatt { $code }.

## Die Lösung für den Prüfer

key-title = Lösung zum Blatt { $code }: { $exam }
key-head = Lösung für den Prüfer: { $exam }
key-made-with = Erstellt mit
key-machine = Maschine: { $machine }
key-only = Nur für den Prüfer.
key-apart = Getrennt von den Aufgabenblättern aufbewahren.
key-or = oder
key-accepted = anerkannt { $tolerance }
key-source = Quelle: { $source }
key-wrong = Zu erwartende falsche Antworten
key-answer = Antwort
key-how = Wie man darauf kommt

## Ergebnis eines Prüflings

result-title = Ergebnis von { $candidate }: { $exam }
result-head = Ergebnis: { $exam }
result-earned = { $earned } von { $marks }
result-outcome = Ergebnis
result-caution = Vorsicht: vor jeder Arbeit an einer Maschine besprechen
result-each-answer = Die einzelnen Antworten
result-your-answer = Ihre Antwort:
result-none = keine
result-expected = Erwartet:
result-marks = Punkte:
result-practise-next = Als Nächstes üben

## Ergebnisse einer Gruppe

class-title = Ergebnisse der Gruppe: { $exam }
class-paper = Blatt
class-total = Summe
class-wrong = Was falsch war
class-done = Was gemacht wurde
class-where = Wo
class-many = Wie viele
class-who = Wer
class-nothing = Nichts gefunden, das zu einem bekannten Fehler passt.
class-practice = Wer was üben sollte
class-topics = Üben, das Nötigste zuerst
class-nobody = Niemand braucht mehr Übung, als der Kurs gibt.
class-remarks = Bemerkungen
