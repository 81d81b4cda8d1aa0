// Which functions go with a function, and what it does in the joint.
import type { JSX } from 'preact';
import type { Card } from '../core/card';
import { useLanguage } from './language';
import { FunctionLink, InEnglish } from './page';
import { jointNames, jointNamesWith, related, rulesOf } from './related';

function InTheJoint({ card }: { readonly card: Card }): JSX.Element {
  const {
    words: { related: W },
    ruleBeside,
  } = useLanguage();
  const [own, parts] = [jointNames(card), jointNamesWith(card)];
  return (
    <>
      {own.length > 0 && (
        <p>
          {W.worksOut} <InEnglish>{own.join(', ')}</InEnglish>.
        </p>
      )}
      {parts.length > 0 && (
        <p>
          {W.isPartOf} <InEnglish>{parts.join(', ')}</InEnglish>.
        </p>
      )}
      {rulesOf(card).map(({ name, basis, source }) => (
        <p class="quiet">
          {W.rule(ruleBeside(name) ?? name)}{' '}
          <InEnglish>
            {basis} ({source}).
          </InEnglish>
        </p>
      ))}
    </>
  );
}

export function RelatedFunctions({ card }: { readonly card: Card }): JSX.Element {
  const { related: W } = useLanguage().words;
  return (
    <section id="related">
      <h2>{W.heading}</h2>
      <InTheJoint card={card} />
      <dl class="related">
        {related(card).map(({ how, ids }) => (
          <>
            <dt>{W[how]}</dt>
            <dd>
              {ids.map((id, i) => (
                <>
                  {i > 0 && ', '}
                  <FunctionLink id={id} root="" />
                </>
              ))}
            </dd>
          </>
        ))}
      </dl>
    </section>
  );
}
