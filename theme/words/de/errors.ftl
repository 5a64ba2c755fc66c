## Was Befehle nicht tun können, und wie dem abzuhelfen ist

# Wie ein Befehl aufgerufen wurde.
usage-error = Fehler:
usage-tip = Hinweis:
usage-see-help = Mehr dazu sagt „--help“.
usage-unknown-argument = die Angabe „{ $argument }“ gibt es hier nicht
usage-unknown-command = den Befehl „{ $command }“ gibt es nicht
usage-missing = diese Angaben fehlen:
usage-missing-command = nach „{ $command }“ fehlt ein Befehl
usage-no-value = „{ $argument }“ braucht einen Wert, und es steht keiner da
usage-bad-value = „{ $value }“ ist kein Wert für „{ $argument }“
usage-bad-value-because = „{ $value }“ ist kein Wert für „{ $argument }“: { $because }
usage-too-many = der Wert „{ $value }“ für „{ $argument }“ ist einer zu viel
usage-too-few = „{ $argument }“ braucht mindestens { $least } Werte; da sind { $given }
usage-wrong-number = „{ $argument }“ braucht { $wanted } Werte; da sind { $given }
usage-twice = die Angabe „{ $argument }“ darf nur einmal dastehen
usage-not-with = die Angabe „{ $argument }“ geht nicht zusammen mit „{ $other }“
usage-not-with-these = die Angabe „{ $argument }“ geht nicht zusammen mit:
usage-not-utf-8 = eine der Angaben ist kein Text in UTF-8
usage-needs-equals = der Wert von „{ $argument }“ muss hinter einem Gleichheitszeichen stehen
usage-other = mit diesen Angaben geht es nicht
usage-no-number = das ist keine ganze Zahl, wie sie hier gebraucht wird
usage-no-digits = da steht keine Zahl
usage-too-large = die Zahl ist zu groß oder zu klein
usage-seed = hier gehört eine ganze Zahl von 0 bis { $most } hin; mit derselben Zahl wird wieder dasselbe gezogen
usage-out-of-range = { $value } liegt nicht zwischen { $least } und { $most }
usage-no-character = es muss genau ein Zeichen sein
usage-like-argument = eine ähnliche Angabe gibt es: „{ $name }“
usage-like-command = einen ähnlichen Befehl gibt es: „{ $name }“
usage-like-value = einen ähnlichen Wert gibt es: „{ $name }“
usage-as-value = wenn „{ $name }“ selbst ein Wert sein soll, „-- { $name }“ schreiben
usage-topics-apart = Themen stehen in einem Stück: --topic "{ $topics }"
usage-in-command = „{ $name }“ gibt es

# Dateien und Ordner.
error-cannot-read = { $file } lässt sich nicht lesen
error-no-file = die Datei { $file } gibt es nicht; auf ihren Namen sehen und darauf, in welchem Ordner man ist
error-is-folder = { $file } ist ein Ordner; eine Datei darin nennen
error-cannot-list = der Ordner { $folder } lässt sich nicht auflisten
error-cannot-look-into = in { $folder } lässt sich nicht hineinsehen
error-cannot-write = { $file } lässt sich nicht schreiben; dort wurde nichts geändert
error-cannot-write-in = in { $folder } lässt sich nicht schreiben; dort wurde nichts geändert
error-cannot-place = { $file } kommt nicht an seinen Platz
error-cannot-make-folder = der Ordner { $folder } lässt sich nicht anlegen
error-file-in-the-way = der Ordner { $folder } lässt sich nicht anlegen: { $file } ist eine Datei; bitte einen anderen Ordner nehmen
error-not-text = { $file }:{ $line }: die Datei ist kein Text in UTF-8; bitte als UTF-8 speichern
error-cannot-use = { $file } ist nicht zu gebrauchen
error-unusable =
    { $file } ist nicht zu gebrauchen:
    { $problems }
error-not-made = { $file } wird nicht angelegt

# Module und ihre Wörter.
error-no-module-folder = den Ordner { $folder } gibt es nicht; den Ordner des Moduls mit --module nennen
error-no-module = { $folder } ist kein Modul: keiner der Ordner book, scenarios und theme ist darin; den Ordner, in dem sie liegen, mit --module nennen
error-scenarios =
    die Szenarien sind nicht zu gebrauchen:
    { $problems }
error-words =
    die Wörter sind nicht zu gebrauchen:
    { $problems }
error-module-language = Für die Sprache { $code } gibt es keine Wörter.
error-module-language-mend = Es gibt sie für { $codes }; Englisch braucht keine Zeile. Für eine andere legen Sie Dateien theme/words/{ $code }/*.ftl in das Modul.
error-language-changed = die Sprache hat sich von { $before } in { $after } geändert: diesen Lauf beenden und neu beginnen
error-which-language = die Sprache fehlt: --missing --language de
error-no-such-text = kein Text hat { $word } in seiner Kennung; { $mend }
error-words-lists-all = `drivecourse words` zählt sie alle auf
error-did-you-mean = war { $name } gemeint?

# Blätter und Prüfungen.
error-holds-exam = in { $folder } liegt schon eine Prüfung: { $name } ist darin; einen anderen Ordner mit --out nennen oder diese wegräumen
error-no-papers =
    es lassen sich keine Blätter ziehen:
    { $problems }
error-paper-not-drawn = das Blatt von { $name } lässt sich nicht zeichnen
error-no-exam = eine Datei { $name } gibt es nicht, und keine Prüfung heißt so ({ $there })
error-no-roster = eine Datei { $name } gibt es nicht, und keine Namensliste heißt so ({ $there })
error-no-random-numbers = das System gibt keine Zufallszahlen her: { $error }
error-no-exam-folder = { $folder } ist kein Ordner einer Prüfung: { $record } fehlt darin
error-without-pdf = dieses Programm ist ohne PDF gebaut; mit `cargo run --release --features pdf -- papers ...` bauen (einmal, einige Minuten), oder --pdf weglassen und die Seiten aus dem Browser drucken

# Bewerten und Eintippen.
error-other-words = die Sprache oder ihre Wörter sind nicht die, mit denen die Blätter angelegt wurden
error-no-answers = in dem, was abgegeben wurde, ist keine Antwort zu einem Blatt dieser Prüfung; es wurde nichts geschrieben
error-not-graded =
    es wurde nichts bewertet:
    { $mismatches }
error-not-graded-changed =
    es wurde nichts bewertet:
    { $mismatches }
    Die Familien oder Aufgaben haben sich geändert, seit die Blätter angelegt wurden.
error-would-lose-rows =
    { $file } würde Zeilen verlieren, wenn die Datei neu geschrieben würde; sie verbessern oder mit --out eine andere nennen:
    { $notices }

# Aufzeichnungen.
error-results-of-one = --results nennt die Ergebnisse einer einzigen Prüfung; die anderen für sich verbuchen
error-nothing-recorded = von { $exam } wurde nichts verbucht
error-exam-not-graded = { $exam } ist nicht bewertet: { $file } gibt es nicht; zuerst `drivecourse grade` aufrufen
error-no-sound-results = { $file }:{ $line }: das sind keine brauchbaren Ergebnisse: { $error }; neu bewerten
error-of-another-exam = { $file } enthält die Ergebnisse einer anderen Prüfung; neu bewerten
error-does-not-agree = { $file }: das Blatt { $code } passt nicht zu { $exam }; neu bewerten
error-no-paper-code = { $code } ist keine Blattnummer
error-no-letter = eine Teilaufgabe wird mit ihrem Buchstaben genannt: a, b, c ...
error-nobody = niemand in den Aufzeichnungen hat die Kennung { $id }
error-forget-say-yes = das nimmt { $name } ({ $id }) für immer aus den Aufzeichnungen, mit allen Blättern ({ $count }), und behält nur Summen; wenn das gemeint ist, --yes dazuschreiben

# Vorführung, Ansehen, Üben.
error-no-plant = der eingebaute Betrieb fehlt
error-demo-is-a-file = { $folder } ist eine Datei oder liegt in einer; einen neuen Ordner mit --out nennen
error-demo-holds-files = in { $folder } liegen Dateien, die von keiner Vorführung sind; es wurde nichts geändert; einen neuen Ordner mit --out nennen
error-no-fault = { $family } hat keinen Fehler { $fault }; { $mend }
error-look-no-machine = Die Tabelle von { $family } hat keine Maschine { $name }; { $mend }
error-look-no-names = Ihre Maschinen haben keine Namen; --seed zeigt eine nach ihrer Nummer
error-look-machines-are = es gibt { $names }
error-look-machine-not-drawn = Keine von { $tried } gezogenen Maschinen war { $name }; `drivecourse check` sagt, was ihr im Weg steht
error-look-lists-faults = `drivecourse look { $family }` zählt die möglichen auf
error-no-question = die Aufgabe { $item } hat keine Frage zu { $family }: { $reason }
error-no-practice-topic = ein Thema { $topic } gibt es nicht{ $hint }
error-nothing-fits = zu alldem passt keine Aufgabe; --topic, --item oder --family weglassen
error-no-topic =
    ein Thema { $topic } gibt es nicht; es gibt:
    { $topics }
error-no-topic-but =
    ein Thema { $topic } gibt es nicht; { $meant } Es gibt:
    { $topics }

# Rechnen.
error-which-quantity = welche Größe ist gesucht? Zum Beispiel load.overhung; `drivecourse solve --list` nennt alle
error-given-is-asked = { $quantity } ist gerade gesucht; bei den Angaben weglassen, dann wird es aus den übrigen ausgerechnet
error-given-twice = { $quantity } ist zweimal gegeben
error-givens-contradict =
    die Angaben widersprechen einander:
    { $which }
error-givens-disagree = { $quantity } ist als { $given } gegeben, aber aus { $from } folgt { $worked }{ $off }
error-leave-out = Die zweifelhafte Angabe weglassen oder verbessern.
error-and = { $one } und { $other }
error-solve-names-all = `drivecourse solve --list` nennt alle
error-no-quantity = eine Größe { $name } gibt es nicht; { $hint }
error-no-quantity-with = keine Größe hat { $word } in ihrem Namen; `drivecourse solve --list` nennt alle
error-ambiguous = mit { $name } kann { $names } gemeint sein: bitte ausschreiben
error-no-method = eine Methode { $method } gibt es nicht; `drivecourse solve --list WORT` nennt die Methoden jeder Größe
error-no-method-but = eine Methode { $method } gibt es nicht; { $meant } `drivecourse solve --list WORT` nennt die Methoden jeder Größe
error-not-a-given = { $text } ist keine Angabe; als Name=Wert schreiben, zum Beispiel chain.sag="11 mm"
error-no-choice = { $written } steht nicht zur Wahl: { $choices }.{ $called }
error-given-cannot-be-read = was für { $quantity } gegeben ist, lässt sich nicht lesen. { $error }
error-does-not-follow = { $quantity } folgt nicht aus dem, was gegeben ist.
error-no-way-to-it = { $quantity } folgt nicht aus dem, was gegeben ist. Keine Methode ergibt es: Es wird abgelesen oder genannt, nicht ausgerechnet.
error-give-also = mit { $method } braucht es noch:
error-no-result = der Schritt „{ $step }“ hat kein Ergebnis: { $error }.
error-holds-for = Er gilt für: { $limits }

# Module anlegen, prüfen, zeigen.
error-new-not-empty = { $folder } ist schon da und nicht leer; es wurde nichts geändert; einen neuen Ordner nennen
error-new-module-there = in { $folder } liegt schon ein Modul; es wurde nichts geändert; einen neuen Ordner nennen. Soll in dieses ein Thema dazu, ergänzen Sie es in { $family } unter `topics`: `drivecourse check --module { $folder }` sagt dann, was dazugehört
error-starter-lacks = dem Anfang eines Moduls fehlt { $file }
error-starter-no-text = { $file } im Anfang eines Moduls ist kein Text
error-check-one = 1 Fehler wurde gefunden
error-check-more = { $count } Fehler wurden gefunden
error-cannot-listen = auf Port { $port } lässt sich nicht hören: { $error }; einen anderen mit --port nennen, oder 0 für irgendeinen
error-which-schema = eine Art von Datei nennen ({ $kinds }), oder mit --out einen Ordner für alle

# Was nur `check` merkt.
check-not-text = Die Datei ist kein Text in UTF-8.
check-not-text-mend = Als UTF-8 speichern.
check-lacks-column = Der Maschinentabelle fehlt die Spalte { $columns }; was sie braucht, wird zu dieser Familie nicht gefragt.
check-lacks-columns = Der Maschinentabelle fehlen die Spalten { $columns }; was sie braucht, wird zu dieser Familie nicht gefragt.
check-lacks-column-mend = Eintragen, was von den Maschinen bekannt ist.
check-topic-not-asked = Diese Familie ist auch für Fragen zu { $topic }, und das Modul hat keine Aufgabe dazu.
check-topic-not-asked-mend = „{ $topic }“ in module.toml unter [reuse] zu items hinzufügen, oder das Thema hier herausnehmen.
check-example-source = { $name } hat noch die Quelle des Beispiels, { $source }; Blätter und Lösungswege würden sie zeigen.
check-example-source-mend = Hinschreiben, wo der Wert steht, oder die Zeile herausnehmen.
check-topic-chapter = Ein Kapitel dazu steht im Kurs, wenn book/SUMMARY.md es aufführt: - [{ $title }]({ $chapter })
check-wasteful = Auf jede Maschine, die bleibt, kommen { $rate } verworfene; { $most }.
check-wasteful-undrawn = Auf jede Maschine, die bleibt, kommen { $rate } verworfene; { $most }. { $count } von { $all } Maschinen ließen sich gar nicht ziehen.
check-wasteful-mend = Die Ziehungen enger fassen, die dagegen verstoßen, oder die Grenze weiter.
check-favoured = { $share } % der Maschinen, die bleiben, sind { $machine }; gleichmäßig verteilt wären es { $even } %. Was die anderen am meisten verwirft: { $most }.
check-favoured-mend = Die Werte der anderen verbessern, die dagegen verstoßen, oder die Grenze weiter fassen; `drivecourse look { $family } --spread 300` zeigt die Anteile.
check-no-family = Die Aufgabe { $item } nennt eine Familie, die es nicht gibt: { $name }.
check-no-picture = Ein Bild { $name } gibt es nicht.
check-no-fault = Keine Familie hat einen Fehler { $name }.
check-no-fault-mend = `drivecourse look FAMILIE` zeigt, was ihren Maschinen fehlen kann.
check-there-are = Es gibt { $names }.
check-all-families = allen Familien
check-no-difference = { $item } ({ $part }): „{ $cause }“ macht bei den meisten Maschinen keinen Unterschied und wird bei diesen nicht erkannt, in { $families }
check-alike = { $item } ({ $part }): „{ $one }“ und „{ $other }“ lassen sich bei den meisten Maschinen nicht unterscheiden in { $families }
check-no-difference-in = „{ $cause }“ macht bei den meisten Maschinen keinen Unterschied und wird bei diesen nicht erkannt, in { $count } Teilen von Aufgaben: { $places }
check-alike-own = { $item } ({ $part }): Bei den meisten Maschinen führen diese { $count } Fehler zu ein und derselben Antwort, in { $families }:
check-alike-own-mend = Es ist nichts zu tun: Wer sie gibt, dem werden zwei davon genannt, und welcher es war, kann niemand sagen.
check-alike-own-in = Bei den meisten Maschinen führen diese { $alike } Fehler zu ein und derselben Antwort, in { $count } Teilen von Aufgaben: { $places }:
check-alike-in = „{ $one }“ und „{ $other }“ lassen sich bei den meisten Maschinen nicht unterscheiden in { $count } Teilen von Aufgaben: { $places }
check-place = { $item } ({ $part }) in { $families }
check-idle-turn = Dieser Irrweg gibt nie eine eigene Antwort: Er kommt auf die richtige, oder er braucht, was keine Familie bestimmt.
check-idle-turn-mend = Seinen Ausdruck verbessern oder ihn herausnehmen.
check-never-asked = Keine Familie passt zur Aufgabe { $item }: Sie wird nie gestellt. { $reasons }.
check-never-asked-mend = Nach Größen fragen, die eine Familie bestimmt, oder eine Familie diese bestimmen lassen.
check-do-not-fit = Die Aufgabe { $item } nennt Familien, die nicht zu ihr passen. { $reasons }.
check-do-not-fit-mend = Sie aus ihren Familien herausnehmen oder die Familie verbessern.
check-no-template = Eine Seitenvorlage ist nicht zu gebrauchen: { $error }
check-row = Zeile { $row } der Tabelle
check-as-named = als { $name }, { $wanted }
