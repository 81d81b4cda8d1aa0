// What the bench speaks: the views, and what stands round its sheet.
import type { BENCH } from '../words/bench';
import { type PageLanguage, speech, type Speech } from '../words/speech';

export interface BenchSpeech extends Speech {
  readonly words: Speech['words'] & { readonly bench: typeof BENCH };
}

export async function benchSpeech(language: PageLanguage): Promise<BenchSpeech> {
  const spoken = await speech(language);
  const round =
    spoken.language === 'en'
      ? await import(/* webpackChunkName: "bench-english" */ '../words/bench')
      : await import(/* webpackChunkName: "bench-german" */ '../words/german/bench');
  return { ...spoken, words: { ...spoken.words, bench: round.BENCH } };
}
