import fc from 'fast-check';

/** A number without the special cases that no place or forecast has. */
export function between(min: number, max: number): fc.Arbitrary<number> {
  return fc.double({ min, max, noNaN: true });
}

export const anyLatitudeDeg = between(-90, 90);
export const anyLongitudeDeg = between(-180, 180);
/** Where people garden: the sun rises and sets on every day of the year. */
export const gardenLatitudeDeg = between(-65, 65);
export const thisCentury = fc.date({
  min: new Date('2000-01-01T00:00:00Z'),
  max: new Date('2050-01-01T00:00:00Z'),
  noInvalidDate: true,
});
