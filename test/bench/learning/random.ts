/** Random numbers that are the same in every run. */
export interface Random {
  /** Even between 0 and 1. */
  even(): number;
  /** Standard normal. */
  normal(): number;
}

/** Mulberry32 by Tommy Ettinger (public domain), normal numbers by Box and Muller. */
export function random(seed: number): Random {
  let state = seed >>> 0;
  const even = () => {
    state = (state + 0x6d2b79f5) | 0;
    let mixed = Math.imul(state ^ (state >>> 15), 1 | state);
    mixed = (mixed + Math.imul(mixed ^ (mixed >>> 7), 61 | mixed)) ^ mixed;
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 4_294_967_296;
  };
  return { even, normal: () => Math.sqrt(-2 * Math.log(1 - even())) * Math.cos(2 * Math.PI * even()) };
}
