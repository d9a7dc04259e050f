import type { CoverKey } from './cover-key.ts';
import { isSoft } from './cover-order.ts';
import { COVERS } from './cover-table.ts';

/** Whose word for a cover: row cover is fleece in Britain. */
export type Dialect = 'american' | 'british';

/**
 * A cover as one names it in a sentence, with its article.
 *
 * @param key - The cover.
 * @param dialect - Whose words.
 */
export function coverWords(key: CoverKey, dialect: Dialect): string {
  const name = COVERS[key][dialect];
  return COVERS[key].counted ? `a ${name}` : name;
}

/**
 * A whole stack in words, outermost cover first: “a blanket over medium row cover (0.9 oz/yd²) on hoops”.
 *
 * @param keys - Covers from outside to inside.
 * @param dialect - Whose words.
 * @returns “no cover” for a bare bed; hoops of a low tunnel, or with nothing over them, go unsaid.
 */
export function stackWords(keys: readonly CoverKey[], dialect: Dialect): string {
  const covers = keys.filter((key) => key !== 'hoops' && key !== 'jugs');
  const jugs = keys.includes('jugs') ? coverWords('jugs', dialect) : undefined;
  if (covers.length === 0) return jugs ? `no cover, with ${jugs}` : 'no cover';
  const words = keys.flatMap((key, index) => {
    if (key === 'jugs' || key === 'hoops') return [];
    const held = keys[index + 1] === 'hoops' && isSoft(key);
    return [`${coverWords(key, dialect)}${held ? ' on hoops' : ''}`];
  });
  const stack = words.join(' over ');
  return jugs ? `${stack}, with ${jugs}` : stack;
}
