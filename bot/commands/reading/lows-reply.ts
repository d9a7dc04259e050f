import { isInside } from '../../../rules/index.ts';
import { PlainProblem } from '../../ground/errors.ts';
import { localDay } from '../../ground/times.ts';
import { temperature, temperatureWithRange } from '../../ground/units.ts';
import type { Prediction } from '../../store/port/readings.ts';
import type { Store } from '../../store/store.ts';
import type { Reply } from '../../talk/reply.ts';
import type { Request } from '../../talk/request.ts';
import { list } from '../../text/phrases.ts';
import type { Reader } from '../../text/reader.ts';
import type { OwnBed } from '../bed/own-beds.ts';
import { outcomeQuestion } from '../outcome/outcome-question.ts';
import { DOUBT_WORDS, doubtButtons } from './doubts.ts';
import { weighed } from './night-of-bed.ts';
import { type ReadingOptions, typedNight } from './reading-options.ts';
import { taughtLines } from './taught-lines.ts';

export interface LowsEntered {
  readonly bed: OwnBed;
  readonly options: ReadingOptions;
  readonly request: Request;
  readonly reader: Reader;
}

/** Keeps the lows of one night, and says how they agree with what had been told. */
export async function lowsReply({ bed, options, request, reader }: LowsEntered, store: Store): Promise<Reply> {
  const { memberId, now } = request;
  const night = typedNight(options.night, localDay(now, bed.site.timeZone));
  if (!night.ok) throw new PlainProblem(night.problem);
  const lows = { night: night.value, outsideLowC: options.outside, underCoverLowC: options.inside };
  const entered = await weighed(store, bed, lows, {
    ...(options.covers && { covers: options.covers }),
    ...(options['same-covers'] !== undefined && { same: options['same-covers'] }),
  });
  if (entered === undefined) {
    throw new PlainProblem(
      `${bed.label} had other covers then. Say what lay over it that night with covers:, such as covers:"low tunnel".`,
    );
  }
  const origin = request.action === 'form' ? 'form' : 'typed';
  await store.readings.record(memberId, [{ ...entered.facts, origin }], now);
  const { doubt } = entered.facts;
  if (doubt !== undefined) return doubtReply(bed, night.value, doubt, memberId, store);
  const question = await outcomeQuestion({ store, memberId, bed, night: night.value, reader });
  return {
    headline: `Noted for ${bed.label}, night of ${night.value}: ${lowWords(lows, reader)}.`,
    sections: [
      { lines: toldLines(lows, entered.told, reader) },
      { lines: await taughtLines(store, bed, now, reader) },
      ...(question === undefined ? [] : [{ lines: [question.headline] }]),
    ].filter(({ lines }) => lines.length > 0),
    ...(question?.buttons && { buttons: question.buttons }),
    private: true,
  };
}

async function doubtReply(
  bed: OwnBed,
  night: string,
  doubt: keyof typeof DOUBT_WORDS,
  memberId: string,
  store: Store,
): Promise<Reply> {
  const kept = (await store.readings.ofBed(memberId, bed.id, night)).find((each) => each.night === night);
  return {
    headline: DOUBT_WORDS[doubt],
    sections: [{ lines: [`I keep it apart until you say: ${bed.label}, night of ${night}.`] }],
    buttons: doubtButtons(bed.id, kept?.id),
    private: true,
  };
}

interface Lows {
  readonly outsideLowC: number | undefined;
  readonly underCoverLowC: number | undefined;
}

function lowWords({ outsideLowC, underCoverLowC }: Lows, { units }: Reader): string {
  const words = [
    underCoverLowC === undefined ? undefined : `${temperature(underCoverLowC, units)} under the cover`,
    outsideLowC === undefined ? undefined : `${temperature(outsideLowC, units)} outside`,
  ];
  return list(words.filter((each) => each !== undefined));
}

function toldLines(lows: Lows, told: Prediction | undefined, { units }: Reader): string[] {
  if (told === undefined) {
    return [
      'I had told nothing of that night, so the bed learns nothing from it. Ask /tonight in the evening and it will.',
    ];
  }
  const line = (what: string, lowC: number | undefined, toldLowC: number, toldSdK: number) => {
    if (lowC === undefined) return [];
    const inside = isInside({ toldLowC, toldSdK, measuredLowC: lowC });
    return [
      `I had told ${temperatureWithRange(toldLowC, toldSdK, units)} ${what}: ${inside ? 'inside the range' : 'outside the range'}.`,
    ];
  };
  return [
    ...line('under the cover', lows.underCoverLowC, told.underCoverLowC, told.underCoverSpreadK),
    ...line('outside', lows.outsideLowC, told.outsideLowC, told.outsideSpreadK),
  ];
}
