// The drawn joint as files: for a page, for a design program, for its table of parameters. What writes them is fetched when asked for.
import type { JSX } from 'preact';
import { section } from '../figure/section';
import { inFixedColours } from '../figure/style';
import type { Variant } from '../joint/variant';
import { downloadFile } from '../files/download';
import type { LocatedJoint } from './find-joint';
import { jointName } from './joint-heading';
import { usePane } from './pane-context';

interface FileKind {
  readonly words: string;
  readonly ending: string;
  readonly type: string;
  readonly write: (variant: Variant, label: string) => Promise<string>;
}

const parameters =
  (format: 'csv' | 'json') =>
  async (variant: Variant, label: string): Promise<string> => {
    const { PARAMETER_FORMATS, parametersOf } = await import(/* webpackChunkName: "view-files" */ '../joint/parameters');
    return PARAMETER_FORMATS[format](parametersOf(variant, label));
  };

const KINDS: readonly FileKind[] = [
  { words: 'SVG', ending: 'svg', type: 'image/svg+xml', write: async variant => inFixedColours(section(variant).svg) },
  {
    words: 'DXF',
    ending: 'dxf',
    type: 'image/vnd.dxf',
    write: async variant => (await import(/* webpackChunkName: "view-files" */ '../figure/section-dxf')).sectionDxf(variant),
  },
  { words: 'parameters, CSV', ending: 'csv', type: 'text/csv', write: parameters('csv') },
  { words: 'parameters, JSON', ending: 'json', type: 'application/json', write: parameters('json') },
];

const fileName = (label: string): string => label.replaceAll(/[\\/:*?"<>|\p{Cc}]/gu, '_').trim() || 'joint';

export function SaveJoint({ joint }: { readonly joint: LocatedJoint }): JSX.Element {
  const { work, say } = usePane();
  const label = jointName(joint);
  const save = ({ words, ending, type, write }: FileKind) =>
    work(`Save ${words}`, async () => {
      const name = `${fileName(label)}.${ending}`;
      downloadFile(await write(joint.variant, label), type, name);
      say(`Saved as ${name}`);
    });
  return (
    <div class="bw-switches" role="group" aria-label="Save this joint">
      <span class="bw-quiet">Save as</span>
      {KINDS.map(kind => (
        <button key={kind.words} type="button" onClick={() => void save(kind)}>
          {kind.words}
        </button>
      ))}
    </div>
  );
}
