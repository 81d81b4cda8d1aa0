import { lookUp, type Calculation } from '../card';
import { choice, numeric, param } from '../read/params';
import { LENGTH } from '../read/quantity';
import * as F from './tolerance';
import { GRADE, MOULDED_GROUP } from './tolerance-read';

const T = 'Tolerances';
const size = param('size', numeric(LENGTH), { symbol: 'N', above: 0 });

export const TOLERANCE_CARDS: readonly Calculation[] = [
  // a blank grade is no grade of the table, as grade 0 is none
  lookUp('TOL.IT', T, [size, param('grade', GRADE, { blank: 'zero' })], F.gradeReadings, {
    result: { shape: 'number', name: 'full width of the tolerance', symbol: 'IT', unit: 'mm' },
  }),
  lookUp(
    'TOL.GENERAL',
    T,
    [size, param('tolerance_class', choice<F.GeneralClass>('class', { f: ['fine'], m: ['medium'], c: ['coarse'], v: ['very coarse'] }))],
    F.generalReadings,
    { result: { shape: 'number', name: 'tolerance, ±', symbol: 't', unit: 'mm' } },
  ),
  lookUp(
    'TOL.MOULDED',
    T,
    [
      size,
      param('group', MOULDED_GROUP),
      param('tooling', choice<F.Tooling>('tooling', { same: ['w'], across: ['nw'] }), { default: 'across' }),
    ],
    F.mouldedReadings,
    { result: { shape: 'number', name: 'tolerance, ±', symbol: 't', unit: 'mm' } },
  ),
];
