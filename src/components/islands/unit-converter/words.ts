import type { ConverterQuantity } from '../../../calculators/index.ts';

interface QuantityWords {
  readonly name: string;
  /** “Read it as …” */
  readonly reading: string;
  /** What may be typed, after “Such as”. */
  readonly such: string;
}

export const quantityWords: Readonly<Record<ConverterQuantity, QuantityWords>> = {
  pressure: { name: 'Pressure', reading: 'a pressure', such: '9 inHg, 12,5 cmHg or 9 1/2 inHg.' },
  length: { name: 'Length', reading: 'a length', such: '5.5 mm, 3/8 in or 40 thou.' },
  torque: { name: 'Torque', reading: 'a torque', such: '12 N·m, 9 ft-lb or 110 in-lb.' },
  temperature: {
    name: 'Temperature',
    reading: 'a temperature',
    such: '20 °C or 68 °F: what a thermometer shows.',
  },
  'temperature-difference': {
    name: 'Temperature difference',
    reading: 'a temperature difference',
    such: '20 °C or 36 °F: how much warmer one is than another.',
  },
  volume: { name: 'Volume', reading: 'a volume', such: '750 mL, 46 in³ or 1 US qt.' },
  speed: { name: 'Speed', reading: 'a speed', such: '80 km/h or 50 mph.' },
  'engine-speed': {
    name: 'Engine speed',
    reading: 'an engine speed',
    such: '2100 rpm. Hz and rad/s are those of the crankshaft.',
  },
  'thread-pitch': { name: 'Thread pitch', reading: 'a thread pitch', such: '0.75 mm or 32 TPI.' },
};
