/** Something the user of a command can put right: its message is all that is needed. */
export class UserFault extends Error {
  override readonly name = 'UserFault';
}
