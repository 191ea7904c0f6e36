import { expect, it } from 'vitest';
import { checklist, generations, linesOf } from '../../src/calculators/index.ts';
import { toolGroups, type Tool } from '../../src/content/tools.ts';

const tools: readonly Tool[] = toolGroups.flatMap((group): readonly Tool[] => group.tools);

it('explains every line of the checklists of tools, and names no line that they do not have', () => {
  const ticked = generations.flatMap((generation) =>
    checklist({ list: 'tools', generation, carburettors: 4 })
      .columns.flat()
      .flatMap(linesOf)
      .map(({ id }) => id),
  );
  expect(ticked.length).toBeGreaterThan(50);
  expect([...new Set(tools.flatMap((tool) => tool.ticked ?? []))].toSorted()).toEqual(
    [...new Set(ticked)].toSorted(),
  );
});

it('says what each tool is for, and lists none twice', () => {
  for (const { use } of tools) expect(use.length).toBeGreaterThan(4);
  expect(new Set(tools.map(({ item }) => item)).size).toBe(tools.length);
});
