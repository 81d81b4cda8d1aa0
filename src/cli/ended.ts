// How a command ends: what the user can put right is a message alone, anything else is shown as it is; both end with 1.
import { UserFault } from './user-fault';

export type Say = (line: string) => void;
export type Main = (args: readonly string[], print: Say) => Promise<void> | void;

/** Who reads a pipe may stop reading. */
const isClosedPipe = (fault: unknown): boolean => fault instanceof Error && 'code' in fault && fault.code === 'EPIPE';

export async function ended(main: Main, args: readonly string[]): Promise<void> {
  process.stdout.on('error', fault => {
    if (!isClosedPipe(fault)) throw fault;
  });
  try {
    await main(args, line => console.log(line));
  } catch (fault) {
    if (isClosedPipe(fault)) return;
    if (!(fault instanceof UserFault)) throw fault;
    console.error(fault.message);
    process.exitCode = 1;
  }
}
