// The spreadsheet's own words in German, as its packages bring them.
import { mergeLocales } from '@univerjs/core';
import conditionalWords from '@univerjs/preset-sheets-conditional-formatting/locales/de-DE';
import coreWords from '@univerjs/preset-sheets-core/locales/de-DE';
import drawingWords from '@univerjs/preset-sheets-drawing/locales/de-DE';

export default mergeLocales(coreWords, conditionalWords, drawingWords);
