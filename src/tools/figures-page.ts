// What is said of the measurements of npm run bench.
interface Target {
  readonly words: string;
  readonly isMet: boolean;
  /** What the limit is, where it is not met. */
  readonly otherwise: string;
}

export interface Measurement {
  readonly what: string;
  readonly measured: string;
  readonly target?: Target;
  readonly how: string;
}

/** Figures by part; `on` is date, machine and Node. */
export type Results = Readonly<Record<string, { readonly on: string; readonly figures: readonly Measurement[] }>>;

/** The parts of the run, in the words of the page. */
const PARTS = {
  core: 'the core',
  drawing: 'the figures',
  engines: 'LibreOffice and Gnumeric',
  hosts: 'the custom-functions runtime and the bench',
  sizes: 'sizes',
  handOver: 'the hand-over of 2,000 variants',
};
export type MeasuredPart = keyof typeof PARTS;

/** As Markdown. */
export function figuresPage(results: Results): string {
  const parts = Object.values(results);
  const days = [...new Set(parts.map(({ on }) => on))];
  const missing = Object.entries(PARTS)
    .filter(([part]) => results[part] === undefined)
    .map(([, words]) => words);
  const judged = ({ words, isMet, otherwise }: Target): string => `${words}: ${isMet ? 'met' : `not met, ${otherwise}`}`;
  return [
    `Measured on ${days.join('; ')}. Times of the core and of the spreadsheet programs are processor ` +
      `time.${missing.length === 0 ? '' : ` Not measured yet: ${missing.join(', ')}.`}`,
    '',
    '| what | target | measured | how |',
    '|---|---|---|---|',
    ...parts
      .flatMap(({ figures }) => figures)
      .map(({ what, target, measured, how }) => `| ${[what, target === undefined ? '–' : judged(target), measured, how].join(' | ')} |`),
  ].join('\n');
}
