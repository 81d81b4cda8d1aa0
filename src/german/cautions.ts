// The cautions of the functions in German, beside the English that ABOUT gives; by the function.
import type { Cautioned } from './english';

const HOOP =
  'Eine Schätzung: elastisch und kurzzeitig. Für einen dauerhaften Sitz den Kriechmodul nehmen. An einer Bindenaht trägt der Ring ' +
  'halb so viel oder weniger.';
const BOARD =
  'Eine Schätzung: ein Streifen ohne Schlitze, gleich dick, so breit wie der tragende Teil der Leiterplatte. Wirkliche Enden ' +
  'liegen zwischen simple und clamped. Spannung in Bauteilen und Lötstellen und Ermüdung werden nicht berechnet.';
const NUT =
  'Die Tasche an ihrer engsten Stelle: Die Entformungsschräge weitet sie nach außen. Widerstand gegen Verdrehen und Ausziehen wird ' +
  'nicht berechnet. Erproben Sie es.';
const SNAP =
  'Eine Schätzung: Die Wand hinter dem Fuß biegt sich auch, und bei einem Haken unter fünf Dicken Länge zählt der Schub. Nehmen ' +
  'Sie die zulässige Dehnung, für einmaliges oder wiederholtes Fügen, aus den Daten der Type. Ein gebogen bleibender Haken ' +
  'kriecht. Runden Sie den Fuß aus.';
const RIM =
  'Eine Schätzung: starre Schrauben und ein Rand, der sich nur biegt. Kunststoff kriecht: Für eine Dauerlast geben Sie den ' +
  'Kriechmodul an. Erproben Sie es.';
const SEAL =
  'Erproben Sie die Dichtung: Eine Schutzart wird nicht zugesagt. Druckverformungsrest und Quellung des Gummis werden nicht ' +
  'berechnet.';
const STACK =
  'Setzt unabhängige Maße voraus. Die aus einem Werkzeug sind es nicht: Sie schwinden gemeinsam; addieren Sie sie linear. Eine ' +
  'unsymmetrische Toleranz zählt als halbe Breite um ihre Mitte.';

export const CAUTIONS: Readonly<Record<Cautioned, string>> = {
  'UNIT.CHECK': 'Die Bereiche sind weit: ok heißt nur, dass kein offensichtliches Versehen gefunden wurde.',
  MATERIAL: 'Ein typischer Wert aus einem Bereich: Maßgeblich ist das Datenblatt der Type.',
  'HOLE.PILOT': 'Ein Anfangswert: Bestätigen Sie ihn durch Einschraub- und Überdrehversuche in Ihrer Type.',
  'HOLE.TIGHT': 'Unter 0,97 droht der Dom aufzureißen (allgemeine Praxis).',
  'HOLE.FLOATING': 'Im ungünstigsten Fall geht die Schraube gerade noch hindurch, ohne Spiel.',
  'HOLE.FIXED': 'Nur für eine Toleranzzone des Doms, die durch das durchschraubte Teil projiziert ist; sonst HOLE.PROJECTED.',
  'HOLE.PROJECTED':
    'Für eine nicht projizierte Toleranzzone des Doms; bei einer projizierten kommt HOLE.FIXED mit weniger aus. Im ungünstigsten ' +
    'Fall bleibt kein Spiel.',
  'PIN.DEFLECTION':
    'Eine Schätzung: Der Druckunterschied am Stift ist selten bekannt, und der Werkzeugstahl, der ihn hält, gibt auch nach.',
  'DRAFT.TEXTURE':
    'Ein Anfangswert: Richtlinien nennen 1° bis 1,5° je Stufe. Innenflächen und geringe Schwindung brauchen mehr; der ' +
    'Narbungslieferant entscheidet.',
  'BOSS.CORNER': 'Für einen Eckradius, der mit seinen Wänden schräg verläuft. Ein konstanter Radius lässt weniger Stahl.',
  'BOSS.CONFLICT':
    'Zwei Faustregeln, die sich oft widersprechen. Auswege: eine kleinere Schraube, eine Ringnut um den Domfuß, Rippen statt eines ' +
    'dickeren Doms, oder eine verdeckte Fläche, auf der eine Einfallstelle bleiben darf.',
  'BOSS.GUSSET': 'Anfangswerte aus weiten Bereichen; die Einfallstellen hinter den Stützrippen entscheiden.',
  'BOSS.TORSION': 'Eine elastische Schätzung: Kerbwirkung an der Ausrundung am Fuß und Tangentialspannung durch die Schraube fehlen.',
  'RECESS.CONE': 'Ein Senkkopf sprengt seine Auflage auf; nehmen Sie in Kunststoff lieber Köpfe mit ebener Auflage.',
  'ENGAGEMENT.LIMITS': 'Die quadratische Summe setzt unabhängige Toleranzen voraus; Maße aus einem Werkzeug sind nicht unabhängig.',
  PULLOUT:
    'Eine Kurzzeitschätzung bei Raumtemperatur: ohne Bindenaht, Kriechen und überhitztes Gewinde. Andere Richtlinien nehmen 0,5·σ ' +
    'oder den Außendurchmesser (−13 % bis +14 %). Durch Versuch bestätigen.',
  'PULLOUT.BOSS':
    'Eine Schätzung: gleichmäßige Spannung über den Ring, ohne Kerbe an Gewinde oder Fuß, ohne Bindenaht. Durch Versuch bestätigen.',
  'PULLOUT.SEAT':
    'Eine Schätzung: Die Kopfauflage biegt sich und kriecht auch, und eine Bindenaht am Loch schwächt sie. Durch Versuch bestätigen.',
  'SCREW.COUNT':
    'Eine Schätzung für eine kurzzeitige Last, die sich alle Schrauben gleichmäßig teilen; unter Dauerlast kriecht der Kunststoff ' +
    'und die Klemmkraft lässt nach.',
  'TORQUE.STRIP':
    'Eine Schätzung: Die Reibung unter dem Kopf fehlt, die im Gewinde ist selten bekannt. Durch Versuch mit der Drehzahl des ' +
    'Schraubers bestätigen.',
  'TORQUE.SET':
    'Ein Anfangswert: Einschraub- und Überdrehmoment müssen aus Versuchen mit dem Formteil, der Schraube und der Drehzahl des ' +
    'Schraubers kommen.',
  'TORQUE.WINDOW':
    'Anfangswerte: Einschraub- und Überdrehmoment müssen aus Versuchen kommen; ihre Streuung verengt das Fenster weiter. "review": ' +
    'Kein eingestelltes Drehmoment ist zugleich mindestens das doppelte Einschraubmoment und höchstens 70 % des Überdrehmoments.',
  'TORQUE.CLAMP':
    'Eine Schätzung: Bei einer gewindeformenden Schraube kommt das Einschraubmoment hinzu, und Kunststoff relaxiert. Die Kurzformel ' +
    'T = 0,2·F·d für Metall gilt für Kunststoff nicht.',
  'CLAMP.RELAX':
    'Eine Schätzung: Der Kriechmodul muss zu Zeit, Temperatur und Dehnung der Verbindung passen; die Schraube gilt als starr. Durch ' +
    'Versuch über Zeit und Temperatur bestätigen.',
  BEARING:
    'Eine Schätzung der mittleren Pressung; Kunststoff kriecht darunter, und eine veröffentlichte Tabelle zulässiger Werte fand sich ' +
    'nicht.',
  'HOOP.STRESS': HOOP,
  'HOOP.LIMIT': HOOP,
  'HOOP.PUSH': HOOP,
  'BOARD.MARGIN':
    'Eine Differenz, keine Beurteilung. Elektrische Abstände gibt es hier nicht: Nehmen Sie den verlangten aus der Ausgabe der Norm, ' +
    'die für Ihr Produkt gilt. Diese Norm und eine zugelassene Prüfstelle entscheiden.',
  'BOARD.KEEPOUT': 'Ein Anfangswert für das Layout; über elektrische Abstände sagt er nichts.',
  'THERMAL.GAP':
    'Der ganze Unterschied: je Ende die Hälfte, wo die Teile mittig liegen; am freien Ende alles, wo sie am anderen befestigt sind. ' +
    'Quellen durch Feuchte kommt hinzu.',
  'BOARD.SAG': BOARD,
  'BOARD.STRAIN': BOARD,
  'BOARD.FREQUENCY':
    'Eine Schätzung aus der Plattenbiegung allein: Schlitze und schwere Bauteile ändern sie. Sie stimmt mit dem Ritz-Verfahren auf 1 ' +
    '% bei eingespannten Rändern und auf 5 % bei gehaltenen Ecken bis ν 0,4 überein. Schwingungsantwort und Ermüdung werden nicht ' +
    'berechnet.',
  'INSERT.BOSS.OD': 'Ein Anfangswert: Maßgeblich sind die Zeichnung des Gewindeeinsatzes und ein Versuch.',
  'INSERT.HOLE.DEPTH':
    'Die kleinste Tiefe: Wo die Schraube durch den Einsatz reicht, prüfen Sie den Freiraum unter ihrer Spitze mit SCREW.BOTTOM.',
  'INSERT.LANDING':
    'Negativ: Die Schraube zieht den Einsatz durch das Loch heraus. Der Einsatz muss zudem bündig liegen, sonst liegt zuerst der ' +
    'Kunststoff auf.',
  'INSERT.STRAIN':
    'Eine Schätzung ohne Relaxation, Bindenaht und Kerbe. Eine dauernde Dehnung kann spröden Kunststoff nach Monaten reißen lassen. ' +
    'Erproben Sie es.',
  'INSERT.PULLOUT': 'Eine Kurzzeitschätzung. Einbau und Ausdrehmoment werden nicht berechnet. Durch Versuch bestätigen.',
  'NUT.POCKET': NUT,
  'NUT.POCKET.CORNER': NUT,
  'SNAP.STRAIN': SNAP,
  'SNAP.DEFLECTION': SNAP,
  'SNAP.FORCE': SNAP,
  'SNAP.MATING':
    'Eine Schätzung: Die Reibung hängt von Oberfläche, Geschwindigkeit und Pressung ab. Für das Lösen geben Sie den Haltewinkel an.',
  'PATTERN.SLOT': 'Die Toleranz ist die beider Teile zusammen. Nachschwindung und Quellen durch Feuchte kommen hinzu.',
  'PATTERN.FIT':
    'Eine Schätzung: Lagen normalverteilt und unabhängig, drei Standardabweichungen am Rand ihrer Zone; die aus einem Werkzeug ' +
    'verschieben sich gemeinsam. Löcher und Schrauben haben die angegebenen Maße; Rechtwinkligkeit zählt nicht.',
  'RIB.TIP': 'Negativ: Die Flanken treffen sich unterhalb dieser Höhe.',
  'LIP.FIT': 'Negativ: Die Lippe geht nicht in ihre Nut. Ein + in lip_tol macht die Lippe dicker, ein + in groove_tol die Nut weiter.',
  'RIM.GAP': 'Negativ: Der Rand liegt zuerst auf, und der Dom steht unter Zug.',
  'RIM.GAP.LIMITS':
    'Negativ: Der Rand liegt zuerst auf. Die halbe Streubreite liegt um die Mitte der Grenzen und setzt unabhängige Maße voraus; die ' +
    'aus einem Werkzeug sind es nicht.',
  'COOLING.TIME':
    'Eine Schätzung: Veröffentlichte Temperaturleitfähigkeiten eines Werkstoffs weichen bis zum 1,8-Fachen voneinander ab, die zwei ' +
    'Kriterien ebenso. Nur das erste Glied einer Reihe zählt: Eine Zeit unter 0,1·Dicke² ÷ Temperaturleitfähigkeit wird zu lang.',
  'CAVITY.SIZE': 'Die Schwindung hängt von Type, Wanddicke, Fließrichtung und Prozess ab; der Spritzgießer entscheidet.',
  'RIM.SAG': RIM,
  'RIM.PITCH': RIM,
  'SEAL.SQUEEZE': SEAL,
  'SEAL.FILL': SEAL,
  'SEAL.STRETCH': SEAL,
  'TOL.GENERAL': 'Nicht für Formteile gemacht: Für diese nehmen Sie TOL.MOULDED.',
  'TOL.MOULDED':
    'DIN 16901 wurde 2009 zurückgezogen. ISO 20457 war im März 2026 in Überarbeitung (Schlussentwurf): Nennen Sie die Ausgabe ' +
    'auf der Zeichnung. Andere Gruppen geben Sie als Bereich an, aus Ihrem eigenen Exemplar der Norm.',
  'STACK.WORST': 'Eine unsymmetrische Toleranz zählt als halbe Breite um ihre Mitte.',
  'STACK.RSS': STACK,
  'STACK.MODIFIED': STACK,
  'STACK.SHARE': 'Setzt unabhängige Maße voraus. Die aus einem Werkzeug sind es nicht: Sie schwinden gemeinsam; addieren Sie sie linear.',
  'STACK.TABLE':
    'Die quadratischen Summen setzen unabhängige Maße voraus; die aus einem Werkzeug sind es nicht. Ein leerer Name erscheint als –.',
  'STACK.SIMULATE':
    'Normalverteilte Ziehungen nehmen ± als 3 Standardabweichungen und können darüber hinaus liegen. Setzt unabhängige Maße voraus. ' +
    'Die aus einem Werkzeug sind es nicht: Sie schwinden gemeinsam; addieren Sie sie linear.',
  'STACK.PPM': 'Setzt einen normalverteilten, beherrschten Prozess voraus; wenige bleiben so weit außen normalverteilt.',
  'VARIANT.GRID': 'Keine Kopfzeile, außer über jeder Liste steht der Name einer Eingabe der Verbindung.',
  'VARIANT.RANK':
    'Die Gewichte entscheiden, und eine Variante mehr kann die Ränge der anderen ändern. Eine Zeile, der in einer Spalte eine Zahl ' +
    'fehlt, etwa eine Kopfzeile, erscheint als – und wird nicht verglichen; eine bloße 0 gilt als leer, schreiben Sie eine echte ' +
    'Null mit Einheit.',
  'VARIANT.FRONT':
    'Eine Zeile, der in einer Spalte eine Zahl fehlt, etwa eine Kopfzeile, erscheint als – und wird nicht verglichen; eine bloße 0 ' +
    'gilt als leer, schreiben Sie eine echte Null mit Einheit.',
  'JOINT.MAP': 'Standardwerte, die aus den zwei Eingaben folgen, ändern sich mit ihnen, wie in JOINT.TABLE.',
  'JOINT.WINDOW':
    'Eine Eingabe bewegt sich, alle anderen bleiben; Standardwerte folgen wie in JOINT.TABLE. Zwei Fenster lassen sich nicht ' +
    'zugleich ausschöpfen: Für zwei Eingaben zusammen siehe JOINT.MAP. Gesucht wird bis zum Zehnfachen des Werts (bei einer Länge ' +
    'unter d bis zum Neunfachen von d nach beiden Seiten), in Schritten von höchstens einem Zwanzigstel des Werts oder von d; – ' +
    'heißt, dass das Fenster dort kein Ende hat. Ein Bereich, schmaler als ein Schritt, wird gefunden, wo der Wert einer Regel ' +
    'daneben auf seine Grenze zuläuft. Eine Regel, die innerhalb eines Schritts verletzt und wieder erfüllt ist, oder ein dort ' +
    'fehlender Wert kann übersehen werden. Eine Toleranz bewegt sich um ihre halbe Breite.',
  'JOINT.SENSITIVITY':
    'Steigungen gelten nahe den jetzigen Werten; wo eine Steigung springt, gilt die steilere. Bei sink ratio ist es die Steigung von ' +
    'root circle ÷ wall, die endlich ist. Der Anteil ist der an der Varianz, wie in STACK.SHARE.',
  'JOINT.SIMULATE':
    'Ziehungen sind normalverteilt um die Mitte der Grenzen, bei ±3 Standardabweichungen abgeschnitten: Das setzt mittig laufende ' +
    'Prozesse voraus. Maße aus einem Werkzeug verschieben sich gemeinsam: common share sagt, wie weit; 0 ist für Summen zu ' +
    'günstig. Festigkeiten, Reibungszahlen und Lasten werden nicht gezogen. Im Beispiel hat das kleinste volle Gewinde 7,34 mm im ' +
    'ungünstigsten Fall, 7,67 nach der quadratischen Summe und 7,57 unter 20.000 Ziehungen.',
  'JOINT.SOLVE':
    'Die Regeln bleiben unbeachtet: Prüfen Sie den Zustand mit dem neuen Wert. Gesucht wird in Schritten wie bei JOINT.WINDOW: Ein ' +
    'Ziel, das nur zwischen zwei Schritten erreicht wird, kann übersehen werden.',
};

export const cautionOf = (id: string): string | undefined => (CAUTIONS as Readonly<Record<string, string>>)[id];
