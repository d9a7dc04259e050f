import { describe, expect, test } from 'vitest';
import { MATERIALS, type Material, type Skin } from '../../../rules/covers/material-table.ts';
import { COVER_KEYS, COVERS } from '../../../rules/index.ts';
import { SOURCES } from '../../../rules/sources.ts';

const MATERIAL_ROWS = Object.entries<Material>(MATERIALS);

describe('the table of covers', () => {
  test('knows every cover by two names, and materials of all but hoops and jugs', () => {
    expect(Object.keys(COVERS).toSorted()).toEqual(COVER_KEYS.toSorted());
    for (const key of COVER_KEYS) {
      const { american, british, materials } = COVERS[key];
      expect(american.length * british.length).toBeGreaterThan(0);
      expect(materials.length > 0, key).toBe(key !== 'hoops' && key !== 'jugs');
    }
  });

  test('no two covers share a name in one dialect', () => {
    for (const dialect of ['american', 'british'] as const) {
      expect(new Set(COVER_KEYS.map((key) => COVERS[key][dialect])).size).toBe(COVER_KEYS.length);
    }
  });

  test('what nobody adds for a night has no effort: snow and high tunnels', () => {
    const without = COVER_KEYS.filter((key) => COVERS[key].effort === undefined);
    expect(without).toEqual(['snow', 'high-tunnel', 'high-tunnel-double', 'greenhouse-glass', 'greenhouse-twin-wall']);
  });

  test('what is laid on other covers for the night is cloth or a mat, and only that', () => {
    for (const key of COVER_KEYS) {
      expect(COVERS[key].nightAddition !== undefined, key).toBe(['cloth', 'mat'].includes(COVERS[key].kind));
    }
  });
});

describe('the table of materials', () => {
  test.each(MATERIAL_ROWS)('%s sends on no more than it gets, dry or wet, of heat and of light', (_key, { skin }) => {
    expect(skin.longwaveTransmittedDryFraction + skin.longwaveReflectedDryFraction).toBeLessThanOrEqual(1);
    expect(skin.longwaveTransmittedWetFraction + skin.longwaveReflectedWetFraction).toBeLessThanOrEqual(1);
    expect(skin.longwaveTransmittedWetFraction).toBeLessThanOrEqual(skin.longwaveTransmittedDryFraction);
    expect(skin.sunTransmittedFraction + skin.sunAbsorbedFraction).toBeLessThanOrEqual(1);
  });

  test.each(MATERIAL_ROWS)(
    '%s lies within its plausible ranges and names known sources',
    (_key, { skin, ranges, sources }) => {
      for (const [name, [low, high]] of Object.entries(ranges)) {
        const value = skin[name as keyof Skin];
        expect(value, name).toBeGreaterThanOrEqual(low);
        expect(value, name).toBeLessThanOrEqual(high);
      }
      for (const source of Object.values(sources)) expect(SOURCES).toHaveProperty([source]);
    },
  );
});
