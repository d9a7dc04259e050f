import { CAUTIONS, forecastLowSdK, spokenOdds } from '../../rules/index.ts';
import type { OfficialWarnings } from '../forecast/forecast.ts';
import { weekdayName } from '../ground/times.ts';
import { temperature, temperatureWithRange } from '../ground/units.ts';
import type { NamedNight } from '../outlook/named-night.ts';
import type { BedOutlook } from '../outlook/night-outlook.ts';
import { coldestNight, isRiskyNight, type WeekNight, type WeekOutlook, worstNight } from '../outlook/week-outlook.ts';
import type { Reply, Section } from '../talk/reply.ts';
import { forecastLine, noteLines } from './forecast-words.ts';
import { longColdLines } from './long-cold-words.ts';
import { bedCropWords, layingWords, skyWord } from './night-words.ts';
import { cautionsOf, hardeningOf, isCovered, isFrostless, officialSection } from './outlook-reply.ts';
import { capitalised, counted, list } from './phrases.ts';
import type { Reader } from './reader.ts';

export interface WeekTelling {
  readonly week: WeekOutlook;
  readonly official: OfficialWarnings;
  readonly reader: Reader;
  readonly now: Date;
}

/** The nights to come: the worst in words, what to do first, one line for each, and when it ends. */
export function weekReply(telling: WeekTelling): Reply {
  const { week, official, reader, now } = telling;
  const { garden, known, forecast } = week;
  const worst = worstNight(week);
  const sections: (Section | undefined)[] = [
    officialSection(official, { timeZone: garden.timeZone, reader }),
    { lines: [...firstLine(telling), ...endLines(telling)] },
    { title: 'Night by night', lines: known.map((night) => nightLine(night, reader)) },
    {
      lines: [
        ...longColdLines(worst.outlook, reader),
        ...hardeningOf(worst.outlook, reader),
        ...unknownLine(week),
        forecastLine(forecast, now),
      ],
    },
    { lines: noteLines(worst.outlook.weather.notes, reader) },
  ];
  return {
    headline: `${garden.name}: ${headline(telling)}`,
    sections: sections.filter((section) => section !== undefined && section.lines.length > 0) as Section[],
    cautions: isRiskyNight(worst) ? cautionsOf(worst.outlook).map((key) => CAUTIONS[key].text) : [],
    credits: forecast.credits,
    private: true,
  };
}

/** "3 of 7 nights are a risk. Worst: Thursday night, low about 8 °F (4 to 12). Kale bed: winterkill, odds 3 in 4." */
function headline({ week, reader }: WeekTelling): string {
  const { known } = week;
  const risky = known.filter(isRiskyNight).length;
  const worst = risky > 0 ? worstNight(week) : coldestNight(week);
  const [bed] = worst.outlook.beds;
  const what = `${dayWords(worst)}, low about ${lowWords(worst, reader)}`;
  const nights = known.length === 1 ? 'the one night I can see' : `${known.length} nights`;
  if (bed === undefined)
    return `${dayWords(coldestNight(week))} is the coldest of ${nights}, low about ${lowWords(coldestNight(week), reader)}.`;
  if (risky > 0) {
    const verb = risky === 1 ? 'is' : 'are';
    return `${risky} of ${nights} ${verb} a risk. Worst: ${what}. ${bedWords(bed, reader)}.`;
  }
  const frost = known.every(({ outlook }) => isFrostless(outlook)) ? 'no frost at any leaf' : 'every bed holds';
  return `${frost} in ${nights}. Coldest: ${what}.`;
}

/** "Thursday night", "tonight". */
function dayWords({ named, outlook, nightsAhead }: WeekNight): string {
  return nightsAhead === 0 ? 'tonight' : `${weekdayName(named.span.sunset, outlook.garden.timeZone)} night`;
}

function lowWords({ outlook, nightsAhead }: WeekNight, reader: Reader): string {
  const { lowC, cloudFraction, wind10MPerS } = outlook.weather.summary;
  const site = { inversionK: outlook.garden.exposure === 'hollow' ? 5.5 : 3 };
  const sdK = forecastLowSdK({ kind: 'forecast', nightsAhead }, { site, cloudFraction, windMPerS: wind10MPerS });
  return temperatureWithRange(lowC, sdK, reader.units);
}

/** "Long tunnel, kale: winterkill, odds 3 in 4"; a bed named after its crop is not told twice. */
function bedWords({ bed, verdict }: BedOutlook, reader: Reader): string {
  const { planting, verdict: word, odds } = verdict.worst;
  const where = bedCropWords(bed.name, planting.crop, reader);
  const chance = word === 'winterkill' ? odds.winterkill : odds.leafBurn + odds.winterkill;
  return `${where}: ${word}, odds ${spokenOdds(chance)}`;
}

/** The first night with something to do, and what. */
function firstLine({ week, reader }: WeekTelling): string[] {
  const first = week.known.find(isRiskyNight);
  if (first === undefined) {
    const shut = week.known.find(
      ({ outlook }) => !isFrostless(outlook) && outlook.beds.some(({ bed }) => isCovered(bed.covers)),
    );
    return shut === undefined
      ? []
      : [`Do first: ${dayWords(shut)}, shut what lies over the beds. Nothing more is needed.`];
  }
  const risky = first.outlook.beds.filter(({ verdict }) => verdict.worst.verdict !== 'holds');
  const doings = risky.slice(0, MOST_BEDS_FIRST).map((bed) => `${bed.bed.name}: ${doWords(bed, reader)}`);
  const more = risky.length - doings.length;
  const rest = more > 0 ? [`and ${counted(more, 'more bed')}`] : [];
  return [`Do first, ${dayWords(first)}. ${[...doings, ...rest].join('; ')}.`];
}

const MOST_BEDS_FIRST = 3;

function doWords({ step, bed }: BedOutlook, reader: Reader): string {
  switch (step.kind) {
    case 'nothing':
      return isCovered(bed.covers) ? 'shut' : 'nothing to do';
    case 'none-helps':
      return 'pick what is ready before dark';
    case 'add': {
      const laying = layingWords(step.keys, step.added, reader, step.fromShed);
      return step.holds ? `add ${laying}` : `pick what is ready, and add ${laying}`;
    }
  }
}

/** "Thu 8 °F. Long tunnel, tatsoi: winterkill, odds 3 in 4. Add a quilt from the shed over the low tunnel. 2 more beds at risk." */
function nightLine(night: WeekNight, reader: Reader): string {
  const { named, outlook } = night;
  const { lowC, cloudFraction } = outlook.weather.summary;
  const day = weekdayName(named.span.sunset, outlook.garden.timeZone).slice(0, 3);
  const start = `${day} ${temperature(lowC, reader.units)}`;
  const [worst] = outlook.beds;
  if (worst === undefined) return `${start}, ${skyWord(cloudFraction)}.`;
  if (isFrostless(outlook)) return `${start}. No frost at any leaf; nothing to do.`;
  if (worst.verdict.worst.verdict === 'holds') {
    const shut = outlook.beds.some(({ bed }) => isCovered(bed.covers));
    const nearest = outlook.beds.length === 1 ? 'Holds' : `All hold, ${worst.bed.name} nearest to harm`;
    return `${start}. ${nearest}; ${shut ? 'shut' : 'nothing to do'}.`;
  }
  const others = outlook.beds.filter(({ verdict }) => verdict.worst.verdict !== 'holds').length - 1;
  const more = others > 0 ? ` ${counted(others, 'more bed')} at risk.` : '';
  return `${start}. ${bedWords(worst, reader)}. ${capitalised(doWords(worst, reader))}.${more}`;
}

/** When the cold is over, as far as the forecast goes; and the coldest night where it is not the worst. */
function endLines({ week, reader }: WeekTelling): string[] {
  const coldest = coldestNight(week);
  const worst = week.known.some(isRiskyNight) ? worstNight(week) : coldest;
  const isTold = worst.outlook.weather.summary.lowC - coldest.outlook.weather.summary.lowC < SAME_LOW_K;
  return [
    ...(isTold ? [] : [`Coldest outside: ${dayWords(coldest)}, low about ${lowWords(coldest, reader)}.`]),
    ...riskEndLine(week),
    ...freezeEndLine(week, reader),
    ...clearNightLine(week),
  ];
}

const SAME_LOW_K = 0.5;

/** When every bed holds again; a break between two cold spells is no end. */
function riskEndLine({ known }: WeekOutlook): string[] {
  const first = known.findIndex(isRiskyNight);
  const end = known.findLastIndex(isRiskyNight);
  if (end < 0) return [];
  const pause = known.slice(first, end).filter((night) => !isRiskyNight(night));
  const rest = pause.length === 0 ? '' : `A break ${list(pause.map(dayWords))}, then it is back: keep covers at hand. `;
  const [after, ...later] = known.slice(end + 1);
  const until = later.at(-1);
  if (after === undefined) return [`${rest}No end in sight by ${dayWords(known[end] ?? known[0])}; I see no further.`];
  return [
    `${rest}It eases ${dayWords(after)}: then every bed holds${until === undefined ? '' : `, as far as ${dayWords(until)}`}.`,
  ];
}

/** Where a clear sky still brings frost to the ground. [°C] */
const GROUND_FROST_BELOW_C = 3;

function freezeEndLine({ known }: WeekOutlook, reader: Reader): string[] {
  const last = known.findLastIndex(({ outlook }) => outlook.weather.summary.lowC < 0);
  const [end, next] = [known[last], known[last + 1]];
  if (end === undefined || next === undefined) return [];
  const lowC = next.outlook.weather.summary.lowC;
  const still =
    lowC < GROUND_FROST_BELOW_C
      ? `; ${dayWords(next)}, ${temperature(lowC, reader.units)}, can still bring ground frost if it clears`
      : '';
  return [`Last night below freezing: ${dayWords(end)}${still}.`];
}

/** A night above freezing that frosts leaves all the same is not believed without a reason. */
function clearNightLine({ known }: WeekOutlook): string[] {
  const night = known.find((each) => isRiskyNight(each) && each.outlook.weather.summary.lowC > 0);
  if (night === undefined) return [];
  return [
    `${capitalised(dayWords(night))} counts though it stays above freezing: under a clear, calm sky leaves get colder than the air.`,
  ];
}

function unknownLine({ unknown, garden }: WeekOutlook): string[] {
  if (unknown.length === 0) return [];
  const days = unknown.map(({ span }: NamedNight) => weekdayName(span.sunset, garden.timeZone));
  return [
    `The forecast does not reach ${list(days, 'or')} night yet, so I say nothing of ${unknown.length === 1 ? 'it' : 'them'}.`,
  ];
}
