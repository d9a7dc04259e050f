import type { NightInput } from '../../../rules/index.ts';

const LATENT_J_PER_M3 = 334e6;
const FIRST_LAYER_M = 0.003;
const GROWTH = 1.13;
const DEPTH_M = 1;

/** Soil in thin layers that keep heat, not temperature: freezing between 0 and −1 °C needs no iteration then. */
export interface SecondGround {
  readonly thicknessM: readonly number[];
  readonly startJPerM3: readonly number[];
  readonly soilC: (heatJPerM3: number) => number;
  readonly deepC: number;
}

/** Physics page (`rules/balance/README.md`), section 8. */
export function secondGround({ soil, soilProfile }: NightInput): SecondGround {
  const thicknessM: number[] = [];
  let topM = 0;
  for (let thick = FIRST_LAYER_M; topM + thick < DEPTH_M; thick *= GROWTH) {
    thicknessM.push(thick);
    topM += thick;
  }
  thicknessM.push(DEPTH_M - topM);
  const { heatCapacityJPerM3K: capacity, freezableFraction } = soil;
  const latent = LATENT_J_PER_M3 * freezableFraction;
  const heat = (soilC: number) => capacity * soilC + latent * Math.max(0, Math.min(1, 1 + soilC));
  const soilC = (heatJPerM3: number) => {
    if (heatJPerM3 >= latent) return (heatJPerM3 - latent) / capacity;
    if (heatJPerM3 <= -capacity) return heatJPerM3 / capacity;
    return (heatJPerM3 - latent) / (capacity + latent);
  };
  let above = 0;
  const startJPerM3 = thicknessM.map((thick) => {
    const middleM = above + thick / 2;
    above += thick;
    return heat(profileC(soilProfile, middleM));
  });
  return { thicknessM, startJPerM3, soilC, deepC: profileC(soilProfile, DEPTH_M) };
}

/** Conduction between layers, from the flux into the top one. [J m⁻³ s⁻¹] */
export function soilWarming(
  ground: SecondGround,
  temperaturesC: readonly number[],
  intoTopWPerM2: number,
  conductivityWPerMK: number,
): number[] {
  const { thicknessM, deepC } = ground;
  const down = temperaturesC.map((hereC, i) => {
    const belowC = temperaturesC[i + 1];
    const here = thicknessM[i] ?? Number.NaN;
    const distanceM = belowC === undefined ? here / 2 : (here + (thicknessM[i + 1] ?? Number.NaN)) / 2;
    return (conductivityWPerMK * (hereC - (belowC ?? deepC))) / distanceM;
  });
  return down.map((leaving, i) => ((i === 0 ? intoTopWPerM2 : (down[i - 1] ?? 0)) - leaving) / (thicknessM[i] ?? 1));
}

function profileC(profile: NightInput['soilProfile'], depthM: number): number {
  const [first] = profile;
  let above = first;
  for (const point of profile) {
    if (point.depthM >= depthM && above !== undefined && point !== above) {
      const share = (depthM - above.depthM) / (point.depthM - above.depthM);
      return above.soilC + share * (point.soilC - above.soilC);
    }
    above = point;
  }
  return above?.soilC ?? Number.NaN;
}
