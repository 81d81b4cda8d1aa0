// What the view of functions says, and the form of one function, in German.
import type { FUNCTIONS as ENGLISH } from '../functions';
import { count } from './count';

export const FUNCTIONS: typeof ENGLISH = {
  heading: 'Funktionen',
  find: 'Suchen nach Name oder Fachwort',
  such: 'Schraubdom, Kernstift …',
  all: functions => `${functions} Funktionen`,
  found: (found, of) => `${found} von ${of} Funktionen`,
  nothing:
    'Dieses Wort kommt nicht vor. Versuchen Sie das Teil (Dom, Senkung, Rippe) oder was Sie wissen wollen (Länge, Drehmoment, Einfall).',
  topics: {
    Units: 'Einheiten',
    'Screws and standard data': 'Schrauben und Normwerte',
    'Holes and core pins': 'Löcher und Kernstifte',
    Draft: 'Entformungsschräge',
    'Boss and wall': 'Dom und Wand',
    'Head recess': 'Kopfsenkung',
    'Grip, engagement, screw length': 'Klemmlänge, Einschraubtiefe, Schraubenlänge',
    'Strength (estimates)': 'Festigkeit (Schätzungen)',
    'Board and supports': 'Leiterplatte und Auflagen',
    'Inserts and nuts': 'Gewindeeinsätze und Muttern',
    'Snap hooks (estimates)': 'Schnapphaken (Schätzungen)',
    'Pattern of holes': 'Lochbild',
    'Ribs, lip, mould': 'Rippen, Lippe, Werkzeug',
    Tolerances: 'Toleranzen',
    'Checks, variants, trace': 'Prüfungen, Varianten, Rechenweg',
    'The joint as one table': 'Die Verbindung als eine Tabelle',
  },
  notCovered: {
    warpage:
      'Verzug wird hier nicht berechnet: Er kommt aus Füllung, Kühlung und Fasern. Lassen Sie eine Füllsimulation rechnen und messen Sie ' +
      'die ersten Teile; was sie zeigen, geht als Toleranz in RIM.GAP.LIMITS ein.',
    between:
      'Wie nah zwei Dome stehen dürfen, wird hier nicht berechnet: BOSS.STEEL gibt den Werkzeugstahl zwischen zwei Flächen mit ' +
      'Entformungsschräge; fragen Sie den Werkzeugbauer. Ob eine Leiterplatte über alle Dome passt, sagt PATTERN.FIT.',
    electrical:
      'Elektrische Abstände gibt es hier nicht: Sie kommen aus der Sicherheitsnorm Ihres Produkts und von den dafür Verantwortlichen. ' +
      'BOARD.MARGIN vergleicht nur einen Abstand, den Sie mitbringen, mit dem Spiel der Leiterplatte.',
    weldLines:
      'Bindenähte werden hier nicht berechnet: Anguss und Fließweg entscheiden, wo sie liegen, und keine Festigkeit rechnet hier mit ' +
      'ihnen. Halten Sie sie von den Domen fern, und prüfen Sie.',
    ingress:
      'Eine Schutzart wird hier nicht berechnet und nicht zugesagt: Verpressung, Nutfüllung und Öffnung des Rands werden berechnet; ' +
      'es entscheidet eine Prüfung des Gehäuses.',
  },
  byDefault: defaults => `. Nicht gefragt, deshalb der Standardwert: ${defaults}`,
  take: id => `${id} auf das Blatt übernehmen`,
  goesInto: 'Wird eingefügt in',
  useInstead: place => `Stattdessen ${place} nehmen`,
  about: 'Formel, Grenzen und Quellen',
  items: {
    formula: 'Formel',
    symbols: 'Formelzeichen',
    limits: 'Grenzen',
    source: 'Quelle',
    held: 'Herkunft',
    caution: 'Hinweis',
    example: 'Beispiel',
  },
  kinds: {
    geometry: 'Geometrie',
    'standard table': 'Normtabelle',
    'handbook formula': 'Handbuchformel',
    'common practice': 'allgemeine Praxis',
  },
  helpPage: 'Hilfeseite (neues Fenster)',
  helpFile: id => `help/de/${id}.html`,
  optional: 'optional',
  takeCell: 'Zelle einsetzen',
  takeCellFor: argument => `Zelle einsetzen für ${argument}`,
  range: '. Für einen Bereich setzen Sie erst seine erste, dann seine letzte Zelle ein, oder geben Sie Werte mit ; dazwischen ein',
  blank: {
    zero: 'leer zählt als 0',
    absent: 'darf fehlen',
    explicit: zero => `für keine ${zero} schreiben`,
    by: value => `leer zählt als ${value}`,
    as: argument => `leer: wie ${argument}`,
    from: argument => `leer: aus ${argument}`,
  },
  result: 'Ergebnis',
  answer: 'Ergebnistabelle',
  rowsMore: rows => `und ${count(rows, 'weitere Zeile', 'weitere Zeilen')}`,
  noResult: 'Kein Ergebnis.',
  seeAbove: argument => `Siehe ${argument} oben.`,
  bySheet: argument => `${argument} berechnet das Blatt: Das Ergebnis erscheint, sobald die Formel eingefügt ist.`,
  noSheet: 'Hier ist kein Blatt: Kopieren Sie die Formel, oder öffnen Sie diesen Bereich in einer Arbeitsmappe.',
  insert: 'Einfügen',
  insertInto: 'In das Blatt einfügen',
  insertFirst: 'Den ersten Wert einfügen',
  insertAnyway: 'Trotzdem einfügen',
  inserted: place => `Eingefügt in ${place}`,
  writeBack: 'Zurückschreiben',
  writtenBack: place => `Zurückgeschrieben in ${place}`,
  stillToGive: names => `Noch anzugeben: ${names}`,
  allFunctions: 'Alle Funktionen',
  inTable: (at, table) => `${at} liegt in der Tabelle ${table}; dort zeigt eine Funktion, die mehrere Zellen füllt, #ÜBERLAUF! (#SPILL!). `,
  valueInTable: 'JOINT.VALUE gibt dort eine Ausgabe einer Zeile. ',
  indexInTable: 'INDEX gibt einen ihrer Werte: den ersten, oder einen anderen, wenn Sie seine letzten zwei Zahlen ändern.',
  replaced: (at, held) => `${at} enthält ${held}. Das wird ersetzt.`,
  noRoom: (rows, columns, from, used) =>
    `Die Tabelle braucht ${count(rows, 'Zeile', 'Zeilen')} und ${count(columns, 'Spalte', 'Spalten')} ab ${from}, und ${used} ist nicht ` +
    'leer. Solange das so ist, zeigt das Blatt #ÜBERLAUF! (#SPILL!).',
};
