### Was an den Aufzeichnungen nicht stimmt, oder mit ihnen nicht geht

records-problem-missing = die Aufzeichnungen { $file } gibt es nicht
records-problem-foreign = { $file } enthält keine Aufzeichnungen dieses Programms oder ist beschädigt: { $why }
records-problem-newer = { $file } enthält Aufzeichnungen im Format { $format }, die eine spätere Version dieses Programms geschrieben hat; verwenden Sie jene Version
records-problem-busy = ein anderes Programm schreibt gerade in die Aufzeichnungen; versuchen Sie es noch einmal, wenn es fertig ist
records-problem-unusable = die Aufzeichnungen lassen sich nicht verwenden: { $why }
records-problem-other-tables = sie enthält andere Tabellen
records-problem-damaged = die Aufzeichnungen sind beschädigt: { $why }
records-problem-lost-row = die Aufzeichnungen sind beschädigt: eine Zeile verweist auf nichts
records-problem-one-loose = 1 Zeile der Aufzeichnungen hängt in der Luft
records-problem-loose = { $count } Zeilen der Aufzeichnungen hängen in der Luft
records-problem-not-made = die Datei { $file } für die Aufzeichnungen lässt sich nicht anlegen: { $why }

## Was aufgenommen oder geändert wird

records-problem-no-reason = eine Änderung der Aufzeichnungen braucht einen Grund von höchstens { $most } Zeichen
records-problem-no-author = eine Änderung der Aufzeichnungen braucht den Namen dessen, der entscheidet, mit höchstens { $most } Zeichen
records-problem-renamed = { $id } heißt in den Aufzeichnungen { $known }, in dieser Prüfung aber { $name }: Ist das eine Person mit neuem Namen, sagen Sie es mit { $option }; wenn nicht, geben Sie einer der beiden in der Teilnehmerliste eine andere Kennung
records-problem-not-theirs = das Blatt { $code } gehört in den Aufzeichnungen einer anderen Person als { $id }
records-problem-place = Aufgabe { $question } ({ $part }) des Blatts { $code }
records-problem-no-place = in den Aufzeichnungen fehlt: { $place }
records-problem-at-most-one = { $place } bringt höchstens 1 Punkt, nicht { $earned }
records-problem-at-most = { $place } bringt höchstens { $of } Punkte, nicht { $earned }

## Was gesucht wird

records-problem-nobody = niemand in den Aufzeichnungen hat die Kennung { $id }
records-problem-several-named = { $count } Leute in den Aufzeichnungen heißen { $name }: { $ids }; mit der Kennung nach einem fragen
records-problem-nobody-by = bis { $day } hat niemand in den Aufzeichnungen die Kennung { $id }
records-problem-nobody-by-but = bis { $day } hat niemand in den Aufzeichnungen die Kennung { $id }; ähnlich sind: { $near }
records-problem-later = in den Aufzeichnungen steht bis { $day } nichts zu { $id }, wohl aber später
records-problem-no-exam = keine Prüfung { $exam } in den Aufzeichnungen hat ein Blatt { $code }; { $exams }
records-problem-no-answers = in den Aufzeichnungen gibt es keine Antworten zu einem Blatt { $code }
records-problem-several = mehrere Prüfungen in den Aufzeichnungen haben ein Blatt { $code }: sagen Sie mit --exam, welche gemeint ist; { $exams }
records-problem-called = --exam { $called } für { $title } ({ $name }), abgelegt am { $day }
records-problem-no-day = { $text } ist kein Tag des Kalenders; schreiben Sie Jahr-Monat-Tag, etwa 2026-11-25
