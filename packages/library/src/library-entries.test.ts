import { describe, expect, it } from 'vitest';
import { rangeSigns } from '../build/page-text.ts';
import { entryPage, figuresOf, library, PAGE_KINDS, type PageKind } from './index.ts';

const { data } = library;
const ALL = PAGE_KINDS.flatMap((kind) => Object.keys(data[kind]).map((id) => [kind, id] as const));

const pageOf = (kind: PageKind, id: string) => {
  const page = entryPage(data, kind, id);
  if (!page) throw new Error(`no page for ${kind}/${id}`);
  return page;
};

describe('every entry', () => {
  it('says how well it is known, and every value where it comes from', () => {
    for (const [kind, id] of ALL) {
      const page = pageOf(kind, id);
      expect(page.known, `${kind}/${id} has no 'known'`).toBeDefined();
      const values = [...page.sections, ...page.ranges.map(({ sources }) => ({ values: sources }))].flatMap(
        ({ values: those }) => those,
      );
      expect(values.length, `${kind}/${id} has no values`).toBeGreaterThan(0);
      for (const { source, basis, note, label } of values) {
        expect(source.length, `${kind}/${id} ${label}`).toBeGreaterThan(3);
        if (source.endsWith('see the note')) expect(note, `${kind}/${id} ${label}: ${basis}`).toBeDefined();
      }
      const labels = page.sections.flatMap((section) =>
        section.values.map((each) => each.label + section.title),
      );
      expect(new Set(labels).size, `${kind}/${id} says something twice`).toBe(labels.length);
    }
  });
  it('that is alive tells what law, health and welfare ask for', () => {
    for (const kind of ['organisms', 'plants'] as const)
      for (const id of Object.keys(data[kind])) expect(pageOf(kind, id).risks.length, id).toBeGreaterThan(0);
  });
  it('says of what nothing is known, and that this is no clearance', () => {
    expect(pageOf('organisms', 'folsomia-candida').unsaid).toMatch(
      /^Of law, welfare, poison and illness .*no clearance/,
    );
    for (const id of Object.keys(data.organisms)) {
      const { risks, unsaid = '' } = pageOf('organisms', id);
      const isTold = risks.some(({ kind }) => kind === 'law' || kind === 'invasive');
      expect(/\blaw\b/.test(unsaid), id).toBe(!isTold);
    }
    expect(pageOf('salts', 'gypsum').unsaid).toBeUndefined();
  });
  it('says no caution again that stands among its risks', () => {
    const wordsOf = (text: string): string[] =>
      [...new Set(text.toLowerCase().match(/[a-z]{4,}/g) ?? [])].map((word) => word.slice(0, 5));
    for (const kind of ['organisms', 'plants'] as const)
      for (const id of Object.keys(data[kind])) {
        const { cautions, risks } = pageOf(kind, id);
        for (const caution of cautions) {
          const own = wordsOf(caution);
          for (const { text } of risks) {
            const again = own.filter((word) => wordsOf(text).includes(word)).length / own.length;
            expect(again, `${id}: ${caution} / ${text}`).toBeLessThan(0.6);
          }
        }
      }
  });
  it('that climbs over land or water as an amphibian or reptile warns of salmonella', () => {
    for (const { id, preyKind, risks = [] } of Object.values(data.organisms)) {
      if (preyKind !== 'amphibians' && preyKind !== 'reptiles') continue;
      expect(
        risks.some(({ kind, text }) => kind === 'zoonosis' && text.includes('salmonella')),
        id,
      ).toBe(true);
    }
  });
});

/** Regulation (EU) 1143/2014 as listed in EPPO Reporting Service 2022/178; Decision 2012/697/EU for Pomacea. */
describe('what is forbidden in the European Union', () => {
  it.each([
    ['organisms', 'procambarus-virginalis'],
    ['organisms', 'pomacea-diffusa'],
    ['plants', 'pistia-stratiotes'],
    ['plants', 'elodea-nuttallii'],
  ] as const)('%s/%s says so', (kind, id) => {
    const { risks, cautions } = pageOf(kind, id);
    expect(risks.some(({ kind: each }) => each === 'invasive')).toBe(true);
    expect([...cautions, ...risks.map(({ text }) => text)].join(' ')).toMatch(/European Union|Union concern/);
  });
});

describe('animals', () => {
  const animals = Object.values(data.organisms);
  it('are the 52 kinds keepers keep', () => expect(animals).toHaveLength(52));
  /** Larvae at sea: Caridina multidentata (Kondo et al. 2021), nerites (Hristov 2020), fiddlers (Christy 1989). */
  it('with larvae that need salt never have young in fresh water', () => {
    const never = animals.filter(({ development }) => development === 'brackish larvae').map(({ id }) => id);
    expect(never.sort()).toEqual([
      'atyopsis-moluccensis',
      'caridina-multidentata',
      'gelasiminae-spp',
      'limnopilos-naiyanetri',
      'neritina-spp',
      'parasesarma-bidens',
      'periophthalmus-spp',
    ]);
  });
  it('are fine only where they survive', () => {
    for (const { id, tolerances = {}, survives = {} } of animals) {
      for (const [series, fine] of Object.entries(tolerances)) {
        const outer = survives[series as keyof typeof survives];
        if (fine?.low && outer?.low)
          expect(fine.low.value, `${id} ${series}`).toBeGreaterThanOrEqual(outer.low.value);
        if (fine?.high && outer?.high)
          expect(fine.high.value, `${id} ${series}`).toBeLessThanOrEqual(outer.high.value);
      }
    }
  });
  it('weigh what a body of their length can weigh', () => {
    // Water-rich bodies: 0.0005 (worms) to 1 mg/mm3 (crabs by carapace width, about half their body's width deep).
    for (const { id, lifeHistory } of animals) {
      if (!lifeHistory) continue;
      const { adultMass, adultLength } = lifeHistory;
      const density = adultMass.value / adultLength.value ** 3;
      expect(density, id).toBeGreaterThan(5e-5);
      expect(density, id).toBeLessThan(1);
    }
  });
});

describe('a page', () => {
  it('draw ranges thick where fine and thin where survived', () => {
    const signs = rangeSigns({
      label: 'pH',
      unit: '',
      fine: { low: 7, high: 8 },
      survives: { low: 6 },
      sources: [],
    });
    expect(signs).toMatch(/^·+─+━+─+$/);
  });
  it('write numbers short', () => {
    expect([0.000009, 1500, 12.5, 0.123456].map(figuresOf)).toEqual(['9.0e-6', '1500', '12.5', '0.1235']);
  });
});
