// Which joint is shown, its state, and the way to its neighbours.
import { stateOf } from '../joint/verdict';
import type { JSX } from 'preact';
import { address, cellPosition } from '../sheet/addresses';
import type { Selection } from '../sheet/port';
import type { Words } from '../words/english';
import type { LocatedJoint } from './find-joint';
import { placeName, useGoTo, useWords } from './pane-context';
import { StateWord } from './state-word';

export function jointName({ label, number, of, place }: LocatedJoint, W: Words['frame']): string {
  if (label !== '') return label;
  if (of > 1) return W.variant(number);
  return place === undefined ? W.joint : W.jointOn(place.sheetName);
}

function Step({
  joint: { place },
  by,
  name,
  isThere,
}: {
  readonly joint: LocatedJoint;
  readonly by: number;
  readonly name: string;
  readonly isThere: boolean;
}): JSX.Element {
  const goTo = useGoTo();
  const step = ({ sheetName, at }: Selection) => {
    const { row, column } = cellPosition(at);
    goTo({ sheetName, at: address(row + by, column) });
  };
  return (
    <button type="button" onClick={() => place !== undefined && step(place)} disabled={!isThere} aria-label={name}>
      {by < 0 ? '↑' : '↓'}
    </button>
  );
}

export function JointHeading({ joint }: { readonly joint: LocatedJoint }): JSX.Element {
  const { number, of, place, variant } = joint;
  const W = useWords().frame;
  return (
    <div class="bw-joint">
      <div>
        <h2>{jointName(joint, W)}</h2>
        <p class="bw-quiet">
          {place !== undefined && placeName(place)}
          {of > 1 && `, ${W.numberOf(number, of)}`} <StateWord state={stateOf(variant)} />
        </p>
      </div>
      {of > 1 && place !== undefined && (
        <div class="bw-steps">
          <Step joint={joint} by={-1} name={W.variantBefore} isThere={number > 1} />
          <Step joint={joint} by={1} name={W.nextVariant} isThere={number < of} />
        </div>
      )}
    </div>
  );
}
