/** What the water in soil or jugs is at: all ice, freezing or thawing, or free of ice. */
export type Phase = 'ice' | 'slush' | 'water';

/**
 * The phase at a temperature.
 *
 * @param temperatureC - Temperature. [°C]
 * @param frozenC - Where the last water has frozen. [°C, below 0]
 * @returns The phase.
 */
export function phaseAt(temperatureC: number, frozenC: number): Phase {
  if (temperatureC > 0) return 'water';
  return temperatureC > frozenC ? 'slush' : 'ice';
}

/**
 * The phase to try next when the one that was assumed gave a temperature of another. A step never leaps over freezing: with the slope of ice or
 * of water alone the balance overshoots 0 °C by far, first one way and then the other.
 *
 * @param assumed - Phase of the pass that was made.
 * @param found - Phase of the temperature that it gave.
 * @returns Phase for the next pass; `assumed` when it was right.
 */
export function nextPhase(assumed: Phase, found: Phase): Phase {
  return assumed === found || assumed === 'slush' ? found : 'slush';
}
