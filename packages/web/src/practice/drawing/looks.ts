import { keyOf, type Scenario, uniformOf } from '@evenfall/physiology';

/** What somebody looks like, as drawn. Nobody real: age and sex of the scenario, the rest by their id. */
export type Looks = {
  readonly skin: 1 | 2 | 3 | 4;
  readonly hair: 'dark' | 'brown' | 'fair' | 'grey' | 'white';
  readonly cut: 'short' | 'thin' | 'bun' | 'long' | 'tail';
  readonly hasBeard: boolean;
  readonly hasGlasses: boolean;
  readonly shirt: 1 | 2 | 3;
  /** How tall beside a grown person, sitting. */
  readonly size: number;
};

const GROWN_YEARS = 15;

/** The same person looks the same in every visit, and where it is shown how: the seed of a visit changes no face. */
export function looksOf({ id, ageYears, sex }: Pick<Scenario, 'id' | 'ageYears' | 'sex'>): Looks {
  const key = keyOf(numberOf(id), 'patient');
  const draw = (at: number) => uniformOf(key, at);
  const isChild = ageYears < GROWN_YEARS;
  const isMan = sex === 'm';
  return {
    skin: (1 + Math.floor(4 * draw(0))) as Looks['skin'],
    hair:
      ageYears >= 72
        ? 'white'
        : ageYears >= 55
          ? 'grey'
          : draw(1) < 0.5
            ? 'dark'
            : draw(1) < 0.8
              ? 'brown'
              : 'fair',
    cut: isMan ? (ageYears >= 60 ? 'thin' : 'short') : isChild ? 'tail' : ageYears >= 60 ? 'bun' : 'long',
    hasBeard: isMan && ageYears >= 30 && draw(2) < 0.35,
    hasGlasses: ageYears >= 45 ? draw(3) < 0.5 : draw(3) < 0.15,
    shirt: (1 + Math.floor(3 * draw(4))) as Looks['shirt'],
    size: isChild ? 0.62 + (0.3 * ageYears) / GROWN_YEARS : 1,
  };
}

/** A number of 32 bits that stands for an id. Source: the hash FNV-1a of 32 bits, from memory. */
export function numberOf(id: string): number {
  let number = 0x811c9dc5;
  for (const letter of id) number = Math.imul(number ^ (letter.codePointAt(0) ?? 0), 0x01000193);
  return number >>> 0;
}

/** The class names that colour a drawing of somebody. */
export function looksClass({ skin, hair, shirt }: Looks): string {
  return `looks-skin-${skin} looks-hair-${hair} looks-shirt-${shirt}`;
}
