import { type Crop, cropById, nightVerdict, OUTCOMES, type OutcomeKind } from '../../../rules/index.ts';
import type { Planting } from '../../store/port/beds.ts';
import type { Prediction } from '../../store/port/readings.ts';
import type { Store } from '../../store/store.ts';
import type { Button, Reply } from '../../talk/reply.ts';
import { cropWord, type Reader } from '../../text/reader.ts';
import type { OwnBed } from '../bed/own-beds.ts';

export const OUTCOME_PREFIX = 'outcome:';
/** Not looked, or not told: on to the next one. */
export const SKIP = 'skip';

/** As people say what they saw. */
export const OUTCOME_WORDS: Readonly<Record<OutcomeKind, string>> = {
  'no-mark': 'no mark',
  'leaf-burn': 'leaf burn',
  lost: 'lost',
};

/** With less chance of a mark than this a night says nothing of a crop (judgement). */
const WORTH_ASKING_CHANCE = 0.1;

export interface AskedBed {
  readonly store: Pick<Store, 'predictions' | 'outcomes' | 'readings'>;
  readonly memberId: string;
  readonly bed: OwnBed;
  /** Local day of the evening. */
  readonly night: string;
  readonly reader: Reader;
}

/** Asks how the next crop of a bed came through a night that put it at risk; undefined where there is none to ask about. */
export async function outcomeQuestion(asked: AskedBed, after?: Crop): Promise<Reply | undefined> {
  const { bed, night, reader } = asked;
  const crops = await cropsToAsk(asked);
  const crop = crops[after === undefined ? 0 : crops.findIndex(({ id }) => id === after.id) + 1];
  if (crop === undefined) return undefined;
  const id = (kind: string) => `${OUTCOME_PREFIX}${bed.id}:${night}:${crop.id}:${kind}`;
  const buttons: Button[] = [
    ...OUTCOMES.map((kind) => ({ id: id(kind), label: sentenceCase(OUTCOME_WORDS[kind]) })),
    { id: id(SKIP), label: 'Not looked' },
  ];
  return {
    headline: `${bed.label}, ${cropWord(crop, reader)}: how did it come through the night of ${night}?`,
    sections: [],
    buttons,
    private: true,
  };
}

/** Crops at risk that night, the answered ones left out. */
async function cropsToAsk({ store, memberId, bed, night }: AskedBed): Promise<readonly Crop[]> {
  const told = (await store.predictions.latest([bed.id], night)).get(bed.id);
  if (told === undefined) return [];
  const found: Crop[] = [];
  for (const planting of bed.plantings) {
    const crop = cropById(planting.crop);
    // What grows in the soil is judged by the soil, which is not kept; its harm shows weeks later.
    if (crop === undefined || crop.judgedBy !== 'leaf' || !wasAtRisk(crop, planting, told)) continue;
    const answers = await store.outcomes.ofMember(memberId, crop.id);
    if (!answers.some((answer) => answer.bedId === bed.id && answer.night === night)) found.push(crop);
  }
  return found;
}

function wasAtRisk(crop: Crop, planting: Planting, { leafLowC, leafSpreadK }: Prediction): boolean {
  const { odds } = nightVerdict({
    crop,
    hardeningIndex: hardeningOf(crop, planting),
    leafLowC,
    surfaceLowC: leafLowC,
    sdK: leafSpreadK,
  });
  return 1 - odds.noMark > WORTH_ASKING_CHANCE;
}

/** As followed, else as the grower says, else hardened as for any frost night. */
export function hardeningOf(crop: Crop, { hardening, hardened, stage }: Planting): number {
  if (!crop.hardens) return 0;
  return hardening?.fraction ?? (hardened === undefined ? Number(stage !== 'just-set-out') : Number(hardened));
}

function sentenceCase(words: string): string {
  return `${words.charAt(0).toUpperCase()}${words.slice(1)}`;
}
