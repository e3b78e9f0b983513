import { useSearch } from 'wouter';
import { useApp } from '../app/context.js';
import { nextHref } from './nextHref.js';

/** Said in the address of a page that is opened from the rest before the pressure, so that a reload still knows it. */
const FROM_PRESSURE = 'pressure';

/** The address of a page of a round that leads back to the pressure. */
export function fromPressure(href: string): string {
  return `${href}?from=${FROM_PRESSURE}`;
}

/** Where the page of a round was opened from, with its name, if that was neither the round nor the step before. */
export function useCameFrom(person: string): { readonly href: string; readonly text: string } | null {
  const { words } = useApp();
  const from = new URLSearchParams(useSearch()).get('from');
  return from === FROM_PRESSURE
    ? { href: nextHref(person, 'cuff'), text: words.sentence('app.pressure') }
    : null;
}
