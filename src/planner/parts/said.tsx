/** What a change came to, for those who hear the page: one short sentence, once the typing has stopped. */
import { useEffect, useState } from 'preact/hooks';

/** Longer than the gap between two keys. */
const PAUSE_MS = 600;

export function Said({ text }: { text: string }) {
  const [said, setSaid] = useState('');
  useEffect(() => {
    const later = setTimeout(() => setSaid(text), PAUSE_MS);
    return () => clearTimeout(later);
  }, [text]);
  return (
    <p class="unseen" role="status">
      {said}
    </p>
  );
}
