/** Three short notes, made on the spot: no sound file to fetch. Silent where the device will not play. */
const NOTES_HZ = [660, 660, 880];
const NOTE_S = 0.22;
const GAP_S = 0.12;

export function ring(): void {
  try {
    const sound = new AudioContext();
    NOTES_HZ.forEach((hz, at) => {
      const note = sound.createOscillator();
      const volume = sound.createGain();
      const from = sound.currentTime + at * (NOTE_S + GAP_S);
      note.frequency.value = hz;
      volume.gain.setValueAtTime(0.25, from);
      volume.gain.exponentialRampToValueAtTime(0.001, from + NOTE_S);
      note.connect(volume).connect(sound.destination);
      note.start(from);
      note.stop(from + NOTE_S);
    });
    navigator.vibrate?.([300, 150, 300]);
  } catch {
    // A device without sound still shows the time.
  }
}
