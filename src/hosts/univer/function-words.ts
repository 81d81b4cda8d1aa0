// What is said of the spreadsheet's own functions: a third of a megabyte, and nobody reads it before the sheet stands.
import { LocaleService, LocaleType } from '@univerjs/core';
import type { Sheets } from './sheets';

export async function loadFunctionWords({ injector }: Sheets): Promise<void> {
  const words = await import(/* webpackChunkName: "bench-words" */ '@univerjs/sheets-formula/locale/en-US');
  const locale = injector.get(LocaleService);
  locale.load({ [LocaleType.EN_US]: words.default });
  // Tells those who have read them.
  locale.setLocale(LocaleType.EN_US);
}
