import { cropById } from '../../../rules/index.ts';
import type { Understood } from '../../language/understood.ts';
import type { Bed } from '../../store/port/beds.ts';
import type { Reply } from '../../talk/reply.ts';
import { closingReply, pickingReply } from '../../text/opening-reply.ts';
import { storeOf } from '../kept-for.ts';
import type { Services } from '../services.ts';
import { ownDay, ownDayReply } from '../vent/own-day.ts';
import { ownWinterReply } from '../winter/winter.ts';
import type { OwnQuestion } from './own-answer.ts';

const TOMORROW = /\btomorrow\b/i;

const OF_A_DAY: ReadonlySet<Understood['intent']> = new Set(['vent', 'close', 'pick', 'season']);

/** When to open, shut, pick and sow hangs on the member's own place; with a low named, the rules of the trade answer. */
export function asksOfDay({ intent, lowC, problem, missing, beforeNight, advice }: Understood): boolean {
  const isOther = beforeNight === true || (advice !== undefined && advice !== 'uncover-after');
  return OF_A_DAY.has(intent) && !isOther && problem === undefined && missing === undefined && lowC === undefined;
}

/** Opening, shutting, picking and sowing at the member's own place, for the member alone. */
export async function ownDayAnswer(
  { understood, own, reader, now }: OwnQuestion,
  question: string,
  services: Services,
): Promise<Reply> {
  const { site, beds } = own;
  if (understood.intent === 'season') {
    const crops = understood.crops.flatMap(({ id }) => cropById(id) ?? []);
    return ownWinterReply({ site, reader, now, crops }, storeOf(services));
  }
  // Of a day, "tomorrow" is understood as a morning, and so is "this morning".
  const day = TOMORROW.test(question) ? { day: 'tomorrow' as const } : {};
  const wish = { site, reader, now, only: bedsMeant(understood, beds), ...day };
  if (understood.intent === 'vent') return ownDayReply(wish, services);
  const telling = await ownDay(wish, services);
  return understood.intent === 'close' ? closingReply(telling) : pickingReply(telling);
}

/** The beds that are named, else those with the crops that are, else those under the covers that are. */
function bedsMeant({ beds: said, covers = [], crops }: Understood, beds: readonly Bed[]): (bed: Bed) => boolean {
  const numbered = new Set(beds.filter((_, index) => said.numbers.includes(index + 1)).map(({ id }) => id));
  if (said.named.length > 0 || numbered.size > 0) {
    return ({ id, name }) => numbered.has(id) || said.named.includes(name);
  }
  const ids = new Set(crops.map(({ id }) => id));
  const hasCrop = ({ plantings }: Bed) => plantings.some(({ crop }) => ids.has(crop));
  if (beds.some(hasCrop)) return hasCrop;
  return (bed) => covers.some((cover) => cover !== 'hoops' && bed.covers.includes(cover));
}
