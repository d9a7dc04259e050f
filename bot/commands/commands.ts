import { ASK, ASK_CHOICE } from './ask/ask.ts';
import { BED } from './bed/bed.ts';
import { CHECK } from './check.ts';
import type { ButtonHandler, Command } from './command.ts';
import { COMPARE } from './compare/compare.ts';
import { helpOn } from './help.ts';
import { ERASE_BUTTON, MYDATA } from './mydata.ts';
import { SHED } from './shed.ts';
import { REMOVE_SITE_BUTTON } from './site/remove-site.ts';
import { SITE } from './site/site.ts';
import { COVERED_BUTTON } from './tonight/covered.ts';
import { MY_BEDS_BUTTON, TONIGHT } from './tonight/tonight.ts';
import { UNITS } from './units.ts';
import { VENT } from './vent/vent.ts';
import { WARNINGS } from './warnings/warnings.ts';
import { WINTER } from './winter/winter.ts';

const WITHOUT_HELP: readonly Command[] = [
  ASK,
  CHECK,
  TONIGHT,
  VENT,
  WINTER,
  COMPARE,
  SITE,
  BED,
  SHED,
  WARNINGS,
  UNITS,
  MYDATA,
];

/** Every command, in the order in which help tells them. */
export const COMMANDS: readonly Command[] = [...WITHOUT_HELP, helpOn(WITHOUT_HELP)];

export const BUTTONS: readonly ButtonHandler[] = [
  ASK_CHOICE,
  COVERED_BUTTON,
  MY_BEDS_BUTTON,
  REMOVE_SITE_BUTTON,
  ERASE_BUTTON,
];
