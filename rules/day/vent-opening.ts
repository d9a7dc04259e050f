/** An opening as the balance wants it. */
export interface Opening {
  /** Opening area per area of floor. */
  readonly areaRatio: number;
  /** Height of the opening. [m] */
  readonly heightM: number;
}

/**
 * The opening of a frame light that is hinged at the back and propped at the front: a slot in front and a triangle on each side.
 *
 * @param propM - Height of the prop. [m, 0…1]
 * @param depthM - Front to back. [m, above 0]
 * @param lengthM - Left to right. [m, above 0]
 * @returns The opening.
 * @throws RangeError when a length is out of range.
 *
 * @see Geometry
 */
export function proppedLight(propM: number, depthM: number, lengthM: number): Opening {
  refuse('propM', propM, 0);
  refuse('depthM', depthM, Number.MIN_VALUE);
  refuse('lengthM', lengthM, Number.MIN_VALUE);
  return { areaRatio: (propM * (lengthM + depthM)) / (lengthM * depthM), heightM: propM };
}

/**
 * The opening of a tunnel or fabric whose edge is raised along one side.
 *
 * @param raisedM - Height of the edge above the ground. [m, 0…1]
 * @param widthM - Width of the tunnel. [m, above 0]
 * @returns The opening.
 * @throws RangeError when a length is out of range.
 *
 * @see Geometry
 */
export function raisedSide(raisedM: number, widthM: number): Opening {
  refuse('raisedM', raisedM, 0);
  refuse('widthM', widthM, Number.MIN_VALUE);
  return { areaRatio: raisedM / widthM, heightM: raisedM };
}

function refuse(name: string, valueM: number, leastM: number): void {
  if (!(valueM >= leastM && Number.isFinite(valueM))) throw new RangeError(`${name} ${valueM} is below ${leastM}`);
}
