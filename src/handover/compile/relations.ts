// Relations between arguments, as their card says them, as conditions of a spreadsheet.
import { type Blank, type Card, type Comparison, ITSELF, type Param, type Relation, type Term } from '../../core/card';
import { partOf } from '../../core/read/relation';
import type { Tree } from '../../plain/tree';
import { atom, type Ref, spreadsheetRef } from '../../plain/spreadsheet';

/** A formula is called by the name that it has in its card. */
function tree(term: Term, itself: string): Tree {
  if (typeof term === 'number') return term;
  if (typeof term === 'string') return atPath(term, itself);
  if ('formula' in term) return ['call', Object.keys(term.formula)[0] as string, ...term.of.map(path => atPath(path, itself))];
  const [sign, left, right] = term;
  return [sign, tree(left, itself), tree(right, itself)];
}

function atPath(path: string, itself: string): Tree {
  const [name, part] = partOf(path);
  const owner = name === ITSELF ? itself : name;
  return part === undefined ? owner : ['of', owner, part];
}

const textOf = (ref: Ref): string => (ref as { readonly text: string }).text;

/** What the arguments of a call must hold, on their references. */
export function relations({ params }: Card, refs: readonly Ref[]): string[] {
  const names = params.map(({ name }) => name);
  const written = (result: Tree): string => textOf(spreadsheetRef({ params: names, result }, refs));
  const compared = (itself: string, [sign, left, right]: Comparison): string => written([sign, tree(left, itself), tree(right, itself)]);
  return params.flatMap(({ name, kind, relation }): string[] => [
    ...(kind.is === 'whole' ? [`INT(${written(name)})=${written(name)}`] : []),
    ...(relation === undefined
      ? []
      : 'upperOf' in relation
        ? [upperLimit(written(relation.upperOf), written(name))]
        : relation.holds.map(comparison => compared(name, comparison))),
  ]);
}

/** What a number in this cell must hold beside the other inputs that its relation reads. */
export function relatedTo({ name, relation }: Param, cell: string, ref: (owner: string) => Ref): string[] {
  if (relation === undefined || 'upperOf' in relation) return [];
  const owners = [...new Set(pathsIn(relation).map(path => partOf(path)[0]))].filter(owner => owner !== ITSELF);
  const refs = [atom(cell), ...owners.map(ref)];
  return relation.holds.map(([sign, left, right]) =>
    textOf(spreadsheetRef({ params: [name, ...owners], result: [sign, tree(left, name), tree(right, name)] }, refs)),
  );
}

/** One side at least, and the upper one above. */
const upperLimit = (lower: string, upper: string): string =>
  `IF(AND(ISNUMBER(${lower}),ISNUMBER(${upper})),${upper}>${lower},OR(ISNUMBER(${lower}),ISNUMBER(${upper})))`;

/** Parts of records that relations and defaults read. */
export const partsRelated = ({ params }: Card): string[] =>
  params.flatMap(({ relation, blank }: Param) => [...pathsIn(relation), ...givenBy(blank)]).flatMap(path => partOf(path)[1] ?? []);

const givenBy = (blank: Blank): readonly string[] =>
  typeof blank === 'object' && 'default' in blank && blank.given !== undefined ? [blank.given] : [];

const pathsIn = (relation: Relation | undefined): string[] =>
  relation === undefined || 'upperOf' in relation ? [] : relation.holds.flatMap(([, left, right]) => [...pathsOf(left), ...pathsOf(right)]);

function pathsOf(term: Term): readonly string[] {
  if (typeof term === 'number') return [];
  if (typeof term === 'string') return [term];
  return 'formula' in term ? term.of : [...pathsOf(term[1]), ...pathsOf(term[2])];
}
