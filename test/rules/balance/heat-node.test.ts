import fc from 'fast-check';
import { expect, test } from 'vitest';
import { heatNode, straightenEmission, straightenSaturation } from '../../../rules/balance/heat-node.ts';
import { blackBodyWPerM2 } from '../../../rules/constants.ts';
import { saturationSlopeHPaPerK, saturationVapourHPa } from '../../../rules/index.ts';

const celsius = fc.double({ min: -45, max: 60, noNaN: true });

test('a node has the saturation of the plain formula, and its tangent', () => {
  fc.assert(
    fc.property(celsius, (nodeC) => {
      const node = heatNode(0, nodeC);
      straightenSaturation(node);
      expect(node.saturationHPa).toBeCloseTo(saturationVapourHPa(nodeC), 9);
      expect(node.saturationSlopeHPaPerK).toBeCloseTo(saturationSlopeHPaPerK(nodeC), 9);
      expect(node.saturationBaseHPa + node.saturationSlopeHPaPerK * nodeC).toBeCloseTo(node.saturationHPa, 9);
    }),
  );
});

test('a node has the emission of a black body, and its tangent', () => {
  fc.assert(
    fc.property(celsius, (nodeC) => {
      const node = heatNode(0, nodeC);
      straightenEmission(node);
      const tangentWPerM2 = (atC: number) => node.emissionBaseWPerM2 + node.emissionSlopeWPerM2K * atC;
      expect(tangentWPerM2(nodeC)).toBeCloseTo(blackBodyWPerM2(nodeC), 8);
      // A tangent of a fourth power lies below it, by 6σT²δ² to first order.
      const gap = blackBodyWPerM2(nodeC + 1) - tangentWPerM2(nodeC + 1);
      expect(gap / (6 * 5.670374e-8 * (nodeC + 273.15) ** 2)).toBeCloseTo(1, 1);
    }),
  );
});
