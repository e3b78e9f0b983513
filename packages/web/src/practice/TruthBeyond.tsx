import type { Scenario } from '@evenfall/physiology';
import { useApp } from '../app/context.js';

type BeyondProps = {
  readonly scenario: Pick<Scenario, 'home' | 'leftArm' | 'standing'>;
  readonly truth: { readonly pulsePerMinute: number; readonly wristPerMinute: number };
};

/** So many beats a minute that do not reach the wrist are worth saying. Source: bedside handbook 1.10 (over 10 is often quoted). */
const DEFICIT_PER_MINUTE = 10;

/** What one visit does not show of a person by itself: at home, on the other arm, on the feet, at the heart. */
export function TruthBeyond({ scenario: { home, leftArm, standing }, truth }: BeyondProps) {
  const { words } = useApp();
  const say = words.sentence;
  const said = [
    home === null ? null : say('showing.atHome', home),
    leftArm === null ? null : say('showing.onTheLeft', leftArm),
    standing === null
      ? null
      : say('showing.onTheFeet', {
          ...standing.oneMinute,
          thenSystolic: standing.threeMinutes.systolic,
          thenDiastolic: standing.threeMinutes.diastolic,
        }),
    truth.pulsePerMinute - truth.wristPerMinute > DEFICIT_PER_MINUTE
      ? say('showing.notAtTheWrist', { heart: truth.pulsePerMinute, wrist: truth.wristPerMinute })
      : null,
  ].filter((one) => one !== null);
  if (said.length === 0) return null;
  return (
    <ul className="truth-beyond">
      {said.map((one) => (
        <li key={one}>{one}</li>
      ))}
    </ul>
  );
}
