// The joint of the selected row in section, to scale, with what is wrong with it; the links of the selected stack; or the selected study.
import type { JSX } from 'preact';
import { useMemo, useState } from 'preact/hooks';
import { stackChartSvg, variantChartSvg, variantRow } from '../figure/charts';
import { section } from '../figure/section';
import type { StudyFigure } from '../figure/study-figure';
import type { Selection } from '../sheet/port';
import { Drawing, LARGE_PX, useWidth } from './drawing';
import type { LocatedJoint } from './find-joint';
import { Findings } from './findings';
import type { Stack } from './find-stack';
import type { Study } from './find-study';
import { JointHeading, jointName } from './joint-heading';
import { NoJoint } from './no-joint';
import { pictureOf } from './picture';
import { useFigureSpeech } from './figure-speech';
import { Legend } from './legend';
import { placeName, useNumbers, usePane, useWords } from './pane-context';
import { Save, SaveJoint } from './save';

/** Narrower, and the drawing carries letters that the table below spells out. */
const NAMES_FROM_PX = 660;

/** What is drawn, as a picture over the cells from the selected one on. */
function PutIntoSheet({ svg, words }: { readonly svg: () => string; readonly words: string }): JSX.Element | null {
  const { port, say, work, selection } = usePane();
  const { figure: W, frame } = useWords();
  if (port?.placePicture === undefined) return null;
  const { placePicture } = port;
  const put = ({ sheetName, at }: Selection) =>
    work(W.put, async () => {
      await placePicture(sheetName, await pictureOf(svg(), at, words, frame));
      say(W.isPut(sheetName, at));
    });
  return (
    <button type="button" disabled={selection === null} onClick={() => selection !== null && void put(selection)}>
      {W.put}
    </button>
  );
}

/** A choice that is as it was left until it is made anew. */
function useKeptChoice(name: string): readonly [isOn: boolean, choose: (on: boolean) => void] {
  const { keptView } = usePane();
  const [chosen, setChosen] = useState<boolean>();
  return [
    chosen ?? keptView?.get(name) === 'on',
    on => {
      setChosen(on);
      keptView?.set(name, on ? 'on' : 'off');
    },
  ];
}

function Figure({ joint }: { readonly joint: LocatedJoint }): JSX.Element {
  const { figure: W, frame } = useWords();
  const speech = useFigureSpeech();
  const measured = useWidth();
  const { widthPx: width } = measured;
  const [inch, setInch] = useKeptChoice('inch');
  const [hasNames, setHasNames] = useKeptChoice('names');
  const letters = !hasNames && width < NAMES_FROM_PX;
  const { svg, legend, widthPx } = useMemo(
    () => section(joint.variant, { inch, letters, widthPx: width, speech }),
    [joint, inch, letters, width, speech],
  );
  const large = () => section(joint.variant, { inch, widthPx: LARGE_PX, speech }).svg;
  const words = W.section(jointName(joint, frame));
  return (
    <>
      <Drawing measured={measured} svg={svg} keepsSize={hasNames || (letters && widthPx > width)} large={large} words={words}>
        <label>
          <input type="checkbox" checked={inch} onChange={event => setInch(event.currentTarget.checked)} /> {W.inches}
        </label>
        {width < NAMES_FROM_PX && (
          <label>
            <input type="checkbox" checked={hasNames} onChange={event => setHasNames(event.currentTarget.checked)} /> {W.onDrawing}
          </label>
        )}
        <PutIntoSheet svg={large} words={words} />
      </Drawing>
      <SaveJoint joint={joint} />
      <Findings joint={joint} states={['fail', 'not checked', 'review']} />
      {letters && <Legend legend={legend} inch={inch} />}
    </>
  );
}

/** Every variant that stands with this one, by its engagement. */
function Chart({ joint, words }: { readonly joint: LocatedJoint; readonly words: string }): JSX.Element {
  const { frame } = useWords();
  const speech = useFigureSpeech();
  const measured = useWidth();
  const { widthPx: width } = measured;
  const chart = (widthPx: number) =>
    variantChartSvg(
      joint.together().map(one => variantRow(jointName(one, frame), one.variant)),
      { widthPx, speech },
    );
  const svg = useMemo(() => chart(width), [joint, width, speech]);
  return <Drawing measured={measured} svg={svg} large={() => chart(LARGE_PX)} words={words} />;
}

function Variants({ joint }: { readonly joint: LocatedJoint }): JSX.Element {
  const [isOpen, setIsOpen] = useState(false);
  const { largeSheet } = usePane();
  const W = useWords().figure;
  const words = largeSheet === undefined ? W.allVariants(joint.of) : W.variantsRead(joint.of);
  return (
    <details class="bw-part" onToggle={event => setIsOpen(event.currentTarget.open)}>
      <summary>{words}</summary>
      {isOpen && <Chart joint={joint} words={words} />}
    </details>
  );
}

const STACK_TOTALS: readonly (readonly [name: 'nominal' | 'worst' | 'rootSumSquare', total: keyof Stack['totals'], sign: string])[] = [
  ['nominal', 'nominalMm', ''],
  ['worst', 'worstMm', '± '],
  ['rootSumSquare', 'rootSumSquareMm', '± '],
];

function StackFigure({ stack }: { readonly stack: Stack }): JSX.Element {
  const { place: at, shares, totals, refusal } = stack;
  const W = useWords().figure;
  const numbers = useNumbers();
  const speech = useFigureSpeech();
  const measured = useWidth();
  const { widthPx } = measured;
  const svg = useMemo(() => (refusal === undefined ? stackChartSvg(shares, { widthPx, speech }) : ''), [stack, widthPx, speech]);
  const large = () => stackChartSvg(shares, { widthPx: LARGE_PX, speech });
  const words = W.shares(placeName(at));
  return (
    <>
      <div class="bw-joint">
        <div>
          <h2>{W.stack}</h2>
          <p class="bw-quiet">
            {placeName(at)}, {W.links(shares.length)}
          </p>
        </div>
      </div>
      <Drawing measured={measured} svg={svg} large={large} words={words}>
        <PutIntoSheet svg={large} words={words} />
      </Drawing>
      {refusal === undefined && <Save label={words} svg={large} />}
      {refusal !== undefined && (
        <p class="bw-fault" lang="en">
          {refusal}
        </p>
      )}
      <table class="bw-legend bw-totals">
        <caption class="bw-unseen">{W.totals}</caption>
        <tbody>
          {STACK_TOTALS.flatMap(([name, total, sign]) =>
            totals[total] === undefined
              ? []
              : [
                  <tr key={name}>
                    <th scope="row">{W[name]}</th>
                    <td class="bw-number">
                      {sign}
                      {numbers.length(totals[total], false)}
                    </td>
                  </tr>,
                ],
          )}
        </tbody>
      </table>
      <p class="bw-quiet">{W.ofVariance}</p>
    </>
  );
}

function StudyDrawn({ figure, place: at }: { readonly figure: StudyFigure; readonly place: Selection }): JSX.Element {
  const speech = useFigureSpeech();
  const measured = useWidth();
  const { widthPx } = measured;
  const svg = useMemo(() => figure.svg({ widthPx, speech }), [figure, widthPx, speech]);
  const large = () => figure.svg({ widthPx: LARGE_PX, speech });
  const words = useWords().figure.studyOf(figure.words(speech), placeName(at));
  return (
    <>
      <Drawing measured={measured} svg={svg} large={large} words={words}>
        <PutIntoSheet svg={large} words={words} />
      </Drawing>
      <Save label={words} svg={large} />
    </>
  );
}

function StudySection({ study: { place, figure } }: { readonly study: Study }): JSX.Element {
  const W = useWords().figure;
  const speech = useFigureSpeech();
  return (
    <section aria-label={W.study}>
      <div class="bw-joint">
        <div>
          <h2>{typeof figure === 'string' ? W.study : figure.words(speech)}</h2>
          <p class="bw-quiet">{placeName(place)}</p>
        </div>
      </div>
      {typeof figure === 'string' ? (
        <p class="bw-fault" lang="en">
          {figure}
        </p>
      ) : (
        <StudyDrawn figure={figure} place={place} />
      )}
    </section>
  );
}

export function FigureView(): JSX.Element {
  const { found, stack, study, isOfStudy } = usePane();
  if (stack !== undefined) return <StackFigure stack={stack} />;
  if (study !== undefined && isOfStudy) return <StudySection study={study} />;
  if (found?.is !== 'joint') return <NoJoint found={found} what="inSection" />;
  return (
    <>
      <JointHeading joint={found.joint} />
      <Figure joint={found.joint} />
      {found.joint.of > 1 && <Variants joint={found.joint} />}
      {study !== undefined && <StudySection study={study} />}
    </>
  );
}
