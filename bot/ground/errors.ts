/**
 * Something a person can put right. The message is one plain sentence that says what was wrong and what would be
 * right; doors show it as it stands. Anything else that is thrown is a fault of ours and is never shown.
 */
export class PlainProblem extends Error {
  override readonly name = 'PlainProblem';
}
