// The views of the pane in the order of their tabs, each fetched when it is first shown.
import type { Words } from '../words/english';
import { lazyView, type LazyView } from './lazy-view';

/** Fetched when the pane stands, the one that is shown first. */
const FigureView = lazyView(() => import(/* webpackChunkName: "view-figure" */ './figure-view').then(module => module.FigureView));
const FunctionsView = lazyView(() =>
  import(/* webpackChunkName: "view-functions" */ './functions-view').then(module => module.FunctionsView),
);
const CellView = lazyView(() => import(/* webpackChunkName: "view-cell" */ './explain/cell-view').then(module => module.CellView));
const TableView = lazyView(() => import(/* webpackChunkName: "view-table" */ './table/table-view').then(module => module.TableView));
const SheetsView = lazyView(() => import(/* webpackChunkName: "view-sheets" */ './sheets-view').then(module => module.SheetsView));
const HandOverView = lazyView(
  () => import(/* webpackChunkName: "view-handover" */ './files/hand-over-view').then(module => module.HandOverView),
  true,
);
const CompareView = lazyView(
  () => import(/* webpackChunkName: "view-compare" */ './files/compare-view').then(module => module.CompareView),
  true,
);
const CheckView = lazyView(() => import(/* webpackChunkName: "view-check" */ './check-view').then(module => module.CheckView));
const AboutView = lazyView(() => import(/* webpackChunkName: "view-about" */ './about-view').then(module => module.AboutView), true);

export type ViewName = keyof Words['frame']['names'];

export const VIEWS: readonly { readonly name: ViewName; readonly View: LazyView; readonly showsJoint?: true }[] = [
  { name: 'Figure', View: FigureView, showsJoint: true },
  { name: 'Functions', View: FunctionsView },
  { name: 'Cell', View: CellView, showsJoint: true },
  { name: 'Table', View: TableView },
  { name: 'Sheets', View: SheetsView },
  { name: 'Check', View: CheckView, showsJoint: true },
  { name: 'Hand-over', View: HandOverView },
  { name: 'Compare', View: CompareView },
  { name: 'About', View: AboutView },
];
