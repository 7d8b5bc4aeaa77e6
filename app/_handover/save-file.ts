/** Hands a file to the browser's downloads. */
export function saveFile(blob: Blob, name: string): void {
  const address = URL.createObjectURL(blob);
  const link = document.createElement("a");
  link.href = address;
  link.download = name;
  link.click();
  // The download has its own hold on the data once it has begun; a minute is ample for that.
  setTimeout(() => URL.revokeObjectURL(address), 60_000);
}
