const DAY_MS = 86_400_000;

/** So many days from Monday to Friday, from a day on, ISO dates. */
export function workingDays(first: string, count: number): string[] {
  const days: string[] = [];
  for (let at = Date.parse(`${first}T00:00:00Z`); days.length < count && Number.isFinite(at); at += DAY_MS) {
    const day = new Date(at);
    if (day.getUTCDay() % 6 !== 0) days.push(day.toISOString().slice(0, 10));
  }
  return days;
}
