// Why a file is refused, in German: every message that a file of somebody can bring about.
import { readdirSync, readFileSync } from 'node:fs';
import { expect, it } from 'vitest';
import { NO_WORKBOOK } from '../../src/package/unreadable';
import { fileFault } from '../../src/words/german/file-faults';

const sources = ['src/package', 'src/hosts/xlsx', 'src/files'].flatMap(folder =>
  readdirSync(folder)
    .filter(name => name.endsWith('.ts'))
    .map(name => readFileSync(`${folder}/${name}`, 'utf8')),
);

/** As they stand in the code, with X for what is put in. */
const messages = [
  NO_WORKBOOK,
  ...sources.flatMap(text => [...text.matchAll(/(?:UnreadableFile|new Error)\(\s*(['`])(.*?)\1/gs)].map(([, , message = '']) => message)),
]
  .map(message => message.replaceAll(/\$\{[^}]*\}/g, 'X'))
  .filter(message => /[a-z]{3}/.test(message));

const ENGLISH = /\b(the|is|has|have|than|more|save|which|without|with|another|not)\b/i;
/** Of a part that is damaged inside: its words help nobody but who makes such files. */
const INSIDE = /^the part "X"(?!.*(encrypted|zip64|is damaged))|formats of cells|another look|a name belongs|has the state|out of place/;

it('leaves no English word where the user can do something', () => {
  const told = messages.filter(message => !INSIDE.test(message));
  expect(told.length).toBeGreaterThan(15);
  expect(told.filter(message => !ENGLISH.test(message))).toEqual([]);
  expect(told.map(fileFault).filter(german => ENGLISH.test(german))).toEqual([]);
});

it('keeps what stands in it', () =>
  expect(fileFault('the file can run something by itself ("vbaProject.bin"): save it as .xlsx without macros')).toBe(
    'Die Datei kann von selbst etwas ausführen ("vbaProject.bin"): Speichern Sie sie ohne Makros als .xlsx',
  ));
