// What an input or output of a joint means, beside its English name, where the host is German.
import type { JSX } from 'preact';
import { usePane } from './pane-context';

export function InGerman({ name }: { readonly name: string }): JSX.Element | null {
  const words = usePane().german?.meaningOf(name);
  return words === undefined ? null : <small lang="de"> {words}</small>;
}
