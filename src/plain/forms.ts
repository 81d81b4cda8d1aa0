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
