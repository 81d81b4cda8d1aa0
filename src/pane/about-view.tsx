// What this is, and what nobody should expect of it.
import type { JSX } from 'preact';
import { call } from '../registry';
import { useLater } from './lazy-view';
import { usePane } from './pane-context';

const versionText = (): string => {
  const version = call('VERSION', []);
  return version.ok ? String(version.value) : '';
};

export function AboutView(): JSX.Element {
  const { keptView, port, benchUrl } = usePane();
  const W = useLater().about;
  const isOpen = keptView?.get('cautions') !== 'closed';
  return (
    <>
      <h2>{W.heading}</h2>
      <p>{W.what}</p>
      <p class="bw-quiet">{versionText()}</p>
      <p>{port === undefined ? W.noWorkbook : W.seeAll}</p>
      <details
        class="bw-cautions"
        open={isOpen}
        onToggle={event => keptView?.set('cautions', event.currentTarget.open ? 'open' : 'closed')}
      >
        <summary>{W.before}</summary>
        <ul>
          {W.cautions.map(([head, text]) => (
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
            {W.bench}
          </a>
        </p>
      )}
    </>
  );
}
