import { ASK, ASK_CHOICE } from './ask/ask.ts';
import { BED } from './bed/bed.ts';
import { CHECK } from './check.ts';
import type { ButtonHandler, Command } from './command.ts';
import { COMPARE } from './compare/compare.ts';
import { helpOn } from './help.ts';
import { MORE, MORE_BUTTON } from './more.ts';
import { ERASE_BUTTON, MYDATA } from './mydata.ts';
import { OUTCOME } from './outcome/outcome.ts';
import { HOW_IT_WENT_BUTTON, OUTCOME_BUTTON } from './outcome/outcome-buttons.ts';
import { DOUBT_BUTTON } from './reading/doubts.ts';
import { READING } from './reading/reading.ts';
import { READING_BUTTON } from './reading/reading-form.ts';
import { RECORD } from './record/record.ts';
import { SHED } from './shed.ts';
import { REMOVE_SITE_BUTTON } from './site/remove-site.ts';
import { SITE } from './site/site.ts';
import { COVERED_BUTTON } from './tonight/covered.ts';
import { CURVE_BUTTON } from './tonight/curve.ts';
import { MY_BEDS_BUTTON, TONIGHT } from './tonight/tonight.ts';
import { UNITS } from './units.ts';
import { VENT } from './vent/vent.ts';
import { JOIN_FAR_BUTTON } from './warnings/membership.ts';
import { WARNINGS } from './warnings/warnings.ts';
import { WINTER } from './winter/winter.ts';

const WITHOUT_HELP: readonly Command[] = [
  ASK,
  CHECK,
  TONIGHT,
  VENT,
  WINTER,
  COMPARE,
  READING,
  OUTCOME,
  RECORD,
  SITE,
  BED,
  SHED,
  WARNINGS,
  UNITS,
  MORE,
  MYDATA,
];

/** Every command, in the order in which help tells them. */
export const COMMANDS: readonly Command[] = [...WITHOUT_HELP, helpOn(WITHOUT_HELP)];

export const BUTTONS: readonly ButtonHandler[] = [
  ASK_CHOICE,
  MORE_BUTTON,
  COVERED_BUTTON,
  MY_BEDS_BUTTON,
  CURVE_BUTTON,
  READING_BUTTON,
  DOUBT_BUTTON,
  HOW_IT_WENT_BUTTON,
  OUTCOME_BUTTON,
  REMOVE_SITE_BUTTON,
  JOIN_FAR_BUTTON,
  ERASE_BUTTON,
];
