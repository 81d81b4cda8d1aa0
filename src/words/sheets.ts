// What the view of sheets says.
import type { Guide } from '../demo/guides';

/** A guide or a template in a list. */
type ListedGuide = Pick<Guide, 'name' | 'title' | 'sentence'>;

export const SHEETS = {
  heading: 'Sheets',
  noWorkbook: 'There is no workbook here. Open the pane in a workbook to insert sheets.',
  about: (host: string) =>
    `Each comes with the values of an example: type your own over the blue cells. Nothing in ${host} is overwritten; a name that is ` +
    'taken gets a number.',
  insert: 'Insert',
  insertOf: (name: string) => `Insert ${name}`,
  isIn: (name: string) => `${name} is in the workbook`,
  isRenamed: (name: string, taken: string) => `${name} is in the workbook: the name ${taken} was taken`,
  /** What a ready sheet is, of that title. */
  ready: (_name: string, title: string) => title,
  guides: 'Guides',
  guidesWords: 'Invented scenarios, worked through: the first choice fails, another passes, and why.',
  guide: ({ title, sentence }: ListedGuide) => ({ title, sentence }),
  inserted: 'Inserted from here',
  remove: 'Remove',
  removeOf: (name: string) => `Remove ${name}`,
  removeAsked: (name: string) => `Remove the sheet ${name} with everything on it? Formulas elsewhere that read it will show #REF!.`,
  removeYes: 'Remove the sheet',
  removed: (name: string) => `${name} is removed`,
};
