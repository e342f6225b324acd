export function Works() {
  return null;
}
