## Größen, Beziehungen, ihre Quellen und Fehler: Anfahren und Motorlast

quantity-start-frequency = Netzfrequenz

quantity-start-poles = Polzahl des Motors

quantity-start-synchronous = Synchrondrehzahl des Motors

quantity-start-plate-speed = Bemessungsdrehzahl auf dem Typenschild des Motors

quantity-start-slip = Schlupf des Motors

quantity-start-speed-expected = bei dieser Last zu erwartende Drehzahl des Motors

quantity-start-volts-1 = Spannung zwischen den Außenleitern 1 und 2

quantity-start-volts-2 = Spannung zwischen den Außenleitern 2 und 3

quantity-start-volts-3 = Spannung zwischen den Außenleitern 3 und 1

quantity-start-voltage = Mittel der drei Außenleiterspannungen

quantity-start-plate-voltage = Spannung auf dem Typenschild des Motors

quantity-start-voltage-off = Abweichung der mittleren Spannung vom Typenschild, als Anteil der Spannung auf dem Typenschild

quantity-start-voltage-verdict = Urteil über die mittlere Spannung
    .choice-1 = innerhalb von 10 %
    .choice-2 = Abweichung zu groß

quantity-start-voltage-unbalance = Spannungsunsymmetrie

quantity-start-unbalance-verdict = Urteil über die Spannungsunsymmetrie
    .choice-1 = innerhalb der Grenze
    .choice-2 = zu ungleich

quantity-start-unbalance-factor = Faktor, um den die Ströme ungleicher sind

quantity-start-amps-off-1 = Abweichung des Stroms im Außenleiter 1 vom Mittel, als Anteil des Mittels

quantity-start-amps-off-2 = Abweichung des Stroms im Außenleiter 2 vom Mittel, als Anteil des Mittels

quantity-start-amps-1 = Strom im Außenleiter 1

quantity-start-amps-2 = Strom im Außenleiter 2

quantity-start-amps-3 = Strom im Außenleiter 3

quantity-start-current = Mittel der drei Außenleiterströme

quantity-start-current-unbalance = Stromunsymmetrie

quantity-start-power-factor = Leistungsfaktor des Motors bei seiner Last

quantity-start-motor-efficiency = Wirkungsgrad des Motors

quantity-start-input-power = vom Motor aufgenommene elektrische Leistung

quantity-start-shaft-power = Leistung an der Motorwelle, aus den elektrischen Ablesungen

quantity-start-load-share = Auslastung des Motors, aus den elektrischen Ablesungen

quantity-start-load-by-speed = Auslastung des Motors, aus seiner Drehzahl

quantity-start-no-load-share = Leerlaufstrom durch Bemessungsstrom

quantity-start-no-load-current = Leerlaufstrom des Motors

quantity-start-full-load-current = Bemessungsstrom auf dem Typenschild des Motors

quantity-start-load-by-current = Auslastung des Motors, aus seinem Strom

quantity-start-load-proportion = Auslastung des Motors, proportional zu Strom und Spannung

quantity-start-current-ratio = Strom durch Bemessungsstrom

quantity-start-current-verdict = Urteil über den Strom des Motors
    .choice-1 = innerhalb des Typenschilds
    .choice-2 = überlastet

quantity-start-wanted-way = geforderte Drehrichtung der Abtriebswelle
    .choice-1 = im Uhrzeigersinn
    .choice-2 = gegen den Uhrzeigersinn

quantity-start-motor-way = nötige Drehrichtung des Motors
    .choice-1 = im Uhrzeigersinn
    .choice-2 = gegen den Uhrzeigersinn

quantity-start-phases = Reihenfolge der Außenleiter
    .choice-1 = richtig
    .choice-2 = zwei vertauscht

quantity-start-bumped-way = Drehrichtung des Motors beim Antippen
    .choice-1 = im Uhrzeigersinn
    .choice-2 = gegen den Uhrzeigersinn

quantity-start-rotation-verdict = Urteil über die Drehrichtung
    .choice-1 = richtig herum
    .choice-2 = verkehrt herum

quantity-start-guards = Zustand der Schutzeinrichtungen
    .choice-1 = alle befestigt
    .choice-2 = eine fehlt

quantity-start-ready-verdict = Urteil über den ersten Start unter Last
    .choice-1 = darf gestartet werden
    .choice-2 = darf nicht gestartet werden

relation-start-poles-running-speed = Polzahl eines Motors, der knapp unter seiner Synchrondrehzahl läuft
    .method = die größte gerade Polzahl, deren Synchrondrehzahl nicht unter der Betriebsdrehzahl liegt
    .source = B. L. Theraja, A. K. Theraja, A Textbook of Electrical Technology, Kapitel 34, S. 1255-1256

relation-start-poles-plate-speed = Polzahl des Motors aus der Drehzahl auf dem Typenschild
    .method = 120 f durch die Drehzahl auf dem Typenschild teilen und die gerade Zahl nehmen, die dem gleich ist oder als nächste darunter liegt
    .source = B. L. Theraja, A. K. Theraja, A Textbook of Electrical Technology, Kapitel 34, S. 1255-1256
    .turn-pairs = Sie haben die Polpaarzahl angegeben; jedes Paar sind zwei Pole.
    .turn-next-pair = Sie haben eine Synchrondrehzahl unter der Drehzahl auf dem Typenschild genommen; ein Motor läuft knapp unter seiner Synchrondrehzahl, nie darüber.

relation-start-synchronous-poles = Synchrondrehzahl aus Netzfrequenz und Polzahl
    .limits = Drehstrommotor direkt am Netz, ohne Umrichter
    .source = B. L. Theraja, A. K. Theraja, A Textbook of Electrical Technology, Kapitel 34, S. 1255-1256
    .turn-poles-halved = Sie haben durch die Polpaarzahl geteilt; mit 120 in der Formel gehört die ganze Polzahl unter den Bruchstrich.
    .turn-60-for-120 = Sie haben 60 f durch die Polzahl geteilt; das Drehfeld kommt je Periode um ein Polpaar weiter, darum sind es 120 f.
    .turn-other-supply = Sie haben mit der anderen Netzfrequenz gerechnet; nehmen Sie die auf dem Typenschild.
    .turn-poles-left-out = Sie haben die Polzahl weggelassen; bei mehr Polen dreht das Feld langsamer.

relation-start-plate-speed-running-speed = Bemessungsdrehzahl eines Motors, der bei dieser Last mit dieser Drehzahl läuft
    .place = Schlupfverfahren (Gleichung aus dem Gedächtnis)

relation-start-slip-speeds = Schlupf des Motors
    .limits = gewöhnlich 1 bis 5 % bei Volllast; mit dem Drehzahlmesser abgelesen, denn gesucht ist eine kleine Differenz zweier großer Zahlen
    .source = B. L. Theraja, A. K. Theraja, A Textbook of Electrical Technology, Kapitel 34, S. 1255-1256
    .turn-slip-as-speed = Sie haben den Schlupf in r/min angegeben; Schlupf ist diese Differenz als Anteil der Synchrondrehzahl.
    .turn-slip-as-speed-per-cent = Sie haben den Schlupf in r/min angegeben; Schlupf ist diese Differenz als Anteil der Synchrondrehzahl.
    .turn-speed-share = Sie haben die Drehzahl als Anteil der Synchrondrehzahl angegeben; Schlupf ist, was zum Ganzen fehlt.
    .turn-plate-speed = Sie haben die Bemessungsdrehzahl auf dem Typenschild benutzt; der jetzige Schlupf richtet sich nach der jetzt abgelesenen Drehzahl.

relation-start-speed-expected-load = Bei dieser Last zu erwartende Drehzahl
    .limits = bis zum 1,5-Fachen der Volllast
    .place = Schlupfverfahren (Gleichung aus dem Gedächtnis)
    .turn-speed-scaled = Sie haben die Drehzahl mit der Last umgerechnet; nur der Schlupf geht mit der Last.
    .turn-plate-speed-scaled = Sie haben die Drehzahl auf dem Typenschild mit der Last umgerechnet; nur der Schlupf geht mit der Last.
    .turn-added = Sie haben den Schlupf dazugezählt; ein belasteter Motor läuft unter seiner Synchrondrehzahl.
    .turn-load-left = Sie haben den Schlupf mit der noch freien Auslastung umgerechnet; er geht mit der genutzten.

relation-start-load-by-speed-slip = Auslastung des Motors aus seiner Drehzahl
    .limits = eine Schätzung: die Drehzahlen auf Typenschildern sind gerundet, und der Schlupf eines gesunden Motors kann um ein Zehntel bis ein Fünftel abweichen
    .place = Schlupfverfahren (Gleichung aus dem Gedächtnis)
    .turn-speeds = Sie haben die Drehzahlen geteilt; sie sind bei jeder Last fast gleich, vergleichen Sie also den Schlupf.
    .turn-speeds-inverted = Sie haben die Drehzahlen geteilt; sie sind bei jeder Last fast gleich, vergleichen Sie also den Schlupf.
    .turn-slip-itself = Sie haben den Schlupf angegeben; die Auslastung ist der jetzige Schlupf durch den Schlupf bei Volllast.
    .turn-inverted = Sie haben den Schlupf bei Volllast durch den jetzigen geteilt; drehen Sie das um.
    .turn-load-left = Sie haben die noch freie Auslastung angegeben; der Schlupf zeigt die genutzte.

relation-start-voltage-mean = Mittel der drei Außenleiterspannungen
    .limits = zwischen den Außenleitern, am Motor, von einer Person, die für elektrische Messungen befähigt und befugt ist
    .place = Mittel der drei Phasen
    .turn-sum = Sie haben die drei Spannungen zusammengezählt und nicht durch drei geteilt.
    .turn-phase-voltage = Sie haben bis zur Sternspannung weitergerechnet; die Formeln hier verlangen die Spannung zwischen den Außenleitern.

relation-start-voltage-off-plate = Abweichung der mittleren Spannung vom Typenschild
    .source = Definition des Anteils
    .turn-of-the-reading = Sie haben durch die abgelesene Spannung geteilt; das Ganze ist die Spannung auf dem Typenschild.
    .turn-ratio = Sie haben die Spannung als Anteil der auf dem Typenschild angegeben; die Abweichung ist das minus 1.
    .turn-wrong-sign = Sie haben das Vorzeichen umgedreht; ein Netz unter der Spannung auf dem Typenschild hat eine negative Abweichung.
    .turn-one-line = Sie haben eine Spannung für das Mittel der drei genommen.
    .turn-in-volts = Sie haben bei der Differenz in Volt aufgehört; teilen Sie sie durch die Spannung auf dem Typenschild.

relation-start-voltage-verdict-10 = Urteil über die mittlere Spannung
    .method = den Betrag der Abweichung, nach oben oder unten, gegen 10 % halten
    .limits = 10 %, bei der Frequenz auf dem Typenschild; der Hersteller kann weniger zulassen
    .source = NEMA MG 1: Bemessungsspannung plus oder minus 10 %
    .turn-unbalance-s-limit = Sie haben sie gegen die Grenze von 1 % für die Unsymmetrie gehalten; das Mittel darf bis 10 % vom Typenschild abweichen.
    .turn-turned-round = Sie haben den Vergleich umgedreht; bis 10 % Abweichung ist zulässig, nach oben oder unten.

relation-start-voltage-unbalance-largest-off-the-mean = Spannungsunsymmetrie
    .source = NEMA MG 1, Definition der Spannungsunsymmetrie
    .turn-whole-spread = Sie haben größte minus kleinste Spannung genommen; die Unsymmetrie ist die größte Abweichung vom Mittel.
    .turn-of-the-largest = Sie haben größte minus kleinste durch die größte Spannung geteilt; die Unsymmetrie ist die größte Abweichung vom Mittel, geteilt durch das Mittel.
    .turn-mean-distance = Sie haben die drei Abweichungen gemittelt; die größte zählt.
    .turn-in-volts = Sie haben bei der Abweichung in Volt aufgehört; teilen Sie sie durch das Mittel.
    .turn-in-volts-per-cent = Sie haben bei der Abweichung in Volt aufgehört; teilen Sie sie durch das Mittel.

relation-start-unbalance-verdict-limit = Urteil über die Spannungsunsymmetrie
    .method = die Unsymmetrie gegen 1 % halten
    .limits = 1 %
    .source = NEMA MG 1: über 1 % darf ein Motor nur weniger als seine Bemessungsleistung abgeben
    .turn-share-for-per-cent = Sie haben den Anteil als Prozentzahl gelesen; 0,02 sind 2 %.
    .turn-current-held-to-it = Sie haben die Stromunsymmetrie gegen die Grenze für Spannungen gehalten; die Ströme sind um ein Mehrfaches ungleicher.
    .turn-turned-round = Sie haben den Vergleich umgedreht; über 1 % sind die Spannungen zu ungleich.

relation-start-current-mean = Mittel der drei Außenleiterströme
    .limits = von einer Person, die für elektrische Messungen befähigt und befugt ist
    .place = Mittel der drei Phasen
    .turn-sum = Sie haben die drei Ströme zusammengezählt; jeder Außenleiter führt seinen eigenen, und die Formeln verlangen ihr Mittel.
    .turn-one-line = Sie haben einen Außenleiter für alle drei genommen; nehmen Sie das Mittel.

relation-start-current-power = Strom, den der Motor für eine Leistung an seiner Welle aufnimmt
    .place = Gleichung 1
    .turn-3-left-out = Sie haben √3 weggelassen; ein Drehstrommotor verteilt seine Leistung auf drei Außenleiter.
    .turn-3-for-3 = Sie haben durch 3 geteilt; mit der Spannung zwischen den Außenleitern ist der Faktor √3.
    .turn-power-factor-left-out = Sie haben den Leistungsfaktor weggelassen; die Außenleiter führen auch den Magnetisierungsstrom.
    .turn-efficiency-left-out = Sie haben den Wirkungsgrad des Motors weggelassen; der Motor nimmt mehr auf, als er abgibt.
    .turn-efficiency-multiplied = Sie haben mit dem Wirkungsgrad des Motors malgenommen; der Motor nimmt mehr auf, als er abgibt, teilen Sie also.
    .turn-plate-power = Sie haben die Leistung auf dem Typenschild benutzt; der Strom richtet sich nach der Leistung, die der Motor jetzt abgibt.

relation-start-amps-off-1-voltages = Abweichung des Stroms im Außenleiter 1 vom Mittel

relation-start-amps-off-2-voltages = Abweichung des Stroms im Außenleiter 2 vom Mittel

relation-start-amps-1-off-the-mean = Strom im Außenleiter 1
    .source = drei Abweichungen vom Mittel ergeben zusammen null

relation-start-amps-2-off-the-mean = Strom im Außenleiter 2
    .source = drei Abweichungen vom Mittel ergeben zusammen null

relation-start-amps-3-off-the-mean = Strom im Außenleiter 3
    .source = drei Abweichungen vom Mittel ergeben zusammen null

relation-start-current-unbalance-largest-off-the-mean = Stromunsymmetrie
    .limits = ein Mehrfaches der Spannungsunsymmetrie ist üblich
    .source = NEMA MG 1, Definition der Spannungsunsymmetrie
    .turn-whole-spread = Sie haben größten minus kleinsten Strom genommen; die Unsymmetrie ist die größte Abweichung vom Mittel.
    .turn-of-the-largest = Sie haben größten minus kleinsten durch den größten Strom geteilt; die Unsymmetrie ist die größte Abweichung vom Mittel, geteilt durch das Mittel.
    .turn-mean-distance = Sie haben die drei Abweichungen gemittelt; die größte zählt.

relation-start-input-power-readings = Vom Motor aufgenommene elektrische Leistung
    .limits = Mittel der drei Außenleiter; von einer dazu befähigten und befugten Person abgelesen
    .place = Gleichung 1
    .turn-3-left-out = Sie haben √3 weggelassen; mit der Spannung zwischen den Außenleitern nimmt ein Drehstrommotor √3 V I cos φ auf.
    .turn-3-for-3 = Sie haben mit 3 malgenommen; das gehört zur Sternspannung, und mit der Spannung zwischen den Außenleitern ist der Faktor √3.
    .turn-2-for-3 = Sie haben mit 2 malgenommen; der Faktor eines Drehstromnetzes ist √3.
    .turn-power-factor-left-out = Sie haben den Leistungsfaktor weggelassen; Volt mal Ampere ist die Scheinleistung.
    .turn-power-factor-divided = Sie haben durch den Leistungsfaktor geteilt; die aufgenommene Leistung ist kleiner als Volt mal Ampere, nehmen Sie also mal.
    .turn-plate-current = Sie haben den Strom auf dem Typenschild benutzt; die jetzt aufgenommene Leistung richtet sich nach dem jetzt abgelesenen Strom.
    .turn-efficiency-as-well = Sie haben die Verluste des Motors abgezogen; sie gehören zu dem, was er aufnimmt.

relation-start-shaft-power-efficiency = Leistung an der Motorwelle aus der aufgenommenen Leistung
    .limits = Wirkungsgrad bei dieser Last; über halber Last liegt er nahe an dem auf dem Typenschild
    .place = Gleichung 1
    .turn-efficiency-left-out = Sie haben den Wirkungsgrad des Motors weggelassen; ein Teil der aufgenommenen Leistung wird im Motor zu Wärme.
    .turn-efficiency-divided = Sie haben durch den Wirkungsgrad geteilt; die Welle gibt weniger ab, als der Motor aufnimmt.
    .turn-lost-part = Sie haben die im Motor verlorene Leistung angegeben; an die Welle kommt die aufgenommene Leistung mal dem Wirkungsgrad.
    .turn-reducer-for-motor = Sie haben den Wirkungsgrad des Getriebes benutzt; zwischen Netz und Motorwelle steht der des Motors.
    .turn-reducer-as-well = Sie haben auch die Verluste des Getriebes abgezogen; die kommen erst nach der Motorwelle.

relation-start-load-share-shaft-power = Auslastung des Motors aus der Leistung an seiner Welle
    .limits = dauernd über 1 ist der Motor überlastet
    .place = Gleichungen 2 und 3
    .turn-input-over-plate = Sie haben die aufgenommene Leistung durch die Leistung auf dem Typenschild geteilt; das Typenschild nennt, was die Welle abgibt.
    .turn-inverted = Sie haben die Leistung auf dem Typenschild durch die Leistung an der Welle geteilt; die Auslastung ist die Leistung an der Welle durch die auf dem Typenschild.
    .turn-load-left = Sie haben die noch freie Auslastung angegeben; gefragt ist die genutzte.
    .turn-shaft-over-input = Sie haben durch die aufgenommene Leistung geteilt, das ergibt den Wirkungsgrad; die Auslastung ist ein Anteil der Leistung auf dem Typenschild.

relation-start-full-load-current-load = Bemessungsstrom eines Motors, der bei dieser Last diesen Strom aufnimmt
    .source = Zeigersumme aus Magnetisierungs- und Laststrom, Leerlaufverluste weggelassen

relation-start-no-load-current-share = Leerlaufstrom des Motors
    .source = Definition des Anteils

relation-start-current-ratio-plate = Strom durch Bemessungsstrom des Typenschilds
    .limits = über 1 ist der Motor überlastet; unter halber Last sagt es wenig über die Last
    .source = Definition des Anteils
    .turn-inverted = Sie haben den Strom auf dem Typenschild durch den abgelesenen geteilt; drehen Sie das um.
    .turn-left-over = Sie haben angegeben, was bis zum Strom auf dem Typenschild noch frei ist; gefragt ist der genutzte Strom.
    .turn-over-no-load = Sie haben durch den Leerlaufstrom geteilt; das Verhältnis richtet sich nach dem Bemessungsstrom des Typenschilds.
    .turn-three-lines = Sie haben die drei Außenleiter zusammengezählt; das Typenschild nennt den Strom eines Außenleiters.

relation-start-load-by-current-no-load-current-taken-out = Auslastung des Motors aus seinem Strom
    .limits = verlässlich etwa ab halber Last
    .source = Zeigersumme aus Magnetisierungs- und Laststrom, Leerlaufverluste weggelassen
    .turn-in-proportion = Sie haben den Strom für die Auslastung genommen; der Magnetisierungsstrom fließt bei jeder Last und muss heraus.
    .turn-straight-difference = Sie haben den Leerlaufstrom einfach abgezogen; die beiden Ströme addieren sich wie die Seiten eines rechtwinkligen Dreiecks.
    .turn-root-left-out = Sie haben die Quadratwurzel weggelassen; die Quadrate ergeben das Quadrat der Auslastung.
    .turn-load-left = Sie haben die noch freie Auslastung angegeben; gefragt ist die genutzte.

relation-start-load-proportion-current-and-voltage = Auslastung des Motors, proportional zu Strom und Spannung
    .limits = eine Faustregel: nahe der Volllast stimmt sie gut, und je kleiner die Last, desto mehr übertreibt sie, denn der Leerlaufstrom fließt immer
    .source = US Department of Energy, Merkblatt Determining Electric Motor Load and Efficiency, Verfahren mit dem Außenleiterstrom
    .turn-voltage-left-out = Sie haben die Spannung weggelassen; bei niedriger Spannung nimmt dieselbe Last mehr Strom auf.
    .turn-voltage-upside-down = Sie haben die Spannungen verkehrt herum geteilt; Leistung ist Volt mal Ampere, also gehört die abgelesene Spannung nach oben.
    .turn-current-upside-down = Sie haben den Strom auf dem Typenschild durch den abgelesenen geteilt; drehen Sie das um.
    .turn-no-load-current-taken-out = Sie haben den Leerlaufstrom herausgerechnet; diese Faustregel nimmt den Strom, wie er ist, und übertreibt darum eine kleine Last.
    .turn-over-no-load = Sie haben durch den Leerlaufstrom geteilt; die Regel richtet sich nach dem Bemessungsstrom des Typenschilds.
    .turn-load-left = Sie haben die noch freie Auslastung angegeben; gefragt ist die genutzte.

relation-start-current-verdict-plate = Urteil über den Strom des Motors
    .method = das Mittel der drei Außenleiter gegen den Bemessungsstrom des Typenschilds halten
    .limits = ohne einen Betriebsfaktor auf dem Typenschild
    .turn-power-drawn-against-plate = Sie haben die aufgenommene Leistung gegen die auf dem Typenschild gehalten; das Typenschild nennt, was die Welle abgibt, halten Sie also den Strom gegen den Strom auf dem Typenschild.
    .turn-sum-of-lines = Sie haben die Summe der drei Außenleiter gegen das Typenschild gehalten; das Typenschild nennt den Strom eines Außenleiters.
    .turn-turned-round = Sie haben den Vergleich umgedreht; mehr als der Strom auf dem Typenschild ist eine Überlast.

relation-start-motor-way-stages = Nötige Drehrichtung des Motors
    .method = die Drehrichtung für jede Stufe einmal umkehren: eine ungerade Stufenzahl kehrt sie um, eine gerade lässt sie
    .limits = parallele Wellen; beide von der Kettenradseite aus gesehen
    .source = zwei Räder, die aufeinander abwälzen, drehen gegensinnig
    .turn-gears-left-out = Sie haben die Drehrichtung unverändert durch die Zahnräder gehen lassen; jedes Räderpaar kehrt sie um, und nur eine gerade Stufenzahl lässt sie, wie sie war.
    .turn-turned-round-once = Sie haben die Drehrichtung für das ganze Getriebe einmal umgekehrt; jedes Räderpaar kehrt sie um.
    .turn-one-stage-too-few = Sie haben ein Räderpaar zu wenig gezählt; jede Stufe ist ein Paar.

relation-start-bumped-way-phases = Drehrichtung des Motors bei diesem Anschluss der Außenleiter
    .method = zwei vertauschte Außenleiter kehren die Drehrichtung eines Drehstrommotors um

relation-start-rotation-verdict-bump = Urteil über die Drehrichtung
    .method = die Drehrichtung des Motors beim Antippen gegen die nötige halten
    .limits = parallele Wellen; beide von der Kettenradseite aus gesehen
    .turn-output-shaft = Sie haben den Motor gegen die geforderte Drehrichtung der Abtriebswelle gehalten; dazwischen liegen die Zahnräder.
    .turn-seen-from-the-other-side = Sie haben von der anderen Seite geschaut; von dort gesehen dreht jede Welle andersherum.

relation-start-ready-verdict-guards-oil-and-rotation = Urteil über den ersten Start unter Last
    .method = gestartet wird nur, wenn alle drei stimmen: Schutzeinrichtungen alle befestigt, Ölstand zwischen den Marken, Drehrichtung richtig
    .limits = außerdem alle Personen aus dem Gefahrenbereich und verständigt, die Schlösser von denen abgenommen, die sie angebracht haben; die Freigabe gibt, wer verantwortlich ist
    .turn-guards-left-out = Sie haben die Schutzeinrichtungen außer Acht gelassen; gestartet wird nie, wenn eine fehlt, auch nicht für eine Minute.
    .turn-oil-left-out = Sie haben das Öl außer Acht gelassen; ein Getriebe, das ohne sein Öl startet, ist in Minuten ruiniert, und ein überfülltes läuft heiß.
    .turn-rotation-left-out = Sie haben die Drehrichtung außer Acht gelassen; verkehrt herum zerstört der Antrieb eine Rücklaufsperre oder bewegt die Last, wo niemand es erwartet.
