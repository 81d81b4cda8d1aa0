// A state as shape and word, as on the figure: square fail, triangle review, circle pass, broken square not checked.
import type { JSX } from 'preact';
import type { State } from '../core/check/check';
import { usePane } from './pane-context';

const SHAPES: Readonly<Record<State, JSX.Element>> = {
  fail: <rect x="2" y="2" width="12" height="12" />,
  review: <path d="M8 1.5 15 14H1Z" />,
  pass: <circle cx="8" cy="8" r="5.5" />,
  'not checked': <rect x="2" y="2" width="12" height="12" />,
};

export function StateWord({ state }: { readonly state: State }): JSX.Element {
  const { german } = usePane();
  return (
    <span class={`bw-state bw-is-${state.replace(' ', '-')}`}>
      <svg viewBox="0 0 16 16" width="14" height="14" aria-hidden="true">
        {SHAPES[state]}
      </svg>
      <span lang="en">{state}</span>
      {german && <small lang="de"> {german.STATES[state]}</small>}
    </span>
  );
}
