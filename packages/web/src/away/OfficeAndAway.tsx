import type { OfficeBeside } from '@evenfall/clinical';
import type { OfficeLeftOut, OfficeNear } from '@evenfall/record';
import { officeNoneText, officeText, signedText } from '@evenfall/report';
import { useApp } from '../app/context.js';

type OfficeProps = { readonly office: OfficeNear; readonly beside: OfficeBeside };

/** What the office and these readings are consistent with together, and the white-coat effect as a number. */
export function OfficeAndAway({ office, beside: { phenotype, whiteCoat, limits } }: OfficeProps) {
  const { words } = useApp();
  const { was, which } = officeText(office, limits, words);
  const names = phenotype?.names.map((name) => words.title('phenotype', name)) ?? [];
  return (
    <section aria-label={words.sentence('away.officeTitle')}>
      <h2>{words.sentence('away.officeTitle')}</h2>
      <p>
        {was};{' '}
        {words.sentence('series.officeMinus', {
          systolic: signedText(whiteCoat.systolic, words),
          diastolic: signedText(whiteCoat.diastolic, words),
        })}
        .
      </p>
      {names.length === 0 ? null : (
        <p>
          {words.sentence('away.together', {
            text: words.sentence('series.consistentWith', { names: words.say.anyOf(names) }),
          })}
        </p>
      )}
      <p className="small soft">{which}</p>
    </section>
  );
}

/** That no office pressure stands beside these readings, and why, where rounds are near and none is taken. */
export function OfficeNotTaken({ leftOut }: { readonly leftOut: readonly OfficeLeftOut[] }) {
  const { words } = useApp();
  const text = officeNoneText(leftOut, words);
  if (text === null) return null;
  return (
    <section aria-label={words.sentence('away.officeTitle')}>
      <h2>{words.sentence('away.officeTitle')}</h2>
      <p>{text}</p>
    </section>
  );
}
