/** Sends the plan: its address holds all of it, so a message with that address opens the same plan elsewhere. */
import { useState } from 'preact/hooks';
import type { PlannerWords } from '../../wording/planner/index.ts';
import { writeAddress } from '../plan-address.ts';

type Sent = 'not yet' | 'copied' | 'failed';

/** The device's own way to share where it has one, else the address is copied. */
async function send(title: string): Promise<Sent> {
  writeAddress();
  const url = location.href;
  try {
    if (navigator.share !== undefined) {
      await navigator.share({ title, url });
      return 'not yet';
    }
    await navigator.clipboard.writeText(url);
    return 'copied';
  } catch (error) {
    // Whoever closes the device's own list of ways to share has changed their mind; nothing went wrong.
    return error instanceof DOMException && error.name === 'AbortError' ? 'not yet' : 'failed';
  }
}

export function SendPlan({ title, words }: { title: string; words: PlannerWords }) {
  const [sent, setSent] = useState<Sent>('not yet');
  return (
    <div class="send">
      <button type="button" class="plain" onClick={() => void send(title).then(setSent)}>
        {words.answer.send}
      </button>
      <p role="status" class="quiet">
        {sent === 'copied' && words.answer.copied}
        {sent === 'failed' && words.answer.notCopied}
      </p>
    </div>
  );
}
