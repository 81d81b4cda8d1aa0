// What is drawn as files: for a page, for a design program, for its table of parameters. What writes them is fetched when asked for.
import type { JSX } from 'preact';
import { section } from '../figure/section';
import { inFixedColours } from '../figure/style';
import { downloadFile, fileName } from '../files/download';
import type { Words } from '../words/english';
import type { LocatedJoint } from './find-joint';
import { jointName } from './joint-heading';
import { useFigureSpeech } from './figure-speech';
import { usePane, useWords } from './pane-context';

interface FileKind {
  readonly kind: keyof Words['figure']['kinds'];
  readonly type: string;
  readonly write: () => Promise<string>;
}

interface SaveProps {
  /** What the file is called. */
  readonly label: string;
  readonly svg: () => string;
  readonly also?: readonly FileKind[];
}

export function Save({ label, svg, also = [] }: SaveProps): JSX.Element {
  const { work, say } = usePane();
  const { figure: W } = useWords();
  const kinds: readonly FileKind[] = [{ kind: 'svg', type: 'image/svg+xml', write: async () => inFixedColours(svg()) }, ...also];
  const save = ({ kind, type, write }: FileKind) =>
    work(W.saving(W.kinds[kind]), async () => {
      const name = fileName(label, `.${kind}`);
      downloadFile(await write(), type, name);
      say(W.saved(name));
    });
  return (
    <div class="bw-switches" role="group" aria-label={W.saveAs}>
      <span class="bw-quiet">{W.saveAs}</span>
      {kinds.map(each => (
        <button key={each.kind} type="button" onClick={() => void save(each)}>
          {W.kinds[each.kind]}
        </button>
      ))}
    </div>
  );
}

export function SaveJoint({ joint }: { readonly joint: LocatedJoint }): JSX.Element {
  const { frame } = useWords();
  const speech = useFigureSpeech();
  const { variant } = joint;
  const label = jointName(joint, frame);
  const parameters = async (format: 'csv' | 'json'): Promise<string> => {
    const { PARAMETER_FORMATS, parametersOf } = await import(/* webpackChunkName: "view-files" */ '../joint/parameters');
    return PARAMETER_FORMATS[format](parametersOf(variant, label));
  };
  const dxf = async () => (await import(/* webpackChunkName: "view-files" */ '../figure/section-dxf')).sectionDxf(variant);
  return (
    <Save
      label={label}
      svg={() => section(variant, { speech }).svg}
      also={[
        { kind: 'dxf', type: 'image/vnd.dxf', write: dxf },
        { kind: 'csv', type: 'text/csv', write: () => parameters('csv') },
        { kind: 'json', type: 'application/json', write: () => parameters('json') },
      ]}
    />
  );
}
