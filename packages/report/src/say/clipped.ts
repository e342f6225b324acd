/** A name that somebody wrote, short enough for its place. */
export const clipped = (name: string, most = 60): string =>
  [...name].length <= most
    ? name
    : `${[...name]
        .slice(0, most - 1)
        .join('')
        .trimEnd()}…`;
