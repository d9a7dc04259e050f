import { z } from 'zod';
import { cropVocabulary } from '../language/crop-vocabulary.ts';
import type { Understood } from '../language/understood.ts';
import type { Reply } from '../talk/reply.ts';
import type { Request } from '../talk/request.ts';
import { answerQuestion } from './ask/answer-question.ts';
import { withCautions } from './ask/answered.ts';
import { statedNight } from './ask/asked-night.ts';
import type { Command } from './command.ts';
import { readerFor } from './kept-for.ts';
import { checkedOptions, maybe, option, yesNo } from './options.ts';
import type { Services } from './services.ts';
import { suggestCovers } from './suggest/suggest-covers.ts';
import { suggestCrops } from './suggest/suggest-crops.ts';
import { typedCovers } from './typed/covers.ts';
import { typedCrops } from './typed/crops.ts';
import { typedLow } from './typed/low.ts';

export const CHECK: Command = {
  name: 'check',
  description: 'Does it live? Fill in crop, low and covers',
  action: {
    description: 'Does it live? Fill in crop, low and covers',
    example: 'check crop:spinach low:14F covers:"blanket over low tunnel"',
    options: [
      {
        name: 'crop',
        description: 'Such as spinach; several with commas',
        kind: 'text',
        required: true,
        suggest: suggestCrops,
      },
      { name: 'low', description: 'How cold it gets outside, such as 14F or -10C', kind: 'text', required: true },
      {
        name: 'covers',
        description: 'From the outside in, such as blanket over low tunnel; none unless you say',
        kind: 'text',
        suggest: suggestCovers,
      },
      { name: 'hardened', description: 'Have the plants grown cold for some weeks?', kind: 'yes-no' },
    ],
    private: false,
    run: check,
  },
};

/** The same answer as to the question in words. */
async function check(request: Request, services: Services): Promise<Reply> {
  const reader = await readerFor(request, services);
  const schema = z.object({
    crop: option('Name the crop, such as crop:spinach.', (text) => typedCrops(text, reader)),
    low: option('Say how cold it gets, such as low:14F.', (text) => typedLow(text, reader.units)),
    covers: maybe((text) => typedCovers(text, reader)),
    hardened: maybe(yesNo('hardened')),
  });
  const { crop: crops, low, covers, hardened } = checkedOptions(request, schema);
  const understood: Understood = {
    intent: 'survive',
    asked: 'survive',
    crops: crops.map(({ id, name }) => ({ id, said: name.american })),
    unknownCrops: [],
    ...low,
    covers: covers ?? [],
    unknownCovers: [],
    ...(hardened !== undefined && { hardened }),
    beds: { mine: false, numbers: [], named: [] },
    readAs: [],
    cautionTopics: [],
    choices: [],
  };
  const night = statedNight(low.lowC, {}, request.now);
  return withCautions(answerQuestion(understood, cropVocabulary(), { reader, now: request.now, night }));
}
