// What an argument or input accepts, and what counts without it, in German. What is accepted is put together of the same few phrases
// everywhere: each is translated once.

/** Longer ones first: a phrase may begin another. Names of arguments stay as they are. */
const PHRASES: readonly (readonly [english: string, german: string])[] = [
  ['a material, "ABS" or your own two-column card: its ', 'ein Werkstoff, "ABS" oder eigene zweispaltige Karte: '],
  [
    'strength at yield, the low end of the family, conditioned where it takes up water',
    'Streckspannung, unteres Ende der Familie, konditioniert, wo er Wasser aufnimmt',
  ],
  [
    'a symbol such as "ABS", or a two-column range of quantity and value',
    'ein Kurzzeichen wie "ABS", oder ein zweispaltiger Bereich Größe und Wert',
  ],
  ['a screw with a fit, ', 'eine Schraube mit Passung, '],
  [' (largest hole)', ' (größtes Loch)'],
  ['with a thread share or material, ', 'mit Flankenüberdeckung oder Werkstoff, '],
  ['a hexagon by its flats, "1/4 in hex": taken across corners', 'ein Sechskant nach seiner Schlüsselweite, "1/4 in hex": gilt über Eck'],
  ['the screw with its end, ', 'die Schraube mit ihrem Ende, '],
  ['screw and head, ', 'Schraube und Kopf, '],
  ['a screw, "M3": ', 'eine Schraube, "M3": '],
  ['its max diameter', 'größter Durchmesser'],
  ['its min diameter', 'kleinster Durchmesser'],
  ['its max height', 'größte Höhe'],
  ['its sharp diameter', 'scharfkantiger Durchmesser'],
  ['its major max', 'größter Außendurchmesser'],
  ['its major min', 'kleinster Außendurchmesser'],
  ['flat-seated heads only', 'nur Köpfe mit ebener Auflage'],
  [
    'your own table of three columns: upper limit of size, ± same, ± across',
    'eigene Tabelle mit drei Spalten: Obergrenze des Maßes, ± same, ± across',
  ],
  ['a row or column of tolerances, or one for all; each ', 'Zeile oder Spalte aus Toleranzen, oder eine für alle; jede '],
  ['a row or column of names; a blank one is shown as –', 'Zeile oder Spalte aus Namen; ein leerer erscheint als –'],
  ['a row or column of lengths, or one value', 'Zeile oder Spalte aus Längen, oder ein Wert'],
  ['a row or column of numbers, or one value', 'Zeile oder Spalte aus Zahlen, oder ein Wert'],
  ['a row or column of values', 'Zeile oder Spalte aus Werten'],
  ['a row or column of ', 'Zeile oder Spalte aus '],
  [', or one for all', ', oder eines für alle'],
  ['a whole number', 'eine ganze Zahl'],
  ['a plain number', 'eine bloße Zahl'],
  ['text such as ', 'Text wie '],
  ['a range', 'ein Bereich'],
  ['anything', 'beliebig'],
  ['units: ', 'Einheiten: '],
  ['0.1 for ±0.1', '0.1 für ±0.1'],
  ['IT5 to IT16', 'IT5 bis IT16'],
  [
    'at most the major diameter of the screw: a wider hole leaves no thread',
    'höchstens der Außendurchmesser der Schraube: ein weiteres Loch lässt kein Gewinde',
  ],
  ['at least the major diameter of the screw', 'mindestens der Außendurchmesser der Schraube'],
  ['below the major diameter of the screw', 'unter dem Außendurchmesser der Schraube'],
  ['a screw with a major diameter below ', 'eine Schraube mit einem Außendurchmesser unter '],
  ['at most the head diameter', 'höchstens der Kopfdurchmesser'],
  ['at least five times both plays', 'mindestens fünfmal beide Spiele'],
  [', or it does not go through', ', sonst geht sie nicht hindurch'],
  [': a loose ring is not stretched', ': ein loser Ring ist nicht gedehnt'],
  ['more than half of ', 'mehr als die Hälfte von '],
  ['at most ', 'höchstens '],
  ['at least ', 'mindestens '],
  ['below ', 'unter '],
  ['above ', 'über '],
  [' or ', ' oder '],
  [' and ', ' und '],
  ['; or ', '; oder '],
];

/** Of each place the first phrase that stands there. */
const ALL = new RegExp(PHRASES.map(([english]) => english.replaceAll(/[.*+?^${}()|[\]\\/]/g, String.raw`\$&`)).join('|'), 'g');
const GERMAN: ReadonlyMap<string, string> = new Map(PHRASES);

export const acceptsInGerman = (words: string): string => words.replace(ALL, phrase => GERMAN.get(phrase) ?? phrase);

/** What ABOUT says of a blank argument. */
const BLANKS: readonly (readonly [english: string, german: string])[] = [
  ['must be given', 'muss angegeben sein'],
  ['may be left out', 'darf fehlen'],
  ['write zero with its unit', 'eine Null mit Einheit schreiben'],
  ['blank: as ', 'leer: wie '],
  ['blank: from ', 'leer: aus '],
  ['blank: ', 'leer: '],
];

/** Limits and blanks of the arguments of a function. */
export const limitsInGerman = (words: string): string =>
  BLANKS.reduce((text, [english, german]) => text.replaceAll(english, german), acceptsInGerman(words));

/** What counts where an input is not given, by its English; a number is a number. */
export const DEFAULTS: Readonly<Record<string, string>> = {
  required: 'muss angegeben sein',
  cone: 'cone (Spitze)',
  'shortest standard length that meets ratio at worst case and fits the hole depth':
    'kürzeste genormte Länge, die ratio im ungünstigsten Fall einhält und in die Lochtiefe passt',
  table: 'Tabelle der Norm',
  'none; required where a default comes from it': 'keiner; nötig, wo ein Standardwert von ihm abhängt',
  wall: 'wie wall',
  'sink limit of the material; 0.6 without one': 'Einfallgrenze des Werkstoffs; ohne Werkstoff 0,6',
  'largest of 0.8·head wall, 0.6·d, 1.5': 'das größte von 0,8·head wall, 0,6·d und 1,5',
  '0.1; 0 without a seat': '0,1; ohne Kopfauflage 0',
  '10 % of board, at least 0.08': '10 % von board, mindestens 0,08',
  '0.1; 0 without a gap': '0,1; ohne Spalt 0',
  'ISO 273 medium, ASME B18.2.8 normal; required for ST': 'ISO 273 medium, ASME B18.2.8 normal; bei ST anzugeben',
  'its rules do not apply; required with seat "0 mm" and no sleeve':
    'seine Regeln gelten nicht; anzugeben bei Kopfauflage "0 mm" ohne Hülse',
  'table, max': 'Tabelle der Norm, größter',
  'table, min; the head diameter where that is given': 'Tabelle der Norm, kleinster; der Kopfdurchmesser, wo er angegeben ist',
  'hole max − screw major min + 0.2': 'größtes Durchgangsloch − kleinster Außendurchmesser der Schraube + 0,2',
  'recess diameter + 2·feature wall': 'Durchmesser der Senkung + 2·feature wall',
  'major max + 0.2': 'größter Außendurchmesser der Schraube + 0,2',
  '2; in an insert 1': '2; im Gewindeeinsatz 1',
  'from thread share': 'aus der Flankenüberdeckung',
  mid: 'mid (Mitte)',
  material: 'Werkstoff',
  'od ratio × d, or insert ratio × insert diameter; with a sleeve and a board hole at least what holds the board':
    'od ratio × d oder insert ratio × insert diameter; bei Hülse und Loch in der Leiterplatte mindestens, was die Leiterplatte hält',
  'boss height': 'wie boss height',
  'none: the thread is in the plastic': 'keiner: das Gewinde sitzt im Kunststoff',
  'required with an insert': 'bei einem Gewindeeinsatz anzugeben',
  'insert diameter: moulded in': 'wie insert diameter: umspritzt',
  hidden: 'hidden (verdeckt)',
  show: 'show (Sichtfläche)',
  'material, low end of the family, conditioned': 'Werkstoff, unteres Ende der Familie, konditioniert',
  'material: low end of its range; 1.8 without one': 'Werkstoff: unteres Ende seines Bereichs; ohne Werkstoff 1,8',
  'material; 0.97 without one': 'Werkstoff; ohne Werkstoff 0,97',
  'material; 1 without one': 'Werkstoff; ohne Werkstoff 1',
  'material; 0.6 without one': 'Werkstoff; ohne Werkstoff 0,6',
};

export const defaultOf = (words: string): string => DEFAULTS[words] ?? words.replace(/^(\d+)\.(\d+)$/, '$1,$2');
