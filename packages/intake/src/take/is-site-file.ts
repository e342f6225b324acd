/** Whether a text is a site file already: GeoJSON whose features say what they are. */
export function isSiteFile(text: string): boolean {
  if (!/^[\s\uFEFF]*\{/.test(text.slice(0, 200))) return false;
  if (/"rootreach"\s*:/.test(text.slice(0, 5000))) return true;
  return /"kind"\s*:\s*"(?:tree|drain|fitting|finding|obstacle|barrier|level)"/.test(text.slice(0, 200_000));
}
