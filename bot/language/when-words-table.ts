import type { When } from './understood.ts';

/**
 * Words for the night or day asked about. The list is closed and short, and the day it falls on is worked out elsewhere
 * from the place's own zone; a package for dates in prose would read far more than may be asked.
 */
export const WHEN_WORDS: Readonly<Record<When | 'tomorrow', string>> = {
  now: 'now, right now, just now, currently, at the moment, at present, at this moment, as we speak, this minute',
  today: 'today, this afternoon, later today, today at noon, this arvo, the afternoon',
  morning:
    'this morning, tomorrow morning, in the morning, morning, at dawn, first thing, at sunrise, dawn, sunrise, tmrw morning, tomorrow am, tomorrow at sunrise, early morning, the morning, tomorrow midday, tomorrow noon, tomorrow afternoon, tomorrow lunchtime',
  tonight:
    'tonight, tonite, 2nite, tonights, overnight, this evening, this night, the night, later tonight, tonight and tomorrow, this eve, by tonight, before tonight, before dark, before nightfall, tonigt, tonght, by nightfall, until tomorrow, the night ahead, coming night, tn',
  tomorrow: 'tomorrow, tomorow, tommorow, tommorrow, tmrw, tmw, tmr, 2moro, 2morrow, tomorrows',
  'tomorrow-night':
    'tomorrow night, tomorrow nite, tomorrow evening, tomorow night, tommorow night, tommorrow night, tmrw night, tmw night, tomorrow overnight, tomorrow nights, tmr night, the night after this, tomorrow eve',
  'last-night':
    'last night, last nite, yesterday night, the night before, last evening, lastnight, last nights, in the night just gone, overnight last night',
  monday: 'mon, monday, monday night, mon night, on mon, mondays, monday evening',
  tuesday: 'tue, tuesday, tuesday night, tues, tue night, tues night, on tue, tuesdays, tuesday evening',
  wednesday:
    'wed, wednesday, wednesday night, weds, wed night, weds night, on wed, wednesdays, wednesday evening, wensday, wednsday',
  thursday: 'thu, thursday, thursday night, thurs, thu night, thurs night, on thu, thur, thursdays, thursday evening',
  friday: 'friday, friday night, fri, fri night, fridays, friday evening',
  saturday:
    'sat, saturday, saturday night, sat night, on sat, saturdays, saturday evening, weekend, this weekend, the weekend, at the weekend',
  sunday: 'sunday, sunday night, sun night, on sun, sundays, sunday evening',
  week: 'week, this week, the week, next week, next few nights, next few days, coming nights, coming days, coming week, few nights, rest of the week, the next nights, nights ahead, days ahead, week ahead, seven nights, next couple of nights, this coming week, later this week, next days, next nights, next 3 nights, next three nights, next 5 nights, next 7 days',
};
