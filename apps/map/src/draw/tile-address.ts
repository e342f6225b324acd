/** A tile server that the user named, kept on this device only: a site file can't bring one. */
export interface TileAddress {
  readonly address: string;
  readonly attribution: string;
}

const KEY = 'rootreach-tiles';

export const isTileAddress = (address: string): boolean =>
  /^https:\/\/[^/\s;,'"{}]+\//.test(address) && ['{z}', '{x}', '{y}'].every((part) => address.includes(part));

/** The address in use, or null. */
export function tileAddress(): TileAddress | null {
  try {
    const kept = JSON.parse(localStorage.getItem(KEY) ?? 'null') as Partial<TileAddress> | null;
    if (typeof kept?.address !== 'string' || !isTileAddress(kept.address)) return null;
    return { address: kept.address, attribution: String(kept.attribution ?? '') };
  } catch {
    return null;
  }
}

/** Keeps an address for use, or none; false where the browser keeps nothing. */
export function keepTileAddress(tiles: TileAddress | null): boolean {
  try {
    if (tiles) localStorage.setItem(KEY, JSON.stringify(tiles));
    else localStorage.removeItem(KEY);
    return true;
  } catch {
    return false;
  }
}

/** Where pictures may come from: this page, and the one server of the user's address. */
export function pictureSources(tiles: TileAddress | null): string {
  const own = "img-src 'self' data: blob:";
  return tiles ? `${own} ${new URL(tiles.address).origin}` : own;
}

/**
 * Tightens the page's own rule at start. Rules that are added later can only take away: the page as served allows
 * pictures from secure addresses, and this leaves at most the one that the user gave.
 */
export function tightenPictures(): void {
  const meta = document.createElement('meta');
  meta.httpEquiv = 'Content-Security-Policy';
  meta.content = pictureSources(tileAddress());
  document.head.append(meta);
}
