// What is said of workbooks that could not be opened, and the ways to save or discard them.
import { downloadFile } from '../files/download';
import { ask } from './message-dialog';
import type { Notice } from './notices';
import { discard, forget, keptText, type Aside } from './workbook-store';

const sized = ({ length }: string): string => (length < 1000 ? `${length} characters` : `${Math.round(length / 1000)} thousand characters`);

/** A workbook that this page cannot read is saved as the text that it is. */
function saveText(text: string, name: string): void {
  downloadFile(text, 'application/json', `${name}.json`);
}

async function discardIfAgreed(what: string, act: () => void): Promise<void> {
  if (await ask({ title: 'Discard for good?', lines: [what, 'Nothing brings it back.'], yes: 'Discard it', no: 'Leave it' })) act();
}

export function asideNotice(aside: Aside, index: number, discarded: () => void): Notice {
  const words = `A workbook that could not be opened was put aside (${sized(aside.text)}).`;
  return {
    words,
    choices: [
      { words: 'Save what was put aside', act: () => saveText(aside.text, `put aside ${index + 1}`) },
      {
        words: 'Discard it…',
        act: () =>
          void discardIfAgreed(words, () => {
            discard(aside);
            discarded();
          }),
      },
    ],
  };
}

/** What is in the store stays there until the user has decided. */
export const unopenedNotice = (words: string, discarded: () => void): Notice => ({
  words: `${words} It is left as it is, and what you change here is not kept in this browser.`,
  choices: [
    { words: 'Save it as a file', act: () => saveText(keptText(), 'kept workbook') },
    {
      words: 'Discard it…',
      act: () =>
        void discardIfAgreed(words, () => {
          forget();
          discarded();
        }),
    },
  ],
});
