/**
 * Refuses an invalid instant and a place that is not on the globe.
 *
 * @param at - The instant.
 * @param latitudeDeg - North positive. [°, −90…90]
 * @param longitudeDeg - East positive. [°, −180…180]
 * @throws RangeError naming the parameter, its value and the limit.
 */
export function refusePlaceOffTheGlobe(at: Date, latitudeDeg: number, longitudeDeg: number): void {
  if (Number.isNaN(at.getTime())) throw new RangeError('at is not a valid instant');
  if (!(Math.abs(latitudeDeg) <= 90)) throw new RangeError(`latitudeDeg ${latitudeDeg} is outside −90…90`);
  if (!(Math.abs(longitudeDeg) <= 180)) throw new RangeError(`longitudeDeg ${longitudeDeg} is outside −180…180`);
}
