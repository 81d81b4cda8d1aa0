import type { JSX } from 'preact';
import { placeName, useGoTo, usePane, useWords } from './pane-context';
import type { JointHere } from './find-joint';

/** What stands where a joint would be. */
export function NoJoint({ found, what }: { readonly found: JointHere; readonly what: 'inSection' | 'everyRule' }): JSX.Element {
  const { port, largeSheet } = usePane();
  const goTo = useGoTo();
  const W = useWords().frame;
  if (port === undefined) return <p>{W.noWorkbook(W[what])}</p>;
  if (found === undefined) return <p class="bw-quiet">{W.reading}</p>;
  if (largeSheet !== undefined && found?.is !== 'refused')
    return (
      <>
        <h2>{W.noJointHere}</h2>
        <p>{W.largeSheet(largeSheet, W[what])}</p>
      </>
    );
  if (found === null || found.is !== 'refused') {
    return (
      <>
        <h2>{W.noJointYet}</h2>
        <p>{W.howToBegin(W[what])}</p>
      </>
    );
  }
  const { place, message } = found;
  return (
    <>
      <h2>{W.unreadable}</h2>
      <p class="bw-fault" lang="en">
        {message}
      </p>
      <p>
        <button type="button" onClick={() => goTo(place)}>
          {W.goTo(placeName(place))}
        </button>
      </p>
    </>
  );
}
