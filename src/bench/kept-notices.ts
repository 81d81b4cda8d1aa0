// What is said of workbooks that could not be opened, and the ways to save or discard them.
import { downloadFile } from '../files/download';
import type { Words } from '../words/english';
import { ask } from './message-dialog';
import type { Notice } from './notices';
import { discard, forget, keptText, type Aside } from './workbook-store';

/** A workbook that this page cannot read is saved as the text that it is. */
function saveText(text: string, name: string): void {
  downloadFile(text, 'application/json', `${name}.json`);
}

async function discardIfAgreed(what: string, W: Words['bench'], act: () => void): Promise<void> {
  if (await ask({ title: W.discardForGood, lines: [what, W.noWayBack], yes: W.discardYes, no: W.discardNo })) act();
}

export function asideNotice(aside: Aside, index: number, W: Words['bench'], discarded: () => void): Notice {
  const words = W.putAside(aside.text.length);
  return {
    words,
    choices: [
      { words: W.saveAside, act: () => saveText(aside.text, W.asideName(index + 1)) },
      {
        words: W.discardIt,
        act: () =>
          void discardIfAgreed(words, W, () => {
            discard(aside);
            discarded();
          }),
      },
    ],
  };
}

/** What is in the store stays there until the user has decided. */
export const unopenedNotice = (words: string, W: Words['bench'], discarded: () => void): Notice => ({
  words: W.leftAsIs(words),
  choices: [
    { words: W.saveAsFile, act: () => saveText(keptText(), W.keptName) },
    {
      words: W.discardIt,
      act: () =>
        void discardIfAgreed(words, W, () => {
          forget();
          discarded();
        }),
    },
  ],
});
