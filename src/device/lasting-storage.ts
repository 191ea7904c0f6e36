/** Whether the browser may clear what is kept when the device is short of space. */
export type Lasting = 'granted' | 'refused' | 'unknown';

/** What the browser has promised so far, without asking it. */
export const lastingStorage = async (): Promise<Lasting> => {
  try {
    return (await navigator.storage.persisted()) ? 'granted' : 'unknown';
  } catch {
    return 'unknown';
  }
};

/** Asks the browser not to clear what is kept by itself. It may ask the person. */
export const askForLastingStorage = async (): Promise<Lasting> => {
  try {
    return (await navigator.storage.persist()) ? 'granted' : 'refused';
  } catch {
    return 'unknown';
  }
};
