import fc from 'fast-check';
import { expect, test } from 'vitest';
import { typedLow } from '../../../../bot/commands/typed/low.ts';
import { typedName } from '../../../../bot/commands/typed/name.ts';

test.each([
  ['14', 'us', -10],
  ['14F', 'metric', -10],
  ['14 °F', 'us', -10],
  ['-10', 'metric', -10],
  ['-10C', 'us', -10],
  ['−10 °C', 'us', -10],
  ['20 to 25 F', 'us', -6.67],
] as const)('%s (%s) is a low', (text, units, lowC) => {
  const low = typedLow(text, units);
  expect(low.ok && low.value.lowC).toBeCloseTo(lowC, 1);
});

test.each([
  ['warm', 'us', 'write it like 14 °F or −10 °C.'],
  ['warm', 'metric', 'write it like −10 °C or 14 °F.'],
  ['', 'us', 'I cannot read ""'],
  ['-200', 'us', 'name a low between −49 and 77 °F.'],
  ['-60 C', 'metric', 'name a low between −45 and 25 °C.'],
  ['30 C', 'metric', 'name a low between −45 and 25 °C.'],
] as const)('"%s" (%s) is refused with what would be right', (text, units, words) => {
  const low = typedLow(text, units);
  expect(low.ok ? '' : low.problem).toContain(words);
});

test.each([
  ['  Frame   by\nthe wall ', 'Frame by the wall'],
  ['Beet 3', 'Beet 3'],
  ['温室', '温室'],
])('%s is a name', (text, name) => {
  const found = typedName(text, 'a bed');
  expect(found.ok && found.value).toBe(name);
});

test.each([
  ['', 'Give a bed a name'],
  ['***', 'Give a bed a name'],
  ['\u0000', 'Give a bed a name'],
  ['bed \ud800', 'half a character'],
  ['b'.repeat(41), 'at most 40 characters'],
])('%j is no name', (text, words) => {
  const found = typedName(text, 'a bed');
  expect(found.ok ? '' : found.problem).toContain(words);
});

test('a name that is taken is one line that the store can keep', () => {
  fc.assert(
    fc.property(fc.string({ unit: 'binary', maxLength: 60 }), (text) => {
      const found = typedName(text, 'a bed');
      if (!found.ok) return;
      expect(found.value).toMatch(/^[^\p{Cc}\p{Cs}]+$/u);
      expect([...found.value].length).toBeLessThanOrEqual(40);
    }),
  );
});
