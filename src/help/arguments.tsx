// What each argument of a function takes, and the symbols of its formula.
import type { JSX } from 'preact';
import { nameOf } from '../about/about';
import { type Blank, type Card, forgotten, type Param } from '../core/card';
import { accepts } from '../core/read/accepts';
import { limitWords } from '../core/read/limits';
import { relationWords } from '../core/read/relation';
import { ownExample } from '../core/screw/own';
import type { Described } from './described-function';
import { Symbol } from './formula';
import { type HelpLanguage, useLanguage } from './language';
import type { HelpWords } from './words/english';

/** What an argument takes beside the quantity that its text names. */
function alsoTakes(param: Param, { words: W, accepted }: HelpLanguage): string {
  const { kind } = param;
  switch (kind.is) {
    case 'quantity':
    case 'cone':
    case 'deviation':
      return kind.from === undefined ? '' : ` ${W.also} ${accepted(`${kind.from.words}${relationWords(param)}`)}.`;
    case 'limit':
      return ` ${W.none}`;
    case 'group':
      return ` ${W.also} ${accepted(kind.ownTable)}.`;
    case 'choice':
    case 'grade':
      return ` ${W.oneOf} ${accepted(accepts(kind))}.`;
    case 'whole':
    case 'size with limits':
    case 'screw size':
    case 'screw':
    case 'nut':
    case 'head':
    case 'function name':
    case 'joint input':
    case 'joint output':
    case 'material':
    case 'list':
    case 'names':
    case 'values':
    case 'block':
    case 'anything':
      return '';
    default:
      return forgotten(kind);
  }
}

function blankIn(blank: Blank, { blank: W }: HelpWords): string {
  if (typeof blank === 'string') return W[blank];
  if ('default' in blank) return W.by(String(blank.default));
  return blank.take === undefined ? W.as(blank.sameAs) : W.from(blank.sameAs);
}

function Argument({ param, text }: { readonly param: Param; readonly text: string }): JSX.Element {
  const language = useLanguage();
  const { words: W, accepted, numbers } = language;
  const { kind, limits, blank, name } = param;
  const bounds = [accepted(limitWords(limits, kind.unit)), blankIn(blank, W)].filter(words => words !== '').join('; ');
  return (
    <>
      <dt>
        {param.symbol !== undefined && <Symbol text={nameOf(param)} />} <code>{name}</code> {kind.unit !== '' && <small>{kind.unit}</small>}
      </dt>
      <dd>
        {text}. <span class="quiet">{numbers(`${bounds[0]?.toUpperCase()}${bounds.slice(1)}.${alsoTakes(param, language)}`)}</span>
      </dd>
    </>
  );
}

export function Arguments({ card, listed }: { readonly card: Card; readonly listed: Described }): JSX.Element {
  const { words: W } = useLanguage();
  return (
    <section id="arguments">
      <h2>{W.arguments}</h2>
      {card.params.length === 0 ? (
        <p>{W.noArgument}</p>
      ) : (
        <dl class="arguments">
          {card.params.map((param, i) => (
            <Argument param={param} text={listed.parameters[i]?.description ?? ''} />
          ))}
        </dl>
      )}
      {card.params.some(({ kind }) => kind.is === 'screw') && (
        <>
          <p class="quiet">
            {W.screw.sizes} <Symbol text="d" /> {W.screw.d}, <Symbol text="d1" /> {W.screw.d1}, <Symbol text="d2" /> {W.screw.d2},{' '}
            <Symbol text="P" /> {W.screw.P}.
          </p>
          <p class="quiet">
            {W.screw.own} <code>"{ownExample()}"</code>. {W.screw.ownRest}
          </p>
        </>
      )}
      {card.params.some(({ kind }) => kind.is === 'nut') && (
        <p class="quiet">
          {W.nut.size} <Symbol text="s" /> {W.nut.s}.
        </p>
      )}
    </section>
  );
}
