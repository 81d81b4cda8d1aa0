// The drawn joint as files: for a page, for a design program, for its table of parameters. What writes them is fetched when asked for.
import type { JSX } from 'preact';
import { section } from '../figure/section';
import type { FigureSpeech } from '../figure/speech';
import { inFixedColours } from '../figure/style';
import type { Variant } from '../joint/variant';
import { downloadFile } from '../files/download';
import type { Words } from '../words/english';
import type { LocatedJoint } from './find-joint';
import { jointName } from './joint-heading';
import { useFigureSpeech } from './figure-speech';
import { usePane, useWords } from './pane-context';

interface FileKind {
  readonly kind: keyof Words['figure']['kinds'];
  readonly ending: string;
  readonly type: string;
  readonly write: (variant: Variant, label: string, speech: FigureSpeech) => Promise<string>;
}

const parameters =
  (format: 'csv' | 'json') =>
  async (variant: Variant, label: string): Promise<string> => {
    const { PARAMETER_FORMATS, parametersOf } = await import(/* webpackChunkName: "view-files" */ '../joint/parameters');
    return PARAMETER_FORMATS[format](parametersOf(variant, label));
  };

const KINDS: readonly FileKind[] = [
  {
    kind: 'svg',
    ending: 'svg',
    type: 'image/svg+xml',
    write: async (variant, _, speech) => inFixedColours(section(variant, { speech }).svg),
  },
  {
    kind: 'dxf',
    ending: 'dxf',
    type: 'image/vnd.dxf',
    write: async variant => (await import(/* webpackChunkName: "view-files" */ '../figure/section-dxf')).sectionDxf(variant),
  },
  { kind: 'csv', ending: 'csv', type: 'text/csv', write: parameters('csv') },
  { kind: 'json', ending: 'json', type: 'application/json', write: parameters('json') },
];

const fileName = (label: string): string => label.replaceAll(/[\\/:*?"<>|\p{Cc}]/gu, '_').trim() || 'joint';

export function SaveJoint({ joint }: { readonly joint: LocatedJoint }): JSX.Element {
  const { work, say } = usePane();
  const { figure: W, frame } = useWords();
  const speech = useFigureSpeech();
  const label = jointName(joint, frame);
  const save = ({ kind, ending, type, write }: FileKind) =>
    work(W.saving(W.kinds[kind]), async () => {
      const name = `${fileName(label)}.${ending}`;
      downloadFile(await write(joint.variant, label, speech), type, name);
      say(W.saved(name));
    });
  return (
    <div class="bw-switches" role="group" aria-label={W.save}>
      <span class="bw-quiet">{W.saveAs}</span>
      {KINDS.map(each => (
        <button key={each.kind} type="button" onClick={() => void save(each)}>
          {W.kinds[each.kind]}
        </button>
      ))}
    </div>
  );
}
