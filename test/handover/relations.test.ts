// How arguments must stand to each other: each relation of a card as the condition that a supplier's sheet gets.
import { describe, expect, test } from 'vitest';
import type { Card, Param, Term } from '../../src/core/card';
import { listLimits } from '../../src/handover/compile/inputs';
import { partsRelated, relations } from '../../src/handover/compile/relations';
import { formNamed } from '../../src/plain/forms';
import { atom, type Ref } from '../../src/plain/spreadsheet';
import { CARDS } from '../../src/registry';

const cards = [...CARDS.values()];
const related = cards.flatMap(({ id, params }) =>
  params.flatMap(({ name, relation }) => (relation === undefined ? [] : [{ id, name, relation }])),
);

/** Each argument stands in a cell of its name, parts of records as `size_majorMaxMm`. */
const refs = ({ params }: Card): Ref[] =>
  params.map(({ name, kind }) =>
    kind.is === 'screw'
      ? { parts: { majorMaxMm: atom(`${name}_majorMaxMm`) } }
      : kind.is === 'cone'
        ? { parts: { sharpMm: atom(`${name}_sharpMm`) } }
        : atom(name),
  );
const conditions = (id: string): string[] => relations(CARDS.get(id) as Card, refs(CARDS.get(id) as Card));

/** Written by hand, from what each function refuses. */
const WRITTEN: Readonly<Record<string, readonly string[]>> = {
  'BOSS.MASS': [
    'hole<od',
    'hole-2*hole_depth*TAN(RADIANS(hole_draft))>=0',
    'hole-2*hole_depth*TAN(RADIANS(hole_draft))<od+2*hole_depth*TAN(RADIANS(outside_draft))',
  ],
  'BOSS.TORSION': ['hole<od'],
  'BOSS.CONFLICT': ['pilot<size_majorMaxMm'],
  BEARING: ['hole<head_diameter'],
  'COOLING.TIME': ['eject>mould', 'eject<melt', 'IF(criterion="centre",4/PI(),8/PI()^2)*(melt-mould)>eject-mould'],
  'HOOP.LIMIT': ['od>pin'],
  'HOOP.PUSH': ['od>pin'],
  // an interference of more than a tenth of the pin is refused
  'HOOP.STRESS': ['0.1*pin>=interference', 'od>pin'],
  'LIP.SKIN': ['INT(gaps)=gaps', 'wall-lip-gaps*clearance>0'],
  'PULLOUT.BOSS': ['size_majorMaxMm<od'],
  'RECESS.CONE': ['sharp_diameter_sharpMm>0', 'hole<sharp_diameter_sharpMm'],
  'STACK.CPK': ['IF(AND(ISNUMBER(lower),ISNUMBER(upper)),upper>lower,OR(ISNUMBER(lower),ISNUMBER(upper)))'],
  'STACK.PPM': ['IF(AND(ISNUMBER(lower),ISNUMBER(upper)),upper>lower,OR(ISNUMBER(lower),ISNUMBER(upper)))'],
  'TORQUE.CLAMP': ['hole<head_diameter'],
  'TORQUE.SET': ['strip>drive'],
};

describe('conditions of a call', () => {
  test.each(Object.entries(WRITTEN))('%s', (id, written) => expect(conditions(id)).toEqual(written));

  test('every function with a relation that can be live is among them', () => {
    const live = related.map(({ id }) => id).filter(id => CARDS.get(id)?.notLive === undefined);
    expect(live.length).toBeGreaterThan(14);
    expect(live.filter(id => WRITTEN[id] === undefined)).toEqual([]);
  });

  test('parts that only a relation reads are asked for', () => {
    expect(partsRelated(CARDS.get('PULLOUT.BOSS') as Card)).toEqual(['majorMaxMm']);
    expect(partsRelated(CARDS.get('BOSS.CONFLICT') as Card)).toEqual(['majorMaxMm']);
    expect(partsRelated(CARDS.get('BOSS.TORSION') as Card)).toEqual([]);
  });
});

describe('a formula in a relation', () => {
  const formulas = (term: Term): Readonly<Record<string, unknown>>[] =>
    typeof term === 'number' || typeof term === 'string'
      ? []
      : 'formula' in term
        ? [term.formula]
        : [...formulas(term[1]), ...formulas(term[2])];
  const named = related
    .flatMap(({ relation }) => ('holds' in relation ? relation.holds : []))
    .flatMap(([, left, right]) => [...formulas(left), ...formulas(right)]);

  test('stands under its own name and has a plain form', () => {
    expect(named.length).toBeGreaterThan(3);
    for (const formula of named) {
      const [[name, called] = ['', undefined], ...others] = Object.entries(formula);
      expect(others).toEqual([]);
      expect((called as { name: string } | undefined)?.name).toBe(name);
      expect(formNamed(name), name).toBeDefined();
    }
  });
});

describe('limits of each entry of a list', () => {
  const limitsOf = (id: string, name: string): unknown => listLimits(CARDS.get(id)?.params.find(param => param.name === name) as Param);

  test('are those of its kind', () => {
    // a layer may be nothing: a zero with its unit is a zero everywhere
    expect(limitsOf('GRIP', 'layers')).toEqual({ atLeast: 0 });
    expect(limitsOf('STACK.NOMINAL', 'values')).toBeUndefined();
    expect(limitsOf('BOSS.OD', 'hole')).toBeUndefined();
  });

  test('of a tolerance: above 0, as a bare 0 is a blank', () => expect(limitsOf('STACK.WORST', 'tolerances')).toEqual({ above: 0 }));
});
