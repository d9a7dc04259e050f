import { nightFrom } from '../../rules/index.ts';
import { nightPicture } from '../commands/tonight/curve-button.ts';
import { nightOutlook } from '../outlook/night-outlook.ts';
import type { Reply } from '../talk/reply.ts';
import { outlookReply } from '../text/outlook-reply.ts';
import type { Reader } from '../text/reader.ts';
import { SAMPLE_GARDEN, SAMPLE_NOW, sampleForecast } from './sample-garden.ts';

/** The warning for the invented sample garden on its invented forecast: the first thing a newcomer sees. */
export async function sampleWarning(reader: Reader): Promise<Reply> {
  const night = nightFrom(SAMPLE_NOW, SAMPLE_GARDEN.latitudeDeg, SAMPLE_GARDEN.longitudeDeg);
  if (night === undefined) throw new RangeError('the sample garden lies where the sun does not set');
  const outlook = nightOutlook(SAMPLE_GARDEN, sampleForecast(), night, SAMPLE_NOW);
  const official = { kind: 'not-covered' } as const;
  const reply = outlookReply({ outlook, official, reader, now: SAMPLE_NOW, nightWords: 'tonight' });
  const [first] = outlook.beds;
  const picture = first && (await nightPicture(outlook, first, reader));
  return { ...reply, ...(picture && { picture }) };
}
