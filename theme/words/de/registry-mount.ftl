## Größen, Beziehungen, ihre Quellen und Fehler: Aufstellung und Kippfuß

quantity-mount-along = Abstand der Füße längs der Welle

quantity-mount-across = Abstand der Füße quer zur Welle

quantity-mount-height-1 = Höhe der Auflage unter Fuß 1

quantity-mount-height-2 = Höhe der Auflage unter Fuß 2

quantity-mount-height-3 = Höhe der Auflage unter Fuß 3

quantity-mount-height-4 = Höhe der Auflage unter Fuß 4

quantity-mount-weight-along = Abstand der Wirklinie des Gewichts von Fuß 1 längs der Welle

quantity-mount-weight-across = Abstand der Wirklinie des Gewichts von Fuß 1 quer zur Welle

quantity-mount-twist = Verwindung des Grundrahmens

quantity-mount-loose-foot = Fuß, der nicht aufliegt
    .choice-1 = Fuß 1
    .choice-2 = Fuß 2
    .choice-3 = Fuß 3
    .choice-4 = Fuß 4
    .choice-5 = keiner

quantity-mount-rocked-foot = Fuß, der sich beim Kippeln des Gehäuses abhebt
    .choice-1 = Fuß 1
    .choice-2 = Fuß 2
    .choice-3 = Fuß 3
    .choice-4 = Fuß 4
    .choice-5 = keiner

quantity-mount-gap = Spalt unter dem losen Fuß

quantity-mount-gap-limit = größter zulässiger Spalt unter einem Fuß

quantity-mount-gap-verdict = Urteil über den Spalt
    .choice-1 = innerhalb der Grenze
    .choice-2 = unterlegen oder plan bearbeiten

quantity-mount-shim-stock = vorrätige Unterlegbleche
    .choice-1 = metrische Bleche
    .choice-2 = Zollbleche

quantity-mount-shim-most = größte zulässige Zahl der Bleche in einem Paket

quantity-mount-shim-leaves = Zahl der Bleche im Paket

quantity-mount-shim-total = Dicke des Blechpakets

quantity-mount-gap-left = nach dem Unterlegen verbleibender Spalt

quantity-mount-rise-1 = Anstieg der Messuhr beim Lösen von Fuß 1

quantity-mount-rise-2 = Anstieg der Messuhr beim Lösen von Fuß 2

quantity-mount-rise-3 = Anstieg der Messuhr beim Lösen von Fuß 3

quantity-mount-rise-4 = Anstieg der Messuhr beim Lösen von Fuß 4

quantity-mount-worst-rise = größter Anstieg der Messuhr an den vier Füßen

quantity-mount-foot-length = Länge des Fußes längs der Welle

quantity-mount-foot-width = Breite des Fußes quer zur Welle

quantity-mount-corner-1 = Spalt an Ecke 1 des schrägen Fußes

quantity-mount-corner-2 = Spalt an Ecke 2 des schrägen Fußes

quantity-mount-corner-3 = Spalt an Ecke 3 des schrägen Fußes

quantity-mount-corner-4 = Spalt an Ecke 4 des schrägen Fußes

quantity-mount-corner-mean = Spalt in der Mitte des schrägen Fußes

quantity-mount-slope-along = Neigung des Fußes längs der Welle

quantity-mount-slope-across = Neigung des Fußes quer zur Welle

quantity-mount-wedge = Keilmaß des Fußes von Ecke zu Ecke

quantity-mount-corner-residual = Abweichung jeder Ecke von einem ebenen Fuß

quantity-mount-foot-fit = Sitz des schrägen Fußes
    .choice-1 = liegt eben auf
    .choice-2 = paralleler Spalt
    .choice-3 = Keilspalt
    .choice-4 = verbogener Fuß oder Schmutz

quantity-mount-level = Neigung des Grundrahmens nach der Richtwaage

quantity-mount-level-run = Länge des Grundrahmens, die in Waage gebracht wird

quantity-mount-height-change = Höhenunterschied über den Grundrahmen

quantity-mount-level-limit = größte für den Ölstand zulässige Neigung

quantity-mount-level-verdict = Urteil über die waagerechte Lage
    .choice-1 = genau genug in Waage
    .choice-2 = neu in Waage bringen

relation-mount-twist-diagonals = Verwindung des Grundrahmens aus den vier Auflagehöhen
    .limits = Füße im Uhrzeigersinn beziffert, von oben gesehen, 1 nach 2 längs der Welle; eine hohe Auflage zählt positiv
    .source = Statik eines starren Gehäuses auf vier Auflagen
    .turn-sides = Sie haben die Füße einer Seite gepaart; die Verwindung vergleicht die beiden Diagonalen, 1 mit 3 und 2 mit 4.
    .turn-all-added = Sie haben alle vier Höhen zusammengezählt; eine Diagonale zählt positiv, die andere negativ.
    .turn-halved = Sie haben die Verwindung halbiert; der vierte Fuß zeigt sie ganz.
    .turn-one-diagonal = Sie haben die Höhen einer Diagonale zusammengezählt und die andere weggelassen; die Verwindung ist die Differenz der beiden Summen.
    .turn-other-way-round = Sie haben Diagonale 1-3 von Diagonale 2-4 abgezogen; bei der Verwindung zählt Diagonale 1-3 positiv.

relation-mount-loose-foot-weight = Fuß, der nicht aufliegt, aus den Auflagehöhen und der Wirklinie des Gewichts
    .method = Zählen Sie die Höhen jeder Diagonale zusammen. Beide Füße der höheren Diagonale liegen auf. Von der tieferen liegt der Fuß auf der Seite des Gewichts auf, und der gegenüberliegende hängt frei. Gleiche Summen: keiner ist lose.
    .limits = starres Gehäuse, Höhen klein gegen den Grundriss
    .source = Statik eines starren Gehäuses auf vier Auflagen
    .turn-wrong-diagonal = Sie haben den losen Fuß auf der hohen Diagonale gesucht; deren beide Füße tragen das Gehäuse, frei hängt er also auf der tiefen.
    .turn-weight-side = Sie haben den Fuß genannt, den das Gewicht niederdrückt; der liegt auf, und der gegenüberliegende Fuß derselben Diagonale hängt frei.
    .turn-lowest-pad = Sie haben die tiefste Auflage genommen; die hat auch ein geneigter Grundrahmen, vergleichen Sie also zuerst die Diagonalen und sehen Sie dann, auf welcher Seite das Gewicht liegt.

relation-mount-rocked-foot-opposite = Fuß, der sich beim Kippeln des Gehäuses abhebt
    .method = Das Gehäuse kippelt über die hohe Diagonale, der Spalt wandert also zum gegenüberliegenden Fuß der tiefen.
    .source = Statik eines starren Gehäuses auf vier Auflagen
    .turn-same-foot = Sie haben den losen Fuß selbst genannt; niedergedrückt schließt er sich, und der Spalt wandert ans andere Ende seiner Diagonale.
    .turn-foot-beside-it = Sie haben den nächsten Fuß derselben Seite genannt; der steht auf der hohen Diagonale und liegt weiter auf.
    .turn-foot-across = Sie haben den Fuß quer gegenüber genannt; der steht auf der hohen Diagonale und liegt weiter auf.

relation-mount-gap-twist = Spalt unter dem losen Fuß aus der Verwindung
    .limits = starres Gehäuse, Höhen klein gegen den Grundriss
    .source = Statik eines starren Gehäuses auf vier Auflagen
    .turn-halved = Sie haben den Spalt halbiert; ein Fuß hängt um die ganze Verwindung frei, während die drei anderen aufliegen.
    .turn-both-feet-added = Sie haben die Spalte beider Füße der Diagonale zusammengezählt; nur einer öffnet sich jeweils, und jeder zeigt den ganzen Spalt.

relation-mount-gap-worst-rise = Spalt unter dem losen Fuß aus dem größten Anstieg der Messuhr
    .limits = feste Schrauben hatten das Gehäuse auf alle vier Auflagen heruntergezogen
    .source = Geometrie einer Ebene durch drei Punkte
    .turn-both-feet-added = Sie haben die Anstiege beider Füße der Diagonale zusammengezählt; jeder zeigt den ganzen Spalt, und ein Blech unter einem von ihnen behebt beide.
    .turn-halved = Sie haben den Anstieg halbiert; der ganze Anstieg ist der Spalt, der unter einem Fuß zu füllen ist.
    .turn-averaged = Sie haben die vier Anstiege gemittelt; die Füße, die unten bleiben, verdecken den, der sich hebt.

relation-mount-gap-verdict-limit = Urteil über den Spalt unter einem Fuß
    .method = An der Grenze oder darunter darf der Fuß bleiben, wie er ist; darüber wird der Grundrahmen plan bearbeitet oder, als zweitbeste Lösung, der Fuß unterlegt.
    .limits = übliche Grenze 0,05 mm (0,002 in), strenger 0,025 mm (0,001 in), übliche Praxis
    .turn-halved = Sie haben den Spalt vor dem Urteil auf zwei Füße verteilt; ein Fuß zeigt den ganzen Spalt und wird danach beurteilt.
    .turn-both-feet-added = Sie haben vor dem Urteil die Spalte beider Füße der Diagonale zusammengezählt; jeder Fuß wird nach seinem eigenen Spalt beurteilt.
    .turn-pad-heights = Sie haben die Höhe einer Auflage beurteilt; ein nur geneigter Grundrahmen lässt keinen Spalt, beurteilen Sie also den Spalt unter dem Fuß.

relation-mount-rise-1-loosened = Anstieg der Messuhr, wenn nur Fuß 1 gelöst wird
    .method = Das starre Gehäuse steht am gelösten Fuß auf der Höhe der Ebene durch die drei anderen; liegt die Auflage höher, bewegt sich nichts.
    .limits = Füße im Uhrzeigersinn beziffert, von oben gesehen, 1 nach 2 längs der Welle; eine hohe Auflage zählt positiv
    .source = Geometrie einer Ebene durch drei Punkte

relation-mount-rise-2-loosened = Anstieg der Messuhr, wenn nur Fuß 2 gelöst wird
    .method = Das starre Gehäuse steht am gelösten Fuß auf der Höhe der Ebene durch die drei anderen; liegt die Auflage höher, bewegt sich nichts.
    .limits = Füße im Uhrzeigersinn beziffert, von oben gesehen, 1 nach 2 längs der Welle; eine hohe Auflage zählt positiv
    .source = Geometrie einer Ebene durch drei Punkte

relation-mount-rise-3-loosened = Anstieg der Messuhr, wenn nur Fuß 3 gelöst wird
    .method = Das starre Gehäuse steht am gelösten Fuß auf der Höhe der Ebene durch die drei anderen; liegt die Auflage höher, bewegt sich nichts.
    .limits = Füße im Uhrzeigersinn beziffert, von oben gesehen, 1 nach 2 längs der Welle; eine hohe Auflage zählt positiv
    .source = Geometrie einer Ebene durch drei Punkte

relation-mount-rise-4-loosened = Anstieg der Messuhr, wenn nur Fuß 4 gelöst wird
    .method = Das starre Gehäuse steht am gelösten Fuß auf der Höhe der Ebene durch die drei anderen; liegt die Auflage höher, bewegt sich nichts.
    .limits = Füße im Uhrzeigersinn beziffert, von oben gesehen, 1 nach 2 längs der Welle; eine hohe Auflage zählt positiv
    .source = Geometrie einer Ebene durch drei Punkte

relation-mount-worst-rise-largest = Größter Anstieg der Messuhr, Fuß für Fuß
    .method = Bei freigeschaltetem und gegen Wiedereinschalten gesichertem Antrieb lösen Sie jeweils eine Schraube, die anderen bleiben fest; lesen Sie den Anstieg ab, ziehen Sie sie wieder an und gehen Sie zum nächsten Fuß.
    .limits = übliche Grenze 0,05 mm (0,002 in) an jedem einzelnen Fuß, übliche Praxis
    .turn-largest-total = Sie haben die Anstiege zusammengezählt; jeder Fuß wird nach seinem eigenen Anstieg beurteilt, abgelesen bei drei festen anderen Schrauben.
    .turn-averaged = Sie haben die vier Anstiege gemittelt; die Füße, die unten bleiben, verdecken den, der sich hebt.

relation-mount-shim-leaves-pack = Zahl der Bleche im Paket
    .method = Nehmen Sie von allen Paketen, deren Dicke höchstens um die Grenze vom Spalt abweicht, das mit den wenigsten Blechen; von diesen das, das dem Spalt am nächsten kommt; von diesen das mit dem dicksten Blech. Eine Blechdicke darf mehrmals vorkommen.
    .limits = höchstens 3 bis 5 Bleche je Paket, wenige dicke statt vieler dünner; sie halten nur, solange die Schrauben fest bleiben, also nach dem Einlauf nachprüfen
    .turn-many-thin-leaves = Sie haben dünne Bleche gestapelt; viele dünne wirken wie eine Feder unter dem Fuß, beginnen Sie also mit dem dicksten Blech, das passt.
    .turn-one-leaf-past-the-limit = Sie haben das nächstdickere einzelne Blech genommen; es hebt den Fuß über die Grenze hinaus, setzen Sie das Paket also aus mehr Blechen zusammen.
    .turn-exact-fit = Sie haben den Spalt bis auf den letzten Rest gefüllt; mit weniger Blechen liegt das Paket schon innerhalb der Grenze, und weniger Bleche halten besser.
    .turn-halved = Sie haben den halben Spalt unterlegt; der eine Fuß, der frei hängt, braucht den ganzen.
    .turn-both-feet-added = Sie haben die Spalte beider Füße der Diagonale zusammen unterlegt; ein Fuß braucht nur einen Spalt.

relation-mount-shim-total-pack = Dicke des Blechpakets
    .method = Nehmen Sie von allen Paketen, deren Dicke höchstens um die Grenze vom Spalt abweicht, das mit den wenigsten Blechen; von diesen das, das dem Spalt am nächsten kommt; von diesen das mit dem dicksten Blech. Eine Blechdicke darf mehrmals vorkommen.
    .limits = höchstens 3 bis 5 Bleche je Paket, wenige dicke statt vieler dünner; sie halten nur, solange die Schrauben fest bleiben, also nach dem Einlauf nachprüfen
    .turn-rounded-up = Sie haben das nächste Blech genommen, das dicker ist als der Spalt; ein zu dickes Paket öffnet die andere Diagonale, bleiben Sie also innerhalb der Grenze.
    .turn-gap-itself = Sie haben den Spalt selbst angegeben; das Paket besteht aus vorrätigen Blechen, aus so wenigen, wie für die Grenze genügen.
    .turn-halved = Sie haben den halben Spalt unterlegt; der eine Fuß, der frei hängt, braucht den ganzen.
    .turn-both-feet-added = Sie haben die Spalte beider Füße der Diagonale zusammen unterlegt; ein Fuß braucht nur einen Spalt.

relation-mount-gap-left-shim = Nach dem Unterlegen verbleibender Spalt
    .limits = übliche Grenze 0,05 mm (0,002 in), übliche Praxis
    .source = ein Blech unter einem Fuß der tiefen Diagonale verringert die Verwindung um seine Dicke
    .turn-wrong-diagonal = Sie haben das Blech unter einen Fuß der hohen Diagonale gelegt; so kommt seine Dicke zum Spalt dazu.
    .turn-both-feet-of-a-side = Sie haben beide Füße einer Seite unterlegt; das neigt das Gehäuse und lässt die Verwindung, wie sie war.
    .turn-both-feet-of-the-diagonal = Sie haben das Paket unter beide Füße der tiefen Diagonale gelegt; so geht seine Dicke zweimal von der Verwindung ab.

relation-mount-corner-1-plane = Spalt an Ecke 1 des schrägen Fußes
    .limits = Ecken im Uhrzeigersinn beziffert, von oben gesehen, 1 nach 2 längs der Welle; Neigungen zählen ab Ecke 1
    .source = Ausgleichsebene durch vier Ecken nach kleinsten Quadraten

relation-mount-corner-2-plane = Spalt an Ecke 2 des schrägen Fußes
    .limits = Ecken im Uhrzeigersinn beziffert, von oben gesehen, 1 nach 2 längs der Welle; Neigungen zählen ab Ecke 1
    .source = Ausgleichsebene durch vier Ecken nach kleinsten Quadraten

relation-mount-corner-3-plane = Spalt an Ecke 3 des schrägen Fußes
    .limits = Ecken im Uhrzeigersinn beziffert, von oben gesehen, 1 nach 2 längs der Welle; Neigungen zählen ab Ecke 1
    .source = Ausgleichsebene durch vier Ecken nach kleinsten Quadraten

relation-mount-corner-4-plane = Spalt an Ecke 4 des schrägen Fußes
    .limits = Ecken im Uhrzeigersinn beziffert, von oben gesehen, 1 nach 2 längs der Welle; Neigungen zählen ab Ecke 1
    .source = Ausgleichsebene durch vier Ecken nach kleinsten Quadraten

relation-mount-corner-mean-corners = Spalt in der Mitte des Fußes aus seinen vier Ecken
    .limits = allein verdeckt er einen Keilspalt: auch die Neigungen ansehen
    .source = Ausgleichsebene durch vier Ecken nach kleinsten Quadraten
    .turn-largest-corner = Sie haben die größte Ecke angegeben; der Spalt in der Mitte des Fußes ist das Mittel aller vier.
    .turn-not-divided = Sie haben die vier Ecken zusammengezählt und nicht durch vier geteilt.
    .turn-smallest-corner = Sie haben die kleinste Ecke angegeben; der Spalt in der Mitte des Fußes ist das Mittel aller vier.

relation-mount-slope-along-corners = Neigung des Fußes längs der Welle aus seinen vier Ecken
    .limits = Ecken im Uhrzeigersinn beziffert, von oben gesehen, 1 nach 2 längs der Welle; Neigungen zählen ab Ecke 1
    .source = Ausgleichsebene durch vier Ecken nach kleinsten Quadraten
    .turn-not-halved = Sie haben zwei Ecken zusammen gegen zwei genommen und die Differenz nicht halbiert; nehmen Sie das Mittel jedes Endes.
    .turn-wrong-side = Sie haben durch die Breite des Fußes geteilt; die Neigung längs der Welle misst man über seine Länge.
    .turn-largest-corner = Sie haben den größten Spalt durch die Länge geteilt; nur der Unterschied zwischen den beiden Enden ergibt eine Neigung, ein gleichmäßiger Spalt hat keine.
    .turn-run-forgotten-metre = Sie haben den Unterschied zwischen den beiden Enden in Millimetern angegeben; eine Neigung ist dieser Unterschied, geteilt durch die Länge des Fußes in Metern.
    .turn-run-forgotten-foot = Sie haben den Unterschied zwischen den beiden Enden in Zoll angegeben; eine Neigung ist dieser Unterschied, geteilt durch die Länge des Fußes in Fuß (ft).
    .turn-turned-round = Sie haben die Neigung vom fernen Ende aus gezählt; sie ist positiv, wenn der Spalt von Ecke 1 weg wächst.

relation-mount-slope-across-corners = Neigung des Fußes quer zur Welle aus seinen vier Ecken
    .limits = Ecken im Uhrzeigersinn beziffert, von oben gesehen, 1 nach 2 längs der Welle; Neigungen zählen ab Ecke 1
    .source = Ausgleichsebene durch vier Ecken nach kleinsten Quadraten
    .turn-not-halved = Sie haben zwei Ecken zusammen gegen zwei genommen und die Differenz nicht halbiert; nehmen Sie das Mittel jeder Seite.
    .turn-wrong-side = Sie haben durch die Länge des Fußes geteilt; die Neigung quer zur Welle misst man über seine Breite.
    .turn-largest-corner = Sie haben den größten Spalt durch die Breite geteilt; nur der Unterschied zwischen den beiden Seiten ergibt eine Neigung, ein gleichmäßiger Spalt hat keine.
    .turn-run-forgotten-metre = Sie haben den Unterschied zwischen den beiden Seiten in Millimetern angegeben; eine Neigung ist dieser Unterschied, geteilt durch die Breite des Fußes in Metern.
    .turn-run-forgotten-foot = Sie haben den Unterschied zwischen den beiden Seiten in Zoll angegeben; eine Neigung ist dieser Unterschied, geteilt durch die Breite des Fußes in Fuß (ft).
    .turn-turned-round = Sie haben die Neigung von der fernen Seite aus gezählt; sie ist positiv, wenn der Spalt von Ecke 1 weg wächst.

relation-mount-wedge-corners = Keilmaß des Fußes aus seinen vier Ecken
    .limits = ein ebenes Blech füllt den Spalt unter einem Fuß mit einem Keilmaß bis 0,05 mm (0,002 in), übliche Praxis
    .source = Ausgleichsebene durch vier Ecken nach kleinsten Quadraten
    .turn-averaged = Sie haben die Ecken gemittelt; das Mittel ist der gleichmäßige Teil des Spalts und lässt das Keilmaß weg.
    .turn-along-only = Sie haben nur die Neigung längs der Welle gezählt; an der Ecke trägt auch die Neigung quer zur Welle zum Keilmaß bei.
    .turn-across-only = Sie haben nur die Neigung quer zur Welle gezählt; an der Ecke trägt auch die Neigung längs der Welle zum Keilmaß bei.
    .turn-largest-corner = Sie haben den größten Spalt für das Keilmaß genommen; den gleichmäßigen Teil füllt ein ebenes Blech, das Keilmaß ist der Unterschied von Ecke zu Ecke.
    .turn-not-halved = Sie haben zwei Ecken zusammen gegen zwei genommen und die Differenzen nicht halbiert.

relation-mount-wedge-slopes = Keilmaß des Fußes aus seinen beiden Neigungen
    .limits = ein ebenes Blech füllt den Spalt unter einem Fuß mit einem Keilmaß bis 0,05 mm (0,002 in), übliche Praxis
    .source = Ausgleichsebene durch vier Ecken nach kleinsten Quadraten
    .turn-along-only = Sie haben nur die Neigung längs der Welle gezählt; an der Ecke trägt auch die Neigung quer zur Welle zum Keilmaß bei.
    .turn-across-only = Sie haben nur die Neigung quer zur Welle gezählt; an der Ecke trägt auch die Neigung längs der Welle zum Keilmaß bei.
    .turn-sizes-swapped = Sie haben die Neigung längs über die Breite und die Neigung quer über die Länge genommen; jede gehört zu ihrer eigenen Seite.
    .turn-half = Sie haben von der Mitte des Fußes bis zu einer Ecke gerechnet; das Keilmaß geht von Ecke zu Ecke, über den ganzen Fuß.

relation-mount-corner-residual-corners = Abweichung der Ecken von einem ebenen Fuß
    .source = Ausgleichsebene durch vier Ecken nach kleinsten Quadraten
    .turn-not-shared = Sie haben angegeben, wie weit eine Ecke von der Ebene der drei anderen absteht; die beste Ebene verteilt das auf die vier Ecken, je ein Viertel.
    .turn-halved = Sie haben durch zwei geteilt; jede Diagonale hat zwei Ecken, und die Ebene halbiert die Differenz noch einmal, teilen Sie also durch vier.
    .turn-spread = Sie haben die kleinste Ecke von der größten abgezogen; diesen Unterschied hat auch ein ebener Keil, die Abweichung vergleicht die beiden Diagonalen.

relation-mount-foot-fit-limit = Sitz des schrägen Fußes aus seinen vier Ecken
    .method = Das Schlimmste zuerst. Weichen die Summen der Diagonalen um mehr als die Grenze voneinander ab: Schmutz, ein Grat oder ein verbogener Fuß. Sonst, Keilmaß über der Grenze: ein schräger Fuß, dem ebene Bleche nicht helfen. Sonst, Mittel über der Grenze: ein paralleler Spalt, den ebene Bleche füllen. Sonst liegt er eben auf.
    .limits = übliche Grenze 0,05 mm (0,002 in), übliche Praxis
    .turn-averaged = Sie haben das Mittel der Ecken beurteilt; es verdeckt einen Keilspalt und einen verbogenen Fuß, vergleichen Sie also zuerst Enden, Seiten und Diagonalen.
    .turn-largest-corner = Sie haben die größte Ecke beurteilt, als wäre der Spalt ringsum gleich; vergleichen Sie zuerst Enden, Seiten und Diagonalen.
    .turn-misfit-left-out = Sie haben die beiden Diagonalen nicht verglichen; weichen ihre Summen um mehr als die Grenze voneinander ab, passt keine Ebene: Suchen Sie Schmutz oder einen verbogenen Fuß.

relation-mount-height-change-slope = Höhenunterschied über den Grundrahmen aus seiner Neigung
    .source = Definition der Neigung
    .turn-run-forgotten-metre = Sie haben die Ablesung der Richtwaage angegeben, wie sie dasteht; sie ist der Unterschied auf einen Meter, nehmen Sie sie also mit der Länge des Grundrahmens in Metern mal.
    .turn-run-forgotten-foot = Sie haben die Ablesung der Richtwaage angegeben, wie sie dasteht; sie ist der Unterschied auf einen Fuß (ft), nehmen Sie sie also mit der Länge des Grundrahmens in Fuß (ft) mal.
    .turn-half-the-run = Sie haben von der Mitte des Grundrahmens aus gerechnet; der Höhenunterschied geht von Ende zu Ende.
    .turn-between-feet = Sie haben den Abstand der Füße genommen; gefragt ist über die Länge des Grundrahmens, die in Waage gebracht wird.

relation-mount-level-height = Neigung des Grundrahmens aus seinem Höhenunterschied
    .source = Definition der Neigung
    .turn-run-forgotten-metre = Sie haben den Höhenunterschied selbst angegeben; eine Neigung ist der Höhenunterschied in Millimetern, geteilt durch die Länge in Metern.
    .turn-run-forgotten-foot = Sie haben den Höhenunterschied selbst angegeben; eine Neigung ist der Höhenunterschied in Zoll, geteilt durch die Länge in Fuß (ft).
    .turn-half-the-run = Sie haben durch den halben Grundrahmen geteilt; der Höhenunterschied gilt über den ganzen.
    .turn-between-feet = Sie haben durch den Abstand der Füße geteilt; der Höhenunterschied gilt über die Länge des Grundrahmens, die in Waage gebracht wird.

relation-mount-level-verdict-limit = Urteil über die waagerechte Lage des Grundrahmens
    .method = Vergleichen Sie die Neigung, steigend oder fallend, mit der größten zulässigen; genau auf der Grenze ist genau genug in Waage.
    .limits = Grenze des Getriebeherstellers für den Ölstand; Richtwaage umschlagen und noch einmal ablesen
    .turn-sign-kept = Sie haben eine Neigung unter null durchgehen lassen; fallend ist ebenso weit aus der Waage wie steigend.
    .turn-height-judged-metre = Sie haben den Höhenunterschied über den ganzen Grundrahmen mit einer Grenze je Meter verglichen; vergleichen Sie die Neigung selbst.
    .turn-height-judged-foot = Sie haben den Höhenunterschied über den ganzen Grundrahmen mit einer Grenze je Fuß (ft) verglichen; vergleichen Sie die Neigung selbst.
