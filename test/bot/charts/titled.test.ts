import fc from 'fast-check';
import { expect, test } from 'vitest';
import { MARGIN, TITLE_SIZE, WIDTH } from '../../../bot/charts/look.ts';
import { textWidth } from '../../../bot/charts/text-width.ts';
import { titled } from '../../../bot/charts/titled.ts';

test('a short name stands as it is', () => {
  expect(titled('Long tunnel', 'Tue 20 Jan')).toBe('Long tunnel, Tue 20 Jan');
});

test('of a name however long the day is still seen, within the paper', () => {
  fc.assert(
    fc.property(fc.string({ minLength: 1, maxLength: 80, unit: 'grapheme' }), (name) => {
      const title = titled(name, 'Tue 20 Jan');
      expect(title.endsWith(', Tue 20 Jan')).toBe(true);
      expect(textWidth(title, TITLE_SIZE, true)).toBeLessThanOrEqual(WIDTH - 2 * MARGIN + 1e-9);
    }),
  );
});
