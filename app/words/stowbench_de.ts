<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="de">
    <context>
        <name>AddPanel</name>
        <message>
            <source>Add something</source>
            <translation>Etwas dazulegen</translation>
        </message>
        <message>
            <source>How many</source>
            <translation>Wie viele</translation>
        </message>
        <message>
            <source>Code or name</source>
            <translation>Code oder Name</translation>
        </message>
        <message>
            <source>Add it</source>
            <translation>Dazulegen</translation>
        </message>
        <message>
            <source>Enter</source>
            <translation>Enter</translation>
        </message>
        <message>
            <source>No good has these words.</source>
            <translation>Keine Ware hat diese Wörter.</translation>
        </message>
        <message>
            <source>Type a code or a name, or point at a good.</source>
            <translation>Einen Code oder Namen tippen oder auf eine Ware zeigen.</translation>
        </message>
    </context>
    <context>
        <name>AddressCard</name>
        <message>
            <source>Name</source>
            <translation>Name</translation>
        </message>
        <message>
            <source>House and street</source>
            <translation>Haus und Straße</translation>
        </message>
        <message>
            <source>Postcode</source>
            <translation>Postleitzahl</translation>
        </message>
        <message>
            <source>Town</source>
            <translation>Ort</translation>
        </message>
        <message>
            <source>Country</source>
            <translation>Land</translation>
        </message>
    </context>
    <context>
        <name>AlreadyOpen</name>
        <message>
            <source>Stowbench</source>
            <translation>Stowbench</translation>
        </message>
        <message>
            <source>This shop book is open in another window</source>
            <translation>Dieses Ladenbuch ist schon in einem anderen Fenster offen</translation>
        </message>
        <message>
            <source>Go on there.</source>
            <translation>Dort weitermachen.</translation>
        </message>
        <message>
            <source>Close</source>
            <translation>Schließen</translation>
        </message>
        <message>
            <source>Esc</source>
            <translation>Esc</translation>
        </message>
    </context>
    <context>
        <name>Arrivals</name>
        <message>
            <source>Which column is what?</source>
            <translation>Welche Spalte ist was?</translation>
        </message>
        <message>
            <source>Filter the orders</source>
            <translation>Bestellungen filtern</translation>
        </message>
        <message>
            <source>Enter by hand</source>
            <translation>Von Hand eingeben</translation>
        </message>
        <message>
            <source>Take in a file</source>
            <translation>Datei aufnehmen</translation>
        </message>
        <message>
            <source>No orders have arrived yet</source>
            <translation>Noch ist keine Bestellung eingetroffen</translation>
        </message>
        <message>
            <source>Save the orders from your shop as a file (CSV) and take it in here, or drop it on this window. Orders by mail or from a fair are entered by hand.</source>
            <translation>Bestellungen im Laden als Datei (CSV) speichern und hier aufnehmen oder auf dieses Fenster ziehen. Bestellungen per Post oder vom Markt werden von Hand eingegeben.</translation>
        </message>
        <message>
            <source>Orders</source>
            <translation>Bestellungen</translation>
        </message>
        <message>
            <source>✓ ready</source>
            <translation>✓ bereit</translation>
        </message>
        <message>
            <source>set aside</source>
            <translation>zurückgestellt</translation>
        </message>
        <message>
            <source>All that is needed is there</source>
            <translation>Alles Nötige ist da</translation>
        </message>
        <message>
            <source>Remembered for this shop: next time its files go straight in.</source>
            <translation>Für diesen Laden gemerkt: nächstes Mal gehen seine Dateien gleich hinein.</translation>
        </message>
        <message>
            <source>Leave the file</source>
            <translation>Datei weglegen</translation>
        </message>
        <message>
            <source>Esc</source>
            <translation>Esc</translation>
        </message>
        <message>
            <source>Take it in</source>
            <translation>Aufnehmen</translation>
        </message>
        <message>
            <source>Ctrl Enter</source>
            <translation>Strg Enter</translation>
        </message>
        <message>
            <source>Orders to take in</source>
            <translation>Bestellungen zum Aufnehmen</translation>
        </message>
        <message>
            <source>Tables (*.csv *.txt *.tsv)</source>
            <translation>Tabellen (*.csv *.txt *.tsv)</translation>
        </message>
        <message>
            <source>All files (*)</source>
            <translation>Alle Dateien (*)</translation>
        </message>
        <message>
            <source>%1 orders</source>
            <translation>%1 Bestellungen</translation>
        </message>
        <message>
            <source>marked</source>
            <translation>markiert</translation>
        </message>
        <message>
            <source>Mark %1</source>
            <translation>%1 markieren</translation>
        </message>
        <message>
            <source>%1 marked</source>
            <translation>%1 markiert</translation>
        </message>
        <message>
            <source>Enter checks them, S sets them aside, X calls them off, B takes them back, Esc unmarks them.</source>
            <translation>Enter prüft sie, S stellt sie zurück, X storniert sie, B holt sie zurück, Esc hebt die Marken auf.</translation>
        </message>
        <message numerus="yes">
            <source>%n are fine: check them</source>
            <translation>
                <numerusform>%n ist in Ordnung: prüfen</numerusform>
                <numerusform>%n sind in Ordnung: prüfen</numerusform>
            </translation>
        </message>
        <message>
            <source>Check the marked</source>
            <translation>Markierte prüfen</translation>
        </message>
        <message>
            <source>Enter</source>
            <translation>Enter</translation>
        </message>
        <message>
            <source>✓ planned</source>
            <translation>✓ geplant</translation>
        </message>
        <message numerus="yes">
            <source>Plan %n orders</source>
            <translation>
                <numerusform>%n Bestellung planen</numerusform>
                <numerusform>%n Bestellungen planen</numerusform>
            </translation>
        </message>
        <message>
            <source>To the plan</source>
            <translation>Zum Plan</translation>
        </message>
    </context>
    <context>
        <name>AsidePanel</name>
        <message>
            <source>Set aside: %1</source>
            <translation>Zurückstellen: %1</translation>
        </message>
        <message>
            <source>say why, so that it is not forgotten</source>
            <translation>sag warum, damit es nicht vergessen wird</translation>
        </message>
        <message>
            <source>Why it waits</source>
            <translation>Warum sie wartet</translation>
        </message>
        <message>
            <source>address asked for, waiting for ink</source>
            <translation>Adresse erfragt, wartet auf Tinte</translation>
        </message>
        <message>
            <source>Until which day, may stay empty</source>
            <translation>Bis zu welchem Tag, darf leer bleiben</translation>
        </message>
        <message>
            <source>2026-12-01</source>
            <translation>2026-12-01</translation>
        </message>
        <message>
            <source>Set aside</source>
            <translation>Zurückstellen</translation>
        </message>
        <message>
            <source>Enter</source>
            <translation>Enter</translation>
        </message>
    </context>
    <context>
        <name>BackPanel</name>
        <message>
            <source>Parcel %1 came back</source>
            <translation>Paket %1 kam zurück</translation>
        </message>
        <message>
            <source>Why it came back</source>
            <translation>Warum es zurückkam</translation>
        </message>
        <message>
            <source>nobody there, address wrong, crushed on the way</source>
            <translation>niemand da, Adresse falsch, unterwegs zerdrückt</translation>
        </message>
        <message>
            <source>Its goods</source>
            <translation>Seine Ware</translation>
        </message>
        <message>
            <source>not looked at yet</source>
            <translation>noch nicht angesehen</translation>
        </message>
        <message>
            <source>whole, on the shelf again</source>
            <translation>heil, wieder im Regal</translation>
        </message>
        <message>
            <source>written off</source>
            <translation>abgeschrieben</translation>
        </message>
        <message>
            <source>Send it again: the order is planned anew</source>
            <translation>Noch einmal schicken: die Bestellung wird neu geplant</translation>
        </message>
        <message>
            <source>Note it</source>
            <translation>Vermerken</translation>
        </message>
        <message>
            <source>Enter</source>
            <translation>Enter</translation>
        </message>
    </context>
    <context>
        <name>BeforeSale</name>
        <message>
            <source>Before the sale</source>
            <translation>Vor dem Verkauf</translation>
        </message>
        <message>
            <source>Table of postage to charge</source>
            <translation>Tabelle der Versandkosten</translation>
        </message>
        <message>
            <source>Good</source>
            <translation>Ware</translation>
        </message>
        <message>
            <source>How many</source>
            <translation>Wie viele</translation>
        </message>
        <message>
            <source>Country</source>
            <translation>Land</translation>
        </message>
        <message>
            <source>Postcode, if it matters</source>
            <translation>Postleitzahl, wenn nötig</translation>
        </message>
        <message>
            <source>What would it cost?</source>
            <translation>Was würde es kosten?</translation>
        </message>
        <message>
            <source>Enter</source>
            <translation>Enter</translation>
        </message>
        <message>
            <source>Services</source>
            <translation>Dienste</translation>
        </message>
        <message>
            <source>Writing the table …</source>
            <translation>Tabelle wird geschrieben …</translation>
        </message>
        <message>
            <source>Trying …</source>
            <translation>Wird probiert …</translation>
        </message>
        <message>
            <source>For a question at the stall or by mail: the outer it would take, its weight, and what each service asks for it.</source>
            <translation>Für eine Frage am Stand oder per Mail: die Hülle, die es brauchte, ihr Gewicht, und was jeder Dienst dafür verlangt.</translation>
        </message>
    </context>
    <context>
        <name>Beginning</name>
        <message>
            <source>Look at a demo day</source>
            <translation>Vorführtag ansehen</translation>
        </message>
        <message>
            <source>Put this away</source>
            <translation>Weglegen</translation>
        </message>
        <message>
            <source>, done</source>
            <translation>, erledigt</translation>
        </message>
        <message>
            <source>, now</source>
            <translation>, jetzt</translation>
        </message>
        <message>
            <source>Alt %1</source>
            <translation>Alt %1</translation>
        </message>
    </context>
    <context>
        <name>Bench</name>
        <message>
            <source>All that was picked is packed</source>
            <translation>Alles Gesammelte ist gepackt</translation>
        </message>
        <message>
            <source>The bench is free</source>
            <translation>Die Packbank ist frei</translation>
        </message>
        <message>
            <source>What is labelled waits for its courier.</source>
            <translation>Was sein Etikett hat, wartet auf seinen Zusteller.</translation>
        </message>
        <message>
            <source>Parcels whose tray is full are packed here, first those whose courier comes first.</source>
            <translation>Hier wird gepackt, was in vollen Kisten liegt; zuerst, was zuerst abgeholt wird.</translation>
        </message>
        <message>
            <source>To the hand-over</source>
            <translation>Zur Übergabe</translation>
        </message>
        <message>
            <source>To the shelves</source>
            <translation>Zu den Regalen</translation>
        </message>
        <message>
            <source>Do this now</source>
            <translation>Jetzt tun</translation>
        </message>
        <message>
            <source>Hold it</source>
            <translation>Zurückhalten</translation>
        </message>
        <message>
            <source>It still serves</source>
            <translation>Es passt noch</translation>
        </message>
        <message>
            <source>Space</source>
            <translation>Leertaste</translation>
        </message>
        <message>
            <source>Box gone</source>
            <translation>Hülle fehlt</translation>
        </message>
        <message>
            <source>Add</source>
            <translation>Dazu</translation>
        </message>
        <message>
            <source>Back</source>
            <translation>Zurück</translation>
        </message>
        <message>
            <source>Later</source>
            <translation>Später</translation>
        </message>
        <message>
            <source>Print again</source>
            <translation>Noch mal drucken</translation>
        </message>
        <message>
            <source>No label</source>
            <translation>Kein Etikett</translation>
        </message>
        <message>
            <source>Copy this address by hand</source>
            <translation>Diese Adresse von Hand abschreiben</translation>
        </message>
        <message>
            <source>It stands on the parcel</source>
            <translation>Sie steht auf dem Paket</translation>
        </message>
        <message>
            <source>costs %1</source>
            <translation>kostet %1</translation>
        </message>
        <message>
            <source>goes as %1</source>
            <translation>geht als %1</translation>
        </message>
        <message>
            <source>%1 %2: saves %3</source>
            <translation>%1 %2: spart %3</translation>
        </message>
        <message>
            <source>%1 shorter</source>
            <translation>%1 kürzer</translation>
        </message>
        <message>
            <source>%1 narrower</source>
            <translation>%1 schmaler</translation>
        </message>
        <message>
            <source>%1 thinner</source>
            <translation>%1 dünner</translation>
        </message>
        <message>
            <source>%1 lighter</source>
            <translation>%1 leichter</translation>
        </message>
        <message>
            <source>a thing missing is seen from %1 on</source>
            <translation>was fehlt, fällt ab %1 auf</translation>
        </message>
        <message>
            <source>expected %1</source>
            <translation>erwartet %1</translation>
        </message>
        <message>
            <source>contents, before filler</source>
            <translation>Inhalt, vor dem Füllstoff</translation>
        </message>
        <message>
            <source>%1, %2</source>
            <translation>%1, %2</translation>
        </message>
        <message>
            <source>no service takes it</source>
            <translation>kein Dienst nimmt es</translation>
        </message>
        <message>
            <source>%1 does not take it at this weight</source>
            <translation>%1 nimmt es bei diesem Gewicht nicht</translation>
        </message>
        <message>
            <source>zone %1</source>
            <translation>Zone %1</translation>
        </message>
        <message>
            <source>closed %1</source>
            <translation>geschlossen %1</translation>
        </message>
        <message>
            <source>%1 below the step edge</source>
            <translation>%1 unter der Stufengrenze</translation>
        </message>
        <message>
            <source>on the step edge, cannot be sure: %1 or %2</source>
            <translation>an der Stufengrenze, nicht sicher: %1 oder %2</translation>
        </message>
        <message>
            <source>%1 it costs %2</source>
            <translation>%1 kostet es %2</translation>
        </message>
        <message>
            <source>Take %1</source>
            <translation>%1 nehmen</translation>
        </message>
        <message>
            <source>Make up %1, tape its base</source>
            <translation>%1 aufrichten, den Boden kleben</translation>
        </message>
        <message>
            <source>score it and cut it down to %1 inside</source>
            <translation>ritzen und auf %1 innen herunterschneiden</translation>
        </message>
        <message>
            <source>Make up %1</source>
            <translation>%1 aufrichten</translation>
        </message>
        <message>
            <source>Take %1, close one end</source>
            <translation>%1 nehmen, ein Ende schließen</translation>
        </message>
        <message>
            <source>Put in: %1</source>
            <translation>Hineinlegen: %1</translation>
        </message>
        <message>
            <source>Put in %1: %2</source>
            <translation>%1 hineinlegen: %2</translation>
        </message>
        <message>
            <source>fragile</source>
            <translation>zerbrechlich</translation>
        </message>
        <message>
            <source>rolled</source>
            <translation>gerollt</translation>
        </message>
        <message>
            <source>folded</source>
            <translation>gefaltet</translation>
        </message>
        <message>
            <source>flat, under the cushion of the floor</source>
            <translation>flach, unter das Polster am Boden</translation>
        </message>
        <message>
            <source>“%1”</source>
            <translation>„%1“</translation>
        </message>
        <message>
            <source>in it: %1</source>
            <translation>darin: %1</translation>
        </message>
        <message>
            <source>numbers %1 on the drawing</source>
            <translation>Nummern %1 in der Zeichnung</translation>
        </message>
        <message>
            <source>Fill: %1, %2</source>
            <translation>Füllen: %1, %2</translation>
        </message>
        <message>
            <source>Fill with %1</source>
            <translation>Mit %1 füllen</translation>
        </message>
        <message>
            <source>%1, until it stands just proud</source>
            <translation>%1, bis es eben übersteht</translation>
        </message>
        <message>
            <source>Close it, tape it</source>
            <translation>Schließen, kleben</translation>
        </message>
        <message>
            <source>Close it</source>
            <translation>Schließen</translation>
        </message>
        <message>
            <source>Close it and tape it</source>
            <translation>Schließen und kleben</translation>
        </message>
        <message>
            <source>%1 of tape: middle and both edges</source>
            <translation>%1 Klebeband: Mitte und beide Kanten</translation>
        </message>
        <message>
            <source>Weigh it</source>
            <translation>Wiegen</translation>
        </message>
        <message>
            <source>Put it on the scale</source>
            <translation>Auf die Waage stellen</translation>
        </message>
        <message>
            <source>type what the scale says and press Enter</source>
            <translation>eintippen, was die Waage zeigt, und Enter drücken</translation>
        </message>
        <message>
            <source>Stick the label on</source>
            <translation>Etikett aufkleben</translation>
        </message>
        <message>
            <source>Stick label %1 on</source>
            <translation>Etikett %1 aufkleben</translation>
        </message>
        <message>
            <source>then scan it, or press Space</source>
            <translation>dann scannen oder Leertaste drücken</translation>
        </message>
        <message>
            <source>%1 softens above %2 °C: hold until Monday?</source>
            <translation>%1 wird über %2 °C weich: bis Montag zurückhalten?</translation>
        </message>
        <message>
            <source>heavy: two hands or a trolley</source>
            <translation>schwer: zwei Hände oder ein Wagen</translation>
        </message>
        <message>
            <source>flammable: the carrier’s rules decide</source>
            <translation>entzündlich: die Regeln des Zustellers entscheiden</translation>
        </message>
        <message>
            <source>restricted: ask the carrier before it goes</source>
            <translation>beschränkt: vor dem Versand den Zusteller fragen</translation>
        </message>
        <message>
            <source>glass: look it over</source>
            <translation>Glas: genau ansehen</translation>
        </message>
        <message>
            <source>liquid: caps tight, upright</source>
            <translation>flüssig: Verschluss fest, aufrecht</translation>
        </message>
        <message>
            <source>packing slip</source>
            <translation>Lieferschein</translation>
        </message>
        <message>
            <source>gift note</source>
            <translation>Geschenkgruß</translation>
        </message>
        <message>
            <source>the one marked print %1; tear up the one before</source>
            <translation>das mit „%1. Druck“; das vorige zerreißen</translation>
        </message>
        <message>
            <source>Back, it is printed after all</source>
            <translation>Zurück, es ist doch gedruckt</translation>
        </message>
        <message>
            <source>Esc</source>
            <translation>Esc</translation>
        </message>
        <message>
            <source>Weigh</source>
            <translation>Wiegen</translation>
        </message>
    </context>
    <context>
        <name>BenchDrawing</name>
        <message>
            <source>Together</source>
            <translation>Zusammen</translation>
        </message>
        <message>
            <source>Take apart</source>
            <translation>Auseinander</translation>
        </message>
    </context>
    <context>
        <name>BenchSteps</name>
        <message>
            <source>Steps</source>
            <translation>Schritte</translation>
        </message>
        <message>
            <source>, done</source>
            <translation>, erledigt</translation>
        </message>
        <message>
            <source>, now</source>
            <translation>, jetzt</translation>
        </message>
    </context>
    <context>
        <name>ColumnMatch</name>
        <message>
            <source>Shop</source>
            <translation>Laden</translation>
        </message>
        <message>
            <source>Columns of the file</source>
            <translation>Spalten der Datei</translation>
        </message>
        <message>
            <source>What is wrong in the file</source>
            <translation>Was an der Datei nicht stimmt</translation>
        </message>
    </context>
    <context>
        <name>Cupboard</name>
        <message>
            <source>Goods</source>
            <translation>Waren</translation>
        </message>
        <message>
            <source>Supplies</source>
            <translation>Packmittel</translation>
        </message>
        <message>
            <source>Rate sheets</source>
            <translation>Preislisten</translation>
        </message>
        <message>
            <source>Records</source>
            <translation>Aufzeichnungen</translation>
        </message>
        <message>
            <source>House</source>
            <translation>Haus</translation>
        </message>
        <message>
            <source>Sending</source>
            <translation>Versenden</translation>
        </message>
        <message>
            <source>Before the sale</source>
            <translation>Vor dem Verkauf</translation>
        </message>
    </context>
    <context>
        <name>DayLine</name>
        <message>
            <source>The day</source>
            <translation>Der Tag</translation>
        </message>
        <message>
            <source>%1, %2 waiting</source>
            <translation>%1, %2 warten</translation>
        </message>
        <message>
            <source>Find</source>
            <translation>Suchen</translation>
        </message>
        <message>
            <source>Ctrl F</source>
            <translation>Strg F</translation>
        </message>
        <message>
            <source>Cupboard</source>
            <translation>Schrank</translation>
        </message>
    </context>
    <context>
        <name>DispatchPanel</name>
        <message>
            <source>Copy message</source>
            <translation>Nachricht kopieren</translation>
        </message>
        <message>
            <source>Customs data as PDF</source>
            <translation>Zolldaten als PDF</translation>
        </message>
        <message>
            <source>Postage</source>
            <translation>Porto</translation>
        </message>
        <message>
            <source>Refunded</source>
            <translation>Erstattet</translation>
        </message>
        <message>
            <source>Bought for</source>
            <translation>Gekauft für</translation>
        </message>
        <message>
            <source>Number or receipt</source>
            <translation>Nummer oder Beleg</translation>
        </message>
        <message>
            <source>Stamps</source>
            <translation>Marken</translation>
        </message>
        <message>
            <source>Buy again</source>
            <translation>Noch einmal kaufen</translation>
        </message>
        <message>
            <source>Bought</source>
            <translation>Gekauft</translation>
        </message>
        <message>
            <source>Enter</source>
            <translation>Enter</translation>
        </message>
        <message>
            <source>Tracking number</source>
            <translation>Sendungsnummer</translation>
        </message>
        <message>
            <source>Message to the buyer</source>
            <translation>Nachricht an die Käuferin</translation>
        </message>
        <message>
            <source>counted with %1</source>
            <translation>gerechnet mit %1</translation>
        </message>
    </context>
    <context>
        <name>FailureWord</name>
        <message>
            <source>Try again</source>
            <translation>Noch einmal versuchen</translation>
        </message>
        <message>
            <source>Enter</source>
            <translation>Enter</translation>
        </message>
        <message>
            <source>Close the program</source>
            <translation>Programm schließen</translation>
        </message>
        <message>
            <source>Ctrl Q</source>
            <translation>Strg Q</translation>
        </message>
    </context>
    <context>
        <name>FilterField</name>
        <message>
            <source>Filter · F6</source>
            <translation>Filter · F6</translation>
        </message>
    </context>
    <context>
        <name>FindPanel</name>
        <message>
            <source>Find</source>
            <translation>Suchen</translation>
        </message>
        <message>
            <source>Name, postcode, order or tracking number</source>
            <translation>Name, Postleitzahl, Bestell- oder Sendungsnummer</translation>
        </message>
        <message>
            <source>Enter</source>
            <translation>Enter</translation>
        </message>
        <message>
            <source>Press again: it cannot be undone</source>
            <translation>Noch einmal: lässt sich nicht rückgängig machen</translation>
        </message>
        <message>
            <source>Erase the buyer&apos;s data</source>
            <translation>Daten des Käufers löschen</translation>
        </message>
        <message>
            <source>Go there</source>
            <translation>Dorthin</translation>
        </message>
    </context>
    <context>
        <name>GoodPanel</name>
        <message>
            <source>New good</source>
            <translation>Neue Ware</translation>
        </message>
        <message>
            <source>Code</source>
            <translation>Code</translation>
        </message>
        <message>
            <source>Name</source>
            <translation>Name</translation>
        </message>
        <message>
            <source>Shape, of the largest piece</source>
            <translation>Form, des größten Stücks</translation>
        </message>
        <message>
            <source>Shape</source>
            <translation>Form</translation>
        </message>
        <message>
            <source>block</source>
            <translation>Quader</translation>
        </message>
        <message>
            <source>round, standing</source>
            <translation>rund, stehend</translation>
        </message>
        <message>
            <source>sheet</source>
            <translation>Bogen</translation>
        </message>
        <message>
            <source>soft</source>
            <translation>weich</translation>
        </message>
        <message>
            <source>May be turned</source>
            <translation>Darf gedreht werden</translation>
        </message>
        <message>
            <source>any way</source>
            <translation>beliebig</translation>
        </message>
        <message>
            <source>this way up</source>
            <translation>diese Seite oben</translation>
        </message>
        <message>
            <source>lying flat</source>
            <translation>flach liegend</translation>
        </message>
        <message>
            <source>not at all</source>
            <translation>gar nicht</translation>
        </message>
        <message>
            <source>Length</source>
            <translation>Länge</translation>
        </message>
        <message>
            <source>Diameter</source>
            <translation>Durchmesser</translation>
        </message>
        <message>
            <source>Volume</source>
            <translation>Volumen</translation>
        </message>
        <message>
            <source>L</source>
            <translation>L</translation>
        </message>
        <message>
            <source>mm</source>
            <translation>mm</translation>
        </message>
        <message>
            <source>Width</source>
            <translation>Breite</translation>
        </message>
        <message>
            <source>Height</source>
            <translation>Höhe</translation>
        </message>
        <message>
            <source>Never thinner than</source>
            <translation>Nie dünner als</translation>
        </message>
        <message>
            <source>Thickness</source>
            <translation>Dicke</translation>
        </message>
        <message>
            <source>Weight of one</source>
            <translation>Gewicht eines Stücks</translation>
        </message>
        <message>
            <source>g</source>
            <translation>g</translation>
        </message>
        <message>
            <source>Give or take</source>
            <translation>Mehr oder weniger</translation>
        </message>
        <message>
            <source>Cushion all round</source>
            <translation>Polster ringsum</translation>
        </message>
        <message>
            <source>fragile</source>
            <translation>zerbrechlich</translation>
        </message>
        <message>
            <source>liquid</source>
            <translation>flüssig</translation>
        </message>
        <message>
            <source>Wrapping</source>
            <translation>Einschlag</translation>
        </message>
        <message>
            <source>Shelf place</source>
            <translation>Regalplatz</translation>
        </message>
        <message>
            <source>Pieces there</source>
            <translation>Stück vorhanden</translation>
        </message>
        <message>
            <source>Make more below</source>
            <translation>Nachmachen unter</translation>
        </message>
        <message>
            <source>Price</source>
            <translation>Preis</translation>
        </message>
        <message>
            <source>GTIN</source>
            <translation>GTIN</translation>
        </message>
        <message>
            <source>Customs words</source>
            <translation>Worte für den Zoll</translation>
        </message>
        <message>
            <source>HS code</source>
            <translation>HS-Nummer</translation>
        </message>
        <message>
            <source>Origin</source>
            <translation>Ursprung</translation>
        </message>
        <message>
            <source>Keep</source>
            <translation>Speichern</translation>
        </message>
        <message>
            <source>Ctrl Enter</source>
            <translation>Strg Enter</translation>
        </message>
    </context>
    <context>
        <name>Goods</name>
        <message>
            <source>Filter the goods</source>
            <translation>Waren filtern</translation>
        </message>
        <message>
            <source>New good</source>
            <translation>Neue Ware</translation>
        </message>
        <message>
            <source>Take in a file</source>
            <translation>Datei aufnehmen</translation>
        </message>
        <message>
            <source>Making list</source>
            <translation>Fertigungsliste</translation>
        </message>
        <message>
            <source>No goods yet</source>
            <translation>Noch keine Waren</translation>
        </message>
        <message>
            <source>Each good has a size and a weight; from these come the outer, the postage and the check on the scale. Enter the first one, or take in a table.</source>
            <translation>Jede Ware hat Größe und Gewicht; daraus folgen Hülle, Porto und die Prüfung auf der Waage. Die erste eingeben oder eine Tabelle aufnehmen.</translation>
        </message>
        <message>
            <source>code</source>
            <translation>Code</translation>
        </message>
        <message>
            <source>name</source>
            <translation>Name</translation>
        </message>
        <message>
            <source>largest size</source>
            <translation>größtes Maß</translation>
        </message>
        <message>
            <source>weight of one</source>
            <translation>Gewicht eines Stücks</translation>
        </message>
        <message>
            <source>shelf</source>
            <translation>Regal</translation>
        </message>
        <message>
            <source>there</source>
            <translation>da</translation>
        </message>
        <message>
            <source>Goods</source>
            <translation>Waren</translation>
        </message>
        <message>
            <source>Goods to take in</source>
            <translation>Waren zum Aufnehmen</translation>
        </message>
        <message>
            <source>Tables (*.csv *.txt *.tsv)</source>
            <translation>Tabellen (*.csv *.txt *.tsv)</translation>
        </message>
        <message>
            <source>All files (*)</source>
            <translation>Alle Dateien (*)</translation>
        </message>
    </context>
    <context>
        <name>HandOrder</name>
        <message>
            <source>Enter an order</source>
            <translation>Bestellung eingeben</translation>
        </message>
        <message>
            <source>What is ordered: count and code, with commas between</source>
            <translation>Was bestellt ist: Anzahl und Code, mit Kommas dazwischen</translation>
        </message>
        <message>
            <source>2 INK-SEA, 1 NOTE-R</source>
            <translation>2 INK-SEA, 1 NOTE-R</translation>
        </message>
        <message>
            <source>Where from</source>
            <translation>Woher</translation>
        </message>
        <message>
            <source>by hand</source>
            <translation>von Hand</translation>
        </message>
        <message>
            <source>Number, may stay empty</source>
            <translation>Nummer, darf leer bleiben</translation>
        </message>
        <message>
            <source>Note</source>
            <translation>Notiz</translation>
        </message>
        <message>
            <source>A gift: no prices in the parcel</source>
            <translation>Ein Geschenk: keine Preise im Paket</translation>
        </message>
        <message>
            <source>From whom</source>
            <translation>Von wem</translation>
        </message>
        <message>
            <source>Message</source>
            <translation>Gruß</translation>
        </message>
        <message>
            <source>Take it in</source>
            <translation>Aufnehmen</translation>
        </message>
        <message>
            <source>Ctrl Enter</source>
            <translation>Strg Enter</translation>
        </message>
    </context>
    <context>
        <name>HandOver</name>
        <message>
            <source>Nothing is labelled yet</source>
            <translation>Noch nichts etikettiert</translation>
        </message>
        <message>
            <source>A parcel comes here when its label sits on it. When the courier stands in the door, one key closes the list.</source>
            <translation>Ein Paket kommt hierher, wenn sein Etikett klebt. Steht der Zusteller in der Tür, schließt eine Taste die Liste.</translation>
        </message>
        <message>
            <source>To the bench</source>
            <translation>Zur Packbank</translation>
        </message>
        <message>
            <source>labelled</source>
            <translation>mit Etikett</translation>
        </message>
        <message>
            <source>Courier is here</source>
            <translation>Zusteller ist da</translation>
        </message>
        <message>
            <source>%1: courier is here</source>
            <translation>%1: Zusteller ist da</translation>
        </message>
        <message>
            <source>Parcels</source>
            <translation>Pakete</translation>
        </message>
        <message>
            <source>Filter the parcels</source>
            <translation>Pakete filtern</translation>
        </message>
        <message>
            <source>Tracking number</source>
            <translation>Sendungsnummer</translation>
        </message>
        <message>
            <source>Came back</source>
            <translation>Kam zurück</translation>
        </message>
        <message>
            <source>Postage, customs, message</source>
            <translation>Porto, Zoll, Nachricht</translation>
        </message>
        <message>
            <source>Send file</source>
            <translation>Versanddatei</translation>
        </message>
        <message>
            <source>Numbers from a file</source>
            <translation>Nummern aus einer Datei</translation>
        </message>
        <message>
            <source>Paste numbers</source>
            <translation>Nummern einfügen</translation>
        </message>
        <message>
            <source>Files for the shops</source>
            <translation>Dateien für die Läden</translation>
        </message>
        <message>
            <source>Messages</source>
            <translation>Nachrichten</translation>
        </message>
        <message>
            <source>Tracking number of %1</source>
            <translation>Sendungsnummer von %1</translation>
        </message>
        <message>
            <source>A carrier&apos;s file with tracking numbers</source>
            <translation>Datei eines Zustellers mit Sendungsnummern</translation>
        </message>
        <message>
            <source>Tables (*.csv *.txt *.tsv)</source>
            <translation>Tabellen (*.csv *.txt *.tsv)</translation>
        </message>
        <message>
            <source>All files (*)</source>
            <translation>Alle Dateien (*)</translation>
        </message>
        <message>
            <source>Couriers</source>
            <translation>Zusteller</translation>
        </message>
    </context>
    <context>
        <name>House</name>
        <message>
            <source>How this house works</source>
            <translation>Wie dieses Haus arbeitet</translation>
        </message>
        <message>
            <source>Command cards</source>
            <translation>Befehlskarten</translation>
        </message>
        <message>
            <source>Inserts</source>
            <translation>Beilagen</translation>
        </message>
        <message>
            <source>Wrappings</source>
            <translation>Einschläge</translation>
        </message>
        <message>
            <source>Ctrl I</source>
            <translation>Strg I</translation>
        </message>
        <message>
            <source>Ctrl W</source>
            <translation>Strg W</translation>
        </message>
        <message>
            <source>Ctrl K</source>
            <translation>Strg K</translation>
        </message>
        <message>
            <source>Enter keeps a line · Ctrl D: dark or light</source>
            <translation>Enter speichert die Zeile · Strg D: dunkel oder hell</translation>
        </message>
    </context>
    <context>
        <name>Main</name>
        <message>
            <source>Stowbench</source>
            <translation>Stowbench</translation>
        </message>
    </context>
    <context>
        <name>MarkList</name>
        <message>
            <source>No row has these words. Esc in the filter shows all.</source>
            <translation>Keine Zeile hat diese Wörter. Esc im Filter zeigt alle.</translation>
        </message>
    </context>
    <context>
        <name>NoticeLine</name>
        <message>
            <source>Ctrl P</source>
            <translation>Strg P</translation>
        </message>
        <message>
            <source>Ctrl Z</source>
            <translation>Strg Z</translation>
        </message>
        <message>
            <source>Papers</source>
            <translation>Papiere</translation>
        </message>
        <message>
            <source>Look at the papers</source>
            <translation>Papiere ansehen</translation>
        </message>
        <message>
            <source>Again</source>
            <translation>Noch einmal</translation>
        </message>
        <message>
            <source>Ctrl Y</source>
            <translation>Strg Y</translation>
        </message>
    </context>
    <context>
        <name>OrderDetail</name>
        <message>
            <source>Order %1</source>
            <translation>Bestellung %1</translation>
        </message>
        <message>
            <source>Choose an order</source>
            <translation>Eine Bestellung wählen</translation>
        </message>
        <message>
            <source>Keep address</source>
            <translation>Adresse speichern</translation>
        </message>
        <message>
            <source>Enter</source>
            <translation>Enter</translation>
        </message>
        <message>
            <source>Leave it</source>
            <translation>Lassen</translation>
        </message>
        <message>
            <source>× which good is this?</source>
            <translation>× welche Ware ist das?</translation>
        </message>
        <message>
            <source>“%1”</source>
            <translation>„%1“</translation>
        </message>
        <message>
            <source>Say which good it is</source>
            <translation>Ware zuordnen</translation>
        </message>
        <message>
            <source>Type code or name</source>
            <translation>Code oder Name tippen</translation>
        </message>
        <message>
            <source>Which good is this?</source>
            <translation>Welche Ware ist das?</translation>
        </message>
        <message>
            <source>Note: %1</source>
            <translation>Notiz: %1</translation>
        </message>
        <message>
            <source>Ready</source>
            <translation>Bereit</translation>
        </message>
        <message>
            <source>Take back</source>
            <translation>Zurückholen</translation>
        </message>
        <message>
            <source>Mend address</source>
            <translation>Adresse berichtigen</translation>
        </message>
        <message>
            <source>Set aside</source>
            <translation>Zurückstellen</translation>
        </message>
        <message>
            <source>Call off</source>
            <translation>Stornieren</translation>
        </message>
        <message>
            <source>It is paid</source>
            <translation>Ist bezahlt</translation>
        </message>
        <message>
            <source>Esc</source>
            <translation>Esc</translation>
        </message>
    </context>
    <context>
        <name>OuterChoice</name>
        <message>
            <source>An outer for %1</source>
            <translation>Eine Hülle für %1</translation>
        </message>
        <message>
            <source>Take this one and keep it</source>
            <translation>Diese nehmen und dabei bleiben</translation>
        </message>
        <message>
            <source>Enter</source>
            <translation>Enter</translation>
        </message>
        <message>
            <source>Two outers side by side</source>
            <translation>Zwei Hüllen nebeneinander</translation>
        </message>
        <message>
            <source>Trying …</source>
            <translation>Wird versucht …</translation>
        </message>
        <message>
            <source>Go up and down the list to compare.</source>
            <translation>In der Liste auf und ab gehen, um zu vergleichen.</translation>
        </message>
        <message>
            <source> against %1</source>
            <translation> gegen %1</translation>
        </message>
        <message>
            <source>Compare with this one</source>
            <translation>Mit dieser vergleichen</translation>
        </message>
    </context>
    <context>
        <name>OverrulePanel</name>
        <message>
            <source>It is right all the same</source>
            <translation>Es stimmt trotzdem</translation>
        </message>
        <message>
            <source>Why, for the records; may stay empty</source>
            <translation>Warum, für die Aufzeichnungen; darf leer bleiben</translation>
        </message>
        <message>
            <source>Keep the weight</source>
            <translation>Gewicht behalten</translation>
        </message>
        <message>
            <source>Enter</source>
            <translation>Enter</translation>
        </message>
        <message>
            <source>Alt %1</source>
            <translation>Alt %1</translation>
        </message>
    </context>
    <context>
        <name>Panel</name>
        <message>
            <source>Close</source>
            <translation>Schließen</translation>
        </message>
        <message>
            <source>Esc</source>
            <translation>Esc</translation>
        </message>
    </context>
    <context>
        <name>PaperBoxPanel</name>
        <message>
            <source>Fold it from paper</source>
            <translation>Aus Papier falten</translation>
        </message>
        <message>
            <source>Kind</source>
            <translation>Art</translation>
        </message>
        <message>
            <source>Paper</source>
            <translation>Papier</translation>
        </message>
        <message>
            <source>Length</source>
            <translation>Länge</translation>
        </message>
        <message>
            <source>mm</source>
            <translation>mm</translation>
        </message>
        <message>
            <source>Width</source>
            <translation>Breite</translation>
        </message>
        <message>
            <source>These are of what must go in</source>
            <translation>Das sind die Maße dessen, was hinein muss</translation>
        </message>
        <message>
            <source>Lay it out</source>
            <translation>Auslegen</translation>
        </message>
        <message>
            <source>Enter</source>
            <translation>Enter</translation>
        </message>
        <message>
            <source>Score before you cut. A knife with a fresh blade, a steel rule, and the other hand behind the blade.</source>
            <translation>Erst rillen, dann schneiden. Frische Klinge, Stahllineal, die andere Hand hinter der Klinge.</translation>
        </message>
        <message>
            <source>Keep it as an outer: code</source>
            <translation>Als Hülle aufnehmen: Code</translation>
        </message>
        <message>
            <source>Name</source>
            <translation>Name</translation>
        </message>
        <message>
            <source>Minutes to make one</source>
            <translation>Minuten für eine</translation>
        </message>
        <message>
            <source>Print the template</source>
            <translation>Vorlage drucken</translation>
        </message>
        <message>
            <source>Keep it as an outer</source>
            <translation>Als Hülle aufnehmen</translation>
        </message>
        <message>
            <source>Height (pillow: its bulge)</source>
            <translation>Höhe (Kissen: Wölbung)</translation>
        </message>
        <message>
            <source>Look at it</source>
            <translation>Ansehen</translation>
        </message>
    </context>
    <context>
        <name>PaperTroubles</name>
        <message>
            <source>This computer has no font for some letters of %1: the papers show boxes in their place.</source>
            <translation>Für einige Buchstaben von %1 gibt es auf diesem Rechner keine Schriftart: Auf den Papieren stehen dort Kästchen.</translation>
        </message>
        <message>
            <source>Install %1, start the program again and print anew.</source>
            <translation>%1 installieren, das Programm neu starten und noch einmal drucken.</translation>
        </message>
        <message>
            <source>For some there is no font to install: mend the order.</source>
            <translation>Für einige gibt es keine Schriftart zum Installieren: die Bestellung berichtigen.</translation>
        </message>
        <message>
            <source>The long address of %1 leaves no room for all handling marks: put them on by hand, or take larger labels.</source>
            <translation>Die lange Anschrift von %1 lässt nicht allen Handhabungszeichen Platz: von Hand anbringen oder größere Etiketten nehmen.</translation>
        </message>
        <message>
            <source>The address of %1 is too long for this label: shorten it, or take larger labels.</source>
            <translation>Die Anschrift von %1 ist zu lang für dieses Etikett: kürzen oder größere Etiketten nehmen.</translation>
        </message>
    </context>
    <context>
        <name>PaperWays</name>
        <message>
            <source>Pick list</source>
            <translation>Sammelliste</translation>
        </message>
        <message>
            <source>Packing slips</source>
            <translation>Lieferscheine</translation>
        </message>
        <message>
            <source>Bench cards</source>
            <translation>Packkarten</translation>
        </message>
        <message>
            <source>Labels</source>
            <translation>Etiketten</translation>
        </message>
        <message>
            <source>Hand-over list</source>
            <translation>Übergabeliste</translation>
        </message>
        <message>
            <source>Reorder list</source>
            <translation>Nachbestellliste</translation>
        </message>
        <message>
            <source>Making list</source>
            <translation>Fertigungsliste</translation>
        </message>
        <message>
            <source>Packaging report</source>
            <translation>Verpackungsbericht</translation>
        </message>
        <message>
            <source>Paper box template</source>
            <translation>Faltvorlage</translation>
        </message>
        <message>
            <source>Return labels</source>
            <translation>Rücksendeetiketten</translation>
        </message>
        <message>
            <source>Gift notes</source>
            <translation>Geschenkkarten</translation>
        </message>
        <message>
            <source>Command cards</source>
            <translation>Befehlskarten</translation>
        </message>
        <message>
            <source>Pick list by order</source>
            <translation>Sammelliste je Bestellung</translation>
        </message>
        <message>
            <source>Customs data</source>
            <translation>Zollangaben</translation>
        </message>
    </context>
    <context>
        <name>Pick</name>
        <message>
            <source>Nothing to pick</source>
            <translation>Nichts zu sammeln</translation>
        </message>
        <message>
            <source>The walk goes by shelf; every order has its tray.</source>
            <translation>Der Gang folgt den Regalen; jede Bestellung hat ihre Kiste.</translation>
        </message>
        <message>
            <source>Parcels that are planned are picked here, one tray an order.</source>
            <translation>Was geplant ist, wird hier gesammelt, eine Kiste je Bestellung.</translation>
        </message>
        <message>
            <source>Start a round</source>
            <translation>Runde beginnen</translation>
        </message>
        <message>
            <source>Enter</source>
            <translation>Enter</translation>
        </message>
        <message>
            <source>To the plan</source>
            <translation>Zum Plan</translation>
        </message>
        <message>
            <source>The trays are full</source>
            <translation>Die Kisten sind voll</translation>
        </message>
        <message>
            <source>The walk</source>
            <translation>Der Gang</translation>
        </message>
        <message>
            <source>Shelf %1: %2 %3, trays %4</source>
            <translation>Regal %1: %2 %3, Kisten %4</translation>
        </message>
        <message>
            <source>, picked</source>
            <translation>, gesammelt</translation>
        </message>
        <message>
            <source>Trays</source>
            <translation>Kisten</translation>
        </message>
        <message>
            <source>Tray %1, %2, %3 missing</source>
            <translation>Kiste %1, %2, %3 fehlen</translation>
        </message>
        <message>
            <source>%1 to go</source>
            <translation>noch %1</translation>
        </message>
        <message>
            <source>A scan of the good ticks one. “Not there” sets its orders aside, puts the stock right and gives the outers back.</source>
            <translation>Ein Scan der Ware hakt ein Stück ab. „Nicht da“ stellt ihre Bestellungen zurück.</translation>
        </message>
        <message>
            <source>Not there</source>
            <translation>Nicht da</translation>
        </message>
        <message>
            <source>Broken</source>
            <translation>Zerbrochen</translation>
        </message>
        <message>
            <source>In the tray</source>
            <translation>In der Kiste</translation>
        </message>
        <message>
            <source>Space</source>
            <translation>Leertaste</translation>
        </message>
        <message>
            <source>To the bench</source>
            <translation>Zur Packbank</translation>
        </message>
    </context>
    <context>
        <name>Plan</name>
        <message>
            <source>Filter the parcels</source>
            <translation>Pakete filtern</translation>
        </message>
        <message>
            <source>P changes what is preferred</source>
            <translation>P ändert, was bevorzugt wird</translation>
        </message>
        <message>
            <source>Plan again</source>
            <translation>Neu planen</translation>
        </message>
        <message>
            <source>Nothing to plan</source>
            <translation>Nichts zu planen</translation>
        </message>
        <message>
            <source>Each gets the smallest outer that holds it, the filler, the weight and the postage.</source>
            <translation>Jede bekommt die kleinste Hülle, die sie fasst, Füllstoff, Gewicht und Porto.</translation>
        </message>
        <message>
            <source>Orders that are checked in Arrivals are planned here, all together.</source>
            <translation>Bestellungen, die im Eingang geprüft sind, werden hier alle zusammen geplant.</translation>
        </message>
        <message>
            <source>Plan the day</source>
            <translation>Den Tag planen</translation>
        </message>
        <message>
            <source>Enter</source>
            <translation>Enter</translation>
        </message>
        <message>
            <source>To the arrivals</source>
            <translation>Zum Eingang</translation>
        </message>
        <message>
            <source>Stop</source>
            <translation>Anhalten</translation>
        </message>
        <message>
            <source>Esc</source>
            <translation>Esc</translation>
        </message>
        <message>
            <source>Orders that cannot go</source>
            <translation>Bestellungen, die nicht gehen können</translation>
        </message>
        <message>
            <source>Parcels</source>
            <translation>Pakete</translation>
        </message>
        <message>
            <source>Another outer</source>
            <translation>Andere Hülle</translation>
        </message>
        <message>
            <source>Print and pick</source>
            <translation>Drucken und sammeln</translation>
        </message>
        <message>
            <source>%1 marked: L keeps or lets go, Esc unmarks</source>
            <translation>%1 markiert: L hält fest oder lässt los, Esc hebt die Marken auf</translation>
        </message>
    </context>
    <context>
        <name>PlanRow</name>
        <message>
            <source>filler</source>
            <translation>Füllstoff</translation>
        </message>
        <message>
            <source>weight</source>
            <translation>Gewicht</translation>
        </message>
        <message>
            <source>kept (L lets go)</source>
            <translation>bleibt so (L gibt frei)</translation>
        </message>
        <message>
            <source>marked, %1</source>
            <translation>markiert, %1</translation>
        </message>
        <message>
            <source>Mark %1</source>
            <translation>%1 markieren</translation>
        </message>
    </context>
    <context>
        <name>PreviewPanel</name>
        <message>
            <source>Enter</source>
            <translation>Enter</translation>
        </message>
        <message>
            <source>Papers</source>
            <translation>Papiere</translation>
        </message>
        <message>
            <source>Whole page</source>
            <translation>Ganze Seite</translation>
        </message>
        <message>
            <source>Larger</source>
            <translation>Größer</translation>
        </message>
        <message>
            <source>Back</source>
            <translation>Zurück</translation>
        </message>
        <message>
            <source>Next</source>
            <translation>Weiter</translation>
        </message>
    </context>
    <context>
        <name>QObject</name>
        <message>
            <source>Copied and checked: %1</source>
            <translation>Kopiert und geprüft: %1</translation>
        </message>
        <message>
            <source>The shop book is as in %1; the one before lies beside it.</source>
            <translation>Das Ladenbuch ist wie in %1; das vorige liegt daneben.</translation>
        </message>
        <message>
            <source>%1 steps, %2 orders, %3 parcels; the last step: %4</source>
            <translation>%1 Schritte, %2 Bestellungen, %3 Pakete; der letzte Schritt: %4</translation>
        </message>
        <message>
            <source>none</source>
            <translation>keiner</translation>
        </message>
        <message>
            <source>The copy holds %1</source>
            <translation>In der Kopie: %1</translation>
        </message>
        <message>
            <source>Your book holds %1</source>
            <translation>In deinem Buch: %1</translation>
        </message>
        <message>
            <source>There is no display to open a window on; this is the day as it stands.</source>
            <translation>Es gibt keine Anzeige für ein Fenster; so steht der Tag.</translation>
        </message>
        <message>
            <source> cut to %1</source>
            <translation> auf %1 geschnitten</translation>
        </message>
        <message>
            <source>proven</source>
            <translation>bewiesen</translation>
        </message>
        <message>
            <source>smallest found</source>
            <translation>kleinste gefunden</translation>
        </message>
        <message>
            <source>No parcel is planned: there is no checked order that can go.</source>
            <translation>Kein Paket ist geplant: es gibt keine geprüfte Bestellung, die gehen kann.</translation>
        </message>
        <message>
            <source>parcel</source>
            <translation>Paket</translation>
        </message>
        <message>
            <source>order</source>
            <translation>Bestellung</translation>
        </message>
        <message>
            <source>to</source>
            <translation>an</translation>
        </message>
        <message>
            <source>outer</source>
            <translation>Hülle</translation>
        </message>
        <message>
            <source>smallest?</source>
            <translation>kleinste?</translation>
        </message>
        <message>
            <source>filler</source>
            <translation>Füllstoff</translation>
        </message>
        <message>
            <source>weight ± 2σ</source>
            <translation>Gewicht ± 2σ</translation>
        </message>
        <message>
            <source>service</source>
            <translation>Dienst</translation>
        </message>
        <message>
            <source>price</source>
            <translation>Preis</translation>
        </message>
        <message>
            <source>step edge</source>
            <translation>Stufengrenze</translation>
        </message>
        <message>
            <source>Not planned: %1 (%2)</source>
            <translation>Nicht geplant: %1 (%2)</translation>
        </message>
        <message>
            <source>Runs short: %1, %2 needed, %3 on hand</source>
            <translation>Wird knapp: %1, gebraucht %2, vorhanden %3</translation>
        </message>
        <message>
            <source>Could not write into %1.</source>
            <translation>In %1 ließ sich nicht schreiben.</translation>
        </message>
        <message>
            <source>Waits: %1 (%2)</source>
            <translation>Wartet: %1 (%2)</translation>
        </message>
        <message>
            <source>Stops at its next scan: parcel %1, its order changed or was called off</source>
            <translation>Hält beim nächsten Scan: Paket %1, seine Bestellung wurde geändert oder storniert</translation>
        </message>
        <message>
            <source>Papers: %1</source>
            <translation>Papiere: %1</translation>
        </message>
        <message>
            <source>%1 is there already. The demo begins with a fresh book; name another file.</source>
            <translation>%1 ist schon da. Die Vorführung beginnt mit einem neuen Buch; eine andere Datei nennen.</translation>
        </message>
        <message>
            <source>No parcel is labelled yet.</source>
            <translation>Noch kein Paket hat ein Etikett.</translation>
        </message>
        <message numerus="yes">
            <source>List %1 for %2: %n parcels</source>
            <translation>
                <numerusform>Liste %1 für %2: %n Paket</numerusform>
                <numerusform>Liste %1 für %2: %n Pakete</numerusform>
            </translation>
        </message>
        <message>
            <source>A kind is one of one-square, tray, lid, pillow, envelope.</source>
            <translation>Eine Art ist eine von one-square, tray, lid, pillow, envelope.</translation>
        </message>
        <message>
            <source>All its lengths must be above zero.</source>
            <translation>Alle Längen müssen über null sein.</translation>
        </message>
        <message>
            <source>From one piece of paper that shape cannot be folded.</source>
            <translation>Aus einem Stück Papier lässt sich diese Form nicht falten.</translation>
        </message>
        <message>
            <source>sheet %1</source>
            <translation>Bogen %1</translation>
        </message>
        <message>
            <source>mark at %1 from the corner</source>
            <translation>anzeichnen bei %1 von der Ecke</translation>
        </message>
        <message>
            <source>There are no parcels to print for. Plan the day first.</source>
            <translation>Es gibt keine Pakete zum Drucken. Zuerst den Tag planen.</translation>
        </message>
        <message>
            <source>%1 is not a date; write 2026-11-25.</source>
            <translation>%1 ist kein Datum; schreib 2026-11-25.</translation>
        </message>
        <message numerus="yes">
            <source>%1  %n parcels, %2 spent, %3 postage paid</source>
            <translation>
                <numerusform>%1  %n Paket, %2 ausgegeben, %3 Porto bezahlt</numerusform>
                <numerusform>%1  %n Pakete, %2 ausgegeben, %3 Porto bezahlt</numerusform>
            </translation>
        </message>
        <message>
            <source>Dates are written as 2026-11-25.</source>
            <translation>Ein Datum wird geschrieben wie 2026-11-25.</translation>
        </message>
        <message>
            <source>The file cannot be written.</source>
            <translation>Die Datei lässt sich nicht schreiben.</translation>
        </message>
        <message>
            <source>Counted: what the ledger used in packing, and the goods&apos; own packaging; not what was used again. Each country&apos;s register decides what is to be reported.</source>
            <translation>Gezählt: was beim Packen laut Bestandsbuch verbraucht wurde, und die eigene Verpackung der Waren; nicht, was wiederverwendet wurde. Was zu melden ist, entscheidet das Register jedes Landes.</translation>
        </message>
        <message numerus="yes">
            <source>%n parcels</source>
            <translation>
                <numerusform>%n Paket</numerusform>
                <numerusform>%n Pakete</numerusform>
            </translation>
        </message>
        <message>
            <source>postage %1, packaging %2</source>
            <translation>Porto %1, Verpackung %2</translation>
        </message>
        <message>
            <source>empty space %1 % (our estimate after EU 2025/40, Art. 24; the official method was not adopted when this was written)</source>
            <translation>Leerraum %1 % (unsere Schätzung nach EU 2025/40, Art. 24; die amtliche Methode war noch nicht beschlossen, als dies geschrieben wurde)</translation>
        </message>
        <message>
            <source>Dates are written as 2026-11-25, money as 0.12.</source>
            <translation>Ein Datum wird geschrieben wie 2026-11-25, Geld wie 0.12.</translation>
        </message>
        <message numerus="yes">
            <source>%1 sizes: %2, %n not served, at most %3 % from the best: %4</source>
            <translation>
                <numerusform>%1 Größen: %2, %n nicht bedient, höchstens %3 % vom Besten: %4</numerusform>
                <numerusform>%1 Größen: %2, %n nicht bedient, höchstens %3 % vom Besten: %4</numerusform>
            </translation>
        </message>
        <message>
            <source>No carton was packed in that time: there is nothing to go by.</source>
            <translation>In dieser Zeit wurde kein Karton gepackt: es gibt nichts, wonach man gehen könnte.</translation>
        </message>
        <message numerus="yes">
            <source>Judged by %n parcels of the last weeks, which played no part in the choice; with the cartons of today one costs %1.</source>
            <translation>
                <numerusform>Beurteilt an %n Paket der letzten Wochen, das bei der Wahl nicht mitzählte; mit den Kartons von heute kostet eines %1.</numerusform>
                <numerusform>Beurteilt an %n Paketen der letzten Wochen, die bei der Wahl nicht mitzählten; mit den Kartons von heute kostet eines %1.</numerusform>
            </translation>
        </message>
        <message>
            <source>  (less than none: count it)</source>
            <translation>  (weniger als nichts: zählen)</translation>
        </message>
        <message>
            <source>  (reorder)</source>
            <translation>  (nachbestellen)</translation>
        </message>
        <message>
            <source>“%1” is not a number.</source>
            <translation>„%1“ ist keine Zahl.</translation>
        </message>
        <message>
            <source>There is nothing on that list.</source>
            <translation>Auf dieser Liste steht nichts.</translation>
        </message>
        <message>
            <source>The columns file cannot be used: %1</source>
            <translation>Die Spaltendatei ist nicht zu gebrauchen: %1</translation>
        </message>
        <message>
            <source>%1 new, %2 changed, %3 as before, %4 called off</source>
            <translation>%1 neu, %2 geändert, %3 wie zuvor, %4 storniert</translation>
        </message>
        <message>
            <source>The shop book is sound: its structure, its ledger and every plan.</source>
            <translation>Das Ladenbuch ist heil: Aufbau, Bestandsbuch und jeder Plan.</translation>
        </message>
        <message>
            <source>“%1” is not a weight in grams.</source>
            <translation>„%1“ ist kein Gewicht in Gramm.</translation>
        </message>
        <message>
            <source>There is no parcel %1.</source>
            <translation>Es gibt kein Paket %1.</translation>
        </message>
        <message>
            <source>%1; expected %2, seen from %3</source>
            <translation>%1; erwartet %2, sichtbar ab %3</translation>
        </message>
        <message numerus="yes">
            <source>%n packs of %1</source>
            <translation>
                <numerusform>%n Packung %1</numerusform>
                <numerusform>%n Packungen %1</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>%n wait for it</source>
            <translation>
                <numerusform>%n wartet darauf</numerusform>
                <numerusform>%n warten darauf</numerusform>
            </translation>
        </message>
        <message>
            <source>sheet %1; cut along the lines, score the dashed ones</source>
            <translation>Bogen %1; an den Linien schneiden, die gestrichelten ritzen</translation>
        </message>
        <message>
            <source>No copy of the shop book was made today: %1</source>
            <translation>Heute wurde keine Kopie des Ladenbuchs gemacht: %1</translation>
        </message>
        <message>
            <source>%1 is open in another window.</source>
            <translation>%1 ist in einem anderen Fenster offen.</translation>
        </message>
        <message>
            <source>There is no order %1 of %2.</source>
            <translation>Es gibt keine Bestellung %1 von %2.</translation>
        </message>
        <message numerus="yes">
            <source>%n papers deleted</source>
            <translation>
                <numerusform>ein Papier gelöscht</numerusform>
                <numerusform>%n Papiere gelöscht</numerusform>
            </translation>
        </message>
        <message>
            <source>Papers that may still show it (--delete-papers deletes them):</source>
            <translation>Papiere, die sie noch zeigen können (--delete-papers löscht sie):</translation>
        </message>
        <message numerus="yes">
            <source>The data of %n buyers is old and was erased.</source>
            <translation>
                <numerusform>Die Daten eines Käufers sind alt und wurden gelöscht.</numerusform>
                <numerusform>Die Daten von %n Käufern sind alt und wurden gelöscht.</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>%n tables, %1 rows. Buyers&apos; names and addresses are in them.</source>
            <translation>
                <numerusform>eine Tabelle, %1 Zeilen. Namen und Adressen der Käufer stehen darin.</numerusform>
                <numerusform>%n Tabellen, %1 Zeilen. Namen und Adressen der Käufer stehen darin.</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>A shop book of %n tables, %1 rows, checked</source>
            <translation>
                <numerusform>Ein Ladenbuch aus einer Tabelle, %1 Zeilen, geprüft</numerusform>
                <numerusform>Ein Ladenbuch aus %n Tabellen, %1 Zeilen, geprüft</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>The data of %n buyers is erased from the book, its history and the copies beside it. Copies you made elsewhere are erased when they are restored. Tax law may ask you to keep invoices, elsewhere.</source>
            <translation>
                <numerusform>Die Daten eines Käufers sind aus dem Buch, seinem Verlauf und den Kopien daneben gelöscht; Kopien an anderen Orten, wenn sie zurückgespielt werden. Das Steuerrecht kann verlangen, Rechnungen aufzubewahren, anderswo.</numerusform>
                <numerusform>Die Daten von %n Käufern sind aus dem Buch, seinem Verlauf und den Kopien daneben gelöscht; Kopien an anderen Orten, wenn sie zurückgespielt werden. Das Steuerrecht kann verlangen, Rechnungen aufzubewahren, anderswo.</numerusform>
            </translation>
        </message>
        <message>
            <source>There is no daily copy yet in %1. The window makes one on each day it is open.</source>
            <translation>In %1 gibt es noch keine Tageskopie. Das Fenster macht eine an jedem Tag, an dem es offen ist.</translation>
        </message>
        <message>
            <source>No packing question is remembered from earlier days, so there is none to work out again.</source>
            <translation>Keine Packfrage ist von früheren Tagen gemerkt, also ist keine nachzurechnen.</translation>
        </message>
        <message numerus="yes">
            <source>%n remembered packing questions were worked out again. Outers refused in them: %1; none of them holds its set.</source>
            <translation>
                <numerusform>Eine gemerkte Packfrage wurde nachgerechnet. Abgelehnte Hüllen darin: %1; keine davon fasst ihren Satz.</numerusform>
                <numerusform>%n gemerkte Packfragen wurden nachgerechnet. Abgelehnte Hüllen darin: %1; keine davon fasst ihren Satz.</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>Of these refusals %n could not be proven again with the work allowed, nor disproven.</source>
            <translation>
                <numerusform>Von diesen Absagen ließ sich eine mit der erlaubten Arbeit weder wieder beweisen noch widerlegen.</numerusform>
                <numerusform>Von diesen Absagen ließen sich %n mit der erlaubten Arbeit weder wieder beweisen noch widerlegen.</numerusform>
            </translation>
        </message>
        <message>
            <source>%1 parcels · postage %2 · packaging %3 · filler %4 · tape %5</source>
            <translation>%1 Pakete · Porto %2 · Verpackung %3 · Füllstoff %4 · Klebeband %5</translation>
        </message>
    </context>
    <context>
        <name>RatePartsPanel</name>
        <message>
            <source>Services, zones, formats</source>
            <translation>Dienste, Zonen, Formate</translation>
        </message>
        <message>
            <source>To the prices</source>
            <translation>Zu den Preisen</translation>
        </message>
        <message>
            <source>Carrier</source>
            <translation>Zusteller</translation>
        </message>
        <message>
            <source>Currency</source>
            <translation>Währung</translation>
        </message>
        <message>
            <source>Tax on top</source>
            <translation>Steuer</translation>
        </message>
        <message>
            <source>From</source>
            <translation>Ab</translation>
        </message>
        <message>
            <source>Until</source>
            <translation>Bis</translation>
        </message>
        <message>
            <source>Ask for what is seldom used too: by volume, rolls, seasons</source>
            <translation>Auch Seltenes abfragen: nach Volumen, Rollen, Saison</translation>
        </message>
        <message>
            <source>Short name</source>
            <translation>Kurzname</translation>
        </message>
        <message>
            <source>Name</source>
            <translation>Name</translation>
        </message>
        <message>
            <source>Sizes in mm: 240 is at most 240, 140– at least 140, 140–240 both. Countries in two letters; * is all others.</source>
            <translation>Maße in mm: 240 heißt höchstens 240, 140– mindestens 140, 140–240 beides. Länder in zwei Buchstaben; * sind alle anderen.</translation>
        </message>
        <message>
            <source>Ctrl Enter</source>
            <translation>Strg Enter</translation>
        </message>
    </context>
    <context>
        <name>Rates</name>
        <message>
            <source>Rate sheets</source>
            <translation>Preislisten</translation>
        </message>
        <message>
            <source>Rate sheet</source>
            <translation>Preisliste</translation>
        </message>
        <message>
            <source>Take in</source>
            <translation>Aufnehmen</translation>
        </message>
        <message>
            <source>New</source>
            <translation>Neu</translation>
        </message>
        <message>
            <source>Next year&apos;s</source>
            <translation>Fürs nächste Jahr</translation>
        </message>
        <message>
            <source>Write file</source>
            <translation>Datei schreiben</translation>
        </message>
        <message>
            <source>No rate sheet yet</source>
            <translation>Noch keine Preisliste</translation>
        </message>
        <message>
            <source>A carrier&apos;s services, zones, formats and steps as one table. Without one, parcels are planned but not priced.</source>
            <translation>Dienste, Zonen, Formate und Stufen eines Zustellers in einer Tabelle. Ohne sie werden Pakete geplant, aber ohne Preis.</translation>
        </message>
        <message>
            <source>Type one in</source>
            <translation>Eine eintippen</translation>
        </message>
        <message>
            <source>Take in a file</source>
            <translation>Datei aufnehmen</translation>
        </message>
        <message>
            <source>Service</source>
            <translation>Dienst</translation>
        </message>
        <message>
            <source>Format</source>
            <translation>Format</translation>
        </message>
        <message>
            <source>Services, zones, formats…</source>
            <translation>Dienste, Zonen, Formate…</translation>
        </message>
        <message>
            <source>Put away</source>
            <translation>Weglegen</translation>
        </message>
        <message>
            <source>Ctrl+⌫</source>
            <translation>Strg+⌫</translation>
        </message>
        <message>
            <source>Keep</source>
            <translation>Speichern</translation>
        </message>
        <message>
            <source>up to, g</source>
            <translation>bis, g</translation>
        </message>
        <message>
            <source>up to, row %1</source>
            <translation>bis, Zeile %1</translation>
        </message>
        <message>
            <source>%1, row %2</source>
            <translation>%1, Zeile %2</translation>
        </message>
        <message>
            <source>Try a parcel (T): length width height, grams, country, postcode</source>
            <translation>Ein Paket probieren (T): Länge Breite Höhe, Gramm, Land, Postleitzahl</translation>
        </message>
        <message>
            <source>A carrier&apos;s rate sheet</source>
            <translation>Preisliste eines Zustellers</translation>
        </message>
        <message>
            <source>Tables (*.csv *.txt *.tsv)</source>
            <translation>Tabellen (*.csv *.txt *.tsv)</translation>
        </message>
        <message>
            <source>All files (*)</source>
            <translation>Alle Dateien (*)</translation>
        </message>
        <message>
            <source>Write this rate sheet to</source>
            <translation>Diese Preisliste schreiben nach</translation>
        </message>
        <message>
            <source>Tables (*.csv)</source>
            <translation>Tabellen (*.csv)</translation>
        </message>
        <message>
            <source>Parts</source>
            <translation>Teile</translation>
        </message>
    </context>
    <context>
        <name>Records</name>
        <message>
            <source>Records</source>
            <translation>Aufzeichnungen</translation>
        </message>
        <message>
            <source>P changes the period</source>
            <translation>P ändert den Zeitraum</translation>
        </message>
        <message>
            <source>Nothing to record yet</source>
            <translation>Noch nichts aufzuzeichnen</translation>
        </message>
        <message>
            <source>Every parcel that is packed is counted here: cost, air, weights and packaging by material.</source>
            <translation>Jedes gepackte Paket zählt hier mit: Kosten, Luft, Gewichte und Verpackung nach Material.</translation>
        </message>
        <message>
            <source>%1 ›</source>
            <translation>%1 ›</translation>
        </message>
        <message>
            <source>No parcel: there is nothing behind it.</source>
            <translation>Kein Paket: dahinter steht nichts.</translation>
        </message>
        <message>
            <source>Packaging report</source>
            <translation>Verpackungsbericht</translation>
        </message>
        <message>
            <source>%1: nothing was packed</source>
            <translation>%1: nichts wurde gepackt</translation>
        </message>
    </context>
    <context>
        <name>ScaleStrip</name>
        <message>
            <source>Weight %1</source>
            <translation>Gewicht %1</translation>
        </message>
        <message>
            <source>Weight from the scale</source>
            <translation>Gewicht von der Waage</translation>
        </message>
        <message>
            <source>scale, W</source>
            <translation>Waage, W</translation>
        </message>
        <message>
            <source>It is right all the same</source>
            <translation>Es stimmt trotzdem</translation>
        </message>
    </context>
    <context>
        <name>Sending</name>
        <message>
            <source>Sending</source>
            <translation>Versenden</translation>
        </message>
        <message>
            <source>kept when you leave a field</source>
            <translation>gespeichert, sobald du ein Feld verlässt</translation>
        </message>
    </context>
    <context>
        <name>SizesPanel</name>
        <message>
            <source>Which sizes to buy</source>
            <translation>Welche Größen kaufen</translation>
        </message>
        <message>
            <source>A litre of parcel costs in postage, may stay empty</source>
            <translation>Ein Liter Paket kostet an Porto, darf leer bleiben</translation>
        </message>
        <message>
            <source>Take in the list</source>
            <translation>Liste einlesen</translation>
        </message>
        <message>
            <source>Enter</source>
            <translation>Enter</translation>
        </message>
        <message>
            <source>Stop</source>
            <translation>Anhalten</translation>
        </message>
        <message>
            <source>Cartons a supplier offers</source>
            <translation>Kartons, die ein Lieferant anbietet</translation>
        </message>
        <message>
            <source>Tables (*.csv *.txt *.tsv)</source>
            <translation>Tabellen (*.csv *.txt *.tsv)</translation>
        </message>
        <message>
            <source>All files (*)</source>
            <translation>Alle Dateien (*)</translation>
        </message>
    </context>
    <context>
        <name>SortButton</name>
        <message>
            <source>Sorted: %1</source>
            <translation>Sortiert: %1</translation>
        </message>
        <message>
            <source>Sort</source>
            <translation>Sort.</translation>
        </message>
    </context>
    <context>
        <name>StopWord</name>
        <message>
            <source>Space goes on</source>
            <translation>Leertaste macht weiter</translation>
        </message>
    </context>
    <context>
        <name>Supplies</name>
        <message>
            <source>Filter the supplies</source>
            <translation>Packmittel filtern</translation>
        </message>
        <message>
            <source>Take in a file</source>
            <translation>Datei aufnehmen</translation>
        </message>
        <message>
            <source>No supplies yet</source>
            <translation>Noch keine Packmittel</translation>
        </message>
        <message>
            <source>Cartons, mailers, tubes, filler, tape, labels: whatever is used up in packing. Take in a table of them; one line each.</source>
            <translation>Kartons, Versandtaschen, Rohre, Füllstoff, Klebeband, Etiketten: was beim Packen verbraucht wird. Eine Tabelle aufnehmen, je eine Zeile.</translation>
        </message>
        <message>
            <source>code</source>
            <translation>Code</translation>
        </message>
        <message>
            <source>name</source>
            <translation>Name</translation>
        </message>
        <message>
            <source>size, of outers inside</source>
            <translation>Größe, bei Hüllen innen</translation>
        </message>
        <message>
            <source>cost</source>
            <translation>Kosten</translation>
        </message>
        <message>
            <source>there</source>
            <translation>da</translation>
        </message>
        <message>
            <source>Supplies</source>
            <translation>Packmittel</translation>
        </message>
        <message>
            <source>Supplies to take in</source>
            <translation>Packmittel zum Aufnehmen</translation>
        </message>
        <message>
            <source>Tables (*.csv *.txt *.tsv)</source>
            <translation>Tabellen (*.csv *.txt *.tsv)</translation>
        </message>
        <message>
            <source>All files (*)</source>
            <translation>Alle Dateien (*)</translation>
        </message>
        <message>
            <source>Sizes to buy</source>
            <translation>Größen</translation>
        </message>
        <message>
            <source>Fold a box</source>
            <translation>Falten</translation>
        </message>
        <message>
            <source>Reorder list</source>
            <translation>Nachbestellliste</translation>
        </message>
        <message>
            <source>New</source>
            <translation>Neu</translation>
        </message>
        <message>
            <source>New supply</source>
            <translation>Neues Packmittel</translation>
        </message>
    </context>
    <context>
        <name>SupplyCardPanel</name>
        <message>
            <source>What it is</source>
            <translation>Was es ist</translation>
        </message>
        <message>
            <source>Keep</source>
            <translation>Speichern</translation>
        </message>
        <message>
            <source>Ctrl Enter</source>
            <translation>Strg Enter</translation>
        </message>
    </context>
    <context>
        <name>SupplyPanel</name>
        <message>
            <source>Counted: really there</source>
            <translation>Gezählt: wirklich da</translation>
        </message>
        <message>
            <source>Count</source>
            <translation>Zählen</translation>
        </message>
        <message>
            <source>Enter</source>
            <translation>Enter</translation>
        </message>
        <message>
            <source>Received: came in</source>
            <translation>Eingegangen: kam herein</translation>
        </message>
        <message>
            <source>for, in all</source>
            <translation>für, alles zusammen</translation>
        </message>
        <message>
            <source>Receive</source>
            <translation>Eingang</translation>
        </message>
        <message>
            <source>Spoilt</source>
            <translation>Verdorben</translation>
        </message>
        <message>
            <source>because</source>
            <translation>weil</translation>
        </message>
        <message>
            <source>Spoil</source>
            <translation>Ausbuchen</translation>
        </message>
        <message>
            <source>Movements, newest first</source>
            <translation>Bewegungen, neueste zuerst</translation>
        </message>
        <message>
            <source>Change what it is</source>
            <translation>Ändern, was es ist</translation>
        </message>
        <message>
            <source>Ctrl E</source>
            <translation>Strg E</translation>
        </message>
    </context>
    <context>
        <name>TypedTablePanel</name>
        <message>
            <source>Take out</source>
            <translation>Herausnehmen</translation>
        </message>
        <message>
            <source>Take out row %1</source>
            <translation>Zeile %1 herausnehmen</translation>
        </message>
        <message>
            <source>Keep</source>
            <translation>Speichern</translation>
        </message>
        <message>
            <source>Ctrl Enter</source>
            <translation>Strg Enter</translation>
        </message>
        <message>
            <source>One more</source>
            <translation>Weitere Zeile</translation>
        </message>
    </context>
    <context>
        <name>View</name>
        <message>
            <source>%1, %2 min</source>
            <translation>%1, %2 min</translation>
        </message>
        <message>
            <source>by hand, pressed</source>
            <translation>von Hand, gedrückt</translation>
        </message>
        <message>
            <source>proven</source>
            <translation>bewiesen</translation>
        </message>
        <message>
            <source>smallest found</source>
            <translation>kleinste gefunden</translation>
        </message>
        <message numerus="yes">
            <source>%n new</source>
            <translation>
                <numerusform>%n neu</numerusform>
                <numerusform>%n neu</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>%n changed</source>
            <translation>
                <numerusform>%n geändert</numerusform>
                <numerusform>%n geändert</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>%n known already</source>
            <translation>
                <numerusform>%n schon bekannt</numerusform>
                <numerusform>%n schon bekannt</numerusform>
            </translation>
        </message>
        <message>
            <source>Nothing was taken in</source>
            <translation>Nichts wurde aufgenommen</translation>
        </message>
        <message numerus="yes">
            <source>%n more</source>
            <translation>
                <numerusform>noch %n</numerusform>
                <numerusform>noch %n</numerusform>
            </translation>
        </message>
        <message>
            <source>⌀ %1, %2 long</source>
            <translation>⌀ %1, %2 lang</translation>
        </message>
        <message>
            <source>inside %1</source>
            <translation>innen %1</translation>
        </message>
        <message>
            <source>Carton</source>
            <translation>Karton</translation>
        </message>
        <message>
            <source>Gift box</source>
            <translation>Geschenkschachtel</translation>
        </message>
        <message>
            <source>Mailer</source>
            <translation>Versandtasche</translation>
        </message>
        <message>
            <source>Padded mailer</source>
            <translation>Polstertasche</translation>
        </message>
        <message>
            <source>Board mailer</source>
            <translation>Papptasche</translation>
        </message>
        <message>
            <source>Tube</source>
            <translation>Rohr</translation>
        </message>
        <message>
            <source>%1 min ago</source>
            <translation>vor %1 min</translation>
        </message>
        <message>
            <source>%1 min left</source>
            <translation>noch %1 min</translation>
        </message>
        <message>
            <source>%1 h %2 min left</source>
            <translation>noch %1 h %2 min</translation>
        </message>
        <message>
            <source>very likely</source>
            <translation>sehr wahrscheinlich</translation>
        </message>
        <message>
            <source>as likely as not</source>
            <translation>halb und halb</translation>
        </message>
        <message>
            <source>one in %1</source>
            <translation>eins von %1</translation>
        </message>
        <message>
            <source>outer</source>
            <translation>Hülle</translation>
        </message>
        <message>
            <source>wrap</source>
            <translation>Einschlag</translation>
        </message>
        <message>
            <source>filler</source>
            <translation>Füllstoff</translation>
        </message>
        <message>
            <source>tape</source>
            <translation>Klebeband</translation>
        </message>
        <message>
            <source>label</source>
            <translation>Etikett</translation>
        </message>
        <message>
            <source>insert</source>
            <translation>Beilage</translation>
        </message>
        <message>
            <source>ribbon</source>
            <translation>Band</translation>
        </message>
        <message>
            <source>paper</source>
            <translation>Papier</translation>
        </message>
        <message>
            <source>paper and board</source>
            <translation>Papier und Pappe</translation>
        </message>
        <message>
            <source>plastic</source>
            <translation>Kunststoff</translation>
        </message>
        <message>
            <source>glass</source>
            <translation>Glas</translation>
        </message>
        <message>
            <source>wood</source>
            <translation>Holz</translation>
        </message>
        <message>
            <source>steel</source>
            <translation>Stahl</translation>
        </message>
        <message>
            <source>aluminium</source>
            <translation>Aluminium</translation>
        </message>
        <message>
            <source>composite</source>
            <translation>Verbund</translation>
        </message>
        <message>
            <source>other</source>
            <translation>anderes</translation>
        </message>
        <message>
            <source>%1 cut to %2</source>
            <translation>%1 gekürzt auf %2</translation>
        </message>
    </context>
    <context>
        <name>WaitWord</name>
        <message>
            <source>What you press meanwhile is done next.</source>
            <translation>Was inzwischen gedrückt wird, kommt danach.</translation>
        </message>
    </context>
    <context>
        <name>scale</name>
        <message>
            <source>%1 too light</source>
            <translation>%1 zu leicht</translation>
        </message>
        <message>
            <source>%1 too heavy</source>
            <translation>%1 zu schwer</translation>
        </message>
        <message>
            <source>as expected</source>
            <translation>wie erwartet</translation>
        </message>
        <message>
            <source>cannot tell what is wrong: %1</source>
            <translation>nicht zu sagen, was nicht stimmt: %1</translation>
        </message>
        <message>
            <source>most likely missing: %1 × %2</source>
            <translation>am ehesten fehlt: %1 × %2</translation>
        </message>
        <message>
            <source>most likely too many: %1 × %2</source>
            <translation>am ehesten zu viel: %1 × %2</translation>
        </message>
        <message>
            <source>most likely %1 in place of %2</source>
            <translation>am ehesten %1 statt %2</translation>
        </message>
        <message>
            <source>most likely packed in %1, not %2</source>
            <translation>am ehesten in %1 gepackt, nicht %2</translation>
        </message>
        <message>
            <source>most likely missing: %1</source>
            <translation>am ehesten fehlt: %1</translation>
        </message>
        <message>
            <source>the last %1 parcels were %2 lighter than reckoned: check the scale</source>
            <translation>die letzten %1 Pakete waren %2 leichter als gerechnet: die Waage prüfen</translation>
        </message>
        <message>
            <source>the last %1 parcels were %2 heavier than reckoned: check the scale</source>
            <translation>die letzten %1 Pakete waren %2 schwerer als gerechnet: die Waage prüfen</translation>
        </message>
    </context>
    <context>
        <name>stow::printing::PrintQueue</name>
        <message>
            <source>called back</source>
            <translation>zurückgerufen</translation>
        </message>
        <message>
            <source>%1: %2</source>
            <translation>%1: %2</translation>
        </message>
        <message>
            <source>Waiting before a stopped printer: %1</source>
            <translation>Wartet vor einem angehaltenen Drucker: %1</translation>
        </message>
        <message>
            <source>Not printed: %1</source>
            <translation>Nicht gedruckt: %1</translation>
        </message>
        <message>
            <source>Call it back</source>
            <translation>Zurückrufen</translation>
        </message>
        <message>
            <source>Send again</source>
            <translation>Noch mal senden</translation>
        </message>
        <message>
            <source>the program %1 cannot be started</source>
            <translation>das Programm %1 lässt sich nicht starten</translation>
        </message>
        <message>
            <source>no answer: see what the printer has before sending again</source>
            <translation>keine Antwort: vor dem erneuten Senden am Drucker nachsehen</translation>
        </message>
        <message>
            <source>given up by the print system: %1</source>
            <translation>vom Drucksystem aufgegeben: %1</translation>
        </message>
    </context>
    <context>
        <name>stow::view::ArrivalsController</name>
        <message>
            <source>promised %1</source>
            <translation>zugesagt %1</translation>
        </message>
        <message>
            <source>until %1</source>
            <translation>bis %1</translation>
        </message>
        <message>
            <source>the same buyer has another order</source>
            <translation>dieselbe Käuferin hat noch eine Bestellung</translation>
        </message>
        <message numerus="yes">
            <source>%n orders need a look</source>
            <translation>
                <numerusform>%n Bestellung will angesehen sein</numerusform>
                <numerusform>%n Bestellungen wollen angesehen sein</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>%n orders arrived, nothing in the way</source>
            <translation>
                <numerusform>%n Bestellung eingetroffen, nichts im Weg</numerusform>
                <numerusform>%n Bestellungen eingetroffen, nichts im Weg</numerusform>
            </translation>
        </message>
        <message>
            <source>All orders are checked</source>
            <translation>Alle Bestellungen sind geprüft</translation>
        </message>
        <message>
            <source>Arrivals</source>
            <translation>Eingang</translation>
        </message>
        <message numerus="yes">
            <source>%n fine as they are</source>
            <translation>
                <numerusform>%n in Ordnung</numerusform>
                <numerusform>%n in Ordnung</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>%n ready to plan</source>
            <translation>
                <numerusform>%n bereit zum Planen</numerusform>
                <numerusform>%n bereit zum Planen</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>%n set aside</source>
            <translation>
                <numerusform>%n zurückgestellt</numerusform>
                <numerusform>%n zurückgestellt</numerusform>
            </translation>
        </message>
        <message>
            <source>Pack with %1</source>
            <translation>Mit %1 packen</translation>
        </message>
        <message>
            <source>A gift from %1. %2</source>
            <translation>Ein Geschenk von %1. %2</translation>
        </message>
        <message>
            <source>Nothing was taken in. %1</source>
            <translation>Nichts wurde aufgenommen. %1</translation>
        </message>
        <message>
            <source>– not used –</source>
            <translation>– nicht gebraucht –</translation>
        </message>
        <message numerus="yes">
            <source>%n rows</source>
            <translation>
                <numerusform>%n Zeile</numerusform>
                <numerusform>%n Zeilen</numerusform>
            </translation>
        </message>
        <message>
            <source>tabs between</source>
            <translation>Tabulator dazwischen</translation>
        </message>
        <message>
            <source>“%1” between</source>
            <translation>„%1“ dazwischen</translation>
        </message>
        <message>
            <source>decimal comma</source>
            <translation>Dezimalkomma</translation>
        </message>
        <message>
            <source>decimal point</source>
            <translation>Dezimalpunkt</translation>
        </message>
        <message>
            <source>%1: %2</source>
            <translation>%1: %2</translation>
        </message>
        <message numerus="yes">
            <source>%n new</source>
            <translation>
                <numerusform>%n neu</numerusform>
                <numerusform>%n neu</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>%n changed</source>
            <translation>
                <numerusform>%n geändert</numerusform>
                <numerusform>%n geändert</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>%n known already</source>
            <translation>
                <numerusform>%n schon bekannt</numerusform>
                <numerusform>%n schon bekannt</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>%n called off</source>
            <translation>
                <numerusform>%n storniert</numerusform>
                <numerusform>%n storniert</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>%n rows left out</source>
            <translation>
                <numerusform>%n Zeile ausgelassen</numerusform>
                <numerusform>%n Zeilen ausgelassen</numerusform>
            </translation>
        </message>
        <message>
            <source>“%1” is %2 from now on</source>
            <translation>„%1“ ist von jetzt an %2</translation>
        </message>
        <message>
            <source>Not yet: %1</source>
            <translation>Noch nicht: %1</translation>
        </message>
        <message>
            <source>Order %1 is ready</source>
            <translation>Bestellung %1 ist bereit</translation>
        </message>
        <message numerus="yes">
            <source>%n orders are ready</source>
            <translation>
                <numerusform>%n Bestellung ist bereit</numerusform>
                <numerusform>%n Bestellungen sind bereit</numerusform>
            </translation>
        </message>
        <message>
            <source>Order %1 set aside: %2</source>
            <translation>Bestellung %1 zurückgestellt: %2</translation>
        </message>
        <message>
            <source>Order %1 is back</source>
            <translation>Bestellung %1 ist wieder da</translation>
        </message>
        <message>
            <source>Order %1 called off</source>
            <translation>Bestellung %1 storniert</translation>
        </message>
        <message>
            <source>%1 travels with %2</source>
            <translation>%1 reist mit %2</translation>
        </message>
        <message>
            <source>by hand</source>
            <translation>von Hand</translation>
        </message>
        <message>
            <source>“%1” is not a count and a code</source>
            <translation>„%1“ ist nicht Anzahl und Code</translation>
        </message>
        <message>
            <source>there is no good with the code %1</source>
            <translation>es gibt keine Ware mit dem Code %1</translation>
        </message>
        <message>
            <source>nothing is ordered yet</source>
            <translation>noch ist nichts bestellt</translation>
        </message>
        <message>
            <source>Order %1 is in</source>
            <translation>Bestellung %1 ist drin</translation>
        </message>
        <message>
            <source>Address of %1 mended</source>
            <translation>Adresse von %1 berichtigt</translation>
        </message>
        <message>
            <source>order number</source>
            <translation>Bestellnummer</translation>
        </message>
        <message>
            <source>date</source>
            <translation>Datum</translation>
        </message>
        <message>
            <source>promised day</source>
            <translation>zugesagter Tag</translation>
        </message>
        <message>
            <source>first name</source>
            <translation>Vorname</translation>
        </message>
        <message>
            <source>name</source>
            <translation>Name</translation>
        </message>
        <message>
            <source>company</source>
            <translation>Firma</translation>
        </message>
        <message>
            <source>street</source>
            <translation>Straße</translation>
        </message>
        <message>
            <source>house number</source>
            <translation>Hausnummer</translation>
        </message>
        <message>
            <source>second address line</source>
            <translation>zweite Adresszeile</translation>
        </message>
        <message>
            <source>postcode</source>
            <translation>Postleitzahl</translation>
        </message>
        <message>
            <source>town</source>
            <translation>Ort</translation>
        </message>
        <message>
            <source>region</source>
            <translation>Region</translation>
        </message>
        <message>
            <source>country</source>
            <translation>Land</translation>
        </message>
        <message>
            <source>e-mail or telephone</source>
            <translation>E-Mail oder Telefon</translation>
        </message>
        <message>
            <source>what is ordered</source>
            <translation>was bestellt ist</translation>
        </message>
        <message>
            <source>variant</source>
            <translation>Ausführung</translation>
        </message>
        <message>
            <source>the shop&apos;s code</source>
            <translation>Code des Ladens</translation>
        </message>
        <message>
            <source>how many</source>
            <translation>wie viele</translation>
        </message>
        <message>
            <source>price of one</source>
            <translation>Stückpreis</translation>
        </message>
        <message>
            <source>currency</source>
            <translation>Währung</translation>
        </message>
        <message>
            <source>personal text</source>
            <translation>persönlicher Text</translation>
        </message>
        <message>
            <source>note</source>
            <translation>Notiz</translation>
        </message>
        <message>
            <source>is a gift</source>
            <translation>ist ein Geschenk</translation>
        </message>
        <message>
            <source>gift message</source>
            <translation>Geschenkgruß</translation>
        </message>
        <message>
            <source>giver</source>
            <translation>von wem</translation>
        </message>
        <message>
            <source>service asked for</source>
            <translation>gewünschter Dienst</translation>
        </message>
        <message>
            <source>postage paid</source>
            <translation>bezahltes Porto</translation>
        </message>
        <message>
            <source>paid</source>
            <translation>bezahlt</translation>
        </message>
        <message>
            <source>called off</source>
            <translation>storniert</translation>
        </message>
        <message>
            <source>M says which good it is</source>
            <translation>M sagt, welche Ware es ist</translation>
        </message>
        <message>
            <source>E mends the address</source>
            <translation>E berichtigt die Adresse</translation>
        </message>
        <message>
            <source>J packs them together</source>
            <translation>J packt sie zusammen</translation>
        </message>
        <message>
            <source>the name is missing</source>
            <translation>der Name fehlt</translation>
        </message>
        <message>
            <source>house and street are missing</source>
            <translation>Haus und Straße fehlen</translation>
        </message>
        <message>
            <source>the town is missing</source>
            <translation>der Ort fehlt</translation>
        </message>
        <message>
            <source>“%1” is not a postcode of %2</source>
            <translation>„%1“ ist keine Postleitzahl von %2</translation>
        </message>
        <message>
            <source>problems first</source>
            <translation>Probleme zuerst</translation>
        </message>
        <message>
            <source>by promised day</source>
            <translation>nach Zusage</translation>
        </message>
        <message>
            <source>oldest first</source>
            <translation>älteste zuerst</translation>
        </message>
        <message>
            <source>by buyer</source>
            <translation>nach Käufer</translation>
        </message>
        <message>
            <source>%1 not yet: %2</source>
            <translation>%1 noch nicht: %2</translation>
        </message>
        <message numerus="yes">
            <source>%n orders set aside: %1</source>
            <translation>
                <numerusform>%n Bestellung zurückgestellt: %1</numerusform>
                <numerusform>%n Bestellungen zurückgestellt: %1</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>%n orders are back</source>
            <translation>
                <numerusform>%n Bestellung ist wieder da</numerusform>
                <numerusform>%n Bestellungen sind wieder da</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>%n orders called off</source>
            <translation>
                <numerusform>%n Bestellung storniert</numerusform>
                <numerusform>%n Bestellungen storniert</numerusform>
            </translation>
        </message>
        <message>
            <source>Taking in %1</source>
            <translation>%1 wird übernommen</translation>
        </message>
        <message>
            <source>Checking the orders</source>
            <translation>Die Bestellungen werden geprüft</translation>
        </message>
        <message>
            <source>“%1”: a count from 1 to %2</source>
            <translation>„%1“: eine Anzahl von 1 bis %2</translation>
        </message>
        <message>
            <source>P when its money is there</source>
            <translation>P, wenn das Geld da ist</translation>
        </message>
        <message>
            <source>Say which good it is</source>
            <translation>Ware zuordnen</translation>
        </message>
        <message>
            <source>Mend the address</source>
            <translation>Adresse berichtigen</translation>
        </message>
        <message>
            <source>Wait for the money</source>
            <translation>Auf das Geld warten</translation>
        </message>
        <message>
            <source>Look it over</source>
            <translation>Ansehen</translation>
        </message>
        <message>
            <source>Nothing in the way</source>
            <translation>Nichts im Weg</translation>
        </message>
        <message>
            <source>Set aside</source>
            <translation>Zurückgestellt</translation>
        </message>
        <message>
            <source>Ready to plan</source>
            <translation>Bereit zum Planen</translation>
        </message>
        <message>
            <source>%1: %2</source>
            <comment>a pile of orders and how many lie there</comment>
            <translation>%1: %2</translation>
        </message>
        <message numerus="yes">
            <source>%n still missing: %1</source>
            <translation>
                <numerusform>%n fehlt noch: %1</numerusform>
                <numerusform>%n fehlen noch: %1</numerusform>
            </translation>
        </message>
        <message>
            <source>Order %1 is paid</source>
            <translation>Bestellung %1 ist bezahlt</translation>
        </message>
        <message>
            <source>All orders are planned</source>
            <translation>Alle Bestellungen sind geplant</translation>
        </message>
        <message numerus="yes">
            <source>%n planned</source>
            <translation>
                <numerusform>%n geplant</numerusform>
                <numerusform>%n geplant</numerusform>
            </translation>
        </message>
        <message>
            <source>Planned</source>
            <translation>Geplant</translation>
        </message>
        <message>
            <source>“%1” is not a day</source>
            <translation>„%1“ ist kein Tag</translation>
        </message>
        <message>
            <source>%1 is past</source>
            <translation>%1 ist vorbei</translation>
        </message>
        <message>
            <source>the country is its name, or two letters such as DE or NO</source>
            <translation>das Land: sein Name oder zwei Buchstaben, etwa DE oder NO</translation>
        </message>
    </context>
    <context>
        <name>stow::view::BeforeSaleController</name>
        <message>
            <source>It cannot go: %1</source>
            <translation>Es kann nicht gehen: %1</translation>
        </message>
        <message>
            <source>closed %1</source>
            <translation>geschlossen %1</translation>
        </message>
        <message>
            <source>tracked</source>
            <translation>mit Sendungsverfolgung</translation>
        </message>
        <message numerus="yes">
            <source>%n days at most</source>
            <translation>
                <numerusform>höchstens %n Tag</numerusform>
                <numerusform>höchstens %n Tage</numerusform>
            </translation>
        </message>
        <message>
            <source>%1 is heavier than its step: then %2</source>
            <translation>%1 ist schwerer als seine Stufe: dann %2</translation>
        </message>
        <message numerus="yes">
            <source>%n rows: </source>
            <translation>
                <numerusform>%n Zeile: </numerusform>
                <numerusform>%n Zeilen: </numerusform>
            </translation>
        </message>
        <message>
            <source>%1 cannot be written</source>
            <translation>%1 lässt sich nicht schreiben</translation>
        </message>
        <message>
            <source>1 to 99</source>
            <translation>1 bis 99</translation>
        </message>
        <message>
            <source>No service takes it</source>
            <translation>Kein Dienst nimmt es</translation>
        </message>
        <message>
            <source>“%1” is not a country: its name, or two letters such as DE or NO</source>
            <translation>„%1“ ist kein Land: sein Name oder zwei Buchstaben, etwa DE oder NO</translation>
        </message>
    </context>
    <context>
        <name>stow::view::BenchController</name>
        <message>
            <source>Parcel %1 is %2.</source>
            <translation>Paket %1 ist %2.</translation>
        </message>
        <message>
            <source>Parcel %1</source>
            <translation>Paket %1</translation>
        </message>
        <message>
            <source>tray %1</source>
            <translation>Kiste %1</translation>
        </message>
        <message>
            <source>parcel %1 of %2</source>
            <translation>Paket %1 von %2</translation>
        </message>
        <message numerus="yes">
            <source>%n more wait</source>
            <translation>
                <numerusform>noch %n wartet</numerusform>
                <numerusform>noch %n warten</numerusform>
            </translation>
        </message>
        <message>
            <source>the last one</source>
            <translation>das letzte</translation>
        </message>
        <message>
            <source>smallest that holds it, proven</source>
            <translation>kleinste, die es fasst, bewiesen</translation>
        </message>
        <message>
            <source>smallest found</source>
            <translation>kleinste gefunden</translation>
        </message>
        <message>
            <source>%1, cut to %2</source>
            <translation>%1, auf %2 geschnitten</translation>
        </message>
        <message>
            <source>Filler: %1 %2</source>
            <translation>Füllstoff: %1 %2</translation>
        </message>
        <message>
            <source>No filler</source>
            <translation>Kein Füllstoff</translation>
        </message>
        <message>
            <source>tape %1</source>
            <translation>Klebeband %1</translation>
        </message>
        <message>
            <source>The order changed since it was planned</source>
            <translation>Die Bestellung wurde seit dem Planen geändert</translation>
        </message>
        <message>
            <source>Called off or set aside: it does not go</source>
            <translation>Storniert oder zurückgestellt: es geht nicht</translation>
        </message>
        <message>
            <source>Note: %1</source>
            <translation>Notiz: %1</translation>
        </message>
        <message>
            <source>%1 of %2 scanned</source>
            <translation>%1 von %2 gescannt</translation>
        </message>
        <message>
            <source>Stuck on</source>
            <translation>Aufgeklebt</translation>
        </message>
        <message>
            <source>Done</source>
            <translation>Erledigt</translation>
        </message>
        <message>
            <source>Drawing of %1 with %2</source>
            <translation>Zeichnung von %1 mit %2</translation>
        </message>
        <message>
            <source>scale ready</source>
            <translation>Waage bereit</translation>
        </message>
        <message>
            <source>scale: settling</source>
            <translation>Waage: beruhigt sich</translation>
        </message>
        <message>
            <source>scale: %1</source>
            <translation>Waage: %1</translation>
        </message>
        <message>
            <source>scale below zero: take all off and zero it</source>
            <translation>Waage unter null: alles abnehmen und nullen</translation>
        </message>
        <message>
            <source>too heavy for the scale</source>
            <translation>zu schwer für die Waage</translation>
        </message>
        <message>
            <source>zero the scale</source>
            <translation>die Waage nullen</translation>
        </message>
        <message>
            <source>the scale asks to be calibrated</source>
            <translation>die Waage will kalibriert werden</translation>
        </message>
        <message>
            <source>the scale reports a fault</source>
            <translation>die Waage meldet einen Fehler</translation>
        </message>
        <message>
            <source>the scale speaks in a unit that is not understood</source>
            <translation>die Waage spricht in einer unverständlichen Einheit</translation>
        </message>
        <message>
            <source>Look into it</source>
            <translation>Nachsehen</translation>
        </message>
        <message>
            <source>Layer %1 of %2</source>
            <translation>Lage %1 von %2</translation>
        </message>
        <message>
            <source>Stop</source>
            <translation>Anhalten</translation>
        </message>
        <message>
            <source>Type what the scale says (W), or press Y to go on without weighing.</source>
            <translation>Eintippen, was die Waage zeigt (W), oder Y macht ohne Wiegen weiter.</translation>
        </message>
        <message>
            <source>Not yet</source>
            <translation>Noch nicht</translation>
        </message>
        <message>
            <source>First: %1</source>
            <translation>Zuerst: %1</translation>
        </message>
        <message>
            <source>Parcel %1 is labelled</source>
            <translation>Paket %1 hat sein Etikett</translation>
        </message>
        <message>
            <source>held in the heat until Monday</source>
            <translation>wegen der Hitze bis Montag zurückgehalten</translation>
        </message>
        <message>
            <source>Held until %1</source>
            <translation>Zurückgehalten bis %1</translation>
        </message>
        <message>
            <source>The label could not be written into %1</source>
            <translation>Das Etikett ließ sich nicht in %1 schreiben</translation>
        </message>
        <message>
            <source>gone at the bench</source>
            <translation>an der Packbank ausgegangen</translation>
        </message>
        <message>
            <source>No other outer</source>
            <translation>Keine andere Hülle</translation>
        </message>
        <message>
            <source>%1 is counted as gone. Take %2</source>
            <translation>%1 zählt als ausgegangen. %2 nehmen</translation>
        </message>
        <message>
            <source>there is no good with the code %1</source>
            <translation>es gibt keine Ware mit dem Code %1</translation>
        </message>
        <message>
            <source>how many must be above zero</source>
            <translation>wie viele muss über null sein</translation>
        </message>
        <message>
            <source>this parcel is closed already</source>
            <translation>dieses Paket ist schon zu</translation>
        </message>
        <message>
            <source>it cannot go in: %1</source>
            <translation>es geht nicht hinein: %1</translation>
        </message>
        <message>
            <source>%1 × %2 added: now %3</source>
            <translation>%1 × %2 dazu: jetzt %3</translation>
        </message>
        <message>
            <source>Wrong label</source>
            <translation>Falsches Etikett</translation>
        </message>
        <message>
            <source>This label is of %1. On the scale stands %2.</source>
            <translation>Dieses Etikett gehört zu %1. Auf der Waage steht %2.</translation>
        </message>
        <message>
            <source>That is in already</source>
            <translation>Das ist schon drin</translation>
        </message>
        <message>
            <source>Now: %1</source>
            <translation>Jetzt: %1</translation>
        </message>
        <message>
            <source>Scan it again</source>
            <translation>Noch mal scannen</translation>
        </message>
        <message>
            <source>The check digit of %1 is wrong.</source>
            <translation>Die Prüfziffer von %1 stimmt nicht.</translation>
        </message>
        <message>
            <source>Parcel %1 travels as %2</source>
            <translation>Paket %1 reist als %2</translation>
        </message>
        <message>
            <source>Not in this parcel</source>
            <translation>Nicht in diesem Paket</translation>
        </message>
        <message>
            <source>%1 is not ordered here.</source>
            <translation>%1 ist hier nicht bestellt.</translation>
        </message>
        <message>
            <source>Print %1 of label %2: tear up the one before</source>
            <translation>%1. Druck von Etikett %2: das vorige zerreißen</translation>
        </message>
        <message>
            <source>Label %1 lies in %2</source>
            <translation>Etikett %1 liegt in %2</translation>
        </message>
        <message>
            <source>%1: %2</source>
            <translation>%1: %2</translation>
        </message>
        <message>
            <source>The paper could not be written into %1</source>
            <translation>Das Papier konnte nicht nach %1 geschrieben werden</translation>
        </message>
        <message>
            <source>Print</source>
            <translation>Drucken</translation>
        </message>
        <message>
            <source>“%1” is not a weight in %2</source>
            <translation>„%1“ ist kein Gewicht in %2</translation>
        </message>
        <message>
            <source>Not the label</source>
            <translation>Nicht das Etikett</translation>
        </message>
        <message>
            <source>This code is of another paper of %1. Scan its address label.</source>
            <translation>Dieser Code steht auf einem anderen Papier von %1. Bitte das Adressetikett scannen.</translation>
        </message>
        <message>
            <source>An older label</source>
            <translation>Ein älteres Etikett</translation>
        </message>
        <message>
            <source>This is print %1 of label %2. Print %3 was made later: stick that one on and destroy this one. If only this one exists, press Space.</source>
            <translation>Das ist der %1. Druck von Etikett %2. Danach kam der %3. Druck: den aufkleben und diesen vernichten. Gibt es nur diesen, die Leertaste drücken.</translation>
        </message>
        <message>
            <source>Finding another outer for parcel %1</source>
            <translation>Eine andere Hülle für Paket %1 wird gesucht</translation>
        </message>
        <message>
            <source>Finding an outer for all of it</source>
            <translation>Eine Hülle für alles zusammen wird gesucht</translation>
        </message>
        <message>
            <source>Something is wrong on paper</source>
            <translation>Auf dem Papier stimmt etwas nicht</translation>
        </message>
        <message>
            <source>%1: right</source>
            <translation>%1: stimmt</translation>
        </message>
        <message>
            <source>then its label</source>
            <translation>dann das Etikett</translation>
        </message>
        <message>
            <source>weigh it again after</source>
            <translation>danach noch einmal wiegen</translation>
        </message>
        <message>
            <source>It does not weigh right</source>
            <translation>Das Gewicht stimmt nicht</translation>
        </message>
        <message>
            <source>counted once more, nothing is missing</source>
            <translation>nachgezählt, nichts fehlt</translation>
        </message>
        <message>
            <source>less filler than planned</source>
            <translation>weniger Füllung als geplant</translation>
        </message>
        <message>
            <source>the paper is dry</source>
            <translation>das Papier ist trocken</translation>
        </message>
        <message>
            <source>counted once more, nothing is too much</source>
            <translation>nachgezählt, nichts zu viel</translation>
        </message>
        <message>
            <source>more filler than planned</source>
            <translation>mehr Füllung als geplant</translation>
        </message>
        <message>
            <source>a note or a gift was added</source>
            <translation>eine Karte oder Zugabe kam dazu</translation>
        </message>
        <message>
            <source>the paper is damp</source>
            <translation>das Papier ist feucht</translation>
        </message>
        <message>
            <source>%1 does not take it at this weight. Take something out, or weigh it again.</source>
            <translation>%1 nimmt es mit diesem Gewicht nicht. Etwas herausnehmen oder noch einmal wiegen.</translation>
        </message>
        <message>
            <source>It cannot go like this</source>
            <translation>So geht es nicht hinaus</translation>
        </message>
        <message>
            <source>Kept. Closed it is weighed once more.</source>
            <translation>Behalten. Geschlossen wird noch einmal gewogen.</translation>
        </message>
    </context>
    <context>
        <name>stow::view::DayLine</name>
        <message>
            <source>Arrivals</source>
            <translation>Eingang</translation>
        </message>
        <message>
            <source>Plan</source>
            <translation>Plan</translation>
        </message>
        <message>
            <source>Pick</source>
            <translation>Sammeln</translation>
        </message>
        <message>
            <source>Bench</source>
            <translation>Packbank</translation>
        </message>
        <message>
            <source>Hand-over</source>
            <translation>Übergabe</translation>
        </message>
        <message>
            <source>no orders today</source>
            <translation>heute keine Bestellungen</translation>
        </message>
        <message>
            <source>%1 of %2 on their way</source>
            <translation>%1 von %2 unterwegs</translation>
        </message>
        <message>
            <source>%1 collects %2</source>
            <translation>%1 holt ab %2</translation>
        </message>
    </context>
    <context>
        <name>stow::view::Desk</name>
        <message>
            <source>Undo: %1</source>
            <translation>Rückgängig: %1</translation>
        </message>
        <message>
            <source>There is nothing to undo.</source>
            <translation>Es gibt nichts rückgängig zu machen.</translation>
        </message>
        <message>
            <source>Undone: %1</source>
            <translation>Rückgängig gemacht: %1</translation>
        </message>
        <message>
            <source>Scan it again</source>
            <translation>Noch mal scannen</translation>
        </message>
        <message>
            <source>The code was not read whole: %1</source>
            <translation>Der Code wurde nicht ganz gelesen: %1</translation>
        </message>
        <message>
            <source>Not in this book</source>
            <translation>Nicht in diesem Buch</translation>
        </message>
        <message>
            <source>%1 is one of our codes, but this shop book does not hold it.</source>
            <translation>%1 ist einer unserer Codes, aber dieses Ladenbuch kennt ihn nicht.</translation>
        </message>
        <message>
            <source>Scanned: %1</source>
            <translation>Gescannt: %1</translation>
        </message>
        <message>
            <source>Stop</source>
            <translation>Anhalten</translation>
        </message>
        <message>
            <source>%1 was called off. Parcel %2 does not go.</source>
            <translation>%1 wurde storniert. Paket %2 geht nicht.</translation>
        </message>
        <message>
            <source>%1 was set aside. Parcel %2 waits.</source>
            <translation>%1 wurde zurückgestellt. Paket %2 wartet.</translation>
        </message>
        <message>
            <source>%1 changed since parcel %2 was planned.</source>
            <translation>%1 wurde geändert, seit Paket %2 geplant ist.</translation>
        </message>
        <message>
            <source>This card is for the bench.</source>
            <translation>Diese Karte ist für den Packtisch.</translation>
        </message>
        <message>
            <source>This card tells nothing that this program knows: %1</source>
            <translation>Diese Karte sagt nichts, was dieses Programm kennt: %1</translation>
        </message>
        <message>
            <source>There is nothing to print here now.</source>
            <translation>Hier gibt es jetzt nichts zu drucken.</translation>
        </message>
        <message>
            <source>Again: %1</source>
            <translation>Noch einmal: %1</translation>
        </message>
        <message>
            <source>There is nothing to do again.</source>
            <translation>Es gibt nichts noch einmal zu tun.</translation>
        </message>
        <message>
            <source>Done again: %1</source>
            <translation>Noch einmal getan: %1</translation>
        </message>
        <message>
            <source>A newer code</source>
            <translation>Ein neuerer Code</translation>
        </message>
        <message>
            <source>%1 was printed by a later version of this program.</source>
            <translation>%1 stammt von einer späteren Fassung dieses Programms.</translation>
        </message>
        <message>
            <source>This is print %1 of label %2; print %3 was made later.</source>
            <translation>Das ist der %1. Druck von Etikett %2; danach kam der %3. Druck.</translation>
        </message>
        <message>
            <source>Not here</source>
            <translation>Nicht hier</translation>
        </message>
        <message>
            <source>%1 is a good. Goods are scanned at Pick (F3), and at the Bench (F4) as they go in.</source>
            <translation>%1 ist Ware. Waren werden beim Sammeln (F3) und an der Packbank (F4) beim Einlegen gescannt.</translation>
        </message>
        <message>
            <source>Not known</source>
            <translation>Nicht bekannt</translation>
        </message>
        <message>
            <source>“%1” is no good, order, parcel or tracking number of this shop book. Nothing was changed.</source>
            <translation>„%1“ ist keine Ware, Bestellung, Paket- oder Sendungsnummer dieses Ladenbuchs. Nichts wurde geändert.</translation>
        </message>
        <message>
            <source>The disk is full</source>
            <translation>Die Festplatte ist voll</translation>
        </message>
        <message>
            <source>Make room on the disk that holds %1, then try again.</source>
            <translation>Platz schaffen auf der Festplatte mit %1, dann noch einmal versuchen.</translation>
        </message>
        <message>
            <source>The shop book is in use</source>
            <translation>Das Ladenbuch ist in Gebrauch</translation>
        </message>
        <message>
            <source>Another program is writing in %1 and did not finish in time. Let it finish or close it, then try again.</source>
            <translation>Ein anderes Programm schreibt in %1 und wurde nicht rechtzeitig fertig. Abwarten oder es schließen, dann noch einmal versuchen.</translation>
        </message>
        <message>
            <source>The shop book cannot be reached</source>
            <translation>Das Ladenbuch ist nicht erreichbar</translation>
        </message>
        <message>
            <source>See that the disk with %1 is there and may be written, then try again.</source>
            <translation>Nachsehen, ob die Festplatte mit %1 da ist und beschrieben werden darf, dann noch einmal versuchen.</translation>
        </message>
        <message>
            <source>The system says: %1</source>
            <translation>Das System meldet: %1</translation>
        </message>
        <message>
            <source>Every finished step is safe.</source>
            <translation>Jeder fertige Schritt ist sicher.</translation>
        </message>
        <message>
            <source>Every finished step is safe, the last: %1.</source>
            <translation>Jeder fertige Schritt ist sicher, der letzte: %1.</translation>
        </message>
        <message>
            <source>The shop book works again. See whether the last thing you did is there, and do it again if not.</source>
            <translation>Das Ladenbuch geht wieder. Bitte nachsehen, ob das Letzte da ist, und es sonst noch einmal tun.</translation>
        </message>
        <message>
            <source>Undoing: %1</source>
            <translation>Rückgängig: %1</translation>
        </message>
        <message>
            <source>Doing again: %1</source>
            <translation>Wird noch einmal getan: %1</translation>
        </message>
        <message>
            <source>Undo: tick of %1</source>
            <translation>Rückgängig: Haken bei %1</translation>
        </message>
        <message>
            <source>Again: tick of %1</source>
            <translation>Wieder: Haken bei %1</translation>
        </message>
        <message>
            <source>The tick is gone.</source>
            <translation>Der Haken ist weg.</translation>
        </message>
        <message>
            <source>Ticked again.</source>
            <translation>Wieder abgehakt.</translation>
        </message>
        <message>
            <source>%1 is not here any more: %2</source>
            <translation>%1 ist nicht mehr hier: %2</translation>
        </message>
    </context>
    <context>
        <name>stow::view::DispatchController</name>
        <message>
            <source>Parcel %1</source>
            <translation>Paket %1</translation>
        </message>
        <message>
            <source>Nothing to declare</source>
            <translation>Nichts zu verzollen</translation>
        </message>
        <message>
            <source>sale of goods</source>
            <translation>Verkauf von Waren</translation>
        </message>
        <message>
            <source>outside the tax area only</source>
            <translation>nur außerhalb des Steuergebiets</translation>
        </message>
        <message>
            <source>%1 × %2</source>
            <translation>%1 × %2</translation>
        </message>
        <message>
            <source>– no words –</source>
            <translation>– keine Worte –</translation>
        </message>
        <message>
            <source>–</source>
            <translation>–</translation>
        </message>
        <message>
            <source>goods %1</source>
            <translation>Waren %1</translation>
        </message>
        <message>
            <source>parcel %1</source>
            <translation>Paket %1</translation>
        </message>
        <message>
            <source>A gift: the form outside shows what it is and its value. Tell the giver.</source>
            <translation>Ein Geschenk: außen auf dem Formular stehen Inhalt und Wert. Sag es der Schenkenden.</translation>
        </message>
        <message>
            <source>refunded</source>
            <translation>erstattet</translation>
        </message>
        <message>
            <source>%1 (%2), %3 left</source>
            <translation>%1 (%2), noch %3</translation>
        </message>
        <message>
            <source>stamps as 2 STAMP-110 + 1 STAMP-20</source>
            <translation>Marken wie 2 STAMP-110 + 1 STAMP-20</translation>
        </message>
        <message>
            <source>%1 is not among the stamps</source>
            <translation>%1 ist nicht unter den Marken</translation>
        </message>
        <message>
            <source>“%1” is not an amount</source>
            <translation>„%1“ ist kein Betrag</translation>
        </message>
        <message>
            <source>postage was bought for this parcel already: press B again to buy it a second time</source>
            <translation>für dieses Paket ist Porto schon gekauft: noch einmal B kauft es ein zweites Mal</translation>
        </message>
        <message>
            <source>Postage for %1: %2</source>
            <translation>Porto für %1: %2</translation>
        </message>
        <message>
            <source>Refund noted</source>
            <translation>Erstattung vermerkt</translation>
        </message>
        <message>
            <source>the check digit of %1 is wrong: scan it again</source>
            <translation>die Prüfziffer von %1 stimmt nicht: noch mal scannen</translation>
        </message>
        <message>
            <source>The message is in the clipboard</source>
            <translation>Die Nachricht ist in der Zwischenablage</translation>
        </message>
        <message>
            <source>Customs data: %1</source>
            <translation>Zolldaten: %1</translation>
        </message>
        <message>
            <source>There is nothing to declare</source>
            <translation>Es gibt nichts zu verzollen</translation>
        </message>
        <message>
            <source>Send file: %1</source>
            <translation>Versanddatei: %1</translation>
        </message>
        <message>
            <source>%1 cannot be written</source>
            <translation>%1 lässt sich nicht schreiben</translation>
        </message>
        <message>
            <source>Nothing was handed over today</source>
            <translation>Heute wurde nichts übergeben</translation>
        </message>
        <message>
            <source>For the shops: %1</source>
            <translation>Für die Läden: %1</translation>
        </message>
        <message numerus="yes">
            <source>%n messages: </source>
            <translation>
                <numerusform>%n Nachricht: </numerusform>
                <numerusform>%n Nachrichten: </numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>%n tracking numbers taken</source>
            <translation>
                <numerusform>%n Sendungsnummer übernommen</numerusform>
                <numerusform>%n Sendungsnummern übernommen</numerusform>
            </translation>
        </message>
        <message>
            <source>a line</source>
            <translation>eine Zeile</translation>
        </message>
        <message>
            <source>a good has no words for customs</source>
            <translation>einer Ware fehlen die Worte für den Zoll</translation>
        </message>
        <message>
            <source>“%1” is too vague for customs</source>
            <translation>„%1“ ist für den Zoll zu ungenau</translation>
        </message>
        <message>
            <source>%1: no tariff number (HS) of six digits or more</source>
            <translation>%1: keine Zolltarifnummer (HS) mit mindestens sechs Ziffern</translation>
        </message>
        <message>
            <source>%1: no country of origin</source>
            <translation>%1: kein Ursprungsland</translation>
        </message>
        <message>
            <source>%1: no value</source>
            <translation>%1: kein Wert</translation>
        </message>
        <message>
            <source>values in two currencies</source>
            <translation>Werte in zwei Währungen</translation>
        </message>
        <message>
            <source>the lines weigh more than the parcel</source>
            <translation>die Zeilen wiegen mehr als das Paket</translation>
        </message>
        <message>
            <source>“%1” is no tracking number: %2 to %3 letters and digits</source>
            <translation>„%1“ ist keine Sendungsnummer: %2 bis %3 Buchstaben und Ziffern</translation>
        </message>
    </context>
    <context>
        <name>stow::view::FindController</name>
        <message>
            <source>list %1, %2</source>
            <translation>Liste %1, %2</translation>
        </message>
        <message>
            <source>Nothing found for “%1”. Part of a name, a postcode or a number is enough.</source>
            <translation>Nichts gefunden zu „%1“. Ein Teil eines Namens, eine Postleitzahl oder eine Nummer genügt.</translation>
        </message>
        <message numerus="yes">
            <source>%n found</source>
            <translation>
                <numerusform>%n gefunden</numerusform>
                <numerusform>%n gefunden</numerusform>
            </translation>
        </message>
        <message>
            <source>Type part of a name, a postcode, an order or tracking number, or scan a paper.</source>
            <translation>Einen Teil eines Namens, eine Postleitzahl, eine Bestell- oder Sendungsnummer tippen oder ein Papier scannen.</translation>
        </message>
        <message>
            <source>Erased, from the history too; the copies beside the book follow</source>
            <translation>Gelöscht, auch aus dem Verlauf; die Kopien neben dem Buch folgen</translation>
        </message>
        <message numerus="yes">
            <source>Erased, from the history too; the copies beside the book follow. %n papers may still show it: %1</source>
            <translation>
                <numerusform>Gelöscht, auch aus dem Verlauf; die Kopien neben dem Buch folgen. Ein Papier kann sie noch zeigen: %1</numerusform>
                <numerusform>Gelöscht, auch aus dem Verlauf; die Kopien neben dem Buch folgen. %n Papiere können sie noch zeigen: %1</numerusform>
            </translation>
        </message>
    </context>
    <context>
        <name>stow::view::FirstSteps</name>
        <message>
            <source>Whose workshop it is</source>
            <translation>Wessen Werkstatt es ist</translation>
        </message>
        <message>
            <source>Your name and address stand on labels, slips and customs papers.</source>
            <translation>Dein Name und deine Adresse stehen auf Etiketten, Lieferscheinen und Zollpapieren.</translation>
        </message>
        <message>
            <source>Type it in</source>
            <translation>Eintippen</translation>
        </message>
        <message>
            <source>What you sell</source>
            <translation>Was du verkaufst</translation>
        </message>
        <message>
            <source>Each good with its size and weight: one is enough to begin with.</source>
            <translation>Jede Ware mit Größe und Gewicht: eine genügt für den Anfang.</translation>
        </message>
        <message>
            <source>Enter a good</source>
            <translation>Ware eingeben</translation>
        </message>
        <message>
            <source>Take in a table</source>
            <translation>Tabelle aufnehmen</translation>
        </message>
        <message>
            <source>What you pack in</source>
            <translation>Worin du packst</translation>
        </message>
        <message>
            <source>Boxes, mailers, filler and tape. The starter rack holds ten of each common one; change what differs from yours.</source>
            <translation>Kartons, Taschen, Füllstoff und Klebeband. Das Anfangsregal hält je zehn der üblichen bereit; ändere, was bei dir anders ist.</translation>
        </message>
        <message>
            <source>Take the starter rack</source>
            <translation>Anfangsregal nehmen</translation>
        </message>
        <message>
            <source>Enter your own</source>
            <translation>Eigene eingeben</translation>
        </message>
        <message>
            <source>What postage costs</source>
            <translation>Was das Porto kostet</translation>
        </message>
        <message>
            <source>One carrier&apos;s price list, typed as it is printed. It can wait: parcels are then planned without prices.</source>
            <translation>Die Preisliste eines Zustellers, eingetippt, wie sie gedruckt ist. Das kann warten: Pakete werden dann ohne Preise geplant.</translation>
        </message>
        <message>
            <source>Type a rate sheet</source>
            <translation>Preisliste eintippen</translation>
        </message>
        <message>
            <source>A first order</source>
            <translation>Eine erste Bestellung</translation>
        </message>
        <message>
            <source>By hand, or the file your shop exports.</source>
            <translation>Von Hand oder die Datei, die dein Laden ausgibt.</translation>
        </message>
        <message>
            <source>Enter an order</source>
            <translation>Bestellung eingeben</translation>
        </message>
        <message>
            <source>Take in a file</source>
            <translation>Datei aufnehmen</translation>
        </message>
        <message>
            <source>Its plan</source>
            <translation>Der Plan dazu</translation>
        </message>
        <message>
            <source>The smallest outer that holds it, the filler, the weight and the postage.</source>
            <translation>Die kleinste Hülle, die sie fasst, der Füllstoff, das Gewicht und das Porto.</translation>
        </message>
        <message>
            <source>Plan it</source>
            <translation>Planen</translation>
        </message>
        <message numerus="yes">
            <source>%n steps to the first parcel</source>
            <translation>
                <numerusform>%n Schritt bis zum ersten Paket</numerusform>
                <numerusform>%n Schritte bis zum ersten Paket</numerusform>
            </translation>
        </message>
        <message>
            <source>The starter rack could not be written to %1</source>
            <translation>Das Anfangsregal ließ sich nicht nach %1 schreiben</translation>
        </message>
        <message>
            <source>The demo day could not be written into %1</source>
            <translation>Der Vorführtag ließ sich nicht nach %1 schreiben</translation>
        </message>
        <message>
            <source>The demo day opens in a window of its own.</source>
            <translation>Der Vorführtag öffnet sich in einem eigenen Fenster.</translation>
        </message>
    </context>
    <context>
        <name>stow::view::GoodsController</name>
        <message>
            <source>⌀ %1, %2 high</source>
            <translation>⌀ %1, %2 hoch</translation>
        </message>
        <message>
            <source>⌀ %1, %2 long</source>
            <translation>⌀ %1, %2 lang</translation>
        </message>
        <message>
            <source>soft, %1</source>
            <translation>weich, %1</translation>
        </message>
        <message>
            <source>set of %1</source>
            <translation>Satz aus %1</translation>
        </message>
        <message>
            <source>fragile</source>
            <translation>zerbrechlich</translation>
        </message>
        <message>
            <source>this way up</source>
            <translation>diese Seite oben</translation>
        </message>
        <message>
            <source>liquid</source>
            <translation>flüssig</translation>
        </message>
        <message>
            <source>flammable</source>
            <translation>entzündlich</translation>
        </message>
        <message>
            <source>softens above %1 °C</source>
            <translation>wird über %1 °C weich</translation>
        </message>
        <message>
            <source>make more: %1 left, lowest %2</source>
            <translation>nachmachen: noch %1, mindestens %2</translation>
        </message>
        <message numerus="yes">
            <source>%n goods</source>
            <translation>
                <numerusform>%n Ware</numerusform>
                <numerusform>%n Waren</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>%n to make more of</source>
            <translation>
                <numerusform>%n nachzumachen</numerusform>
                <numerusform>%n nachzumachen</numerusform>
            </translation>
        </message>
        <message>
            <source>the code is missing</source>
            <translation>der Code fehlt</translation>
        </message>
        <message>
            <source>the name is missing</source>
            <translation>der Name fehlt</translation>
        </message>
        <message>
            <source>the weight is not a number of grams above zero</source>
            <translation>das Gewicht ist keine Grammzahl über null</translation>
        </message>
        <message>
            <source>“%1” is not a price</source>
            <translation>„%1“ ist kein Preis</translation>
        </message>
        <message>
            <source>there is no wrapping with the code %1</source>
            <translation>es gibt keinen Einschlag mit dem Code %1</translation>
        </message>
        <message>
            <source>“%1” is not a number of pieces</source>
            <translation>„%1“ ist keine Stückzahl</translation>
        </message>
        <message>
            <source>counted</source>
            <translation>gezählt</translation>
        </message>
        <message>
            <source>%1 is kept</source>
            <translation>%1 ist gespeichert</translation>
        </message>
        <message>
            <source>the volume is not a number of litres above zero</source>
            <translation>das Volumen ist keine Literzahl über null</translation>
        </message>
        <message>
            <source>the size needs numbers of millimetres above zero</source>
            <translation>die Größe braucht Millimeterzahlen über null</translation>
        </message>
        <message>
            <source>the third measure is not a number of millimetres above zero</source>
            <translation>das dritte Maß ist keine Millimeterzahl über null</translation>
        </message>
        <message>
            <source>Making list: %1</source>
            <translation>Fertigungsliste: %1</translation>
        </message>
        <message>
            <source>There is nothing to make.</source>
            <translation>Es ist nichts zu fertigen.</translation>
        </message>
        <message>
            <source>Print</source>
            <translation>Drucken</translation>
        </message>
        <message>
            <source>by code</source>
            <translation>nach Code</translation>
        </message>
        <message>
            <source>fewest first</source>
            <translation>wenigste zuerst</translation>
        </message>
        <message>
            <source>heaviest first</source>
            <translation>schwerste zuerst</translation>
        </message>
        <message>
            <source>by shelf</source>
            <translation>nach Regal</translation>
        </message>
        <message>
            <source>the weight is more than %1</source>
            <translation>das Gewicht ist mehr als %1</translation>
        </message>
        <message>
            <source>“%1” is not a number of grams, give or take</source>
            <translation>„%1“ ist keine Zahl von Gramm, plus oder minus</translation>
        </message>
        <message>
            <source>“%1” is not a number of millimetres of cushion</source>
            <translation>„%1“ ist keine Zahl von Millimetern Polster</translation>
        </message>
        <message>
            <source>there is a good of this code already</source>
            <translation>es gibt schon eine Ware mit diesem Code</translation>
        </message>
        <message>
            <source>“%1” is not a number below bars</source>
            <translation>„%1“ ist keine Strichcode-Nummer</translation>
        </message>
        <message>
            <source>“%1” is not a country: two letters, such as DE or NO</source>
            <translation>„%1“ ist kein Land: zwei Buchstaben, etwa DE oder NO</translation>
        </message>
    </context>
    <context>
        <name>stow::view::Guarded</name>
        <message>
            <source>The shop book failed; nothing was kept.</source>
            <translation>Das Ladenbuch hat versagt; nichts wurde behalten.</translation>
        </message>
    </context>
    <context>
        <name>stow::view::HandOverController</name>
        <message>
            <source>%1 was promised for %2</source>
            <translation>%1 war zugesagt für %2</translation>
        </message>
        <message>
            <source>, %1 %2 keeps it</source>
            <translation>, %1 %2 hält es ein</translation>
        </message>
        <message>
            <source>list %1</source>
            <translation>Liste %1</translation>
        </message>
        <message>
            <source>waits</source>
            <translation>wartet</translation>
        </message>
        <message>
            <source>collects %1</source>
            <translation>holt ab %1</translation>
        </message>
        <message numerus="yes">
            <source>%n not labelled yet and would stay</source>
            <translation>
                <numerusform>%n noch ohne Etikett würde bleiben</numerusform>
                <numerusform>%n noch ohne Etikett würden bleiben</numerusform>
            </translation>
        </message>
        <message>
            <source>list %1 closed with %2</source>
            <translation>Liste %1 geschlossen: %2</translation>
        </message>
        <message numerus="yes">
            <source>%n parcels</source>
            <translation>
                <numerusform>%n Paket</numerusform>
                <numerusform>%n Pakete</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>%n parcels ready to go</source>
            <translation>
                <numerusform>%n Paket bereit</numerusform>
                <numerusform>%n Pakete bereit</numerusform>
            </translation>
        </message>
        <message>
            <source>Hand-over</source>
            <translation>Übergabe</translation>
        </message>
        <message numerus="yes">
            <source>%n handed over today</source>
            <translation>
                <numerusform>%n heute übergeben</numerusform>
                <numerusform>%n heute übergeben</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>List %1 for %2: %n parcels</source>
            <translation>
                <numerusform>Liste %1 für %2: %n Paket</numerusform>
                <numerusform>Liste %1 für %2: %n Pakete</numerusform>
            </translation>
        </message>
        <message>
            <source>the list could not be written into %1</source>
            <translation>die Liste ließ sich nicht in %1 schreiben</translation>
        </message>
        <message>
            <source>Parcel %1 came back</source>
            <translation>Paket %1 kam zurück</translation>
        </message>
        <message>
            <source>Parcel %1 has not left yet: it cannot have come back.</source>
            <translation>Paket %1 ist noch nicht fort: es kann nicht zurückgekommen sein.</translation>
        </message>
        <message>
            <source>Parcel %1 came back; its order is to be planned anew</source>
            <translation>Paket %1 kam zurück; seine Bestellung ist neu zu planen</translation>
        </message>
        <message>
            <source>List %1 for %2, marked as a reprint: %3</source>
            <translation>Liste %1 für %2, als Nachdruck bezeichnet: %3</translation>
        </message>
        <message>
            <source>List %1 for %2</source>
            <translation>Liste %1 für %2</translation>
        </message>
        <message>
            <source>Close the list and print</source>
            <translation>Liste schließen und drucken</translation>
        </message>
        <message>
            <source>Print again</source>
            <translation>Noch einmal drucken</translation>
        </message>
        <message>
            <source>as labelled</source>
            <translation>wie beklebt</translation>
        </message>
        <message>
            <source>by carrier</source>
            <translation>nach Zusteller</translation>
        </message>
        <message>
            <source>by buyer</source>
            <translation>nach Käufer</translation>
        </message>
        <message>
            <source>without a tracking number first</source>
            <translation>ohne Sendungsnummer zuerst</translation>
        </message>
    </context>
    <context>
        <name>stow::view::HouseController</name>
        <message>
            <source>Printer: %1</source>
            <translation>Drucker: %1</translation>
        </message>
        <message>
            <source>its name, paper, tray; empty: only as a file</source>
            <translation>sein Name, Papier, Fach; leer: nur als Datei</translation>
        </message>
        <message>
            <source>“%1” will not do</source>
            <translation>„%1“ geht nicht</translation>
        </message>
        <message>
            <source>%1: %2</source>
            <translation>%1: %2</translation>
        </message>
        <message>
            <source>Language of the program</source>
            <translation>Sprache des Programms</translation>
        </message>
        <message>
            <source>%1; empty: the system&apos;s. From the next start on</source>
            <translation>%1; leer: die des Systems. Ab dem nächsten Start</translation>
        </message>
        <message>
            <source> or </source>
            <translation> oder </translation>
        </message>
        <message>
            <source>Name of the workshop</source>
            <translation>Name der Werkstatt</translation>
        </message>
        <message>
            <source>sender on labels and lists</source>
            <translation>Absender auf Etiketten und Listen</translation>
        </message>
        <message>
            <source>House and street</source>
            <translation>Haus und Straße</translation>
        </message>
        <message>
            <source>Postcode</source>
            <translation>Postleitzahl</translation>
        </message>
        <message>
            <source>Town</source>
            <translation>Ort</translation>
        </message>
        <message>
            <source>Country</source>
            <translation>Land</translation>
        </message>
        <message>
            <source>Contact</source>
            <translation>Kontakt</translation>
        </message>
        <message>
            <source>telephone or e-mail, on slips</source>
            <translation>Telefon oder E-Mail, auf Lieferscheinen</translation>
        </message>
        <message>
            <source>Currency</source>
            <translation>Währung</translation>
        </message>
        <message>
            <source>three letters, such as EUR</source>
            <translation>drei Buchstaben, etwa EUR</translation>
        </message>
        <message>
            <source>Picking trays</source>
            <translation>Sammelkisten</translation>
        </message>
        <message>
            <source>one an order in a round</source>
            <translation>eine je Bestellung in einer Runde</translation>
        </message>
        <message>
            <source>Ease for hands</source>
            <translation>Luft für die Hände</translation>
        </message>
        <message>
            <source>mm</source>
            <translation>mm</translation>
        </message>
        <message>
            <source>kept free in every outer</source>
            <translation>bleibt in jeder Hülle frei</translation>
        </message>
        <message>
            <source>Lining</source>
            <translation>Randabstand</translation>
        </message>
        <message>
            <source>least kept free along the walls</source>
            <translation>bleibt mindestens an den Wänden frei</translation>
        </message>
        <message>
            <source>Bulge when closed</source>
            <translation>Wölbung nach dem Schließen</translation>
        </message>
        <message>
            <source>added before the carrier&apos;s limits are checked</source>
            <translation>zugeschlagen, bevor die Grenzen des Zustellers geprüft werden</translation>
        </message>
        <message>
            <source>Filler over the empty space</source>
            <translation>Füllstoff über den Hohlraum hinaus</translation>
        </message>
        <message>
            <source>%</source>
            <translation>%</translation>
        </message>
        <message>
            <source>filler settles</source>
            <translation>Füllstoff setzt sich</translation>
        </message>
        <message>
            <source>Heavy from</source>
            <translation>Schwer ab</translation>
        </message>
        <message>
            <source>g</source>
            <translation>g</translation>
        </message>
        <message>
            <source>the bench warns from here</source>
            <translation>ab hier warnt die Packbank</translation>
        </message>
        <message>
            <source>Step of the scale</source>
            <translation>Schritt der Waage</translation>
        </message>
        <message>
            <source>what it shows in</source>
            <translation>worin sie anzeigt</translation>
        </message>
        <message>
            <source>Cutting a carton down</source>
            <translation>Karton niedriger schneiden</translation>
        </message>
        <message>
            <source>min</source>
            <translation>min</translation>
        </message>
        <message>
            <source>to score it lower and cut it</source>
            <translation>ritzen und schneiden</translation>
        </message>
        <message>
            <source>An hour of your time</source>
            <translation>Eine Stunde deiner Zeit</translation>
        </message>
        <message>
            <source>counts when the cheapest way is sought; 0: it does not</source>
            <translation>zählt, wenn der günstigste Weg gesucht wird; 0: zählt nicht</translation>
        </message>
        <message>
            <source>Batches differ by</source>
            <translation>Chargen weichen ab um</translation>
        </message>
        <message>
            <source>a whole batch a little heavier or lighter</source>
            <translation>eine ganze Charge etwas schwerer oder leichter</translation>
        </message>
        <message>
            <source>Board and paper differ by</source>
            <translation>Pappe und Papier weichen ab um</translation>
        </message>
        <message>
            <source>with the damp</source>
            <translation>mit der Feuchte</translation>
        </message>
        <message>
            <source>Not to run out of a supply</source>
            <translation>Packmittel nicht ausgehen lassen</translation>
        </message>
        <message>
            <source>the chance of it while an order is on its way: the higher, the earlier to reorder</source>
            <translation>Wahrscheinlichkeit, während eine Bestellung unterwegs ist: je höher, desto früher nachbestellen</translation>
        </message>
        <message>
            <source>Forget buyers after</source>
            <translation>Käufer vergessen nach</translation>
        </message>
        <message>
            <source>months</source>
            <translation>Monaten</translation>
        </message>
        <message>
            <source>0: never. Names and addresses are erased, counts and costs stay; tax law may ask for invoices to be kept, elsewhere</source>
            <translation>0: nie. Namen und Adressen werden gelöscht, Zahlen und Kosten bleiben; das Steuerrecht kann verlangen, Rechnungen aufzubewahren, anderswo</translation>
        </message>
        <message>
            <source>Sheets of paper</source>
            <translation>Papierbögen</translation>
        </message>
        <message>
            <source>a4 or letter</source>
            <translation>a4 oder letter</translation>
        </message>
        <message>
            <source>Margin of sheets</source>
            <translation>Rand der Bögen</translation>
        </message>
        <message>
            <source>left and right, 8 to 40</source>
            <translation>links und rechts, 8 bis 40</translation>
        </message>
        <message>
            <source>Address labels</source>
            <translation>Adressetiketten</translation>
        </message>
        <message>
            <source>100x150, a6, 62 (a roll), a4x4 or a4x6 (so many on a sheet)</source>
            <translation>100x150, a6, 62 (eine Rolle), a4x4 oder a4x6 (so viele auf einem Bogen)</translation>
        </message>
        <message>
            <source>Logo on slips</source>
            <translation>Logo auf Lieferscheinen</translation>
        </message>
        <message>
            <source>a picture file; empty: none</source>
            <translation>eine Bilddatei; leer: keines</translation>
        </message>
        <message>
            <source>Next label on the sheet</source>
            <translation>Nächstes Etikett auf dem Bogen</translation>
        </message>
        <message>
            <source>where labels begin on a begun sheet of a4x4 or a4x6; counted on as they are printed</source>
            <translation>wo Etiketten auf einem angefangenen Bogen (a4x4, a4x6) beginnen; zählt beim Drucken weiter</translation>
        </message>
        <message>
            <source>The command cards lie in %1</source>
            <translation>Die Befehlskarten liegen in %1</translation>
        </message>
        <message>
            <source>The file cannot be written.</source>
            <translation>Die Datei lässt sich nicht schreiben.</translation>
        </message>
        <message>
            <source>Papers in black only</source>
            <translation>Papiere nur in Schwarz</translation>
        </message>
        <message>
            <source>yes or no: no colours and no tints, for a laser printer</source>
            <translation>ja oder nein: ohne Farben und Töne, für Laserdrucker</translation>
        </message>
        <message>
            <source>yes</source>
            <translation>ja</translation>
        </message>
        <message>
            <source>no</source>
            <translation>nein</translation>
        </message>
        <message>
            <source>Print</source>
            <translation>Drucken</translation>
        </message>
        <message>
            <source>Units on the screen</source>
            <translation>Maße am Bildschirm</translation>
        </message>
        <message>
            <source>metric</source>
            <translation>metrisch</translation>
        </message>
        <message>
            <source>inches</source>
            <translation>zoll</translation>
        </message>
        <message>
            <source>metric, or inches (with ounces). In fields of mm and g, 3.5 in and 12 oz are understood either way; papers stay metric</source>
            <translation>metrisch, oder zoll (mit Unzen). In Feldern für mm und g wird 3,5 in und 12 oz immer verstanden; Papiere bleiben metrisch</translation>
        </message>
        <message>
            <source>Tones at the bench</source>
            <translation>Töne am Packtisch</translation>
        </message>
        <message>
            <source>yes or no: a high one for right, two low ones for wrong</source>
            <translation>ja oder nein: ein hoher für richtig, zwei tiefe für falsch</translation>
        </message>
        <message>
            <source>its name, or two letters such as DE or NO</source>
            <translation>sein Name, oder zwei Buchstaben wie DE oder NO</translation>
        </message>
        <message>
            <source>Filler</source>
            <translation>Füllung</translation>
        </message>
        <message>
            <source>the code of the supply that fills what is empty</source>
            <translation>der Code des Packmittels, das Leeres füllt</translation>
        </message>
        <message>
            <source>Tape</source>
            <translation>Klebeband</translation>
        </message>
        <message>
            <source>the code of the supply that closes cartons</source>
            <translation>der Code des Packmittels, das Kartons verschließt</translation>
        </message>
        <message>
            <source>Label</source>
            <translation>Etikett</translation>
        </message>
        <message>
            <source>the code of the supply that is used up with each label; empty: none</source>
            <translation>der Code des Packmittels, das mit jedem Etikett verbraucht wird; leer: keines</translation>
        </message>
        <message>
            <source>there is no supply with the code %1</source>
            <translation>es gibt kein Packmittel mit dem Code %1</translation>
        </message>
        <message>
            <source>%1 is not of the kind “%2”</source>
            <translation>%1 ist nicht von der Art „%2“</translation>
        </message>
    </context>
    <context>
        <name>stow::view::OuterComparison</name>
        <message>
            <source>%1 %</source>
            <translation>%1 %</translation>
        </message>
        <message>
            <source>%1 holds it, but no service takes it</source>
            <translation>%1 nimmt es auf, doch kein Dienst befördert es</translation>
        </message>
        <message>
            <source>%1 costs %2 more in all</source>
            <translation>%1 kostet insgesamt %2 mehr</translation>
        </message>
        <message>
            <source>%1 saves %2 in all</source>
            <translation>%1 spart insgesamt %2</translation>
        </message>
        <message>
            <source>%1 costs the same in all</source>
            <translation>%1 kostet insgesamt gleich viel</translation>
        </message>
        <message>
            <source>in all</source>
            <translation>insgesamt</translation>
        </message>
        <message>
            <source>postage</source>
            <translation>Porto</translation>
        </message>
        <message>
            <source>service</source>
            <translation>Dienst</translation>
        </message>
        <message>
            <source>arrives by</source>
            <translation>kommt an bis</translation>
        </message>
        <message>
            <source>packaging</source>
            <translation>Verpackung</translation>
        </message>
        <message>
            <source>weight</source>
            <translation>Gewicht</translation>
        </message>
        <message>
            <source>filler</source>
            <translation>Füllung</translation>
        </message>
        <message>
            <source>empty inside</source>
            <translation>innen leer</translation>
        </message>
        <message>
            <source>closed</source>
            <translation>verschlossen</translation>
        </message>
        <message>
            <source>to compare with</source>
            <translation>zum Vergleich</translation>
        </message>
        <message>
            <source>in the list</source>
            <translation>in der Liste</translation>
        </message>
        <message>
            <source>outer</source>
            <translation>Hülle</translation>
        </message>
    </context>
    <context>
        <name>stow::view::PaperBoxesController</name>
        <message>
            <source>gift box from one square</source>
            <translation>Schachtel aus einem Quadrat</translation>
        </message>
        <message>
            <source>tray and lid</source>
            <translation>Unterteil und Deckel</translation>
        </message>
        <message>
            <source>lid</source>
            <translation>Deckel</translation>
        </message>
        <message>
            <source>pillow box</source>
            <translation>Kissenschachtel</translation>
        </message>
        <message>
            <source>envelope from one square</source>
            <translation>Umschlag aus einem Quadrat</translation>
        </message>
        <message>
            <source>all its lengths must be above zero</source>
            <translation>alle Längen müssen über null liegen</translation>
        </message>
        <message>
            <source>the flaps of one square do not meet over that shape: a tray and lid does it</source>
            <translation>die Laschen eines Quadrats treffen sich über dieser Form nicht: Unterteil und Deckel geht</translation>
        </message>
        <message>
            <source>a pillow that thick does not close: make it wider, or less thick</source>
            <translation>ein so dickes Kissen schließt nicht: breiter oder flacher</translation>
        </message>
        <message>
            <source>choose a kind</source>
            <translation>eine Art wählen</translation>
        </message>
        <message>
            <source>lengths in millimetres, such as 120 or 82.5</source>
            <translation>Längen in Millimetern, wie 120 oder 82,5</translation>
        </message>
        <message>
            <source>room inside</source>
            <translation>Platz innen</translation>
        </message>
        <message>
            <source>cut a sheet of</source>
            <translation>ein Blatt zuschneiden auf</translation>
        </message>
        <message>
            <source>and for the lid</source>
            <translation>und für den Deckel</translation>
        </message>
        <message>
            <source>marks along each edge, from the corner</source>
            <translation>Marken an jeder Kante, ab der Ecke</translation>
        </message>
        <message>
            <source>cut off the long flap by</source>
            <translation>lange Lasche kürzen um</translation>
        </message>
        <message>
            <source>ribbon, tied crosswise with a bow</source>
            <translation>Band, über Kreuz mit Schleife</translation>
        </message>
        <message>
            <source>wrapping paper</source>
            <translation>Geschenkpapier</translation>
        </message>
        <message>
            <source>out of one sheet of the paper</source>
            <translation>aus einem Bogen</translation>
        </message>
        <message numerus="yes">
            <source>%n pieces</source>
            <translation>
                <numerusform>%n Stück</numerusform>
                <numerusform>%n Stück</numerusform>
            </translation>
        </message>
        <message>
            <source>weighs</source>
            <translation>wiegt</translation>
        </message>
        <message>
            <source>out of the paper chosen</source>
            <translation>aus dem gewählten Papier</translation>
        </message>
        <message>
            <source>it does not go on one sheet</source>
            <translation>passt nicht auf einen Bogen</translation>
        </message>
        <message>
            <source>The sheet with its cuts as lines and its scores dashed</source>
            <translation>Das Blatt, Schnitte als Linien, Rillen gestrichelt</translation>
        </message>
        <message>
            <source>The template cannot be written.</source>
            <translation>Die Vorlage kann nicht geschrieben werden.</translation>
        </message>
        <message>
            <source>Template at 1:1, with a ruler of 100 mm to check the printer by: %1</source>
            <translation>Vorlage 1:1, mit einem Lineal von 100 mm, um den Drucker zu prüfen: %1</translation>
        </message>
        <message>
            <source>it does not go on one sheet of the paper chosen</source>
            <translation>passt nicht auf einen Bogen des gewählten Papiers</translation>
        </message>
        <message>
            <source>a code is needed, such as BOX-S</source>
            <translation>ein Code ist nötig, wie BOX-S</translation>
        </message>
        <message>
            <source>%1 is there already</source>
            <translation>%1 gibt es schon</translation>
        </message>
        <message>
            <source>minutes: 0 to 240</source>
            <translation>Minuten: 0 bis 240</translation>
        </message>
        <message>
            <source>%1 is one of your outers now, as long as the paper lasts</source>
            <translation>%1 gehört jetzt zu Ihren Hüllen, solange das Papier reicht</translation>
        </message>
        <message>
            <source>Print</source>
            <translation>Drucken</translation>
        </message>
    </context>
    <context>
        <name>stow::view::PickController</name>
        <message numerus="yes">
            <source>%n parcels to pick</source>
            <translation>
                <numerusform>%n Paket zu sammeln</numerusform>
                <numerusform>%n Pakete zu sammeln</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>%n trays a round</source>
            <translation>
                <numerusform>%n Kiste je Runde</numerusform>
                <numerusform>%n Kisten je Runde</numerusform>
            </translation>
        </message>
        <message>
            <source>no place</source>
            <translation>kein Platz</translation>
        </message>
        <message>
            <source>“%1”</source>
            <translation>„%1“</translation>
        </message>
        <message>
            <source>Round %1: %2, %3 of %4 pieces</source>
            <translation>Runde %1: %2, %3 von %4 Stück</translation>
        </message>
        <message numerus="yes">
            <source>%n trays</source>
            <translation>
                <numerusform>%n Kiste</numerusform>
                <numerusform>%n Kisten</numerusform>
            </translation>
        </message>
        <message>
            <source>%1: %2 × %3</source>
            <translation>%1: %2 × %3</translation>
        </message>
        <message>
            <source>Round %1: the papers lie in %2</source>
            <translation>Runde %1: die Papiere liegen in %2</translation>
        </message>
        <message>
            <source>Round %1 started, but papers could not be written into %2</source>
            <translation>Runde %1 begonnen, aber Papiere ließen sich nicht in %2 schreiben</translation>
        </message>
        <message>
            <source>%1 was broken</source>
            <translation>%1 war zerbrochen</translation>
        </message>
        <message>
            <source>%1 was not on its shelf</source>
            <translation>%1 war nicht an seinem Platz</translation>
        </message>
        <message>
            <source>Tray %1 set aside: %2</source>
            <translation>Kiste %1 zurückgestellt: %2</translation>
        </message>
        <message>
            <source>No round is under way.</source>
            <translation>Keine Runde ist im Gang.</translation>
        </message>
        <message>
            <source>Put it back</source>
            <translation>Zurücklegen</translation>
        </message>
        <message>
            <source>%1 is not wanted, or no more of it, in this round.</source>
            <translation>%1 wird in dieser Runde nicht oder nicht mehr gebraucht.</translation>
        </message>
        <message>
            <source>The papers of round %1, marked as reprints, lie in %2</source>
            <translation>Die Papiere der Runde %1, als Nachdruck bezeichnet, liegen in %2</translation>
        </message>
        <message>
            <source>Papers could not be written into %1</source>
            <translation>Papiere konnten nicht nach %1 geschrieben werden</translation>
        </message>
        <message>
            <source>Print all again</source>
            <translation>Alle noch einmal drucken</translation>
        </message>
        <message>
            <source>Start the round and print</source>
            <translation>Runde beginnen und drucken</translation>
        </message>
        <message>
            <source>Writing the papers of the round</source>
            <translation>Die Papiere der Runde werden geschrieben</translation>
        </message>
        <message>
            <source>into tray %1</source>
            <translation>in Kiste %1</translation>
        </message>
        <message>
            <source>Something is wrong on paper</source>
            <translation>Auf dem Papier stimmt etwas nicht</translation>
        </message>
    </context>
    <context>
        <name>stow::view::PlanController</name>
        <message>
            <source>parcel %1 of %2</source>
            <translation>Paket %1 von %2</translation>
        </message>
        <message>
            <source>proven</source>
            <translation>bewiesen</translation>
        </message>
        <message>
            <source>comes after the promised day</source>
            <translation>kommt nach dem zugesagten Tag</translation>
        </message>
        <message>
            <source>%1 of %2 left</source>
            <translation>%1 von %2 übrig</translation>
        </message>
        <message>
            <source>%1 to the step edge</source>
            <translation>%1 bis zur Stufengrenze</translation>
        </message>
        <message>
            <source>%1 it is over</source>
            <translation>%1 darüber</translation>
        </message>
        <message>
            <source>no service takes it</source>
            <translation>kein Dienst nimmt es</translation>
        </message>
        <message>
            <source>%1 saves %2</source>
            <translation>%1 spart %2</translation>
        </message>
        <message>
            <source>no split is cheaper</source>
            <translation>kein Aufteilen ist günstiger</translation>
        </message>
        <message>
            <source>no split saves over %1 %</source>
            <translation>kein Aufteilen spart über %1 %</translation>
        </message>
        <message>
            <source>Order %1, %2</source>
            <translation>Bestellung %1, %2</translation>
        </message>
        <message numerus="yes">
            <source>%n parcels planned</source>
            <translation>
                <numerusform>%n Paket geplant</numerusform>
                <numerusform>%n Pakete geplant</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>%n orders to plan</source>
            <translation>
                <numerusform>%n Bestellung zu planen</numerusform>
                <numerusform>%n Bestellungen zu planen</numerusform>
            </translation>
        </message>
        <message>
            <source>Plan</source>
            <translation>Plan</translation>
        </message>
        <message numerus="yes">
            <source>%n parcels</source>
            <translation>
                <numerusform>%n Paket</numerusform>
                <numerusform>%n Pakete</numerusform>
            </translation>
        </message>
        <message>
            <source>postage %1</source>
            <translation>Porto %1</translation>
        </message>
        <message>
            <source>packaging %1</source>
            <translation>Verpackung %1</translation>
        </message>
        <message>
            <source>filler %1</source>
            <translation>Füllstoff %1</translation>
        </message>
        <message>
            <source>tape %1</source>
            <translation>Klebeband %1</translation>
        </message>
        <message>
            <source>Larger outers would save %1 in all: P prefers the cheapest.</source>
            <translation>Größere Hüllen würden zusammen %1 sparen: P bevorzugt die günstigste.</translation>
        </message>
        <message>
            <source>%1: %2 needed, %3 there</source>
            <translation>%1: gebraucht %2, da %3</translation>
        </message>
        <message>
            <source>Finding an outer for every order</source>
            <translation>Für jede Bestellung wird eine Hülle gesucht</translation>
        </message>
        <message>
            <source>Nothing waits to be planned.</source>
            <translation>Nichts wartet aufs Planen.</translation>
        </message>
        <message>
            <source>Proving that nothing smaller holds them</source>
            <translation>Beweisen, dass keine kleinere sie fasst</translation>
        </message>
        <message numerus="yes">
            <source>Stopped: %n orders were not reached</source>
            <translation>
                <numerusform>Angehalten: %n Bestellung wurde nicht erreicht</numerusform>
                <numerusform>Angehalten: %n Bestellungen wurden nicht erreicht</numerusform>
            </translation>
        </message>
        <message>
            <source>chosen now</source>
            <translation>jetzt gewählt</translation>
        </message>
        <message>
            <source>%1 does not take %2: %3</source>
            <translation>%1 fasst %2 nicht: %3</translation>
        </message>
        <message>
            <source>%1 goes into %2</source>
            <translation>%1 geht in %2</translation>
        </message>
        <message>
            <source>by promised day</source>
            <translation>nach Zusage</translation>
        </message>
        <message>
            <source>nearest step edge first</source>
            <translation>nächste Stufengrenze zuerst</translation>
        </message>
        <message>
            <source>dearest postage first</source>
            <translation>teuerstes Porto zuerst</translation>
        </message>
        <message>
            <source>by buyer</source>
            <translation>nach Käufer</translation>
        </message>
        <message>
            <source>Writing the plan into the book</source>
            <translation>Der Plan wird ins Buch geschrieben</translation>
        </message>
        <message>
            <source>Trying %1 for %2</source>
            <translation>%1 wird für %2 versucht</translation>
        </message>
    </context>
    <context>
        <name>stow::view::PreviewController</name>
        <message>
            <source>Page %1 of %2</source>
            <translation>Seite %1 von %2</translation>
        </message>
        <message>
            <source>lower half</source>
            <translation>untere Hälfte</translation>
        </message>
        <message>
            <source>upper half</source>
            <translation>obere Hälfte</translation>
        </message>
    </context>
    <context>
        <name>stow::view::RatesController</name>
        <message>
            <source>any size</source>
            <translation>jede Größe</translation>
        </message>
        <message>
            <source>Keep this sheet first (Ctrl+S), or put it away (Ctrl+Backspace).</source>
            <translation>Zuerst diese Liste speichern (Strg+S) oder weglegen (Strg+Rücktaste).</translation>
        </message>
        <message>
            <source>the sheet</source>
            <translation>die Liste</translation>
        </message>
        <message>
            <source>row %1</source>
            <translation>Zeile %1</translation>
        </message>
        <message>
            <source>until %1</source>
            <translation>bis %1</translation>
        </message>
        <message numerus="yes">
            <source>%n services</source>
            <translation>
                <numerusform>%n Dienst</numerusform>
                <numerusform>%n Dienste</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>%n zones</source>
            <translation>
                <numerusform>%n Zone</numerusform>
                <numerusform>%n Zonen</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>%n steps</source>
            <translation>
                <numerusform>%n Stufe</numerusform>
                <numerusform>%n Stufen</numerusform>
            </translation>
        </message>
        <message>
            <source>first mend what is marked ×</source>
            <translation>zuerst beheben, was mit × bezeichnet ist</translation>
        </message>
        <message>
            <source>length width height in mm, grams, country, postcode: 250 180 90 812 DE 20095</source>
            <translation>Länge Breite Höhe in mm, Gramm, Land, Postleitzahl: 250 180 90 812 DE 20095</translation>
        </message>
        <message>
            <source>tax</source>
            <translation>Steuer</translation>
        </message>
        <message>
            <source>%1: %2 (zone %3; %4)</source>
            <translation>%1: %2 (Zone %3; %4)</translation>
        </message>
        <message>
            <source>%1: no, %2</source>
            <translation>%1: nein, %2</translation>
        </message>
        <message numerus="yes">
            <source>%n cells pasted</source>
            <translation>
                <numerusform>%n Zelle eingefügt</numerusform>
                <numerusform>%n Zellen eingefügt</numerusform>
            </translation>
        </message>
        <message>
            <source>Keep this sheet first (Ctrl+S).</source>
            <translation>Zuerst diese Liste speichern (Strg+S).</translation>
        </message>
        <message>
            <source>The prices of %1 to be put right for the time from %2</source>
            <translation>Die Preise von %1, zu berichtigen für die Zeit ab %2</translation>
        </message>
        <message>
            <source>It cannot be used yet: %1</source>
            <translation>Noch nicht zu gebrauchen: %1</translation>
        </message>
        <message>
            <source>nothing is typed</source>
            <translation>nichts ist getippt</translation>
        </message>
        <message>
            <source>Kept: %1</source>
            <translation>Gespeichert: %1</translation>
        </message>
        <message>
            <source>new sheet</source>
            <translation>neue Liste</translation>
        </message>
        <message>
            <source>Written to %1</source>
            <translation>Geschrieben nach %1</translation>
        </message>
        <message>
            <source>%1 cannot be written</source>
            <translation>%1 lässt sich nicht schreiben</translation>
        </message>
        <message>
            <source>Services</source>
            <translation>Dienste</translation>
        </message>
        <message>
            <source>Zones</source>
            <translation>Zonen</translation>
        </message>
        <message>
            <source>Formats</source>
            <translation>Formate</translation>
        </message>
        <message>
            <source>For each kilogram past the last step</source>
            <translation>Je Kilogramm über die letzte Stufe hinaus</translation>
        </message>
        <message>
            <source>By volume</source>
            <translation>Nach Volumen</translation>
        </message>
        <message>
            <source>Surcharges</source>
            <translation>Zuschläge</translation>
        </message>
        <message>
            <source>Holidays</source>
            <translation>Feiertage</translation>
        </message>
        <message>
            <source>%1, from %2</source>
            <translation>%1, ab %2</translation>
        </message>
        <message>
            <source>tracked</source>
            <translation>mit Sendungsverfolgung</translation>
        </message>
        <message>
            <source>Days on the way</source>
            <translation>Tage unterwegs</translation>
        </message>
        <message>
            <source>Cut-off</source>
            <translation>Annahmeschluss</translation>
        </message>
        <message>
            <source>Collected on</source>
            <translation>Abholung am</translation>
        </message>
        <message>
            <source>Covered up to</source>
            <translation>Versichert bis</translation>
        </message>
        <message>
            <source>Does not take</source>
            <translation>Nimmt nicht</translation>
        </message>
        <message>
            <source>Tax of its own</source>
            <translation>Eigene Steuer</translation>
        </message>
        <message>
            <source>parcel post</source>
            <translation>Paketpost</translation>
        </message>
        <message>
            <source>Volume divisor</source>
            <translation>Volumenteiler</translation>
        </message>
        <message>
            <source>Weight in steps of</source>
            <translation>Gewicht in Schritten von</translation>
        </message>
        <message>
            <source>By volume above</source>
            <translation>Nach Volumen ab</translation>
        </message>
        <message>
            <source>Sides rounded</source>
            <translation>Kanten gerundet</translation>
        </message>
        <message>
            <source>A roll counts</source>
            <translation>Eine Rolle zählt</translation>
        </message>
        <message>
            <source>Length</source>
            <translation>Länge</translation>
        </message>
        <message>
            <source>Width</source>
            <translation>Breite</translation>
        </message>
        <message>
            <source>Height</source>
            <translation>Höhe</translation>
        </message>
        <message>
            <source>All three together</source>
            <translation>Alle drei zusammen</translation>
        </message>
        <message>
            <source>Length and girth</source>
            <translation>Länge und Gurtmaß</translation>
        </message>
        <message>
            <source>Length of a roll</source>
            <translation>Länge einer Rolle</translation>
        </message>
        <message>
            <source>Roll: length and 2 ⌀</source>
            <translation>Rolle: Länge und 2 ⌀</translation>
        </message>
        <message>
            <source>Length to width</source>
            <translation>Länge zu Breite</translation>
        </message>
        <message>
            <source>Tolerance</source>
            <translation>Toleranz</translation>
        </message>
        <message>
            <source>Only service</source>
            <translation>Nur Dienst</translation>
        </message>
        <message>
            <source>Only zone</source>
            <translation>Nur Zone</translation>
        </message>
        <message>
            <source>Only format</source>
            <translation>Nur Format</translation>
        </message>
        <message>
            <source>Longer than</source>
            <translation>Länger als</translation>
        </message>
        <message>
            <source>Wider than</source>
            <translation>Breiter als</translation>
        </message>
        <message>
            <source>Girth over</source>
            <translation>Gurtmaß über</translation>
        </message>
        <message>
            <source>Heavier than</source>
            <translation>Schwerer als</translation>
        </message>
        <message>
            <source>Larger than</source>
            <translation>Größer als</translation>
        </message>
        <message>
            <source>Value above</source>
            <translation>Wert über</translation>
        </message>
        <message>
            <source>only rolls</source>
            <translation>nur Rollen</translation>
        </message>
        <message>
            <source>only what is not boxed</source>
            <translation>nur, was in keiner Schachtel ist</translation>
        </message>
        <message>
            <source>for each kg</source>
            <translation>für jedes kg</translation>
        </message>
        <message>
            <source>percent of the value</source>
            <translation>Prozent des Werts</translation>
        </message>
        <message>
            <source>Percent of these too</source>
            <translation>Prozent auch von</translation>
        </message>
        <message>
            <source>toll, fuel</source>
            <translation>Maut, Treibstoff</translation>
        </message>
        <message>
            <source>Only in</source>
            <translation>Nur in</translation>
        </message>
        <message>
            <source>From</source>
            <translation>Ab</translation>
        </message>
        <message>
            <source>Until</source>
            <translation>Bis</translation>
        </message>
        <message>
            <source>Countries, postcodes</source>
            <translation>Länder, Postleitzahlen</translation>
        </message>
        <message>
            <source>Service</source>
            <translation>Dienst</translation>
        </message>
        <message>
            <source>Zone</source>
            <translation>Zone</translation>
        </message>
        <message>
            <source>Format</source>
            <translation>Format</translation>
        </message>
        <message>
            <source>Weight up to</source>
            <translation>Gewicht bis</translation>
        </message>
        <message>
            <source>Volume up to</source>
            <translation>Volumen bis</translation>
        </message>
        <message>
            <source>Price</source>
            <translation>Preis</translation>
        </message>
        <message>
            <source>service</source>
            <translation>Dienst</translation>
        </message>
        <message>
            <source>In full</source>
            <translation>Ausgeschrieben</translation>
        </message>
        <message>
            <source>zone</source>
            <translation>Zone</translation>
        </message>
        <message>
            <source>format</source>
            <translation>Format</translation>
        </message>
        <message>
            <source>past the last step</source>
            <translation>nach der letzten Stufe</translation>
        </message>
        <message>
            <source>by volume</source>
            <translation>nach Volumen</translation>
        </message>
        <message>
            <source>surcharge</source>
            <translation>Zuschlag</translation>
        </message>
        <message>
            <source>Price or percent</source>
            <translation>Preis oder Prozent</translation>
        </message>
        <message>
            <source>holiday</source>
            <translation>Feiertag</translation>
        </message>
    </context>
    <context>
        <name>stow::view::RecordsController</name>
        <message>
            <source>4 weeks</source>
            <translation>4 Wochen</translation>
        </message>
        <message>
            <source>13 weeks</source>
            <translation>13 Wochen</translation>
        </message>
        <message>
            <source>12 months</source>
            <translation>12 Monate</translation>
        </message>
        <message>
            <source>week of %1</source>
            <translation>Woche vom %1</translation>
        </message>
        <message numerus="yes">
            <source>%n parcels</source>
            <translation>
                <numerusform>%n Paket</numerusform>
                <numerusform>%n Pakete</numerusform>
            </translation>
        </message>
        <message>
            <source>buyers paid %1 for postage</source>
            <translation>Käufer zahlten %1 Porto</translation>
        </message>
        <message>
            <source>What parcels cost, the goods aside</source>
            <translation>Was Pakete kosten, ohne die Waren</translation>
        </message>
        <message>
            <source>a parcel, on average</source>
            <translation>ein Paket, im Mittel</translation>
        </message>
        <message>
            <source>and %1 minutes of making up and wrapping</source>
            <translation>und %1 Minuten fürs Aufrichten und Einschlagen</translation>
        </message>
        <message>
            <source>postage paid by buyers</source>
            <translation>von Käufern bezahltes Porto</translation>
        </message>
        <message>
            <source>against %1 spent</source>
            <translation>gegen %1 ausgegeben</translation>
        </message>
        <message>
            <source>By week</source>
            <translation>Nach Woche</translation>
        </message>
        <message>
            <source>By shop</source>
            <translation>Nach Laden</translation>
        </message>
        <message>
            <source>By country</source>
            <translation>Nach Land</translation>
        </message>
        <message>
            <source>How full they were</source>
            <translation>Wie voll sie waren</translation>
        </message>
        <message>
            <source>empty space in the closed parcels</source>
            <translation>Leerraum in den geschlossenen Paketen</translation>
        </message>
        <message>
            <source>our estimate after EU 2025/40, Art. 24, of 19 December 2024: all that is not goods, filler too; the official method was not adopted when this was written</source>
            <translation>unsere Schätzung nach EU 2025/40, Art. 24, vom 19. Dezember 2024: alles, was nicht Ware ist, auch Füllstoff; die amtliche Methode war noch nicht beschlossen, als dies geschrieben wurde</translation>
        </message>
        <message>
            <source>more than half empty</source>
            <translation>mehr als halb leer</translation>
        </message>
        <message>
            <source>Estimate against scale</source>
            <translation>Schätzung gegen Waage</translation>
        </message>
        <message>
            <source>off by, on average</source>
            <translation>daneben um, im Mittel</translation>
        </message>
        <message numerus="yes">
            <source>%n parcels were weighed</source>
            <translation>
                <numerusform>%n Paket wurde gewogen</numerusform>
                <numerusform>%n Pakete wurden gewogen</numerusform>
            </translation>
        </message>
        <message>
            <source>closed although the scale objected</source>
            <translation>geschlossen, obwohl die Waage widersprach</translation>
        </message>
        <message>
            <source>What came back</source>
            <translation>Was zurückkam</translation>
        </message>
        <message>
            <source>parcels</source>
            <translation>Pakete</translation>
        </message>
        <message>
            <source>they had cost %1</source>
            <translation>sie hatten %1 gekostet</translation>
        </message>
        <message>
            <source>of these, goods on the shelf again</source>
            <translation>davon Waren wieder im Regal</translation>
        </message>
        <message>
            <source>%1 of it the goods&apos; own</source>
            <translation>davon %1 eigene der Waren</translation>
        </message>
        <message>
            <source>Packaging by country and material</source>
            <translation>Verpackung nach Land und Material</translation>
        </message>
        <message>
            <source>%1 empty</source>
            <translation>%1 leer</translation>
        </message>
        <message>
            <source>%1 weighed, %2 expected</source>
            <translation>%1 gewogen, %2 erwartet</translation>
        </message>
        <message>
            <source>scale overruled</source>
            <translation>Waage überstimmt</translation>
        </message>
        <message>
            <source>came back</source>
            <translation>kam zurück</translation>
        </message>
        <message>
            <source>There is nothing to write yet.</source>
            <translation>Es gibt noch nichts zu schreiben.</translation>
        </message>
        <message>
            <source>The file cannot be written.</source>
            <translation>Die Datei lässt sich nicht schreiben.</translation>
        </message>
        <message>
            <source>outers</source>
            <translation>Hüllen</translation>
        </message>
        <message>
            <source>wraps</source>
            <translation>Einschläge</translation>
        </message>
        <message>
            <source>filler</source>
            <translation>Füllstoff</translation>
        </message>
        <message>
            <source>tape</source>
            <translation>Klebeband</translation>
        </message>
        <message>
            <source>labels</source>
            <translation>Etiketten</translation>
        </message>
        <message>
            <source>inserts</source>
            <translation>Beilagen</translation>
        </message>
        <message>
            <source>ribbon and paper</source>
            <translation>Band und Papier</translation>
        </message>
        <message>
            <source>postage</source>
            <translation>Porto</translation>
        </message>
        <message>
            <source>of these, goods written off</source>
            <translation>davon Ware abgeschrieben</translation>
        </message>
        <message>
            <source>sent again</source>
            <translation>noch einmal geschickt</translation>
        </message>
        <message>
            <source>they cost %1 more</source>
            <translation>sie kosteten %1 zusätzlich</translation>
        </message>
        <message>
            <source>What parcels cost, week by week</source>
            <translation>Was Pakete kosten, Woche für Woche</translation>
        </message>
        <message>
            <source>Packaging of %1, with a table for a register&apos;s form: %2</source>
            <translation>Verpackung von %1, mit einer Tabelle für das Formular eines Registers: %2</translation>
        </message>
        <message numerus="yes">
            <source>adding up %n parcels</source>
            <translation>
                <numerusform>ein Paket wird zusammengezählt</numerusform>
                <numerusform>%n Pakete werden zusammengezählt</numerusform>
            </translation>
        </message>
        <message>
            <source>no parcel was packed in this time</source>
            <translation>in dieser Zeit wurde kein Paket gepackt</translation>
        </message>
        <message>
            <source>Print</source>
            <translation>Drucken</translation>
        </message>
    </context>
    <context>
        <name>stow::view::RulesTable</name>
        <message>
            <source>What goes into which order</source>
            <translation>Was in welche Bestellung kommt</translation>
        </message>
        <message>
            <source>Cards, samples and notes that are put in by themselves. A good or a value is needed only where the rule asks for one.</source>
            <translation>Karten, Proben und Zettel, die von selbst dazukommen. Eine Ware oder ein Wert ist nur nötig, wo die Regel danach fragt.</translation>
        </message>
        <message>
            <source>Which orders</source>
            <translation>Welche Bestellungen</translation>
        </message>
        <message>
            <source>every order</source>
            <translation>jede Bestellung</translation>
        </message>
        <message>
            <source>gifts</source>
            <translation>Geschenke</translation>
        </message>
        <message>
            <source>no gifts</source>
            <translation>keine Geschenke</translation>
        </message>
        <message>
            <source>abroad</source>
            <translation>ins Ausland</translation>
        </message>
        <message>
            <source>with the good</source>
            <translation>mit der Ware</translation>
        </message>
        <message>
            <source>worth at least</source>
            <translation>im Wert ab</translation>
        </message>
        <message>
            <source>Good, its code</source>
            <translation>Ware, ihr Code</translation>
        </message>
        <message>
            <source>Value</source>
            <translation>Wert</translation>
        </message>
        <message>
            <source>Insert</source>
            <translation>Beilage</translation>
        </message>
        <message>
            <source>How many</source>
            <translation>Wie viele</translation>
        </message>
        <message numerus="yes">
            <source>%n rules are kept</source>
            <translation>
                <numerusform>%n Regel gespeichert</numerusform>
                <numerusform>%n Regeln gespeichert</numerusform>
            </translation>
        </message>
    </context>
    <context>
        <name>stow::view::SendingController</name>
        <message>
            <source>Message to buyers, in English</source>
            <translation>Nachricht an Käufer, auf Englisch</translation>
        </message>
        <message>
            <source>with {name}, {order}, {number}, {carrier}, {service}, {arrives}, {workshop}</source>
            <translation>mit {name}, {order}, {number}, {carrier}, {service}, {arrives}, {workshop}</translation>
        </message>
        <message>
            <source>Message to buyers, in German</source>
            <translation>Nachricht an Käufer, auf Deutsch</translation>
        </message>
        <message>
            <source>Send file for %1</source>
            <translation>Versanddatei für %1</translation>
        </message>
        <message>
            <source>one column a line: its heading = what stands in it</source>
            <translation>eine Spalte je Zeile: ihre Überschrift = was darin steht</translation>
        </message>
        <message>
            <source>File back for %1</source>
            <translation>Datei zurück an %1</translation>
        </message>
        <message>
            <source>Stamps</source>
            <translation>Marken</translation>
        </message>
        <message>
            <source>the code of a supply = its face value</source>
            <translation>der Code eines Packmittels = sein Nennwert</translation>
        </message>
        <message>
            <source>CN 22 up to a value of</source>
            <translation>CN 22 bis zu einem Wert von</translation>
        </message>
        <message>
            <source>an amount; “below” before it where the amount itself needs a CN 23</source>
            <translation>ein Betrag; „below“ davor, wenn der Betrag selbst schon ein CN 23 braucht</translation>
        </message>
        <message>
            <source>Places in and out of the Union&apos;s customs and tax areas</source>
            <translation>Orte in und außerhalb der Zoll- und Steuergebiete der Union</translation>
        </message>
        <message>
            <source>from memory, to be corrected by what your customs office says</source>
            <translation>aus dem Gedächtnis, nach Auskunft deines Zollamts zu berichtigen</translation>
        </message>
        <message>
            <source>Your numbers, asked for by the CN 23</source>
            <translation>Deine Nummern, nach denen das CN 23 fragt</translation>
        </message>
        <message>
            <source>VAT, EORI and import scheme, one a line; on no slip</source>
            <translation>USt-IdNr., EORI und Einfuhrverfahren, je eine Zeile; auf keinem Lieferschein</translation>
        </message>
        <message>
            <source>“%1” is not a supply</source>
            <translation>„%1“ ist kein Packmittel</translation>
        </message>
        <message>
            <source>“%1”: a code = a face value</source>
            <translation>„%1“: ein Code = ein Nennwert</translation>
        </message>
        <message>
            <source>“%1” is not an amount</source>
            <translation>„%1“ ist kein Betrag</translation>
        </message>
        <message>
            <source>“%1”: as in ES 35: Canary Islands, customs yes, tax no</source>
            <translation>„%1“: wie in ES 35: Canary Islands, customs yes, tax no</translation>
        </message>
        <message>
            <source>Kept</source>
            <translation>Gespeichert</translation>
        </message>
        <message>
            <source>“%1”: that mark cannot stand there</source>
            <translation>„%1“: dieses Zeichen kann dort nicht stehen</translation>
        </message>
        <message>
            <source>“%1”: behind the = one of %2</source>
            <translation>„%1“: hinter das = gehört eines von %2</translation>
        </message>
        <message>
            <source>Message to buyers, in French</source>
            <translation>Nachricht an Käufer, auf Französisch</translation>
        </message>
        <message>
            <source>Message to buyers, in Italian</source>
            <translation>Nachricht an Käufer, auf Italienisch</translation>
        </message>
        <message>
            <source>Message to buyers, in Spanish</source>
            <translation>Nachricht an Käufer, auf Spanisch</translation>
        </message>
    </context>
    <context>
        <name>stow::view::SizesController</name>
        <message>
            <source>Take in the list of cartons a supplier offers: a table in the columns of supplies.</source>
            <translation>Die Kartonliste eines Lieferanten einlesen: eine Tabelle mit den Spalten der Packmittel.</translation>
        </message>
        <message>
            <source>“%1” is not an amount</source>
            <translation>„%1“ ist kein Betrag</translation>
        </message>
        <message>
            <source>There is no carton in that file.</source>
            <translation>In dieser Datei ist kein Karton.</translation>
        </message>
        <message>
            <source>No carton was packed in that time: there is nothing to go by.</source>
            <translation>In dieser Zeit wurde kein Karton gepackt: es gibt keinen Anhalt.</translation>
        </message>
        <message numerus="yes">
            <source>Weighing up %n parcels of the last two years</source>
            <translation>
                <numerusform>Ein Paket der letzten zwei Jahre wird abgewogen</numerusform>
                <numerusform>%n Pakete der letzten zwei Jahre werden abgewogen</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>%n sizes</source>
            <translation>
                <numerusform>eine Größe</numerusform>
                <numerusform>%n Größen</numerusform>
            </translation>
        </message>
        <message>
            <source>the best there is, proven</source>
            <translation>die beste, bewiesen</translation>
        </message>
        <message>
            <source>at most %1 % from the best</source>
            <translation>höchstens %1 % von der besten</translation>
        </message>
        <message numerus="yes">
            <source>%n parcels go into none of them</source>
            <translation>
                <numerusform>ein Paket passt in keine</numerusform>
                <numerusform>%n Pakete passen in keine</numerusform>
            </translation>
        </message>
        <message>
            <source>%1 on the weeks kept back</source>
            <translation>%1 in den zurückgehaltenen Wochen</translation>
        </message>
        <message>
            <source>Cost of a parcel against how many sizes there are</source>
            <translation>Kosten eines Pakets gegen die Zahl der Größen</translation>
        </message>
        <message numerus="yes">
            <source>%n parcels</source>
            <translation>
                <numerusform>ein Paket</numerusform>
                <numerusform>%n Pakete</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>%n different blocks</source>
            <translation>
                <numerusform>eine Form</numerusform>
                <numerusform>%n verschiedene Formen</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>with the cartons of today one costs %1 on the %n parcels kept back to judge by</source>
            <translation>
                <numerusform>mit den heutigen Kartons kostet eines %1, nach dem einen zurückgehaltenen</numerusform>
                <numerusform>mit den heutigen Kartons kostet eines %1, nach den %n zurückgehaltenen</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>%n parcels kept back to judge by</source>
            <translation>
                <numerusform>eines zum Urteilen zurückgehalten</numerusform>
                <numerusform>%n zum Urteilen zurückgehalten</numerusform>
            </translation>
        </message>
    </context>
    <context>
        <name>stow::view::SuppliesController</name>
        <message>
            <source>made of %1</source>
            <translation>aus %1 gemacht</translation>
        </message>
        <message>
            <source>used again</source>
            <translation>wiederverwendet</translation>
        </message>
        <message numerus="yes">
            <source>lasts %n days</source>
            <translation>
                <numerusform>reicht %n Tag</numerusform>
                <numerusform>reicht %n Tage</numerusform>
            </translation>
        </message>
        <message>
            <source>more was packed than the book knows: count it</source>
            <translation>mehr wurde gepackt, als das Buch weiß: zählen</translation>
        </message>
        <message>
            <source>reorder %1 from %2</source>
            <translation>%1 von %2 nachbestellen</translation>
        </message>
        <message numerus="yes">
            <source>%n supplies to count</source>
            <translation>
                <numerusform>%n Packmittel zu zählen</numerusform>
                <numerusform>%n Packmittel zu zählen</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>%n supplies to reorder</source>
            <translation>
                <numerusform>%n nachzubestellen</numerusform>
                <numerusform>%n nachzubestellen</numerusform>
            </translation>
        </message>
        <message>
            <source>inside %1, outside %2</source>
            <translation>innen %1, außen %2</translation>
        </message>
        <message>
            <source>weighs %1</source>
            <translation>wiegt %1</translation>
        </message>
        <message>
            <source>costs %1</source>
            <translation>kostet %1</translation>
        </message>
        <message numerus="yes">
            <source>comes in %n days</source>
            <translation>
                <numerusform>kommt in %n Tag</numerusform>
                <numerusform>kommt in %n Tagen</numerusform>
            </translation>
        </message>
        <message>
            <source>reorder at %1</source>
            <translation>nachbestellen bei %1</translation>
        </message>
        <message>
            <source>cost %1 on average when it came in</source>
            <translation>kostete beim Eingang im Mittel %1</translation>
        </message>
        <message>
            <source>pieces</source>
            <translation>Stück</translation>
        </message>
        <message>
            <source>%1 there</source>
            <translation>%1 da</translation>
        </message>
        <message>
            <source>“%1” is not a number</source>
            <translation>„%1“ ist keine Zahl</translation>
        </message>
        <message>
            <source>counted</source>
            <translation>gezählt</translation>
        </message>
        <message>
            <source>%1 counted: %2</source>
            <translation>%1 gezählt: %2</translation>
        </message>
        <message>
            <source>“%1” is not a number above zero</source>
            <translation>„%1“ ist keine Zahl über null</translation>
        </message>
        <message>
            <source>“%1” is not an amount of money</source>
            <translation>„%1“ ist kein Geldbetrag</translation>
        </message>
        <message>
            <source>%1 of %2 received</source>
            <translation>%1 von %2 eingegangen</translation>
        </message>
        <message>
            <source>%1 of %2 spoilt</source>
            <translation>%1 von %2 verdorben</translation>
        </message>
        <message>
            <source>Reorder list: %1</source>
            <translation>Nachbestellliste: %1</translation>
        </message>
        <message>
            <source>There is nothing to reorder.</source>
            <translation>Es gibt nichts nachzubestellen.</translation>
        </message>
        <message>
            <source>on hand at the start</source>
            <translation>Bestand am Anfang</translation>
        </message>
        <message>
            <source>received</source>
            <translation>eingegangen</translation>
        </message>
        <message>
            <source>made</source>
            <translation>gefertigt</translation>
        </message>
        <message>
            <source>used in packing</source>
            <translation>beim Packen verbraucht</translation>
        </message>
        <message>
            <source>sold</source>
            <translation>verkauft</translation>
        </message>
        <message>
            <source>spoilt</source>
            <translation>verdorben</translation>
        </message>
        <message>
            <source>not there</source>
            <translation>nicht da</translation>
        </message>
        <message>
            <source>came back</source>
            <translation>kam zurück</translation>
        </message>
        <message>
            <source>steady</source>
            <translation>gleichmäßig</translation>
        </message>
        <message>
            <source>now and then</source>
            <translation>ab und zu</translation>
        </message>
        <message>
            <source>with the season</source>
            <translation>mit der Jahreszeit</translation>
        </message>
        <message>
            <source>about %1 next week, %2</source>
            <translation>etwa %1 nächste Woche, %2</translation>
        </message>
        <message numerus="yes">
            <source>; off by %1 a week in %n weeks it had not seen</source>
            <translation>
                <numerusform>; um %1 je Woche daneben in %n Woche, die nicht bekannt war</numerusform>
                <numerusform>; um %1 je Woche daneben in %n Wochen, die nicht bekannt waren</numerusform>
            </translation>
        </message>
        <message>
            <source>; order at %1</source>
            <translation>; bestellen bei %1</translation>
        </message>
        <message>
            <source>Print</source>
            <translation>Drucken</translation>
        </message>
        <message>
            <source>by code</source>
            <translation>nach Code</translation>
        </message>
        <message>
            <source>what ends first</source>
            <translation>was zuerst ausgeht</translation>
        </message>
        <message>
            <source>by kind</source>
            <translation>nach Art</translation>
        </message>
        <message>
            <source>by supplier</source>
            <translation>nach Lieferant</translation>
        </message>
        <message>
            <source>reorder %1</source>
            <translation>%1 nachbestellen</translation>
        </message>
        <message>
            <source>Supplies</source>
            <translation>Packmittel</translation>
        </message>
        <message numerus="yes">
            <source>%n supplies, all there</source>
            <translation>
                <numerusform>%n Packmittel, alles da</numerusform>
                <numerusform>%n Packmittel, alles da</numerusform>
            </translation>
        </message>
    </context>
    <context>
        <name>stow::view::SupplyCard</name>
        <message>
            <source>piece</source>
            <translation>Stück</translation>
        </message>
        <message>
            <source>litre</source>
            <translation>Liter</translation>
        </message>
        <message>
            <source>metre</source>
            <translation>Meter</translation>
        </message>
        <message>
            <source>kilogram</source>
            <translation>Kilogramm</translation>
        </message>
        <message>
            <source>mm</source>
            <translation>mm</translation>
        </message>
        <message>
            <source>Code</source>
            <translation>Code</translation>
        </message>
        <message>
            <source>Name</source>
            <translation>Name</translation>
        </message>
        <message>
            <source>Outer length</source>
            <translation>Länge außen</translation>
        </message>
        <message>
            <source>Outer width</source>
            <translation>Breite außen</translation>
        </message>
        <message>
            <source>Inner diameter</source>
            <translation>Durchmesser innen</translation>
        </message>
        <message>
            <source>Inner length</source>
            <translation>Länge innen</translation>
        </message>
        <message>
            <source>Holds at most</source>
            <translation>Trägt höchstens</translation>
        </message>
        <message>
            <source>g</source>
            <translation>g</translation>
        </message>
        <message>
            <source>Outer diameter</source>
            <translation>Durchmesser außen</translation>
        </message>
        <message>
            <source>Length to the fold</source>
            <translation>Länge bis zum Falz</translation>
        </message>
        <message>
            <source>Inner width</source>
            <translation>Breite innen</translation>
        </message>
        <message>
            <source>One wall</source>
            <translation>Eine Wand</translation>
        </message>
        <message>
            <source>Thickness, empty</source>
            <translation>Dicke, leer</translation>
        </message>
        <message>
            <source>Thickest load</source>
            <translation>Dickster Inhalt</translation>
        </message>
        <message>
            <source>Inner height</source>
            <translation>Höhe innen</translation>
        </message>
        <message>
            <source>Outer height</source>
            <translation>Höhe außen</translation>
        </message>
        <message>
            <source>Length</source>
            <translation>Länge</translation>
        </message>
        <message>
            <source>Width</source>
            <translation>Breite</translation>
        </message>
        <message>
            <source>Thickness</source>
            <translation>Dicke</translation>
        </message>
        <message>
            <source>Counted in</source>
            <translation>Gezählt in</translation>
        </message>
        <message>
            <source>Weight, empty</source>
            <translation>Gewicht, leer</translation>
        </message>
        <message>
            <source>Weight of one</source>
            <translation>Gewicht von einem</translation>
        </message>
        <message>
            <source>Material</source>
            <translation>Material</translation>
        </message>
        <message>
            <source>Cost of one</source>
            <translation>Kosten je Stück</translation>
        </message>
        <message>
            <source>There now</source>
            <translation>Jetzt da</translation>
        </message>
        <message>
            <source>Reorder at</source>
            <translation>Nachbestellen bei</translation>
        </message>
        <message>
            <source>Bought by</source>
            <translation>Gekauft zu</translation>
        </message>
        <message>
            <source>Supplier</source>
            <translation>Lieferant</translation>
        </message>
        <message>
            <source>Comes in</source>
            <translation>Kommt in</translation>
        </message>
        <message>
            <source>days</source>
            <translation>Tagen</translation>
        </message>
        <message>
            <source>New supply</source>
            <translation>Neues Packmittel</translation>
        </message>
        <message>
            <source>there is a supply of this code already</source>
            <translation>ein Packmittel mit diesem Code gibt es schon</translation>
        </message>
        <message>
            <source>%1 is kept</source>
            <translation>%1 ist gespeichert</translation>
        </message>
    </context>
    <context>
        <name>stow::view::TypedTable</name>
        <message>
            <source>Nothing is typed yet</source>
            <translation>Noch ist nichts eingegeben</translation>
        </message>
    </context>
    <context>
        <name>stow::view::WrappingsTable</name>
        <message>
            <source>Wrappings</source>
            <translation>Einschläge</translation>
        </message>
        <message>
            <source>How much a good grows by it in each direction, what it uses up (0.5 BUBBLE + TISSUE), and what that weighs. Goods name it by its code.</source>
            <translation>Wie viel eine Ware dadurch in jeder Richtung wächst, was sie verbraucht (0,5 BUBBLE + TISSUE) und was das wiegt. Waren nennen ihn mit seinem Code.</translation>
        </message>
        <message>
            <source>mm</source>
            <translation>mm</translation>
        </message>
        <message>
            <source>g</source>
            <translation>g</translation>
        </message>
        <message>
            <source>Code</source>
            <translation>Code</translation>
        </message>
        <message>
            <source>Name</source>
            <translation>Name</translation>
        </message>
        <message>
            <source>Adds to length</source>
            <translation>Mehr an Länge</translation>
        </message>
        <message>
            <source>to width</source>
            <translation>an Breite</translation>
        </message>
        <message>
            <source>to height</source>
            <translation>an Höhe</translation>
        </message>
        <message>
            <source>Cushion</source>
            <translation>Polster</translation>
        </message>
        <message>
            <source>Can be pressed</source>
            <translation>Lässt sich drücken</translation>
        </message>
        <message>
            <source>Uses up</source>
            <translation>Verbraucht</translation>
        </message>
        <message>
            <source>Weight</source>
            <translation>Gewicht</translation>
        </message>
        <message>
            <source>Takes</source>
            <translation>Dauert</translation>
        </message>
        <message>
            <source>s</source>
            <translation>s</translation>
        </message>
        <message>
            <source>%1 is wrapped in %2: it stays</source>
            <translation>%1 wird in %2 eingeschlagen: der bleibt</translation>
        </message>
        <message numerus="yes">
            <source>%n wrappings are kept</source>
            <translation>
                <numerusform>%n Einschlag gespeichert</numerusform>
                <numerusform>%n Einschläge gespeichert</numerusform>
            </translation>
        </message>
        <message>
            <source>Spread, one sigma</source>
            <translation>Streuung, ein Sigma</translation>
        </message>
    </context>
    <context>
        <name>words</name>
        <message>
            <source>The shop book %1 cannot be opened: %2.</source>
            <translation>Das Ladenbuch %1 lässt sich nicht öffnen: %2.</translation>
        </message>
        <message>
            <source>%1 is not a shop book. It was left untouched.</source>
            <translation>%1 ist kein Ladenbuch. Es blieb unberührt.</translation>
        </message>
        <message>
            <source>The shop book %1 was written by a newer Stowbench (its version is %2, this program knows up to %3). It was left untouched; please use the newer program.</source>
            <translation>Das Ladenbuch %1 stammt von einem neueren Stowbench (seine Fassung ist %2, dieses Programm kennt bis %3). Es blieb unberührt; bitte das neuere Programm nehmen.</translation>
        </message>
        <message>
            <source>The shop book %1 is damaged (%2). It was left untouched; “stowbench restore” puts a backup in its place.</source>
            <translation>Das Ladenbuch %1 ist beschädigt (%2). Es blieb unberührt; „stowbench restore“ setzt eine Kopie an seine Stelle.</translation>
        </message>
        <message>
            <source>The shop book %1 is in use by another program. Close that one and try again.</source>
            <translation>Das Ladenbuch %1 wird von einem anderen Programm benutzt. Jenes schließen und noch einmal versuchen.</translation>
        </message>
        <message>
            <source>The shop book %1 could not be brought up to date (%2). It is as it was.</source>
            <translation>Das Ladenbuch %1 ließ sich nicht auf den neuen Stand bringen (%2). Es ist, wie es war.</translation>
        </message>
        <message>
            <source>The shop book is in use. Close Stowbench and try again.</source>
            <translation>Das Ladenbuch wird benutzt. Stowbench schließen und noch einmal versuchen.</translation>
        </message>
        <message>
            <source>There is no such order: %1</source>
            <translation>Es gibt keine solche Bestellung: %1</translation>
        </message>
        <message>
            <source>There is no such parcel: %1</source>
            <translation>Es gibt kein solches Paket: %1</translation>
        </message>
        <message>
            <source>There is no such good: %1</source>
            <translation>Es gibt keine solche Ware: %1</translation>
        </message>
        <message>
            <source>There is no such supply: %1</source>
            <translation>Es gibt kein solches Packmittel: %1</translation>
        </message>
        <message>
            <source>There is no such step</source>
            <translation>Es gibt keinen solchen Schritt</translation>
        </message>
        <message>
            <source>That cannot be done now: it is %1</source>
            <translation>Das geht jetzt nicht: es ist %1</translation>
        </message>
        <message>
            <source>Stop: the order changed or was called off since it was planned</source>
            <translation>Halt: die Bestellung wurde seit dem Planen geändert oder storniert</translation>
        </message>
        <message>
            <source>The plan of this parcel is kept; unlock it first</source>
            <translation>Der Plan dieses Pakets bleibt; erst freigeben</translation>
        </message>
        <message>
            <source>That would pack more than was ordered</source>
            <translation>So würde mehr gepackt als bestellt</translation>
        </message>
        <message>
            <source>That is there already: %1</source>
            <translation>Das ist schon da: %1</translation>
        </message>
        <message>
            <source>Postage for this parcel was bought already: %1</source>
            <translation>Porto für dieses Paket ist schon gekauft: %1</translation>
        </message>
        <message>
            <source>There is nothing to do</source>
            <translation>Es gibt nichts zu tun</translation>
        </message>
        <message>
            <source>These orders do not go to the same address</source>
            <translation>Diese Bestellungen gehen nicht an dieselbe Adresse</translation>
        </message>
        <message>
            <source>The amount must be more than zero</source>
            <translation>Die Menge muss über null sein</translation>
        </message>
        <message>
            <source>That was undone already</source>
            <translation>Das ist schon rückgängig</translation>
        </message>
        <message>
            <source>A later step builds on it: %1. Undo that one first</source>
            <translation>Ein späterer Schritt baut darauf auf: %1. Erst jenen rückgängig machen</translation>
        </message>
        <message>
            <source>That cannot be undone</source>
            <translation>Das lässt sich nicht rückgängig machen</translation>
        </message>
        <message>
            <source>goods taken in from %1</source>
            <translation>Waren aufgenommen aus %1</translation>
        </message>
        <message>
            <source>supplies taken in from %1</source>
            <translation>Packmittel aufgenommen aus %1</translation>
        </message>
        <message>
            <source>wrappings taken in from %1</source>
            <translation>Einschläge aufgenommen aus %1</translation>
        </message>
        <message>
            <source>house rules taken in from %1</source>
            <translation>Hausregeln aufgenommen aus %1</translation>
        </message>
        <message>
            <source>rate sheets taken in from %1</source>
            <translation>Preislisten aufgenommen aus %1</translation>
        </message>
        <message>
            <source>counts taken in from %1</source>
            <translation>Zählungen aufgenommen aus %1</translation>
        </message>
        <message>
            <source>orders taken in from %1</source>
            <translation>Bestellungen aufgenommen aus %1</translation>
        </message>
        <message>
            <source>good %1 changed</source>
            <translation>Ware %1 geändert</translation>
        </message>
        <message>
            <source>supply %1 changed</source>
            <translation>Packmittel %1 geändert</translation>
        </message>
        <message>
            <source>a wrapping changed</source>
            <translation>ein Einschlag geändert</translation>
        </message>
        <message>
            <source>house rules changed</source>
            <translation>Hausregeln geändert</translation>
        </message>
        <message>
            <source>settings changed</source>
            <translation>Einstellungen geändert</translation>
        </message>
        <message>
            <source>a rate sheet changed</source>
            <translation>eine Preisliste geändert</translation>
        </message>
        <message>
            <source>%1 removed</source>
            <translation>%1 entfernt</translation>
        </message>
        <message>
            <source>order %1 entered</source>
            <translation>Bestellung %1 eingegeben</translation>
        </message>
        <message>
            <source>order %1 changed</source>
            <translation>Bestellung %1 geändert</translation>
        </message>
        <message>
            <source>order %1 checked</source>
            <translation>Bestellung %1 geprüft</translation>
        </message>
        <message>
            <source>order %1 set aside</source>
            <translation>Bestellung %1 zurückgestellt</translation>
        </message>
        <message>
            <source>order %1 taken back</source>
            <translation>Bestellung %1 zurückgeholt</translation>
        </message>
        <message>
            <source>order %1 called off</source>
            <translation>Bestellung %1 storniert</translation>
        </message>
        <message>
            <source>change of order %1 seen</source>
            <translation>Änderung von Bestellung %1 gesehen</translation>
        </message>
        <message>
            <source>order %1 joined to another</source>
            <translation>Bestellung %1 mit einer anderen zusammengelegt</translation>
        </message>
        <message>
            <source>order %1 packed by itself again</source>
            <translation>Bestellung %1 wieder für sich gepackt</translation>
        </message>
        <message>
            <source>a title matched to a good</source>
            <translation>ein Titel einer Ware zugeordnet</translation>
        </message>
        <message>
            <source>columns matched</source>
            <translation>Spalten zugeordnet</translation>
        </message>
        <message>
            <source>planned</source>
            <translation>geplant</translation>
        </message>
        <message>
            <source>parcel %1 dropped</source>
            <translation>Paket %1 fallen gelassen</translation>
        </message>
        <message>
            <source>parcel %1 locked</source>
            <translation>Paket %1 festgehalten</translation>
        </message>
        <message>
            <source>parcel %1 unlocked</source>
            <translation>Paket %1 freigegeben</translation>
        </message>
        <message>
            <source>round of picking started</source>
            <translation>Sammelrunde begonnen</translation>
        </message>
        <message>
            <source>parcel %1 picked</source>
            <translation>Paket %1 gesammelt</translation>
        </message>
        <message>
            <source>%1 was not there</source>
            <translation>%1 war nicht da</translation>
        </message>
        <message>
            <source>a step at the bench, parcel %1</source>
            <translation>ein Schritt an der Packbank, Paket %1</translation>
        </message>
        <message>
            <source>parcel %1 weighed</source>
            <translation>Paket %1 gewogen</translation>
        </message>
        <message>
            <source>parcel %1 packed</source>
            <translation>Paket %1 gepackt</translation>
        </message>
        <message>
            <source>service chosen for parcel %1</source>
            <translation>Dienst für Paket %1 gewählt</translation>
        </message>
        <message>
            <source>postage for parcel %1</source>
            <translation>Porto für Paket %1</translation>
        </message>
        <message>
            <source>postage refunded</source>
            <translation>Porto erstattet</translation>
        </message>
        <message>
            <source>label stuck on parcel %1</source>
            <translation>Etikett auf Paket %1 geklebt</translation>
        </message>
        <message>
            <source>tracking number of parcel %1</source>
            <translation>Sendungsnummer von Paket %1</translation>
        </message>
        <message>
            <source>list for %1 closed</source>
            <translation>Liste für %1 geschlossen</translation>
        </message>
        <message>
            <source>parcel %1 came back</source>
            <translation>Paket %1 kam zurück</translation>
        </message>
        <message>
            <source>goods of parcel %1 back on the shelf</source>
            <translation>Waren von Paket %1 wieder im Regal</translation>
        </message>
        <message>
            <source>%1 received</source>
            <translation>%1 eingegangen</translation>
        </message>
        <message>
            <source>%1 counted</source>
            <translation>%1 gezählt</translation>
        </message>
        <message>
            <source>%1 spoilt</source>
            <translation>%1 verdorben</translation>
        </message>
        <message>
            <source>%1 made</source>
            <translation>%1 gefertigt</translation>
        </message>
        <message>
            <source>undone</source>
            <translation>rückgängig gemacht</translation>
        </message>
        <message>
            <source>a buyer&apos;s data erased</source>
            <translation>Daten einer Käuferin gelöscht</translation>
        </message>
        <message>
            <source>the file is damaged (%1)</source>
            <translation>die Datei ist beschädigt (%1)</translation>
        </message>
        <message>
            <source>refers to something that is not there (%1)</source>
            <translation>verweist auf etwas, das nicht da ist (%1)</translation>
        </message>
        <message>
            <source>the movements do not add up (%1)</source>
            <translation>die Bewegungen gehen nicht auf (%1)</translation>
        </message>
        <message>
            <source>an undoing is not the opposite of what it undid (%1)</source>
            <translation>ein Rückgängig ist nicht das Gegenteil dessen, was es aufhob (%1)</translation>
        </message>
        <message>
            <source>the plan cannot be read (%1)</source>
            <translation>der Plan lässt sich nicht lesen (%1)</translation>
        </message>
        <message>
            <source>plan and parcel disagree on what is inside</source>
            <translation>Plan und Paket sind uneins über den Inhalt</translation>
        </message>
        <message>
            <source>%1 was remembered as too small, which does not hold</source>
            <translation>%1 war als zu klein gemerkt, was nicht gilt</translation>
        </message>
        <message>
            <source>more in parcels than was ordered</source>
            <translation>mehr in Paketen als bestellt</translation>
        </message>
        <message>
            <source>ddd d MMM</source>
            <comment>date format</comment>
            <translation>ddd d. MMM</translation>
        </message>
        <message>
            <source>not decided in the time</source>
            <translation>in der Zeit nicht entschieden</translation>
        </message>
        <message>
            <source>%1 short</source>
            <translation>%1 zu klein</translation>
        </message>
        <message>
            <source>too little room in all</source>
            <translation>im Ganzen zu wenig Raum</translation>
        </message>
        <message>
            <source>one edge is too long</source>
            <translation>eine Kante ist zu lang</translation>
        </message>
        <message>
            <source>%1 is too long</source>
            <translation>%1 ist zu lang</translation>
        </message>
        <message>
            <source>does not fit the right way up</source>
            <translation>passt nicht in der rechten Lage</translation>
        </message>
        <message>
            <source>not side by side</source>
            <translation>nicht nebeneinander</translation>
        </message>
        <message>
            <source>too heavy for it</source>
            <translation>zu schwer dafür</translation>
        </message>
        <message>
            <source>does not go in: proven</source>
            <translation>geht nicht hinein: bewiesen</translation>
        </message>
        <message>
            <source>no way to arrange it</source>
            <translation>keine Anordnung möglich</translation>
        </message>
        <message>
            <source>too thick to slide in</source>
            <translation>zu dick zum Einschieben</translation>
        </message>
        <message>
            <source>too thick for the tube</source>
            <translation>zu dick für das Rohr</translation>
        </message>
        <message>
            <source>no service takes it</source>
            <translation>kein Dienst nimmt es</translation>
        </message>
        <message>
            <source>dearer in all</source>
            <translation>im Ganzen teurer</translation>
        </message>
        <message>
            <source>too little cushion at its walls</source>
            <translation>zu wenig Polster an den Wänden</translation>
        </message>
        <message>
            <source>no service with it keeps the promised day</source>
            <translation>kein Dienst hält damit den zugesagten Tag</translation>
        </message>
        <message>
            <source>%1 is missing, or there twice</source>
            <translation>%1 fehlt oder ist doppelt</translation>
        </message>
        <message>
            <source>%1 reaches out of the box by %2</source>
            <translation>%1 ragt um %2 aus der Schachtel</translation>
        </message>
        <message>
            <source>%1 and %2 overlap by %3</source>
            <translation>%1 und %2 überschneiden sich um %3</translation>
        </message>
        <message>
            <source>%1 is turned as it may not be</source>
            <translation>%1 ist gedreht, wie es nicht darf</translation>
        </message>
        <message>
            <source>the content is too heavy for the box</source>
            <translation>der Inhalt ist zu schwer für die Schachtel</translation>
        </message>
        <message>
            <source>%1 hangs in the air</source>
            <translation>%1 hängt in der Luft</translation>
        </message>
        <message>
            <source>too much stands on %1</source>
            <translation>auf %1 steht zu viel</translation>
        </message>
        <message>
            <source>the content is too thick for the mailer by %1</source>
            <translation>der Inhalt ist um %1 zu dick für die Tasche</translation>
        </message>
        <message>
            <source>%1 does not go into the tube</source>
            <translation>%1 geht nicht in das Rohr</translation>
        </message>
        <message>
            <source>the box %1 is not known</source>
            <translation>die Schachtel %1 ist nicht bekannt</translation>
        </message>
        <message>
            <source>no prices for that day</source>
            <translation>keine Preise für diesen Tag</translation>
        </message>
        <message>
            <source>does not go to that country</source>
            <translation>geht nicht in dieses Land</translation>
        </message>
        <message>
            <source>%1 too much (%2)</source>
            <translation>%1 zu viel (%2)</translation>
        </message>
        <message>
            <source>too big (%1)</source>
            <translation>zu groß (%1)</translation>
        </message>
        <message>
            <source>too small (%1)</source>
            <translation>zu klein (%1)</translation>
        </message>
        <message>
            <source>too heavy</source>
            <translation>zu schwer</translation>
        </message>
        <message>
            <source>does not carry: %1</source>
            <translation>befördert nicht: %1</translation>
        </message>
        <message>
            <source>worth more than its cover</source>
            <translation>mehr wert als versichert</translation>
        </message>
        <message>
            <source>no price for this format and zone</source>
            <translation>kein Preis für dieses Format und diese Zone</translation>
        </message>
        <message>
            <source>a title that is not matched to a good yet</source>
            <translation>ein Titel, der noch keiner Ware zugeordnet ist</translation>
        </message>
        <message>
            <source>%1 is not among the goods</source>
            <translation>%1 ist nicht unter den Waren</translation>
        </message>
        <message>
            <source>not paid yet</source>
            <translation>noch nicht bezahlt</translation>
        </message>
        <message>
            <source>set aside</source>
            <translation>zurückgestellt</translation>
        </message>
        <message numerus="yes">
            <source>%n of %1 missing on the shelf</source>
            <translation>
                <numerusform>%n %1 fehlt im Regal</numerusform>
                <numerusform>%n %1 fehlen im Regal</numerusform>
            </translation>
        </message>
        <message>
            <source>no outer on hand holds it</source>
            <translation>keine vorhandene Hülle fasst es</translation>
        </message>
        <message>
            <source>%1 has no size or weight yet</source>
            <translation>%1 hat noch keine Größe oder kein Gewicht</translation>
        </message>
        <message>
            <source>no gift box for %1 left</source>
            <translation>keine Geschenkschachtel für %1 mehr da</translation>
        </message>
        <message>
            <source>cannot be opened</source>
            <translation>lässt sich nicht öffnen</translation>
        </message>
        <message>
            <source>is empty</source>
            <translation>ist leer</translation>
        </message>
        <message>
            <source>is not a table of text</source>
            <translation>ist keine Texttabelle</translation>
        </message>
        <message>
            <source>has more rows than can be taken at once (%1)</source>
            <translation>hat mehr Zeilen, als auf einmal aufgenommen werden (%1)</translation>
        </message>
        <message>
            <source>is written in letters that could not be read</source>
            <translation>ist in Zeichen geschrieben, die sich nicht lesen ließen</translation>
        </message>
        <message>
            <source>has more or fewer cells than there are headings</source>
            <translation>hat mehr oder weniger Zellen, als es Überschriften gibt</translation>
        </message>
        <message>
            <source>this column is missing</source>
            <translation>diese Spalte fehlt</translation>
        </message>
        <message>
            <source>nothing stands here</source>
            <translation>hier fehlt etwas</translation>
        </message>
        <message>
            <source>“%1” is not a number</source>
            <translation>„%1“ ist keine Zahl</translation>
        </message>
        <message>
            <source>“%1” must be more than zero</source>
            <translation>„%1“ muss über null sein</translation>
        </message>
        <message>
            <source>“%1” is out of range (%2)</source>
            <translation>„%1“ liegt außerhalb (%2)</translation>
        </message>
        <message>
            <source>“%1” is not a date</source>
            <translation>„%1“ ist kein Datum</translation>
        </message>
        <message>
            <source>“%1” is not one of: %2</source>
            <translation>„%1“ ist keines von: %2</translation>
        </message>
        <message>
            <source>“%1” is not known</source>
            <translation>„%1“ ist nicht bekannt</translation>
        </message>
        <message>
            <source>“%1” is not a currency (ISO 4217)</source>
            <translation>„%1“ ist keine Währung (ISO 4217)</translation>
        </message>
        <message>
            <source>“%1” is not a country</source>
            <translation>„%1“ ist kein Land</translation>
        </message>
        <message>
            <source>the postcode “%1” does not look like one of that country</source>
            <translation>die Postleitzahl „%1“ sieht nicht nach diesem Land aus</translation>
        </message>
        <message>
            <source>the check digit of “%1” is wrong</source>
            <translation>die Prüfziffer von „%1“ stimmt nicht</translation>
        </message>
        <message>
            <source>“%1” stands here twice; the first was kept</source>
            <translation>„%1“ steht hier zweimal; das erste gilt</translation>
        </message>
        <message>
            <source>rows of one order disagree: “%1”</source>
            <translation>Zeilen einer Bestellung widersprechen sich: „%1“</translation>
        </message>
        <message>
            <source>another row of order “%1” is wrong, so all of it waits</source>
            <translation>eine andere Zeile der Bestellung „%1“ ist falsch, deshalb wartet sie ganz</translation>
        </message>
        <message>
            <source>nothing of that name is known here</source>
            <translation>nichts mit diesem Namen ist hier bekannt</translation>
        </message>
        <message>
            <source>is not JSON: %1</source>
            <translation>ist kein JSON: %1</translation>
        </message>
        <message>
            <source>, row %1</source>
            <translation>, Zeile %1</translation>
        </message>
        <message>
            <source>, column %1</source>
            <translation>, Spalte %1</translation>
        </message>
        <message>
            <source>This row was left out.</source>
            <translation>Diese Zeile wurde ausgelassen.</translation>
        </message>
        <message>
            <source>The row was taken.</source>
            <translation>Die Zeile wurde genommen.</translation>
        </message>
        <message>
            <source>line %1 is not matched to a good</source>
            <translation>Zeile %1 ist keiner Ware zugeordnet</translation>
        </message>
        <message>
            <source>the postcode does not look right</source>
            <translation>die Postleitzahl sieht nicht richtig aus</translation>
        </message>
        <message>
            <source>the country is not known</source>
            <translation>das Land ist nicht bekannt</translation>
        </message>
        <message>
            <source>no street</source>
            <translation>keine Straße</translation>
        </message>
        <message>
            <source>the promised day has passed</source>
            <translation>der zugesagte Tag ist vorbei</translation>
        </message>
        <message>
            <source>same buyer and address as another order</source>
            <translation>gleiche Käuferin und Adresse wie eine andere Bestellung</translation>
        </message>
        <message>
            <source>changed since you looked</source>
            <translation>geändert, seit du sie angesehen hast</translation>
        </message>
        <message>
            <source>there is a note to read</source>
            <translation>es gibt eine Notiz zu lesen</translation>
        </message>
        <message>
            <source>there are no prices</source>
            <translation>es gibt keine Preise</translation>
        </message>
        <message>
            <source>a place is in no zone</source>
            <translation>ein Ort liegt in keiner Zone</translation>
        </message>
        <message>
            <source>a place is in two zones</source>
            <translation>ein Ort liegt in zwei Zonen</translation>
        </message>
        <message>
            <source>the price falls as the weight grows</source>
            <translation>der Preis fällt mit steigendem Gewicht</translation>
        </message>
        <message>
            <source>this step is never used</source>
            <translation>diese Stufe wird nie gebraucht</translation>
        </message>
        <message>
            <source>the service is not listed</source>
            <translation>der Dienst ist nicht aufgeführt</translation>
        </message>
        <message>
            <source>the zone is not listed</source>
            <translation>die Zone ist nicht aufgeführt</translation>
        </message>
        <message>
            <source>the format is not listed</source>
            <translation>das Format ist nicht aufgeführt</translation>
        </message>
        <message>
            <source>it ends before it begins</source>
            <translation>es endet, bevor es beginnt</translation>
        </message>
        <message>
            <source>it is no longer valid</source>
            <translation>es gilt nicht mehr</translation>
        </message>
        <message>
            <source>another currency than the sheet&apos;s</source>
            <translation>eine andere Währung als die der Liste</translation>
        </message>
        <message>
            <source>this stands there twice</source>
            <translation>das steht zweimal da</translation>
        </message>
        <message>
            <source>the surcharge it counts in does not stand before it</source>
            <translation>der Zuschlag, den es einrechnet, steht nicht davor</translation>
        </message>
        <message>
            <source>you send there, and no zone names it</source>
            <translation>dorthin versendest du, und keine Zone nennt es</translation>
        </message>
        <message>
            <source>it ends soon, and no sheet follows</source>
            <translation>sie endet bald, und keine Liste folgt</translation>
        </message>
        <message>
            <source>arrived</source>
            <translation>eingetroffen</translation>
        </message>
        <message>
            <source>checked</source>
            <translation>geprüft</translation>
        </message>
        <message>
            <source>called off</source>
            <translation>storniert</translation>
        </message>
        <message>
            <source>picked</source>
            <translation>gesammelt</translation>
        </message>
        <message>
            <source>packed</source>
            <translation>gepackt</translation>
        </message>
        <message>
            <source>labelled</source>
            <translation>mit Etikett</translation>
        </message>
        <message>
            <source>handed over</source>
            <translation>übergeben</translation>
        </message>
        <message>
            <source>came back</source>
            <translation>kam zurück</translation>
        </message>
        <message>
            <source>smallest box first</source>
            <translation>kleinste Hülle zuerst</translation>
        </message>
        <message>
            <source>cheapest first</source>
            <translation>günstigste zuerst</translation>
        </message>
        <message>
            <source>least material first</source>
            <translation>wenigstes Material zuerst</translation>
        </message>
        <message numerus="yes">
            <source>%n more orders go</source>
            <translation>
                <numerusform>%n Bestellung mehr geht</numerusform>
                <numerusform>%n Bestellungen mehr gehen</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>%n more in time</source>
            <translation>
                <numerusform>%n mehr rechtzeitig</numerusform>
                <numerusform>%n mehr rechtzeitig</numerusform>
            </translation>
        </message>
        <message>
            <source>%1 saved</source>
            <translation>%1 gespart</translation>
        </message>
        <message>
            <source>%1 smaller</source>
            <translation>%1 kleiner</translation>
        </message>
        <message>
            <source>no better than one by one</source>
            <translation>nicht besser als eins nach dem anderen</translation>
        </message>
        <message>
            <source>Shared out over the day: %1</source>
            <translation>Über den Tag verteilt: %1</translation>
        </message>
        <message>
            <source>stopped: at most %1 % better is possible</source>
            <translation>angehalten: höchstens %1 % besser ist möglich</translation>
        </message>
        <message numerus="yes">
            <source>%1 more of %2 would let %n orders go</source>
            <translation>
                <numerusform>%1 mehr von %2 ließen %n Bestellung mehr gehen</numerusform>
                <numerusform>%1 mehr von %2 ließen %n Bestellungen mehr gehen</numerusform>
            </translation>
        </message>
        <message>
            <source>%1 more of %2 would save %3 today</source>
            <translation>%1 mehr von %2 würden heute %3 sparen</translation>
        </message>
        <message>
            <source>%1 more of %2 would make the parcels %3 smaller</source>
            <translation>%1 mehr von %2 würden die Pakete um %3 kleiner machen</translation>
        </message>
        <message>
            <source>%1 more of %2 would be used</source>
            <translation>%1 mehr von %2 würden gebraucht</translation>
        </message>
        <message>
            <source>parcel %1 came back: %2</source>
            <translation>Paket %1 kam zurück: %2</translation>
        </message>
        <message numerus="yes">
            <source>stopped: at most %n more orders could go</source>
            <translation>
                <numerusform>gestoppt: höchstens eine Bestellung mehr könnte gehen</numerusform>
                <numerusform>gestoppt: höchstens %n Bestellungen mehr könnten gehen</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>stopped: at most %n more could be in time</source>
            <translation>
                <numerusform>gestoppt: höchstens eine mehr könnte rechtzeitig sein</numerusform>
                <numerusform>gestoppt: höchstens %n mehr könnten rechtzeitig sein</numerusform>
            </translation>
        </message>
        <message>
            <source>stopped: less filler or tape might be enough</source>
            <translation>gestoppt: weniger Füllstoff oder Klebeband könnte genügen</translation>
        </message>
        <message>
            <source>the data of %1 buyers erased</source>
            <translation>Daten von %1 Käufern gelöscht</translation>
        </message>
        <message>
            <source>Another program is writing in the shop book and did not finish in time. Nothing of this step was kept; please try again.</source>
            <translation>Ein anderes Programm schreibt gerade im Ladenbuch und wurde nicht rechtzeitig fertig. Von diesem Schritt wurde nichts behalten; bitte noch einmal versuchen.</translation>
        </message>
        <message>
            <source>The disk of the shop book is full. Nothing of this step was kept; make room and try again.</source>
            <translation>Der Datenträger des Ladenbuchs ist voll. Von diesem Schritt wurde nichts behalten; Platz schaffen und noch einmal versuchen.</translation>
        </message>
        <message>
            <source>The shop book failed: %1. Nothing of this step was kept; the last finished step is there.</source>
            <translation>Das Ladenbuch hat versagt: %1. Von diesem Schritt wurde nichts behalten; der letzte fertige Schritt ist da.</translation>
        </message>
        <message>
            <source>%1 is in use or damaged and may still show erased buyers: close it, and erase again, or delete it.</source>
            <translation>%1 wird benutzt oder ist beschädigt und kann gelöschte Käufer noch zeigen: schließen und noch einmal löschen, oder die Datei entfernen.</translation>
        </message>
        <message numerus="yes">
            <source>%n orders checked</source>
            <translation>
                <numerusform>%n Bestellung geprüft</numerusform>
                <numerusform>%n Bestellungen geprüft</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>%n orders set aside</source>
            <translation>
                <numerusform>%n Bestellung zurückgestellt</numerusform>
                <numerusform>%n Bestellungen zurückgestellt</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>%n orders taken back</source>
            <translation>
                <numerusform>%n Bestellung zurückgeholt</numerusform>
                <numerusform>%n Bestellungen zurückgeholt</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>%n orders called off</source>
            <translation>
                <numerusform>%n Bestellung storniert</numerusform>
                <numerusform>%n Bestellungen storniert</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>%n parcels locked</source>
            <translation>
                <numerusform>%n Paket festgehalten</numerusform>
                <numerusform>%n Pakete festgehalten</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>%n parcels unlocked</source>
            <translation>
                <numerusform>%n Paket freigegeben</numerusform>
                <numerusform>%n Pakete freigegeben</numerusform>
            </translation>
        </message>
        <message>
            <source>The shop book %1 can be read but not written: it, its folder or its disk is read-only, or belongs to somebody else. Allow writing and try again.</source>
            <translation>Das Ladenbuch %1 kann gelesen, aber nicht geschrieben werden: Es selbst, sein Ordner oder sein Datenträger ist schreibgeschützt oder gehört jemand anderem. Das Schreiben erlauben und noch einmal versuchen.</translation>
        </message>
        <message>
            <source>The disk of the shop book %1 is full. The book is as it was; make room and try again.</source>
            <translation>Der Datenträger des Ladenbuchs %1 ist voll. Das Buch ist, wie es war; Platz schaffen und noch einmal versuchen.</translation>
        </message>
        <message>
            <source>The copy %1 is damaged (%2). Nothing was changed; take an older one (“stowbench restore --list”).</source>
            <translation>Die Kopie %1 ist beschädigt (%2). Nichts wurde geändert; eine ältere nehmen („stowbench restore --list“).</translation>
        </message>
        <message>
            <source>Nothing was written: %1.</source>
            <translation>Nichts wurde geschrieben: %1.</translation>
        </message>
        <message>
            <source>What was made is not sound and was thrown away: %1.</source>
            <translation>Was gemacht wurde, ist nicht heil und wurde verworfen: %1.</translation>
        </message>
        <message>
            <source>Refused, nothing was changed: %1.</source>
            <translation>Abgelehnt, nichts wurde geändert: %1.</translation>
        </message>
        <message>
            <source>There is nothing to do: no labelled parcel for %1</source>
            <translation>Es gibt nichts zu tun: kein Paket mit Etikett für %1</translation>
        </message>
        <message>
            <source>is larger than %1</source>
            <translation>ist größer als %1</translation>
        </message>
        <message>
            <source>a line is longer than %1; perhaps a quotation mark is not closed</source>
            <translation>eine Zeile ist länger als %1; vielleicht fehlt ein schließendes Anführungszeichen</translation>
        </message>
        <message>
            <source>has more columns than can be taken (%1)</source>
            <translation>hat mehr Spalten, als übernommen werden können (%1)</translation>
        </message>
        <message>
            <source>the text is longer than %1 bytes</source>
            <translation>der Text ist länger als %1 Bytes</translation>
        </message>
        <message>
            <source>, at %1</source>
            <translation>, bei %1</translation>
        </message>
        <message>
            <source>Nothing was taken from this file.</source>
            <translation>Aus dieser Datei wurde nichts übernommen.</translation>
        </message>
        <message>
            <source>parcel %1 planned anew</source>
            <translation>Paket %1 neu geplant</translation>
        </message>
        <message>
            <source>label stuck on parcel %1, not scanned; it was printed %2 times</source>
            <translation>Etikett auf Paket %1 geklebt, nicht gescannt; es wurde %2-mal gedruckt</translation>
        </message>
        <message>
            <source>label stuck on parcel %1: print %2, the last</source>
            <translation>Etikett auf Paket %1 geklebt: Druck %2, der letzte</translation>
        </message>
        <message>
            <source>label stuck on parcel %1: print %2, though print %3 was made later</source>
            <translation>Etikett auf Paket %1 geklebt: Druck %2, obwohl es später Druck %3 gab</translation>
        </message>
        <message>
            <source>none free</source>
            <translation>keine mehr frei</translation>
        </message>
        <message>
            <source>length</source>
            <translation>Länge</translation>
        </message>
        <message>
            <source>width</source>
            <translation>Breite</translation>
        </message>
        <message>
            <source>height</source>
            <translation>Höhe</translation>
        </message>
        <message>
            <source>all three sides together</source>
            <translation>alle drei Seiten zusammen</translation>
        </message>
        <message>
            <source>length and girth</source>
            <translation>Länge und Gurtmaß</translation>
        </message>
        <message>
            <source>volume</source>
            <translation>Volumen</translation>
        </message>
    </context>
</TS>
