/** Where prices come from: `Prices: an INVENTED list of 2026-11-01; give your own with --prices FILE.` */
export function priceNote({ invented, dated }: { invented: boolean; dated: string | null }): string {
  const when = dated === null ? 'without a date' : `of ${dated}`;
  return invented
    ? `Prices: an INVENTED list ${when}, to try things out; give your own with --prices FILE.`
    : `Prices: your list ${when}.`;
}

/** Date or dates of a list. */
export const datesText = (dated: { readonly from: string; readonly to: string } | null): string | null => {
  if (dated === null) return null;
  return dated.from === dated.to ? dated.from : `${dated.from} to ${dated.to}`;
};
