## Was die Befehle im Terminal sagen

build-made = { $count } Kapitel in { $folder }; zu öffnen: { $file }

papers-made = Blätter in { $folder }: { $papers }, mit je { $questions } Aufgaben
papers-on-screen = dieselben zum Antworten am Bildschirm in { $folder }
papers-keys = ihre Lösungen in { $keys }; diese und { $record } den Prüflingen nicht zeigen
papers-answers = Antworten kommen in { $file }
papers-unshown = den Schriften des PDF fehlt { $letters }; an ihrer Stelle steht ein leeres Quadrat; die Seiten zeigen sie, soweit der Browser es kann
papers-new-secret = neues Geheimnis in { $file }; gut aufheben, ohne es lässt sich kein Blatt wieder herstellen
papers-alike = { $count } der { $all } Blätter mit der Aufgabe { $item } haben dort dieselben Zahlen wie ein anderes ({ $codes }). Es ist nichts zu tun, außer wenn diese einander beim Schreiben auf das Blatt sehen können: { $people }. Setzen Sie sie auseinander, oder sorgen Sie für verschiedene Zahlen. { $why }. Was hilft: { $help }
papers-alike-table = aus der Tabelle von { $family } kommen { $quantities }
papers-alike-fixed = { $family } legt { $quantities } fest
papers-alike-follows = allein aus solchen Werten folgen { $quantities }
papers-alike-varies = von dem, woraus gefragt wird, kann sich zwischen zwei Fällen derselben Maschine nur { $quantities } unterscheiden, und das nicht genug
papers-alike-none-varies = nichts, woraus gefragt wird, unterscheidet sich zwischen zwei Fällen derselben Maschine
papers-alike-help-still = einen dieser Werte, der von Fall zu Fall anders ist, unter [draw] ziehen lassen, statt ihn festzulegen oder als Spalte zu führen, aus einer Ablesung fragen, die von Fall zu Fall anders ist, oder Aufgaben anderer Fertigkeiten nehmen
papers-alike-help-varies = diese Werte unter [draw] weiter streuen lassen, aus einer Ablesung fragen, die sich mehr unterscheidet, oder Aufgaben anderer Fertigkeiten nehmen
papers-untranslated = { $count } von { $all } Texten auf Blättern, Lösungen und Ergebnissen sind nicht übersetzt; `drivecourse words --missing --language { $tag }` zählt sie auf
papers-translated = alle { $all } Texte auf Blättern, Lösungen und Ergebnissen sind übersetzt

grade-results-in = Ergebnisse in { $folder }; zu öffnen: { $file }
grade-unread-one = 1 Antwort war nicht zu lesen und zählt bisher nicht:
grade-unread-more = { $count } Antworten waren nicht zu lesen und zählen bisher nicht:
grade-otherwise-one = 1 Antwort ist falsch, wie sie gelesen wurde, und wäre richtig, wie sie gemeint sein kann; ihre Punkte bleiben bisher so:
grade-otherwise-more = { $count } Antworten sind falsch, wie sie gelesen wurden, und wären richtig, wie sie gemeint sein können; ihre Punkte bleiben bisher so:
grade-what-to-do =
    Sehen Sie die Blätter an. Was falsch abgeschrieben wurde, mit `drivecourse enter` verbessern und neu bewerten; ist es schon
    verbucht, mit --correction noch einmal verbuchen. Was so auf dem Blatt steht und Punkte verdient, mit `drivecourse override` regeln.

enter-help =
    Jede Antwort so eingeben, wie sie dasteht, mit ihrer Einheit.  - leer lassen   < zurück   @3b weiter bei 3 (b)   ? Aufgabe zeigen
    !Text so übernehmen, wie er dasteht   q aufhören.  Eine leere Zeile lässt, was da ist. Nach jeder Antwort wird alles gespeichert.
enter-taken-one = { $count } Antwort aufgenommen in { $file }
enter-taken = { $count } Antworten aufgenommen in { $file }
enter-paper-code = Blattnummer:
enter-no-paper = Das Blatt { $code } gibt es in dieser Prüfung nicht.
enter-was-meant = War { $code } gemeint?
enter-paper-of = Blatt { $code } von { $name }: { $answered } von { $all } Antworten sind da.
enter-last-answer = Das war die letzte Antwort des Blatts { $code }.
enter-left-blank = leer gelassen
enter-no-place = { $place } gibt es auf diesem Blatt nicht; schreiben Sie zum Beispiel @3b für 3 (b).
enter-read-as = gelesen als { $answer }
enter-as-it-stands = so übernommen, obwohl es nicht zu lesen ist: { $why }
enter-again = Noch einmal eingeben, oder !{ $answer }, um es so zu übernehmen.
enter-on-the-way = Zwischenergebnisse, mit ; dazwischen:

demo-done-once = Die Hauptaufgabe, einmal in einem erfundenen Betrieb ausgeführt:
demo-course = Kurs
demo-chapters = { $count } Kapitel mit Übungen
demo-papers = Blätter
demo-different = { $papers } verschiedene Blätter mit { $questions } Aufgaben
demo-on-screen = dieselben, zum Antworten am Bildschirm
demo-keys = Lösungen
demo-worked = vorgerechnet, für den Prüfer
demo-answers = Antworten
demo-simulated = von simulierten Lehrlingen
demo-results = Ergebnisse
demo-passed = { $passed } von { $papers } bestanden
demo-records = Aufzeichnungen
demo-added-to = jeder Versuch; es kommt nur etwas dazu
demo-reports = Auswertungen
demo-who-is-ready = wer bereit ist, wer noch nicht allein arbeiten darf
demo-good-ones = welche Aufgaben gut sind
demo-wrong-most = Was am häufigsten falsch war:
demo-once = einmal
demo-times = { $count }-mal
demo-open-first = Zuerst öffnen: { $file }

look-pictures-in = { $count } Bilder in { $folder }: { $names }
look-how-it-follows = Wie es folgt
look-machine = { $family }, Maschine { $seed }
look-after = gezogen aus { $name }
look-nothing-wrong = Es fehlt ihr nichts.
look-wrong = Was ihr fehlt: { $faults }.
look-seen = abgelesen
look-true = wahr
look-plants-own = Vom Betrieb selbst
look-may-be-wrong = Was einer fehlen kann (--fault mit der Kennung fragt danach; --fault none nach einer ohne Fehler)
look-of-program = Vom Programm, zum Vergleich:
look-reused = Vom Programm, übernommen in module.toml:
look-nearest = Keine von { $tried } Maschinen ließ sich behalten. Die Nummer { $attempt } kam am nächsten. Was an ihr nicht stimmt:
look-too-little = { $id } ({ $name }) ist { $value }, { $by } unter dem kleinsten erlaubten Wert, { $bound }
look-too-much = { $id } ({ $name }) ist { $value }, { $by } über dem größten erlaubten Wert, { $bound }
look-under = { $id } ({ $name }) ist { $value }, und der kleinste erlaubte Wert ist { $bound }
look-over = { $id } ({ $name }) ist { $value }, und der größte erlaubte Wert ist { $bound }
look-no-result = { $relation } ({ $id }) hat kein Ergebnis: { $why }

bank-no-family = eine Familie { $name } gibt es nicht
bank-meant-program = war { $name } gemeint, eine Familie des Programms?
bank-there-are = es gibt: { $names }
bank-there-are-both = das Modul hat { $names }; das Programm hat { $program }
bank-of-program = { $name } ist eine Familie des Programms, und dieses Modul fragt nicht nach ihr; `drivecourse look { $family }` zeigt sie; soll es nach ihr fragen, gehört in module.toml: [reuse] families = [{ $name }]
bank-mend-near-program = War { $name } gemeint, eine Familie des Programms?
bank-mend-there-are-both = Das Modul hat { $names }; das Programm hat { $program }.
bank-mend-of-program =
    Sie ist eine Familie des Programms, und dieses Modul fragt nicht nach ihr. Schreiben Sie in module.toml, unter [reuse]:
    families = [{ $name }]

check-always = Bei jeder Maschine dieser Familie, der nichts fehlt, steht { $id } („{ $name }“) auf „{ $verdict }“; bei keiner Maschine der Familien des Programms ist das so.
check-always-of = Bei jeder Maschine nach { $machines }, der nichts fehlt, steht { $id } („{ $name }“) auf „{ $verdict }“; bei keiner Maschine der Familien des Programms ist das so.
check-no-such-skill = Das benennt eine Fertigkeit, die keine Aufgabe hat: { $skill }.
check-look-at = Ist Ihr Antrieb so gemeint, dann lassen Sie es. Wenn nicht, sehen Sie nach, woraus es folgt: { $from }.
check-look-at-starts = Ist Ihr Antrieb so gemeint, dann lassen Sie es. Wenn nicht, sehen Sie nach, woraus es folgt: { $from }. Am Anfang davon stehen { $starts }.

record-not-recorded-one = 1 Blatt wurde nicht verbucht; alles andere ja, und von diesem gilt, was schon da war
record-not-recorded = { $count } Blätter wurden nicht verbucht; alles andere ja, und von diesen gilt, was schon da war

spread-page-in = dasselbe als Seite in { $file }
spread-always = immer { $value }
spread-machines = { $family }: { $machines } Maschinen, { $sound } davon in Ordnung, { $rejected } unterwegs verworfen
spread-each-line = Jede Zeile: kleinster … größter Wert (ein Zehntel, die Hälfte, neun Zehntel der Maschinen bleiben darunter)
spread-not-drawn = { $count } von { $all } ließen sich nicht ziehen
spread-title = { $family }: { $machines } Maschinen
look-others = { $count } Größen anderer Themen folgen auch; --topic zeigt die von einem, wie { $topic }
spread-table = Maschinen der Tabelle
spread-each-number = Zu jeder Zahl: kleinster … größter Wert, in Klammern, worunter ein Zehntel, die Hälfte und neun Zehntel der Maschinen bleiben.

solve-given = Gegeben
solve-not-needed = (nicht nötig)
solve-one-of = eines von: { $choices }
solve-or = { $one } oder { $other }
solve-by-from = mit { $method }  aus { $quantities }
solve-makes-only = (macht Maschinen; wird nicht gefragt, nicht gelöst)

practise-caution =
    Das sind Zahlen zum Üben. An einem wirklichen Antrieb gehen vor: freischalten, gegen Wiedereinschalten sichern,
    Energiefreiheit feststellen, Schutzeinrichtungen und Schutzausrüstung, die Regeln und die Befugten Ihres Betriebs.
practise-help = Eine Antwort mit ihrer Einheit schreiben, oder:  ? Hinweis   = Lösungsweg   - weiter   q aufhören
practise-of = { $number } von { $all }: { $title }
practise-no-hint = Es gibt keinen weiteren Hinweis; = zeigt den Lösungsweg.
practise-today = Heute
practise-nothing = nichts beantwortet
practise-counts = { $right } richtig, { $wrong } falsch, { $shown } gezeigt, { $passed } ausgelassen
practise-your-answer = Ihre Antwort zu { $part }
practise-letters = Schreiben Sie die Buchstaben in der richtigen Reihenfolge.
practise-answer-is = Die Antwort ist { $answer }.
practise-read-as = gelesen als { $answer }.

module-here = in diesem Ordner liegt { $file }, also wird sein Modul genommen (wie mit --module .)
papers-other-codes = um andere Nummern zu bekommen, diese Blätter mit einem anderen --name noch einmal anlegen

record-counts = { $exam }: { $new } verbucht, { $corrected } berichtigt, { $same } schon da, { $left } nicht übernommen, { $absent } nicht abgegeben
record-in = in { $file }
record-shared-codes = eine andere Prüfung in den Aufzeichnungen, { $title } ({ $name }), hat auch Blätter mit diesen Nummern: { $codes }; { $mend }
record-name-exam = sie bei override und report answer mit --exam nennen
record-other-answers = Blatt { $code } von { $name }: andere Antworten oder Punkte als verbucht; sie zählen nicht. Sollen sie zählen, mit --correction GRUND --by NAME wiederholen
record-before-correction = Blatt { $code } von { $name }: Antworten von vor einer Berichtigung; die Berichtigung bleibt
record-stays-out = Blatt { $code } von { $name }: auf Verlangen herausgenommen, und bleibt draußen
record-left-behind = Blatt { $code }: Punkte, die ein Prüfer geändert hatte, bleiben bei den früheren Antworten; bitte noch einmal ansehen
override-place = Aufgabe { $question } ({ $part }) des Blatts { $code }
override-stood = { $place }: schon { $marks } von { $of }, aus diesem Grund; es wurde nichts geändert
override-changed = { $place }: jetzt { $marks } von { $of }, vorher { $was }; die ursprünglichen Punkte bleiben verbucht
forget-taken-out = herausgenommen: { $papers } Blätter, { $answers } Antworten, { $changed } geänderte Punkte; Summen bleiben
forget-remove-yourself = Blätter, Lösungen, Dateien mit Antworten, Ergebnisse und Kopien der Aufzeichnungen bleiben, wie sie sind: bitte selbst entfernen

new-made = { $count } Dateien in { $folder }, zu { $topics }; anfangen mit { $file }
new-other-topics = Andere Themen, mit --topic: { $topics }
new-speaks = language = { $code } steht in { $file }: Alles mit diesem Modul spricht diese Sprache. Seine eigenen Texte sind Beispiele auf Englisch: Titel, Namen, Aufgaben, das Kapitel. Überschreiben Sie sie in Ihrer Sprache; die Bemerkungen in seinen Dateien bleiben englisch.
check-read-one = 1 Familie, { $items } Aufgaben gelesen
check-read-more = { $families } Familien, { $items } Aufgaben gelesen
check-one-note = 1 Anmerkung außerdem, die kein Fehler ist; --all nennt sie
check-more-notes = { $count } Anmerkungen außerdem, die keine Fehler sind; --all zählt sie auf
schema-made = { $count } Schemas in { $folder }
manual-made = { $count } Seiten in { $folder }; zu öffnen: { $file }

serve-shows = { $address } zeigt den Kurs, und nur auf diesem Rechner; beenden mit Strg+C
serve-watching = achtet auf { $folder }
serve-built-again = neu gebaut
serve-not-by-this-name = Dieser Server antwortet nur auf 127.0.0.1 und localhost.
serve-read-only = Die Seiten hier kann man lesen, sonst nichts.
serve-no-page = Diese Seite gibt es nicht.
serve-not-served = Nicht, solange der Kurs gezeigt wird.
serve-no-course = Noch kein Kurs
serve-first-failed = Der erste Bau ist nicht gelungen. Sobald einer gelingt, zeigt diese Seite den Kurs.
serve-no-such-page = Keine solche Seite
serve-to-the-start = Zum Anfang des Kurses
serve-ended = Der Server ist beendet; diese Seiten folgen den Dateien nicht mehr.

words-answers = wie eine Antwort gelesen wird, und was zu ihr gesagt wird
words-browser = Üben und Fortschritt im Browser
words-pictures = Karten und Bilder
words-papers = Blätter, Lösungen, Ergebnisse, Nachschlagetabellen
words-reports = Auswertungen aus den Aufzeichnungen
words-commands = was Befehle im Terminal sagen
words-help = Hilfe, nach Befehl und Angabe
words-errors = was Befehle nicht tun können, und wie dem abzuhelfen ist
words-problems = was in einer Datei nicht zu gebrauchen ist, und wie dem abzuhelfen ist
words-skills = was Aufgaben üben
words-registry = Größen, Beziehungen, ihre Quellen und Irrwege
words-families = Maschinen, und was ihnen fehlen kann
words-items = Aufgaben
words-exams = Titel von Prüfungen
words-not-translated = { $count } von { $all } Texten sind nicht übersetzt.

check-look-first = Sehen Sie zuerst nach der Spalte { $column }: Hier hat sie { $own }, und die Maschinen von { $family } haben { $usual }. Stimmt ihre Einheit?
check-strange = Die Spalte { $column } hat { $own }, und die Maschinen von { $family } haben { $usual }.
check-strange-mend = Wenn Ihre Maschinen so sind, lassen Sie es. Wenn nicht, verbessern Sie die Einheit in ihrer Überschrift oder die Werte.
check-sold-sizes = Die Überschrift der Spalte { $column } nennt { $unit }, und jeder Wert darin ist eine Größe, in der Motoren nach { $other } verkauft werden; mit { $values } gibt es keinen.
check-sold-sizes-mend = Wenn auf den Typenschildern { $other } steht, schreiben Sie stattdessen { $heading }. Wenn Ihre Motoren so sind, lassen Sie es.
check-from-to = { $low } bis { $high }

check-hidden = Der Fehler "{ $fault }" ({ $name }) zeigt sich an einer Maschine dieser Familie in keinem Urteil; an Maschinen der Familien des Programms zeigt er sich in { $verdicts }.
check-hidden-mend = So kann ihn niemand finden. Sehen Sie nach, wonach geurteilt wird, und verbessern Sie den Wert, der ihn verdeckt: { $from }. Nur wenn Ihr Antrieb den Fehler nicht haben kann, lassen Sie ihn weg: without = ["{ $fault }"].
check-shared = Von { $all } fehlerfreien Maschinen dieser Familie haben { $count } { $id } („{ $of }“) auf „{ $verdict }“, wie die mit dem Fehler "{ $fault }" ({ $name }): Daran kann niemand den Fehler finden.
check-shared-mend =
    Verbessern Sie den Grenzwert, oder ziehen Sie enger, woraus fehlerfreie Maschinen entstehen, damit sie ihn einhalten. Es folgt aus: { $from }. Oder lassen Sie fehlerfreie Maschinen, die ihn nicht einhalten, neu ziehen:
    { $lines }
check-left-out = Der Fehler { $fault } ({ $name }) ist hier weggelassen, und Maschinen dieser Familie könnten ihn haben: Sie lassen sich ziehen, und man würde ihn sehen.
check-left-out-mend = Wenn Ihr Antrieb ihn nicht haben kann, lassen Sie es. Sonst nehmen Sie ihn aus `without` heraus.
check-here = { $id } ist hier { $value }.
check-table-starts = In Ihrer Tabelle stehen am Anfang davon { $columns }.
check-follows = { $id } ist hier { $own }, und nach der Rechnung { $worked } ({ $relation }: aus { $from }).
check-follows-of = { $machine } hat { $id } mit { $own }, und nach der Rechnung ist es { $worked } ({ $relation }: aus { $from }).
check-inherited = { $machine } hat { $input } mit { $value }; daraus ergibt sich durch Rechnung { $worked }. { $family } legt { $own } fest.
check-inherited-mend = Geben Sie eigene Werte für { $ids } an: in Spalten der Tabelle, wo sich Maschinen unterscheiden, oder unter [fixed]. Oder führen Sie die Maschinen, die so sind, in einer eigenen Familie.
check-follows-mend = Lassen Sie weg, was aus den anderen Werten folgt, oder verbessern Sie einen davon.
check-odd-links = { $machine }: { $value } Glieder sind eine ungerade Zahl, und eine solche Kette schließt nur mit einem gekröpften Glied, das schwächer ist.
check-steep-called-level = { $machine }: chain.lie ist { $value }, und die Linie der Wellenmitten steigt um { $with } (chain.incline).
check-level-called-steep = { $machine }: chain.lie ist { $value }, und die Linie der Wellenmitten steigt nur um { $with } (chain.incline).
check-count-again = Noch einmal zählen; wenn es so ist, lassen.
check-how-it-lies = Den falschen der beiden Werte verbessern; das Fenster für die Bewegung des Leertrums richtet sich danach, wie der Trieb liegt. Wenn es so ist, lassen.
check-unusual-above = { $machines }: { $id } („{ $name }“) ist { $value } oder mehr, wenn nichts fehlt; erdachte Maschinen von { $family } haben höchstens { $bound } ({ $because }).
check-unusual-below = { $machines }: { $id } („{ $name }“) ist { $value } oder weniger, wenn nichts fehlt; erdachte Maschinen von { $family } haben mindestens { $bound } ({ $because }).
check-unusual-mend = Sind Ihre Maschinen so, dann lassen Sie es, oder schreiben Sie eine eigene Grenze dafür ([[limit]]). Wenn nicht, sehen Sie nach, woraus es folgt: { $from }.
check-span-swapped = { $machine }: load.bearing_span ist { $value }, und die Mitte des Wellenendes liegt { $with } vom nahen Lager entfernt (load.shaft_middle).
check-span-mend = Meist liegen die Lager im Gehäuse weiter auseinander als die Mitte des Wellenendes vom nahen Lager: Sind die beiden vertauscht? Ist Ihr Getriebe so, dann lassen Sie es.
check-stages-too-good = { $machine }: drive.efficiency ist { $value } bei { $with } Getriebestufen (drive.stages): Das ist besser, als solche Getriebe sind.
check-stage-of-whole = { $machine }: drive.stage_efficiency ist { $value } für jede von { $with } Stufen.
check-stages-mend = Eine Getriebestufe verliert etwa 1 bis 3 %. Verbessern Sie die Zahl der Stufen oder den Wirkungsgrad. Ist es so, dann lassen Sie es.
check-stage-mend = Eine Getriebestufe verliert etwa 1 bis 3 %, und jede verliert ihren Teil. Ist das der Wirkungsgrad des ganzen Getriebes? 0,94 bei drei Stufen sind 0,98 für jede. Ist es so, dann lassen Sie es.
check-links-apart = { $machine }: chain.links ist { $value }, und der Achsabstand der Zeichnung (chain.centres_planned) verlangt { $with } Teilungen.
check-links-mend = Zählen Sie die Glieder noch einmal, oder verbessern Sie Achsabstand oder Zähnezahlen. Die Zahl der Glieder geht vor: Die Maschine steht so weit auseinander, wie sie es zulässt.
check-swapped = { $machine }: { $low } ist { $value } und liegt über { $high }, das ist { $with }.
check-swapped-of-all = { $low } ist hier { $value } und liegt über { $high }, das ist { $with }.
check-far = { $id } ist hier { $own }, und die Maschinen von { $family } haben { $usual }.
check-far-mend = Ist Ihr Antrieb so, dann lassen Sie es. Wenn nicht, verbessern Sie den Wert oder seine Einheit.
check-swap = Vertauschen Sie die beiden, oder verbessern Sie den falschen Wert.
check-other-topic = Die Aufgabe { $item } gehört zum Thema { $topic }, und nichts, was sie zeigt oder fragt, gehört dazu: Sie fragt nach { $asked }.
check-other-topic-mend = Schreiben Sie topic = { $topic }, oder verbessern Sie, wonach sie fragt. Ist es so gemeint, dann lassen Sie es.
check-unseen = Dieser Irrweg braucht { $ids }; das zeigt die Aufgabe nicht, und es lässt sich aus ihr nicht errechnen.
check-unseen-mend = Auf diese Zahl kommt niemand, der das nicht auswendig weiß. Schreiben Sie ihn mit dem, was die Aufgabe zeigt, { $shown }; oder zeigen Sie es, im Teil: also = [{ $also }]
check-unlisted = Das Kapitel { $file } steht nicht in dieser Liste und ist darum nicht im Kurs.
check-unlisted-mend =
    Fügen Sie eine Zeile wie diese ein, oder nehmen Sie die Datei heraus:
    - [{ $title }]({ $file })
check-drawn-anew = Ihre Zeile zu { $ids } hat daran keinen Anteil: Dieser Fehler legt das selbst neu fest.
check-behind = Wäre { $values } wie bei den Maschinen von { $family }, ließen sie sich ziehen: Verbessern Sie es hier.
check-all-in-one = Alles, was Ihr Antrieb nicht haben kann, steht in einer Zeile; nehmen Sie heraus, was er haben kann.
check-chapters-not-filled = Was Kapitel fragen oder zeigen, geht mit { $id } nicht: { $why } ({ $places })
check-chapters-not-filled-mend = Verbessern Sie diesen Wert oder seine Einheit.
check-stands-in = In Aufgaben dieses Kapitels stehen Maschinen des Programms für Ihre: { $items }.
check-stands-in-of = { $items } ({ $why })
check-stands-in-why = { $family }: { $why }
check-stands-in-only = nur für { $families }
check-stands-in-mend = Wenn Sie wissen, was fehlt, fügen Sie es Ihrer Familie oder ihrer Tabelle hinzu. Sonst lassen Sie es: Die Aufgaben sind richtig, und ihre Maschinen sind nicht die Ihres Betriebs.
check-never = Bei keiner Maschine dieser Familie steht { $id } („{ $name }“) auf „{ $verdict }“; bei { $family } ist das bei { $share } von 100 so. Geurteilt wird nach { $input }.
check-never-by = Bei keiner Maschine dieser Familie steht { $id } („{ $name }“) auf „{ $verdict }“; bei { $family } ist das bei { $share } von 100 so. Geurteilt wird nach { $input }, hier { $value }.
check-never-program = den Familien des Programms
check-never-mend = Ist Ihr Grenzwert so gemeint, dann lassen Sie es. Wenn nicht, verbessern Sie seinen Wert oder seine Einheit.
check-look-first-cell = Sehen Sie zuerst nach { $column } von { $machine }: Es ist { $own }, und die anderen Maschinen hier und die von { $family } haben { $usual }.
check-strange-cell = { $machine } hat { $column } mit { $own }, und die anderen Maschinen hier und die von { $family } haben { $usual }.
check-often = Fehlerfreie Maschinen haben { $id } („{ $name }“) öfter als ausnahmsweise auf „{ $verdict }“: { $machines }; keine fehlerfreie Maschine der Familien des Programms hat das.
check-often-of = { $machine } ({ $count } von { $all })
