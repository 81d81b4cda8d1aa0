// What an error beside a formula of ours says, and what helps; the rest have a message of their own.
export const ERROR_WORDS: Readonly<Record<string, string>> = {
  '#SPILL!': 'the table has no room: a cell below or to the right is not empty, or the formula is in a table of the sheet',
  '#GETTING_DATA': 'the cell waits for its answer: calculate again, or open the pane once, when it stays so',
  '#BUSY!': 'the cell waits for its answer: calculate again, or open the pane once, when it stays so',
  '#CONNECT!': 'Excel did not reach the add-in: see that its server can be reached, then calculate again',
  '#BLOCKED!': 'Excel does not let the add-in run: trust it when Excel asks, or ask whoever looks after Excel',
  '#TIMEOUT!': 'the answer took too long: calculate again, or ask for fewer variants or draws at once',
  '#UNKNOWN!': 'the cell holds a kind of value that this Excel does not know: a newer one made it',
  '#EXTERNAL!': 'a cell that the formula reads takes its value from outside, and that failed',
  '#FIELD!': 'a cell that the formula reads holds a data type without the field that is asked for: give a number or a text',
  '#CALC!': 'a list that the formula reads is empty, or holds lists itself',
};
