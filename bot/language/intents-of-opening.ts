import { asksOfLife, type Facts, isFragment, namesBeds } from './facts.ts';
import type { IntentRule } from './intent-rule.ts';
import { isCue } from './span.ts';

/** "When do I open the frame?" */
export const VENT: IntentRule = {
  intent: 'vent',
  when: [isWarmUnderRoof, isTooHot, staysShutByDay, staysOnByDay, opens],
  unless: [asksOfLife, asksWhatToLayAtLow],
};

/** "My lettuce is wide open and it goes to 19: what do I throw on it?" */
function asksWhatToLayAtLow({ hasCrop, hasLow, says }: Facts): boolean {
  return hasCrop && hasLow && says('what', 'which') && says('cover');
}

/** "The tunnel is 90F inside". */
function isWarmUnderRoof({ isWarm, hasRoof, hasCrop }: Facts): boolean {
  return isWarm && hasRoof && !hasCrop;
}

/** "Is it too hot in my tunnel?" */
function isTooHot({ says, hasRoof, hasBed, hasCrop, hasCover }: Facts): boolean {
  return says('hot') && !says('frost') && (hasRoof || hasBed || says('lid') || (hasCrop && hasCover));
}

/** "Can I leave the frame shut all day?" */
function staysShutByDay(facts: Facts): boolean {
  return facts.says('leave') && facts.says('shut') && facts.when !== 'tonight' && namesCovering(facts);
}

/** "Is it ok to keep the row cover on during the day?" */
function staysOnByDay({ says, spans, when, hasCover: isNamed }: Facts): boolean {
  const hasCover = isNamed || says('lid');
  const stays = says('leave') || spans.some(({ plain }) => plain.startsWith('keep'));
  const byDay = when === 'today' || when === 'morning' || spans.some(({ plain }) => /\bday(time)?$/.test(plain));
  return hasCover && stays && byDay && spans.some(({ plain }) => plain === 'on');
}

function opens(facts: Facts): boolean {
  const { says, when } = facts;
  if (staysOpen(facts)) return when === 'today' || when === 'morning';
  const begins = isCue(facts.spans[0], 'open');
  const questions = says('when', 'should', 'can', 'how', 'what', 'which', 'will', 'safely', 'fine', 'need');
  const asks = begins || questions || isBriefOpening(facts);
  const something =
    namesCovering(facts) || opensByItself(facts) || when === 'today' || when === 'morning' || isBareWhen(facts);
  return asks && something && (opensOutright(facts) || takesOff(facts));
}

/** "shut the vents" names them only. */
function opensOutright({ spans, says }: Facts): boolean {
  return spans.some((span) => isCue(span, 'open') && !(says('shut') && span.plain.startsWith('vent')));
}

function namesCovering(facts: Facts): boolean {
  return facts.hasCover || facts.hasBed || namesBeds(facts) || facts.says('lid', 'garden', 'it');
}

/** "What time should I open up?" */
function isBareWhen(facts: Facts): boolean {
  return facts.says('when') && isFragment(facts);
}

/** "uncover", "vent": words that need no thing named. */
function opensByItself({ spans }: Facts): boolean {
  return spans.some(
    (span) => isCue(span, 'open') && /^(uncover|unwrap|vent|open the lid|take (it|them) off)/.test(span.plain),
  );
}

/** "open or closed today?", "covers off?" */
function isBriefOpening({ spans, says, when }: Facts): boolean {
  return spans.length <= 6 && (says('off', 'lid') || when !== undefined);
}

/** "Can I leave the tunnel open?", "keep the frame open all night". */
function staysOpen({ says, spans }: Facts): boolean {
  return says('open') && (says('leave') || spans.some(({ plain }) => plain === 'keep' || plain === 'stay'));
}

/** How many words may stand between "take" and "off". */
const REACH_OF_OFF = 5;

/** "take the row cover off", "blankets come off". */
function takesOff({ spans }: Facts): boolean {
  return spans.some((span, at) => {
    if (!isCue(span, 'off')) return false;
    const before = spans.slice(Math.max(0, at - REACH_OF_OFF), at);
    return before.some((verb) => /^(take|taking|come|pull|get|lift|leave)/.test(verb.plain));
  });
}

/** "When do I shut the frames?" */
export const CLOSE: IntentRule = {
  intent: 'close',
  when: [staysOpen, shuts, coversByWhen],
  unless: [({ hasLow, hasCrop }) => hasLow && hasCrop, ({ says }) => says('what', 'which') && !says('when', 'late')],
};

const SHORT_QUESTION = 8;

function shuts(facts: Facts): boolean {
  const { says, spans } = facts;
  const asksTime = says('when', 'late') || spans.some(({ plain }) => plain.endsWith('time'));
  const isBrief = spans.length <= SHORT_QUESTION;
  const asks = says('should', 'can', 'leave') && (namesCovering(facts) || says('everything') || isBrief);
  return says('shut') && (asksTime || asks || isCue(spans[0], 'shut'));
}

/** "When should I cover my beds?" asks for the hour, "what" and "how much" for the cover. */
function coversByWhen({ says, spans }: Facts): boolean {
  return (
    says('when') && says('cover') && !says('limit', 'harm', 'what', 'which', 'layers') && spans[0]?.plain !== 'how'
  );
}
