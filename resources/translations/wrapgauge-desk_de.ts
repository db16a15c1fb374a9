<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="de" sourcelanguage="en">
    <context>
        <name>GraphicsProbe</name>
        <message>
            <source>the window does not run on an X display</source>
            <translation>das Fenster läuft nicht auf einem X-Bildschirm</translation>
        </message>
        <message>
            <source>the display offers no OpenGL</source>
            <translation>der Bildschirm bietet kein OpenGL</translation>
        </message>
        <message>
            <source>the display's OpenGL cannot be used</source>
            <translation>das OpenGL des Bildschirms ist nicht brauchbar</translation>
        </message>
        <message>
            <source>the display offers OpenGL %1.%2; 3.2 is needed</source>
            <translation>der Bildschirm bietet OpenGL %1.%2; nötig ist 3.2</translation>
        </message>
    </context>
    <context>
        <name>Measure</name>
        <message>
            <source>Wrist</source>
            <translation>Handgelenk</translation>
        </message>
        <message>
            <source>Length</source>
            <translation>Länge</translation>
        </message>
        <message>
            <source>Girth hand root</source>
            <translation>Umfang Handwurzel</translation>
        </message>
        <message>
            <source>Girth wrist</source>
            <translation>Umfang Handgelenk</translation>
        </message>
        <message>
            <source>Girth above</source>
            <translation>Umfang darüber</translation>
        </message>
        <message>
            <source>Aspect wrist</source>
            <translation>Breite : Dicke Handgelenk</translation>
        </message>
        <message>
            <source>Edge</source>
            <translation>Netzkante</translation>
        </message>
        <message>
            <source>Forearm</source>
            <translation>Unterarm</translation>
        </message>
        <message>
            <source>Girth forearm</source>
            <translation>Umfang Unterarm</translation>
        </message>
        <message>
            <source>Girth elbow</source>
            <translation>Umfang Ellbogen</translation>
        </message>
        <message>
            <source>Aspect elbow</source>
            <translation>Breite : Dicke Ellbogen</translation>
        </message>
        <message>
            <source>Upper arm</source>
            <translation>Oberarm</translation>
        </message>
        <message>
            <source>Girth middle</source>
            <translation>Umfang Mitte</translation>
        </message>
        <message>
            <source>Girth armpit</source>
            <translation>Umfang Achsel</translation>
        </message>
        <message>
            <source>Hand back</source>
            <translation>Handrücken</translation>
        </message>
        <message>
            <source>Girth hand</source>
            <translation>Umfang Hand</translation>
        </message>
        <message>
            <source>Aspect hand</source>
            <translation>Breite : Dicke Hand</translation>
        </message>
        <message>
            <source>Thigh</source>
            <translation>Oberschenkel</translation>
        </message>
        <message>
            <source>Girth lower thigh</source>
            <translation>Umfang unterer Oberschenkel</translation>
        </message>
        <message>
            <source>Girth thigh</source>
            <translation>Umfang Oberschenkel</translation>
        </message>
        <message>
            <source>Knee</source>
            <translation>Knie</translation>
        </message>
        <message>
            <source>Girth knee</source>
            <translation>Umfang Knie</translation>
        </message>
        <message>
            <source>Girth below</source>
            <translation>Umfang darunter</translation>
        </message>
        <message>
            <source>Calf</source>
            <translation>Wade</translation>
        </message>
        <message>
            <source>Girth ankle</source>
            <translation>Umfang Knöchel</translation>
        </message>
        <message>
            <source>Girth calf</source>
            <translation>Umfang Wade</translation>
        </message>
        <message>
            <source>Aspect ankle</source>
            <translation>Breite : Dicke Knöchel</translation>
        </message>
        <message>
            <source>Aspect knee</source>
            <translation>Breite : Dicke Knie</translation>
        </message>
        <message>
            <source>Ankle</source>
            <translation>Knöchel</translation>
        </message>
        <message>
            <source>Girth malleoli</source>
            <translation>Umfang Malleolen</translation>
        </message>
        <message>
            <source>Aspect malleoli</source>
            <translation>Breite : Dicke Malleolen</translation>
        </message>
        <message>
            <source>Lower leg</source>
            <translation>Unterschenkel</translation>
        </message>
        <message>
            <source>Torso</source>
            <translation>Rumpf</translation>
        </message>
        <message>
            <source>Girth hip</source>
            <translation>Umfang Hüfte</translation>
        </message>
        <message>
            <source>Girth waist</source>
            <translation>Umfang Taille</translation>
        </message>
        <message>
            <source>Girth chest</source>
            <translation>Umfang Brust</translation>
        </message>
        <message>
            <source>Aspect hip</source>
            <translation>Breite : Dicke Hüfte</translation>
        </message>
        <message>
            <source>Aspect waist</source>
            <translation>Breite : Dicke Taille</translation>
        </message>
        <message>
            <source>Aspect chest</source>
            <translation>Breite : Dicke Brust</translation>
        </message>
        <message>
            <source>Head band</source>
            <translation>Stirnband</translation>
        </message>
        <message>
            <source>Girth head</source>
            <translation>Umfang Kopf</translation>
        </message>
        <message>
            <source>Aspect head</source>
            <translation>Länge : Breite Kopf</translation>
        </message>
        <message>
            <source>Tapered limb</source>
            <translation>Verjüngtes Glied</translation>
        </message>
        <message>
            <source>Girth distal</source>
            <translation>Umfang distal</translation>
        </message>
        <message>
            <source>Girth proximal</source>
            <translation>Umfang proximal</translation>
        </message>
        <message>
            <source>Middle</source>
            <translation>Mitte</translation>
        </message>
        <message>
            <source>Aspect distal</source>
            <translation>Breite : Dicke distal</translation>
        </message>
        <message>
            <source>Aspect proximal</source>
            <translation>Breite : Dicke proximal</translation>
        </message>
        <message>
            <source>Cylinder</source>
            <translation>Zylinder</translation>
        </message>
        <message>
            <source>Girth</source>
            <translation>Umfang</translation>
        </message>
        <message>
            <source>Aspect</source>
            <translation>Breite : Dicke</translation>
        </message>
        <message>
            <source>Cone</source>
            <translation>Kegel</translation>
        </message>
        <message>
            <source>Sphere</source>
            <translation>Kugel</translation>
        </message>
        <message>
            <source>Ellipsoid</source>
            <translation>Ellipsoid</translation>
        </message>
        <message>
            <source>Cuff</source>
            <translation>Manschette</translation>
        </message>
        <message>
            <source>Height</source>
            <translation>Höhe</translation>
        </message>
        <message>
            <source>Chambers</source>
            <translation>Kammern</translation>
        </message>
        <message>
            <source>Rows</source>
            <translation>Reihen</translation>
        </message>
        <message>
            <source>Stretch</source>
            <translation>Dehnung</translation>
        </message>
        <message>
            <source>Backing</source>
            <translation>Rückenstoff</translation>
        </message>
        <message>
            <source>Seam</source>
            <translation>Naht</translation>
        </message>
        <message>
            <source>Rim</source>
            <translation>Rand</translation>
        </message>
        <message>
            <source>Corner</source>
            <translation>Eckradius</translation>
        </message>
        <message>
            <source>Channel</source>
            <translation>Kanal</translation>
        </message>
        <message>
            <source>Overlap</source>
            <translation>Überlappung</translation>
        </message>
        <message>
            <source>Sleeve</source>
            <translation>Stulpe</translation>
        </message>
        <message>
            <source>Bands</source>
            <translation>Bänder</translation>
        </message>
        <message>
            <source>Growth</source>
            <translation>Zuwachs des Umfangs</translation>
        </message>
        <message>
            <source>Strap width</source>
            <translation>Bandbreite</translation>
        </message>
        <message>
            <source>Graduated sleeve</source>
            <translation>Abgestufte Stulpe</translation>
        </message>
        <message>
            <source>Stretch distal</source>
            <translation>Dehnung distal</translation>
        </message>
        <message>
            <source>Stretch proximal</source>
            <translation>Dehnung proximal</translation>
        </message>
        <message>
            <source>Round pad</source>
            <translation>Rundes Polster</translation>
        </message>
        <message>
            <source>Diameter</source>
            <translation>Durchmesser</translation>
        </message>
        <message>
            <source>Rings</source>
            <translation>Ringe</translation>
        </message>
        <message>
            <source>Spots</source>
            <translation>Punkte</translation>
        </message>
        <message>
            <source>Spot radius</source>
            <translation>Punktradius</translation>
        </message>
        <message>
            <source>Quilted pack</source>
            <translation>Gestepptes Kissen</translation>
        </message>
        <message>
            <source>Cover</source>
            <translation>Bedeckung</translation>
        </message>
        <message>
            <source>Spacing</source>
            <translation>Abstand</translation>
        </message>
    </context>
    <context>
        <name>PlanPart</name>
        <message>
            <source>%1 and %2</source>
            <translation>%1 und %2</translation>
        </message>
    </context>
    <context>
        <name>QObject</name>
        <message>
            <source>new plan</source>
            <translation>neuer Plan</translation>
        </message>
        <message>
            <source>no-go: %1</source>
            <translation>gesperrt: %1</translation>
        </message>
        <message>
            <source>outline</source>
            <translation>Umriss</translation>
        </message>
        <message>
            <source>chamber %1</source>
            <translation>Kammer %1</translation>
        </message>
        <message>
            <source>inset spot of %1</source>
            <translation>Innennahtpunkt von %1</translation>
        </message>
        <message>
            <source>inset line of %1</source>
            <translation>Innennahtlinie von %1</translation>
        </message>
        <message>
            <source>channel %1</source>
            <translation>Kanal %1</translation>
        </message>
        <message>
            <source>inlet %1</source>
            <translation>Einlass %1</translation>
        </message>
        <message>
            <source>strap %1</source>
            <translation>Gurt %1</translation>
        </message>
        <message>
            <source>Place</source>
            <translation>Ort</translation>
        </message>
        <message>
            <source>%1 from the distal end, %2°</source>
            <translation>%1 vom distalen Ende, %2°</translation>
        </message>
        <message>
            <source>%1 from the distal end</source>
            <translation>%1 vom distalen Ende</translation>
        </message>
        <message>
            <source>Bony site</source>
            <translation>Knochenstelle</translation>
        </message>
        <message>
            <source>Under</source>
            <translation>Unter</translation>
        </message>
        <message>
            <source>nothing</source>
            <translation>nichts</translation>
        </message>
        <message>
            <source>Contact pressure</source>
            <translation>Kontaktdruck</translation>
        </message>
        <message>
            <source>Mean over 1 cm²</source>
            <translation>Mittel über 1 cm²</translation>
        </message>
        <message>
            <source>Limit there</source>
            <translation>Grenzwert dort</translation>
        </message>
        <message>
            <source>Share of limit</source>
            <translation>Anteil am Grenzwert</translation>
        </message>
        <message>
            <source>%1 % after the model factor %2</source>
            <translation>%1 % nach dem Modellfaktor %2</translation>
        </message>
        <message>
            <source>Tissue depth</source>
            <translation>Gewebetiefe</translation>
        </message>
        <message>
            <source>Skin lowered by</source>
            <translation>Haut eingedrückt um</translation>
        </message>
    </context>
    <context>
        <name>SaveViews</name>
        <message>
            <source>Copy picture</source>
            <translation>Bild kopieren</translation>
        </message>
        <message>
            <source>Save picture…</source>
            <translation>Bild speichern…</translation>
        </message>
        <message>
            <source>Save picture</source>
            <translation>Bild speichern</translation>
        </message>
        <message>
            <source>PNG pictures (*.png)</source>
            <translation>PNG-Bilder (*.png)</translation>
        </message>
        <message>
            <source>Copy</source>
            <translation>Kopieren</translation>
        </message>
        <message>
            <source>Copy table</source>
            <translation>Tabelle kopieren</translation>
        </message>
        <message>
            <source>Save table as CSV…</source>
            <translation>Tabelle als CSV speichern…</translation>
        </message>
        <message>
            <source>Save table</source>
            <translation>Tabelle speichern</translation>
        </message>
        <message>
            <source>CSV tables (*.csv)</source>
            <translation>CSV-Tabellen (*.csv)</translation>
        </message>
        <message>
            <source>Save drawing…</source>
            <translation>Zeichnung speichern…</translation>
        </message>
        <message>
            <source>Save drawing</source>
            <translation>Zeichnung speichern</translation>
        </message>
        <message>
            <source>SVG drawings (*.svg)</source>
            <translation>SVG-Zeichnungen (*.svg)</translation>
        </message>
    </context>
    <context>
        <name>StepState</name>
        <message>
            <source>ready</source>
            <translation>bereit</translation>
        </message>
        <message>
            <source>being checked</source>
            <translation>wird geprüft</translation>
        </message>
        <message>
            <source>1 finding</source>
            <translation>1 Befund</translation>
        </message>
        <message>
            <source>%1 findings</source>
            <translation>%1 Befunde</translation>
        </message>
        <message>
            <source>needs a body</source>
            <translation>braucht einen Körper</translation>
        </message>
        <message>
            <source>needs repair</source>
            <translation>muss ausgebessert werden</translation>
        </message>
        <message>
            <source>needs a layout</source>
            <translation>braucht ein Layout</translation>
        </message>
        <message>
            <source>needs correcting in 1 place</source>
            <translation>muss an 1 Stelle ausgebessert werden</translation>
        </message>
        <message>
            <source>needs correcting in %1 places</source>
            <translation>muss an %1 Stellen ausgebessert werden</translation>
        </message>
        <message>
            <source>needs body and layout</source>
            <translation>braucht Körper und Layout</translation>
        </message>
        <message>
            <source>needs another place</source>
            <translation>braucht einen anderen Ort</translation>
        </message>
        <message>
            <source>needs a pressure or volume for %1</source>
            <translation>braucht Druck oder Volumen für %1</translation>
        </message>
        <message>
            <source>needs another limit set</source>
            <translation>braucht andere Grenzwerte</translation>
        </message>
        <message>
            <source>needs an estimate</source>
            <translation>braucht eine Schätzung</translation>
        </message>
        <message>
            <source>needs a new estimate</source>
            <translation>braucht eine neue Schätzung</translation>
        </message>
        <message>
            <source>nothing found above a limit</source>
            <translation>nichts über einem Grenzwert gefunden</translation>
        </message>
        <message>
            <source>Body</source>
            <translation>Körper</translation>
        </message>
        <message>
            <source>Layout</source>
            <translation>Layout</translation>
        </message>
        <message>
            <source>Wear</source>
            <translation>Anlegen</translation>
        </message>
        <message>
            <source>Inflation</source>
            <translation>Füllen</translation>
        </message>
        <message>
            <source>Limits</source>
            <translation>Grenzwerte</translation>
        </message>
        <message>
            <source>Note</source>
            <translation>Bericht</translation>
        </message>
        <message>
            <source>needs another unit</source>
            <translation>braucht eine andere Einheit</translation>
        </message>
        <message>
            <source>needs another file</source>
            <translation>braucht eine andere Datei</translation>
        </message>
        <message>
            <source>needs other steps of repair</source>
            <translation>braucht andere Schritte des Ausbesserns</translation>
        </message>
        <message>
            <source>needs other measures</source>
            <translation>braucht andere Maße</translation>
        </message>
        <message>
            <source>needs another tissue depth</source>
            <translation>braucht eine andere Gewebetiefe</translation>
        </message>
        <message>
            <source>needs the part of the person</source>
            <translation>braucht den Körperteil</translation>
        </message>
        <message>
            <source>needs an inflation that can be reached</source>
            <translation>braucht eine Füllung, die erreicht wird</translation>
        </message>
        <message>
            <source>needs a part that is worn</source>
            <translation>braucht einen Körperteil, der etwas trägt</translation>
        </message>
        <message>
            <source>needs the final estimate</source>
            <translation>braucht die endgültige Schätzung</translation>
        </message>
        <message>
            <source>needs a new fit</source>
            <translation>braucht eine neue Anpassung</translation>
        </message>
        <message>
            <source>not calibrated: factor %1</source>
            <translation>nicht kalibriert: Faktor %1</translation>
        </message>
        <message>
            <source>calibrated on %1 readings: factor %2</source>
            <translation>an %1 Messwerten kalibriert: Faktor %2</translation>
        </message>
        <message>
            <source>Bench</source>
            <translation>Prüfstand</translation>
        </message>
    </context>
    <context>
        <name>ViewLegend</name>
        <message>
            <source>— limit %1 %2 ÷ %3</source>
            <translation>— Grenzwert %1 %2 ÷ %3</translation>
        </message>
        <message>
            <source>— limit
%1 %2
÷ %3</source>
            <translation>— Grenzwert
%1 %2
÷ %3</translation>
        </message>
    </context>
    <context>
        <name>Words</name>
        <message>
            <source>the body</source>
            <translation>dem Körper</translation>
        </message>
        <message>
            <source>the tissue</source>
            <translation>dem Gewebe</translation>
        </message>
        <message>
            <source>the layout</source>
            <translation>dem Layout</translation>
        </message>
        <message>
            <source>the wear</source>
            <translation>dem Anlegen</translation>
        </message>
        <message>
            <source>the inflation</source>
            <translation>dem Füllen</translation>
        </message>
        <message>
            <source>the limits</source>
            <translation>den Grenzwerten</translation>
        </message>
        <message>
            <source>the mesh or solver settings</source>
            <translation>den Einstellungen von Netz oder Löser</translation>
        </message>
        <message>
            <source>the calibration</source>
            <translation>der Kalibrierung</translation>
        </message>
    </context>
    <context>
        <name>wrapgauge::BodyOverlay</name>
        <message>
            <source>No body yet. Open a mesh file or make a form in the step Body, or drop a file here.</source>
            <translation>Noch kein Körper. Im Schritt Körper ein Netz öffnen oder eine Form machen, oder eine Datei hierher ziehen.</translation>
        </message>
        <message>
            <source>whole body</source>
            <translation>ganzer Körper</translation>
        </message>
        <message>
            <source>one line for every %1 mm of air</source>
            <translation>je %1 mm Luft eine Linie</translation>
        </message>
        <message>
            <source>Seen: the front</source>
            <translation>Zu sehen: die Vorderseite</translation>
        </message>
        <message>
            <source>Seen: the back</source>
            <translation>Zu sehen: die Rückseite</translation>
        </message>
        <message>
            <source>Seen: the inner side</source>
            <translation>Zu sehen: die Innenseite</translation>
        </message>
        <message>
            <source>Seen: the outer side</source>
            <translation>Zu sehen: die Außenseite</translation>
        </message>
        <message>
            <source>Seen: the right side</source>
            <translation>Zu sehen: die rechte Seite</translation>
        </message>
        <message>
            <source>Seen: the left side</source>
            <translation>Zu sehen: die linke Seite</translation>
        </message>
    </context>
    <context>
        <name>wrapgauge::BodyStep</name>
        <message>
            <source>Where the body comes from</source>
            <translation>Woher der Körper kommt</translation>
        </message>
        <message>
            <source>From a mesh file or scan</source>
            <translation>Aus einer Netzdatei oder einem Scan</translation>
        </message>
        <message>
            <source>Made from measures</source>
            <translation>Aus Maßen gemacht</translation>
        </message>
        <message>
            <source>Girths</source>
            <translation>Umfänge</translation>
        </message>
        <message>
            <source>From distal end</source>
            <translation>Vom distalen Ende</translation>
        </message>
        <message>
            <source>Girth</source>
            <translation>Umfang</translation>
        </message>
        <message>
            <source>Girths along the body</source>
            <translation>Umfänge entlang des Körpers</translation>
        </message>
        <message>
            <source>Tissue under the skin</source>
            <translation>Gewebe unter der Haut</translation>
        </message>
        <message>
            <source>Open a mesh…</source>
            <translation>Netz öffnen…</translation>
        </message>
        <message>
            <source>Unit of the file</source>
            <translation>Einheit der Datei</translation>
        </message>
        <message>
            <source>unit guessed from size</source>
            <translation>Einheit nach der Größe geraten</translation>
        </message>
        <message>
            <source>Raw scan: repair it</source>
            <translation>Roher Scan: ausbessern</translation>
        </message>
        <message>
            <source>Repaired it can be read: tick Raw scan: repair it.</source>
            <translation>Ausgebessert lässt er sich lesen: „Roher Scan: ausbessern“ ankreuzen.</translation>
        </message>
        <message>
            <source>Repair the scan</source>
            <translation>Scan ausbessern</translation>
        </message>
        <message>
            <source>Open a mesh</source>
            <translation>Netz öffnen</translation>
        </message>
        <message>
            <source>Meshes (*.obj *.stl *.ply *.glb *.gltf);;All files (*)</source>
            <translation>Netze (*.obj *.stl *.ply *.glb *.gltf);;Alle Dateien (*)</translation>
        </message>
        <message>
            <source>Another body</source>
            <translation>Anderer Körper</translation>
        </message>
        <message>
            <source>No mesh yet. Open one, or drop it on the window.</source>
            <translation>Noch kein Netz. Eines öffnen oder auf das Fenster ziehen.</translation>
        </message>
        <message>
            <source> (not one closed loop)</source>
            <translation> (keine einzelne geschlossene Linie)</translation>
        </message>
        <message>
            <source>Places on the skin</source>
            <translation>Stellen auf der Haut</translation>
        </message>
        <message>
            <source>Long axis of the body, from hand or foot to trunk</source>
            <translation>Längsachse des Körpers, von Hand oder Fuß zum Rumpf</translation>
        </message>
        <message>
            <source>long axis found automatically</source>
            <translation>Längsachse wird gefunden</translation>
        </message>
        <message>
            <source>long axis along %1 of the file</source>
            <translation>Längsachse entlang %1 der Datei</translation>
        </message>
        <message>
            <source>From hand or foot to trunk.</source>
            <translation>Von Hand oder Fuß zum Rumpf.</translation>
        </message>
        <message>
            <source>long axis as the plan says</source>
            <translation>Längsachse wie im Plan</translation>
        </message>
        <message>
            <source>front not given</source>
            <translation>Vorderseite nicht angegeben</translation>
        </message>
        <message>
            <source>front along %1 of the file</source>
            <translation>Vorderseite entlang %1 der Datei</translation>
        </message>
        <message>
            <source>Where the person&apos;s front faces.</source>
            <translation>Wohin die Vorderseite der Person zeigt.</translation>
        </message>
        <message>
            <source>front as the plan says</source>
            <translation>Vorderseite wie im Plan</translation>
        </message>
        <message>
            <source>Front of the person in the file</source>
            <translation>Vorderseite der Person in der Datei</translation>
        </message>
    </context>
    <context>
        <name>wrapgauge::BodyView</name>
        <message>
            <source>The body with the layout on it</source>
            <translation>Der Körper mit dem Layout darauf</translation>
        </message>
        <message>
            <source>body</source>
            <translation>Körper</translation>
        </message>
        <message>
            <source>Front</source>
            <translation>Vorn</translation>
        </message>
        <message>
            <source>Look at the anchor</source>
            <translation>Auf den Anker blicken</translation>
        </message>
        <message>
            <source>Back</source>
            <translation>Hinten</translation>
        </message>
        <message>
            <source>Look from the opposite side</source>
            <translation>Von der Gegenseite blicken</translation>
        </message>
        <message>
            <source>Proximal</source>
            <translation>Proximal</translation>
        </message>
        <message>
            <source>Look from the end towards the trunk</source>
            <translation>Vom rumpfnahen Ende blicken</translation>
        </message>
        <message>
            <source>Distal</source>
            <translation>Distal</translation>
        </message>
        <message>
            <source>Look from the end away from the trunk</source>
            <translation>Vom rumpffernen Ende blicken</translation>
        </message>
        <message>
            <source>All</source>
            <translation>Ganz</translation>
        </message>
        <message>
            <source>Show all of the layout</source>
            <translation>Das ganze Layout zeigen</translation>
        </message>
        <message>
            <source>Place</source>
            <translation>Setzen</translation>
        </message>
        <message>
            <source>Place the layout: click to anchor it, drag to move it along and round the body, drag with Ctrl to turn it</source>
            <translation>Layout setzen: Klick verankert, Ziehen verschiebt längs und um den Körper, Ziehen mit Strg dreht</translation>
        </message>
        <message>
            <source>Placing: click to anchor, drag to move, drag with Ctrl to turn. Esc ends it.</source>
            <translation>Setzen: Klick verankert, Ziehen verschiebt, Ziehen mit Strg dreht. Esc beendet es.</translation>
        </message>
        <message>
            <source>Drawn without graphics system: %1.</source>
            <translation>Ohne Grafiksystem gezeichnet: %1.</translation>
        </message>
        <message>
            <source>Device</source>
            <translation>Gerät</translation>
        </message>
        <message>
            <source>Show the device as it was solved: the outer sheet seen through, the skin side in colours</source>
            <translation>Das Gerät zeigen, wie es berechnet wurde: die Außenlage durchscheinend, die Hautseite in Farben</translation>
        </message>
        <message>
            <source>Skin</source>
            <translation>Haut</translation>
        </message>
        <message>
            <source>Show the pressure on the skin, in the very colours of the legend</source>
            <translation>Den Druck auf der Haut zeigen, genau in den Farben der Legende</translation>
        </message>
        <message>
            <source>Look at the front of the person</source>
            <translation>Auf die Vorderseite der Person schauen</translation>
        </message>
    </context>
    <context>
        <name>wrapgauge::ChamberTable</name>
        <message>
            <source>Chambers at the shown state</source>
            <translation>Kammern im gezeigten Zustand</translation>
        </message>
        <message>
            <source>chambers</source>
            <translation>Kammern</translation>
        </message>
        <message>
            <source>The figures of each chamber come with the first estimate.</source>
            <translation>Die Werte jeder Kammer kommen mit der ersten Schätzung.</translation>
        </message>
    </context>
    <context>
        <name>wrapgauge::ChamberTableModel</name>
        <message>
            <source>no finding</source>
            <translation>nichts zu sagen</translation>
        </message>
        <message>
            <source>Chamber</source>
            <translation>Kammer</translation>
        </message>
        <message>
            <source>Gauge pressure</source>
            <translation>Überdruck</translation>
        </message>
        <message>
            <source>Volume</source>
            <translation>Volumen</translation>
        </message>
        <message>
            <source>Mean</source>
            <translation>Mittel</translation>
        </message>
        <message>
            <source>Peak over 1 cm²</source>
            <translation>Spitze über 1 cm²</translation>
        </message>
        <message>
            <source>Contact area</source>
            <translation>Kontaktfläche</translation>
        </message>
        <message>
            <source>Force</source>
            <translation>Kraft</translation>
        </message>
        <message>
            <source>Share of limit</source>
            <translation>Anteil am Grenzwert</translation>
        </message>
        <message>
            <source>Finding</source>
            <translation>Befund</translation>
        </message>
        <message>
            <source>Gauge</source>
            <translation>Innen</translation>
        </message>
        <message>
            <source>Vol.</source>
            <translation>Vol.</translation>
        </message>
        <message>
            <source>Peak</source>
            <translation>Spitze</translation>
        </message>
        <message>
            <source>Area</source>
            <translation>Fläche</translation>
        </message>
        <message>
            <source>Limit</source>
            <translation>Grenzwert</translation>
        </message>
        <message>
            <source>stop</source>
            <translation>Halt</translation>
        </message>
        <message>
            <source>above limit</source>
            <translation>zu hoch</translation>
        </message>
        <message>
            <source>warning</source>
            <translation>Warnung</translation>
        </message>
    </context>
    <context>
        <name>wrapgauge::DrawingDialog</name>
        <message>
            <source>Drawing: %1</source>
            <translation>Zeichnung: %1</translation>
        </message>
        <message>
            <source>Unit of the drawing</source>
            <translation>Einheit der Zeichnung</translation>
        </message>
        <message>
            <source>as the file says</source>
            <translation>wie in der Datei</translation>
        </message>
        <message>
            <source>Width of channels drawn as lines</source>
            <translation>Breite von Kanälen, die Linien sind</translation>
        </message>
        <message>
            <source>Width of inset seams drawn as lines</source>
            <translation>Breite von Innennähten, die Linien sind</translation>
        </message>
        <message>
            <source>Stiffness of strap cloth</source>
            <translation>Steifigkeit des Gurtstoffs</translation>
        </message>
        <message>
            <source>Thickness of strap cloth</source>
            <translation>Dicke des Gurtstoffs</translation>
        </message>
        <message>
            <source>Goes round and closes, stretched by</source>
            <translation>Geht herum und schließt, gedehnt um</translation>
        </message>
        <message>
            <source>Stretch of the closure</source>
            <translation>Dehnung des Verschlusses</translation>
        </message>
        <message>
            <source>Unit</source>
            <translation>Einheit</translation>
        </message>
        <message>
            <source>Channel lines</source>
            <translation>Kanallinien</translation>
        </message>
        <message>
            <source>Inset lines</source>
            <translation>Innennahtlinien</translation>
        </message>
        <message>
            <source>Strap cloth</source>
            <translation>Gurtstoff</translation>
        </message>
        <message>
            <source>Strap thickness</source>
            <translation>Gurtdicke</translation>
        </message>
        <message>
            <source>Closing stretch</source>
            <translation>Schließdehnung</translation>
        </message>
        <message>
            <source>Click a shape and say what it is. The plan stays as it is until you use the drawing.</source>
            <translation>Form anklicken und sagen, was sie ist. Der Plan bleibt, wie er ist, bis die Zeichnung übernommen wird.</translation>
        </message>
        <message>
            <source>Shapes</source>
            <translation>Formen</translation>
        </message>
        <message>
            <source>Measures</source>
            <translation>Maße</translation>
        </message>
        <message>
            <source>Sheets, closing</source>
            <translation>Lagen, Schließen</translation>
        </message>
        <message>
            <source>Use this drawing</source>
            <translation>Zeichnung übernehmen</translation>
        </message>
        <message>
            <source>Join line ends</source>
            <translation>Linienenden verbinden</translation>
        </message>
        <message>
            <source>Join line ends that lie apart by at most</source>
            <translation>Linienenden verbinden, die höchstens so weit auseinander liegen</translation>
        </message>
        <message>
            <source>Ends as close as this are read as one. Left out: 0.1 mm in a DXF file, not joined in an SVG file.</source>
            <translation>Enden, die so nah beieinander liegen, gelten als eines. Weggelassen: 0,1 mm in einer DXF-Datei, unverbunden in einer SVG-Datei.</translation>
        </message>
        <message>
            <source>Say first which shape is the outline.</source>
            <translation>Zuerst sagen, welche Form der Umriss ist.</translation>
        </message>
        <message>
            <source>There is no chamber and no channel there. Click inside one.</source>
            <translation>Dort ist keine Kammer und kein Kanal. Bitte in eine hineinklicken.</translation>
        </message>
    </context>
    <context>
        <name>wrapgauge::FindingsList</name>
        <message>
            <source>Stop</source>
            <translation>Halt</translation>
        </message>
        <message>
            <source>Above limit</source>
            <translation>Über dem Grenzwert</translation>
        </message>
        <message>
            <source>Warning</source>
            <translation>Warnung</translation>
        </message>
        <message>
            <source>Note</source>
            <translation>Hinweis</translation>
        </message>
        <message>
            <source>When casting</source>
            <translation>Beim Gießen</translation>
        </message>
        <message>
            <source>Model factor: predicted pressures are multiplied by it before they are held against a limit, because no measurement has confirmed them yet.</source>
            <translation>Modellfaktor: Mit ihm werden vorhergesagte Drücke malgenommen, bevor sie mit einem Grenzwert verglichen werden, weil noch keine Messung sie bestätigt hat.</translation>
        </message>
        <message>
            <source>To correct</source>
            <translation>Zu korrigieren</translation>
        </message>
    </context>
    <context>
        <name>wrapgauge::FlatView</name>
        <message>
            <source>The flat layout</source>
            <translation>Das flache Layout</translation>
        </message>
        <message>
            <source>layout</source>
            <translation>Layout</translation>
        </message>
        <message>
            <source>Nothing is chosen.</source>
            <translation>Nichts ist gewählt.</translation>
        </message>
        <message>
            <source>%1: %2 mm wide, %3 mm high</source>
            <translation>%1: %2 mm breit, %3 mm hoch</translation>
        </message>
        <message>
            <source>left edge at x %1 mm, lower edge at y %2 mm</source>
            <translation>linker Rand bei x %1 mm, unterer Rand bei y %2 mm</translation>
        </message>
        <message>
            <source>moved by x %1 mm, y %2 mm</source>
            <translation>verschoben um x %1 mm, y %2 mm</translation>
        </message>
        <message>
            <source>No layout yet. Read a drawing or make a layout in the step Layout.</source>
            <translation>Noch kein Layout. Im Schritt Layout eine Zeichnung lesen oder ein Layout machen.</translation>
        </message>
        <message>
            <source>Proximal is up; x runs round the limb.</source>
            <translation>Proximal ist oben; x läuft um das Glied.</translation>
        </message>
    </context>
    <context>
        <name>wrapgauge::FlatGrips</name>
        <message>
            <source>Point %1 of %2: drag it to change the shape.</source>
            <translation>Punkt %1 von %2: ziehen, um die Form zu ändern.</translation>
        </message>
        <message>
            <source>First closing line: drag it to close elsewhere; the closing length stays.</source>
            <translation>Erste Schließlinie: ziehen, um anderswo zu schließen; die Schließlänge bleibt.</translation>
        </message>
        <message>
            <source>Second closing line: drag it to change the closing length. What lies beyond overlaps.</source>
            <translation>Zweite Schließlinie: ziehen, um die Schließlänge zu ändern. Was jenseits liegt, überlappt.</translation>
        </message>
        <message>
            <source>Second closing line: drag it to change the stretch. What lies beyond overlaps.</source>
            <translation>Zweite Schließlinie: ziehen, um die Dehnung zu ändern. Was jenseits liegt, überlappt.</translation>
        </message>
        <message>
            <source>point %1 of %2: x %3, y %4 mm</source>
            <translation>Punkt %1 von %2: x %3, y %4 mm</translation>
        </message>
        <message>
            <source>first closing line: x %1 mm</source>
            <translation>erste Schließlinie: x %1 mm</translation>
        </message>
        <message>
            <source>second closing line: closing length %1 mm</source>
            <translation>zweite Schließlinie: Schließlänge %1 mm</translation>
        </message>
        <message>
            <source>, stretch %1 %</source>
            <translation>, Dehnung %1 %</translation>
        </message>
    </context>
    <context>
        <name>wrapgauge::InflationStep</name>
        <message>
            <source>The layout has no inlet yet.</source>
            <translation>Das Layout hat noch keinen Einlass.</translation>
        </message>
        <message>
            <source>Inflation</source>
            <translation>Füllen</translation>
        </message>
    </context>
    <context>
        <name>wrapgauge::InletFields</name>
        <message>
            <source>Inlet %1</source>
            <translation>Einlass %1</translation>
        </message>
        <message>
            <source>Inlet %1 is filled by</source>
            <translation>Einlass %1 wird gefüllt</translation>
        </message>
        <message>
            <source>to a gauge pressure</source>
            <translation>bis zu einem Überdruck</translation>
        </message>
        <message>
            <source>to a volume between the sheets</source>
            <translation>bis zu einem Volumen zwischen den Lagen</translation>
        </message>
        <message>
            <source>with air pushed in and closed off</source>
            <translation>mit eingedrückter, abgesperrter Luft</translation>
        </message>
        <message>
            <source>Pressure of inlet %1</source>
            <translation>Druck am Einlass %1</translation>
        </message>
        <message>
            <source>Volume of inlet %1</source>
            <translation>Volumen am Einlass %1</translation>
        </message>
        <message>
            <source>Air pushed into inlet %1</source>
            <translation>In Einlass %1 gedrückte Luft</translation>
        </message>
        <message>
            <source>Dead volume of inlet %1</source>
            <translation>Totvolumen am Einlass %1</translation>
        </message>
        <message>
            <source>What tubing, fitting and the syringe's end hold; they do not stretch.</source>
            <translation>Was Schlauch, Anschluss und Spritzenende fassen; sie dehnen sich nicht.</translation>
        </message>
        <message>
            <source>Programme of inlet %1 over time</source>
            <translation>Programm von Einlass %1 über der Zeit</translation>
        </message>
        <message>
            <source>Level %</source>
            <translation>Stufe %</translation>
        </message>
        <message>
            <source>Ramp s</source>
            <translation>Rampe s</translation>
        </message>
        <message>
            <source>Hold s</source>
            <translation>Halten s</translation>
        </message>
        <message>
            <source>Add a step</source>
            <translation>Stufe anfügen</translation>
        </message>
        <message>
            <source>Remove step</source>
            <translation>Stufe entfernen</translation>
        </message>
        <message>
            <source>Without steps the inlet follows the session. Steps are repeated until the session ends; a level of 100 % is the amount above.</source>
            <translation>Ohne Stufen folgt der Einlass der Sitzung. Stufen wiederholen sich bis zum Ende der Sitzung; 100 % ist die Menge oben.</translation>
        </message>
    </context>
    <context>
        <name>wrapgauge::LayoutDialog</name>
        <message>
            <source>Kind of layout</source>
            <translation>Art des Layouts</translation>
        </message>
        <message>
            <source>Make a layout</source>
            <translation>Layout machen</translation>
        </message>
        <message>
            <source>Make</source>
            <translation>Machen</translation>
        </message>
        <message>
            <source>%1 × %2 mm. Chambers: %3, inlets: %4.</source>
            <translation>%1 × %2 mm. Kammern: %3, Einlässe: %4.</translation>
        </message>
        <message>
            <source>The girths are not this body&apos;s: with the layout&apos;s middle at station %1 mm, not all of its height has closed sections. Type the girths, or change station or height.</source>
            <translation>Die Umfänge sind nicht von diesem Körper: Mit der Mitte des Layouts an der Station %1 mm hat nicht seine ganze Höhe geschlossene Schnitte. Umfänge eintippen, oder Station oder Höhe ändern.</translation>
        </message>
        <message>
            <source>An inlet that has no pressure yet starts at %1: low on purpose, by judgement. Raise it in the step Inflation.</source>
            <translation>Ein Einlass ohne Druck beginnt bei %1: absichtlich niedrig, eine Einschätzung. Erhöhen im Schritt Füllen.</translation>
        </message>
        <message>
            <source>Width</source>
            <translation>Breite</translation>
        </message>
        <message>
            <source>%1 mm</source>
            <translation>%1 mm</translation>
        </message>
        <message>
            <source>%1: with these other sizes at most %2 can be made, not %3.</source>
            <translation>%1: Mit den übrigen Maßen geht höchstens %2, nicht %3.</translation>
        </message>
        <message>
            <source>%1: with these other sizes at least %2 is needed, not %3.</source>
            <translation>%1: Mit den übrigen Maßen sind mindestens %2 nötig, nicht %3.</translation>
        </message>
    </context>
    <context>
        <name>wrapgauge::LayoutStep</name>
        <message>
            <source>What the layout needs</source>
            <translation>Was das Layout braucht</translation>
        </message>
        <message>
            <source>Open a drawing…</source>
            <translation>Zeichnung öffnen…</translation>
        </message>
        <message>
            <source>Make one…</source>
            <translation>Eines machen…</translation>
        </message>
        <message>
            <source>Make a layout from sizes</source>
            <translation>Layout aus Maßen machen</translation>
        </message>
        <message>
            <source>Sheets</source>
            <translation>Lagen</translation>
        </message>
        <message>
            <source>Parts</source>
            <translation>Teile</translation>
        </message>
        <message>
            <source>Open a drawing or layout</source>
            <translation>Zeichnung oder Layout öffnen</translation>
        </message>
        <message>
            <source>Drawings and layouts (*.svg *.dxf *.json);;All files (*)</source>
            <translation>Zeichnungen und Layouts (*.svg *.dxf *.json);;Alle Dateien (*)</translation>
        </message>
        <message>
            <source>Open a layout</source>
            <translation>Layout öffnen</translation>
        </message>
        <message>
            <source>Open a drawing</source>
            <translation>Zeichnung öffnen</translation>
        </message>
        <message>
            <source>Make a layout</source>
            <translation>Layout machen</translation>
        </message>
        <message>
            <source>No layout yet. Open a drawing (SVG, DXF) or a layout file, or make one; files can also be dropped on the window.</source>
            <translation>Noch kein Layout. Eine Zeichnung (SVG, DXF) oder Layoutdatei öffnen oder eines machen; Dateien lassen sich auch auf das Fenster ziehen.</translation>
        </message>
        <message>
            <source>From the drawing %1. A change made here is kept in the plan; the drawing stays as it is.</source>
            <translation>Aus der Zeichnung %1. Eine Änderung hier steht im Plan; die Zeichnung bleibt, wie sie ist.</translation>
        </message>
    </context>
    <context>
        <name>wrapgauge::LimitsStep</name>
        <message>
            <source>Findings, worst first</source>
            <translation>Befunde, der schlimmste zuerst</translation>
        </message>
        <message>
            <source>Aim</source>
            <translation>Ziel</translation>
        </message>
        <message>
            <source>How it is used</source>
            <translation>Wie es benutzt wird</translation>
        </message>
        <message>
            <source>held for a session</source>
            <translation>eine Sitzung lang gehalten</translation>
        </message>
        <message>
            <source>held for a minute at most</source>
            <translation>höchstens eine Minute gehalten</translation>
        </message>
        <message>
            <source>pulses</source>
            <translation>Pulse</translation>
        </message>
        <message>
            <source>Another limit set…</source>
            <translation>Andere Grenzwerte…</translation>
        </message>
        <message>
            <source>Default limit set</source>
            <translation>Standard-Grenzwerte</translation>
        </message>
        <message>
            <source>Take the program's own limit set</source>
            <translation>Die Grenzwerte des Programms nehmen</translation>
        </message>
        <message>
            <source>Why a laxer limit set is used</source>
            <translation>Warum weniger strenge Grenzwerte gelten</translation>
        </message>
        <message>
            <source>why it may be laxer</source>
            <translation>warum weniger streng</translation>
        </message>
        <message>
            <source>Use</source>
            <translation>Gebrauch</translation>
        </message>
        <message>
            <source>Limit set</source>
            <translation>Grenzwerte</translation>
        </message>
        <message>
            <source>Find the highest inflation within limits</source>
            <translation>Höchste Füllung innerhalb der Grenzwerte suchen</translation>
        </message>
        <message>
            <source>Wanted mean contact pressure, kPa; leave a chamber empty to let it follow.</source>
            <translation>Gewünschter mittlerer Kontaktdruck, kPa; ein leeres Feld lässt die Kammer folgen.</translation>
        </message>
        <message>
            <source>Wanted mean contact pressure of each chamber</source>
            <translation>Gewünschter mittlerer Kontaktdruck jeder Kammer</translation>
        </message>
        <message>
            <source>Chamber</source>
            <translation>Kammer</translation>
        </message>
        <message>
            <source>Wanted kPa</source>
            <translation>Gewünscht kPa</translation>
        </message>
        <message>
            <source>Find the inflation</source>
            <translation>Füllung suchen</translation>
        </message>
        <message>
            <source>Use it</source>
            <translation>Übernehmen</translation>
        </message>
        <message>
            <source>Use the inflation that was found</source>
            <translation>Die gefundene Füllung übernehmen</translation>
        </message>
        <message>
            <source>Open a limit set</source>
            <translation>Grenzwerte öffnen</translation>
        </message>
        <message>
            <source>Limit sets (*.json)</source>
            <translation>Grenzwerte (*.json)</translation>
        </message>
        <message>
            <source>Inflation of the aim</source>
            <translation>Füllung des Ziels</translation>
        </message>
        <message>
            <source>The program's own limit set: judgement throughout, no row is a proven threshold.</source>
            <translation>Die Grenzwerte des Programms: durchweg Einschätzung, keine Zeile ist eine bewiesene Schwelle.</translation>
        </message>
        <message>
            <source>Status: %1. Predicted by an uncalibrated model; not a medical device.</source>
            <translation>Stand: %1. Vorhersage eines nicht kalibrierten Modells; kein Medizinprodukt.</translation>
        </message>
        <message>
            <source>stopped: not to be worn</source>
            <translation>angehalten: nicht zu tragen</translation>
        </message>
        <message>
            <source>done, above a limit</source>
            <translation>fertig, über einem Grenzwert</translation>
        </message>
        <message>
            <source>done</source>
            <translation>fertig</translation>
        </message>
        <message>
            <source>Notes</source>
            <translation>Hinweise</translation>
        </message>
        <message>
            <source>nothing to act on</source>
            <translation>nichts zu tun</translation>
        </message>
        <message>
            <source>Notes: %1</source>
            <translation>Hinweise: %1</translation>
        </message>
        <message>
            <source>Highest inflation within the limits</source>
            <translation>Höchste Füllung innerhalb der Grenzwerte</translation>
        </message>
        <message>
            <source>Status: %1. Predicted by a calibrated model; not a medical device.</source>
            <translation>Stand: %1. Vorhersage eines kalibrierten Modells; kein Medizinprodukt.</translation>
        </message>
    </context>
    <context>
        <name>wrapgauge::MainWindow</name>
        <message>
            <source>Predicted by an uncalibrated model. Not a medical device; ask a clinician before anyone wears it.</source>
            <translation>Vorhersage eines nicht kalibrierten Modells. Kein Medizinprodukt; vor dem Tragen ärztlichen Rat einholen.</translation>
        </message>
        <message>
            <source>The note was written to %1; empty cells are for the study to fill.</source>
            <translation>Der Bericht wurde nach %1 geschrieben; leere Felder füllt die Studie.</translation>
        </message>
        <message>
            <source>The last session did not end well. Its plan is here again as it stood at the last change; save it to keep it.</source>
            <translation>Die letzte Sitzung endete nicht richtig. Ihr Plan ist wieder da, wie er bei der letzten Änderung stand; speichern Sie ihn, um ihn zu behalten.</translation>
        </message>
        <message>
            <source>This is a worked demo: a cuff of four chambers on a forearm. Change anything; Undo takes it back. Plan &gt; New starts your own.</source>
            <translation>Dies ist ein fertiges Beispiel: eine Manschette mit vier Kammern an einem Unterarm. Ändern Sie beliebig; Rückgängig nimmt es zurück. Plan &gt; Neu beginnt einen eigenen.</translation>
        </message>
        <message>
            <source>%1[*] – Wrapgauge</source>
            <translation>%1[*] – Wrapgauge</translation>
        </message>
        <message>
            <source>Save the plan</source>
            <translation>Plan speichern</translation>
        </message>
        <message>
            <source>Plans (*.json)</source>
            <translation>Pläne (*.json)</translation>
        </message>
        <message>
            <source>Folder for the results</source>
            <translation>Ordner für die Ergebnisse</translation>
        </message>
        <message>
            <source>Results were written to %1.</source>
            <translation>Die Ergebnisse wurden nach %1 geschrieben.</translation>
        </message>
        <message>
            <source>Unsaved changes</source>
            <translation>Nicht gespeicherte Änderungen</translation>
        </message>
        <message>
            <source>The plan has changes that were not saved. Save them?</source>
            <translation>Der Plan hat Änderungen, die nicht gespeichert sind. Speichern?</translation>
        </message>
        <message>
            <source>&amp;Plan</source>
            <translation>&amp;Plan</translation>
        </message>
        <message>
            <source>&amp;New</source>
            <translation>&amp;Neu</translation>
        </message>
        <message>
            <source>&amp;Open…</source>
            <translation>Ö&amp;ffnen…</translation>
        </message>
        <message>
            <source>Open a plan</source>
            <translation>Plan öffnen</translation>
        </message>
        <message>
            <source>&amp;Recent plans</source>
            <translation>&amp;Letzte Pläne</translation>
        </message>
        <message>
            <source>Worked &amp;demo</source>
            <translation>&amp;Beispiel</translation>
        </message>
        <message>
            <source>&amp;Save</source>
            <translation>&amp;Speichern</translation>
        </message>
        <message>
            <source>Save &amp;as…</source>
            <translation>Speichern &amp;unter…</translation>
        </message>
        <message>
            <source>Ctrl+Shift+S</source>
            <translation>Ctrl+Shift+S</translation>
        </message>
        <message>
            <source>Open a &amp;mesh…</source>
            <translation>Netz öffne&amp;n…</translation>
        </message>
        <message>
            <source>Ctrl+M</source>
            <translation>Ctrl+M</translation>
        </message>
        <message>
            <source>Open a dra&amp;wing…</source>
            <translation>&amp;Zeichnung öffnen…</translation>
        </message>
        <message>
            <source>Ctrl+D</source>
            <translation>Ctrl+D</translation>
        </message>
        <message>
            <source>Save &amp;results…</source>
            <translation>&amp;Ergebnisse speichern…</translation>
        </message>
        <message>
            <source>Save the no&amp;te…</source>
            <translation>Be&amp;richt speichern…</translation>
        </message>
        <message>
            <source>Ctrl+Shift+N</source>
            <translation>Ctrl+Shift+N</translation>
        </message>
        <message>
            <source>&amp;Quit</source>
            <translation>Been&amp;den</translation>
        </message>
        <message>
            <source>None yet</source>
            <translation>Noch keine</translation>
        </message>
        <message>
            <source>&amp;Edit</source>
            <translation>&amp;Bearbeiten</translation>
        </message>
        <message>
            <source>Undo</source>
            <translation>Rückgängig</translation>
        </message>
        <message>
            <source>Redo</source>
            <translation>Wiederholen</translation>
        </message>
        <message>
            <source>E&amp;stimate</source>
            <translation>&amp;Schätzen</translation>
        </message>
        <message>
            <source>Ctrl+E</source>
            <translation>Ctrl+E</translation>
        </message>
        <message>
            <source>&amp;Cancel</source>
            <translation>&amp;Abbrechen</translation>
        </message>
        <message>
            <source>&amp;View</source>
            <translation>&amp;Ansicht</translation>
        </message>
        <message>
            <source>Step %1</source>
            <translation>Schritt %1</translation>
        </message>
        <message>
            <source>To the plan</source>
            <translation>Zum Plan</translation>
        </message>
        <message>
            <source>To the &amp;body</source>
            <translation>Zum &amp;Körper</translation>
        </message>
        <message>
            <source>To the &amp;flat layout</source>
            <translation>Zum &amp;flachen Layout</translation>
        </message>
        <message>
            <source>To the &amp;inflation strip</source>
            <translation>Zum F&amp;üllstreifen</translation>
        </message>
        <message>
            <source>kPa first</source>
            <translation>kPa zuerst</translation>
        </message>
        <message>
            <source>mmHg first</source>
            <translation>mmHg zuerst</translation>
        </message>
        <message>
            <source>&amp;Colours</source>
            <translation>Fa&amp;rben</translation>
        </message>
        <message>
            <source>&amp;Language</source>
            <translation>&amp;Sprache</translation>
        </message>
        <message>
            <source>As the desktop</source>
            <translation>Wie der Desktop</translation>
        </message>
        <message>
            <source>Light</source>
            <translation>Hell</translation>
        </message>
        <message>
            <source>Dark</source>
            <translation>Dunkel</translation>
        </message>
        <message>
            <source>The language changes when the program is started again.</source>
            <translation>Die Sprache wechselt beim nächsten Start des Programms.</translation>
        </message>
        <message>
            <source>&amp;Help</source>
            <translation>&amp;Hilfe</translation>
        </message>
        <message>
            <source>&amp;First steps</source>
            <translation>&amp;Erste Schritte</translation>
        </message>
        <message>
            <source>First steps</source>
            <translation>Erste Schritte</translation>
        </message>
        <message>
            <source>&amp;About Wrapgauge</source>
            <translation>&amp;Über Wrapgauge</translation>
        </message>
        <message>
            <source>About Wrapgauge</source>
            <translation>Über Wrapgauge</translation>
        </message>
        <message>
            <source>Wrapgauge %1

Predicts, before anyone wears it, how hard an inflatable silicone wearable presses on a body.

Predictions only: not a medical device; ask a clinician before anyone wears it.

Licence: GPL-3.0-or-later.</source>
            <translation>Wrapgauge %1

Sagt vorher, bevor es jemand trägt, wie stark ein aufblasbares Wearable aus Silikon auf einen Körper drückt.

Nur Vorhersagen: kein Medizinprodukt; vor dem Tragen ärztlichen Rat einholen.

Lizenz: GPL-3.0-or-later.</translation>
        </message>
        <message>
            <source>Another window has this plan open. What is saved there is not overwritten from here: save under another name, or close one of the two.</source>
            <translation>Ein anderes Fenster hat diesen Plan offen. Was dort gespeichert wird, wird von hier nicht überschrieben: unter einem anderen Namen speichern oder eines der beiden schließen.</translation>
        </message>
        <message>
            <source>A file of the plan is missing</source>
            <translation>Eine Datei des Plans fehlt</translation>
        </message>
        <message>
            <source>%1 names %2, which is not there. Show where it is now.</source>
            <translation>%1 nennt %2, das nicht da ist. Zeigen, wo es jetzt liegt.</translation>
        </message>
        <message>
            <source>Find it…</source>
            <translation>Suchen…</translation>
        </message>
        <message>
            <source>Where is %1?</source>
            <translation>Wo ist %1?</translation>
        </message>
        <message>
            <source>%1;;All files (*)</source>
            <translation>%1;;Alle Dateien (*)</translation>
        </message>
        <message>
            <source>&amp;Final estimate</source>
            <translation>&amp;Endgültige Schätzung</translation>
        </message>
        <message>
            <source>Changes not saved</source>
            <translation>Änderungen nicht gespeichert</translation>
        </message>
        <message>
            <source>Saved</source>
            <translation>Gespeichert</translation>
        </message>
        <message>
            <source>Start pa&amp;ge…</source>
            <translation>&amp;Startseite…</translation>
        </message>
        <message>
            <source>Save the fillin&amp;g as pictures…</source>
            <translation>Die &amp;Füllung als Bilder speichern…</translation>
        </message>
        <message>
            <source>&amp;Go to a field…</source>
            <translation>Zu einem &amp;Feld gehen…</translation>
        </message>
        <message>
            <source>Ctrl+K</source>
            <translation>Ctrl+K</translation>
        </message>
        <message>
            <source>A new folder for the pictures of the filling</source>
            <translation>Ein neuer Ordner für die Bilder der Füllung</translation>
        </message>
        <message>
            <source>filling</source>
            <translation>Füllung</translation>
        </message>
        <message>
            <source>Saving pictures of the filling</source>
            <translation>Bilder der Füllung werden gespeichert</translation>
        </message>
        <message>
            <source>Cancel</source>
            <translation>Abbrechen</translation>
        </message>
        <message>
            <source>%1 pictures of the filling were written to %2.</source>
            <translation>%1 Bilder der Füllung wurden nach %2 geschrieben.</translation>
        </message>
        <message>
            <source>Save the filling as a &amp;film…</source>
            <translation>Füllen als &amp;Film sichern …</translation>
        </message>
        <message>
            <source>&amp;Print what is shown…</source>
            <translation>Gezeigtes &amp;drucken …</translation>
        </message>
        <message>
            <source>Save the filling as a film</source>
            <translation>Füllen als Film sichern</translation>
        </message>
        <message>
            <source>WebP films (*.webp)</source>
            <translation>WebP-Filme (*.webp)</translation>
        </message>
        <message>
            <source>Making the film of the filling</source>
            <translation>Der Film vom Füllen entsteht</translation>
        </message>
        <message>
            <source>A film of %1 pictures was written to %2.</source>
            <translation>Ein Film aus %1 Bildern wurde in %2 geschrieben.</translation>
        </message>
        <message>
            <source>First the plan: a note names the plan file it was made from</source>
            <translation>Zuerst der Plan: Ein Bericht nennt die Plandatei, aus der er entstand</translation>
        </message>
        <message>
            <source>Find the &amp;highest inflation</source>
            <translation>&amp;Höchste Füllung suchen</translation>
        </message>
        <message>
            <source>Predicted by a model calibrated on a bench. Not a medical device; ask a clinician before anyone wears it.</source>
            <translation>Vorhersage eines am Prüfstand kalibrierten Modells. Kein Medizinprodukt; vor dem Tragen ärztlichen Rat einholen.</translation>
        </message>
        <message>
            <source>First the plan: its readings lie beside its file</source>
            <translation>Zuerst der Plan: seine Messwerte liegen neben seiner Datei</translation>
        </message>
        <message>
            <source>1. Body: open a mesh of the limb, or make one from measures.
2. Layout: open a drawing and say what each shape is, or make a layout.
3. Wear: place it on the body and say how it closes.
4. Inflation: give every inlet a pressure or a volume.
5. Limits: read what is found; each sentence jumps to its place.
6. Note: make the final estimate, then save the note for the study's reviewers.

A preview follows every change. Ctrl+1 to Ctrl+7 open the steps, Alt+1 to Alt+4 go to the areas, Ctrl+E estimates, Esc cancels.</source>
            <translation>1. Körper: ein Netz des Glieds öffnen oder eines aus Maßen machen.
2. Layout: eine Zeichnung öffnen und sagen, was jede Form ist, oder ein Layout machen.
3. Anlegen: auf den Körper legen und sagen, wie es schließt.
4. Füllen: jedem Einlass Druck oder Volumen geben.
5. Grenzwerte: lesen, was gefunden wird; jeder Satz springt an seine Stelle.
6. Bericht: endgültig schätzen, dann den Bericht für die Prüfenden der Studie speichern.

Jeder Änderung folgt eine Vorschau. Strg+1 bis Strg+7 öffnen die Schritte, Alt+1 bis Alt+4 gehen zu den Bereichen, Strg+E schätzt, Esc bricht ab.</translation>
        </message>
    </context>
    <context>
        <name>wrapgauge::MeasuresPanel</name>
        <message>
            <source>Form of the body</source>
            <translation>Form des Körpers</translation>
        </message>
        <message>
            <source>Survey</source>
            <translation>Erhebung</translation>
        </message>
        <message>
            <source>Side</source>
            <translation>Seite</translation>
        </message>
        <message>
            <source>Percentile</source>
            <translation>Perzentil</translation>
        </message>
        <message>
            <source>men</source>
            <translation>Männer</translation>
        </message>
        <message>
            <source>women</source>
            <translation>Frauen</translation>
        </message>
        <message>
            <source>right</source>
            <translation>rechts</translation>
        </message>
        <message>
            <source>left</source>
            <translation>links</translation>
        </message>
        <message>
            <source>Form</source>
            <translation>Form</translation>
        </message>
        <message>
            <source>Survey of</source>
            <translation>Erhebung an</translation>
        </message>
    </context>
    <context>
        <name>wrapgauge::MendPanel</name>
        <message>
            <source>Holes up to</source>
            <translation>Löcher bis</translation>
        </message>
        <message>
            <source>Passes of smoothing</source>
            <translation>Durchgänge beim Glätten</translation>
        </message>
        <message>
            <source>Distal end</source>
            <translation>Distales Ende</translation>
        </message>
        <message>
            <source>thin end is distal</source>
            <translation>dünnes Ende ist distal</translation>
        </message>
        <message>
            <source>thick end is distal</source>
            <translation>dickes Ende ist distal</translation>
        </message>
        <message>
            <source>as it is</source>
            <translation>wie es ist</translation>
        </message>
        <message>
            <source>turned over</source>
            <translation>umgedreht</translation>
        </message>
        <message>
            <source>Turn about the axis</source>
            <translation>Um die Achse drehen</translation>
        </message>
        <message>
            <source>Keep from</source>
            <translation>Behalten von</translation>
        </message>
        <message>
            <source>Keep to</source>
            <translation>Behalten bis</translation>
        </message>
        <message>
            <source>Edge of the triangles</source>
            <translation>Kante der Dreiecke</translation>
        </message>
        <message>
            <source>Drop the table it lies on</source>
            <translation>Tisch entfernen, auf dem es liegt</translation>
        </message>
        <message>
            <source>Drop loose crumbs</source>
            <translation>Lose Krümel entfernen</translation>
        </message>
        <message>
            <source>Fill holes up to</source>
            <translation>Löcher füllen bis</translation>
        </message>
        <message>
            <source>Smooth, passes</source>
            <translation>Glätten, Durchgänge</translation>
        </message>
        <message>
            <source>Stand it upright</source>
            <translation>Aufrecht stellen</translation>
        </message>
        <message>
            <source>Keep from, to</source>
            <translation>Behalten von, bis</translation>
        </message>
        <message>
            <source>Mirror left and right</source>
            <translation>Links zu rechts machen</translation>
        </message>
        <message>
            <source>Even triangles of</source>
            <translation>Gleiche Dreiecke von</translation>
        </message>
    </context>
    <context>
        <name>wrapgauge::MessageBar</name>
        <message>
            <source>Close</source>
            <translation>Schließen</translation>
        </message>
        <message>
            <source>Close this message</source>
            <translation>Diese Meldung schließen</translation>
        </message>
        <message>
            <source>Note</source>
            <translation>Hinweis</translation>
        </message>
        <message>
            <source>Please correct</source>
            <translation>Bitte berichtigen</translation>
        </message>
    </context>
    <context>
        <name>wrapgauge::NoteStep</name>
        <message>
            <source>Save the note…</source>
            <translation>Bericht speichern…</translation>
        </message>
        <message>
            <source>Read it large</source>
            <translation>Groß lesen</translation>
        </message>
        <message>
            <source>Preview of the study note</source>
            <translation>Vorschau des Studienberichts</translation>
        </message>
        <message>
            <source>Study note</source>
            <translation>Studienbericht</translation>
        </message>
        <message>
            <source>For the study's reviewers. Empty cells are for the study to fill.</source>
            <translation>Für die Prüfenden der Studie. Leere Felder füllt die Studie.</translation>
        </message>
        <message>
            <source>Save the note</source>
            <translation>Bericht speichern</translation>
        </message>
        <message>
            <source>PDF (*.pdf);;HTML (*.html);;Markdown (*.md)</source>
            <translation>PDF (*.pdf);;HTML (*.html);;Markdown (*.md)</translation>
        </message>
        <message>
            <source>Plan</source>
            <translation>Plan</translation>
        </message>
        <message>
            <source>Mesh and solving</source>
            <translation>Netz und Lösung</translation>
        </message>
        <message>
            <source>Name of the plan, as reports call it</source>
            <translation>Name des Plans, wie ihn Berichte nennen</translation>
        </message>
        <message>
            <source>The note is being made…</source>
            <translation>Der Bericht wird erstellt …</translation>
        </message>
        <message>
            <source>Who wears it</source>
            <translation>Wer es trägt</translation>
        </message>
        <message>
            <source>Final estimate</source>
            <translation>Endgültige Schätzung</translation>
        </message>
        <message>
            <source>A note is written from the final estimate: a preview is too coarse for it. Esc cancels one that takes too long.</source>
            <translation>Ein Bericht wird aus der endgültigen Schätzung gemacht: Eine Vorschau ist zu grob dafür. Esc bricht eine ab, die zu lange dauert.</translation>
        </message>
    </context>
    <context>
        <name>wrapgauge::PartEditor</name>
        <message>
            <source>Part of the layout</source>
            <translation>Teil des Layouts</translation>
        </message>
        <message>
            <source>Name of the part</source>
            <translation>Name des Teils</translation>
        </message>
        <message>
            <source>name</source>
            <translation>Name</translation>
        </message>
        <message>
            <source>Add</source>
            <translation>Anfügen</translation>
        </message>
        <message>
            <source>Add a part to the layout</source>
            <translation>Ein Teil an das Layout anfügen</translation>
        </message>
        <message>
            <source>Chamber</source>
            <translation>Kammer</translation>
        </message>
        <message>
            <source>Inset spot in this chamber</source>
            <translation>Innennahtpunkt in dieser Kammer</translation>
        </message>
        <message>
            <source>Inset line in this chamber</source>
            <translation>Innennahtlinie in dieser Kammer</translation>
        </message>
        <message>
            <source>Channel to the next chamber</source>
            <translation>Kanal zur nächsten Kammer</translation>
        </message>
        <message>
            <source>Inlet in this chamber</source>
            <translation>Einlass in dieser Kammer</translation>
        </message>
        <message>
            <source>Remove</source>
            <translation>Entfernen</translation>
        </message>
        <message>
            <source>Remove this part</source>
            <translation>Dieses Teil entfernen</translation>
        </message>
        <message>
            <source>Add a part</source>
            <translation>Teil anfügen</translation>
        </message>
        <message>
            <source>Rename a part</source>
            <translation>Teil umbenennen</translation>
        </message>
        <message>
            <source>Remove a part</source>
            <translation>Teil entfernen</translation>
        </message>
        <message>
            <source>Change %1</source>
            <translation>%1 ändern</translation>
        </message>
        <message>
            <source>Strap</source>
            <translation>Gurt</translation>
        </message>
    </context>
    <context>
        <name>wrapgauge::PathStrip</name>
        <message>
            <source>Recorded states of the inflation</source>
            <translation>Aufgezeichnete Zustände des Füllens</translation>
        </message>
        <message>
            <source>inflation curve</source>
            <translation>Füllkurve</translation>
        </message>
        <message>
            <source>Peak contact pressure while the device fills</source>
            <translation>Spitze des Kontaktdrucks beim Füllen</translation>
        </message>
        <message>
            <source>limit ÷ %1</source>
            <translation>Grenzwert ÷ %1</translation>
        </message>
        <message>
            <source>as far as it goes</source>
            <translation>weiter geht es nicht</translation>
        </message>
        <message>
            <source>No estimate yet: there is nothing to show of the inflation.</source>
            <translation>Noch keine Schätzung: vom Füllen gibt es nichts zu zeigen.</translation>
        </message>
        <message>
            <source>State %1 of %2</source>
            <translation>Zustand %1 von %2</translation>
        </message>
        <message>
            <source>: its contact is being read.</source>
            <translation>: sein Kontakt wird gelesen.</translation>
        </message>
        <message>
            <source>: inside %1, peak %2</source>
            <translation>: innen %1, Spitze %2</translation>
        </message>
        <message>
            <source>: inside %1, peak over 1 cm² on the skin %2</source>
            <translation>: innen %1, Spitze über 1 cm² auf der Haut %2</translation>
        </message>
        <message>
            <source>inside, %1</source>
            <translation>innen, %1</translation>
        </message>
        <message>
            <source>peak, %1</source>
            <translation>Spitze, %1</translation>
        </message>
        <message>
            <source>Fill</source>
            <translation>Füllen</translation>
        </message>
        <message>
            <source>Play the filling from deflated to the plan&apos;s inflation</source>
            <translation>Das Füllen abspielen, von leer bis zur Füllung des Plans</translation>
        </message>
    </context>
    <context>
        <name>wrapgauge::PlanColumn</name>
        <message>
            <source>Steps of the plan</source>
            <translation>Schritte des Plans</translation>
        </message>
        <message>
            <source>Fields of the step that is open</source>
            <translation>Felder des offenen Schritts</translation>
        </message>
    </context>
    <context>
        <name>wrapgauge::ProbePanel</name>
        <message>
            <source>What is known of the picked place</source>
            <translation>Was über die gewählte Stelle bekannt ist</translation>
        </message>
        <message>
            <source>Click a place on the body to read its pressure, limit and tissue depth.</source>
            <translation>Auf eine Stelle des Körpers klicken, um Druck, Grenzwert und Gewebetiefe zu lesen.</translation>
        </message>
    </context>
    <context>
        <name>wrapgauge::RunBar</name>
        <message>
            <source>checking</source>
            <translation>prüfen</translation>
        </message>
        <message>
            <source>putting it on</source>
            <translation>anlegen</translation>
        </message>
        <message>
            <source>closing</source>
            <translation>schließen</translation>
        </message>
        <message>
            <source>inflating</source>
            <translation>füllen</translation>
        </message>
        <message>
            <source>reading the contact</source>
            <translation>Kontakt lesen</translation>
        </message>
        <message>
            <source>once more on a coarser mesh</source>
            <translation>noch einmal auf gröberem Netz</translation>
        </message>
        <message>
            <source>once more for comparison</source>
            <translation>noch einmal zum Vergleich</translation>
        </message>
        <message>
            <source>done</source>
            <translation>fertig</translation>
        </message>
        <message>
            <source>Cancel</source>
            <translation>Abbrechen</translation>
        </message>
        <message>
            <source>How far the estimate is</source>
            <translation>Wie weit die Schätzung ist</translation>
        </message>
        <message>
            <source>Cancel the calculation</source>
            <translation>Laufende Rechnung abbrechen</translation>
        </message>
        <message>
            <source>all inlets together</source>
            <translation>alle Einlässe zusammen</translation>
        </message>
        <message>
            <source>as drawn</source>
            <translation>wie gezeichnet</translation>
        </message>
        <message>
            <source>chambers fed apart</source>
            <translation>Kammern getrennt gespeist</translation>
        </message>
        <message>
            <source>inlet &apos;%1&apos; alone</source>
            <translation>Einlass „%1“ allein</translation>
        </message>
        <message>
            <source>%1 of %2</source>
            <translation>%1 von %2</translation>
        </message>
        <message>
            <source>%1 of %2, about %3 left</source>
            <translation>%1 von %2, noch etwa %3</translation>
        </message>
        <message>
            <source>the plan as it is</source>
            <translation>der Plan, wie er ist</translation>
        </message>
        <message>
            <source>changes on the preview's mesh</source>
            <translation>Änderungen auf dem Netz der Vorschau</translation>
        </message>
        <message>
            <source>changes on the plan's own mesh</source>
            <translation>Änderungen auf dem Netz des Plans</translation>
        </message>
    </context>
    <context>
        <name>wrapgauge::SheetFields</name>
        <message>
            <source>Skin sheet</source>
            <translation>Hautlage</translation>
        </message>
        <message>
            <source>Outer sheet</source>
            <translation>Außenlage</translation>
        </message>
        <message>
            <source>Backing cloth, stiffness along x</source>
            <translation>Rückenstoff, Steifigkeit längs x</translation>
        </message>
        <message>
            <source>Backing cloth, stiffness along y</source>
            <translation>Rückenstoff, Steifigkeit längs y</translation>
        </message>
        <message>
            <source>Rim glued or taped to the skin</source>
            <translation>Rand auf die Haut geklebt</translation>
        </message>
        <message>
            <source>Backing along x</source>
            <translation>Rücken längs x</translation>
        </message>
        <message>
            <source>Cloth on the outer sheet, along x; 0: none. Pulls only.</source>
            <translation>Stoff auf der Außenlage, längs x; 0: keiner. Zieht nur.</translation>
        </message>
        <message>
            <source>Cloth on the outer sheet, along y; 0: none. Pulls only.</source>
            <translation>Stoff auf der Außenlage, längs y; 0: keiner. Zieht nur.</translation>
        </message>
        <message>
            <source>Skin prestretch</source>
            <translation>Haut, Vordehnung</translation>
        </message>
        <message>
            <source>Skin sheet, stretched along x when fused</source>
            <translation>Hautlage, beim Verbinden längs x gedehnt</translation>
        </message>
        <message>
            <source>Outer sheet, stretched along x when fused</source>
            <translation>Außenlage, beim Verbinden längs x gedehnt</translation>
        </message>
        <message>
            <source>Skin sheet: stretched along x by this much when it was fused; 0: not.</source>
            <translation>Hautlage: so weit längs x gedehnt, als sie verbunden wurde; 0: nicht.</translation>
        </message>
        <message>
            <source>Outer sheet: stretched along x by this much when it was fused; 0: not.</source>
            <translation>Außenlage: so weit längs x gedehnt, als sie verbunden wurde; 0: nicht.</translation>
        </message>
        <message>
            <source>Backing along y</source>
            <translation>Rücken längs y</translation>
        </message>
        <message>
            <source>Outer prestretch</source>
            <translation>Außen, Vordehnung</translation>
        </message>
        <message>
            <source>Elongation at break %1 %. %2 (%3) %4 %5</source>
            <translation>Bruchdehnung %1 %. %2 (%3) %4 %5</translation>
        </message>
        <message>
            <source>%1, hardness</source>
            <translation>%1, Härte</translation>
        </message>
        <message>
            <source>%1, thickness</source>
            <translation>%1, Dicke</translation>
        </message>
    </context>
    <context>
        <name>wrapgauge::SupplyFields</name>
        <message>
            <source>Session</source>
            <translation>Sitzung</translation>
        </message>
        <message>
            <source>Supply</source>
            <translation>Versorgung</translation>
        </message>
        <message>
            <source>Filling</source>
            <translation>Füllung</translation>
        </message>
        <message>
            <source>How long it is worn. Without it, exposure over time is not calculated.</source>
            <translation>Wie lange es getragen wird; ohne sie wird die Belastung über der Zeit nicht berechnet.</translation>
        </message>
        <message>
            <source>Hold</source>
            <translation>Halten</translation>
        </message>
        <message>
            <source>Of every inlet without steps of its own; without it the inlet is on from start to end.</source>
            <translation>Jedes Einlasses ohne eigene Stufen; ohne sie ist er von Anfang bis Ende gefüllt.</translation>
        </message>
        <message>
            <source>Then off</source>
            <translation>Dann aus</translation>
        </message>
        <message>
            <source>Vented between two holds.</source>
            <translation>Zwischen zwei Haltezeiten entlüftet.</translation>
        </message>
        <message>
            <source>Ramp</source>
            <translation>Rampe</translation>
        </message>
        <message>
            <source>Up before a hold and down after it.</source>
            <translation>Vor dem Halten auf und danach ab.</translation>
        </message>
        <message>
            <source>Syringe</source>
            <translation>Spritze</translation>
        </message>
        <message>
            <source>Capacity of the syringe.</source>
            <translation>Fassungsvermögen der Spritze.</translation>
        </message>
        <message>
            <source>Syringe bore</source>
            <translation>Spritze innen</translation>
        </message>
        <message>
            <source>Inner width of the barrel.</source>
            <translation>Innendurchmesser des Zylinders.</translation>
        </message>
        <message>
            <source>Push on it</source>
            <translation>Kraft darauf</translation>
        </message>
        <message>
            <source>Force of the hand on the plunger; 50 N is a firm push (judgement).</source>
            <translation>Kraft der Hand auf den Kolben; 50 N ist ein kräftiger Druck (Einschätzung).</translation>
        </message>
        <message>
            <source>Pump stalls at</source>
            <translation>Pumpe steht bei</translation>
        </message>
        <message>
            <source>Gauge pressure at which the pump gives up.</source>
            <translation>Überdruck, bei dem die Pumpe aufgibt.</translation>
        </message>
        <message>
            <source>Tube</source>
            <translation>Schlauch</translation>
        </message>
        <message>
            <source>From the chamber to open air.</source>
            <translation>Von der Kammer ins Freie.</translation>
        </message>
        <message>
            <source>Tube bore</source>
            <translation>Schlauch innen</translation>
        </message>
        <message>
            <source>Inner width of the tube.</source>
            <translation>Innendurchmesser des Schlauchs.</translation>
        </message>
        <message>
            <source>Relief valve</source>
            <translation>Überdruckventil</translation>
        </message>
        <message>
            <source>Gauge pressure at which a mechanical valve opens.</source>
            <translation>Überdruck, bei dem ein mechanisches Ventil öffnet.</translation>
        </message>
        <message>
            <source>Dead volume</source>
            <translation>Totvolumen</translation>
        </message>
        <message>
            <source>Air in tube, valve and syringe.</source>
            <translation>Luft in Schlauch, Ventil und Spritze.</translation>
        </message>
        <message>
            <source>Filled with</source>
            <translation>Gefüllt mit</translation>
        </message>
        <message>
            <source>air</source>
            <translation>Luft</translation>
        </message>
        <message>
            <source>water</source>
            <translation>Wasser</translation>
        </message>
        <message>
            <source>gel</source>
            <translation>Gel</translation>
        </message>
        <message>
            <source>Worn warm or cold</source>
            <translation>Warm oder kalt getragen</translation>
        </message>
        <message>
            <source>Temperature of the face on the skin when it is put on.</source>
            <translation>Temperatur der Hautseite beim Anlegen.</translation>
        </message>
        <message>
            <source>For</source>
            <translation>Für</translation>
        </message>
        <message>
            <source>How long it is worn warm or cold.</source>
            <translation>Wie lange es warm oder kalt getragen wird.</translation>
        </message>
    </context>
    <context>
        <name>wrapgauge::ViewArea</name>
        <message>
            <source>Body with the layout on it</source>
            <translation>Körper mit dem Layout darauf</translation>
        </message>
        <message>
            <source>Flat layout</source>
            <translation>Flaches Layout</translation>
        </message>
        <message>
            <source>Inflation strip</source>
            <translation>Füllstreifen</translation>
        </message>
        <message>
            <source>Figures of each chamber</source>
            <translation>Werte jeder Kammer</translation>
        </message>
        <message>
            <source>Chambers</source>
            <translation>Kammern</translation>
        </message>
        <message>
            <source>Picked spot</source>
            <translation>Gewählte Stelle</translation>
        </message>
        <message>
            <source>Move %1</source>
            <translation>%1 verschieben</translation>
        </message>
        <message>
            <source>Move the layout</source>
            <translation>Layout verschieben</translation>
        </message>
        <message>
            <source>Turn the layout</source>
            <translation>Layout drehen</translation>
        </message>
        <message>
            <source>Move a point of %1</source>
            <translation>Einen Punkt von %1 verschieben</translation>
        </message>
        <message>
            <source>Closing</source>
            <translation>Schließen</translation>
        </message>
        <message>
            <source>%1 could not be read as a body.
%2
%3</source>
            <translation>%1 ließ sich nicht als Körper lesen.
%2
%3</translation>
        </message>
        <message>
            <source>Choose another unit of the file in the step Body.</source>
            <translation>Im Schritt Körper eine andere Einheit der Datei wählen.</translation>
        </message>
        <message>
            <source>Tick Raw scan: repair it in the step Body.</source>
            <translation>Im Schritt Körper „Roher Scan: ausbessern“ ankreuzen.</translation>
        </message>
        <message>
            <source>Change the steps of repair in the step Body.</source>
            <translation>Im Schritt Körper die Schritte des Ausbesserns ändern.</translation>
        </message>
        <message>
            <source>Open another file in the step Body.</source>
            <translation>Im Schritt Körper eine andere Datei öffnen.</translation>
        </message>
        <message>
            <source>The body is being read…</source>
            <translation>Der Körper wird gelesen…</translation>
        </message>
        <message>
            <source>Section of the limb with the device on it</source>
            <translation>Schnitt durch das Glied mit dem Gerät darauf</translation>
        </message>
        <message>
            <source>Cut</source>
            <translation>Schnitt</translation>
        </message>
        <message>
            <source>Kept</source>
            <translation>Behalten</translation>
        </message>
        <message>
            <source>As it would be, on a preview's mesh: %1. The plan is not changed.</source>
            <translation>So wäre es, auf dem Netz einer Vorschau: %1. Der Plan ist nicht geändert.</translation>
        </message>
    </context>
    <context>
        <name>wrapgauge::WearStep</name>
        <message>
            <source>whole layout</source>
            <translation>alles</translation>
        </message>
        <message>
            <source>Closing</source>
            <translation>Schließen</translation>
        </message>
        <message>
            <source>How it lies</source>
            <translation>Wie es liegt</translation>
        </message>
        <message>
            <source>Stretch and shear of each chamber laid on</source>
            <translation>Dehnung und Scherung jeder aufgelegten Kammer</translation>
        </message>
        <message>
            <source>Part</source>
            <translation>Teil</translation>
        </message>
        <message>
            <source>Stretch</source>
            <translation>Dehnung</translation>
        </message>
        <message>
            <source>Shear</source>
            <translation>Scherung</translation>
        </message>
        <message>
            <source>Place it at the picked spot</source>
            <translation>An die gewählte Stelle legen</translation>
        </message>
        <message>
            <source>Click a spot on the body first.</source>
            <translation>Zuerst eine Stelle am Körper anklicken.</translation>
        </message>
        <message>
            <source>Station of the anchor from the distal end</source>
            <translation>Station des Ankers vom distalen Ende</translation>
        </message>
        <message>
            <source>Angle of the anchor about the axis</source>
            <translation>Winkel des Ankers um die Achse</translation>
        </message>
        <message>
            <source>Turn of the layout on the skin</source>
            <translation>Drehung des Layouts auf der Haut</translation>
        </message>
        <message>
            <source>Along the body's axis from its distal end.</source>
            <translation>Entlang der Körperachse vom distalen Ende.</translation>
        </message>
        <message>
            <source>About the axis from the body's +x, right-handed towards proximal. On a made limb 0 is lateral, 90 front, 180 medial, 270 back.</source>
            <translation>Um die Achse von +x des Körpers, rechtshändig nach proximal. Bei gemachten Gliedern ist 0 lateral, 90 vorn, 180 medial, 270 hinten.</translation>
        </message>
        <message>
            <source>0: the layout's x goes straight round the limb.</source>
            <translation>0: x des Layouts geht gerade um das Glied.</translation>
        </message>
        <message>
            <source>Station</source>
            <translation>Station</translation>
        </message>
        <message>
            <source>Angle</source>
            <translation>Winkel</translation>
        </message>
        <message>
            <source>Turn</source>
            <translation>Drehung</translation>
        </message>
        <message>
            <source>How it closes</source>
            <translation>Wie es schließt</translation>
        </message>
        <message>
            <source>Does not go round</source>
            <translation>Geht nicht herum</translation>
        </message>
        <message>
            <source>Closed, stretched on the girth</source>
            <translation>Geschlossen, gegen den Umfang gedehnt</translation>
        </message>
        <message>
            <source>Closed at a length</source>
            <translation>Auf eine Länge geschlossen</translation>
        </message>
        <message>
            <source>Stretch of the closure</source>
            <translation>Dehnung des Verschlusses</translation>
        </message>
        <message>
            <source>Closing stretch</source>
            <translation>Schließdehnung</translation>
        </message>
        <message>
            <source>Closing length</source>
            <translation>Schließlänge</translation>
        </message>
        <message>
            <source>First closing line at x</source>
            <translation>Erste Schließlinie bei x</translation>
        </message>
        <message>
            <source>Taper of the closing lines</source>
            <translation>Schräge der Schließlinien</translation>
        </message>
        <message>
            <source>The closing length is the girth at the anchor divided by 1 + stretch.</source>
            <translation>Die Schließlänge ist der Umfang am Anker geteilt durch 1 + Dehnung.</translation>
        </message>
        <message>
            <source>Growth of the closing length for each millimetre towards proximal.</source>
            <translation>Zunahme der Schließlänge je Millimeter nach proximal.</translation>
        </message>
        <message>
            <source>Bend</source>
            <translation>Knick</translation>
        </message>
        <message>
            <source>Bend of the closing lines</source>
            <translation>Knick der Schließlinien</translation>
        </message>
        <message>
            <source>For a limb that bulges: below half height the closing length grows by so much more for each millimetre, above it by so much less. 0: straight.</source>
            <translation>Für eine bauchige Gliedmaße: Unter halber Höhe wächst die Schließlänge je Millimeter um so viel mehr, darüber um so viel weniger. 0: gerade.</translation>
        </message>
        <message>
            <source>From x</source>
            <translation>Von x</translation>
        </message>
        <message>
            <source>Taper</source>
            <translation>Schräge</translation>
        </message>
        <message>
            <source>Place the layout</source>
            <translation>Layout anlegen</translation>
        </message>
        <message>
            <source>%1 to %2</source>
            <translation>%1–%2</translation>
        </message>
        <message>
            <source>Lies on the skin and does not close.</source>
            <translation>Liegt auf der Haut und schließt nicht.</translation>
        </message>
        <message>
            <source>how it lies, in full</source>
            <translation>wie es liegt, vollständig</translation>
        </message>
        <message>
            <source>Why</source>
            <translation>Warum</translation>
        </message>
        <message>
            <source>which point of the layout lies on the spot</source>
            <translation>welcher Punkt des Layouts auf der Stelle liegt</translation>
        </message>
        <message>
            <source>The point of the flat layout that lies on the spot: its middle until you say otherwise.</source>
            <translation>Der Punkt des flachen Layouts, der auf der Stelle liegt: seine Mitte, solange nichts anderes gesagt ist.</translation>
        </message>
        <message>
            <source>Across</source>
            <translation>Quer</translation>
        </message>
        <message>
            <source>Point of the layout that lies on the spot, across</source>
            <translation>Punkt des Layouts auf der Stelle, quer</translation>
        </message>
        <message>
            <source>Upwards</source>
            <translation>Aufwärts</translation>
        </message>
        <message>
            <source>Point of the layout that lies on the spot, upwards</source>
            <translation>Punkt des Layouts auf der Stelle, aufwärts</translation>
        </message>
        <message>
            <source>Fastened at a closing length of %1 mm; stretch round the limb %2 to %3 %.</source>
            <translation>Angelegt mit der Schließlänge %1 mm; Dehnung rings um das Glied %2 bis %3 %.</translation>
        </message>
        <message>
            <source>To check: %1, under Why.</source>
            <translation>Zu prüfen: %1, unter Warum.</translation>
        </message>
    </context>
    <context>
        <name>wrapgauge::FineSettings</name>
        <message>
            <source>Fine settings</source>
            <translation>Feineinstellungen</translation>
        </message>
        <message>
            <source>Fine settings: %1</source>
            <translation>Feineinstellungen: %1</translation>
        </message>
        <message>
            <source>%1: %2</source>
            <translation>%1: %2</translation>
        </message>
    </context>
    <context>
        <name>wrapgauge::TissuePanel</name>
        <message>
            <source>How tissue gives way, and friction</source>
            <translation>Wie Gewebe nachgibt, und Reibung</translation>
        </message>
        <message>
            <source>Tissue</source>
            <translation>Gewebe</translation>
        </message>
        <message>
            <source>Muscle</source>
            <translation>Muskel</translation>
        </message>
        <message>
            <source>as the tissue says</source>
            <translation>wie die Gewebezeile</translation>
        </message>
        <message>
            <source>relaxed</source>
            <translation>entspannt</translation>
        </message>
        <message>
            <source>tense</source>
            <translation>angespannt</translation>
        </message>
        <message>
            <source>A tense muscle layer has 2.4 times the modulus of a relaxed one (judgement).</source>
            <translation>Eine angespannte Muskelschicht hat den 2,4-fachen Modul einer entspannten (Einschätzung).</translation>
        </message>
        <message>
            <source>each place on its own</source>
            <translation>jede Stelle für sich</translation>
        </message>
        <message>
            <source>together with its surroundings</source>
            <translation>zusammen mit der Umgebung</translation>
        </message>
        <message>
            <source>Gives way</source>
            <translation>Gibt nach</translation>
        </message>
        <message>
            <source>Stiffness factor of the tissue</source>
            <translation>Steifigkeitsfaktor des Gewebes</translation>
        </message>
        <message>
            <source>Times the modulus of the tissue chosen; 1 as it stands.</source>
            <translation>Mal dem Modul des gewählten Gewebes; 1: wie es ist.</translation>
        </message>
        <message>
            <source>Friction of skin on silicone</source>
            <translation>Reibung von Haut auf Silikon</translation>
        </message>
        <message>
            <source>Coulomb coefficient; 0.5 unless you measured it (judgement).</source>
            <translation>Reibungszahl nach Coulomb; 0,5, wenn nicht gemessen (Einschätzung).</translation>
        </message>
        <message>
            <source>Stiffness</source>
            <translation>Steifigkeit</translation>
        </message>
        <message>
            <source>Friction</source>
            <translation>Reibung</translation>
        </message>
        <message>
            <source>Modulus %1 kPa, skin to bone %2 mm</source>
            <translation>Modul %1 kPa, Haut bis Knochen %2 mm</translation>
        </message>
        <message>
            <source>, Poisson&apos;s ratio %1</source>
            <translation>, Querdehnzahl %1</translation>
        </message>
        <message>
            <source>How tissue gives way</source>
            <translation>Wie das Gewebe nachgibt</translation>
        </message>
        <message>
            <source>the form&apos;s own</source>
            <translation>das der Form</translation>
        </message>
        <message>
            <source>The tissue that suits a form made from measures.</source>
            <translation>Das Gewebe, das zu einer Form aus Maßen passt.</translation>
        </message>
        <message>
            <source>Elastic foundation: a place sinks under its own pressure only.</source>
            <translation>Elastische Bettung: eine Stelle sinkt nur unter ihrem eigenen Druck.</translation>
        </message>
        <message>
            <source>Coupled layer: a pressed place lowers its surroundings too; takes longer.</source>
            <translation>Gekoppelte Schicht: eine gedrückte Stelle senkt auch ihre Umgebung; dauert länger.</translation>
        </message>
        <message>
            <source>Poisson&apos;s ratio</source>
            <translation>Querdehnzahl</translation>
        </message>
        <message>
            <source>Instead of the table&apos;s; 0.45 to 0.49 hardly squeezes. 0: the modulus holds the confinement.</source>
            <translation>Statt der aus der Tabelle; 0,45 bis 0,49 gibt kaum nach. 0: der Modul enthält die Einspannung schon.</translation>
        </message>
        <message>
            <source>Depth of the tissue</source>
            <translation>Tiefe des Gewebes</translation>
        </message>
        <message>
            <source>Depth</source>
            <translation>Tiefe</translation>
        </message>
        <message>
            <source>Give this depth to the body as it is now</source>
            <translation>Diese Tiefe dem jetzigen Körper geben</translation>
        </message>
        <message>
            <source>Skin to bone over the whole body, instead of the table&apos;s; bony sites and regions keep their own. Measure it, for example with ultrasound, or take it from the literature.</source>
            <translation>Haut bis Knochen am ganzen Körper, anstelle der Tabelle; Knochenstellen und Bereiche behalten ihre eigene. Messen, zum Beispiel mit Ultraschall, oder aus der Literatur nehmen.</translation>
        </message>
        <message>
            <source>The plan gives %1 to %2 mm from skin to bone, one depth for each point of the body&apos;s mesh.</source>
            <translation>Der Plan gibt %1 bis %2 mm von der Haut bis zum Knochen, eine Tiefe für jeden Punkt des Körpernetzes.</translation>
        </message>
        <message>
            <source>The plan gives %1 to %2 mm from skin to bone, one depth for each point of another body&apos;s mesh.</source>
            <translation>Der Plan gibt %1 bis %2 mm von der Haut bis zum Knochen, eine Tiefe für jeden Punkt eines anderen Körpernetzes.</translation>
        </message>
        <message>
            <source>Taken over, each point of this body gets the depth of the nearest place of the body before, which is at most %1 mm away.</source>
            <translation>Übernommen erhält jeder Punkt dieses Körpers die Tiefe der nächsten Stelle des vorigen Körpers, höchstens %1 mm entfernt.</translation>
        </message>
        <message>
            <source>Take the depths over to the body as it is now</source>
            <translation>Tiefen auf den jetzigen Körper übernehmen</translation>
        </message>
        <message>
            <source>A number typed above takes their place; unticked, the table&apos;s depth does.</source>
            <translation>Eine Zahl, die oben eingetippt wird, tritt an ihre Stelle; ohne Haken die Tiefe der Tabelle.</translation>
        </message>
        <message>
            <source>This depth was given for another body.</source>
            <translation>Diese Tiefe galt einem anderen Körper.</translation>
        </message>
    </context>
    <context>
        <name>wrapgauge::SkinPlacePanel</name>
        <message>
            <source>Name</source>
            <translation>Name</translation>
        </message>
        <message>
            <source>Add</source>
            <translation>Anfügen</translation>
        </message>
        <message>
            <source>Landmark</source>
            <translation>Landmarke</translation>
        </message>
        <message>
            <source>Remove</source>
            <translation>Entfernen</translation>
        </message>
        <message>
            <source>Remove this place</source>
            <translation>Diese Stelle entfernen</translation>
        </message>
        <message>
            <source>Show</source>
            <translation>Zeigen</translation>
        </message>
        <message>
            <source>Put it at the picked spot</source>
            <translation>An die gewählte Stelle setzen</translation>
        </message>
        <message>
            <source>Click a spot on the body first.</source>
            <translation>Zuerst eine Stelle am Körper anklicken.</translation>
        </message>
        <message>
            <source>x</source>
            <translation>x</translation>
        </message>
        <message>
            <source>y</source>
            <translation>y</translation>
        </message>
        <message>
            <source>bone</source>
            <translation>Knochen</translation>
        </message>
        <message>
            <source>nerve</source>
            <translation>Nerv</translation>
        </message>
        <message>
            <source>vessel</source>
            <translation>Gefäß</translation>
        </message>
        <message>
            <source>tendon</source>
            <translation>Sehne</translation>
        </message>
        <message>
            <source>not said</source>
            <translation>nicht gesagt</translation>
        </message>
        <message>
            <source>What lies there</source>
            <translation>Was dort liegt</translation>
        </message>
        <message>
            <source>Depth to bone</source>
            <translation>Tiefe bis Knochen</translation>
        </message>
        <message>
            <source>How sure</source>
            <translation>Wie sicher</translation>
        </message>
        <message>
            <source>Words</source>
            <translation>Worte</translation>
        </message>
        <message>
            <source>No layout may lie there</source>
            <translation>Kein Layout darf dort liegen</translation>
        </message>
        <message>
            <source>Near</source>
            <translation>Nahe</translation>
        </message>
        <message>
            <source>Radius</source>
            <translation>Radius</translation>
        </message>
        <message>
            <source>From station</source>
            <translation>Von Station</translation>
        </message>
        <message>
            <source>To station</source>
            <translation>Bis Station</translation>
        </message>
        <message>
            <source>From angle</source>
            <translation>Von Winkel</translation>
        </message>
        <message>
            <source>To angle</source>
            <translation>Bis Winkel</translation>
        </message>
        <message>
            <source>Stiffness</source>
            <translation>Steifigkeit</translation>
        </message>
        <message>
            <source>Fade</source>
            <translation>Übergang</translation>
        </message>
        <message>
            <source>its own point</source>
            <translation>eigener Punkt</translation>
        </message>
        <message>
            <source>Place, x in the body&apos;s frame</source>
            <translation>Stelle, x im Körpersystem</translation>
        </message>
        <message>
            <source>Place, y in the body&apos;s frame</source>
            <translation>Stelle, y im Körpersystem</translation>
        </message>
        <message>
            <source>Place, z in the body&apos;s frame</source>
            <translation>Stelle, z im Körpersystem</translation>
        </message>
        <message>
            <source>z</source>
            <translation>z</translation>
        </message>
        <message>
            <source>Move a place</source>
            <translation>Stelle verschieben</translation>
        </message>
        <message>
            <source>What lies under the skin there</source>
            <translation>Was dort unter der Haut liegt</translation>
        </message>
        <message>
            <source>Depth from skin to bone there</source>
            <translation>Tiefe von der Haut bis zum Knochen dort</translation>
        </message>
        <message>
            <source>The thinner the tissue, the higher it is pressed.</source>
            <translation>Je dünner das Gewebe, desto höher der Druck darauf.</translation>
        </message>
        <message>
            <source>How sure place and depth are</source>
            <translation>Wie sicher Ort und Tiefe sind</translation>
        </message>
        <message>
            <source>confirmed</source>
            <translation>bestätigt</translation>
        </message>
        <message>
            <source>from memory</source>
            <translation>aus dem Gedächtnis</translation>
        </message>
        <message>
            <source>judgement</source>
            <translation>Einschätzung</translation>
        </message>
        <message>
            <source>derived</source>
            <translation>abgeleitet</translation>
        </message>
        <message>
            <source>common practice</source>
            <translation>übliche Praxis</translation>
        </message>
        <message>
            <source>What to mind there</source>
            <translation>Was dort zu beachten ist</translation>
        </message>
        <message>
            <source>what to mind there</source>
            <translation>was dort zu beachten ist</translation>
        </message>
        <message>
            <source>What the region lies near</source>
            <translation>Woran der Bereich liegt</translation>
        </message>
        <message>
            <source>Radius of the place</source>
            <translation>Radius der Stelle</translation>
        </message>
        <message>
            <source>Straight distance from its point.</source>
            <translation>Gerader Abstand von ihrem Punkt.</translation>
        </message>
        <message>
            <source>Band from station</source>
            <translation>Band von Station</translation>
        </message>
        <message>
            <source>Band to station</source>
            <translation>Band bis Station</translation>
        </message>
        <message>
            <source>Band from angle</source>
            <translation>Band von Winkel</translation>
        </message>
        <message>
            <source>Band to angle</source>
            <translation>Band bis Winkel</translation>
        </message>
        <message>
            <source>About the axis as for the anchor; 0 to 360 is all round.</source>
            <translation>Um die Achse wie beim Anker; 0 bis 360 ist ringsum.</translation>
        </message>
        <message>
            <source>Skin to bone in the region.</source>
            <translation>Von der Haut bis zum Knochen im Bereich.</translation>
        </message>
        <message>
            <source>Times the modulus of the tissue chosen.</source>
            <translation>Mal dem Modul des gewählten Gewebes.</translation>
        </message>
        <message>
            <source>Fade at the rim</source>
            <translation>Übergang am Rand</translation>
        </message>
        <message>
            <source>Width outside the region over which its surroundings take over; 0: at once.</source>
            <translation>Breite außerhalb des Bereichs, über die die Umgebung übernimmt; 0: sofort.</translation>
        </message>
        <message>
            <source>Place on the skin</source>
            <translation>Stelle auf der Haut</translation>
        </message>
        <message>
            <source>Name of the place</source>
            <translation>Name der Stelle</translation>
        </message>
        <message>
            <source>Add a place on the skin</source>
            <translation>Eine Stelle auf der Haut anfügen</translation>
        </message>
        <message>
            <source>Goes to the picked spot, else beside the layout: click a spot on the body first. Sites that the form brings are not listed here.</source>
            <translation>Kommt an die gewählte Stelle, sonst neben das Layout: zuerst eine Stelle am Körper anklicken. Was eine Form selbst mitbringt, steht hier nicht.</translation>
        </message>
        <message>
            <source>Bone, nerve, vessel or tendon under the skin</source>
            <translation>Knochen, Nerv, Gefäß oder Sehne unter der Haut</translation>
        </message>
        <message>
            <source>No-go zone: no layout may lie there</source>
            <translation>Gesperrter Bereich: kein Layout darf dort liegen</translation>
        </message>
        <message>
            <source>Other tissue near a point</source>
            <translation>Anderes Gewebe um einen Punkt</translation>
        </message>
        <message>
            <source>Other tissue between two stations</source>
            <translation>Anderes Gewebe zwischen zwei Stationen</translation>
        </message>
        <message>
            <source>Show this place on the body</source>
            <translation>Diese Stelle am Körper zeigen</translation>
        </message>
        <message>
            <source>Add a place</source>
            <translation>Stelle anfügen</translation>
        </message>
        <message>
            <source>Remove a place</source>
            <translation>Stelle entfernen</translation>
        </message>
        <message>
            <source>Rename a place</source>
            <translation>Stelle umbenennen</translation>
        </message>
        <message>
            <source>Change a place</source>
            <translation>Stelle ändern</translation>
        </message>
        <message>
            <source>only proposed</source>
            <translation>nur vorgeschlagen</translation>
        </message>
    </context>
    <context>
        <name>wrapgauge::SolvingPanel</name>
        <message>
            <source>Finer takes longer; the estimate says how far a coarser mesh is off.</source>
            <translation>Feiner dauert länger; die Schätzung sagt, wie weit ein gröberes Netz abweicht.</translation>
        </message>
        <message>
            <source>Beside seams</source>
            <translation>Neben Nähten</translation>
        </message>
        <message>
            <source>As far as</source>
            <translation>Bis Abstand</translation>
        </message>
        <message>
            <source>Mesh edge</source>
            <translation>Netzkante</translation>
        </message>
        <message>
            <source>Sheets resist bending</source>
            <translation>Lagen widerstehen Biegung</translation>
        </message>
        <message>
            <source>Sheets carry no compression</source>
            <translation>Lagen nehmen keine Stauchung auf</translation>
        </message>
        <message>
            <source>Steps</source>
            <translation>Schritte</translation>
        </message>
        <message>
            <source>Shorter edges beside seams and inset seams, where sheets bend most.</source>
            <translation>Kürzere Kanten neben Nähten und Innennähten, wo sich die Lagen am stärksten biegen.</translation>
        </message>
        <message>
            <source>How far from a seam the shorter edges hold; 6 mm when left out.</source>
            <translation>Wie weit von einer Naht die kürzeren Kanten reichen; ohne Angabe 6 mm.</translation>
        </message>
        <message>
            <source>Recorded states on the way to the full inflation</source>
            <translation>Festgehaltene Zustände auf dem Weg zur ganzen Füllung</translation>
        </message>
        <message>
            <source>Steps of the slider from closed to inflated; 6 when left out.</source>
            <translation>Schritte des Reglers von geschlossen bis gefüllt; ohne Angabe 6.</translation>
        </message>
        <message>
            <source>They wrinkle at once instead of pushing back.</source>
            <translation>Sie legen sich sofort in Falten, statt gegenzudrücken.</translation>
        </message>
        <message>
            <source>Compare with the other way</source>
            <translation>Mit der anderen Art vergleichen</translation>
        </message>
        <message>
            <source>Solves again with compression carried the other way, and says how chambers differ; takes twice as long.</source>
            <translation>Rechnet noch einmal mit der anderen Art, Druck zu tragen, und sagt, wie sich die Kammern unterscheiden; dauert doppelt so lang.</translation>
        </message>
        <message>
            <source>Edge of the final mesh</source>
            <translation>Kante des endgültigen Netzes</translation>
        </message>
    </context>
    <context>
        <name>wrapgauge::DistanceTable</name>
        <message>
            <source>Add a distance</source>
            <translation>Abstand hinzufügen</translation>
        </message>
        <message>
            <source>Remove it</source>
            <translation>Entfernen</translation>
        </message>
        <message>
            <source>Tissue at distances from the point</source>
            <translation>Gewebe in Abständen vom Punkt</translation>
        </message>
        <message>
            <source>At mm</source>
            <translation>Bei mm</translation>
        </message>
        <message>
            <source>Depth mm</source>
            <translation>Tiefe mm</translation>
        </message>
        <message>
            <source>Stiffness ×</source>
            <translation>Steifigkeit ×</translation>
        </message>
        <message>
            <source>Remove the chosen distance</source>
            <translation>Den gewählten Abstand entfernen</translation>
        </message>
        <message>
            <source>Values in between are linear; the last distance is the radius of the region.</source>
            <translation>Werte dazwischen sind linear; der letzte Abstand ist der Radius des Bereichs.</translation>
        </message>
        <message>
            <source>&apos;%1&apos; is no number from %2 to %3: type another one.</source>
            <translation>„%1“ ist keine Zahl von %2 bis %3: eine andere eingeben.</translation>
        </message>
        <message>
            <source>distances must grow from one row to the next: type another one.</source>
            <translation>Abstände müssen von Zeile zu Zeile wachsen: einen anderen eingeben.</translation>
        </message>
        <message>
            <source>a row without depth and stiffness says nothing: keep one of the two.</source>
            <translation>Eine Zeile ohne Tiefe und Steifigkeit sagt nichts: eines von beiden behalten.</translation>
        </message>
    </context>
    <context>
        <name>SkinPlace</name>
        <message>
            <source>bony site: %1</source>
            <translation>Knochenstelle: %1</translation>
        </message>
        <message>
            <source>landmark: %1</source>
            <translation>Landmarke: %1</translation>
        </message>
        <message>
            <source>no-go zone: %1</source>
            <translation>Sperrzone: %1</translation>
        </message>
        <message>
            <source>region: %1</source>
            <translation>Bereich: %1</translation>
        </message>
        <message>
            <source>no-go</source>
            <translation>gesperrt</translation>
        </message>
        <message>
            <source>region</source>
            <translation>Bereich</translation>
        </message>
        <message>
            <source>site</source>
            <translation>Stelle</translation>
        </message>
        <message>
            <source>landmark</source>
            <translation>Landmarke</translation>
        </message>
    </context>
    <context>
        <name>MendWords</name>
        <message>
            <source>Table</source>
            <translation>Tisch</translation>
        </message>
        <message>
            <source>Loose crumbs</source>
            <translation>Lose Krümel</translation>
        </message>
        <message>
            <source>Holes</source>
            <translation>Löcher</translation>
        </message>
        <message>
            <source>Smoothing</source>
            <translation>Glätten</translation>
        </message>
        <message>
            <source>Even triangles</source>
            <translation>Gleichmäßige Dreiecke</translation>
        </message>
        <message>
            <source>Part kept</source>
            <translation>Behaltener Teil</translation>
        </message>
        <message>
            <source>Standing upright</source>
            <translation>Aufrecht stellen</translation>
        </message>
        <message>
            <source>Left and right</source>
            <translation>Links und rechts</translation>
        </message>
        <message>
            <source>Damaged faces</source>
            <translation>Beschädigte Flächen</translation>
        </message>
        <message>
            <source>Step %1 (%2): %3</source>
            <translation>Schritt %1 (%2): %3</translation>
        </message>
    </context>
    <context>
        <name>wrapgauge::Phrase</name>
        <message>
            <source>front</source>
            <translation>Vorderseite</translation>
        </message>
        <message>
            <source>inner side</source>
            <translation>Innenseite</translation>
        </message>
        <message>
            <source>outer side</source>
            <translation>Außenseite</translation>
        </message>
        <message>
            <source>right side</source>
            <translation>rechte Seite</translation>
        </message>
        <message>
            <source>left side</source>
            <translation>linke Seite</translation>
        </message>
        <message>
            <source>label '%1' read: it marks %2 bony and nerve sites.</source>
            <translation>Beiblatt '%1' gelesen: Es nennt %2 Knochen- und Nervenstellen.</translation>
        </message>
        <message>
            <source>Test object: no limit is applied to it, and nobody may wear the device.</source>
            <translation>Prüfkörper: Für ihn gilt kein Grenzwert, und niemand darf das Gerät tragen.</translation>
        </message>
        <message>
            <source>confirmed</source>
            <translation>bestätigt</translation>
        </message>
        <message>
            <source>from memory</source>
            <translation>aus dem Gedächtnis</translation>
        </message>
        <message>
            <source>judgement</source>
            <translation>Einschätzung</translation>
        </message>
        <message>
            <source>derived</source>
            <translation>abgeleitet</translation>
        </message>
        <message>
            <source>common practice</source>
            <translation>übliche Praxis</translation>
        </message>
        <message>
            <source>soft</source>
            <translation>weich</translation>
        </message>
        <message>
            <source>bony</source>
            <translation>knochig</translation>
        </message>
        <message>
            <source>circumferential</source>
            <translation>umlaufend</translation>
        </message>
        <message>
            <source>sustained</source>
            <translation>gehalten</translation>
        </message>
        <message>
            <source>short hold</source>
            <translation>kurz gehalten</translation>
        </message>
        <message>
            <source>pulse</source>
            <translation>Puls</translation>
        </message>
        <message>
            <source>ankle</source>
            <translation>Knöchel</translation>
        </message>
        <message>
            <source>judgement: the model has not been calibrated against pressure readings</source>
            <translation>Einschätzung: das Modell ist nicht an Druckmessungen kalibriert</translation>
        </message>
        <message>
            <source>half of the soft row</source>
            <translation>die Hälfte der weichen Zeile</translation>
        </message>
        <message>
            <source>judgement, share of tissue compressed predicts lost skin blood flow better than load does in Sacks et al., authors from memory; the figures themselves are judgement</source>
            <translation>Einschätzung, der Anteil des zusammengedrückten Gewebes sagt in Sacks et al., Autoren aus dem Gedächtnis, die verlorene Hautdurchblutung besser vorher als die Last; die Zahlen selbst sind Einschätzung</translation>
        </message>
        <message>
            <source>judgement, working stretch of cast silicone walls, no source</source>
            <translation>Einschätzung, Arbeitsdehnung gegossener Silikonwände, keine Quelle</translation>
        </message>
        <message>
            <source>judgement, a place counts as rested below the warning of the strictest sustained row; skin is looked at again 30 min after a session in common nursing practice, from memory</source>
            <translation>Einschätzung, eine Stelle gilt unter der Warnung der strengsten gehaltenen Zeile als entlastet; in üblicher Pflegepraxis wird die Haut 30 min nach einer Sitzung noch einmal angesehen, aus dem Gedächtnis</translation>
        </message>
        <message>
            <source>judgement, one stuck valve must not lead past the tourniquet stop round a limb, nor far past the limit anywhere</source>
            <translation>Einschätzung, ein klemmendes Ventil darf um ein Glied nicht über den Abschnürungs-Stopp führen und nirgends weit über den Grenzwert</translation>
        </message>
        <message>
            <source>judgement, a wearer who wants out does not wait, no source</source>
            <translation>Einschätzung, wer heraus will, wartet nicht, keine Quelle</translation>
        </message>
        <message>
            <source>judgement, 41 C for applied parts in IEC 60601-1, second edition, read on a secondary page; pain from cold at 15 C of skin in ISO 13732-3 work; the times are judgement</source>
            <translation>Einschätzung, 41 °C für Anwendungsteile in IEC 60601-1, zweite Ausgabe, auf einer Sekundärseite gelesen; Kälteschmerz bei 15 °C Hauttemperatur in Arbeiten zu ISO 13732-3; die Zeiten sind Einschätzung</translation>
        </message>
        <message>
            <source>from memory, burn thresholds of ISO 13732-1:2006, any material, healthy skin, not for the head nor for a tenth of the body or more</source>
            <translation>aus dem Gedächtnis, Verbrennungsschwellen aus ISO 13732-1:2006, jedes Material, gesunde Haut, nicht für den Kopf und nicht für ein Zehntel des Körpers oder mehr</translation>
        </message>
        <message>
            <source>Pressed here the sole goes numb.</source>
            <translation>Druck hier macht die Sohle taub.</translation>
        </message>
        <message>
            <source>The superficial peroneal nerve comes under the skin here.</source>
            <translation>Hier kommt der oberflächliche Wadenbeinnerv unter die Haut.</translation>
        </message>
        <message>
            <source>Bone behind, skin in front: pressed here the foot drops. Keep devices below it.</source>
            <translation>Knochen dahinter, Haut davor: Druck hier lässt den Fuß hängen. Geräte darunter halten.</translation>
        </message>
        <message>
            <source>Bone behind, skin in front: pressed here the foot drops. No band, edge or strap on it.</source>
            <translation>Knochen dahinter, Haut davor: Druck hier lässt den Fuß hängen. Kein Band, keine Kante, kein Gurt darauf.</translation>
        </message>
        <message>
            <source>Pressed here the palm and thumb go numb: no closing edge or seam on it.</source>
            <translation>Druck hier macht Handfläche und Daumen taub: keine Schließkante und keine Naht darauf.</translation>
        </message>
        <message>
            <source>Pressed here the little finger goes numb.</source>
            <translation>Druck hier macht den kleinen Finger taub.</translation>
        </message>
        <message>
            <source>Tight bands above the wrist numb the back of the thumb.</source>
            <translation>Enge Bänder über dem Handgelenk machen den Daumenrücken taub.</translation>
        </message>
        <message>
            <source>The nerve comes out of its groove behind the elbow here.</source>
            <translation>Hier kommt der Nerv hinter dem Ellbogen aus seiner Rinne.</translation>
        </message>
        <message>
            <source>Bone and tendons.</source>
            <translation>Knochen und Sehnen.</translation>
        </message>
        <message>
            <source>Keep clear of brows and eyes.</source>
            <translation>Von Brauen und Augen fernhalten.</translation>
        </message>
        <message>
            <source>The leg's blood returns here: nothing firm, least of all with the knee bent.</source>
            <translation>Der Weg des Beinbluts zurück: hier nichts Festes, am wenigsten bei gebeugtem Knie.</translation>
        </message>
        <message>
            <source>Tight edges here numb the outer thigh.</source>
            <translation>Enge Kanten hier machen den äußeren Oberschenkel taub.</translation>
        </message>
        <message>
            <source>The leg's blood returns here: no firm band.</source>
            <translation>Der Weg des Beinbluts zurück: hier kein festes Band.</translation>
        </message>
        <message>
            <source>Waist and hip bands press it against the bone.</source>
            <translation>Bänder um Taille und Hüfte drücken ihn gegen den Knochen.</translation>
        </message>
        <message>
            <source>Leave room to breathe.</source>
            <translation>Platz zum Atmen lassen.</translation>
        </message>
        <message>
            <source>Behind the medial epicondyle, between bone and skin: nothing may press here.</source>
            <translation>Hinter dem inneren Epikondylus, zwischen Knochen und Haut: hier darf nichts drücken.</translation>
        </message>
        <message>
            <source>It winds round the humerus; a band or edge here can drop the wrist.</source>
            <translation>Er windet sich um den Oberarmknochen; ein Band oder eine Kante hier kann die Hand hängen lassen.</translation>
        </message>
        <message>
            <source>In the groove on the inner side.</source>
            <translation>In der Rinne an der Innenseite.</translation>
        </message>
        <message>
            <source>Where the pulse is felt.</source>
            <translation>Wo man den Puls fühlt.</translation>
        </message>
        <message>
            <source>body made from %1; measures not given are those of %2 at percentile %3; it brings %4 bony and nerve sites.</source>
            <translation>Körper aus %1; nicht angegebene Maße sind die von %2 beim Perzentil %3; er bringt %4 Knochen- und Nervenstellen mit.</translation>
        </message>
        <message>
            <source>the form '%1', left</source>
            <translation>der Form „%1“, links</translation>
        </message>
        <message>
            <source>the form '%1'</source>
            <translation>der Form „%1“</translation>
        </message>
        <message>
            <source>men</source>
            <translation>Männern</translation>
        </message>
        <message>
            <source>women</source>
            <translation>Frauen</translation>
        </message>
        <message>
            <source>At station %1 the section crosses an opening: its girth of %2 bridges %3 straight, so the true girth is larger.</source>
            <translation>An der Station %1 läuft der Schnitt über eine Öffnung: sein Umfang von %2 überbrückt %3 gerade, der wahre Umfang ist also größer.</translation>
        </message>
        <message>
            <source>At station %1 the section is %2 loops; the girth given (%3) is of the longest.</source>
            <translation>An der Station %1 besteht der Schnitt aus %2 Schleifen; der angegebene Umfang (%3) ist der der längsten.</translation>
        </message>
        <message>
            <source>The distal end is open, %1 round.</source>
            <translation>Das distale Ende ist offen, %1 ringsum.</translation>
        </message>
        <message>
            <source>The proximal end is open, %1 round.</source>
            <translation>Das proximale Ende ist offen, %1 ringsum.</translation>
        </message>
        <message>
            <source>There is a hole in the surface, %1 round, between stations %2 and %3.</source>
            <translation>In der Oberfläche ist ein Loch, %1 ringsum, zwischen den Stationen %2 und %3.</translation>
        </message>
        <message>
            <source>The body lies %1 from the origin of its file; points named in a plan are meant there too.</source>
            <translation>Der Körper liegt %1 vom Ursprung seiner Datei; auch die Punkte eines Plans sind dort gemeint.</translation>
        </message>
        <message>
            <source>That far from the origin the file's numbers are rounded to %1; move the body to the origin before saving it.</source>
            <translation>So weit vom Ursprung sind die Zahlen der Datei auf %1 gerundet; den Körper vor dem Speichern zum Ursprung schieben.</translation>
        </message>
        <message>
            <source>%1 pairs of faces or more</source>
            <translation>%1 Flächenpaare oder mehr</translation>
        </message>
        <message>
            <source>%1 pairs of faces</source>
            <translation>%1 Flächenpaare</translation>
        </message>
        <message>
            <source>The surface passes through itself: %1, first near %2; girths and contact there are not to be trusted.</source>
            <translation>Die Oberfläche durchdringt sich selbst: %1, zuerst nahe %2; Umfängen und Kontakt dort ist nicht zu trauen.</translation>
        </message>
        <message>
            <source>The limb is bent: its two halves run %1 degrees apart, so stations and girths hold for neither. Scan it straight, or cut off the part that the device goes on.</source>
            <translation>Die Gliedmaße ist gebeugt: ihre beiden Hälften stehen %1 Grad zueinander, Stationen und Umfänge gelten also für keine von beiden. Scannen Sie sie gestreckt, oder schneiden Sie den Teil heraus, auf dem das Gerät sitzt.</translation>
        </message>
        <message>
            <source>Only %1 of %2 sections across the axis go all round: the limb is bent, or the axis is not its own. State the axis, or cut off the part that the device goes on.</source>
            <translation>Nur %1 von %2 Schnitten quer zur Achse laufen ganz herum: die Gliedmaße ist gebeugt, oder die Achse ist nicht ihre. Geben Sie die Achse an, oder schneiden Sie den Teil heraus, auf dem das Gerät sitzt.</translation>
        </message>
        <message>
            <source>Vertex %1, at %2, lies %3 times as far out as the rest: take it out of the file.</source>
            <translation>Punkt %1 bei %2 liegt %3-mal so weit außen wie der Rest: nehmen Sie ihn aus der Datei.</translation>
        </message>
        <message>
            <source>%4 vertices lie far off the rest, the furthest of them, vertex %1 at %2, %3 times as far out: take them out of the file.</source>
            <translation>%4 Punkte liegen weit ab vom Rest, der fernste, Punkt %1 bei %2, %3-mal so weit außen: nehmen Sie sie aus der Datei.</translation>
        </message>
        <message>
            <source>%1 is %2; the survey&apos;s women and men have %3 to %4 (1st to 99th percentile). Check the tape value and its unit: the form is stretched beyond what it was made from.</source>
            <translation>%1 ist %2; die Frauen und Männer der Erhebung haben %3 bis %4 (1. bis 99. Perzentil). Prüfen Sie den Wert und seine Einheit: die Form ist über das gestreckt, wonach sie gebildet wurde.</translation>
        </message>
        <message>
            <source>Nothing holds this layout on the body, and whatever holds it in use presses too: put a strap or a bonded rim into the layout, or every estimate of it counts as above the limits.</source>
            <translation>Nichts hält dieses Layout am Körper, und was es im Gebrauch hält, drückt auch: nehmen Sie ein Band oder einen geklebten Rand ins Layout auf, sonst gilt jede Schätzung als über den Grenzwerten.</translation>
        </message>
        <message>
            <source>A flat plane under the body looks like a table and was measured with it. Drop it: step Body, or wrapgauge body repair.</source>
            <translation>Eine ebene Fläche unter dem Körper sieht wie ein Tisch aus und wurde mitgemessen. Entfernen Sie ihn: wrapgauge body repair.</translation>
        </message>
        <message>
            <source>The surface is closed: it has no open ends.</source>
            <translation>Die Oberfläche ist geschlossen: sie hat keine offenen Enden.</translation>
        </message>
        <message>
            <source>The long axis was found: %1, taken as pointing from distal to proximal; state it if that is wrong.</source>
            <translation>Die Längsachse wurde gefunden: %1, als von distal nach proximal genommen; angeben, wenn das falsch ist.</translation>
        </message>
        <message>
            <source>The long axis was stated: %1, taken as pointing from distal to proximal.</source>
            <translation>Die Längsachse wurde angegeben: %1, als von distal nach proximal genommen.</translation>
        </message>
        <message>
            <source>The girth falls from %1 at the end taken as distal to %2; limbs mostly grow towards the trunk, so the axis may point the wrong way.</source>
            <translation>Der Umfang fällt von %1 am Ende, das als distal genommen wurde, auf %2; Glieder werden zum Rumpf hin meist dicker, die Achse zeigt also vielleicht verkehrt herum.</translation>
        </message>
        <message>
            <source>Dropped %1 loose pieces (%2 faces, %3); %4 left.</source>
            <translation>%1 lose Stücke entfernt (%2 Flächen, %3); %4 übrig.</translation>
        </message>
        <message>
            <source>Meshed anew with edges of %1 on average: %2 faces became %3; the surface moved by %4 on average, %5 of it by less than %6, %7 at most.</source>
            <translation>Neu vernetzt mit Kanten von %1 im Mittel: aus %2 Flächen wurden %3; die Oberfläche verschob sich um %4 im Mittel, %5 von ihr um weniger als %6, höchstens um %7.</translation>
        </message>
        <message>
            <source>No hole was filled</source>
            <translation>Kein Loch wurde gefüllt</translation>
        </message>
        <message>
            <source>Filled 1 hole of up to %1 across</source>
            <translation>1 Loch von bis zu %1 Weite gefüllt</translation>
        </message>
        <message>
            <source>Filled %1 holes of up to %2 across</source>
            <translation>%1 Löcher von bis zu %2 Weite gefüllt</translation>
        </message>
        <message>
            <source>%1 left open, the widest %2 across (%3 wider than %4)</source>
            <translation>%1 offen gelassen, das weiteste %2 weit (%3 weiter als %4)</translation>
        </message>
        <message>
            <source>1 open end kept.</source>
            <translation>1 offenes Ende behalten.</translation>
        </message>
        <message>
            <source>%1 open ends kept.</source>
            <translation>%1 offene Enden behalten.</translation>
        </message>
        <message>
            <source>%1 (%2 long)</source>
            <translation>%1 (%2 lang)</translation>
        </message>
        <message>
            <source>The unit is %1, as the file's format defines it.</source>
            <translation>Die Einheit ist %1, wie das Format der Datei sie festlegt.</translation>
        </message>
        <message>
            <source>The unit is %1, as stated.</source>
            <translation>Die Einheit ist %1, wie angegeben.</translation>
        </message>
        <message>
            <source>From its size it could also be %1.</source>
            <translation>Der Größe nach könnte es auch %1 sein.</translation>
        </message>
        <message>
            <source>No unit was stated; from its size of %1 units it was taken as %2.</source>
            <translation>Keine Einheit angegeben; nach der Größe von %1 Einheiten wurde %2 genommen.</translation>
        </message>
        <message>
            <source>It could also be %1: state the unit to be sure.</source>
            <translation>Es könnte auch %1 sein: die Einheit angeben, um sicherzugehen.</translation>
        </message>
        <message>
            <source>Cut out between stations %1 and %2: %3 long, girth %4 at its distal end and %5 at its proximal end.</source>
            <translation>Zwischen den Stationen %1 und %2 ausgeschnitten: %3 lang, Umfang %4 am distalen und %5 am proximalen Ende.</translation>
        </message>
        <message>
            <source>Posed with the axis along +z and the distal end at z = 0; mean girth %1 in the distal third and %2 in the proximal one (the thinner end was taken as distal).</source>
            <translation>Aufgestellt mit der Achse längs +z und dem distalen Ende bei z = 0; mittlerer Umfang %1 im distalen Drittel und %2 im proximalen (das dünnere Ende gilt als distal).</translation>
        </message>
        <message>
            <source>Posed with the axis along +z and the distal end at z = 0; mean girth %1 in the distal third and %2 in the proximal one (the thicker end was taken as distal).</source>
            <translation>Aufgestellt mit der Achse längs +z und dem distalen Ende bei z = 0; mittlerer Umfang %1 im distalen Drittel und %2 im proximalen (das dickere Ende gilt als distal).</translation>
        </message>
        <message>
            <source>Posed with the axis along +z, the scan&apos;s own way up: mean girths of %1 and %2 differ by less than 5 %, which does not tell the distal end. Check that it is at z = 0; if it is not, turn the body over (distal end: turned).</source>
            <translation>Aufgestellt mit der Achse längs +z, oben und unten wie im Scan: Die mittleren Umfänge %1 und %2 unterscheiden sich um weniger als 5 %; welches Ende distal ist, sagt das nicht. Prüfen, ob es bei z = 0 liegt; wenn nicht, den Körper umdrehen (distales Ende: umgedreht).</translation>
        </message>
        <message>
            <source>Posed with the axis along +z and turned over against the scan; mean girth %1 in the distal third and %2 in the proximal one.</source>
            <translation>Aufgestellt mit der Achse längs +z und gegenüber dem Scan umgedreht; mittlerer Umfang %1 im distalen Drittel und %2 im proximalen.</translation>
        </message>
        <message>
            <source>Posed with the axis along +z and the distal end at z = 0; mean girth %1 in the distal third and %2 in the proximal one.</source>
            <translation>Aufgestellt mit der Achse längs +z und dem distalen Ende bei z = 0; mittlerer Umfang %1 im distalen Drittel und %2 im proximalen.</translation>
        </message>
        <message>
            <source>Mirrored at x = 0: a left limb became a right one, or a right one a left one.</source>
            <translation>Bei x = 0 gespiegelt: ein linkes Glied wurde ein rechtes oder ein rechtes ein linkes.</translation>
        </message>
        <message>
            <source>Trimmed 1 face hanging loosely at the rims of holes and ends.</source>
            <translation>1 Fläche abgeschnitten, die lose an den Rändern von Löchern und Enden hing.</translation>
        </message>
        <message>
            <source>Trimmed %1 faces hanging loosely at the rims of holes and ends.</source>
            <translation>%1 Flächen abgeschnitten, die lose an den Rändern von Löchern und Enden hingen.</translation>
        </message>
        <message>
            <source>Nothing to repair.</source>
            <translation>Nichts zu reparieren.</translation>
        </message>
        <message>
            <source>Smoothed in %1 passes: vertices moved by %2 (root mean square); girths, as circles of the same area, changed by %3 on average and %4 at most; the rough section lines themselves by %5 on average.</source>
            <translation>In %1 Durchgängen geglättet: Eckpunkte um %2 verschoben (quadratisches Mittel); Umfänge, als die von Kreisen mit der Fläche der Schnitte, im Mittel um %3 und höchstens um %4 geändert; die vorher rauen Schnittlinien im Mittel um %5 geändert.</translation>
        </message>
        <message>
            <source>1 vertex</source>
            <translation>1 Eckpunkt</translation>
        </message>
        <message>
            <source>%1 vertices</source>
            <translation>%1 Eckpunkte</translation>
        </message>
        <message>
            <source>1 face</source>
            <translation>1 Fläche</translation>
        </message>
        <message>
            <source>%1 faces</source>
            <translation>%1 Flächen</translation>
        </message>
        <message>
            <source>Welded %1 onto others at the same place.</source>
            <translation>%1 mit anderen an derselben Stelle verbunden.</translation>
        </message>
        <message>
            <source>Removed %1 without area, %2 of them by flipping an edge.</source>
            <translation>%1 ohne Inhalt entfernt, %2 davon durch Umklappen einer Kante.</translation>
        </message>
        <message>
            <source>Removed %1 without area.</source>
            <translation>%1 ohne Inhalt entfernt.</translation>
        </message>
        <message>
            <source>Dropped 1 face that was there more than once.</source>
            <translation>1 Fläche entfernt, die mehrfach da war.</translation>
        </message>
        <message>
            <source>Dropped %1 faces that were there more than once.</source>
            <translation>%1 Flächen entfernt, die mehrfach da waren.</translation>
        </message>
        <message>
            <source>Kept the largest of %1 separate pieces (%2 of the area) and left out the %3 of the rest.</source>
            <translation>Das größte von %1 getrennten Stücken (%2 des Inhalts) behalten und die übrigen (%3) weggelassen.</translation>
        </message>
        <message>
            <source>Cut off %1 hanging on edges that already joined two others.</source>
            <translation>%1 abgeschnitten, wo Kanten schon zwei andere verbanden.</translation>
        </message>
        <message>
            <source>Split %1 where the surface touched itself at a point.</source>
            <translation>%1 aufgetrennt, wo die Oberfläche sich selbst in einem Punkt berührte.</translation>
        </message>
        <message>
            <source>Turned %1 to face outward.</source>
            <translation>%1 nach außen gedreht.</translation>
        </message>
        <message>
            <source>No table was found: the largest flat part has %1 of the area and is too small, has parts of the scan on both sides, or does not reach out from under the limb.</source>
            <translation>Kein Tisch gefunden: der größte ebene Teil hat %1 der Fläche und ist zu klein, hat Teile des Scans auf beiden Seiten oder ragt nicht unter dem Glied hervor.</translation>
        </message>
        <message>
            <source>Dropped a table: a plane with %1 of the area, %2 faces within %3 of it or beyond it.</source>
            <translation>Ein Tisch entfernt: eine Ebene mit %1 der Fläche, %2 Flächen bis %3 davon entfernt oder dahinter.</translation>
        </message>
        <message>
            <source>inset spot %1 of chamber '%2'</source>
            <translation>Innennaht-Punkt %1 der Kammer „%2“</translation>
        </message>
        <message>
            <source>inset line %1 of chamber '%2'</source>
            <translation>Innennaht-Linie %1 der Kammer „%2“</translation>
        </message>
        <message>
            <source>edge of channel '%1'</source>
            <translation>Rand des Kanals „%1“</translation>
        </message>
        <message>
            <source>edge of chamber '%1'</source>
            <translation>Rand der Kammer „%1“</translation>
        </message>
        <message>
            <source>skin</source>
            <translation>Hautlage</translation>
        </message>
        <message>
            <source>outer</source>
            <translation>Außenlage</translation>
        </message>
        <message>
            <source>Left out %1 parts that are lines or points.</source>
            <translation>%1 Teile weggelassen, die Linien oder Punkte sind.</translation>
        </message>
        <message>
            <source>Polygons with corners on one line or on each other lost %1 triangles of no area when they were cut up.</source>
            <translation>Vielecke mit Ecken auf einer Linie oder aufeinander verloren beim Zerlegen %1 Dreiecke ohne Inhalt.</translation>
        </message>
        <message>
            <source>After its last element the file has %1 more bytes, which were ignored.</source>
            <translation>Nach ihrem letzten Element hat die Datei noch %1 Bytes, die übergangen wurden.</translation>
        </message>
        <message>
            <source>After its %1 facets the file has %2 more bytes, which were ignored.</source>
            <translation>Nach ihren %1 Dreiecken hat die Datei noch %2 Bytes, die übergangen wurden.</translation>
        </message>
        <message>
            <source>The file has no closing "endsolid"; it may be cut short.</source>
            <translation>Der Datei fehlt das abschließende „endsolid“; vielleicht ist sie abgeschnitten.</translation>
        </message>
        <message>
            <source>unnamed</source>
            <translation>ohne Namen</translation>
        </message>
        <message>
            <source>A thumb pushing %1 on a %2 syringe can reach %3</source>
            <translation>Ein Daumen, der mit %1 auf eine %2-Spritze drückt, erreicht %3</translation>
        </message>
        <message>
            <source>The pump can reach %1 before it stalls</source>
            <translation>Die Pumpe erreicht %1, bevor sie stehen bleibt</translation>
        </message>
        <message>
            <source>Sealed air that warms</source>
            <translation>Eingeschlossene Luft, die sich erwärmt</translation>
        </message>
        <message>
            <source>Vent after 5 min on the skin, then set the pressure again.</source>
            <translation>Nach 5 min auf der Haut entlüften, dann den Druck neu einstellen.</translation>
        </message>
        <message>
            <source>Sealed at %1 and warmed to %2, inlet '%3' rises from %4 to %5; a chamber that could not grow would gain %6.</source>
            <translation>Bei %1 eingeschlossen und auf %2 erwärmt, steigt die Luft an Einlass „%3“ von %4 auf %5; eine Kammer, die nicht wachsen kann, gewänne %6.</translation>
        </message>
        <message>
            <source>Sealed air in flight or on a mountain</source>
            <translation>Eingeschlossene Luft im Flug oder auf einem Berg</translation>
        </message>
        <message>
            <source>Never wear it sealed in an aircraft, on the way up to altitude or in a pressure chamber.</source>
            <translation>Nie mit eingeschlossener Luft im Flugzeug, auf dem Weg in die Höhe oder in einer Druckkammer tragen.</translation>
        </message>
        <message>
            <source>Sealed on the ground and worn at an air pressure of %1, inlet '%2' rises from %3 to %4; a chamber that could not grow would gain %5.</source>
            <translation>Am Boden eingeschlossen und bei %1 Luftdruck getragen, steigt die Luft an Einlass „%2“ von %3 auf %4; eine Kammer, die nicht wachsen kann, gewänne %5.</translation>
        </message>
        <message>
            <source>A source that can exceed the limit</source>
            <translation>Eine Quelle, die den Grenzwert übersteigen kann</translation>
        </message>
        <message>
            <source>Fit a relief valve between source and device; watch a separate gauge.</source>
            <translation>Ein Überdruckventil zwischen Quelle und Gerät einbauen; ein eigenes Manometer beobachten.</translation>
        </message>
        <message>
            <source>The plan has no relief valve; it should open %1.</source>
            <translation>Der Plan hat kein Überdruckventil; es sollte %1 öffnen.</translation>
        </message>
        <message>
            <source>The relief valve opens at %1 but should open %2.</source>
            <translation>Das Überdruckventil öffnet bei %1, sollte aber %2 öffnen.</translation>
        </message>
        <message>
            <source>The relief valve opens at %1; it may open %2.</source>
            <translation>Das Überdruckventil öffnet bei %1; es darf %2 öffnen.</translation>
        </message>
        <message>
            <source>With the tube open, inlet '%1' falls below %2 in %3; %4 at most is allowed (%5).</source>
            <translation>Bei offenem Schlauch fällt Einlass „%1“ in %3 unter %2; erlaubt sind höchstens %4 (%5).</translation>
        </message>
        <message>
            <source>The flow starts turbulent (Reynolds number %1), so it takes longer.</source>
            <translation>Die Strömung beginnt turbulent (Reynoldszahl %1), es dauert also länger.</translation>
        </message>
        <message>
            <source>%1 to %2 mmHg</source>
            <translation>%1 bis %2 mmHg</translation>
        </message>
        <message>
            <source>%1 and more mmHg</source>
            <translation>%1 mmHg und mehr</translation>
        </message>
        <message>
            <source>class %1 of %2 (%3 at the %4, %5)</source>
            <translation>Klasse %1 nach %2 (%3 am %4, %5)</translation>
        </message>
        <message>
            <source>above the limit of %1</source>
            <translation>über dem Grenzwert von %1</translation>
        </message>
        <message>
            <source>above the warning of %1</source>
            <translation>über der Warnung bei %1</translation>
        </message>
        <message>
            <source>the limit of %1 of elongation at break</source>
            <translation>dem Grenzwert von %1 der Bruchdehnung</translation>
        </message>
        <message>
            <source>the limit of stretch %1</source>
            <translation>dem Grenzwert der Dehnung %1</translation>
        </message>
        <message>
            <source>the warning at stretch %1</source>
            <translation>der Warnung bei der Dehnung %1</translation>
        </message>
        <message>
            <source>away from the trunk</source>
            <translation>vom Rumpf weg</translation>
        </message>
        <message>
            <source>towards the trunk</source>
            <translation>zum Rumpf hin</translation>
        </message>
        <message>
            <source>pressed for %1 without a break, %2 at most</source>
            <translation>%1 ohne Pause gedrückt, höchstens %2 sind erlaubt</translation>
        </message>
        <message>
            <source>a session of %1, %2 at most</source>
            <translation>eine Sitzung von %1, höchstens %2 sind erlaubt</translation>
        </message>
        <message>
            <source>off for only %1 times the hold before it, %2 times at least</source>
            <translation>nur das %1-Fache der Haltezeit davor entlastet, mindestens das %2-Fache ist nötig</translation>
        </message>
        <message>
            <source>pressed for %1 of the time, %2 at most</source>
            <translation>%1 der Zeit gedrückt, höchstens %2 sind erlaubt</translation>
        </message>
        <message>
            <source>The limits %1, %2, apply only with these times: %3.</source>
            <translation>Die Grenzwerte %1, %2, gelten nur mit diesen Zeiten: %3.</translation>
        </message>
        <message>
            <source>none given</source>
            <translation>keine angegeben</translation>
        </message>
        <message>
            <source>A bulge that runs away</source>
            <translation>Eine Wölbung, die durchgeht</translation>
        </message>
        <message>
            <source>There is no chamber.</source>
            <translation>Es gibt keine Kammer.</translation>
        </message>
        <message>
            <source>Fill slowly; stop filling when volume grows and pressure does not.</source>
            <translation>Langsam füllen; aufhören, wenn das Volumen wächst und der Druck nicht.</translation>
        </message>
        <message>
            <source>The chambers hold no more than %1, at %2; beyond that one of them runs away.</source>
            <translation>Die Kammern halten nicht mehr als %1, bei %2; darüber geht eine von ihnen durch.</translation>
        </message>
        <message>
            <source>No bulge ran away up to %1 and %2 in '%3'.</source>
            <translation>Bis %1 und %2 in „%3“ ging keine Wölbung durch.</translation>
        </message>
        <message>
            <source>A sheet that tears</source>
            <translation>Eine Lage, die reißt</translation>
        </message>
        <message>
            <source>Burst two samples on the bench, off the body, at three times the planned pressure or more.</source>
            <translation>Zwei Muster auf dem Prüfstand bersten lassen, nicht am Körper, beim Dreifachen des geplanten Drucks oder mehr.</translation>
        </message>
        <message>
            <source>The most stretched sheet, of '%1', is at %2 times its length, %3 of its elongation at break.</source>
            <translation>Die am stärksten gedehnte Lage, die von „%1“, ist beim %2-Fachen ihrer Länge, %3 ihrer Bruchdehnung.</translation>
        </message>
        <message>
            <source>A seam that opens</source>
            <translation>Eine Naht, die aufgeht</translation>
        </message>
        <message>
            <source>Hold at 1.5 times the planned pressure for 10 min, off the body, before each new cast is worn.</source>
            <translation>Das 1,5-Fache des geplanten Drucks 10 min halten, nicht am Körper, bevor ein neuer Guss getragen wird.</translation>
        </message>
        <message>
            <source>The first seam to watch: %1, pulled by %2. What a fused seam holds is not known here.</source>
            <translation>Zuerst zu beobachten: %1, gezogen mit %2. Was eine Naht hält, ist hier nicht bekannt.</translation>
        </message>
        <message>
            <source>The first seam to watch is at '%1', pulled by %2; what a fused seam holds is not known here.</source>
            <translation>Zuerst zu beobachten ist die Naht an „%1“, gezogen mit %2; was sie hält, ist hier nicht bekannt.</translation>
        </message>
        <message>
            <source>a time the plan does not give</source>
            <translation>eine Zeit, die der Plan nicht angibt</translation>
        </message>
        <message>
            <source>at most %1</source>
            <translation>höchstens %1</translation>
        </message>
        <message>
            <source>no less than %1</source>
            <translation>nicht weniger als %1</translation>
        </message>
        <message>
            <source>The filling starts at %1 for %2; the skin side may be %3 for %4 (%5).</source>
            <translation>Die Füllung beginnt mit %1 für %2; die Hautseite darf %3 haben, %4 lang (%5).</translation>
        </message>
        <message>
            <source>Heat or cold</source>
            <translation>Hitze oder Kälte</translation>
        </message>
        <message>
            <source>The plan gives no temperature, so the filling is taken to be at room temperature.</source>
            <translation>Der Plan gibt keine Temperatur an, die Füllung gilt also als zimmerwarm.</translation>
        </message>
        <message>
            <source>Measure the skin side before wearing; cloth between pad and skin.</source>
            <translation>Vor dem Tragen die Hautseite messen; Stoff zwischen Kissen und Haut.</translation>
        </message>
        <message>
            <source>Skin burns at %1 in %2 (%3).</source>
            <translation>Haut verbrennt bei %1 in %2 (%3).</translation>
        </message>
        <message>
            <source>Heat and held pressure together starve the skin: never both.</source>
            <translation>Hitze und gehaltener Druck zusammen hungern die Haut aus: nie beides.</translation>
        </message>
        <message>
            <source>look at the skin after %1 and every %2 afterwards</source>
            <translation>nach %1 die Haut ansehen und danach alle %2</translation>
        </message>
        <message>
            <source>look at the skin after %1</source>
            <translation>nach %1 die Haut ansehen</translation>
        </message>
        <message>
            <source>hold for %1 at most</source>
            <translation>höchstens %1 halten</translation>
        </message>
        <message>
            <source>then off for at least %1 times as long</source>
            <translation>dann mindestens das %1-Fache davon loslassen</translation>
        </message>
        <message>
            <source>no more than %1 in a session</source>
            <translation>nicht mehr als %1 in einer Sitzung</translation>
        </message>
        <message>
            <source>for a pad on a soft place</source>
            <translation>für ein Kissen auf einer weichen Stelle</translation>
        </message>
        <message>
            <source>over bone or a nerve</source>
            <translation>über Knochen oder einem Nerv</translation>
        </message>
        <message>
            <source>for a cuff round the limb</source>
            <translation>für eine Manschette um das Glied</translation>
        </message>
        <message>
            <source>held for a session</source>
            <translation>eine Sitzung lang gehalten</translation>
        </message>
        <message>
            <source>held for a minute at most</source>
            <translation>höchstens eine Minute gehalten</translation>
        </message>
        <message>
            <source>in pulses of 2 s at most</source>
            <translation>in Pulsen von höchstens 2 s</translation>
        </message>
        <message>
            <source>%1 is %2 instead of %3</source>
            <translation>%1 ist %2 statt %3</translation>
        </message>
        <message>
            <source>%1, first check</source>
            <translation>%1, erstes Ansehen</translation>
        </message>
        <message>
            <source>%1, checks every %2 are missing</source>
            <translation>%1, das Ansehen alle %2 fehlt</translation>
        </message>
        <message>
            <source>%1, time between checks</source>
            <translation>%1, Zeit zwischen dem Ansehen</translation>
        </message>
        <message>
            <source>%1, hold</source>
            <translation>%1, Halten</translation>
        </message>
        <message>
            <source>%1, off over on</source>
            <translation>%1, Loslassen zu Halten</translation>
        </message>
        <message>
            <source>%1, session</source>
            <translation>%1, Sitzung</translation>
        </message>
        <message>
            <source>row %1, %2</source>
            <translation>Zeile %1, %2</translation>
        </message>
        <message>
            <source>%1, warning</source>
            <translation>%1, Warnung</translation>
        </message>
        <message>
            <source>%1, limit</source>
            <translation>%1, Grenzwert</translation>
        </message>
        <message>
            <source>the model factor</source>
            <translation>der Modellfaktor</translation>
        </message>
        <message>
            <source>the share of the girth that counts as round the limb</source>
            <translation>der Anteil des Umfangs, der als umlaufend gilt</translation>
        </message>
        <message>
            <source>the tourniquet caution</source>
            <translation>die Abschnürungs-Warnung</translation>
        </message>
        <message>
            <source>the tourniquet stop</source>
            <translation>der Abschnürungs-Stopp</translation>
        </message>
        <message>
            <source>the tissue strain warning</source>
            <translation>die Warnung der Gewebestauchung</translation>
        </message>
        <message>
            <source>the tissue strain limit</source>
            <translation>der Grenzwert der Gewebestauchung</translation>
        </message>
        <message>
            <source>the sheet stretch warning</source>
            <translation>die Warnung der Lagendehnung</translation>
        </message>
        <message>
            <source>the sheet stretch limit</source>
            <translation>der Grenzwert der Lagendehnung</translation>
        </message>
        <message>
            <source>the share of elongation at break</source>
            <translation>der Anteil der Bruchdehnung</translation>
        </message>
        <message>
            <source>the pressure of a rested place</source>
            <translation>der Druck einer entlasteten Stelle</translation>
        </message>
        <message>
            <source>the rest after a session</source>
            <translation>die Ruhe nach einer Sitzung</translation>
        </message>
        <message>
            <source>the relief setting over the limit</source>
            <translation>die Ventileinstellung zum Grenzwert</translation>
        </message>
        <message>
            <source>the highest relief setting of a cuff</source>
            <translation>die höchste Ventileinstellung einer Manschette</translation>
        </message>
        <message>
            <source>the highest relief setting of a pad</source>
            <translation>die höchste Ventileinstellung eines Kissens</translation>
        </message>
        <message>
            <source>the release time</source>
            <translation>die Zeit des Ablassens</translation>
        </message>
        <message>
            <source>the pressure after release</source>
            <translation>der Druck nach dem Ablassen</translation>
        </message>
        <message>
            <source>the hottest skin side in C</source>
            <translation>die heißeste Hautseite in °C</translation>
        </message>
        <message>
            <source>the hot stop in C</source>
            <translation>der Hitze-Stopp in °C</translation>
        </message>
        <message>
            <source>the coldest skin side in C</source>
            <translation>die kälteste Hautseite in °C</translation>
        </message>
        <message>
            <source>the time hot</source>
            <translation>die Zeit in Hitze</translation>
        </message>
        <message>
            <source>the time cold</source>
            <translation>die Zeit in Kälte</translation>
        </message>
        <message>
            <source>Limits of the program were overridden by the set '%1' (%2). Reason given in the plan: %3</source>
            <translation>Grenzwerte des Programms wurden durch die Grenzwerte „%1“ ersetzt (%2). Grund im Plan: %3</translation>
        </message>
        <message>
            <source>%1 is not predicted to touch the skin.</source>
            <translation>%1 berührt die Haut voraussichtlich nicht.</translation>
        </message>
        <message>
            <source>Chamber '%1'</source>
            <translation>Kammer „%1“</translation>
        </message>
        <message>
            <source>chamber '%1'</source>
            <translation>Kammer „%1“</translation>
        </message>
        <message>
            <source>channel '%1'</source>
            <translation>Kanal „%1“</translation>
        </message>
        <message>
            <source>%1 (under %2)</source>
            <translation>%1 (unter %2)</translation>
        </message>
        <message>
            <source>For comparison only: the highest mean, %1 under chamber '%2', would lie in %3. Class numbers differ by country: read mmHg; a class is prescribed and is no limit here.</source>
            <translation>Nur zum Vergleich: das höchste Mittel, %1 unter Kammer „%2“, läge in %3. Klassennummern sind von Land zu Land verschieden: mmHg lesen; eine Klasse wird verordnet und ist hier kein Grenzwert.</translation>
        </message>
        <message>
            <source>x</source>
            <translation>x</translation>
        </message>
        <message>
            <source>y</source>
            <translation>y</translation>
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
            <source>From x</source>
            <translation>Von x</translation>
        </message>
        <message>
            <source>From y</source>
            <translation>Von y</translation>
        </message>
        <message>
            <source>To x</source>
            <translation>Bis x</translation>
        </message>
        <message>
            <source>To y</source>
            <translation>Bis y</translation>
        </message>
        <message>
            <source>outline</source>
            <translation>Umriss</translation>
        </message>
        <message>
            <source>chamber %1</source>
            <translation>Kammer %1</translation>
        </message>
        <message>
            <source>inset spot %1 of %2</source>
            <translation>Innennahtpunkt %1 von %2</translation>
        </message>
        <message>
            <source>inset line %1 of %2</source>
            <translation>Innennahtlinie %1 von %2</translation>
        </message>
        <message>
            <source>channel %1</source>
            <translation>Kanal %1</translation>
        </message>
        <message>
            <source>inlet %1</source>
            <translation>Einlass %1</translation>
        </message>
        <message>
            <source>strap %1</source>
            <translation>Gurt %1</translation>
        </message>
        <message>
            <source>Radius</source>
            <translation>Radius</translation>
        </message>
        <message>
            <source>Stiffness</source>
            <translation>Steifigkeit</translation>
        </message>
        <message>
            <source>Thickness</source>
            <translation>Dicke</translation>
        </message>
        <message>
            <source>finger</source>
            <translation>Finger</translation>
        </message>
        <message>
            <source>hand</source>
            <translation>Hand</translation>
        </message>
        <message>
            <source>wrist</source>
            <translation>Handgelenk</translation>
        </message>
        <message>
            <source>forearm</source>
            <translation>Unterarm</translation>
        </message>
        <message>
            <source>elbow</source>
            <translation>Ellbogen</translation>
        </message>
        <message>
            <source>upper arm</source>
            <translation>Oberarm</translation>
        </message>
        <message>
            <source>shoulder</source>
            <translation>Schulter</translation>
        </message>
        <message>
            <source>chest</source>
            <translation>Brust</translation>
        </message>
        <message>
            <source>abdomen</source>
            <translation>Bauch</translation>
        </message>
        <message>
            <source>back</source>
            <translation>Rücken</translation>
        </message>
        <message>
            <source>hip</source>
            <translation>Hüfte</translation>
        </message>
        <message>
            <source>thigh</source>
            <translation>Oberschenkel</translation>
        </message>
        <message>
            <source>knee</source>
            <translation>Knie</translation>
        </message>
        <message>
            <source>lower leg</source>
            <translation>Unterschenkel</translation>
        </message>
        <message>
            <source>foot</source>
            <translation>Fuß</translation>
        </message>
        <message>
            <source>head</source>
            <translation>Kopf</translation>
        </message>
        <message>
            <source>neck</source>
            <translation>Hals</translation>
        </message>
        <message>
            <source>face</source>
            <translation>Gesicht</translation>
        </message>
        <message>
            <source>test object</source>
            <translation>Prüfkörper</translation>
        </message>
        <message>
            <source>a third of the 9 kPa that killed rat muscle within 2 h in Linder-Ganz et al. 2006, below the 30 mmHg at which nerves changed in Lundborg et al. 1982</source>
            <translation>ein Drittel der 9 kPa, bei denen in Linder-Ganz et al. 2006 Rattenmuskel in 2 h abstarb, unter den 30 mmHg, bei denen sich in Lundborg et al. 1982 Nerven veränderten</translation>
        </message>
        <message>
            <source>half of the soft row; skin blood flow was already greatly reduced at 10 mmHg in Daly et al. 1976 (authors from memory)</source>
            <translation>die Hälfte der weichen Zeile; die Hautdurchblutung war in Daly et al. 1976 schon bei 10 mmHg stark vermindert (Verfasser aus dem Gedächtnis)</translation>
        </message>
        <message>
            <source>below the 20 to 25 mmHg at which leg veins of people lying down closed in Partsch &amp; Partsch 2005</source>
            <translation>unter den 20 bis 25 mmHg, bei denen sich in Partsch &amp; Partsch 2005 Beinvenen Liegender schlossen</translation>
        </message>
        <message>
            <source>below the 45 mmHg after which lymph flow did not restart in Miller &amp; Seale 1987 and the 60 mmHg that blocked nerves in Lundborg et al. 1982</source>
            <translation>unter den 45 mmHg, bei denen in Miller &amp; Seale 1987 die Lymphe nicht wieder floss, und den 60 mmHg, die in Lundborg et al. 1982 Nerven blockierten</translation>
        </message>
        <message>
            <source>at most the 20 to 25 mmHg of leg veins lying down in Partsch &amp; Partsch 2005; half of the 40 mmHg that stops venous return in the upper arm, read on a secondary page</source>
            <translation>höchstens die 20 bis 25 mmHg der Beinvenen Liegender in Partsch &amp; Partsch 2005; die Hälfte der 40 mmHg, die den venösen Rückfluss des Oberarms anhalten, auf einer Sekundärseite gelesen</translation>
        </message>
        <message>
            <source>half of the lowest pressure that halved the blood flow of the hand in Johansson, Hagg &amp; Fischer 2002</source>
            <translation>die Hälfte des kleinsten Drucks, der in Johansson, Hagg &amp; Fischer 2002 die Durchblutung der Hand halbierte</translation>
        </message>
        <message>
            <source>judgement, 40 mmHg stops venous return in laboratory use, read on a secondary page; sensory block came quickly at 60 mmHg in Lundborg et al. 1982; the lowest pressure that closed an arm's artery was 120 mmHg</source>
            <translation>Einschätzung, 40 mmHg halten im Labor den venösen Rückfluss an, auf einer Sekundärseite gelesen; bei 60 mmHg fiel in Lundborg et al. 1982 das Gefühl rasch aus; der kleinste Druck, der eine Armarterie schloss, war 120 mmHg</translation>
        </message>
        <message>
            <source>part that is not known</source>
            <translation>Körperteil, den niemand genannt hat</translation>
        </message>
        <message>
            <source>Never wear it on this evidence.</source>
            <translation>Auf dieser Grundlage nie tragen.</translation>
        </message>
        <message>
            <source>Test object</source>
            <translation>Prüfkörper</translation>
        </message>
        <message>
            <source>The body is a test object, so no limit for skin or tissue is applied: nothing here says how the device presses on a person. %1</source>
            <translation>Der Körper ist ein Prüfkörper, deshalb gilt kein Grenzwert für Haut oder Gewebe: Nichts hier sagt, wie das Gerät auf einen Menschen drückt. %1</translation>
        </message>
        <message>
            <source>Name the part of the body in the plan (body.part).</source>
            <translation>Den Körperteil im Plan nennen (body.part).</translation>
        </message>
        <message>
            <source>Part of the body</source>
            <translation>Körperteil</translation>
        </message>
        <message>
            <source>Nobody has said which part of the body this is, so the strictest rules hold everywhere: those of bone and nerve, and those of chest and head. %1</source>
            <translation>Niemand hat gesagt, welcher Körperteil das ist, deshalb gelten überall die strengsten Regeln: die über Knochen und Nerven und die für Brust und Kopf. %1</translation>
        </message>
        <message>
            <source>Mark the sites, or confirm in words that there are none.</source>
            <translation>Die Stellen markieren oder in Worten bestätigen, dass es keine gibt.</translation>
        </message>
        <message>
            <source>Bony and nerve sites</source>
            <translation>Knochen- und Nervenstellen</translation>
        </message>
        <message>
            <source>Nobody has said where the bones and nerves of this body lie, so bone is taken to lie %1 under the skin everywhere, and the limit over bone or nerve, %2, holds everywhere. %3</source>
            <translation>Niemand hat gesagt, wo Knochen und Nerven dieses Körpers liegen. Deshalb wird überall mit Knochen %1 unter der Haut gerechnet, und überall gilt der Grenzwert über Knochen oder Nerven, %2. %3</translation>
        </message>
        <message>
            <source>Nobody has said where the bones and nerves of this body lie, so the limit over bone or nerve, %1, holds everywhere. %2</source>
            <translation>Niemand hat gesagt, wo Knochen und Nerven dieses Körpers liegen. Deshalb gilt überall der Grenzwert über Knochen oder Nerven, %1. %2</translation>
        </message>
        <message>
            <source>Take it off; never wear it there.</source>
            <translation>Abnehmen; dort nie tragen.</translation>
        </message>
        <message>
            <source>Nothing inflatable may press on the %1: airway, vessels and eyes are at stake, and no one can allow it. %2</source>
            <translation>Auf den Körperteil %1 darf nichts Aufblasbares drücken: Atemweg, Gefäße und Augen sind in Gefahr, und niemand kann es erlauben. %2</translation>
        </message>
        <message>
            <source>it may hinder breathing or reach eyes and airway</source>
            <translation>es kann die Atmung behindern oder Augen und Atemweg erreichen</translation>
        </message>
        <message>
            <source>it may slip onto eyes or airway</source>
            <translation>es kann auf Augen oder Atemweg rutschen</translation>
        </message>
        <message>
            <source>it may hinder breathing</source>
            <translation>es kann die Atmung behindern</translation>
        </message>
        <message>
            <source>Watch breathing, eyes and airway all the time.</source>
            <translation>Atmung, Augen und Atemweg ständig beobachten.</translation>
        </message>
        <message>
            <source>The device presses on %1 of a girth of the %2: %3. %4 (%5) allowed it on %6. %7</source>
            <translation>Das Gerät drückt auf %1 eines Umfangs (%2): %3. %4 (%5) hat es am %6 erlaubt. %7</translation>
        </message>
        <message>
            <source>Do not wear it like this: press on less than 2/3 of the girth, or have a clinician decide and name them in the plan (cleared_by).</source>
            <translation>So nicht tragen: auf weniger als 2/3 des Umfangs drücken, oder eine Fachperson der Medizin entscheiden lassen und im Plan nennen (cleared_by).</translation>
        </message>
        <message>
            <source>The device presses on %1 of a girth of the %2: %3, and no clinician is named who allows it. %4</source>
            <translation>Das Gerät drückt auf %1 eines Umfangs (%2): %3, und keine Fachperson der Medizin ist genannt, die es erlaubt. %4</translation>
        </message>
        <message>
            <source>All round the %1</source>
            <translation>Rundum: %1</translation>
        </message>
        <message>
            <source>secondary page</source>
            <translation>Sekundärseite</translation>
        </message>
        <message>
            <source>fastening alone</source>
            <translation>Anlegen allein</translation>
        </message>
        <message>
            <source>inflation</source>
            <translation>Füllung</translation>
        </message>
        <message>
            <source>edge or strap</source>
            <translation>Kante oder Gurt</translation>
        </message>
        <message>
            <source>bone or nerve</source>
            <translation>Knochen oder Nerv</translation>
        </message>
        <message>
            <source>runaway</source>
            <translation>Durchgehen</translation>
        </message>
        <message>
            <source>time</source>
            <translation>Zeit</translation>
        </message>
        <message>
            <source>seam</source>
            <translation>Naht</translation>
        </message>
        <message>
            <source>the bone</source>
            <translation>dem Knochen</translation>
        </message>
        <message>
            <source>the nerve</source>
            <translation>dem Nerv</translation>
        </message>
        <message>
            <source>the vessel</source>
            <translation>dem Gefäß</translation>
        </message>
        <message>
            <source>the tendon</source>
            <translation>der Sehne</translation>
        </message>
        <message>
            <source>Lower the pressure or widen the strap.</source>
            <translation>Den Druck senken oder den Gurt verbreitern.</translation>
        </message>
        <message>
            <source>Lower the pressure, or mark where bone and nerves lie.</source>
            <translation>Den Druck senken oder markieren, wo Knochen und Nerven liegen.</translation>
        </message>
        <message>
            <source>Lower the pressure or make the chamber larger.</source>
            <translation>Den Druck senken oder die Kammer vergrößern.</translation>
        </message>
        <message>
            <source>Lower the pressure or fasten it more loosely.</source>
            <translation>Den Druck senken oder lockerer anlegen.</translation>
        </message>
        <message>
            <source>Lower the pressure.</source>
            <translation>Den Druck senken.</translation>
        </message>
        <message>
            <source>Fasten it more loosely.</source>
            <translation>Lockerer anlegen.</translation>
        </message>
        <message>
            <source>Move %1 off %2 or fasten it more loosely.</source>
            <translation>%1 von %2 wegrücken oder lockerer anlegen.</translation>
        </message>
        <message>
            <source>Move %1 off %2 or lower the pressure.</source>
            <translation>%1 von %2 wegrücken oder den Druck senken.</translation>
        </message>
        <message>
            <source>Tissue under %1</source>
            <translation>Gewebe unter %1</translation>
        </message>
        <message>
            <source>share of the tissue's depth</source>
            <translation>Anteil der Gewebetiefe</translation>
        </message>
        <message>
            <source>Under chamber '%1' the tissue is predicted to be compressed by %2 of its depth (%3), %4 (%5). %6</source>
            <translation>Unter Kammer „%1“ wird das Gewebe voraussichtlich um %2 seiner Tiefe zusammengedrückt (%3), %4 (%5). %6</translation>
        </message>
        <message>
            <source>Ask for less, fasten it more loosely or take a thicker sheet.</source>
            <translation>Weniger verlangen, lockerer anlegen oder eine dickere Lage nehmen.</translation>
        </message>
        <message>
            <source>Ask for less, take a thicker or stiffer sheet or add inset seams.</source>
            <translation>Weniger verlangen, eine dickere oder steifere Lage nehmen oder Innennähte hinzufügen.</translation>
        </message>
        <message>
            <source>Ask for less, fill by volume, take a thicker or stiffer sheet or add inset seams.</source>
            <translation>Weniger verlangen, nach Volumen füllen, eine dickere oder steifere Lage nehmen oder Innennähte hinzufügen.</translation>
        </message>
        <message>
            <source>Above %1 and %2 in chamber %3 a sheet folds. No shape with its folds was found, and every figure here belongs to the last smooth one. %4</source>
            <translation>Über %1 und %2 wirft in Kammer %3 eine Lage Falten. Eine Form mit Falten wurde nicht gefunden, alle Zahlen hier gehören zur letzten glatten. %4</translation>
        </message>
        <message>
            <source>Above %1 and %2 a sheet of chamber %3 is stretched further than its material is known for, and every figure here belongs to the last equilibrium before. %4</source>
            <translation>Über %1 und %2 wird eine Lage von Kammer %3 weiter gedehnt, als ihr Werkstoff bekannt ist; alle Zahlen hier gehören zum letzten Gleichgewicht davor. %4</translation>
        </message>
        <message>
            <source>Chamber %3 runs away above %1, reached at %2: the pressure asked for has no equilibrium, and every figure here belongs to that last one. %4</source>
            <translation>Kammer %3 geht über %1 durch, erreicht bei %2: Der verlangte Druck hat kein Gleichgewicht, alle Zahlen hier gehören zu diesem letzten. %4</translation>
        </message>
        <message>
            <source>Sheet of %1</source>
            <translation>Lage von %1</translation>
        </message>
        <message>
            <source>Lower the pressure, take a thicker sheet or add inset seams.</source>
            <translation>Den Druck senken, eine dickere Lage nehmen oder Innennähte hinzufügen.</translation>
        </message>
        <message>
            <source>stretch of a silicone sheet</source>
            <translation>Dehnung einer Silikonlage</translation>
        </message>
        <message>
            <source>A sheet of chamber '%1' is predicted to stretch to %2 times its length, %3 of its elongation at break, above %4 (%5). %6</source>
            <translation>Eine Lage der Kammer „%1“ dehnt sich voraussichtlich auf das %2-Fache ihrer Länge, %3 ihrer Bruchdehnung, über %4 (%5). %6</translation>
        </message>
        <message>
            <source>%2 at %1 in the %3 sheet, at x %4 y %5 of the layout, %6 times the mean along it</source>
            <translation>%2 an %1 in der %3, bei x %4 y %5 des Layouts, das %6-Fache des Mittels entlang der Naht</translation>
        </message>
        <message>
            <source>Burst a sample on the bench before anyone wears it.</source>
            <translation>Ein Muster auf dem Prüfstand bersten lassen, bevor es jemand trägt.</translation>
        </message>
        <message>
            <source>Highest tension at a seam: %1; at an inset seam: %2. What a seam holds is not known here; seams are ranked by tension alone. %3</source>
            <translation>Höchste Spannung an einer Naht: %1; an einer Innennaht: %2. Was eine Naht hält, ist hier nicht bekannt; Nähte sind nur nach ihrer Spannung geordnet. %3</translation>
        </message>
        <message>
            <source>Highest tension at a seam: %1. What a seam holds is not known here; seams are ranked by tension alone. %2</source>
            <translation>Höchste Spannung an einer Naht: %1. Was eine Naht hält, ist hier nicht bekannt; Nähte sind nur nach ihrer Spannung geordnet. %2</translation>
        </message>
        <message>
            <source>Seam of %1</source>
            <translation>Naht von %1</translation>
        </message>
        <message>
            <source>Highest tension at a seam: %1, at chamber '%2'. What a seam holds is not known here. %3</source>
            <translation>Höchste Spannung an einer Naht: %1, an Kammer „%2“. Was eine Naht hält, ist hier nicht bekannt. %3</translation>
        </message>
        <message>
            <source>Anchor it or choose a less tapered place.</source>
            <translation>Verankern oder eine weniger verjüngte Stelle wählen.</translation>
        </message>
        <message>
            <source>Watch whether it creeps: sweaty or moving skin holds less.</source>
            <translation>Beobachten, ob es wandert: Verschwitzte oder bewegte Haut hält weniger.</translation>
        </message>
        <message>
            <source>Whole device, along the limb</source>
            <translation>Ganzes Gerät, längs des Glieds</translation>
        </message>
        <message>
            <source>Contact pressure alone pushes the device %1 with %2, and friction %3 on %4 of contact can hold only %5: it will creep. %6</source>
            <translation>Der Kontaktdruck allein schiebt das Gerät %1 mit %2, und Reibung %3 bei %4 Kontakt hält nur %5: Es wird wandern. %6</translation>
        </message>
        <message>
            <source>Contact pressure alone pushes the device %1 with %2, and friction %3 on %4 of contact can hold %5. %6</source>
            <translation>Der Kontaktdruck allein schiebt das Gerät %1 mit %2, und Reibung %3 bei %4 Kontakt hält %5. %6</translation>
        </message>
        <message>
            <source>Balance of forces</source>
            <translation>Kräftegleichgewicht</translation>
        </message>
        <message>
            <source>Solve with a finer mesh.</source>
            <translation>Mit einem feineren Netz rechnen.</translation>
        </message>
        <message>
            <source>Contact forces, sheet tensions and chamber pressures balance only to %1, where %2 is asked for, so the figures are rougher than shown. %3</source>
            <translation>Kontaktkräfte, Lagenspannungen und Kammerdrücke gleichen sich nur auf %1 aus, verlangt sind %2; die Zahlen sind gröber, als sie aussehen. %3</translation>
        </message>
        <message>
            <source>Whole device, not held</source>
            <translation>Ganzes Gerät, nicht gehalten</translation>
        </message>
        <message>
            <source>Put what holds it in use into the plan.</source>
            <translation>In den Plan schreiben, was es im Gebrauch hält.</translation>
        </message>
        <message>
            <source>Nothing in the plan holds the device on the body, neither a closure nor a glued or taped rim, so it is shown lying loose and presses with next to nothing. Whatever holds it in use makes it press harder than shown. %1</source>
            <translation>Nichts im Plan hält das Gerät am Körper, weder ein Verschluss noch ein geklebter Rand; es liegt deshalb lose und drückt fast nicht. Was es im Gebrauch hält, lässt es stärker drücken als gezeigt. %1</translation>
        </message>
        <message>
            <source>Glued or taped rim</source>
            <translation>Geklebter Rand</translation>
        </message>
        <message>
            <source>Lower the pressure or make the rim wider, and pull at it on the bench.</source>
            <translation>Den Druck senken oder den Rand breiter machen, und auf dem Prüfstand daran ziehen.</translation>
        </message>
        <message>
            <source>Glue or tape at the rim bears %1 where it bears the most, and no more than %2 is counted on: it may come off there, and the figures do not show that. %3</source>
            <translation>Der geklebte Rand trägt an der stärksten Stelle %1, und gerechnet wird mit höchstens %2: Dort kann er sich lösen, und das zeigen die Zahlen nicht. %3</translation>
        </message>
        <message>
            <source>Sheets, close to buckling</source>
            <translation>Lagen, nahe am Beulen</translation>
        </message>
        <message>
            <source>Lower the pressure, fasten it more loosely or take a thicker sheet, and look for folds on the bench.</source>
            <translation>Den Druck senken, lockerer anlegen oder eine dickere Lage nehmen, und auf dem Prüfstand nach Falten sehen.</translation>
        </message>
        <message>
            <source>A sheet is close to buckling. It is shown smooth; a fold presses in a line, harder than the figures here. %1</source>
            <translation>Eine Lage ist nahe am Beulen. Sie ist glatt gezeigt; eine Falte drückt in einer Linie, stärker als die Zahlen hier. %1</translation>
        </message>
        <message>
            <source>Measure on a bench, with every chamber, before anyone wears it.</source>
            <translation>Auf dem Prüfstand mit jeder Kammer messen, bevor es jemand trägt.</translation>
        </message>
        <message>
            <source>Every pressure</source>
            <translation>Jeder Druck</translation>
        </message>
        <message>
            <source>Predicted pressures are multiplied by %1 before they are held against a limit (%2). %3</source>
            <translation>Vorhergesagte Drücke werden mit %1 multipliziert, bevor sie mit einem Grenzwert verglichen werden (%2). %3</translation>
        </message>
        <message>
            <source>Time on the skin</source>
            <translation>Zeit auf der Haut</translation>
        </message>
        <message>
            <source>Limits used</source>
            <translation>Verwendete Grenzwerte</translation>
        </message>
        <message>
            <source>The limits are those of the set '%1', not the program's own: %2 of their numbers are stricter, %3 laxer.</source>
            <translation>Die Grenzwerte sind die des Satzes „%1“, nicht die des Programms: %2 ihrer Zahlen sind strenger, %3 lockerer.</translation>
        </message>
        <message>
            <source>Strap '%1'</source>
            <translation>Gurt „%1“</translation>
        </message>
        <message>
            <source>Channel '%1'</source>
            <translation>Kanal „%1“</translation>
        </message>
        <message>
            <source>A seam</source>
            <translation>Eine Naht</translation>
        </message>
        <message>
            <source>strap '%1'</source>
            <translation>Gurt „%1“</translation>
        </message>
        <message>
            <source>a seam</source>
            <translation>einer Naht</translation>
        </message>
        <message>
            <source>the chamber</source>
            <translation>Die Kammer</translation>
        </message>
        <message>
            <source>the strap</source>
            <translation>Den Gurt</translation>
        </message>
        <message>
            <source>the channel</source>
            <translation>Den Kanal</translation>
        </message>
        <message>
            <source>the seam</source>
            <translation>Die Naht</translation>
        </message>
        <message>
            <source>%1 over %2</source>
            <translation>%1 über %2</translation>
        </message>
        <message>
            <source>%1 %2 (%3, %4)</source>
            <translation>%1 %2 (%3, %4)</translation>
        </message>
        <message>
            <source>%1, above the limit of %2</source>
            <translation>%1, über dem Grenzwert von %2</translation>
        </message>
        <message>
            <source>%1, above the warning at %2 and below the limit of %3</source>
            <translation>%1, über der Warnung bei %2 und unter dem Grenzwert von %3</translation>
        </message>
        <message>
            <source>%1, %2 of the limit of %3</source>
            <translation>%1, %2 des Grenzwerts von %3</translation>
        </message>
        <message>
            <source>%1: %2 on its worst 1 cm². With the %3 factor %4.</source>
            <translation>%1: %2 auf dem stärksten cm². Mit dem Faktor %3 %4.</translation>
        </message>
        <message>
            <source>Lower the pressure or press on less of the girth.</source>
            <translation>Den Druck senken oder auf weniger vom Umfang drücken.</translation>
        </message>
        <message>
            <source>Do not wear it like this: fasten it more loosely.</source>
            <translation>So nicht tragen: lockerer anlegen.</translation>
        </message>
        <message>
            <source>Do not wear it like this: lower the pressure or press on less of the girth.</source>
            <translation>So nicht tragen: den Druck senken oder auf weniger vom Umfang drücken.</translation>
        </message>
        <message>
            <source>stop at %1</source>
            <translation>Stopp bei %1</translation>
        </message>
        <message>
            <source>caution from %1</source>
            <translation>Vorsicht ab %1</translation>
        </message>
        <message>
            <source>Whole cuff, blood held back</source>
            <translation>Ganze Manschette, gestautes Blut</translation>
        </message>
        <message>
            <source>tourniquet stop, anything round a limb</source>
            <translation>Abschnürungs-Stopp, alles rund um ein Glied</translation>
        </message>
        <message>
            <source>This cuff may hold back the blood beyond it: up to %1 on its worst 1 cm², with the %2 factor %3; %4 (%5). %6</source>
            <translation>Diese Manschette kann das Blut jenseits von ihr stauen: bis %1 auf dem stärksten cm², mit dem Faktor %2 %3; %4 (%5). %6</translation>
        </message>
        <message>
            <source>Whole cuff, towards the trunk</source>
            <translation>Ganze Manschette, zum Rumpf hin</translation>
        </message>
        <message>
            <source>Inflate the chamber nearer the trunk less.</source>
            <translation>Die rumpfnähere Kammer weniger füllen.</translation>
        </message>
        <message>
            <source>The mean pressure rises towards the trunk, from %1 under chamber '%2' to %3 under chamber '%4', which hinders the blood that flows back (common practice, no source). %5</source>
            <translation>Der mittlere Druck steigt zum Rumpf hin, von %1 unter Kammer „%2“ auf %3 unter Kammer „%4“; das behindert den Rückfluss des Bluts (übliche Praxis, ohne Quelle). %5</translation>
        </message>
        <message>
            <source>Check the skin within %1; rest it at least %2 afterwards.</source>
            <translation>Die Haut binnen %1 ansehen; danach mindestens %2 ruhen lassen.</translation>
        </message>
        <message>
            <source>Session, under %1</source>
            <translation>Sitzung, unter %1</translation>
        </message>
        <message>
            <source>pressure times time in a session</source>
            <translation>Druck mal Zeit in einer Sitzung</translation>
        </message>
        <message>
            <source>Shorten the session or lower the pressure.</source>
            <translation>Die Sitzung verkürzen oder den Druck senken.</translation>
        </message>
        <message>
            <source>Over the %1 session the most pressed place, under %2, takes %3 with the %4 factor: %5 of the %6 allowed (%7). %8</source>
            <translation>In der Sitzung von %1 nimmt die am stärksten gedrückte Stelle, unter %2, mit dem Faktor %4 %3 auf: %5 der erlaubten %6 (%7). %8</translation>
        </message>
        <message>
            <source>Session times</source>
            <translation>Zeiten der Sitzung</translation>
        </message>
        <message>
            <source>Hold for a shorter time, rest longer or open the closure in between.</source>
            <translation>Kürzer halten, länger ruhen oder den Verschluss zwischendurch öffnen.</translation>
        </message>
        <message>
            <source>The session breaks the time rules: %1. %2</source>
            <translation>Die Sitzung hält die Zeiten der Grenzwerte nicht ein: %1. %2</translation>
        </message>
        <message>
            <source>Whole device, vented and fastened</source>
            <translation>Ganzes Gerät, entlüftet und noch angelegt</translation>
        </message>
        <message>
            <source>of a rested place</source>
            <translation>einer entlasteten Stelle</translation>
        </message>
        <message>
            <source>Fasten it more loosely, or open the closure to rest.</source>
            <translation>Lockerer anlegen oder den Verschluss zum Ruhen öffnen.</translation>
        </message>
        <message>
            <source>Vented but fastened, the device still presses up to %1 with the %2 factor, more than the %3 of a rested place (%4): venting gives no rest there. %5</source>
            <translation>Entlüftet, aber noch angelegt, drückt das Gerät bis %1 mit dem Faktor %2, mehr als die %3 einer entlasteten Stelle (%4): Entlüften allein entlastet sie nicht. %5</translation>
        </message>
        <message>
            <source>%1, %2 of %3</source>
            <translation>%1, %2 von %3</translation>
        </message>
        <message>
            <source>not named</source>
            <translation>nicht genannt</translation>
        </message>
        <message>
            <source>Cause: %1.</source>
            <translation>Ursache: %1.</translation>
        </message>
        <message>
            <source>Do not wear it like this: %2.</source>
            <translation>So nicht tragen: %2.</translation>
        </message>
        <message>
            <source>Do not wear it like this, for %1 reasons; first: %2.</source>
            <translation>So nicht tragen, aus %1 Gründen; zuerst: %2.</translation>
        </message>
        <message>
            <source>Above the limit in 1 place: %2.</source>
            <translation>An 1 Stelle über dem Grenzwert: %2.</translation>
        </message>
        <message>
            <source>Above the limit in %1 places; worst: %2.</source>
            <translation>An %1 Stellen über dem Grenzwert; am meisten: %2.</translation>
        </message>
        <message>
            <source>A test object: no limit for skin or tissue was applied.</source>
            <translation>Ein Prüfkörper: Für Haut oder Gewebe galt kein Grenzwert.</translation>
        </message>
        <message>
            <source>Nothing predicted exceeds the limits used. The limits are judgement and the model is not calibrated; this is not approval to wear the device.</source>
            <translation>Nichts Vorhergesagtes überschreitet die verwendeten Grenzwerte. Die Grenzwerte sind Einschätzung, das Modell ist nicht kalibriert; das ist keine Freigabe zum Tragen.</translation>
        </message>
        <message>
            <source>Compression classes</source>
            <translation>Kompressionsklassen</translation>
        </message>
        <message>
            <source>The table '%1' is not the one that the program ships.</source>
            <translation>Die Tabelle „%1“ ist nicht die des Programms.</translation>
        </message>
        <message>
            <source>%1, with the factor %2, limit %3</source>
            <translation>%1, mit dem Faktor %2, Grenzwert %3</translation>
        </message>
        <message>
            <source>%1, limit %2</source>
            <translation>%1, Grenzwert %2</translation>
        </message>
        <message>
            <source>%1: %2: %3.</source>
            <translation>%1: %2: %3.</translation>
        </message>
        <message>
            <source>Not calculated: the filling is no air.</source>
            <translation>Nicht berechnet: Die Füllung ist keine Luft.</translation>
        </message>
        <message>
            <source>%1 for inlet '%2'</source>
            <translation>%1 für Einlass '%2'</translation>
        </message>
        <message>
            <source>Inlet '%2' never reaches the planned %3: its valve opens at %1.</source>
            <translation>Einlass '%2' erreicht die geplanten %3 nie: Sein Ventil öffnet bei %1.</translation>
        </message>
        <message>
            <source>Not calculated: the plan names neither syringe nor pump.</source>
            <translation>Nicht berechnet: Der Plan nennt weder Spritze noch Pumpe.</translation>
        </message>
        <message>
            <source>%1; no relief setting can be given.</source>
            <translation>%1; eine Einstellung des Überdruckventils lässt sich nicht angeben.</translation>
        </message>
        <message>
            <source>%1, %2 times the lowest relief setting of %3.</source>
            <translation>%1, das %2-Fache der niedrigsten Einstellung der Überdruckventile von %3.</translation>
        </message>
        <message>
            <source>%1, below the lowest relief setting of %2.</source>
            <translation>%1, unter der niedrigsten Einstellung der Überdruckventile von %2.</translation>
        </message>
        <message>
            <source>A valve or pump that sticks</source>
            <translation>Ein Ventil oder eine Pumpe hängt</translation>
        </message>
        <message>
            <source>Fit a mechanical relief valve to each inlet; check its opening pressure on a separate gauge.</source>
            <translation>An jeden Einlass ein mechanisches Überdruckventil bauen; seinen Öffnungsdruck an einem eigenen Manometer prüfen.</translation>
        </message>
        <message>
            <source>No relief setting can be given: nothing is inflated, no limit applies, or fastening alone already breaks the rule.</source>
            <translation>Eine Einstellung des Überdruckventils lässt sich nicht angeben: Nichts wird gefüllt, kein Grenzwert gilt, oder schon das Anlegen allein verletzt die Regel.</translation>
        </message>
        <message>
            <source>at no more than %1 (%2)</source>
            <translation>bei höchstens %1 (%2)</translation>
        </message>
        <message>
            <source>Inlet '%1' has no relief valve.</source>
            <translation>Einlass '%1' hat kein Überdruckventil.</translation>
        </message>
        <message>
            <source>Vents too slowly</source>
            <translation>Entlüftet zu langsam</translation>
        </message>
        <message>
            <source>Put a vent that needs no power in the wearer's own hand; time it. Then open the closure.</source>
            <translation>Der tragenden Person eine Entlüftung in die Hand geben, die keinen Strom braucht; die Zeit messen. Dann den Verschluss öffnen.</translation>
        </message>
        <message>
            <source>Not calculated: the filling is no air; it must fall below %1 within %2.</source>
            <translation>Nicht berechnet: Die Füllung ist keine Luft; der Druck muss binnen %2 unter %1 fallen.</translation>
        </message>
        <message>
            <source>Not calculated: the plan gives no tubing; it must fall below %1 within %2.</source>
            <translation>Nicht berechnet: Der Plan nennt keinen Schlauch; der Druck muss binnen %2 unter %1 fallen.</translation>
        </message>
        <message>
            <source>Power lost</source>
            <translation>Der Strom fällt aus</translation>
        </message>
        <message>
            <source>Use valves that open when power is lost; pull the plug on the bench and time the fall.</source>
            <translation>Ventile nehmen, die ohne Strom von selbst öffnen; auf dem Prüfstand den Stecker ziehen und den Druckabfall messen.</translation>
        </message>
        <message>
            <source>The plan names a syringe and no pump.</source>
            <translation>Der Plan nennt eine Spritze und keine Pumpe.</translation>
        </message>
        <message>
            <source>Venous congestion</source>
            <translation>Venöse Stauung</translation>
        </message>
        <message>
            <source>Watch hand or foot beyond the device; open the closure at the first swelling or dark skin.</source>
            <translation>Hand oder Fuß jenseits des Geräts beobachten; bei der ersten Schwellung oder dunkler Haut den Verschluss öffnen.</translation>
        </message>
        <message>
            <source>It presses on up to %1 of the girth, with up to %2 after the model factor; caution from %3 (%4).</source>
            <translation>Es drückt auf bis zu %1 des Umfangs, mit bis zu %2 samt Modellfaktor; Vorsicht ab %3 (%4).</translation>
        </message>
        <message>
            <source>It presses on %1 of a girth, less than the %2 from which it counts as a cuff.</source>
            <translation>Es drückt auf %1 eines Umfangs, weniger als die %2, ab denen es als Manschette gilt.</translation>
        </message>
        <message>
            <source>Pressure on a nerve</source>
            <translation>Druck auf einen Nerv</translation>
        </message>
        <message>
            <source>Keep it off nerves; open the closure at tingling or numbness.</source>
            <translation>Von Nerven fernhalten; bei Kribbeln oder Taubheit den Verschluss öffnen.</translation>
        </message>
        <message>
            <source>The highest is %1 with the model factor, over '%2'.</source>
            <translation>Am höchsten sind es %1 mit dem Modellfaktor, über '%2'.</translation>
        </message>
        <message>
            <source>No nerve site that is marked lies under it.</source>
            <translation>Keine markierte Nervenstelle liegt darunter.</translation>
        </message>
        <message>
            <source>Not calculated: nobody has marked the nerve sites of this body.</source>
            <translation>Nicht berechnet: Niemand hat die Nervenstellen dieses Körpers markiert.</translation>
        </message>
        <message>
            <source>Compartment syndrome</source>
            <translation>Kompartmentsyndrom</translation>
        </message>
        <message>
            <source>Never on a limb that is hurt or swollen; pain that grows, tightness or weakness: open the closure and get medical help.</source>
            <translation>Nie an einem verletzten oder geschwollenen Glied; bei zunehmendem Schmerz, Spannung oder Schwäche den Verschluss öffnen und ärztliche Hilfe holen.</translation>
        </message>
        <message>
            <source>The most pressed place takes up to %1 with the model factor, for up to %2 without a break.</source>
            <translation>Die am stärksten gedrückte Stelle erhält bis %1 mit dem Modellfaktor, bis zu %2 ohne Pause.</translation>
        </message>
        <message>
            <source>Shear and pinch</source>
            <translation>Scherung und Quetschen</translation>
        </message>
        <message>
            <source>Contact pressure pushes it along the limb with %1; friction can hold %2. Pinching is not calculated.</source>
            <translation>Der Kontaktdruck schiebt es mit %1 entlang des Glieds; Reibung kann %2 halten. Quetschen ist nicht berechnet.</translation>
        </message>
        <message>
            <source>Keep seams and folds off joint creases; use a thin cloth sleeve; check the skin there first.</source>
            <translation>Nähte und Falten von Gelenkbeugen fernhalten; einen dünnen Stoffärmel nehmen; dort die Haut zuerst prüfen.</translation>
        </message>
        <message>
            <source>Cannot get it off</source>
            <translation>Es lässt sich nicht ablegen</translation>
        </message>
        <message>
            <source>Release means: open the closure, with one hand and without power. Time it before each session.</source>
            <translation>Lösen heißt: den Verschluss öffnen, mit einer Hand und ohne Strom. Vor jeder Sitzung die Zeit messen.</translation>
        </message>
        <message>
            <source>Vented but still fastened, it presses up to %1 with the model factor.</source>
            <translation>Entlüftet, aber noch angelegt, drückt es bis %1 mit dem Modellfaktor.</translation>
        </message>
        <message>
            <source>Vented but still fastened, it presses up to %1 with the model factor, more than the %2 of a rested place: venting alone does not release it.</source>
            <translation>Entlüftet, aber noch angelegt, drückt es bis %1 mit dem Modellfaktor, mehr als die %2 einer entlasteten Stelle: Entlüften allein löst es nicht.</translation>
        </message>
        <message>
            <source>Tube snags or is swallowed</source>
            <translation>Der Schlauch hakt oder wird verschluckt</translation>
        </message>
        <message>
            <source>Run the tube along the limb; fit a coupling that comes apart when pulled; keep small parts out of reach of children.</source>
            <translation>Den Schlauch am Glied entlangführen; eine Kupplung einbauen, die sich bei Zug löst; kleine Teile von Kindern fernhalten.</translation>
        </message>
        <message>
            <source>Fall, if the cue affects balance</source>
            <translation>Sturz, wenn der Reiz das Gleichgewicht betrifft</translation>
        </message>
        <message>
            <source>Someone stands beside the wearer; a rail within reach, no stairs; try it sitting down first.</source>
            <translation>Jemand steht neben der tragenden Person; ein Geländer in Reichweite, keine Treppen; zuerst im Sitzen probieren.</translation>
        </message>
        <message>
            <source>Allergy</source>
            <translation>Allergie</translation>
        </message>
        <message>
            <source>Ask about allergies; try a patch on the forearm first; stop at itching or a rash.</source>
            <translation>Nach Allergien fragen; zuerst ein Stück am Unterarm probieren; bei Jucken oder Ausschlag aufhören.</translation>
        </message>
        <message>
            <source>What uncured silicone gives off</source>
            <translation>Was nicht ausgehärtetes Silikon abgibt</translation>
        </message>
        <message>
            <source>Cure and post-cure fully, wash, and write down the batch; never wear a tacky cast.</source>
            <translation>Ganz aushärten und tempern, waschen, die Charge notieren; einen klebrigen Guss nie tragen.</translation>
        </message>
        <message>
            <source>Latex</source>
            <translation>Latex</translation>
        </message>
        <message>
            <source>No latex in gloves, tubes or straps; ask about a latex allergy.</source>
            <translation>Kein Latex in Handschuhen, Schläuchen oder Bändern; nach einer Latexallergie fragen.</translation>
        </message>
        <message>
            <source>Dirt</source>
            <translation>Schmutz</translation>
        </message>
        <message>
            <source>Wash with mild soap, wipe and dry; one cast for each wearer, or a fresh liner.</source>
            <translation>Mit milder Seife waschen, abwischen und trocknen; ein Guss je Person, oder eine frische Einlage.</translation>
        </message>
        <message>
            <source>(%1, %2) mm</source>
            <translation>(%1; %2) mm</translation>
        </message>
        <message>
            <source>its edges lift away from the skin, as the skin sheet bulges more</source>
            <translation>seine Ränder heben sich von der Haut ab, weil sich die Hautlage stärker wölbt</translation>
        </message>
        <message>
            <source>its edges press towards the skin, as the outer sheet bulges more</source>
            <translation>seine Ränder drücken zur Haut hin, weil sich die Außenlage stärker wölbt</translation>
        </message>
        <message>
            <source>%1 is %2, more than %3: inflated, the layout curls (%4); bring the sheets nearer to one another, or add backing or a closure that holds it.</source>
            <translation>%1 ist %2, mehr als %3: Gefüllt rollt sich das Layout (%4); die Lagen einander angleichen oder es mit Stoff oder einem Verschluss halten.</translation>
        </message>
        <message>
            <source>the ratio of the sheets' thickness (skin %1, outer %2)</source>
            <translation>Das Verhältnis der Dicken (Hautlage %1, Außenlage %2)</translation>
        </message>
        <message>
            <source>the ratio of the sheets' stiffness (shear modulus times thickness)</source>
            <translation>Das Verhältnis der Steifigkeiten der Lagen (Schubmodul mal Dicke)</translation>
        </message>
        <message>
            <source>fused at unequal stretch (skin %1, outer %2), the layout curls by about %3 degrees along its length as soon as it is let go, more than %4: %5; stretch both sheets alike.</source>
            <translation>Mit ungleicher Dehnung verschmolzen (Hautlage %1, Außenlage %2), rollt sich das Layout über seine Länge um etwa %3 Grad, sobald es frei ist, mehr als %4: %5; beide Lagen gleich dehnen.</translation>
        </message>
        <message>
            <source>its edges come towards the skin, and nothing holds it flat</source>
            <translation>seine Ränder kommen zur Haut, und nichts hält es flach</translation>
        </message>
        <message>
            <source>its edges lift away from the skin</source>
            <translation>seine Ränder heben sich von der Haut ab</translation>
        </message>
        <message>
            <source>inlet '%1' at %2 lies on %3, where the sheets are fused: move it into the open, %4 or more from every seam.</source>
            <translation>Einlass „%1“ bei %2 liegt auf %3, wo die Lagen verschmolzen sind: ins Offene schieben, mindestens %4 weg von jeder Naht.</translation>
        </message>
        <message>
            <source>inlet '%1' at %2 is %3 from %4, less than %5: move it inwards, or the flange of its tube peels the seam.</source>
            <translation>Einlass „%1“ bei %2 liegt %3 neben %4, weniger als %5: nach innen schieben, sonst schält der Flansch des Schlauchs die Naht auf.</translation>
        </message>
        <message>
            <source>the seam round %1</source>
            <translation>der Naht um %1</translation>
        </message>
        <message>
            <source>the chamber's wall</source>
            <translation>der Wand der Kammer</translation>
        </message>
        <message>
            <source>the seam beside %1</source>
            <translation>der Naht neben %1</translation>
        </message>
        <message>
            <source>the seam between %1 and the outline</source>
            <translation>Die Naht zwischen %1 und dem Umriss</translation>
        </message>
        <message>
            <source>the seam between two places of %1</source>
            <translation>Die Naht zwischen zwei Stellen von %1</translation>
        </message>
        <message>
            <source>the seam between %1 and %2</source>
            <translation>Die Naht zwischen %1 und %2</translation>
        </message>
        <message>
            <source>%1 is %2 wide at %3, less than %4 times the thicker sheet (%5): move them apart, or cast thinner sheets.</source>
            <translation>%1 ist bei %3 nur %2 breit, weniger als das %4-fache der dickeren Lage (%5): auseinanderrücken oder dünner gießen.</translation>
        </message>
        <message>
            <source>the gap between %1 is %2 at %3, less than %4 times the thicker sheet (%5), so it can hardly open: move the inset seam, or make it smaller.</source>
            <translation>Die Lücke zwischen %1 ist bei %3 nur %2 breit, weniger als das %4-fache der dickeren Lage (%5), und öffnet sich kaum: die Innennaht verschieben oder verkleinern.</translation>
        </message>
        <message>
            <source>%1 and the chamber's wall</source>
            <translation>%1 und der Wand der Kammer</translation>
        </message>
        <message>
            <source>%1 and %2</source>
            <translation>%1 und %2</translation>
        </message>
        <message>
            <source>%1 has a corner of %2 degrees at %3 with a radius of %4: round it by %5 or more, or the seam starts to peel there.</source>
            <translation>%1 hat bei %3 eine Ecke von %2 Grad mit %4 Radius: mit mindestens %5 runden, sonst schält sich dort die Naht auf.</translation>
        </message>
        <message>
            <source>the outline has a notch of %1 degrees at %2 with a radius of %3: round it by %4 or more, or the sheets tear from there.</source>
            <translation>Der Umriss hat bei %2 eine Kerbe von %1 Grad mit %3 Radius: mit mindestens %4 runden, sonst reißen die Lagen von dort ein.</translation>
        </message>
        <message>
            <source>%1 has a square end at %2: put an inset spot of radius %3 or more on it, or the inset seam starts to let go at its corners.</source>
            <translation>%1 hat bei %2 ein eckiges Ende: einen Innennaht-Punkt mit mindestens %3 Radius darauf setzen, sonst löst sich die Innennaht an ihren Ecken.</translation>
        </message>
        <message>
            <source>%1 round %2 is %3 times as long as wide (%4 by %5), more than %6, and no neighbour within %7 shares a seam along half of it, so it may twist: make it shorter, or draw a chamber beside it.</source>
            <translation>%1 um %2 ist %3-mal so lang wie breit (%4 mal %5), mehr als %6, und kein Nachbar innerhalb von %7 teilt auf halber Länge eine Naht mit ihr, also kann sie sich verdrehen: kürzen oder eine Kammer daneben zeichnen.</translation>
        </message>
        <message>
            <source>%1 is %2 thick, less than %3: cast it thicker, or expect holes and tears.</source>
            <translation>%1 ist %2 dick, weniger als %3: dicker gießen, sonst drohen Löcher und Risse.</translation>
        </message>
        <message>
            <source>%1 has a neck of %2 at %3, less than the %4 below which it may fuse shut: widen it, or draw two chambers.</source>
            <translation>%1 hat bei %3 eine Engstelle von %2, weniger als die %4, unter denen sie zuschmelzen kann: verbreitern oder zwei Kammern zeichnen.</translation>
        </message>
        <message>
            <source>%1 is nowhere wider than %2, which is at %3 and less than %4 times the thicker sheet (%5), so it hardly opens: widen it, or cast thinner sheets.</source>
            <translation>%1 ist nirgends breiter als %2 (bei %3), weniger als das %4-fache der dickeren Lage (%5), und öffnet sich kaum: verbreitern oder dünner gießen.</translation>
        </message>
        <message>
            <source>%1 has no seam within a circle of %2 round %3, more than %4 times the thinner sheet (%5), so it balloons there first: put inset seams into it, or divide it.</source>
            <translation>%1 hat in einem Kreis von %2 um %3 keine Naht, mehr als das %4-fache der dünneren Lage (%5), und bläht sich dort zuerst: Innennähte hineinsetzen oder teilen.</translation>
        </message>
        <message>
            <source>the skin sheet</source>
            <translation>Die Hautlage</translation>
        </message>
        <message>
            <source>the outer sheet</source>
            <translation>Die Außenlage</translation>
        </message>
        <message>
            <source>%1 is %2 wide at %3, less than the %4 below which it may fuse shut: widen it.</source>
            <translation>%1 ist bei %3 %2 breit, weniger als die %4, unter denen ein Kanal zuschmelzen kann: verbreitern.</translation>
        </message>
        <message>
            <source>%1 is %2 wide at %3, more than the %4 above which it balloons like a chamber: make it narrower, or two of it.</source>
            <translation>%1 ist bei %3 %2 breit, mehr als die %4, über denen ein Kanal sich bläht wie eine Kammer: schmaler zeichnen oder zwei daraus machen.</translation>
        </message>
        <message>
            <source>%1 through %2 lies on the sheet along %3 of the layout's height, less than %4, so little is there to be fastened: move the line inwards, or straighten the edge.</source>
            <translation>%1 durch %2 liegt auf %3 der Höhe des Layouts auf der Lage, weniger als %4; dort ist also wenig zu schließen: die Linie nach innen rücken oder den Rand gerade zeichnen.</translation>
        </message>
        <message>
            <source>the second closing line</source>
            <translation>Die zweite Schließlinie</translation>
        </message>
        <message>
            <source>the first closing line</source>
            <translation>Die erste Schließlinie</translation>
        </message>
        <message>
            <source>closed at %1, %2 of the layout is left beyond the closing line at %3 to hold it by, less than %4: make the layout or its strap longer.</source>
            <translation>Bei %1 geschlossen, bleiben jenseits der Schließlinie bei %3 nur %2 des Layouts zum Halten, weniger als %4: das Layout oder seinen Gurt verlängern.</translation>
        </message>
        <message>
            <source>worn, inlet '%1' at %2 lies over %3, %4 from its middle; keep it %5 or more outside the site: move the inlet, or place the layout elsewhere.</source>
            <translation>Getragen liegt Einlass „%1“ bei %2 über %3, %4 von der Mitte; mindestens %5 Abstand zur Stelle halten: den Einlass verschieben oder das Layout anders auflegen.</translation>
        </message>
        <message>
            <source>worn, inlet '%1' at %2 lies %3 from %4; keep it %5 or more outside the site: move the inlet, or place the layout elsewhere.</source>
            <translation>Getragen liegt Einlass „%1“ bei %2 nur %3 neben %4; mindestens %5 Abstand zur Stelle halten: den Einlass verschieben oder das Layout anders auflegen.</translation>
        </message>
        <message>
            <source>worn, %1 lies over %2 at %3, %4 from the site's middle; keep it %5 or more outside the site: move the chamber, or place the layout elsewhere.</source>
            <translation>Getragen liegt %1 bei %3 über %2, %4 von der Mitte der Stelle; mindestens %5 Abstand zur Stelle halten: die Kammer verschieben oder das Layout anders auflegen.</translation>
        </message>
        <message>
            <source>worn, %1 comes within %2 of %3 at %4; keep it %5 or more outside the site: move the chamber, or place the layout elsewhere.</source>
            <translation>Getragen kommt %1 bei %4 bis auf %2 an die Stelle heran (neben %3); mindestens %5 Abstand zur Stelle halten: die Kammer verschieben oder das Layout anders auflegen.</translation>
        </message>
        <message>
            <source>the bony site '%1'</source>
            <translation>der Knochenstelle „%1“</translation>
        </message>
        <message>
            <source>the nerve '%1'</source>
            <translation>dem Nerv „%1“</translation>
        </message>
        <message>
            <source>the vessel '%1'</source>
            <translation>dem Gefäß „%1“</translation>
        </message>
        <message>
            <source>the tendon '%1'</source>
            <translation>der Sehne „%1“</translation>
        </message>
        <message>
            <source>%1 at station %2 (girth %3)</source>
            <translation>%1 an der Station %2 (Umfang %3)</translation>
        </message>
        <message>
            <source>%1 at station %2 (girth %3, closing length %4)</source>
            <translation>%1 an der Station %2 (Umfang %3, Schließlänge %4)</translation>
        </message>
        <message>
            <source>Stretch round the body, fastened at a closing length of %4 and deflated: at the distal edge %1, at the anchor %2, at the proximal edge %3.</source>
            <translation>Dehnung rings um den Körper, bei einer Schließlänge von %4 geschlossen und entlüftet: am distalen Rand %1, am Anker %2, am proximalen Rand %3.</translation>
        </message>
        <message>
            <source>Stretch round the body, fastened and deflated: at the distal edge %1, at the anchor %2, at the proximal edge %3.</source>
            <translation>Dehnung rings um den Körper, geschlossen und entlüftet: am distalen Rand %1, am Anker %2, am proximalen Rand %3.</translation>
        </message>
        <message>
            <source>Slant the closing lines with the limb: a taper near %1 (layout, closure, taper) evens it out.</source>
            <translation>Die Schließlinien dem Glied nach schräg legen: Eine Schräge um %1 (layout, closure, taper) gleicht es aus.</translation>
        </message>
        <message>
            <source>Give it a shorter closing length, then look again.</source>
            <translation>Eine kürzere Schließlänge geben, dann neu prüfen.</translation>
        </message>
        <message>
            <source>The most, %1 at station %2, is tight (above %3, judgement): it presses there before it is inflated.</source>
            <translation>Die größte, %1 an der Station %2, ist straff (über %3, Einschätzung): Dort drückt es, bevor es gefüllt wird.</translation>
        </message>
        <message>
            <source>The least, %1 at station %2, is loose (below %3, judgement): there the layout is longer than the girth and stands off or folds.</source>
            <translation>Die kleinste, %1 an der Station %2, ist locker (unter %3, Einschätzung): Dort ist das Layout länger als der Umfang und steht ab oder wirft Falten.</translation>
        </message>
        <message>
            <source>It is uneven: most and least lie %1 apart, more than %2 (judgement).</source>
            <translation>Sie ist ungleich: Größte und kleinste liegen %1 auseinander, mehr als %2 (Einschätzung).</translation>
        </message>
        <message>
            <source>Fit round the body</source>
            <translation>Sitz rings um den Körper</translation>
        </message>
        <message>
            <source>Closing lines</source>
            <translation>Schließlinien</translation>
        </message>
        <message>
            <source>The closing lines meet over %1 of the layout&apos;s %2: beside them a slit stays open, round station %3.</source>
            <translation>Die Schließlinien treffen sich auf %1 der %2 des Layouts: Daneben bleibt ein Schlitz offen, um die Station %3.</translation>
        </message>
        <message>
            <source>Let them meet over the whole height, by a wider strap or straight edges.</source>
            <translation>Sie über die ganze Höhe treffen lassen, mit einem breiteren Band oder geraden Rändern.</translation>
        </message>
        <message>
            <source>Edges that do not meet</source>
            <translation>Ränder, die sich nicht treffen</translation>
        </message>
        <message>
            <source>The edges do not meet: at station %1 a slit of %2 stays open, %3 of the girth of %4, and nothing that pulls them together is calculated.</source>
            <translation>Die Ränder treffen sich nicht: An der Station %1 bleibt ein Schlitz von %2 offen, %3 des Umfangs von %4; was sie zusammenziehen könnte, ist nicht gerechnet.</translation>
        </message>
        <message>
            <source>Give it a closure and a strap that bridges the slit, if it is meant to go round.</source>
            <translation>Einen Verschluss und ein Band geben, das den Schlitz überbrückt, wenn es herumreichen soll.</translation>
        </message>
        <message>
            <source>Overlapping tail</source>
            <translation>Überlappendes Ende</translation>
        </message>
        <message>
            <source>Beyond the closing line the layout goes on for %1, %2 times round the girth of %3 at station %4, and overlaps itself. This tail is left out: what lies under it is pressed harder than shown.</source>
            <translation>Jenseits der Schließlinie läuft das Layout noch %1 weiter, das %2-Fache des Umfangs von %3 an der Station %4, und liegt auf sich selbst. Dieses Ende ist weggelassen: Was darunter liegt, wird stärker gedrückt als gezeigt.</translation>
        </message>
        <message>
            <source>Cut the tail shorter.</source>
            <translation>Das Ende kürzen.</translation>
        </message>
        <message>
            <source>%1 at x %2, y %3 of the layout (station %4)</source>
            <translation>%1 bei x %2, y %3 des Layouts (Station %4)</translation>
        </message>
        <message>
            <source>Laid on, the layout is stretched by between %1 and %2, and more than %3 either way (judgement) does not lie smoothly.</source>
            <translation>Aufgelegt ist das Layout zwischen %1 und %2 gedehnt; mehr als %3 in eine Richtung (Einschätzung) liegt nicht glatt.</translation>
        </message>
        <message>
            <source>Stretch laid on</source>
            <translation>Dehnung beim Auflegen</translation>
        </message>
        <message>
            <source>Choose a less curved place, or draw the layout narrower there.</source>
            <translation>Eine weniger gekrümmte Stelle wählen oder das Layout dort schmaler zeichnen.</translation>
        </message>
        <message>
            <source>Correct how it fits first.</source>
            <translation>Zuerst den Sitz berichtigen.</translation>
        </message>
        <message>
            <source>Curves given only by points: %1 (SPLINE, the first at line %2). A smooth curve is laid through them, and another program may draw it a little differently between them.</source>
            <translation>Kurven, die nur durch Punkte gegeben sind: %1 (SPLINE, die erste in Zeile %2). Eine glatte Kurve wird hindurchgelegt; ein anderes Programm zeichnet sie dazwischen vielleicht etwas anders.</translation>
        </message>
        <message>
            <source>Blocks are clipped in this file (SPATIAL_FILTER), which is not read: what the clip hides is read too.</source>
            <translation>Blöcke sind in dieser Datei beschnitten (SPATIAL_FILTER), was nicht gelesen wird: auch das Verdeckte wird gelesen.</translation>
        </message>
        <message>
            <source>Nothing is drawn in model space, so paper space is read, at the size it has on paper: check a length.</source>
            <translation>Im Modellbereich ist nichts gezeichnet, also wird der Papierbereich in seiner Größe auf dem Papier gelesen: eine Länge prüfen.</translation>
        </message>
        <message>
            <source>Lines in blocks or on sheets that nothing puts into model space: %1. Put them there and save the file again.</source>
            <translation>Linien in Blöcken oder auf Blättern, die nichts in den Modellbereich setzt: %1. Dort einsetzen und die Datei neu speichern.</translation>
        </message>
        <message>
            <source>One unit of the drawing is %1, as told.</source>
            <translation>Eine Einheit der Zeichnung ist %1, wie angegeben.</translation>
        </message>
        <message>
            <source>One unit of the drawing is %1, from the file&apos;s header.</source>
            <translation>Eine Einheit der Zeichnung ist %1, aus dem Kopf der Datei.</translation>
        </message>
        <message>
            <source>One unit of the drawing is %1, assumed: the file names none.</source>
            <translation>Eine Einheit der Zeichnung ist %1, angenommen: die Datei nennt keine.</translation>
        </message>
        <message>
            <source>All of it is taken %1 times as large.</source>
            <translation>Alles wird %1-mal so groß genommen.</translation>
        </message>
        <message>
            <source>%1 line is drawn twice, one upon the other (at line %2 of the file): read once.</source>
            <translation>%1 Linie ist doppelt gezeichnet, aufeinander (in Zeile %2 der Datei): einmal gelesen.</translation>
        </message>
        <message>
            <source>%1 lines are drawn twice, one upon the other (first at line %2 of the file): read once.</source>
            <translation>%1 Linien sind doppelt gezeichnet, aufeinander (zuerst in Zeile %2 der Datei): einmal gelesen.</translation>
        </message>
        <message>
            <source>%1 line ends meet more than one other end, first at (%2, %3) mm; nothing was joined there: remove what is drawn twice or does not belong to the line.</source>
            <translation>%1 Linienenden treffen mehr als ein anderes Ende, zuerst bei (%2; %3) mm; dort wurde nichts verbunden: Doppeltes oder Fremdes entfernen.</translation>
        </message>
        <message>
            <source>%1 across and %2 down</source>
            <translation>%1 quer und %2 hoch</translation>
        </message>
        <message>
            <source>One unit of the page is %1, as told.</source>
            <translation>Eine Einheit der Seite ist %1, wie angegeben.</translation>
        </message>
        <message>
            <source>One unit of the page is %1: the file gives no size, so it is taken as 1 px (96 an inch).</source>
            <translation>Eine Einheit der Seite ist %1: die Datei nennt keine Größe, also gilt 1 px (96 je Zoll).</translation>
        </message>
        <message>
            <source>One unit of the page is %1, from the size of the page in the file, which is in px: 96 an inch are taken.</source>
            <translation>Eine Einheit der Seite ist %1, nach der Seitengröße der Datei, die in px steht: 96 je Zoll angenommen.</translation>
        </message>
        <message>
            <source>One unit of the page is %1, from the size of the page in the file.</source>
            <translation>Eine Einheit der Seite ist %1, nach der Seitengröße der Datei.</translation>
        </message>
        <message>
            <source>The page %1.</source>
            <translation>Die Seite: %1.</translation>
        </message>
        <message>
            <source>Of the file&apos;s style sheet %1 rule is not read (%2), only element, .class and #id are: fill and stroke may be missing.</source>
            <translation>Vom Stylesheet der Datei wird %1 Regel nicht gelesen (%2), nur Element, .class und #id: Füllung und Strich können fehlen.</translation>
        </message>
        <message>
            <source>Of the file&apos;s style sheet %1 rules are not read (%2, ...), only element, .class and #id are: fill and stroke may be missing.</source>
            <translation>Vom Stylesheet der Datei werden %1 Regeln nicht gelesen (%2, ...), nur Element, .class und #id: Füllung und Strich können fehlen.</translation>
        </message>
        <message>
            <source>A template: the layout that it carries is read, not its lines.</source>
            <translation>Eine Schablone: gelesen wird das Layout, den sie mitführt, nicht ihre Linien.</translation>
        </message>
        <message>
            <source>A template that another program saved since it was written.</source>
            <translation>Eine Schablone, die seither ein anderes Programm gespeichert hat.</translation>
        </message>
        <message>
            <source>Sheets and closure are not read: %1</source>
            <translation>Lagen und Verschluss werden nicht gelesen: %1</translation>
        </message>
        <message>
            <source>encloses the others</source>
            <translation>umschließt die anderen</translation>
        </message>
        <message>
            <source>a point</source>
            <translation>ein Punkt</translation>
        </message>
        <message>
            <source>a small circle</source>
            <translation>ein kleiner Kreis</translation>
        </message>
        <message>
            <source>closed, inside the outline</source>
            <translation>geschlossen, im Umriss</translation>
        </message>
        <message>
            <source>inside a hole</source>
            <translation>in einem Loch</translation>
        </message>
        <message>
            <source>inside a chamber</source>
            <translation>in einer Kammer</translation>
        </message>
        <message>
            <source>one of several circles alike in a chamber</source>
            <translation>einer von mehreren gleichen Kreisen in einer Kammer</translation>
        </message>
        <message>
            <source>a line inside a chamber</source>
            <translation>eine Linie in einer Kammer</translation>
        </message>
        <message>
            <source>a line from part to part</source>
            <translation>eine Linie von Teil zu Teil</translation>
        </message>
        <message>
            <source>called &apos;%1&apos;</source>
            <translation>heißt &apos;%1&apos;</translation>
        </message>
        <message>
            <source>no rule fits it</source>
            <translation>keine Regel passt</translation>
        </message>
        <message>
            <source>fill &apos;%1&apos;</source>
            <translation>Füllung &apos;%1&apos;</translation>
        </message>
        <message>
            <source>stroke &apos;%1&apos;</source>
            <translation>Strich &apos;%1&apos;</translation>
        </message>
        <message>
            <source>said of this shape</source>
            <translation>von dieser Form gesagt</translation>
        </message>
        <message>
            <source>chamber</source>
            <translation>Kammer</translation>
        </message>
        <message>
            <source>inset seam</source>
            <translation>Innennaht</translation>
        </message>
        <message>
            <source>channel</source>
            <translation>Kanal</translation>
        </message>
        <message>
            <source>inlet</source>
            <translation>Einlass</translation>
        </message>
        <message>
            <source>strap</source>
            <translation>Gurt</translation>
        </message>
        <message>
            <source>left out</source>
            <translation>weggelassen</translation>
        </message>
        <message>
            <source>correct it in the drawing, or leave it out</source>
            <translation>in der Zeichnung korrigieren oder weglassen</translation>
        </message>
        <message>
            <source>a drawing does not say what the outer sheet is</source>
            <translation>eine Zeichnung sagt nicht, was die Außenlage ist</translation>
        </message>
        <message>
            <source>say its silicone and thickness</source>
            <translation>Silikon und Dicke angeben</translation>
        </message>
        <message>
            <source>a drawing does not say what the skin sheet is</source>
            <translation>eine Zeichnung sagt nicht, was die Hautlage ist</translation>
        </message>
        <message>
            <source>is a second outline; the first is the %1</source>
            <translation>ist ein zweiter Umriss; der erste ist %1</translation>
        </message>
        <message>
            <source>leave one of them out</source>
            <translation>einen davon weglassen</translation>
        </message>
        <message>
            <source>is the outline and has %1 paths</source>
            <translation>ist der Umriss und hat %1 Pfade</translation>
        </message>
        <message>
            <source>draw it as one closed path</source>
            <translation>als einen geschlossenen Pfad zeichnen</translation>
        </message>
        <message>
            <source>no shape is the outline</source>
            <translation>keine Form ist der Umriss</translation>
        </message>
        <message>
            <source>say which one is</source>
            <translation>sagen, welche es ist</translation>
        </message>
        <message>
            <source>is to be the %1 but is open, from %2 to %3</source>
            <translation>soll %1 sein, ist aber offen, von %2 bis %3</translation>
        </message>
        <message>
            <source>close it</source>
            <translation>schließen</translation>
        </message>
        <message>
            <source>close it, or join line ends up to %1 apart</source>
            <translation>schließen, oder Linienenden bis %1 Abstand verbinden</translation>
        </message>
        <message>
            <source>crosses or touches itself at %1 of the drawing</source>
            <translation>kreuzt oder berührt sich selbst bei %1 der Zeichnung</translation>
        </message>
        <message>
            <source>redraw it as one simple loop</source>
            <translation>als eine einfache Schleife neu zeichnen</translation>
        </message>
        <message>
            <source>has a path at %1 inside another that is no hole by its fill rule</source>
            <translation>hat bei %1 einen Pfad in einem anderen, der nach seiner Füllregel kein Loch ist</translation>
        </message>
        <message>
            <source>take it out, or set the rule to evenodd</source>
            <translation>herausnehmen oder die Regel auf evenodd stellen</translation>
        </message>
        <message>
            <source>has a path at %1 inside another, a hole that is neither a circle nor a rectangle</source>
            <translation>hat bei %1 einen Pfad in einem anderen, ein Loch, das weder Kreis noch Rechteck ist</translation>
        </message>
        <message>
            <source>inset seams are spots and lines of one width, so draw it as such</source>
            <translation>Innennähte sind Punkte und Linien einer Breite, also so zeichnen</translation>
        </message>
        <message>
            <source>is a strap, and a drawing does not say its cloth</source>
            <translation>ist ein Gurt, und eine Zeichnung nennt sein Gewebe nicht</translation>
        </message>
        <message>
            <source>say its stiffness and thickness</source>
            <translation>Steifigkeit und Dicke angeben</translation>
        </message>
        <message>
            <source>is a strap and has a hole at %1</source>
            <translation>ist ein Gurt und hat ein Loch bei %1</translation>
        </message>
        <message>
            <source>fill it</source>
            <translation>füllen</translation>
        </message>
        <message>
            <source>is closed and no rectangle, so it cannot be %1</source>
            <translation>ist geschlossen und kein Rechteck, kann also nicht %1 sein</translation>
        </message>
        <message>
            <source>draw it as an open line</source>
            <translation>als offene Linie zeichnen</translation>
        </message>
        <message>
            <source>is a line without a width</source>
            <translation>ist eine Linie ohne Breite</translation>
        </message>
        <message>
            <source>say how wide such lines are</source>
            <translation>sagen, wie breit solche Linien sind</translation>
        </message>
        <message>
            <source>is a single point and no line</source>
            <translation>ist ein einzelner Punkt und keine Linie</translation>
        </message>
        <message>
            <source>draw a line</source>
            <translation>eine Linie zeichnen</translation>
        </message>
        <message>
            <source>is an inset seam and lies in no chamber, at %1 of the layout</source>
            <translation>ist eine Innennaht und liegt in keiner Kammer, bei %1 des Layouts</translation>
        </message>
        <message>
            <source>move it, or say that it is something else</source>
            <translation>verschieben oder sagen, dass sie etwas anderes ist</translation>
        </message>
        <message>
            <source>the parts have %1 points and 20 000 are read</source>
            <translation>die Teile haben %1 Punkte, gelesen werden 20 000</translation>
        </message>
        <message>
            <source>simplify the curves</source>
            <translation>die Kurven vereinfachen</translation>
        </message>
        <message>
            <source>the outline measures %1 by %2 mm</source>
            <translation>der Umriss misst %1 mal %2 mm</translation>
        </message>
        <message>
            <source>check the unit</source>
            <translation>die Einheit prüfen</translation>
        </message>
        <message>
            <source>the file is a template that another program saved since it was written, so its lines may differ from the layout it carries</source>
            <translation>die Datei ist eine Schablone, die seither ein anderes Programm gespeichert hat, also können ihre Linien vom mitgeführten Layout abweichen</translation>
        </message>
        <message>
            <source>edit the drawing of the layout instead, or say what each of its lines is</source>
            <translation>stattdessen die Zeichnung des Layouts bearbeiten oder sagen, was jede ihrer Linien ist</translation>
        </message>
        <message>
            <source>has points that are not pairs of numbers</source>
            <translation>hat Punkte, die keine Zahlenpaare sind</translation>
        </message>
        <message>
            <source>has path data that breaks off, or with a number too few or too many</source>
            <translation>hat Pfaddaten, die abbrechen oder eine Zahl zu wenig oder zu viel haben</translation>
        </message>
        <message>
            <source>has more than 2 MB of path data</source>
            <translation>hat mehr als 2 MB Pfaddaten</translation>
        </message>
        <message>
            <source>has its path in its style (d), which is not read; write it as an attribute</source>
            <translation>hat ihren Pfad im Stil (d), der nicht gelesen wird; als Attribut schreiben</translation>
        </message>
        <message>
            <source>has a curve that cannot be followed</source>
            <translation>hat eine Kurve, der nicht zu folgen ist</translation>
        </message>
        <message>
            <source>has more than 10 000 points</source>
            <translation>hat mehr als 10 000 Punkte</translation>
        </message>
        <message>
            <source>has a coordinate that is not a number or lies more than 100 m away</source>
            <translation>hat eine Koordinate, die keine Zahl ist oder mehr als 100 m entfernt liegt</translation>
        </message>
        <message>
            <source>is given by too few points on it to make a curve</source>
            <translation>ist durch zu wenige Punkte gegeben, um eine Kurve zu sein</translation>
        </message>
        <message>
            <source>has no points</source>
            <translation>hat keine Punkte</translation>
        </message>
        <message>
            <source>does not lie in the plane of the drawing</source>
            <translation>liegt nicht in der Ebene der Zeichnung</translation>
        </message>
        <message>
            <source>is a mesh, not a line</source>
            <translation>ist ein Netz, keine Linie</translation>
        </message>
        <message>
            <source>is drawn with a width that changes, so no width is taken from it</source>
            <translation>ist mit wechselnder Breite gezeichnet, also wird keine Breite übernommen</translation>
        </message>
        <message>
            <source>A cuff of chambers in rows, each row with its own inlet, and a cloth strap; straight, or tapered with the limb.</source>
            <translation>Eine Manschette aus Kammern in Reihen, jede Reihe mit eigenem Einlass, und ein Stoffgurt; gerade oder mit dem Glied verjüngt.</translation>
        </message>
        <message>
            <source>A tapered sleeve, alike tight at both ends, of chambers in bands; its closing lines slant with the limb.</source>
            <translation>Eine verjüngte Stulpe, an beiden Enden gleich eng, aus Kammern in Bändern; ihre Verschlusslinien laufen mit dem Glied schräg.</translation>
        </message>
        <message>
            <source>A tapered sleeve that is tighter at its distal end; inflate its bands less and less towards proximal.</source>
            <translation>Eine verjüngte Stulpe, am distalen Ende enger; die Bänder nach proximal immer weniger füllen.</translation>
        </message>
        <message>
            <source>A round haptic pad, taped or glued on by its rim: a middle chamber and open rings round it, each with its own inlet.</source>
            <translation>Ein rundes haptisches Polster, am Rand geklebt: eine mittlere Kammer und offene Ringe darum, jeder mit eigenem Einlass.</translation>
        </message>
        <message>
            <source>A pack that covers part of the girth: one chamber held flat by a grid of inset spots, and a cloth strap round the rest of the limb.</source>
            <translation>Ein Kissen, das einen Teil des Umfangs bedeckt: eine Kammer, von einem Raster aus Punkten flach gehalten, und ein Stoffgurt um den Rest des Glieds.</translation>
        </message>
        <message>
            <source>The limb is rounder between the layout&apos;s edges: it is drawn %1 wider, so that it reaches round there, and lies looser at its edges.</source>
            <translation>Die Gliedmaße ist zwischen den Kanten des Layouts runder: Es ist %1 breiter gezeichnet, damit es dort herumreicht, und liegt an den Kanten lockerer.</translation>
        </message>
        <message>
            <source>Leave it as it is</source>
            <translation>So lassen</translation>
        </message>
        <message>
            <source>%1 (the most that was tried)</source>
            <translation>%1 (das Meiste, das probiert wurde)</translation>
        </message>
        <message>
            <source>%1: no higher than %2</source>
            <translation>%1: nicht höher als %2</translation>
        </message>
        <message>
            <source>%1; with it set the relief valve no higher than %2</source>
            <translation>%1; dazu das Überdruckventil nicht höher als %2 einstellen</translation>
        </message>
        <message>
            <source>%1 of air pushed in</source>
            <translation>%1 eingedrückter Luft</translation>
        </message>
        <message>
            <source>Lower '%1' from %2 to %3</source>
            <translation>„%1“ von %2 auf %3 senken</translation>
        </message>
        <message>
            <source>Fill '%1' with %2 instead of %3 mL</source>
            <translation>„%1“ mit %2 statt %3 mL füllen</translation>
        </message>
        <message>
            <source>Lower '%1'</source>
            <translation>„%1“ senken</translation>
        </message>
        <message>
            <source>'%1' to %2</source>
            <translation>„%1“ auf %2</translation>
        </message>
        <message>
            <source>Lower all inlets together: %1</source>
            <translation>Alle Einlässe zusammen senken: %1</translation>
        </message>
        <message>
            <source>closing length %1 instead of %2 mm</source>
            <translation>Schließlänge %1 statt %2 mm</translation>
        </message>
        <message>
            <source>closure stretch %1 instead of %2 %</source>
            <translation>Dehnung des Verschlusses %1 statt %2 %</translation>
        </message>
        <message>
            <source>Fasten it looser or tighter</source>
            <translation>Lockerer oder fester anlegen</translation>
        </message>
        <message>
            <source>Fasten it %1 % looser: %2</source>
            <translation>%1 % lockerer anlegen: %2</translation>
        </message>
        <message>
            <source>Fasten it %1 % tighter: %2</source>
            <translation>%1 % fester anlegen: %2</translation>
        </message>
        <message>
            <source>Move it along or round the limb</source>
            <translation>Auf dem Glied längs oder ringsum verschieben</translation>
        </message>
        <message>
            <source>Move it 10 mm towards the trunk: anchor at station %1 instead of %2 mm</source>
            <translation>10 mm zum Rumpf hin verschieben: Anker an der Station %1 statt %2 mm</translation>
        </message>
        <message>
            <source>Move it 10 mm away from the trunk: anchor at station %1 instead of %2 mm</source>
            <translation>10 mm vom Rumpf weg verschieben: Anker an der Station %1 statt %2 mm</translation>
        </message>
        <message>
            <source>Move it round the limb</source>
            <translation>Um das Glied herum verschieben</translation>
        </message>
        <message>
            <source>Move it 10 mm round the limb, to a larger angle: anchor at %1 instead of %2 degrees</source>
            <translation>10 mm um das Glied herum verschieben, zu größerem Winkel: Anker bei %1 statt %2 Grad</translation>
        </message>
        <message>
            <source>Move it 10 mm round the limb, to a smaller angle: anchor at %1 instead of %2 degrees</source>
            <translation>10 mm um das Glied herum verschieben, zu kleinerem Winkel: Anker bei %1 statt %2 Grad</translation>
        </message>
        <message>
            <source>Turn it on the skin by %1 degrees: turn %2 instead of %3 degrees</source>
            <translation>Auf der Haut um %1 Grad drehen: Drehung %2 statt %3 Grad</translation>
        </message>
        <message>
            <source>Cast the %1 0.5 mm thicker: %2 instead of %3 mm</source>
            <translation>Die %1 0,5 mm dicker gießen: %2 statt %3 mm</translation>
        </message>
        <message>
            <source>Cast the %1 in a softer grade</source>
            <translation>Die %1 in einer weicheren Sorte gießen</translation>
        </message>
        <message>
            <source>Cast the %1 in %2 instead of %3</source>
            <translation>Die %1 in %2 statt %3 gießen</translation>
        </message>
        <message>
            <source>skin sheet</source>
            <translation>Hautlage</translation>
        </message>
        <message>
            <source>outer sheet</source>
            <translation>Außenlage</translation>
        </message>
        <message>
            <source>Hold no step of '%1' longer than %2 instead of %3</source>
            <translation>Keinen Schritt von „%1“ länger als %2 statt %3 halten</translation>
        </message>
        <message>
            <source>Let the session last %1 instead of %2</source>
            <translation>Die Sitzung %1 statt %2 dauern lassen</translation>
        </message>
        <message>
            <source>Hold it %1 instead of %2</source>
            <translation>%1 statt %2 halten</translation>
        </message>
        <message>
            <source>Set the relief valves lower</source>
            <translation>Die Überdruckventile tiefer einstellen</translation>
        </message>
        <message>
            <source>the page could not be printed: choose another printer or file.</source>
            <translation>Die Seite ließ sich nicht drucken: einen anderen Drucker oder eine andere Datei wählen.</translation>
        </message>
        <message>
            <source>label '%1' read: its %2 bony and nerve sites and its front are left out, because the repair steps move the body.</source>
            <translation>Beiblatt '%1' gelesen: Seine %2 Knochen- und Nervenstellen und seine Vorderseite bleiben weg, weil die Schritte des Ausbesserns den Körper bewegen.</translation>
        </message>
        <message>
            <source>Inlet '%1' at %2 feeds nothing: move it into a chamber or channel, or within 1 mm of one.</source>
            <translation>Einlass „%1“ bei %2 speist nichts: in eine Kammer oder einen Kanal verschieben oder bis auf 1 mm an einen heran.</translation>
        </message>
        <message>
            <source>Inlets '%1' and '%2' both feed %3; keep one of them.</source>
            <translation>Die Einlässe „%1“ und „%2“ speisen beide %3; einen davon behalten.</translation>
        </message>
        <message>
            <source>No inlet reaches chamber '%1'; add an inlet, or a channel from a chamber that has one.</source>
            <translation>Kein Einlass erreicht Kammer „%1“; einen Einlass hinzufügen oder einen Kanal von einer Kammer, die einen hat.</translation>
        </message>
        <message>
            <source>Channel '%1' joins no chamber and no inlet; lengthen it or remove it.</source>
            <translation>Kanal „%1“ verbindet weder Kammer noch Einlass; verlängern oder entfernen.</translation>
        </message>
        <message>
            <source>With its taper of %1 the closing length shrinks to %2 at y = %3; use a smaller taper.</source>
            <translation>Mit der Schräge von %1 schrumpft die Schließlänge bei y = %3 auf %2; eine kleinere Schräge nehmen.</translation>
        </message>
        <message>
            <source>The closing length is %1; it has to be above zero.</source>
            <translation>Die Schließlänge ist %1; sie muss über null liegen.</translation>
        </message>
        <message>
            <source>The closing line at x = %1 lies %2 before the layout begins; move it to the layout's left edge.</source>
            <translation>Die Schließlinie bei x = %1 liegt %2 vor dem Anfang des Layouts; an den linken Rand des Layouts verschieben.</translation>
        </message>
        <message>
            <source>The layout is %1 too short to close at x = %2; make it or its strap longer, or the closing length shorter.</source>
            <translation>Das Layout ist %1 zu kurz, um bei x = %2 zu schließen; es oder seinen Gurt verlängern oder die Schließlänge kürzen.</translation>
        </message>
        <message>
            <source>%1 reaches %2 beyond the closing line at x = %3; let the closing begin further along the sheet (from x), move that part, or change the closing length.</source>
            <translation>%1 reicht %2 über die Schließlinie bei x = %3 hinaus; den Verschluss weiter hinten beginnen lassen (ab x), dieses Teil verschieben oder die Schließlänge ändern.</translation>
        </message>
        <message>
            <source>%1 reaches %2 before the closing line at x = %3; let the closing begin earlier (from x), move that part, or change the closing length.</source>
            <translation>%1 beginnt %2 vor der Schließlinie bei x = %3; den Verschluss früher beginnen lassen (ab x), dieses Teil verschieben oder die Schließlänge ändern.</translation>
        </message>
        <message>
            <source>The mapping '%1' is not KEY=PART, e.g. 'cells=chamber'.</source>
            <translation>Die Zuordnung „%1“ ist nicht SCHLÜSSEL=TEIL, z. B. „cells=chamber“.</translation>
        </message>
        <message>
            <source>The mapping '%1' names no part: after = write outline, chamber, inset seam, channel, inlet, strap or ignore.</source>
            <translation>Die Zuordnung „%1“ nennt keinen Teil: nach = outline, chamber, inset seam, channel, inlet, strap oder ignore schreiben.</translation>
        </message>
        <message>
            <source>The mapping '%1' has a width that is not between 0 and 10 000 mm.</source>
            <translation>Die Zuordnung „%1“ hat eine Breite, die nicht zwischen 0 und 10 000 mm liegt.</translation>
        </message>
        <message>
            <source>The layout only touches a closing line at a point (from x = %1 to %2); close it where it has an edge or some height.</source>
            <translation>Das Layout berührt eine Schließlinie nur in einem Punkt (von x = %1 bis %2); dort schließen, wo es einen Rand oder etwas Höhe hat.</translation>
        </message>
        <message>
            <source>Rims and seams leave %1 along x for each chamber; at least 8 mm are needed: use fewer chambers, or narrower seams and rims.</source>
            <translation>Ränder und Nähte lassen jeder Kammer %1 längs x; nötig sind mindestens 8 mm: weniger Kammern oder schmalere Nähte und Ränder nehmen.</translation>
        </message>
        <message>
            <source>Rims and seams leave %1 along the limb for each chamber; at least 8 mm are needed: use fewer %2s, or narrower seams and rims.</source>
            <translation>Ränder und Nähte lassen jeder Kammer %1 längs der Gliedmaße; nötig sind mindestens 8 mm: weniger Kammern übereinander (%2) oder schmalere Nähte und Ränder nehmen.</translation>
        </message>
        <message>
            <source>band</source>
            <translation>Band</translation>
        </message>
        <message>
            <source>row</source>
            <translation>Reihe</translation>
        </message>
        <message>
            <source>A cuff of girth %1 with a growth of %2 comes to less than 40 mm at one edge; check both.</source>
            <translation>Eine Manschette mit Umfang %1 und Zunahme %2 kommt an einem Rand auf weniger als 40 mm; beide Werte prüfen.</translation>
        </message>
        <message>
            <source>"%1" of the layout "%2" is %3; it may be from %4 to %5.</source>
            <translation>„%1“ des Layouts „%2“ ist %3; möglich ist %4 bis %5.</translation>
        </message>
        <message>
            <source>"%1" of the layout "%2" is %3; give a whole number.</source>
            <translation>„%1“ des Layouts „%2“ ist %3; eine ganze Zahl angeben.</translation>
        </message>
        <message>
            <source>The layout "%1" has no parameter "%2"; it has: %3.</source>
            <translation>Das Layout „%1“ hat keinen Parameter „%2“; es hat: %3.</translation>
        </message>
        <message>
            <source>There is no layout form "%1"; there are: %2.</source>
            <translation>Eine Layoutform „%1“ gibt es nicht; es gibt: %2.</translation>
        </message>
        <message>
            <source>The strap is %1 wide, but the pack's edge is straight over %2 only; make the strap narrower or the pack higher.</source>
            <translation>Der Gurt ist %1 breit, aber der Rand des Kissens ist nur auf %2 gerade; den Gurt schmaler oder das Kissen höher machen.</translation>
        </message>
        <message>
            <source>The rim leaves %1 for the chamber, less than one spacing of %2; make the pack larger or the spacing smaller.</source>
            <translation>Der Rand lässt der Kammer %1, weniger als einen Abstand von %2; das Kissen größer oder den Abstand kleiner machen.</translation>
        </message>
        <message>
            <source>The pad's diameter is %1, more than %2 of the girth; make it smaller, or make a cuff instead.</source>
            <translation>Der Durchmesser des Polsters ist %1, mehr als das %2-Fache des Umfangs; kleiner machen oder stattdessen eine Manschette.</translation>
        </message>
        <message>
            <source>Rim and seams leave %1 for each ring; at least 6 mm are needed: use fewer rings or a larger pad.</source>
            <translation>Rand und Nähte lassen jedem Ring %1; nötig sind mindestens 6 mm: weniger Ringe oder ein größeres Polster nehmen.</translation>
        </message>
        <message>
            <source>A graduated sleeve has to be tighter at its distal end: "stretch-proximal" may not be above "stretch-distal".</source>
            <translation>Eine abgestufte Stulpe muss am distalen Ende enger sein: „stretch-proximal“ darf nicht über „stretch-distal“ liegen.</translation>
        </message>
        <message>
            <source>%1 %2 has no name.</source>
            <translation>%1 %2 hat keinen Namen.</translation>
        </message>
        <message>
            <source>Two %1s are named '%2'; give each its own name.</source>
            <translation>Zwei Teile heißen %1 „%2“; jedem einen eigenen Namen geben.</translation>
        </message>
        <message>
            <source>%1 is %2 mm thick; give a thickness above 0 and at most 20 mm.</source>
            <translation>%1 ist %2 mm dick; eine Dicke über 0 und höchstens 20 mm angeben.</translation>
        </message>
        <message>
            <source>%1 has a stiffness of %2 N/mm; it cannot be negative.</source>
            <translation>%1 hat eine Steifigkeit von %2 N/mm; negativ kann sie nicht sein.</translation>
        </message>
        <message>
            <source>The skin sheet</source>
            <translation>Die Hautlage</translation>
        </message>
        <message>
            <source>The outer sheet</source>
            <translation>Die Außenlage</translation>
        </message>
        <message>
            <source>The skin sheet has no material; name a hardness from the silicone table.</source>
            <translation>Die Hautlage hat kein Material; eine Härte aus der Silikontabelle nennen.</translation>
        </message>
        <message>
            <source>The outer sheet has no material; name a hardness from the silicone table.</source>
            <translation>Die Außenlage hat kein Material; eine Härte aus der Silikontabelle nennen.</translation>
        </message>
        <message>
            <source>The backing along x</source>
            <translation>Der Rückenstoff längs x</translation>
        </message>
        <message>
            <source>The backing across</source>
            <translation>Der Rückenstoff quer</translation>
        </message>
        <message>
            <source>The outline measures %1 by %2; it should lie between 5 and 3000 mm, so check the unit.</source>
            <translation>Der Umriss misst %1 mal %2; er sollte zwischen 5 und 3000 mm liegen, also die Einheit prüfen.</translation>
        </message>
        <message>
            <source>The strap '%1'</source>
            <translation>Der Gurt „%1“</translation>
        </message>
        <message>
            <source>The layout has no chamber; draw at least one inside the outline.</source>
            <translation>Das Layout hat keine Kammer; mindestens eine in den Umriss zeichnen.</translation>
        </message>
        <message>
            <source>%1 crosses or touches itself at %2; %3</source>
            <translation>%1 kreuzt oder berührt sich selbst bei %2; %3</translation>
        </message>
        <message>
            <source>redraw it as one simple loop.</source>
            <translation>als eine einfache Schleife neu zeichnen.</translation>
        </message>
        <message>
            <source>bend it more gently or make it narrower.</source>
            <translation>sanfter biegen oder schmaler machen.</translation>
        </message>
        <message>
            <source>The outline</source>
            <translation>Der Umriss</translation>
        </message>
        <message>
            <source>An inset line of chamber '%1'</source>
            <translation>Eine Innennaht-Linie der Kammer „%1“</translation>
        </message>
        <message>
            <source>The seam between %1 is %2 wide at %3, less than the thicker sheet (%4); move them apart or use thinner sheets.</source>
            <translation>Die Naht zwischen %1 ist bei %3 nur %2 breit, weniger als die dickere Lage (%4); auseinanderrücken oder dünnere Lagen nehmen.</translation>
        </message>
        <message>
            <source>%1 and %2 overlap by %3 mm2; move them apart, or draw them as one chamber.</source>
            <translation>%1 und %2 überlappen sich um %3 mm²; auseinanderrücken oder als eine Kammer zeichnen.</translation>
        </message>
        <message>
            <source>%1 leaves the outline by %2 at %3; move it inside, or make the outline larger.</source>
            <translation>%1 ragt bei %3 um %2 aus dem Umriss; hineinrücken oder den Umriss vergrößern.</translation>
        </message>
        <message>
            <source>%1 and the outline</source>
            <translation>%1 und dem Umriss</translation>
        </message>
        <message>
            <source>%1 reaches %2 outside its chamber at %3; move it inside.</source>
            <translation>%1 ragt bei %3 um %2 aus der Kammer; hineinrücken.</translation>
        </message>
        <message>
            <source>%1 is %2 from the chamber's wall at %3, less than the thicker sheet (%4), so the gap cannot open; move it inwards.</source>
            <translation>%1 liegt bei %3 nur %2 von der Kammerwand, weniger als die dickere Lage (%4), also kann sich der Spalt nicht öffnen; nach innen rücken.</translation>
        </message>
        <message>
            <source>Channel '%1' from %2 to %3 joins nothing; lengthen it into two chambers or to an inlet, or remove it.</source>
            <translation>Kanal „%1“ von %2 bis %3 verbindet nichts; in zwei Kammern oder bis zu einem Einlass verlängern oder entfernen.</translation>
        </message>
        <message>
            <source>Channel '%1' from %2 to %3 joins only one part and no inlet; lengthen it into two chambers or to an inlet, or remove it.</source>
            <translation>Kanal „%1“ von %2 bis %3 erreicht nur einen Teil und keinen Einlass; in zwei Kammern oder bis zu einem Einlass verlängern oder entfernen.</translation>
        </message>
        <message>
            <source>Strap '%1' shares no edge with the outline (%2 away); draw it so that they share an edge of at least 1 mm.</source>
            <translation>Gurt „%1“ hat keine gemeinsame Kante mit dem Umriss (%2 entfernt); so zeichnen, dass beide eine Kante von mindestens 1 mm gemeinsam haben.</translation>
        </message>
        <message>
            <source>The closure needs exactly one of closing length and stretch, and a finite start.</source>
            <translation>Der Verschluss braucht genau eines von Schließlänge und Dehnung und einen endlichen Anfang.</translation>
        </message>
        <message>
            <source>The closing stretch is %1; it should lie between -0.5 and 2.</source>
            <translation>Die Dehnung des Verschlusses ist %1; sie sollte zwischen -0,5 und 2 liegen.</translation>
        </message>
        <message>
            <source>The closing length grows by %1 mm for each mm towards proximal; it should lie between -2 and 2.</source>
            <translation>Die Schließlänge wächst um %1 mm je mm nach proximal; der Wert sollte zwischen -2 und 2 liegen.</translation>
        </message>
        <message>
            <source>%1 has a coordinate that is not a finite number.</source>
            <translation>%1 hat eine Koordinate, die keine endliche Zahl ist.</translation>
        </message>
        <message>
            <source>%1 has %2 points; a closed shape needs at least 3.</source>
            <translation>%1 hat %2 Punkte; eine geschlossene Form braucht mindestens 3.</translation>
        </message>
        <message>
            <source>%1 is thinner than 0.01 mm; draw it with an area.</source>
            <translation>%1 ist dünner als 0,01 mm; mit einer Fläche zeichnen.</translation>
        </message>
        <message>
            <source>%1 has a coordinate or width that is not a finite number.</source>
            <translation>%1 hat eine Koordinate oder Breite, die keine endliche Zahl ist.</translation>
        </message>
        <message>
            <source>%1 has a width of %2; it has to be above zero.</source>
            <translation>%1 hat eine Breite von %2; sie muss über null liegen.</translation>
        </message>
        <message>
            <source>%1 needs a path of at least two different points.</source>
            <translation>%1 braucht einen Pfad aus mindestens zwei verschiedenen Punkten.</translation>
        </message>
        <message>
            <source>%1 has an inset spot whose place or radius is not a usable number.</source>
            <translation>%1 hat einen Innennaht-Punkt, dessen Ort oder Radius keine brauchbare Zahl ist.</translation>
        </message>
        <message>
            <source>%1: its inset line</source>
            <translation>%1: ihre Innennaht-Linie</translation>
        </message>
        <message>
            <source>The mesh edge lengths have to be finite and above zero.</source>
            <translation>Die Kantenlängen des Netzes müssen endlich sein und über null liegen.</translation>
        </message>
        <message>
            <source>A mesh edge of %1 (%2 beside seams) would need about %3 vertices, above the 500000 allowed; ask for longer edges.</source>
            <translation>Eine Netzkante von %1 (%2 neben Nähten) brauchte rund %3 Eckpunkte, mehr als die erlaubten 500000; längere Kanten verlangen.</translation>
        </message>
        <message>
            <source>Inlet '%1' has a coordinate that is not a finite number.</source>
            <translation>Einlass „%1“ hat eine Koordinate, die keine endliche Zahl ist.</translation>
        </message>
        <message>
            <source>Seam</source>
            <translation>Naht</translation>
        </message>
        <message>
            <source>Inset spot %1 of chamber '%2'</source>
            <translation>Innennaht-Punkt %1 der Kammer „%2“</translation>
        </message>
        <message>
            <source>Inset line %1 of chamber '%2'</source>
            <translation>Innennaht-Linie %1 der Kammer „%2“</translation>
        </message>
        <message>
            <source>The anchor point has a coordinate that is not a finite number.</source>
            <translation>Der Ankerpunkt hat eine Koordinate, die keine endliche Zahl ist.</translation>
        </message>
        <message>
            <source>The anchor point is %1 from the nearest skin and %2 is the most; check its coordinates and unit.</source>
            <translation>Der Ankerpunkt liegt %1 von der nächsten Haut, höchstens %2 sind möglich; seine Koordinaten und die Einheit prüfen.</translation>
        </message>
        <message>
            <source>The placement's turn is not a finite number.</source>
            <translation>Die Drehung des Layouts ist keine endliche Zahl.</translation>
        </message>
        <message>
            <source>At the anchor the skin faces along the body's axis (%1 degrees from it), so no direction goes round the limb; move the anchor off the end.</source>
            <translation>Am Anker zeigt die Haut längs der Körperachse (%1 Grad von ihr), also führt keine Richtung um die Gliedmaße; den Anker vom Ende wegrücken.</translation>
        </message>
        <message>
            <source>The section round the body at the anchor (station %1) is not closed, so a closing layout cannot go round there; move the anchor away from the ends or turn the layout less.</source>
            <translation>Der Schnitt um den Körper am Anker (Station %1) ist nicht geschlossen, also kann ein Layout mit Verschluss dort nicht herumgehen; den Anker von den Enden wegrücken oder das Layout weniger drehen.</translation>
        </message>
        <message>
            <source>'%1' is no standard place of this part; there are: %2.</source>
            <translation>„%1“ ist keine Standardstelle dieses Körperteils; es gibt: %2.</translation>
        </message>
        <message>
            <source>the landmark '%1' lies %2 mm off the skin: give it in the scan's own frame, in mm, within 20 mm of the skin.</source>
            <translation>die Landmarke „%1“ liegt %2 mm neben der Haut: in den Koordinaten des Scans angeben, in mm, höchstens 20 mm von der Haut.</translation>
        </message>
        <message>
            <source>the landmark '%1' lies where the scan has no closed section: take one farther from its ends.</source>
            <translation>die Landmarke „%1“ liegt, wo der Scan keinen geschlossenen Schnitt hat: eine weiter von seinen Enden nehmen.</translation>
        </message>
        <message>
            <source>give one or two landmarks, not %1.</source>
            <translation>eine oder zwei Landmarken angeben, nicht %1.</translation>
        </message>
        <message>
            <source>the landmark '%1' is given twice; keep one.</source>
            <translation>die Landmarke „%1“ ist doppelt angegeben; eine behalten.</translation>
        </message>
        <message>
            <source>the landmarks '%1' and '%2'</source>
            <translation>die Landmarken „%1“ und „%2“</translation>
        </message>
        <message>
            <source>%1 lie as on a right part, not a left one: correct the side, the axis or the points.</source>
            <translation>%1 liegen wie auf einer rechten Gliedmaße, nicht auf einer linken: Seite, Achse oder Punkte korrigieren.</translation>
        </message>
        <message>
            <source>%1 lie as on a left part, not a right one: correct the side, the axis or the points.</source>
            <translation>%1 liegen wie auf einer linken Gliedmaße, nicht auf einer rechten: Seite, Achse oder Punkte korrigieren.</translation>
        </message>
        <message>
            <source>%1 contradict each other by %2 degrees about the axis (%3 at most): correct a point.</source>
            <translation>%1 widersprechen sich um %2 Grad um die Achse (höchstens %3): einen Punkt korrigieren.</translation>
        </message>
        <message>
            <source>the front points along the axis: give the direction that the person's front faces.</source>
            <translation>die Vorderseite zeigt längs der Achse: die Richtung angeben, in die die Person nach vorn schaut.</translation>
        </message>
        <message>
            <source>the landmark '%1' lies on the wrong side: it puts the front %2 degrees from the one given (%3 at most): correct the point, the front or the side.</source>
            <translation>die Landmarke „%1“ liegt auf der falschen Seite: nach ihr läge die Vorderseite %2 Grad neben der angegebenen (höchstens %3): Punkt, Vorderseite oder Seite korrigieren.</translation>
        </message>
        <message>
            <source>the landmark '%1' lies at station %2, which makes the part %3 long on a scan of %4: correct the points, or state the axis from hand or foot to trunk.</source>
            <translation>die Landmarke „%1“ liegt an der Station %2, damit wäre der Körperteil %3 lang bei einem Scan von %4: die Punkte korrigieren oder die Achse von Hand oder Fuß zum Rumpf angeben.</translation>
        </message>
        <message>
            <source>%1 contradict each other by %2 of the length along the axis: correct a point.</source>
            <translation>%1 widersprechen sich um %2 der Länge längs der Achse: einen Punkt korrigieren.</translation>
        </message>
        <message>
            <source>The layout's centre line turns only %1 degrees round the body, so its closing edges cannot meet; turn the layout so that x goes round the limb.</source>
            <translation>Die Mittellinie des Layouts läuft nur %1 Grad um den Körper, also können sich die Schließkanten nicht treffen; das Layout so drehen, dass x um die Gliedmaße läuft.</translation>
        </message>
        <message>
            <source>Laid on, the layout overlaps itself: round station %1, where the girth is %2, %3 cm2 of it lie in up to %4 layers, and how layers press on each other is not calculated; give it a closure, which leaves the overlapping tail out, or make it shorter round the body.</source>
            <translation>Aufgelegt überlappt sich das Layout selbst: um Station %1, wo der Umfang %2 ist, liegen %3 cm² davon in bis zu %4 Schichten, und wie Schichten aufeinander drücken, wird nicht berechnet; einen Verschluss geben, der das überlappende Ende weglässt, oder es um den Körper herum kürzen.</translation>
        </message>
        <message>
            <source>The closing length of %1 is %2 times the girth of %3 at station %4: such a layout is wound round more than once, and how layers press on each other is not calculated; give a closing length near the girth.</source>
            <translation>Die Schließlänge von %1 ist das %2-Fache des Umfangs von %3 an der Station %4: Ein solches Layout ist mehr als einmal herumgewickelt, und wie Schichten aufeinander drücken, wird nicht berechnet; eine Schließlänge nahe dem Umfang angeben.</translation>
        </message>
        <message>
            <source>The layout runs %1 past the distal end of the body, measured along the skin; move the anchor at least that far towards the proximal end, or use a body that reaches further.</source>
            <translation>Das Layout läuft %1 über das distale Ende des Körpers hinaus, entlang der Haut gemessen; den Anker mindestens so weit zum proximalen Ende rücken oder einen Körper nehmen, der weiter reicht.</translation>
        </message>
        <message>
            <source>The layout runs %1 past the proximal end of the body, measured along the skin; move the anchor at least that far towards the distal end, or use a body that reaches further.</source>
            <translation>Das Layout läuft %1 über das proximale Ende des Körpers hinaus, entlang der Haut gemessen; den Anker mindestens so weit zum distalen Ende rücken oder einen Körper nehmen, der weiter reicht.</translation>
        </message>
        <message>
            <source>The layout runs %1 past the distal end of the body and %2 past the proximal end of the body, measured along the skin; shorten the layout or use a body that reaches further.</source>
            <translation>Das Layout läuft %1 über das distale und %2 über das proximale Ende des Körpers hinaus, entlang der Haut gemessen; das Layout kürzen oder einen Körper nehmen, der weiter reicht.</translation>
        </message>
        <message>
            <source>The layout lies on '%1', where nothing may lie (%2 cm² of it, first at (%3, %4, %5) mm): move or turn it, or make it smaller; change the region only if it is wrong.</source>
            <translation>Das Layout liegt auf „%1“, wo nichts liegen darf (%2 cm² davon, zuerst bei (%3; %4; %5) mm): verschieben, drehen oder kleiner machen; den Bereich nur ändern, wenn er falsch ist.</translation>
        </message>
        <message>
            <source>The body has no closed section at the anchor's station of %1; choose a station further from the ends.</source>
            <translation>Der Körper hat an der Ankerstation %1 keinen geschlossenen Schnitt; eine Station weiter von den Enden wählen.</translation>
        </message>
        <message>
            <source>The anchor's station or angle is not a finite number.</source>
            <translation>Station oder Winkel des Ankers ist keine endliche Zahl.</translation>
        </message>
        <message>
            <source>The anchor's station is %1, but the body reaches from 0 to %2 along its axis; choose a station between.</source>
            <translation>Die Ankerstation ist %1, aber der Körper reicht längs seiner Achse von 0 bis %2; eine Station dazwischen wählen.</translation>
        </message>
        <message>
            <source>No skin lies at %1 degrees about the axis at station %2; place the anchor by a point instead.</source>
            <translation>Bei %1 Grad um die Achse liegt an der Station %2 keine Haut; den Anker stattdessen durch einen Punkt festlegen.</translation>
        </message>
        <message>
            <source>The flat point that lies on the anchor, %1, lies %2 mm off the layout, which reaches from x = %3 to %4 mm and from y = %5 to %6 mm; give a point of the layout (wear, layout_point_mm).</source>
            <translation>Der Punkt des Layouts, der auf dem Anker liegt, %1, liegt %2 mm neben dem Layout, das von x = %3 bis %4 mm und von y = %5 bis %6 mm reicht; einen Punkt des Layouts angeben (wear, layout_point_mm).</translation>
        </message>
        <message>
            <source>The flat point that lies on the anchor has a coordinate that is not a finite number.</source>
            <translation>Der Punkt des Layouts, der auf dem Anker liegt, hat eine Koordinate, die keine endliche Zahl ist.</translation>
        </message>
        <message>
            <source>The layout has no outline.</source>
            <translation>Das Layout hat keinen Umriss.</translation>
        </message>
        <message>
            <source>The layout's closing length is %1; it must be above 0.</source>
            <translation>Die Schließlänge des Layouts ist %1; sie muss über 0 liegen.</translation>
        </message>
        <message>
            <source>The body has no faces.</source>
            <translation>Der Körper hat keine Flächen.</translation>
        </message>
        <message>
            <source>The closure gives neither a closing length nor a stretch.</source>
            <translation>Der Verschluss gibt weder Schließlänge noch Dehnung an.</translation>
        </message>
        <message>
            <source>The closure's stretch is %1; it must be above -1.</source>
            <translation>Die Dehnung des Verschlusses ist %1; sie muss über -1 liegen.</translation>
        </message>
        <message>
            <source>The layout has no triangles.</source>
            <translation>Das Layout hat keine Dreiecke.</translation>
        </message>
        <message>
            <source>note</source>
            <translation>Bericht</translation>
        </message>
        <message>
            <source>people</source>
            <translation>Rechnung über Personen</translation>
        </message>
        <message>
            <source>The mesh has no faces; it is not a body surface.</source>
            <translation>Das Netz hat keine Flächen; es ist keine Körperoberfläche.</translation>
        </message>
        <message>
            <source>A face names a vertex that is not there; the mesh is damaged.</source>
            <translation>Eine Fläche nennt einen Eckpunkt, den es nicht gibt; das Netz ist beschädigt.</translation>
        </message>
        <message>
            <source>A vertex has a coordinate that is not a finite number.</source>
            <translation>Ein Eckpunkt hat eine Koordinate, die keine endliche Zahl ist.</translation>
        </message>
        <message>
            <source>The axis direction must be three finite numbers that are not all zero.</source>
            <translation>Die Richtung der Achse müssen drei endliche Zahlen sein, die nicht alle null sind.</translation>
        </message>
        <message>
            <source>The surface (%1) is flat: %2 by %3 by %4 units; that is not a limb.</source>
            <translation>Die Oberfläche (%1) ist flach: %2 mal %3 mal %4 Einheiten; das ist keine Gliedmaße.</translation>
        </message>
        <message>
            <source>It is the largest of several pieces: if it is a table under a limb, drop it with 'wrapgauge body repair'.</source>
            <translation>Sie ist das größte von mehreren Stücken: Ist sie ein Tisch unter einer Gliedmaße, ihn beim Ausbessern entfernen („wrapgauge body repair“).</translation>
        </message>
        <message>
            <source>Only a surface whose edges have two faces can be decimated; repair it first.</source>
            <translation>Nur eine Oberfläche, deren Kanten zwei Flächen haben, lässt sich neu vernetzen; zuerst ausbessern.</translation>
        </message>
        <message>
            <source>The surface could not be meshed anew with edges of %1; fill its holes and smooth it first, or choose another edge.</source>
            <translation>Die Oberfläche ließ sich mit Kanten von %1 nicht neu vernetzen; zuerst Löcher füllen und glätten oder eine andere Kante wählen.</translation>
        </message>
        <message>
            <source>Edges of %1 are too long for this surface; choose less.</source>
            <translation>Kanten von %1 sind für diese Oberfläche zu lang; kürzere wählen.</translation>
        </message>
        <message>
            <source>Holes can only be filled in a surface whose edges have two faces; repair it first.</source>
            <translation>Löcher lassen sich nur in einer Oberfläche füllen, deren Kanten zwei Flächen haben; zuerst ausbessern.</translation>
        </message>
        <message>
            <source>micrometre</source>
            <translation>Mikrometer</translation>
        </message>
        <message>
            <source>nanometre</source>
            <translation>Nanometer</translation>
        </message>
        <message>
            <source>kilometre</source>
            <translation>Kilometer</translation>
        </message>
        <message>
            <source>tenth of a millimetre</source>
            <translation>Zehntelmillimeter</translation>
        </message>
        <message>
            <source>the likely unit is the %1 (%2)</source>
            <translation>die wahrscheinliche Einheit ist %1 (%2)</translation>
        </message>
        <message>
            <source>no usual unit makes it a limb</source>
            <translation>keine übliche Einheit macht ihn zu einer Gliedmaße</translation>
        </message>
        <message>
            <source>The body is %1 units long: in the stated unit %2 that is no limb; %3.</source>
            <translation>Der Körper ist %1 Einheiten lang: In der angegebenen Einheit %2 ist das keine Gliedmaße; %3.</translation>
        </message>
        <message>
            <source>the likely unit is %1</source>
            <translation>die wahrscheinliche Einheit ist %1</translation>
        </message>
        <message>
            <source>The body is %1 units long, which is no limb in %2, cm, %3 or in; %4: save it in one of these units.</source>
            <translation>Der Körper ist %1 Einheiten lang, das ist weder in %2, cm, %3 noch in eine Gliedmaße; %4: in einer dieser Einheiten speichern.</translation>
        </message>
        <message>
            <source>The limb cannot be cut between stations %1 and %2: it reaches from 0 to %3; give two stations in order within it.</source>
            <translation>Zwischen den Stationen %1 und %2 lässt sich die Gliedmaße nicht ausschneiden: Sie reicht von 0 bis %3; zwei Stationen darin angeben, die kleinere zuerst.</translation>
        </message>
        <message>
            <source>Nothing of the limb lies between stations %1 and %2; choose others.</source>
            <translation>Zwischen den Stationen %1 und %2 liegt nichts von der Gliedmaße; andere wählen.</translation>
        </message>
        <message>
            <source>vertex %1 (%2, %3, %4)</source>
            <translation>Eckpunkt %1 (%2; %3; %4)</translation>
        </message>
        <message>
            <source>The edge from %1 to %2 belongs to %3 faces; a skin has two at an edge, so remove inner walls in the program that made the mesh.</source>
            <translation>Die Kante von %1 bis %2 gehört zu %3 Flächen; eine Haut hat an einer Kante zwei, also innere Wände in dem Programm entfernen, das das Netz gemacht hat.</translation>
        </message>
        <message>
            <source>nothing of the scan is left after this step.</source>
            <translation>nach diesem Schritt ist vom Scan nichts übrig.</translation>
        </message>
        <message>
            <source>Step %1 (%2): %3</source>
            <translation>Schritt %1 (%2): %3</translation>
        </message>
        <message>
            <source>the part of the body '%1' is '%2': nothing may press on neck, face, eyes or airway, and no setting lifts that; design for another part.</source>
            <translation>der Körperteil von „%1“ ist „%2“: Auf Hals, Gesicht, Augen und Atemwege darf nichts drücken, und keine Einstellung hebt das auf; für einen anderen Körperteil entwerfen.</translation>
        </message>
        <message>
            <source>the plan calls the body '%1' a part it is not: '%2'; it may be %3: correct body.part or take another body.</source>
            <translation>der Plan nennt den Körper „%1“ einen Teil, der er nicht ist: „%2“; möglich ist %3: body.part korrigieren oder einen anderen Körper nehmen.</translation>
        </message>
        <message>
            <source>the body '%1' does not say which part of the person it is: add "part" to the plan's body; it may be %2.</source>
            <translation>der Körper „%1“ sagt nicht, welcher Teil der Person er ist: im Plan den Körperteil angeben („part“); möglich ist %2.</translation>
        </message>
        <message>
            <source>the body is a test object, to which no limit is applied, so it is given no %1: name the part that wears the device.</source>
            <translation>der Körper ist ein Prüfkörper, für den kein Grenzwert gilt, also entfällt hier: %1. Den Körperteil nennen, der das Gerät trägt.</translation>
        </message>
        <message>
            <source>The region '%1' lies near '%2', which neither the plan nor the body has; they have %3.</source>
            <translation>Der Bereich „%1“ liegt nahe „%2“, das weder Plan noch Körper haben; sie haben %3.</translation>
        </message>
        <message>
            <source>none</source>
            <translation>nichts davon</translation>
        </message>
        <message>
            <source>The mesh holds %1 separate pieces, the two largest with %2 % and %3 % of the area, so it may be two limbs: write each to a file of its own with 'wrapgauge body pieces' and name the one you mean; a table under a limb is dropped by 'wrapgauge body repair'.</source>
            <translation>Das Netz besteht aus %1 getrennten Stücken, die zwei größten mit %2 % und %3 % der Fläche, es können also zwei Gliedmaßen sein: jedes mit „wrapgauge body pieces“ in eine eigene Datei schreiben und die gemeinte nennen; einen Tisch unter der Gliedmaße entfernt „wrapgauge body repair“.</translation>
        </message>
        <message>
            <source>The mesh has no face with any area; it is not a body surface.</source>
            <translation>Das Netz hat keine Fläche mit einem Inhalt; es ist keine Körperoberfläche.</translation>
        </message>
        <message>
            <source>The surface has only one side, like a twisted ring, so no outside can be told; correct it in the program that made it.</source>
            <translation>Die Oberfläche hat nur eine Seite, wie ein verdrehter Ring, also gibt es kein Außen; in dem Programm ausbessern, das sie gemacht hat.</translation>
        </message>
        <message>
            <source>The scan is a flat plane and nothing else; there is no limb in it.</source>
            <translation>Der Scan ist eine ebene Fläche und sonst nichts; eine Gliedmaße ist nicht darin.</translation>
        </message>
        <message>
            <source>there is no rule "%1".</source>
            <translation>eine Regel „%1“ gibt es nicht.</translation>
        </message>
        <message>
            <source>the rule "%1" stands twice; keep one.</source>
            <translation>die Regel „%1“ steht doppelt da; eine behalten.</translation>
        </message>
        <message>
            <source>the rule "%1" is missing.</source>
            <translation>die Regel „%1“ fehlt.</translation>
        </message>
        <message>
            <source>The template would need %1 %2 pages, above the 200 allowed; write it as .svg instead.</source>
            <translation>Die Schablone brauchte %1 Seiten %2, mehr als die erlaubten 200; stattdessen als .svg schreiben.</translation>
        </message>
        <message>
            <source>No such file or directory</source>
            <translation>Datei oder Ordner nicht vorhanden</translation>
        </message>
        <message>
            <source>Permission denied</source>
            <translation>kein Zugriffsrecht</translation>
        </message>
        <message>
            <source>No space left on device</source>
            <translation>kein Platz mehr auf dem Datenträger</translation>
        </message>
        <message>
            <source>Read-only file system</source>
            <translation>der Datenträger ist schreibgeschützt</translation>
        </message>
        <message>
            <source>Cannot read %1: %2.</source>
            <translation>%1 lässt sich nicht lesen: %2.</translation>
        </message>
        <message>
            <source>Cannot write %1: %2.</source>
            <translation>%1 lässt sich nicht schreiben: %2.</translation>
        </message>
        <message>
            <source>it is a folder</source>
            <translation>es ist ein Ordner</translation>
        </message>
        <message>
            <source>it is not a regular file</source>
            <translation>es ist keine gewöhnliche Datei</translation>
        </message>
        <message>
            <source>it holds %1 bytes and at most %2 are read</source>
            <translation>sie hat %1 Bytes, gelesen werden höchstens %2</translation>
        </message>
        <message>
            <source>line %1, column %2</source>
            <translation>Zeile %1, Spalte %2</translation>
        </message>
        <message>
            <source>empty (null)</source>
            <translation>leer (null)</translation>
        </message>
        <message>
            <source>true or false</source>
            <translation>wahr oder falsch</translation>
        </message>
        <message>
            <source>a list</source>
            <translation>eine Liste</translation>
        </message>
        <message>
            <source>text</source>
            <translation>ein Text</translation>
        </message>
        <message>
            <source>a number</source>
            <translation>eine Zahl</translation>
        </message>
        <message>
            <source>degrees</source>
            <translation>Grad</translation>
        </message>
        <message>
            <source>%1 is empty; it must hold a JSON object.</source>
            <translation>%1 ist leer; darin muss ein JSON-Objekt stehen.</translation>
        </message>
        <message>
            <source>%1 is not valid JSON at %2; correct the text there (a comma, a quote or a bracket too many or too few).</source>
            <translation>%1 ist bei %2 kein gültiges JSON; den Text dort korrigieren (ein Komma, Anführungszeichen oder eine Klammer zu viel oder zu wenig).</translation>
        </message>
        <message>
            <source>%1 holds a number too large to be read; use ordinary numbers.</source>
            <translation>%1 enthält eine Zahl, die zum Lesen zu groß ist; gewöhnliche Zahlen verwenden.</translation>
        </message>
        <message>
            <source>%1 is nested deeper than %2 levels.</source>
            <translation>%1 ist tiefer als %2 Ebenen geschachtelt.</translation>
        </message>
        <message>
            <source>%1: the key %2 stands twice in one object; keep one.</source>
            <translation>%1: Der Schlüssel %2 steht in einem Objekt doppelt; einen behalten.</translation>
        </message>
        <message>
            <source>must be a JSON object { ... } and is %1.</source>
            <translation>muss ein JSON-Objekt { ... } sein und ist %1.</translation>
        </message>
        <message>
            <source>"%1" is missing.</source>
            <translation>„%1“ fehlt.</translation>
        </message>
        <message>
            <source>%1 must be a number and is %2.</source>
            <translation>%1 muss eine Zahl sein und ist %2.</translation>
        </message>
        <message>
            <source>%1 is %2; it must lie between %3 and %4.</source>
            <translation>%1 ist %2; der Wert muss zwischen %3 und %4 liegen.</translation>
        </message>
        <message>
            <source>%1 is %2 %5; it must lie between %3 and %4 %5.</source>
            <translation>%1 ist %2 %5; der Wert muss zwischen %3 und %4 %5 liegen.</translation>
        </message>
        <message>
            <source>%1: 1 is missing, so this is not the kind of file asked for.</source>
            <translation>%1: 1 fehlt, also ist dies nicht die verlangte Art von Datei.</translation>
        </message>
        <message>
            <source>%1 must be 1, the only format number this program reads.</source>
            <translation>%1 muss 1 sein, die einzige Formatnummer, die dieses Programm liest.</translation>
        </message>
        <message>
            <source>%1 is %2; give a whole number.</source>
            <translation>%1 ist %2; eine ganze Zahl angeben.</translation>
        </message>
        <message>
            <source>%1 must be a list of %2 numbers.</source>
            <translation>%1 muss eine Liste von %2 Zahlen sein.</translation>
        </message>
        <message>
            <source>%1 number %2</source>
            <translation>%1, Zahl %2,</translation>
        </message>
        <message>
            <source>%1 must be text in quotes, not empty.</source>
            <translation>%1 muss ein Text in Anführungszeichen sein, nicht leer.</translation>
        </message>
        <message>
            <source>%1 holds nothing but spaces; say it in words.</source>
            <translation>%1 enthält nichts als Leerzeichen; in Worten sagen.</translation>
        </message>
        <message>
            <source>%1 is %2; write a day as year-month-day, "2026-11-29".</source>
            <translation>%1 ist %2; einen Tag als Jahr-Monat-Tag schreiben, „2026-11-29“.</translation>
        </message>
        <message>
            <source>%1 is %2; it must be one of: %3.</source>
            <translation>%1 ist %2; möglich ist nur: %3.</translation>
        </message>
        <message>
            <source>%1 must be true or false.</source>
            <translation>%1 muss true oder false sein.</translation>
        </message>
        <message>
            <source>%1 must be a list [ ... ].</source>
            <translation>%1 muss eine Liste [ ... ] sein.</translation>
        </message>
        <message>
            <source>the key %1 is not known; known here: %2.</source>
            <translation>der Schlüssel %1 ist nicht bekannt; bekannt sind hier: %2.</translation>
        </message>
        <message>
            <source>not enough memory for this: use a coarser mesh or a smaller body, or give the program more memory.</source>
            <translation>nicht genug Speicher dafür: ein gröberes Netz oder einen kleineren Körper nehmen, oder dem Programm mehr Speicher geben.</translation>
        </message>
        <message>
            <source>stopped by an error inside the program: please report it with the input.</source>
            <translation>durch einen Fehler im Programm abgebrochen: Bitte mit den Eingaben melden.</translation>
        </message>
        <message>
            <source>stopped by an error inside the program (%1): please report it with the input.</source>
            <translation>durch einen Fehler im Programm abgebrochen (%1): Bitte mit den Eingaben melden.</translation>
        </message>
        <message>
            <source>The distance grid would have %1 million points at a spacing of %2 mm, and %3 million is the most; take a wider spacing or a smaller box.</source>
            <translation>Das Abstandsgitter hätte bei einer Weite von %2 mm %1 Millionen Punkte, höchstens %3 Millionen sind möglich; eine größere Weite oder einen kleineren Kasten nehmen.</translation>
        </message>
        <message>
            <source>The distance grid's spacing is %1 mm; give a finite number above 0.</source>
            <translation>Die Weite des Abstandsgitters ist %1 mm; eine endliche Zahl über 0 angeben.</translation>
        </message>
        <message>
            <source>The box for the distance grid is empty or not finite; give a box around the layout.</source>
            <translation>Der Kasten für das Abstandsgitter ist leer oder nicht endlich; einen Kasten um das Layout angeben.</translation>
        </message>
        <message>
            <source>The surface has no faces, so nothing can be near it.</source>
            <translation>Die Oberfläche hat keine Flächen, also kann ihr nichts nahe sein.</translation>
        </message>
        <message>
            <source>A face of the surface names vertex %1, but there are %2 vertices.</source>
            <translation>Eine Fläche der Oberfläche nennt Eckpunkt %1, es gibt aber %2 Eckpunkte.</translation>
        </message>
        <message>
            <source>A vertex of the surface has a coordinate that is not a finite number.</source>
            <translation>Ein Eckpunkt der Oberfläche hat eine Koordinate, die keine endliche Zahl ist.</translation>
        </message>
        <message>
            <source>The sparse solver ran out of memory while %1 %2 equations: close other programs, or take a coarser mesh.</source>
            <translation>Dem Gleichungslöser ging beim %1 von %2 Gleichungen der Speicher aus: andere Programme schließen oder ein gröberes Netz nehmen.</translation>
        </message>
        <message>
            <source>The sparse solver stopped while %1 %2 equations: they are more than it can number; take a coarser mesh.</source>
            <translation>Der Gleichungslöser hielt beim %1 von %2 Gleichungen an: Es sind mehr, als er nummerieren kann; ein gröberes Netz nehmen.</translation>
        </message>
        <message>
            <source>The sparse solver failed while %1 %2 equations (CHOLMOD status %3): the fault is in the program or its libraries, not in the plan; report it with the plan.</source>
            <translation>Der Gleichungslöser scheiterte beim %1 von %2 Gleichungen (CHOLMOD-Status %3): Der Fehler liegt im Programm oder in seinen Bibliotheken, nicht im Plan; mit dem Plan melden.</translation>
        </message>
        <message>
            <source>A tissue layer with a Young's modulus of %1 kPa cannot carry pressure; give a value above 0 kPa.</source>
            <translation>Eine Gewebeschicht mit einem E-Modul von %1 kPa trägt keinen Druck; einen Wert über 0 kPa angeben.</translation>
        </message>
        <message>
            <source>A Poisson ratio of %1 is outside 0 to 0.5; give a tissue layer one inside.</source>
            <translation>Eine Querkontraktionszahl von %1 liegt außerhalb von 0 bis 0,5; der Gewebeschicht eine darin geben.</translation>
        </message>
        <message>
            <source>A tissue layer has %1 stiffness factors for %2 places, or one that is not above 0; give one above 0 a place, or none.</source>
            <translation>Eine Gewebeschicht hat %1 Steifigkeitsfaktoren für %2 Stellen oder einen, der nicht über 0 liegt; jeder Stelle einen über 0 geben oder gar keinen.</translation>
        </message>
        <message>
            <source>A tissue depth of %1 mm is not a layer; give values above 0 mm.</source>
            <translation>Eine Gewebetiefe von %1 mm ist keine Schicht; Werte über 0 mm angeben.</translation>
        </message>
        <message>
            <source>analysing</source>
            <translation>Analysieren</translation>
        </message>
        <message>
            <source>factoring</source>
            <translation>Faktorisieren</translation>
        </message>
        <message>
            <source>solving</source>
            <translation>Lösen</translation>
        </message>
        <message>
            <source>inlet '%1' at %2 kPa, %3 mL</source>
            <translation>Einlass „%1“ bei %2 kPa, %3 mL</translation>
        </message>
        <message>
            <source>No equilibrium was found for the layout closed round the body and not inflated: correct how it fits. %1</source>
            <translation>Für das um den Körper geschlossene, nicht gefüllte Layout wurde kein Gleichgewicht gefunden: seinen Sitz berichtigen. %1</translation>
        </message>
        <message>
            <source>No equilibrium was found for the layout closed round the body and not inflated: check that the closing length fits the girth.</source>
            <translation>Für das um den Körper geschlossene, nicht gefüllte Layout wurde kein Gleichgewicht gefunden: prüfen, ob die Schließlänge zum Umfang passt.</translation>
        </message>
        <message>
            <source>No equilibrium was found beyond %1 % of the asked inflation; the last one that converged has %2: ask for less, or use a finer mesh.</source>
            <translation>Über %1 % der verlangten Füllung hinaus wurde kein Gleichgewicht gefunden; das letzte konvergierte hat %2: weniger verlangen oder ein feineres Netz nehmen.</translation>
        </message>
        <message>
            <source>No equilibrium was found beyond %1 % of the asked inflation; the last one that converged has %2: ask for less, and first correct how it fits. %3</source>
            <translation>Über %1 % der verlangten Füllung hinaus wurde kein Gleichgewicht gefunden; das letzte konvergierte hat %2: weniger verlangen und zuerst den Sitz berichtigen. %3</translation>
        </message>
        <message>
            <source>The coupled tissue and the sheet did not fit together within %1 % of the deepest place in %2 passes; take the foundation model.</source>
            <translation>Gekoppeltes Gewebe und Lage passten in %2 Durchgängen nicht bis auf %1 % der tiefsten Stelle zusammen; die elastische Bettung nehmen.</translation>
        </message>
        <message>
            <source>The coupled tissue and the sheet did not fit together within %1 % of the deepest place in %2 passes; take a finer mesh, or the foundation model.</source>
            <translation>Gekoppeltes Gewebe und Lage passten in %2 Durchgängen nicht bis auf %1 % der tiefsten Stelle zusammen; ein feineres Netz oder die elastische Bettung nehmen.</translation>
        </message>
        <message>
            <source>Cancelled before the target.</source>
            <translation>Vor dem Ziel abgebrochen.</translation>
        </message>
        <message>
            <source>Closed round the body and not inflated, a sheet is stretched beyond what its material is known for: give the layout a longer closing length.</source>
            <translation>Um den Körper geschlossen und nicht gefüllt ist eine Lage weiter gedehnt, als ihr Material bekannt ist: dem Layout eine größere Schließlänge geben.</translation>
        </message>
        <message>
            <source>The solver stopped after %1 factorisations, which is as far as it goes.</source>
            <translation>Die Rechnung hielt nach %1 Faktorisierungen an; weiter geht sie nicht.</translation>
        </message>
        <message>
            <source>The start shape has %1 points for a flat mesh of %2: wrap this same mesh before inflating it.</source>
            <translation>Die Anfangsform hat %1 Punkte für ein flaches Netz von %2: eben dieses Netz anlegen, bevor es gefüllt wird.</translation>
        </message>
        <message>
            <source>Tissue stiffness is given for %1 of %2 points: give one for each.</source>
            <translation>Die Steifigkeit des Gewebes ist für %1 von %2 Punkten angegeben: für jeden eine angeben.</translation>
        </message>
        <message>
            <source>The tissue's depth is given for %1 of %2 points: give one for each.</source>
            <translation>Die Tiefe des Gewebes ist für %1 von %2 Punkten angegeben: für jeden eine angeben.</translation>
        </message>
        <message>
            <source>There are %1 chamber groups but %2 inflation targets: give each inlet one.</source>
            <translation>Es gibt %1 Kammergruppen, aber %2 Füllziele: jedem Einlass eines geben.</translation>
        </message>
        <message>
            <source>The air pushed in is negative or not a number, or there is no dead volume: give the volume pushed (0 or more) and what the tubing holds (above 0).</source>
            <translation>Die eingedrückte Luft ist negativ oder keine Zahl, oder das Totvolumen fehlt: das eingedrückte Volumen (0 oder mehr) und den Inhalt des Schlauchs (über 0) angeben.</translation>
        </message>
        <message>
            <source>An inflation target is negative or not a number: give a pressure or volume of 0 or more.</source>
            <translation>Ein Füllziel ist negativ oder keine Zahl: einen Druck oder ein Volumen von 0 oder mehr angeben.</translation>
        </message>
        <message>
            <source>The inflation has no waypoint: give at least one.</source>
            <translation>Die Füllung hat keinen Wegpunkt: mindestens einen angeben.</translation>
        </message>
        <message>
            <source>Inlet '%1' changes between pressure, volume and pushed air on its way: keep to one.</source>
            <translation>Einlass „%1“ wechselt unterwegs zwischen Druck, Volumen und eingedrückter Luft: bei einem bleiben.</translation>
        </message>
        <message>
            <source>The shape that was found is impossible: %1 Nothing of it is shown; correct how it fits. %2</source>
            <translation>Die gefundene Form kann nicht sein: %1 Nichts davon wird gezeigt; den Sitz berichtigen. %2</translation>
        </message>
        <message>
            <source>The shape that was found is impossible: %1 Nothing of it is shown; take a finer mesh, or sheets and a closing length that press less on each other.</source>
            <translation>Die gefundene Form kann nicht sein: %1 Nichts davon wird gezeigt; ein feineres Netz nehmen oder Lagen und eine Schließlänge, die weniger aufeinander drücken.</translation>
        </message>
        <message>
            <source>the chambers of inlet '%1' hold %2, less than nothing.</source>
            <translation>die Kammern von Einlass „%1“ enthalten %2, weniger als nichts.</translation>
        </message>
        <message>
            <source>chamber '%1' holds %2, less than nothing.</source>
            <translation>Kammer „%1“ enthält %2, weniger als nichts.</translation>
        </message>
        <message>
            <source>the sheets lie %1 % of the thinner one's thickness through one another.</source>
            <translation>die Lagen liegen um %1 % der Dicke der dünneren ineinander.</translation>
        </message>
        <message>
            <source>of %1 of air closed in at inlet '%2' there is now %3.</source>
            <translation>von %1 an Einlass „%2“ eingeschlossener Luft sind %3 da.</translation>
        </message>
        <message>
            <source>ordering</source>
            <translation>Ordnen</translation>
        </message>
        <message>
            <source>%1 is not read as a drawing: save it as plain SVG or as ASCII DXF.</source>
            <translation>%1 wird nicht als Zeichnung gelesen: als einfaches SVG oder als ASCII-DXF speichern.</translation>
        </message>
        <message>
            <source>%1 is empty (0 bytes); save the drawing again.</source>
            <translation>%1 ist leer (0 Bytes); die Zeichnung neu speichern.</translation>
        </message>
        <message>
            <source>%1 ends at line %2 without EOF, so it is cut short; save it again.</source>
            <translation>%1 endet in Zeile %2 ohne EOF, ist also abgeschnitten; neu speichern.</translation>
        </message>
        <message>
            <source>%1 has %2 at line %3, where a group code from 0 to 1071 belongs; save it as ASCII DXF again.</source>
            <translation>%1 hat in Zeile %3 %2, wo ein Gruppencode von 0 bis 1071 hingehört; neu als ASCII-DXF speichern.</translation>
        </message>
        <message>
            <source>%1 has something outside its sections at line %2; save it as ASCII DXF again.</source>
            <translation>%1 hat in Zeile %2 etwas außerhalb seiner Abschnitte; neu als ASCII-DXF speichern.</translation>
        </message>
        <message>
            <source>%1 is larger than 16 MiB; save only the layout, without pictures.</source>
            <translation>%1 ist größer als 16 MiB; nur das Layout speichern, ohne Bilder.</translation>
        </message>
        <message>
            <source>%1 holds zero bytes, so it is not an ASCII DXF; save it as ASCII DXF.</source>
            <translation>%1 enthält Nullbytes, ist also kein ASCII-DXF; als ASCII-DXF speichern.</translation>
        </message>
        <message>
            <source>%1 has more than 100 000 entities, blocks put in counted; simplify it.</source>
            <translation>%1 hat mehr als 100 000 Elemente, eingesetzte Blöcke mitgezählt; vereinfachen.</translation>
        </message>
        <message>
            <source>%1 comes to more than 64 MiB of text, blocks put in counted; simplify it.</source>
            <translation>%1 kommt auf mehr als 64 MiB Text, eingesetzte Blöcke mitgezählt; vereinfachen.</translation>
        </message>
        <message>
            <source>%1 has more than 40 000 points; simplify its curves.</source>
            <translation>%1 hat mehr als 40 000 Punkte; die Kurven vereinfachen.</translation>
        </message>
        <message>
            <source>%1 puts blocks into one another more than 16 deep; simplify it.</source>
            <translation>%1 setzt Blöcke mehr als 16 Ebenen tief ineinander; vereinfachen.</translation>
        </message>
        <message>
            <source>%1 gives the unit number %2 ($INSUNITS), which is not read here; say which unit it is: mm, cm, m, in, px or pt.</source>
            <translation>%1 nennt die Einheit Nummer %2 ($INSUNITS), die hier nicht gelesen wird; sagen, welche Einheit es ist: mm, cm, m, in, px oder pt.</translation>
        </message>
        <message>
            <source>%1 %2 %3; export the scan again.</source>
            <translation>%1 %2 %3; den Scan neu exportieren.</translation>
        </message>
        <message>
            <source>buffer</source>
            <translation>Puffer</translation>
        </message>
        <message>
            <source>accessor</source>
            <translation>Accessor</translation>
        </message>
        <message>
            <source>is cut short or not base64 text</source>
            <translation>ist abgeschnitten oder kein Base64-Text</translation>
        </message>
        <message>
            <source>has a place that is no text</source>
            <translation>hat einen Ort, der kein Text ist</translation>
        </message>
        <message>
            <source>is not base64 text</source>
            <translation>ist kein Base64-Text</translation>
        </message>
        <message>
            <source>lies at %1, not in the folder of the scan</source>
            <translation>liegt bei %1, nicht im Ordner des Scans</translation>
        </message>
        <message>
            <source>The mesh is compressed (%1), which is not read; switch mesh compression off in the export.</source>
            <translation>Das Netz ist komprimiert (%1), was nicht gelesen wird; die Netzkompression beim Export abschalten.</translation>
        </message>
        <message>
            <source>has no length</source>
            <translation>hat keine Länge</translation>
        </message>
        <message>
            <source>is to hold %1 bytes but there are %2</source>
            <translation>soll %1 Bytes haben, es sind aber %2</translation>
        </message>
        <message>
            <source>is not there</source>
            <translation>ist nicht vorhanden</translation>
        </message>
        <message>
            <source>is sparse, which is not read; switch sparse accessors off in the export</source>
            <translation>ist dünn besetzt (sparse), was nicht gelesen wird; beim Export abschalten</translation>
        </message>
        <message>
            <source>has a type, count or place that is not there or no whole number</source>
            <translation>hat einen Typ, eine Anzahl oder einen Ort, der fehlt oder keine ganze Zahl ist</translation>
        </message>
        <message>
            <source>has numbers of a type (%1) that is not read</source>
            <translation>hat Zahlen eines Typs (%1), der nicht gelesen wird</translation>
        </message>
        <message>
            <source>has %1 elements</source>
            <translation>hat %1 Elemente</translation>
        </message>
        <message>
            <source>buffer view</source>
            <translation>Pufferausschnitt</translation>
        </message>
        <message>
            <source>has a buffer, place or step that does not fit</source>
            <translation>hat einen Puffer, Ort oder Schritt, der nicht passt</translation>
        </message>
        <message>
            <source>reaches beyond its buffer, %1 of %2 bytes</source>
            <translation>reicht über seinen Puffer hinaus, %1 von %2 Bytes</translation>
        </message>
        <message>
            <source>does not hold points of three 4-byte numbers; quantised meshes are not read</source>
            <translation>enthält keine Punkte aus drei 4-Byte-Zahlen; quantisierte Netze werden nicht gelesen</translation>
        </message>
        <message>
            <source>holds fractions where corners are counted</source>
            <translation>enthält Brüche, wo Ecken gezählt werden</translation>
        </message>
        <message>
            <source>names vertex %1 of %2</source>
            <translation>nennt Eckpunkt %1 von %2</translation>
        </message>
        <message>
            <source>The scene cannot be read without its extension %1; switch that off in the export.</source>
            <translation>Die Szene lässt sich ohne ihre Erweiterung %1 nicht lesen; diese beim Export abschalten.</translation>
        </message>
        <message>
            <source>The scene shows no triangles; it is not a body surface.</source>
            <translation>Die Szene zeigt keine Dreiecke; sie ist keine Körperoberfläche.</translation>
        </message>
        <message>
            <source>%1 is not a list.</source>
            <translation>%1 ist keine Liste.</translation>
        </message>
        <message>
            <source>A node is named that is not there; export the scan again.</source>
            <translation>Ein genannter Knoten fehlt; den Scan neu exportieren.</translation>
        </message>
        <message>
            <source>Node %1 is missing, stands in a ring or belongs to two others; export the scan again.</source>
            <translation>Knoten %1 fehlt, steht in einem Kreis oder gehört zu zwei anderen; den Scan neu exportieren.</translation>
        </message>
        <message>
            <source>Node %1 has a transform that is not one; export the scan again.</source>
            <translation>Knoten %1 hat eine Transformation, die keine ist; den Scan neu exportieren.</translation>
        </message>
        <message>
            <source>Node %1 names no mesh; export the scan again.</source>
            <translation>Knoten %1 nennt kein Netz; den Scan neu exportieren.</translation>
        </message>
        <message>
            <source>Mesh %1 is not there or has no parts; export the scan again.</source>
            <translation>Netz %1 fehlt oder hat keine Teile; den Scan neu exportieren.</translation>
        </message>
        <message>
            <source>A part of a mesh is drawn in a way that is not known; export the scan again.</source>
            <translation>Ein Teil eines Netzes ist auf unbekannte Weise gezeichnet; den Scan neu exportieren.</translation>
        </message>
        <message>
            <source>A part of a mesh has no positions; export the scan again.</source>
            <translation>Ein Teil eines Netzes hat keine Positionen; den Scan neu exportieren.</translation>
        </message>
        <message>
            <source>The scene has more than %1 vertices; decimate it first.</source>
            <translation>Die Szene hat mehr als %1 Eckpunkte; zuerst ausdünnen.</translation>
        </message>
        <message>
            <source>%1: this is not glTF of version 2; export the scan as glTF 2.0.</source>
            <translation>%1: Das ist kein glTF der Version 2; den Scan als glTF 2.0 exportieren.</translation>
        </message>
        <message>
            <source>%1: this is no binary glTF file or it is cut short; export the scan again.</source>
            <translation>%1: Das ist keine binäre glTF-Datei, oder sie ist abgeschnitten; den Scan neu exportieren.</translation>
        </message>
        <message>
            <source>%1: this is binary glTF of version %2; only version 2 is read.</source>
            <translation>%1: Das ist binäres glTF der Version %2; gelesen wird nur Version 2.</translation>
        </message>
        <message>
            <source>%1: cut short: the file is to hold %2 bytes but has %3; copy or export it again.</source>
            <translation>%1: abgeschnitten: Die Datei soll %2 Bytes haben, hat aber %3; neu kopieren oder exportieren.</translation>
        </message>
        <message>
            <source>%1: the first part of the file is not its description; export the scan again.</source>
            <translation>%1: Der erste Teil der Datei ist nicht ihre Beschreibung; den Scan neu exportieren.</translation>
        </message>
        <message>
            <source>%1: cut short: its data is to hold %2 bytes but has %3; copy or export it again.</source>
            <translation>%1: abgeschnitten: Die Daten sollen %2 Bytes haben, haben aber %3; neu kopieren oder exportieren.</translation>
        </message>
        <message>
            <source>a PNG picture</source>
            <translation>ein PNG-Bild</translation>
        </message>
        <message>
            <source>a JPEG picture</source>
            <translation>ein JPEG-Bild</translation>
        </message>
        <message>
            <source>a GIF picture</source>
            <translation>ein GIF-Bild</translation>
        </message>
        <message>
            <source>a PDF document</source>
            <translation>ein PDF-Dokument</translation>
        </message>
        <message>
            <source>a ZIP archive</source>
            <translation>ein ZIP-Archiv</translation>
        </message>
        <message>
            <source>a gzip archive</source>
            <translation>ein gzip-Archiv</translation>
        </message>
        <message>
            <source>a binary glTF scene</source>
            <translation>eine binäre glTF-Szene</translation>
        </message>
        <message>
            <source>an XML document</source>
            <translation>ein XML-Dokument</translation>
        </message>
        <message>
            <source>an SVG drawing</source>
            <translation>eine SVG-Zeichnung</translation>
        </message>
        <message>
            <source>a web page</source>
            <translation>eine Webseite</translation>
        </message>
        <message>
            <source>a PLY mesh</source>
            <translation>ein PLY-Netz</translation>
        </message>
        <message>
            <source>an STL mesh</source>
            <translation>ein STL-Netz</translation>
        </message>
        <message>
            <source>an OBJ mesh</source>
            <translation>ein OBJ-Netz</translation>
        </message>
        <message>
            <source>binary data</source>
            <translation>eine Datei aus Binärdaten</translation>
        </message>
        <message>
            <source>%1 is %2, not what its ending says; choose the mesh file itself.</source>
            <translation>%1 ist %2, nicht was die Endung sagt; die Netzdatei selbst wählen.</translation>
        </message>
        <message>
            <source>%1 is %2, not what its ending says; rename it to end in %3.</source>
            <translation>%1 ist %2, nicht was die Endung sagt; mit der Endung %3 umbenennen.</translation>
        </message>
        <message>
            <source>%1 is not read as a body: save the surface as OBJ, STL, PLY, GLB or glTF.</source>
            <translation>%1 wird nicht als Körper gelesen: die Oberfläche als OBJ, STL, PLY, GLB oder glTF speichern.</translation>
        </message>
        <message>
            <source>%1 is empty (0 bytes); save the mesh again.</source>
            <translation>%1 ist leer (0 Bytes); das Netz neu speichern.</translation>
        </message>
        <message>
            <source>has fewer than three coordinates</source>
            <translation>hat weniger als drei Koordinaten</translation>
        </message>
        <message>
            <source>has %1 where a number belongs; write decimal points, not commas</source>
            <translation>hat %1, wo eine Zahl hingehört; Dezimalpunkte schreiben, keine Kommas</translation>
        </message>
        <message>
            <source>has %1 where a number belongs</source>
            <translation>hat %1, wo eine Zahl hingehört</translation>
        </message>
        <message>
            <source>has the coordinate %1, which is not a finite number</source>
            <translation>hat die Koordinate %1, die keine endliche Zahl ist</translation>
        </message>
        <message>
            <source>has the coordinate %1, beyond the largest that is read (1e12)</source>
            <translation>hat die Koordinate %1, jenseits der größten, die gelesen wird (1e12)</translation>
        </message>
        <message>
            <source>starts with %1, which is no OBJ statement</source>
            <translation>beginnt mit %1, was keine OBJ-Anweisung ist</translation>
        </message>
        <message>
            <source>%1: vertex %2 (line %3) %4; export the mesh again.</source>
            <translation>%1: Eckpunkt %2 (Zeile %3) %4; das Netz neu exportieren.</translation>
        </message>
        <message>
            <source>brings more than 10 million vertices; thin the mesh out</source>
            <translation>bringt mehr als 10 Millionen Eckpunkte; das Netz ausdünnen</translation>
        </message>
        <message>
            <source>has %1 where a face corner belongs</source>
            <translation>hat %1, wo eine Ecke einer Fläche hingehört</translation>
        </message>
        <message>
            <source>has a face corner with index 0; OBJ counts vertices from 1</source>
            <translation>hat eine Flächenecke mit Index 0; OBJ zählt Eckpunkte ab 1</translation>
        </message>
        <message>
            <source>has the face corner %1, which reaches before the first vertex</source>
            <translation>hat die Flächenecke %1, die vor den ersten Eckpunkt reicht</translation>
        </message>
        <message>
            <source>has a face of %1 corners; a face needs at least 3</source>
            <translation>hat eine Fläche mit %1 Ecken; eine Fläche braucht mindestens 3</translation>
        </message>
        <message>
            <source>has a face of %1 corners; at most 4096 are read</source>
            <translation>hat eine Fläche mit %1 Ecken; gelesen werden höchstens 4096</translation>
        </message>
        <message>
            <source>brings more than 10 million triangles; thin the mesh out</source>
            <translation>bringt mehr als 10 Millionen Dreiecke; das Netz ausdünnen</translation>
        </message>
        <message>
            <source>%1 holds no vertices; it is not a body surface.</source>
            <translation>%1 enthält keine Eckpunkte; es ist keine Körperoberfläche.</translation>
        </message>
        <message>
            <source>%1: line %2 names vertex %3, but the file has %4; it is damaged or cut short.</source>
            <translation>%1: Zeile %2 nennt Eckpunkt %3, die Datei hat aber %4; sie ist beschädigt oder abgeschnitten.</translation>
        </message>
        <message>
            <source>%1 holds %2 vertices but no faces; export it as a surface, not as points or lines.</source>
            <translation>%1 enthält %2 Eckpunkte, aber keine Flächen; als Oberfläche exportieren, nicht als Punkte oder Linien.</translation>
        </message>
        <message>
            <source>%1: line %2 %3.</source>
            <translation>%1: Zeile %2 %3.</translation>
        </message>
        <message>
            <source>%1 holds no face that can be cut into triangles.</source>
            <translation>%1 enthält keine Fläche, die sich in Dreiecke zerlegen lässt.</translation>
        </message>
        <message>
            <source>%1 does not begin with "ply", so it is no PLY.</source>
            <translation>%1 beginnt nicht mit „ply“, ist also kein PLY.</translation>
        </message>
        <message>
            <source>ends a header that names no format</source>
            <translation>beendet einen Kopf, der kein Format nennt</translation>
        </message>
        <message>
            <source>%1 has a PLY header without "end_header"; it is cut short or damaged.</source>
            <translation>%1 hat einen PLY-Kopf ohne „end_header“; es ist abgeschnitten oder beschädigt.</translation>
        </message>
        <message>
            <source>starts with %1, which belongs in no PLY header</source>
            <translation>beginnt mit %1, was in keinen PLY-Kopf gehört</translation>
        </message>
        <message>
            <source>names the unknown format %1</source>
            <translation>nennt das unbekannte Format %1</translation>
        </message>
        <message>
            <source>has %1 where the count of an element belongs</source>
            <translation>hat %1, wo die Anzahl eines Elements hingehört</translation>
        </message>
        <message>
            <source>has a property before any element</source>
            <translation>hat eine Eigenschaft vor jedem Element</translation>
        </message>
        <message>
            <source>has a list whose length is no integer type</source>
            <translation>hat eine Liste, deren Länge kein ganzzahliger Typ ist</translation>
        </message>
        <message>
            <source>has the unknown property type %1</source>
            <translation>hat den unbekannten Eigenschaftstyp %1</translation>
        </message>
        <message>
            <source>%1: header line %2 %3.</source>
            <translation>%1: Kopfzeile %2 %3.</translation>
        </message>
        <message>
            <source>%1 describes its vertices or faces in more than one way; export the mesh again.</source>
            <translation>%1 beschreibt seine Eckpunkte oder Flächen auf mehr als eine Weise; das Netz neu exportieren.</translation>
        </message>
        <message>
            <source>%1 holds no vertices with x, y and z; it is not a body surface.</source>
            <translation>%1 enthält keine Eckpunkte mit x, y und z; es ist keine Körperoberfläche.</translation>
        </message>
        <message>
            <source>%1 holds no faces with vertex_indices; export it as a surface of polygons.</source>
            <translation>%1 enthält keine Flächen mit vertex_indices; als Oberfläche aus Polygonen exportieren.</translation>
        </message>
        <message>
            <source>%1 says it holds %2 vertices and %3 faces; at most 10 million of each are read.</source>
            <translation>%1 sagt, es enthalte %2 Eckpunkte und %3 Flächen; gelesen werden je höchstens 10 Millionen.</translation>
        </message>
        <message>
            <source>has %1 corners; a face has 3 to %2</source>
            <translation>hat %1 Ecken; eine Fläche hat 3 bis %2</translation>
        </message>
        <message>
            <source>names vertex %1 (counted from 0), but the file has %2 vertices</source>
            <translation>nennt Eckpunkt %1 (ab 0 gezählt), die Datei hat aber %2 Eckpunkte</translation>
        </message>
        <message>
            <source>is not there or not whole: the file is cut short</source>
            <translation>fehlt oder ist nicht ganz: Die Datei ist abgeschnitten</translation>
        </message>
        <message>
            <source>%1: facet %2 %3; export the mesh again.</source>
            <translation>%1: Facette %2 %3; das Netz neu exportieren.</translation>
        </message>
        <message>
            <source>%1 holds no facets; it is not a body surface.</source>
            <translation>%1 enthält keine Facetten; es ist keine Körperoberfläche.</translation>
        </message>
        <message>
            <source>%1 is damaged: its count of facets is %2, but there is room for %3; export the mesh again.</source>
            <translation>%1 ist beschädigt: Es nennt %2 Facetten, Platz ist für %3; das Netz neu exportieren.</translation>
        </message>
        <message>
            <source>%1 is cut short: %2 of its %3 facets are there; copy or export it again.</source>
            <translation>%1 ist abgeschnitten: %2 seiner %3 Facetten sind da; neu kopieren oder exportieren.</translation>
        </message>
        <message>
            <source>%1 holds more than 10 million facets; thin the mesh out.</source>
            <translation>%1 enthält mehr als 10 Millionen Facetten; das Netz ausdünnen.</translation>
        </message>
        <message>
            <source>%1 became shorter while it was read; read it again once it is written.</source>
            <translation>%1 wurde beim Lesen kürzer; neu lesen, wenn es fertig geschrieben ist.</translation>
        </message>
        <message>
            <source>is the last whole one: the file is cut short</source>
            <translation>ist die letzte ganze: Die Datei ist abgeschnitten</translation>
        </message>
        <message>
            <source>is one of more than 10 million; thin the mesh out</source>
            <translation>ist eine von mehr als 10 Millionen; das Netz ausdünnen</translation>
        </message>
        <message>
            <source>is followed by %1 where "%2" belongs</source>
            <translation>ist gefolgt von %1, wo „%2“ hingehört</translation>
        </message>
        <message>
            <source>%1 has %2 bytes; a binary STL starts with a header of 84, so it is cut short or no STL.</source>
            <translation>%1 hat %2 Bytes; ein binäres STL beginnt mit einem Kopf von 84, also ist es abgeschnitten oder kein STL.</translation>
        </message>
        <message>
            <source>%1 is text that does not begin with "solid", so it is no STL; check its ending.</source>
            <translation>%1 ist Text, der nicht mit „solid“ beginnt, also kein STL; die Endung prüfen.</translation>
        </message>
        <message>
            <source>%1 is larger than 16 MiB; simplify the drawing or split it.</source>
            <translation>%1 ist größer als 16 MiB; die Zeichnung vereinfachen oder teilen.</translation>
        </message>
        <message>
            <source>%1 is compressed; save it as plain SVG, without compression.</source>
            <translation>%1 ist komprimiert; als einfaches SVG speichern, ohne Kompression.</translation>
        </message>
        <message>
            <source>%1 holds zero bytes, so it is not UTF-8 text; save it as plain SVG in UTF-8.</source>
            <translation>%1 enthält Nullbytes, ist also kein UTF-8-Text; als einfaches SVG in UTF-8 speichern.</translation>
        </message>
        <message>
            <source>%1 declares entities, which are not expanded; save it as plain SVG without them.</source>
            <translation>%1 vereinbart Entities, die nicht aufgelöst werden; als einfaches SVG ohne sie speichern.</translation>
        </message>
        <message>
            <source>%1 is not an SVG drawing: its first element is not svg.</source>
            <translation>%1 ist keine SVG-Zeichnung: Das erste Element ist nicht svg.</translation>
        </message>
        <message>
            <source>%1 nests its elements %2 deep; at most %3 are read, so ungroup some.</source>
            <translation>%1 schachtelt seine Elemente %2 tief; gelesen werden höchstens %3, also einige Gruppen auflösen.</translation>
        </message>
        <message>
            <source>%1 is not whole XML at line %2 (%3); it may be cut short, so save it again.</source>
            <translation>%1 ist in Zeile %2 kein ganzes XML (%3); vielleicht abgeschnitten, also neu speichern.</translation>
        </message>
        <message>
            <source>%1 has viewBox=%2; it needs four numbers, the last two above zero.</source>
            <translation>%1 hat viewBox=%2; nötig sind vier Zahlen, die letzten zwei über null.</translation>
        </message>
        <message>
            <source>%1 has a page without a size; give width and height in mm.</source>
            <translation>%1 hat eine Seite ohne Größe; Breite und Höhe in mm angeben.</translation>
        </message>
        <message>
            <source>%1 has a page whose size makes no sense; give width, height and viewBox anew.</source>
            <translation>%1 hat eine Seite, deren Größe keinen Sinn ergibt; width, height und viewBox neu angeben.</translation>
        </message>
        <message>
            <source>%1 comes to more than 64 MiB of text with its repeats and the names of its groups; simplify it.</source>
            <translation>%1 kommt mit Wiederholungen und Gruppennamen auf mehr als 64 MiB Text; vereinfachen.</translation>
        </message>
        <message>
            <source>%1 has more than 100 000 elements, repeats counted; simplify it.</source>
            <translation>%1 hat mehr als 100 000 Elemente, Wiederholungen mitgezählt; vereinfachen.</translation>
        </message>
        <message>
            <source>%1 repeats its parts inside one another more than 60 deep; simplify it.</source>
            <translation>%1 wiederholt seine Teile mehr als 60 Ebenen tief ineinander; vereinfachen.</translation>
        </message>
        <message>
            <source>%1 has a style sheet of more than %2 selectors; simplify it.</source>
            <translation>%1 hat ein Stylesheet mit mehr als %2 Selektoren; vereinfachen.</translation>
        </message>
        <message>
            <source>it carries no layout</source>
            <translation>sie führt kein Layout mit</translation>
        </message>
        <message>
            <source>The file name %1 does not say what to write: end it with .obj, .stl, .ply or .vtp.</source>
            <translation>Der Dateiname %1 sagt nicht, was zu schreiben ist: mit .obj, .stl, .ply oder .vtp enden lassen.</translation>
        </message>
        <message>
            <source>The surface has no faces; there is nothing to write.</source>
            <translation>Die Oberfläche hat keine Flächen; es gibt nichts zu schreiben.</translation>
        </message>
        <message>
            <source>A vertex of the surface is not a finite number; it is not written.</source>
            <translation>Ein Eckpunkt der Oberfläche ist keine endliche Zahl; sie wird nicht geschrieben.</translation>
        </message>
        <message>
            <source>field '%1' does not have one value an element of the surface it is written on.</source>
            <translation>Feld „%1“ hat nicht einen Wert je Element der Oberfläche, auf die es geschrieben wird.</translation>
        </message>
        <message>
            <source>the surface could not be written as a VTK file.</source>
            <translation>die Oberfläche ließ sich nicht als VTK-Datei schreiben.</translation>
        </message>
        <message>
            <source>give exactly one of name, fill, stroke and shape.</source>
            <translation>genau eines von name, fill, stroke und shape angeben.</translation>
        </message>
        <message>
            <source>part is "%1"; write outline, chamber, inset seam, channel, inlet, strap or ignore.</source>
            <translation>part ist „%1“; outline, chamber, inset seam, channel, inlet, strap oder ignore schreiben.</translation>
        </message>
        <message>
            <source>give exactly one of closing_length and stretch.</source>
            <translation>genau eines von closing_length und stretch angeben.</translation>
        </message>
        <message>
            <source>%1 has %2 points; it needs at least %3.</source>
            <translation>%1 hat %2 Punkte; nötig sind mindestens %3.</translation>
        </message>
        <message>
            <source>the drawing has more than %1 points; simplify its curves.</source>
            <translation>die Zeichnung hat mehr als %1 Punkte; ihre Kurven vereinfachen.</translation>
        </message>
        <message>
            <source>give exactly one of polygon, rectangle and ellipse.</source>
            <translation>genau eines von polygon, rectangle und ellipse angeben.</translation>
        </message>
        <message>
            <source>radii have to be above zero.</source>
            <translation>radii müssen über null liegen.</translation>
        </message>
        <message>
            <source>width and height have to be above zero.</source>
            <translation>width und height müssen über null liegen.</translation>
        </message>
        <message>
            <source>corner_radius is %1 mm; it can be at most half the smaller side, %2 mm.</source>
            <translation>corner_radius ist %1 mm; höchstens die Hälfte der kleineren Seite ist möglich, %2 mm.</translation>
        </message>
        <message>
            <source>high_mmhg lies below low_mmhg.</source>
            <translation>high_mmhg liegt unter low_mmhg.</translation>
        </message>
        <message>
            <source>named_as must hold texts of three letters or more.</source>
            <translation>named_as muss Texte von drei oder mehr Buchstaben enthalten.</translation>
        </message>
        <message>
            <source>%1 is %2 and above %3, %4; a warning comes at or below its limit.</source>
            <translation>%1 ist %2 und liegt über %3, %4; eine Warnung kommt bei ihrem Grenzwert oder darunter.</translation>
        </message>
        <message>
            <source>%1: %2 stands twice; keep one row.</source>
            <translation>%1: %2 steht doppelt da; eine Zeile behalten.</translation>
        </message>
        <message>
            <source>has no row for %1; add one.</source>
            <translation>hat keine Zeile für %1; eine hinzufügen.</translation>
        </message>
        <message>
            <source>burn thresholds must stand in order of rising minutes.</source>
            <translation>Verbrennungsschwellen müssen nach steigenden Minuten geordnet sein.</translation>
        </message>
        <message>
            <source>burn holds no threshold; give at least one.</source>
            <translation>burn enthält keine Schwelle; mindestens eine angeben.</translation>
        </message>
        <message>
            <source>The row %1 of the limit set '%2' is taken from %3, which is no limit for held pressure: %4. Take the row out or base it on something else.</source>
            <translation>Die Zeile %1 der Grenzwerte „%2“ stammt aus %3, was kein Grenzwert für gehaltenen Druck ist: %4. Die Zeile herausnehmen oder anders begründen.</translation>
        </message>
        <message>
            <source>The limit set '%1' is laxer than the program's: %2. Make it as strict or stricter, or write the reason into the plan as limits.override_reason.</source>
            <translation>Die Grenzwerte „%1“ sind laxer als die des Programms: %2. Gleich streng oder strenger machen oder den Grund in den Plan schreiben (limits.override_reason).</translation>
        </message>
        <message>
            <source>%1 (and %2 more)</source>
            <translation>%1 (und %2 weitere)</translation>
        </message>
        <message>
            <source>The plan gives a reason to override limits but its set '%1' is nowhere laxer than the program's: take the reason out.</source>
            <translation>Der Plan nennt einen Grund, Grenzwerte zu ersetzen, aber seine Grenzwerte „%1“ sind nirgends laxer als die des Programms: den Grund herausnehmen.</translation>
        </message>
        <message>
            <source>has no steps; give at least one</source>
            <translation>hat keine Stufen; mindestens eine angeben</translation>
        </message>
        <message>
            <source>asks for level %1; levels lie between 0 and 1</source>
            <translation>verlangt die Stufe %1; Stufen liegen zwischen 0 und 1</translation>
        </message>
        <message>
            <source>has a time below 0; give 0 or more</source>
            <translation>hat eine Zeit unter 0; 0 oder mehr angeben</translation>
        </message>
        <message>
            <source>reaches level %1 at most, so what is solved never happens; ask for less and let a step reach level 1</source>
            <translation>erreicht höchstens die Stufe %1, also kommt das Gerechnete nie vor; weniger verlangen und eine Stufe 1 erreichen lassen</translation>
        </message>
        <message>
            <source>takes %1 a round; give 0.1 s or more</source>
            <translation>braucht %1 für eine Runde; 0,1 s oder mehr angeben</translation>
        </message>
        <message>
            <source>runs %1 rounds in a session; give 20000 or fewer</source>
            <translation>läuft %1 Runden in einer Sitzung; 20000 oder weniger angeben</translation>
        </message>
        <message>
            <source>A coefficient of the %1 law is not a finite number; give it in kPa.</source>
            <translation>Ein Koeffizient des Gesetzes %1 ist keine endliche Zahl; in kPa angeben.</translation>
        </message>
        <message>
            <source>The Ogden law has no terms; give at least one (mu, alpha).</source>
            <translation>Das Ogden-Gesetz hat keine Terme; mindestens einen angeben (mu, alpha).</translation>
        </message>
        <message>
            <source>An exponent alpha of the Ogden law is zero or not finite; give another number.</source>
            <translation>Ein Exponent alpha des Ogden-Gesetzes ist null oder nicht endlich; eine andere Zahl angeben.</translation>
        </message>
        <message>
            <source>The %1 law has an initial shear modulus of %2 kPa; it must be above zero, so check its coefficients.</source>
            <translation>Das Gesetz %1 hat einen Anfangsschubmodul von %2 kPa; er muss über null liegen, also die Koeffizienten prüfen.</translation>
        </message>
        <message>
            <source>The posture is "relaxed" but the tissue row is "%1": choose the relaxed row of that site, or leave the posture out.</source>
            <translation>Die Haltung ist „relaxed“, die Gewebezeile aber „%1“: die entspannte Zeile dieser Stelle wählen oder die Haltung weglassen.</translation>
        </message>
        <message>
            <source>%1 must be a list of terms { mu_kpa, alpha }.</source>
            <translation>%1 muss eine Liste von Termen { mu_kpa, alpha } sein.</translation>
        </message>
        <message>
            <source>%1 must hold exactly one of neo-hookean, mooney-rivlin, yeoh or ogden.</source>
            <translation>%1 muss genau eines von neo-hookean, mooney-rivlin, yeoh oder ogden enthalten.</translation>
        </message>
        <message>
            <source>%1 runs from %2 down to %3; write the smaller number first.</source>
            <translation>%1 läuft von %2 abwärts bis %3; die kleinere Zahl zuerst schreiben.</translation>
        </message>
        <message>
            <source>%1: the hardness "%2" stands twice; keep one row.</source>
            <translation>%1: Die Härte „%2“ steht doppelt da; eine Zeile behalten.</translation>
        </message>
        <message>
            <source>has no grades; give at least one.</source>
            <translation>hat keine Sorten; mindestens eine angeben.</translation>
        </message>
        <message>
            <source>No silicone of hardness "%1" is in the table; known: %2.</source>
            <translation>Ein Silikon der Härte „%1“ steht nicht in der Tabelle; bekannt: %2.</translation>
        </message>
        <message>
            <source>Shore A %1 is outside 10 to 70, where the hardness relation is used; give a measured law instead.</source>
            <translation>Shore A %1 liegt außerhalb von 10 bis 70, wo die Härtebeziehung gilt; stattdessen ein gemessenes Gesetz angeben.</translation>
        </message>
        <message>
            <source>Tissue with a Young's modulus of %1 kPa cannot carry pressure; give a value above 0 kPa.</source>
            <translation>Gewebe mit einem E-Modul von %1 kPa trägt keinen Druck; einen Wert über 0 kPa angeben.</translation>
        </message>
        <message>
            <source>A Poisson ratio of %1 is outside 0 to 0.49, where the tissue layer formula holds; give one inside.</source>
            <translation>Eine Querkontraktionszahl von %1 liegt außerhalb von 0 bis 0,49, wo die Formel der Gewebeschicht gilt; eine darin angeben.</translation>
        </message>
        <message>
            <source>A tissue depth of %1 mm is not a layer; give a value above 0 mm.</source>
            <translation>Eine Gewebetiefe von %1 mm ist keine Schicht; einen Wert über 0 mm angeben.</translation>
        </message>
        <message>
            <source>%1: the name "%2" stands twice; rename one.</source>
            <translation>%1: Der Name „%2“ steht doppelt da; einen umbenennen.</translation>
        </message>
        <message>
            <source>has no sites; give at least one.</source>
            <translation>hat keine Stellen; mindestens eine angeben.</translation>
        </message>
        <message>
            <source>No tissue site is called "%1"; known: %2.</source>
            <translation>Keine Gewebestelle heißt „%1“; bekannt: %2.</translation>
        </message>
        <message>
            <source>%1 (and %2 more in this layout)</source>
            <translation>%1 (und %2 weitere in diesem Layout)</translation>
        </message>
        <message>
            <source>the plan gives %1 tissue depths but the checked body has %2 vertices: give one for the whole body, one a vertex, or none.</source>
            <translation>der Plan gibt %1 Gewebetiefen an, der geprüfte Körper hat aber %2 Eckpunkte: eine für den ganzen Körper angeben, eine je Eckpunkt oder keine.</translation>
        </message>
        <message>
            <source>supply, inlet_relief_kpa names the inlet '%1', which the layout does not have: give it the name of one that is there.</source>
            <translation>supply, inlet_relief_kpa nennt den Einlass „%1“, den das Layout nicht hat: den Namen eines vorhandenen angeben.</translation>
        </message>
        <message>
            <source>inlet '%1' is given no pressure or volume: add it to the plan's inflation.</source>
            <translation>Einlass „%1“ hat weder Druck noch Volumen: zur Füllung des Plans hinzufügen.</translation>
        </message>
        <message>
            <source>%1 at (%2, %3, %4) mm lies %5 mm off the skin: give it in the body's own frame, within %6 of the skin.</source>
            <translation>%1 bei (%2; %3; %4) mm liegt %5 mm neben der Haut: in den Koordinaten des Körpers angeben, höchstens %6 von der Haut.</translation>
        </message>
        <message>
            <source>the plan calls the body '%1' a left one, its label a right one: correct body.side, or mirror the scan.</source>
            <translation>der Plan nennt den Körper „%1“ einen linken, sein Beiblatt einen rechten: body.side korrigieren oder den Scan spiegeln.</translation>
        </message>
        <message>
            <source>the plan calls the body '%1' a right one, its label a left one: correct body.side, or mirror the scan.</source>
            <translation>der Plan nennt den Körper „%1“ einen rechten, sein Beiblatt einen linken: body.side korrigieren oder den Scan spiegeln.</translation>
        </message>
        <message>
            <source>the front of the body '%1' points along its axis: give the direction that the person's front faces.</source>
            <translation>die Vorderseite des Körpers „%1“ zeigt längs seiner Achse: die Richtung angeben, in die die Person nach vorn schaut.</translation>
        </message>
        <message>
            <source>the plan's front of the body '%1' lies %2 degrees from that of its label: correct body.front.</source>
            <translation>die Vorderseite des Körpers „%1“ im Plan liegt %2 Grad neben der seines Beiblatts: body.front korrigieren.</translation>
        </message>
        <message>
            <source>the site '%1'</source>
            <translation>die Stelle „%1“</translation>
        </message>
        <message>
            <source>the landmark '%1'</source>
            <translation>die Landmarke „%1“</translation>
        </message>
        <message>
            <source>the part '%1' is not known; it may be %2.</source>
            <translation>der Körperteil „%1“ ist nicht bekannt; möglich ist %2.</translation>
        </message>
        <message>
            <source>point it from hand or foot to trunk</source>
            <translation>von Hand oder Fuß zum Rumpf zeigen lassen</translation>
        </message>
        <message>
            <source>point it to the person's front</source>
            <translation>zur Vorderseite der Person zeigen lassen</translation>
        </message>
        <message>
            <source>%1 was written for a mesh of %2 triangles, but %3 has %4: write mesh and label anew, or delete the label and say in the plan what it said.</source>
            <translation>%1 wurde für ein Netz von %2 Dreiecken geschrieben, %3 hat aber %4: Netz und Beiblatt neu schreiben, oder das Beiblatt löschen und im Plan sagen, was darin stand.</translation>
        </message>
        <message>
            <source>to_mm must be larger than from_mm.</source>
            <translation>to_mm muss größer sein als from_mm.</translation>
        </message>
        <message>
            <source>percentile needs a sex: give male or female.</source>
            <translation>percentile braucht ein Geschlecht: male oder female angeben.</translation>
        </message>
        <message>
            <source>give either a file or a form.</source>
            <translation>entweder eine Datei (file) oder eine Form (form) angeben.</translation>
        </message>
        <message>
            <source>site is missing; a body from a file needs one, e.g. "forearm relaxed".</source>
            <translation>site fehlt; ein Körper aus einer Datei braucht eine Gewebestelle, z. B. „forearm relaxed“.</translation>
        </message>
        <message>
            <source>give either point_mm or station_mm.</source>
            <translation>entweder point_mm oder station_mm angeben.</translation>
        </message>
        <message>
            <source>seam_edge_mm is %1 mm, longer than edge_mm, %2 mm; edges beside seams are the shorter ones.</source>
            <translation>seam_edge_mm ist %1 mm, länger als edge_mm, %2 mm; neben Nähten sind die Kanten kürzer.</translation>
        </message>
        <message>
            <source>seam_band_mm says how far seam_edge_mm reaches; give seam_edge_mm too.</source>
            <translation>seam_band_mm sagt, wie weit seam_edge_mm reicht; auch seam_edge_mm angeben.</translation>
        </message>
        <message>
            <source>give exactly one of pressure_kpa, pressure_mmhg, volume_ml and pushed_air_ml.</source>
            <translation>genau eines von pressure_kpa, pressure_mmhg, volume_ml und pushed_air_ml angeben.</translation>
        </message>
        <message>
            <source>pushed_air_ml and dead_ml (what tubing and fittings hold) go together.</source>
            <translation>pushed_air_ml und dead_ml (was Schlauch und Anschlüsse enthalten) gehören zusammen.</translation>
        </message>
        <message>
            <source>inflation names the inlet '%1', which the layout does not have; it has %2.</source>
            <translation>inflation nennt den Einlass „%1“, den das Layout nicht hat; es hat %2.</translation>
        </message>
        <message>
            <source>inflation names the inlet '%1' twice; keep one.</source>
            <translation>inflation nennt den Einlass „%1“ doppelt; einen behalten.</translation>
        </message>
        <message>
            <source>off_s stands without hold_s; give both, or neither for one hold from start to end.</source>
            <translation>off_s steht ohne hold_s da; beide angeben, oder keines für durchgehendes Halten.</translation>
        </message>
        <message>
            <source>inflation gives inlet '%1' steps over time but the plan has no session; say how many minutes it lasts.</source>
            <translation>inflation gibt Einlass „%1“ Stufen über der Zeit, aber der Plan hat keine Sitzung; sagen, wie viele Minuten sie dauert.</translation>
        </message>
        <message>
            <source>the programme of inlet '%1' %2.</source>
            <translation>das Programm von Einlass „%1“ %2.</translation>
        </message>
        <message>
            <source>near names the landmark '%1'; the plan has %2.</source>
            <translation>near nennt die Landmarke „%1“; der Plan hat %2.</translation>
        </message>
        <message>
            <source>stations_mm must grow: the smaller one first.</source>
            <translation>stations_mm müssen wachsen: die kleinere zuerst.</translation>
        </message>
        <message>
            <source>angles_deg must grow by at most 360, e.g. [330, 390].</source>
            <translation>angles_deg müssen wachsen, um höchstens 360, z. B. [330, 390].</translation>
        </message>
        <message>
            <source>says nothing: give tissue_depth_mm or stiffness_factor.</source>
            <translation>sagt nichts: tissue_depth_mm oder stiffness_factor angeben.</translation>
        </message>
        <message>
            <source>at_mm must grow from one distance to the next.</source>
            <translation>at_mm muss von einem Abstand zum nächsten wachsen.</translation>
        </message>
        <message>
            <source>names tissue_depth_mm or stiffness_factor where the one before does not, or the other way round; all distances must name the same.</source>
            <translation>nennt tissue_depth_mm oder stiffness_factor, der Abstand davor aber nicht, oder umgekehrt; alle Abstände müssen dasselbe nennen.</translation>
        </message>
        <message>
            <source>by_distance needs two distances or more.</source>
            <translation>by_distance braucht zwei oder mehr Abstände.</translation>
        </message>
        <message>
            <source>give radius_mm or by_distance, not both: the last distance is the radius.</source>
            <translation>radius_mm oder by_distance angeben, nicht beides: Der letzte Abstand ist der Radius.</translation>
        </message>
        <message>
            <source>give exactly one of near, point_mm and stations_mm.</source>
            <translation>genau eines von near, point_mm und stations_mm angeben.</translation>
        </message>
        <message>
            <source>by_distance needs a region near a point, not between stations.</source>
            <translation>by_distance braucht einen Bereich um einen Punkt, nicht zwischen Stationen.</translation>
        </message>
        <message>
            <source>give by_distance, or tissue_depth_mm and stiffness_factor, not both.</source>
            <translation>by_distance angeben oder tissue_depth_mm und stiffness_factor, nicht beides.</translation>
        </message>
        <message>
            <source>says nothing: give no_go, tissue_depth_mm, stiffness_factor or by_distance.</source>
            <translation>sagt nichts: no_go, tissue_depth_mm, stiffness_factor oder by_distance angeben.</translation>
        </message>
        <message>
            <source>%1 has no length; %2.</source>
            <translation>%1 hat keine Länge; %2.</translation>
        </message>
        <message>
            <source>advice</source>
            <translation>Vorschläge</translation>
        </message>
        <message>
            <source>ceiling</source>
            <translation>Obergrenze</translation>
        </message>
        <message>
            <source>inputs: each needs the name of its input.</source>
            <translation>inputs: Jeder braucht den Namen seiner Eingabe.</translation>
        </message>
        <message>
            <source>input is none of the list of inputs.</source>
            <translation>input steht nicht in der Liste der Eingaben.</translation>
        </message>
        <message>
            <source>was made from other inputs or by another version of the program, so it is stale; run wrapgauge spread again.</source>
            <translation>wurde aus anderen Eingaben oder mit einer anderen Programmversion gemacht, ist also veraltet; wrapgauge spread erneut ausführen.</translation>
        </message>
        <message>
            <source>low is %1 and high %2; low must be the smaller one.</source>
            <translation>low ist %1 und high %2; low muss der kleinere Wert sein.</translation>
        </message>
        <message>
            <source>a log scale needs low above 0, and it is %1.</source>
            <translation>eine logarithmische Skala braucht low über 0, es ist %1.</translation>
        </message>
        <message>
            <source>the input '%1' stands twice; keep one.</source>
            <translation>die Eingabe „%1“ steht doppelt da; eine behalten.</translation>
        </message>
        <message>
            <source>inputs is empty; name at least one.</source>
            <translation>inputs ist leer; mindestens eine Eingabe nennen.</translation>
        </message>
        <message>
            <source>no folder for the runs of a search can be made (%1): free some room for temporary files.</source>
            <translation>für die Läufe einer Suche lässt sich kein Ordner anlegen (%1): Platz für temporäre Dateien schaffen.</translation>
        </message>
        <message>
            <source>the part '%1' has a left and a right: say which it is, then mark.</source>
            <translation>den Körperteil „%1“ gibt es links und rechts: sagen, welcher es ist, dann markieren.</translation>
        </message>
        <message>
            <source>this body has no standard places to mark: add its sites by hand.</source>
            <translation>dieser Körper hat keine Standardstellen zum Markieren: seine Stellen von Hand hinzufügen.</translation>
        </message>
        <message>
            <source>plan '%1' was saved from another window or program since it was opened here, so it was not overwritten: save under another name, or open it again.</source>
            <translation>der Plan „%1“ wurde, seit er hier offen ist, aus einem anderen Fenster oder Programm gespeichert und deshalb nicht überschrieben: unter anderem Namen speichern oder neu öffnen.</translation>
        </message>
        <message>
            <source>a plan file holds a body and a layout, and one of them is still missing: add it, then save.</source>
            <translation>eine Plandatei enthält Körper und Layout, eines davon fehlt noch: hinzufügen, dann speichern.</translation>
        </message>
        <message>
            <source>a note is written from the final estimate: make that first.</source>
            <translation>ein Bericht wird aus der endgültigen Schätzung geschrieben: zuerst diese machen.</translation>
        </message>
        <message>
            <source>the plan has changed since the estimate (%1): estimate again first.</source>
            <translation>die Schätzung ist älter als die letzte Änderung (%1): zuerst neu schätzen.</translation>
        </message>
        <message>
            <source>a note names the plan file it was made from: save the plan first.</source>
            <translation>ein Bericht nennt die Plandatei, aus der er gemacht ist: zuerst den Plan speichern.</translation>
        </message>
        <message>
            <source>the plan file was changed by someone else since: open it again.</source>
            <translation>die Plandatei wurde inzwischen von anderer Seite geändert: neu öffnen.</translation>
        </message>
        <message>
            <source>the recovery file is not one that this version of the program wrote.</source>
            <translation>die Wiederherstellungsdatei stammt nicht von dieser Programmversion.</translation>
        </message>
        <message>
            <source>folder '%1' is there already: name one that is not.</source>
            <translation>den Ordner „%1“ gibt es schon: einen nennen, den es nicht gibt.</translation>
        </message>
        <message>
            <source>folder '%1' could not be made (%2): choose another place.</source>
            <translation>der Ordner „%1“ ließ sich nicht anlegen (%2): einen anderen Ort wählen.</translation>
        </message>
        <message>
            <source>wanted pressure '%1' is no pressure in kPa: write for example 2.5, or leave it empty.</source>
            <translation>der gewünschte Druck „%1“ ist kein Druck in kPa: zum Beispiel 2,5 schreiben oder leer lassen.</translation>
        </message>
        <message>
            <source>no wanted pressure is given: write one beside a chamber.</source>
            <translation>kein gewünschter Druck ist angegeben: neben eine Kammer einen schreiben.</translation>
        </message>
        <message>
            <source>file '%1' is none of these: plan or layout (.json), mesh (.obj, .stl, .ply, .glb, .gltf), drawing (.svg, .dxf).</source>
            <translation>die Datei „%1“ ist nichts davon: Plan oder Layout (.json), Netz (.obj, .stl, .ply, .glb, .gltf), Zeichnung (.svg, .dxf).</translation>
        </message>
        <message>
            <source>note '%1' ends neither in .pdf, .html nor .md: choose one.</source>
            <translation>der Bericht „%1“ endet weder auf .pdf noch auf .html oder .md: eines davon wählen.</translation>
        </message>
        <message>
            <source>name '%1' is empty or used already: choose another one.</source>
            <translation>der Name „%1“ ist leer oder schon vergeben: einen anderen wählen.</translation>
        </message>
        <message>
            <source>there is no result of the plan as it stands: estimate first.</source>
            <translation>zum Plan, wie er steht, gibt es kein Ergebnis: zuerst schätzen.</translation>
        </message>
        <message>
            <source>there is no filling to save: estimate first.</source>
            <translation>es gibt keine Füllung zu speichern: zuerst schätzen.</translation>
        </message>
        <message>
            <source>folder '%1' holds no demo files.</source>
            <translation>der Ordner „%1“ enthält keine Beispieldateien.</translation>
        </message>
        <message>
            <source>folder '%1' could not be made: %2.</source>
            <translation>der Ordner „%1“ ließ sich nicht anlegen: %2.</translation>
        </message>
        <message>
            <source>'%1' could not be deleted: see who else has it open.</source>
            <translation>„%1“ ließ sich nicht löschen: nachsehen, wo es noch offen ist.</translation>
        </message>
        <message>
            <source>The body has no single closed section at %1, where "%2" is measured (the body is %3 long): choose another --station, or give --%2.</source>
            <translation>Der Körper hat bei %1, wo „%2“ gemessen wird, keinen einzelnen geschlossenen Schnitt (der Körper ist %3 lang): eine andere Station wählen oder „%2“ selbst angeben.</translation>
        </message>
        <message>
            <source>WRAPGAUGE_RESOURCES is '%1', where no limits.json lies: set it to the program's resources folder or unset it.</source>
            <translation>WRAPGAUGE_RESOURCES ist „%1“, wo keine limits.json liegt: auf den Ordner „resources“ des Programms setzen oder die Variable entfernen.</translation>
        </message>
        <message>
            <source>the program's tables (limits.json and others) were not found: set WRAPGAUGE_RESOURCES to their folder.</source>
            <translation>die Tabellen des Programms (limits.json und andere) wurden nicht gefunden: WRAPGAUGE_RESOURCES auf ihren Ordner setzen.</translation>
        </message>
        <message>
            <source>the note's PDF could not be written: no memory.</source>
            <translation>das PDF des Berichts ließ sich nicht schreiben: kein Speicher.</translation>
        </message>
        <message>
            <source>the note's PDF could not be drawn.</source>
            <translation>das PDF des Berichts ließ sich nicht zeichnen.</translation>
        </message>
        <message>
            <source>the note's PDF could not be given its properties: it is not as Qt writes it.</source>
            <translation>dem PDF des Berichts ließen sich seine Eigenschaften nicht geben: Es ist nicht, wie Qt es schreibt.</translation>
        </message>
        <message>
            <source>the note's PDF could not be given its properties: it has no pages that were found.</source>
            <translation>dem PDF des Berichts ließen sich seine Eigenschaften nicht geben: Seiten wurden darin nicht gefunden.</translation>
        </message>
        <message>
            <source>no font is installed, so pictures would have no words: install one, e.g. fonts-dejavu-core.</source>
            <translation>keine Schrift ist installiert, Bilder hätten also keine Wörter: eine installieren, z. B. fonts-dejavu-core.</translation>
        </message>
        <message>
            <source>the picture could not be drawn: no memory or no PNG support.</source>
            <translation>das Bild ließ sich nicht zeichnen: kein Speicher oder keine PNG-Unterstützung.</translation>
        </message>
        <message>
            <source>the template's pages could not be laid out as PDF.</source>
            <translation>die Seiten der Schablone ließen sich nicht als PDF setzen.</translation>
        </message>
        <message>
            <source>the percentile is %1; the table of body measures goes from 1 to 99.</source>
            <translation>das Perzentil ist %1; die Tabelle der Körpermaße geht von 1 bis 99.</translation>
        </message>
        <message>
            <source>there is no body measure '%1' in the table.</source>
            <translation>ein Körpermaß „%1“ steht nicht in der Tabelle.</translation>
        </message>
        <message>
            <source>There is no body form "%1"; there are: %2.</source>
            <translation>Eine Körperform „%1“ gibt es nicht; es gibt: %2.</translation>
        </message>
        <message>
            <source>The form "%1" needs %2, the %3: %4.</source>
            <translation>Die Form „%1“ braucht %2 (%3): %4.</translation>
        </message>
        <message>
            <source>The form "%1" has no parameter "%2"; it has: %3.</source>
            <translation>Die Form „%1“ hat keinen Parameter „%2“; sie hat: %3.</translation>
        </message>
        <message>
            <source>"%1" of the form "%2" is %3; it may be from %4 to %5.</source>
            <translation>„%1“ der Form „%2“ ist %3; möglich ist %4 bis %5.</translation>
        </message>
        <message>
            <source>The form "%1" has no left and right; leave the side out.</source>
            <translation>Die Form „%1“ hat kein Links und Rechts; die Seite weglassen.</translation>
        </message>
        <message>
            <source>Between stations %1 and %2 mm the girth changes so much that the surface is steeper than 45 degrees; give stations further apart or girths closer together.</source>
            <translation>Zwischen den Stationen %1 und %2 mm ändert sich der Umfang so stark, dass die Oberfläche steiler als 45 Grad ist; Stationen weiter auseinander oder ähnlichere Umfänge angeben.</translation>
        </message>
        <message>
            <source>The note was not written: %1 '%2' has changed or gone since %3 read it; solve the plan again.</source>
            <translation>Der Bericht wurde nicht geschrieben: %1 „%2“ wurde geändert oder entfernt, seit es gelesen wurde (%3); den Plan neu rechnen.</translation>
        </message>
        <message>
            <source>The note was not written: the plan now names %1 input files and %2 read %3; solve the plan again.</source>
            <translation>Der Bericht wurde nicht geschrieben: Der Plan nennt jetzt %1 Eingabedateien, gelesen wurden %3 (%2); den Plan neu rechnen.</translation>
        </message>
        <message>
            <source>The note was not written: body.part is 'test object', which nobody wears; name the part of the body that wears the device.</source>
            <translation>Der Bericht wurde nicht geschrieben: body.part ist „test object“, ein Prüfkörper, den niemand trägt; den Körperteil nennen, der das Gerät trägt.</translation>
        </message>
        <message>
            <source>the estimate</source>
            <translation>die Schätzung</translation>
        </message>
        <message>
            <source>the study of spread</source>
            <translation>die Streuungsrechnung</translation>
        </message>
        <message>
            <source>the study of the ceiling</source>
            <translation>die Suche nach der Obergrenze</translation>
        </message>
        <message>
            <source>the study of people</source>
            <translation>die Rechnung über Personen</translation>
        </message>
        <message>
            <source>The answer kept for '%1' in %2 cannot be read: name another folder, or empty this one.</source>
            <translation>Die aufgehobene Antwort zu „%1“ in %2 ist nicht lesbar: einen anderen Ordner nennen oder diesen leeren.</translation>
        </message>
        <message>
            <source>no target is given: name at least one chamber and its mean pressure.</source>
            <translation>kein Ziel ist angegeben: mindestens eine Kammer und ihren mittleren Druck nennen.</translation>
        </message>
        <message>
            <source>the target names the chamber '%1', which the layout does not have; it has %2.</source>
            <translation>das Ziel nennt die Kammer „%1“, die das Layout nicht hat; es hat %2.</translation>
        </message>
        <message>
            <source>the target names the chamber '%1' twice; keep one.</source>
            <translation>das Ziel nennt die Kammer „%1“ doppelt; eine behalten.</translation>
        </message>
        <message>
            <source>the target of chamber '%1' is %2; give a mean contact pressure above 0 and up to 100 kPa.</source>
            <translation>das Ziel der Kammer „%1“ ist %2; einen mittleren Kontaktdruck über 0 und bis 100 kPa angeben.</translation>
        </message>
        <message>
            <source>from %1 under chamber '%2' to %3 under chamber '%4', nearer the trunk</source>
            <translation>von %1 unter Kammer „%2“ auf %3 unter Kammer „%4“, näher am Rumpf</translation>
        </message>
        <message>
            <source>the target rises %1, which hinders the blood that flows back (common practice, no source): ask for a profile that stays level or falls towards the trunk.</source>
            <translation>das Ziel steigt %1, was das zurückfließende Blut behindert (übliche Praxis, keine Quelle): einen Verlauf verlangen, der zum Rumpf hin gleich bleibt oder fällt.</translation>
        </message>
        <message>
            <source>No equilibrium was found near the wanted pressures: ask for less, and first correct how it fits. %1</source>
            <translation>Nahe den gewünschten Drücken wurde kein Gleichgewicht gefunden: weniger verlangen und zuerst den Sitz berichtigen. %1</translation>
        </message>
        <message>
            <source>No equilibrium was found near the wanted pressures: ask for less, take thicker or stiffer sheets, or use a finer mesh.</source>
            <translation>Nahe den gewünschten Drücken wurde kein Gleichgewicht gefunden: weniger verlangen, dickere oder steifere Lagen oder ein feineres Netz nehmen.</translation>
        </message>
        <message>
            <source>The ceiling did not settle: just below where the limit is met it is met again. Correct how it fits. %1</source>
            <translation>Die Obergrenze steht nicht fest: Dicht unter der Stelle, wo der Grenzwert erreicht ist, wird er wieder erreicht. Den Sitz berichtigen. %1</translation>
        </message>
        <message>
            <source>The ceiling did not settle: just below where the limit is met it is met again. Use a finer mesh.</source>
            <translation>Die Obergrenze steht nicht fest: Dicht unter der Stelle, wo der Grenzwert erreicht ist, wird er wieder erreicht. Ein feineres Netz nehmen.</translation>
        </message>
        <message>
            <source>The search for the ceiling did not settle after %1 solves: ask for less inflation. The last solve said: %2</source>
            <translation>Die Suche nach der Obergrenze kam nach %1 Rechnungen zu keinem Ende: weniger Füllung verlangen. Die letzte Rechnung sagte: %2</translation>
        </message>
        <message>
            <source>The search for the ceiling did not settle after %1 solves: ask for less inflation, or use a finer mesh.</source>
            <translation>Die Suche nach der Obergrenze kam nach %1 Rechnungen zu keinem Ende: weniger Füllung verlangen oder ein feineres Netz nehmen.</translation>
        </message>
        <message>
            <source>inlet '%1' is asked for %2 mL, but closed and not inflated its chambers hold %3 mL already: ask for more, so that there is something to scale.</source>
            <translation>von Einlass „%1“ werden %2 mL verlangt, aber geschlossen und ungefüllt enthalten seine Kammern schon %3 mL: mehr verlangen, damit es etwas zu skalieren gibt.</translation>
        </message>
        <message>
            <source>inlet '%1' is asked for nothing in the plan: give a pressure or volume above 0, which is then scaled.</source>
            <translation>von Einlass „%1“ wird im Plan nichts verlangt: einen Druck oder ein Volumen über 0 angeben, das dann skaliert wird.</translation>
        </message>
        <message>
            <source>every inlet is asked for nothing in the plan: give a pressure or volume above 0, which is then scaled.</source>
            <translation>von keinem Einlass wird im Plan etwas verlangt: einen Druck oder ein Volumen über 0 angeben, das dann skaliert wird.</translation>
        </message>
        <message>
            <source>Cannot keep runs in %1: %2.</source>
            <translation>Läufe lassen sich in %1 nicht aufheben: %2.</translation>
        </message>
        <message>
            <source>chamber '%1' has no room for an inlet of its own.</source>
            <translation>Kammer „%1“ hat keinen Platz für einen eigenen Einlass.</translation>
        </message>
        <message>
            <source>folder '%1' cannot be found: %2.</source>
            <translation>der Ordner „%1“ ist nicht zu finden: %2.</translation>
        </message>
        <message>
            <source>'%1' is a file: name a folder for the results.</source>
            <translation>„%1“ ist eine Datei: einen Ordner für die Ergebnisse nennen.</translation>
        </message>
        <message>
            <source>There is no room for results in %1: less than 8 MB can be written. Make room, or name another folder.</source>
            <translation>In %1 ist kein Platz für Ergebnisse: Weniger als 8 MB lassen sich schreiben. Platz schaffen oder einen anderen Ordner nennen.</translation>
        </message>
        <message>
            <source>no contact was read</source>
            <translation>es wurde kein Kontakt gemessen</translation>
        </message>
        <message>
            <source>contact was read on another part of a body</source>
            <translation>Kontakt wurde an einem anderen Körperteil gemessen</translation>
        </message>
        <message>
            <source>%1 contact readings over %2 chambers and %3 levels were made, and it takes %4 over %5 and %6</source>
            <translation>%1 Kontaktmessungen über %2 Kammern und %3 Stufen liegen vor, nötig sind %4 über %5 und %6</translation>
        </message>
        <message>
            <source>The factor goes up to %1: a contact reading, its sensor&apos;s error counted, lies that far above its prediction (%2).</source>
            <translation>Der Faktor steigt auf %1: Eine Kontaktmessung liegt, den Fehler ihres Sensors mitgerechnet, so weit über ihrer Vorhersage (%2).</translation>
        </message>
        <message>
            <source>The factor stays at %1: %2.</source>
            <translation>Der Faktor bleibt bei %1: %2.</translation>
        </message>
        <message>
            <source>The factor is %1, the lowest that is taken: %2 contact readings over %3 chambers and %4 levels ask for %5.</source>
            <translation>Der Faktor ist %1, der niedrigste, der genommen wird: %2 Kontaktmessungen über %3 Kammern und %4 Stufen verlangen %5.</translation>
        </message>
        <message>
            <source>The factor is %1: 95 in 100 places are read below that many times their prediction, with 95 % confidence, by %2 contact readings over %3 chambers and %4 levels.</source>
            <translation>Der Faktor ist %1: Von 100 Stellen liegen 95 unter dem so Vielfachen ihrer Vorhersage, mit 95 % Sicherheit, nach %2 Kontaktmessungen über %3 Kammern und %4 Stufen.</translation>
        </message>
        <message>
            <source>The results were put into %1 one by one, not all at once: %2.</source>
            <translation>Die Ergebnisse kamen einzeln nach %1, nicht alle auf einmal: %2.</translation>
        </message>
        <message>
            <source>what else lies there cannot be brought along (%1)</source>
            <translation>was sonst dort liegt, lässt sich nicht mitnehmen (%1)</translation>
        </message>
        <message>
            <source>this disk or system cannot swap folders (%1)</source>
            <translation>dieser Datenträger oder dieses System kann Ordner nicht tauschen (%1)</translation>
        </message>
        <message>
            <source>%1 was edited after it was written: it is kept as %2.</source>
            <translation>%1 wurde nach dem Schreiben bearbeitet und bleibt als %2 erhalten.</translation>
        </message>
        <message>
            <source>Gone with the results that were replaced: %1, of `wrapgauge %2`.</source>
            <translation>Mit den ersetzten Ergebnissen entfernt: %1, von `wrapgauge %2`.</translation>
        </message>
        <message>
            <source>it also holds files that are not results</source>
            <translation>dort liegen auch Dateien, die keine Ergebnisse sind</translation>
        </message>
        <message>
            <source>the program was started in it</source>
            <translation>das Programm wurde darin gestartet</translation>
        </message>
        <message>
            <source>it belongs to another user</source>
            <translation>er gehört einem anderen Benutzer</translation>
        </message>
        <message>
            <source>nothing may be written beside it</source>
            <translation>daneben darf nichts geschrieben werden</translation>
        </message>
        <message>
            <source>it holds more than 1000 files</source>
            <translation>er enthält mehr als 1000 Dateien</translation>
        </message>
        <message>
            <source>Cannot keep %1 as %2: %3.</source>
            <translation>%1 lässt sich nicht als %2 aufheben: %3.</translation>
        </message>
        <message>
            <source>Cannot give %1 a second name: %2.</source>
            <translation>%1 lässt sich kein zweiter Name geben: %2.</translation>
        </message>
        <message>
            <source>%1 is neither a file nor a folder.</source>
            <translation>%1 ist weder Datei noch Ordner.</translation>
        </message>
        <message>
            <source>File exists</source>
            <translation>die Datei gibt es schon</translation>
        </message>
        <message>
            <source>Not a directory</source>
            <translation>ein Teil des Pfads ist kein Ordner</translation>
        </message>
        <message>
            <source>Cannot write into %1: %2.</source>
            <translation>In %1 lässt sich nicht schreiben: %2.</translation>
        </message>
        <message>
            <source>The note was not written, since the plan's inflation is never reached: %1 Ask for less first.</source>
            <translation>Der Bericht wurde nicht geschrieben, weil die Füllung des Plans nie erreicht wird: %1 Zuerst weniger verlangen.</translation>
        </message>
        <message>
            <source>%1: face %2 %3; export the mesh again.</source>
            <translation>%1: Fläche %2 %3; das Netz neu exportieren.</translation>
        </message>
        <message>
            <source>%1: vertex %2 %3; export the mesh again.</source>
            <translation>%1: Eckpunkt %2 %3; das Netz neu exportieren.</translation>
        </message>
        <message>
            <source>%1: %4 %2 %3; export the mesh again.</source>
            <translation>%1: %4 %2 %3; das Netz neu exportieren.</translation>
        </message>
        <message>
            <source>The filling was not saved.</source>
            <translation>Die Füllung wurde nicht gespeichert.</translation>
        </message>
        <message>
            <source>there is nothing to print yet: open a body or a plan first.</source>
            <translation>es gibt noch nichts zu drucken: zuerst einen Körper oder Plan öffnen.</translation>
        </message>
        <message>
            <source>the film could not be made (%1).</source>
            <translation>der Film ließ sich nicht herstellen (%1).</translation>
        </message>
        <message>
            <source>%1: the text %2 holds the character NUL (\u0000, shown as ?): take it out.</source>
            <translation>%1: Der Text %2 enthält das Zeichen NUL (\u0000, als ? gezeigt): herausnehmen.</translation>
        </message>
        <message>
            <source>%1 has more than 400 000 points in curves that cannot be read (line %2 is one); take them out, or make them smaller.</source>
            <translation>%1 hat mehr als 400 000 Punkte in Kurven, die sich nicht lesen lassen (Zeile %2 ist eine); herausnehmen oder kleiner machen.</translation>
        </message>
        <message>
            <source>Posed with the axis along +z, the scan's own way up: mean girths of %1 and %2 may be a trunk's, whose thinner end is not always the distal one. Check that the distal end is at z = 0; if it is not, turn the body over (distal end: turned).</source>
            <translation>Aufgestellt mit der Achse längs +z, oben und unten wie im Scan: Mittlere Umfänge von %1 und %2 können die eines Rumpfs sein, dessen dünneres Ende nicht immer das distale ist. Prüfen, ob das distale Ende bei z = 0 liegt; wenn nicht, den Körper umdrehen (distales Ende: umgedreht).</translation>
        </message>
        <message>
            <source>an object</source>
            <translation>ein Objekt</translation>
        </message>
        <message>
            <source>Inlet '%1' feeds no chamber, so nothing can be inflated there: give it a chamber, or take it out.</source>
            <translation>Einlass „%1“ speist keine Kammer, also lässt sich dort nichts füllen: ihm eine Kammer geben oder ihn entfernen.</translation>
        </message>
        <message>
            <source>Vertex %1 %2; export the scan again.</source>
            <translation>Eckpunkt %1 %2; den Scan neu exportieren.</translation>
        </message>
        <message>
            <source>Inlet '%1' at %2 feeds no chamber, only a channel: lengthen the channel into a chamber, or move the inlet into one.</source>
            <translation>Einlass „%1“ bei %2 speist keine Kammer, nur einen Kanal: den Kanal bis in eine Kammer verlängern oder den Einlass in eine verschieben.</translation>
        </message>
        <message>
            <source>The sides are panelled to follow the limb: straight from each edge to half height, where the layout is %1 wider than straight sides would make it.</source>
            <translation>Die Seiten folgen der Gliedmaße in je zwei Bahnen: gerade von jedem Rand bis zur halben Höhe, wo das Layout %1 breiter ist als mit geraden Seiten.</translation>
        </message>
        <message>
            <source>The sides are panelled to follow the limb: straight from each edge to half height, where the layout is %1 narrower than straight sides would make it.</source>
            <translation>Die Seiten folgen der Gliedmaße in je zwei Bahnen: gerade von jedem Rand bis zur halben Höhe, wo das Layout %1 schmaler ist als mit geraden Seiten.</translation>
        </message>
        <message>
            <source>The layout is tight between its edges: the limb is %1 round at %2, %3 more than its closing lines allow for. Make it shorter, or make two.</source>
            <translation>Das Layout sitzt zwischen seinen Kanten eng: die Gliedmaße misst bei %2 im Umfang %1, %3 mehr, als die Verschlusslinien zulassen. Machen Sie es kürzer, oder machen Sie zwei.</translation>
        </message>
        <message>
            <source>The layout is loose between its edges: the limb is %1 round at %2, %3 less than its closing lines allow for. Make it shorter, or make two.</source>
            <translation>Das Layout sitzt zwischen seinen Kanten lose: die Gliedmaße misst bei %2 im Umfang %1, %3 weniger, als die Verschlusslinien zulassen. Machen Sie es kürzer, oder machen Sie zwei.</translation>
        </message>
        <message>
            <source>A sleeve between girths of %1 and %2 with a bulge of %3 comes to less than 40 mm at its middle; check all three.</source>
            <translation>Eine Hülle zwischen den Umfängen %1 und %2 mit einer Wölbung von %3 kommt in der Mitte auf weniger als 40 mm; alle drei Werte prüfen.</translation>
        </message>
        <message>
            <source>The closing lines bend by %1 mm for each mm along the limb; it should lie between -2 and 2.</source>
            <translation>Die Verschlusslinien knicken um %1 mm je mm längs der Gliedmaße; der Wert sollte zwischen -2 und 2 liegen.</translation>
        </message>
        <message>
            <source>is to be the %1 but is a single point, at %2</source>
            <translation>soll %1 sein, ist aber ein einzelner Punkt bei %2</translation>
        </message>
        <message>
            <source>draw it as a closed line</source>
            <translation>als geschlossene Linie zeichnen</translation>
        </message>
        <message>
            <source>'%1' is there already and may hold readings: name another folder, or move it.</source>
            <translation>„%1“ gibt es schon, und es können Messwerte darin stehen: Nennen Sie einen anderen Ordner, oder verschieben Sie die Datei.</translation>
        </message>
        <message>
            <source>No reading depends on the %1. Its factor stays at 1.</source>
            <translation>Kein Messwert hängt von dieser Größe ab: %1. Ihr Faktor bleibt 1.</translation>
        </message>
        <message>
            <source>These readings cannot tell the %1 from the %2. Its factor stays at 1.</source>
            <translation>Diese Messwerte trennen „%1“ nicht von „%2“. Der Faktor der ersten Größe bleibt 1.</translation>
        </message>
        <message>
            <source>These readings say too little about the %1. Its factor stays at 1.</source>
            <translation>Diese Messwerte sagen zu wenig über diese Größe: %1. Ihr Faktor bleibt 1.</translation>
        </message>
        <message>
            <source>the %1 would have to be %2 times what the plan says, and only %3 to %4 is fitted: check the grade, the sheets' thickness and the readings.</source>
            <translation>Diese Größe müsste das %2-Fache dessen betragen, was im Plan steht: %1. Angepasst wird nur von %3 bis %4; prüfen Sie die Silikonsorte, die Dicke der Lagen und die Messwerte.</translation>
        </message>
        <message>
            <source>readings that a fit can use: %1, and it takes 3 at least. Read more.</source>
            <translation>Für die Anpassung brauchbare Messwerte: %1; nötig sind mindestens 3. Messen Sie mehr.</translation>
        </message>
        <message>
            <source>a gap of %1 under the plate leaves no room: the empty device is %2 thick; measure from the table to the plate's underside.</source>
            <translation>Ein Abstand von %1 unter der Platte lässt keinen Raum: Das leere Gerät ist %2 dick. Messen Sie vom Tisch bis zur Unterseite der Platte.</translation>
        </message>
        <message>
            <source>%1 is stale: the layout has changed since; fit again (step Bench, or wrapgauge bench fit), or take it out of the plan.</source>
            <translation>%1 ist überholt: Das Layout hat sich seitdem geändert. Passen Sie neu an, oder nehmen Sie sie aus dem Plan.</translation>
        </message>
        <message>
            <source>%1 is stale: a silicone's or the tissue's row has changed since; fit again (step Bench, or wrapgauge bench fit), or take it out of the plan.</source>
            <translation>%1 ist überholt: Die Zeile eines Silikons oder des Gewebes hat sich seitdem geändert. Passen Sie neu an, oder nehmen Sie sie aus dem Plan.</translation>
        </message>
        <message>
            <source>%1 is stale: its readings, '%2', cannot be read; fit again (step Bench, or wrapgauge bench fit), or take it out of the plan.</source>
            <translation>%1 ist überholt: Ihre Messwerte, „%2“, lassen sich nicht lesen. Passen Sie neu an, oder nehmen Sie sie aus dem Plan.</translation>
        </message>
        <message>
            <source>%1 is stale: its readings have changed since; fit again (step Bench, or wrapgauge bench fit), or take it out of the plan.</source>
            <translation>%1 ist überholt: Ihre Messwerte haben sich seitdem geändert. Passen Sie neu an, oder nehmen Sie sie aus dem Plan.</translation>
        </message>
        <message>
            <source>%1 is stale: another version of the program made it; fit again (step Bench, or wrapgauge bench fit), or take it out of the plan.</source>
            <translation>%1 ist überholt: Eine andere Version des Programms hat sie gemacht. Passen Sie neu an, oder nehmen Sie sie aus dem Plan.</translation>
        </message>
        <message>
            <source>closure was read, but the layout has none: delete those rows.</source>
            <translation>Der Verschluss wurde gemessen, doch das Layout hat keinen: Löschen Sie diese Zeilen.</translation>
        </message>
        <message>
            <source>line %1, reading '%2': %3</source>
            <translation>Zeile %1, Messwert „%2“: %3</translation>
        </message>
        <message>
            <source>%1 lies beyond the limit point of chamber %2, predicted at %3 and %4: read below it, or correct the row.</source>
            <translation>%1 liegt jenseits des Grenzpunkts der Kammer %2, der bei %3 und %4 vorhergesagt ist: Messen Sie darunter, oder berichtigen Sie die Zeile.</translation>
        </message>
        <message>
            <source>the prediction there is 0: the device does not press, rise or pull under these conditions; correct the row or delete it.</source>
            <translation>Die Vorhersage ist dort 0: Unter diesen Bedingungen drückt, hebt oder zieht das Gerät nicht. Berichtigen oder löschen Sie die Zeile.</translation>
        </message>
        <message>
            <source>skin sheet's law</source>
            <translation>Materialgesetz der Hautlage</translation>
        </message>
        <message>
            <source>outer sheet's law</source>
            <translation>Materialgesetz der Außenlage</translation>
        </message>
        <message>
            <source>skin sheet's thickness</source>
            <translation>Dicke der Hautlage</translation>
        </message>
        <message>
            <source>outer sheet's thickness</source>
            <translation>Dicke der Außenlage</translation>
        </message>
        <message>
            <source>tissue's stiffness</source>
            <translation>Steifigkeit des Gewebes</translation>
        </message>
        <message>
            <source>Skin sheet's law</source>
            <translation>Materialgesetz der Hautlage</translation>
        </message>
        <message>
            <source>Outer sheet's law</source>
            <translation>Materialgesetz der Außenlage</translation>
        </message>
        <message>
            <source>Skin sheet's thickness</source>
            <translation>Dicke der Hautlage</translation>
        </message>
        <message>
            <source>Outer sheet's thickness</source>
            <translation>Dicke der Außenlage</translation>
        </message>
        <message>
            <source>Tissue's stiffness</source>
            <translation>Steifigkeit des Gewebes</translation>
        </message>
        <message>
            <source>%1: these readings do not tell; as in the plan.</source>
            <translation>%1: nicht bestimmt; wie im Plan.</translation>
        </message>
        <message>
            <source>%1: times %2, 95 % band %3 to %4 (bootstrap %5 to %6).</source>
            <translation>%1: mal %2, 95-%-Band %3 bis %4 (durch Neuziehen %5 bis %6).</translation>
        </message>
        <message>
            <source>%1: %2 thicker than drawn, 95 % band %3 to %4 (bootstrap %5 to %6).</source>
            <translation>%1: %2 mehr als gezeichnet, 95-%-Band %3 bis %4 (durch Neuziehen %5 bis %6).</translation>
        </message>
        <message>
            <source>No reading lies more than 3 standard errors off.</source>
            <translation>Kein Messwert liegt mehr als 3 Standardfehler daneben.</translation>
        </message>
        <message>
            <source>More than 3 standard errors off, kept in the fit: %1. Read them again.</source>
            <translation>Mehr als 3 Standardfehler daneben, in der Anpassung belassen: %1. Messen Sie sie nach.</translation>
        </message>
        <message>
            <source>Readings scatter by %1 times the standard errors stated, so the bands were widened by as much.</source>
            <translation>Die Messwerte streuen um das %1-Fache der angegebenen Standardfehler; um ebenso viel wurden die Bänder verbreitert.</translation>
        </message>
        <message>
            <source>Readings scatter by %1 times the standard errors stated.</source>
            <translation>Die Messwerte streuen um das %1-Fache der angegebenen Standardfehler.</translation>
        </message>
        <message>
            <source>Standard errors not stated, taken as usual (judgement): %1.</source>
            <translation>Nicht angegebene Standardfehler, wie üblich angenommen (Ermessen): %1.</translation>
        </message>
        <message>
            <source>Seams are taken to hold %1, from 1 peeled sample.</source>
            <translation>Den Nähten werden %1 zugetraut, nach 1 geschälten Probe.</translation>
        </message>
        <message>
            <source>Seams are taken to hold %1, from the weakest of %2 peeled samples.</source>
            <translation>Den Nähten werden %1 zugetraut, nach der schwächsten von %2 geschälten Proben.</translation>
        </message>
        <message>
            <source>Remark on the readings: %1</source>
            <translation>Bemerkung zu den Messwerten: %1</translation>
        </message>
        <message>
            <source>The dummy's tissue is its own: the plan keeps that of its row.</source>
            <translation>Das Gewebe des Prüfglieds ist sein eigenes: Der Plan behält das seiner Tabellenzeile.</translation>
        </message>
        <message>
            <source>The fit did not settle: the readings pull the factors to and fro; look for a wrong one.</source>
            <translation>Die Anpassung kam nicht zur Ruhe: Die Messwerte ziehen die Faktoren hin und her. Suchen Sie nach einem falschen.</translation>
        </message>
        <message>
            <source>%1 is '%2': write %3 or %4.</source>
            <translation>%1 ist „%2“: Schreiben Sie %3 oder %4.</translation>
        </message>
        <message>
            <source>the column '%1' is not known; a column says its unit, such as gauge_kpa or gauge_mmhg.</source>
            <translation>Die Spalte „%1“ ist nicht bekannt; eine Spalte nennt ihre Einheit, etwa gauge_kpa oder gauge_mmhg.</translation>
        </message>
        <message>
            <source>there is no column 'kind': say of each reading what was read.</source>
            <translation>Die Spalte „kind“ fehlt: Sagen Sie zu jedem Messwert, was gemessen wurde.</translation>
        </message>
        <message>
            <source>the reading has no id: give each one of its own.</source>
            <translation>Der Messwert hat keine „id“: Geben Sie jedem seine eigene.</translation>
        </message>
        <message>
            <source>the kind of reading '%1' is '%2': it may be %3.</source>
            <translation>Die Art des Messwerts „%1“ ist „%2“: Möglich sind %3.</translation>
        </message>
        <message>
            <source>%1 of reading '%2' is '%3': write a number with a point for its decimals; the unit stands in the heading.</source>
            <translation>%1 des Messwerts „%2“ ist „%3“: Schreiben Sie eine Zahl mit Dezimalpunkt; die Einheit steht in der Kopfzeile.</translation>
        </message>
        <message>
            <source>%1 of reading '%2' is '%3': write a number.</source>
            <translation>%1 des Messwerts „%2“ ist „%3“: Schreiben Sie eine Zahl.</translation>
        </message>
        <message>
            <source>%1 of reading '%2' is '%3': a reading lies above 0; correct it or delete the row.</source>
            <translation>%1 des Messwerts „%2“ ist „%3“: Ein Messwert liegt über 0. Berichtigen oder löschen Sie die Zeile.</translation>
        </message>
        <message>
            <source>reading '%1' gives %2 both: keep one unit.</source>
            <translation>Messwert „%1“ gibt beide an, %2: Behalten Sie eine Einheit.</translation>
        </message>
        <message>
            <source>contact reading '%1' does not say what it was read on: write dummy or person under 'on'.</source>
            <translation>Kontaktmesswert „%1“ sagt nicht, woran gemessen wurde: Schreiben Sie unter „on“ dummy oder person.</translation>
        </message>
        <message>
            <source>strip reading '%1' does not say of which sheet: write skin or outer.</source>
            <translation>Streifenmesswert „%1“ sagt nicht, von welcher Lage: Schreiben Sie skin oder outer.</translation>
        </message>
        <message>
            <source>reading '%1' names the inlet '%2', which the layout does not have; it has %3.</source>
            <translation>Messwert „%1“ nennt den Einlass „%2“, den das Layout nicht hat; es hat %3.</translation>
        </message>
        <message>
            <source>reading '%1' names the chamber '%2', which the layout does not have; it has %3.</source>
            <translation>Messwert „%1“ nennt die Kammer „%2“, die das Layout nicht hat; es hat %3.</translation>
        </message>
        <message>
            <source>the place of reading '%1' lies off the layout: give x_mm and y_mm as drawn.</source>
            <translation>Die Stelle des Messwerts „%1“ liegt außerhalb des Layouts: Geben Sie x_mm und y_mm wie gezeichnet an.</translation>
        </message>
        <message>
            <source>%1 of %2 reading '%3' is empty: fill it in, or delete the row.</source>
            <translation>%1 des Messwerts „%3“ (%2) ist leer: Füllen Sie das Feld aus, oder löschen Sie die Zeile.</translation>
        </message>
        <message>
            <source>strip reading '%1' is no longer under its load (%2) than without (%3): read both between the same marks.</source>
            <translation>Streifenmesswert „%1“ ist unter Last (%2) nicht länger als ohne (%3): Messen Sie beide zwischen denselben Marken.</translation>
        </message>
        <message>
            <source>map reading '%1' names no file with the grid.</source>
            <translation>Kartenmesswert „%1“ nennt keine Datei mit dem Raster.</translation>
        </message>
        <message>
            <source>%1, line %2: %3</source>
            <translation>%1, Zeile %2: %3</translation>
        </message>
        <message>
            <source>'%1' stands twice: keep one.</source>
            <translation>„%1“ steht zweimal da: Behalten Sie eines.</translation>
        </message>
        <message>
            <source>'%1' is no key here; there are plan, layout, layout_hash, predicted_for, date, part, posture, remark, and 'instrument KIND' and 'error_percent KIND'.</source>
            <translation>„%1“ ist hier kein Schlüssel; es gibt plan, layout, layout_hash, predicted_for, date, part, posture, remark sowie „instrument ART“ und „error_percent ART“.</translation>
        </message>
        <message>
            <source>'%1' is no day: write year-month-day, 2026-11-29.</source>
            <translation>„%1“ ist kein Tag: Schreiben Sie Jahr-Monat-Tag, 2026-11-29.</translation>
        </message>
        <message>
            <source>posture is '%1': write relaxed or tense.</source>
            <translation>posture ist „%1“: Schreiben Sie relaxed oder tense.</translation>
        </message>
        <message>
            <source>there is no kind '%1'.</source>
            <translation>Die Art „%1“ gibt es nicht.</translation>
        </message>
        <message>
            <source>the standard error is '%1': write per cent of a reading, 0.1 to 100.</source>
            <translation>Der Standardfehler ist „%1“: Schreiben Sie Prozent des Messwerts, 0.1 bis 100.</translation>
        </message>
        <message>
            <source>a row before the table holds a key and one value; put quotes round words with a comma.</source>
            <translation>Eine Zeile vor der Tabelle enthält einen Schlüssel und einen Wert; setzen Sie Worte mit Komma in Anführungszeichen.</translation>
        </message>
        <message>
            <source>%1 does not say which layout was read: keep the row layout_hash that the sheet to fill in comes with.</source>
            <translation>%1 sagt nicht, welches Layout gemessen wurde: Behalten Sie die Zeile layout_hash des Messblatts.</translation>
        </message>
        <message>
            <source>%1 holds readings of another layout (%2, the plan's is %3): name the plan they were read for, or read this device anew.</source>
            <translation>%1 enthält Messwerte eines anderen Layouts (%2, das des Plans ist %3): Nennen Sie den Plan, zu dem sie gehören, oder messen Sie dieses Gerät neu.</translation>
        </message>
        <message>
            <source>the reading '%1' stands twice: delete one, or give a repeated reading an id of its own.</source>
            <translation>Der Messwert „%1“ steht zweimal da: Löschen Sie einen, oder geben Sie einer Wiederholung eine eigene „id“.</translation>
        </message>
        <message>
            <source>%1 mixes contact read on a dummy and on a person, whose tissue differs: put them into two files.</source>
            <translation>%1 mischt Kontakt an Prüfglied und Person, deren Gewebe sich unterscheidet: Legen Sie zwei Dateien an.</translation>
        </message>
        <message>
            <source>contact was read, but not on which part of a body: add a row 'part,forearm' before the table.</source>
            <translation>Kontakt wurde gemessen, aber nicht gesagt, an welchem Körperteil: Ergänzen Sie vor der Tabelle eine Zeile „part,forearm“.</translation>
        </message>
        <message>
            <source>Strips</source>
            <translation>Streifen</translation>
        </message>
        <message>
            <source>Fills</source>
            <translation>Füllungen</translation>
        </message>
        <message>
            <source>Bulges</source>
            <translation>Wölbungen</translation>
        </message>
        <message>
            <source>Plate</source>
            <translation>Platte</translation>
        </message>
        <message>
            <source>Contact</source>
            <translation>Kontakt</translation>
        </message>
        <message>
            <source>Closure</source>
            <translation>Verschluss</translation>
        </message>
        <message>
            <source>Peeled seams</source>
            <translation>Geschälte Nähte</translation>
        </message>
        <message>
            <source>Sensor map</source>
            <translation>Sensorkarte</translation>
        </message>
        <message>
            <source>Cut a strip 10 mm wide from a sheet of the same pour. Measure its width and thickness at three places. Mark two lines 50 mm apart. Hang it up, hang on masses until the marks stand at the length given, wait a minute, read the mass. Count half the strip's own mass in.</source>
            <translation>Schneiden Sie aus einer Lage desselben Gusses einen 10 mm breiten Streifen. Messen Sie Breite und Dicke an drei Stellen. Zeichnen Sie zwei Linien im Abstand von 50 mm. Hängen Sie ihn auf und so viel Masse an, bis die Marken die angegebene Länge haben; warten Sie eine Minute und lesen Sie die Masse ab. Zählen Sie die halbe Masse des Streifens mit.</translation>
        </message>
        <message>
            <source>Lay the device unfastened on a table, outer sheet down. Vent every inlet. Push the volume given into one inlet with a syringe, wait a minute, read the gauge.</source>
            <translation>Legen Sie das Gerät ungeschlossen auf einen Tisch, Außenlage nach unten. Entlüften Sie jeden Einlass. Drücken Sie mit einer Spritze das angegebene Volumen in einen Einlass, warten Sie eine Minute und lesen Sie das Manometer ab.</translation>
        </message>
        <message>
            <source>The device lies as for the fills. Set the gauge, wait a minute, read the height of the chamber's middle over the table with a height gauge or a ruler and a square.</source>
            <translation>Das Gerät liegt wie bei den Füllungen. Stellen Sie den Druck ein, warten Sie eine Minute und messen Sie die Höhe der Kammermitte über dem Tisch mit einem Höhenmesser oder mit Lineal und Winkel.</translation>
        </message>
        <message>
            <source>Lay the device on a kitchen scale and tare it. Fix a stiff plate at the height given over the scale's face, larger than the device. Set the gauge of one chamber, wait a minute, read the scale.</source>
            <translation>Legen Sie das Gerät auf eine Küchenwaage und tarieren Sie. Befestigen Sie in der angegebenen Höhe über der Waage eine steife Platte, größer als das Gerät. Stellen Sie den Druck einer Kammer ein, warten Sie eine Minute und lesen Sie die Waage ab.</translation>
        </message>
        <message>
            <source>Put the device on a dummy limb of the plan's girths. Lay a thin sensor under the middle of each chamber and zero it in place. Set every inlet to the gauge given, read after the minutes you note. State the sensor's own standard error: it sets how far the model factor can fall.</source>
            <translation>Legen Sie das Gerät einem Prüfglied mit den Umfängen des Plans an. Legen Sie einen dünnen Sensor unter die Mitte jeder Kammer und stellen Sie ihn dort auf null. Stellen Sie an jedem Einlass den angegebenen Druck ein und lesen Sie nach den notierten Minuten ab. Geben Sie den Standardfehler des Sensors an: Er bestimmt, wie weit der Modellfaktor sinken kann.</translation>
        </message>
        <message>
            <source>Put the empty device on the dummy limb. Pull its closure with a spring scale until the two lines meet at the length given, read the pull.</source>
            <translation>Legen Sie das leere Gerät dem Prüfglied an. Ziehen Sie den Verschluss mit einer Federwaage, bis sich die beiden Linien bei der angegebenen Länge treffen, und lesen Sie die Zugkraft ab.</translation>
        </message>
        <message>
            <source>Cut samples 10 mm wide across a seam of the same pour. Hold one sheet, hang masses on the other until the seam starts to open, read the mass.</source>
            <translation>Schneiden Sie quer zu einer Naht desselben Gusses 10 mm breite Proben. Halten Sie eine Lage fest und hängen Sie Massen an die andere, bis sich die Naht zu öffnen beginnt; lesen Sie die Masse ab.</translation>
        </message>
        <message>
            <source>A map is held against the prediction by `wrapgauge bench compare`.</source>
            <translation>Eine Karte wird mit `wrapgauge bench compare` an die Vorhersage gehalten.</translation>
        </message>
        <message>
            <source>outer sheet, %1 × %2 mm, from %3 to %4 mm</source>
            <translation>Außenlage, %1 × %2 mm, von %3 auf %4 mm</translation>
        </message>
        <message>
            <source>skin sheet, %1 × %2 mm, from %3 to %4 mm</source>
            <translation>Hautlage, %1 × %2 mm, von %3 auf %4 mm</translation>
        </message>
        <message>
            <source>%1, %2</source>
            <translation>%1, %2</translation>
        </message>
        <message>
            <source>%1, %2, seams clamped</source>
            <translation>%1, %2, Nähte eingespannt</translation>
        </message>
        <message>
            <source>%1, %2, plate %3 over the table</source>
            <translation>%1, %2, Platte %3 über dem Tisch</translation>
        </message>
        <message>
            <source>x %1 mm, y %2 mm</source>
            <translation>x %1 mm, y %2 mm</translation>
        </message>
        <message>
            <source>%1, every inlet %2, sensor %3</source>
            <translation>%1, jeder Einlass %2, Sensor %3</translation>
        </message>
        <message>
            <source>%1, its inlet alone %2, sensor %3</source>
            <translation>%1, nur sein Einlass %2, Sensor %3</translation>
        </message>
        <message>
            <source>fastened at %1</source>
            <translation>geschlossen bei %1</translation>
        </message>
        <message>
            <source>%1 wide</source>
            <translation>%1 breit</translation>
        </message>
        <message>
            <source>Is it mmHg, typed in the column for kPa?</source>
            <translation>Ist es mmHg in der Spalte für kPa?</translation>
        </message>
        <message>
            <source>Is it kPa, typed in the column for mmHg?</source>
            <translation>Ist es kPa in der Spalte für mmHg?</translation>
        </message>
        <message>
            <source>Is the decimal point in its place?</source>
            <translation>Steht der Dezimalpunkt an der richtigen Stelle?</translation>
        </message>
        <message>
            <source>Was something else read?</source>
            <translation>Wurde etwas anderes gemessen?</translation>
        </message>
        <message>
            <source>%1, line %2: reading '%3', %4, is %5 times what the other readings and the prediction of %6 let expect. %7 Correct it, or write yes in its column 'confirmed'.</source>
            <translation>%1, Zeile %2: Messwert „%3“, %4, ist das %5-Fache dessen, was die anderen Messwerte und die Vorhersage von %6 erwarten lassen. %7 Berichtigen Sie ihn, oder schreiben Sie yes in seine Spalte „confirmed“.</translation>
        </message>
        <message>
            <source>%1, line %2: reading '%3', %4, is 1/%5 of what the other readings and the prediction of %6 let expect. %7 Correct it, or write yes in its column 'confirmed'.</source>
            <translation>%1, Zeile %2: Messwert „%3“, %4, ist 1/%5 dessen, was die anderen Messwerte und die Vorhersage von %6 erwarten lassen. %7 Berichtigen Sie ihn, oder schreiben Sie yes in seine Spalte „confirmed“.</translation>
        </message>
        <message>
            <source>What lies between skin and device is given for %1 of %2 points: give it for each, or for none.</source>
            <translation>Was zwischen Haut und Gerät liegt, ist für %1 von %2 Punkten angegeben: Geben Sie es für jeden an oder für keinen.</translation>
        </message>
        <message>
            <source>Lower the pressure, round the seam's corners or fuse it wider.</source>
            <translation>Druck senken, Ecken der Naht runden oder breiter verschweißen.</translation>
        </message>
        <message>
            <source>Highest tension at a seam: %1. Times the model factor %2 that is %3 of the %4 that the weakest of %5 peeled samples held. %6</source>
            <translation>Höchste Zugspannung an einer Naht: %1. Mal Modellfaktor %2 sind das %3 der %4, die die schwächste von %5 geschälten Proben hielt. %6</translation>
        </message>
        <message>
            <source>Nothing predicted exceeds the limits used. The limits are judgement, and the model is calibrated on a bench only; this is not approval to wear the device.</source>
            <translation>Nichts Vorhergesagtes überschreitet die verwendeten Grenzwerte. Die Grenzwerte sind Einschätzung, das Modell ist nur am Prüfstand kalibriert; das ist keine Freigabe zum Tragen.</translation>
        </message>
        <message>
            <source>No equilibrium was found near the one that is known.</source>
            <translation>In der Nähe des bekannten Gleichgewichts wurde keines gefunden.</translation>
        </message>
        <message>
            <source>A state on a body depends on the way there: inflate it anew.</source>
            <translation>Ein Zustand am Körper hängt vom Weg dorthin ab: neu füllen.</translation>
        </message>
        <message>
            <source>%1 separates its columns with semicolons: save it with commas.</source>
            <translation>%1 trennt seine Spalten mit Strichpunkten: mit Kommas speichern.</translation>
        </message>
        <message>
            <source>%1 separates its columns with tabs: save it with commas.</source>
            <translation>%1 trennt seine Spalten mit Tabulatoren: mit Kommas speichern.</translation>
        </message>
        <message>
            <source>Column %1 of %2 has no heading: name it.</source>
            <translation>Spalte %1 von %2 hat keine Überschrift: benennen.</translation>
        </message>
        <message>
            <source>%1 has the column '%2' twice: keep one.</source>
            <translation>%1 hat die Spalte „%2“ zweimal: eine behalten.</translation>
        </message>
        <message>
            <source>Line %1 of %2 has %3 cells and its heading %4: write decimals with a point (27.5), or put quotes round a cell that holds a comma.</source>
            <translation>Zeile %1 von %2 hat %3 Zellen und ihre Überschrift %4: Dezimalpunkt schreiben (27.5) oder Zellen mit Komma in Anführungszeichen setzen.</translation>
        </message>
        <message>
            <source>Line %1 of %2 has %3 cells and its heading %4: fill in every column.</source>
            <translation>Zeile %1 von %2 hat %3 Zellen und ihre Überschrift %4: jede Spalte ausfüllen.</translation>
        </message>
        <message>
            <source>%1 holds the character NUL, so it is no CSV text: save it as UTF-8 text with commas.</source>
            <translation>%1 enthält das Zeichen NUL und ist deshalb kein CSV-Text: als UTF-8-Text mit Kommas speichern.</translation>
        </message>
        <message>
            <source>A quote that begins in line %1 of %2 never ends: close it.</source>
            <translation>Ein Anführungszeichen, das in Zeile %1 von %2 beginnt, endet nie: schließen.</translation>
        </message>
        <message>
            <source>%1 has more than %2 %3, the most that one study takes: split the list.</source>
            <translation>%1 hat mehr als %2 Zeilen (%3), so viele nimmt eine Studie nicht: die Liste teilen.</translation>
        </message>
        <message>
            <source>%1 has no heading that begins with '%2': write one over its columns.</source>
            <translation>%1 hat keine Überschrift, die mit „%2“ beginnt: eine über die Spalten schreiben.</translation>
        </message>
        <message>
            <source>%1 lists no %2: write a heading and a row each.</source>
            <translation>%1 führt nichts auf (%2): Überschrift und je eine Zeile schreiben.</translation>
        </message>
    </context>
    <context>
        <name>wrapgauge::PartPanel</name>
        <message>
            <source>finger</source>
            <translation>Finger</translation>
        </message>
        <message>
            <source>hand</source>
            <translation>Hand</translation>
        </message>
        <message>
            <source>wrist</source>
            <translation>Handgelenk</translation>
        </message>
        <message>
            <source>forearm</source>
            <translation>Unterarm</translation>
        </message>
        <message>
            <source>elbow</source>
            <translation>Ellbogen</translation>
        </message>
        <message>
            <source>upper arm</source>
            <translation>Oberarm</translation>
        </message>
        <message>
            <source>shoulder</source>
            <translation>Schulter</translation>
        </message>
        <message>
            <source>chest</source>
            <translation>Brust</translation>
        </message>
        <message>
            <source>abdomen</source>
            <translation>Bauch</translation>
        </message>
        <message>
            <source>back</source>
            <translation>Rücken</translation>
        </message>
        <message>
            <source>hip</source>
            <translation>Hüfte</translation>
        </message>
        <message>
            <source>thigh</source>
            <translation>Oberschenkel</translation>
        </message>
        <message>
            <source>knee</source>
            <translation>Knie</translation>
        </message>
        <message>
            <source>lower leg</source>
            <translation>Unterschenkel</translation>
        </message>
        <message>
            <source>ankle</source>
            <translation>Knöchel</translation>
        </message>
        <message>
            <source>foot</source>
            <translation>Fuß</translation>
        </message>
        <message>
            <source>head</source>
            <translation>Kopf</translation>
        </message>
        <message>
            <source>neck</source>
            <translation>Hals</translation>
        </message>
        <message>
            <source>face</source>
            <translation>Gesicht</translation>
        </message>
        <message>
            <source>test object, never worn</source>
            <translation>Prüfkörper, nie getragen</translation>
        </message>
        <message>
            <source>as the form or file says</source>
            <translation>wie Form oder Datei sagt</translation>
        </message>
        <message>
            <source>A test solid does not say, nor does a scan.</source>
            <translation>Ein einfacher Körper sagt nichts, ein Scan auch nicht.</translation>
        </message>
        <message>
            <source>Part of the person</source>
            <translation>Körperteil</translation>
        </message>
        <message>
            <source>Limits, cautions and tissue follow from it.</source>
            <translation>Grenzwerte, Warnungen und Gewebe folgen daraus.</translation>
        </message>
        <message>
            <source>A test object is never worn: no limit is applied to it, and it has no note.</source>
            <translation>Ein Prüfkörper wird nie getragen: Für ihn gilt kein Grenzwert, und er bekommt keinen Bericht.</translation>
        </message>
        <message>
            <source>Say which part it is: without it nothing is calculated.</source>
            <translation>Sagen Sie, welcher Körperteil es ist: Ohne ihn wird nichts berechnet.</translation>
        </message>
        <message>
            <source>Side</source>
            <translation>Seite</translation>
        </message>
        <message>
            <source>Side of the person</source>
            <translation>Seite der Person</translation>
        </message>
        <message>
            <source>Which arm or leg it is.</source>
            <translation>Welcher Arm oder welches Bein es ist.</translation>
        </message>
        <message>
            <source>as the file says</source>
            <translation>wie die Datei sagt</translation>
        </message>
        <message>
            <source>A scan does not say; a label file beside it may.</source>
            <translation>Ein Scan sagt nichts, ein Beiblatt neben ihm vielleicht.</translation>
        </message>
        <message>
            <source>right</source>
            <translation>rechts</translation>
        </message>
        <message>
            <source>left</source>
            <translation>links</translation>
        </message>
    </context>
    <context>
        <name>wrapgauge::ClearancePanel</name>
        <message>
            <source>A clinician allows it all round</source>
            <translation>Eine Fachperson der Medizin erlaubt es rundum</translation>
        </message>
        <message>
            <source>The stop becomes a warning. Their name stands in every output.</source>
            <translation>Aus dem Stopp wird eine Warnung. Der Name steht in jeder Ausgabe.</translation>
        </message>
        <message>
            <source>Name</source>
            <translation>Name</translation>
        </message>
        <message>
            <source>Name of the clinician</source>
            <translation>Name der Fachperson</translation>
        </message>
        <message>
            <source>Role</source>
            <translation>Funktion</translation>
        </message>
        <message>
            <source>Role of the clinician</source>
            <translation>Funktion der Fachperson</translation>
        </message>
        <message>
            <source>e.g. chest physician</source>
            <translation>z. B. Lungenheilkunde</translation>
        </message>
        <message>
            <source>Date</source>
            <translation>Datum</translation>
        </message>
        <message>
            <source>Day of the clinician&apos;s decision</source>
            <translation>Tag der Entscheidung</translation>
        </message>
        <message>
            <source>Name the clinician</source>
            <translation>Fachperson nennen</translation>
        </message>
        <message>
            <source>Remove the clinician</source>
            <translation>Fachperson zurücknehmen</translation>
        </message>
    </context>
    <context>
        <name>wrapgauge::NoOtherSitesPanel</name>
        <message>
            <source>There are no other sites</source>
            <translation>Es gibt keine weiteren Stellen</translation>
        </message>
        <message>
            <source>Where nothing is marked, laxer limits and thicker tissue then count.</source>
            <translation>Wo nichts markiert ist, gelten dann lockerere Grenzwerte und dickeres Gewebe.</translation>
        </message>
        <message>
            <source>Who says so</source>
            <translation>Wer sagt das</translation>
        </message>
        <message>
            <source>Who says that there are no other sites</source>
            <translation>Wer sagt, dass es keine weiteren Stellen gibt</translation>
        </message>
        <message>
            <source>name and job</source>
            <translation>Name und Beruf</translation>
        </message>
        <message>
            <source>When</source>
            <translation>Wann</translation>
        </message>
        <message>
            <source>When it was found</source>
            <translation>Wann es festgestellt wurde</translation>
        </message>
        <message>
            <source>Why</source>
            <translation>Warum</translation>
        </message>
        <message>
            <source>Why there are no other sites</source>
            <translation>Warum es keine weiteren Stellen gibt</translation>
        </message>
        <message>
            <source>how it was found</source>
            <translation>wie es festgestellt wurde</translation>
        </message>
        <message>
            <source>Confirm that there are no other sites</source>
            <translation>Bestätigen, dass es keine weiteren Stellen gibt</translation>
        </message>
        <message>
            <source>Take back that there are no other sites</source>
            <translation>Zurücknehmen, dass es keine weiteren Stellen gibt</translation>
        </message>
    </context>
    <context>
        <name>wrapgauge::SignedWords</name>
        <message>
            <source>Confirm</source>
            <translation>Bestätigen</translation>
        </message>
        <message>
            <source>Confirm: %1</source>
            <translation>Bestätigen: %1</translation>
        </message>
    </context>
    <context>
        <name>wrapgauge::SitePanel</name>
        <message>
            <source>bone</source>
            <translation>Knochen</translation>
        </message>
        <message>
            <source>nerve</source>
            <translation>Nerv</translation>
        </message>
        <message>
            <source>vessel</source>
            <translation>Gefäß</translation>
        </message>
        <message>
            <source>tendon</source>
            <translation>Sehne</translation>
        </message>
        <message>
            <source>no second one</source>
            <translation>keine zweite</translation>
        </message>
        <message>
            <source>Landmark</source>
            <translation>Landmarke</translation>
        </message>
        <message>
            <source>Click the landmark on the body</source>
            <translation>Landmarke am Körper anklicken</translation>
        </message>
        <message>
            <source>Second landmark</source>
            <translation>Zweite Landmarke</translation>
        </message>
        <message>
            <source>Click the second landmark on the body</source>
            <translation>Zweite Landmarke am Körper anklicken</translation>
        </message>
        <message>
            <source>Drop it</source>
            <translation>Verwerfen</translation>
        </message>
        <message>
            <source>Drop the chosen site</source>
            <translation>Gewählte Stelle verwerfen</translation>
        </message>
        <message>
            <source>Sites on the body</source>
            <translation>Stellen am Körper</translation>
        </message>
        <message>
            <source>Feel for it. Tick it where it is, drop it where it is not. A click shows it on the body.</source>
            <translation>Danach tasten. Abhaken, wenn sie dort liegt, sonst verwerfen. Ein Klick zeigt sie am Körper.</translation>
        </message>
        <message>
            <source>Takes the chosen site off the body.</source>
            <translation>Nimmt die gewählte Stelle vom Körper.</translation>
        </message>
        <message>
            <source>Mark where the bones are</source>
            <translation>Markieren, wo die Knochen liegen</translation>
        </message>
        <message>
            <source>One that is easy to feel.</source>
            <translation>Eine, die leicht zu tasten ist.</translation>
        </message>
        <message>
            <source>A second one makes the rest surer.</source>
            <translation>Eine zweite macht die übrigen sicherer.</translation>
        </message>
        <message>
            <source>Click it…</source>
            <translation>Anklicken…</translation>
        </message>
        <message>
            <source>Click the %1 on the body. Esc ends it.</source>
            <translation>„%1“ am Körper anklicken. Esc bricht ab.</translation>
        </message>
        <message>
            <source>Beyond the scan: %1</source>
            <translation>Außerhalb des Scans: %1</translation>
        </message>
        <message>
            <source>Confirm a site</source>
            <translation>Stelle bestätigen</translation>
        </message>
        <message>
            <source>Doubt a site</source>
            <translation>Stelle bezweifeln</translation>
        </message>
        <message>
            <source>Drop a site</source>
            <translation>Stelle verwerfen</translation>
        </message>
        <message>
            <source>%1 (%2)</source>
            <translation>%1 (%2)</translation>
        </message>
        <message>
            <source>Until then every place is judged as over bone.</source>
            <translation>Bis dahin wird jede Stelle wie über Knochen beurteilt.</translation>
        </message>
        <message>
            <source>%1 sites of the label beside the file are only proposed: confirm or drop them there.</source>
            <translation>%1 Stellen des Beiblatts neben der Datei sind nur vorgeschlagen: dort bestätigen oder verwerfen.</translation>
        </message>
        <message>
            <source>%1 of %2 still to tick or drop.</source>
            <translation>%1 von %2 sind noch abzuhaken oder zu verwerfen.</translation>
        </message>
        <message>
            <source>All %1 are confirmed.</source>
            <translation>Alle %1 sind bestätigt.</translation>
        </message>
        <message>
            <source>Say first which side it is, left or right.</source>
            <translation>Zuerst die Seite angeben, links oder rechts.</translation>
        </message>
        <message>
            <source>Choose a landmark, then click it on the body.</source>
            <translation>Eine Landmarke wählen, dann am Körper anklicken.</translation>
        </message>
    </context>
    <context>
        <name>wrapgauge::WearersPanel</name>
        <message>
            <source>Date of the note</source>
            <translation>Datum des Berichts</translation>
        </message>
        <message>
            <source>Wearers</source>
            <translation>Wer es trägt</translation>
        </message>
        <message>
            <source>Who wears it</source>
            <translation>Wer es trägt</translation>
        </message>
        <message>
            <source>e.g. healthy adults</source>
            <translation>z. B. gesunde Erwachsene</translation>
        </message>
        <message>
            <source>How many</source>
            <translation>Wie viele</translation>
        </message>
        <message>
            <source>How many people take part.</source>
            <translation>Wie viele Personen teilnehmen.</translation>
        </message>
        <message>
            <source>Posture</source>
            <translation>Haltung</translation>
        </message>
        <message>
            <source>Posture of the wearers</source>
            <translation>Haltung der tragenden Person</translation>
        </message>
        <message>
            <source>not said</source>
            <translation>nicht angegeben</translation>
        </message>
        <message>
            <source>lying</source>
            <translation>liegend</translation>
        </message>
        <message>
            <source>sitting</source>
            <translation>sitzend</translation>
        </message>
        <message>
            <source>standing</source>
            <translation>stehend</translation>
        </message>
        <message>
            <source>moving</source>
            <translation>in Bewegung</translation>
        </message>
        <message>
            <source>Above the heart</source>
            <translation>Über dem Herzen</translation>
        </message>
        <message>
            <source>How high the limb lies; below the heart is negative.</source>
            <translation>Wie hoch das Glied liegt; unter dem Herzen negativ.</translation>
        </message>
        <message>
            <source>Who watches</source>
            <translation>Wer aufpasst</translation>
        </message>
        <message>
            <source>e.g. a trained helper</source>
            <translation>z. B. geschulte Hilfe</translation>
        </message>
        <message>
            <source>How they tell</source>
            <translation>Wie sie es sagen</translation>
        </message>
        <message>
            <source>How a wearer tells that it hurts</source>
            <translation>Wie die tragende Person sagt, dass es wehtut</translation>
        </message>
        <message>
            <source>e.g. by word</source>
            <translation>z. B. mit Worten</translation>
        </message>
        <message>
            <source>All answers are given.</source>
            <translation>Alle Angaben sind da.</translation>
        </message>
        <message>
            <source>1 cell of the note is still to be filled here.</source>
            <translation>1 Feld des Berichts ist hier noch auszufüllen.</translation>
        </message>
        <message>
            <source>%1 cells of the note are still to be filled here.</source>
            <translation>%1 Felder des Berichts sind hier noch auszufüllen.</translation>
        </message>
    </context>
    <context>
        <name>ResultWords</name>
        <message>
            <source>Out of date: %1 changed.</source>
            <translation>Veraltet, weil an %1 etwas geändert wurde.</translation>
        </message>
        <message>
            <source>Not reached: %1</source>
            <translation>Nicht erreicht: %1</translation>
        </message>
        <message>
            <source>Preview, mesh edge %1.</source>
            <translation>Vorschau, Netzkante %1.</translation>
        </message>
        <message>
            <source>Final estimate, mesh edge %1: as coarse as a preview's.</source>
            <translation>Endgültige Schätzung, Netzkante %1: so grob wie eine Vorschau.</translation>
        </message>
        <message>
            <source>Final estimate, mesh edge %1.</source>
            <translation>Endgültige Schätzung, Netzkante %1.</translation>
        </message>
        <message>
            <source>Limits of a session.</source>
            <translation>Grenzwerte für eine Sitzung.</translation>
        </message>
        <message>
            <source>Limits of a minute at most.</source>
            <translation>Grenzwerte für höchstens eine Minute.</translation>
        </message>
        <message>
            <source>Limits of pulses.</source>
            <translation>Grenzwerte für Pulse.</translation>
        </message>
    </context>
    <context>
        <name>VerdictLine</name>
        <message>
            <source>Open %1</source>
            <translation>%1 öffnen</translation>
        </message>
        <message>
            <source>Nothing to judge yet: %1 %2.</source>
            <translation>Noch nichts zu beurteilen: %1 %2.</translation>
        </message>
        <message>
            <source>No result: %1</source>
            <translation>Kein Ergebnis: %1</translation>
        </message>
        <message>
            <source>Being calculated: there is no result yet.</source>
            <translation>Wird berechnet: Noch gibt es kein Ergebnis.</translation>
        </message>
        <message>
            <source>none: above a limit while deflated</source>
            <translation>keine: schon leer über einem Grenzwert</translation>
        </message>
        <message>
            <source>none</source>
            <translation>keine</translation>
        </message>
        <message>
            <source>%1: %2 of the plan</source>
            <translation>%1: %2 des Plans</translation>
        </message>
        <message>
            <source>%1, not confirmed</source>
            <translation>%1, nicht bestätigt</translation>
        </message>
        <message>
            <source>See why</source>
            <translation>Warum?</translation>
        </message>
        <message>
            <source>being looked for: %1 %</source>
            <translation>wird gesucht: %1 %</translation>
        </message>
        <message>
            <source>Cancel</source>
            <translation>Abbrechen</translation>
        </message>
        <message>
            <source>Set it</source>
            <translation>Einstellen</translation>
        </message>
        <message>
            <source>%1: the plan is set to it</source>
            <translation>%1: so ist der Plan eingestellt</translation>
        </message>
        <message>
            <source>not looked for yet</source>
            <translation>noch nicht gesucht</translation>
        </message>
        <message>
            <source>Find the highest</source>
            <translation>Höchste suchen</translation>
        </message>
        <message>
            <source>What to change</source>
            <translation>Was ändern?</translation>
        </message>
        <message>
            <source>no limit met up to %1, %2 of the plan</source>
            <translation>bis %1, %2 des Plans, kein Grenzwert erreicht</translation>
        </message>
    </context>
    <context>
        <name>wrapgauge::VerdictBar</name>
        <message>
            <source>of the limit</source>
            <translation>des Grenzwerts</translation>
        </message>
        <message>
            <source>Find the highest</source>
            <translation>Höchste suchen</translation>
        </message>
        <message>
            <source>Verdict</source>
            <translation>Urteil</translation>
        </message>
        <message>
            <source>Set to the highest inflation within the limits</source>
            <translation>Auf die höchste Füllung innerhalb der Grenzwerte einstellen</translation>
        </message>
        <message>
            <source>Highest inflation within the limits, final mesh</source>
            <translation>Höchste Füllung innerhalb der Grenzwerte, endgültiges Netz</translation>
        </message>
    </context>
    <context>
        <name>wrapgauge::NumberField</name>
        <message>
            <source>%1 is above %2, the most that can be entered here; it stays %3.</source>
            <translation>%1 liegt über %2, dem Höchsten, was hier eingegeben werden kann; es bleibt bei %3.</translation>
        </message>
        <message>
            <source>%1 is below %2, the least that can be entered here; it stays %3.</source>
            <translation>%1 liegt unter %2, dem Geringsten, was hier eingegeben werden kann; es bleibt bei %3.</translation>
        </message>
    </context>
    <context>
        <name>wrapgauge::DrawingOutcome</name>
        <message>
            <source>%1 (line %2) %3</source>
            <translation>%1 (Zeile %2) %3</translation>
        </message>
        <message>
            <source>%1; %2.</source>
            <translation>%1; %2.</translation>
        </message>
        <message>
            <source>Guessed, please check: %1.</source>
            <translation>Geraten, bitte prüfen: %1.</translation>
        </message>
        <message>
            <source>Left out, since nothing says what they are: %1.</source>
            <translation>Weggelassen, weil nichts sagt, was sie sind: %1.</translation>
        </message>
        <message>
            <source>What keeps the drawing from being used</source>
            <translation>Was der Übernahme der Zeichnung im Weg steht</translation>
        </message>
        <message>
            <source>No layout yet. To correct: %1.</source>
            <translation>Noch kein Layout. Zu korrigieren: %1.</translation>
        </message>
        <message>
            <source>Becomes a layout of %1 × %2 mm. Chambers: %3, channels: %4, inlets: %5, straps: %6.</source>
            <translation>Wird ein Layout von %1 × %2 mm. Kammern: %3, Kanäle: %4, Einlässe: %5, Gurte: %6.</translation>
        </message>
        <message>
            <source>Chamber “%1” has no inlet: add one in it, or a channel from a chamber that has one.</source>
            <translation>Kammer „%1“ hat keinen Einlass: einen hinzufügen oder einen Kanal von einer Kammer, die einen hat.</translation>
        </message>
        <message>
            <source>Other things to correct: %1. The step Layout lists them once the drawing is used.</source>
            <translation>Weiteres zu korrigieren: %1. Der Schritt Layout nennt es, sobald die Zeichnung übernommen ist.</translation>
        </message>
        <message>
            <source>Join line ends up to %1 mm apart</source>
            <translation>Linienenden bis %1 mm Abstand verbinden</translation>
        </message>
        <message>
            <source>%1 “%2”</source>
            <translation>%1 „%2“</translation>
        </message>
        <message>
            <source>A template: the layout that it carries is used, not its lines.</source>
            <translation>Eine Schablone: Übernommen wird das Layout, das sie mitführt, nicht ihre Linien.</translation>
        </message>
    </context>
    <context>
        <name>wrapgauge::DrawingShapes</name>
        <message>
            <source>%1, line %2</source>
            <translation>%1, Zeile %2</translation>
        </message>
        <message>
            <source>%1 × %2 mm</source>
            <translation>%1 × %2 mm</translation>
        </message>
        <message>
            <source>not said yet</source>
            <translation>noch nicht gesagt</translation>
        </message>
        <message>
            <source>Nothing says what it is, so it is left out.</source>
            <translation>Nichts sagt, was sie ist, also wird sie weggelassen.</translation>
        </message>
        <message>
            <source>Guessed, please check: %1.</source>
            <translation>Geraten, bitte prüfen: %1.</translation>
        </message>
        <message>
            <source>Said: %1.</source>
            <translation>Gesagt: %1.</translation>
        </message>
        <message>
            <source>It %1.</source>
            <translation>Die Form: %1.</translation>
        </message>
        <message>
            <source>The chosen shape is</source>
            <translation>Die gewählte Form ist</translation>
        </message>
        <message>
            <source>The guesses are right</source>
            <translation>Alles richtig geraten</translation>
        </message>
        <message>
            <source>Add an inlet</source>
            <translation>Einlass hinzufügen</translation>
        </message>
        <message>
            <source>Remove this inlet</source>
            <translation>Einlass entfernen</translation>
        </message>
        <message>
            <source>Shapes of the drawing</source>
            <translation>Formen der Zeichnung</translation>
        </message>
        <message>
            <source>Shape</source>
            <translation>Form</translation>
        </message>
        <message>
            <source>Size</source>
            <translation>Größe</translation>
        </message>
        <message>
            <source>It is</source>
            <translation>Sie ist</translation>
        </message>
        <message>
            <source>Where the air goes in, when the drawing does not show it.</source>
            <translation>Wo die Luft hineingeht, wenn die Zeichnung es nicht zeigt.</translation>
        </message>
        <message>
            <source>%1 ?</source>
            <translation>%1 ?</translation>
        </message>
        <message>
            <source>added here</source>
            <translation>hier hinzugefügt</translation>
        </message>
        <message>
            <source>%1, added here</source>
            <translation>%1, hier hinzugefügt</translation>
        </message>
        <message>
            <source>Click a shape</source>
            <translation>Eine Form anklicken</translation>
        </message>
        <message>
            <source>%1 · %2</source>
            <translation>%1 · %2</translation>
        </message>
        <message>
            <source>Others drawn alike too: %1</source>
            <translation>Gleich gezeichnete auch: %1</translation>
        </message>
        <message>
            <source>All of “%1” too: %2 more</source>
            <translation>Alle aus „%1“ auch: %2 weitere</translation>
        </message>
        <message>
            <source>Click a place in a chamber, or press Enter for the middle of the chosen one. Esc: no inlet.</source>
            <translation>Eine Stelle in einer Kammer anklicken, oder Eingabetaste für die Mitte der gewählten. Esc: kein Einlass.</translation>
        </message>
        <message>
            <source>Said here.</source>
            <translation>Hier gesagt.</translation>
        </message>
    </context>
    <context>
        <name>wrapgauge::DrawingView</name>
        <message>
            <source>The drawing</source>
            <translation>Die Zeichnung</translation>
        </message>
        <message>
            <source>drawing</source>
            <translation>Zeichnung</translation>
        </message>
        <message>
            <source>not said yet</source>
            <translation>noch nicht gesagt</translation>
        </message>
        <message>
            <source>Click where the air goes in</source>
            <translation>Anklicken, wo die Luft hineingeht</translation>
        </message>
        <message>
            <source>no inlet</source>
            <translation>kein Einlass</translation>
        </message>
    </context>
    <context>
        <name>wrapgauge::LayoutPicture</name>
        <message>
            <source>The layout as it will be made</source>
            <translation>Das Layout, wie es wird</translation>
        </message>
        <message>
            <source>layout</source>
            <translation>Layout</translation>
        </message>
    </context>
    <context>
        <name>wrapgauge::RimWords</name>
        <message>
            <source>gap: %1 mm</source>
            <translation>Lücke: %1 mm</translation>
        </message>
        <message>
            <source>The ends do not meet: the layout is %1 mm too short.</source>
            <translation>Die Enden treffen sich nicht: Das Layout ist %1 mm zu kurz.</translation>
        </message>
        <message>
            <source>Part of the layout lies beyond the end of the body.</source>
            <translation>Ein Teil des Layouts liegt jenseits des Körperendes.</translation>
        </message>
    </context>
    <context>
        <name>ChangeCard</name>
        <message>
            <source>Then no place comes near a limit.</source>
            <translation>Dann kommt keine Stelle in die Nähe eines Grenzwerts.</translation>
        </message>
        <message>
            <source>Then '%1' is nearest to its limit, at %2; now %3 at '%4'.</source>
            <translation>Dann ist „%1“ seinem Grenzwert am nächsten, bei %2; jetzt %3 bei „%4“.</translation>
        </message>
        <message>
            <source>%1 from %2 to %3 kPa</source>
            <translation>%1 von %2 auf %3 kPa</translation>
        </message>
        <message>
            <source>Mean contact pressure stays as it is, to 0.1 kPa.</source>
            <translation>Der mittlere Kontaktdruck bleibt, auf 0,1 kPa genau.</translation>
        </message>
        <message>
            <source>Mean contact pressure: %1.</source>
            <translation>Mittlerer Kontaktdruck: %1.</translation>
        </message>
        <message>
            <source>Calculated on the preview's mesh only.</source>
            <translation>Nur auf dem Netz der Vorschau berechnet.</translation>
        </message>
        <message>
            <source>Within the limits</source>
            <translation>Innerhalb der Grenzwerte</translation>
        </message>
        <message>
            <source>Better, but not enough</source>
            <translation>Besser, reicht nicht</translation>
        </message>
        <message>
            <source>Nothing predicted exceeds the limits used, so no change was looked for. This is not approval to wear the device.</source>
            <translation>Keine Vorhersage überschreitet die verwendeten Grenzen, also wurde keine Änderung gesucht. Das ist keine Freigabe, das Gerät zu tragen.</translation>
        </message>
        <message>
            <source>No single change that was tried brings the plan within its limits. Make one that helps, then look again.</source>
            <translation>Keine einzelne Änderung, die probiert wurde, bringt den Plan unter seine Grenzwerte. Eine vornehmen, die hilft, dann neu suchen.</translation>
        </message>
        <message>
            <source>One change brings the plan within its limits, with nothing else worse; calculated on the plan's own mesh.</source>
            <translation>Eine Änderung bringt den Plan unter seine Grenzwerte, ohne dass anderes schlechter wird; auf dem Netz des Plans berechnet.</translation>
        </message>
        <message>
            <source>Each of %1 changes brings the plan within its limits, with nothing else worse; calculated on the plan's own mesh.</source>
            <translation>Jede von %1 Änderungen bringt den Plan unter seine Grenzwerte, ohne dass anderes schlechter wird; auf dem Netz des Plans berechnet.</translation>
        </message>
        <message>
            <source>within the limits on the preview's mesh only</source>
            <translation>nur auf dem Netz der Vorschau innerhalb der Grenzwerte</translation>
        </message>
        <message>
            <source>making something else worse</source>
            <translation>machen anderes schlechter</translation>
        </message>
        <message>
            <source>of little help</source>
            <translation>helfen kaum</translation>
        </message>
        <message>
            <source>without an answer</source>
            <translation>ohne Ergebnis</translation>
        </message>
        <message>
            <source>not possible here</source>
            <translation>hier nicht möglich</translation>
        </message>
        <message>
            <source>Also tried: %1.</source>
            <translation>Außerdem probiert: %1.</translation>
        </message>
    </context>
    <context>
        <name>CutDrawing</name>
        <message>
            <source>%1 predicted</source>
            <translation>%1 vorhergesagt</translation>
        </message>
    </context>
    <context>
        <name>wrapgauge::ChangePanel</name>
        <message>
            <source>Tries one change at a time: less inflation, fastened looser or tighter, moved or turned, another sheet, shorter times. It takes a minute or a few.</source>
            <translation>Probiert eine Änderung nach der anderen: weniger Füllung, lockerer oder fester angelegt, verschoben oder gedreht, eine andere Lage, kürzere Zeiten. Das dauert eine oder einige Minuten.</translation>
        </message>
        <message>
            <source>What to change, the least change first</source>
            <translation>Was ändern, die kleinste Änderung zuerst</translation>
        </message>
        <message>
            <source>Find what to change</source>
            <translation>Suchen, was zu ändern ist</translation>
        </message>
        <message>
            <source>Make this change</source>
            <translation>Diese Änderung vornehmen</translation>
        </message>
        <message>
            <source>Make the chosen change of the plan</source>
            <translation>Die gewählte Änderung am Plan vornehmen</translation>
        </message>
        <message>
            <source>What to change</source>
            <translation>Was ändern?</translation>
        </message>
        <message>
            <source>Looking for changes. Cancel is below.</source>
            <translation>Wird gesucht; Abbrechen steht unten.</translation>
        </message>
        <message>
            <source>Found for the plan as it was before. Undo takes the last change back; to go on, look again.</source>
            <translation>Gefunden für den Plan, wie er vorher war. Rückgängig nimmt die letzte Änderung zurück; um weiterzugehen, neu suchen.</translation>
        </message>
    </context>
    <context>
        <name>wrapgauge::CutView</name>
        <message>
            <source>Where the limb is cut, along its axis</source>
            <translation>Wo das Glied geschnitten wird, längs seiner Achse</translation>
        </message>
        <message>
            <source>Slides the ring along the limb</source>
            <translation>Schiebt den Ring das Glied entlang</translation>
        </message>
        <message>
            <source>cut</source>
            <translation>Schnitt</translation>
        </message>
        <message>
            <source>No estimate yet: there is nothing to cut.</source>
            <translation>Noch keine Schätzung: Es gibt nichts zu schneiden.</translation>
        </message>
        <message>
            <source>The contact is being read.</source>
            <translation>Der Kontakt wird gelesen.</translation>
        </message>
        <message>
            <source>Cut %1 mm from the distal end, seen from there</source>
            <translation>Schnitt %1 mm vom distalen Ende, von dort gesehen</translation>
        </message>
        <message>
            <source>the skin takes up to %1 here</source>
            <translation>die Haut trägt hier bis zu %1</translation>
        </message>
        <message>
            <source>nothing presses here</source>
            <translation>hier drückt nichts</translation>
        </message>
    </context>
    <context>
        <name>wrapgauge::DropFrame</name>
        <message>
            <source>Let go to open: plan, mesh, drawing or layout</source>
            <translation>Loslassen zum Öffnen: Plan, Netz, Zeichnung oder Layout</translation>
        </message>
    </context>
    <context>
        <name>wrapgauge::GoToField</name>
        <message>
            <source>Go to a field</source>
            <translation>Zu einem Feld gehen</translation>
        </message>
        <message>
            <source>part of its name, such as pressure</source>
            <translation>ein Teil seines Namens, etwa Druck</translation>
        </message>
        <message>
            <source>Part of a field's name</source>
            <translation>Teil eines Feldnamens</translation>
        </message>
        <message>
            <source>Fields of that name</source>
            <translation>Felder dieses Namens</translation>
        </message>
        <message>
            <source>No field has this in its name.</source>
            <translation>Kein Feld hat das in seinem Namen.</translation>
        </message>
    </context>
    <context>
        <name>wrapgauge::KeptPanel</name>
        <message>
            <source>%1 of the limit, peak %2, inside %3</source>
            <translation>%1 des Grenzwerts, Spitze %2, innen %3</translation>
        </message>
        <message>
            <source>No input differs</source>
            <translation>Keine Eingabe unterscheidet sich</translation>
        </message>
        <message>
            <source>What differs: %1</source>
            <translation>Verschieden: %1</translation>
        </message>
        <message>
            <source>from '%1' to '%2' the share of the limit goes from %3 to %4, the peak from %5 to %6</source>
            <translation>von „%1“ zu „%2“ geht der Anteil am Grenzwert von %3 auf %4, die Spitze von %5 auf %6</translation>
        </message>
        <message>
            <source>; they were calculated on different meshes (%1 and %2 mm)</source>
            <translation>; sie wurden auf verschiedenen Netzen berechnet (%1 und %2 mm)</translation>
        </message>
        <message>
            <source>Keep this one</source>
            <translation>Diese behalten</translation>
        </message>
        <message>
            <source>Keep the plan as it stands in the tray</source>
            <translation>Den Plan, wie er steht, in der Ablage behalten</translation>
        </message>
        <message>
            <source>Take it up</source>
            <translation>Übernehmen</translation>
        </message>
        <message>
            <source>Make the chosen variant the plan</source>
            <translation>Die gewählte Variante zum Plan machen</translation>
        </message>
        <message>
            <source>Drop it</source>
            <translation>Verwerfen</translation>
        </message>
        <message>
            <source>Delete the chosen variants</source>
            <translation>Die gewählten Varianten löschen</translation>
        </message>
        <message>
            <source>Kept variants</source>
            <translation>Behaltene Varianten</translation>
        </message>
        <message>
            <source>above a limit: </source>
            <translation>über einem Grenzwert: </translation>
        </message>
        <message>
            <source>Save the plan first: variants are kept beside it.</source>
            <translation>Erst den Plan speichern: Varianten werden neben ihm behalten.</translation>
        </message>
        <message>
            <source>Nothing is kept yet. Keep the plan as it stands, change it, and compare.</source>
            <translation>Noch ist nichts behalten. Den Plan behalten, wie er steht, ihn ändern und vergleichen.</translation>
        </message>
        <message>
            <source>Choose one to take it up, two to compare them.</source>
            <translation>Eine wählen, um sie zu übernehmen; zwei, um sie zu vergleichen.</translation>
        </message>
        <message>
            <source>What it is called</source>
            <translation>Wie sie heißt</translation>
        </message>
        <message>
            <source>Variant %1</source>
            <translation>Variante %1</translation>
        </message>
        <message>
            <source>Take up '%1'</source>
            <translation>„%1“ übernehmen</translation>
        </message>
        <message>
            <source>Delete what is chosen from the tray? It cannot be taken back.</source>
            <translation>Was gewählt ist, aus der Ablage löschen? Das lässt sich nicht zurücknehmen.</translation>
        </message>
    </context>
    <context>
        <name>wrapgauge::PumpScale</name>
        <message>
            <source>within the limits</source>
            <translation>innerhalb der Grenzwerte</translation>
        </message>
        <message>
            <source>warning</source>
            <translation>Warnung</translation>
        </message>
        <message>
            <source>above a limit</source>
            <translation>über einem Grenzwert</translation>
        </message>
        <message>
            <source>stop</source>
            <translation>Stopp</translation>
        </message>
        <message>
            <source>What each filling meets</source>
            <translation>Was jede Füllung erreicht</translation>
        </message>
        <message>
            <source>While it fills: %1. What lasts over a session counts at the end alone.</source>
            <translation>Beim Füllen: %1. Was über eine Sitzung wirkt, zählt erst am Ende.</translation>
        </message>
        <message>
            <source>being read</source>
            <translation>wird gelesen</translation>
        </message>
        <message>
            <source>%1 from %2 inside</source>
            <translation>%1 ab %2 innen</translation>
        </message>
    </context>
    <context>
        <name>wrapgauge::WelcomePage</name>
        <message>
            <source>Where to begin</source>
            <translation>Womit beginnen</translation>
        </message>
        <message>
            <source>Predicts how hard an inflatable silicone wearable presses. Predictions only: not a medical device; ask a clinician before anyone wears it.</source>
            <translation>Sagt vorher, wie stark ein aufblasbares Silikongerät drückt. Nur Vorhersagen: kein Medizinprodukt; fragen Sie ärztlichen Rat, bevor es jemand trägt.</translation>
        </message>
        <message>
            <source>What do you have?</source>
            <translation>Was haben Sie?</translation>
        </message>
        <message>
            <source>A scan of the limb</source>
            <translation>Einen Scan des Glieds</translation>
        </message>
        <message>
            <source>A mesh: OBJ, STL, PLY or glTF</source>
            <translation>Ein Netz: OBJ, STL, PLY oder glTF</translation>
        </message>
        <message>
            <source>Girths from a tape</source>
            <translation>Umfänge vom Maßband</translation>
        </message>
        <message>
            <source>Makes a limb of them, or of a survey's percentiles</source>
            <translation>Macht daraus ein Glied, oder aus Perzentilen einer Erhebung</translation>
        </message>
        <message>
            <source>A drawing of the layout</source>
            <translation>Eine Zeichnung des Layouts</translation>
        </message>
        <message>
            <source>SVG or DXF; the limb comes after</source>
            <translation>SVG oder DXF; das Glied kommt danach</translation>
        </message>
        <message>
            <source>Nothing yet</source>
            <translation>Noch nichts</translation>
        </message>
        <message>
            <source>Opens a worked example: a cuff on a forearm</source>
            <translation>Öffnet ein Beispiel: eine Manschette am Unterarm</translation>
        </message>
        <message>
            <source>Recent plans</source>
            <translation>Letzte Pläne</translation>
        </message>
    </context>
    <context>
        <name>AngleAxis</name>
        <message>
            <source>seen</source>
            <translation>gesehen</translation>
        </message>
    </context>
    <context>
        <name>PrintPage</name>
        <message>
            <source>And %1 more: see the window or the note.</source>
            <translation>Und %1 weitere: siehe Fenster oder Bericht.</translation>
        </message>
    </context>
    <context>
        <name>wrapgauge::AgreementView</name>
        <message>
            <source>Read against predicted</source>
            <translation>Gemessen gegen vorhergesagt</translation>
        </message>
        <message>
            <source>%1 readings; on average %2 times what is %3.</source>
            <translation>%1 Messwerte; im Mittel das %2-Fache (%3).</translation>
        </message>
        <message>
            <source>%1, over the middle of its kind</source>
            <translation>%1, bezogen auf die Mitte der Art</translation>
        </message>
        <message>
            <source>read</source>
            <translation>gemessen</translation>
        </message>
    </context>
    <context>
        <name>wrapgauge::BenchStep</name>
        <message>
            <source>Propose readings</source>
            <translation>Vorschlagen</translation>
        </message>
        <message>
            <source>Open readings…</source>
            <translation>Öffnen …</translation>
        </message>
        <message>
            <source>Fit to the readings</source>
            <translation>An die Messwerte anpassen</translation>
        </message>
        <message>
            <source>Use the fit</source>
            <translation>Anpassung verwenden</translation>
        </message>
        <message>
            <source>Use the fit as the plan's calibration</source>
            <translation>Die Anpassung als Kalibrierung des Plans verwenden</translation>
        </message>
        <message>
            <source>Leave it out</source>
            <translation>Weglassen</translation>
        </message>
        <message>
            <source>Take the calibration out of the plan</source>
            <translation>Die Kalibrierung aus dem Plan nehmen</translation>
        </message>
        <message>
            <source>Kind of reading</source>
            <translation>Art der Messung</translation>
        </message>
        <message>
            <source>Standard error of the instrument in per cent</source>
            <translation>Standardfehler des Messgeräts in Prozent</translation>
        </message>
        <message>
            <source>Instrument</source>
            <translation>Messgerät</translation>
        </message>
        <message>
            <source>Date of the readings</source>
            <translation>Datum der Messwerte</translation>
        </message>
        <message>
            <source>Remark on the readings</source>
            <translation>Bemerkung zu den Messwerten</translation>
        </message>
        <message>
            <source>Predicts what each reading should be, and writes the sheet to print and the table.</source>
            <translation>Sagt voraus, was jede Messung ergeben sollte, und schreibt das Blatt zum Ausdrucken und die Tabelle.</translation>
        </message>
        <message>
            <source>what it was read with</source>
            <translation>womit gemessen wurde</translation>
        </message>
        <message>
            <source>invented readings say so here</source>
            <translation>erfundene Messwerte sagen es hier</translation>
        </message>
        <message>
            <source>Error, %</source>
            <translation>Fehler, %</translation>
        </message>
        <message>
            <source>Date</source>
            <translation>Datum</translation>
        </message>
        <message>
            <source>Remark</source>
            <translation>Bemerkung</translation>
        </message>
        <message>
            <source>date and remark</source>
            <translation>Datum und Bemerkung</translation>
        </message>
        <message>
            <source>Date and remark</source>
            <translation>Datum und Bemerkung</translation>
        </message>
        <message>
            <source>Open readings</source>
            <translation>Messwerte öffnen</translation>
        </message>
        <message>
            <source>Readings (*.csv)</source>
            <translation>Messwerte (*.csv)</translation>
        </message>
        <message>
            <source>Calibration</source>
            <translation>Kalibrierung</translation>
        </message>
        <message>
            <source>Leave the calibration out</source>
            <translation>Kalibrierung weglassen</translation>
        </message>
        <message>
            <source>%1: %2 of %3 read</source>
            <translation>%1: %2 von %3 gemessen</translation>
        </message>
        <message>
            <source>Typed values go to %1 at once.</source>
            <translation>Eingetippte Werte gehen sofort nach %1.</translation>
        </message>
        <message>
            <source>Off the body first: readings on a person come last, within the limits, under the study's rules.</source>
            <translation>Erst ohne Körper: Messungen an Personen kommen zuletzt, innerhalb der Grenzwerte, nach den Regeln der Studie.</translation>
        </message>
        <message>
            <source>%1 is taken</source>
            <translation>%1 wird angenommen</translation>
        </message>
        <message>
            <source>fitted</source>
            <translation>angepasst</translation>
        </message>
        <message>
            <source>predicted</source>
            <translation>vorhergesagt</translation>
        </message>
        <message>
            <source>Readings from your own device calibrate the model to it. Without them, predictions are multiplied by the model's usual factor.</source>
            <translation>Messwerte Ihres eigenen Geräts machen die Zahlen zu Ihren. Ohne sie wird jede Vorhersage mit dem üblichen Faktor des Modells genommen.</translation>
        </message>
        <message>
            <source>Predictions are multiplied by %1, from %2 readings of this device; the fit&apos;s report says why.</source>
            <translation>Vorhersagen werden mit %1 multipliziert, nach %2 Messwerten dieses Geräts. Der Bericht der Anpassung sagt, warum.</translation>
        </message>
        <message>
            <source>Plan or readings were changed since the fit: fit again.</source>
            <translation>Plan oder Messwerte wurden seit der Anpassung geändert: Passen Sie neu an.</translation>
        </message>
    </context>
    <context>
        <name>wrapgauge::ReadingTable</name>
        <message>
            <source>Readings of this kind</source>
            <translation>Messwerte dieser Art</translation>
        </message>
        <message>
            <source>Set</source>
            <translation>Vorgabe</translation>
        </message>
        <message>
            <source>Read</source>
            <translation>Wert</translation>
        </message>
        <message>
            <source>Predicted</source>
            <translation>Modell</translation>
        </message>
        <message>
            <source>×</source>
            <translation>×</translation>
        </message>
        <message>
            <source>What you read, in %1; empty: not read.</source>
            <translation>Was Sie gemessen haben, in %1; leer: nicht gemessen.</translation>
        </message>
        <message>
            <source>After the fit.</source>
            <translation>Nach der Anpassung.</translation>
        </message>
        <message>
            <source>As the sheet has it.</source>
            <translation>Wie auf dem Blatt.</translation>
        </message>
        <message>
            <source>Read over predicted</source>
            <translation>Gemessener Wert durch Vorhersage des Modells</translation>
        </message>
        <message>
            <source>Far from the prediction: look again, then tick it.</source>
            <translation>Weit weg von der Vorhersage: Sehen Sie noch einmal hin, und haken Sie es dann ab.</translation>
        </message>
        <message>
            <source>Read, %1</source>
            <translation>Wert, %1</translation>
        </message>
    </context>
</TS>
