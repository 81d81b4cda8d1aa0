// What is said where Excel refuses, in German.
import type { EXCEL as ENGLISH } from '../excel';
import { whole } from './count';

export const EXCEL: typeof ENGLISH = {
  codes: {
    AccessDenied: 'Das Blatt oder die Arbeitsmappe ist geschützt',
    InsertDeleteConflict: 'Excel kann hier nichts einfügen oder löschen',
    InvalidArgument: 'Excel nimmt das nicht an: eine Formel, die es nicht lesen kann, oder eine Adresse, die es nicht kennt',
    ItemNotFound: 'Das Blatt gibt es nicht mehr',
    Timeout: 'Excel hat nicht rechtzeitig geantwortet',
  },
  tooOld: needed =>
    `Diesem Excel fehlt, womit dieser Bereich arbeitet (ExcelApi ${needed}). Die Funktionen arbeiten; für diesen Bereich nehmen Sie ` +
    'Excel 2021, Microsoft 365 oder Excel im Web.',
  noSheet: name => `Ein Blatt „${name}“ gibt es nicht`,
  manyCells: (cells, most) =>
    `Die Bereiche haben ${whole(cells)} Zellen, gelesen werden höchstens ${whole(most)}: Geben Sie kleinere an, oder fügen Sie die ` +
    'Formel ohne Vorschau ein',
  longChoices: range => `Die Auswahlliste in ${range} ist zu lang für Excel`,
  localInTable:
    'In eine Tabelle werden von hier nur Formeln mit englischen Funktionsnamen geschrieben: Geben Sie diese in die Zelle selbst ein',
  noFile:
    'Excel gibt die Arbeitsmappe nicht als Datei heraus. Verlassen Sie die Zelle, in die Sie gerade eingeben, wählen Sie in der ' +
    'geschützten Ansicht Bearbeitung aktivieren, speichern Sie einmal, und versuchen Sie es noch einmal',
  fileStopped: (part, of) => `Excel hat bei Teil ${part} von ${of} der Arbeitsmappe aufgehört: Versuchen Sie es noch einmal`,
  fileGrew: 'Die Arbeitsmappe ist gewachsen, während Excel sie herausgab: Versuchen Sie es noch einmal.',
  fileShort: (bytes, of) =>
    `Excel hat ${whole(bytes)} der ${whole(of)} Bytes der Arbeitsmappe herausgegeben: Versuchen Sie es noch einmal.`,
};
