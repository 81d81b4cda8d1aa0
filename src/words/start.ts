// What is said before there is a table of words, or where none could be fetched: in every language at once.
import type { PageLanguage } from './speech';

interface StartWords {
  /** The first script of the pane says these two, to old browsers too: the build puts them in. */
  readonly opening: string;
  readonly tooOld: string;
  readonly paneFailed: (why: string) => string;
  readonly benchFailed: (why: string) => string;
}

export const START: Readonly<Record<PageLanguage, StartWords>> = {
  en: {
    opening: 'Opening …',
    tooOld:
      'This version of Excel shows add-ins in a browser that is too old for Bosswright: neither the pane nor the functions can run. ' +
      'Install the WebView2 runtime of Windows, or take Microsoft 365, Excel 2021 with WebView2, or Excel on the web.',
    paneFailed: why => `The pane could not start: ${why}`,
    benchFailed: why => `The bench could not start: ${why}`,
  },
  de: {
    opening: 'Wird geöffnet …',
    tooOld:
      'Dieses Excel zeigt Add-ins in einem Browser, der für Bosswright zu alt ist: Weder dieser Bereich noch die Funktionen laufen ' +
      'darin. Installieren Sie die WebView2-Laufzeit von Windows, oder nehmen Sie Microsoft 365, Excel 2021 mit WebView2 oder Excel ' +
      'im Web.',
    paneFailed: why => `Dieser Bereich konnte nicht starten: ${why}`,
    benchFailed: why => `Die Seite konnte nicht starten: ${why}`,
  },
};
