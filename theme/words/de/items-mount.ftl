## Aufgaben: Aufstellung und Kippfuß

item-twist-and-gap = Von den Höhen der Auflagen zum Spalt
    .text = Vor dem Aufsetzen wird eine Messuhr über die vier Auflagen geführt. Maschine: { $machine }. Eine hohe Auflage gibt eine positive Ablesung.
    .a = Wie groß ist die Verwindung des Grundrahmens, die Diagonale 1-3 positiv gezählt?
    .b = Ein steifes Gehäuse wird ohne Schrauben auf diese Auflagen gesetzt. Wie groß ist der Spalt unter dem einen Fuß, der nicht aufliegt?

item-loose-foot = Welcher Fuß liegt nicht auf?
    .text = Auf diesen vier Auflagen wird das Getriebe ohne Schrauben stehen. Maschine: { $machine }. Das Typenschild gibt die Wirkungslinie des Gewichts an, gemessen ab Fuß 1.
    .a-hint-1 = Kennzeichnen Sie die beiden Füße der Diagonale, deren Höhen zusammen mehr ergeben: Auf beiden steht das Gehäuse.
    .a-hint-2 = Ziehen Sie die Linie zwischen diesen beiden Füßen. Auf welcher Seite davon liegt das Gewicht?
    .a = Welcher Fuß berührt seine Auflage nicht?
    .b = Das Gehäuse wird von Hand auf diesen Fuß gedrückt, bis es kippt. Unter welchem Fuß öffnet sich jetzt der Spalt?

item-gap-from-heights = Welcher Spalt ist vor dem Heben zu erwarten?
    .text = Der Kran ist bestellt. Maschine: { $machine }. Aus den Ablesungen der Messuhr auf den vier Auflagen will der Schlosser vorher wissen, wie weit der vierte Fuß klaffen wird.
    .a = Wie groß wird der Spalt unter diesem einen Fuß sein, ohne Schrauben?

item-gap-verdict = Ist der Grundrahmen gut genug?
    .text = Über die vier Auflagen wurde eine Messuhr geführt. Maschine: { $machine }. Der Arbeitsauftrag nennt den größten zulässigen Spalt unter einem Fuß.
    .a-hint-1 = Eine Auflage kann hoch stehen, ohne dass ein Fuß klafft: Vergleichen Sie die beiden Diagonalen.
    .a = Ohne Schrauben liegt ein Fuß nicht auf, oder es liegen alle auf. Was sagen Sie zum Grundrahmen?

item-dial-rises = Eine Schraube nach der anderen lösen
    .text = Der Antrieb ist freigeschaltet und gesichert, und alle vier Fußschrauben waren fest angezogen. Maschine: { $machine }. Jeweils eine Schraube wurde gelöst, während die anderen drei fest waren, und die Messuhr über diesem Fuß abgelesen.
    .a = Nach welcher Anhebung werden die Füße beurteilt?
    .b = Wie groß ist der Spalt, der unter einem Fuß auszufüllen ist, um den Fehler zu beheben?

item-rise-verdict = Bestanden oder nachbessern?
    .text = Die vier Anhebungen sind aufgeschrieben, jede bei fest angezogenen anderen drei Schrauben abgelesen. Maschine: { $machine }. Der Arbeitsauftrag nennt den größten zulässigen Spalt unter einem Fuß.
    .a = Was sagen Sie zur Aufstellung, Fuß für Fuß beurteilt?

item-soft-foot-check-order = Die Kippfußprüfung Schritt für Schritt
    .text = Sie prüfen mit einer Messuhr am Magnetstativ, ob ein Kippfuß da ist. Maschine: { $machine }.
    .a-step-1 = Freischalten und sichern, dann durch einen Einschaltversuch nachweisen, dass der Antrieb nicht anläuft
    .a-step-2 = Füße und Auflagen bis auf sauberes blankes Metall reinigen
    .a-step-3 = Alle vier Fußschrauben fest anziehen
    .a-step-4 = Die Messuhr senkrecht auf einen Fuß setzen und auf null stellen
    .a-step-5 = Nur die Schraube dieses Fußes lösen und die Anhebung aufschreiben
    .a-step-6 = Die Schraube wieder anziehen und sehen, dass die Messuhr auf null zurückgeht
    .a-step-7 = Die Messuhr an den nächsten Fuß setzen
    .a-because = Keine Hand kommt an den Antrieb, bevor er nachweislich energiefrei ist. Schmutz und Farbe täuschen einen Spalt vor, darum kommen sie zuerst weg. Eine Anhebung zählt nur mit den anderen drei Schrauben fest, und eine Messuhr, die nicht auf null zurückgeht, hat sich verschoben: Diese Ablesung wird wiederholt.
    .a = In welcher Reihenfolge arbeiten Sie?

item-two-feet-rise = Zwei Füße heben sich, zwei bleiben unten
    .text = Beim Lösen einer Schraube nach der anderen heben sich die beiden Füße einer Diagonale um fast denselben Betrag. Maschine: { $machine }. Die anderen beiden bewegen sich nicht. Alle vier sind sauber, und ihre Spalte sind rundum gleichmäßig.
    .a-option-1 = Ein Paket so dick wie eine Anhebung, unter einen der beiden Füße, die sich hoben
    .a-option-2 = Ein Paket so dick wie eine Anhebung, unter jeden der beiden Füße, die sich hoben
    .a-option-3 = Ein Paket so dick wie beide Anhebungen zusammen, unter einen der beiden Füße, die sich hoben
    .a-option-4 = Ein Paket so dick wie eine Anhebung, unter jeden der beiden Füße, die unten blieben
    .a-option-5 = Kein Paket: die beiden Schrauben fester anziehen, bis sich die Messuhr nicht mehr bewegt
    .a-because = Beide Füße zeigen denselben Spalt, weil das Gehäuse auf der anderen Diagonale steht: Ein Paket von der Dicke einer Anhebung unter einem Fuß nimmt die ganze Verwindung heraus. Wer doppelt unterlegt, unter beiden Füßen, oder unter den Füßen, die schon tragen, bringt wieder Verwindung hinein. Eine Schraube, die den Spalt zuzieht, verbiegt das Gehäuse.
    .a = Welche Abhilfe ist richtig, wenn sich der Grundrahmen nicht bearbeiten lässt?

item-shim-pack = Das Blechpaket zusammenstellen
    .text = Ein Fuß klafft, rundum gleichmäßig, und der Spalt wurde mit der Fühlerlehre gemessen. Maschine: { $machine }. Die Dicke des Pakets darf von diesem Spalt um höchstens { $mount-gap_limit } abweichen, mit so wenigen Blechen wie möglich; unter Paketen mit gleich wenigen Blechen nehmen Sie das, das dem Spalt am nächsten kommt, unter gleich nahen das mit dem dicksten Blech, und wo diese gleich sind, das mit dem dickeren zweiten Blech. Metrische Bleche: 0,025; 0,05; 0,10; 0,20; 0,25; 0,40; 0,50; 0,70; 1,00; 2,00 mm. Zollbleche: 0,001; 0,002; 0,003; 0,004; 0,005; 0,010; 0,015; 0,020; 0,025; 0,050; 0,075; 0,100; 0,125 in. Eine Dicke darf zweimal vorkommen.
    .a-hint-1 = Suchen Sie ein einzelnes Blech, das nahe genug kommt, bevor Sie es mit zweien versuchen.
    .a = Wie dick ist das Paket?

item-shim-leaves = Ein Blech genügt nicht
    .text = Die vier Anhebungen wurden Fuß für Fuß abgelesen, die anderen drei Schrauben fest. Maschine: { $machine }. Die beiden Füße, die sich hoben, haben einen gleichmäßigen Spalt, und einer davon ist zu unterlegen. Die Dicke des Pakets darf von diesem Spalt um höchstens { $mount-gap_limit } abweichen, mit so wenigen Blechen wie möglich; unter Paketen mit gleich wenigen Blechen nehmen Sie das, das dem Spalt am nächsten kommt, unter gleich nahen das mit dem dicksten Blech, und wo diese gleich sind, das mit dem dickeren zweiten Blech. Metrische Bleche: 0,025; 0,05; 0,10; 0,20; 0,25; 0,40; 0,50; 0,70; 1,00; 2,00 mm. Zollbleche: 0,001; 0,002; 0,003; 0,004; 0,005; 0,010; 0,015; 0,020; 0,025; 0,050; 0,075; 0,100; 0,125 in. Eine Dicke darf zweimal vorkommen.
    .a = Wie groß ist der Spalt, der auszufüllen ist?
    .b-hint-1 = Versuchen Sie es zuerst mit jedem einzelnen Blech. Nehmen Sie dann das dickste, das nicht zu dick ist, und suchen Sie eines, das den Rest ausgleicht.
    .b = Wie viele Bleche sind im Paket?
    .c = Wie dick ist das Paket?

item-pack-check = Passt das bereitgelegte Paket?
    .text = Die vier Anhebungen wurden Fuß für Fuß abgelesen, die anderen drei Schrauben fest. Maschine: { $machine }. Jemand hat ein Paket bereitgelegt; seine Dicke ist { $mount-shim_total }.
    .a = Wie groß ist der Spalt unter dem Fuß, der nicht aufliegt?
    .b = Das Paket kommt unter einen der beiden Füße, die sich hoben. Wie viel vom Spalt bleibt offen, oder um wie viel ist es zu dick?

item-heights-to-shims = Von den Auflagen zum Paket
    .text = Die Auflagen wurden vor dem Heben mit der Messuhr abgelesen. Maschine: { $machine }. Der Grundrahmen lässt sich diese Woche nicht bearbeiten, also wird der Fuß unterlegt, der nicht aufliegt. Die Dicke des Pakets darf vom Spalt um höchstens { $mount-gap_limit } abweichen, mit so wenigen Blechen wie möglich; unter Paketen mit gleich wenigen Blechen nehmen Sie das, das dem Spalt am nächsten kommt, unter gleich nahen das mit dem dicksten Blech, und wo diese gleich sind, das mit dem dickeren zweiten Blech. Metrische Bleche: 0,025; 0,05; 0,10; 0,20; 0,25; 0,40; 0,50; 0,70; 1,00; 2,00 mm. Zollbleche: 0,001; 0,002; 0,003; 0,004; 0,005; 0,010; 0,015; 0,020; 0,025; 0,050; 0,075; 0,100; 0,125 in. Eine Dicke darf zweimal vorkommen.
    .a = Wie groß ist die Verwindung des Grundrahmens, die Diagonale 1-3 positiv gezählt?
    .b = Welcher Fuß liegt nicht auf?
    .c = Wie groß ist der Spalt darunter?
    .d = Ein wie dickes Paket kommt unter diesen Fuß?

item-fit-shims-order = Das Paket einlegen
    .text = Unter einen Fuß muss ein Paket aus ebenen Unterlegblechen. Maschine: { $machine }. Der Antrieb ist freigeschaltet, gesichert und nachweislich energiefrei.
    .a-step-1 = Die Schraube des Fußes lösen und den Spalt an allen vier Ecken des Fußes mit der Fühlerlehre messen
    .a-step-2 = Wenige dicke Bleche wählen und jedes mit der Bügelmessschraube messen
    .a-step-3 = Fuß, Bleche und Auflage sauber wischen
    .a-step-4 = Das Paket einschieben, bis es an die Schraube stößt, und dann ein wenig zurückziehen
    .a-step-5 = Die Schrauben stufenweise mit dem vorgegebenen Drehmoment anziehen
    .a-step-6 = Unter der Messuhr noch einmal eine Schraube nach der anderen lösen
    .a-step-7 = Anhebungen und benutzte Bleche in das Prüfblatt schreiben
    .a-because = Die Ecken kommen zuerst: Ein Keilspalt wird mit ebenen Blechen nicht behoben. Die Bleche werden vor dem Einlegen gemessen, denn die aufgedruckte Dicke ist nicht immer die wahre. Ein wenig zurückgezogen, bleibt das Paket vom Gewinde weg. Die Messuhr beweist die Abhilfe, und erst dann wird sie aufgeschrieben.
    .a = In welcher Reihenfolge arbeiten Sie?

item-few-thick-leaves = Warum wenige Bleche
    .text = Ein Kollege hat unter einem Fuß acht dünne Bleche gestapelt. Maschine: { $machine }. Zusammen sind sie genau so dick wie der Spalt.
    .a-option-1 = Aus wenigen dicken Blechen neu aufbauen, die unter der Schraube weniger federn
    .a-option-2 = So lassen: Nur die gesamte Dicke zählt, und die stimmt
    .a-option-3 = So lassen, aber diese Schraube fester anziehen als die anderen
    .a-option-4 = Noch ein Blech dazulegen, als Ausgleich für das, was sich der Stapel setzt
    .a-because = Jede Fuge zwischen zwei Blechen hält etwas Luft, Öl oder Schmutz und gibt ein wenig nach. Ein dicker Stapel dünner Bleche bleibt darum federnd, und die Schraube verliert ihre Dehnung. Höchstens drei bis fünf Bleche sind übliche Praxis.
    .a = Was sagen Sie dazu?

item-machine-or-shim = Die richtige Abhilfe und die zweitbeste
    .text = Unterlegbleche unter einem Fuß haben jede Anhebung in die Grenze gebracht. Maschine: { $machine }. Der Grundrahmen selbst ist noch verwunden.
    .a-option-1 = Mit Unterlegblechen angenommen; Grundrahmen später bearbeiten, Anhebungen neu ablesen
    .a-option-2 = Endgültig angenommen: Ein innerhalb der Grenze unterlegter Fuß braucht keine weitere Prüfung
    .a-option-3 = Angenommen, weil die Schrauben den Grundrahmen eben gezogen haben
    .a-option-4 = Abgelehnt: Unterlegbleche sind unter einem Getriebe nie zulässig, gleich bei welcher Anhebung
    .a-because = Ein eben bearbeiteter Grundrahmen ist die richtige Abhilfe. Unterlegbleche sind die zweitbeste und halten nur, solange die Schrauben fest bleiben; darum werden die Anhebungen nach dem Einlauf noch einmal abgelesen.
    .a = Was kommt in das Prüfblatt?

item-foot-mean = Der Spalt in der Mitte des Fußes
    .text = Ein Fuß wird an seinen vier Ecken mit der Fühlerlehre gemessen, seine Schraube gelöst und die anderen fest. Maschine: { $machine }. Fuß und Auflage sind sauber, ohne Grat und nicht verbogen: Ein Unterschied zwischen den Summen der beiden Diagonalen kommt von den Stufen der Fühlerlehre.
    .a = Wie groß ist der Spalt in der Mitte des Fußes?

item-foot-slopes = Wohin sich der Fuß neigt
    .text = Ein Fuß wird an seinen vier Ecken mit der Fühlerlehre gemessen, seine Schraube gelöst und die anderen fest. Maschine: { $machine }. Fuß und Auflage sind sauber, ohne Grat und nicht verbogen: Ein Unterschied zwischen den Summen der beiden Diagonalen kommt von den Stufen der Fühlerlehre. Eine Neigung zählt positiv, wo der Spalt von Ecke 1 weg größer wird.
    .a-hint-1 = Nehmen Sie den mittleren Spalt des Endes mit den Ecken 2 und 3 und ziehen Sie den mittleren Spalt des Endes mit den Ecken 1 und 4 ab.
    .a = Wie groß ist die Neigung des Fußes längs der Welle?
    .b = Und quer zur Welle?
    .c = Wie groß ist der Keil von Ecke zu Ecke nach den beiden Neigungen?

item-wedge = Was ein ebenes Blech nicht ausfüllt
    .text = Ein Fuß wird an seinen vier Ecken mit der Fühlerlehre gemessen. Maschine: { $machine }. Fuß und Auflage sind sauber, ohne Grat und nicht verbogen: Ein Unterschied zwischen den Summen der beiden Diagonalen kommt von den Stufen der Fühlerlehre. Ein ebenes Unterlegblech füllt den gleichmäßigen Teil des Spalts; der Keil von Ecke zu Ecke bleibt.
    .a-hint-1 = Vergleichen Sie den mittleren Spalt des einen Endes mit dem des anderen, dann das Mittel der einen Seite mit dem der anderen.
    .a = Wie groß ist der Keil von der engsten bis zur weitesten Ecke der ausgleichenden Ebene?

item-corners-fit-no-plane = Offen an zwei gegenüberliegenden Ecken
    .text = Unter einem Fuß findet die Fühlerlehre an zwei diagonal gegenüberliegenden Ecken denselben weiten Spalt und an den anderen beiden keinen. Maschine: { $machine }.
    .a-option-1 = Den Fuß anheben, ihn und die Auflage reinigen, nach Grat oder Verbiegung suchen, neu messen
    .a-option-2 = Ein ebenes Paket halb so dick wie der weite Spalt einlegen
    .a-option-3 = Ein Keilblech von der engen bis zur offenen Seite schneiden, einlegen, festziehen und neu messen
    .a-option-4 = Die Schraube fest anziehen und gleich prüfen, ob sich die beiden offenen Ecken dabei schließen
    .a-because = Kein ebener Fuß auf einer ebenen Auflage lässt zwei gegenüberliegende Ecken offen: Die Summen der Diagonalen wären gleich. Es liegt etwas dazwischen, oder der Fuß ist verbogen. Kein Blech folgt einem solchen Spalt; darum wird gereinigt und in Ordnung gebracht, bevor unterlegt wird.
    .a = Was tun Sie zuerst?

item-foot-fit = Eben, paralleler Spalt, Keil oder verbogen?
    .text = Ein Fuß wird an seinen vier Ecken mit der Fühlerlehre gemessen. Maschine: { $machine }. Der Arbeitsauftrag nennt den größten zulässigen Spalt unter einem Fuß.
    .a-hint-1 = Haben die beiden Diagonalen dieselbe Summe?
    .a-hint-2 = Sind die Enden gleich, und die Seiten?
    .a = Wie sitzt der Fuß auf seiner Auflage?

item-wedge-cure = Einen Keilspalt beheben
    .text = Unter einem Fuß findet die Fühlerlehre an der inneren Kante kaum einen Spalt und an der äußeren einen weiten. Maschine: { $machine }. Fuß und Auflage sind sauber, und die beiden Diagonalen des Fußes stimmen überein.
    .a-option-1 = Fuß oder Auflage bearbeiten; bis dahin ein nach dem Keil geschnittenes Blech
    .a-option-2 = Ein ebenes Paket so dick wie das Mittel der vier Ecken
    .a-option-3 = Ein ebenes Paket so dick wie die weiteste Ecke
    .a-option-4 = Kein Blech: die Schraube fest anziehen und ablesen, dass sich der Spalt geschlossen hat
    .a-because = Ein ebenes Paket berührt einen schrägen Fuß nur an einer Kante, darum verbiegt die Schraube den Fuß. Bearbeiten ist die richtige Abhilfe; ein gestuftes oder keilförmiges Blech folgt inzwischen dem Keil.
    .a = Welche Abhilfe ist richtig?

item-level-height = Wie weit ein Ende angehoben werden muss
    .text = Eine Richtwaage liegt längs der Welle auf dem bearbeiteten Grundrahmen. Maschine: { $machine }. Eine Ablesung über null heißt, dass das entfernte Ende hoch steht.
    .a = Um wie viel ändert sich die Höhe von einem Ende des Grundrahmens zum anderen? Behalten Sie das Vorzeichen der Ablesung.

item-level-slope = Von Höhen zu einer Neigung
    .text = Mit Lineal und Endmaß wurde der Höhenunterschied zwischen den beiden Enden des Grundrahmens ermittelt. Maschine: { $machine }. Eine Höhe, die zum entfernten Ende hin wächst, zählt positiv.
    .a = Welche Neigung würde eine Richtwaage darauf zeigen?

item-level-verdict = Genug in der Waage für das Öl?
    .text = Eine Richtwaage liegt auf dem bearbeiteten Grundrahmen. Maschine: { $machine }. Das Typenschild nennt die größte Neigung, bei der sich der Ölstand noch richtig ablesen lässt.
    .a = Was sagen Sie zum Grundrahmen?
