// functions.json in German: descriptions alone. Names of functions and arguments are English in every language.
import { ARGUMENTS } from './arguments';
import { FUNCTIONS } from './functions';
import { translator } from './phrases';

export const inGerman = translator(FUNCTIONS, ARGUMENTS);
