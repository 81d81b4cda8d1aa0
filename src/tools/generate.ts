// npm run generate: writes every file that follows from others.
import { writeFileSync } from 'node:fs';
import { readForms, writeForms } from '../plain/read';

export async function main(_: readonly string[], print: (line: string) => void): Promise<void> {
  const forms = readForms();
  writeForms(forms);
  print(`src/plain/forms.json: ${Object.keys(forms.formulas).length} formulas; ${Object.keys(forms.without).length} functions without one`);
  // what follows reads the forms when it is loaded
  const { GENERATED } = await import('./generated');
  for (const { file, path, is, from } of GENERATED) {
    const text = from(is);
    if (text !== is) writeFileSync(path, text);
    print(`${file}: ${text === is ? 'as it was' : 'written anew'}`);
  }
}
