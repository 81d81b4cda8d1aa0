// What the sender chooses of a hand-over.
import { PAPERS, type Paper } from './title-block';
import { type Language, LANGUAGES } from './words/words';

export interface HandoverChoice {
  readonly paper: Paper;
  readonly language: Language;
  /** Of the sender's sheets those that go along; without it all. */
  readonly sheets?: readonly string[];
  /** Of the variants those that the part is made by; without it the best one. */
  readonly variants?: readonly string[];
  /** Of what can be measured, by name; without it all sizes of the chosen variants, or of single calls where there are no variants. */
  readonly characteristics?: readonly string[];
}

export const CHOSEN_BY_ITSELF: HandoverChoice = { paper: PAPERS[0], language: LANGUAGES[0] };
