/**
 * The glossary. Pages link a term by its id at first use; an unknown id fails the build.
 * The page of the glossary sorts them by the term itself.
 */

export type GlossaryTerm = {
  /** As it stands in the list: lower case but for names. */
  readonly term: string;
  /** Its letter in the formulae of this site, where it has one, in TeX. */
  readonly symbol?: string;
  /** What follows “Given in”: units, or where they come from. */
  readonly unit?: string;
  /** What it means here, in one or two sentences. */
  readonly words: string;
};

export const glossary = {
  absolute: {
    term: 'absolute pressure',
    symbol: 'p',
    unit: 'Pa, kPa or mmHg',
    words:
      'Pressure counted from an empty space. The ambient pressure less the depression is the absolute pressure in the intake.',
  },
  'air-bypass': {
    term: 'air bypass',
    words:
      'A small channel that lets air past a closed throttle plate. Its screw sets how much each cylinder draws at idle.',
  },
  'air-leak': {
    term: 'air leak',
    words:
      'Air that reaches the cylinder behind the throttle, through a cracked rubber, a loose clip or an open take-off. No balance screw controls it.',
  },
  'ambient-pressure': {
    term: 'ambient pressure',
    symbol: 'p_\\mathrm{amb}',
    unit: 'Pa or hPa',
    words:
      'Pressure of the air around the engine, which changes with height and weather. A gauge reads against it.',
  },
  'averaging-time': {
    term: 'averaging time',
    unit: 'minutes or hours',
    words:
      'The time over which a published limit takes the mean. A limit without its averaging time says nothing.',
  },
  bank: {
    term: 'bank',
    words: 'The carburettors of one engine, bolted side by side and opened together.',
  },
  bracketing: {
    term: 'bracketing',
    words:
      'Reading the reference before and after another cylinder, so that what has drifted in between can be taken out.',
  },
  carboxyhaemoglobin: {
    term: 'carboxyhaemoglobin',
    symbol: 'h',
    unit: 'per cent',
    words: 'The share of the blood’s haemoglobin that carbon monoxide has taken, and that carries no oxygen.',
  },
  'carbon-monoxide': {
    term: 'carbon monoxide',
    symbol: '\\mathrm{CO}',
    unit: 'ppm or per cent',
    words: 'The gas in the exhaust that kills. It has no colour and no smell.',
  },
  choke: {
    term: 'choke',
    words:
      'What makes the mixture rich for a cold start: a flap, or a small extra carburettor. Off when you balance.',
  },
  'choked-flow': {
    term: 'choked flow',
    words:
      'Flow through an opening so narrow that the air in it moves at the speed of sound. A lower pressure behind it then draws no more air.',
  },
  compression: {
    term: 'compression',
    unit: 'kPa, bar or psi',
    words:
      'The pressure that a cylinder builds up while the starter turns it. Low compression is a fault of valves or rings, not of balance.',
  },
  'damping-tap': {
    term: 'damping tap',
    words: 'A fine tap in the line to the gauge. It slows the needle; shut too far it cuts the needle off.',
  },
  depression: {
    term: 'depression',
    symbol: 'd',
    unit: 'Pa, kPa, mmHg or inHg',
    words: 'How far the pressure in the intake lies below the ambient pressure. “Vacuum” on many gauges.',
  },
  drift: {
    term: 'drift',
    words: 'A slow change of all readings while you work, as the engine warms or its speed wanders.',
  },
  'effect-of-a-turn': {
    term: 'effect of a turn',
    unit: 'mmHg per turn',
    words:
      'How much the reading changes for one whole turn of a screw. The session learns it from your readings.',
  },
  engagement: {
    term: 'engagement',
    unit: 'mm or turns',
    words:
      'The length over which screw and hole hold each other. Too little, and the thread strips or the screw falls out.',
  },
  'float-level': {
    term: 'float level',
    unit: 'mm',
    words:
      'The height at which the fuel stands in the bowl of a carburettor. It changes the mixture of that cylinder.',
  },
  flutter: {
    term: 'flutter',
    words: 'The swing of the needle with every stroke of the cylinder that it reads.',
  },
  gauge: {
    term: 'gauge pressure',
    symbol: 'p_\\mathrm{g}',
    unit: 'Pa, kPa or mmHg',
    words:
      'Pressure counted from the ambient pressure, with its sign. A depression is a gauge pressure below zero.',
  },
  'idle-speed-screw': {
    term: 'idle-speed screw',
    words:
      'The screw on which the closed throttle rests. On ganged carburettors it moves all of them by the same amount.',
  },
  'ignition-timing': {
    term: 'ignition timing',
    unit: 'degrees of the crankshaft',
    words:
      'The moment of the spark, in degrees of the crankshaft. Late on one cylinder, it makes that cylinder weak at every setting.',
  },
  lead: {
    term: 'lead',
    symbol: 'L',
    unit: 'mm',
    words: 'How far a screw moves along its axis in one turn. For a thread with one start it is the pitch.',
  },
  'lock-nut': {
    term: 'lock nut',
    words: 'The nut that holds an adjusting screw where it stands. Tightening it can drag the screw along.',
  },
  look: {
    term: 'look',
    words: 'One reading of one cylinder, with the speed brought back first and the line vented.',
  },
  'matched-to': {
    term: 'matched to',
    words:
      'What the other cylinders are brought to: one that has no screw, the two that read closest, or each other.',
  },
  'mixture-screw': {
    term: 'mixture screw',
    words:
      'The small screw that sets how much fuel, or how much air, joins the mixture at idle. It sets no balance.',
  },
  overrun: {
    term: 'overrun',
    words: 'The wheels drive the engine while the throttle is shut, as when the machine slows down in gear.',
  },
  'parts-per-million': {
    term: 'parts per million',
    unit: 'ppm',
    words: 'A share of the air by volume. Ten thousand parts per million are one per cent.',
  },
  'pilot-jet': {
    term: 'pilot jet',
    words:
      'The small jet that feeds a carburettor at idle and just above. Dirt in it makes one cylinder drop out.',
  },
  pitch: {
    term: 'pitch',
    symbol: 'P',
    unit: 'mm',
    words: 'The distance from one crest of a thread to the next.',
  },
  'progression-holes': {
    term: 'progression holes',
    words:
      'Small holes at the edge of the shut throttle. They feed the engine as it leaves the idle, before the main jet does.',
  },
  reference: {
    term: 'reference',
    words: 'The carburettor that the others are matched to, often the one without an adjuster.',
  },
  resolution: {
    term: 'resolution',
    symbol: 'r',
    unit: 'the unit of the gauge',
    words: 'The finest step that can be read on a scale. It is not the same as how true the gauge is.',
  },
  selector: {
    term: 'selector',
    words: 'A tap that connects one hose after another to the same gauge.',
  },
  'sign-off-round': {
    term: 'sign-off round',
    words: 'The last reading of every cylinder, with all nuts tight and nothing turned in between.',
  },
  slide: {
    term: 'slide',
    words:
      'A piston that is lifted across the bore of a carburettor, by the cable or by the depression itself.',
  },
  slip: {
    term: 'slip',
    unit: 'turns',
    words: 'How far a screw moves while its nut is tightened.',
  },
  spread: {
    term: 'spread',
    unit: 'the unit of the readings',
    words: 'The highest reading less the lowest.',
  },
  'standard-atmosphere': {
    term: 'standard atmosphere',
    unit: 'Pa',
    words:
      'An agreed pressure, temperature and density of the air at every height. Real weather lies above or below it.',
  },
  swing: {
    term: 'swing',
    symbol: 'a',
    unit: 'the unit of the gauge',
    words: 'How far the damped needle still moves to each side of its middle.',
  },
  'synchronising-screw': {
    term: 'synchronising screw',
    words:
      'The screw that moves one throttle, or one group of throttles, against the others. Also called a balance screw or an adjuster.',
  },
  'take-off': {
    term: 'take-off',
    words: 'The small pipe or plugged hole between throttle and cylinder to which the gauge line is fitted.',
  },
  'throttle-plate': {
    term: 'throttle plate',
    words: 'A disc on a spindle that opens and shuts the bore, also called a butterfly.',
  },
  tolerance: {
    term: 'tolerance',
    symbol: 'T',
    unit: 'mmHg or kPa',
    words: 'The largest spread that the manual, or you, will accept.',
  },
  travel: {
    term: 'travel',
    unit: 'turns or mm',
    words: 'How far a screw can still go each way before it meets its stop or leaves its thread.',
  },
  uncertainty: {
    term: 'uncertainty',
    symbol: 'u',
    unit: 'the unit of the readings',
    words:
      'How far the true figure may lie from the one that was read. It comes from the swing of the needle and the step of the scale.',
  },
  'valve-clearance': {
    term: 'valve clearance',
    unit: 'mm',
    words:
      'The gap between a closed valve and what opens it. Too little, and the valve leaks when it is hot.',
  },
  vent: {
    term: 'vent',
    words: 'An opening that lets the gauge line fall back to the ambient pressure between two readings.',
  },
  'warm-up': {
    term: 'warm-up',
    unit: 'minutes',
    words: 'The running that brings the engine to its steady heat. Readings before its end drift.',
  },
} as const satisfies Record<string, GlossaryTerm>;

export type TermId = keyof typeof glossary;
