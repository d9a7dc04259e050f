import { type CoverKey, soundOrder } from '../../rules/index.ts';
import { celsiusFrom } from '../ground/units.ts';
import { type Facts, isFragment } from './facts.ts';
import type { Assumption, Intent, Understood, Unit, When } from './understood.ts';

const UNIT_ASSUMPTIONS: readonly Assumption[] = ['unit-preferred', 'unit-sensible', 'colder-end', 'colder-of-several'];

/** Does the text only make sense as a continuation of what was understood before? */
export function continues(facts: Facts, now: Understood, previous: Understood): boolean {
  if (previous.asked === 'decline' || !(saysAnything(facts, now) || isBrief(facts))) return false;
  if (answersWhatWasMissing(facts, previous)) return true;
  if (standsAlone(facts)) return false;
  if (namesUnitAlone(facts, previous) || deniesCoversAlone(facts, previous)) return true;
  return facts.says('follow-on', 'instead', 'correction') || narrows(facts) || refersBack(facts, previous);
}

/** "it", "another", or a piece of a question that names nothing of its own. */
function refersBack(facts: Facts, { asked }: Understood): boolean {
  if (facts.hasCrop || facts.hasPlantLike || facts.hasBed) return isFragment(facts) && !facts.hasLow && !facts.hasCover;
  return asked !== 'caution' && (facts.says('it', 'another') || isFragment(facts));
}

const LONGEST_BRIEF = 4;

function isBrief({ spans, says }: Facts): boolean {
  return spans.length <= LONGEST_BRIEF && says('celsius', 'fahrenheit', 'without');
}

/** "celsius": the unit of what was said before. */
function namesUnitAlone(facts: Facts, { temperature }: Understood): boolean {
  return isBrief(facts) && facts.says('celsius', 'fahrenheit') && !facts.hasLow && temperature !== undefined;
}

/** "no, without". */
function deniesCoversAlone(facts: Facts, { covers }: Understood): boolean {
  return (
    isBrief(facts) && covers !== undefined && !facts.hasCover && /^(without|none)( it| them)?$/.test(lastWord(facts))
  );
}

/** "just the kale under a sheet", "plus a row cover inside": goes on with what was asked. */
function narrows({ spans, hasLow }: Facts): boolean {
  return !hasLow && /^(just|only|and|plus|but|also)\b/.test(spans[0]?.plain ?? '');
}

/** "Will it freeze tonight", where it is no plant; "is bed 2 all right tonight"; "when do I open the frame"; matters of safety. */
function standsAlone({ says, hasBed, hasCover, when, asksCaution }: Facts): boolean {
  return says('night-weather') || asksCaution || (hasBed && when !== undefined) || (hasCover && says('open', 'shut'));
}

function saysAnything({ hasCrop, hasPlantLike, hasLow, hasCover, hasBed, when }: Facts, now: Understood): boolean {
  const state = now.hardened !== undefined || now.stage !== undefined || now.sky !== undefined;
  return (
    hasCrop || hasPlantLike || hasLow || hasCover || hasBed || when !== undefined || state || now.intent === 'how-cold'
  );
}

function answersWhatWasMissing({ hasCrop, hasLow, hasCover, optionCount }: Facts, { missing }: Understood): boolean {
  if (missing === 'temperature') return hasLow && !hasCrop;
  if (missing === 'crop' || missing === 'crop-choice') return hasCrop && !hasLow;
  return missing === 'covers' && (hasCover || optionCount > 1) && !hasCrop;
}

const OF_THE_DAY: ReadonlySet<When> = new Set<When>(['now', 'today', 'morning']);

/** What was understood before, with what is said now laid over it. */
export function continued(facts: Facts, now: Understood, previous: Understood): Understood {
  const asked = askedNow(facts, now, previous);
  const names = now.crops.length + now.choices.length + now.unknownCrops.length > 0;
  const isOtherNight = now.when !== undefined && now.when !== previous.when && !OF_THE_DAY.has(now.when);
  const keepsLow = now.temperature === undefined && asked !== 'how-cold' && !isOtherNight;
  const covers = now.options ? undefined : coversNow(facts, now, previous);
  const {
    lowC: _lowC,
    temperature: _temperature,
    covers: _covers,
    options: _options,
    missing: _,
    ...before
  } = previous;
  const { covers: __, problem: ___, ...after } = now;
  return {
    ...before,
    ...(keepsLow && (namesUnitAlone(facts, previous) ? inOtherUnit(facts, previous) : lowOf(previous))),
    ...after,
    intent: asked,
    asked,
    ...(covers && { covers }),
    ...(asked === 'compare-covers' && !now.options && previous.options && { options: previous.options }),
    ...(!names && { crops: previous.crops, choices: previous.choices, unknownCrops: previous.unknownCrops }),
    beds: now.beds.mine ? now.beds : previous.beds,
    cautionTopics: now.cautionTopics,
    assumptions: [
      ...new Set([
        ...previous.assumptions.filter((assumption) => keepsLow || !UNIT_ASSUMPTIONS.includes(assumption)),
        ...now.assumptions,
      ]),
    ],
    ...(now.problem && now.problem !== 'off-topic' && { problem: now.problem }),
  };
}

function lowOf({ lowC, temperature }: Understood): Partial<Understood> {
  return { ...(lowC !== undefined && { lowC }), ...(temperature && { temperature }) };
}

/** The same number in the unit that is named now. */
function inOtherUnit({ says }: Facts, { temperature }: Understood): Partial<Understood> {
  if (temperature === undefined) return {};
  const unit: Unit = says('celsius') ? 'C' : 'F';
  const lowC = unit === 'C' ? temperature.value : celsiusFrom(temperature.value);
  return { lowC, temperature: { ...temperature, unit, unitReason: 'said' } };
}

function askedNow(facts: Facts, now: Understood, previous: Understood): Intent {
  const open = now.asked === 'survive' || now.asked === 'decline';
  if (!open || facts.says('survive', 'harm', 'fine')) return now.asked === 'decline' ? 'survive' : now.asked;
  if (previous.asked === 'how-cold' && facts.hasLow) return 'survive';
  if (previous.asked === 'outlook') return outlookNarrowed(facts);
  return previous.asked === 'compare-covers' && facts.hasCover ? 'survive' : previous.asked;
}

function lastWord({ spans }: Facts): string {
  return spans.findLast(({ kind }) => kind !== 'mark')?.plain ?? '';
}

/** Asked of a night, and told now of the crop or of the low. */
function outlookNarrowed({ hasCrop, hasLow }: Facts): Intent {
  if (hasCrop) return 'what-cover';
  return hasLow ? 'which-crops' : 'outlook';
}

/** "And a tunnel over it", "another blanket": laid over what was there; any other cover takes its place. */
function coversNow(facts: Facts, now: Understood, previous: Understood): readonly CoverKey[] | undefined {
  if (deniesCoversAlone(facts, previous)) return [];
  if (now.covers === undefined) return previous.covers;
  const adds =
    facts.says('another', 'on-it', 'inside-it', 'as-well') || /^(and|plus|also)\b/.test(facts.spans[0]?.plain ?? '');
  if (!adds || previous.covers === undefined) return now.covers;
  const inside =
    (facts.says('inside-it') || /^(inside|underneath|under)$/.test(lastWord(facts))) && !facts.says('on-it');
  const all = inside ? [...previous.covers, ...now.covers] : [...now.covers, ...previous.covers];
  return soundOrder(all) ?? all;
}
