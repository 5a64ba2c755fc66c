## Größen, Beziehungen, ihre Quellen und Fehler: der Antriebsstrang

quantity-drive-load-share = genutzter Anteil der Leistung auf dem Typenschild des Motors

quantity-drive-motor-speed = Drehzahl des Motors

quantity-drive-ratio = Übersetzung des Getriebes

quantity-drive-motor-torque = Drehmoment des Motors

quantity-drive-output-torque = Drehmoment an der Abtriebswelle

quantity-drive-output-power = Leistung, die aus dem Getriebe kommt

relation-drive-power-share = Leistung aus dem genutzten Anteil der Leistung auf dem Typenschild
    .source = Definition des Anteils

relation-drive-load-share-meter = Genutzter Anteil der Leistung auf dem Typenschild des Motors, am Leistungsmesser abgelesen
    .limits = dauernd über 1 ist der Motor überlastet
    .source = Definition des Anteils
    .turn-inverted = Sie haben die Leistung auf dem Typenschild durch die gemessene geteilt; der Anteil ist gemessene Leistung durch die auf dem Typenschild.
    .turn-left-over = Sie haben angegeben, was der Motor noch übrig hat; gefragt ist der Anteil, der genutzt wird.
    .turn-output-power = Sie haben die Leistung hinter dem Getriebe genommen; für den Anteil des Motors zählt, was der Motor selbst abgibt.

relation-drive-motor-torque-power = Drehmoment des Motors aus seiner Leistung und Drehzahl
    .source = R. G. Budynas, J. K. Nisbett, Shigley's Mechanical Engineering Design: T = 63 025 hp / n; 9 549 = 60 000 / 2π
    .turn-plate-power = Sie haben die Leistung auf dem Typenschild benutzt; hier zählt, was der Motor abgibt, am Leistungsmesser abgelesen.
    .turn-output-speed = Sie haben die Drehzahl der Abtriebswelle benutzt; zum Drehmoment des Motors gehört seine eigene Drehzahl.
    .turn-output-power = Sie haben die Verluste des Getriebes abgezogen; sie entstehen hinter dem Motor, in seinem Drehmoment stecken sie nicht.
    .turn-revolutions = Sie haben durch Umdrehungen geteilt und die 2π weggelassen; das Drehmoment ist Leistung durch Winkelgeschwindigkeit in Radiant je Sekunde.

relation-drive-output-speed-ratio = Drehzahl der Abtriebswelle aus der Übersetzung des Getriebes
    .place = Beispiele 11.1 und 11.4, S. 217 und 236
    .turn-multiplied = Sie haben mit der Übersetzung malgenommen; ein Getriebe teilt die Drehzahl durch sie.
    .turn-not-reduced = Sie haben die Drehzahl des Motors angegeben; die Abtriebswelle dreht sich um die Übersetzung langsamer.
    .turn-efficiency = Sie haben den Wirkungsgrad von der Drehzahl abgezogen; Verluste nehmen Drehmoment weg, nie Drehzahl.
    .turn-ratio-squared = Sie haben zweimal durch die Übersetzung geteilt; die Übersetzung auf dem Typenschild gilt schon für das ganze Getriebe.

relation-drive-output-torque-power = Drehmoment an der Abtriebswelle aus Leistung, Wirkungsgrad und ihrer Drehzahl
    .source = R. G. Budynas, J. K. Nisbett, Shigley's Mechanical Engineering Design: T = 63 025 hp / n; 9 549 = 60 000 / 2π
    .turn-motor-speed = Sie haben die Drehzahl des Motors benutzt; zum Drehmoment an der Abtriebswelle gehört die Drehzahl der Abtriebswelle.
    .turn-efficiency-left-out = Sie haben den Wirkungsgrad weggelassen; die Verluste des Getriebes nehmen Drehmoment weg.
    .turn-efficiency-divided = Sie haben durch den Wirkungsgrad geteilt; die Verluste machen das Drehmoment am Abtrieb kleiner, nehmen Sie also mal.
    .turn-efficiency-twice = Sie haben den Wirkungsgrad zweimal hineingerechnet; er gehört einmal hinein.
    .turn-one-stage = Sie haben nur den Verlust einer Stufe abgezogen; nehmen Sie den Wirkungsgrad des ganzen Getriebes.
    .turn-plate-power = Sie haben die Leistung auf dem Typenschild benutzt; hier zählt, was der Motor abgibt, am Leistungsmesser abgelesen.
    .turn-ratio-again = Sie haben auch noch mit der Übersetzung malgenommen; in der Drehzahl der Abtriebswelle steckt sie schon.
    .turn-revolutions = Sie haben durch Umdrehungen geteilt und die 2π weggelassen; das Drehmoment ist Leistung durch Winkelgeschwindigkeit in Radiant je Sekunde.

relation-drive-output-torque-reducer = Drehmoment an der Abtriebswelle aus Motordrehmoment, Übersetzung und Wirkungsgrad
    .place = Beispiele 11.1 und 11.4, S. 217 und 236
    .turn-not-multiplied = Sie haben das Drehmoment des Motors stehen lassen; das Getriebe nimmt es mit der Übersetzung mal, abzüglich der Verluste.
    .turn-ratio-divided = Sie haben durch die Übersetzung geteilt; ein Getriebe macht die Drehzahl kleiner und das Drehmoment größer.
    .turn-efficiency-left-out = Sie haben den Wirkungsgrad weggelassen; die Verluste des Getriebes nehmen Drehmoment weg.
    .turn-efficiency-divided = Sie haben durch den Wirkungsgrad geteilt; die Verluste machen das Drehmoment am Abtrieb kleiner, nehmen Sie also mal.
    .turn-one-stage = Sie haben nur den Verlust einer Stufe abgezogen; nehmen Sie den Wirkungsgrad des ganzen Getriebes.
    .turn-stages-for-ratio = Sie haben mit der Zahl der Stufen malgenommen; das Drehmoment wächst mit der Übersetzung.

relation-drive-output-power-torque = Leistung, die aus dem Getriebe kommt, aus Drehmoment und Drehzahl seiner Abtriebswelle
    .source = R. G. Budynas, J. K. Nisbett, Shigley's Mechanical Engineering Design: T = 63 025 hp / n; 9 549 = 60 000 / 2π
    .turn-motor-speed = Sie haben die Drehzahl des Motors benutzt; die Leistung der Abtriebswelle ist ihr eigenes Drehmoment mal ihre eigene Drehzahl.
    .turn-motor-torque = Sie haben das Drehmoment des Motors benutzt; die Leistung der Abtriebswelle ist ihr eigenes Drehmoment mal ihre eigene Drehzahl.
    .turn-efficiency-again = Sie haben den Wirkungsgrad noch einmal hineingerechnet; vom Drehmoment an der Abtriebswelle sind die Verluste schon abgezogen.
    .turn-revolutions = Sie haben mit Umdrehungen malgenommen und die 2π weggelassen; die Leistung ist Drehmoment mal Winkelgeschwindigkeit in Radiant je Sekunde.

relation-drive-ratio-speeds = Übersetzung des Getriebes aus beiden Drehzahlen
    .place = Beispiele 11.1 und 11.4, S. 217 und 236
    .turn-inverted = Sie haben die Drehzahl der Abtriebswelle durch die des Motors geteilt; die Übersetzung eines Getriebes ist Drehzahl am Antrieb durch Drehzahl am Abtrieb, größer als 1.

relation-drive-power-torque = Vom Motor abgegebene Leistung, aus seinem Drehmoment und seiner Drehzahl
    .source = R. G. Budynas, J. K. Nisbett, Shigley's Mechanical Engineering Design: T = 63 025 hp / n; 9 549 = 60 000 / 2π
    .turn-output-speed = Sie haben die Drehzahl der Abtriebswelle benutzt; die Leistung des Motors ist sein eigenes Drehmoment mal seine eigene Drehzahl.
    .turn-output-torque = Sie haben das Drehmoment der Abtriebswelle benutzt; die Leistung des Motors ist sein eigenes Drehmoment mal seine eigene Drehzahl.
    .turn-efficiency = Sie haben die Verluste des Getriebes abgezogen; sie entstehen hinter dem Motor.
    .turn-revolutions = Sie haben mit Umdrehungen malgenommen und die 2π weggelassen; die Leistung ist Drehmoment mal Winkelgeschwindigkeit in Radiant je Sekunde.

relation-drive-motor-torque-reducer = Drehmoment des Motors, das ein Drehmoment an der Abtriebswelle verlangt
    .place = Beispiele 11.1 und 11.4, S. 217 und 236
    .turn-multiplied = Sie haben mit der Übersetzung malgenommen; zum Motor zurück teilt man das Drehmoment durch sie.
    .turn-efficiency-left-out = Sie haben den Wirkungsgrad weggelassen; der Motor muss auch die Verluste des Getriebes aufbringen.
    .turn-efficiency-multiplied = Sie haben mit dem Wirkungsgrad malgenommen; der Motor muss die Verluste zusätzlich aufbringen, teilen Sie also.

relation-drive-motor-speed-plate-speed = Drehzahl eines Motors mit diesem Typenschild unter dieser Last
    .place = Schlupfverfahren (Gleichung aus dem Gedächtnis)
