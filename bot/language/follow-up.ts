import { type CoverKey, soundOrder } from '../../rules/index.ts';
import { type Facts, isFragment } from './facts.ts';
import type { Assumption, Intent, Understood } from './understood.ts';

const UNIT_ASSUMPTIONS: readonly Assumption[] = ['unit-preferred', 'unit-sensible', 'colder-end', 'colder-of-several'];

/** Does the text only make sense as a continuation of what was understood before? */
export function continues(facts: Facts, now: Understood, previous: Understood): boolean {
  if (previous.asked === 'decline' || !saysAnything(facts, now)) return false;
  if (answersWhatWasMissing(facts, previous)) return true;
  if (standsAlone(facts)) return false;
  const leads = facts.says('follow-on', 'instead');
  const names = facts.hasCrop || facts.hasPlantLike || facts.hasBed;
  if (names) return leads || (isFragment(facts) && !facts.hasLow && !facts.hasCover);
  return leads || (previous.asked !== 'caution' && (facts.says('it', 'another') || isFragment(facts)));
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

/** What was understood before, with what is said now laid over it. */
export function continued(facts: Facts, now: Understood, previous: Understood): Understood {
  const asked = askedNow(facts, now, previous);
  const names = now.crops.length + now.choices.length + now.unknownCrops.length > 0;
  const isOtherNight = now.when !== undefined && now.when !== previous.when;
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
    ...(keepsLow && lowOf(previous)),
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

function askedNow(facts: Facts, now: Understood, previous: Understood): Intent {
  const open = now.asked === 'survive' || now.asked === 'decline';
  if (!open || facts.says('survive', 'harm', 'fine')) return now.asked === 'decline' ? 'survive' : now.asked;
  if (previous.asked === 'how-cold' && facts.hasLow) return 'survive';
  return previous.asked === 'compare-covers' && facts.hasCover ? 'survive' : previous.asked;
}

/** "And a tunnel over it", "another blanket": laid over what was there; any other cover takes its place. */
function coversNow(facts: Facts, now: Understood, previous: Understood): readonly CoverKey[] | undefined {
  if (now.covers === undefined) return previous.covers;
  if (!facts.says('another', 'on-it', 'inside-it') || previous.covers === undefined) return now.covers;
  const inside = facts.says('inside-it') && !facts.says('on-it');
  const all = inside ? [...previous.covers, ...now.covers] : [...now.covers, ...previous.covers];
  return soundOrder(all) ?? all;
}
