// The functions as one bundle, registered as the build does it, under a stand-in of the custom-functions runtime of Excel:
// it knows its own error codes, and of any other it drops the code and the message, as the runtime does.
import { runInThisContext } from 'node:vm';
import { build } from 'esbuild';
import { ASSOCIATED, METADATA } from '../../src/tools/metadata';
import { KNOWN_CODES } from './host-values';

class HostError extends Error {
  constructor(
    readonly code: unknown,
    message?: string,
  ) {
    super(message);
  }
}

/** What stands in the cell afterwards. A foreign code and anything else thrown are faults. */
export type Handed =
  | { readonly is: 'value'; readonly value: unknown }
  | { readonly is: 'error'; readonly code: string; readonly message: string }
  | { readonly is: 'fault'; readonly fault: string };

async function bundled(): Promise<string> {
  const files = [...new Set(ASSOCIATED.map(({ sourceFileName }) => sourceFileName))];
  const lines = ASSOCIATED.map(
    ({ id, functionName, sourceFileName }) =>
      `CustomFunctions.associate(${JSON.stringify(id)}, file${files.indexOf(sourceFileName)}.${functionName});`,
  );
  const contents = [...files.map((file, i) => `import * as file${i} from ${JSON.stringify(file)};`), ...lines].join('\n');
  const { outputFiles } = await build({
    stdin: { contents, resolveDir: process.cwd() },
    bundle: true,
    minify: true,
    format: 'iife',
    platform: 'neutral',
    mainFields: ['module', 'main'],
    write: false,
  });
  return outputFiles[0]?.text ?? '';
}

const wrappers = new Map<string, (...args: unknown[]) => unknown>();
const runtime = { associate: (id: string, wrapper: (...args: unknown[]) => unknown) => wrappers.set(id, wrapper), Error: HostError };
(runInThisContext(`(function (CustomFunctions) { ${await bundled()}\n})`) as (CustomFunctions: unknown) => void)(runtime);

export const REGISTERED: readonly string[] = [...wrappers.keys()];
const PARAMETERS = new Map(METADATA.functions.map(({ id, parameters }) => [id, parameters]));

/** Everything that is left out is null; a parameter for ranges gets a single value as a range of one cell; an invocation object comes last. */
function asSent(id: string, args: readonly unknown[]): unknown[] {
  const sent = (PARAMETERS.get(id) ?? []).map(({ dimensionality }, i) => {
    const arg = args[i] ?? null;
    return dimensionality === 'matrix' && arg !== null && !Array.isArray(arg) ? [[arg]] : arg;
  });
  return [...sent, { functionName: id }];
}

export async function calculate(id: string, args: readonly unknown[]): Promise<Handed> {
  try {
    return { is: 'value', value: await wrappers.get(id)?.(...asSent(id, args)) };
  } catch (thrown) {
    if (!(thrown instanceof HostError)) return { is: 'fault', fault: `threw ${String(thrown)}` };
    const { code, message } = thrown;
    return typeof code === 'string' && KNOWN_CODES.includes(code)
      ? { is: 'error', code, message }
      : { is: 'fault', fault: `code ${String(code)} is foreign; lost: ${message}` };
  }
}
