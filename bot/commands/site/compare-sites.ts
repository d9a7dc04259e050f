import { z } from 'zod';
import { PlainProblem } from '../../ground/errors.ts';
import { difference, temperature } from '../../ground/units.ts';
import { NIGHT_NAMES } from '../../outlook/named-night.ts';
import type { Reply, Section } from '../../talk/reply.ts';
import { bedCropWords, skyWord } from '../../text/night-words.ts';
import { capitalised } from '../../text/phrases.ts';
import type { Reader } from '../../text/reader.ts';
import type { Action } from '../command.ts';
import { readerFor, storeOf } from '../kept-for.ts';
import { checkedOptions, maybe, oneOf } from '../options.ts';
import { type SiteNight, siteNight } from '../tonight/own-nights.ts';
import { ownSites } from './own-sites.ts';
import { forecastsOf } from './site-weather.ts';

/** Lows nearer to each other than this are told as the same: forecasts are no finer. [K] */
const SAME_K = 0.75;

export const COMPARE_SITES: Action = {
  description: 'Your sites beside each other in one night: which is colder, and what each needs',
  example: 'site compare night:tomorrow',
  options: [
    {
      name: 'night',
      description: 'Which night; tonight unless you say',
      kind: 'text',
      choices: NIGHT_NAMES.map((value) => ({ label: capitalised(value), value })),
    },
  ],
  private: true,
  async run(request, services) {
    const { night = 'tonight' } = checkedOptions(request, z.object({ night: maybe(oneOf('The night', NIGHT_NAMES)) }));
    const store = storeOf(services);
    const forecasts = forecastsOf(services);
    const sites = await ownSites(store, request.memberId);
    if (sites.length < 2) {
      throw new PlainProblem(`You have one site, ${sites[0].name}. Add the other with /site set, then compare them.`);
    }
    const reader = await readerFor(request, services);
    const wish = { night, reader, now: request.now };
    const outcomes = await Promise.allSettled(sites.map((site) => siteNight(site, wish, store, forecasts)));
    const unknown = outcomes.flatMap((outcome, index) => unknownLine(outcome, sites[index]?.name ?? ''));
    return comparedSites(
      outcomes.flatMap((outcome) => (outcome.status === 'fulfilled' ? outcome.value : [])),
      unknown,
      reader,
    );
  },
};

/** A site without a night does not silence the others; a fault of ours is no answer. */
function unknownLine(outcome: PromiseSettledResult<SiteNight>, name: string): string[] {
  if (outcome.status === 'fulfilled') return [];
  if (!(outcome.reason instanceof PlainProblem)) throw outcome.reason;
  const { message } = outcome.reason;
  return [message.startsWith(name) ? message : `${name}: ${message}`];
}

function comparedSites(found: readonly SiteNight[], unknown: readonly string[], reader: Reader): Reply {
  const byCold = found.toSorted((one, other) => lowC(one) - lowC(other));
  const [coldest, ...others] = byCold;
  const sections: Section[] = [{ lines: byCold.map((at) => siteLine(at, reader)) }, { lines: unknown }];
  return {
    headline: headline(coldest, others, reader),
    sections: sections.filter(({ lines }) => lines.length > 0),
    credits: [...new Map(found.flatMap(({ reply }) => reply.credits ?? []).map((each) => [each.url, each])).values()],
    private: true,
    refused: coldest === undefined,
  };
}

/** "Hollow plot is the coldest tonight, 6 °F below Hill. Beds at risk there: 2; at the others 0." */
function headline(coldest: SiteNight | undefined, others: readonly SiteNight[], reader: Reader): string {
  const mildest = others.at(-1);
  if (coldest === undefined) return 'I could not work out that night for any of your sites.';
  const { words } = coldest.night;
  if (mildest === undefined) return `${coldest.site.name} is the only site that I could work out ${words}.`;
  const apartK = lowC(mildest) - lowC(coldest);
  const risky = riskyWords([coldest, ...others]);
  const atRisk = risky.length === 0 ? 'No bed is at risk.' : `Beds at risk at ${risky.join(' and ')}.`;
  return apartK < SAME_K
    ? `Your sites are about as cold as each other ${words}. ${atRisk}`
    : `${coldest.site.name} is the coldest ${words}, ${difference(apartK, reader.units)} below ${mildest.site.name}. ${atRisk}`;
}

function riskyWords(nights: readonly SiteNight[]): string[] {
  return nights.filter((at) => riskyOf(at) > 0).map((at) => `${at.site.name} (${riskyOf(at)})`);
}

function riskyOf({ outlook }: SiteNight): number {
  return outlook.beds.filter(({ verdict }) => verdict.worst.verdict !== 'holds').length;
}

/** "Hill: low 31 °F, clear. Worst: Long tunnel, kale: on the edge." */
function siteLine({ site, outlook }: SiteNight, reader: Reader): string {
  const { summary } = outlook.weather;
  const start = `${site.name} (${site.exposure}): low ${temperature(summary.lowC, reader.units)}, ${skyWord(summary.cloudFraction)}`;
  const [worst] = outlook.beds;
  if (worst === undefined) return `${start}. No bed has a crop in it.`;
  const { planting, verdict, organLowC } = worst.verdict.worst;
  const where = bedCropWords(worst.bed.name, planting.crop, reader);
  const what = planting.crop.judgedBy === 'surface' ? 'soil' : 'leaf';
  return `${start}. Worst: ${where}: ${verdict}, ${what} ${temperature(organLowC, reader.units)}.`;
}

function lowC({ outlook }: SiteNight): number {
  return outlook.weather.summary.lowC;
}
