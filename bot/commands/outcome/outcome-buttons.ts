import { cropById, OUTCOMES } from '../../../rules/index.ts';
import { PlainProblem } from '../../ground/errors.ts';
import { localDay } from '../../ground/times.ts';
import { nightLater } from '../../learning/night-days.ts';
import type { Button, Reply } from '../../talk/reply.ts';
import type { Press } from '../../talk/request.ts';
import { cropWord } from '../../text/reader.ts';
import { ownBed, ownBeds } from '../bed/own-beds.ts';
import type { ButtonHandler } from '../command.ts';
import { readerFor, storeOf } from '../kept-for.ts';
import type { Services } from '../services.ts';
import { hardinessLine, keepOutcome } from './keep-outcome.ts';
import { OUTCOME_PREFIX, OUTCOME_WORDS, outcomeQuestion, SKIP } from './outcome-question.ts';

const HOW_IT_WENT = 'how-it-went';

/** Under the morning post after a risky night: asks the pressing member about the own beds, one after the other. */
export const howItWentButton: Button = { id: HOW_IT_WENT, label: 'How did it go?' };

export const HOW_IT_WENT_BUTTON: ButtonHandler = {
  prefix: HOW_IT_WENT,
  private: true,
  async press(press, services) {
    const next = await nextQuestion(press, services);
    return next ?? { headline: 'None of your crops was at risk last night.', sections: [], private: true };
  },
};

/** What was seen of one crop, pressed under its question. */
export const OUTCOME_BUTTON: ButtonHandler = {
  prefix: OUTCOME_PREFIX,
  private: true,
  async press(press, services) {
    const [bedId = '', night = '', cropId = '', kind = ''] = press.buttonId.slice(OUTCOME_PREFIX.length).split(':');
    const store = storeOf(services);
    const bed = await ownBed(store, press.memberId, bedId);
    const crop = cropById(cropId);
    const seen = OUTCOMES.find((each) => each === kind);
    if (crop === undefined || (seen === undefined && kind !== SKIP)) {
      throw new PlainProblem('That button is from an older message. Tell me with /outcome instead.');
    }
    const reader = await readerFor(press, services);
    if (seen === undefined) {
      const same = { store, memberId: press.memberId, bed, night, reader };
      const next = (await outcomeQuestion(same, crop)) ?? (await nextQuestion(press, services, bed.id));
      return next ?? { headline: 'That was all. Thank you.', sections: [], private: true };
    }
    await keepOutcome(store, { bed, crop, night, seen, now: press.now });
    const line = await hardinessLine(store, { bed, crop, now: press.now }, reader);
    return noted(
      `Noted: ${cropWord(crop, reader)} in ${bed.label}, ${OUTCOME_WORDS[seen]}.`,
      line,
      await nextQuestion(press, services),
    );
  },
};

function noted(headline: string, line: string | undefined, next: Reply | undefined): Reply {
  const lines = [...(line === undefined ? [] : [line]), ...(next === undefined ? [] : [next.headline])];
  return {
    headline,
    sections: lines.length === 0 ? [] : [{ lines }],
    ...(next?.buttons && { buttons: next.buttons }),
    private: true,
  };
}

/** About last night, bed after bed; after the given one, if any. */
async function nextQuestion(press: Press, services: Services, afterBedId?: string): Promise<Reply | undefined> {
  const store = storeOf(services);
  const { memberId, now } = press;
  const reader = await readerFor(press, services);
  const beds = await ownBeds(store, memberId);
  for (const bed of beds.slice(beds.findIndex(({ id }) => id === afterBedId) + 1)) {
    const night = nightLater(localDay(now, bed.site.timeZone), -1);
    const question = await outcomeQuestion({ store, memberId, bed, night, reader });
    if (question !== undefined) return question;
  }
  return undefined;
}
