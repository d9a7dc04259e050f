import { randomUUID } from 'node:crypto';
import type { Kysely } from 'kysely';
import type { Database } from '../schema.ts';
import { StoreProblem } from '../store-problem.ts';

/** Works on the pool or inside a transaction alike. */
export type Db = Kysely<Database>;

/** How both engines hold what the port hands over, and back. */
export const flag = (yes: boolean): 0 | 1 => (yes ? 1 : 0);
export const instant = (ms: number): Date => new Date(ms);
export const newId = (): string => randomUUID();

/** Absent from a change: leave as it is. Present but undefined: clear. */
export function cleared<T>(change: object, field: string, value: T | undefined): T | null | undefined {
  return field in change ? (value ?? null) : undefined;
}

/** Two names with the same key are the same to a person. */
export function nameKey(name: string): string {
  return name.normalize('NFKC').toLowerCase();
}

export function textList(json: string): readonly string[] {
  const list: unknown = JSON.parse(json);
  return Array.isArray(list) ? list.map(String) : [];
}

export function numberList(json: string): readonly number[] {
  const list: unknown = JSON.parse(json);
  return Array.isArray(list) ? list.map(Number) : [];
}

/** Long lists go to the database in parts: each engine has a limit on parameters. */
export function chunks<T>(list: readonly T[], size = 300): readonly (readonly T[])[] {
  const parts: (readonly T[])[] = [];
  for (let start = 0; start < list.length; start += size) parts.push(list.slice(start, start + size));
  return parts;
}

/** The row that had to be there; `what` names it in a person's words. */
export function found<T>(row: T | undefined, what: string): T {
  if (row === undefined) throw new StoreProblem('not-found', `There is no such ${what}.`);
  return row;
}
