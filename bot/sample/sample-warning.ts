import { nightPicture } from '../commands/tonight/curve-button.ts';
import type { NightOrWeek } from '../commands/tonight/night-option.ts';
import { weekWithPicture } from '../commands/tonight/own-week.ts';
import { namedNight } from '../outlook/named-night.ts';
import { nightOutlook } from '../outlook/night-outlook.ts';
import { weekOutlook } from '../outlook/week-outlook.ts';
import type { Reply } from '../talk/reply.ts';
import { outlookReply } from '../text/outlook-reply.ts';
import type { Reader } from '../text/reader.ts';
import { SAMPLE_GARDEN, SAMPLE_NOW, sampleForecast } from './sample-garden.ts';

const official = { kind: 'not-covered' } as const;

/** A night or the week of the invented sample garden on its invented forecast: the first thing a newcomer sees. */
export async function sampleWarning(reader: Reader, asked: NightOrWeek = 'tonight'): Promise<Reply> {
  if (asked === 'week') return sampleWeek(reader);
  const night = namedNight(asked, SAMPLE_NOW, SAMPLE_GARDEN);
  if (night === undefined) throw new RangeError('the sample garden lies where the sun does not set');
  const outlook = nightOutlook(SAMPLE_GARDEN, sampleForecast(), night.span, SAMPLE_NOW);
  const reply = outlookReply({ outlook, official, reader, now: SAMPLE_NOW, nightWords: night.words });
  const [first] = outlook.beds;
  const picture = first && (await nightPicture(outlook, first, reader));
  return { ...reply, ...(picture && { picture }) };
}

async function sampleWeek(reader: Reader): Promise<Reply> {
  const week = weekOutlook(SAMPLE_GARDEN, sampleForecast(), SAMPLE_NOW);
  if (week === undefined) throw new RangeError('the sample garden lies where the sun does not set');
  return weekWithPicture({ week, official, reader, now: SAMPLE_NOW });
}
