// What every help page has: head, way back, figure, foot.
import type { ComponentChildren, JSX } from 'preact';
import { renderToStaticMarkup } from 'preact-render-to-string';
import type { Card, Topic } from '../core/card';
import { versionText } from '../core/version';
import { digits } from '../plain/digits';
import { whatOf } from '../plain/forms';
import type { Figure } from './sketches';

/** From a page to the folder of the pages. */
export type Root = '' | '../';

export const slug = (topic: Topic): string =>
  topic
    .toLowerCase()
    .replace(/[^a-z]+/g, '-')
    .replace(/^-|-$/g, '');
export const topicFile = (topic: Topic): string => `topics/${slug(topic)}.html`;
export const functionFile = (id: string): string => `${id}.html`;

// Only files beside this one; figures bring a style with them.
const POLICY =
  "default-src 'none'; script-src 'self'; style-src 'self' 'unsafe-inline'; img-src 'self'; base-uri 'none'; form-action 'none'";

interface PageProps {
  readonly title: string;
  readonly root: Root;
  readonly topic?: Topic;
  readonly isSearched?: boolean;
  readonly children: ComponentChildren;
}

const Page = ({ title, root, topic, isSearched = false, children }: PageProps): JSX.Element => (
  <html lang="en-GB">
    <head>
      <meta charset="utf-8" />
      <meta name="viewport" content="width=device-width, initial-scale=1" />
      <meta http-equiv="Content-Security-Policy" content={POLICY} />
      <title>{`${title} – Bosswright help`}</title>
      <link rel="icon" href={`${root}../icons/icon-32.png`} />
      <link rel="stylesheet" href={`${root}help.css`} />
      <script src={`${root}decimal.js`} />
      {isSearched && <script defer src={`${root}find.js`} />}
    </head>
    <body>
      <header>
        <nav aria-label="Where you are">
          <a href={`${root}index.html`}>Bosswright help</a>
          {topic !== undefined && (
            <>
              {' '}
              › <a href={`${root}${topicFile(topic)}`}>{topic}</a>
            </>
          )}
        </nav>
        <button id="decimal" type="button" hidden>
          Formulas with decimal comma
        </button>
      </header>
      <main>{children}</main>
      <footer>
        <p>
          An aid to sizing, for trained people: make and test a prototype. <a href={`${root}index.html#cautions`}>All cautions</a>
        </p>
        <p>{versionText()}</p>
      </footer>
    </body>
  </html>
);

export const written = (props: PageProps): string => `<!doctype html>\n${renderToStaticMarkup(<Page {...props} />)}\n`;

export const FigureWithLegend = ({
  figure: { svg, legend },
  caption,
}: {
  readonly figure: Figure;
  readonly caption: string;
}): JSX.Element => (
  <figure>
    <div class="drawing" dangerouslySetInnerHTML={{ __html: svg }} />
    <table>
      <caption>{caption}</caption>
      <tbody>
        {legend.map(({ letter, name, value, unit, isOwn }) => (
          <tr class={isOwn ? 'own' : undefined}>
            <th scope="row">{letter}</th>
            <td>{name}</td>
            <td class="number">{`${digits(Math.round((value ?? 0) * 1000) / 1000)}${unit === '°' ? '°' : ` ${unit}`}`}</td>
          </tr>
        ))}
      </tbody>
    </table>
  </figure>
);

export const FunctionLink = ({ id, root }: { readonly id: string; readonly root: Root }): JSX.Element => (
  <a href={`${root}${functionFile(id)}`}>{id}</a>
);

export const FunctionItem = ({
  card: { id },
  root,
  ...data
}: { readonly card: Card; readonly root: Root } & JSX.HTMLAttributes<HTMLLIElement>): JSX.Element => (
  <li {...data}>
    <FunctionLink id={id} root={root} /> <span>{whatOf(id)}</span>
  </li>
);

export const Mistakes = ({ mistakes }: { readonly mistakes: readonly string[] }): JSX.Element => (
  <ul>
    {mistakes.map(text => (
      <li>{text}</li>
    ))}
  </ul>
);
