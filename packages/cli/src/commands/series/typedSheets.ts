import { type Parsed, type Refusal, refusal } from '@evenfall/clinical';
import { PAPER_IDS, type PaperId } from '@evenfall/report';
import type { Given, Option } from '../../options/option.js';

/** The files that are to be drawn beside the answer; null is not asked for. */
export type TypedSheets = {
  readonly pdf: string | null;
  readonly svg: string | null;
  readonly paper: PaperId;
  readonly isReplaced: boolean;
  readonly isInvented: boolean;
};

export const SHEET_OPTIONS: readonly Option[] = [
  { name: 'pdf', kind: 'value', means: 'options.pdf', hint: 'OUT.pdf' },
  { name: 'svg', kind: 'value', means: 'options.svg', hint: 'OUT.svg' },
  { name: 'paper', kind: 'value', means: 'options.paper', choices: PAPER_IDS },
  { name: 'replace', kind: 'switch', means: 'options.replaceFile' },
  { name: 'invented', kind: 'switch', means: 'options.invented' },
];

/** Reads them. Errors: `/NAME` of the option. */
export function typedSheets(given: Given): Parsed<TypedSheets> {
  const [pdf, svg] = [given.text('pdf'), given.text('svg')];
  const refusals: Refusal[] = [];
  for (const [name, path] of [
    ['pdf', pdf],
    ['svg', svg],
  ] as const) {
    if (path === '') refusals.push(refusal(`/${name}`, 'missing', 'writable-file', path));
  }
  if (pdf !== null && pdf === svg) refusals.push(refusal('/svg', 'contradicts', 'file-of-its-own', svg));
  const isDrawn = pdf !== null || svg !== null;
  if (given.text('paper') !== null && pdf === null) {
    refusals.push(refusal('/paper', 'contradicts', 'pdf-beside', given.text('paper')));
  }
  for (const name of ['replace', 'invented']) {
    if (given.isOn(name) && !isDrawn)
      refusals.push(refusal(`/${name}`, 'contradicts', 'pdf-or-svg-beside', null));
  }
  if (refusals.length > 0) return { ok: false, refusals };
  return {
    ok: true,
    value: {
      pdf,
      svg,
      paper: PAPER_IDS.find((one) => one === given.text('paper')) ?? 'a4',
      isReplaced: given.isOn('replace'),
      isInvented: given.isOn('invented'),
    },
  };
}
