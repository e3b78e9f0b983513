import { type JudgedBy, NOTHING_CHOSEN } from '@evenfall/record';
import { useEffect } from 'react';
import { useApp, useKept } from '../app/context.js';
import { useRulesOf } from '../chart/useRulesOf.js';
import { loadRules } from '../server/load.js';
import { loadPlaceProtocols } from '../server/loadProtocols.js';
import { type JudgedUnder, judgedUnder } from './judgedUnder.js';

/** The protocols of the place, asked for where some are judged by another than the one in force. False: they are on their way. */
export function useProtocolsOf(all: readonly (JudgedBy | null)[]): boolean {
  const app = useApp();
  const inForce = useKept(({ known }) => known.inForce.value) ?? NOTHING_CHOSEN;
  const is = useKept(({ known }) => known.rules.is);
  const isNamed = all.some((one) => one !== null && one.presetVersion !== null);
  const isOther = all.some(
    (one) => one !== null && one.presetVersion !== null && one.presetVersion !== inForce.presetVersion,
  );
  useEffect(() => {
    if (isOther) void loadRules(app);
  }, [app, isOther]);
  useEffect(() => {
    if (isNamed) void loadPlaceProtocols(app);
  }, [app, isNamed]);
  return !isOther || is !== 'asked';
}

/** The rules that an exercise is judged by; null while they are on their way. */
export function useJudgedUnder(judgedBy: JudgedBy | null): JudgedUnder | null {
  const inForce = useKept(({ known }) => known.inForce.value) ?? NOTHING_CHOSEN;
  const rulesOf = useRulesOf();
  const isHere = useProtocolsOf([judgedBy]);
  const is = useKept(({ known }) => known.rules.is);
  return isHere ? judgedUnder(judgedBy, inForce, rulesOf, is === 'here') : null;
}
