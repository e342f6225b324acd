export function Draw() {
  return null;
}
