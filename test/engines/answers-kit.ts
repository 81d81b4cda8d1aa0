// Answers as people make them: in LibreOffice, which moves rows, columns and sheets with all formulas that read them, by openpyxl,
// through other file formats, and saved once more by another program.
import { execFile } from 'node:child_process';
import { mkdtemp, readFile, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { promisify } from 'node:util';
import { PYTHON } from './foreign/inputs';

const run = promisify(execFile);

/** Filters by which LibreOffice writes a file and reads it again before the answer is saved. */
const THROUGH = { xls: 'MS Excel 97', ods: 'calc8' } as const;

/** What people do, in the words of the program: `Sheet("Joint").Rows.insertByIndex(5, 1)`. */
export interface Edit {
  readonly what: string;
  readonly libreoffice?: readonly string[];
  /** With `book` open. */
  readonly openpyxl?: readonly string[];
  /** On the parts of the file, by name: `parts['xl/styles.xml']`. */
  readonly parts?: readonly string[];
  readonly through?: keyof typeof THROUGH;
}

const HEAD = `Dim doc As Object
Function Sheet(name As String) As Object
  Dim one As Object
  one = doc.Sheets.getByName(name)
  If one.isProtected() Then one.unprotect("")
  Sheet = one
End Function
Function Cell(name As String, at As String) As Object
  Cell = Sheet(name).getCellRangeByName(at)
End Function
Sub SortBy(name As String, at As String, column As Integer)
  Dim field(0) As New com.sun.star.table.TableSortField
  field(0).Field = column
  field(0).IsAscending = True
  Dim how(0) As New com.sun.star.beans.PropertyValue
  how(0).Name = "SortFields"
  how(0).Value = field()
  Cell(name, at).sort(how())
End Sub
Function Kind(filter As String) As Variant
  Dim one(0) As New com.sun.star.beans.PropertyValue
  one(0).Name = "FilterName"
  one(0).Value = filter
  Kind = one()
End Function
Function Opened(url As String) As Object
  Dim hidden(0) As New com.sun.star.beans.PropertyValue
  hidden(0).Name = "Hidden"
  hidden(0).Value = True
  Opened = StarDesktop.loadComponentFromURL(url, "_blank", 0, hidden())
End Function
`;

/** A comment with its person, and the note that stands in for it in programs that know none. */
const PARTS = `import re, zipfile
def threaded(parts, sheet, at, *said):
    book = parts['xl/workbook.xml']
    link = re.search('<sheet [^>]*name="' + sheet + '"[^>]*r:id="([^"]*)"', book).group(1)
    path = re.search('<Relationship [^>]*Id="' + link + '"[^>]*/>', parts['xl/_rels/workbook.xml.rels']).group(0)
    path = 'xl/' + re.search('Target="/?(?:xl/)?([^"]*)"', path).group(1)
    rels = path.replace('worksheets/', 'worksheets/_rels/') + '.rels'
    main, office = 'http://schemas.openxmlformats.org/', 'http://schemas.microsoft.com/office/'
    of = 'xmlns="' + office + 'spreadsheetml/2018/threadedcomments"'
    ids = ['{00000000-0000-4000-8000-%012d}' % i for i in range(len(said) + 1)]
    parts['xl/persons/person.xml'] = '<personList %s><person displayName="moulder" id="%s" userId="m" providerId="None"/></personList>' % (of, ids[0])
    each = ['<threadedComment ref="%s" dT="2026-01-01T00:00:00.00" personId="%s" id="%s"%s><text>%s</text></threadedComment>'
            % (at, ids[0], ids[i + 1], ' parentId="%s"' % ids[1] if i else '', text) for i, text in enumerate(said)]
    parts['xl/threadedComments/threadedComment1.xml'] = '<ThreadedComments %s>%s</ThreadedComments>' % (of, ''.join(each))
    note = ('[Threaded comment]\\n\\nYour version of Excel allows you to read this threaded comment; however, any edits to it will get '
            'removed if the file is opened in a newer version of Excel. Learn more: https://go.microsoft.com/fwlink/?linkid=870924\\n\\n'
            'Comment:\\n    ' + '\\nReply:\\n    '.join(said))
    parts['xl/comments9.xml'] = ('<comments xmlns="%sspreadsheetml/2006/main"><authors><author>tc=%s</author></authors><commentList>'
        '<comment ref="%s" authorId="0"><text><t xml:space="preserve">%s</t></text></comment></commentList></comments>' % (main, ids[1], at, note))
    def link_to(name, kind, target):
        kept = parts.get(name, '<Relationships xmlns="%spackage/2006/relationships"></Relationships>' % main)
        one = '<Relationship Id="r%s" Type="%s" Target="%s"/>' % (target.split('/')[-1].split('.')[0], kind, target)
        parts[name] = kept.replace('</Relationships>', one + '</Relationships>')
    link_to(rels, main + 'officeDocument/2006/relationships/comments', '/xl/comments9.xml')
    link_to(rels, office + '2017/10/relationships/threadedComment', '/xl/threadedComments/threadedComment1.xml')
    link_to('xl/_rels/workbook.xml.rels', office + '2017/10/relationships/person', '/xl/persons/person.xml')
    for part, kind in [('comments9', 'vnd.openxmlformats-officedocument.spreadsheetml.comments'), ('persons/person', 'vnd.ms-excel.person'),
                       ('threadedComments/threadedComment1', 'vnd.ms-excel.threadedcomments')]:
        types = parts['[Content_Types].xml']
        parts['[Content_Types].xml'] = types.replace('</Types>', '<Override PartName="/xl/%s.xml" ContentType="application/%s+xml"/></Types>' % (part, kind))
def opened(name):
    with zipfile.ZipFile(name) as file:
        return {one: file.read(one).decode('utf-8') if one.endswith(('xml', 'rels')) else file.read(one) for one in file.namelist()}
def saved(parts, name):
    with zipfile.ZipFile(name, 'w', zipfile.ZIP_DEFLATED) as file:
        for one, content in parts.items():
            file.writestr(one, content)
`;

const escaped = (text: string): string => text.replaceAll('&', '&amp;').replaceAll('<', '&lt;').replaceAll('"', '&quot;');

/** @param again files that are opened and saved as others, as they are. */
function moduleOf(folder: string, edits: readonly Edit[], again: readonly (readonly [string, string])[]): string {
  const at = (name: string): string => pathToFileURL(join(folder, name)).href;
  const saved = (name: string): string[] => [`  doc.storeToURL("${at(name)}", Kind("Calc MS Excel 2007 XML"))`, '  doc.close(True)'];
  const each = edits.flatMap(({ libreoffice = [], through }, i) => {
    if (libreoffice.length === 0) return [];
    const between = `b${i}.${through ?? ''}`;
    const way =
      through === undefined
        ? []
        : [`  doc.storeToURL("${at(between)}", Kind("${THROUGH[through]}"))`, '  doc.close(True)', `  doc = Opened("${at(between)}")`];
    return [`  doc = Opened("${at('in.xlsx')}")`, ...libreoffice.map(line => `  ${line}`), ...way, ...saved(`a${i}.xlsx`)];
  });
  const copies = again.flatMap(([from, to]) => [`  doc = Opened("${at(from)}")`, ...saved(to)]);
  return `<?xml version="1.0" encoding="UTF-8"?>
<!DOCTYPE script:module PUBLIC "-//OpenOffice.org//DTD OfficeDocument 1.0//EN" "module.dtd">
<script:module xmlns:script="http://openoffice.org/2000/script" script:name="Module1" script:language="StarBasic">${escaped(
    `${HEAD}Sub All\n${[...each, ...copies].join('\n')}\nEnd Sub\n`,
  )}</script:module>
`;
}

async function byLibreOffice(folder: string, edits: readonly Edit[], again: readonly (readonly [string, string])[]): Promise<void> {
  const profile = join(folder, 'profile');
  const office = (...args: readonly string[]): Promise<unknown> =>
    run('timeout', ['--kill-after=5', '300', 'soffice', `-env:UserInstallation=${pathToFileURL(profile).href}`, '--headless', ...args]);
  // the first start makes the profile, with an empty module
  await office('--terminate_after_init');
  await writeFile(join(profile, 'user', 'basic', 'Standard', 'Module1.xba'), moduleOf(folder, edits, again));
  await office('--norestore', 'macro:///Standard.Module1.All');
}

async function byPython(folder: string, edits: readonly Edit[]): Promise<void> {
  const lines = edits.flatMap(({ openpyxl = [], parts = [] }, i) => [
    ...(openpyxl.length === 0 ? [] : [`book = openpyxl.load_workbook('in.xlsx')`, ...openpyxl, `book.save('a${i}.xlsx')`]),
    ...(parts.length === 0 ? [] : [`parts = opened('in.xlsx')`, ...parts, `saved(parts, 'a${i}.xlsx')`]),
  ]);
  await writeFile(
    join(folder, 'answers.py'),
    ['import openpyxl', 'from openpyxl.comments import Comment', 'from openpyxl.styles import Font, PatternFill', PARTS, ...lines, ''].join(
      '\n',
    ),
  );
  await run('timeout', ['900', PYTHON, '-B', 'answers.py'], { cwd: folder });
}

export interface Answer {
  readonly what: string;
  readonly by: string;
  readonly bytes: Uint8Array;
}

/** Each edit, and each as other programs save it again. */
export async function answersTo(sent: Uint8Array, edits: readonly Edit[]): Promise<readonly Answer[]> {
  const folder = await mkdtemp(join(tmpdir(), 'answers-'));
  try {
    await writeFile(join(folder, 'in.xlsx'), sent);
    await byPython(folder, edits);
    const others = edits.flatMap(({ libreoffice }, i) => (libreoffice === undefined ? [[`a${i}.xlsx`, `l${i}.xlsx`] as const] : []));
    await byLibreOffice(folder, edits, others);
    const answers: Answer[] = [];
    const read = async (name: string): Promise<Uint8Array> => new Uint8Array(await readFile(join(folder, name)));
    for (const [i, { what, libreoffice, parts }] of edits.entries()) {
      await run('timeout', ['300', 'ssconvert', join(folder, `a${i}.xlsx`), join(folder, `g${i}.xlsx`)]);
      const by = libreoffice !== undefined ? 'LibreOffice' : parts === undefined ? 'openpyxl' : 'another program';
      answers.push({ what, by, bytes: await read(`a${i}.xlsx`) }, { what, by: `${by}, then Gnumeric`, bytes: await read(`g${i}.xlsx`) });
      if (libreoffice === undefined) answers.push({ what, by: `${by}, then LibreOffice`, bytes: await read(`l${i}.xlsx`) });
    }
    return answers;
  } finally {
    await rm(folder, { recursive: true, force: true });
  }
}
