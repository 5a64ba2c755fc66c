### Was Skripte auf den Seiten des Kurses sagen. Keine Varianten: Skripte füllen nur Stellen aus.

## Übungskarten

script-practice = Übung
script-one-mark = 1 Punkt
script-your-answer = Ihre Antwort
script-your-answer-to = Ihre Antwort zu { $letter }
script-read-as = Gelesen als { $amount }
script-marks-of = { $count } Punkten
script-earned = { $word }: { $earned } von { $of }.
script-verdict-right = Richtig
script-verdict-carried = So weit richtig
script-verdict-partial = Teilweise richtig
script-verdict-wrong = Nicht richtig
script-verdict-wrong-unit = Eine andere Einheit ist gefragt
script-verdict-unreadable = Nicht verstanden
script-verdict-blank = Noch keine Antwort
script-check = Prüfen
script-opened = { $hint }, unten geöffnet.
script-hint-of = Hinweis { $number } von { $all }
script-no-more-hints = Keine weiteren Hinweise
script-link = Verweis auf diesen Fall
script-easier = Leichter
script-harder = Schwerer
script-new-numbers = Neue Zahlen
script-none-of-skill = Zu dieser Fertigkeit gibt es keine.
script-new-case = { $title }, neuer Fall { $seed }.
script-not-loaded = Das Rechenprogramm konnte nicht geladen werden; Aufgabe und Lösung stehen hier, wie sie sind.

## Fortschritt

script-sure = { $says }, zu { $sure } % sicher, aus { $answers } Antworten
script-sure-one = { $says }, zu { $sure } % sicher, aus { $answers } Antwort
script-comes-back = Kommt wieder: { $due }.
script-practise = Üben
script-sits = { $sits } von { $all } sitzen
script-sits-one = { $sits } von { $all } sitzt
script-next = Als Nächstes:
script-practise-now = Das jetzt üben
script-no-progress = Das Rechenprogramm konnte nicht geladen werden, darum kann der Fortschritt nicht gezeigt werden; nichts geht verloren.
script-save = In eine Datei speichern
script-saved = Gespeichert als progress.json.
script-file = Datei mit dem Fortschritt
script-no-file = { $file } enthält keinen Fortschritt; wählen Sie eine Datei, die auf dieser Seite gespeichert wurde.
script-loaded = { $count } Antworten geladen.
script-not-kept = Dieses Gerät lässt die Seite nichts behalten.
script-load = Aus einer Datei laden
script-clear = Löschen
script-clear-all = Alles hier Vermerkte löschen
script-press-again = Zum Löschen noch einmal drücken; es lässt sich nicht zurücknehmen.
script-cleared = Gelöscht.

## Suche, Seite, Kurs auf dem Gerät

script-first-places = Die ersten { $most } von { $all } Stellen
script-one-place = 1 Stelle
script-places = { $all } Stellen
script-no-search = Die Suche konnte nicht geladen werden; benutzen Sie das Inhaltsverzeichnis.
script-scrolls = Seitlich verschiebbar
script-on-device = Der Kurs auf diesem Gerät
script-close = Schließen
script-newer = Eine neuere Fassung dieses Kurses liegt bereit.
script-use-now = Jetzt benutzen
script-kept = Dieser Kurs ist jetzt auf Ihrem Gerät: Er läuft auch ohne Netz.
