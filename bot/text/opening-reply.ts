import { CAUTIONS, type CautionKey, darkWeeks, WORTH_OPENING_K } from '../../rules/index.ts';
import { temperature } from '../ground/units.ts';
import type { BedOpening, OpeningPlan } from '../outlook/opening-plan.ts';
import type { Reply, Section } from '../talk/reply.ts';
import { dayNoteLines, forecastLine } from './forecast-words.ts';
import { HARM_TITLE, harmLines } from './harm-words.ts';
import { shortCover } from './night-words.ts';
import {
  afterWords,
  bedLabel,
  type DayReader,
  highWords,
  limitWords,
  type Opened,
  openingWords,
  pickWords,
  shutWords,
  timeWords,
} from './opening-words.ts';
import { capitalised, counted, list } from './phrases.ts';
import type { Reader } from './reader.ts';

export interface OpeningTelling {
  readonly plan: OpeningPlan;
  readonly reader: Reader;
  readonly now: Date;
  /** "today", "tomorrow", "on Friday". */
  readonly dayWords: string;
}

/** When to shut, bed by bed. */
export function closingReply({ plan, reader, now, dayWords }: OpeningTelling): Reply {
  const day = { ...reader, timeZone: plan.garden.timeZone, now };
  const { garden, beds } = plan;
  const lines = beds.flatMap((bed) => {
    const advice = openingOf(bed);
    if (advice === undefined || advice.kind === 'off' || advice.shutAt >= plan.day.shutBy) return [];
    return `${bedLabel(bed, day)}: opened today, it can be shut from ${timeWords(advice.shutAt, day)} on without getting too warm again.`;
  });
  return {
    headline: `${garden.name}: shut by ${timeWords(plan.day.shutBy, day)} ${dayWords}, two hours before sunset.`,
    sections: [
      { lines: [...lines, 'The last sun then still warms the soil under the covers.'] },
      { title: HARM_TITLE, lines: harms(plan, reader) },
      { lines: [forecastLine(plan.forecast, now), ...dayNoteLines(plan.weather.notes, reader)] },
    ].filter((section) => section.lines.length > 0),
    credits: plan.forecast.credits,
    private: true,
  };
}

/** When leaves can be picked, bed by bed. */
export function pickingReply({ plan, reader, now, dayWords }: OpeningTelling): Reply {
  const day = { ...reader, timeZone: plan.garden.timeZone, now };
  const words = pickGroups(plan, day);
  const [[only] = [], ...others] = [...words.keys()].map((each) => [each] as const);
  const lines = others.length > 0 ? pickLines(plan, day) : [];
  return {
    headline: `${plan.garden.name}: ${others.length > 0 ? `when to pick ${dayWords}, by bed.` : pickHeadline(only, dayWords)}`,
    sections: [
      { lines },
      { lines: [forecastLine(plan.forecast, now), ...dayNoteLines(plan.weather.notes, reader)] },
    ].filter((section) => section.lines.length > 0),
    cautions: cautionsOf(plan).map((key) => CAUTIONS[key].text),
    credits: plan.forecast.credits,
    private: true,
  };
}

function pickHeadline(words: string | undefined, dayWords: string): string {
  if (words === undefined)
    return 'I do not know how cold the night was. Feel whether the leaves have thawed all through.';
  return words.startsWith('not ') || words.startsWith('no ')
    ? `do not pick ${dayWords}; the leaves stay frozen.`
    : `pick ${words.startsWith('now') ? '' : `${dayWords} `}${words}.`;
}

/** A garden's day: what to open first, then what may stay as it is, then when to pick. */
export function openingReply(telling: OpeningTelling): Reply {
  const { plan, reader, now } = telling;
  const day = { ...reader, timeZone: plan.garden.timeZone, now };
  const sections: Section[] = [
    { title: HARM_TITLE, lines: harms(plan, reader) },
    { title: 'Open', lines: openLines(plan, day) },
    { title: 'Take off by day', lines: takeOffLines(plan, day) },
    { title: 'Leave shut', lines: shutLines(plan, day) },
    { title: 'Pick, once thawed', lines: pickLines(plan, day) },
    { lines: shortDayLines(plan) },
    { lines: [forecastLine(plan.forecast, now), ...dayNoteLines(plan.weather.notes, reader)] },
  ];
  return {
    headline: headline(telling, day),
    sections: sections.filter(({ lines }) => lines.length > 0),
    cautions: cautionsOf(plan).map((key) => CAUTIONS[key].text),
    credits: plan.forecast.credits,
    private: true,
  };
}

function headline({ plan, dayWords }: OpeningTelling, day: DayReader): string {
  const { garden, beds } = plan;
  if (beds.length === 0) return `${garden.name}: no bed has a crop in it.`;
  const opened = beds.filter(isOpened);
  if (opened.length > 0) return `${garden.name}: ${openWords(opened, beds.length, dayWords, day)}.`;
  const off = beds.some((bed) => bed.day.takenOff !== undefined);
  if (beds.every((bed) => bed.day.opening === undefined) && !off) return `${garden.name}: no bed has a cover to open.`;
  return `${garden.name}: nothing to open ${dayWords}${off ? ', only night covers to take off' : ''}.`;
}

/** "open 2 of 3 beds today, the first at 10:20 am". */
function openWords(opened: readonly BedOpening[], of: number, dayWords: string, day: DayReader): string {
  const times = opened.flatMap((bed) => openingOf(bed)?.openAt.getTime() ?? []);
  const first = new Date(Math.min(...times));
  const when = first <= day.now ? 'now' : `at ${timeWords(first, day)}`;
  const count = opened.length === of ? counted(of, 'bed') : `${opened.length} of ${counted(of, 'bed')}`;
  return `open ${count} ${dayWords}, ${opened.length === 1 ? when : `the first ${when}`}`;
}

/** What is to be opened; undefined where nothing is. */
export function openingOf({ day }: BedOpening): Opened | undefined {
  const advice = day.opening?.advice;
  return advice === undefined || advice.kind === 'stay-shut' ? undefined : advice;
}

function isOpened(bed: BedOpening): boolean {
  return openingOf(bed) !== undefined;
}

function harms({ beds, harmful, garden }: OpeningPlan, reader: Reader): readonly string[] {
  const told = beds.map(({ bed, harms: each }) => ({ name: bed.name, frame: bed.frame, harms: each }));
  return harmLines(told, harmful, garden.timeZone, reader);
}

function openLines({ beds }: OpeningPlan, day: DayReader): string[] {
  const opened = beds.flatMap((bed) => {
    const advice = openingOf(bed);
    const limit = bed.day.opening?.limit;
    if (advice === undefined || limit === undefined) return [];
    const words = `${openingWords(bed, advice, day)}. ${shutWords(advice, day)}${limitWords(limit, advice, bed, day)}${afterWords(bed, advice, day)}`;
    return { openAt: advice.openAt, line: `${bedLabel(bed, day)}: ${words}` };
  });
  return opened.toSorted((a, b) => a.openAt.getTime() - b.openAt.getTime()).map(({ line }) => line);
}

function takeOffLines({ beds, day: { shutBy } }: OpeningPlan, day: DayReader): string[] {
  return beds.flatMap(({ bed, day: { takenOff } }) => {
    if (takenOff === undefined) return [];
    const what = list(takenOff.keys.map((key) => `the ${shortCover(key, day)}`));
    const when = takenOff.at <= day.now ? 'now' : `at ${timeWords(takenOff.at, day)}`;
    return `${bed.name}: ${what} off ${when}, back by ${timeWords(shutBy, day)}.`;
  });
}

function shutLines({ beds }: OpeningPlan, day: DayReader): string[] {
  return beds.flatMap((bed) => {
    const { opening, leftOn = [] } = bed.day;
    const isShut = opening?.advice.kind === 'stay-shut';
    const words = [
      ...(isShut ? [`${highWords(opening.advice, day)}${nearLimitWords(opening, day)}`] : []),
      ...(leftOn.length > 0
        ? [`${list(leftOn.map((key) => `the ${shortCover(key, day)}`))} may stay on, it freezes all day`]
        : []),
    ];
    return words.length === 0 ? [] : `${bedLabel(bed, day)}: ${words.join('; ')}.`;
  });
}

/** A forecast of sun may be wrong by this; further below the limit nobody needs to know it (judgement). [K] */
const NEAR_LIMIT_K = 6;

function nearLimitWords({ advice, limit }: NonNullable<BedOpening['day']['opening']>, { units }: Reader): string {
  const highC = advice.shut.thermometerHigh.valueC;
  const words = temperature(limit.limitC, units);
  if (highC > limit.limitC + WORTH_OPENING_K) return ', but soon it is time to shut';
  if (highC > limit.limitC) return `, hardly above ${words}: not worth opening for`;
  return highC > limit.limitC - NEAR_LIMIT_K ? `; open it should a thermometer inside pass ${words}` : '';
}

/** Beds by what is told of picking in them. Roots are dug, not picked frozen. */
function pickGroups({ beds }: OpeningPlan, day: DayReader): ReadonlyMap<string, readonly string[]> {
  const names = new Map<string, string[]>();
  for (const { bed, plantings, day: of } of beds) {
    if (of.pick === undefined || plantings.every(({ crop }) => crop.judgedBy === 'surface')) continue;
    const words = pickWords(of.pick, day);
    names.set(words, [...(names.get(words) ?? []), bed.name]);
  }
  return names;
}

function pickLines(plan: OpeningPlan, day: DayReader): string[] {
  const names = pickGroups(plan, day);
  if (names.size === 1) return [...names.keys()].map((words) => `${capitalised(words)}.`);
  return [...names].map(([words, of]) => `${list(of)}: ${words}.`);
}

/** A shut bed that stays colder tempts nobody to open it (judgement). [°C] */
const MILD_C = 10;

/** In the dark weeks a shut frame is the rule; a grower who has just begun wonders. */
function shortDayLines({ beds, day, garden }: OpeningPlan): string[] {
  const shut = beds.some((bed) => bed.day.opening?.advice.kind === 'stay-shut');
  if (beds.some(isOpened) || !shut) return [];
  const weeks = darkWeeks(day.sunrise, garden.latitudeDeg, garden.longitudeDeg);
  const isShort = weeks !== undefined && day.sunrise >= weeks.firstDay && day.sunrise <= weeks.lastDay;
  if (!isShort) return [];
  const highsC = beds.flatMap((bed) => bed.day.opening?.advice.shut.thermometerHigh.valueC ?? []);
  const crack = Math.max(...highsC) > MILD_C ? ' A crack on a still, sunny day does no harm.' : '';
  return [`In these weeks of short days little or no opening is needed.${crack}`];
}

function cautionsOf({ beds }: OpeningPlan): CautionKey[] {
  const froze = beds.some(({ day }) => day.pick !== undefined && day.pick.kind !== 'not-frozen');
  const snow = beds.some(({ harms: each }) => each.some((harm) => harm.kind === 'snow' && harm.advice !== 'insulates'));
  return [...(snow ? (['snow-load'] as const) : []), ...(froze ? (['frozen-leaves'] as const) : [])];
}
