import fc from 'fast-check';
import { expect, test } from 'vitest';
import { escaped, plainLine } from '../../../../bot/chat/discord/escape.ts';
import { liveMarkup, shownText } from './markup.ts';

/** Text full of what has a meaning to Discord. */
const hostile = fc
  .array(
    fc.oneof(
      fc.constantFrom(
        ...[
          '*',
          '**',
          '_',
          '~~',
          '`',
          '```',
          '||',
          '\\',
          '[a](',
          ')',
          'https://a.example/b',
          'a.example/b',
          '# ',
          '-# ',
        ],
        ...[
          '> ',
          '>>> ',
          '- ',
          '1. ',
          '12. ',
          '+ ',
          '<@1>',
          '<@&2>',
          '<#3>',
          '<t:1:R>',
          '</a:1>',
          '<a:b:1>',
          '<id:guide>',
        ],
        ...[
          '@everyone',
          '@here',
          ':smile:',
          ':+1:',
          '\n',
          '\r\n',
          '\u2028',
          '\u202e',
          '\u0000',
          '\u200d',
          ' ',
          '🌱',
          'é',
        ],
      ),
      fc.string({ maxLength: 4 }),
      fc.string({ unit: 'binary', maxLength: 4 }),
    ),
    { maxLength: 12 },
  )
  .map((parts) => parts.join(''));

test('no text keeps any markup, mention, link or emoji alive', () => {
  fc.assert(
    fc.property(hostile, (text) => {
      expect(liveMarkup(escaped(text))).toEqual([]);
    }),
  );
});

test('what is shown is the text itself, on one line', () => {
  fc.assert(
    fc.property(hostile, (text) => {
      // A joint without width after @ that the text had already is not told from ours.
      fc.pre(!text.includes('\u200b'));
      expect(shownText(escaped(text))).toBe(plainLine(text));
    }),
  );
});

test('a shortened text keeps within its limit, keeps nothing alive and says that it was cut', () => {
  fc.assert(
    fc.property(hostile, fc.integer({ min: 2, max: 40 }), (text, most) => {
      const short = escaped(text, most);
      expect(short.length).toBeLessThanOrEqual(most);
      expect(liveMarkup(short)).toEqual([]);
      expect(short === escaped(text) || short.endsWith('…')).toBe(true);
    }),
  );
});

test('common lines of this bot stay as they are', () => {
  for (const line of [
    'Leaf low about 21 °F (17 to 25).',
    'Shut by 16:10.',
    '-5 °C, odds 1 in 50',
    '30 g/m², 2 layers: fine',
  ]) {
    expect(escaped(line)).toBe(line);
  }
});

test('time grows with the text, not faster', () => {
  const timed = (length: number) => {
    const text = '[](<@:*1.'.repeat(length / 9);
    const begun = performance.now();
    escaped(text);
    return performance.now() - begun;
  };
  timed(90_000);
  const short = Math.max(1, timed(90_000));
  expect(timed(900_000) / short).toBeLessThan(60);
});
