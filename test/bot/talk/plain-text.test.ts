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

test('sentences of ordinary words fill the width and never pass it', () => {
  const sentence = fc.array(fc.string({ unit: fc.constantFrom('a', 'é', '–'), minLength: 1, maxLength: 9 }), {
    maxLength: 60,
  });
  fc.assert(
    fc.property(sentence, fc.integer({ min: 20, max: 90 }), (words, width) => {
      const text = drawn(
        { headline: 'A', sections: [{ title: 'B', lines: [words.join(' ')] }], private: false },
        width,
      );
      for (const row of text.split('\n')) expect(row.length).toBeLessThanOrEqual(width);
      expect(text.replace(/\s+/g, ' ')).toContain(words.join(' '));
    }),
  );
});

const PICTURE = { name: 'a.png', png: new Uint8Array(), altText: 'A curve.' };

test('a drawing keeps its shape, or is left out with a word where it does not fit', () => {
  const reply = { headline: 'A', sections: [], private: false, picture: { ...PICTURE, text: ['*'.repeat(60)] } };
  expect(drawn(reply, 60)).toContain('*'.repeat(60));
  expect(drawn(reply, 50)).not.toContain('*');
  expect(drawn(reply, 50).replace(/\s+/g, ' ')).toContain('needs a window of 60 columns');
});

test('marks of direction are dropped: they could turn a sentence round on a terminal', () => {
  expect(drawn({ headline: 'kale\u202E is fine\u2066', sections: [], private: false })).toBe('kale is fine');
});
