import { MS_PER_H } from '../../rules/index.ts';

/** A last look before shutting; with a short lead, at a third of it (judgement). */
const CHECK_BEFORE_SHUTTING_H = 1;
const CHECK_LEAD_SHARE = 1 / 3;

export interface PostTimes {
  readonly dueAt: Date;
  /** When the forecast is looked at again; undefined without a lead. */
  readonly checkAt: Date | undefined;
}

/** When a channel's warning comes, and when the forecast is looked at once more. */
export function postTimes(shutBy: Date, leadH: number): PostTimes {
  const beforeH = Math.min(CHECK_BEFORE_SHUTTING_H, leadH * CHECK_LEAD_SHARE);
  return {
    dueAt: hoursBefore(shutBy, leadH),
    checkAt: leadH === 0 ? undefined : hoursBefore(shutBy, beforeH),
  };
}

function hoursBefore(at: Date, hours: number): Date {
  return new Date(at.getTime() - hours * MS_PER_H);
}
