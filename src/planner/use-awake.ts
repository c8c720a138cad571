/** Asks the device to leave its screen on while somebody works; asks again after it was put away. */
import { useEffect, useState } from 'preact/hooks';

/** Whether the screen stays on. */
export function useAwake(): boolean {
  const [awake, setAwake] = useState(false);
  useEffect(() => {
    let held: WakeLockSentinel | undefined;
    let left = false;
    const hold = async (): Promise<void> => {
      if (left || document.visibilityState !== 'visible') return;
      try {
        held = await navigator.wakeLock.request('screen');
        setAwake(true);
        held.addEventListener('release', () => setAwake(false));
      } catch {
        setAwake(false);
      }
    };
    void hold();
    document.addEventListener('visibilitychange', hold);
    return () => {
      left = true;
      document.removeEventListener('visibilitychange', hold);
      void held?.release();
    };
  }, []);
  return awake;
}
