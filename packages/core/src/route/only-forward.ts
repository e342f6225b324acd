/** Passes on how much is done, and never less than before. */
export function onlyForward(tell: ((share: number) => void) | undefined): (share: number) => void {
  let told = 0;
  return (share) => {
    if (share <= told) return;
    told = share;
    tell?.(share);
  };
}
