// Beside the sheet: the selected cell, and the views of the pane. One row of tabs for both: the pane's own row is hidden.
import type { BenchWorkbook } from '../hosts/univer/bench-workbook';
import type { SheetFunction } from '../hosts/univer/metadata';
import { benchFiles } from './bench-files';
import { byId } from './dom';
import type { MountedPane } from '../pane/mount';
import { tabs, type Tabs } from './tabs';

/** The code of the pane is fetched after the page has started. */
export function sidePanel(workbook: BenchWorkbook, functions: readonly SheetFunction[]): Tabs {
  let mounted: Promise<MountedPane> | undefined;
  const kept = new Map<string, string>();

  function mount(): Promise<MountedPane> {
    return import(/* webpackChunkName: "views" */ '../pane/mount').then(({ mountPane }) =>
      mountPane(byId('pane'), {
        port: workbook.port,
        files: benchFiles(workbook),
        functions,
        hostName: 'the bench',
        kept: {
          get: key => kept.get(key) ?? null,
          set(key, value) {
            kept.set(key, value);
            // A link inside the pane may lead to another of its views.
            if (key === 'view') row.mark(`tab-${value}`);
          },
        },
      }),
    );
  }

  const row = tabs('tabs', ({ dataset: { view } }) => {
    byId('cell-panel').hidden = view !== undefined;
    byId('pane').hidden = view === undefined;
    void mounted?.then(pane => pane.show(view !== undefined));
    if (view === undefined) return;
    kept.set('view', view);
    mounted ??= mount();
    void mounted.then(() => byId(`bw-tab-${kept.get('view')}`).click());
  });
  return row;
}
