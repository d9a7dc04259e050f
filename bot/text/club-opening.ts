import { CAUTIONS } from '../../rules/index.ts';
import { temperature } from '../ground/units.ts';
import type { BedOpening, OpeningPlan } from '../outlook/opening-plan.ts';
import type { Reply, Section } from '../talk/reply.ts';
import { titled } from './club-sections.ts';
import { forecastLine } from './forecast-words.ts';
import { HARM_TITLE, harmLines } from './harm-words.ts';
import { openingOf } from './opening-reply.ts';
import { type DayReader, howWords, type Opened, pickWords, plainLabel, timeWords, whenWords } from './opening-words.ts';
import { capitalised, counted } from './phrases.ts';
import type { Reader } from './reader.ts';

/** What of beds a phone shows without much scrolling; the rest is summed up. */
const MOST_LINES = 8;
const MOST_NOTES = 3;

export interface ClubOpeningTelling {
  /** Gardens with a forecast; those without one are only counted. */
  readonly plans: readonly OpeningPlan[];
  readonly unknownCount: number;
  readonly reader: Reader;
  readonly now: Date;
}

/** A bed that is to be opened, with the clock of its garden. */
interface ToOpen {
  readonly bed: BedOpening;
  readonly advice: Opened;
  readonly day: DayReader;
}

/** A club's morning: what to open, alike beds in one line and never by member; undefined when there is nothing to do. */
export function clubOpening(telling: ClubOpeningTelling): Reply | undefined {
  const { plans, unknownCount, reader } = telling;
  const opened = plans.flatMap((plan) => toOpen(plan, telling));
  const harms = harmsOf(plans, reader);
  if (opened.length === 0 && harms.length === 0) return undefined;
  const groups = alike(opened);
  const lines = groups.slice(0, MOST_LINES).map((group) => groupLine(group, reader));
  const rest = groups.slice(MOST_LINES).reduce((sum, group) => sum + group.length, 0);
  const sections: Section[] = [
    ...titled(HARM_TITLE, harms),
    ...titled(
      'Open',
      rest === 0 ? lines : [...lines, `And ${counted(rest, 'more bed')}; look at your own with /vent.`],
    ),
    { lines: [...pickLine(plans, telling), ...unknownLine(unknownCount)] },
    { lines: [...new Set(plans.map(({ forecast }) => forecastLine(forecast, telling.now)))].slice(0, MOST_NOTES) },
  ];
  const froze = plans.some(({ beds }) => beds.some(isFrozen));
  return {
    headline: headline(opened, telling),
    sections: sections.filter(({ lines: told }) => told.length > 0),
    cautions: froze ? [CAUTIONS['frozen-leaves'].text] : [],
    credits: [
      ...new Map(plans.flatMap(({ forecast }) => forecast.credits).map((credit) => [credit.url, credit])).values(),
    ],
    private: false,
  };
}

/** No forecast in the morning: silence would read as nothing to open. */
export function clubOpeningUnknown(reader: Reader, limitC: number): Reply {
  return {
    headline: 'No forecast can be had this morning, so I cannot say when to open.',
    sections: [
      {
        lines: [
          `Look at a thermometer among the leaves: open above ${temperature(limitC, reader.units)}, and shut two hours before sunset.`,
        ],
      },
    ],
    private: false,
  };
}

function toOpen({ beds, garden }: OpeningPlan, { reader, now }: ClubOpeningTelling): ToOpen[] {
  const day = { ...reader, timeZone: garden.timeZone, now };
  return beds.flatMap((bed) => {
    const advice = openingOf(bed);
    return advice === undefined ? [] : [{ bed, advice, day }];
  });
}

function headline(opened: readonly ToOpen[], telling: ClubOpeningTelling): string {
  const [first] = opened.toSorted(earliest);
  if (first === undefined) return 'Nothing to open today, but the weather wants hands.';
  const { advice, day } = first;
  const when = advice.openAt <= telling.now ? 'now' : `at ${timeWords(advice.openAt, day)}`;
  return `Open ${counted(opened.length, 'bed')} today, ${opened.length === 1 ? when : `the first ${when}`}.`;
}

/** Same crops and covers, opened the same way; the earliest first. */
function alike(opened: readonly ToOpen[]): readonly (readonly ToOpen[])[] {
  const groups = new Map<string, ToOpen[]>();
  for (const each of opened.toSorted(earliest)) {
    const key = `${plainLabel(each.bed, each.day)} ${howWords(each.bed, each.advice, each.day)}`;
    groups.set(key, [...(groups.get(key) ?? []), each]);
  }
  return [...groups.values()];
}

/** "Spinach under cold frame, 3 beds: prop the light 4 in at 10:20 am, shut by 2:10 pm. Left shut up to 93 °F." */
function groupLine(group: readonly ToOpen[], reader: Reader): string {
  const [first] = group;
  if (first === undefined) return '';
  const { bed, day } = first;
  const count = group.length === 1 ? '' : `, ${counted(group.length, 'bed')}`;
  const shutAt = new Date(Math.min(...group.map(({ advice }) => advice.shutAt.getTime())));
  const hottestC = Math.max(...group.map(({ advice }) => advice.shut.thermometerHigh.valueC));
  const doing = `${howWords(bed, first.advice, day)} ${whenWords(bed, first.advice, shutAt, day)}`;
  return `${capitalised(plainLabel(bed, day))}${count}: ${doing}. Left shut up to ${temperature(hottestC, reader.units)}.`;
}

function earliest(one: ToOpen, other: ToOpen): number {
  return one.advice.openAt.getTime() - other.advice.openAt.getTime();
}

/** When picking can begin, of the garden that thaws last. */
function pickLine(plans: readonly OpeningPlan[], { reader, now }: ClubOpeningTelling): string[] {
  const frozen = plans.flatMap(({ beds, garden }) =>
    beds
      .filter(isFrozen)
      .flatMap(({ day: { pick } }) => (pick === undefined ? [] : [{ pick, timeZone: garden.timeZone }])),
  );
  const [last] = frozen.toSorted((a, b) => thawMs(b.pick) - thawMs(a.pick));
  if (last === undefined) return [];
  return [`Picking: ${pickWords(last.pick, { ...reader, timeZone: last.timeZone, now })}.`];
}

function thawMs(pick: NonNullable<BedOpening['day']['pick']>): number {
  return pick.kind === 'thawed' ? pick.at.getTime() : Number.MAX_VALUE;
}

function isFrozen({ day: { pick } }: BedOpening): boolean {
  return pick !== undefined && pick.kind !== 'not-frozen';
}

function unknownLine(count: number): string[] {
  return count === 0 ? [] : [`For ${counted(count, 'garden')} I have no forecast this morning.`];
}

/** Wind, snow and ice of the day; what is only worth knowing is left to who asks. */
function harmsOf(plans: readonly OpeningPlan[], reader: Reader): readonly string[] {
  const [worst] = plans.toSorted((a, b) => harmCount(b) - harmCount(a));
  if (worst === undefined || harmCount(worst) === 0) return [];
  const beds = worst.beds.map((bed) => ({
    name: plainLabel(bed, reader),
    frame: bed.bed.frame,
    harms: bed.harms.filter(wantsHands),
  }));
  const distinct = [...new Map(beds.map((bed) => [bed.name, bed])).values()];
  return harmLines(distinct, worst.harmful, worst.garden.timeZone, reader);
}

function harmCount({ beds }: OpeningPlan): number {
  return beds.reduce((count, { harms }) => count + harms.filter(wantsHands).length, 0);
}

function wantsHands(harm: BedOpening['harms'][number]): boolean {
  return harm.kind === 'wind' || harm.kind === 'freezing-rain' || (harm.kind === 'snow' && harm.advice !== 'insulates');
}
