import fc from 'fast-check';
import { expect, test } from 'vitest';
import { drawn } from '../../../bot/talk/plain-text.ts';

test('headline, sections, cautions and credits stand in this order', () => {
  const text = drawn({
    headline: 'Spinach: holds.',
    sections: [{ lines: ['Leaf low about 21 °F.'] }, { title: 'Assumed', lines: ['clear sky'] }],
    cautions: ['Mind the glass.'],
    credits: [{ text: 'Data from a service', url: 'https://example.org' }],
    private: false,
  });
  expect(text).toBe(
    'Spinach: holds.\n\nLeaf low about 21 °F.\n\nAssumed:\n  clear sky\n\nCaution: Mind the glass.\n\nData from a service (https://example.org)',
  );
});

test('no line is wider than asked unless one word is, and no control character survives', () => {
  fc.assert(
    fc.property(fc.string({ unit: 'binary', maxLength: 400 }), (line) => {
      const text = drawn({ headline: line, sections: [{ title: 'More', lines: [line] }], private: false }, 40);
      for (const row of text.split('\n')) {
        const words = row.trim().split(' ');
        expect(row.length <= 40 || words.length === 1).toBe(true);
        for (const glyph of row) {
          const code = glyph.codePointAt(0) ?? 0;
          expect(code >= 32 && (code < 127 || code >= 160)).toBe(true);
        }
      }
    }),
  );
});
