import { z } from 'zod';
import { CAUTIONS, COVERS, commonFrame, WALLS } from '../../../rules/index.ts';
import { PlainProblem } from '../../ground/errors.ts';
import { comparedFrames, tiltOf } from '../../outlook/comparison.ts';
import type { Garden, GardenBed } from '../../outlook/garden.ts';
import type { Reply } from '../../talk/reply.ts';
import type { Request } from '../../talk/request.ts';
import { frameLines, nightLines } from '../../text/comparison-words.ts';
import type { Action } from '../command.ts';
import { readerFor } from '../kept-for.ts';
import { checkedOptions, maybe } from '../options.ts';
import type { Services } from '../services.ts';
import { read } from '../typed/read.ts';
import { namedBed } from './compare-covers.ts';
import { comparedAt } from './compared-nights.ts';

/** Where nobody has said where they grow. */
const ASSUMED_LATITUDE_DEG = 40;

export const COMPARE_FRAME: Action = {
  description: 'What straw bales or a steeper light would change about a cold frame',
  example: 'compare frame',
  options: [{ name: 'bed', description: 'The bed with the frame; your first one unless you say', kind: 'text' }],
  private: true,
  run: compareFrame,
};

async function compareFrame(request: Request, services: Services): Promise<Reply> {
  const { bed: typed } = checkedOptions(request, z.object({ bed: maybe(read) }));
  const reader = await readerFor(request, services);
  const at = await comparedAt(request, { site: undefined, lowC: undefined }, services);
  const garden = at.garden ?? PLACELESS;
  const bed = typed === undefined ? firstFramed(garden) : namedBed(garden, typed);
  if (!hasFrame(bed)) throw new PlainProblem(`${bed.name} has no cold frame. Name a bed that has one.`);
  const shortest = shortestDay(request.now, garden.latitudeDeg, garden.longitudeDeg);
  const frames = comparedFrames(bed, garden, shortest, at.nights);
  const frame = bed.frame ?? commonFrame(garden.latitudeDeg);
  const tilt = Math.round(tiltOf(frame));
  return {
    headline: `${bed.name}: ${WALLS[frame.walls][reader.dialect]}, light at ${tilt}°, and what would change that.`,
    sections: [{ lines: frameLines({ frames, nights: at.nights, reader }) }, { lines: nightLines(at.nights, reader) }],
    cautions: (['glass', 'old-paint', 'treated-timber'] as const).map((key) => CAUTIONS[key].text),
    credits: at.credits,
    private: true,
  };
}

/** A garden nobody has placed: the common frame in the middle of the temperate zone. */
const PLACELESS: Garden = {
  name: '',
  ...{ latitudeDeg: ASSUMED_LATITUDE_DEG, longitudeDeg: 0, exposure: 'open', timeZone: 'UTC' },
  ...{ beds: [], shed: [] },
};

function firstFramed({ beds }: Garden): GardenBed {
  return beds.find(hasFrame) ?? { name: 'The common frame', plantings: [], covers: ['cold-frame'] };
}

function hasFrame({ covers }: GardenBed): boolean {
  return covers.some((key) => COVERS[key].kind === 'frame');
}

/** About noon of the shortest day of this year there. */
function shortestDay(now: Date, latitudeDeg: number, longitudeDeg: number): Date {
  const month = latitudeDeg < 0 ? 5 : 11;
  return new Date(Date.UTC(now.getUTCFullYear(), month, 21, 12) - (longitudeDeg / 15) * 3_600_000);
}
