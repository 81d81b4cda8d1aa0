// What a host may put in the place of an argument besides plain values: data types as the typings of Office describe them, and errors in every form.
// Each with what it means to the core.
import { DATA_TYPE } from '../../src/core/kinds';

export interface HostValue {
  readonly what: string;
  readonly sent: unknown;
  readonly core: unknown;
}

export const KNOWN_CODES = ['#VALUE!', '#N/A', '#DIV/0!', '#NUM!', '#NULL!', '#NAME?', '#REF!'];

/** errorType and the text of the error. */
const ERROR_TYPES: Readonly<Record<string, string>> = {
  Value: '#VALUE!',
  NotAvailable: '#N/A',
  Div0: '#DIV/0!',
  Num: '#NUM!',
  Null: '#NULL!',
  Name: '#NAME?',
  Ref: '#REF!',
  Spill: '#SPILL!',
  Calc: '#CALC!',
  Busy: '#BUSY!',
  Connect: '#CONNECT!',
  Blocked: '#BLOCKED!',
  External: '#EXTERNAL!',
  Field: '#FIELD!',
  GettingData: '#GETTING_DATA',
  Placeholder: '#BUSY!',
};

export const formatted = (value: number): unknown => ({
  type: 'FormattedNumber',
  basicType: 'Double',
  basicValue: value,
  numberFormat: '0.00 "mm"',
});

const error = (what: string, more: object, cellError: string): HostValue => ({
  what,
  sent: { type: 'Error', basicType: 'Error', ...more },
  core: { cellError },
});
const dataType = (what: string, sent: object): HostValue => ({ what, sent, core: { cellError: DATA_TYPE } });

const entity = {
  type: 'Entity',
  basicType: 'Error',
  basicValue: '#VALUE!',
  text: 'a part',
  properties: { wall: { type: 'Double', basicType: 'Double', basicValue: 2.5 } },
};
const picture = { type: 'WebImage', basicType: 'Error', basicValue: '#VALUE!', address: 'https://example.org/part.png' };

/** Texts that are no error of any spreadsheet: nothing of them may come back. */
export const EVIL = 'evil<code>';
export const NO_ERRORS = [EVIL, '[object Object]', 'undefined', '#', '#VALUE! and more', `#${'X'.repeat(5000)}!`, ''];

export const HOST_VALUES: readonly HostValue[] = [
  { what: 'formatted number', sent: formatted(2.5), core: 2.5 },
  { what: 'formatted number without a basic type', sent: { type: 'FormattedNumber', basicValue: 2.5, numberFormat: '0.0' }, core: 2.5 },
  { what: 'double', sent: { type: 'Double', basicType: 'Double', basicValue: 2.5 }, core: 2.5 },
  { what: 'double with fields', sent: { type: 'Double', basicType: 'Double', basicValue: 2.5, properties: entity.properties }, core: 2.5 },
  { what: 'formatted zero', sent: formatted(0), core: 0 },
  { what: 'string', sent: { type: 'String', basicType: 'String', basicValue: '2.5 mm' }, core: '2.5 mm' },
  {
    what: 'string of 32,767 characters',
    sent: { type: 'String', basicType: 'String', basicValue: 'ab '.repeat(10_922) },
    core: 'ab '.repeat(10_922),
  },
  { what: 'boolean', sent: { type: 'Boolean', basicType: 'Boolean', basicValue: true }, core: true },
  { what: 'empty', sent: { type: 'Empty', basicType: 'Empty', basicValue: '' }, core: '' },
  { what: 'empty without a value', sent: { type: 'Empty' }, core: '' },
  { what: 'unknown type with a number', sent: { type: 'NotAvailable', basicType: 'Double', basicValue: 2.5 }, core: 2.5 },
  { what: 'reference to a text', sent: { type: 'Reference', basicType: 'String', basicValue: '2.5 mm', reference: 0 }, core: '2.5 mm' },
  dataType('entity', entity),
  dataType('entity without a value', { type: 'Entity', text: 'a part' }),
  dataType('linked entity', {
    type: 'LinkedEntity',
    basicType: 'Error',
    basicValue: '#VALUE!',
    id: { entityId: '1', domainId: '2', serviceId: 3, culture: 'en-US' },
    text: 'a part',
  }),
  dataType('picture', picture),
  dataType('array', { type: 'Array', basicType: 'Error', basicValue: '#VALUE!', elements: [[{ type: 'Double', basicValue: 1 }]] }),
  dataType('function', {
    type: 'Function',
    basicType: 'Error',
    basicValue: '#VALUE!',
    functionType: 'JavaScriptReference',
    namespace: 'ENCL',
    id: 'BOSS.OD',
  }),
  dataType('unknown type with an error', { type: 'NotAvailable', basicType: 'Error', basicValue: '#VALUE!' }),
  dataType('reference', { type: 'Reference', reference: 0 }),
  dataType('a type of the future', { type: 'Holo', basicValue: '#VALUE!' }),
  { what: 'the invocation object, behind too few arguments', sent: { functionName: 'BOSS.OD', address: 'A1' }, core: undefined },
  { what: 'nothing said', sent: {}, core: undefined },
  ...Object.entries(ERROR_TYPES).flatMap(([errorType, basicValue]) => [
    error(`${basicValue} ${errorType}`, { basicValue, errorType }, basicValue),
    error(`${errorType} without a value`, { errorType }, basicValue),
    error(`${basicValue} without a type`, { basicValue }, basicValue),
    {
      what: `${basicValue} as the runtime hands it over (${errorType})`,
      sent: { type: 'Error', basicType: 'Error', code: basicValue, basicValue },
      core: { cellError: basicValue },
    },
  ]),
  error('#ÜBERLAUF! in another language', { basicValue: '#ÜBERLAUF!' }, '#ÜBERLAUF!'),
  error('#WERT! with its type', { basicValue: '#WERT!', errorType: 'Value' }, '#VALUE!'),
  error('#PYTHON! of a later version', { basicValue: '#PYTHON!', errorType: 'Python' }, '#PYTHON!'),
  error('error without anything', {}, ''),
  error('error with a number', { basicValue: 5 }, ''),
  error('error with an object', { basicValue: { a: 1 }, errorType: 'constructor' }, ''),
  ...NO_ERRORS.map((text, i) => error(`no error of any spreadsheet ${i + 1}`, { basicValue: text }, text)),
];
