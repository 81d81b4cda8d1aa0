// What this is, and what nobody should expect of it.
import type { JSX } from 'preact';
import { CAUTIONS } from '../help/cautions';
import { call } from '../registry';
import { usePane } from './pane-context';

const versionText = (): string => {
  const version = call('VERSION', []);
  return version.ok ? String(version.value) : '';
};

export function AboutView(): JSX.Element {
  const { kept, port, benchUrl } = usePane();
  const isOpen = kept?.get('cautions') !== 'closed';
  return (
    <>
      <h2>About</h2>
      <p>
        Cell functions for the screw joints of two-part moulded housings: from screw, wall and board to boss, core pin, head recess, draft
        and screw length, with tolerances, checks and the source of every value.
      </p>
      <p class="bw-quiet">{versionText()}</p>
      <p>{port === undefined ? 'There is no workbook here.' : 'Type =ENCL. in a cell to see every function.'}</p>
      <details class="bw-cautions" open={isOpen} onToggle={event => kept?.set('cautions', event.currentTarget.open ? 'open' : 'closed')}>
        <summary>Before you rely on a number</summary>
        <ul>
          {CAUTIONS.map(([head, text]) => (
            <li key={head}>
              {head !== '' && <b>{head} </b>}
              {text}
            </li>
          ))}
        </ul>
      </details>
      {/* A new window: leaving this page would stop the functions, which run in it. */}
      {benchUrl !== undefined && (
        <p>
          <a href={benchUrl} target="_blank" rel="noopener">
            Try the functions on the bench, outside a spreadsheet program (new window)
          </a>
        </p>
      )}
    </>
  );
}
