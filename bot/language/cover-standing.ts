import { STRUCK } from './clean-text.ts';
import type { CoverMention } from './cover-mentions.ts';
import {
  ABSENT_AFTER,
  ABSENT_BEFORE,
  ABSENT_BEHIND,
  ABSENT_LATER,
  ASKED_DEED,
  BACK_ON,
  DOUBTFUL,
  DOUBTFUL_ANYWHERE,
  FATE_BEHIND,
  HYPOTHETICAL_BEFORE,
  IF_OR_MAYBE,
  IF_OR_MAYBE_ON,
  LIES_UNDER,
  LISTED_BEFORE,
  LISTED_BEHIND,
  NOT_OFF,
  OFF_AFTER_ALL,
  ON_AFTER,
  ON_BEFORE,
  OUT_NOW,
  OVER_BARE_BEFORE,
  PART_OPEN,
  PAST_AFTER,
  PAST_BEFORE,
  PLAIN_WORDS,
  PROPOSED_BEFORE,
  SPENT_DENIAL,
} from './cover-standing-table.ts';
import { COVER, type Surroundings, surroundingsOf } from './cover-surroundings.ts';
import { isCue, type Span, senseOf } from './span.ts';

/** Is a cover that a text names on the plants? `doubtful`: it may or may not be, so both must be answered. */
export type Standing = 'laid' | 'absent' | 'doubtful';

/** How each of the covers named stands. `ofLastNight`: what was on is then what is asked about. */
export function standingsOf(
  spans: readonly Span[],
  mentions: readonly CoverMention[],
  ofLastNight: boolean,
): readonly Standing[] {
  const places = new Set(mentions.map(({ at }) => at));
  const isBareNow = mentions.some(({ keys, at }) => keys.length === 0 && !isOneChoice(spans, at)) && !weighs(spans);
  const words = spans.slice(0, MOST_WORDS).map(({ plain }) => plain);
  const wholeText = words.join(' ').replace(SPENT_DENIAL, ' ');
  const standings: Standing[] = [];
  for (const mention of mentions) {
    const around = surroundingsOf(spans, mention.at, places);
    const after = ofCover(around.before, around.after.replace(LISTED_BEHIND, ''));
    const before = standings.at(-1);
    const said: Said = {
      ...around,
      after,
      mention,
      isBareNow,
      ofLastNight,
      wholeText,
      ...(before && { listed: before }),
    };
    standings.push(mention.keys.length === 0 ? 'laid' : standingOf(said));
  }
  return mentions.map((mention, index) => ofAKind(mentions, standings, mention, standings[index] ?? 'laid'));
}

/** "Straw? I never used straw": what is told of one cover in two places is as sure as the less sure of them. */
function ofAKind(
  mentions: readonly CoverMention[],
  standings: readonly Standing[],
  { keys }: CoverMention,
  own: Standing,
): Standing {
  const same = standings.filter((_, index) => keys.length > 0 && mentions[index]?.keys[0] === keys[0]);
  return same.every((standing) => standing === own) ? own : 'doubtful';
}

/** "nothing but a sheet". */
function isOneChoice(spans: readonly Span[], at: number): boolean {
  return /^(but|except|besides|or)$/.test(spans[at + 1]?.plain ?? '');
}

/** "bare or fleece": bare is then one of the ways to choose from. */
function weighs(spans: readonly Span[]): boolean {
  return spans.some((span, at) => {
    if (!isCue(span, 'or', 'versus')) return false;
    const near = [...spans.slice(Math.max(0, at - 2), at), ...spans.slice(at + 1, at + 4)];
    return (
      near.some((each) => senseOf(each, 'cover')) &&
      near.some((each) => senseOf(each, 'bare') ?? senseOf(each, 'cover'))
    );
  });
}

/** "chard in a cold frame is lost": what is said behind a cover that something lies under is said of that. */
function ofCover(before: string, after: string): string {
  return LIES_UNDER.test(before) ? after.replace(FATE_BEHIND, '') : after;
}

/** Longer texts are looked at so far, for what they say of covers in general. */
const MOST_WORDS = 200;

interface Said extends Surroundings {
  readonly mention: CoverMention;
  /** The standing of the cover named just before. */
  readonly listed?: Standing;
  /** The text says elsewhere that nothing lies over the plants. */
  readonly isBareNow: boolean;
  readonly ofLastNight: boolean;
  readonly wholeText: string;
}

interface StandingRule {
  readonly standing: Standing;
  readonly when: (said: Said) => boolean;
}

/** The first that holds gives the standing; what no rule doubts is on. */
const STANDING_RULES: readonly StandingRule[] = [
  { standing: 'doubtful', when: ({ before }) => PROPOSED_BEFORE.test(before) },
  { standing: 'doubtful', when: (said) => isSupposed(said) && OFF_AFTER_ALL.test(said.after) },
  { standing: 'laid', when: isSupposed },
  { standing: 'laid', when: isOnAfterAll },
  { standing: 'absent', when: ({ before }) => matches(ABSENT_BEFORE, before) },
  { standing: 'absent', when: ({ before, listed }) => listed === 'absent' && LISTED_BEFORE.test(before) },
  { standing: 'absent', when: ({ behind }) => ABSENT_BEHIND.test(behind) },
  { standing: 'absent', when: isSaidToBeOff },
  { standing: 'absent', when: isSaidLaterToBeOff },
  { standing: 'absent', when: (said) => isRoof(said.mention) && PART_OPEN.test(said.later) },
  { standing: 'absent', when: ({ isBareNow, after }) => isBareNow && after.startsWith(STRUCK) },
  { standing: 'absent', when: (said) => isPast(said) && isOutNow(said) },
  { standing: 'doubtful', when: isPast },
  { standing: 'absent', when: ({ isBareNow, before }) => isBareNow && !OVER_BARE_BEFORE.test(before) },
  { standing: 'doubtful', when: (said) => matches(DOUBTFUL, clauseOf(said)) },
  { standing: 'doubtful', when: ({ wholeText }) => DOUBTFUL_ANYWHERE.test(wholeText) },
  { standing: 'doubtful', when: (said) => !isPlainlyOn(said) },
];

function standingOf(said: Said): Standing {
  return STANDING_RULES.find(({ when }) => when(said))?.standing ?? 'laid';
}

function matches(patterns: readonly RegExp[], words: string): boolean {
  return patterns.some((pattern) => pattern.test(words));
}

/** "if I throw a sheet over": what the asker supposes is what is asked about. */
function isSupposed({ before }: Said): boolean {
  return HYPOTHETICAL_BEFORE.test(before) && !/(^| )(without|no)$/.test(before);
}

/** A cover that no word puts over the plants may lie anywhere: "the cloche lives at my daughter's". */
function isPlainlyOn({ before, after, mention }: Said): boolean {
  if (LYING_ANYWAY.has(mention.keys[0] ?? '')) return true;
  if (ON_BEFORE.test(before) || ON_AFTER.test(after)) return true;
  return `${before} ${after}`.split(' ').every((word) => word === '' || PLAIN_WORDS.has(word));
}

/** Nobody has to lay it. */
const LYING_ANYWAY: ReadonlySet<string> = new Set(['snow', 'jugs']);

/** "the frame isn't open", "I put it straight back": but a bare bed elsewhere, or a second thought, leaves it open. */
function isOnAfterAll({ before, after, later, isBareNow }: Said): boolean {
  if (isBareNow || IF_OR_MAYBE_ON.test(before)) return false;
  return NOT_OFF.test(before) || NOT_OFF.test(after) || BACK_ON.test(after) || BACK_ON.test(later);
}

/** "the blanket blew off", but not "should I take the blanket off" or "if it blows off". */
function isSaidToBeOff({ before, after }: Said): boolean {
  const isAsked = ASKED_DEED.test(before) || ASKED_DEED.test(after);
  return matches(ABSENT_AFTER, after) && !isAsked && !IF_OR_MAYBE.test(before);
}

/** "had a blanket on but it blew off". */
function isSaidLaterToBeOff({ later }: Said): boolean {
  return matches(ABSENT_LATER, later) && !ASKED_DEED.test(later) && !IF_OR_MAYBE.test(later);
}

/** "was under a blanket": where last night is not what is asked about. */
function isPast({ ofLastNight, before, after }: Said): boolean {
  return !ofLastNight && (PAST_BEFORE.test(before) || PAST_AFTER.test(after));
}

function isOutNow({ isBareNow, after, later }: Said): boolean {
  return isBareNow || OUT_NOW.test(`${after} ${later}`);
}

function clauseOf({ before, after }: Said): string {
  return `${before} ${COVER} ${after}`.replace(SPENT_DENIAL, ' ');
}

function isRoof({ keys }: CoverMention): boolean {
  return keys.some((key) => key.includes('tunnel') || key.startsWith('cold-frame'));
}
