// The plain forms as the build step wrote them.
import forms from './forms.json';

/** A number, a name, or [operator, …operands]. */
export type Tree = number | string | readonly unknown[];

export interface Form {
  readonly params: readonly string[];
  readonly steps?: readonly (readonly [name: string, tree: Tree])[];
  readonly result: Tree;
}

const FORMS = forms as unknown as {
  readonly formulas: Readonly<Record<string, Form>>;
  readonly cards: Readonly<Record<string, string>>;
  readonly nodes: Readonly<Record<string, string>>;
  readonly defaults: Readonly<Record<string, string>>;
  readonly what: Readonly<Record<string, string>>;
};

export const formNamed = (name: string): Form | undefined => FORMS.formulas[name];
export const formOfCard = (id: string): Form | undefined => formNamed(FORMS.cards[id] ?? '');
export const formOfNode = (name: string): Form | undefined => formNamed(FORMS.nodes[name] ?? '');
export const formOfDefault = (name: string): Form | undefined => formNamed(FORMS.defaults[name] ?? '');
/** What a function gives, in one sentence. */
export const whatOf = (id: string): string => FORMS.what[id] ?? '';

/** Functions whose formula this one's calls, itself or through others. */
export function calledBy(id: string): string[] {
  const names = new Set<string>();
  const visit = (tree: unknown): void => {
    if (Array.isArray(tree)) {
      if (tree[0] === 'call') follow(String(tree[1]));
      tree.forEach(visit);
    } else if (typeof tree === 'object' && tree !== null) Object.values(tree).forEach(visit);
  };
  const follow = (name: string): void => {
    if (names.has(name)) return;
    names.add(name);
    visit([formNamed(name)?.steps ?? [], formNamed(name)?.result]);
  };
  visit([formOfCard(id)?.steps ?? [], formOfCard(id)?.result]);
  return Object.keys(FORMS.cards).filter(other => names.has(FORMS.cards[other] ?? ''));
}
