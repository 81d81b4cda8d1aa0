// Workbooks store the id of a function and the places of its arguments. What was released stays; arguments are appended, and are optional.
import released from './signatures.json';

/** Id -> arguments in order, `[optional]`, `range…`; `-> range` where the result spills. */
export type Signatures = Readonly<Record<string, string>>;

/** What functions.json says of a function, as far as a workbook depends on it. */
interface Signed {
  readonly id: string;
  readonly parameters: readonly { readonly name: string; readonly optional?: boolean; readonly dimensionality?: string }[];
  readonly result: { readonly dimensionality?: string };
}

const { generated: _, ...signatures } = released;
export const RELEASED: Signatures = signatures;

const SPILLS = ' -> range';
const isMatrix = ({ dimensionality }: { readonly dimensionality?: string }): boolean => dimensionality === 'matrix';

export const signaturesOf = (functions: readonly Signed[]): Signatures =>
  Object.fromEntries(
    functions.map(({ id, parameters, result }) => {
      const args = parameters
        .map(parameter => `${parameter.name}${isMatrix(parameter) ? '…' : ''}`)
        .map((name, i) => (parameters[i]?.optional === true ? `[${name}]` : name));
      return [id, `${args.join(', ')}${isMatrix(result) ? SPILLS : ''}`];
    }),
  );

const bare = (arg: string): string => arg.replace(/[[\]]/g, '');
const isOptional = (arg: string): boolean => arg.startsWith('[');

function parts(signature: string): { readonly args: readonly string[]; readonly spills: boolean } {
  const [args = '', ...rest] = signature.split(SPILLS);
  return { args: args.split(', ').filter(arg => arg !== ''), spills: rest.length > 0 };
}

/** Why workbooks made with the released signatures would not calculate as before. */
export function broken(released: Signatures, now: Signatures): string[] {
  return Object.entries(released).flatMap(([id, before]) => {
    const after = now[id];
    if (after === undefined) return [`${id} is gone; workbooks call it, so it must stay`];
    const [was, is] = [parts(before), parts(after)];
    const faults = was.args.flatMap((arg, i) => {
      const other = is.args[i];
      if (other === undefined) return [`${id} has lost its argument ${bare(arg)}`];
      if (bare(other) !== bare(arg)) return [`${id}: argument ${i + 1} was ${bare(arg)} and is ${bare(other)}; arguments keep their place`];
      return isOptional(arg) && !isOptional(other) ? [`${id}: ${bare(arg)} was optional`] : [];
    });
    const appended = is.args
      .slice(was.args.length)
      .filter(arg => !isOptional(arg))
      .map(arg => `${id}: ${arg} is new, so it must be optional`);
    return [...faults, ...appended, ...(was.spills === is.spills ? [] : [`${id}: its result ${was.spills ? 'spilled' : 'was one value'}`])];
  });
}
