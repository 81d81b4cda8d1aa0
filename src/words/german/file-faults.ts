// Why a file is refused, in German.
import type { FileFault, FileFaultWords, Trouble } from '../../package/unreadable';

const FILE_FAULTS: FileFaultWords = {
  noWorkbook: () => 'Das ist keine Arbeitsmappe (.xlsx), oder sie ist beschädigt',
  over4GB: () => 'Die Datei hat die Form für Dateien über 4 GB (zip64), die nicht gelesen wird: Speichern Sie sie in Excel als .xlsx',
  partOver4GB: part =>
    `der Teil "${part}" hat die Form für Dateien über 4 GB (zip64), die nicht gelesen wird: Speichern Sie die Datei in Excel als .xlsx`,
  password: () => 'Die Datei ist durch ein Kennwort geschützt oder hat das alte Format .xls: Speichern Sie sie ohne Kennwort als .xlsx',
  encrypted: part => `der Teil "${part}" ist verschlüsselt: Speichern Sie die Datei ohne Kennwort`,
  signed: () => 'Die Datei ist signiert, und eine Änderung würde die Signatur ungültig machen: Speichern Sie eine Kopie ohne Signatur',
  runs: part => `Die Datei kann von selbst etwas ausführen ("${part}"): Speichern Sie sie ohne Makros als .xlsx`,
  leadsOut: (file, targets) => `${file} führt aus der Datei hinaus: ${targets}`,
  tooLarge: size => `die Datei ist größer als ${size}`,
  tooLargeUnpacked: size => `entpackt wäre die Datei größer als ${size}`,
  tooManyParts: most => `die Datei hat mehr Teile als ${most}`,
  tooTight: (part, times) =>
    `der Teil "${part}" ist mehr als ${times}-fach gepackt: solche Dateien sind dazu gemacht, einen Speicher zu füllen`,
  tooManyCells: most => `die Blätter haben mehr Zellen als ${most}`,
  tooWide: most => `die Blätter reichen über mehr Zellen als ${most}`,
  formulasTooWide: most => `die Formeln eines Blatts füllen mehr Zellen als ${most}`,
  sharedTooLong: most => `die gemeinsamen Formeln haben zusammen mehr Zeichen als ${most}`,
  noSheet: () => 'die Arbeitsmappe hat kein Blatt mit Zellen',
  sheetTwice: sheet => `die Arbeitsmappe hat das Blatt "${sheet}" zweimal`,
  sheetMissing: sheet => `das Blatt "${sheet}" fehlt in der Datei`,
  damaged: part => `der Teil "${part}" ist beschädigt`,
  checksum: part => `der Teil "${part}" ist beschädigt: Die Prüfsumme ist eine andere`,
  broken: (part, why) => `der Teil "${part}" ist beschädigt: ${why}`,
  notLoaded: () => 'der Teil der Seite, der Dateien bearbeitet, ließ sich nicht laden',
  inside: words => words,
};

const faultWords = ({ key, parts, file }: FileFault): string =>
  `${file === undefined ? '' : `${file}: `}${(FILE_FAULTS[key] as (...inside: FileFault['parts']) => string)(...parts)}`;

export const troubleWords = ({ message, fault }: Trouble): string => (fault === undefined ? message : faultWords(fault));
