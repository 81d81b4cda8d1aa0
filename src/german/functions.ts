// The sentences of the functions in German.
import type { Sentence } from './english';

export const FUNCTIONS = {
  'Why a call is refused, or ok: the message that the spreadsheet may hide.':
    'Warum ein Aufruf abgelehnt wird, oder ok: die Meldung, die das Tabellenprogramm verbergen kann.',
  'What a function does: formula, symbols, limits, sources, and how each value is known.':
    'Was eine Funktion tut: Formel, Formelzeichen, Grenzen, Quellen und die Herkunft jedes Werts.',
  'Formula of a call with its numbers filled in, and the result with its unit.':
    'Formel eines Aufrufs mit eingesetzten Zahlen, und das Ergebnis mit Einheit.',
  'Version of the functions and of their data.': 'Version der Funktionen und ihrer Daten.',
  'Smallest gap per side between a board and the walls of its pocket, mm.':
    'Kleinster Spalt je Seite zwischen Leiterplatte und Wänden ihrer Tasche, mm.',
  'Smallest, nominal and largest gap over a clamped board, mm; negative is crushed.':
    'Kleinster, nomineller und größter Spalt über einer geklemmten Leiterplatte, mm; negativ: gequetscht.',
  'Spills as one row.': 'Läuft in eine Zeile über.',
  'Radius around the hole that the metal of the screw can reach, mm.':
    'Radius um das Loch, den das Metall der Schraube erreichen kann, mm.',
  'Distance from copper to metal beyond the one required, mm; negative is too close.':
    'Abstand von Kupfer zu Metall über den verlangten hinaus, mm; negativ: zu nah.',
  'Diameter of the keep-out on a board around hardware, mm: factor × its diameter.':
    'Durchmesser der Sperrfläche auf einer Leiterplatte um ein Befestigungsteil, mm: Faktor × dessen Durchmesser.',
  'Play per side of a sleeve in the hole of a board, mm: (hole − sleeve)/2 − shift.':
    'Spiel je Seite einer Hülse im Loch einer Leiterplatte, mm: (Loch − Hülse)/2 − Versatz.',
  'Ring of the boss that still holds the board at its worst sideways position, mm.':
    'Ring des Doms, der die Leiterplatte in ihrer ungünstigsten seitlichen Lage noch hält, mm.',
  'Sag of a board strip under a force in the middle of its span, mm: an estimate.':
    'Durchbiegung eines Leiterplattenstreifens unter einer Kraft in der Mitte der Stützweite, mm: eine Schätzung.',
  'Strain on the surface of a board strip under a force in the middle of its span, in 1e-6: an estimate.':
    'Randdehnung eines Leiterplattenstreifens unter einer Kraft in der Mitte der Stützweite, in 1e-6: eine Schätzung.',
  'First natural frequency of a rectangular board with its mass spread evenly, Hz: an estimate.':
    'Erste Eigenfrequenz einer rechteckigen Leiterplatte mit gleichmäßig verteilter Masse, Hz: eine Schätzung.',
  'Gap that two materials of one length need for a change of temperature, mm.':
    'Spalt, den zwei Werkstoffe gleicher Länge bei einer Temperaturänderung brauchen, mm.',
  'Wall of an internal feature (boss, rib, post) as a share of the outer wall, mm.':
    'Wanddicke eines inneren Elements (Dom, Rippe, Kopfdom) als Anteil der Außenwand, mm.',
  'Outside diameter of a boss or post around a hole, mm: hole + 2·wall, plus draft on both sides.':
    'Außendurchmesser eines Schraub- oder Kopfdoms um ein Loch, mm: Loch + 2·Wanddicke, dazu beidseitig die Schräge.',
  'Outside diameter of a boss by the rule ratio × screw diameter, mm.':
    'Außendurchmesser eines Schraubdoms nach der Regel Verhältnis × Schraubendurchmesser, mm.',
  'Wall of a boss at a distance from its free end, mm.': 'Wanddicke eines Schraubdoms in einem Abstand von seinem freien Ende, mm.',
  'Beyond the hole the boss is solid and its outside diameter is the wall.':
    'Jenseits des Lochs ist der Dom voll, und sein Außendurchmesser ist die Wand.',
  'Outside diameter, hole and wall of a boss at its free end and at its root, mm.':
    'Außendurchmesser, Loch und Wanddicke eines Schraubdoms am freien Ende und am Fuß, mm.',
  'Spills as a table.': 'Läuft in eine Tabelle über.',
  'Slenderness of a boss, a ratio: height ÷ outside diameter.': 'Schlankheit eines Schraubdoms, ein Verhältnis: Höhe ÷ Außendurchmesser.',
  'Boss wall ÷ outer wall at its root, a ratio: the larger, the deeper the sink mark.':
    'Domwand ÷ Außenwand am Fuß, ein Verhältnis: je größer, desto tiefer die Einfallstelle.',
  'Largest circle in the root of a boss wall, where sink begins, mm: it touches outer face, foot and edge of the hole.':
    'Größter Kreis am Fuß einer Domwand, wo der Einfall beginnt, mm: er berührt Außenfläche, Fuß und Lochrand.',
  'Mould steel left at the floor between a boss and a wall beside it, mm.':
    'Verbleibender Werkzeugstahl am Grund zwischen Dom und benachbarter Wand, mm.',
  'Both lean into the gap towards the floor.': 'Beide neigen sich zum Grund hin in den Spalt.',
  'Mould steel left at the floor between a boss and the inside corner beside it, mm; negative: merged.':
    'Verbleibender Werkzeugstahl am Grund zwischen Dom und benachbarter Innenecke, mm; negativ: verschmolzen.',
  "Boss, walls and the arc of the corner are drafted; x, y and the radius are those at the boss's free end.":
    'Dom, Wände und Eckbogen haben Schräge; x, y und Radius gelten am freien Ende des Doms.',
  'Flat left on the mould steel between two fillets at the floor, mm; negative is a knife edge.':
    'Verbleibende ebene Fläche am Werkzeugstahl zwischen zwei Ausrundungen am Grund, mm; negativ: eine Messerkante.',
  'Boss size that the screw requires against the one that the sink share allows, mm, and the wall that satisfies both.':
    'Dommaß, das die Schraube verlangt, gegen das, das der Einfall zulässt, mm, und die Wanddicke, die beidem genügt.',
  'Start values for the gussets of a boss: thickness, height and base in mm, and their count.':
    'Anfangswerte für die Stützrippen eines Doms: Dicke, Höhe und Fußlänge in mm, und ihre Anzahl.',
  'Mass of a boss with its hole, g, draft counted.': 'Masse eines Schraubdoms mit seinem Loch, g, Entformungsschräge eingerechnet.',
  'Shear stress in a boss under a driving torque, MPa: 16·T·D/(π·(D⁴ − d⁴)).':
    'Schubspannung in einem Schraubdom unter einem Einschraubmoment, MPa: 16·T·D/(π·(D⁴ − d⁴)).',
  'State of a value against an upper limit: pass, review, fail or not checked.':
    'Zustand eines Werts gegenüber einer oberen Grenze: pass, review, fail oder not checked.',
  'State of a value against a lower limit: pass, review, fail or not checked.':
    'Zustand eines Werts gegenüber einer unteren Grenze: pass, review, fail oder not checked.',
  'State of a gap against nothing: below 0 it fails, and touching is no clearance.':
    'Zustand eines Spalts gegenüber null: unter 0 ergibt er fail, und Berührung ist kein Spiel.',
  'Worst of several states: fail, then not checked, then review, then pass.':
    'Schlechtester von mehreren Zuständen: fail, dann not checked, dann review, dann pass.',
  'Rules for the boss of a joint: value, limit, state, source and remedy of each.':
    'Regeln für den Schraubdom einer Verbindung: Wert, Grenze, Zustand, Quelle und Abhilfe zu jeder.',
  'All rules of a joint: value, limit, state, source and remedy of each.':
    'Alle Regeln einer Verbindung: Wert, Grenze, Zustand, Quelle und Abhilfe zu jeder.',
  'Offset per side that draft makes over a height, mm: height·tan(draft).':
    'Versatz je Seite, den die Entformungsschräge über eine Höhe ergibt, mm: Höhe·tan(Schräge).',
  'Draft per side that makes an offset over a height, degrees.':
    'Entformungsschräge je Seite, die über eine Höhe einen Versatz ergibt, Grad.',
  'Height at which draft has used up an offset per side, mm.':
    'Höhe, in der die Entformungsschräge einen Versatz je Seite aufgebraucht hat, mm.',
  'Size of a feature drafted on both sides at a distance from the end that holds it, mm.':
    'Maß eines beidseitig schrägen Elements in einem Abstand von dem Ende, an dem es gilt, mm.',
  'Draft per side that a textured wall needs, degrees: base draft + what the depth of the texture adds.':
    'Entformungsschräge je Seite, die eine genarbte Wand verlangt, Grad: Grundschräge + Zuschlag für die Narbtiefe.',
  'Grip of the screw, mm: the sum of all that lies between head seat and boss face.':
    'Klemmlänge der Schraube, mm: die Summe aller Lagen zwischen Kopfauflage und Domstirnfläche.',
  'Smallest, nominal and largest grip, mm, all tolerances at their worst.':
    'Kleinste, nominelle und größte Klemmlänge, mm, alle Toleranzen im ungünstigsten Fall.',
  'Length of the screw below the boss face, mm: length − grip.': 'Länge der Schraube unter der Domstirnfläche, mm: Länge − Klemmlänge.',
  'Length of full thread inside the boss, mm; negative where the screw does not reach.':
    'Einschraubtiefe: Länge des vollen Gewindes im Dom, mm; negativ, wo die Schraube nicht hinreicht.',
  'Worst, nominal and largest engagement and the root-sum-square half spread, mm.':
    'Kleinste, nominelle und größte Einschraubtiefe und die halbe Streubreite als quadratische Summe, mm.',
  'The spread lies about the middle of the limits.': 'Die Streuung liegt um die Mitte der Grenzen.',
  'Engagement ÷ screw diameter, a ratio.': 'Einschraubtiefe ÷ Schraubendurchmesser, ein Verhältnis.',
  'Smallest room under the tip of the screw, mm; negative: the screw bottoms and the parts do not close.':
    'Kleinster Freiraum unter der Schraubenspitze, mm; negativ: die Schraube setzt auf und die Teile schließen nicht.',
  'Every standard length with worst engagement, hole depth needed, state and reason, mm.':
    'Jede genormte Länge mit kleinster Einschraubtiefe, nötiger Lochtiefe, Zustand und Grund, mm.',
  'Shortest standard length that holds well enough and does not bottom, mm.':
    'Kürzeste genormte Länge, die gut genug hält und nicht aufsetzt, mm.',
  'If there is none the message says which rule stops it.': 'Gibt es keine, sagt die Meldung, welche Regel sie verhindert.',
  'Every standard length, mm, with the number of joints it passes: one length for several places.':
    'Jede genormte Länge, mm, mit der Zahl der Verbindungen, die sie erfüllt: eine Länge für mehrere Stellen.',
  'Pilot hole for a thread-forming screw at a thread share, mm: d1 − e·(d1 − d2).':
    'Kernloch für eine gewindeformende Schraube bei einer Flankenüberdeckung, mm: d1 − e·(d1 − d2).',
  'A start value: confirm it by torque tests.': 'Ein Anfangswert: durch Drehmomentversuche bestätigen.',
  'Share of the thread depth that bites into a hole, a fraction: (d1 − hole)/(d1 − d2).':
    'Flankenüberdeckung in einem Loch, ein Bruchteil der Gewindetiefe: (d1 − Loch)/(d1 − d2).',
  'Diameter of a drafted hole at a depth, mm: mouth − 2·depth·tan(draft).':
    'Durchmesser eines konischen Lochs in einer Tiefe, mm: Mündung − 2·Tiefe·tan(Schräge).',
  'Diameter at the mouth of a drafted hole whose size is held at a depth, mm.':
    'Durchmesser an der Mündung eines konischen Lochs, dessen Maß in einer Tiefe gilt, mm.',
  'Hole at a depth ÷ largest root of the screw, a ratio; below 0.97 the boss is likely to split.':
    'Loch in einer Tiefe ÷ größter Kerndurchmesser der Schraube, ein Verhältnis; unter 0,97 droht der Dom aufzureißen.',
  'Depth a blind hole needs from the boss face, mm: deepest screw + gap + tolerance.':
    'Nötige Tiefe eines Sacklochs ab Domstirnfläche, mm: tiefste Schraube + Freiraum + Toleranz.',
  'Plastic left under a blind hole, mm: wall + boss height − hole depth.':
    'Restwand unter einem Sackloch, mm: Wanddicke + Domhöhe − Lochtiefe.',
  'Diameter of the relief (counterbore) at the mouth of a pilot hole, mm.':
    'Durchmesser der Entlastungsbohrung an der Mündung eines Kernlochs, mm.',
  'Smallest clearance hole where both parts have one (floating fastener), mm: F + T.':
    'Kleinstes Durchgangsloch, wo beide Teile eines haben (Durchsteckverbindung), mm: F + T.',
  'Smallest clearance hole over a boss that holds the screw (fixed fastener), mm: F + T1 + T2.':
    'Kleinstes Durchgangsloch über einem Dom, der die Schraube hält (Einschraubverbindung), mm: F + T1 + T2.',
  'Smallest clearance hole where the boss holds the screw and its zone is not projected, mm.':
    'Kleinstes Durchgangsloch, wo der Dom die Schraube hält und seine Toleranzzone nicht projiziert ist, mm.',
  'Diameter of the position zone that holds a given offset, mm: 2·√(dx² + dy²).':
    'Durchmesser der Positionstoleranzzone, die einen gegebenen Versatz enthält, mm: 2·√(dx² + dy²).',
  'Slenderness of a core pin, a ratio: free length ÷ diameter.': 'Schlankheit eines Kernstifts, ein Verhältnis: freie Länge ÷ Durchmesser.',
  'Deflection at the tip of a core pin under one-sided pressure, mm.':
    'Durchbiegung an der Spitze eines Kernstifts unter einseitigem Druck, mm.',
  'The pin is round, fixed at one end and loaded evenly along its length.':
    'Der Stift ist rund, einseitig eingespannt und über die Länge gleichmäßig belastet.',
  'Outside diameter of a boss round a threaded insert, mm.': 'Außendurchmesser eines Doms um einen Gewindeeinsatz, mm.',
  'Depth of the hole for an insert, mm, with room for displaced plastic and the tip of the screw.':
    'Tiefe des Lochs für einen Gewindeeinsatz, mm, mit Platz für verdrängten Kunststoff und die Schraubenspitze.',
  'Full thread of the screw in the insert, mm. Negative: the screw does not reach it.':
    'Volles Gewinde der Schraube im Gewindeeinsatz, mm. Negativ: die Schraube erreicht ihn nicht.',
  'Ring of the insert that lies under the mating part, mm. Negative: the screw draws the insert out.':
    'Ring des Gewindeeinsatzes unter dem Gegenbauteil, mm. Negativ: die Schraube zieht den Einsatz heraus.',
  'Hoop strain of the plastic round a moulded-in insert, a share, an estimate; without shrinkage the thermal part alone.':
    'Umfangsdehnung des Kunststoffs um einen umspritzten Einsatz, ein Anteil, geschätzt; ohne Schwindung nur der Wärmeanteil.',
  'Force that pulls a threaded insert out of its boss, N, an estimate.':
    'Auszugskraft eines Gewindeeinsatzes aus seinem Dom, N, eine Schätzung.',
  'Width across the flats of a pocket for a hexagon nut, mm: that of the widest nut and an allowance.':
    'Schlüsselweite einer Tasche für eine Sechskantmutter, mm: die der größten Mutter plus Zugabe.',
  'Width across the corners of a pocket for a hexagon nut, mm.': 'Eckenmaß einer Tasche für eine Sechskantmutter, mm.',
  'Height of a hexagon nut, mm, by ISO 4032.': 'Höhe einer Sechskantmutter, mm, nach ISO 4032.',
  'Results of every variant of a screw joint: a table of inputs in, a row of outputs for each variant out.':
    'Ergebnisse jeder Variante einer Schraubverbindung: eine Tabelle von Eingaben ergibt je Variante eine Zeile Ausgaben.',
  'A cell that has no value says why.': 'Eine Zelle ohne Wert sagt, warum.',
  'One table is calculated in one go; each cell that waits for another takes Excel half a second more.':
    'Eine Tabelle wird auf einmal berechnet; jede Zelle, die auf eine andere wartet, kostet in Excel eine halbe Sekunde mehr.',
  "One output of one variant of a screw joint, in the output's core unit, for use inside a table of the sheet.":
    'Eine Ausgabe einer Variante einer Schraubverbindung, in ihrer Grundeinheit, für eine Tabelle auf dem Blatt.',
  'For many results JOINT.TABLE is faster: each cell that waits for another takes Excel half a second more.':
    'Für viele Ergebnisse ist JOINT.TABLE schneller: jede Zelle, die auf eine andere wartet, kostet in Excel eine halbe Sekunde mehr.',
  'Every output of one variant: value, unit, formula with its numbers, state and source.':
    'Jede Ausgabe einer Variante: Wert, Einheit, Formel mit ihren Zahlen, Zustand und Quelle.',
  'Names of all joint inputs with unit, default and meaning.':
    'Namen aller Eingaben der Verbindung mit Einheit, Standardwert und Bedeutung.',
  'Names of all joint outputs with unit and meaning.': 'Namen aller Ausgaben der Verbindung mit Einheit und Bedeutung.',
  'Thickness of a rib at its tip, mm: base − 2·height·tan(draft).': 'Dicke einer Rippe an der Spitze, mm: Fuß − 2·Höhe·tan(Schräge).',
  'Thickness of a rib at its base, mm: tip + 2·height·tan(draft).': 'Dicke einer Rippe am Fuß, mm: Spitze + 2·Höhe·tan(Schräge).',
  'Section of a wall strip with one rib: area, centroid, second moment, modulus and equal flat wall, mm.':
    'Wandstreifen mit einer Rippe: Fläche, Schwerpunkt, Trägheits- und Widerstandsmoment, gleich steife ebene Wand, mm.',
  'Wall left outside a lip or groove at the rim, mm: wall − lip − gaps·clearance.':
    'Verbleibende Wand außerhalb einer Lippe oder Nut am Rand, mm: Wand − Lippe − Spalte·Spiel.',
  'Smallest, nominal and largest clearance per side of a lip in its groove, mm.':
    'Kleinstes, nominelles und größtes Spiel je Seite einer Lippe in ihrer Nut, mm.',
  'Gap at the rim when the bosses touch, mm; negative hangs the boss in tension.':
    'Spalt am Rand, wenn die Dome sich berühren, mm; negativ: der Dom steht unter Zug.',
  'Smallest, nominal and largest gap at the rim and its root-sum-square half spread, mm.':
    'Kleinster, nomineller und größter Spalt am Rand und seine halbe Streubreite als quadratische Summe, mm.',
  'Diameter of the largest circle in a junction of wall and rib, mm.':
    'Durchmesser des größten Kreises im Übergang von Wand und Rippe, mm.',
  'Largest circle in a junction ÷ wall, a ratio: how much thicker the plastic is there.':
    'Größter Kreis in einem Übergang ÷ Wanddicke, ein Verhältnis: wie viel dicker der Kunststoff dort ist.',
  'Cooling time of a plate in the mould, s.': 'Kühlzeit einer Platte im Werkzeug, s.',
  'Size of the cavity that shrinks to a part, mm: part/(1 − S).':
    'Maß der Kavität, das nach der Schwindung das Formteil ergibt, mm: Formteil/(1 − S).',
  'Length of a locating slot, mm, for a board on a round hole and a slot; its width is that of the hole.':
    'Länge eines Langlochs, mm, für eine Leiterplatte auf Rundloch und Langloch; seine Breite ist die des Lochs.',
  'Largest turn of a board on a round hole and a slot, degrees.': 'Größte Verdrehung einer Leiterplatte auf Rundloch und Langloch, Grad.',
  'Whether one rigid board fits over all its screws: share of simulated assemblies, least play, worst pair.':
    'Ob eine starre Leiterplatte über alle Schrauben geht: Anteil simulierter Baugruppen, kleinstes Spiel, engstes Paar.',
  'The same seed gives the same answer everywhere.': 'Derselbe Startwert gibt überall dieselbe Antwort.',
  'Diameter of the recess around a screw head, mm: head + allowance, plus draft on both sides.':
    'Durchmesser der Senkung um einen Schraubenkopf, mm: Kopf + Zugabe, dazu die Schräge auf beiden Seiten.',
  'Recess diameter at the floor that a shifted head never touches, mm.':
    'Durchmesser der Senkung am Grund, den ein versetzter Kopf nie berührt, mm.',
  'The screw may shift by its play in the hole.': 'Die Schraube darf sich um ihr Spiel im Loch versetzen.',
  'Depth of the recess from the outer face to the head seat, mm: board plane − seat.':
    'Tiefe der Senkung von der Außenfläche zur Kopfauflage, mm: Leiterplattenebene − Kopfauflage.',
  'Seat left under the head, mm: board plane − recess depth.':
    'Verbleibende Kopfauflage unter dem Kopf, mm: Leiterplattenebene − Senkungstiefe.',
  'Least depth of the recess that hides the head, mm: head height + subflush.':
    'Kleinste Tiefe der Senkung, die den Kopf verbirgt, mm: Kopfhöhe + Abstand zur Außenfläche.',
  'How far the head lies below the outer face, mm; negative: it stands proud.':
    'Wie tief der Kopf unter der Außenfläche liegt, mm; negativ steht er vor.',
  'Depth of a countersink from its sharp diameter down to the hole, mm.':
    'Tiefe einer Kegelsenkung von ihrem scharfkantigen Durchmesser bis zum Loch, mm.',
  'Room for the driver in the recess on diameter, mm, after a margin; negative: the driver does not go in.':
    'Spiel des Schraubwerkzeugs in der Senkung im Durchmesser, mm, abzüglich Zugabe; negativ: passt nicht hinein.',
  'Major diameter (outside of the thread) of a screw, mm, from the thread table.':
    'Außendurchmesser des Gewindes einer Schraube, mm, aus der Gewindetabelle.',
  'Root diameter (core of the external thread) of a screw, mm, from the thread table.':
    'Kerndurchmesser des Außengewindes einer Schraube, mm, aus der Gewindetabelle.',
  'For M threads the flat root is taken at max, the rounded root at min.':
    'Bei M-Gewinden gilt für max der flache Gewindegrund, für min der gerundete.',
  'Pitch of a screw thread, mm.': 'Steigung eines Schraubengewindes, mm.',
  'Length at the point that carries no full thread, mm.': 'Länge der Spitze ohne volles Gewinde, mm.',
  'Machine screws count two pitches.': 'Bei Maschinenschrauben zählen zwei Steigungen.',
  'Diameter of a screw head, mm, from the table of its standard.': 'Durchmesser eines Schraubenkopfs, mm, aus der Tabelle seiner Norm.',
  'For a countersunk head the actual edge unless sharp is asked for.':
    'Bei einem Senkkopf die wirkliche Kante, wenn nicht sharp verlangt ist.',
  'Height of a screw head, mm, from the table of its standard.': 'Höhe eines Schraubenkopfs, mm, aus der Tabelle seiner Norm.',
  'Standard nominal lengths of a screw, mm, shortest first.': 'Genormte Nennlängen einer Schraube, mm, die kürzeste zuerst.',
  'Spills as one column.': 'Läuft in eine Spalte über.',
  'Lower and upper deviation of the length of a screw, mm.': 'Unteres und oberes Abmaß der Länge einer Schraube, mm.',
  'All data for one screw and its head: value, unit, limit, standard and where the value comes from.':
    'Alle Daten einer Schraube und ihres Kopfs: Wert, Einheit, Grenze, Norm und woher der Wert kommt.',
  'Clearance hole for a screw, mm, by ISO 273 (M) or ASME B18.2.8 (#).':
    'Durchgangsloch für eine Schraube, mm, nach ISO 273 (M) oder ASME B18.2.8 (#).',
  'None is held for ST sizes but the through hole of form C, fit "DIN 74-1".':
    'Für ST-Größen liegt nur das Durchgangsloch der Form C vor, fit "DIN 74-1".',
  'One typical value of a plastic in its core unit, a start value: the data sheet of the grade governs.':
    'Ein typischer Wert eines Kunststoffs in seiner Grundeinheit, ein Anfangswert: maßgeblich ist das Datenblatt der Type.',
  'Typical, low and high values of a plastic with unit and how each is held.':
    'Typische, niedrige und hohe Werte eines Kunststoffs mit Einheit und wie jeder vorliegt.',
  'Opening of a rim half way between two screws under an even load, mm, an estimate: q·L⁴/(384·E·I).':
    'Öffnung eines Rands in der Mitte zwischen zwei Schrauben unter gleichmäßiger Last, mm, eine Schätzung: q·L⁴/(384·E·I).',
  'Screw pitch at which a rim opens by a given sag between two screws, mm, an estimate.':
    'Schraubenabstand, bei dem sich ein Rand zwischen zwei Schrauben um ein gegebenes Maß öffnet, mm, eine Schätzung.',
  'Least, nominal and largest squeeze of a sealing cord in its groove, shares of its thickness.':
    'Kleinste, nominelle und größte Verpressung einer Dichtschnur in ihrer Nut, als Anteil ihrer Dicke.',
  'Largest share of its groove that a sealing cord fills; a groove filled solid is refused.':
    'Größte Nutfüllung einer Dichtschnur, ein Anteil; eine ganz gefüllte Nut wird abgelehnt.',
  'Stretch of a sealing ring on its groove, a share: groove inside/ring inside − 1.':
    'Dehnung eines Dichtrings auf seiner Nut, ein Anteil: Nut innen/Ring innen − 1.',
  'Largest strain of a snap hook bent aside at its tip, a share: an estimate, root and wall rigid.':
    'Größte Dehnung eines an der Spitze ausgelenkten Schnapphakens, ein Anteil: eine Schätzung, Fuß und Wand starr.',
  'Deflection at the tip of a snap hook for its largest strain, mm: an estimate, root and wall rigid.':
    'Durchbiegung an der Spitze eines Schnapphakens bei seiner größten Dehnung, mm: eine Schätzung, Fuß und Wand starr.',
  'Force at the tip that bends a snap hook, N: an estimate, root and wall rigid.':
    'Kraft an der Spitze, die einen Schnapphaken biegt, N: eine Schätzung, Fuß und Wand starr.',
  'Axial force that pushes a snap hook aside over its ramp, N: an estimate. With the return angle it is the one for release.':
    'Fügekraft, die einen Schnapphaken über seine Schräge auslenkt, N: geschätzt. Mit dem Haltewinkel ist es die Lösekraft.',
  'Force that shears the plastic thread out of a boss, N, an estimate for tapping screws.':
    'Auszugskraft: Kraft, die das Kunststoffgewinde aus einem Dom schert, N, eine Schätzung für Blechschrauben.',
  'A machine thread in plastic is refused: the cylinder overstates it.':
    'Ein Maschinengewinde in Kunststoff wird abgelehnt: der Scherzylinder überschätzt es.',
  'Force that tears the boss off across its net section, N, an estimate.':
    'Kraft, die den Dom im Nettoquerschnitt abreißt, N, eine Schätzung.',
  'Force that shears a flat-seated head through its seat, N, an estimate.':
    'Kraft, die einen Kopf mit ebener Auflage durch die Kopfauflage schert, N, eine Schätzung.',
  'Torque that strips the thread in the boss, N·m, an estimate from the pull-out force.':
    'Überdrehmoment des Gewindes im Dom, N·m, eine Schätzung aus der Auszugskraft.',
  'Setting of the driver between drive and strip torque, N·m.': 'Einstellung des Schraubers zwischen Einschraub- und Überdrehmoment, N·m.',
  'Strip ÷ drive torque with its state, and the lowest and highest setting, N·m.':
    'Überdrehmoment ÷ Einschraubmoment mit Zustand, und die kleinste und größte Einstellung, N·m.',
  'Torque that makes a clamp force under the head, N·m.': 'Drehmoment, das unter dem Kopf eine Klemmkraft erzeugt, N·m.',
  'Clamp force left when the plastic has relaxed, N, an estimate.':
    'Verbleibende Klemmkraft, wenn der Kunststoff relaxiert ist, N, eine Schätzung.',
  'Pressure under a flat-seated head, MPa.': 'Flächenpressung unter einem Kopf mit ebener Auflage, MPa.',
  'Hoop stress at the bore of a boss pressed over a rigid pin, MPa.':
    'Tangentialspannung an der Bohrung eines auf einen starren Stift gepressten Doms, MPa.',
  'Largest interference on diameter at which the hoop stress stays within a limit, mm.':
    'Größtes Übermaß im Durchmesser, bei dem die Tangentialspannung eine Grenze einhält, mm.',
  'Axial force that pushes a rigid pin through its press fit, N, an estimate.':
    'Axiale Kraft, die einen starren Stift durch seinen Pressverband schiebt, N, eine Schätzung.',
  'Whole number of screws that share a short-term load.': 'Ganze Zahl von Schrauben, die sich eine kurzzeitige Last teilen.',
  'One output of a joint over two of its inputs: x values along the top, y values down the side.':
    'Eine Ausgabe einer Verbindung über zwei ihrer Eingaben: x-Werte oben, y-Werte seitlich.',
  'How far each input of a joint may move while all others stay: without a fail, and with every rule passing.':
    'Zwischen welchen Werten sich jede Eingabe bewegen darf, während alle anderen bleiben: ohne fail, und überall pass.',
  'What moves one output of a joint: its slope by each input, and what the tolerance of each makes of it.':
    'Was eine Ausgabe einer Verbindung bewegt: ihre Steigung nach jeder Eingabe, und was deren Toleranz daraus macht.',
  'How many joints meet each rule when every size that has limits is drawn within them.':
    'Wie viele Verbindungen jede Regel erfüllen, wenn jedes Maß mit Grenzen zufällig innerhalb seiner Grenzen streut.',
  'The same seed gives the same counts everywhere.': 'Derselbe Startwert gibt überall dieselben Zahlen.',
  'The value of one input of a joint, nearest to its present one, at which an output reaches its target.':
    'Der Wert einer Eingabe, dem jetzigen am nächsten, bei dem eine Ausgabe ihr Ziel erreicht.',
  'Full width of an ISO 286-1 tolerance grade, mm.': 'Volle Breite eines Grundtoleranzgrads nach ISO 286-1, mm.',
  'General tolerance of a length by ISO 2768-1, ± mm.': 'Allgemeintoleranz eines Längenmaßes nach ISO 2768-1, ± mm.',
  'Tolerance of a moulded length, ± mm, by group or by your own table.':
    'Toleranz eines spritzgegossenen Längenmaßes, ± mm, nach Gruppe oder eigener Tabelle.',
  'Nominal result of a stack, mm: the sum of values × sensitivities.':
    'Nennmaß einer Maßkette, mm: die Summe aus Werten × Empfindlichkeiten.',
  'Worst-case half width of a stack, mm: every link at its limit.':
    'Halbe Breite einer Maßkette im ungünstigsten Fall, mm: jedes Glied an seiner Grenze.',
  'Root-sum-square half width of a stack, mm, never above the worst case.':
    'Halbe Breite einer Maßkette als quadratische Summe, mm, nie über dem ungünstigsten Fall.',
  'Modified root-sum-square half width of a stack, mm, between the plain one and the worst case.':
    'Halbe Breite einer Maßkette als abgewandelte quadratische Summe, mm, zwischen der einfachen und dem ungünstigsten Fall.',
  'Share of each link in the variance of a stack, a fraction.': 'Anteil jedes Glieds an der Varianz einer Maßkette, ein Bruchteil.',
  'The whole stack with its totals, mm: nominal, worst case, root sum square and shares.':
    'Die ganze Maßkette mit Summen, mm: Nennmaß, ungünstigster Fall, quadratische Summe und Anteile.',
  'A stack drawn many times: mean, deviation, end points in mm, share inside, ppm outside.':
    'Monte-Carlo-Simulation einer Maßkette: Mittelwert, Standardabweichung, Endpunkte in mm, Anteil innerhalb, ppm außerhalb.',
  'Parts per million of a normal distribution that fall outside two limits.':
    'Teile je Million einer Normalverteilung, die außerhalb zweier Grenzen liegen.',
  'Capability index Cpk of a normal distribution between two limits, a ratio.':
    'Prozessfähigkeitsindex Cpk einer Normalverteilung zwischen zwei Grenzen, ein Verhältnis.',
  'Length in mm, read from text with units: mixed units, fractions of an inch, sums.':
    'Länge in mm, gelesen aus Text mit Einheiten: gemischte Einheiten, Bruchteile eines Zolls, Summen.',
  'Angle in degrees, read from text: degrees, arc minutes or both.': 'Winkel in Grad, gelesen aus Text: Grad, Winkelminuten oder beides.',
  'Length as text in mm and inch, 4.24 mm (0.167 in), for a drawing note or a table.':
    'Länge als Text in mm und Zoll, 4.24 mm (0.167 in), für eine Zeichnungsnotiz oder Tabelle.',
  'Halves are rounded away from zero.': 'Halbe werden von null weg gerundet.',
  'Nominal size, lower and upper limit in mm, read from a size with its tolerance.':
    'Nennmaß, Mindestmaß und Höchstmaß in mm, gelesen aus einem Maß mit Toleranz.',
  'The word ok, or a sentence when a length looks like inches, metres or a radius.':
    'Das Wort ok, oder ein Satz, wenn eine Länge nach Zoll, Metern oder einem Radius aussieht.',
  'Every combination of the values in several lists, a row each.': 'Jede Kombination der Werte aus mehreren Listen, je eine Zeile.',
  'Lists headed by joint input names make a table for JOINT.TABLE.':
    'Listen mit Namen von Eingaben als Kopf ergeben eine Tabelle für JOINT.TABLE.',
  'Rank of each variant by a weighted sum of its scaled columns; 1 is best.':
    'Rang jeder Variante nach der gewichteten Summe ihrer skalierten Spalten; 1 ist der beste.',
  'TRUE for each variant that no other one beats in every column.': 'TRUE für jede Variante, die keine andere in allen Spalten übertrifft.',
} as const satisfies Readonly<Record<Sentence, string>>;
