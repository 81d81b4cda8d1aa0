// What is fetched when the sheet stands: what is said of the spreadsheet's own functions, a third of a megabyte that nobody reads
// before; in German all that its menus and dialogs say.
import { LocaleService, LocaleType } from '@univerjs/core';
import type { SheetLanguage } from './metadata';
import type { Sheets } from './sheets';

async function load(locale: LocaleService, language: SheetLanguage): Promise<LocaleType> {
  if (language === 'de') {
    const { default: words } = await import(/* webpackChunkName: "bench-german" */ './german-words');
    locale.load({ [LocaleType.DE_DE]: words });
    return LocaleType.DE_DE;
  }
  const { default: words } = await import(/* webpackChunkName: "bench-words" */ '@univerjs/sheets-formula/locale/en-US');
  locale.load({ [LocaleType.EN_US]: words });
  return LocaleType.EN_US;
}

export async function loadSheetWords({ injector }: Sheets, language: SheetLanguage): Promise<void> {
  const locale = injector.get(LocaleService);
  // Tells those who have read them.
  locale.setLocale(await load(locale, language));
}
