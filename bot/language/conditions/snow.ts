import type { SaidSnow } from '../understood.ts';
import { matchesIn, type SpanText, spansOfMatch } from './span-text.ts';

export interface SnowRead {
  readonly snow?: SaidSnow;
  /** Spans that are no low. */
  readonly at: readonly number[];
  /** Spans of snow that does not lie on the plants. */
  readonly elsewhere: readonly number[];
}

const M_PER: Readonly<Record<string, number>> = { in: 0.0254, ft: 0.3048, cm: 0.01, mm: 0.001, m: 1 };
const AMOUNT =
  '(\\d+(?:\\.\\d+)?|half a|half|a couple of|a couple|couple of|a few|few|several|a|an)(?: (?:-|to|or) (\\d+(?:\\.\\d+)?))?';
const LENGTH = '(inches|inch|in|"|”|cm|cms|centimetres|centimeters|mm|ft|foot|feet|metres?|meters?|m)';
const KIND =
  '(?:(?:fresh|new|newly fallen|wet|heavy|dry|powdery|powder|light|fluffy|settled|old|crusty|deep|packed|more|solid) ){0,2}';
const BEFORE_SNOW = new RegExp(` ${AMOUNT} ${LENGTH} (?:deep )?(?:of )?${KIND}snow\\w*(?= )`, 'g');
const AFTER_SNOW = new RegExp(
  ` snow\\w*(?: (?:depth|is|of|cover|pack|about|lies|lying|now|already|that is|thats|,|:|on|the|plants|them|it|bed)){0,4} ${AMOUNT} ${LENGTH}(?: deep| thick)?(?= )`,
  'g',
);
const KNEE_DEEP = / (knee|ankle|waist) deep(?= )/g;
const M_OF_LEG: Readonly<Record<string, number>> = { ankle: 0.1, knee: 0.5, waist: 1 };
const M_OF_WORD: Readonly<Record<string, number>> = { half: 0.5, couple: 2, few: 3, several: 4, a: 1 };
/** Deeper than gardens lie under (judgement). [m] */
const DEEPEST_M = 5;

const SNOW = / (?:snow\w*|[^ ]+ of snow|flurries|blizzard)(?= )|snow(?= )/g;
/** "no snow yet", "snow melted yesterday". */
const NO_SNOW =
  / (?:no|without|not any|hardly any) snow\w*(?= )| snow\w*(?: \S+){0,3} (?:melted|gone|has melted)(?= )| snow ?less(?= )/;
const ON_PLANTS =
  / (?:under|beneath|buried|covered|covering|covers|on (?:my |the |our )?(?:plants?|bed|beds|kale|spinach|lettuce|leeks?|garlic|crops?|them|it|top))\b/;
const ON_GROUND =
  / on (?:the )?(?:ground|lawn|paths?|yard|field|garden)\b| (?:around|beside|next to|outside|all around)(?: the| my)? (?:beds?|frames?|tunnels?|garden)\b/;
const FALLING =
  / (?:expect\w*|forecast\w*|coming|predict\w*|calling for|call for|due|supposed to (?:get|snow)|going to (?:get|snow)|will get|well get|gonna (?:get|snow)|on the way|is it going to snow|may snow|might snow)\b/;
const FRESH = / (?:fresh\w*|new|newly|powder\w*|dry|fluffy|just fell|fell today|last night)\b/;
const WET = / (?:wet|heavy|slushy|slush|sticky)\b/;

/** How deep snow lies, and where: on the plants, on the ground beside them, or still to fall. */
export function readSnow(read: SpanText): SnowRead {
  const mentions = matchesIn(read, SNOW);
  const deep = [...matchesIn(read, BEFORE_SNOW), ...matchesIn(read, AFTER_SNOW)].filter(isNoTemperature(read));
  const legs = mentions.length > 0 ? matchesIn(read, KNEE_DEEP) : [];
  const isNone = NO_SNOW.test(read.text);
  if (isNone) return { at: [], elsewhere: mentions.flatMap((match) => spansOfMatch(read, match)) };
  if (mentions.length === 0) return { at: [], elsewhere: [] };
  const depths = [...deep.map(depthOf), ...legs.map((match) => M_OF_LEG[match[1] ?? ''] ?? 0)];
  const depthM = depths.length === 0 ? undefined : Math.min(DEEPEST_M, Math.max(...depths));
  const where = whereOf(read.text);
  const snow: SaidSnow = {
    where,
    ...(depthM !== undefined && { depthM }),
    ...(FRESH.test(read.text) && { isFresh: true }),
    ...(WET.test(read.text) && { isWet: true }),
  };
  const touched = [...mentions, ...deep].flatMap((match) => spansOfMatch(read, match));
  return {
    snow,
    at: deep.flatMap((match) => spansOfMatch(read, match)),
    elsewhere: where === 'on-plants' ? [] : touched,
  };
}

function whereOf(text: string): SaidSnow['where'] {
  if (ON_GROUND.test(text) && !ON_PLANTS.test(text)) return 'on-ground';
  return FALLING.test(text) && !ON_PLANTS.test(text) ? 'falling' : 'on-plants';
}

/** "kale at 20 in snow" gives a low; "10 in snow" a depth. */
function isNoTemperature({ text }: SpanText): (match: RegExpExecArray) => boolean {
  return (match) => match[3] !== 'in' || !/ (?:at|to|hits|of|is) $/.test(text.slice(0, match.index + 1));
}

function depthOf(match: RegExpExecArray): number {
  const [, amount = 'a', upper, length = ''] = match;
  const value = Number(upper ?? amount);
  const words = Object.entries(M_OF_WORD).find(([word]) => amount.includes(word))?.[1] ?? 1;
  return (Number.isNaN(value) ? words : value) * (M_PER[lengthKey(length)] ?? 0.0254);
}

function lengthKey(length: string): string {
  if (length.startsWith('f')) return 'ft';
  if (length.startsWith('c')) return 'cm';
  if (length === 'mm') return 'mm';
  return length.startsWith('m') ? 'm' : 'in';
}
