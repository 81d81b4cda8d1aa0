// Lines below the head of the page that stay until the user has chosen.
import { byId, element } from './dom';

export interface Notice {
  readonly words: string;
  readonly choices: readonly { readonly words: string; act(): void }[];
}

export function showNotices(notices: readonly Notice[]): void {
  byId('notices').replaceChildren(
    ...notices.map(({ words, choices }) =>
      element(
        'p',
        words,
        ...choices.map(choice => {
          const button = element('button', choice.words);
          button.type = 'button';
          button.addEventListener('click', choice.act);
          return button;
        }),
      ),
    ),
  );
}
