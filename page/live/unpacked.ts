/** What is packed into the page: deflated, in letters. */
export async function unpacked(id: string): Promise<ArrayBuffer> {
  const letters = document.getElementById(id)?.textContent ?? '';
  const bytes = Uint8Array.from(atob(letters.trim()), (letter) => letter.charCodeAt(0));
  return new Response(new Blob([bytes]).stream().pipeThrough(new DecompressionStream('deflate-raw'))).arrayBuffer();
}
