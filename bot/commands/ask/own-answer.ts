import { COVER_KEYS, type CoverKey } from '../../../rules/index.ts';
import type { Reply } from '../../chat/reply.ts';
import { cropVocabulary } from '../../language/crop-vocabulary.ts';
import type { Understood } from '../../language/understood.ts';
import type { Bed } from '../../store/port/beds.ts';
import type { Reader } from '../../text/reader.ts';
import { storeOf } from '../kept-for.ts';
import type { Services } from '../services.ts';
import { ownNightsReply } from '../tonight/own-nights.ts';
import { answerQuestion } from './answer-question.ts';
import { withCautions } from './answered.ts';
import { forecastNight, type OwnPlace } from './own-place.ts';

export interface OwnQuestion {
  readonly understood: Understood;
  readonly own: OwnPlace;
  readonly reader: Reader;
  readonly now: Date;
}

/** A question that hangs on the member's own place: answered from its forecast and beds, for the member alone. */
export async function ownAnswer({ understood, own, reader, now }: OwnQuestion, services: Services): Promise<Reply> {
  if (understood.crops.length === 0 && asksOfBeds(understood)) {
    const wish = { sites: [own.site], night: 'tonight' as const, reader, now };
    return ownNightsReply(wish, storeOf(services), services.forecasts);
  }
  const { night, section, credits } = await forecastNight(own, understood.when, reader, now, services);
  const answered = answerQuestion(withOwnBed(understood, own.beds), cropVocabulary(), { reader, now, night });
  const reply = withCautions(answered);
  const [verdict, ...rest] = reply.sections;
  return { ...reply, sections: [...(verdict ? [verdict] : []), section, ...rest], credits, private: true };
}

function asksOfBeds({ beds, intent, covers }: Understood): boolean {
  return (
    beds.mine || beds.numbers.length > 0 || beds.named.length > 0 || (intent === 'which-crops' && covers === undefined)
  );
}

/** "My chard": the covers and the state of the bed where it grows, unless the question says other ones. */
function withOwnBed(understood: Understood, beds: readonly Bed[]): Understood {
  const bed = bedMeant(understood, beds);
  if (bed === undefined || understood.covers !== undefined || understood.options !== undefined) return understood;
  const covers = bed.covers.flatMap((cover): CoverKey[] => COVER_KEYS.filter((key) => key === cover));
  const planting = bed.plantings.find(({ crop }) => understood.crops.some(({ id }) => id === crop));
  const hardened = understood.hardened ?? planting?.hardened;
  return { ...understood, covers, ...(hardened !== undefined && { hardened }) };
}

function bedMeant({ beds: said, crops }: Understood, beds: readonly Bed[]): Bed | undefined {
  const named = beds.find(({ name }) => said.named.includes(name));
  const numbered = beds.find((_, index) => said.numbers.includes(index + 1));
  if (named !== undefined || numbered !== undefined) return named ?? numbered;
  return beds.find(({ plantings }) => plantings.some(({ crop }) => crops.some(({ id }) => id === crop)));
}
