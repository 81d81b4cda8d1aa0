// Why a file is refused, in German: the messages are put together of these phrases. The page itself meets them in English.

/** Longer ones first: a phrase may begin another. */
const PHRASES: readonly (readonly [english: string, german: string])[] = [
  ['this is not a workbook file (.xlsx), or it is broken', 'Das ist keine Arbeitsmappe (.xlsx), oder sie ist beschädigt'],
  ['the part of the page that works on files could not be loaded', 'der Teil der Seite, der Dateien bearbeitet, ließ sich nicht laden'],
  [
    'the file is in the form for files over 4 GB (zip64), which is not read: save it in Excel as .xlsx',
    'Die Datei hat die Form für Dateien über 4 GB (zip64), die nicht gelesen wird: Speichern Sie sie in Excel als .xlsx',
  ],
  [
    ' is kept in the form for files over 4 GB (zip64), which is not read: save it in Excel as .xlsx',
    ' hat die Form für Dateien über 4 GB (zip64), die nicht gelesen wird: Speichern Sie die Datei in Excel als .xlsx',
  ],
  [
    'the file is protected by a password, or of the old kind .xls: save it as .xlsx without a password',
    'Die Datei ist durch ein Kennwort geschützt oder hat das alte Format .xls: Speichern Sie sie ohne Kennwort als .xlsx',
  ],
  [
    'the file is signed, and an edit would break the signature: save a copy of it without one',
    'Die Datei ist signiert, und eine Änderung würde die Signatur ungültig machen: Speichern Sie eine Kopie ohne Signatur',
  ],
  ['the file can run something by itself', 'Die Datei kann von selbst etwas ausführen'],
  [': save it as .xlsx without macros', ': Speichern Sie sie ohne Makros als .xlsx'],
  [' leads out of the file: ', ' führt aus der Datei hinaus: '],
  ['the sheets reach over more than ', 'die Blätter reichen über mehr Zellen als '],
  ['the formulas of a sheet fill more than ', 'die Formeln eines Blatts füllen mehr Zellen als '],
  ['the sheets have more than ', 'die Blätter haben mehr Zellen als '],
  ['the shared formulas come to more than ', 'die gemeinsamen Formeln haben zusammen mehr Zeichen als '],
  ['the file is larger than ', 'die Datei ist größer als '],
  ['unpacked the file would be larger than ', 'entpackt wäre die Datei größer als '],
  ['the file has more than ', 'die Datei hat mehr Teile als '],
  [' is encrypted: save the file without a password', ' ist verschlüsselt: Speichern Sie die Datei ohne Kennwort'],
  [': files like this are made to fill a memory', ': solche Dateien sind dazu gemacht, einen Speicher zu füllen'],
  ['the workbook has no sheet with cells', 'die Arbeitsmappe hat kein Blatt mit Zellen'],
  ['the workbook has the sheet ', 'die Arbeitsmappe hat das Blatt '],
  [' is missing in the file', ' fehlt in der Datei'],
  [' is damaged: its checksum is another', ' ist beschädigt: Die Prüfsumme ist eine andere'],
  [' is damaged', ' ist beschädigt'],
  [' is broken: ', ' ist beschädigt: '],
  ['the part "', 'der Teil "'],
  ['the sheet "', 'das Blatt "'],
  [' characters', ''],
  [' cells', ''],
  [' parts', ''],
  [' twice', ' zweimal'],
];

const ALL = new RegExp(PHRASES.map(([english]) => english.replaceAll(/[.*+?^${}()|[\]\\/]/g, String.raw`\$&`)).join('|'), 'g');
const GERMAN: ReadonlyMap<string, string> = new Map(PHRASES);

/** What is seldom, and of no use to whoever opens the file, stays English. */
export const fileFault = (message: string): string => message.replace(ALL, phrase => GERMAN.get(phrase) ?? phrase);
