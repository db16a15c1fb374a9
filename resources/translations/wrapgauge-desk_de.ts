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
        <name>LayoutPart</name>
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
            <source>Ease</source>
            <translation>Spiel</translation>
        </message>
        <message>
            <source>Graduated sleeve</source>
            <translation>Abgestufte Stulpe</translation>
        </message>
        <message>
            <source>Ease distal</source>
            <translation>Spiel distal</translation>
        </message>
        <message>
            <source>Ease proximal</source>
            <translation>Spiel proximal</translation>
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
            <source>needs mending</source>
            <translation>muss ausgebessert werden</translation>
        </message>
        <message>
            <source>needs a layout</source>
            <translation>braucht ein Layout</translation>
        </message>
        <message>
            <source>needs mending in 1 place</source>
            <translation>muss an 1 Stelle ausgebessert werden</translation>
        </message>
        <message>
            <source>needs mending in %1 places</source>
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
            <source>needs an estimate on the standard mesh</source>
            <translation>braucht eine Schätzung auf dem Standardnetz</translation>
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
            <source>needs other steps of mending</source>
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
            <translation>— Grenze
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
    </context>
    <context>
        <name>wrapgauge::BodyOverlay</name>
        <message>
            <source>No body yet. Open a mesh file or make a form in the step Body, or drop a file here.</source>
            <translation>Noch kein Körper. Im Schritt Körper ein Netz öffnen oder eine Form machen, oder eine Datei hierher ziehen.</translation>
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
            <source>Body from measures</source>
            <translation>Körper aus Maßen</translation>
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
            <source>Raw scan: mend it</source>
            <translation>Roher Scan: ausbessern</translation>
        </message>
        <message>
            <source>Mended it can be read: tick Raw scan: mend it.</source>
            <translation>Ausgebessert lässt er sich lesen: „Roher Scan: ausbessern“ ankreuzen.</translation>
        </message>
        <message>
            <source>Unit of the body</source>
            <translation>Einheit des Körpers</translation>
        </message>
        <message>
            <source>Mend the scan</source>
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
            <source>long axis found by itself</source>
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
            <source>Long axis of the body</source>
            <translation>Längsachse des Körpers</translation>
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
            <source>nothing to say</source>
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
            <translation>Grenze</translation>
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
            <source>outline</source>
            <translation>Umriss</translation>
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
            <translation>ausgelassen</translation>
        </message>
        <message>
            <source>in %1</source>
            <translation>in %1</translation>
        </message>
        <message>
            <source>fill %1</source>
            <translation>Füllung %1</translation>
        </message>
        <message>
            <source>Drawing: %1</source>
            <translation>Zeichnung: %1</translation>
        </message>
        <message>
            <source>Say what each shape of the drawing is. Nothing is taken over until you press Take over.</source>
            <translation>Sagen Sie, was jede Form der Zeichnung ist. Nichts wird übernommen, bis Sie Übernehmen drücken.</translation>
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
            <source>Called</source>
            <translation>Heißt</translation>
        </message>
        <message>
            <source>Size</source>
            <translation>Größe</translation>
        </message>
        <message>
            <source>Becomes</source>
            <translation>Wird</translation>
        </message>
        <message>
            <source>Remark</source>
            <translation>Bemerkung</translation>
        </message>
        <message>
            <source>Take over</source>
            <translation>Übernehmen</translation>
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
            <source>Stretch</source>
            <translation>Dehnung</translation>
        </message>
        <message>
            <source>%1, line %2</source>
            <translation>%1, Zeile %2</translation>
        </message>
        <message>
            <source>Shape %1 becomes</source>
            <translation>Form %1 wird</translation>
        </message>
        <message>
            <source>not said</source>
            <translation>nicht gesagt</translation>
        </message>
        <message>
            <source>To mend: %1</source>
            <translation>Auszubessern: %1</translation>
        </message>
        <message>
            <source>Chambers: %1, channels: %2, inlets: %3, straps: %4.</source>
            <translation>Kammern: %1, Kanäle: %2, Einlässe: %3, Gurte: %4.</translation>
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
            <source>To mend</source>
            <translation>Auszubessern</translation>
        </message>
        <message>
            <source>When casting</source>
            <translation>Beim Gießen</translation>
        </message>
        <message>
            <source>Model factor: predicted pressures are multiplied by it before they are held against a limit, because no measurement has confirmed them yet.</source>
            <translation>Model factor (Modellfaktor): Mit ihm werden vorhergesagte Drücke malgenommen, bevor sie mit einem Grenzwert verglichen werden, weil noch keine Messung sie bestätigt hat.</translation>
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
            <source>Session and supply</source>
            <translation>Sitzung und Versorgung</translation>
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
            <translation>bis zu einem Volumen zwischen den Blättern</translation>
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
            <translation>Blätter</translation>
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
            <source>Ceiling</source>
            <translation>Obergrenze</translation>
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
            <source>Reason for laxer limits</source>
            <translation>Grund für weniger strenge Grenzwerte</translation>
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
            <source>On the standard &amp;mesh</source>
            <translation>Auf dem &amp;Standardnetz</translation>
        </message>
        <message>
            <source>Ctrl+E</source>
            <translation>Ctrl+E</translation>
        </message>
        <message>
            <source>Find the &amp;ceiling</source>
            <translation>&amp;Obergrenze suchen</translation>
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
            <source>1. Body: open a mesh of the limb, or make one from measures.
2. Layout: open a drawing and say what each shape is, or make a layout.
3. Wear: place it on the body and say how it closes.
4. Inflation: give every inlet a pressure or a volume.
5. Limits: read what is found; each sentence jumps to its place.
6. Note: estimate on the standard mesh, then save the note for the study's reviewers.

A preview follows every change. Ctrl+1 to Ctrl+6 open the steps, Alt+1 to Alt+4 go to the areas, Ctrl+E estimates, Esc cancels.</source>
            <translation>1. Körper: ein Netz des Glieds öffnen oder eines aus Maßen machen.
2. Layout: eine Zeichnung öffnen und sagen, was jede Form ist, oder ein Layout machen.
3. Anlegen: auf den Körper legen und sagen, wie es schließt.
4. Füllen: jedem Einlass Druck oder Volumen geben.
5. Grenzwerte: lesen, was gefunden wird; jeder Satz springt an seine Stelle.
6. Bericht: auf dem Standardnetz schätzen, dann den Bericht für die Prüfenden der Studie speichern.

Jeder Änderung folgt eine Vorschau. Strg+1 bis Strg+6 öffnen die Schritte, Alt+1 bis Alt+4 gehen zu den Bereichen, Strg+E schätzt, Esc bricht ab.</translation>
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
            <source>Make left right</source>
            <translation>Links zu rechts machen</translation>
        </message>
        <message>
            <source>Even triangles of</source>
            <translation>Gleiche Dreiecke von</translation>
        </message>
        <message>
            <source>Table</source>
            <translation>Tisch</translation>
        </message>
        <message>
            <source>Loose crumbs</source>
            <translation>Lose Krümel</translation>
        </message>
        <message>
            <source>Damaged faces</source>
            <translation>Beschädigte Flächen</translation>
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
            <source>Standing upright</source>
            <translation>Aufrecht stellen</translation>
        </message>
        <message>
            <source>Part kept</source>
            <translation>Behaltener Teil</translation>
        </message>
        <message>
            <source>Left and right</source>
            <translation>Links und rechts</translation>
        </message>
        <message>
            <source>Even triangles</source>
            <translation>Gleichmäßige Dreiecke</translation>
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
            <source>Please mend</source>
            <translation>Bitte ausbessern</translation>
        </message>
        <message>
            <source>Note</source>
            <translation>Hinweis</translation>
        </message>
    </context>
    <context>
        <name>wrapgauge::NoteStep</name>
        <message>
            <source>Estimate on the standard mesh</source>
            <translation>Auf dem Standardnetz schätzen</translation>
        </message>
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
            <source>Two pages for the study's reviewers. Empty cells are for the study to fill.</source>
            <translation>Zwei Seiten für die Prüfenden der Studie. Leere Felder füllt die Studie.</translation>
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
            <source>Name of the plan</source>
            <translation>Name des Plans</translation>
        </message>
        <message>
            <source>The note is being made…</source>
            <translation>Der Bericht wird erstellt …</translation>
        </message>
        <message>
            <source>A note is written from an estimate on the standard mesh: a preview is too coarse for it. Esc cancels one that takes too long.</source>
            <translation>Ein Bericht entsteht aus einer Schätzung auf dem Standardnetz: eine Vorschau ist zu grob dafür. Esc bricht eine ab, die zu lange dauert.</translation>
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
    </context>
    <context>
        <name>wrapgauge::PlanColumn</name>
        <message>
            <source>Steps of the plan</source>
            <translation>Schritte des Plans</translation>
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
            <source>Cancel what is being worked out</source>
            <translation>Laufende Rechnung abbrechen</translation>
        </message>
    </context>
    <context>
        <name>wrapgauge::SheetField</name>
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
        <name>wrapgauge::SheetFields</name>
        <message>
            <source>Skin sheet</source>
            <translation>Hautblatt</translation>
        </message>
        <message>
            <source>Outer sheet</source>
            <translation>Außenblatt</translation>
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
            <translation>Stoff auf dem Außenblatt, längs x; 0: keiner. Zieht nur.</translation>
        </message>
        <message>
            <source>Cloth on the outer sheet, along y; 0: none. Pulls only.</source>
            <translation>Stoff auf dem Außenblatt, längs y; 0: keiner. Zieht nur.</translation>
        </message>
        <message>
            <source>Skin prestretch</source>
            <translation>Haut, Vordehnung</translation>
        </message>
        <message>
            <source>Skin sheet, stretched along x when fused</source>
            <translation>Hautblatt, beim Verbinden längs x gedehnt</translation>
        </message>
        <message>
            <source>Outer sheet, stretched along x when fused</source>
            <translation>Außenblatt, beim Verbinden längs x gedehnt</translation>
        </message>
        <message>
            <source>Skin sheet: stretched along x by this much when it was fused; 0: not.</source>
            <translation>Hautblatt: so weit längs x gedehnt, als es verbunden wurde; 0: nicht.</translation>
        </message>
        <message>
            <source>Outer sheet: stretched along x by this much when it was fused; 0: not.</source>
            <translation>Außenblatt: so weit längs x gedehnt, als es verbunden wurde; 0: nicht.</translation>
        </message>
        <message>
            <source>Backing along y</source>
            <translation>Rücken längs y</translation>
        </message>
        <message>
            <source>Outer prestretch</source>
            <translation>Außen, Vordehnung</translation>
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
            <source>How long it is worn; without it exposure over time is not worked out.</source>
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
            <source>Estimate on the standard mesh</source>
            <translation>Auf dem Standardnetz schätzen</translation>
        </message>
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
            <source>Older than the last change of %1.</source>
            <translation>Älter als die letzte Änderung an %1.</translation>
        </message>
        <message>
            <source>Nothing estimated yet.</source>
            <translation>Noch nichts geschätzt.</translation>
        </message>
        <message>
            <source>Preview on a coarse mesh of %1.</source>
            <translation>Vorschau auf grobem Netz von %1.</translation>
        </message>
        <message>
            <source>Estimate on the standard mesh of %1.</source>
            <translation>Schätzung auf dem Standardnetz von %1.</translation>
        </message>
        <message>
            <source>Not reached: %1</source>
            <translation>Nicht erreicht: %1</translation>
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
            <source>Tick Raw scan: mend it in the step Body.</source>
            <translation>Im Schritt Körper „Roher Scan: ausbessern“ ankreuzen.</translation>
        </message>
        <message>
            <source>Change the steps of mending in the step Body.</source>
            <translation>Im Schritt Körper die Schritte des Ausbesserns ändern.</translation>
        </message>
        <message>
            <source>Open another file in the step Body.</source>
            <translation>Im Schritt Körper eine andere Datei öffnen.</translation>
        </message>
        <message>
            <source>Estimate on the plan&apos;s mesh of %1, as coarse as a preview&apos;s.</source>
            <translation>Schätzung auf dem Netz des Plans von %1, so grob wie das einer Vorschau.</translation>
        </message>
    </context>
    <context>
        <name>wrapgauge::WearStep</name>
        <message>
            <source>whole layout</source>
            <translation>alles</translation>
        </message>
        <message>
            <source>Girth there %1, closing length %2; %3 would meet without stretching.</source>
            <translation>Umfang dort %1, Schließlänge %2; %3 träfe sich ohne Dehnung.</translation>
        </message>
        <message>
            <source>distal edge</source>
            <translation>distalen Rand</translation>
        </message>
        <message>
            <source>proximal edge</source>
            <translation>proximalen Rand</translation>
        </message>
        <message>
            <source>Laid without stretching, a gap of %1 stays at the %2.</source>
            <translation>Ohne Dehnung aufgelegt bleibt eine Lücke von %1 am %2.</translation>
        </message>
        <message>
            <source>Laid without stretching, %1 overlap at the %2.</source>
            <translation>Ohne Dehnung aufgelegt überlappen %1 am %2.</translation>
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
            <source>Point of the layout that lies on the anchor, x</source>
            <translation>Punkt des Layouts auf dem Anker, x</translation>
        </message>
        <message>
            <source>Point of the layout that lies on the anchor, y</source>
            <translation>Punkt des Layouts auf dem Anker, y</translation>
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
            <source>Layout point x</source>
            <translation>Layoutpunkt x</translation>
        </message>
        <message>
            <source>Layout point y</source>
            <translation>Layoutpunkt y</translation>
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
            <source>From x</source>
            <translation>Von x</translation>
        </message>
        <message>
            <source>Taper</source>
            <translation>Schräge</translation>
        </message>
        <message>
            <source>Turn the layout</source>
            <translation>Layout drehen</translation>
        </message>
        <message>
            <source>Layout point</source>
            <translation>Layoutpunkt</translation>
        </message>
        <message>
            <source>Place the layout</source>
            <translation>Layout anlegen</translation>
        </message>
        <message>
            <source>Move the layout</source>
            <translation>Layout verschieben</translation>
        </message>
        <message>
            <source>%1 to %2</source>
            <translation>%1–%2</translation>
        </message>
    </context>
    <context>
        <name>wrapgauge::TissuePanel</name>
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
            <source>each place by itself</source>
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
            <source>Stiffness of the tissue</source>
            <translation>Steifigkeit des Gewebes</translation>
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
            <source>Goes to the picked spot, else beside the layout: click a spot on the body first. What a form brings by itself is not listed here.</source>
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
    </context>
    <context>
        <name>wrapgauge::SolvingPanel</name>
        <message>
            <source>Edge of the standard mesh</source>
            <translation>Kante des Standardnetzes</translation>
        </message>
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
            <translation>Blätter widerstehen Biegung</translation>
        </message>
        <message>
            <source>Sheets carry no compression</source>
            <translation>Blätter nehmen keine Stauchung auf</translation>
        </message>
        <message>
            <source>Steps</source>
            <translation>Schritte</translation>
        </message>
        <message>
            <source>Mesh</source>
            <translation>Netz</translation>
        </message>
        <message>
            <source>Shorter edges beside seams and inset seams, where sheets bend most.</source>
            <translation>Kürzere Kanten neben Nähten und Innennähten, wo sich die Blätter am stärksten biegen.</translation>
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
            <source>Recorded states</source>
            <translation>Festgehaltene Zustände</translation>
        </message>
        <message>
            <source>Bending of the sheets</source>
            <translation>Biegung der Blätter</translation>
        </message>
        <message>
            <source>Compression of the sheets</source>
            <translation>Druck in den Blättern</translation>
        </message>
        <message>
            <source>Compare ways of solving</source>
            <translation>Rechenarten vergleichen</translation>
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
</TS>
