// What a figure speaks: English, unless another language and its decimal sign are handed in. Names of the joint are English everywhere.
import type { Finding } from '../joint/graph';
import { sentence } from '../joint/words';
import { shown } from './svg';
import { ENGLISH_WORDS, type FigureWords } from './words';

export interface FigureSpeech {
  readonly words: FigureWords;
  readonly decimal: string;
  /** A finding in a sentence. */
  readonly reason: (finding: Finding) => string;
  /** What a rule says where it is broken, by its English. */
  readonly limit: (broken: string) => string;
}

export const ENGLISH: FigureSpeech = { words: ENGLISH_WORDS, decimal: '.', reason: sentence, limit: broken => broken };

export const numberIn = ({ decimal }: FigureSpeech, value: number, places?: number): string => shown(value, places).replace('.', decimal);
