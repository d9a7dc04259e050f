import { MARGIN, TITLE_SIZE, WIDTH } from './look.ts';
import { fitted, textWidth } from './text-width.ts';

/** "Long tunnel, Tue 20 Jan": of a long name as much as leaves room for what follows. */
export function titled(name: string, following: string): string {
  const end = `, ${following}`;
  return `${fitted(name, TITLE_SIZE, WIDTH - 2 * MARGIN - textWidth(end, TITLE_SIZE, true), true)}${end}`;
}
