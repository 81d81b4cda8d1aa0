// The rules of a joint, the worst first, each with what would mend it.
import type { JSX } from 'preact';
import { useMemo } from 'preact/hooks';
import type { State } from '../core/check/check';
import { unitOf } from '../joint/outputs';
import { rounded, sentence } from '../joint/words';
import type { Finding } from '../joint/graph';
import type { RuleName } from '../joint/rules';
import { call } from '../registry';
import type { Words } from '../words/english';
import type { LocatedJoint } from './find-joint';
import { inputMeant, inputsMeant, missingWords, type InputMeant } from './input-words';
import { useGoTo, usePane, useWords } from './pane-context';
import { StateWord } from './state-word';

const REMEDY_COLUMN = 6;

/** What CHECK.JOINT says would mend each rule, by the name of the rule. */
function remediesOf({ rows, base }: LocatedJoint): ReadonlyMap<string, string> {
  const table = call('CHECK.JOINT', [rows, base]);
  return new Map(table.ok && Array.isArray(table.value) ? table.value.map(row => [String(row[0]), String(row[REMEDY_COLUMN])]) : []);
}

/** A rule that is met, with the side of the limit on which the value stands. */
function metWords({ rule, value = NaN, bound, limit = NaN }: Finding, W: Words['frame']): string {
  if (bound === undefined) return rule.name;
  const unit = unitOf(rule.value) === '' ? '' : ` ${unitOf(rule.value)}`;
  return `${rule.name}: ${W.met(`${rule.value} ${rounded(value)}${unit}`, W.metSide[bound.side], `${rounded(limit)}${unit}`)}`;
}

/** The rule in German, beside the English that stands in the cells. */
function InGerman({ finding: { rule, state } }: { readonly finding: Finding }): JSX.Element | null {
  const words = usePane().german?.RULES[rule.name as RuleName];
  return words === undefined ? null : <small lang="de">{state === 'pass' || state === 'not checked' ? words.name : words.broken}</small>;
}

/** The way to the input; where it stands nowhere, no way to another. */
function InputLink({ joint, input }: { readonly joint: LocatedJoint; readonly input: InputMeant | undefined }): JSX.Element | null {
  const goTo = useGoTo();
  const W = useWords().frame;
  if (input === undefined) return null;
  const { name, cell } = input;
  return cell === undefined ? (
    <span class="bw-missing">{missingWords(name, joint, W)}</span>
  ) : (
    <button type="button" class="bw-link" onClick={() => goTo(cell)}>
      {W.inCell(name, cell.at)}
    </button>
  );
}

function Rule({
  joint,
  finding,
  remedy = '–',
}: {
  readonly joint: LocatedJoint;
  readonly finding: Finding;
  readonly remedy: string | undefined;
}): JSX.Element {
  const W = useWords().frame;
  const inputs = inputsMeant(remedy, joint);
  return (
    <li>
      <StateWord state={finding.state} />
      <span>{finding.state === 'pass' ? metWords(finding, W) : sentence(finding)}</span>
      <InGerman finding={finding} />
      {remedy !== '–' && (
        <span class="bw-remedy">
          {inputs.length === 0 ? remedy : W.passesWith(remedy)}{' '}
          {inputs.map(input => (
            <InputLink key={input.name} joint={joint} input={input} />
          ))}
        </span>
      )}
    </li>
  );
}

/** Rules that one input keeps from being checked. */
function Unchecked({ joint, findings }: { readonly joint: LocatedJoint; readonly findings: readonly Finding[] }): JSX.Element {
  const message = findings[0]?.refusal?.message ?? '';
  return (
    <li>
      <StateWord state="not checked" />
      <span>{findings.map(({ rule }) => rule.name).join(', ')}</span>
      <span class="bw-fault">{message}</span>
      <InputLink joint={joint} input={inputMeant(message, joint)} />
    </li>
  );
}

function byMessage(findings: readonly Finding[]): Finding[][] {
  const groups = new Map<string, Finding[]>();
  for (const finding of findings)
    groups.set(finding.refusal?.message ?? '', [...(groups.get(finding.refusal?.message ?? '') ?? []), finding]);
  return [...groups.values()];
}

/** @param states those shown, in this order. */
export function Findings({ joint, states }: { readonly joint: LocatedJoint; readonly states: readonly State[] }): JSX.Element | null {
  const remedies = useMemo(() => remediesOf(joint), [joint]);
  const findings = joint.variant.findings();
  if (!findings.some(({ state }) => states.includes(state))) return null;
  return (
    <ul class="bw-findings">
      {states.flatMap(state => {
        const own = findings.filter(finding => finding.state === state);
        if (state === 'not checked')
          return byMessage(own).map(some => <Unchecked key={some[0]?.rule.name} joint={joint} findings={some} />);
        return own.map(finding => (
          <Rule key={finding.rule.name} joint={joint} finding={finding} remedy={remedies.get(finding.rule.name)} />
        ));
      })}
    </ul>
  );
}
