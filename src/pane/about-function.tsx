// What ABOUT says of a function, an item a line, in the language of the pane as far as there are words.
import type { JSX } from 'preact';
import { useState } from 'preact/hooks';
import type { Card } from '../core/card';
import { call } from '../registry';
import { cardOf, type ListedFunction } from './function-list';
import type { Words } from '../words/english';
import { useNumbers, usePane, useWords } from './pane-context';

type AboutItem = keyof Words['functions']['items'];

const text = ({ id }: Card, item: AboutItem): string => {
  const about = call('ABOUT', [id, item]);
  return about.ok ? String(about.value) : about.message;
};

interface AboutLine {
  readonly words: string;
  readonly isEnglish: boolean;
}

function useLines(listed: ListedFunction): readonly (readonly [AboutItem, AboutLine])[] {
  const { german } = usePane();
  const { items, kinds } = useWords().functions;
  const numbers = useNumbers();
  const card = cardOf(listed);
  const inGerman = (item: AboutItem, english: string): string | undefined => {
    if (item === 'limits') return german && numbers.sentence(german.limitsInGerman(english));
    if (item === 'caution') return german?.cautionOf(card.id);
    return undefined;
  };
  return (Object.keys(items) as AboutItem[])
    .map(item => {
      const english = text(card, item);
      const words = item === 'source' ? english.replace(card.kind, kinds[card.kind]) : inGerman(item, english);
      return [item, { words: words ?? english, isEnglish: words === undefined }] as const;
    })
    .filter(([, { words }]) => words !== '–');
}

function Lines({ listed }: { readonly listed: ListedFunction }): JSX.Element {
  const W = useWords().functions;
  return (
    <dl class="bw-first-row">
      {useLines(listed).map(([item, { words, isEnglish }]) => (
        <div key={item}>
          <dt>{W.items[item]}</dt>
          {isEnglish ? (
            <dd class="bw-lines" lang="en">
              {words}
            </dd>
          ) : (
            <dd class="bw-lines">{words}</dd>
          )}
        </div>
      ))}
    </dl>
  );
}

export function AboutFunction({ listed }: { readonly listed: ListedFunction }): JSX.Element {
  const W = useWords().functions;
  const [isOpen, setOpen] = useState(false);
  return (
    <details class="bw-about" onToggle={event => setOpen(event.currentTarget.open)}>
      <summary>{W.about}</summary>
      {isOpen && <Lines listed={listed} />}
      <p>
        <a href={W.helpFile(listed.id)} target="_blank" rel="noopener">
          {W.helpPage}
        </a>
      </p>
    </details>
  );
}
