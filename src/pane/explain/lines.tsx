// What is said of an input, a result or an argument, a line each; what is empty is left out.
import type { JSX } from 'preact';

export function Lines({ lines }: { readonly lines: readonly (readonly [what: string, words: string])[] }): JSX.Element {
  return (
    <dl class="bw-first-row">
      {lines.map(
        ([what, words]) =>
          words !== '' && (
            <div key={what}>
              <dt>{what}</dt>
              <dd>{words}</dd>
            </div>
          ),
      )}
    </dl>
  );
}
