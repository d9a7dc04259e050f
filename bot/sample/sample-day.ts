import { dayPicture } from '../commands/vent/own-day.ts';
import { nextDay, openingPlan } from '../outlook/opening-plan.ts';
import type { Reply } from '../talk/reply.ts';
import { openingReply } from '../text/opening-reply.ts';
import type { Reader } from '../text/reader.ts';
import { SAMPLE_GARDEN, SAMPLE_NOW, sampleForecast } from './sample-garden.ts';

/** The opening plan of the invented sample garden on its invented forecast. */
export async function sampleDay(reader: Reader): Promise<Reply> {
  const day = nextDay(SAMPLE_NOW, SAMPLE_GARDEN);
  if (day === undefined) throw new RangeError('the sample garden lies where the sun does not rise');
  const plan = openingPlan(SAMPLE_GARDEN, sampleForecast(), day, SAMPLE_NOW);
  const picture = await dayPicture({ plan, reader });
  return { ...openingReply({ plan, reader, now: SAMPLE_NOW, dayWords: 'today' }), ...(picture && { picture }) };
}
