// What every help page has: head, way back, figure, foot.
import type { ComponentChildren, JSX } from 'preact';
import { renderToStaticMarkup } from 'preact-render-to-string';
import type { Topic } from '../core/card';
import { versionText } from '../core/version';
import { digits } from '../plain/digits';
import type { Described } from './described-function';
import { type HelpLanguage, LANGUAGES, Spoken, useLanguage } from './language';
import type { Figure } from './sketches';

/** From a page to the folder of the pages in its language. */
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
  /** Its file in the folder of its language; left out where there is one language. */
  readonly file?: string;
  readonly root: Root;
  readonly topic?: Topic;
  readonly isSearched?: boolean;
  readonly children: ComponentChildren;
}

/** The same page in the other language. */
const OtherLanguage = ({ file, root }: { readonly file: string; readonly root: Root }): JSX.Element => {
  const { lang: spoken, up } = useLanguage();
  return (
    <>
      {LANGUAGES.filter(({ lang }) => lang !== spoken).map(({ lang, folder, words }) => (
        <a lang={lang} hreflang={lang} href={`${root}${up}${folder}${file}`}>
          {words.language}
        </a>
      ))}
    </>
  );
};

const Page = ({ title, file, root, topic, isSearched = false, children }: PageProps): JSX.Element => {
  const { lang, up, english, words: W } = useLanguage();
  const help = `${root}${up}`;
  return (
    <html lang={lang}>
      <head>
        <meta charset="utf-8" />
        <meta name="viewport" content="width=device-width, initial-scale=1" />
        <meta http-equiv="Content-Security-Policy" content={POLICY} />
        <title>{W.titled(title)}</title>
        <link rel="icon" href={`${help}../icons/icon-32.png`} />
        <link rel="stylesheet" href={`${help}help.css`} />
        <script src={`${help}decimal.js`} />
        {isSearched && <script defer src={`${help}find.js`} />}
      </head>
      <body>
        <header>
          <nav aria-label={W.whereYouAre}>
            <a href={`${root}index.html`}>{W.help}</a>
            {topic !== undefined && (
              <>
                {' '}
                › <a href={`${root}${topicFile(topic)}`}>{W.topics[topic]}</a>
              </>
            )}
          </nav>
          <button id="decimal" type="button" hidden>
            {W.inDecimals}
          </button>
          {file !== undefined && <OtherLanguage file={file} root={root} />}
        </header>
        <main>{children}</main>
        <footer>
          <p>
            {W.aid} <a href={`${root}index.html#cautions`}>{W.allCautions}</a>
          </p>
          <p lang={english}>{versionText()}</p>
        </footer>
      </body>
    </html>
  );
};

export function written(language: HelpLanguage, props: PageProps): string {
  const page = (
    <Spoken.Provider value={language}>
      <Page {...props} />
    </Spoken.Provider>
  );
  return `<!doctype html>\n${renderToStaticMarkup(page)}\n`;
}

export function FigureWithLegend({
  figure: { svg, legend, isJoint },
  caption,
}: {
  readonly figure: Figure;
  readonly caption: string;
}): JSX.Element {
  const { english, numbers, beside } = useLanguage();
  return (
    <figure>
      <div class="drawing" lang={isJoint ? undefined : english} dangerouslySetInnerHTML={{ __html: svg }} />
      <table>
        <caption>{caption}</caption>
        <tbody>
          {legend.map(({ letter, name, of, value, unit, isOwn }) => (
            <tr class={isOwn ? 'own' : undefined}>
              <th scope="row">{letter}</th>
              <td>{isJoint && of !== name ? name : <Named name={name} words={isJoint ? beside(name) : undefined} />}</td>
              <td class="number">{numbers(`${digits(Math.round((value ?? 0) * 1000) / 1000)}${unit === '°' ? '°' : ` ${unit}`}`)}</td>
            </tr>
          ))}
        </tbody>
      </table>
    </figure>
  );
}

/** What has no word in the language of the page. */
export function InEnglish({ children }: { readonly children: ComponentChildren }): JSX.Element {
  const { english } = useLanguage();
  return english === undefined ? <>{children}</> : <span lang={english}>{children}</span>;
}

/** An English name with what it means in the language of the page. */
export const Named = ({ name, words }: { readonly name: string; readonly words: string | undefined }): JSX.Element => (
  <>
    <InEnglish>{name}</InEnglish>
    {words !== undefined && <small>: {words}</small>}
  </>
);

export const FunctionLink = ({ id, root }: { readonly id: string; readonly root: Root }): JSX.Element => (
  <a href={`${root}${functionFile(id)}`}>{id}</a>
);

export function FunctionItem({
  listed,
  root,
  ...data
}: { readonly listed: Described; readonly root: Root } & JSX.HTMLAttributes<HTMLLIElement>): JSX.Element {
  const { described } = useLanguage();
  return (
    <li {...data}>
      <FunctionLink id={listed.id} root={root} /> <span>{described(listed).description.replaceAll('\n', ' ')}</span>
    </li>
  );
}

export function Mistakes({ mistakes }: { readonly mistakes: readonly string[] }): JSX.Element {
  const { english } = useLanguage();
  return (
    <ul lang={english}>
      {mistakes.map(text => (
        <li>{text}</li>
      ))}
    </ul>
  );
}
