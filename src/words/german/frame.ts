// What stands round the views of the pane, and what they share, in German.
import type { FRAME as ENGLISH } from '../frame';
import { whole } from './count';
import { troubleWords } from './file-faults';

export const FRAME: typeof ENGLISH = {
  views: 'Ansichten',
  names: {
    Figure: 'Bild',
    Functions: 'Funktionen',
    Cell: 'Zelle',
    Table: 'Tabelle',
    Sheets: 'Blätter',
    Check: 'Prüfung',
    'Hand-over': 'Übergabe',
    Compare: 'Vergleich',
    About: 'Info',
  },
  hosts: { excel: 'Ihrer Arbeitsmappe', bench: 'dieser Arbeitsmappe', page: 'dieser Seite' },
  opening: 'Wird geöffnet …',
  viewFailed: message => `Fehler in dieser Ansicht: ${message}`,
  tryAgain: 'Noch einmal versuchen',
  calculation: {
    settled: '',
    pending: 'Das Blatt wird berechnet: Werte können sich noch ändern.',
    manual: 'Die Berechnung ist auf manuell gestellt: Was hier steht, ist neuer als die Zellen, bis Sie F9 drücken.',
  },
  foot: 'Eine Auslegungshilfe für Fachleute: Bauen und prüfen Sie einen Prototyp.',
  allCautions: 'Alle Hinweise',
  takeBack: 'Zurücknehmen',
  takenBack: 'Zurückgenommen: Die Zellen enthalten wieder, was vorher darin stand',
  stop: 'Abbrechen',
  cancel: 'Abbrechen',
  failed: (what, trouble) => `${what}: ${troubleWords(trouble)}`,
  notDrawn: 'Das Bild ließ sich nicht zeichnen',
  noPicture: 'Der Browser hat kein Bild erzeugt',
  noWorkbook: what => `Hier ist keine Arbeitsmappe. Öffnen Sie diesen Bereich in einer Arbeitsmappe, um ${what} zu sehen.`,
  inSection: 'den Schnitt durch ihre Verbindung',
  everyRule: 'alle Regeln ihrer Verbindung',
  reading: 'Die Arbeitsmappe wird gelesen …',
  noJointHere: 'Keine Verbindung bei der gewählten Zelle',
  largeSheet: (cells, what) =>
    `Dieses Blatt füllt ${whole(cells)} Zellen; gelesen werden nur die um die gewählte Zelle. Wählen Sie eine Zeile einer Verbindung, ` +
    `um ${what} zu sehen, oder lesen Sie die ganze Arbeitsmappe in der Ansicht Prüfung.`,
  noJointYet: 'Noch keine Verbindung in dieser Arbeitsmappe',
  howToBegin: what =>
    'Fügen Sie aus der Ansicht Blätter das Blatt Joint oder Variants ein, oder schreiben Sie Namen von Eingaben wie screw, wall und ' +
    `boss OD in Zellen, ihre Werte daneben oder darunter. Wählen Sie dann eine Zeile, um ${what} zu sehen.`,
  unreadable: 'Diese Verbindung ist nicht lesbar',
  goTo: place => `Gehe zu ${place}`,
  variant: number => `Variante ${number}`,
  joint: 'Verbindung',
  jointOn: sheet => `Verbindung auf ${sheet}`,
  numberOf: (number, of) => `${number} von ${of}`,
  variantBefore: 'Vorige Variante',
  nextVariant: 'Nächste Variante',
  met: (value, is, limit) => `${value} ist ${is} ${limit}`,
  metSide: { below: 'mindestens', above: 'höchstens', 'at most': 'über', 'at least': 'unter' },
  inCell: (name, at) => `${name} in ${at}`,
  passesWith: remedy => `erfüllt mit ${remedy}`,
  remedyWords: { ' with ': ' zusammen mit ', '; or ': '; oder mit ', '(steel-safe)': '(stahlsicher)' },
  noPlace: {
    below: name => `${name} hat noch keine Spalte: Fügen Sie eine im gelesenen Bereich hinzu`,
    beside: name => `${name} hat noch keine Zeile: Fügen Sie eine im gelesenen Bereich hinzu`,
    apart: name => `${name} hat noch keine Zelle: Fügen Sie eine im gelesenen Bereich hinzu`,
  },
};
