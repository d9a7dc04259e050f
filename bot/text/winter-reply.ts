import { DateTime } from 'luxon';
import { type AverageFrost, type Crop, type DarkWeeks, MS_PER_DAY } from '../../rules/index.ts';
import type { CropSowing, PlantedCrop, WinterPlan } from '../outlook/winter-plan.ts';
import type { Reply, Section } from '../talk/reply.ts';
import { frostOddsSections } from './frost-odds-words.ts';
import { capitalised, list } from './phrases.ts';
import { cropWord, type Reader } from './reader.ts';
import { dayWords, lengthWords } from './season-words.ts';

/** Sowing dates nearer to each other than this stand in one line: they are good to a week. */
const TOGETHER_DAYS = 6;

/** So long before the short days they are no concern (judgement). */
const FAR_DAYS = 100;

/** Average frosts, where the gardener gave them. */
export interface AverageFrosts {
  readonly first?: { readonly month: number; readonly day: number };
  readonly last?: { readonly month: number; readonly day: number };
}

export interface WinterTelling {
  readonly plan: WinterPlan;
  readonly frosts: AverageFrosts;
  readonly reader: Reader;
  readonly now: Date;
}

/** A garden's winter: the short days, what to sow by when, and where the plantings stand. */
export function winterReply(telling: WinterTelling): Reply {
  const sections: Section[] = [
    { title: 'Dates', lines: dateLines(telling) },
    { title: 'In your beds', lines: plantedLines(telling) },
    ...sowingSections(telling),
    ...frostOddsSections(averagesOf(telling), telling.plan.garden.timeZone, telling.reader),
    { title: 'How this is reckoned', lines: methodLines(telling) },
  ];
  return {
    headline: headline(telling),
    sections: sections.filter(({ lines }) => lines.length > 0),
    private: true,
  };
}

/** The winter of one or a few crops: when to sow them, and why then. */
export function cropWinterReply(telling: WinterTelling, crops: readonly Crop[]): Reply {
  const [first, ...others] = crops.map((crop) => cropLine(crop, telling));
  if (first === undefined) return winterReply(telling);
  const isSown = crops.some(({ id }) => telling.plan.sowings.some(({ crop }) => crop.id === id));
  const sections: Section[] = [
    { lines: others },
    { title: 'Dates', lines: isSown ? dateLines(telling) : [] },
    { title: 'How this is reckoned', lines: isSown ? methodLines(telling) : [] },
  ];
  return { headline: first, sections: sections.filter(({ lines }) => lines.length > 0), private: true };
}

function cropLine(crop: Crop, { plan, reader, now }: WinterTelling): string {
  const name = capitalised(cropWord(crop, reader));
  const day = (at: Date) => dayWords(at, plan.garden.timeZone, reader);
  const found = plan.sowings.find((sowing) => sowing.crop.id === crop.id);
  if (found === undefined) {
    return crop.hardens
      ? `${name} stands for years; it needs no sowing date.`
      : `${name} does not stand frost: sow it once the frosts are over.`;
  }
  const { sowing, ifSownNow } = found;
  if (sowing === undefined) return `${name} sown today is big enough about ${day(ifSownNow)}; light is no limit there.`;
  if (sowing.sowBy >= now) {
    return `${name}: sow by ${day(sowing.sowBy)}, to be big enough before the short days begin on ${day(sowing.readyBy)}.`;
  }
  return `${name}: too late to be ready before the short days (by ${day(sowing.sowBy)}); sown today under cover, not before ${day(ifSownNow)}.`;
}

function headline({ plan, reader, now }: WinterTelling): string {
  const { garden, weeks } = plan;
  if (weeks === undefined) {
    return `${garden.name}: no day is under ten hours there. Light is no limit; sow all winter for what the cold allows.`;
  }
  const day = (at: Date) => dayWords(at, garden.timeZone, reader);
  if (now < weeks.firstDay) {
    return `${garden.name}: days under ten hours from ${day(weeks.firstDay)} to ${day(weeks.lastDay)}. What is big enough by then can be picked all winter.`;
  }
  return `${garden.name}: in the weeks of short days until ${day(weeks.lastDay)}. Hardly anything grows until then.`;
}

function dateLines({ plan, frosts, reader }: WinterTelling): string[] {
  const { garden, weeks, shortestH } = plan;
  const day = (at: Date) => dayWords(at, garden.timeZone, reader);
  const dates: { readonly at: Date; readonly words: string }[] = [];
  if (weeks !== undefined) {
    dates.push({ at: weeks.firstDay, words: 'first day under ten hours' });
    dates.push({ at: weeks.lastDay, words: `last day under ten hours, after ${weeks.dayCount} of them` });
    const middle = new Date((weeks.firstDay.getTime() + weeks.lastDay.getTime()) / 2);
    if (shortestH !== undefined) dates.push({ at: middle, words: `shortest day, ${lengthWords(shortestH)}` });
    if (frosts.first) dates.push({ at: nearest(frosts.first, middle), words: 'average first frost, as you gave it' });
    if (frosts.last) dates.push({ at: nearest(frosts.last, middle), words: 'average last frost, as you gave it' });
  }
  return dates.toSorted((a, b) => a.at.getTime() - b.at.getTime()).map(({ at, words }) => `${day(at)}: ${words}.`);
}

/** The gardener's average frosts about the winter that is told; none within reach of the tropics, where no day is short. */
function averagesOf({ plan: { weeks }, frosts: { first, last } }: WinterTelling): AverageFrost[] {
  if (weeks === undefined) return [];
  const middle = new Date((weeks.firstDay.getTime() + weeks.lastDay.getTime()) / 2);
  return [
    ...(first === undefined ? [] : [{ at: nearest(first, middle), which: 'first' as const }]),
    ...(last === undefined ? [] : [{ at: nearest(last, middle), which: 'last' as const }]),
  ];
}

/** That day in the year that brings it nearest to midwinter. */
function nearest({ month, day }: { readonly month: number; readonly day: number }, middle: Date): Date {
  const year = DateTime.fromJSDate(middle, { zone: 'utc' }).year;
  const candidates = [year - 1, year, year + 1].map((each) => new Date(Date.UTC(each, month - 1, day, 12)));
  return candidates.reduce((one, other) => (distance(other, middle) < distance(one, middle) ? other : one));
}

function distance(one: Date, other: Date): number {
  return Math.abs(one.getTime() - other.getTime());
}

/** Plantings with the same prospect in one line, what can be picked first. */
function plantedLines(telling: WinterTelling): string[] {
  const beds = new Map<string, Map<string, string[]>>();
  for (const planted of telling.plan.plantings.toSorted((a, b) => grownMs(a) - grownMs(b))) {
    const prospect = prospectWords(planted, telling);
    const crops = beds.get(prospect) ?? new Map<string, string[]>();
    crops.set(planted.bedName, [...(crops.get(planted.bedName) ?? []), cropWord(planted.crop, telling.reader)]);
    beds.set(prospect, crops);
  }
  return [...beds].map(([prospect, crops]) => {
    const places = [...crops].map(([bed, names]) => `${list(names)} (${bed})`);
    return `${prospect}: ${list(places)}.`;
  });
}

function grownMs({ stage, grown }: PlantedCrop): number {
  return stage === 'grown' ? 0 : (grown?.getTime() ?? Number.MAX_VALUE);
}

function prospectWords({ crop, stage, grown }: PlantedCrop, { plan, reader, now }: WinterTelling): string {
  if (!crop.hardens) return 'No crop for frost: pick before the cold';
  if (grown === undefined) return 'Stands for years';
  if (stage === 'grown' || grown <= now) return 'Big enough, to be picked through the winter';
  return `Big enough about ${dayWords(grown, plan.garden.timeZone, reader)}${waitWords(grown, plan.weeks)}`;
}

function waitWords(grown: Date, weeks: DarkWeeks | undefined): string {
  if (weeks === undefined) return '';
  const earlyDays = (weeks.firstDay.getTime() - grown.getTime()) / MS_PER_DAY;
  if (earlyDays > FAR_DAYS) return '';
  if (earlyDays >= 0) return ', before the short days';
  return grown <= weeks.lastDay ? ', slowly, in the short days' : ', after the short days';
}

function sowingSections(telling: WinterTelling): Section[] {
  const { plan, now } = telling;
  if (plan.weeks === undefined)
    return [{ title: 'Sown today, big enough about', lines: grouped(plan.sowings, telling, ifNow) }];
  const ahead = plan.sowings.filter(({ sowing }) => sowing !== undefined && sowing.sowBy >= now);
  const past = plan.sowings.filter(({ sowing }) => sowing !== undefined && sowing.sowBy < now);
  return [
    { title: 'Sow by, to be big enough before the short days', lines: grouped(ahead, telling, sowBy) },
    {
      title: 'Too late to be ready before them; sown today under cover, ready not before',
      lines: grouped(past, telling, ifNow),
    },
  ];
}

function sowBy({ sowing, ifSownNow }: CropSowing): Date {
  return sowing?.sowBy ?? ifSownNow;
}

function ifNow({ ifSownNow }: CropSowing): Date {
  return ifSownNow;
}

/** Crops whose dates lie within a week in one line, under the earliest of them. */
function grouped(
  sowings: readonly CropSowing[],
  telling: WinterTelling,
  dateOf: (sowing: CropSowing) => Date,
): string[] {
  const { plan, reader } = telling;
  const groups: { readonly at: Date; readonly crops: string[] }[] = [];
  for (const sowing of sowings.toSorted((a, b) => dateOf(a).getTime() - dateOf(b).getTime())) {
    const at = dateOf(sowing);
    const last = groups.at(-1);
    const name = cropWord(sowing.crop, reader);
    if (last !== undefined && at.getTime() - last.at.getTime() < TOGETHER_DAYS * MS_PER_DAY) last.crops.push(name);
    else groups.push({ at, crops: [name] });
  }
  return groups.map(({ at, crops }) => `${dayWords(at, plan.garden.timeZone, reader)}: ${capitalised(list(crops))}.`);
}

function methodLines({ frosts, plan }: WinterTelling): string[] {
  const unknown =
    frosts.first === undefined && frosts.last === undefined && plan.weeks !== undefined
      ? ['I know no average frosts of your place and invent none; give them with first-frost and last-frost.']
      : [];
  return [
    'Days from the seed packet, each counted by its share of full light through one cover, and two weeks more for the cold (extension consensus: 10 to 21 days). Good to a week either way; a warm autumn is kinder.',
    ...(plan.plantings.some(({ isGuessed }) => isGuessed)
      ? ['What is growing without a day counts as half grown; tell the day with sown or set-out in /bed plant.']
      : []),
    ...unknown,
  ];
}
