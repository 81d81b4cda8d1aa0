// The part of the Office custom-functions runtime that the bundle functions.js asks for, so that the bench loads the
// very file that Excel loads.
// It runs as a script of its own before functions.js.

export type Wrapper = (...args: unknown[]) => unknown;

const registered = new Map<string, Wrapper>();

class CustomFunctionsError extends Error {
  constructor(
    readonly code: string,
    message?: string,
  ) {
    super(message);
  }
}

Object.assign(globalThis, {
  CustomFunctions: {
    registered,
    associate: (id: string, wrapper: Wrapper) => registered.set(id, wrapper),
    Error: CustomFunctionsError,
    ErrorCode: {
      divisionByZero: '#DIV/0!',
      invalidName: '#NAME?',
      invalidNumber: '#NUM!',
      invalidReference: '#REF!',
      invalidValue: '#VALUE!',
      notAvailable: '#N/A',
      nullReference: '#NULL!',
    },
  },
});
