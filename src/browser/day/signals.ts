import type { Options } from "./day-run.ts";

/** Keeps the screen from going dark, as long as it is asked to and the browser can. */
type Wakefulness = { readonly hold: () => void; readonly release: () => void };

export function wakefulness(): Wakefulness {
  let wanted = false;
  let held: WakeLockSentinel | undefined;
  const ask = (): void => {
    if (!wanted || held || document.visibilityState !== "visible" || !("wakeLock" in navigator)) return;
    void navigator.wakeLock.request("screen").then(
      (lock) => {
        held = lock;
        lock.addEventListener("release", () => {
          held = undefined;
        });
        if (!wanted) void lock.release();
      },
      // A battery that runs low may refuse; the day goes on without.
      () => undefined,
    );
  };
  document.addEventListener("visibilitychange", ask);
  return {
    hold: () => {
      wanted = true;
      ask();
    },
    release: () => {
      wanted = false;
      void held?.release();
    },
  };
}

/** A short sign that something was taken or is due, as far as it is wanted. */
export function signaller(): (options: Options) => void {
  let sound: AudioContext | undefined;
  return ({ beep, buzz }) => {
    if (buzz && "vibrate" in navigator) navigator.vibrate(120);
    if (!beep || typeof AudioContext === "undefined") return;
    sound ??= new AudioContext();
    const tone = sound.createOscillator();
    const volume = sound.createGain();
    volume.gain.value = 0.25;
    tone.frequency.value = 880;
    tone.connect(volume).connect(sound.destination);
    tone.start();
    tone.stop(sound.currentTime + 0.15);
  };
}
