/** Days in a month of a year; month from 1. */
function daysIn(year: number, month: number): number {
  if (month === 2) return (year % 4 === 0 && year % 100 !== 0) || year % 400 === 0 ? 29 : 28;
  return [4, 6, 9, 11].includes(month) ? 30 : 31;
}

/**
 * The day so many months and days after a day, both `YYYY-MM-DD`. A month that has no such day gives its last: six
 * months after 31 August is the end of February.
 */
export function dayAfter(day: string, { months = 0, days = 0 }: { months?: number; days?: number }): string {
  const [givenYear = 0, givenMonth = 1, givenDay = 1] = day.split('-').map(Number);
  const count = givenYear * 12 + (givenMonth - 1) + months;
  let [year, month] = [Math.floor(count / 12), (count % 12) + 1];
  let date = Math.min(givenDay, daysIn(year, month)) + days;
  while (date > daysIn(year, month)) {
    date -= daysIn(year, month);
    [year, month] = month === 12 ? [year + 1, 1] : [year, month + 1];
  }
  const two = (part: number) => String(part).padStart(2, '0');
  return `${String(year).padStart(4, '0')}-${two(month)}-${two(date)}`;
}
