## Was an Dateien nicht zu brauchen ist: TOML, Familien, Maschinentabellen, Ausdrücke

problem-file-did-you-mean = War { $name } gemeint?
problem-file-no-quantity = Eine Größe { $name } gibt es nicht.
problem-file-list-quantities = `drivecourse solve --list` nennt alle Größen.
problem-file-no-possibility = { $written } ist keine der Möglichkeiten von { $name }.
problem-file-called-here = { $written } heißt hier { $name }.
problem-file-choose = Zur Wahl stehen: { $choices }.
problem-file-strands = { $written } ist { $size } mit der Zahl der Stränge dahinter; sie gehört zu chain.strands.
problem-file-strands-mend =
    { $called } Schreiben Sie es so:
    { $lines }
problem-file-percent = Die Einheit fehlt: Das ist ein Anteil in %.
problem-file-percent-mend = Schreiben Sie { $percent }, oder { $share } für { $written } des Ganzen.
problem-file-part = Das wird gezählt, und ein Teil davon ist keins.
problem-file-part-mend = Eine ganze Zahl schreiben.
problem-file-thousands = Das Komma kann Tausender oder Dezimalstellen abtrennen.
problem-file-thousands-mend = Schreiben Sie { $whole } oder { $decimal }.
problem-file-per-length = Das gilt je Meter oder Fuß von etwas und ist deshalb an jeder Maschine eine andere Länge.
problem-file-per-length-mend = Rechnen Sie die Länge für jede Maschine aus, und schreiben Sie sie statt dessen in eine Spalte der Tabelle der Maschinen: { $column }.
problem-result-not-above = { $input } ist { $value } und muss mehr als { $min } sein
problem-result-not-below = { $input } ist { $value } und muss weniger als { $max } sein
problem-result-below = { $input } ist { $value }, und das Mindeste ist { $min }
problem-result-above = { $input } ist { $value }, und das Meiste ist { $max }
problem-result-outside = { $input } ist { $value }, außerhalb von { $min } bis { $max } (SI-Einheiten)
problem-result-too-small = { $input } beträgt { $value }, möglich ist mindestens { $min } (SI-Einheiten)
problem-result-too-large = { $input } beträgt { $value }, möglich ist höchstens { $max } (SI-Einheiten)
problem-result-not-settling = die Ablesungen nähern sich noch keinem Endwert
problem-result-no-solution = nichts erfüllt die Vorgaben ({ $sought })

problem-file-not-valid = Das ist hier nicht gültig: { $why }.
problem-file-no-name = { $name } gibt es hier nicht.
problem-file-known = Hier gibt es: { $names }.
problem-file-lacks = Hier fehlt { $name }.
problem-file-lacks-mend =
    Schreiben Sie eine Zeile wie diese:
    { $line }
problem-file-lacks-heading-mend =
    Schreiben Sie eine Überschrift wie diese und darunter, was dazugehört:
    { $line }
problem-file-no-variant = { $name } ist hier keine der Möglichkeiten.
problem-file-other-sort = Hier steht { $is }, verlangt ist aber { $wanted }.
problem-file-text = Text
problem-file-number = die Zahl { $number }
problem-file-a-list = eine Liste
problem-file-a-date = ein Datum
problem-file-a-table = eine Tabelle
problem-file-wanted-text = Text in Anführungszeichen
problem-file-wanted-whole = eine ganze Zahl
problem-file-wanted-count = eine ganze Zahl, null oder mehr
problem-file-wanted-number = eine Zahl
problem-file-wanted-truth = true oder false
problem-file-wanted-list = eine Liste in eckigen Klammern
problem-file-quote = Setzen Sie es in Anführungszeichen.
problem-file-unquote-number = Schreiben Sie nur die Zahl, ohne Anführungszeichen und ohne Einheit.
problem-file-write-number = Schreiben Sie eine solche Zahl.
problem-file-write-truth = Schreiben Sie true oder false, ohne Anführungszeichen.
problem-file-write-list = Setzen Sie es in eckige Klammern, mehrere mit Kommas dazwischen.
problem-file-write-table = Geben Sie ihm eine eigene Überschrift, [{ $name }], und schreiben Sie darunter, was dazugehört, oder setzen Sie das in geschweifte Klammern.
problem-file-write-so =
    Schreiben Sie es so:
    { $line }
problem-file-curly = diese Anführungszeichen sind nicht die geraden
problem-file-curly-mend = An beider Stelle " schreiben; ein Texteditor, der keine Textverarbeitung ist, lässt sie gerade.
problem-file-line-elsewhere = Das ist eine Größe: Ihre Zeile steht unter [fixed] oder [draw], über den Teilen mit doppelten Klammern.
problem-file-unquoted = Text steht in Anführungszeichen
problem-file-comma = Zahlen stehen in der Datei mit Dezimalpunkt
problem-file-heading-open = diese Überschrift ist nicht geschlossen
problem-file-heading-mend = Schreiben Sie sie als [name], mit einer Klammer an jedem Ende.
problem-file-headings-mend = Schreiben Sie sie als [[name]], mit zwei Klammern an jedem Ende.
problem-file-no-value = hier fehlt der Wert
problem-file-no-value-mend = Schreiben Sie name = wert: einen Namen, das Gleichheitszeichen und was er ist.
problem-file-one-sign = hier steht ein zweites Gleichheitszeichen
problem-file-one-sign-mend = Lassen Sie eines stehen, oder setzen Sie den ganzen Wert in Anführungszeichen.
problem-file-no-comma = zwischen zwei Einträgen dieser Liste fehlt das Komma
problem-file-no-comma-mend = Setzen Sie eines dazwischen.
problem-file-extra-comma = hier steht ein Komma zu viel
problem-file-extra-comma-mend = Streichen Sie es.
problem-file-list-open = diese Liste ist nicht geschlossen
problem-file-list-open-mend = Setzen Sie an ihr Ende ein ].
problem-file-list-unclosed = Diese Liste ist nicht geschlossen.
problem-file-table-open = was hier mit einer geschweiften Klammer beginnt, ist nicht geschlossen
problem-file-table-open-mend = Setzen Sie an sein Ende eine geschweifte Klammer.
problem-file-text-open = dieser Text ist nicht geschlossen oder enthält, was in Text nicht stehen kann
problem-file-no-fellow = es fehlt ein Anführungszeichen
problem-file-text-open-mend = Text beginnt und endet in derselben Zeile, mit demselben Anführungszeichen; um Text über mehrere Zeilen stehen je drei.
problem-file-twice = das steht hier zum zweiten Mal
problem-file-twice-mend = Streichen Sie eines davon, oder führen Sie zusammen, was zu beiden gehört.
problem-file-two-brackets-mend =
    Davon kann es mehrere geben, also steht jede Überschrift in doppelten Klammern:
    { $line }
problem-file-bad-key = das kann kein Name sein
problem-file-bad-key-mend = Setzen Sie ihn in Anführungszeichen, oder schreiben Sie nur Buchstaben ohne Umlaute, Ziffern, - und _.
problem-file-left-over = dahinter steht etwas, das nicht hierher gehört
problem-file-left-over-mend = Setzen Sie den ganzen Wert in Anführungszeichen, beginnen Sie für den nächsten Namen eine neue Zeile, oder setzen Sie # vor eine Anmerkung.
problem-file-nought = eine Zahl beginnt nicht mit null
problem-file-nought-mend = Lassen Sie die Null weg, oder setzen Sie den ganzen Wert in Anführungszeichen.
problem-file-in-list = in einer Liste steht ein Gleichheitszeichen
problem-file-in-list-mend = Schließen Sie die Liste davor mit einem ], oder setzen Sie es mit seinem Namen in geschweifte Klammern.
problem-file-list-not-begun = hier endet eine Liste, die nicht beginnt
problem-file-list-not-begun-mend = Nehmen Sie das ] heraus, oder setzen Sie ein [ dorthin, wo die Liste beginnt.
problem-file-table-not-begun = eine geschweifte Klammer schließt, was keine begonnen hat
problem-file-table-not-begun-mend = Nehmen Sie die Klammer heraus, oder setzen Sie eine öffnende dorthin, wo es beginnt.
problem-file-no-such-number = das ist weder eine Zahl noch Text in Anführungszeichen
problem-file-no-such-number-mend = Schreiben Sie eine Zahl, etwa 12 oder 0.5, oder setzen Sie Text in Anführungszeichen.
problem-file-no-such-date = das ist kein Datum
problem-file-no-such-date-mend = Schreiben Sie es als 2026-01-31, oder setzen Sie Text in Anführungszeichen.
problem-file-escape = ein umgekehrter Schrägstrich steht vor etwas, zu dem er nicht passt
problem-file-escape-mend = Schreiben Sie ihn zweimal, oder setzen Sie den Text in einfache Anführungszeichen.

problem-formula-too-long = die Formel ist länger als 1000 Zeichen
problem-formula-unexpected = hier steht unerwartet „{ $sign }“
problem-formula-too-deep = die Klammern sind zu tief geschachtelt
problem-formula-no-number = { $written } ist keine Zahl
problem-formula-too-early = die Formel hört zu früh auf
problem-formula-no-argument = nach { $name } gehört der Wert in Klammern
problem-formula-unit-open = die Klammer der Einheit ist nicht geschlossen
problem-formula-open = eine Klammer ist nicht geschlossen

problem-expression-unreadable = Dieser Ausdruck lässt sich nicht lesen: { $why }.
problem-expression-left = Links vom Gleichheitszeichen steht nur die Einheit der Antwort.
problem-expression-left-mend = Schreiben Sie etwa [mm] = ..., oder gar kein Gleichheitszeichen.
problem-expression-no-kind = keine bekannte Art von Größe
problem-expression-not-bare = Mit einer Einheit links muss rechts eine reine Zahl stehen; dort steht { $is }.
problem-expression-other-kind = Verlangt ist hier { $wanted }, wie bei { $name }; dort steht { $is }.
problem-expression-brackets = Schreiben Sie die Einheiten der Größen in eckigen Klammern, wie in chain.sag[mm].
problem-expression-mend = Verbessern Sie den Ausdruck, oder schreiben Sie alle Einheiten in eckigen Klammern und die der Antwort links: [{ $si }] = ... oder [{ $us }] = ...
problem-expression-mend-alone = Verbessern Sie den Ausdruck, oder schreiben Sie alle Einheiten in eckigen Klammern und die der Antwort links: [{ $unit }] = ...
problem-expression-is-choice = { $name } ist eine Auswahl; daraus lässt sich nichts berechnen.
problem-expression-take-out = Streichen Sie es.
problem-expression-no-unit = { $unit } ist keine Einheit dafür: Verlangt ist { $kind }.
problem-expression-other-unit = Schreiben Sie eine, in der die Größe gemessen wird.
problem-expression-write-units = Um mit reinen Zahlen zu rechnen, schreiben Sie Einheiten in eckigen Klammern, wie in chain.sag[mm].
problem-expression-multiplied = Eine Temperatur wird malgenommen; das geht nur mit einer Temperaturdifferenz oder mit Temperaturen, von denen ein Mittelwert genommen wird.
problem-expression-one-scale = Eine Temperatur wird hier als reine Zahl genommen, die auf der anderen Skala eine andere ist: Auf Prüfungsblättern in °F oder in °C wäre die Antwort falsch.
problem-expression-one-scale-mend = Schreiben Sie es ohne Einheiten, etwa { $example }: Dann ist es die Zahl auf der Skala, die man abliest.
problem-expression-different-kinds = Hier werden Größen verschiedener Art addiert oder subtrahiert.
problem-expression-exponent = Ein Exponent muss eine reine Zahl sein.
problem-expression-power = Nur eine reine Zahl lässt sich mit diesem Exponenten potenzieren.
problem-expression-function = { $name } lässt sich von einer solchen Größe nicht bilden.

problem-family-both = { $name } ist zugleich fest und gezogen.
problem-family-both-mend = Streichen Sie es unter [fixed] oder unter [draw].
problem-family-pool-row = Diese Zeile [[pool]] nennt andere Größen als die erste.
problem-family-pool-row-mend = Geben Sie jeder Zeile der Maschinentabelle dieselben Größen.
problem-family-two-tables = Die Maschinentabelle steht zweimal: in einer eigenen Datei und hier unter [[pool]].
problem-family-two-tables-mend = Streichen Sie eine davon.
problem-family-no-table = Neben dieser Datei gibt es keine Tabelle { $name }.
problem-family-no-table-mend = Legen Sie sie als CSV in UTF-8 dorthin, oder verbessern Sie ihren Namen.
problem-family-two-faults = Es gibt zwei Fehler namens { $name }.
problem-family-two-faults-mend = Geben Sie einem davon eine andere Kennung.
problem-family-no-name = Der Name dieser Familie ist leer.
problem-family-no-name-mend = Schreiben Sie, wie Fragen die Maschine mitten im Satz nennen: name = "Lagerförderer-Antrieb".
problem-family-no-fault-name = Der Name dieses Fehlers ist leer.
problem-family-no-fault-name-mend = Schreiben Sie, was nicht stimmt, wie man es sagt: name = "Kette zu lose".
problem-family-weight = Das Gewicht dieses Fehlers ist keine positive Zahl.
problem-family-weight-mend = Schreiben Sie weight = 1, oder lassen Sie es weg.
problem-family-no-like = Es gibt keine fehlerfreie Familie { $name }, der diese gleichen könnte.
problem-family-no-like-at-all = Es gibt noch keine. Lassen Sie diese alles selbst sagen, ohne `like`.
problem-family-no-like-mend = Es gibt { $names }. Nennen Sie eine davon, oder bringen Sie zuerst die in Ordnung, die Sie meinen.
problem-family-without = Es gibt keine andere Familie, von der ein Fehler wegzulassen wäre.
problem-family-without-mend = Nennen Sie sie mit `like`.
problem-family-shares = Die Anteile unter [faults] müssen zwischen 0 und 1 liegen.
problem-family-shares-mend = Schreiben Sie etwa healthy = 0.4 für vier Maschinen von zehn.
problem-family-dotted = Ein Name mit einem Punkt steht in Anführungszeichen; ohne sie ist { $name } der Anfang einer Tabelle.
problem-family-not-quoted = Ein Wert von { $name } ist Text und steht in Anführungszeichen.
problem-family-write-so =
    Schreiben Sie es so:
    { $lines }
problem-family-list = `{ $key }` verlangt eine Liste.
problem-family-list-mend = Schreiben Sie { $key } = ["...", "..."].
problem-family-order = Der erste Wert von `between` ist größer als der zweite.
problem-family-order-mend = Schreiben Sie den kleineren zuerst.
problem-family-two-values = `between` verlangt zwei Werte.
problem-family-two-values-mend = Schreiben Sie between = ["kleinster", "größter"].
problem-family-no-choice = Hier steht nichts zur Wahl.
problem-family-no-choice-mend = Setzen Sie mindestens einen Wert in die Liste.
problem-family-no-draw = Eine Ziehung mit { $keys } gibt es nicht.
problem-family-empty-draw = Eine leere Ziehung gibt es nicht.
problem-family-stated-in-draw = Ein Wert mit seiner Quelle steht unter [fixed]: die Zeile dorthin setzen.
problem-family-no-draw-mend = Möglich sind {"{"} between = [kleinster, größter] {"}"}, {"{"} choose = [...] {"}"}, {"{"} about = Mitte, spread = Abweichung {"}"}, {"{"} of = Größe, between = [kleinster, größter] {"}"} oder {"{"} of = Größe, choose = [...] {"}"}.
problem-family-stated = Ein fester Wert ist ein Wert, oder ein Wert mit seiner Quelle.
problem-family-stated-mend = Schreiben Sie "...", oder {"{"} value = "...", source = "...", because = "..." {"}"}; `because` kann wegbleiben.
problem-family-no-share = { $name } kann kein Anteil von { $other } sein.
problem-family-no-share-mend = Ein Anteil braucht zwei Größen einer Art, die sich malnehmen lassen, etwa zwei Längen.
problem-family-two-shares = `between` verlangt zwei Anteile, den kleineren zuerst.
problem-family-two-shares-mend = Schreiben Sie ["90 %", "105 %"].
problem-family-unreadable = { $written } lässt sich nicht lesen: { $why }
problem-family-unreadable-as = { $written } lässt sich nicht als { $name } lesen: { $why }
problem-family-never-below = { $id } („{ $name }“) liegt nie unter { $end }; hier steht { $value }.
problem-family-never-above = { $id } („{ $name }“) liegt nie über { $end }; hier steht { $value }.
problem-family-never-mend = Berichtigen Sie den Wert.
problem-family-ratio-mend = Gemeint ist die Drehzahl am Eingang durch die am Ausgang: Schreiben Sie { $value }.
problem-family-in-percent-mend = Schreiben Sie { $value } %, wenn das gemeint ist.
problem-family-takes = Verlangt ist { $kind }.
problem-family-no-between = Kein Wert ist mindestens der eine und höchstens der andere.
problem-family-no-between-mend = Vertauschen Sie at_least und at_most.
problem-family-healthy = Eine Grenze eines Fehlers kann nicht von gesunden Maschinen verlangt werden.
problem-family-healthy-mend = Streichen Sie healthy = true, oder setzen Sie die Grenze aus dem Fehler heraus.
problem-family-no-bound = Diese Grenze begrenzt nichts.
problem-family-no-bound-mend = Geben Sie ihr at_least, at_most oder beides.

problem-family-like-no-fault = { $family } hat keinen Fehler namens { $name }.
problem-family-like-no-fault-mend = Streichen Sie ihn aus `without`.
problem-family-like-machine-of = die Maschine { $machine } von { $family }
problem-family-like-first-of = die erste Maschine von { $family }

problem-table-open = Dieses Anführungszeichen wird nie geschlossen.
problem-table-open-mend = Schließen Sie es, oder verdoppeln Sie es innerhalb einer Zelle.
problem-table-empty = Die Tabelle ist leer.
problem-table-empty-mend = Ihre erste Zeile nennt Größen, etwa chain.size oder drive.motor_power [kW].
problem-table-no-headings = Die Überschriften fehlen: Die erste Zeile einer Tabelle nennt, was in jeder Spalte steht.
problem-table-no-headings-mend =
    Setzen Sie eine Zeile wie diese davor, mit einer Überschrift für jede Spalte:
    { $line }
problem-table-two-columns = Es gibt zwei Spalten dieses Namens.
problem-table-two-columns-mend = Streichen Sie eine davon.
problem-table-cells = Diese Zeile hat { $cells } Zellen unter { $headings } Überschriften.
problem-table-one-cell = Diese Zeile hat eine Zelle unter { $headings } Überschriften.
problem-table-cells-mend = Geben Sie jeder Maschine unter jeder Überschrift eine Zelle; eine Zelle, in der das Trennzeichen vorkommt, steht in Anführungszeichen.
problem-table-comma = Diese Zeile hat { $cells } Zellen unter { $headings } Überschriften; vielleicht ist das Komma in { $written } ein Dezimalkomma.
problem-table-comma-mend = Schreiben Sie { $number }, oder { $quoted } mit den Anführungszeichen, oder trennen Sie alle Zellen durch Semikolons. Ist es keines, streichen Sie die überzählige Zelle.
problem-table-comma-three-mend = Schreiben Sie { $number }, ohne Komma. Ist es keines, streichen Sie die überzählige Zelle.
problem-table-strands-mend = { $called } Schreiben Sie hier { $size }, und { $strands } in eine Spalte chain.strands.
problem-table-two-machines = Es gibt zwei Maschinen namens { $name }; die andere steht in Zeile { $line }.
problem-table-two-machines-mend = Geben Sie einer davon einen anderen Namen, oder streichen Sie sie.
problem-table-no-machine = In der Tabelle steht keine Maschine.
problem-table-no-machine-mend = Fügen Sie für jede Maschine eine Zeile an.
problem-table-nameless = Diese Maschine hat keinen Namen, und die anderen haben einen.
problem-table-nameless-mend = Schreiben Sie ihren Namen, oder nehmen Sie die Zeile heraus. Hat keine Maschine einen Namen, dann nehmen Sie die Spalte machine heraus.
problem-table-note-mend = { $mend } Streichen Sie eine Spalte mit anderem, oder beginnen Sie ihre Überschrift mit #, um sie als Anmerkung zu behalten.
problem-table-no-unit = { $unit } ist keine Einheit von { $name }: Verlangt ist { $kind }.
problem-table-no-unit-bare = Streichen Sie die Klammer aus der Überschrift.
problem-table-no-unit-mend = Schreiben Sie etwa [{ $si }] oder [{ $us }].
problem-table-no-unit-alone = Schreiben Sie etwa [{ $unit }].
problem-table-lacks = Dieser Maschine fehlt { $name }.
problem-table-lacks-mend = Füllen Sie die Zelle aus, mit dem Üblichen, wo niemand den Wert kennt; oder streichen Sie die Spalte, dann wird nicht gefragt, was sie braucht; oder die Maschine.

problem-plan-twice = { $name } steht sowohl in der Maschinentabelle als auch unter [fixed] oder [draw].
problem-plan-twice-mend = Streichen Sie es an einer der beiden Stellen.
problem-plan-fault-alone = Der Fehler „{ $fault }“ ändert { $name }, das die Familie selbst nicht zieht.
problem-plan-fault-alone-mend = Geben Sie { $name } unter [fixed] oder [draw] einen gesunden Wert.
problem-plan-share = { $name } wird als Anteil von { $other } gezogen, und das ist kein Ausgangswert.
problem-plan-share-mend = Legen Sie { $other } selbst fest oder ziehen Sie es, und zwar nicht als Anteil.
problem-plan-undetermined = Nichts in dieser Familie bestimmt { $name }.
problem-plan-undetermined-mend = Streichen Sie die Grenze, oder legen Sie fest oder ziehen Sie, woraus die Größe folgt.
problem-plan-lacks-one = Diese Maschinentabelle tritt an die Stelle der von { $family }, und ihr fehlt eine von deren Spalten.
problem-plan-lacks = Diese Maschinentabelle tritt an die Stelle der von { $family }, und ihr fehlen { $count } von deren Spalten.
problem-plan-lacks-mend =
    Fügen Sie sie hinzu, jede Maschine mit ihren eigenen Werten von Schild, Zeichnung oder Katalog. Ihre Überschriften:
    { $headings }
    Was bei allen Ihren Maschinen gleich ist, kann stattdessen unter [fixed] stehen. Als Beispiel, über das Sie Ihre eigenen Werte schreiben, was { $machine } hat:
    {"["}fixed]
    { $lines }
problem-plan-disagrees = { $name } ist hier auf { $value } festgelegt, folgt aber als { $worked } aus { $inputs } ({ $relation }).
problem-plan-otherwise = { $name } bleibt { $value }, wie in der Familie, die diese abwandelt, folgt aber als { $worked } aus { $inputs } ({ $relation }).
problem-plan-otherwise-mend = Unter [fixed] auch schreiben, was dazu passt:
    { $line }
problem-plan-disagrees-mend =
    Streichen Sie es, oder verbessern Sie, woraus es folgt. Ist es eine Vorgabe Ihres Betriebs, sagen Sie, wo sie steht:
    { $line }

problem-draw-cannot = Von der Familie „{ $family }“ ließ sich in { $attempts } Versuchen keine Maschine { $wanted } ziehen. { $why }
problem-draw-sound = ohne Fehler
problem-draw-with-fault = mit dem Fehler { $fault }
problem-draw-with-faults = mit den Fehlern { $faults }
problem-draw-broke = { $share } % davon hielten die Grenze nicht ein: { $limit }.
problem-draw-no-result = In { $share } % davon hatte eine Berechnung kein Ergebnis: Die Ziehungen reichen über das hinaus, wofür die Formeln gelten.
problem-draw-beyond = { $id }{ $notes }: „{ $name }“ war am nächsten daran { $value }, und { $bound }
problem-draw-of-family = von der Familie { $family }
problem-draw-least = erlaubt ist mindestens { $value }
problem-draw-largest = erlaubt ist höchstens { $value }
problem-draw-often-limit = { $count }-mal lag es an der Grenze von { $limit }{ $with }
problem-draw-often-no-result = { $count }-mal hatte eine Berechnung kein Ergebnis{ $with }
problem-draw-often-with = davon { $count }-mal mit dem Fehler „{ $fault }“ ({ $name })
problem-draw-narrow = Ziehen Sie enger, oder verbessern Sie die Ausgangswerte.
problem-draw-widen = Weiten Sie die Grenze, oder ziehen Sie enger, was sie nicht einhält.
problem-draw-mend-values = Verbessern Sie die Werte, die sie nicht einhalten.
problem-draw-other-limit =
    Stimmt Ihr Antrieb und die Grenze nicht, setzen Sie hier eine andere an die Stelle der von { $family }; ändern Sie, was sie erlaubt:
    { $lines }
problem-draw-leave-out =
    Stimmen Ihre Werte, hat Ihr Antrieb zu viel Reserve für diesen Fehler oder kann ihn nicht haben: Lassen Sie ihn weg, neben `like`:
    { $line }
    Sonst verbessern Sie die Werte, wegen denen er nicht gezogen werden kann.

problem-nearest-follows = Dort folgt es aus { $values }.
problem-nearest-mend-own = Diesen Wert ändern, oder woran er gemessen wird ({ $inputs }).
problem-nearest-mend-it = Diesen Wert ändern.
problem-nearest-own = Aus der Datei dieser Familie geht darin ein: { $values }.
problem-nearest-also = Außerdem: { $limit }.
problem-nearest-refused = „{ $relation }“ ({ $id }) hatte keins: { $why }. Es folgt aus { $values }.
problem-family-topics = Es gibt keine andere Familie, aus der Themen zu übernehmen wären.
problem-family-no-topic = Ein Thema { $name } gibt es nicht.
problem-family-topics-are = Die Themen sind { $names }.
