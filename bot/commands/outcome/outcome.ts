import { z } from 'zod';
import { OUTCOMES } from '../../../rules/index.ts';
import { PlainProblem } from '../../ground/errors.ts';
import { localDay } from '../../ground/times.ts';
import type { Reply } from '../../talk/reply.ts';
import type { Request } from '../../talk/request.ts';
import { capitalised } from '../../text/phrases.ts';
import { cropWord } from '../../text/reader.ts';
import { bedOption, ownBed } from '../bed/own-beds.ts';
import type { Command } from '../command.ts';
import { readerFor, storeOf } from '../kept-for.ts';
import { checkedOptions, maybe, oneOf, option } from '../options.ts';
import { typedNight } from '../reading/reading-options.ts';
import type { Services } from '../services.ts';
import { suggestCrops } from '../suggest/suggest-crops.ts';
import { typedCrops } from '../typed/crops.ts';
import { read } from '../typed/read.ts';
import { hardinessLine, keepOutcome } from './keep-outcome.ts';
import { OUTCOME_WORDS } from './outcome-question.ts';

export const OUTCOME: Command = {
  name: 'outcome',
  description: 'Tell how a crop came through a cold night: its limits move with your garden',
  action: {
    description: 'Tell how a crop came through a cold night: its limits move with your garden',
    example: 'outcome bed:"Long tunnel" crop:kale saw:leaf-burn',
    options: [
      bedOption,
      { name: 'crop', description: 'Which crop', kind: 'text', required: true, suggest: suggestCrops },
      {
        name: 'saw',
        description: 'What you saw, a day or two after',
        kind: 'text',
        required: true,
        choices: OUTCOMES.map((value) => ({ label: capitalised(OUTCOME_WORDS[value]), value })),
      },
      { name: 'night', description: 'Last night unless you say; or the date of its evening', kind: 'text' },
    ],
    private: true,
    run: outcome,
  },
};

async function outcome(request: Request, services: Services): Promise<Reply> {
  const store = storeOf(services);
  const reader = await readerFor(request, services);
  const schema = z.object({
    bed: option('Say which bed, such as bed:"Long tunnel".', read),
    crop: option('Name the crop, such as crop:spinach.', (text) => typedCrops(text, reader)),
    saw: option('Say what you saw: no-mark, leaf-burn or lost.', oneOf('saw', OUTCOMES)),
    night: maybe(read),
  });
  const options = checkedOptions(request, schema);
  const { memberId, now } = request;
  const bed = await ownBed(store, memberId, options.bed);
  const night = typedNight(options.night, localDay(now, bed.site.timeZone));
  if (!night.ok) throw new PlainProblem(night.problem);
  const [crop, ...others] = options.crop;
  if (crop === undefined || others.length > 0) throw new PlainProblem('Name one crop at a time.');
  if (crop.judgedBy !== 'leaf') {
    throw new PlainProblem('What grows in the soil shows its harm weeks later; I follow leaves only.');
  }
  await keepOutcome(store, { bed, crop, night: night.value, seen: options.saw, now });
  const line = await hardinessLine(store, { bed, crop, now }, reader);
  return {
    headline: `Noted: ${cropWord(crop, reader)} in ${bed.label}, ${OUTCOME_WORDS[options.saw]}, night of ${night.value}.`,
    sections: line === undefined ? [] : [{ lines: [line] }],
    private: true,
  };
}
