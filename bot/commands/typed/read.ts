/** What came of reading something typed: its value, or one sentence that says what was wrong and what would be right. */
export type Read<T> = { readonly ok: true; readonly value: T } | { readonly ok: false; readonly problem: string };

export function read<T>(value: T): Read<T> {
  return { ok: true, value };
}

export function unread(problem: string): { readonly ok: false; readonly problem: string } {
  return { ok: false, problem };
}
