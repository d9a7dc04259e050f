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
  for (const secret of ['43.73', '77.86', '187.43', 'America/', 'New_York'])
    expect(svg.replace(/<[^>]+>/g, ' ')).not.toContain(secret);
  expect(new Set(chunks(await pngOf(svg)))).toEqual(new Set(['IHDR', 'IDAT', 'IEND']));
});
