import { createRequire } from 'node:module';
import { Resvg } from '@resvg/resvg-js';
import { expect, test } from 'vitest';
import { FONT_FAMILY } from '../../../bot/charts/picture.ts';
import { fitted, textWidth } from '../../../bot/charts/text-width.ts';

const require = createRequire(import.meta.url);
const FONT = '@expo-google-fonts/atkinson-hyperlegible';
const fontFiles = [
  `${FONT}/400Regular/AtkinsonHyperlegible_400Regular.ttf`,
  `${FONT}/700Bold/AtkinsonHyperlegible_700Bold.ttf`,
].map((file) => require.resolve(file));

function drawnWidth(text: string, size: number, weight: number): number {
  const words = `<text x="9" y="99" font-family="${FONT_FAMILY}" font-size="${size}" font-weight="${weight}">${text}</text>`;
  const svg = `<svg xmlns="http://www.w3.org/2000/svg" width="3000" height="200">${words}</svg>`;
  return new Resvg(svg, { font: { fontFiles, loadSystemFonts: false } }).getBBox()?.width ?? Number.NaN;
}

test.each([
  'spinach marks 12°',
  'Brussels sprouts die −14.5°',
  'Winter purslane dies −14°',
  '10:25 am',
  'WWWWW MMMMM',
  'illicit little flit',
  'Leaf low 21 °F (17 to 25), outside 14 °F',
  '0123456789',
])('%s is drawn no wider than reckoned, and not much narrower', (text) => {
  for (const [weight, bold] of [
    [400, false],
    [700, true],
  ] as const) {
    const drawn = drawnWidth(text, 40, weight);
    expect(drawn).toBeGreaterThan(50);
    expect(textWidth(text, 40, bold)).toBeGreaterThanOrEqual(drawn);
    expect(textWidth(text, 40, bold)).toBeLessThan(1.8 * drawn);
  }
});

test('a text too long ends in an ellipsis and then fits', () => {
  const name = 'The very long tunnel behind the second compost heap';
  const short = fitted(name, 32, 300, true);
  expect(short.endsWith('…')).toBe(true);
  expect(textWidth(short, 32, true)).toBeLessThanOrEqual(300);
  expect(fitted('Frame', 32, 300)).toBe('Frame');
});
