/** Hands a text to the user as a file. */
export function handOver(name: string, text: string, type: string): void {
  const link = document.createElement('a');
  link.href = URL.createObjectURL(new Blob([text], { type: `${type};charset=utf-8` }));
  link.download = name;
  link.click();
  // the download has its own hold on the data once it has begun
  setTimeout(() => URL.revokeObjectURL(link.href), 60_000);
}
