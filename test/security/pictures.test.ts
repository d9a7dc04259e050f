import { expect, test } from 'vitest';
import { curveSvg } from '../../bot/charts/curve-svg.ts';
import { nightChart } from '../../bot/charts/night-chart.ts';
import { pngOf } from '../../bot/charts/picture.ts';
import { nightOutlook } from '../../bot/outlook/night-outlook.ts';
import { SAMPLE_GARDEN, SAMPLE_NOW, sampleForecast } from '../../bot/sample/sample-garden.ts';
import { readerOf } from '../../bot/text/reader.ts';
import { nightFrom } from '../../rules/index.ts';

/** With more decimals than any coordinate of the drawing has. */
const PLACE = { latitudeDeg: 43.73195, longitudeDeg: -77.86213, elevationM: 187.4312 };

/** Where things are drawn, which says nothing of the garden. */
const GEOMETRY = / (?:d|points|x|y|x1|x2|y1|y2|cx|cy|r|width|height|viewBox|transform|stroke-width|font-size)="[^"]*"/g;

/** Names of a PNG's chunks; a place may hide in texts and in camera data beside the pixels. */
function chunks(png: Uint8Array): readonly string[] {
  const bytes = Buffer.from(png);
  const found: string[] = [];
  for (let at = 8; at + 8 <= bytes.length; at += bytes.readUInt32BE(at) + 12) {
    found.push(bytes.toString('latin1', at + 4, at + 8));
  }
  return found;
}

test('a picture holds pixels and nothing else, and neither they nor its words tell where the garden is', async () => {
  const night = nightFrom(SAMPLE_NOW, PLACE.latitudeDeg, PLACE.longitudeDeg);
  if (night === undefined) throw new Error('no night there');
  const outlook = nightOutlook({ ...SAMPLE_GARDEN, ...PLACE }, sampleForecast(), night, SAMPLE_NOW);
  const [bed] = outlook.beds;
  if (bed === undefined) throw new Error('no bed there');
  const svg = curveSvg(nightChart(outlook, bed, readerOf('en-US')));
  expect(svg).toContain(bed.bed.name);
  // Places of the drawing have two decimals, and may be any number: the place itself would have more.
  for (const secret of ['43.731', '77.862', '187.431', 'America/', 'New_York']) expect(svg).not.toContain(secret);
  const words = svg.replace(GEOMETRY, '');
  expect(words).toContain(bed.bed.name);
  for (const secret of ['43.7', '77.8', '77.9', '187.4']) expect(words).not.toContain(secret);
  expect(new Set(chunks(await pngOf(svg)))).toEqual(new Set(['IHDR', 'IDAT', 'IEND']));
});
