// The plain forms as the build step wrote them.
import forms from './forms.json';
import { type Form, visit } from './tree';

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

/** The form of a formula that another one calls. */
export function formCalled(name: string): Form {
  const form = formNamed(name);
  if (form === undefined) throw new TypeError(`no plain form of ${name}`);
  return form;
}

/** Functions whose formula this one's calls, itself or through others. */
export const calledBy = (id: string): string[] => calledIn(formOfCard(id));

/** Functions whose formula this form calls, itself or through others. */
export function calledIn(calling: Form | undefined): string[] {
  const names = new Set<string>();
  const follow = (form: Form | undefined): void =>
    form &&
    visit(form, {
      call: name => {
        if (names.has(name)) return;
        names.add(name);
        follow(formNamed(name));
      },
    });
  follow(calling);
  return Object.keys(FORMS.cards).filter(other => names.has(FORMS.cards[other] ?? ''));
}
