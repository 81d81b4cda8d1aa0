// What every view of the pane shares.
import { createContext } from 'preact';
import { useContext } from 'preact/hooks';
import type { CellEntry, Selection } from '../sheet/port';
import type * as German from '../german/beside';
import type { ViewWords } from '../words/views';
import type { KeptView, PaneServices } from './pane-services';
import type { Followed } from './followed';
import { numbersIn, type ShownNumbers } from './numbers';
import type { Signs } from '../sheet/signs';

export interface Question {
  readonly words: string;
  readonly yes: string;
}

/** Told how far the work is; false where the user stopped it. */
export type ProgressStep = (done: number, of: number) => boolean;

/** Told how to stop work that does not count its steps. */
export type CanStop = (stop: () => void) => void;

export interface PaneState extends PaneServices, Followed {
  /** What the English of cells is in German, once it is there; left out in English. */
  readonly german?: typeof German;
  /** How the pane was left, once it is known. */
  readonly keptView?: KeptView;
  /** In which signs formulas are typed, and numbers and formulas shown. */
  readonly signs: Signs;
  /** Speaks to everyone: shown in the pane and read out. */
  say(text: string): void;
  /** Says what was written, and offers to take it back, with what else was done. */
  wrote(text: string, before: readonly CellEntry[], alsoBack?: () => Promise<void>): void;
  /** Work on the workbook is under way. */
  readonly isBusy: boolean;
  /** Does one piece of work: shows how far it is when it takes long, and says why where it fails. */
  work(what: string, task: (step: ProgressStep, canStop: CanStop) => Promise<void>): Promise<void>;
  /** Asks in a dialog; true where the answer is yes. */
  ask(question: Question): Promise<boolean>;
}

export const PaneContext = createContext<PaneState | null>(null);

/** Whether anybody sees the view: one that is open behind another reads nothing. */
export const ShownContext = createContext(true);

export function usePane(): PaneState {
  const shared = useContext(PaneContext);
  if (shared === null) throw new Error('a view stands outside the pane');
  return shared;
}

/** What the views say, in the language of the page. */
export const useWords = (): ViewWords => usePane().words;

export const useNumbers = (): ShownNumbers => numbersIn(usePane().signs);

/** Goes to a cell; says so where the workbook refuses. */
export function useGoTo(): (place: Selection) => void {
  const { port, say } = usePane();
  return ({ sheetName, at }) => void port?.goTo(sheetName, at).catch((thrown: unknown) => say(messageOf(thrown)));
}

export const messageOf = (thrown: unknown): string => (thrown instanceof Error ? thrown.message : String(thrown));

/** `Joint!B4`, as a person reads it. */
export const placeName = ({ sheetName, at }: Selection): string => `${sheetName}!${at}`;
