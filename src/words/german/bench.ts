// What the bench says round its spreadsheet, in German.
import type { BENCH as ENGLISH } from '../bench';
import { count } from './count';

const CLOCK: Intl.DateTimeFormatOptions = { hour: '2-digit', minute: '2-digit' };
const dayOf = (kept: Date): string => kept.toLocaleString('de-DE', { day: 'numeric', month: 'short', ...CLOCK });

export const BENCH: typeof ENGLISH = {
  page: {
    bench: 'Werkbank',
    workbook: 'Arbeitsmappe',
    menu: 'Menü',
    workbooks: 'Arbeitsmappen…',
    open: 'Öffnen…',
    save: 'Speichern als .xlsx',
    handOver: 'Übergeben…',
    help: 'Hilfe',
    newWindow: ' (englisch, neues Fenster)',
    language: 'Sprache',
    details: 'Bild und Einzelheiten',
    spreadsheet: 'Tabellenblatt',
    opening: 'Die Arbeitsmappe wird geöffnet …',
    splitter: 'Breite des Bereichs neben dem Blatt',
    beside: 'Neben dem Blatt',
    noCell: 'Keine Zelle gewählt',
    copyValues: 'Werte kopieren',
    legend: 'Farben und Tasten',
    keys: 'Tasten:',
    edit: 'bearbeiten,',
    control: 'Strg',
    undo: 'rückgängig,',
    nextPart: 'nächster Teil der Seite.',
    workbooksTitle: 'Arbeitsmappen',
    nameOfOpen: 'Name der geöffneten',
    keptHere: 'In diesem Browser gespeichert',
    noOther: 'Keine andere.',
    begin: 'Neu',
    close: 'Schließen',
  },
  blank: 'leer',
  partOf: cell => `Teil der Tabelle, die in ${cell} beginnt`,
  copyValue: 'Wert kopieren',
  copyValuesOf: range => `Werte von ${range} kopieren`,
  copied: 'Kopiert',
  notCopied: 'Der Browser hat es nicht erlaubt',
  errors: {
    '#NAME?': 'Eine Funktion dieses Namens gibt es nicht, oder ein Text steht ohne Anführungszeichen.',
    '#SPILL!': 'Die Tabelle hat keinen Platz: Eine Zelle darunter oder rechts ist nicht leer.',
    '#DIV/0!': 'Teilung durch null, hier oder in einer Zelle, die diese Formel liest.',
    '#VALUE!': 'Ein Wert falscher Art, hier oder in einer Zelle, die diese Formel liest.',
    '#N/A': 'Kein Wert: nicht gefunden, hier oder in einer Zelle, die diese Formel liest.',
    '#REF!': 'Eine Zelle, die diese Formel liest, gibt es nicht mehr.',
    '#NUM!': 'Eine Zahl, die sich nicht berechnen lässt.',
    '#CALC!': 'Das lässt sich nicht berechnen.',
    '#CYCLE!': 'Die Formel liest ihre eigene Zelle.',
  },
  meanings: {
    input: 'Eingabe, zum Ändern',
    result: 'berechnet',
    pass: 'erfüllt',
    review: 'zu prüfen',
    fail: 'nicht erfüllt',
    'not checked': 'nicht geprüft: eine Eingabe fehlt',
  },
  cancel: 'Nein, zurück',
  readingFile: file => `${file} wird gelesen …`,
  writingFile: 'Die Datei wird geschrieben …',
  openAsked: file => `${file} öffnen?`,
  openYes: 'Öffnen',
  has: (sheets, formulas) =>
    `Die Datei hat ${count(sheets, 'Blatt', 'Blätter')} mit ${count(formulas, 'Formel', 'Formeln')}. Werte und Formeln werden gelesen; ` +
    'Farben, Breiten und Bilder nicht.',
  hidden: sheets => (sheets === 1 ? '1 ausgeblendetes Blatt wird gezeigt.' : `${sheets} ausgeblendete Blätter werden gezeigt.`),
  outside: parts => `Nicht gelesen, weil es aus der Datei hinausführt: ${parts}.`,
  keptBeside: 'Der Inhalt wird neben Ihren anderen Arbeitsmappen gespeichert; die Datei selbst bleibt, wie sie ist.',
  notOpened: file => `${file} ist nicht geöffnet`,
  notWritten: 'Die Datei ist nicht geschrieben',
  unreadable: 'Eine Arbeitsmappe, die diese Seite nicht lesen kann',
  shelved: (kept, kB) => `${kept === undefined ? '' : dayOf(kept)} · ${kB} kB`,
  discard: 'Verwerfen…',
  discardOf: name => `${name} verwerfen…`,
  discardAsked: name => `${name} verwerfen?`,
  discardForGood: 'Endgültig verwerfen?',
  noWayBack: 'Nichts bringt sie zurück.',
  discardYes: 'Verwerfen',
  discardNo: 'Behalten',
  discardIt: 'Verwerfen…',
  putAside: characters =>
    `Eine Arbeitsmappe, die sich nicht öffnen ließ, ist beiseitegelegt (${
      characters < 1000 ? `${characters} Zeichen` : `${Math.round(characters / 1000)} Tausend Zeichen`
    }).`,
  saveAside: 'Das Beiseitegelegte speichern',
  asideName: number => `beiseitegelegt ${number}`,
  leftAsIs: why => `${why} Sie bleibt, wie sie ist, und was Sie hier ändern, wird in diesem Browser nicht gespeichert.`,
  saveAsFile: 'Als Datei speichern',
  keptName: 'gespeicherte Arbeitsmappe',
  demoChanged: said => `${said} · das Beispiel hat sich seitdem geändert`,
  changedElsewhere:
    'Die Arbeitsmappe wurde in einem anderen Tab dieses Browsers geändert. Was Sie hier ändern, wird erst gespeichert, wenn Sie gewählt ' +
    'haben.',
  keepThis: 'Diese behalten, die andere verwerfen',
  openOther: 'Die andere öffnen, diese verwerfen',
  notKept: 'In diesem Browser nicht gespeichert, Grund siehe unten: Speichern als .xlsx, oder wählen',
  notKeptWhy: why => `In diesem Browser nicht gespeichert (${why}): Speichern als .xlsx, oder eine andere Arbeitsmappe verwerfen`,
  saved: at => `In diesem Browser gespeichert ${at.toLocaleTimeString('de-DE', CLOCK)}`,
  openedAs: kept => `Ihre Arbeitsmappe, in diesem Browser gespeichert${kept === undefined ? '' : ` ${dayOf(kept)}`}`,
  damaged: why =>
    `Die gespeicherte Arbeitsmappe ließ sich nicht öffnen (${why}), und dieser Browser hat keinen Platz, sie beiseitezulegen.`,
  damagedAside: why => `Die gespeicherte Arbeitsmappe ließ sich nicht öffnen (${why}) und ist beiseitegelegt. Dies ist das Beispiel.`,
  demo: 'Beispiel-Arbeitsmappe',
  newer:
    'Die Arbeitsmappe in diesem Browser wurde von einer neueren Fassung dieser Seite gespeichert: Laden Sie die Seite neu, um sie ' +
    'zu bekommen.',
  keepsNothing: 'Dieser Browser speichert nichts für diese Seite. Dies ist das Beispiel.',
  leaveAsked: 'Diese Arbeitsmappe verlassen?',
  leaveWords:
    'Was Sie darin geändert haben, ist in diesem Browser nicht gespeichert; der Grund steht über dem Blatt. Speichern als .xlsx ' +
    'sichert es in einer Datei.',
  leaveYes: 'Verlassen und die Änderungen verlieren',
  leaveNo: 'Bleiben',
};
