import type { ConverterQuantity } from '../../../calculators/index.ts';

interface QuantityWords {
  readonly name: string;
  /** What may be typed, after “Such as”. */
  readonly such: string;
}

export const quantityWords: Readonly<Record<ConverterQuantity, QuantityWords>> = {
  pressure: { name: 'Pressure', such: '9 inHg, 12,5 cmHg or 9 1/2 inHg.' },
  length: { name: 'Length', such: '5.5 mm, 3/8 in or 40 thou.' },
  torque: { name: 'Torque', such: '12 N·m, 9 ft-lb or 110 in-lb.' },
  temperature: {
    name: 'Temperature',
    such: '20 °C or 68 °F: what a thermometer shows.',
  },
  'temperature-difference': {
    name: 'Temperature difference',
    such: '20 °C or 36 °F: how much warmer one is than another.',
  },
  volume: { name: 'Volume', such: '750 mL, 46 in³ or 1 US qt.' },
  speed: { name: 'Speed', such: '80 km/h or 50 mph.' },
  'engine-speed': {
    name: 'Engine speed',
    such: '2100 rpm. Hz and rad/s are those of the crankshaft.',
  },
  'thread-pitch': { name: 'Thread pitch', such: '0.75 mm or 32 TPI.' },
};
