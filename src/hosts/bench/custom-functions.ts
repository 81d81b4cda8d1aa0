// The part of the Office custom-functions runtime that the bundle functions.js asks for, so that the bench loads the very file that Excel loads.
// It runs as a script of its own before functions.js, and stands aside where Office.js is there.

export type Wrapper = (...args: unknown[]) => unknown;

const registered = new Map<string, Wrapper>();

class CustomFunctionsError extends Error {
  constructor(readonly code: string, message?: string) {
    super(message);
  }
}

const standIn = {
  registered,
  associate: (id: string, wrapper: Wrapper) => registered.set(id, wrapper),
  Error: CustomFunctionsError,
  ErrorCode: {
    divisionByZero: "#DIV/0!",
    invalidName: "#NAME?",
    invalidNumber: "#NUM!",
    invalidReference: "#REF!",
    invalidValue: "#VALUE!",
    notAvailable: "#N/A",
    nullReference: "#NULL!",
  },
};

globalThis.CustomFunctions ??= standIn as unknown as typeof CustomFunctions;
