/** Hands a file to the browser as if it had been downloaded. */
const KEPT_MS = 60_000;

export function handOver(content: Uint8Array | string, fileName: string, type: string): void {
  const address = URL.createObjectURL(new Blob([content as BlobPart], { type }));
  const link = document.createElement('a');
  link.href = address;
  link.download = fileName;
  document.body.append(link);
  link.click();
  link.remove();
  setTimeout(() => URL.revokeObjectURL(address), KEPT_MS);
}
