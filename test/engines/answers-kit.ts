// Answers as people make them: in LibreOffice, which moves rows, columns and sheets with all formulas that read them, by openpyxl,
// and saved once more by Gnumeric.
import { execFile } from 'node:child_process';
import { mkdtemp, readFile, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { promisify } from 'node:util';
import { PYTHON } from './foreign/inputs';

const run = promisify(execFile);

/** What people do, in the words of the program: `Sheet("Joint").Rows.insertByIndex(5, 1)`. */
export interface Edit {
  readonly what: string;
  readonly libreoffice?: readonly string[];
  /** With `book` open. */
  readonly openpyxl?: readonly string[];
}

const HEAD = `Dim doc As Object
Function Sheet(name As String) As Object
  Sheet = doc.Sheets.getByName(name)
End Function
Function Cell(name As String, at As String) As Object
  Dim one As Object
  one = Sheet(name)
  If one.isProtected() Then one.unprotect("")
  Cell = one.getCellRangeByName(at)
End Function
`;

const escaped = (text: string): string => text.replaceAll('&', '&amp;').replaceAll('<', '&lt;').replaceAll('"', '&quot;');

function moduleOf(folder: string, edits: readonly Edit[]): string {
  const at = (name: string): string => pathToFileURL(join(folder, name)).href;
  const each = edits.flatMap(({ libreoffice = [] }, i) =>
    libreoffice.length === 0
      ? []
      : [
          `  doc = StarDesktop.loadComponentFromURL("${at('in.xlsx')}", "_blank", 0, hidden())`,
          ...libreoffice.map(line => `  ${line}`),
          `  doc.storeToURL("${at(`a${i}.xlsx`)}", kind())`,
          '  doc.close(True)',
        ],
  );
  const body = `${HEAD}Sub All
  Dim hidden(0) As New com.sun.star.beans.PropertyValue
  hidden(0).Name = "Hidden"
  hidden(0).Value = True
  Dim kind(0) As New com.sun.star.beans.PropertyValue
  kind(0).Name = "FilterName"
  kind(0).Value = "Calc MS Excel 2007 XML"
${each.join('\n')}
End Sub
`;
  return `<?xml version="1.0" encoding="UTF-8"?>
<!DOCTYPE script:module PUBLIC "-//OpenOffice.org//DTD OfficeDocument 1.0//EN" "module.dtd">
<script:module xmlns:script="http://openoffice.org/2000/script" script:name="Module1" script:language="StarBasic">${escaped(body)}</script:module>
`;
}

async function byLibreOffice(folder: string, edits: readonly Edit[]): Promise<void> {
  const profile = join(folder, 'profile');
  const office = (...args: readonly string[]): Promise<unknown> =>
    run('timeout', ['--kill-after=5', '900', 'soffice', `-env:UserInstallation=${pathToFileURL(profile).href}`, '--headless', ...args]);
  // the first start makes the profile, with an empty module
  await office('--terminate_after_init');
  await writeFile(join(profile, 'user', 'basic', 'Standard', 'Module1.xba'), moduleOf(folder, edits));
  await office('--norestore', 'macro:///Standard.Module1.All');
}

async function byOpenpyxl(folder: string, edits: readonly Edit[]): Promise<void> {
  const lines = edits.flatMap(({ openpyxl = [] }, i) =>
    openpyxl.length === 0 ? [] : [`book = openpyxl.load_workbook('in.xlsx')`, ...openpyxl, `book.save('a${i}.xlsx')`],
  );
  await writeFile(
    join(folder, 'answers.py'),
    ['import openpyxl', 'from openpyxl.comments import Comment', 'from openpyxl.styles import Font, PatternFill', ...lines, ''].join('\n'),
  );
  await run('timeout', ['900', PYTHON, '-B', 'answers.py'], { cwd: folder });
}

export interface Answer {
  readonly what: string;
  readonly by: string;
  readonly bytes: Uint8Array;
}

/** Each edit, and each as Gnumeric saves it again. */
export async function answersTo(sent: Uint8Array, edits: readonly Edit[]): Promise<readonly Answer[]> {
  const folder = await mkdtemp(join(tmpdir(), 'answers-'));
  try {
    await writeFile(join(folder, 'in.xlsx'), sent);
    await byLibreOffice(folder, edits);
    await byOpenpyxl(folder, edits);
    const answers: Answer[] = [];
    const read = async (name: string): Promise<Uint8Array> => new Uint8Array(await readFile(join(folder, name)));
    for (const [i, { what, libreoffice }] of edits.entries()) {
      await run('timeout', ['300', 'ssconvert', join(folder, `a${i}.xlsx`), join(folder, `g${i}.xlsx`)]);
      const by = libreoffice === undefined ? 'openpyxl' : 'LibreOffice';
      answers.push({ what, by, bytes: await read(`a${i}.xlsx`) }, { what, by: `${by}, then Gnumeric`, bytes: await read(`g${i}.xlsx`) });
    }
    return answers;
  } finally {
    await rm(folder, { recursive: true, force: true });
  }
}
