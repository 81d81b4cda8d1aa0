// What the views of files say, in German.
import type { COMPARE as ENGLISH_COMPARE, HAND_OVER as ENGLISH_HAND_OVER } from '../files';
import type { CarriedKind } from '../../package/carried';
import { count } from './count';
import { troubleWords } from './file-faults';

const CARRIED: Readonly<Record<CarriedKind, string>> = {
  sheet: 'Blatt',
  'hidden sheet': 'ausgeblendetes Blatt',
  'very hidden sheet': 'verborgenes Blatt',
  'hidden rows': 'ausgeblendete Zeilen',
  'hidden columns': 'ausgeblendete Spalten',
  comments: 'Notizen',
  'threaded comments': 'Kommentare',
  persons: 'Personen',
  path: 'Pfad',
  'external link': 'Verknüpfung nach außen',
  connections: 'Datenverbindungen',
  query: 'Abfrage',
  'pivot cache': 'Zwischenspeicher einer Pivot-Tabelle',
  'data model': 'Datenmodell',
  macros: 'Makros',
  controls: 'Steuerelemente',
  'embedded file': 'eingebettete Datei',
  'custom XML': 'eigenes XML',
  properties: 'Dateieigenschaften',
  'custom properties': 'eigene Dateieigenschaften',
  labels: 'Vertraulichkeitskennzeichen',
  'preview picture': 'Vorschaubild',
  'task pane': 'Aufgabenbereich',
  'printer settings': 'Druckereinstellungen',
  changes: 'Änderungsverlauf',
  'other part': 'anderer Teil der Datei',
};

const values = (number: number): string => count(number, 'Wert', 'Werte');
const inputs = (number: number): string => count(number, 'Eingabe', 'Eingaben');

export const HAND_OVER: typeof ENGLISH_HAND_OVER = {
  heading: 'Übergeben',
  about:
    'Eine Kopie aus einfachen Formeln für jemanden ohne diese Funktionen, mit Seiten von uns für die Antworten. Ihre Arbeitsmappe ' +
    'bleibt, wie sie ist.',
  noWorkbook: 'Hier ist keine Arbeitsmappe. Öffnen Sie diesen Bereich in einer Arbeitsmappe, um sie zu übergeben.',
  look: 'Ansehen, was weitergegeben wird',
  lookAgain: 'Noch einmal ansehen',
  working: 'Es wird ermittelt, was weitergegeben wird',
  failed: trouble => `Das lässt sich nicht übergeben: ${troubleWords(trouble)}`,
  back: 'Zurück zur ersten Auswahl',
  titleBlock: 'Schriftfeld',
  part: 'Teil',
  number: 'Teilenummer',
  revision: 'Revision',
  date: 'Datum',
  status: 'Stand',
  statuses: { 'for quotation': 'zur Anfrage', 'for tooling': 'zum Werkzeugbau', 'for information': 'zur Information' },
  madeBy: 'Erstellt von',
  checkedBy: 'Geprüft von',
  pagesOf: 'Unsere Seiten',
  paper: 'Papier',
  papers: { A4: 'A4', Letter: 'US-Letter' },
  language: 'Sprache',
  languages: { English: 'Englisch', German: 'Deutsch' },
  sheets: 'Blätter, mit denen, die sie lesen',
  variants: 'Varianten, nach denen das Teil gebaut wird',
  characteristics: 'Merkmale, die zu messen sind',
  carried: 'Unsichtbar in der Datei: wird weitergegeben, wo angekreuzt',
  carriedOf: (kind, amount) => `${CARRIED[kind]}: ${amount}`,
  stays: words => `${words}: bleibt auf seinem Blatt`,
  carriedNothing: 'Die Arbeitsmappe enthält nichts Unsichtbares.',
  willWrite: 'Was geschrieben wird',
  pages: pages => `${count(pages, 'Seite', 'Seiten')} von uns auf Papier; Ihre Blätter werden gedruckt, wie Sie sie eingerichtet haben.`,
  live: (calls, number) =>
    calls === 1
      ? `1 Aufruf als Formel: ${values(number)}, in jedem Tabellenprogramm von den Eingaben abhängig.`
      : `${calls} Aufrufe als Formeln: ${values(number)}, in jedem Tabellenprogramm von den Eingaben abhängig.`,
  asValues: (calls, number) => `${count(calls, 'Aufruf', 'Aufrufe')} als feste Werte: ${values(number)}, die bleiben, wie sie jetzt sind.`,
  found: {
    'value, not live': 'Wird als fester Wert weitergegeben',
    error: 'Kann nicht weitergegeben werden',
    'not in every program': 'Ihre Formeln, die nicht jedes Programm kennt',
    'another add-in': 'Ihre Formeln, die ein anderes Add-in aufrufen',
    changed: 'Für die Kopie geändert',
  },
  more: lines => `und ${lines} weitere`,
  remember: 'Diese Auswahl mit der Arbeitsmappe behalten, in einem verborgenen Namen, den keine Kopie enthält',
  write: 'Kopie schreiben',
  stopped: 'Abgebrochen: Nichts wurde geschrieben',
  changed:
    'Die Arbeitsmappe hat sich geändert, seit Sie nachgesehen haben: Sehen Sie an, was jetzt weitergegeben würde, und schreiben Sie dann',
  opened: (name, live, asValues) =>
    `Die Kopie ist als neue Arbeitsmappe geöffnet: ${values(live)} als Formeln, ${asValues} fest. Sie ist noch nicht gespeichert; ` +
    `nennen Sie sie ${name}`,
  saved: (name, live, asValues) => `${name} ist gespeichert: ${values(live)} als Formeln, ${asValues} fest`,
  notOpened: message => `Excel hat sie nicht geöffnet (${message}). `,
  notKept: message => `. Die Auswahl wird nicht behalten: ${message}`,
};

export const COMPARE: typeof ENGLISH_COMPARE = {
  toldIn: 'German',
  heading: 'Vergleichen, was zurückkam',
  about: 'Wählen Sie die Datei, die zurückkam, und die, die Sie gesendet haben. Geschrieben wird nur, was Sie ankreuzen.',
  noWorkbook: 'Hier ist keine Arbeitsmappe. Öffnen Sie diesen Bereich in Ihrer eigenen Arbeitsmappe, um Änderungen zu übernehmen.',
  returned: 'Datei, die zurückkam',
  sent: 'Datei, die gesendet wurde',
  noSent: 'Ohne sie wird mit dem verglichen, was jetzt aus dieser Arbeitsmappe gesendet würde.',
  compare: 'Vergleichen',
  stopped: 'Abgebrochen',
  nothing: 'Nichts hat sich geändert.',
  offers: 'In diese Arbeitsmappe übernehmen',
  offersWords: 'Jede angekreuzte Eingabe wird in ihre eigene Zelle geschrieben. Keine Formel wird berührt.',
  refused: 'Kann nicht übernommen werden',
  write: number => (number === 1 ? '1 angekreuzte Eingabe schreiben' : `${number} angekreuzte Eingaben schreiben`),
  changed: 'Die Arbeitsmappe hat sich seitdem geändert: Sehen Sie die Eingaben noch einmal an, und schreiben Sie dann',
  written: number => `${inputs(number)} übernommen`,
};
