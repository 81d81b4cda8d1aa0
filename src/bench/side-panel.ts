// Beside the sheet: the views of the pane, and above that of the cell what the cell holds. One row of tabs: the pane's own is hidden.
import type { BenchWorkbook } from '../hosts/univer/bench-workbook';
import type { SheetFunction } from '../hosts/univer/metadata';
import { benchFiles } from './bench-files';
import { byId } from './dom';
import type { MountedPane } from '../pane/mount';
import type { Speech } from '../words/speech';
import { tabs, type Tabs } from './tabs';

/** Its tab has the cell itself above. */
const CELL = 'Cell';

/** The code of the pane is fetched when the sheet stands. */
export function sidePanel(workbook: BenchWorkbook, functions: readonly SheetFunction[], { words, later, beside }: Speech): Tabs {
  let mounted: Promise<MountedPane> | undefined;
  const kept = new Map<string, string>();

  function mount(): Promise<MountedPane> {
    return Promise.all([
      import(/* webpackChunkName: "views" */ '../pane/mount'),
      import(/* webpackChunkName: "views" */ '../pane/examples'),
    ]).then(([{ mountPane }, { examplesOf }]) => {
      workbook.showExamples(examplesOf(functions));
      return mountPane(byId('pane'), {
        port: workbook.port,
        files: benchFiles(workbook),
        functions,
        saysCell: true,
        host: 'bench',
        words,
        later,
        ...(beside !== undefined && { beside }),
        kept: async () => ({
          get: key => kept.get(key) ?? null,
          set(key, value) {
            kept.set(key, value);
            // A link inside the pane may lead to another of its views.
            if (key === 'view') row.mark(`tab-${value}`);
          },
        }),
      });
    });
  }

  const row = tabs('tabs', ({ dataset: { view = CELL } }) => {
    for (const id of ['cell', 'legend']) byId(id).hidden = view !== CELL;
    kept.set('view', view);
    mounted ??= workbook.stands.then(mount);
    void mounted.then(pane => pane.open(view));
  });
  return row;
}
