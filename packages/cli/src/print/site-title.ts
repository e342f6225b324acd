/** Name of the site as a heading; an invented one says so. */
export function siteTitle({ name, invented }: { name: string | null; invented: boolean }): string {
  const bare = invented ? (name ?? '').replace(/^invented:\s*/i, '') : (name ?? '');
  const title = bare === '' ? 'Site without a name' : bare.charAt(0).toUpperCase() + bare.slice(1);
  return invented ? `${title} (INVENTED EXAMPLE)` : title;
}
