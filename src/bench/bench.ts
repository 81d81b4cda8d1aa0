// What stands before the spreadsheet does: the line of its progress, and the picture of what was kept.
import './bench.css';
import { readFunctions } from '../hosts/univer/metadata';
import { byId, messageOf } from './dom';
import { benchSpeech } from './bench-speech';
import { fill } from './fill';
import { keptLanguage } from './language-choice';
import { showPicture } from './sheet-picture';
import { START } from '../words/start';
import { hereKey, turnToLast } from './workbook-store';

/** The files of the spreadsheet, by the names that the build gives them. */
const PARTS = /\/chunks\/bench-\w+\.js$/;
const bar = byId<HTMLProgressElement>('progress');

function followParts(): void {
  const arrived = new PerformanceObserver(list => {
    bar.value += list.getEntries().filter(({ name }) => PARTS.test(name)).length;
  });
  arrived.observe({ type: 'resource', buffered: true });
}

try {
  turnToLast();
  showPicture(byId('starting'), hereKey());
} catch {
  // A browser that keeps nothing has nothing to show.
}
followParts();
const language = keptLanguage();
const spoken = benchSpeech(language);
void spoken.then(({ words }) => fill(words));
// The scripts after this one: what functions.js registers is there then.
const scripts = new Promise(resolve => addEventListener('DOMContentLoaded', resolve));
Promise.all([import(/* webpackChunkName: "bench-page" */ './page'), scripts.then(() => readFunctions(language))])
  .then(([{ start }, functions]) => start(functions, spoken))
  .catch((thrown: unknown) => {
    byId('kept').textContent = START[language].benchFailed(messageOf(thrown));
  });
