import { IDBFactory } from 'fake-indexeddb';
import { vi } from 'vitest';
import { longestOpeningMs } from '../src/device/session-store.ts';

/** From now on a database that is opened says so only when `answer` is called; `asked` counts who opens one. */
export function answerLate(): { readonly answer: () => void; readonly asked: () => number } {
  const answered = Promise.withResolvers<void>();
  const { open } = IDBFactory.prototype;
  const late = vi.spyOn(IDBFactory.prototype, 'open').mockImplementation(function (
    this: IDBFactory,
    ...given
  ) {
    const request = open.apply(this, given);
    const listen = request.addEventListener.bind(request);
    request.addEventListener = (type: string, tell: (event: Event) => void) =>
      listen(type, type === 'success' ? (event) => void answered.promise.then(() => tell(event)) : tell);
    return request;
  });
  return { answer: answered.resolve, asked: () => late.mock.calls.length };
}

/** Does what waits, and lets so much time pass in it: so long that the page gives up waiting, unless told otherwise. */
export async function passTimeIn<Given>(work: () => Promise<Given>, ms = longestOpeningMs): Promise<Given> {
  vi.useFakeTimers({ toFake: ['setTimeout', 'clearTimeout'] });
  const waited = work();
  await vi.advanceTimersByTimeAsync(ms);
  vi.useRealTimers();
  return waited;
}
