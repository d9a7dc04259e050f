import { type Crop, hardinessLearned, type OutcomeKind } from '../../../rules/index.ts';
import { PlainProblem } from '../../ground/errors.ts';
import { difference } from '../../ground/units.ts';
import { learnedSite } from '../../learning/learned-site.ts';
import type { Store } from '../../store/store.ts';
import { othersLine } from '../../text/learned-words.ts';
import { capitalised, counted } from '../../text/phrases.ts';
import { cropWord, type Reader } from '../../text/reader.ts';
import type { OwnBed } from '../bed/own-beds.ts';
import { hardeningOf } from './outcome-question.ts';

/** Less is not worth a word. [K] */
const WORTH_SAYING_K = 0.5;

export interface SeenThere {
  readonly bed: OwnBed;
  readonly crop: Crop;
  readonly night: string;
  readonly seen: OutcomeKind;
  readonly now: Date;
}

/**
 * Keeps how a crop came through a night.
 *
 * @throws PlainProblem when nothing is known of the night, or the crop does not grow there.
 */
export async function keepOutcome(store: Store, { bed, crop, night, seen, now }: SeenThere): Promise<void> {
  const planting = bed.plantings.find((each) => each.crop === crop.id);
  if (planting === undefined) throw new PlainProblem(`That crop does not grow in ${bed.label}.`);
  const told = (await store.predictions.latest([bed.id], night)).get(bed.id);
  if (told === undefined) {
    throw new PlainProblem(
      `I had told nothing of ${bed.label} for the night of ${night}, so I do not know how cold its leaves were.`,
    );
  }
  const [reading] = (await store.readings.ofBed(bed.memberId, bed.id, night)).filter((each) => each.night === night);
  const isSure = reading !== undefined && reading.doubt === undefined && reading.covers.join() === told.covers.join();
  const readC = isSure ? reading.underCoverLowC : undefined;
  await store.outcomes.record(
    bed.memberId,
    {
      ...{ bedId: bed.id, night, crop: crop.id, outcome: seen },
      // What the thermometer showed above or below what was told, the leaf had too.
      leafLowC: told.leafLowC + (readC === undefined ? 0 : readC - told.underCoverLowC),
      hardeningFraction: hardeningOf(crop, planting),
    },
    now,
  );
}

/** "Tatsoi has proved 1 °C hardier here than the table says, from 4 nights." */
export async function hardinessLine(
  store: Store,
  { bed, crop, now }: Pick<SeenThere, 'bed' | 'crop' | 'now'>,
  reader: Reader,
): Promise<string | undefined> {
  const planting = bed.plantings.find((each) => each.crop === crop.id);
  const { outcomes } = await learnedSite(store, { site: bed.site, beds: [bed] }, now);
  const seen = outcomes.get(crop.id) ?? [];
  const learned = planting && hardinessLearned(crop, hardeningOf(crop, planting), seen);
  if (learned === undefined || Math.abs(learned.hardierK) < WORTH_SAYING_K) return undefined;
  if (learned.othersCount !== undefined) return othersLine(crop, learned, reader);
  const ownNights = seen.filter(({ otherIndex }) => otherIndex === undefined).length;
  const by = difference(Math.abs(learned.hardierK), reader.units);
  const which = learned.hardierK > 0 ? 'hardier' : 'more tender';
  return `${capitalised(cropWord(crop, reader))} has proved ${by} ${which} here than the table says, from ${counted(ownNights, 'night')}.`;
}
