import { inflateSync } from 'node:zlib';
import { Resvg } from '@resvg/resvg-js';
import { expect, test } from 'vitest';
import { pngOf } from '../../../bot/charts/picture.ts';
import { pngFrom } from '../../../bot/charts/png.ts';

const SVG = (colour: string) =>
  `<svg xmlns="http://www.w3.org/2000/svg" width="30" height="20"><rect width="30" height="20" fill="white"/><circle cx="9" cy="9" r="6" fill="${colour}"/></svg>`;

test('an independent reader finds every pixel again', async () => {
  const drawn = new Resvg(SVG('teal')).render();
  const png = await pngFrom({ rgba: drawn.pixels, width: 30, height: 20 });
  const image = `<image width="30" height="20" href="data:image/png;base64,${Buffer.from(png).toString('base64')}"/>`;
  const again = new Resvg(`<svg xmlns="http://www.w3.org/2000/svg" width="30" height="20">${image}</svg>`).render();
  expect(Buffer.from(again.pixels).equals(Buffer.from(drawn.pixels))).toBe(true);
});

test('the packed rows hold a filter byte and four bytes a pixel', async () => {
  const png = Buffer.from(await pngFrom({ rgba: new Uint8Array(3 * 2 * 4).fill(7), width: 3, height: 2 }));
  const start = png.indexOf('IDAT') + 4;
  const length = png.readUInt32BE(start - 8);
  expect([...inflateSync(png.subarray(start, start + length))]).toEqual(
    [0, 1].flatMap(() => [0, ...new Array<number>(12).fill(7)]),
  );
});

test('the same drawing is made once', () => {
  expect(pngOf(SVG('red'))).toBe(pngOf(SVG('red')));
  expect(pngOf(SVG('red'))).not.toBe(pngOf(SVG('blue')));
});

test('the oldest drawings are forgotten', () => {
  const first = pngOf(SVG('#000001'));
  for (let index = 2; index < 80; index += 1) void pngOf(SVG(`#0000${String(index).padStart(2, '0')}`));
  expect(pngOf(SVG('#000001'))).not.toBe(first);
});
