import type { JSX } from 'preact';
import { useEffect, useRef } from 'preact/hooks';
import { type Question, useWords } from './pane-context';

export interface Asking {
  readonly question: Question;
  readonly answer: (yes: boolean) => void;
}

/** The browser's own dialog: it keeps the focus inside and gives it back. */
export function ConfirmDialog({ asking, onDone }: { readonly asking: Asking; readonly onDone: () => void }): JSX.Element {
  const { question, answer } = asking;
  const dialog = useRef<HTMLDialogElement>(null);
  // an answer may bring the next question before the dialog is gone
  useEffect(() => dialog.current?.showModal(), [asking]);
  const onClose = () => {
    answer(dialog.current?.returnValue === 'yes');
    onDone();
  };
  return (
    <dialog ref={dialog} class="bw-ask" onClose={onClose} aria-labelledby="bw-question">
      <form method="dialog">
        <p id="bw-question">{question.words}</p>
        <div class="bw-actions">
          <button value="no">{useWords().frame.cancel}</button>
          <button value="yes" class="bw-strong">
            {question.yes}
          </button>
        </div>
      </form>
    </dialog>
  );
}
