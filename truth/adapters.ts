import type { Adapters } from './adapter.ts';
import { carbonMonoxideAdapters } from './carbon-monoxide.ts';
import { compressibleFlowAdapters } from './compressible-flow.ts';
import { engineSpeedSoundAdapters } from './engine-speed-sound.ts';
import { liquidColumnAdapters } from './liquid-columns.ts';
import { measurementPracticeAdapters } from './measurement-practice.ts';
import { pressureUnitAdapters } from './pressure-units.ts';
import { screwThreadAdapters } from './screw-threads.ts';
import { standardAtmosphereAdapters } from './standard-atmosphere.ts';

const topics = [
  pressureUnitAdapters,
  standardAtmosphereAdapters,
  liquidColumnAdapters,
  screwThreadAdapters,
  compressibleFlowAdapters,
  carbonMonoxideAdapters,
  measurementPracticeAdapters,
  engineSpeedSoundAdapters,
];

/** Every adapter; throws where two answer one quantity. */
export const adapters: Adapters = Object.fromEntries(
  topics
    .flatMap((topic) => Object.entries(topic))
    .map((entry, index, all) => {
      if (all.findIndex(([quantity]) => quantity === entry[0]) !== index)
        throw new Error(`two adapters for “${entry[0]}”`);
      return entry;
    }),
);
