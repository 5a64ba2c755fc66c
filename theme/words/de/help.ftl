## Hilfe zu den Befehlen: was jeder tut, und was seine Angaben bedeuten

help-frame-usage = Aufruf:
help-frame-any-options = {"["}OPTIONEN]
help-frame-a-command = BEFEHL
help-frame-commands = Befehle
help-frame-arguments = Angaben
help-frame-options = Optionen
help-frame-default = {"["}Vorgabe: { $value }]
help-frame-possible = {"["}möglich: { $values }]
help-frame-possible-values = Möglich sind:
help-frame-help = Diese Hilfe zeigen
help-frame-help-more = Diese Hilfe zeigen (mehr mit „--help“)
help-frame-help-less = Diese Hilfe zeigen (kürzer mit „-h“)
help-frame-version = Die Version zeigen
help-frame-help-of = Diese Hilfe oder die zu einem Befehl zeigen

help-program = Lehrt, Maschinen mit Getriebe und Kettentrieb in Betrieb zu nehmen: Antriebe als Fälle, ein Kurs zum Üben, für jeden Lehrling ein anderes Aufgabenblatt, und eine Bewertung, die sagt, was falsch lief
    .after = Zum Anfangen:  drivecourse demo
help-language = Sprache von allem, was Menschen lesen, zum Beispiel de [Vorgabe: die der Prüfung, die des Moduls, sonst en]
help-mark-untranslated = In einer anderen Sprache: ⟦ und ⟧ um jeden Text setzen, der nicht übersetzt ist
help-module-module = Ordner eines eigenen Moduls (book, scenarios, theme); was ihm fehlt, kommt aus dem Programm [Vorgabe: dieser Ordner, wenn module.toml darin liegt]

help-demo = Die Hauptaufgabe einmal in einem erfundenen Betrieb ausführen: Kurs, Blätter, Antworten, Ergebnisse
help-demo-out = Ordner, der angelegt wird; eine frühere Vorführung darin wird ersetzt

help-build = Den Kurs bauen: ein Ordner voller Seiten für Telefon, Bildschirm oder Webserver
help-build-out = Ordner für die Seiten; ein früherer Kurs darin wird ersetzt
help-build-units = Einheiten, die die Seiten zuerst zeigen; umschalten kann jeder. Ohne diese Angabe die, die das Modul nennt, sonst beide

help-serve = Den Kurs auf diesem Rechner zeigen und neu bauen, sobald sich eine Datei des Moduls ändert
help-serve-port = Port auf 127.0.0.1; 0 nimmt irgendeinen freien
help-serve-units = Einheiten, die die Seiten zuerst zeigen; umschalten kann jeder. Ohne diese Angabe die, die das Modul nennt, sonst beide
help-choice-units-si = Millimeter, Newton, Kilowatt, Grad Celsius
help-choice-units-us = Zoll, Pfund, Horsepower, Grad Fahrenheit

help-papers = Für jeden auf einer Namensliste ein anderes, versiegeltes Blatt ziehen, mit Lösungen und einer Datei für die Antworten
help-papers-exam = Die Prüfung: ein Name in scenarios/exams oder eine Datei
help-papers-roster = Wer geprüft wird: ein Name in scenarios/rosters oder eine Datei in CSV oder TOML
help-papers-secret = Die Datei mit dem Geheimnis des Prüfers; fehlt sie, wird sie angelegt
help-papers-out = Ordner für die Prüfung: Blätter, Lösungen, Aufzeichnung, Datei für die Antworten
help-papers-name = Name dieser Prüfung; derselbe Name, dasselbe Geheimnis und dieselbe Liste geben dieselben Blätter [Vorgabe: der Name der Prüfungsdatei]
help-papers-plant = Betrieb, der auf den Blättern steht [Vorgabe: der des Moduls]
help-papers-date = Datum, das auf den Blättern steht, so wie es dastehen soll
help-papers-sitting = Der wievielte Versuch: 1, und 2 oder mehr bei Wiederholungen
help-papers-large-print = Großdruck: Buchstaben um die Hälfte größer
help-papers-one-file = Alle Blätter in einer Datei und alle Lösungen in einer anderen, um sie in einem Zug zu drucken
help-papers-pdf = Jede Datei mit Blättern und Lösungen auch als PDF (braucht ein Programm, das mit `--features pdf` gebaut ist)
help-papers-sheet = Mit --pdf: das Papierformat; Seiten, die aus dem Browser gedruckt werden, nehmen das des Druckers
help-choice-sheet-a4 = 210 mm mal 297 mm
help-choice-sheet-letter = 8,5 Zoll mal 11 Zoll
help-papers-screen = Für jeden Prüfling auch eine Seite zum Antworten am Bildschirm, im Ordner `screen`
help-papers-after = Ordner von Prüfungen, deren Maschinen nicht wiederkommen dürfen
help-papers-records = Die Aufzeichnungen, um vor Blattnummern gewarnt zu werden, die darin schon eine andere Prüfung hat

help-grade = Antworten bewerten: Punkte, was falsch lief, Ergebnisse als Seiten, CSV und JSON
help-grade-exam = Der Ordner der Prüfung, den `papers` angelegt hat
help-grade-responses = Dateien mit Antworten, CSV oder JSON
help-grade-out = Ordner für die Ergebnisse [Vorgabe: `results` im Ordner der Prüfung]
help-grade-plant = Betrieb, der auf den Ergebnissen steht [Vorgabe: der auf den Blättern]
help-grade-date = Datum, das auf den Ergebnissen steht, so wie es dastehen soll [Vorgabe: das auf den Blättern]
help-grade-json = JSON ausgeben, für Programme

help-enter = Antworten vom Papier eintippen, jede wird gleich zurückgelesen; es geht weiter, wo man aufgehört hat
    .after =
    Beim Eintippen:
    {" "} -      leer lassen
    {" "} <      zurück
    {" "} @3b    weiter bei 3 (b)
    {" "} ?      Aufgabe zeigen
    {" "} !Text  den Text so übernehmen, wie er dasteht
    {" "} q      aufhören

    Nach jeder Antwort wird alles gespeichert.
help-enter-exam = Der Ordner der Prüfung, den `papers` angelegt hat
help-enter-out = Die Datei mit den Antworten, CSV [Vorgabe: `responses.csv` im Ordner der Prüfung]

help-record = Bewertete Prüfungen verbuchen; noch einmal dasselbe ändert nichts
    .after =
    Antworten oder Punkte, die von den verbuchten abweichen (eine verspätete Datei, ein verbesserter Fehler), werden ohne
    --correction und --by nicht übernommen; mit ihnen sind sie eine neue Zeile, und die früheren bleiben.
help-record-exams = Ordner von Prüfungen, die `grade` bewertet hat
help-record-records = Die Aufzeichnungen; fehlt die Datei, wird sie angelegt
help-record-results = Ordner der Ergebnisse, wenn es nicht der im Ordner der Prüfung ist
help-record-on = Tag der Prüfung, zum Beispiel 2026-11-25 [Vorgabe: heute]
help-record-correction = Warum andere Antworten oder Punkte als die verbuchten zählen sollen
help-record-by = Wer das entscheidet
help-record-renamed = Kennung einer Person, die jetzt anders heißt

help-report = Auswerten, was verbucht ist: eine Person, die Gruppe, Aufgaben, wer fällig ist, eine Antwort bei einem Einspruch
help-report-records = Die Aufzeichnungen
help-report-as-of = Der Tag, für den ausgewertet wird [Vorgabe: heute]
help-report-within = Wie viele Monate im Voraus etwas als bald ablaufend gilt
help-report-out = Ordner für die Auswertung als Seite zum Drucken, CSV und JSON
help-report-json = JSON ausgeben, für Programme
help-report-person = Eine Person: Blätter, Fertigkeiten, Verlauf, was zu üben ist
help-report-person-id = Die Kennung der Person auf der Namensliste, oder der ganze Name
help-report-class = Die Gruppe: wer bereit ist, wer noch nicht allein arbeiten darf, worin sie schwach ist
help-only-group = Nur diese Gruppe der Namensliste
help-only-exam = Nur diese Prüfung, mit ihrem kurzen Namen
help-report-items = Aufgaben: Schwierigkeit, Trennschärfe, häufige Fehler, Varianten; wie verlässlich jede Prüfung ist
help-report-items-item = Nur diese Aufgabe
help-report-items-family = Nur Aufgaben zu dieser Familie von Maschinen
help-report-due = Wer ein neues Blatt braucht: Befähigungen, die abgelaufen sind oder bald ablaufen
help-report-answer = Eine Antwort bei einem Einspruch: wie sie gelesen wurde, was erwartet war, warum die Punkte
help-report-answer-code = Die Blattnummer
help-report-answer-question = Die Nummer der Aufgabe
help-report-answer-part = Der Buchstabe der Teilaufgabe
help-report-answer-exam = Welche Prüfung, wenn mehrere in den Aufzeichnungen die Nummer haben: ihr kurzer Name oder der Anfang ihrer Prüfsumme

help-override = Verbuchte Punkte mit Begründung ändern; die ursprünglichen bleiben verbucht
help-override-code = Die Blattnummer
help-override-question = Die Nummer der Aufgabe
help-override-part = Der Buchstabe der Teilaufgabe
help-override-marks = Punkte, die zählen sollen
help-override-exam = Welche Prüfung, wenn mehrere in den Aufzeichnungen die Nummer haben: ihr kurzer Name oder der Anfang ihrer Prüfsumme
help-override-reason = Warum
help-override-by = Wer entscheidet
help-override-on = Tag der Entscheidung [Vorgabe: heute]
help-override-records = Die Aufzeichnungen

help-forget = Die Daten einer Person auf Verlangen aus den Aufzeichnungen nehmen; Summen bleiben
help-forget-person = Die Kennung der Person auf der Namensliste
help-forget-records = Die Aufzeichnungen
help-forget-yes = Ja, für immer

help-look = Einen Antrieb ganz zeigen: was man sieht, was verborgen ist, was ihm fehlt
help-look-family = Name einer Familie von Antrieben; ohne ihn werden die Familien aufgezählt
help-look-seed = Die Nummer der Maschine: dieselbe Nummer ist überall dieselbe Maschine
help-look-units = Einheiten, die gezeigt werden; ohne das die, die das Modul nennt, sonst si
help-look-paths = Zeigen, wie jede Größe aus denen davor folgt
help-look-figures = Ordner für jedes Bild, das sich von der Maschine zeichnen lässt, als SVG
help-look-topic = Nur die Größen dieses Themas zeigen, zum Beispiel chain
help-look-fault = Eine Maschine mit diesem Fehler, nach seiner Kennung; zweimal für zwei Fehler; none für eine, der nichts fehlt
help-look-machine = Die erste Maschine dieses Namens in der Tabelle der Familie, von der Nummer an
help-look-spread = So viele Maschinen ziehen und zeichnen, wie jede Größe streut
help-look-page = Mit --spread: die Diagramme als Seite
help-look-json = JSON ausgeben, für Programme

help-practise = Im Terminal üben: Aufgabe, Antwort, was falsch lief, Lösungsweg
help-practise-topic = Nur dieses Thema, zum Beispiel chain; ein Name, den es nicht gibt, zählt alle auf
help-practise-item = Nur diese Aufgabe
help-practise-family = Nur Maschinen dieser Familie
help-practise-seed = Wo die Zahlen anfangen; dieselbe Zahl gibt dieselben Aufgaben
help-practise-count = Wie viele Aufgaben
help-practise-units = Einheiten, die gezeigt werden; ohne das die, die das Modul nennt, sonst si

help-solve = Irgendeine Größe aus dem ausrechnen, was gegeben ist, mit dem Lösungsweg
    .after =
    Beispiel:  drivecourse solve load.overhung drive.output_torque="4500 in-lbf" \
    {" "}           chain.pitch_dia_small="5.98 in" load.connection_factor=1 \
    {" "}           load.location_factor=1 load.service_factor=1.25

    Ein Name darf auf seinen letzten Teil gekürzt werden, wo das eindeutig ist: overhung, wear, span.
help-solve-quantity = Die gesuchte Größe, zum Beispiel load.overhung
help-solve-givens = Was gegeben ist: Name=Wert, mit Einheit
help-solve-by = Eine Methode, die zu nehmen ist, wo es mehrere gibt (siehe --list)
help-solve-units = Einheiten, die gezeigt werden
help-solve-list = Größen und Methoden aufzählen; mit einem Wort die, die dazu passen. Was keine Methode hat oder nur eine, die so bezeichnet ist, wird gegeben und nie gefragt
help-solve-json = JSON ausgeben, für Programme

help-new = Ein kleines eigenes Modul anlegen: Kurs, Antriebe, Aufgaben, Prüfung, Namensliste, alles in den Dateien erklärt
help-new-folder = Ordner, der angelegt wird
help-new-topic = Themen, einige von drive, mount, oil, align, fasten, chain, load, start, heat, vibrate, noise, follow, mit Kommas und ohne Leerzeichen dazwischen; die englischen Worte eines Kapitels gehen auch, "overhung load" in Anführungszeichen: Jedes bringt sein Kapitel und seine Spalten in der Tabelle der Maschinen mit [Vorgabe: mount,chain,load,heat]
help-new-units = Die Einheiten Ihrer Schilder: Tabelle, Grenzen und Prüfung beginnen darin
help-new-like = Die Familie des Programms, die Ihr Antrieb abwandelt; `drivecourse look` nennt sie

help-check = Familien, Aufgaben, Prüfungen, Namenslisten und Kapitel eines Moduls lesen und jeden Fehler in einem Durchgang melden
help-check-all = Auch die Aufgaben aufzählen, und was kein Fehler ist: Irrwege, die nichts ausmachen, verschwenderische Familien
help-check-json = JSON ausgeben, für Programme

help-schema = Das JSON-Schema einer Art von Datei ausgeben, für Editoren, die beim Schreiben ergänzen und prüfen
help-schema-sort = Die Art von Datei
help-schema-out = Ordner, in den geschrieben wird; ohne eine Art alle
help-choice-sort-family = Familien von Antrieben: scenarios/families/*.toml
help-choice-sort-item = Aufgaben: scenarios/items/*.toml
help-choice-sort-exam = Prüfungen: scenarios/exams/*.toml
help-choice-sort-roster = Namenslisten: scenarios/rosters/*.toml
help-choice-sort-module = Die Einstellungen eines Moduls: module.toml

help-words = Jeden Text ausgeben, den Menschen lesen, mit seiner Kennung: womit ein Übersetzer arbeitet
help-words-missing = Nur das, wofür die Sprache keinen Text hat
help-words-only = Nur Texte, in deren Kennung dieses Wort vorkommt, zum Beispiel heat
help-words-out = Datei, in die geschrieben wird, statt ins Terminal

help-manual = Das Handbuch anlegen: eine Seite für jede Arbeit, im Browser zu öffnen
help-manual-out = Ordner für die Seiten; ein früheres Handbuch darin wird ersetzt

help-value-tag = SPRACHE
help-value-folder = ORDNER
help-value-units = EINHEITEN
help-value-port = PORT
help-value-exam = PRÜFUNG
help-value-roster = LISTE
help-value-file = DATEI
help-value-name = NAME
help-value-plant = BETRIEB
help-value-date = DATUM
help-value-sitting = VERSUCH
help-value-sheet = FORMAT
help-value-responses = ANTWORTEN
help-value-reason = GRUND
help-value-id = KENNUNG
help-value-months = MONATE
help-value-group = GRUPPE
help-value-item = AUFGABE
help-value-family = FAMILIE
help-value-code = NUMMER
help-value-question = AUFGABE
help-value-part = TEIL
help-value-marks = PUNKTE
help-value-person = PERSON
help-value-seed = ZAHL
help-value-topic = THEMA
help-value-fault = FEHLER
help-value-machines = MASCHINEN
help-value-count = ANZAHL
help-value-quantity = GRÖSSE
help-value-name-value = NAME=WERT
help-value-method = METHODE
help-value-word = WORT
help-value-topics = THEMEN
help-value-kind = ART
