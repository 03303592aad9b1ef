<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="de" sourcelanguage="en">
<context>
    <name>Actions</name>
    <message>
        <source>&amp;New household…</source>
        <translation>&amp;Neuer Haushalt…</translation>
    </message>
    <message>
        <source>&amp;Open household…</source>
        <translation>Haushalt öff&amp;nen…</translation>
    </message>
    <message>
        <source>Na&amp;me of the household…</source>
        <translation>Na&amp;me des Haushalts…</translation>
    </message>
    <message>
        <source>&amp;Import a table (CSV)…</source>
        <translation>Tabelle &amp;importieren (CSV)…</translation>
    </message>
    <message>
        <source>Import readings of a &amp;logger…</source>
        <translation>Messwerte eines &amp;Loggers importieren…</translation>
    </message>
    <message>
        <source>&amp;Export journal (CSV)…</source>
        <translation>Tagebuch &amp;exportieren (CSV)…</translation>
    </message>
    <message>
        <source>Export ca&amp;lendar…</source>
        <translation>Ka&amp;lender exportieren…</translation>
    </message>
    <message>
        <source>Sa&amp;ve a copy…</source>
        <translation>Kopie &amp;sichern…</translation>
    </message>
    <message>
        <source>&amp;Backups…</source>
        <translation>Sicherungs&amp;kopien…</translation>
    </message>
    <message>
        <source>&amp;Folder for backups…</source>
        <translation>&amp;Ordner für Sicherungskopien…</translation>
    </message>
    <message>
        <source>Open the &amp;demo household</source>
        <translation>&amp;Demo-Haushalt öffnen</translation>
    </message>
    <message>
        <source>&amp;Close window</source>
        <translation>Fenster s&amp;chließen</translation>
    </message>
    <message>
        <source>&amp;Quit</source>
        <translation>&amp;Beenden</translation>
    </message>
    <message>
        <source>&amp;Undo</source>
        <translation>&amp;Rückgängig</translation>
    </message>
    <message>
        <source>&amp;Redo</source>
        <translation>&amp;Wiederholen</translation>
    </message>
    <message>
        <source>&amp;Deleted entries…</source>
        <translation>&amp;Gelöschte Einträge…</translation>
    </message>
    <message>
        <source>New &amp;stack…</source>
        <translation>Neuer &amp;Stapel…</translation>
    </message>
    <message>
        <source>Re&amp;cord…</source>
        <translation>Ein&amp;tragen…</translation>
    </message>
    <message>
        <source>What may be &amp;wrong</source>
        <translation>&amp;Was nicht stimmen könnte</translation>
    </message>
    <message>
        <source>&amp;Harvest, step by step</source>
        <translation>&amp;Ernte Schritt für Schritt</translation>
    </message>
    <message>
        <source>&amp;Shelf</source>
        <translation>&amp;Regal</translation>
    </message>
    <message>
        <source>&amp;Trends</source>
        <translation>&amp;Verlauf</translation>
    </message>
    <message>
        <source>&amp;Journal</source>
        <translation>Ta&amp;gebuch</translation>
    </message>
    <message>
        <source>&amp;Materials</source>
        <translation>&amp;Materialien</translation>
    </message>
    <message>
        <source>&amp;Handbook</source>
        <translation>&amp;Handbuch</translation>
    </message>
    <message>
        <source>R&amp;otation</source>
        <translation>&amp;Umlauf</translation>
    </message>
    <message>
        <source>Go to the &amp;due list</source>
        <translation>Zur &amp;Fälligkeitsliste</translation>
    </message>
    <message>
        <source>Do the &amp;first thing due</source>
        <translation>Das &amp;Erste auf der Liste tun</translation>
    </message>
    <message>
        <source>&amp;Light colours</source>
        <translation>&amp;Helle Farben</translation>
    </message>
    <message>
        <source>&amp;Dark colours</source>
        <translation>&amp;Dunkle Farben</translation>
    </message>
    <message>
        <source>Colours &amp;as the system</source>
        <translation>Farben &amp;wie im System</translation>
    </message>
    <message>
        <source>L&amp;arger text</source>
        <translation>&amp;Größere Schrift</translation>
    </message>
    <message>
        <source>S&amp;maller text</source>
        <translation>&amp;Kleinere Schrift</translation>
    </message>
    <message>
        <source>&amp;Normal text</source>
        <translation>&amp;Normale Schrift</translation>
    </message>
    <message>
        <source>&amp;Full screen</source>
        <translation>&amp;Vollbild</translation>
    </message>
    <message>
        <source>&amp;Keys and shortcuts</source>
        <translation>&amp;Tasten und Kürzel</translation>
    </message>
    <message>
        <source>Copy a &amp;report</source>
        <translation>Bericht &amp;kopieren</translation>
    </message>
    <message>
        <source>&amp;About Tierloam</source>
        <translation>Ü&amp;ber Tierloam</translation>
    </message>
    <message>
        <source>&amp;Feed the usual</source>
        <translation>Wie üblich &amp;füttern</translation>
    </message>
    <message>
        <source>F&amp;eed…</source>
        <translation>F&amp;üttern…</translation>
    </message>
    <message>
        <source>&amp;Water the usual</source>
        <translation>Wie üblich &amp;gießen</translation>
    </message>
    <message>
        <source>W&amp;ater…</source>
        <translation>G&amp;ießen…</translation>
    </message>
    <message>
        <source>&amp;Drain the usual</source>
        <translation>Wie üblich &amp;ablassen</translation>
    </message>
    <message>
        <source>D&amp;rain…</source>
        <translation>A&amp;blassen…</translation>
    </message>
    <message>
        <source>Add a tra&amp;y…</source>
        <translation>&amp;Etage hinzufügen…</translation>
    </message>
    <message>
        <source>Add beddin&amp;g…</source>
        <translation>Einst&amp;reu hinzufügen…</translation>
    </message>
    <message>
        <source>We&amp;igh worms…</source>
        <translation>Würmer &amp;wiegen…</translation>
    </message>
    <message>
        <source>Co&amp;unt worms…</source>
        <translation>Würmer &amp;zählen…</translation>
    </message>
    <message>
        <source>Weig&amp;h a tray…</source>
        <translation>Etage wie&amp;gen…</translation>
    </message>
    <message>
        <source>&amp;Put worms in…</source>
        <translation>Würmer ein&amp;setzen…</translation>
    </message>
    <message>
        <source>&amp;Note…</source>
        <translation>&amp;Notiz…</translation>
    </message>
    <message>
        <source>Retire the stack…</source>
        <translation>Stapel stilllegen…</translation>
    </message>
    <message>
        <source>More…</source>
        <translation>Mehr…</translation>
    </message>
    <message>
        <source>A day back</source>
        <translation>Einen Tag zurück</translation>
    </message>
    <message>
        <source>A day on</source>
        <translation>Einen Tag weiter</translation>
    </message>
    <message>
        <source>A week back</source>
        <translation>Eine Woche zurück</translation>
    </message>
    <message>
        <source>A week on</source>
        <translation>Eine Woche weiter</translation>
    </message>
    <message>
        <source>Back to today</source>
        <translation>Zurück zu heute</translation>
    </message>
    <message>
        <source>30 days</source>
        <translation>30 Tage</translation>
    </message>
    <message>
        <source>90 days</source>
        <translation>90 Tage</translation>
    </message>
    <message>
        <source>1 year</source>
        <translation>1 Jahr</translation>
    </message>
    <message>
        <source>2 years</source>
        <translation>2 Jahre</translation>
    </message>
    <message>
        <source>All</source>
        <translation>Alles</translation>
    </message>
    <message>
        <source>Stacks together</source>
        <translation>Stapel zusammen</translation>
    </message>
    <message>
        <source>As table</source>
        <translation>Als Tabelle</translation>
    </message>
    <message>
        <source>Find</source>
        <translation>Suchen</translation>
    </message>
    <message>
        <source>Edit…</source>
        <translation>Bearbeiten…</translation>
    </message>
    <message>
        <source>Change together…</source>
        <translation>Gemeinsam ändern…</translation>
    </message>
    <message>
        <source>Pictures…</source>
        <translation>Bilder…</translation>
    </message>
    <message>
        <source>Delete</source>
        <translation>Löschen</translation>
    </message>
    <message>
        <source>Show all</source>
        <translation>Alle zeigen</translation>
    </message>
    <message>
        <source>Find a material</source>
        <translation>Material suchen</translation>
    </message>
    <message>
        <source>New material…</source>
        <translation>Neues Material…</translation>
    </message>
    <message>
        <source>Edit the own material…</source>
        <translation>Eigenes Material bearbeiten…</translation>
    </message>
    <message>
        <source>Favourite</source>
        <translation>Favorit</translation>
    </message>
    <message>
        <source>Put it into the mix</source>
        <translation>In die Mischung geben</translation>
    </message>
    <message>
        <source>Mix</source>
        <translation>Mischung</translation>
    </message>
    <message>
        <source>Bedding</source>
        <translation>Einstreu</translation>
    </message>
    <message>
        <source>Use of castings</source>
        <translation>Humus verwenden</translation>
    </message>
    <message>
        <source>Use of leachate</source>
        <translation>Sickerwasser verwenden</translation>
    </message>
    <message>
        <source>Find in the handbook</source>
        <translation>Im Handbuch suchen</translation>
    </message>
    <message>
        <source>Back</source>
        <translation>Zurück</translation>
    </message>
    <message>
        <source>Forward</source>
        <translation>Vor</translation>
    </message>
    <message>
        <source>To the first page</source>
        <translation>Zur ersten Seite</translation>
    </message>
    <message>
        <source>As they come</source>
        <translation>Wie sie kommen</translation>
    </message>
    <message>
        <source>Spread over the year</source>
        <translation>Übers Jahr verteilt</translation>
    </message>
    <message>
        <source>Gathered on few days</source>
        <translation>Auf wenige Tage gesammelt</translation>
    </message>
    <message>
        <source>Let it come on its turn</source>
        <translation>Kommen lassen, wenn sie an der Reihe ist</translation>
    </message>
    <message>
        <source>Steps as table</source>
        <translation>Schritte als Tabelle</translation>
    </message>
    <message>
        <source>Save</source>
        <translation>Sichern</translation>
    </message>
    <message>
        <source>Cancel</source>
        <translation>Abbrechen</translation>
    </message>
    <message>
        <source>Everywhere</source>
        <translation>Überall</translation>
    </message>
    <message>
        <source>On the shelf</source>
        <translation>Im Regal</translation>
    </message>
    <message>
        <source>On the trends page</source>
        <translation>Auf der Verlaufsseite</translation>
    </message>
    <message>
        <source>In the journal</source>
        <translation>Im Tagebuch</translation>
    </message>
    <message>
        <source>On the rotation page</source>
        <translation>Auf der Umlaufseite</translation>
    </message>
    <message>
        <source>On the materials page</source>
        <translation>Auf der Materialseite</translation>
    </message>
    <message>
        <source>In the handbook</source>
        <translation>Im Handbuch</translation>
    </message>
    <message>
        <source>In a form</source>
        <translation>In einem Formular</translation>
    </message>
    <message>
        <source>&amp;Print the sheet of a stack…</source>
        <translation>Blatt eines Stapels &amp;drucken…</translation>
    </message>
    <message>
        <source>Labels for &amp;trays…</source>
        <translation>E&amp;tiketten für Etagen…</translation>
    </message>
    <message>
        <source>Units &amp;as the system</source>
        <translation>Einheiten &amp;wie im System</translation>
    </message>
    <message>
        <source>&amp;Metric: kg, L, °C</source>
        <translation>&amp;Metrisch: kg, L, °C</translation>
    </message>
    <message>
        <source>&amp;US: lb, gal, °F</source>
        <translation>&amp;US: lb, gal, °F</translation>
    </message>
    <message>
        <source>Language &amp;as the system</source>
        <translation>Sprache &amp;wie im System</translation>
    </message>
    <message>
        <source>Less &amp;motion</source>
        <translation>Weniger &amp;Bewegung</translation>
    </message>
    <message>
        <source>Move the stack to the left</source>
        <translation>Stapel nach links schieben</translation>
    </message>
    <message>
        <source>Move the stack to the right</source>
        <translation>Stapel nach rechts schieben</translation>
    </message>
    <message>
        <source>Drainage added up</source>
        <translation>Ablass aufsummiert</translation>
    </message>
    <message>
        <source>Yield by year</source>
        <translation>Ertrag nach Jahr</translation>
    </message>
    <message>
        <source>Try a change</source>
        <translation>Eine Änderung durchspielen</translation>
    </message>
    <message>
        <source>Fewer days</source>
        <translation>Weniger Tage</translation>
    </message>
    <message>
        <source>More days</source>
        <translation>Mehr Tage</translation>
    </message>
    <message>
        <source>All days</source>
        <translation>Alle Tage</translation>
    </message>
    <message>
        <source>Earlier days</source>
        <translation>Frühere Tage</translation>
    </message>
    <message>
        <source>Later days</source>
        <translation>Spätere Tage</translation>
    </message>
    <message>
        <source>Picture (&amp;PNG)…</source>
        <translation>Bild (&amp;PNG)…</translation>
    </message>
    <message>
        <source>Drawing (&amp;SVG)…</source>
        <translation>Zeichnung (&amp;SVG)…</translation>
    </message>
    <message>
        <source>Pages (P&amp;DF)…</source>
        <translation>Seiten (P&amp;DF)…</translation>
    </message>
    <message>
        <source>Figures (&amp;CSV)…</source>
        <translation>Zahlen (&amp;CSV)…</translation>
    </message>
    <message>
        <source>P&amp;rint…</source>
        <translation>D&amp;rucken…</translation>
    </message>
    <message>
        <source>One more like it…</source>
        <translation>Noch einen wie diesen…</translation>
    </message>
    <message>
        <source>Record several…</source>
        <translation>Mehrere eintragen…</translation>
    </message>
    <message>
        <source>Columns…</source>
        <translation>Spalten…</translation>
    </message>
    <message>
        <source>&amp;Tell on the desktop what is due today</source>
        <translation>Auf dem &amp;Desktop melden, was heute fällig ist</translation>
    </message>
    <message>
        <source>Warmest in &amp;July, north of the equator</source>
        <translation>Am wärmsten im &amp;Juli, nördlich des Äquators</translation>
    </message>
    <message>
        <source>Warmest in J&amp;anuary, south of the equator</source>
        <translation>Am wärmsten im J&amp;anuar, südlich des Äquators</translation>
    </message>
    <message>
        <source>Do what the line says</source>
        <translation>Tun, was die Zeile sagt</translation>
    </message>
    <message>
        <source>Another amount or day…</source>
        <translation>Andere Menge oder anderer Tag…</translation>
    </message>
    <message>
        <source>Answers in their order</source>
        <translation>Antworten der Reihe nach</translation>
    </message>
    <message>
        <source>Note it as done</source>
        <translation>Als erledigt eintragen</translation>
    </message>
    <message>
        <source>Why, and what if it is left</source>
        <translation>Warum, und was sonst geschieht</translation>
    </message>
    <message>
        <source>Put it off</source>
        <translation>Aufschieben</translation>
    </message>
    <message>
        <source>Show what was put off</source>
        <translation>Zeigen, was aufgeschoben wurde</translation>
    </message>
    <message>
        <source>Feed only what is borne</source>
        <translation>Nur füttern, was vertragen wird</translation>
    </message>
    <message>
        <source>&amp;Cover with the usual</source>
        <translation>Wie üblich ab&amp;decken</translation>
    </message>
    <message>
        <source>Co&amp;ver…</source>
        <translation>A&amp;bdecken…</translation>
    </message>
    <message>
        <source>In a line of the due list</source>
        <translation>In einer Zeile der Fälligkeitsliste</translation>
    </message>
    <message>
        <source>Compare the change with the usual course</source>
        <translation>Die Änderung mit dem üblichen Verlauf vergleichen</translation>
    </message>
    <message>
        <source>Another material in the mix</source>
        <translation>Ein weiteres Material in der Mischung</translation>
    </message>
    <message>
        <source>Days of the week for harvests, Monday first</source>
        <translation>Wochentage für Ernten, Montag zuerst</translation>
    </message>
    <message>
        <source>Keep this day</source>
        <translation>Diesen Tag halten</translation>
    </message>
    <message>
        <source>A little each month</source>
        <translation>Jeden Monat ein wenig</translation>
    </message>
    <message>
        <source>What would raise it?</source>
        <translation>Was würde es erhöhen?</translation>
    </message>
    <message>
        <source>F&amp;lush…</source>
        <translation>D&amp;urchspülen…</translation>
    </message>
    <message>
        <source>Lift the &amp;bottom tray…</source>
        <translation>Unterste Etage &amp;heben…</translation>
    </message>
    <message>
        <source>Ha&amp;rvest…</source>
        <translation>&amp;Ernten…</translation>
    </message>
    <message>
        <source>L&amp;oosen the castings</source>
        <translation>Humus &amp;lockern</translation>
    </message>
    <message>
        <source>Chec&amp;k a tray…</source>
        <translation>In eine Etage s&amp;chauen…</translation>
    </message>
    <message>
        <source>Readin&amp;g…</source>
        <translation>&amp;Messwert…</translation>
    </message>
    <message>
        <source>T&amp;ake worms out…</source>
        <translation>Würmer en&amp;tnehmen…</translation>
    </message>
    <message>
        <source>&amp;Move worms…</source>
        <translation>Würmer &amp;umsetzen…</translation>
    </message>
    <message>
        <source>U&amp;nwritten routine…</source>
        <translation>Ungeschriebene &amp;Gewohnheit…</translation>
    </message>
    <message>
        <source>Somet&amp;hing happened…</source>
        <translation>Etwas ist ge&amp;schehen…</translation>
    </message>
    <message>
        <source>&amp;Change the stack…</source>
        <translation>Stapel än&amp;dern…</translation>
    </message>
</context>
<context>
    <name>Advice</name>
    <message>
        <source>The top tray fills to its rim, spent bedding crowds the colony, and it shrinks.</source>
        <translation>Die oberste Etage füllt sich bis zum Rand, verbrauchte Einstreu beengt den Bestand, und er schrumpft.</translation>
    </message>
    <message>
        <source>Nothing is lost: the castings keep where they are.</source>
        <translation>Nichts geht verloren: der Humus hält sich, wo er ist.</translation>
    </message>
    <message>
        <source>Nothing yet; have bedding at hand for the emptied tray.</source>
        <translation>Noch nichts; halte Einstreu für die geleerte Etage bereit.</translation>
    </message>
    <message>
        <source>There is no room for food, and the colony goes on shrinking.</source>
        <translation>Für Futter ist kein Platz, und der Bestand schrumpft weiter.</translation>
    </message>
    <message>
        <source>The tray fills to its rim and food no longer fits.</source>
        <translation>Die Etage füllt sich bis zum Rand, und Futter passt nicht mehr hinein.</translation>
    </message>
    <message>
        <source>The worms are spread thin and every step after it comes later; of a tray lifted early much is food, not castings.</source>
        <translation>Die Würmer sind dünn verteilt, und jeder Schritt danach kommt später; eine früh gehobene Etage ist zu einem großen Teil Futter und kein Humus.</translation>
    </message>
    <message>
        <source>After two to three weeks the worms live on bedding and reserves.</source>
        <translation>Nach zwei bis drei Wochen leben die Würmer von Einstreu und Reserven.</translation>
    </message>
    <message>
        <source>The bed heats and smells; below half of full air worms die.</source>
        <translation>Das Bett wird warm und riecht; unter der Hälfte der vollen Luft sterben Würmer.</translation>
    </message>
    <message>
        <source>With 80 % the worms assimilate less than they need, little that they can eat lies there, and the bed is warm enough. It is taken back at 60 %.</source>
        <translation>Mit 80 % nehmen die Würmer weniger auf, als sie brauchen, es liegt wenig da, das sie fressen können, und das Bett ist warm genug. Zurückgenommen bei 60 %.</translation>
    </message>
    <message>
        <source>They stop laying and shrink; some die.</source>
        <translation>Sie legen keine Kokons mehr und schrumpfen; manche sterben.</translation>
    </message>
    <message>
        <source>Food lies against the lid, and the trays above cannot rest on it.</source>
        <translation>Futter liegt am Deckel an, und die Etagen darüber können nicht aufliegen.</translation>
    </message>
    <message>
        <source>Nitrogen is lost as ammonia, which smells and burns worms.</source>
        <translation>Stickstoff geht als Ammoniak verloren, das riecht und Würmer verätzt.</translation>
    </message>
    <message>
        <source>The bed runs short of air, smells, and worms climb out.</source>
        <translation>Dem Bett fehlt Luft, es riecht, und Würmer klettern hinaus.</translation>
    </message>
    <message>
        <source>Worms eat less, below a third they stop and die.</source>
        <translation>Würmer fressen weniger; unter einem Drittel hören sie auf und sterben.</translation>
    </message>
    <message>
        <source>What comes then runs over on the floor.</source>
        <translation>Was dann kommt, läuft auf den Boden über.</translation>
    </message>
    <message>
        <source>Twice in a row less was drained than the lower 5 % of what the water balance expects; for 60 days or until a drain fits again.</source>
        <translation>Zweimal hintereinander wurde weniger abgelassen als die unteren 5 % dessen, was die Wasserbilanz erwartet; für 60 Tage oder bis ein Ablass wieder passt.</translation>
    </message>
    <message>
        <source>Water stands in the trays, or the bed is drier than it looks from above.</source>
        <translation>Wasser steht in den Etagen, oder das Bett ist trockener, als es von oben aussieht.</translation>
    </message>
    <message>
        <source>Twice in a row more was drained than the upper 5 % of what is expected; or more than {much} a week run through a watered stack (taken back at {much-less}).</source>
        <translation>Zweimal hintereinander wurde mehr abgelassen als die oberen 5 % des Erwarteten; oder mehr als {much} je Woche laufen durch einen gegossenen Stapel (zurückgenommen bei {much-less}).</translation>
    </message>
    <message>
        <source>Salts and nitrogen leave the castings, and the bed stays wet.</source>
        <translation>Salze und Stickstoff verlassen den Humus, und das Bett bleibt nass.</translation>
    </message>
    <message>
        <source>The bed is above {hot} now or within 14 days with at least even chances, its own heat and the season included. It is taken back at 30 %.</source>
        <translation>Das Bett ist jetzt oder innerhalb von 14 Tagen mit mindestens gleichen Chancen über {hot}, die eigene Wärme und die Jahreszeit eingerechnet. Zurückgenommen bei 30 %.</translation>
    </message>
    <message>
        <source>At {deadly} 2 worms in 100 die a day, at {deadlier} 15.</source>
        <translation>Bei {deadly} sterben am Tag 2 von 100 Würmern, bei {deadlier} 15.</translation>
    </message>
    <message>
        <source>The bed is below {cold} now or within 14 days with at least even chances. It is taken back at 30 %.</source>
        <translation>Das Bett ist jetzt oder innerhalb von 14 Tagen mit mindestens gleichen Chancen unter {cold}. Zurückgenommen bei 30 %.</translation>
    </message>
    <message>
        <source>They stop eating, food rots; near {frost} they die.</source>
        <translation>Sie hören auf zu fressen, Futter fault; nahe {frost} sterben sie.</translation>
    </message>
    <message>
        <source>After at least 2 days in the light at most 5 % of the worms that were in the tray are left. It is taken back above 8 %.</source>
        <translation>Nach mindestens 2 Tagen im Licht sind höchstens 5 % der Würmer übrig, die in der Etage waren. Zurückgenommen über 8 %.</translation>
    </message>
    <message>
        <source>The castings dry out and cocoons in them die.</source>
        <translation>Der Humus trocknet aus, und Kokons darin sterben.</translation>
    </message>
    <message>
        <source>The tray has been in the light for more than 10 days.</source>
        <translation>Die Etage steht seit mehr als 10 Tagen im Licht.</translation>
    </message>
    <message>
        <source>The castings dry hard, and the stack has one tray less meanwhile.</source>
        <translation>Der Humus trocknet hart, und dem Stapel fehlt solange eine Etage.</translation>
    </message>
    <message>
        <source>Nothing was written for more than 21 days, or for three usual gaps between feedings if that is longer; days away are left out.</source>
        <translation>Seit mehr als 21 Tagen wurde nichts eingetragen, oder seit drei üblichen Abständen zwischen Fütterungen, wenn das länger ist; Tage der Abwesenheit zählen nicht.</translation>
    </message>
    <message>
        <source>Every date and amount grows less certain by the week.</source>
        <translation>Jedes Datum und jede Menge wird von Woche zu Woche unsicherer.</translation>
    </message>
    <message>
        <source>Estimates rest on it as it stands.</source>
        <translation>Die Schätzungen beruhen darauf, wie es dasteht.</translation>
    </message>
    <message>
        <source>Stop feeding, spread the food thin and let air in: the bed heats itself</source>
        <translation>Nicht mehr füttern, das Futter dünn verteilen und Luft hineinlassen: das Bett erwärmt sich selbst</translation>
    </message>
    <message>
        <source>Move the stack to a cooler place before it heats up: shade, floor, cellar</source>
        <translation>Den Stapel an einen kühleren Ort stellen, bevor er warm wird: Schatten, Fußboden, Keller</translation>
    </message>
    <message>
        <source>Bring the stack in or wrap it, and feed no more until it is warmer. A heater only if it is rated for the place and stands away from water: local electrical code and a licensed electrician first</source>
        <translation>Den Stapel hereinholen oder einpacken und erst wieder füttern, wenn es wärmer ist. Eine Heizung nur, wenn sie für den Ort zugelassen ist und fern von Wasser steht: zuerst die örtlichen Vorschriften für Elektrik und eine zugelassene Fachkraft</translation>
    </message>
    <message>
        <source>%1: %2 drained, %3 to %4 expected; %5: %6, %7 to %8 expected</source>
        <translation>%1: %2 abgelassen, %3 bis %4 erwartet; %5: %6, %7 bis %8 erwartet</translation>
    </message>
    <message>
        <source>See whether the spigot or the holes of the trays are blocked, and whether the bed is dry</source>
        <translation>Nachsehen, ob der Ablaufhahn oder die Löcher der Etagen verstopft sind und ob das Bett trocken ist</translation>
    </message>
    <message>
        <source>Water less, or write down what is poured: more runs out than went in</source>
        <translation>Weniger gießen, oder eintragen, was gegossen wird: es läuft mehr heraus, als hineinkam</translation>
    </message>
    <message>
        <source>%1 of %2</source>
        <translation>%1 von %2</translation>
    </message>
    <message>
        <source>Drain the sump: it runs over</source>
        <translation>Auffangschale ablassen: sie läuft über</translation>
    </message>
    <message>
        <source>Flush the sump: it runs over</source>
        <translation>Auffangschale durchspülen: sie läuft über</translation>
    </message>
    <message>
        <source>Drain the sump</source>
        <translation>Auffangschale ablassen</translation>
    </message>
    <message>
        <source>Flush the sump</source>
        <translation>Auffangschale durchspülen</translation>
    </message>
    <message>
        <source>in the light for %1; about %2 of its worms are left in it; moisture %3 %</source>
        <translation>%1 im Licht; etwa %2 ihrer Würmer sind noch darin; Feuchte %3 %</translation>
    </message>
    <message>
        <source>Take the castings, or put the lid on: the tray dries out</source>
        <translation>Den Humus nehmen oder den Deckel auflegen: die Etage trocknet aus</translation>
    </message>
    <message>
        <source>Take the castings: the worms have gone down</source>
        <translation>Den Humus nehmen: die Würmer sind nach unten gewandert</translation>
    </message>
    <message>
        <source>Cover the lifted tray and let it work on: it was lifted early</source>
        <translation>Die gehobene Etage abdecken und weiterarbeiten lassen: sie wurde früh gehoben</translation>
    </message>
    <message>
        <source>Feed the tray beneath for now: the new one came early</source>
        <translation>Vorerst die Etage darunter füttern: die neue kam früh</translation>
    </message>
    <message>
        <source>right about %1</source>
        <translation>richtig etwa %1</translation>
    </message>
    <message>
        <source>; </source>
        <translation>; </translation>
    </message>
    <message>
        <source>Too early for another tray: the worms would be spread thin</source>
        <translation>Zu früh für eine weitere Etage: die Würmer wären dünn verteilt</translation>
    </message>
    <message>
        <source>the top tray holds %1 of castings of the %2 wanted, feed-to-cast %3 of at most 0.60, filled %4</source>
        <translation>die oberste Etage enthält %1 Humus von den gewünschten %2, Futter zu Humus %3 von höchstens 0,60, gefüllt %4</translation>
    </message>
    <message>
        <source>The tray is ready but its turn has not come: the colony would lose room</source>
        <translation>Die Etage ist reif, aber noch nicht an der Reihe: der Bestand verlöre Platz</translation>
    </message>
    <message>
        <source>feed-to-cast %1, ready %2; the top tray filled %3</source>
        <translation>Futter zu Humus %1, reif %2; die oberste Etage gefüllt %3</translation>
    </message>
    <message>
        <source>Too early to lift: much of it is not castings yet</source>
        <translation>Zu früh zum Heben: vieles davon ist noch kein Humus</translation>
    </message>
    <message>
        <source>feed-to-cast %1 of at most 0.10, ready %2</source>
        <translation>Futter zu Humus %1 von höchstens 0,10, reif %2</translation>
    </message>
    <message>
        <source>Too early to take: much of it is not castings yet</source>
        <translation>Zu früh zum Nehmen: vieles davon ist noch kein Humus</translation>
    </message>
    <message>
        <source>Too early to take: many worms would go with the castings</source>
        <translation>Zu früh zum Nehmen: viele Würmer gingen mit dem Humus</translation>
    </message>
    <message>
        <source>in the light for %1; about %2 of its worms are left in it</source>
        <translation>%1 im Licht; etwa %2 ihrer Würmer sind noch darin</translation>
    </message>
    <message>
        <source>last fed %1 ago, usually every %2; in the tray %3 not yet eaten, dry</source>
        <translation>letzte Fütterung %1 her, üblich alle %2; in der Etage noch nicht gefressen, trocken: %3</translation>
    </message>
    <message>
        <source>The top tray is full: feed less until the castings above are taken</source>
        <translation>Die oberste Etage ist voll: weniger füttern, bis der Humus oben entnommen ist</translation>
    </message>
    <message>
        <source>The top tray is full: add a tray, or feed less</source>
        <translation>Die oberste Etage ist voll: Etage hinzufügen oder weniger füttern</translation>
    </message>
    <message>
        <source>The top tray is full: feed less until the bottom tray is lifted</source>
        <translation>Die oberste Etage ist voll: weniger füttern, bis die unterste gehoben ist</translation>
    </message>
    <message>
        <source>Give no more food until the last is eaten; take out what smells, loosen the bed and mix in dry paper</source>
        <translation>Kein Futter mehr geben, bis das letzte gefressen ist; herausnehmen, was riecht, das Bett lockern und trockenes Papier untermischen</translation>
    </message>
    <message>
        <source>Do not feed this week</source>
        <translation>In dieser Woche nicht füttern</translation>
    </message>
    <message>
        <source>Feed at most %1 this week</source>
        <translation>In dieser Woche höchstens %1 füttern</translation>
    </message>
    <message>
        <source>air in the bed %1 of full; below 0.7 within 14 days at %2 a week: %3; not yet eaten, dry: %4</source>
        <translation>Luft im Bett %1 der vollen; unter 0,7 innerhalb von 14 Tagen bei %2 je Woche: %3; noch nicht gefressen, trocken: %4</translation>
    </message>
    <message>
        <source>Feed %1: the worms live on their reserves</source>
        <translation>%1 füttern: die Würmer leben von ihren Reserven</translation>
    </message>
    <message>
        <source>they assimilate %1 of what they need (%2 to %3); %4 a week would do, up to %5 can be borne</source>
        <translation>sie nehmen %1 dessen auf, was sie brauchen (%2 bis %3); %4 je Woche würden reichen, bis zu %5 sind verträglich</translation>
    </message>
    <message>
        <source>Add %1 of shredded paper to each week&apos;s food</source>
        <translation>Zum Futter jeder Woche %1 zerrissenes Papier geben</translation>
    </message>
    <message>
        <source>C:N of what was given in the last 8 weeks %1, of the bed %2; 25 to 35 is wanted</source>
        <translation>C:N dessen, was in den letzten 8 Wochen gegeben wurde: %1, des Betts: %2; gewünscht sind 25 bis 35</translation>
    </message>
    <message>
        <source>feed-to-cast %1, ready %2</source>
        <translation>Futter zu Humus %1, reif %2</translation>
    </message>
    <message>
        <source>its turn for %1</source>
        <translation>schon %1 an der Reihe</translation>
    </message>
    <message>
        <source>left as it is, the colony falls from %1 to %2 in 60 days</source>
        <translation>bleibt alles, wie es ist, fällt der Bestand in 60 Tagen von %1 auf %2</translation>
    </message>
    <message>
        <source>Look for bits in the bottom tray</source>
        <translation>In der untersten Etage nach Resten sehen</translation>
    </message>
    <message>
        <source>Add a tray on top</source>
        <translation>Oben eine Etage hinzufügen</translation>
    </message>
    <message>
        <source>the top tray holds %1 of castings, feed-to-cast %2</source>
        <translation>die oberste Etage enthält %1 Humus, Futter zu Humus %2</translation>
    </message>
    <message>
        <source>The bottom tray is ready, no hurry</source>
        <translation>Die unterste Etage ist reif, keine Eile</translation>
    </message>
    <message>
        <source>Take the castings of the only tray, and its worms back into new bedding</source>
        <translation>Den Humus der einzigen Etage nehmen, ihre Würmer zurück in neue Einstreu</translation>
    </message>
    <message>
        <source>Lift the bottom tray to the top</source>
        <translation>Die unterste Etage nach oben heben</translation>
    </message>
    <message>
        <source>The bottom tray&apos;s turn comes soon</source>
        <translation>Die unterste Etage ist bald an der Reihe</translation>
    </message>
    <message>
        <source>depth of castings</source>
        <translation>Tiefe des Humus</translation>
    </message>
    <message>
        <source>still recognisable</source>
        <translation>noch erkennbar</translation>
    </message>
    <message>
        <source>left of the last feeding</source>
        <translation>übrig von der letzten Fütterung</translation>
    </message>
    <message>
        <source>worms weighed</source>
        <translation>gewogene Würmer</translation>
    </message>
    <message>
        <source>worms counted</source>
        <translation>gezählte Würmer</translation>
    </message>
    <message>
        <source>worms seen</source>
        <translation>gesehene Würmer</translation>
    </message>
    <message>
        <source>drained</source>
        <translation>abgelassen</translation>
    </message>
    <message>
        <source>drained in part</source>
        <translation>zum Teil abgelassen</translation>
    </message>
    <message>
        <source>conductivity of the leachate</source>
        <translation>Leitfähigkeit des Sickerwassers</translation>
    </message>
    <message>
        <source>weight of the tray</source>
        <translation>Gewicht der Etage</translation>
    </message>
    <message>
        <source>moisture</source>
        <translation>Feuchte</translation>
    </message>
    <message>
        <source>squeezed in the hand</source>
        <translation>in der Hand gedrückt</translation>
    </message>
    <message>
        <source>temperature of the bed</source>
        <translation>Temperatur des Betts</translation>
    </message>
    <message>
        <source>castings taken</source>
        <translation>entnommener Humus</translation>
    </message>
    <message>
        <source>worms taken out</source>
        <translation>entnommene Würmer</translation>
    </message>
    <message>
        <source>few</source>
        <translation>wenige</translation>
    </message>
    <message>
        <source>some</source>
        <translation>einige</translation>
    </message>
    <message>
        <source>many</source>
        <translation>viele</translation>
    </message>
    <message>
        <source>%1 %</source>
        <translation>%1 %</translation>
    </message>
    <message>
        <source>%1 mS/cm</source>
        <translation>%1 mS/cm</translation>
    </message>
    <message>
        <source>expected at most %1</source>
        <translation>erwartet höchstens %1</translation>
    </message>
    <message>
        <source>expected %1</source>
        <translation>erwartet %1</translation>
    </message>
    <message>
        <source>expected %1 to %2</source>
        <translation>erwartet %1 bis %2</translation>
    </message>
    <message>
        <source>%1 in slot %2</source>
        <translation>%1 an Platz %2</translation>
    </message>
    <message>
        <source>Check the entry of %1, or look again</source>
        <translation>Den Eintrag vom %1 prüfen oder noch einmal nachsehen</translation>
    </message>
    <message>
        <source>%1: %2; %3</source>
        <translation>%1: %2; %3</translation>
    </message>
    <message>
        <source>between %1 and %2</source>
        <translation>zwischen %1 und %2</translation>
    </message>
    <message>
        <source>, </source>
        <translation>, </translation>
    </message>
    <message numerus="yes">
        <source>About %n feeding(s) in %1 seem not to have been written down (%2)</source>
        <translation>
            <numerusform>Etwa %n Fütterung in %1 scheint nicht eingetragen worden zu sein (%2)</numerusform>
            <numerusform>Etwa %n Fütterungen in %1 scheinen nicht eingetragen worden zu sein (%2)</numerusform>
        </translation>
    </message>
    <message>
        <source>usual days without an entry: %1; usually %2 of %3</source>
        <translation>übliche Tage ohne Eintrag: %1; üblich %2 von %3</translation>
    </message>
    <message>
        <source>Write down what was done since, and look into the top tray</source>
        <translation>Eintragen, was seitdem getan wurde, und in die oberste Etage schauen</translation>
    </message>
    <message>
        <source>nothing written for %1; colony anywhere from %2 to %3</source>
        <translation>%1 lang nichts eingetragen; Bestand irgendwo von %2 bis %3</translation>
    </message>
    <message>
        <source>water %1 of what the tray holds (%2 to %3), moisture %4 %</source>
        <translation>Wasser %1 dessen, was die Etage hält (%2 bis %3), Feuchte %4 %</translation>
    </message>
    <message>
        <source>Pour %1 of water over the bed</source>
        <translation>%1 Wasser über das Bett gießen</translation>
    </message>
    <message>
        <source>Mix dry shredded paper into the bed, and do not water</source>
        <translation>Trockenes zerrissenes Papier unter das Bett mischen und nicht gießen</translation>
    </message>
    <message>
        <source>over 100 : 1</source>
        <translation>über 100 : 1</translation>
    </message>
    <message>
        <source>%1 : 1</source>
        <translation>%1 : 1</translation>
    </message>
    <message>
        <source>%1 %2</source>
        <translation>%1 %2</translation>
    </message>
    <message>
        <source>not before %1</source>
        <translation>nicht vor %1</translation>
    </message>
    <message>
        <source>not within a year</source>
        <translation>nicht innerhalb eines Jahres</translation>
    </message>
    <message>
        <source>%1 (%2 to %3)</source>
        <translation>%1 (%2 bis %3)</translation>
    </message>
    <message numerus="yes">
        <source>%n day(s)</source>
        <translation>
            <numerusform>%n Tag</numerusform>
            <numerusform>%n Tage</numerusform>
        </translation>
    </message>
    <message>
        <source>The bottom tray is ready at 80 %, but the top tray is not filled yet, or a tray is spare. Once the top tray has stood for 60 days and holds {ready} of castings, it may be lifted all the same.</source>
        <translation>Zu 80 % sicher ist die unterste Etage reif, aber die oberste ist noch nicht gefüllt, oder eine Etage ist frei. Steht die oberste seit 60 Tagen und enthält {ready} Humus, darf trotzdem gehoben werden.</translation>
    </message>
    <message>
        <source>Feed the usual %1, at most %2 this week</source>
        <translation>Wie üblich %1 füttern, höchstens %2 in dieser Woche</translation>
    </message>
    <message>
        <source>The bottom tray is ready: lift it when you like</source>
        <translation>Die unterste Etage ist reif: hebe sie, wann du willst</translation>
    </message>
    <message>
        <source>Measure how deep the castings lie in the top tray</source>
        <translation>Messen, wie tief der Humus in der obersten Etage liegt</translation>
    </message>
    <message>
        <source>Measure how deep the castings lie in the bottom tray</source>
        <translation>Messen, wie tief der Humus in der untersten Etage liegt</translation>
    </message>
    <message>
        <source>Measure how deep the castings lie in this tray</source>
        <translation>Messen, wie tief der Humus in dieser Etage liegt</translation>
    </message>
    <message>
        <source>Look for bits in this tray</source>
        <translation>In dieser Etage nach Resten sehen</translation>
    </message>
    <message>
        <source>See how much of the last feeding is left</source>
        <translation>Nachsehen, wie viel von der letzten Fütterung übrig ist</translation>
    </message>
    <message>
        <source>See whether there are few, some or many worms</source>
        <translation>Nachsehen, ob wenige, einige oder viele Würmer da sind</translation>
    </message>
    <message>
        <source>Weigh the worms of a part of the bed</source>
        <translation>Die Würmer eines Teils des Betts wiegen</translation>
    </message>
    <message>
        <source>Count the worms in a measured part of the bed</source>
        <translation>Die Würmer in einem gemessenen Teil des Betts zählen</translation>
    </message>
    <message>
        <source>Weigh the bottom tray</source>
        <translation>Die unterste Etage wiegen</translation>
    </message>
    <message>
        <source>Weigh this tray</source>
        <translation>Diese Etage wiegen</translation>
    </message>
    <message>
        <source>Measure the moisture of the bed</source>
        <translation>Die Feuchte des Betts messen</translation>
    </message>
    <message>
        <source>Squeeze a handful of the bed</source>
        <translation>Eine Handvoll des Betts drücken</translation>
    </message>
    <message>
        <source>Read the temperature of the bed</source>
        <translation>Die Temperatur des Betts ablesen</translation>
    </message>
    <message>
        <source>Drain the sump into a measure</source>
        <translation>Die Auffangschale in ein Messgefäß ablassen</translation>
    </message>
    <message>
        <source>Put worms in once the bedding has stood for a day, or write down how many are in it</source>
        <translation>Würmer einsetzen, sobald die Einstreu einen Tag gestanden hat, oder aufschreiben, wie viele darin sind</translation>
    </message>
    <message>
        <source>none are left by what is known</source>
        <translation>nach allem, was bekannt ist, sind keine mehr da</translation>
    </message>
    <message>
        <source>none are written down; %1 to %2 are usual for a first tray</source>
        <translation>es sind keine aufgeschrieben; üblich sind %1 bis %2 für eine erste Etage</translation>
    </message>
    <message>
        <source>The spigot is shut and the sump is full within 7 days by the middle estimate. It is taken back when that is more than 10 days off. Where the day is known to no better than a week, and one case in ten has it full within 14 days, a look comes first; it holds for 5 days.</source>
        <translation>Der Ablaufhahn ist zu, und die Auffangschale ist nach der mittleren Schätzung innerhalb von 7 Tagen voll. Zurückgenommen, wenn das mehr als 10 Tage hin ist. Ist der Tag nicht auf eine Woche genau bekannt und sie in einem von zehn Fällen innerhalb von 14 Tagen voll, kommt erst ein Blick hinein; er gilt 5 Tage.</translation>
    </message>
    <message>
        <source>See how full the sump is</source>
        <translation>Nachsehen, wie voll die Auffangschale ist</translation>
    </message>
    <message>
        <source>standing in the sump</source>
        <translation>Stand in der Auffangschale</translation>
    </message>
    <message>
        <source>Squeeze a handful of the bed: it may be dry</source>
        <translation>Eine Handvoll des Betts drücken: es kann trocken sein</translation>
    </message>
    <message>
        <source>into the tray beneath the new one, which came early: %1</source>
        <translation>in die Etage unter der neuen, die früh kam: %1</translation>
    </message>
    <message>
        <source>The top tray is filled at 80 % ({filled} of castings, feed-to-cast at most 0.60) and a tray is spare. It is taken back after 7 days at 60 % or less, since fresh food is eaten by then, or by a check.</source>
        <translation>Zu 80 % sicher ist die oberste Etage gefüllt ({filled} Humus, Futter zu Humus höchstens 0,60), und eine Etage ist frei. Zurückgenommen nach 7 Tagen mit höchstens 60 %, denn frisches Futter ist bis dahin gefressen, oder durch eine Prüfung.</translation>
    </message>
    <message>
        <source>The usual week&apos;s food does not fit under the rim less {rim}, now or within 7 days. It is taken back when a quarter more fits.</source>
        <translation>Das übliche Futter einer Woche passt nicht unter den Rand abzüglich {rim}, jetzt oder innerhalb von 7 Tagen. Zurückgenommen, wenn ein Viertel mehr hineinpasst.</translation>
    </message>
    <message>
        <source>The top tray fills up: feed less until the castings above are taken</source>
        <translation>Die oberste Etage wird voll: weniger füttern, bis der Humus darüber genommen ist</translation>
    </message>
    <message>
        <source>The top tray fills up: add a tray, or feed less</source>
        <translation>Die oberste Etage wird voll: eine Etage hinzufügen oder weniger füttern</translation>
    </message>
    <message>
        <source>The top tray fills up: feed less until the bottom tray is lifted</source>
        <translation>Die oberste Etage wird voll: weniger füttern, bis die unterste gehoben ist</translation>
    </message>
    <message>
        <source>bed %1 now; below %2: %3</source>
        <translation>Bett jetzt %1; unter %2: %3</translation>
    </message>
    <message>
        <source>A tray is in the light: take its castings first</source>
        <translation>Eine Etage steht im Licht: zuerst deren Humus nehmen</translation>
    </message>
    <message>
        <source>in the light for %1</source>
        <translation>%1 im Licht</translation>
    </message>
    <message>
        <source>fed today, usually every %1; in the tray %2 not yet eaten, dry</source>
        <translation>heute gefüttert, üblich alle %1; in der Etage %2 noch nicht gefressen, trocken</translation>
    </message>
    <message>
        <source>The only tray fills up: feed less until its castings are taken</source>
        <translation>Die einzige Etage füllt sich: weniger füttern, bis ihr Humus genommen ist</translation>
    </message>
    <message>
        <source>The only tray is full: feed less until its castings are taken</source>
        <translation>Die einzige Etage ist voll: weniger füttern, bis ihr Humus genommen ist</translation>
    </message>
    <message>
        <source>The only tray can be emptied soon</source>
        <translation>Die einzige Etage kann bald geleert werden</translation>
    </message>
    <message>
        <source>The only tray is ready, no hurry</source>
        <translation>Die einzige Etage ist reif, keine Eile</translation>
    </message>
    <message>
        <source>nothing measured of trays or worms for %1; of all looks this tells most of when the bottom tray is ready, for the work</source>
        <translation>%1 lang nichts an Etagen oder Würmern gemessen; von allem Nachsehen sagt dies, für die Arbeit, am meisten darüber, wann die unterste Etage reif ist</translation>
    </message>
    <message>
        <source>bed %1 now, %2 by %3; below %4: %5</source>
        <translation>Bett jetzt %1, %2 (%3); unter %4: %5</translation>
    </message>
    <message>
        <source>Water less: much runs through</source>
        <translation>Weniger gießen: viel läuft durch</translation>
    </message>
    <message>
        <source>%1 a week runs into the sump; %2 a week are poured</source>
        <translation>%1 je Woche laufen in die Auffangschale; %2 je Woche werden gegossen</translation>
    </message>
    <message>
        <source>Feed the usual %1, and no more this week</source>
        <translation>Die üblichen %1 füttern, und diese Woche nicht mehr</translation>
    </message>
    <message>
        <source>the top tray is filled to %1 under its rim</source>
        <translation>die oberste Etage ist bis %1 unter den Rand gefüllt</translation>
    </message>
    <message>
        <source>Cover the tray and put the lid on: it was lifted early and dries out</source>
        <translation>Die Etage abdecken und den Deckel auflegen: sie wurde zu früh gehoben und trocknet aus</translation>
    </message>
    <message>
        <source>Cool the stack now, and give no food until it is cooler: a cellar, or shade, the lid ajar and frozen bottles on the cover</source>
        <translation>Den Stapel jetzt kühlen und nicht füttern, bis er kühler ist: Keller, oder Schatten, Deckel einen Spalt offen und gefrorene Flaschen auf die Abdeckung</translation>
    </message>
    <message>
        <source>Cool the stack: a cellar, or shade, the lid ajar and frozen bottles on the cover</source>
        <translation>Den Stapel kühlen: Keller, oder Schatten, Deckel einen Spalt offen und gefrorene Flaschen auf die Abdeckung</translation>
    </message>
    <message>
        <source>bed %1 now; above %2: %3</source>
        <translation>Bett jetzt %1; über %2: %3</translation>
    </message>
    <message>
        <source>bed %1 now, %2 by %3; above %4: %5</source>
        <translation>Bett jetzt %1, %2 (%3); über %4: %5</translation>
    </message>
    <message>
        <source>Wait with food, and look again in a few days</source>
        <translation>Mit dem Füttern warten und in einigen Tagen wieder nachsehen</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>For three days the water is above 1.1 of what the tray holds at 80 %, or it ran when it was squeezed, or the moisture read says so, within 5 days. It is taken back at 60 %.</source>
        <translation>Seit drei Tagen liegt das Wasser mit 80 % über 1,1 dessen, was die Etage hält, oder es lief beim Drücken, oder die gelesene Feuchte sagt es, binnen 5 Tagen. Zurückgenommen bei 60 %.</translation>
    </message>
    <message>
        <source>The tray is lifted too early or too late; food is given to nobody.</source>
        <translation>Die Etage wird zu früh oder zu spät gehoben; Futter bekommt niemand.</translation>
    </message>
    <message>
        <source>hardly any are left by what is known: colony %1</source>
        <translation>nach allem, was bekannt ist, sind kaum welche übrig: Bestand %1</translation>
    </message>
    <message>
        <source>Put worms in, or write down how many are in it; give no food until then</source>
        <translation>Würmer einsetzen, oder aufschreiben, wie viele darin sind; bis dahin nicht füttern</translation>
    </message>
    <message>
        <source>See whether there are few, some or many worms, and give no food until then</source>
        <translation>Nachsehen, ob wenige, einige oder viele Würmer da sind, und bis dahin nicht füttern</translation>
    </message>
    <message>
        <source>more does not fit under the rim</source>
        <translation>mehr passt nicht unter den Rand</translation>
    </message>
    <message>
        <source>%1 kg a day and m² are the most</source>
        <translation>%1 kg am Tag und m² sind das Höchste</translation>
    </message>
    <message>
        <source>with more the chance of a bed above %1 is above 5 %</source>
        <translation>mit mehr liegt die Wahrscheinlichkeit eines Betts über %1 über 5 %</translation>
    </message>
    <message>
        <source>with more the chance of too little air is above 5 %</source>
        <translation>mit mehr liegt die Wahrscheinlichkeit von zu wenig Luft über 5 %</translation>
    </message>
    <message>
        <source>not fed yet; %1</source>
        <translation>noch nicht gefüttert; %1</translation>
    </message>
    <message>
        <source>not fed yet; %1 a week keep the worms that are in it</source>
        <translation>noch nicht gefüttert; %1 je Woche erhalten die Würmer, die darin sind</translation>
    </message>
    <message>
        <source>Feed %1, at most %2 this week</source>
        <translation>%1 füttern, höchstens %2 diese Woche</translation>
    </message>
    <message>
        <source>The only tray is full: no food fits until its castings are taken</source>
        <translation>Die einzige Etage ist voll: kein Futter passt, bis ihr Humus genommen ist</translation>
    </message>
    <message>
        <source>The top tray is full: no food fits until the castings above are taken</source>
        <translation>Die oberste Etage ist voll: kein Futter passt, bis der Humus darüber genommen ist</translation>
    </message>
    <message>
        <source>The top tray is full: add a tray, then feed</source>
        <translation>Die oberste Etage ist voll: eine Etage aufsetzen, dann füttern</translation>
    </message>
    <message>
        <source>The top tray is full: no food fits until the bottom tray is lifted</source>
        <translation>Die oberste Etage ist voll: kein Futter passt, bis die unterste Etage gehoben ist</translation>
    </message>
    <message>
        <source>hardly any of it is eaten</source>
        <translation>kaum etwas davon wird gefressen</translation>
    </message>
    <message>
        <source>enough for %1 as the worms eat now</source>
        <translation>genug für %1, so wie die Würmer jetzt fressen</translation>
    </message>
    <message>
        <source>food that lies in the tray, dry: %1; %2</source>
        <translation>Futter in der Etage, trocken: %1; %2</translation>
    </message>
    <message>
        <source>with any more this week the chance of a bed above %1 is above 5 %; bed %2 now; not yet eaten, dry: %3</source>
        <translation>mit noch mehr diese Woche liegt die Wahrscheinlichkeit eines Betts über %1 über 5 %; Bett jetzt %2; noch nicht gefressen, trocken: %3</translation>
    </message>
    <message>
        <source>with any more this week the chance of too little air in the bed is above 5 %; air %1 of full now; not yet eaten, dry: %2</source>
        <translation>mit noch mehr diese Woche liegt die Wahrscheinlichkeit von zu wenig Luft im Bett über 5 %; Luft jetzt %1 der vollen; noch nicht gefressen, trocken: %2</translation>
    </message>
    <message>
        <source>nothing measured of trays or worms for %1; it was told before, and no look tells clearly more of when the bottom tray is ready, for the work</source>
        <translation>an Etagen oder Würmern wurde %1 lang nichts gemessen; es wurde schon genannt, und kein anderes Nachsehen sagt, für die Arbeit, deutlich mehr darüber, wann die unterste Etage reif ist</translation>
    </message>
    <message>
        <source>Squeeze a handful of the bed, and water it if it crumbles: it is probably dry</source>
        <translation>Eine Handvoll des Betts drücken, und gießen, wenn sie krümelt: es ist wahrscheinlich trocken</translation>
    </message>
    <message>
        <source>The water is below 0.65 of what the tray holds, now or within 7 days, at 50 %, or it crumbled when it was squeezed or the moisture read says so, within 5 days. It is taken back at 30 %. From 20 % on a handful is squeezed first, once in 14 days; above 50 % too, where the range is wider than 0.4.</source>
        <translation>Das Wasser liegt mit 50 % unter 0,65 dessen, was die Etage hält, jetzt oder binnen 7 Tagen, oder es krümelte beim Drücken oder die gelesene Feuchte sagt es, binnen 5 Tagen. Zurückgenommen bei 30 %. Ab 20 % wird erst eine Handvoll gedrückt, einmal in 14 Tagen; auch über 50 %, wo die Spanne weiter als 0,4 ist.</translation>
    </message>
    <message>
        <source>it was not in the light; about %1 of worms are in it, %2 of the colony</source>
        <translation>sie war nicht im Licht; etwa %1 Würmer sind darin, %2 des Bestands</translation>
    </message>
    <message>
        <source>Leave the stack in the cool until the bed is surely below %1</source>
        <translation>Den Stapel im Kühlen lassen, bis das Bett sicher unter %1 liegt</translation>
    </message>
    <message>
        <source>The top tray is filled ({filled} of castings, feed-to-cast at most 0.60), no tray is spare, and the bottom tray is ready (feed-to-cast at most 0.10, at least {ready}), both at 80 %. The bottom one is taken back at 60 %; the top one after 7 days of it, since fresh food is eaten by then, or by a check. Where a tray between both is ready and the bottom one is not, its castings are taken instead.</source>
        <translation>Die oberste Etage ist gefüllt ({filled} Humus, Futter zu Humus höchstens 0,60), keine Etage ist frei, und die unterste ist reif (Futter zu Humus höchstens 0,10, mindestens {ready}), beides mit 80 %. Die unterste wird bei 60 % zurückgenommen; die oberste nach 7 Tagen damit, da frisches Futter bis dahin gefressen ist, oder durch Nachsehen. Wo eine Etage dazwischen reif ist und die unterste nicht, wird deren Humus genommen.</translation>
    </message>
    <message>
        <source>The chance that the bottom tray is ready and its turn has come within 14 days is at least 50 %, and no tray is spare. Where its turn has come already, readiness is what is missing.</source>
        <translation>Die Wahrscheinlichkeit, dass die unterste Etage binnen 14 Tagen reif ist und an der Reihe, ist mindestens 50 %, und keine Etage ist frei. Wo sie schon an der Reihe ist, fehlt nur die Reife.</translation>
    </message>
    <message>
        <source>by the estimate %1 to %2 of %3 stand in it; it is likely to be full already; if so, empty it, else the level tells the day</source>
        <translation>nach der Schätzung stehen %1 bis %2 von %3 darin; sie ist wahrscheinlich schon voll; dann leeren, sonst sagt der Stand den Tag</translation>
    </message>
    <message>
        <source>by the estimate %1 to %2 of %3 stand in it; with one chance in ten it is full by %4; if that is near, empty it, else the level tells the day</source>
        <translation>nach der Schätzung stehen %1 bis %2 von %3 darin; in einem von zehn Fällen ist sie bis %4 voll; ist sie fast voll, leeren, sonst sagt der Stand den Tag</translation>
    </message>
    <message>
        <source>Too early to lift: that it is ready is not sure enough yet</source>
        <translation>Zu früh zum Heben: dass sie reif ist, ist noch nicht sicher genug</translation>
    </message>
    <message>
        <source>feed-to-cast %1, ready %2 of the 80 % that are asked for</source>
        <translation>Futter zu Humus %1, reif mit %2, gefragt sind 80 %</translation>
    </message>
    <message>
        <source>half of the worms&apos; weight a day is the most, and they are about %1</source>
        <translation>das halbe Gewicht der Würmer am Tag ist das Höchste, und sie wiegen etwa %1</translation>
    </message>
    <message>
        <source>last fed %1 ago; in the tray %2 not yet eaten, dry</source>
        <translation>letzte Fütterung %1 her; in der Etage %2 noch nicht gefressen, trocken</translation>
    </message>
    <message>
        <source>Take the castings of the tray in slot %1 instead: the bottom one is not ready yet</source>
        <translation>Stattdessen den Humus der Etage an Platz %1 nehmen: die unterste ist noch nicht reif</translation>
    </message>
    <message>
        <source>%1; the bottom tray %2; the turn has come for %3; about %4 of worms are in it: put them into the top tray and write them down as put in</source>
        <translation>%1; die unterste Etage %2; an der Reihe: %3 lang; etwa %4 Würmer sind darin: in die oberste Etage setzen und als eingesetzt aufschreiben</translation>
    </message>
    <message>
        <source>The only tray&apos;s turn has come, it is not ready yet</source>
        <translation>Die einzige Etage ist an der Reihe, aber noch nicht reif</translation>
    </message>
    <message>
        <source>The bottom tray&apos;s turn has come, it is not ready yet</source>
        <translation>Die unterste Etage ist an der Reihe, aber noch nicht reif</translation>
    </message>
    <message>
        <source>The only tray&apos;s turn has come: look for bits in it</source>
        <translation>Die einzige Etage ist an der Reihe: nach Resten darin sehen</translation>
    </message>
    <message>
        <source>The bottom tray&apos;s turn has come: look for bits in it</source>
        <translation>Die unterste Etage ist an der Reihe: nach Resten darin sehen</translation>
    </message>
    <message>
        <source>filled: %1; castings by the estimate %2, %3 wanted; with more than that, the turn has come; with less, go on as before and look again in a week</source>
        <translation>gefüllt: %1; Humus nach der Schätzung %2, gewünscht %3; mit mehr ist sie an der Reihe; mit weniger wie bisher weiter und in einer Woche wieder nachsehen</translation>
    </message>
    <message>
        <source>%1 (%2 at the earliest, perhaps not within a year)</source>
        <translation>%1 (frühestens %2, vielleicht nicht binnen eines Jahres)</translation>
    </message>
    <message>
        <source>%1 at the earliest, perhaps not within a year</source>
        <translation>frühestens %1, vielleicht nicht binnen eines Jahres</translation>
    </message>
    <message>
        <source>they assimilate %1 of what they need (%2 to %3); more than %4 a week would be wanted, and only %5 can be borne</source>
        <translation>sie nehmen %1 dessen auf, was sie brauchen (%2 bis %3); mehr als %4 je Woche wären nötig, und nur %5 werden vertragen</translation>
    </message>
    <message>
        <source>A look is likely to settle whether the bottom tray is ready or the top tray filled, or it narrows the ready date by 14 days after a month without any; no look in the last 7 days. Or hardly any worms are left: less than {few}, after cold or heat less than a tenth of what there was within 60 days, or half of what there was within 120 (taken back at 0.6).</source>
        <translation>Nachsehen klärt wahrscheinlich, ob die unterste Etage reif oder die oberste gefüllt ist, oder es engt den Termin nach einem Monat ohne um 14 Tage ein; in den letzten 7 Tagen wurde nicht nachgesehen. Oder es sind kaum Würmer übrig: weniger als {few}, nach Kälte oder Hitze weniger als ein Zehntel dessen, was binnen 60 Tagen da war, oder die Hälfte dessen, was binnen 120 Tagen da war (zurückgenommen bei 0,6).</translation>
    </message>
    <message>
        <source>colony %1; on %2 it was %3</source>
        <translation>Bestand %1; am %2 waren es %3</translation>
    </message>
    <message>
        <source>See whether there are few, some or many worms: the colony dwindles</source>
        <translation>Nachsehen, ob wenige, einige oder viele Würmer da sind: der Bestand schwindet</translation>
    </message>
    <message>
        <source>The top tray fills up: feed less until castings are taken</source>
        <translation>Die oberste Etage füllt sich: weniger füttern, bis Humus genommen ist</translation>
    </message>
    <message>
        <source>The top tray is full: no food fits until castings are taken</source>
        <translation>Die oberste Etage ist voll: kein Futter passt, bis Humus genommen ist</translation>
    </message>
    <message>
        <source>The top tray is full: feed less until castings are taken</source>
        <translation>Die oberste Etage ist voll: weniger füttern, bis Humus genommen ist</translation>
    </message>
    <message>
        <source>it crumbled when it was squeezed, and moisture was read as %1 %; %2</source>
        <translation>sie krümelte beim Drücken, und die Feuchte wurde mit %1&#xa0;% gelesen; %2</translation>
    </message>
    <message>
        <source>it ran when it was squeezed, and moisture was read as %1 %; %2</source>
        <translation>sie troff beim Drücken, und die Feuchte wurde mit %1&#xa0;% gelesen; %2</translation>
    </message>
    <message>
        <source>Squeeze another handful of the bed: two readings deny each other</source>
        <translation>Noch eine Handvoll des Betts drücken: zwei Messungen widersprechen sich</translation>
    </message>
    <message>
        <source>at %1 worms hardly leave the light: bring it in first, or wait until it is warmer</source>
        <translation>bei %1 weichen Würmer dem Licht kaum aus: erst ins Warme bringen oder warten, bis es wärmer ist</translation>
    </message>
    <message>
        <source>by it the tray in slot %1 is filled to %2, and it is %3 high</source>
        <translation>nach ihm ist die Etage an Platz %1 bis %2 gefüllt, und sie ist %3 hoch</translation>
    </message>
    <message>
        <source>%1 of worms were put in; these trays carry %2 at most</source>
        <translation>%1 Würmer wurden eingesetzt; diese Etagen tragen höchstens %2</translation>
    </message>
    <message>
        <source>Check the entry of %1: it may be a slip of the pen</source>
        <translation>Den Eintrag vom %1 prüfen: er kann ein Schreibfehler sein</translation>
    </message>
    <message>
        <source>Correct place or usual temperature in the set-up, or check the entry of %1</source>
        <translation>Ort oder übliche Temperatur im Aufbau berichtigen, oder den Eintrag vom %1 prüfen</translation>
    </message>
    <message>
        <source>%1; read again on %2: %3</source>
        <translation>%1; wieder abgelesen am %2: %3</translation>
    </message>
    <message>
        <source>Ready and its turn for 30 days; or the top tray within {rim} of its rim; or the colony falls to 85 % or less in 60 days without a harvest, and not for want of food or in cold or heat.</source>
        <translation>Seit 30 Tagen reif und an der Reihe; oder die oberste Etage ist bis auf {rim} am Rand; oder der Bestand fällt in 60 Tagen ohne Ernte auf 85&#xa0;% oder weniger, und nicht aus Mangel an Futter oder in Kälte oder Hitze.</translation>
    </message>
    <message>
        <source>A value of the last 60 days lies outside what the record leads to expect; readings of the bed do not fit the set-up; more was put in than a tray holds or its trays carry; usual feedings seem to be missing; or no worms are in a stack that has bedding.</source>
        <translation>Ein Wert der letzten 60 Tage liegt außerhalb dessen, was die Aufzeichnung erwarten lässt; Messungen des Betts passen nicht zum Aufbau; es wurde mehr hineingegeben, als eine Etage fasst oder die Etagen tragen; übliche Fütterungen scheinen zu fehlen; oder in einem Stapel mit Einstreu sind keine Würmer.</translation>
    </message>
    <message>
        <source>nobody is there: %1</source>
        <translation>niemand ist da: %1</translation>
    </message>
    <message>
        <source>A tray was added while the chance that the one beneath is filled was below 50 % and a week&apos;s food still fitted into it, or lifted while the chance that it is ready was below 30 %.</source>
        <translation>Eine Etage kam hinzu, als die Chance, dass die darunter gefüllt ist, unter 50 % lag und das Futter einer Woche noch hineinpasste, oder wurde gehoben, als die Chance, dass sie reif ist, unter 30 % lag.</translation>
    </message>
    <message>
        <source>colony %1, two weeks ago %2</source>
        <translation>Bestand %1, vor zwei Wochen %2</translation>
    </message>
    <message>
        <source>by its own heat %1 warmer</source>
        <translation>durch eigene Wärme %1 wärmer</translation>
    </message>
    <message>
        <source>they assimilate %1 of what they need</source>
        <translation>sie nehmen %1 dessen auf, was sie brauchen</translation>
    </message>
    <message>
        <source>on %1 it was %2</source>
        <translation>am %1 waren es %2</translation>
    </message>
    <message>
        <source>on %1 the colony was %2, now %3</source>
        <translation>am %1 wog der Bestand %2, jetzt %3</translation>
    </message>
    <message>
        <source>by the estimate %1 to %2 of %3 stand in it; it may be full already (chance %4); if so, empty it, else the level tells the day</source>
        <translation>nach der Schätzung stehen %1 bis %2 von %3 darin; sie kann schon voll sein (Wahrscheinlichkeit %4); dann leeren, sonst sagt der Stand den Tag</translation>
    </message>
    <message>
        <source>what comes now runs on the floor</source>
        <translation>was jetzt kommt, läuft auf den Boden</translation>
    </message>
    <message>
        <source>full %1</source>
        <translation>voll %1</translation>
    </message>
    <message>
        <source>C:N of the bed %1, 25 to 35 is wanted: paper and bedding alone hardly feed them</source>
        <translation>C:N des Betts %1, gewünscht sind 25 bis 35: Papier und Einstreu allein ernähren sie kaum</translation>
    </message>
    <message>
        <source>of the usual feeding of %1 only %2: %3 were given within 7 days, and %4 kg a day and m² are the most</source>
        <translation>von der üblichen Fütterung von %1 nur %2: %3 wurden in 7 Tagen gegeben, und %4 kg am Tag und m² sind das Höchste</translation>
    </message>
    <message>
        <source>of the usual feeding of %1 only %2 are borne this week: %3</source>
        <translation>von der üblichen Fütterung von %1 werden diese Woche nur %2 vertragen: %3</translation>
    </message>
    <message>
        <source>Feed at most %1 at once and %2 this week</source>
        <translation>Höchstens %1 auf einmal und %2 in dieser Woche füttern</translation>
    </message>
    <message>
        <source>The top tray fills up: lift the bottom tray, which is ready, or feed less</source>
        <translation>Die oberste Etage wird voll: die unterste heben, die reif ist, oder weniger füttern</translation>
    </message>
    <message>
        <source>The top tray is full: lift the bottom tray, which is ready; no food fits until then</source>
        <translation>Die oberste Etage ist voll: die unterste heben, die reif ist; bis dahin passt kein Futter</translation>
    </message>
    <message>
        <source>The top tray is full: lift the bottom tray, which is ready, or feed less</source>
        <translation>Die oberste Etage ist voll: die unterste heben, die reif ist, oder weniger füttern</translation>
    </message>
    <message>
        <source>by the estimate it is heaped above its %1</source>
        <translation>nach der Schätzung ist sie über ihre %1 gehäuft</translation>
    </message>
    <message>
        <source>%1 of %2 used</source>
        <translation>%1 von %2 belegt</translation>
    </message>
    <message>
        <source>no more food fits</source>
        <translation>es passt kein Futter mehr</translation>
    </message>
    <message>
        <source>%1 of the usual food still fit</source>
        <translation>%1 des üblichen Futters passen noch</translation>
    </message>
    <message>
        <source>the worms assimilate %1 of what they need</source>
        <translation>die Würmer nehmen %1 dessen auf, was sie brauchen</translation>
    </message>
    <message>
        <source>feed-to-cast %1, ready %2 until the last food is eaten</source>
        <translation>Futter zu Humus %1, reif %2, bis das letzte Futter gefressen ist</translation>
    </message>
    <message>
        <source>by the record the top tray holds more castings than fit under its rim at %1: a new tray or a harvest may not be written down, or an entry is wrong; feed-to-cast %2</source>
        <translation>nach den Aufzeichnungen enthält die oberste Etage mehr Humus, als unter ihren Rand von %1 passt: eine neue Etage oder eine Ernte ist vielleicht nicht eingetragen, oder ein Eintrag ist falsch; Futter zu Humus %2</translation>
    </message>
    <message>
        <source>if one was added since, write it down</source>
        <translation>kam seither eine hinzu, sie eintragen</translation>
    </message>
    <message>
        <source>the top tray has had %1 and holds %2 of castings</source>
        <translation>die oberste Etage steht schon %1 und enthält %2 Humus</translation>
    </message>
    <message>
        <source>the top tray is filled to its rim</source>
        <translation>die oberste Etage ist bis an den Rand gefüllt</translation>
    </message>
    <message>
        <source>a spare tray is left</source>
        <translation>eine freie Etage ist noch da</translation>
    </message>
    <message>
        <source>The bottom tray is ready and its turn comes soon: lift it when you like</source>
        <translation>Die unterste Etage ist reif und bald an der Reihe: hebe sie, wann du willst</translation>
    </message>
    <message>
        <source>ready and its turn within 14 days: %1</source>
        <translation>innerhalb von 14 Tagen reif und an der Reihe: %1</translation>
    </message>
    <message>
        <source>it narrows the date by less than a day for %1 min of work</source>
        <translation>das engt den Termin um weniger als einen Tag ein, für %1 min Arbeit</translation>
    </message>
    <message>
        <source>it narrows the date by about %1 for %2 min of work, %3 days a minute</source>
        <translation>das engt den Termin um etwa %1 ein, für %2 min Arbeit, %3 Tage je Minute</translation>
    </message>
    <message>
        <source>it narrows the date, %1, by about %2 for %3 min of work, %4 days a minute</source>
        <translation>das engt den Termin, %1, um etwa %2 ein, für %3 min Arbeit, %4 Tage je Minute</translation>
    </message>
    <message>
        <source>fewer than %1 % bits of food or bedding: lift it today</source>
        <translation>weniger als %1 % Reste von Futter oder Einstreu: heute heben</translation>
    </message>
    <message>
        <source>fewer than 1 in %1 bits of food or bedding: lift it today</source>
        <translation>weniger als 1 von %1 Resten ist Futter oder Einstreu: heute heben</translation>
    </message>
    <message>
        <source>else wait and look again in a week</source>
        <translation>sonst warten und in einer Woche wieder nachsehen</translation>
    </message>
    <message>
        <source>else wait until about %1</source>
        <translation>sonst warten bis etwa %1</translation>
    </message>
    <message>
        <source>else wait and look again in a month</source>
        <translation>sonst warten und in einem Monat wieder nachsehen</translation>
    </message>
    <message>
        <source>chance that it is too dry within a week: %1</source>
        <translation>Wahrscheinlichkeit, dass es in einer Woche zu trocken ist: %1</translation>
    </message>
    <message>
        <source>if it crumbles, pour %1, else nothing for two weeks</source>
        <translation>krümelt sie, %1 gießen, sonst zwei Wochen lang nichts</translation>
    </message>
    <message>
        <source>it crumbled when it was squeezed</source>
        <translation>es zerfiel beim Drücken</translation>
    </message>
    <message>
        <source>moisture was read as %1 %</source>
        <translation>Feuchte mit %1 % abgelesen</translation>
    </message>
    <message>
        <source>in all %1 are wanting: more at once runs through</source>
        <translation>im Ganzen fehlen %1: mehr auf einmal läuft durch</translation>
    </message>
    <message>
        <source>it ran when it was squeezed</source>
        <translation>es lief beim Drücken heraus</translation>
    </message>
    <message>
        <source>its turn about %1</source>
        <translation>an der Reihe etwa %1</translation>
    </message>
    <message>
        <source>its turn not before %1</source>
        <translation>an der Reihe nicht vor %1</translation>
    </message>
    <message>
        <source>its turn not within a year</source>
        <translation>an der Reihe nicht innerhalb eines Jahres</translation>
    </message>
    <message>
        <source>right not before %1</source>
        <translation>richtig nicht vor %1</translation>
    </message>
    <message>
        <source>not right within a year</source>
        <translation>richtig nicht innerhalb eines Jahres</translation>
    </message>
    <message>
        <source>What was given in 8 weeks, cover included, has a C:N below 20 (taken back at 22); up to 25 when that of the bed is below 18 (taken back at 19). Less than {paper} of paper a week is not asked for.</source>
        <translation>Was in 8 Wochen gegeben wurde, samt Abdeckung, hat ein C:N unter 20 (zurückgenommen bei 22); bis 25, wenn das des Betts unter 18 liegt (zurückgenommen bei 19). Weniger als {paper} Papier je Woche werden nicht verlangt.</translation>
    </message>
    <message>
        <source>the tray beneath holds %1 of castings of the %2 wanted, feed-to-cast %3 of at most 0.60; chance that it is filled %4, %5 wanted</source>
        <translation>die Etage darunter enthält %1 Humus von den gewünschten %2, Futter zu Humus %3 von höchstens 0,60; Wahrscheinlichkeit, dass sie gefüllt ist: %4, gewünscht %5</translation>
    </message>
    <message>
        <source>The usual gap since the last feeding ends within 2 days, and at least {least} can be borne. More than the usual amount is named where that is below 0.7 of what keeps the worms and they assimilate less than 90 % of what they need, until they get all of it.</source>
        <translation>Der übliche Abstand seit der letzten Fütterung endet innerhalb von 2 Tagen, und mindestens {least} sind verträglich. Mehr als die übliche Menge wird genannt, wo diese unter 0,7 dessen liegt, was die Würmer erhält, und sie weniger als 90&#xa0;% ihres Bedarfs aufnehmen, bis sie ihn ganz bekommen.</translation>
    </message>
    <message>
        <source>The air in a tray is below 0.7 of full, or falls below it within 14 days with at least even chances. It is taken back above 0.8 and below 30 %. Also where what was given within 7 days is more than a quarter above the most. As a hint: food is due and not even {least} is borne, or what lies in the tray would last for more than 45 days as it is eaten now, until it is 30.</source>
        <translation>Die Luft in einer Etage liegt unter 0,7 der vollen, oder fällt binnen 14 Tagen mindestens so wahrscheinlich wie nicht darunter. Zurückgenommen über 0,8 und unter 30&#xa0;%. Auch wo die Gaben von 7 Tagen um mehr als ein Viertel über dem Höchsten liegen. Als Hinweis: Futter ist fällig und nicht einmal {least} wird vertragen, oder was in der Etage liegt, reichte so, wie jetzt gefressen wird, für mehr als 45 Tage, bis es 30 sind.</translation>
    </message>
    <message>
        <source>the worms assimilate %1 of what they need; %2 a week keep as many as there are</source>
        <translation>die Würmer nehmen %1 dessen auf, was sie brauchen; %2 je Woche erhalten so viele, wie da sind</translation>
    </message>
    <message>
        <source>Feed %1 rather than the usual %2</source>
        <translation>%1 füttern statt der üblichen %2</translation>
    </message>
    <message>
        <source>Give no more food this week; look after a few days, and take out what smells or is warm</source>
        <translation>Diese Woche kein Futter mehr; nach ein paar Tagen nachsehen und herausnehmen, was riecht oder warm ist</translation>
    </message>
    <message>
        <source>%1 were given within 7 days; half of the worms&apos; weight a day is the most, %2 a week for about %3 of worms</source>
        <translation>%1 wurden in 7 Tagen gegeben; das halbe Gewicht der Würmer am Tag ist das Höchste, %2 je Woche bei etwa %3 Würmern</translation>
    </message>
    <message>
        <source>%1 were given within 7 days; %2 kg a day and m² are the most, %3 a week</source>
        <translation>%1 wurden in 7 Tagen gegeben; %2 kg am Tag und m² sind das Höchste, %3 je Woche</translation>
    </message>
</context>
<context>
    <name>BedBody</name>
    <message>
        <source>Bedding</source>
        <translation>Einstreu</translation>
    </message>
    <message>
        <source>Which bedding?</source>
        <translation>Welche Einstreu?</translation>
    </message>
    <message>
        <source>Amount, dry</source>
        <translation>Menge, trocken</translation>
    </message>
    <message>
        <source>How much bedding, as it comes to hand?</source>
        <translation>Wie viel Einstreu, so wie sie zur Hand ist?</translation>
    </message>
    <message>
        <source>Moisture once laid</source>
        <translation>Feuchte beim Einlegen</translation>
    </message>
    <message>
        <source>wetted like a wrung-out sponge when left empty</source>
        <translation>bleibt es leer, angefeuchtet wie ein ausgedrückter Schwamm</translation>
    </message>
    <message>
        <source>makes about %1; wet it with %2 of water</source>
        <translation>ergibt etwa %1; mit %2 Wasser anfeuchten</translation>
    </message>
</context>
<context>
    <name>BedFields</name>
    <message>
        <source>Bed temperature now</source>
        <translation>Temperatur des Betts jetzt</translation>
    </message>
    <message>
        <source>as a thermometer in the bed shows it today; the mean of the year follows from it, and it from the mean</source>
        <translation>wie ein Thermometer im Bett sie heute zeigt; das Jahresmittel folgt daraus, und sie aus dem Mittel</translation>
    </message>
    <message>
        <source>Usual bed temperature</source>
        <translation>Übliche Temperatur des Betts</translation>
    </message>
    <message>
        <source>the mean of the whole year; the place makes winter and summer of it</source>
        <translation>das Mittel des ganzen Jahres; der Ort macht Winter und Sommer daraus</translation>
    </message>
    <message>
        <source>the mean of the whole year; at this place that is about %1 in %2 and %3 in %4</source>
        <comment>temperature, month, temperature, month</comment>
        <translation>das Mittel des ganzen Jahres; an diesem Ort sind das etwa %1 im %2 und %3 im %4</translation>
    </message>
    <message>
        <source>; below %1 worms die</source>
        <translation>; unter %1 sterben Würmer</translation>
    </message>
    <message>
        <source>; above %1 worms die</source>
        <translation>; über %1 sterben Würmer</translation>
    </message>
</context>
<context>
    <name>Calendar</name>
    <message>
        <source>about %1 of castings</source>
        <translation>etwa %1 Humus</translation>
    </message>
    <message>
        <source>%1: add a tray (tray %2)</source>
        <translation>%1: Etage hinzufügen (Etage %2)</translation>
    </message>
    <message>
        <source>%1: lift the bottom tray (tray %2)</source>
        <translation>%1: unterste Etage heben (Etage %2)</translation>
    </message>
    <message>
        <source>%1; %2</source>
        <translation>%1; %2</translation>
    </message>
    <message>
        <source>%1: take the castings, lay new bedding (tray %2)</source>
        <translation>%1: Humus nehmen, neue Einstreu einlegen (Etage %2)</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>%1: take the castings of the only tray, its worms back into new bedding</source>
        <translation>%1: Humus der einzigen Etage nehmen, ihre Würmer zurück in neue Einstreu</translation>
    </message>
    <message>
        <source>due %1</source>
        <translation>fällig %1</translation>
    </message>
    <message>
        <source>due %1 (%2 to %3)</source>
        <translation>fällig %1 (%2 bis %3)</translation>
    </message>
    <message>
        <source>due %1 (from %2 on)</source>
        <translation>fällig %1 (ab %2)</translation>
    </message>
</context>
<context>
    <name>Cautions</name>
    <message>
        <source>Leachate: not on leaves that are eaten raw, and never to drink. Wash your hands afterwards.</source>
        <translation>Sickerwasser: nicht auf Blätter, die roh gegessen werden, und nie trinken. Danach Hände waschen.</translation>
    </message>
    <message>
        <source>Worms in the sump are normal: put them back into the top tray.</source>
        <translation>Würmer in der Auffangschale sind normal: setze sie zurück in die oberste Etage.</translation>
    </message>
    <message>
        <source>Tray %1</source>
        <translation>Etage %1</translation>
    </message>
    <message>
        <source>The tray</source>
        <translation>Die Etage</translation>
    </message>
    <message>
        <source>Lift it close to the body, knees bent, without a twist; if that is too heavy, in parts or with someone.</source>
        <translation>Körpernah heben, mit gebeugten Knien, ohne Drehung; ist das zu schwer, in Teilen oder zu zweit.</translation>
    </message>
    <message>
        <source>%1 weighs about %2.</source>
        <translation>%1 wiegt etwa %2.</translation>
    </message>
    <message>
        <source>A full tray is heavy.</source>
        <translation>Eine volle Etage ist schwer.</translation>
    </message>
    <message>
        <source>Worms left in the bottom tray are normal: they go down in the light.</source>
        <translation>Würmer in der untersten Etage sind normal: im Licht gehen sie nach unten.</translation>
    </message>
    <message>
        <source>It is normal that cocoons and some young worms leave with the castings; castings without any worm cannot be promised.</source>
        <translation>Es ist normal, dass Kokons und einige junge Würmer mit dem Humus gehen; Humus ganz ohne Würmer lässt sich nicht versprechen.</translation>
    </message>
    <message>
        <source>Against cold: wrap it or bring it in first. A heater only if it is rated for the place and away from water; the local electrical code and a licensed electrician come first.</source>
        <translation>Gegen Kälte: zuerst einpacken oder hereinholen. Eine Heizung nur, wenn sie für den Ort zugelassen ist und fern von Wasser steht; die örtlichen Vorschriften für Elektrik und eine zugelassene Fachkraft gehen vor.</translation>
    </message>
    <message>
        <source>«%1» is best left out. It is recorded all the same.</source>
        <translation>„%1“ lässt man besser weg. Eingetragen wird es trotzdem.</translation>
    </message>
    <message>
        <source>«%1» only a little at a time.</source>
        <translation>„%1“ nur wenig auf einmal.</translation>
    </message>
    <message>
        <source>Give worms to other bins only. Never release them into woods, fields or water; keep to local rules on species.</source>
        <translation>Gib Würmer nur in andere Kisten. Setze sie nie in Wald, Feld oder Gewässer aus; halte dich an örtliche Regeln zu Arten.</translation>
    </message>
    <message>
        <source>No pesticide or ant bait near worms or food. Against a sour bed calcium carbonate only, never slaked lime.</source>
        <translation>Keine Schädlingsmittel oder Ameisenköder in der Nähe von Würmern oder Futter. Gegen ein saures Bett nur Calciumcarbonat, nie Löschkalk.</translation>
    </message>
    <message>
        <source>Wash your hands after each work, keep tools out of the kitchen sink, cover cuts, keep tetanus vaccination up to date. Composts can carry moulds and Legionella. With asthma or weak immunity, or when pregnant, let someone else do the dusty work; see a doctor if you fall ill after it.</source>
        <translation>Nach jeder Arbeit Hände waschen, Werkzeug nicht in die Küchenspüle, Wunden abdecken, Tetanusimpfung auf dem Stand halten. Kompost kann Schimmel und Legionellen tragen. Mit Asthma, schwacher Abwehr oder in der Schwangerschaft lass andere die staubige Arbeit tun; geh zum Arzt, wenn du danach krank wirst.</translation>
    </message>
    <message>
        <source>Never release composting worms into woods, fields or water. Keep to local rules on species, on waste and on selling worms or castings.</source>
        <translation>Setze Kompostwürmer nie in Wald, Feld oder Gewässer aus. Halte dich an örtliche Regeln zu Arten, zu Abfall und zum Verkauf von Würmern oder Humus.</translation>
    </message>
    <message>
        <source>Local codes and licensed practice come first: for electrical heat, for what may be composted where you live, and for what you may give away or sell.</source>
        <translation>Örtliche Vorschriften und zugelassene Fachleute gehen vor: bei elektrischer Wärme, bei dem, was bei dir kompostiert werden darf, und bei dem, was du weitergeben oder verkaufen darfst.</translation>
    </message>
    <message>
        <source>Meat, fish, dairy, oily food, pet droppings, glossy paper and treated wood stay out.</source>
        <translation>Fleisch, Fisch, Milchprodukte, fettes Essen, Kot von Haustieren, Glanzpapier und behandeltes Holz bleiben draußen.</translation>
    </message>
    <message>
        <source>the household&apos;s own material</source>
        <translation>das eigene Material des Haushalts</translation>
    </message>
    <message>
        <source>Leachate: never to drink, not on leaves eaten raw.</source>
        <translation>Sickerwasser: nie trinken, nicht auf roh gegessene Blätter.</translation>
    </message>
    <message>
        <source>%1 weighs about %2: lift with knees bent, or in parts.</source>
        <translation>%1 wiegt etwa %2: mit gebeugten Knien heben, oder in Teilen.</translation>
    </message>
    <message>
        <source>A full tray is heavy: lift with knees bent, or in parts.</source>
        <translation>Eine volle Etage ist schwer: mit gebeugten Knien heben, oder in Teilen.</translation>
    </message>
    <message>
        <source>Dust of castings and compost can carry moulds and Legionella: keep it moist, your face away, wear a mask and gloves, wash your hands; cover wounds, keep tetanus vaccination up to date. With asthma or weak immunity, let someone else do it; what your doctor or health service says comes first.</source>
        <translation>Staub von Humus und Kompost kann Schimmel und Legionellen tragen: feucht halten, Gesicht weg, Maske und Handschuhe tragen, Hände waschen; Wunden abdecken, Tetanusimpfung auf dem Stand halten. Bei Asthma oder Immunschwäche jemand anderen bitten; was Arzt oder Gesundheitsamt sagt, geht vor.</translation>
    </message>
    <message>
        <source>Dust can carry moulds and Legionella: keep it moist, mask and gloves on, tetanus vaccination up to date; not with asthma or weak immunity.</source>
        <translation>Staub kann Schimmel und Legionellen tragen: feucht halten, Maske und Handschuhe, Tetanusimpfung aktuell; nicht bei Asthma oder Immunschwäche.</translation>
    </message>
    <message>
        <source>Soil and bedding in a wound can bring tetanus: cover wounds, wear gloves, wash your hands, keep the vaccination up to date; what your doctor or health service says comes first.</source>
        <translation>Erde und Einstreu in einer Wunde können Tetanus bringen: Wunden abdecken, Handschuhe tragen, Hände waschen, Impfung auf dem Stand halten; was Arzt oder Gesundheitsamt sagt, geht vor.</translation>
    </message>
    <message>
        <source>Cover wounds, wear gloves; tetanus vaccination up to date.</source>
        <translation>Wunden abdecken, Handschuhe tragen; Tetanusimpfung aktuell.</translation>
    </message>
    <message>
        <source>Manure: only aged, not of animals wormed lately: what kills their worms kills yours. Wear gloves, cover wounds, tetanus vaccination up to date, wash your hands; never cat or dog waste; in pregnancy or with weak immunity keep away from it.</source>
        <translation>Mist: nur abgelagerter, nicht von jüngst entwurmten Tieren: was deren Würmer tötet, tötet auch deine. Handschuhe, Wunden abdecken, Tetanusimpfung aktuell, Hände waschen; nie Katzen- oder Hundekot; Schwangere und Immunschwache bleiben fern.</translation>
    </message>
    <message>
        <source>Manure: only aged, of animals not wormed lately; gloves, tetanus vaccination up to date; never cat or dog waste, not in pregnancy.</source>
        <translation>Mist: nur abgelagerter, von nicht jüngst entwurmten Tieren; Handschuhe, Tetanusimpfung aktuell; nie Katzen- oder Hundekot, nicht in der Schwangerschaft.</translation>
    </message>
</context>
<context>
    <name>ChangeWords</name>
    <message>
        <source>not within a year</source>
        <translation>nicht innerhalb eines Jahres</translation>
    </message>
    <message>
        <source>no day sooner or later</source>
        <translation>keinen Tag früher oder später</translation>
    </message>
    <message>
        <source>bottom tray ready</source>
        <translation>unterste Etage reif</translation>
    </message>
    <message>
        <source>top tray filled</source>
        <translation>oberste Etage gefüllt</translation>
    </message>
    <message>
        <source>sump full, if shut</source>
        <translation>Auffangschale voll, wenn zu</translation>
    </message>
    <message>
        <source>colony in 60 days</source>
        <translation>Bestand in 60 Tagen</translation>
    </message>
    <message>
        <source>colony in a year</source>
        <translation>Bestand in einem Jahr</translation>
    </message>
    <message>
        <source>processing, dry</source>
        <translation>Verarbeitung, trocken</translation>
    </message>
    <message>
        <source>feed %1 with its cover</source>
        <translation>%1 mit Abdeckung füttern</translation>
    </message>
    <message>
        <source>give no food</source>
        <translation>kein Futter geben</translation>
    </message>
    <message>
        <source>pour %1 of water</source>
        <translation>%1 Wasser gießen</translation>
    </message>
    <message>
        <source>drain the sump and leave the spigot over a bowl</source>
        <translation>die Auffangschale ablassen und den Hahn über einer Schüssel offen lassen</translation>
    </message>
    <message>
        <source>Before you leave for %1: %2. Nobody need come by.</source>
        <translation>Bevor du für %1 wegfährst: %2. Niemand muss vorbeikommen.</translation>
    </message>
    <message>
        <source>, </source>
        <translation>, </translation>
    </message>
    <message>
        <source>Before you leave for %1: %2. Let somebody look in half-way.</source>
        <translation>Bevor du für %1 wegfährst: %2. Lass nach der Hälfte jemanden nachsehen.</translation>
    </message>
    <message>
        <source>too dry on the return</source>
        <translation>bei der Rückkehr zu trocken</translation>
    </message>
    <message>
        <source>hungry on the return</source>
        <translation>bei der Rückkehr hungrig</translation>
    </message>
    <message>
        <source>The stack is not behind: it processes %1, at least 70 % of its best week of the last year.</source>
        <translation>Der Stapel ist nicht im Rückstand: er verarbeitet %1, mindestens 70 % seiner besten Woche des letzten Jahres.</translation>
    </message>
    <message>
        <source>take the bottom tray&apos;s castings</source>
        <translation>den Humus der untersten Etage nehmen</translation>
    </message>
    <message>
        <source>lay a new tray</source>
        <translation>eine neue Etage auflegen</translation>
    </message>
    <message>
        <source>not within half a year</source>
        <translation>nicht innerhalb eines halben Jahres</translation>
    </message>
    <message>
        <source>The shortest way back: %1. It processes %2 again about %3.</source>
        <translation>Der kürzeste Weg zurück: %1. Etwa %3 verarbeitet er wieder %2.</translation>
    </message>
    <message>
        <source>back at its former rate</source>
        <translation>wieder so schnell wie früher</translation>
    </message>
    <message>
        <source>colony</source>
        <translation>Bestand</translation>
    </message>
    <message>
        <source>from %1 on %2</source>
        <comment>day, amount of food a week</comment>
        <translation>ab %1 %2</translation>
    </message>
    <message>
        <source>processing, dry, by then</source>
        <translation>verarbeitet bis dann, trocken</translation>
    </message>
    <message>
        <source>air below 0.7 within 14 days</source>
        <translation>Luft unter 0,7 innerhalb von 14 Tagen</translation>
    </message>
    <message numerus="yes">
        <source>None: with fewer worms the stack would not be back at its rate, or its colony at nine tenths, within %n week(s) (%1 then, %2 now).</source>
        <translation>
            <numerusform>Keine: mit weniger Würmern wäre der Stapel nach %n Woche nicht wieder bei seiner Leistung oder sein Bestand nicht bei neun Zehnteln (%1 dann, %2 jetzt).</numerusform>
            <numerusform>Keine: mit weniger Würmern wäre der Stapel nach %n Wochen nicht wieder bei seiner Leistung oder sein Bestand nicht bei neun Zehnteln (%1 dann, %2 jetzt).</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Up to %1 of worms can go (%2 of the colony); within %n week(s) the stack processes as much as today again, and its worms are back to nine tenths.</source>
        <translation>
            <numerusform>Bis zu %1 Würmer können gehen (%2 des Bestands); nach %n Woche verarbeitet der Stapel wieder so viel wie heute, und seine Würmer sind wieder bei neun Zehnteln.</numerusform>
            <numerusform>Bis zu %1 Würmer können gehen (%2 des Bestands); nach %n Wochen verarbeitet der Stapel wieder so viel wie heute, und seine Würmer sind wieder bei neun Zehnteln.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Up to %1 of worms can go (%2 of the colony); within %n week(s) the stack processes as much as it would with all of them, which is less than today, and its worms are back to nine tenths.</source>
        <translation>
            <numerusform>Bis zu %1 Würmer können gehen (%2 des Bestands); nach %n Woche verarbeitet der Stapel so viel, wie er mit allen täte, was weniger ist als heute, und seine Würmer sind wieder bei neun Zehnteln.</numerusform>
            <numerusform>Bis zu %1 Würmer können gehen (%2 des Bestands); nach %n Wochen verarbeitet der Stapel so viel, wie er mit allen täte, was weniger ist als heute, und seine Würmer sind wieder bei neun Zehnteln.</numerusform>
        </translation>
    </message>
    <message>
        <source>colony by then</source>
        <translation>Bestand bis dahin</translation>
    </message>
    <message>
        <source>Before you leave for %1: %2. Nobody need come by; towards the end they may live on their reserves: feed them when you are back.</source>
        <translation>Bevor du für %1 wegfährst: %2. Niemand muss vorbeikommen; gegen Ende können sie von ihren Reserven leben: nach der Rückkehr füttern.</translation>
    </message>
    <message>
        <source>already</source>
        <translation>bereits</translation>
    </message>
    <message>
        <source>The bottom tray is ready %1; in 60 days the colony is as heavy as without the change.</source>
        <translation>Die unterste Etage ist %1 reif; in 60 Tagen ist der Bestand so schwer wie ohne die Änderung.</translation>
    </message>
    <message>
        <source>With the bottom tray taken, in 60 days the colony is as heavy as without the change.</source>
        <translation>Ist die unterste Etage genommen, ist der Bestand in 60 Tagen so schwer wie ohne die Änderung.</translation>
    </message>
    <message>
        <source>With the bottom tray taken on %1 the colony would be what it is today, %2.</source>
        <translation>Wäre die unterste Etage am %1 genommen worden, wäre der Bestand so, wie er heute ist, %2.</translation>
    </message>
    <message>
        <source>Without that entry the colony would be what it is today, %1.</source>
        <translation>Ohne diesen Eintrag wäre der Bestand so, wie er heute ist, %1.</translation>
    </message>
    <message>
        <source>The bottom tray is ready %1; in 60 days the colony is %2.</source>
        <translation>Die unterste Etage ist %1 reif; in 60 Tagen ist der Bestand %2.</translation>
    </message>
    <message>
        <source>With the bottom tray taken, in 60 days the colony is %1.</source>
        <translation>Ist die unterste Etage genommen, ist der Bestand in 60 Tagen %1.</translation>
    </message>
    <message>
        <source>The bottom tray is ready %1; in 60 days the colony is as heavy as without the change (%2).</source>
        <translation>Die unterste Etage ist %1 reif; in 60 Tagen ist der Bestand so schwer wie ohne die Änderung (%2).</translation>
    </message>
    <message>
        <source>With the bottom tray taken, in 60 days the colony is as heavy as without the change (%1).</source>
        <translation>Ist die unterste Etage genommen, ist der Bestand in 60 Tagen so schwer wie ohne die Änderung (%1).</translation>
    </message>
    <message>
        <source>put %1 of worms in</source>
        <translation>%1 Würmer einsetzen</translation>
    </message>
    <message>
        <source>None of harvest, new tray and more food brings it back by itself. With worms it does: %1. It processes %2 again about %3.</source>
        <translation>Weder Ernte noch neue Etage noch mehr Futter bringen ihn allein zurück. Mit Würmern geht es: %1. Etwa %3 verarbeitet er wieder %2.</translation>
    </message>
    <message>
        <source>None of harvest, new tray and more food brings it back to %1 within half a year, nor do %2 of worms: begin its bed anew.</source>
        <translation>Weder Ernte noch neue Etage noch mehr Futter bringen ihn binnen eines halben Jahres auf %1 zurück, auch %2 Würmer nicht: das Bett neu beginnen.</translation>
    </message>
    <message>
        <source>%1 a week</source>
        <comment>amount of food</comment>
        <translation>%1 je Woche</translation>
    </message>
    <message>
        <source>Lay %1 of bedding in the new stack&apos;s first tray, put %2 of worms in, and feed it %3.</source>
        <translation>In die erste Etage des neuen Stapels %1 Einstreu legen, %2 Würmer einsetzen und ihm %3 geben.</translation>
    </message>
    <message>
        <source>worms at the beginning</source>
        <translation>Würmer zu Beginn</translation>
    </message>
    <message>
        <source>food a week</source>
        <translation>Futter je Woche</translation>
    </message>
    <message>
        <source>back at its rate</source>
        <translation>wieder so schnell wie jetzt</translation>
    </message>
    <message>
        <source>–</source>
        <translation>–</translation>
    </message>
    <message>
        <source>feed %1</source>
        <comment>amounts a week</comment>
        <translation>%1 füttern</translation>
    </message>
    <message>
        <source>%1, later up to %2</source>
        <comment>amounts of food a week</comment>
        <translation>%1, später bis %2</translation>
    </message>
    <message>
        <source>Never release them into wild land, and keep to local rules on species and sale.</source>
        <translation>Setze sie nie in die freie Natur aus, und halte dich an örtliche Regeln zu Arten und Verkauf.</translation>
    </message>
    <message>
        <source>from %1 on: %2 a week</source>
        <comment>day, amount of food</comment>
        <translation>ab %1: %2 je Woche</translation>
    </message>
    <message>
        <source>%1 a week at first, step by step %2 from %3 on</source>
        <comment>amount of food, amount, day</comment>
        <translation>zuerst %1 je Woche, Schritt für Schritt %2 ab %3</translation>
    </message>
    <message>
        <source>That is more than it can bear: with %1 the air in the bed falls below 0.7 within 14 days; it heats and smells, and below 0.5 worms die.</source>
        <translation>Das ist mehr, als er verträgt: mit %1 fällt die Luft im Bett innerhalb von 14 Tagen unter 0,7; es wird warm und riecht, und unter 0,5 sterben Würmer.</translation>
    </message>
    <message>
        <source>Of such a week&apos;s food only about %1 fit into the tray now; what finds no room is left out.</source>
        <translation>Von so viel Wochenfutter passen jetzt nur etwa %1 in die Etage; was keinen Platz findet, bleibt weg.</translation>
    </message>
    <message>
        <source>All its trays stand: it takes one more than there are.</source>
        <translation>Alle seine Etagen stehen: es braucht eine mehr, als da sind.</translation>
    </message>
    <message>
        <source>%1 is the mean of the whole year, and the season goes on around it: at this place the bed has about %2 in %3 and %4 in %5.</source>
        <comment>temperature, temperature, month, temperature, month</comment>
        <translation>%1 ist das Mittel des ganzen Jahres, und die Jahreszeiten gehen darum weiter: an diesem Ort hat das Bett etwa %2 im %3 und %4 im %5.</translation>
    </message>
    <message>
        <source>Below %1 worms die.</source>
        <translation>Unter %1 sterben Würmer.</translation>
    </message>
    <message>
        <source>Above %1 worms die.</source>
        <translation>Über %1 sterben Würmer.</translation>
    </message>
    <message>
        <source>bed, mean of the year</source>
        <translation>Bett, Mittel des Jahres</translation>
    </message>
    <message>
        <source>bed in %1</source>
        <comment>month</comment>
        <translation>Bett im %1</translation>
    </message>
    <message numerus="yes">
        <source>This stack can spare only %1 within %n week(s): give it more weeks, or buy the rest.</source>
        <translation>
            <numerusform>Dieser Stapel kann binnen %n Woche nur %1 entbehren: gib ihm mehr Wochen, oder kaufe den Rest.</numerusform>
            <numerusform>Dieser Stapel kann binnen %n Wochen nur %1 entbehren: gib ihm mehr Wochen, oder kaufe den Rest.</numerusform>
        </translation>
    </message>
    <message>
        <source>Its first tray is full, and the next one due: %1. The castings of the first are ready: %2. This stack is back at its rate: %3.</source>
        <translation>Seine erste Etage ist voll und die nächste fällig: %1. Der Humus der ersten ist reif: %2. Dieser Stapel verarbeitet wieder so viel wie jetzt: %3.</translation>
    </message>
    <message>
        <source>With the bottom tray taken on %1 the colony would be %2 today instead of %3, that is %4 heavier.</source>
        <translation>Wäre die unterste Etage am %1 entnommen worden, wäre der Bestand heute %2 statt %3, also %4 schwerer.</translation>
    </message>
    <message>
        <source>With the bottom tray taken on %1 the colony would be %2 today instead of %3, that is %4 lighter.</source>
        <translation>Wäre die unterste Etage am %1 entnommen worden, wäre der Bestand heute %2 statt %3, also %4 leichter.</translation>
    </message>
    <message>
        <source>Without that entry the colony would be %1 today instead of %2, that is %3 heavier.</source>
        <translation>Ohne diesen Eintrag wäre der Bestand heute %1 statt %2, also %3 schwerer.</translation>
    </message>
    <message>
        <source>Without that entry the colony would be %1 today instead of %2, that is %3 lighter.</source>
        <translation>Ohne diesen Eintrag wäre der Bestand heute %1 statt %2, also %3 leichter.</translation>
    </message>
</context>
<context>
    <name>Charts</name>
    <message>
        <source>%1 · %2</source>
        <translation>%1 · %2</translation>
    </message>
    <message>
        <source>As of %1. Lines are estimates, bands the range that holds nine times in ten; what is shaded is the forecast.</source>
        <translation>Stand %1. Linien sind Schätzungen, Bänder der Bereich, der in neun von zehn Fällen hält; das Schattierte ist die Vorhersage.</translation>
    </message>
    <message>
        <source>%1. Estimates, no measurements: a look into the tray rules over any number here.</source>
        <translation>%1. Schätzungen, keine Messungen: ein Blick in die Etage gilt mehr als jede Zahl hier.</translation>
    </message>
    <message>
        <source>The signs in the charts</source>
        <translation>Die Zeichen in den Diagrammen</translation>
    </message>
</context>
<context>
    <name>CheckBody</name>
    <message>
        <source>Depth of castings</source>
        <translation>Tiefe des Humus</translation>
    </message>
    <message>
        <source>Still recognisable</source>
        <translation>Noch erkennbar</translation>
    </message>
    <message>
        <source>how much of the tray you still know as food or bedding</source>
        <translation>wie viel der Etage du noch als Futter oder Einstreu erkennst</translation>
    </message>
    <message>
        <source>Left of the last feeding</source>
        <translation>Übrig von der letzten Fütterung</translation>
    </message>
    <message>
        <source>Worms seen</source>
        <translation>Gesehene Würmer</translation>
    </message>
    <message>
        <source>not noted</source>
        <translation>nicht notiert</translation>
    </message>
    <message>
        <source>few</source>
        <translation>wenige</translation>
    </message>
    <message>
        <source>some</source>
        <translation>einige</translation>
    </message>
    <message>
        <source>many</source>
        <translation>viele</translation>
    </message>
    <message>
        <source>Note at least one thing that you saw.</source>
        <translation>Notiere mindestens eines, das du gesehen hast.</translation>
    </message>
</context>
<context>
    <name>CommandLine</name>
    <message>
        <source>unknown option %1</source>
        <translation>unbekannte Option %1</translation>
    </message>
    <message>
        <source>%1 takes no value</source>
        <translation>%1 nimmt keinen Wert</translation>
    </message>
    <message>
        <source>%1 needs a value</source>
        <translation>%1 braucht einen Wert</translation>
    </message>
    <message>
        <source>%1 is given twice</source>
        <translation>%1 ist zweimal angegeben</translation>
    </message>
    <message>
        <source>%1 and %2 cannot be asked for at once</source>
        <translation>%1 und %2 können nicht zugleich verlangt werden</translation>
    </message>
    <message>
        <source>--at goes only with --summary, --calendar, --report, --labels and --portrait</source>
        <translation>--at geht nur mit --summary, --calendar, --report, --labels und --portrait</translation>
    </message>
    <message>
        <source>%1 goes only with --portrait</source>
        <translation>%1 geht nur mit --portrait</translation>
    </message>
    <message>
        <source>--lang goes only with --report, --labels and --portrait</source>
        <translation>--lang geht nur mit --report, --labels und --portrait</translation>
    </message>
    <message>
        <source>--out goes only with --report</source>
        <translation>--out geht nur mit --report</translation>
    </message>
    <message>
        <source>--demo goes only with the window and --portrait</source>
        <translation>--demo geht nur mit dem Fenster und --portrait</translation>
    </message>
    <message>
        <source>only one FILE can be named, not %1 and %2</source>
        <translation>nur eine FILE kann genannt werden, nicht %1 und %2</translation>
    </message>
    <message>
        <source>the name of FILE is empty</source>
        <translation>der Name von FILE ist leer</translation>
    </message>
    <message>
        <source>--demo opens a household of its own, so no FILE can be named</source>
        <translation>--demo öffnet einen eigenen Haushalt, daher kann keine FILE genannt werden</translation>
    </message>
    <message>
        <source>the call needs a FILE: tierloam FILE …</source>
        <translation>der Aufruf braucht eine FILE: tierloam FILE …</translation>
    </message>
    <message>
        <source>--at: found «%1»; allowed: a date from 1900 to 2199, such as 2031-05-01</source>
        <translation>--at: „%1“ gefunden; erlaubt: ein Datum von 1900 bis 2199, etwa 2031-05-01</translation>
    </message>
    <message>
        <source>--report needs --out OUT.pdf or --out OUT.html</source>
        <translation>--report braucht --out OUT.pdf oder --out OUT.html</translation>
    </message>
    <message>
        <source>%1: found «%2»; allowed: %3</source>
        <translation>%1: „%2“ gefunden; erlaubt: %3</translation>
    </message>
    <message>
        <source>a name that ends in .pdf or .html</source>
        <translation>ein Name, der auf .pdf oder .html endet</translation>
    </message>
    <message>
        <source>a name that ends in .pdf</source>
        <translation>ein Name, der auf .pdf endet</translation>
    </message>
    <message>
        <source>a whole number, 100 to 200</source>
        <translation>eine ganze Zahl, 100 bis 200</translation>
    </message>
    <message>
        <source>WIDTHxHEIGHT, each %1 to %2, such as 1440x900</source>
        <translation>BREITExHÖHE, jeweils %1 bis %2, etwa 1440x900</translation>
    </message>
    <message>
        <source>Tierloam keeps the trays of every stack of worm bins moving through their turns.

tierloam [FILE]                        opens the window on a household file (*.tierloam)
tierloam --demo                        opens a fresh copy of the demo household
tierloam FILE --import JOURNAL.csv     adds all rows of a journal, or none
tierloam FILE --record &quot;ROW&quot;           adds one row, prints its id once it is safe on disk
tierloam FILE --export JOURNAL.csv     writes the whole journal
tierloam FILE --summary [--at DATE]    estimates and advice as JSON
tierloam FILE --calendar OUT.ics [--at DATE]
                                       due list and rotation plan as iCalendar
tierloam FILE --report STACK --out OUT.pdf|OUT.html [--at DATE] [--lang de]
                                       the sheet of one stack
tierloam FILE --labels OUT.pdf [--at DATE] [--lang de]
                                       a label for each tray that stands
tierloam FILE --portrait DIR           draws each page to DIR/PAGE.png; also with --demo for FILE
    [--at DATE] [--theme light|dark] [--font-scale 100..200] [--size WxH] [--lang de]
tierloam --version, tierloam --help

The columns of a journal: date,stack,action,slot,amount,unit,item,detail,note
FILE is created when --import or --record names one that is not there.

Exit codes: 0 done; 1 the work failed (disk full; FILE absent, damaged, or in use for more than 5 s);
2 bad arguments or input, and nothing was changed.
</source>
        <translation>Tierloam bringt die Etagen jedes Stapels von Wurmkisten der Reihe nach voran.

tierloam [FILE]                        öffnet das Fenster mit einer Haushaltsdatei (*.tierloam)
tierloam --demo                        öffnet eine frische Kopie des Demo-Haushalts
tierloam FILE --import JOURNAL.csv     fügt alle Zeilen eines Tagebuchs hinzu oder keine
tierloam FILE --record &quot;ROW&quot;           fügt eine Zeile hinzu, nennt ihre Kennung, sobald sie sicher auf der Platte ist
tierloam FILE --export JOURNAL.csv     schreibt das ganze Tagebuch
tierloam FILE --summary [--at DATE]    Schätzungen und Ratschläge als JSON
tierloam FILE --calendar OUT.ics [--at DATE]
                                       Fälligkeitsliste und Umlaufplan als iCalendar
tierloam FILE --report STACK --out OUT.pdf|OUT.html [--at DATE] [--lang de]
                                       das Blatt eines Stapels
tierloam FILE --labels OUT.pdf [--at DATE] [--lang de]
                                       ein Etikett für jede stehende Etage
tierloam FILE --portrait DIR           zeichnet jede Seite nach DIR/PAGE.png; auch mit --demo statt FILE
    [--at DATE] [--theme light|dark] [--font-scale 100..200] [--size WxH] [--lang de]
tierloam --version, tierloam --help

Die Spalten eines Tagebuchs: date,stack,action,slot,amount,unit,item,detail,note
FILE wird angelegt, wenn --import oder --record eine nennen, die es nicht gibt.

Rückgabewerte: 0 getan; 1 die Arbeit misslang (Platte voll; FILE fehlt, beschädigt oder länger als 5 s in Gebrauch);
2 falsche Argumente oder Eingaben, nichts wurde geändert.
</translation>
    </message>
    <message>
        <source>this build has no window and draws no pages; it answers --import, --record, --export, --summary and --calendar</source>
        <translation>dieser Bau hat kein Fenster und zeichnet keine Seiten; er beantwortet --import, --record, --export, --summary und --calendar</translation>
    </message>
    <message>
        <source>tierloam --help lists the calls</source>
        <translation>tierloam --help nennt die Aufrufe</translation>
    </message>
    <message>
        <source>%1, also with a country, such as de_AT</source>
        <translation>%1, auch mit einem Land, etwa de_AT</translation>
    </message>
</context>
<context>
    <name>CoreCalls</name>
    <message>
        <source>%1 cannot be read: %2</source>
        <translation>%1 kann nicht gelesen werden: %2</translation>
    </message>
    <message>
        <source>another program has changed the journal meanwhile</source>
        <translation>ein anderes Programm hat inzwischen das Tagebuch geändert</translation>
    </message>
    <message>
        <source>what was written is kept, but the answer could not be printed</source>
        <translation>das Geschriebene bleibt, aber die Antwort konnte nicht ausgegeben werden</translation>
    </message>
    <message>
        <source>the journal</source>
        <translation>das Tagebuch</translation>
    </message>
    <message>
        <source>the summary could not be printed</source>
        <translation>die Zusammenfassung konnte nicht ausgegeben werden</translation>
    </message>
    <message>
        <source>the calendar</source>
        <translation>der Kalender</translation>
    </message>
    <message>
        <source>%1 is the household file itself; name another file for %2</source>
        <translation>%1 ist die Haushaltsdatei selbst; nenne eine andere Datei für %2</translation>
    </message>
    <message>
        <source>The seasons are those south of the equator, since this machine is set up for there. The window&apos;s menu Household, Seasons, turns them.</source>
        <translation>Die Jahreszeiten sind die südlich des Äquators, da dieser Rechner für dort eingerichtet ist. Im Fenster stellt das Menü Haushalt, Jahreszeiten, sie um.</translation>
    </message>
    <message>
        <source>%1 is not in the journal&apos;s own format, which --import reads. The window reads other tables too (its menu Household, Import a table): it finds out columns, marks and encoding, and asks what it cannot know.</source>
        <translation>%1 ist nicht im eigenen Format des Tagebuchs, das --import liest. Das Fenster liest auch andere Tabellen (Menü Haushalt, Tabelle importieren): es findet Spalten, Trennzeichen und Kodierung heraus und fragt, was es nicht wissen kann.</translation>
    </message>
</context>
<context>
    <name>CountBody</name>
    <message>
        <source>Worms counted</source>
        <translation>Gezählte Würmer</translation>
    </message>
    <message>
        <source>How many worms?</source>
        <translation>Wie viele Würmer?</translation>
    </message>
    <message>
        <source>In how much bed</source>
        <translation>In wie viel Bett</translation>
    </message>
    <message>
        <source>the volume that was searched; without it the count says little</source>
        <translation>das durchsuchte Volumen; ohne es sagt die Zahl wenig</translation>
    </message>
</context>
<context>
    <name>CoverBody</name>
    <message>
        <source>Amount</source>
        <translation>Menge</translation>
    </message>
    <message>
        <source>How much paper?</source>
        <translation>Wie viel Papier?</translation>
    </message>
    <message>
        <source>Of</source>
        <translation>Woraus</translation>
    </message>
    <message>
        <source>not noted; reckoned as about %1</source>
        <translation>nicht notiert; gerechnet wird mit etwa %1</translation>
    </message>
</context>
<context>
    <name>Dates</name>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>today</source>
        <translation>heute</translation>
    </message>
    <message>
        <source>tomorrow</source>
        <translation>morgen</translation>
    </message>
    <message>
        <source>since %1</source>
        <translation>seit %1</translation>
    </message>
    <message>
        <source>%1 – %2</source>
        <translation>%1 – %2</translation>
    </message>
    <message>
        <source>%1–%2</source>
        <translation>%1–%2</translation>
    </message>
    <message>
        <source>after %1</source>
        <translation>nach %1</translation>
    </message>
    <message>
        <source>%1 (%2)</source>
        <translation>%1 (%2)</translation>
    </message>
    <message>
        <source>%1 (%2 or later)</source>
        <translation>%1 (%2 oder später)</translation>
    </message>
    <message>
        <source>%1 d</source>
        <translation>%1 T.</translation>
    </message>
    <message numerus="yes">
        <source>%n day(s)</source>
        <translation>
            <numerusform>%n Tag</numerusform>
            <numerusform>%n Tage</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>DrainBody</name>
    <message>
        <source>Drained</source>
        <translation>Abgelassen</translation>
    </message>
    <message>
        <source>The sump</source>
        <translation>Die Auffangschale</translation>
    </message>
    <message>
        <source>is empty now</source>
        <translation>ist jetzt leer</translation>
    </message>
    <message>
        <source>still holds some</source>
        <translation>enthält noch etwas</translation>
    </message>
    <message>
        <source>Spigot</source>
        <translation>Ablaufhahn</translation>
    </message>
    <message>
        <source>stays as it is</source>
        <translation>bleibt, wie er ist</translation>
    </message>
    <message>
        <source>open from now on</source>
        <translation>offen von jetzt an</translation>
    </message>
    <message>
        <source>shut from now on</source>
        <translation>zu von jetzt an</translation>
    </message>
    <message>
        <source>Give the volume that was drained, or say how the spigot stands from now on.</source>
        <translation>Gib das abgelassene Volumen an, oder wie der Hahn von jetzt an steht.</translation>
    </message>
    <message>
        <source>it is open on that day</source>
        <translation>er ist an diesem Tag offen</translation>
    </message>
    <message>
        <source>it is shut on that day</source>
        <translation>er ist an diesem Tag zu</translation>
    </message>
</context>
<context>
    <name>DrainDoubt</name>
    <message>
        <source>%1 is more than can have run out: the sump holds %2. Is the amount right, and its unit?</source>
        <translation>%1 ist mehr, als abgelaufen sein kann: die Auffangschale fasst %2. Stimmt die Menge, und ihre Einheit?</translation>
    </message>
</context>
<context>
    <name>DueActs</name>
    <message>
        <source>%1: %2</source>
        <comment>stack, what is recorded</comment>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>feed %1</source>
        <comment>amount</comment>
        <translation>%1 füttern</translation>
    </message>
    <message>
        <source>%1 of paper</source>
        <comment>amount</comment>
        <translation>%1 Papier</translation>
    </message>
    <message>
        <source>water %1</source>
        <comment>amount</comment>
        <translation>%1 gießen</translation>
    </message>
    <message>
        <source>drain %1</source>
        <comment>amount</comment>
        <translation>%1 ablassen</translation>
    </message>
    <message>
        <source>flush with %1</source>
        <comment>amount</comment>
        <translation>mit %1 durchspülen</translation>
    </message>
    <message>
        <source>tray on top, %1 of %2</source>
        <comment>amount, bedding</comment>
        <translation>Etage obenauf, %1 %2</translation>
    </message>
    <message>
        <source>bottom tray lifted to the top, lid off</source>
        <translation>unterste Etage nach oben gehoben, Deckel ab</translation>
    </message>
    <message>
        <source>It weighs about %1. %2</source>
        <comment>a tray; what is advised for the lift</comment>
        <translation>Sie wiegt etwa %1. %2</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <comment>what was looked for, what was seen</comment>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>none</source>
        <comment>bits</comment>
        <translation>keine</translation>
    </message>
    <message>
        <source>1 in %1</source>
        <comment>of the tray is bits</comment>
        <translation>1 von %1</translation>
    </message>
    <message>
        <source>nothing left</source>
        <translation>nichts übrig</translation>
    </message>
    <message>
        <source>a quarter</source>
        <translation>ein Viertel</translation>
    </message>
    <message>
        <source>half</source>
        <translation>die Hälfte</translation>
    </message>
    <message>
        <source>three quarters</source>
        <translation>drei Viertel</translation>
    </message>
    <message>
        <source>few</source>
        <comment>worms</comment>
        <translation>wenige</translation>
    </message>
    <message>
        <source>some</source>
        <comment>worms</comment>
        <translation>einige</translation>
    </message>
    <message>
        <source>many</source>
        <comment>worms</comment>
        <translation>viele</translation>
    </message>
    <message>
        <source>1 crumbles</source>
        <translation>1 krümelt</translation>
    </message>
    <message>
        <source>2</source>
        <translation>2</translation>
    </message>
    <message>
        <source>3 moist</source>
        <translation>3 feucht</translation>
    </message>
    <message>
        <source>4</source>
        <translation>4</translation>
    </message>
    <message>
        <source>5 streams</source>
        <translation>5 rinnt</translation>
    </message>
    <message>
        <source>noted as done</source>
        <translation>als erledigt vermerkt</translation>
    </message>
    <message>
        <source>Done: %1</source>
        <comment>what was advised</comment>
        <translation>Erledigt: %1</translation>
    </message>
    <message>
        <source>bits of food or bedding</source>
        <translation>Stücke von Futter oder Einstreu</translation>
    </message>
    <message>
        <source>left of the last feeding</source>
        <translation>übrig von der letzten Fütterung</translation>
    </message>
    <message>
        <source>worms seen</source>
        <translation>gesehene Würmer</translation>
    </message>
    <message>
        <source>squeezed in the hand</source>
        <translation>in der Hand gedrückt</translation>
    </message>
    <message>
        <source>bed temperature</source>
        <translation>Temperatur des Betts</translation>
    </message>
    <message>
        <source>depth of castings</source>
        <translation>Tiefe des Humus</translation>
    </message>
</context>
<context>
    <name>EventBody</name>
    <message>
        <source>What</source>
        <translation>Was</translation>
    </message>
    <message>
        <source>What happened, in a word?</source>
        <translation>Was ist geschehen, in einem Wort?</translation>
    </message>
    <message>
        <source>%1, …</source>
        <translation>%1, …</translation>
    </message>
    <message>
        <source>%1 puts what may be wrong in order, by what is known of this stack</source>
        <translation>%1 ordnet, was nicht stimmen könnte, nach dem, was von diesem Stapel bekannt ist</translation>
    </message>
    <message>
        <source>Until</source>
        <translation>Bis</translation>
    </message>
</context>
<context>
    <name>Events</name>
    <message>
        <source>smell</source>
        <translation>Geruch</translation>
    </message>
    <message>
        <source>flies</source>
        <translation>Fliegen</translation>
    </message>
    <message>
        <source>mites</source>
        <translation>Milben</translation>
    </message>
    <message>
        <source>ants</source>
        <translation>Ameisen</translation>
    </message>
    <message>
        <source>escape</source>
        <translation>Flucht</translation>
    </message>
    <message>
        <source>dead worms</source>
        <translation>tote Würmer</translation>
    </message>
    <message>
        <source>mould</source>
        <translation>Schimmel</translation>
    </message>
    <message>
        <source>heat</source>
        <translation>Hitze</translation>
    </message>
    <message>
        <source>cold</source>
        <translation>Kälte</translation>
    </message>
    <message>
        <source>standing water</source>
        <translation>stehendes Wasser</translation>
    </message>
    <message>
        <source>sour bed</source>
        <translation>saures Bett</translation>
    </message>
    <message>
        <source>few worms</source>
        <translation>wenige Würmer</translation>
    </message>
    <message>
        <source>no castings</source>
        <translation>kein Humus</translation>
    </message>
    <message>
        <source>away</source>
        <translation>abwesend</translation>
    </message>
    <message>
        <source>second light-drying</source>
        <translation>zweites Trocknen im Licht</translation>
    </message>
    <message>
        <source>bait tray</source>
        <translation>Köderetage</translation>
    </message>
</context>
<context>
    <name>ExchangeText</name>
    <message>
        <source>a closing quote mark for each opening one</source>
        <translation>ein schließendes Anführungszeichen zu jedem öffnenden</translation>
    </message>
    <message>
        <source>quote marks only around a whole cell, and doubled inside it</source>
        <translation>Anführungszeichen nur um eine ganze Zelle, innen verdoppelt</translation>
    </message>
    <message>
        <source>text in UTF-8</source>
        <translation>Text in UTF-8</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation>%1 bis %2</translation>
    </message>
    <message>
        <source>above %1, at most %2</source>
        <translation>über %1, höchstens %2</translation>
    </message>
    <message>
        <source>nothing (%1)</source>
        <translation>nichts (%1)</translation>
    </message>
    <message>
        <source>%1 has no amount</source>
        <translation>%1 hat keine Menge</translation>
    </message>
    <message>
        <source>a plain decimal with a point, such as 0.35</source>
        <translation>eine einfache Dezimalzahl mit Punkt, etwa 0.35</translation>
    </message>
    <message>
        <source>a whole number, 0 to %1</source>
        <translation>eine ganze Zahl, 0 bis %1</translation>
    </message>
    <message>
        <source>%1 has no detail</source>
        <translation>%1 hat keine Einzelheit</translation>
    </message>
    <message>
        <source>key=value with the keys %1</source>
        <translation>key=value mit den Schlüsseln %1</translation>
    </message>
    <message>
        <source>= and a value</source>
        <translation>= und ein Wert</translation>
    </message>
    <message>
        <source>%1 once</source>
        <translation>%1 einmal</translation>
    </message>
    <message>
        <source>a whole number, %1 to %2</source>
        <translation>eine ganze Zahl, %1 bis %2</translation>
    </message>
    <message>
        <source>a date from 1900 to 2199, such as 2031-05-01</source>
        <translation>ein Datum von 1900 bis 2199, etwa 2031-05-01</translation>
    </message>
    <message>
        <source>16 digits of 0 to 9 and a to f, as given by an export</source>
        <translation>16 Stellen aus 0 bis 9 und a bis f, wie ein Export sie angibt</translation>
    </message>
    <message>
        <source>found «%1»; allowed: %2</source>
        <translation>„%1“ gefunden; erlaubt: %2</translation>
    </message>
    <message>
        <source>each column once</source>
        <translation>jede Spalte einmal</translation>
    </message>
    <message>
        <source>a header with each of %1</source>
        <translation>eine Kopfzeile mit jeder von %1</translation>
    </message>
    <message>
        <source>%1 cells: %2; there are %3</source>
        <translation>%1 Zellen: %2; da sind %3</translation>
    </message>
    <message>
        <source>a header with %1</source>
        <translation>eine Kopfzeile mit %1</translation>
    </message>
    <message>
        <source>one row</source>
        <translation>eine Zeile</translation>
    </message>
    <message>
        <source>a date and a time, such as 2031-05-01 18:30</source>
        <translation>Datum und Uhrzeit, etwa 2031-05-01 18:30</translation>
    </message>
    <message>
        <source>a temperature from %1 to %2</source>
        <translation>eine Temperatur von %1 bis %2</translation>
    </message>
    <message>
        <source>a share from 0 to 100 %</source>
        <translation>ein Anteil von 0 bis 100 %</translation>
    </message>
    <message>
        <source>Mean of what a logger read on this day (%1)</source>
        <translation>Mittel dessen, was ein Logger an diesem Tag gemessen hat (%1)</translation>
    </message>
    <message>
        <source>The entry names no stack.</source>
        <translation>Der Eintrag nennt keinen Stapel.</translation>
    </message>
    <message>
        <source>%1 has never been set up.</source>
        <translation>%1 wurde nie eingerichtet.</translation>
    </message>
    <message>
        <source>%1 was first set up on %2; nothing can be dated before that.</source>
        <translation>%1 wurde zuerst am %2 eingerichtet; davor kann nichts datiert werden.</translation>
    </message>
    <message>
        <source>%1 has been retired.</source>
        <translation>%1 wurde stillgelegt.</translation>
    </message>
    <message>
        <source>%1 is the name of a retired stack and cannot be used again.</source>
        <translation>%1 ist der Name eines stillgelegten Stapels und kann nicht wieder verwendet werden.</translation>
    </message>
    <message>
        <source>A stack cannot be called «%1»: no semicolon, no control character, and no blank at either end.</source>
        <translation>Ein Stapel kann nicht „%1“ heißen: kein Semikolon, kein Steuerzeichen und kein Leerzeichen an den Enden.</translation>
    </message>
    <message>
        <source>%1 has no slot %2 then; trays that stand: %3.</source>
        <translation>%1 hat dann keinen Platz %2; stehende Etagen: %3.</translation>
    </message>
    <message>
        <source>No tray of %1 is bedded then.</source>
        <translation>Keine Etage von %1 ist dann eingestreut.</translation>
    </message>
    <message>
        <source>The only tray of %1 is drying in the light then.</source>
        <translation>Die einzige Etage von %1 trocknet dann im Licht.</translation>
    </message>
    <message>
        <source>%1 has no tray in storage then; trays that stand: %2.</source>
        <translation>%1 hat dann keine Etage im Lager; stehende Etagen: %2.</translation>
    </message>
    <message>
        <source>A rotation needs two trays or more; trays of %1 that stand then: %2.</source>
        <translation>Ein Umlauf braucht zwei oder mehr Etagen; dann stehende Etagen von %1: %2.</translation>
    </message>
    <message>
        <source>No tray of %1 is drying then, so the harvest must say its slot.</source>
        <translation>Keine Etage von %1 trocknet dann, also muss die Ernte ihren Platz nennen.</translation>
    </message>
    <message>
        <source>The tray in slot %2 of %1 is not drying then.</source>
        <translation>Die Etage an Platz %2 von %1 trocknet nicht.</translation>
    </message>
    <message>
        <source>No tray of %1 is drying then.</source>
        <translation>Keine Etage von %1 trocknet dann.</translation>
    </message>
    <message>
        <source>Fewer trays cannot be owned than stand; trays of %1 that stand then: %2.</source>
        <translation>Es können nicht weniger Etagen vorhanden sein, als stehen; dann stehende Etagen von %1: %2.</translation>
    </message>
    <message>
        <source>Worms cannot be moved from %1 to itself.</source>
        <translation>Würmer können nicht von %1 in denselben Stapel umgesetzt werden.</translation>
    </message>
    <message>
        <source>The castings cannot be deeper than the tray, %1.</source>
        <translation>Der Humus kann nicht tiefer sein als die Etage, %1.</translation>
    </message>
    <message>
        <source>An own material belongs to the household and to no stack.</source>
        <translation>Ein eigenes Material gehört dem Haushalt und keinem Stapel.</translation>
    </message>
    <message>
        <source>«%1» is known neither to the table of materials nor as an own material.</source>
        <translation>„%1“ steht weder in der Tabelle der Materialien noch unter den eigenen.</translation>
    </message>
    <message>
        <source>The entry is not there any more.</source>
        <translation>Der Eintrag ist nicht mehr da.</translation>
    </message>
    <message>
        <source>Later entries that now fall to another batch: %1</source>
        <translation>Spätere Einträge, die nun zu einer anderen Charge gehören: %1</translation>
    </message>
    <message>
        <source>%1: a second species in this stack; from here on all its worms are reckoned as %2, not %3.</source>
        <translation>%1: eine zweite Art in diesem Stapel; von hier an werden alle seine Würmer als %2 gerechnet, nicht als %3.</translation>
    </message>
    <message>
        <source>1 to %1</source>
        <translation>1 bis %1</translation>
    </message>
    <message>
        <source>a stack that has been set up (there is none)</source>
        <translation>ein Stapel, der eingerichtet wurde (es gibt keinen)</translation>
    </message>
    <message>
        <source>a stack that has been set up: %1</source>
        <translation>ein Stapel, der eingerichtet wurde: %1</translation>
    </message>
    <message>
        <source>%1 or later, behind the first setup of %2</source>
        <translation>%1 oder später, nach der ersten Einrichtung von %2</translation>
    </message>
    <message>
        <source>a stack that is not retired</source>
        <translation>ein Stapel, der nicht stillgelegt ist</translation>
    </message>
    <message>
        <source>a name that no retired stack bears</source>
        <translation>ein Name, den kein stillgelegter Stapel trägt</translation>
    </message>
    <message>
        <source>a name without semicolon and control characters, without blanks around it</source>
        <translation>ein Name ohne Semikolon und Steuerzeichen, ohne Leerzeichen an den Enden</translation>
    </message>
    <message>
        <source>1 or nothing</source>
        <translation>1 oder nichts</translation>
    </message>
    <message>
        <source>1 to %1, or nothing</source>
        <translation>1 bis %1 oder nichts</translation>
    </message>
    <message>
        <source>none: no tray of %1 is bedded then</source>
        <translation>keine: dann ist keine Etage von %1 eingestreut</translation>
    </message>
    <message>
        <source>%1, said in full: the only tray is drying</source>
        <translation>%1, ausdrücklich genannt: die einzige Etage trocknet</translation>
    </message>
    <message>
        <source>%1: no tray is in storage</source>
        <translation>%1: keine Etage ist im Lager</translation>
    </message>
    <message>
        <source>%1, said in full: no tray is drying</source>
        <translation>%1, ausdrücklich genannt: keine Etage trocknet</translation>
    </message>
    <message>
        <source>a step that needs no drying tray: %1</source>
        <translation>ein Schritt, der keine trocknende Etage braucht: %1</translation>
    </message>
    <message>
        <source>a step that needs no second tray; trays that stand then: %1</source>
        <translation>ein Schritt, der keine zweite Etage braucht; dann stehende Etagen: %1</translation>
    </message>
    <message>
        <source>trays=%1 or more: so many stand then</source>
        <translation>trays=%1 oder mehr: so viele stehen dann</translation>
    </message>
    <message>
        <source>to= and the name of another stack</source>
        <translation>to= und der Name eines anderen Stapels</translation>
    </message>
    <message>
        <source>depth=0 to %1</source>
        <translation>depth=0 bis %1</translation>
    </message>
    <message>
        <source>nothing (an own material is of the household)</source>
        <translation>nichts (ein eigenes Material gehört dem Haushalt)</translation>
    </message>
    <message>
        <source>an entry that is there</source>
        <translation>ein Eintrag, den es gibt</translation>
    </message>
    <message>
        <source>%1 has no item</source>
        <translation>%1 hat keinen Gegenstand</translation>
    </message>
    <message>
        <source>the name of an own material, without blanks around it</source>
        <translation>der Name eines eigenen Materials, ohne Leerzeichen an den Enden</translation>
    </message>
    <message>
        <source>a volume, or spigot=open or spigot=shut in detail</source>
        <translation>ein Volumen, oder spigot=open oder spigot=shut in detail</translation>
    </message>
    <message>
        <source>at least one of depth, bits, left, worms</source>
        <translation>mindestens eines von depth, bits, left, worms</translation>
    </message>
    <message>
        <source>lid=on, lid=off</source>
        <translation>lid=on, lid=off</translation>
    </message>
    <message>
        <source>a word such as smell, flies, mites, escape, mould, away</source>
        <translation>ein Wort wie smell, flies, mites, escape, mould, away</translation>
    </message>
    <message>
        <source>a day not before the row&apos;s own date</source>
        <translation>ein Tag nicht vor dem Datum der Zeile</translation>
    </message>
    <message>
        <source>a text</source>
        <translation>ein Text</translation>
    </message>
    <message>
        <source>text without control characters</source>
        <translation>Text ohne Steuerzeichen</translation>
    </message>
    <message>
        <source>%1 is of the whole stack</source>
        <translation>%1 betrifft den ganzen Stapel</translation>
    </message>
    <message>
        <source>a whole number from 1 (bottom), or nothing</source>
        <translation>eine ganze Zahl ab 1 (unten), oder nichts</translation>
    </message>
    <message>
        <source>a date from 1900 to 2199, such as 2031-05-01 or 2031-05-01T18:30</source>
        <translation>ein Datum von 1900 bis 2199, etwa 2031-05-01 oder 2031-05-01T18:30</translation>
    </message>
    <message>
        <source>a row that leaves later entries possible; this one stands against entry %1 (%2): %3</source>
        <translation>eine Zeile, die spätere Einträge möglich lässt; diese steht gegen Eintrag %1 (%2): %3</translation>
    </message>
    <message>
        <source>This is not a table of text: it holds zero bytes. Save it as CSV and try again.</source>
        <translation>Das ist keine Tabelle aus Text: sie enthält Nullbytes. Sichere sie als CSV und versuche es noch einmal.</translation>
    </message>
    <message>
        <source>The file is empty.</source>
        <translation>Die Datei ist leer.</translation>
    </message>
    <message>
        <source>The first row, which names the columns, cannot be read: its quote marks are not in order.</source>
        <translation>Die erste Zeile, die die Spalten nennt, kann nicht gelesen werden: ihre Anführungszeichen passen nicht zusammen.</translation>
    </message>
    <message>
        <source>%1 cannot be read: %2</source>
        <translation>%1 kann nicht gelesen werden: %2</translation>
    </message>
    <message>
        <source>it is larger than %1 MB.</source>
        <translation>sie ist größer als %1 MB.</translation>
    </message>
    <message>
        <source>UTF-8</source>
        <translation>UTF-8</translation>
    </message>
    <message>
        <source>UTF-8 with a mark</source>
        <translation>UTF-8 mit Kennung</translation>
    </message>
    <message>
        <source>UTF-16</source>
        <translation>UTF-16</translation>
    </message>
    <message>
        <source>not UTF-8, so read as Latin-1</source>
        <translation>kein UTF-8, daher als Latin-1 gelesen</translation>
    </message>
    <message>
        <source>semicolon</source>
        <translation>Semikolon</translation>
    </message>
    <message>
        <source>tab</source>
        <translation>Tabulator</translation>
    </message>
    <message>
        <source>comma</source>
        <translation>Komma</translation>
    </message>
    <message>
        <source>date</source>
        <translation>Datum</translation>
    </message>
    <message>
        <source>time of day</source>
        <translation>Uhrzeit</translation>
    </message>
    <message>
        <source>stack</source>
        <translation>Stapel</translation>
    </message>
    <message>
        <source>what was done</source>
        <translation>was getan wurde</translation>
    </message>
    <message>
        <source>slot</source>
        <translation>Platz</translation>
    </message>
    <message>
        <source>amount</source>
        <translation>Menge</translation>
    </message>
    <message>
        <source>unit</source>
        <translation>Einheit</translation>
    </message>
    <message>
        <source>material or word</source>
        <translation>Material oder Wort</translation>
    </message>
    <message>
        <source>details</source>
        <translation>Einzelheiten</translation>
    </message>
    <message>
        <source>note</source>
        <translation>Notiz</translation>
    </message>
    <message>
        <source>rows that leave the entries of the journal possible</source>
        <translation>Zeilen, die die Einträge des Tagebuchs möglich lassen</translation>
    </message>
    <message>
        <source>line</source>
        <translation>Zeile</translation>
    </message>
    <message>
        <source>reason</source>
        <translation>Grund</translation>
    </message>
    <message>
        <source>%1 cells, as the first row has; there are %2</source>
        <translation>%1 Zellen wie in der ersten Zeile; da sind %2</translation>
    </message>
    <message>
        <source>a year of four digits, or the answer which century is meant</source>
        <translation>ein Jahr mit vier Stellen, oder die Antwort, welches Jahrhundert gemeint ist</translation>
    </message>
    <message>
        <source>a date that can be read in one way alone, or the answer which of day and month comes first</source>
        <translation>ein Datum, das sich nur auf eine Weise lesen lässt, oder die Antwort, ob Tag oder Monat zuerst kommt</translation>
    </message>
    <message>
        <source>a date from 1900 to 2199, such as 2031-05-01 or 2031-05-01 18:30</source>
        <translation>ein Datum von 1900 bis 2199, etwa 2031-05-01 oder 2031-05-01 18:30</translation>
    </message>
    <message>
        <source>the answer whether its mark is a decimal mark</source>
        <translation>die Antwort, ob ihr Zeichen ein Dezimalzeichen ist</translation>
    </message>
    <message>
        <source>a number with a comma as decimal mark, such as 0,35</source>
        <translation>eine Zahl mit Dezimalkomma, etwa 0,35</translation>
    </message>
    <message>
        <source>a number with a point as decimal mark, such as 0.35</source>
        <translation>eine Zahl mit Dezimalpunkt, etwa 0.35</translation>
    </message>
    <message>
        <source>a unit, or the answer in which unit the amounts are</source>
        <translation>eine Einheit, oder die Antwort, in welcher Einheit die Mengen sind</translation>
    </message>
    <message>
        <source>a number, such as 0.35</source>
        <translation>eine Zahl, etwa 0.35</translation>
    </message>
    <message>
        <source>%1 could not be written: %2. What was there before is unchanged.</source>
        <translation>%1 konnte nicht geschrieben werden: %2. Was vorher da war, ist unverändert.</translation>
    </message>
    <message>
        <source>%1 was written, but the disk did not confirm it.</source>
        <translation>%1 wurde geschrieben, aber die Platte hat es nicht bestätigt.</translation>
    </message>
    <message>
        <source>at least one of bin, air, rh, moisture, squeeze, ph, sump</source>
        <translation>mindestens eines von bin, air, rh, moisture, squeeze, ph, sump</translation>
    </message>
    <message>
        <source>%1 is a household file or another database, and was left as it is. Choose another name.</source>
        <translation>%1 ist eine Haushaltsdatei oder eine andere Datenbank und blieb, wie sie ist. Wähle einen anderen Namen.</translation>
    </message>
    <message>
        <source>an amount, which is missing</source>
        <translation>eine Menge; sie fehlt</translation>
    </message>
    <message>
        <source>«%1» of %2</source>
        <translation>„%1“ vom %2</translation>
    </message>
    <message>
        <source>«%1» of %2, %3</source>
        <translation>„%1“ vom %2, %3</translation>
    </message>
    <message>
        <source>%1 would not be possible any more: %2 Delete or change that entry first.</source>
        <translation>%1 wäre nicht mehr möglich: %2 Lösche oder ändere zuerst diesen Eintrag.</translation>
    </message>
    <message>
        <source>today or a day before: this day has not come</source>
        <translation>heute oder ein Tag davor: dieser Tag ist noch nicht gekommen</translation>
    </message>
    <message>
        <source>Taken as usual, since the imported table does not say it; put right what was otherwise</source>
        <translation>Als üblich angenommen, da die eingelesene Tabelle es nicht sagt; bitte berichtigen, was anders war</translation>
    </message>
    <message>
        <source>text in UTF-8; this may be Latin-1</source>
        <translation>Text in UTF-8; dies kann Latin-1 sein</translation>
    </message>
    <message>
        <source>text in UTF-16</source>
        <translation>Text in UTF-16</translation>
    </message>
    <message>
        <source>cells parted by commas (,); in this file semicolons (;) part them</source>
        <translation>Zellen durch Kommas (,) getrennt; in dieser Datei trennen sie Semikolons (;)</translation>
    </message>
    <message>
        <source>cells parted by commas (,); in this file tabs part them</source>
        <translation>Zellen durch Kommas (,) getrennt; in dieser Datei trennen sie Tabulatoren</translation>
    </message>
    <message>
        <source>a header with %1 as the first row; this one is an entry</source>
        <translation>eine Kopfzeile mit %1 als erste Zeile; diese ist ein Eintrag</translation>
    </message>
    <message>
        <source>column %1</source>
        <translation>Spalte %1</translation>
    </message>
</context>
<context>
    <name>FeedBody</name>
    <message>
        <source>Amount</source>
        <translation>Menge</translation>
    </message>
    <message>
        <source>How much was fed?</source>
        <translation>Wie viel wurde gefüttert?</translation>
    </message>
    <message>
        <source>Food</source>
        <translation>Futter</translation>
    </message>
    <message>
        <source>Side</source>
        <translation>Seite</translation>
    </message>
    <message>
        <source>not noted</source>
        <translation>nicht notiert</translation>
    </message>
    <message>
        <source>left</source>
        <translation>links</translation>
    </message>
    <message>
        <source>right</source>
        <translation>rechts</translation>
    </message>
    <message>
        <source>front</source>
        <translation>vorn</translation>
    </message>
    <message>
        <source>back</source>
        <translation>hinten</translation>
    </message>
    <message>
        <source>all over</source>
        <translation>überall</translation>
    </message>
    <message>
        <source>Covered with paper</source>
        <translation>Mit Papier abgedeckt</translation>
    </message>
    <message>
        <source>Cover</source>
        <translation>Abdeckung</translation>
    </message>
    <message>
        <source>How much paper?</source>
        <translation>Wie viel Papier?</translation>
    </message>
    <message>
        <source>Of</source>
        <translation>Woraus</translation>
    </message>
    <message>
        <source>about %1 by its bulk</source>
        <translation>etwa %1 nach Volumen</translation>
    </message>
</context>
<context>
    <name>FigureWords</name>
    <message>
        <source>%1 to %2</source>
        <comment>a range of numbers</comment>
        <translation>%1 bis %2</translation>
    </message>
    <message>
        <source>%1 %</source>
        <translation>%1 %</translation>
    </message>
    <message>
        <source>%1 cm</source>
        <translation>%1 cm</translation>
    </message>
    <message>
        <source>%1 mm</source>
        <translation>%1 mm</translation>
    </message>
    <message>
        <source>one day</source>
        <translation>ein Tag</translation>
    </message>
    <message>
        <source>%1 days</source>
        <translation>%1 Tage</translation>
    </message>
    <message>
        <source>%1 months</source>
        <translation>%1 Monate</translation>
    </message>
    <message>
        <source>%1 °C</source>
        <translation>%1 °C</translation>
    </message>
    <message>
        <source>%1 mS/cm</source>
        <translation>%1 mS/cm</translation>
    </message>
    <message>
        <source>%1 kg/m²</source>
        <translation>%1 kg/m²</translation>
    </message>
    <message>
        <source>%1 kg/m³</source>
        <translation>%1 kg/m³</translation>
    </message>
    <message>
        <source>%1 g/L</source>
        <translation>%1 g/L</translation>
    </message>
    <message>
        <source>%1°</source>
        <translation>%1°</translation>
    </message>
    <message>
        <source>%1 : 1</source>
        <translation>%1 : 1</translation>
    </message>
    <message>
        <source>published</source>
        <translation>veröffentlicht</translation>
    </message>
    <message>
        <source>second hand</source>
        <translation>aus zweiter Hand</translation>
    </message>
    <message>
        <source>memory</source>
        <translation>aus dem Gedächtnis</translation>
    </message>
    <message>
        <source>common practice</source>
        <translation>übliche Praxis</translation>
    </message>
    <message>
        <source>ours</source>
        <translation>eigene Festlegung</translation>
    </message>
</context>
<context>
    <name>Figures</name>
    <message>
        <source>Worms for a first tray</source>
        <translation>Würmer für eine erste Etage</translation>
    </message>
    <message>
        <source>Bedding of a new tray, laid</source>
        <translation>Einstreu einer neuen Etage, eingelegt</translation>
    </message>
    <message>
        <source>Days between feedings</source>
        <translation>Tage zwischen Fütterungen</translation>
    </message>
    <message>
        <source>Fresh food a day, of the mass of the worms</source>
        <translation>Frisches Futter am Tag, von der Masse der Würmer</translation>
    </message>
    <message>
        <source>First tray alone</source>
        <translation>Erste Etage allein</translation>
    </message>
    <message>
        <source>Castings before another tray</source>
        <translation>Humus vor einer weiteren Etage</translation>
    </message>
    <message>
        <source>Second tray alone on top, at least</source>
        <translation>Zweite Etage allein oben, mindestens</translation>
    </message>
    <message>
        <source>First harvest, days from the first bedding</source>
        <translation>Erste Ernte, Tage ab der ersten Einstreu</translation>
    </message>
    <message>
        <source>Between later harvests</source>
        <translation>Zwischen späteren Ernten</translation>
    </message>
    <message>
        <source>Water to paper, by weight</source>
        <translation>Wasser zu Papier, nach Gewicht</translation>
    </message>
    <message>
        <source>Bedding wetted, of what it holds</source>
        <translation>Angefeuchtete Einstreu, von dem, was sie hält</translation>
    </message>
    <message>
        <source>Moisture of a bed</source>
        <translation>Feuchte eines Betts</translation>
    </message>
    <message>
        <source>Moisture of a bed, best</source>
        <translation>Feuchte eines Betts, am besten</translation>
    </message>
    <message>
        <source>C:N of what is fed</source>
        <translation>C:N dessen, was gefüttert wird</translation>
    </message>
    <message>
        <source>C:N aimed at</source>
        <translation>Angestrebtes C:N</translation>
    </message>
    <message>
        <source>Comfortable temperatures</source>
        <translation>Angenehme Temperaturen</translation>
    </message>
    <message>
        <source>Growth stops below</source>
        <translation>Wachstum endet unter</translation>
    </message>
    <message>
        <source>Growth is fastest at</source>
        <translation>Wachstum am schnellsten bei</translation>
    </message>
    <message>
        <source>Growth stops above</source>
        <translation>Wachstum endet über</translation>
    </message>
    <message>
        <source>Worms die of heat from</source>
        <translation>Würmer sterben an Hitze ab</translation>
    </message>
    <message>
        <source>Worms die of cold near</source>
        <translation>Würmer sterben an Kälte nahe</translation>
    </message>
    <message>
        <source>Weight of a litre of moist castings</source>
        <translation>Gewicht eines Liters feuchten Humus</translation>
    </message>
    <message>
        <source>Worms on a floor, best</source>
        <translation>Würmer auf einem Boden, am besten</translation>
    </message>
    <message>
        <source>Ready: feed-to-cast at most</source>
        <translation>Reif: Futter zu Humus höchstens</translation>
    </message>
    <message>
        <source>Ready: castings at least</source>
        <translation>Reif: Humus mindestens</translation>
    </message>
    <message>
        <source>Nearly ready: feed-to-cast at most</source>
        <translation>Fast reif: Futter zu Humus höchstens</translation>
    </message>
    <message>
        <source>Filled: castings at least</source>
        <translation>Gefüllt: Humus mindestens</translation>
    </message>
    <message>
        <source>Filled: feed-to-cast at most</source>
        <translation>Gefüllt: Futter zu Humus höchstens</translation>
    </message>
    <message>
        <source>Room kept under the rim</source>
        <translation>Freier Platz unter dem Rand</translation>
    </message>
    <message>
        <source>Overdue after turn and ready</source>
        <translation>Überfällig nach Reihe und Reife</translation>
    </message>
    <message>
        <source>A tray is told ready at a chance of</source>
        <translation>Eine Etage gilt als reif ab einer Chance von</translation>
    </message>
    <message>
        <source>and no longer at</source>
        <translation>und nicht mehr ab</translation>
    </message>
    <message>
        <source>Light-drying</source>
        <translation>Trocknen im Licht</translation>
    </message>
    <message>
        <source>Worms left when castings are taken</source>
        <translation>Verbliebene Würmer, wenn Humus entnommen wird</translation>
    </message>
    <message>
        <source>Worms in the sump</source>
        <translation>Würmer in der Auffangschale</translation>
    </message>
    <message>
        <source>Days between drainings</source>
        <translation>Tage zwischen dem Ablassen</translation>
    </message>
    <message>
        <source>Drain before the sump is filled to</source>
        <translation>Ablassen, bevor die Auffangschale gefüllt ist bis</translation>
    </message>
    <message>
        <source>A stack can be left alone for</source>
        <translation>Ein Stapel kann allein bleiben für</translation>
    </message>
    <message>
        <source>Of a colony given away at once, at most</source>
        <translation>Von einem Bestand auf einmal weggegeben, höchstens</translation>
    </message>
    <message>
        <source>A colony doubles in</source>
        <translation>Ein Bestand verdoppelt sich in</translation>
    </message>
    <message>
        <source>Dry matter put in for one of castings</source>
        <translation>Eingebrachte Trockenmasse je Teil Humus</translation>
    </message>
    <message>
        <source>Cocoons of a worm in a week</source>
        <translation>Kokons eines Wurms in einer Woche</translation>
    </message>
    <message>
        <source>A cocoon hatches after</source>
        <translation>Ein Kokon schlüpft nach</translation>
    </message>
    <message>
        <source>Young of a cocoon</source>
        <translation>Junge aus einem Kokon</translation>
    </message>
    <message>
        <source>Second light-drying after</source>
        <translation>Zweites Trocknen im Licht nach</translation>
    </message>
    <message>
        <source>A bait tray stands for</source>
        <translation>Eine Köderetage steht für</translation>
    </message>
    <message>
        <source>Castings in a potting mix, by volume</source>
        <translation>Humus in Topferde, nach Volumen</translation>
    </message>
    <message>
        <source>Castings in a potting mix, at most</source>
        <translation>Humus in Topferde, höchstens</translation>
    </message>
    <message>
        <source>Depth of a top-dressing</source>
        <translation>Tiefe einer Kopfdüngung</translation>
    </message>
    <message>
        <source>Top-dressing again after</source>
        <translation>Kopfdüngung wieder nach</translation>
    </message>
    <message>
        <source>Mesh of a sieve</source>
        <translation>Maschenweite eines Siebs</translation>
    </message>
    <message>
        <source>Moisture of stored castings</source>
        <translation>Feuchte von gelagertem Humus</translation>
    </message>
    <message>
        <source>Castings keep for</source>
        <translation>Humus hält sich</translation>
    </message>
    <message>
        <source>Bulk of castings, dry</source>
        <translation>Schüttdichte des Humus, trocken</translation>
    </message>
    <message>
        <source>Moisture of castings as taken</source>
        <translation>Feuchte des Humus bei der Entnahme</translation>
    </message>
    <message>
        <source>Strength of leachate</source>
        <translation>Stärke des Sickerwassers</translation>
    </message>
    <message>
        <source>Strength harmless to worms</source>
        <translation>Für Würmer harmlose Stärke</translation>
    </message>
    <message>
        <source>Strength harmful to worms</source>
        <translation>Für Würmer schädliche Stärke</translation>
    </message>
    <message>
        <source>Salts for each mS/cm</source>
        <translation>Salze je mS/cm</translation>
    </message>
    <message>
        <source>Diluted for young plants</source>
        <translation>Verdünnt für junge Pflanzen</translation>
    </message>
    <message>
        <source>Diluted for grown plants</source>
        <translation>Verdünnt für erwachsene Pflanzen</translation>
    </message>
    <message>
        <source>Strength of tap water</source>
        <translation>Stärke von Leitungswasser</translation>
    </message>
    <message>
        <source>Use leachate within</source>
        <translation>Sickerwasser verbrauchen innerhalb von</translation>
    </message>
    <message>
        <source>Lifting: weight at the best posture</source>
        <translation>Heben: Gewicht in der besten Haltung</translation>
    </message>
    <message>
        <source>Lifting: reach of the best posture</source>
        <translation>Heben: Reichweite der besten Haltung</translation>
    </message>
    <message>
        <source>Lifting: farthest reach</source>
        <translation>Heben: größte Reichweite</translation>
    </message>
    <message>
        <source>Lifting: height of the best posture</source>
        <translation>Heben: Höhe der besten Haltung</translation>
    </message>
    <message>
        <source>Lifting: lost for each cm of height beside it</source>
        <translation>Heben: Verlust je cm Höhe daneben</translation>
    </message>
    <message>
        <source>Lifting: greatest height</source>
        <translation>Heben: größte Höhe</translation>
    </message>
    <message>
        <source>Lifting: least travel reckoned</source>
        <translation>Heben: kleinster gerechneter Weg</translation>
    </message>
    <message>
        <source>Lifting: share that travel leaves</source>
        <translation>Heben: Anteil, den der Weg lässt</translation>
    </message>
    <message>
        <source>Lifting: travel at which the rest is lost</source>
        <translation>Heben: Weg, bei dem der Rest verloren ist</translation>
    </message>
    <message>
        <source>Lifting: farthest travel</source>
        <translation>Heben: weitester Weg</translation>
    </message>
    <message>
        <source>Lifting: lost for each degree of twist</source>
        <translation>Heben: Verlust je Grad Drehung</translation>
    </message>
    <message>
        <source>Lifting: greatest twist</source>
        <translation>Heben: größte Drehung</translation>
    </message>
    <message>
        <source>Lifting: a rim for a grip, held low</source>
        <translation>Heben: ein Rand als Griff, tief gehalten</translation>
    </message>
    <message>
        <source>Lifting: a poor grip</source>
        <translation>Heben: ein schlechter Griff</translation>
    </message>
    <message>
        <source>Lifting: from the ankles to a box</source>
        <translation>Heben: von den Knöcheln auf eine Kiste</translation>
    </message>
    <message>
        <source>Weight of an empty tray</source>
        <translation>Gewicht einer leeren Etage</translation>
    </message>
    <message>
        <source>Sour below a pH of</source>
        <translation>Sauer unter einem pH von</translation>
    </message>
    <message>
        <source>Calcium carbonate for a sour bed, on a square metre</source>
        <translation>Calciumcarbonat für ein saures Bett, je Quadratmeter</translation>
    </message>
    <message>
        <source>From egg to fly</source>
        <translation>Vom Ei zur Fliege</translation>
    </message>
    <message>
        <source>Members of the ensemble</source>
        <translation>Mitglieder des Ensembles</translation>
    </message>
    <message>
        <source>Share of what is possible that a range holds</source>
        <translation>Anteil des Möglichen, den ein Bereich enthält</translation>
    </message>
    <message>
        <source>Time in which parameters go back to their ranges</source>
        <translation>Zeit, in der Parameter zu ihren Bereichen zurückkehren</translation>
    </message>
    <message>
        <source>How fast a mix softens: temperature of the bed</source>
        <translation>Wie schnell eine Mischung weich wird: Temperatur des Betts</translation>
    </message>
    <message>
        <source>How fast a mix softens: worms in the bed</source>
        <translation>Wie schnell eine Mischung weich wird: Würmer im Bett</translation>
    </message>
    <message>
        <source>Mix: moisture this near to the aim will do</source>
        <translation>Mischung: so nahe am Ziel genügt die Feuchte</translation>
    </message>
    <message>
        <source>Mix: most that is added, times the mix</source>
        <translation>Mischung: höchste Zugabe, das Wievielfache der Mischung</translation>
    </message>
    <message>
        <source>A bed through the year, as proposed: indoors</source>
        <translation>Ein Bett übers Jahr, wie vorgeschlagen: drinnen</translation>
    </message>
    <message>
        <source>A bed through the year, as proposed: garage, shed or porch</source>
        <translation>Ein Bett übers Jahr, wie vorgeschlagen: Garage, Schuppen oder Veranda</translation>
    </message>
    <message>
        <source>A bed through the year, as proposed: outdoors</source>
        <translation>Ein Bett übers Jahr, wie vorgeschlagen: draußen</translation>
    </message>
</context>
<context>
    <name>FlushBody</name>
    <message>
        <source>Water poured</source>
        <translation>Gegossenes Wasser</translation>
    </message>
    <message>
        <source>How much water went through?</source>
        <translation>Wie viel Wasser lief durch?</translation>
    </message>
    <message>
        <source>spigot shut, water through, everything drained at once</source>
        <translation>Hahn zu, Wasser durch, alles auf einmal ablassen</translation>
    </message>
    <message>
        <source>Drained</source>
        <translation>Abgelassen</translation>
    </message>
</context>
<context>
    <name>FoodDoubt</name>
    <message>
        <source>That is %1, and the stack takes no more food today, for what was given these days: it takes more within the week.</source>
        <translation>Das sind %1, und der Stapel verträgt heute kein Futter mehr, wegen dessen, was er in diesen Tagen bekam: im Lauf der Woche wieder.</translation>
    </message>
    <message>
        <source>That is %1, and the stack takes no more food this week.</source>
        <translation>Das sind %1, und der Stapel verträgt in dieser Woche kein Futter mehr.</translation>
    </message>
    <message>
        <source>That is %1. The stack takes at most %2 today, for what was given these days: more within the week.</source>
        <translation>Das sind %1. Der Stapel verträgt heute höchstens %2, wegen dessen, was er in diesen Tagen bekam: im Lauf der Woche mehr.</translation>
    </message>
    <message>
        <source>That is %1. The stack takes at most %2 this week.</source>
        <translation>Das sind %1. Der Stapel verträgt in dieser Woche höchstens %2.</translation>
    </message>
    <message>
        <source>That is %1, and nothing more finds room in the tray: look at the amount and its unit.</source>
        <translation>Das sind %1, und in der Etage ist für nichts mehr Platz: sieh nach Menge und Einheit.</translation>
    </message>
    <message>
        <source>That is %1. Only about %2 find room in the tray, which holds %3 in all: look at the amount and its unit.</source>
        <translation>Das sind %1. Nur etwa %2 haben in der Etage Platz, die insgesamt %3 fasst: sieh nach Menge und Einheit.</translation>
    </message>
    <message>
        <source>By the estimates food is better left out now. %1</source>
        <translation>Nach den Schätzungen sollte jetzt kein Futter hinein. %1</translation>
    </message>
</context>
<context>
    <name>FormKinds</name>
    <message>
        <source>Feed</source>
        <translation>Füttern</translation>
    </message>
    <message>
        <source>Cover</source>
        <translation>Abdeckung</translation>
    </message>
    <message>
        <source>Water</source>
        <translation>Gießen</translation>
    </message>
    <message>
        <source>Unwritten routine</source>
        <translation>Ungeschriebene Gewohnheit</translation>
    </message>
    <message>
        <source>Drain</source>
        <translation>Ablassen</translation>
    </message>
    <message>
        <source>Flush</source>
        <translation>Durchspülen</translation>
    </message>
    <message>
        <source>Reading</source>
        <translation>Messwert</translation>
    </message>
    <message>
        <source>Check a tray</source>
        <translation>In eine Etage schauen</translation>
    </message>
    <message>
        <source>Weigh worms</source>
        <translation>Würmer wiegen</translation>
    </message>
    <message>
        <source>Count worms</source>
        <translation>Würmer zählen</translation>
    </message>
    <message>
        <source>Weigh a tray</source>
        <translation>Etage wiegen</translation>
    </message>
    <message>
        <source>Lift the bottom tray</source>
        <translation>Unterste Etage heben</translation>
    </message>
    <message>
        <source>Loosen the castings</source>
        <translation>Humus lockern</translation>
    </message>
    <message>
        <source>Lid</source>
        <translation>Deckel</translation>
    </message>
    <message>
        <source>Harvest</source>
        <translation>Ernten</translation>
    </message>
    <message>
        <source>Add a tray</source>
        <translation>Etage hinzufügen</translation>
    </message>
    <message>
        <source>Add bedding</source>
        <translation>Einstreu hinzufügen</translation>
    </message>
    <message>
        <source>Put worms in</source>
        <translation>Würmer einsetzen</translation>
    </message>
    <message>
        <source>Take worms out</source>
        <translation>Würmer entnehmen</translation>
    </message>
    <message>
        <source>Move worms</source>
        <translation>Würmer umsetzen</translation>
    </message>
    <message>
        <source>Something happened</source>
        <translation>Etwas ist geschehen</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Notiz</translation>
    </message>
    <message>
        <source>Retire the stack</source>
        <translation>Stapel stilllegen</translation>
    </message>
    <message>
        <source>Change the stack</source>
        <translation>Stapel ändern</translation>
    </message>
    <message>
        <source>Own material</source>
        <translation>Eigenes Material</translation>
    </message>
    <message>
        <source>feeding</source>
        <translation>Fütterung</translation>
    </message>
    <message>
        <source>cover</source>
        <translation>Abdeckung</translation>
    </message>
    <message>
        <source>watering</source>
        <translation>Gießen</translation>
    </message>
    <message>
        <source>routine</source>
        <translation>Gewohnheit</translation>
    </message>
    <message>
        <source>drainage</source>
        <translation>Ablass</translation>
    </message>
    <message>
        <source>flush</source>
        <translation>Durchspülung</translation>
    </message>
    <message>
        <source>reading</source>
        <translation>Messwert</translation>
    </message>
    <message>
        <source>look into a tray</source>
        <translation>Blick in eine Etage</translation>
    </message>
    <message>
        <source>weighing of worms</source>
        <translation>Wiegen der Würmer</translation>
    </message>
    <message>
        <source>count of worms</source>
        <translation>Zählen der Würmer</translation>
    </message>
    <message>
        <source>weight of a tray</source>
        <translation>Gewicht der Etage</translation>
    </message>
    <message>
        <source>lift of the bottom tray</source>
        <translation>Heben der untersten Etage</translation>
    </message>
    <message>
        <source>loosening</source>
        <translation>Lockern</translation>
    </message>
    <message>
        <source>lid</source>
        <translation>Deckel</translation>
    </message>
    <message>
        <source>harvest</source>
        <translation>Ernte</translation>
    </message>
    <message>
        <source>new tray</source>
        <translation>neue Etage</translation>
    </message>
    <message>
        <source>bedding</source>
        <translation>Einstreu</translation>
    </message>
    <message>
        <source>worms put in</source>
        <translation>eingesetzte Würmer</translation>
    </message>
    <message>
        <source>worms taken out</source>
        <translation>entnommene Würmer</translation>
    </message>
    <message>
        <source>worms moved</source>
        <translation>umgesetzte Würmer</translation>
    </message>
    <message>
        <source>event</source>
        <translation>Ereignis</translation>
    </message>
    <message>
        <source>note</source>
        <translation>Notiz</translation>
    </message>
    <message>
        <source>end of the stack</source>
        <translation>Ende des Stapels</translation>
    </message>
    <message>
        <source>change of the stack</source>
        <translation>Änderung des Stapels</translation>
    </message>
    <message>
        <source>own material</source>
        <translation>eigenes Material</translation>
    </message>
</context>
<context>
    <name>Formats</name>
    <message>
        <source>%1&#xa0;%2</source>
        <translation>%1&#xa0;%2</translation>
    </message>
    <message>
        <source>%1 (%2–%3)</source>
        <translation>%1 (%2–%3)</translation>
    </message>
    <message>
        <source>fl oz</source>
        <translation>fl oz</translation>
    </message>
    <message>
        <source>%1–%2</source>
        <translation>%1–%2</translation>
    </message>
    <message>
        <source>%1 of %2</source>
        <translation>%1 von %2</translation>
    </message>
    <message>
        <source>in</source>
        <translation>in</translation>
    </message>
    <message>
        <source>cm</source>
        <translation>cm</translation>
    </message>
    <message>
        <source>°F</source>
        <translation>°F</translation>
    </message>
    <message>
        <source>°C</source>
        <translation>°C</translation>
    </message>
    <message>
        <source>%1&#xa0;%</source>
        <translation>%1&#xa0;%</translation>
    </message>
    <message>
        <source>%1/wk</source>
        <translation>%1/Wo.</translation>
    </message>
    <message>
        <source>no castings yet</source>
        <translation>noch kein Humus</translation>
    </message>
    <message>
        <source>%1 : 1</source>
        <translation>%1 : 1</translation>
    </message>
    <message>
        <source>sq ft</source>
        <translation>sq ft</translation>
    </message>
    <message>
        <source>m²</source>
        <translation>m²</translation>
    </message>
    <message>
        <source>L/m²</source>
        <translation>L/m²</translation>
    </message>
    <message>
        <source>gal/sq ft</source>
        <translation>gal/sq ft</translation>
    </message>
    <message>
        <source>lb/cu ft</source>
        <translation>lb/cu ft</translation>
    </message>
    <message>
        <source>kg/m³</source>
        <translation>kg/m³</translation>
    </message>
    <message>
        <source>lb/sq ft</source>
        <translation>lb/sq ft</translation>
    </message>
    <message>
        <source>kg/m²</source>
        <translation>kg/m²</translation>
    </message>
    <message>
        <source>oz/gal</source>
        <translation>oz/gal</translation>
    </message>
    <message>
        <source>g/L</source>
        <translation>g/L</translation>
    </message>
    <message>
        <source>oz/d</source>
        <translation>oz/d</translation>
    </message>
    <message>
        <source>g/d</source>
        <translation>g/d</translation>
    </message>
    <message>
        <source>cup</source>
        <comment>unit of volume, one of it</comment>
        <translation>Tasse</translation>
    </message>
    <message>
        <source>cup</source>
        <comment>unit of volume, behind 0.5 or 1.75</comment>
        <translation>Tassen</translation>
    </message>
    <message>
        <source>cup</source>
        <comment>unit of volume, behind 2 and more</comment>
        <translation>Tassen</translation>
    </message>
</context>
<context>
    <name>GainWords</name>
    <message>
        <source>%1 sooner</source>
        <translation>%1 früher</translation>
    </message>
    <message>
        <source>%1 later</source>
        <translation>%1 später</translation>
    </message>
    <message>
        <source>%1 heavier</source>
        <translation>%1 schwerer</translation>
    </message>
    <message>
        <source>%1 lighter</source>
        <translation>%1 leichter</translation>
    </message>
    <message>
        <source>%1 (up to %2)</source>
        <comment>no difference, 3 days sooner</comment>
        <translation>%1 (bis zu %2)</translation>
    </message>
    <message>
        <source>%1 (from %2 to %3)</source>
        <comment>3 days sooner, 1 day later, 9 days sooner</comment>
        <translation>%1 (von %2 bis %3)</translation>
    </message>
    <message>
        <source>from %1 to %2</source>
        <comment>10 g lighter, 30 g heavier</comment>
        <translation>von %1 bis %2</translation>
    </message>
    <message>
        <source>waiting costs %1 of worms</source>
        <translation>das Warten kostet %1 Würmer</translation>
    </message>
    <message>
        <source>waiting leaves %1 more of worms</source>
        <translation>das Warten lässt %1 mehr Würmer</translation>
    </message>
    <message>
        <source>from %1 more to %2 fewer</source>
        <comment>amounts of worms</comment>
        <translation>von %1 mehr bis %2 weniger</translation>
    </message>
    <message>
        <source>waiting costs %1 of worms (%2)</source>
        <comment>amount, range in words</comment>
        <translation>das Warten kostet %1 Würmer (%2)</translation>
    </message>
    <message>
        <source>waiting leaves %1 more of worms (%2)</source>
        <comment>amount, range in words</comment>
        <translation>das Warten lässt %1 mehr Würmer (%2)</translation>
    </message>
    <message numerus="yes">
        <source>%n day(s) of lifting fewer</source>
        <translation>
            <numerusform>%n Tag mit Heben weniger</numerusform>
            <numerusform>%n Tage mit Heben weniger</numerusform>
        </translation>
    </message>
    <message>
        <source>Gathered: %1, for %2 of delay in all; none waits more than %3 for others.</source>
        <translation>Gesammelt: %1, bei zusammen %2 Aufschub; keine wartet länger als %3 auf andere.</translation>
    </message>
    <message>
        <source>Gathered: %1, and none waits.</source>
        <translation>Gesammelt: %1, und keine wartet.</translation>
    </message>
    <message>
        <source>Nothing can be gathered: harvests of two stacks meet, and only one stack has any.</source>
        <translation>Nichts lässt sich sammeln: zusammenkommen können Ernten zweier Stapel, und nur ein Stapel hat welche.</translation>
    </message>
    <message>
        <source>Nothing is left to be gathered: the harvests meet as they come.</source>
        <translation>Nichts bleibt zu sammeln: die Ernten fallen von selbst zusammen.</translation>
    </message>
    <message>
        <source>Nothing can be gathered: the two harvests that come nearest to each other are %1 apart, and none may wait more than %2.</source>
        <translation>Nichts lässt sich sammeln: die beiden Ernten, die einander am nächsten kommen, liegen %1 auseinander, und keine darf länger als %2 warten.</translation>
    </message>
    <message>
        <source>Nothing is gathered: a day saved is worth %1 of delay here, and the wait, with what it holds up in its stack, would come to more.</source>
        <translation>Nichts wird gesammelt: ein gesparter Tag zählt hier %1 Aufschub, und das Warten käme mit allem, was es in seinem Stapel aufhält, auf mehr.</translation>
    </message>
</context>
<context>
    <name>Handbook</name>
    <message>
        <source>A stack is a pile of trays with holes in their floors, over a drainage tray, under a lid. Worms live in all of it. You feed the highest tray; what they have eaten stays behind as castings; when the top tray holds mostly castings, the next tray goes on top, and when there is no tray left, the bottom one is emptied.</source>
        <translation>Ein Stapel besteht aus Etagen mit Löchern im Boden, über einer Auffangschale, unter einem Deckel. Würmer leben in allem davon. Du fütterst die oberste Etage; was sie gefressen haben, bleibt als Humus zurück; enthält die oberste Etage vor allem Humus, kommt die nächste darauf, und ist keine mehr übrig, wird die unterste geleert.</translation>
    </message>
    <message>
        <source>Everything else follows from one rule: nobody can see inside a tray. What is known is what went in, what ran out and a look now and then. Write these down, and the program says how far each tray is, and how sure it is.</source>
        <translation>Alles andere folgt aus einer Regel: niemand kann in eine Etage hineinsehen. Bekannt ist, was hineinkam, was herauslief, und ab und zu ein Blick. Schreibe es auf, und das Programm sagt, wie weit jede Etage ist und wie sicher das ist.</translation>
    </message>
    <message>
        <source>Where to go from here</source>
        <translation>Wohin von hier aus</translation>
    </message>
    <message>
        <source>You have no stack yet: [[start|starting a stack]].</source>
        <translation>Du hast noch keinen Stapel: [[start|einen Stapel beginnen]].</translation>
    </message>
    <message>
        <source>You have one, and wonder what to do: [[feeding|feeding]], [[bedding|bedding]], [[water|water and drainage]].</source>
        <translation>Du hast einen und fragst dich, was zu tun ist: [[feeding|Füttern]], [[bedding|Einstreu]], [[water|Wasser und Ablass]].</translation>
    </message>
    <message>
        <source>A tray looks full: [[add-tray|when to add a tray]], [[harvest|rotation and harvest]], [[use|using castings and leachate]].</source>
        <translation>Eine Etage sieht voll aus: [[add-tray|wann eine Etage hinzukommt]], [[harvest|Umlauf und Ernte]], [[use|Humus und Sickerwasser verwenden]].</translation>
    </message>
    <message>
        <source>Something smells, flies or dies: [[symptoms|what may be wrong]], put in order by what is known of your stack.</source>
        <translation>Etwas riecht, fliegt oder stirbt: [[symptoms|was nicht stimmen könnte]], geordnet nach dem, was von deinem Stapel bekannt ist.</translation>
    </message>
    <message>
        <source>You want to know how the estimates are made: [[inside|what is inside the model]].</source>
        <translation>Du willst wissen, wie die Schätzungen entstehen: [[inside|was im Modell steckt]].</translation>
    </message>
    <message>
        <source>A first tray, some bedding and a few handfuls of worms are enough. Begin with one tray alone; the others wait.</source>
        <translation>Eine erste Etage, etwas Einstreu und ein paar Handvoll Würmer genügen. Beginne mit einer einzigen Etage; die anderen warten.</translation>
    </message>
    <message>
        <source>Stand the drainage tray level, with one tray on it. Leave the spigot open over a jar, or shut it and look at it each week.</source>
        <translation>Stelle die Auffangschale waagerecht auf, mit einer Etage darauf. Lass den Hahn über einem Glas offen, oder schließe ihn und sieh jede Woche nach.</translation>
    </message>
    <message>
        <source>Lay bedding {bedding-depth} deep, wetted like a wrung-out sponge. [[bedding|How much that is]].</source>
        <translation>Lege Einstreu {bedding-depth} tief ein, angefeuchtet wie ein ausgedrückter Schwamm. [[bedding|Wie viel das ist]].</translation>
    </message>
    <message>
        <source>Put in {stock} of composting worms. They go down by themselves when it is light.</source>
        <translation>Setze {stock} Kompostwürmer ein. Sie wandern von selbst nach unten, wenn es hell ist.</translation>
    </message>
    <message>
        <source>Feed a little after a day or two, under paper. Close the lid.</source>
        <translation>Füttere nach ein oder zwei Tagen ein wenig, unter Papier. Schließe den Deckel.</translation>
    </message>
    <message>
        <source>A small stock is no mistake. Everything takes longer: the first tray stays alone for {first-tray-alone}, and with few worms nearer to the end of that.</source>
        <translation>Wenige Würmer sind kein Fehler. Alles dauert länger: die erste Etage bleibt {first-tray-alone} allein, mit wenigen Würmern eher bis zum Ende dieser Zeit.</translation>
    </message>
    <message>
        <source>The first weeks</source>
        <translation>Die ersten Wochen</translation>
    </message>
    <message>
        <source>Some worms climb the walls in the first nights. Leave a light on and the lid closed; they settle.</source>
        <translation>Einige Würmer klettern in den ersten Nächten die Wände hoch. Lass ein Licht an und den Deckel zu; sie gewöhnen sich ein.</translation>
    </message>
    <message>
        <source>Nothing much seems to happen. Food has to soften before worms can eat it, and it softens faster the more worms there are.</source>
        <translation>Es scheint nicht viel zu geschehen. Futter muss weich werden, bevor Würmer es fressen können, und es wird umso schneller weich, je mehr Würmer da sind.</translation>
    </message>
    <message>
        <source>Bits of bedding stay visible for months. That is how it should be.</source>
        <translation>Reste der Einstreu bleiben monatelang sichtbar. So soll es sein.</translation>
    </message>
    <message>
        <source>Feed every {feed-every} or so, in the highest tray, no more than is nearly gone by the next time. Cover each feeding with paper.</source>
        <translation>Füttere etwa alle {feed-every} in die oberste Etage, nicht mehr, als bis zum nächsten Mal fast verschwunden ist. Decke jede Fütterung mit Papier ab.</translation>
    </message>
    <message>
        <source>Composting worms eat about {feed-share} of their own mass of fresh food a day when they have time to get at it. A new stack eats less: the colony is small, and what it eats has to soften first. The program reckons from your journal what each stack can take this week.</source>
        <translation>Kompostwürmer fressen am Tag etwa {feed-share} ihrer eigenen Masse an frischem Futter, wenn sie Zeit hatten, daranzukommen. Ein neuer Stapel frisst weniger: der Bestand ist klein, und was er frisst, muss erst weich werden. Das Programm errechnet aus deinem Tagebuch, was jeder Stapel in dieser Woche verträgt.</translation>
    </message>
    <message>
        <source>How to feed</source>
        <translation>Wie man füttert</translation>
    </message>
    <message>
        <source>Lift the paper and look. If most of the last feeding still lies there, wait.</source>
        <translation>Hebe das Papier und sieh nach. Liegt das meiste der letzten Fütterung noch da, warte.</translation>
    </message>
    <message>
        <source>Put the food in one place, in a flat layer, and change the side from time to time.</source>
        <translation>Gib das Futter an eine Stelle, in einer flachen Schicht, und wechsle ab und zu die Seite.</translation>
    </message>
    <message>
        <source>Cover it with a sheet or a handful of shredded paper. It keeps flies out, takes up wet and gives carbon.</source>
        <translation>Decke es mit einem Blatt oder einer Handvoll zerrissenem Papier ab. Das hält Fliegen fern, nimmt Nässe auf und gibt Kohlenstoff.</translation>
    </message>
    <message>
        <source>Write it down: one click on Feed takes the usual amount, for today.</source>
        <translation>Schreibe es auf: ein Klick auf „Füttern“ nimmt die übliche Menge, für heute.</translation>
    </message>
    <message>
        <source>What to feed</source>
        <translation>Was man füttert</translation>
    </message>
    <message>
        <source>Vegetable and fruit scraps, coffee grounds, tea leaves, crushed eggshell. Cut or frozen and thawed scraps soften faster. The whole list, each with its reason, is on the Materials page.</source>
        <translation>Reste von Gemüse und Obst, Kaffeesatz, Teeblätter, zerdrückte Eierschalen. Geschnittene oder gefrorene und aufgetaute Reste werden schneller weich. Die ganze Liste, jeweils mit Grund, steht auf der Materialseite.</translation>
    </message>
    <message>
        <source>Too much food harms in three ways: it takes the air while it rots, it heats, and it sinks together and holds water. A stack that was fed too little loses nothing but time.</source>
        <translation>Zu viel Futter schadet auf drei Weisen: es nimmt die Luft, während es fault, es wird warm, und es sackt zusammen und hält Wasser. Ein Stapel, der zu wenig bekam, verliert nur Zeit.</translation>
    </message>
    <message>
        <source>A bed gone sour (a sharp smell, pH below {sour-below}): stop feeding, loosen it, and strew {lime} of calcium carbonate or crushed eggshell over a square metre, once.</source>
        <translation>Ein sauer gewordenes Bett (scharfer Geruch, pH unter {sour-below}): nicht mehr füttern, lockern und einmal {lime} Calciumcarbonat oder zerdrückte Eierschale auf einen Quadratmeter streuen.</translation>
    </message>
    <message>
        <source>Bedding is the house of the worms and half of their food: shredded cardboard or paper, leaves, coir, shavings. A new tray takes a layer of {bedding-depth}.</source>
        <translation>Einstreu ist das Haus der Würmer und die Hälfte ihres Futters: zerrissene Pappe oder Papier, Laub, Kokosfaser, Späne. Eine neue Etage bekommt eine Schicht von {bedding-depth}.</translation>
    </message>
    <message>
        <source>Shred it to finger width; whole sheets lie like a roof and let nothing through.</source>
        <translation>Zerreiße sie fingerbreit; ganze Blätter liegen wie ein Dach und lassen nichts durch.</translation>
    </message>
    <message>
        <source>Wet it until a handful, pressed hard, gives a few drops. Paper takes about {paper-water} of water by weight.</source>
        <translation>Feuchte sie an, bis eine fest gedrückte Handvoll ein paar Tropfen gibt. Papier nimmt etwa {paper-water} Wasser auf, nach Gewicht.</translation>
    </message>
    <message>
        <source>Lay it loosely. It settles to half its height in a week.</source>
        <translation>Lege sie locker ein. In einer Woche setzt sie sich auf halbe Höhe.</translation>
    </message>
    <message>
        <source>The Materials page reckons from floor and depth how much dry bedding and how many litres of water that is, for a tray of your stack.</source>
        <translation>Die Materialseite errechnet aus Boden und Tiefe, wie viel trockene Einstreu und wie viele Liter Wasser das für eine Etage deines Stapels sind.</translation>
    </message>
    <message>
        <source>Which one</source>
        <translation>Welche</translation>
    </message>
    <message>
        <source>Cardboard and paper soften within months and turn into castings.</source>
        <translation>Pappe und Papier werden in Monaten weich und zu Humus.</translation>
    </message>
    <message>
        <source>Leaves, straw: much the same, and they bring life of their own.</source>
        <translation>Laub und Stroh: etwa ebenso, und sie bringen eigenes Leben mit.</translation>
    </message>
    <message>
        <source>Coir and shavings hold air and water, and most of them stay: use them as they are or sift them out.</source>
        <translation>Kokosfaser und Späne halten Luft und Wasser, und das meiste davon bleibt: verwende sie, wie sie sind, oder siebe sie aus.</translation>
    </message>
    <message>
        <source>A good bed is wet and drips not: moisture of {moisture-range}, best {moisture-best}. Scraps are mostly water and often enough; coir and cardboard in a warm room need some.</source>
        <translation>Ein gutes Bett ist nass und tropft nicht: Feuchte {moisture-range}, am besten {moisture-best}. Küchenreste sind vor allem Wasser, und oft genügt das; Kokosfaser und Pappe in einem warmen Raum brauchen etwas.</translation>
    </message>
    <message>
        <source>How wet is it</source>
        <translation>Wie nass ist es</translation>
    </message>
    <message>
        <source>Press a handful hard. Nothing comes: too dry. A few drops: right. A stream: too wet.</source>
        <translation>Drücke eine Handvoll fest. Nichts kommt: zu trocken. Ein paar Tropfen: richtig. Ein Strahl: zu nass.</translation>
    </message>
    <message>
        <source>Dry, pale paper under the cover: too dry. Worms in the lid, a sour smell, a shining surface: too wet.</source>
        <translation>Trockenes, blasses Papier unter der Abdeckung: zu trocken. Würmer im Deckel, saurer Geruch, glänzende Oberfläche: zu nass.</translation>
    </message>
    <message>
        <source>Watering</source>
        <translation>Gießen</translation>
    </message>
    <message>
        <source>Pour slowly and all over. What is poured beyond what the trays hold runs into the sump within the hour, and the sump then says nothing about the bed.</source>
        <translation>Gieße langsam und überall. Was über das hinausgeht, was die Etagen halten, läuft binnen einer Stunde in die Auffangschale, und dann sagt die Schale nichts mehr über das Bett.</translation>
    </message>
    <message>
        <source>Better little and often than a flood.</source>
        <translation>Lieber wenig und oft als eine Flut.</translation>
    </message>
    <message>
        <source>Drainage</source>
        <translation>Ablass</translation>
    </message>
    <message>
        <source>With the spigot shut, drain every {drain-every}, and before the sump is at {full-sump}. With it open, empty the jar.</source>
        <translation>Bei geschlossenem Hahn alle {drain-every} ablassen, und bevor die Auffangschale bei {full-sump} steht. Bei offenem das Glas leeren.</translation>
    </message>
    <message>
        <source>Write down how much. What ran out is one of the few things that can be measured without digging.</source>
        <translation>Schreibe auf, wie viel. Was herauslief, ist eines der wenigen Dinge, die sich ohne Graben messen lassen.</translation>
    </message>
    <message>
        <source>Some worms swim in the sump, about {worms-in-sump} of them. That is normal: put them back into the top tray.</source>
        <translation>Einige Würmer schwimmen in der Auffangschale, etwa {worms-in-sump} von ihnen. Das ist normal: setze sie zurück in die oberste Etage.</translation>
    </message>
    <message>
        <source>If it smells or hardly runs, flush: spigot shut, water through, everything drained at once.</source>
        <translation>Riecht sie, oder läuft kaum etwas, dann durchspülen: Hahn zu, Wasser durch, alles auf einmal ablassen.</translation>
    </message>
    <message>
        <source>What runs out is leachate, no brewed tea. What it can be used for, and how far to dilute it, stands under [[use|using castings and leachate]].</source>
        <translation>Was herausläuft, ist Sickerwasser, kein angesetzter Tee. Wofür es taugt und wie weit es zu verdünnen ist, steht unter [[use|Humus und Sickerwasser verwenden]].</translation>
    </message>
    <message>
        <source>The stack in one page</source>
        <translation>Der Stapel auf einer Seite</translation>
    </message>
    <message>
        <source>overview basics worms trays begin</source>
        <translation>Überblick Grundlagen Würmer Etagen Anfang</translation>
    </message>
    <message>
        <source>Starting a stack</source>
        <translation>Einen Stapel beginnen</translation>
    </message>
    <message>
        <source>new first tray stock worms place</source>
        <translation>neu erste Etage Besatz Würmer Ort</translation>
    </message>
    <message>
        <source>Feeding</source>
        <translation>Füttern</translation>
    </message>
    <message>
        <source>food scraps amount how much cover overfed hungry</source>
        <translation>Futter Reste Menge wie viel Abdeckung überfüttert hungrig</translation>
    </message>
    <message>
        <source>Bedding</source>
        <translation>Einstreu</translation>
    </message>
    <message>
        <source>paper cardboard coir shavings leaves carbon C:N</source>
        <translation>Papier Pappe Kokosfaser Späne Laub Kohlenstoff C:N</translation>
    </message>
    <message>
        <source>Water and drainage</source>
        <translation>Wasser und Ablass</translation>
    </message>
    <message>
        <source>moisture wet dry sump spigot drain flush squeeze</source>
        <translation>Feuchte nass trocken Auffangschale Ablaufhahn ablassen durchspülen drücken</translation>
    </message>
    <message>
        <source>Behind the pages runs a model of the colony and its trays: food softens, worms eat what has softened, grow, lay and die, castings stay, water seeps down, the bed warms and breathes. It runs not once but {members} times, each with other parameters from the ranges below. What you write down weighs these members: those that agree with your journal count for more.</source>
        <translation>Hinter den Seiten läuft ein Modell des Bestands und seiner Etagen: Futter wird weich, Würmer fressen, was weich ist, wachsen, legen Kokons und sterben, Humus bleibt, Wasser sickert nach unten, das Bett wird warm und atmet. Es läuft nicht einmal, sondern {members} Mal, jedes Mal mit anderen Parametern aus den Bereichen unten. Was du aufschreibst, gewichtet diese Mitglieder: wer zu deinem Tagebuch passt, zählt mehr.</translation>
    </message>
    <message>
        <source>So every figure has a range. It holds {band-share} of what is still possible. A wide range is no fault of the page: it says that nobody can know it better from what was written down, and a look would narrow it.</source>
        <translation>Darum hat jede Zahl einen Bereich. Er enthält {band-share} dessen, was noch möglich ist. Ein weiter Bereich ist kein Fehler der Seite: er sagt, dass es aus dem Aufgeschriebenen niemand besser wissen kann, und ein Blick würde ihn enger machen.</translation>
    </message>
    <message>
        <source>How far to trust it</source>
        <translation>Wie weit man ihm trauen kann</translation>
    </message>
    <message>
        <source>The order of things, and which tray is ahead: well.</source>
        <translation>Der Reihenfolge der Dinge und welche Etage voraus ist: gut.</translation>
    </message>
    <message>
        <source>Dates months ahead: as a season, not as a day. Softening is known to a factor of two.</source>
        <translation>Daten in Monaten: als Jahreszeit, nicht als Tag. Das Weichwerden ist auf einen Faktor zwei bekannt.</translation>
    </message>
    <message>
        <source>Numbers of worms: within a factor, unless you weigh some.</source>
        <translation>Zahlen von Würmern: nur auf einen Faktor genau, es sei denn, du wiegst welche.</translation>
    </message>
    <message>
        <source>What it does not know: rot without air in a corner, mites, birds, a lid left open. Write such things down as events.</source>
        <translation>Was es nicht weiß: Fäulnis ohne Luft in einer Ecke, Milben, Vögel, ein offen gelassener Deckel. Schreibe solches als Ereignis auf.</translation>
    </message>
    <message>
        <source>A household&apos;s habits drift; parameters go back to their ranges with a time constant of {drift-days}, so that old years do not rule the new.</source>
        <translation>Die Gewohnheiten eines Haushalts ändern sich; Parameter kehren mit einer Zeitkonstante von {drift-days} zu ihren Bereichen zurück, damit alte Jahre nicht die neuen bestimmen.</translation>
    </message>
    <message>
        <source>Track record</source>
        <translation>Wie gut es bisher traf</translation>
    </message>
    <message>
        <source>Parameters, their ranges and what they rest on</source>
        <translation>Parameter, ihre Bereiche und worauf sie beruhen</translation>
    </message>
    <message>
        <source>Batch: one life of a tray, from its bedding to its harvest.</source>
        <translation>Charge: ein Leben einer Etage, von der Einstreu bis zur Ernte.</translation>
    </message>
    <message>
        <source>Bed: all that lies in the trays.</source>
        <translation>Bett: alles, was in den Etagen liegt.</translation>
    </message>
    <message>
        <source>Bedding: what a tray is begun with, paper, cardboard, coir, leaves.</source>
        <translation>Einstreu: womit eine Etage beginnt, Papier, Pappe, Kokosfaser, Laub.</translation>
    </message>
    <message>
        <source>Castings: what the worms leave behind; what you harvest.</source>
        <translation>Humus: was die Würmer zurücklassen; was du erntest.</translation>
    </message>
    <message>
        <source>C:N: parts of carbon to one of nitrogen, by mass.</source>
        <translation>C:N: Teile Kohlenstoff auf einen Teil Stickstoff, nach Masse.</translation>
    </message>
    <message>
        <source>Cocoon: the egg case of a worm; lemon-shaped, small as a pinhead.</source>
        <translation>Kokon: die Eihülle eines Wurms; zitronenförmig, klein wie ein Stecknadelkopf.</translation>
    </message>
    <message>
        <source>Colony: all worms of a stack.</source>
        <translation>Bestand: alle Würmer eines Stapels.</translation>
    </message>
    <message>
        <source>Conductivity: how well water carries a current; it rises with salts, in mS/cm.</source>
        <translation>Leitfähigkeit: wie gut Wasser Strom leitet; sie steigt mit den Salzen, in mS/cm.</translation>
    </message>
    <message>
        <source>Cover: paper laid on each feeding.</source>
        <translation>Abdeckung: Papier auf jeder Fütterung.</translation>
    </message>
    <message>
        <source>Dry matter: what is left when all water is gone.</source>
        <translation>Trockenmasse: was bleibt, wenn alles Wasser fort ist.</translation>
    </message>
    <message>
        <source>Feed-to-cast ratio: what could still be eaten in a tray, to its castings, both dry.</source>
        <translation>Futter zu Humus: was in einer Etage noch gefressen werden könnte, zu ihrem Humus, beides trocken.</translation>
    </message>
    <message>
        <source>Field capacity: the water that stays when the rest has drained off.</source>
        <translation>Feldkapazität: das Wasser, das bleibt, wenn der Rest abgelaufen ist.</translation>
    </message>
    <message>
        <source>Input-to-cast yield: dry matter put into a batch, to castings that came of it.</source>
        <translation>Ausbeute: in eine Charge eingebrachte Trockenmasse zum Humus, der daraus wurde.</translation>
    </message>
    <message>
        <source>Leachate: what has run through the trays into the sump.</source>
        <translation>Sickerwasser: was durch die Etagen in die Auffangschale lief.</translation>
    </message>
    <message>
        <source>Light-drying: a tray raised to the top, lid off, so that its worms go down.</source>
        <translation>Trocknen im Licht: eine nach oben gehobene Etage, Deckel ab, damit ihre Würmer nach unten wandern.</translation>
    </message>
    <message>
        <source>Member: one of the many runs of the model that the estimates are made of.</source>
        <translation>Mitglied: einer der vielen Läufe des Modells, aus denen die Schätzungen bestehen.</translation>
    </message>
    <message>
        <source>Ration: what the colony takes up, to what it needs to keep itself; above one it grows.</source>
        <translation>Ration: was der Bestand aufnimmt, zu dem, was er zum Erhalt braucht; über eins wächst er.</translation>
    </message>
    <message>
        <source>Reckoning: what the model and your journal make of each other.</source>
        <translation>Rechnung: was das Modell und dein Tagebuch gemeinsam ergeben.</translation>
    </message>
    <message>
        <source>Slot: a place in a stack; slot one is the bottom.</source>
        <translation>Platz: eine Stelle im Stapel; Platz eins ist unten.</translation>
    </message>
    <message>
        <source>Spigot: the tap of the drainage tray.</source>
        <translation>Ablaufhahn: der Hahn der Auffangschale.</translation>
    </message>
    <message>
        <source>Stack: trays over a drainage tray under a lid.</source>
        <translation>Stapel: Etagen über einer Auffangschale unter einem Deckel.</translation>
    </message>
    <message>
        <source>Sump: the drainage tray and what stands in it.</source>
        <translation>Auffangschale: die Schale unter den Etagen und was darin steht.</translation>
    </message>
    <message>
        <source>Turn: the moment when the top tray is filled, so that a tray is to be added or the bottom one harvested.</source>
        <translation>Reihe: der Moment, in dem die oberste Etage gefüllt ist, sodass eine hinzukommt oder die unterste geerntet wird.</translation>
    </message>
    <message>
        <source>The cautions that stand at the work itself, all in one place. They are the usual ones; local codes, your doctor and licensed trades come first. This program gives no medical advice.</source>
        <translation>Die Warnhinweise, die bei der Arbeit selbst stehen, alle an einem Ort. Es sind die üblichen; örtliche Vorschriften, deine Ärztin oder dein Arzt und zugelassene Fachleute gehen vor. Dieses Programm gibt keinen medizinischen Rat.</translation>
    </message>
    <message>
        <source>Every number of the handbook and of the sums on the Materials page is a row here. Published means that it was read in that source or in its abstract; memory means that it was not looked up; common practice has no source, it is what people do; ours is a judgement or a rule of this program.</source>
        <translation>Jede Zahl des Handbuchs und der Rechnungen auf der Materialseite ist hier eine Zeile. „Veröffentlicht“ heißt, dass sie in dieser Quelle oder deren Zusammenfassung gelesen wurde; „aus dem Gedächtnis“, dass sie nicht nachgeschlagen wurde; „übliche Praxis“ hat keine Quelle, so wird es gemacht; „eigene Festlegung“ ist ein Urteil oder eine Regel dieses Programms.</translation>
    </message>
    <message>
        <source>Materials name the source of each row on their own page; parameters of the model stand under [[inside|what is inside the model]].</source>
        <translation>Materialien nennen die Quelle jeder Zeile auf ihrer eigenen Seite; Parameter des Modells stehen unter [[inside|was im Modell steckt]].</translation>
    </message>
    <message>
        <source>What is inside the model</source>
        <translation>Was im Modell steckt</translation>
    </message>
    <message>
        <source>estimate uncertainty range trust parameters ensemble filter how</source>
        <translation>Schätzung Unsicherheit Bereich Vertrauen Parameter Ensemble Filter wie</translation>
    </message>
    <message>
        <source>Words</source>
        <translation>Wörter</translation>
    </message>
    <message>
        <source>glossary terms meaning</source>
        <translation>Glossar Begriffe Bedeutung</translation>
    </message>
    <message>
        <source>Cautions</source>
        <translation>Warnhinweise</translation>
    </message>
    <message>
        <source>safety health lifting electricity children pregnancy asthma</source>
        <translation>Sicherheit Gesundheit Heben Strom Kinder Schwangerschaft Asthma</translation>
    </message>
    <message>
        <source>Figures and sources</source>
        <translation>Zahlen und Quellen</translation>
    </message>
    <message>
        <source>literature reference numbers memory</source>
        <translation>Literatur Nachweis Zahlen Gedächtnis</translation>
    </message>
    <message>
        <source>The next tray goes on when the present one holds at least {castings-before-tray} of castings and most of its food is worked. Not earlier: worms follow food, and a colony spread thin over two trays finishes neither.</source>
        <translation>Die nächste Etage kommt darauf, wenn die jetzige mindestens {castings-before-tray} Humus enthält und ihr Futter größtenteils verarbeitet ist. Nicht früher: Würmer folgen dem Futter, und ein dünn über zwei Etagen verteilter Bestand macht keine fertig.</translation>
    </message>
    <message>
        <source>Look at the top tray: is there a finger&apos;s breadth of castings under the food?</source>
        <translation>Sieh in die oberste Etage: liegt unter dem Futter eine Fingerbreite Humus?</translation>
    </message>
    <message>
        <source>Level the surface, so that it touches the holes of the new tray.</source>
        <translation>Ebne die Oberfläche, damit sie die Löcher der neuen Etage berührt.</translation>
    </message>
    <message>
        <source>Lay bedding in the new tray, wet, and set it on top.</source>
        <translation>Lege in der neuen Etage nasse Einstreu ein und setze sie obenauf.</translation>
    </message>
    <message>
        <source>Feed only there from now on. What is below goes on by itself.</source>
        <translation>Füttere von nun an nur dort. Was darunter liegt, geht von selbst weiter.</translation>
    </message>
    <message>
        <source>The usual pace: the first tray alone for {first-tray-alone}, the second alone on top for at least {second-tray-alone}. The program says a tray is filled at {filled-castings} of castings and {filled-ratio} of unprocessed matter to castings or less.</source>
        <translation>Das übliche Tempo: die erste Etage {first-tray-alone} allein, die zweite oben mindestens {second-tray-alone} allein. Das Programm nennt eine Etage gefüllt bei {filled-castings} Humus und höchstens {filled-ratio} Unverarbeitetem zu Humus.</translation>
    </message>
    <message>
        <source>A tray whose contents come within {under-rim} of the rim is full, whatever else holds: there must be air under the next floor.</source>
        <translation>Eine Etage, deren Inhalt bis auf {under-rim} an den Rand kommt, ist voll, was sonst auch gilt: unter dem nächsten Boden muss Luft sein.</translation>
    </message>
    <message>
        <source>When the top tray is filled and no tray is spare, the bottom one has its turn. It is raised to the top, its worms go down out of the light, and what they leave is yours.</source>
        <translation>Ist die oberste Etage gefüllt und keine frei, kommt die unterste an die Reihe. Sie wird nach oben gehoben, ihre Würmer wandern aus dem Licht nach unten, und was sie zurücklassen, gehört dir.</translation>
    </message>
    <message>
        <source>Is it ready?</source>
        <translation>Ist sie reif?</translation>
    </message>
    <message>
        <source>A tray is ready when its feed-to-cast ratio (what could still be eaten, to castings, both dry) is {ready} or below and it holds {ready-castings} or more of castings; nearly at {nearly}. The program gives the chance that it is so, tells you at {alert-raised}, and takes that back at {alert-withdrawn}.</source>
        <translation>Eine Etage ist reif, wenn ihr Futter zu Humus (was noch gefressen werden könnte, zum Humus, beides trocken) bei {ready} oder darunter liegt und sie mindestens {ready-castings} Humus enthält; fast reif bei {nearly}. Das Programm nennt die Chance, dass es so ist, sagt es dir bei {alert-raised} und nimmt es bei {alert-withdrawn} zurück.</translation>
    </message>
    <message>
        <source>Worms left in the bottom tray are normal and never a reason to wait: they go down in the light.</source>
        <translation>In der untersten Etage verbliebene Würmer sind normal und nie ein Grund zu warten: im Licht wandern sie nach unten.</translation>
    </message>
    <message>
        <source>The usual first harvest comes after {first-harvest}, later ones {later-harvests} apart. After {overdue-after} of waiting a harvest is overdue: spent bedding and crowding shrink a colony.</source>
        <translation>Die erste Ernte kommt üblicherweise nach {first-harvest}, spätere im Abstand von {later-harvests}. Nach {overdue-after} Warten ist eine Ernte überfällig: verbrauchte Einstreu und Enge lassen einen Bestand schrumpfen.</translation>
    </message>
    <message>
        <source>The sequence</source>
        <translation>Der Ablauf</translation>
    </message>
    <message>
        <source>For one of your stacks, with the weight of its trays and a card for each day: [[harvest-now|harvest, step by step]].</source>
        <translation>Für einen deiner Stapel, mit dem Gewicht seiner Etagen und einer Karte für jeden Tag: [[harvest-now|Ernte Schritt für Schritt]].</translation>
    </message>
    <message>
        <source>Lid off. Set the upper trays aside, in their order, on a sheet.</source>
        <translation>Deckel ab. Stelle die oberen Etagen in ihrer Reihenfolge auf einer Unterlage beiseite.</translation>
    </message>
    <message>
        <source>Lift the bottom tray out, close to the body, and set it down.</source>
        <translation>Hebe die unterste Etage körpernah heraus und stelle sie ab.</translation>
    </message>
    <message>
        <source>Put the upper trays back, each one slot lower.</source>
        <translation>Setze die oberen Etagen zurück, jede einen Platz tiefer.</translation>
    </message>
    <message>
        <source>Put the lifted tray on top. Loosen the castings with your fingers, in ridges. Leave the lid off, under a lamp or in a bright place, not in the sun.</source>
        <translation>Setze die gehobene Etage obenauf. Lockere den Humus mit den Fingern zu Rippen. Lass den Deckel ab, unter einer Lampe oder an einem hellen Ort, nicht in der Sonne.</translation>
    </message>
    <message>
        <source>For {light-drying}: loosen once a day. Feed only the tray below. Too wet to crumble? Loosen again and give it a day more.</source>
        <translation>Für {light-drying}: einmal am Tag lockern. Füttere nur die Etage darunter. Zu nass zum Krümeln? Lockere noch einmal und gib ihr einen Tag mehr.</translation>
    </message>
    <message>
        <source>When about {left-after-drying} of its worms are left, take the castings, weigh or measure them, and write that down.</source>
        <translation>Sind noch etwa {left-after-drying} ihrer Würmer da, nimm den Humus, wiege oder miss ihn, und schreibe das auf.</translation>
    </message>
    <message>
        <source>Lay new bedding in the empty tray; it goes on top again, or waits in storage.</source>
        <translation>Lege in der leeren Etage neue Einstreu ein; sie kommt wieder obenauf oder wartet im Lager.</translation>
    </message>
    <message>
        <source>What to expect</source>
        <translation>Was zu erwarten ist</translation>
    </message>
    <message>
        <source>One part of castings, dry, comes of {yield} parts of dry food and bedding; the rest was breathed. Much less: the tray was not finished, or much of the food was water. Much more: bedding that stays is in it.</source>
        <translation>Ein Teil Humus, trocken, entsteht aus {yield} Teilen trockenem Futter und Einstreu; der Rest wurde veratmet. Viel weniger: die Etage war nicht fertig, oder vieles vom Futter war Wasser. Viel mehr: es ist Einstreu darin, die bleibt.</translation>
    </message>
    <message>
        <source>Cocoons and worms that leave with it</source>
        <translation>Kokons und Würmer, die mitgehen</translation>
    </message>
    <message>
        <source>Some always do; no method takes all of them out, and castings without any worm cannot be promised. A grown worm lays about {cocoons-weekly} cocoons a week; a cocoon takes about {cocoon-hatch} in the warmth and gives {young} young.</source>
        <translation>Einige gehen immer mit; kein Verfahren nimmt alle heraus, und Humus ganz ohne Würmer lässt sich nicht versprechen. Ein erwachsener Wurm legt etwa {cocoons-weekly} Kokons in der Woche; ein Kokon braucht in der Wärme etwa {cocoon-hatch} und gibt {young} Junge.</translation>
    </message>
    <message>
        <source>A second light-drying after {second-drying} brings out what has hatched meanwhile.</source>
        <translation>Ein zweites Trocknen im Licht nach {second-drying} bringt heraus, was inzwischen geschlüpft ist.</translation>
    </message>
    <message>
        <source>A bait tray: lay melon or pumpkin under damp paper on the stored castings for {bait-days}, and carry it back with all that sits in it.</source>
        <translation>Eine Köderetage: lege {bait-days} lang Melone oder Kürbis unter feuchtem Papier auf den gelagerten Humus und trage sie mit allem, was darin sitzt, zurück.</translation>
    </message>
    <message>
        <source>Choose the stack: the page follows its harvest from the weight of the trays before they are lifted to what became of the castings. Why each step is done stands under [[harvest|rotation and harvest]].</source>
        <translation>Wähle den Stapel: die Seite begleitet seine Ernte vom Gewicht der Etagen vor dem Heben bis zu dem, was aus dem Humus wurde. Warum jeder Schritt getan wird, steht unter [[harvest|Umlauf und Ernte]].</translation>
    </message>
    <message>
        <source>Lid off. Set the upper trays aside, in their order.</source>
        <translation>Deckel ab. Stelle die oberen Etagen in ihrer Reihenfolge beiseite.</translation>
    </message>
    <message>
        <source>Lift the bottom tray out and set it down.</source>
        <translation>Hebe die unterste Etage heraus und stelle sie ab.</translation>
    </message>
    <message>
        <source>Put the lifted tray on top, loosen its castings in ridges, leave the lid off.</source>
        <translation>Setze die gehobene Etage obenauf, lockere ihren Humus zu Rippen, lass den Deckel ab.</translation>
    </message>
    <message>
        <source>Castings are no soil. A litre of them weighs {bed-litre} while moist. They pack, hold salts and are rich; a little of them goes a long way. The Materials page reckons the amounts for a batch.</source>
        <translation>Humus ist keine Erde. Ein Liter davon wiegt feucht {bed-litre}. Er verdichtet sich, hält Salze und ist nährstoffreich; wenig davon reicht weit. Die Materialseite errechnet die Mengen für eine Charge.</translation>
    </message>
    <message>
        <source>Potting mix</source>
        <translation>Topferde</translation>
    </message>
    <message>
        <source>By volume, {potting-share} of a mix has been tested and helped; more than {potting-most} is not advised, and never castings alone.</source>
        <translation>{potting-share} einer Mischung, nach Volumen, wurden geprüft und halfen; mehr als {potting-most} ist nicht ratsam, und nie Humus allein.</translation>
    </message>
    <message>
        <source>Top-dressing</source>
        <translation>Kopfdüngung</translation>
    </message>
    <message>
        <source>A layer of {top-dressing} around the plant, scratched in and watered; again after {top-dressing-again}.</source>
        <translation>Eine Schicht von {top-dressing} um die Pflanze, eingeharkt und angegossen; wieder nach {top-dressing-again}.</translation>
    </message>
    <message>
        <source>Sifting</source>
        <translation>Sieben</translation>
    </message>
    <message>
        <source>Through a mesh of {sieve}, when dry enough to crumble. What stays on it (shell, stones, wood, cocoons) goes into the next bedding.</source>
        <translation>Durch eine Maschenweite von {sieve}, wenn er trocken genug zum Krümeln ist. Was darauf bleibt (Schale, Steine, Holz, Kokons), kommt in die nächste Einstreu.</translation>
    </message>
    <message>
        <source>Storage</source>
        <translation>Lagern</translation>
    </message>
    <message>
        <source>Vented, cool, in the shade, near {storage-moisture} moisture, for {storage-months}. Shut tightly they go sour; bone dry they are dust.</source>
        <translation>Luftig, kühl, im Schatten, bei etwa {storage-moisture} Feuchte, für {storage-months}. Dicht verschlossen wird er sauer; knochentrocken ist er Staub.</translation>
    </message>
    <message>
        <source>Leachate</source>
        <translation>Sickerwasser</translation>
    </message>
    <message>
        <source>What ran out at the spigot is salty water that met everything in the trays. It is no brewed tea, and nobody knows what it holds unless it is measured. Published strengths are around {leachate-strength}; for worms {leachate-harmless} is harmless and about {leachate-harmful} harmful. One mS/cm stands for about {salt-per-conductivity} of salts.</source>
        <translation>Was am Hahn herauslief, ist salziges Wasser, das allem in den Etagen begegnet ist. Es ist kein angesetzter Tee, und niemand weiß, was es enthält, wenn es nicht gemessen wird. Veröffentlichte Stärken liegen um {leachate-strength}; für Würmer ist {leachate-harmless} harmlos und etwa {leachate-harmful} schädlich. Ein mS/cm steht für etwa {salt-per-conductivity} Salze.</translation>
    </message>
    <message>
        <source>Dilute it to {target-seedlings} for young plants, {target-grown} for grown ones. Tap water itself has about {tap-water}. The Materials page says how many parts of water that takes, for the strong end of what the leachate may be.</source>
        <translation>Verdünne es auf {target-seedlings} für junge Pflanzen, auf {target-grown} für erwachsene. Leitungswasser selbst hat etwa {tap-water}. Die Materialseite sagt, wie viele Teile Wasser das braucht, für das starke Ende dessen, was das Sickerwasser sein kann.</translation>
    </message>
    <message>
        <source>Use it within {leachate-keeps}, on soil, or pour it back over the top tray when the bed is dry.</source>
        <translation>Verbrauche es innerhalb von {leachate-keeps}, auf Erde, oder gieße es wieder über die oberste Etage, wenn das Bett trocken ist.</translation>
    </message>
    <message>
        <source>When to add a tray</source>
        <translation>Wann eine Etage hinzukommt</translation>
    </message>
    <message>
        <source>second third next turn too early full rim</source>
        <translation>zweite dritte nächste Reihe zu früh voll Rand</translation>
    </message>
    <message>
        <source>Rotation and harvest</source>
        <translation>Umlauf und Ernte</translation>
    </message>
    <message>
        <source>lift light-drying castings ready cocoons loosen yield bottom tray</source>
        <translation>Heben Trocknen im Licht Wurmhumus reif Kokons lockern Ausbeute unterste Etage</translation>
    </message>
    <message>
        <source>Harvest, step by step</source>
        <translation>Ernte Schritt für Schritt</translation>
    </message>
    <message>
        <source>guided weight drying day yield take castings now</source>
        <translation>geführt Gewicht Trocknen Tag Ausbeute Humus nehmen jetzt</translation>
    </message>
    <message>
        <source>Using castings and leachate</source>
        <translation>Humus und Sickerwasser verwenden</translation>
    </message>
    <message>
        <source>potting soil top-dressing storage dilution strength sieve garden plants</source>
        <translation>Topferde Kopfdüngung Lagern Verdünnung Stärke Sieb Garten Pflanzen</translation>
    </message>
    <message>
        <source>Heat</source>
        <translation>Hitze</translation>
    </message>
    <message>
        <source>From {heat-death} in the bed worms begin to die. Carry the stack to a cooler room first; then shade, an open lid under a cloth, less food.</source>
        <translation>Ab {heat-death} im Bett beginnen Würmer zu sterben. Trage den Stapel zuerst in einen kühleren Raum; dann Schatten, ein offener Deckel unter einem Tuch, weniger Futter.</translation>
    </message>
    <message>
        <source>A bed heats by itself when much is fed at once. Stop feeding, spread the food flat, loosen the tray.</source>
        <translation>Ein Bett erwärmt sich selbst, wenn viel auf einmal gefüttert wird. Nicht mehr füttern, das Futter flach verteilen, die Etage lockern.</translation>
    </message>
    <message>
        <source>A frozen bottle of water, wrapped, on the top bedding buys a day.</source>
        <translation>Eine gefrorene Flasche Wasser, eingewickelt, auf der obersten Einstreu bringt einen Tag.</translation>
    </message>
    <message>
        <source>Cold</source>
        <translation>Kälte</translation>
    </message>
    <message>
        <source>Near {frost-death} worms die. Bring the stack in, or wrap sides and lid and stand it off the ground; feed little, since what is not eaten rots when it warms.</source>
        <translation>Nahe {frost-death} sterben Würmer. Hole den Stapel herein, oder packe Seiten und Deckel ein und stelle ihn vom Boden hoch; füttere wenig, denn was nicht gefressen wird, fault, wenn es wärmer wird.</translation>
    </message>
    <message>
        <source>In a cold room everything takes longer; the dates of the program know that when you write down the bed&apos;s temperature now and then.</source>
        <translation>In einem kalten Raum dauert alles länger; die Daten des Programms wissen das, wenn du ab und zu die Temperatur des Betts aufschreibst.</translation>
    </message>
    <message>
        <source>A stack can be left alone for {away} without any care, longer in the cold. Bedding is food as well.</source>
        <translation>Ein Stapel kann {away} ganz ohne Pflege bleiben, in der Kälte länger. Einstreu ist auch Futter.</translation>
    </message>
    <message>
        <source>A few days before: feed the usual, not more. A heap of food rots; it does not keep.</source>
        <translation>Ein paar Tage vorher: füttere das Übliche, nicht mehr. Ein Haufen Futter fault; er hält nicht vor.</translation>
    </message>
    <message>
        <source>On the last day: water to a wrung-out sponge, cover with a thick layer of wet paper, close the lid.</source>
        <translation>Am letzten Tag: gieße bis zum ausgedrückten Schwamm, decke mit einer dicken Schicht nassem Papier ab, schließe den Deckel.</translation>
    </message>
    <message>
        <source>Empty the sump and leave the spigot open over a large jar.</source>
        <translation>Leere die Auffangschale und lass den Hahn über einem großen Glas offen.</translation>
    </message>
    <message>
        <source>Write it down as an event, away, with the day of your return: the estimates then expect no feeding.</source>
        <translation>Schreibe es als Ereignis „abwesend“ auf, mit dem Tag deiner Rückkehr: die Schätzungen erwarten dann keine Fütterung.</translation>
    </message>
    <message>
        <source>The rotation plan can be asked what two weeks away would change.</source>
        <translation>Den Umlaufplan kannst du fragen, was zwei Wochen Abwesenheit ändern würden.</translation>
    </message>
    <message>
        <source>Moving a stack</source>
        <translation>Einen Stapel umstellen</translation>
    </message>
    <message>
        <source>Empty the sump, shut the spigot.</source>
        <translation>Leere die Auffangschale, schließe den Hahn.</translation>
    </message>
    <message>
        <source>Carry tray by tray, the heaviest last and shortest, and stack them again in the same order.</source>
        <translation>Trage Etage für Etage, die schwerste zuletzt und am kürzesten, und stelle sie in derselben Reihenfolge wieder auf.</translation>
    </message>
    <message>
        <source>Splitting</source>
        <translation>Teilen</translation>
    </message>
    <message>
        <source>A colony that is crowded, beyond about {best-density} of floor, or a household with more scraps than a stack can take, is ready to be split.</source>
        <translation>Ein beengter Bestand, über etwa {best-density} Boden, oder ein Haushalt mit mehr Resten, als ein Stapel verträgt, ist reif zum Teilen.</translation>
    </message>
    <message>
        <source>Set up the new stack with one bedded tray.</source>
        <translation>Richte den neuen Stapel mit einer eingestreuten Etage ein.</translation>
    </message>
    <message>
        <source>Take worms with a part of their bed out of the old stack, at most {give-at-most} of the colony, so that the old one keeps its pace.</source>
        <translation>Nimm Würmer mit einem Teil ihres Betts aus dem alten Stapel, höchstens {give-at-most} des Bestands, damit der alte sein Tempo hält.</translation>
    </message>
    <message>
        <source>Record it as moved worms: both stacks know it then.</source>
        <translation>Trage es als umgesetzte Würmer ein: dann wissen es beide Stapel.</translation>
    </message>
    <message>
        <source>Worms double in {doubling} under good care, so there is something to give. Give worms with a handful of their own bedding; they settle better.</source>
        <translation>Würmer verdoppeln sich bei guter Pflege in {doubling}, es gibt also etwas abzugeben. Gib Würmer mit einer Handvoll ihrer eigenen Einstreu; so gewöhnen sie sich besser ein.</translation>
    </message>
    <message>
        <source>Weigh them, or count some and weigh those; take at most {give-at-most} of the colony, from the top tray, where most of them are.</source>
        <translation>Wiege sie, oder zähle einige und wiege diese; nimm höchstens {give-at-most} des Bestands, aus der obersten Etage, wo die meisten sind.</translation>
    </message>
    <message>
        <source>{stock} makes a start for a first tray.</source>
        <translation>{stock} sind ein Anfang für eine erste Etage.</translation>
    </message>
    <message>
        <source>Pack them in damp bedding in a vented box, cool, for a day at most.</source>
        <translation>Packe sie in feuchter Einstreu in eine luftige Schachtel, kühl, höchstens für einen Tag.</translation>
    </message>
    <message>
        <source>Record the worms as taken away: the estimate of your colony follows.</source>
        <translation>Trage die Würmer als entnommen ein: die Schätzung deines Bestands folgt.</translation>
    </message>
    <message>
        <source>Choose the stack and what you notice. Each cause has its chance, from what the estimates say of this stack, its evidence in numbers, the look that would tell it from the others, and what to do.</source>
        <translation>Wähle den Stapel und was dir auffällt. Jede Ursache hat ihre Chance aus dem, was die Schätzungen von diesem Stapel sagen, ihre Belege in Zahlen, den Blick, der sie von den anderen unterscheidet, und was zu tun ist.</translation>
    </message>
    <message>
        <source>What may be wrong</source>
        <translation>Was nicht stimmen könnte</translation>
    </message>
    <message>
        <source>smell flies mites ants escape dying mould sour heat standing water help problem</source>
        <translation>Geruch Fliegen Milben Ameisen Flucht Sterben Schimmel sauer Hitze stehendes Wasser Hilfe Problem</translation>
    </message>
    <message>
        <source>Seasons</source>
        <translation>Jahreszeiten</translation>
    </message>
    <message>
        <source>summer winter heat cold frost temperature</source>
        <translation>Sommer Winter Hitze Kälte Frost Temperatur</translation>
    </message>
    <message>
        <source>Going away</source>
        <translation>Abwesenheit</translation>
    </message>
    <message>
        <source>holiday travel weeks absence</source>
        <translation>Urlaub Reise Wochen abwesend</translation>
    </message>
    <message>
        <source>Moving and splitting</source>
        <translation>Umstellen und teilen</translation>
    </message>
    <message>
        <source>carry transport divide new stack crowded</source>
        <translation>Tragen Transport teilen neuer Stapel Enge</translation>
    </message>
    <message>
        <source>Giving worms</source>
        <translation>Würmer weggeben</translation>
    </message>
    <message>
        <source>share neighbours school release</source>
        <translation>Teilen Nachbarn Schule Aussetzen</translation>
    </message>
    <message>
        <source>Choose a place that stays at {comfortable} all year, out of the sun, where the spigot can be reached and a full tray can be lifted.</source>
        <translation>Wähle einen Platz, der das ganze Jahr bei {comfortable} bleibt, nicht in der Sonne, wo der Hahn erreichbar ist und eine volle Etage gehoben werden kann.</translation>
    </message>
    <message>
        <source>Bedding is carbon. Scraps alone hold too little of it: a mix of {cn-range} carbon to nitrogen keeps, with more nitrogen it smells, with more carbon it stands still. Averaging ratios by parts is wrong; the mix on the Materials page reckons it by mass.</source>
        <translation>Einstreu ist Kohlenstoff. Reste allein haben zu wenig davon: eine Mischung mit {cn-range} Kohlenstoff zu Stickstoff hält sich, mit mehr Stickstoff riecht sie, mit mehr Kohlenstoff steht sie still. Verhältnisse nach Teilen zu mitteln ist falsch; die Mischung auf der Seite Materialien rechnet nach Masse.</translation>
    </message>
    <message>
        <source>Worms grow fastest near {growth-best}. A bed of {comfortable} is warm enough, and leaves room for the heat of a feeding. They hardly grow below {coldest}, and not at all at {hottest}.</source>
        <translation>Würmer wachsen am schnellsten bei etwa {growth-best}. Ein Bett von {comfortable} ist warm genug und lässt Spielraum für die Wärme einer Fütterung. Unter {coldest} wachsen sie kaum, bei {hottest} gar nicht.</translation>
    </message>
    <message>
        <source>A stack that has long been at work: write down its worms and the bedding of each tray, then look into each tray on the first day and note how deep the castings lie and how many bits there are. What lies there is then taken as it was found.</source>
        <translation>Ein Stapel, der schon lange arbeitet: seine Würmer und die Einstreu jeder Etage aufschreiben, dann am ersten Tag in jede Etage sehen und notieren, wie tief der Humus liegt und wie viele Reste darin sind. Was dort liegt, gilt dann, wie es gefunden wurde.</translation>
    </message>
    <message>
        <source>The temperature of the bed: from the set-up, whose usual temperature is the mean of the year, and the season of the place ([[seasons|Seasons]]); readings move it for some weeks.</source>
        <translation>Die Temperatur des Betts: aus dem Aufbau, dessen übliche Temperatur das Jahresmittel ist, und der Jahreszeit am Ort ([[seasons|Jahreszeiten]]); abgelesene Werte verschieben sie für einige Wochen.</translation>
    </message>
    <message>
        <source>The usual temperature of the set-up</source>
        <translation>Die übliche Temperatur im Aufbau</translation>
    </message>
    <message>
        <source>It is the mean of the whole year, not what a thermometer shows today: the program makes winter and summer of it, little indoors, more in a garage, most outdoors. What it proposes is a bed of {year-indoors} through the year indoors, {year-garage} in a garage, shed or porch, {year-outdoors} outdoors.</source>
        <translation>Sie ist das Mittel des ganzen Jahres, nicht das, was ein Thermometer heute zeigt: das Programm macht Winter und Sommer daraus, wenig drinnen, mehr in einer Garage, am meisten draußen. Was es vorschlägt, ist übers Jahr ein Bett von {year-indoors} drinnen, {year-garage} in Garage, Schuppen oder Veranda, {year-outdoors} draußen.</translation>
    </message>
    <message>
        <source>Hold a thermometer in the bed and type into the set-up what it shows now: the mean follows from it, by place and season. Beneath stands what the coldest and the warmest month will be.</source>
        <translation>Ein Thermometer ins Bett halten und in den Aufbau tippen, was es jetzt zeigt: das Mittel folgt daraus, nach Ort und Jahreszeit. Darunter steht, wie der kälteste und der wärmste Monat werden.</translation>
    </message>
    <message>
        <source>When readings of the bed stay off to one side, correct the set-up; a reading alone moves the estimate for some weeks only.</source>
        <translation>Liegen abgelesene Werte immer auf derselben Seite daneben, den Aufbau berichtigen; ein Wert allein verschiebt die Schätzung nur für einige Wochen.</translation>
    </message>
    <message>
        <source>Write a change of place into the stack&apos;s set-up, with the temperature that a thermometer shows in the bed there.</source>
        <translation>Einen neuen Ort in den Aufbau des Stapels schreiben, mit der Temperatur, die ein Thermometer dort im Bett zeigt.</translation>
    </message>
    <message>
        <source>The order is computed. Each member of the ensemble is one possible stack that agrees with your journal; a cause is likely when many of them are in the state that brings such a symptom about. Something else keeps its share, and where the record shows none of the causes, that is what is said. A look written down changes the order.</source>
        <translation>Die Reihenfolge ist gerechnet. Jedes Mitglied des Ensembles ist ein möglicher Stapel, der zu deinem Tagebuch passt; eine Ursache ist wahrscheinlich, wenn viele von ihnen in dem Zustand sind, der ein solches Anzeichen hervorbringt. Etwas anderes behält seinen Anteil, und wo die Aufzeichnungen keine der Ursachen zeigen, wird genau das gesagt. Ein eingetragener Blick ändert die Reihenfolge.</translation>
    </message>
</context>
<context>
    <name>HandbookHtml</name>
    <message>
        <source>Caution: %1</source>
        <translation>Warnhinweis: %1</translation>
    </message>
</context>
<context>
    <name>HarvestBody</name>
    <message>
        <source>Taken</source>
        <translation>Entnommen</translation>
    </message>
    <message>
        <source>the whole tray</source>
        <translation>die ganze Etage</translation>
    </message>
    <message>
        <source>a part; the batch goes on</source>
        <translation>ein Teil; die Charge geht weiter</translation>
    </message>
    <message>
        <source>Share taken</source>
        <translation>Entnommener Anteil</translation>
    </message>
    <message>
        <source>Which share of the tray?</source>
        <translation>Welcher Anteil der Etage?</translation>
    </message>
    <message>
        <source>Castings</source>
        <translation>Humus</translation>
    </message>
    <message>
        <source>How much was taken? By mass or by volume.</source>
        <translation>Wie viel wurde entnommen? Nach Masse oder Volumen.</translation>
    </message>
    <message>
        <source>Their moisture</source>
        <translation>Seine Feuchte</translation>
    </message>
    <message>
        <source>of wet mass, if measured</source>
        <translation>der nassen Masse, wenn gemessen</translation>
    </message>
    <message>
        <source>expected: about %1, or %2</source>
        <translation>erwartet: etwa %1 oder %2</translation>
    </message>
</context>
<context>
    <name>HouseholdText</name>
    <message>
        <source>%1, %2: found «%3»; allowed: %4</source>
        <translation>%1, %2: „%3“ gefunden; erlaubt: %4</translation>
    </message>
    <message>
        <source>%1 is there already. It was left as it is.</source>
        <translation>%1 gibt es schon. Es blieb, wie es war.</translation>
    </message>
    <message>
        <source>%1 is open for reading only: there is no permission to write to it or to its folder. Nothing can be recorded until that is changed.</source>
        <translation>%1 ist nur zum Lesen geöffnet: die Datei oder ihr Ordner darf nicht beschrieben werden. Bis das geändert ist, kann nichts eingetragen werden.</translation>
    </message>
    <message>
        <source>Rename the household</source>
        <translation>Haushalt umbenennen</translation>
    </message>
    <message>
        <source>Folder for backups</source>
        <translation>Ordner für Sicherungskopien</translation>
    </message>
    <message>
        <source>%1 was moved or removed. Nothing more is written until it is back; what is in a form stays there.</source>
        <translation>%1 wurde verschoben oder entfernt. Es wird nichts geschrieben, bis die Datei zurück ist; was in einem Formular steht, bleibt dort.</translation>
    </message>
    <message>
        <source>%1 is back. It takes entries again.</source>
        <translation>%1 ist zurück und nimmt wieder Einträge an.</translation>
    </message>
    <message>
        <source>%1 was moved or removed while it was open. Nothing was written; put it back, or open it where it is now.</source>
        <translation>%1 wurde verschoben oder entfernt, während die Datei geöffnet war. Nichts wurde geschrieben; bring sie zurück, oder öffne sie dort, wo sie jetzt ist.</translation>
    </message>
    <message>
        <source>%1 was written by a newer release and can only be read. Nothing was written.</source>
        <translation>%1 wurde von einer neueren Fassung geschrieben und kann nur gelesen werden. Nichts wurde geschrieben.</translation>
    </message>
    <message>
        <source>%1 is open for reading only. Nothing was written.</source>
        <translation>%1 ist nur zum Lesen geöffnet. Nichts wurde geschrieben.</translation>
    </message>
    <message>
        <source>The entry is still being written. Nothing was changed; try again in a moment.</source>
        <translation>Der Eintrag wird noch geschrieben. Nichts wurde geändert; versuche es gleich noch einmal.</translation>
    </message>
    <message>
        <source>%1 cannot be used as a picture: %2</source>
        <translation>%1 kann nicht als Bild verwendet werden: %2</translation>
    </message>
    <message>
        <source>%1 cannot be used as a picture: it could not be made smaller.</source>
        <translation>%1 kann nicht als Bild verwendet werden: es ließ sich nicht verkleinern.</translation>
    </message>
    <message numerus="yes">
        <source>Another program changed this household. %n step(s) that could be undone touched what it changed and can no longer be undone.</source>
        <translation>
            <numerusform>Ein anderes Programm hat diesen Haushalt geändert. %n Schritt, der sich zurücknehmen ließ, betraf das Geänderte und lässt sich nicht mehr zurücknehmen.</numerusform>
            <numerusform>Ein anderes Programm hat diesen Haushalt geändert. %n Schritte, die sich zurücknehmen ließen, betrafen das Geänderte und lassen sich nicht mehr zurücknehmen.</numerusform>
        </translation>
    </message>
    <message>
        <source>Another program has changed the entry meanwhile. What it wrote was kept, and nothing was written.</source>
        <translation>Ein anderes Programm hat den Eintrag inzwischen geändert. Was es schrieb, blieb, und nichts wurde geschrieben.</translation>
    </message>
    <message>
        <source>The estimates could not be made this time. What you record is kept all the same; they are tried again after the next change.</source>
        <translation>Die Schätzungen konnten diesmal nicht entstehen. Was du einträgst, bleibt trotzdem erhalten; nach der nächsten Änderung wird es wieder versucht.</translation>
    </message>
</context>
<context>
    <name>JournalWords</name>
    <message>
        <source>%1 %2</source>
        <translation>%1 %2</translation>
    </message>
    <message>
        <source>on the left</source>
        <translation>links</translation>
    </message>
    <message>
        <source>on the right</source>
        <translation>rechts</translation>
    </message>
    <message>
        <source>at the front</source>
        <translation>vorn</translation>
    </message>
    <message>
        <source>at the back</source>
        <translation>hinten</translation>
    </message>
    <message>
        <source>all over</source>
        <translation>überall</translation>
    </message>
    <message>
        <source>indoors</source>
        <translation>drinnen</translation>
    </message>
    <message>
        <source>in a garage</source>
        <translation>in einer Garage</translation>
    </message>
    <message>
        <source>outdoors</source>
        <translation>draußen</translation>
    </message>
    <message>
        <source>on legs</source>
        <translation>auf Beinen</translation>
    </message>
    <message>
        <source>on a base</source>
        <translation>auf einem Sockel</translation>
    </message>
    <message>
        <source>on the floor</source>
        <translation>auf dem Boden</translation>
    </message>
    <message>
        <source>spigot open</source>
        <translation>Hahn offen</translation>
    </message>
    <message>
        <source>spigot shut</source>
        <translation>Hahn zu</translation>
    </message>
    <message>
        <source>strength %1 mS/cm</source>
        <translation>Stärke %1 mS/cm</translation>
    </message>
    <message numerus="yes">
        <source>%n worm(s) put back</source>
        <translation>
            <numerusform>%n Wurm zurückgesetzt</numerusform>
            <numerusform>%n Würmer zurückgesetzt</numerusform>
        </translation>
    </message>
    <message>
        <source>%1 deep</source>
        <translation>%1 tief</translation>
    </message>
    <message numerus="yes">
        <source>%n tray(s)</source>
        <translation>
            <numerusform>%n Etage</numerusform>
            <numerusform>%n Etagen</numerusform>
        </translation>
    </message>
    <message>
        <source>sump %1</source>
        <translation>Auffangschale %1</translation>
    </message>
    <message>
        <source>usually %1</source>
        <translation>üblich %1</translation>
    </message>
    <message>
        <source>moisture %1</source>
        <translation>Feuchte %1</translation>
    </message>
    <message>
        <source>nitrogen %1 %</source>
        <translation>Stickstoff %1 %</translation>
    </message>
    <message>
        <source>C:N %1</source>
        <translation>C:N %1</translation>
    </message>
    <message numerus="yes">
        <source>%n counted</source>
        <translation>
            <numerusform>%n gezählt</numerusform>
            <numerusform>%n gezählt</numerusform>
        </translation>
    </message>
    <message>
        <source>wetted to %1</source>
        <translation>angefeuchtet bis %1</translation>
    </message>
    <message>
        <source>water</source>
        <translation>Wasser</translation>
    </message>
    <message>
        <source>cover</source>
        <translation>Abdeckung</translation>
    </message>
    <message>
        <source>%1: no longer</source>
        <translation>%1: nicht mehr</translation>
    </message>
    <message numerus="yes">
        <source>%1: %2, every %n day(s)</source>
        <translation>
            <numerusform>%1: %2, jeden Tag</numerusform>
            <numerusform>%1: %2, alle %n Tage</numerusform>
        </translation>
    </message>
    <message>
        <source>not emptied</source>
        <translation>nicht geleert</translation>
    </message>
    <message>
        <source>%1 poured through</source>
        <translation>%1 durchgegossen</translation>
    </message>
    <message>
        <source>%1 ran out</source>
        <translation>%1 herausgelaufen</translation>
    </message>
    <message>
        <source>bed %1</source>
        <translation>Bett %1</translation>
    </message>
    <message>
        <source>air %1</source>
        <translation>Luft %1</translation>
    </message>
    <message>
        <source>air humidity %1</source>
        <translation>Luftfeuchte %1</translation>
    </message>
    <message>
        <source>squeeze %1 of 5</source>
        <translation>Drücken %1 von 5</translation>
    </message>
    <message>
        <source>pH %1</source>
        <translation>pH %1</translation>
    </message>
    <message>
        <source>castings %1 deep</source>
        <translation>Humus %1 tief</translation>
    </message>
    <message>
        <source>%1 still recognisable</source>
        <translation>%1 noch erkennbar</translation>
    </message>
    <message>
        <source>%1 of the last feeding left</source>
        <translation>%1 der letzten Fütterung übrig</translation>
    </message>
    <message>
        <source>few worms</source>
        <translation>wenige Würmer</translation>
    </message>
    <message>
        <source>some worms</source>
        <translation>einige Würmer</translation>
    </message>
    <message>
        <source>many worms</source>
        <translation>viele Würmer</translation>
    </message>
    <message>
        <source>in %1 of the bed</source>
        <translation>in %1 des Betts</translation>
    </message>
    <message>
        <source>%1 worms</source>
        <translation>%1 Würmer</translation>
    </message>
    <message>
        <source>in %1 of bed</source>
        <translation>in %1 Bett</translation>
    </message>
    <message>
        <source>empty tray %1</source>
        <translation>leere Etage %1</translation>
    </message>
    <message>
        <source>bottom tray to the top, to dry in the light</source>
        <translation>unterste Etage nach oben, zum Trocknen im Licht</translation>
    </message>
    <message>
        <source>the drying castings</source>
        <translation>den trocknenden Humus</translation>
    </message>
    <message>
        <source>put on</source>
        <translation>aufgelegt</translation>
    </message>
    <message>
        <source>taken off</source>
        <translation>abgenommen</translation>
    </message>
    <message>
        <source>%1 of the tray</source>
        <translation>%1 der Etage</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation>%1 bis %2</translation>
    </message>
    <message>
        <source>until %1</source>
        <translation>bis %1</translation>
    </message>
    <message>
        <source>Set up</source>
        <translation>Eingerichtet</translation>
    </message>
    <message>
        <source>Own material</source>
        <translation>Eigenes Material</translation>
    </message>
    <message>
        <source>Worms put in</source>
        <translation>Würmer eingesetzt</translation>
    </message>
    <message>
        <source>Bedding</source>
        <translation>Einstreu</translation>
    </message>
    <message>
        <source>Fed</source>
        <translation>Gefüttert</translation>
    </message>
    <message>
        <source>Covered</source>
        <translation>Abgedeckt</translation>
    </message>
    <message>
        <source>Watered</source>
        <translation>Gegossen</translation>
    </message>
    <message>
        <source>Routine</source>
        <translation>Gewohnheit</translation>
    </message>
    <message>
        <source>Drained</source>
        <translation>Abgelassen</translation>
    </message>
    <message>
        <source>Flushed</source>
        <translation>Durchgespült</translation>
    </message>
    <message>
        <source>Reading</source>
        <translation>Messwert</translation>
    </message>
    <message>
        <source>Looked</source>
        <translation>Nachgesehen</translation>
    </message>
    <message>
        <source>Worms weighed</source>
        <translation>Würmer gewogen</translation>
    </message>
    <message>
        <source>Worms counted</source>
        <translation>Gezählte Würmer</translation>
    </message>
    <message>
        <source>Tray weighed</source>
        <translation>Etage gewogen</translation>
    </message>
    <message>
        <source>Lifted</source>
        <translation>Gehoben</translation>
    </message>
    <message>
        <source>Loosened</source>
        <translation>Gelockert</translation>
    </message>
    <message>
        <source>Lid</source>
        <translation>Deckel</translation>
    </message>
    <message>
        <source>Castings taken</source>
        <translation>Humus entnommen</translation>
    </message>
    <message>
        <source>Worms taken away</source>
        <translation>Würmer entnommen</translation>
    </message>
    <message>
        <source>Worms moved</source>
        <translation>Würmer umgesetzt</translation>
    </message>
    <message>
        <source>Seen</source>
        <translation>Gesehen</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Notiz</translation>
    </message>
    <message>
        <source>Retired</source>
        <translation>Stillgelegt</translation>
    </message>
    <message>
        <source>, </source>
        <translation>, </translation>
    </message>
    <message>
        <source>welcome: %1</source>
        <translation>willkommen: %1</translation>
    </message>
    <message>
        <source>%1 in the sump</source>
        <translation>%1 in der Auffangschale</translation>
    </message>
    <message>
        <source>tray %1</source>
        <comment>its area</comment>
        <translation>Etage %1</translation>
    </message>
    <message>
        <source>amount not noted</source>
        <translation>Menge nicht notiert</translation>
    </message>
</context>
<context>
    <name>Labels</name>
    <message>
        <source>%1, %2 × %3 labels of %4 × %5 mm</source>
        <translation>%1, %2 × %3 Etiketten von %4 × %5 mm</translation>
    </message>
    <message>
        <source>Tray %1 · batch %2</source>
        <translation>Etage %1 · Charge %2</translation>
    </message>
    <message>
        <source>Bedded %1</source>
        <comment>a day</comment>
        <translation>Eingestreut %1</translation>
    </message>
    <message>
        <source>Lifted ______________  Taken ______________</source>
        <translation>Gehoben ______________  Entnommen ______________</translation>
    </message>
    <message>
        <source>Labels for trays</source>
        <translation>Etiketten für Etagen</translation>
    </message>
    <message>
        <source>The labels could not be drawn.</source>
        <translation>Die Etiketten konnten nicht gezeichnet werden.</translation>
    </message>
    <message>
        <source>%1, %2 × %3 labels of %4 × %5 in</source>
        <translation>%1, %2 × %3 Etiketten zu %4 × %5 in</translation>
    </message>
</context>
<context>
    <name>Lanes</name>
    <message>
        <source>tray %1</source>
        <translation>Etage %1</translation>
    </message>
    <message>
        <source>lift the bottom tray</source>
        <translation>unterste Etage heben</translation>
    </message>
    <message>
        <source>take the castings, lay new bedding</source>
        <translation>Humus nehmen, neue Einstreu einlegen</translation>
    </message>
    <message>
        <source>add a tray</source>
        <translation>Etage hinzufügen</translation>
    </message>
    <message>
        <source>today</source>
        <translation>heute</translation>
    </message>
    <message>
        <source>in the light</source>
        <translation>im Licht</translation>
    </message>
    <message>
        <source>planned (dashed)</source>
        <translation>geplant (gestrichelt)</translation>
    </message>
    <message>
        <source>nobody is there</source>
        <translation>niemand ist da</translation>
    </message>
    <message>
        <source>day chosen by hand</source>
        <translation>Tag von Hand gewählt</translation>
    </message>
    <message>
        <source>ready: 10 %, 50 % and 90 % sure</source>
        <translation>reif: zu 10 %, 50 % und 90 % sicher</translation>
    </message>
    <message>
        <source>ready already</source>
        <translation>schon reif</translation>
    </message>
    <message>
        <source>due: 10 %, 50 % and 90 % sure</source>
        <translation>fällig: zu 10 %, 50 % und 90 % sicher</translation>
    </message>
</context>
<context>
    <name>Legend</name>
    <message>
        <source>Age of batch</source>
        <translation>Alter der Charge</translation>
    </message>
    <message>
        <source>new</source>
        <translation>neu</translation>
    </message>
    <message>
        <source>%1 mo</source>
        <comment>short for months</comment>
        <translation>%1 Mon.</translation>
    </message>
    <message>
        <source>castings, by age</source>
        <translation>Humus, nach Alter</translation>
    </message>
    <message>
        <source>softened</source>
        <translation>weich geworden</translation>
    </message>
    <message>
        <source>food</source>
        <translation>Futter</translation>
    </message>
    <message>
        <source>bedding</source>
        <translation>Einstreu</translation>
    </message>
    <message>
        <source>one for each %1 of worms</source>
        <translation>eines je %1 Würmer</translation>
    </message>
    <message>
        <source>0.07 : 1 = unprocessed to castings, dry</source>
        <translation>0,07 : 1 = Unverarbeitetes zu Humus, trocken</translation>
    </message>
    <message>
        <source>Depths to one scale; sump levels twice as tall, a mark a litre</source>
        <translation>Tiefen in einem Maßstab; Auffangschale doppelt hoch, ein Strich je Liter</translation>
    </message>
    <message>
        <source>Bars: drained; marks: expected; bands: 90 % range</source>
        <translation>Balken: abgelassen; Marken: erwartet; Bänder: 90 %</translation>
    </message>
    <message>
        <source>Ring: chance in % that the tray is ready</source>
        <translation>Ring: Chance in %, dass die Etage reif ist</translation>
    </message>
    <message>
        <source>Depths to one scale; sump levels twice as tall, a mark a quarter of a gallon</source>
        <translation>Tiefen in einem Maßstab; Pegel der Auffangschale doppelt so hoch, ein Strich je viertel Gallone</translation>
    </message>
</context>
<context>
    <name>LidBody</name>
    <message>
        <source>The lid is</source>
        <translation>Der Deckel ist</translation>
    </message>
    <message>
        <source>on</source>
        <translation>auf</translation>
    </message>
    <message>
        <source>off</source>
        <translation>ab</translation>
    </message>
</context>
<context>
    <name>Lists</name>
    <message>
        <source>Parameter</source>
        <translation>Parameter</translation>
    </message>
    <message>
        <source>Centre</source>
        <translation>Mitte</translation>
    </message>
    <message>
        <source>90 % range</source>
        <translation>90-%-Bereich</translation>
    </message>
    <message>
        <source>Unit</source>
        <translation>Einheit</translation>
    </message>
    <message>
        <source>Rests on</source>
        <translation>Beruht auf</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation>%1 bis %2</translation>
    </message>
    <message>
        <source>What</source>
        <translation>Was</translation>
    </message>
    <message>
        <source>Figure</source>
        <translation>Zahl</translation>
    </message>
    <message>
        <source>Basis</source>
        <translation>Grundlage</translation>
    </message>
    <message>
        <source>Source</source>
        <translation>Quelle</translation>
    </message>
    <message>
        <source>Caution</source>
        <translation>Warnhinweis</translation>
    </message>
    <message>
        <source>Material</source>
        <translation>Material</translation>
    </message>
    <message>
        <source>Welcome</source>
        <translation>Willkommen</translation>
    </message>
    <message>
        <source>Why</source>
        <translation>Warum</translation>
    </message>
    <message>
        <source>Noticed</source>
        <translation>Bemerkt</translation>
    </message>
    <message>
        <source>Causes, the usual ones first</source>
        <translation>Ursachen, die üblichen zuerst</translation>
    </message>
    <message>
        <source>Stack</source>
        <translation>Stapel</translation>
    </message>
    <message>
        <source>Within its 90 % range</source>
        <translation>Innerhalb des 90-%-Bereichs</translation>
    </message>
    <message>
        <source>The latest: came, expected</source>
        <translation>Das Letzte: kam, erwartet</translation>
    </message>
    <message>
        <source>Once there are drainings and harvests in the journal, what came stands here beside what was expected.</source>
        <translation>Sobald Ablässe und Ernten im Tagebuch stehen, steht hier, was kam, neben dem, was erwartet wurde.</translation>
    </message>
    <message>
        <source>drainings</source>
        <translation>Ablässe</translation>
    </message>
    <message>
        <source>%1 of %2</source>
        <translation>%1 von %2</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>harvests, by weight</source>
        <translation>Ernten, nach Gewicht</translation>
    </message>
    <message>
        <source>lifted %1, before it was said to be ready (%2)</source>
        <translation>gehoben %1, bevor sie als reif galt (%2)</translation>
    </message>
    <message>
        <source>said to be ready from %1, lifted %2 (%3)</source>
        <translation>als reif angesagt ab %1, gehoben %2 (%3)</translation>
    </message>
    <message>
        <source>ready dates</source>
        <translation>Reifetermine</translation>
    </message>
    <message>
        <source>%1 of %2 lifted when ready</source>
        <translation>%1 von %2 reif gehoben</translation>
    </message>
</context>
<context>
    <name>LoggerWords</name>
    <message>
        <source>time|date|stamp</source>
        <translation>zeit|datum|stempel|time|date|stamp</translation>
    </message>
    <message>
        <source>temp|°c|°f|celsius|fahrenheit|degrees|(c)|(f)|[c]|[f]</source>
        <translation>temp|°c|°f|celsius|fahrenheit|grad|(c)|(f)|[c]|[f]</translation>
    </message>
    <message>
        <source>air|ambient|room|outside|outdoor</source>
        <translation>luft|umgebung|raum|außen|draußen|air|ambient|room|outside|outdoor</translation>
    </message>
    <message>
        <source>humid|rh</source>
        <translation>luftfeucht|rel. feuchte|humid|rh</translation>
    </message>
    <message>
        <source>moist|water content|vwc</source>
        <translation>bodenfeuchte|substratfeuchte|wassergehalt|moist|water content|vwc</translation>
    </message>
</context>
<context>
    <name>MaterialNames</name>
    <message>
        <source>corrugated cardboard shredded</source>
        <translation>Wellpappe, zerrissen</translation>
    </message>
    <message>
        <source>newspaper shredded</source>
        <translation>Zeitungspapier, zerrissen</translation>
    </message>
    <message>
        <source>office paper shredded</source>
        <translation>Büropapier, zerrissen</translation>
    </message>
    <message>
        <source>paper egg tray</source>
        <translation>Eierkarton aus Pappe</translation>
    </message>
    <message>
        <source>pine shavings</source>
        <translation>Kiefernspäne</translation>
    </message>
    <message>
        <source>sawdust</source>
        <translation>Sägemehl</translation>
    </message>
    <message>
        <source>coconut coir (from a dry brick)</source>
        <translation>Kokosfaser (aus trockenem Ziegel)</translation>
    </message>
    <message>
        <source>leaves fallen</source>
        <translation>Laub, abgefallen</translation>
    </message>
    <message>
        <source>wheat straw chopped</source>
        <translation>Weizenstroh, gehäckselt</translation>
    </message>
    <message>
        <source>peat</source>
        <translation>Torf</translation>
    </message>
    <message>
        <source>grass clippings</source>
        <translation>Rasenschnitt</translation>
    </message>
    <message>
        <source>coffee grounds</source>
        <translation>Kaffeesatz</translation>
    </message>
    <message>
        <source>tea leaves spent</source>
        <translation>Teeblätter, gebraucht</translation>
    </message>
    <message>
        <source>fruit waste mixed</source>
        <translation>Obstreste, gemischt</translation>
    </message>
    <message>
        <source>vegetable scraps mixed</source>
        <translation>Gemüsereste, gemischt</translation>
    </message>
    <message>
        <source>kitchen mix</source>
        <translation>Küchenreste, gemischt</translation>
    </message>
    <message>
        <source>banana peel</source>
        <translation>Bananenschale</translation>
    </message>
    <message>
        <source>eggshell crushed</source>
        <translation>Eierschale, zerdrückt</translation>
    </message>
    <message>
        <source>horse manure aged</source>
        <translation>Pferdemist, abgelagert</translation>
    </message>
    <message>
        <source>rabbit manure</source>
        <translation>Kaninchenmist</translation>
    </message>
    <message>
        <source>apple, with skin</source>
        <translation>Apfel, mit Schale</translation>
    </message>
    <message>
        <source>banana flesh</source>
        <translation>Banane, ohne Schale</translation>
    </message>
    <message>
        <source>orange flesh</source>
        <translation>Orange, ohne Schale</translation>
    </message>
    <message>
        <source>orange peel</source>
        <translation>Orangenschale</translation>
    </message>
    <message>
        <source>lemon peel</source>
        <translation>Zitronenschale</translation>
    </message>
    <message>
        <source>watermelon flesh</source>
        <translation>Wassermelone, Fruchtfleisch</translation>
    </message>
    <message>
        <source>cantaloupe</source>
        <translation>Zuckermelone</translation>
    </message>
    <message>
        <source>pineapple</source>
        <translation>Ananas</translation>
    </message>
    <message>
        <source>strawberry</source>
        <translation>Erdbeere</translation>
    </message>
    <message>
        <source>grapes</source>
        <translation>Trauben</translation>
    </message>
    <message>
        <source>pear</source>
        <translation>Birne</translation>
    </message>
    <message>
        <source>peach</source>
        <translation>Pfirsich</translation>
    </message>
    <message>
        <source>avocado flesh</source>
        <translation>Avocado, Fruchtfleisch</translation>
    </message>
    <message>
        <source>lettuce, green leaf</source>
        <translation>Blattsalat, grün</translation>
    </message>
    <message>
        <source>lettuce, iceberg</source>
        <translation>Eissalat</translation>
    </message>
    <message>
        <source>spinach</source>
        <translation>Spinat</translation>
    </message>
    <message>
        <source>kale</source>
        <translation>Grünkohl</translation>
    </message>
    <message>
        <source>cabbage</source>
        <translation>Kohl</translation>
    </message>
    <message>
        <source>broccoli</source>
        <translation>Brokkoli</translation>
    </message>
    <message>
        <source>carrot</source>
        <translation>Karotte</translation>
    </message>
    <message>
        <source>potato, flesh+skin</source>
        <translation>Kartoffel, mit Schale</translation>
    </message>
    <message>
        <source>potato skin</source>
        <translation>Kartoffelschale</translation>
    </message>
    <message>
        <source>beet root</source>
        <translation>Rote Bete</translation>
    </message>
    <message>
        <source>tomato</source>
        <translation>Tomate</translation>
    </message>
    <message>
        <source>cucumber with peel</source>
        <translation>Gurke mit Schale</translation>
    </message>
    <message>
        <source>summer squash</source>
        <translation>Sommerkürbis</translation>
    </message>
    <message>
        <source>pumpkin</source>
        <translation>Kürbis</translation>
    </message>
    <message>
        <source>green pepper</source>
        <translation>Paprika, grün</translation>
    </message>
    <message>
        <source>celery</source>
        <translation>Sellerie</translation>
    </message>
    <message>
        <source>onion</source>
        <translation>Zwiebel</translation>
    </message>
    <message>
        <source>garlic</source>
        <translation>Knoblauch</translation>
    </message>
    <message>
        <source>snap beans</source>
        <translation>Gartenbohnen</translation>
    </message>
    <message>
        <source>green peas</source>
        <translation>Erbsen, grün</translation>
    </message>
    <message>
        <source>sweet corn</source>
        <translation>Zuckermais</translation>
    </message>
    <message>
        <source>mushroom, white</source>
        <translation>Champignon, weiß</translation>
    </message>
    <message>
        <source>bread, white</source>
        <translation>Weißbrot</translation>
    </message>
    <message>
        <source>bread, whole wheat</source>
        <translation>Vollkornbrot</translation>
    </message>
    <message>
        <source>rice, white, cooked</source>
        <translation>Reis, weiß, gekocht</translation>
    </message>
    <message>
        <source>pasta, cooked</source>
        <translation>Nudeln, gekocht</translation>
    </message>
    <message>
        <source>oats, dry</source>
        <translation>Haferflocken, trocken</translation>
    </message>
    <message>
        <source>egg (contents)</source>
        <translation>Ei (Inhalt)</translation>
    </message>
    <message>
        <source>meat</source>
        <translation>Fleisch</translation>
    </message>
    <message>
        <source>fish</source>
        <translation>Fisch</translation>
    </message>
    <message>
        <source>cheese</source>
        <translation>Käse</translation>
    </message>
    <message>
        <source>milk and yogurt</source>
        <translation>Milch und Joghurt</translation>
    </message>
    <message>
        <source>oily food</source>
        <translation>fettes Essen</translation>
    </message>
    <message>
        <source>salty leftovers</source>
        <translation>salzige Speisereste</translation>
    </message>
    <message>
        <source>chilli pepper</source>
        <translation>Chili</translation>
    </message>
    <message>
        <source>tea bags</source>
        <translation>Teebeutel</translation>
    </message>
    <message>
        <source>weeds with seeds</source>
        <translation>Unkraut mit Samen</translation>
    </message>
    <message>
        <source>manure of animals wormed lately</source>
        <translation>Mist kürzlich entwurmter Tiere</translation>
    </message>
    <message>
        <source>chicken manure</source>
        <translation>Hühnermist</translation>
    </message>
    <message>
        <source>cat or dog droppings</source>
        <translation>Katzen- oder Hundekot</translation>
    </message>
    <message>
        <source>glossy paper</source>
        <translation>Glanzpapier</translation>
    </message>
    <message>
        <source>till receipts</source>
        <translation>Kassenbons</translation>
    </message>
    <message>
        <source>treated or painted wood</source>
        <translation>behandeltes oder gestrichenes Holz</translation>
    </message>
    <message>
        <source>wood ash</source>
        <translation>Holzasche</translation>
    </message>
    <message>
        <source>garden lime (calcium carbonate)</source>
        <translation>Gartenkalk (kohlensaurer Kalk)</translation>
    </message>
    <message>
        <source>slaked or quick lime</source>
        <translation>Lösch- oder Branntkalk</translation>
    </message>
    <message>
        <source>compostable plastic</source>
        <translation>kompostierbarer Kunststoff</translation>
    </message>
</context>
<context>
    <name>MaterialWords</name>
    <message>
        <source>yes</source>
        <translation>ja</translation>
    </message>
    <message>
        <source>a little</source>
        <translation>ein wenig</translation>
    </message>
    <message>
        <source>no</source>
        <translation>nein</translation>
    </message>
    <message>
        <source>Acid, and its peel keeps worms off until it has rotted: much of it sours the bed.</source>
        <translation>Sauer, und die Schale hält Würmer fern, bis sie verrottet ist: viel davon macht das Bett sauer.</translation>
    </message>
    <message>
        <source>Its sharp oils keep worms off, and it smells while it rots.</source>
        <translation>Seine scharfen Öle halten Würmer fern, und es riecht, während es verrottet.</translation>
    </message>
    <message>
        <source>Starch in a lump ferments, heats and draws mites; a little, spread thin and covered, is fine.</source>
        <translation>Stärke in einem Klumpen gärt, wird warm und zieht Milben an; ein wenig, dünn verteilt und abgedeckt, ist in Ordnung.</translation>
    </message>
    <message>
        <source>Salt stays in the trays and dries worms out through their skin.</source>
        <translation>Salz bleibt in den Etagen und trocknet Würmer durch die Haut aus.</translation>
    </message>
    <message>
        <source>Oil shuts the air out, turns rancid and draws flies and rats.</source>
        <translation>Öl sperrt die Luft aus, wird ranzig und zieht Fliegen und Ratten an.</translation>
    </message>
    <message>
        <source>It rots without air, smells, and draws flies, rats and mice.</source>
        <translation>Es fault ohne Luft, riecht und zieht Fliegen, Ratten und Mäuse an.</translation>
    </message>
    <message>
        <source>It sours, smells, and draws flies, rats and mice.</source>
        <translation>Es wird sauer, riecht und zieht Fliegen, Ratten und Mäuse an.</translation>
    </message>
    <message>
        <source>It can carry germs and worm eggs that make people ill, and a worm bin does not get hot enough to kill them.</source>
        <translation>Es kann Keime und Wurmeier tragen, die Menschen krank machen, und eine Wurmkiste wird nicht heiß genug, um sie zu töten.</translation>
    </message>
    <message>
        <source>What was given against the animal&apos;s worms kills these too; let manure age, and ask when the animals were last treated.</source>
        <translation>Was gegen die Würmer des Tiers gegeben wurde, tötet auch diese; lass Mist ablagern und frage, wann die Tiere zuletzt behandelt wurden.</translation>
    </message>
    <message>
        <source>So rich in nitrogen that it heats and gives off ammonia; only aged, and little.</source>
        <translation>So reich an Stickstoff, dass es warm wird und Ammoniak abgibt; nur abgelagert und wenig.</translation>
    </message>
    <message>
        <source>In a thick layer it mats, heats and shuts the air out; wilted and spread thin it is fine.</source>
        <translation>In dicker Schicht verfilzt es, wird warm und sperrt die Luft aus; angewelkt und dünn verteilt ist es in Ordnung.</translation>
    </message>
    <message>
        <source>Seeds stay alive in a worm bin and come up where the castings go.</source>
        <translation>Samen überleben in einer Wurmkiste und gehen dort auf, wo der Humus hinkommt.</translation>
    </message>
    <message>
        <source>Many bags hold plastic that stays in the castings; tear them open and give the leaves.</source>
        <translation>Viele Beutel enthalten Kunststoff, der im Humus bleibt; reiße sie auf und gib nur die Blätter.</translation>
    </message>
    <message>
        <source>Coatings, glossy inks and colour developers stay in the castings.</source>
        <translation>Beschichtungen, glänzende Druckfarben und Farbentwickler bleiben im Humus.</translation>
    </message>
    <message>
        <source>Preservatives and paint can hold metals that harm worms and stay in the castings.</source>
        <translation>Holzschutzmittel und Lack können Metalle enthalten, die Würmern schaden und im Humus bleiben.</translation>
    </message>
    <message>
        <source>Caustic: it burns worms and skin. Against a sour bed use calcium carbonate only.</source>
        <translation>Ätzend: es verbrennt Würmer und Haut. Gegen ein saures Bett nimm nur Calciumcarbonat.</translation>
    </message>
    <message>
        <source>It softens in hot piles only; in a worm bin it stays for years.</source>
        <translation>Es wird nur in heißen Mieten weich; in einer Wurmkiste bleibt es jahrelang.</translation>
    </message>
    <message>
        <source>It works, but it is dug from peatland; paper, cardboard and leaves serve as well.</source>
        <translation>Es taugt, wird aber in Mooren abgebaut; Papier, Pappe und Laub tun es ebenso.</translation>
    </message>
    <message>
        <source>soft fruit and leaves</source>
        <translation>weiches Obst und Blätter</translation>
    </message>
    <message>
        <source>mixed kitchen scraps</source>
        <translation>gemischte Küchenreste</translation>
    </message>
    <message>
        <source>grounds, grain and bread</source>
        <translation>Kaffeesatz, Getreide und Brot</translation>
    </message>
    <message>
        <source>paper</source>
        <translation>Papier</translation>
    </message>
    <message>
        <source>cardboard, straw and leaves</source>
        <translation>Pappe, Stroh und Laub</translation>
    </message>
    <message>
        <source>wood; it stays</source>
        <translation>Holz; es bleibt</translation>
    </message>
    <message>
        <source>coir and peat; it stays</source>
        <translation>Kokosfaser und Torf; sie bleiben</translation>
    </message>
    <message>
        <source>shell and grit; it stays</source>
        <translation>Schale und Sand; sie bleiben</translation>
    </message>
    <message>
        <source>food</source>
        <translation>Futter</translation>
    </message>
    <message>
        <source>bedding</source>
        <translation>Einstreu</translation>
    </message>
    <message>
        <source>mineral</source>
        <translation>Mineral</translation>
    </message>
    <message>
        <source>cup (US)</source>
        <translation>Tasse (US)</translation>
    </message>
    <message>
        <source>tablespoon</source>
        <translation>Esslöffel</translation>
    </message>
    <message>
        <source>handful</source>
        <translation>Handvoll</translation>
    </message>
    <message>
        <source>bucket (%1)</source>
        <translation>Eimer (%1)</translation>
    </message>
    <message>
        <source>none</source>
        <comment>caution</comment>
        <translation>keiner</translation>
    </message>
    <message>
        <source>acid</source>
        <translation>sauer</translation>
    </message>
    <message>
        <source>sharp oils</source>
        <translation>scharfe Öle</translation>
    </message>
    <message>
        <source>starch in lumps</source>
        <translation>Stärke in Klumpen</translation>
    </message>
    <message>
        <source>salty</source>
        <translation>salzig</translation>
    </message>
    <message>
        <source>oily</source>
        <translation>ölig</translation>
    </message>
    <message>
        <source>meat or fish</source>
        <translation>Fleisch oder Fisch</translation>
    </message>
    <message>
        <source>dairy</source>
        <translation>Milchprodukt</translation>
    </message>
    <message>
        <source>pet droppings</source>
        <translation>Kot von Haustieren</translation>
    </message>
    <message>
        <source>wormed animals</source>
        <translation>entwurmte Tiere</translation>
    </message>
    <message>
        <source>rich in nitrogen</source>
        <translation>reich an Stickstoff</translation>
    </message>
    <message>
        <source>heats in a layer</source>
        <translation>erhitzt sich in Lagen</translation>
    </message>
    <message>
        <source>seeds</source>
        <translation>Samen</translation>
    </message>
    <message>
        <source>plastic in bags</source>
        <translation>Kunststoff in Beuteln</translation>
    </message>
    <message>
        <source>coated or glossy</source>
        <translation>beschichtet oder glänzend</translation>
    </message>
    <message>
        <source>treated or painted</source>
        <translation>behandelt oder gestrichen</translation>
    </message>
    <message>
        <source>caustic</source>
        <translation>ätzend</translation>
    </message>
    <message>
        <source>compostable plastic</source>
        <translation>kompostierbarer Kunststoff</translation>
    </message>
    <message>
        <source>from peatland</source>
        <translation>aus Mooren</translation>
    </message>
</context>
<context>
    <name>MoveBody</name>
    <message>
        <source>Worms</source>
        <translation>Würmer</translation>
    </message>
    <message>
        <source>What do the worms weigh?</source>
        <translation>Was wiegen die Würmer?</translation>
    </message>
    <message>
        <source>Into</source>
        <translation>Nach</translation>
    </message>
    <message>
        <source>Choose the stack that they go to.</source>
        <translation>Wähle den Stapel, in den sie kommen.</translation>
    </message>
    <message>
        <source>of a colony of about %1</source>
        <translation>eines Bestands von etwa %1</translation>
    </message>
</context>
<context>
    <name>NewStack</name>
    <message>
        <source>The stack</source>
        <translation>Der Stapel</translation>
    </message>
    <message>
        <source>Name</source>
        <translation>Name</translation>
    </message>
    <message>
        <source>Give it a name, such as where it stands.</source>
        <translation>Gib ihm einen Namen, etwa wo er steht.</translation>
    </message>
    <message>
        <source>Scullery, Shed, Balcony, …</source>
        <translation>Speisekammer, Schuppen, Balkon, …</translation>
    </message>
    <message>
        <source>Place</source>
        <translation>Ort</translation>
    </message>
    <message>
        <source>How warm is it there, usually?</source>
        <translation>Wie warm ist es dort üblicherweise?</translation>
    </message>
    <message>
        <source>Floor of a tray</source>
        <translation>Boden einer Etage</translation>
    </message>
    <message>
        <source>How large is a tray?</source>
        <translation>Wie groß ist eine Etage?</translation>
    </message>
    <message>
        <source>Height of a tray</source>
        <translation>Höhe einer Etage</translation>
    </message>
    <message>
        <source>How high is a tray?</source>
        <translation>Wie hoch ist eine Etage?</translation>
    </message>
    <message>
        <source>Trays owned</source>
        <translation>Vorhandene Etagen</translation>
    </message>
    <message>
        <source>How many trays are there?</source>
        <translation>Wie viele Etagen gibt es?</translation>
    </message>
    <message>
        <source>Sump holds</source>
        <translation>Auffangschale fasst</translation>
    </message>
    <message>
        <source>How much does the drainage tray hold?</source>
        <translation>Wie viel fasst die Auffangschale?</translation>
    </message>
    <message>
        <source>Spigot</source>
        <translation>Ablaufhahn</translation>
    </message>
    <message>
        <source>Stands on</source>
        <translation>Steht auf</translation>
    </message>
    <message>
        <source>The first bedding</source>
        <translation>Die erste Einstreu</translation>
    </message>
    <message>
        <source>Bedding</source>
        <translation>Einstreu</translation>
    </message>
    <message>
        <source>Which bedding?</source>
        <translation>Welche Einstreu?</translation>
    </message>
    <message>
        <source>Depth once laid</source>
        <translation>Tiefe beim Einlegen</translation>
    </message>
    <message>
        <source>How deep? %1 to %2 is common.</source>
        <translation>Wie tief? %1 bis %2 sind üblich.</translation>
    </message>
    <message>
        <source>Amount, dry</source>
        <translation>Menge, trocken</translation>
    </message>
    <message>
        <source>How much bedding, as it comes to hand?</source>
        <translation>Wie viel Einstreu, so wie sie zur Hand ist?</translation>
    </message>
    <message>
        <source>The worms</source>
        <translation>Die Würmer</translation>
    </message>
    <message>
        <source>Worms put in</source>
        <translation>Würmer eingesetzt</translation>
    </message>
    <message>
        <source>%1 to %2 is common for a first tray; empty if they come later</source>
        <translation>%1 bis %2 sind für eine erste Etage üblich; leer, wenn sie später kommen</translation>
    </message>
    <message>
        <source>Species</source>
        <translation>Art</translation>
    </message>
    <message>
        <source>First feeding</source>
        <translation>Erste Fütterung</translation>
    </message>
    <message>
        <source>a handful of kitchen mix at most; empty to wait</source>
        <translation>höchstens eine Handvoll gemischter Küchenreste; leer, um zu warten</translation>
    </message>
    <message>
        <source>More water</source>
        <translation>Mehr Wasser</translation>
    </message>
    <message>
        <source>beyond what wets the bedding; usually empty</source>
        <translation>über das Anfeuchten der Einstreu hinaus; meist leer</translation>
    </message>
    <message>
        <source>Started on</source>
        <translation>Begonnen am</translation>
    </message>
    <message>
        <source>On which day?</source>
        <translation>An welchem Tag?</translation>
    </message>
    <message>
        <source>Put in %1 of «%2» and %3 of water: it makes about %4, as wet as a wrung-out sponge. Let it stand for a day before the worms go in.</source>
        <translation>Gib %1 „%2“ und %3 Wasser hinein: das ergibt etwa %4, so nass wie ein ausgedrückter Schwamm. Lass es einen Tag stehen, bevor die Würmer hineinkommen.</translation>
    </message>
    <message>
        <source>A retired stack bears that name; choose another.</source>
        <translation>Ein stillgelegter Stapel trägt diesen Namen; wähle einen anderen.</translation>
    </message>
    <message>
        <source>There is a stack of that name already.</source>
        <translation>Einen Stapel dieses Namens gibt es schon.</translation>
    </message>
    <message>
        <source>A name cannot hold a semicolon.</source>
        <translation>Ein Name darf kein Semikolon enthalten.</translation>
    </message>
    <message>
        <source>%1 of worms is more than a tray of this floor can carry, about %2. Is the amount right, and its unit?</source>
        <translation>%1 Würmer sind mehr, als eine Etage dieser Fläche tragen kann, etwa %2. Stimmt die Menge, stimmt die Einheit?</translation>
    </message>
    <message>
        <source>%1 of food is more than the whole tray holds, about %2. Is the amount right, and its unit?</source>
        <translation>%1 Futter sind mehr, als die ganze Etage fasst, etwa %2. Stimmt die Menge, stimmt die Einheit?</translation>
    </message>
    <message>
        <source>%1 of bedding would lie %2 deep in a tray that is %3 high. Is the amount right, and its unit?</source>
        <translation>%1 Einstreu lägen %2 hoch in einer Etage, die %3 hoch ist. Stimmt die Menge, stimmt die Einheit?</translation>
    </message>
</context>
<context>
    <name>OwnMaterialBody</name>
    <message>
        <source>Name</source>
        <translation>Name</translation>
    </message>
    <message>
        <source>What is it called?</source>
        <translation>Wie heißt es?</translation>
    </message>
    <message>
        <source>Softens like</source>
        <translation>Wird weich wie</translation>
    </message>
    <message>
        <source>not said</source>
        <translation>nicht angegeben</translation>
    </message>
    <message>
        <source>Moisture</source>
        <translation>Feuchte</translation>
    </message>
    <message>
        <source>Nitrogen</source>
        <translation>Stickstoff</translation>
    </message>
    <message>
        <source>% of dry matter</source>
        <translation>% der Trockenmasse</translation>
    </message>
    <message>
        <source>C:N</source>
        <translation>C:N</translation>
    </message>
    <message>
        <source>Bulk, loose</source>
        <translation>Dichte, locker</translation>
    </message>
    <message>
        <source>Water it holds</source>
        <translation>Wasser, das es hält</translation>
    </message>
    <message>
        <source>by weight of dry</source>
        <translation>je Gewicht trocken</translation>
    </message>
    <message>
        <source>Welcome in a bin</source>
        <translation>In der Kiste willkommen</translation>
    </message>
    <message>
        <source>Reason against it</source>
        <translation>Grund dagegen</translation>
    </message>
</context>
<context>
    <name>PageFlow</name>
    <message>
        <source>Page %1 of %2</source>
        <translation>Seite %1 von %2</translation>
    </message>
</context>
<context>
    <name>Parameters</name>
    <message>
        <source>ingestion of a worm of 1 g</source>
        <translation>Aufnahme eines Wurms von 1 g</translation>
    </message>
    <message>
        <source>half-saturation of ingestion</source>
        <translation>Halbsättigung der Aufnahme</translation>
    </message>
    <message>
        <source>assimilated share</source>
        <translation>assimilierter Anteil</translation>
    </message>
    <message>
        <source>maintenance of a worm of 1 g at 25 C</source>
        <translation>Erhaltung eines Wurms von 1 g bei 25 °C</translation>
    </message>
    <message>
        <source>mobilisation of the reserve</source>
        <translation>Mobilisierung der Reserve</translation>
    </message>
    <message>
        <source>share of the surplus to laying</source>
        <translation>Anteil des Überschusses für Kokons</translation>
    </message>
    <message>
        <source>cocoons that hatch</source>
        <translation>Kokons, die schlüpfen</translation>
    </message>
    <message>
        <source>young of a cocoon that hatches</source>
        <translation>Junge eines schlüpfenden Kokons</translation>
    </message>
    <message>
        <source>incubation</source>
        <translation>Brutdauer</translation>
    </message>
    <message>
        <source>death</source>
        <translation>Sterben</translation>
    </message>
    <message>
        <source>crowding that halves the greatest mass</source>
        <translation>Enge, die die größte Masse halbiert</translation>
    </message>
    <message>
        <source>crowding that slows laying</source>
        <translation>Enge, die das Legen bremst</translation>
    </message>
    <message>
        <source>softening of food, scale</source>
        <translation>Weichwerden von Futter, Faktor</translation>
    </message>
    <message>
        <source>softening of paper, cardboard and slower, scale</source>
        <translation>Weichwerden von Papier, Pappe und Langsamerem, Faktor</translation>
    </message>
    <message>
        <source>worms&apos; help in softening</source>
        <translation>Hilfe der Würmer beim Weichwerden</translation>
    </message>
    <message>
        <source>respiration that halves the air</source>
        <translation>Atmung, die die Luft halbiert</translation>
    </message>
    <message>
        <source>respired in softening</source>
        <translation>beim Weichwerden veratmet</translation>
    </message>
    <message>
        <source>respiration of castings</source>
        <translation>Atmung des Humus</translation>
    </message>
    <message>
        <source>coldest for growth</source>
        <translation>kälteste für Wachstum</translation>
    </message>
    <message>
        <source>best for growth</source>
        <translation>beste für Wachstum</translation>
    </message>
    <message>
        <source>hottest for growth</source>
        <translation>heißeste für Wachstum</translation>
    </message>
    <message>
        <source>field capacity, scale</source>
        <translation>Feldkapazität, Faktor</translation>
    </message>
    <message>
        <source>poured water that runs through at once</source>
        <translation>Gegossenes, das gleich durchläuft</translation>
    </message>
    <message>
        <source>evaporation under the lid</source>
        <translation>Verdunstung unter dem Deckel</translation>
    </message>
    <message>
        <source>time constant of light-drying</source>
        <translation>Zeitkonstante des Trocknens im Licht</translation>
    </message>
    <message>
        <source>salts formed of what is eaten</source>
        <translation>aus Gefressenem gebildete Salze</translation>
    </message>
    <message>
        <source>worms bought, true mass to mass written</source>
        <translation>gekaufte Würmer, wahre zu eingetragener Masse</translation>
    </message>
    <message>
        <source>household&apos;s scale, true mass to mass read</source>
        <translation>Waage des Haushalts, wahre zu abgelesener Masse</translation>
    </message>
    <message>
        <source>empty tray</source>
        <translation>leere Etage</translation>
    </message>
    <message>
        <source>worms found in a search</source>
        <translation>bei einer Suche gefundene Würmer</translation>
    </message>
    <message>
        <source>what is called some or many worms, log shift</source>
        <translation>was einige oder viele Würmer heißt, Verschiebung im Log</translation>
    </message>
    <message>
        <source>usual feedings not written down</source>
        <translation>übliche Fütterungen, nicht eingetragen</translation>
    </message>
</context>
<context>
    <name>PartStories</name>
    <message>
        <source>food, fresh, a week</source>
        <translation>Futter, frisch, je Woche</translation>
    </message>
    <message>
        <source>none</source>
        <translation>keine</translation>
    </message>
    <message>
        <source>%1 of food in %2</source>
        <comment>an amount; so many feedings</comment>
        <translation>%1 Futter in %2</translation>
    </message>
    <message numerus="yes">
        <source>%n feeding(s)</source>
        <translation>
            <numerusform>%n Fütterung</numerusform>
            <numerusform>%n Fütterungen</numerusform>
        </translation>
    </message>
    <message>
        <source>%1 of bedding</source>
        <translation>%1 Einstreu</translation>
    </message>
    <message>
        <source>%1 of paper over it</source>
        <translation>%1 Papier darüber</translation>
    </message>
    <message>
        <source>Put in, as it came</source>
        <translation>Eingebracht, wie es kam</translation>
    </message>
    <message>
        <source>Lifting</source>
        <translation>Heben</translation>
    </message>
    <message>
        <source>%1: %2.</source>
        <comment>that a step would be too early, and why</comment>
        <translation>%1: %2.</translation>
    </message>
    <message>
        <source>%1: not while it stands alone; the worms go down into the tray beneath.</source>
        <translation>%1: nicht, solange sie allein steht; die Würmer wandern in die Etage darunter.</translation>
    </message>
    <message>
        <source>%1: only the tray in slot 1; this one comes down with each harvest.</source>
        <translation>%1: nur die Etage an Platz 1; diese kommt mit jeder Ernte tiefer.</translation>
    </message>
    <message>
        <source>%1 on %2</source>
        <comment>a ratio and a day</comment>
        <translation>%1 am %2</translation>
    </message>
    <message>
        <source>The estimates are being made.</source>
        <translation>Die Schätzungen entstehen gerade.</translation>
    </message>
    <message>
        <source>Feed-to-cast: %1. Ready at 0.10 or below.</source>
        <translation>Futter zu Humus: %1. Reif bei 0,10 oder darunter.</translation>
    </message>
    <message>
        <source>castings, dry</source>
        <translation>Humus, trocken</translation>
    </message>
    <message>
        <source>feed-to-cast</source>
        <translation>Futter zu Humus</translation>
    </message>
    <message>
        <source>ready</source>
        <translation>reif</translation>
    </message>
    <message>
        <source>–</source>
        <translation>–</translation>
    </message>
    <message>
        <source>(%1)</source>
        <translation>(%1)</translation>
    </message>
    <message>
        <source>level</source>
        <translation>Stand</translation>
    </message>
    <message>
        <source>full</source>
        <translation>voll</translation>
    </message>
    <message>
        <source>drained a week; mark: expected</source>
        <translation>je Woche abgelassen; Marke: erwartet</translation>
    </message>
    <message>
        <source>%1 flushed %2</source>
        <comment>an amount, a day</comment>
        <translation>%1 durchgespült %2</translation>
    </message>
    <message>
        <source>%1 on %2</source>
        <comment>an amount, a day</comment>
        <translation>%1 am %2</translation>
    </message>
    <message>
        <source>Drained last</source>
        <translation>Zuletzt abgelassen</translation>
    </message>
    <message>
        <source>never yet</source>
        <translation>noch nie</translation>
    </message>
    <message>
        <source>Level %1 of %2. Drained last: %3.</source>
        <translation>Stand %1 von %2. Zuletzt abgelassen: %3.</translation>
    </message>
    <message numerus="yes">
        <source>%1: no tray is spare; all %n stand.</source>
        <translation>
            <numerusform>%1: keine Etage ist frei; die einzige steht.</numerusform>
            <numerusform>%1: keine Etage ist frei; alle %n stehen.</numerusform>
        </translation>
    </message>
    <message>
        <source>Here stands a bar for each week&apos;s food.</source>
        <translation>Hier steht ein Balken je Futterwoche.</translation>
    </message>
    <message>
        <source>Here grows a line of its castings.</source>
        <translation>Hier wächst die Linie ihres Humus.</translation>
    </message>
    <message>
        <source>Here falls a line until it is ready.</source>
        <translation>Hier fällt eine Linie, bis sie reif ist.</translation>
    </message>
    <message>
        <source>Here stands a bar for each drain.</source>
        <translation>Hier steht ein Balken je Ablassen.</translation>
    </message>
    <message>
        <source>Here rises a line of its level.</source>
        <translation>Hier steigt die Linie des Stands.</translation>
    </message>
    <message>
        <source>highest %1</source>
        <translation>höchstes %1</translation>
    </message>
    <message>
        <source>The spigot is open: it runs out as it comes.</source>
        <translation>Der Hahn ist offen: es läuft ab, wie es kommt.</translation>
    </message>
</context>
<context>
    <name>QObject</name>
    <message>
        <source>No household is open.</source>
        <translation>Kein Haushalt ist geöffnet.</translation>
    </message>
    <message>
        <source>The estimates did not come.</source>
        <translation>Die Schätzungen kamen nicht.</translation>
    </message>
    <message>
        <source>The page %1 could not be drawn.</source>
        <translation>Die Seite %1 konnte nicht gezeichnet werden.</translation>
    </message>
    <message>
        <source>The folder %1 cannot be made.</source>
        <translation>Der Ordner %1 kann nicht angelegt werden.</translation>
    </message>
    <message>
        <source>This build holds no demo household.</source>
        <translation>Dieser Bau enthält keinen Demo-Haushalt.</translation>
    </message>
    <message>
        <source>%1 in %2</source>
        <translation>%1 in %2</translation>
    </message>
    <message>
        <source>Close</source>
        <translation>Schließen</translation>
    </message>
</context>
<context>
    <name>ReadingBody</name>
    <message>
        <source>In the bed</source>
        <translation>Im Bett</translation>
    </message>
    <message>
        <source>Air around</source>
        <translation>Luft ringsum</translation>
    </message>
    <message>
        <source>Air humidity</source>
        <translation>Luftfeuchte</translation>
    </message>
    <message>
        <source>Moisture of the bed</source>
        <translation>Feuchte des Betts</translation>
    </message>
    <message>
        <source>of wet mass</source>
        <translation>der nassen Masse</translation>
    </message>
    <message>
        <source>Squeezed in the hand</source>
        <translation>In der Hand gedrückt</translation>
    </message>
    <message>
        <source>not noted</source>
        <translation>nicht notiert</translation>
    </message>
    <message>
        <source>1: crumbles, dry</source>
        <translation>1: zerfällt, trocken</translation>
    </message>
    <message>
        <source>2: holds together, no shine</source>
        <translation>2: hält zusammen, kein Glanz</translation>
    </message>
    <message>
        <source>3: like a wrung-out sponge</source>
        <translation>3: wie ein ausgedrückter Schwamm</translation>
    </message>
    <message>
        <source>4: drops fall</source>
        <translation>4: Tropfen fallen</translation>
    </message>
    <message>
        <source>5: water runs</source>
        <translation>5: Wasser läuft</translation>
    </message>
    <message>
        <source>pH</source>
        <translation>pH</translation>
    </message>
    <message>
        <source>Give at least one reading.</source>
        <translation>Gib mindestens einen Messwert an.</translation>
    </message>
    <message>
        <source>Standing in the sump</source>
        <translation>Stand in der Auffangschale</translation>
    </message>
    <message>
        <source>read with a ruler or at its marks; nothing is drained</source>
        <translation>am Lineal oder an den Marken abgelesen; nichts wird abgelassen</translation>
    </message>
    <message>
        <source>read with a ruler or at its marks; it holds %1</source>
        <translation>am Lineal oder an den Marken abgelesen; sie fasst %1</translation>
    </message>
</context>
<context>
    <name>ReadingsView</name>
    <message>
        <source>nothing, left out</source>
        <translation>nichts, weggelassen</translation>
    </message>
    <message>
        <source>date and time</source>
        <translation>Datum und Uhrzeit</translation>
    </message>
    <message>
        <source>time of day, beside the date</source>
        <translation>Uhrzeit, neben dem Datum</translation>
    </message>
    <message>
        <source>temperature of the bed, °C</source>
        <translation>Temperatur des Betts, °C</translation>
    </message>
    <message>
        <source>temperature of the bed, °F</source>
        <translation>Temperatur des Betts, °F</translation>
    </message>
    <message>
        <source>temperature of the bed: °C or °F?</source>
        <translation>Temperatur des Betts: °C oder °F?</translation>
    </message>
    <message>
        <source>temperature of the air, °C</source>
        <translation>Temperatur der Luft, °C</translation>
    </message>
    <message>
        <source>temperature of the air, °F</source>
        <translation>Temperatur der Luft, °F</translation>
    </message>
    <message>
        <source>temperature of the air: °C or °F?</source>
        <translation>Temperatur der Luft: °C oder °F?</translation>
    </message>
    <message>
        <source>moisture of the bed, %</source>
        <translation>Feuchte des Betts, %</translation>
    </message>
    <message>
        <source>humidity of the air, %</source>
        <translation>Feuchte der Luft, %</translation>
    </message>
</context>
<context>
    <name>RemoveBody</name>
    <message>
        <source>Worms</source>
        <translation>Würmer</translation>
    </message>
    <message>
        <source>What do the worms weigh?</source>
        <translation>Was wiegen die Würmer?</translation>
    </message>
    <message>
        <source>of a colony of about %1</source>
        <translation>eines Bestands von etwa %1</translation>
    </message>
</context>
<context>
    <name>RoutineBody</name>
    <message>
        <source>Of</source>
        <translation>Woraus</translation>
    </message>
    <message>
        <source>water</source>
        <translation>Wasser</translation>
    </message>
    <message>
        <source>paper cover</source>
        <translation>Abdeckung aus Papier</translation>
    </message>
    <message>
        <source>Each time</source>
        <translation>Jedes Mal</translation>
    </message>
    <message>
        <source>How much each time? 0 ends the routine.</source>
        <translation>Wie viel jedes Mal? 0 beendet die Gewohnheit.</translation>
    </message>
    <message>
        <source>done without being written down, until changed; 0 ends it</source>
        <translation>wird getan, ohne eingetragen zu werden, bis es geändert wird; 0 beendet es</translation>
    </message>
    <message>
        <source>Every so many days</source>
        <translation>Alle so viele Tage</translation>
    </message>
</context>
<context>
    <name>RowsAtFault</name>
    <message>
        <source>%1 rows at fault</source>
        <translation>%1 fehlerhafte Zeilen</translation>
    </message>
    <message>
        <source>Save the rows at fault</source>
        <translation>Fehlerhafte Zeilen sichern</translation>
    </message>
    <message>
        <source>Tables (*.csv)</source>
        <translation>Tabellen (*.csv)</translation>
    </message>
    <message>
        <source>The rows at fault were written to %1.</source>
        <translation>Die fehlerhaften Zeilen wurden nach %1 geschrieben.</translation>
    </message>
</context>
<context>
    <name>SaidAhead</name>
    <message>
        <source>%1: %2.</source>
        <translation>%1: %2.</translation>
    </message>
    <message>
        <source>Ready %1; feed-to-cast %2.</source>
        <translation>Reif %1; Futter zu Humus %2.</translation>
    </message>
    <message>
        <source>%1 of worms is more than the trays here can carry, about %2. Is the amount right, and its unit?</source>
        <translation>%1 Würmer sind mehr, als die Etagen hier tragen können, etwa %2. Stimmt die Menge, stimmt die Einheit?</translation>
    </message>
</context>
<context>
    <name>SetupBody</name>
    <message>
        <source>Place</source>
        <translation>Ort</translation>
    </message>
    <message>
        <source>Trays owned</source>
        <translation>Vorhandene Etagen</translation>
    </message>
    <message>
        <source>Floor of a tray</source>
        <translation>Boden einer Etage</translation>
    </message>
    <message>
        <source>Height of a tray</source>
        <translation>Höhe einer Etage</translation>
    </message>
    <message>
        <source>Sump holds</source>
        <translation>Auffangschale fasst</translation>
    </message>
    <message>
        <source>Spigot</source>
        <translation>Ablaufhahn</translation>
    </message>
    <message>
        <source>Stands on</source>
        <translation>Steht auf</translation>
    </message>
    <message>
        <source>This cannot be left out.</source>
        <translation>Das kann nicht wegbleiben.</translation>
    </message>
    <message>
        <source>Nothing is changed yet.</source>
        <translation>Noch ist nichts geändert.</translation>
    </message>
</context>
<context>
    <name>SetupChoices</name>
    <message>
        <source>indoors</source>
        <translation>drinnen</translation>
    </message>
    <message>
        <source>garage, shed or porch</source>
        <translation>Garage, Schuppen oder Veranda</translation>
    </message>
    <message>
        <source>outdoors</source>
        <translation>draußen</translation>
    </message>
    <message>
        <source>legs</source>
        <translation>Beine</translation>
    </message>
    <message>
        <source>a base</source>
        <translation>ein Sockel</translation>
    </message>
    <message>
        <source>the floor</source>
        <translation>der Boden</translation>
    </message>
    <message>
        <source>open, over a jar</source>
        <translation>offen, über einem Glas</translation>
    </message>
    <message>
        <source>shut</source>
        <translation>zu</translation>
    </message>
</context>
<context>
    <name>Sheet</name>
    <message>
        <source>%1 · as of %2 · %3</source>
        <translation>%1 · Stand %2 · %3</translation>
    </message>
    <message>
        <source>%1 · %2. Estimates, no measurements: a look into the tray rules over any number here.</source>
        <translation>%1 · %2. Schätzungen, keine Messungen: ein Blick in die Etage gilt mehr als jede Zahl hier.</translation>
    </message>
    <message>
        <source>This stack has ended. What follows is its story.</source>
        <translation>Dieser Stapel ist beendet. Es folgt seine Geschichte.</translation>
    </message>
    <message>
        <source>How it stands</source>
        <translation>Wie er steht</translation>
    </message>
    <message>
        <source>The estimates are not there yet: this sheet holds only what the journal knows.</source>
        <translation>Die Schätzungen sind noch nicht da: dieses Blatt enthält nur, was das Tagebuch weiß.</translation>
    </message>
    <message>
        <source>The story of its batches</source>
        <translation>Die Geschichte seiner Chargen</translation>
    </message>
    <message>
        <source>No tray has been bedded yet.</source>
        <translation>Noch keine Etage wurde eingestreut.</translation>
    </message>
    <message>
        <source>Charts of the past year and the forecast under usual care</source>
        <translation>Diagramme des vergangenen Jahres und die Vorhersage bei üblicher Pflege</translation>
    </message>
    <message>
        <source>Lines are estimates, bands the range that holds nine times in ten; what is shaded, with a dashed line, is the forecast. Signs stand for what was written down.</source>
        <translation>Linien sind Schätzungen, Bänder der Bereich, der in neun von zehn Fällen hält; das Schattierte mit gestrichelter Linie ist die Vorhersage. Zeichen stehen für das, was eingetragen wurde.</translation>
    </message>
    <message>
        <source>The signs in the charts</source>
        <translation>Die Zeichen in den Diagrammen</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>The pages could not be drawn.</source>
        <translation>Die Seiten konnten nicht gezeichnet werden.</translation>
    </message>
</context>
<context>
    <name>SheetSentence</name>
    <message numerus="yes">
        <source>%n row(s), %1.</source>
        <translation>
            <numerusform>%n Zeile, %1.</numerusform>
            <numerusform>%n Zeilen, %1.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>The first %n row(s), %1; the others are being read.</source>
        <translation>
            <numerusform>Die erste Zeile, %1; die übrigen werden gelesen.</numerusform>
            <numerusform>Die ersten %n Zeilen, %1; die übrigen werden gelesen.</numerusform>
        </translation>
    </message>
    <message>
        <source>What parts the cells is not certain: look at the columns below.</source>
        <translation>Was die Zellen trennt, ist nicht sicher: bitte die Spalten unten ansehen.</translation>
    </message>
    <message>
        <source>No row names the columns: say below what each holds.</source>
        <translation>Keine Zeile benennt die Spalten: bitte unten angeben, was jede enthält.</translation>
    </message>
    <message>
        <source>The columns are named in line %1; what stands above it is left out.</source>
        <translation>Die Spalten sind in Zeile %1 benannt; was darüber steht, bleibt weg.</translation>
    </message>
    <message>
        <source>No column holds the date. Choose the one that does in the first row of the table.</source>
        <translation>Keine Spalte enthält das Datum. Wähle sie in der ersten Zeile der Tabelle.</translation>
    </message>
    <message>
        <source>Looking at the rows…</source>
        <translation>Die Zeilen werden geprüft…</translation>
    </message>
    <message>
        <source>Please answer what is asked above; then you see what becomes of each row.</source>
        <translation>Bitte beantworte, was oben gefragt wird; dann siehst du, was aus jeder Zeile wird.</translation>
    </message>
    <message>
        <source>There are no rows beneath the names of the columns: nothing to import.</source>
        <translation>Unter den Namen der Spalten stehen keine Zeilen: nichts zu importieren.</translation>
    </message>
    <message numerus="yes">
        <source>%n entry(ies) will be added, as one step that can be undone.</source>
        <translation>
            <numerusform>%n Eintrag wird hinzugefügt, als ein Schritt, der sich rückgängig machen lässt.</numerusform>
            <numerusform>%n Einträge werden hinzugefügt, als ein Schritt, der sich rückgängig machen lässt.</numerusform>
        </translation>
    </message>
    <message>
        <source>Nothing will be added.</source>
        <translation>Nichts wird hinzugefügt.</translation>
    </message>
    <message numerus="yes">
        <source>%n of them begin(s) what is a new stack.</source>
        <translation>
            <numerusform>%n davon beginnt einen neuen Stapel.</numerusform>
            <numerusform>%n davon beginnen einen neuen Stapel.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n row(s) at fault: not added.</source>
        <translation>
            <numerusform>%n Zeile fehlerhaft: nicht hinzugefügt.</numerusform>
            <numerusform>%n Zeilen fehlerhaft: nicht hinzugefügt.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n row(s) left out as answered.</source>
        <translation>
            <numerusform>%n Zeile wie geantwortet weggelassen.</numerusform>
            <numerusform>%n Zeilen wie geantwortet weggelassen.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n row(s) already there: left out.</source>
        <translation>
            <numerusform>%n Zeile schon vorhanden: weggelassen.</numerusform>
            <numerusform>%n Zeilen schon vorhanden: weggelassen.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n row(s) said before: left out.</source>
        <translation>
            <numerusform>%n Zeile zuvor gesagt: weggelassen.</numerusform>
            <numerusform>%n Zeilen zuvor gesagt: weggelassen.</numerusform>
        </translation>
    </message>
    <message>
        <source>No household is open: you are asked for the name of a new one, which keeps your answers too.</source>
        <translation>Kein Haushalt ist offen: es wird nach dem Namen eines neuen gefragt, der auch die Antworten behält.</translation>
    </message>
    <message>
        <source>The rest of the file is being read; more may be asked then.</source>
        <translation>Der Rest der Datei wird gelesen; dann kann noch mehr gefragt werden.</translation>
    </message>
</context>
<context>
    <name>SheetWords</name>
    <message>
        <source>date|day|when|date and time|date time|datetime|timestamp</source>
        <translation>datum|tag|wann|datum und uhrzeit|zeitstempel|date|day|when|timestamp</translation>
    </message>
    <message>
        <source>time|time of day|clock|hour</source>
        <translation>zeit|uhrzeit|stunde|time|time of day|hour</translation>
    </message>
    <message>
        <source>stack|bin|worm bin|name of the stack|stack name|bin name</source>
        <translation>stapel|kiste|wurmkiste|name des stapels|stack|bin|worm bin</translation>
    </message>
    <message>
        <source>action|activity|what was done|done|task|work|kind|type</source>
        <translation>aktion|tätigkeit|was getan wurde|getan|aufgabe|arbeit|art|action|activity|done|task|type</translation>
    </message>
    <message>
        <source>slot|tray|place|level|tray from below</source>
        <translation>platz|etage|ebene|etage von unten|slot|tray|level</translation>
    </message>
    <message>
        <source>amount|quantity|qty|how much|weight|mass|volume|number</source>
        <translation>menge|anzahl|wie viel|gewicht|masse|volumen|zahl|amount|quantity|qty|weight|volume</translation>
    </message>
    <message>
        <source>unit|units|measure</source>
        <translation>einheit|einheiten|maß|unit|units</translation>
    </message>
    <message>
        <source>item|material|food|feed|scraps|bedding|what|of what|species</source>
        <translation>material|futter|einstreu|reste|was|wovon|gegenstand|item|food|scraps|bedding|species</translation>
    </message>
    <message>
        <source>detail|details</source>
        <translation>einzelheit|einzelheiten|detail|details</translation>
    </message>
    <message>
        <source>note|notes|remark|remarks|comment|comments|observation|observations|description</source>
        <translation>notiz|notizen|bemerkung|bemerkungen|kommentar|kommentare|beobachtung|beobachtungen|beschreibung|note|notes|remark|comment</translation>
    </message>
    <message>
        <source>setup|set up|new stack|stack set up</source>
        <translation>eingerichtet|einrichten|neuer stapel|stapel eingerichtet|setup|new stack</translation>
    </message>
    <message>
        <source>stock|stocked|stocking|worms in|worms put in|worms added|added worms</source>
        <translation>besatz|besetzt|würmer eingesetzt|eingesetzte würmer|würmer hinein|stock|stocked</translation>
    </message>
    <message>
        <source>bed|bedded|bedding|bedding laid|tray added|added tray|new tray</source>
        <translation>bett|eingestreut|einstreu|einstreu eingelegt|etage hinzugefügt|neue etage|bed|bedding|new tray</translation>
    </message>
    <message>
        <source>feed|fed|feeding|food|scraps</source>
        <translation>füttern|gefüttert|fütterung|futter|reste|feed|fed|feeding|food</translation>
    </message>
    <message>
        <source>cover|covered|covering|paper</source>
        <translation>abdecken|abgedeckt|abdeckung|papier|cover|covered</translation>
    </message>
    <message>
        <source>water|watered|watering|misted</source>
        <translation>wasser|gießen|gegossen|befeuchtet|water|watered|watering</translation>
    </message>
    <message>
        <source>drain|drained|draining|leachate|sump emptied|emptied</source>
        <translation>ablassen|abgelassen|ablass|sickerwasser|auffangschale geleert|geleert|drain|drained</translation>
    </message>
    <message>
        <source>flush|flushed|flushing|rinsed</source>
        <translation>durchspülen|durchgespült|durchspülung|gespült|flush|flushed</translation>
    </message>
    <message>
        <source>reading|readings|measured|measurement</source>
        <translation>messwert|messwerte|gemessen|messung|reading|readings</translation>
    </message>
    <message>
        <source>check|checked|look|looked|inspection|inspected</source>
        <translation>prüfen|geprüft|blick|nachgesehen|kontrolle|check|checked|looked</translation>
    </message>
    <message>
        <source>weigh|weighed|worms weighed|weighing</source>
        <translation>wiegen|gewogen|würmer gewogen|weigh|weighed</translation>
    </message>
    <message>
        <source>count|counted|worms counted</source>
        <translation>zählen|gezählt|würmer gezählt|count|counted</translation>
    </message>
    <message>
        <source>trayweight|tray weight|tray weighed|weight of a tray</source>
        <translation>etagengewicht|gewicht der etage|etage gewogen|trayweight|tray weight</translation>
    </message>
    <message>
        <source>rotate|rotated|rotation|lifted to the top</source>
        <translation>umlauf|gehoben|nach oben gehoben|gedreht|rotate|rotated|rotation</translation>
    </message>
    <message>
        <source>loosen|loosened</source>
        <translation>lockern|gelockert|loosen|loosened</translation>
    </message>
    <message>
        <source>harvest|harvested|castings taken</source>
        <translation>ernte|ernten|geerntet|humus entnommen|harvest|harvested</translation>
    </message>
    <message>
        <source>remove|removed|worms taken|worms out|worms given away</source>
        <translation>entnehmen|würmer entnommen|würmer heraus|würmer weggegeben|remove|removed</translation>
    </message>
    <message>
        <source>event|problem|something odd</source>
        <translation>ereignis|problem|etwas auffälliges|event</translation>
    </message>
    <message>
        <source>note|noted|remark|comment</source>
        <translation>notiz|notiert|bemerkung|kommentar|note|remark</translation>
    </message>
    <message>
        <source>retire|retired|given up</source>
        <translation>stilllegen|stillgelegt|aufgegeben|retire|retired</translation>
    </message>
    <message>
        <source>g|gr|gram|grams|gramme|grammes</source>
        <translation>g|gr|gramm|gram|grams</translation>
    </message>
    <message>
        <source>kg|kgs|kilo|kilos|kilogram|kilograms|kilogramme|kilogrammes</source>
        <translation>kg|kilo|kilos|kilogramm|kilogram|kilograms</translation>
    </message>
    <message>
        <source>oz|ounce|ounces</source>
        <translation>oz|unze|unzen|ounce|ounces</translation>
    </message>
    <message>
        <source>lb|lbs|pound|pounds</source>
        <translation>lb|lbs|amerikanisches pfund|pound|pounds</translation>
    </message>
    <message>
        <source>ml|millilitre|millilitres|milliliter|milliliters</source>
        <translation>ml|milliliter|millilitre|millilitres|milliliters</translation>
    </message>
    <message>
        <source>l|litre|litres|liter|liters</source>
        <translation>l|liter|litre|litres|liters</translation>
    </message>
    <message>
        <source>cup|cups</source>
        <translation>cup|cups|tasse|tassen</translation>
    </message>
    <message>
        <source>gal|gallon|gallons</source>
        <translation>gal|gallone|gallonen|gallon|gallons</translation>
    </message>
    <message>
        <source>floz|fl oz|fluid ounce|fluid ounces</source>
        <translation>floz|fl oz|flüssigunze|flüssigunzen|fluid ounce|fluid ounces</translation>
    </message>
    <message>
        <source>count|pieces|worms|pcs</source>
        <translation>anzahl|stück|stk|würmer|count|pieces|worms|pcs</translation>
    </message>
    <message>
        <source>Good to know</source>
        <translation>Gut zu wissen</translation>
    </message>
    <message>
        <source>Due</source>
        <translation>Fällig</translation>
    </message>
    <message>
        <source>Soon</source>
        <translation>Bald</translation>
    </message>
    <message>
        <source>Urgent</source>
        <translation>Dringend</translation>
    </message>
    <message>
        <source>What is due</source>
        <translation>Was fällig ist</translation>
    </message>
    <message>
        <source>Nothing is due.</source>
        <translation>Nichts ist fällig.</translation>
    </message>
    <message>
        <source>Estimates of the whole stack, with the range that holds nine times in ten</source>
        <translation>Schätzungen für den ganzen Stapel, mit dem Bereich, der in neun von zehn Fällen hält</translation>
    </message>
    <message>
        <source>What</source>
        <translation>Was</translation>
    </message>
    <message>
        <source>Estimate</source>
        <translation>Schätzung</translation>
    </message>
    <message>
        <source>Colony</source>
        <translation>Bestand</translation>
    </message>
    <message>
        <source>Worms</source>
        <translation>Würmer</translation>
    </message>
    <message>
        <source>Adults among them</source>
        <translation>Erwachsene darunter</translation>
    </message>
    <message>
        <source>Processing, dry matter</source>
        <translation>Verarbeitung, Trockenmasse</translation>
    </message>
    <message>
        <source>Food taken up over what keeps them (above 1 the colony grows)</source>
        <translation>Aufgenommenes Futter zu dem, was sie erhält (über 1 wächst der Bestand)</translation>
    </message>
    <message>
        <source>Bed temperature</source>
        <translation>Temperatur des Betts</translation>
    </message>
    <message>
        <source>Fresh food next week: least, usual, most</source>
        <translation>Frisches Futter nächste Woche: mindestens, üblich, höchstens</translation>
    </message>
    <message>
        <source>%1, %2, %3</source>
        <translation>%1, %2, %3</translation>
    </message>
    <message>
        <source>Runs into the sump next week</source>
        <translation>Läuft nächste Woche in die Auffangschale</translation>
    </message>
    <message>
        <source>Top tray filled</source>
        <translation>Oberste Etage gefüllt</translation>
    </message>
    <message>
        <source>Sump full, if nobody drains</source>
        <translation>Auffangschale voll, wenn niemand ablässt</translation>
    </message>
    <message>
        <source>All batches</source>
        <translation>Alle Chargen</translation>
    </message>
    <message>
        <source>Batch</source>
        <translation>Charge</translation>
    </message>
    <message>
        <source>Tray</source>
        <translation>Etage</translation>
    </message>
    <message>
        <source>Bedded</source>
        <translation>Eingestreut</translation>
    </message>
    <message>
        <source>Fed, fresh</source>
        <translation>Gefüttert, frisch</translation>
    </message>
    <message>
        <source>Looks</source>
        <translation>Blicke</translation>
    </message>
    <message>
        <source>Lifted</source>
        <translation>Gehoben</translation>
    </message>
    <message>
        <source>Ended</source>
        <translation>Beendet</translation>
    </message>
    <message>
        <source>Days</source>
        <translation>Tage</translation>
    </message>
    <message>
        <source>Taken</source>
        <translation>Entnommen</translation>
    </message>
    <message numerus="yes">
        <source>%1 in %n feeding(s)</source>
        <translation>
            <numerusform>%1 in %n Fütterung</numerusform>
            <numerusform>%1 in %n Fütterungen</numerusform>
        </translation>
    </message>
    <message>
        <source>stands</source>
        <translation>steht</translation>
    </message>
    <message>
        <source>Batch %1, in tray %2, %3 old</source>
        <translation>Charge %1, in Etage %2, %3 alt</translation>
    </message>
    <message>
        <source>Day</source>
        <translation>Tag</translation>
    </message>
    <message>
        <source>Done or seen</source>
        <translation>Getan oder gesehen</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Notiz</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>Whole harvests by mass, beside what was expected of them</source>
        <translation>Ganze Ernten nach Masse, neben dem, was erwartet wurde</translation>
    </message>
    <message>
        <source>Expected</source>
        <translation>Erwartet</translation>
    </message>
    <message>
        <source>Within the range</source>
        <translation>Im Bereich</translation>
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
        <source>Cautions</source>
        <translation>Warnhinweise</translation>
    </message>
    <message>
        <source>Caution: %1</source>
        <translation>Warnhinweis: %1</translation>
    </message>
    <message>
        <source>Source: %1</source>
        <translation>Quelle: %1</translation>
    </message>
    <message>
        <source>with the stack, %1</source>
        <translation>mit dem Stapel, %1</translation>
    </message>
    <message>
        <source>Batch %1, in tray %2, %3 old when the stack ended</source>
        <translation>Charge %1, in Etage %2, %3 alt, als der Stapel endete</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <comment>urgency, what</comment>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>%1 (%2): %3</source>
        <comment>urgency, when, what</comment>
        <translation>%1 (%2): %3</translation>
    </message>
</context>
<context>
    <name>Shelf</name>
    <message numerus="yes">
        <source>%n tray(s)</source>
        <translation>
            <numerusform>%n Etage</numerusform>
            <numerusform>%n Etagen</numerusform>
        </translation>
    </message>
    <message>
        <source>lid on</source>
        <translation>Deckel auf</translation>
    </message>
    <message>
        <source>lid off</source>
        <translation>Deckel ab</translation>
    </message>
    <message>
        <source>The file is open for reading only: nothing can be written down.</source>
        <translation>Die Datei ist nur zum Lesen geöffnet: nichts kann eingetragen werden.</translation>
    </message>
    <message>
        <source>Go back to today to record with one click; “…” records on the day shown.</source>
        <translation>Geh zurück zu heute, um mit einem Klick einzutragen; „…“ trägt am gezeigten Tag ein.</translation>
    </message>
    <message>
        <source>No tray stands that takes food.</source>
        <translation>Keine stehende Etage nimmt Futter auf.</translation>
    </message>
    <message>
        <source>Feed %1</source>
        <translation>%1 füttern</translation>
    </message>
    <message>
        <source>Water %1</source>
        <translation>%1 gießen</translation>
    </message>
    <message>
        <source>Drain %1</source>
        <translation>%1 ablassen</translation>
    </message>
    <message>
        <source>saving…</source>
        <translation>wird gesichert…</translation>
    </message>
    <message>
        <source>updating…</source>
        <translation>wird erneuert…</translation>
    </message>
    <message>
        <source>silent for %1</source>
        <translation>%1 still</translation>
    </message>
    <message>
        <source>no tray stands</source>
        <translation>keine Etage steht</translation>
    </message>
    <message>
        <source>As it stood on %1, the past</source>
        <translation>Wie es am %1 stand, Vergangenheit</translation>
    </message>
    <message>
        <source>%1 · estimating…</source>
        <translation>%1 · wird geschätzt…</translation>
    </message>
    <message>
        <source>%1 · usual feeding about %2 a week</source>
        <translation>%1 · übliches Futter etwa %2 je Woche</translation>
    </message>
    <message>
        <source>at most %1</source>
        <comment>food that is borne this week</comment>
        <translation>bis %1</translation>
    </message>
    <message>
        <source>%1 One click writes down %2, with its cover.</source>
        <translation>%1 Ein Klick trägt %2 ein, mit Abdeckung.</translation>
    </message>
    <message>
        <source>no food now</source>
        <comment>beside the feeding button</comment>
        <translation>jetzt kein Futter</translation>
    </message>
    <message>
        <source>The most that is borne this week: more does not fit under the rim of the tray being fed.</source>
        <translation>Mehr wird diese Woche nicht vertragen: es passt nicht unter den Rand der Etage, die gefüttert wird.</translation>
    </message>
    <message>
        <source>The most that is borne this week: a tray takes at most %1 a day.</source>
        <translation>Mehr wird diese Woche nicht vertragen: eine Etage nimmt höchstens %1 am Tag.</translation>
    </message>
    <message>
        <source>The most that is borne this week: with more, the chance of too little air in the bed is above 5 %.</source>
        <translation>Mehr wird diese Woche nicht vertragen: damit läge die Wahrscheinlichkeit von zu wenig Luft im Bett über 5 %.</translation>
    </message>
    <message>
        <source>The most that is borne this week: with more, the chance of too warm a bed is above 5 %.</source>
        <translation>Mehr wird diese Woche nicht vertragen: damit läge die Wahrscheinlichkeit eines zu warmen Betts über 5 %.</translation>
    </message>
    <message>
        <source>Cover %1</source>
        <translation>%1 Decke</translation>
    </message>
    <message>
        <source>The most that is borne today: %1 were given within these 7 days, and %2 is the most within any seven.</source>
        <translation>Das Höchste, was heute vertragen wird: %1 wurden in diesen 7 Tagen gegeben, und %2 ist das Höchste in je sieben.</translation>
    </message>
    <message>
        <source>The most that is borne this week: half of the worms&apos; weight a day, and they are about %1.</source>
        <translation>Das Höchste, was diese Woche vertragen wird: das halbe Gewicht der Würmer am Tag, und sie wiegen etwa %1.</translation>
    </message>
    <message>
        <source>Writes down for today, at one click: %1 %2, and %3 of paper over it</source>
        <translation>Trägt für heute mit einem Klick ein: %1 %2 und %3 Papier darüber</translation>
    </message>
    <message>
        <source>Writes down for today, at one click: %1 %2</source>
        <translation>Trägt für heute mit einem Klick ein: %1 %2</translation>
    </message>
    <message>
        <source>Writes down for today, at one click: %1 of %2 over the tray being fed</source>
        <translation>Trägt für heute mit einem Klick ein: %1 %2 auf die Etage, die gefüttert wird</translation>
    </message>
    <message>
        <source>Writes down for today, at one click: %1 of water into the tray being fed</source>
        <translation>Trägt für heute mit einem Klick ein: %1 Wasser in die Etage, die gefüttert wird</translation>
    </message>
    <message>
        <source>Writes down for today, at one click: %1 drained. Not for leaves eaten raw, never drunk; wash your hands. A few worms in it are normal: put them back.</source>
        <translation>Trägt für heute mit einem Klick ein: %1 abgelassen. Nicht für roh gegessene Blätter, nie trinken; Hände waschen. Ein paar Würmer darin sind normal: setze sie zurück.</translation>
    </message>
    <message>
        <source>%1 will do</source>
        <comment>food that keeps the worms, where no feeding is usual</comment>
        <translation>%1 genügen</translation>
    </message>
    <message>
        <source>No feeding is usual here: %1 keeps the worms, at most %2 is borne.</source>
        <translation>Hier ist keine Fütterung üblich: %1 erhält die Würmer, höchstens %2 wird vertragen.</translation>
    </message>
    <message>
        <source>Feed…</source>
        <translation>Füttern…</translation>
    </message>
    <message>
        <source>Nothing more fits under the rim of the tray being fed, with its cover over it.</source>
        <translation>Unter den Rand der gefütterten Etage passt nichts mehr, mit der Abdeckung darüber.</translation>
    </message>
    <message>
        <source>Only %1 of the usual %2 fit under the rim of the tray being fed, with the cover over it.</source>
        <translation>Nur %1 der üblichen %2 passen unter den Rand der gefütterten Etage, mit der Abdeckung darüber.</translation>
    </message>
    <message>
        <source>%1 The form records what was given all the same.</source>
        <translation>%1 Das Formular schreibt auf, was dennoch gegeben wurde.</translation>
    </message>
    <message>
        <source>nothing fits</source>
        <comment>beside the feeding button: under the rim of the tray</comment>
        <translation>voll</translation>
    </message>
    <message>
        <source>no more fits</source>
        <comment>beside the feeding button: under the rim of the tray</comment>
        <translation>dann voll</translation>
    </message>
    <message>
        <source>Feed %1 today</source>
        <comment>a button: what is borne today, less than usual</comment>
        <translation>heute %1</translation>
    </message>
    <message>
        <source>could take %1 today</source>
        <comment>food that is borne at most</comment>
        <translation>verträgt heute %1</translation>
    </message>
</context>
<context>
    <name>ShelfStrips</name>
    <message>
        <source>processing, dry</source>
        <translation>Verarbeitung, trocken</translation>
    </message>
    <message>
        <source>drained</source>
        <translation>abgelassen</translation>
    </message>
    <message>
        <source>colony</source>
        <translation>Bestand</translation>
    </message>
    <message>
        <source>–</source>
        <translation>–</translation>
    </message>
    <message>
        <source>The estimates are being made.</source>
        <translation>Die Schätzungen entstehen gerade.</translation>
    </message>
    <message>
        <source>(%1)</source>
        <translation>(%1)</translation>
    </message>
    <message>
        <source>Processing %1, dry matter. Runs into the sump %2. Colony %3.</source>
        <translation>Verarbeitung %1, Trockenmasse. Läuft in die Auffangschale: %2. Bestand %3.</translation>
    </message>
    <message>
        <source>Here grows a line of what is eaten.</source>
        <translation>Hier wächst die Linie des Verzehrten.</translation>
    </message>
    <message>
        <source>Here stands a bar for each drain.</source>
        <translation>Hier steht ein Balken je Ablassen.</translation>
    </message>
    <message>
        <source>Here grows a line of the worms&apos; mass.</source>
        <translation>Hier wächst die Linie der Wurmmasse.</translation>
    </message>
</context>
<context>
    <name>ShelfVerdict</name>
    <message>
        <source>Worms in the bottom tray are normal: they go down in the light.</source>
        <translation>Würmer in der untersten Etage sind normal: im Licht gehen sie nach unten.</translation>
    </message>
    <message>
        <source>%1 %2</source>
        <comment>what to do, and why</comment>
        <translation>%1 %2</translation>
    </message>
    <message>
        <source>Bottom tray is ready</source>
        <translation>Unterste Etage ist reif</translation>
    </message>
    <message>
        <source>Ready, no hurry</source>
        <translation>Reif, keine Eile</translation>
    </message>
    <message>
        <source>Ready soon</source>
        <translation>Bald reif</translation>
    </message>
    <message>
        <source>Harvest is overdue</source>
        <translation>Ernte ist überfällig</translation>
    </message>
    <message>
        <source>Time for another tray</source>
        <translation>Zeit für eine weitere Etage</translation>
    </message>
    <message>
        <source>A step came early</source>
        <translation>Ein Schritt kam zu früh</translation>
    </message>
    <message>
        <source>Feeding is due</source>
        <translation>Füttern ist fällig</translation>
    </message>
    <message>
        <source>Overfed</source>
        <translation>Überfüttert</translation>
    </message>
    <message>
        <source>Hungry</source>
        <translation>Hungrig</translation>
    </message>
    <message>
        <source>Short of paper</source>
        <translation>Zu wenig Papier</translation>
    </message>
    <message>
        <source>Too wet</source>
        <translation>Zu nass</translation>
    </message>
    <message>
        <source>Too dry</source>
        <translation>Zu trocken</translation>
    </message>
    <message>
        <source>Little runs out</source>
        <translation>Wenig läuft heraus</translation>
    </message>
    <message>
        <source>Much runs out</source>
        <translation>Viel läuft heraus</translation>
    </message>
    <message>
        <source>It gets too hot</source>
        <translation>Es wird zu heiß</translation>
    </message>
    <message>
        <source>It gets too cold</source>
        <translation>Es wird zu kalt</translation>
    </message>
    <message>
        <source>Light-drying is done</source>
        <translation>Trocknen im Licht ist fertig</translation>
    </message>
    <message>
        <source>Cocoons and some young always stay in the castings.</source>
        <translation>Kokons und einige Junge bleiben immer im Humus.</translation>
    </message>
    <message>
        <source>Drying for long</source>
        <translation>Trocknet schon lange</translation>
    </message>
    <message>
        <source>The record is silent</source>
        <translation>Lange kein Eintrag</translation>
    </message>
    <message>
        <source>Top tray is full</source>
        <translation>Oberste Etage ist voll</translation>
    </message>
    <message>
        <source>Drain the sump</source>
        <translation>Auffangschale ablassen</translation>
    </message>
    <message>
        <source>A few worms in the sump are normal: put them back.</source>
        <translation>Ein paar Würmer in der Auffangschale sind normal: setze sie zurück.</translation>
    </message>
    <message>
        <source>A look would tell</source>
        <translation>Ein Blick würde helfen</translation>
    </message>
    <message>
        <source>The record does not fit</source>
        <translation>Ein Eintrag passt nicht</translation>
    </message>
    <message>
        <source>About %1 of its worms are still in it.</source>
        <translation>Etwa %1 der Würmer sind noch darin.</translation>
    </message>
    <message>
        <source>Take the castings.</source>
        <translation>Nimm den Humus.</translation>
    </message>
    <message>
        <source>Leave it in the light; most worms go down in 2 to 7 days.</source>
        <translation>Lass sie im Licht; die meisten gehen in 2 bis 7 Tagen nach unten.</translation>
    </message>
    <message>
        <source>Light-drying is done, day %1</source>
        <translation>Trocknen im Licht fertig, Tag %1</translation>
    </message>
    <message>
        <source>Light-drying, day %1</source>
        <translation>Trocknen im Licht, Tag %1</translation>
    </message>
    <message>
        <source>%1 %2</source>
        <translation>%1 %2</translation>
    </message>
    <message>
        <source>Feed-to-cast %1, ready with %2&#xa0;%.</source>
        <translation>Futter zu Humus %1, reif mit %2 %.</translation>
    </message>
    <message>
        <source>Ready about %1.</source>
        <translation>Reif etwa %1.</translation>
    </message>
    <message>
        <source>Bottom tray is nearly ready</source>
        <translation>Unterste Etage ist fast reif</translation>
    </message>
    <message>
        <source>Young stack</source>
        <translation>Junger Stapel</translation>
    </message>
    <message>
        <source>Castings %1 deep so far; another tray at %2. %3</source>
        <translation>Humus bisher %1 tief; eine weitere Etage bei %2. %3</translation>
    </message>
    <message>
        <source>Working</source>
        <translation>Arbeitet</translation>
    </message>
    <message>
        <source>No tray stands</source>
        <translation>Keine Etage steht</translation>
    </message>
    <message>
        <source>Lay bedding in a tray to begin.</source>
        <translation>Lege zum Anfang Einstreu in eine Etage.</translation>
    </message>
    <message>
        <source>Estimating…</source>
        <translation>Wird geschätzt…</translation>
    </message>
    <message>
        <source>Trays are drawn from the journal; depths follow in a moment.</source>
        <translation>Etagen sind nach dem Tagebuch gezeichnet; Tiefen folgen gleich.</translation>
    </message>
    <message>
        <source>No entry for %1</source>
        <translation>%1 lang kein Eintrag</translation>
    </message>
    <message>
        <source>No worms in it</source>
        <translation>Keine Würmer darin</translation>
    </message>
    <message>
        <source>Tray in slot %1 is ready</source>
        <translation>Etage an Platz %1 ist reif</translation>
    </message>
    <message>
        <source>The estimates take it that hardly any food and no water were given since, but by a routine. Write down what was done since, or look into a tray.</source>
        <translation>Die Schätzungen nehmen an, dass seither kaum Futter und kein Wasser gegeben wurde, außer durch eine Gewohnheit. Aufschreiben, was seither getan wurde, oder in eine Etage sehen.</translation>
    </message>
</context>
<context>
    <name>ShelfWords</name>
    <message>
        <source>new</source>
        <comment>a tray without castings</comment>
        <translation>neu</translation>
    </message>
    <message>
        <source>Tray, batch %1</source>
        <translation>Etage, Charge %1</translation>
    </message>
    <message>
        <source>Bottom tray, slot 1 of %1, batch %2</source>
        <translation>Unterste Etage, Platz 1 von %1, Charge %2</translation>
    </message>
    <message>
        <source>Top tray, slot %1 of %1, batch %2</source>
        <translation>Oberste Etage, Platz %1 von %1, Charge %2</translation>
    </message>
    <message>
        <source>Tray in slot %1 of %2, batch %3</source>
        <translation>Etage an Platz %1 von %2, Charge %3</translation>
    </message>
    <message>
        <source>castings %1</source>
        <translation>Humus %1</translation>
    </message>
    <message>
        <source>softened %1</source>
        <translation>weich geworden %1</translation>
    </message>
    <message>
        <source>food %1</source>
        <translation>Futter %1</translation>
    </message>
    <message>
        <source>bedding %1</source>
        <translation>Einstreu %1</translation>
    </message>
    <message>
        <source>nothing in it</source>
        <translation>nichts darin</translation>
    </message>
    <message>
        <source>from the floor up: %1</source>
        <translation>vom Boden aufwärts: %1</translation>
    </message>
    <message>
        <source>light-drying, day %1</source>
        <translation>Trocknen im Licht, Tag %1</translation>
    </message>
    <message>
        <source>food goes in here</source>
        <translation>hier kommt Futter hinein</translation>
    </message>
    <message>
        <source>working</source>
        <translation>arbeitet</translation>
    </message>
    <message>
        <source>nearly</source>
        <translation>fast</translation>
    </message>
    <message>
        <source>ready</source>
        <translation>reif</translation>
    </message>
    <message>
        <source>overdue</source>
        <translation>überfällig</translation>
    </message>
    <message>
        <source>drying</source>
        <translation>trocknet</translation>
    </message>
    <message>
        <source>estimating…</source>
        <translation>wird geschätzt…</translation>
    </message>
    <message>
        <source>being fed</source>
        <translation>wird gefüttert</translation>
    </message>
    <message>
        <source>chance %1</source>
        <comment>that a tray is ready</comment>
        <translation>Chance %1</translation>
    </message>
    <message>
        <source>%1; since about %2</source>
        <translation>%1; seit etwa %2</translation>
    </message>
    <message>
        <source>%1; about %2</source>
        <translation>%1; etwa %2</translation>
    </message>
    <message>
        <source>Feed-to-cast</source>
        <translation>Futter zu Humus</translation>
    </message>
    <message>
        <source>%1; ready at 0.10 or below</source>
        <translation>%1; reif bei 0,10 oder darunter</translation>
    </message>
    <message>
        <source>Ready</source>
        <translation>Reif</translation>
    </message>
    <message>
        <source>Castings</source>
        <translation>Humus</translation>
    </message>
    <message>
        <source>%1 deep, %2 dry</source>
        <translation>%1 tief, %2 trocken</translation>
    </message>
    <message>
        <source>Put in, dry</source>
        <translation>Eingebracht, trocken</translation>
    </message>
    <message>
        <source>Worms in it</source>
        <translation>Würmer darin</translation>
    </message>
    <message>
        <source>Cocoons</source>
        <translation>Kokons</translation>
    </message>
    <message>
        <source>Weight, tray and all</source>
        <translation>Gewicht mit Etage</translation>
    </message>
    <message>
        <source>Bulk that stays</source>
        <translation>Was darin bleibt</translation>
    </message>
    <message>
        <source>%1 dry: use as it is, or sift</source>
        <translation>%1 trocken: verwenden, wie es ist, oder sieben</translation>
    </message>
    <message>
        <source>%1 old</source>
        <translation>%1 alt</translation>
    </message>
    <message>
        <source>Bedded</source>
        <translation>Eingestreut</translation>
    </message>
    <message>
        <source>%1, %2 ago; tray %3</source>
        <comment>a day, how long ago, the tray&apos;s number</comment>
        <translation>%1, %2 her; Etage %3</translation>
    </message>
    <message>
        <source>estimating</source>
        <translation>wird geschätzt</translation>
    </message>
    <message>
        <source>The estimates are being made.</source>
        <translation>Die Schätzungen entstehen gerade.</translation>
    </message>
    <message>
        <source>feed-to-cast %1</source>
        <translation>Futter zu Humus %1</translation>
    </message>
    <message>
        <source>%1, chance %2</source>
        <translation>%1, Chance %2</translation>
    </message>
    <message>
        <source>worms %1</source>
        <translation>Würmer %1</translation>
    </message>
    <message>
        <source>Worms in the bottom tray are normal: they go down in the light.</source>
        <translation>Würmer in der untersten Etage sind normal: im Licht gehen sie nach unten.</translation>
    </message>
    <message>
        <source>Most worms leave in 2 to 7 days; cocoons and some young go with the castings.</source>
        <translation>Die meisten Würmer gehen in 2 bis 7 Tagen; Kokons und einige Junge gehen mit dem Humus.</translation>
    </message>
    <message>
        <source>sump of %1</source>
        <translation>Auffangschale von %1</translation>
    </message>
    <message>
        <source>spigot open</source>
        <translation>Hahn offen</translation>
    </message>
    <message>
        <source>spigot shut</source>
        <translation>Hahn zu</translation>
    </message>
    <message>
        <source>Sump</source>
        <translation>Auffangschale</translation>
    </message>
    <message>
        <source>holds up to %1; %2; estimating</source>
        <translation>fasst bis zu %1; %2; wird geschätzt</translation>
    </message>
    <message>
        <source>%1 in it, room for %2; %3</source>
        <translation>%1 darin, Platz für %2; %3</translation>
    </message>
    <message>
        <source>In it</source>
        <translation>Darin</translation>
    </message>
    <message>
        <source>%1, of %2; %3</source>
        <translation>%1 von %2; %3</translation>
    </message>
    <message>
        <source>Full about</source>
        <translation>Voll etwa</translation>
    </message>
    <message>
        <source>Runs in now</source>
        <translation>Läuft jetzt hinein</translation>
    </message>
    <message>
        <source>Strength</source>
        <translation>Stärke</translation>
    </message>
    <message>
        <source>about %1 mS/cm</source>
        <translation>etwa %1 mS/cm</translation>
    </message>
    <message>
        <source>A few worms in the sump are normal: put them back.</source>
        <translation>Ein paar Würmer in der Auffangschale sind normal: setze sie zurück.</translation>
    </message>
    <message>
        <source>colony %1 · %2</source>
        <translation>Bestand %1 · %2</translation>
    </message>
    <message>
        <source>today</source>
        <translation>heute</translation>
    </message>
    <message>
        <source>fed %1 %2</source>
        <comment>an amount and a day</comment>
        <translation>gefüttert %1 %2</translation>
    </message>
    <message>
        <source>drained %1</source>
        <comment>a day</comment>
        <translation>Ablass %1</translation>
    </message>
</context>
<context>
    <name>SlotChoices</name>
    <message>
        <source>the one being fed (slot %1)</source>
        <translation>die gefütterte (Platz %1)</translation>
    </message>
    <message>
        <source>the one being fed</source>
        <translation>die gefütterte</translation>
    </message>
    <message>
        <source>the whole stack</source>
        <translation>der ganze Stapel</translation>
    </message>
    <message>
        <source>the top one</source>
        <translation>die oberste</translation>
    </message>
    <message>
        <source>the drying one (slot %1)</source>
        <translation>die trocknende (Platz %1)</translation>
    </message>
    <message>
        <source>slot %1: tray %2, %3</source>
        <translation>Platz %1: Etage %2, %3</translation>
    </message>
    <message>
        <source>slot %1, which is not there that day</source>
        <translation>Platz %1, den es an diesem Tag nicht gibt</translation>
    </message>
</context>
<context>
    <name>Sources</name>
    <message>
        <source>common practice, no source</source>
        <translation>übliche Praxis, keine Quelle</translation>
    </message>
    <message>
        <source>memory</source>
        <translation>aus dem Gedächtnis</translation>
    </message>
    <message>
        <source>from memory</source>
        <translation>aus dem Gedächtnis</translation>
    </message>
    <message>
        <source>memory, weak</source>
        <translation>aus dem Gedächtnis, unsicher</translation>
    </message>
    <message>
        <source>second hand</source>
        <translation>aus zweiter Hand</translation>
    </message>
    <message>
        <source>read</source>
        <translation>gelesen</translation>
    </message>
    <message>
        <source>read in abstract</source>
        <translation>in der Zusammenfassung gelesen</translation>
    </message>
    <message>
        <source>abstract</source>
        <translation>Zusammenfassung</translation>
    </message>
    <message>
        <source>abstracts</source>
        <translation>Zusammenfassungen</translation>
    </message>
    <message>
        <source>about</source>
        <translation>ungefähr</translation>
    </message>
    <message>
        <source>our judgement</source>
        <translation>eigenes Urteil</translation>
    </message>
    <message>
        <source>judgement</source>
        <translation>Urteil</translation>
    </message>
    <message>
        <source>a rule of this program</source>
        <translation>eine Regel dieses Programms</translation>
    </message>
    <message>
        <source>this program&apos;s estimate</source>
        <translation>die Schätzung dieses Programms</translation>
    </message>
    <message>
        <source>local code rules</source>
        <translation>örtliche Vorschriften gehen vor</translation>
    </message>
    <message>
        <source>rest memory</source>
        <translation>der Rest aus dem Gedächtnis</translation>
    </message>
    <message>
        <source>loose bulk and water memory</source>
        <translation>lockere Dichte und Wasser aus dem Gedächtnis</translation>
    </message>
    <message>
        <source>N and C:N memory</source>
        <translation>N und C:N aus dem Gedächtnis</translation>
    </message>
    <message>
        <source>C:N from 50 % carbon</source>
        <translation>C:N aus 50 % Kohlenstoff</translation>
    </message>
    <message>
        <source>kept for completeness</source>
        <translation>der Vollständigkeit halber</translation>
    </message>
    <message>
        <source>not recommended (peatland)</source>
        <translation>nicht empfohlen (Moore)</translation>
    </message>
    <message>
        <source>ours: an assumed mixture, not for checks</source>
        <translation>eigene Annahme: eine gedachte Mischung, nicht zum Prüfen</translation>
    </message>
    <message>
        <source>not a carbon source</source>
        <translation>keine Kohlenstoffquelle</translation>
    </message>
    <message>
        <source>check for dewormers</source>
        <translation>auf Wurmkuren achten</translation>
    </message>
    <message>
        <source>N = protein/6.25, C = (100-ash)/1.8 of dry matter</source>
        <translation>N = Eiweiß/6,25, C = (100 − Asche)/1,8 der Trockenmasse</translation>
    </message>
    <message>
        <source>softening class, bulk, water held and welcome</source>
        <translation>Art des Weichwerdens, Dichte, gehaltenes Wasser und ob willkommen</translation>
    </message>
    <message>
        <source>softening class, bulk and water held</source>
        <translation>Art des Weichwerdens, Dichte und gehaltenes Wasser</translation>
    </message>
    <message>
        <source>kept out</source>
        <translation>bleibt draußen</translation>
    </message>
    <message>
        <source>round figures from memory of the USDA National Nutrient Database</source>
        <translation>runde Zahlen der USDA National Nutrient Database aus dem Gedächtnis</translation>
    </message>
    <message>
        <source>composition</source>
        <translation>Zusammensetzung</translation>
    </message>
    <message>
        <source>composition as of spent tea</source>
        <translation>Zusammensetzung wie bei gebrühtem Tee</translation>
    </message>
    <message>
        <source>composition as of horse manure</source>
        <translation>Zusammensetzung wie bei Pferdemist</translation>
    </message>
    <message>
        <source>composition as of office paper</source>
        <translation>Zusammensetzung wie bei Büropapier</translation>
    </message>
    <message>
        <source>composition as of shavings</source>
        <translation>Zusammensetzung wie bei Spänen</translation>
    </message>
    <message>
        <source>that many bags hold plastic</source>
        <translation>dass viele Beutel Kunststoff enthalten</translation>
    </message>
    <message>
        <source>that they carry a colour developer</source>
        <translation>dass sie einen Farbentwickler tragen</translation>
    </message>
    <message>
        <source>a third of it clay and size</source>
        <translation>ein Drittel davon Kaolin und Leim</translation>
    </message>
    <message>
        <source>welcome</source>
        <translation>ob willkommen</translation>
    </message>
    <message>
        <source>caustic, it burns worms and skin</source>
        <translation>ätzend, verbrennt Würmer und Haut</translation>
    </message>
    <message>
        <source>the only lime for a sour bed, never slaked or quick lime</source>
        <translation>der einzige Kalk für ein saures Bett, nie Lösch- oder Branntkalk</translation>
    </message>
    <message>
        <source>softens in hot piles, not in a worm bin</source>
        <translation>wird in heißen Mieten weich, nicht in der Wurmkiste</translation>
    </message>
    <message>
        <source>bulk 21-36 kg/m3 and 3 parts water to 1 paper</source>
        <translation>Dichte 21–36 kg/m³ und 3 Teile Wasser auf 1 Teil Papier</translation>
    </message>
    <message>
        <source>about 94 % CaCO3</source>
        <translation>etwa 94 % CaCO3</translation>
    </message>
    <message>
        <source>C:N 40-80 read</source>
        <translation>C:N 40–80 gelesen</translation>
    </message>
    <message>
        <source>C:N 20 NRAES-54 second hand</source>
        <translation>C:N 20 nach NRAES-54 aus zweiter Hand</translation>
    </message>
    <message>
        <source>C:N 19 second hand</source>
        <translation>C:N 19 aus zweiter Hand</translation>
    </message>
    <message>
        <source>Golueke 1972 read</source>
        <translation>Golueke 1972 gelesen</translation>
    </message>
    <message>
        <source>40-80 kg/m3 dry</source>
        <translation>40–80 kg/m³ trocken</translation>
    </message>
    <message>
        <source>holds 7.5-11</source>
        <translation>hält 7,5–11</translation>
    </message>
    <message>
        <source>water Spiehs et al. 2013 (3.6 g/g when fine)</source>
        <translation>Wasser Spiehs et al. 2013 (3,6 g/g, wenn fein)</translation>
    </message>
    <message>
        <source>NRAES-54 nitrogen</source>
        <translation>NRAES-54, Stickstoff</translation>
    </message>
    <message>
        <source>NRAES-54 table A.1</source>
        <translation>NRAES-54, Tabelle A.1</translation>
    </message>
    <message>
        <source>NRAES-54 softwood 212-1313</source>
        <translation>NRAES-54, Nadelholz 212–1313</translation>
    </message>
    <message>
        <source>NRAES-54 C:N range 398-852</source>
        <translation>NRAES-54, C:N 398–852</translation>
    </message>
    <message>
        <source>NRAES-54 broiler and layer manure (N 1.6-10, C:N 3-14)</source>
        <translation>NRAES-54, Mist von Masthühnern und Legehennen (N 1,6–10, C:N 3–14)</translation>
    </message>
    <message>
        <source>NRAES-54 vegetable produce</source>
        <translation>NRAES-54, Gemüse</translation>
    </message>
    <message>
        <source>fresh food a day for their own mass of worms</source>
        <translation>frisches Futter am Tag auf die gleiche Masse Würmer</translation>
    </message>
    <message>
        <source>parts of water for one of paper</source>
        <translation>Teile Wasser auf einen Teil Papier</translation>
    </message>
    <message>
        <source>common practice (a wrung-out sponge), no source</source>
        <translation>übliche Praxis (ein ausgedrückter Schwamm), keine Quelle</translation>
    </message>
    <message>
        <source>the share itself is ours</source>
        <translation>der Anteil selbst ist eigenes Urteil</translation>
    </message>
    <message>
        <source>for composting</source>
        <translation>zum Kompostieren</translation>
    </message>
    <message>
        <source>the middle of Cooperband 2002</source>
        <translation>die Mitte von Cooperband 2002</translation>
    </message>
    <message>
        <source>as fitted for the model</source>
        <translation>wie für das Modell angepasst</translation>
    </message>
    <message>
        <source>a litre of moist castings</source>
        <translation>ein Liter feuchter Humus</translation>
    </message>
    <message>
        <source>at 25 °C</source>
        <translation>bei 25 °C</translation>
    </message>
    <message>
        <source>Lalander et al. 2015 and Zziwa et al. 2021</source>
        <translation>Lalander et al. 2015 und Zziwa et al. 2021</translation>
    </message>
    <message>
        <source>46 to 60 % lost</source>
        <translation>46 bis 60 % verloren</translation>
    </message>
    <message>
        <source>after the hatching time of Venter &amp; Reinecke 1988</source>
        <translation>nach der Schlupfzeit von Venter &amp; Reinecke 1988</translation>
    </message>
    <message>
        <source>a journal&apos;s abstract</source>
        <translation>Zusammenfassung in einer Zeitschrift</translation>
    </message>
    <message>
        <source>dry matter</source>
        <translation>Trockenmasse</translation>
    </message>
    <message>
        <source>the same as in the reckoning</source>
        <translation>wie in der Rechnung</translation>
    </message>
    <message>
        <source>where the entry names none</source>
        <translation>wenn der Eintrag keine nennt</translation>
    </message>
    <message>
        <source>it differs from place to place: measure yours</source>
        <translation>von Ort zu Ort verschieden: miss deines</translation>
    </message>
    <message>
        <source>an empty tray, where none was weighed</source>
        <translation>eine leere Etage, wenn keine gewogen wurde</translation>
    </message>
    <message>
        <source>for a square metre, once</source>
        <translation>für einen Quadratmeter, einmal</translation>
    </message>
    <message>
        <source>from egg to fly in a warm room</source>
        <translation>vom Ei zur Fliege in einem warmen Raum</translation>
    </message>
    <message>
        <source>revised NIOSH lifting equation</source>
        <translation>überarbeitete NIOSH-Hebegleichung</translation>
    </message>
    <message>
        <source>NIOSH lifting equation</source>
        <translation>NIOSH-Hebegleichung</translation>
    </message>
    <message>
        <source>the tray&apos;s weight</source>
        <translation>das Gewicht der Etage</translation>
    </message>
    <message>
        <source>moulds</source>
        <translation>Schimmel</translation>
    </message>
    <message>
        <source>Queensland WorkSafe and New Zealand health pages</source>
        <translation>Queensland WorkSafe und Gesundheitsseiten aus Neuseeland</translation>
    </message>
    <message>
        <source>dewormers</source>
        <translation>Wurmkuren</translation>
    </message>
    <message>
        <source>cat and dog waste</source>
        <translation>Katzen- und Hundekot</translation>
    </message>
    <message>
        <source>tetanus and pregnancy</source>
        <translation>Tetanus und Schwangerschaft</translation>
    </message>
    <message>
        <source>fitted within the range to measured pots</source>
        <translation>innerhalb der Spanne an gemessene Töpfe angepasst</translation>
    </message>
    <message>
        <source>0.70 g/d fresh x M^(2/3)</source>
        <translation>0,70 g/d frisch × M^(2/3)</translation>
    </message>
    <message>
        <source>0.25 to 0.5 of their mass a day, fresh</source>
        <translation>0,25 bis 0,5 ihrer Masse am Tag, frisch</translation>
    </message>
    <message>
        <source>worm yield 3.5 to 10 % of DM</source>
        <translation>Wurmertrag 3,5 bis 10 % der Trockenmasse</translation>
    </message>
    <message>
        <source>0.0036: 58 J/d at 1 g, 25 C; 16 kJ/g DM</source>
        <translation>0,0036: 58 J/d bei 1 g, 25 °C; 16 kJ/g Trockenmasse</translation>
    </message>
    <message>
        <source>2.45 cocoons a week, peak 4.9</source>
        <translation>2,45 Kokons je Woche, höchstens 4,9</translation>
    </message>
    <message>
        <source>23 d at 25 C</source>
        <translation>23 d bei 25 °C</translation>
    </message>
    <message>
        <source>mean life 590 d</source>
        <translation>mittlere Lebensdauer 590 d</translation>
    </message>
    <message>
        <source>Michon 1954 through a review</source>
        <translation>Michon 1954 nach einer Übersicht</translation>
    </message>
    <message>
        <source>1.6 best</source>
        <translation>1,6 am besten</translation>
    </message>
    <message>
        <source>x1.5 to 3.8 on decay</source>
        <translation>×1,5 bis 3,8 auf den Abbau</translation>
    </message>
    <message>
        <source>a thesis of Makerere University</source>
        <translation>eine Arbeit der Makerere University</translation>
    </message>
    <message>
        <source>whole-bin loss 0.46 to 0.60</source>
        <translation>Verlust der ganzen Kiste 0,46 bis 0,60</translation>
    </message>
    <message>
        <source>within its range for the timing of the trade</source>
        <translation>innerhalb der Spanne nach den üblichen Zeiten</translation>
    </message>
    <message>
        <source>leachate 2.6 mS/cm</source>
        <translation>Sickerwasser 2,6 mS/cm</translation>
    </message>
    <message>
        <source>1.5 to 3 harmless</source>
        <translation>1,5 bis 3 unschädlich</translation>
    </message>
    <message>
        <source>Beta(2, 18) as a logit-normal of the same median and 90 % range</source>
        <translation>Beta(2, 18) als Logit-Normalverteilung mit gleichem Median und gleicher 90-%-Spanne</translation>
    </message>
    <message>
        <source>tetanus</source>
        <translation>Tetanus</translation>
    </message>
</context>
<context>
    <name>Stages</name>
    <message>
        <source>spigot open</source>
        <translation>Hahn offen</translation>
    </message>
    <message>
        <source>sump</source>
        <translation>Auffangschale</translation>
    </message>
    <message>
        <source>ready: castings</source>
        <translation>reif: Humus</translation>
    </message>
    <message>
        <source>working</source>
        <translation>arbeitet</translation>
    </message>
    <message>
        <source>fed here</source>
        <translation>hier gefüttert</translation>
    </message>
    <message>
        <source>bedding and worms</source>
        <translation>Einstreu und Würmer</translation>
    </message>
    <message>
        <source>The first day: one tray of wet bedding over the sump, worms in it, the spigot open.</source>
        <translation>Der erste Tag: eine Etage mit nasser Einstreu über der Auffangschale, Würmer darin, der Hahn offen.</translation>
    </message>
    <message>
        <source>castings</source>
        <translation>Humus</translation>
    </message>
    <message>
        <source>fresh bedding</source>
        <translation>frische Einstreu</translation>
    </message>
    <message>
        <source>A new tray of bedding on top of one that is filled.</source>
        <translation>Eine neue Etage mit Einstreu auf einer gefüllten.</translation>
    </message>
    <message>
        <source>food under cover</source>
        <translation>Futter unter der Abdeckung</translation>
    </message>
    <message>
        <source>A feeding lies flat under the cover; castings gather at the floor.</source>
        <translation>Eine Fütterung liegt flach unter der Abdeckung; Humus sammelt sich am Boden.</translation>
    </message>
    <message>
        <source>drips through</source>
        <translation>tropft durch</translation>
    </message>
    <message>
        <source>What the tray does not hold runs into the sump: this one wants draining.</source>
        <translation>Was die Etage nicht hält, läuft in die Auffangschale: diese ist abzulassen.</translation>
    </message>
    <message>
        <source>filled</source>
        <translation>gefüllt</translation>
    </message>
    <message>
        <source>The first tray is filled, the second is fed from now on.</source>
        <translation>Die erste Etage ist gefüllt, von nun an wird die zweite gefüttert.</translation>
    </message>
    <message>
        <source>A stack in full work: oldest castings at the bottom, food at the top.</source>
        <translation>Ein Stapel in voller Arbeit: ältester Humus unten, Futter oben.</translation>
    </message>
    <message>
        <source>drying, lid off</source>
        <translation>trocknet, Deckel ab</translation>
    </message>
    <message>
        <source>The bottom tray stands on top, lid off, loosened: its worms go down from the light. Feed only the tray below it.</source>
        <translation>Die unterste Etage steht obenauf, Deckel ab, gelockert: ihre Würmer wandern aus dem Licht nach unten. Füttere nur die Etage darunter.</translation>
    </message>
    <message>
        <source>bedded anew</source>
        <translation>neu eingestreut</translation>
    </message>
    <message>
        <source>The castings are taken; the tray is bedded anew and stands on top.</source>
        <translation>Der Humus ist entnommen; die Etage ist neu eingestreut und steht obenauf.</translation>
    </message>
    <message>
        <source>Two stacks of one: each goes on with a part of the colony.</source>
        <translation>Zwei Stapel aus einem: jeder geht mit einem Teil des Bestands weiter.</translation>
    </message>
    <message>
        <source>new stack</source>
        <translation>neuer Stapel</translation>
    </message>
</context>
<context>
    <name>StockBody</name>
    <message>
        <source>Worms</source>
        <translation>Würmer</translation>
    </message>
    <message>
        <source>What do the worms weigh?</source>
        <translation>Was wiegen die Würmer?</translation>
    </message>
    <message>
        <source>Counted</source>
        <translation>Gezählt</translation>
    </message>
    <message>
        <source>only if you counted them; else a mixed colony is taken</source>
        <translation>nur wenn du sie gezählt hast; sonst wird ein gemischter Bestand angenommen</translation>
    </message>
    <message>
        <source>Species</source>
        <translation>Art</translation>
    </message>
    <message>
        <source>%1 (usual)</source>
        <translation>%1 (üblich)</translation>
    </message>
    <message>
        <source>this stack was stocked with another species before; the latest rules its reckoning</source>
        <translation>dieser Stapel wurde vorher mit einer anderen Art besetzt; die letzte bestimmt die Rechnung</translation>
    </message>
</context>
<context>
    <name>StoreText</name>
    <message>
        <source>%1 could not be written: the disk is full. Nothing of it was kept.</source>
        <translation>%1 konnte nicht geschrieben werden: die Platte ist voll. Nichts davon wurde behalten.</translation>
    </message>
    <message>
        <source>%1 could not be written: the household file is damaged. Nothing of it was kept.</source>
        <translation>%1 konnte nicht geschrieben werden: die Haushaltsdatei ist beschädigt. Nichts davon wurde behalten.</translation>
    </message>
    <message>
        <source>%1 could not be written: there is no permission for its folder, or no such folder.</source>
        <translation>%1 konnte nicht geschrieben werden: der Ordner darf nicht beschrieben werden, oder es gibt ihn nicht.</translation>
    </message>
    <message>
        <source>%1 could not be written. Nothing of it was kept. The reason given: %2.</source>
        <translation>%1 konnte nicht geschrieben werden. Nichts davon wurde behalten. Der genannte Grund: %2.</translation>
    </message>
    <message>
        <source>%1 could not be written: what the disk gave back is not what was written. Nothing of it was kept.</source>
        <translation>%1 konnte nicht geschrieben werden: was die Platte zurückgab, ist nicht, was geschrieben wurde. Nichts davon wurde behalten.</translation>
    </message>
    <message>
        <source>%1 is there already. It was left as it is.</source>
        <translation>%1 gibt es schon. Es blieb, wie es war.</translation>
    </message>
    <message>
        <source>Called off. Nothing of %1 was kept.</source>
        <translation>Abgebrochen. Nichts von %1 wurde behalten.</translation>
    </message>
    <message>
        <source>%1 could not be written: %2. Nothing of it was kept.</source>
        <translation>%1 konnte nicht geschrieben werden: %2. Nichts davon wurde behalten.</translation>
    </message>
    <message>
        <source>%1 could not be written: its folder could not be put on the disk. Nothing of it was kept.</source>
        <translation>%1 konnte nicht geschrieben werden: der Ordner konnte nicht auf die Platte gebracht werden. Nichts davon wurde behalten.</translation>
    </message>
    <message>
        <source>The folder chosen for backups is not there: %1.</source>
        <translation>Der für Sicherungskopien gewählte Ordner ist nicht da: %1.</translation>
    </message>
    <message>
        <source>No backup could be made; what you record is kept all the same. %1</source>
        <translation>Es konnte keine Sicherungskopie gemacht werden; was du einträgst, bleibt trotzdem erhalten. %1</translation>
    </message>
    <message>
        <source>The backup was made elsewhere, in %1. %2</source>
        <translation>Die Sicherungskopie wurde anderswo gemacht, in %1. %2</translation>
    </message>
    <message>
        <source>Entry %1 has meanwhile been changed or deleted. Nothing was written; look at the journal and try again.</source>
        <translation>Eintrag %1 wurde inzwischen geändert oder gelöscht. Nichts wurde geschrieben; sieh ins Tagebuch und versuche es noch einmal.</translation>
    </message>
    <message>
        <source>An entry holds something that is not a number in %1. Nothing was written.</source>
        <translation>Ein Eintrag enthält etwas, das keine Zahl ist, in %1. Nichts wurde geschrieben.</translation>
    </message>
    <message>
        <source>Entry %1 cannot be read: %2 makes no sense to this release.</source>
        <translation>Eintrag %1 kann nicht gelesen werden: %2 ergibt für diese Fassung keinen Sinn.</translation>
    </message>
    <message>
        <source>%1 is not there. Nothing was made; check the name and the folder.</source>
        <translation>%1 ist nicht da. Nichts wurde angelegt; prüfe Namen und Ordner.</translation>
    </message>
    <message>
        <source>%1 is not a household file. It was left as it is; choose another file.</source>
        <translation>%1 ist keine Haushaltsdatei. Sie blieb, wie sie war; wähle eine andere Datei.</translation>
    </message>
    <message>
        <source>%1 is damaged: it was cut short or changed by something else. It was left as it is; restore a backup.</source>
        <translation>%1 ist beschädigt: abgeschnitten oder von etwas anderem geändert. Die Datei blieb, wie sie war; stelle eine Sicherungskopie wieder her.</translation>
    </message>
    <message>
        <source>%1 was written by a newer release. It was left as it is and can only be read; update the program to write to it.</source>
        <translation>%1 wurde von einer neueren Fassung geschrieben. Die Datei blieb, wie sie war, und kann nur gelesen werden; erneuere das Programm, um sie zu beschreiben.</translation>
    </message>
    <message>
        <source>%1 cannot be opened: there is no permission for the file or its folder. It was left as it is; change its permissions.</source>
        <translation>%1 kann nicht geöffnet werden: der Zugriff auf die Datei oder ihren Ordner ist nicht erlaubt. Sie blieb, wie sie war; ändere die Rechte.</translation>
    </message>
    <message>
        <source>%1 is in use by another program. It was left as it is; try again when that program is done.</source>
        <translation>%1 wird von einem anderen Programm benutzt. Die Datei blieb, wie sie war; versuche es noch einmal, wenn jenes Programm fertig ist.</translation>
    </message>
    <message>
        <source>The disk with %1 is full. Nothing was written; make room and try again.</source>
        <translation>Die Platte mit %1 ist voll. Nichts wurde geschrieben; schaffe Platz und versuche es noch einmal.</translation>
    </message>
    <message>
        <source>%1 cannot be opened. It was left as it is.</source>
        <translation>%1 kann nicht geöffnet werden. Die Datei blieb, wie sie war.</translation>
    </message>
    <message>
        <source>The reason given: %1.</source>
        <translation>Der genannte Grund: %1.</translation>
    </message>
    <message>
        <source>The disk with %1 did not confirm the write. See that the disk is in order, then look whether the entry is there before it is recorded again. The reason given: %2.</source>
        <translation>Die Platte mit %1 hat das Schreiben nicht bestätigt. Sieh nach, ob die Platte in Ordnung ist, und dann, ob der Eintrag da ist, bevor er noch einmal eingetragen wird. Der genannte Grund: %2.</translation>
    </message>
    <message>
        <source>%1 was moved or removed while it was open. Nothing was written; put it back, or open it where it is now.</source>
        <translation>%1 wurde verschoben oder entfernt, während die Datei geöffnet war. Nichts wurde geschrieben; bring sie zurück, oder öffne sie dort, wo sie jetzt ist.</translation>
    </message>
    <message>
        <source>%1 is in use by another program. Nothing was written; try again when that program is done.</source>
        <translation>%1 wird von einem anderen Programm benutzt. Nichts wurde geschrieben; versuche es noch einmal, wenn jenes Programm fertig ist.</translation>
    </message>
    <message>
        <source>%1 is damaged. Nothing was written; restore a backup.</source>
        <translation>%1 ist beschädigt. Nichts wurde geschrieben; stelle eine Sicherungskopie wieder her.</translation>
    </message>
    <message>
        <source>%1 cannot be written to: there is no permission for the file or its folder. Nothing was written.</source>
        <translation>%1 kann nicht beschrieben werden: der Zugriff auf die Datei oder ihren Ordner ist nicht erlaubt. Nichts wurde geschrieben.</translation>
    </message>
    <message>
        <source>%1 could not be read or written. Nothing was changed. The reason given: %2.</source>
        <translation>%1 konnte nicht gelesen oder geschrieben werden. Nichts wurde geändert. Der genannte Grund: %2.</translation>
    </message>
    <message>
        <source>%1 is open for reading only. Nothing was written.</source>
        <translation>%1 ist nur zum Lesen geöffnet. Nichts wurde geschrieben.</translation>
    </message>
    <message>
        <source>A reading is not a number. Nothing was written.</source>
        <translation>Ein Messwert ist keine Zahl. Nichts wurde geschrieben.</translation>
    </message>
    <message>
        <source>Called off. Nothing was written.</source>
        <translation>Abgebrochen. Nichts wurde geschrieben.</translation>
    </message>
    <message>
        <source>The readings have meanwhile been changed by another program. Nothing was written.</source>
        <translation>Die Messwerte wurden inzwischen von einem anderen Programm geändert. Nichts wurde geschrieben.</translation>
    </message>
    <message>
        <source>A reading cannot be read: its day or kind makes no sense to this release.</source>
        <translation>Ein Messwert kann nicht gelesen werden: sein Tag oder seine Art ergibt für diese Fassung keinen Sinn.</translation>
    </message>
    <message>
        <source>The entry of this picture is not there any more. Nothing was written.</source>
        <translation>Der Eintrag zu diesem Bild ist nicht mehr da. Nichts wurde geschrieben.</translation>
    </message>
    <message>
        <source>The picture has meanwhile been changed or deleted. Nothing was written.</source>
        <translation>Das Bild wurde inzwischen geändert oder gelöscht. Nichts wurde geschrieben.</translation>
    </message>
    <message>
        <source>%1 is not there, but %2 beside it holds the last writes of a household that was. Nothing was made; put the household back beside it, or move it away.</source>
        <translation>%1 ist nicht da, aber %2 daneben enthält die letzten Einträge eines früheren Haushalts. Nichts wurde angelegt; lege den Haushalt wieder daneben, oder verschiebe diese Datei.</translation>
    </message>
    <message>
        <source>%1 was written by an older release and has to be brought up to date, but the backup that is made before could not be. It was left as it is and can be read. %2</source>
        <translation>%1 wurde von einer älteren Fassung geschrieben und muss auf den Stand gebracht werden, aber die Sicherungskopie davor gelang nicht. Die Datei blieb, wie sie war, und kann gelesen werden. %2</translation>
    </message>
    <message>
        <source>The step before this one could not be written, so this one was not tried. Nothing of it was written.</source>
        <translation>Der Schritt davor konnte nicht geschrieben werden, daher wurde dieser nicht versucht. Nichts davon wurde geschrieben.</translation>
    </message>
    <message>
        <source>Another program has changed this meanwhile. What it wrote was kept, and nothing was written.</source>
        <translation>Ein anderes Programm hat dies inzwischen geändert. Was es schrieb, blieb, und nichts wurde geschrieben.</translation>
    </message>
    <message>
        <source>Another program removed the log of %1 while this was written. Nothing was written; close that program and try again.</source>
        <translation>Ein anderes Programm hat das Log von %1 entfernt, während dies geschrieben wurde. Nichts wurde geschrieben; schließe jenes Programm und versuche es noch einmal.</translation>
    </message>
    <message>
        <source>Another program removed the log of %1 while it was open here. The file was opened anew; nothing that was recorded is missing.</source>
        <translation>Ein anderes Programm hat das Log von %1 entfernt, während die Datei hier offen war. Sie wurde neu geöffnet; nichts von dem, was aufgezeichnet wurde, fehlt.</translation>
    </message>
    <message>
        <source>Another program removed the log of %1 while it was open here, and entries with it or out of the file. Look at the journal, and at the backups for what is missing.</source>
        <translation>Ein anderes Programm hat das Log von %1 entfernt, während die Datei hier offen war, und mit ihm oder aus der Datei Einträge. Sieh ins Tagebuch, und suche in den Sicherungskopien, was fehlt.</translation>
    </message>
</context>
<context>
    <name>SumpFields</name>
    <message>
        <source>Conductivity</source>
        <translation>Leitfähigkeit</translation>
    </message>
    <message>
        <source>mS/cm</source>
        <translation>mS/cm</translation>
    </message>
    <message>
        <source>Worms put back</source>
        <translation>Zurückgesetzte Würmer</translation>
    </message>
</context>
<context>
    <name>SymptomWords</name>
    <message>
        <source>It smells</source>
        <translation>Es riecht</translation>
    </message>
    <message>
        <source>Flies</source>
        <translation>Fliegen</translation>
    </message>
    <message>
        <source>Mites</source>
        <translation>Milben</translation>
    </message>
    <message>
        <source>Ants</source>
        <translation>Ameisen</translation>
    </message>
    <message>
        <source>Worms leave</source>
        <translation>Würmer gehen fort</translation>
    </message>
    <message>
        <source>Worms die</source>
        <translation>Würmer sterben</translation>
    </message>
    <message>
        <source>Mould</source>
        <translation>Schimmel</translation>
    </message>
    <message>
        <source>Sour bed</source>
        <translation>Saures Bett</translation>
    </message>
    <message>
        <source>It is hot inside</source>
        <translation>Es ist heiß darin</translation>
    </message>
    <message>
        <source>Standing water</source>
        <translation>Stehendes Wasser</translation>
    </message>
    <message>
        <source>Too few worms</source>
        <translation>Zu wenige Würmer</translation>
    </message>
    <message>
        <source>No castings</source>
        <translation>Kein Humus</translation>
    </message>
    <message>
        <source>More food than the worms and the air can take</source>
        <translation>Mehr Futter, als Würmer und Luft bewältigen</translation>
    </message>
    <message>
        <source>The bed is too wet</source>
        <translation>Das Bett ist zu nass</translation>
    </message>
    <message>
        <source>The bed is too dry</source>
        <translation>Das Bett ist zu trocken</translation>
    </message>
    <message>
        <source>The sump is full</source>
        <translation>Die Auffangschale ist voll</translation>
    </message>
    <message>
        <source>The bed is too hot</source>
        <translation>Das Bett ist zu heiß</translation>
    </message>
    <message>
        <source>The bed is too cold</source>
        <translation>Das Bett ist zu kalt</translation>
    </message>
    <message>
        <source>The worms are hungry</source>
        <translation>Die Würmer sind hungrig</translation>
    </message>
    <message>
        <source>Food that does not belong in</source>
        <translation>Futter, das nicht hineingehört</translation>
    </message>
    <message>
        <source>Food lies open</source>
        <translation>Futter liegt offen</translation>
    </message>
    <message>
        <source>Too much nitrogen, too little carbon</source>
        <translation>Zu viel Stickstoff, zu wenig Kohlenstoff</translation>
    </message>
    <message>
        <source>The stack is still young</source>
        <translation>Der Stapel ist noch jung</translation>
    </message>
    <message>
        <source>Crowded, or castings left in too long</source>
        <translation>Zu eng, oder Humus blieb zu lange darin</translation>
    </message>
    <message>
        <source>The worms are new here, or were moved</source>
        <translation>Die Würmer sind neu hier oder wurden umgesetzt</translation>
    </message>
    <message>
        <source>wettest tray (slot %1) holds %2 of the water it can hold</source>
        <translation>nasseste Etage (Platz %1) hält %2 des Wassers, das sie halten kann</translation>
    </message>
    <message>
        <source>%1 %</source>
        <translation>%1 %</translation>
    </message>
    <message>
        <source>driest tray (slot %1) holds %2 of the water it can hold</source>
        <translation>trockenste Etage (Platz %1) hält %2 des Wassers, das sie halten kann</translation>
    </message>
    <message>
        <source>pressed in the hand: %1 on the scale from one, dry, to five, streaming</source>
        <translation>in der Hand gedrückt: %1 auf der Skala von eins, trocken, bis fünf, strömend</translation>
    </message>
    <message>
        <source>air in the worst tray %1, where one is all that worms want</source>
        <translation>Luft in der schlechtesten Etage %1, wobei eins alles ist, was Würmer wollen</translation>
    </message>
    <message>
        <source>fed %1 of the worms&apos; own mass a day, in two weeks</source>
        <translation>am Tag %1 der Masse der Würmer gefüttert, in zwei Wochen</translation>
    </message>
    <message>
        <source>%1 of softened food waits in slot %2</source>
        <translation>%1 weiches Futter wartet an Platz %2</translation>
    </message>
    <message>
        <source>the sump is filled to %1</source>
        <translation>die Auffangschale ist zu %1 gefüllt</translation>
    </message>
    <message>
        <source>bed estimated at %1</source>
        <translation>Bett auf %1 geschätzt</translation>
    </message>
    <message>
        <source>bed read at %1</source>
        <translation>Bett mit %1 gemessen</translation>
    </message>
    <message numerus="yes">
        <source>last feeding written down %n day(s) ago</source>
        <translation>
            <numerusform>letzte Fütterung vor %n Tag eingetragen</numerusform>
            <numerusform>letzte Fütterung vor %n Tagen eingetragen</numerusform>
        </translation>
    </message>
    <message>
        <source>they take up %1 of what they need</source>
        <translation>sie nehmen %1 dessen auf, was sie brauchen</translation>
    </message>
    <message>
        <source>%1 of what was fed in a month is doubtful</source>
        <translation>%1 des Futters eines Monats ist bedenklich</translation>
    </message>
    <message>
        <source>%1 of the feedings of three weeks have no cover written down</source>
        <translation>zu %1 der Fütterungen von drei Wochen ist keine Abdeckung eingetragen</translation>
    </message>
    <message>
        <source>C:N of what was fed in three weeks %1, wished %2</source>
        <translation>C:N des Futters von drei Wochen %1, gewünscht %2</translation>
    </message>
    <message numerus="yes">
        <source>%n day(s) since the first bedding</source>
        <translation>
            <numerusform>%n Tag seit der ersten Einstreu</numerusform>
            <numerusform>%n Tage seit der ersten Einstreu</numerusform>
        </translation>
    </message>
    <message>
        <source>worms %1, best %2</source>
        <translation>Würmer %1, am besten %2</translation>
    </message>
    <message numerus="yes">
        <source>the bottom tray has stood for %n day(s)</source>
        <translation>
            <numerusform>die unterste Etage steht seit %n Tag</numerusform>
            <numerusform>die unterste Etage steht seit %n Tagen</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>worms put in, moved or lifted %n day(s) ago</source>
        <translation>
            <numerusform>Würmer vor %n Tag eingesetzt, umgesetzt oder gehoben</numerusform>
            <numerusform>Würmer vor %n Tagen eingesetzt, umgesetzt oder gehoben</numerusform>
        </translation>
    </message>
    <message>
        <source>Lift the cover: is much of the last feeding still there, matted and wet?</source>
        <translation>Hebe die Abdeckung: ist vieles von der letzten Fütterung noch da, verfilzt und nass?</translation>
    </message>
    <message>
        <source>Press a handful hard: does it stream?</source>
        <translation>Drücke eine Handvoll fest: strömt es?</translation>
    </message>
    <message>
        <source>Press a handful from the middle hard: does nothing come?</source>
        <translation>Drücke eine Handvoll aus der Mitte fest: kommt nichts?</translation>
    </message>
    <message>
        <source>Open the spigot over a jar: how much runs out?</source>
        <translation>Öffne den Hahn über einem Glas: wie viel läuft heraus?</translation>
    </message>
    <message>
        <source>Put a thermometer a hand deep into the bed.</source>
        <translation>Stecke ein Thermometer eine Handbreit tief ins Bett.</translation>
    </message>
    <message>
        <source>Put a thermometer a hand deep into the bed, in the morning.</source>
        <translation>Stecke morgens ein Thermometer eine Handbreit tief ins Bett.</translation>
    </message>
    <message>
        <source>Lift the cover: is nothing left of the last feeding?</source>
        <translation>Hebe die Abdeckung: ist von der letzten Fütterung nichts übrig?</translation>
    </message>
    <message>
        <source>Smell at the places of the last feedings: is it one of them, and which?</source>
        <translation>Rieche an den Stellen der letzten Fütterungen: ist es eine davon, und welche?</translation>
    </message>
    <message>
        <source>Look before you lift anything: does food lie open?</source>
        <translation>Sieh nach, bevor du etwas hebst: liegt Futter offen?</translation>
    </message>
    <message>
        <source>Smell: sharp, like ammonia? And is there hardly any paper left in the top tray?</source>
        <translation>Rieche: scharf, wie Ammoniak? Und ist in der obersten Etage kaum noch Papier?</translation>
    </message>
    <message>
        <source>Dig to the floor of the tray: is there a dark, crumbly layer, however thin?</source>
        <translation>Grabe bis zum Boden der Etage: ist da eine dunkle, krümelige Schicht, und sei sie noch so dünn?</translation>
    </message>
    <message>
        <source>Weigh the worms of a part of the bed: it tells how crowded they are.</source>
        <translation>Wiege die Würmer eines Teils des Betts: das zeigt, wie eng sie sitzen.</translation>
    </message>
    <message>
        <source>Wait two nights with a light on: do they stay then?</source>
        <translation>Warte zwei Nächte mit Licht: bleiben sie dann?</translation>
    </message>
    <message>
        <source>Stop feeding until most of it is gone. Spread what lies there flat, loosen it, and lay dry shredded paper or cardboard on it.</source>
        <translation>Füttere nicht mehr, bis das meiste fort ist. Verteile flach, was daliegt, lockere es und lege trockenes zerrissenes Papier oder Pappe darauf.</translation>
    </message>
    <message>
        <source>Drain the sump and leave the spigot open. Loosen the bed and work dry shredded cardboard in. No water until a pressed handful gives only a few drops.</source>
        <translation>Lass die Auffangschale ab und den Hahn offen. Lockere das Bett und arbeite trockene zerrissene Pappe ein. Kein Wasser, bis eine gedrückte Handvoll nur ein paar Tropfen gibt.</translation>
    </message>
    <message>
        <source>Pour slowly, all over, in two or three goes, until a pressed handful gives a few drops. Cover with wet paper.</source>
        <translation>Gieße langsam, überall, in zwei oder drei Gängen, bis eine gedrückte Handvoll ein paar Tropfen gibt. Decke mit nassem Papier ab.</translation>
    </message>
    <message>
        <source>Drain it now and leave the spigot open over a jar. Put worms that swim in it back into the top tray.</source>
        <translation>Lass sie jetzt ab und den Hahn über einem Glas offen. Setze Würmer, die darin schwimmen, zurück in die oberste Etage.</translation>
    </message>
    <message>
        <source>Carry the stack to a cooler place, tray by tray. No food for now; spread what heats. Lid open under a cloth; a wrapped bottle of frozen water on top buys a day.</source>
        <translation>Trage den Stapel Etage für Etage an einen kühleren Ort. Vorerst kein Futter; verteile, was warm wird. Deckel offen unter einem Tuch; eine eingewickelte Flasche gefrorenes Wasser obenauf bringt einen Tag.</translation>
    </message>
    <message>
        <source>Bring the stack in, or wrap sides and lid and stand it off the ground. Feed little until it is warmer.</source>
        <translation>Hole den Stapel herein, oder packe Seiten und Deckel ein und stelle ihn vom Boden hoch. Füttere wenig, bis es wärmer ist.</translation>
    </message>
    <message>
        <source>Feed the usual amount and cover it. If there are few worms, feed little: they multiply by themselves.</source>
        <translation>Füttere die übliche Menge und decke sie ab. Sind es wenige Würmer, füttere wenig: sie vermehren sich von selbst.</translation>
    </message>
    <message>
        <source>Take out what can be taken out, with gloves, and put it into the household waste. Cover the rest thickly.</source>
        <translation>Nimm mit Handschuhen heraus, was sich herausnehmen lässt, und gib es in den Hausmüll. Decke den Rest dick ab.</translation>
    </message>
    <message>
        <source>Bury the food a little and cover it with paper, now and with each feeding. Flies that are there are gone in {fly-days} if nothing new lies open.</source>
        <translation>Vergrabe das Futter ein wenig und decke es mit Papier ab, jetzt und bei jeder Fütterung. Fliegen, die da sind, sind in {fly-days} fort, wenn nichts Neues offen liegt.</translation>
    </message>
    <message>
        <source>Work dry shredded cardboard into the top tray, and feed less of grounds and greens for some weeks.</source>
        <translation>Arbeite trockene zerrissene Pappe in die oberste Etage ein, und füttere einige Wochen weniger Kaffeesatz und Grünes.</translation>
    </message>
    <message>
        <source>Wait. Food has to soften first, and a first tray takes {first-tray-alone}. Feed a little and keep the bed moist.</source>
        <translation>Warte. Futter muss erst weich werden, und eine erste Etage braucht {first-tray-alone}. Füttere wenig und halte das Bett feucht.</translation>
    </message>
    <message>
        <source>Leave a light on and the lid closed for some nights. They settle; it is no sign of a bad bed.</source>
        <translation>Lass einige Nächte ein Licht an und den Deckel zu. Sie gewöhnen sich ein; es ist kein Zeichen für ein schlechtes Bett.</translation>
    </message>
    <message>
        <source>Record the cover…</source>
        <translation>Abdeckung eintragen…</translation>
    </message>
    <message>
        <source>Record the water…</source>
        <translation>Wasser eintragen…</translation>
    </message>
    <message>
        <source>Record the draining…</source>
        <translation>Ablass eintragen…</translation>
    </message>
    <message>
        <source>Record the feeding…</source>
        <translation>Fütterung eintragen…</translation>
    </message>
    <message>
        <source>Record the lifting…</source>
        <translation>Heben eintragen…</translation>
    </message>
    <message>
        <source>Record the temperature…</source>
        <translation>Temperatur eintragen…</translation>
    </message>
    <message>
        <source>Record what you saw…</source>
        <translation>Eintragen, was du gesehen hast…</translation>
    </message>
    <message>
        <source>Record the reading…</source>
        <translation>Messwert eintragen…</translation>
    </message>
    <message>
        <source>Record how much ran out…</source>
        <translation>Eintragen, wie viel herauslief…</translation>
    </message>
    <message>
        <source>Record the weighing…</source>
        <translation>Wiegen eintragen…</translation>
    </message>
    <message>
        <source>Record the look…</source>
        <translation>Blick eintragen…</translation>
    </message>
    <message>
        <source>Record the worms taken out…</source>
        <translation>Die entnommenen Würmer eintragen…</translation>
    </message>
    <message>
        <source>smell at the lid, at each tray, at the sump and at what stands beside the stack. Where does it come from?</source>
        <translation>am Deckel riechen, an jeder Etage, an der Auffangschale und an dem, was neben dem Stapel steht. Woher kommt es?</translation>
    </message>
    <message>
        <source>see where they sit: in the bed, in the sump, or beside the stack on fruit and flower pots. Their eggs come in with peel.</source>
        <translation>sehen, wo sie sitzen: im Bett, in der Auffangschale oder neben dem Stapel auf Obst und Blumentöpfen. Ihre Eier kommen mit Schalen herein.</translation>
    </message>
    <message>
        <source>see where they sit. On one piece of food alone they are usual and do no harm: take that piece out.</source>
        <translation>sehen, wo sie sitzen. Auf einem Stück Futter allein sind sie üblich und schaden nicht: dieses Stück herausnehmen.</translation>
    </message>
    <message>
        <source>follow their trail back. The nest may lie beneath the stand or in a pot beside it.</source>
        <translation>ihre Straße zurückverfolgen. Das Nest kann unter dem Gestell liegen oder in einem Topf daneben.</translation>
    </message>
    <message>
        <source>see when and from where they go: on a stormy night, when a light went out, from one tray alone?</source>
        <translation>sehen, wann und woher sie gehen: in einer Gewitternacht, als ein Licht ausging, nur aus einer Etage?</translation>
    </message>
    <message>
        <source>see what came in last: treated peel, salt, cleaning agents, paint? Take it out with gloves.</source>
        <translation>sehen, was zuletzt hineinkam: behandelte Schalen, Salz, Putzmittel, Farbe? Mit Handschuhen herausnehmen.</translation>
    </message>
    <message>
        <source>see how far it goes. White threads on fresh food are usual and gone in some days.</source>
        <translation>sehen, wie weit er reicht. Weiße Fäden auf frischem Futter sind üblich und in einigen Tagen fort.</translation>
    </message>
    <message>
        <source>smell at a handful from several places. One heap of food may be sour and the rest of the bed sound.</source>
        <translation>an einer Handvoll von mehreren Stellen riechen. Ein Haufen Futter kann sauer sein und der Rest des Betts gesund.</translation>
    </message>
    <message>
        <source>feel each tray. One alone is warm from its food; all of them are warm from sun, stove or pipe.</source>
        <translation>jede Etage befühlen. Eine allein ist von ihrem Futter warm; alle zusammen sind es von Sonne, Ofen oder Rohr.</translation>
    </message>
    <message>
        <source>see where it comes from: holes that are clogged, a lid that lets rain in, a stack that is not level?</source>
        <translation>sehen, woher es kommt: verstopfte Löcher, ein Deckel, der Regen hineinlässt, ein Stapel, der schief steht?</translation>
    </message>
    <message>
        <source>look under the cover, in each tray and in the sump. They may sit elsewhere than where you looked.</source>
        <translation>unter der Abdeckung, in jeder Etage und in der Auffangschale nachsehen. Sie können anderswo sitzen, als du gesucht hast.</translation>
    </message>
    <message>
        <source>dig to the floor of the bottom tray. Castings lie there first, beneath food and bedding.</source>
        <translation>bis auf den Boden der untersten Etage graben. Dort liegt Humus zuerst, unter Futter und Einstreu.</translation>
    </message>
    <message>
        <source>Give them room: a further tray if one is spare, or a harvest of the bottom one once its castings are ready. Or give some worms away, or begin another stack with them.</source>
        <translation>Geben Sie ihnen Platz: eine weitere Etage, wenn eine frei ist, oder eine Ernte der untersten, sobald ihr Humus reif ist. Oder geben Sie Würmer ab, oder beginnen Sie mit ihnen einen weiteren Stapel.</translation>
    </message>
</context>
<context>
    <name>TrayLifts</name>
    <message>
        <source>Out of a safe reach: take it out in parts, or with someone.</source>
        <translation>Außerhalb sicherer Reichweite: in Teilen herausnehmen oder zu zweit.</translation>
    </message>
    <message>
        <source>For this lift up to %1 is advised: fine for most people.</source>
        <translation>Für dieses Heben werden bis zu %1 empfohlen: für die meisten in Ordnung.</translation>
    </message>
    <message>
        <source>For this lift up to %1 is advised: heavy, so in parts or with someone.</source>
        <translation>Für dieses Heben werden bis zu %1 empfohlen: schwer, also in Teilen oder zu zweit.</translation>
    </message>
    <message>
        <source>For this lift up to %1 is advised: far too heavy, take it out in parts.</source>
        <translation>Für dieses Heben werden bis zu %1 empfohlen: viel zu schwer, in Teilen herausnehmen.</translation>
    </message>
</context>
<context>
    <name>TrayWeightBody</name>
    <message>
        <source>Tray with contents</source>
        <translation>Etage mit Inhalt</translation>
    </message>
    <message>
        <source>What does the scale show?</source>
        <translation>Was zeigt die Waage?</translation>
    </message>
    <message>
        <source>Empty tray</source>
        <translation>Leere Etage</translation>
    </message>
    <message>
        <source>The empty tray cannot weigh more than the tray with its contents.</source>
        <translation>Die leere Etage kann nicht mehr wiegen als die Etage mit Inhalt.</translation>
    </message>
</context>
<context>
    <name>TrayWords</name>
    <message>
        <source>tray %1 in slot %2, batch %3 bedded on %4</source>
        <translation>Etage %1 an Platz %2, Charge %3, eingestreut am %4</translation>
    </message>
    <message>
        <source>Tray %1 goes from the bottom to slot %2 and dries in the light, uncovered; the others move down.</source>
        <translation>Etage %1 geht von unten an Platz %2 und trocknet im Licht, unabgedeckt; die anderen rücken nach unten.</translation>
    </message>
    <message>
        <source>Ends batch %1: tray %2 leaves slot %3 for storage.</source>
        <translation>Beendet Charge %1: Etage %2 verlässt Platz %3 ins Lager.</translation>
    </message>
    <message>
        <source>Begins batch %1: tray %2 goes on top, into slot %3.</source>
        <translation>Beginnt Charge %1: Etage %2 kommt obenauf, an Platz %3.</translation>
    </message>
    <message>
        <source>Worms leave the whole stack and go into the fed tray of %1.</source>
        <translation>Würmer verlassen den ganzen Stapel und kommen in die gefütterte Etage von %1.</translation>
    </message>
    <message>
        <source>The stack ends with that day. Its record stays; its name cannot be used again.</source>
        <translation>Der Stapel endet mit diesem Tag. Seine Aufzeichnung bleibt; sein Name kann nicht wieder verwendet werden.</translation>
    </message>
    <message>
        <source>Falls to %1.</source>
        <translation>Gehört zu %1.</translation>
    </message>
    <message>
        <source>It ends the light-drying of that tray.</source>
        <translation>Es beendet das Trocknen dieser Etage im Licht.</translation>
    </message>
</context>
<context>
    <name>TrendWords</name>
    <message>
        <source>It has held since %1.</source>
        <translation>Gleich geblieben seit %1.</translation>
    </message>
    <message>
        <source>Up from %1 on %2.</source>
        <translation>Gestiegen von %1 am %2.</translation>
    </message>
    <message>
        <source>Down from %1 on %2.</source>
        <translation>Gefallen von %1 am %2.</translation>
    </message>
    <message>
        <source>The estimates are being made.</source>
        <translation>Die Schätzungen entstehen gerade.</translation>
    </message>
    <message>
        <source>Here stands what the worms eat each day, from the first bedding on.</source>
        <translation>Hier steht, was die Würmer jeden Tag fressen, ab der ersten Einstreu.</translation>
    </message>
    <message>
        <source>Here stand the litres you drain each week, as bars, and what is to be expected, from the first bedding on.</source>
        <translation>Hier steht als Balken, was du jede Woche ablässt, und was zu erwarten ist, ab der ersten Einstreu.</translation>
    </message>
    <message>
        <source>Here stands the mass of the worms, from the first bedding on.</source>
        <translation>Hier steht die Masse der Würmer, ab der ersten Einstreu.</translation>
    </message>
    <message>
        <source>Here stands the temperature of the bed, from the first bedding on, and what was read.</source>
        <translation>Hier steht die Temperatur des Betts, ab der ersten Einstreu, und was gemessen wurde.</translation>
    </message>
    <message>
        <source>Here stands the moisture of the tray that is fed, from the first bedding on, and what was read.</source>
        <translation>Hier steht die Feuchte der gefütterten Etage, ab der ersten Einstreu, und was gemessen wurde.</translation>
    </message>
    <message>
        <source>Processing rate</source>
        <translation>Verarbeitung</translation>
    </message>
    <message>
        <source>Drainage</source>
        <translation>Ablass</translation>
    </message>
    <message>
        <source>Colony</source>
        <translation>Bestand</translation>
    </message>
    <message>
        <source>Temperature</source>
        <translation>Temperatur</translation>
    </message>
    <message>
        <source>Moisture</source>
        <translation>Feuchte</translation>
    </message>
    <message>
        <source>dry matter that the worms eat, %1</source>
        <translation>Trockenmasse, die die Würmer fressen, %1</translation>
    </message>
    <message>
        <source>bars: drained, %1 a week, each over four weeks; line: to be expected</source>
        <translation>Balken: abgelassen, %1 je Woche, je über vier Wochen; Linie: zu erwarten</translation>
    </message>
    <message>
        <source>bars: drained, %1 a week; line: to be expected</source>
        <translation>Balken: abgelassen, %1 je Woche; Linie: zu erwarten</translation>
    </message>
    <message>
        <source>live worms, %1; crosses: weighed</source>
        <translation>lebende Würmer, %1; Kreuze: gewogen</translation>
    </message>
    <message>
        <source>of the bed, %1; strokes: a day&apos;s lowest to highest by a logger</source>
        <translation>des Betts, %1; Striche: Tiefst- bis Höchstwert eines Tages nach Logger</translation>
    </message>
    <message>
        <source>of the tray that is fed, % water; strokes: a day&apos;s lowest to highest by a logger</source>
        <translation>der gefütterten Etage, % Wasser; Striche: Tiefst- bis Höchstwert eines Tages nach Logger</translation>
    </message>
    <message>
        <source>30 days</source>
        <translation>30 Tage</translation>
    </message>
    <message>
        <source>90 days</source>
        <translation>90 Tage</translation>
    </message>
    <message>
        <source>1 year</source>
        <translation>1 Jahr</translation>
    </message>
    <message>
        <source>2 years</source>
        <translation>2 Jahre</translation>
    </message>
    <message>
        <source>All</source>
        <translation>Alles</translation>
    </message>
    <message>
        <source>g/d</source>
        <translation>g/d</translation>
    </message>
    <message>
        <source>gal</source>
        <translation>gal</translation>
    </message>
    <message>
        <source>L</source>
        <translation>L</translation>
    </message>
    <message>
        <source>lb</source>
        <translation>lb</translation>
    </message>
    <message>
        <source>kg</source>
        <translation>kg</translation>
    </message>
    <message>
        <source>°F</source>
        <translation>°F</translation>
    </message>
    <message>
        <source>°C</source>
        <translation>°C</translation>
    </message>
    <message>
        <source>%</source>
        <translation>%</translation>
    </message>
    <message>
        <source>%1 (%2–%3)</source>
        <translation>%1 (%2–%3)</translation>
    </message>
    <message>
        <source>read %1 to %2, mean %3</source>
        <translation>gemessen %1 bis %2, Mittel %3</translation>
    </message>
    <message numerus="yes">
        <source>Drained %1 in %n week(s).</source>
        <translation>
            <numerusform>%1 in %n Woche abgelassen.</numerusform>
            <numerusform>%1 in %n Wochen abgelassen.</numerusform>
        </translation>
    </message>
    <message>
        <source>Nothing was drained in this time.</source>
        <translation>In dieser Zeit wurde nichts abgelassen.</translation>
    </message>
    <message>
        <source>The worms eat %1 of dry matter.</source>
        <translation>Die Würmer fressen %1 Trockenmasse.</translation>
    </message>
    <message>
        <source>To be expected: %1.</source>
        <translation>Zu erwarten: %1.</translation>
    </message>
    <message>
        <source>The worms weigh %1.</source>
        <translation>Die Würmer wiegen %1.</translation>
    </message>
    <message>
        <source>The bed is at %1.</source>
        <translation>Das Bett hat %1.</translation>
    </message>
    <message>
        <source>The tray that is fed holds %1 of water.</source>
        <translation>Die gefütterte Etage enthält %1 Wasser.</translation>
    </message>
    <message>
        <source>A logger read %1 at the lowest, %2 at the highest.</source>
        <translation>Ein Logger maß %1 als tiefsten, %2 als höchsten Wert.</translation>
    </message>
    <message>
        <source>drained %1</source>
        <translation>abgelassen %1</translation>
    </message>
    <message>
        <source>no estimate</source>
        <translation>keine Schätzung</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>, </source>
        <translation>, </translation>
    </message>
    <message>
        <source>fed</source>
        <translation>gefüttert</translation>
    </message>
    <message>
        <source>bedding laid</source>
        <translation>Einstreu eingelegt</translation>
    </message>
    <message>
        <source>lifted to the top</source>
        <translation>nach oben gehoben</translation>
    </message>
    <message>
        <source>castings taken</source>
        <translation>entnommener Humus</translation>
    </message>
    <message>
        <source>worms in or out</source>
        <translation>Würmer hinein oder heraus</translation>
    </message>
    <message>
        <source>worms weighed</source>
        <translation>gewogene Würmer</translation>
    </message>
    <message>
        <source>watered</source>
        <translation>gegossen</translation>
    </message>
    <message>
        <source>read by hand</source>
        <translation>von Hand gemessen</translation>
    </message>
    <message>
        <source>It is ready, more likely than not.</source>
        <translation>Sie ist eher reif als nicht.</translation>
    </message>
    <message>
        <source>The forecast reaches it about %1.</source>
        <translation>Die Vorhersage erreicht es etwa %1.</translation>
    </message>
    <message>
        <source>The forecast that is shown does not reach it.</source>
        <translation>Die gezeigte Vorhersage erreicht es nicht.</translation>
    </message>
    <message>
        <source>Here stands how much unprocessed food and bedding the bottom tray holds beside its castings, from the first bedding on, with the line at which it is ready.</source>
        <translation>Hier steht, wie viel unverarbeitetes Futter und Einstreu die unterste Etage neben ihrem Humus enthält, ab der ersten Einstreu, mit der Linie, bei der sie reif ist.</translation>
    </message>
    <message>
        <source>Here stands a bar for each harvest, once castings are taken and weighed, beside what was expected.</source>
        <translation>Hier steht ein Balken je Ernte, sobald Humus entnommen und gewogen ist, neben dem Erwarteten.</translation>
    </message>
    <message>
        <source>Feed-to-cast</source>
        <translation>Futter zu Humus</translation>
    </message>
    <message>
        <source>Yield</source>
        <translation>Ertrag</translation>
    </message>
    <message>
        <source>added up, %1; steps: drained; line: to be expected, its range as if every week erred to the same side</source>
        <translation>aufsummiert, %1; Stufen: abgelassen; Linie: zu erwarten, ihr Bereich, als irrte jede Woche zur selben Seite</translation>
    </message>
    <message>
        <source>unprocessed dry matter to castings in the bottom tray, on a log scale; each batch has its own line</source>
        <translation>unverarbeitete Trockenmasse zu Humus in der untersten Etage, logarithmisch; jede Charge hat ihre eigene Linie</translation>
    </message>
    <message>
        <source>castings taken in a year, %1; upright stroke: to be expected</source>
        <translation>im Jahr entnommener Humus, %1; senkrechter Strich: zu erwarten</translation>
    </message>
    <message>
        <source>castings of each harvest, %1; upright stroke: to be expected</source>
        <translation>Humus jeder Ernte, %1; senkrechter Strich: zu erwarten</translation>
    </message>
    <message>
        <source>%1 taken</source>
        <translation>%1 entnommen</translation>
    </message>
    <message>
        <source>%1; %2 expected of %3 of it</source>
        <translation>%1; %2 erwartet von %3 davon</translation>
    </message>
    <message>
        <source>%1, %2 expected</source>
        <translation>%1, %2 erwartet</translation>
    </message>
    <message numerus="yes">
        <source>%1 of castings in %n harvest(s).</source>
        <translation>
            <numerusform>%1 Humus in %n Ernte.</numerusform>
            <numerusform>%1 Humus in %n Ernten.</numerusform>
        </translation>
    </message>
    <message>
        <source>%1: %2.</source>
        <translation>%1: %2.</translation>
    </message>
    <message>
        <source>%1 of %2 bars lie within what was expected.</source>
        <translation>%1 von %2 Balken liegen im Erwarteten.</translation>
    </message>
    <message numerus="yes">
        <source>%n harvest(s) measured by volume: marked, without a bar.</source>
        <translation>
            <numerusform>%n Ernte nach Volumen gemessen: vermerkt, ohne Balken.</numerusform>
            <numerusform>%n Ernten nach Volumen gemessen: vermerkt, ohne Balken.</numerusform>
        </translation>
    </message>
    <message>
        <source>Drained %1 in all since %2.</source>
        <translation>Seit %2 insgesamt %1 abgelassen.</translation>
    </message>
    <message>
        <source>Of the bottom tray: %1. It is ready at %2.</source>
        <translation>Der untersten Etage: %1. Sie ist reif bei %2.</translation>
    </message>
    <message>
        <source>On %1: %2.</source>
        <translation>Am %1: %2.</translation>
    </message>
    <message>
        <source>With the change: %1 on %2.</source>
        <translation>Mit der Änderung: %1 am %2.</translation>
    </message>
    <message>
        <source>drained %1 in all</source>
        <translation>insgesamt %1 abgelassen</translation>
    </message>
    <message>
        <source>in all of %1: %2</source>
        <translation>im ganzen %1: %2</translation>
    </message>
    <message>
        <source>with the change %1</source>
        <translation>mit der Änderung %1</translation>
    </message>
    <message>
        <source>nothing taken</source>
        <translation>nichts entnommen</translation>
    </message>
    <message>
        <source>something seen</source>
        <translation>etwas gesehen</translation>
    </message>
    <message>
        <source>less drained than expected, twice: blocked, or a dry bed?</source>
        <translation>zweimal weniger abgelassen als erwartet: verstopft oder ein trockenes Bett?</translation>
    </message>
    <message>
        <source>more drained than expected, twice: too much water?</source>
        <translation>zweimal mehr abgelassen als erwartet: zu viel Wasser?</translation>
    </message>
    <message>
        <source>blocked?</source>
        <translation>verstopft?</translation>
    </message>
    <message>
        <source>too much water?</source>
        <translation>zu viel Wasser?</translation>
    </message>
    <message>
        <source>ready</source>
        <translation>reif</translation>
    </message>
    <message>
        <source>oz/d</source>
        <translation>oz/d</translation>
    </message>
    <message>
        <source>As on %1, and between %2 and %3 since.</source>
        <translation>Wie am %1, dazwischen %2 bis %3.</translation>
    </message>
    <message>
        <source>As on %1, and between %2 and %3 in the meantime.</source>
        <translation>Wie am %1, dazwischen %2 bis %3.</translation>
    </message>
    <message>
        <source>It had held since %1.</source>
        <translation>Seit dem %1 war es gleich geblieben.</translation>
    </message>
    <message>
        <source>It was ready, more likely than not.</source>
        <translation>Sie war eher reif als nicht.</translation>
    </message>
    <message>
        <source>It was not ready then, more likely than not.</source>
        <translation>Sie war damals eher noch nicht reif.</translation>
    </message>
    <message>
        <source>On %1 the worms ate %2 of dry matter.</source>
        <translation>Am %1 fraßen die Würmer %2 Trockenmasse.</translation>
    </message>
    <message>
        <source>To be expected on %1: %2.</source>
        <translation>Zu erwarten am %1: %2.</translation>
    </message>
    <message>
        <source>On %1 the worms weighed %2.</source>
        <translation>Am %1 wogen die Würmer %2.</translation>
    </message>
    <message>
        <source>On %1 the bed was at %2.</source>
        <translation>Am %1 hatte das Bett %2.</translation>
    </message>
    <message>
        <source>On %1 the tray that was fed held %2 of water.</source>
        <translation>Am %1 hielt die gefütterte Etage %2 Wasser.</translation>
    </message>
    <message>
        <source>Of the bottom tray on %1: %2. A tray is ready at %3.</source>
        <translation>Der untersten Etage am %1: %2. Reif ist eine Etage bei %3.</translation>
    </message>
    <message>
        <source>Nothing had been drained until then.</source>
        <translation>Bis dahin war nichts abgelassen worden.</translation>
    </message>
    <message>
        <source>Drained %1 in all from %2 to %3.</source>
        <translation>Im Ganzen abgelassen: %1 vom %2 bis %3.</translation>
    </message>
    <message numerus="yes">
        <source>Drained %1 in %n week(s) to %2.</source>
        <translation>
            <numerusform>Abgelassen: %1 in %n Woche bis zum %2.</numerusform>
            <numerusform>Abgelassen: %1 in %n Wochen bis zum %2.</numerusform>
        </translation>
    </message>
    <message>
        <source>No castings were taken from %1 to %2.</source>
        <translation>Vom %1 bis %2 wurde kein Humus genommen.</translation>
    </message>
    <message>
        <source>From %1 to %2 there is nothing to show.</source>
        <translation>Vom %1 bis %2 gibt es nichts zu zeigen.</translation>
    </message>
    <message>
        <source>Forecast for %1, fed as usual, no tray lifted: %2.</source>
        <translation>Vorhersage für %1, gefüttert wie üblich, keine Etage gehoben: %2.</translation>
    </message>
</context>
<context>
    <name>UsualActs</name>
    <message>
        <source>Feed %1, %2</source>
        <comment>amount, stack</comment>
        <translation>%1 füttern, %2</translation>
    </message>
    <message>
        <source>Water %1, %2</source>
        <comment>amount, stack</comment>
        <translation>%1 gießen, %2</translation>
    </message>
    <message>
        <source>Drain %1, %2</source>
        <comment>amount, stack</comment>
        <translation>%1 ablassen, %2</translation>
    </message>
    <message>
        <source>Cover %1, %2</source>
        <comment>amount, stack</comment>
        <translation>%1 abdecken, %2</translation>
    </message>
</context>
<context>
    <name>WaterBody</name>
    <message>
        <source>Amount</source>
        <translation>Menge</translation>
    </message>
    <message>
        <source>How much water?</source>
        <translation>Wie viel Wasser?</translation>
    </message>
</context>
<context>
    <name>WeighBody</name>
    <message>
        <source>Worms</source>
        <translation>Würmer</translation>
    </message>
    <message>
        <source>What do the worms weigh?</source>
        <translation>Was wiegen die Würmer?</translation>
    </message>
    <message>
        <source>Share of the bed searched</source>
        <translation>Durchsuchter Anteil des Betts</translation>
    </message>
    <message>
        <source>all of it when left empty</source>
        <translation>alles, wenn es leer bleibt</translation>
    </message>
</context>
<context>
    <name>WindowPaper</name>
    <message>
        <source>--report: there is no stack on that day</source>
        <translation>--report: an diesem Tag gibt es keinen Stapel</translation>
    </message>
    <message>
        <source>--report: found «%1»; allowed: %2</source>
        <translation>--report: „%1“ gefunden; erlaubt: %2</translation>
    </message>
    <message>
        <source>the sheet</source>
        <translation>das Blatt</translation>
    </message>
    <message>
        <source>the labels</source>
        <translation>die Etiketten</translation>
    </message>
    <message>
        <source>no tray stands on that day, so there is nothing to label</source>
        <translation>an diesem Tag steht keine Etage, also gibt es nichts zu beschriften</translation>
    </message>
</context>
<context>
    <name>WindowStart</name>
    <message>
        <source>there is no display; --portrait DIR draws the pages without one</source>
        <translation>es gibt keine Anzeige; --portrait DIR zeichnet die Seiten ohne sie</translation>
    </message>
</context>
<context>
    <name>YearLanes</name>
    <message>
        <source>nothing within a year</source>
        <translation>nichts innerhalb eines Jahres</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>lift the bottom tray</source>
        <translation>unterste Etage heben</translation>
    </message>
    <message>
        <source>take the castings</source>
        <translation>Humus nehmen</translation>
    </message>
    <message>
        <source>add a tray</source>
        <translation>Etage hinzufügen</translation>
    </message>
    <message>
        <source>%1 (from %2 on)</source>
        <translation>%1 (ab %2)</translation>
    </message>
    <message>
        <source>%1 (%2)</source>
        <translation>%1 (%2)</translation>
    </message>
    <message>
        <source>%1, %2: %3 (tray %4)</source>
        <translation>%1, %2: %3 (Etage %4)</translation>
    </message>
    <message>
        <source>ready on that day %1</source>
        <translation>an diesem Tag reif: %1</translation>
    </message>
    <message>
        <source>about %1 of castings</source>
        <translation>etwa %1 Humus</translation>
    </message>
    <message>
        <source>day chosen by hand</source>
        <translation>Tag von Hand gewählt</translation>
    </message>
    <message>
        <source>%1 (pinned)</source>
        <translation>%1 (festgelegt)</translation>
    </message>
    <message>
        <source>Day</source>
        <translation>Tag</translation>
    </message>
    <message>
        <source>Stack</source>
        <translation>Stapel</translation>
    </message>
    <message>
        <source>Step</source>
        <translation>Schritt</translation>
    </message>
    <message>
        <source>Tray</source>
        <translation>Etage</translation>
    </message>
    <message>
        <source>Castings</source>
        <translation>Humus</translation>
    </message>
    <message>
        <source>tray %1 ready, %2</source>
        <translation>Etage %1 reif, %2</translation>
    </message>
    <message>
        <source>tray %1 ready %2; today %3</source>
        <comment>number, dates, chance</comment>
        <translation>Etage %1 reif: %2; heute %3</translation>
    </message>
    <message>
        <source>tray %1 ready about now; today %2</source>
        <comment>number, chance</comment>
        <translation>Etage %1 etwa jetzt reif; heute %2</translation>
    </message>
    <message>
        <source>tray %1 ready from %2 on; today %3</source>
        <comment>number, day, chance</comment>
        <translation>Etage %1 reif ab %2; heute %3</translation>
    </message>
    <message>
        <source>being reckoned…</source>
        <translation>wird gerechnet …</translation>
    </message>
    <message>
        <source>what follows from it is being reckoned</source>
        <translation>was daraus folgt, wird gerechnet</translation>
    </message>
    <message>
        <source>whether it is due is not sure; a look decides</source>
        <translation>ob etwas fällig ist, ist nicht sicher; Nachsehen entscheidet</translation>
    </message>
    <message>
        <source>due %1</source>
        <translation>fällig %1</translation>
    </message>
    <message>
        <source>%1 after it is due</source>
        <translation>%1 nach der Fälligkeit</translation>
    </message>
    <message>
        <source>%1 before it is due</source>
        <translation>%1 vor der Fälligkeit</translation>
    </message>
    <message>
        <source>Due, 80 % range</source>
        <translation>Fällig, 80-%-Bereich</translation>
    </message>
</context>
<context>
    <name>tierloam::exchange_view::JournalSheetView</name>
    <message>
        <source>Import into the journal</source>
        <translation>Ins Tagebuch importieren</translation>
    </message>
    <message>
        <source>Import %1</source>
        <translation>%1 importieren</translation>
    </message>
    <message>
        <source>Reading…</source>
        <translation>Wird gelesen…</translation>
    </message>
    <message>
        <source>Cells parted by %1</source>
        <translation>Zellen getrennt durch %1</translation>
    </message>
    <message>
        <source>What parts the cells</source>
        <translation>Was die Zellen trennt</translation>
    </message>
    <message>
        <source>Rows that are shown</source>
        <translation>Gezeigte Zeilen</translation>
    </message>
    <message>
        <source>&amp;Import</source>
        <translation>&amp;Importieren</translation>
    </message>
    <message>
        <source>&amp;Save the rows at fault…</source>
        <translation>Fehlerhafte Zeilen &amp;sichern…</translation>
    </message>
    <message>
        <source>These are &amp;readings of a logger…</source>
        <translation>Das sind &amp;Messwerte eines Loggers…</translation>
    </message>
    <message>
        <source>Close</source>
        <translation>Schließen</translation>
    </message>
    <message>
        <source>Left out, since they are no columns of the journal: %1</source>
        <translation>Weggelassen, da keine Spalten des Tagebuchs: %1</translation>
    </message>
    <message>
        <source>Leave out what the journal holds already (%1)</source>
        <translation>Weglassen, was das Tagebuch schon enthält (%1)</translation>
    </message>
    <message>
        <source>Leave out what the journal holds already</source>
        <translation>Weglassen, was das Tagebuch schon enthält</translation>
    </message>
    <message>
        <source>Leave out what an earlier row of the file says too (%1)</source>
        <translation>Weglassen, was auch eine frühere Zeile der Datei sagt (%1)</translation>
    </message>
    <message>
        <source>Leave out what an earlier row of the file says too</source>
        <translation>Weglassen, was auch eine frühere Zeile der Datei sagt</translation>
    </message>
    <message>
        <source>The first rows</source>
        <translation>Die ersten Zeilen</translation>
    </message>
    <message>
        <source>Rows at fault (%1)</source>
        <translation>Fehlerhafte Zeilen (%1)</translation>
    </message>
    <message>
        <source>Rows that are there already (%1)</source>
        <translation>Schon vorhandene Zeilen (%1)</translation>
    </message>
    <message>
        <source>Rows said before (%1)</source>
        <translation>Zuvor gesagte Zeilen (%1)</translation>
    </message>
    <message>
        <source>Imported</source>
        <translation>Importiert</translation>
    </message>
    <message numerus="yes">
        <source>&amp;Import %n entry(ies)</source>
        <translation>
            <numerusform>%n Eintrag &amp;importieren</numerusform>
            <numerusform>%n Einträge &amp;importieren</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>The other rows have been imported. %n row(s) at fault: save them, put them right and import them again.</source>
        <translation>
            <numerusform>Die anderen Zeilen wurden importiert. %n Zeile fehlerhaft: sichere sie, berichtige sie und importiere sie noch einmal.</numerusform>
            <numerusform>Die anderen Zeilen wurden importiert. %n Zeilen fehlerhaft: sichere sie, berichtige sie und importiere sie noch einmal.</numerusform>
        </translation>
    </message>
    <message>
        <source>Remember the words of %1</source>
        <translation>Die Wörter von %1 merken</translation>
    </message>
    <message>
        <source>Rows left out as answered (%1)</source>
        <translation>Zeilen, wie geantwortet weggelassen (%1)</translation>
    </message>
    <message>
        <source>This household is open for reading only: nothing can be imported into it.</source>
        <translation>Dieser Haushalt ist nur zum Lesen offen: nichts kann in ihn importiert werden.</translation>
    </message>
</context>
<context>
    <name>tierloam::exchange_view::LoggerColumns</name>
    <message>
        <source>column %1</source>
        <translation>Spalte %1</translation>
    </message>
    <message>
        <source>Column «%1» holds</source>
        <translation>Spalte „%1“ enthält</translation>
    </message>
</context>
<context>
    <name>tierloam::exchange_view::MissingBox</name>
    <message>
        <source>Please choose</source>
        <translation>Bitte wählen</translation>
    </message>
    <message>
        <source>What was done, where a row does not say it:</source>
        <translation>Was getan wurde, wo eine Zeile es nicht sagt:</translation>
    </message>
    <message>
        <source>The stack, where a row names none:</source>
        <translation>Der Stapel, wo eine Zeile keinen nennt:</translation>
    </message>
    <message>
        <source>The unit of amounts without one:</source>
        <translation>Die Einheit von Mengen ohne Einheit:</translation>
    </message>
    <message>
        <source>Each is: %1</source>
        <translation>Jede ist: %1</translation>
    </message>
    <message>
        <source>A new stack, «%1»</source>
        <translation>Ein neuer Stapel, „%1“</translation>
    </message>
</context>
<context>
    <name>tierloam::exchange_view::QuestionsBox</name>
    <message>
        <source>Please choose</source>
        <translation>Bitte wählen</translation>
    </message>
    <message>
        <source>not read</source>
        <translation>nicht gelesen</translation>
    </message>
    <message>
        <source>The comma is the decimal mark: «%1» in line %2 can mean nothing else.</source>
        <translation>Das Komma ist das Dezimalzeichen: „%1“ in Zeile %2 kann nichts anderes heißen.</translation>
    </message>
    <message>
        <source>The point is the decimal mark: «%1» in line %2 can mean nothing else.</source>
        <translation>Der Punkt ist das Dezimalzeichen: „%1“ in Zeile %2 kann nichts anderes heißen.</translation>
    </message>
    <message>
        <source>The day comes before the month: «%1» in line %2 can mean nothing else.</source>
        <translation>Der Tag steht vor dem Monat: „%1“ in Zeile %2 kann nichts anderes heißen.</translation>
    </message>
    <message>
        <source>The month comes before the day: «%1» in line %2 can mean nothing else.</source>
        <translation>Der Monat steht vor dem Tag: „%1“ in Zeile %2 kann nichts anderes heißen.</translation>
    </message>
    <message>
        <source>Some numbers can only have a point as decimal mark, others only a comma («%1» in line %2). Which is meant? Rows of the other kind will be at fault.</source>
        <translation>Einige Zahlen können nur einen Punkt als Dezimalzeichen haben, andere nur ein Komma („%1“ in Zeile %2). Was ist gemeint? Zeilen der anderen Art werden fehlerhaft.</translation>
    </message>
    <message>
        <source>What does «%1» in line %2 mean?</source>
        <translation>Was heißt „%1“ in Zeile %2?</translation>
    </message>
    <message>
        <source>The comma is the decimal mark</source>
        <translation>Das Komma ist das Dezimalzeichen</translation>
    </message>
    <message>
        <source>The point is the decimal mark</source>
        <translation>Der Punkt ist das Dezimalzeichen</translation>
    </message>
    <message>
        <source>%1: this is %2</source>
        <translation>%1: das ist %2</translation>
    </message>
    <message>
        <source>Some dates can only have the day first, others only the month («%1» in line %2). Which is meant? Rows of the other kind will be at fault.</source>
        <translation>Einige Daten können nur den Tag zuerst haben, andere nur den Monat („%1“ in Zeile %2). Was ist gemeint? Zeilen der anderen Art werden fehlerhaft.</translation>
    </message>
    <message>
        <source>Which day is «%1» in line %2?</source>
        <translation>Welcher Tag ist „%1“ in Zeile %2?</translation>
    </message>
    <message>
        <source>The day comes first</source>
        <translation>Der Tag kommt zuerst</translation>
    </message>
    <message>
        <source>The month comes first</source>
        <translation>Der Monat kommt zuerst</translation>
    </message>
    <message>
        <source>Years have two digits. Which are meant?</source>
        <translation>Jahre haben zwei Stellen. Welche sind gemeint?</translation>
    </message>
    <message>
        <source>2000 to 2099</source>
        <translation>2000 bis 2099</translation>
    </message>
    <message>
        <source>1900 to 1999</source>
        <translation>1900 bis 1999</translation>
    </message>
</context>
<context>
    <name>tierloam::exchange_view::ReadingsView</name>
    <message>
        <source>Import readings of a logger</source>
        <translation>Messwerte eines Loggers importieren</translation>
    </message>
    <message>
        <source>Readings in %1</source>
        <translation>Messwerte in %1</translation>
    </message>
    <message>
        <source>Reading…</source>
        <translation>Wird gelesen…</translation>
    </message>
    <message>
        <source>The logger lies in or beside</source>
        <translation>Der Logger liegt in oder neben</translation>
    </message>
    <message>
        <source>Stack in or beside which the logger lies</source>
        <translation>Stapel, in oder neben dem der Logger liegt</translation>
    </message>
    <message>
        <source>How far it is</source>
        <translation>Wie weit es ist</translation>
    </message>
    <message>
        <source>&amp;Import</source>
        <translation>&amp;Importieren</translation>
    </message>
    <message>
        <source>Call &amp;off</source>
        <translation>&amp;Abbrechen</translation>
    </message>
    <message>
        <source>&amp;Save the rows at fault…</source>
        <translation>Fehlerhafte Zeilen &amp;sichern…</translation>
    </message>
    <message>
        <source>Close</source>
        <translation>Schließen</translation>
    </message>
    <message>
        <source>Please choose</source>
        <translation>Bitte wählen</translation>
    </message>
    <message numerus="yes">
        <source>%Ln reading(s) imported from %1.</source>
        <translation>
            <numerusform>%Ln Messwert aus %1 importiert.</numerusform>
            <numerusform>%Ln Messwerte aus %1 importiert.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>The journal has their mean of %Ln day(s).</source>
        <translation>
            <numerusform>Das Tagebuch hat ihr Mittel von %Ln Tag.</numerusform>
            <numerusform>Das Tagebuch hat ihr Mittel von %Ln Tagen.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%Ln row(s), %1, cells parted by %2.</source>
        <translation>
            <numerusform>%Ln Zeile, %1, Zellen getrennt durch %2.</numerusform>
            <numerusform>%Ln Zeilen, %1, Zellen getrennt durch %2.</numerusform>
        </translation>
    </message>
    <message>
        <source>%1 Columns as you chose them for the last file with these columns.</source>
        <translation>%1 Spalten so, wie du sie für die letzte Datei mit diesen Spalten gewählt hast.</translation>
    </message>
    <message>
        <source>Reading the file…</source>
        <translation>Die Datei wird gelesen…</translation>
    </message>
    <message>
        <source>Writing the readings…</source>
        <translation>Die Messwerte werden geschrieben…</translation>
    </message>
    <message>
        <source>Remember the columns of %1</source>
        <translation>Spalten von %1 merken</translation>
    </message>
    <message>
        <source>Called off. Nothing was written.</source>
        <translation>Abgebrochen. Nichts wurde geschrieben.</translation>
    </message>
    <message>
        <source>Writing; until the end nothing is kept.</source>
        <translation>Wird geschrieben; bis zum Ende bleibt nichts davon.</translation>
    </message>
    <message>
        <source>There is no stack that the readings could belong to. Start one first.</source>
        <translation>Es gibt keinen Stapel, zu dem die Messwerte gehören könnten. Beginne zuerst einen.</translation>
    </message>
    <message>
        <source>No column holds the date and time. Choose the one that does.</source>
        <translation>Keine Spalte enthält Datum und Uhrzeit. Wähle die richtige.</translation>
    </message>
    <message>
        <source>No column holds a temperature or moisture. Choose the ones that do.</source>
        <translation>Keine Spalte enthält eine Temperatur oder Feuchte. Wähle die richtigen.</translation>
    </message>
    <message>
        <source>Choose whether the temperature is in °C or °F.</source>
        <translation>Wähle, ob die Temperatur in °C oder °F ist.</translation>
    </message>
    <message>
        <source>Answer the question above.</source>
        <translation>Beantworte die Frage oben.</translation>
    </message>
    <message>
        <source>No row holds a reading.</source>
        <translation>Keine Zeile enthält einen Messwert.</translation>
    </message>
    <message>
        <source>Choose the stack that the logger belongs to.</source>
        <translation>Wähle den Stapel, zu dem der Logger gehört.</translation>
    </message>
    <message numerus="yes">
        <source>%Ln reading(s) from %1 to %2 will be kept in full.</source>
        <translation>
            <numerusform>%Ln Messwert von %1 bis %2 wird vollständig behalten.</numerusform>
            <numerusform>%Ln Messwerte von %1 bis %2 werden vollständig behalten.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>The journal gets the mean of %Ln day(s), an entry each. One undo takes all of it back.</source>
        <translation>
            <numerusform>Das Tagebuch bekommt das Mittel von %Ln Tag als Eintrag. Einmal Rückgängig nimmt alles zurück.</numerusform>
            <numerusform>Das Tagebuch bekommt das Mittel von %Ln Tagen, je einen Eintrag. Einmal Rückgängig nimmt alles zurück.</numerusform>
        </translation>
    </message>
    <message>
        <source>%1 are there already and left out.</source>
        <translation>%1 sind schon da und bleiben weg.</translation>
    </message>
    <message>
        <source>%1 are of days on which the stack did not stand, and left out.</source>
        <translation>%1 sind von Tagen, an denen der Stapel nicht stand, und bleiben weg.</translation>
    </message>
    <message numerus="yes">
        <source>%Ln row(s) at fault, the first in line %1: %2</source>
        <translation>
            <numerusform>%Ln Zeile fehlerhaft, die erste in Zeile %1: %2</numerusform>
            <numerusform>%Ln Zeilen fehlerhaft, die erste in Zeile %1: %2</numerusform>
        </translation>
    </message>
    <message>
        <source>%1 Choose the stack again to try once more.</source>
        <translation>%1 Wähle den Stapel noch einmal, um es wieder zu versuchen.</translation>
    </message>
    <message>
        <source>%1 There are more; the first %2 are in it.</source>
        <translation>%1 Es gibt mehr; die ersten %2 stehen darin.</translation>
    </message>
</context>
<context>
    <name>tierloam::exchange_view::SheetPreview</name>
    <message>
        <source>added</source>
        <translation>hinzugefügt</translation>
    </message>
    <message>
        <source>there already, left out</source>
        <translation>schon da, weggelassen</translation>
    </message>
    <message>
        <source>said before, left out</source>
        <translation>zuvor gesagt, weggelassen</translation>
    </message>
    <message>
        <source>waits for an answer</source>
        <translation>wartet auf eine Antwort</translation>
    </message>
    <message>
        <source>at fault: %1</source>
        <translation>fehlerhaft: %1</translation>
    </message>
    <message>
        <source>The column holds</source>
        <translation>Die Spalte enthält</translation>
    </message>
    <message>
        <source>What becomes of it</source>
        <translation>Was daraus wird</translation>
    </message>
    <message>
        <source>left out as answered</source>
        <translation>wie geantwortet weggelassen</translation>
    </message>
</context>
<context>
    <name>tierloam::exchange_view::SheetTable</name>
    <message>
        <source>Rows of the file</source>
        <translation>Zeilen der Datei</translation>
    </message>
    <message>
        <source>In the first row the content of each column is chosen</source>
        <translation>In der ersten Zeile wird der Inhalt jeder Spalte gewählt</translation>
    </message>
    <message>
        <source>nothing, left out</source>
        <translation>nichts, weggelassen</translation>
    </message>
    <message>
        <source>Column «%1» holds</source>
        <translation>Spalte „%1“ enthält</translation>
    </message>
</context>
<context>
    <name>tierloam::exchange_view::WordsBox</name>
    <message>
        <source>Leave out all that is &amp;not answered</source>
        <translation>Alles &amp;nicht Beantwortete weglassen</translation>
    </message>
    <message>
        <source>These names are none of the stacks here. Which stacks are they?</source>
        <translation>Diese Namen trägt hier kein Stapel. Welche Stapel sind gemeint?</translation>
    </message>
    <message>
        <source>What was done is not clear from these words. What do they mean?</source>
        <translation>Was getan wurde, ist aus diesen Wörtern nicht klar. Was bedeuten sie?</translation>
    </message>
    <message>
        <source>These are none of the materials here. Which come nearest?</source>
        <translation>Dies sind keine der Materialien hier. Welche kommen am nächsten?</translation>
    </message>
    <message>
        <source>There are %1 of them. Does another column hold the stack?</source>
        <translation>Es sind %1. Steht der Stapel in einer anderen Spalte?</translation>
    </message>
    <message>
        <source>There are %1 of them. Does another column hold what was done?</source>
        <translation>Es sind %1. Steht in einer anderen Spalte, was getan wurde?</translation>
    </message>
    <message>
        <source>There are %1 of them. Does another column hold the material?</source>
        <translation>Es sind %1. Steht das Material in einer anderen Spalte?</translation>
    </message>
    <message>
        <source>Only the first %1 are asked here; the rows of the others are at fault.</source>
        <translation>Nur die ersten %1 werden hier gefragt; die Zeilen der anderen sind fehlerhaft.</translation>
    </message>
    <message>
        <source>«%1»</source>
        <translation>„%1“</translation>
    </message>
    <message>
        <source>line %1</source>
        <translation>Zeile %1</translation>
    </message>
    <message numerus="yes">
        <source>%n row(s), the first in line %1</source>
        <translation>
            <numerusform>%n Zeile, die erste: %1</numerusform>
            <numerusform>%n Zeilen, die erste: %1</numerusform>
        </translation>
    </message>
    <message>
        <source>Please choose</source>
        <translation>Bitte wählen</translation>
    </message>
    <message>
        <source>a new stack</source>
        <translation>ein neuer Stapel</translation>
    </message>
    <message>
        <source>leave out</source>
        <translation>weglassen</translation>
    </message>
    <message>
        <source>Stack that %1 means</source>
        <translation>Stapel, den %1 meint</translation>
    </message>
    <message>
        <source>What %1 means</source>
        <translation>Was %1 bedeutet</translation>
    </message>
    <message>
        <source>Material that %1 means</source>
        <translation>Material, das %1 meint</translation>
    </message>
    <message>
        <source>A new stack is set up with the usual sizes on the day of its first row, with the usual bedding where no row lays any. Look at those entries afterwards; worms that no row puts in have to be recorded too.</source>
        <translation>Ein neuer Stapel wird am Tag seiner ersten Zeile mit den üblichen Maßen aufgestellt, mit der üblichen Einstreu, wo keine Zeile eine einlegt. Sieh diese Einträge danach an; Würmer, die keine Zeile einsetzt, sind noch einzutragen.</translation>
    </message>
</context>
<context>
    <name>tierloam::forms::ActionForm</name>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>This household was opened for reading only; nothing can be recorded.</source>
        <translation>Dieser Haushalt wurde nur zum Lesen geöffnet; nichts kann eingetragen werden.</translation>
    </message>
    <message>
        <source>Nothing was recorded; what you typed is still here. %1</source>
        <translation>Nichts wurde eingetragen; was du geschrieben hast, ist noch da. %1</translation>
    </message>
    <message>
        <source>This cannot be recorded. %1</source>
        <translation>Das kann nicht eingetragen werden. %1</translation>
    </message>
    <message>
        <source>Recording…</source>
        <translation>Wird eingetragen…</translation>
    </message>
</context>
<context>
    <name>tierloam::forms::CautionCard</name>
    <message>
        <source>Caution: %1</source>
        <translation>Warnhinweis: %1</translation>
    </message>
    <message>
        <source>Source: %1</source>
        <translation>Quelle: %1</translation>
    </message>
    <message>
        <source>Cautions</source>
        <translation>Warnhinweise</translation>
    </message>
    <message>
        <source>More</source>
        <comment>the whole text of cautions</comment>
        <translation>Mehr</translation>
    </message>
    <message>
        <source>Less</source>
        <comment>the cautions in few words</comment>
        <translation>Weniger</translation>
    </message>
</context>
<context>
    <name>tierloam::forms::EntryEditor</name>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>This entry is no longer in the journal.</source>
        <translation>Dieser Eintrag ist nicht mehr im Tagebuch.</translation>
    </message>
    <message>
        <source>Edit: %1</source>
        <translation>Bearbeiten: %1</translation>
    </message>
    <message>
        <source>Save</source>
        <translation>Sichern</translation>
    </message>
    <message>
        <source>Delete</source>
        <translation>Löschen</translation>
    </message>
    <message>
        <source>Takes the entry out of the journal; undo brings it back</source>
        <translation>Nimmt den Eintrag aus dem Tagebuch; Rückgängig bringt ihn zurück</translation>
    </message>
    <message>
        <source>This household was opened for reading only; nothing can be changed.</source>
        <translation>Dieser Haushalt wurde nur zum Lesen geöffnet; nichts kann geändert werden.</translation>
    </message>
    <message>
        <source>Nothing was changed; what you typed is still here. %1</source>
        <translation>Nichts wurde geändert; was du geschrieben hast, ist noch da. %1</translation>
    </message>
    <message>
        <source>This cannot be saved. %1</source>
        <translation>Das kann nicht gesichert werden. %1</translation>
    </message>
    <message>
        <source>Saving…</source>
        <translation>Wird gesichert…</translation>
    </message>
    <message>
        <source>edit of %1</source>
        <translation>Bearbeitung von %1</translation>
    </message>
    <message>
        <source>This entry cannot be taken out. %1</source>
        <translation>Dieser Eintrag kann nicht entfernt werden. %1</translation>
    </message>
    <message>
        <source>Deleting…</source>
        <translation>Wird gelöscht…</translation>
    </message>
    <message>
        <source>deletion of %1</source>
        <translation>Löschung von %1</translation>
    </message>
    <message>
        <source>Not saved yet: this entry has been changed elsewhere meanwhile, in what you have changed too. What you typed is still here; save once more to put it in its place, or leave it as it is now with Esc.</source>
        <translation>Noch nicht gesichert: dieser Eintrag wurde inzwischen anderswo geändert, auch in dem, was du geändert hast. Was du getippt hast, steht noch hier; sichere noch einmal, um es an dessen Stelle zu setzen, oder lass ihn mit Esc, wie er jetzt ist.</translation>
    </message>
    <message>
        <source>This entry has been taken out of the journal meanwhile. What you typed is still here: undo or redo brings the entry back, Esc gives it up.</source>
        <translation>Dieser Eintrag wurde inzwischen aus dem Tagebuch genommen. Das Getippte steht noch hier: Rückgängig oder Wiederholen bringt den Eintrag zurück, Esc gibt auf.</translation>
    </message>
</context>
<context>
    <name>tierloam::forms::EntrySheet</name>
    <message>
        <source>Note</source>
        <translation>Notiz</translation>
    </message>
    <message>
        <source>What is there to note?</source>
        <translation>Was ist zu notieren?</translation>
    </message>
    <message>
        <source>Tray</source>
        <translation>Etage</translation>
    </message>
    <message>
        <source>Date</source>
        <translation>Datum</translation>
    </message>
    <message>
        <source>On which day?</source>
        <translation>An welchem Tag?</translation>
    </message>
    <message>
        <source>Source</source>
        <translation>Quelle</translation>
    </message>
    <message>
        <source>Not possible so: %1</source>
        <translation>So nicht möglich: %1</translation>
    </message>
    <message>
        <source>Make it %1</source>
        <translation>%1 nehmen</translation>
    </message>
</context>
<context>
    <name>tierloam::forms::FormShell</name>
    <message>
        <source>Cancel</source>
        <translation>Abbrechen</translation>
    </message>
    <message>
        <source>Record</source>
        <translation>Eintragen</translation>
    </message>
    <message>
        <source>Look again: %1</source>
        <translation>Bitte nachsehen: %1</translation>
    </message>
</context>
<context>
    <name>tierloam::forms::NewStack</name>
    <message>
        <source>New stack</source>
        <translation>Neuer Stapel</translation>
    </message>
    <message>
        <source>What is not known can stay as it is; everything can be changed later.</source>
        <translation>Was nicht bekannt ist, kann bleiben, wie es ist; alles lässt sich später ändern.</translation>
    </message>
    <message>
        <source>Start the stack</source>
        <translation>Stapel beginnen</translation>
    </message>
    <message>
        <source>This household was opened for reading only; nothing can be recorded.</source>
        <translation>Dieser Haushalt wurde nur zum Lesen geöffnet; nichts kann eingetragen werden.</translation>
    </message>
    <message>
        <source>Nothing was recorded; what you typed is still here. %1</source>
        <translation>Nichts wurde eingetragen; was du geschrieben hast, ist noch da. %1</translation>
    </message>
    <message>
        <source>This cannot be recorded. %1</source>
        <translation>Das kann nicht eingetragen werden. %1</translation>
    </message>
    <message>
        <source>Recording…</source>
        <translation>Wird eingetragen…</translation>
    </message>
    <message>
        <source>%1: new stack</source>
        <translation>%1: neuer Stapel</translation>
    </message>
    <message>
        <source>Nothing is recorded yet. If it is meant so, press «%1» once more.</source>
        <translation>Noch ist nichts eingetragen. Wenn es so gemeint ist, „%1“ noch einmal drücken.</translation>
    </message>
</context>
<context>
    <name>tierloam::forms::Welcome</name>
    <message>
        <source>A journal for your worm bins</source>
        <translation>Ein Tagebuch für deine Wurmkisten</translation>
    </message>
    <message>
        <source>Write down what goes in and what runs out. The program reckons, with its uncertainty, how the worms fare, when each bottom tray is ready and what is due this week. Nothing leaves this machine.</source>
        <translation>Schreibe auf, was hineinkommt und was herausläuft. Das Programm errechnet mit seiner Unsicherheit, wie es den Würmern geht, wann jede unterste Etage reif ist und was in dieser Woche fällig ist. Nichts verlässt diesen Rechner.</translation>
    </message>
    <message>
        <source>Answer a few questions; you are told how much bedding and water to put in. The record is kept among your documents.</source>
        <translation>Beantworte ein paar Fragen; du erfährst, wie viel Einstreu und Wasser hineingehören. Die Aufzeichnung liegt bei deinen Dokumenten.</translation>
    </message>
    <message>
        <source>A household of our own invention with three stacks and two years of record, in a copy that is yours to play with.</source>
        <translation>Ein von uns erfundener Haushalt mit drei Stapeln und zwei Jahren Aufzeichnung, in einer Kopie, mit der du spielen kannst.</translation>
    </message>
    <message>
        <source>A file that was kept before.</source>
        <translation>Eine Datei von früher.</translation>
    </message>
    <message>
        <source>A journal or a list of your own as CSV, into a new household. You see what becomes of each row first.</source>
        <translation>Ein Tagebuch oder eine eigene Liste als CSV, in einen neuen Haushalt. Du siehst zuerst, was aus jeder Zeile wird.</translation>
    </message>
    <message>
        <source>Before you begin</source>
        <translation>Bevor du beginnst</translation>
    </message>
    <message>
        <source>Source: %1</source>
        <translation>Quelle: %1</translation>
    </message>
    <message>
        <source>Welcome</source>
        <translation>Willkommen</translation>
    </message>
    <message>
        <source>Opened lately</source>
        <translation>Zuletzt geöffnet</translation>
    </message>
    <message>
        <source>Start my first stack…</source>
        <translation>Meinen ersten Stapel beginnen…</translation>
    </message>
    <message>
        <source>Look at the demo</source>
        <translation>Die Demo ansehen</translation>
    </message>
    <message>
        <source>Open a household…</source>
        <translation>Haushalt öffnen…</translation>
    </message>
    <message>
        <source>Import a table…</source>
        <translation>Tabelle importieren…</translation>
    </message>
</context>
<context>
    <name>tierloam::handbook::HandbookPage</name>
    <message>
        <source>Handbook</source>
        <translation>Handbuch</translation>
    </message>
    <message>
        <source>Find (%1)</source>
        <translation>Suchen (%1)</translation>
    </message>
    <message>
        <source>Find in the handbook</source>
        <translation>Im Handbuch suchen</translation>
    </message>
    <message>
        <source>All words must be on the page</source>
        <translation>Alle Wörter müssen auf der Seite stehen</translation>
    </message>
    <message>
        <source>Pages of the handbook</source>
        <translation>Seiten des Handbuchs</translation>
    </message>
    <message>
        <source>How each step is done, why, and the usual cautions. Everything is on this machine.</source>
        <translation>Wie jeder Schritt getan wird, warum, und die üblichen Warnhinweise. Alles ist auf diesem Rechner.</translation>
    </message>
    <message>
        <source>No page holds all of these words.</source>
        <translation>Keine Seite enthält alle diese Wörter.</translation>
    </message>
    <message numerus="yes">
        <source>%n page(s) found</source>
        <translation>
            <numerusform>%n Seite gefunden</numerusform>
            <numerusform>%n Seiten gefunden</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>tierloam::handbook::HandbookView</name>
    <message>
        <source>Page of the handbook</source>
        <translation>Seite des Handbuchs</translation>
    </message>
    <message>
        <source>Handbook: %1</source>
        <translation>Handbuch: %1</translation>
    </message>
</context>
<context>
    <name>tierloam::handbook::HarvestView</name>
    <message>
        <source>%1 %</source>
        <translation>%1 %</translation>
    </message>
    <message>
        <source>less than usual: some was not finished, or is still in the sump and the trays</source>
        <translation>weniger als üblich: einiges war nicht fertig oder ist noch in Auffangschale und Etagen</translation>
    </message>
    <message>
        <source>as usual</source>
        <translation>wie üblich</translation>
    </message>
    <message>
        <source>more than usual: bedding that stays, or water, is in it</source>
        <translation>mehr als üblich: Einstreu, die bleibt, oder Wasser ist darin</translation>
    </message>
    <message>
        <source>Your reach while lifting, from the ankles forward to the hands (may be left empty: then it is taken from the tray&apos;s size):</source>
        <translation>Deine Reichweite beim Heben, von den Knöcheln nach vorn bis zu den Händen (kann leer bleiben: dann gilt die Größe der Etage):</translation>
    </message>
    <message>
        <source>Your reach</source>
        <translation>Deine Reichweite</translation>
    </message>
    <message>
        <source>There is no stack yet to harvest.</source>
        <translation>Es gibt noch keinen Stapel zu ernten.</translation>
    </message>
    <message>
        <source>The estimates of this stack are being made.</source>
        <translation>Die Schätzungen dieses Stapels entstehen gerade.</translation>
    </message>
    <message>
        <source>A tray of %1 is drying in the light.</source>
        <translation>Eine Etage von %1 trocknet im Licht.</translation>
    </message>
    <message>
        <source>%1 has one tray. Nothing can be lifted over it: add a tray first, and its worms move up to the fresh food.</source>
        <translation>%1 hat eine Etage. Nichts kann darüber gehoben werden: füge zuerst eine Etage hinzu, und die Würmer wandern zum frischen Futter hinauf.</translation>
    </message>
    <message>
        <source>The bottom tray of %1: ready %2, feed-to-cast %3.</source>
        <translation>Die unterste Etage von %1: reif %2, Futter zu Humus %3.</translation>
    </message>
    <message>
        <source>Before you lift</source>
        <translation>Vor dem Heben</translation>
    </message>
    <message>
        <source>Slot %1: about %2. %3</source>
        <translation>Platz %1: etwa %2. %3</translation>
    </message>
    <message>
        <source>The sequence</source>
        <translation>Der Ablauf</translation>
    </message>
    <message>
        <source>%1. %2</source>
        <comment>number, step</comment>
        <translation>%1. %2</translation>
    </message>
    <message>
        <source>It stands on top: record the lifting…</source>
        <translation>Sie steht obenauf: Heben eintragen…</translation>
    </message>
    <message>
        <source>Look into the bottom tray first…</source>
        <translation>Zuerst in die unterste Etage schauen…</translation>
    </message>
    <message>
        <source>Day %1 in the light, %2</source>
        <translation>Tag %1 im Licht, %2</translation>
    </message>
    <message>
        <source>Worms left: %1 of those that were in it; moisture %2.</source>
        <translation>Übrige Würmer: %1 derer, die darin waren; Feuchte %2.</translation>
    </message>
    <message>
        <source>Food went into the drying tray: that keeps worms in it.</source>
        <translation>Futter kam in die trocknende Etage: das hält Würmer darin.</translation>
    </message>
    <message>
        <source>Too wet that day.</source>
        <translation>An jenem Tag zu nass.</translation>
    </message>
    <message>
        <source>Too wet: worms stay where it is wet. Loosen it again, in ridges, and give it another day.</source>
        <translation>Zu nass: Würmer bleiben, wo es nass ist. Lockere noch einmal zu Rippen und gib ihr einen weiteren Tag.</translation>
    </message>
    <message>
        <source>Few worms are left: take the castings when they crumble.</source>
        <translation>Wenige Würmer sind übrig: nimm den Humus, wenn er krümelt.</translation>
    </message>
    <message>
        <source>Loosen it once today; the usual time is %1.</source>
        <translation>Lockere heute einmal; die übliche Zeit ist %1.</translation>
    </message>
    <message>
        <source>Feed only the tray below. Lid off, bright, out of the sun.</source>
        <translation>Füttere nur die Etage darunter. Deckel ab, hell, nicht in der Sonne.</translation>
    </message>
    <message>
        <source>Loosened: record it…</source>
        <translation>Gelockert: eintragen…</translation>
    </message>
    <message>
        <source>Taken: weigh or measure…</source>
        <translation>Genommen: wiegen oder messen…</translation>
    </message>
    <message>
        <source>There is no estimate of these days yet.</source>
        <translation>Von diesen Tagen gibt es noch keine Schätzung.</translation>
    </message>
    <message>
        <source>The last harvest, %1</source>
        <translation>Die letzte Ernte, %1</translation>
    </message>
    <message>
        <source>Taken: %1, about %2, dry %3</source>
        <translation>Entnommen: %1, etwa %2, trocken %3</translation>
    </message>
    <message>
        <source>%1 at an assumed moisture of %2</source>
        <translation>%1 bei einer angenommenen Feuchte von %2</translation>
    </message>
    <message>
        <source>%1.</source>
        <translation>%1.</translation>
    </message>
    <message>
        <source>Expected before it was weighed: %1.</source>
        <translation>Vor dem Wiegen erwartet: %1.</translation>
    </message>
    <message>
        <source>Of %1 dry put in, %2 to %3 dry is usual (%4): this is %5.</source>
        <translation>Von %1 trocken Eingebrachtem sind %2 bis %3 trocken üblich (%4): das ist %5.</translation>
    </message>
    <message>
        <source>With it went about %1 worms and %2 cocoons, by the estimate. That is normal; castings without any worm cannot be promised.</source>
        <translation>Mit gingen nach der Schätzung etwa %1 Würmer und %2 Kokons. Das ist normal; Humus ganz ohne Würmer lässt sich nicht versprechen.</translation>
    </message>
    <message>
        <source>To keep them: a second light-drying of the castings between %1, when what was in the cocoons has hatched; or a bait tray of melon or pumpkin under damp paper for %2, carried back with all that sits in it.</source>
        <translation>Um sie zu behalten: ein zweites Trocknen des Humus im Licht zwischen %1, wenn geschlüpft ist, was in den Kokons war; oder eine Köderetage mit Melone oder Kürbis unter feuchtem Papier für %2, mit allem darin zurückgetragen.</translation>
    </message>
    <message>
        <source>Afterwards</source>
        <translation>Danach</translation>
    </message>
    <message>
        <source>What you take, weighed or measured, is compared here with what was expected. Some cocoons and young worms leave with it: a second light-drying after %1 or a bait tray keeps many of them.</source>
        <translation>Was du nimmst, gewogen oder gemessen, wird hier mit dem Erwarteten verglichen. Einige Kokons und junge Würmer gehen mit: ein zweites Trocknen im Licht nach %1 oder eine Köderetage behält viele davon.</translation>
    </message>
    <message>
        <source>Bed a tray anew…</source>
        <translation>Eine Etage neu einstreuen…</translation>
    </message>
    <message>
        <source>In the light again since %1: loosen once a day, the stored castings in a flat layer on a sheet; what gathers under it goes back into the stack. The usual time is %2.</source>
        <translation>Wieder im Licht seit %1: einmal am Tag lockern, den gelagerten Humus in einer flachen Schicht auf einer Unterlage; was sich darunter sammelt, kommt zurück in den Stapel. Die übliche Zeit ist %2.</translation>
    </message>
    <message>
        <source>It is time for the second light-drying now.</source>
        <translation>Jetzt ist es Zeit für das zweite Trocknen im Licht.</translation>
    </message>
    <message>
        <source>Bait laid on %1: keep it damp, look in a few days; carry it back by %2 at the latest.</source>
        <translation>Köder ausgelegt am %1: feucht halten, in ein paar Tagen nachsehen; spätestens bis %2 zurücktragen.</translation>
    </message>
    <message>
        <source>Bait laid on %1: carry it back now, before it dries.</source>
        <translation>Köder ausgelegt am %1: jetzt zurücktragen, bevor er austrocknet.</translation>
    </message>
    <message>
        <source>Worms were put back on %1.</source>
        <translation>Am %1 wurden Würmer zurückgesetzt.</translation>
    </message>
    <message>
        <source>Spread in the light again: record it…</source>
        <translation>Wieder im Licht ausgebreitet: eintragen…</translation>
    </message>
    <message>
        <source>Bait laid: record it…</source>
        <translation>Köder ausgelegt: eintragen…</translation>
    </message>
    <message>
        <source>Worms carried back: weigh and record them…</source>
        <translation>Würmer zurückgetragen: wiegen und eintragen…</translation>
    </message>
</context>
<context>
    <name>tierloam::handbook::StackChoice</name>
    <message>
        <source>Stack</source>
        <translation>Stapel</translation>
    </message>
</context>
<context>
    <name>tierloam::handbook::SymptomView</name>
    <message>
        <source>What do you notice?</source>
        <translation>Was fällt dir auf?</translation>
    </message>
    <message>
        <source>Write down that you noticed it…</source>
        <translation>Aufschreiben, dass es dir auffiel…</translation>
    </message>
    <message>
        <source>There is no stack yet that anything could be wrong with.</source>
        <translation>Es gibt noch keinen Stapel, mit dem etwas nicht stimmen könnte.</translation>
    </message>
    <message>
        <source>The estimates of this stack are being made.</source>
        <translation>Die Schätzungen dieses Stapels entstehen gerade.</translation>
    </message>
    <message>
        <source>One click puts the causes in order, by what is known of this stack.</source>
        <translation>Ein Klick ordnet die Ursachen nach dem, was von diesem Stapel bekannt ist.</translation>
    </message>
    <message>
        <source>%1 in %2: causes by what the estimates and the journal say today.</source>
        <translation>%1 in %2: Ursachen nach dem, was Schätzungen und Tagebuch heute sagen.</translation>
    </message>
    <message>
        <source>%1 – %2</source>
        <comment>cause, its chance</comment>
        <translation>%1 – %2</translation>
    </message>
    <message>
        <source>%1 %2</source>
        <comment>mark, evidence</comment>
        <translation>%1 %2</translation>
    </message>
    <message>
        <source>the journal says nothing of it</source>
        <translation>das Tagebuch sagt nichts davon</translation>
    </message>
    <message>
        <source>● speaks for this cause, ○ does not</source>
        <translation>● spricht für diese Ursache, ○ nicht</translation>
    </message>
    <message>
        <source>To be sure: %1</source>
        <translation>Um sicher zu sein: %1</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>%1 – %2: %3</source>
        <comment>cause, its chance, evidence</comment>
        <translation>%1 – %2: %3</translation>
    </message>
    <message>
        <source>Hardly, by the record:</source>
        <translation>Nach den Aufzeichnungen kaum:</translation>
    </message>
    <message>
        <source>The record shows none of the usual causes – %1</source>
        <translation>Die Aufzeichnungen zeigen keine der üblichen Ursachen – %1</translation>
    </message>
    <message>
        <source>Something else – %1</source>
        <translation>Etwas anderes – %1</translation>
    </message>
    <message>
        <source>To look at by hand: %1</source>
        <translation>Selbst nachsehen: %1</translation>
    </message>
    <message>
        <source>In case the record lacks something: %1</source>
        <translation>Falls in den Aufzeichnungen etwas fehlt: %1</translation>
    </message>
    <message>
        <source>Record the look…</source>
        <translation>Blick eintragen…</translation>
    </message>
    <message>
        <source>Something else</source>
        <translation>Etwas anderes</translation>
    </message>
</context>
<context>
    <name>tierloam::journal_page::BulkView</name>
    <message>
        <source>%1, %2: %3 %4</source>
        <translation>%1, %2: %3 %4</translation>
    </message>
    <message>
        <source>Change together</source>
        <translation>Gemeinsam ändern</translation>
    </message>
    <message numerus="yes">
        <source>Change %n entry(ies) together</source>
        <translation>
            <numerusform>%n Eintrag ändern</numerusform>
            <numerusform>%n Einträge gemeinsam ändern</numerusform>
        </translation>
    </message>
    <message>
        <source>Material, species or word</source>
        <translation>Material, Art oder Wort</translation>
    </message>
    <message>
        <source>Amount</source>
        <translation>Menge</translation>
    </message>
    <message>
        <source>Tray (slot)</source>
        <translation>Etage (Platz)</translation>
    </message>
    <message>
        <source>Stack</source>
        <translation>Stapel</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Notiz</translation>
    </message>
    <message>
        <source>What changes</source>
        <translation>Was sich ändert</translation>
    </message>
    <message>
        <source>From</source>
        <translation>Von</translation>
    </message>
    <message>
        <source>To</source>
        <translation>Nach</translation>
    </message>
    <message>
        <source>What will change</source>
        <translation>Was geändert wird</translation>
    </message>
    <message>
        <source>&amp;Change</source>
        <translation>Ä&amp;ndern</translation>
    </message>
    <message>
        <source>Cancel</source>
        <translation>Abbrechen</translation>
    </message>
    <message>
        <source>%1 (%2)</source>
        <translation>%1 (%2)</translation>
    </message>
    <message>
        <source>nothing</source>
        <translation>nichts</translation>
    </message>
    <message numerus="yes">
        <source>and %n more</source>
        <translation>
            <numerusform>und %n weiterer</numerusform>
            <numerusform>und %n weitere</numerusform>
        </translation>
    </message>
    <message>
        <source>%1 → %2</source>
        <translation>%1 → %2</translation>
    </message>
    <message>
        <source>%1 %2</source>
        <translation>%1 %2</translation>
    </message>
    <message numerus="yes">
        <source>%n entry(ies) will change.</source>
        <translation>
            <numerusform>%n Eintrag wird geändert.</numerusform>
            <numerusform>%n Einträge werden geändert.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n chosen entry(ies) with another value: left alone.</source>
        <translation>
            <numerusform>%n gewählter Eintrag mit anderem Wert: bleibt.</numerusform>
            <numerusform>%n gewählte Einträge mit anderem Wert: bleiben.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>tierloam::journal_page::EntrySeries</name>
    <message>
        <source>Stack</source>
        <translation>Stapel</translation>
    </message>
    <message>
        <source>What was done</source>
        <translation>Was getan wurde</translation>
    </message>
    <message>
        <source>Enter records and opens the next; Esc ends.</source>
        <translation>Eingabe trägt ein und öffnet den nächsten; Esc beendet.</translation>
    </message>
    <message>
        <source>There is no stack yet; start one on the shelf.</source>
        <translation>Es gibt noch keinen Stapel; beginne einen im Regal.</translation>
    </message>
    <message>
        <source>One more like the chosen entry, dated today.</source>
        <translation>Noch einer wie der gewählte, mit Datum von heute.</translation>
    </message>
    <message numerus="yes">
        <source>%n recorded; Enter records the next, Esc ends.</source>
        <translation>
            <numerusform>%n eingetragen; Eingabe trägt den nächsten ein, Esc beendet.</numerusform>
            <numerusform>%n eingetragen; Eingabe trägt den nächsten ein, Esc beendet.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>tierloam::journal_page::JournalModel</name>
    <message>
        <source>slot %1</source>
        <translation>Platz %1</translation>
    </message>
    <message>
        <source>slot %1 · tray %2 · batch %3</source>
        <translation>Platz %1 · Etage %2 · Charge %3</translation>
    </message>
    <message>
        <source>%1 · being saved</source>
        <translation>%1 · wird gesichert</translation>
    </message>
    <message>
        <source>When</source>
        <translation>Wann</translation>
    </message>
    <message>
        <source>Stack</source>
        <translation>Stapel</translation>
    </message>
    <message>
        <source>What</source>
        <translation>Was</translation>
    </message>
    <message>
        <source>How much</source>
        <translation>Wie viel</translation>
    </message>
    <message>
        <source>Tray</source>
        <translation>Etage</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Notiz</translation>
    </message>
</context>
<context>
    <name>tierloam::journal_page::JournalPage</name>
    <message>
        <source>Journal</source>
        <translation>Tagebuch</translation>
    </message>
    <message>
        <source>Find (%1)</source>
        <translation>Suchen (%1)</translation>
    </message>
    <message>
        <source>Find in the journal</source>
        <translation>Im Tagebuch suchen</translation>
    </message>
    <message>
        <source>All words must be in the row</source>
        <translation>Alle Wörter müssen in der Zeile stehen</translation>
    </message>
    <message>
        <source>Stack</source>
        <translation>Stapel</translation>
    </message>
    <message>
        <source>What was done</source>
        <translation>Was getan wurde</translation>
    </message>
    <message>
        <source>Period</source>
        <translation>Zeitraum</translation>
    </message>
    <message>
        <source>Edit the chosen entry</source>
        <translation>Gewählten Eintrag bearbeiten</translation>
    </message>
    <message>
        <source>Take the chosen entries out of the journal</source>
        <translation>Gewählte Einträge aus dem Tagebuch nehmen</translation>
    </message>
    <message>
        <source>Change the chosen entries together</source>
        <translation>Gewählte Einträge gemeinsam ändern</translation>
    </message>
    <message>
        <source>Pictures of the chosen entry</source>
        <translation>Bilder des gewählten Eintrags</translation>
    </message>
    <message>
        <source>All days</source>
        <translation>Alle Tage</translation>
    </message>
    <message>
        <source>Last 30 days</source>
        <translation>Letzte 30 Tage</translation>
    </message>
    <message>
        <source>Last 90 days</source>
        <translation>Letzte 90 Tage</translation>
    </message>
    <message>
        <source>Last year</source>
        <translation>Letztes Jahr</translation>
    </message>
    <message>
        <source>Last 2 years</source>
        <translation>Letzte 2 Jahre</translation>
    </message>
    <message>
        <source>All actions</source>
        <translation>Alle Aktionen</translation>
    </message>
    <message>
        <source>Enter edits the chosen entry, Delete takes it out</source>
        <translation>Eingabe bearbeitet den gewählten Eintrag, Entf nimmt ihn heraus</translation>
    </message>
    <message>
        <source>All stacks</source>
        <translation>Alle Stapel</translation>
    </message>
    <message numerus="yes">
        <source>%n entry(ies)</source>
        <translation>
            <numerusform>%n Eintrag</numerusform>
            <numerusform>%n Einträge</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%1 of %n entry(ies)</source>
        <translation>
            <numerusform>%1 von %n Eintrag</numerusform>
            <numerusform>%1 von %n Einträgen</numerusform>
        </translation>
    </message>
    <message>
        <source>%1, %2 chosen</source>
        <translation>%1, %2 gewählt</translation>
    </message>
    <message>
        <source>Here stands every feeding, look and harvest, newest first, once the first one is recorded.</source>
        <translation>Hier stehen alle Fütterungen, Blicke und Ernten, die neuesten zuerst, sobald der erste Eintrag da ist.</translation>
    </message>
    <message>
        <source>No entry is like that. %1 shows all again.</source>
        <translation>Kein Eintrag ist so. %1 zeigt wieder alle.</translation>
    </message>
    <message>
        <source>Delete “%1”</source>
        <translation>„%1“ löschen</translation>
    </message>
    <message numerus="yes">
        <source>Delete %n entry(ies)</source>
        <translation>
            <numerusform>%n Eintrag löschen</numerusform>
            <numerusform>%n Einträge löschen</numerusform>
        </translation>
    </message>
    <message>
        <source>Record several entries one after the other</source>
        <translation>Mehrere Einträge nacheinander eintragen</translation>
    </message>
    <message>
        <source>Columns</source>
        <translation>Spalten</translation>
    </message>
</context>
<context>
    <name>tierloam::journal_page::PictureStrip</name>
    <message>
        <source>Pictures of the chosen entry</source>
        <translation>Bilder des gewählten Eintrags</translation>
    </message>
    <message>
        <source>Enter shows them in full</source>
        <translation>Eingabe zeigt sie in voller Größe</translation>
    </message>
    <message>
        <source>Picture %1</source>
        <translation>Bild %1</translation>
    </message>
</context>
<context>
    <name>tierloam::materials_page::BeddingBench</name>
    <message>
        <source>For</source>
        <translation>Für</translation>
    </message>
    <message>
        <source>Floor</source>
        <translation>Boden</translation>
    </message>
    <message>
        <source>Depth, laid</source>
        <translation>Tiefe, eingelegt</translation>
    </message>
    <message>
        <source>usual: %1 (%2)</source>
        <translation>üblich: %1 (%2)</translation>
    </message>
    <message>
        <source>Of</source>
        <translation>Woraus</translation>
    </message>
    <message>
        <source>Bedding is wetted like a wrung-out sponge: to %1 of what it holds (%2). Press a handful: a few drops may come, no stream.</source>
        <translation>Einstreu wird angefeuchtet wie ein ausgedrückter Schwamm: auf %1 dessen, was sie hält (%2). Drücke eine Handvoll: ein paar Tropfen dürfen kommen, kein Strahl.</translation>
    </message>
    <message>
        <source>another tray</source>
        <translation>eine weitere Etage</translation>
    </message>
    <message>
        <source>Add this tray to %1…</source>
        <translation>Diese Etage zu %1 hinzufügen…</translation>
    </message>
    <message>
        <source>Floor, depth and material make the amounts.</source>
        <translation>Boden, Tiefe und Material ergeben die Mengen.</translation>
    </message>
    <message>
        <source>%1 of bedding, dry as it comes, and %2 of water.</source>
        <translation>%1 Einstreu, trocken wie sie kommt, und %2 Wasser.</translation>
    </message>
    <message>
        <source>Loose</source>
        <translation>Locker</translation>
    </message>
    <message>
        <source>%1 before it is wetted</source>
        <translation>%1 vor dem Anfeuchten</translation>
    </message>
    <message>
        <source>Laid</source>
        <translation>Eingelegt</translation>
    </message>
    <message>
        <source>%1 at %2 moisture, of it %3 dry</source>
        <translation>%1 bei %2 Feuchte, davon %3 trocken</translation>
    </message>
    <message>
        <source>%1 %</source>
        <translation>%1 %</translation>
    </message>
    <message>
        <source>Welcome</source>
        <translation>Willkommen</translation>
    </message>
    <message>
        <source>%1. %2</source>
        <translation>%1. %2</translation>
    </message>
    <message>
        <source>Source</source>
        <translation>Quelle</translation>
    </message>
</context>
<context>
    <name>tierloam::materials_page::CastingsBench</name>
    <message>
        <source>%1 (%2)</source>
        <comment>figure, source</comment>
        <translation>%1 (%2)</translation>
    </message>
    <message>
        <source>Castings of</source>
        <translation>Humus von</translation>
    </message>
    <message>
        <source>Amount</source>
        <translation>Menge</translation>
    </message>
    <message>
        <source>Moisture</source>
        <translation>Feuchte</translation>
    </message>
    <message>
        <source>Share of a potting mix</source>
        <translation>Anteil an einer Topferde</translation>
    </message>
    <message>
        <source>Depth of a top-dressing</source>
        <translation>Tiefe einer Kopfdüngung</translation>
    </message>
    <message>
        <source>Tested in potting mixes: %1; at most %2; never alone: it packs, and is too salty for seedlings. Top-dressing: %3, again after %4.</source>
        <translation>In Topferden geprüft: %1; höchstens %2; nie allein: er verdichtet sich und ist für Sämlinge zu salzig. Kopfdüngung: %3, wieder nach %4.</translation>
    </message>
    <message>
        <source>Sift through a mesh of %1; what stays on it goes back into a tray. Store vented and cool, shaded, near %2 moisture, for %3. Castings from a worm bin always hold some cocoons and young worms.</source>
        <translation>Siebe durch eine Maschenweite von %1; was darauf bleibt, kommt zurück in eine Etage. Lagere luftig und kühl, schattig, bei etwa %2 Feuchte, für %3. Humus aus einer Wurmkiste enthält immer einige Kokons und junge Würmer.</translation>
    </message>
    <message>
        <source>an amount of my own</source>
        <translation>eine eigene Menge</translation>
    </message>
    <message>
        <source>taken on %1</source>
        <translation>entnommen am %1</translation>
    </message>
    <message>
        <source>an estimate of what lies in the bottom tray</source>
        <translation>eine Schätzung dessen, was in der untersten Etage liegt</translation>
    </message>
    <message>
        <source>Castings</source>
        <translation>Humus</translation>
    </message>
    <message>
        <source>%1, about %2</source>
        <translation>%1, etwa %2</translation>
    </message>
    <message>
        <source>%1 of mix: with %2 of potting soil, coir or compost</source>
        <translation>%1 Mischung: mit %2 Topferde, Kokosfaser oder Kompost</translation>
    </message>
    <message>
        <source>%1 – reckoned with %2, the most that is advised</source>
        <translation>%1 – gerechnet mit %2, dem höchsten Ratsamen</translation>
    </message>
    <message>
        <source>Potting mix</source>
        <translation>Topferde</translation>
    </message>
    <message>
        <source>Top-dressing</source>
        <translation>Kopfdüngung</translation>
    </message>
    <message>
        <source>covers %1</source>
        <translation>deckt %1</translation>
    </message>
    <message>
        <source>To store it</source>
        <translation>Zum Lagern</translation>
    </message>
    <message>
        <source>let %1 of water dry off, in the shade</source>
        <translation>lass im Schatten %1 Wasser abtrocknen</translation>
    </message>
    <message>
        <source>dry enough; keep it vented</source>
        <translation>trocken genug; halte ihn luftig</translation>
    </message>
</context>
<context>
    <name>tierloam::materials_page::Gauge</name>
    <message>
        <source>nothing yet</source>
        <translation>noch nichts</translation>
    </message>
    <message>
        <source>%1; %2</source>
        <translation>%1; %2</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>%1  %2</source>
        <comment>name of a measure, its value</comment>
        <translation>%1  %2</translation>
    </message>
</context>
<context>
    <name>tierloam::materials_page::LeachateBench</name>
    <message>
        <source>%1 (%2)</source>
        <comment>figure, source</comment>
        <translation>%1 (%2)</translation>
    </message>
    <message>
        <source>From</source>
        <translation>Von</translation>
    </message>
    <message>
        <source>Drained</source>
        <translation>Abgelassen</translation>
    </message>
    <message>
        <source>Measured strength</source>
        <translation>Gemessene Stärke</translation>
    </message>
    <message>
        <source>left empty: the estimate of the stack</source>
        <translation>leer: die Schätzung des Stapels</translation>
    </message>
    <message>
        <source>Wished strength</source>
        <translation>Gewünschte Stärke</translation>
    </message>
    <message>
        <source>young plants %1, grown ones %2</source>
        <translation>junge Pflanzen %1, erwachsene %2</translation>
    </message>
    <message>
        <source>Your water</source>
        <translation>Dein Wasser</translation>
    </message>
    <message>
        <source>tap water about %1</source>
        <translation>Leitungswasser etwa %1</translation>
    </message>
    <message>
        <source>Leachate is what ran through the trays: salty water with whatever it met. It is no brewed tea and no plant food of known content; it may hold germs and the juice of unfinished scraps. Use it within %1, on soil around plants that are not eaten raw, or pour it back over the top tray.</source>
        <translation>Sickerwasser ist, was durch die Etagen lief: salziges Wasser mit allem, was ihm begegnete. Es ist kein angesetzter Tee und kein Dünger mit bekanntem Gehalt; es kann Keime und den Saft unfertiger Reste enthalten. Verbrauche es innerhalb von %1, auf Erde um Pflanzen, die nicht roh gegessen werden, oder gieße es wieder über die oberste Etage.</translation>
    </message>
    <message>
        <source>Published: %1; harmless to worms %2; harmful about %3. One mS/cm is about %4 of salts.</source>
        <translation>Veröffentlicht: %1; für Würmer harmlos %2; schädlich etwa %3. Ein mS/cm sind etwa %4 Salze.</translation>
    </message>
    <message>
        <source>Strength</source>
        <translation>Stärke</translation>
    </message>
    <message>
        <source>%1 mS/cm, %2</source>
        <translation>%1 mS/cm, %2</translation>
    </message>
    <message>
        <source>as measured</source>
        <translation>wie gemessen</translation>
    </message>
    <message>
        <source>estimated, with its 90 % range</source>
        <translation>geschätzt, mit 90-%-Bereich</translation>
    </message>
    <message>
        <source>published values</source>
        <translation>veröffentlichte Werte</translation>
    </message>
    <message>
        <source>Salts</source>
        <translation>Salze</translation>
    </message>
    <message>
        <source>The strength that is wished and that of your water make the dilution.</source>
        <translation>Die gewünschte Stärke und die deines Wassers ergeben die Verdünnung.</translation>
    </message>
    <message>
        <source>One part of leachate to %1 parts of water, to be on the safe side of the range.</source>
        <translation>Ein Teil Sickerwasser auf %1 Teile Wasser, um auf der sicheren Seite des Bereichs zu sein.</translation>
    </message>
    <message>
        <source>Water, in parts</source>
        <translation>Wasser, in Teilen</translation>
    </message>
    <message>
        <source>Makes</source>
        <translation>Ergibt</translation>
    </message>
    <message>
        <source>It is no stronger than wished; it still is leachate, with the cautions above.</source>
        <translation>Es ist nicht stärker als gewünscht; es bleibt Sickerwasser, mit den Warnhinweisen oben.</translation>
    </message>
    <message>
        <source>Your water is as strong as what is wished: with it no dilution gets there. Take rain water, or wish for more.</source>
        <translation>Dein Wasser ist so stark wie das Gewünschte: damit führt keine Verdünnung dorthin. Nimm Regenwasser, oder wünsche mehr.</translation>
    </message>
</context>
<context>
    <name>tierloam::materials_page::MaterialCard</name>
    <message>
        <source>No material is chosen.</source>
        <translation>Kein Material ist gewählt.</translation>
    </message>
    <message>
        <source>%1 (own)</source>
        <translation>%1 (eigenes)</translation>
    </message>
    <message>
        <source>welcome</source>
        <translation>willkommen</translation>
    </message>
    <message>
        <source>only a little at a time</source>
        <translation>nur wenig auf einmal</translation>
    </message>
    <message>
        <source>keep it out</source>
        <translation>weglassen</translation>
    </message>
    <message>
        <source>%1 %2.</source>
        <comment>mark, word</comment>
        <translation>%1 %2.</translation>
    </message>
    <message>
        <source>%1 %2. %3</source>
        <comment>mark, word, reason</comment>
        <translation>%1 %2. %3</translation>
    </message>
    <message>
        <source>%1 %</source>
        <translation>%1 %</translation>
    </message>
    <message>
        <source>C:N</source>
        <translation>C:N</translation>
    </message>
    <message>
        <source>%1 : 1</source>
        <translation>%1 : 1</translation>
    </message>
    <message>
        <source>none: not a source of carbon</source>
        <translation>keines: keine Kohlenstoffquelle</translation>
    </message>
    <message>
        <source>Moisture</source>
        <translation>Feuchte</translation>
    </message>
    <message>
        <source>Carbon, nitrogen</source>
        <translation>Kohlenstoff, Stickstoff</translation>
    </message>
    <message>
        <source>%1 and %2 of the dry matter</source>
        <translation>%1 und %2 der Trockenmasse</translation>
    </message>
    <message>
        <source>Bulk</source>
        <translation>Dichte</translation>
    </message>
    <message>
        <source>Holds</source>
        <translation>Hält</translation>
    </message>
    <message>
        <source>Softens like</source>
        <translation>Wird weich wie</translation>
    </message>
    <message>
        <source>Source</source>
        <translation>Quelle</translation>
    </message>
    <message>
        <source>none noted; what was left out is that of kitchen mix</source>
        <translation>keine notiert; was fehlte, ist von gemischten Küchenresten</translation>
    </message>
    <message>
        <source>★ Favourite</source>
        <translation>★ Favorit</translation>
    </message>
    <message>
        <source>☆ Make it a favourite</source>
        <translation>☆ Zum Favoriten machen</translation>
    </message>
    <message>
        <source>your own, taken as welcome</source>
        <translation>dein eigenes, gilt als willkommen</translation>
    </message>
    <message>
        <source>%1, loose</source>
        <translation>%1, locker</translation>
    </message>
    <message>
        <source>%1 of water for one of dry matter, by weight</source>
        <translation>%1 Wasser auf eins Trockenmasse, nach Gewicht</translation>
    </message>
</context>
<context>
    <name>tierloam::materials_page::MaterialsModel</name>
    <message>
        <source>%1 (own)</source>
        <translation>%1 (eigenes)</translation>
    </message>
    <message>
        <source>%1 %</source>
        <translation>%1 %</translation>
    </message>
    <message>
        <source>favourite</source>
        <translation>Favorit</translation>
    </message>
    <message>
        <source>no favourite</source>
        <translation>kein Favorit</translation>
    </message>
    <message>
        <source>Favourite</source>
        <translation>Favorit</translation>
    </message>
    <message>
        <source>Material</source>
        <translation>Material</translation>
    </message>
    <message>
        <source>Welcome in a worm bin, and how much of it</source>
        <translation>In einer Wurmkiste willkommen, und wie viel davon</translation>
    </message>
    <message>
        <source>Welcome</source>
        <translation>Willkommen</translation>
    </message>
    <message>
        <source>Carbon to nitrogen, by mass</source>
        <translation>Kohlenstoff zu Stickstoff, nach Masse</translation>
    </message>
    <message>
        <source>C:N</source>
        <translation>C:N</translation>
    </message>
    <message>
        <source>Water in the fresh mass</source>
        <translation>Wasser in der frischen Masse</translation>
    </message>
    <message>
        <source>Moisture</source>
        <translation>Feuchte</translation>
    </message>
    <message>
        <source>Carbon in the dry matter</source>
        <translation>Kohlenstoff in der Trockenmasse</translation>
    </message>
    <message>
        <source>Carbon</source>
        <translation>Kohlenstoff</translation>
    </message>
    <message>
        <source>Nitrogen in the dry matter</source>
        <translation>Stickstoff in der Trockenmasse</translation>
    </message>
    <message>
        <source>Nitrogen</source>
        <translation>Stickstoff</translation>
    </message>
    <message>
        <source>Fresh and loose, in %1</source>
        <translation>Frisch und locker, in %1</translation>
    </message>
    <message>
        <source>Softens like</source>
        <translation>Wird weich wie</translation>
    </message>
    <message>
        <source>Water held by one part of dry matter</source>
        <translation>Von einem Teil Trockenmasse gehaltenes Wasser</translation>
    </message>
    <message>
        <source>Holds</source>
        <translation>Hält</translation>
    </message>
</context>
<context>
    <name>tierloam::materials_page::MaterialsPage</name>
    <message>
        <source>Materials</source>
        <translation>Materialien</translation>
    </message>
    <message>
        <source>Find (%1)</source>
        <translation>Suchen (%1)</translation>
    </message>
    <message>
        <source>Find a material</source>
        <translation>Material suchen</translation>
    </message>
    <message>
        <source>All words must be in its name, reason or source</source>
        <translation>Alle Wörter müssen in Name, Grund oder Quelle stehen</translation>
    </message>
    <message>
        <source>Which materials are shown</source>
        <translation>Welche Materialien gezeigt werden</translation>
    </message>
    <message>
        <source>All</source>
        <translation>Alles</translation>
    </message>
    <message>
        <source>Food</source>
        <translation>Futter</translation>
    </message>
    <message>
        <source>Bedding</source>
        <translation>Einstreu</translation>
    </message>
    <message>
        <source>Minerals</source>
        <translation>Mineralien</translation>
    </message>
    <message>
        <source>Favourites</source>
        <translation>Favoriten</translation>
    </message>
    <message>
        <source>Own</source>
        <translation>Eigene</translation>
    </message>
    <message>
        <source>Not, or only a little</source>
        <translation>Nicht, oder nur wenig</translation>
    </message>
    <message>
        <source>Enter puts the chosen material into the mix</source>
        <translation>Eingabe gibt das gewählte Material in die Mischung</translation>
    </message>
    <message numerus="yes">
        <source>%n material(s); what each holds, whether it is welcome, and sums with them</source>
        <translation>
            <numerusform>%n Material; was es enthält, ob es willkommen ist, und Rechnungen damit</numerusform>
            <numerusform>%n Materialien; was jedes enthält, ob es willkommen ist, und Rechnungen damit</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%1 of %n material(s)</source>
        <translation>
            <numerusform>%1 von %n Material</numerusform>
            <numerusform>%1 von %n Materialien</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>tierloam::materials_page::MixBench</name>
    <message>
        <source>%1 : 1</source>
        <translation>%1 : 1</translation>
    </message>
    <message>
        <source>no C:N</source>
        <translation>kein C:N</translation>
    </message>
    <message>
        <source>%1 %</source>
        <translation>%1 %</translation>
    </message>
    <message>
        <source>+ another material</source>
        <translation>+ ein weiteres Material</translation>
    </message>
    <message>
        <source>Another material in the mix</source>
        <translation>Ein weiteres Material in der Mischung</translation>
    </message>
    <message>
        <source>Aim at C:N</source>
        <translation>Ziel C:N</translation>
    </message>
    <message>
        <source>and moisture</source>
        <translation>und Feuchte</translation>
    </message>
    <message>
        <source>by adding</source>
        <translation>durch Zugabe von</translation>
    </message>
    <message>
        <source>Put it into the mix</source>
        <translation>In die Mischung geben</translation>
    </message>
    <message>
        <source>%1 %2 (%3)</source>
        <comment>what, figure, source</comment>
        <translation>%1 %2 (%3)</translation>
    </message>
    <message>
        <source>Aims: C:N</source>
        <translation>Ziele: C:N</translation>
    </message>
    <message>
        <source>moisture</source>
        <translation>Feuchte</translation>
    </message>
    <message>
        <source>best</source>
        <translation>am besten</translation>
    </message>
    <message>
        <source>Material</source>
        <translation>Material</translation>
    </message>
    <message>
        <source>Amount</source>
        <translation>Menge</translation>
    </message>
    <message>
        <source>Measured in</source>
        <translation>Gemessen in</translation>
    </message>
    <message>
        <source>Take it out of the mix</source>
        <translation>Aus der Mischung nehmen</translation>
    </message>
    <message>
        <source>Choose materials and how much of each: the mix is reckoned from their water, carbon and nitrogen.</source>
        <translation>Wähle Materialien und wie viel von jedem: die Mischung wird aus ihrem Wasser, Kohlenstoff und Stickstoff gerechnet.</translation>
    </message>
    <message>
        <source>Choose a material that may be added.</source>
        <translation>Wähle ein Material, das dazukommen darf.</translation>
    </message>
    <message>
        <source>then %1</source>
        <translation>dann %1</translation>
    </message>
    <message>
        <source>C:N</source>
        <translation>C:N</translation>
    </message>
    <message>
        <source>good: %1</source>
        <translation>gut: %1</translation>
    </message>
    <message>
        <source>Moisture</source>
        <translation>Feuchte</translation>
    </message>
    <message>
        <source>good: %1, best %2</source>
        <translation>gut: %1, am besten %2</translation>
    </message>
    <message>
        <source>Weight</source>
        <translation>Gewicht</translation>
    </message>
    <message>
        <source>%1, of it %2 dry</source>
        <translation>%1, davon %2 trocken</translation>
    </message>
    <message>
        <source>Room, loose</source>
        <translation>Raum, locker</translation>
    </message>
    <message>
        <source>Softens</source>
        <translation>Wird weich</translation>
    </message>
    <message>
        <source>Stays</source>
        <translation>Bleibt</translation>
    </message>
    <message>
        <source>%1 of the dry matter: use as it is, or sift</source>
        <translation>%1 der Trockenmasse: verwenden, wie es ist, oder sieben</translation>
    </message>
    <message>
        <source>Poured</source>
        <translation>Zu gießen</translation>
    </message>
    <message>
        <source>%1 (%2): %3</source>
        <translation>%1 (%2): %3</translation>
    </message>
    <message>
        <source>Welcome</source>
        <translation>Willkommen</translation>
    </message>
    <message>
        <source>%1 of %2</source>
        <translation>%1 von %2</translation>
    </message>
    <message>
        <source>%1 of water</source>
        <translation>%1 Wasser</translation>
    </message>
    <message>
        <source>%1 and %2</source>
        <comment>two things to add</comment>
        <translation>%1 und %2</translation>
    </message>
    <message>
        <source>C:N %1, moisture %2</source>
        <translation>C:N %1, Feuchte %2</translation>
    </message>
    <message>
        <source>Add %1: then it has %2.</source>
        <translation>Gib %1 dazu: dann hat sie %2.</translation>
    </message>
    <message>
        <source>It is as wished: %1.</source>
        <translation>Sie ist wie gewünscht: %1.</translation>
    </message>
    <message>
        <source>C:N %1 and moisture %2 cannot both be reached with %3.</source>
        <translation>C:N %1 und Feuchte %2 sind mit %3 nicht beide erreichbar.</translation>
    </message>
    <message>
        <source>There is no carbon or no nitrogen in the mix, so that it has no C:N to be brought anywhere.</source>
        <translation>In der Mischung ist kein Kohlenstoff oder kein Stickstoff, also hat sie kein C:N, das sich irgendwohin bringen ließe.</translation>
    </message>
    <message>
        <source>At that C:N the mix would be at %1, and water cannot be taken out.</source>
        <translation>Bei diesem C:N läge die Mischung bei %1, und Wasser lässt sich nicht herausnehmen.</translation>
    </message>
    <message>
        <source>The mix has C:N %1, and %2 with C:N %3 leads away from the aim.</source>
        <translation>Die Mischung hat C:N %1, und %2 mit C:N %3 führt vom Ziel weg.</translation>
    </message>
    <message>
        <source>none</source>
        <translation>keine</translation>
    </message>
    <message>
        <source>Even %1 times as much of it as of the mix does not get there.</source>
        <translation>Selbst %1-mal so viel davon wie von der Mischung führt nicht dorthin.</translation>
    </message>
    <message>
        <source>The nearest mix: add %1; then it has %2.</source>
        <translation>Die nächste Mischung: gib %1 dazu; dann hat sie %2.</translation>
    </message>
    <message>
        <source>The nearest mix is the one you have: %1.</source>
        <translation>Die nächste Mischung ist die, die du hast: %1.</translation>
    </message>
    <message>
        <source>With %1 it can be done: %2.</source>
        <translation>Mit %1 geht es: %2.</translation>
    </message>
    <message>
        <source>No welcome material of the table does it alone; a drier or a milder aim can be reached.</source>
        <translation>Kein willkommenes Material der Tabelle schafft es allein; ein trockeneres oder milderes Ziel ist erreichbar.</translation>
    </message>
    <message>
        <source>half in %1, nine tenths in %2 (bed at %3, worms %4)</source>
        <translation>halb in %1, neun Zehntel in %2 (Bett bei %3, Würmer %4)</translation>
    </message>
    <message>
        <source>%1 (%2)</source>
        <comment>volume, weight by volume</comment>
        <translation>%1 (%2)</translation>
    </message>
</context>
<context>
    <name>tierloam::paper::LabelsView</name>
    <message>
        <source>Labels for trays</source>
        <translation>Etiketten für Etagen</translation>
    </message>
    <message>
        <source>%1, tray %2, batch %3</source>
        <translation>%1, Etage %2, Charge %3</translation>
    </message>
    <message>
        <source>Trays</source>
        <translation>Etagen</translation>
    </message>
    <message>
        <source>Each that is ticked gets a label</source>
        <translation>Jede angehakte bekommt ein Etikett</translation>
    </message>
    <message>
        <source>Sheet</source>
        <translation>Blatt</translation>
    </message>
    <message>
        <source>First free place on the sheet</source>
        <translation>Erster freier Platz auf dem Blatt</translation>
    </message>
    <message>
        <source>Counted in the direction of reading; those before it stay empty</source>
        <translation>In Leserichtung gezählt; die davor bleiben leer</translation>
    </message>
    <message>
        <source>&amp;Trays:</source>
        <translation>&amp;Etagen:</translation>
    </message>
    <message>
        <source>S&amp;heet:</source>
        <translation>B&amp;latt:</translation>
    </message>
    <message>
        <source>&amp;First free place:</source>
        <translation>E&amp;rster freier Platz:</translation>
    </message>
    <message>
        <source>Labels</source>
        <translation>Etiketten</translation>
    </message>
</context>
<context>
    <name>tierloam::paper::PaperView</name>
    <message>
        <source>The pages</source>
        <translation>Die Seiten</translation>
    </message>
    <message>
        <source>&amp;Print…</source>
        <translation>&amp;Drucken…</translation>
    </message>
    <message>
        <source>Save as P&amp;DF…</source>
        <translation>Als P&amp;DF sichern…</translation>
    </message>
    <message>
        <source>Save as PDF</source>
        <translation>Als PDF sichern</translation>
    </message>
    <message>
        <source>PDF (*.pdf)</source>
        <translation>PDF (*.pdf)</translation>
    </message>
    <message>
        <source>Close</source>
        <translation>Schließen</translation>
    </message>
    <message>
        <source>Written to %1.</source>
        <translation>Nach %1 geschrieben.</translation>
    </message>
    <message>
        <source>The printer took nothing.</source>
        <translation>Der Drucker hat nichts angenommen.</translation>
    </message>
    <message>
        <source>Handed to the printer.</source>
        <translation>Dem Drucker übergeben.</translation>
    </message>
</context>
<context>
    <name>tierloam::paper::SheetView</name>
    <message>
        <source>Sheet of a stack</source>
        <translation>Blatt eines Stapels</translation>
    </message>
    <message>
        <source>Stack</source>
        <translation>Stapel</translation>
    </message>
    <message>
        <source>&amp;Stack:</source>
        <translation>&amp;Stapel:</translation>
    </message>
    <message>
        <source>Save as &amp;HTML…</source>
        <translation>Als &amp;HTML sichern…</translation>
    </message>
    <message>
        <source>Save as HTML</source>
        <translation>Als HTML sichern</translation>
    </message>
    <message>
        <source>HTML (*.html)</source>
        <translation>HTML (*.html)</translation>
    </message>
</context>
<context>
    <name>tierloam::rotation::ChangeCard</name>
    <message>
        <source>Compare</source>
        <translation>Vergleichen</translation>
    </message>
    <message>
        <source>Try a change</source>
        <translation>Eine Änderung durchspielen</translation>
    </message>
    <message>
        <source>Stack</source>
        <translation>Stapel</translation>
    </message>
    <message>
        <source>Change</source>
        <translation>Änderung</translation>
    </message>
    <message>
        <source>feed so much a week</source>
        <translation>so viel je Woche füttern</translation>
    </message>
    <message>
        <source>be away</source>
        <translation>verreisen für</translation>
    </message>
    <message>
        <source>add a tray on</source>
        <translation>eine Etage hinzufügen am</translation>
    </message>
    <message>
        <source>take the bottom tray on</source>
        <translation>die unterste Etage nehmen am</translation>
    </message>
    <message>
        <source>give worms away</source>
        <translation>Würmer weggeben</translation>
    </message>
    <message>
        <source>start another stack from it</source>
        <translation>damit einen weiteren Stapel beginnen</translation>
    </message>
    <message>
        <source>the shortest way back</source>
        <translation>der kürzeste Weg zurück</translation>
    </message>
    <message>
        <source>if an entry had not been</source>
        <translation>wenn ein Eintrag nicht gewesen wäre</translation>
    </message>
    <message>
        <source>Fresh food a week</source>
        <translation>Frisches Futter je Woche</translation>
    </message>
    <message>
        <source>Usual temperature of the bed</source>
        <translation>Übliche Temperatur des Betts</translation>
    </message>
    <message>
        <source>From</source>
        <translation>Von</translation>
    </message>
    <message>
        <source>To</source>
        <translation>Nach</translation>
    </message>
    <message>
        <source>Weeks until it is back</source>
        <translation>Wochen, bis er zurück ist</translation>
    </message>
    <message>
        <source>Entry</source>
        <translation>Eintrag</translation>
    </message>
    <message>
        <source>Comparing…</source>
        <translation>Wird verglichen…</translation>
    </message>
    <message>
        <source>It cannot have been so: later entries rest on that one.</source>
        <translation>So kann es nicht gewesen sein: spätere Einträge beruhen darauf.</translation>
    </message>
    <message>
        <source>The estimates hold no members to ask; wait until they are made anew.</source>
        <translation>Die Schätzungen haben keine Mitglieder zu befragen; warte, bis sie erneuert sind.</translation>
    </message>
    <message>
        <source>as usual</source>
        <translation>wie üblich</translation>
    </message>
    <message>
        <source>with the change</source>
        <translation>mit der Änderung</translation>
    </message>
    <message>
        <source>%1: %2, %3</source>
        <comment>day, what was done, how much of what</comment>
        <translation>%1: %2, %3</translation>
    </message>
    <message>
        <source>food a week</source>
        <translation>Futter je Woche</translation>
    </message>
    <message>
        <source>if the bottom tray had been taken on</source>
        <translation>wenn die unterste Etage genommen worden wäre am</translation>
    </message>
    <message>
        <source>Day</source>
        <translation>Tag</translation>
    </message>
    <message>
        <source>Nothing stood there on that day, or it is not past yet.</source>
        <translation>An diesem Tag stand dort nichts, oder er ist noch nicht vorbei.</translation>
    </message>
    <message>
        <source>It cannot have been so: later entries rest on that tray.</source>
        <translation>So kann es nicht gewesen sein: spätere Einträge beruhen auf dieser Etage.</translation>
    </message>
    <message>
        <source>That day is not ahead: take tomorrow or a later one.</source>
        <translation>Dieser Tag liegt nicht in der Zukunft: nimm morgen oder einen späteren.</translation>
    </message>
    <message>
        <source>The estimates reach to %1.</source>
        <translation>Die Schätzungen reichen bis %1.</translation>
    </message>
    <message>
        <source>That is before the first day.</source>
        <translation>Das liegt vor dem ersten Tag.</translation>
    </message>
    <message>
        <source>day</source>
        <translation>Tag</translation>
    </message>
    <message>
        <source>the new stack</source>
        <translation>der neue Stapel</translation>
    </message>
    <message>
        <source>–</source>
        <translation>–</translation>
    </message>
    <message>
        <source>keep the bed warmer or colder</source>
        <translation>das Bett wärmer oder kälter halten</translation>
    </message>
    <message>
        <source>the mean of the whole year; the place makes winter and summer of it</source>
        <translation>das Mittel des ganzen Jahres; der Ort macht Winter und Sommer daraus</translation>
    </message>
    <message>
        <source>mean of the year: about %1 in %2, %3 in %4</source>
        <comment>temperature, month, temperature, month</comment>
        <translation>Mittel des Jahres: etwa %1 im %2, %3 im %4</translation>
    </message>
    <message>
        <source>All go on without lifting a tray; the plan of the year lifts them when they are due. The new stack gets its second tray when the first is full.</source>
        <translation>Alle gehen weiter, ohne dass eine Etage gehoben wird; der Jahresplan hebt sie, wenn sie fällig sind. Der neue Stapel bekommt seine zweite Etage, wenn die erste voll ist.</translation>
    </message>
    <message>
        <source>Both go on without lifting a tray; the plan of the year lifts them when they are due.</source>
        <translation>Beide gehen weiter, ohne dass eine Etage gehoben wird; der Jahresplan hebt sie, wenn sie fällig sind.</translation>
    </message>
</context>
<context>
    <name>tierloam::rotation::ClockCard</name>
    <message>
        <source>Cold holds it back.</source>
        <translation>Kälte bremst es.</translation>
    </message>
    <message>
        <source>Food holds it back.</source>
        <translation>Futter bremst es.</translation>
    </message>
    <message>
        <source>Too few worms hold it back.</source>
        <translation>Zu wenige Würmer bremsen es.</translation>
    </message>
    <message>
        <source>Bedding that is not softened holds it back.</source>
        <translation>Einstreu, die nicht weich ist, bremst es.</translation>
    </message>
    <message>
        <source>Dryness holds it back.</source>
        <translation>Trockenheit bremst es.</translation>
    </message>
    <message>
        <source>Nothing holds it back much.</source>
        <translation>Nichts bremst es sehr.</translation>
    </message>
    <message>
        <source>no difference</source>
        <translation>kein Unterschied</translation>
    </message>
    <message>
        <source>%1 warmer: %2</source>
        <translation>%1 wärmer: %2</translation>
    </message>
    <message>
        <source>%1 more a week: %2</source>
        <translation>%1 mehr je Woche: %2</translation>
    </message>
    <message>
        <source>%1 more worms: %2</source>
        <translation>%1 Würmer mehr: %2</translation>
    </message>
    <message>
        <source>half the bedding in the top tray: %1</source>
        <translation>halbe Einstreu in der obersten Etage: %1</translation>
    </message>
    <message>
        <source>%1 of water: %2</source>
        <translation>%1 Wasser: %2</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>not within a year</source>
        <translation>nicht innerhalb eines Jahres</translation>
    </message>
    <message numerus="yes">
        <source>Of %n stack(s) these are the first %1 on the shelf: each takes a while to foresee.</source>
        <translation>
            <numerusform>Von %n Stapel sind dies die ersten %1 im Regal: jeder braucht eine Weile, um vorausgesehen zu werden.</numerusform>
            <numerusform>Von %n Stapeln sind dies die ersten %1 im Regal: jeder braucht eine Weile, um vorausgesehen zu werden.</numerusform>
        </translation>
    </message>
    <message>
        <source>By what is known it has hardly any worms: nothing but worms brings it on.</source>
        <translation>Nach allem, was bekannt ist, hat er kaum Würmer: nur Würmer bringen ihn voran.</translation>
    </message>
    <message>
        <source>Next step of each stack</source>
        <translation>Nächster Schritt jedes Stapels</translation>
    </message>
    <message>
        <source>Next tray to be added or lifted, and what would bring it forward</source>
        <translation>Nächste Etage zum Aufsetzen oder Heben, und was sie vorzöge</translation>
    </message>
    <message>
        <source>castings in the light, taken about %1; the next step due %2</source>
        <translation>Humus im Licht, entnommen etwa %1; danach fällig %2</translation>
    </message>
    <message>
        <source>due now</source>
        <translation>jetzt fällig</translation>
    </message>
    <message>
        <source>due about now; the list says so once it is 80 % sure</source>
        <translation>etwa jetzt fällig; die Liste sagt es, sobald es zu 80 % sicher ist</translation>
    </message>
    <message>
        <source>It would be due: %1.</source>
        <translation>Fällig wäre sie: %1.</translation>
    </message>
    <message>
        <source>There is no stack yet whose next step could be foreseen.</source>
        <translation>Es gibt noch keinen Stapel, dessen nächster Schritt sich voraussehen ließe.</translation>
    </message>
</context>
<context>
    <name>tierloam::rotation::FeedingCard</name>
    <message>
        <source>left</source>
        <translation>links</translation>
    </message>
    <message>
        <source>right</source>
        <translation>rechts</translation>
    </message>
    <message>
        <source>front</source>
        <translation>vorn</translation>
    </message>
    <message>
        <source>back</source>
        <translation>hinten</translation>
    </message>
    <message>
        <source>all over</source>
        <translation>überall</translation>
    </message>
    <message>
        <source>%1 of water</source>
        <translation>%1 Wasser</translation>
    </message>
    <message>
        <source>its usual cover</source>
        <translation>die übliche Abdeckung</translation>
    </message>
    <message>
        <source>Feeding this week</source>
        <translation>Füttern in dieser Woche</translation>
    </message>
    <message>
        <source>What the kitchen gives in a week</source>
        <translation>Was die Küche in einer Woche gibt</translation>
    </message>
    <message>
        <source>From the kitchen</source>
        <translation>Aus der Küche</translation>
    </message>
    <message>
        <source>Supply of the kitchen</source>
        <translation>Anfall aus der Küche</translation>
    </message>
    <message>
        <source>Learned from the journal: %1 a week over all stacks, the middle week of the last eight. Leave it empty to follow the journal.</source>
        <translation>Aus dem Tagebuch gelernt: %1 je Woche über alle Stapel, die mittlere Woche der letzten acht. Lass es leer, um dem Tagebuch zu folgen.</translation>
    </message>
    <message>
        <source>nothing</source>
        <translation>nichts</translation>
    </message>
    <message>
        <source>no tray takes food</source>
        <translation>keine Etage nimmt Futter auf</translation>
    </message>
    <message>
        <source>it can bear %1 this week</source>
        <translation>er verträgt in dieser Woche %1</translation>
    </message>
    <message>
        <source>No stack takes food yet.</source>
        <translation>Noch nimmt kein Stapel Futter auf.</translation>
    </message>
    <message>
        <source>%1 more than the stacks can bear as they stand: keep it until they have eaten, freeze it for a week with less, or put it on a compost heap. Given all the same, it heats and smells.</source>
        <translation>%1 mehr, als die Stapel vertragen, wie sie jetzt stehen: heb es auf, bis sie gefressen haben, friere es für eine Woche mit weniger ein, oder gib es auf einen Komposthaufen. Trotzdem gefüttert wird es warm und riecht.</translation>
    </message>
    <message>
        <source>%1 of %2</source>
        <comment>amount and material of a cover</comment>
        <translation>%1 %2</translation>
    </message>
    <message>
        <source>no water</source>
        <translation>kein Wasser</translation>
    </message>
    <message>
        <source>, </source>
        <translation>, </translation>
    </message>
    <message>
        <source>tray %1, %2; with it: %3. At most %4</source>
        <translation>Etage %1, %2; dazu: %3. Höchstens %4</translation>
    </message>
    <message>
        <source>all of it from %1 on, since the days before count; tray %2, %3; with it: %4. At most %5</source>
        <translation>alles erst ab %1, da die Tage davor zählen; Etage %2, %3; dazu: %4. Höchstens %5</translation>
    </message>
</context>
<context>
    <name>tierloam::rotation::LanesView</name>
    <message>
        <source>no step chosen</source>
        <translation>kein Schritt gewählt</translation>
    </message>
    <message numerus="yes">
        <source>Year of %n stack(s): %1</source>
        <translation>
            <numerusform>Jahr von %n Stapel: %1</numerusform>
            <numerusform>Jahr von %n Stapeln: %1</numerusform>
        </translation>
    </message>
    <message>
        <source>Arrow keys choose a step or another stack; Shift with Left or Right moves a harvest by a day, Ctrl and Shift by a week; Enter keeps it on its day</source>
        <translation>Pfeiltasten wählen einen Schritt oder einen anderen Stapel; Umschalt mit Links oder Rechts verschiebt eine Ernte um einen Tag, Strg und Umschalt um eine Woche; Eingabe hält sie an ihrem Tag</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <comment>stack, when its bottom tray is ready</comment>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>, </source>
        <translation>, </translation>
    </message>
    <message>
        <source>nobody is there: %1</source>
        <translation>niemand ist da: %1</translation>
    </message>
    <message>
        <source>nobody is there for this stack: %1</source>
        <translation>für diesen Stapel ist niemand da: %1</translation>
    </message>
    <message>
        <source>%1: nobody is there for it, %2</source>
        <comment>stack, days</comment>
        <translation>%1: niemand ist dafür da, %2</translation>
    </message>
</context>
<context>
    <name>tierloam::rotation::RotationPage</name>
    <message>
        <source>Rotation</source>
        <translation>Umlauf</translation>
    </message>
    <message>
        <source>Steps of the coming year</source>
        <translation>Schritte des kommenden Jahres</translation>
    </message>
    <message>
        <source>Harvest on %1</source>
        <translation>Ernte am %1</translation>
    </message>
    <message>
        <source>Days for harvests</source>
        <translation>Tage für Ernten</translation>
    </message>
    <message>
        <source>Pin a harvest</source>
        <translation>Ernte festlegen</translation>
    </message>
    <message>
        <source>%1 · the year is being planned</source>
        <translation>%1 · das Jahr wird geplant</translation>
    </message>
    <message>
        <source>The year is being planned; it stands here in a moment.</source>
        <translation>Das Jahr wird geplant; gleich steht es hier.</translation>
    </message>
    <message numerus="yes">
        <source>%n harvest(s) in the coming year</source>
        <translation>
            <numerusform>%n Ernte im kommenden Jahr</numerusform>
            <numerusform>%n Ernten im kommenden Jahr</numerusform>
        </translation>
    </message>
    <message>
        <source>about %1 of castings</source>
        <translation>etwa %1 Humus</translation>
    </message>
    <message numerus="yes">
        <source>on %n day(s)</source>
        <translation>
            <numerusform>an %n Tag</numerusform>
            <numerusform>an %n Tagen</numerusform>
        </translation>
    </message>
    <message>
        <source>put off by %1 in all</source>
        <translation>zusammen um %1 aufgeschoben</translation>
    </message>
    <message>
        <source>no better choice of days exists</source>
        <translation>es gibt keine bessere Wahl der Tage</translation>
    </message>
    <message>
        <source>a good choice of days, not proved to be the best</source>
        <translation>eine gute Wahl der Tage, nicht als beste bewiesen</translation>
    </message>
    <message>
        <source>Choose a step with the mouse or the arrow keys. A harvest is moved by dragging it, or with Shift and the arrow keys; what that costs is shown here.</source>
        <translation>Wähle einen Schritt mit der Maus oder den Pfeiltasten. Eine Ernte wird durch Ziehen verschoben oder mit Umschalt und den Pfeiltasten; was das kostet, steht hier.</translation>
    </message>
    <message>
        <source>a day of lifting saved counts as %1 of delay</source>
        <translation>ein gesparter Tag des Hebens zählt wie %1 Verzug</translation>
    </message>
    <message>
        <source>two harvests close together count as %1 of delay</source>
        <translation>zwei Ernten dicht beieinander zählen wie %1 Verzug</translation>
    </message>
    <message>
        <source>On that day much of the tray is likely not castings yet.</source>
        <translation>An diesem Tag ist vieles der Etage wohl noch kein Humus.</translation>
    </message>
    <message numerus="yes">
        <source>none waits more than %n day(s)</source>
        <translation>
            <numerusform>keine wartet länger als %n Tag</numerusform>
            <numerusform>keine wartet länger als %n Tage</numerusform>
        </translation>
    </message>
    <message>
        <source>How long a harvest may wait for others</source>
        <translation>Wie lange eine Ernte auf andere warten darf</translation>
    </message>
    <message>
        <source>How long a harvest may wait</source>
        <translation>Wie lange eine Ernte warten darf</translation>
    </message>
    <message>
        <source>Let a harvest come when it is due</source>
        <translation>Ernte kommen lassen, wenn sie fällig ist</translation>
    </message>
    <message>
        <source>Once a stack stands, its coming year appears here: when each tray is ready, added, lifted and taken, what to feed it this week, what would bring its next step forward, and what a change would do.</source>
        <translation>Sobald ein Stapel steht, erscheint hier sein kommendes Jahr: wann jede Etage reif ist, hinzukommt, gehoben und genommen wird, was in dieser Woche zu füttern ist, was den nächsten Schritt vorzöge und was eine Änderung bewirkte.</translation>
    </message>
    <message>
        <source>No stack holds a tray whose next step could be foreseen.</source>
        <translation>Kein Stapel enthält eine Etage, deren nächster Schritt sich voraussehen ließe.</translation>
    </message>
    <message>
        <source>each when it is due, they would give %1</source>
        <translation>jede bei Fälligkeit, gäben sie %1</translation>
    </message>
    <message>
        <source>In this stack: harvests %1 later in all; castings in the year %2, each when it is due %3; colony at its end %4, usually %5.</source>
        <translation>In diesem Stapel: Ernten zusammen %1 später; Humus im Jahr %2, bei Fälligkeit %3; Bestand am Ende %4, sonst %5.</translation>
    </message>
    <message numerus="yes">
        <source>%n more would come within the year if none waited</source>
        <translation>
            <numerusform>%n weitere käme im Jahr, wenn keine wartete</numerusform>
            <numerusform>%n weitere kämen im Jahr, wenn keine wartete</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>tierloam::rotation::StepReadout</name>
    <message>
        <source>Keep this day</source>
        <translation>Diesen Tag halten</translation>
    </message>
    <message>
        <source>The chosen step</source>
        <translation>Der gewählte Schritt</translation>
    </message>
    <message>
        <source>Keep the chosen harvest on its day</source>
        <translation>Die gewählte Ernte an ihrem Tag halten</translation>
    </message>
    <message>
        <source>Enter does the same in the lanes</source>
        <translation>Die Eingabetaste tut in den Bahnen dasselbe</translation>
    </message>
</context>
<context>
    <name>tierloam::rotation::TrackCard</name>
    <message>
        <source>add a tray</source>
        <translation>Etage hinzufügen</translation>
    </message>
    <message>
        <source>lift the bottom tray</source>
        <translation>unterste Etage heben</translation>
    </message>
    <message>
        <source>%1, %2: advised to %3; still due</source>
        <translation>%1, %2: geraten: %3; noch fällig</translation>
    </message>
    <message>
        <source>%1, %2: advised to %3; done %4 later</source>
        <translation>%1, %2: geraten: %3; getan %4 später</translation>
    </message>
    <message>
        <source>%1, %2: advised to %3; taken back after %4</source>
        <translation>%1, %2: geraten: %3; zurückgenommen nach %4</translation>
    </message>
    <message>
        <source>Diary of advice</source>
        <translation>Buch der Ratschläge</translation>
    </message>
    <message>
        <source>%1, %2: “%3”; done the same day</source>
        <comment>day, stack, what was advised</comment>
        <translation>%1, %2: „%3“; am selben Tag getan</translation>
    </message>
    <message>
        <source>%1, %2: “%3”; done %4 later</source>
        <comment>day, stack, what was advised, days</comment>
        <translation>%1, %2: „%3“; getan nach %4</translation>
    </message>
    <message>
        <source>%1, %2: “%3”; still due</source>
        <comment>day, stack, what was advised</comment>
        <translation>%1, %2: „%3“; noch fällig</translation>
    </message>
    <message>
        <source>%1, %2: “%3”; not done, taken back after %4</source>
        <comment>day, stack, what was advised, days</comment>
        <translation>%1, %2: „%3“; nicht getan, zurückgenommen nach %4</translation>
    </message>
    <message>
        <source>harvests weighed: %1, within what was foreseen: %2 (9 in 10 should be); lifted as ready: %3, of these within: %4</source>
        <translation>gewogene Ernten: %1, innerhalb des Vorhergesagten: %2 (9 von 10 sollten es sein); als reif gehoben: %3, davon innerhalb: %4</translation>
    </message>
    <message>
        <source>feedings due in the last 90 days: %1, given within 3 days: %2</source>
        <translation>fällige Fütterungen der letzten 90 Tage: %1, binnen 3 Tagen gegeben: %2</translation>
    </message>
    <message>
        <source>other advice in that time: %1, followed: %2</source>
        <translation>andere Ratschläge in dieser Zeit: %1, befolgt: %2</translation>
    </message>
    <message>
        <source>%1, %2: %3 weighed, %4 foreseen, ready %5 when lifted</source>
        <translation>%1, %2: %3 gewogen, %4 vorausgesehen, beim Heben reif %5</translation>
    </message>
    <message>
        <source>%1, %2: %3 weighed, %4 foreseen</source>
        <translation>%1, %2: %3 gewogen, %4 vorausgesehen</translation>
    </message>
    <message numerus="yes">
        <source>Feedings and other advice are counted of the first %1 of %n stack(s) on the shelf.</source>
        <translation>
            <numerusform>Fütterungen und andere Ratschläge sind von den ersten %1 von %n Stapel im Regal gezählt.</numerusform>
            <numerusform>Fütterungen und andere Ratschläge sind von den ersten %1 von %n Stapeln im Regal gezählt.</numerusform>
        </translation>
    </message>
    <message>
        <source>What was advised, what was done and how right it was stands here once a step was due.</source>
        <translation>Was geraten und was getan wurde und wie richtig es war, steht hier, sobald einmal ein Schritt fällig war.</translation>
    </message>
    <message>
        <source>steps advised: %1, followed: %2</source>
        <translation>geratene Schritte: %1, befolgt: %2</translation>
    </message>
</context>
<context>
    <name>tierloam::rotation::TwoCourses</name>
    <message>
        <source>Colony of the coming year, as usual and with the change: the figures stand in the table above</source>
        <translation>Bestand des kommenden Jahres, wie üblich und mit der Änderung: die Zahlen stehen in der Tabelle darüber</translation>
    </message>
    <message>
        <source>colony, as usual</source>
        <translation>Bestand, wie üblich</translation>
    </message>
    <message>
        <source>colony, with the change</source>
        <translation>Bestand, mit der Änderung</translation>
    </message>
    <message>
        <source>up to %1</source>
        <translation>bis zu %1</translation>
    </message>
    <message>
        <source>Colony of the coming year, as usual, with the change, and of the new stack: the figures stand in the table above</source>
        <translation>Bestand des kommenden Jahres, wie üblich, mit der Änderung, und der des neuen Stapels: die Zahlen stehen in der Tabelle darüber</translation>
    </message>
    <message>
        <source>colony, the new stack</source>
        <translation>Bestand, der neue Stapel</translation>
    </message>
</context>
<context>
    <name>tierloam::rotation::WishCard</name>
    <message>
        <source>a little each month</source>
        <translation>jeden Monat ein wenig</translation>
    </message>
    <message>
        <source>What would raise it?</source>
        <translation>Was würde es erhöhen?</translation>
    </message>
    <message>
        <source>The garden&apos;s wish</source>
        <translation>Der Wunsch des Gartens</translation>
    </message>
    <message>
        <source>Castings wished for</source>
        <translation>Gewünschter Humus</translation>
    </message>
    <message>
        <source>Wished for by</source>
        <translation>Gewünscht bis</translation>
    </message>
    <message>
        <source>by</source>
        <translation>bis</translation>
    </message>
    <message>
        <source>Say how much is wished for, and by when.</source>
        <translation>Sag, wie viel gewünscht ist und bis wann.</translation>
    </message>
    <message>
        <source>Chance %1. By %2 the plan gives %3.</source>
        <translation>Chance %1. Bis %2 gibt der Plan %3.</translation>
    </message>
    <message>
        <source>%1: %2 (%3)</source>
        <comment>what is changed, chance, litres</comment>
        <translation>%1: %2 (%3)</translation>
    </message>
    <message>
        <source>%1 more food a week in each stack</source>
        <translation>%1 mehr Futter je Woche in jedem Stapel</translation>
    </message>
    <message>
        <source>the beds %1 warmer</source>
        <translation>die Betten %1 wärmer</translation>
    </message>
    <message>
        <source>one tray more in each stack</source>
        <translation>eine Etage mehr in jedem Stapel</translation>
    </message>
    <message>
        <source>Comparing…</source>
        <translation>Wird verglichen…</translation>
    </message>
    <message>
        <source>Not raised by: %1.</source>
        <translation>Nicht erhöht durch: %1.</translation>
    </message>
    <message numerus="yes">
        <source>wanted %n day(s) later</source>
        <translation>
            <numerusform>%n Tag später gewünscht</numerusform>
            <numerusform>%n Tage später gewünscht</numerusform>
        </translation>
    </message>
    <message>
        <source>more food, which no stack can bear as they stand</source>
        <translation>mehr Futter, das kein Stapel verträgt, wie sie jetzt stehen</translation>
    </message>
    <message>
        <source>up to %1 more food a week in each stack, as far as it can bear it</source>
        <translation>bis zu %1 mehr Futter je Woche in jedem Stapel, so weit er es verträgt</translation>
    </message>
    <message>
        <source>Something comes in each month.</source>
        <translation>Jeden Monat kommt etwas.</translation>
    </message>
    <message numerus="yes">
        <source>In %n month(s) until then nothing is taken.</source>
        <translation>
            <numerusform>In %n Monat bis dahin wird nichts entnommen.</numerusform>
            <numerusform>In %n Monaten bis dahin wird nichts entnommen.</numerusform>
        </translation>
    </message>
    <message>
        <source>each harvest on the day it is due</source>
        <translation>jede Ernte an dem Tag, an dem sie fällig ist</translation>
    </message>
</context>
<context>
    <name>tierloam::shelf::DateBar</name>
    <message>
        <source>Today</source>
        <translation>Heute</translation>
    </message>
    <message>
        <source>Day shown</source>
        <translation>Gezeigter Tag</translation>
    </message>
    <message>
        <source>Shows the shelf as it stood on any day. Left and right: a day; page up and down: a week.</source>
        <translation>Zeigt das Regal, wie es an einem beliebigen Tag stand. Links und rechts: ein Tag; Bild auf und ab: eine Woche.</translation>
    </message>
    <message>
        <source>Back to today</source>
        <translation>Zurück zu heute</translation>
    </message>
    <message>
        <source>%1 – the past</source>
        <translation>%1 – Vergangenheit</translation>
    </message>
    <message>
        <source>today</source>
        <translation>heute</translation>
    </message>
</context>
<context>
    <name>tierloam::shelf::PartPanel</name>
    <message>
        <source>%1: %2</source>
        <comment>a stack and one of its trays</comment>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>%1: everything that can be recorded</source>
        <translation>%1: alles, was eingetragen werden kann</translation>
    </message>
    <message>
        <source>Close</source>
        <translation>Schließen</translation>
    </message>
    <message>
        <source>Close (Esc)</source>
        <translation>Schließen (Esc)</translation>
    </message>
    <message>
        <source>%1…</source>
        <comment>an act that opens a form</comment>
        <translation>%1…</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <comment>an act, and what it is done to</comment>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>More…</source>
        <translation>Mehr…</translation>
    </message>
    <message numerus="yes">
        <source>%n more act(s) for it</source>
        <translation>
            <numerusform>%n weitere Tätigkeit dafür</numerusform>
            <numerusform>%n weitere Tätigkeiten dafür</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>tierloam::shelf::ShelfBoard</name>
    <message>
        <source>Shelf</source>
        <translation>Regal</translation>
    </message>
    <message>
        <source>Start a stack…</source>
        <translation>Einen Stapel beginnen…</translation>
    </message>
    <message>
        <source>No stack stood on this day</source>
        <translation>An diesem Tag stand kein Stapel</translation>
    </message>
    <message>
        <source>The first one was started later. Move the slider on, or go back to today.</source>
        <translation>Der erste wurde später begonnen. Schiebe den Regler weiter, oder geh zurück zu heute.</translation>
    </message>
    <message>
        <source>No stack stands any more</source>
        <translation>Kein Stapel steht mehr</translation>
    </message>
    <message>
        <source>All stacks are retired. Their journal is kept, and the slider still shows them as they stood.</source>
        <translation>Alle Stapel sind stillgelegt. Ihr Tagebuch bleibt, und der Regler zeigt sie noch, wie sie standen.</translation>
    </message>
    <message>
        <source>No stack stands here yet</source>
        <translation>Hier steht noch kein Stapel</translation>
    </message>
    <message>
        <source>Once a stack is started, it is drawn here from the side: its trays with what lies in them, its worms and its sump, and under it what to do next.</source>
        <translation>Sobald ein Stapel begonnen ist, ist er hier von der Seite gezeichnet: seine Etagen mit dem, was darin liegt, seine Würmer und seine Auffangschale, und darunter, was als Nächstes zu tun ist.</translation>
    </message>
</context>
<context>
    <name>tierloam::shelf::ShelfPage</name>
    <message>
        <source>Close</source>
        <translation>Schließen</translation>
    </message>
    <message>
        <source>%1: not written down. %2</source>
        <translation>%1: nicht eingetragen. %2</translation>
    </message>
    <message>
        <source>%1: not written down. %2 Nothing else was changed; try again when that is put right.</source>
        <translation>%1: nicht eingetragen. %2 Sonst wurde nichts geändert; versuche es noch einmal, wenn das behoben ist.</translation>
    </message>
    <message>
        <source>Place of %1 on the shelf</source>
        <translation>Platz von %1 im Regal</translation>
    </message>
    <message>
        <source>No stack was chosen, and nothing is written down yet. %1 has the focus now: press again for it, or go to another one with Left and Right.</source>
        <translation>Kein Stapel war gewählt, und noch ist nichts aufgeschrieben. %1 hat jetzt den Fokus: für ihn noch einmal drücken, oder mit Links und Rechts zu einem anderen gehen.</translation>
    </message>
</context>
<context>
    <name>tierloam::shelf::StackCanvas</name>
    <message>
        <source>%1: %2</source>
        <comment>a name and its value</comment>
        <translation>%1: %2</translation>
    </message>
</context>
<context>
    <name>tierloam::shelf::StackColumn</name>
    <message>
        <source>…</source>
        <translation>…</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <comment>what a button does, and the stack</comment>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>Everything else that can be recorded for %1</source>
        <translation>Alles andere, was für %1 eingetragen werden kann</translation>
    </message>
    <message>
        <source>More for %1</source>
        <translation>Mehr für %1</translation>
    </message>
</context>
<context>
    <name>tierloam::shelf::StoryCharts</name>
    <message>
        <source>Charts over its time</source>
        <translation>Diagramme über ihre Zeit</translation>
    </message>
</context>
<context>
    <name>tierloam::shelf::StripsView</name>
    <message>
        <source>Small charts of %1</source>
        <translation>Kleine Diagramme von %1</translation>
    </message>
</context>
<context>
    <name>tierloam::shelf::VerdictBox</name>
    <message>
        <source>%1: %2</source>
        <comment>name of a stack, state</comment>
        <translation>%1: %2</translation>
    </message>
</context>
<context>
    <name>tierloam::trends::MeasureSection</name>
    <message>
        <source>%1 as table</source>
        <translation>%1 als Tabelle</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>%1, stacks together</source>
        <translation>%1, Stapel zusammen</translation>
    </message>
    <message>
        <source>No stack is chosen. Choose one above, and its chart stands here.</source>
        <translation>Kein Stapel ist gewählt. Wähle oben einen, und sein Diagramm steht hier.</translation>
    </message>
</context>
<context>
    <name>tierloam::trends::SignKey</name>
    <message>
        <source>estimate and its 90 % range</source>
        <translation>Schätzung mit 90-%-Bereich</translation>
    </message>
    <message>
        <source>with the change that is tried</source>
        <translation>mit der durchgespielten Änderung</translation>
    </message>
    <message>
        <source>expected yield and its 90 % range</source>
        <translation>erwarteter Ertrag mit 90-%-Bereich</translation>
    </message>
    <message>
        <source>forecast: fed as usual, no tray lifted</source>
        <translation>Vorhersage: gefüttert wie üblich, keine Etage gehoben</translation>
    </message>
</context>
<context>
    <name>tierloam::trends::StackChips</name>
    <message>
        <source>Show stack %1</source>
        <translation>Stapel %1 zeigen</translation>
    </message>
</context>
<context>
    <name>tierloam::trends::TrendTable</name>
    <message>
        <source>%1 (today)</source>
        <translation>%1 (heute)</translation>
    </message>
    <message>
        <source>%1 (forecast)</source>
        <translation>%1 (Vorhersage)</translation>
    </message>
    <message>
        <source>Date</source>
        <translation>Datum</translation>
    </message>
    <message>
        <source>%1, read by a logger</source>
        <translation>%1, von einem Logger gemessen</translation>
    </message>
    <message>
        <source>%1, estimate</source>
        <translation>%1, Schätzung</translation>
    </message>
    <message>
        <source>%1, drained</source>
        <translation>%1, abgelassen</translation>
    </message>
    <message>
        <source>%1, to be expected</source>
        <translation>%1, zu erwarten</translation>
    </message>
    <message>
        <source>%1 of %2 of it</source>
        <translation>%1 von %2 davon</translation>
    </message>
    <message>
        <source>%1, with the change</source>
        <translation>%1, mit der Änderung</translation>
    </message>
    <message>
        <source>%1, castings taken</source>
        <translation>%1, entnommener Humus</translation>
    </message>
</context>
<context>
    <name>tierloam::trends::TrendsPage</name>
    <message>
        <source>Trends</source>
        <translation>Verlauf</translation>
    </message>
    <message>
        <source>Show %1</source>
        <translation>%1 zeigen</translation>
    </message>
    <message>
        <source>Charts stand here once there is a stack.</source>
        <translation>Diagramme stehen hier, sobald es einen Stapel gibt.</translation>
    </message>
    <message>
        <source>%1 · estimates are being made anew</source>
        <translation>%1 · Schätzungen werden erneuert</translation>
    </message>
    <message>
        <source>Save or print</source>
        <translation>Sichern oder drucken</translation>
    </message>
    <message>
        <source>What the charts show now, as a picture, a drawing, pages or figures</source>
        <translation>Was die Diagramme jetzt zeigen, als Bild, Zeichnung, Seiten oder Zahlen</translation>
    </message>
</context>
<context>
    <name>tierloam::ui::AmountField</name>
    <message>
        <source>«%1» is not a unit that fits here.</source>
        <translation>„%1“ ist keine Einheit, die hier passt.</translation>
    </message>
    <message>
        <source>«%1» is not a number.</source>
        <translation>„%1“ ist keine Zahl.</translation>
    </message>
    <message>
        <source>An amount cannot be below zero.</source>
        <translation>Eine Menge kann nicht unter null liegen.</translation>
    </message>
    <message>
        <source>The amount must be more than zero.</source>
        <translation>Die Menge muss mehr als null sein.</translation>
    </message>
    <message>
        <source>A count is a whole number.</source>
        <translation>Eine Anzahl ist eine ganze Zahl.</translation>
    </message>
    <message>
        <source>At most %1.</source>
        <translation>Höchstens %1.</translation>
    </message>
    <message>
        <source>At most %1 in one entry.</source>
        <translation>Höchstens %1 in einem Eintrag.</translation>
    </message>
    <message>
        <source>Unit of %1</source>
        <translation>Einheit von %1</translation>
    </message>
</context>
<context>
    <name>tierloam::ui::AreaField</name>
    <message>
        <source>in × in</source>
        <translation>in × in</translation>
    </message>
    <message>
        <source>sq ft</source>
        <translation>sq ft</translation>
    </message>
    <message>
        <source>Give the length as well.</source>
        <translation>Gib auch die Länge an.</translation>
    </message>
    <message>
        <source>Width and length must be more than zero.</source>
        <translation>Breite und Länge müssen mehr als null sein.</translation>
    </message>
    <message>
        <source>That is %1; a tray has from %2 to %3.</source>
        <translation>Das sind %1; eine Etage hat %2 bis %3.</translation>
    </message>
    <message>
        <source>Give the width as well.</source>
        <translation>Gib auch die Breite an.</translation>
    </message>
    <message>
        <source>%1: width</source>
        <translation>%1: Breite</translation>
    </message>
    <message>
        <source>%1: length</source>
        <translation>%1: Länge</translation>
    </message>
    <message>
        <source>%1: how it is given</source>
        <translation>%1: wie es angegeben ist</translation>
    </message>
</context>
<context>
    <name>tierloam::ui::DateField</name>
    <message>
        <source>today</source>
        <translation>heute</translation>
    </message>
    <message>
        <source>yesterday</source>
        <translation>gestern</translation>
    </message>
    <message>
        <source>«%1» is not a date from 1900 to 2199; write it like %2 or %3.</source>
        <translation>„%1“ ist kein Datum von 1900 bis 2199; schreibe es wie %2 oder %3.</translation>
    </message>
    <message>
        <source>«%1» is not a time of day; write it like 18:30.</source>
        <translation>„%1“ ist keine Uhrzeit; schreibe sie wie 18:30.</translation>
    </message>
    <message>
        <source>+ time</source>
        <translation>+ Uhrzeit</translation>
    </message>
    <message>
        <source>Note the time of day as well</source>
        <translation>Auch die Uhrzeit notieren</translation>
    </message>
    <message>
        <source>Time of day</source>
        <translation>Uhrzeit</translation>
    </message>
    <message>
        <source>Choose the date from a calendar</source>
        <translation>Datum aus einem Kalender wählen</translation>
    </message>
    <message>
        <source>Calendar</source>
        <translation>Kalender</translation>
    </message>
    <message>
        <source>%1, today</source>
        <translation>%1, heute</translation>
    </message>
    <message>
        <source>%1, yesterday</source>
        <translation>%1, gestern</translation>
    </message>
    <message numerus="yes">
        <source>%1, %n days ago</source>
        <translation>
            <numerusform>%1, vor %n Tag</numerusform>
            <numerusform>%1, vor %n Tagen</numerusform>
        </translation>
    </message>
    <message>
        <source>%1, tomorrow</source>
        <translation>%1, morgen</translation>
    </message>
    <message numerus="yes">
        <source>%1, %n days from now</source>
        <translation>
            <numerusform>%1, in %n Tag</numerusform>
            <numerusform>%1, in %n Tagen</numerusform>
        </translation>
    </message>
    <message>
        <source>%1 has not come yet. What is recorded has been done: today at the latest.</source>
        <translation>%1 ist noch nicht gekommen. Aufgezeichnet wird, was getan ist: spätestens heute.</translation>
    </message>
</context>
<context>
    <name>tierloam::ui::FactList</name>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
</context>
<context>
    <name>tierloam::ui::Field</name>
    <message>
        <source>«%1» is not a number.</source>
        <translation>„%1“ ist keine Zahl.</translation>
    </message>
    <message>
        <source>«%1» could be read in two ways: write it without a thousands mark.</source>
        <translation>„%1“ ließe sich auf zwei Arten lesen: schreibe es ohne Tausenderzeichen.</translation>
    </message>
</context>
<context>
    <name>tierloam::ui::LengthField</name>
    <message>
        <source>in</source>
        <translation>in</translation>
    </message>
</context>
<context>
    <name>tierloam::ui::MaterialField</name>
    <message>
        <source>«%1» is not among the materials.</source>
        <translation>„%1“ ist nicht unter den Materialien.</translation>
    </message>
    <message>
        <source>«%1» is not among the materials; the nearest are %2.</source>
        <translation>„%1“ ist nicht unter den Materialien; die nächsten sind %2.</translation>
    </message>
</context>
<context>
    <name>tierloam::ui::NumberField</name>
    <message>
        <source>A whole number is wanted here.</source>
        <translation>Hier ist eine ganze Zahl gefragt.</translation>
    </message>
    <message>
        <source>From %1 to %2.</source>
        <translation>Von %1 bis %2.</translation>
    </message>
    <message>
        <source>%1 in %2</source>
        <translation>%1 in %2</translation>
    </message>
    <message>
        <source>Unit of %1</source>
        <translation>Einheit von %1</translation>
    </message>
</context>
<context>
    <name>tierloam::ui::TextField</name>
    <message>
        <source>It holds a character that cannot be printed; type it again.</source>
        <translation>Es enthält ein Zeichen, das sich nicht darstellen lässt; tippe es neu.</translation>
    </message>
</context>
<context>
    <name>tierloam::window::AboutView</name>
    <message>
        <source>Tierloam %1</source>
        <translation>Tierloam %1</translation>
    </message>
    <message>
        <source>What it does</source>
        <translation>Was es tut</translation>
    </message>
    <message>
        <source>It keeps the journal of stacked-tray worm bins and estimates what goes on inside them, each figure with its range. Estimates are no measurements: a look into the tray decides. Local codes and licensed practice come first.</source>
        <translation>Es führt das Tagebuch von Wurmkisten mit gestapelten Etagen und schätzt, was darin vorgeht, jede Zahl mit ihrem Bereich. Schätzungen sind keine Messungen: ein Blick in die Etage entscheidet. Örtliche Vorschriften und zugelassene Fachleute gehen vor.</translation>
    </message>
    <message>
        <source>Licence</source>
        <translation>Lizenz</translation>
    </message>
    <message>
        <source>Made with</source>
        <translation>Gemacht mit</translation>
    </message>
    <message>
        <source>Sources of the materials table</source>
        <translation>Quellen der Materialtabelle</translation>
    </message>
    <message>
        <source>&amp;Read the licence</source>
        <translation>&amp;Lizenz lesen</translation>
    </message>
    <message>
        <source>Copyright of its authors. Free software under the GNU General Public License, version 3 or later; it comes with no warranty.</source>
        <translation>Urheberrecht bei den Autoren. Freie Software unter der GNU General Public License, Version 3 oder später; sie kommt ohne jede Gewähr.</translation>
    </message>
    <message>
        <source>Qt 6 (LGPL-3) with Qt Charts (GPL-3), SQLite (public domain), the C++ standard library (GPL-3 with its runtime exception), and on paper the DejaVu fonts (their own free licence). Drawings and icon are the program&apos;s own. Nothing is sent over a network.</source>
        <translation>Qt 6 (LGPL-3) mit Qt Charts (GPL-3), SQLite (gemeinfrei), der C++-Standardbibliothek (GPL-3 mit ihrer Laufzeitausnahme) und auf Papier den DejaVu-Schriften (mit eigener freier Lizenz). Zeichnungen und Symbol sind die des Programms. Nichts wird über ein Netz gesendet.</translation>
    </message>
    <message>
        <source>Sources of numbers</source>
        <translation>Quellen der Zahlen</translation>
    </message>
    <message>
        <source>Each figure of the handbook and each parameter of the model names what it rests on: the handbook lists them. What the trade says without a source, and what rests on memory or judgement, is marked so.</source>
        <translation>Jede Zahl des Handbuchs und jeder Parameter des Modells nennt, worauf sie beruhen: das Handbuch führt sie auf. Was ohne Quelle üblich ist und was auf Gedächtnis oder Urteil beruht, ist so gekennzeichnet.</translation>
    </message>
</context>
<context>
    <name>tierloam::window::BackupsView</name>
    <message>
        <source>of the day</source>
        <translation>des Tages</translation>
    </message>
    <message>
        <source>before an import</source>
        <translation>vor einem Import</translation>
    </message>
    <message>
        <source>before the file was brought up to date</source>
        <translation>bevor die Datei auf den Stand gebracht wurde</translation>
    </message>
    <message>
        <source>Backups</source>
        <translation>Sicherungskopien</translation>
    </message>
    <message>
        <source>Backups of %1</source>
        <translation>Sicherungskopien von %1</translation>
    </message>
    <message>
        <source>Looking…</source>
        <translation>Wird gesucht…</translation>
    </message>
    <message>
        <source>Made on</source>
        <translation>Gemacht am</translation>
    </message>
    <message>
        <source>Why</source>
        <translation>Warum</translation>
    </message>
    <message>
        <source>Entries</source>
        <translation>Einträge</translation>
    </message>
    <message>
        <source>Last entry</source>
        <translation>Letzter Eintrag</translation>
    </message>
    <message>
        <source>File</source>
        <translation>Datei</translation>
    </message>
    <message>
        <source>Choose the one to be restored</source>
        <translation>Wähle die, die wiederhergestellt werden soll</translation>
    </message>
    <message>
        <source>How far the restoring is</source>
        <translation>Wie weit das Wiederherstellen ist</translation>
    </message>
    <message>
        <source>&amp;Restore to a new file…</source>
        <translation>In neue Datei &amp;wiederherstellen…</translation>
    </message>
    <message>
        <source>Call &amp;off</source>
        <translation>&amp;Abbrechen</translation>
    </message>
    <message>
        <source>Close</source>
        <translation>Schließen</translation>
    </message>
    <message>
        <source>There are none yet. One is made with the first change of each day.</source>
        <translation>Es gibt noch keine. Eine entsteht mit der ersten Änderung jedes Tages.</translation>
    </message>
    <message numerus="yes">
        <source>%n backup(s). A restored one goes into a new file; the household&apos;s own file stays as it is.</source>
        <translation>
            <numerusform>%n Sicherungskopie. Wiederhergestellt kommt sie in eine neue Datei; die Datei des Haushalts bleibt, wie sie ist.</numerusform>
            <numerusform>%n Sicherungskopien. Eine wiederhergestellte kommt in eine neue Datei; die Datei des Haushalts bleibt, wie sie ist.</numerusform>
        </translation>
    </message>
    <message>
        <source>cannot be read</source>
        <translation>kann nicht gelesen werden</translation>
    </message>
    <message>
        <source>%1 as of %2</source>
        <translation>%1 vom %2</translation>
    </message>
    <message>
        <source>Restore to a new file</source>
        <translation>In neue Datei wiederherstellen</translation>
    </message>
    <message>
        <source>Households (*.tierloam)</source>
        <translation>Haushalte (*.tierloam)</translation>
    </message>
    <message>
        <source>Restoring to %1…</source>
        <translation>Wird nach %1 wiederhergestellt…</translation>
    </message>
    <message>
        <source>&amp;Look again</source>
        <translation>Noch einmal &amp;nachsehen</translation>
    </message>
    <message>
        <source>Another &amp;folder…</source>
        <translation>Anderer &amp;Ordner…</translation>
    </message>
    <message>
        <source>The folder chosen for backups is not there now: %1. Plug in or connect what it lies on, then look again. Until then backups are made beside the household&apos;s file.</source>
        <translation>Der für Sicherungskopien gewählte Ordner ist jetzt nicht da: %1. Bitte anschließen oder verbinden, worauf er liegt, und noch einmal nachsehen. Bis dahin entstehen Sicherungskopien neben der Datei des Haushalts.</translation>
    </message>
    <message>
        <source>There is no permission to read the folder chosen for backups: %1. Backups in it cannot be shown.</source>
        <translation>Der für Sicherungskopien gewählte Ordner darf nicht gelesen werden: %1. Sicherungskopien darin können nicht gezeigt werden.</translation>
    </message>
    <message>
        <source>Beside the household&apos;s file there are none.</source>
        <translation>Neben der Datei des Haushalts liegen keine.</translation>
    </message>
</context>
<context>
    <name>tierloam::window::BinView</name>
    <message>
        <source>Deleted entries</source>
        <translation>Gelöschte Einträge</translation>
    </message>
    <message>
        <source>Looking…</source>
        <translation>Wird gesucht…</translation>
    </message>
    <message>
        <source>Date</source>
        <translation>Datum</translation>
    </message>
    <message>
        <source>Stack</source>
        <translation>Stapel</translation>
    </message>
    <message>
        <source>What was done</source>
        <translation>Was getan wurde</translation>
    </message>
    <message>
        <source>Details</source>
        <translation>Einzelheiten</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Notiz</translation>
    </message>
    <message>
        <source>Deleted on</source>
        <translation>Gelöscht am</translation>
    </message>
    <message>
        <source>Choose those to be put back</source>
        <translation>Wähle, was zurückgelegt werden soll</translation>
    </message>
    <message>
        <source>&amp;Put back</source>
        <translation>&amp;Zurücklegen</translation>
    </message>
    <message>
        <source>Close</source>
        <translation>Schließen</translation>
    </message>
    <message>
        <source>Nothing has been deleted.</source>
        <translation>Nichts wurde gelöscht.</translation>
    </message>
    <message numerus="yes">
        <source>%n entry(ies) deleted. What is put back takes its old place, and that can be undone.</source>
        <translation>
            <numerusform>%n Eintrag gelöscht. Was zurückgelegt wird, nimmt seinen alten Platz ein, und das lässt sich rückgängig machen.</numerusform>
            <numerusform>%n Einträge gelöscht. Was zurückgelegt wird, nimmt seinen alten Platz ein, und das lässt sich rückgängig machen.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Put back %n entry(ies)</source>
        <translation>
            <numerusform>%n Eintrag zurücklegen</numerusform>
            <numerusform>%n Einträge zurücklegen</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>tierloam::window::Desk</name>
    <message>
        <source>Wrong?</source>
        <translation>Problem?</translation>
    </message>
    <message>
        <source>Read only</source>
        <translation>Nur lesen</translation>
    </message>
    <message>
        <source>Saving…</source>
        <translation>Wird gesichert…</translation>
    </message>
    <message>
        <source>Saved %1</source>
        <translation>Gesichert %1</translation>
    </message>
    <message>
        <source>All saved</source>
        <translation>Alles gesichert</translation>
    </message>
    <message>
        <source>Estimates: %1 of %2</source>
        <translation>Schätzungen: %1 von %2</translation>
    </message>
    <message numerus="yes">
        <source>%n stack(s)</source>
        <translation>
            <numerusform>%n Stapel</numerusform>
            <numerusform>%n Stapel</numerusform>
        </translation>
    </message>
    <message>
        <source>Due (%1)</source>
        <translation>Fällig (%1)</translation>
    </message>
    <message>
        <source>Due</source>
        <translation>Fällig</translation>
    </message>
    <message>
        <source>%1: not written down. %2</source>
        <translation>%1: nicht eingetragen. %2</translation>
    </message>
    <message>
        <source>Caution: %1</source>
        <translation>Warnhinweis: %1</translation>
    </message>
    <message>
        <source>Saved %1: %2</source>
        <comment>time of day, what was done and to which stack</comment>
        <translation>Gesichert %1: %2</translation>
    </message>
    <message>
        <source>Kept in %1</source>
        <translation>Liegt in %1</translation>
    </message>
</context>
<context>
    <name>tierloam::window::DueList</name>
    <message>
        <source>Due</source>
        <translation>Fällig</translation>
    </message>
    <message>
        <source>Due list</source>
        <translation>Fälligkeitsliste</translation>
    </message>
    <message>
        <source>Shows what was put off</source>
        <translation>Zeigt, was aufgeschoben wurde</translation>
    </message>
    <message>
        <source>Take</source>
        <translation>Nehmen</translation>
    </message>
    <message>
        <source>Lift</source>
        <translation>Heben</translation>
    </message>
    <message>
        <source>Look</source>
        <translation>Schauen</translation>
    </message>
    <message>
        <source>Add</source>
        <translation>Dazu</translation>
    </message>
    <message>
        <source>Cover</source>
        <translation>Abdeckung</translation>
    </message>
    <message>
        <source>Feed</source>
        <translation>Füttern</translation>
    </message>
    <message>
        <source>Paper</source>
        <comment>shredded, to be put in</comment>
        <translation>Papier</translation>
    </message>
    <message>
        <source>Water</source>
        <translation>Gießen</translation>
    </message>
    <message>
        <source>Drain</source>
        <translation>Ablassen</translation>
    </message>
    <message>
        <source>Write</source>
        <comment>what was poured into the journal</comment>
        <translation>Notieren</translation>
    </message>
    <message>
        <source>Read</source>
        <comment>a thermometer</comment>
        <translation>Ablesen</translation>
    </message>
    <message>
        <source>Write</source>
        <comment>a feeding into the journal</comment>
        <translation>Notieren</translation>
    </message>
    <message>
        <source>Check</source>
        <translation>Prüfen</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>Why</source>
        <translation>Warum</translation>
    </message>
    <message>
        <source>Why %1</source>
        <translation>Warum %1</translation>
    </message>
    <message>
        <source>Put off %1</source>
        <translation>%1 aufschieben</translation>
    </message>
    <message>
        <source>%1 If it is left: %2</source>
        <translation>%1 Wenn es bleibt: %2</translation>
    </message>
    <message>
        <source>%1 %2</source>
        <translation>%1 %2</translation>
    </message>
    <message numerus="yes">
        <source>%n this week</source>
        <translation>
            <numerusform>%n in dieser Woche</numerusform>
            <numerusform>%n in dieser Woche</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n put off: show</source>
        <translation>
            <numerusform>%n aufgeschoben: zeigen</numerusform>
            <numerusform>%n aufgeschoben: zeigen</numerusform>
        </translation>
    </message>
    <message>
        <source>What is to be done stands here, with its reason, once there is a stack.</source>
        <translation>Was zu tun ist, steht mit seinem Grund hier, sobald es einen Stapel gibt.</translation>
    </message>
    <message>
        <source>The estimates are being made; then what is due stands here.</source>
        <translation>Die Schätzungen entstehen gerade; dann steht hier, was fällig ist.</translation>
    </message>
    <message>
        <source>Nothing is due this week.</source>
        <translation>In dieser Woche ist nichts fällig.</translation>
    </message>
    <message>
        <source>Put off: %1</source>
        <translation>Aufgeschoben: %1</translation>
    </message>
    <message>
        <source>Show what was put off</source>
        <translation>Zeigen, was aufgeschoben wurde</translation>
    </message>
    <message>
        <source>…</source>
        <comment>opens the form of what is due</comment>
        <translation>…</translation>
    </message>
    <message>
        <source>Another amount or day: opens the form</source>
        <translation>Andere Menge oder anderer Tag: öffnet das Formular</translation>
    </message>
    <message>
        <source>Other amount or day for %1</source>
        <translation>Andere Menge oder anderer Tag für %1</translation>
    </message>
    <message>
        <source>%1 %2. Writes down at one click: %3</source>
        <translation>%1 %2. Trägt mit einem Klick ein: %3</translation>
    </message>
    <message>
        <source>Writes down at one click: %1</source>
        <translation>Trägt mit einem Klick ein: %1</translation>
    </message>
    <message>
        <source>Stock</source>
        <comment>worms, to be put in</comment>
        <translation>Einsetzen</translation>
    </message>
    <message>
        <source>Done</source>
        <translation>Erledigt</translation>
    </message>
    <message>
        <source>Writes a note that it is done, at one click</source>
        <translation>Schreibt mit einem Klick einen Vermerk, dass es erledigt ist</translation>
    </message>
    <message>
        <source>Done: %1</source>
        <translation>Erledigt: %1</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <comment>what is asked, an answer</comment>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>Up and Down go from line to line, Home and End to the first and the last one</source>
        <translation>Auf und Ab gehen von Zeile zu Zeile, Pos1 und Ende zur ersten und zur letzten</translation>
    </message>
    <message numerus="yes">
        <source>In %n day(s)</source>
        <comment>put off by so many</comment>
        <translation>
            <numerusform>In %n Tag</numerusform>
            <numerusform>In %n Tagen</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Not told again for %n day(s); for another time: right click, or the menu key</source>
        <translation>
            <numerusform>%n Tag lang nicht mehr gesagt; für eine andere Zeit: Rechtsklick oder die Menütaste</numerusform>
            <numerusform>%n Tage lang nicht mehr gesagt; für eine andere Zeit: Rechtsklick oder die Menütaste</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Put off by %n day(s)</source>
        <translation>
            <numerusform>Um %n Tag aufschieben</numerusform>
            <numerusform>Um %n Tage aufschieben</numerusform>
        </translation>
    </message>
    <message>
        <source>Written down. The estimates are being made anew.</source>
        <translation>Aufgeschrieben. Die Schätzungen werden neu gemacht.</translation>
    </message>
    <message>
        <source>The estimates are being made anew: they do not know the latest entries yet.</source>
        <translation>Die Schätzungen werden neu gemacht: sie kennen die letzten Einträge noch nicht.</translation>
    </message>
    <message>
        <source>From %1 on: today %2 is the most, for what was given these days.</source>
        <translation>Ab %1: heute ist %2 das Höchste, wegen des in diesen Tagen Gegebenen.</translation>
    </message>
    <message>
        <source>Urgent. %1</source>
        <translation>Dringend. %1</translation>
    </message>
    <message>
        <source>Correct</source>
        <comment>the set-up of a stack</comment>
        <translation>Ändern</translation>
    </message>
</context>
<context>
    <name>tierloam::window::DueNotice</name>
    <message>
        <source>%1: %2</source>
        <comment>stack, what to do</comment>
        <translation>%1: %2</translation>
    </message>
    <message numerus="yes">
        <source>%n thing(s) due today</source>
        <translation>
            <numerusform>Heute ist %n Sache fällig</numerusform>
            <numerusform>Heute sind %n Sachen fällig</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>and %n more</source>
        <translation>
            <numerusform>und %n weitere</numerusform>
            <numerusform>und %n weitere</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>tierloam::window::LicenceView</name>
    <message>
        <source>GNU General Public License, version 3</source>
        <translation>GNU General Public License, Version 3</translation>
    </message>
</context>
<context>
    <name>tierloam::window::MainWindow</name>
    <message>
        <source>Not recorded yet</source>
        <translation>Noch nicht eingetragen</translation>
    </message>
    <message>
        <source>A form holds something that has not been recorded. It is lost when you go on.</source>
        <translation>Ein Formular enthält etwas, das nicht eingetragen ist. Es geht verloren, wenn du weitergehst.</translation>
    </message>
    <message>
        <source>Go on</source>
        <translation>Weitergehen</translation>
    </message>
    <message>
        <source>This household is opened for reading only; nothing can be recorded.</source>
        <translation>Dieser Haushalt ist nur zum Lesen geöffnet; nichts kann eingetragen werden.</translation>
    </message>
    <message>
        <source>%1 is already open in another window, which has been brought to the front.</source>
        <translation>%1 ist schon in einem anderen Fenster geöffnet, das nach vorn geholt wurde.</translation>
    </message>
    <message>
        <source>%1 is already there. Nothing was replaced: choose another name, or open it.</source>
        <translation>%1 gibt es schon. Nichts wurde ersetzt: wähle einen anderen Namen, oder öffne es.</translation>
    </message>
    <message>
        <source>The demo household could not be made: %1</source>
        <translation>Der Demo-Haushalt konnte nicht angelegt werden: %1</translation>
    </message>
    <message>
        <source>My worm bins</source>
        <translation>Meine Wurmkisten</translation>
    </message>
    <message>
        <source>My worm bins %1</source>
        <translation>Meine Wurmkisten %1</translation>
    </message>
    <message>
        <source>Your household is kept in %1.</source>
        <translation>Dein Haushalt liegt in %1.</translation>
    </message>
    <message>
        <source>New household</source>
        <translation>Neuer Haushalt</translation>
    </message>
    <message>
        <source>Household</source>
        <translation>Haushalt</translation>
    </message>
    <message>
        <source>Households (*.tierloam)</source>
        <translation>Haushalte (*.tierloam)</translation>
    </message>
    <message>
        <source>Name of the household</source>
        <translation>Name des Haushalts</translation>
    </message>
    <message>
        <source>%1 – Tierloam</source>
        <translation>%1 – Tierloam</translation>
    </message>
    <message>
        <source>The calendar was not written: the estimates are still being made. Try again in a moment.</source>
        <translation>Der Kalender wurde nicht geschrieben: die Schätzungen entstehen noch. Versuche es gleich noch einmal.</translation>
    </message>
    <message numerus="yes">
        <source>%n event(s) were written to %1.</source>
        <translation>
            <numerusform>%n Termin wurde nach %1 geschrieben.</numerusform>
            <numerusform>%n Termine wurden nach %1 geschrieben.</numerusform>
        </translation>
    </message>
    <message>
        <source>New household for the imported journal</source>
        <translation>Neuer Haushalt für das importierte Tagebuch</translation>
    </message>
    <message>
        <source>Nothing was imported: there is no household yet that could hold it.</source>
        <translation>Nichts wurde importiert: noch gibt es keinen Haushalt, der es aufnehmen könnte.</translation>
    </message>
    <message numerus="yes">
        <source>Import %n entry(ies)</source>
        <translation>
            <numerusform>%n Eintrag importieren</numerusform>
            <numerusform>%n Einträge importieren</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n entry(ies) imported from %1.</source>
        <translation>
            <numerusform>%n Eintrag aus %1 importiert.</numerusform>
            <numerusform>%n Einträge aus %1 importiert.</numerusform>
        </translation>
    </message>
    <message>
        <source>Readings of a logger belong to a stack. Open a household or start one first.</source>
        <translation>Messwerte eines Loggers gehören zu einem Stapel. Öffne einen Haushalt, oder beginne zuerst einen Stapel.</translation>
    </message>
    <message>
        <source>The journal was written to %1.</source>
        <translation>Das Tagebuch wurde nach %1 geschrieben.</translation>
    </message>
    <message>
        <source>Open household</source>
        <translation>Haushalt öffnen</translation>
    </message>
    <message>
        <source>Households (*.tierloam);;All files (*)</source>
        <translation>Haushalte (*.tierloam);;Alle Dateien (*)</translation>
    </message>
    <message>
        <source>Import a table</source>
        <translation>Tabelle importieren</translation>
    </message>
    <message>
        <source>Tables (*.csv *.tsv *.txt);;All files (*)</source>
        <translation>Tabellen (*.csv *.tsv *.txt);;Alle Dateien (*)</translation>
    </message>
    <message>
        <source>Import readings of a logger</source>
        <translation>Messwerte eines Loggers importieren</translation>
    </message>
    <message>
        <source>Export journal</source>
        <translation>Tagebuch exportieren</translation>
    </message>
    <message>
        <source>Journals (*.csv)</source>
        <translation>Tagebücher (*.csv)</translation>
    </message>
    <message>
        <source>Export calendar</source>
        <translation>Kalender exportieren</translation>
    </message>
    <message>
        <source>Calendars (*.ics)</source>
        <translation>Kalender (*.ics)</translation>
    </message>
    <message>
        <source>A report for somebody who wants to help is on the clipboard: versions, sizes, the last lines of the program&apos;s own log. Nothing of your journal is in it.</source>
        <translation>Ein Bericht für jemanden, der helfen will, liegt in der Zwischenablage: Versionen, Größen, die letzten Zeilen des eigenen Protokolls. Nichts aus deinem Tagebuch ist darin.</translation>
    </message>
    <message>
        <source>H&amp;ousehold</source>
        <translation>Haushal&amp;t</translation>
    </message>
    <message>
        <source>&amp;Recent</source>
        <translation>&amp;Zuletzt</translation>
    </message>
    <message>
        <source>&amp;Edit</source>
        <translation>&amp;Bearbeiten</translation>
    </message>
    <message>
        <source>&amp;Stack</source>
        <translation>&amp;Stapel</translation>
    </message>
    <message>
        <source>&amp;View</source>
        <translation>&amp;Ansicht</translation>
    </message>
    <message>
        <source>&amp;Colours</source>
        <translation>&amp;Farben</translation>
    </message>
    <message>
        <source>&amp;Text size</source>
        <translation>S&amp;chriftgröße</translation>
    </message>
    <message>
        <source>&amp;Help</source>
        <translation>&amp;Hilfe</translation>
    </message>
    <message>
        <source>%1 copy</source>
        <translation>%1 Kopie</translation>
    </message>
    <message>
        <source>Save a copy</source>
        <translation>Kopie sichern</translation>
    </message>
    <message>
        <source>Writing a copy…</source>
        <translation>Eine Kopie wird geschrieben…</translation>
    </message>
    <message>
        <source>Call off</source>
        <translation>Abbrechen</translation>
    </message>
    <message>
        <source>A copy was written to %1.</source>
        <translation>Eine Kopie wurde nach %1 geschrieben.</translation>
    </message>
    <message>
        <source>The backup was restored to %1, which is open now. The file before it was not changed.</source>
        <translation>Die Sicherungskopie wurde nach %1 wiederhergestellt, was jetzt geöffnet ist. Die Datei davor wurde nicht geändert.</translation>
    </message>
    <message>
        <source>Folder for backups</source>
        <translation>Ordner für Sicherungskopien</translation>
    </message>
    <message>
        <source>Backups will be kept in %1.</source>
        <translation>Sicherungskopien liegen künftig in %1.</translation>
    </message>
    <message>
        <source>There is no stack yet that a sheet could be made of.</source>
        <translation>Es gibt noch keinen Stapel, aus dem ein Blatt werden könnte.</translation>
    </message>
    <message>
        <source>No tray stands yet that could get a label.</source>
        <translation>Noch steht keine Etage, die ein Etikett bekommen könnte.</translation>
    </message>
    <message>
        <source>&amp;Units</source>
        <translation>&amp;Einheiten</translation>
    </message>
    <message>
        <source>Lan&amp;guage</source>
        <translation>S&amp;prache</translation>
    </message>
    <message>
        <source>Pictures (*.png)</source>
        <translation>Bilder (*.png)</translation>
    </message>
    <message>
        <source>Drawings (*.svg)</source>
        <translation>Zeichnungen (*.svg)</translation>
    </message>
    <message>
        <source>Pages (*.pdf)</source>
        <translation>Seiten (*.pdf)</translation>
    </message>
    <message>
        <source>Tables (*.csv)</source>
        <translation>Tabellen (*.csv)</translation>
    </message>
    <message>
        <source>Save what the charts show</source>
        <translation>Sichern, was die Diagramme zeigen</translation>
    </message>
    <message>
        <source>%1 trends</source>
        <translation>%1 Verlauf</translation>
    </message>
    <message>
        <source>The picture is too large to be drawn.</source>
        <translation>Das Bild ist zu groß zum Zeichnen.</translation>
    </message>
    <message>
        <source>What the charts show was written to %1.</source>
        <translation>Was die Diagramme zeigen, wurde nach %1 geschrieben.</translation>
    </message>
    <message>
        <source>Print what the charts show</source>
        <translation>Drucken, was die Diagramme zeigen</translation>
    </message>
    <message>
        <source>The printer does not take the pages.</source>
        <translation>Der Drucker nimmt die Seiten nicht an.</translation>
    </message>
    <message numerus="yes">
        <source>%n page(s) went to the printer.</source>
        <translation>
            <numerusform>%n Seite ging an den Drucker.</numerusform>
            <numerusform>%n Seiten gingen an den Drucker.</numerusform>
        </translation>
    </message>
    <message>
        <source>Seaso&amp;ns</source>
        <translation>Ja&amp;hreszeiten</translation>
    </message>
    <message>
        <source>Seasons</source>
        <translation>Jahreszeiten</translation>
    </message>
    <message>
        <source>The seasons are those south of the equator, warmest in January, since this machine is set up for there. The menu Household, Seasons, turns them.</source>
        <translation>Die Jahreszeiten sind die südlich des Äquators, am wärmsten im Januar, denn dieser Rechner ist dafür eingerichtet. Das Menü Haushalt, Jahreszeiten, dreht sie um.</translation>
    </message>
    <message>
        <source>%1 stays open: what was recorded last could not be written and is not in it. Record it again, or go on once more without it.</source>
        <translation>%1 bleibt offen: was zuletzt aufgeschrieben wurde, ließ sich nicht sichern und ist nicht darin. Schreib es noch einmal auf, oder fahre noch einmal ohne es fort.</translation>
    </message>
    <message>
        <source>Try again</source>
        <translation>Noch einmal versuchen</translation>
    </message>
    <message>
        <source>Close the form</source>
        <translation>Formular schließen</translation>
    </message>
    <message>
        <source>It is open for writing now.</source>
        <translation>Es kann jetzt geschrieben werden.</translation>
    </message>
    <message>
        <source>Backups of which household?</source>
        <translation>Sicherungskopien von welchem Haushalt?</translation>
    </message>
    <message>
        <source>A copy is being written</source>
        <translation>Eine Kopie wird geschrieben</translation>
    </message>
    <message>
        <source>It is called off when you go on, and nothing of it is kept.</source>
        <translation>Sie wird abgebrochen, wenn du weitergehst, und nichts von ihr bleibt.</translation>
    </message>
    <message>
        <source>The form «%1» holds something that has not been recorded. It is lost when the form is closed.</source>
        <translation>Das Formular „%1“ enthält etwas, das nicht eingetragen ist. Es geht verloren, wenn das Formular geschlossen wird.</translation>
    </message>
    <message>
        <source>It is kept in %1. Its name:</source>
        <translation>Er liegt in %1. Sein Name:</translation>
    </message>
    <message>
        <source>&amp;Feed and cover</source>
        <translation>&amp;Füttern und abdecken</translation>
    </message>
    <message>
        <source>&amp;Water and drain</source>
        <translation>&amp;Gießen und ablassen</translation>
    </message>
    <message>
        <source>&amp;Trays and castings</source>
        <translation>&amp;Etagen und Humus</translation>
    </message>
    <message>
        <source>&amp;Look and measure</source>
        <translation>&amp;Schauen und messen</translation>
    </message>
    <message>
        <source>W&amp;orms</source>
        <translation>Wü&amp;rmer</translation>
    </message>
    <message>
        <source>&amp;Notes and routines</source>
        <translation>&amp;Notizen und Gewohnheiten</translation>
    </message>
    <message>
        <source>Set-&amp;up and place</source>
        <translation>A&amp;ufbau und Platz</translation>
    </message>
    <message>
        <source>&amp;Day shown</source>
        <translation>Gezeigter &amp;Tag</translation>
    </message>
    <message>
        <source>Copies and &amp;backups</source>
        <translation>&amp;Kopien und SicherungenKopien und Sicherungskopien</translation>
    </message>
</context>
<context>
    <name>tierloam::window::Notices</name>
    <message>
        <source>Not done: %1</source>
        <translation>Nicht getan: %1</translation>
    </message>
    <message>
        <source>Dismiss</source>
        <translation>Ausblenden</translation>
    </message>
    <message>
        <source>Dismiss this message</source>
        <translation>Diese Meldung ausblenden</translation>
    </message>
</context>
<context>
    <name>tierloam::window::PhotosView</name>
    <message>
        <source>Pictures</source>
        <translation>Bilder</translation>
    </message>
    <message>
        <source>%1, %2: %3 %4</source>
        <translation>%1, %2: %3 %4</translation>
    </message>
    <message>
        <source>Looking…</source>
        <translation>Wird gesucht…</translation>
    </message>
    <message>
        <source>Pictures of this entry</source>
        <translation>Bilder dieses Eintrags</translation>
    </message>
    <message>
        <source>The chosen picture</source>
        <translation>Das gewählte Bild</translation>
    </message>
    <message>
        <source>&amp;Add…</source>
        <translation>&amp;Hinzufügen…</translation>
    </message>
    <message>
        <source>&amp;Take out</source>
        <translation>&amp;Entfernen</translation>
    </message>
    <message>
        <source>Close</source>
        <translation>Schließen</translation>
    </message>
    <message>
        <source>Picture %1</source>
        <translation>Bild %1</translation>
    </message>
    <message>
        <source>No pictures yet. One that is added is kept at most 1600 pixels wide or high, without the place where it was taken.</source>
        <translation>Noch keine Bilder. Ein hinzugefügtes wird mit höchstens 1600 Pixel Breite oder Höhe behalten, ohne den Ort der Aufnahme.</translation>
    </message>
    <message numerus="yes">
        <source>%n picture(s), kept in the household file.</source>
        <translation>
            <numerusform>%n Bild, in der Haushaltsdatei.</numerusform>
            <numerusform>%n Bilder, in der Haushaltsdatei.</numerusform>
        </translation>
    </message>
    <message>
        <source>Add a picture</source>
        <translation>Bild hinzufügen</translation>
    </message>
    <message>
        <source>Pictures (*.jpg *.jpeg *.png *.webp);;All files (*)</source>
        <translation>Bilder (*.jpg *.jpeg *.png *.webp);;Alle Dateien (*)</translation>
    </message>
    <message>
        <source>Take out a picture</source>
        <translation>Bild entfernen</translation>
    </message>
</context>
<context>
    <name>tierloam::window::ShortcutsView</name>
    <message>
        <source>Keys and shortcuts</source>
        <translation>Tasten und Kürzel</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>Walking</source>
        <translation>Wege</translation>
    </message>
    <message>
        <source>Tab and Shift+Tab go from one thing to the next. On the shelf the arrow keys walk from stack to stack and from tray to tray, and Enter opens what has the focus. On a chart Left and Right walk by a day, with Ctrl by a week. Esc leaves a form.</source>
        <translation>Tab und Umschalt+Tab gehen von einem zum nächsten. Im Regal gehen die Pfeiltasten von Stapel zu Stapel und von Etage zu Etage, und Eingabe öffnet, was den Fokus hat. In einem Diagramm gehen Links und Rechts um einen Tag, mit Strg um eine Woche. Esc verlässt ein Formular.</translation>
    </message>
    <message>
        <source>%1 or %2</source>
        <comment>two keys that do the same</comment>
        <translation>%1 oder %2</translation>
    </message>
</context>
</TS>
