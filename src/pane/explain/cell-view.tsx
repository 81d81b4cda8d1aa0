import type { JSX } from 'preact';

export function CellView(): JSX.Element {
  return <h2>Cell</h2>;
}
