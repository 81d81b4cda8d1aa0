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
import { useGoTo, useNumbers, usePane, useWords } from './pane-context';
import { StateWord } from './state-word';

const REMEDY_COLUMN = 6;

/** What CHECK.JOINT says would mend each rule, by the name of the rule. */
function remediesOf({ rows, base }: LocatedJoint): ReadonlyMap<string, string> {
  const table = call('CHECK.JOINT', [rows, base]);
  return new Map(table.ok && Array.isArray(table.value) ? table.value.map(row => [String(row[0]), String(row[REMEDY_COLUMN])]) : []);
}

/** A rule that is met, with the side of the limit on which the value stands. */
function metWords({ rule, value = NaN, bound, limit = NaN }: Finding, W: Words['frame']): string {
  if (bound === undefined) return '';
  const unit = unitOf(rule.value) === '' ? '' : ` ${unitOf(rule.value)}`;
  return `: ${W.met(`${rule.value} ${rounded(value)}${unit}`, W.metSide[bound.side], `${rounded(limit)}${unit}`)}`;
}

/** In German, beside the English that stands in the cells. */
export function ReasonInGerman({ finding }: { readonly finding: Finding }): JSX.Element | null {
  const { german } = usePane();
  const numbers = useNumbers();
  return german === undefined ? null : <small lang="de"> {numbers.sentence(german.reasonInGerman(finding))}</small>;
}

/** A rule by its name. */
export function RuleNamed({ name }: { readonly name: string }): JSX.Element {
  const words = usePane().german?.RULES[name as RuleName];
  return (
    <>
      <span lang="en">{name}</span>
      {words !== undefined && <small lang="de"> {words.name}</small>}
    </>
  );
}

/** A remedy is made of changes, which are said alike in every language, and few words between them. */
const remedySaid = (remedy: string, { remedyWords }: Words['frame']): string =>
  Object.entries(remedyWords).reduce((text, [english, word]) => text.replaceAll(english, word), remedy);

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
  const numbers = useNumbers();
  const inputs = inputsMeant(remedy, joint);
  return (
    <li>
      <StateWord state={finding.state} />
      {finding.state === 'pass' ? (
        <span>
          <RuleNamed name={finding.rule.name} />
          {numbers.sentence(metWords(finding, W))}
        </span>
      ) : (
        <span>
          <span lang="en">{sentence(finding)}</span>
          <ReasonInGerman finding={finding} />
        </span>
      )}
      {remedy !== '–' && (
        <span class="bw-remedy">
          {inputs.length === 0 ? <span lang="en">{remedy}</span> : numbers.sentence(W.passesWith(remedySaid(remedy, W)))}{' '}
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
      <span>
        {findings.map(({ rule: { name } }, i) => (
          <span key={name}>
            {i > 0 && ', '}
            <RuleNamed name={name} />
          </span>
        ))}
      </span>
      <span class="bw-fault" lang="en">
        {message}
      </span>
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
