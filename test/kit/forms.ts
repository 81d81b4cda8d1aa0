// Before any test: the plain forms are those of the formulas.
import { checkForms } from '../../src/plain/read';

export const setup = (): void => checkForms();
