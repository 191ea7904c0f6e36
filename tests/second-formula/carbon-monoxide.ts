/**
 * The relations of carbon monoxide once more, slowly and built otherwise: molar volumes, small steps, the closed but implicit
 * solution of the nonlinear equation, and halving. It shares no code with the package.
 */

/** Litres of an ideal gas in a mole at 0 °C and 1 atm (CODATA 2018), scaled to the temperature. */
const litresPerMole = (celsius: number): number => (22.41396954 * (celsius + 273.15)) / 273.15;

export const mgPerM3 = (ppm: number, celsius: number): number => (ppm * 28.0101) / litresPerMole(celsius);

/** y after `span` from y0, by the classical method of Runge and Kutta in equal steps. */
export function rungeKutta(
  slope: (t: number, y: number) => number,
  y0: number,
  span: number,
  steps: number,
): number {
  const h = span / steps;
  let y = y0;
  for (let k = 0; k < steps; k += 1) {
    const t = k * h;
    const a = slope(t, y);
    const b = slope(t + h / 2, y + (h / 2) * a);
    const c = slope(t + h / 2, y + (h / 2) * b);
    const d = slope(t + h, y + h * c);
    y += (h / 6) * (a + 2 * b + 2 * c + d);
  }
  return y;
}

/** Where a rising function is 0, by a fixed number of halvings. */
export function halve(rising: (x: number) => number, low: number, high: number): number {
  let [a, b] = [low, high];
  for (let k = 0; k < 200; k += 1) {
    const middle = (a + b) / 2;
    if (rising(middle) < 0) a = middle;
    else b = middle;
  }
  return (a + b) / 2;
}

export type Room = { volume: number; changes: number; litres: number; start: number };

/** Litres of gas in the room, not a concentration: what the source adds less what the draught takes along. */
export function roomPpm({ volume, changes, litres, start }: Room, minutes: number, steps = 2000): number {
  const held = rungeKutta((_, gas) => litres - gas * (changes / 60), start * volume * 1e-3, minutes, steps);
  return (held / (volume * 1000)) * 1e6;
}

export const roomMinutes = (room: Room, limit: number, longest: number): number =>
  halve((minutes) => roomPpm(room, minutes, 200) - limit, 0, longest);

export type Person = { ventilation: number; diffusing: number; oxygen: number };
export const people: Readonly<Record<string, Person>> = {
  rest: { ventilation: 6000, diffusing: 30, oxygen: 100 },
  'light work': { ventilation: 18000, diffusing: 40, oxygen: 100 },
};

/** Two resistances in a row, each as the reciprocal of what it lets through. */
export const resistance = ({ ventilation, diffusing }: Person): number => {
  const breathing = ventilation / (760 - 47);
  return 1 / ((breathing * diffusing) / (breathing + diffusing));
};

/** Carbon monoxide into the blood in mL/min at a share of the haemoglobin, with what holds it back given. */
const inflow = (person: Person, ppm: number, backMmHg: number): number =>
  0.007 + ((ppm * (760 - 47)) / 1e6 - backMmHg) / resistance(person);

/** Linear form by small steps, counted in millilitres of gas in all the blood. */
export const linearPercent = (person: Person, ppm: number, minutes: number, start: number): number => {
  const most = 0.2 * 5500;
  const back = (gas: number) => ((gas / most) * person.oxygen) / 218;
  return (
    (rungeKutta((_, gas) => inflow(person, ppm, back(gas)), (most * start) / 100, minutes, 4000) / most) * 100
  );
};

/**
 * Nonlinear form by its closed solution: with y of the haemoglobin held, Vb cap B dy/dt = P − k y/(1 − y), so
 * t/(Vb cap B) = (y − y₀)/q + (k/q²) ln((P − q y₀)/(P − q y)) with q = P + k; solved for y by halving.
 */
export function nonlinearPercent(person: Person, ppm: number, minutes: number, start: number): number {
  const b = resistance(person);
  const p = 0.007 * b + (ppm * (760 - 47)) / 1e6;
  const k = person.oxygen / 218;
  const q = p + k;
  const y0 = start / 100;
  const end = p / q;
  const scale = 0.2 * 5500 * b;
  const time = (y: number) => scale * ((y - y0) / q + (k / q ** 2) * Math.log((p - q * y0) / (p - q * y)));
  // Between start and end the time rises from 0 without bound, whichever of the two is the larger.
  const share = halve((x) => time(y0 + (end - y0) * x) - minutes, 0, 1 - 1e-15);
  return (y0 + (end - y0) * share) * 100;
}

/** The concentration at which nothing flows either way at a share of the haemoglobin, by halving. */
export const equilibriumPpm = (percent: number): number => {
  const person = {
    ventilation: (6000 * (713 / 760) * 273.15) / 310.15,
    diffusing: 20,
    oxygen: 0.21 * 713 - 49,
  };
  const back = ((percent / (100 - percent)) * person.oxygen) / 218;
  return halve((ppm) => inflow(person, ppm, back), -1e6, 1e7);
};
