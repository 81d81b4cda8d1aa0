// The selected cell explained: the form of its function filled in, or what it is to a joint.
import type { JSX } from 'preact';
import { useMemo } from 'preact/hooks';
import { acceptedBy } from '../../core/read/accepts';
import { INPUTS } from '../../joint/inputs';
import { isOutput, meaningOf, type Output, unitOf } from '../../joint/outputs';
import { address, cellPosition } from '../../sheet/addresses';
import type { SheetCell, SheetPort } from '../../sheet/port';
import { Findings } from '../findings';
import { FunctionForm } from '../function-form';
import type { LocatedJoint } from '../find-joint';
import { JointHeading, jointName } from '../joint-heading';
import { placeName, useNumbers, usePane, useWords } from '../pane-context';
import { cellIn, type KnownSheets } from '../workbook';
import { named } from '../table/looks';
import { Lines } from './lines';
import { Remedies } from './remedies';
import { standingCall } from './standing-call';
import { TypedHelp, useTyped } from './typed-help';

interface CellHere {
  readonly cell: SheetCell;
  /** The result of a joint that is named above the cell, else left of it. */
  readonly output: Output | undefined;
}

/** The nearest of the cells in which an output is named. */
function outputIn(known: KnownSheets, sheetName: string, places: readonly string[]): Output | undefined {
  for (const at of places) {
    const name = named(cellIn(known, { sheetName, at })?.value);
    if (isOutput(name)) return name;
  }
  return undefined;
}

/** The cell as it was read with what stands round it; undefined until it was. */
function useCell(): CellHere | undefined {
  const { selection, known } = usePane();
  return useMemo(() => {
    const cell = selection === null ? undefined : cellIn(known, selection);
    if (selection === null || cell === undefined) return undefined;
    const { row, column } = cellPosition(selection.at);
    const above = Array.from({ length: row }, (_, r) => address(row - 1 - r, column));
    const left = Array.from({ length: column }, (_, c) => address(row, column - 1 - c));
    const { sheetName } = selection;
    return { cell, output: outputIn(known, sheetName, above) ?? outputIn(known, sheetName, left) };
  }, [selection, known]);
}

function InputExplained({ name, joint }: { readonly name: string; readonly joint: LocatedJoint }): JSX.Element | null {
  const { cell: W, frame } = useWords();
  const { german } = usePane();
  const numbers = useNumbers();
  const input = INPUTS.get(name);
  if (input === undefined) return null;
  return (
    <>
      <h3>{W.input(name, jointName(joint, frame))}</h3>
      <Lines
        lines={[
          [W.meaning, german?.meaningOf(name) ?? input.meaning],
          [W.unit, input.unit],
          [W.limits, numbers.sentence(german?.acceptsInGerman(acceptedBy(input.param)) ?? acceptedBy(input.param))],
          [W.whenBlank, german?.defaultOf(input.defaultWords) ?? input.defaultWords],
        ]}
      />
    </>
  );
}

function OutputExplained({ name, joint }: { readonly name: Output; readonly joint: LocatedJoint }): JSX.Element {
  const { cell: W, frame } = useWords();
  const { german } = usePane();
  return (
    <>
      <h3>{W.output(name, jointName(joint, frame))}</h3>
      <Lines
        lines={[
          [W.meaning, german?.meaningOf(name) ?? meaningOf(name)],
          [W.outputUnit, unitOf(name)],
        ]}
      />
    </>
  );
}

function JointPart({
  joint,
  port,
  name,
  output,
}: {
  readonly joint: LocatedJoint;
  readonly port: SheetPort;
  readonly name: string | undefined;
  readonly output: Output | undefined;
}): JSX.Element {
  return (
    <>
      {name !== undefined && <InputExplained name={name} joint={joint} />}
      {name === undefined && output !== undefined && <OutputExplained name={output} joint={joint} />}
      <JointHeading joint={joint} />
      <Findings joint={joint} states={['fail', 'not checked', 'review']} />
      <Remedies joint={joint} port={port} />
    </>
  );
}

function Explained({ port, here: { cell, output } }: { readonly port: SheetPort; readonly here: CellHere }): JSX.Element {
  const { selection, found, functions, saysCell, signs } = usePane();
  const numbers = useNumbers();
  const { cell: W, check } = useWords();
  if (selection === null) return <p>{W.noCell}</p>;
  const call = cell.formula === undefined ? undefined : standingCall(cell.formula, selection, signs);
  const listed = call && functions.find(({ id }) => id === call.id);
  const cause = listed && (check.errors as Readonly<Record<string, string>>)[String(cell.value)];
  const joint = found?.is === 'joint' ? found.joint : undefined;
  const name = joint && [...joint.cells].find(([, place]) => placeName(place) === placeName(selection))?.[0];
  return (
    <>
      {saysCell !== true && (
        <>
          <h2>{W.heading(placeName(selection))}</h2>
          <p>{cell.value === null ? W.blank : W.holds(numbers.cell(cell.value))}</p>
        </>
      )}
      {cause !== undefined && <p class="bw-fault">{`${String(cell.value)}: ${cause}`}</p>}
      {call !== undefined && listed !== undefined && (
        // Another formula is another form; so are other signs.
        <FunctionForm key={`${placeName(selection)} ${cell.formula} ${signs.decimal}`} listed={listed} standing={call} />
      )}
      {joint === undefined ? (
        listed === undefined && <p>{W.nothing}</p>
      ) : (
        <JointPart joint={joint} port={port} name={name} output={output} />
      )}
    </>
  );
}

function WithCell({ port }: { readonly port: SheetPort }): JSX.Element {
  const here = useCell();
  const typed = useTyped(port);
  const { noCell } = useWords().cell;
  if (typed !== undefined) return <TypedHelp {...typed} />;
  return here === undefined ? <p>{noCell}</p> : <Explained port={port} here={here} />;
}

export function CellView(): JSX.Element {
  const { port } = usePane();
  const { noWorkbook } = useWords().cell;
  return port === undefined ? <p>{noWorkbook}</p> : <WithCell port={port} />;
}
