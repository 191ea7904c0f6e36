/**
 * What a session needs and what each thing is for; all of it is common practice. The checklist of tools has the same
 * things to tick: `ticked` names its lines, and a test holds that every line of it is explained here.
 */

export type Tool = {
  readonly item: string;
  /** What it is for, in a few words. */
  readonly use: string;
  /** What serves as well, where something does. */
  readonly instead?: string;
  /** For some machines only: when it is needed. */
  readonly when?: string;
  /** Ids of the lines of the checklist of tools that it answers to. */
  readonly ticked?: readonly string[];
};

export type ToolGroup = { readonly name: string; readonly tools: readonly Tool[] };

export const toolGroups = [
  {
    name: 'To read',
    tools: [
      {
        item: 'one gauge that reads depression',
        use: 'the same instrument for all cylinders, so that its error is the same for all',
        instead: 'a column of water or oil that is long enough; never mercury',
        ticked: ['gauge'],
      },
      {
        item: 'hoses of one length and one bore, without cracks',
        use: 'from each take-off to the gauge',
        ticked: ['hoses'],
      },
      {
        item: 'selector',
        use: 'joins one cylinder after another to the gauge',
        instead: 'one hose that is moved from take-off to take-off, with the engine off',
        ticked: ['selector'],
      },
      {
        item: 'damping tap',
        use: 'makes the needle readable',
        instead: 'a fine restrictor in the hose',
        ticked: ['tap'],
      },
      { item: 'vent', use: 'lets the line fall back between two readings', ticked: ['vent'] },
      {
        item: 'adaptors and caps for the take-offs',
        use: 'caps also for those that are not used',
        ticked: ['adapters', 'caps'],
      },
      { item: 'tachometer', use: 'the speed must come back before every reading', ticked: ['tachometer'] },
      { item: 'watch', use: 'running time, rests, settling of the needle' },
    ],
  },
  {
    name: 'To adjust',
    tools: [
      {
        item: 'screwdriver that fills the slot',
        use: 'turns and holds the screw',
        instead: 'a cranked or flexible one where a pipe is in the way',
        ticked: ['driver'],
      },
      {
        item: 'spanner for the lock nut, cranked and short',
        use: 'nips the nut while the driver holds the screw',
        ticked: ['spanner'],
      },
      {
        item: 'lamp without a hot bulb, small mirror',
        use: 'to see the slot and where it points, and nuts on the far side',
        ticked: ['lamp'],
      },
      { item: 'paint pen', use: 'a mark on each screw, so that turns can be counted' },
      {
        item: 'two drill shanks of one size',
        use: 'show that two slides stand equally open',
        when: 'you have separate cables',
        ticked: ['drills'],
      },
      {
        item: 'cleaner and a cloth, reader of the fault memory',
        use: 'clean bores before, a clean memory after',
        when: 'you have bypass screws',
        ticked: ['cleaner', 'reader'],
      },
      {
        item: 'friction screw or strap for the grip',
        use: 'holds the speed',
        instead: 'a helper who does nothing else',
        ticked: ['grip'],
      },
    ],
  },
  {
    name: 'To keep cool and safe',
    tools: [
      {
        item: 'a place outdoors, away from doors and windows',
        use: 'exhaust gas',
        instead: 'an extractor fixed to the pipe and led outside',
        ticked: ['place'],
      },
      { item: 'fan, as large as you can get', use: 'an engine on its stand has no wind', ticked: ['fan'] },
      {
        item: 'main stand or paddock stand, and a strap',
        use: 'the machine must not fall or roll',
        ticked: ['stand'],
      },
      {
        item: 'fire extinguisher for liquid fires',
        use: 'within reach, before the engine starts',
        ticked: ['extinguisher'],
      },
      {
        item: 'ear protection, glasses, gloves, tight sleeves',
        use: 'noise, fuel, hot and moving parts',
        ticked: ['ears', 'gloves'],
      },
      { item: 'second person', use: 'for the switch, and for help' },
      {
        item: 'auxiliary tank with a tap and a hook',
        use: 'fuel while the tank is off',
        when: 'the tank hides the screws',
        ticked: ['tank'],
      },
      { item: 'thermometer for the oil', use: 'says when to rest', when: 'the engine is cooled by air' },
    ],
  },
  {
    name: 'For the checks that come first',
    tools: [
      { item: 'service manual', use: 'figures, order and cautions of your engine', ticked: ['manual'] },
      { item: 'feeler gauges', use: 'valve clearance, plug gap, breaker points', ticked: ['feelers'] },
      { item: 'plug spanner', use: 'plugs out, once' },
      { item: 'compression gauge', use: 'compares the cylinders' },
      { item: 'clear tube for the drain of a bowl', use: 'shows the fuel level' },
      { item: 'hand pump with a gauge', use: 'finds torn diaphragms and leaks, with the engine off' },
      { item: 'fuel can, rags, gloves', use: 'what runs out of bowls and lines' },
    ],
  },
  {
    name: 'To write down',
    tools: [
      {
        item: 'this site on a telephone, opened once beforehand',
        use: 'it then works without a network',
        ticked: ['telephone'],
      },
      { item: 'paper and pencil', use: 'for when the telephone goes black', ticked: ['paper'] },
      { item: 'printed checklist', use: 'so that nothing is skipped' },
      { item: 'thread left on every screw, each way', use: 'counted before the engine starts' },
    ],
  },
] as const satisfies readonly ToolGroup[];
