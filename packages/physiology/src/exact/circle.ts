/*
 * Sine and cosine of a part of a turn, the same on every machine. The turn is reduced exactly; the kernels are those of
 * fdlibm k_sin.c and k_cos.c (Sun Microsystems 1993, freely usable).
 */
const TWO_PI = 6.283185307179586;

/** What of the two kernels makes the sine, by the quarter turn from -2 to 2: no branch, which chance would make costly. */
const OF_SINE = new Float64Array([-1, 0, 1, 0, -1]);
const OF_COSINE = new Float64Array([0, -1, 0, 1, 0]);

/** sin(2 pi u). */
export function sineOfTurns(u: number): number {
  const r = u - Math.floor(u + 0.5);
  const quarter = Math.floor(r * 4 + 0.5);
  const x = (r - quarter / 4) * TWO_PI;
  const z = x * x;
  const sine =
    x +
    x *
      z *
      (-0.16666666666666632 +
        z *
          (0.00833333333332249 +
            z *
              (-0.0001984126982985795 +
                z * (2.7557313707070068e-6 + z * (-2.5050760253406863e-8 + z * 1.58969099521155e-10)))));
  const cosine =
    1 -
    (0.5 * z -
      z *
        z *
        (0.0416666666666666 +
          z *
            (-0.001388888888887411 +
              z *
                (2.480158728947673e-5 +
                  z * (-2.7557314351390663e-7 + z * (2.087572321298175e-9 + z * -1.1359647557788195e-11))))));
  const at = (quarter + 2) | 0;
  return (OF_SINE[at] as number) * sine + (OF_COSINE[at] as number) * cosine;
}

/** cos(2 pi u). */
export function cosineOfTurns(u: number): number {
  return sineOfTurns(u + 0.25);
}

/**
 * sin(2 pi u) of two parts of a turn, in place. They are worked out side by side, and numbers in a column are no objects to
 * the engine as those are that go from call to call.
 */
export function sinesOfTurns(two: Float64Array): void {
  two[0] = sineOfTurns(two[0] as number);
  two[1] = sineOfTurns(two[1] as number);
}
