/** Something the user of a command can put right: its message is all he needs. */
export class UserFault extends Error {
  override readonly name = 'UserFault';
}
