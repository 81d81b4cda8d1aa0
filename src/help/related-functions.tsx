// Which functions go with a function, and what it does in the joint.
import type { JSX } from 'preact';
import type { Card } from '../core/card';
import { FunctionLink } from './page';
import { jointNames, jointNamesWith, related, rulesOf } from './related';

function InTheJoint({ card }: { readonly card: Card }): JSX.Element {
  const [own, parts] = [jointNames(card), jointNamesWith(card)];
  return (
    <>
      {own.length > 0 && <p>In the joint it works out {own.join(', ')}.</p>}
      {parts.length > 0 && <p>In the joint it is part of {parts.join(', ')}.</p>}
      {rulesOf(card).map(({ name, basis, source }) => (
        <p class="quiet">
          Rule “{name}”: {basis} ({source}).
        </p>
      ))}
    </>
  );
}

export const RelatedFunctions = ({ card }: { readonly card: Card }): JSX.Element => (
  <section id="related">
    <h2>Related</h2>
    <InTheJoint card={card} />
    <dl class="related">
      {related(card).map(({ words, ids }) => (
        <>
          <dt>{words}</dt>
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
