### Karten und Nachschlagetabellen in den Kapiteln.

card-practice = Übung: { $title }
card-worked = Durchgerechnetes Beispiel: { $title }
card-questions =
    { $count ->
        [1] { $count } Frage
       *[other] { $count } Fragen
    }
card-case = { $machine }, Fall { $seed }
card-whose-made-up = Diese Maschine ist erfunden. An einem Antrieb gelten sein Typenschild, seine Zeichnungen und das, was Sie selbst messen, nie diese Zahlen.
card-whose-plant = Dies ist eine Maschine des Betriebs; Last und Messwerte sind erfunden. An der Maschine selbst gilt, was Sie dort messen, nie diese Zahlen.
card-against = Gefragt ist hier das Übliche. In Ihrem Betrieb ist dies festgelegt, und das geht vor: { $value }.
card-whose-program = Diese Maschine ist erfunden und keine des Betriebs. An einem Antrieb gelten sein Typenschild, seine Zeichnungen und das, was Sie selbst messen, nie diese Zahlen.
card-the-question = Die Aufgabe
card-step-by-step = Schritt für Schritt
card-answers = Antworten
card-answer-and-solution = Antwort und Lösungsweg
card-values = Die Werte im Bild
card-givens = Was Sie sehen und messen können
card-hint = Hinweis
card-hint-for = Hinweis zu { $letter }
card-hint-steps = die Schritte
card-hint-formula = die Formel
card-letters-in-order = Antworten Sie mit den Buchstaben in der richtigen Reihenfolge.
card-unit = Einheit der Antwort: { $unit }.
card-plain-number = Die Antwort ist eine reine Zahl.
card-go-on = Rechnen Sie mit Ihrer Antwort zu { $parts } weiter.
card-answer = Antwort:
card-accepted = anerkannt { $tolerance }
card-other-method = { $answer } nach einem anderen anerkannten Verfahren zählt auch.
card-something-else = Wenn Sie etwas anderes gefunden haben
reference-or-unit = oder
reference-symbols = Zeichen und Einheiten
reference-how-known = Woher bekannt
