/** Lengths of time in milliseconds, the unit of a `Date`. */
export const MS_PER_S = 1000;
export const MS_PER_MIN = 60 * MS_PER_S;
export const MS_PER_H = 60 * MS_PER_MIN;
export const MS_PER_DAY = 24 * MS_PER_H;
