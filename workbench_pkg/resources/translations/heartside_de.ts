<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="de" sourcelanguage="en">
<context>
    <name>App::Property</name>
    <message>
        <source>0 nothing to say, 1 look at it, 2 will not hold</source>
        <translation>0 nichts zu sagen, 1 ansehen, 2 hält nicht</translation>
    </message>
    <message>
        <source>Address of the part</source>
        <translation>Adresse des Teils</translation>
    </message>
    <message>
        <source>Address of the part that it is cut from</source>
        <translation>Adresse des Teils, aus dem es geschnitten wird</translation>
    </message>
    <message>
        <source>Address of the top's first board</source>
        <translation>Adresse des ersten Bretts der Platte</translation>
    </message>
    <message>
        <source>Air of the shop in which the piece was built</source>
        <translation>Luft der Werkstatt, in der das Stück gebaut wurde</translation>
    </message>
    <message>
        <source>Angle of the growth rings to the face at mid-section</source>
        <translation>Winkel der Jahrringe zur Fläche in der Mitte des Querschnitts</translation>
    </message>
    <message>
        <source>Behind its bottom, must stay wood</source>
        <translation>Hinter seinem Grund, muss Holz bleiben</translation>
    </message>
    <message>
        <source>Centre of the tree in the section frame: x, y in mm</source>
        <translation>Mark im Achsenkreuz des Querschnitts: x, y in mm</translation>
    </message>
    <message>
        <source>Cut: flat, rift or quarter</source>
        <translation>Einschnitt: flat (liegend), rift (schräg) oder quarter (stehend)</translation>
    </message>
    <message>
        <source>Day of the answer</source>
        <translation>Tag der Antwort</translation>
    </message>
    <message>
        <source>Day of the check, YYYY-MM-DD; empty: the day on which it is asked</source>
        <translation>Tag der Prüfung, JJJJ-MM-TT; leer: der Tag, an dem gefragt wird</translation>
    </message>
    <message>
        <source>Day on which the piece was built, YYYY-MM-DD</source>
        <translation>Tag, an dem das Stück gebaut wurde, JJJJ-MM-TT</translation>
    </message>
    <message>
        <source>Ends of the part along its grain</source>
        <translation>Enden des Teils in Faserrichtung</translation>
    </message>
    <message>
        <source>Facts of single elements</source>
        <translation>Angaben zu einzelnen Elementen</translation>
    </message>
    <message>
        <source>Figure: plain, interlocked, curly, crotch, reaction or juvenile</source>
        <translation>Wuchs: plain (schlicht), interlocked (wechseldrehwüchsig), curly (wellig), crotch (Gabel), reaction (Reaktionsholz) oder juvenile (juvenil)</translation>
    </message>
    <message>
        <source>Finish</source>
        <translation>Oberfläche</translation>
    </message>
    <message>
        <source>Form of its properties</source>
        <translation>Form seiner Eigenschaften</translation>
    </message>
    <message>
        <source>Grain: x, y, z, -x … or a,b,c in the object's own frame</source>
        <translation>Faser: x, y, z, -x … oder a,b,c in den eigenen Achsen des Objekts</translation>
    </message>
    <message>
        <source>Hardest pull on a fastener, N</source>
        <translation>Größter Zug an einer Befestigung, N</translation>
    </message>
    <message>
        <source>Hardest pull, N</source>
        <translation>Größter Zug, N</translation>
    </message>
    <message>
        <source>Heart side: show, back or an axis of the own frame</source>
        <translation>Kernseite: show, back oder eine eigene Achse</translation>
    </message>
    <message>
        <source>How deep to set its tongue today</source>
        <translation>Wie tief seine Feder heute zu setzen ist</translation>
    </message>
    <message>
        <source>How much better the show face looks than the back</source>
        <translation>Wie viel besser die Sichtseite aussieht als die Rückseite</translation>
    </message>
    <message>
        <source>Joints that the maker confirmed</source>
        <translation>Verbindungen, die bestätigt sind</translation>
    </message>
    <message>
        <source>Kind of the plan</source>
        <translation>Art des Plans</translation>
    </message>
    <message>
        <source>Length of its slot</source>
        <translation>Länge seines Langlochs</translation>
    </message>
    <message>
        <source>Made by Heartside</source>
        <translation>Von Heartside gemacht</translation>
    </message>
    <message>
        <source>Made by an answer, and goes with it</source>
        <translation>Von einer Antwort gemacht und geht mit ihr</translation>
    </message>
    <message>
        <source>Measurements taken later, as JSON</source>
        <translation>Spätere Messungen, als JSON</translation>
    </message>
    <message>
        <source>Moisture content of the wood on that day, percent</source>
        <translation>Holzfeuchte an jenem Tag, Prozent</translation>
    </message>
    <message>
        <source>Moisture content when fitted, percent</source>
        <translation>Holzfeuchte beim Einpassen, Prozent</translation>
    </message>
    <message>
        <source>Moisture content when glued, flattened and fitted, percent</source>
        <translation>Holzfeuchte beim Leimen, Abrichten und Einpassen, Prozent</translation>
    </message>
    <message>
        <source>Moisture content when glued, percent</source>
        <translation>Holzfeuchte beim Leimen, Prozent</translation>
    </message>
    <message>
        <source>Moisture content when last flattened, percent</source>
        <translation>Holzfeuchte beim letzten Abrichten, Prozent</translation>
    </message>
    <message>
        <source>Month in which the part is driest</source>
        <translation>Monat, in dem das Teil am trockensten ist</translation>
    </message>
    <message>
        <source>Month in which the part is wettest</source>
        <translation>Monat, in dem das Teil am feuchtesten ist</translation>
    </message>
    <message>
        <source>Most that it may be out of flat</source>
        <translation>Wie weit sie höchstens von der Ebene abweichen darf</translation>
    </message>
    <message>
        <source>Number in the plan; 0: of a batten or an end</source>
        <translation>Nummer im Plan; 0: von einer Leiste oder einem Ende</translation>
    </message>
    <message>
        <source>Number of its fastener; 0: of none</source>
        <translation>Nummer seiner Befestigung; 0: von keiner</translation>
    </message>
    <message>
        <source>Out of flat at worst</source>
        <translation>Schlimmstenfalls uneben um</translation>
    </message>
    <message>
        <source>Outward normal of the show face in the object's own frame</source>
        <translation>Richtung, in die die Sichtseite blickt, in den eigenen Achsen des Objekts</translation>
    </message>
    <message>
        <source>Pull that is allowed, N</source>
        <translation>Zulässiger Zug, N</translation>
    </message>
    <message>
        <source>Radius of a ring at mid-section, mm</source>
        <translation>Radius eines Jahrrings in der Mitte des Querschnitts, mm</translation>
    </message>
    <message>
        <source>Rail that it is on</source>
        <translation>Zarge, an der es sitzt</translation>
    </message>
    <message>
        <source>Rails that may take fasteners</source>
        <translation>Zargen, die Befestigungen aufnehmen dürfen</translation>
    </message>
    <message>
        <source>Screw along the rail</source>
        <translation>Schraube entlang der Zarge</translation>
    </message>
    <message>
        <source>Screw from the edge, as the top is today</source>
        <translation>Schraube von der Kante, wie die Platte heute ist</translation>
    </message>
    <message>
        <source>Screw from the end</source>
        <translation>Schraube vom Ende</translation>
    </message>
    <message>
        <source>Screw today from the slot's end</source>
        <translation>Schraube heute vom Ende des Langlochs</translation>
    </message>
    <message>
        <source>Slope of spiral grain, rise over length</source>
        <translation>Neigung des Drehwuchses, Anstieg durch Länge</translation>
    </message>
    <message>
        <source>Species or material</source>
        <translation>Holzart oder Werkstoff</translation>
    </message>
    <message>
        <source>The least that this width may be, as far as is known</source>
        <translation>Das Kleinste, was diese Breite sein kann, soweit bekannt</translation>
    </message>
    <message>
        <source>The line that stays put, across from the middle</source>
        <translation>Die Linie, die bleibt, quer von der Mitte</translation>
    </message>
    <message>
        <source>The lot of boards it was cut from: one lot learns together</source>
        <translation>Die Charge, aus der es geschnitten ist: eine Charge lernt gemeinsam</translation>
    </message>
    <message>
        <source>The most that a top may be out of flat</source>
        <translation>Wie weit eine Platte höchstens von der Ebene abweichen darf</translation>
    </message>
    <message>
        <source>The most that this width may be, as far as is known</source>
        <translation>Das Größte, was diese Breite sein kann, soweit bekannt</translation>
    </message>
    <message>
        <source>The report</source>
        <translation>Der Bericht</translation>
    </message>
    <message>
        <source>The same at the far end of the grain</source>
        <translation>Dasselbe am fernen Ende der Faser</translation>
    </message>
    <message>
        <source>The same measurements, to be read</source>
        <translation>Dieselben Messungen, zum Lesen</translation>
    </message>
    <message>
        <source>Three points on one ring in the section frame: x, y, x, y, x, y in mm</source>
        <translation>Drei Punkte auf einem Jahrring im Achsenkreuz des Querschnitts: x, y, x, y, x, y in mm</translation>
    </message>
    <message>
        <source>To mind</source>
        <translation>Zu beachten</translation>
    </message>
    <message>
        <source>Travel there since fitting, least</source>
        <translation>Weg dort seit dem Einpassen, kleinster</translation>
    </message>
    <message>
        <source>Travel there since fitting, most</source>
        <translation>Weg dort seit dem Einpassen, größter</translation>
    </message>
    <message>
        <source>Travel there since fitting, today</source>
        <translation>Weg dort seit dem Einpassen, heute</translation>
    </message>
    <message>
        <source>What else the air was asked with: rooms of a place, answers to a logger's file</source>
        <translation>Womit sonst nach der Luft gefragt wurde: Räume eines Orts, Antworten zur Datei eines Loggers</translation>
    </message>
    <message>
        <source>What is held across its width: centre, an edge as +y, -y … of the own frame, or mm from the middle</source>
        <translation>Was quer über die Breite fest ist: centre, eine Kante als +y, -y … in den eigenen Achsen, oder mm von der Mitte</translation>
    </message>
    <message>
        <source>What is not cut, and why</source>
        <translation>Was nicht geschnitten wird, und warum</translation>
    </message>
    <message>
        <source>What it cuts</source>
        <translation>Was es schneidet</translation>
    </message>
    <message>
        <source>What must still be said</source>
        <translation>Was noch zu sagen ist</translation>
    </message>
    <message>
        <source>What stays put</source>
        <translation>Was bleibt</translation>
    </message>
    <message>
        <source>What the last answer is about</source>
        <translation>Wovon die letzte Antwort handelt</translation>
    </message>
    <message>
        <source>What the model stood at</source>
        <translation>Wie das Modell stand</translation>
    </message>
    <message>
        <source>What the plan rests on</source>
        <translation>Worauf der Plan beruht</translation>
    </message>
    <message>
        <source>What this object is to Heartside</source>
        <translation>Was dieses Objekt für Heartside ist</translation>
    </message>
    <message>
        <source>When it is that much out of flat</source>
        <translation>Wann sie so weit abweicht</translation>
    </message>
    <message>
        <source>Where it is kept when not in use: a year of air, or a place</source>
        <translation>Wo es steht, wenn es nicht gebraucht wird: ein Jahresgang oder ein Ort</translation>
    </message>
    <message>
        <source>Whether it meets the flatness in every month</source>
        <translation>Ob er die Ebenheit in jedem Monat erreicht</translation>
    </message>
    <message>
        <source>Width across the grain, driest</source>
        <translation>Breite quer zur Faser, am trockensten</translation>
    </message>
    <message>
        <source>Width across the grain, today</source>
        <translation>Breite quer zur Faser, heute</translation>
    </message>
    <message>
        <source>Width across the grain, wettest</source>
        <translation>Breite quer zur Faser, am feuchtesten</translation>
    </message>
    <message>
        <source>Year of air</source>
        <translation>Jahresgang</translation>
    </message>
    <message>
        <source>Year of air that the piece lives in</source>
        <translation>Jahresgang der Luft, in der das Stück steht</translation>
    </message>
</context>
<context>
    <name>Heartside</name>
    <message>
        <source> (inferred)</source>
        <translation> (abgeleitet)</translation>
    </message>
    <message>
        <source> on {count} boards</source>
        <translation> an {count} Brettern</translation>
    </message>
    <message>
        <source>(different)</source>
        <translation>(verschieden)</translation>
    </message>
    <message>
        <source>, no wood of that name</source>
        <translation>, kein Holz dieses Namens</translation>
    </message>
    <message>
        <source>, tells nothing of the wood</source>
        <translation>, sagt nichts über das Holz</translation>
    </message>
    <message>
        <source>1 board</source>
        <translation>1 Brett</translation>
    </message>
    <message>
        <source>1 more label: zoom in to read</source>
        <translation>1 weiteres Schild: zum Lesen heranholen</translation>
    </message>
    <message>
        <source>; no wood of that name is known</source>
        <translation>; kein Holz dieses Namens ist bekannt</translation>
    </message>
    <message>
        <source>A disc: it holds the top within your wish; a square: it does not</source>
        <translation>Scheibe: hält die Platte so eben wie gewünscht; Quadrat: hält sie nicht</translation>
    </message>
    <message>
        <source>A file of that name is there</source>
        <translation>Eine Datei dieses Namens gibt es schon</translation>
    </message>
    <message>
        <source>A file of twelve months or of a logger</source>
        <translation>Eine Datei mit zwölf Monaten oder von einem Datenlogger</translation>
    </message>
    <message>
        <source>Accept</source>
        <translation>Annehmen</translation>
    </message>
    <message>
        <source>Accepted for {count} boards</source>
        <translation>Für {count} Bretter angenommen</translation>
    </message>
    <message>
        <source>Accepted for {count} boards; “Write the tags” writes it.</source>
        <translation>Für {count} Bretter angenommen; „Angaben schreiben“ schreibt es.</translation>
    </message>
    <message>
        <source>Air of the shop</source>
        <translation>Luft der Werkstatt</translation>
    </message>
    <message>
        <source>Air that a piece lives in until its own year of air is chosen</source>
        <translation>Luft, in der ein Stück steht, solange kein eigener Jahresgang gewählt ist</translation>
    </message>
    <message>
        <source>Air {temperature:.0f} °C, {humidity:.0f} % RH</source>
        <translation>Luft {temperature:.0f} °C, {humidity:.0f} % rel. Feuchte</translation>
    </message>
    <message>
        <source>All joints</source>
        <translation>Alle Verbindungen</translation>
    </message>
    <message>
        <source>All joints, and parts across a gap</source>
        <translation>Alle, auch Teile über eine Fuge hinweg</translation>
    </message>
    <message>
        <source>All of them</source>
        <translation>Alle davon</translation>
    </message>
    <message>
        <source>Allow for the doubt</source>
        <translation>Unsicherheit einrechnen</translation>
    </message>
    <message>
        <source>Angle of the rings to the face on the end: 0 flat-sawn, 90 quarter-sawn</source>
        <translation>Winkel der Jahrringe zur Fläche am Hirnende: 0 liegende, 90 stehende Jahrringe</translation>
    </message>
    <message>
        <source>Annotated</source>
        <translation>Beschriftet</translation>
    </message>
    <message>
        <source>Answer removed</source>
        <translation>Antwort entfernt</translation>
    </message>
    <message>
        <source>As drawn</source>
        <translation>Wie gezeichnet</translation>
    </message>
    <message>
        <source>As text</source>
        <translation>Als Text</translation>
    </message>
    <message>
        <source>At most {size} out of flat over the year.</source>
        <translation>Über das Jahr höchstens {size} uneben.</translation>
    </message>
    <message>
        <source>Best-looking</source>
        <translation>Schönste</translation>
    </message>
    <message>
        <source>Better face</source>
        <translation>Bessere Seite</translation>
    </message>
    <message>
        <source>Better faces up: {count} of {all}.</source>
        <translation>Bessere Seiten oben: {count} von {all}.</translation>
    </message>
    <message>
        <source>Board</source>
        <translation>Brett</translation>
    </message>
    <message>
        <source>Boards and findings</source>
        <translation>Bretter und Befunde</translation>
    </message>
    <message>
        <source>Boards are shown as they would lie if nothing held them flat.</source>
        <translation>Die Bretter sind so gezeigt, wie sie lägen, wenn nichts sie eben hielte.</translation>
    </message>
    <message>
        <source>Boards may change places</source>
        <translation>Bretter dürfen die Plätze tauschen</translation>
    </message>
    <message>
        <source>Boards of the panel</source>
        <translation>Bretter der Platte</translation>
    </message>
    <message>
        <source>Boards of which something is still to be said</source>
        <translation>Bretter, von denen noch etwas zu sagen ist</translation>
    </message>
    <message>
        <source>Buttons</source>
        <translation>Nutklötze</translation>
    </message>
    <message>
        <source>Cancel</source>
        <translation>Abbrechen</translation>
    </message>
    <message>
        <source>Cancelled, nothing was changed</source>
        <translation>Abgebrochen, nichts wurde geändert</translation>
    </message>
    <message>
        <source>Centre of the tree from the middle of the section, across the width</source>
        <translation>Mitte des Baums von der Mitte des Querschnitts aus, quer über die Breite</translation>
    </message>
    <message>
        <source>Choose a joint to see it in the view.</source>
        <translation>Eine Verbindung wählen, um sie in der Ansicht zu sehen.</translation>
    </message>
    <message>
        <source>Choose a year first.</source>
        <translation>Erst einen Jahresgang wählen.</translation>
    </message>
    <message>
        <source>Choose the file</source>
        <translation>Datei wählen</translation>
    </message>
    <message>
        <source>Choosing joints selects their parts, marks where they meet and brings them close. Several can be chosen and said at once.</source>
        <translation>Gewählte Verbindungen wählen ihre Teile aus, zeigen, wo sie sich treffen, und holen sie heran. Mehrere können zugleich gewählt und angegeben werden.</translation>
    </message>
    <message>
        <source>Click the board to copy from.</source>
        <translation>Klicken Sie das Brett an, von dem kopiert wird.</translation>
    </message>
    <message>
        <source>Click the face that was nearer the centre of the tree</source>
        <translation>Die Fläche anklicken, die der Mitte des Baums näher war</translation>
    </message>
    <message>
        <source>Click the face that was nearer the centre of the tree.</source>
        <translation>Klicken Sie die Fläche an, die der Mitte des Baums näher war.</translation>
    </message>
    <message>
        <source>Click the one board to copy from, alone.</source>
        <translation>Klicken Sie allein das eine Brett an, von dem kopiert wird.</translation>
    </message>
    <message>
        <source>Click the part in the view, where it is held. Esc leaves it.</source>
        <translation>Das Teil in der Ansicht dort anklicken, wo es gehalten ist. Esc bricht ab.</translation>
    </message>
    <message>
        <source>Click three points on one ring, well apart, on the end of the board.</source>
        <translation>Klicken Sie drei weit auseinander liegende Punkte auf einem Jahrring am Hirnende an.</translation>
    </message>
    <message>
        <source>Click where the centre of the tree was at the end that the arrow points to.</source>
        <translation>Klicken Sie an, wo die Mitte des Baums am Ende war, auf das der Pfeil zeigt.</translation>
    </message>
    <message>
        <source>Click where the centre of the tree was, on or beyond the end; drag it.</source>
        <translation>Klicken Sie an, wo die Mitte des Baums war, auf dem Hirnende oder daneben; ziehen Sie sie.</translation>
    </message>
    <message>
        <source>Clips</source>
        <translation>Klammern</translation>
    </message>
    <message>
        <source>Close the open panel first, then see the year again.</source>
        <translation>Erst das offene Fenster schließen, dann das Jahr noch einmal ansehen.</translation>
    </message>
    <message>
        <source>Close the open panel first, then try again.</source>
        <translation>Erst das offene Fenster schließen, dann noch einmal.</translation>
    </message>
    <message>
        <source>Colours by limit</source>
        <translation>Farben nach Grenze</translation>
    </message>
    <message>
        <source>Colours, figures and findings are always those of the true movement</source>
        <translation>Farben, Zahlen und Befunde gelten immer der wahren Bewegung</translation>
    </message>
    <message>
        <source>Column of the date</source>
        <translation>Spalte des Datums</translation>
    </message>
    <message>
        <source>Column of the humidity</source>
        <translation>Spalte der Feuchte</translation>
    </message>
    <message>
        <source>Column of the temperature</source>
        <translation>Spalte der Temperatur</translation>
    </message>
    <message>
        <source>Column of the time</source>
        <translation>Spalte der Uhrzeit</translation>
    </message>
    <message>
        <source>Confirm as it is</source>
        <translation>So bestätigen</translation>
    </message>
    <message>
        <source>Copied</source>
        <translation>Kopiert</translation>
    </message>
    <message>
        <source>Copy as CSV</source>
        <translation>Als CSV kopieren</translation>
    </message>
    <message>
        <source>Copy as text</source>
        <translation>Als Text kopieren</translation>
    </message>
    <message>
        <source>Copy from another board</source>
        <translation>Von einem anderen Brett kopieren</translation>
    </message>
    <message>
        <source>Copy the wood</source>
        <translation>Holz kopieren</translation>
    </message>
    <message>
        <source>Copy wood</source>
        <translation>Holz kopieren</translation>
    </message>
    <message>
        <source>Cup</source>
        <translation>Wölbung</translation>
    </message>
    <message>
        <source>Cut</source>
        <translation>Einschnitt</translation>
    </message>
    <message>
        <source>Cut and ring angle</source>
        <translation>Einschnitt und Ringwinkel</translation>
    </message>
    <message>
        <source>Dates are written</source>
        <translation>Das Datum steht als</translation>
    </message>
    <message>
        <source>Day and air</source>
        <translation>Tag und Luft</translation>
    </message>
    <message>
        <source>Day of the year</source>
        <translation>Tag des Jahres</translation>
    </message>
    <message>
        <source>Day of the year; Page Up and Page Down go by a month</source>
        <translation>Tag des Jahres; Bild auf und Bild ab gehen um einen Monat</translation>
    </message>
    <message>
        <source>Drawing page written</source>
        <translation>Zeichnungsblatt geschrieben</translation>
    </message>
    <message>
        <source>Driest</source>
        <translation>Trocken</translation>
    </message>
    <message>
        <source>Driest and wettest</source>
        <translation>Trockenste und feuchteste Zeit</translation>
    </message>
    <message>
        <source>End for end</source>
        <translation>Enden tauschen</translation>
    </message>
    <message>
        <source>Every board with its width today, in its driest and in its wettest month. Choosing rows selects boards in the model; a double click brings one close.</source>
        <translation>Jedes Brett mit seiner Breite heute, im trockensten und im feuchtesten Monat. Gewählte Zeilen wählen die Bretter im Modell; ein Doppelklick holt eines heran.</translation>
    </message>
    <message>
        <source>Far pith across</source>
        <translation>Fernes Mark quer</translation>
    </message>
    <message>
        <source>Far pith through</source>
        <translation>Fernes Mark durch</translation>
    </message>
    <message>
        <source>Figure</source>
        <translation>Wuchs</translation>
    </message>
    <message>
        <source>Figure-eights</source>
        <translation>Achter</translation>
    </message>
    <message>
        <source>File</source>
        <translation>Datei</translation>
    </message>
    <message>
        <source>Finish</source>
        <translation>Oberfläche</translation>
    </message>
    <message>
        <source>Fixed line</source>
        <translation>Feste Linie</translation>
    </message>
    <message>
        <source>Flat within</source>
        <translation>Eben bis auf</translation>
    </message>
    <message>
        <source>Flatness of a top</source>
        <translation>Ebenheit einer Platte</translation>
    </message>
    <message>
        <source>Flattest</source>
        <translation>Flachste</translation>
    </message>
    <message>
        <source>Flip the arrow</source>
        <translation>Pfeil wenden</translation>
    </message>
    <message>
        <source>For</source>
        <translation>Für</translation>
    </message>
    <message>
        <source>For best-looking and flattest: try other orders too</source>
        <translation>Für schönste und flachste auch andere Reihenfolgen versuchen</translation>
    </message>
    <message>
        <source>For best-looking and flattest: try turning boards end for end too</source>
        <translation>Für schönste und flachste auch vertauschte Enden versuchen</translation>
    </message>
    <message>
        <source>Forget the board to copy from, and choose it anew</source>
        <translation>Das Brett vergessen, von dem kopiert wird, und es neu wählen</translation>
    </message>
    <message>
        <source>Forget the line</source>
        <translation>Linie vergessen</translation>
    </message>
    <message>
        <source>Forget the three points</source>
        <translation>Die drei Punkte vergessen</translation>
    </message>
    <message>
        <source>Forget what was said</source>
        <translation>Angabe vergessen</translation>
    </message>
    <message>
        <source>Form</source>
        <translation>Form</translation>
    </message>
    <message>
        <source>Frame</source>
        <translation>Gestell</translation>
    </message>
    <message>
        <source>From a file of months or a logger …</source>
        <translation>Aus Monats- oder Loggerdatei …</translation>
    </message>
    <message>
        <source>From the end of the slot to the middle of the screw, as planned</source>
        <translation>Vom Ende des Langlochs bis zur Mitte der Schraube, wie geplant</translation>
    </message>
    <message>
        <source>From: {board}</source>
        <translation>Von: {board}</translation>
    </message>
    <message>
        <source>Gap</source>
        <translation>Fuge</translation>
    </message>
    <message>
        <source>Gaps hold where the wood is drier or damper than it was read, as far as likely</source>
        <translation>Fugen reichen auch, wo das Holz trockener oder feuchter ist als gemessen, soweit es wahrscheinlich ist</translation>
    </message>
    <message>
        <source>Gaps to set on {date}</source>
        <translation>Fugen, zu lassen am {date}</translation>
    </message>
    <message>
        <source>Gaps today</source>
        <translation>Fugen heute</translation>
    </message>
    <message>
        <source>Gaps, grooves and joints that use half of their room or more, as listed below</source>
        <translation>Fugen, Nuten und Verbindungen, die die Hälfte ihres Spielraums oder mehr brauchen, wie unten aufgeführt</translation>
    </message>
    <message>
        <source>General</source>
        <translation>Allgemein</translation>
    </message>
    <message>
        <source>Go back to what is inferred from the drawing</source>
        <translation>Zurück zu dem, was aus der Zeichnung abgeleitet wird</translation>
    </message>
    <message>
        <source>Grain</source>
        <translation>Faser</translation>
    </message>
    <message>
        <source>Grain along</source>
        <translation>Faser entlang</translation>
    </message>
    <message>
        <source>Grain out of the ordinary, which widens the spread</source>
        <translation>Ungewöhnlicher Faserverlauf, der die Streuung weitet</translation>
    </message>
    <message>
        <source>Grain, show face, pith</source>
        <translation>Faser, Sichtseite, Mark</translation>
    </message>
    <message>
        <source>HTML opens in every browser and prints; PDF keeps its pages</source>
        <translation>HTML öffnet sich in jedem Browser und lässt sich drucken; PDF behält seine Seiten</translation>
    </message>
    <message>
        <source>Hardware placed. Movement anchors are not lifting points</source>
        <translation>Befestigung gesetzt. Sie ist kein Anschlagpunkt zum Heben</translation>
    </message>
    <message>
        <source>Hardware placed; not everything can be cut: see Not Cut in its properties</source>
        <translation>Befestigung gesetzt; nicht alles lässt sich schneiden: siehe Not Cut in ihren Eigenschaften</translation>
    </message>
    <message>
        <source>Hardware taken out</source>
        <translation>Befestigung entfernt</translation>
    </message>
    <message>
        <source>Heart face</source>
        <translation>Herzseite</translation>
    </message>
    <message>
        <source>Heart side</source>
        <translation>Kernseite</translation>
    </message>
    <message>
        <source>Heartside report</source>
        <translation>Heartside-Bericht</translation>
    </message>
    <message>
        <source>Held by nothing it would leave flat by {mm}</source>
        <translation>Ohne Halt wiche sie um {mm} von der Ebene ab</translation>
    </message>
    <message>
        <source>Held on a line across its width</source>
        <translation>Gehalten auf einer Linie in der Breite</translation>
    </message>
    <message>
        <source>Hint: the material card says “{card}”</source>
        <translation>Hinweis: die Materialkarte sagt „{card}“</translation>
    </message>
    <message>
        <source>Hints of the model</source>
        <translation>Hinweise des Modells</translation>
    </message>
    <message>
        <source>Hints, not facts: tick those that are right, the others count for nothing.</source>
        <translation>Hinweise, keine Tatsachen: Haken Sie an, was stimmt; das Übrige zählt nicht.</translation>
    </message>
    <message>
        <source>Hold the top flat</source>
        <translation>Platte eben halten</translation>
    </message>
    <message>
        <source>How close to its limit</source>
        <translation>Wie nah an der Grenze</translation>
    </message>
    <message>
        <source>How it lies in the tree</source>
        <translation>Lage im Stamm</translation>
    </message>
    <message>
        <source>How many fasteners</source>
        <translation>Anzahl der Befestigungen</translation>
    </message>
    <message>
        <source>How many pieces more than the plan with the fewest</source>
        <translation>Wie viele Teile mehr als der Plan mit den wenigsten</translation>
    </message>
    <message>
        <source>How much better the show face looks than the back, on your own scale</source>
        <translation>Wie viel besser die Sichtseite aussieht als die Rückseite, auf Ihrer eigenen Skala</translation>
    </message>
    <message>
        <source>How much of its room a part uses before it jams, splits or shows</source>
        <translation>Wie viel von seinem Spielraum ein Teil braucht, ehe es klemmt, reißt oder auffällt</translation>
    </message>
    <message>
        <source>How solid wood moves with the seasons, and how to build so that it stays flat</source>
        <translation>Wie Massivholz mit den Jahreszeiten arbeitet, und wie man baut, damit es eben bleibt</translation>
    </message>
    <message>
        <source>How the board was sawn, where the ring angle was not measured</source>
        <translation>Wie das Brett eingeschnitten wurde, wo der Ringwinkel nicht gemessen ist</translation>
    </message>
    <message>
        <source>In its slot</source>
        <translation>Im Langloch</translation>
    </message>
    <message>
        <source>In the 3D view</source>
        <translation>In der 3D-Ansicht</translation>
    </message>
    <message>
        <source>In the plane {radial:.3f} % for each 1 % of moisture.</source>
        <translation>In der Ebene {radial:.3f} % je 1 % Holzfeuchte.</translation>
    </message>
    <message>
        <source>Inches come as fractions to 1/64, rounded the safe way for gaps</source>
        <translation>Zoll als Brüche bis 1/64, bei Fugen zur sicheren Seite gerundet</translation>
    </message>
    <message>
        <source>It bears up to {force:.1f} kN ({way}), before the wood gives way.</source>
        <translation>Sie trägt bis zu {force:.1f} kN ({way}), bevor das Holz nachgibt.</translation>
    </message>
    <message>
        <source>It cannot be worked out before this is said:</source>
        <translation>Vorher muss noch gesagt werden:</translation>
    </message>
    <message>
        <source>It does not hold the top</source>
        <translation>Sie hält die Platte nicht</translation>
    </message>
    <message>
        <source>It has no rings.</source>
        <translation>Es hat keine Jahrringe.</translation>
    </message>
    <message>
        <source>It holds the top flat in every month</source>
        <translation>Sie hält die Platte in jedem Monat eben</translation>
    </message>
    <message>
        <source>It says nothing of its wood yet.</source>
        <translation>Es sagt noch nichts über sein Holz.</translation>
    </message>
    <message>
        <source>Job</source>
        <translation>Auftrag</translation>
    </message>
    <message>
        <source>Joint</source>
        <translation>Verbindung</translation>
    </message>
    <message>
        <source>Joints</source>
        <translation>Verbindungen</translation>
    </message>
    <message>
        <source>Joints of which nothing is known</source>
        <translation>Verbindungen, die nicht bekannt sind</translation>
    </message>
    <message>
        <source>Joints that decide something</source>
        <translation>Verbindungen, auf die es ankommt</translation>
    </message>
    <message>
        <source>Joints that were confirmed</source>
        <translation>Bestätigte Verbindungen</translation>
    </message>
    <message>
        <source>Keep as the day of the study</source>
        <translation>Als Tag der Studie behalten</translation>
    </message>
    <message>
        <source>Keep this kind in the model for all chosen joints</source>
        <translation>Diese Art für alle gewählten Verbindungen im Modell behalten</translation>
    </message>
    <message>
        <source>Kept in</source>
        <translation>Aufbewahrt in</translation>
    </message>
    <message>
        <source>Kept: the study is worked out for today</source>
        <translation>Behalten: Die Studie wird für heute berechnet</translation>
    </message>
    <message>
        <source>Kinds of home and places. The figures are the moisture that its air brings wood to, in the driest and the wettest month.</source>
        <translation>Arten von Räumen und Orte. Die Zahlen sind die Holzfeuchte, zu der ihre Luft das Holz im trockensten und im feuchtesten Monat bringt.</translation>
    </message>
    <message>
        <source>Labels stopped following the view ({error})</source>
        <translation>Die Schilder folgen der Ansicht nicht mehr ({error})</translation>
    </message>
    <message>
        <source>Lay the boards as they are drawn</source>
        <translation>Die Bretter legen, wie sie gezeichnet sind</translation>
    </message>
    <message>
        <source>Leave out the gaps inside frames and carcases</source>
        <translation>Die Fugen in Rahmen und Korpussen weglassen</translation>
    </message>
    <message>
        <source>Likely between {low} and {high}; most of that is: {what}</source>
        <translation>Wahrscheinlich zwischen {low} und {high}; das meiste davon kommt von: {what}</translation>
    </message>
    <message>
        <source>Look at the end</source>
        <translation>Ende ansehen</translation>
    </message>
    <message>
        <source>Look squarely at an end of this board alone; press again to go back</source>
        <translation>Allein auf ein Hirnende dieses Bretts blicken; nochmals drücken, um zurückzukehren</translation>
    </message>
    <message>
        <source>Looking for the best ways to lay the boards</source>
        <translation>Sucht, wie die Bretter am besten liegen</translation>
    </message>
    <message>
        <source>Looks better</source>
        <translation>Schöner um</translation>
    </message>
    <message>
        <source>Lot</source>
        <translation>Charge</translation>
    </message>
    <message>
        <source>Make an object of each of its solids, as an undo step of its own</source>
        <translation>Aus jedem seiner Körper ein Objekt machen, als eigener Schritt zum Rückgängigmachen</translation>
    </message>
    <message>
        <source>Making the movement sheet</source>
        <translation>Das Bewegungsblatt wird gemacht</translation>
    </message>
    <message>
        <source>Mark the better face of each board: choose by looks.</source>
        <translation>Die bessere Seite jedes Bretts angeben: nach dem Aussehen wählen.</translation>
    </message>
    <message>
        <source>Material</source>
        <translation>Werkstoff</translation>
    </message>
    <message>
        <source>Meter</source>
        <translation>Messgerät</translation>
    </message>
    <message>
        <source>Mind</source>
        <translation>Beachten</translation>
    </message>
    <message>
        <source>Moisture content</source>
        <translation>Holzfeuchte</translation>
    </message>
    <message>
        <source>Moisture content when it was fitted, where it differs</source>
        <translation>Holzfeuchte beim Einpassen, wo sie abweicht</translation>
    </message>
    <message>
        <source>Moisture content when it was glued, flattened and fitted</source>
        <translation>Holzfeuchte beim Leimen, Abrichten und Einpassen</translation>
    </message>
    <message>
        <source>Moisture content when it was glued, where it differs</source>
        <translation>Holzfeuchte beim Leimen, wo sie abweicht</translation>
    </message>
    <message>
        <source>Moisture content when it was last flattened, where it differs</source>
        <translation>Holzfeuchte beim letzten Abrichten, wo sie abweicht</translation>
    </message>
    <message>
        <source>Moisture does not move it.</source>
        <translation>Feuchte bewegt ihn nicht.</translation>
    </message>
    <message>
        <source>Moisture meter</source>
        <translation>Feuchtemessgerät</translation>
    </message>
    <message>
        <source>Months not logged come from</source>
        <translation>Fehlende Monate kommen von</translation>
    </message>
    <message>
        <source>More</source>
        <translation>Mehr</translation>
    </message>
    <message>
        <source>More: finish, figure, lot, far end …</source>
        <translation>Mehr: Oberfläche, Textur …</translation>
    </message>
    <message>
        <source>Most that the top may be out of flat in any month</source>
        <translation>Wie weit die Platte in irgendeinem Monat von der Ebene abweichen darf</translation>
    </message>
    <message>
        <source>Move left</source>
        <translation>Nach links</translation>
    </message>
    <message>
        <source>Move right</source>
        <translation>Nach rechts</translation>
    </message>
    <message>
        <source>Move the chosen board one place to the left (Shift and Left)</source>
        <translation>Das gewählte Brett einen Platz nach links legen (Umschalt und Links)</translation>
    </message>
    <message>
        <source>Move the chosen board one place to the right (Shift and Right)</source>
        <translation>Das gewählte Brett einen Platz nach rechts legen (Umschalt und Rechts)</translation>
    </message>
    <message>
        <source>Movement</source>
        <translation>Bewegung</translation>
    </message>
    <message>
        <source>Movement at true size</source>
        <translation>Bewegung in wahrer Größe</translation>
    </message>
    <message>
        <source>Movement sheet</source>
        <translation>Bewegungsblatt</translation>
    </message>
    <message>
        <source>Movement shown {factor:g} times</source>
        <translation>Bewegung {factor:g}-fach gezeigt</translation>
    </message>
    <message>
        <source>Moves</source>
        <translation>Bewegung</translation>
    </message>
    <message>
        <source>No board is selected</source>
        <translation>Kein Brett ist ausgewählt</translation>
    </message>
    <message>
        <source>No boards lie edge to edge in this document</source>
        <translation>In diesem Dokument liegen keine Bretter Kante an Kante</translation>
    </message>
    <message>
        <source>No gap of this piece is a fit that moves.</source>
        <translation>Keine Fuge dieses Möbels ist eine Passung, die sich bewegt.</translation>
    </message>
    <message>
        <source>No material card and no assembly joint hints at anything new.</source>
        <translation>Keine Materialkarte und keine Verbindung einer Baugruppe weist auf etwas Neues hin.</translation>
    </message>
    <message>
        <source>No part of this document is shown: {count} are hidden</source>
        <translation>Kein Teil dieses Dokuments ist zu sehen: {count} sind ausgeblendet</translation>
    </message>
    <message>
        <source>No two parts touch in this document.</source>
        <translation>In diesem Dokument berühren sich keine Teile.</translation>
    </message>
    <message>
        <source>No way that was found stays flatter.</source>
        <translation>Flacher bleibt keine gefundene Lage.</translation>
    </message>
    <message>
        <source>No.</source>
        <translation>Nr.</translation>
    </message>
    <message>
        <source>Not known: {reason}</source>
        <translation>Nicht bekannt: {reason}</translation>
    </message>
    <message>
        <source>Not said: {facts}</source>
        <translation>Nicht gesagt: {facts}</translation>
    </message>
    <message>
        <source>Not shown, the host gives no mesh of them: {names}</source>
        <translation>Nicht gezeigt, da es kein Netz davon gibt: {names}</translation>
    </message>
    <message>
        <source>Nothing found that would break, jam or show.</source>
        <translation>Nichts gefunden, das bricht, klemmt oder auffällt.</translation>
    </message>
    <message>
        <source>Nothing is left to be told.</source>
        <translation>Es ist nichts mehr zu sagen.</translation>
    </message>
    <message>
        <source>Nothing is said of the selected boards that could be taken off</source>
        <translation>Von den gewählten Brettern ist nichts gesagt, was sich wegnehmen ließe</translation>
    </message>
    <message>
        <source>Nothing is selected. Click boards in the view or the tree.</source>
        <translation>Nichts ist ausgewählt. Bretter in der Ansicht oder im Baum anklicken.</translation>
    </message>
    <message>
        <source>Nothing uses half of its room.</source>
        <translation>Nichts braucht die Hälfte seines Spielraums.</translation>
    </message>
    <message>
        <source>Nothing was inferred here that could be accepted</source>
        <translation>Hier wurde nichts abgeleitet, was angenommen werden könnte</translation>
    </message>
    <message>
        <source>Now click the boards to copy to.</source>
        <translation>Klicken Sie nun die Bretter an, auf die kopiert wird.</translation>
    </message>
    <message>
        <source>Numbers where tight</source>
        <translation>Zahlen, wo es eng ist</translation>
    </message>
    <message>
        <source>Of the air in which the wood has lain</source>
        <translation>Der Luft, in der das Holz gelegen hat</translation>
    </message>
    <message>
        <source>One object of {count} solids: take it apart</source>
        <translation>Ein Objekt aus {count} Körpern: zerlegen</translation>
    </message>
    <message>
        <source>Only for boards out of one log that are drawn the same way</source>
        <translation>Nur für Bretter aus einem Stamm, die gleich gezeichnet sind</translation>
    </message>
    <message>
        <source>Only round doors and drawers</source>
        <translation>Nur um Türen und Schubladen</translation>
    </message>
    <message>
        <source>Only the piece</source>
        <translation>Nur das Stück</translation>
    </message>
    <message>
        <source>Only where they were sawn alike</source>
        <translation>Nur wo sie gleich eingeschnitten wurden</translation>
    </message>
    <message>
        <source>Other axis</source>
        <translation>Andere Achse</translation>
    </message>
    <message>
        <source>Out of flat</source>
        <translation>Uneben um</translation>
    </message>
    <message>
        <source>Outlines</source>
        <translation>Umrisse</translation>
    </message>
    <message>
        <source>Outlines of the piece on its driest and its wettest day</source>
        <translation>Umrisse des Stücks am trockensten und am feuchtesten Tag</translation>
    </message>
    <message>
        <source>Paper</source>
        <translation>Papier</translation>
    </message>
    <message>
        <source>Papers taken out</source>
        <translation>Blätter herausgenommen</translation>
    </message>
    <message>
        <source>Part or kind of joint</source>
        <translation>Teil oder Art der Verbindung</translation>
    </message>
    <message>
        <source>Pins read low in cold wood; a pad reads by density</source>
        <translation>Nadeln zeigen in kaltem Holz zu wenig; eine Platte misst nach der Dichte</translation>
    </message>
    <message>
        <source>Pith</source>
        <translation>Mark</translation>
    </message>
    <message>
        <source>Pith across</source>
        <translation>Mark quer</translation>
    </message>
    <message>
        <source>Pith through</source>
        <translation>Mark in der Dicke</translation>
    </message>
    <message>
        <source>Pith, far end</source>
        <translation>Fernes Mark</translation>
    </message>
    <message>
        <source>Place</source>
        <translation>Setzen</translation>
    </message>
    <message>
        <source>Place {place}: {name}</source>
        <translation>Platz {place}: {name}</translation>
    </message>
    <message>
        <source>Plain screws</source>
        <translation>Schrauben ohne Langloch</translation>
    </message>
    <message>
        <source>Plan</source>
        <translation>Plan</translation>
    </message>
    <message>
        <source>Play</source>
        <translation>Los</translation>
    </message>
    <message>
        <source>Point at the line …</source>
        <translation>Linie zeigen …</translation>
    </message>
    <message>
        <source>Point at the pith on an end, or beyond its edge, and drag it</source>
        <translation>Auf das Mark am Hirnende oder jenseits seines Rands zeigen und es ziehen</translation>
    </message>
    <message>
        <source>Point at the pith on the end that the arrow points to, where it differs</source>
        <translation>Auf das Mark am Ende zeigen, auf das der Pfeil weist, wo es abweicht</translation>
    </message>
    <message>
        <source>Point at three places along one ring on an end</source>
        <translation>Auf drei Stellen eines Jahrrings am Hirnende zeigen</translation>
    </message>
    <message>
        <source>Point the grain the other way; the rings stay where they are</source>
        <translation>Die Faser andersherum richten; die Jahrringe bleiben, wo sie sind</translation>
    </message>
    <message>
        <source>Points to add, from the table of the meter; 0 where it is set to the species. Without it the doubt is larger.</source>
        <translation>Punkte, die dazukommen, aus der Tabelle des Messgeräts; 0, wo es auf die Holzart gestellt ist. Ohne sie ist die Unsicherheit größer.</translation>
    </message>
    <message>
        <source>Pull / may</source>
        <translation>Zug / zulässig</translation>
    </message>
    <message>
        <source>Put the tables on the clipboard, for a spreadsheet</source>
        <translation>Die Tabellen in die Zwischenablage, für eine Tabellenkalkulation</translation>
    </message>
    <message>
        <source>Put the tables on the clipboard, in columns</source>
        <translation>Die Tabellen in die Zwischenablage, in Spalten</translation>
    </message>
    <message>
        <source>Put the whole report on the clipboard</source>
        <translation>Den ganzen Bericht in die Zwischenablage legen</translation>
    </message>
    <message>
        <source>Radial {radial:.3f} %, tangential {tangential:.3f} % for each 1 % of moisture.</source>
        <translation>Radial {radial:.3f} %, tangential {tangential:.3f} % je 1 % Holzfeuchte.</translation>
    </message>
    <message>
        <source>Radius of the ring at the middle, beside ring angle or cut</source>
        <translation>Radius des Jahrrings in der Mitte, neben Ringwinkel oder Einschnitt</translation>
    </message>
    <message>
        <source>Rails that may take fasteners; or select them in the view</source>
        <translation>Zargen, die Befestigungen aufnehmen dürfen; oder in der Ansicht auswählen</translation>
    </message>
    <message>
        <source>Read the model as it is now and work it out again</source>
        <translation>Das Modell lesen, wie es jetzt ist, und neu berechnen</translation>
    </message>
    <message>
        <source>Readings, %</source>
        <translation>Werte, %</translation>
    </message>
    <message>
        <source>Refused</source>
        <translation>Verworfen</translation>
    </message>
    <message>
        <source>Relative humidity</source>
        <translation>Relative Feuchte</translation>
    </message>
    <message>
        <source>Replace the file that is there</source>
        <translation>Die vorhandene Datei ersetzen</translation>
    </message>
    <message>
        <source>Ring angle</source>
        <translation>Ringwinkel</translation>
    </message>
    <message>
        <source>Ring angle {degrees:.0f}° in the middle</source>
        <translation>Ringwinkel {degrees:.0f}° in der Mitte</translation>
    </message>
    <message>
        <source>Ring radius</source>
        <translation>Ringradius</translation>
    </message>
    <message>
        <source>Rings</source>
        <translation>Jahrringe</translation>
    </message>
    <message>
        <source>Rings and grain</source>
        <translation>Jahrringe und Faser</translation>
    </message>
    <message>
        <source>Rings not known yet.</source>
        <translation>Jahrringe noch nicht bekannt.</translation>
    </message>
    <message>
        <source>Rings on the ends, an arrow along the grain; dashed where not said but inferred</source>
        <translation>Jahrringe auf dem Hirnholz, ein Pfeil längs der Faser; gestrichelt, wo nicht gesagt, sondern abgeleitet</translation>
    </message>
    <message>
        <source>Run the grain along the next of the object's own axes</source>
        <translation>Die Faser entlang der nächsten eigenen Achse des Objekts führen</translation>
    </message>
    <message>
        <source>Said of {count} joints</source>
        <translation>Von {count} Verbindungen angegeben</translation>
    </message>
    <message>
        <source>Say it yourself: it is written with the other tags</source>
        <translation>Es selbst sagen: Es wird mit den anderen Angaben geschrieben</translation>
    </message>
    <message>
        <source>Say so</source>
        <translation>So angeben</translation>
    </message>
    <message>
        <source>Say the wood of every place anew: rings, heart side, looks. No solid is moved; one undo step</source>
        <translation>Das Holz jedes Platzes neu angeben: Jahrringe, Kernseite, Aussehen. Kein Körper wird bewegt; ein Schritt zum Rückgängigmachen</translation>
    </message>
    <message>
        <source>Schedule written</source>
        <translation>Stückliste geschrieben</translation>
    </message>
    <message>
        <source>Screw</source>
        <translation>Schraube</translation>
    </message>
    <message>
        <source>Search: home, office, a city …</source>
        <translation>Suche: beheizt, Büro, Stadt …</translation>
    </message>
    <message>
        <source>Search: oak, walnut, Fagus, plywood …</source>
        <translation>Suche: oak, walnut, Fagus, plywood …</translation>
    </message>
    <message>
        <source>Section</source>
        <translation>Schnitt</translation>
    </message>
    <message>
        <source>Select every board of which something is still to be said</source>
        <translation>Jedes Brett auswählen, von dem noch etwas zu sagen ist</translation>
    </message>
    <message>
        <source>Set</source>
        <translation>Lassen</translation>
    </message>
    <message>
        <source>Show a label at every board after annotating</source>
        <translation>Nach dem Beschriften an jedem Brett ein Schild zeigen</translation>
    </message>
    <message>
        <source>Show face</source>
        <translation>Sichtseite</translation>
    </message>
    <message>
        <source>Show it in the view</source>
        <translation>In der Ansicht zeigen</translation>
    </message>
    <message>
        <source>Show only what has these beginnings of words</source>
        <translation>Nur zeigen, was diese Wortanfänge hat</translation>
    </message>
    <message>
        <source>Slope of spiral grain, rise over length: the board twists</source>
        <translation>Neigung des Drehwuchses, Anstieg durch Länge: das Brett verdreht sich</translation>
    </message>
    <message>
        <source>Slots cut in {count} parts</source>
        <translation>Langlöcher in {count} Teilen geschnitten</translation>
    </message>
    <message>
        <source>Slotted screws</source>
        <translation>Langlöcher</translation>
    </message>
    <message>
        <source>Slotted steel</source>
        <translation>Stahl, Langlöcher</translation>
    </message>
    <message>
        <source>Species correction</source>
        <translation>Korrektur der Holzart</translation>
    </message>
    <message>
        <source>Species, finish, moistures, lot</source>
        <translation>Art, Oberfläche, Feuchte, Charge</translation>
    </message>
    <message>
        <source>Spiral slope</source>
        <translation>Drehwuchs</translation>
    </message>
    <message>
        <source>Stands in</source>
        <translation>Sie steht in</translation>
    </message>
    <message>
        <source>Stays put</source>
        <translation>Bleibt stehen</translation>
    </message>
    <message>
        <source>Still to be told: {count} of {all} parts</source>
        <translation>Noch zu sagen: {count} von {all} Teilen</translation>
    </message>
    <message>
        <source>Stop</source>
        <translation>Halt</translation>
    </message>
    <message>
        <source>Stop this work and change nothing (Esc)</source>
        <translation>Diese Arbeit anhalten und nichts ändern (Esc)</translation>
    </message>
    <message>
        <source>Tables</source>
        <translation>Tabellen</translation>
    </message>
    <message>
        <source>Tag wood</source>
        <translation>Holz angeben</translation>
    </message>
    <message>
        <source>Tag wood … shows what is still to be told</source>
        <translation>„Holz angeben …“ zeigt, was noch zu sagen ist</translation>
    </message>
    <message>
        <source>Tags taken off {count}</source>
        <translation>Angaben von {count} genommen</translation>
    </message>
    <message>
        <source>Take the hints</source>
        <translation>Hinweise nehmen</translation>
    </message>
    <message>
        <source>Take this year</source>
        <translation>Dieses Jahr nehmen</translation>
    </message>
    <message>
        <source>Take {species}</source>
        <translation>{species} nehmen</translation>
    </message>
    <message>
        <source>Taken, but nobody said it</source>
        <translation>Angenommen, aber von niemandem gesagt</translation>
    </message>
    <message>
        <source>Temperature</source>
        <translation>Temperatur</translation>
    </message>
    <message>
        <source>Temperatures are in</source>
        <translation>Temperaturen in</translation>
    </message>
    <message>
        <source>That did not work: {kind}: {text}. Nothing was changed.</source>
        <translation>Das ging nicht: {kind}: {text}. Nichts wurde geändert.</translation>
    </message>
    <message>
        <source>That is no part of the piece: click one of its boards.</source>
        <translation>Das ist kein Teil des Möbels: eines seiner Bretter anklicken.</translation>
    </message>
    <message>
        <source>That is {extra} more than the flattest way: what fasteners or battens have to hold besides.</source>
        <translation>Das sind {extra} mehr als bei der flachsten Lage: So viel müssen Befestigungen oder Leisten zusätzlich halten.</translation>
    </message>
    <message>
        <source>The axis of the object that the grain runs along; the arrow shows it</source>
        <translation>Die Achse des Objekts, der die Faser folgt; der Pfeil zeigt sie</translation>
    </message>
    <message>
        <source>The better face of every board up; of those ways the flattest</source>
        <translation>Die bessere Seite jedes Bretts oben; von diesen Lagen die flachste</translation>
    </message>
    <message>
        <source>The board before it of which something is to be said</source>
        <translation>Das Brett davor, von dem etwas zu sagen ist</translation>
    </message>
    <message>
        <source>The boards from their ends, with their rings. Drag a board to another place, click it to turn it over. The pointer marks its better face. Keys: left, right, Shift with them, space bar, E, B.</source>
        <translation>Die Bretter von ihren Enden, mit ihren Jahrringen. Ein Brett an einen anderen Platz ziehen, anklicken wendet es. Der Zeiger steht auf der besseren Seite. Tasten: links, rechts, dazu Umschalt, Leertaste, E, B.</translation>
    </message>
    <message>
        <source>The chosen joints are</source>
        <translation>Die gewählten Verbindungen sind</translation>
    </message>
    <message>
        <source>The client's page says in plain words what will move and when</source>
        <translation>Die Seite für den Kunden sagt in einfachen Worten, was sich wann bewegt</translation>
    </message>
    <message>
        <source>The day, its air and the moisture of the wood in a corner of the view</source>
        <translation>Der Tag, seine Luft und die Holzfeuchte in einer Ecke der Ansicht</translation>
    </message>
    <message>
        <source>The document of this report is closed.</source>
        <translation>Das Dokument dieses Berichts ist geschlossen.</translation>
    </message>
    <message>
        <source>The face that was nearer the centre of the tree</source>
        <translation>Die Fläche, die der Mitte des Baums näher war</translation>
    </message>
    <message>
        <source>The file needs a folder</source>
        <translation>Die Datei braucht einen Ordner</translation>
    </message>
    <message>
        <source>The hardest pull on one fastener, and what it may be</source>
        <translation>Der größte Zug an einer Befestigung, und was er sein darf</translation>
    </message>
    <message>
        <source>The hardware in the model is out of date: place it anew.</source>
        <translation>Die Befestigung im Modell ist veraltet: neu setzen.</translation>
    </message>
    <message>
        <source>The line that stays where it is: an edge as an axis, or mm from the middle</source>
        <translation>Die Linie, die bleibt, wo sie ist: eine Kante als Achse, oder mm von der Mitte</translation>
    </message>
    <message>
        <source>The line that stays where it is; all else moves from it</source>
        <translation>Die Linie, die stehen bleibt; alles andere bewegt sich von ihr weg</translation>
    </message>
    <message>
        <source>The model changed meanwhile: the answer was dropped</source>
        <translation>Das Modell hat sich inzwischen geändert: Die Antwort wurde verworfen</translation>
    </message>
    <message>
        <source>The model has changed since this was worked out.</source>
        <translation>Das Modell hat sich seit der Berechnung geändert.</translation>
    </message>
    <message>
        <source>The model has changed since: work it out again.</source>
        <translation>Das Modell hat sich geändert: neu berechnen.</translation>
    </message>
    <message>
        <source>The most that a table top may be out of flat in any month</source>
        <translation>Wie weit eine Tischplatte in irgendeinem Monat von der Ebene abweichen darf</translation>
    </message>
    <message>
        <source>The next board of which something is to be said</source>
        <translation>Das nächste Brett, von dem etwas zu sagen ist</translation>
    </message>
    <message>
        <source>The parts of the chosen joints have no line of their own any more</source>
        <translation>Die Teile der gewählten Verbindungen haben keine eigene Linie mehr</translation>
    </message>
    <message>
        <source>The plans are still being worked out: a moment, please.</source>
        <translation>Die Pläne werden noch berechnet: einen Augenblick, bitte.</translation>
    </message>
    <message>
        <source>The same through the thickness, positive toward the show face</source>
        <translation>Dasselbe durch die Dicke, positiv zur Sichtseite hin</translation>
    </message>
    <message>
        <source>The selected parts are of different woods; they stay so.</source>
        <translation>Die gewählten Teile sind aus verschiedenem Holz; das bleibt so.</translation>
    </message>
    <message>
        <source>The side that is looked at: crown and hollow are told from it</source>
        <translation>Die Seite, die man sieht: Wölbung und Höhlung werden von ihr aus angegeben</translation>
    </message>
    <message>
        <source>The slots are cut, but not all of them:</source>
        <translation>Die Langlöcher sind geschnitten, aber nicht alle:</translation>
    </message>
    <message>
        <source>The study is worked out for today and this moisture from now on</source>
        <translation>Die Studie wird von nun an für heute und diese Feuchte berechnet</translation>
    </message>
    <message>
        <source>The top stays flat by itself; this keeps it in place</source>
        <translation>Die Platte bleibt von selbst eben; dies hält sie am Ort</translation>
    </message>
    <message>
        <source>The top that is to be held; or click one of its boards</source>
        <translation>Die Platte, die gehalten werden soll; oder eines ihrer Bretter anklicken</translation>
    </message>
    <message>
        <source>The two move by up to {size} against each other, most in {month}.</source>
        <translation>Die beiden bewegen sich um bis zu {size} gegeneinander, am meisten im {month}.</translation>
    </message>
    <message>
        <source>The way that stays flattest over the year, whatever it looks like</source>
        <translation>Die Lage, die über das Jahr am flachsten bleibt, wie sie auch aussieht</translation>
    </message>
    <message>
        <source>The woods are said of their new places; no solid was moved</source>
        <translation>Die Hölzer sind an ihren neuen Plätzen angegeben; kein Körper wurde bewegt</translation>
    </message>
    <message>
        <source>The worst of the year, and when</source>
        <translation>Das Schlimmste im Jahr, und wann</translation>
    </message>
    <message>
        <source>The year in the model</source>
        <translation>Das Jahr im Modell</translation>
    </message>
    <message>
        <source>Then click a part in the view where it is held across its width: an edge, a face or a spot. Elsewhere it is free to move away from there.</source>
        <translation>Danach in der Ansicht ein Teil dort anklicken, wo es in der Breite gehalten ist: eine Kante, eine Fläche oder eine Stelle. Von dort weg kann es sich überall bewegen.</translation>
    </message>
    <message>
        <source>There is no answer in this document</source>
        <translation>In diesem Dokument ist keine Antwort</translation>
    </message>
    <message>
        <source>There is no hardware in this document</source>
        <translation>In diesem Dokument ist keine Befestigung gesetzt</translation>
    </message>
    <message>
        <source>There is no plan to place.</source>
        <translation>Es gibt keinen Plan zu setzen.</translation>
    </message>
    <message>
        <source>There is no schedule and no drawing page in this document</source>
        <translation>In diesem Dokument sind keine Stückliste und kein Zeichenblatt</translation>
    </message>
    <message>
        <source>There is no solid in this document ({why})</source>
        <translation>In diesem Dokument ist kein Volumenkörper ({why})</translation>
    </message>
    <message>
        <source>There is no solid in this document; sketches and meshes are no boards yet</source>
        <translation>In diesem Dokument ist kein Volumenkörper; Skizzen und Netze sind noch keine Bretter</translation>
    </message>
    <message>
        <source>Thickness</source>
        <translation>Dicke</translation>
    </message>
    <message>
        <source>This document is empty</source>
        <translation>Dieses Dokument ist leer</translation>
    </message>
    <message>
        <source>Three on a ring</source>
        <translation>Drei am Ring</translation>
    </message>
    <message>
        <source>Tick a hint to take it; choose it to see its parts</source>
        <translation>Einen Hinweis anhaken, um ihn zu nehmen; ihn wählen, um seine Teile zu sehen</translation>
    </message>
    <message>
        <source>Tick at least one kind of fastener.</source>
        <translation>Mindestens eine Art von Befestigung ankreuzen.</translation>
    </message>
    <message>
        <source>Tick to say it</source>
        <translation>Ankreuzen, um es zu sagen</translation>
    </message>
    <message>
        <source>To {count}: {boards}</source>
        <translation>Auf {count}: {boards}</translation>
    </message>
    <message>
        <source>Today</source>
        <translation>Heute</translation>
    </message>
    <message>
        <source>Tongue</source>
        <translation>Feder</translation>
    </message>
    <message>
        <source>Too little is said of the wood of {count} of {all} parts for their gaps: “Tag wood …” steps through them.</source>
        <translation>Von {count} der {all} Teile ist für ihre Fugen zu wenig gesagt: „Holz angeben …“ führt durch sie.</translation>
    </message>
    <message>
        <source>Too little is said of the wood yet: nothing would move</source>
        <translation>Vom Holz ist noch zu wenig gesagt: Nichts würde sich bewegen</translation>
    </message>
    <message>
        <source>Top</source>
        <translation>Platte</translation>
    </message>
    <message>
        <source>Turn over</source>
        <translation>Wenden</translation>
    </message>
    <message>
        <source>Turn the chosen board end for end (E)</source>
        <translation>Die Enden des gewählten Bretts tauschen (E)</translation>
    </message>
    <message>
        <source>Turn the chosen board over, or click it (space bar)</source>
        <translation>Das gewählte Brett wenden, oder es anklicken (Leertaste)</translation>
    </message>
    <message>
        <source>Twelve lines of temperature and humidity, or what a logger wrote over a year or part of one</source>
        <translation>Zwölf Zeilen mit Temperatur und Feuchte, oder was ein Datenlogger über ein Jahr oder einen Teil davon schrieb</translation>
    </message>
    <message>
        <source>Units</source>
        <translation>Einheiten</translation>
    </message>
    <message>
        <source>Wettest</source>
        <translation>Feucht</translation>
    </message>
    <message>
        <source>What boards of one stack share</source>
        <translation>Was Bretter eines Stapels gemeinsam haben</translation>
    </message>
    <message>
        <source>What breaks, jams or shows, the gravest first, and what to do. Choosing one selects its boards in the model and brings them close.</source>
        <translation>Was bricht, klemmt oder auffällt, das Schwerste zuerst, und was zu tun ist. Wer eines wählt, wählt dessen Bretter im Modell und holt sie heran.</translation>
    </message>
    <message>
        <source>What is close to its limit</source>
        <translation>Was nah an seiner Grenze ist</translation>
    </message>
    <message>
        <source>What is on its faces, and how many coats</source>
        <translation>Was auf seinen Flächen ist, und wie viele Schichten</translation>
    </message>
    <message>
        <source>What it takes</source>
        <translation>Was es braucht</translation>
    </message>
    <message>
        <source>What stays put</source>
        <translation>Was stehen bleibt</translation>
    </message>
    <message>
        <source>What tells how moist the wood is today</source>
        <translation>Was sagt, wie feucht das Holz heute ist</translation>
    </message>
    <message>
        <source>What the chosen joints are</source>
        <translation>Was die gewählten Verbindungen sind</translation>
    </message>
    <message>
        <source>What the file leaves open</source>
        <translation>Was die Datei offenlässt</translation>
    </message>
    <message>
        <source>What the meter shows, with blanks between; several places tell more than one</source>
        <translation>Was das Messgerät zeigt, mit Leerzeichen dazwischen; mehrere Stellen sagen mehr als eine</translation>
    </message>
    <message>
        <source>What the seasons do here is not known: tag both parts.</source>
        <translation>Was die Jahreszeiten hier tun, ist nicht bekannt: bei beiden Teilen das Holz angeben.</translation>
    </message>
    <message>
        <source>What the shop has</source>
        <translation>Was die Werkstatt hat</translation>
    </message>
    <message>
        <source>What to leave today, rounded up, and the least and the most that it becomes over the year. Choosing rows selects their parts.</source>
        <translation>Was heute zu lassen ist, aufgerundet, und was daraus über das Jahr mindestens und höchstens wird. Gewählte Zeilen wählen ihre Teile aus.</translation>
    </message>
    <message>
        <source>What was inferred of the chosen joints is right</source>
        <translation>Was von den gewählten Verbindungen abgeleitet wurde, stimmt</translation>
    </message>
    <message>
        <source>What would hold it, each tried out</source>
        <translation>Was sie halten würde, je durchgerechnet</translation>
    </message>
    <message>
        <source>What you call the boards it was cut from: parts of one lot and wood learn together from what you measure later</source>
        <translation>Wie Sie die Bretter nennen, aus denen es geschnitten ist: Teile einer Charge und Holzart lernen gemeinsam aus dem, was Sie später messen</translation>
    </message>
    <message>
        <source>When built</source>
        <translation>Beim Bau</translation>
    </message>
    <message>
        <source>When fitted</source>
        <translation>Beim Einpassen</translation>
    </message>
    <message>
        <source>When flattened</source>
        <translation>Beim Abrichten</translation>
    </message>
    <message>
        <source>When glued</source>
        <translation>Beim Verleimen</translation>
    </message>
    <message>
        <source>Where a leaf is kept when not in use: a year of air, or a place</source>
        <translation>Wo eine Einlegeplatte liegt, wenn sie nicht gebraucht wird: ein Jahr Luft oder ein Ort</translation>
    </message>
    <message>
        <source>Where nothing is said, a free part moves to both sides alike.</source>
        <translation>Wo nichts angegeben ist, bewegt sich ein freies Teil nach beiden Seiten gleich.</translation>
    </message>
    <message>
        <source>Where screws sit today</source>
        <translation>Wo Schrauben heute sitzen</translation>
    </message>
    <message>
        <source>Where the document says nothing else</source>
        <translation>Wo das Dokument nichts anderes sagt</translation>
    </message>
    <message>
        <source>Where the meter corrects by itself, enter the temperature that it is set to</source>
        <translation>Wo das Messgerät selbst korrigiert, die Temperatur eintragen, auf die es gestellt ist</translation>
    </message>
    <message>
        <source>Where to write the drilling template</source>
        <translation>Wohin mit der Bohrschablone</translation>
    </message>
    <message>
        <source>Where to write the piece with its slots</source>
        <translation>Wohin mit dem Stück samt Langlöchern</translation>
    </message>
    <message>
        <source>Where to write the sheet</source>
        <translation>Wohin das Blatt geschrieben wird</translation>
    </message>
    <message>
        <source>Where will the piece stand?</source>
        <translation>Wo wird das Stück stehen?</translation>
    </message>
    <message>
        <source>Which face of the chosen board looks better: up, down, alike (B)</source>
        <translation>Welche Seite des gewählten Bretts besser aussieht: oben, unten, gleich (B)</translation>
    </message>
    <message>
        <source>Which joints are listed</source>
        <translation>Welche Verbindungen aufgeführt sind</translation>
    </message>
    <message>
        <source>Width drawn</source>
        <translation>Breite, gezeichnet</translation>
    </message>
    <message>
        <source>Without it the labels stand in the tree and can be shown one by one</source>
        <translation>Sonst stehen die Schilder im Baum und lassen sich einzeln zeigen</translation>
    </message>
    <message>
        <source>Wood at {mc:.1f} %, likely {low:.1f} to {high:.1f} %</source>
        <translation>Holz bei {mc:.1f} %, wahrscheinlich {low:.1f} bis {high:.1f} %</translation>
    </message>
    <message>
        <source>Wood copied to {count}</source>
        <translation>Holz auf {count} kopiert</translation>
    </message>
    <message>
        <source>Wood is driest in {dry} and wettest in {wet}. Basis: {basis}</source>
        <translation>Am trockensten ist Holz im {dry}, am feuchtesten im {wet}. Grundlage: {basis}</translation>
    </message>
    <message>
        <source>Wood {moisture:.1f} %, on its way to {air:.1f} %</source>
        <translation>Holz {moisture:.1f} %, auf dem Weg zu {air:.1f} %</translation>
    </message>
    <message>
        <source>Wood's temperature</source>
        <translation>Temperatur des Holzes</translation>
    </message>
    <message>
        <source>Work out again</source>
        <translation>Neu berechnen</translation>
    </message>
    <message>
        <source>Working the gaps out</source>
        <translation>Berechnet die Fugen</translation>
    </message>
    <message>
        <source>Working the gaps out …</source>
        <translation>Die Fugen werden berechnet …</translation>
    </message>
    <message>
        <source>Working the piece out</source>
        <translation>Das Stück wird berechnet</translation>
    </message>
    <message>
        <source>Working the piece out …</source>
        <translation>Das Möbel wird berechnet …</translation>
    </message>
    <message>
        <source>Working the plans out</source>
        <translation>Die Pläne werden berechnet</translation>
    </message>
    <message>
        <source>Working the plans out …</source>
        <translation>Die Pläne werden berechnet …</translation>
    </message>
    <message>
        <source>Write it into the model</source>
        <translation>Ins Modell schreiben</translation>
    </message>
    <message>
        <source>Write the sheet</source>
        <translation>Blatt schreiben</translation>
    </message>
    <message>
        <source>Write the tags</source>
        <translation>Angaben schreiben</translation>
    </message>
    <message>
        <source>Write what was entered, as one undo step, and go on to the next board</source>
        <translation>Das Eingegebene schreiben, als ein Schritt zum Rückgängigmachen, und zum nächsten Brett gehen</translation>
    </message>
    <message>
        <source>Write, then next</source>
        <translation>Schreiben</translation>
    </message>
    <message>
        <source>Written: {file}</source>
        <translation>Geschrieben: {file}</translation>
    </message>
    <message>
        <source>Year of air</source>
        <translation>Luft im Jahr</translation>
    </message>
    <message>
        <source>Year: {name}</source>
        <translation>Jahr: {name}</translation>
    </message>
    <message>
        <source>a line {size} from its middle</source>
        <translation>einer Linie {size} neben seiner Mitte</translation>
    </message>
    <message>
        <source>a quarter of its room used</source>
        <translation>ein Viertel des Spielraums genutzt</translation>
    </message>
    <message>
        <source>about {side}</source>
        <translation>etwa {side}</translation>
    </message>
    <message>
        <source>across the grain</source>
        <translation>quer zur Faser</translation>
    </message>
    <message>
        <source>along the grain</source>
        <translation>längs der Faser</translation>
    </message>
    <message>
        <source>and be turned end for end</source>
        <translation>und ihre Enden tauschen</translation>
    </message>
    <message>
        <source>as drawn</source>
        <translation>gezeichnet</translation>
    </message>
    <message>
        <source>as tagged: {line}</source>
        <translation>wie angegeben: {line}</translation>
    </message>
    <message>
        <source>as the file shows</source>
        <translation>wie die Datei zeigt</translation>
    </message>
    <message>
        <source>back</source>
        <translation>Rückseite</translation>
    </message>
    <message>
        <source>bending shown {factor:g} times</source>
        <translation>Biegung {factor:g}-fach gezeigt</translation>
    </message>
    <message>
        <source>between</source>
        <translation>zwischen</translation>
    </message>
    <message>
        <source>boards</source>
        <translation>Bretter</translation>
    </message>
    <message>
        <source>choose one with …</source>
        <translation>eine wählen mit …</translation>
    </message>
    <message>
        <source>click boards in the view or the tree</source>
        <translation>Bretter in der Ansicht oder im Baum anklicken</translation>
    </message>
    <message>
        <source>click boards in the view or the tree, then try again</source>
        <translation>Bretter in der Ansicht oder im Baum anklicken, dann noch einmal versuchen</translation>
    </message>
    <message>
        <source>click on the wood, where the ring is seen</source>
        <translation>klicken Sie auf das Holz, wo der Jahrring zu sehen ist</translation>
    </message>
    <message>
        <source>click the board to copy from, then those to copy to</source>
        <translation>klicken Sie das Brett an, von dem kopiert wird, dann die, auf die kopiert wird</translation>
    </message>
    <message>
        <source>confirmed</source>
        <translation>bestätigt</translation>
    </message>
    <message>
        <source>crown {size}</source>
        <translation>rund {size}</translation>
    </message>
    <message>
        <source>day, month, year</source>
        <translation>Tag, Monat, Jahr</translation>
    </message>
    <message>
        <source>depends on what is not said yet</source>
        <translation>hängt von noch nicht Gesagtem ab</translation>
    </message>
    <message>
        <source>down</source>
        <translation>unten</translation>
    </message>
    <message>
        <source>draw the boards of a panel one by one, edge to edge</source>
        <translation>zeichnen Sie die Bretter einer Fläche einzeln, Kante an Kante</translation>
    </message>
    <message>
        <source>draw the piece, one solid for each board, or open a model of it</source>
        <translation>zeichnen Sie das Stück, einen Volumenkörper für jedes Brett, oder öffnen Sie ein Modell davon</translation>
    </message>
    <message>
        <source>driest</source>
        <translation>am trockensten</translation>
    </message>
    <message>
        <source>driest {size}</source>
        <translation>trockenste Zeit: {size}</translation>
    </message>
    <message>
        <source>driest, {day}</source>
        <translation>am trockensten, {day}</translation>
    </message>
    <message>
        <source>end for end</source>
        <translation>Enden getauscht</translation>
    </message>
    <message>
        <source>enter what the meter shows, a number for each place measured</source>
        <translation>eintragen, was das Messgerät zeigt, für jede Stelle eine Zahl</translation>
    </message>
    <message>
        <source>far from it</source>
        <translation>weit davon</translation>
    </message>
    <message>
        <source>flat</source>
        <translation>flach</translation>
    </message>
    <message>
        <source>flat-sawn</source>
        <translation>liegend</translation>
    </message>
    <message>
        <source>grain</source>
        <translation>Faser</translation>
    </message>
    <message>
        <source>half of its room used</source>
        <translation>die Hälfte des Spielraums genutzt</translation>
    </message>
    <message>
        <source>hollow {size}</source>
        <translation>hohl {size}</translation>
    </message>
    <message>
        <source>in</source>
        <translation>im</translation>
    </message>
    <message>
        <source>inches, fractions</source>
        <translation>Zoll, Brüche</translation>
    </message>
    <message>
        <source>inferred</source>
        <translation>abgeleitet</translation>
    </message>
    <message>
        <source>its edge on the side {axis}</source>
        <translation>seiner Kante auf der Seite {axis}</translation>
    </message>
    <message>
        <source>its middle</source>
        <translation>seiner Mitte</translation>
    </message>
    <message>
        <source>its wood is not said</source>
        <translation>sein Holz ist nicht gesagt</translation>
    </message>
    <message>
        <source>least</source>
        <translation>mindestens</translation>
    </message>
    <message>
        <source>left empty: a line to write on</source>
        <translation>leer: eine Linie zum Schreiben</translation>
    </message>
    <message>
        <source>look at the end that it points to</source>
        <translation>sehen Sie das Ende an, auf das er zeigt</translation>
    </message>
    <message>
        <source>make a solid of each board, or open a model that has them</source>
        <translation>machen Sie aus jedem Brett einen Volumenkörper, oder öffnen Sie ein Modell, das welche hat</translation>
    </message>
    <message>
        <source>millimetres</source>
        <translation>Millimeter</translation>
    </message>
    <message>
        <source>moisture</source>
        <translation>Feuchte</translation>
    </message>
    <message>
        <source>month, day, year</source>
        <translation>Monat, Tag, Jahr</translation>
    </message>
    <message>
        <source>most</source>
        <translation>höchstens</translation>
    </message>
    <message>
        <source>no board is selected</source>
        <translation>kein Brett ist ausgewählt</translation>
    </message>
    <message>
        <source>no reading of the meter</source>
        <translation>kein Wert des Messgeräts</translation>
    </message>
    <message>
        <source>not known</source>
        <translation>nicht bekannt</translation>
    </message>
    <message>
        <source>not picked</source>
        <translation>nicht gewählt</translation>
    </message>
    <message>
        <source>not said</source>
        <translation>nicht gesagt</translation>
    </message>
    <message>
        <source>not said yet of {count} of its {all} boards: {facts}</source>
        <translation>von {count} seiner {all} Bretter noch nicht gesagt: {facts}</translation>
    </message>
    <message>
        <source>nothing is ticked</source>
        <translation>nichts ist angehakt</translation>
    </message>
    <message>
        <source>nothing: all twelve were logged</source>
        <translation>nirgends: alle zwölf sind da</translation>
    </message>
    <message>
        <source>one number or several, in percent</source>
        <translation>eine Zahl oder mehrere, in Prozent</translation>
    </message>
    <message>
        <source>outer edge of {board}</source>
        <translation>Außenkante von {board}</translation>
    </message>
    <message>
        <source>over it: jams, splits or shows</source>
        <translation>darüber: klemmt, reißt oder fällt auf</translation>
    </message>
    <message>
        <source>quarter-sawn</source>
        <translation>stehend</translation>
    </message>
    <message>
        <source>radius {length}</source>
        <translation>Radius {length}</translation>
    </message>
    <message>
        <source>rift-sawn</source>
        <translation>schräg</translation>
    </message>
    <message>
        <source>rings</source>
        <translation>Jahrringe</translation>
    </message>
    <message>
        <source>say it with “Tag wood …”, which steps through all parts</source>
        <translation>sagen Sie es mit „Holz angeben …“, das durch alle Teile führt</translation>
    </message>
    <message>
        <source>say it with “Tag wood …”, which steps through these boards</source>
        <translation>sagen Sie es mit „Holz angeben …“, das durch diese Bretter führt</translation>
    </message>
    <message>
        <source>set today</source>
        <translation>heute lassen</translation>
    </message>
    <message>
        <source>show face</source>
        <translation>Sichtseite</translation>
    </message>
    <message>
        <source>show them: choose them in the tree and press the space bar</source>
        <translation>blenden Sie sie ein: im Baum wählen und die Leertaste drücken</translation>
    </message>
    <message>
        <source>species</source>
        <translation>Holzart</translation>
    </message>
    <message>
        <source>that is beside the end of the board</source>
        <translation>das ist neben dem Hirnende des Bretts</translation>
    </message>
    <message>
        <source>that is the end where the arrow starts</source>
        <translation>das ist das Ende, an dem der Pfeil beginnt</translation>
    </message>
    <message>
        <source>the bench</source>
        <translation>die Werkbank</translation>
    </message>
    <message>
        <source>the client</source>
        <translation>den Kunden</translation>
    </message>
    <message>
        <source>the middle</source>
        <translation>die Mitte</translation>
    </message>
    <message>
        <source>there is nothing to copy to yet</source>
        <translation>es ist noch nichts da, worauf kopiert würde</translation>
    </message>
    <message>
        <source>three quarters used</source>
        <translation>drei Viertel genutzt</translation>
    </message>
    <message>
        <source>tick that it is to be replaced, or choose another name</source>
        <translation>ankreuzen, dass sie ersetzt werden soll, oder einen anderen Namen wählen</translation>
    </message>
    <message>
        <source>tick the hints that are right, or cancel</source>
        <translation>haken Sie an, was stimmt, oder brechen Sie ab</translation>
    </message>
    <message>
        <source>tick what to copy</source>
        <translation>haken Sie an, was kopiert wird</translation>
    </message>
    <message>
        <source>to the back</source>
        <translation>hinten</translation>
    </message>
    <message>
        <source>to the front</source>
        <translation>vorn</translation>
    </message>
    <message>
        <source>to the left</source>
        <translation>links</translation>
    </message>
    <message>
        <source>to the right</source>
        <translation>rechts</translation>
    </message>
    <message>
        <source>today</source>
        <translation>heute</translation>
    </message>
    <message>
        <source>true size</source>
        <translation>wahre Größe</translation>
    </message>
    <message>
        <source>turned over</source>
        <translation>gewendet</translation>
    </message>
    <message>
        <source>up</source>
        <translation>oben</translation>
    </message>
    <message>
        <source>waves of {size}</source>
        <translation>wellig {size}</translation>
    </message>
    <message>
        <source>wettest</source>
        <translation>am feuchtesten</translation>
    </message>
    <message>
        <source>wettest {size}</source>
        <translation>feuchteste Zeit: {size}</translation>
    </message>
    <message>
        <source>wettest, {day}</source>
        <translation>am feuchtesten, {day}</translation>
    </message>
    <message>
        <source>with a pad</source>
        <translation>mit Platte</translation>
    </message>
    <message>
        <source>with pins</source>
        <translation>mit Nadeln</translation>
    </message>
    <message>
        <source>year, month, day</source>
        <translation>Jahr, Monat, Tag</translation>
    </message>
    <message>
        <source>{all} joints; nothing is known of {unknown}; {matter} decide something</source>
        <translation>{all} Verbindungen; {unknown} davon nicht bekannt; auf {matter} kommt es an</translation>
    </message>
    <message>
        <source>{count} hints taken</source>
        <translation>{count} Hinweise genommen</translation>
    </message>
    <message>
        <source>{count} joints are chosen.</source>
        <translation>{count} Verbindungen sind gewählt.</translation>
    </message>
    <message>
        <source>{count} more labels: zoom in to read</source>
        <translation>{count} weitere Schilder: zum Lesen heranholen</translation>
    </message>
    <message>
        <source>{count} more than the plan with the fewest</source>
        <translation>{count} mehr als der Plan mit den wenigsten</translation>
    </message>
    <message>
        <source>{count} of 3 points</source>
        <translation>{count} von 3 Punkten</translation>
    </message>
    <message>
        <source>{count} of {all} parts are shown without a cup: rings or moisture not said.</source>
        <translation>{count} von {all} Teilen sind ohne Wölbung gezeigt: Ringe oder Holzfeuchte nicht gesagt.</translation>
    </message>
    <message>
        <source>{count} slots to cut</source>
        <translation>{count} Langlöcher zu schneiden</translation>
    </message>
    <message>
        <source>{count} tagged</source>
        <translation>{count} angegeben</translation>
    </message>
    <message>
        <source>{count} woods and materials</source>
        <translation>{count} Hölzer und Werkstoffe</translation>
    </message>
    <message>
        <source>{day} {month}</source>
        <translation>{day}. {month}</translation>
    </message>
    <message>
        <source>{fact} inferred on {count} boards</source>
        <translation>{fact} an {count} Brettern abgeleitet</translation>
    </message>
    <message>
        <source>{fact} {value}, inferred: {reason}</source>
        <translation>{fact} {value}, abgeleitet: {reason}</translation>
    </message>
    <message>
        <source>{kind} (holds all over)</source>
        <translation>{kind} (hält überall)</translation>
    </message>
    <message>
        <source>{kind} (holds one spot)</source>
        <translation>{kind} (hält an einer Stelle)</translation>
    </message>
    <message>
        <source>{kind} (lets them move)</source>
        <translation>{kind} (lässt Bewegung zu)</translation>
    </message>
    <message>
        <source>{mm} out of flat ({when}), wished {wished}</source>
        <translation>um {mm} uneben ({when}), gewünscht {wished}</translation>
    </message>
    <message>
        <source>{name} (usual)</source>
        <translation>{name} (üblich)</translation>
    </message>
    <message>
        <source>{name} ({count} boards)</source>
        <translation>{name} ({count} Bretter)</translation>
    </message>
    <message>
        <source>{one} and {other}: assembly joint “{joint}”</source>
        <translation>{one} und {other}: Verbindung der Baugruppe „{joint}“</translation>
    </message>
    <message>
        <source>{one} and {other}: drawn {drawn}, set {set}. It becomes {least} in {low}, {most} in {high}.</source>
        <translation>{one} und {other}: gezeichnet {drawn}, zu lassen {set}. Daraus wird {least} im {low}, {most} im {high}.</translation>
    </message>
    <message>
        <source>{part} does not move across its grain as far as is known.</source>
        <translation>{part} bewegt sich, soweit bekannt, nicht quer zur Faser.</translation>
    </message>
    <message>
        <source>{part} is held at its edge {axis}</source>
        <translation>{part} ist an der Kante {axis} gehalten</translation>
    </message>
    <message>
        <source>{part} is held at its middle</source>
        <translation>{part} ist in der Mitte gehalten</translation>
    </message>
    <message>
        <source>{part} is held at {place}</source>
        <translation>{part} ist gehalten an {place}</translation>
    </message>
    <message>
        <source>{part} is held {size} from its middle</source>
        <translation>{part} ist {size} neben der Mitte gehalten</translation>
    </message>
    <message>
        <source>{part}: material card “{card}”</source>
        <translation>{part}: Materialkarte „{card}“</translation>
    </message>
    <message>
        <source>{shown} of {all} gaps; each is safe in every month</source>
        <translation>{shown} von {all} Fugen; jede reicht in jedem Monat</translation>
    </message>
    <message>
        <source>{year}: wood from {low:.1f} % in {dry} to {high:.1f} % in {wet}. Worked out {date}, {time}</source>
        <translation>{year}: Holz von {low:.1f} % im {dry} bis {high:.1f} % im {wet}. Berechnet {date}, {time}</translation>
    </message>
    <message>
        <source>“Annotate the model” writes one</source>
        <translation>„Modell beschriften“ schreibt eine</translation>
    </message>
    <message>
        <source>“Column of …”</source>
        <translation>„Spalte …“</translation>
    </message>
    <message>
        <source>“Dates are written”</source>
        <translation>„Das Datum steht als“</translation>
    </message>
    <message>
        <source>“Hold the top flat …” places some</source>
        <translation>„Platte eben halten …“ setzt welche</translation>
    </message>
    <message>
        <source>“Months not logged come from”</source>
        <translation>„Fehlende Monate kommen von“</translation>
    </message>
    <message>
        <source>“Schedule” and “Drawing of the top” write them</source>
        <translation>„Stückliste“ und „Zeichnung der Platte“ schreiben sie</translation>
    </message>
    <message>
        <source>“Tag wood …” shows what each board says</source>
        <translation>„Holz angeben …“ zeigt, was jedes Brett sagt</translation>
    </message>
    <message>
        <source>“Temperatures are in”</source>
        <translation>„Temperaturen in“</translation>
    </message>
</context>
<context>
    <name>HeartsideCore</name>
    <message>
        <source>  … and {count} more between</source>
        <translation>  … und {count} weitere dazwischen</translation>
    </message>
    <message>
        <source> (also {numbers})</source>
        <translation> (auch {numbers})</translation>
    </message>
    <message>
        <source> (an upper bound: creep takes its share)</source>
        <translation> (eine obere Grenze: Kriechen nimmt seinen Teil)</translation>
    </message>
    <message>
        <source> (asked for, though the tag 'fixed' says otherwise: {lines})</source>
        <translation> (so verlangt, obwohl die Angabe 'fixed' anderes sagt: {lines})</translation>
    </message>
    <message>
        <source> (the tag 'fixed' of {boards})</source>
        <translation> (Angabe 'fixed' von {boards})</translation>
    </message>
    <message>
        <source> (the usual one, since a glued top is held at one line and the tags 'fixed' say several: {lines})</source>
        <translation> (die übliche, denn eine verleimte Platte wird an einer Linie gehalten, und die Angaben 'fixed' nennen mehrere: {lines})</translation>
    </message>
    <message>
        <source> (worst in {month})</source>
        <translation> (am schlimmsten im {month})</translation>
    </message>
    <message>
        <source> ({shank} × {length} inch)</source>
        <translation> ({shank} × {length} Zoll)</translation>
    </message>
    <message>
        <source> Did you mean {near!r}?</source>
        <translation> War {near!r} gemeint?</translation>
    </message>
    <message>
        <source> above 0</source>
        <translation> über 0</translation>
    </message>
    <message>
        <source> and </source>
        <translation> und </translation>
    </message>
    <message>
        <source> and {count} alike</source>
        <translation> und {count} weitere gleiche</translation>
    </message>
    <message>
        <source> and {count} more</source>
        <translation> und {count} weitere</translation>
    </message>
    <message>
        <source> and {count} more runs</source>
        <translation> und {count} weitere Strecken</translation>
    </message>
    <message>
        <source> in any order that fits the others</source>
        <translation> in jeder Reihenfolge, die zu den anderen passt</translation>
    </message>
    <message>
        <source> in the order {given!r}</source>
        <translation> in der Reihenfolge {given!r}</translation>
    </message>
    <message>
        <source> or </source>
        <translation> oder </translation>
    </message>
    <message>
        <source>% of width per 1 % MC</source>
        <translation>% der Breite je 1 % Holzfeuchte</translation>
    </message>
    <message>
        <source>'C' or 'F'</source>
        <translation>'C' oder 'F'</translation>
    </message>
    <message>
        <source>'hold' on the command line tries out fasteners, battens and breadboard ends, with their places</source>
        <translation>„hold“ auf der Befehlszeile probiert Befestigungen, Querleisten und Hirnleisten durch, mit ihren Plätzen</translation>
    </message>
    <message>
        <source>'ice' or 'water'</source>
        <translation>'ice' oder 'water'</translation>
    </message>
    <message>
        <source>'limits' is to be an object of names and numbers</source>
        <translation>„limits“ muss ein Objekt aus Namen und Zahlen sein</translation>
    </message>
    <message>
        <source>'normal', 'uniform' or 'lognormal'</source>
        <translation>'normal', 'uniform' oder 'lognormal'</translation>
    </message>
    <message>
        <source>'pin' or 'pad'</source>
        <translation>'pin' oder 'pad'</translation>
    </message>
    <message>
        <source>'show' or 'back'</source>
        <translation>'show' oder 'back'</translation>
    </message>
    <message>
        <source>'ymd', 'dmy' or 'mdy'</source>
        <translation>'ymd', 'dmy' oder 'mdy'</translation>
    </message>
    <message>
        <source>'{shown}' goes on after its end</source>
        <translation>„{shown}“ geht nach seinem Ende weiter</translation>
    </message>
    <message>
        <source>'{shown}' has another size than the list of contents says</source>
        <translation>„{shown}“ hat eine andere Größe, als das Inhaltsverzeichnis sagt</translation>
    </message>
    <message>
        <source>'{shown}' is a link to another file</source>
        <translation>„{shown}“ ist ein Verweis auf eine andere Datei</translation>
    </message>
    <message>
        <source>'{shown}' is damaged: it cannot be unpacked</source>
        <translation>„{shown}“ ist beschädigt: Es lässt sich nicht auspacken</translation>
    </message>
    <message>
        <source>'{shown}' is damaged: its checksum is wrong</source>
        <translation>„{shown}“ ist beschädigt: Die Prüfsumme stimmt nicht</translation>
    </message>
    <message>
        <source>'{shown}' is encrypted</source>
        <translation>„{shown}“ ist verschlüsselt</translation>
    </message>
    <message>
        <source>'{shown}' is in it twice</source>
        <translation>„{shown}“ ist zweimal darin</translation>
    </message>
    <message>
        <source>'{shown}' is not what the list of contents says</source>
        <translation>„{shown}“ ist nicht, was das Inhaltsverzeichnis sagt</translation>
    </message>
    <message>
        <source>'{shown}' is packed in a way that the host does not know</source>
        <translation>„{shown}“ ist auf eine Art gepackt, die FreeCAD nicht kennt</translation>
    </message>
    <message>
        <source>'{shown}' lies more than {depth} folders deep</source>
        <translation>„{shown}“ liegt mehr als {depth} Ordner tief</translation>
    </message>
    <message>
        <source>(0, 1) is toward the show face</source>
        <translation>(0, 1) zeigt zur Sichtseite</translation>
    </message>
    <message>
        <source>(default width)</source>
        <translation>(ohne Angabe: width)</translation>
    </message>
    <message>
        <source>(worst in {month})</source>
        <translation>(am schlimmsten im {month})</translation>
    </message>
    <message>
        <source>({along:g}, {across:g}) mm lies beyond the panel</source>
        <translation>({along:g}, {across:g}) mm liegt außerhalb der Platte</translation>
    </message>
    <message>
        <source>(…, 2): x and y in mm</source>
        <translation>(…, 2): x und y in mm</translation>
    </message>
    <message>
        <source>, 0 or more</source>
        <translation>, 0 oder mehr</translation>
    </message>
    <message>
        <source>, about {time} left</source>
        <translation>, noch etwa {time}</translation>
    </message>
    <message>
        <source>, and farther in between: {told}</source>
        <translation>, dazwischen mehr: {told}</translation>
    </message>
    <message>
        <source>, column {column}</source>
        <translation>, Spalte {column}</translation>
    </message>
    <message>
        <source>, or a position in mm</source>
        <translation>, oder ein Ort in mm</translation>
    </message>
    <message>
        <source>, {crushed:.1f} mm of it crushed in the damp season</source>
        <translation>, davon in der feuchten Zeit {crushed:.1f} mm zerdrückt</translation>
    </message>
    <message>
        <source>, {filled} filled between</source>
        <translation>, {filled} dazwischen ergänzt</translation>
    </message>
    <message>
        <source>--part and --value belong together</source>
        <translation>--part und --value gehören zusammen</translation>
    </message>
    <message>
        <source>. If it slides or rests already, confirm the joint so</source>
        <translation>. Wenn es schon gleitet oder aufliegt, die Verbindung so bestätigen</translation>
    </message>
    <message>
        <source>. It does not move with {core}: its glue line shears at the edges</source>
        <translation>. Es bewegt sich nicht mit {core}: Seine Leimfuge schert an den Kanten ab</translation>
    </message>
    <message>
        <source>. Only one face of {core} carries it: the panel bows {bow:.1f} mm if nothing holds it flat</source>
        <translation>. Nur eine Fläche von {core} trägt es: Die Platte biegt sich um {bow:.1f} mm, wenn nichts sie eben hält</translation>
    </message>
    <message>
        <source>. Were all to stay elastic, {kn:.1f} kN ({stress:.1f} MPa) would bear on the joint in {month}; what the wood bears that way is not known</source>
        <translation>. Bliebe alles elastisch, lägen im {month} {kn:.1f} kN ({stress:.1f} MPa) auf der Verbindung; was das Holz so trägt, ist nicht bekannt</translation>
    </message>
    <message>
        <source>. Were all to stay elastic, {kn:.1f} kN would bear on it in {month}</source>
        <translation>. Bliebe alles elastisch, lägen im {month} {kn:.1f} kN darauf</translation>
    </message>
    <message>
        <source>. Were all to stay elastic, {kn:.1f} kN would bear on the joint in {month}: {stress:.1f} MPa, where clear wood bears {strength:.1f}</source>
        <translation>. Bliebe alles elastisch, lägen im {month} {kn:.1f} kN auf der Verbindung: {stress:.1f} MPa, wo fehlerfreies Holz {strength:.1f} trägt</translation>
    </message>
    <message>
        <source>. Were all to stay elastic, {kn:.1f} kN would press in {month}: {stress:.1f} MPa, where clear wood is crushed from {strength:.1f}</source>
        <translation>. Bliebe alles elastisch, drückten im {month} {kn:.1f} kN: {stress:.1f} MPa, wo fehlerfreies Holz ab {strength:.1f} zerdrückt wird</translation>
    </message>
    <message>
        <source>0 mm or more</source>
        <translation>0 mm oder mehr</translation>
    </message>
    <message>
        <source>0 to 0.02 per 1 % MC</source>
        <translation>0 bis 0,02 je 1 % Holzfeuchte</translation>
    </message>
    <message>
        <source>0 to 0.02 per 1 % moisture content</source>
        <translation>0 bis 0,02 je 1 % Holzfeuchte</translation>
    </message>
    <message>
        <source>0 to 1</source>
        <translation>0 bis 1</translation>
    </message>
    <message>
        <source>0 to 30 %</source>
        <translation>0 bis 30 %</translation>
    </message>
    <message>
        <source>0 to 90°</source>
        <translation>0 bis 90°</translation>
    </message>
    <message>
        <source>0 to {fibre_saturation:g} %</source>
        <translation>0 bis {fibre_saturation:g} %</translation>
    </message>
    <message>
        <source>0 to {length:g} mm from its start</source>
        <translation>0 bis {length:g} mm von ihrem Anfang</translation>
    </message>
    <message>
        <source>0 to {most_factor:.3g}</source>
        <translation>0 bis {most_factor:.3g}</translation>
    </message>
    <message>
        <source>0 up to 1</source>
        <translation>0 bis unter 1</translation>
    </message>
    <message>
        <source>1 board lies heart side up</source>
        <translation>1 Brett liegt mit der Kernseite oben</translation>
    </message>
    <message>
        <source>1 finding</source>
        <translation>1 Befund</translation>
    </message>
    <message>
        <source>1 finding is too slight to fail on.</source>
        <translation>1 Befund ist zu gering, um daran zu scheitern.</translation>
    </message>
    <message>
        <source>1 heart side down</source>
        <translation>1 mit der Kernseite unten</translation>
    </message>
    <message>
        <source>1 holds</source>
        <translation>1 hält</translation>
    </message>
    <message>
        <source>1 model, {told}</source>
        <translation>1 Modell, {told}</translation>
    </message>
    <message>
        <source>1 model: {told}.</source>
        <translation>1 Modell: {told}.</translation>
    </message>
    <message>
        <source>1 or more</source>
        <translation>1 oder mehr</translation>
    </message>
    <message>
        <source>1 or {n}</source>
        <translation>1 oder {n}</translation>
    </message>
    <message>
        <source>1 reading, {mean:.1f} %</source>
        <translation>1 Wert, {mean:.1f} %</translation>
    </message>
    <message>
        <source>1 to {count}</source>
        <translation>1 bis {count}</translation>
    </message>
    <message>
        <source>1. Print at 100 %, actual size. Measure the rulers on every sheet: 100 mm and 4 inches, both ways.</source>
        <translation>1. Mit 100 %, in wahrer Größe, drucken. Die Maßstäbe auf jedem Blatt nachmessen: 100 mm und 4 Zoll, in beiden Richtungen.</translation>
    </message>
    <message>
        <source>10 to 60 %</source>
        <translation>10 bis 60 %</translation>
    </message>
    <message>
        <source>12 months or 365 days of moisture, a Year, or a DailyAir</source>
        <translation>Feuchte von 12 Monaten oder 365 Tagen, ein Year oder ein DailyAir</translation>
    </message>
    <message>
        <source>2 or more finite (along, across) points</source>
        <translation>2 oder mehr endliche Punkte (längs, quer)</translation>
    </message>
    <message>
        <source>2 to 1000</source>
        <translation>2 bis 1000</translation>
    </message>
    <message>
        <source>2. Turn the top over. The datum is its outer edge at {edge} and its end at {end}, drawn strongly.</source>
        <translation>2. Die Platte umdrehen. Gemessen wird von ihrer Außenkante an {edge} und ihrem Ende an {end}, kräftig gezeichnet.</translation>
    </message>
    <message>
        <source>3 or more (along, across) points</source>
        <translation>3 oder mehr Punkte (längs, quer)</translation>
    </message>
    <message>
        <source>3 or more in each of {pieces} stretches of a board</source>
        <translation>3 oder mehr in jedem von {pieces} Abschnitten eines Bretts</translation>
    </message>
    <message>
        <source>3 to 12 mm</source>
        <translation>3 bis 12 mm</translation>
    </message>
    <message>
        <source>3. The top should measure {long} × {wide} {unit} today, from {edge} to {last}. If its width differs, its wood is not as moist as was taken: say what it is, and print anew.</source>
        <translation>3. Die Platte soll heute {long} × {wide} {unit} messen, von {edge} bis {last}. Weicht ihre Breite ab, ist ihr Holz nicht so feucht wie angenommen: sagen, wie feucht es ist, und neu drucken.</translation>
    </message>
    <message>
        <source>365 days, 1 January first</source>
        <translation>365 Tage, der 1. Januar zuerst</translation>
    </message>
    <message>
        <source>38-50 mm long, tongue 6-10 mm in a groove 6 x 6-10 mm, 10 mm below the top; grain along the tongue</source>
        <translation>38–50 mm lang, Feder 6–10 mm in einer Nut 6 x 6–10 mm, 10 mm unter der Platte; Faser längs der Feder</translation>
    </message>
    <message>
        <source>4. Lay each sheet by the distances of its upper left cross; neighbours overlap, cross on cross.</source>
        <translation>4. Jedes Blatt nach den Abständen seines oberen linken Kreuzes auflegen; Nachbarn überlappen, Kreuz auf Kreuz.</translation>
    </message>
    <message>
        <source>5. Circles are holes in the top, where its screws are today. Blue is in the frame: slots in full lines, recesses and grooves in short dashes. Mind the depth: a stop on the drill.</source>
        <translation>5. Kreise sind Löcher in der Platte, wo ihre Schrauben heute sitzen. Blau gehört zum Gestell: Langlöcher in vollen Linien, Taschen und Nuten kurz gestrichelt. Auf die Tiefe achten: ein Anschlag am Bohrer.</translation>
    </message>
    <message>
        <source>50 000 to 110 000 Pa</source>
        <translation>50 000 bis 110 000 Pa</translation>
    </message>
    <message>
        <source>64 or more</source>
        <translation>64 oder mehr</translation>
    </message>
    <message>
        <source>8 to 400</source>
        <translation>8 bis 400</translation>
    </message>
    <message>
        <source>: the hours run from 1 to 12 twice a day without AM or PM</source>
        <translation>: Die Stunden laufen zweimal am Tag von 1 bis 12, ohne AM oder PM</translation>
    </message>
    <message>
        <source>; and {count} more</source>
        <translation>; und {count} weitere</translation>
    </message>
    <message>
        <source>; below it {words}, heights drawn {factor} times too large</source>
        <translation>; darunter {words}, Höhen {factor}-fach überzeichnet</translation>
    </message>
    <message>
        <source>; did you mean {near!r}?</source>
        <translation>; war {near!r} gemeint?</translation>
    </message>
    <message>
        <source>; it is {rocks}</source>
        <translation>; sie {rocks}</translation>
    </message>
    <message>
        <source>; only {steady!r} makes the days follow one another</source>
        <translation>; nur mit {steady!r} folgen die Tage aufeinander</translation>
    </message>
    <message>
        <source>; water condenses in {count} of {size} steps</source>
        <translation>; in {count} von {size} Schritten schlägt sich Wasser nieder</translation>
    </message>
    <message>
        <source>; {names} taken from {name}</source>
        <translation>; {names} aus {name} übernommen</translation>
    </message>
    <message>
        <source>A flat steel face keeps the top's lower face from breathing: the upper one gives and takes moisture alone and the top cups toward the dry side. Raise it on washers or spacers of 3 mm or more, or finish both faces alike and ventilate the base.</source>
        <translation>Eine ebene Stahlfläche lässt die Unterseite der Platte nicht atmen: Nur die Oberseite gibt Feuchte ab und nimmt sie auf, und die Platte wölbt sich zur trockenen Seite. Auf Scheiben oder Abstandshalter von 3 mm oder mehr legen, oder beide Seiten gleich behandeln und das Gestell belüften.</translation>
    </message>
    <message>
        <source>Air it was made for</source>
        <translation>Luft, für die es gebaut ist</translation>
    </message>
    <message>
        <source>Air: {name}; {basis}.</source>
        <translation>Luft: {name}; {basis}.</translation>
    </message>
    <message>
        <source>All options: heartside {command} --help</source>
        <translation>Alle Optionen: heartside {command} --help</translation>
    </message>
    <message>
        <source>Allowed</source>
        <translation>Zulässig</translation>
    </message>
    <message>
        <source>An estimate from averages: a board differs from its species by some 15 %.</source>
        <translation>Eine Schätzung aus Mittelwerten: Ein Brett weicht von seiner Holzart um etwa 15 % ab.</translation>
    </message>
    <message>
        <source>April</source>
        <translation>April</translation>
    </message>
    <message>
        <source>As drawn, with {count} small parts under it taken as its fasteners, it is {flat:.1f} mm out of flat at worst.</source>
        <translation>Wie gezeichnet, mit {count} kleinen Teilen darunter als Befestigungen, ist sie schlimmstenfalls um {flat:.1f} mm uneben.</translation>
    </message>
    <message>
        <source>As it is drawn, no humidity keeps every part free: see the maker's sheet before it is built or delivered.</source>
        <translation>Wie gezeichnet, hält keine Luftfeuchte jedes Teil frei: vor Bau oder Lieferung das Blatt des Herstellers ansehen.</translation>
    </message>
    <message>
        <source>Aside: from the rail's middle line to the slot's middle, + toward {other}.</source>
        <translation>Daneben: von der Mittellinie der Zarge zur Mitte des Langlochs, + zu {other} hin.</translation>
    </message>
    <message>
        <source>August</source>
        <translation>August</translation>
    </message>
    <message>
        <source>Battens and breadboard ends: {names}; their screws, tenons, pegs and glue stand in the tables below.</source>
        <translation>Querleisten und Hirnleisten: {names}; ihre Schrauben, Zapfen, Holznägel und Leimstellen stehen in den Tabellen darunter.</translation>
    </message>
    <message>
        <source>Between the parts</source>
        <translation>Zwischen den Teilen</translation>
    </message>
    <message>
        <source>Between {one} and {other}: from {least} {unit} in {tight} to {most} {unit} in {wide}.</source>
        <translation>Zwischen {one} und {other}: von {least} {unit} im {tight} bis {most} {unit} im {wide}.</translation>
    </message>
    <message>
        <source>Biot number</source>
        <translation>Biot-Zahl</translation>
    </message>
    <message>
        <source>Block {number} on {rail}</source>
        <translation>Klotz {number} an {rail}</translation>
    </message>
    <message>
        <source>Board</source>
        <translation>Board</translation>
    </message>
    <message>
        <source>Boards are numbered as drawn: 1 is {name}, {count} is {name2}. ^ lies as drawn, v is turned over, t is turned end for end.</source>
        <translation>Bretter sind gezählt wie gezeichnet: 1 ist {name}, {count} ist {name2}. ^ liegt wie gezeichnet, v ist gewendet, t ist Ende gegen Ende gedreht.</translation>
    </message>
    <message>
        <source>Checked by, date</source>
        <translation>Geprüft von, Datum</translation>
    </message>
    <message>
        <source>Choose by looks. What a layout goes further from flat is what joinery has to hold, while letting the top move; 'hold' works that out.</source>
        <translation>Nach dem Aussehen wählen. Was eine Lage weiter von der Ebene abgeht, muss die Verbindung halten und die Platte dabei arbeiten lassen; „hold“ rechnet das aus.</translation>
    </message>
    <message>
        <source>Chosen: {counted}</source>
        <translation>Gewählt: {counted}</translation>
    </message>
    <message>
        <source>Could not be checked</source>
        <translation>Konnte nicht geprüft werden</translation>
    </message>
    <message>
        <source>Cross-section seen on the end of the grain, show face up, with the run of the rings as built{bends}.</source>
        <translation>Querschnitt auf das Hirnholz gesehen, Sichtseite oben, mit dem Lauf der Jahrringe wie gebaut{bends}.</translation>
    </message>
    <message>
        <source>Cut to the top's width today it stands about {dry:.1f} mm proud when driest and {wet:.1f} short when wettest, at each edge; up to {most_dry:.1f} and {most_wet:.1f}, the likely error included.</source>
        <translation>Auf die heutige Breite der Platte geschnitten, steht sie an jeder Kante am trockensten etwa {dry:.1f} mm vor, am feuchtesten {wet:.1f} zurück; bis {most_dry:.1f} und {most_wet:.1f}, den wahrscheinlichen Fehler eingerechnet.</translation>
    </message>
    <message>
        <source>Cutters of {name}</source>
        <translation>Schneidkörper von {name}</translation>
    </message>
    <message>
        <source>Date</source>
        <translation>Datum</translation>
    </message>
    <message>
        <source>Datum: outer edge at {edge} (above) and end at {end} (left)</source>
        <translation>Bezug: Außenkante bei {edge} (oben) und Ende bei {end} (links)</translation>
    </message>
    <message>
        <source>December</source>
        <translation>Dezember</translation>
    </message>
    <message>
        <source>Do not</source>
        <translation>Nicht tun</translation>
    </message>
    <message>
        <source>Do not plane or sand a door or drawer that sticks in the damp season: it comes free as the air dries.</source>
        <translation>Eine Tür oder Schublade, die in der feuchten Zeit klemmt, nicht hobeln oder schleifen: Sie kommt frei, wenn die Luft trockener wird.</translation>
    </message>
    <message>
        <source>Do not screw, glue or wedge anything that was left free to move, and do not fill the gaps.</source>
        <translation>Nichts festschrauben, leimen oder verkeilen, was frei gelassen ist, und die Fugen nicht füllen.</translation>
    </message>
    <message>
        <source>Document.xml does not come first, where the host reads it</source>
        <translation>Document.xml steht nicht am Anfang, wo FreeCAD sie liest</translation>
    </message>
    <message>
        <source>Done</source>
        <translation>Erledigt</translation>
    </message>
    <message>
        <source>Doors and drawers</source>
        <translation>Türen und Schubladen</translation>
    </message>
    <message>
        <source>Drawing of {name}</source>
        <translation>Zeichnung von {name}</translation>
    </message>
    <message>
        <source>Drawn of {name}</source>
        <translation>Gezeichnet von {name}</translation>
    </message>
    <message>
        <source>Drilling template, {name}</source>
        <translation>Bohrschablone, {name}</translation>
    </message>
    <message>
        <source>EN 15251 category II humidities (25 to 60 %) taken as winter and summer; months between them our own</source>
        <translation>Feuchten der EN 15251 Kategorie II (25 bis 60 %) als Winter und Sommer genommen; die Monate dazwischen eigene Annahme</translation>
    </message>
    <message>
        <source>EN 15251 category III lower limit (20 %) in winter, cooled in summer: months our own</source>
        <translation>untere Grenze der EN 15251 Kategorie III (20 %) im Winter, im Sommer gekühlt: Monate eigene Annahme</translation>
    </message>
    <message>
        <source>Edge: screw in the top, from the outer edge at {edge} as the top is today. End: from the end at {where}. On rail: from the rail's own end, tenon included, toward {edge} or {end}. Travel: + toward {other}; its likely error is included. Screw today: its centre from the slot's end toward {edge}. Aside: from the rail's middle line, + toward {other}. Slots are rounded up, room left is rounded down.</source>
        <translation>Kante: Schraube in der Platte, von der Außenkante bei {edge}, wie die Platte heute ist. Ende: vom Ende bei {where}. An der Zarge: vom eigenen Ende der Zarge mit Zapfen, zu {edge} oder {end} hin. Weg: + zu {other} hin; sein wahrscheinlicher Fehler ist enthalten. Schraube heute: ihre Mitte vom Ende des Langlochs zu {edge} hin. Daneben: von der Mittellinie der Zarge, + zu {other} hin. Langlöcher sind aufgerundet, Restspiel ist abgerundet.</translation>
    </message>
    <message>
        <source>Ends with 0 when all holds, 1 with findings, 2 when something could not be checked.</source>
        <translation>Endet mit 0, wenn alles hält, mit 1 bei Befunden, mit 2, wenn etwas nicht geprüft werden konnte.</translation>
    </message>
    <message>
        <source>Ends with 0 when nothing new was found, 1 with new findings or graver ones, 2 when a report cannot be read or a model that could be checked no longer can.</source>
        <translation>Endet mit 0, wenn nichts Neues gefunden wurde, mit 1 bei neuen oder schwereren Befunden, mit 2, wenn ein Bericht nicht lesbar ist oder ein Modell, das geprüft werden konnte, es nicht mehr kann.</translation>
    </message>
    <message>
        <source>Estimates from averages, for movement only: a board differs from its species by some 15 %. Loads, overhead, children, stairs and wall fixings belong to local codes and licensed practice.</source>
        <translation>Schätzungen aus Mittelwerten, nur für das Arbeiten des Holzes: Ein Brett weicht von seiner Holzart um etwa 15 % ab. Lasten, Teile über Kopf, Kinder, Treppen und Wandbefestigungen sind Sache der örtlichen Vorschriften und zugelassener Fachleute.</translation>
    </message>
    <message>
        <source>Estimates from averages, not guarantees: a board differs from its species by some 15 %. Elastic forces are upper bounds: wood creeps and frames give.</source>
        <translation>Schätzungen aus Mittelwerten, keine Zusagen: Ein Brett weicht von seiner Holzart um etwa 15 % ab. Elastische Kräfte sind Obergrenzen: Holz kriecht, und Gestelle geben nach.</translation>
    </message>
    <message>
        <source>Every fastener; tick what is done</source>
        <translation>Jede Befestigung; abhaken, was erledigt ist</translation>
    </message>
    <message>
        <source>Example: heartside diagnose --species 'yellow poplar' --width 1070 --thickness 19 --hollow 32 --boards 8 --flat-at 10 --humidity 30 --finish 'show bare, back varnish 3'</source>
        <translation>Beispiel: heartside diagnose --species 'yellow poplar' --width 1070 --thickness 19 --hollow 32 --boards 8 --flat-at 10 --humidity 30 --finish 'show bare, back varnish 3'</translation>
    </message>
    <message>
        <source>FCStd, STEP (.step, .stp) or BREP (.brep, .brp)</source>
        <translation>FCStd, STEP (.step, .stp) oder BREP (.brep, .brp)</translation>
    </message>
    <message>
        <source>FCStd, STEP or BREP; a folder, with all below it; a pattern in quotes, such as 'shop/**/*.step'</source>
        <translation>FCStd, STEP oder BREP; ein Ordner mit allem darunter; ein Muster in Anführungszeichen, etwa 'werkstatt/**/*.step'</translation>
    </message>
    <message>
        <source>FCStd, STEP or BREP; it is never written to</source>
        <translation>FCStd, STEP oder BREP; es wird nie hineingeschrieben</translation>
    </message>
    <message>
        <source>Fastener figures are for movement, not for load: not for lifting, people or overhead loads. Those, stairs, wall-hung and child-safety parts belong to local codes and licensed practice.</source>
        <translation>Die Zahlen der Befestigungen gelten für das Arbeiten des Holzes, nicht für Lasten: nicht zum Heben, nicht für Menschen, nicht für Lasten über Kopf. Diese, Treppen, an der Wand Hängendes und Teile für die Sicherheit von Kindern sind Sache der örtlichen Vorschriften und zugelassener Fachleute.</translation>
    </message>
    <message>
        <source>Fasteners of {name}</source>
        <translation>Befestigungen von {name}</translation>
    </message>
    <message>
        <source>Fasteners of {top}: {plan}</source>
        <translation>Befestigungen von {top}: {plan}</translation>
    </message>
    <message>
        <source>February</source>
        <translation>Februar</translation>
    </message>
    <message>
        <source>Figures are estimates from averages, for movement only: loads, overhead, children and stairs belong to local codes and licensed practice.</source>
        <translation>Die Zahlen sind Schätzungen aus Mittelwerten und gelten nur für das Arbeiten des Holzes: Lasten, Überkopf, Kinder und Treppen sind Sache der örtlichen Vorschriften und zugelassener Fachleute.</translation>
    </message>
    <message>
        <source>File exists</source>
        <translation>die Datei gibt es schon</translation>
    </message>
    <message>
        <source>File name too long</source>
        <translation>der Dateiname ist zu lang</translation>
    </message>
    <message>
        <source>Finding</source>
        <translation>Befund</translation>
    </message>
    <message>
        <source>Fitted at {fitted:.1f} %; {year}</source>
        <translation>Eingepasst bei {fitted:.1f} %; {year}</translation>
    </message>
    <message>
        <source>Fixed to</source>
        <translation>Fest an</translation>
    </message>
    <message>
        <source>Flags</source>
        <translation>Hinweise</translation>
    </message>
    <message>
        <source>For</source>
        <translation>Für</translation>
    </message>
    <message>
        <source>Fourier number</source>
        <translation>Fourier-Zahl</translation>
    </message>
    <message>
        <source>Free on</source>
        <translation>Frei auf</translation>
    </message>
    <message>
        <source>FreeCAD cannot start without /proc. Type as root:
  mount -t proc proc /proc</source>
        <translation>FreeCAD startet nicht ohne /proc. Als root eingeben:
  mount -t proc proc /proc</translation>
    </message>
    <message>
        <source>FreeCAD was installed but its command line, freecadcmd, is not on the path</source>
        <translation>FreeCAD wurde eingerichtet, aber seine Befehlszeile freecadcmd ist nicht im Suchpfad</translation>
    </message>
    <message>
        <source>FreeCAD's command line, freecadcmd, was not found</source>
        <translation>die Befehlszeile von FreeCAD, freecadcmd, wurde nicht gefunden</translation>
    </message>
    <message>
        <source>From the middle of the top, {unit}</source>
        <translation>Von der Plattenmitte, {unit}</translation>
    </message>
    <message>
        <source>Gap</source>
        <translation>Fuge</translation>
    </message>
    <message>
        <source>Gap today, becomes</source>
        <translation>Fuge heute, wird</translation>
    </message>
    <message>
        <source>Gaps</source>
        <translation>Fugen</translation>
    </message>
    <message>
        <source>Gaps round doors, drawers and lids that move, mm</source>
        <translation>Fugen um Türen, Schubladen und Deckel, die sich ändern, mm</translation>
    </message>
    <message>
        <source>Gaps to leave today</source>
        <translation>Heute zu lassende Fugen</translation>
    </message>
    <message>
        <source>Glued or screwed solid across its whole width: {what}.</source>
        <translation>Über die ganze Breite fest geleimt oder geschraubt: {what}.</translation>
    </message>
    <message>
        <source>Glued panels, mm, free: fixed to nothing; crown and hollow over the width, by the rings alone</source>
        <translation>Leimholzplatten, mm, frei: an nichts befestigt; rund und hohl über die Breite, allein durch die Jahrringe</translation>
    </message>
    <message>
        <source>Grain crosses at 1 joint: {told}. The report as JSON lists each with its reason.</source>
        <translation>Fasern kreuzen sich an 1 Verbindung: {told}. Der Bericht als JSON nennt jede mit ihrem Grund.</translation>
    </message>
    <message>
        <source>Grain crosses at {count} joints: {told}. The report as JSON lists each with its reason.</source>
        <translation>Fasern kreuzen sich an {count} Verbindungen: {told}. Der Bericht als JSON nennt jede mit ihrem Grund.</translation>
    </message>
    <message>
        <source>G{line}: {leave}, becomes {least} to {most}</source>
        <translation>G{line}: {leave}, wird {least} bis {most}</translation>
    </message>
    <message>
        <source>Heartside hardware</source>
        <translation>Heartside-Befestigung</translation>
    </message>
    <message>
        <source>Heartside papers</source>
        <translation>Heartside-Blätter</translation>
    </message>
    <message>
        <source>Heartside results</source>
        <translation>Heartside-Ergebnisse</translation>
    </message>
    <message>
        <source>Heartside study</source>
        <translation>Heartside-Studie</translation>
    </message>
    <message>
        <source>Heartside: annotate</source>
        <translation>Heartside: Modell beschriften</translation>
    </message>
    <message>
        <source>Heartside: check of 1 model</source>
        <translation>Heartside: Prüfung von 1 Modell</translation>
    </message>
    <message>
        <source>Heartside: check of {count} models</source>
        <translation>Heartside: Prüfung von {count} Modellen</translation>
    </message>
    <message>
        <source>Heartside: confirm a joint</source>
        <translation>Heartside: Verbindung bestätigen</translation>
    </message>
    <message>
        <source>Heartside: copy wood</source>
        <translation>Heartside: Holz kopieren</translation>
    </message>
    <message>
        <source>Heartside: cut the slots</source>
        <translation>Heartside: Langlöcher schneiden</translation>
    </message>
    <message>
        <source>Heartside: draw the top</source>
        <translation>Heartside: Platte zeichnen</translation>
    </message>
    <message>
        <source>Heartside: keep the air</source>
        <translation>Heartside: Luft behalten</translation>
    </message>
    <message>
        <source>Heartside: lay the boards</source>
        <translation>Heartside: Bretter legen</translation>
    </message>
    <message>
        <source>Heartside: measurement</source>
        <translation>Heartside: Messung</translation>
    </message>
    <message>
        <source>Heartside: place hardware</source>
        <translation>Heartside: Befestigung setzen</translation>
    </message>
    <message>
        <source>Heartside: remove the answer</source>
        <translation>Heartside: Antwort entfernen</translation>
    </message>
    <message>
        <source>Heartside: set the year</source>
        <translation>Heartside: Jahresgang setzen</translation>
    </message>
    <message>
        <source>Heartside: set today</source>
        <translation>Heartside: Tag setzen</translation>
    </message>
    <message>
        <source>Heartside: tag</source>
        <translation>Heartside: Holz angeben</translation>
    </message>
    <message>
        <source>Heartside: take apart</source>
        <translation>Heartside: zerlegen</translation>
    </message>
    <message>
        <source>Heartside: take hardware out</source>
        <translation>Heartside: Befestigung entfernen</translation>
    </message>
    <message>
        <source>Heartside: take hints</source>
        <translation>Heartside: Hinweise nehmen</translation>
    </message>
    <message>
        <source>Heartside: take the papers out</source>
        <translation>Heartside: Blätter herausnehmen</translation>
    </message>
    <message>
        <source>Heartside: untag</source>
        <translation>Heartside: Angaben wegnehmen</translation>
    </message>
    <message>
        <source>Heartside: write the schedule</source>
        <translation>Heartside: Stückliste schreiben</translation>
    </message>
    <message>
        <source>Held by nothing, by its rings and by what its faces differ in moisture, it would {dry} on the driest day and {wet} on the wettest day, over its width{farther}; with its weight on its frame and no fastener it is {worst:.1f} mm out of flat at worst, over its whole surface. Wished: {wished:g} mm in every month.</source>
        <translation>Ohne jeden Halt würde sie durch ihre Jahrringe und den Feuchteunterschied ihrer Seiten am trockensten Tag {dry} und am feuchtesten Tag {wet}, über ihre Breite gemessen{farther}; mit ihrem Gewicht auf dem Gestell und ohne Befestigung ist sie über die ganze Fläche schlimmstenfalls um {worst:.1f} mm uneben. Gewünscht: {wished:g} mm in jedem Monat.</translation>
    </message>
    <message>
        <source>Hidden in the model, and left out: {names}.</source>
        <translation>Im Modell ausgeblendet und ausgelassen: {names}.</translation>
    </message>
    <message>
        <source>Holding {name}</source>
        <translation>{name} halten</translation>
    </message>
    <message>
        <source>How solid-wood furniture moves through the year, read from its CAD model.</source>
        <translation>Wie Möbel aus Massivholz übers Jahr arbeiten, gelesen aus ihrem CAD-Modell.</translation>
    </message>
    <message>
        <source>How sure the figures are</source>
        <translation>Wie sicher die Zahlen sind</translation>
    </message>
    <message>
        <source>In a breadboard end tongue and tenons are dashed. A ring is a peg: with a stroke through it in a slot of its tenon, alone tight. Glue only where it is hatched.</source>
        <translation>In einer Hirnleiste sind Feder und Zapfen gestrichelt. Ein Ring ist ein Holznagel: mit einem Strich hindurch im Langloch seines Zapfens, ohne Strich fest. Leim nur, wo schraffiert ist.</translation>
    </message>
    <message>
        <source>In none of the pictures: {numbers}.</source>
        <translation>In keinem der Bilder: {numbers}.</translation>
    </message>
    <message>
        <source>In stick in the room it lies in ({room_temperature:g} °C, {room_rh:g} %), which brings wood to {room:.1f} %,</source>
        <translation>Auf Stapelleisten in dem Raum, in dem es liegt ({room_temperature:g} °C, {room_rh:g} %), der Holz auf {room:.1f} % bringt,</translation>
    </message>
    <message>
        <source>In use ({home}): {home_mean:.1f} % on average, {low:.1f} to {high:.1f} % over the year.</source>
        <translation>Im Gebrauch ({home}): im Mittel {home_mean:.1f} %, über das Jahr {low:.1f} bis {high:.1f} %.</translation>
    </message>
    <message>
        <source>Indoors, heated to 20 °C, not cooled; --heating, --cooling, --humidify change that.</source>
        <translation>Innen, auf 20 °C geheizt, nicht gekühlt; --heating, --cooling, --humidify ändern das.</translation>
    </message>
    <message>
        <source>Inferred and noted</source>
        <translation>Abgeleitet und vermerkt</translation>
    </message>
    <message>
        <source>Is a directory</source>
        <translation>es ist ein Ordner</translation>
    </message>
    <message>
        <source>It cannot be worked out before this is said:</source>
        <translation>Sie lässt sich nicht berechnen, ehe dies gesagt ist:</translation>
    </message>
    <message>
        <source>It is pulled with {pull:.0f} N, and {allowed:.0f} N are allowed.</source>
        <translation>Daran ziehen {pull:.0f} N, und {allowed:.0f} N sind zulässig.</translation>
    </message>
    <message>
        <source>It never gets damper than when it was made flat, as far as this year's air goes.</source>
        <translation>Feuchter als beim Ebnen wird sie in der Luft dieses Jahres nie.</translation>
    </message>
    <message>
        <source>It never gets drier than when it was made flat, as far as this year's air goes.</source>
        <translation>Trockener als beim Ebnen wird sie in der Luft dieses Jahres nie.</translation>
    </message>
    <message>
        <source>It stays within the wish with nothing holding it down; fasteners only keep it in its place.</source>
        <translation>Sie bleibt so eben wie gewünscht, ohne dass etwas sie niederhält; Befestigungen halten sie nur am Ort.</translation>
    </message>
    <message>
        <source>It stays within the wish with nothing holding it down; fasteners only keep it in place.</source>
        <translation>Sie bleibt ohne Halt so eben wie gewünscht; Befestigungen halten sie nur am Ort.</translation>
    </message>
    <message>
        <source>It was worked out for air that runs from {low} to {high} % through the year.</source>
        <translation>Gerechnet für Luft, die im Jahr von {low} bis {high} % geht.</translation>
    </message>
    <message>
        <source>Its air</source>
        <translation>Seine Luft</translation>
    </message>
    <message>
        <source>Its profile is not known: {reason}.</source>
        <translation>Ihr Profil ist nicht bekannt: {reason}.</translation>
    </message>
    <message>
        <source>Its upper left cross: {end} from the datum end at {at_end}, {edge} from the datum edge of {at_edge}.</source>
        <translation>Sein oberes linkes Kreuz: {end} vom Bezugsende an {at_end}, {edge} von der Bezugskante an {at_edge}.</translation>
    </message>
    <message>
        <source>JSON like {example}</source>
        <translation>JSON wie {example}</translation>
    </message>
    <message>
        <source>January</source>
        <translation>Januar</translation>
    </message>
    <message>
        <source>January to December in order, as names or as 1 to 12</source>
        <translation>January bis December der Reihe nach, als Namen oder als 1 bis 12</translation>
    </message>
    <message>
        <source>Job</source>
        <translation>Auftrag</translation>
    </message>
    <message>
        <source>Joints</source>
        <translation>Verbindungen</translation>
    </message>
    <message>
        <source>Joints that bear most, before the wood gives way; after some months {low:.0f} % to {high:.0f} % of it is left</source>
        <translation>Verbindungen, die am meisten tragen, bevor das Holz nachgibt; nach einigen Monaten sind davon {low:.0f} % bis {high:.0f} % übrig</translation>
    </message>
    <message>
        <source>July</source>
        <translation>Juli</translation>
    </message>
    <message>
        <source>June</source>
        <translation>Juni</translation>
    </message>
    <message>
        <source>Keep it away from radiators, stoves, damp outer walls and the sun; leave no wet cloths on it.</source>
        <translation>Von Heizkörpern, Öfen, feuchten Außenwänden und der Sonne fernhalten; keine nassen Tücher darauf liegen lassen.</translation>
    </message>
    <message>
        <source>Keep the air between {low} and {high} % relative humidity. Shorter spells outside do no harm: thick wood takes weeks to follow.</source>
        <translation>Die Luft zwischen {low} und {high} % relativer Feuchte halten. Kürzere Zeiten außerhalb schaden nicht: Dickes Holz braucht Wochen, um zu folgen.</translation>
    </message>
    <message>
        <source>Kind</source>
        <translation>Art</translation>
    </message>
    <message>
        <source>Known findings, accepted: {count}.</source>
        <translation>Bekannte Befunde, angenommen: {count}.</translation>
    </message>
    <message>
        <source>Known findings: {known} accepted, {gone} no longer there.</source>
        <translation>Bekannte Befunde: {known} angenommen, {gone} nicht mehr da.</translation>
    </message>
    <message>
        <source>Known from</source>
        <translation>Bekannt durch</translation>
    </message>
    <message>
        <source>Label of {name}</source>
        <translation>Schild von {name}</translation>
    </message>
    <message>
        <source>Lay it on the upturned top: seen from below. All distances in {unit}.</source>
        <translation>Auf die umgedrehte Platte legen: von unten gesehen. Alle Abstände in {unit}.</translation>
    </message>
    <message>
        <source>Leave: rounded up, so that the gap keeps its least in the tightest season. Below 0 the parts press.</source>
        <translation>Lassen: aufgerundet, damit die Fuge in der engsten Zeit ihr Mindestmaß behält. Unter 0 drücken die Teile.</translation>
    </message>
    <message>
        <source>Lift a table by its frame, not by its top. Keep anti-tip straps and wall fixings as they were fitted.</source>
        <translation>Einen Tisch am Gestell anheben, nicht an der Platte. Kippsicherungen und Wandbefestigungen lassen, wie sie angebracht sind.</translation>
    </message>
    <message>
        <source>Likely causes (crown +, hollow -; shares order them, and are no promise)</source>
        <translation>Wahrscheinliche Ursachen (rund +, hohl -; Anteile ordnen sie und sind kein Versprechen)</translation>
    </message>
    <message>
        <source>Line drawing of {count} parts, {side}; the numbers are those of the table of parts.</source>
        <translation>Strichzeichnung von {count} Teilen, {side}; die Nummern sind die der Teileliste.</translation>
    </message>
    <message>
        <source>MC now, %</source>
        <translation>Feuchte jetzt, %</translation>
    </message>
    <message>
        <source>Made by</source>
        <translation>Gebaut von</translation>
    </message>
    <message>
        <source>March</source>
        <translation>März</translation>
    </message>
    <message>
        <source>Material</source>
        <translation>Werkstoff</translation>
    </message>
    <message>
        <source>Materials</source>
        <translation>Werkstoffe</translation>
    </message>
    <message>
        <source>May</source>
        <translation>Mai</translation>
    </message>
    <message>
        <source>Meter, its species setting</source>
        <translation>Messgerät, eingestellte Holzart</translation>
    </message>
    <message>
        <source>Mind</source>
        <translation>Beachten</translation>
    </message>
    <message>
        <source>Model</source>
        <translation>Modell</translation>
    </message>
    <message>
        <source>Moisture at delivery, %</source>
        <translation>Holzfeuchte bei Lieferung, %</translation>
    </message>
    <message>
        <source>Moisture that air brings wood to: Wood Handbook FPL-GTR-190 (2010), equation 4-5 (read). Boards follow it late and less, by their thickness, density and finish.</source>
        <translation>Holzfeuchte, zu der Luft das Holz bringt: Wood Handbook FPL-GTR-190 (2010), Gleichung 4-5 (gelesen). Bretter folgen ihr später und schwächer, je nach Dicke, Dichte und Oberfläche.</translation>
    </message>
    <message>
        <source>Movement sheet: {name}</source>
        <translation>Bewegungsblatt: {name}</translation>
    </message>
    <message>
        <source>NUMBER (1 = first)</source>
        <translation>NUMMER (1 = die erste)</translation>
    </message>
    <message>
        <source>Never bolt a cupped top flat by force; a board released from being forced flat springs. Rip cupped boards hollow face down: a warped or case-hardened board can pinch the blade and kick back.</source>
        <translation>Eine gewölbte Platte nie mit Gewalt eben schrauben; ein Brett, das eben gezwungen war, schnellt beim Lösen auf. Gewölbte Bretter mit der hohlen Seite nach unten auftrennen: Ein verzogenes oder verschaltes Brett kann das Sägeblatt einklemmen und zurückschlagen.</translation>
    </message>
    <message>
        <source>Never plane a part that sticks in the damp season until it has dried.</source>
        <translation>Ein Teil, das in der feuchten Zeit klemmt, nie hobeln, ehe es getrocknet ist.</translation>
    </message>
    <message>
        <source>No</source>
        <translation>Nr.</translation>
    </message>
    <message>
        <source>No board says which of its faces looks better; tag it with 'looks'.</source>
        <translation>Kein Brett sagt, welche seiner Seiten schöner ist; mit „looks“ angeben.</translation>
    </message>
    <message>
        <source>No door, drawer or panel in grooves was found whose gap changes with the seasons.</source>
        <translation>Keine Tür, Schublade oder Füllung in Nuten gefunden, deren Fuge sich mit den Jahreszeiten ändert.</translation>
    </message>
    <message>
        <source>No findings.</source>
        <translation>Keine Befunde.</translation>
    </message>
    <message>
        <source>No plan of these kinds holds it.</source>
        <translation>Kein Plan mit diesen Arten hält sie.</translation>
    </message>
    <message>
        <source>No room in the picture to name {names}.</source>
        <translation>Im Bild ist kein Platz für die Namen von {names}.</translation>
    </message>
    <message>
        <source>No space left on device</source>
        <translation>kein Platz mehr auf dem Datenträger</translation>
    </message>
    <message>
        <source>No stock threaded insert stays inside the top.</source>
        <translation>Keine handelsübliche Gewindemuffe bleibt in der Platte.</translation>
    </message>
    <message>
        <source>No such file or directory</source>
        <translation>keine solche Datei, kein solcher Ordner</translation>
    </message>
    <message>
        <source>No way to hold it that was tried keeps it within the wish. What would help:</source>
        <translation>Kein durchgerechneter Weg hält sie so eben wie gewünscht. Was helfen würde:</translation>
    </message>
    <message>
        <source>Not a directory</source>
        <translation>es ist kein Ordner</translation>
    </message>
    <message>
        <source>Not ready: </source>
        <translation>Nicht bereit: </translation>
    </message>
    <message>
        <source>Not told yet: {options}</source>
        <translation>Noch nicht gesagt: {options}</translation>
    </message>
    <message>
        <source>Noted in {file}.</source>
        <translation>In {file} notiert.</translation>
    </message>
    <message>
        <source>Nothing lies under it: it has no frame.</source>
        <translation>Nichts liegt darunter: Sie hat kein Gestell.</translation>
    </message>
    <message>
        <source>Nothing on it moves enough to be noticed.</source>
        <translation>Nichts daran bewegt sich merklich.</translation>
    </message>
    <message>
        <source>Nothing was found that would break, jam or show.</source>
        <translation>Nichts gefunden, das bricht, klemmt oder auffällt.</translation>
    </message>
    <message>
        <source>Nothing was written.</source>
        <translation>Nichts wurde geschrieben.</translation>
    </message>
    <message>
        <source>November</source>
        <translation>November</translation>
    </message>
    <message>
        <source>Numbers are those of the pictures. G and F name lines of the tables of gaps and findings. ? is not known.</source>
        <translation>Nummern wie in den Bildern. G und F nennen Zeilen der Tabellen der Fugen und Befunde. ? ist nicht bekannt.</translation>
    </message>
    <message>
        <source>October</source>
        <translation>Oktober</translation>
    </message>
    <message>
        <source>On a batten a dot is a screw: with a stroke through it in a slot, alone in a plain hole.</source>
        <translation>Auf einer Querleiste ist ein Punkt eine Schraube: mit einem Strich hindurch im Langloch, ohne Strich im runden Loch.</translation>
    </message>
    <message>
        <source>On the right, in {unit} from the middle of the top, + toward {other}: {what}</source>
        <translation>Rechts, in {unit} von der Mitte der Platte, + zu {other} hin: {what}</translation>
    </message>
    <message>
        <source>Outdoors, bathrooms, underfloor heating, fireplaces and sea freight lie outside the usual years of air.</source>
        <translation>Im Freien, im Bad, über Fußbodenheizung, am Kamin und in der Seefracht gelten die üblichen Luftjahre nicht.</translation>
    </message>
    <message>
        <source>Panel in grooves</source>
        <translation>Füllung in Nuten</translation>
    </message>
    <message>
        <source>Panels in grooves</source>
        <translation>Füllungen in Nuten</translation>
    </message>
    <message>
        <source>Part</source>
        <translation>Teil</translation>
    </message>
    <message>
        <source>Parts</source>
        <translation>Teile</translation>
    </message>
    <message>
        <source>Peg in {end}</source>
        <translation>Holznagel in {end}</translation>
    </message>
    <message>
        <source>Permission denied</source>
        <translation>keine Zugriffsrechte</translation>
    </message>
    <message>
        <source>Plan of {name} with {count} fasteners; each number and its distances stand in the table below.</source>
        <translation>Plan von {name} mit {count} Befestigungen; jede Nummer und ihre Abstände stehen in der Tabelle darunter.</translation>
    </message>
    <message>
        <source>Plan of {name}.</source>
        <translation>Plan von {name}.</translation>
    </message>
    <message>
        <source>Please mind</source>
        <translation>Bitte beachten</translation>
    </message>
    <message>
        <source>Print at 100 %, actual size. Measure both rulers; if either is not true, do not drill by this.</source>
        <translation>Mit 100 %, in wahrer Größe, drucken. Beide Maßstäbe nachmessen; stimmt einer nicht, danach nicht bohren.</translation>
    </message>
    <message>
        <source>Pull, N</source>
        <translation>Zug, N</translation>
    </message>
    <message>
        <source>Radial and tangential: percent of size for each 1 % of moisture content.</source>
        <translation>Radial und tangential: Prozent des Maßes je 1 % Holzfeuchte.</translation>
    </message>
    <message>
        <source>Rail</source>
        <translation>Zarge</translation>
    </message>
    <message>
        <source>Read at</source>
        <translation>Gemessen an</translation>
    </message>
    <message>
        <source>Read-only file system</source>
        <translation>dort darf nur gelesen werden</translation>
    </message>
    <message>
        <source>Ready to work.</source>
        <translation>Bereit zur Verarbeitung.</translation>
    </message>
    <message>
        <source>Refused</source>
        <translation>Verworfen</translation>
    </message>
    <message>
        <source>Report what every part does in the year, and what comes of it. Models are never written to.</source>
        <translation>Berichtet, was jedes Teil übers Jahr tut und was daraus folgt. In Modelle wird nie geschrieben.</translation>
    </message>
    <message>
        <source>Rests on {names}.</source>
        <translation>Liegt auf {names}.</translation>
    </message>
    <message>
        <source>Room left</source>
        <translation>Restspiel</translation>
    </message>
    <message>
        <source>Room: what is left in the worst month.</source>
        <translation>Spiel: was im schlimmsten Monat übrig bleibt.</translation>
    </message>
    <message>
        <source>Round doors and drawers that move</source>
        <translation>Um Türen und Schubladen, die sich bewegen</translation>
    </message>
    <message>
        <source>Say why a board or top is no longer flat: likely causes in order, what to measure to decide, what to do and what not. Name a model and a part, or the wood, width and thickness.</source>
        <translation>Sagt, warum ein Brett oder eine Platte nicht mehr eben ist: wahrscheinliche Ursachen der Reihe nach, was zur Entscheidung zu messen ist, was zu tun ist und was nicht. Ein Modell und ein Teil nennen, oder Holz, Breite und Dicke.</translation>
    </message>
    <message>
        <source>Schedule</source>
        <translation>Stückliste</translation>
    </message>
    <message>
        <source>Screw today, {unit}</source>
        <translation>Schraube heute, {unit}</translation>
    </message>
    <message>
        <source>Screws, holes and slots at full size, seen from below; every number stands in the plan's table.</source>
        <translation>Schrauben, Löcher und Langlöcher in wahrer Größe, von unten gesehen; jede Nummer steht in der Tabelle des Plans.</translation>
    </message>
    <message>
        <source>Sections and cup</source>
        <translation>Schnitte und Wölbung</translation>
    </message>
    <message>
        <source>Seen from above, through the top</source>
        <translation>Von oben durch die Platte gesehen</translation>
    </message>
    <message>
        <source>Seen from above, through the top. Distances in {unit} from the datum: the outer edge at {edge} as it is today, and the end at {end}</source>
        <translation>Von oben durch die Platte gesehen. Abstände in {unit} vom Bezug: Außenkante bei {edge}, wie sie heute ist, und das Ende bei {end}</translation>
    </message>
    <message>
        <source>Sentences of findings and plans give inches; 1 inch is 25.4 mm.</source>
        <translation>Sätze der Befunde und Pläne nennen Zoll; 1 Zoll ist 25,4 mm.</translation>
    </message>
    <message>
        <source>Sentences of findings and plans give millimetres; 1 inch is 25.4 mm.</source>
        <translation>Sätze der Befunde und Pläne nennen Millimeter; 1 Zoll ist 25,4 mm.</translation>
    </message>
    <message>
        <source>September</source>
        <translation>September</translation>
    </message>
    <message>
        <source>Shaded: where the width lies two times in three. Dashed: as built. Dotted: today.</source>
        <translation>Getönt: wo die Breite in zwei von drei Fällen liegt. Gestrichelt: wie gebaut. Gepunktet: heute.</translation>
    </message>
    <message>
        <source>Sheet {tile} of the drilling template for {name}</source>
        <translation>Blatt {tile} der Bohrschablone für {name}</translation>
    </message>
    <message>
        <source>Sheets of the drilling template</source>
        <translation>Blätter der Bohrschablone</translation>
    </message>
    <message>
        <source>Shop today, °C and % RH</source>
        <translation>Werkstatt heute, °C und % rel. Feuchte</translation>
    </message>
    <message>
        <source>Signed</source>
        <translation>Unterschrift</translation>
    </message>
    <message>
        <source>Slot along the batten, {unit}</source>
        <translation>Langloch längs der Leiste, {unit}</translation>
    </message>
    <message>
        <source>Slot: its length. At: its middle on the rail. Screw: its centre today, from the slot's end toward {edge}.</source>
        <translation>Langloch: seine Länge. Bei: seine Mitte an der Zarge. Schraube: ihre Mitte heute, vom Ende des Langlochs zu {edge} hin.</translation>
    </message>
    <message>
        <source>So narrow a range can hardly be kept in a home: ask your maker to give the piece more room first.</source>
        <translation>Ein so enger Bereich lässt sich in einer Wohnung kaum halten: Bitten Sie Ihren Möbelbauer, dem Stück zuerst mehr Spielraum zu geben.</translation>
    </message>
    <message>
        <source>Solid wood takes up moisture from damp air and gives it off to dry air. Across the grain it grows and shrinks with it all its life; along the grain it hardly changes. This page says what you will see.</source>
        <translation>Massivholz nimmt aus feuchter Luft Wasser auf und gibt es an trockene ab. Quer zur Faser wächst und schwindet es damit sein Leben lang; längs der Faser ändert es sich kaum. Dieses Blatt sagt, was Sie sehen werden.</translation>
    </message>
    <message>
        <source>Solid wood takes up moisture from damp air and gives it off to dry air. Across the grain it grows and shrinks with it all its life; along the grain it hardly changes. Your piece is built to let this happen. This page says what you will see.</source>
        <translation>Massivholz nimmt aus feuchter Luft Wasser auf und gibt es an trockene ab. Quer zur Faser wächst und schwindet es damit sein Leben lang; längs der Faser ändert es sich kaum. Ihr Stück ist so gebaut, dass das geschehen darf. Dieses Blatt sagt, was Sie sehen werden.</translation>
    </message>
    <message>
        <source>Source</source>
        <translation>Quelle</translation>
    </message>
    <message>
        <source>Steel does not move with the seasons: never glue or screw the top to it solid.</source>
        <translation>Stahl arbeitet nicht mit den Jahreszeiten: Die Platte nie fest daran leimen oder schrauben.</translation>
    </message>
    <message>
        <source>Stiffened by {names}.</source>
        <translation>Versteift durch {names}.</translation>
    </message>
    <message>
        <source>Table 13-1</source>
        <translation>Tabelle 13-1</translation>
    </message>
    <message>
        <source>Table 13-1 (recalled): outdoor moisture</source>
        <translation>Tabelle 13-1 (aus dem Gedächtnis): Holzfeuchte im Freien</translation>
    </message>
    <message>
        <source>Tables get lifted by their tops: movement anchors are not lifting points.</source>
        <translation>Tische werden oft an der Platte angehoben; Befestigungen, die das Arbeiten zulassen, sind aber keine Anschlagpunkte zum Heben.</translation>
    </message>
    <message>
        <source>Taken</source>
        <translation>Angenommen</translation>
    </message>
    <message>
        <source>Taken for this top</source>
        <translation>Für diese Platte gewählt</translation>
    </message>
    <message>
        <source>Tell what is new, gone or changed between two reports that 'check --format json' wrote.</source>
        <translation>Sagt, was zwischen zwei Berichten, die „check --format json“ schrieb, neu, weg oder geändert ist.</translation>
    </message>
    <message>
        <source>Tell what the measurements of a piece teach of its wood: those in the document's study, and those in NAME.measured.csv beside the model. With --part, --what and --value another is noted in that file.</source>
        <translation>Sagt, was die Messungen an einem Stück über sein Holz lehren: die in der Studie des Dokuments und die in NAME.measured.csv neben dem Modell. Mit --part, --what und --value wird in dieser Datei eine weitere vermerkt.</translation>
    </message>
    <message>
        <source>Tenon from the middle</source>
        <translation>Zapfen von der Mitte</translation>
    </message>
    <message>
        <source>Tenons, pegs and glue are not drawn where the shoulder is not found: {names}.</source>
        <translation>Zapfen, Holznägel und Leim sind nicht gezeichnet, wo die Brüstung nicht zu finden ist: {names}.</translation>
    </message>
    <message>
        <source>The cause that makes most of the likely error of each part's driest or wettest width</source>
        <translation>Die Ursache, die den größten Teil des wahrscheinlichen Fehlers der trockensten oder feuchtesten Breite jedes Teils ausmacht</translation>
    </message>
    <message>
        <source>The demo pieces are invented, for trying Heartside out. Results:</source>
        <translation>Die Vorführstücke sind erfunden, um Heartside auszuprobieren. Ergebnisse:</translation>
    </message>
    <message>
        <source>The faces of its solids are not known, so it is not drawn.</source>
        <translation>Die Flächen seiner Körper sind nicht bekannt, darum ist es nicht gezeichnet.</translation>
    </message>
    <message>
        <source>The figures are estimates from averages: a board differs from its species by some 15 %, and years differ.</source>
        <translation>Die Zahlen sind Schätzungen aus Mittelwerten: Ein Brett weicht von seiner Holzart um etwa 15 % ab, und Jahre sind verschieden.</translation>
    </message>
    <message>
        <source>The gravest first; tick what is done</source>
        <translation>Das Schwerste zuerst; abhaken, was erledigt ist</translation>
    </message>
    <message>
        <source>The meter's own error could turn this: take more readings, or weigh and oven-dry an offcut.</source>
        <translation>Der Fehler des Messgeräts könnte das umkehren: öfter messen, oder einen Abschnitt wiegen und darren.</translation>
    </message>
    <message>
        <source>The model is taken as drawn at the sizes the parts had when they were fitted.</source>
        <translation>Das Modell gilt als mit den Maßen gezeichnet, die die Teile beim Einpassen hatten.</translation>
    </message>
    <message>
        <source>The nearest, {name} with {count} fasteners, leaves {flat:.1f} mm out of flat ({when}).</source>
        <translation>Am nächsten kommt {name} mit {count} Befestigungen: Sie bleibt um {flat:.1f} mm uneben ({when}).</translation>
    </message>
    <message>
        <source>The one measurement that narrows it most</source>
        <translation>Die eine Messung, die am meisten hilft</translation>
    </message>
    <message>
        <source>The piece and its parts</source>
        <translation>Das Stück und seine Teile</translation>
    </message>
    <message>
        <source>The piece {side}</source>
        <translation>Das Stück {side}</translation>
    </message>
    <message>
        <source>The top stands at least {dry:.1f} mm beyond the batten's end when driest, {wet:.1f} at most when wettest.</source>
        <translation>Die Platte steht am trockensten mindestens {dry:.1f} mm über das Ende der Querleiste hinaus, am feuchtesten höchstens {wet:.1f}.</translation>
    </message>
    <message>
        <source>There is no rail to fasten it to, and by itself it does not stay flat.</source>
        <translation>Es gibt keine Zarge, an der sie zu befestigen wäre, und von selbst bleibt sie nicht eben.</translation>
    </message>
    <message>
        <source>Thickness and cup: driest..wettest; cup + is a crown on the show face, - a hollow. ? is not known.</source>
        <translation>Dicke und Wölbung: am trockensten..am feuchtesten; Wölbung + ist rund auf der Sichtseite, - hohl. ? ist nicht bekannt.</translation>
    </message>
    <message>
        <source>Threaded inserts up to {insert:.0f} mm long leave {left:g} mm of wood; washers of {washer:.0f} mm bear on both sides of every slot.</source>
        <translation>Gewindemuffen bis {insert:.0f} mm Länge lassen {left:g} mm Holz; Scheiben von {washer:.0f} mm liegen auf beiden Seiten jedes Langlochs auf.</translation>
    </message>
    <message>
        <source>Through the seasons: {name}</source>
        <translation>Durch die Jahreszeiten: {name}</translation>
    </message>
    <message>
        <source>Through the year</source>
        <translation>Durchs Jahr</translation>
    </message>
    <message>
        <source>To buy or make</source>
        <translation>Zu kaufen oder zu machen</translation>
    </message>
    <message>
        <source>To cut away</source>
        <translation>Wegzuschneiden</translation>
    </message>
    <message>
        <source>To decide: {measure}</source>
        <translation>Zum Entscheiden: {measure}</translation>
    </message>
    <message>
        <source>To do</source>
        <translation>Zu tun</translation>
    </message>
    <message>
        <source>To do: {remedy}</source>
        <translation>Zu tun: {remedy}</translation>
    </message>
    <message>
        <source>Today, driest and wettest: two figures are the ends of what is possible where rings or moisture are not said exactly. Total: from driest to wettest. ±: likely error of the driest or wettest, right two times in three; twice that is nearly certain. Fixed to, free on: other parts by number, as far as shape and tags tell; (?) where it is not known whether a joint is glued.</source>
        <translation>Heute, am trockensten und am feuchtesten: Zwei Zahlen sind die Enden des Möglichen, wo Jahrringe oder Holzfeuchte nicht genau gesagt sind. Gesamt: vom trockensten zum feuchtesten. ±: wahrscheinlicher Fehler davon, richtig in zwei von drei Fällen; das Doppelte ist fast sicher. Fest an, frei auf: andere Teile nach Nummer, soweit Form und Angaben es zeigen; (?) wo nicht bekannt ist, ob eine Verbindung verleimt ist.</translation>
    </message>
    <message>
        <source>Today: {date}, {told}.</source>
        <translation>Heute: {date}, {told}.</translation>
    </message>
    <message>
        <source>Tongue and tenons for {end}</source>
        <translation>Feder und Zapfen für {end}</translation>
    </message>
    <message>
        <source>Tongue {thick} {unit} thick and {deep} deep, tenons {long} long, pegs {peg} thick. Glue only from {low} to {high} {unit} from the middle of the top. Cut to the top's width today, each end of it stands proud (+) or short (−) by about {dry} when driest and {wet} when wettest; at most {most_dry} and {most_wet}, the likely error included.</source>
        <translation>Feder {thick} {unit} dick und {deep} tief, Zapfen {long} lang, Holznägel {peg} dick. Nur von {low} bis {high} {unit} von der Plattenmitte leimen. Auf die heutige Plattenbreite geschnitten, steht jedes Ende am trockensten um etwa {dry} und am feuchtesten um {wet} vor (+) oder zurück (−); höchstens um {most_dry} und {most_wet}, den wahrscheinlichen Fehler eingerechnet.</translation>
    </message>
    <message>
        <source>Tongue: how deep to set it in its groove today.</source>
        <translation>Feder: wie tief sie heute in ihre Nut zu setzen ist.</translation>
    </message>
    <message>
        <source>Too many levels of symbolic links</source>
        <translation>die Verweise führen im Kreis</translation>
    </message>
    <message>
        <source>US Forest Products Laboratory, Wood Handbook FPL-GTR-190</source>
        <translation>US Forest Products Laboratory, Wood Handbook FPL-GTR-190</translation>
    </message>
    <message>
        <source>US National Renewable Energy Laboratory, typical meteorological year (TMY2)</source>
        <translation>US National Renewable Energy Laboratory, typisches Wetterjahr (TMY2)</translation>
    </message>
    <message>
        <source>US National Renewable Energy Laboratory, typical meteorological year (TMY3)</source>
        <translation>US National Renewable Energy Laboratory, typisches Wetterjahr (TMY3)</translation>
    </message>
    <message>
        <source>Unlikely: {names}</source>
        <translation>Unwahrscheinlich: {names}</translation>
    </message>
    <message>
        <source>Wall anchors and anti-tip straps must hold at both extremes of the year.</source>
        <translation>Wandbefestigungen und Kippsicherungen müssen in beiden Extremen des Jahres halten.</translation>
    </message>
    <message>
        <source>Ways to hold it (mm out of flat; N)</source>
        <translation>Wege, sie zu halten (mm uneben; N)</translation>
    </message>
    <message>
        <source>Ways to hold it that were tried</source>
        <translation>Wege, sie zu halten, die versucht wurden</translation>
    </message>
    <message>
        <source>Ways to hold it; the first is drawn below</source>
        <translation>Wege, sie zu halten; der erste ist unten gezeichnet</translation>
    </message>
    <message>
        <source>Weight</source>
        <translation>Gewicht</translation>
    </message>
    <message>
        <source>What has no number in the pictures before, {side}</source>
        <translation>Was in den Bildern davor keine Nummer hat, {side}</translation>
    </message>
    <message>
        <source>What it rests on</source>
        <translation>Worauf es beruht</translation>
    </message>
    <message>
        <source>What makes most of the ±, by number of parts: {causes}.</source>
        <translation>Was das ± am meisten bestimmt, nach Zahl der Teile: {causes}.</translation>
    </message>
    <message>
        <source>What rules the error</source>
        <translation>Was den Fehler bestimmt</translation>
    </message>
    <message>
        <source>What the seasons do to 1 model</source>
        <translation>Was die Jahreszeiten mit 1 Modell tun</translation>
    </message>
    <message>
        <source>What the seasons do to {count} models</source>
        <translation>Was die Jahreszeiten mit {count} Modellen tun</translation>
    </message>
    <message>
        <source>What to do</source>
        <translation>Was zu tun ist</translation>
    </message>
    <message>
        <source>What to keep the room at</source>
        <translation>Wie die Luft zu halten ist</translation>
    </message>
    <message>
        <source>What was found</source>
        <translation>Was gefunden wurde</translation>
    </message>
    <message>
        <source>What will move, and when</source>
        <translation>Was sich bewegt, und wann</translation>
    </message>
    <message>
        <source>What would help, each tried out</source>
        <translation>Was helfen würde, jedes durchgerechnet</translation>
    </message>
    <message>
        <source>Where it stands</source>
        <translation>Wo es steht</translation>
    </message>
    <message>
        <source>Where it will stand</source>
        <translation>Wo es stehen wird</translation>
    </message>
    <message>
        <source>Which of the {count} sheets lies where on the top, seen from below.</source>
        <translation>Welches der {count} Blätter wo auf der Platte liegt, von unten gesehen.</translation>
    </message>
    <message>
        <source>While it is damper than when it was made flat, one fastener at the middle of each end ({rails}) {verdict}.</source>
        <translation>Solange sie feuchter ist als beim Ebnen, würde je eine Befestigung in der Mitte der Enden ({rails}) {verdict}.</translation>
    </message>
    <message>
        <source>While it is drier than when it was made flat, one fastener at the middle of each end ({rails}) {verdict}.</source>
        <translation>Solange sie trockener ist als beim Ebnen, würde je eine Befestigung in der Mitte der Enden ({rails}) {verdict}.</translation>
    </message>
    <message>
        <source>Width of {what}, {unit}</source>
        <translation>Breite von {what}, {unit}</translation>
    </message>
    <message>
        <source>Width through the year</source>
        <translation>Breite durchs Jahr</translation>
    </message>
    <message>
        <source>Width through the year from January to December: dashed as built, dotted today; shaded where it lies two times in three. It is driest in {dry} and wettest in {wet}.</source>
        <translation>Breite durchs Jahr von Januar bis Dezember: gestrichelt wie gebaut, gepunktet heute; getönt, wo sie in zwei von drei Fällen liegt. Am trockensten im {dry}, am feuchtesten im {wet}.</translation>
    </message>
    <message>
        <source>Widths measured at delivery</source>
        <translation>Bei Lieferung gemessene Breiten</translation>
    </message>
    <message>
        <source>With its weight on its frame and no fastener it is at worst {flat} {unit} out of flat ({when}); wished is {wish} {unit} in every month.</source>
        <translation>Mit ihrem Gewicht auf dem Gestell und ohne Befestigung ist sie schlimmstenfalls um {flat} {unit} uneben ({when}); gewünscht sind {wish} {unit} in jedem Monat.</translation>
    </message>
    <message>
        <source>Wood dust harms the lungs and some of it sensitises; oily rags can ignite by themselves; finishes have their own safety sheets.</source>
        <translation>Holzstaub schadet der Lunge, mancher macht überempfindlich; ölige Lappen können sich selbst entzünden; Oberflächenmittel haben eigene Sicherheitsdatenblätter.</translation>
    </message>
    <message>
        <source>Wood today</source>
        <translation>Holz heute</translation>
    </message>
    <message>
        <source>Wood's temperature at the meter</source>
        <translation>Holztemperatur am Messgerät</translation>
    </message>
    <message>
        <source>Wood, rings, face</source>
        <translation>Holz, Ringe, Seite</translation>
    </message>
    <message>
        <source>Worked by, date</source>
        <translation>Ausgeführt von, Datum</translation>
    </message>
    <message>
        <source>Worst in</source>
        <translation>Am schlimmsten im</translation>
    </message>
    <message>
        <source>Written: {path}</source>
        <translation>Geschrieben: {path}</translation>
    </message>
    <message>
        <source>Written: {path} ({parts} parts, {cut} of them cut)</source>
        <translation>Geschrieben: {path} ({parts} Teile, {cut} davon geschnitten)</translation>
    </message>
    <message>
        <source>Written: {path} ({parts} parts, {told})</source>
        <translation>Geschrieben: {path} ({parts} Teile, {told})</translation>
    </message>
    <message>
        <source>Written: {path} ({top}: {screws} screws on {sheets})</source>
        <translation>Geschrieben: {path} ({top}: {screws} Schrauben auf {sheets})</translation>
    </message>
    <message>
        <source>YYYY-MM-DD</source>
        <translation>JJJJ-MM-TT</translation>
    </message>
    <message>
        <source>Year: {year}. Today: {date}.</source>
        <translation>Jahresgang: {year}. Heute: {date}.</translation>
    </message>
    <message>
        <source>Year: {year}: its air brings wood to {low:.1f} % in {dry} and {high:.1f} % in {wet}. Basis: {basis}.</source>
        <translation>Jahr: {year}: Seine Luft bringt Holz auf {low:.1f} % im {dry} und {high:.1f} % im {wet}. Grundlage: {basis}.</translation>
    </message>
    <message>
        <source>Z-shaped clip in a groove</source>
        <translation>Z-Klammer in einer Nut</translation>
    </message>
    <message>
        <source>[options]</source>
        <translation>[Optionen]</translation>
    </message>
    <message>
        <source>a CSV file</source>
        <translation>eine CSV-Datei</translation>
    </message>
    <message>
        <source>a FreeCAD document (.FCStd), STEP (.step, .stp) or BREP (.brep, .brp)</source>
        <translation>ein FreeCAD-Dokument (.FCStd), STEP (.step, .stp) oder BREP (.brep, .brp)</translation>
    </message>
    <message>
        <source>a PDF needs the plotting library matplotlib, which is not installed here</source>
        <translation>ein PDF braucht die Zeichenbibliothek matplotlib, die hier nicht installiert ist</translation>
    </message>
    <message>
        <source>a bar without length or stiffness</source>
        <translation>eine Leiste ohne Länge oder Steifigkeit</translation>
    </message>
    <message>
        <source>a baseline: findings that are accepted: only new or graver ones count</source>
        <translation>eine Grundlage aus angenommenen Befunden: nur neue oder schwerere zählen</translation>
    </message>
    <message>
        <source>a board differs by, %</source>
        <translation>ein Brett weicht ab um, %</translation>
    </message>
    <message>
        <source>a board that is let go may spring: keep clear of its edges</source>
        <translation>ein Brett, das freikommt, kann aufspringen: von seinen Kanten wegbleiben</translation>
    </message>
    <message>
        <source>a breadboard end</source>
        <translation>eine Hirnleiste</translation>
    </message>
    <message>
        <source>a change within four standard deviations of what some lot would do</source>
        <translation>eine Änderung innerhalb von vier Standardabweichungen dessen, was irgendeine Charge täte</translation>
    </message>
    <message>
        <source>a cold board reads low</source>
        <translation>ein kaltes Brett zeigt zu wenig an</translation>
    </message>
    <message>
        <source>a column 'part' and any of: </source>
        <translation>eine Spalte „part“ und beliebige von: </translation>
    </message>
    <message>
        <source>a cross-rail in the middle with three anchors would leave {flat:.1f} mm out of flat</source>
        <translation>mit einer Querzarge in der Mitte und drei Befestigungen daran bliebe sie um {flat:.1f} mm uneben</translation>
    </message>
    <message>
        <source>a date, a time, a temperature and a humidity a line, parted by comma, semicolon or tab</source>
        <translation>je Zeile ein Datum, eine Uhrzeit, eine Temperatur und eine Feuchte, durch Komma, Semikolon oder Tabulator getrennt</translation>
    </message>
    <message>
        <source>a direction</source>
        <translation>eine Richtung</translation>
    </message>
    <message>
        <source>a document object, or several of one document</source>
        <translation>ein Objekt eines Dokuments, oder mehrere desselben Dokuments</translation>
    </message>
    <message>
        <source>a dry spring and a wet summer in a house open to the air: own assumption</source>
        <translation>ein trockener Frühling und ein nasser Sommer in einem offenen Haus: eigene Annahme</translation>
    </message>
    <message>
        <source>a face or an edge</source>
        <translation>eine Fläche oder eine Kante</translation>
    </message>
    <message>
        <source>a face that must show is down</source>
        <translation>eine Seite, die zu sehen sein muss, liegt unten</translation>
    </message>
    <message>
        <source>a fault in Heartside itself ({kind}: {error}). To do: tell its makers what was typed and what --debug adds to it.</source>
        <translation>ein Fehler in Heartside selbst ({kind}: {error}). Zu tun: den Machern sagen, was eingegeben wurde und was --debug hinzufügt.</translation>
    </message>
    <message>
        <source>a finish and its coats, such as 'varnish 2', or 'bare'</source>
        <translation>eine Oberfläche und ihre Schichten, etwa „varnish 2“, oder „bare“</translation>
    </message>
    <message>
        <source>a finite number</source>
        <translation>eine endliche Zahl</translation>
    </message>
    <message>
        <source>a folder</source>
        <translation>ein Ordner</translation>
    </message>
    <message>
        <source>a gap</source>
        <translation>eine Lücke</translation>
    </message>
    <message>
        <source>a gap, step or cup that shows</source>
        <translation>eine Fuge, ein Absatz oder eine Wölbung, die man sieht</translation>
    </message>
    <message>
        <source>a glued panel, or one board of 150 mm and wider, that lies level, is not housed on two sides and is no layer between others</source>
        <translation>eine verleimte Fläche oder ein einzelnes Brett ab 150 mm, das waagrecht liegt, nicht an zwei Seiten eingenutet und keine Lage zwischen anderen ist</translation>
    </message>
    <message>
        <source>a heading line</source>
        <translation>eine Kopfzeile</translation>
    </message>
    <message>
        <source>a heart side was said, so the board is taken as flat-sawn</source>
        <translation>eine Kernseite ist gesagt, also gilt das Brett als eines mit liegenden Ringen</translation>
    </message>
    <message>
        <source>a humidifier that keeps 40 % in winter: own assumption</source>
        <translation>ein Befeuchter, der im Winter 40 % hält: eigene Annahme</translation>
    </message>
    <message>
        <source>a humidity of {rh:g} % looks like a fraction</source>
        <translation>eine Feuchte von {rh:g} % sieht nach einem Bruchteil aus</translation>
    </message>
    <message>
        <source>a joint kept in the document: {problem}</source>
        <translation>eine im Dokument aufbewahrte Verbindung: {problem}</translation>
    </message>
    <message>
        <source>a laying of {order}, {over}, {turned}</source>
        <translation>eine Lage aus {order}, {over}, {turned}</translation>
    </message>
    <message>
        <source>a least gap of {wanted_least!r} mm</source>
        <translation>eine Mindestfuge von {wanted_least!r} mm</translation>
    </message>
    <message>
        <source>a list of numbers</source>
        <translation>eine Liste von Zahlen</translation>
    </message>
    <message>
        <source>a lot without a name</source>
        <translation>eine Charge ohne Namen</translation>
    </message>
    <message>
        <source>a mesh, not a solid: make a solid of it first</source>
        <translation>ein Netz, kein Körper: erst einen Körper daraus machen</translation>
    </message>
    <message>
        <source>a meter of kind {kind!r}</source>
        <translation>ein Messgerät der Art {kind!r}</translation>
    </message>
    <message>
        <source>a moisture content lies above the start of shrinkage</source>
        <translation>eine Holzfeuchte liegt über dem Beginn des Schwindens</translation>
    </message>
    <message>
        <source>a moisture content of furniture wood</source>
        <translation>eine Holzfeuchte von Möbelholz</translation>
    </message>
    <message>
        <source>a moisture of 0 % or more</source>
        <translation>eine Feuchte von 0 % oder mehr</translation>
    </message>
    <message>
        <source>a number</source>
        <translation>eine Zahl</translation>
    </message>
    <message>
        <source>a number or ({cells},)</source>
        <translation>eine Zahl oder ({cells},)</translation>
    </message>
    <message>
        <source>a number or a row of samples</source>
        <translation>eine Zahl oder eine Reihe von Werten</translation>
    </message>
    <message>
        <source>a panel without boards</source>
        <translation>eine Platte ohne Bretter</translation>
    </message>
    <message>
        <source>a peg {at:.0f} mm from the middle of the top, where it moves {travels:.1f} mm, has {room:.1f} mm of room: the top splits between its pegs</source>
        <translation>ein Holznagel {at:.0f} mm von der Plattenmitte, wo sie sich {travels:.1f} mm bewegt, hat {room:.1f} mm Spiel: Die Platte reißt zwischen ihren Holznägeln</translation>
    </message>
    <message>
        <source>a piece of the frame on its edges (face frame, plinth)</source>
        <translation>ein Stück des Rahmens auf ihren Kanten (Blendrahmen, Sockel)</translation>
    </message>
    <message>
        <source>a pith inside</source>
        <translation>ein Mark im Querschnitt</translation>
    </message>
    <message>
        <source>a pith position (across the width and through the thickness, mm)</source>
        <translation>ein Ort des Marks (quer über die Breite und durch die Dicke, mm)</translation>
    </message>
    <message>
        <source>a pith, or a ring angle with heart side and radius</source>
        <translation>ein Mark, oder ein Ringwinkel mit Kernseite und Radius</translation>
    </message>
    <message>
        <source>a place across the width</source>
        <translation>ein Ort quer über die Breite</translation>
    </message>
    <message>
        <source>a point or the fixed line ({fixed:g} mm) lies beyond the part's edges</source>
        <translation>ein Punkt oder die feste Linie ({fixed:g} mm) liegt außerhalb der Kanten des Teils</translation>
    </message>
    <message>
        <source>a positive value</source>
        <translation>ein Wert über 0</translation>
    </message>
    <message>
        <source>a reach of {reach!r} mm</source>
        <translation>eine Reichweite von {reach!r} mm</translation>
    </message>
    <message>
        <source>a ring angle</source>
        <translation>ein Ringwinkel</translation>
    </message>
    <message>
        <source>a ring angle of {angle:.0f}° is not {cut}-sawn ({least:g} to {most:g}°); the angle counts</source>
        <translation>ein Ringwinkel von {angle:.0f}° ist nicht „{cut}“ ({least:g} bis {most:g}°); der Winkel gilt</translation>
    </message>
    <message>
        <source>a round face of it would take {count:,.0f} facets</source>
        <translation>eine runde Fläche daran bräuchte {count:,.0f} Facetten</translation>
    </message>
    <message>
        <source>a round part sits in a round hole</source>
        <translation>ein rundes Teil sitzt in einem runden Loch</translation>
    </message>
    <message>
        <source>a round tenon {diameter:.0f} mm thick gets {play:.1f} mm of play in its hole in the dry season{crushes}: both go oval, each in its own way, and glue bridges no more than {bridged:.2f} mm (common practice, no source)</source>
        <translation>ein Rundzapfen von {diameter:.0f} mm bekommt in der trockenen Zeit {play:.1f} mm Luft in seinem Loch{crushes}: Beide werden oval, jeder auf seine Weise, und Leim überbrückt höchstens {bridged:.2f} mm (übliche Praxis, keine Quelle)</translation>
    </message>
    <message>
        <source>a section that holds its pith is not free of stress: use solve_boxed_heart</source>
        <translation>ein Querschnitt, der sein Mark enthält, ist nicht frei von Spannung: solve_boxed_heart nehmen</translation>
    </message>
    <message>
        <source>a shrinkage is out of range</source>
        <translation>ein Schwindmaß liegt außerhalb des Bereichs</translation>
    </message>
    <message>
        <source>a single reading</source>
        <translation>eine einzelne Messung</translation>
    </message>
    <message>
        <source>a sink that can be reached</source>
        <translation>eine Einfallstelle, die erreichbar ist</translation>
    </message>
    <message>
        <source>a slot is at least as long as it is wide</source>
        <translation>ein Langloch ist mindestens so lang wie breit</translation>
    </message>
    <message>
        <source>a solid without faces</source>
        <translation>ein Körper ohne Flächen</translation>
    </message>
    <message>
        <source>a split is not to fear</source>
        <translation>ein Riss ist nicht zu befürchten</translation>
    </message>
    <message>
        <source>a split is {chance}</source>
        <translation>ein Riss ist {chance}</translation>
    </message>
    <message>
        <source>a tenon {width:.0f} mm wide, taken as glued, crosses the other's grain and moves {least:+.1f} to {most:+.1f} mm against it (tenons are divided above {some:.0f} to {limit:.0f} mm; common practice, no source)</source>
        <translation>ein {width:.0f} mm breiter Zapfen, als geleimt angenommen, kreuzt die Faser des anderen Teils und bewegt sich {least:+.1f} bis {most:+.1f} mm gegen sie (über {some:.0f} bis {limit:.0f} mm werden Zapfen geteilt; übliche Praxis, keine Quelle)</translation>
    </message>
    <message>
        <source>a top {thick:.0f} mm thick would pull with {pull:.0f} N instead of {worst:.0f} N ({flat:.1f} mm out of flat): a thicker one cups as much and pulls harder</source>
        <translation>eine Platte von {thick:.0f} mm Dicke würde mit {pull:.0f} N statt {worst:.0f} N ziehen (um {flat:.1f} mm uneben): Eine dickere wölbt sich ebenso und zieht stärker</translation>
    </message>
    <message>
        <source>a unit in the heading or the cell</source>
        <translation>eine Einheit im Kopf oder in der Zelle</translation>
    </message>
    <message>
        <source>a value of type {name}</source>
        <translation>ein Wert der Art {name}</translation>
    </message>
    <message>
        <source>a wet face</source>
        <translation>eine nasse Seite</translation>
    </message>
    <message>
        <source>a whole number of coats, 1 to {most_coats}</source>
        <translation>eine ganze Zahl von Schichten, 1 bis {most_coats}</translation>
    </message>
    <message>
        <source>a year by name ('years'), a place ('places'), or a .csv file of twelve months or of a logger</source>
        <translation>ein Jahresgang beim Namen („years“), ein Ort („places“), oder eine .csv-Datei mit zwölf Monaten oder von einem Datenlogger</translation>
    </message>
    <message>
        <source>a yearly mean of {temperature:.0f} °C</source>
        <translation>ein Jahresmittel von {temperature:.0f} °C</translation>
    </message>
    <message>
        <source>about 1 °C uncertain</source>
        <translation>auf etwa 1 °C unsicher</translation>
    </message>
    <message>
        <source>about 5 % uncertain</source>
        <translation>auf etwa 5 % unsicher</translation>
    </message>
    <message>
        <source>about {mm}, at most {most} {unit} {way} at each edge in the {when} time</source>
        <translation>etwa {mm}, höchstens {most} {unit} {way} an jeder Kante, {when}</translation>
    </message>
    <message>
        <source>above 0 MPa</source>
        <translation>über 0 MPa</translation>
    </message>
    <message>
        <source>above 0 mm</source>
        <translation>über 0 mm</translation>
    </message>
    <message>
        <source>above 0 to 100 mm</source>
        <translation>über 0 bis 100 mm</translation>
    </message>
    <message>
        <source>above 0, below 50 %</source>
        <translation>über 0, unter 50 %</translation>
    </message>
    <message>
        <source>above {wettest_marched:g} % there is free water in it: the wait is counted from there on, and the drying before that comes on top</source>
        <translation>über {wettest_marched:g} % ist freies Wasser darin: Die Wartezeit zählt von da an, das Trocknen davor kommt hinzu</translation>
    </message>
    <message>
        <source>above −1 (a fraction: −0.01 is one percent of shrinkage)</source>
        <translation>über −1 (ein Bruchteil: −0.01 ist ein Prozent Schwindung)</translation>
    </message>
    <message>
        <source>accept all that is found now, and write that baseline</source>
        <translation>alles annehmen, was jetzt gefunden wird, und diese Grundlage schreiben</translation>
    </message>
    <message>
        <source>accepted, and written: {path}</source>
        <translation>angenommen und geschrieben: {path}</translation>
    </message>
    <message>
        <source>across</source>
        <translation>quer</translation>
    </message>
    <message>
        <source>across its grain</source>
        <translation>quer zu ihrer Faser</translation>
    </message>
    <message>
        <source>across its grain it grows {growth:.1f} mm wider than drawn and its grooves leave it {room:.1f} mm: {short:.1f} mm too little. It pushes them apart, or buckles</source>
        <translation>er wird quer zur Faser {growth:.1f} mm breiter als gezeichnet, und seine Nuten lassen ihm {room:.1f} mm: {short:.1f} mm zu wenig. Er drückt die Teile neben sich auseinander oder beult aus</translation>
    </message>
    <message>
        <source>across the grain</source>
        <translation>quer zur Faser</translation>
    </message>
    <message>
        <source>add --built-on</source>
        <translation>--built-on hinzufügen</translation>
    </message>
    <message>
        <source>add --force to replace what is there, or name another folder with --output</source>
        <translation>--force hinzufügen, um zu ersetzen, was da ist, oder mit --output einen anderen Ordner nennen</translation>
    </message>
    <message>
        <source>add --shop</source>
        <translation>--shop hinzufügen</translation>
    </message>
    <message>
        <source>add a row of this name to it</source>
        <translation>dort eine Zeile mit diesem Namen anlegen</translation>
    </message>
    <message>
        <source>add the date it was built</source>
        <translation>den Tag angeben, an dem es gebaut wurde</translation>
    </message>
    <message>
        <source>add the shop's year</source>
        <translation>den Jahresgang der Werkstatt angeben</translation>
    </message>
    <message>
        <source>against a strength of {strength:g}</source>
        <translation>gegen eine Festigkeit von {strength:g}</translation>
    </message>
    <message>
        <source>air below boiling</source>
        <translation>Luft unter dem Siedepunkt</translation>
    </message>
    <message>
        <source>air pressure</source>
        <translation>Luftdruck</translation>
    </message>
    <message>
        <source>air {name!r}</source>
        <translation>Luft {name!r}</translation>
    </message>
    <message>
        <source>alkyd primer</source>
        <translation>Alkydgrundierung</translation>
    </message>
    <message>
        <source>all three edges</source>
        <translation>alle drei Kanten</translation>
    </message>
    <message>
        <source>all year</source>
        <translation>das ganze Jahr</translation>
    </message>
    <message>
        <source>allow a deeper sink, use less water, or warm the room</source>
        <translation>eine tiefere Einfallstelle zulassen, weniger Wasser nehmen oder den Raum wärmen</translation>
    </message>
    <message>
        <source>allowed</source>
        <translation>zulässig</translation>
    </message>
    <message>
        <source>allowed {pull:.0f} N ({weakest}, ultimate ÷ {safety:g})</source>
        <translation>zulässig {pull:.0f} N ({weakest}, Bruchlast ÷ {safety:g})</translation>
    </message>
    <message>
        <source>along it</source>
        <translation>längs</translation>
    </message>
    <message>
        <source>along its slot, across the rail</source>
        <translation>längs des Langlochs, quer zur Zarge</translation>
    </message>
    <message>
        <source>along its slot, with the rail</source>
        <translation>längs des Langlochs, mit der Zarge</translation>
    </message>
    <message>
        <source>along the grain; with it a twist is worked out</source>
        <translation>längs zur Faser; damit wird eine Verdrehung berechnet</translation>
    </message>
    <message>
        <source>along the groove</source>
        <translation>längs der Nut</translation>
    </message>
    <message>
        <source>along ±{length:g} mm, across ±{width:g} mm</source>
        <translation>längs ±{length:g} mm, quer ±{width:g} mm</translation>
    </message>
    <message>
        <source>along ±{length:g} mm, across ±{width:g} mm, inside its outline</source>
        <translation>längs ±{length:g} mm, quer ±{width:g} mm, innerhalb ihres Umrisses</translation>
    </message>
    <message>
        <source>an assembly holds it by its joints; cut it in the document or container that it comes from</source>
        <translation>eine Baugruppe hält es mit ihren Verbindungen; im Dokument oder Behälter schneiden, aus dem es kommt</translation>
    </message>
    <message>
        <source>an end after the beginning</source>
        <translation>ein Ende nach dem Anfang</translation>
    </message>
    <message>
        <source>an overlap</source>
        <translation>eine Überlappung</translation>
    </message>
    <message>
        <source>anchors together are allowed less than {times:g} times the top's weight</source>
        <translation>die Befestigungen dürfen zusammen weniger als das {times:g}-fache Gewicht der Platte tragen</translation>
    </message>
    <message>
        <source>and {count} more</source>
        <translation>und {count} weitere</translation>
    </message>
    <message>
        <source>and {count} more remarks: see the plan</source>
        <translation>und {count} weitere Bemerkungen: siehe Plan</translation>
    </message>
    <message>
        <source>and {unreadable_count} more lines unread</source>
        <translation>und {unreadable_count} weitere Zeilen ungelesen</translation>
    </message>
    <message>
        <source>angle to the grain</source>
        <translation>Winkel zur Faser</translation>
    </message>
    <message>
        <source>annotated  {path}</source>
        <translation>beschriftet  {path}</translation>
    </message>
    <message>
        <source>any other (x, y)</source>
        <translation>jedes andere (x, y)</translation>
    </message>
    <message>
        <source>any word</source>
        <translation>ein beliebiges Wort</translation>
    </message>
    <message>
        <source>apart</source>
        <translation>auseinander</translation>
    </message>
    <message>
        <source>argument {name}: expected at least one argument</source>
        <translation>Option {name}: mindestens ein Wert fehlt</translation>
    </message>
    <message>
        <source>argument {name}: expected one argument</source>
        <translation>Option {name}: ein Wert fehlt</translation>
    </message>
    <message>
        <source>argument {name}: invalid choice: {value} (choose from {choices})</source>
        <translation>Option {name}: {value} steht nicht zur Wahl (zur Wahl stehen: {choices})</translation>
    </message>
    <message>
        <source>argument {name}: invalid int value: {value}</source>
        <translation>Option {name}: {value} ist keine ganze Zahl</translation>
    </message>
    <message>
        <source>argument {name}: not allowed with argument {other}</source>
        <translation>Option {name}: nicht zusammen mit {other}</translation>
    </message>
    <message>
        <source>argument {name}: {what}</source>
        <translation>Option {name}: {what}</translation>
    </message>
    <message>
        <source>arid upland home</source>
        <translation>trockenes Hochland</translation>
    </message>
    <message>
        <source>arrangement study</source>
        <translation>Untersuchung der Lage</translation>
    </message>
    <message>
        <source>as built</source>
        <translation>wie gebaut</translation>
    </message>
    <message>
        <source>as drawn</source>
        <translation>wie gezeichnet</translation>
    </message>
    <message>
        <source>as far as its arm swings</source>
        <translation>so weit ihr Arm schwenkt</translation>
    </message>
    <message>
        <source>as-built moisture</source>
        <translation>Feuchte beim Bau</translation>
    </message>
    <message>
        <source>aside</source>
        <translation>daneben</translation>
    </message>
    <message>
        <source>ask for more points</source>
        <translation>mehr Punkte verlangen</translation>
    </message>
    <message>
        <source>at</source>
        <translation>bei</translation>
    </message>
    <message>
        <source>at each edge it stands {least:+.1f} to {most:+.1f} mm from the top through the year (+ proud, - short), if the top is held in the middle</source>
        <translation>an jeder Kante steht sie im Jahr {least:+.1f} bis {most:+.1f} mm zur Platte (+ vor, - zurück), wenn die Platte in der Mitte gehalten ist</translation>
    </message>
    <message>
        <source>at least one</source>
        <translation>mindestens eines</translation>
    </message>
    <message>
        <source>at least one reading</source>
        <translation>mindestens eine Messung</translation>
    </message>
    <message>
        <source>at least {days_of_a_month} days a month</source>
        <translation>mindestens {days_of_a_month} Tage im Monat</translation>
    </message>
    <message>
        <source>at most one blocked face</source>
        <translation>höchstens eine dichte Seite</translation>
    </message>
    <message>
        <source>at most {start:g} %</source>
        <translation>höchstens {start:g} %</translation>
    </message>
    <message>
        <source>at most {worst_unreadable:.0f} % damaged lines</source>
        <translation>höchstens {worst_unreadable:.0f} % beschädigte Zeilen</translation>
    </message>
    <message>
        <source>at {picked:.0f} {picked2:.0f}</source>
        <translation>auf {picked:.0f} {picked2:.0f}</translation>
    </message>
    <message>
        <source>at {place:+.0f} mm</source>
        <translation>bei {place:+.0f} mm</translation>
    </message>
    <message>
        <source>average longer records over the years, leave 29 February out</source>
        <translation>längere Aufzeichnungen über die Jahre mitteln, den 29. Februar weglassen</translation>
    </message>
    <message>
        <source>away from it</source>
        <translation>davon weg</translation>
    </message>
    <message>
        <source>back fixed across</source>
        <translation>Rückwand quer befestigt</translation>
    </message>
    <message>
        <source>back leaves its rabbet</source>
        <translation>Rückwand verlässt den Falz</translation>
    </message>
    <message>
        <source>back presses</source>
        <translation>Rückwand drückt</translation>
    </message>
    <message>
        <source>bar stress</source>
        <translation>Spannung der Leiste</translation>
    </message>
    <message>
        <source>bar {name!r}</source>
        <translation>Leiste {name!r}</translation>
    </message>
    <message>
        <source>bare</source>
        <translation>roh</translation>
    </message>
    <message>
        <source>bark side shows</source>
        <translation>Splintseite sichtbar</translation>
    </message>
    <message>
        <source>batten</source>
        <translation>Querleiste</translation>
    </message>
    <message>
        <source>beam {name!r}</source>
        <translation>Leiste {name!r}</translation>
    </message>
    <message>
        <source>bearing {name!r}</source>
        <translation>Auflager {name!r}</translation>
    </message>
    <message>
        <source>becomes</source>
        <translation>wird</translation>
    </message>
    <message>
        <source>bed rail fittings</source>
        <translation>Bettbeschläge</translation>
    </message>
    <message>
        <source>before: {path}</source>
        <translation>vorher: {path}</translation>
    </message>
    <message>
        <source>begin its mortise {inside:.0f} mm inside the face, give it a slope of 1 in 8 to 1 in 10 so that it can be driven further, and drive it again in the dry season</source>
        <translation>sein Loch {inside:.0f} mm innerhalb der Fläche beginnen, ihm eine Neigung von 1:8 bis 1:10 geben, damit er weiter getrieben werden kann, und ihn in der trockenen Zeit nachtreiben</translation>
    </message>
    <message>
        <source>below {most:.2f} for these moduli</source>
        <translation>unter {most:.2f} bei diesen Moduln</translation>
    </message>
    <message>
        <source>below_freezing</source>
        <translation>below_freezing</translation>
    </message>
    <message>
        <source>bend</source>
        <translation>Biegung</translation>
    </message>
    <message>
        <source>bend angle</source>
        <translation>Biegewinkel</translation>
    </message>
    <message>
        <source>bending and shear of the tongue</source>
        <translation>Biegung und Abscheren der Feder</translation>
    </message>
    <message>
        <source>bending of the base</source>
        <translation>Biegung des Gestells</translation>
    </message>
    <message>
        <source>bending of the clip</source>
        <translation>Biegung der Klammer</translation>
    </message>
    <message>
        <source>bending of the plate</source>
        <translation>Biegung des Beschlags</translation>
    </message>
    <message>
        <source>bent by more than half its thickness: beyond thin-plate theory, forces are a guess</source>
        <translation>um mehr als die halbe Dicke gebogen: jenseits der Theorie dünner Platten, die Kräfte sind geraten</translation>
    </message>
    <message>
        <source>best looks</source>
        <translation>schönste</translation>
    </message>
    <message>
        <source>between</source>
        <translation>zwischen</translation>
    </message>
    <message>
        <source>blocked</source>
        <translation>verschlossen</translation>
    </message>
    <message>
        <source>board</source>
        <translation>Brett</translation>
    </message>
    <message>
        <source>board of {thickness_mm:g} mm</source>
        <translation>Brett von {thickness_mm:g} mm</translation>
    </message>
    <message>
        <source>board {i} is a {name}</source>
        <translation>Brett {i} ist ein {name}</translation>
    </message>
    <message>
        <source>board {name!r}</source>
        <translation>Brett {name!r}</translation>
    </message>
    <message>
        <source>board {name}</source>
        <translation>Brett {name}</translation>
    </message>
    <message>
        <source>board {number}</source>
        <translation>Brett {number}</translation>
    </message>
    <message>
        <source>boards</source>
        <translation>Bretter</translation>
    </message>
    <message>
        <source>boards may be turned end for end</source>
        <translation>Bretter dürfen Ende gegen Ende gedreht werden</translation>
    </message>
    <message>
        <source>boards may change places</source>
        <translation>Bretter dürfen die Plätze tauschen</translation>
    </message>
    <message>
        <source>boards of one panel, their grain the same way, their edges within 0.2 mm</source>
        <translation>Bretter einer Platte mit gleicher Faserrichtung, ihre Kanten auf 0,2 mm beisammen</translation>
    </message>
    <message>
        <source>boards of one size changing places, or any board turned where it lies</source>
        <translation>Bretter gleicher Größe, die Plätze tauschen, oder jedes Brett, das an seinem Ort gewendet wird</translation>
    </message>
    <message>
        <source>boards that cup no more than {share:.0f} % of these would do with this plan: narrower boards (halving the width leaves a quarter to two fifths of the cup), quarter-sawn ones, or building nearer to the moisture of use</source>
        <translation>Bretter, die sich höchstens {share:.0f} % so stark wölben wie diese, kämen mit diesem Plan aus: schmalere (die halbe Breite lässt ein Viertel bis zwei Fünftel der Wölbung), solche mit stehenden Ringen, oder näher an der Feuchte im Gebrauch bauen</translation>
    </message>
    <message>
        <source>boards whose answer settles within that time</source>
        <translation>Bretter, die sich in dieser Zeit einschwingen</translation>
    </message>
    <message>
        <source>boiled linseed oil</source>
        <translation>Leinölfirnis</translation>
    </message>
    <message>
        <source>botanical</source>
        <translation>botanisch</translation>
    </message>
    <message>
        <source>both ends are housed and the part is thin, as a drawer bottom</source>
        <translation>beide Enden sind eingelassen und das Teil ist dünn, wie ein Schubladenboden</translation>
    </message>
    <message>
        <source>both faces are blocked: through its thickness it never answers the air</source>
        <translation>beide Seiten sind dicht: Durch seine Dicke folgt es der Luft nie</translation>
    </message>
    <message>
        <source>both faces have the same finish</source>
        <translation>beide Seiten haben dieselbe Oberfläche</translation>
    </message>
    <message>
        <source>both faces, such as 'show varnish 2, back bare'</source>
        <translation>beide Seiten, etwa „show varnish 2, back bare“</translation>
    </message>
    <message>
        <source>both long edges are housed in other parts, as a panel in a frame</source>
        <translation>beide langen Kanten sind in andere Teile eingelassen, wie bei einer Füllung im Rahmen</translation>
    </message>
    <message>
        <source>both readings</source>
        <translation>beide Messwerte</translation>
    </message>
    <message>
        <source>both the density it is set to and the wood's, or neither</source>
        <translation>sowohl die eingestellte Dichte als auch die des Holzes, oder keine</translation>
    </message>
    <message>
        <source>both, or neither</source>
        <translation>beides, oder keines</translation>
    </message>
    <message>
        <source>bow</source>
        <translation>Durchbiegung</translation>
    </message>
    <message>
        <source>breadboard end</source>
        <translation>Hirnleiste</translation>
    </message>
    <message>
        <source>breadboard ends {breadth:.0f} mm wide, a tongue with {play:g} mm of play, would leave {flat:.1f} mm out of flat</source>
        <translation>mit Hirnleisten von {breadth:.0f} mm Breite, deren Feder {play:g} mm Spiel hat, bliebe sie um {flat:.1f} mm uneben</translation>
    </message>
    <message>
        <source>breadboard glued</source>
        <translation>Hirnleiste verleimt</translation>
    </message>
    <message>
        <source>breadboard peg binds</source>
        <translation>Holznagel der Hirnleiste klemmt</translation>
    </message>
    <message>
        <source>breadboard proud</source>
        <translation>Hirnleiste steht vor</translation>
    </message>
    <message>
        <source>breadboard tongue binds</source>
        <translation>Feder der Hirnleiste klemmt</translation>
    </message>
    <message>
        <source>breadth and depth must be above 0</source>
        <translation>Breite und Höhe müssen über 0 sein</translation>
    </message>
    <message>
        <source>breadth, depth and modulus must be above 0</source>
        <translation>Breite, Höhe und Modul müssen über 0 sein</translation>
    </message>
    <message>
        <source>breaks</source>
        <translation>bricht</translation>
    </message>
    <message>
        <source>bring it back to {mc:.1f} % and it comes back; hold it by fasteners that let it move</source>
        <translation>auf {mc:.1f} % zurückbringen, und es kommt zurück; im Holz bleibt es, also mit Befestigungen halten, die es arbeiten lassen</translation>
    </message>
    <message>
        <source>bring it back to {mc:.1f} %; plane it true only when it has settled, and choose straight grain next time</source>
        <translation>auf {mc:.1f} % zurückbringen; erst abrichten, wenn es zur Ruhe gekommen ist, und nächstes Mal gerade Faser wählen</translation>
    </message>
    <message>
        <source>build, check and annotate the demo models</source>
        <translation>die Vorführmodelle bauen, prüfen und beschriften</translation>
    </message>
    <message>
        <source>button</source>
        <translation>Nutklotz</translation>
    </message>
    <message>
        <source>by how much the rings lie turned at the other end against this one: lay a pencil toward the tree's centre on both</source>
        <translation>wie weit die Jahrringe am anderen Ende gegen dieses verdreht liegen: an beiden einen Bleistift zur Baummitte hin anlegen</translation>
    </message>
    <message>
        <source>by the meshes of their curved faces they are drawn in the same place, some {depth:.2f} mm deep: what joins them cannot be told</source>
        <translation>nach den Netzen ihrer runden Flächen sind sie am selben Ort gezeichnet, etwa {depth:.2f} mm tief: Was sie verbindet, ist nicht zu sagen</translation>
    </message>
    <message>
        <source>byte {byte} is no text: this is not a logger's text file</source>
        <translation>Byte {byte} ist kein Text: Dies ist keine Textdatei eines Loggers</translation>
    </message>
    <message>
        <source>came</source>
        <translation>hinzugekommen</translation>
    </message>
    <message>
        <source>cannot be judged until something is said</source>
        <translation>lässt sich erst beurteilen, wenn etwas gesagt ist</translation>
    </message>
    <message>
        <source>cells</source>
        <translation>Zellen</translation>
    </message>
    <message>
        <source>centre, an edge as a direction such as +y in the object's own axes, or mm from the middle</source>
        <translation>centre, eine Kante als Richtung wie +y in den eigenen Achsen des Objekts, oder mm von der Mitte</translation>
    </message>
    <message>
        <source>change driest</source>
        <translation>Änderung am trockensten</translation>
    </message>
    <message>
        <source>change its permissions</source>
        <translation>ihre Zugriffsrechte ändern</translation>
    </message>
    <message>
        <source>change of moisture</source>
        <translation>Änderung der Feuchte</translation>
    </message>
    <message>
        <source>change wettest</source>
        <translation>Änderung am feuchtesten</translation>
    </message>
    <message>
        <source>changed</source>
        <translation>geändert</translation>
    </message>
    <message>
        <source>check anew</source>
        <translation>neu prüfen</translation>
    </message>
    <message>
        <source>check both widths, in mm, and that the coefficient is that across this stick</source>
        <translation>beide Breiten in mm prüfen, und ob der Beiwert für diese Richtung gilt</translation>
    </message>
    <message>
        <source>check its name</source>
        <translation>ihren Namen prüfen</translation>
    </message>
    <message>
        <source>check its units, or the scale of its link</source>
        <translation>die Einheiten oder den Maßstab der Verknüpfung prüfen</translation>
    </message>
    <message>
        <source>check that the support and the anchors are those meant; report the case if they are</source>
        <translation>prüfen, ob Auflager und Befestigungen die gemeinten sind; wenn ja, den Fall melden</translation>
    </message>
    <message>
        <source>check that this is the logger's own export, whole and undamaged</source>
        <translation>prüfen, ob dies die eigene Ausgabe des Loggers ist, ganz und unbeschädigt</translation>
    </message>
    <message>
        <source>check the dates, or export again</source>
        <translation>die Daten prüfen oder neu ausgeben</translation>
    </message>
    <message>
        <source>check the file and its permissions</source>
        <translation>die Datei und ihre Zugriffsrechte prüfen</translation>
    </message>
    <message>
        <source>check the file, or give date_order='dmy', 'mdy' or 'ymd'</source>
        <translation>die Datei prüfen, oder date_order='dmy', 'mdy' oder 'ymd' angeben</translation>
    </message>
    <message>
        <source>check the model</source>
        <translation>das Modell prüfen</translation>
    </message>
    <message>
        <source>check the name</source>
        <translation>den Namen prüfen</translation>
    </message>
    <message>
        <source>check the name and the folder</source>
        <translation>den Namen und den Ordner prüfen</translation>
    </message>
    <message>
        <source>check the part's geometry</source>
        <translation>die Form des Teils prüfen</translation>
    </message>
    <message>
        <source>check the sign, both widths and both moistures</source>
        <translation>das Vorzeichen, beide Breiten und beide Feuchten prüfen</translation>
    </message>
    <message>
        <source>check the temperature and the species correction</source>
        <translation>die Temperatur und die Korrektur für die Holzart prüfen</translation>
    </message>
    <message>
        <source>check the units</source>
        <translation>die Einheiten prüfen</translation>
    </message>
    <message>
        <source>check which column is which and the unit: columns=…, temperature_unit=…</source>
        <translation>prüfen, welche Spalte welche ist, und die Einheit: columns=…, temperature_unit=…</translation>
    </message>
    <message>
        <source>choose a board to copy from</source>
        <translation>ein Brett wählen, von dem kopiert wird</translation>
    </message>
    <message>
        <source>choose a board whose grain runs along it on both faces, let it dry and flatten it again before the joints are cut, or use it where the frame holds it</source>
        <translation>ein Brett wählen, dessen Faser auf beiden Seiten längs läuft, es trocknen lassen und noch einmal abrichten, ehe die Verbindungen geschnitten werden, oder es dort verwenden, wo der Rahmen es hält</translation>
    </message>
    <message>
        <source>choose another</source>
        <translation>ein anderes wählen</translation>
    </message>
    <message>
        <source>choose another plan</source>
        <translation>einen anderen Plan wählen</translation>
    </message>
    <message>
        <source>choose one of these</source>
        <translation>eines davon wählen</translation>
    </message>
    <message>
        <source>choose one or more joints first</source>
        <translation>erst eine oder mehrere Verbindungen wählen</translation>
    </message>
    <message>
        <source>choose the one nearest in kind</source>
        <translation>den ähnlichsten wählen</translation>
    </message>
    <message>
        <source>click one of its faces</source>
        <translation>eine seiner Flächen anklicken</translation>
    </message>
    <message>
        <source>click the face that was nearer the centre of the tree</source>
        <translation>die Fläche anklicken, die näher an der Stammmitte lag</translation>
    </message>
    <message>
        <source>climate</source>
        <translation>Klima</translation>
    </message>
    <message>
        <source>climate normals</source>
        <translation>Klimamittelwerte</translation>
    </message>
    <message>
        <source>clip</source>
        <translation>Klammer</translation>
    </message>
    <message>
        <source>close it first</source>
        <translation>sie erst schließen</translation>
    </message>
    <message>
        <source>closes, {missing} missing</source>
        <translation>schließt sich, {missing} fehlen</translation>
    </message>
    <message>
        <source>code {number}</source>
        <translation>Code {number}</translation>
    </message>
    <message>
        <source>coefficient</source>
        <translation>Beiwert</translation>
    </message>
    <message>
        <source>coefficient of variation</source>
        <translation>Variationskoeffizient</translation>
    </message>
    <message>
        <source>coefficients are</source>
        <translation>Beiwerte sind</translation>
    </message>
    <message>
        <source>column {given}</source>
        <translation>Spalte {given}</translation>
    </message>
    <message>
        <source>column {name}</source>
        <translation>Spalte {name}</translation>
    </message>
    <message>
        <source>columns</source>
        <translation>Spalten</translation>
    </message>
    <message>
        <source>columns, units and the order of dates are said of no logger's file</source>
        <translation>Spalten, Einheiten und Reihenfolge des Datums sind gesagt, aber zu keiner Datei eines Loggers</translation>
    </message>
    <message>
        <source>commands</source>
        <translation>Befehle</translation>
    </message>
    <message>
        <source>common practice</source>
        <translation>übliche Praxis</translation>
    </message>
    <message>
        <source>common practice: 10 to 30 % humidity in arid uplands; months our own</source>
        <translation>übliche Praxis: 10 bis 30 % Luftfeuchte in trockenem Hochland; Monate eigene Annahme</translation>
    </message>
    <message>
        <source>common practice: 11 to 13 % moisture in living rooms without steady heating; months our own</source>
        <translation>übliche Praxis: 11 bis 13 % Holzfeuchte in Wohnräumen ohne stetiges Heizen; Monate eigene Annahme</translation>
    </message>
    <message>
        <source>common practice: 12 to 16 % moisture without cooling; months our own</source>
        <translation>übliche Praxis: 12 bis 16 % Holzfeuchte ohne Kühlung; Monate eigene Annahme</translation>
    </message>
    <message>
        <source>common practice: 15 to 18 % moisture in winter in maritime places; months our own</source>
        <translation>übliche Praxis: 15 bis 18 % Holzfeuchte im Winter an Orten mit Seeklima; Monate eigene Annahme</translation>
    </message>
    <message>
        <source>common practice: 50 % humidity and 5 points either way allowed; the months drift by 3, own assumption</source>
        <translation>übliche Praxis: 50 % Luftfeuchte, 5 Punkte nach beiden Seiten erlaubt; die Monate wandern um 3, eigene Annahme</translation>
    </message>
    <message>
        <source>common practice: 8 to 12 % moisture with cooling; months our own</source>
        <translation>übliche Praxis: 8 bis 12 % Holzfeuchte mit Kühlung; Monate eigene Annahme</translation>
    </message>
    <message>
        <source>common practice: 9 to 11 % moisture in homes heated day and night; months our own</source>
        <translation>übliche Praxis: 9 bis 11 % Holzfeuchte in Tag und Nacht geheizten Wohnungen; Monate eigene Annahme</translation>
    </message>
    <message>
        <source>common practice: about 13 % moisture in winter in dry continental places; months our own</source>
        <translation>übliche Praxis: etwa 13 % Holzfeuchte im Winter an trockenen Orten im Landesinneren; Monate eigene Annahme</translation>
    </message>
    <message>
        <source>compression set: crushed while it could not swell</source>
        <translation>bleibende Stauchung: gequetscht, als es nicht quellen konnte</translation>
    </message>
    <message>
        <source>confirmed by the maker</source>
        <translation>vom Tischler bestätigt</translation>
    </message>
    <message>
        <source>contact still changes after {most_steps} steps</source>
        <translation>der Kontakt ändert sich noch nach {most_steps} Schritten</translation>
    </message>
    <message>
        <source>contacts</source>
        <translation>Berührungen</translation>
    </message>
    <message>
        <source>cooled to {cooling:g} °C</source>
        <translation>auf {cooling:g} °C gekühlt</translation>
    </message>
    <message>
        <source>copying</source>
        <translation>Kopieren</translation>
    </message>
    <message>
        <source>core moisture</source>
        <translation>Kernfeuchte</translation>
    </message>
    <message>
        <source>core {core:.1f} %, skin {skin:.1f} %: not even through its thickness</source>
        <translation>Kern {core:.1f} %, Haut {skin:.1f} %: nicht gleichmäßig durch die Dicke</translation>
    </message>
    <message>
        <source>corner lift driest</source>
        <translation>Ecke ab, am trockensten</translation>
    </message>
    <message>
        <source>corner lift wettest</source>
        <translation>Ecke ab, am feuchtesten</translation>
    </message>
    <message>
        <source>correct the pith, or say boxed_heart=True to have it solved by finite elements</source>
        <translation>das Mark berichtigen, oder boxed_heart=True sagen, damit es mit finiten Elementen gelöst wird</translation>
    </message>
    <message>
        <source>could not be checked: {message}</source>
        <translation>konnte nicht geprüft werden: {message}</translation>
    </message>
    <message>
        <source>count from the start of shrinkage: above it nothing moves</source>
        <translation>vom Beginn des Schwindens an zählen: Darüber arbeitet nichts</translation>
    </message>
    <message>
        <source>cover</source>
        <translation>Deckung</translation>
    </message>
    <message>
        <source>cross stiffness</source>
        <translation>Steifigkeit quer zur Faser</translation>
    </message>
    <message>
        <source>cross-grain stiffness {values} MPa with Poisson ratio {poisson_rt:g}</source>
        <translation>Steifigkeit quer zur Faser {values} MPa bei einer Querdehnzahl von {poisson_rt:g}</translation>
    </message>
    <message>
        <source>cross-rail to add</source>
        <translation>zusätzliche Querzarge</translation>
    </message>
    <message>
        <source>crown</source>
        <translation>rund</translation>
    </message>
    <message>
        <source>crown or hollow up to {size} in {month}</source>
        <translation>rund oder hohl bis {size} im {month}</translation>
    </message>
    <message>
        <source>crown up to {size} in {month}</source>
        <translation>rund bis {size} im {month}</translation>
    </message>
    <message>
        <source>crown {far} mm</source>
        <translation>um {far} mm rund werden</translation>
    </message>
    <message>
        <source>crown {size} in {month}</source>
        <translation>rund {size} im {month}</translation>
    </message>
    <message>
        <source>crowns</source>
        <translation>rund</translation>
    </message>
    <message>
        <source>crushed</source>
        <translation>gequetscht</translation>
    </message>
    <message>
        <source>cup</source>
        <translation>Wölbung</translation>
    </message>
    <message>
        <source>cut one out of the other, or draw them apart</source>
        <translation>das eine aus dem anderen ausschneiden oder sie getrennt zeichnen</translation>
    </message>
    <message>
        <source>cut the mortise longer: {sides}; tenons fit closely at the middle only, and have more room the farther out they are</source>
        <translation>das Zapfenloch länger machen: {sides}; Zapfen sitzen nur in der Mitte satt und haben umso mehr Luft, je weiter außen sie sind</translation>
    </message>
    <message>
        <source>cut the rabbets deeper, or fix it in the middle and cover its edges with a strip</source>
        <translation>die Falze tiefer schneiden, oder sie in der Mitte befestigen und ihre Kanten mit einer Leiste decken</translation>
    </message>
    <message>
        <source>cut the strike {more:.1f} mm longer along that line, or fix it with screws in slots; or set lock and strike near the line at which both parts are held</source>
        <translation>das Schließblech in dieser Richtung {more:.1f} mm länger ausschneiden oder in Langlöchern schrauben; oder Schloss und Schließblech nah an die Linie setzen, an der beide Teile gehalten sind</translation>
    </message>
    <message>
        <source>cut {name!r}</source>
        <translation>Schnitt {name!r}</translation>
    </message>
    <message>
        <source>cutting the slots</source>
        <translation>Langlöcher schneiden</translation>
    </message>
    <message>
        <source>daily air {name!r}</source>
        <translation>Tagesluft {name!r}</translation>
    </message>
    <message>
        <source>damper</source>
        <translation>feuchter</translation>
    </message>
    <message>
        <source>dampest</source>
        <translation>am feuchtesten</translation>
    </message>
    <message>
        <source>date</source>
        <translation>Datum</translation>
    </message>
    <message>
        <source>date_order {date_order!r}</source>
        <translation>date_order {date_order!r}</translation>
    </message>
    <message>
        <source>datum edge: {edge}</source>
        <translation>Bezugskante: {edge}</translation>
    </message>
    <message>
        <source>datum end: {end}</source>
        <translation>Bezugsende: {end}</translation>
    </message>
    <message>
        <source>day {number}</source>
        <translation>Tag {number}</translation>
    </message>
    <message>
        <source>days</source>
        <translation>Tage</translation>
    </message>
    <message>
        <source>days after gluing</source>
        <translation>Tage nach dem Leimen</translation>
    </message>
    <message>
        <source>days of the spell</source>
        <translation>Tage der Zeitspanne</translation>
    </message>
    <message>
        <source>deepen the groove, divide the panel, or accept less cover</source>
        <translation>die Nut vertiefen, die Füllung teilen oder weniger Überdeckung hinnehmen</translation>
    </message>
    <message>
        <source>deepen the grooves or widen the panel, keep it centred with a pin or a spot of glue at the middle of each end, and finish its edges before it goes in</source>
        <translation>Nuten vertiefen oder die Füllung breiter machen, sie mit einem Stift oder einem Tupfer Leim in der Mitte jedes Endes mittig halten, und ihre Kanten behandeln, bevor sie hineinkommt</translation>
    </message>
    <message>
        <source>degrees</source>
        <translation>Grad</translation>
    </message>
    <message>
        <source>delete {name!r} first, or undo step by step</source>
        <translation>erst {name!r} löschen, oder Schritt für Schritt rückgängig machen</translation>
    </message>
    <message>
        <source>delivered at {mean:.1f} % into air of {air:.1f} %</source>
        <translation>mit {mean:.1f} % geliefert in Luft von {air:.1f} %</translation>
    </message>
    <message>
        <source>density and stiffness of {species} not known: those of a usual hardwood taken</source>
        <translation>Dichte und Steifigkeit von {species} nicht bekannt: die eines üblichen Laubholzes genommen</translation>
    </message>
    <message>
        <source>density and stiffness of {species} not known: those of a usual softwood taken</source>
        <translation>Dichte und Steifigkeit von {species} nicht bekannt: die eines üblichen Nadelholzes genommen</translation>
    </message>
    <message>
        <source>density of a board not known: its weight is left out, and how hard a screw may be pulled</source>
        <translation>Dichte eines Bretts nicht bekannt: Sein Gewicht bleibt weg, und wie stark an einer Schraube gezogen werden darf</translation>
    </message>
    <message>
        <source>density of {name} not known: {usual_gravity} taken for how fast it answers</source>
        <translation>Dichte von {name} nicht bekannt: {usual_gravity} genommen, wie schnell es der Luft folgt</translation>
    </message>
    <message>
        <source>density that a pad meter is set to</source>
        <translation>relative Rohdichte, auf die ein Flächenmessgerät eingestellt ist</translation>
    </message>
    <message>
        <source>depth</source>
        <translation>Tiefe</translation>
    </message>
    <message>
        <source>derived</source>
        <translation>abgeleitet</translation>
    </message>
    <message>
        <source>dew point</source>
        <translation>Taupunkt</translation>
    </message>
    <message>
        <source>dew point below −60 °C</source>
        <translation>Taupunkt unter −60 °C</translation>
    </message>
    <message>
        <source>diameter</source>
        <translation>Durchmesser</translation>
    </message>
    <message>
        <source>did you mean {names}?</source>
        <translation>war {names} gemeint?</translation>
    </message>
    <message>
        <source>did you mean {near!r}?</source>
        <translation>war {near!r} gemeint?</translation>
    </message>
    <message>
        <source>diffusivity</source>
        <translation>Diffusivität</translation>
    </message>
    <message>
        <source>diffusivity factor</source>
        <translation>Faktor der Diffusivität</translation>
    </message>
    <message>
        <source>direction</source>
        <translation>Richtung</translation>
    </message>
    <message>
        <source>direction of the pith</source>
        <translation>Richtung des Marks</translation>
    </message>
    <message>
        <source>direction of the pith (0, 0) points nowhere</source>
        <translation>die Richtung des Marks (0, 0) zeigt nirgendhin</translation>
    </message>
    <message>
        <source>disc 16 mm let into the rail; arm 14-20 mm; free only while its arm lies near the grain direction; light loads</source>
        <translation>Scheibe von 16 mm in die Zarge eingelassen; Arm 14–20 mm; frei nur, solange ihr Arm nahe der Faserrichtung liegt; leichte Lasten</translation>
    </message>
    <message>
        <source>distance of the tree's centre</source>
        <translation>Abstand des Marks</translation>
    </message>
    <message>
        <source>divide it into two tenons, glue the one that keeps the shown edge flush, leave the other dry in a longer mortise; or peg it in slots</source>
        <translation>ihn in zwei Zapfen teilen, den leimen, der die sichtbare Kante bündig hält, den anderen trocken in ein längeres Zapfenloch setzen; oder ihn mit Holznägeln in Langlöchern halten</translation>
    </message>
    <message>
        <source>do not plane it until its faces read alike and it has stopped moving: it would cup the other way</source>
        <translation>nicht hobeln, bevor beide Seiten gleich messen und es zur Ruhe gekommen ist: es würde sich anders herum schüsseln</translation>
    </message>
    <message>
        <source>do not show how far it is</source>
        <translation>nicht zeigen, wie weit es ist</translation>
    </message>
    <message>
        <source>do not wet the hollow face to pull it flat: the wood is crushed and cups worse when it dries</source>
        <translation>die hohle Seite nicht nass machen, um es gerade zu ziehen: das Holz ist gequetscht und schüsselt beim Trocknen stärker</translation>
    </message>
    <message>
        <source>does not hold it</source>
        <translation>hält sie nicht</translation>
    </message>
    <message>
        <source>doubt of sorption</source>
        <translation>Unsicherheit der Sorption</translation>
    </message>
    <message>
        <source>doubt of the climate</source>
        <translation>Unsicherheit des Klimas</translation>
    </message>
    <message>
        <source>doubt of the moisture</source>
        <translation>Unsicherheit der Feuchte</translation>
    </message>
    <message>
        <source>doubt of the readings</source>
        <translation>Unsicherheit der Messwerte</translation>
    </message>
    <message>
        <source>doubt of the ring angle</source>
        <translation>Unsicherheit des Ringwinkels</translation>
    </message>
    <message>
        <source>dovetailed</source>
        <translation>gezinkt</translation>
    </message>
    <message>
        <source>draw the boards of the panel one by one</source>
        <translation>die Bretter der Platte einzeln zeichnen</translation>
    </message>
    <message>
        <source>drawer bottom</source>
        <translation>Schubladenboden</translation>
    </message>
    <message>
        <source>drawer height jams</source>
        <translation>Schublade klemmt in der Höhe</translation>
    </message>
    <message>
        <source>drawing the top</source>
        <translation>Zeichnen der Platte</translation>
    </message>
    <message>
        <source>drawn</source>
        <translation>gezeichnet</translation>
    </message>
    <message>
        <source>drawn twice</source>
        <translation>doppelt gezeichnet</translation>
    </message>
    <message>
        <source>dried to {dehumidifier:g} %</source>
        <translation>auf {dehumidifier:g} % entfeuchtet</translation>
    </message>
    <message>
        <source>drier</source>
        <translation>trockener</translation>
    </message>
    <message>
        <source>drier than when made flat the edges lift, damper the middle rises</source>
        <translation>Trockener als beim Ebnen heben sich die Kanten, feuchter hebt sich die Mitte</translation>
    </message>
    <message>
        <source>drier than when made flat the middle rises and the edges press down, damper the edges lift</source>
        <translation>Trockener als beim Ebnen hebt sich die Mitte und die Kanten drücken nach unten, feuchter heben sich die Kanten</translation>
    </message>
    <message>
        <source>driest</source>
        <translation>am trockensten</translation>
    </message>
    <message>
        <source>driest change {changes:g} is above the wettest {changes2:g}</source>
        <translation>die trockenste Änderung {changes:g} liegt über der feuchtesten {changes2:g}</translation>
    </message>
    <message>
        <source>driest day</source>
        <translation>trockenster Tag</translation>
    </message>
    <message>
        <source>driest is larger than wettest</source>
        <translation>am trockensten ist größer als am feuchtesten</translation>
    </message>
    <message>
        <source>driest ≤ wettest, points of MC</source>
        <translation>am trockensten ≤ am feuchtesten, Punkte Holzfeuchte</translation>
    </message>
    <message>
        <source>drift</source>
        <translation>Versatz</translation>
    </message>
    <message>
        <source>drop a wish, or let boards be turned or change places</source>
        <translation>einen Wunsch fallen lassen, oder Bretter wenden oder tauschen lassen</translation>
    </message>
    <message>
        <source>dry it slowly with both faces open; do not heat the wet face</source>
        <translation>langsam trocknen, beide Seiten offen; die nasse Seite nicht erhitzen</translation>
    </message>
    <message>
        <source>drying stress let go by machining (case-hardening)</source>
        <translation>Trocknungsspannung, beim Bearbeiten freigeworden (Verschalung)</translation>
    </message>
    <message>
        <source>each board once, and for each place whether it is turned over and end for end</source>
        <translation>jedes Brett einmal, und für jeden Platz, ob es gewendet ist und seine Enden getauscht sind</translation>
    </message>
    <message>
        <source>each face once</source>
        <translation>jede Seite einmal</translation>
    </message>
    <message>
        <source>each is let into the other</source>
        <translation>beide sind ineinander eingelassen</translation>
    </message>
    <message>
        <source>each stay begins on the day the one before ends</source>
        <translation>jeder Aufenthalt beginnt an dem Tag, an dem der vorige endet</translation>
    </message>
    <message>
        <source>edge</source>
        <translation>Kante</translation>
    </message>
    <message>
        <source>edge against edge, the grains running the same way</source>
        <translation>Kante an Kante, mit gleicher Faserrichtung</translation>
    </message>
    <message>
        <source>edge least</source>
        <translation>Kante, min.</translation>
    </message>
    <message>
        <source>edge most</source>
        <translation>Kante, max.</translation>
    </message>
    <message>
        <source>effectiveness {given} cannot be used</source>
        <translation>die Sperrwirkung {given} ist unbrauchbar</translation>
    </message>
    <message>
        <source>elastic constants</source>
        <translation>elastische Konstanten</translation>
    </message>
    <message>
        <source>elastic constants at a ring angle of {ring_angle_deg:g}°</source>
        <translation>elastische Konstanten bei einem Ringwinkel von {ring_angle_deg:g}°</translation>
    </message>
    <message>
        <source>elastic ratios</source>
        <translation>elastische Verhältnisse</translation>
    </message>
    <message>
        <source>elastic, before the wood gives way, with parts that neither turn nor bend and joints that do not slip; a stress is the mean over its area, and at the ends of a long glue line several times that</source>
        <translation>elastisch, bevor das Holz nachgibt, mit Teilen, die sich weder drehen noch biegen, und Verbindungen, die nicht rutschen; eine Spannung ist das Mittel über ihre Fläche, an den Enden einer langen Leimfuge das Mehrfache davon</translation>
    </message>
    <message>
        <source>en</source>
        <translation>de</translation>
    </message>
    <message>
        <source>enamel</source>
        <translation>Buntlack</translation>
    </message>
    <message>
        <source>end</source>
        <translation>Ende</translation>
    </message>
    <message>
        <source>end grain breathes some ten times faster than faces (common practice, no source): it follows the air in days, and moves both ways</source>
        <translation>Hirnholz atmet etwa zehnmal schneller als die Flächen (übliche Praxis, keine Quelle): Es folgt der Luft in Tagen und arbeitet in beiden Richtungen</translation>
    </message>
    <message>
        <source>end grain butts against it: glue alone would not hold, and nothing else is drawn</source>
        <translation>Hirnholz stößt an: Leim allein hielte nicht, und sonst ist nichts gezeichnet</translation>
    </message>
    <message>
        <source>end held by a post</source>
        <translation>Brettende im Pfosten festgehalten</translation>
    </message>
    <message>
        <source>end with 1 only for findings as grave as this: {names} (default: any), never</source>
        <translation>mit 1 nur bei so schweren Befunden enden: {names} (ohne Angabe: bei jedem), never: nie</translation>
    </message>
    <message>
        <source>end-grain block</source>
        <translation>Hirnholzklotz</translation>
    </message>
    <message>
        <source>ends {ends} but begins {begins}</source>
        <translation>endet {ends}, beginnt aber {begins}</translation>
    </message>
    <message>
        <source>epoxy</source>
        <translation>Epoxidharz</translation>
    </message>
    <message>
        <source>error of the calipers</source>
        <translation>Fehler der Schieblehre</translation>
    </message>
    <message>
        <source>error of the tool</source>
        <translation>Fehler des Werkzeugs</translation>
    </message>
    <message>
        <source>every board lies heart side down</source>
        <translation>jedes Brett liegt mit der Kernseite unten</translation>
    </message>
    <message>
        <source>every board lies heart side up</source>
        <translation>jedes Brett liegt mit der Kernseite oben</translation>
    </message>
    <message>
        <source>every model here is left out. To do: look at --leave-out.</source>
        <translation>jedes Modell hier ist ausgelassen. Zu tun: --leave-out ansehen.</translation>
    </message>
    <message>
        <source>every solid in it is hidden. To do: show the parts that are to be checked</source>
        <translation>jeder Körper darin ist ausgeblendet. Zu tun: die Teile einblenden, die geprüft werden sollen</translation>
    </message>
    <message>
        <source>exact: every allowed layout was tried</source>
        <translation>genau: jede erlaubte Lage wurde versucht</translation>
    </message>
    <message>
        <source>exactly 12, January to December</source>
        <translation>genau 12, Januar bis Dezember</translation>
    </message>
    <message>
        <source>exactly one of pith_mm and angle_degrees</source>
        <translation>genau eines von pith_mm und angle_degrees</translation>
    </message>
    <message>
        <source>exchange</source>
        <translation>Austausch</translation>
    </message>
    <message>
        <source>expect a check from the centre outward; rip the centre out, and glue up what is left</source>
        <translation>mit einem Riss vom Mark nach außen rechnen; das Mark heraustrennen und den Rest verleimen</translation>
    </message>
    <message>
        <source>export it again</source>
        <translation>sie noch einmal ausgeben</translation>
    </message>
    <message>
        <source>export the readings as CSV or text</source>
        <translation>die Messwerte als CSV oder Text ausgeben</translation>
    </message>
    <message>
        <source>export with a 24-hour clock</source>
        <translation>mit 24-Stunden-Uhr ausgeben</translation>
    </message>
    <message>
        <source>export with semicolons, or with decimal points</source>
        <translation>mit Semikolons oder mit Dezimalpunkten ausgeben</translation>
    </message>
    <message>
        <source>extra</source>
        <translation>mehr</translation>
    </message>
    <message>
        <source>face least</source>
        <translation>Fläche, min.</translation>
    </message>
    <message>
        <source>face most</source>
        <translation>Fläche, max.</translation>
    </message>
    <message>
        <source>face {face!r}</source>
        <translation>Seite {face!r}</translation>
    </message>
    <message>
        <source>factor {factor:g}</source>
        <translation>Faktor {factor:g}</translation>
    </message>
    <message>
        <source>far away</source>
        <translation>weit weg</translation>
    </message>
    <message>
        <source>fastener capacity</source>
        <translation>Tragkraft der Befestigung</translation>
    </message>
    <message>
        <source>fastener kind {kind!r}</source>
        <translation>Art der Befestigung {kind!r}</translation>
    </message>
    <message>
        <source>fastener kinds</source>
        <translation>Arten der Befestigung</translation>
    </message>
    <message>
        <source>fasteners</source>
        <translation>Stück</translation>
    </message>
    <message>
        <source>fasteners bear it: there is no area to spread it over</source>
        <translation>Befestigungen tragen es: Es gibt keine Fläche, die es verteilt</translation>
    </message>
    <message>
        <source>fasteners near the middle and toward the edges share the holding</source>
        <translation>Befestigungen nahe der Mitte und zu den Kanten hin teilen sich das Halten</translation>
    </message>
    <message>
        <source>fetch what is missing with the system's packages</source>
        <translation>was fehlt, mit den Paketen des Systems holen</translation>
    </message>
    <message>
        <source>figure</source>
        <translation>Zeichnung des Holzes</translation>
    </message>
    <message>
        <source>figure-eight</source>
        <translation>Achter</translation>
    </message>
    <message>
        <source>figure-eight plate</source>
        <translation>Achterbeschlag</translation>
    </message>
    <message>
        <source>figured grain</source>
        <translation>gezeichnete Faser</translation>
    </message>
    <message>
        <source>figures that differ by less are the same (default 1)</source>
        <translation>Zahlen, die sich um weniger unterscheiden, gelten als gleich (ohne Angabe: 1)</translation>
    </message>
    <message>
        <source>files ending in '{suffix}' cannot be read</source>
        <translation>Dateien mit der Endung „{suffix}“ sind nicht lesbar</translation>
    </message>
    <message>
        <source>fill the gap from a like wood or typical_ratios with filled_from, or use the nearer pure cut</source>
        <translation>die Lücke mit filled_from aus einem ähnlichen Holz oder typical_ratios füllen, oder den näheren reinen Einschnitt nehmen</translation>
    </message>
    <message>
        <source>find the missing value</source>
        <translation>den fehlenden Wert suchen</translation>
    </message>
    <message>
        <source>finish</source>
        <translation>Oberfläche</translation>
    </message>
    <message>
        <source>finish both faces alike, edges and end grain too</source>
        <translation>beide Seiten gleich behandeln, Kanten und Hirnholz auch</translation>
    </message>
    <message>
        <source>finish not said</source>
        <translation>Oberfläche nicht angegeben</translation>
    </message>
    <message>
        <source>finish the other face like this one; about half should be gone in weeks</source>
        <translation>die andere Seite wie diese behandeln; etwa die Hälfte sollte in Wochen weg sein</translation>
    </message>
    <message>
        <source>finite answers over the whole range of the causes</source>
        <translation>endliche Antworten im ganzen Bereich der Ursachen</translation>
    </message>
    <message>
        <source>finite numbers</source>
        <translation>endliche Zahlen</translation>
    </message>
    <message>
        <source>fit the tongue with {play:.1f} mm of play or less, or set soft strips behind it</source>
        <translation>die Feder mit höchstens {play:.1f} mm Spiel einpassen oder weiche Streifen dahinter setzen</translation>
    </message>
    <message>
        <source>fitted</source>
        <translation>eingepasst</translation>
    </message>
    <message>
        <source>fix it at one fitting and give the other's screws or bolt an upright slot; or set them nearer together, within {width:.0f} mm of the rail's height; tighten them again each season: what carries people must not come loose</source>
        <translation>an einem Beschlag fest anziehen und den Schrauben oder dem Bolzen des anderen ein senkrechtes Langloch geben; oder sie näher zusammensetzen, auf {width:.0f} mm der Seitenhöhe; in jeder Jahreszeit nachziehen: Was Menschen trägt, darf sich nicht lösen</translation>
    </message>
    <message>
        <source>fix it at one line and let the rest slide, or face the core with veneer of {veneer:.0f} mm at most on both sides; a border of solid wood round a core needs no more than glue{confirm}</source>
        <translation>an einer Linie befestigen und den Rest gleiten lassen, oder den Kern beidseitig mit Furnier von höchstens {veneer:.0f} mm belegen; ein Anleimer rund um einen Kern braucht nur Leim{confirm}</translation>
    </message>
    <message>
        <source>fix it at one line only and let it slide elsewhere: slots, buttons, clips, or tenons with room; 'hold' on the command line gives their places. If it slides already, confirm the joints so</source>
        <translation>nur an einer Linie befestigen und sonst gleiten lassen: Langlöcher, Nutklötze, Klammern oder Zapfen mit Spiel; „hold“ auf der Befehlszeile gibt ihre Plätze. Gleitet sie schon, die Verbindungen so bestätigen</translation>
    </message>
    <message>
        <source>fix it at one line only; give everything else slots, clips or buttons</source>
        <translation>nur an einer Linie befestigen; allem anderen Langlöcher, Klammern oder Nutklötze geben</translation>
    </message>
    <message>
        <source>fix it at one line, at most {width:.0f} mm wide, and let the rest slide in slots, grooves or on keys; or turn the grain of one to run with the other{confirm}</source>
        <translation>an einer Linie von höchstens {width:.0f} mm Breite befestigen und den Rest in Langlöchern, Nuten oder auf Federn gleiten lassen; oder die Faser des einen Teils zum anderen drehen{confirm}</translation>
    </message>
    <message>
        <source>fix it at the front and let it slide behind: slotted screws, or house it in a groove with its tenon in the rail and room at the back. If it is so already, confirm the joint as 'slides'</source>
        <translation>sie vorn befestigen und hinten gleiten lassen: Schrauben in Langlöchern, oder in eine Nut einlassen, mit dem Zapfen im Querstück und Platz hinten. Wenn es schon so ist, die Verbindung als „slides“ bestätigen</translation>
    </message>
    <message>
        <source>fix it in the middle {width:.0f} mm of its width and give all other screws slots; or make it of shiplapped boards, each fixed at one line{confirm}</source>
        <translation>in den mittleren {width:.0f} mm der Breite befestigen und allen anderen Schrauben Langlöcher geben; oder aus überfälzten Brettern machen, jedes an einer Linie fest{confirm}</translation>
    </message>
    <message>
        <source>fixed across the grain</source>
        <translation>quer zur Faser befestigt</translation>
    </message>
    <message>
        <source>fixed at a point</source>
        <translation>an einem Punkt fest</translation>
    </message>
    <message>
        <source>fixed line</source>
        <translation>feste Linie</translation>
    </message>
    <message>
        <source>fixed line at {at:+.0f} mm across: add one plain screw on the rail nearest to it, or the whole top may creep aside</source>
        <translation>feste Linie quer bei {at:+.0f} mm: an der nächsten Zarge eine einfache Schraube zugeben, sonst kann die ganze Platte zur Seite wandern</translation>
    </message>
    <message>
        <source>fixed line at {at:+.0f} mm across: add one plain screw where {rails} cross it, or the whole top may creep aside</source>
        <translation>feste Linie quer bei {at:+.0f} mm: dort, wo {rails} sie kreuzen, eine einfache Schraube zugeben, sonst kann die ganze Platte zur Seite wandern</translation>
    </message>
    <message>
        <source>fixed line at {at:+.0f} mm across: held by the plain holes on {where}</source>
        <translation>feste Linie quer bei {at:+.0f} mm: die runden Löcher an {where} halten sie</translation>
    </message>
    <message>
        <source>fixed line at {fixed:g} mm</source>
        <translation>feste Linie bei {fixed:g} mm</translation>
    </message>
    <message>
        <source>fixed line at {where!r} mm</source>
        <translation>feste Linie bei {where!r} mm</translation>
    </message>
    <message>
        <source>fixed line {where!r}</source>
        <translation>feste Linie {where!r}</translation>
    </message>
    <message>
        <source>fixed lines at {low:g} and {high:g} mm</source>
        <translation>feste Linien bei {low:g} und {high:g} mm</translation>
    </message>
    <message>
        <source>fixed part</source>
        <translation>festes Teil</translation>
    </message>
    <message>
        <source>flat</source>
        <translation>liegend</translation>
    </message>
    <message>
        <source>flat </source>
        <translation>eben </translation>
    </message>
    <message>
        <source>flat-sawn</source>
        <translation>liegend</translation>
    </message>
    <message>
        <source>flat-sawn (0°) needs E_T, G_LT, mu_LT; quarter-sawn (90°) E_R, G_LR, mu_LR; between, all</source>
        <translation>liegende Jahrringe (0°) brauchen E_T, G_LT, mu_LT; stehende (90°) E_R, G_LR, mu_LR; dazwischen alle</translation>
    </message>
    <message>
        <source>flat-sawn, {width:.0f} mm wide and held flat by nothing that is drawn: it cups up to {cup:.1f} mm</source>
        <translation>liegende Jahrringe, {width:.0f} mm breit und von nichts Gezeichnetem eben gehalten: es schüsselt bis zu {cup:.1f} mm</translation>
    </message>
    <message>
        <source>flatness {flatness!r} mm</source>
        <translation>Ebenheit {flatness!r} mm</translation>
    </message>
    <message>
        <source>flattened</source>
        <translation>eben gemacht</translation>
    </message>
    <message>
        <source>flattest</source>
        <translation>ebenste</translation>
    </message>
    <message>
        <source>floor seal</source>
        <translation>Parkettversiegelung</translation>
    </message>
    <message>
        <source>for weeks above</source>
        <translation>wochenlang über</translation>
    </message>
    <message>
        <source>for weeks below</source>
        <translation>wochenlang unter</translation>
    </message>
    <message>
        <source>force</source>
        <translation>Kraft</translation>
    </message>
    <message>
        <source>frame</source>
        <translation>Gestell</translation>
    </message>
    <message>
        <source>frame across the side</source>
        <translation>Rahmen quer zur Seite</translation>
    </message>
    <message>
        <source>free cup more than half its thickness: a curved panel is stiffer than shown, forces are too low</source>
        <translation>freie Wölbung über der halben Dicke: Eine gewölbte Platte ist steifer als gezeigt, die Kräfte sind zu niedrig</translation>
    </message>
    <message>
        <source>free curvature</source>
        <translation>freie Krümmung</translation>
    </message>
    <message>
        <source>free to move, and nothing presses</source>
        <translation>kann sich bewegen, und nichts drückt</translation>
    </message>
    <message>
        <source>free to rock: what it stands on or is held by lies on one line</source>
        <translation>kann kippeln: Worauf sie steht oder was sie hält, liegt auf einer Linie</translation>
    </message>
    <message>
        <source>french polish</source>
        <translation>Schellackpolitur</translation>
    </message>
    <message>
        <source>from behind, below</source>
        <translation>von hinten unten</translation>
    </message>
    <message>
        <source>from flat</source>
        <translation>uneben</translation>
    </message>
    <message>
        <source>from middle</source>
        <translation>von der Mitte</translation>
    </message>
    <message>
        <source>from the air of {name} on {date} ({mean_temperature:.0f} °C mean)</source>
        <translation>aus der Luft von {name} am {date} (im Mittel {mean_temperature:.0f} °C)</translation>
    </message>
    <message>
        <source>from the edge today</source>
        <translation>vom Rand, heute</translation>
    </message>
    <message>
        <source>from the end</source>
        <translation>vom Ende</translation>
    </message>
    <message>
        <source>from the front, above</source>
        <translation>von vorn oben</translation>
    </message>
    <message>
        <source>from the maker's own coefficients</source>
        <translation>aus eigenen Beiwerten des Herstellers</translation>
    </message>
    <message>
        <source>from the meter's table; 0 if it is set to the species</source>
        <translation>aus der Tabelle des Messgeräts; 0, wenn es auf die Holzart eingestellt ist</translation>
    </message>
    <message>
        <source>furniture wax</source>
        <translation>Möbelwachs</translation>
    </message>
    <message>
        <source>gap</source>
        <translation>Fuge</translation>
    </message>
    <message>
        <source>gap closes</source>
        <translation>Fuge schließt sich</translation>
    </message>
    <message>
        <source>gap to leave</source>
        <translation>zu lassende Fuge</translation>
    </message>
    <message>
        <source>gap too wide</source>
        <translation>Fuge zu weit</translation>
    </message>
    <message>
        <source>give --part NAME</source>
        <translation>--part NAME angeben</translation>
    </message>
    <message>
        <source>give RH in percent and temperature in °C (°F readings must be converted first)</source>
        <translation>die relative Feuchte in Prozent und die Temperatur in °C angeben (°F zuerst umrechnen)</translation>
    </message>
    <message>
        <source>give a name</source>
        <translation>einen Namen angeben</translation>
    </message>
    <message>
        <source>give a reading of a meter</source>
        <translation>den Wert eines Messgeräts angeben</translation>
    </message>
    <message>
        <source>give a score</source>
        <translation>eine Bewertung angeben</translation>
    </message>
    <message>
        <source>give a vector that is not zero</source>
        <translation>einen Vektor angeben, der nicht null ist</translation>
    </message>
    <message>
        <source>give both faces the same finish</source>
        <translation>beiden Seiten dieselbe Oberfläche geben</translation>
    </message>
    <message>
        <source>give both, or none</source>
        <translation>beide angeben, oder keines</translation>
    </message>
    <message>
        <source>give equilibrium moisture content, not relative humidity</source>
        <translation>die Gleichgewichtsfeuchte angeben, nicht die relative Luftfeuchte</translation>
    </message>
    <message>
        <source>give it at least one solid part</source>
        <translation>ihr mindestens ein Teil als Körper geben</translation>
    </message>
    <message>
        <source>give it battens, breadboard ends or a frame</source>
        <translation>ihr Querleisten, Hirnleisten oder ein Gestell geben</translation>
    </message>
    <message>
        <source>give it room, or divide it</source>
        <translation>ihr Luft geben oder sie teilen</translation>
    </message>
    <message>
        <source>give it that ending</source>
        <translation>ihm diese Endung geben</translation>
    </message>
    <message>
        <source>give moduli in MPa</source>
        <translation>Moduln in MPa angeben</translation>
    </message>
    <message>
        <source>give moisture content in percent of the oven-dry mass, not humidity</source>
        <translation>die Holzfeuchte in Prozent der Darrmasse angeben, nicht die Luftfeuchte</translation>
    </message>
    <message>
        <source>give numbers</source>
        <translation>Zahlen angeben</translation>
    </message>
    <message>
        <source>give one a board</source>
        <translation>eines je Brett angeben</translation>
    </message>
    <message>
        <source>give one change a board</source>
        <translation>eine Änderung je Brett angeben</translation>
    </message>
    <message>
        <source>give one mean a month</source>
        <translation>ein Mittel je Monat angeben</translation>
    </message>
    <message>
        <source>give one with dataclasses.replace, or leave this direction out</source>
        <translation>mit dataclasses.replace einen angeben, oder diese Richtung weglassen</translation>
    </message>
    <message>
        <source>give pairs</source>
        <translation>Paare angeben</translation>
    </message>
    <message>
        <source>give strain as a fraction, not in percent</source>
        <translation>die Dehnung als Bruchteil angeben, nicht in Prozent</translation>
    </message>
    <message>
        <source>give temperature_unit='C' if they are</source>
        <translation>temperature_unit='C' angeben, wenn sie es sind</translation>
    </message>
    <message>
        <source>give temperature_unit='C' or temperature_unit='F'</source>
        <translation>temperature_unit='C' oder temperature_unit='F' angeben</translation>
    </message>
    <message>
        <source>give temperature_unit='F' if they are, or say which column is the temperature</source>
        <translation>temperature_unit='F' angeben, wenn sie es sind, oder sagen, welche Spalte die Temperatur ist</translation>
    </message>
    <message>
        <source>give the board's thickness in mm</source>
        <translation>die Dicke des Bretts in mm angeben</translation>
    </message>
    <message>
        <source>give the change in points of MC (−4 is four percent drier)</source>
        <translation>die Änderung in Punkten Holzfeuchte angeben (−4 ist vier Prozent trockener)</translation>
    </message>
    <message>
        <source>give the driest and the wettest month at least</source>
        <translation>mindestens den trockensten und den feuchtesten Monat angeben</translation>
    </message>
    <message>
        <source>give the heights of the saw lines</source>
        <translation>die Höhen der Sägeschnitte angeben</translation>
    </message>
    <message>
        <source>give the keys of two parts, as the report tells them</source>
        <translation>die Schlüssel zweier Teile angeben, wie der Bericht sie nennt</translation>
    </message>
    <message>
        <source>give the object itself</source>
        <translation>das Objekt selbst angeben</translation>
    </message>
    <message>
        <source>give the objects themselves</source>
        <translation>die Objekte selbst angeben</translation>
    </message>
    <message>
        <source>give the size in mm</source>
        <translation>das Maß in mm angeben</translation>
    </message>
    <message>
        <source>give the strain as a fraction: 0.0025 means 0.25 % for 1 % of moisture</source>
        <translation>die Dehnung als Bruchteil angeben: 0.0025 heißt 0,25 % für 1 % Feuchte</translation>
    </message>
    <message>
        <source>give two numbers</source>
        <translation>zwei Zahlen angeben</translation>
    </message>
    <message>
        <source>give {option}, or a model FILE and --part NAME</source>
        <translation>{option} angeben, oder ein Modell FILE und --part NAME</translation>
    </message>
    <message>
        <source>give °C, percent, pascal; °F readings must be converted first</source>
        <translation>°C, Prozent, Pascal angeben; °F zuerst umrechnen</translation>
    </message>
    <message>
        <source>gives first: {link}, ultimate ÷ {n}</source>
        <translation>gibt zuerst nach: {link}, Bruchlast ÷ {n}</translation>
    </message>
    <message>
        <source>glue it in the front {width:.0f} mm and the mitre only; behind that screws in slots from inside, or dovetail keys that it slides on. If it is so already, confirm the joint as 'slides'</source>
        <translation>sie nur auf den vorderen {width:.0f} mm und an der Gehrung leimen; dahinter von innen Schrauben in Langlöchern oder Schwalbenschwanzfedern, auf denen sie gleitet. Wenn es schon so ist, die Verbindung als „slides“ bestätigen</translation>
    </message>
    <message>
        <source>glue it over {width:.0f} mm at one end of the board and hold the rest with screws in slots from inside, or with keys; or let the carcase's grain run along it: upright in the sides, level in top and bottom{confirm}</source>
        <translation>an einem Ende des Bretts auf {width:.0f} mm leimen und den Rest von innen mit Schrauben in Langlöchern oder mit Federn halten; oder die Faser des Korpus mitlaufen lassen: senkrecht in den Seiten, waagerecht in Deckel und Boden{confirm}</translation>
    </message>
    <message>
        <source>glue its end over {width:.0f} mm at most, in the middle or at the edge that has to stay flush, and leave the rest dry in the groove, with {room:.1f} mm of room where the groove is closed; or make it a frame with a free panel. If it slides already, confirm the joint as 'slides'</source>
        <translation>das Ende höchstens auf {width:.0f} mm leimen, in der Mitte oder an der Kante, die bündig bleiben muss, und den Rest trocken in der Nut lassen, mit {room:.1f} mm Luft, wo die Nut geschlossen ist; oder daraus einen Rahmen mit freier Füllung machen. Wenn es schon gleitet, die Verbindung als „slides“ bestätigen</translation>
    </message>
    <message>
        <source>glue one of them, in the middle or where the edge has to stay flush, and leave the others dry in mortises that are longer by what they move; or peg them in slots. If it is so already, confirm the joints as 'slides'</source>
        <translation>einen davon leimen, in der Mitte oder wo die Kante bündig bleiben muss, und die anderen trocken in Zapfenlöchern lassen, die um ihre Bewegung länger sind; oder sie mit Holznägeln in Langlöchern halten. Wenn es schon so ist, die Verbindungen als „slides“ bestätigen</translation>
    </message>
    <message>
        <source>glue spread</source>
        <translation>Leimauftrag</translation>
    </message>
    <message>
        <source>glue the front rail, and the runners into it; leave their tenons in the back rail dry, with {room:.1f} mm of room at the shoulders, and the runners dry in the side's grooves</source>
        <translation>den vorderen Riegel leimen und die Laufleisten in ihn; ihre Zapfen im hinteren Riegel trocken lassen, mit {room:.1f} mm Luft an den Brüstungen, und die Laufleisten trocken in den Nuten der Seite</translation>
    </message>
    <message>
        <source>glue the middle {width:.0f} mm at most; let the rest slide: a tongue in a groove, tenons with room, pegs in slots that get longer toward the edges{confirm}</source>
        <translation>höchstens die mittleren {width:.0f} mm leimen; den Rest gleiten lassen: Feder in Nut, Zapfen mit Spiel, Holznägel in Langlöchern, die zu den Kanten hin länger werden{confirm}</translation>
    </message>
    <message>
        <source>glued</source>
        <translation>verleimt</translation>
    </message>
    <message>
        <source>glued cross-grain</source>
        <translation>quer verleimt</translation>
    </message>
    <message>
        <source>glued edge</source>
        <translation>Leimfuge</translation>
    </message>
    <message>
        <source>glued end grain</source>
        <translation>Hirnholz verleimt</translation>
    </message>
    <message>
        <source>go hollow {far} mm</source>
        <translation>um {far} mm hohl werden</translation>
    </message>
    <message>
        <source>go on with a run that was stopped, leaving out what crashed or hung in it</source>
        <translation>einen abgebrochenen Lauf fortsetzen und auslassen, was darin abstürzte oder hing</translation>
    </message>
    <message>
        <source>gone</source>
        <translation>weg</translation>
    </message>
    <message>
        <source>grain</source>
        <translation>Faser</translation>
    </message>
    <message>
        <source>grain crossing</source>
        <translation>Faserkreuzung</translation>
    </message>
    <message>
        <source>grain of the top</source>
        <translation>Faser der Platte</translation>
    </message>
    <message>
        <source>grain runs both ways</source>
        <translation>die Faser läuft nach beiden Richtungen</translation>
    </message>
    <message>
        <source>grain runs out</source>
        <translation>Faser läuft aus</translation>
    </message>
    <message>
        <source>grain slope</source>
        <translation>Neigung der Faser</translation>
    </message>
    <message>
        <source>green_dimension_change</source>
        <translation>green_dimension_change</translation>
    </message>
    <message>
        <source>groove 3 x 10 mm, 0.8 mm lower than the clip; on long aprons leave the gap on the right side for the season</source>
        <translation>Nut 3 × 10 mm, 0.8 mm tiefer als die Klammer; an langen Zargen die Luft auf der Seite lassen, die zur Jahreszeit passt</translation>
    </message>
    <message>
        <source>groove {depth:g} mm deep for a panel that moves {shut:.1f} mm at each edge</source>
        <translation>Nut von {depth:g} mm Tiefe für eine Füllung, die an jeder Kante {shut:.1f} mm arbeitet</translation>
    </message>
    <message>
        <source>group {group!r}</source>
        <translation>Gruppe {group!r}</translation>
    </message>
    <message>
        <source>grows</source>
        <translation>wächst</translation>
    </message>
    <message>
        <source>grows {grown}, room {room}</source>
        <translation>wächst {grown}, Spielraum {room}</translation>
    </message>
    <message>
        <source>growth</source>
        <translation>Quellen</translation>
    </message>
    <message>
        <source>hang a logger of temperature and humidity where the piece will stand, for a year, and give its file</source>
        <translation>ein Jahr lang einen Logger für Temperatur und Feuchte aufhängen, wo das Stück stehen wird, und seine Datei angeben</translation>
    </message>
    <message>
        <source>hardware</source>
        <translation>Befestigung</translation>
    </message>
    <message>
        <source>hardwax oil</source>
        <translation>Hartwachsöl</translation>
    </message>
    <message>
        <source>hardwood or softwood</source>
        <translation>hardwood oder softwood</translation>
    </message>
    <message>
        <source>harmless</source>
        <translation>harmlos</translation>
    </message>
    <message>
        <source>head the column temperature_f if the figures are °F</source>
        <translation>die Spalte temperature_f nennen, wenn die Zahlen °F sind</translation>
    </message>
    <message>
        <source>headings: {names}</source>
        <translation>Kopfzeile: {names}</translation>
    </message>
    <message>
        <source>heart (say which face was nearer the centre of the tree, or the pith itself)</source>
        <translation>Kernseite (sagen, welche Seite der Stammmitte näher war, oder wo das Mark lag)</translation>
    </message>
    <message>
        <source>heart side</source>
        <translation>Kernseite</translation>
    </message>
    <message>
        <source>heart side shows</source>
        <translation>Kernseite sichtbar</translation>
    </message>
    <message>
        <source>heart side unknown: the cup may go either way</source>
        <translation>Kernseite unbekannt: Die Wölbung kann nach beiden Seiten gehen</translation>
    </message>
    <message>
        <source>heart {heart!r}</source>
        <translation>Kernseite {heart!r}</translation>
    </message>
    <message>
        <source>heated cold-winter home</source>
        <translation>beheizt, kalte Winter</translation>
    </message>
    <message>
        <source>heated maritime home</source>
        <translation>beheizt, Meeresklima</translation>
    </message>
    <message>
        <source>heated office, cold winters</source>
        <translation>beheiztes Büro, kalte Winter</translation>
    </message>
    <message>
        <source>heated to {heating:g} °C</source>
        <translation>auf {heating:g} °C geheizt</translation>
    </message>
    <message>
        <source>heel, inside</source>
        <translation>Innenecke</translation>
    </message>
    <message>
        <source>height</source>
        <translation>Höhe</translation>
    </message>
    <message>
        <source>held at</source>
        <translation>gehalten bei</translation>
    </message>
    <message>
        <source>held at its back by cleats</source>
        <translation>hinten von Querleisten gehalten</translation>
    </message>
    <message>
        <source>held at its back by its frame</source>
        <translation>hinten von seinem Gestell gehalten</translation>
    </message>
    <message>
        <source>held at its back by steel</source>
        <translation>hinten von Stahl gehalten</translation>
    </message>
    <message>
        <source>held by as many screws as its frame has room for</source>
        <translation>gehalten von so vielen Schrauben, wie in ihr Gestell passen,</translation>
    </message>
    <message>
        <source>held by its back while it swelled from {start:.1f} to {most:.1f} %</source>
        <translation>vom Rücken gehalten, während es von {start:.1f} auf {most:.1f} % quoll</translation>
    </message>
    <message>
        <source>held for months, wood keeps {low:.0f} % to {high:.0f} % of such a stress ({source}), and less where its moisture changes meanwhile, for which no figure is to be had</source>
        <translation>über Monate behält Holz {low:.0f} % bis {high:.0f} % einer solchen Spannung ({source}), und weniger, wo sich seine Feuchte inzwischen ändert, wofür es keine Zahl gibt</translation>
    </message>
    <message>
        <source>here follows {tile}</source>
        <translation>hier folgt {tile}</translation>
    </message>
    <message>
        <source>hidden, and left out</source>
        <translation>ausgeblendet und weggelassen</translation>
    </message>
    <message>
        <source>hinge line drifts</source>
        <translation>Bandlinie wandert</translation>
    </message>
    <message>
        <source>hinged</source>
        <translation>mit Band</translation>
    </message>
    <message>
        <source>hints</source>
        <translation>Hinweise</translation>
    </message>
    <message>
        <source>hold it nearer to the shoulder: a peg some {near:.0f} mm from it, drawn tight; let the shoulder in a little, undercut it, or ease its edge so that the line does not show; fit it dry</source>
        <translation>ihn näher an der Brüstung halten: ein Holznagel etwa {near:.0f} mm davon, stramm gezogen; die Brüstung etwas einlassen, hinterschneiden oder ihre Kante brechen, damit die Fuge nicht auffällt; trocken einpassen</translation>
    </message>
    <message>
        <source>hold it with battens in slots, sliding dovetails or breadboard ends; or rip it and glue it up, or use quarter-sawn wood</source>
        <translation>mit Leisten in Langlöchern, Gratleisten oder Hirnleisten halten; oder auftrennen und verleimen, oder Holz mit stehenden Jahrringen nehmen</translation>
    </message>
    <message>
        <source>holds it</source>
        <translation>hält sie</translation>
    </message>
    <message>
        <source>holds the pith: will check</source>
        <translation>enthält das Mark: reißt</translation>
    </message>
    <message>
        <source>hole {number}: {depth:.1f} mm deep in a top of {thick:.1f} mm comes too near to the show face</source>
        <translation>Loch {number}: {depth:.1f} mm tief in einer Platte von {thick:.1f} mm kommt der Sichtseite zu nah</translation>
    </message>
    <message>
        <source>hollow</source>
        <translation>hohl</translation>
    </message>
    <message>
        <source>hollow up to {size} in {month}</source>
        <translation>hohl bis {size} im {month}</translation>
    </message>
    <message>
        <source>hollow {size} in {month}</source>
        <translation>hohl {size} im {month}</translation>
    </message>
    <message>
        <source>hollows</source>
        <translation>hohl</translation>
    </message>
    <message>
        <source>hot and damp, cooled</source>
        <translation>heiß und feucht, gekühlt</translation>
    </message>
    <message>
        <source>hot and damp, no cooling</source>
        <translation>heiß und feucht, ohne Kühlung</translation>
    </message>
    <message>
        <source>hourly file 12839.tm2 as shipped inside pvlib (US government data); monthly means computed</source>
        <translation>Stundendatei 12839.tm2, wie sie in pvlib beiliegt (Daten der US-Regierung); Monatsmittel berechnet</translation>
    </message>
    <message>
        <source>hourly file 703165TY.csv as shipped inside pvlib (US government data); monthly means computed</source>
        <translation>Stundendatei 703165TY.csv, wie sie in pvlib beiliegt (Daten der US-Regierung); Monatsmittel berechnet</translation>
    </message>
    <message>
        <source>hourly file 723170TYA.CSV as shipped inside pvlib (US government data); monthly means computed</source>
        <translation>Stundendatei 723170TYA.CSV, wie sie in pvlib beiliegt (Daten der US-Regierung); Monatsmittel berechnet</translation>
    </message>
    <message>
        <source>hours wet</source>
        <translation>Stunden nass</translation>
    </message>
    <message>
        <source>housed free</source>
        <translation>frei in der Nut</translation>
    </message>
    <message>
        <source>how a logger writes its dates, where its file leaves that open</source>
        <translation>wie ein Logger das Datum schreibt, wo seine Datei es offen lässt</translation>
    </message>
    <message>
        <source>how exact the tool is (default 0.5)</source>
        <translation>wie genau das Werkzeug ist (ohne Angabe: 0.5)</translation>
    </message>
    <message>
        <source>how far one corner stands off the plane of the other three</source>
        <translation>wie weit eine Ecke von der Ebene der drei anderen absteht</translation>
    </message>
    <message>
        <source>how far the tree's centre was from the middle of a board's thickness</source>
        <translation>wie weit das Mark von der Mitte der Brettdicke entfernt war</translation>
    </message>
    <message>
        <source>how far this board differs from the average of its species</source>
        <translation>wie weit dieses Brett vom Mittel seiner Holzart abweicht</translation>
    </message>
    <message>
        <source>how it goes on</source>
        <translation>wie es vorangeht</translation>
    </message>
    <message>
        <source>how it is known</source>
        <translation>woher bekannt</translation>
    </message>
    <message>
        <source>how it is told</source>
        <translation>wie es gesagt wird</translation>
    </message>
    <message>
        <source>how long it has been lying so (default 30)</source>
        <translation>wie lange es schon so liegt (ohne Angabe: 30)</translation>
    </message>
    <message>
        <source>how much better the show face looks</source>
        <translation>wie viel schöner die Sichtseite ist</translation>
    </message>
    <message>
        <source>how {names} are joined to the top is not drawn. If glued or screwed {remark}; up to {stress:.0f} MPa across the grain, split: {split}</source>
        <translation>wie {names} mit der Platte verbunden sind, ist nicht gezeichnet. Wenn geleimt oder geschraubt, {remark}; bis {stress:.0f} MPa quer zur Faser, Riss: {split}</translation>
    </message>
    <message>
        <source>humidified cold-winter home</source>
        <translation>beheizt und befeuchtet, kalte Winter</translation>
    </message>
    <message>
        <source>humidified to {humidifier:g} %</source>
        <translation>auf {humidifier:g} % befeuchtet</translation>
    </message>
    <message>
        <source>humidity</source>
        <translation>Feuchte</translation>
    </message>
    <message>
        <source>humidity outside 0 to 100 %</source>
        <translation>Feuchte außerhalb von 0 bis 100 %</translation>
    </message>
    <message>
        <source>humidity ratio</source>
        <translation>Wassergehalt der Luft</translation>
    </message>
    <message>
        <source>if built as drawn, {unit}</source>
        <translation>wenn wie gezeichnet gebaut, {unit}</translation>
    </message>
    <message>
        <source>if left so today, {unit}</source>
        <translation>wenn heute so gelassen, {unit}</translation>
    </message>
    <message>
        <source>if these are °F, convert them first</source>
        <translation>wenn das °F sind, zuerst umrechnen</translation>
    </message>
    <message>
        <source>if you rip it, lay the hollow face down: a cupped board can pinch the blade and kick back</source>
        <translation>beim Auftrennen die hohle Seite nach unten legen: ein geschüsseltes Brett kann das Blatt klemmen und zurückschlagen</translation>
    </message>
    <message>
        <source>in</source>
        <translation>in</translation>
    </message>
    <message>
        <source>in and out of the groove</source>
        <translation>in die Nut und heraus</translation>
    </message>
    <message>
        <source>in the middle</source>
        <translation>in der Mitte</translation>
    </message>
    <message>
        <source>in what a logger writes temperatures, where its file leaves that open</source>
        <translation>in welcher Einheit ein Logger Temperaturen schreibt, wo seine Datei es offen lässt</translation>
    </message>
    <message>
        <source>inches come as fractions to 1/64</source>
        <translation>Zoll kommen als Brüche bis 1/64</translation>
    </message>
    <message>
        <source>indoor year</source>
        <translation>Jahresgang</translation>
    </message>
    <message>
        <source>indoors in {name}</source>
        <translation>innen in {name}</translation>
    </message>
    <message>
        <source>indoors, {name}</source>
        <translation>innen, {name}</translation>
    </message>
    <message>
        <source>inner radius</source>
        <translation>Innenradius</translation>
    </message>
    <message>
        <source>inset jams</source>
        <translation>einschlagendes Teil klemmt</translation>
    </message>
    <message>
        <source>install its drawing module</source>
        <translation>sein Zeichnungsmodul einrichten</translation>
    </message>
    <message>
        <source>install matplotlib, or write the sheet as .html</source>
        <translation>matplotlib installieren, oder das Blatt als .html schreiben</translation>
    </message>
    <message>
        <source>install that release or a later one; until then the object stays as it is</source>
        <translation>jene oder eine spätere Ausgabe installieren; bis dahin bleibt das Objekt, wie es ist</translation>
    </message>
    <message>
        <source>is held fast</source>
        <translation>ist festgehalten</translation>
    </message>
    <message>
        <source>is held fast, if both rails are glued in it,</source>
        <translation>ist festgehalten, wenn beide Riegel in ihr geleimt sind,</translation>
    </message>
    <message>
        <source>is then</source>
        <translation>ist dann</translation>
    </message>
    <message>
        <source>is this stock ready for that home, and how long till it is</source>
        <translation>ist dieses Holz bereit für jenen Raum, und wie lange dauert es noch</translation>
    </message>
    <message>
        <source>it</source>
        <translation>das Brett</translation>
    </message>
    <message>
        <source>it belongs to another file; cut it there</source>
        <translation>es gehört zu einer anderen Datei; dort schneiden</translation>
    </message>
    <message>
        <source>it binds</source>
        <translation>es klemmt</translation>
    </message>
    <message>
        <source>it cannot be looked at ({reason})</source>
        <translation>sie lässt sich nicht ansehen ({reason})</translation>
    </message>
    <message>
        <source>it cannot be read ({reason})</source>
        <translation>sie ist nicht lesbar ({reason})</translation>
    </message>
    <message>
        <source>it cannot be written ({reason})</source>
        <translation>sie lässt sich nicht schreiben ({reason})</translation>
    </message>
    <message>
        <source>it could not be written ({error})</source>
        <translation>sie ließ sich nicht schreiben ({error})</translation>
    </message>
    <message>
        <source>it exists already</source>
        <translation>die Datei gibt es schon</translation>
    </message>
    <message>
        <source>it grows {growth:.1f} mm wider than drawn and its grooves leave it {room:.1f} mm: {short:.1f} mm too little. It bows, or bursts the joints of its frame{force}</source>
        <translation>sie wird {growth:.1f} mm breiter als gezeichnet, und ihre Nuten lassen ihr {room:.1f} mm: {short:.1f} mm zu wenig. Sie wölbt sich oder sprengt die Verbindungen ihres Rahmens{force}</translation>
    </message>
    <message>
        <source>it grows {growth:.1f} mm wider than drawn and its rabbets leave it {room:.1f} mm: it pushes the sides apart, or buckles</source>
        <translation>sie wird {growth:.1f} mm breiter als gezeichnet, und ihre Falze lassen ihr {room:.1f} mm: Sie drückt die Seiten auseinander oder beult aus</translation>
    </message>
    <message>
        <source>it hangs by fittings {apart:.0f} mm apart across its grain, which moves {least:+.1f} to {most:+.1f} mm between them while what they hook into does not: they bind, or tear out (fittings taken as fixed to what they touch)</source>
        <translation>sie hängt an Beschlägen, die quer zur Faser {apart:.0f} mm auseinander sitzen; dazwischen bewegt sie sich {least:+.1f} bis {most:+.1f} mm, ihr Gegenüber nicht: Sie klemmen oder reißen aus (Beschläge als fest an dem angenommen, was sie berühren)</translation>
    </message>
    <message>
        <source>it hardly moves</source>
        <translation>sie arbeitet kaum</translation>
    </message>
    <message>
        <source>it has faces but encloses no solid</source>
        <translation>es hat Flächen, umschließt aber keinen Körper</translation>
    </message>
    <message>
        <source>it has no elements to tag</source>
        <translation>es hat keine Elemente, zu denen etwas zu sagen wäre</translation>
    </message>
    <message>
        <source>it has no faces</source>
        <translation>es hat keine Flächen</translation>
    </message>
    <message>
        <source>it has no shape</source>
        <translation>es hat keine Form</translation>
    </message>
    <message>
        <source>it holds no known findings</source>
        <translation>sie enthält keine bekannten Befunde</translation>
    </message>
    <message>
        <source>it is a folder</source>
        <translation>es ist ein Ordner</translation>
    </message>
    <message>
        <source>it is a layer between others: on it {above}, under it {below}</source>
        <translation>sie ist eine Lage zwischen anderen: auf ihr {above}, unter ihr {below}</translation>
    </message>
    <message>
        <source>it is a link that leads round in a circle, or through what is no folder</source>
        <translation>es ist ein Verweis, der im Kreis oder durch etwas führt, das kein Ordner ist</translation>
    </message>
    <message>
        <source>it is a link with a scale or a mirror image; make a plain copy of it, then place and cut again</source>
        <translation>es ist eine Verknüpfung mit Maßstab oder ein Spiegelbild; eine einfache Kopie machen, dann neu setzen und schneiden</translation>
    </message>
    <message>
        <source>it is cut out or hollowed: {pierced:.0f} % of what its outline holds is wood; planned as whole, so look whether there is wood where a fastener is placed</source>
        <translation>sie ist ausgeschnitten oder ausgehöhlt: {pierced:.0f} % dessen, was ihr Umriss umfasst, ist Holz; als Ganzes geplant, darum nachsehen, ob dort Holz ist, wo eine Befestigung sitzt</translation>
    </message>
    <message>
        <source>it is far too large</source>
        <translation>sie ist viel zu groß</translation>
    </message>
    <message>
        <source>it is far too large for settings</source>
        <translation>sie ist viel zu groß für Einstellungen</translation>
    </message>
    <message>
        <source>it is fixed at one point, and the rest is free to move</source>
        <translation>es ist an einer Stelle fest, und der Rest kann arbeiten</translation>
    </message>
    <message>
        <source>it is free to move</source>
        <translation>es kann frei arbeiten</translation>
    </message>
    <message>
        <source>it is held fast at lines {apart:.0f} mm apart across its grain, which moves {least:+.1f} to {most:+.1f} mm between them: a joint gives, or it splits{force}</source>
        <translation>es ist quer zur Faser an Linien im Abstand von {apart:.0f} mm fest, zwischen denen es sich {least:+.1f} bis {most:+.1f} mm bewegt: Eine Verbindung gibt nach, oder es reißt{force}</translation>
    </message>
    <message>
        <source>it is nested too deep, or a number in it is too long</source>
        <translation>sie ist zu tief verschachtelt, oder eine Zahl darin ist zu lang</translation>
    </message>
    <message>
        <source>it is no report of a check</source>
        <translation>das ist kein Bericht einer Prüfung</translation>
    </message>
    <message>
        <source>it is not JSON</source>
        <translation>das ist kein JSON</translation>
    </message>
    <message>
        <source>it is not JSON ({reason})</source>
        <translation>das ist kein JSON ({reason})</translation>
    </message>
    <message>
        <source>it is not JSON of ours</source>
        <translation>das ist kein JSON von uns</translation>
    </message>
    <message>
        <source>it is not a BREP file: DBRep_DrawableShape is not at its start</source>
        <translation>das ist keine BREP-Datei: DBRep_DrawableShape steht nicht am Anfang</translation>
    </message>
    <message>
        <source>it is not a FreeCAD document: no Document.xml in it</source>
        <translation>das ist kein FreeCAD-Dokument: keine Document.xml darin</translation>
    </message>
    <message>
        <source>it is not a FreeCAD document: not an archive</source>
        <translation>das ist kein FreeCAD-Dokument: kein Archiv</translation>
    </message>
    <message>
        <source>it is not a STEP file: ISO-10303-21 is not at its start</source>
        <translation>das ist keine STEP-Datei: ISO-10303-21 steht nicht am Anfang</translation>
    </message>
    <message>
        <source>it is not an ordinary file</source>
        <translation>das ist keine gewöhnliche Datei</translation>
    </message>
    <message>
        <source>it is not in the model any more</source>
        <translation>es ist nicht mehr im Modell</translation>
    </message>
    <message>
        <source>it is not written in UTF-8</source>
        <translation>sie ist nicht in UTF-8 geschrieben</translation>
    </message>
    <message>
        <source>it is not written in {encoding}</source>
        <translation>sie ist nicht in {encoding} geschrieben</translation>
    </message>
    <message>
        <source>it is one of the elements of '{array}', which are one object; make an own link or copy of it, then place and cut again</source>
        <translation>es ist eines der Elemente von '{array}', die ein Objekt sind; eine eigene Verknüpfung oder Kopie machen, dann neu setzen und schneiden</translation>
    </message>
    <message>
        <source>it is open already</source>
        <translation>sie ist schon offen</translation>
    </message>
    <message>
        <source>it is to be one JSON object</source>
        <translation>sie muss ein einziges JSON-Objekt sein</translation>
    </message>
    <message>
        <source>it is {length:,.0f} km long: check its units, or its link's scale</source>
        <translation>es ist {length:,.0f} km lang: seine Einheiten prüfen, oder den Maßstab seiner Verknüpfung</translation>
    </message>
    <message>
        <source>it is {what}</source>
        <translation>es ist {what}</translation>
    </message>
    <message>
        <source>it leads back to {name!r}, which it lies in</source>
        <translation>es führt zurück zu {name!r}, worin es liegt</translation>
    </message>
    <message>
        <source>it lies heart side down</source>
        <translation>sie liegt mit der Kernseite unten</translation>
    </message>
    <message>
        <source>it lies heart side up</source>
        <translation>sie liegt mit der Kernseite oben</translation>
    </message>
    <message>
        <source>it lies in '{container}', which is linked, and is shown {count} times: a cut would be in all of them; make a copy of that container of its own, then place and cut again</source>
        <translation>es liegt in '{container}', das verknüpft ist und {count}-mal gezeigt wird: ein Schnitt wäre in allen; von diesem Behälter eine eigene Kopie machen, dann neu setzen und schneiden</translation>
    </message>
    <message>
        <source>it links to nothing</source>
        <translation>es verknüpft mit nichts</translation>
    </message>
    <message>
        <source>it links to too many other files</source>
        <translation>sie verweist auf zu viele andere Dateien</translation>
    </message>
    <message>
        <source>it shrinks {shrinkage:.1f} mm, so that its edges come {short:.1f} mm short of their rabbets</source>
        <translation>sie schwindet um {shrinkage:.1f} mm, so dass ihre Kanten {short:.1f} mm vor ihren Falzen enden</translation>
    </message>
    <message>
        <source>it shrinks {shrinkage:.1f} mm: {left:.1f} mm of it are left on its rabbet at each edge, {wanted:.0f} mm are wanted</source>
        <translation>sie schwindet um {shrinkage:.1f} mm: An jeder Kante bleiben {left:.1f} mm auf dem Falz, {wanted:.0f} mm sollen es sein</translation>
    </message>
    <message>
        <source>it shrinks {shrinkage:.1f} mm: {left} at each edge, {wanted:.0f} mm are wanted</source>
        <translation>sie schwindet {shrinkage:.1f} mm: {left} an jeder Kante, {wanted:.0f} mm sind gewünscht</translation>
    </message>
    <message>
        <source>it splits</source>
        <translation>es reißt</translation>
    </message>
    <message>
        <source>it stands off its frame by up to {gap:.1f} mm</source>
        <translation>sie steht bis zu {gap:.1f} mm vom Gestell ab</translation>
    </message>
    <message>
        <source>it stands upright, longer than high, as a deep case side</source>
        <translation>es steht aufrecht, länger als hoch, wie eine tiefe Korpusseite</translation>
    </message>
    <message>
        <source>it stays flat within 0.05</source>
        <translation>sie bleibt auf 0,05 eben</translation>
    </message>
    <message>
        <source>it took longer than {seconds:g} s and was stopped. To do: allow more with --time-limit, or see in FreeCAD what makes it so large.</source>
        <translation>es dauerte länger als {seconds:g} s und wurde abgebrochen. Zu tun: mit --time-limit mehr zulassen, oder in FreeCAD nachsehen, was es so groß macht.</translation>
    </message>
    <message>
        <source>it twists: spiral grain, or rings that turn along it</source>
        <translation>es verdreht sich: Drehwuchs, oder Jahrringe, die sich über die Länge drehen</translation>
    </message>
    <message>
        <source>it wants to crown by up to {free:.1f} mm</source>
        <translation>sie will sich um bis zu {free:.1f} mm nach oben wölben</translation>
    </message>
    <message>
        <source>it wants to go hollow by up to {free:.1f} mm</source>
        <translation>sie will um bis zu {free:.1f} mm hohl werden</translation>
    </message>
    <message>
        <source>it wants to lie flat</source>
        <translation>sie will eben liegen</translation>
    </message>
    <message>
        <source>it was fused of {woods}; {counts} counts. To do: keep boards of their own</source>
        <translation>es wurde aus {woods} vereinigt; {counts} gilt. Zu tun: die Bretter einzeln lassen</translation>
    </message>
    <message>
        <source>it will not come back: fasten so that it can move, let it settle at its usual moisture, then flatten</source>
        <translation>es kommt nicht zurück: so befestigen, dass es arbeiten kann, bei üblicher Feuchte zur Ruhe kommen lassen, dann ebnen</translation>
    </message>
    <message>
        <source>it would come through, or nearly, on the other side; take a shorter screw or move it</source>
        <translation>sie käme auf der anderen Seite durch, oder beinahe; eine kürzere Schraube nehmen oder sie versetzen</translation>
    </message>
    <message>
        <source>its edge at {edge}</source>
        <translation>ihre Kante an {edge}</translation>
    </message>
    <message>
        <source>its end toward {where}</source>
        <translation>ihrem Ende zu {where} hin</translation>
    </message>
    <message>
        <source>its ending says how it is written</source>
        <translation>ihre Endung sagt, wie sie geschrieben wird</translation>
    </message>
    <message>
        <source>its ends are housed in {holders}</source>
        <translation>ihre Enden sind eingelassen in {holders}</translation>
    </message>
    <message>
        <source>its entries overlap or leave gaps at '{shown}'</source>
        <translation>ihre Einträge überlappen sich oder lassen Lücken bei „{shown}“</translation>
    </message>
    <message>
        <source>its findings have no identities: it was made by an older Heartside</source>
        <translation>seine Befunde haben keine Kennungen: Er stammt von einem älteren Heartside</translation>
    </message>
    <message>
        <source>its folder does not exist</source>
        <translation>den Ordner dafür gibt es nicht</translation>
    </message>
    <message>
        <source>its grain does not run along it, so it winds: a corner lifts up to {lift:.1f} mm over the other three if nothing holds it</source>
        <translation>seine Faser läuft nicht längs, darum verdreht es sich: Eine Ecke hebt sich bis {lift:.1f} mm über die anderen drei, wenn nichts es hält</translation>
    </message>
    <message>
        <source>its hinges sit {apart:.0f} mm apart across its grain, which moves {least:+.1f} to {most:+.1f} mm between them while what it hangs on does not: they bind, and the screws tear out or it splits (fittings taken as fixed to what they touch)</source>
        <translation>ihre Bänder sitzen quer zur Faser {apart:.0f} mm auseinander; dazwischen bewegt sie sich {least:+.1f} bis {most:+.1f} mm, ihr Träger nicht: Sie klemmen, und die Schrauben reißen aus oder sie reißt (Beschläge als fest an dem angenommen, was sie berühren)</translation>
    </message>
    <message>
        <source>its label says {words}, which would stay behind when its wood goes elsewhere</source>
        <translation>seine Bezeichnung sagt {words}; das bliebe zurück, wenn sein Holz an einen anderen Platz kommt</translation>
    </message>
    <message>
        <source>its legs stand {apart:.0f} mm apart across the grain of the board above, which moves them {least:+.1f} to {most:+.1f} mm, and its own length does not change: its shoulders open or press, and its tenons work loose</source>
        <translation>seine Beine stehen {apart:.0f} mm auseinander quer zur Faser des Bretts darüber, das sie um {least:+.1f} bis {most:+.1f} mm bewegt, und seine eigene Länge ändert sich nicht: Seine Brüstungen öffnen sich oder drücken, und seine Zapfen lockern sich</translation>
    </message>
    <message>
        <source>its link is scaled to nothing</source>
        <translation>seine Verknüpfung ist auf nichts verkleinert</translation>
    </message>
    <message>
        <source>its long edges are housed in {holders}</source>
        <translation>ihre Längskanten sind eingelassen in {holders}</translation>
    </message>
    <message>
        <source>its moisture is not known</source>
        <translation>seine Feuchte ist nicht bekannt</translation>
    </message>
    <message>
        <source>its moisture today</source>
        <translation>seine Feuchte heute</translation>
    </message>
    <message>
        <source>its moisture when it was last flat</source>
        <translation>seine Feuchte, als es zuletzt eben war</translation>
    </message>
    <message>
        <source>its name holds bytes that are no letters</source>
        <translation>ihr Name enthält Bytes, die keine Buchstaben sind</translation>
    </message>
    <message>
        <source>its own answer to the air could not be worked out ({what}); taken as in step with the air</source>
        <translation>wie es der Luft folgt, ließ sich nicht berechnen ({what}); als ihr ohne Verzug folgend genommen</translation>
    </message>
    <message>
        <source>its peg</source>
        <translation>sein Holznagel</translation>
    </message>
    <message>
        <source>its place or its size is no number: give it a place again</source>
        <translation>sein Ort oder seine Größe ist keine Zahl: ihm wieder einen Ort geben</translation>
    </message>
    <message>
        <source>its properties have form {form}, of a later release than this one</source>
        <translation>die Eigenschaften haben die Form {form} einer späteren Ausgabe als dieser</translation>
    </message>
    <message>
        <source>its shape could not be worked out: shown without its cup</source>
        <translation>seine Form ließ sich nicht berechnen: ohne Wölbung gezeigt</translation>
    </message>
    <message>
        <source>its shoulder opens up to {gap:.1f} mm: the other part shrinks over the {held:.0f} mm between the shoulder and {by}, which holds the tenon, and the tenon's length does not</source>
        <translation>seine Brüstung öffnet sich bis {gap:.1f} mm: Das andere Teil schwindet auf den {held:.0f} mm zwischen der Brüstung und dem, was den Zapfen hält ({by}), der Zapfen in der Länge nicht</translation>
    </message>
    <message>
        <source>its species</source>
        <translation>seine Holzart</translation>
    </message>
    <message>
        <source>its thickness</source>
        <translation>seine Dicke</translation>
    </message>
    <message>
        <source>its tongue has {play:.1f} mm of play in the width of its groove</source>
        <translation>ihre Feder hat {play:.1f} mm Spiel in der Breite ihrer Nut</translation>
    </message>
    <message>
        <source>its tongue or tenon moves {travels:.1f} mm in the mortise and has {room:.1f} mm of room there: it splits the end, or the top</source>
        <translation>ihre Feder oder ihr Zapfen bewegt sich im Loch {travels:.1f} mm und hat dort {room:.1f} mm Spiel: Das sprengt die Hirnleiste oder die Platte</translation>
    </message>
    <message>
        <source>its two ends are one point</source>
        <translation>ihre beiden Enden sind ein Punkt</translation>
    </message>
    <message>
        <source>its width</source>
        <translation>seine Breite</translation>
    </message>
    <message>
        <source>its wood or grain is not known</source>
        <translation>sein Holz oder seine Faser ist nicht bekannt</translation>
    </message>
    <message>
        <source>its {what} is known as a range only</source>
        <translation>bekannt ist nur ein Bereich: {what}</translation>
    </message>
    <message>
        <source>jam</source>
        <translation>klemmen</translation>
    </message>
    <message>
        <source>jams</source>
        <translation>klemmt</translation>
    </message>
    <message>
        <source>joint</source>
        <translation>Verbindung</translation>
    </message>
    <message>
        <source>judged with the top as a whole, and how it is held</source>
        <translation>mit der ganzen Platte beurteilt, und wie sie gehalten ist</translation>
    </message>
    <message>
        <source>jumps from {temperature:.1f} °C, {rh:.0f} % to {temperature2:.1f} °C, {rh2:.0f} %</source>
        <translation>springt von {temperature:.1f} °C, {rh:.0f} % auf {temperature2:.1f} °C, {rh2:.0f} %</translation>
    </message>
    <message>
        <source>keep it in the same room as the table, or bring it in some weeks before; finish all its faces as the table's are; ease its edges, so that a step does not show</source>
        <translation>sie im selben Raum wie den Tisch aufbewahren oder einige Wochen vorher hereinholen; alle Flächen wie am Tisch behandeln; die Kanten brechen, damit eine Stufe nicht auffällt</translation>
    </message>
    <message>
        <source>keep one, and call it {name}</source>
        <translation>eine behalten und sie {name} nennen</translation>
    </message>
    <message>
        <source>keep reports here, to be found again while nothing they rest on has changed (default: in your cache folder). A run that was stopped goes on by that</source>
        <translation>Berichte hier aufbewahren und wiederfinden, solange sich nichts geändert hat, worauf sie beruhen (ohne Angabe: im eigenen Cache-Ordner). Damit geht auch ein abgebrochener Lauf weiter</translation>
    </message>
    <message>
        <source>keep rooms only with a place</source>
        <translation>Räume nur zu einem Ort angeben</translation>
    </message>
    <message>
        <source>kept elsewhere when not in use ({name}), and worked out as it comes from there</source>
        <translation>liegt sonst anderswo ({name}) und ist so berechnet, wie es von dort kommt</translation>
    </message>
    <message>
        <source>kept in other air ({air}) and laid in as it comes from there, it stands {steps} beyond what it meets (+), or falls short of it (-)</source>
        <translation>in anderer Luft aufbewahrt ({air}) und so eingelegt, wie sie von dort kommt, steht sie {steps} über ihr Gegenüber vor (+) oder bleibt dahinter zurück (-)</translation>
    </message>
    <message>
        <source>kerf</source>
        <translation>Schnittfuge</translation>
    </message>
    <message>
        <source>kind</source>
        <translation>Art</translation>
    </message>
    <message>
        <source>kind of fastener; give it once a kind (default: those that suit)</source>
        <translation>Art der Befestigung; je Art einmal angeben (ohne Angabe: die passenden)</translation>
    </message>
    <message>
        <source>kind of meter (default pin)</source>
        <translation>Art des Messgeräts (ohne Angabe: pin)</translation>
    </message>
    <message>
        <source>kind of the plan (default: the best)</source>
        <translation>Art des Plans (ohne Angabe: der beste)</translation>
    </message>
    <message>
        <source>known</source>
        <translation>bekannt</translation>
    </message>
    <message>
        <source>lacquer</source>
        <translation>Nitrolack</translation>
    </message>
    <message>
        <source>lapped</source>
        <translation>überblattet</translation>
    </message>
    <message>
        <source>largest ± (part), {unit}</source>
        <translation>größtes ± (Teil), {unit}</translation>
    </message>
    <message>
        <source>latex paint</source>
        <translation>Dispersionsfarbe</translation>
    </message>
    <message>
        <source>latex primer</source>
        <translation>Dispersionsgrundierung</translation>
    </message>
    <message>
        <source>law {law!r}</source>
        <translation>Verteilung {law!r}</translation>
    </message>
    <message>
        <source>laying</source>
        <translation>Lage</translation>
    </message>
    <message>
        <source>layout</source>
        <translation>Lage</translation>
    </message>
    <message>
        <source>leaf kept elsewhere</source>
        <translation>anderswo aufbewahrte Einlegeplatte</translation>
    </message>
    <message>
        <source>learn how lively the wood is from what you measured later</source>
        <translation>aus späteren Messungen lernen, wie stark das Holz arbeitet</translation>
    </message>
    <message>
        <source>learned coefficient</source>
        <translation>gelernter Beiwert</translation>
    </message>
    <message>
        <source>learned from one measurement</source>
        <translation>aus einer Messung gelernt</translation>
    </message>
    <message>
        <source>learned from {n} measurements</source>
        <translation>aus {n} Messungen gelernt</translation>
    </message>
    <message>
        <source>least</source>
        <translation>min.</translation>
    </message>
    <message>
        <source>least cover</source>
        <translation>Deckung, min.</translation>
    </message>
    <message>
        <source>least, month</source>
        <translation>min., Monat</translation>
    </message>
    <message>
        <source>leave</source>
        <translation>lassen</translation>
    </message>
    <message>
        <source>leave in the mortise today, {unit}</source>
        <translation>heute im Zapfenloch lassen, {unit}</translation>
    </message>
    <message>
        <source>leave it out: only its edges and ends breathe</source>
        <translation>es weglassen: Nur Kanten und Enden atmen</translation>
    </message>
    <message>
        <source>leave one round hole in each, nearest to the middle of the top; make slots along the bar of the others, longer the farther out they are; 'hold' on the command line gives places and lengths</source>
        <translation>in jedem Teil ein rundes Loch lassen, das der Mitte der Platte nächste; die anderen zu Langlöchern in seiner Längsrichtung machen, je weiter außen, desto länger; „hold“ auf der Befehlszeile nennt Plätze und Längen</translation>
    </message>
    <message>
        <source>leave today</source>
        <translation>heute lassen</translation>
    </message>
    <message>
        <source>leave {front:.1f} mm in the mortise toward {edge} and {back:.1f} toward {other}; peg slot {length:.1f} mm long in the tenon, peg today {today:.1f} from its end toward {edge}</source>
        <translation>im Zapfenloch {front:.1f} mm zu {edge} hin und {back:.1f} zu {other} hin lassen; Langloch für den Holznagel im Zapfen {length:.1f} mm lang, der Holznagel heute {today:.1f} von dessen Ende zu {edge} hin</translation>
    </message>
    <message>
        <source>leave {leave:.1f} mm beside each edge, or make it of shiplapped boards, each fixed at one line; or use plywood</source>
        <translation>neben jeder Kante {leave:.1f} mm lassen, oder sie aus überfälzten Brettern machen, jedes an einer Linie fest; oder Sperrholz nehmen</translation>
    </message>
    <message>
        <source>leave {room:.0f} mm of room in the grooves at its edges, glue it at one line at most; or use plywood</source>
        <translation>in den Nuten an seinen Kanten {room:.0f} mm Platz lassen, höchstens an einer Linie leimen; oder Sperrholz nehmen</translation>
    </message>
    <message>
        <source>leave {today:.1f} mm above it today, which becomes {least:.1f} to {most:.1f} mm; use quarter-sawn wood for sides; never plane a drawer that sticks in the damp season until it has dried</source>
        <translation>heute {today:.1f} mm darüber lassen, woraus {least:.1f} bis {most:.1f} mm werden; für Seiten Holz mit stehenden Ringen nehmen; eine Schublade, die in der feuchten Zeit klemmt, nie hobeln, ehe sie getrocknet ist</translation>
    </message>
    <message>
        <source>leave {today:.1f} mm today, which becomes {least:.1f} to {most:.1f} mm; never plane a part that sticks in the damp season until it has dried</source>
        <translation>heute {today:.1f} mm lassen, daraus werden {least:.1f} bis {most:.1f} mm; ein Teil, das in der feuchten Zeit klemmt, nie hobeln, ehe es getrocknet ist</translation>
    </message>
    <message>
        <source>leaves its groove</source>
        <translation>verlässt die Nut</translation>
    </message>
    <message>
        <source>left</source>
        <translation>übrig</translation>
    </message>
    <message>
        <source>leg</source>
        <translation>Bein</translation>
    </message>
    <message>
        <source>legs moved apart</source>
        <translation>Beine auseinandergeschoben</translation>
    </message>
    <message>
        <source>length</source>
        <translation>Länge</translation>
    </message>
    <message>
        <source>length and breadth must be above 0</source>
        <translation>Länge und Breite müssen über 0 sein</translation>
    </message>
    <message>
        <source>length not stated: the twist is unknown</source>
        <translation>Länge nicht gesagt: Die Verdrehung ist unbekannt</translation>
    </message>
    <message>
        <source>length of the grain direction</source>
        <translation>Länge der Faserrichtung</translation>
    </message>
    <message>
        <source>length {length:.4g} is under {ask_below_ratio} × width {width:.4g} mm</source>
        <translation>die Länge {length:.4g} ist unter {ask_below_ratio} × Breite {width:.4g} mm</translation>
    </message>
    <message>
        <source>let into its underside and taken as carrying it, how they are joined is not judged: {names}</source>
        <translation>in ihre Unterseite eingelassen und als tragend genommen, wie sie verbunden sind, ist nicht beurteilt: {names}</translation>
    </message>
    <message>
        <source>let it rest, then plane both faces alike in light passes; ask for conditioned stock</source>
        <translation>ruhen lassen, dann beide Seiten gleich in leichten Durchgängen hobeln; nach entspannter Ware fragen</translation>
    </message>
    <message>
        <source>let it slide out under the drawer's back: cut the back narrower, so that only the groove of the front holds it</source>
        <translation>ihn unter dem Hinterstück der Schublade hinausgleiten lassen: das Hinterstück schmaler schneiden, so dass nur die Nut im Vorderstück ihn hält</translation>
    </message>
    <message>
        <source>let it stand proud by {proud:.1f} mm or more and ease its edges, or stop the tenon inside; do not plane it flush in the dry season; or turn the rings so that the part around it moves less along the tenon</source>
        <translation>ihn um {proud:.1f} mm oder mehr vorstehen lassen und die Kanten brechen, oder den Zapfen innen enden lassen; ihn nicht in der trockenen Zeit bündig hobeln; oder die Ringe so legen, dass das Teil um ihn sich längs des Zapfens weniger bewegt</translation>
    </message>
    <message>
        <source>let its grain run from side to side, so that it moves in depth with the sides; or glue it in the front {width:.0f} mm of its housings only and let it slide behind, short of the back by {room:.1f} mm{confirm}</source>
        <translation>die Faser von Seite zu Seite laufen lassen, damit er sich in der Tiefe mit den Seiten bewegt; oder ihn nur in den vorderen {width:.0f} mm seiner Nuten leimen und dahinter gleiten lassen, {room:.1f} mm vor der Rückwand{confirm}</translation>
    </message>
    <message>
        <source>let the stretchers run with the board's grain, or house the legs in battens across the board that slide in it; else leave one end dry in a deep socket with {room:.1f} mm of room. What carries people must not work loose</source>
        <translation>die Stege mit der Faser des Bretts laufen lassen, oder die Beine in Querleisten setzen, die im Brett gleiten; sonst ein Ende trocken in einem tiefen Loch mit {room:.1f} mm Luft lassen. Was Menschen trägt, darf sich nicht lockern</translation>
    </message>
    <message>
        <source>lie between {low:.1f} mm hollow and a crown of {high:.1f} mm</source>
        <translation>zwischen {low:.1f} mm hohl und {high:.1f} mm rund liegen</translation>
    </message>
    <message>
        <source>lie flat</source>
        <translation>eben liegen</translation>
    </message>
    <message>
        <source>lightly heated maritime home</source>
        <translation>wenig beheizt, Meeresklima</translation>
    </message>
    <message>
        <source>likely</source>
        <translation>wahrscheinlich</translation>
    </message>
    <message>
        <source>line {line}</source>
        <translation>Zeile {line}</translation>
    </message>
    <message>
        <source>lines_mm {lines_mm} do not rise</source>
        <translation>lines_mm {lines_mm} steigen nicht an</translation>
    </message>
    <message>
        <source>lines_mm {lines} do not rise</source>
        <translation>lines_mm {lines} steigen nicht</translation>
    </message>
    <message>
        <source>link arrays</source>
        <translation>Reihen von Verknüpfungen</translation>
    </message>
    <message>
        <source>linseed oil</source>
        <translation>Leinöl</translation>
    </message>
    <message>
        <source>list its boards</source>
        <translation>ihre Bretter aufzählen</translation>
    </message>
    <message>
        <source>list the boards</source>
        <translation>die Bretter aufzählen</translation>
    </message>
    <message>
        <source>list the places that are known</source>
        <translation>die bekannten Orte aufführen</translation>
    </message>
    <message>
        <source>list the species and materials that are known</source>
        <translation>die bekannten Holzarten und Werkstoffe aufführen</translation>
    </message>
    <message>
        <source>list the years of air that are known</source>
        <translation>die bekannten Jahresgänge aufführen</translation>
    </message>
    <message>
        <source>living adds {moisture_gain:g} g/m³ in frost</source>
        <translation>das Wohnen gibt bei Frost {moisture_gain:g} g/m³ dazu</translation>
    </message>
    <message>
        <source>lock line drifts</source>
        <translation>Schlosslinie wandert</translation>
    </message>
    <message>
        <source>log diameter</source>
        <translation>Stammdurchmesser</translation>
    </message>
    <message>
        <source>log longer, or name a year to complete it with: complete_with=…</source>
        <translation>länger aufzeichnen, oder ein Jahr nennen, das ergänzt: complete_with=…</translation>
    </message>
    <message>
        <source>logger, {count} days of the year</source>
        <translation>Logger, {count} Tage des Jahres</translation>
    </message>
    <message>
        <source>long grain on long grain, the grains crossing: glued, screwed or merely resting is not drawn</source>
        <translation>Längsholz auf Längsholz, die Fasern gekreuzt: ob geleimt, geschraubt oder nur aufliegend, ist nicht gezeichnet</translation>
    </message>
    <message>
        <source>long grain on long grain, the grains running the same way: glued, screwed or merely resting is not drawn</source>
        <translation>Längsholz auf Längsholz, mit gleicher Faserrichtung: ob geleimt, geschraubt oder nur aufliegend, ist nicht gezeichnet</translation>
    </message>
    <message>
        <source>longer than the top is wide</source>
        <translation>länger als die Platte breit ist</translation>
    </message>
    <message>
        <source>look at no settings file</source>
        <translation>keine Datei mit Einstellungen beachten</translation>
    </message>
    <message>
        <source>look for a quote that is never closed</source>
        <translation>nach einem Anführungszeichen suchen, das nie geschlossen wird</translation>
    </message>
    <message>
        <source>look for a slip of the decimal point, or of the part; or draw the part as it was built</source>
        <translation>nachsehen, ob das Komma verrutscht oder das falsche Teil genannt ist; oder das Teil so zeichnen, wie es gebaut wurde</translation>
    </message>
    <message>
        <source>looks</source>
        <translation>Aussehen</translation>
    </message>
    <message>
        <source>looks {looks}</source>
        <translation>Aussehen {looks}</translation>
    </message>
    <message>
        <source>loosen all but one line of fasteners; slot the others across the grain</source>
        <translation>alle Reihen der Befestigungen bis auf eine lösen; die anderen quer zur Faser in Langlöcher setzen</translation>
    </message>
    <message>
        <source>loosen the fasteners and measure at once: {one:.1f} mm left speaks for '{first}', {two:.1f} mm for '{second}'</source>
        <translation>die Befestigungen lösen und sofort messen: Bleiben {one:.1f} mm, spricht das für „{first}“, {two:.1f} mm für „{second}“</translation>
    </message>
    <message>
        <source>lot {lot}</source>
        <translation>Charge {lot}</translation>
    </message>
    <message>
        <source>low &lt; high, stiffness &gt; 0 N</source>
        <translation>unten &lt; oben, Steifigkeit &gt; 0 N</translation>
    </message>
    <message>
        <source>lying on the bench for {lying:g} days</source>
        <translation>{lying:g} Tage auf der Hobelbank gelegen</translation>
    </message>
    <message>
        <source>lying {lying!r}</source>
        <translation>Liegen {lying!r}</translation>
    </message>
    <message>
        <source>make it a Board first</source>
        <translation>zuerst ein Board daraus machen</translation>
    </message>
    <message>
        <source>make the folder first</source>
        <translation>erst den Ordner anlegen</translation>
    </message>
    <message>
        <source>make the tenon drier than it will ever be in use, 5 % or so, and the wood around it in step with the home; wedge it across the hole's grain, or pin it; turn the tenon's rings so that it moves least along the hole's grain. What carries people must not work loose</source>
        <translation>den Zapfen trockener machen, als er im Gebrauch je wird, etwa 5 %, und das Holz um ihn im Gleichgewicht mit der Wohnung; quer zur Faser des Lochs verkeilen oder verstiften; die Ringe des Zapfens so drehen, dass er sich längs der Faser des Lochs am wenigsten bewegt. Was Menschen trägt, darf sich nicht lockern</translation>
    </message>
    <message>
        <source>material</source>
        <translation>Werkstoff</translation>
    </message>
    <message>
        <source>measure before you cut</source>
        <translation>messen, bevor geschnitten wird</translation>
    </message>
    <message>
        <source>measure between the ring's tangent and the face</source>
        <translation>zwischen der Tangente des Jahrrings und der Fläche messen</translation>
    </message>
    <message>
        <source>measure it again</source>
        <translation>noch einmal messen</translation>
    </message>
    <message>
        <source>measure it again; sizes are in mm</source>
        <translation>noch einmal messen; Maße sind in mm</translation>
    </message>
    <message>
        <source>measure the radius of one ring on the end, or pick three points along it</source>
        <translation>den Radius eines Rings auf dem Hirnholz messen, oder drei Punkte darauf wählen</translation>
    </message>
    <message>
        <source>measure the width and moisture of an offcut of the lot in two seasons, and enter its own coefficient</source>
        <translation>Breite und Feuchte eines Abschnitts der Charge in zwei Jahreszeiten messen und seinen eigenen Beiwert eintragen</translation>
    </message>
    <message>
        <source>measured change</source>
        <translation>gemessene Änderung</translation>
    </message>
    <message>
        <source>measurement</source>
        <translation>Messung</translation>
    </message>
    <message>
        <source>measurement of {part!r}</source>
        <translation>Messung von {part!r}</translation>
    </message>
    <message>
        <source>measurement of {part!r} on {date}: {error}</source>
        <translation>Messung von {part!r} am {date}: {error}</translation>
    </message>
    <message>
        <source>measurements of the study</source>
        <translation>Messungen der Studie</translation>
    </message>
    <message>
        <source>mend it or remove it</source>
        <translation>sie berichtigen oder entfernen</translation>
    </message>
    <message>
        <source>mend or remove that property</source>
        <translation>diese Eigenschaft berichtigen oder entfernen</translation>
    </message>
    <message>
        <source>mend or remove the property</source>
        <translation>die Eigenschaft berichtigen oder entfernen</translation>
    </message>
    <message>
        <source>mend the dates</source>
        <translation>die Daten berichtigen</translation>
    </message>
    <message>
        <source>metal base</source>
        <translation>Metallgestell</translation>
    </message>
    <message>
        <source>metal lies along {width:.0f} mm of the board's width, which moves {least:+.1f} to {most:+.1f} mm: taken as fixed at one point. Screwed in round holes at both ends it holds the board fast, which splits or pulls the screws out, and the drawer's line goes with it</source>
        <translation>Metall liegt auf {width:.0f} mm der Brettbreite, die sich um {least:+.1f} bis {most:+.1f} mm bewegt: als an einem Punkt fest angenommen. In runden Löchern an beiden Enden geschraubt, hält es das Brett fest, das reißt oder die Schrauben zieht, und der Lauf der Schublade geht mit</translation>
    </message>
    <message>
        <source>meter</source>
        <translation>Messgerät</translation>
    </message>
    <message>
        <source>meter both faces close to the skin: {one:+.1f} % (show less back) speaks for '{first}', {two:+.1f} % for '{second}'</source>
        <translation>beide Seiten dicht an der Oberfläche messen: {one:+.1f} % (Sichtseite minus Rückseite) spricht für „{first}“, {two:+.1f} % für „{second}“</translation>
    </message>
    <message>
        <source>meter every board when it is fitted, with the meter's species setting and the wood's temperature noted</source>
        <translation>jedes Brett beim Einpassen messen und die eingestellte Holzart und die Temperatur des Holzes notieren</translation>
    </message>
    <message>
        <source>meters are trusted from {low:.0f} to {high:.0f} %: weigh an oven-dried sample instead</source>
        <translation>Messgeräten ist von {low:.0f} bis {high:.0f} % zu trauen: stattdessen eine Darrprobe wiegen</translation>
    </message>
    <message>
        <source>middle on rail</source>
        <translation>Mitte an der Zarge</translation>
    </message>
    <message>
        <source>missing facts</source>
        <translation>fehlende Angaben</translation>
    </message>
    <message>
        <source>mitre opens</source>
        <translation>Gehrung öffnet sich</translation>
    </message>
    <message>
        <source>mm, N. Edge: screw into the top, from the outer edge of {edge}, as the top is today. End: from the top's end at {where}. On rail: from the rail's own end (tenon included) toward {edge} or {end}. Moves: how far the top has gone there since it was fitted, + toward {other}: least/today/most, its likely error included.</source>
        <translation>mm, N. Kante: Schraube in der Platte, von der Außenkante bei {edge}, wie die Platte heute ist. Ende: vom Ende der Platte bei {where}. An der Zarge: vom eigenen Ende der Zarge (mit Zapfen) zu {edge} oder {end} hin. Weg: wie weit die Platte dort seit dem Einpassen gegangen ist, + zu {other} hin: min./heute/max., ihr wahrscheinlicher Fehler ist enthalten.</translation>
    </message>
    <message>
        <source>mm. As drawn: length × width × thickness. Today, driest, wettest: width across the grain, with the month.</source>
        <translation>mm. Wie gezeichnet: Länge × Breite × Dicke. Heute, am trockensten, am feuchtesten: Breite quer zur Faser, mit dem Monat.</translation>
    </message>
    <message>
        <source>model</source>
        <translation>Modell</translation>
    </message>
    <message>
        <source>models in folders and patterns to pass over, such as '*-annotated.FCStd'; may be given again</source>
        <translation>Modelle in Ordnern und Mustern, die zu übergehen sind, etwa '*-annotated.FCStd'; darf wiederholt werden</translation>
    </message>
    <message>
        <source>models worked at side by side (default: one a processor)</source>
        <translation>wie viele Modelle zugleich bearbeitet werden (ohne Angabe: eines je Prozessor)</translation>
    </message>
    <message>
        <source>moduli above 0, poisson_rt² below E_R ÷ E_T</source>
        <translation>Moduln über 0, poisson_rt² unter E_R ÷ E_T</translation>
    </message>
    <message>
        <source>modulus {e_across!r}</source>
        <translation>Modul {e_across!r}</translation>
    </message>
    <message>
        <source>modulus {moe_mpa!r}</source>
        <translation>Modul {moe_mpa!r}</translation>
    </message>
    <message>
        <source>moisture</source>
        <translation>Holzfeuchte</translation>
    </message>
    <message>
        <source>moisture change</source>
        <translation>Feuchteänderung</translation>
    </message>
    <message>
        <source>moisture change from {min:g} to {max:g} points</source>
        <translation>Feuchteänderung von {min:g} bis {max:g} Punkten</translation>
    </message>
    <message>
        <source>moisture changes of shape {shape} for {n} boards</source>
        <translation>Feuchteänderungen der Form {shape} für {n} Bretter</translation>
    </message>
    <message>
        <source>moisture content</source>
        <translation>Holzfeuchte</translation>
    </message>
    <message>
        <source>moisture does not move it</source>
        <translation>Feuchte bewegt es nicht</translation>
    </message>
    <message>
        <source>moisture of the wood today by meter; default: in step with the air</source>
        <translation>Holzfeuchte heute nach dem Messgerät; ohne Angabe: im Gleichgewicht mit der Luft</translation>
    </message>
    <message>
        <source>moisture the width was taken at</source>
        <translation>Feuchte, bei der die Breite gemessen ist</translation>
    </message>
    <message>
        <source>moisture then</source>
        <translation>Feuchte damals</translation>
    </message>
    <message>
        <source>moisture when built not said: shown for {low:g} to {high:g} %, and no cup</source>
        <translation>Feuchte beim Bau nicht gesagt: für {low:g} bis {high:g} % gezeigt, ohne Wölbung</translation>
    </message>
    <message>
        <source>moisture-excluding effectiveness</source>
        <translation>Sperrwirkung gegen Feuchte</translation>
    </message>
    <message>
        <source>monsoon home</source>
        <translation>Monsunklima</translation>
    </message>
    <message>
        <source>month {number}</source>
        <translation>Monat {number}</translation>
    </message>
    <message>
        <source>monthly climate: temperature {temperature}; humidity {humidity}</source>
        <translation>Klima nach Monaten: Temperatur {temperature}; Feuchte {humidity}</translation>
    </message>
    <message>
        <source>months</source>
        <translation>Monate</translation>
    </message>
    <message>
        <source>more than 0 mm</source>
        <translation>mehr als 0 mm</translation>
    </message>
    <message>
        <source>more than 700</source>
        <translation>mehr als 700</translation>
    </message>
    <message>
        <source>more than a hundred years</source>
        <translation>mehr als hundert Jahre</translation>
    </message>
    <message>
        <source>more than twice the pick error of {pick_error:g} mm</source>
        <translation>mehr als das Doppelte des Ablesefehlers von {pick_error:g} mm</translation>
    </message>
    <message>
        <source>more to say: see the report</source>
        <translation>noch Angaben nötig: siehe Bericht</translation>
    </message>
    <message>
        <source>most</source>
        <translation>max.</translation>
    </message>
    <message>
        <source>most it may be out of flat in any month (default 1.5)</source>
        <translation>wie weit sie in irgendeinem Monat höchstens von der Ebene abweichen darf (ohne Angabe: 1.5)</translation>
    </message>
    <message>
        <source>most, month</source>
        <translation>max., Monat</translation>
    </message>
    <message>
        <source>moulding across the side</source>
        <translation>Leiste quer zur Seite</translation>
    </message>
    <message>
        <source>move the boards in the model, or draw them of one size</source>
        <translation>die Bretter im Modell versetzen, oder sie gleich groß zeichnen</translation>
    </message>
    <message>
        <source>movements and the least gap must be 0 or more</source>
        <translation>Bewegungen und Mindestfuge müssen 0 oder mehr sein</translation>
    </message>
    <message>
        <source>moves</source>
        <translation>Weg</translation>
    </message>
    <message>
        <source>multiply by 100</source>
        <translation>mit 100 malnehmen</translation>
    </message>
    <message>
        <source>museum</source>
        <translation>Museum</translation>
    </message>
    <message>
        <source>name</source>
        <translation>Name</translation>
    </message>
    <message>
        <source>name a file in it</source>
        <translation>eine Datei darin nennen</translation>
    </message>
    <message>
        <source>name a like wood's row, or use typical_ratios knowingly</source>
        <translation>die Zeile eines ähnlichen Holzes nennen, oder bewusst typical_ratios nehmen</translation>
    </message>
    <message>
        <source>name a near relative</source>
        <translation>eine nahe Verwandte nennen</translation>
    </message>
    <message>
        <source>name a new file</source>
        <translation>eine neue Datei nennen</translation>
    </message>
    <message>
        <source>name a new file, or say --force</source>
        <translation>eine neue Datei nennen, oder --force sagen</translation>
    </message>
    <message>
        <source>name a place with --year, such as --year Oslo, or leave them out</source>
        <translation>mit --year einen Ort nennen, etwa --year Oslo, oder sie weglassen</translation>
    </message>
    <message>
        <source>name a solid wood, or give its own coefficients</source>
        <translation>ein Massivholz nennen, oder eigene Beiwerte angeben</translation>
    </message>
    <message>
        <source>name another file</source>
        <translation>eine andere Datei nennen</translation>
    </message>
    <message>
        <source>name another file, or add --force to replace it</source>
        <translation>eine andere Datei nennen, oder --force hinzufügen, um sie zu ersetzen</translation>
    </message>
    <message>
        <source>name another folder</source>
        <translation>einen anderen Ordner nennen</translation>
    </message>
    <message>
        <source>name it otherwise</source>
        <translation>sie anders nennen</translation>
    </message>
    <message>
        <source>name one of them</source>
        <translation>eines davon nennen</translation>
    </message>
    <message>
        <source>name one of them, or a .csv file of twelve months or of a logger</source>
        <translation>eines davon nennen, oder eine .csv-Datei mit zwölf Monaten oder von einem Datenlogger</translation>
    </message>
    <message>
        <source>name one of them, or give figures of your own</source>
        <translation>eines davon nennen, oder eigene Zahlen angeben</translation>
    </message>
    <message>
        <source>name one of them, or try a shorter word</source>
        <translation>eines davon nennen, oder ein kürzeres Wort versuchen</translation>
    </message>
    <message>
        <source>name one of these</source>
        <translation>eines davon nennen</translation>
    </message>
    <message>
        <source>name one of these, or the ring angle</source>
        <translation>eines davon nennen, oder den Ringwinkel</translation>
    </message>
    <message>
        <source>name one or more fastener kinds</source>
        <translation>eine oder mehrere Arten von Befestigung nennen</translation>
    </message>
    <message>
        <source>name one part of the model</source>
        <translation>ein Teil des Modells nennen</translation>
    </message>
    <message>
        <source>name one, or leave it unknown</source>
        <translation>eines nennen, oder es unbekannt lassen</translation>
    </message>
    <message>
        <source>name the logger's file with --year, or leave them out</source>
        <translation>mit --year die Datei des Loggers nennen, oder sie weglassen</translation>
    </message>
    <message>
        <source>name the other face's finish; 'bare' if it has none</source>
        <translation>die Oberfläche der anderen Seite nennen; „bare“, wenn sie roh ist</translation>
    </message>
    <message>
        <source>name two boards</source>
        <translation>zwei Bretter nennen</translation>
    </message>
    <message>
        <source>narrow the causes, or bound them inside the function</source>
        <translation>die Ursachen enger fassen, oder sie in der Funktion begrenzen</translation>
    </message>
    <message>
        <source>near</source>
        <translation>nah</translation>
    </message>
    <message>
        <source>nearest {nearest!r}</source>
        <translation>am nächsten {nearest!r}</translation>
    </message>
    <message>
        <source>nearest: {listed}</source>
        <translation>am nächsten: {listed}</translation>
    </message>
    <message>
        <source>nearest: {names}</source>
        <translation>am nächsten: {names}</translation>
    </message>
    <message>
        <source>neighbours or colours</source>
        <translation>Nachbarn oder Farben</translation>
    </message>
    <message>
        <source>neither face looks up or out of the piece; tag the show face</source>
        <translation>keine Seite schaut nach oben oder aus dem Stück; die Sichtseite angeben</translation>
    </message>
    <message>
        <source>nested more than {most} deep</source>
        <translation>mehr als {most}-fach verschachtelt</translation>
    </message>
    <message>
        <source>network of parts</source>
        <translation>Netz der Teile</translation>
    </message>
    <message>
        <source>never bolt or clamp it flat by force: it splits, or tears its fasteners out later</source>
        <translation>nie mit Gewalt gerade schrauben oder zwingen: es reißt, oder reißt später seine Befestigungen aus</translation>
    </message>
    <message>
        <source>new</source>
        <translation>neu</translation>
    </message>
    <message>
        <source>newest reading first: turned round</source>
        <translation>neueste Messung zuerst: umgedreht</translation>
    </message>
    <message>
        <source>nitrocellulose lacquer</source>
        <translation>Nitrolack</translation>
    </message>
    <message>
        <source>no</source>
        <translation>Nr.</translation>
    </message>
    <message>
        <source>no air gives wood this much moisture at this temperature</source>
        <translation>keine Luft gibt Holz bei dieser Temperatur so viel Feuchte</translation>
    </message>
    <message>
        <source>no anchor is pulled</source>
        <translation>an keiner Befestigung wird gezogen</translation>
    </message>
    <message>
        <source>no answer in {seconds:g} s</source>
        <translation>keine Antwort in {seconds:g} s</translation>
    </message>
    <message>
        <source>no boards lie edge to edge in it</source>
        <translation>darin liegen keine Bretter Kante an Kante</translation>
    </message>
    <message>
        <source>no boards to arrange</source>
        <translation>keine Bretter zu ordnen</translation>
    </message>
    <message>
        <source>no cache can be kept there ({reason})</source>
        <translation>dort lassen sich keine Berichte aufbewahren ({reason})</translation>
    </message>
    <message>
        <source>no column is called {what!r}</source>
        <translation>keine Spalte heißt {what!r}</translation>
    </message>
    <message>
        <source>no crushing</source>
        <translation>keine Quetschung</translation>
    </message>
    <message>
        <source>no date</source>
        <translation>kein Datum</translation>
    </message>
    <message>
        <source>no direction lies in the plane</source>
        <translation>keine Richtung liegt in der Ebene</translation>
    </message>
    <message>
        <source>no elastic ratios for {species!r}</source>
        <translation>keine elastischen Verhältnisse für {species!r}</translation>
    </message>
    <message>
        <source>no end of {part} can be seen from here</source>
        <translation>kein Ende von {part} ist von hier zu sehen</translation>
    </message>
    <message>
        <source>no fastener is pulled</source>
        <translation>an keiner Befestigung wird gezogen</translation>
    </message>
    <message>
        <source>no fastener kind {name!r}</source>
        <translation>keine Art von Befestigung {name!r}</translation>
    </message>
    <message>
        <source>no fastener on {rails}</source>
        <translation>keine Befestigung an {rails}</translation>
    </message>
    <message>
        <source>no figure is called {name!r}</source>
        <translation>keine Zeichnung des Holzes heißt {name!r}</translation>
    </message>
    <message>
        <source>no figure said</source>
        <translation>keine Zeichnung des Holzes gesagt</translation>
    </message>
    <message>
        <source>no file fits this pattern. To do: check it, and put it in quotes.</source>
        <translation>keine Datei passt zu diesem Muster. Zu tun: es prüfen und in Anführungszeichen setzen.</translation>
    </message>
    <message>
        <source>no findings</source>
        <translation>keine Befunde</translation>
    </message>
    <message>
        <source>no finish said: bare wood moves the most</source>
        <translation>keine Oberfläche gesagt: Rohes Holz arbeitet am meisten</translation>
    </message>
    <message>
        <source>no finish {name!r}</source>
        <translation>keine Oberfläche {name!r}</translation>
    </message>
    <message>
        <source>no fixed line {fixed!r}</source>
        <translation>keine feste Linie {fixed!r}</translation>
    </message>
    <message>
        <source>no hardware is placed</source>
        <translation>es ist keine Befestigung gesetzt</translation>
    </message>
    <message>
        <source>no heading names the {what}</source>
        <translation>keine Überschrift nennt: {what}</translation>
    </message>
    <message>
        <source>no heading {given!r}</source>
        <translation>keine Überschrift {given!r}</translation>
    </message>
    <message>
        <source>no hint is ticked</source>
        <translation>kein Hinweis ist angehakt</translation>
    </message>
    <message>
        <source>no humidity above {humidities:g} %</source>
        <translation>keine Feuchte über {humidities:g} %</translation>
    </message>
    <message>
        <source>no humidity is above 1: these look like fractions</source>
        <translation>keine Feuchte liegt über 1: Das sieht nach Bruchteilen aus</translation>
    </message>
    <message>
        <source>no joint all along this bar</source>
        <translation>keine Verbindung auf der ganzen Länge dieser Leiste</translation>
    </message>
    <message>
        <source>no joint is called {kind!r}</source>
        <translation>keine Verbindung heißt {kind!r}</translation>
    </message>
    <message>
        <source>no joint is called {kind!r}. Allowed: {names}.{meant}</source>
        <translation>keine Verbindung heißt {kind!r}. Zulässig: {names}.{meant}</translation>
    </message>
    <message>
        <source>no joint is chosen</source>
        <translation>keine Verbindung ist gewählt</translation>
    </message>
    <message>
        <source>no kinds to compare</source>
        <translation>keine Arten zu vergleichen</translation>
    </message>
    <message>
        <source>no layout meets all the wishes</source>
        <translation>keine Lage erfüllt alle Wünsche</translation>
    </message>
    <message>
        <source>no limit is called {name!r}</source>
        <translation>kein Grenzwert heißt {name!r}</translation>
    </message>
    <message>
        <source>no limit that can be set is called {name!r}</source>
        <translation>kein einstellbarer Grenzwert heißt {name!r}</translation>
    </message>
    <message>
        <source>no line in the first {count} holds a date and two numbers</source>
        <translation>keine der ersten {count} Zeilen enthält ein Datum und zwei Zahlen</translation>
    </message>
    <message>
        <source>no load case</source>
        <translation>kein Lastfall</translation>
    </message>
    <message>
        <source>no longest edge: {same} are {length:.4g} mm; tag the grain, for example 'grain x'</source>
        <translation>keine längste Kante: {same} sind {length:.4g} mm; die Faser angeben, etwa „grain x“</translation>
    </message>
    <message>
        <source>no machining since was told</source>
        <translation>von einer Bearbeitung seither ist nichts gesagt</translation>
    </message>
    <message>
        <source>no other part is chosen</source>
        <translation>kein anderes Teil ist gewählt</translation>
    </message>
    <message>
        <source>no panel has a board {board!r}</source>
        <translation>keine Platte hat ein Brett {board!r}</translation>
    </message>
    <message>
        <source>no paper is called {paper!r}</source>
        <translation>kein Papier heißt {paper!r}</translation>
    </message>
    <message>
        <source>no part is called {part!r}</source>
        <translation>kein Teil heißt {part!r}</translation>
    </message>
    <message>
        <source>no part is chosen</source>
        <translation>kein Teil ist gewählt</translation>
    </message>
    <message>
        <source>no part is named</source>
        <translation>kein Teil ist genannt</translation>
    </message>
    <message>
        <source>no part of wood is longer than its {length:.1f} mm: drawn in inches or metres? Every figure here takes what is drawn for millimetres</source>
        <translation>kein Teil aus Holz ist länger als seine {length:.1f} mm: in Zoll oder Metern gezeichnet? Alle Zahlen hier nehmen das Gezeichnete als Millimeter</translation>
    </message>
    <message>
        <source>no plan {kind!r}</source>
        <translation>kein Plan {kind!r}</translation>
    </message>
    <message>
        <source>no polygon</source>
        <translation>kein Vieleck</translation>
    </message>
    <message>
        <source>no publication {source!r} in data/wood_sources.csv</source>
        <translation>keine Veröffentlichung {source!r} in data/wood_sources.csv</translation>
    </message>
    <message>
        <source>no published figure at hand: taken as plain oil (it keeps out at least as much)</source>
        <translation>keine veröffentlichte Zahl zur Hand: wie einfaches Öl genommen (es hält mindestens so viel ab)</translation>
    </message>
    <message>
        <source>no published figure for {links}</source>
        <translation>kein veröffentlichter Wert für {links}</translation>
    </message>
    <message>
        <source>no published {names} for {species}</source>
        <translation>nichts veröffentlicht für {species}: {names}</translation>
    </message>
    <message>
        <source>no rail {name!r} lies under it</source>
        <translation>keine Zarge {name!r} liegt darunter</translation>
    </message>
    <message>
        <source>no reading</source>
        <translation>kein Messwert</translation>
    </message>
    <message>
        <source>no schema is called {name!r}</source>
        <translation>kein Schema heißt {name!r}</translation>
    </message>
    <message>
        <source>no setting is called {name!r}{also}</source>
        <translation>keine Einstellung heißt {name!r}{also}</translation>
    </message>
    <message>
        <source>no single cause need be the whole of it</source>
        <translation>es muss nicht eine Ursache allein sein</translation>
    </message>
    <message>
        <source>no single measurement parts the first two causes: note the moisture of both faces and the cup each week</source>
        <translation>keine einzelne Messung trennt die ersten beiden Ursachen: jede Woche die Feuchte beider Seiten und die Wölbung aufschreiben</translation>
    </message>
    <message>
        <source>no skin reading: taken as even from core to skin</source>
        <translation>keine Messung an der Oberfläche: von innen bis außen gleichmäßig genommen</translation>
    </message>
    <message>
        <source>no slack, pegged tight</source>
        <translation>ohne Luft, mit Holznagel fest</translation>
    </message>
    <message>
        <source>no solid: {shape!r} of {size}</source>
        <translation>kein Körper: {shape!r} von {size}</translation>
    </message>
    <message>
        <source>no spell to march through</source>
        <translation>keine Zeitspanne zum Durchrechnen</translation>
    </message>
    <message>
        <source>no stay</source>
        <translation>kein Aufenthalt</translation>
    </message>
    <message>
        <source>no stock screw stays inside the top</source>
        <translation>keine handelsübliche Schraube bleibt in der Platte</translation>
    </message>
    <message>
        <source>no such date</source>
        <translation>kein solches Datum</translation>
    </message>
    <message>
        <source>no top has a board {name!r}</source>
        <translation>keine Platte hat ein Brett {name!r}</translation>
    </message>
    <message>
        <source>no unit is called {units!r}</source>
        <translation>keine Einheit heißt {units!r}</translation>
    </message>
    <message>
        <source>no usable reading</source>
        <translation>kein brauchbarer Messwert</translation>
    </message>
    <message>
        <source>no year and no place is called {text!r}</source>
        <translation>kein Jahresgang und kein Ort heißt {text!r}</translation>
    </message>
    <message>
        <source>no year of air and no place is called {text!r}</source>
        <translation>kein Luftjahr und kein Ort heißt {text!r}</translation>
    </message>
    <message>
        <source>no {column}</source>
        <translation>{column} fehlt</translation>
    </message>
    <message>
        <source>no {noun} has {word!r} in its name</source>
        <translation>kein Name enthält {word!r}: {noun}</translation>
    </message>
    <message>
        <source>no {noun} is called {name!r}</source>
        <translation>nicht gefunden: {noun} {name!r}</translation>
    </message>
    <message>
        <source>no {noun} named</source>
        <translation>kein Name angegeben: {noun}</translation>
    </message>
    <message>
        <source>no {quantity} method {name!r}</source>
        <translation>kein Verfahren {name!r} für {quantity}</translation>
    </message>
    <message>
        <source>no {what} is given</source>
        <translation>Angabe fehlt: {what}</translation>
    </message>
    <message>
        <source>no: a line opens</source>
        <translation>nein: ein Spalt öffnet sich</translation>
    </message>
    <message>
        <source>none</source>
        <translation>keiner</translation>
    </message>
    <message>
        <source>none of its {count} panels can be arranged: {reasons}</source>
        <translation>keine seiner {count} Leimholzplatten lässt sich legen: {reasons}</translation>
    </message>
    <message>
        <source>none of the {count} it fits is a model. Allowed: {models}.</source>
        <translation>nichts von den {count}, auf die es passt, ist ein Modell. Zulässig: {models}.</translation>
    </message>
    <message>
        <source>none of them</source>
        <translation>keines davon</translation>
    </message>
    <message>
        <source>not an ordinary file</source>
        <translation>keine gewöhnliche Datei</translation>
    </message>
    <message>
        <source>not asked for</source>
        <translation>nicht verlangt</translation>
    </message>
    <message>
        <source>not at all</source>
        <translation>gar nicht</translation>
    </message>
    <message>
        <source>not at all: it fixes the top here</source>
        <translation>gar nicht: Hier ist die Platte fest</translation>
    </message>
    <message>
        <source>not checked</source>
        <translation>nicht geprüft</translation>
    </message>
    <message>
        <source>not in the earlier report</source>
        <translation>nicht im früheren Bericht</translation>
    </message>
    <message>
        <source>not in the later report</source>
        <translation>nicht im späteren Bericht</translation>
    </message>
    <message>
        <source>not known</source>
        <translation>nicht bekannt</translation>
    </message>
    <message>
        <source>not metered; the air of the place brings wood to {mc} % today, boards lag</source>
        <translation>nicht gemessen; die Luft am Ort bringt Holz heute auf {mc} %, Bretter hinken nach</translation>
    </message>
    <message>
        <source>not said</source>
        <translation>nicht angegeben</translation>
    </message>
    <message>
        <source>not said when {word}: taken as when {other}</source>
        <translation>dafür nicht gesagt ({word}): genommen wie angegeben ({other})</translation>
    </message>
    <message>
        <source>not said: taken {basis}</source>
        <translation>nicht gesagt: genommen {basis}</translation>
    </message>
    <message>
        <source>not said: {facts}</source>
        <translation>nicht gesagt: {facts}</translation>
    </message>
    <message>
        <source>not said: {word}</source>
        <translation>nicht gesagt: {word}</translation>
    </message>
    <message>
        <source>not settled: {note}</source>
        <translation>nicht eingeschwungen: {note}</translation>
    </message>
    <message>
        <source>not to be foretold</source>
        <translation>nicht vorherzusagen</translation>
    </message>
    <message>
        <source>nothing and {missing:.1f} mm are missing</source>
        <translation>nichts, und es fehlen {missing:.1f} mm</translation>
    </message>
    <message>
        <source>nothing can be cut: {why}</source>
        <translation>nichts kann geschnitten werden: {why}</translation>
    </message>
    <message>
        <source>nothing can be learned: not known or not so: {lacks}</source>
        <translation>nichts zu lernen: nicht bekannt oder nicht so: {lacks}</translation>
    </message>
    <message>
        <source>nothing for {seconds:.0f} h after {spoken}</source>
        <translation>nichts während {seconds:.0f} h nach {spoken}</translation>
    </message>
    <message>
        <source>nothing holds it</source>
        <translation>nichts hält sie</translation>
    </message>
    <message>
        <source>nothing says whether temperatures are in °C or °F</source>
        <translation>nichts sagt, ob Temperaturen in °C oder °F sind</translation>
    </message>
    <message>
        <source>nothing tells where it holds</source>
        <translation>nichts zeigt, wo es hält</translation>
    </message>
    <message>
        <source>nothing that was told makes such a cup: tell what is not told yet, and note the moisture of both faces and the cup each week</source>
        <translation>nichts von dem, was gesagt wurde, ergibt eine solche Wölbung: angeben, was noch nicht gesagt ist, und jede Woche die Feuchte beider Seiten und die Wölbung aufschreiben</translation>
    </message>
    <message>
        <source>nothing that was tried</source>
        <translation>nichts, was versucht wurde</translation>
    </message>
    <message>
        <source>nothing was measured yet</source>
        <translation>noch nichts gemessen</translation>
    </message>
    <message>
        <source>number</source>
        <translation>Nummer</translation>
    </message>
    <message>
        <source>numbers, 1 = first</source>
        <translation>Zahlen, 1 = die erste</translation>
    </message>
    <message>
        <source>of how many boards it is glued (default 1)</source>
        <translation>aus wie vielen Brettern es verleimt ist (ohne Angabe: 1)</translation>
    </message>
    <message>
        <source>of parts</source>
        <translation>von Teilen</translation>
    </message>
    <message>
        <source>of the distances that are written</source>
        <translation>der angeschriebenen Abstände</translation>
    </message>
    <message>
        <source>of the thickness</source>
        <translation>der Dicke</translation>
    </message>
    <message>
        <source>oil</source>
        <translation>Öl</translation>
    </message>
    <message>
        <source>oil paint</source>
        <translation>Ölfarbe</translation>
    </message>
    <message>
        <source>oil stain</source>
        <translation>Ölbeize</translation>
    </message>
    <message>
        <source>on</source>
        <translation>auf</translation>
    </message>
    <message>
        <source>on rail</source>
        <translation>an der Zarge</translation>
    </message>
    <message>
        <source>on the back face</source>
        <translation>auf der Rückseite</translation>
    </message>
    <message>
        <source>on the show face</source>
        <translation>auf der Sichtseite</translation>
    </message>
    <message>
        <source>one (x, y) in mm</source>
        <translation>ein (x, y) in mm</translation>
    </message>
    <message>
        <source>one board</source>
        <translation>ein Brett</translation>
    </message>
    <message>
        <source>one board or more</source>
        <translation>ein Brett oder mehr</translation>
    </message>
    <message>
        <source>one cause alone fits what was told: note the moisture of both faces and the cup each week, and see whether they go as it says</source>
        <translation>nur eine Ursache passt zu dem, was gesagt wurde: jede Woche die Feuchte beider Seiten und die Wölbung aufschreiben und sehen, ob sie so gehen, wie sie es erwarten lässt</translation>
    </message>
    <message>
        <source>one face breathes more than the other (finish)</source>
        <translation>eine Seite atmet mehr als die andere (Oberfläche)</translation>
    </message>
    <message>
        <source>one face planed, or resawn, since it was flat</source>
        <translation>eine Seite gehobelt oder aufgetrennt, seit es eben war</translation>
    </message>
    <message>
        <source>one face was planed, or it was resawn, since</source>
        <translation>seitdem wurde eine Seite gehobelt oder es wurde aufgetrennt</translation>
    </message>
    <message>
        <source>one face was wet for so long</source>
        <translation>eine Seite war so lange nass</translation>
    </message>
    <message>
        <source>one meaning for the comma</source>
        <translation>eine Bedeutung für das Komma</translation>
    </message>
    <message>
        <source>one of the arguments {names} is required</source>
        <translation>eine dieser Optionen ist nötig: {names}</translation>
    </message>
    <message>
        <source>one of them belongs to a door or drawer, with room on either side: it rests or stops there</source>
        <translation>eines davon gehört zu einer Tür oder Schublade, mit Luft zu beiden Seiten: Es liegt oder schlägt dort an</translation>
    </message>
    <message>
        <source>one of them is kept elsewhere when not in use: it is laid in</source>
        <translation>eines davon liegt sonst anderswo: Es ist eingelegt</translation>
    </message>
    <message>
        <source>one or more within {low:g} to {high:g} mm, further apart than the kerf</source>
        <translation>einer oder mehrere innerhalb von {low:g} bis {high:g} mm, weiter auseinander als die Schnittfuge</translation>
    </message>
    <message>
        <source>one order of year, month and day throughout</source>
        <translation>durchgehend eine Reihenfolge von Jahr, Monat und Tag</translation>
    </message>
    <message>
        <source>one reading a line</source>
        <translation>ein Messwert je Zeile</translation>
    </message>
    <message>
        <source>one round hole, at the front; all other screws in the slots along the slide, at the middle of their travel. If it is so already, confirm the joint as 'slides' or 'fixed at a point'</source>
        <translation>ein rundes Loch, vorn; alle anderen Schrauben in den Langlöchern längs des Auszugs, in der Mitte ihres Wegs. Wenn es schon so ist, die Verbindung als „slides“ oder „fixed at a point“ bestätigen</translation>
    </message>
    <message>
        <source>one sheet of {paper}</source>
        <translation>einem Blatt {paper}</translation>
    </message>
    <message>
        <source>one stands with its edge in an opening of the other, with play: glue is not drawn</source>
        <translation>eines steht mit der Kante in einer Öffnung des anderen, mit Luft: Leim ist nicht gezeichnet</translation>
    </message>
    <message>
        <source>only on the fixed line or on narrow parts</source>
        <translation>nur auf der festen Linie oder an schmalen Teilen</translation>
    </message>
    <message>
        <source>only one face met the air, or the sun</source>
        <translation>nur eine Seite war an der Luft oder in der Sonne</translation>
    </message>
    <message>
        <source>only one of the two densities is given</source>
        <translation>nur eine der beiden Dichten ist angegeben</translation>
    </message>
    <message>
        <source>only the cut class is known: movement is the class convention, its range is the whole class</source>
        <translation>nur der Einschnitt ist bekannt: Gerechnet wie für ihn üblich, der Bereich umfasst ihn ganz</translation>
    </message>
    <message>
        <source>only the panel that this board belongs to</source>
        <translation>nur die Platte, zu der dieses Brett gehört</translation>
    </message>
    <message>
        <source>only those with this in their names</source>
        <translation>nur die, deren Name das enthält</translation>
    </message>
    <message>
        <source>only wood that has lain in this air for weeks is at its moisture; thick stock takes months</source>
        <translation>nur Holz, das wochenlang in dieser Luft lag, hat ihre Feuchte; dickes Holz braucht Monate</translation>
    </message>
    <message>
        <source>only {counts} coats published: resistance taken in proportion</source>
        <translation>nur {counts} Schichten veröffentlicht: Widerstand im Verhältnis genommen</translation>
    </message>
    <message>
        <source>only {cover:.1f} mm of it left in its groove</source>
        <translation>nur {cover:.1f} mm davon bleiben in ihrer Nut</translation>
    </message>
    <message>
        <source>only {width:.0f} mm wide: up to {widest:.0f} mm may be solid (common practice, no source)</source>
        <translation>nur {width:.0f} mm breit: bis {widest:.0f} mm darf es fest sein (übliche Praxis, keine Quelle)</translation>
    </message>
    <message>
        <source>opens</source>
        <translation>öffnet sich</translation>
    </message>
    <message>
        <source>opens to {most}</source>
        <translation>öffnet sich auf {most}</translation>
    </message>
    <message>
        <source>options</source>
        <translation>Optionen</translation>
    </message>
    <message>
        <source>other objects are made of {name!r}: {users}</source>
        <translation>andere Objekte sind aus {name!r} gemacht: {users}</translation>
    </message>
    <message>
        <source>out of flat</source>
        <translation>uneben</translation>
    </message>
    <message>
        <source>out of flat, {unit}</source>
        <translation>uneben um, {unit}</translation>
    </message>
    <message>
        <source>outdoor temperature, value {at}</source>
        <translation>Außentemperatur, Wert {at}</translation>
    </message>
    <message>
        <source>outline</source>
        <translation>Umriss</translation>
    </message>
    <message>
        <source>outline of {shape} values</source>
        <translation>Umriss aus {shape} Werten</translation>
    </message>
    <message>
        <source>outside the section</source>
        <translation>außerhalb des Querschnitts</translation>
    </message>
    <message>
        <source>overlap</source>
        <translation>überschneidet sich</translation>
    </message>
    <message>
        <source>own</source>
        <translation>eigene Annahme</translation>
    </message>
    <message>
        <source>pad meter</source>
        <translation>Messgerät mit Auflage</translation>
    </message>
    <message>
        <source>pair {pair}</source>
        <translation>Paar {pair}</translation>
    </message>
    <message>
        <source>panel</source>
        <translation>Platte</translation>
    </message>
    <message>
        <source>panel in its frame</source>
        <translation>Füllung in ihrem Rahmen</translation>
    </message>
    <message>
        <source>panel leaves its groove</source>
        <translation>Füllung verlässt die Nut</translation>
    </message>
    <message>
        <source>panel rattles</source>
        <translation>Füllung klappert</translation>
    </message>
    <message>
        <source>panel {name!r}</source>
        <translation>Platte {name!r}</translation>
    </message>
    <message>
        <source>paper</source>
        <translation>Papier</translation>
    </message>
    <message>
        <source>paraffin</source>
        <translation>Paraffin</translation>
    </message>
    <message>
        <source>part</source>
        <translation>Teil</translation>
    </message>
    <message>
        <source>part {part!r}: {message}</source>
        <translation>Teil {part!r}: {message}</translation>
    </message>
    <message>
        <source>parts</source>
        <translation>Teile</translation>
    </message>
    <message>
        <source>peg today, from its end</source>
        <translation>Holznagel heute, von seinem Ende</translation>
    </message>
    <message>
        <source>peg, {unit}</source>
        <translation>Holznagel, {unit}</translation>
    </message>
    <message>
        <source>pegged</source>
        <translation>mit Holznagel</translation>
    </message>
    <message>
        <source>per 1 % MC</source>
        <translation>je 1 % Holzfeuchte</translation>
    </message>
    <message>
        <source>percent, 0 to 100</source>
        <translation>Prozent, 0 bis 100</translation>
    </message>
    <message>
        <source>percentages 0 to 100 after 1, 7, 14 days; None where unknown, at least one known</source>
        <translation>Prozente von 0 bis 100 nach 1, 7, 14 Tagen; None, wo unbekannt; mindestens eines bekannt</translation>
    </message>
    <message>
        <source>pick three points</source>
        <translation>drei Punkte wählen</translation>
    </message>
    <message>
        <source>pick three points along one ring on the end of the board, or measure where the pith was</source>
        <translation>auf dem Hirnholz drei Punkte auf einem Ring wählen, oder messen, wo das Mark lag</translation>
    </message>
    <message>
        <source>pick three points well apart along one ring</source>
        <translation>drei weit auseinander liegende Punkte auf einem Ring wählen</translation>
    </message>
    <message>
        <source>picture</source>
        <translation>Bild</translation>
    </message>
    <message>
        <source>piece</source>
        <translation>Stück</translation>
    </message>
    <message>
        <source>pieces</source>
        <translation>Stück</translation>
    </message>
    <message>
        <source>pith</source>
        <translation>Mark</translation>
    </message>
    <message>
        <source>pith (0, 0) is the centre of the section</source>
        <translation>Mark (0, 0) ist die Mitte des Querschnitts</translation>
    </message>
    <message>
        <source>pith ({pith:g}, {pith2:g}) mm lies inside the section; such a board is never free of stress and will check</source>
        <translation>das Mark ({pith:g}, {pith2:g}) mm liegt im Querschnitt; ein solches Brett ist nie frei von Spannung und reißt</translation>
    </message>
    <message>
        <source>pith ({x:g}, {y:g}) mm is outside a section of {width_mm:g} × {thickness_mm:g} mm</source>
        <translation>das Mark ({x:g}, {y:g}) mm liegt außerhalb eines Querschnitts von {width_mm:g} × {thickness_mm:g} mm</translation>
    </message>
    <message>
        <source>pith has shape {shape}</source>
        <translation>das Mark hat die Form {shape}</translation>
    </message>
    <message>
        <source>pith in board</source>
        <translation>Mark im Brett</translation>
    </message>
    <message>
        <source>pith outside at both ends</source>
        <translation>ein Mark, das an beiden Enden außerhalb liegt</translation>
    </message>
    <message>
        <source>pith outside the section</source>
        <translation>ein Mark außerhalb des Querschnitts</translation>
    </message>
    <message>
        <source>pith side</source>
        <translation>Seite des Marks</translation>
    </message>
    <message>
        <source>pith side unknown: it may diamond either way</source>
        <translation>Seite des Marks unbekannt: Der Querschnitt kann sich nach beiden Seiten zur Raute verziehen</translation>
    </message>
    <message>
        <source>pith x</source>
        <translation>Mark x</translation>
    </message>
    <message>
        <source>pith y</source>
        <translation>Mark y</translation>
    </message>
    <message>
        <source>place</source>
        <translation>Ort</translation>
    </message>
    <message>
        <source>place more of them, or others</source>
        <translation>mehr davon setzen, oder andere</translation>
    </message>
    <message>
        <source>place the plan again, then cut</source>
        <translation>den Plan neu setzen, dann schneiden</translation>
    </message>
    <message>
        <source>place, {unit}</source>
        <translation>Ort, {unit}</translation>
    </message>
    <message>
        <source>placing hardware</source>
        <translation>Befestigung setzen</translation>
    </message>
    <message>
        <source>plain hole</source>
        <translation>rundes Loch</translation>
    </message>
    <message>
        <source>plain or pocket screw</source>
        <translation>einfache oder schräg eingelassene Schraube</translation>
    </message>
    <message>
        <source>plain screw</source>
        <translation>einfache Schraube</translation>
    </message>
    <message>
        <source>plan</source>
        <translation>Plan</translation>
    </message>
    <message>
        <source>plan how the top is held, and place it</source>
        <translation>planen, wie die Platte gehalten wird, und den Plan setzen</translation>
    </message>
    <message>
        <source>plan the fasteners that keep a top flat and let it move</source>
        <translation>die Befestigungen planen, die eine Platte eben halten und sie arbeiten lassen</translation>
    </message>
    <message>
        <source>plane the boards to one thickness, or study them apart</source>
        <translation>die Bretter auf eine Dicke hobeln, oder getrennt untersuchen</translation>
    </message>
    <message>
        <source>plate on its frame</source>
        <translation>Platte auf ihrem Gestell</translation>
    </message>
    <message>
        <source>plate outline</source>
        <translation>Umriss der Platte</translation>
    </message>
    <message>
        <source>plausible range</source>
        <translation>plausibler Bereich</translation>
    </message>
    <message>
        <source>play</source>
        <translation>Spiel</translation>
    </message>
    <message>
        <source>point on the ring</source>
        <translation>Punkt auf dem Jahrring</translation>
    </message>
    <message>
        <source>points</source>
        <translation>Punkte</translation>
    </message>
    <message>
        <source>poisson {poisson:g} gives no stable material</source>
        <translation>mit der Querdehnzahl {poisson:g} ist kein Werkstoff stabil</translation>
    </message>
    <message>
        <source>polyurethane</source>
        <translation>PU-Lack</translation>
    </message>
    <message>
        <source>polyurethane paint</source>
        <translation>PU-Farbe</translation>
    </message>
    <message>
        <source>positional arguments</source>
        <translation>Angaben ohne Option</translation>
    </message>
    <message>
        <source>possible</source>
        <translation>möglich</translation>
    </message>
    <message>
        <source>pressed</source>
        <translation>gedrückt</translation>
    </message>
    <message>
        <source>presses in its grooves</source>
        <translation>drückt in der Nut</translation>
    </message>
    <message>
        <source>pressing stops</source>
        <translation>drückende Anschläge</translation>
    </message>
    <message>
        <source>price every way to lay the boards of a glued panel</source>
        <translation>für jede Lage der Bretter einer verleimten Platte sagen, was sie kostet</translation>
    </message>
    <message>
        <source>profile</source>
        <translation>Profil</translation>
    </message>
    <message>
        <source>property {names}</source>
        <translation>Eigenschaft {names}</translation>
    </message>
    <message>
        <source>pull</source>
        <translation>Zug</translation>
    </message>
    <message>
        <source>pull of the insert out of the wood</source>
        <translation>Ausziehen der Gewindemuffe aus dem Holz</translation>
    </message>
    <message>
        <source>pull of the screw head through the button</source>
        <translation>Durchziehen des Schraubenkopfs durch den Nutklotz</translation>
    </message>
    <message>
        <source>pull of the screw head through the clip</source>
        <translation>Durchziehen des Schraubenkopfs durch die Klammer</translation>
    </message>
    <message>
        <source>pull of the screw head through the plate</source>
        <translation>Durchziehen des Schraubenkopfs durch den Beschlag</translation>
    </message>
    <message>
        <source>pull of the screw head through the rail</source>
        <translation>Durchziehen des Schraubenkopfs durch die Zarge</translation>
    </message>
    <message>
        <source>pull of the screw head through the washer</source>
        <translation>Durchziehen des Schraubenkopfs durch die Scheibe</translation>
    </message>
    <message>
        <source>pull, N</source>
        <translation>Zug, N</translation>
    </message>
    <message>
        <source>pulled</source>
        <translation>gezogen</translation>
    </message>
    <message>
        <source>put a file of that name in its place</source>
        <translation>eine Datei dieses Namens an seine Stelle legen</translation>
    </message>
    <message>
        <source>quarter</source>
        <translation>stehend</translation>
    </message>
    <message>
        <source>quarter-sawn</source>
        <translation>stehend</translation>
    </message>
    <message>
        <source>radial</source>
        <translation>radial</translation>
    </message>
    <message>
        <source>radial coefficient</source>
        <translation>radialer Beiwert</translation>
    </message>
    <message>
        <source>radial strain</source>
        <translation>radiale Dehnung</translation>
    </message>
    <message>
        <source>rail</source>
        <translation>Zarge</translation>
    </message>
    <message>
        <source>rail {name!r}</source>
        <translation>Zarge {name!r}</translation>
    </message>
    <message>
        <source>rail {rail!r}</source>
        <translation>Zarge {rail!r}</translation>
    </message>
    <message>
        <source>range</source>
        <translation>Bereich</translation>
    </message>
    <message>
        <source>read</source>
        <translation>gelesen</translation>
    </message>
    <message>
        <source>read the panel anew</source>
        <translation>die Platte neu lesen</translation>
    </message>
    <message>
        <source>reading</source>
        <translation>Messwert</translation>
    </message>
    <message>
        <source>reading FreeCAD models</source>
        <translation>das Lesen von FreeCAD-Modellen</translation>
    </message>
    <message>
        <source>reading at the surface</source>
        <translation>Messwert an der Oberfläche</translation>
    </message>
    <message>
        <source>readings in order of time, newest last or newest first</source>
        <translation>Messwerte nach der Zeit geordnet, der neueste zuletzt oder zuerst</translation>
    </message>
    <message>
        <source>readings of the air in a room, shed or van</source>
        <translation>Messwerte der Luft in einem Raum, Schuppen oder Lieferwagen</translation>
    </message>
    <message>
        <source>recalled</source>
        <translation>aus dem Gedächtnis</translation>
    </message>
    <message>
        <source>relative humidity</source>
        <translation>relative Feuchte</translation>
    </message>
    <message>
        <source>relative humidity in percent</source>
        <translation>relative Luftfeuchte in Prozent</translation>
    </message>
    <message>
        <source>relaxed</source>
        <translation>nachgelassen</translation>
    </message>
    <message>
        <source>rename the file</source>
        <translation>die Datei umbenennen</translation>
    </message>
    <message>
        <source>rename the folder</source>
        <translation>den Ordner umbenennen</translation>
    </message>
    <message>
        <source>replace NEW if it exists</source>
        <translation>NEW ersetzen, wenn es die Datei gibt</translation>
    </message>
    <message>
        <source>replace OUT if it exists</source>
        <translation>OUT ersetzen, wenn es die Datei gibt</translation>
    </message>
    <message>
        <source>replace files of these names in DIR</source>
        <translation>Dateien dieser Namen in DIR ersetzen</translation>
    </message>
    <message>
        <source>replace the files to be written if they exist</source>
        <translation>die zu schreibenden Dateien ersetzen, wenn es sie gibt</translation>
    </message>
    <message>
        <source>report     {path}, and the same as .json</source>
        <translation>Bericht      {path}, und dasselbe als .json</translation>
    </message>
    <message>
        <source>report what every part does in the year</source>
        <translation>berichten, was jedes Teil übers Jahr tut</translation>
    </message>
    <message>
        <source>rests</source>
        <translation>liegt auf</translation>
    </message>
    <message>
        <source>rift</source>
        <translation>schräg</translation>
    </message>
    <message>
        <source>rift-sawn</source>
        <translation>schräg</translation>
    </message>
    <message>
        <source>ring angle</source>
        <translation>Ringwinkel</translation>
    </message>
    <message>
        <source>ring angle {ring_angle_deg:g}°</source>
        <translation>Ringwinkel {ring_angle_deg:g}°</translation>
    </message>
    <message>
        <source>ring points</source>
        <translation>Punkte auf dem Jahrring</translation>
    </message>
    <message>
        <source>ring points of shape {shape}</source>
        <translation>Ringpunkte der Form {shape}</translation>
    </message>
    <message>
        <source>ring radius</source>
        <translation>Ringradius</translation>
    </message>
    <message>
        <source>ring radius not said: cup shown for radii from half the width, at least 40 mm, to 250 mm or the width</source>
        <translation>Ringradius nicht gesagt: Wölbung für Radien von der halben Breite, mindestens 40 mm, bis 250 mm oder zur Breite gezeigt</translation>
    </message>
    <message>
        <source>ring radius only known as a range: the cup is a range</source>
        <translation>vom Ringradius ist nur ein Bereich bekannt: Auch die Wölbung ist ein Bereich</translation>
    </message>
    <message>
        <source>ring radius unknown: the width moves as straight rings would, the cup is missing</source>
        <translation>Ringradius unbekannt: Die Breite arbeitet wie bei geraden Ringen, die Wölbung fehlt</translation>
    </message>
    <message>
        <source>rings</source>
        <translation>Jahrringe</translation>
    </message>
    <message>
        <source>rings ({reason})</source>
        <translation>Jahrringe ({reason})</translation>
    </message>
    <message>
        <source>rings at the far end not stated: taken as at the near end</source>
        <translation>Jahrringe am fernen Ende nicht gesagt: wie am nahen Ende genommen</translation>
    </message>
    <message>
        <source>rings need either a pith or a ring angle</source>
        <translation>Jahrringe brauchen ein Mark oder einen Ringwinkel</translation>
    </message>
    <message>
        <source>rings not said: shown from quarter-sawn to flat-sawn, and no cup</source>
        <translation>Jahrringe nicht gesagt: von stehenden bis liegenden Ringen gezeigt, ohne Wölbung</translation>
    </message>
    <message>
        <source>rings not said: the stiffer cut taken</source>
        <translation>Jahrringe nicht gesagt: den steiferen Einschnitt genommen</translation>
    </message>
    <message>
        <source>rings of the far end</source>
        <translation>Jahrringe des fernen Endes</translation>
    </message>
    <message>
        <source>rings of the least cup</source>
        <translation>Ringe der geringsten Wölbung</translation>
    </message>
    <message>
        <source>rings of the most cup</source>
        <translation>Ringe der stärksten Wölbung</translation>
    </message>
    <message>
        <source>rings taken alike at both ends</source>
        <translation>Jahrringe an beiden Enden gleich angenommen</translation>
    </message>
    <message>
        <source>rings turned by {turn:.0f}° at the other end</source>
        <translation>Jahrringe am anderen Ende um {turn:.0f}° verdreht</translation>
    </message>
    <message>
        <source>rings?</source>
        <translation>Ringe?</translation>
    </message>
    <message>
        <source>rise of moisture</source>
        <translation>Anstieg der Feuchte</translation>
    </message>
    <message>
        <source>rising order</source>
        <translation>steigende Reihenfolge</translation>
    </message>
    <message>
        <source>room</source>
        <translation>Spiel</translation>
    </message>
    <message>
        <source>room beside both edges, {unit}</source>
        <translation>Spielraum neben beiden Kanten, {unit}</translation>
    </message>
    <message>
        <source>room humidity</source>
        <translation>Raumfeuchte</translation>
    </message>
    <message>
        <source>room temperature</source>
        <translation>Raumtemperatur</translation>
    </message>
    <message>
        <source>room temperatures</source>
        <translation>Raumtemperaturen</translation>
    </message>
    <message>
        <source>rooms</source>
        <translation>Räume</translation>
    </message>
    <message>
        <source>rooms are kept at least this humid</source>
        <translation>Räume werden mindestens so feucht gehalten</translation>
    </message>
    <message>
        <source>rooms are kept at least this warm (default 20)</source>
        <translation>Räume werden mindestens so warm gehalten (ohne Angabe: 20)</translation>
    </message>
    <message>
        <source>rooms are kept at most this humid</source>
        <translation>Räume werden höchstens so feucht gehalten</translation>
    </message>
    <message>
        <source>rooms are kept at most this warm</source>
        <translation>Räume werden höchstens so warm gehalten</translation>
    </message>
    <message>
        <source>rooms {rooms}; weather: {weather}{wet}</source>
        <translation>Räume {rooms}; Wetter: {weather}{wet}</translation>
    </message>
    <message>
        <source>rooms, {name}</source>
        <translation>Räume, {name}</translation>
    </message>
    <message>
        <source>round tenon loosens</source>
        <translation>Rundzapfen lockert sich</translation>
    </message>
    <message>
        <source>round top</source>
        <translation>runde Platte</translation>
    </message>
    <message>
        <source>run its grain from side to side, fix it in the front's groove, and let it slide under the back: a slotted screw there, and room behind</source>
        <translation>seine Faser von Seite zu Seite laufen lassen, ihn in der Nut des Vorderstücks befestigen und unter dem Hinterstück gleiten lassen: dort eine Schraube im Langloch, und Platz dahinter</translation>
    </message>
    <message>
        <source>runner across the side</source>
        <translation>Laufleiste quer zur Seite</translation>
    </message>
    <message>
        <source>safety factor {safety!r}</source>
        <translation>Sicherheitsbeiwert {safety!r}</translation>
    </message>
    <message>
        <source>sample the profile more finely, or ask for fewer pieces</source>
        <translation>das Profil feiner abtasten, oder weniger Abschnitte verlangen</translation>
    </message>
    <message>
        <source>save it as UTF-8</source>
        <translation>sie als UTF-8 speichern</translation>
    </message>
    <message>
        <source>saw lines</source>
        <translation>Sägeschnitte</translation>
    </message>
    <message>
        <source>saw lines at {lines} mm with a kerf of {kerf:g} mm</source>
        <translation>Sägeschnitte bei {lines} mm mit einer Schnittfuge von {kerf:g} mm</translation>
    </message>
    <message>
        <source>saw the pith out, or turn the check to a face that is not seen</source>
        <translation>das Mark heraussägen, oder den Riss zu einer Seite drehen, die man nicht sieht</translation>
    </message>
    <message>
        <source>say first along which axis it runs</source>
        <translation>erst sagen, längs welcher Achse sie läuft</translation>
    </message>
    <message>
        <source>say how it is fixed: {moves} of movement across {width}</source>
        <translation>sagen, wie es befestigt ist: {moves} Bewegung auf {width}</translation>
    </message>
    <message>
        <source>say how rooms are kept only with a place</source>
        <translation>nur zu einem Ort sagen, wie die Räume gehalten werden</translation>
    </message>
    <message>
        <source>say it as show or back</source>
        <translation>als show oder back angeben</translation>
    </message>
    <message>
        <source>say rings, heart side and moisture</source>
        <translation>Jahrringe, Kernseite und Feuchte angeben</translation>
    </message>
    <message>
        <source>say what is missing</source>
        <translation>angeben, was fehlt</translation>
    </message>
    <message>
        <source>say what one of them lacks, and pick it with --board and the name of a board of it</source>
        <translation>angeben, was einer von ihnen fehlt, und sie mit --board und dem Namen eines ihrer Bretter wählen</translation>
    </message>
    <message>
        <source>say where the piece was on the days between</source>
        <translation>angeben, wo das Stück an den Tagen dazwischen war</translation>
    </message>
    <message>
        <source>say where the rings are: pith, points, rings, cut or heart</source>
        <translation>angeben, wo die Jahrringe liegen: pith, points, rings, cut oder heart</translation>
    </message>
    <message>
        <source>say which: columns={{'{what}': its number, 1 = first}}</source>
        <translation>angeben, welche: columns={{'{what}': ihre Nummer, 1 = die erste}}</translation>
    </message>
    <message>
        <source>say which: give date_order</source>
        <translation>angeben, welche: date_order setzen</translation>
    </message>
    <message>
        <source>say why a board or top is no longer flat</source>
        <translation>sagen, warum ein Brett oder eine Platte nicht mehr eben ist</translation>
    </message>
    <message>
        <source>schema</source>
        <translation>Schema</translation>
    </message>
    <message>
        <source>screw</source>
        <translation>Schraube</translation>
    </message>
    <message>
        <source>screw and insert through a slotted steel base</source>
        <translation>Schraube und Gewindemuffe durch ein Stahlgestell mit Langlöchern</translation>
    </message>
    <message>
        <source>screw from the slot's end today</source>
        <translation>Schraube vom Ende des Langlochs, heute</translation>
    </message>
    <message>
        <source>screw in a slotted hole</source>
        <translation>Schraube im Langloch</translation>
    </message>
    <message>
        <source>screw today</source>
        <translation>Schraube heute</translation>
    </message>
    <message>
        <source>screw {number} beside {rail}</source>
        <translation>Schraube {number} neben {rail}</translation>
    </message>
    <message>
        <source>screw {place}: {hole}</source>
        <translation>Schraube {place}: {hole}</translation>
    </message>
    <message>
        <source>screw {screw!r} mm</source>
        <translation>Schraube {screw!r} mm</translation>
    </message>
    <message>
        <source>screw {shank:g} × {length:.0f} mm; {before:g} mm of it lie before the top, and {left:g} mm of wood stay above its point</source>
        <translation>Schraube {shank:g} × {length:.0f} mm; {before:g} mm davon liegen vor der Platte, und über ihrer Spitze bleiben {left:g} mm Holz</translation>
    </message>
    <message>
        <source>screw {shank} × {length} mm{both}, {left} {unit} of wood stay above its point</source>
        <translation>Schraube {shank} × {length} mm{both}, {left} {unit} Holz bleiben über ihrer Spitze</translation>
    </message>
    <message>
        <source>screwed</source>
        <translation>geschraubt</translation>
    </message>
    <message>
        <source>screws at {screws_mm}</source>
        <translation>Schrauben bei {screws_mm}</translation>
    </message>
    <message>
        <source>screws of battens</source>
        <translation>Schrauben der Querleisten</translation>
    </message>
    <message>
        <source>searched: no single flip, turn or swap of two boards makes a listed layout flatter at its looks; a better one further away is possible</source>
        <translation>gesucht: kein einzelnes Wenden, Drehen oder Tauschen zweier Bretter macht eine aufgeführte Lage bei ihrem Aussehen ebener; eine bessere, die weiter entfernt liegt, ist möglich</translation>
    </message>
    <message>
        <source>searched: no single flip, turn or swap of two boards makes a listed layout flatter at its looks; a better one further away is possible; flips in the order given were all tried, so nothing there is better</source>
        <translation>gesucht: kein einzelnes Wenden, Drehen oder Tauschen zweier Bretter macht eine aufgeführte Lage bei ihrem Aussehen ebener; eine bessere, die weiter entfernt liegt, ist möglich; in der gegebenen Reihenfolge wurde jedes Wenden versucht, dort ist also nichts besser</translation>
    </message>
    <message>
        <source>section</source>
        <translation>Querschnitt</translation>
    </message>
    <message>
        <source>see 'heartside years' and 'heartside places'</source>
        <translation>siehe „heartside years“ und „heartside places“</translation>
    </message>
    <message>
        <source>seen</source>
        <translation>sichtbar</translation>
    </message>
    <message>
        <source>select one or more parts first</source>
        <translation>erst ein oder mehrere Teile auswählen</translation>
    </message>
    <message>
        <source>select the parts to copy to</source>
        <translation>die Teile auswählen, auf die kopiert wird</translation>
    </message>
    <message>
        <source>select two parts</source>
        <translation>zwei Teile auswählen</translation>
    </message>
    <message>
        <source>setting up:</source>
        <translation>wird eingerichtet:</translation>
    </message>
    <message>
        <source>severity</source>
        <translation>Schwere</translation>
    </message>
    <message>
        <source>shank</source>
        <translation>Schaft</translation>
    </message>
    <message>
        <source>shape {shape!r}</source>
        <translation>Form {shape!r}</translation>
    </message>
    <message>
        <source>shape {shape}</source>
        <translation>Form {shape}</translation>
    </message>
    <message>
        <source>shape {shape} of daily values</source>
        <translation>Form {shape} der Tageswerte</translation>
    </message>
    <message>
        <source>shape {shape} of moistures</source>
        <translation>Form {shape} der Feuchten</translation>
    </message>
    <message>
        <source>shape {shape} of monthly values</source>
        <translation>Form {shape} der Monatswerte</translation>
    </message>
    <message>
        <source>shapes that broadcast</source>
        <translation>Formen, die zueinander passen</translation>
    </message>
    <message>
        <source>share let out</source>
        <translation>nachgelassener Anteil</translation>
    </message>
    <message>
        <source>share let out {let_out!r}</source>
        <translation>nachgelassener Anteil {let_out!r}</translation>
    </message>
    <message>
        <source>share of water in the glue</source>
        <translation>Wasseranteil des Leims</translation>
    </message>
    <message>
        <source>shear of the groove's lip</source>
        <translation>Abscheren der Nutwange</translation>
    </message>
    <message>
        <source>sheared</source>
        <translation>geschert</translation>
    </message>
    <message>
        <source>sheet</source>
        <translation>Blatt</translation>
    </message>
    <message>
        <source>shelf across the side</source>
        <translation>Boden quer zur Seite</translation>
    </message>
    <message>
        <source>shellac</source>
        <translation>Schellack</translation>
    </message>
    <message>
        <source>shop</source>
        <translation>Werkstatt</translation>
    </message>
    <message>
        <source>shorter than 100 mm across: the calipers rule its spread</source>
        <translation>quer kürzer als 100 mm: Die Schieblehre bestimmt die Streuung</translation>
    </message>
    <message>
        <source>shorter than the top is wide</source>
        <translation>kürzer als die Platte breit ist</translation>
    </message>
    <message>
        <source>shoulder opens</source>
        <translation>Brüstung öffnet sich</translation>
    </message>
    <message>
        <source>show</source>
        <translation>Sichtseite</translation>
    </message>
    <message>
        <source>show face not known, {reason}</source>
        <translation>Sichtseite nicht bekannt, {reason}</translation>
    </message>
    <message>
        <source>show program's version number and exit</source>
        <translation>die Version zeigen und enden</translation>
    </message>
    <message>
        <source>show the traceback of an error</source>
        <translation>bei einem Fehler zeigen, wo im Programm er entstand</translation>
    </message>
    <message>
        <source>show this help message and exit</source>
        <translation>diese Hilfe zeigen und enden</translation>
    </message>
    <message>
        <source>show, back</source>
        <translation>show, back</translation>
    </message>
    <message>
        <source>show, back, or a direction such as +z in the object's own axes</source>
        <translation>show, back, oder eine Richtung wie +z in den eigenen Achsen des Objekts</translation>
    </message>
    <message>
        <source>shrinkage</source>
        <translation>Schwinden</translation>
    </message>
    <message>
        <source>shrinkage_percent</source>
        <translation>shrinkage_percent</translation>
    </message>
    <message>
        <source>sight over winding sticks, or measure how far one corner stands off a flat bench: up to {one:.1f} mm speaks for '{first}', up to {two:.1f} mm for '{second}'</source>
        <translation>über Richtscheite peilen oder messen, wie weit eine Ecke von einer ebenen Bank absteht: Bis zu {one:.1f} mm spricht für „{first}“, bis zu {two:.1f} mm für „{second}“</translation>
    </message>
    <message>
        <source>signal {number}</source>
        <translation>Signal {number}</translation>
    </message>
    <message>
        <source>sink that may remain</source>
        <translation>Einfall, der bleiben darf</translation>
    </message>
    <message>
        <source>size</source>
        <translation>Maß</translation>
    </message>
    <message>
        <source>size of the block</source>
        <translation>Größe des Klotzes</translation>
    </message>
    <message>
        <source>sizes in mm</source>
        <translation>Maße in mm</translation>
    </message>
    <message>
        <source>skin moisture</source>
        <translation>Feuchte der Oberfläche</translation>
    </message>
    <message>
        <source>slack</source>
        <translation>Luft</translation>
    </message>
    <message>
        <source>slide line</source>
        <translation>Linie des Auszugs</translation>
    </message>
    <message>
        <source>slides</source>
        <translation>gleitet</translation>
    </message>
    <message>
        <source>slope of spiral grain not stated: the twist is unknown, and spiral grain usually twists most</source>
        <translation>Neigung des Drehwuchses nicht gesagt: Die Verdrehung ist unbekannt, und Drehwuchs verdreht meist am stärksten</translation>
    </message>
    <message>
        <source>slope of spiral grain, rise by length, such as 0.03; below 0 climbing to the left</source>
        <translation>Neigung des Drehwuchses, Anstieg durch Länge, etwa 0.03; unter 0 nach links steigend</translation>
    </message>
    <message>
        <source>slope of the grain</source>
        <translation>Faserneigung</translation>
    </message>
    <message>
        <source>slope of the grain not said</source>
        <translation>Faserneigung nicht angegeben</translation>
    </message>
    <message>
        <source>slope of the grain {slope:.3f}</source>
        <translation>Faserneigung {slope:.3f}</translation>
    </message>
    <message>
        <source>slot</source>
        <translation>Langloch</translation>
    </message>
    <message>
        <source>slot in the tenon</source>
        <translation>Langloch im Zapfen</translation>
    </message>
    <message>
        <source>slot its hole in the tongue {lacks:.1f} mm to either side; only the peg in the middle fits closely</source>
        <translation>sein Loch in der Feder nach beiden Seiten um {lacks:.1f} mm verlängern; nur der Holznagel in der Mitte sitzt satt</translation>
    </message>
    <message>
        <source>slot length</source>
        <translation>Länge des Langlochs</translation>
    </message>
    <message>
        <source>slot their holes in the tongue, that of the one that binds most {lacks:.1f} mm to either side; only the peg in the middle fits closely</source>
        <translation>ihre Löcher in der Feder zu Langlöchern machen, das des am stärksten klemmenden um {lacks:.1f} mm nach jeder Seite; nur der Holznagel in der Mitte sitzt satt</translation>
    </message>
    <message>
        <source>slot width</source>
        <translation>Breite des Langlochs</translation>
    </message>
    <message>
        <source>slot {length:.1f} mm long, screw today {today:.1f} mm from its end toward {edge}</source>
        <translation>Langloch {length:.1f} mm lang, Schraube heute {today:.1f} mm von dessen Ende zu {edge} hin</translation>
    </message>
    <message>
        <source>slot, {unit}</source>
        <translation>Langloch, {unit}</translation>
    </message>
    <message>
        <source>slots are cut already</source>
        <translation>Langlöcher sind schon geschnitten</translation>
    </message>
    <message>
        <source>slotted screw</source>
        <translation>Langlochschraube</translation>
    </message>
    <message>
        <source>slotted steel</source>
        <translation>Langloch in Stahl</translation>
    </message>
    <message>
        <source>small parts under it that touch nothing else are left out: {loose}</source>
        <translation>kleine Teile darunter, die sonst nichts berühren, sind weggelassen: {loose}</translation>
    </message>
    <message>
        <source>solid across {width:.0f} mm of grain that moves {least:+.1f} to {most:+.1f} mm: {how} (75 mm most often; common practice, no source)</source>
        <translation>fest quer über {width:.0f} mm Faser, die sich {least:+.1f} bis {most:+.1f} mm bewegt: {how} (meist 75 mm; übliche Praxis, keine Quelle)</translation>
    </message>
    <message>
        <source>solid across {width} that moves {moves}</source>
        <translation>fest auf {width}, die sich {moves} bewegen</translation>
    </message>
    <message>
        <source>solid and too wide</source>
        <translation>fest und zu breit</translation>
    </message>
    <message>
        <source>solid on stable core</source>
        <translation>Massivholz auf stabilem Kern</translation>
    </message>
    <message>
        <source>solid width</source>
        <translation>feste Breite</translation>
    </message>
    <message>
        <source>solid wood</source>
        <translation>Massivholz</translation>
    </message>
    <message>
        <source>solve a section that holds its pith with solve_boxed_heart, or give its true pith</source>
        <translation>einen Querschnitt, der sein Mark enthält, mit solve_boxed_heart lösen, oder sein wahres Mark angeben</translation>
    </message>
    <message>
        <source>some elastic ratios of {species} not published: filled from the mean of hardwoods</source>
        <translation>einige elastische Verhältnisse von {species} nicht veröffentlicht: aus dem Mittel der Laubhölzer ergänzt</translation>
    </message>
    <message>
        <source>some elastic ratios of {species} not published: filled from the mean of softwoods</source>
        <translation>einige elastische Verhältnisse von {species} nicht veröffentlicht: aus dem Mittel der Nadelhölzer ergänzt</translation>
    </message>
    <message>
        <source>some let it pass up to 100 mm</source>
        <translation>manche lassen es bis 100 mm gelten</translation>
    </message>
    <message>
        <source>some of the stated ring radii would put the pith inside the section: left out of the ranges</source>
        <translation>einige der angegebenen Ringradien legten das Mark in den Querschnitt: in den Bereichen weggelassen</translation>
    </message>
    <message>
        <source>some tenths of a degree to one degree uncertain</source>
        <translation>auf einige Zehntelgrad bis ein Grad unsicher</translation>
    </message>
    <message>
        <source>something no longer does its work in some season</source>
        <translation>etwas tut in einer Jahreszeit nicht mehr seinen Dienst</translation>
    </message>
    <message>
        <source>something splits, is crushed or comes loose</source>
        <translation>etwas reißt, wird zerdrückt oder löst sich</translation>
    </message>
    <message>
        <source>something that was not told, or several causes at once</source>
        <translation>etwas, das nicht gesagt wurde, oder mehrere Ursachen zugleich</translation>
    </message>
    <message>
        <source>spar varnish</source>
        <translation>Bootslack</translation>
    </message>
    <message>
        <source>species</source>
        <translation>Holzart</translation>
    </message>
    <message>
        <source>species correction</source>
        <translation>Holzartkorrektur</translation>
    </message>
    <message>
        <source>specific gravity</source>
        <translation>Rohdichte (relativ)</translation>
    </message>
    <message>
        <source>spells</source>
        <translation>Zeitspannen</translation>
    </message>
    <message>
        <source>spread</source>
        <translation>Streuung</translation>
    </message>
    <message>
        <source>spread of lots</source>
        <translation>Streuung der Chargen</translation>
    </message>
    <message>
        <source>spread {spread!r}</source>
        <translation>Streuung {spread!r}</translation>
    </message>
    <message>
        <source>stand it free with both faces open for {days:.0f} days and measure again: {one:.1f} mm left speaks for '{first}', {two:.1f} mm for '{second}'</source>
        <translation>mit beiden Seiten offen {days:.0f} Tage frei hinstellen und wieder messen: Bleiben {one:.1f} mm, spricht das für „{first}“, {two:.1f} mm für „{second}“</translation>
    </message>
    <message>
        <source>stand it on stickers, both faces open, out of the sun</source>
        <translation>auf Stapelleisten stellen, beide Seiten offen, nicht in die Sonne</translation>
    </message>
    <message>
        <source>standard deviation</source>
        <translation>Standardabweichung</translation>
    </message>
    <message>
        <source>start_mc {start!r} is impossible</source>
        <translation>start_mc {start!r} ist unmöglich</translation>
    </message>
    <message>
        <source>starting moisture</source>
        <translation>Anfangsfeuchte</translation>
    </message>
    <message>
        <source>stay {name!r}</source>
        <translation>Aufenthalt {name!r}</translation>
    </message>
    <message>
        <source>stays</source>
        <translation>Aufenthalte</translation>
    </message>
    <message>
        <source>stick gauge</source>
        <translation>Messstab</translation>
    </message>
    <message>
        <source>stiffness across the grain of {species} not published: mean of hardwoods taken</source>
        <translation>Steifigkeit quer zur Faser von {species} nicht veröffentlicht: Mittel der Laubhölzer genommen</translation>
    </message>
    <message>
        <source>stiffness across the grain of {species} not published: mean of softwoods taken</source>
        <translation>Steifigkeit quer zur Faser von {species} nicht veröffentlicht: Mittel der Nadelhölzer genommen</translation>
    </message>
    <message>
        <source>stiffness across the grain of {species} not published: that of {relative} taken</source>
        <translation>Steifigkeit quer zur Faser von {species} nicht veröffentlicht: die von {relative} genommen</translation>
    </message>
    <message>
        <source>stiffness of {name} taken as that of a usual sheet</source>
        <translation>Steifigkeit von {name} wie die eines üblichen Plattenwerkstoffs genommen</translation>
    </message>
    <message>
        <source>stiffness of {species} not known: taken from its density ({source})</source>
        <translation>Steifigkeit von {species} nicht bekannt: aus seiner Dichte genommen ({source})</translation>
    </message>
    <message>
        <source>still covers?</source>
        <translation>deckt noch?</translation>
    </message>
    <message>
        <source>stock</source>
        <translation>Vorrat</translation>
    </message>
    <message>
        <source>stop a model that takes longer (default {seconds:.0f}; 0: never)</source>
        <translation>ein Modell abbrechen, das länger braucht (ohne Angabe: {seconds:.0f}; 0: nie)</translation>
    </message>
    <message>
        <source>stopped</source>
        <translation>abgebrochen</translation>
    </message>
    <message>
        <source>strain given over {width:g} mm, the panel is {width2:g} mm wide</source>
        <translation>Dehnung über {width:g} mm angegeben, die Platte ist {width2:g} mm breit</translation>
    </message>
    <message>
        <source>such a part needs no fasteners; a housed panel needs room in its groove</source>
        <translation>ein solches Teil braucht keine Befestigungen; eine eingelassene Füllung braucht Spiel in ihrer Nut</translation>
    </message>
    <message>
        <source>such as 'varnish 2' or 'show oil 2, back bare'</source>
        <translation>etwa 'varnish 2' oder 'show oil 2, back bare'</translation>
    </message>
    <message>
        <source>such as {example}</source>
        <translation>etwa {example}</translation>
    </message>
    <message>
        <source>surface {surface!r}</source>
        <translation>Oberfläche {surface!r}</translation>
    </message>
    <message>
        <source>swap them</source>
        <translation>vertauschen</translation>
    </message>
    <message>
        <source>swing</source>
        <translation>Schwankung</translation>
    </message>
    <message>
        <source>tag it first</source>
        <translation>erst sein Holz angeben</translation>
    </message>
    <message>
        <source>tag the moisture it was built at, for example 'built 9'</source>
        <translation>die Feuchte beim Bau angeben, etwa „built 9“</translation>
    </message>
    <message>
        <source>tag the part</source>
        <translation>das Teil angeben</translation>
    </message>
    <message>
        <source>tag the pith and the moisture of every board</source>
        <translation>Mark und Feuchte jedes Bretts angeben</translation>
    </message>
    <message>
        <source>tag the species or material, for example wood{{white oak}}</source>
        <translation>die Holzart oder den Werkstoff angeben, etwa wood{{white oak}}</translation>
    </message>
    <message>
        <source>take a boxed-heart board to twist by an amount that is not known</source>
        <translation>davon ausgehen, dass sich ein Brett mit Mark um ein unbekanntes Maß verdreht</translation>
    </message>
    <message>
        <source>take an older copy of it</source>
        <translation>eine ältere Kopie davon nehmen</translation>
    </message>
    <message>
        <source>take it out of the label, and tag the board instead</source>
        <translation>es aus der Bezeichnung nehmen und stattdessen am Brett angeben</translation>
    </message>
    <message>
        <source>take the hardware out, or undo, first</source>
        <translation>zuerst die Befestigung entfernen oder rückgängig machen</translation>
    </message>
    <message>
        <source>take those away first, or draw the parts as objects of their own</source>
        <translation>erst diese entfernen, oder die Teile als eigene Objekte zeichnen</translation>
    </message>
    <message>
        <source>taken as brushed shellac of that many coats</source>
        <translation>wie gestrichener Schellack mit ebenso vielen Schichten genommen</translation>
    </message>
    <message>
        <source>taken as in step with the air</source>
        <translation>als der Luft ohne Verzug folgend genommen</translation>
    </message>
    <message>
        <source>taking apart</source>
        <translation>Zerlegen</translation>
    </message>
    <message>
        <source>taking hardware out</source>
        <translation>Befestigung entfernen</translation>
    </message>
    <message>
        <source>tang.</source>
        <translation>tang.</translation>
    </message>
    <message>
        <source>tangential</source>
        <translation>tangential</translation>
    </message>
    <message>
        <source>tangential coefficient</source>
        <translation>tangentialer Beiwert</translation>
    </message>
    <message>
        <source>tangential strain</source>
        <translation>tangentiale Dehnung</translation>
    </message>
    <message>
        <source>tell what is new, gone or changed between two reports of a check</source>
        <translation>sagen, was zwischen zwei Berichten einer Prüfung neu, weg oder geändert ist</translation>
    </message>
    <message>
        <source>temperature</source>
        <translation>Temperatur</translation>
    </message>
    <message>
        <source>temperature of the air</source>
        <translation>Lufttemperatur</translation>
    </message>
    <message>
        <source>temperature outside {temperature_range:g} to {temperature_range2:g} °C</source>
        <translation>Temperatur außerhalb von {temperature_range:g} bis {temperature_range2:g} °C</translation>
    </message>
    <message>
        <source>temperature_c (or temperature_f) and rh_percent; month may stand beside them</source>
        <translation>temperature_c (oder temperature_f) und rh_percent; month darf daneben stehen</translation>
    </message>
    <message>
        <source>temperature_unit</source>
        <translation>temperature_unit</translation>
    </message>
    <message>
        <source>tenon {place}, {wide:.0f} mm wide: {room}</source>
        <translation>Zapfen {place}, {wide:.0f} mm breit: {room}</translation>
    </message>
    <message>
        <source>tenon {tenon_width:g} mm wide</source>
        <translation>Zapfen von {tenon_width:g} mm Breite</translation>
    </message>
    <message>
        <source>tenoned</source>
        <translation>gezapft</translation>
    </message>
    <message>
        <source>tenons of breadboard ends</source>
        <translation>Zapfen der Hirnleisten</translation>
    </message>
    <message>
        <source>tension</source>
        <translation>Zug</translation>
    </message>
    <message>
        <source>text</source>
        <translation>Text</translation>
    </message>
    <message>
        <source>text with one reading a line</source>
        <translation>Text mit einem Messwert je Zeile</translation>
    </message>
    <message>
        <source>text; json, jsonl (a line a model); csv (a line a part), findings-csv (a line a finding); html (one page)</source>
        <translation>text; json, jsonl (eine Zeile je Modell); csv (eine Zeile je Teil), findings-csv (eine Zeile je Befund); html (eine Seite)</translation>
    </message>
    <message>
        <source>that is a file that is read</source>
        <translation>das ist eine Datei, die gelesen wird</translation>
    </message>
    <message>
        <source>that is an end of {part}</source>
        <translation>das ist ein Ende von {part}</translation>
    </message>
    <message>
        <source>that is beside {part}</source>
        <translation>das ist neben {part}</translation>
    </message>
    <message>
        <source>that is how breadboard ends are: say it to the client; cut them level at the moisture that the home has longest and ease the corners, or make the top of quarter-sawn wood; or hold it flat with battens below</source>
        <translation>so sind Hirnleisten: es dem Kunden sagen; sie bei der Feuchte bündig schneiden, die die Wohnung am längsten hat, und die Ecken brechen, oder die Platte aus Holz mit stehenden Ringen machen; oder sie mit Querleisten darunter eben halten</translation>
    </message>
    <message>
        <source>that is the file that was read</source>
        <translation>das ist die Datei, die gelesen wurde</translation>
    </message>
    <message>
        <source>that is the name of a file that Heartside reads</source>
        <translation>das ist der Name einer Datei, die Heartside liest</translation>
    </message>
    <message>
        <source>that means {count} pairs of parts</source>
        <translation>das meint {count} Paare von Teilen</translation>
    </message>
    <message>
        <source>the BREP file is cut short</source>
        <translation>die BREP-Datei ist abgeschnitten</translation>
    </message>
    <message>
        <source>the CAD host could not do it: {kind}: {text}</source>
        <translation>das CAD-Programm konnte es nicht: {kind}: {text}</translation>
    </message>
    <message>
        <source>the CAD host does not come up: {why}</source>
        <translation>das CAD-Programm kommt nicht hoch: {why}</translation>
    </message>
    <message>
        <source>the CAD host does not start ({failure}).</source>
        <translation>das CAD-Programm startet nicht ({failure}).</translation>
    </message>
    <message>
        <source>the CAD host stopped without an answer ({failure}). To do: open it in FreeCAD and look for the part at which the host fails.</source>
        <translation>das CAD-Programm endete ohne Antwort ({failure}). Zu tun: es in FreeCAD öffnen und das Teil suchen, an dem es scheitert.</translation>
    </message>
    <message>
        <source>the FCStd file to write</source>
        <translation>die FCStd-Datei, die geschrieben wird</translation>
    </message>
    <message>
        <source>the STEP file is cut short: END-ISO-10303-21 is missing</source>
        <translation>die STEP-Datei ist abgeschnitten: END-ISO-10303-21 fehlt</translation>
    </message>
    <message>
        <source>the STEP file to write; NEW's name with .wood.csv is written beside it</source>
        <translation>die STEP-Datei, die geschrieben wird; daneben wird NEW mit der Endung .wood.csv geschrieben</translation>
    </message>
    <message>
        <source>the air</source>
        <translation>die Luft</translation>
    </message>
    <message>
        <source>the air brings wood to {wood:.1f} %; boards lag</source>
        <translation>die Luft bringt Holz auf {wood:.1f} %; Bretter hinken nach</translation>
    </message>
    <message>
        <source>the air it is in (default 20)</source>
        <translation>die Luft, in der es ist (ohne Angabe: 20)</translation>
    </message>
    <message>
        <source>the air it is in (default 50)</source>
        <translation>die Luft, in der es ist (ohne Angabe: 50)</translation>
    </message>
    <message>
        <source>the air it lives in: {what}</source>
        <translation>die Luft, in der es steht: {what}</translation>
    </message>
    <message>
        <source>the air it was built in, for parts whose moisture was not metered; with --built-on</source>
        <translation>die Luft, in der es gebaut wurde, für Teile, deren Feuchte nicht gemessen wurde; mit --built-on</translation>
    </message>
    <message>
        <source>the air of months that a logger did not see</source>
        <translation>die Luft der Monate, die ein Logger nicht sah</translation>
    </message>
    <message>
        <source>the air of the place, which no year repeats</source>
        <translation>die Luft des Ortes, die kein Jahr wiederholt</translation>
    </message>
    <message>
        <source>the air, without a meter</source>
        <translation>die Luft, ohne Messgerät</translation>
    </message>
    <message>
        <source>the anchors near the middle of the width do all the holding and are enough by themselves</source>
        <translation>die Befestigungen nahe der Mitte der Breite halten alles und genügen allein</translation>
    </message>
    <message>
        <source>the anchors near the middle of the width do nothing, those toward the edges hold</source>
        <translation>die Befestigungen nahe der Mitte der Breite tun nichts, die zu den Kanten hin halten</translation>
    </message>
    <message>
        <source>the answer cannot be written out ({reason})</source>
        <translation>die Antwort lässt sich nicht ausgeben ({reason})</translation>
    </message>
    <message>
        <source>the back</source>
        <translation>die Rückwand</translation>
    </message>
    <message>
        <source>the back face shut off for {days:g} days in air of {air:.1f} %, begun at {start:.1f} %</source>
        <translation>die Rückseite {days:g} Tage verschlossen in Luft von {air:.1f} %, begonnen bei {start:.1f} %</translation>
    </message>
    <message>
        <source>the back face wet for {hours:g} h: up to {mc:+.1f} % between the faces</source>
        <translation>die Rückseite {hours:g} h nass: bis zu {mc:+.1f} % zwischen den Seiten</translation>
    </message>
    <message>
        <source>the boards make no panel of this document</source>
        <translation>die Bretter bilden keine Platte dieses Dokuments</translation>
    </message>
    <message>
        <source>the body is empty</source>
        <translation>der Körper ist leer</translation>
    </message>
    <message>
        <source>the bolt's line and the strike's go {drift:.1f} mm apart, and there is room for {room:.1f} mm: the lock no longer shuts (taken as drawn in line, and each as fixed to what it touches)</source>
        <translation>die Linien von Riegel und Schließblech gehen {drift:.1f} mm auseinander, und Platz ist für {room:.1f} mm: Das Schloss schließt nicht mehr (als in einer Linie gezeichnet angenommen, und jedes fest an dem, was es berührt)</translation>
    </message>
    <message>
        <source>the corrections make {mc:.1f} % of it</source>
        <translation>die Korrekturen machen {mc:.1f} % daraus</translation>
    </message>
    <message>
        <source>the dampest it ever was while it was fixed</source>
        <translation>die höchste Feuchte, solange es fest war</translation>
    </message>
    <message>
        <source>the day it was built</source>
        <translation>der Tag, an dem es gebaut wurde</translation>
    </message>
    <message>
        <source>the day, and the wood on it</source>
        <translation>der Tag und das Holz an ihm</translation>
    </message>
    <message>
        <source>the direction {text!r} has no length</source>
        <translation>die Richtung {text!r} hat keine Länge</translation>
    </message>
    <message>
        <source>the document has {count} entries</source>
        <translation>das Dokument hat {count} Einträge</translation>
    </message>
    <message>
        <source>the document is cut short in '{shown}'</source>
        <translation>das Dokument ist in „{shown}“ abgeschnitten</translation>
    </message>
    <message>
        <source>the document is damaged at '{shown}'</source>
        <translation>das Dokument ist bei „{shown}“ beschädigt</translation>
    </message>
    <message>
        <source>the document is damaged or cut short ({error})</source>
        <translation>das Dokument ist beschädigt oder abgeschnitten ({error})</translation>
    </message>
    <message>
        <source>the earlier report, JSON or JSON lines</source>
        <translation>der frühere Bericht, JSON oder JSON-Zeilen</translation>
    </message>
    <message>
        <source>the edge that is said to be fixed does not lie across the grain: name an edge of the width</source>
        <translation>die als fest angegebene Kante liegt nicht quer zur Faser: eine Kante der Breite nennen</translation>
    </message>
    <message>
        <source>the end of its tenon, {drawn:+.1f} mm from the far face as drawn, stands {least:+.1f} to {most:+.1f} mm from it through the year (+ proud, - sunk in), since the {depth:.0f} mm of wood around it move and its own length does not; wedged at that end, the shoulder opens by as much instead</source>
        <translation>das Ende seines Zapfens, gezeichnet {drawn:+.1f} mm von der fernen Fläche, steht im Jahr {least:+.1f} bis {most:+.1f} mm davon (+ vor, - zurück), da die {depth:.0f} mm Holz um ihn sich bewegen und seine Länge nicht; an diesem Ende verkeilt, öffnet sich stattdessen die Brüstung um so viel</translation>
    </message>
    <message>
        <source>the end of {inner} is dovetailed into {outer}</source>
        <translation>das Ende von {inner} ist in {outer} eingezinkt</translation>
    </message>
    <message>
        <source>the entry name '{shown}' leads outside the document</source>
        <translation>der Name des Eintrags „{shown}“ führt aus dem Dokument hinaus</translation>
    </message>
    <message>
        <source>the face nearer the centre of the tree</source>
        <translation>die Seite, die näher an der Mitte des Baums lag</translation>
    </message>
    <message>
        <source>the face nearer the centre of the tree; 'inside' where the board holds it</source>
        <translation>die Seite, die dem Mark näher ist; „inside“, wenn es im Brett liegt</translation>
    </message>
    <message>
        <source>the face that looks out of the piece</source>
        <translation>die Seite, die aus dem Stück schaut</translation>
    </message>
    <message>
        <source>the face that looks up</source>
        <translation>die Seite, die nach oben schaut</translation>
    </message>
    <message>
        <source>the fasteners near the middle of its width do nothing, those toward the edges hold it</source>
        <translation>die Befestigungen nahe der Mitte ihrer Breite tun nichts, die zu den Kanten hin halten sie</translation>
    </message>
    <message>
        <source>the fasteners near the middle of its width hold it alone</source>
        <translation>die Befestigungen nahe der Mitte ihrer Breite halten sie allein</translation>
    </message>
    <message>
        <source>the fasteners toward the edges hold it</source>
        <translation>die Befestigungen zu den Kanten hin halten sie</translation>
    </message>
    <message>
        <source>the fibres begin to crush</source>
        <translation>die Fasern werden an ersten Stellen gequetscht</translation>
    </message>
    <message>
        <source>the fibres crush</source>
        <translation>die Fasern werden gequetscht</translation>
    </message>
    <message>
        <source>the file has {size}</source>
        <translation>die Datei hat {size}</translation>
    </message>
    <message>
        <source>the file is empty</source>
        <translation>die Datei ist leer</translation>
    </message>
    <message>
        <source>the file is the air of rooms already, and {rooms} is said of them</source>
        <translation>die Datei ist schon die Luft von Räumen, und zu diesen ist {rooms} gesagt</translation>
    </message>
    <message>
        <source>the file of the year cannot be read ({reason})</source>
        <translation>die Datei des Jahresgangs ist nicht lesbar ({reason})</translation>
    </message>
    <message>
        <source>the file to write: .html, .pdf, or .json (its figures alone)</source>
        <translation>die Datei, die geschrieben wird: .html, .pdf oder .json (nur die Zahlen)</translation>
    </message>
    <message>
        <source>the file to write: .pdf, .html, or .json (its figures alone)</source>
        <translation>die Datei, die geschrieben wird: .pdf, .html oder .json (nur die Zahlen)</translation>
    </message>
    <message>
        <source>the file's text or its bytes</source>
        <translation>der Text der Datei oder ihre Bytes</translation>
    </message>
    <message>
        <source>the fixed line at {said:g} mm lies beyond the edges, which are {half:.4g} mm from the middle</source>
        <translation>die feste Linie bei {said:g} mm liegt außerhalb der Kanten, die {half:.4g} mm von der Mitte entfernt sind</translation>
    </message>
    <message>
        <source>the fixed line cannot be placed while the grain is not known</source>
        <translation>die feste Linie hat keinen Ort, solange die Faser nicht bekannt ist</translation>
    </message>
    <message>
        <source>the folder to write to (default heartside-demo)</source>
        <translation>der Ordner, in den geschrieben wird (ohne Angabe: heartside-demo)</translation>
    </message>
    <message>
        <source>the following arguments are required: {names}</source>
        <translation>diese Angaben fehlen: {names}</translation>
    </message>
    <message>
        <source>the function gave a value that is no number</source>
        <translation>die Funktion gab einen Wert, der keine Zahl ist</translation>
    </message>
    <message>
        <source>the gap between them, {drawn:.1f} mm as drawn, comes down to {left}: {what}</source>
        <translation>die Fuge zwischen ihnen, {drawn:.1f} mm wie gezeichnet, geht zurück auf {left}: {what}</translation>
    </message>
    <message>
        <source>the gap between them, {drawn:.1f} mm as drawn, opens to {most:.1f} mm</source>
        <translation>die Fuge zwischen ihnen, {drawn:.1f} mm wie gezeichnet, öffnet sich auf {most:.1f} mm</translation>
    </message>
    <message>
        <source>the grain of one of them is not known</source>
        <translation>von einem der beiden ist die Faserrichtung nicht bekannt</translation>
    </message>
    <message>
        <source>the grain of {part} is not known</source>
        <translation>die Faser von {part} ist nicht bekannt</translation>
    </message>
    <message>
        <source>the grain runs round the corner, so both move together: {worst:.1f} mm apart at most</source>
        <translation>die Faser läuft um die Ecke, also arbeiten beide gemeinsam: höchstens {worst:.1f} mm auseinander</translation>
    </message>
    <message>
        <source>the heading lacks the two columns of a year</source>
        <translation>im Kopf fehlen die zwei Spalten eines Jahres</translation>
    </message>
    <message>
        <source>the heading {heading!r} has no column 'part'</source>
        <translation>der Kopf {heading!r} hat keine Spalte „part“</translation>
    </message>
    <message>
        <source>the heading {heading!r} lacks a column</source>
        <translation>im Kopf {heading!r} fehlt eine Spalte</translation>
    </message>
    <message>
        <source>the heart side said runs along the grain; say a face or an edge of the board</source>
        <translation>die angegebene Kernseite läuft längs der Faser; eine Seite oder Kante des Bretts angeben</translation>
    </message>
    <message>
        <source>the heart side {value!r} is neither its show face nor its back</source>
        <translation>die Kernseite {value!r} ist weder seine Sichtseite noch seine Rückseite</translation>
    </message>
    <message>
        <source>the host cannot reach it</source>
        <translation>FreeCAD erreicht es nicht</translation>
    </message>
    <message>
        <source>the host cannot read it ({reason})</source>
        <translation>FreeCAD kann es nicht lesen ({reason})</translation>
    </message>
    <message>
        <source>the host failed to read it ({reason})</source>
        <translation>FreeCAD konnte es nicht lesen ({reason})</translation>
    </message>
    <message>
        <source>the host failed to read its faces ({error})</source>
        <translation>FreeCAD konnte seine Flächen nicht lesen ({error})</translation>
    </message>
    <message>
        <source>the host fails to cut it</source>
        <translation>das CAD-Programm kann es nicht schneiden</translation>
    </message>
    <message>
        <source>the host fails to cut it ({why})</source>
        <translation>FreeCAD kann es nicht schneiden ({why})</translation>
    </message>
    <message>
        <source>the host gives no mesh of it</source>
        <translation>FreeCAD gibt kein Netz davon</translation>
    </message>
    <message>
        <source>the host marks it as broken ({reason})</source>
        <translation>FreeCAD kennzeichnet es als fehlerhaft ({reason})</translation>
    </message>
    <message>
        <source>the host opens nothing from it</source>
        <translation>FreeCAD öffnet nichts daraus</translation>
    </message>
    <message>
        <source>the host's cut took nothing away</source>
        <translation>der Schnitt von FreeCAD nahm nichts weg</translation>
    </message>
    <message>
        <source>the host's drawing paper is not there</source>
        <translation>das Zeichenblatt von FreeCAD ist nicht da</translation>
    </message>
    <message>
        <source>the humidity</source>
        <translation>die Luftfeuchte</translation>
    </message>
    <message>
        <source>the joint</source>
        <translation>die Verbindung</translation>
    </message>
    <message>
        <source>the joint would still sink by more than {sink:g} mm after a year</source>
        <translation>die Fuge würde nach einem Jahr noch um mehr als {sink:g} mm einfallen</translation>
    </message>
    <message>
        <source>the joints beside the model cannot be read: {error}</source>
        <translation>die Verbindungen neben dem Modell sind nicht lesbar: {error}</translation>
    </message>
    <message>
        <source>the keys of all its boards from left to right, as 'arrange' tells them</source>
        <translation>die Schlüssel aller ihrer Bretter von links nach rechts, wie „arrange“ sie nennt</translation>
    </message>
    <message>
        <source>the known findings cannot be read ({reason})</source>
        <translation>die bekannten Befunde sind nicht lesbar ({reason})</translation>
    </message>
    <message>
        <source>the later report</source>
        <translation>der spätere Bericht</translation>
    </message>
    <message>
        <source>the line that stays put: centre, or the board whose outer edge it is (default: what the top's boards say by their tag 'fixed', else centre)</source>
        <translation>die Linie, die bleibt: centre, oder das Brett, dessen Außenkante sie ist (ohne Angabe: was die Bretter der Platte mit „fixed“ angeben, sonst centre)</translation>
    </message>
    <message>
        <source>the line {distance:.0f} mm inside its edge at {edge}</source>
        <translation>die Linie {distance:.0f} mm innerhalb ihrer Kante bei {edge}</translation>
    </message>
    <message>
        <source>the longest edge</source>
        <translation>die längste Kante</translation>
    </message>
    <message>
        <source>the lower limit below the upper one</source>
        <translation>die untere Grenze unter der oberen</translation>
    </message>
    <message>
        <source>the lower value first</source>
        <translation>den kleineren Wert zuerst</translation>
    </message>
    <message>
        <source>the maker's own figure</source>
        <translation>eigene Zahl des Herstellers</translation>
    </message>
    <message>
        <source>the maker's own months</source>
        <translation>eigene Monate des Herstellers</translation>
    </message>
    <message>
        <source>the measurements beside the model cannot be read: {error}</source>
        <translation>die Messungen neben dem Modell sind nicht lesbar: {error}</translation>
    </message>
    <message>
        <source>the measurements of the study cannot be read: {error}</source>
        <translation>die Messungen der Studie sind nicht lesbar: {error}</translation>
    </message>
    <message>
        <source>the middle lies so much lower</source>
        <translation>die Mitte liegt um so viel tiefer</translation>
    </message>
    <message>
        <source>the middle of its glued length</source>
        <translation>der Mitte seiner Leimlänge</translation>
    </message>
    <message>
        <source>the middle of its width</source>
        <translation>die Mitte ihrer Breite</translation>
    </message>
    <message>
        <source>the middle reading is {middle:.0f} °C: these look like °F</source>
        <translation>der mittlere Messwert ist {middle:.0f} °C: Das sieht nach °F aus</translation>
    </message>
    <message>
        <source>the middle reading would be {middle:.0f} °C: these look like °C, not °F</source>
        <translation>der mittlere Messwert wäre {middle:.0f} °C: Das sieht nach °C aus, nicht nach °F</translation>
    </message>
    <message>
        <source>the middle stands so much higher, seen from the show face</source>
        <translation>die Mitte steht um so viel höher, von der Sichtseite gesehen</translation>
    </message>
    <message>
        <source>the mitre of two pieces {width:.0f} mm wide opens {gap:.1f} mm at the {where} (stock above some {limit:.0f} mm opens; common practice, no source)</source>
        <translation>die Gehrung zweier {width:.0f} mm breiter Stücke öffnet sich {gap:.1f} mm an der {where} (über etwa {limit:.0f} mm Breite öffnet sie sich; übliche Praxis, keine Quelle)</translation>
    </message>
    <message>
        <source>the model, its tags or the year have changed since the hardware was placed</source>
        <translation>das Modell, seine Angaben oder das Jahr haben sich geändert, seit die Befestigung gesetzt wurde</translation>
    </message>
    <message>
        <source>the moisture it had when it was fitted, or has today</source>
        <translation>die Feuchte, die es beim Einpassen hatte oder heute hat</translation>
    </message>
    <message>
        <source>the moisture when it was made flat is not said: shown without its cup</source>
        <translation>die Holzfeuchte beim Abrichten ist nicht gesagt: ohne Wölbung gezeigt</translation>
    </message>
    <message>
        <source>the moulding</source>
        <translation>die Profilleiste</translation>
    </message>
    <message>
        <source>the movement of {name!r} cannot be worked out: {reason}</source>
        <translation>wie {name!r} arbeitet, lässt sich nicht berechnen: {reason}</translation>
    </message>
    <message>
        <source>the movement of {names} is not known</source>
        <translation>wie {names} arbeitet, ist nicht bekannt</translation>
    </message>
    <message>
        <source>the movement of {name} is not known</source>
        <translation>wie {name} arbeitet, ist nicht bekannt</translation>
    </message>
    <message>
        <source>the name of a document ends in .FCStd</source>
        <translation>der Name eines Dokuments endet auf .FCStd</translation>
    </message>
    <message>
        <source>the name of a year of air, or of a place</source>
        <translation>der Name eines Luftjahrs oder eines Ortes</translation>
    </message>
    <message>
        <source>the names of any known {noun}</source>
        <translation>der Name von etwas Bekanntem: {noun}</translation>
    </message>
    <message>
        <source>the numbers are too large to compute with</source>
        <translation>die Zahlen sind zu groß zum Rechnen</translation>
    </message>
    <message>
        <source>the one-component kind that is brushed on</source>
        <translation>die einkomponentige, gestrichene Sorte</translation>
    </message>
    <message>
        <source>the outline leaves the panel's length and width</source>
        <translation>der Umriss verlässt Länge und Breite der Platte</translation>
    </message>
    <message>
        <source>the page for the client, in plain words</source>
        <translation>die Seite für den Kunden, in einfachen Worten</translation>
    </message>
    <message>
        <source>the panel</source>
        <translation>die Leimholzplatte</translation>
    </message>
    <message>
        <source>the part that was measured</source>
        <translation>das Teil, das gemessen wurde</translation>
    </message>
    <message>
        <source>the parts press on each other</source>
        <translation>die Teile drücken aufeinander</translation>
    </message>
    <message>
        <source>the pith gives a ring radius of {radius:.0f} mm, not {ring_radius:g}; the pith counts</source>
        <translation>das Mark ergibt einen Ringradius von {radius:.0f} mm, nicht {ring_radius:g}; das Mark gilt</translation>
    </message>
    <message>
        <source>the pith gives ring angle {angle:.0f}°, not {ring_angle:g}° as said; the pith counts</source>
        <translation>das Mark ergibt den Ringwinkel {angle:.0f}°, nicht {ring_angle:g}° wie gesagt; das Mark gilt</translation>
    </message>
    <message>
        <source>the pith lies toward the {side} face, but heart {heart!r} was said; the pith counts</source>
        <translation>das Mark liegt zur Seite „{side}“ hin, gesagt war aber heart {heart!r}; das Mark gilt</translation>
    </message>
    <message>
        <source>the pith or the moisture is not known of {names}</source>
        <translation>Mark oder Feuchte nicht bekannt von {names}</translation>
    </message>
    <message>
        <source>the points surround the pith ({x:g}, {y:g}) mm</source>
        <translation>die Punkte umschließen das Mark ({x:g}, {y:g}) mm</translation>
    </message>
    <message>
        <source>the radius of a ring</source>
        <translation>der Radius eines Rings</translation>
    </message>
    <message>
        <source>the rings twist it {dry:+.2f}° driest, {wet:+.2f}° wettest; {note}</source>
        <translation>die Jahrringe verdrehen es am trockensten um {dry:+.2f}°, am feuchtesten um {wet:+.2f}°; {note}</translation>
    </message>
    <message>
        <source>the rings, and a change of moisture since it was flat</source>
        <translation>die Jahrringe und eine andere Feuchte, seit es eben war</translation>
    </message>
    <message>
        <source>the room it lies in (default 20/50)</source>
        <translation>der Raum, in dem es liegt (ohne Angabe: 20/50)</translation>
    </message>
    <message>
        <source>the rooms ({rooms}) belong to no place</source>
        <translation>die Räume ({rooms}) gehören zu keinem Ort</translation>
    </message>
    <message>
        <source>the same, percent</source>
        <translation>dasselbe, Prozent</translation>
    </message>
    <message>
        <source>the section holds its pith, {ends}</source>
        <translation>der Querschnitt enthält sein Mark, {ends}</translation>
    </message>
    <message>
        <source>the section holds its pith: it cannot stay free of stress and will check from the pith outward; its shape is elastic, uncracked, by finite elements</source>
        <translation>der Querschnitt enthält sein Mark: Er bleibt nicht frei von Spannung und reißt vom Mark nach außen; seine Form ist elastisch, ungerissen, mit finiten Elementen berechnet</translation>
    </message>
    <message>
        <source>the section holds the pith, so it cannot shrink freely: expect it to check toward the pith</source>
        <translation>der Querschnitt enthält das Mark und kann nicht frei schwinden: Mit einem Riss zum Mark hin ist zu rechnen</translation>
    </message>
    <message>
        <source>the settings cannot be read ({reason})</source>
        <translation>die Einstellungen sind nicht lesbar ({reason})</translation>
    </message>
    <message>
        <source>the settings of the air and the limits (default: the heartside.json in the model's folder, or the nearest above it); what is typed outranks it</source>
        <translation>die Einstellungen der Luft und die Grenzen (ohne Angabe: heartside.json im Ordner des Modells oder im nächsten darüber); was eingegeben wird, geht vor</translation>
    </message>
    <message>
        <source>the shelf</source>
        <translation>der Boden</translation>
    </message>
    <message>
        <source>the shop's air and the date belong together</source>
        <translation>die Luft der Werkstatt und das Datum gehören zusammen</translation>
    </message>
    <message>
        <source>the shop's air and the day the piece was built belong together</source>
        <translation>die Luft der Werkstatt und der Tag, an dem das Stück gebaut wurde, gehören zusammen</translation>
    </message>
    <message>
        <source>the show face in the sun for {days:g} days</source>
        <translation>die Sichtseite {days:g} Tage in der Sonne</translation>
    </message>
    <message>
        <source>the show face wet for {hours:g} h: up to {mc:+.1f} % between the faces</source>
        <translation>die Sichtseite {hours:g} h nass: bis zu {mc:+.1f} % zwischen den Seiten</translation>
    </message>
    <message>
        <source>the side {how} at two rails {apart:.0f} mm apart that the runner keeps apart, and moves {least:+.1f} to {most:+.1f} mm between them: it splits, or pushes the joints of the frame open</source>
        <translation>die Seite {how} an zwei Riegeln {apart:.0f} mm auseinander, die die Laufleiste auf Abstand hält, und bewegt sich dazwischen {least:+.1f} bis {most:+.1f} mm: Sie reißt oder drückt die Verbindungen des Rahmens auf</translation>
    </message>
    <message>
        <source>the slope of spiral grain (rise ÷ length)</source>
        <translation>die Neigung des Drehwuchses (Steigung ÷ Länge)</translation>
    </message>
    <message>
        <source>the species correction is missing: a wrong setting costs 2 % and more</source>
        <translation>die Korrektur der Holzart fehlt: eine falsche Einstellung kostet 2 % und mehr</translation>
    </message>
    <message>
        <source>the species of elastic_ratios.csv</source>
        <translation>die Holzarten von elastic_ratios.csv</translation>
    </message>
    <message>
        <source>the stick says {mc:.1f} %</source>
        <translation>der Messstab sagt {mc:.1f} %</translation>
    </message>
    <message>
        <source>the stops of the piece do not come to rest</source>
        <translation>die Anschläge des Stücks kommen nicht zur Ruhe</translation>
    </message>
    <message>
        <source>the strike goes {opens:.1f} mm away from the lock in the dry season: a bolt that shoots 6 to 10 mm hardly reaches it (common practice, no source; each taken as fixed to what it touches)</source>
        <translation>das Schließblech geht in der trockenen Zeit {opens:.1f} mm vom Schloss weg: Ein Riegel mit 6 bis 10 mm Ausschluss erreicht es kaum (übliche Praxis, keine Quelle; jedes als fest an dem angenommen, was es berührt)</translation>
    </message>
    <message>
        <source>the strip (a runner, cleat or the like)</source>
        <translation>die Leiste (Laufleiste, Querleiste oder dergleichen)</translation>
    </message>
    <message>
        <source>the table cannot be cut into cells ({error})</source>
        <translation>die Tabelle lässt sich nicht in Zellen teilen ({error})</translation>
    </message>
    <message>
        <source>the tag on {name!r} is used by no part, since it is a container. To do: tag the parts inside</source>
        <translation>die Angabe bei {name!r} gilt für kein Teil, weil es ein Behälter ist. Zu tun: das Holz bei den Teilen darin angeben</translation>
    </message>
    <message>
        <source>the tag table names a part {name!r} that is not there. Parts: {names}</source>
        <translation>die Tabelle der Angaben nennt ein Teil {name!r}, das nicht da ist. Teile: {names}</translation>
    </message>
    <message>
        <source>the tagged show face is an end of the grain; tag a side</source>
        <translation>die angegebene Sichtseite ist Hirnholz; eine Längsholzseite angeben</translation>
    </message>
    <message>
        <source>the tags beside the model cannot be read: {error}</source>
        <translation>die Angaben neben dem Modell sind nicht lesbar: {error}</translation>
    </message>
    <message>
        <source>the tenon is divided: whether every part of it is glued is not drawn</source>
        <translation>der Zapfen ist geteilt: Ob jeder Teil geleimt ist, ist nicht gezeichnet</translation>
    </message>
    <message>
        <source>the test saw no effect</source>
        <translation>im Versuch war keine Wirkung zu sehen</translation>
    </message>
    <message>
        <source>the three points put the pith {place}, not where it was said; the pith counts</source>
        <translation>nach den drei Punkten liegt das Mark {place}, nicht wo es gesagt war; das Mark gilt</translation>
    </message>
    <message>
        <source>the top that this board belongs to</source>
        <translation>die Platte, zu der dieses Brett gehört</translation>
    </message>
    <message>
        <source>the top, and what holds it</source>
        <translation>die Platte, und was sie hält</translation>
    </message>
    <message>
        <source>the tree's centre is in the board (boxed heart)</source>
        <translation>das Mark liegt im Brett</translation>
    </message>
    <message>
        <source>the twist of single boards is not in it: {names}</source>
        <translation>die Verdrehung einzelner Bretter ist nicht darin: {names}</translation>
    </message>
    <message>
        <source>the two longest edges</source>
        <translation>die zwei längsten Kanten</translation>
    </message>
    <message>
        <source>the two solids are drawn in the same place</source>
        <translation>die zwei Körper sind am selben Ort gezeichnet</translation>
    </message>
    <message>
        <source>the upright that its end is let into (a post, leg or stile)</source>
        <translation>das aufrechte Teil, in das sein Ende eingelassen ist (Pfosten, Bein oder Rahmenstück),</translation>
    </message>
    <message>
        <source>the vapour pressure is above the air pressure</source>
        <translation>der Dampfdruck liegt über dem Luftdruck</translation>
    </message>
    <message>
        <source>the view on {page} is still empty: this host has not drawn it without its window. Save the document and open it in the window, where the view is drawn; all else on the page is there</source>
        <translation>die Ansicht auf {page} ist noch leer: dieses FreeCAD hat sie ohne sein Fenster nicht gezeichnet. Dokument speichern und im Fenster öffnen, dort wird die Ansicht gezeichnet; alles andere auf der Seite ist da</translation>
    </message>
    <message>
        <source>the wet face swelled against dry wood behind it, and was crushed</source>
        <translation>die nasse Seite quoll gegen trockenes Holz dahinter und wurde gequetscht</translation>
    </message>
    <message>
        <source>the wood ('woods' lists them)</source>
        <translation>das Holz („woods“ führt sie auf)</translation>
    </message>
    <message>
        <source>the wood's temperature is missing: pins read low in the cold</source>
        <translation>die Temperatur des Holzes fehlt: Nadeln zeigen in der Kälte zu wenig</translation>
    </message>
    <message>
        <source>the years still differ by {change:.3f} % after {years} years</source>
        <translation>nach {years} Jahren weichen die Jahre noch um {change:.3f} % voneinander ab</translation>
    </message>
    <message>
        <source>the {depth:.0f} mm of wood that it draws tight shrink, and leave it {slack:.1f} mm of slack: the joint works loose until it is driven home again</source>
        <translation>die {depth:.0f} mm Holz, die er zusammenzieht, schwinden und lassen ihm {slack:.1f} mm Luft: Die Verbindung lockert sich, bis er nachgetrieben wird</translation>
    </message>
    <message>
        <source>the {direction} figure of {name} is unknown</source>
        <translation>die Zahl für {direction} von {name} ist unbekannt</translation>
    </message>
    <message>
        <source>there are no solids in it{more}</source>
        <translation>es sind keine Körper darin{more}</translation>
    </message>
    <message>
        <source>there is no fact '{name}'</source>
        <translation>es gibt keine Angabe „{name}“</translation>
    </message>
    <message>
        <source>there is no model in this folder. Allowed: {models}.</source>
        <translation>in diesem Ordner ist kein Modell. Zulässig: {models}.</translation>
    </message>
    <message>
        <source>there is no part {part!r}</source>
        <translation>es gibt kein Teil {part!r}</translation>
    </message>
    <message>
        <source>there is no such file</source>
        <translation>diese Datei gibt es nicht</translation>
    </message>
    <message>
        <source>there is no such file of settings</source>
        <translation>diese Datei mit Einstellungen gibt es nicht</translation>
    </message>
    <message>
        <source>there is no such part</source>
        <translation>es gibt kein solches Teil</translation>
    </message>
    <message>
        <source>there is no top</source>
        <translation>es gibt keine Platte</translation>
    </message>
    <message>
        <source>there is no top in this model{captured}</source>
        <translation>in diesem Modell ist keine Platte{captured}</translation>
    </message>
    <message>
        <source>there is no wood to cut: a groove or hole is there already, or the part ends before it</source>
        <translation>es ist kein Holz zum Schneiden da: dort ist schon eine Nut oder ein Loch, oder das Teil endet davor</translation>
    </message>
    <message>
        <source>there is nothing to place: the plan has no fastener</source>
        <translation>es gibt nichts zu setzen: Der Plan hat keine Befestigung</translation>
    </message>
    <message>
        <source>these do not fit together: {shapes}</source>
        <translation>diese passen nicht zusammen: {shapes}</translation>
    </message>
    <message>
        <source>they are cut already</source>
        <translation>sie sind schon geschnitten</translation>
    </message>
    <message>
        <source>they are drawn in the same place, {depth:.2f} mm deep: what joins them cannot be told</source>
        <translation>sie sind am selben Ort gezeichnet, {depth:.2f} mm tief: Was sie verbindet, ist nicht zu sagen</translation>
    </message>
    <message>
        <source>they come close and touch nowhere over an area</source>
        <translation>sie kommen sich nahe und berühren sich auf keiner Fläche</translation>
    </message>
    <message>
        <source>they face each other across a gap and touch nowhere</source>
        <translation>sie stehen sich über eine Fuge gegenüber und berühren sich nirgends</translation>
    </message>
    <message>
        <source>they move only {worst:.1f} mm apart</source>
        <translation>sie arbeiten nur {worst:.1f} mm auseinander</translation>
    </message>
    <message>
        <source>thickness</source>
        <translation>Dicke</translation>
    </message>
    <message>
        <source>thickness and width of the end must be above 0</source>
        <translation>Dicke und Breite der Hirnleiste müssen über 0 sein</translation>
    </message>
    <message>
        <source>thickness of the boards</source>
        <translation>Dicke der Bretter</translation>
    </message>
    <message>
        <source>thicknesses from {least:g} to {most:g} mm</source>
        <translation>Dicken von {least:g} bis {most:g} mm</translation>
    </message>
    <message>
        <source>thicknesses within a ratio of {most_thickness_ratio:g} in one panel</source>
        <translation>Dicken in einem Verhältnis bis {most_thickness_ratio:g} in einer Platte</translation>
    </message>
    <message>
        <source>this is for a top that stays where it is: if it opens, as a lid does, fasten it to nothing below it; battens across it, screwed in slots, or breadboard ends keep it flat</source>
        <translation>das gilt für eine Platte, die liegen bleibt: Lässt sie sich öffnen wie ein Deckel, sie an nichts darunter befestigen; Querleisten, in Langlöchern verschraubt, oder Hirnleisten halten sie eben</translation>
    </message>
    <message>
        <source>thread in the wood</source>
        <translation>Gewinde im Holz</translation>
    </message>
    <message>
        <source>three points on one ring (x y x y x y, mm)</source>
        <translation>drei Punkte auf einem Ring (x y x y x y, mm)</translation>
    </message>
    <message>
        <source>through tenon</source>
        <translation>durchgehender Zapfen</translation>
    </message>
    <message>
        <source>throw</source>
        <translation>Bereich</translation>
    </message>
    <message>
        <source>tick those that are right</source>
        <translation>anhaken, was stimmt</translation>
    </message>
    <message>
        <source>tight</source>
        <translation>eng</translation>
    </message>
    <message>
        <source>time</source>
        <translation>Uhrzeit</translation>
    </message>
    <message>
        <source>tips off its support: its weight or an anchor beyond the support turns it over</source>
        <translation>kippt von ihrer Auflage: Ihr Gewicht oder eine Befestigung außerhalb der Auflage dreht sie um</translation>
    </message>
    <message>
        <source>to fill in</source>
        <translation>auszufüllen</translation>
    </message>
    <message>
        <source>today</source>
        <translation>heute</translation>
    </message>
    <message>
        <source>today leave {gap:.1f} mm beside each edge in grooves at least {groove:.1f} mm deep; glue or pin it at the middle of each end only</source>
        <translation>heute {gap:.1f} mm neben jeder Kante lassen, in Nuten von mindestens {groove:.1f} mm Tiefe; nur in der Mitte jedes Endes leimen oder stiften</translation>
    </message>
    <message>
        <source>today's travel {today:g} mm</source>
        <translation>heutiger Weg {today:g} mm</translation>
    </message>
    <message>
        <source>today, YYYY-MM-DD (default: this day)</source>
        <translation>heute, JJJJ-MM-TT (ohne Angabe: dieser Tag)</translation>
    </message>
    <message>
        <source>today, by meter near the back face</source>
        <translation>heute, nach dem Messgerät nahe der Rückseite</translation>
    </message>
    <message>
        <source>today, by meter near the show face</source>
        <translation>heute, nach dem Messgerät nahe der Sichtseite</translation>
    </message>
    <message>
        <source>toe, outside</source>
        <translation>Außenecke</translation>
    </message>
    <message>
        <source>tolerance</source>
        <translation>Toleranz</translation>
    </message>
    <message>
        <source>tongue</source>
        <translation>Feder</translation>
    </message>
    <message>
        <source>tongue in its groove, {unit}</source>
        <translation>Feder in ihrer Nut, {unit}</translation>
    </message>
    <message>
        <source>tongue load</source>
        <translation>Last der Feder</translation>
    </message>
    <message>
        <source>tongue, {unit}</source>
        <translation>Feder, {unit}</translation>
    </message>
    <message>
        <source>too few logged days in {names}</source>
        <translation>zu wenige aufgezeichnete Tage im {names}</translation>
    </message>
    <message>
        <source>too many parts to work it out</source>
        <translation>zu viele Teile, um es zu berechnen</translation>
    </message>
    <message>
        <source>too wide if they are solid</source>
        <translation>zu breit, falls sie fest sind</translation>
    </message>
    <message>
        <source>top</source>
        <translation>Platte</translation>
    </message>
    <message>
        <source>top not flat</source>
        <translation>Platte nicht eben</translation>
    </message>
    <message>
        <source>top {name!r}</source>
        <translation>Platte {name!r}</translation>
    </message>
    <message>
        <source>total</source>
        <translation>gesamt</translation>
    </message>
    <message>
        <source>toward the datum edge</source>
        <translation>zur Bezugskante hin</translation>
    </message>
    <message>
        <source>trapped bottom or back</source>
        <translation>eingesperrter Boden oder Rücken</translation>
    </message>
    <message>
        <source>trapped panel</source>
        <translation>eingesperrte Füllung</translation>
    </message>
    <message>
        <source>travel</source>
        <translation>Weg</translation>
    </message>
    <message>
        <source>travel least</source>
        <translation>Weg, kleinster</translation>
    </message>
    <message>
        <source>travel most</source>
        <translation>Weg, größter</translation>
    </message>
    <message>
        <source>travel since fitted, {unit}</source>
        <translation>Weg seit dem Einpassen, {unit}</translation>
    </message>
    <message>
        <source>travel {least:+.1f} to {most:+.1f} mm</source>
        <translation>Weg {least:+.1f} bis {most:+.1f} mm</translation>
    </message>
    <message>
        <source>travels</source>
        <translation>Weg</translation>
    </message>
    <message>
        <source>try a shorter word</source>
        <translation>ein kürzeres Wort versuchen</translation>
    </message>
    <message>
        <source>tung oil</source>
        <translation>Tungöl</translation>
    </message>
    <message>
        <source>turn</source>
        <translation>Drehung</translation>
    </message>
    <message>
        <source>turn of the rings</source>
        <translation>Verdrehung der Jahrringe</translation>
    </message>
    <message>
        <source>turn the grain along the line of the hinges, or frame the panel; or screw one hinge fast and the other in slots along that line</source>
        <translation>die Faser in die Linie der Bänder drehen, oder die Füllung rahmen; oder ein Band fest schrauben und das andere in Langlöchern längs dieser Linie</translation>
    </message>
    <message>
        <source>turn the model as it stands in use, and draw the boards of its top edge to edge</source>
        <translation>stellen Sie das Modell, wie es im Gebrauch steht, und zeichnen Sie die Bretter der Platte Kante an Kante</translation>
    </message>
    <message>
        <source>turn the view, or press 'Look at the end'</source>
        <translation>die Ansicht drehen oder den Knopf zum Ansehen des Endes drücken</translation>
    </message>
    <message>
        <source>twist</source>
        <translation>Verdrehung</translation>
    </message>
    <message>
        <source>twist_per_mm is not finite</source>
        <translation>twist_per_mm ist nicht endlich</translation>
    </message>
    <message>
        <source>twists: {ends}</source>
        <translation>verdreht sich: {ends}</translation>
    </message>
    <message>
        <source>two different boards, 0 to {n}</source>
        <translation>zwei verschiedene Bretter, 0 bis {n}</translation>
    </message>
    <message>
        <source>two fixed lines</source>
        <translation>zwei feste Linien</translation>
    </message>
    <message>
        <source>two or more positions across the width, each greater than the one before</source>
        <translation>zwei oder mehr Stellen quer über die Breite, jede größer als die vorige</translation>
    </message>
    <message>
        <source>two ring points are only {min:g} mm apart</source>
        <translation>zwei Ringpunkte liegen nur {min:g} mm auseinander</translation>
    </message>
    <message>
        <source>two-component polyurethane</source>
        <translation>Zweikomponenten-PU-Lack</translation>
    </message>
    <message>
        <source>uncertainty</source>
        <translation>Unsicherheit</translation>
    </message>
    <message>
        <source>undo, or take the hardware out, first</source>
        <translation>zuerst rückgängig machen oder die Befestigung entfernen</translation>
    </message>
    <message>
        <source>unequal finish</source>
        <translation>ungleiche Oberfläche</translation>
    </message>
    <message>
        <source>uneven cup</source>
        <translation>ungleiche Wölbung</translation>
    </message>
    <message>
        <source>unheated</source>
        <translation>ungeheizt</translation>
    </message>
    <message>
        <source>unheated shop, continental</source>
        <translation>unbeheizte Werkstatt, Festland</translation>
    </message>
    <message>
        <source>unheated shop, maritime</source>
        <translation>unbeheizte Werkstatt, Meeresklima</translation>
    </message>
    <message>
        <source>units</source>
        <translation>Einheiten</translation>
    </message>
    <message>
        <source>unknown</source>
        <translation>unbekannt</translation>
    </message>
    <message>
        <source>unknown while the grain is</source>
        <translation>unbekannt, solange es die Faser ist</translation>
    </message>
    <message>
        <source>unlikely</source>
        <translation>unwahrscheinlich</translation>
    </message>
    <message>
        <source>unpacked, the document is larger than {size}</source>
        <translation>ausgepackt ist das Dokument größer als {size}</translation>
    </message>
    <message>
        <source>unrecognized arguments: {words}</source>
        <translation>unbekannte Angaben: {words}</translation>
    </message>
    <message>
        <source>up and down by turns</source>
        <translation>abwechselnd oben und unten</translation>
    </message>
    <message>
        <source>up to 1 MB</source>
        <translation>bis zu 1 MB</translation>
    </message>
    <message>
        <source>up to 36 500 days</source>
        <translation>bis 36 500 Tage</translation>
    </message>
    <message>
        <source>up to what air at 100 % RH gives, some 25 to 28 %</source>
        <translation>bis zu dem, was Luft mit 100 % rel. Feuchte ergibt, etwa 25 bis 28 %</translation>
    </message>
    <message>
        <source>up to {most:,}</source>
        <translation>bis {most:,}</translation>
    </message>
    <message>
        <source>up to {most:g} MiB</source>
        <translation>bis zu {most:g} MiB</translation>
    </message>
    <message>
        <source>up to {most:g} °C</source>
        <translation>bis zu {most:g} °C</translation>
    </message>
    <message>
        <source>up to {most}</source>
        <translation>bis zu {most}</translation>
    </message>
    <message>
        <source>up to {size}</source>
        <translation>bis zu {size}</translation>
    </message>
    <message>
        <source>up to {tension:.0f} MPa pull across the grain: a split is {chance}</source>
        <translation>bis {tension:.0f} MPa Zug quer zur Faser: ein Riss ist {chance}</translation>
    </message>
    <message>
        <source>up to {warmest_weather:g} °C</source>
        <translation>bis {warmest_weather:g} °C</translation>
    </message>
    <message>
        <source>urethane varnish</source>
        <translation>Urethanlack</translation>
    </message>
    <message>
        <source>usage: </source>
        <translation>Aufruf: </translation>
    </message>
    <message>
        <source>use Rings.at, Rings.angle, Rings.cut, Rings.curve or Rings.through</source>
        <translation>Rings.at, Rings.angle, Rings.cut, Rings.curve oder Rings.through verwenden</translation>
    </message>
    <message>
        <source>use a lock whose bolt shoots {throw:.0f} mm or more, or pack the strike out; a narrower or quarter-sawn stile, or a framed door, keeps the lock where it is</source>
        <translation>ein Schloss mit {throw:.0f} mm Riegelausschluss oder mehr nehmen oder das Schließblech unterlegen; ein schmaleres Rahmenholz oder eines mit stehenden Ringen, oder eine gerahmte Tür, hält das Schloss am Ort</translation>
    </message>
    <message>
        <source>use a near relative, or give coefficients of your own</source>
        <translation>eine nahe Verwandte nehmen, oder eigene Beiwerte angeben</translation>
    </message>
    <message>
        <source>use free_shape: it is exact there</source>
        <translation>free_shape nehmen: Dort ist es genau</translation>
    </message>
    <message>
        <source>use narrower or quarter-sawn stock, lock it with a spline or a loose tenon and accept a fine line, or join the corner with a tenon and shoulder instead</source>
        <translation>schmaleres Holz oder solches mit stehenden Ringen nehmen, die Gehrung mit einer Feder oder einem losen Zapfen sichern und eine feine Linie hinnehmen, oder die Ecke statt dessen mit Zapfen und Brüstung verbinden</translation>
    </message>
    <message>
        <source>use plain where the grain is straight</source>
        <translation>plain nehmen, wo die Faser gerade ist</translation>
    </message>
    <message>
        <source>use quarter-sawn wood or narrower parts, or let the door or front cover the edge</source>
        <translation>Holz mit stehenden Ringen oder schmalere Teile nehmen, oder die Tür oder Front die Kante überdecken lassen</translation>
    </message>
    <message>
        <source>use the spectral year for very thick or tightly closed boards</source>
        <translation>für sehr dicke oder dicht geschlossene Bretter das spektrale Jahr nehmen</translation>
    </message>
    <message>
        <source>value</source>
        <translation>Wert</translation>
    </message>
    <message>
        <source>value_mm is empty</source>
        <translation>value_mm ist leer</translation>
    </message>
    <message>
        <source>vapour permeance</source>
        <translation>Dampfdurchlässigkeit</translation>
    </message>
    <message>
        <source>varnish</source>
        <translation>Klarlack</translation>
    </message>
    <message>
        <source>veneer of {thick:.1f} mm follows what it is glued to (common practice, no source)</source>
        <translation>Furnier von {thick:.1f} mm folgt dem, worauf es geleimt ist (übliche Praxis, keine Quelle)</translation>
    </message>
    <message>
        <source>verdict</source>
        <translation>Urteil</translation>
    </message>
    <message>
        <source>volume</source>
        <translation>Rauminhalt</translation>
    </message>
    <message>
        <source>warp</source>
        <translation>Verzug</translation>
    </message>
    <message>
        <source>washer and machine screw into a threaded insert; both slot directions free; a steel face blocks the top's lower face from breathing</source>
        <translation>Scheibe und Maschinenschraube in eine Gewindemuffe; beide Richtungen des Langlochs frei; eine Stahlfläche lässt die Unterseite der Platte nicht atmen</translation>
    </message>
    <message>
        <source>washer under a pan head; slot = shank + travel both ways + 1 mm; snug, not tight; slot runs across the top's grain</source>
        <translation>Scheibe unter einem Linsenkopf; Langloch = Schaft + Weg nach beiden Seiten + 1 mm; anliegend, nicht fest; das Langloch läuft quer zur Faser der Platte</translation>
    </message>
    <message>
        <source>water from the glue</source>
        <translation>Wasser aus dem Leim</translation>
    </message>
    <message>
        <source>waves</source>
        <translation>wellig</translation>
    </message>
    <message>
        <source>wax</source>
        <translation>Wachs</translation>
    </message>
    <message>
        <source>weather: {source}</source>
        <translation>Wetter: {source}</translation>
    </message>
    <message>
        <source>web frame across the side</source>
        <translation>Zwischenrahmen quer zur Seite</translation>
    </message>
    <message>
        <source>wedge loosens</source>
        <translation>Keil lockert sich</translation>
    </message>
    <message>
        <source>went</source>
        <translation>weggefallen</translation>
    </message>
    <message>
        <source>wet face</source>
        <translation>nasse Seite</translation>
    </message>
    <message>
        <source>wet face {wet_side!r}</source>
        <translation>nasse Seite {wet_side!r}</translation>
    </message>
    <message>
        <source>wettest</source>
        <translation>am feuchtesten</translation>
    </message>
    <message>
        <source>wettest day</source>
        <translation>feuchtester Tag</translation>
    </message>
    <message>
        <source>wettest or driest</source>
        <translation>wettest oder driest</translation>
    </message>
    <message>
        <source>what 'check --format json' or '--format jsonl' wrote</source>
        <translation>was „check --format json“ oder „--format jsonl“ schrieb</translation>
    </message>
    <message>
        <source>what counts</source>
        <translation>was zählt</translation>
    </message>
    <message>
        <source>what everything is told in (default: en)</source>
        <translation>in welcher Sprache alles gesagt wird (ohne Angabe: en)</translation>
    </message>
    <message>
        <source>what is on each face</source>
        <translation>was auf jeder Seite ist</translation>
    </message>
    <message>
        <source>what it is, for the head of the sheet</source>
        <translation>was es ist, für den Kopf des Blatts</translation>
    </message>
    <message>
        <source>what it links to is missing ({status})</source>
        <translation>es fehlt, womit es verknüpft ist ({status})</translation>
    </message>
    <message>
        <source>what stays put is {where}: add one plain screw near it, or the whole top may creep aside</source>
        <translation>am Ort bleibt {where}: in ihrer Nähe eine einfache Schraube zugeben, sonst kann die ganze Platte zur Seite wandern</translation>
    </message>
    <message>
        <source>what stays put is {where}: add one plain screw through {rails} there, or the whole top may creep aside</source>
        <translation>am Ort bleibt {where}: dort durch {rails} eine einfache Schraube zugeben, sonst kann die ganze Platte zur Seite wandern</translation>
    </message>
    <message>
        <source>what stays put is {where}: the plain holes in {rails} hold it there</source>
        <translation>am Ort bleibt {where}: die runden Löcher in {rails} halten sie dort</translation>
    </message>
    <message>
        <source>what the meter shows, of the core; give it once a board or place</source>
        <translation>was das Messgerät zeigt, im Kern; je Brett oder Stelle einmal angeben</translation>
    </message>
    <message>
        <source>what was read; a hollow is below 0</source>
        <translation>was abgelesen wurde; hohl ist unter 0</translation>
    </message>
    <message>
        <source>what was said of the rings cannot be used: {error}</source>
        <translation>was zu den Jahrringen gesagt ist, ist nicht zu gebrauchen: {error}</translation>
    </message>
    <message>
        <source>where it lies, or what its back is fixed to</source>
        <translation>wo es liegt, oder woran seine Rückseite fest ist</translation>
    </message>
    <message>
        <source>where it will stand, for the head</source>
        <translation>wo es stehen wird, für den Kopf</translation>
    </message>
    <message>
        <source>where its rings lie is not said: shown without its cup</source>
        <translation>wo seine Ringe liegen, ist nicht gesagt: ohne Wölbung gezeigt</translation>
    </message>
    <message>
        <source>where its shoulder meets {names} is not found, its shape is not known: lengths count to the tip let into it</source>
        <translation>wo ihre Brüstung an {names} stößt, ist nicht zu finden, ihre Form ist nicht bekannt: Längen zählen bis zur Spitze, die dort eingelassen ist</translation>
    </message>
    <message>
        <source>where the parts carry each other was not worked out for {count} parts (up to {most} it is): gaps count from the middle of each part, and parts held at two lines and the lines of hinges and locks are not looked for</source>
        <translation>wohin die Teile einander tragen, wurde für {count} Teile nicht berechnet (bis {most} wird es): Fugen zählen von der Mitte jedes Teils, und Teile, die an zwei Linien gehalten sind, sowie Linien von Bändern und Schlössern werden nicht gesucht</translation>
    </message>
    <message>
        <source>where the pith was is not said of {names}: followed once with the rings that cup it least and once with those that cup it most, and the worse counts</source>
        <translation>wo das Mark lag, ist nicht gesagt von {names}: einmal mit den Ringen der geringsten und einmal mit denen der stärksten Wölbung verfolgt, und das Schlimmere zählt</translation>
    </message>
    <message>
        <source>where the rings lie in the board</source>
        <translation>wo die Jahrringe im Brett liegen</translation>
    </message>
    <message>
        <source>whether it splits cannot be foreseen, its strength across the grain is not known</source>
        <translation>ob sie reißt, ist nicht vorherzusehen, ihre Festigkeit quer zur Faser ist nicht bekannt</translation>
    </message>
    <message>
        <source>which columns of a logger's file are date, time, temperature and humidity: numbers (1 = first) or headings, such as temperature=3,humidity=4</source>
        <translation>welche Spalten der Datei eines Loggers Datum (date), Uhrzeit (time), Temperatur (temperature) und Feuchte (humidity) sind: Nummern (1 = erste) oder Überschriften, etwa temperature=3,humidity=4</translation>
    </message>
    <message>
        <source>which face was wet (default show)</source>
        <translation>welche Seite nass war (ohne Angabe: show)</translation>
    </message>
    <message>
        <source>wide free board</source>
        <translation>breites freies Brett</translation>
    </message>
    <message>
        <source>wide tenon</source>
        <translation>breiter Zapfen</translation>
    </message>
    <message>
        <source>wider than practice allows</source>
        <translation>breiter, als die Praxis zulässt</translation>
    </message>
    <message>
        <source>width</source>
        <translation>Breite</translation>
    </message>
    <message>
        <source>width across the grain, {unit}</source>
        <translation>Breite quer zur Faser, {unit}</translation>
    </message>
    <message>
        <source>width as drawn</source>
        <translation>Breite wie gezeichnet</translation>
    </message>
    <message>
        <source>width now</source>
        <translation>Breite jetzt</translation>
    </message>
    <message>
        <source>width strain</source>
        <translation>Dehnung der Breite</translation>
    </message>
    <message>
        <source>width then</source>
        <translation>Breite damals</translation>
    </message>
    <message>
        <source>width today {size}</source>
        <translation>Breite heute {size}</translation>
    </message>
    <message>
        <source>width, thickness</source>
        <translation>Breite, Dicke</translation>
    </message>
    <message>
        <source>wish</source>
        <translation>Wunsch</translation>
    </message>
    <message>
        <source>wished</source>
        <translation>gewünscht</translation>
    </message>
    <message>
        <source>wishes</source>
        <translation>Wünsche</translation>
    </message>
    <message>
        <source>wishes that can be met together</source>
        <translation>Wünsche, die zusammen erfüllbar sind</translation>
    </message>
    <message>
        <source>with a model: the part that warped</source>
        <translation>mit einem Modell: das Teil, das sich verzogen hat</translation>
    </message>
    <message>
        <source>with a place: {meaning}</source>
        <translation>bei einem Ort: {meaning}</translation>
    </message>
    <message>
        <source>with commas between cells a decimal comma cuts a number in two: use semicolons or points</source>
        <translation>mit Kommas zwischen den Zellen zerteilt ein Dezimalkomma die Zahl: Semikolons oder Punkte verwenden</translation>
    </message>
    <message>
        <source>with nothing under it</source>
        <translation>mit nichts darunter</translation>
    </message>
    <message>
        <source>with the {count} fasteners drawn under it</source>
        <translation>mit den {count} darunter gezeichneten Befestigungen</translation>
    </message>
    <message>
        <source>withdrawal</source>
        <translation>Ausziehen</translation>
    </message>
    <message>
        <source>withdrawal of the screw from the top</source>
        <translation>Ausziehen der Schraube aus der Platte</translation>
    </message>
    <message>
        <source>within ±{width:g} mm</source>
        <translation>innerhalb von ±{width:g} mm</translation>
    </message>
    <message>
        <source>wood</source>
        <translation>Holz</translation>
    </message>
    <message>
        <source>wood at {wood:.1f} % by meter</source>
        <translation>Holz bei {wood:.1f} %, gemessen</translation>
    </message>
    <message>
        <source>wood or material</source>
        <translation>Holz oder Werkstoff</translation>
    </message>
    <message>
        <source>wood tables</source>
        <translation>Holztabellen</translation>
    </message>
    <message>
        <source>wood temperature</source>
        <translation>Holztemperatur</translation>
    </message>
    <message>
        <source>wood?</source>
        <translation>Holz?</translation>
    </message>
    <message>
        <source>wooden button</source>
        <translation>Nutklotz aus Holz</translation>
    </message>
    <message>
        <source>woods</source>
        <translation>Hölzer</translation>
    </message>
    <message>
        <source>woods only</source>
        <translation>nur Hölzer</translation>
    </message>
    <message>
        <source>work everything out anew, and keep nothing</source>
        <translation>alles neu berechnen und nichts aufbewahren</translation>
    </message>
    <message>
        <source>worst</source>
        <translation>schlimmstens</translation>
    </message>
    <message>
        <source>would be enough to keep it flat: {left}</source>
        <translation>genügen, sie eben zu halten: {left}</translation>
    </message>
    <message>
        <source>would do nothing, and nothing is needed: {left}</source>
        <translation>nichts bewirken, und nötig ist auch nichts: {left}</translation>
    </message>
    <message>
        <source>would do nothing: {left}</source>
        <translation>nichts bewirken: {left}</translation>
    </message>
    <message>
        <source>would not be enough: {left}</source>
        <translation>nicht genügen: {left}</translation>
    </message>
    <message>
        <source>wrapped</source>
        <translation>eingepackt</translation>
    </message>
    <message>
        <source>write 40 for 40 %, not 0.40</source>
        <translation>40 für 40 % schreiben, nicht 0.40</translation>
    </message>
    <message>
        <source>write a drilling template for the fasteners of a top, at full size</source>
        <translation>eine Bohrschablone für die Befestigungen einer Platte in wahrer Größe schreiben</translation>
    </message>
    <message>
        <source>write an object, such as {example}</source>
        <translation>ein Objekt schreiben, etwa {example}</translation>
    </message>
    <message>
        <source>write for example 'grain x'</source>
        <translation>zum Beispiel „grain x“ schreiben</translation>
    </message>
    <message>
        <source>write for example 'lot 7'</source>
        <translation>zum Beispiel „lot 7“ schreiben</translation>
    </message>
    <message>
        <source>write for instance '{word} 2'</source>
        <translation>zum Beispiel „{word} 2“ schreiben</translation>
    </message>
    <message>
        <source>write it anew with --write-known</source>
        <translation>sie mit --write-known neu schreiben</translation>
    </message>
    <message>
        <source>write it with --write-known</source>
        <translation>sie mit --write-known schreiben</translation>
    </message>
    <message>
        <source>write percent, such as 9 for 9 %</source>
        <translation>Prozent schreiben, etwa 9 für 9 %</translation>
    </message>
    <message>
        <source>write the answer into a copy</source>
        <translation>die Antwort in eine Kopie schreiben</translation>
    </message>
    <message>
        <source>write the file with --write-known first, or check its name</source>
        <translation>die Datei erst mit --write-known schreiben, oder ihren Namen prüfen</translation>
    </message>
    <message>
        <source>write the heading in the first line</source>
        <translation>den Kopf in die erste Zeile schreiben</translation>
    </message>
    <message>
        <source>write the movement sheet for the bench, or the page for the client</source>
        <translation>das Bewegungsblatt für die Werkbank oder die Seite für den Kunden schreiben</translation>
    </message>
    <message>
        <source>write the piece with the slots of a top cut, as STEP</source>
        <translation>das Stück mit den geschnittenen Langlöchern einer Platte als STEP schreiben</translation>
    </message>
    <message>
        <source>write to a file, whole or not at all</source>
        <translation>in eine Datei schreiben, ganz oder gar nicht</translation>
    </message>
    <message>
        <source>write what was read, in mm</source>
        <translation>schreiben, was gemessen wurde, in mm</translation>
    </message>
    <message>
        <source>write {rh:g} if that is meant</source>
        <translation>{rh:g} schreiben, wenn das gemeint ist</translation>
    </message>
    <message>
        <source>write {temperature:.0f} if °F were meant</source>
        <translation>{temperature:.0f} schreiben, wenn °F gemeint waren</translation>
    </message>
    <message>
        <source>write {what}</source>
        <translation>{what} schreiben</translation>
    </message>
    <message>
        <source>x, y, z, -x, -y, -z or three numbers, in the object's own axes</source>
        <translation>x, y, z, -x, -y, -z oder drei Zahlen, in den eigenen Achsen des Objekts</translation>
    </message>
    <message>
        <source>year</source>
        <translation>Jahr</translation>
    </message>
    <message>
        <source>year of air</source>
        <translation>Jahresgang</translation>
    </message>
    <message>
        <source>year {name!r}</source>
        <translation>Jahr {name!r}</translation>
    </message>
    <message>
        <source>year {name!r}, {month}</source>
        <translation>Jahr {name!r}, {month}</translation>
    </message>
    <message>
        <source>yes</source>
        <translation>ja</translation>
    </message>
    <message>
        <source>you may not read it</source>
        <translation>sie darf nicht gelesen werden</translation>
    </message>
    <message>
        <source>you may not write there</source>
        <translation>dort darf nicht geschrieben werden</translation>
    </message>
    <message>
        <source>{across!r} is not a direction of a section</source>
        <translation>{across!r} ist keine Richtung eines Querschnitts</translation>
    </message>
    <message>
        <source>{allowed:g} to {allowed2:g} {unit}</source>
        <translation>{allowed:g} bis {allowed2:g} {unit}</translation>
    </message>
    <message>
        <source>{allowed:g} to {allowed2:g}{unit}</source>
        <translation>{allowed:g} bis {allowed2:g}{unit}</translation>
    </message>
    <message>
        <source>{along!r} or {across!r} the top's grain</source>
        <translation>{along!r} oder {across!r} zur Faser der Platte</translation>
    </message>
    <message>
        <source>{ask}, so the longest edge does not tell; tag the grain</source>
        <translation>{ask}, darum sagt die längste Kante nichts; die Faser angeben</translation>
    </message>
    <message>
        <source>{axis} edge</source>
        <translation>Kante {axis}</translation>
    </message>
    <message>
        <source>{axis} end</source>
        <translation>Ende {axis}</translation>
    </message>
    <message>
        <source>{backward} readings are older than the one before; the first is {spoken}</source>
        <translation>{backward} Messwerte sind älter als der davor; der erste ist {spoken}</translation>
    </message>
    <message>
        <source>{bar} is {breadth:.0f} mm broad: a slot {length:.1f} mm long with room for its washer leaves {left:.1f} mm beside it, so it is not cut</source>
        <translation>{bar} ist {breadth:.0f} mm breit: Ein Langloch von {length:.1f} mm mit Platz für seine Scheibe lässt daneben {left:.1f} mm, darum wird es nicht geschnitten</translation>
    </message>
    <message>
        <source>{basis}: {factor:.2f} x the table's, likely within {sd:.0f} %</source>
        <translation>{basis}: {factor:.2f} x Tabellenwert, wahrscheinlich auf {sd:.0f} % genau</translation>
    </message>
    <message>
        <source>{basis}; monthly means of daily values</source>
        <translation>{basis}; Monatsmittel der Tageswerte</translation>
    </message>
    <message>
        <source>{below_freezing!r} is not a surface of saturation</source>
        <translation>{below_freezing!r} ist keine Fläche der Sättigung</translation>
    </message>
    <message>
        <source>{case}: nothing holds it, {flat:.1f} mm out of flat</source>
        <translation>{case}: nichts hält sie, um {flat:.1f} mm uneben</translation>
    </message>
    <message>
        <source>{case}: {flat:.1f} mm out of flat</source>
        <translation>{case}: um {flat:.1f} mm uneben</translation>
    </message>
    <message>
        <source>{case}: {flat:.2f} mm out of flat, wished {wished:.2f} mm</source>
        <translation>{case}: um {flat:.2f} mm uneben, gewünscht {wished:.2f} mm</translation>
    </message>
    <message>
        <source>{cell!r} is not a number</source>
        <translation>{cell!r} ist keine Zahl</translation>
    </message>
    <message>
        <source>{cell!r} stands where {month} should</source>
        <translation>{cell!r} steht, wo {month} stehen sollte</translation>
    </message>
    <message>
        <source>{cells} cells</source>
        <translation>{cells} Zellen</translation>
    </message>
    <message>
        <source>{change:+.1f} % since it was fixed, which its back may not follow</source>
        <translation>{change:+.1f} %, seit es befestigt wurde; sein Rücken folgt dem vielleicht nicht</translation>
    </message>
    <message>
        <source>{change:+.1f} % since it was flat; a board of {width:.0f} mm that holds its centre cannot stay free of stress</source>
        <translation>{change:+.1f} %, seit es eben war; ein Brett von {width:.0f} mm mit dem Mark darin kann nicht spannungsfrei bleiben</translation>
    </message>
    <message>
        <source>{change:+.1f} % since it was flat; one board, heart side {heart}</source>
        <translation>{change:+.1f} %, seit es eben war; ein Brett, Kernseite {heart}</translation>
    </message>
    <message>
        <source>{change:+.1f} % since it was flat; {boards} boards, heart side {heart}</source>
        <translation>{change:+.1f} %, seit es eben war; {boards} Bretter, Kernseite {heart}</translation>
    </message>
    <message>
        <source>{coats} coats carried on from {nearest} and {nearest2} published</source>
        <translation>{coats} Schichten aus den veröffentlichten {nearest} und {nearest2} fortgesetzt</translation>
    </message>
    <message>
        <source>{command} cannot be started: {error}</source>
        <translation>{command} lässt sich nicht starten: {error}</translation>
    </message>
    <message>
        <source>{common} of {count} part names are in both reports: are these two different models?</source>
        <translation>{common} von {count} Namen der Teile stehen in beiden Berichten: Sind das zwei verschiedene Modelle?</translation>
    </message>
    <message>
        <source>{count} as kept from before</source>
        <translation>{count} wie zuvor behalten</translation>
    </message>
    <message>
        <source>{count} battens of {size}, slotted but for the centre, would leave {flat:.1f} mm out of flat instead of {worst:.1f} mm</source>
        <translation>mit {count} Querleisten von {size}, bis auf die Mitte in Langlöchern, bliebe sie um {flat:.1f} mm statt {worst:.1f} mm uneben</translation>
    </message>
    <message>
        <source>{count} boards edge to edge</source>
        <translation>{count} Bretter Kante an Kante</translation>
    </message>
    <message>
        <source>{count} boards lie heart side up</source>
        <translation>{count} Bretter liegen mit der Kernseite oben</translation>
    </message>
    <message>
        <source>{count} cells under a heading of {count2}</source>
        <translation>{count} Zellen unter einem Kopf von {count2}</translation>
    </message>
    <message>
        <source>{count} cells under {count2} headings: commas part the cells and the decimals alike</source>
        <translation>{count} Zellen unter {count2} Überschriften: Kommas trennen die Zellen und die Dezimalen gleichermaßen</translation>
    </message>
    <message>
        <source>{count} cells where {needed} are needed: {strip!r}</source>
        <translation>{count} Zellen, wo {needed} nötig sind: {strip!r}</translation>
    </message>
    <message>
        <source>{count} columns could be the {what}</source>
        <translation>{count} Spalten könnten es sein: {what}</translation>
    </message>
    <message>
        <source>{count} could not be checked</source>
        <translation>{count} nicht geprüft</translation>
    </message>
    <message>
        <source>{count} faces that meet were not followed: what they press is not told</source>
        <translation>{count} Flächen, die sich treffen, wurden nicht verfolgt: Was sie drücken, ist nicht gesagt</translation>
    </message>
    <message>
        <source>{count} findings</source>
        <translation>{count} Befunde</translation>
    </message>
    <message>
        <source>{count} findings are too slight to fail on.</source>
        <translation>{count} Befunde sind zu gering, um daran zu scheitern.</translation>
    </message>
    <message>
        <source>{count} heart side down</source>
        <translation>{count} mit der Kernseite unten</translation>
    </message>
    <message>
        <source>{count} hold</source>
        <translation>{count} halten</translation>
    </message>
    <message>
        <source>{count} models, {told}</source>
        <translation>{count} Modelle, {told}</translation>
    </message>
    <message>
        <source>{count} models: {told}.</source>
        <translation>{count} Modelle: {told}.</translation>
    </message>
    <message>
        <source>{count} monthly {unit} given</source>
        <translation>{count} Monatswerte in {unit} angegeben</translation>
    </message>
    <message>
        <source>{count} numbers</source>
        <translation>{count} Zahlen</translation>
    </message>
    <message>
        <source>{count} of {size} readings have a {what}</source>
        <translation>{count} von {size} Messwerten: {what}</translation>
    </message>
    <message>
        <source>{count} parts are called {part!r}</source>
        <translation>{count} Teile heißen {part!r}</translation>
    </message>
    <message>
        <source>{count} parts have that name</source>
        <translation>{count} Teile heißen so</translation>
    </message>
    <message>
        <source>{count} pegs bind; at the one that binds most, {at:.0f} mm from the middle of the top, it moves {travels:.1f} mm and has {room:.1f} mm of room: the top splits between its pegs</source>
        <translation>{count} Holznägel klemmen; beim am stärksten klemmenden, {at:.0f} mm von der Plattenmitte, bewegt sie sich {travels:.1f} mm und hat {room:.1f} mm Spiel: Die Platte reißt zwischen ihren Holznägeln</translation>
    </message>
    <message>
        <source>{count} readings, mean {mean:.1f} %</source>
        <translation>{count} Werte, im Mittel {mean:.1f} %</translation>
    </message>
    <message>
        <source>{count} samples between {left:g} and {right:g} mm</source>
        <translation>{count} Werte zwischen {left:g} und {right:g} mm</translation>
    </message>
    <message>
        <source>{count} sheets of {paper}</source>
        <translation>{count} Blättern {paper}</translation>
    </message>
    <message>
        <source>{count} stiffnesses for {n} boards</source>
        <translation>{count} Steifigkeiten für {n} Bretter</translation>
    </message>
    <message>
        <source>{count} tenons, the widest {own:.0f} mm, reach over {width:.0f} mm of grain, which moves {least:+.1f} to {most:+.1f} mm against what they are let into. If all of them are glued, the wood between them splits (up to {some:.0f} to {limit:.0f} mm may be glued in one piece; common practice, no source)</source>
        <translation>{count} Zapfen, der breiteste {own:.0f} mm, reichen über {width:.0f} mm quer zur Faser, die sich gegen das, worin sie sitzen, {least:+.1f} bis {most:+.1f} mm bewegt. Sind alle geleimt, reißt das Holz zwischen ihnen (bis {some:.0f} bis {limit:.0f} mm darf in einem Stück geleimt sein; übliche Praxis, keine Quelle)</translation>
    </message>
    <message>
        <source>{count} values in {name} for {boards} boards</source>
        <translation>{count} Werte in {name} für {boards} Bretter</translation>
    </message>
    <message>
        <source>{count} with findings</source>
        <translation>{count} mit Befunden</translation>
    </message>
    <message>
        <source>{cover} left in the groove</source>
        <translation>{cover} bleiben in der Nut</translation>
    </message>
    <message>
        <source>{day} {month} {year}</source>
        <translation>{day}. {month} {year}</translation>
    </message>
    <message>
        <source>{degrees:g} is no temperature of a room</source>
        <translation>{degrees:g} ist keine Temperatur eines Raums</translation>
    </message>
    <message>
        <source>{direction!r} is not a direction of {name}</source>
        <translation>{direction!r} ist keine Richtung von {name}</translation>
    </message>
    <message>
        <source>{done} of {count} models</source>
        <translation>{done} von {count} Modellen</translation>
    </message>
    <message>
        <source>{driest:.1f} % on its driest day, {wettest:.1f} % on its wettest, {today:.1f} % today.</source>
        <translation>{driest:.1f} % an ihrem trockensten Tag, {wettest:.1f} % an ihrem feuchtesten, {today:.1f} % heute.</translation>
    </message>
    <message>
        <source>{edge} (far edge)</source>
        <translation>{edge} (ferne Kante)</translation>
    </message>
    <message>
        <source>{edge} from the edge</source>
        <translation>{edge} von der Kante</translation>
    </message>
    <message>
        <source>{end} (the shoulder)</source>
        <translation>{end} (Brüstung)</translation>
    </message>
    <message>
        <source>{end} (the tip let into it: its shoulder is not found)</source>
        <translation>{end} (Spitze, die dort eingelassen ist: die Brüstung ist nicht zu finden)</translation>
    </message>
    <message>
        <source>{end} from the end</source>
        <translation>{end} vom Ende</translation>
    </message>
    <message>
        <source>{end} is drawn with its tongue or tenons already: pegs and mortises are left as they are drawn</source>
        <translation>{end} ist schon mit Feder oder Zapfen gezeichnet: Holznägel und Zapfenlöcher bleiben wie gezeichnet</translation>
    </message>
    <message>
        <source>{end}: a top of {thick:.0f} mm leaves no room for a peg that stays below the show face; no peg</source>
        <translation>{end}: Eine Platte von {thick:.0f} mm lässt keinen Platz für einen Holznagel, der unter der Sichtseite bleibt; kein Holznagel</translation>
    </message>
    <message>
        <source>{face} face wet for {hours:g} h</source>
        <translation>Seite „{face}“ {hours:g} h nass</translation>
    </message>
    <message>
        <source>{fact} inferred, {reason}</source>
        <translation>{fact} abgeleitet, {reason}</translation>
    </message>
    <message>
        <source>{file} in it carries a DOCTYPE or ENTITY, which no FreeCAD document does</source>
        <translation>{file} darin enthält ein DOCTYPE oder ENTITY, was kein FreeCAD-Dokument tut</translation>
    </message>
    <message>
        <source>{file} in it carries a file whose name '{name}' leads outside the document</source>
        <translation>{file} darin führt eine Datei mit, deren Name „{name}“ aus dem Dokument hinausführt</translation>
    </message>
    <message>
        <source>{file} in it has more than {most} elements</source>
        <translation>{file} darin hat mehr als {most} Elemente</translation>
    </message>
    <message>
        <source>{file} in it is damaged ({error})</source>
        <translation>{file} darin ist beschädigt ({error})</translation>
    </message>
    <message>
        <source>{file} in it is larger than {size}</source>
        <translation>{file} darin ist größer als {size}</translation>
    </message>
    <message>
        <source>{file} in it is nested more than {depth} deep</source>
        <translation>{file} darin ist mehr als {depth}-fach verschachtelt</translation>
    </message>
    <message>
        <source>{file} in it starts with &lt;{tag}&gt; instead of &lt;Document&gt;</source>
        <translation>{file} darin beginnt mit &lt;{tag}&gt; statt mit &lt;Document&gt;</translation>
    </message>
    <message>
        <source>{finish}, 1 coat</source>
        <translation>{finish}, 1 Schicht</translation>
    </message>
    <message>
        <source>{finish}, {count} coats</source>
        <translation>{finish}, {count} Schichten</translation>
    </message>
    <message>
        <source>{finish}: up to {mc:+.1f} % between the faces on the way from {start:.1f} to {air:.1f} %</source>
        <translation>{finish}: bis zu {mc:+.1f} % zwischen den Seiten auf dem Weg von {start:.1f} nach {air:.1f} %</translation>
    </message>
    <message>
        <source>{first} and {count} more</source>
        <translation>{first} und {count} weitere</translation>
    </message>
    <message>
        <source>{first} to {last}</source>
        <translation>{first} bis {last}</translation>
    </message>
    <message>
        <source>{flat:.1f} mm out of flat (wished {wish:g} mm, with none {loose:.1f} mm)</source>
        <translation>um {flat:.1f} mm uneben (gewünscht {wish:g} mm, ganz ohne {loose:.1f} mm)</translation>
    </message>
    <message>
        <source>{flat:.1f} mm out of flat at most</source>
        <translation>höchstens um {flat:.1f} mm uneben</translation>
    </message>
    <message>
        <source>{flat:g} °C outdoors</source>
        <translation>{flat:g} °C im Freien</translation>
    </message>
    <message>
        <source>{folder}: the demo cannot be written there ({reason}). To do: name another folder with --output.</source>
        <translation>{folder}: Die Vorführung lässt sich dort nicht schreiben ({reason}). Zu tun: mit --output einen anderen Ordner nennen.</translation>
    </message>
    <message>
        <source>{folder}: {named} are there already.</source>
        <translation>{folder}: {named} gibt es dort schon.</translation>
    </message>
    <message>
        <source>{folder}: {named} is there already.</source>
        <translation>{folder}: {named} gibt es dort schon.</translation>
    </message>
    <message>
        <source>{given} is no part</source>
        <translation>{given} ist kein Teil</translation>
    </message>
    <message>
        <source>{head}. Datum edge: {edge}</source>
        <translation>{head}. Bezugskante: {edge}</translation>
    </message>
    <message>
        <source>{head}: never glued. Screws {screw} {unit} thick. Places + toward {other}; the screw today from the slot's end toward {edge}</source>
        <translation>{head}: nie geleimt. Schrauben {screw} {unit} dick. Orte + zu {other} hin; die Schraube heute vom Ende des Langlochs zu {edge} hin</translation>
    </message>
    <message>
        <source>{height:.0f} mm high across its grain, it grows {grows:.1f} mm, and the opening does not grow with it: nothing is left of the {drawn:.1f} mm above it, and {missing:.1f} mm are missing</source>
        <translation>quer zur Faser {height:.0f} mm hoch, wächst sie um {grows:.1f} mm, und die Öffnung wächst nicht mit: Von den {drawn:.1f} mm darüber bleibt nichts, und {missing:.1f} mm fehlen</translation>
    </message>
    <message>
        <source>{height:.0f} mm high across its grain, it grows {grows:.1f} mm, and the opening does not grow with it: of the {drawn:.1f} mm above it {left:.1f} mm are left, and it binds</source>
        <translation>quer zur Faser {height:.0f} mm hoch, wächst sie um {grows:.1f} mm, und die Öffnung wächst nicht mit: Von den {drawn:.1f} mm darüber bleiben {left:.1f} mm, und sie klemmt</translation>
    </message>
    <message>
        <source>{host} does not start (code {code}):
{chatter}</source>
        <translation>{host} startet nicht (Code {code}):
{chatter}</translation>
    </message>
    <message>
        <source>{host} is FreeCAD {version}; Heartside needs {oldest} or newer</source>
        <translation>{host} ist FreeCAD {version}; Heartside braucht {oldest} oder neuer</translation>
    </message>
    <message>
        <source>{how} It was not tried again</source>
        <translation>{how} Es wurde nicht noch einmal versucht</translation>
    </message>
    <message>
        <source>{how} the top goes {off:.1f} mm out of flat{also}</source>
        <translation>{how} weicht die Platte {off:.1f} mm von der Ebene ab{also}</translation>
    </message>
    <message>
        <source>{idle} of {count} anchors idle</source>
        <translation>{idle} von {count} Befestigungen ohne Arbeit</translation>
    </message>
    <message>
        <source>{inner} has its tongue in {outer} and the grains run the same way</source>
        <translation>{inner} greift mit der Feder in {outer}, mit gleicher Faserrichtung</translation>
    </message>
    <message>
        <source>{inner} is a thin panel in grooves at its edges too, and is left free at its end in {outer} as there</source>
        <translation>{inner} ist eine dünne Füllung, auch an den Kanten in Nuten, und bleibt mit dem Ende in {outer} ebenso frei wie dort</translation>
    </message>
    <message>
        <source>{inner} is drawn with {slack:.2g} mm of play in a groove of {outer}</source>
        <translation>{inner} ist mit {slack:.2g} mm Spiel in einer Nut von {outer} gezeichnet</translation>
    </message>
    <message>
        <source>{inner} is let into a mortise of {outer}, as a tenon that is glued</source>
        <translation>{inner} sitzt in einem Zapfenloch von {outer}, wie ein geleimter Zapfen</translation>
    </message>
    <message>
        <source>{inner} is let into {outer} across its grain, without play: whether it is glued is not drawn</source>
        <translation>{inner} ist quer zur Faser in {outer} eingelassen, ohne Spiel: ob geleimt, ist nicht gezeichnet</translation>
    </message>
    <message>
        <source>{inner} is let into {outer} by its end, without play: whether it is glued is not drawn</source>
        <translation>{inner} ist mit dem Ende in {outer} eingelassen, ohne Spiel: ob geleimt, ist nicht gezeichnet</translation>
    </message>
    <message>
        <source>{inner} is let into {outer}, but not by its end</source>
        <translation>{inner} ist in {outer} eingelassen, aber nicht mit dem Ende</translation>
    </message>
    <message>
        <source>{inner} is thin and stands in a groove of {outer}, as a panel that is left free</source>
        <translation>{inner} ist dünn und steht in einer Nut von {outer}, wie eine Füllung, die frei bleibt</translation>
    </message>
    <message>
        <source>{inner} runs in a dovetailed groove of {outer}</source>
        <translation>{inner} läuft in einer Gratnut von {outer}</translation>
    </message>
    <message>
        <source>{item!r} names no column; write {names}, each with = and its number (1 = first) or heading, such as temperature=3,humidity=4</source>
        <translation>{item!r} nennt keine Spalte; {names} schreiben, jedes mit = und seiner Nummer (1 = erste) oder Überschrift, etwa temperature=3,humidity=4</translation>
    </message>
    <message>
        <source>{kept:.1f} mm of shrinkage would be kept, up to {tension:.0f} MPa across the grain</source>
        <translation>{kept:.1f} mm Schwinden wären verhindert, bis zu {tension:.0f} MPa quer zur Faser</translation>
    </message>
    <message>
        <source>{kept:.1f} mm of swelling would be kept</source>
        <translation>{kept:.1f} mm Quellen wären verhindert</translation>
    </message>
    <message>
        <source>{kind!r} is not a kind</source>
        <translation>{kind!r} ist keine Art</translation>
    </message>
    <message>
        <source>{kind} (one point)</source>
        <translation>{kind} (ein Punkt)</translation>
    </message>
    <message>
        <source>{kind} on {rail} at {at:.0f} mm: pulled with {pull:.0f} N, allowed {allowed:.0f} N</source>
        <translation>{kind} an {rail} bei {at:.0f} mm: Zug {pull:.0f} N, zulässig {allowed:.0f} N</translation>
    </message>
    <message>
        <source>{kind} under {top}</source>
        <translation>{kind} unter {top}</translation>
    </message>
    <message>
        <source>{kind}: no rail can take it</source>
        <translation>{kind}: Keine Zarge kann das aufnehmen</translation>
    </message>
    <message>
        <source>{kind}: {name!r} ends {ends}, {name2!r} begins {begins}</source>
        <translation>{kind}: {name!r} endet {ends}, {name2!r} beginnt {begins}</translation>
    </message>
    <message>
        <source>{kind}: {size} more</source>
        <translation>{kind}: {size} weitere</translation>
    </message>
    <message>
        <source>{label}: it did not say its form, and is taken for the first</source>
        <translation>{label}: Die Form fehlte, angenommen wird die erste</translation>
    </message>
    <message>
        <source>{label}: it was not brought up to this release ({why})</source>
        <translation>{label}: ließ sich nicht auf diese Ausgabe bringen ({why})</translation>
    </message>
    <message>
        <source>{lacks:.1f} mm toward the edge at {part}</source>
        <translation>{lacks:.1f} mm zur Kante hin bei {part}</translation>
    </message>
    <message>
        <source>{lacks:.1f} mm toward the middle at {part}</source>
        <translation>{lacks:.1f} mm zur Mitte hin bei {part}</translation>
    </message>
    <message>
        <source>{least:+.1f} to {most:+.1f} mm</source>
        <translation>{least:+.1f} bis {most:+.1f} mm</translation>
    </message>
    <message>
        <source>{least:+.1f} to {most:+.1f} mm at each edge</source>
        <translation>{least:+.1f} bis {most:+.1f} mm an jeder Kante</translation>
    </message>
    <message>
        <source>{least:+.2f} to {most:+.2f} mm on each face</source>
        <translation>{least:+.2f} bis {most:+.2f} mm auf jeder Fläche</translation>
    </message>
    <message>
        <source>{least:.1f} to {most:.1f}</source>
        <translation>{least:.1f} bis {most:.1f}</translation>
    </message>
    <message>
        <source>{least:.1f} {dry} to {most:.1f} {wet}</source>
        <translation>{least:.1f} {dry} bis {most:.1f} {wet}</translation>
    </message>
    <message>
        <source>{least:g} to {most:g} mm</source>
        <translation>{least:g} bis {most:g} mm</translation>
    </message>
    <message>
        <source>{least_groove:g} mm or more</source>
        <translation>{least_groove:g} mm oder mehr</translation>
    </message>
    <message>
        <source>{least} to 1000000</source>
        <translation>{least} bis 1000000</translation>
    </message>
    <message>
        <source>{least} to {most}</source>
        <translation>{least} bis {most}</translation>
    </message>
    <message>
        <source>{left:.1f} mm</source>
        <translation>{left:.1f} mm</translation>
    </message>
    <message>
        <source>{left} of {drawn} left</source>
        <translation>noch {left} von {drawn}</translation>
    </message>
    <message>
        <source>{length:.4g} mm against {width:.4g} mm</source>
        <translation>{length:.4g} mm gegen {width:.4g} mm</translation>
    </message>
    <message>
        <source>{length} (without tongues and tenons)</source>
        <translation>{length} (ohne Federn und Zapfen)</translation>
    </message>
    <message>
        <source>{lines:g} to {lines2:g} mm</source>
        <translation>{lines:g} bis {lines2:g} mm</translation>
    </message>
    <message>
        <source>{line}, if it is solid</source>
        <translation>{line}, wenn es fest ist</translation>
    </message>
    <message>
        <source>{lot}: learned from {n} measurements: moves {factor:.2f} x the table's figure, likely {least:.2f} to {most:.2f}, nearly certain {low:.2f} to {high:.2f}; doubt {narrowed:.0f} % narrower</source>
        <translation>{lot}: aus {n} Messungen gelernt: arbeitet das {factor:.2f}-fache des Tabellenwerts, wahrscheinlich {least:.2f} bis {most:.2f}, fast sicher {low:.2f} bis {high:.2f}; um {narrowed:.0f} % weniger unsicher</translation>
    </message>
    <message>
        <source>{lot}: measurement {n} fits no lot of its wood ({read:+.1f} mm against {expected:+.1f}): left out. Suspect the reading, the species, or something that holds the part</source>
        <translation>{lot}: Messung {n} passt zu keiner Charge dieses Holzes ({read:+.1f} mm statt {expected:+.1f}): weggelassen. Ablesung und Holzart prüfen, und ob etwas das Teil festhält</translation>
    </message>
    <message>
        <source>{lot}: nothing learned yet, and no tool would learn it this year: the moisture would have to differ by {change:.1f} % from when it was fitted; it differs most in {month}, by {most:.1f} %</source>
        <translation>{lot}: noch nichts gelernt, und mit keinem Messzeug ist es in diesem Jahr zu lernen: Die Feuchte müsste um {change:.1f} % von der beim Einpassen abweichen; am meisten weicht sie im {month} ab, um {most:.1f} %</translation>
    </message>
    <message>
        <source>{lot}: nothing learned yet, and one such reading cannot teach it this year: the moisture would have to differ by {change:.1f} % from when it was fitted; it differs most in {month}, by {most:.1f} %. {count} readings then would do, each with the moisture metered anew and a tool exact to {tool:g} mm (--tool {tool:g})</source>
        <translation>{lot}: noch nichts gelernt, und mit einer solchen Messung ist es in diesem Jahr nicht zu lernen: Die Feuchte müsste um {change:.1f} % von der beim Einpassen abweichen; am meisten weicht sie im {month} ab, um {most:.1f} %. Dann täten es {count} Messungen, jede mit neu gemessener Feuchte und einem auf {tool:g} mm genauen Messzeug (--tool {tool:g})</translation>
    </message>
    <message>
        <source>{lot}: nothing learned yet, and with this tool it cannot be learned this year: the moisture would have to differ by {change:.1f} % from when it was fitted; it differs most in {month}, by {most:.1f} %. A tool exact to {tool:g} mm would do (--tool {tool:g})</source>
        <translation>{lot}: noch nichts gelernt, und mit diesem Messzeug ist es in diesem Jahr nicht zu lernen: Die Feuchte müsste um {change:.1f} % von der beim Einpassen abweichen; am meisten weicht sie im {month} ab, um {most:.1f} %. Ein auf {tool:g} mm genaues Messzeug täte es (--tool {tool:g})</translation>
    </message>
    <message>
        <source>{lot}: nothing learned yet: the moisture has changed too little for its {n} measurements. Measure when it differs by {change:.1f} % from when it was fitted; it differs most in {month}, by {most:.1f} %</source>
        <translation>{lot}: noch nichts gelernt: Die Feuchte hat sich für {n} Messungen zu wenig geändert. Messen, wenn sie um {change:.1f} % von der beim Einpassen abweicht; am weitesten weicht sie im {month} ab, um {most:.1f} %</translation>
    </message>
    <message>
        <source>{low:.1f} to {high:.1f} mm</source>
        <translation>{low:.1f} bis {high:.1f} mm</translation>
    </message>
    <message>
        <source>{low:5.1f} % in {dry}, {high:.1f} % in {wet}</source>
        <translation>{low:5.1f} % im {dry}, {high:.1f} % im {wet}</translation>
    </message>
    <message>
        <source>{low:g} to {high:g}</source>
        <translation>{low:g} bis {high:g}</translation>
    </message>
    <message>
        <source>{low:g} to {high:g} mm, where it has screws</source>
        <translation>{low:g} bis {high:g} mm, wo sie Schrauben hat</translation>
    </message>
    <message>
        <source>{low:g} to {high:g} {unit}</source>
        <translation>{low:g} bis {high:g} {unit}</translation>
    </message>
    <message>
        <source>{low:g} to {high:g} °C</source>
        <translation>{low:g} bis {high:g} °C</translation>
    </message>
    <message>
        <source>{low:g} to {high:g}{unit}</source>
        <translation>{low:g} bis {high:g}{unit}</translation>
    </message>
    <message>
        <source>{lower} {low_value:g} is above {upper} {high_value:g}</source>
        <translation>{lower} {low_value:g} liegt über {upper} {high_value:g}</translation>
    </message>
    <message>
        <source>{lowest:g} to {highest:g}{unit}</source>
        <translation>{lowest:g} bis {highest:g}{unit}</translation>
    </message>
    <message>
        <source>{low} to {high} {unit}</source>
        <translation>{low} bis {high} {unit}</translation>
    </message>
    <message>
        <source>{mc} % by meter</source>
        <translation>{mc} % gemessen</translation>
    </message>
    <message>
        <source>{mean:.1f} % {way} than in use ({target:.1f} %)</source>
        <translation>{mean:.1f} % {way} als im Gebrauch ({target:.1f} %)</translation>
    </message>
    <message>
        <source>{measured:+.2f} mm for {change:+.1f} % fits no lot of this wood</source>
        <translation>{measured:+.2f} mm bei {change:+.1f} % passt zu keiner Charge dieses Holzes</translation>
    </message>
    <message>
        <source>{missing} of {size} days have readings in fewer than {needed:.0f} hours</source>
        <translation>{missing} von {size} Tagen haben Messwerte in weniger als {needed:.0f} Stunden</translation>
    </message>
    <message>
        <source>{name!r} can mean several</source>
        <translation>{name!r} kann mehreres meinen</translation>
    </message>
    <message>
        <source>{name!r} cannot be {value:g}</source>
        <translation>{name!r} kann nicht {value:g} sein</translation>
    </message>
    <message>
        <source>{name!r} is no part of this document</source>
        <translation>{name!r} ist kein Teil dieses Dokuments</translation>
    </message>
    <message>
        <source>{name!r} is not one plain object of several solids</source>
        <translation>{name!r} ist kein einfaches Objekt aus mehreren Körpern</translation>
    </message>
    <message>
        <source>{name!r} is of another document</source>
        <translation>{name!r} gehört zu einem anderen Dokument</translation>
    </message>
    <message>
        <source>{name!r} is only a part of a name</source>
        <translation>{name!r} ist nur ein Teil eines Namens</translation>
    </message>
    <message>
        <source>{name!r} is said twice</source>
        <translation>{name!r} ist zweimal gesagt</translation>
    </message>
    <message>
        <source>{name!r} is to be a number, not {value!r}</source>
        <translation>{name!r} soll eine Zahl sein, nicht {value!r}</translation>
    </message>
    <message>
        <source>{name!r} says nothing of its wood that could be copied</source>
        <translation>{name!r} sagt nichts über sein Holz, was sich kopieren ließe</translation>
    </message>
    <message>
        <source>{names} (no rail for fasteners)</source>
        <translation>{names} (keine Zarge für Befestigungen)</translation>
    </message>
    <message>
        <source>{names} are needed for {why}, and not installed.</source>
        <translation>{names}: nötig für {why}, und nicht eingerichtet.</translation>
    </message>
    <message>
        <source>{names} could not be installed; try as root:
  {command}</source>
        <translation>{names} ließ sich nicht einrichten; als root versuchen:
  {command}</translation>
    </message>
    <message>
        <source>{names} failed with code {code}:
  {last}</source>
        <translation>{names} scheiterte mit Code {code}:
  {last}</translation>
    </message>
    <message>
        <source>{names} is no date</source>
        <translation>{names} ist kein Datum</translation>
    </message>
    <message>
        <source>{names} make no joint of this document</source>
        <translation>keine Verbindung dieses Dokuments: {names}</translation>
    </message>
    <message>
        <source>{names} needed for {why}, and this system has no apt-get.
Install FreeCAD 0.20 or newer with your system's own package manager; where its command line is not on the path, name it in the environment variable FREECADCMD.</source>
        <translation>{names}: nötig für {why}, und dieses System hat kein apt-get.
FreeCAD 0.20 oder neuer mit der Paketverwaltung des Systems einrichten; wo seine Befehlszeile nicht im Suchpfad ist, sie in der Umgebungsvariable FREECADCMD nennen.</translation>
    </message>
    <message>
        <source>{names}, or mm from the middle within its width</source>
        <translation>{names}, oder mm von der Mitte innerhalb ihrer Breite</translation>
    </message>
    <message>
        <source>{names}: held to the top at {count} lines {apart:.0f} mm apart across its grain, by screws or pins in round holes without room; it moves {least:+.1f} to {most:+.1f} mm between them: up to {stress:.0f} MPa across the grain, split: {split}</source>
        <translation>{names}: mit der Platte an {count} Linien verbunden, die quer zu ihrer Faser {apart:.0f} mm auseinander liegen, durch Schrauben oder Stifte in runden Löchern ohne Spiel; sie bewegt sich dazwischen {least:+.1f} bis {most:+.1f} mm: bis {stress:.0f} MPa quer zur Faser, Riss: {split}</translation>
    </message>
    <message>
        <source>{names}: the curved faces of the piece would take over {most:,} facets; what it touches is not known. To do: hide parts drawn twice, or check units and scales of links</source>
        <translation>{names}: Die runden Flächen des Stücks brauchten mehr als {most:,} Facetten; was es berührt, ist nicht bekannt. Zu tun: doppelt gezeichnete Teile ausblenden, oder Einheiten und Maßstäbe von Verknüpfungen prüfen</translation>
    </message>
    <message>
        <source>{name} ({sizes}) does not fit the place of {name2} ({sizes2})</source>
        <translation>{name} ({sizes}) passt nicht an den Platz von {name2} ({sizes2})</translation>
    </message>
    <message>
        <source>{name} and {count} alike</source>
        <translation>{name} und {count} weitere gleiche</translation>
    </message>
    <message>
        <source>{name} cannot be {value!r}</source>
        <translation>{name} kann nicht {value!r} sein</translation>
    </message>
    <message>
        <source>{name} does not say what the air was asked with</source>
        <translation>{name} sagt nicht, womit nach der Luft gefragt wurde</translation>
    </message>
    <message>
        <source>{name} fills its groove and is thick for a panel that is left free: glue is not drawn</source>
        <translation>{name} füllt seine Nut und ist dick für eine Füllung, die frei bleibt: Leim ist nicht gezeichnet</translation>
    </message>
    <message>
        <source>{name} from below</source>
        <translation>{name} von unten</translation>
    </message>
    <message>
        <source>{name} has no radial and tangential direction</source>
        <translation>{name} hat keine radiale und tangentiale Richtung</translation>
    </message>
    <message>
        <source>{name} holds a value that is not finite</source>
        <translation>{name} enthält einen Wert, der nicht endlich ist</translation>
    </message>
    <message>
        <source>{name} holds its pith</source>
        <translation>{name} enthält sein Mark</translation>
    </message>
    <message>
        <source>{name} is needed for {why}, and not installed.</source>
        <translation>{name}: nötig für {why}, und nicht eingerichtet.</translation>
    </message>
    <message>
        <source>{name} is no solid wood</source>
        <translation>{name} ist kein Massivholz</translation>
    </message>
    <message>
        <source>{name} is no wood of known density</source>
        <translation>{name} ist kein Holz bekannter Dichte</translation>
    </message>
    <message>
        <source>{name} is not a list of joints ({error})</source>
        <translation>{name} ist keine Liste von Verbindungen ({error})</translation>
    </message>
    <message>
        <source>{name} is not a table of elements ({error})</source>
        <translation>{name} ist keine Tabelle von Elementen ({error})</translation>
    </message>
    <message>
        <source>{name} is {value!r}</source>
        <translation>{name} ist {value!r}</translation>
    </message>
    <message>
        <source>{name} is {value!r}, which is no form of properties</source>
        <translation>{name} ist {value!r}, das ist keine Form von Eigenschaften</translation>
    </message>
    <message>
        <source>{name} is {value!r}, which is no number</source>
        <translation>{name} ist {value!r}, das ist keine Zahl</translation>
    </message>
    <message>
        <source>{name} is {value:g}</source>
        <translation>{name} ist {value:g}</translation>
    </message>
    <message>
        <source>{name} on the end rail: {need}, it gives {gives}</source>
        <translation>{name} an der Zarge am Ende: {need}, zugelassen werden {gives}</translation>
    </message>
    <message>
        <source>{name} on the long rail: {need}, it gives {gives}</source>
        <translation>{name} an der langen Zarge: {need}, zugelassen werden {gives}</translation>
    </message>
    <message>
        <source>{name} says {word} that cannot be used</source>
        <translation>{name} nennt {word}, die sich nicht verwenden lassen</translation>
    </message>
    <message>
        <source>{name} with {coats} coats</source>
        <translation>{name} mit {coats} Schichten</translation>
    </message>
    <message>
        <source>{name} without its number of coats</source>
        <translation>{name} ohne Zahl der Schichten</translation>
    </message>
    <message>
        <source>{name} {least:g} leaves no wood</source>
        <translation>{name} {least:g} lässt kein Holz übrig</translation>
    </message>
    <message>
        <source>{name} · {date} · made with Heartside; figures are estimates for movement only</source>
        <translation>{name} · {date} · mit Heartside gemacht; die Zahlen sind Schätzungen allein der Bewegung</translation>
    </message>
    <message>
        <source>{name}, column rh_percent</source>
        <translation>{name}, Spalte rh_percent</translation>
    </message>
    <message>
        <source>{name}, columns</source>
        <translation>{name}, Spalten</translation>
    </message>
    <message>
        <source>{name}, line 1</source>
        <translation>{name}, Zeile 1</translation>
    </message>
    <message>
        <source>{name}, line 1, column 1</source>
        <translation>{name}, Zeile 1, Spalte 1</translation>
    </message>
    <message>
        <source>{name}, line 1: {column!r} is not a word of ours. {did_you_mean}</source>
        <translation>{name}, Zeile 1: {column!r} ist keines unserer Wörter. {did_you_mean}</translation>
    </message>
    <message>
        <source>{name}, line {first}, column {count}</source>
        <translation>{name}, Zeile {first}, Spalte {count}</translation>
    </message>
    <message>
        <source>{name}, line {line_num}</source>
        <translation>{name}, Zeile {line_num}</translation>
    </message>
    <message>
        <source>{name}, line {lines}</source>
        <translation>{name}, Zeile {lines}</translation>
    </message>
    <message>
        <source>{name}, line {lines}, column {column}</source>
        <translation>{name}, Zeile {lines}, Spalte {column}</translation>
    </message>
    <message>
        <source>{name}, line {line}</source>
        <translation>{name}, Zeile {line}</translation>
    </message>
    <message>
        <source>{name}, line {line}, column {column}</source>
        <translation>{name}, Zeile {line}, Spalte {column}</translation>
    </message>
    <message>
        <source>{name}, line {line}, column {humidity}</source>
        <translation>{name}, Zeile {line}, Spalte {humidity}</translation>
    </message>
    <message>
        <source>{name}, line {line}, column {temperature}</source>
        <translation>{name}, Zeile {line}, Spalte {temperature}</translation>
    </message>
    <message>
        <source>{name}, line {line}: {error}</source>
        <translation>{name}, Zeile {line}: {error}</translation>
    </message>
    <message>
        <source>{name}, line {value}, column {column}</source>
        <translation>{name}, Zeile {value}, Spalte {column}</translation>
    </message>
    <message>
        <source>{name}, {count} boards</source>
        <translation>{name}, {count} Bretter</translation>
    </message>
    <message>
        <source>{name}, {count} boards glued together</source>
        <translation>{name}, {count} Bretter verleimt</translation>
    </message>
    <message>
        <source>{name}: its material is not said; taken as stiff as a usual hardwood</source>
        <translation>{name}: Werkstoff nicht gesagt; so steif wie ein übliches Laubholz genommen</translation>
    </message>
    <message>
        <source>{name}: narrowest in {dry}, widest in {wet}; about {total} {unit} between the two.</source>
        <translation>{name}: am schmalsten im {dry}, am breitesten im {wet}; etwa {total} {unit} dazwischen.</translation>
    </message>
    <message>
        <source>{name}: taken as a batten, screwed every {batten_screw:.0f} mm at most, in slots</source>
        <translation>{name}: als Querleiste genommen, höchstens alle {batten_screw:.0f} mm in Langlöchern geschraubt</translation>
    </message>
    <message>
        <source>{name}: taken as a breadboard end on a tongue with {tongue_play:g} mm of play</source>
        <translation>{name}: als Hirnleiste auf einer Feder mit {tongue_play:g} mm Spiel genommen</translation>
    </message>
    <message>
        <source>{name}: the CAD host stopped without an answer</source>
        <translation>{name}: Das CAD-Programm endete ohne Antwort</translation>
    </message>
    <message>
        <source>{name}: the host failed to measure it ({error})</source>
        <translation>{name}: FreeCAD konnte es nicht messen ({error})</translation>
    </message>
    <message>
        <source>{name}: top {wide:.0f} mm wide, common practice stops at {widest:.0f} mm</source>
        <translation>{name}: Platte {wide:.0f} mm breit, die übliche Praxis endet bei {widest:.0f} mm</translation>
    </message>
    <message>
        <source>{name}: {breadth:.0f} mm thick, it needs {least:.0f} ({groove:.0f} of groove, {lip:.0f} behind it)</source>
        <translation>{name}: {breadth:.0f} mm dick, nötig sind {least:.0f} ({groove:.0f} Nut, {lip:.0f} dahinter)</translation>
    </message>
    <message>
        <source>{name}: {count} boards edge to edge</source>
        <translation>{name}: {count} Bretter Kante an Kante</translation>
    </message>
    <message>
        <source>{name}: {count} boards edge to edge, {width:.1f} drawn; today {today}, driest {driest}, wettest {wettest}.</source>
        <translation>{name}: {count} Bretter Kante an Kante, {width:.1f} gezeichnet; heute {today}, am trockensten {driest}, am feuchtesten {wettest}.</translation>
    </message>
    <message>
        <source>{name}: {depth:.0f} mm high, it needs {least:.0f} ({drop:.0f} down to the groove, {high:.0f} of groove, {lip:.0f} below it)</source>
        <translation>{name}: {depth:.0f} mm hoch, nötig sind {least:.0f} ({drop:.0f} bis zur Nut, {high:.0f} Nut, {lip:.0f} darunter)</translation>
    </message>
    <message>
        <source>{name}: {least} to {most} % RH; brings wood to {dry} % in {driest} and {wet} % in {wettest}</source>
        <translation>{name}: {least} bis {most} % rel. Feuchte; bringt Holz auf {dry} % im {driest} und {wet} % im {wettest}</translation>
    </message>
    <message>
        <source>{name}: {need} is within its throw</source>
        <translation>{name}: {need} wird zugelassen</translation>
    </message>
    <message>
        <source>{name}: {why}; what it touches is not known</source>
        <translation>{name}: {why}; was es berührt, ist nicht bekannt</translation>
    </message>
    <message>
        <source>{needed} Installing needs root. Type as root:
  {command}</source>
        <translation>{needed} Das Einrichten braucht root. Als root eingeben:
  {command}</translation>
    </message>
    <message>
        <source>{needed} Nothing was installed. To install, type as root:
  {again}</source>
        <translation>{needed} Nichts wurde eingerichtet. Zum Einrichten als root eingeben:
  {again}</translation>
    </message>
    <message>
        <source>{n}. {share:.0f} %  {name}: would make {low:+.1f} to {high:+.1f} mm</source>
        <translation>{n}. {share:.0f} %  {name}: ergäbe {low:+.1f} bis {high:+.1f} mm</translation>
    </message>
    <message>
        <source>{one} and {other}</source>
        <translation>{one} und {other}</translation>
    </message>
    <message>
        <source>{one} and {other} could both be meant</source>
        <translation>{one} und {other} könnten beide gemeint sein</translation>
    </message>
    <message>
        <source>{option} is not given</source>
        <translation>{option} ist nicht angegeben</translation>
    </message>
    <message>
        <source>{panel}: {count} boards, {moisture_change_driest:+.1f} % at the driest and {moisture_change_wettest:+.1f} % at the wettest since they were made flat.</source>
        <translation>{panel}: {count} Bretter, seit dem Ebnen am trockensten {moisture_change_driest:+.1f} % und am feuchtesten {moisture_change_wettest:+.1f} %.</translation>
    </message>
    <message>
        <source>{parts}: {kn:.1f} kN in {month}, {way} with {stress:.1f} MPa (clear wood bears {strength:.1f})</source>
        <translation>{parts}: {kn:.1f} kN im {month}, {way} mit {stress:.1f} MPa (fehlerfreies Holz trägt {strength:.1f})</translation>
    </message>
    <message>
        <source>{part} does not move with the seasons and sits in a round hole</source>
        <translation>{part} bewegt sich nicht mit den Jahreszeiten und sitzt in einem runden Loch</translation>
    </message>
    <message>
        <source>{part} does not move with the seasons: taken as fixed at a point</source>
        <translation>{part} bewegt sich nicht mit den Jahreszeiten: gilt als an einer Stelle fest</translation>
    </message>
    <message>
        <source>{part}, a batten: never glued. Screws {screw:g} mm thick: one plain hole in the middle, the others in slots along the batten; places from the middle of the top, + toward {other}.</source>
        <translation>{part}, Querleiste: nie geleimt. Schrauben {screw:g} mm dick: ein rundes Loch in der Mitte, die anderen in Langlöchern längs der Leiste; Orte von der Mitte der Platte, + zu {other} hin.</translation>
    </message>
    <message>
        <source>{part}, a breadboard end: tongue {thick:.0f} mm thick and {deep:.0f} deep, tenons {tenon:.0f} long, pegs {peg:g} mm thick; glue only from {low:+.0f} to {high:+.0f} mm from the middle of the top, + toward {other}.</source>
        <translation>{part}, Hirnleiste: Feder {thick:.0f} mm dick und {deep:.0f} tief, Zapfen {tenon:.0f} lang, Holznägel {peg:g} mm dick; Leim nur von {low:+.0f} bis {high:+.0f} mm von der Mitte der Platte, + zu {other} hin.</translation>
    </message>
    <message>
        <source>{part}, a {kind}</source>
        <translation>{part}, {kind}</translation>
    </message>
    <message>
        <source>{pieces} pieces</source>
        <translation>{pieces} Abschnitte</translation>
    </message>
    <message>
        <source>{places} places for {boards} boards</source>
        <translation>{places} Plätze für {boards} Bretter</translation>
    </message>
    <message>
        <source>{points:+.1f} for the species</source>
        <translation>{points:+.1f} für die Holzart</translation>
    </message>
    <message>
        <source>{points:+.1f} for {wood:.0f} °C</source>
        <translation>{points:+.1f} für {wood:.0f} °C</translation>
    </message>
    <message>
        <source>{points} points</source>
        <translation>{points} Punkte</translation>
    </message>
    <message>
        <source>{pressure_pa:g} Pa</source>
        <translation>{pressure_pa:g} Pa</translation>
    </message>
    <message>
        <source>{pull} of {allowed}</source>
        <translation>{pull} von {allowed}</translation>
    </message>
    <message>
        <source>{rail} is {breadth:.0f} mm broad, too narrow for a slot: screw {number} sits beside it in a block of {wide:.0f} × {deep:.0f} × {high:.0f} mm that is glued and screwed to its inner face</source>
        <translation>{rail} ist {breadth:.0f} mm breit, zu schmal für ein Langloch: Schraube {number} sitzt daneben in einem Klotz von {wide:.0f} × {deep:.0f} × {high:.0f} mm, der an ihre Innenfläche geleimt und geschraubt ist</translation>
    </message>
    <message>
        <source>{rail} is {wide:.0f} mm broad: a slot of {slot:.1f} mm across it leaves {left:.1f} mm on each side; slot a cleat or a block screwed to its face instead</source>
        <translation>{rail} ist {wide:.0f} mm breit: Ein Langloch von {slot:.1f} mm quer dazu lässt auf jeder Seite {left:.1f} mm; statt dessen eine Leiste oder einen Klotz, an ihre Fläche geschraubt, mit dem Langloch versehen</translation>
    </message>
    <message>
        <source>{rail}: {why}; not cut</source>
        <translation>{rail}: {why}; nicht geschnitten</translation>
    </message>
    <message>
        <source>{recess} runs into {parts}: drive its screw before that is there, or move it aside</source>
        <translation>{recess} läuft in {parts}: die Schraube setzen, bevor das da ist, oder sie versetzen</translation>
    </message>
    <message>
        <source>{room:.1f} mm in all</source>
        <translation>insgesamt {room:.1f} mm</translation>
    </message>
    <message>
        <source>{room:g} to {room2:g} °C</source>
        <translation>{room:g} bis {room2:g} °C</translation>
    </message>
    <message>
        <source>{room} it comes right within a day or two: measure again then.</source>
        <translation>{room} wird es in ein, zwei Tagen recht: dann noch einmal messen.</translation>
    </message>
    <message>
        <source>{room} it does not come right within two years: find drier or damper air.</source>
        <translation>{room} wird es binnen zwei Jahren nicht recht: trockenere oder feuchtere Luft suchen.</translation>
    </message>
    <message>
        <source>{room} it takes about {usual:.0f} days ({quick:.0f} to {longest}: sources differ that much) until it is within {within:g} % of the {mean:.1f} % in use, and core and skin within {even:g} % of each other.</source>
        <translation>{room} dauert es etwa {usual:.0f} Tage ({quick:.0f} bis {longest}: So weit gehen die Quellen auseinander), bis es auf {within:g} % an die {mean:.1f} % im Gebrauch heran ist und Kern und Oberfläche nicht mehr als {even:g} % auseinander sind.</translation>
    </message>
    <message>
        <source>{same} the same. Findings: {new} new, {gone} gone, {changed} changed.</source>
        <translation>{same} unverändert. Befunde: {new} neu, {gone} weg, {changed} geändert.</translation>
    </message>
    <message>
        <source>{samples!r} samples</source>
        <translation>{samples!r} Stichproben</translation>
    </message>
    <message>
        <source>{samples} samples</source>
        <translation>{samples} Werte</translation>
    </message>
    <message>
        <source>{screws} screws on {count} sheets of {paper}, full size. Only sheets with something to drill are printed.</source>
        <translation>{screws} Schrauben auf {count} Blättern {paper}, in wahrer Größe. Nur Blätter, auf denen etwas zu bohren ist, werden gedruckt.</translation>
    </message>
    <message>
        <source>{shape} in {month}</source>
        <translation>im {month} {shape}</translation>
    </message>
    <message>
        <source>{shape} values of {field}</source>
        <translation>{shape} Werte von {field}</translation>
    </message>
    <message>
        <source>{shape}; greatest step at a glue line {step:.2f}.</source>
        <translation>{shape}; größter Absatz an einer Leimfuge {step:.2f}.</translation>
    </message>
    <message>
        <source>{short:.1f} mm short of its groove</source>
        <translation>{short:.1f} mm vor ihrer Nut</translation>
    </message>
    <message>
        <source>{show} on the show face, {back} on the back: one face answers the air before the other, and from that alone {what} {way} {cup:.1f} mm if nothing holds it</source>
        <translation>{show} auf der Sichtseite, {back} auf der Rückseite: Eine Seite folgt der Luft früher als die andere, und davon allein wird {what}, wenn nichts hält, {cup:.1f} mm {way}</translation>
    </message>
    <message>
        <source>{sign} stands for letters that no typeface on this computer has; the sheet as .html has them all.</source>
        <translation>{sign} steht für Buchstaben, die keine Schrift auf diesem Rechner hat; das Blatt als .html hat sie alle.</translation>
    </message>
    <message>
        <source>{slope}, {turn}; one corner would stand off by up to {lift:.1f} mm, which a straightedge laid askew reads as a cup of a quarter of it</source>
        <translation>{slope}, {turn}; eine Ecke stünde bis {lift:.1f} mm ab, was ein schräg angelegtes Lineal als Wölbung von einem Viertel davon zeigt</translation>
    </message>
    <message>
        <source>{solid:.0f} mm may be solid, some let {most:.0f} mm pass; common practice, no source</source>
        <translation>{solid:.0f} mm dürfen fest sein, manche lassen {most:.0f} mm gelten; übliche Praxis, keine Quelle</translation>
    </message>
    <message>
        <source>{source}no such program: {name}</source>
        <translation>{source}dieses Programm gibt es nicht: {name}</translation>
    </message>
    <message>
        <source>{spoken} comes after {spoken2}: clock set back; put in order</source>
        <translation>{spoken} kommt nach {spoken2}: Uhr zurückgestellt; geordnet</translation>
    </message>
    <message>
        <source>{spoken} once more, with other readings: the first kept</source>
        <translation>{spoken} noch einmal, mit anderen Messwerten: der erste behalten</translation>
    </message>
    <message>
        <source>{spoken} once more: the first kept</source>
        <translation>{spoken} noch einmal: der erste behalten</translation>
    </message>
    <message>
        <source>{spot}: the ring radius is unknown, so the cup is too</source>
        <translation>{spot}: Der Ringradius ist unbekannt, also auch die Wölbung</translation>
    </message>
    <message>
        <source>{strip!r} is no date</source>
        <translation>{strip!r} ist kein Datum</translation>
    </message>
    <message>
        <source>{strip!r} is no reading</source>
        <translation>{strip!r} ist kein Messwert</translation>
    </message>
    <message>
        <source>{strip!r} is no time of day</source>
        <translation>{strip!r} ist keine Uhrzeit</translation>
    </message>
    <message>
        <source>{temperature:g} °C is no room; it looks like °F</source>
        <translation>{temperature:g} °C ist kein Raum; es sieht nach °F aus</translation>
    </message>
    <message>
        <source>{text!r} gives the {side} face twice</source>
        <translation>{text!r} nennt die Seite „{side}“ zweimal</translation>
    </message>
    <message>
        <source>{text!r} is a year of indoor air already</source>
        <translation>{text!r} ist schon ein Jahresgang von Raumluft</translation>
    </message>
    <message>
        <source>{text!r} is no date</source>
        <translation>{text!r} ist kein Datum</translation>
    </message>
    <message>
        <source>{text!r} is no date; write YYYY-MM-DD</source>
        <translation>{text!r} ist kein Datum; JJJJ-MM-TT schreiben</translation>
    </message>
    <message>
        <source>{text!r} is no direction</source>
        <translation>{text!r} ist keine Richtung</translation>
    </message>
    <message>
        <source>{text!r} is no flatness; allowed: above 0 to 50 mm</source>
        <translation>{text!r} ist keine Ebenheit; zulässig: über 0 bis 50 mm</translation>
    </message>
    <message>
        <source>{text!r} is no length; write millimetres, such as 27</source>
        <translation>{text!r} ist keine Länge; Millimeter schreiben, etwa 27</translation>
    </message>
    <message>
        <source>{text!r} is no moisture of furniture wood; allowed: 0 to 30 percent</source>
        <translation>{text!r} ist keine Feuchte von Möbelholz; zulässig: 0 bis 30 Prozent</translation>
    </message>
    <message>
        <source>{text!r} is no number</source>
        <translation>{text!r} ist keine Zahl</translation>
    </message>
    <message>
        <source>{text!r} is no number of models to work at; allowed: 1 to 64</source>
        <translation>{text!r} ist keine Anzahl von Modellen; zulässig: 1 bis 64</translation>
    </message>
    <message>
        <source>{text!r} is no place across the width</source>
        <translation>{text!r} ist kein Ort quer über die Breite</translation>
    </message>
    <message>
        <source>{text!r} is no reading of a meter; allowed: 0 to 60 percent</source>
        <translation>{text!r} ist kein Wert eines Messgeräts; zulässig: 0 bis 60 Prozent</translation>
    </message>
    <message>
        <source>{text!r} is no room; write °C/RH, such as 20/50</source>
        <translation>{text!r} ist kein Raum; °C/rel. Feuchte schreiben, etwa 20/50</translation>
    </message>
    <message>
        <source>{text!r} is no share; allowed: 0 to 100 percent</source>
        <translation>{text!r} ist kein Anteil; zulässig: 0 bis 100 Prozent</translation>
    </message>
    <message>
        <source>{text!r} is no side of the part</source>
        <translation>{text!r} ist keine Seite des Teils</translation>
    </message>
    <message>
        <source>{text!r} is no slope of grain; write a number from -0.5 to 0.5</source>
        <translation>{text!r} ist keine Neigung der Faser; eine Zahl von -0.5 bis 0.5 schreiben</translation>
    </message>
    <message>
        <source>{text!r} is no such size; write a number of 0 or more</source>
        <translation>{text!r} ist kein solches Maß; eine Zahl von 0 oder mehr schreiben</translation>
    </message>
    <message>
        <source>{text!r} is no time limit; allowed: 1 second or more, or 0 for none</source>
        <translation>{text!r} ist keine Zeitgrenze; zulässig: 1 Sekunde oder mehr, oder 0 für keine</translation>
    </message>
    <message>
        <source>{text!r} is no turn of rings; write degrees from 0 to 180</source>
        <translation>{text!r} ist keine Verdrehung von Jahrringen; Grad von 0 bis 180 angeben</translation>
    </message>
    <message>
        <source>{text!r} is no {what}</source>
        <translation>{text!r} gibt es nicht: {what}</translation>
    </message>
    <message>
        <source>{text!r} is not a finish</source>
        <translation>{text!r} ist keine Oberfläche</translation>
    </message>
    <message>
        <source>{text!r} is not {what}</source>
        <translation>{text!r} ist nicht das Verlangte: {what}</translation>
    </message>
    <message>
        <source>{text!r} says nothing of the other face</source>
        <translation>{text!r} sagt nichts von der anderen Seite</translation>
    </message>
    <message>
        <source>{thickness:g} mm thick beside {name} of {thickness2:g} mm (ratio {ratio:.2f})</source>
        <translation>{thickness:g} mm dick neben {name} mit {thickness2:g} mm (Verhältnis {ratio:.2f})</translation>
    </message>
    <message>
        <source>{title}, seen from below, 1:{by:g}</source>
        <translation>{title}, von unten gesehen, 1:{by:g}</translation>
    </message>
    <message>
        <source>{title}. Heights × {factor}</source>
        <translation>{title}. Höhen × {factor}</translation>
    </message>
    <message>
        <source>{title}; its cup is not known: {reason}</source>
        <translation>{title}; Wölbung nicht bekannt: {reason}</translation>
    </message>
    <message>
        <source>{title}; rings drawn by their angle alone</source>
        <translation>{title}; Ringe nur nach ihrem Winkel gezeichnet</translation>
    </message>
    <message>
        <source>{top}: the hardware rests on an older plan: place it anew</source>
        <translation>{top}: Die Befestigung beruht auf einem älteren Plan: neu setzen</translation>
    </message>
    <message>
        <source>{unreadable_count} of {total} lines cannot be read; the first: {what}</source>
        <translation>{unreadable_count} von {total} Zeilen sind nicht lesbar; die erste: {what}</translation>
    </message>
    <message>
        <source>{upper}{certainty}. mm; + is a crown (centre high), - a hollow. Extra: how much further from flat than the flattest one.</source>
        <translation>{upper}{certainty}. mm; + ist rund (Mitte hoch), - hohl. Mehr: wie viel weiter von der Ebene als die ebenste.</translation>
    </message>
    <message>
        <source>{up}, {down}, so the top waves rather than bends one way</source>
        <translation>{up}, {down}: Die Platte wird eher wellig, als dass sie sich nach einer Seite biegt</translation>
    </message>
    <message>
        <source>{user!r} is built on {name!r}</source>
        <translation>{user!r} ist auf {name!r} aufgebaut</translation>
    </message>
    <message>
        <source>{value!r} is no figure of any room</source>
        <translation>{value!r} ist keine Zahl irgendeines Raums</translation>
    </message>
    <message>
        <source>{value!r} is no number; write it without quotes</source>
        <translation>{value!r} ist keine Zahl; ohne Anführungszeichen schreiben</translation>
    </message>
    <message>
        <source>{value!r} is no text; write it in quotes</source>
        <translation>{value!r} ist kein Text; in Anführungszeichen schreiben</translation>
    </message>
    <message>
        <source>{value!r} is none of {names}</source>
        <translation>{value!r} ist keines von {names}</translation>
    </message>
    <message>
        <source>{value:g} cannot vary by a factor</source>
        <translation>{value:g} kann nicht um einen Faktor schwanken</translation>
    </message>
    <message>
        <source>{value:g} {unit} is not a usable {what}</source>
        <translation>{value:g} {unit} ist unbrauchbar: {what}</translation>
    </message>
    <message>
        <source>{value:g} {unit} is out of range for {what}</source>
        <translation>{value:g} {unit} liegt außerhalb des Bereichs: {what}</translation>
    </message>
    <message>
        <source>{value:g}{unit} cannot be used as {what}</source>
        <translation>{value:g}{unit} ist unbrauchbar: {what}</translation>
    </message>
    <message>
        <source>{values!r} is not a number</source>
        <translation>{values!r} ist keine Zahl</translation>
    </message>
    <message>
        <source>{values:g} % is not a moisture that air can give</source>
        <translation>{values:g} % ist keine Feuchte, die Luft geben kann</translation>
    </message>
    <message>
        <source>{value} is not a usable {what}</source>
        <translation>{value} ist unbrauchbar: {what}</translation>
    </message>
    <message>
        <source>{wanted} finite values</source>
        <translation>{wanted} endliche Werte</translation>
    </message>
    <message>
        <source>{warmth:.0f} °C and {damp:.0f} % relative humidity</source>
        <translation>{warmth:.0f} °C und {damp:.0f} % relative Feuchte</translation>
    </message>
    <message>
        <source>{way} {size:.1f} in {month}</source>
        <translation>{way} {size:.1f} im {month}</translation>
    </message>
    <message>
        <source>{what!r} is nothing to measure</source>
        <translation>{what!r} lässt sich nicht messen</translation>
    </message>
    <message>
        <source>{what} contains {bad}</source>
        <translation>{what} enthält {bad}</translation>
    </message>
    <message>
        <source>{what} has shape {shape}</source>
        <translation>{what} hat die Form {shape}</translation>
    </message>
    <message>
        <source>{what} is fixed solid across {width:.0f} mm of grain, which moves {least:+.1f} to {most:+.1f} mm against it: {comes} ({practice})</source>
        <translation>{what} ist auf {width:.0f} mm quer zur Faser fest, die sich dagegen {least:+.1f} bis {most:+.1f} mm bewegt: {comes} ({practice})</translation>
    </message>
    <message>
        <source>{what} is {value!r}</source>
        <translation>{what} ist {value!r}</translation>
    </message>
    <message>
        <source>{what} lies across {width:.0f} mm of grain, which moves {least:+.1f} to {most:+.1f} mm against it. How it is fixed is not drawn. If it is glued or screwed fast, {comes} ({practice})</source>
        <translation>{what} liegt auf {width:.0f} mm quer zur Faser, die sich dagegen {least:+.1f} bis {most:+.1f} mm bewegt. Die Art der Befestigung ist nicht gezeichnet. Bei fester Leimung oder Verschraubung gilt: {comes} ({practice})</translation>
    </message>
    <message>
        <source>{what} unchanged for {hours:.0f} h from {spoken}</source>
        <translation>unverändert während {hours:.0f} h ab {spoken}: {what}</translation>
    </message>
    <message>
        <source>{what} {value!r} is impossible</source>
        <translation>{what} {value!r} ist unmöglich</translation>
    </message>
    <message>
        <source>{what} {value!r} is not a number</source>
        <translation>{what} {value!r} ist keine Zahl</translation>
    </message>
    <message>
        <source>{what} {value:g} mm is not to be believed: wood does not move so far, and about {expected:.1f} mm is expected</source>
        <translation>{what} {value:g} mm ist nicht zu glauben: So weit arbeitet Holz nicht; erwartet werden etwa {expected:.1f} mm</translation>
    </message>
    <message>
        <source>{what}: it would come through on the other side</source>
        <translation>{what}: es käme auf der anderen Seite heraus</translation>
    </message>
    <message>
        <source>{what}: there is no wood to cut</source>
        <translation>{what}: da ist kein Holz zu schneiden</translation>
    </message>
    <message>
        <source>{what}: {count} more</source>
        <translation>{what}: {count} weitere</translation>
    </message>
    <message>
        <source>{when} {least:+.2f} to {most:+.2f}°, a corner off by {low:.1f} to {high:.1f}</source>
        <translation>{when} {least:+.2f} bis {most:+.2f}°, eine Ecke weicht um {low:.1f} bis {high:.1f} ab</translation>
    </message>
    <message>
        <source>{when}, {month}: between {low} and {high} {unit} (+ crown, − hollow)</source>
        <translation>{when}, {month}: zwischen {low} und {high} {unit} (+ rund, − hohl)</translation>
    </message>
    <message>
        <source>{when}, {month}: flat</source>
        <translation>{when}, {month}: eben</translation>
    </message>
    <message>
        <source>{where}, column month</source>
        <translation>{where}, Spalte month</translation>
    </message>
    <message>
        <source>{where}, column {column}</source>
        <translation>{where}, Spalte {column}</translation>
    </message>
    <message>
        <source>{where}, column {temperature}</source>
        <translation>{where}, Spalte {temperature}</translation>
    </message>
    <message>
        <source>{where}, word 'built'</source>
        <translation>{where}, Wort „built“</translation>
    </message>
    <message>
        <source>{where}, word {word!r}</source>
        <translation>{where}, Wort {word!r}</translation>
    </message>
    <message>
        <source>{where}: a second wood{{…}} is ignored. To do: write one.</source>
        <translation>{where}: Ein zweites wood{{…}} wird übergangen. Zu tun: eines schreiben.</translation>
    </message>
    <message>
        <source>{where}: no stock screw stays inside the top of {thick:.1f} mm</source>
        <translation>{where}: Keine handelsübliche Schraube bleibt in der Platte von {thick:.1f} mm</translation>
    </message>
    <message>
        <source>{where}: part, other and kind are all needed.</source>
        <translation>{where}: part, other und kind sind alle nötig.</translation>
    </message>
    <message>
        <source>{where}: the row names no part.</source>
        <translation>{where}: Die Zeile nennt kein Teil.</translation>
    </message>
    <message>
        <source>{where}: the tag {text!r} has no closing brace. To do: end it with '}}'.</source>
        <translation>{where}: Der Angabe {text!r} fehlt die schließende Klammer. Zu tun: mit „}}“ beenden.</translation>
    </message>
    <message>
        <source>{where}: there is no part {unknown!r}.{meant}</source>
        <translation>{where}: Es gibt kein Teil {unknown!r}.{meant}</translation>
    </message>
    <message>
        <source>{where}: {count} cells under a heading of {count2}, so nothing of the row is read. To do: put cells with a {delimiter} in them in quotes, and write decimals with a point</source>
        <translation>{where}: {count} Zellen unter einem Kopf von {count2}, darum wird nichts aus der Zeile gelesen. Zu tun: Zellen mit {delimiter} in Anführungszeichen setzen und Dezimalen mit Punkt schreiben</translation>
    </message>
    <message>
        <source>{where}: {count} more words are not ours</source>
        <translation>{where}: {count} weitere Wörter sind nicht unsere</translation>
    </message>
    <message>
        <source>{where}: {part!r} and {other!r} stand here twice; the first counts.</source>
        <translation>{where}: {part!r} und {other!r} stehen hier zweimal; das erste gilt.</translation>
    </message>
    <message>
        <source>{where}: {part!r} stands here twice; the first counts.</source>
        <translation>{where}: {part!r} steht hier zweimal; das erste gilt.</translation>
    </message>
    <message>
        <source>{where}: {what} (day 0 is 1 January)</source>
        <translation>{where}: {what} (Tag 0 ist der 1. Januar)</translation>
    </message>
    <message>
        <source>{where}: {word!r} is not a word of ours. Allowed: {names}.</source>
        <translation>{where}: {word!r} ist keines unserer Wörter. Zulässig: {names}.</translation>
    </message>
    <message>
        <source>{where}: {word!r} is said twice; the first counts.</source>
        <translation>{where}: {word!r} ist zweimal gesagt; das erste gilt.</translation>
    </message>
    <message>
        <source>{why}, so the longest edge does not tell; tag the grain</source>
        <translation>{why}, darum sagt die längste Kante nichts; die Faser angeben</translation>
    </message>
    <message>
        <source>{wood}, {width:g} x {thickness:g} mm, {cup:.1f} mm {way}</source>
        <translation>{wood}, {width:g} x {thickness:g} mm, {cup:.1f} mm {way}</translation>
    </message>
    <message>
        <source>{word!r} is not a word of ours</source>
        <translation>{word!r} ist keines unserer Wörter</translation>
    </message>
    <message>
        <source>{word} inferred: {reason}</source>
        <translation>{word} abgeleitet: {reason}</translation>
    </message>
    <message>
        <source>{written} can be {meanings}, and no date in the file settles it{hint}</source>
        <translation>{written} kann {meanings} sein, und kein Datum der Datei entscheidet es{hint}</translation>
    </message>
    <message>
        <source>|x| ≥ {width:g} mm or |y| ≥ {thickness:g} mm</source>
        <translation>|x| ≥ {width:g} mm oder |y| ≥ {thickness:g} mm</translation>
    </message>
    <message>
        <source>°C and percent, such as 20/50</source>
        <translation>°C und Prozent, etwa 20/50</translation>
    </message>
    <message>
        <source>°F must be converted first</source>
        <translation>°F zuerst umrechnen</translation>
    </message>
    <message>
        <source>± once it is known, {unit}</source>
        <translation>± sobald es bekannt ist, {unit}</translation>
    </message>
    <message>
        <source>±: likely error of driest and wettest, two times in three; twice that is nearly certain.</source>
        <translation>±: wahrscheinlicher Fehler von am trockensten und am feuchtesten, in zwei von drei Fällen; das Doppelte ist fast sicher.</translation>
    </message>
    <message>
        <source>× {factor:.2f} for density</source>
        <translation>× {factor:.2f} für die Dichte</translation>
    </message>
    <message>
        <source>… and {count} more of the kind</source>
        <translation>… und {count} weitere dieser Art</translation>
    </message>
    <message>
        <source>… and {count} more parts</source>
        <translation>… und {count} weitere Teile</translation>
    </message>
    <message>
        <source>−100 to 100 percent points of MC</source>
        <translation>−100 bis 100 Prozentpunkte Holzfeuchte</translation>
    </message>
    <message>
        <source>−60 to 100 °C</source>
        <translation>−60 bis 100 °C</translation>
    </message>
</context>
<context>
    <name>Heartside_Accept</name>
    <message>
        <source>Accept what was inferred</source>
        <translation>Abgeleitetes annehmen</translation>
    </message>
    <message>
        <source>Make grain, show face and cut that were inferred for the selected boards, or for all, said by you</source>
        <translation>Faser, Sichtseite und Einschnitt, die für die gewählten Bretter oder für alle abgeleitet wurden, selbst sagen</translation>
    </message>
</context>
<context>
    <name>Heartside_Annotate</name>
    <message>
        <source>Annotate the model</source>
        <translation>Modell beschriften</translation>
    </message>
    <message>
        <source>Work the piece out and put a label at every board</source>
        <translation>Das Stück berechnen und an jedes Brett ein Schild setzen</translation>
    </message>
</context>
<context>
    <name>Heartside_CopyWood</name>
    <message>
        <source>Copy wood …</source>
        <translation>Holz kopieren …</translation>
    </message>
    <message>
        <source>Say of other boards what the selected one says of its wood: species, moisture, finish, lot</source>
        <translation>Von anderen Brettern sagen, was das gewählte von seinem Holz sagt: Holzart, Feuchte, Oberfläche, Charge</translation>
    </message>
</context>
<context>
    <name>Heartside_CutSlots</name>
    <message>
        <source>Cut the slots</source>
        <translation>Langlöcher schneiden</translation>
    </message>
    <message>
        <source>Cut the slots, holes and mortises of the placed hardware; each part becomes the base of an ordinary cut</source>
        <translation>Langlöcher, Löcher und Zapfenlöcher der gesetzten Befestigung schneiden; jedes Teil wird Basis eines gewöhnlichen Schnitts</translation>
    </message>
</context>
<context>
    <name>Heartside_DrawTop</name>
    <message>
        <source>Drawing of the top</source>
        <translation>Zeichnung der Platte</translation>
    </message>
    <message>
        <source>Put a drawing page into the document: the top from below, its screws and slots, and their table</source>
        <translation>Legt ein Zeichnungsblatt ins Dokument: die Platte von unten, ihre Schrauben und Langlöcher mit Tabelle</translation>
    </message>
</context>
<context>
    <name>Heartside_ExportCut</name>
    <message>
        <source>Export with slots …</source>
        <translation>Mit Langlöchern ausgeben …</translation>
    </message>
    <message>
        <source>Write the piece with the slots of the best plan cut, as STEP, its tags along; nothing in the model is changed</source>
        <translation>Schreibt das Stück mit den geschnittenen Langlöchern des besten Plans als STEP, samt den Angaben zum Holz; am Modell ändert sich nichts</translation>
    </message>
</context>
<context>
    <name>Heartside_GapsToday</name>
    <message>
        <source>From the air of the shop or a meter: the gaps to set today, and what each becomes over the year</source>
        <translation>Aus der Luft der Werkstatt oder einem Messgerät: die Fugen, die heute zu lassen sind, und was über das Jahr daraus wird</translation>
    </message>
    <message>
        <source>Gaps today …</source>
        <translation>Fugen heute …</translation>
    </message>
</context>
<context>
    <name>Heartside_Hints</name>
    <message>
        <source>Hints of the model …</source>
        <translation>Hinweise des Modells …</translation>
    </message>
    <message>
        <source>See what material cards and assembly joints hint at, and take what is right</source>
        <translation>Ansehen, worauf Materialkarten und Verbindungen von Baugruppen hinweisen, und nehmen, was stimmt</translation>
    </message>
</context>
<context>
    <name>Heartside_Hold</name>
    <message>
        <source>Compare ways to fasten a top to its frame, and place one of them in the model</source>
        <translation>Wege vergleichen, eine Platte auf ihrem Gestell zu befestigen, und einen davon ins Modell setzen</translation>
    </message>
    <message>
        <source>Hold the top flat …</source>
        <translation>Platte eben halten …</translation>
    </message>
</context>
<context>
    <name>Heartside_Joints</name>
    <message>
        <source>Go through the joints, say what they are, and point at the line that holds a part</source>
        <translation>Die Verbindungen durchgehen, angeben, was sie sind, und die Linie zeigen, auf der ein Teil gehalten ist</translation>
    </message>
    <message>
        <source>Joints …</source>
        <translation>Verbindungen …</translation>
    </message>
</context>
<context>
    <name>Heartside_LayBoards</name>
    <message>
        <source>Lay the boards …</source>
        <translation>Bretter legen …</translation>
    </message>
    <message>
        <source>See the boards of a panel from their ends, turn and reorder them, and see how flat the panel stays</source>
        <translation>Die Bretter einer Platte von ihren Enden sehen, wenden und umordnen, und sehen, wie flach die Platte bleibt</translation>
    </message>
</context>
<context>
    <name>Heartside_Remove</name>
    <message>
        <source>Remove the answer</source>
        <translation>Antwort entfernen</translation>
    </message>
    <message>
        <source>Take labels and results out again; tags and the year stay, the model is as it was</source>
        <translation>Schilder und Ergebnisse wieder entfernen; Angaben und Jahr bleiben, das Modell ist wie zuvor</translation>
    </message>
</context>
<context>
    <name>Heartside_RemovePapers</name>
    <message>
        <source>Take schedule and drawing pages out of the document; all else stays</source>
        <translation>Nimmt Stückliste und Zeichnungsblätter aus dem Dokument; alles andere bleibt</translation>
    </message>
    <message>
        <source>Take the papers out</source>
        <translation>Blätter herausnehmen</translation>
    </message>
</context>
<context>
    <name>Heartside_Report</name>
    <message>
        <source>Report</source>
        <translation>Bericht</translation>
    </message>
    <message>
        <source>Work the piece out and show every board and finding; nothing is changed</source>
        <translation>Das Stück berechnen und jedes Brett und jeden Befund zeigen; nichts wird geändert</translation>
    </message>
</context>
<context>
    <name>Heartside_Schedule</name>
    <message>
        <source>Put a spreadsheet with parts, joints, fasteners and gaps into the document</source>
        <translation>Legt eine Tabelle mit Teilen, Verbindungen, Befestigungen und Fugen ins Dokument</translation>
    </message>
    <message>
        <source>Schedule</source>
        <translation>Stückliste</translation>
    </message>
</context>
<context>
    <name>Heartside_SeeYear</name>
    <message>
        <source>Run the piece through the year in the view, and see what jams, gapes or splits; nothing is changed</source>
        <translation>Das Stück in der Ansicht durchs Jahr laufen lassen und sehen, was klemmt, klafft oder reißt; nichts wird geändert</translation>
    </message>
    <message>
        <source>See the year …</source>
        <translation>Das Jahr ansehen …</translation>
    </message>
</context>
<context>
    <name>Heartside_Sheet</name>
    <message>
        <source>Movement sheet …</source>
        <translation>Bewegungsblatt …</translation>
    </message>
    <message>
        <source>Write the sheet for the bench, or the page for the client, to print; nothing in the model is changed</source>
        <translation>Das Blatt für die Werkbank oder die Seite für den Kunden zum Drucken schreiben; nichts im Modell wird geändert</translation>
    </message>
</context>
<context>
    <name>Heartside_Tag</name>
    <message>
        <source>Say what the selected boards are made of: species, grain, heart side, moisture when built</source>
        <translation>Angeben, woraus die gewählten Bretter sind: Holzart, Faser, Kernseite, Holzfeuchte beim Bau</translation>
    </message>
    <message>
        <source>Tag wood …</source>
        <translation>Holz angeben …</translation>
    </message>
</context>
<context>
    <name>Heartside_TakeHardware</name>
    <message>
        <source>Take fasteners and the slots that were cut for them out; the model is as it was</source>
        <translation>Befestigungen und die dafür geschnittenen Langlöcher entfernen; das Modell ist wie zuvor</translation>
    </message>
    <message>
        <source>Take hardware out</source>
        <translation>Befestigung entfernen</translation>
    </message>
</context>
<context>
    <name>Heartside_Template</name>
    <message>
        <source>Drilling template …</source>
        <translation>Bohrschablone …</translation>
    </message>
    <message>
        <source>Write a template of a top's screws and slots at full size, to print; nothing in the model is changed</source>
        <translation>Schreibt eine Schablone der Schrauben und Langlöcher einer Platte in wahrer Größe zum Drucken; am Modell ändert sich nichts</translation>
    </message>
</context>
<context>
    <name>Heartside_Untag</name>
    <message>
        <source>Take everything said of their wood off the selected boards</source>
        <translation>Alle Holzangaben von den gewählten Brettern nehmen</translation>
    </message>
    <message>
        <source>Take tags off</source>
        <translation>Angaben wegnehmen</translation>
    </message>
</context>
<context>
    <name>Heartside_Year</name>
    <message>
        <source>Choose the air that the piece will live in, month by month</source>
        <translation>Die Luft wählen, in der das Stück stehen wird, Monat für Monat</translation>
    </message>
    <message>
        <source>Year of air …</source>
        <translation>Luft im Jahr …</translation>
    </message>
</context>
</TS>
