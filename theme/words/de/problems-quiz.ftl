### Was Verfassern und Prüfern zu Aufgaben, Prüfungsplänen, Listen, Prüfungsakten und Antworten gesagt wird, wenn etwas daran nicht stimmt

## An mehreren Stellen

problem-mend-write = Schreiben Sie { $example }.
problem-mend-write-say = Schreiben Sie etwa { $example }.
problem-mend-write-either = Schreiben Sie { $one } oder { $other }.
problem-mend-write-either-say = Schreiben Sie etwa { $one } oder { $other }.
problem-mend-write-or-out = Schreiben Sie { $example }, oder lassen Sie es weg.
problem-mend-write-say-or-out = Schreiben Sie etwa { $example }, oder lassen Sie es weg.
problem-mend-other-id = Geben Sie einer davon eine andere Kennung.
problem-mend-sound-copy = Nehmen Sie eine unbeschädigte Kopie.
problem-no-units = { $units } ist kein Einheitensystem.
problem-no-topic = Ein Thema { $name } gibt es nicht.
problem-topics = Die Themen sind { $names }.
problem-no-family = Eine Familie { $name } gibt es nicht.
problem-two-items = Es gibt zwei Aufgaben mit der Kennung { $name }.

## Die Sammlung

problem-bank-two-families = Es gibt zwei Familien mit der Kennung { $name }.
problem-bank-no-utf-8 = Zeile { $line } ist kein Text in UTF-8.
problem-bank-save-utf-8 = Speichern Sie die Datei als UTF-8.
problem-bank-other-file = Es gibt noch eine Aufgabe mit der Kennung { $name }, in { $file }, Zeile { $line }.
problem-bank-no-family = eine Familie { $name } gibt es nicht{ $hint }
problem-bank-no-item = eine Aufgabe { $name } gibt es nicht{ $hint }
problem-bank-circle = Im Kreis lässt sich nichts übernehmen: { $way }.
problem-bank-is-like = ist wie
problem-bank-no-like = Lassen Sie eine davon alles selbst sagen, ohne `like`.
problem-bank-near = ; meinten Sie { $near }?
problem-bank-known = ; es gibt: { $names }
problem-bank-known-and-more = ; es gibt: { $names } und { $count } weitere

## Aufgaben

problem-item-no-quantity = Eine Größe { $name } gibt es nicht.
problem-item-quantities = `drivecourse solve --list` nennt alle Größen.
problem-item-bad-id = Die Kennung einer Aufgabe besteht aus Buchstaben, Ziffern und Bindestrichen.
problem-item-an-id = Schreiben Sie zum Beispiel { $example }.
problem-item-no-skill-name = Die Fertigkeit { $skill } hat einen leeren Namen.
problem-item-skill-name = Schreiben Sie, wie Auswertungen sie nennen, oder nehmen Sie die Zeile heraus.
problem-item-no-part = Diese Aufgabe hat keinen Teil und fragt also nichts.
problem-item-add-part = Fügen Sie { $part } hinzu.
problem-item-no-possibility = { $text } ist keine der Möglichkeiten von { $quantity }.
problem-item-unreadable = { $text } lässt sich nicht lesen: { $why }
problem-item-takes = Verlangt wird: { $kind }.
problem-item-no-method = Ein Verfahren { $name } gibt es nicht.
problem-item-no-place = { $name } steht für nichts.
problem-item-places = Verwenden Sie { $machine } oder den Namen einer Größe.
problem-item-open-place = Eine geschweifte Klammer ist nicht geschlossen: { $text }
problem-item-close-place = Schreiben Sie { $name }. Was eingesetzt wird, steht zwischen zwei geschweiften Klammern; lassen Sie eine weg, die anders gemeint ist.
problem-item-two-items-at = Es gibt zwei Aufgaben mit der Kennung { $name }; die andere steht in Zeile { $line }.
problem-item-below = { $quantity } ist { $value }; zulässig ist mindestens { $bound }
problem-item-above = { $quantity } ist { $value }; zulässig ist höchstens { $bound }

## Teile von Aufgaben

problem-part-one-way = Ein Teil fragt auf genau eine Art.
problem-part-ways = Geben Sie ihm eines von `ask`, `read`, `order`, `pick`, `diagnose`, `odd`, `decide` und `reason`.
problem-part-marks = Ein Teil bringt 1 bis 20 Punkte.
problem-part-wrong-alone = Eigene Fehler gehören in einen Teil mit `ask`.
problem-part-wrong-out = Nehmen Sie `wrong` aus diesem Teil heraus.
problem-part-steps = Eine Reihenfolge braucht 3 bis 12 Schritte.
problem-part-add-steps = Fügen Sie Schritte hinzu oder fassen Sie welche zusammen.
problem-part-right = `right` muss die Nummer der richtigen Aussage sein, von 1 an gezählt.
problem-part-write-right = Schreiben Sie right = 1 bis { $count }.
problem-part-same-step = Dieser Schritt lautet wie Schritt { $number }; so kann sie niemand unterscheiden.
problem-part-step-out = Nehmen Sie einen Schritt heraus, oder sagen Sie in beiden, was verschieden ist.
problem-part-same-statement = Diese Aussage lautet wie Aussage { $number }; so kann sie niemand unterscheiden.
problem-part-statement-out = Nehmen Sie eine Aussage heraus, oder sagen Sie in beiden, was verschieden ist.
problem-part-given-away = Der Teil fragt nach dem, was er verrät.
problem-part-from-out = Nehmen Sie die gefragte Größe aus `from` heraus.
problem-part-no-face = { $quantity } wird von keiner Anzeige abgelesen, die sich zeichnen lässt.
problem-part-faces = Nennen Sie etwas, das mit einem von diesen abgelesen wird: { $instruments }.
problem-part-no-reading = { $quantity } ist keine Ablesung in Zahlen.
problem-part-readings = Ein Fehler wird aus Ablesungen und Schildern erkannt; die Urteile bleiben den Lernenden.
problem-part-one-reading = Eine einzige Ablesung erklärt nichts.
problem-part-two-readings = Zeigen Sie mindestens zwei Ablesungen.
problem-part-no-number = { $quantity } ist keine Zahl; darin steckt kein Schreibfehler.
problem-part-to-also = Verschieben Sie es nach `also`.
problem-part-few-numbers = Eine falsche Zahl findet man unter mindestens drei Zahlen, in einer Aufgabe mit einem Teil.
problem-part-add-numbers = Fügen Sie Zahlen hinzu, die aus den anderen folgen, oder machen Sie eine eigene Aufgabe daraus.
problem-part-no-finding = Hier steht nichts, was etwas entscheidet.
problem-part-add-finding = Fügen Sie mindestens einen Befund hinzu.
problem-part-no-decision = Ein Grund gehört zur Entscheidung im Teil davor.
problem-part-move-reason = Schreiben Sie reason = true in den Teil, der auf einen mit `decide` folgt.
problem-part-never-so = { $quantity } ist nie { $word }.
problem-part-take-verdict = Nehmen Sie ein Urteil.
problem-part-may-be = Möglich sind: { $choices }.
problem-part-no-call = { $word } ist keine Entscheidung.
problem-part-calls = Schreiben Sie adjust oder stop; was nicht genannt ist, wird angenommen.

## Eigene Fehler

problem-wrong-no-step = { $step } ist kein Schritt auf dem Weg zu { $asked }.
problem-wrong-steps = Die Schritte sind { $steps }.
problem-wrong-no-words = Ein Fehler ohne Worte hilft niemandem.
problem-wrong-add-words = Sagen Sie, was falsch gemacht wurde.

## Prüfungspläne

problem-exam-title = Der Titel muss eine Zeile Text sein.
problem-exam-pass-low = Wer { $pass } % der Punkte hat, besteht diese Prüfung.
problem-exam-pass-meant = Sind { $meant } % gemeint? Ist es so gewollt, dann lassen Sie es.
problem-exam-pass-low-mend = Ist es so gewollt, dann lassen Sie es; üblich sind 70 %.
problem-exam-hurry = { $minutes } Minuten für { $questions } Fragen sind weniger als eine Minute für jede.
problem-exam-hurry-mend = Geben Sie mehr Zeit, oder fragen Sie weniger. Ist es so gewollt, dann lassen Sie es.
problem-exam-row-twice = Dieser Posten nimmt aus denselben Fragen wie der in Zeile { $line }.
problem-exam-row-twice-mend = Nehmen Sie einen der beiden heraus, und schreiben Sie im anderen count = { $count }, oder verbessern Sie den falschen.
problem-exam-minutes = Die Zeit muss zwischen 1 und 1440 Minuten liegen.
problem-exam-months = Eine bestandene Prüfung gilt 1 bis 600 Monate.
problem-exam-no-families = Es bleibt keine Familie, nach der gefragt werden kann.
problem-exam-name-family = Nennen Sie eine, oder nehmen Sie die Zeile heraus.
problem-exam-no-cautions = Ein Blatt über Maschinen muss Warnungen tragen.
problem-exam-write-caution = Schreiben Sie mindestens eine, oder nehmen Sie die Zeile heraus; dann stehen die üblichen da.
problem-exam-rows = Ein Prüfungsplan hat 1 bis { $most } Posten.
problem-exam-add-row = Fügen Sie { $row } mit einem Thema, einer Fertigkeit oder einer Aufgabe und einer Anzahl hinzu.
problem-exam-bare-share = Ohne Prozentzeichen ist { $text } { $percent } %, und verlangt ist ein Anteil zwischen 0 und { $most } %.
problem-exam-no-share = { $text } ist kein Anteil zwischen 0 und { $most } %.
problem-exam-of-topic = Thema { $name }
problem-exam-of-skill = Fertigkeit { $name }
problem-exam-of-item = Aufgabe { $name }
problem-row-one-thing = Ein Posten nimmt Aufgaben von genau einer Sorte.
problem-row-things = Geben Sie ihm eines von `topic`, `skill` und `item`.
problem-row-count = Ein Posten nimmt 1 bis { $most } Aufgaben.
problem-row-write-count = Schreiben Sie etwa { $example }, oder nehmen Sie den Posten heraus.
problem-row-no-count = Dieser Posten sagt nicht, wie viele Aufgaben er nimmt.
problem-row-no-marks = Eine Aufgabe bringt mindestens einen Punkt.
problem-row-weight = Eine Aufgabe zählt 1 bis 100 Punkte.
problem-row-difficulty = Das sind keine Grenzen der Schwierigkeit.
problem-marking-near-miss = Nahe ist, was zwischen 1 und 10 Toleranzen daneben liegt.
problem-marking-figures = Antworten haben mindestens 1 und höchstens 12 Ziffern, und andere kosten mindestens einen Punkt.
problem-marking-no-unit-rule = { $word } sagt nichts über Einheiten.

## Teilnehmerlisten

problem-roster-add-person = Fügen Sie { $person } mit Kennung und Namen hinzu.
problem-roster-add-row = Fügen Sie für jede Person eine Zeile mit Kennung und Namen hinzu.
problem-roster-unclosed = Dieses Anführungszeichen wird nie geschlossen.
problem-roster-close = Schließen Sie es, oder verdoppeln Sie es innerhalb einer Zelle.
problem-roster-no-column = Der Teilnehmerliste fehlt die Spalte { $name }.
problem-roster-first-row = Die erste Zeile muss { $headings } lauten.
problem-roster-column-meant = Ist { $near } damit gemeint?
problem-roster-heading-near = Die Spalte { $written } bleibt außer Acht: Eine solche Überschrift gibt es nicht.
problem-roster-heading-meant = Meinten Sie { $near }? Eine eigene Spalte bleibt unter jedem Namen außer Acht.
problem-roster-two-columns = Die Teilnehmerliste hat zwei Spalten { $name }.
problem-roster-column-out = Nehmen Sie eine davon heraus.
problem-roster-overflow = Diese Zeile hat mehr Zellen als die Überschriften.
problem-roster-quote-cell = Setzen Sie eine Zelle, die das Trennzeichen enthält, in Anführungszeichen.
problem-roster-misplaced = { $written } steht unter { $heading }, und diese Zeile hat keine Zelle unter { $wanted }.
problem-roster-misplaced-mend =
    Davor fehlt ein Trennzeichen. Lassen Sie eine Zelle leer, wo nichts zu sagen ist:
    { $line }
problem-roster-bad-id = { $id } ist keine Kennung: Eine Kennung besteht aus Buchstaben, Ziffern, Bindestrichen, Unterstrichen und Punkten.
problem-roster-an-id = Schreiben Sie eine kurze Kennung, etwa a07 oder frueh-03.
problem-roster-id-twice = Die Kennung { $id } steht zweimal da.
problem-roster-other-id = Geben Sie einer der beiden Personen eine andere Kennung.
problem-roster-no-name = { $id } hat keinen Namen.
problem-roster-a-name = Schreiben Sie den Namen, der auf dem Blatt stehen soll.
problem-roster-name-twice = Zwei Personen heißen { $name }: { $one } und { $other }.
problem-roster-tell-apart = Fügen Sie etwas hinzu, das sie unterscheidet, etwa einen zweiten Namen oder die Schicht.
problem-roster-no-print = { $print } ist keine Schriftgröße.
problem-roster-prints = Schreiben Sie large, oder nichts.
problem-roster-name-hidden = In diesem Namen steht ein unsichtbares Zeichen ({ $character }).
problem-roster-group-hidden = In dieser Gruppe steht ein unsichtbares Zeichen ({ $character }).
problem-roster-type-again = Tippen Sie es neu von Hand.
problem-roster-name-long = Dieser Name ist länger als { $most } Zeichen.
problem-roster-group-long = Diese Gruppe ist länger als { $most } Zeichen.
problem-roster-shorten = Kürzen Sie.
problem-roster-nobody = Die Teilnehmerliste nennt niemanden.

## Das Modul

problem-module-no-such = Das Programm hat kein Thema, keine Fertigkeit und keine Aufgabe mit dem Namen { $name }.
problem-module-no-family = Das Programm hat keine Familie { $name }.
problem-module-lists = `drivecourse check --all` nennt die Aufgaben des Programms, `drivecourse look` seine Familien.

## Blätter ziehen

problem-draw-no-safety = Kein Posten sorgt dafür, dass jedes Blatt eine Sicherheitsfrage hat.
problem-draw-add-safety = Fügen Sie einen Posten mit safety_only = true hinzu, oder schreiben Sie no_safety = true, wenn die Prüfung mit Absicht keine hat.
problem-draw-unequal = Der Posten ({ $pick }) nimmt Aufgaben mit { $least } bis { $most } Punkten, so dass nicht alle Blätter dieselbe Summe haben; geben Sie dem Posten ein Gewicht (weight).
problem-draw-twice = Der Posten ({ $pick }) nimmt { $count } aus { $from }: Eine Aufgabe kommt mehr als einmal, zu anderen Maschinen.
problem-row-narrow-one = Zum Posten ({ $pick }) passt nur 1 Aufgabe: Alle werden dasselbe gefragt, wenn auch zu anderen Maschinen.
problem-row-narrow = Zum Posten ({ $pick }), der { $count } nimmt, passen nur { $from } Aufgaben: Alle werden dasselbe gefragt, wenn auch zu anderen Maschinen.
problem-row-without = Ohne `{ $key }` wären es { $count }.
problem-row-no-more = Die Sammlung hat für die Familien dieser Prüfung nicht mehr davon: Aufgaben hinzufügen oder den Posten aus einem Thema nehmen lassen.
problem-draw-not-ready = In den Einheiten von { $person } wurde nichts vorbereitet.
problem-draw-no-question = Keine Frage der Aufgabe { $item } zur Familie { $family } ließ sich ziehen: { $because }.
problem-paper-widen = Erweitern Sie, was die Familie zieht, oder die Grenzen der Aufgabe.
problem-draw-unready = sie wurden nicht vorbereitet
problem-draw-too-few = Die Familie { $family } hat zu wenige verschiedene Maschinen für { $item }: Keine zwei Blätter dürfen dieselbe haben.
problem-draw-draw-more = Lassen Sie die Familie mehr ihrer Größen ziehen, oder erlauben Sie dem Posten andere Familien.
problem-draw-out-of-reach = Kein Blatt kommt bis auf { $band } % an die mittlere Schwierigkeit { $mean } heran: Das nächste hat { $nearest }, und die Aufgaben dieses Postens gehen am weitesten auseinander.
problem-draw-widen-band = Nehmen Sie mehr aus diesem Posten, geben Sie der Sammlung Aufgaben einer Schwierigkeit dazwischen, oder erweitern Sie `band`.
problem-draw-families = `drivecourse check --all` nennt alle Familien.
problem-draw-items = `drivecourse check --all` nennt alle Aufgaben.
problem-draw-nothing-of = Die Sammlung hat nichts dazu: { $pick }.
problem-draw-one-but-none = Die Sammlung hat dazu eine Aufgabe ({ $pick }), gesucht ist aber { $wanted }.
problem-draw-some-but-none = Die Sammlung hat dazu { $count } Aufgaben ({ $pick }), gesucht ist aber { $wanted }.
problem-draw-safety-worth = eine Sicherheitsfrage mit der Punktzahl { $marks }
problem-draw-safety = eine Sicherheitsfrage
problem-draw-worth = eine mit der Punktzahl { $marks }
problem-draw-they-are = Vorhandene Punktzahlen: { $marks }; Sicherheitsfragen darunter: { $safe }.
problem-draw-no-weight-one = { $item } hat { $parts } Teile, auf die sich 1 Punkt nicht verteilen lässt
problem-draw-no-weight = { $item } hat { $parts } Teile, auf die sich { $weight } Punkte nicht verteilen lassen
problem-draw-difficulty-is = { $item } hat die Schwierigkeit { $difficulty }
problem-draw-no-fit = { $item } zu { $family }: { $why }
problem-draw-other-families = Die Aufgaben nennen Familien, die diese Prüfung nicht erlaubt.
problem-draw-and-more = und { $count } weitere
problem-draw-nothing-fits = Nichts davon ({ $pick }) passt in den Einheiten { $units } zu einer Familie dieser Prüfung.

## Warum Aufgabe und Familie nicht zusammenpassen

problem-fit-not-determined = die Familie bestimmt { $quantities } nicht
problem-fit-not-enough = Teil { $part } zeigt nicht genug für { $asked }: es fehlt { $lacking }
problem-fit-nothing-gives = nichts ergibt { $asked }, wonach Teil { $part } fragt
problem-fit-no-fault = die Familie hat keinen der Fehler, die die Aufgabe verlangt
problem-machine-not-drawn = es wurde keine Maschine gezogen
problem-machine-and = und
problem-machine-no-result = bei keiner Maschine hat jede Rechnung ein Ergebnis
problem-machine-no-result-with = bei keiner Maschine mit dem Fehler { $fault } hat jede Rechnung ein Ergebnis
problem-machine-not-kept = keine Maschine hält die Grenzen der Aufgabe ein; am nächsten kommt: { $nearest }
problem-machine-not-kept-with = keine Maschine mit dem Fehler { $fault } hält die Grenzen der Aufgabe ein; am nächsten kommt: { $nearest }
problem-machine-this-not-kept = diese Maschine hält die Grenzen der Aufgabe nicht ein: { $bound }
problem-machine-other-fault = diese Maschine hat den Fehler nicht, den die Aufgabe verlangt
problem-machine-step-fails = ein Schritt von Teil { $part } hat kein Ergebnis: { $why }
problem-machine-says-otherwise = die Familie selbst sagt, dass { $quantity } { $own } ist, wo Teil { $part } aus dem, was er zeigt, { $found } ausrechnen ließe
problem-machine-no-face = { $quantity } lässt sich auf seiner Anzeige nicht zeigen
problem-machine-calculation = eine Rechnung hat kein Ergebnis
problem-judge-unready = der Teil wurde nicht vorbereitet
problem-decide-at-limit = { $quantity } liegt an seiner Grenze
problem-decide-alike = zwei Befunde entscheiden gleichermaßen
problem-diagnose-other-fault = die Maschine hat einen Fehler, nach dem nicht gefragt ist
problem-diagnose-two-faults = die Maschine hat zwei Fehler
problem-diagnose-unseen = der Fehler zeigt sich in den Ablesungen nicht
problem-diagnose-few-ruled-out = die Ablesungen schließen zu wenige Fehler aus
problem-odd-at-odds = die Zahlen weichen schon so um mehr voneinander ab, als ihr Runden erlaubt
problem-odd-no-proof = in diesen Zahlen lässt sich kein Schreibfehler nachweisen

## Prüfungsakten und Geheimnisse

problem-record-ungraded = Das Blatt { $code } von { $candidate } lässt sich nicht bewerten: { $because }
problem-record-unsound = Das ist keine unbeschädigte Prüfungsakte: { $why }.
problem-record-format-is = Diese Prüfungsakte hat das Format { $format }; dieses Programm liest das Format { $known }.
problem-record-its-version = Verwenden Sie die Version des Programms, die sie geschrieben hat.
problem-record-code-twice = Die Blattnummer { $code } steht zweimal da.
problem-record-scenarios = { $because } Bewerten Sie es mit den Aufgaben und Familien, aus denen es gemacht wurde: Sind die Blätter mit --module entstanden, nennen Sie dasselbe Modul.
problem-record-version = { $because } Es wurde mit Version { $made } dieses Programms gemacht; das hier ist Version { $this }. Bewerten Sie es mit jener Version und den Aufgaben und Familien, aus denen es gemacht wurde.
problem-record-item-gone = Die Aufgabe { $item } gibt es nicht mehr.
problem-record-family-gone = Die Familie { $family } gibt es nicht mehr.
problem-record-no-fit = Die Aufgabe { $item } passt nicht mehr zur Familie { $family }.
problem-record-not-drawn = Eine Frage lässt sich nicht ziehen ({ $why }).
problem-record-other-paper = Noch einmal gemacht, ist es nicht das Blatt, das gedruckt wurde.
problem-record-not-hex = keine 16 hexadezimalen Ziffern
problem-secret-no-header = Das ist keine Datei mit einem Geheimnis: Ihre erste Zeile müsste { $header } lauten.
problem-secret-bad-figures = Diese Datei mit dem Geheimnis ist beschädigt: Sie müsste 64 hexadezimale Ziffern enthalten. Nehmen Sie eine unbeschädigte Kopie.
problem-secret-bad-check = Diese Datei mit dem Geheimnis ist beschädigt: Ihre Prüfzeile passt nicht zu ihren Ziffern. Nehmen Sie eine unbeschädigte Kopie.

## Antworten aus JSON

problem-json-unsound = Diese Datei ist kein gültiges JSON: { $why }. Nichts wurde aus ihr übernommen.
problem-json-no-responses = Diese Datei hat keine Liste { $name }. Nichts wurde aus ihr übernommen.
problem-json-no-list = Diese Datei enthält keine Liste von Antworten. Nichts wurde aus ihr übernommen.
problem-json-entry = Ein Eintrag ist kein Objekt; er wurde ausgelassen.
problem-json-answer = Eine Antwort ist kein Objekt; sie wurde ausgelassen.
problem-json-answers = { $name } ist keine Liste; es wurde ausgelassen.
problem-json-steps = { $name } ist weder Text noch eine Liste von Texten; die Antwort wurde ausgelassen.
problem-json-member = { $name } ist weder Text noch eine Zahl; die Antwort wurde ausgelassen.
