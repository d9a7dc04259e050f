import { z } from 'zod';
import { assumedHardening, CAUTIONS, COVERS, type CoverKey, type Crop, type Planting } from '../../../rules/index.ts';
import { PlainProblem } from '../../ground/errors.ts';
import { plantingOf } from '../../outlook/bed-planting.ts';
import { comparedStacks } from '../../outlook/comparison.ts';
import type { Garden, GardenBed } from '../../outlook/garden.ts';
import type { Reply } from '../../talk/reply.ts';
import type { Request } from '../../talk/request.ts';
import { nightLines, stackLine, stacksHeadline } from '../../text/comparison-words.ts';
import type { Reader } from '../../text/reader.ts';
import type { Action } from '../command.ts';
import { readerFor } from '../kept-for.ts';
import { meant } from '../meant.ts';
import { checkedOptions, maybe, option, yesNo } from '../options.ts';
import type { Services } from '../services.ts';
import { siteOption } from '../site/own-sites.ts';
import { suggestCrops } from '../suggest/suggest-crops.ts';
import { typedCovers } from '../typed/covers.ts';
import { typedCrops } from '../typed/crops.ts';
import { typedLow } from '../typed/low.ts';
import { type Read, read, unread } from '../typed/read.ts';
import { comparedAt } from './compared-nights.ts';

const MOST_STACKS = 5;
/** More crops than a phone shows in a line (judgement). */
const MOST_CROPS = 4;
/** What parts one stack from the next. */
const BETWEEN_STACKS = /\bor\b|\bvs\b|\bversus\b|\bagainst\b|[,;|]/i;

export const COMPARE_COVERS: Action = {
  description: 'Covers side by side: leaf low, light, your crops, trouble to set up',
  example: 'compare covers covers:"low tunnel or blanket over low tunnel or cold frame"',
  options: [
    {
      name: 'covers',
      description: 'Two to five stacks with "or" between them, each from the outside in',
      kind: 'text',
      required: true,
    },
    { name: 'bed', description: 'A bed of yours: its crops and what lies on it now count too', kind: 'text' },
    {
      name: 'crop',
      description: 'Crops to judge by, with commas; those of your beds unless you say',
      kind: 'text',
      suggest: suggestCrops,
    },
    { name: 'low', description: 'A low to compare at, such as 14F, instead of your own coming night', kind: 'text' },
    { name: 'hardened', description: 'Have the plants grown cold for some weeks?', kind: 'yes-no' },
    siteOption('Which of your sites; the usual one unless you say'),
  ],
  private: true,
  run: compareCovers,
};

async function compareCovers(request: Request, services: Services): Promise<Reply> {
  const reader = await readerFor(request, services);
  const schema = z.object({
    covers: option('Name two stacks, such as covers:"low tunnel or cold frame".', (text) => typedStacks(text, reader)),
    bed: maybe(read),
    crop: maybe((text) => typedCrops(text, reader)),
    low: maybe((text) => typedLow(text, reader.units)),
    hardened: maybe(yesNo('hardened')),
    site: maybe(read),
  });
  const wish = checkedOptions(request, schema);
  const at = await comparedAt(request, { site: wish.site, lowC: wish.low?.lowC }, services);
  const bed = wish.bed === undefined ? undefined : namedBed(at.garden, wish.bed);
  const plantings = plantingsFor(wish.crop, wish.hardened, bed === undefined ? (at.garden?.beds ?? []) : [bed]);
  const laid = bed ?? { name: '', plantings: [], covers: [] };
  const all = bed === undefined ? wish.covers : withOwn(wish.covers, bed.covers);
  const stacks = comparedStacks(all, laid, plantings, at.nights);
  return {
    headline: stacksHeadline(stacks, at.nights[0], reader),
    sections: [
      { lines: stacks.map((stack) => stackLine(stack, at.nights, reader)) },
      { lines: nightLines(at.nights, reader) },
    ],
    cautions: frameCautions(all),
    credits: at.credits,
    private: true,
  };
}

/** "low tunnel or blanket over low tunnel": each stack from the outside in. */
function typedStacks(text: string, reader: Reader): Read<readonly (readonly CoverKey[])[]> {
  const parts = text
    .split(BETWEEN_STACKS)
    .map((part) => part.replace(/^\.?\s+/, '').trim())
    .filter((part) => part !== '');
  if (parts.length < 2)
    return unread('Name at least two stacks with "or" between them, such as low tunnel or cold frame.');
  if (parts.length > MOST_STACKS) return unread(`Name at most ${MOST_STACKS} stacks at a time.`);
  const stacks: (readonly CoverKey[])[] = [];
  for (const part of parts) {
    const stack = typedCovers(part, reader);
    if (!stack.ok) return stack;
    stacks.push(stack.value);
  }
  return read(withOwn(stacks.slice(1), stacks[0] ?? []));
}

/** Each stack once, the one given first. */
function withOwn(stacks: readonly (readonly CoverKey[])[], own: readonly CoverKey[]): readonly (readonly CoverKey[])[] {
  return [...new Map([own, ...stacks].map((keys) => [keys.join(), keys])).values()];
}

/** @throws PlainProblem when there is none of that name. */
export function namedBed(garden: Garden | undefined, typed: string): GardenBed {
  const beds = garden?.beds ?? [];
  if (beds.length === 0) throw new PlainProblem('You have no bed here yet. Tell me one with /bed add.');
  const labelled = beds.map((bed) => ({ ...bed, id: bed.name, label: bed.name }));
  return meant(labelled, typed, 'bed');
}

/** The crops named or, unless any are, the first few of the beds. */
function plantingsFor(
  crops: readonly Crop[] | undefined,
  hardened: boolean | undefined,
  beds: readonly GardenBed[],
): Planting[] {
  if (crops !== undefined) {
    const said = hardened === undefined ? {} : { said: hardened ? ('hardened' as const) : ('grown-warm' as const) };
    return crops.map((crop) => ({ crop, hardeningIndex: assumedHardening(crop, said).hardeningIndex }));
  }
  const own = new Map(beds.flatMap(({ plantings }) => plantings).map((planting) => [planting.cropId, planting]));
  return [...own.values()].slice(0, MOST_CROPS).flatMap((planting) => plantingOf(planting, false));
}

function frameCautions(stacks: readonly (readonly CoverKey[])[]): readonly string[] {
  const hasFrame = stacks.some((keys) => keys.some((key) => COVERS[key].kind === 'frame'));
  return hasFrame ? (['glass', 'old-paint', 'treated-timber'] as const).map((key) => CAUTIONS[key].text) : [];
}
