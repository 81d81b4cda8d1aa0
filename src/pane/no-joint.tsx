import type { JSX } from 'preact';
import { placeName, useGoTo, usePane } from './pane-context';
import type { JointHere } from './find-joint';

/** What stands where a joint would be. */
export function NoJoint({ found, what }: { readonly found: JointHere; readonly what: string }): JSX.Element {
  const { port, largeSheet } = usePane();
  const goTo = useGoTo();
  if (port === undefined) return <p>There is no workbook here. Open the pane in a workbook to see {what}.</p>;
  if (found === undefined) return <p class="bw-quiet">Reading the workbook …</p>;
  if (largeSheet !== undefined && found?.is !== 'refused')
    return (
      <>
        <h2>No joint round the selected cell</h2>
        <p>
          This sheet fills {largeSheet.toLocaleString('en-GB')} cells, and only those round the selected one are read. Select a row of a
          joint to see {what}, or read the whole workbook in the view Check.
        </p>
      </>
    );
  if (found === null || found.is !== 'refused') {
    return (
      <>
        <h2>No joint in this workbook yet</h2>
        <p>
          Insert the sheet Joint or Variants from the view Sheets, or write input names such as screw, wall and boss OD with their values
          beside or below them. Then select a row to see {what}.
        </p>
      </>
    );
  }
  const { place, message } = found;
  return (
    <>
      <h2>This joint cannot be read</h2>
      <p class="bw-fault">{message}</p>
      <p>
        <button type="button" onClick={() => goTo(place)}>
          Go to {placeName(place)}
        </button>
      </p>
    </>
  );
}
