/** Fetches a script of this site by a tag, because a page from disk may neither import nor fetch. */
export function loadScript(address: string): Promise<void> {
  return new Promise((resolve, reject) => {
    const tag = document.createElement('script');
    tag.src = address;
    tag.onload = () => resolve();
    tag.onerror = () => reject(new Error(`${address} did not load`));
    document.head.append(tag);
  });
}
