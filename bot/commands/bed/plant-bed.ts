import { z } from 'zod';
import type { Crop } from '../../../rules/index.ts';
import { PlainProblem } from '../../ground/errors.ts';
import { localDay } from '../../ground/times.ts';
import { capitalised, list } from '../../text/phrases.ts';
import { cropWord } from '../../text/reader.ts';
import type { Action } from '../command.ts';
import { readerFor, storeOf } from '../kept-for.ts';
import { checkedOptions, option } from '../options.ts';
import { read } from '../typed/read.ts';
import { bedLines, plantingWords } from './bed-lines.ts';
import { cropOption, neededCrops, PLANTING_OPTIONS, plantingSchema } from './bed-options.ts';
import { bedOption, ownBed } from './own-beds.ts';
import { sow } from './plantings.ts';

const bed = option('Say which bed, such as bed:Tunnel.', read);

export const PLANT_BED: Action = {
  description: 'Puts crops into a bed, or tells how far they are',
  example: 'bed plant bed:"Long tunnel" crop:mâche stage:just-set-out',
  options: [bedOption, { ...cropOption, required: true }, ...PLANTING_OPTIONS],
  private: true,
  async run(request, services) {
    const store = storeOf(services);
    const reader = await readerFor(request, services);
    const schema = z.object({ bed, crop: neededCrops(reader), ...plantingSchema });
    const { bed: typed, crop: crops, 'set-out': setOut, ...told } = checkedOptions(request, schema);
    const found = await ownBed(store, request.memberId, typed);
    await sow(store, found, {
      stage: undefined,
      hardened: undefined,
      sown: undefined,
      ...told,
      crops,
      setOut,
      today: localDay(request.now, found.site.timeZone),
    });
    const changed = await ownBed(store, request.memberId, found.id);
    return {
      headline: `${capitalised(list(crops.map((crop) => cropWord(crop, reader))))}: noted in ${changed.label}.`,
      sections: [{ lines: bedLines(changed, reader) }],
      private: true,
    };
  },
};

export const PULL_BED: Action = {
  description: 'Takes crops out of a bed: picked, cleared or lost',
  example: 'bed pull bed:"Long tunnel" crop:kale',
  options: [bedOption, { ...cropOption, description: 'What is gone; several with commas', required: true }],
  private: true,
  async run(request, services) {
    const store = storeOf(services);
    const reader = await readerFor(request, services);
    const { bed: typed, crop: crops } = checkedOptions(request, z.object({ bed, crop: neededCrops(reader) }));
    const found = await ownBed(store, request.memberId, typed);
    const planted = (crop: Crop) => found.plantings.find((planting) => planting.crop === crop.id);
    const missing = crops.find((crop) => planted(crop) === undefined);
    if (missing !== undefined) {
      const there = found.plantings.map((planting) => plantingWords(planting, reader));
      const instead = there.length === 0 ? 'nothing does' : `there is ${list(there)}`;
      throw new PlainProblem(`${capitalised(cropWord(missing, reader))} does not grow in ${found.label}; ${instead}.`);
    }
    for (const crop of crops) await store.plantings.remove(request.memberId, planted(crop)?.id ?? '');
    const changed = await ownBed(store, request.memberId, found.id);
    return {
      headline: `${capitalised(list(crops.map((crop) => cropWord(crop, reader))))}: out of ${changed.label}.`,
      sections: [{ lines: bedLines(changed, reader) }],
      private: true,
    };
  },
};
