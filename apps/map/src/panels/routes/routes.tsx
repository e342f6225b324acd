export function Routes() {
  return null;
}
