// The selected cell explained: the form of its function filled in, or what it is to a joint.
import type { JSX } from 'preact';
import { useEffect, useState } from 'preact/hooks';
import { InGerman } from '../in-german';
import { acceptedBy } from '../../core/read/accepts';
import { INPUTS } from '../../joint/inputs';
import { cellPosition } from '../../sheet/addresses';
import type { SheetCell, SheetPort } from '../../sheet/port';
import { shownCell } from '../../help/shown-cell';
import { Findings } from '../findings';
import { FunctionForm, useSigns } from '../function-form';
import type { LocatedJoint } from '../find-joint';
import { JointHeading, jointName } from '../joint-heading';
import { messageOf, placeName, usePane } from '../pane-context';
import { partsBySheet } from '../workbook';
import { Remedies } from './remedies';
import { standingCall } from './standing-call';
import { CELL_WORDS as W } from './words';

/** The cell as it is now; read again when it changes. */
function useCell(port: SheetPort): SheetCell | undefined {
  const { selection, say } = usePane();
  const [read, setRead] = useState<{ readonly name: string; readonly cell: SheetCell }>();
  useEffect(() => {
    if (selection === null) return undefined;
    let isOpen = true;
    const { sheetName, at } = selection;
    const { row, column } = cellPosition(at);
    port.readAreas([{ sheet: sheetName, top: row, left: column, bottom: row, right: column }]).then(
      parts => {
        const cell = partsBySheet(parts).get(sheetName)?.grid[row]?.[column] ?? { value: null };
        if (isOpen) setRead({ name: placeName(selection), cell });
      },
      (thrown: unknown) => say(messageOf(thrown)),
    );
    return () => {
      isOpen = false;
    };
  }, [port, selection]);
  return selection !== null && read?.name === placeName(selection) ? read.cell : undefined;
}

function InputExplained({ name, joint }: { readonly name: string; readonly joint: LocatedJoint }): JSX.Element | null {
  const input = INPUTS.get(name);
  if (input === undefined) return null;
  const lines: readonly (readonly [string, string])[] = [
    [W.meaning, input.meaning],
    [W.unit, input.unit],
    [W.limits, acceptedBy(input.param)],
    [W.whenBlank, input.defaultWords],
  ];
  return (
    <>
      <h3>
        {W.input(name, jointName(joint))} <InGerman name={name} />
      </h3>
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
    </>
  );
}

function JointPart({
  joint,
  port,
  name,
}: {
  readonly joint: LocatedJoint;
  readonly port: SheetPort;
  readonly name: string | undefined;
}): JSX.Element {
  return (
    <>
      {name !== undefined && <InputExplained name={name} joint={joint} />}
      <JointHeading joint={joint} />
      <Findings joint={joint} states={['fail', 'not checked', 'review']} />
      <Remedies joint={joint} port={port} />
    </>
  );
}

function Explained({ port, cell }: { readonly port: SheetPort; readonly cell: SheetCell }): JSX.Element {
  const { selection, found, functions, saysCell } = usePane();
  const signs = useSigns();
  if (selection === null) return <p>{W.noCell}</p>;
  const call = cell.formula === undefined ? undefined : standingCall(cell.formula, selection, signs);
  const listed = call && functions.find(({ id }) => id === call.id);
  const joint = found?.is === 'joint' ? found.joint : undefined;
  const name = joint && [...joint.cells].find(([, place]) => placeName(place) === placeName(selection))?.[0];
  return (
    <>
      {saysCell !== true && (
        <>
          <h2>{W.heading(placeName(selection))}</h2>
          <p>{cell.value === null ? W.blank : W.holds(shownCell(cell.value))}</p>
        </>
      )}
      {call !== undefined && listed !== undefined && (
        // Another formula is another form; so are other signs.
        <FunctionForm key={`${placeName(selection)} ${cell.formula} ${signs.decimal}`} listed={listed} standing={call} />
      )}
      {joint === undefined ? listed === undefined && <p>{W.nothing}</p> : <JointPart joint={joint} port={port} name={name} />}
    </>
  );
}

function WithCell({ port }: { readonly port: SheetPort }): JSX.Element {
  const cell = useCell(port);
  return cell === undefined ? <p>{W.noCell}</p> : <Explained port={port} cell={cell} />;
}

export function CellView(): JSX.Element {
  const { port } = usePane();
  return port === undefined ? <p>{W.noWorkbook}</p> : <WithCell port={port} />;
}
