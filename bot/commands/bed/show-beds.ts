import { z } from 'zod';
import { PlainProblem } from '../../ground/errors.ts';
import { counted } from '../../text/phrases.ts';
import type { Action } from '../command.ts';
import { readerFor, storeOf } from '../kept-for.ts';
import { checkedOptions, maybe, option } from '../options.ts';
import { read } from '../typed/read.ts';
import { bedLines, bedSection } from './bed-lines.ts';
import { bedOption, ownBed, ownBeds } from './own-beds.ts';

export const SHOW_BEDS: Action = {
  description: 'Shows your beds, to you alone',
  example: 'bed show',
  options: [{ ...bedOption, required: false, description: 'Which of your beds; all of them unless you say' }],
  private: true,
  async run(request, services) {
    const store = storeOf(services);
    const { bed: typed } = checkedOptions(request, z.object({ bed: maybe(read) }));
    const reader = await readerFor(request, services);
    if (typed !== undefined) {
      const bed = await ownBed(store, request.memberId, typed);
      return { headline: `${bed.label}.`, sections: [{ lines: bedLines(bed, reader) }], private: true };
    }
    const beds = await ownBeds(store, request.memberId);
    if (beds.length === 0) throw new PlainProblem('You have no bed here yet. Tell me one with /bed add.');
    return {
      headline: `You have ${counted(beds.length, 'bed')}.`,
      sections: beds.map((bed) => bedSection(bed, reader)),
      private: true,
    };
  },
};

export const REMOVE_BED: Action = {
  description: 'Forgets a bed with what grows in it and its readings',
  example: 'bed remove bed:"Long tunnel"',
  options: [bedOption],
  private: true,
  async run(request, services) {
    const store = storeOf(services);
    const schema = z.object({ bed: option('Say which bed to remove, such as bed:Tunnel.', read) });
    const bed = await ownBed(store, request.memberId, checkedOptions(request, schema).bed);
    await store.beds.remove(request.memberId, bed.id);
    return { headline: `${bed.label} is forgotten.`, sections: [], private: true };
  },
};
