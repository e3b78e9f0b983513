import { scenarioOf } from '@evenfall/physiology';

/** Where somebody is practised with. People of the place have a way of their own, so that no id hides another page. */
export function roomAt(scenario: string): string {
  return scenarioOf(scenario) === undefined ? `/practice/own/${scenario}` : `/practice/${scenario}`;
}
