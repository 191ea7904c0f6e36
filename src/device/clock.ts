import type { Moment } from '../calculators/index.ts';

/** Wall time in milliseconds. */
export const nowMs = (): number => Date.now();

/** The same with a clock beside it that nobody can set. */
export const nowMoment = (): Moment => ({ wallMs: Date.now(), steadyMs: performance.now() });

/** This moment with its offset from universal time, as ISO 8601 writes it. */
export const nowText = (): string => {
  const now = new Date();
  const offset = -now.getTimezoneOffset();
  const two = (value: number): string => String(Math.floor(Math.abs(value))).padStart(2, '0');
  const local = new Date(now.getTime() + offset * 60_000).toISOString().slice(0, 19);
  return `${local}${offset < 0 ? '-' : '+'}${two(offset / 60)}:${two(offset % 60)}`;
};

/** A name for a session that no other on any device has. */
export const newSessionId = (): string => {
  const bytes = crypto.getRandomValues(new Uint8Array(12));
  return `s-${[...bytes].map((byte) => byte.toString(16).padStart(2, '0')).join('')}`;
};

/** Calls back every second, and when the page is shown again. Returns the way to stop it. */
export const everySecond = (tick: () => void): (() => void) => {
  const timer = setInterval(tick, 1000);
  document.addEventListener('visibilitychange', tick);
  return () => {
    clearInterval(timer);
    document.removeEventListener('visibilitychange', tick);
  };
};
