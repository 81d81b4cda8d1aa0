// What the view of tables says, in German.
import type { TABLE as ENGLISH } from '../table';
import { count } from './count';

export const TABLE: typeof ENGLISH = {
  noWorkbook: 'Hier ist keine Arbeitsmappe. Öffnen Sie diesen Bereich in einer Arbeitsmappe, um eine Tabelle zu beginnen.',
  heading: 'Neue Variantentabelle',
  from: place => `Ab ${place}, nach rechts und unten. Wählen Sie eine andere Zelle, um dort zu beginnen.`,
  noCell: 'Wählen Sie die Zelle, bei der die Tabelle beginnen soll.',
  inputs: 'Eingaben',
  moreInputs: 'Weitere Eingaben',
  outputs: 'Ausgaben',
  moreOutputs: 'Weitere Ausgaben',
  firstValue: name => `${name}, Anfangswert`,
  variants: 'Varianten',
  isBeside: 'Ausgaben neben den Eingaben, nicht darunter',
  willWrite: 'Was geschrieben wird',
  nothing: 'Wählen Sie mindestens eine Eingabe und eine Ausgabe.',
  refused: message => `Noch keine Tabelle: ${message}`,
  inputCells: (range, rows) =>
    `${range}: eine Zeile mit Namen und Einheiten, und ${count(rows, 'Variante', 'Varianten')} mit den Werten oben`,
  formulaCell: at => `${at}: eine Formel`,
  filled: range => `Sie füllt ${range}; in Excel ab 2021.`,
  looks:
    'Formatierung: Namen, Eingaben und Ausgaben unterscheidbar; Zahlen durch ihr Format gerundet; Zustände farbig; Gründe mit Zeilenumbruch.',
  dropDowns: ranges => `Auswahllisten in ${ranges}; anderes lässt sich eintippen.`,
  noDropDowns: ranges => `Keine Auswahllisten in ${ranges}: Dieses Tabellenblatt kennt keine. In Excel gibt es sie.`,
  write: 'Tabelle schreiben',
  occupied: at => `${at} ist nicht leer: Eine Tabelle überschreibt nichts. Wählen Sie eine andere Zelle, oder leeren Sie diese.`,
  inTable: (at, table) => `${at} liegt in der Tabelle ${table} der Arbeitsmappe; dort läuft nichts über. Wählen Sie eine Zelle außerhalb.`,
  written: range => `Die Tabelle steht in ${range}`,
  writtenPlain: (range, message) => `Die Tabelle steht in ${range}, ohne Formatierung: ${message}`,
  format: 'Diese Tabelle formatieren',
  formatWords: 'Für eine eigene Tabelle: Wählen Sie eine Zelle darin. Kein Wert und keine Formel wird berührt.',
  noTable: 'Die gewählte Zelle liegt in keiner Tabelle mit einer Zeile aus Namen.',
  look: 'Vorschau der Formate',
  tooLong: 'Die Tabelle ist länger, als gelesen wurde: Wählen Sie eine Zelle näher am Ende, oder eine kleinere Tabelle.',
  rounded: (range, format) => `${range}: Zahlen als ${format}`,
  coloured: range => `${range}: Zustände farbig`,
  wrapped: range => `${range}: Sätze mit Zeilenumbruch, Spalte breiter`,
  chosen: range => `${range}: Auswahlliste`,
  nothingToDo: range => `${range} hat keine Spalte, die hier bekannt ist.`,
  formatted: range => `${range} ist formatiert`,
  sort: 'Diese Tabelle sortieren',
  sortWords:
    'Für eine eigene Tabelle: Wählen Sie eine Zelle darin. Ihre Zeilen werden in anderer Reihenfolge geschrieben; Formatierung und ' +
    'Notizen bleiben, wo sie sind.',
  sortBy: 'Nach',
  falling: 'Absteigend',
  lookSorted: 'Vorschau der Reihenfolge',
  sorted: range => `${range} ist sortiert`,
  isSorted: range => `${range} ist schon so sortiert.`,
  order: 'Neue Reihenfolge',
  more: rows => `und ${count(rows, 'weitere Zeile', 'weitere Zeilen')}`,
  spills: at =>
    `Die Formel in ${at} füllt Zeilen dieser Tabelle: Sie lassen sich nicht verschieben. Sortieren Sie die Tabelle, die sie liest.`,
  otherRows: cells => `${cells}: liest andere Zeilen als die eigene; die Formel wandert mit, wie beim Kopieren, und liest dann andere.`,
  outside: cells => `${cells}: liest von außen einige Zeilen dieser Tabelle und findet dort dann andere.`,
};
