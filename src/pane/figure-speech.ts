// What the figures of the pane speak: its language, with the decimal sign of the host.
import { useMemo } from 'preact/hooks';
import { ENGLISH, type FigureSpeech } from '../figure/speech';
import { RULES } from '../joint/rules';
import { useNumbers, usePane } from './pane-context';

export function useFigureSpeech(): FigureSpeech {
  const { words, german, signs } = usePane();
  const { sentence } = useNumbers();
  return useMemo(
    () => ({
      ...ENGLISH,
      words: words.drawn,
      decimal: signs.decimal,
      ...(german && {
        reason: finding => sentence(german.reasonInGerman(finding)),
        limit: broken => german.limitInGerman(broken, RULES),
      }),
    }),
    [words, german, signs],
  );
}
