// How a command ends: what the user can put right is a message alone, anything else is shown as it is; both end with 1.
import { whyOf } from './file-fault';
import { UserFault } from './user-fault';

export type Say = (line: string) => void;
export type Main = (args: readonly string[], print: Say) => Promise<void> | void;

/** Who reads a pipe may stop reading. */
const isClosedPipe = (fault: unknown): boolean => fault instanceof Error && 'code' in fault && fault.code === 'EPIPE';

/** What is said of a fault that the user can put right; undefined for any other. */
function saidOf(fault: unknown): string | undefined {
  if (fault instanceof UserFault) return fault.message;
  const why = whyOf(fault);
  if (why === undefined) return undefined;
  return `${fault instanceof Error && 'path' in fault ? String(fault.path) : 'the output'} cannot be written: ${why}`;
}

function tell(fault: unknown): void {
  const said = saidOf(fault);
  if (said === undefined) throw fault;
  console.error(said);
  process.exitCode = 1;
}

export async function ended(main: Main, args: readonly string[]): Promise<void> {
  process.stdout.on('error', fault => {
    if (isClosedPipe(fault)) return;
    tell(fault);
    process.exit();
  });
  try {
    await main(args, line => console.log(line));
  } catch (fault) {
    if (!isClosedPipe(fault)) tell(fault);
  }
}
