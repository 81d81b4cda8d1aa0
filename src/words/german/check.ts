// What the view of checks says, in German.
import type { CHECK as ENGLISH } from '../check';
import { count, whole } from './count';

const WAITS = 'Die Zelle wartet auf ihre Antwort: Berechnen Sie neu, oder öffnen Sie diesen Bereich einmal, wenn es so bleibt';

export const CHECK: typeof ENGLISH = {
  passed: rules => (rules === 1 ? '1 Regel ist erfüllt' : `${rules} Regeln sind erfüllt`),
  moves: 'Stärkste Einflüsse auf die kleinste Einschraubtiefe',
  movesWords: 'Änderung des vollen Gewindes im ungünstigsten Fall, mm: über die Toleranz einer Eingabe, und je Einheit mehr von ihr.',
  movesColumns: { input: 'Eingabe', now: 'jetzt', over: 'über ihre Toleranz', one: 'je Einheit mehr' },
  yield: 'Ausbeute neben dem ungünstigsten Fall',
  yieldWords: joints =>
    `${whole(joints)} Verbindungen, zufällig innerhalb ihrer Toleranzen. Das setzt Maße um die Mitte ihrer Grenzen voraus; der ` +
    `ungünstigste Fall ` +
    'nicht.',
  noYield: 'Die Ausbeute hat keinen Wert',
  worst: 'ungünstigster Fall',
  notChecked: 'nicht geprüft',
  outside: ppm => `${ppm} ppm außerhalb`,
  workbook: 'Die Arbeitsmappe',
  problems: {
    broken: {
      heading: 'Zellen, die nicht rechnen',
      words: 'Neu eingegeben rechnen sie meist wieder: Eine Arbeitsmappe, die vor den Funktionen geöffnet wurde, behält solche Zellen.',
    },
    refused: { heading: 'Abgelehnte Aufrufe', words: '' },
    state: { heading: 'Prüfungen mit Befund', words: '' },
    chain: {
      heading: 'Zellen, die aufeinander warten',
      words: 'Excel fragt höchstens zweimal je Sekunde nach Antworten: Eine Tabelle hat alle auf einmal.',
    },
    blank: { heading: 'Leere Zellen, die als null zählen', words: 'Geben Sie die Null ein, oder den Wert, der vergessen wurde.' },
    units: {
      heading: 'Längen in mehreren Einheiten in einer Liste',
      words: 'Jede wird in ihrer eigenen Einheit gelesen; eine bloße Zahl ist mm.',
    },
    constant: {
      heading: 'Zahlen in einer Formel',
      words: 'In einer eigenen Zelle wird eine Zahl gesehen und an einer Stelle geändert.',
    },
  },
  joints: 'Verbindungen',
  pass: (passed, of) => `${passed} von ${of} erfüllt`,
  readingSheets: 'Blätter werden gelesen',
  again: 'Neu prüfen',
  readAnyway: 'Trotzdem lesen',
  isLarge: (cells, most) =>
    `Sie füllt ${whole(cells)} Zellen. Mehr als ${whole(most)} werden nur auf Verlangen gelesen: Das dauert eine Weile, und Zellen ` +
    `warten ` +
    'so lange.',
  noProblem: 'Keine Formel verlangt Aufmerksamkeit.',
  isPartial: 'Abgebrochen: Nicht alle Blätter wurden gelesen.',
  repair: cells => `${count(cells, 'Zelle', 'Zellen')} reparieren`,
  repairAsked: formulas => `${count(formulas, 'Formel', 'Formeln')} neu eingeben? Nur ihre eigenen Zellen werden geschrieben.`,
  repairFirst: formulas =>
    `${formulas} davon ${formulas === 1 ? 'steht' : 'stehen'} in einer Tabelle des Blatts, wo eine Funktion, die mehrere Zellen füllt, ` +
    '#SPILL! zeigt: Dort nimmt INDEX den ersten ihrer Werte.',
  repairYes: 'Reparieren',
  repairing: 'Formeln werden neu eingegeben',
  repaired: cells => (cells === 1 ? '1 Zelle wurde neu eingegeben' : `${cells} Zellen wurden neu eingegeben`),
  repairStopped: (done, of) => `Abgebrochen nach ${done} von ${of} Zellen`,
  ofCell: {
    inFile: 'Die Funktion steht hier unter dem Namen, den sie in einer Datei hat',
    noFunction: name => `Eine Funktion ${name} gibt es nicht`,
    unknownName: 'Die Formel hat einen Namen, den diese Arbeitsmappe nicht kennt',
    noAnswer: 'Die Zelle wartet auf eine Antwort, die nicht kommt',
    notThere: 'Die Funktion war nicht da, als dies berechnet wurde',
    readsFault: fault => `${fault} in einer Zelle, die die Formel liest`,
    typed: (text, argument) => `${text} für ${argument}`,
    zero: (cell, argument) => `${cell} ist leer und zählt als 0 für ${argument}`,
    units: (range, units) => `${range} hat Längen in ${units.join(' und ')}`,
    chain: (cells, from, seconds, asTable) =>
      `${cells} Zellen warten aufeinander, ab ${from}: etwa ${seconds.toLocaleString('de-DE')} s in Excel; als eine JOINT.TABLE etwa ` +
      `${asTable.toLocaleString('de-DE')} s`,
  },
  errors: {
    '#SPILL!':
      'Die Ergebnisse haben keinen Platz: Leeren Sie die Zellen darunter und rechts; in einer Tabelle des Blatts nehmen Sie eines davon ' +
      'mit INDEX, oder JOINT.VALUE',
    '#GETTING_DATA': WAITS,
    '#BUSY!': WAITS,
    '#PLACEHOLDER!': WAITS,
    '#CONNECT!': 'Excel hat das Add-in nicht erreicht: Sehen Sie nach, ob sein Server erreichbar ist, und berechnen Sie dann neu',
    '#BLOCKED!': 'Excel lässt das Add-in nicht laufen: Vertrauen Sie ihm, wenn Excel fragt, oder fragen Sie, wer Excel bei Ihnen betreut',
    '#TIMEOUT!': 'Die Antwort hat zu lange gedauert: Berechnen Sie neu, oder verlangen Sie weniger Varianten oder Ziehungen auf einmal',
    '#UNKNOWN!': 'Die Zelle enthält eine Art Wert, die dieses Excel nicht kennt: Ein neueres hat ihn geschrieben',
    '#EXTERNAL!': 'Eine Zelle, die die Formel liest, holt ihren Wert von außen, und das ist gescheitert',
    '#FIELD!': 'Eine Zelle, die die Formel liest, enthält einen Datentyp ohne das verlangte Feld: Geben Sie eine Zahl oder einen Text an',
    '#CALC!': 'Eine Liste, die die Formel liest, ist leer, oder enthält selbst Listen',
  },
};
