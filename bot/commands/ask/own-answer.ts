import { cropVocabulary } from '../../language/crop-vocabulary.ts';
import type { Understood } from '../../language/understood.ts';
import type { GardenBed } from '../../outlook/garden.ts';
import type { Bed } from '../../store/port/beds.ts';
import type { Reply } from '../../talk/reply.ts';
import { capitalised } from '../../text/phrases.ts';
import { cropWord, type Reader } from '../../text/reader.ts';
import { underWords } from '../../text/verdict-words.ts';
import { storeOf } from '../kept-for.ts';
import type { Services } from '../services.ts';
import { forecastsOf } from '../site/site-weather.ts';
import { ownNightsReply } from '../tonight/own-nights.ts';
import { ownWeekReply } from '../tonight/own-week.ts';
import { answerQuestion } from './answer-question.ts';
import { type AskContext, withCautions } from './answered.ts';
import { type AskedNight, saidLaid, statedNight } from './asked-night.ts';
import { hardeningAt, needsHardening } from './own-hardening.ts';
import { forecastNight, nightName, type OwnPlace, taughtBed } from './own-place.ts';
import { bedsGrowing, bedsNamed, ownPlots, type Plot } from './plots.ts';

export interface OwnQuestion {
  readonly understood: Understood;
  readonly own: OwnPlace;
  readonly reader: Reader;
  readonly now: Date;
}

const OF_A_NIGHT: ReadonlySet<Understood['intent']> = new Set(['survive', 'what-cover', 'which-crops', 'outlook']);

/** Does the answer hang on the member's own place or beds? Not where a low is said and no bed of theirs is meant. */
export function needsOwnPlace(understood: Understood, own: OwnPlace): boolean {
  const { intent, lowC, problem, missing } = understood;
  if (problem !== undefined || missing !== undefined) return false;
  const isOfNight = OF_A_NIGHT.has(intent) || understood.beforeNight === true;
  if (isOfNight && lowC === undefined) return true;
  // "Blanket or quilt?" is asked of any night, "which is better tonight" of the forecast's.
  if (intent === 'compare-covers' && lowC === undefined && understood.when !== undefined) return true;
  return (isOfNight || intent === 'how-cold') && isOfOwnBeds(understood, own.beds);
}

/** A bed is named, or "my kale" is meant under what lies over it. */
function isOfOwnBeds(understood: Understood, beds: readonly Bed[]): boolean {
  const { beds: said, crops } = understood;
  if (said.numbers.length > 0 || said.named.length > 0) return true;
  if (!said.mine || saysCovers(understood)) return false;
  return crops.length === 0 ? beds.length > 0 : bedsGrowing(understood, beds).length > 0;
}

function saysCovers({ covers, options }: Understood): boolean {
  return covers !== undefined || options !== undefined;
}

/** A question that hangs on the member's own place: answered from its forecast and beds, for the member alone. */
export async function ownAnswer(question: OwnQuestion, services: Services): Promise<Reply> {
  const { understood, own, reader, now } = question;
  const { lowC, intent, when } = understood;
  const plots = ownPlots(understood, own.beds);
  if (lowC !== undefined || intent === 'how-cold') return statedLow(question, plots, services);
  if (when === 'week' && intent !== 'compare-covers') return ownWeek(question, plots, services);
  const beds = intent === 'compare-covers' ? undefined : bedsOfOutlook(understood, own.beds, plots);
  if (beds !== undefined) {
    const only = new Set(beds.map(({ id }) => id));
    const wish = { sites: [own.site], night: nightName(when), reader, now, only };
    return ownNightsReply(wish, storeOf(services), forecastsOf(services));
  }
  return onForecast(question, plots, services);
}

/** One night of the forecast, with what the bed's thermometers have taught. */
async function onForecast(question: OwnQuestion, plots: readonly Plot[], services: Services): Promise<Reply> {
  const { understood, own, reader, now } = question;
  const { when } = understood;
  const bed = own.beds.find(({ name }) => plots.some(({ bedName }) => bedName === name));
  const taught = bed && (await taughtBed(own, bed, storeOf(services), now));
  const { night, section, credits } = await forecastNight(
    { site: own.site, when, reader, now, taught, laid: saidLaid(understood) },
    services,
  );
  const reply = replyOn(question, plots, night);
  const [verdict, ...rest] = reply.sections;
  return { ...reply, sections: [...(verdict ? [verdict] : []), section, ...rest], credits, private: true };
}

/** What hangs on the place, but on no forecast. */
async function statedLow(question: OwnQuestion, plots: readonly Plot[], services: Services): Promise<Reply> {
  const { understood, own, now } = question;
  const { lowC } = understood;
  const hardeningUnder = needsHardening(understood) ? await hardeningAt(own.site, now, services) : undefined;
  const there = hardeningUnder && { hardeningUnder };
  const night = lowC === undefined ? undefined : { ...statedNight(lowC, understood, now), ...there };
  return { ...replyOn(question, plots, night, there), private: true };
}

/** All nights that the forecast reaches, for the beds meant; crops that grow in none are judged as they were said to lie. */
function ownWeek(
  { understood, own, reader, now }: OwnQuestion,
  plots: readonly Plot[],
  services: Services,
): Promise<Reply> {
  const { site, beds } = own;
  const meant = bedsOfOutlook(understood, beds, plots) ?? (plots.length === 0 ? beds : undefined);
  const wish = { sites: [site], reader, now };
  const which =
    meant === undefined
      ? { said: plots.map((plot) => bedAsSaid(plot, reader)) }
      : { only: new Set(meant.map(({ id }) => id)) };
  return ownWeekReply({ ...wish, ...which }, storeOf(services), forecastsOf(services));
}

function hardeningSaid({ hardened, followedIndex }: Plot['state']) {
  const hardeningIndex = hardened === undefined ? followedIndex : Number(hardened);
  return hardeningIndex === undefined ? {} : { hardeningIndex };
}

function bedAsSaid({ crop, covers, state, bedName }: Plot, reader: Reader): GardenBed {
  const crops = capitalised(cropWord(crop, reader));
  return {
    name: `${bedName === undefined ? crops : `${bedName}, ${crops}`} ${underWords(covers, reader)}`,
    covers,
    plantings: [
      {
        cropId: crop.id,
        stage: state.stage === 'seedling' ? 'just-set-out' : 'grown',
        ...hardeningSaid(state),
      },
    ],
  };
}

/** Several beds, or whole beds, are shown as a night of the garden is: each by what to do, the most urgent first. */
function bedsOfOutlook(
  understood: Understood,
  beds: readonly Bed[],
  plots: readonly Plot[],
): readonly Bed[] | undefined {
  const { crops, hardened, intent, covers } = understood;
  const named = bedsNamed(understood, beds);
  if (crops.length === 0) {
    const asksOfBeds =
      intent === 'outlook' ||
      intent === 'pick' ||
      understood.beds.mine ||
      (intent === 'which-crops' && covers === undefined);
    return named ?? (asksOfBeds ? beds : undefined);
  }
  const inBeds = new Set(plots.map(({ bedName }) => bedName));
  const areGrown = bedsGrowing(understood, named ?? beds).length === inBeds.size && !inBeds.has(undefined);
  if (inBeds.size < 2 || !areGrown || saysCovers(understood) || hardened !== undefined) return undefined;
  return beds.filter(({ name }) => inBeds.has(name));
}

function replyOn(
  { understood, own, reader, now }: OwnQuestion,
  plots: readonly Plot[],
  night: AskedNight | undefined,
  there: Pick<AskContext, 'hardeningUnder'> = {},
): Reply {
  const ofBeds = plots.some(({ bedName }) => bedName !== undefined) || isOfOwnBeds(understood, own.beds);
  return withCautions(
    answerQuestion(understood, cropVocabulary(), { reader, now, night, ...there, ...(ofBeds && { plots }) }),
  );
}
